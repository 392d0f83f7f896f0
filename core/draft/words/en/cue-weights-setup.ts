/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind setup; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const SETUP_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [0.6, 'place'],
    [0.4, 'part take'],
    [0.2, 'far harm kit settle'],
    [-0.2, 'num wrong'],
    [-0.4, 'chat do less more not pace swap'],
    [-0.6, 'air'],
  ],
  conditional: [[-0.4, 'yes']],
  first: [
    [0.6, '<part> arm one palm'],
    [
      0.4,
      `
        <kit> <settle> both bottom forearm forehead heel like ring same set side tall thumb
      `,
    ],
    [
      0.2,
      `
        <harm> <place> <swap> <take> <wrong> a about alway an bar behind bell big box butt cardigan clos cros
        drop duck fac feat finger foam further good guard half hand heaviest height hing hook hop hug jog knot
        knuckl kyle lat left leg let lie light load mat next no not noth now on onto operat other plank position
        posti roll sat shin sho shuffl shut sideway smooth sock soft spread stagger stanc stand start stay tie
        tip top towel tuck turn two wider wrap
      `,
    ],
    [
      -0.2,
      `
        <attend> <far> <less> <not> all and back bel bent chair chin curl do dont down ease eye finish fold foot
        get go handl hip if its knee look loop mind neck nobody only out pres pull reach rest shak short slid
        some stop straight straighten take ten that thre till to up use watch wrist
      `,
    ],
    [-0.4, '<air> <chat> come hold keep put'],
  ],
  given: [[0.2, '<attend> end go heav its']],
  last: [
    [0.4, 'bent bum height it kne kneel on rail seat shoulder tall them tightrop touch'],
    [
      0.2,
      `
        abreast all also alway ankl arch are around away backrest band behind bone broomstick bump bushwalk
        camera ceil crat dumbbell each edge fenc fift four fram front grip gym hair hang hard high hip hold horn
        jump knee kyle lan light line lock mid neck now pad paint pair plank portrait position post proper proud
        roll round run scon short slack sofa soft spin split spread stanc stand start straight support tabletop
        tailbon think tight tour track tree tuck two unrack width wrist you
      `,
    ],
    [
      -0.2,
      `
        0 and arm ball bar blad body breath cooler down ear face feet first foot go higher inch kneecap level off
        only open pleas pocket point rack right sho still strap thre tim turn way weight wing
      `,
    ],
    [-0.4, 'heel leg one toe'],
  ],
  length: [
    [-0.2, '5-7 8-12'],
    [-0.6, '1-2'],
  ],
  pair: [
    [0.6, 'leg_<place> your_back'],
    [
      0.4,
      `
        <chat>_us <far>_than <kit>_at <not>_on <not>_slack <num>_foot <part>_a <part>_bent <part>_point <part>_so
        <part>_under <part>_width <place>_our <place>_till <place>_your <swap>_slack a_tightrop and_<settle>
        by_your dont_jump each_hand end_<place> fac_the foot_<place> forearm_<place> forehead_<place>
        forehead_down hand_and heel_<place> hip_width in_each it_<place> just_<place> knee_<place> knee_soft
        left_<part> leg_<attend> leg_long let_us no_slack not_on one_<place> other_<part> right_<part> same_side
        side_<place> side_on the_<swap> the_neck the_pad thi_<pace> thi_time to_it under_the us_come wider_than
        you_<swap> your_chair your_shoulder
      `,
    ],
    [
      0.2,
      `
        0_lan <air>_again <attend>_arm <attend>_band <attend>_fift <attend>_gap <attend>_kne <attend>_kneel
        <attend>_off <attend>_on <attend>_pick <attend>_stanc <attend>_ten <attend>_touch <attend>_train
        <attend>_under <attend>_well <attend>_youv <chat>_against <chat>_are <chat>_did <chat>_gym <chat>_hand
        <chat>_knee <chat>_kneel <chat>_side <chat>_stand <chat>_stiff <chat>_strid <chat>_swap <chat>_switch
        <chat>_the <chat>_unrack <chat>_would <do>_around <do>_away <do>_baby <do>_back <do>_from <do>_in
        <do>_into <do>_kne <do>_like <do>_so <do>_under <far>_away <far>_its <far>_of <far>_off <far>_on
        <far>_plank <far>_ther <far>_to <far>_with <far>_youv <harm>_cos <harm>_knee <harm>_leg <harm>_straight
        <harm>_tuck <harm>_turn <ill>_knee <kit>_a <kit>_back <kit>_by <kit>_fift <kit>_hang <kit>_high
        <kit>_into <kit>_right <kit>_so <kit>_up <kit>_with <less>_kneel <less>_sit <less>_that <more>_a
        <more>_hand <more>_high <more>_over <more>_sid <more>_tight <more>_to <more>_we <move>_a <move>_around
        <move>_away <move>_baby <move>_bent <move>_exact <move>_for <move>_hold <move>_into <move>_kne
        <move>_like <move>_so <move>_up <not>_a <not>_bell <not>_below <not>_crat <not>_jump <not>_loll <not>_out
        <not>_the <not>_thumbles <not>_walk <not>_wander <num>_abreast <num>_and <num>_behind <num>_dumbbell
        <num>_hand <num>_if <num>_in <num>_kneel <num>_lan <num>_ring <num>_sit <num>_step <num>_to <pace>_jog
        <pace>_sid <part>_abov <part>_again <part>_and <part>_as <part>_behind <part>_blad <part>_bone <part>_cos
        <part>_distanc <part>_dug <part>_fift <part>_flat <part>_fold <part>_forward <part>_glu <part>_hang
        <part>_heel <part>_height <part>_hold <part>_hook <part>_however <part>_hug <part>_just <part>_length
        <part>_like <part>_lock <part>_loos <part>_on <part>_over <part>_plant <part>_proud <part>_rest
        <part>_soft <part>_spread <part>_the <part>_till <part>_tuck <part>_turn <part>_when <part>_wide
        <part>_with <place>_abov <place>_apart <place>_arm <place>_away <place>_bend <place>_by <place>_each
        <place>_flat <place>_for <place>_front <place>_gap <place>_hand <place>_heel <place>_hip <place>_in
        <place>_kne <place>_lan <place>_long <place>_onto <place>_over <place>_stanc <place>_straight
        <place>_support <place>_than <place>_the <place>_thre <place>_tipto <place>_top <place>_under
        <place>_until <place>_wrist <settle>_against <settle>_down <settle>_forward <settle>_hold <settle>_it
        <settle>_just <settle>_so <settle>_stiff <settle>_tall <settle>_the <settle>_them <settle>_up
        <settle>_yourself <swap>_and <swap>_bell <swap>_crat <swap>_just <swap>_manag <swap>_out <swap>_reach
        <swap>_them <swap>_thumbles <swap>_tied <swap>_walk <swap>_wander <swap>_with <take>_flat <take>_forward
        <take>_on <take>_one <take>_over <take>_plant <take>_when <take>_yourself a_<far> a_bucket a_bushwalk
        a_coffe a_coupl a_crat a_curb a_cushion a_decent a_few a_good a_mat a_portrait a_proper a_tabletop a_tea
        a_touch a_triangl a_wee about_<far> about_an about_your abov_your against_the against_your ahead_of
        all_<settle> all_<take> all_four an_<far> an_arm an_end an_inch and_<part> and_<take> and_all and_five
        and_head and_lay and_open and_shut and_someth and_spread and_the and_tip and_you and_your ankl_and
        are_<place> are_at are_go arm_<attend> arm_<wrong> arm_fold arm_hang arm_length arm_lock arm_straight
        arm_to around_and as_an as_the as_well at_<chat> at_about at_chest at_collarbon at_you at_your away_from
        baby_<place> baby_in back_<far> back_heel back_off back_till back_with backsid_and ball_<place>
        ball_between band_<do> band_<more> band_<place> band_up bar_<place> bar_in bar_on bar_with behind_your
        bel_again bell_a bell_in bell_stay below_the bent_<more> bent_<place> bent_up between_<num> between_your
        big_<harm> big_<kit> big_<part> big_plank bit_<far> bit_<place> bit_wider blad_pinch body_away
        bon_<attend> both_<part> both_feet both_hand both_the bottom_<chat> bottom_to box_<place> bucket_of
        bum_<pace> bum_hard butt_<far> butt_low by_ther can_manag can_reach cardigan_roll chest_<chat>
        chest_<far> chest_height chest_is chest_look chest_proud clos_to coffe_tabl collarbon_height cros_the
        cushion_and deadlift_it decent_<far> decent_height did_with done_<place> down_<far> down_by down_flat
        down_into down_onto down_to down_you down_your downward_dog drop_the duck_<place> duck_under dug_<place>
        dug_in each_<part> elbow_a elbow_first elbow_glu elbow_in elbow_on elbow_tuck end_<more> end_in end_up
        enough_that ever_<settle> ever_go exact_wher eye_under face_<place> face_the feat_<place> feat_together
        feet_<part> feet_<place> feet_a feet_over feet_plant feet_to feet_when find_your finger_<do>
        finger_<move> finger_forward finger_point finger_spread first_thi fist_<place> fist_and floor_proper
        foam_<do> foam_<move> foam_roll foot_<part> foot_back foot_behind foot_ever foot_flat foot_forward
        foot_on for_it for_ten for_thi forearm_down forward_<do> forward_<far> forward_<move> forward_<place>
        forward_till from_a from_downward from_the front_<far> front_<less> front_<num> front_edge front_half
        front_of further_than get_<more> get_<place> get_up get_yourself glov_<chat> go_against go_stiff go_to
        goe_<chat> goe_first good_knee good_strid guard_<more> guard_<place> guard_up half_kneel half_sit
        hand_<part> hand_<place> hand_as hand_at hand_hold hand_in hand_just hand_loos hand_over hand_rest
        hand_toward handl_by hang_down hang_from hang_off head_<far> head_height heav_on heaviest_pair heel_down
        heel_go heel_hang heel_off heel_on hing_over hip_<part> hip_<place> hip_back hip_distanc hook_<place>
        hook_at hug_<place> hug_baby hug_in hug_the i_want i_would in_<harm> in_<num> in_from in_front in_gent
        in_support in_thre in_under inch_off insid_<part> into_a into_it is_all is_forearm it_<do> it_<more>
        it_between it_out it_round it_short it_touch it_under it_up its_back its_got its_heav jog_<place> jog_in
        jump_for just_outsid keep_<settle> keep_<take> keep_a keep_hold kne_<far> kne_bent kne_to kne_under
        kne_when kne_wide knee_<attend> knee_and knee_bent knee_down knot_<place> knot_on knuckl_<place> lan_each
        lane_<num> lane_one lat_<place> lat_on lean_<part> lean_back leav_lane left_hand leg_behind leg_in
        leg_out length_from lie_<part> lie_<place> lie_back lift_away lift_them light_hand like_<chat> like_<num>
        like_pick like_ten like_train like_you like_your like_youv littl_<far> littl_<place> load_the
        loll_<attend> loll_as long_<kit> long_gap long_stanc make_a mat_is middl_of my_gym near_<part> near_hand
        neck_bone no_bell no_crat no_thumbles no_walk no_wander not_<place> not_a not_loll not_the noth_<place>
        noth_below of_<do> of_<kit> of_<move> of_it of_paint of_the off_the off_your on_it on_our on_tipto on_to
        on_top one_<attend> one_<kit> one_<part> one_behind one_each one_foot one_hand one_in one_ring onto_our
        onto_the open_the operat_<part> operat_leg or_<place> or_carpet other_<place> other_fist other_foot
        other_in other_on our_back out_<attend> out_<num> out_a out_in out_long out_two outsid_lan outsid_the
        outsid_your over_<far> over_<place> over_for over_the over_till over_wrist overhand_<move>
        overhand_<settle> overhand_grip pad_<place> palm_<place> palm_down palm_look palm_to pick_them
        pinch_together plank_it point_<part> point_at point_away point_back point_straight posti_bow push_<more>
        push_up quarter_<do> quarter_<move> quarter_squat reach_<place> rear_heel rest_<place> rest_on
        right_<place> right_down right_foot right_side ring_a ring_at ring_down ring_high ring_to round_<num>
        run_it same_<attend> same_<kit> same_<settle> same_<take> same_as same_start same_step second_<kit>
        seriou_peopl set_the shin_<place> sho_<place> sho_on sho_tied shoulder_blad shoulder_width shuffl_<place>
        shuffl_forward shut_it shut_the sid_<place> sid_out side_of sideway_<place> sideway_on sit_acros sit_tall
        slack_at sleev_roll slow_<pace> slow_jog smooth_sid so_it so_that sock_<place> sock_on soft_<part>
        someth_<chat> someth_you somewher_<place> somewher_between spread_<place> spread_out spread_the
        squeez_your stack_<place> stack_over stagger_your stand_in stand_on stand_with start_<attend>
        start_<place> stay_bent stay_exact stay_rack stead_to step_<more> step_into step_up stick_down
        stood_<attend> stood_tall stop_mid strap_<place> strap_down strap_right strid_away sure_the swap_your
        switch_kne take_<settle> take_<take> take_a take_hold take_them tall_kneel tall_off tall_on tea_tray
        ten_to than_that than_youd that_is that_knee that_you that_your the_<far> the_<harm> the_<ill> the_<move>
        the_<part> the_ankl the_arch the_backrest the_ball the_bell the_block the_broom the_broomstick the_camera
        the_ceil the_door the_edge the_feet the_finger the_front the_glov the_gras the_hing the_horn the_kne
        the_meat the_middl the_newspaper the_other the_plat the_roof the_scon the_seat the_seriou the_shin
        the_sofa the_split the_step the_strap the_tre the_wall them_ther ther_<not> ther_<swap> ther_no ther_off
        they_<settle> they_<take> though_someon thre_and thumb_<chat> thumb_<more> thumb_<place> thumb_round
        thumb_up thumbles_grip tie_it till_the till_ther till_your tip_your tipto_to to_<num> to_about to_be
        to_hip to_hold to_jump to_show to_the to_two toe_<place> toe_cos toe_tuck toe_turn together_<place>
        top_of train_track tre_<place> tre_behind triangl_with tuck_<place> tuck_in tuck_the turn_<place>
        turn_around turn_out two_<far> two_<kit> two_abreast two_dumbbell under_<part> under_shoulder until_youv
        up_<attend> up_<kit> up_a up_high up_over up_tight up_we upper_<part> upper_<place> upper_back
        us_<settle> us_all walk_tour wander_about want_anybod want_the we_get we_will weight_<num> weight_fift
        when_<chat> when_you whol_foot wide_for widen_the width_apart will_<less> will_<settle> will_<take>
        will_need would_<attend> would_like wrap_your wrist_under you_<do> you_are you_can you_did you_kneel
        you_stand you_swap you_switch you_unrack you_will your_<air> your_<chat> your_<kit> your_<move>
        your_<part> your_<place> your_armpit your_bel your_book your_bum your_chest your_deadlift your_end
        your_forehead your_front your_good your_heaviest your_left your_neck your_right your_spin your_strap
        your_tree your_tripod yourself_<place> youv_rock youv_stop
      `,
    ],
    [
      -0.2,
      `
        <attend>_as <attend>_down <attend>_feet <attend>_from <attend>_in <attend>_it <attend>_neck <attend>_the
        <attend>_ther <attend>_to <attend>_your <chat>_it <chat>_your <do>_down <do>_it <do>_off <do>_over
        <do>_that <do>_them <do>_through <far>_and <far>_you <far>_your <harm>_a <harm>_forward <harm>_side
        <kit>_acros <kit>_for <kit>_if <kit>_in <kit>_it <kit>_out <kit>_over <less>_to <more>_and <more>_the
        <move>_and <move>_down <move>_off <move>_one <move>_that <move>_the <move>_through <move>_your <num>_arm
        <num>_finger <num>_on <pace>_on <part>_are <part>_away <part>_down <part>_finish <part>_foot <part>_goe
        <part>_hover <part>_if <part>_in <part>_into <part>_land <part>_level <part>_only <part>_together
        <place>_between <place>_block <place>_closer <place>_down <place>_foot <place>_neck <place>_past
        <place>_toe <place>_toward <settle>_ther <swap>_a <swap>_it <swap>_round <swap>_the <swap>_under
        <take>_out <take>_thi <take>_your a_<do> a_<harm> a_<less> a_<pace> a_full a_plat a_spot a_time all_<num>
        anchor_<place> and_<attend> and_<do> and_<kit> and_<swap> and_back ankl_behind are_<less> arm_<far>
        as_you at_a back_<place> back_foot back_in bar_down bell_down bent_<part> besid_<chat> besid_you bit_in
        bottom_<part> chest_and chest_to chin_<place> chin_tuck com_<more> com_<place> com_up come_<part>
        come_<place> come_back cushion_<place> cushion_on do_it dont_<settle> down_<attend> down_<place>
        down_between down_on down_the elbow_<part> elbow_back elbow_up eye_on feet_away feet_down feet_out
        find_the finger_on foot_<more> foot_down foot_up for_<num> for_a for_your from_under front_<part>
        get_<attend> get_a go_<place> gone_<place> hair_<place> hand_<far> hand_<more> hand_finish hand_out
        hang_<place> hang_on have_a heel_in hip_<far> hip_and hip_forward hip_level hold_<place> hold_a
        hover_<place> hover_over if_the if_your in_closer in_it in_the in_to in_your into_your is_a it_<attend>
        it_<part> it_back it_down it_in its_<far> its_the keep_the keep_your kne_<do> kne_<settle> kne_and
        kne_down kne_out kne_straight kne_together knee_<far> knee_<more> knee_to knee_up land_<place> leg_<chat>
        leg_<do> leg_<far> leg_together let_the like_somebody like_ther line_from long_neck look_<place>
        loop_<more> loop_<place> loop_up mak_it make_it mid_<part> mid_shin neck_<attend> neck_<place> neck_long
        of_them on_<chat> on_<kit> on_a on_block on_each on_the one_<more> one_arm out_of out_on out_over out_to
        over_<harm> over_a over_to over_toe over_your past_your pillow_under put_the put_your rack_it rib_<place>
        rib_down ring_<move> roll_<place> round_your shoulder_<attend> shoulder_<more> shoulder_soft sit_<part>
        sit_back sit_to slid_<place> some_of spot_<place> spot_on squar_to stand_<more> stand_up start_with
        stay_<attend> stay_on step_in step_out stick_a take_the take_your that_<kit> that_the the_<air>
        the_<place> the_bar the_bent the_box the_chest the_cooler the_crat the_dumbbell the_ear the_foot the_heel
        the_kneecap the_loop the_mat the_rack the_ring the_side the_thigh the_top them_<place> them_down ther_a
        through_the tight_to till_you to_<chat> to_<part> to_<place> to_<settle> to_<swap> to_wher toe_<do>
        toe_forward toe_to touch_the toward_your two_<part> up_<place> up_the walk_<place> way_in weight_<place>
        whil_<chat> whol_<pace> whol_time with_a wrist_<place> wrist_flat you_want your_<attend> your_<far>
        your_<take> your_arm your_belt your_bottom your_ear your_face your_foot your_head your_heel your_lowest
        your_sho your_sid your_thumb your_weight
      `,
    ],
    [
      -0.4,
      `
        <far>_the <part>_stay <place>_of and_<place> stay_<place> the_arm the_way your_hand
      `,
    ],
  ],
  phrase: [
    [0.4, 'equipment-likely range-likely setup-hint setup-sure'],
    [0.2, 'equipment-hint execution-sure focus-hint range-hint setup-likely'],
    [
      -0.2,
      `
        breathing-likely caution-sure equipment-sure execution-hint fault-hint fault-sure harder-likely praise
        tempo-sure transitions
      `,
    ],
    [
      -0.4,
      `
        caution-hint chat dose_only easier-sure execution-likely focus-sure harder-sure tempo-likely
      `,
    ],
    [-0.6, 'breathing-sure empty_clauses'],
  ],
  start: [
    [0.6, '<part>_<place>'],
    [
      0.4,
      `
        <place>_<part> <swap>_<place> dont_jump forehead_down let_us let_us_come not_a_tightrop on_your set_the
        side_on
      `,
    ],
    [
      0.2,
      `
        <attend>_<kit> <attend>_<num> <attend>_<part> <chat>_<part> <do>_<place> <far>_<harm> <far>_<part>
        <far>_<place> <harm>_<part> <kit>_<more> <kit>_<place> <more>_<part> <move>_<place> <move>_<take>
        <not>_<place> <num>_<attend> <num>_<far> <num>_<kit> <num>_<part> <num>_<place> <pace>_<kit>
        <part>_<attend> <part>_<chat> <part>_<less> <part>_<num> <part>_<wrong> <place>_<harm> <place>_<kit>
        <place>_<move> <place>_<place> <settle>_<attend> <settle>_<part> <take>_<attend> <take>_<part>
        a_good_strid a_hair a_hand_off about_an about_an_inch an_inch_off arm_fold arm_hang arm_like arm_lock
        arm_straight arm_to arm_to_the arm_up arm_up_to back_heel back_heel_up back_knee_down back_off_the bar_in
        bar_in_the bar_on bar_on_the bell_a bend_your_knee between_your big_plank big_toe both_feet both_hand
        both_hand_on both_leg both_leg_down both_the both_the_same bottom_to bottom_to_the br_a_hand br_it_up
        br_the_end butt_low cardigan_roll cardigan_roll_up chang_your_feet chest_on chest_on_the chest_proud
        clos_to clos_to_your cros_the deadlift_it deadlift_it_up dont_jump_for down_flat down_you down_you_go
        drop_the drop_the_ring duck_under elbow_glu elbow_glu_to elbow_in elbow_on elbow_on_the fac_the face_the
        feat_together feet_a feet_flat find_your find_your_tripod finger_point finger_spread flat_on foam_roll
        from_downward from_downward_dog further_than further_than_youd get_up get_up_ther get_yourself go_stiff
        go_stiff_as guard_up half_kneel hand_and hand_as hand_in hand_just hand_just_outsid hand_loos hand_over
        hand_over_the hand_round_the heel_and heel_and_all heel_as_well heel_down heel_hang heel_hang_off heel_on
        heel_on_the hing_over hing_over_till hip_width hold_the_ring hook_at hook_at_about hug_baby hug_baby_in
        hug_the i_want i_want_the i_would i_would_like if_its_heav in_line in_line_with in_support in_the_arch
        it_touch its_a_decent its_got its_got_a jog_in keep_hold keep_them_ther kne_bent kne_soft kne_up
        kne_up_over kne_wide knot_on knot_on_the lat_on lean_back lean_back_on leav_lane leav_lane_one
        leav_the_other left_leg left_leg_in leg_long leg_out leg_stay leg_stay_down lie_back lift_away light_hand
        light_pair like_a like_a_bucket like_a_tabletop like_pick like_your like_your_go like_your_on like_youv
        like_youv_got like_youv_stop long_stanc make_sure_the near_hand no_bell no_crat no_slack no_thumbles
        no_thumbles_grip no_walk no_walk_tour no_wander no_wander_about not_a not_loll not_loll_as not_on
        not_on_the not_the not_the_toe not_your_neck on_your_back on_your_side one_behind one_each one_foot
        one_foot_on one_hand one_leg one_leg_out operat_leg operat_leg_goe or_carpet or_your_book
        other_elbow_first other_foot outsid_lan over_on over_on_your palm_down palm_to palm_to_the pick_them
        pick_them_up plank_it plank_it_is posti_bow pull_the_shoulder push_your_hip ring_a ring_at ring_high
        ring_up roll_in roll_in_from roll_to_it run_it run_it_down same_as same_as_the same_foot same_side
        same_start same_step sho_on sho_tied shoulder_blad shoulder_blad_pinch shoulder_down_away
        shoulder_over_wrist shuffl_forward shut_it side_and side_and_shut side_on_to sideway_on sink_into
        sink_into_a sit_down_into sit_tall smooth_sid smooth_sid_out sock_on soft_kne spread_out squeez_the_other
        squeez_your squeez_your_bum stagger_your stagger_your_feet stand_in start_from stay_at_your stay_bent
        stay_bent_over stay_exact stay_exact_wher stay_on stay_on_your step_into step_up stick_down stood_tall
        swap_your swap_your_feet swap_your_front switch_kne switch_kne_when take_a take_a_crat take_them
        take_thre_or tall_kneel that_knee that_knee_soft the_bell the_broom the_broom_handl the_other
        the_other_in the_top the_top_leg the_tre the_tre_behind the_tree the_two ther_no_slack thi_time
        thumb_round tie_it toe_at_ten toe_out_a toe_point_straight toe_tuck toe_turn toe_turn_out top_of tuck_the
        tuck_the_toe turn_around turn_your_body two_abreast two_dumbbell up_on up_we up_we_get walk_back_till
        walk_your_left we_will weight_on weight_on_the wider_than wider_than_you wrap_your you_are you_are_go
        you_make you_make_a you_round you_will_need your_bum your_heaviest your_heaviest_pair your_heel
        your_heel_go your_knuckl your_not_on your_tailbon
      `,
    ],
    [
      -0.2,
      `
        <air>_<place> <attend>_<attend> <chat>_<place> <chat>_<swap> <far>_<do> <far>_<move> <kit>_<move>
        <kit>_<part> <not>_<settle> <num>_<more> <part>_<far> <part>_<not> <part>_<settle> <part>_<take>
        <settle>_<more> back_to bar_down chin_tuck come_back come_up down_on_the elbow_back elbow_up eye_on
        eye_on_the feet_down feet_under feet_under_you hand_behind_the hand_finish hand_off hand_off_your
        hand_on_a hand_on_your hand_to hang_on hip_level hold_the hold_the_chair if_your keep_it keep_the
        keep_the_kne keep_your kne_down kne_out kne_straight kne_together kne_up_to leg_together long_neck
        look_at loop_up loop_up_abov neck_long onto_your_back over_to put_the put_your rib_down set_the_bell
        shoulder_soft sit_back sit_down_between sit_on sit_to_stand stand_up step_back stick_a take_the take_your
        toe_fac_front toe_forward turn_your_palm weight_in with_a wrist_flat you_can
      `,
    ],
    [-0.4, '<attend>_<place> hand_on'],
  ],
  word: [
    [0.8, 'palm'],
    [0.6, 'forehead hand ring stanc tall'],
    [
      0.4,
      `
        about against away behind bent end finger forearm from front hang height high hing jump kne kneel left
        long onto other our outsid pad roll same shin shut side slack so spread thumb tightrop touch tuck under
        wide
      `,
    ],
    [
      0.2,
      `
        abov abreast ahead alread also an anybod arch arm around as at baby backrest bar begin bell below between
        blanket bon broomstick bum bump bushwalk butt button by camera ceil clos coffe crat cros deadlift decent
        distanc done downward duck dug dumbbell each edge elbow exact fac feat feet few fift fingertip fist flat
        foam foot forward four fram gap glu good gras grip guard gym half heaviest heel hip hook hop horn hug
        inch into jog just knee knot knuckl kyle lan lane lat lean leg length lie light like lock loll ly manag
        mat meat near neck next no not noth now on one overhand pair pin pinch plank plant point portrait
        position post proper right roof run scon seat seriou set shuffl sideway sit sleev sock sofa soft somewher
        sort spin split stack stagger stand step strap strid support swap tabletop tailbon tea than them thumbles
        tie till tip tipto to tour tree triangl tripod turn unrack upper us walk well wider width will wrap you
        your yourself
      `,
    ],
    [
      -0.2,
      `
        0 a after and are befor belt besid box breath car chin closer com come cone cooler count curl dead dig
        dont down drag driv ease eight em empt eye fall feel fine float for full get go gone has have here hover
        in instead is it its jaw kiss kneecap last lead leav level lift look loop lower lowest mak march me mind
        minut more mov nice nobod nobody nose open past paus peel pleas pocket pres pull push quick quiet rack
        rais row second see shak should shov singl six skip slid snap some somebody spot squash stop straighten
        tail tak take tap th that the ther thes thigh thos tim use waist wait watch were wet what wher whil wing
      `,
    ],
    [-0.4, 'ear finish first higher keep land only out stay through way weight'],
    [-0.6, 'do if put'],
  ],
} as const satisfies CueWeights
