/** How much each feature of a clause (cue-features.ts) speaks for no cue at all; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const NONE_WEIGHTS = {
  bias: [[0.8, 'yes']],
  class: [
    [0.4, 'chat do num'],
    [0.2, 'carer take'],
    [-0.2, 'attend ill more place settle'],
    [-0.4, 'harm less move'],
    [-0.6, 'air part wrong'],
    [-0.8, 'far'],
  ],
  first: [
    [0.6, 'back down how off rest shak the'],
    [
      0.4,
      `
        <chat> <kit> <num> <place> <wrong> eight flop good he hug i its last leg love my oh okay other rack
        remember right row second six some stay still straight switch ten that ther thi time up we whil who with
        youll youv
      `,
    ],
    [
      0.2,
      `
        0 <take> actual agn alright ankl away aye balanc band bear becaus befor better bicycl bound bridg
        broomstick by calf calv car carmel chang come crab crunch curl cushion dead did do done drop each easy
        everyth except fabulou face fall fifteen find five foot for fort four front have here hes high hip hmm
        hold hollow id ill is isnt it ive look marjori min minut nah near never nine ninet no nobod noth och on
        once only oop park peopl phil pick pres press pret priya push put roll rose same save see seven shaking
        she shed side sit smil so somebod somebody sor split squat static swap thatll them thes theyll theyr
        theyv third thirt thre thread through tidy till tom trev turn twelv twent twic very walk wall weight well
        what whatever which wipe yep yes youd
      `,
    ],
    [
      -0.2,
      `
        <attend> <far> <harm> <ill> <less> <move> <settle> <swap> abov alway and anybod anyon backsid bare big
        blue bounc braver breath brisk build bum carol check chest clos colin count cut da divvent ear elbow even
        everybod eye fac feel finger flat float flutter fold forehead full get give got grow hang head if jab jaw
        jog kid knit kyle land late lean leav lift littl loos lose lower middl move neck new now opposit out palm
        pretend quit red resist rib ring rock set settl sho short shorten shoulder show shuffl shut skip small
        smooth sock soft stag stan start step strict sw tall tap thumb tight to toe together too try tss tug two
        use watch wher
      `,
    ],
    [-0.4, '<air> about ease go half let long not one stand take wait you your'],
    [-0.6, '<part> like pleas'],
  ],
  given: [
    [
      0.2,
      `
        <carer> <harm> ask can do dull few finger forgotten hand in just odd off read shop stomach take talk the
        ther till twist want wet writ your
      `,
    ],
    [-0.2, '<take> are go have like of side that they'],
  ],
  last: [
    [0.8, 'no'],
    [0.6, 'minut now pres row'],
    [
      0.4,
      `
        again between curl eight go hold lot lung okay rais rest squat stair that twic ups
      `,
    ],
    [
      0.2,
      `
        0 advert afterward age alread alright arm ask aye bad band bar beautiful bench better bicycl body book
        bound breath breather bridg bug calv can cap car cardigan carmel chair church clas clean clever climb
        climber clock com come contact count court cow crawl cushion daughter deadlift deal debutant dentist dig
        dip dog done door down drag earlier eleven elwyn enough extension fabulou fanc fenc finger finish five
        flamingo flop four good grand hall heel him hing hmm holida hour huff i internet is its jim kne lad
        ladder later leg lift listen look loop love mailbox many march marjori maureen me muscl nah name needl
        next nine nois normal not number off oh oil once only over pair phil pick pictur plank pose posti press
        prop pump push rack rain releas remember ring rose sanja say second see set seven sham sheet shov sit six
        slid so sofa soften sor spin sprint start stop strength stretch strid stuff superman superwoman tabl tea
        ten th then ther thirt thos through tidy tim tom total trap twelv twister two us walk wander warm water
        week wor wrong yeah year yep yes yet your yourselv
      `,
    ],
    [
      -0.2,
      `
        achill acros after ahead air and ankl arch armpit backsid backward behind bell bend bent blue bone bottom
        bow brisk bum bus carol carpet ceil chang cheek chest clos colin collarbon complete cone corner crat cros
        cute divvent dont dum dumbbell ear easy elephant even everybod eye fift first fist flat fling floor foot
        for forward front further game gent glas gradual grip ground hair hamstring hand hang harder heal here
        high higher honest hop in inch instead it jab jean jump kick knee kneel kyle ladi land lean level light
        like loos low manner measur middl mississippi more mov movement neck need nick opposit pendulum peopl
        plent plop pocket position prepar proud puff pull puls red rib rise round shirt short shorter shoulder
        slip slow snap soft sore sprawl stan still stomp tailbon talk taller tank tent tenth thereabout thumb
        tight tiny tipto toe together top touch towel treacl tree tricep tss tug under version wind window wob
        yellow
      `,
    ],
    [-0.4, 'bit bounc heav last long other pleas straight tall you'],
  ],
  length: [
    [1, '1-2'],
    [0.8, '3-4'],
    [0.6, '5-7'],
    [0.4, '8-12'],
  ],
  pair: [
    [0.6, '<kit>_down'],
    [
      0.4,
      `
        <chat>_go <chat>_on <chat>_read <do>_out <do>_over <do>_ups <move>_up <move>_ups <not>_wor <num>_is
        <num>_minut <num>_of <part>_flexor <part>_rais <part>_stretch <place>_here <take>_down a_<chat> a_minut
        and_<chat> back_to call_it chang_<part> chang_leg dont_<pace> down_on each_<part> each_leg high_<part>
        hip_flexor in_it is_<num> is_the its_<num> leg_<do> like_the long_<attend> long_as look_at of_them
        on_your or_the other_side over_to shak_<place> shoulder_<do> sit_to that_<num> that_your the_clock
        your_own
      `,
    ],
    [
      0.2,
      `
        0_0 0_<num> 0_<pace> 0_centimetr 0_degre 0_for 0_second 0_to <air>_breath <air>_of <air>_ther
        <attend>_about <attend>_anyth <attend>_as <attend>_at <attend>_befor <attend>_fiv <attend>_has
        <attend>_into <attend>_jaw <attend>_like <attend>_long <attend>_many <attend>_now <attend>_odd
        <attend>_of <attend>_oil <attend>_one <attend>_over <attend>_shut <attend>_stretch <attend>_with
        <chat>_ahead <chat>_at <chat>_bor <chat>_button <chat>_call <chat>_come <chat>_enjoy <chat>_exercis
        <chat>_fanc <chat>_first <chat>_foot <chat>_get <chat>_got <chat>_home <chat>_if <chat>_in <chat>_just
        <chat>_me <chat>_of <chat>_one <chat>_only <chat>_rest <chat>_stay <chat>_tell <chat>_that <chat>_told
        <chat>_us <chat>_wake <chat>_writ <chat>_you <do>_apart <do>_body <do>_if <do>_leg <do>_through
        <far>_home <far>_it <far>_kne <far>_lad <far>_lung <far>_squar <harm>_hold <harm>_kne <harm>_leg
        <harm>_of <harm>_out <harm>_your <ill>_of <kit>_acros <kit>_again <kit>_it <kit>_squeak <kit>_ups
        <less>_degre <less>_hold <less>_like <less>_long <less>_the <less>_to <less>_your <more>_again
        <more>_down <more>_foot <more>_more <more>_out <more>_sheet <more>_than <move>_and <move>_apart <move>_as
        <move>_body <move>_deep <move>_eye <move>_go <move>_if <move>_it <move>_over <move>_push <move>_round
        <move>_that <move>_ther <move>_through <move>_till <not>_ask <not>_bad <not>_be <not>_burpe <not>_clever
        <not>_count <not>_forget <not>_get <not>_got <not>_hang <not>_it <not>_know <not>_like <not>_long
        <not>_look <not>_make <not>_number <not>_rest <not>_rush <not>_tell <not>_touch <not>_you <num>_0 <num>_a
        <num>_and <num>_big <num>_breath <num>_each <num>_eight <num>_for <num>_goe <num>_hundr <num>_if
        <num>_lot <num>_more <num>_muscl <num>_on <num>_one <num>_past <num>_second <num>_set <num>_slow
        <num>_thre <num>_tim <num>_trip <pace>_about <pace>_among <pace>_and <pace>_between <pace>_breath
        <pace>_just <pace>_lot <pace>_lower <pace>_off <pace>_one <pace>_set <pace>_squat <pace>_time
        <part>_again <part>_breath <part>_cone <part>_dig <part>_extension <part>_has <part>_height <part>_is
        <part>_lower <part>_now <part>_only <part>_out <part>_plank <part>_pool <part>_pres <part>_prop
        <part>_pull <part>_pump <part>_set <part>_shut <part>_slid <part>_squat <part>_stand <part>_the <part>_to
        <part>_toe <part>_you <place>_0 <place>_all <place>_as <place>_behind <place>_church <place>_his
        <place>_holida <place>_in <place>_jaw <place>_mate <place>_me <place>_now <place>_of <place>_on
        <place>_out <place>_over <place>_squat <place>_thi <place>_to <place>_two <settle>_ahead <settle>_if
        <settle>_in <settle>_on <settle>_pool <settle>_pull <settle>_under <settle>_ups <settle>_wet
        <settle>_your <swap>_burpe <swap>_count <swap>_get <swap>_hang <swap>_hear <swap>_number <swap>_rest
        <swap>_two <swap>_with <swap>_you <take>_out <take>_pool <take>_pull <take>_them <take>_ther <take>_to
        <take>_under <take>_ups <take>_wet <take>_your <wrong>_back a_<air> a_<part> a_<place> a_<settle>
        a_<take> a_bet a_breath a_breather a_broomstick a_clean a_coat a_competition a_debutant a_desk a_door
        a_dumbbell a_few a_hundr a_month a_race a_run a_seat a_side a_sit a_skip a_slow a_th a_trap a_very a_walk
        a_week a_weight a_wobbl about_0 about_it about_what advanc_sheet after_a again_<place> all_<pace> all_one
        all_right among_yourselv an_advert anchor_<place> anchor_down and_<attend> and_<more> and_<part>
        and_<place> and_a and_again and_chang and_do and_down and_its and_kne and_one and_shak and_up and_were
        ankl_do ankl_pump are_<chat> are_<more> are_so are_still are_stronger are_tied arm_and arm_at as_<place>
        as_befor as_long as_many ask_<chat> at_<part> at_knee at_that away_<chat> away_you back_<chat> back_<do>
        back_<harm> back_<place> back_is back_on back_squat back_the back_toe back_you band_are band_squeak
        bar_down be_<harm> be_<ill> be_<part> be_at be_back be_hard be_sick becaus_<chat> been_<place> behind_the
        bel_<air> bel_breath bell_<place> bell_down bend_over bent_end big_lad bit_of both_leg bottom_<kit>
        bottom_cone br_both breath_ther by_the calf_<attend> calf_<do> calf_stretch call_a call_them can_<pace>
        can_hear can_to car_<place> car_on cat_cow chest_<do> chest_now chest_stretch child_pose chin_<more>
        chin_up clean_one clos_<place> coat_hanger com_out come_on cone_to corkscrew_com could_do couldnt_<do>
        couldnt_<move> count_your crab_walk cushion_with dead_<do> dead_bug dead_lift dig_<far> dig_deep do_a
        do_that do_the do_two dont_<attend> dont_be dont_bend dont_kick dont_make dont_rush down_and down_mate
        dull_<settle> dull_take easy_just em_<pace> empt_<kit> empt_bar enjo_it ever_minut eye_contact eye_shut
        face_<do> face_pool face_pull fall_out feel_like feel_odd feel_oil feet_as feet_down few_till
        find_yourself first_<chat> foot_<place> foot_forward for_0 for_carry for_five for_the for_toda for_your
        forearm_plank fort_<pace> fort_second front_<do> get_<more> get_<place> get_a get_up get_wet give_<more>
        give_<place> give_up go_0 go_ahead go_on go_to gone_the good_one got_<harm> got_<num> got_the got_wet
        grab_your grip_<attend> grip_if half_a hamstr_<attend> hamstr_<do> hamstr_stretch hand_<place> hand_hang
        hand_out hang_<place> hang_out has_<num> have_<num> have_a head_com head_follow heal_<do> hear_<chat>
        heel_<do> heel_<settle> heel_dig heel_prop heel_rais heel_slid here_<place> high_kne hip_and hip_cramp
        his_<part> hold_<num> hollow_<settle> hollow_<take> hollow_hold how_<attend> how_<less> how_<place>
        how_long how_many how_much hug_the i_<chat> i_<settle> i_call i_will if_you ignor_it in_0 in_<kit> in_a
        in_between in_church in_here in_his in_the is_<chat> is_<more> is_call is_it is_not is_suppos is_that
        is_what is_wher is_your isnt_a isnt_it it_<chat> it_<harm> it_<num> it_<pace> it_com it_count it_down
        it_feel it_for it_go it_in it_is it_just it_lighter it_liv it_look it_talk it_twic it_was itll_be
        its_<air> its_<attend> its_<not> its_<pace> its_<wrong> its_like its_not its_the its_warm join_<place>
        join_in just_<move> just_<settle> keep_<chat> keep_<more> keep_<place> keep_go keep_it keep_push keep_up
        keep_you kick_it kne_are kne_down kne_in kne_ther knee_<do> knee_is last_<chat> last_one left_foot
        leg_<far> leg_<more> leg_<move> leg_<take> leg_lower leg_only leg_rais leg_stand leg_up less_<attend>
        less_like let_us let_wake like_a like_and like_it like_that like_they littl_squar look_<attend> look_like
        low_<do> low_<move> low_lung make_eye make_it make_that me_<chat> me_<place> minut_<attend> minut_<place>
        minut_and minut_if minut_on more_<attend> more_time mother_listen mountain_climber mov_<place>
        move_<place> move_on much_<far> much_degre muscl_that my_<chat> near_<less> near_<swap> near_enough
        near_home need_to never_touch next_<chat> next_<kit> ninet_<pace> ninet_second no_<less> no_<settle>
        no_<take> no_burpe no_hang no_number no_rest nobod_ever nobod_is not_<attend> not_<num> not_bad not_go
        not_got not_long not_wor not_you number_<num> of_a of_an of_it of_thes of_thos off_<chat> off_do off_you
        older_than on_<chat> on_<part> on_<place> on_down on_me on_still on_with once_<more> once_more one_<chat>
        one_<far> one_<take> one_as one_finger one_for one_leg one_minut one_more one_of only_<chat> only_<num>
        only_you operat_<part> operat_leg or_heel or_superwoman other_<chat> other_<less> other_arm other_half
        other_leg other_way out_your outsid_of over_ther over_with own_<part> park_it peopl_say pick_your
        point_<attend> point_like priz_for pull_a pull_apart pull_now push_<place> push_through put_<place>
        quad_<chat> quad_set quit_<place> quit_on race_to rack_it read_the remember_the remember_wher rest_the
        rest_your right_arm rise_to rock_<far> roll_<place> roll_over round_in row_it run_<place> rush_and
        same_<harm> same_again same_deal same_spot scap_<do> scap_pull seat_<do> seat_<move> second_<chat>
        second_<do> second_<move> second_<num> second_<pace> second_<settle> second_<take> second_lot second_one
        second_set second_time shak_out shak_the shak_your shoulder_pres shoulder_roll sick_of side_<do>
        side_<part> side_leg side_plank side_step sideway_down sinc_the sip_of sit_on skin_the slow_<air>
        slow_bit slow_breath slow_down slow_it slow_pull so_<chat> so_<place> so_clos soft_jaw some_peopl
        somebody_<part> somebody_knee somebody_watch split_<do> split_squat squar_with squeez_<more> squeez_up
        start_with static_<attend> static_<part> static_quad stay_<more> stay_as stay_in stay_till stay_up
        step_<more> step_up step_ups stick_acros stick_away still_on stomach_talk straight_into straight_over
        straighten_your strong_<part> stronger_than support_<settle> support_<take> support_hold suppos_to
        swap_<part> swap_<place> switch_<part> switch_it switch_leg take_your talk_<chat> talk_about tell_you
        tell_your ten_<pace> thank_me that_<chat> that_<more> that_<place> that_dull that_normal that_out
        that_the thatll_<swap> thatll_do the_<carer> the_<settle> the_bad the_bent the_best the_bin the_board
        the_book the_cake the_can the_cat the_chin the_dead the_dentist the_dog the_fenc the_flamingo the_glut
        the_hook the_internet the_line the_littl the_mailbox the_muscl the_needl the_offic the_outsid the_pair
        the_parish the_pictur the_ring the_rosar the_row the_shop the_spin the_stag the_start the_usual the_wash
        the_weight the_wrong them_<swap> them_cushion them_on ther_<attend> ther_<chat> ther_<far> ther_till
        thes_<attend> thes_are theyv_<not> theyv_not thi_<not> thi_is thi_isnt thi_one think_about think_of
        third_one thirt_<pace> thirt_second thos_<part> thos_are thre_<part> thre_head thre_slow thread_the
        through_<chat> tied_<place> tied_on till_it till_the till_your time_<place> time_is to_<num> to_<part>
        to_<swap> to_chest to_hand to_stand to_thos to_twent toe_walk too_<attend> too_<place> too_long tuck_the
        turn_<do> turn_<place> turn_round twent_<pace> twent_second two_<more> two_<num> two_more under_<num>
        until_you up_<chat> up_again up_and up_off up_out us_<chat> us_<place> us_<settle> us_go used_to wake_the
        walk_<part> walk_<place> walk_back walk_it walk_like wall_<do> want_that warm_<more> warm_<place> warm_up
        was_<chat> was_<place> watch_<chat> watch_me way_ther we_<chat> we_<settle> we_<swap> we_are we_do we_go
        we_start wee_huff weight_down weight_up went_<place> what_keep what_the whatever_<chat> whatever_you
        when_<chat> when_the when_your which_is will_be with_a with_the with_them won_a work_<place> would_be
        writ_it you_<less> you_<more> you_can you_fanc you_get you_go you_on you_rock you_see you_stay you_to
        you_want youd_be youll_<swap> youll_want your_<attend> your_<do> your_<kit> your_<less> your_<num>
        your_<settle> your_<take> your_best your_cardigan your_chair your_daughter your_fac your_finger
        your_hamstr your_hand your_hip your_kne your_lean your_lot your_mat your_minut your_mother your_other
        your_partner your_read your_rest your_second your_sheet your_shop your_shoulder your_stomach your_writ
        youv_<not> youv_all youv_finish youv_not youv_read youv_your
      `,
    ],
    [
      -0.2,
      `
        0_<place> 0_leg 0_metr <attend>_0 <attend>_ahead <attend>_hand <attend>_if <attend>_just <attend>_kne
        <attend>_on <attend>_thi <attend>_up <attend>_well <attend>_your <chat>_0 <chat>_a <chat>_after
        <chat>_again <chat>_ask <chat>_backward <chat>_by <chat>_could <chat>_danc <chat>_do <chat>_dont
        <chat>_eight <chat>_have <chat>_is <chat>_leg <chat>_lift <chat>_mean <chat>_newer <chat>_over
        <chat>_plank <chat>_pull <chat>_see <chat>_should <chat>_sit <chat>_stand <chat>_stop <chat>_swap
        <chat>_would <chat>_your <chat>_yourself <do>_away <do>_each <do>_em <do>_forward <do>_from <do>_in
        <do>_it <do>_left <do>_side <do>_the <do>_them <do>_ther <do>_under <do>_you <do>_your <far>_back
        <far>_of <far>_step <far>_toe <far>_version <harm>_on <kit>_by <kit>_each <kit>_if <kit>_on <kit>_over
        <kit>_under <less>_it <less>_rep <less>_ther <less>_you <more>_folk <more>_in <more>_one <more>_to
        <more>_top <move>_away <move>_breath <move>_down <move>_everyth <move>_from <move>_in <move>_on
        <move>_side <move>_sure <move>_tall <move>_them <move>_with <move>_your <not>_an <not>_at <not>_bounc
        <not>_drop <not>_else <not>_fling <not>_hand <not>_hold <not>_in <not>_jump <not>_just <not>_let <not>_of
        <not>_plank <not>_sit <not>_to <not>_want <not>_your <num>_count <num>_dumbbell <num>_elephant <num>_hand
        <num>_inch <num>_kilo <num>_knee <num>_line <num>_mississippi <num>_side <num>_step <num>_strok
        <num>_tenth <pace>_a <pace>_at <pace>_for <pace>_go <pace>_in <pace>_now <pace>_of <pace>_out <pace>_toe
        <pace>_twic <pace>_up <pace>_with <part>_at <part>_back <part>_bent <part>_blad <part>_by <part>_do
        <part>_ever <part>_first <part>_flat <part>_goe <part>_here <part>_level <part>_off <part>_on <part>_over
        <part>_push <part>_straight <part>_that <part>_with <place>_again <place>_away <place>_both <place>_first
        <place>_flat <place>_for <place>_front <place>_if <place>_kne <place>_like <place>_line <place>_one
        <place>_our <place>_than <place>_the <place>_thre <place>_till <place>_under <place>_up <place>_your
        <settle>_again <settle>_back <settle>_backward <settle>_down <settle>_for <settle>_from <settle>_heav
        <settle>_it <settle>_out <settle>_right <settle>_someth <settle>_the <settle>_up <settle>_with <swap>_at
        <swap>_bell <swap>_drop <swap>_fling <swap>_half <swap>_hold <swap>_it <swap>_more <swap>_not <swap>_off
        <swap>_on <swap>_sit <take>_a <take>_again <take>_back <take>_it <take>_on <take>_the <wrong>_it
        a_<attend> a_<do> a_<far> a_<harm> a_<kit> a_<more> a_<move> a_<not> a_<pace> a_baby a_banana a_beat
        a_big a_bow a_cat a_hair a_hand a_light a_liv a_pendulum a_rest a_sprawl a_stretch a_ten a_time a_tug
        a_two a_well a_whisker a_window abov_that all_<part> all_hold all_i all_the all_thre an_<far> an_<less>
        an_<part> an_inch and_<move> and_<not> and_<pace> and_<settle> and_call and_even and_go and_right
        and_shut and_you ankl_<chat> ankl_<settle> ankl_go anyon_who are_<less> are_<not> are_not as_if as_well
        at_about at_six at_the at_your away_from back_<part> back_and back_off bar_on be_cute becaus_<attend>
        becaus_if befor_<chat> befor_you behind_<chat> behind_you bench_<chat> bend_the between_<num> big_toe
        bit_<chat> body_<do> body_swing bottom_<chat> bottom_<place> brisk_<do> brisk_<move> brisk_walk
        bum_<place> by_your call_that can_<do> can_<move> can_<settle> can_<take> can_hold chest_<place>
        coffe_<place> coffe_on com_<place> com_down com_for come_<swap> come_down come_home come_out
        count_<place> count_of da_dum dead_<attend> dead_<place> dead_still do_<do> do_<not> do_not do_your
        dont_<chat> dont_<do> dont_<settle> dont_let dont_plank dont_want down_<attend> down_<far> down_<pace>
        down_again down_in down_ther each_other ease_off eight_percent elbow_<place> else_the em_<do> em_<move>
        em_<place> end_of ever_rep everybod_else fac_the face_<place> feel_<more> feel_it finish_stood first_0
        first_<num> five_<swap> five_degre five_kilo float_<place> for_<far> for_<harm> for_about for_four for_my
        for_one for_thi for_two forearm_<place> forehead_<place> forehead_down four_<pace> four_second front_of
        full_second get_down get_to go_<less> go_<more> go_<pace> go_<place> go_<swap> go_again go_backward
        go_for go_purpl go_quicker good_<part> grip_go half_<chat> half_one half_rep has_to heel_<place>
        hip_<attend> hip_<place> hip_that hold_it hold_on hold_the hold_your how_<chat> how_peopl how_you
        i_<swap> i_do i_mean i_see i_want i_would if_it if_the if_they if_thi im_just im_see in_<attend>
        in_<less> in_<pace> in_<place> in_for in_front in_one in_your into_a into_it is_<swap> is_a is_at is_how
        is_plent it_<far> it_<move> it_<place> it_<settle> it_again it_last it_mov it_stay it_ther it_touch
        it_yes itll_<settle> its_<far> its_<part> its_all its_com its_hav its_mate its_nice its_pret its_pull
        its_slip its_ther just_a just_the keen_one keep_<air> keep_breath keep_them keep_your kne_<attend>
        kne_<more> kne_up knee_<place> knit_them know_its land_<place> last_0 lean_<place> leav_thi leg_at leg_do
        leg_goe leg_push let_<chat> let_<settle> let_go let_the let_yourself light_<place> like_you like_your
        littl_one long_<part> long_again look_<place> look_for lose_the lower_<chat> make_sure make_the mean_that
        nerv_talk next_to nine_tenth no_<far> no_<part> no_<wrong> no_fling not_<do> not_<place> not_an
        not_answer not_hav not_in not_on not_to not_want noth_else of_<chat> of_<kit> of_<num> of_five of_ten
        of_the of_what of_you off_it off_the off_your on_a on_it on_our one_<attend> one_<kit> one_<part>
        one_<place> one_at one_ever one_knee one_line one_second one_side opposit_<part> or_<move> or_thereabout
        or_youll or_your other_foot other_knee out_<attend> out_for over_0 over_your palm_<place> paus_twic
        pay_for pres_<place> pull_<place> pull_it purpl_fac push_the quiet_<part> quiet_<take> quiet_feet
        replac_them rest_on rib_<place> rib_down right_<place> right_into round_to same_<part> same_clock
        same_leg same_side same_way say_a second_<kit> second_toe seen_a seen_that set_the sham_<place> sham_in
        shorten_the shoulder_<place> shoulder_blad shoulder_down shout_for shov_it show_off shut_it side_<place>
        side_of side_on side_to sideway_on simp_<settle> simp_<take> singl_<num> singl_one sit_<attend> sit_ther
        six_<place> six_out sneak_<more> sneak_<place> sneak_up so_it sock_<place> sock_on squeez_it stag_<num>
        stag_thre star_at start_again stay_on step_<place> step_in stop_at straight_<more> straight_up strok_a
        ta_dum tell_me ten_<swap> ten_kilo than_a that_<attend> that_<do> that_<far> that_<kit> that_<less>
        that_<part> that_<swap> that_been that_count that_done that_fine that_foot that_it that_set that_should
        that_ther that_wher the_<kit> the_<num> the_<pace> the_<swap> the_<wrong> the_air the_band the_bottom
        the_broomstick the_ceil the_cone the_corner the_door the_end the_front the_game the_ground the_in
        the_joint the_kne the_knee the_kneecap the_ligament the_lot the_mat the_meat the_middl the_next the_one
        the_other the_out the_part the_piano the_plac the_rest the_rule the_tank the_top the_tree the_tricep
        the_twent the_two the_upright the_way ther_for ther_is ther_to thes_cold they_<not> theyr_still
        thi_<pace> thi_into thi_time third_0 thirt_<far> thirt_degre thre_<pace> thre_count thre_to time_with
        to_<chat> to_<far> to_<move> to_<settle> to_come to_impres to_prepar to_see to_show to_the to_you
        too_<far> top_<part> tuck_<place> turn_thi two_<do> two_<kit> two_<pace> two_<part> two_<place> two_step
        two_when under_your up_<attend> up_top up_with us_all us_come wait_ther walk_to want_anybod want_the
        want_to watch_your water_<swap> water_bottl way_<place> way_down way_you we_<do> we_<move> we_lift we_tap
        week_<place> week_on weight_on what_its what_we what_your when_it wher_your whol_<pace> whol_<part>
        why_its will_<settle> will_<take> with_it with_your without_the work_the would_<chat> yes_and you_<move>
        you_<not> you_<swap> you_by you_finish you_have you_is you_like you_round you_sit you_stop you_swap
        you_walk youll_<settle> youll_go your_<chat> your_<place> your_a your_after your_backsid your_belt
        your_bottom your_chest your_chin your_go your_leg your_look your_neighbour your_newer your_rib your_right
        your_shirt your_sho your_toe yourself_<do> yourself_<more> yourself_<place> yourself_up youv_got youv_had
      `,
    ],
    [
      -0.4,
      `
        <chat>_the <do>_to <kit>_is <not>_a <num>_out <part>_go <part>_stay a_squat about_<num> go_down if_that
        is_<less> is_all it_<do> like_<chat> not_a out_<place> over_the should_be that_how the_<air> the_arm
        the_floor the_leg the_whol to_<do> whol_time your_<part>
      `,
    ],
    [-0.6, '<move>_the you_<do>'],
    [-0.8, 'the_<part>'],
  ],
  phrase: [
    [1, 'transitions'],
    [0.8, 'chat'],
    [0.6, 'dose_only empty_clauses praise'],
    [0.4, 'purpose range-hint'],
    [0.2, 'caution-likely retracted'],
    [
      -0.2,
      `
        breathing-hint caution-hint easier-hint easier-likely easier-sure equipment-sure execution-likely
        focus-likely range-likely range-sure setup-hint setup-likely setup-sure tempo-hint
      `,
    ],
    [-0.4, 'caution-sure execution-sure fault-likely fault-sure focus-sure tempo-likely'],
    [-0.6, 'breathing-sure harder-sure tempo-sure'],
  ],
  start: [
    [0.8, '<part>_<do>'],
    [
      0.4,
      `
        <do>_<part> <not>_<pace> <settle>_<place> back_to chang_leg sit_to_stand that_your
      `,
    ],
    [
      0.2,
      `
        <attend>_<do> <attend>_<kit> <attend>_<not> <chat>_<chat> <chat>_<settle> <chat>_<swap> <chat>_<take>
        <do>_<take> <far>_<part> <kit>_<do> <kit>_<place> <more>_<do> <more>_<more> <move>_<do> <move>_<part>
        <not>_<attend> <not>_<num> <num>_<more> <num>_<num> <pace>_<do> <pace>_<num> <pace>_<pace> <part>_<kit>
        <part>_<settle> <place>_<chat> <settle>_<do> <settle>_<num> <swap>_<attend> <swap>_<kit> <swap>_<less>
        <swap>_<part> <swap>_<settle> <swap>_<take> <take>_<do> a_few a_minut a_skip all_of all_one all_one_foot
        anchor_down anchor_down_to and_again ankl_pump arm_and as_many away_you away_you_go back_on back_on_the
        back_the back_to_the back_up back_up_on bar_down big_lad both_feet both_feet_down both_leg
        both_leg_together bottom_cone bottom_cone_to br_both br_both_leg by_the by_the_way calf_stretch car_on
        chin_up come_back come_on come_up come_up_slow dead_bug do_it_twic do_not_wor do_the dont_be dont_bend
        dont_bend_over dont_kick_it dont_make dont_make_eye dont_roll_up dont_rush dont_rush_and down_on
        down_on_the down_to_the each_leg empt_bar face_pull fall_out feet_as feet_as_wide find_a_bit
        find_yourself find_yourself_a for_a forearm_plank from_the_bottom go_back_to go_on grip_if grip_if_you
        half_a_minut half_way_ther hand_on hand_up hang_out have_a have_a_breath head_down heel_in heel_prop
        hold_for hold_it_up hold_on_still hug_the i_will if_its_too if_that_dull if_you if_you_want if_your
        if_your_stomach in_you is_that isnt_it it_was itll_be its_a_run its_like its_like_a its_not its_not_the
        its_the its_the_insid its_the_same keep_go keep_it keep_it_com keep_it_go keep_push keep_the_kne keep_up
        kne_are kne_are_go kne_down kne_in kne_to_chest leav_it_on left_foot left_foot_forward leg_up
        let_the_feet let_us let_us_go let_wake let_wake_the let_your_head like_a_corkscrew like_a_debutant
        like_an like_an_umbrella like_youv_your look_at look_at_that look_at_you low_lung make_it near_enough
        no_burpe no_hang no_number no_priz no_rest nobod_ever nobod_is not_a_trap not_long not_you off_you
        off_you_go on_to on_your_hand once_more one_arm one_arm_at one_more one_more_time onto_your
        onto_your_back or_do_it or_the other_arm other_leg out_to out_to_the over_to over_to_the park_it
        pick_your pick_your_other pull_a pull_apart push_through push_ups put_it put_it_down put_the_weight
        rack_it rate_0_to remember_the remember_wher remember_wher_it rest_the rest_your rest_your_arm rise_to
        rise_to_hand roll_out roll_over roll_over_on same_again same_as_befor same_deal second_one shak_it_out
        shak_out shak_the shak_your side_plank sit_back_on sit_on_your sit_to slow_down slow_down_mate slow_it
        slow_it_down slow_pull slow_pull_now soft_jaw some_peopl somebody_knee somebody_knee_is squeez_up
        squeez_up_the stay_as stay_as_long stay_in stay_in_it stay_ther stay_ther_till stay_till stay_till_your
        stay_up stay_up_for step_ups stick_acros stick_acros_your stick_away still_on straight_into
        straight_into_the straight_over straighten_your straighten_your_leg swap_leg switch_it switch_it_up
        switch_leg take_the_towel that_a that_a_proper that_the that_the_muscl thatll_do the_band the_band_squeak
        the_calf the_chin the_hip the_hip_flexor the_other_arm the_other_leg the_other_side the_spin the_third
        the_third_one ther_a thes_are thi_is thi_is_the thi_is_your thi_isnt think_of think_of_the thirt_second
        thos_are thre_slow thre_slow_breath thread_the thread_the_needl through_the till_the till_your_shoulder
        toe_down toe_point_like tuck_the tuck_the_back two_second_squeez under_the up_and wait_for_it walk_back
        walk_it walk_it_in walk_it_off walk_your_feet we_do we_go weight_up which_is which_is_a whil_you
        whil_your with_a with_a_dumbbell with_the with_the_slow wrist_rock you_can you_dont_need you_just
        youll_want youll_want_that your_feet your_feet_are your_lean your_lean_back your_own your_second youv_all
      `,
    ],
    [
      -0.2,
      `
        0_leg <air>_<place> <attend>_<far> <attend>_<part> <chat>_<do> <chat>_<less> <chat>_<not> <chat>_<pace>
        <do>_<attend> <do>_<pace> <far>_<do> <far>_<kit> <far>_<place> <kit>_<far> <less>_<chat> <less>_<less>
        <more>_<num> <move>_<air> <move>_<less> <move>_<pace> <not>_<chat> <not>_<do> <not>_<far> <num>_<attend>
        <num>_<far> <num>_<place> <pace>_<more> <part>_<chat> <part>_<far> <part>_<move> <part>_<part>
        <part>_<place> <place>_<more> <place>_<num> <place>_<pace> <place>_<place> <settle>_<attend>
        <settle>_<far> <settle>_<less> <settle>_<pace> <settle>_<swap> <swap>_<far> <swap>_<place> <swap>_<wrong>
        <take>_<far> <take>_<more> <take>_<pace> <take>_<place> a_bit_of a_good a_pull a_well a_whisker
        about_half all_the all_the_way all_thre and_right anyon_who as_if at_you back_off becaus_if come_out
        da_dum dead_still dont_let down_for ease_off ever_singl ever_singl_one everybod_else for_my forehead_down
        four_second go_down grip_go hang_ther hold_it_at hold_the i_am i_do i_dont_need i_know_its i_know_your
        i_mean i_mean_that i_see i_want i_want_the i_want_to i_would if_they ill_not_say im_just im_just_the
        im_not_be im_see in_for it_doesnt it_stay its_com its_com_for its_hav its_hav_a its_nice its_not_an
        its_pret its_pull its_slip its_the_third ive_seen_that keep_breath keep_the keep_them keep_your knit_them
        last_0 last_0_metr left_and_right leg_push let_it let_the let_us_come let_yourself like_a like_your
        long_again look_at_the lose_the make_sure make_the near_the nice_and nice_and_even no_fling not_a not_at
        off_the_floor one_at one_at_a one_ever one_foot one_second or_do_ten or_your other_knee out_for over_0
        over_on over_on_your paus_twic pull_it rib_down round_the_other round_to round_to_the same_as_the
        same_clock same_side set_the shak_it_yes shov_it show_off side_on side_on_to sock_on squeez_it stag_thre
        step_in stop_at swap_leg_when ta_dum tell_me ten_kilo that_a_squat that_all_i that_fine that_how_you
        that_is_how that_it that_set that_should that_should_be that_the_one that_the_part that_the_plac
        that_ther that_ther_to that_wher that_wher_it that_why_its the_arm the_colour the_colour_of the_good
        the_good_leg the_leg the_two the_whol the_whol_time the_whol_way ther_is theyr_still theyr_still_ther
        thi_is_at thi_time thre_to try_to two_step two_when two_when_your up_for up_ther use_the wait_ther
        we_call_that we_lift you_are_go you_can_do you_round you_stop you_want your_not_hav
      `,
    ],
    [
      -0.4,
      `
        <do>_<more> <not>_<wrong> <num>_<kit> <num>_<part> <place>_<attend> <place>_<part> a_bit five_second
        that_how the_other your_a
      `,
    ],
  ],
  word: [
    [0.8, 'minut row shak we'],
    [
      0.6,
      `
        call eight fifteen got leg me my number only pres remember rest till twent ups us walk was
      `,
    ],
    [
      0.4,
      `
        again all ask bad be becaus best better bridg chang clean clock cushion did do each five flexor fort has
        he her hes his hug i ill is isnt ladder last lot love lung make many muscl name never ninet now of oh
        okay on once other own quad rack rais read rose say second she sheet side sinc six some squat stair
        support switch ten that the ther thes thi think thirt thos tidy twelv twic very warm were what who wor
        wrong youll
      `,
    ],
    [
      0.2,
      `
        0 actual advert after afterward age agn alread alright among anchor and anti anyth anywher are around as
        aye back balanc band bank bear beautiful been between bicycl bird body bog book bought bound breath
        breather broomstick bug burn burpe cake calf calv can cap car carmel carri cat ceilidh ceiling chair chat
        cheer child chop christma church clas climb climber club coat cobra comment competition contact couldnt
        council count court cow curl daughter davo day dead deadlift deal debutant dentist desk didnt different
        dig doe dog done earlier eleven elwyn email enjo enjoy enough everyon everyth except excus exercis
        extension fabulou face fanc final find finish fiv flamingo flop folk for forget forgotten found four
        friend fun gaz glut gone good gorgeou grand great groceri group habit had hall halo hamstr have hear hed
        here him hing hmm holida hollow hour hous how huff hundr id idea ignor im imran in internet it its ive
        jerse jim joan keep kettl kettlebell kind kne know lad later laugh lead life lik like listen liv look
        loop made mailbox mak march marjori maureen mil min mind moos mother much nah natural near needl nine
        nineteen nobod nois normal noth och odd offic often oil older oop operat outsid over pair parish park
        partner peopl phil phon physio pick pictur plan plank play pool pose posh press pret priya priz prop
        proper pump pushup put raffl rain record releas road rosar run runner rush said same sanja save saw scap
        set seven sevent shaking shed shop sick sit slow so sofa somebod somebody sor sound spin split squar
        squeak static station stomach stor strength stroll stronger stuff subscrib superman superwoman suppos
        swap talk tatti tea tell th thank then theyv third thought thousand thre thread tick tim time tir toda
        told tom total trev trip twister ugly uncl until used usual wash watch wav week well went werent whatever
        when which whil whoever why wife wiggl wipe with wobbl won work wriggl writ year yep yes yet youd
        yourselv youv
      `,
    ],
    [
      -0.2,
      `
        about abov achill acros ahead air an arch arm armpit away baby backward ball bang beat begin behind bell
        belt bend bent big bit blad block blue bon bone both bottom bow box brush buckl butt camel carol carpet
        ceil check cheek chest circl clench clos closer coffe colin collarbon complete corner crack crat cros
        cute da div divvent dont down drift drop dum dumbbell ear ease edge effort exhal explod fac fast fat feet
        fist fling float flutter foam fold foot forehead front further gan gent glas go gradual grip hair hammi
        hamstring handl hard harder haul heavier heaviest height help high higher hold hop hot impres inhal
        instead jab jaw jean jerk jog kilo kiss knee kneecap kneel knit knock knot knuckl kyle lan lane late lazy
        lean leav level lift ligament light lighter line lock lose lower manag manner mayb mean meat mississippi
        moment mov movement neck nerv newer nick nose nowher one option pad paddl palm paus pay pedall pendulum
        perfect piano pin plent plop pocket point position prepar pressur proud pub pull purpl quarter quick
        quicker rather reach red rep replac resist safet sag seriou settl sharp shin shirt shoe shorten shorter
        shoulder show shuffl sideway simp singl sink skip slack slight slip slower smaller snap sock soft someth
        sore spik spill sprawl spread stack stan stanc stand stick stiff stomp strap strok sure sw swim tailbon
        take taller tank tear tent tenth them thereabout thigh thumb tiny tipto toe too touch treacl tree tricep
        truck tss upright version wait waiter want way wher whisker wider width wind you yourself zip
      `,
    ],
    [
      -0.4,
      `
        backsid bounc brisk bum bus end even flat floor forward ground half hand if inch joint jump land let loos
        low middl opposit out pleas rib see sho short small step tight together top tug under underneath use
      `,
    ],
    [-0.6, 'elbow heav into tall'],
    [-0.8, 'should'],
  ],
} as const satisfies CueWeights
