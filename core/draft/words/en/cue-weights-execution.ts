/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind execution; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EXECUTION_WEIGHTS = {
  bias: [[-0.2, 'yes']],
  class: [
    [0.4, 'part'],
    [0.2, 'do move place'],
    [-0.2, 'air harm more num pace swap'],
    [-0.4, 'less'],
    [-0.6, 'not'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.6, 'opposit'],
    [
      0.4,
      `
        <do> <far> <part> <take> and chang elbow gent jab land let like not quiet shov squash toe
      `,
    ],
    [
      0.2,
      `
        <air> <ill> <move> <place> <settle> <swap> <wrong> all allow as away backward big body both bow build
        cheek chin down driv ear ease fetch flex free from grab hand haul head hey hip hold home jump kne kneel
        lean left length lock long lower nose off one paddl peel pinch pop pres prim pull rib round same set
        settl shelf shoulder skip slid slip small soak squar squeez start sw take the thi tight together trac tum
        two underneath up wait we weight when wind without you
      `,
    ],
    [
      -0.2,
      `
        <chat> <harm> <less> <not> a ankl arm back bend bottom br bum clos come drop feel fold forearm good heel
        hug i it last leav leg make nice no nobody or palm reach rest roll row run shak shuffl side snap squat
        stay stop straight tall theyr think try tuck use walk watch youll your youv
      `,
    ],
    [-0.4, '<num> if its that ther'],
  ],
  given: [
    [0.2, '<do> <harm> <move> a and bad bit by just kne rock side to'],
    [-0.2, '<attend> the'],
  ],
  last: [
    [0.6, 'and'],
    [0.4, 'chang first home long other step swap toe under way'],
    [
      0.2,
      `
        acros again air arch arm away back backward behind big board bow bus button by came ceil cheek chicken
        click complete control cros ear fall five floor flow forehead forward full gent good half hang head hike
        hold hop hug inch jab kitchen knee land last lead lean left leg littl log loos mat meet metr middl nowt
        one parrot pocket position proud put return right side sideway sit skip slow small smidg soft stay still
        straight strok switch tail tall tap the ther tight time tipto together touch towel wide window you
      `,
    ],
    [
      -0.2,
      `
        0 around bel bit box breath bum calv chair chest closer com curl float front ful go help higher level
        lung march me now off on plank pleas pres quick rail rais roll row short squar squeez stretch then thi
        turn twist ups walk well
      `,
    ],
    [-0.4, 'hand out shoulder'],
  ],
  length: [
    [-0.2, '3-4 5-7 8-12'],
    [-0.4, '1-2'],
  ],
  pair: [
    [0.6, '<place>_again'],
    [
      0.4,
      `
        <chat>_them <do>_forward <part>_away <part>_back <part>_first <part>_into <part>_to <part>_up
        <place>_between <place>_with <settle>_through and_<do> and_<move> and_<place> and_down and_stand are_go
        down_between for_<num> into_the it_ther let_them opposit_<part> other_foot rib_<place> shoulder_<place>
        straight_<place> that_<part> the_left the_other to_<part> to_the we_<do> we_<move>
      `,
    ],
    [
      0.2,
      `
        0_short <air>_down <air>_flat <air>_for <air>_out <air>_over <attend>_again <attend>_and <attend>_at
        <attend>_back <attend>_down <attend>_even <attend>_if <attend>_kne <attend>_on <attend>_open <attend>_out
        <attend>_over <attend>_step <attend>_straight <attend>_ther <attend>_theyll <attend>_under <attend>_youll
        <chat>_again <chat>_breath <chat>_careful <chat>_clos <chat>_complete <chat>_em <chat>_fight <chat>_it
        <chat>_last <chat>_leg <chat>_pull <chat>_rack <chat>_reach <chat>_right <chat>_sit <chat>_slow
        <chat>_take <chat>_third <chat>_to <do>_a <do>_about <do>_acros <do>_away <do>_careful <do>_down
        <do>_from <do>_hand <do>_it <do>_left <do>_off <do>_right <do>_straight <do>_that <do>_the <do>_them
        <do>_ther <do>_till <do>_under <do>_yourself <far>_all <far>_arm <far>_bit <far>_it <far>_letterbox
        <far>_step <far>_the <far>_you <far>_your <harm>_and <harm>_away <harm>_fac <harm>_left <harm>_right
        <ill>_and <ill>_it <kit>_apart <kit>_back <kit>_even <kit>_height <kit>_it <kit>_out <kit>_stay
        <kit>_turn <less>_all <less>_bounc <less>_it <less>_we <less>_when <more>_arm <more>_as <more>_on
        <more>_one <more>_onto <more>_sit <more>_tall <more>_through <more>_till <more>_to <more>_you <move>_an
        <move>_at <move>_away <move>_down <move>_fac <move>_first <move>_forward <move>_left <move>_one
        <move>_relax <move>_swap <move>_the <move>_ther <move>_together <move>_under <move>_your <not>_acros
        <not>_answer <not>_at <not>_drop <not>_flar <not>_flop <not>_mid <not>_mov <not>_out <not>_paus
        <not>_roll <not>_sit <not>_stick <not>_stop <num>_five <num>_heel <num>_hip <num>_knee <num>_leg
        <num>_line <num>_metr <num>_point <num>_short <num>_side <num>_step <pace>_go <pace>_of <part>_and
        <part>_apart <part>_be <part>_befor <part>_bend <part>_between <part>_big <part>_clos <part>_com
        <part>_down <part>_driv <part>_drop <part>_even <part>_flat <part>_follow <part>_full <part>_go
        <part>_goe <part>_heav <part>_high <part>_hip <part>_join <part>_land <part>_lead <part>_lik <part>_like
        <part>_loos <part>_mov <part>_of <part>_off <part>_one <part>_out <part>_pull <part>_push <part>_round
        <part>_still <part>_straight <part>_sw <part>_swing <part>_tall <part>_then <part>_through
        <part>_together <place>_back <place>_bone <place>_careful <place>_down <place>_first <place>_front
        <place>_in <place>_kne <place>_knee <place>_like <place>_onto <place>_sideway <place>_sit <place>_slow
        <place>_step <place>_still <place>_tall <place>_that <place>_till <place>_toward <place>_without
        <place>_you <settle>_about <settle>_by <settle>_complete <settle>_it <settle>_last <settle>_slow
        <settle>_ther <settle>_up <swap>_about <swap>_again <swap>_drop <swap>_face <swap>_height <swap>_lean
        <swap>_mov <swap>_sit <take>_about <take>_in <take>_it <take>_off <take>_out <take>_your <wrong>_forward
        <wrong>_in <wrong>_out a_<far> a_<pace> a_bell a_book a_cat a_chicken a_circl a_count a_hug a_jog a_knee
        a_littl a_log a_parrot a_smidg a_stand a_time after_it all_<place> all_touch allow_the along_your
        and_<less> and_<settle> and_<swap> and_<take> and_back and_clos and_if and_just and_let and_lift and_stay
        and_turn ankl_be ankl_behind answer_the are_<attend> are_<harm> are_<ill> are_bad arm_<attend> arm_<do>
        arm_<move> arm_<part> arm_<settle> arm_big arm_go arm_goe arm_out arm_pull arm_straight arm_then
        as_<attend> as_if as_on as_youll at_<far> at_<num> at_a at_ninet away_<attend> away_like baby_a
        back_<part> back_<place> back_and back_in back_into back_knee back_like back_one back_still bad_and
        ball_of bar_stay be_<less> be_<wrong> be_stiff behind_<chat> behind_it behind_you bel_<less> bel_flat
        belt_<far> belt_height between_your big_<do> big_<move> big_arm bit_<chat> bit_<place> bit_at bit_good
        bit_in bit_side blad_<place> blad_down body_<do> body_swing bone_<place> bone_by both_hook both_sit
        bottom_of bow_again br_it br_them breath_<place> breath_in breath_out build_<more> build_<place> build_up
        bum_<place> butt_<less> butt_tight by_bone by_pull calv_want careful_at cheek_to chest_<attend>
        chest_down chest_tall chin_<place> chin_tuck circl_with closest_to collarbon_<place> collarbon_wide
        come_through count_of creep_<place> creep_forward cros_<num> cros_one crown_of curl_your curtain_<place>
        curtain_on do_all dont_<chat> dont_<move> dont_<take> dont_let dont_pull dont_stick door_with
        down_<attend> down_<not> down_<place> down_again down_as down_first down_in down_the down_under down_with
        down_without drift_<place> drift_out driv_<more> driv_<place> driv_up drop_it each_end ear_to ease_off
        elbow_<attend> elbow_<far> elbow_<place> elbow_at elbow_go elbow_high elbow_lead end_with ever_<pace>
        ever_time exhal_<more> exhal_<place> exhal_up eye_on fac_front fall_<place> feet_<take> feet_for feet_in
        feet_off fetch_it fight_it finish_<place> first_<num> first_third five_<pace> flex_the float_it float_the
        float_your floor_and fold_<place> fold_forward follow_along foot_<more> foot_off foot_up for_four for_ten
        for_thes for_thre fort_<num> fort_five forward_a forward_whil free_<part> free_hand from_<chat> from_here
        from_the from_you front_<far> front_<part> front_heel front_of front_wider get_<attend> get_tall
        give_baby go_<pace> go_again go_complete go_last go_right go_slow go_to go_too goe_<attend> goe_<part>
        goe_<place> goe_back goe_long goe_out gone_<place> gone_by gone_straight hand_<chat> hand_<far>
        hand_<move> hand_finish hand_stay hand_to hand_when hang_in happen_at head_come head_through head_to
        hear_nowt heel_glu heel_of heel_to hike_it hip_<chat> hip_<do> hip_<place> hip_first hip_forward hit_the
        home_again hook_when if_step if_that in_<far> in_<less> in_<pace> in_again in_and in_out in_slow in_till
        in_toward in_with inhal_<place> inhal_down iron_board is_<num> is_one it_<attend> it_<part> it_<settle>
        it_away it_back it_down it_fall it_flow it_from it_hit it_home it_into it_land it_mov it_to its_gone
        its_mate jaw_loos jog_is jump_again jump_forward just_<do> just_<less> just_<move> just_in just_off
        just_rock keep_it keep_swap keep_the keep_your kne_<do> kne_<more> kne_<move> kne_as kne_point
        kne_together kne_up knee_<more> knee_com knee_down knee_stay knee_up kneel_<more> kneel_<place> kneel_up
        knuckl_turn land_<place> land_on land_under left_<part> left_arm left_leg leg_<do> leg_<move> leg_away
        leg_ever leg_flat leg_goe leg_on leg_push leg_together let_em let_yourself letter_<place> letter_in
        lift_<num> lift_one lift_your light_<place> lik_that like_<chat> like_a like_open like_ther like_your
        littl_<do> littl_<kit> littl_<move> littl_bit littl_hop littl_step lock_<place> lock_out lock_the
        long_<do> long_<move> long_again long_step look_<place> look_over look_straight lov_let low_letterbox
        make_<num> make_one march_<place> march_on mate_<swap> mate_do mid_<air> mid_air mind_<more> mind_up
        mov_them neck_lik next_to no_lean no_sit nose_<place> nose_over not_<not> not_<pace> not_<place>
        not_acros not_answer not_flar not_flop not_lock not_mid not_out not_paus not_stop of_<num> of_five
        of_they of_your off_<pace> off_and off_the on_the one_<attend> one_<part> one_<settle> one_heel one_hip
        one_knee one_leg one_line one_long one_side only_the opposit_arm opposit_leg opposit_one or_<kit>
        or_<move> or_youll other_<num> other_one other_pair out_<place> out_in out_like out_sideway out_till
        out_to outsid_<part> outsid_leg over_a over_your own_<settle> own_<take> own_face paddl_light pedal_the
        pinch_it pres_<place> pres_it pres_through pres_your pull_<more> pull_it pull_the pull_up push_<more>
        push_<place> push_down push_off push_up put_your quick_<far> quick_littl reach_<part> reach_<place>
        reach_back rib_down rib_over right_<part> right_arm right_into right_leg right_off ring_out rock_a
        rock_over rock_side roll_<part> roll_back roll_down roll_it round_<harm> round_careful round_to same_as
        same_bow same_leg same_way seat_<place> set_it settl_<place> shav_the short_<move> short_<wrong>
        short_hike short_strok shoulder_<attend> shoulder_<more> shoulder_and shoulder_down shoulder_heav
        shoulder_up shov_the shov_your side_to sit_<part> sit_<place> sit_back sit_down sit_in sit_ther sit_your
        skip_<place> skip_on skirt_board slack_<place> slack_out slid_it slip_<chat> slip_<more> slip_left
        slip_right slow_<settle> slow_go small_<do> small_step snap_the so_your soak_it sock_<more> sock_up
        soft_kne soften_the spot_<part> spot_kne squar_to squash_the squeez_and squeez_the stand_about stand_on
        start_with stay_<place> stay_<settle> stay_<take> stay_on stay_put stay_relax stay_ther step_<do>
        step_<move> step_out stick_it stick_your stiff_bounc stiff_when stop_at straight_down straight_out
        straighten_<place> strid_each strok_to sw_the swap_<part> swap_leg tail_<place> tail_under
        tailbon_<place> tailbon_under take_the take_your tall_<place> tall_at tall_through that_<pace>
        that_closest that_it that_nice that_stay the_<chat> the_<more> the_<part> the_<take> the_arm the_ball
        the_band the_bar the_ceil the_chest the_cone the_ear the_feet the_fingertip the_finish the_fire the_floor
        the_handl the_head the_jog the_kitchen the_mat the_middl the_neck the_nose the_palm the_phon the_pocket
        the_right the_roller the_same the_side the_spot the_tail the_thigh the_time the_toe the_top the_towel
        the_waist the_whol the_window the_work them_<part> them_<swap> them_away them_back them_home them_meet
        then_<chat> then_<do> then_<move> then_<part> then_let ther_for ther_whil theyv_gone thi_<pace> thi_time
        thre_point thre_to through_and through_the through_your throw_the thumb_<part> thumb_<place> thumb_back
        thumb_out tighten_the till_<chat> till_it till_you time_befor to_<kit> to_ankl to_belt to_bum to_cheek
        to_fold to_look to_side to_your toe_away toe_fac toe_pull top_<move> top_<settle> top_<take> top_hip
        top_keep tother_way toward_the toward_your tuck_your tum_<pace> tum_gent underneath_<chat> underneath_you
        until_<chat> up_<chat> up_<place> up_<settle> up_on up_one up_onto up_sit up_tall up_through up_till
        up_you wait_in wait_ther walk_<attend> walk_tall walk_to way_<chat> way_in way_you we_<far> we_<less>
        we_lift we_lower we_tap wee_bit weight_<place> weight_even weight_in when_it whil_i whol_<part> whol_leg
        with_it with_its without_bend without_drop without_mov wrist_<attend> wrist_<place> wrist_straight
        you_<air> you_<kit> you_<not> you_breath you_dont you_fight you_just you_pull you_rack you_reach you_sit
        you_take your_<harm> your_<part> your_ankl your_arm your_bum your_bus your_cheek your_clos your_hip
        your_jaw your_jump your_look your_right your_seat your_sid your_stick your_tail your_tipto your_weight
        youv_done
      `,
    ],
    [
      -0.2,
      `
        <air>_and <attend>_as <attend>_leg <attend>_like <attend>_off <attend>_the <attend>_with <chat>_a
        <chat>_and <chat>_at <chat>_back <chat>_forward <chat>_hang <chat>_hold <chat>_land <chat>_the
        <chat>_till <chat>_up <chat>_us <chat>_with <chat>_you <do>_apart <do>_around <do>_if <do>_in <do>_like
        <do>_on <do>_out <do>_ups <do>_with <far>_one <far>_squeez <far>_ther <far>_toe <far>_with <kit>_into
        <kit>_off <kit>_under <kit>_up <less>_back <less>_of <less>_to <more>_a <more>_in <more>_like <more>_out
        <more>_ther <move>_apart <move>_around <move>_for <move>_in <move>_into <move>_like <move>_quiet
        <move>_ups <move>_with <not>_go <not>_in <not>_on <num>_finger <num>_foot <num>_hand <num>_mov <pace>_at
        <pace>_in <pace>_it <pace>_the <part>_a <part>_acros <part>_again <part>_are <part>_arm <part>_as
        <part>_at <part>_behind <part>_height <part>_just <part>_level <part>_lift <part>_long <part>_lower
        <part>_now <part>_only <part>_over <part>_rais <part>_slow <part>_stretch <part>_the <part>_widen
        <place>_and <place>_befor <place>_closer <place>_com <place>_heel <place>_here <place>_of <place>_on
        <place>_round <place>_shoulder <place>_stay <place>_straight <place>_the <place>_two <settle>_and
        <settle>_from <settle>_heav <settle>_of <settle>_on <settle>_them <settle>_to <settle>_with <take>_a
        <take>_forward <take>_of <take>_on <take>_them <take>_together a_<harm> a_<kit> a_<part> a_foot abov_the
        acros_the along_the and_<attend> and_<harm> and_<pace> and_<part> and_bend and_do and_kne and_open
        and_pull and_round and_tip and_your ankl_and arm_<place> arm_and arm_hang arm_on arm_to arm_up as_it
        as_long at_your back_stay back_straight back_the bar_<place> behind_the behind_your bel_in bell_<place>
        bend_<place> bend_the bent_<place> big_toe bit_of both_leg bottom_knee br_the br_your button_in by_the
        by_your chair_<place> chang_leg chin_<more> chin_up come_right cros_the cros_your do_it down_by down_on
        each_<part> each_other end_<more> end_<place> end_up feet_<part> feet_back feet_together fist_and
        float_down fold_your foot_forward for_thi from_your go_<place> go_and good_<num> good_one hand_acros
        hand_and hand_in head_<pace> head_slow heel_<place> heel_down hip_squar hug_the if_<chat> if_your in_a
        in_closer in_under in_your is_<chat> it_<place> it_com it_is it_off it_out it_under keep_<num> keep_one
        keep_them kne_and kne_over knee_<attend> knee_on knee_soft last_<num> last_one lean_<part> lean_back
        leav_the leg_<attend> leg_<more> leg_out leg_up let_<chat> let_us lift_it littl_<place> long_and long_as
        make_it make_the not_<chat> not_<do> not_<move> not_<settle> not_on of_it off_your on_to one_<place>
        other_<attend> other_arm other_fist other_leg other_side out_and out_as out_of point_<attend>
        point_straight pull_apart pull_them pull_with punch_the push_through right_<place> right_down rock_it
        roll_<more> roll_over roll_up round_the run_it same_again shak_the shift_the shin_<place> shuffl_<place>
        shuffl_forward sit_<more> sit_on sit_up slid_the snap_it spread_<place> spread_out spread_the step_in
        step_your straighten_it that_the that_your the_<attend> the_<do> the_<far> the_<move> the_back the_bell
        the_bench the_box the_chair the_door the_finger the_ground the_heel the_kne the_last the_littl the_rail
        the_seat the_second the_spin the_step the_weight the_world them_<settle> them_forward ther_<far> thi_one
        through_at till_ther to_<move> to_<settle> to_<take> to_hip to_toe top_leg top_of top_shelf towel_<place>
        try_to tuck_it tuck_them turn_<place> turn_around turn_it two_<part> under_the under_your up_a up_in
        up_like up_out up_ther us_<settle> walk_<place> walk_the way_<more> way_<part> way_back way_down
        way_through way_to way_up when_<chat> when_you wher_your whol_foot you_<attend> you_<chat> you_<less>
        you_<more> you_land you_stand your_<attend> your_<place> your_<settle> your_<swap> your_<take> your_back
        your_big your_chair your_eye your_front your_heart your_knee your_shoulder your_spin your_wrist
      `,
    ],
    [
      -0.4,
      `
        <attend>_it <kit>_down <place>_at <settle>_a down_and feet_<place> foot_<place> if_the the_<pace>
        way_<place>
      `,
    ],
  ],
  phrase: [
    [0.4, 'execution-hint execution-likely'],
    [0.2, 'breathing-likely fault-hint focus-sure range-hint tempo-hint'],
    [
      -0.2,
      `
        breathing-hint dose_only easier-likely empty_clauses equipment-sure focus-hint harder-likely harder-sure
        purpose range-likely tempo-sure transitions
      `,
    ],
    [-0.4, 'breathing-sure caution-sure chat easier-hint fault-sure setup-likely setup-sure'],
    [-0.6, 'easier-sure'],
  ],
  start: [
    [0.6, '<air>_<place>'],
    [0.4, 'hold_it_ther the_other'],
    [
      0.2,
      `
        0_short 0_short_strok <attend>_<chat> <attend>_<far> <attend>_<part> <attend>_<place> <chat>_<do>
        <chat>_<move> <do>_<chat> <do>_<do> <do>_<more> <do>_<move> <do>_<num> <do>_<settle> <far>_<do>
        <far>_<kit> <harm>_<more> <less>_<place> <more>_<chat> <more>_<place> <move>_<num> <move>_<place>
        <not>_<place> <not>_<wrong> <num>_<settle> <pace>_<chat> <part>_<attend> <part>_<move> <part>_<pace>
        <place>_<place> <settle>_<more> <settle>_<place> <swap>_<not> <take>_<place> <wrong>_<place> a_bit
        a_bit_good a_smidg after_it all_the_time allow_the allow_the_back arm_big arm_go_too as_you at_the
        at_the_finish at_the_top away_from back_and bar_stay bar_stay_on bend_the_elbow bend_your_elbow big_arm
        big_toe_as both_feet_for both_hook both_hook_when both_sit both_sit_bon br_it br_it_down br_it_home
        br_the_other br_them br_them_back br_them_home breath_in build_up build_up_for bum_stay bum_stay_on
        butt_tight cheek_to chest_down chest_tall chin_tuck collarbon_wide come_through come_up come_up_on
        cros_one cros_one_foot curl_your do_all do_all_the do_not do_not_paus do_not_stop dont_let dont_let_them
        dont_roll_it dont_sit_ther dont_stick dont_stick_your down_to_your driv_up drop_the_back ear_to
        ear_to_ankl ease_off elbow_at elbow_back elbow_high feet_under_you finger_wide flex_the float_your
        free_hand free_hand_on from_here get_tall give_baby give_baby_a grow_tall_through hand_finish hand_on
        hand_on_the hand_round_your hand_stay hand_to hand_to_shoulder hang_in_the haul_it haul_it_into head_to
        head_to_heel heel_of heel_of_the heel_to heel_to_bum hip_first hold_it_in hold_the hold_your
        hold_your_elbow home_again if_your_kne in_again in_slow inhal_down it_slid_up its_only_the its_your_ankl
        jaw_loos keep_it keep_it_bent keep_it_over keep_swap keep_the keep_the_band keep_your keep_your_back
        keep_your_feet keep_your_hip kne_out kne_out_over kne_point kne_to knee_stay_in kneel_up knuckl_turn
        knuckl_turn_in land_on land_on_the lean_in left_arm leg_flat leg_push leg_together let_go_slow let_it_go
        let_it_hang let_them let_your_arm lift_one lift_the_other lift_your lift_your_chest lift_your_hip like_a
        like_open like_open_the like_your_look littl_hop littl_step long_again look_at_the look_straight
        look_straight_ahead look_the look_the_other make_one march_on march_on_the mind_up mind_up_and no_lean
        no_sit nose_over nose_over_your not_a_stand not_acros not_behind_it not_flar not_mid not_mid_air not_out
        not_your_feet off_the off_the_floor one_hip one_line only_a only_a_littl opposit_arm opposit_hand
        opposit_leg other_knee out_in paddl_light paddl_light_in palm_up pedal_the pinch_it pinch_it_ther
        pinch_your pinch_your_shoulder pop_it_down pres_it pres_it_up pres_the_back pres_through pres_through_the
        pres_your pull_it pull_the push_away push_off push_the_floor push_your_backsid put_it_back put_the_good
        put_your quick_littl quiet_feet roll_down round_the round_the_other round_to round_to_the same_as
        same_as_on same_as_your same_bow same_length same_length_of same_way set_it set_it_down short_hike
        shoulder_away shoulder_away_from shov_it_away shov_the shov_your sit_down sit_down_between sit_your
        skip_on skip_on_the slid_down slid_down_until slid_it slip_left slow_go snap_the soak_it soak_it_up
        sock_up soften_the spread_your_finger squash_the squeez_the stand_it_up start_with start_with_the
        stay_down stay_relax stay_ther stick_it stick_it_for sw_the sw_your_arm swap_hand_when swap_leg_when
        take_the take_the_handl take_your take_your_feet take_your_right that_closest that_closest_to that_it
        the_arm the_bar the_chest the_jog the_jog_is the_knee the_left the_opposit the_other_one the_other_pair
        the_way theyv_gone theyv_gone_straight thi_time thi_time_befor thumb_at_ten toe_away toe_fac
        toe_fac_front toe_together toe_up tuck_your tuck_your_toe tum_gent turn_round_careful turn_the
        turn_the_ring turn_your_rib underneath_you up_onto up_with up_with_its up_you up_you_come wait_for_your
        wait_in wait_in_the wait_ther walk_back_on walk_tall walk_to walk_to_the we_are_go we_lift weight_even_on
        weight_in weight_over_the were_go were_go_sideway without_bend without_mov without_mov_them
        wrist_straight you_are you_are_go you_dont you_dont_pull you_fight you_fight_it you_just you_walk
        your_chest your_chest_and your_jump your_jump_forward your_not_answer your_stick your_stick_bow
      `,
    ],
    [
      -0.2,
      `
        <chat>_<chat> <chat>_<swap> <do>_<pace> <do>_<part> <harm>_<attend> <harm>_<part> <kit>_<more>
        <more>_<num> <move>_<do> <num>_<place> <pace>_<place> <part>_<not> <part>_<wrong> <place>_<num>
        <place>_<part> <settle>_<do> <settle>_<part> arm_and arm_long back_up bend_the_kne both_feet both_leg
        br_it_up br_the br_your chang_leg chest_and chest_and_hip come_down cros_the cros_your cros_your_arm
        do_it dont_let_your driv_the_other elbow_in fold_your go_to heel_down hold_it_down hug_the if_the
        keep_one keep_the_back keep_them keep_your_chest kne_over kne_up_over knee_to leg_stay leg_up let_us
        lift_it lift_it_off lift_the_back lift_the_toe lower_it_down make_it make_the not_on pull_them punch_the
        push_through push_through_the rock_it roll_over roll_up run_it shoulder_blad shuffl_forward sit_back_down
        sit_down_into sit_up slid_the slid_up snap_it squeez_the_other squeez_your_backsid stand_up_out step_off
        step_your tap_the_heel that_your tuck_it tuck_the_toe tuck_them turn_around turn_your_head walk_the
        walk_the_feet
      `,
    ],
  ],
  word: [
    [0.6, 'home left opposit tall'],
    [
      0.4,
      `
        again away back bow cheek down ear elbow first forward jab land let nose other pocket right sit soft
        squash straight swap tail then ther tight together toward underneath way without
      `,
    ],
    [
      0.2,
      `
        acros along and answer apart arm as backsid backward ball bar belt besid between big bit board body bone
        both build bum bus came cat ceil chang chest chicken chin circl click closest collarbon dig draw drawer
        drift driv ease em exact fac fall fetch fight finish five flar float flow follow foot gent glas goe hair
        handl hang head hear heel hey high hike hip hop iron jaw join jump kitchen knee lead lean leg length lik
        littl lock log long look loos lower mate meet metr middl mov much neck ninet nowt off one over paddl
        parrot pedal peel pelvic piec position pres prim pull push put quiet return rib road rock roll roller
        same settl shoulder shov side sideway skip slip small smidg soak soften spot squeez stand stay step stick
        stiff strok sw sweep swing tailbon tap the them thigh though through throw till tilt time tip tipto to
        toe tother touch trac until up waist we wee when whol wind window
      `,
    ],
    [
      -0.2,
      `
        0 about abov all anchor any anybod around ask at be been befor bell below bench block bottom box brac
        bridg calf call can car com crank dead do drag dumbbell each eight else empt end enough face few finger
        fist flat for forearm ful further get good got grip ground half hamstring has heal help here higher hing
        how hug i im instead keep last leav level lie load lot low lung march minut more my need nice no nobod
        nobody of only open palm peopl pin plank plant pleas pressur puff pump rail remember row second shak
        should shuffl six snap so some someth spe spin spread squat start straighten strap stretch stuck talk th
        than theyr think thre try tuck twic two ups us use walk was watch well what widen width will world wrap
        wrist youv
      `,
    ],
    [-0.4, 'a are breath chair closer feel have if its make me now on or that thi wher'],
    [-0.6, 'is'],
  ],
} as const satisfies CueWeights
