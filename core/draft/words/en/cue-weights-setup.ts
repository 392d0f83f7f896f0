/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind setup; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const SETUP_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [0.6, 'place'],
    [0.4, 'part settle take'],
    [0.2, 'far harm kit move'],
    [-0.2, 'do ill num wrong'],
    [-0.4, 'chat less more swap'],
    [-0.6, 'air not pace'],
  ],
  conditional: [[-0.4, 'yes']],
  first: [
    [0.8, 'palm'],
    [0.6, '<part> arm one'],
    [
      0.4,
      `
        <kit> <settle> bottom forearm forehead heel leg light like not other ring same set shin shuffl side tall
        thumb
      `,
    ],
    [
      0.2,
      `
        <harm> <ill> <pace> <place> <swap> <wrong> a about abov alway an ball bar bell big both box br butt
        cardigan clos cros drop duck fac feat finger foam from goe good guard half hand heaviest height hing hook
        hop hug knot knuckl kyle lac lat left let lie line load low mat mean middl next no noth now on onto
        operat outsid pad pinch plank position posti quarter roll round run sat sho shut sideway smooth sock soft
        spread squeez stagger stanc stand start stay strap tie tin tip toe tuck turn two walk whol wide wider
        wrap your
      `,
    ],
    [
      -0.2,
      `
        <far> <less> <not> and bel bent chair chin curl do dont down each ear ease eye fold foot get go handl hip
        if knee kneel land look loop lower mind neck only open out pres pull reach rest send shak short shoulder
        slid some somebody squash step stop straight straighten ten that ther thre till to up use watch youv
      `,
    ],
    [-0.4, '<air> <chat> back come hold its keep put wrist'],
  ],
  given: [
    [0.2, '<attend> <num> a door end heav one straight tall to'],
    [-0.2, '<chat> <kit> <part>'],
  ],
  last: [
    [0.4, 'bent bum edge height it kne lock on rail shoulder stanc tall them touch width'],
    [
      0.2,
      `
        abreast all also alway ankl arch are around away backrest befor bit block bone breastbon broomstick bump
        bushwalk camera ceil crat each everyth fenc fift for four fram front gras grip gym hair hang high hip
        hold horn jump knee kneel kyle lan light line long mean mid neck now pad paint pair pin plank portrait
        position post proud put ring rock roll roof round scon seat short slack sofa soft spin split spread squar
        squat stand straight strid support tabl tabletop tailbon ther think tight tightrop tour track tree
        triangl unrack wall well wide worktop wrap wrist you
      `,
    ],
    [
      -0.2,
      `
        0 again and arm ball bar blad body breath chest cooler door down ear fine first foot help higher hook
        kneecap level lift lower middl nice off one only out pleas pocket point rest right rop sideway sit so
        still strap thre through tim turn waist weight wider wing
      `,
    ],
    [-0.4, 'face feet heel leg toe way'],
  ],
  length: [
    [-0.2, '3-4 5-7 8-12'],
    [-0.6, '1-2'],
  ],
  pair: [
    [0.6, 'end_<place> foot_<place> leg_<place> under_the'],
    [
      0.4,
      `
        <chat>_us <far>_than <not>_on <not>_slack <part>_a <part>_behind <part>_bent <part>_point <part>_so
        <part>_under <part>_width <place>_our <place>_the <place>_till <place>_your <swap>_slack and_<settle>
        are_<place> at_your by_your dont_jump each_hand forearm_<place> forehead_<place> forehead_down from_the
        hand_and heel_<place> hip_width in_each it_<place> just_<place> knee_<place> knee_soft left_<part>
        leg_long let_us like_youv middl_of no_slack not_on off_the one_<place> other_<part> right_<part> set_the
        side_<place> side_on sideway_on start_<place> strap_<place> the_<harm> the_kne the_neck the_pad
        thi_<pace> thi_time to_be to_it us_come wider_than you_<swap> your_back your_chair your_shoulder
      `,
    ],
    [
      0.2,
      `
        0_<do> 0_lan 0_step <attend>_arm <attend>_band <attend>_fift <attend>_gap <attend>_hand <attend>_kne
        <attend>_kneel <attend>_off <attend>_on <attend>_one <attend>_pick <attend>_stanc <attend>_strid
        <attend>_ten <attend>_touch <attend>_train <attend>_under <attend>_well <attend>_youv <chat>_against
        <chat>_are <chat>_can <chat>_carry <chat>_did <chat>_fac <chat>_gym <chat>_hand <chat>_knee <chat>_kneel
        <chat>_leg <chat>_side <chat>_stand <chat>_stiff <chat>_strid <chat>_swap <chat>_switch <chat>_ten
        <chat>_the <chat>_unrack <chat>_would <do>_around <do>_away <do>_baby <do>_back <do>_for <do>_into
        <do>_kne <do>_like <do>_sideway <do>_so <do>_ten <do>_under <far>_away <far>_for <far>_its <far>_of
        <far>_off <far>_on <far>_pair <far>_plank <far>_ther <far>_to <far>_wider <harm>_cos <harm>_knee
        <harm>_leg <harm>_out <harm>_straight <harm>_tuck <harm>_turn <harm>_under <ill>_knee <ill>_your <kit>_a
        <kit>_at <kit>_back <kit>_by <kit>_fift <kit>_goe <kit>_hang <kit>_high <kit>_into <kit>_just <kit>_right
        <kit>_so <kit>_to <kit>_up <kit>_wher <less>_kneel <less>_sit <less>_that <less>_the <more>_a <more>_hand
        <more>_leg <more>_out <more>_over <more>_sid <more>_tight <more>_to <more>_we <move>_a <move>_around
        <move>_away <move>_baby <move>_behind <move>_bent <move>_exact <move>_for <move>_forward <move>_hold
        <move>_into <move>_kne <move>_like <move>_sideway <move>_so <move>_sure <move>_to <move>_up <not>_a
        <not>_bell <not>_below <not>_crat <not>_jump <not>_loll <not>_out <not>_the <not>_thumbles <not>_walk
        <not>_wander <num>_a <num>_abreast <num>_and <num>_behind <num>_dumbbell <num>_end <num>_foot <num>_hand
        <num>_if <num>_in <num>_kneel <num>_lan <num>_leg <num>_or <num>_ring <num>_sit <num>_step <num>_to
        <pace>_hand <pace>_jog <pace>_sid <pace>_to <part>_about <part>_abov <part>_again <part>_against
        <part>_an <part>_and <part>_as <part>_blad <part>_bone <part>_cos <part>_distanc <part>_dug <part>_fift
        <part>_flat <part>_fold <part>_forward <part>_glu <part>_hang <part>_heel <part>_height <part>_hold
        <part>_however <part>_hug <part>_just <part>_length <part>_lock <part>_loos <part>_make <part>_of
        <part>_on <part>_or <part>_over <part>_pin <part>_plant <part>_proud <part>_rest <part>_soft
        <part>_spread <part>_the <part>_till <part>_tuck <part>_turn <part>_upright <part>_when <part>_wide
        <part>_with <part>_wrap <place>_abov <place>_again <place>_against <place>_arm <place>_bend <place>_by
        <place>_each <place>_front <place>_gap <place>_hand <place>_heel <place>_hip <place>_in <place>_it
        <place>_kne <place>_lan <place>_lane <place>_long <place>_over <place>_stanc <place>_straight
        <place>_strid <place>_support <place>_ten <place>_than <place>_thre <place>_tipto <place>_top
        <place>_under <place>_underneath <place>_until <place>_we <settle>_against <settle>_at <settle>_forward
        <settle>_hold <settle>_into <settle>_it <settle>_just <settle>_round <settle>_so <settle>_stiff
        <settle>_tall <settle>_them <settle>_up <settle>_yourself <swap>_and <swap>_bell <swap>_catch <swap>_crat
        <swap>_handl <swap>_just <swap>_manag <swap>_out <swap>_reach <swap>_them <swap>_thumbles <swap>_tied
        <swap>_walk <swap>_wander <swap>_with <take>_flat <take>_forward <take>_go <take>_hip <take>_into
        <take>_just <take>_on <take>_over <take>_plant <take>_round <take>_stay <take>_when <take>_yourself
        a_<attend> a_<far> a_big a_bucket a_bushwalk a_coffe a_crat a_curb a_cushion a_decent a_few a_fraction
        a_good a_hand a_mat a_portrait a_proper a_shad a_shoe a_slow a_split a_step a_tabletop a_tall a_tea
        a_tightrop a_touch a_triangl a_wallpaper a_wee about_<far> about_<part> about_an about_your abov_your
        against_the against_your ahead_of all_<settle> all_<take> all_four along_the an_<far> an_<part> an_arm
        an_end an_inch and_<not> and_<part> and_<take> and_all and_five and_grab and_head and_kne and_lay
        and_open and_shut and_sit and_someth and_spread and_the and_tip and_you and_your ankl_and any_<do>
        any_<move> are_go arm_<attend> arm_<place> arm_<wrong> arm_fold arm_hang arm_length arm_lock arm_straight
        arm_to around_and as_the as_well at_<chat> at_about at_chest at_collarbon at_you away_from baby_<place>
        baby_in back_<far> back_<part> back_against back_heel back_of back_off back_straight back_till back_under
        back_with backsid_and ball_<place> ball_between band_<do> band_<more> band_<place> band_just band_up
        bar_<place> bar_off bar_on bar_with becaus_<attend> becaus_if behind_the behind_your bell_a bell_stay
        bent_<more> bent_<place> bent_up between_<num> big_<harm> big_<kit> big_<part> big_plank bit_<far>
        bit_<place> bit_wider blad_<place> blad_pinch blad_together body_away bon_<attend> bony_bit both_<part>
        both_feet both_hand both_the bottom_<chat> bottom_to box_<place> broom_<kit> broom_handl bucket_of
        bum_<pace> bum_hard butt_<far> butt_low by_ther can_<do> can_<move> can_catch can_just can_manag
        can_reach cardigan_roll catch_yourself chang_your chest_<chat> chest_<far> chest_height chest_high
        chest_is chest_look chest_proud chin_over clos_to coffe_tabl collarbon_height cros_the cros_your
        cushion_and deadlift_it decent_<far> decent_height did_with done_<place> dont_want door_a down_a down_by
        down_flat down_into down_now down_onto down_to down_you down_your downward_dog drop_the duck_<place>
        duck_under dug_<place> dug_in each_<part> elbow_a elbow_first elbow_glu elbow_in elbow_pin elbow_tuck
        end_<more> end_down end_in end_up enough_that ever_<settle> ever_go exact_wher eye_under fac_the
        face_<place> face_the feat_<place> feat_together feet_<part> feet_<place> feet_a feet_flat feet_hip
        feet_over feet_plant feet_when few_<do> few_<kit> few_step find_your finger_<do> finger_forward
        finger_point finger_spread fingertip_<place> fingertip_behind first_thi fist_<place> fist_and
        floor_<place> floor_proper foam_<do> foam_<move> foam_roll foot_<part> foot_back foot_behind foot_ever
        foot_flat foot_forward foot_in foot_on for_it for_ten for_thi forearm_down forehead_on forward_<do>
        forward_<far> forward_<move> forward_<place> forward_from forward_till fraction_from freez_ther from_a
        from_downward from_it front_<far> front_<less> front_<num> front_edge front_foot front_half front_of
        further_out further_than get_0 get_<more> get_it get_up get_yourself glov_<chat> glu_to go_against
        go_stiff go_to goe_<chat> good_knee good_side good_strid got_a grab_it grip_in guard_<more> guard_<place>
        guard_up half_<move> half_kneel half_sit hand_<attend> hand_<place> hand_as hand_at hand_hold hand_in
        hand_just hand_loos hand_on hand_over hand_rest hand_toward handl_<place> hang_<attend> hang_down
        hang_from hang_it hang_off hang_with head_<move> head_make heaviest_pair heel_<attend> heel_a heel_as
        heel_down heel_hang heel_off heel_on height_of hing_over hip_<part> hip_<place> hip_back hip_distanc
        hold_them hook_at hop_<place> hop_forward hug_<place> hug_baby hug_in hug_the i_<not> i_dont i_want
        i_would in_<harm> in_<num> in_front in_gent in_lane in_support in_thre in_under inch_off insid_<part>
        insid_leg into_a into_it is_all it_<do> it_<more> it_between it_is it_out it_round it_short it_sit
        it_slid it_touch it_under it_up its_back its_got its_heav its_ther its_tight jog_<place> jog_in jump_for
        just_hum just_outsid just_reach keep_<settle> keep_<take> keep_hold kne_<far> kne_<place> kne_an kne_bent
        kne_flop kne_soft kne_under kne_when kne_wide knee_<attend> knee_and knee_bent knee_down knee_of knit_to
        knot_<place> knot_on knuckl_<place> knuckl_to lac_<place> lac_down lan_each lane_<num> lane_one lane_six
        lat_<place> lat_on lean_<part> lean_a lean_back lean_right leav_lane left_hand left_leg leg_<attend>
        leg_behind leg_in leg_or leg_out leg_stay length_from lie_<part> lie_<place> lie_back lie_down lift_away
        lift_them light_<part> light_hand like_<chat> like_<num> like_<place> like_in like_pick like_ten
        like_train like_you like_your littl_<far> littl_<place> load_the loll_<attend> loll_as long_gap
        long_stanc long_strid low_pair make_a make_sure manag_for mat_is metr_to my_gym near_<attend> near_<part>
        near_hand neck_bone no_bell no_crat no_thumbles no_walk no_wander not_<place> not_a not_loll not_the
        noth_<place> noth_below of_<do> of_<kit> of_<move> of_it of_paint of_the on_it on_our on_tipto on_to
        on_top one_<attend> one_<kit> one_behind one_each one_end one_foot one_hand one_in one_leg one_ring
        onto_our onto_the operat_<part> operat_leg or_<attend> or_<num> or_<part> or_<place> or_a or_carpet
        or_four or_on other_<place> other_fist other_foot other_in other_on our_back out_<attend> out_<far>
        out_<num> out_a out_in out_long out_thi out_till out_two outsid_lan outsid_the outsid_your over_<far>
        over_<place> over_hip over_on over_the over_till over_wrist overhand_<move> overhand_<settle>
        overhand_grip pad_<place> palm_<place> palm_down palm_look palm_to pick_<more> pick_<place> pick_them
        pick_up pinch_together pinch_your point_<attend> point_<part> point_<place> point_at point_away
        point_back point_straight pop_it posti_bow push_<more> push_up push_your quarter_<do> quarter_<move>
        quarter_squat reach_<place> rest_<place> rest_on right_<place> right_back right_down right_foot
        right_side ring_<far> ring_a ring_at ring_down ring_high round_<num> round_ten run_it same_<kit>
        same_<settle> same_<take> same_as same_block same_side same_start sat_<attend> sat_<more> sat_tall sat_up
        second_<kit> seriou_peopl shad_<far> shad_<more> shad_further shin_<more> shin_<place> shin_to
        sho_<place> sho_on sho_tied shoulder_blad shoulder_height show_the shrug_on shuffl_<place> shuffl_forward
        shut_it shut_the sid_<place> sid_out side_of sideway_<place> sit_into slack_at sleev_roll slow_<pace>
        slow_jog smooth_sid so_it so_that sock_<place> sock_on soft_<part> soft_kne sol_of somebod_to
        someth_<chat> someth_you somewher_<place> somewher_between spread_<place> spread_out spread_the
        squeez_your stack_<place> stack_over stagger_your stand_in stand_on stand_with start_<attend> start_on
        stay_bent stay_exact stay_rack stead_to step_<more> step_away step_into step_up stick_down stood_<attend>
        stood_tall stop_mid straight_at strap_<more> strap_down strap_right strap_to strap_up strid_away sure_the
        swap_your switch_kne take_<settle> take_<take> take_a take_hold take_them take_thre tall_<num> tall_kneel
        tall_on tall_one tea_tray ten_to than_that than_youd that_<do> that_<move> that_been that_is that_knee
        that_you that_your the_<swap> the_ankl the_arch the_backrest the_ball the_bark the_bell the_bony
        the_broomstick the_camera the_ceil the_chair the_door the_edge the_end the_feet the_fenc the_finger
        the_finish the_front the_glov the_gras the_hing the_horn the_left the_meat the_newspaper the_other
        the_plat the_roof the_scon the_seat the_seriou the_shin the_shrug the_sid the_sofa the_split the_step
        the_strap the_tre the_tree the_wall them_ther ther_<not> ther_<swap> ther_daylight ther_for ther_no
        ther_off they_<settle> they_<take> thi_week though_someon thre_and thre_or thumb_<chat> thumb_<do>
        thumb_<more> thumb_<place> thumb_point thumb_round thumb_up thumb_wrap thumbles_grip tie_it till_your
        tiny_<do> tiny_<kit> tiny_step tip_over tipto_to to_<do> to_<num> to_about to_get to_hip to_hold to_jump
        to_show to_the to_two to_wind toe_<place> toe_cos toe_out toe_straight toe_tuck toe_turn together_<place>
        top_of touch_your toward_the towel_out train_track tre_<place> tre_behind triangl_with tuck_<num>
        tuck_<place> tuck_in tuck_one tuck_the turn_<place> turn_around turn_sideway two_<do> two_<far> two_<kit>
        two_abreast two_dumbbell two_step under_<part> under_shoulder until_youv up_<attend> up_<kit> up_<less>
        up_a up_over up_tight up_we upper_<part> upper_<place> upper_back us_<settle> us_all walk_tour
        wallpaper_tabl wander_about want_anybod want_somebod want_the we_will weight_<num> weight_fift what_its
        when_<chat> wher_it whol_foot wide_for widen_the will_<less> will_<settle> will_<take> wind_it with_<num>
        would_<attend> would_like wrap_your wrist_under you_<chat> you_<do> you_<settle> you_are you_can you_did
        you_kneel you_make you_stand you_swap you_switch you_unrack you_will youd_think your_<air> your_<chat>
        your_<kit> your_<move> your_<part> your_<place> your_armpit your_backsid your_bel your_book your_bum
        your_carry your_deadlift your_door your_end your_forehead your_good your_knee your_left your_neck
        your_right your_spin your_strap your_thigh your_tree your_tripod yourself_<place> yourself_<wrong>
        yourself_cheat youv_rock
      `,
    ],
    [
      -0.2,
      `
        0_<place> <attend>_a <attend>_as <attend>_down <attend>_feet <attend>_from <attend>_in <attend>_it
        <attend>_its <attend>_leg <attend>_neck <attend>_the <attend>_ther <attend>_they <attend>_to <chat>_a
        <chat>_it <chat>_on <chat>_sit <chat>_your <do>_about <do>_closer <do>_down <do>_off <do>_over <do>_that
        <do>_the <do>_them <do>_through <far>_and <far>_you <far>_your <harm>_a <harm>_forward <harm>_side
        <kit>_are <kit>_for <kit>_if <kit>_in <kit>_it <kit>_out <kit>_over <less>_to <more>_in <more>_the
        <more>_till <more>_under <move>_and <move>_both <move>_down <move>_it <move>_off <move>_that <move>_the
        <move>_through <move>_your <num>_back <num>_heel <num>_of <num>_on <num>_up <pace>_on <part>_are
        <part>_down <part>_finish <part>_goe <part>_if <part>_land <part>_level <part>_only <part>_open
        <part>_push <part>_roll <part>_stay <part>_together <place>_between <place>_block <place>_closer
        <place>_down <place>_like <place>_line <place>_neck <place>_past <place>_ther <place>_toe <place>_toward
        <settle>_again <settle>_off <settle>_on <settle>_ther <swap>_a <swap>_it <swap>_of <swap>_off
        <swap>_round <swap>_the <take>_away <take>_down <take>_out <take>_thi <take>_to <take>_your <wrong>_back
        a_<do> a_<harm> a_<pace> a_<settle> a_chair a_full a_moment a_plat all_<num> anchor_<place> and_<attend>
        and_<chat> and_<do> and_<kit> and_<swap> and_back and_down and_let ankl_behind are_<less> are_tied
        arm_<chat> arm_<do> arm_<far> arm_<part> arm_and arm_back as_a as_you at_<num> at_a back_<more>
        back_<place> back_on bar_down bar_stay bell_down bent_<part> besid_<chat> besid_you bit_in bottom_<part>
        by_the can_<settle> can_<take> chest_<more> chest_and chest_to chin_<place> chin_tuck com_<more>
        com_<place> com_up come_<part> come_<place> come_back cros_<num> cross_<place> cushion_<place> cushion_on
        do_it dont_<settle> down_<attend> down_and down_at down_between down_the each_<num> each_arm each_one
        elbow_<part> elbow_back elbow_down eye_on feet_away feet_down find_the finger_on finish_<place>
        foot_<more> foot_down foot_up for_<num> for_a for_two for_your forward_a from_<place> from_under
        front_<part> front_knee get_<attend> get_a get_off get_your go_<place> gone_<place> hair_<place>
        hand_<far> hand_<more> hand_<move> hand_<wrong> hand_cross hand_finish hand_out hand_stay hand_under
        hang_<place> hang_on head_<attend> heel_<far> heel_in hip_and hip_forward hip_level hold_<place> hold_a
        if_the if_your if_youv in_closer in_the in_to in_your into_the into_your is_<less> is_a is_the
        it_<attend> it_<move> it_<part> it_back it_down it_in its_<far> its_the keep_the keep_your kne_<move>
        kne_<settle> kne_and kne_down kne_out kne_straight knee_<do> knee_<more> knee_straight knee_to knee_up
        land_<place> lean_forward leav_your leg_<do> leg_<far> leg_together let_it let_the light_<place> like_an
        line_from littl_<kit> long_<part> long_neck look_<place> loop_<more> loop_<place> loop_up make_it
        mid_<part> mid_shin neck_<attend> neck_<place> neck_long on_<chat> on_<kit> on_a on_block on_the
        one_<more> one_heel or_<do> or_<settle> other_way out_on out_over over_<harm> over_a over_to over_toe
        over_your pair_of past_your put_the put_your rack_it rib_<place> rib_down ring_<move> roll_<place>
        round_your shoulder_<attend> shoulder_are shoulder_now shoulder_soft sit_<part> sit_back sit_to
        slid_<place> slid_your soft_<take> some_of spot_<place> spot_on squar_to stand_<more> stand_right
        stand_up start_with stay_on step_in stick_a take_one take_the take_your that_<kit> that_the the_<air>
        the_<place> the_bar the_bent the_big the_bottom the_box the_cooler the_crat the_dumbbell the_ear the_good
        the_kneecap the_mat the_rack the_ring the_same the_start the_thigh the_top the_whol them_<place>
        them_down ther_a they_<move> through_the tight_to till_it till_you to_<chat> to_<part> to_<place>
        to_<settle> to_<swap> to_just to_shoulder to_wher toe_<do> toe_<far> toe_forward toe_to touch_the
        toward_your two_<part> under_each under_them until_your up_<place> up_the up_till walk_<place> want_it
        way_in weight_<place> weight_in whil_<chat> whol_<pace> whol_time with_a with_it wrap_<place> wrist_flat
        you_<move> you_want your_<attend> your_<far> your_<take> your_arm your_belt your_bottom your_ear
        your_face your_foot your_head your_other your_sid your_thumb your_weight
      `,
    ],
    [
      -0.4,
      `
        <far>_the <place>_of and_<place> out_of stay_<place> the_arm the_foot the_way your_hand your_heel
      `,
    ],
  ],
  phrase: [
    [0.4, 'equipment-likely setup-hint setup-sure'],
    [0.2, 'equipment-hint range-hint range-likely setup-likely tempo-hint'],
    [
      -0.2,
      `
        breathing-likely equipment-sure execution-hint fault-hint fault-sure harder-likely praise tempo-sure
        transitions
      `,
    ],
    [-0.4, 'caution-hint chat dose_only execution-likely focus-sure tempo-likely'],
    [-0.6, 'breathing-sure easier-sure empty_clauses harder-sure'],
  ],
  start: [
    [0.6, '<part>_<place>'],
    [
      0.4,
      `
        <kit>_<more> <kit>_<place> <place>_<part> <swap>_<place> dont_jump forehead_down hand_in heel_down let_us
        let_us_come not_a_tightrop on_your set_the side_on
      `,
    ],
    [
      0.2,
      `
        0_step_out <attend>_<kit> <attend>_<num> <chat>_<part> <chat>_<take> <do>_<place> <far>_<harm>
        <far>_<part> <far>_<place> <harm>_<part> <kit>_<chat> <more>_<part> <move>_<place> <move>_<take>
        <not>_<place> <num>_<attend> <num>_<kit> <num>_<part> <num>_<place> <pace>_<kit> <part>_<attend>
        <part>_<chat> <part>_<num> <part>_<wrong> <place>_<do> <place>_<harm> <place>_<kit> <place>_<move>
        <place>_<place> <settle>_<attend> <settle>_<part> <settle>_<settle> <settle>_<take> <take>_<part>
        <take>_<place> <wrong>_<place> a_good_strid a_hair a_hand a_hand_off a_touch about_an about_an_inch
        abov_the_kne an_inch_off arm_fold arm_hang arm_lock arm_out arm_straight arm_to arm_to_the arm_up
        arm_up_to back_heel back_heel_up back_knee_down back_off_the ball_of band_round bar_in bar_in_the bar_off
        bar_off_the bar_on bar_on_the bell_a bend_your_knee between_your big_plank big_toe big_toe_together
        both_feet both_feet_on both_hand both_hand_on both_leg_down both_the both_the_same bottom_to
        bottom_to_the br_it_up br_the_end br_the_shin br_your_feet br_your_leg bum_back bum_back_to butt_low
        cardigan_roll cardigan_roll_up chang_your chang_your_feet chest_high chest_over chest_proud chin_over
        clos_to clos_to_your cros_the cros_your deadlift_it deadlift_it_up dont_jump_for down_flat down_on_your
        down_you down_you_go drop_the duck_under elbow_at_shoulder elbow_glu elbow_glu_to elbow_in elbow_on_the
        elbow_pin fac_the face_the feat_together feet_a feet_flat find_your find_your_tripod finger_point
        finger_spread fingertip_behind fingertip_behind_your finish_at finish_at_the flat_on flat_on_the
        foam_roll forearm_down from_downward from_downward_dog from_the_hang further_than further_than_youd
        get_up get_up_ther get_your_feet get_yourself go_stiff go_stiff_as grab_it guard_up half_kneel hand_and
        hand_as hand_just hand_just_outsid hand_loos hand_over hand_over_the hand_round_the head_on heel_a
        heel_and heel_and_all heel_as heel_as_well heel_hang heel_hang_off heel_on heel_on_the hing_over
        hing_over_till hip_width hold_the_ring hold_them hook_at hook_at_about hop_forward hop_forward_till
        hug_baby hug_baby_in hug_the i_dont i_dont_want i_want i_want_the i_would i_would_like if_its_heav
        if_your_door in_line in_line_with in_support in_the_arch it_sit it_touch it_touch_your its_a_decent
        its_got its_got_a jog_in keep_hold keep_them_ther kne_bent kne_flop kne_soft kne_under kne_up kne_up_over
        kne_wide knee_of knee_of_the knot_on knot_on_the knuckl_to knuckl_to_the lac_down lat_on lean_back
        lean_back_on leav_lane leav_lane_one leav_the left_leg left_leg_in leg_long leg_out leg_stay
        leg_stay_down let_your_feet lie_back lie_down lift_away light_hand like_a like_a_bucket like_a_tabletop
        like_pick like_your like_your_go like_your_on like_youv like_youv_got like_youv_stop long_stanc
        long_strid low_pair make_sure make_sure_the middl_of middl_of_the near_hand near_hand_on no_bell no_crat
        no_slack no_thumbles no_thumbles_grip no_walk no_walk_tour no_wander no_wander_about not_a not_loll
        not_loll_as not_on not_on_the not_the not_the_toe not_too_far not_your_neck off_the on_your_back
        on_your_side one_behind one_each one_foot one_leg one_leg_out one_on_your one_ring operat_leg
        operat_leg_first operat_leg_goe opposit_arm_forward or_a or_carpet or_your_book other_elbow_first
        other_foot other_foot_off other_foot_out outsid_lan over_on over_on_your palm_down palm_forward palm_to
        palm_to_the pick_them pick_them_up pinch_your pinch_your_shoulder posti_bow pull_the_shoulder push_your
        push_your_hip quarter_squat rib_knit_to ring_a ring_at ring_at_your ring_high ring_up roll_in
        roll_in_from roll_to_it round_ten round_ten_on run_it run_it_down same_as same_as_the same_block
        same_foot same_side same_start sat_tall sat_up sho_tied shoulder_blad shoulder_blad_pinch
        shoulder_down_away shoulder_over_wrist shuffl_forward shut_it side_and side_and_shut side_on_to
        sideway_on sit_down_into smooth_sid smooth_sid_out sock_on soft_kne spread_out squeez_the_other
        squeez_your squeez_your_backsid squeez_your_bum stagger_your stagger_your_feet stand_in stand_on_the
        start_at_the stay_at_your stay_bent stay_bent_over stay_exact stay_exact_wher stay_on step_into step_up
        step_up_off stick_down stood_tall swap_your swap_your_feet swap_your_front switch_kne switch_kne_when
        take_a take_a_crat take_hold take_some_weight take_them take_thre take_thre_or tall_kneel that_knee
        that_knee_soft that_what_its the_band_just the_other the_other_in the_top_leg the_tre the_tre_behind
        the_tree the_two ther_no_slack thi_time thigh_together thumb_point thumb_round thumb_wrap tie_it
        tiny_step tip_forward tip_forward_from toe_at_ten toe_out toe_out_a toe_point_straight toe_straight
        toe_tuck toe_turn toe_turn_out tuck_one tuck_the tuck_the_toe turn_around turn_sideway turn_sideway_on
        turn_the_palm turn_your_back turn_your_body two_abreast two_dumbbell two_step_back up_on up_on_your up_we
        up_we_get walk_back_till walk_your_left we_will weight_on weight_on_the wider_than wider_than_you
        wrap_your you_are you_are_go you_can_catch you_get_0 you_make you_make_a you_round youll_want_somebod
        your_back your_bum your_heel_go your_knuckl your_not_on your_tailbon
      `,
    ],
    [
      -0.2,
      `
        <air>_<place> <attend>_<attend> <chat>_<chat> <chat>_<far> <do>_<more> <far>_<attend> <far>_<do>
        <far>_<move> <harm>_<do> <kit>_<move> <kit>_<part> <not>_<settle> <num>_<more> <part>_<do> <part>_<far>
        <part>_<not> <part>_<settle> <part>_<take> <place>_<attend> <settle>_<far> arm_are arm_back back_on
        back_to bar_down chin_tuck come_back come_up down_on_the elbow_back elbow_down eye_on eye_on_the
        feet_down feet_on feet_on_the feet_together feet_under feet_under_you get_your hand_behind_the hand_cross
        hand_cross_on hand_finish hand_off hand_off_your hand_on_a hand_on_your hand_to hand_under
        hand_under_your hang_on hip_level hip_squar_to hold_a hold_the its_the keep_it keep_the keep_the_kne
        keep_your kne_down kne_in kne_out kne_straight kne_to lean_on leg_together long_neck look_at look_at_the
        loop_up loop_up_abov neck_long not_on_your over_to over_to_the put_it_down put_the put_your rack_it
        rib_down roll_on set_the_bell shoulder_over_your shoulder_soft sit_down_between sit_on sit_on_your
        sit_to_stand sit_up_tall slid_your stand_right stand_right_up stand_up step_back stick_a take_one
        take_the take_your that_the ther_a till_your toe_forward toe_point_forward toe_to toe_together
        turn_your_palm up_onto weight_in weight_in_the weight_in_your wrist_flat
      `,
    ],
    [-0.4, '<attend>_<place> hand_on'],
  ],
  word: [
    [0.8, 'palm'],
    [0.6, 'against forearm forehead hand height pad ring stanc tall'],
    [
      0.4,
      `
        about abov ahead away behind bent edge end finger forward from front half hang jump kne kneel left light
        long other our outsid pin plank point roll same shin shuffl side slack so soft spread strap thumb touch
        tuck under wide
      `,
    ],
    [
      0.2,
      `
        abreast alread also an arch arm around at backrest bar begin bell between blanket bon bone bony breastbon
        broom broomstick bum bump bushwalk butt button camera carry catch ceil chair clos crat cros deadlift
        decent downward duck dug dumbbell each elbow exact fac feat feet fenc few fift fingertip fist flat foam
        foot four fraction fram glu good gras grip guard gym heaviest heel high hing hip hop horn hug inch into
        jog just knee knot knuckl kyle lac lan lane lat lean leg length lie like line lock loll low ly manag mat
        meat metr near neck next not noth now on one onto op or otherwis overhand pair pinch plant portrait
        position post proper proud quarter rail reach right roof round run sat scon seat seriou set shad sho
        shoulder shrug shut sideway sit sleev smooth sock sofa sol someth somewher sort spin split squat stack
        stagger stand start stead straight strid stuck support swap tabl tabletop tailbon tea than them throat
        thumbles tie tightrop till tip tipto tour tree triangl tripod underneath unrack upper us wallpaper well
        whit widen wider width wrap you your yourself
      `,
    ],
    [
      -0.2,
      `
        0 a after and are befor belt besid body breath brush car chest chin closer com come cone cooler count
        curl dig dont down drag drift driv ease eight em empt even eye fall fifteen fine float follow full get go
        gone had halfwa hamstring has have head hear help here home hover in instead is it its jaw kiss kneecap
        last lead leap level lift lot lower mak march mind minut moment more mov nice nose old own paus peel
        pleas pocket pres pull quick quiet rack rais rop row saw say second see send shak should singl skip slid
        slow snap some somebody spot squash stag stool stop straighten tak take taller tap th that the then thes
        they thigh third thos tim twent use very waist wait watch were wet whil wing work
      `,
    ],
    [
      -0.4,
      `
        ear feel finish first for higher keep land look only out past push stay way weight
      `,
    ],
    [-0.6, 'do if put through'],
  ],
} as const satisfies CueWeights
