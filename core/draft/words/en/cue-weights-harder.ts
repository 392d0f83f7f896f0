/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind harder; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const HARDER_WEIGHTS = {
  bias: [[-0.8, 'yes']],
  class: [
    [0.8, 'more'],
    [0.2, 'attend far'],
    [-0.2, 'harm ill less not place take'],
    [-0.4, 'wrong'],
    [-0.6, 'air'],
  ],
  conditional: [[0.4, 'yes']],
  first: [
    [0.6, 'blu feel go want'],
    [
      0.4,
      `
        <more> anybod anyon arm blue car for green hover option paus rock show straighten thos try
      `,
    ],
    [
      0.2,
      `
        0 <do> <less> another bor braver callum come creep cros draw driv dumbbell feet fingertip float harder
        heel hold horribl if instead jo jump kne last late leg level lift longer look mayb narrow now once or put
        quicker reach red rest say see sheila should stag stop straight straighter stronger to too top turn twist
        weld when yall
      `,
    ],
    [
      -0.2,
      `
        <attend> <harm> <kit> <move> <pace> a all as band bend big br breath chest dont down easy elbow even eye
        good head it let like lower make more no nobod one open opposit other out pick pop pres push roll same
        shak shoulder sit skip smooth squeez stand step switch ther they thi thumb tuck up walk we wrist youll
      `,
    ],
    [-0.4, '<air> <chat> <not> <num> <part> <place> i its keep that the your'],
  ],
  given: [
    [0.4, 'doddl hold'],
    [
      0.2,
      `
        <attend> <chat> <more> <pace> a arm balanc bor breez challeng child do extra eye fanc flat flop fly foot
        full got has holida in is joke lift light look meaner noth of other put scar second shut solid strength
        ten that thes thi twent version who without
      `,
    ],
    [
      -0.2,
      `
        <do> <far> <less> <part> <place> <swap> <wrong> all at bit dont down fast feet from go harder hip ill
        just last no not right side take than thigh thin up wrist your
      `,
    ],
  ],
  last: [
    [0.6, 'blu'],
    [0.4, 'bor doddl easy eye harder noth off red side thre'],
    [
      0.2,
      `
        0 aeroplan ankl archer backward bench bigger blue bottl box breath callum challeng chest clever cone
        cooler cruis delux dont dull end extra faster feather fly fold forward fresh from fun further game green
        hand hole holida horribl isnt jo joke jump keen kickstand kind kneecap last laugh laughabl leg light
        lower meaner more nastier not on one only overhead pain paus peopl plat quicker rest revers right sheila
        shuffl slant smil smug solid soul spar straight strap tank them through together tougher tray trickier
        troubl view well wobbl wors
      `,
    ],
    [
      -0.2,
      `
        about again back better ceil feet first flat floor go heav help here in is it knee level lift lighter
        like long much now over plank pleas posh rail reach ring round shoulder sid smaller smooth step stop
        stuck tall ten that thigh tight to walk wall want wob
      `,
    ],
    [-0.4, 'up'],
  ],
  length: [
    [-0.2, '5-7 long'],
    [-0.6, '3-4'],
    [-1, '1-2'],
  ],
  pair: [
    [0.8, 'show_off'],
    [0.6, '<part>_off <swap>_of a_doddl arm_<place> if_<chat>'],
    [
      0.4,
      `
        <attend>_its <attend>_leg <attend>_that <attend>_youv <do>_a <do>_at <do>_the <do>_your <more>_is
        <move>_the <num>_on <part>_at <part>_for <part>_if <part>_on <part>_overhead <part>_right <part>_up
        <place>_foot <place>_if <place>_ther <take>_a a_<air> a_<more> a_breath a_holida a_plat add_a at_the
        bag_of can_<settle> do_it feet_<place> for_<more> for_a for_more hold_a if_its if_that if_ther if_youv
        it_meaner it_onto its_<not> its_noth keen_one knee_<place> last_<num> leg_<attend> leg_at let_go lift_the
        make_it not_<less> one_<part> rock_it side_to singl_<part> the_last the_opposit the_other thos_who
        to_make to_side try_it your_<harm> your_head
      `,
    ],
    [
      0.2,
      `
        0_<place> 0_and <attend>_0 <attend>_an <attend>_brav <attend>_each <attend>_ive <attend>_like <attend>_on
        <attend>_overhead <attend>_pain <attend>_past <attend>_smug <attend>_stand <attend>_ther <attend>_twent
        <attend>_well <attend>_youd <attend>_your <chat>_0 <chat>_a <chat>_after <chat>_ahead <chat>_and
        <chat>_backward <chat>_balanc <chat>_bend <chat>_could <chat>_down <chat>_drop <chat>_eight <chat>_flash
        <chat>_foot <chat>_from <chat>_full <chat>_good <chat>_hang <chat>_keen <chat>_laugh <chat>_level
        <chat>_like <chat>_made <chat>_might <chat>_not <chat>_one <chat>_out <chat>_pres <chat>_set <chat>_show
        <chat>_sign <chat>_smil <chat>_smug <chat>_solid <chat>_stead <chat>_that <chat>_ther <chat>_two
        <chat>_use <chat>_walk <do>_away <do>_both <do>_each <do>_further <do>_if <do>_jump <do>_more <do>_on
        <do>_one <do>_that <do>_thos <do>_together <do>_two <far>_at <far>_bag <far>_behind <far>_down
        <far>_further <far>_if <far>_off <far>_squar <far>_stand <far>_the <far>_thre <far>_version <harm>_allow
        <harm>_as <harm>_if <harm>_side <harm>_when <ill>_a <ill>_leg <kit>_a <kit>_back <kit>_between <kit>_if
        <kit>_on <kit>_out <kit>_overhead <kit>_to <kit>_version <kit>_when <kit>_your <less>_add <less>_b
        <less>_cheat <less>_comf <less>_easy <less>_enough <less>_kind <less>_left <less>_light <more>_a
        <more>_and <more>_bell <more>_by <more>_folk <more>_forward <more>_if <more>_in <more>_it <more>_left
        <more>_option <more>_out <more>_pair <more>_peopl <more>_put <more>_that <more>_the <more>_thi
        <more>_thre <more>_two <more>_version <more>_without <move>_a <move>_away <move>_back <move>_both
        <move>_down <move>_further <move>_if <move>_it <move>_jump <move>_more <move>_one <move>_that <move>_thos
        <move>_together <move>_your <not>_befor <not>_cheat <not>_enough <not>_for <not>_halfwa <not>_hand
        <not>_hard <not>_longer <not>_of <not>_set <not>_us <not>_wobbl <num>_and <num>_backward <num>_band
        <num>_bell <num>_eye <num>_feel <num>_finger <num>_foot <num>_leg <pace>_at <pace>_down <pace>_enough
        <pace>_if <pace>_the <pace>_them <pace>_twic <part>_acros <part>_away <part>_back <part>_befor
        <part>_cross <part>_dead <part>_faster <part>_float <part>_fold <part>_foot <part>_further <part>_lighter
        <part>_long <part>_longer <part>_lower <part>_only <part>_out <part>_slow <part>_ther <part>_together
        <part>_weight <place>_at <place>_closer <place>_down <place>_in <place>_leg <place>_past <place>_revers
        <place>_round <place>_slow <place>_straight <place>_thre <place>_to <place>_without <place>_your
        <settle>_ahead <settle>_backward <settle>_both <settle>_from <settle>_jump <settle>_of <settle>_out
        <settle>_the <settle>_to <settle>_your <swap>_band <swap>_between <swap>_do <swap>_doubl <swap>_each
        <swap>_go <swap>_hand <swap>_hold <swap>_it <swap>_longer <swap>_more <swap>_on <swap>_pair <swap>_peopl
        <swap>_start <swap>_str <swap>_us <take>_another <take>_from <take>_further <take>_together <take>_up
        <wrong>_on a_<do> a_<far> a_<kit> a_<less> a_<move> a_<num> a_<pace> a_<settle> a_<wrong> a_band a_beat
        a_bigger a_box a_centimetr a_challeng a_feather a_flat a_half a_joke a_jump a_medicin a_month a_mum
        a_road a_second a_singl a_step a_thumb a_tray a_tuck a_wobbl about_<take> about_feet abov_the acros_to
        add_<part> admir_the advanc_peopl after_<num> after_thre again_<not> again_<swap> ahead_and
        alphabet_backward an_<far> an_aeroplan an_archer an_inch and_<far> and_admir and_again and_it and_jo
        and_kick and_only and_paus and_pull and_right and_tell and_turn and_well ankl_<attend> ankl_<kit>
        ankl_weight another_five another_layer another_quarter anybod_find anybod_want anyon_<attend>
        anyth_<more> anyth_left apart_the are_<more> arent_<wrong> arm_<more> arm_fold arm_if arm_over
        arm_overhead arm_up as_<chat> as_well at_<far> at_<less> at_five at_half at_ninet at_your b_<do>
        back_<part> back_down back_foot back_if back_in back_leg back_past backward_<attend> backward_<place>
        backward_if backward_on backward_whil bad_side band_<place> band_and band_over beat_at been_do
        befor_<chat> befor_week bell_<more> bell_<place> bell_at bell_to bell_up between_your bit_<attend>
        bit_<do> bit_<less> bit_<move> bit_for bit_if bit_lower bit_more black_<kit> black_band blue_peopl
        bor_<chat> bor_shut bor_you both_<part> both_kne both_leg both_palm box_so braver_soul by_slow callum_and
        can_<chat> can_<do> can_<move> can_do can_go can_hold can_start can_str cant_<wrong> cant_cheat car_a
        car_your centimetr_off chok_<more> chok_<place> chok_up circl_at clap_at clos_your closer_<place>
        closer_together come_<part> come_and come_back could_<settle> could_have count_them crank_it cros_your
        cross_<place> cross_if cross_on dead_straight dial_another do_doubl dont_let down_<do> down_at down_round
        down_ther down_to drag_the draw_a driv_the drop_<part> drop_back dumbbell_<attend> dumbbell_<place>
        dumbbell_if dumbbell_in each_<do> each_<pace> each_time earn_its earn_your enjo_suffer enough_<part>
        enough_arm enough_for feel_<attend> feel_<chat> feel_<more> feel_<pace> feel_brav feel_good feel_smug
        feet_<more> feet_further feet_off feet_on feet_right feet_together feet_up felt_<attend> felt_like
        fewer_<do> fewer_<kit> fewer_step find_it finger_<place> finger_off finger_on fingertip_<far>
        fingertip_only five_<place> five_on floor_whil fly_<more> fly_up fold_your folk_<swap> foot_<more>
        foot_<part> foot_back foot_float foot_hover foot_is foot_touch foot_up for_<attend> for_<place> for_extra
        for_it for_long for_my for_red for_the for_thes for_thos for_up forward_<num> forward_two four_a
        from_<place> from_here from_side front_<part> front_foot full_version further_<part> further_<place>
        further_back further_out get_horribl give_the go_<pace> go_<swap> go_ahead go_backward go_from go_of
        go_out go_quicker go_to good_<chat> good_<settle> good_foot got_<more> got_that got_the halfwa_<place>
        halfwa_down hand_<less> hand_away hand_behind hand_in hand_lighter hand_off hang_from hard_<far>
        hard_<less> hard_enough have_the head_<pace> head_slow head_to heavier_bell heavier_pair heel_befor
        heel_off heel_to here_same hold_the hook_your hot_paddl hover_it hover_the if_0 if_<num> if_ive if_stand
        if_youd if_your in_a in_closer in_revers in_the in_you initial_<place> initial_in instead_of is_<more>
        is_<place> is_a is_easy is_for is_in is_to it_<attend> it_<far> it_<more> it_<move> it_<not> it_<swap>
        it_<take> it_at it_bit it_felt it_further it_get it_isnt it_longer it_lower it_nastier it_on it_trickier
        it_upsid it_with it_without it_wors its_<more> its_<move> its_<pace> its_a its_bor its_dull its_fly
        its_further its_go its_keep ive_said jump_it just_abov kick_<more> kick_<place> kick_up kilo_<more>
        kilo_<place> kilo_more kilo_on kne_<attend> kne_go kne_higher kne_if knee_<more> knee_acros knee_up
        last_0 last_<settle> last_<take> last_one last_set late_<more> late_stag later_<place> lean_on left_and
        leg_<less> leg_<num> leg_<place> leg_go leg_longer leg_lower leg_one leg_right leg_straight let_<chat>
        let_<settle> let_the level_<num> level_thre lift_<num> lift_a lift_one lighter_<place> lighter_on
        like_<harm> like_<ill> like_<more> like_it like_noth like_pain littl_<attend> littl_<part> littl_circl
        littl_puls long_<far> long_<place> long_leg long_on long_past longer_<less> longer_leg look_for
        loop_<place> loop_down lot_<not> lot_<swap> lower_<attend> lower_and lower_down lower_if made_of may_<do>
        medicin_<kit> medicin_ball might_try month_and move_the next_<more> no_<attend> no_<part> no_<swap>
        no_hand no_longer not_<far> not_<pace> not_befor not_enough not_hard now_and of_0 of_<attend> of_<num>
        of_<part> of_<swap> of_each of_rice of_sugar of_two of_weight off_the off_your on_one on_the on_you
        on_your once_<chat> once_that once_your one_eye one_finger one_foot one_hand one_leg onto_the onto_your
        open_for opposit_<part> opposit_elbow opposit_hand opposit_shoulder option_b or_<do> or_<move>
        or_<settle> or_drag other_<part> other_arm other_elbow other_knee out_<attend> out_<far> out_from
        out_straight out_until over_to overhead_<attend> overhead_and overhead_if past_your paus_it paus_twic
        plat_<place> plent_<chat> plent_<more> plent_left point_behind pres_<place> pres_together progression_is
        pull_it puls_at push_<more> push_up put_0 put_the quarter_<do> quarter_<move> quarter_turn quicker_<part>
        quicker_<take> quicker_feet reach_<far> reach_the right_<place> right_out ring_out round_two
        rucksack_<chat> rucksack_good same_<do> same_<move> same_lung same_split say_the scar_<chat> scar_you
        second_<attend> second_<place> second_down second_in see_<attend> see_if shift_<place> shift_over
        shoe_between should_<chat> should_it should_you shoulder_if shut_your sign_off sign_someth singl_hand
        singl_leg slow_it slow_the so_<chat> so_the some_<more> somebody_smil sore_leg sort_<chat> sort_you
        spik_<place> split_<attend> split_as squar_with squat_and squeez_a squeez_it stag_two stand_<place>
        stand_on start_from stay_down step_<part> step_back step_it stop_<chat> stop_<far> stop_for stop_halfwa
        str_the straight_leg straighten_both straighten_that straighten_thos straighter_<part> straighter_leg
        strap_a stronger_<chat> stronger_folk suffer_<swap> suffer_can swap_at swap_each take_it take_one tell_me
        ten_feel ten_kilo than_<num> than_four that_<not> that_<settle> that_an that_bor that_is that_laughabl
        that_noth that_was that_without thatll_sort the_<harm> the_<ill> the_<more> the_<part> the_<settle>
        the_<take> the_air the_alphabet the_ankl the_arm the_bench the_black the_bottom the_brav the_cone
        the_cooler the_delux the_dial the_dumbbell the_far the_finger the_full the_heavier the_heel the_hole
        the_keen the_lot the_nast the_operat the_pres the_push the_rucksack the_second the_show the_singl
        the_slant the_spar the_squat the_tank the_tray the_trick the_view the_wait the_wall the_weight the_wors
        them_in ther_for thi_<place> thi_by thi_get thicker_<kit> thicker_band thre_for thumb_under tight_bit
        time_to to_0 to_<far> to_<kit> to_<more> to_<move> to_<num> to_<swap> to_feel to_reach to_step to_work
        toe_<attend> toe_at toe_on together_<attend> together_if too_<more> too_<pace> too_comf too_easy too_kind
        too_light top_<part> top_for top_hip top_if top_leg touch_the tuck_<do> tuck_<move> tuck_jump turn_the
        turn_your two_<kit> two_<part> two_<place> two_<swap> two_backward two_bell two_finger two_length two_on
        under_<attend> under_if up_<not> up_<place> up_<swap> up_for up_the up_without ups_<attend> upsid_<place>
        upsid_down use_<num> use_two version_is wait_<less> wait_too walk_in wall_<chat> wall_version wall_your
        want_<more> want_it want_more want_to water_<swap> water_bottl way_<place> way_if way_through week_<num>
        week_eight week_of weight_on weight_overhead weld_<place> weld_down well_<swap> well_do when_that
        when_thi when_you wher_would whil_<chat> whil_you who_<attend> who_are who_arent who_bor who_came
        who_enjo whol_<pace> whol_time wider_on window_and with_<num> with_a with_one with_thi without_<swap>
        without_a without_the without_us wobbl_<swap> wors_your would_<chat> would_you yall_fun you_<do>
        you_<more> you_<not> you_<num> you_<swap> you_balanc you_could you_drop you_fanc you_go you_keen you_like
        you_might you_no you_out you_pres you_smil you_walk you_want youd_<attend> youd_like your_<attend>
        your_<not> your_a your_after your_ankl your_balanc your_bend your_biscuit your_chest your_ear your_even
        your_eye your_feel your_flash your_full your_good your_hand your_hang your_initial your_laugh your_made
        your_not your_one your_sign your_smug your_solid your_stead your_that your_thumb your_toe your_up
      `,
    ],
    [
      -0.2,
      `
        <attend>_arm <attend>_at <attend>_it <attend>_the <attend>_to <chat>_are <chat>_brav <chat>_get <chat>_it
        <chat>_need <chat>_on <chat>_posh <chat>_push <chat>_reach <chat>_read <chat>_stuck <chat>_wob
        <chat>_wobbl <chat>_you <chat>_your <do>_for <do>_from <do>_off <do>_right <do>_them <do>_you <far>_as
        <far>_up <far>_you <kit>_and <kit>_arm <kit>_behind <kit>_off <kit>_under <kit>_with <less>_strong
        <less>_the <more>_feel <more>_like <more>_more <more>_one <more>_ther <more>_to <move>_from <move>_them
        <move>_you <not>_at <not>_it <not>_reach <num>_at <num>_knee <num>_more <num>_step <num>_to <pace>_and
        <pace>_is <part>_bent <part>_do <part>_has <part>_have <part>_level <part>_lift <part>_stay <part>_that
        <part>_the <part>_to <place>_and <place>_arm <place>_between <place>_each <place>_of <place>_that
        <place>_toward <settle>_at <settle>_on <settle>_right <swap>_not <swap>_weight <swap>_your <take>_down
        <take>_flat <take>_for <take>_if <take>_in <wrong>_it a_<attend> a_<harm> a_<part> a_bit a_few a_fraction
        a_hand a_long a_lot a_minut a_time about_<num> about_a all_the and_<attend> and_<less> and_<not>
        and_<settle> and_<take> and_just and_lift and_your arm_<settle> arm_at as_<attend> as_<far> as_if at_a
        away_from back_<more> back_of back_up bag_<place> been_<chat> befor_the behind_<chat> behind_you
        bench_<attend> bench_if bend_the bit_<num> bit_further bit_one both_hand breath_<place> by_the cant_<do>
        cant_<move> chest_<chat> chest_if com_<place> dead_<do> deeper_<attend> deeper_if do_<not> do_<num>
        do_not dont_<do> dont_<move> down_<place> each_<part> ease_off easy_<swap> end_<place> even_<attend>
        even_if ever_<pace> feel_it feet_<attend> feet_down feet_if foot_in for_balanc for_thi for_your from_the
        front_of go_and got_<num> got_a hand_<more> hand_on hand_to hand_up have_a have_to head_<place>
        hip_<place> hold_it i_want if_the ill_<settle> ill_take in_<num> in_one is_<attend> is_the it_<chat>
        it_<ill> it_<less> it_<pace> it_for it_goe it_in it_is it_out its_the just_<do> just_<move> just_<swap>
        keep_it keep_your kne_<do> kne_<move> knee_<attend> left_<part> leg_off lift_it like_<chat> littl_<kit>
        look_at lower_<part> make_the minut_<attend> minut_if more_<attend> need_to not_a of_<chat> of_a of_your
        off_a off_it on_<attend> on_if on_to on_two once_<more> once_more one_<more> one_<place> one_for one_knee
        one_more open_the opposit_arm or_0 or_<num> other_<num> other_foot other_leg other_one over_the pick_a
        push_off push_the rest_<place> right_<part> roll_<place> shoulder_<place> sit_<place> sit_down skip_the
        squeez_the squeez_your stag_one stay_on straight_<place> strong_<part> swap_the take_your that_<far>
        that_a that_better the_0 the_<attend> the_<pace> the_<place> the_ball the_band the_bar the_ceil the_chest
        the_first the_floor the_ground the_hip the_left the_leg the_mat the_right the_seat the_shoulder the_side
        thi_<num> thi_one through_the till_your to_<do> to_<settle> to_a to_look to_your too_strong tuck_your
        under_the under_your up_<attend> up_<chat> up_a up_to up_your use_your wait_for way_<more> way_up
        weight_in what_<chat> wher_<chat> wher_you whol_<part> with_the you_<far> you_<settle> you_<take>
        you_<wrong> you_are you_get you_need your_<air> your_<do> your_<ill> your_<kit> your_<less> your_<move>
        your_<place> your_<settle> your_<take> your_<wrong> your_brav your_chin your_fanc your_grip your_heel
        your_hip your_knee your_palm your_posh your_stuck your_thigh your_wob your_wrist youv_a youv_gone
      `,
    ],
    [-0.4, '<attend>_if <part>_are for_<num> your_back your_leg'],
  ],
  phrase: [
    [1.2, 'harder-sure'],
    [0.4, 'harder-likely'],
    [
      0.2,
      `
        easier-hint easier-likely equipment-likely execution-sure harder-hint setup-likely setup-sure
      `,
    ],
    [
      -0.2,
      `
        caution-hint caution-likely easier-sure execution-likely fault-hint fault-likely fault-sure focus-likely
        range-sure tempo-hint tempo-likely tempo-sure
      `,
    ],
    [-0.4, 'breathing-sure caution-sure chat dose_only focus-hint range-hint'],
    [-0.6, 'empty_clauses focus-sure'],
  ],
  start: [
    [0.6, 'show_off turn_your_head'],
    [0.4, '<less>_<more> <more>_<chat> hold_a rock_it too_easy up_the'],
    [
      0.2,
      `
        0_leg 0_out 0_second_down <attend>_<chat> <attend>_<more> <attend>_<part> <chat>_<more> <chat>_<num>
        <chat>_<place> <do>_<far> <do>_<num> <far>_<num> <kit>_<place> <less>_<do> <less>_<less> <less>_<pace>
        <more>_<kit> <more>_<num> <move>_<move> <not>_<chat> <not>_<far> <not>_<less> <not>_<pace> <num>_<part>
        <num>_<swap> <part>_<wrong> <place>_<num> <place>_<part> <settle>_<part> a_plat a_plat_on about_feet
        about_feet_together after_thre after_thre_week another_layer anybod_find anybod_find_it anybod_want
        anyon_who_bor arm_and_leg arm_back arm_back_past arm_fold arm_long_past arm_out_wide arm_up as_if_ther
        bag_of bell_up blue_peopl both_feet_back br_your_hand braver_soul callum_and callum_and_jo car_on
        car_your car_your_water clap_at clap_at_the clos_your clos_your_eye come_and come_and_tell come_back
        come_back_down come_back_in count_them cros_the cros_your_arm do_it_from dont_let_the down_at
        down_at_your draw_a driv_the driv_the_other dumbbell_in empt_the empt_the_tank feel_smug feet_off
        feet_on_the feet_together fingertip_only fold_your fold_your_arm for_the for_the_full for_thos
        for_thos_who forward_two forward_two_backward get_the_heel go_ahead_and go_backward go_to grab_a_medicin
        grip_it_lower half_a_step hand_behind hand_behind_your hand_lighter hand_lighter_on heel_up heel_up_on
        hold_a_plat hold_a_tin hold_the hold_the_bell hold_the_dumbbell hold_the_water hook_your hook_your_thumb
        hover_it hover_the if_its_a if_its_fly if_its_noth if_ther if_youd_like if_your_a if_your_bend
        if_your_solid if_your_that if_youv_got in_a instead_of instead_of_two it_get it_get_horribl its_further
        jump_it keep_the_same kne_go kne_go_quicker kne_up_to knee_acros knee_acros_to knee_to knee_to_the last_0
        last_0_metr late_stag leav_the_second left_and left_and_right leg_straight let_go let_go_of let_the
        level_0 level_thre lift_a lift_the lift_the_back lift_your lift_your_toe littl_circl littl_circl_at
        littl_puls littl_puls_at long_leg longer_leg look_the look_the_other look_up look_up_under lose_the_tray
        lower_with_one no_hand no_more_than not_befor not_befor_week not_for not_for_long not_hard
        not_hard_enough once_that once_your one_finger one_foot one_foot_float one_foot_off one_leg_at only_if
        only_if_ive option_b paus_for_a paus_twic pull_it pull_it_down push_with push_with_two put_the
        put_the_front quicker_feet reach_the reach_the_arm round_two round_two_length say_the say_the_alphabet
        see_if see_if_you shift_over shift_over_to should_it should_it_start side_to side_to_side singl_hand
        slid_one_foot slow_the slow_the_way somebody_smil squeez_a squeez_a_shoe stag_two stand_on_it stay_down
        stay_down_ther step_back stop_for stop_for_a stop_halfwa stop_halfwa_down straight_leg straighten_both
        straighten_that straighten_that_knee straighten_the_leg straighten_thos straighten_thos_leg
        straighter_leg stronger_folk swap_at swap_each take_a_bigger take_it take_your_hand that_an
        that_an_archer that_the_delux that_the_trick that_what_the thatll_sort thatll_sort_you the_big
        the_big_one the_next the_rucksack the_rucksack_good the_sore the_sore_leg the_squat thos_who
        thos_who_enjo thre_for thre_for_up to_step to_step_it toe_on toe_on_the top_arm top_leg top_leg_up try_it
        tuck_the_chin turn_out turn_out_until turn_your wait_a want_it want_more want_to weight_on_the weld_down
        when_thi wher_would wher_would_you with_both with_both_feet you_can you_cant_cheat you_could
        you_could_have you_keen you_keen_one you_might your_up your_up_to
      `,
    ],
    [
      -0.2,
      `
        <chat>_<do> <chat>_<far> <chat>_<not> <chat>_<part> <do>_<attend> <do>_<more> <far>_<part> <less>_<part>
        <more>_<part> <more>_<place> <move>_<attend> <move>_<chat> <not>_<do> <num>_<more> <part>_<attend>
        <part>_<chat> <part>_<do> <part>_<far> <part>_<move> <place>_<place> <settle>_<attend> <settle>_<more>
        <settle>_<place> <swap>_<not> bend_the both_hand br_it hand_on hand_on_the hold_the_rail if_youv_a let_it
        lift_it lift_the_other lift_the_top lower_it make_it one_arm one_arm_at one_foot_forward one_hand_on
        put_it squeez_your stag_one take_your_feet when_the when_the_last
      `,
    ],
    [-0.4, 'if_you'],
  ],
  word: [
    [0.8, 'bor show'],
    [
      0.6,
      `
        blu doddl feel for further hover if last leg option paus straighten try who without
      `,
    ],
    [
      0.4,
      `
        0 add ankl another anybod anyon arm backward can earn feet foot go green hand harder keen longer meaner
        noth off overhead red singl smug thos together two version want when wors
      `,
    ],
    [
      0.2,
      `
        abov acros advanc aeroplan alphabet arent at b bag balanc band beat becom bell bigger bind black blue box
        brain brav braver breez callum car centimetr challeng chat chok clap clever closer cock comfortabl
        confident cooler crank creep cros cross cruis delux dial doubl draw driv dull dumbbell each easy enough
        extra eye fanc faster feather fifth finger fingertip flash float fly fold folk fresh full fun game good
        halfwa has heavier heel hold hole holida homework horribl initial instead it ive jo joke jump kickstand
        kilo kind l late laugh laughabl layer lift load lower master may mayb medicin might month more move
        narrow nast nastier nothing once one onto operat opposit pain past plat play progres progression puls put
        quicker rest rice rock rucksack second sheila shut side sign slant slow smil solid sort soul spar spic
        spicier squar stag stick straight straighter strap stronger suffer sugar take tank thes thicker thre
        thumb tile toe too top tougher tray trick trickier troubl turn twist upsid use view water week weight
        weld well whil wobbl yall youv
      `,
    ],
    [
      -0.2,
      `
        again all along and any anyth around as ask away back ball bar becaus befor behind bel bent better big
        blad block bon bone book break breath broom bug bum calf calv catch ceil chair check chest chin clock com
        cramp curl cushion doesnt door down drift ease edge eight elbow even ever face fall fast few fiv floor
        follow forearm fort fraction front get gone grumbl had hair have hear help high home how hug ill insid
        into is itll land lead leav less lighter like littl lock lot mat mind minut miss moment most mov much
        muddl need new next nice nobod not of only open or out over own part partner peel plank pleas point pop
        posh position pressur proper pull push quick quiet rail read rib ring roll row run same seat sens shak
        short shorten sid sideway sing six skip smaller so soft spin spot spread squeez stand star stay stiff
        still stretch stuck swim switch tail tak ten that then they theyr thin think thirt though tight till time
        tip toda towel underneath until very waist walk watch we wee were wet what wher wide will wob youll your
      `,
    ],
    [
      -0.4,
      `
        about are be bend dont first goe heav i in its keep low no pick shoulder sit tall than thigh under up
        wrist
      `,
    ],
    [-0.6, 'hip just'],
  ],
} as const satisfies CueWeights
