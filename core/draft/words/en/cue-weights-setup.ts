/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind setup; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const SETUP_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [0.6, 'place'],
    [0.4, 'part take'],
    [0.2, 'far harm kit move settle'],
    [-0.2, 'more num'],
    [-0.4, 'chat do less swap wrong'],
    [-0.6, 'air not pace'],
  ],
  conditional: [[-0.4, 'yes']],
  first: [
    [0.8, 'palm'],
    [0.6, 'arm forearm heel one same thumb'],
    [
      0.4,
      `
        <kit> <part> <settle> bottom box finger forehead half holder lac light like not other plank ring shin
        shuffl shut sideway tall top
      `,
    ],
    [
      0.2,
      `
        <harm> <ill> <swap> a about abov alway an bag bar barbell behind bell bend big biggest body broom bum
        butt check clos cros drop duck dumbbell elbow end fac face feat fingertip first fist forward from further
        garter good guard hand heaviest height held hing hook hop hug it knuckl lat left leg let lie line load
        low mat mean meet middl no noth now onto operat pad parallel pinch pleas position posti quarter real roll
        round saddl sat set sho side sink smooth sock soft spread squeez stagger stand start stay still strap tie
        tight tin tip toe touch tuck turn two under walk wedg whol wider with
      `,
    ],
    [
      -0.2,
      `
        <attend> <chat> <far> <more> <not> away balanc be bent breath chair chest chin collarbon cushion do driv
        each ear ease even eye feel fold foot if in jump knee kneecap land level loop loos lower mind neck nobody
        only park pull push quiet rack reach rest rib send shak shoulder shov sit slow small snap some somebody
        squash squat step stop straight straighten ten that the ther theyr thi thre till to tum up use watch
        youll youv
      `,
    ],
    [-0.4, '<air> back come dont down get go hip hold keep look out wrist'],
    [-0.6, 'its put'],
  ],
  given: [
    [0.2, '<attend> heav insid is palm'],
    [-0.2, '<part> a back in'],
  ],
  last: [
    [0.6, 'bent on stanc tall'],
    [
      0.4,
      `
        are bum elbow height it kne plank rail round seat shoulder squat tight touch width
      `,
    ],
    [
      0.2,
      `
        abreast all alread also alway apart around away backrest backsid bag barbell bark bend board bone bony
        bottl breastbon brick broomstick bump bushwalk camera case ceil chair choic crat cross curb dumbbell each
        edge everyth fenc fift finger fingertip flat for four fram front garter get gras ground gym hair hand
        hang hard hip hold holder horn jog jump key knee kneel lac lan line lock long meat mid mood nearest neck
        now other pad pair pillow pin plant portrait position post proud rib rim rock roll roof rope rucksack run
        scarecrow scon shap short sid slack slid slop soft sog spin split spread squar stand stead straight strid
        support tabl tabletop tailbon ten tension the them thi think throat tightrop top tour tow towel track
        tree triangl tuck two underneath unlock unrack wide worktop wrap wrist you
      `,
    ],
    [
      -0.2,
      `
        0 again arm ball belt between blad body breath down ear face fine first foot forward grumbl handl heav
        help here higher hook hover inch instead jaw kneecap land lazy left level loop lower middl nice off one
        only pocket point pol pres quiet row shut slow still strap stretch thre through tim time turn weight wing
      `,
    ],
    [-0.4, 'feet heel leg toe way'],
  ],
  length: [
    [-0.2, '5-7'],
    [-0.4, '8-12'],
    [-0.6, '1-2'],
  ],
  pair: [
    [0.8, 'leg_<place>'],
    [0.6, 'end_<place> forearm_<place> in_each side_on to_it under_the your_back'],
    [
      0.4,
      `
        <chat>_are <chat>_side <chat>_us <far>_plank <far>_than <kit>_at <more>_to <move>_up <not>_jump <not>_on
        <num>_hand <num>_step <part>_a <part>_an <part>_behind <part>_bent <part>_flat <part>_hang <part>_just
        <part>_length <part>_plant <part>_point <part>_so <part>_under <part>_width <place>_hip <place>_our
        <place>_than <place>_till <place>_your <swap>_out against_the all_four and_all and_your are_<place>
        arm_to at_your big_<harm> by_your dont_jump each_hand end_in fac_the face_the foot_<place> foot_forward
        forehead_<place> forehead_down from_the heel_<place> heel_hang hip_width inch_off it_<place> knee_soft
        lac_<place> lean_<part> lean_back left_<part> leg_<attend> leg_long let_us middl_of neck_bone not_on
        off_the one_<place> pad_<place> palm_<place> palm_down point_at right_<part> same_side shin_<place>
        shuffl_<place> side_<place> sideway_<place> sideway_on start_<place> the_<harm> the_door the_finger
        the_neck thi_<pace> thi_time to_be toe_<place> top_of under_<part> us_come wider_than you_<swap> you_are
        your_chair
      `,
    ],
    [
      0.2,
      `
        0_<do> 0_<kit> 0_<swap> 0_hand 0_kilo 0_lan 0_or 0_rail 0_step <air>_again <air>_befor <air>_button
        <attend>_arm <attend>_band <attend>_by <attend>_fift <attend>_gap <attend>_kne <attend>_knee
        <attend>_kneel <attend>_level <attend>_loop <attend>_off <attend>_pick <attend>_piec <attend>_sit
        <attend>_ski <attend>_stanc <attend>_strid <attend>_ten <attend>_touch <attend>_train <attend>_under
        <attend>_well <attend>_wide <attend>_with <chat>_against <chat>_and <chat>_bony <chat>_both <chat>_can
        <chat>_carry <chat>_did <chat>_dont <chat>_get <chat>_go <chat>_gym <chat>_hand <chat>_knee <chat>_kneel
        <chat>_leg <chat>_long <chat>_position <chat>_stead <chat>_stood <chat>_strid <chat>_swap <chat>_switch
        <chat>_unrack <chat>_would <do>_around <do>_away <do>_between <do>_everyth <do>_hand <do>_into
        <do>_sideway <do>_so <do>_still <do>_ten <do>_than <do>_under <far>_again <far>_away <far>_bar <far>_bend
        <far>_enough <far>_its <far>_of <far>_off <far>_on <far>_out <far>_them <far>_ther <far>_to <far>_wider
        <harm>_cos <harm>_goe <harm>_knee <harm>_leg <harm>_out <harm>_them <harm>_tuck <harm>_turn <ill>_knee
        <ill>_them <kit>_a <kit>_about <kit>_back <kit>_between <kit>_by <kit>_fift <kit>_goe <kit>_half
        <kit>_hang <kit>_high <kit>_into <kit>_just <kit>_or <kit>_right <kit>_so <kit>_thi <kit>_under
        <kit>_underneath <kit>_up <kit>_wher <kit>_your <less>_a <less>_break <less>_kneel <less>_sit
        <less>_squat <less>_than <less>_that <more>_abov <more>_floor <more>_hand <more>_high <more>_leg
        <more>_like <more>_over <more>_shap <more>_sid <more>_tight <more>_we <move>_a <move>_arm <move>_around
        <move>_away <move>_everyth <move>_exact <move>_forward <move>_hand <move>_hold <move>_into <move>_right
        <move>_sideway <move>_so <move>_sure <move>_than <move>_to <not>_a <not>_below <not>_crat <not>_just
        <not>_lac <not>_leg <not>_loll <not>_mind <not>_one <not>_slack <not>_the <not>_ther <not>_thumbles
        <not>_touch <not>_walk <not>_wander <num>_a <num>_behind <num>_dumbbell <num>_end <num>_foot <num>_if
        <num>_in <num>_knee <num>_kneel <num>_lan <num>_or <num>_ring <num>_sit <num>_squat <num>_turn
        <pace>_floor <pace>_hand <pace>_loop <pace>_sid <pace>_stanc <pace>_stand <part>_again <part>_against
        <part>_and <part>_apart <part>_as <part>_blad <part>_bone <part>_button <part>_clos <part>_cos
        <part>_distanc <part>_dug <part>_fift <part>_fold <part>_forward <part>_glu <part>_heel <part>_height
        <part>_hold <part>_hook <part>_however <part>_hug <part>_lift <part>_like <part>_lock <part>_loos
        <part>_near <part>_of <part>_out <part>_outsid <part>_over <part>_pin <part>_rest <part>_shoulder
        <part>_soft <part>_stack <part>_stuck <part>_the <part>_till <part>_tuck <part>_turn <part>_up
        <part>_when <part>_wide <part>_wrap <place>_0 <place>_abov <place>_again <place>_against <place>_arm
        <place>_at <place>_bend <place>_both <place>_by <place>_each <place>_enough <place>_for <place>_from
        <place>_front <place>_gap <place>_heel <place>_high <place>_in <place>_it <place>_kne <place>_knee
        <place>_lane <place>_long <place>_on <place>_one <place>_over <place>_piec <place>_shap <place>_shoulder
        <place>_so <place>_stanc <place>_strid <place>_support <place>_the <place>_thre <place>_tipto
        <place>_under <place>_underneath <place>_until <place>_we <settle>_against <settle>_at <settle>_away
        <settle>_down <settle>_forward <settle>_goe <settle>_hold <settle>_it <settle>_just <settle>_long
        <settle>_low <settle>_next <settle>_over <settle>_right <settle>_stuck <settle>_the <settle>_them
        <settle>_up <settle>_wher <settle>_with <settle>_yourself <swap>_and <swap>_between <swap>_catch
        <swap>_crat <swap>_handl <swap>_in <swap>_just <swap>_manag <swap>_reach <swap>_slack <swap>_them
        <swap>_thumbles <swap>_tied <swap>_walk <swap>_wander <swap>_with <take>_all <take>_behind <take>_both
        <take>_flat <take>_float <take>_go <take>_goe <take>_just <take>_low <take>_next <take>_on <take>_over
        <take>_plant <take>_stack <take>_stay <take>_still <take>_stuck <take>_when <take>_yourself a_0 a_<far>
        a_<move> a_<swap> a_bell a_bit a_bucket a_bushwalk a_case a_crat a_curb a_cushion a_decent a_few
        a_fraction a_garter a_good a_hand a_hot a_long a_mat a_mood a_portrait a_pres a_quarter a_scarecrow
        a_shad a_slop a_step a_strid a_tabl a_tabletop a_tea a_tightrop a_touch a_triangl a_wallpaper a_wee
        about_<attend> about_<far> about_<part> about_a about_an about_as about_fort about_ninet abov_your
        against_your ahead_of all_<settle> all_<take> all_your along_the alread_all an_<far> an_<part> an_arm
        an_end an_inch an_iron and_<not> and_<part> and_<settle> and_<take> and_face and_five and_grab and_head
        and_high and_kne and_lay and_long and_not and_one and_open and_point and_shoulder and_someth and_spread
        and_the and_tip and_you ankl_and ankl_over are_<attend> are_go are_hang are_straight arm_<attend>
        arm_<place> arm_<wrong> arm_fold arm_hang arm_length arm_lock arm_out arm_straight as_the as_well as_wide
        at_<chat> at_about at_chest at_collarbon at_me away_<far> away_from away_till back_<far> back_<part>
        back_against back_heel back_of back_straight back_till back_to back_under backsid_and bag_<place>
        ball_<place> ball_between band_<chat> band_<do> band_<more> band_<place> band_just band_round band_up
        bar_<place> bar_at bar_from bar_on bar_with be_tow becaus_<attend> becaus_if behind_your bel_again
        bel_befor bel_button bell_a bell_and bell_in bell_stay bell_upsid below_them bend_<place> bend_your
        bent_<more> bent_<place> bent_at bent_up between_<num> between_your big_<kit> big_<part> big_plank
        biggest_<settle> biggest_<take> biggest_hold bit_<attend> bit_<far> bit_<place> bit_forward bit_wider
        blad_<place> blad_pinch blad_together body_<attend> body_away body_like bon_<attend> bon_heav both_<part>
        both_<take> both_feet both_hand bottom_<place> bottom_forward bottom_to box_<place> box_under
        box_underneath break_it broom_<kit> broom_handl bucket_of bum_<pace> bum_hard bum_off bump_<place>
        butt_<part> butt_<place> butt_back by_ther calf_and can_<do> can_<move> can_catch can_just can_manag
        can_reach cant_<less> cant_<move> cant_break cardigan_roll carry_a catch_yourself chair_<place> chair_thi
        check_the chest_<far> chest_height chest_is chest_look chin_over clos_to collarbon_height come_<chat>
        come_<do> come_round cros_it cros_the cushion_and deadlift_it decent_<far> decent_height did_with
        done_<place> dont_<do> dont_<move> dont_bend dont_mind down_<chat> down_by down_into down_now down_on
        down_your downward_dog drift_off drop_in drop_the duck_<place> duck_under dug_<place> dug_in each_<part>
        either_side elbow_<place> elbow_first elbow_glu elbow_in elbow_just elbow_level elbow_open elbow_pin
        elbow_tuck end_rest enough_that esky_<far> esky_full ever_<chat> ever_<settle> ever_go eye_<far>
        eye_level eye_under face_<more> face_to face_up feat_<place> feat_together feet_<move> feet_<part>
        feet_<place> feet_a feet_flat feet_float feet_plant feet_stack feet_when few_<do> few_<kit> few_centimetr
        few_step find_your finger_<do> finger_<move> finger_forward finger_point finger_spread fingertip_<place>
        fingertip_behind first_<settle> first_position first_thi fist_<place> fist_and five_<do> five_<far>
        five_<kit> five_degre five_step flat_<take> flat_feet floor_<less> floor_<pace> floor_<place> floor_hard
        floor_proper foot_flat foot_in foot_on foot_out for_it for_ten for_thi forearm_<attend> forearm_down
        forehead_on forward_<do> forward_<far> forward_<move> forward_<place> forward_from forward_of forward_on
        forward_till four_finger fraction_from freez_ther from_a from_downward from_it front_<far> front_<less>
        front_<num> front_edge front_foot front_half front_thigh further_out garter_stay get_<more> get_down
        get_it get_stuck get_up glov_<chat> glu_down go_against go_to goe_<chat> good_<part> good_knee good_side
        good_strid got_a got_the grab_it grip_in guard_<more> guard_<place> guard_up half_<do> half_<move>
        half_kneel half_sit half_squat hand_<place> hand_and hand_as hand_at hand_away hand_hold hand_in
        hand_just hand_loos hand_on hand_past hand_rest handl_<place> handl_on hang_<attend> hang_from hang_off
        hang_with head_<move> head_and head_lift head_make head_on heav_one heaviest_pair heel_<attend>
        heel_<settle> heel_as heel_clos heel_down heel_dug heel_on held_<place> held_against high_bar high_plank
        hing_<place> hing_over hip_<part> hip_<place> hip_back hip_distanc hold_both hold_hammer hold_them
        hook_<place> hook_at hook_over hop_<more> hop_<place> hop_forward hop_up hot_water hug_<place> hug_in
        hug_it hug_the i_<not> i_dont i_would if_it ill_come in_<harm> in_<num> in_at in_from in_front in_lane
        in_one in_thre in_under insid_<num> insid_<part> insid_leg insid_one into_a into_it is_all it_<do>
        it_<harm> it_<more> it_between it_climb it_come it_is it_out it_run it_short it_slid it_slip it_steadi
        it_touch it_under it_up it_wher its_<place> its_back its_com its_got its_heav its_sog its_ther its_tight
        jam_<more> jam_up jog_<place> jog_in jump_at jump_for just_<far> just_<less> just_<place> just_enough
        just_hum just_off just_outsid just_reach just_your keep_<settle> keep_<take> keep_a keep_hold kne_<far>
        kne_<place> kne_a kne_an kne_bent kne_flop kne_not kne_soft kne_to kne_under kne_want kne_wide
        knee_<place> knee_and knee_are knee_bent knee_down knee_of knit_to knot_<place> knot_goe knuckl_<place>
        knuckl_to lac_down lan_each lane_<num> lat_<place> lat_on lean_<place> lean_a lean_right leav_lane
        left_hand left_leg left_side leg_<more> leg_<move> leg_behind leg_in leg_or leg_out leg_stay leg_up
        length_away length_from lie_<part> lie_<place> lie_back lie_down lift_away lift_them light_<part>
        light_<settle> light_hand light_loop like_<chat> like_<num> like_a like_in like_pick like_ski like_ten
        like_train like_you like_your like_youv littl_<far> littl_<less> littl_<move> littl_<place> littl_bend
        littl_lower load_the loll_<attend> loll_as long_<place> long_by long_gap long_stanc long_strid loop_goe
        loop_wher low_pair lower_than make_a make_sure manag_for mat_is mat_or meet_the my_gym near_<attend>
        near_<part> near_hand near_the newspaper_tuck next_to nice_and no_crat no_leg no_slack no_thumbles
        no_walk no_wander not_<place> not_a not_be not_just not_lac not_loll not_one not_the not_ther not_touch
        noth_<place> noth_below noth_hang of_<do> of_<kit> of_a of_both of_it of_one of_paint of_tension of_the
        off_whil on_<part> on_it on_our on_them on_tipto on_to one_<part> one_a one_at one_behind one_each
        one_end one_foot one_hand one_in one_knee one_ring one_turn onto_our onto_the open_<part> open_hand
        open_the operat_<part> operat_leg opposit_arm or_0 or_<attend> or_<num> or_<part> or_<place> or_a or_bent
        or_four or_palm or_stand or_youll other_<part> other_<place> other_end other_fist other_foot other_in
        other_on other_one our_back our_sid out_<attend> out_<num> out_a out_ahead out_in out_long out_thi
        out_two outsid_the over_<far> over_<place> over_both over_hip over_the over_till overhand_<move>
        overhand_<settle> overhand_grip pad_on pal_goe palm_look palm_to pencil_in piano_key pick_them pillow_out
        pin_to pinch_them pinch_together plant_and plat_hug point_<attend> point_<place> point_straight posti_bow
        pres_<more> pres_up pres_ups push_your quarter_<do> quarter_<move> quarter_squat reach_<place> reach_on
        reach_with real_<far> real_<place> real_wide rear_<part> rear_heel rest_<place> rest_on right_<place>
        right_back ring_<far> ring_a ring_about ring_at ring_down ring_high ring_to round_both round_ten run_it
        same_<kit> same_<part> same_<swap> same_<take> same_block same_start sat_<attend> sat_<more> sat_tall
        sat_up second_<kit> set_the shelf_for shin_<far> shin_<more> shin_level sho_tied shoulder_<place>
        shoulder_blad shoulder_height shoulder_over shoulder_under shoulder_up shoulder_width show_the
        shrug_<place> shrug_on shuffl_forward shuffl_to shut_it shut_the side_nearest side_of sink_down
        sit_forward sit_with sleev_roll slip_off slop_goe slow_<pace> slow_jog small_<move> small_of smooth_floor
        smooth_sid so_it so_that sock_<place> sock_on soft_<part> soft_kne soft_knee sol_of somebod_to
        someth_<chat> someth_<place> someth_soft someth_you somewher_<place> somewher_between spe_<place>
        spe_down split_stanc spread_<place> spread_out spread_the squeez_everyth squeez_your stack_<place>
        stack_over stagger_your stand_<attend> stand_if stand_in stand_on stand_still stand_with start_<attend>
        start_in start_on stay_exact stead_to steadi_<chat> steadi_it steadi_you step_<more> step_away step_into
        step_under step_up stick_down stood_<place> stood_on stood_tall stop_mid straddl_the straight_<more>
        straight_arm straight_at straight_piec straight_up strap_<place> strap_down strap_right strap_to
        stretch_your strid_<place> strid_away sure_the sw_your swap_your switch_arm tail_<chat> tail_first
        take_<settle> take_<take> take_a take_hold take_thre tall_kneel tea_tray ten_to than_that than_youd
        that_<chat> that_<do> that_<move> that_been that_is that_knee that_what that_you that_your the_<ill>
        the_<settle> the_<swap> the_ankl the_backrest the_bark the_bench the_bony the_brak the_broomstick
        the_bump the_camera the_ceil the_cushion the_edge the_esky the_feet the_fenc the_front the_glov the_gras
        the_heav the_hip the_horn the_insid the_kne the_left the_lid the_meat the_newspaper the_other the_pad
        the_palm the_punch the_rail the_rim the_roof the_scon the_seriou the_shin the_shrug the_sid the_slack
        the_slop the_split the_step the_strap the_toe the_tree the_wall the_wedg the_wrist them_ther ther_<not>
        ther_<swap> ther_alread ther_daylight ther_for ther_no ther_off they_<take> thi_week though_someon
        thre_and thre_or through_between thumb_<chat> thumb_<do> thumb_<place> thumb_point thumb_round thumb_wrap
        thumbles_grip tie_it till_<chat> till_its till_your time_<settle> time_<swap> time_<take> time_stand
        tin_<place> tiny_<do> tiny_<kit> tiny_step tip_<place> tip_over tip_to tipto_to to_<num> to_<take> to_get
        to_help to_hip to_hold to_jump to_lift to_reach to_show to_the to_tickl to_two to_you to_your toe_cos
        toe_out toe_tuck toe_turn together_and touch_them touch_your toward_<chat> toward_you towel_under
        train_track tre_<place> tre_behind tuck_<part> tuck_back tuck_in tuck_the turn_<place> turn_around
        turn_sideway two_<do> two_<far> two_<kit> two_dumbbell two_step under_hip under_shoulder under_your
        until_it until_youv up_<attend> up_<kit> up_<less> up_a up_abov up_again up_high up_like up_over up_shap
        up_tight up_we upper_<place> upper_back us_<settle> us_all wall_skirt wallpaper_tabl wander_about
        want_anybod want_somebod way_down we_are we_get we_will weight_<num> weight_at weight_fift well_<part>
        well_back what_its wher_it wher_you whil_it whit_<attend> whit_<settle> whit_line whol_foot wide_<far>
        wide_<less> wide_for widen_the will_<less> will_<settle> will_<take> wind_it with_<num> with_<place>
        with_both with_flat with_noth with_someth would_<attend> would_like wrap_your wrist_under you_<chat>
        you_<do> you_<settle> you_can you_did you_get you_go you_kneel you_stand you_swap you_switch you_unrack
        you_will youd_<attend> youd_think youll_drift your_<chat> your_<harm> your_<kit> your_<more> your_<move>
        your_<pace> your_<part> your_backsid your_bag your_bel your_bony your_book your_bum your_carry your_chest
        your_choic your_deadlift your_go your_good your_hip your_is your_knee your_knuckl your_lap your_left
        your_neck your_right your_run your_shoulder your_spe your_spin your_stead your_stood your_strap
        your_tailbon your_tripod your_whol yourself_<place> yourself_<wrong> yourself_cheat youv_rock youv_stop
      `,
    ],
    [
      -0.2,
      `
        0_<place> <attend>_ahead <attend>_and <attend>_as <attend>_back <attend>_feet <attend>_from <attend>_it
        <attend>_just <attend>_leg <attend>_like <attend>_the <attend>_ther <attend>_they <attend>_to
        <attend>_your <chat>_do <chat>_feel <chat>_have <chat>_it <chat>_on <chat>_over <chat>_your <do>_about
        <do>_acros <do>_off <do>_on <do>_over <do>_straight <do>_the <do>_them <do>_ther <do>_through <far>_and
        <far>_back <far>_if <far>_stand <far>_your <harm>_a <harm>_forward <harm>_one <kit>_again <kit>_are
        <kit>_behind <kit>_come <kit>_for <kit>_height <kit>_if <kit>_it <kit>_like <kit>_over <kit>_touch
        <less>_on <more>_at <more>_one <more>_the <more>_toward <more>_your <move>_and <move>_both <move>_down
        <move>_it <move>_that <move>_the <move>_through <move>_your <not>_up <num>_arm <num>_heel <num>_of
        <num>_on <num>_out <num>_second <num>_up <pace>_on <pace>_toe <part>_between <part>_brush <part>_can
        <part>_com <part>_end <part>_face <part>_finish <part>_first <part>_follow <part>_get <part>_go
        <part>_goe <part>_hover <part>_land <part>_only <part>_push <part>_roll <part>_stay <part>_stop
        <part>_straight <part>_toe <part>_wider <place>_befor <place>_between <place>_down <place>_like
        <place>_line <place>_of <place>_off <place>_out <place>_past <place>_side <place>_sideway <place>_stay
        <place>_ther <place>_to <place>_toe <place>_toward <place>_wide <settle>_again <settle>_ever <settle>_in
        <settle>_off <settle>_on <settle>_someth <settle>_ther <settle>_two <swap>_a <swap>_behind <swap>_it
        <swap>_not <swap>_of <swap>_off <swap>_on <swap>_round <swap>_up <take>_again <take>_ever <take>_for
        <take>_like <take>_out <take>_someth <take>_up <take>_wider <wrong>_back a_<do> a_<harm> a_<less>
        a_<pace> a_<settle> a_bar a_chair a_door a_full a_moment a_newspaper a_tray all_<num> all_<place> all_of
        and_<chat> and_<do> and_<swap> and_back and_come and_just and_let and_low ankl_<far> ankl_height
        are_<less> are_just arm_<chat> arm_<do> arm_<move> arm_<part> arm_<settle> arm_and arm_back as_a as_you
        at_<num> at_a at_ankl at_the back_<do> back_<more> back_<place> back_down back_on back_up bag_of bar_down
        bar_stay bar_to bell_<more> bell_down bell_up bend_the bent_<part> bit_in both_arm both_leg both_sid
        bottom_<part> br_the brush_your can_<settle> car_<place> car_on chest_and chest_to chin_<place> chin_tuck
        closer_<place> com_<place> come_<part> come_<place> come_back cross_<place> curl_<place> cushion_<place>
        cushion_on do_it dont_<settle> down_<attend> down_at down_between down_in down_like down_the each_<do>
        each_<move> each_<num> each_arm each_one ear_<place> elbow_<far> elbow_<part> elbow_and elbow_at
        elbow_back elbow_down ever_<pace> eye_on feel_it feet_away feet_down feet_in feet_up feet_wider find_the
        finger_on finish_<place> flat_<attend> foot_<more> foot_down foot_under foot_up for_<num> for_a for_two
        for_your forward_a free_hand from_<place> from_under front_<part> front_heel front_knee get_<attend>
        get_a get_off get_your go_<place> go_back go_on gone_<place> grab_someth hair_<place> hand_<more>
        hand_<move> hand_finish hand_forward hand_out hand_up hang_<place> hang_on head_<attend> head_to
        heel_<far> heel_under help_it hip_<settle> hip_forward hip_level hip_under hold_<place> hold_a hold_the
        hug_your if_the if_ther if_they if_youv in_<attend> in_<far> in_by in_it in_the in_to insid_of insid_the
        into_the into_your is_<less> is_a it_<attend> it_<move> it_<part> it_back it_down it_goe it_open it_with
        its_<far> its_a its_the just_<settle> just_<take> keep_the keep_your kne_<move> kne_and kne_down
        kne_straight knee_<do> knee_<far> knee_<more> knee_straight knee_up kneel_<more> kneel_up land_<place>
        land_under leav_your leg_<do> leg_<far> leg_only leg_together let_the lie_on lift_the line_from
        littl_<kit> long_<part> long_and look_<place> loop_<place> loop_a loop_on low_<part> mak_it make_it
        mid_<part> mid_shin near_stand neck_<attend> neck_<place> neck_long newspaper_under not_<far> not_<more>
        not_at of_them on_<num> on_each on_two one_<chat> one_<more> one_arm one_finger one_heel onto_your
        open_<place> open_acros operat_side or_<settle> other_side other_way out_on out_over out_sideway out_the
        out_ther out_to out_wide over_<harm> over_a over_to over_toe past_your pillow_behind pillow_under
        pull_your push_<place> put_the put_them put_your rack_it rib_<place> rib_down right_<more> right_up
        ring_come ring_in roll_<place> round_<place> round_your same_th second_toe shav_your shin_<move>
        shoulder_<attend> shoulder_are shoulder_level shoulder_soft side_<do> side_by side_plank side_to
        singl_<part> sit_<part> sit_back sit_between sit_to sit_your slid_<place> small_<kit> soft_<take> some_of
        spot_<place> spot_on squar_to squeez_<place> stand_<more> stand_<place> stand_it stand_right start_with
        stay_<far> stay_<place> step_down step_in step_over straight_ahead tail_<place> tail_under take_one
        take_the take_your that_<kit> that_a that_the the_<air> the_<place> the_air the_belt the_bend the_big
        the_bottom the_box the_dumbbell the_ear the_first the_good the_hand the_knee the_kneecap the_long
        the_loop the_mat the_operat the_ring the_same the_side the_spot the_thigh the_top the_way the_weight
        the_whol them_<place> them_down ther_a through_the through_your thumb_<part> thumb_back till_it to_<part>
        to_<place> to_<settle> to_<swap> to_just to_shoulder to_side to_wher toe_<far> toe_<move> toe_<settle>
        toe_forward toe_to top_hip touch_the toward_your tuck_behind tuck_under under_<chat> under_each
        under_them under_you until_your up_<chat> up_at up_the up_toward up_your wall_<place> want_it way_in
        weight_<place> weight_in when_the wher_the whil_<chat> whil_your whol_<pace> with_the wrap_<chat>
        wrap_<do> wrap_<place> wrap_it wrap_round wrist_<attend> wrist_<place> wrist_flat you_<move> you_feel
        you_have you_want your_<far> your_<settle> your_<take> your_arm your_belt your_bottom your_elbow
        your_face your_finger your_fist your_head your_heel your_lac your_other your_palm your_pocket your_pol
        your_second your_sho your_thumb your_weight
      `,
    ],
    [
      -0.4,
      `
        <far>_the <part>_are <part>_down <swap>_the <take>_your and_<place> if_your kne_out out_of stand_up
        the_arm the_foot toe_<do> your_hand
      `,
    ],
    [-0.6, '<part>_if'],
  ],
  phrase: [
    [0.4, 'equipment-likely range-likely setup-hint setup-likely setup-sure'],
    [0.2, 'equipment-hint range-hint tempo-hint'],
    [
      -0.2,
      `
        breathing-likely caution-sure execution-hint fault-hint fault-sure focus-sure harder-hint harder-likely
        transitions
      `,
    ],
    [-0.4, 'caution-hint chat execution-likely praise tempo-likely tempo-sure'],
    [-0.6, 'breathing-sure dose_only easier-sure empty_clauses'],
    [-0.8, 'harder-sure'],
  ],
  start: [
    [0.6, '<swap>_<place>'],
    [
      0.4,
      `
        <kit>_<more> <kit>_<place> <move>_<place> <not>_<place> <pace>_<kit> <part>_<place> arm_to arm_to_the
        both_hand dont_jump feet_flat forehead_down hand_in heel_down hip_width kne_up_over let_us let_us_come
        not_a_tightrop other_foot palm_down same_side side_on stand_on_the
      `,
    ],
    [
      0.2,
      `
        0_hand 0_lan 0_lan_each 0_step 0_step_out <attend>_<far> <attend>_<kit> <attend>_<num> <chat>_<do>
        <chat>_<not> <chat>_<part> <chat>_<settle> <chat>_<take> <do>_<place> <far>_<harm> <far>_<place>
        <harm>_<part> <kit>_<chat> <more>_<part> <move>_<take> <not>_<move> <num>_<far> <num>_<kit> <num>_<part>
        <part>_<attend> <part>_<more> <part>_<num> <part>_<part> <part>_<wrong> <place>_<chat> <place>_<harm>
        <place>_<kit> <place>_<less> <place>_<part> <place>_<place> <settle>_<settle> <settle>_<take>
        <take>_<move> <take>_<part> <take>_<place> <wrong>_<place> a_bit a_few_centimetr a_good_strid a_hair
        a_hand_off a_littl_lower a_small a_touch a_wee a_wee_bend about_an about_an_inch abov_the_kne abov_your
        abov_your_kne all_four all_your all_your_weight along_the_gras alread_all alread_all_four an_end
        an_end_in an_inch_off arm_fold arm_hang arm_length arm_lock arm_straight arm_up arm_up_to back_heel
        back_heel_up back_knee_down back_off_the ball_of ball_of_the band_round bar_off bar_off_the bar_on
        bar_on_the bell_a bell_in bend_your bend_your_kne bend_your_knee between_your big_plank big_toe
        big_toe_together biggest_hold body_like body_like_a both_feet_on both_hand_on both_leg_down both_the_same
        bottom_forward bottom_forward_a bottom_to bottom_to_the box_underneath br_a br_a_hand br_it_up br_the_end
        br_the_shin br_your_feet br_your_leg bum_back bum_back_to bum_off bum_off_your butt_back cardigan_roll
        cardigan_roll_up chang_your_feet check_the check_the_brak check_the_lid chest_over chest_tip_to chin_over
        chin_over_your clos_to clos_to_your come_to come_to_the cros_the cros_your curl_the curl_the_head
        curl_your_head deadlift_it deadlift_it_up dont_jump_at dont_jump_for dont_let_go down_on down_on_your
        down_you_go drop_in drop_the drop_the_ring duck_under dumbbell_in elbow_at_shoulder elbow_bent elbow_glu
        elbow_glu_to elbow_in elbow_just elbow_level elbow_level_with elbow_on_the elbow_open elbow_out elbow_pin
        elbow_pin_to elbow_stay_on elbow_tuck elbow_under_your end_in end_in_your ever_go eye_level fac_the
        face_the feat_together feet_a feet_plant feet_stack feet_stay_put find_your find_your_tripod finger_point
        finger_spread fingertip_behind fingertip_behind_your finish_at finish_at_the first_position five_step
        flat_on_your float_the_kne forearm_down forearm_up forehead_on forehead_on_the four_finger from_downward
        from_downward_dog from_the_hang front_foot further_out garter_stay garter_stay_on get_up get_up_ther
        go_ahead_and good_knee good_knee_bent good_side grab_it guard_up half_a half_a_squat half_sit hand_as
        hand_at_your hand_by hand_by_your hand_just hand_just_outsid hand_loos hand_over_the hand_past
        hand_past_the hand_round_the hang_with head_lift head_on head_on_your heel_a heel_a_hand heel_and
        heel_and_all heel_as heel_as_well heel_clos heel_dug heel_dug_in heel_hang heel_hang_off heel_on
        heel_on_the held_against high_plank hing_over hing_over_till hip_up hold_both hold_both_end hold_it_wher
        hold_the_ring hold_them hook_at hook_at_about hop_forward hop_forward_till hop_up hug_it hug_the i_dont
        i_dont_mind i_want_the i_would i_would_like if_its_heav if_your_is ill_come ill_come_round in_0
        in_the_leg it_slip it_steadi it_steadi_it it_steadi_you it_touch it_touch_your its_a_decent its_got
        its_got_a its_your_knuckl jog_in keep_hold keep_them_ther kne_an kne_an_inch kne_bent kne_flop kne_over
        kne_over_hip kne_soft kne_under kne_up kne_wide knee_and knee_and_hand knee_of knee_of_the knee_soft
        knuckl_to knuckl_to_the lac_down lat_on lean_a_fraction lean_back lean_right lean_right_back leav_lane
        left_arm_out left_leg left_leg_in leg_a_bit leg_out leg_stay leg_stay_down let_it_come let_the_leg
        let_your_feet lie_back lie_down lift_away light_hand light_loop like_a like_a_bucket like_a_garter
        like_a_rucksack like_a_tabl like_piano_key like_pick like_the_esky like_your_go like_your_on like_youv
        like_youv_got like_youv_stop long_band long_by long_stanc long_strid lose_the_towel low_as low_as_you
        low_pair make_sure make_sure_the meet_the meet_the_punch middl_of middl_of_the near_hand near_hand_on
        nice_and nice_and_long no_bell no_crat no_leg no_thumbles no_thumbles_grip no_walk no_wander
        no_wander_about not_a not_a_fist not_a_rope not_just not_just_your not_lac not_loll not_loll_as not_on
        not_on_a not_on_the not_one not_the not_the_bony not_the_toe not_too_far not_touch not_your_neck noth_at
        noth_at_all noth_hang noth_hang_off off_the on_the_mat on_the_meat on_you on_you_get on_your on_your_back
        on_your_front one_behind one_each one_end one_end_rest one_foot one_foot_forward one_foot_in one_in
        one_leg_back one_leg_out one_ring open_the_finger operat_leg operat_leg_first operat_leg_goe opposit_arm
        opposit_arm_in or_a or_a_bell or_bent or_bent_up or_one_in or_the_door or_youll or_youll_drift
        or_your_book other_elbow_first other_foot_off other_foot_out other_knee_bent over_on over_on_your
        palm_look palm_to palm_to_the pick_them pick_them_up pillow_out pillow_out_of pinch_them pinch_them_by
        pop_it_between posti_bow pull_the_shoulder push_your push_your_hip put_it_around quarter_squat
        rib_knit_to ring_a ring_about ring_at ring_at_your ring_high ring_up roll_in roll_in_from roll_it_up
        roll_over_onto roll_to_it roll_your_towel round_ten round_ten_on run_it run_it_down same_as same_as_the
        same_block same_plac same_start sat_tall sat_up set_the shin_level sho_on sho_tied shoulder_blad
        shoulder_blad_in shoulder_blad_pinch shoulder_down_away shoulder_over shuffl_forward shuffl_to
        shuffl_to_the shut_it shut_the side_on_to sideway_on sink_down sit_back_an sit_down_into sit_forward
        sit_up slid_your_bum smooth_floor smooth_sid sock_on soft_kne soft_knee sol_of split_stanc spread_out
        spread_the_finger squeez_everyth squeez_the_other squeez_your squeez_your_backsid stagger_your
        stagger_your_feet stand_in stand_on stand_still stand_tall start_at_the start_from start_in start_in_the
        stay_exact step_back_till step_back_until step_into step_under step_up step_up_off stick_down
        stick_down_your straddl_the stretch_your stretch_your_leg sw_your sw_your_leg swap_your swap_your_feet
        swap_your_front take_a take_a_crat take_thre take_thre_or take_your_spe tall_kneel that_knee
        that_knee_soft that_what that_what_its the_band_just the_calf_and the_kne_not the_knot the_knot_goe
        the_other the_other_end the_other_in the_tre the_tre_behind the_tree the_two the_wrist the_wrist_stay
        ther_daylight ther_daylight_under they_dont_bend thi_time_stand thumb_point thumb_round thumb_wrap tie_it
        tie_it_in tight_bel_befor tiny_step tip_forward tip_forward_from tip_forward_till tip_over to_hold
        toe_at_ten toe_out toe_out_a toe_point_straight toe_tuck toe_turn toe_turn_out top_of top_of_a touch_them
        toward_you tuck_the tuck_the_toe turn_around turn_sideway turn_your_back turn_your_body two_dumbbell
        two_hand two_step_back under_the under_your_kne up_on up_we up_we_get walk_back_till walk_back_to walk_it
        walk_it_out walk_the_feet walk_your_left we_are we_will weight_at weight_in_at weight_on weight_on_the
        whol_foot whol_foot_on wider_than wider_than_you wrap_your wrist_under you_are you_are_go you_can_catch
        you_go you_round you_stand youll_want_somebod your_back your_back_to your_bum your_choic your_heel_go
        your_kne_want your_not_be your_not_on your_one_straight your_pal your_pal_goe your_stead your_tailbon
      `,
    ],
    [
      -0.2,
      `
        <air>_<place> <attend>_<attend> <chat>_<far> <chat>_<place> <do>_<more> <far>_<do> <harm>_<do>
        <harm>_<far> <kit>_<part> <not>_<settle> <not>_<take> <num>_<more> <part>_<do> <part>_<far> <part>_<harm>
        <part>_<ill> <part>_<not> <part>_<settle> <part>_<swap> <part>_<take> <place>_<attend> <place>_<more>
        arm_and arm_are arm_back arm_out_wide back_on bar_down bar_to bend_your_elbow both_arm by_the chin_tuck
        come_back come_down come_up cushion_on cushion_on_the cushion_under_the down_to elbow_back elbow_down
        elbow_in_by elbow_tuck_under elbow_up_at eye_on eye_on_the feet_down feet_in feet_on feet_on_the feet_out
        feet_under feet_under_you feet_wider find_the free_hand free_hand_on front_knee get_your hand_behind_the
        hand_finish hand_in_the hand_off hand_off_your hand_round_your hand_to hand_under_your hang_on
        heel_and_toe heel_under heel_under_your heel_up hip_forward hip_level hip_squar_to hold_a hold_the
        hug_your its_the keep_it keep_the keep_the_kne kne_down kne_out kne_straight kne_to kne_up_to knee_bent
        knee_over knee_over_the knee_straight knee_up kneel_up lean_in left_foot_forward leg_long_and leg_up_the
        look_at loop_on neck_long not_at not_on_it not_on_your one_finger over_the over_to pick_up_one
        put_it_down put_the put_your rack_it rib_down ring_in ring_in_by roll_on same_th set_the_bell
        shoulder_over_your shoulder_soft sit_back sit_between sit_between_your sit_down_between sit_down_to
        sit_tall_on sit_to sit_to_stand sit_your sit_your_hip stand_on_one stand_right stand_right_up stand_up
        start_with start_with_the step_back step_down take_one take_the take_your that_a that_the ther_a
        thumb_back toe_fac_front toe_forward toe_out_of toe_to toe_to_the toe_together tuck_behind
        tuck_behind_your tuck_it turn_your_palm up_onto weight_in weight_in_the weight_in_your with_a_dumbbell
        wrap_it wrist_flat
      `,
    ],
    [-0.4, '<attend>_<place> hand_on hand_on_your'],
  ],
  word: [
    [0.8, 'pad palm'],
    [0.6, 'against end forearm forehead hang ring side stanc tall'],
    [
      0.4,
      `
        abov alread bag behind bent bump butt edge fac finger foot forward from front good half hand heaviest
        height hug kne kneel lac light long other our pin plank plant point position roll same shin shuffl
        sideway slack so soft split spread squat strap strid thumb tip touch tuck under wide width
      `,
    ],
    [
      0.2,
      `
        about abreast ahead also alway an anchor arm around at away backrest backsid barbell begin bel bell
        between blad blanket board bon bone bony both bow brak broom broomstick bum bushwalk button camera cant
        carry case catch ceil chair check choic clos cord crat cros curb deadlift decent desk did distanc
        downward duck dug dumbbell each either elbow enough esky exact face feat feet fenc few fift fingertip
        fist flat foam four fraction fram garter glu grab gras grip guard gym held high hing hip hold holder hook
        hop horn how jog jump just key knee knot knuckl lan lane lat lean left leg length lid lie like line lock
        loll low ly manag mat meat middl mood nearest neck next not noth now off on one onto op or otherwis
        outsid over overhand pair parallel piano pillow pinch portrait post proud quarter rail rear right rim
        roof round run saddl sat scarecrow scon seat seriou set shad shap sho shoulder shrug shut sid sit skirt
        sleev slip slop smooth sock sog someth somewher spe spin stack stagger stand start stead steadi stood
        stuck suitcas support tabl tabletop tailbon tea than them throat thumbles tickl tie tight tightrop till
        tin tipto together tour towel track tree triangl tripod underneath unlock unrack us wallpaper we wedg
        well widen wider wind worktop wrap you your yourself
      `,
    ],
    [
      -0.2,
      `
        a after and ankl are band book bor bounc brush buckl build call can car cheek chin clear closer corner
        count dead dig dip doe doesnt dont down drag draw drawer drink driv drop ease egg eight em empt even ever
        everybod eye fall fifteen find fine first float fold follow full get gone grumbl had hamstring has hear
        help here his home hover hurt i instead is isnt it its jaw kick kiss last lazy lead leap leav level
        longer loop lot lower mak march me minut moment mov nobody nose number out overhead own paddl park pass
        past paus peel plent pocket pres puff quick quiet rais relax rest rib row saw say send shak sharp shav
        should singl six skim skip slow snap some somebody spot squash stag stair still stool straighten strong
        tak take taller tap tell th that the then thes they thigh third thos tim time tum twent twist use very
        waist wait warm was watch were wet when whil who window wing without work
      `,
    ],
    [
      -0.4,
      `
        belt breath com come feel finish for go have higher keep kneecap look more only pull push second stay
        stop weight
      `,
    ],
    [-0.6, 'do ear if land through way'],
    [-0.8, 'put'],
  ],
} as const satisfies CueWeights
