/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind easier; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EASIER_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [0.8, 'less'],
    [0.6, 'swap'],
    [0.2, 'attend kit'],
    [-0.2, 'chat do more place wrong'],
    [-0.4, 'pace'],
    [-0.6, 'air'],
  ],
  conditional: [[0.2, 'yes']],
  first: [
    [0.6, '<less> leav or use'],
    [0.4, 'bend do if same take tap to too'],
    [
      0.2,
      `
        <swap> ankl another anybod anyon bottom breath cant child cut feet for go got hamstring hand higher ill
        kne let level lie loop lose low make march modification new noth one put quicker sat scal shallower
        shorten shorter should shuffl sit skip slid sos squat step stick stop tiny walk wob wobbl yellow you
      `,
    ],
    [
      -0.2,
      `
        <attend> <chat> <not> <num> <pace> all bar dont down elbow get heel hip i knee like lower paus pick pres
        rest shoulder stay straighten strap swap switch that thi up
      `,
    ],
    [-0.4, '<part> <place> a your'],
  ],
  given: [
    [0.4, 'like'],
    [
      0.2,
      `
        <chat> <harm> <ill> <not> <num> a again arm at back bar cros dont everybody for front get had hamstring
        hip last lot much not out pick pinch rather sake stay stiff sure thi tight up week with wobbl would
      `,
    ],
    [
      -0.2,
      `
        <far> <kit> <pace> <place> <swap> as bend bit doddl down easy half have hold in its kneecap lift off on
        rock side take want youv
      `,
    ],
    [-0.4, 'your'],
  ],
  last: [
    [0.4, 'help higher thigh wider wob yellow'],
    [
      0.2,
      `
        0 about arm baby bed beginner bell bent bit block bridg chest closer comf copy corner count crim deadlift
        easier empt fine fist ground heel high jump kerb kinder knee lap lighter low march more only option other
        peopl quicker rack reach sake sid sit slack sore sphinx sprawl stiff straighter sure th to toda turn
        twist version want watch weight whenever wrong yet
      `,
    ],
    [
      -0.2,
      `
        ball band bel bend bottom breath doddl drop end finger first five flat forward hard head hip hold home
        long okay plat seat shoulder soft spin squat stand step still tall them toe top two
      `,
    ],
    [-0.4, 'on'],
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
        <attend>_its <attend>_your <far>_one <kit>_if <kit>_up <more>_one <move>_on <not>_reach <part>_on
        <settle>_on <swap>_the <swap>_your at_a bend_the bottom_<part> bottom_knee come_<place> cushion_<place>
        for_<chat> for_you hand_<place> have_to if_its if_your is_<swap> just_<attend> leav_the leav_your on_to
        that_a to_<less> toe_<place> toe_on walk_the
      `,
    ],
    [
      0.2,
      `
        0_metr <air>_whenever <attend>_a <attend>_bell <attend>_count <attend>_it <attend>_just <attend>_like
        <attend>_one <attend>_that <attend>_thi <attend>_well <chat>_clos <chat>_down <chat>_enough
        <chat>_lighter <chat>_may <chat>_might <chat>_month <chat>_need <chat>_newer <chat>_not <chat>_one
        <chat>_overhead <chat>_plank <chat>_some <chat>_start <chat>_the <chat>_toppl <chat>_up <chat>_want
        <chat>_would <chat>_your <do>_closer <do>_if <do>_in <do>_on <do>_side <do>_yet <far>_down <far>_if
        <far>_impact <far>_rang <far>_spring <far>_way <harm>_ankl <harm>_if <harm>_off <harm>_on <harm>_under
        <harm>_up <ill>_ankl <ill>_at <kit>_a <kit>_and <kit>_closer <kit>_dig <kit>_for <kit>_in <kit>_side
        <kit>_toda <kit>_under <kit>_your <less>_a <less>_get <less>_hamstring <less>_if <less>_is <less>_kne
        <less>_one <less>_option <less>_peopl <less>_reach <less>_stiff <less>_strong <less>_ther <less>_thi
        <less>_to <less>_weight <more>_abov <more>_just <more>_slack <more>_straighter <more>_ther <more>_upright
        <move>_a <move>_closer <move>_down <move>_get <move>_here <move>_in <move>_off <move>_side <move>_the
        <move>_to <move>_yet <not>_at <not>_get <not>_go <not>_happen <not>_have <not>_meet <not>_say <not>_sham
        <not>_sure <not>_sw <not>_then <not>_weight <num>_and <num>_arm <num>_block <num>_dumbbell <num>_feet
        <num>_heel <num>_inch <num>_knee <num>_metr <num>_mov <num>_off <num>_the <num>_toe <pace>_longer
        <pace>_option <pace>_you <part>_along <part>_are <part>_at <part>_behind <part>_bent <part>_can
        <part>_cros <part>_dont <part>_empt <part>_if <part>_in <part>_knee <part>_now <part>_only <part>_over
        <part>_sore <part>_stay <part>_talk <part>_wher <part>_wider <part>_wont <place>_abov <place>_bend
        <place>_block <place>_closer <place>_ear <place>_if <place>_in <place>_is <place>_set <place>_straighter
        <place>_ther <place>_to <place>_toe <place>_under <place>_up <place>_whil <settle>_again <settle>_back
        <settle>_closer <settle>_go <settle>_lighter <settle>_onto <settle>_out <settle>_overhead <settle>_the
        <settle>_to <swap>_closer <swap>_in <swap>_it <swap>_jump <swap>_just <swap>_off <swap>_sham <swap>_sw
        <swap>_ten <swap>_touch <swap>_under <swap>_weight <take>_again <take>_closer <take>_on <take>_stay
        <take>_the <wrong>_about a_<far> a_<kit> a_<pace> a_ball a_bench a_bend a_bit a_box a_chair a_crim
        a_deadlift a_drawer a_fair a_grand a_heav a_heel a_kickstand a_knee a_littl a_lot a_love a_pair a_paus
        a_rais a_slant a_sphinx a_sprawl a_time a_toe abov_your acros_the aim_for along_the an_<harm> an_<less>
        an_easier and_<take> and_come and_give and_help and_hold and_jog and_just and_leav and_let and_pull
        ankl_<place> ankl_over another_<less> another_option any_<pace> any_time are_<attend> are_<harm>
        are_<ill> are_<less> are_moan are_over arm_<place> arm_and arm_by arm_down arm_wher as_well at_0 at_<num>
        back_<more> back_stiff back_up bad_<part> bad_ankl balanc_is band_off band_out bar_<not> be_<chat>
        be_done bell_dig bend_in bend_your big_spring bit_<less> bit_of both_<place> both_<take> both_feet
        both_together box_and br_the breath_whenever by_bend by_your call_that can_<far> can_<move> can_touch
        cant_<do> cant_<far> cant_<move> cant_<settle> cant_<take> cant_get cant_reach car_<num> car_one
        chest_<place> chest_on child_pose climb_<part> climb_<place> climb_back clos_a closer_<place> closer_in
        closer_to come_<part> come_back come_onto cros_your cushion_on cushion_under cut_the dig_into do_<num>
        do_<part> do_it do_one do_ten do_your done_sit dont_<chat> dont_<far> dont_<settle> dont_go dont_lift
        dont_reach down_<less> down_<swap> down_a down_at down_by down_fine down_is drop_a ear_<attend> ear_if
        easy_option elbow_<attend> empt_<kit> empt_bar everybody_sake eye_<far> fast_<move> feel_<attend>
        feel_like feet_<move> feet_<part> feet_<place> feet_back feet_stay first_month flat_<kit> flat_<swap>
        flat_block floor_<swap> foot_<place> foot_down foot_in foot_on for_balanc for_everybody for_thos
        forearm_<attend> forward_like front_<place> front_on give_it go_lighter go_overhead good_<num> good_one
        good_plank grand_version grip_go had_<far> had_<less> had_enough half_the hamstring_<less>
        hamstring_tight hand_<far> hand_<more> hand_acros hand_behind hand_empt hand_up hand_wider happen_<place>
        happen_in have_<chat> head_<place> head_down heav_bell heel_at heel_down help_<chat> help_it help_you
        higher_<kit> hip_<settle> hip_are hold_<place> hold_on hold_the hoodi_<more> hoodi_<place> hoodi_up
        if_<num> if_the if_thi ill_<not> ill_not impact_peopl in_<place> in_between in_closer is_<attend>
        is_<less> is_<not> is_no is_perfect is_still it_<far> it_a it_sat it_still it_wider it_wrong its_<far>
        its_<less> its_comf its_higher its_lower its_nice its_nip jog_the jump_<more> jump_up just_<chat>
        just_<do> just_<move> just_<swap> just_as just_do just_look just_the keep_<num> keep_all keep_get
        keep_one keep_the kne_<less> kne_<pace> kne_<place> kne_bent kne_down kne_in kne_more kne_on kne_talk
        knee_<swap> knee_at knee_on lean_<place> lean_on leg_<far> leg_at let_some let_your level_<num> level_one
        lift_your lighter_<attend> like_a littl_way loop_<more> loop_up lose_it lose_the love_<less> low_impact
        mak_it make_them march_<attend> march_if march_it might_<attend> more_<place> more_slack more_upright
        need_it new_peopl no_<do> no_<move> no_jump no_sham no_sw no_weight not_have not_say not_sure of_<harm>
        of_<kit> of_a of_the off_<chat> off_a off_you okay_to on_<kit> on_block on_the one_<kit> one_<part>
        one_arm one_dumbbell one_heel one_knee one_toe onto_<part> opposit_knee option_a or_0 or_<take> or_just
        or_strid other_<attend> other_heel other_if out_the out_under pair_of palm_fac paus_longer perfect_<less>
        perfect_okay pinch_at pose_is pound_off pres_them pressur_off push_off put_a put_two rail_<attend>
        rail_if rest_<place> rest_on ring_<more> ring_<place> ring_higher ring_up same_clock same_th sat_<place>
        sat_down say_<more> say_anyth sham_<place> sham_in shin_touch shorten_the should_that shoulder_now
        shuffl_<place> simp_<settle> simp_<take> sit_<attend> sit_<more> sit_on slid_your smaller_<far> so_<far>
        so_its some_of some_slack sos_the squat_over squat_to squeez_both stag_one stand_closer start_again
        start_wher stay_down stay_here stay_on step_in step_it step_side step_your stick_a still_<pace> still_a
        still_count stool_<place> stool_behind stop_at strid_it support_<place> sw_yet tak_<swap> tak_pound
        tak_some take_<less> take_<place> take_the tap_a tap_the teach_it that_<attend> that_<pace> that_<swap>
        that_feel that_fine the_<do> the_<kit> the_<move> the_<num> the_<part> the_<settle> the_arm the_bed
        the_bench the_bend the_bridg the_corner the_crat the_door the_empt the_fenc the_first the_floor the_foot
        the_good the_ground the_heel the_jump the_kerb the_leg the_lever the_load the_one the_other the_pressur
        the_rack the_rail the_rang the_straight the_thigh the_wall the_wrist them_forward then_<settle>
        then_<swap> ther_<do> ther_<more> ther_more they_<swap> they_are they_can they_dont they_still
        thumb_<swap> thumb_can tight_<attend> tight_hamstring tip_forward to_0 to_<not> to_a to_lift to_make
        to_modif to_sit to_stop to_take toe_<move> toe_of toe_stay together_and too_<less> too_stiff too_strong
        touch_<place> touch_down two_<far> two_<part> two_<take> two_feet two_hand two_inch under_them under_your
        up_<place> up_abov up_straighter up_ther up_under up_with use_a use_the use_your walk_it wall_<attend>
        wall_for wall_if want_<place> want_in way_<less> we_call weight_<chat> weight_toda whenever_<chat>
        whenever_you wher_they whil_the whos_<part> with_<less> with_just with_tight with_your without_the
        wobbl_about wont_<far> wont_<move> would_<not> would_rather wrist_<harm> you_<less> you_<more>
        you_<place> you_may you_might you_need you_start you_up you_want you_would your_<chat> your_<part>
        your_<wrong> your_arm your_back your_clos your_first your_fist your_hand your_hoodi your_lap your_lean
        your_newer your_sid your_thigh your_toe your_wobbl
      `,
    ],
    [
      -0.2,
      `
        <attend>_at <attend>_down <attend>_on <attend>_shut <attend>_ther <attend>_you <attend>_youv <chat>_can
        <chat>_dont <chat>_on <do>_down <do>_or <do>_out <far>_back <far>_it <far>_its <far>_or <far>_the
        <far>_toe <far>_your <harm>_and <harm>_leg <ill>_and <kit>_are <kit>_between <kit>_do <kit>_down
        <kit>_with <less>_or <less>_step <more>_a <more>_the <move>_out <not>_a <not>_and <num>_at <num>_leg
        <num>_step <num>_to <part>_as <part>_come <part>_for <part>_forward <part>_go <part>_is <part>_just
        <part>_lift <part>_off <part>_out <part>_point <part>_ther <place>_as <place>_down <place>_it <place>_of
        <place>_on <place>_over <place>_till <settle>_a <settle>_in <settle>_it <settle>_them <settle>_up
        <settle>_your <swap>_are <swap>_hand <swap>_if <swap>_of <swap>_out <swap>_with a_<less> a_<more> a_<num>
        a_<settle> a_doddl a_mat a_small about_<num> abov_the and_<attend> are_<swap> are_bend as_<attend> as_if
        as_you back_<part> back_<place> back_down bag_of befor_<chat> befor_you below_the between_your both_are
        br_your come_<more> come_up do_<not> down_and down_to each_<part> feet_on foot_off for_a for_the from_the
        go_on grip_<attend> hand_on have_a hip_<place> if_youv in_the is_<chat> is_<more> it_<chat> it_<do>
        it_<settle> it_<swap> it_down its_a its_noth its_only its_the just_<place> kne_<attend> kne_and kne_up
        left_<part> let_it lift_off look_at look_down no_<attend> no_<part> not_<place> of_<chat> of_<num>
        of_<swap> of_you on_one on_your one_hand one_leg other_knee out_<attend> out_of pres_the shoulder_<place>
        side_<less> side_<not> sit_<part> sit_back sit_up stop_and take_it that_<kit> that_is that_the the_<air>
        the_<attend> the_<far> the_<less> the_<more> the_bar the_ceil the_end the_kneecap the_lower the_middl
        the_next the_side the_spin the_step the_stick the_way the_whol ther_<not> ther_<swap> ther_no thi_<pace>
        thi_time to_<do> to_<far> to_get to_one to_the to_your up_<attend> wall_and with_both with_one you_<chat>
        you_<do> you_<move> you_<not> you_<settle> you_<take> you_<wrong> you_can you_dont your_<air>
        your_<attend> your_<kit> your_<more> your_<place> your_<settle> your_<swap> your_<take> your_ear
        your_elbow your_eye youv_got
      `,
    ],
    [-0.4, 'at_the off_the you_<swap>'],
  ],
  phrase: [
    [1.2, 'easier-sure'],
    [0.6, 'easier-hint'],
    [0.4, 'easier-likely setup-sure'],
    [
      0.2,
      `
        caution-hint equipment-hint execution-sure harder-likely range-likely setup-likely
      `,
    ],
    [
      -0.2,
      `
        breathing-likely breathing-sure execution-hint fault-hint focus-hint purpose range-hint tempo-likely
        tempo-sure transitions
      `,
    ],
    [-0.4, 'dose_only fault-likely harder-sure'],
    [-0.6, 'chat empty_clauses focus-sure'],
  ],
  start: [
    [0.4, '<more>_<num> leav_the leav_your the_leg the_other'],
    [
      0.2,
      `
        <attend>_<num> <chat>_<swap> <do>_<part> <do>_<place> <far>_<num> <less>_<attend> <less>_<move>
        <not>_<do> <not>_<move> <not>_<settle> <num>_<kit> <num>_<part> <num>_<take> <part>_<far> <part>_<harm>
        <part>_<ill> <part>_<less> <part>_<place> <part>_<swap> <place>_<num> <settle>_<less> <settle>_<place>
        <settle>_<swap> <swap>_<do> <swap>_<move> <swap>_<num> ankl_over ankl_over_the another_option arm_by
        arm_by_your bad_ankl band_out band_out_under bell_dig bell_dig_into bend_the bend_the_knee bend_your
        bend_your_kne big_spring both_feet both_feet_stay bottom_knee bottom_knee_down br_the breath_whenever
        breath_whenever_you car_one child_pose climb_back climb_back_up come_back cros_your_arm cut_the
        cut_the_corner do_it do_them dont_go dont_lift drop_a fold_your_hoodi for_everybody for_everybody_sake
        for_thos for_thos_with go_lighter got_a got_a_heav grip_go half_the hamstring_tight hand_acros
        hand_acros_the hand_behind_the hand_on_a hand_on_your hand_under_your hand_wider have_a_bar hold_it_wider
        hold_the_rail if_it_pinch if_its_too if_that if_the_hip if_they_dont if_thi if_your_wrist ill_not
        ill_not_say is_it it_tak it_tak_pound its_higher its_lower its_nice its_still_a jump_up jump_up_off
        keep_a keep_a_bend keep_all keep_all_the keep_one keep_the_kne keep_the_toe keep_your_arm kne_down
        kne_sore leav_the_arm let_some let_some_slack let_the_band let_your let_your_toe level_one like_your_lean
        loop_up loop_up_abov lose_it lose_the low_impact low_impact_peopl make_it_a make_the_paus make_them
        march_it new_peopl no_jump no_sham no_sham_in no_sw no_sw_yet no_weight not_sure noth_happen
        noth_happen_in on_your one_dumbbell one_heel one_heel_at one_knee_at option_a or_0 or_do_ten or_just
        or_stay or_strid or_strid_it other_foot_on palm_fac push_off put_a put_a_cushion ring_higher roll_up_to
        same_clock same_th sat_down set_the_bell shorten_the should_that should_that_feel sit_on sit_on_the
        slid_your sos_the sos_the_top squat_over squat_over_the squat_to squeez_both squeez_both_together
        stag_one stand_closer stand_up_straighter start_wher start_wher_its step_in step_it step_your
        step_your_feet stick_a stop_at stop_at_0 take_a take_the_band tap_a tap_the tap_the_heel that_a
        that_a_grand that_a_half that_a_sphinx that_fine the_leg_if the_one the_one_knee the_other_heel the_tip
        ther_more ther_more_slack they_can they_can_be they_still they_still_count thumb_can thumb_can_hover
        tip_forward tip_forward_a to_modif to_take to_take_the toe_on toe_on_the two_feet two_feet_up use_the
        use_your walk_it_the walk_the we_call we_call_that wobbl_about you_can_do you_do you_do_not you_may
        you_might your_shoulder your_shoulder_now
      `,
    ],
    [
      -0.2,
      `
        <attend>_<chat> <attend>_<part> <chat>_<not> <move>_<attend> <not>_<less> <not>_<part> <not>_<place>
        <part>_<attend> <place>_<part> <place>_<place> <settle>_<attend> <swap>_<attend> <swap>_<not>
        <swap>_<part> <take>_<part> br_your do_not half_way hand_on_the if_its_noth if_your_kne if_youv_got or_a
        sit_back take_it that_is the_arm
      `,
    ],
  ],
  word: [
    [0.8, 'help'],
    [0.6, 'closer higher if leav toe use wider'],
    [
      0.4,
      `
        arm bend block do easier is just level lighter lose march put same sit some stiff tak take tap version
        whenever wob
      `,
    ],
    [
      0.2,
      `
        0 a along alternativ an another any anybod anyon balanc bed bell bench bent bit bodyweight bottom box
        bridg by cant child comf copy corner cramp crat crim cut deadlift done down drag dumb dumbbell empt
        everybody fast feet fenc fine first fist floor gentler grand ground had hamstring hand happen heel hoodi
        impact jump keep kerb kickstand kinder kne knee lap let lever lie loop lot low mak make may metr might
        moan modif modification month more new newer nip one option or other paus peopl perfect pose pressur push
        quicker rack rail rais rang rather reach sake sat scal shallower sham shorten shuffl sid simp size skip
        slack slant smaller sore sos sphinx sprawl spring squat still stool straighter sure teach th they thigh
        time tip to toda toppl twist upright walk wall weight whil who whos wobbl wont yellow yet
      `,
    ],
    [
      -0.2,
      `
        about all away backsid bag becaus befor bel below belt bounc breath ceil chang check com dead doddl doe
        dont driv drop dull each ease easy end ever eye face fall find finger fingertip float from front full
        further get goe got grab halfwa handl hard has here home i into kneecap land left like look mat me middl
        next no nobody only open outsid pain past pick point quiet rib right roll room round seat second see
        sharp sho shoulder show shut sink slip slow snap so soft somebody spin spot squeez stand straight
        straighten swap switch tall tell than that theyr thi thre top tuck turn twent until us wait we were what
        when whol width will with youll
      `,
    ],
    [-0.4, 'as be elbow long lower of side till youv'],
  ],
} as const satisfies CueWeights
