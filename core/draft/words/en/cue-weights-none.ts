/** How much each feature of a clause (cue-features.ts) speaks for no cue at all; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const NONE_WEIGHTS = {
  bias: [[0.8, 'yes']],
  class: [
    [0.4, 'chat do num'],
    [0.2, 'carer take'],
    [-0.2, 'attend ill more not place'],
    [-0.4, 'harm less move part'],
    [-0.6, 'air far wrong'],
  ],
  first: [
    [0.6, 'back down he how off rest second shak stay straight ten the ther we'],
    [
      0.4,
      `
        <chat> <kit> <num> <place> ankl bridg eight fifteen flop good have hes hug i its ive last love my oh okay
        other park rack remember row she six some still switch that thi till time up which whil who with yes
        youll youv
      `,
    ],
    [
      0.2,
      `
        0 <take> <wrong> actual agn along alright anchor as at away aye balanc band bear becaus befor bench
        better bicycl bound broomstick by calf calv can carmel catch chang chin clean climber come couldnt crab
        crunch curl cushion dead did do done drill drop each enough except fabulou face fall farmer find five
        foot for fort four fourth front gone hed her here high hip hmm hold hollow id ill is isnt it kick leg
        look loop lung marjori min minut mov nah near nine ninet no nobod nobody och on once only oop over peopl
        phil pres press pret priya put read right roll rose same see seven shaking shaky shed sid side sit smil
        so somebod somebody someon sor split squat static superman swap terminal thatll them thes theyll theyr
        theyv third thirt thre thread tidy tipto tom trev turn twelv twent twic twist very walk wall weight well
        were weve what whatever wipe yep
      `,
    ],
    [
      -0.2,
      `
        <attend> <do> <harm> <ill> <less> <move> <pace> <settle> <swap> abov alway and anybod anyon backsid
        backward bar bare big bin blu blue bounc braver brisk build cant carol check chest colin count cut da
        divvent ear even everybod explod eye fac feel finger firm flat flatten float fold follow forehead freez
        from get give got grow halfwa hang head hum if jab jaw jog kid kne knuckl kyle land late lean leav lift
        littl loos lose lower mat middl move neck new opposit out palm pocket pretend quarter quit red resist rib
        ring rock round set settl sho short shorten shoulder show shuffl shut sink skip small smooth sock soft
        stag stan stand start step strap strict tall tap thought thumb tick tight to together too try tss tug two
        use watch wher
      `,
    ],
    [-0.4, '<far> <part> about ease elbow go let not one take wait you your'],
    [-0.6, '<air> half like long pleas'],
  ],
  given: [
    [
      0.2,
      `
        <harm> <num> <pace> ask come count creak do doesnt down dull easy few finger forward hand hurt it just
        lost more need odd only posh read shop somebod stomach take talk the ther twist want werent wet writ your
        yourself
      `,
    ],
    [-0.2, '<do> <part> <settle> <take> are been befor go have like of ten that they'],
  ],
  last: [
    [0.8, 'no'],
    [0.6, 'minut now okay pres rais row ups'],
    [
      0.4,
      `
        bar between curl dip dog done eight enough five go good is ladder lot love lung nine oh rest sheet six
        squat stair ten that twic us
      `,
    ],
    [
      0.2,
      `
        0 actual advert afterward again age alread alright anybod anywa are arm ask awak aye bad balanc band
        beautiful bench better bicycl boat body book bor bound breath breather bridg bug calv cap car cardigan
        carmel ceilidh chair church clas clean climb climber clock club com come complaint contact count court
        cow crawl crunch cushion daughter deadlift deal debutant dentist dig door down drag each earlier eleven
        elwyn extension fabulou face fanc fenc finger finish flamingo flop folk four grand halfwa hall hanger
        heel him hing hmm hold holida home hour i internet iron its jim kne know lad later leav leg listen look
        mailbox many march marjori me muscl nah name near needl next night nois normal not number obvious off oil
        on once only opener pair pancak person phil pick pictur plank pose posti press prop pump push quad quiet
        rack rain releas remember ring rose sanja say second see set seven shak sham shov sit slid so sofa soften
        sor spin sprint start stop stor stork strap stretch strid stuff sulk superman superwoman tea th then ther
        thirt thos through thrust tidy tilt tim tin tom total trap twelv twent twist twister two walk wall wander
        warm water week well wor wrong yeah year yep yes yet your
      `,
    ],
    [
      -0.2,
      `
        achill after ahead air all and ankl arch armpit backsid backward behind bell bent blu blue bon bone
        bottom bow brak brisk bum bus carol carpet ceil chang cheek chest clos closer collarbon complete copy
        corner crat cros cute die divvent dont dum dumbbell ear easy edge effort elephant else even everybod feel
        fift firm fist flat float floor foot for forward further game gent glas grab gradual ground hair
        hamstring hand hang hard harder heal here high hole hop hot inch insid instead it jab jean jump kick knee
        kneel kyle ladi land last lean level lock loos low manner mat measur mississippi more movement neck need
        nick passenger pay pendulum peopl piec plent plonk plop pocket position proud puff pull puls put ramp
        rhythm rib rise roll round settl shin shirt short shorter shoulder shrug sideway sink slip slow smaller
        soft spe sprawl stamp stan step still stomp straight swim tailbon talk taller tank tent tenth thereabout
        thumb tight tiny tipto tock toe together top touch towel treacl tree tricep tss tug under underneath
        version wide wider window with wob yellow
      `,
    ],
    [-0.4, 'bit bounc heav in long pleas red tall you'],
    [-0.6, 'other'],
  ],
  length: [
    [1, '1-2'],
    [0.8, '3-4'],
    [0.4, '5-7 8-12'],
  ],
  pair: [
    [0.6, '<kit>_down call_it'],
    [
      0.4,
      `
        <chat>_go <chat>_on <do>_apart <do>_out <do>_over <do>_ups <move>_apart <move>_up <move>_ups <not>_it
        <not>_wor <num>_is <num>_minut <num>_more <num>_of <num>_on <part>_flexor <part>_rais <part>_stretch
        <place>_here <settle>_on <take>_down a_<chat> a_minut and_<chat> and_<place> as_long back_to chang_<part>
        chang_leg dead_<do> dont_<pace> down_on each_<part> each_leg feet_down for_the high_<part> hip_flexor
        i_<chat> in_it is_<num> is_the it_down its_<num> keep_go knee_<do> leg_<do> like_the long_<attend>
        long_as look_at minut_<place> of_them on_your or_the other_arm other_leg other_side pull_apart
        shoulder_<do> side_plank sit_to stay_till that_<num> that_your the_clock to_<swap> walk_<part> walk_back
        with_the you_want your_hand your_own
      `,
    ],
    [
      0.2,
      `
        0_0 0_<num> 0_<pace> 0_of 0_second 0_to <air>_back <air>_breath <air>_in <air>_of <air>_ther
        <attend>_about <attend>_anyth <attend>_as <attend>_at <attend>_befor <attend>_fiv <attend>_has
        <attend>_into <attend>_jaw <attend>_like <attend>_long <attend>_many <attend>_now <attend>_odd
        <attend>_of <attend>_oil <attend>_over <attend>_round <attend>_shut <attend>_stretch <attend>_wide
        <attend>_with <attend>_youv <chat>_ahead <chat>_alway <chat>_be <chat>_bor <chat>_button <chat>_call
        <chat>_enjoy <chat>_exercis <chat>_fanc <chat>_first <chat>_found <chat>_get <chat>_got <chat>_home
        <chat>_if <chat>_in <chat>_just <chat>_like <chat>_me <chat>_of <chat>_one <chat>_only <chat>_read
        <chat>_rest <chat>_stay <chat>_tell <chat>_th <chat>_that <chat>_think <chat>_time <chat>_told <chat>_us
        <chat>_wake <chat>_werent <chat>_wont <chat>_writ <chat>_you <do>_and <do>_body <do>_if <do>_leg
        <do>_onto <do>_round <do>_through <far>_home <far>_it <far>_kne <far>_lad <far>_loop <far>_lung
        <far>_minut <far>_squar <far>_the <harm>_hold <harm>_its <harm>_kne <harm>_leg <harm>_out <harm>_over
        <harm>_your <ill>_its <ill>_of <kit>_again <kit>_away <kit>_for <kit>_it <kit>_squeak <kit>_to <kit>_up
        <kit>_ups <kit>_with <less>_between <less>_hold <less>_in <less>_jog <less>_like <less>_long <less>_past
        <less>_to <less>_your <more>_again <more>_down <more>_foot <more>_jog <more>_like <more>_more <more>_out
        <more>_sheet <more>_than <more>_toda <move>_as <move>_body <move>_deep <move>_eye <move>_go <move>_if
        <move>_it <move>_leg <move>_onto <move>_out <move>_over <move>_push <move>_round <move>_that <move>_ther
        <move>_through <move>_till <move>_without <move>_you <not>_ask <not>_bad <not>_be <not>_break <not>_burpe
        <not>_clap <not>_clever <not>_count <not>_even <not>_forget <not>_get <not>_got <not>_hang <not>_hurt
        <not>_know <not>_like <not>_long <not>_make <not>_number <not>_pleas <not>_rest <not>_rush <not>_stop
        <not>_tell <not>_you <num>_0 <num>_a <num>_again <num>_and <num>_at <num>_breath <num>_each <num>_eight
        <num>_for <num>_goe <num>_hundr <num>_if <num>_lot <num>_muscl <num>_past <num>_round <num>_second
        <num>_set <num>_slow <num>_thre <num>_tim <num>_trip <num>_with <pace>_0 <pace>_about <pace>_among
        <pace>_and <pace>_between <pace>_breath <pace>_just <pace>_lot <pace>_lower <pace>_off <pace>_one
        <pace>_run <pace>_set <pace>_squat <pace>_time <part>_a <part>_again <part>_breath <part>_dig
        <part>_extension <part>_flick <part>_for <part>_forward <part>_has <part>_is <part>_leap <part>_lift
        <part>_now <part>_only <part>_opener <part>_plank <part>_pres <part>_prop <part>_pump <part>_rock
        <part>_roll <part>_set <part>_shut <part>_slid <part>_squat <part>_stand <part>_step <part>_stop
        <part>_thrust <part>_to <part>_toe <part>_you <place>_all <place>_behind <place>_church <place>_his
        <place>_holida <place>_jaw <place>_mate <place>_me <place>_now <place>_of <place>_on <place>_out
        <place>_over <place>_round <place>_row <place>_squat <place>_still <place>_then <place>_thi <place>_to
        <place>_total <place>_two <place>_you <settle>_ahead <settle>_any <settle>_each <settle>_if <settle>_in
        <settle>_pull <settle>_to <settle>_under <settle>_ups <settle>_wet <settle>_your <swap>_break
        <swap>_burpe <swap>_count <swap>_get <swap>_hang <swap>_number <swap>_over <swap>_rest <swap>_see
        <swap>_talk <swap>_two <swap>_with <take>_out <take>_pull <take>_them <take>_ther <take>_to <take>_ups
        <take>_wet <take>_your <wrong>_back a_<air> a_<part> a_<place> a_<settle> a_<take> a_<wrong> a_bet a_bit
        a_breath a_breather a_broomstick a_clean a_competition a_debutant a_desk a_door a_few a_hike a_hundr
        a_ladder a_leg a_man a_month a_race a_seat a_side a_sit a_skip a_slow a_th a_tin a_trap a_very a_week
        a_weight a_whol a_wobbl about_0 about_it about_what advanc_sheet after_a again_<place> again_at
        all_<pace> all_count all_it all_right among_yourselv an_advert anchor_<place> anchor_down and_<more>
        and_<part> and_a and_again and_back and_chang and_do and_its and_kne and_one and_releas and_shak and_up
        and_were ankl_do ankl_pump are_<chat> are_<more> are_so are_still are_stronger are_tied arm_a arm_at
        as_<place> as_befor as_many as_the as_wide ask_<chat> at_<part> at_home at_knee at_that away_<chat>
        away_you back_<chat> back_<do> back_<harm> back_<more> back_<place> back_for back_on back_squat back_the
        back_toe back_up back_you band_are band_off band_squeak bar_down be_<harm> be_<ill> be_<part> be_at
        be_back be_hard be_quiet be_sick bear_<do> becaus_<chat> becaus_the been_<more> been_<place> behind_the
        bel_<air> bel_breath bell_<place> bell_down bend_over bent_end better_than between_them big_<num> big_lad
        bit_<num> bit_on bit_one both_of both_sid bottom_<kit> bottom_<move> bottom_step br_both break_<place>
        breath_in breath_ther burn_that by_<place> by_the calf_<attend> calf_<do> calf_stretch call_a call_them
        came_<place> can_<pace> can_get can_see can_to car_<place> car_on cat_cow chair_again chest_<do>
        chest_now chest_opener chest_stretch child_pose chin_up clean_off clean_one climb_<kit> coat_hanger
        com_out come_forward come_in come_on come_over cone_to corkscrew_com could_do couldnt_<do> couldnt_<move>
        count_your crab_walk creak_and cushion_down cushion_with dead_bug dead_lift dig_<far> dig_deep do_<num>
        do_a do_that do_the do_two doe_<num> doesnt_<ill> doesnt_hurt dont_<attend> dont_be dont_bend dont_kick
        dont_make dont_rush dont_shut dont_throw dont_wor door_and down_and down_mate drill_0 dull_<settle>
        dull_take each_foot easy_jog else_<place> em_<pace> empt_<kit> empt_bar enjo_it ever_minut eye_contact
        eye_shut face_<do> face_pull fall_out fall_over farmer_<do> feel_<attend> feel_like feel_odd feel_oil
        few_till fifteen_<place> find_yourself finish_your first_<chat> first_<settle> first_one floor_<attend>
        floor_if floor_wher foot_<place> foot_<settle> foot_come foot_forward for_0 for_<num> for_carry for_five
        for_toda for_twent for_your forearm_plank found_it front_<do> full_minut gap_under get_<more> get_a
        get_up get_wet get_your give_<place> give_your go_0 go_ahead go_on go_to gone_the got_<harm> got_<num>
        got_the got_wet grab_your grip_<attend> grip_burn grip_if had_a half_<far> half_a half_past
        hamstr_<attend> hamstr_<do> hamstr_stretch hand_<place> hand_hang hand_higher hand_out hand_under
        hang_<place> hang_out has_<num> have_<num> have_a head_com head_follow heal_<do> hear_<chat>
        hear_somebody heel_<do> heel_<settle> heel_dig heel_flick heel_in heel_prop heel_rais heel_slid
        here_<place> high_kne hip_cramp hip_hing hip_thrust his_<part> hold_<num> hold_each hollow_<settle>
        hollow_<take> hollow_hold how_<attend> how_<less> how_<place> how_long how_many how_much hug_the hug_your
        i_<attend> i_<settle> i_alway i_call i_will if_you if_youv ignor_it im_<place> in_0 in_<kit> in_a
        in_between in_church in_here in_his in_the in_total in_you inner_<far> inner_rang is_<chat> is_<more>
        is_it is_suppos is_that is_watch is_what is_wher isnt_it it_<chat> it_<harm> it_<num> it_<pace> it_com
        it_count it_creak it_feel it_for it_go it_in it_is it_just it_let it_lighter it_liv it_look it_say
        it_talk it_twic it_was itll_be its_<air> its_<attend> its_<not> its_<pace> its_<wrong> its_like its_not
        its_on its_only its_quick its_the its_warm its_wrong join_<place> join_in just_<settle> keep_<chat>
        keep_<more> keep_<place> keep_it keep_push keep_up keep_you kick_it kick_them kne_and kne_are kne_down
        kne_ther knee_<far> knee_<move> knee_extension knee_is last_<chat> last_one left_foot leg_<more>
        leg_<move> leg_for leg_leap leg_lower leg_off leg_only leg_rais leg_stand leg_together leg_up
        less_<attend> less_like let_say let_us let_wake lie_ther like_a like_and like_it like_they littl_loop
        littl_squar long_<num> long_for long_one look_<attend> look_after look_like loop_<place> loop_on lost_the
        low_<do> low_<move> low_lung make_eye make_it make_that me_<chat> meant_to minut_and minut_on
        more_<attend> more_like more_on more_time mother_listen mountain_climber mov_<place> move_<place> move_on
        muscl_that my_<chat> my_<part> near_<swap> near_home near_ther need_to never_touch next_<kit>
        ninet_<pace> ninet_second no_<less> no_<settle> no_<take> no_break no_burpe no_hang no_number no_rest
        nobod_ever nobod_is not_<num> not_bad not_go not_got not_long not_pleas not_wor not_you number_<num> of_a
        of_an of_cereal of_that of_thes of_thos off_<chat> off_do off_you older_than on_<chat> on_<num>
        on_<place> on_down on_holida on_me on_one on_still on_thi on_with once_<more> once_more one_<chat>
        one_<far> one_<num> one_<take> one_as one_finger one_for one_leg one_minut one_more one_of only_<chat>
        only_<num> only_you onto_your operat_<part> operat_leg or_<part> or_a or_heel or_superwoman other_<chat>
        other_<part> other_way out_<pace> out_of out_slow out_ther out_your outsid_of over_do over_ther over_to
        over_with over_you own_<pace> pal_off park_it pass_through paus_<do> paus_<move> peopl_say point_like
        pretend_<chat> priz_for puff_<part> puff_back pull_a push_<place> push_through put_<place> put_them
        quad_<chat> quad_set quiet_on race_to rack_it read_the remember_the remember_wher rest_<attend> rest_your
        right_arm rise_to rock_<far> roll_<place> roll_on roll_onto roll_over round_and round_in row_it run_with
        rush_and same_<harm> same_<move> same_again same_deal same_spot say_<chat> scap_<do> scap_pull seat_<do>
        seat_<move> second_<chat> second_<do> second_<move> second_<num> second_<pace> second_<settle>
        second_<take> second_lot second_one second_set second_time shak_<place> shak_out shak_the shak_your
        shaking_<less> shoulder_pres shoulder_roll sick_of side_<do> side_<kit> side_<part> side_leg side_step
        sideway_down sinc_the singl_leg sip_of sit_on skin_the slow_<air> slow_breath small_of so_<chat>
        so_<place> so_clos soft_jaw some_peopl somebody_knee somebody_watch sound_<attend> sound_like split_<do>
        split_squat squar_with squeez_<more> squeez_up stand_<attend> stand_on start_with static_<attend>
        static_<part> static_quad stay_<far> stay_<more> stay_as stay_for stay_in stay_up step_<more> step_up
        step_ups stick_acros still_fiv stomach_talk straight_<do> straight_<place> straight_into straight_over
        straight_round straight_to straighten_your strong_<part> stronger_than support_<settle> support_<take>
        support_hold suppos_to swap_<part> swap_<place> swap_over switch_<part> switch_it switch_leg take_it
        take_your talk_<chat> talk_about tell_you tell_your ten_<pace> terminal_<part> terminal_knee thank_me
        that_0 that_<chat> that_<more> that_<place> that_a that_allow that_both that_dull that_hold that_look
        that_normal that_out that_the that_you thatll_<swap> thatll_do the_<carer> the_<settle> the_bar the_bent
        the_best the_bin the_board the_book the_cake the_calf the_car the_chair the_chin the_dead the_dentist
        the_dog the_fenc the_flamingo the_glut the_hand the_hook the_internet the_kettl the_line the_littl
        the_mailbox the_minut the_muscl the_needl the_number the_offic the_pair the_parish the_pictur the_posh
        the_right the_rosar the_rose the_row the_shop the_sign the_spin the_stag the_start the_step the_stork
        the_tightrop the_usual the_wash the_wrong them_<swap> them_acros them_and them_cushion them_on
        ther_<attend> ther_<chat> ther_<far> ther_till thes_<attend> thes_are they_were theyv_<not> theyv_not
        thi_<not> thi_is thi_isnt thi_one thin_<num> thin_one think_about think_of third_one thirt_<pace>
        thirt_second thos_<part> thre_<part> thre_breath thre_head thre_of thre_slow thread_the through_<chat>
        throw_it tidy_one tied_<place> tied_on till_it till_the till_your time_<place> to_<num> to_chest to_do
        to_hand to_stand to_ten to_thos to_toe to_twent toe_tap told_<chat> too_<place> too_long tuck_<settle>
        turn_<chat> turn_<do> turn_<place> turn_round twent_<pace> twent_second twic_<place> two_<num> two_and
        two_at two_com two_goe two_lot two_more under_<num> under_the up_<chat> up_<part> up_again up_down up_out
        ups_<place> us_<chat> us_<place> us_<settle> us_go used_to very_<chat> wake_the walk_<attend>
        walk_<place> walk_it walk_like wall_<do> want_<num> want_<place> want_one want_that warm_<more>
        warm_<place> warm_up was_<chat> was_<place> watch_<chat> watch_me way_ther we_<chat> we_<settle>
        we_<swap> we_all we_are we_do we_go we_start wee_<kit> wee_<settle> wee_<take> wee_huff wee_loop week_to
        weight_down weight_up went_to what_<place> what_keep whatever_<chat> whatever_<more> whatever_left
        when_<chat> when_the when_youv which_is wide_as will_be with_a with_them won_a work_<place> would_be
        wrist_<do> wrist_rock writ_it written_<place> you_<less> you_at you_get you_go you_just you_on you_rock
        you_see you_stay you_to you_werent youd_be youll_<swap> youll_want your_<attend> your_<do> your_<kit>
        your_<num> your_<settle> your_<take> your_best your_bor your_cardigan your_chair your_daughter your_fac
        your_fanc your_finger your_front your_hamstr your_hip your_kne your_lean your_mat your_minut your_mother
        your_other your_partner your_read your_rest your_second your_sheet your_shop your_shoulder your_side
        your_stomach your_writ youv_<not> youv_finish youv_lost youv_not youv_read youv_the youv_your
      `,
    ],
    [
      -0.2,
      `
        0_<do> 0_<part> 0_leg 0_oclock 0_turn <air>_for <attend>_a <attend>_ahead <attend>_do <attend>_hand
        <attend>_if <attend>_ive <attend>_kne <attend>_on <attend>_out <attend>_step <attend>_ther <attend>_thi
        <attend>_well <attend>_your <chat>_a <chat>_again <chat>_ask <chat>_backward <chat>_by <chat>_came
        <chat>_could <chat>_danc <chat>_do <chat>_eight <chat>_have <chat>_here <chat>_hundr <chat>_inch
        <chat>_is <chat>_leg <chat>_lift <chat>_look <chat>_mean <chat>_newer <chat>_plank <chat>_proper
        <chat>_pull <chat>_seen <chat>_should <chat>_sit <chat>_stand <chat>_wobbl <chat>_would <chat>_your
        <chat>_yourself <do>_a <do>_about <do>_as <do>_each <do>_em <do>_forward <do>_from <do>_in <do>_it
        <do>_left <do>_not <do>_side <do>_the <do>_them <do>_ther <do>_under <do>_you <do>_your <do>_yourself
        <far>_back <far>_for <far>_go <far>_i <far>_is <far>_step <far>_than <far>_toe <far>_up <far>_version
        <harm>_on <kit>_a <kit>_by <kit>_com <kit>_if <kit>_in <kit>_is <kit>_next <kit>_on <kit>_stay <kit>_the
        <kit>_under <less>_it <less>_rep <less>_see <less>_ther <less>_with <more>_folk <more>_in <more>_one
        <more>_top <move>_breath <move>_down <move>_everyth <move>_forward <move>_from <move>_in <move>_on
        <move>_sure <move>_tall <move>_them <move>_walk <move>_your <move>_yourself <not>_an <not>_at <not>_bounc
        <not>_drop <not>_else <not>_fish <not>_hold <not>_in <not>_jump <not>_just <not>_let <not>_need <not>_of
        <not>_plank <not>_plonk <not>_see <not>_sit <not>_snatch <not>_stamp <not>_start <not>_to <not>_want
        <num>_behind <num>_count <num>_dumbbell <num>_elephant <num>_hand <num>_inch <num>_kilo <num>_knee
        <num>_line <num>_mississippi <num>_oclock <num>_piec <num>_side <num>_step <num>_strok <num>_tenth
        <pace>_a <pace>_for <pace>_go <pace>_in <pace>_now <pace>_of <pace>_out <pace>_toe <pace>_twic <pace>_up
        <pace>_with <part>_apart <part>_at <part>_back <part>_bent <part>_blad <part>_do <part>_ever <part>_first
        <part>_flat <part>_goe <part>_here <part>_hip <part>_off <part>_over <part>_push <part>_straight
        <part>_that <part>_through <part>_till <part>_up <part>_width <part>_with <place>_again <place>_away
        <place>_both <place>_com <place>_each <place>_first <place>_flat <place>_for <place>_front <place>_if
        <place>_kne <place>_line <place>_our <place>_quiet <place>_than <place>_that <place>_the <place>_thre
        <place>_till <place>_under <place>_up <place>_your <settle>_again <settle>_and <settle>_another
        <settle>_back <settle>_backward <settle>_down <settle>_for <settle>_from <settle>_heav <settle>_it
        <settle>_more <settle>_out <settle>_proper <settle>_someth <settle>_the <settle>_with <swap>_at
        <swap>_bell <swap>_drop <swap>_go <swap>_half <swap>_hold <swap>_it <swap>_more <swap>_not <swap>_off
        <swap>_on <swap>_sit <swap>_your <take>_again <take>_off <take>_the <take>_with <wrong>_in a_<attend>
        a_<do> a_<far> a_<harm> a_<kit> a_<more> a_<move> a_<not> a_<pace> a_baby a_banana a_beat a_big a_bow
        a_bridg a_car a_cat a_chair a_hair a_hand a_knee a_light a_look a_lot a_no a_pendulum a_plank a_rest
        a_sprawl a_stop a_stretch a_ten a_time a_tug a_two a_well a_whisker a_window about_a about_eight
        about_your abov_the against_the ahead_of all_<num> all_<part> all_hold all_i all_the all_thre along_the
        an_<far> an_<less> an_<part> an_inch and_<move> and_<pace> and_<settle> and_<swap> and_all and_call
        and_even and_five and_leg and_right and_shut and_tell and_you ankl_<chat> ankl_<settle> ankl_go
        are_<less> are_<not> are_not arm_<place> as_if as_well at_a at_about at_me at_six at_the at_your
        away_from back_<part> back_and back_off bar_on be_cute becaus_<attend> becaus_if befor_<chat> befor_you
        behind_<chat> behind_you bend_the between_<num> between_your big_toe bin_it bit_<chat> body_<do>
        body_swing both_hand bottom_<chat> bottom_<part> bottom_<place> brisk_<do> brisk_<move> brisk_walk
        bum_<place> bus_com by_your call_that can_<do> can_<move> can_<settle> can_<take> can_hold cant_see
        chest_<place> coffe_<place> coffe_on com_<place> com_down com_for come_down come_off come_out
        count_<place> count_of da_dum dead_<attend> dead_<place> dead_still do_<do> do_<not> do_<part> do_leg
        do_not do_your dont_<chat> dont_<do> dont_hold dont_let dont_plank dont_want down_<attend> down_<pace>
        down_again down_like down_quiet down_ther drop_off each_other ease_off elbow_<place> else_the em_<do>
        em_<move> em_<place> ever_<do> ever_<num> ever_one ever_rep ever_time everybod_else everyon_<chat>
        eye_<place> fac_the face_<place> feel_it finish_stood first_0 first_<num> five_<swap> five_degre
        five_kilo flatten_it float_<place> for_<far> for_<harm> for_about for_four for_lunch for_my for_thre
        forearm_<place> forehead_<place> forehead_down four_<pace> four_second front_<part> front_leg front_of
        full_second get_down get_to go_<less> go_<pace> go_<place> go_<swap> go_again go_backward go_for go_out
        go_purpl good_<part> good_side got_more got_them grab_it grip_go half_<chat> half_one half_rep has_to
        head_<chat> head_<place> hear_stomp heel_<place> heel_down hip_<attend> hip_<place> hip_that hold_<place>
        hold_it hold_on hold_your how_<chat> how_peopl how_you i_<swap> i_do i_dont i_mean i_see i_want i_would
        if_ive if_the if_they if_thi im_just im_see in_<attend> in_<less> in_<pace> in_<place> in_and in_down
        in_for in_front in_one in_till inch_is instead_of into_a into_the iron_board is_<swap> is_a is_at is_how
        is_okay is_plent it_<attend> it_<move> it_<place> it_be it_from it_last it_mov it_stay it_ther it_touch
        it_yes itll_<settle> its_<far> its_<less> its_<part> its_all its_com its_hav its_mate its_nice its_pret
        its_pull its_slip its_ther its_tiny ive_<chat> ive_seen just_a just_the keen_one keep_<air> keep_breath
        keep_talk keep_the keep_walk keep_your kne_<attend> kne_<more> kne_up knee_<place> knock_<place>
        know_<chat> know_its know_your land_<place> lane_<num> last_0 last_<num> last_inch leap_<part>
        leap_<place> leav_the leav_thi leg_<attend> leg_<chat> leg_at leg_first leg_push let_<chat> let_<settle>
        let_go let_the let_yourself light_<part> light_<place> like_you like_your listen_for littl_one
        look_<place> look_for lose_the lower_<chat> make_sure make_the me_and me_why mean_that meat_bit middl_of
        miss_it need_a need_you nerv_talk next_<num> nice_and nine_tenth no_<do> no_<far> no_<part> no_<wrong>
        no_sit not_<do> not_<place> not_after not_an not_hav not_in not_on not_to not_want not_your noth_else
        of_<chat> of_<kit> of_<num> of_five of_my of_ten of_the of_you off_it on_our once_your one_<attend>
        one_<kit> one_<part> one_<place> one_at one_hand one_knee one_line one_piec one_second one_side one_up
        only_the opposit_<part> or_<chat> or_<move> or_thereabout or_youll or_your other_knee other_pair
        out_<attend> out_for over_0 over_your palm_<place> paus_twic pay_for plat_<place> point_at pres_<place>
        pull_<place> purpl_fac quarter_<do> quarter_<move> quarter_squat quiet_<part> quiet_<take> quiet_feet
        replac_them rest_<place> rest_on rest_with rib_<place> rib_down right_<place> right_into round_to
        said_<do> said_<move> said_float same_<part> same_arm same_clock same_fiv same_side same_way say_a
        second_<kit> second_toe see_<num> see_<part> see_a seen_that set_the short_<kit> shorten_it
        should_<attend> should_be shoulder_<place> shoulder_blad shoulder_down shout_for show_off show_the
        shut_it side_of side_on side_to simp_<settle> simp_<take> singl_<num> singl_one sit_<attend> sit_in
        sit_ther six_<place> six_out sneak_<place> so_it sock_<place> sock_on somebody_got squar_to squeez_it
        stag_<num> stag_thre stand_<part> star_at start_again stay_<place> stay_on step_<place> still_<pace>
        still_a stop_at straight_<attend> straight_<more> straight_<part> straight_up strok_a tell_me ten_<swap>
        ten_kilo than_a that_<attend> that_<do> that_<kit> that_<less> that_<pace> that_<part> that_<swap>
        that_all that_catch that_count that_doe that_done that_fine that_foot that_it that_pay that_set
        that_should that_stay that_wher that_who the_<ill> the_<kit> the_<num> the_<pace> the_<swap> the_<wrong>
        the_air the_bag the_band the_broomstick the_ceil the_cone the_corner the_end the_feel the_finish
        the_front the_game the_good the_hair the_hip the_hole the_in the_joint the_kne the_knee the_last
        the_ligament the_loop the_lot the_mat the_meat the_middl the_next the_one the_other the_out the_part
        the_person the_piano the_plac the_rest the_same the_seat the_sid the_side the_tank the_top the_tree
        the_tricep the_twent the_two the_upright the_way the_whol them_<place> them_down them_ther ther_<more>
        ther_for ther_is ther_more ther_to thes_cold they_<not> they_dont theyr_still theyv_gone thi_into
        thi_time third_0 thirt_<far> thirt_degre thre_<pace> thre_count thre_to through_the thumb_<place>
        till_<chat> till_i time_with to_<chat> to_<far> to_<harm> to_<less> to_<settle> to_catch to_come
        to_impres to_see to_show to_side to_sit to_the to_you too_<far> top_<part> tuck_<place> turn_out turn_thi
        two_<do> two_<pace> two_<part> two_<place> two_step two_when under_<chat> under_you under_your
        up_<attend> up_<far> up_top up_with us_all us_come wait_at wait_ther walk_out walk_to want_anybod
        watch_your water_<swap> water_bottl way_<more> way_<place> way_<swap> way_down way_home way_up way_you
        we_<do> we_<move> we_lift we_tap week_on went_<more> were_after what_its what_we what_you when_it
        wher_its wher_your whol_<pace> whol_<part> whol_foot whol_way will_<settle> will_<take> with_it with_just
        with_your without_the work_the would_<chat> wrist_<place> yes_and you_<not> you_by you_came you_could
        you_have you_is you_lift you_pull you_round you_sit you_stop you_walk youll_<settle> youll_go your_<chat>
        your_<harm> your_<place> your_after your_allow your_armpit your_backsid your_belt your_bottom your_bus
        your_chest your_chin your_elbow your_good your_handrail your_leg your_look your_neck your_neighbour
        your_newer your_one your_rib your_right your_shirt your_sho your_sign your_tail your_tipto your_toe
        yourself_<do> yourself_<place> youv_got youv_had
      `,
    ],
    [
      -0.4,
      `
        <attend>_up <chat>_0 <chat>_after <chat>_see <chat>_the <do>_to <not>_a <num>_out <part>_go <part>_on
        <part>_stay <place>_like <take>_it a_squat about_<num> for_one go_down if_that is_<less> is_all it_<do>
        it_<far> like_<chat> not_a off_the on_a on_it out_<place> over_the side_<place> that_how the_<air>
        the_arm the_floor the_ground the_leg to_<do> to_<move> two_<kit> want_to whol_time you_<move> your_<part>
        your_a
      `,
    ],
    [-0.6, '<move>_the you_<do>'],
    [-0.8, 'the_<part>'],
  ],
  phrase: [
    [0.8, 'chat transitions'],
    [0.6, 'dose_only empty_clauses praise purpose'],
    [0.4, 'range-hint'],
    [0.2, 'caution-likely retracted'],
    [
      -0.2,
      `
        breathing-hint breathing-likely caution-hint easier-hint easier-likely easier-sure equipment-sure
        execution-likely focus-likely harder-likely range-likely range-sure setup-hint setup-sure
      `,
    ],
    [
      -0.4,
      `
        breathing-sure caution-sure execution-sure fault-likely fault-sure focus-sure setup-likely tempo-hint
        tempo-likely
      `,
    ],
    [-0.6, 'harder-sure'],
    [-0.8, 'tempo-sure'],
  ],
  start: [
    [1, '<part>_<do>'],
    [
      0.4,
      `
        <do>_<part> <not>_<attend> <not>_<pace> back_to chang_leg keep_it_com look_at sit_to_stand stay_till
        that_your
      `,
    ],
    [
      0.2,
      `
        <attend>_<do> <attend>_<not> <chat>_<chat> <chat>_<settle> <chat>_<swap> <do>_<take> <far>_<part>
        <kit>_<do> <kit>_<move> <less>_<num> <more>_<do> <more>_<more> <move>_<do> <not>_<harm> <not>_<num>
        <num>_<more> <num>_<num> <pace>_<do> <pace>_<num> <pace>_<pace> <part>_<kit> <part>_<settle>
        <place>_<chat> <settle>_<do> <settle>_<num> <settle>_<place> <swap>_<attend> <swap>_<chat> <swap>_<less>
        <swap>_<settle> <swap>_<take> <take>_<do> a_few a_minut a_skip all_one_foot anchor_down anchor_down_to
        and_again ankl_pump arm_and as_many at_the away_you away_you_go back_at back_at_the back_down_on back_in
        back_on back_on_the back_to_the back_up back_up_on bar_down big_lad both_feet both_feet_down
        both_leg_together both_of both_of_you both_sid br_both br_both_leg by_the by_the_way can_you_see car_on
        car_on_till chest_opener chest_stretch chin_up come_on come_up cushion_down dead_bug dead_lift do_it_twic
        do_not_wor do_the_other dont_be dont_bend dont_bend_over dont_kick_it dont_make dont_make_eye
        dont_roll_up dont_rush dont_rush_and dont_shut dont_shut_your dont_throw dont_throw_it dont_wor down_on
        down_on_the drill_0 each_leg ever_minut face_pull fall_out feet_as_wide feet_down find_a_bit
        find_the_middl find_yourself find_yourself_a first_one for_a forearm_plank from_the_bottom front_foot
        give_your give_your_arm go_back_to go_on grip_if grip_if_you half_a_minut half_way_ther hand_higher
        hand_on hand_under hand_up hang_out have_a have_a_breath head_down heel_in heel_prop heel_to heel_to_toe
        high_kne hip_hing hip_thrust hold_each hold_each_one hold_it_up hold_on_still hug_the hug_your
        hug_your_kne i_will if_it_creak if_that_dull if_you if_you_want if_you_werent if_your if_your_stomach
        if_youv_the in_you in_your_head is_that isnt_it it_just it_should_be it_was itll_be its_a_ladder
        its_a_long its_like its_like_a its_not its_on its_the its_the_insid its_the_same keep_go keep_it
        keep_it_go keep_push keep_the_kne keep_up kick_them kick_them_acros kne_are kne_are_go kne_down kne_in
        kne_to_chest last_one leav_it_on left_foot left_foot_forward leg_down leg_up let_go_long let_say
        let_the_feet let_the_foot let_us let_us_go let_wake let_wake_the let_your_head lie_ther like_a_corkscrew
        like_a_debutant like_an_umbrella like_youv_your look_at_that look_at_you loop_on low_lung make_it
        near_enough never_touch ninet_second no_break no_burpe no_hang no_number no_priz no_rest nobod_ever
        nobod_is nobod_is_watch not_a_trap not_long not_the_other not_you off_you off_you_go off_your on_the
        on_the_gras on_to once_more one_arm one_arm_at one_foot_forward one_more one_more_time onto_your
        onto_your_back or_a or_do_it or_the other_arm other_leg out_to out_to_the over_the over_the_top over_to
        over_to_the park_it pick_your pick_your_other pull_a pull_apart push_through put_a_bit rack_it rate_0_to
        remember_the remember_wher remember_wher_it rest_your rise_to rise_to_hand roll_on roll_onto
        roll_onto_your roll_out roll_over round_the_back run_like_your same_again same_as_befor same_deal
        second_lot second_one second_time shak_it_out shak_out shak_the shak_the_hand shak_your side_plank
        side_step singl_leg sip_of sit_back sit_back_on sit_on_your sit_to slow_down slow_down_mate slow_it
        slow_it_down soft_jaw some_peopl some_peopl_say somebody_knee somebody_knee_is squeez_and_releas
        squeez_up squeez_up_the stand_on stand_on_one start_again_at static_quad stay_as stay_as_long stay_for
        stay_in stay_in_it stay_ther stay_ther_till stay_till_your stay_up stay_up_for step_out step_ups
        stick_acros stick_acros_your stick_away still_fiv still_on straight_into straight_into_the straight_on
        straight_over straight_over_on straighten_your straighten_your_leg swap_leg switch_it switch_it_up
        switch_leg take_the take_the_towel terminal_knee terminal_knee_extension that_a that_a_proper that_all_it
        that_both that_is_the that_look that_the that_the_muscl that_the_whol that_you thatll_do the_band
        the_band_squeak the_calf the_hip the_hip_flexor the_last the_other_arm the_other_leg the_other_side
        the_spin the_third the_third_one ther_a ther_a_gap thes_are thi_is thi_is_the thi_isnt think_of
        think_of_the thirt_second thre_slow thre_slow_breath thread_the thread_the_needl through_the till_the
        till_your till_your_shoulder to_the_wall toe_down toe_point_like tuck_the tuck_the_back two_goe
        two_second_squeez under_the up_and up_down up_on_top wait_for_it walk_back walk_it walk_it_in walk_it_off
        walk_your_feet we_do we_go weight_up which_is which_is_a whil_your with_a with_a_dumbbell with_the
        wrist_rock you_can you_dont_need you_have you_just you_turn youll_want youll_want_that your_lean
        your_lean_back your_own your_second youv_gone
      `,
    ],
    [
      -0.2,
      `
        0_leg 0_out 0_to_0 <air>_<place> <attend>_<attend> <attend>_<far> <attend>_<more> <attend>_<part>
        <attend>_<take> <chat>_<less> <chat>_<not> <chat>_<pace> <do>_<attend> <do>_<far> <do>_<less> <do>_<more>
        <do>_<num> <do>_<pace> <far>_<do> <far>_<kit> <far>_<place> <kit>_<far> <less>_<attend> <less>_<chat>
        <less>_<less> <more>_<num> <more>_<place> <move>_<air> <move>_<less> <move>_<pace> <not>_<chat>
        <not>_<do> <not>_<far> <num>_<attend> <num>_<far> <num>_<place> <pace>_<kit> <part>_<attend>
        <part>_<chat> <part>_<far> <part>_<less> <part>_<move> <part>_<not> <part>_<place> <place>_<more>
        <place>_<num> <place>_<pace> <place>_<part> <place>_<place> <settle>_<far> <settle>_<less>
        <settle>_<pace> <settle>_<swap> <swap>_<far> <swap>_<wrong> <take>_<far> <take>_<more> <take>_<pace> a_0
        a_bit a_bit_of a_good a_pull a_well a_whisker about_half all_of_you all_the all_the_way and_right
        anyon_who as_if at_you back_and back_of back_of_the back_off becaus_if bin_it car_on_like come_out da_dum
        dead_still do_leg down_again down_for down_to ease_off ever_rep ever_singl ever_singl_one everybod_else
        fac_the flatten_it for_my forehead_down four_second go_down go_quicker grip_go hang_ther have_a_look
        hold_the i_am i_do i_do_thi i_dont i_dont_need i_dont_want i_know_its i_know_your i_mean i_mean_that
        i_need_you i_said_float i_see i_want i_want_the i_want_to i_would if_the if_they if_you_have ill_not_say
        im_just im_just_the im_not_after im_not_be im_see in_down in_for in_for_four in_on it_doesnt it_stay
        its_com its_com_for its_hav its_hav_a its_nice its_not_an its_pret its_pull its_slip its_the_third
        its_tiny ive_seen_that keep_breath keep_talk keep_them_ther keep_walk keep_your last_0 last_0_metr
        leg_push let_the let_us_come let_yourself like_a like_somebody like_your like_youv look_at_the lose_the
        make_sure make_the near_the nice_and nice_and_even no_sit not_a not_at off_the off_the_floor one_at
        one_at_a one_second one_up or_do_ten or_youll or_your other_knee out_for over_0 over_on over_on_your
        paus_twic put_the_good quarter_squat rest_with rest_with_me rib_down round_to round_to_the
        round_two_length same_clock same_fiv same_side set_the shak_it_yes shorten_it show_off side_on side_on_to
        side_to side_to_side sock_on squeez_it stag_thre stand_on_the stop_at swap_leg_when tell_me ten_kilo
        that_a_no that_a_squat that_a_stop that_all that_all_i that_fine that_how_you that_is_how that_set
        that_should that_should_be that_stay that_the_feel that_the_one that_the_part that_the_plac that_ther
        that_ther_to that_what_its that_wher that_wher_it that_who the_arm the_back the_colour the_colour_of
        the_hand the_leg the_next the_other_pair the_two the_whol the_whol_time the_whol_way ther_is ther_more
        theyr_still thi_is_at thi_time thre_to two_step two_when two_when_your up_for up_ther use_the wait_ther
        walk_out watch_the we_call_that we_lift you_are_go you_can_do you_could you_round you_want your_after
        your_allow your_not_hav
      `,
    ],
    [
      -0.4,
      `
        <not>_<wrong> <num>_<kit> <num>_<part> <part>_<part> <place>_<attend> <settle>_<attend> five_second
        that_how the_other your_a
      `,
    ],
  ],
  word: [
    [0.8, 'call minut row shak ups we'],
    [
      0.6,
      `
        clean eight got he his leg lot me my now number only pres rais remember rest thi thirt till twent twic us
        walk was
      `,
    ],
    [
      0.4,
      `
        actual again ask be been best better bridg chang clock cushion did do each fifteen five flexor forget
        fort four has have her here hes hollow hug i ill is isnt lad ladder last later look love lung make many
        muscl name never ninet of oh okay on once other quad rack read rose say second she sheet side sinc six so
        some somebody squat stair support switch ten th that the ther thes think thos tidy twelv very warm were
        what who wor wrong youll
      `,
    ],
    [
      0.2,
      `
        0 advert after afterward age agn all alread alright alway among anchor and another anti anyth anywa are
        around as awak aye back bad balanc band bank bear beautiful becaus between bicycl bird body bog book
        bound break breath breather broomstick bug burpe cake calf calv cap car cardigan carmel cat ceilidh
        ceiling cereal chair chat cheer child chop church clas click climb climber club coat cobra comment
        competition complaint con contact couldnt council count court cow crab crawl creak cream crunch curl
        daughter davo day dead deadlift deal debutant dentist derek desk different dig dip doe dog done door
        drill earlier eleven elwyn enjo enjoy enough everyon except excus exercis extension fabulou face fall
        fanc farmer fenc final find finish fire fiv flamingo flop folk for forgotten found fourth friend fun gap
        gaz glut gold gone good gorgeou grand grapevin great groan groceri group gwen habit had hall halo hamstr
        hanger hear heart hed hid hike hill him hing hm hmm holida hour how hundr id idea ignor im imran in inner
        internet its ive jerse jim joan keep kettl kettlebell kick kind kne know laugh lie life listen liv loop
        lost made mailbox mak man march marjori meant mil min mind mine moos mother much mum nah near needl night
        nine nineteen nobod nobody nois normal noth obvious och odd offic often oil oop opener operat outsid over
        own pancak parish park partner pass peopl phil phon physio pick pictur plan plank play pool pose posh
        press pret priya priz prop proper pump pushup put raffl rain real record releas road rosar run rush said
        same sanja saw scap set seven sevent shaking shaky shed shop sick sit sixteen skin slow smell sofa
        somebod sor sound spin split squad squar squeak static station stomach stor stork strength stroll
        stronger stuff subscrib sulk superman superwoman suppos swap tatti tea teach tell terminal thatll then
        theyr third thousand thre thread thrust tim time tin tir toda told tom tongu total trev trip twist
        twister ugly uncl used usual wake wall wash watch wav week weight well went werent weve whatever when
        which whil whoever why wife wiggl wipe with wobbl won work would wriggl writ written yeah year yep yes
        yet youd yourselv youv
      `,
    ],
    [
      -0.2,
      `
        achill acros against ahead air allow an ankl arch arm armpit away baby ball bang bare beat begin beginner
        bell belt bent big bit blad block blu blue bon bone bottom bow box brak brisk brush buckl build butt
        camel carol carpet ceil centimetr check cheek chest clamp clench clos closer coffe collarbon complete
        corner crack crat creep cros cute da die dish div divvent dont doubl down downstair drift drop dum
        dumbbell ease edge effort else end even exhal explod fast feet fine fingertip firm fist flat flatten
        fling floor fold follow foot forearm forehead front further gan gent glas glu go grab gradual hair hammi
        hamstring handl handrail hard harder haul head headlight heavier heaviest height high hip hold hook hop
        hot hover however hum impres inhal insid instead itll jab jaw jerk jog just kilo kiss kneecap kneel knit
        knock knot knuckl kyle lac lan lane late lazy lean leap leav level lift ligament light lighter line load
        lock longer lose lower manner mayb mean meat meet miss mississippi moment mov move neck nerv newer nick
        nose nowher oclock one option otherwis pad paddl palm passenger paus pay pendulum perfect piano piec pin
        plent plop point position pressur proud pub pull puls purpl quarter quick quicker ramp rather reach red
        rep replac resist rhythm rop rope round safet sag seen seriou settl sharp shin shirt shoe shorten shorter
        shoulder show shuffl sideway simp sink skip slack slight slower small smaller snap snatch sneak sock
        someth spik spill spot sprawl spread sprinkler stack stag stan stanc stand statu stick stiff stomp strap
        strok sure sw swim tail tailbon take taller tank tear tent tenth them thereabout thigh tiny tipto tock
        together too touch tre treacl tricep tripod tss turn upright wait want way wher whisker wide wider width
        wind within wrap you yourself zip
      `,
    ],
    [
      -0.4,
      `
        abov backsid backward behind bend bounc bum bus ear float forward ground half hand if inch joint jump
        knee land let loos low middl opposit out pleas pocket rib see sho short slip soft step thumb toe top
        under underneath use version
      `,
    ],
    [-0.6, 'elbow heav into should tall tight tug'],
  ],
} as const satisfies CueWeights
