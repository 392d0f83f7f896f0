/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind easier; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EASIER_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [0.8, 'less'],
    [0.6, 'swap'],
    [0.2, 'attend kit move'],
    [-0.2, 'chat do harm more num place'],
    [-0.4, 'pace wrong'],
    [-0.6, 'air'],
  ],
  conditional: [[0.2, 'yes']],
  first: [
    [0.6, '<less> leav or use'],
    [0.4, 'cut do hand if level red same step take tap to too'],
    [
      0.2,
      `
        <swap> ankl another anybod anyon bend bottom cant child feet for go got half kne let loop lose march
        modification new one palm pop put quicker rock sat shallower shorten shorter should shuffl sit slid sos
        squat stick stop ther tiny toe walk wob wobbl yellow you
      `,
    ],
    [
      -0.2,
      `
        <not> <num> <pace> all and bar dont down ease elbow find get heel hip i instead its like lower off okay
        paus pick pres shoulder straighten strap swap switch that thi tuck up weight
      `,
    ],
    [-0.4, '<chat> <part> <place> a rest your'],
  ],
  given: [
    [0.4, 'like lot'],
    [
      0.2,
      `
        <chat> <harm> <ill> <not> a again an arm at back bar behind chair cros everybody feel feet get had
        hamstring hip last moan much not out over pick pin plat rather sake someth stay stiff sure ten then thi
        tight tir toda two wob wobbl wont would
      `,
    ],
    [
      -0.2,
      `
        <kit> <pace> <swap> as bend bit bottom doddl down easy end fine goe grip half have hold its kneecap off
        on rock round side start still want well
      `,
    ],
    [-0.4, 'your'],
  ],
  last: [
    [0.4, 'easier help higher knee thigh wider wob yellow'],
    [
      0.2,
      `
        0 are arm baby bad bed beginner bell bent better bit block bridg chest closer comf copy corner count crim
        deadlift fierc fine fist ground grumbl hamstring hap heel high jump kerb kickstand kinder kne lap level
        lift lighter lot march moan more much need only option other peopl quicker rack reach red sake shrug sid
        sit slack someth sore sphinx sprawl stiff straighter strong sure taller th to toda turn twist version
        want weight whenever wobbl you
      `,
    ],
    [
      -0.2,
      `
        allow ball band bel bend bor bottom break do doddl drop easy finger first five flat forward hard head
        hold home isnt light long not okay plat shoulder soft spin squat stand step still swap tall thi thre top
        towel two under up walk
      `,
    ],
    [-0.4, 'on toe'],
  ],
  length: [
    [-0.2, '5-7 long'],
    [-0.4, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.6, '<part>_down'],
    [
      0.4,
      `
        <attend>_its <attend>_your <do>_closer <far>_one <kit>_and <kit>_if <kit>_up <more>_one <not>_reach
        <not>_sham <part>_knee <part>_on <settle>_on <settle>_the <swap>_sham <swap>_the <swap>_your a_lot at_a
        bend_the bottom_<part> bottom_knee come_<place> cushion_<place> for_<chat> hand_<place> if_its if_your
        just_<attend> leav_the leav_your level_one no_sham on_the on_to the_arm to_<less> toe_<place> toe_on
        two_<part> walk_the
      `,
    ],
    [
      0.2,
      `
        0_metr <air>_whenever <attend>_a <attend>_bell <attend>_count <attend>_go <attend>_it <attend>_just
        <attend>_like <attend>_one <attend>_that <attend>_the <attend>_thi <attend>_way <attend>_well <chat>_com
        <chat>_down <chat>_enough <chat>_half <chat>_lighter <chat>_may <chat>_might <chat>_month <chat>_need
        <chat>_newer <chat>_one <chat>_out <chat>_overhead <chat>_plank <chat>_rac <chat>_some <chat>_the
        <chat>_tir <chat>_toppl <chat>_up <chat>_want <chat>_wobbl <chat>_would <chat>_your <do>_if <do>_in
        <do>_it <do>_on <do>_side <do>_with <far>_down <far>_if <far>_impact <far>_rang <far>_spring <far>_way
        <harm>_ankl <harm>_if <harm>_off <harm>_stay <harm>_under <ill>_ankl <ill>_at <kit>_a <kit>_closer
        <kit>_dig <kit>_for <kit>_in <kit>_side <kit>_toda <kit>_under <kit>_your <less>_find <less>_get
        <less>_hamstring <less>_high <less>_hold <less>_if <less>_is <less>_kne <less>_one <less>_option
        <less>_peopl <less>_reach <less>_stiff <less>_strong <less>_ther <less>_thi <less>_to <less>_weight
        <less>_when <more>_abov <more>_again <more>_just <more>_more <more>_slack <more>_straighter <more>_ther
        <more>_upright <move>_closer <move>_down <move>_get <move>_here <move>_in <move>_off <move>_on
        <move>_side <move>_that <move>_the <move>_to <not>_at <not>_bar <not>_ear <not>_get <not>_go <not>_hap
        <not>_happen <not>_have <not>_jump <not>_lift <not>_manag <not>_meet <not>_say <not>_sure <not>_then
        <not>_weight <num>_and <num>_arm <num>_block <num>_dumbbell <num>_feet <num>_inch <num>_knee <num>_metr
        <num>_mov <num>_toe <num>_weight <pace>_longer <pace>_option <pace>_walk <pace>_you <part>_are <part>_at
        <part>_bent <part>_can <part>_complain <part>_cros <part>_empt <part>_heavier <part>_if <part>_in
        <part>_not <part>_now <part>_only <part>_over <part>_stay <part>_talk <part>_tap <part>_wher <part>_wide
        <part>_wider <part>_wont <place>_bend <place>_block <place>_closer <place>_ear <place>_from <place>_if
        <place>_in <place>_more <place>_straighter <place>_them <place>_ther <place>_to <place>_toe <place>_under
        <place>_up <place>_way <place>_whil <settle>_again <settle>_back <settle>_closer <settle>_go <settle>_had
        <settle>_lighter <settle>_out <settle>_overhead <settle>_that <settle>_to <swap>_band <swap>_bar
        <swap>_closer <swap>_it <swap>_just <swap>_keep <swap>_leg <swap>_round <swap>_them <swap>_touch
        <swap>_under <swap>_weight <take>_a <take>_again <take>_closer <take>_stay <take>_the <take>_two
        <take>_wide <wrong>_about a_<far> a_<kit> a_<pace> a_<part> a_ball a_bench a_bend a_bit a_box a_chair
        a_crim a_deadlift a_drawer a_fair a_gap a_grand a_heel a_kickstand a_knee a_littl a_love a_pair a_paus
        a_rais a_slant a_sphinx a_sprawl a_stool a_time a_toe a_twist abov_your aim_for along_the an_<harm>
        an_<less> an_easier and_<do> and_<pace> and_<take> and_come and_forward and_give and_help and_hold
        and_jog and_just and_leav and_let and_pull ankl_<place> ankl_over another_<less> another_option
        any_<pace> any_time are_<attend> are_<harm> are_<ill> are_<less> are_moan are_over are_stiff arm_<place>
        arm_and arm_by arm_down arm_wher as_well at_<num> at_all back_<more> back_from back_stiff back_the
        back_up bad_<part> bad_ankl balanc_is band_out be_<chat> be_done behind_them bell_dig bend_<place>
        bend_in bend_your big_spring bit_of both_<part> both_<place> both_together box_and br_the breath_whenever
        by_bend by_your call_that can_<far> can_<move> can_keep can_touch cant_<do> cant_<far> cant_<move>
        cant_<settle> cant_<take> cant_find cant_get cant_reach car_<num> car_one chest_on child_pose
        climb_<part> climb_<place> climb_back closer_<place> closer_in closer_to come_<part> come_back crawl_on
        cros_your cushion_on cushion_under cut_it cut_the dig_into do_<num> do_<part> do_it do_leg do_one do_them
        do_your done_sit dont_<chat> dont_<far> dont_<move> dont_<settle> dont_go dont_lift dont_reach
        down_<less> down_<swap> down_a down_at down_by down_is drop_a dumbbell_and ear_<attend> ear_if
        easy_option elbow_<attend> elbow_if empt_<kit> empt_bar everybody_sake eye_<far> eye_<more> eye_level
        fast_<move> fast_for feel_<attend> feel_like feet_<move> feet_<part> feet_<place> feet_back feet_stay
        feet_wide fine_if first_month flat_<kit> flat_<swap> flat_block flat_on floor_<swap> foot_<place>
        foot_down foot_in foot_on for_<harm> for_balanc for_everybody for_thos for_you forearm_<attend>
        forward_like from_someth from_ther front_<place> front_on go_lighter go_overhead good_<num> good_one
        good_plank grand_version grip_go had_<far> had_<less> had_enough hamstring_<less> hamstring_tight
        hand_<more> hand_<swap> hand_acros hand_behind hand_empt hand_heavier hand_under hand_up hand_wider
        happen_<place> happen_in have_<chat> have_had have_to head_<place> head_down heav_bell heel_at heel_down
        heel_tap help_<chat> help_it help_you higher_<kit> hip_<not> hip_are hold_<place> hold_it hold_on
        hoodi_<more> hoodi_<place> hoodi_up if_<num> if_it if_one if_that if_the if_thi ill_<not> ill_not
        impact_peopl in_<place> in_and in_closer in_your is_<attend> is_<less> is_<not> is_<swap> is_no
        is_perfect is_still is_to it_<far> it_<ill> it_<less> it_a it_along it_by it_pinch it_real it_sat
        it_still it_wider it_wont it_wrong its_<chat> its_<far> its_<less> its_comf its_drag its_fierc its_higher
        its_lower its_nip jog_the jump_<more> jump_up just_<do> just_<move> just_<swap> just_as just_do just_look
        keep_<num> keep_all keep_get keep_one keep_the kne_<less> kne_<pace> kne_<place> kne_bent kne_down kne_in
        kne_on kne_talk knee_<swap> knee_at knee_on last_<num> lean_<place> lean_on leap_on leg_<far> leg_if
        let_some let_your level_<num> lift_the lighter_<attend> like_a like_that littl_way long_way loop_<more>
        loop_<place> loop_up lose_it lose_the love_<less> low_impact mak_it make_the make_them march_<attend>
        march_if march_it measur_your might_<attend> more_<place> more_slack more_upright new_peopl no_<do>
        no_<kit> no_<move> no_bar no_lift no_weight nobody_measur not_hap not_have not_say not_sure of_<harm>
        of_a of_it off_<chat> off_a off_an off_you okay_to on_<kit> on_<num> on_a on_block one_<kit> one_<part>
        one_are one_arm one_dumbbell one_knee one_off one_toe one_weight onto_<part> option_a or_0 or_<do>
        or_<move> or_<not> or_<settle> or_just or_strid or_take other_<attend> other_heel out_in out_the
        out_under pair_of palm_<place> paus_longer perfect_<less> perfect_okay pinch_at plat_<place> pop_that
        pose_is pound_off pressur_off pull_from push_off put_a put_two rac_at rail_<attend> rail_if rang_<place>
        real_low rest_<place> rest_on ring_<more> ring_<place> ring_higher ring_up roll_<swap> same_<num>
        same_<settle> same_clock same_fiv same_th sat_<place> sat_down say_<more> say_anyth sham_<place> sham_in
        shin_and shin_touch shorten_the should_that shoulder_dont shoulder_now shuffl_<place> shuffl_your
        simp_<settle> simp_<take> sit_<attend> sit_on skip_<place> smaller_<far> so_<far> so_its some_of
        some_slack sos_the spring_<do> squat_over squat_to squeez_both stag_<num> stag_one stand_closer
        start_again start_wher stay_<place> stay_down stay_here stay_on step_in step_it step_side step_your
        stick_a still_<pace> still_a still_count stool_<place> stool_behind stop_at stop_ear strid_it
        support_<place> tak_<swap> tak_pound tak_some take_<less> take_<place> take_the tap_a tap_the tap_with
        teach_it th_with that_<attend> that_<pace> that_<swap> that_a that_better that_fast that_feel that_fine
        that_roll the_<do> the_<kit> the_<move> the_<num> the_<part> the_<settle> the_bed the_bench the_bridg
        the_corner the_crat the_door the_dumbbell the_empt the_fenc the_first the_floor the_foot the_good
        the_ground the_heel the_jump the_kerb the_leg the_lever the_load the_low the_one the_other the_pressur
        the_rack the_rail the_rang the_skip the_straight the_twist the_very the_wall the_wrist them_forward
        then_<settle> then_<swap> ther_<more> ther_more they_<swap> they_are they_can they_dont thinner_<kit>
        thinner_band thos_with thumb_<swap> thumb_can tight_<attend> tight_hamstring to_0 to_<not> to_a to_do
        to_eye to_make to_modif to_rest to_sit to_stop to_take toe_<move> toe_of toe_stay too_<harm> too_<less>
        too_high too_stiff too_strong touch_<place> touch_down towel_<chat> towel_<do> towel_<place> towel_behind
        towel_round two_<far> two_<take> two_feet two_hand two_inch under_them under_your up_<more> up_<place>
        up_abov up_again up_more up_straighter up_ther up_under up_with use_a use_the use_your very_end
        walk_<less> walk_it wall_<attend> wall_for wall_if want_<place> want_in way_<less> we_call weight_<chat>
        weight_toda whenever_<chat> whenever_you wher_they whil_the whos_<part> with_<less> with_just with_tight
        with_your without_the wobbl_about wont_<do> wont_<far> wont_<move> would_<not> would_rather wrist_<harm>
        wrist_<not> wrist_not you_<less> you_<more> you_<place> you_may you_might you_need you_rac you_start
        you_up you_want you_would your_<chat> your_<part> your_<wrong> your_back your_chest your_com your_first
        your_fist your_hamstring your_hand your_hoodi your_lap your_newer your_sid your_thigh your_tir your_toe
        your_wobbl youv_a
      `,
    ],
    [
      -0.2,
      `
        <attend>_at <attend>_down <attend>_is <attend>_on <attend>_shut <attend>_ther <attend>_to <attend>_you
        <chat>_do <chat>_in <chat>_like <chat>_on <chat>_you <do>_down <do>_is <do>_or <do>_out <far>_a
        <far>_back <far>_it <far>_step <far>_the <far>_toe <far>_you <far>_your <harm>_leg <ill>_and <kit>_are
        <kit>_between <kit>_do <kit>_of <kit>_the <kit>_with <less>_or <less>_the <less>_you <more>_and
        <move>_back <not>_a <not>_and <not>_bend <not>_stop <not>_ther <num>_leg <num>_on <num>_step <num>_to
        <part>_as <part>_away <part>_com <part>_come <part>_for <part>_forward <part>_go <part>_goe <part>_is
        <part>_just <part>_level <part>_lift <part>_of <part>_off <part>_out <part>_point <part>_straight
        <part>_ther <place>_as <place>_down <place>_it <place>_over <place>_till <place>_you <settle>_a
        <settle>_in <settle>_it <settle>_them <settle>_up <settle>_your <swap>_and <swap>_are <swap>_hand
        <swap>_higher <swap>_not <swap>_out <swap>_with a_<less> a_<more> a_<num> a_<take> a_beat a_doddl a_mat
        a_small about_<num> abov_the all_<attend> and_<attend> and_br and_it and_keep are_<place> are_<swap>
        are_bend are_fine are_pull arm_<attend> as_<attend> as_<place> as_if as_you at_<chat> back_<part>
        back_<place> back_down back_is befor_<chat> befor_you behind_your below_the between_your bit_<far>
        both_are br_your come_<more> come_up could_do do_<not> do_not dont_<less> down_<chat> down_and down_to
        drop_the each_<part> elbow_are end_<place> feet_on for_<num> for_a for_the from_the from_your get_your
        go_dead go_on grip_<attend> hand_<do> hand_<move> hand_on have_a hip_<place> if_ther in_the is_<chat>
        is_<more> is_good it_<chat> it_<do> it_<place> it_<settle> it_<swap> it_doesnt it_in it_isnt its_<not>
        its_noth its_only its_the just_<place> keep_them kne_<attend> kne_and kne_up let_<chat> let_it let_you
        lift_<num> lift_off lift_one look_at look_down no_<attend> no_<part> not_<move> not_<place> of_<chat>
        of_<num> of_you on_one one_<more> one_hand one_leg onto_the or_a or_the other_arm other_knee out_a
        push_the rock_a seat_<attend> seat_if shak_that shoulder_<place> side_<not> sit_<part> sit_back sit_up
        step_the stop_<chat> stop_<far> stop_and take_it that_<kit> that_<part> that_is that_the that_your
        the_<air> the_<attend> the_<ill> the_<less> the_<more> the_<place> the_<swap> the_bar the_end the_front
        the_hand the_kneecap the_lower the_middl the_next the_second the_side the_step the_stick the_top the_way
        the_whol ther_<not> ther_<swap> ther_no thi_<pace> thi_time thumb_<place> till_it to_<chat> to_<do>
        to_<far> to_get to_one turn_the up_<attend> up_the walk_<place> walk_your wall_and way_<place> wher_it
        whol_<part> with_both with_it with_one you_<do> you_<not> you_<wrong> you_can you_like your_<air>
        your_<attend> your_<far> your_<kit> your_<more> your_<move> your_<settle> your_<swap> your_<take>
        your_bel your_ear your_eye your_thumb youv_got
      `,
    ],
    [-0.4, '<chat>_can at_the it_down off_the to_your you_<settle> you_<swap>'],
  ],
  phrase: [
    [1, 'easier-sure'],
    [0.6, 'easier-hint'],
    [0.4, 'easier-likely harder-likely setup-sure'],
    [0.2, 'caution-hint equipment-hint execution-sure range-likely setup-hint setup-likely'],
    [
      -0.2,
      `
        breathing-likely dose_only execution-hint fault-hint fault-sure focus-hint purpose range-hint
        tempo-likely
      `,
    ],
    [-0.4, 'breathing-sure chat fault-likely tempo-sure'],
    [-0.6, 'empty_clauses focus-sure harder-sure'],
  ],
  start: [
    [0.4, '<more>_<num> leav_the level_one the_leg the_other'],
    [
      0.2,
      `
        <attend>_<num> <chat>_<swap> <do>_<part> <do>_<place> <far>_<num> <harm>_<move> <kit>_<far>
        <less>_<attend> <less>_<move> <not>_<chat> <not>_<do> <not>_<move> <num>_<kit> <num>_<part> <num>_<take>
        <part>_<far> <part>_<harm> <part>_<ill> <part>_<less> <part>_<move> <part>_<not> <part>_<place>
        <part>_<swap> <place>_<num> <settle>_<less> <settle>_<place> <settle>_<swap> <swap>_<do> <swap>_<move>
        <take>_<far> ankl_over ankl_over_the another_option arm_by arm_by_your bad_ankl band_out band_out_under
        bell_dig bell_dig_into bend_the bend_the_knee bend_your bend_your_kne big_spring both_feet bottom_knee
        bottom_knee_down br_the breath_whenever breath_whenever_you car_one child_pose climb_back climb_back_up
        come_back crawl_on crawl_on_your cros_your cros_your_arm cut_it cut_the cut_the_corner do_it do_leg
        do_them dont_go dont_lift drop_a feet_wide fold_your_hoodi for_everybody for_everybody_sake for_thos
        for_thos_with go_lighter got_a got_a_heav grip_go half_the hamstring_tight hand_acros hand_acros_the
        hand_behind_the hand_down hand_heavier hand_on hand_on_a hand_on_your hand_under hand_under_your
        hand_wider have_a_bar heel_tap heel_tap_with hold_it_wider hold_on_to hold_the_rail if_it_wont if_its
        if_its_too if_one if_that if_that_fast if_that_too if_the_floor if_the_kne if_they_dont if_thi
        if_your_back if_your_tir ill_not ill_not_say is_it it_tak it_tak_pound its_higher its_lower its_nice
        its_still its_still_a jog_a_minut jump_up jump_up_off keep_a keep_a_bend keep_all keep_all_the keep_one
        keep_the_kne keep_the_toe keep_your_arm kne_complain kne_down kne_on kne_sore leav_a_gap leav_the_arm
        leav_your let_go_of let_some let_some_slack let_the_band let_your let_your_toe like_your_leap loop_up
        loop_up_abov lose_it lose_the low_impact low_impact_peopl make_the_paus make_them march_it new_peopl
        no_jump no_lift no_sham no_sham_in no_weight nobody_measur nobody_measur_your not_sure noth_happen
        noth_happen_in on_your one_dumbbell one_heel one_heel_at one_knee_at option_a or_do_ten or_just or_stay
        or_stop or_strid or_strid_it other_foot_on palm_fac pop_that pop_that_roll push_off put_a put_a_cushion
        ring_higher roll_up_to same_clock same_fiv same_th sat_down set_the_bell shorten_the should_that
        should_that_feel sit_on sit_on_the slid_one_foot slid_the slid_your soften_the_knee sos_the sos_the_top
        squat_over squat_over_the squat_to squeez_both squeez_both_together stag_one stand_closer
        stand_up_straighter start_wher start_wher_its step_in step_it step_your step_your_feet stick_a
        stick_a_cushion stop_at stop_at_0 take_a tap_a tap_the tap_the_heel that_a that_a_grand that_a_half
        that_a_sphinx that_fine the_leg_if the_one_knee the_other_heel ther_more ther_more_slack they_can
        they_can_be they_still they_still_count thumb_can thumb_can_hover tip_forward tip_forward_a to_modif
        to_take to_take_the toe_on toe_on_the toe_stay too_strong two_feet two_feet_up use_the use_your
        use_your_hand walk_it_the walk_the walk_the_bend we_call we_call_that wobbl_about wrist_not wrist_not_hap
        you_can_do you_do you_do_not you_may you_might your_shoulder your_shoulder_now
      `,
    ],
    [
      -0.2,
      `
        <attend>_<chat> <chat>_<not> <do>_<attend> <move>_<attend> <not>_<less> <not>_<part> <not>_<place>
        <part>_<attend> <place>_<part> <place>_<place> <settle>_<attend> <swap>_<attend> <swap>_<not>
        <take>_<part> both_hand_on br_your do_not half_way_is hand_on_the if_its_noth if_ther if_you if_your_kne
        instead_of its_a its_the or_a or_the pres_the push_the rest_your rest_your_hand sit_back that_is the_arm
        walk_it_in
      `,
    ],
  ],
  word: [
    [0.8, 'help'],
    [0.6, 'closer higher if leav take tap toe use wider'],
    [
      0.4,
      `
        arm bend block cut do easier empt hamstring is just level lighter lose mak march more option or put same
        sham some stiff version whenever wob
      `,
    ],
    [
      0.2,
      `
        0 a along alternativ altogether an anybod anyon backward balanc bed beginner bell bench bent bit
        bodyweight box bridg by cant child comf copy corner crat crim cros deadlift down drag dumb dumbbell
        everybody fair fast feet fenc fierc fine first fist fiv foot gap gentler give go grand grumbl had half
        hand hap happen heel hoodi impact jog jump kerb kickstand kinder kne knee lap less let lever loop lot
        love low make may metr might moan modif modification month muddl nearer new newer nip on one other paus
        peopl perfect plat pose prefer pressur rac rack rail rais rang rather red sake sat scal shallower shorten
        shuffl sid simp sit sixt size skip slack slant smaller sore sos sphinx sprawl spring squat stag still
        stool straighter strong sure tak th thigh thinner time toda tonight toppl touch upright walk wall weight
        who whos wobbl wont wrist yellow yet
      `,
    ],
    [
      -0.2,
      `
        about against ahead air all asleep away back backsid bag beat becaus befor bel below belt big bone bor
        bounc breath buckl bum check chin clos dead doddl doe dont doubl draw driv drop dull each ease easy eight
        elbow end ever face find finger fingertip float fly from front full further get goe got grip handl hang
        hard has here home i insid into isnt kind kiss kneecap land left light like long look me middl neck next
        no off only open own pain past pick point proper quiet quit rib right room round seat second see settl
        shak sharp sho shoulder shut sink slip slow snap so soft somebody spin squeez stand step straight
        straighten swap switch tell than that theyr thi thre thumb tin top tuck tug turn until us wait we were
        wet when whol width will with youll yourself
      `,
    ],
    [-0.4, 'as be lower of side tall till youv'],
  ],
} as const satisfies CueWeights
