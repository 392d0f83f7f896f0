/** How much each feature of a clause (cue-features.ts) speaks for no cue at all; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const NONE_WEIGHTS = {
  bias: [[3, 'yes']],
  class: [
    [0.8, 'chat'],
    [0.6, 'num'],
    [0.2, 'take'],
    [-0.2, 'attend ill kit less more not place'],
    [-0.4, 'air harm move settle swap'],
    [-0.6, 'far wrong'],
    [-0.8, 'part'],
  ],
  early: [[0.6, 'yes']],
  first: [
    [0.6, 'the'],
    [0.4, 'back catch come it put remember rest switch'],
    [
      0.2,
      `
        <chat> <more> <num> <pace> <place> any arm balanc br cat do eight five four good grab here high hip how
        if is isnt its last later leg love near nobod off on oop other paus peopl pop repeat rise roll row shak
        side slid smil some sor squat swap ten that ther thes thi thirt till time up walk wall we what who with
        youll
      `,
    ],
    [
      -0.2,
      `
        0 <attend> <less> <move> <not> <settle> <wrong> abov anyon both breath chest ease elbow explod feel figur
        first from full get give go has heel hello in jab keep land leav length let like march nobody not one
        option or plank pleas ratio resist rib same set settl short show stand straighten stronger take tall to
        toe try umbrella you your
      `,
    ],
    [-0.4, '<air> <part> and half long'],
  ],
  given: [
    [0.2, '<attend> burn can do grip in is it let normal not odd off that the'],
    [-0.2, 'have to'],
  ],
  last: [
    [0.4, 'arm body breath hip me muscl no okay rest row ther'],
    [
      0.2,
      `
        afterward again alright ankl balanc brav calv chair clas clean climber clock comfortabl count cow cushion
        day deep desk dog done door drink eight face fold follow go good head hold home i jaw kne ladder later
        left leg lung minut name needl not now only open over part pigeon pose releas remember rush second shop
        spin sprint squat stair start sw talk tap thes through toda up ups water week well year
      `,
    ],
    [
      -0.2,
      `
        armpit away bell bit bow chang complete dont down elephant end everybod first flat floor foot forward
        glas goe grip ground hamstring handl heav help here high hundred in is it kneel land last length level
        long lower march mov movement neck oclock on one other plank pleas prepar puff rib short singl slid tall
        them thi toe together tss version wait walk watch whisker yeah
      `,
    ],
    [-0.4, '0 and bounc ear'],
    [-0.8, 'you'],
  ],
  late: [[0.6, 'yes']],
  length: [
    [0.2, '8-12 long'],
    [-0.2, '3-4 5-7'],
  ],
  pair: [
    [
      0.4,
      `
        0_<pace> <attend>_has <chat>_us <kit>_down <not>_wor <num>_more <part>_has <place>_now down_and has_<num>
        is_<chat> is_the last_one let_us not_wor the_spin
      `,
    ],
    [
      0.2,
      `
        0_0 0_<num> 0_<part> 0_foot 0_to <attend>_as <attend>_at <attend>_breath <attend>_it <attend>_jaw
        <attend>_odd <attend>_the <attend>_youv <chat>_are <chat>_at <chat>_brav <chat>_can <chat>_enjoy
        <chat>_exercis <chat>_first <chat>_home <chat>_if <chat>_in <chat>_lost <chat>_me <chat>_of <chat>_on
        <chat>_so <chat>_that <chat>_time <chat>_to <chat>_will <do>_around <do>_back <do>_body <do>_leg <do>_out
        <do>_squat <do>_to <do>_ups <far>_breath <far>_home <far>_kne <harm>_get <harm>_your <kit>_back <kit>_sit
        <kit>_squeak <less>_for <less>_to <less>_way <less>_your <more>_time <move>_a <move>_around <move>_body
        <move>_deep <move>_for <move>_go <move>_it <move>_push <move>_squat <move>_to <move>_up <move>_ups
        <not>_be <not>_burpe <not>_cheat <not>_is <not>_rush <not>_ther <not>_your <num>_0 <num>_and <num>_each
        <num>_is <num>_minut <num>_muscl <num>_of <num>_one <num>_second <num>_set <num>_slow <num>_tim <num>_way
        <pace>_0 <pace>_but <pace>_feet <pace>_ladder <pace>_off <part>_0 <part>_and <part>_do <part>_flexor
        <part>_follow <part>_only <part>_tap <part>_up <part>_wher <place>_all <place>_and <place>_breath
        <place>_into <place>_jaw <place>_me <place>_one <place>_row <place>_so <place>_to <place>_wher <settle>_a
        <settle>_both <settle>_got <settle>_in <settle>_the <settle>_you <swap>_ankl <swap>_burpe <swap>_leg
        <swap>_thi <take>_for <take>_out <take>_the a_<chat> a_<kit> a_<num> a_buzz a_day a_desk a_door a_minut
        after_a again_<place> all_four all_the and_<chat> and_<part> and_<place> and_again and_down and_sw
        are_<chat> are_<more> are_so are_stronger arm_<far> arm_and arm_only as_<place> as_long at_<chat>
        back_<do> back_to back_wher band_squeak be_<less> be_hard bell_<place> big_breath bird_dog br_it
        burn_that call_it child_pose come_<part> come_<place> come_back come_on dig_<far> dig_deep do_<num>
        do_the dont_<pace> dont_rush down_<place> down_on each_side enjo_it fast_<part> fast_<take> fast_feet
        feel_like feel_odd feet_<more> feet_up find_the foot_through for_<num> for_fort for_thre for_toda
        for_twent for_your fort_<num> from_here get_easier get_wors go_<chat> got_<num> got_it grab_your
        grip_<attend> grip_burn half_way hand_<place> hand_in hand_on hand_out hang_<place> have_a have_got
        hear_<chat> hear_a hear_you heart_<part> heart_<place> heart_back high_<part> high_kne hip_flexor
        i_<chat> i_<settle> i_will if_ther if_youv ignor_it in_<chat> in_a in_the in_ther in_you is_<attend>
        is_<num> is_<place> is_like is_suppos is_watch isnt_it it_<not> it_<pace> it_back it_doesnt it_down
        it_feel it_for it_is it_liv it_mak it_pinch it_your its_<not> its_<wrong> its_the its_wrong join_<place>
        join_in jump_<do> jump_squat keep_<chat> keep_go keep_push keep_you leg_<far> leg_<more> leg_<place>
        leg_do leg_only leg_up let_me like_a like_the look_<less> look_<pace> look_easy low_<do> low_<move>
        lower_<part> mak_a make_a make_it me_<chat> more_<pace> mountain_climber mov_<place> my_<chat>
        near_<swap> near_home need_<more> need_to new_to next_<kit> no_<less> no_burpe nobod_is not_<attend>
        not_cheat not_your noth_<place> number_<num> of_<num> of_a of_the off_<chat> off_do off_you on_<chat>
        on_<num> on_<part> on_me on_one on_to on_your one_<chat> one_<more> one_<pace> one_each one_more open_the
        or_plough other_<part> other_arm outsid_of own_<part> own_ankl peopl_<attend> peopl_think pop_the
        push_<place> push_through put_it put_the rate_ladder rep_<place> right_<part> rise_to roll_over
        round_<num> round_in second_all see_<chat> see_you shoulder_<do> shoulder_tap sit_<place> sit_on
        slid_<more> slid_up so_<chat> so_<do> so_<move> so_<place> so_clos soft_<part> some_evening squar_<air>
        squar_breath squat_<do> step_<part> step_back stop_ther strong_<part> stronger_than suppos_to ten_<pace>
        that_<more> that_<not> that_<num> that_<place> that_normal that_not that_up the_<do> the_bell the_bridg
        the_chest the_clock the_cushion the_glut the_needl the_outsid the_rate the_record the_right the_row
        the_shop the_sprint the_tidiest thes_<attend> thi_for thi_look think_of thirt_<pace> thre_<num>
        thread_the till_your to_<attend> to_<swap> to_a to_hand to_that to_wher to_your tomorrow_<chat>
        twent_<pace> twent_second two_one until_<chat> until_you up_and us_<chat> us_<settle> us_go walk_<place>
        walk_your wall_<take> watch_<chat> watch_me way_ther we_<swap> we_are we_do we_will weight_<place>
        weight_down when_<chat> when_you wher_child wher_it who_<attend> will_be with_<attend> with_<chat>
        with_<place> with_a with_all with_squar work_<place> wors_<attend> wors_as you_<less> you_<not>
        you_<place> you_are you_can you_lost you_on you_to youll_want your_<air> your_<attend> your_<settle>
        your_<take> your_balanc your_brav your_breath your_core your_face your_heart your_own your_shoulder
        your_spin your_time youv_got
      `,
    ],
    [
      -0.2,
      `
        0_<attend> 0_if <air>_out <attend>_if <attend>_thi <attend>_you <chat>_all <chat>_could <chat>_do
        <chat>_hamstring <chat>_here <chat>_hundr <chat>_hundred <chat>_is <chat>_it <chat>_look <chat>_need
        <chat>_short <chat>_should <chat>_thirt <chat>_want <chat>_would <chat>_you <do>_down <do>_forward
        <do>_them <do>_you <far>_is <kit>_if <kit>_in <kit>_is <less>_you <more>_folk <more>_for <more>_one
        <more>_with <move>_down <move>_forward <move>_from <move>_in <move>_sure <move>_them <not>_ear <not>_the
        <not>_want <num>_at <num>_count <num>_degre <num>_elephant <num>_hand <num>_kilo <num>_out <num>_rep
        <pace>_a <pace>_down <pace>_for <pace>_now <pace>_to <pace>_with <part>_are <part>_down <part>_first
        <part>_is <part>_on <part>_stay <part>_that <place>_a <place>_at <place>_each <place>_for <place>_front
        <place>_like <place>_our <place>_the <place>_up <place>_with <settle>_down <settle>_it <settle>_someth
        <swap>_hand <swap>_hold <swap>_not <swap>_of <take>_in <take>_it <take>_on a_<do> a_<far> a_<move>
        a_<pace> a_<part> a_cat a_few a_time a_whisker about_<num> abov_that and_<move> and_<pace> and_<settle>
        and_slow are_<less> are_<not> are_not arm_<place> as_<chat> as_<num> as_you at_the at_your be_your
        behind_<chat> behind_you between_<num> can_<settle> com_<place> come_<more> come_up do_<not> do_it do_not
        down_to each_<num> each_one ease_off easy_<pace> ever_<num> ever_time feel_<more> figur_<num> figur_four
        first_<num> first_hundr first_hundred five_<pace> five_<swap> five_kilo five_second for_four for_one
        for_thi for_you from_the get_to go_<pace> half_<chat> hello_<attend> hello_<part> hello_hamstring
        hip_<attend> hip_<chat> hip_<place> hip_that hold_<place> hold_it hold_on how_far i_<swap> i_would if_its
        if_that in_<pace> in_front in_your into_a is_how is_just it_<do> it_<far> it_<less> it_<place>
        it_<settle> it_goe it_mov it_on it_should it_ther it_tomorrow it_will its_<attend> keep_the kne_<place>
        know_about leav_thi let_<chat> let_<settle> let_go let_it let_the let_you light_<place> like_<chat>
        like_you look_<place> lower_<chat> make_sure make_the next_<num> next_one not_<do> not_a not_on not_want
        of_<kit> of_ten of_you off_the on_our on_the one_<part> one_at one_hand onto_our opposit_<part> our_back
        out_<place> out_of out_on over_the right_into same_<num> same_ten same_way see_a set_the sleev_roll
        start_<place> stay_<place> step_in stop_ear strok_a stronger_<chat> stronger_folk thank_<chat> thank_you
        that_a that_is the_<air> the_<harm> the_<swap> the_end the_first the_floor the_ground the_head the_hip
        the_kne the_knee the_leg the_mat the_one ther_for thi_into thi_with thre_to time_with to_<do> to_<less>
        to_<move> to_<settle> to_prepar to_the to_you try_to turn_thi two_<kit> two_<pace> two_elephant
        umbrella_<do> umbrella_clos up_<place> up_for us_come want_to want_your watch_your way_<more> way_up
        we_<do> we_<move> we_call we_lift we_tap wher_you who_gone will_<take> will_help with_your you_<move>
        you_<settle> you_could you_do you_have you_should youll_know your_<part> your_foot your_look your_shirt
        your_side
      `,
    ],
    [
      -0.4,
      `
        <chat>_the <move>_the <not>_a <settle>_up <swap>_it is_<less> is_all on_a should_be the_arm
      `,
    ],
    [-0.8, 'the_<part>'],
  ],
  phrase: [
    [1.4, 'chat'],
    [1.2, 'empty_clauses'],
    [1, 'transitions'],
    [0.8, 'dose_only praise purpose'],
    [0.2, 'caution-likely retracted'],
    [
      -0.2,
      `
        caution-hint caution-sure easier-likely equipment-hint equipment-sure execution-hint execution-likely
        fault-hint focus-sure tempo-hint tempo-likely
      `,
    ],
    [
      -0.4,
      `
        breathing-sure easier-hint easier-sure fault-likely focus-likely harder-sure setup-hint
      `,
    ],
    [-0.6, 'fault-sure range-sure tempo-sure'],
  ],
  start: [
    [0.4, '<chat>_<chat> do_not_wor'],
    [
      0.2,
      `
        <chat>_<attend> <do>_<do> <do>_<part> <far>_<part> <kit>_<part> <move>_<do> <not>_<attend> <not>_<less>
        <not>_<pace> <not>_<place> <num>_<more> <num>_<pace> <pace>_<num> <pace>_<take> <part>_<far>
        <place>_<chat> <place>_<do> <place>_<part> <settle>_<chat> <settle>_<place> <swap>_<less> <swap>_<part>
        <swap>_<settle> a_minut arm_and arm_and_sw back_down back_to big_breath come_down come_forward come_on
        come_on_the dont_rush fast_feet for_the half_way half_way_ther hand_on hold_for i_will if_ther if_you_can
        if_you_lost if_your_grip isnt_it it_get it_get_easier it_is its_the keep_it_go keep_push let_me let_us
        let_us_go let_your_head look_at make_it make_it_the no_burpe nobod_is nobod_is_watch one_more or_plough
        pop_the push_through put_it put_it_down put_the rate_0_to rise_to rise_to_hand roll_over slid_up slow_it
        slow_it_down some_evening step_back swap_leg take_your_time that_is_the the_band the_band_squeak the_same
        ther_is_a thi_look thi_look_easy think_of till_your till_your_heart walk_your walk_your_feet we_do
        you_are you_can you_have you_have_got youll_want
      `,
    ],
    [
      -0.2,
      `
        <air>_<place> <attend>_<attend> <attend>_<chat> <chat>_<pace> <do>_<attend> <do>_<chat> <do>_<pace>
        <less>_<chat> <more>_<num> <more>_<place> <move>_<attend> <move>_<chat> <move>_<pace> <not>_<do>
        <part>_<attend> <part>_<chat> <part>_<move> <part>_<place> <place>_<place> <settle>_<far> <settle>_<less>
        <settle>_<more> <settle>_<pace> <take>_<pace> <take>_<place> anyon_who anyon_who_gone come_back_to
        down_for ease_off five_second hello_hamstring hold_it hold_it_ther i_would if_its keep_it_mov let_it
        let_the let_us_come make_sure make_the set_the stronger_folk that_is that_is_how that_the_one the_arm
        the_next the_other try_to watch_your we_call we_lift you_are_go you_could you_need
      `,
    ],
  ],
  word: [
    [0.8, 'we'],
    [0.6, 'me minut muscl'],
    [
      0.4,
      `
        again becaus breath catch clean day do eight got has i leg near open remember rest row shak some spin
        squat switch that ther thes thi thre us was wor
      `,
    ],
    [
      0.2,
      `
        afterward all alright anyth balanc bank best body br brav bridg build burpe but buzz call calv cheat
        child clas climb climber clock cobra comfortabl core count cow cushion desk dig doesnt dog done door
        drill easy enjo enjoy evening everyth exercis face fall felt fifteen find five flexor fold follow for
        fort fun glut good great have heart hip home ignor ill im isnt its join kettlebell ladder later liv lost
        love lung mak min miss mountain my name natural needl next nobod now number odd of okay on only oop
        outsid own part peopl pigeon pinch plough pop pose push put rack record releas repeat rise round runner
        rush say second set shop side six smil somebod sor squar squeak stair start station strength stronger
        subscrib support suppos sw tak talk tap tempo th think thirt thread through tick tidiest tim time toda
        tomorrow twent two ups walk wall water way week well what wher whol why will wors year youll youv
      `,
    ],
    [
      -0.2,
      `
        0 abov abs air along alway armpit as at away bang begin behind between bone bor both bow brisk bum cheek
        chest clap collarbon complete could cros degre drop ease effort elbow elephant empt enough even exhal
        explod far fast feel feet few figur finger flat float forehead forward fram get give glas go gone grip
        ground half hamstring handl heel help here hot hug hundred if inhal jab kilo knee kneel land lean length
        level lift light load longer loos low lower march mat mayb mine movement neck nobody not oclock opposit
        option our overhead pace pair pick plank pleas position prepar pressur puff pull quick quicker rather
        ratio resist rib roll sag see settl sharp shin shirt sho show sid singl sleev slid someth spe spot squeez
        stand stay step straighten stretch strid strok sure take tension than thank the thigh thumb tight to
        together too top try tss turn under up use version wait whisker with without would wrist yeah yourself
        zip
      `,
    ],
    [
      -0.4,
      `
        a bounc ear end first floor goe heav hold into let one or out short tall them toe want you your
      `,
    ],
    [-0.6, 'should'],
  ],
} as const satisfies CueWeights
