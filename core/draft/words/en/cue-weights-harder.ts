/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind harder; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const HARDER_WEIGHTS = {
  bias: [[-0.8, 'yes']],
  class: [
    [0.8, 'more'],
    [0.2, 'attend far'],
    [-0.2, 'harm ill less not place take'],
    [-0.4, 'air wrong'],
  ],
  conditional: [[0.4, 'yes']],
  first: [
    [0.6, '<more> blu'],
    [
      0.4,
      `
        anybod anyon arm blue car feel go green hover option paus rock show straighten try want
      `,
    ],
    [
      0.2,
      `
        0 <do> <far> <less> add backward bor braver callum can count creep cros draw driv dumbbell feet fingertip
        for got grip heel hold horribl if jo jump kne last late leg level lift look mayb narrow now once or put
        quicker reach red rest see stag stop straight straighter stronger thos to too top turn twist use weld
        when
      `,
    ],
    [
      -0.2,
      `
        <attend> <harm> <kit> <move> <num> <pace> a and bend big br breath chest dont down easy elbow even find
        give head let lower make more no open other out pick pop pres push roll same shak shoulder sit smooth
        squeez stand stead step switch tap ther they theyr thi thumb up walk we wrist youll youv
      `,
    ],
    [-0.4, '<air> <chat> <not> <part> <place> i it its keep that the your'],
  ],
  given: [
    [
      0.2,
      `
        <chat> <more> <pace> a arm balanc breez comfortabl doddl fanc fly full got hold holida is joke left lift
        meaner noth of other put show solid strength ten that thes thi version
      `,
    ],
    [
      -0.2,
      `
        <do> <less> <part> <place> <wrong> at down from get go harder hip ill just last more no not one only take
        than thigh thin too up wrist you your
      `,
    ],
    [-0.4, '<swap>'],
  ],
  last: [
    [0.6, 'blu'],
    [0.4, 'bor doddl easy harder noth off red'],
    [
      0.2,
      `
        0 aeroplan all ankl archer b bigger blue bottl bottom callum chest clap clever closer cone cooler cruis
        delux dont doubl dull eight extra eye faster fly fold fresh further game green hand head hole horribl
        isnt jo joke jump keen keep kickstand kind kneecap last laugh laughabl leg lower meaner more nastier not
        on one paddl pain paus peopl plat quicker rest revers right shuffl side slant smil smug solid soul spar
        spicier stag straight strap tank thre tougher tray trickier two view well wobbl wors
      `,
    ],
    [
      -0.2,
      `
        again back better bit block ceil down flat floor heav hold is it knee level lift lighter like long mat
        much now over plank pleas posh rail reach round shoulder sid smaller smooth step stuck tall ten that
        thigh tight to turn want wob
      `,
    ],
    [-0.4, 'up'],
  ],
  length: [
    [0.2, '8-12'],
    [-0.2, '5-7 long'],
    [-0.6, '3-4'],
    [-1, '1-2'],
  ],
  pair: [
    [0.6, '<part>_off <swap>_of if_<chat> last_<num> show_off the_last'],
    [
      0.4,
      `
        <attend>_its <attend>_leg <attend>_that <attend>_youv <do>_a <do>_at <do>_the <do>_your <move>_the
        <not>_hand <num>_on <part>_at <part>_for <part>_if <part>_right <place>_if <place>_ther <take>_a a_<air>
        a_<more> a_breath a_doddl a_plat arm_<place> at_the bag_of can_<do> can_<settle> feel_<more> feet_<place>
        for_<more> for_a further_<place> hold_a if_its if_that if_ther if_youv it_meaner it_onto its_<not>
        its_noth knee_<place> leg_at lift_the make_it one_<part> rock_it singl_<part> the_<harm> the_heel to_make
        try_it want_it your_<harm> your_head your_toe
      `,
    ],
    [
      0.2,
      `
        0_<place> 0_and 0_band <attend>_0 <attend>_an <attend>_brav <attend>_each <attend>_good <attend>_ive
        <attend>_on <attend>_pain <attend>_past <attend>_ther <attend>_well <attend>_your <chat>_0 <chat>_a
        <chat>_after <chat>_and <chat>_backward <chat>_bend <chat>_down <chat>_drop <chat>_eight <chat>_flash
        <chat>_full <chat>_good <chat>_keen <chat>_laugh <chat>_like <chat>_made <chat>_might <chat>_not
        <chat>_one <chat>_out <chat>_pres <chat>_set <chat>_show <chat>_sign <chat>_smug <chat>_solid
        <chat>_stead <chat>_that <chat>_the <chat>_ther <chat>_to <chat>_two <chat>_use <do>_away <do>_behind
        <do>_both <do>_each <do>_further <do>_if <do>_one <do>_thos <do>_two <far>_at <far>_bag <far>_behind
        <far>_down <far>_further <far>_if <far>_off <far>_puls <far>_push <far>_squar <far>_the <far>_thre
        <far>_version <harm>_as <harm>_at <harm>_side <harm>_when <ill>_leg <kit>_a <kit>_back <kit>_between
        <kit>_further <kit>_if <kit>_on <kit>_out <kit>_to <kit>_when <less>_add <less>_b <less>_cheat
        <less>_easy <less>_kind <less>_left <more>_a <more>_and <more>_ankl <more>_back <more>_bell <more>_by
        <more>_folk <more>_go <more>_if <more>_in <more>_is <more>_it <more>_out <more>_peopl <more>_the
        <more>_thi <more>_thre <more>_version <move>_a <move>_at <move>_away <move>_back <move>_both
        <move>_further <move>_if <move>_it <move>_one <move>_thos <move>_your <not>_befor <not>_cheat
        <not>_enough <not>_for <not>_halfwa <not>_hold <not>_longer <not>_of <num>_and <num>_backward <num>_band
        <num>_bell <num>_finger <num>_foot <num>_leg <pace>_at <pace>_down <pace>_for <pace>_if <pace>_the
        <pace>_them <pace>_twic <part>_a <part>_acros <part>_away <part>_back <part>_befor <part>_cross
        <part>_dead <part>_faster <part>_float <part>_fold <part>_foot <part>_further <part>_lighter <part>_long
        <part>_longer <part>_on <part>_out <part>_slow <part>_together <part>_up <part>_weight <place>_at
        <place>_down <place>_foot <place>_in <place>_into <place>_leg <place>_on <place>_one <place>_past
        <place>_revers <place>_round <place>_slow <place>_straight <place>_to <place>_you <place>_your
        <settle>_backward <settle>_both <settle>_out <settle>_the <settle>_them <settle>_your <swap>_at
        <swap>_between <swap>_doubl <swap>_each <swap>_go <swap>_hand <swap>_hold <swap>_longer <swap>_on
        <swap>_peopl <swap>_tight <take>_0 <take>_from <take>_further <take>_right <take>_the <take>_together
        <take>_up <take>_your <wrong>_on a_<do> a_<kit> a_<less> a_<move> a_<num> a_<pace> a_<settle> a_band
        a_beat a_bigger a_box a_centimetr a_challeng a_count a_feather a_half a_holida a_joke a_jump a_medicin
        a_mum a_road a_second a_singl a_small a_step a_thumb a_tray a_tuck a_wobbl about_<take> about_feet
        abov_the acros_to add_<part> add_a admir_the advanc_peopl again_<not> again_<swap> air_with an_<far>
        an_aeroplan an_archer an_inch and_<far> and_admir and_again and_it and_jo and_paus and_pull and_right
        and_turn ankl_<attend> ankl_<kit> ankl_weight another_five anybod_find anybod_want anyon_who anyth_<more>
        anyth_left apart_the are_<more> are_past arm_<attend> arm_<more> arm_fold arm_if arm_over arm_up
        as_<chat> as_well at_<far> at_<less> at_all at_five at_half at_ninet at_your b_<do> back_<part> back_down
        back_foot back_if back_past backward_<attend> backward_<place> backward_if backward_on bad_side band_and
        band_not band_when beat_at been_do befor_<chat> befor_week bell_<more> bell_<place> bell_at bell_up
        between_your bit_<attend> bit_<do> bit_<less> bit_<move> bit_if bit_lower black_<kit> black_band
        blue_peopl bor_<chat> bor_you both_<part> both_leg both_palm braver_soul by_slow callum_and can_<chat>
        can_<move> can_go can_hold cant_<wrong> cant_cheat car_a car_your centimetr_off chok_<more> chok_<place>
        chok_up circl_at clos_your come_<part> come_<place> come_back count_them crank_it cros_the cros_your
        cross_<place> cross_a cross_if cross_on dead_straight do_doubl do_it dont_let doubl_<pace> doubl_time
        down_<chat> down_<do> down_at down_round down_ther down_to drag_the draw_a driv_the drop_<part> drop_back
        dumbbell_<attend> dumbbell_<place> dumbbell_if dumbbell_in each_<pace> each_time earn_its easy_<settle>
        empt_the feel_<chat> feel_<pace> feel_brav feel_good feet_<more> feet_further feet_off feet_on feet_right
        feet_together feet_up felt_<attend> felt_like fewer_<do> fewer_<kit> fewer_step find_it finger_<place>
        finger_off finger_on fingertip_<far> fingertip_only five_<place> five_on floor_whil fold_your folk_<swap>
        foot_<move> foot_<part> foot_back foot_float foot_hover foot_touch for_<attend> for_<place> for_extra
        for_it for_long for_more for_my for_red for_the for_thes for_up forward_<num> forward_two four_a
        from_<place> front_<part> front_foot full_version further_<part> further_back further_out gent_from
        get_horribl go_<pace> go_<swap> go_backward go_quicker good_<settle> good_foot got_<more> got_more
        got_that got_the halfwa_<place> halfwa_down hand_<less> hand_and hand_away hand_behind hand_in
        hand_lighter hand_off head_<pace> head_slow head_to heavier_bell heel_befor heel_off hold_the holida_for
        hot_paddl hover_it hover_the if_0 if_ive if_thi if_your in_<chat> in_revers in_the in_you initial_<place>
        initial_in instead_of is_<more> is_<place> is_a is_easy is_in is_to it_<attend> it_<far> it_<more>
        it_<move> it_<not> it_at it_felt it_further it_get it_if it_isnt it_longer it_lower it_nastier it_ther
        it_trickier it_upsid it_with it_without it_wors its_<more> its_<move> its_<pace> its_a its_bor its_dull
        its_fly its_further its_go its_keep ive_said jump_it just_abov keen_one kilo_<more> kilo_<place>
        kilo_more kne_go kne_higher kne_if knee_<more> knee_acros knee_up last_0 last_<take> last_one last_set
        last_two late_<more> late_stag later_<place> lean_away lean_on left_and leg_<attend> leg_<place> leg_a
        leg_go leg_longer leg_out leg_right leg_straight let_<chat> let_<settle> let_go let_the level_<num>
        level_thre lift_<num> lift_a lift_one lighter_<place> lighter_on like_<harm> like_<ill> like_<more>
        like_it like_noth like_pain littl_<attend> littl_<part> littl_circl littl_puls long_<far> long_<place>
        long_leg long_on long_past longer_leg look_the loop_<place> lower_<attend> lower_down lower_if made_of
        medicin_<kit> medicin_ball next_<more> no_<part> no_hand no_longer not_<far> not_<less> not_befor
        not_enough now_and of_0 of_<attend> of_<num> of_<part> of_<swap> of_each of_rice of_sugar of_two
        of_weight off_<swap> off_the off_your on_<num> on_one on_the on_your once_<chat> once_<num> once_your
        one_foot one_hand one_leg onto_your open_for opposit_<part> opposit_elbow opposit_hand option_b or_<do>
        or_<move> or_<settle> or_drag other_elbow other_has other_knee out_<attend> out_<far> out_from
        out_straight out_until over_to overhead_<attend> overhead_if past_your paus_for paus_it paus_twic
        plat_<place> plent_<chat> plent_<more> plent_left point_behind progression_is pull_it puls_at put_0
        put_the put_your quicker_<part> quicker_<take> quicker_feet reach_<far> reach_<more> reach_the
        right_<place> right_out rock_<pace> rock_gent round_two rucksack_<chat> rucksack_good same_split
        second_<attend> second_<place> second_down second_in see_<attend> see_if shift_<place> shift_over
        shoe_between shoulder_if side_to sign_off sign_someth singl_hand slow_the so_the some_<more>
        somebody_smil sore_leg sort_<chat> sort_you spik_<place> split_<attend> split_as squar_with squeez_a
        squeez_it start_from stay_down step_<part> step_back step_it stop_<chat> stop_<far> stop_for stop_halfwa
        straight_leg straighten_both straighten_thos straighter_<part> straighter_leg strap_a stronger_<chat>
        stronger_folk swap_at swap_each take_it taller_<do> taller_<kit> taller_<move> taller_step ten_feel
        than_<num> than_four that_<move> that_an that_is that_laughabl that_leg that_noth that_the that_was
        thatll_sort the_<chat> the_<far> the_<ill> the_<less> the_<part> the_<settle> the_<take> the_air the_ankl
        the_arm the_balanc the_black the_bottom the_cone the_cooler the_delux the_dumbbell the_finger the_full
        the_heavier the_hole the_operat the_opposit the_other the_rucksack the_second the_show the_slant the_spar
        the_stand the_taller the_tank the_tray the_trick the_view the_wait the_wall the_water the_wors them_in
        ther_for thi_<not> thi_<place> thi_by third_month thos_who thre_for thumb_<place> thumb_under thumb_width
        tight_between time_to to_0 to_<far> to_<kit> to_<more> to_<move> to_<part> to_<swap> to_graft to_progres
        to_side to_step to_work toe_<attend> toe_as toe_at together_<attend> together_if too_<less> too_<pace>
        too_easy too_kind top_<part> top_for top_hip top_if top_leg towel_tight turn_the turn_your two_<kit>
        two_<place> two_<swap> two_backward two_bell two_finger two_length two_on under_<attend> under_if
        until_your up_<place> up_the ups_<attend> use_a use_two version_is wait_<less> wait_too walk_in
        want_<more> want_more water_<swap> water_bottl way_if way_through week_<num> week_eight weight_of
        weight_on weld_<place> weld_down when_that when_thi whil_<chat> whil_you who_are who_bor whol_<pace>
        whol_time wider_on window_and with_<num> with_a with_one with_thi without_a wors_your you_<do> you_<more>
        you_<num> you_dont you_drop you_fanc you_keen you_like you_might you_out you_pres you_show you_walk
        you_want your_<attend> your_<far> your_<not> your_<num> your_a your_after your_ankl your_arm your_bend
        your_chest your_cross your_ear your_even your_eye your_feel your_flash your_full your_good your_hand
        your_initial your_laugh your_made your_not your_one your_show your_sign your_smug your_solid your_stead
        your_that your_thumb your_up
      `,
    ],
    [
      -0.2,
      `
        <attend>_arm <attend>_at <attend>_if <attend>_it <attend>_the <attend>_to <chat>_are <chat>_brav
        <chat>_do <chat>_get <chat>_it <chat>_need <chat>_on <chat>_posh <chat>_push <chat>_reach <chat>_read
        <chat>_stuck <chat>_wobbl <do>_right <do>_them <far>_as <far>_you <harm>_on <kit>_and <kit>_off
        <kit>_under <kit>_with <less>_strong <less>_the <more>_feel <more>_like <more>_more <more>_one <more>_to
        <more>_weight <move>_them <not>_at <not>_it <not>_reach <num>_at <num>_knee <num>_more <num>_step
        <num>_to <pace>_and <pace>_is <part>_down <part>_is <part>_level <part>_lift <part>_more <part>_stay
        <part>_the <part>_to <place>_arm <place>_between <place>_of <settle>_and <settle>_on <swap>_not
        <swap>_one <swap>_under <swap>_weight <swap>_your <take>_down <take>_flat <take>_for <take>_if <take>_in
        a_<harm> a_<part> a_<place> a_bit a_few a_full a_hand a_long a_lot a_minut a_time about_<num> about_a
        all_the and_<attend> and_<take> and_lift and_the arm_<far> arm_at as_<attend> as_<far> as_if at_0 at_a
        away_from back_<more> back_of back_off back_up bag_<place> been_<chat> behind_<chat> behind_you
        bench_<attend> bench_if bend_the bit_<num> bit_<place> bit_further bit_one both_hand bottom_<part>
        breath_<place> by_the chest_if com_<place> dead_<do> do_<not> do_<num> do_not dont_<do> dont_<move>
        down_<place> each_<part> ease_off end_<place> even_<attend> even_if eye_<place> feet_<attend> feet_down
        feet_if find_a first_<num> foot_in for_<far> for_<harm> for_balanc for_thi for_two for_your from_the
        front_of got_<num> got_a hand_on hand_to hand_up head_<place> hip_<place> hold_it ill_<settle> ill_take
        in_<num> in_one is_<attend> is_<num> is_the it_<chat> it_<ill> it_<less> it_<pace> it_for it_in it_is
        it_out its_<less> its_the just_<do> just_<swap> keep_your kne_<move> left_<part> leg_off lift_it
        like_<chat> like_your look_at lower_<part> minut_<attend> minut_if more_<attend> need_to not_a of_a
        of_the of_your off_it on_<attend> on_if on_to once_<more> once_more one_<more> one_<place> one_for
        one_knee one_more open_the or_0 or_<num> other_<num> other_foot other_leg other_one over_the push_the
        right_<part> roll_<place> shoulder_<place> sit_<place> sit_down squeez_the squeez_your stag_one stay_on
        straight_<place> take_your that_a that_better the_0 the_<attend> the_<do> the_<move> the_<place> the_ball
        the_bar the_ceil the_first the_foot the_ground the_hip the_left the_leg the_mat the_seat the_shoulder
        the_side thi_<num> thi_one through_the till_your to_<do> to_<settle> to_a to_your toe_<place>
        too_<attend> too_strong tuck_your two_hand under_your up_<attend> up_your use_your wait_for want_<num>
        when_your wher_<chat> whol_<part> with_the you_<far> you_<settle> you_<take> you_<wrong> you_are you_do
        you_feel you_get you_need you_reach your_<air> your_<chat> your_<kit> your_<less> your_<move>
        your_<settle> your_<take> your_<wrong> your_brav your_chin your_fanc your_grip your_heel your_hip
        your_knee your_palm your_posh your_right your_stuck your_thigh your_wrist youv_a
      `,
    ],
    [-0.4, '<part>_are for_<num> your_back your_leg'],
  ],
  phrase: [
    [1.2, 'harder-sure'],
    [0.4, 'harder-likely setup-likely'],
    [
      0.2,
      `
        easier-hint easier-likely equipment-likely equipment-sure execution-sure harder-hint setup-sure
      `,
    ],
    [
      -0.2,
      `
        execution-likely fault-hint fault-sure focus-likely range-sure tempo-hint tempo-likely tempo-sure
      `,
    ],
    [
      -0.4,
      `
        breathing-sure caution-sure chat dose_only easier-sure fault-likely focus-hint range-hint
      `,
    ],
    [-0.6, 'empty_clauses focus-sure'],
  ],
  start: [
    [0.6, 'turn_your_head'],
    [0.4, '<more>_<chat> rock_it show_off'],
    [
      0.2,
      `
        0_out 0_second_down <attend>_<chat> <attend>_<more> <attend>_<part> <chat>_<num> <chat>_<place>
        <do>_<far> <do>_<num> <far>_<num> <kit>_<place> <less>_<less> <less>_<more> <less>_<pace> <more>_<num>
        <move>_<move> <not>_<chat> <not>_<far> <not>_<part> <num>_<part> <num>_<swap> <part>_<more>
        <part>_<wrong> <place>_<num> <place>_<part> <settle>_<part> a_plat a_plat_on about_feet
        about_feet_together anybod_find anybod_find_it anybod_want anyon_who anyon_who_bor arm_and_leg arm_back
        arm_back_past arm_fold arm_long_past arm_out_wide arm_up as_if_ther back_foot bag_of blue_peopl
        both_feet_back br_your_hand braver_soul callum_and callum_and_jo car_your car_your_water come_back
        come_back_down count_them cros_the cros_your_arm do_it do_it_from dont_let_the down_at down_at_your
        draw_a driv_the driv_the_other dumbbell_in empt_the empt_the_tank feet_off feet_on_the feet_together
        fingertip_only fold_your_arm for_the for_the_full forward_two forward_two_backward get_the_heel
        go_backward go_for_the go_to grab_a_medicin grip_it_lower hand_behind hand_behind_your hand_lighter
        hand_lighter_on hand_off heel_off heel_off_the heel_up heel_up_on hold_a hold_a_plat hold_the
        hold_the_bell hold_the_dumbbell hold_the_towel hook_your hook_your_thumb hover_it hover_the if_0_band
        if_its_a if_its_fly if_its_noth if_that if_ther if_thi if_thi_is if_your_a if_your_bend if_your_that
        if_youv if_youv_got it_get it_get_horribl its_further jump_it keep_the_same kne_go kne_go_quicker
        kne_up_to knee_acros knee_acros_to knee_to knee_to_the last_0 last_0_metr late_stag left_and
        left_and_right leg_straight let_go let_go_of let_the level_0 level_thre lift_a lift_the lift_the_back
        lift_the_toe lift_your lift_your_toe littl_circl littl_circl_at littl_puls littl_puls_at long_leg
        longer_leg look_the look_the_other look_up_under lose_the_tray lower_with_one no_hand no_more_than
        not_befor not_befor_week not_for not_for_long once_your one_finger one_foot one_foot_float one_foot_off
        one_leg_at only_if only_if_ive option_b or_cros or_cros_your paus_for paus_for_a paus_twic pull_it_down
        push_with push_with_two put_the put_the_front put_your quicker_feet reach_the reach_the_arm rock_gent
        rock_gent_from round_two round_two_length see_if see_if_you send_one_arm shift_over shift_over_to side_to
        side_to_side singl_hand slid_one_foot slow_the slow_the_way some_of_you somebody_smil squeez_a
        squeez_a_shoe stag_two stand_on_it stay_down stay_down_ther step_back stop_for stop_for_a stop_halfwa
        stop_halfwa_down straight_leg straighten_both straighten_thos straighten_thos_leg straighter_leg
        stronger_folk swap_at swap_each take_a_bigger take_it take_one_hand that_an that_an_archer that_the_delux
        that_the_trick thatll_sort thatll_sort_you the_big the_big_one the_rucksack the_rucksack_good the_sore
        the_sore_leg the_whol_time thos_who_are thre_for thre_for_up to_progres to_step to_step_it too_easy
        top_arm top_leg top_leg_up try_it tuck_the_chin turn_out turn_out_until turn_the turn_your up_the wait_a
        wait_a_beat want_it want_more weight_on_the weld_down when_you with_both with_both_feet you_can you_cant
        you_cant_cheat you_keen you_keen_one you_might you_show you_show_off your_up your_up_to
      `,
    ],
    [
      -0.2,
      `
        <chat>_<far> <chat>_<part> <do>_<attend> <far>_<part> <less>_<part> <more>_<part> <more>_<place>
        <move>_<attend> <move>_<chat> <not>_<do> <num>_<more> <part>_<chat> <part>_<do> <part>_<far>
        <part>_<move> <place>_<place> <settle>_<attend> <settle>_<more> <settle>_<place> <swap>_<attend>
        <swap>_<place> bend_the both_hand br_it hand_on hand_on_the hold_it_for hold_the_rail if_you if_youv_a
        its_a let_it lift_it lift_the_other lift_the_top lower_it one_arm one_foot_forward one_hand_on one_more
        put_it squeez_your stag_one take_a
      `,
    ],
  ],
  word: [
    [0.8, 'bor'],
    [0.6, 'add blu feel for further hover if last leg noth paus show try'],
    [
      0.4,
      `
        0 ankl arm backward doddl doubl dumbbell feet go hand harder longer meaner off option red singl
        straighten two who without wors
      `,
    ],
    [
      0.2,
      `
        abov acros admir advanc aeroplan an anybod anyon archer at b bag balanc band beat bell bigger black blue
        braver breez callum can car centimetr challeng chok clap clever closer comfortabl confident cooler crank
        creep cros cross cruis delux draw driv dull each earn easy extra eye fanc faster finger fingertip flash
        float fly fold folk foot fresh full game good green halfwa head heavier heel hold hole holida horribl
        initial instead isnt it ive jo joke jump keen kickstand kilo kind l late laugh laughabl lift load lower
        master mayb medicin might more narrow nastier nothing on one onto operat overhead pain past plat progres
        progression puls put quicker rest revers rice rock rucksack second side sign slant slight slow smil smug
        solid some sort soul spar spic spicier squar stag stick straight straighter strap strength stronger take
        tank thes thos thre thumb to toe together too top tougher tray trick trickier turn twist use version view
        want water weld well when whil
      `,
    ],
    [
      -0.2,
      `
        allow and any anyth around as ask away back ball bar be becaus bel bent better big bit blad block bon
        bone book breath bug bum ceil chair chin com curl cushion do door ease elbow end even ever face fall fast
        few fiv flat floor follow forearm fort from get give gone grumbl had hair hard have hear heav help here
        high ill in insid into is itll keep knee leav less lighter like littl lock lot low mat me minut miss mov
        much muddl need next nice no nobod not of only open or peel pick plank pleas point posh position pressur
        pull push quick quiet rail read ring roll run same say seat shak short shorten should sid sideway sing
        six skip smaller smooth so spin spot spread squat squeez stand start stiff still stretch stuck switch tak
        tap ten than that then they theyr thin thirt till tip toda toward twent underneath us waist walk watch we
        wee were wet what will wob wrist youll your
      `,
    ],
    [
      -0.4,
      `
        about all are bend dont first goe i its just shoulder sit stay tall thigh under up wher
      `,
    ],
    [-0.6, 'hip'],
  ],
} as const satisfies CueWeights
