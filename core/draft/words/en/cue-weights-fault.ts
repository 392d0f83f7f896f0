/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind fault; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const FAULT_WEIGHTS = {
  bias: [[-0.2, 'yes']],
  class: [
    [1.2, 'wrong'],
    [0.6, 'not'],
    [0.4, 'part'],
    [0.2, 'move place'],
    [-0.2, 'attend do harm ill less more swap take'],
    [-0.4, 'air num pace'],
    [-0.6, 'far'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.8, 'your'],
    [0.6, '<part> shoulder'],
    [0.4, '<not> elbow eye keep neck point rib somebody theyr toe watch wrist'],
    [
      0.2,
      `
        <less> <more> beginner br bum careful carol chest chin denis derek dont far fift first fold forehead
        front handl has i ive jaw jean kyle land leav less level light long look lot make maureen mo most move
        nobod quit resist show sir soften stack stand stay strap sw that ther they thre tuck uncros wher widen
        youll
      `,
    ],
    [
      -0.2,
      `
        <kit> <num> <wrong> a back bend big both bottom come curl finger go good hand how knee knuckl leg let
        like littl lower never nice nobody noth one or out palm pres same slid step take thi thumb to walk we
        without
      `,
    ],
    [-0.4, '<air> arm not'],
    [-0.6, '<do> <place>'],
  ],
  given: [
    [0.4, '<kit> <part> <place> your'],
    [
      0.2,
      `
        <attend> <chat> <do> <far> <less> <settle> <swap> all from gone have here i in into lost neck off one
        opposit rib roll sho shoulder the too wobbl you
      `,
    ],
    [-0.2, '<not> a dont on or'],
  ],
  last: [
    [0.6, 'toe'],
    [0.4, 'carol fist forward heav jean short stomp them'],
    [
      0.2,
      `
        about ankl arrow audienc back band bel belt bend bethan bicep bounc bridg chip death deckchair degre
        denis derek down ear eye far fast fift fingertip first flop fold for frog front gala gossip ground
        hammock hat high honest hump in inclin instead jaw just kyle lac lean level lighter look lui marcu
        margaret maureen middl mirror mo motorbik move movement nate nearer neck nice nose opposit paddl past
        pleas plonk priz punch quiet rib scarecrow second seesaw shop shoulder shrug sid side soft squar stead
        sway swim tabl tall taller tent thi thumb til tipto tir turtl ugly upright wheel wrist
      `,
    ],
    [
      -0.2,
      `
        0 away body bum calv com do finish foot hand head heel hip hold is jump kne knee kneecap kneel long me
        now off on other out pelvi ping plank purpl race read rest spin stand stop stretch that ther tight time
        to toda top wash wobbl yet
      `,
    ],
    [-0.4, 'you'],
  ],
  length: [
    [0.2, 'long'],
    [-0.2, '3-4'],
    [-0.4, '1-2'],
  ],
  pair: [
    [0.6, '<part>_are of_<chat> of_you'],
    [
      0.4,
      `
        <attend>_it <chat>_see <chat>_them <do>_them <move>_them <not>_a <not>_bend <part>_stay <place>_out
        i_<swap> i_can its_<chat> its_nice leg_do let_them light_hand look_at not_<move> not_a off_your over_your
        roll_<place> stay_<place> the_<part> the_weight to_<do> to_<wrong>
      `,
    ],
    [
      0.2,
      `
        0_back <attend>_arm <attend>_down <attend>_even <attend>_hand <attend>_leg <attend>_over <attend>_saw
        <attend>_the <attend>_thi <attend>_to <chat>_are <chat>_do <chat>_end <chat>_fall <chat>_finish
        <chat>_get <chat>_have <chat>_hundred <chat>_in <chat>_know <chat>_land <chat>_leg <chat>_lift
        <chat>_look <chat>_margaret <chat>_pay <chat>_punch <chat>_seen <chat>_shav <chat>_short <chat>_should
        <chat>_stomp <chat>_the <chat>_turn <chat>_your <do>_again <do>_and <do>_as <do>_back <do>_forward
        <do>_like <do>_on <do>_out <do>_round <do>_tall <do>_were <do>_wher <far>_forward <far>_toe <far>_wher
        <harm>_like <harm>_not <harm>_side <harm>_through <ill>_side <kit>_and <kit>_com <kit>_even <kit>_over
        <less>_fast <less>_low <less>_much <less>_of <less>_too <more>_and <more>_at <more>_bel <more>_out
        <more>_with <more>_you <more>_your <move>_again <move>_and <move>_as <move>_honest <move>_out
        <move>_quiet <move>_round <move>_some <move>_tall <move>_upright <not>_bent <not>_bit <not>_box
        <not>_camel <not>_curl <not>_daylight <not>_do <not>_fall <not>_fly <not>_from <not>_grip <not>_hammock
        <not>_heav <not>_instead <not>_just <not>_knock <not>_lean <not>_let <not>_neck <not>_plonk <not>_priz
        <not>_rock <not>_shov <not>_step <not>_than <not>_thank <not>_to <not>_turtl <not>_want <not>_yank
        <num>_back <num>_degre <num>_five <num>_metr <num>_of <num>_or <num>_side <pace>_and <pace>_down
        <pace>_hand <pace>_the <pace>_toe <part>_arent <part>_at <part>_do <part>_doe <part>_drop <part>_even
        <part>_follow <part>_foot <part>_go <part>_goe <part>_have <part>_hik <part>_instead <part>_is
        <part>_kiss <part>_level <part>_live <part>_nearer <part>_off <part>_open <part>_out <part>_over
        <part>_pin <part>_pop <part>_shoot <part>_straight <part>_that <part>_together <part>_too <part>_wander
        <part>_work <place>_arm <place>_first <place>_foot <place>_high <place>_instead <place>_into <place>_just
        <place>_level <place>_like <place>_line <place>_over <place>_past <place>_so <place>_tight <place>_youll
        <settle>_and <settle>_back <settle>_caught <settle>_forward <settle>_gone <settle>_lost <settle>_not
        <settle>_short <settle>_them <settle>_tir <settle>_ugly <settle>_under <settle>_up <settle>_with
        <swap>_any <swap>_box <swap>_camel <swap>_clench <swap>_daylight <swap>_feel <swap>_hammock <swap>_heav
        <swap>_it <swap>_neck <swap>_plonk <swap>_plop <swap>_priz <swap>_thank <swap>_turtl <swap>_under
        <swap>_your <take>_a <take>_caught <take>_forward <take>_nearer <take>_the <take>_tir <take>_ugly
        <take>_with <take>_work <wrong>_back <wrong>_forward <wrong>_in <wrong>_is <wrong>_off <wrong>_out
        <wrong>_the <wrong>_to <wrong>_up <wrong>_your a_<harm> a_<not> a_<place> a_<wrong> a_bent a_bridg a_calm
        a_deckchair a_few a_frog a_goos a_knot a_lag a_light a_motorbik a_paddl a_pigeon a_potato a_race
        a_scarecrow a_seesaw a_ship a_spot a_squat a_stop a_straight a_tabl a_tent about_fort about_it all_look
        also_a alway_<attend> alway_<less> alway_too an_arrow an_inclin and_brac and_die and_go and_it and_right
        any_<wrong> any_lift are_<kit> are_<less> are_<part> are_<wrong> are_curl are_fist are_like are_pull
        are_rop are_too are_up arm_just arm_the as_your ask_them at_an at_the back_<less> back_<not> back_<swap>
        back_foot back_instead back_ther be_<swap> be_on be_thump becaus_youv belong_<place> belong_over bend_the
        bent_<num> bent_<part> bent_back bent_one big_toe bit_<more> bit_anyth bottom_<move> bounc_<place>
        bounc_on box_to br_them br_your brac_again break_it bum_<place> bum_com bum_down bum_in but_<more>
        but_<place> but_up button_fac calm_<chat> calm_day camel_hump can_<attend> can_feel can_tell car_<place>
        car_on ceil_til chest_and chest_fac chest_over chin_<far> chin_<more> chin_<place> chin_level chin_off
        chin_up com_from com_in com_off count_the curl_it curl_the daylight_<place> daylight_under div_inward
        do_any do_it do_the doe_<not> doe_not dont_<harm> dont_<kit> dont_<move> dont_<settle> dont_break
        dont_fall dont_fly dont_lean dont_let dont_shov dont_step down_<more> down_into down_level down_out
        down_when drift_<place> drop_<place> drop_in drop_the drop_your ear_goe ease_off elbow_<move> elbow_<not>
        elbow_at elbow_is elbow_live elbow_stay elbow_straight end_the eye_on fac_the face_<place> face_forward
        fall_<place> fall_through feel_thi feet_<attend> feet_nearer feet_on feet_work few_of find_a
        first_hundred five_<far> five_degre floor_<place> floor_in flop_<part> flop_<place> flop_back fly_and
        follow_the foot_point for_that forehead_<attend> forehead_heav fort_<num> fort_five forward_<more>
        four_of from_here front_<num> front_<part> front_kne front_knee front_one front_with get_<less>
        get_caught get_the get_tir get_ugly go_<chat> go_<do> go_<place> go_dead go_round go_short go_up
        goe_<place> goe_over goe_the goe_to gone_out good_<part> good_leg got_<far> got_past got_taller
        guy_<place> guy_in half_of hand_belong hand_off hand_out handl_com hang_<part> hang_<place> hang_back
        hang_like has_<wrong> has_it has_wander have_<not> have_gone have_lost have_not head_stay heel_<place>
        heel_<settle> heel_are heel_down heel_kiss hip_<do> hip_<more> hip_<move> hip_<place> hip_<wrong> hip_are
        hip_hik hip_level hip_open hip_together hold_a how_<chat> how_you i_do i_know i_see if_it im_pay im_see
        in_<far> in_<less> in_<settle> in_high in_line in_the in_tight into_an into_it into_your inward_is
        is_<less> is_a is_not is_to is_too it_<swap> it_from it_goe it_has it_home it_is it_roll it_soft it_stay
        it_tomorrow it_tuck it_with its_<far> its_<part> its_also its_ankl its_go its_only its_opposit its_still
        ive_seen just_throw just_to keep_both keep_some keep_your kiss_the kne_<settle> kne_<wrong> kne_follow
        kne_have kne_out kne_over kne_soft kne_wander knee_goe knee_in knee_stay kneecap_look knock_<place>
        knock_together know_about know_its land_quiet lead_with lean_<place> lean_and leav_them left_and
        leg_<chat> leg_<swap> leg_first leg_with let_the level_your lift_<place> lift_off lift_the lift_through
        light_<part> like_a like_saw like_thi line_to live_at lock_<place> lock_out logo_<place> logo_on
        long_<part> long_arm look_<attend> look_<place> look_down look_like loop_out lose_it lot_of lower_and
        make_the mat_with me_the meet_it metr_<place> metr_in mistak_is more_<air> more_<part> more_bel
        most_peopl move_your much_<do> much_<move> much_<settle> no_box no_camel no_clench no_daylight no_hammock
        no_heav no_neck no_plonk no_plop no_priz no_thank no_turtl nobod_<do> nobod_ask not_<do> not_<pace>
        not_<swap> not_bent not_bit not_from not_grip not_just not_lift not_rush not_to not_want of_fist of_it
        of_war on_them on_two one_<swap> one_side only_your open_<attend> open_like opposit_shoulder or_the
        other_hand out_<attend> out_<chat> out_first out_like out_of out_over out_past pay_for peopl_<kit>
        peopl_<wrong> pillow_<place> pillow_under point_<attend> point_at point_forward point_straight point_them
        point_wher pop_<more> pop_<place> pop_off pop_up potato_chip push_<attend> push_tall quit_<less>
        quit_<not> quit_<swap> quit_curl quit_instead rail_<attend> rail_like rather_than reach_out rib_<place>
        rib_down rib_that ring_<place> ring_in roll_forward roll_in roll_out round_your rush_the same_side
        same_way saw_<place> saw_on second_toe see_somebod see_tent seen_that shav_your shin_<attend>
        shin_straight ship_wheel sho_from shoot_<place> should_<not> should_not shoulder_<not> shoulder_are
        shoulder_back shoulder_down shoulder_lift show_<chat> show_me sid_of sit_<part> sit_back skirt_board
        slack_<place> slack_out slow_<place> slow_down so_<attend> so_if soften_it some_<attend> some_<do>
        some_stretch somebody_<wrong> somebody_hang somebody_squat sore_side spot_<place> spot_on squat_it
        squeez_again stack_it stand_<more> stand_<place> stand_kne stand_up start_with stay_<more> stay_down
        stay_heav stay_honest stay_on stay_over stay_point stay_tall stay_up stay_upright step_over still_<part>
        still_leg stop_<wrong> stop_at straighten_<attend> straighten_as stretch_<place> stretch_in sw_<chat>
        sw_<do> sw_<place> sw_round that_<chat> that_<wrong> that_a that_cheat that_done that_is that_mov
        that_move that_one that_the that_what the_<ill> the_<kit> the_<wrong> the_audienc the_bar the_breastbon
        the_bum the_ceil the_end the_foot the_gas the_good the_ground the_guy the_hat the_leg the_length the_logo
        the_mat the_mirror the_part the_pillow the_same the_seat the_second the_shoulder the_skirt the_slack
        the_sore the_thigh the_turn the_villag them_<chat> them_<num> them_<place> them_down them_forward them_in
        them_out them_over ther_<swap> ther_no ther_to they_<not> they_<settle> they_<take> they_dont they_get
        theyr_<not> theyr_gossip theyr_just theyr_not theyr_step thi_<place> thi_in thi_into thigh_stay thre_your
        throw_yourself thump_<place> thump_down tight_to to_<move> to_<pace> to_<settle> to_jean to_lean to_lock
        to_meet to_talk to_the toe_<do> toe_<more> toe_up too_<far> too_<pace> too_fast too_low too_much
        try_<not> try_not tuck_it tuck_them tug_of turn_it turn_thi two_metr unclench_them uncros_your under_your
        up_<chat> up_<place> up_at up_out up_with up_you us_your use_your villag_gala wander_<place> wander_in
        wander_off want_them war_at weight_<place> weight_and weight_even weight_over what_i what_we when_they
        wher_its wher_your whol_shop widen_<place> widen_out with_the with_them with_your wrist_<attend>
        wrist_<place> wrist_flat you_<attend> you_<harm> you_are you_end you_fall you_finish you_get you_have
        you_lift you_look you_margaret you_punch you_should youll_<chat> youll_<do> youll_bounc youll_go
        youll_know your_<far> your_<kit> your_<pace> your_<part> your_<take> your_<wrong> your_all your_ankl
        your_belt your_bicep your_big your_bum your_but your_button your_count your_fingertip your_go your_hip
        your_kne your_lac your_leg your_look your_middl your_rib your_second your_shav your_shirt your_short
        your_sid your_stand your_stomp your_thumb your_turn your_watch your_weight your_wrist yourself_about
        youv_got
      `,
    ],
    [
      -0.2,
      `
        <attend>_and <attend>_as <attend>_its <attend>_that <attend>_you <chat>_dont <chat>_like <chat>_put
        <chat>_up <do>_a <do>_over <do>_up <do>_with <do>_your <far>_with <kit>_back <kit>_down <more>_the
        <move>_at <move>_into <move>_off <move>_up <not>_cheat <not>_dive <not>_go <not>_have <not>_hump
        <not>_jump <not>_kick <not>_on <not>_pull <not>_stop <not>_the <not>_your <part>_a <part>_and <part>_bent
        <part>_blad <part>_by <part>_hang <part>_in <part>_of <part>_on <part>_or <part>_tuck <part>_turn
        <part>_under <part>_up <part>_wher <place>_as <place>_away <place>_down <place>_knee <place>_shoulder
        <place>_straight <place>_the <place>_till <settle>_down <settle>_in <settle>_on <swap>_a <swap>_bounc
        <swap>_hump <take>_down <take>_it <take>_them <take>_your <wrong>_bomb <wrong>_it <wrong>_me a_<chat>
        a_<far> a_<ill> a_<kit> a_<less> a_<num> a_<part> a_chair a_plank abov_your and_<move> and_<not>
        and_<take> and_let and_your are_<not> are_go are_just are_not arm_<place> arm_wher as_<attend>
        back_<place> back_down back_of bar_<place> befor_<chat> befor_you behind_the bend_your bit_<place> bit_in
        bit_of both_<part> cheat_<chat> cheat_me clench_your come_<part> come_<place> come_back dive_bomb
        dont_<attend> dont_<pace> dont_clench dont_drop dont_hold dont_kick dont_lift dont_look dont_pull
        down_away down_like down_to drop_it elbow_<wrong> elbow_lock feel_<attend> feel_like feet_down
        flat_<place> foot_<place> for_a get_<place> go_<attend> go_like go_to hand_<move> hand_<place> hand_and
        hand_on hang_off have_a have_to head_<place> hold_it hump_<place> hump_over i_<not> if_that if_your
        if_youv in_a in_your is_<place> is_the it_<harm> it_<not> it_<place> it_on it_out it_ping its_<not> its_a
        its_not its_the just_<place> kick_it kne_<more> kne_are kne_in kne_up knee_<attend> leg_<place>
        let_<chat> let_<settle> let_go let_it lock_it never_<do> no_<do> no_<kit> no_<move> no_bounc no_hump
        not_<more> not_<place> not_<settle> not_<take> not_cheat not_on not_the not_your of_a of_them on_it
        on_the one_<part> over_<part> palm_<place> pull_<place> pull_your put_your reach_your rib_<move>
        round_<place> should_hear shoulder_<far> shoulder_blad shoulder_level slid_<place> some_of stay_at
        that_<not> that_<swap> that_not the_<attend> the_<do> the_<less> the_<more> the_<settle> the_chair
        the_clock the_hand the_kne the_neck the_pelvi the_ring the_spin the_stand the_toe the_top the_way
        them_<part> them_back them_home them_long them_on them_track till_your to_<part> to_you to_your
        toe_<place> toward_your track_<place> track_out try_to under_the up_the with_<attend> with_<kit>
        with_<part> with_weight you_<not> you_<swap> you_can you_dont you_want your_<chat> your_<more>
        your_<place> your_back your_chest your_eye your_foot your_hand your_head your_shoulder your_side
        your_strap
      `,
    ],
    [-0.4, '<chat>_it <do>_it <do>_the <part>_to front_of of_the'],
  ],
  phrase: [
    [0.8, 'fault-sure'],
    [0.4, 'easier-likely fault-likely'],
    [0.2, 'execution-sure focus-hint focus-likely tempo-likely'],
    [
      -0.2,
      `
        breathing-hint caution-hint chat equipment-likely equipment-sure execution-hint harder-sure praise
        range-hint range-likely range-sure setup-hint tempo-hint tempo-sure
      `,
    ],
    [-0.4, 'breathing-sure dose_only easier-hint easier-sure execution-likely setup-sure'],
    [-0.6, 'caution-sure empty_clauses'],
  ],
  start: [
    [0.4, '<do>_<attend> <not>_<wrong> eye_on'],
    [
      0.2,
      `
        <attend>_<part> <chat>_<attend> <chat>_<swap> <chat>_<wrong> <do>_<chat> <do>_<do> <harm>_<more>
        <less>_<do> <less>_<less> <move>_<attend> <move>_<chat> <not>_<chat> <not>_<do> <not>_<move>
        <not>_<settle> <not>_<swap> <pace>_<part> <pace>_<place> <part>_<far> <part>_<more> <part>_<settle>
        <part>_<take> <place>_<part> <settle>_<attend> <settle>_<more> <settle>_<part> <take>_<place> a_few
        a_few_of both_sid_of br_them br_them_over br_your br_your_chest bum_com bum_com_up bum_down chest_and
        chest_and_hip chest_fac chest_fac_the chest_up do_any do_any_lift do_not_rush dont_be_thump dont_break
        dont_break_it dont_fly dont_fly_and dont_just_throw dont_lean dont_let dont_let_your dont_reach_for
        dont_shov dont_step drop_them ease_off_the elbow_at elbow_at_about elbow_at_an elbow_is elbow_is_too
        elbow_live elbow_live_at elbow_stay elbow_stay_as elbow_straight eye_on_the eye_on_your feet_together
        find_a find_a_spot for_that for_that_one forehead_heav half_of half_of_you hand_off hand_off_the
        hand_off_your handl_com handl_com_in has_it head_stay head_stay_down heel_are heel_are_com heel_down
        hip_level hold_a hold_a_potato i_can i_can_feel i_can_tell i_know i_see i_see_tent i_want_them if_i
        if_i_can if_it if_it_roll if_the if_the_knee if_the_opposit if_your_hip if_your_rib im_see in_the it_is_a
        it_stay its_ankl its_go its_go_round its_only its_only_the its_only_your its_opposit its_still
        its_still_leg its_your_rib ive_seen ive_seen_that keep_both keep_both_feet keep_it keep_it_down
        keep_it_soft keep_it_tuck keep_some keep_some_stretch keep_the_hip keep_the_weight keep_them_in keep_your
        keep_your_button keep_your_low keep_your_weight keep_your_wrist kne_follow kne_follow_the kne_follow_your
        kne_over_your kne_soft kneecap_look kneecap_look_at land_quiet lean_and lean_and_go leav_it let_the_heel
        let_them level_your level_your_belt light_hand long_arm look_at look_at_a look_at_the make_a
        make_a_straight make_the make_the_front mind_your_kne most_peopl move_your move_your_face no_box
        no_box_to no_camel no_camel_hump no_clench no_hammock no_heav no_plonk no_plop no_thank no_thank_you
        no_turtl nobod_ask nobod_ask_them not_a_letter not_a_tent not_from not_from_the not_like_thi not_out_like
        not_the_neck not_the_same point_them point_them_forward point_wher point_wher_your push_tall
        push_your_kne rib_down ring_in ring_in_tight roll_out shin_straight shin_straight_up shoulder_are
        shoulder_down show_me show_me_the sit_back sit_back_instead slow_down soften_it somebody_hang
        somebody_hang_on stack_it stack_it_up stand_up stay_down stay_tall stay_upright stop_when_they strap_are
        strap_are_like sw_round take_the_slack that_a that_a_goos that_a_light that_cheat that_how_you that_is
        that_is_a that_the that_the_one that_the_part the_knee the_other_hand ther_a_stop ther_no ther_no_priz
        ther_to ther_to_be they_dont they_dont_fall theyr_just theyr_just_hook theyr_not thi_is_not thigh_stay
        thigh_stay_on thos_ring toe_up try_not try_not_to tuck_it tuck_them turn_it turn_it_in uncros_your
        uncros_your_ankl up_with_your use_your use_your_bel watch_the_front watch_your watch_your_elbow
        weight_over weight_over_your wher_they widen_out wrist_flat you_look you_look_like you_should
        you_should_not youll_bounc youll_bounc_on your_a_tabl your_all your_all_look your_but your_but_up
        your_look your_look_at your_not your_not_a your_not_bit your_short your_stand your_stand_up your_weight
      `,
    ],
    [
      -0.2,
      `
        <air>_<place> <attend>_<attend> <chat>_<chat> <chat>_<not> <chat>_<place> <chat>_<settle> <move>_<more>
        <move>_<part> <not>_<more> <not>_<pace> <not>_<place> <part>_<chat> <part>_<do> <part>_<place>
        <part>_<swap> <part>_<wrong> <place>_<place> <settle>_<place> <swap>_<do> <swap>_<kit> <swap>_<move>
        <swap>_<not> br_them_home dont_cheat_me dont_clench dont_clench_your dont_hold dont_kick dont_kick_it
        dont_let_it dont_lift dont_lock_it dont_look_at dont_pull dont_pull_with elbow_lock have_a its_a its_not
        its_not_cheat its_the keep_the_kne keep_the_knee keep_them_long keep_them_track keep_your_chest kne_up
        lead_with_your let_your like_a no_bounc no_hump no_hump_over nobod_should_hear not_a_sw not_a_tightrop
        not_the_back not_the_toe squeez_your that_your the_arm tuck_your you_dont you_dont_drop
      `,
    ],
  ],
  word: [
    [0.8, 'them'],
    [0.6, 'are bum lean look point rib theyr too'],
    [
      0.4,
      `
        carol chin elbow forward goe heav hip into jean neck no out see shoulder stay stomp tuck turn watch
        weight wrist your
      `,
    ],
    [
      0.2,
      `
        also alway ankl any arent arrow audienc beginner bel belt bend bent bethan bicep board bounc br brac
        bridg but calm camel careful cav ceil cheat chip curl daylight death deckchair degre denis derek die div
        do dont drift drop ear error eye fac fall fast few fift first fist fl flop fly fold follow fort frog from
        front gala gas get gone good goos gossip grip ground guard guy hammock handl has hasnt hat high hik hitch
        hundred i im in inclin instead inward is ive jaw jerk keep kiss knock knot know kyle lac lag land length
        less level ligament light like line logo lost lui marcu margaret maureen middl mirror mistak mo most
        motorbik move nate nice nobod not off opposit over part past pay peopl pillow pin pleas plonk pop potato
        priz push quit rail rather resist roll rop round rush sag saw scarecrow second seen seesaw shav ship
        shoot shop short shrug sid side sir skirt slack soften somebody sore spot squar squat stack stood
        straighten sway swim tabl tall taller tent they throw thump til tipto tir toe together turtl ugly
        unclench uncros up us use villag wander want war what wheel widen wing youll yourself
      `,
    ],
    [
      -0.2,
      `
        0 about abov acros after all allow anybod away balanc ball been befor behind bell between blad body bomb
        both bottom breath by calf call calv cardigan chair chang cheek clock come crank cros dive dog drag each
        else ever feel fine finger floor forearm go grab hap head heel hold hug if it kick knee kneel knuckl last
        leg let lie littl lock long me near need next nobody noth now number of one or other overhead pain pair
        palm paus pelvi pick ping plank pocket pres puff pull purpl put rais read relax rest right run sav say
        set shut sit slid so someth spin squeez still stretch take tap ten then ther thes think thos through till
        time to toda top towel track under underwater until wait walk was wash way week wet whil width wont yet
        you
      `,
    ],
    [-0.4, 'and arm for hand jump on without'],
  ],
} as const satisfies CueWeights
