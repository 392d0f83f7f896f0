/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind setup; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const SETUP_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [0.4, 'part place'],
    [0.2, 'far harm kit move settle take'],
    [-0.2, 'attend ill more num swap'],
    [-0.4, 'chat do less not wrong'],
    [-0.6, 'air pace'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.8, 'palm'],
    [0.6, 'arm bottom forearm heel one same thumb'],
    [
      0.4,
      `
        <kit> <part> <settle> befor box finger forehead half holder lac light like other plank ring sat shin
        shuffl shut sideway tall with
      `,
    ],
    [
      0.2,
      `
        <harm> <ill> <take> a about abov all alway an bag ball bar barbell behind bell big biggest body br brak
        broom bum butt check clos collar cros drop duck dumbbell elbow end fac face feat feet fetch fingertip
        first fist flip from further garter good guard hand heaviest height held hing hook hop however hug knuckl
        ladi landmin lat left leg let lie line load low mat mean meet middl no not noth now onto operat opposit
        pad parallel pinch pleas position posti quarter real roll round saddl second set sho side sink smooth
        sock soft spread squeez stagger stand start stay still strap they tight tin tip toe top touch tuck two
        under underneath unles walk whol wide wider wrap
      `,
    ],
    [
      -0.2,
      `
        <attend> <far> <more> <not> away back balanc be bent breath calv chest chin collarbon cushion do driv
        each ear ease even eye feel fill fold foot hip how if in jump knee land level loop loos lower mind neck
        nobody only over pick plat pres pull push quiet reach rest rib send settl shak shoulder sit slow small
        snap some somebody squash squat step stop straight straighten ten theyr thi think thos thre till tum
        untuck use watch when youll youv
      `,
    ],
    [
      -0.4,
      `
        <air> <chat> come dont down get go hold its keep look out that the ther up wrist
      `,
    ],
    [-0.6, 'put'],
  ],
  given: [
    [0.2, '<attend> <move> and be both face floor heav insid is now on pleas slid to up'],
    [-0.2, '<chat> <ill> <less> <not> back from in of right shoulder'],
  ],
  last: [
    [0.6, 'bent on stanc tall'],
    [
      0.4,
      `
        are bum elbow four height it kne kneel plank rail round seat shoulder squat tailbon touch wide width
      `,
    ],
    [
      0.2,
      `
        abreast ahead all alread also alway anchor apart around away backrest backsid bag barbell bark begin
        blanket board bone bony bow breastbon broomstick bump bushwalk button camera case ceil chair choic clos
        crat cross curb dumbbell each edge else everyth eyebrow fenc fift finger fingertip flat for fram garter
        get gras grip ground gym hair hand hang hard hip hold holder horn jog jump key knee lan line lock long
        meat mid mood nearest neck now other pad pair pillow pin plac plant portrait position post rib rim ring
        rock roll roof rope rucksack run scarecrow scon shap short sid slack slid slop snug soft sog spin split
        spread squar stand start stead straight strid support tabl tabletop ten tension that the them think
        throat tight tightrop tour tow towel track tree triangl tuck underneath unlock unrack week worktop wrap
        wrist you
      `,
    ],
    [
      -0.2,
      `
        0 again arch arm ball belt between blad body box breath cros do ear enough eye face fine first foot
        grumbl half heav help here higher hook hover inch instead jaw kneecap land lazy lean left level lower mat
        middl minut nice off one only pocket point pull quiet second sho shut slow still strap stretch thre
        through tim turn weight wider wing
      `,
    ],
    [-0.4, 'feet heel leg toe way'],
  ],
  length: [
    [-0.2, '5-7 long'],
    [-0.4, '8-12'],
    [-0.6, '1-2'],
  ],
  pair: [
    [0.8, 'leg_<place>'],
    [
      0.6,
      `
        <far>_than all_four forearm_<place> forehead_<place> in_each left_<part> side_on to_it under_the
        your_back
      `,
    ],
    [
      0.4,
      `
        <chat>_are <chat>_knee <chat>_side <chat>_us <far>_plank <kit>_at <more>_to <not>_jump <num>_foot
        <num>_hand <num>_step <part>_a <part>_an <part>_behind <part>_bent <part>_flat <part>_hang <part>_just
        <part>_length <part>_plant <part>_point <part>_under <part>_width <place>_our <place>_than <place>_the
        <place>_till <place>_your <swap>_and <swap>_out against_the and_<settle> and_all and_your are_<place>
        arm_<place> arm_to as_the at_your big_<harm> blad_<place> by_your chest_<far> dont_jump down_on
        duck_<place> each_hand end_<place> end_in fac_the foot_<place> foot_forward forehead_down from_the
        heel_<place> heel_hang hip_width inch_off it_<place> knee_down knee_soft lac_<place> lean_<part>
        lean_back leg_<attend> leg_long let_us lie_<part> lie_<place> middl_of neck_bone not_on of_it off_the
        one_<place> pad_<place> palm_<place> palm_down point_at right_<part> same_side shin_<place>
        shuffl_<place> side_<place> so_it so_that start_<place> strap_<place> the_<harm> the_crown the_door
        the_finger the_meat the_neck the_wrist thi_<pace> thi_time tip_<place> toe_<place> top_of tuck_in
        two_<kit> under_<part> us_come wider_than you_<swap> you_are your_chair your_shoulder
      `,
    ],
    [
      0.2,
      `
        0_<do> 0_<kit> 0_<swap> 0_hand 0_kilo 0_lan 0_or 0_rail 0_step <air>_button <air>_down <attend>_arm
        <attend>_at <attend>_band <attend>_by <attend>_fift <attend>_gap <attend>_kne <attend>_knee
        <attend>_kneel <attend>_level <attend>_loop <attend>_off <attend>_pick <attend>_piec <attend>_sit
        <attend>_ski <attend>_stanc <attend>_strid <attend>_ten <attend>_though <attend>_touch <attend>_train
        <attend>_under <attend>_well <attend>_with <chat>_a <chat>_against <chat>_and <chat>_bony <chat>_both
        <chat>_can <chat>_carry <chat>_did <chat>_dont <chat>_face <chat>_get <chat>_go <chat>_gym <chat>_hand
        <chat>_joint <chat>_kneel <chat>_leg <chat>_long <chat>_position <chat>_run <chat>_so <chat>_stead
        <chat>_stood <chat>_strid <chat>_swap <chat>_switch <chat>_the <chat>_unrack <chat>_will <chat>_would
        <chat>_yourself <do>_arm <do>_around <do>_away <do>_between <do>_everyth <do>_hand <do>_into <do>_leg
        <do>_sideway <do>_so <do>_still <do>_than <do>_under <far>_again <far>_apart <far>_as <far>_away
        <far>_bar <far>_bend <far>_enough <far>_for <far>_its <far>_like <far>_off <far>_on <far>_out <far>_plat
        <far>_them <far>_ther <far>_to <harm>_cos <harm>_goe <harm>_is <harm>_knee <harm>_leg <harm>_out
        <harm>_pin <harm>_them <harm>_tuck <harm>_turn <harm>_two <ill>_knee <ill>_them <kit>_a <kit>_about
        <kit>_and <kit>_back <kit>_between <kit>_by <kit>_fift <kit>_half <kit>_hang <kit>_high <kit>_into
        <kit>_just <kit>_read <kit>_right <kit>_run <kit>_should <kit>_so <kit>_two <kit>_under <kit>_underneath
        <kit>_up <kit>_wher <less>_as <less>_break <less>_kneel <less>_sit <less>_squat <less>_than <less>_that
        <more>_abov <more>_clos <more>_else <more>_floor <more>_for <more>_hand <more>_high <more>_knee
        <more>_leg <more>_over <more>_shap <more>_sid <more>_tight <more>_we <move>_a <move>_anyth <move>_arm
        <move>_around <move>_away <move>_everyth <move>_exact <move>_forward <move>_hand <move>_hold <move>_into
        <move>_leg <move>_right <move>_room <move>_sideway <move>_so <move>_sure <move>_than <move>_to <move>_up
        <not>_a <not>_below <not>_crat <not>_just <not>_lac <not>_leg <not>_lie <not>_loll <not>_mind <not>_on
        <not>_over <not>_slack <not>_the <not>_ther <not>_thumbles <not>_touch <not>_walk <not>_wander <num>_a
        <num>_and <num>_behind <num>_dumbbell <num>_end <num>_hol <num>_if <num>_in <num>_knee <num>_kneel
        <num>_lan <num>_or <num>_ring <num>_sit <num>_squat <num>_tray <num>_turn <pace>_floor <pace>_hand
        <pace>_jog <pace>_sid <pace>_stanc <pace>_stand <part>_again <part>_against <part>_and <part>_apart
        <part>_as <part>_blad <part>_bon <part>_bone <part>_button <part>_cos <part>_cross <part>_deep
        <part>_distanc <part>_dug <part>_fac <part>_fift <part>_fold <part>_forward <part>_glu <part>_heel
        <part>_height <part>_hold <part>_hook <part>_however <part>_hug <part>_in <part>_is <part>_like
        <part>_lock <part>_loos <part>_near <part>_not <part>_of <part>_out <part>_outsid <part>_over <part>_pin
        <part>_proud <part>_rest <part>_row <part>_shoulder <part>_so <part>_soft <part>_spread <part>_stack
        <part>_stuck <part>_the <part>_till <part>_tuck <part>_turn <part>_up <part>_upright <part>_when
        <part>_wide <part>_wrap <part>_yet <place>_0 <place>_abov <place>_again <place>_against <place>_arm
        <place>_at <place>_bend <place>_both <place>_by <place>_clos <place>_each <place>_from <place>_front
        <place>_gap <place>_heel <place>_high <place>_hip <place>_in <place>_it <place>_kne <place>_lane
        <place>_long <place>_low <place>_one <place>_over <place>_piec <place>_row <place>_shap <place>_shoulder
        <place>_stanc <place>_straight <place>_strid <place>_support <place>_thre <place>_tipto <place>_under
        <place>_underneath <place>_until <place>_yet <settle>_against <settle>_anyth <settle>_at <settle>_away
        <settle>_down <settle>_forward <settle>_hold <settle>_it <settle>_just <settle>_leg <settle>_long
        <settle>_low <settle>_next <settle>_over <settle>_right <settle>_somewher <settle>_stuck <settle>_the
        <settle>_them <settle>_up <settle>_wher <settle>_with <settle>_yourself <swap>_between <swap>_catch
        <swap>_crat <swap>_done <swap>_manag <swap>_next <swap>_reach <swap>_roll <swap>_slack <swap>_still
        <swap>_them <swap>_thumbles <swap>_tied <swap>_walk <swap>_wander <swap>_with <take>_back <take>_behind
        <take>_both <take>_flat <take>_float <take>_go <take>_just <take>_low <take>_next <take>_on <take>_over
        <take>_plant <take>_stack <take>_stay <take>_still <take>_stuck <take>_when <take>_wher <take>_yourself
        a_0 a_<attend> a_<far> a_<kit> a_<move> a_<swap> a_bell a_belt a_bit a_bushwalk a_case a_crat a_curb
        a_cushion a_decent a_few a_fraction a_garter a_good a_hand a_hot a_lefti a_long a_loop a_mat a_mermaid
        a_mood a_portrait a_pres a_quarter a_scarecrow a_shad a_slop a_small a_starfish a_step a_str a_strid
        a_tabletop a_tea a_th a_tightrop a_touch a_triangl a_waiter a_wallpaper a_wee about_<attend> about_<far>
        about_<part> about_a about_an about_as about_fort about_ninet abov_<part> abov_your acros_the
        against_your ahead_and ahead_of all_<settle> all_<take> along_the an_<far> an_<part> an_arm an_end
        an_inch an_iron and_<not> and_<part> and_<take> and_a and_both and_face and_five and_grab and_head
        and_high and_kne and_lay and_long and_make and_not and_one and_open and_shoulder and_spread and_the
        and_tip and_tuck ankl_and ankl_over anyth_else are_<attend> are_hang are_straight arm_<attend>
        arm_<wrong> arm_fold arm_forward arm_hang arm_length arm_lock arm_out arm_straight arm_travel armpit_over
        as_<attend> as_an as_look as_though as_well at_<chat> at_about at_chest at_me away_<far> away_from
        away_till baby_ly back_<far> back_<part> back_against back_and back_as back_heel back_of back_row
        back_straight back_till back_to back_under back_until back_yet backsid_and bag_<place> ball_<part>
        ball_<place> ball_between band_<do> band_<more> band_<place> band_just band_round band_up bar_<place>
        bar_at bar_in bar_on bar_thi bar_with bare_<kit> bare_wall be_tow becaus_<attend> becaus_if befor_<more>
        befor_anyth befor_the befor_we befor_youv begin_<place> behind_your bel_again bel_befor bel_button
        bel_down bell_a bell_and bell_by bell_hang bell_in bell_stay bell_upsid below_them bench_<part>
        bend_<place> bend_your bent_<more> bent_<place> bent_at bent_up between_<num> between_your big_<far>
        big_<kit> big_<less> big_<part> big_enough big_plank biggest_<settle> biggest_<take> biggest_hold
        bit_<far> bit_<place> bit_forward bit_of bit_wider blad_in blad_pinch blad_together block_and
        body_<attend> body_like bon_<attend> bon_heav bony_bit both_<part> both_end both_feet both_hand
        bottom_<place> bottom_forward bottom_right bottom_to box_<place> box_under box_underneath br_a
        brak_<place> brak_on bum_<pace> bum_<part> bum_back bum_hard bum_off bump_<place> butt_<part>
        butt_<place> butt_back by_ther calf_and can_<do> can_<move> can_catch can_just can_manag can_reach
        cannot_<do> cant_<less> cant_break cardigan_roll carry_<num> carry_a carry_two catch_yourself
        chair_<less> chair_<place> chair_instead chair_thi chang_your check_the chest_<attend> chest_<chat>
        chest_deep chest_height chest_is chest_look chest_over chest_proud chin_over clos_to collar_<place>
        collar_on come_<chat> come_<do> come_in come_onto come_round cros_it cros_leg cros_the crown_of
        dangl_<place> deadlift_it decent_<far> decent_height did_with do_the doesnt_<do> doesnt_<move>
        dont_<move> dont_lie dont_mind down_<chat> down_away down_by down_into down_now down_your downward_dog
        drift_off drop_in drop_the duck_in duck_under dug_<place> dug_in dumbbell_and each_<part> edge_<attend>
        either_side elbow_<place> elbow_first elbow_glu elbow_in elbow_just elbow_open elbow_pin elbow_tuck
        end_rest enough_that esky_<far> esky_full even_<attend> even_if even_when ever_<chat> ever_<settle>
        ever_go eye_<far> eye_level face_<more> face_<part> face_<place> face_the face_to face_up feat_<place>
        feat_together feet_<move> feet_<part> feet_<place> feet_a feet_flat feet_float feet_go feet_plant
        feet_stack feet_when few_<do> few_<kit> few_centimetr few_step find_a find_your finger_<do>
        finger_forward finger_point finger_spread fingertip_<place> fingertip_behind first_<settle>
        first_position first_thi fist_<place> fist_and five_<do> five_<far> five_<kit> five_degre five_step
        flip_<place> floor_<less> floor_<pace> floor_<place> floor_hard floor_pleas floor_proper foot_a
        foot_behind foot_flat foot_in foot_on foot_out for_compan for_it for_ten for_thi forearm_<attend>
        forearm_<more> forearm_down forearm_up forehead_on forward_from forward_of forward_on four_finger
        fraction_from fram_<place> fram_in from_a from_downward from_it front_<far> front_<less> front_<num>
        front_edge front_foot front_half front_of garter_stay get_down get_it get_stuck get_up glu_down
        go_against go_to goe_<chat> goe_<swap> goe_home good_<part> good_knee good_side good_strid got_your
        grab_it guard_<more> guard_<place> guard_up half_<do> half_<move> half_kneel half_sit half_squat
        hand_<place> hand_<settle> hand_and hand_as hand_at hand_away hand_hold hand_in hand_just hand_loos
        hand_on hand_over hand_past hand_rest handl_<place> handl_on hang_<attend> hang_off hang_with has_miss
        have_somewher head_<move> head_lift head_make head_on heav_one heaviest_pair heel_<attend> heel_<settle>
        heel_as heel_clos heel_down heel_dug heel_on heel_together held_<place> held_against her_bus high_again
        high_bar high_plank hing_over hip_<part> hip_<place> hip_back hip_distanc hip_stay hol_befor hold_both
        hold_hammer hold_them hook_<place> hook_at hook_over hop_<more> hop_<place> hop_forward hop_up hot_water
        hug_<place> hug_in hug_it hug_the i_<not> i_dont i_would if_it if_that in_<harm> in_<num> in_at in_from
        in_front in_lane in_one in_thre in_under insid_<num> insid_<part> insid_leg insid_one into_a into_it
        iron_board is_all it_<do> it_<harm> it_<more> it_<not> it_between it_cannot it_climb it_come it_is it_out
        it_run it_short it_slid it_slip it_steadi it_touch it_toward it_under it_up it_wher its_<place> its_back
        its_com its_got its_heav its_sog its_ther its_tight jam_<more> jam_up jog_<place> jog_in jump_at jump_for
        just_<far> just_<less> just_<place> just_ahead just_enough just_hum just_off just_outsid just_reach
        just_your keep_<settle> keep_<take> keep_hold kne_<far> kne_<place> kne_a kne_an kne_bent kne_flop
        kne_over kne_soft kne_under kne_want kne_when kne_wide knee_<place> knee_and knee_are knee_bent knee_of
        kneecap_and knit_to knot_<place> knot_goe knuckl_<place> knuckl_to lac_down lan_each landmin_<do>
        landmin_<move> landmin_pres lane_<num> last_joint lat_<place> lat_on lean_<place> lean_a lean_right
        leav_lane left_hand left_knee left_leg left_side leg_<more> leg_<settle> leg_behind leg_in leg_or leg_out
        leg_stay leg_thi leg_up length_away length_from level_<attend> level_as lie_back lie_down lift_away
        lift_them light_<kit> light_<part> light_<settle> light_hand light_loop like_<chat> like_<num> like_a
        like_in like_pick like_ski like_ten like_train like_you like_your like_youv line_<place> littl_<far>
        littl_<move> littl_<place> littl_bend live_ther load_<more> load_anyth load_the loll_<attend> loll_as
        long_<kit> long_<place> long_by long_gap long_stanc long_strid longway_<place> look_the loop_wher
        low_pair lower_than ly_<part> ly_<settle> ly_<take> ly_face ly_on make_a make_room make_sure manag_for
        mat_is mat_or mat_sideway meet_the mermaid_who miss_her my_gym near_<attend> near_<part> near_hand
        near_the newspaper_tuck next_to nice_and no_crat no_leg no_slack no_thumbles no_walk no_wander
        not_<place> not_a not_be not_cros not_just not_lac not_loll not_over not_the not_ther not_touch
        noth_<place> noth_below noth_hang noth_under of_<do> of_<pace> of_a of_bar of_bare of_one of_paint
        of_tension of_the of_your off_whil on_<chat> on_<part> on_both on_first on_it on_our on_them on_tipto
        on_to one_<part> one_a one_at one_behind one_each one_end one_foot one_hand one_in one_knee one_ring
        one_turn onto_our onto_the open_<part> open_hand open_the operat_<part> operat_leg opposit_arm or_0
        or_<attend> or_<num> or_<part> or_<place> or_a or_bent or_four or_palm or_stand or_youll other_<part>
        other_<place> other_end other_fist other_foot other_in other_knee other_on other_one our_<part> our_back
        our_sid out_<attend> out_<num> out_a out_ahead out_in out_long out_thi out_till out_two outsid_the
        over_<far> over_both over_hip over_ther over_till overhand_<move> overhand_<settle> overhand_grip pad_on
        pal_goe palm_look palm_to park_the pencil_in piano_key pick_<more> pick_<place> pick_them pick_up
        pillow_out pin_<num> pin_to pin_two pinch_them pinch_together plant_and plat_hug pleas_even
        point_<attend> point_<place> point_straight posti_bow pres_<more> pres_up pres_ups prop_yourself
        quarter_<do> quarter_<move> quarter_squat rack_at reach_<more> reach_<place> reach_on reach_up reach_with
        read_for real_<far> real_<place> real_wide rear_heel rest_<place> rest_on right_<place> right_back
        right_foot ring_<far> ring_a ring_about ring_at ring_down ring_high ring_to roll_it round_both round_ten
        run_from run_it safet_<harm> safet_pin same_<kit> same_<part> same_<settle> same_<swap> same_<take>
        same_block same_start same_way sat_<attend> sat_<more> sat_tall sat_up second_<kit> set_the shelf_for
        shin_<far> shin_<more> shin_level shin_upright sho_tied shoulder_blad shoulder_height shoulder_just
        shoulder_under shoulder_up shoulder_width show_the shrug_on shuffl_forward shuffl_to shut_it shut_the
        side_nearest side_of side_with sideway_<place> sideway_on sideway_so sideway_to sink_down sink_till
        sit_acros sit_forward sit_with sleev_roll slip_off slop_goe slow_<pace> slow_jog small_<move> small_of
        smooth_floor smooth_sid so_<less> so_much sock_<place> sock_on soft_<part> soft_kne soft_knee sol_of
        somebod_to someth_<chat> someth_soft someth_you somewher_between somewher_to spe_<place> spe_down
        split_stanc spread_<place> spread_out spread_the squeez_everyth squeez_your stack_<place> stack_over
        stagger_your stand_<attend> stand_if stand_next stand_on stand_still stand_with start_<attend> start_in
        start_on stay_exact stay_tall steadi_<chat> steadi_it steadi_you step_<more> step_away step_into
        step_onto step_under step_up stick_down stood_<place> stood_on stop_mid straddl_the straight_arm
        straight_at straight_piec strap_down strap_right strap_to strid_away sure_the sw_your swap_your
        switch_arm tail_<chat> tail_first take_<settle> take_<take> take_a take_hold take_thre tall_kneel
        tall_through tea_tray ten_to than_that than_youd that_<chat> that_<do> that_<move> that_been that_knee
        that_what that_you that_your the_<far> the_<ill> the_<settle> the_<swap> the_anchor the_ankl the_baby
        the_backrest the_ball the_band the_bark the_bony the_brak the_breastbon the_bridg the_broomstick the_bump
        the_camera the_ceil the_cushion the_damper the_edge the_esky the_feet the_fenc the_front the_glov
        the_gras the_grip the_hip the_horn the_insid the_kettlebell the_kne the_lac the_newspaper the_other
        the_pad the_punch the_rail the_rim the_roof the_safet the_scon the_seriou the_shallow the_shin the_shrug
        the_sid the_slack the_slid the_sofa the_sore the_split the_step the_strap the_toe the_tre the_tree
        the_walk the_wall the_wedg the_whit them_ther ther_<swap> ther_alread ther_daylight ther_for ther_no
        ther_off they_<take> they_live thi_<chat> thi_week though_someon thre_<do> thre_and thre_or
        through_between thrown_a thumb_<chat> thumb_<do> thumb_<place> thumb_point thumb_round thumb_wrap
        thumbles_grip tie_it till_<chat> till_its till_your time_<settle> time_<swap> time_<take> time_stand
        tin_<place> tiny_<do> tiny_<kit> tiny_step tip_in tip_over tip_to tipto_to to_<take> to_be to_begin
        to_get to_help to_hip to_jump to_lift to_reach to_show to_the to_tickl to_two to_wind to_you to_your
        toe_cos toe_out toe_tuck toe_turn together_and touch_them touch_your toward_<chat> toward_you towel_and
        towel_under train_track tre_<place> tre_behind tuck_<num> tuck_<part> tuck_back tuck_the turn_<place>
        turn_around turn_sideway two_<far> two_block two_dumbbell two_hol two_tray under_it under_shoulder
        under_your underneath_the unles_<chat> unles_your until_youv up_<attend> up_<do> up_<kit> up_<less>
        up_abov up_again up_and up_clos up_high up_like up_over up_shap up_tight up_we us_<settle> us_all
        waiter_carry walk_fram wall_<more> wall_read wall_skirt wall_so wallpaper_tabl wander_about want_anybod
        want_somebod way_down we_<take> we_are we_will wedg_<place> weight_<num> weight_at weight_fift
        well_<part> well_back were_a what_its wher_<swap> wher_do wher_it whil_it whit_<attend> whit_<settle>
        whit_line who_has whol_foot wide_<less> wide_for widen_the will_<less> will_<take> wind_it with_<place>
        with_both with_flat with_someth would_<attend> would_like wrap_<settle> wrap_go wrap_your wrist_under
        you_<chat> you_can you_did you_get you_go you_kneel you_stand you_swap you_switch you_unrack you_will
        youd_<attend> youd_think youll_drift your_<chat> your_<kit> your_<more> your_<move> your_<pace>
        your_<part> your_backsid your_bag your_bel your_bony your_book your_bum your_carry your_cheekbon
        your_chest your_choic your_deadlift your_end your_eyebrow your_feet your_forehead your_go your_good
        your_hip your_is your_knee your_knuckl your_lap your_left your_leg your_mat your_neck your_right your_spe
        your_spin your_stead your_stood your_strap your_tailbon your_tripod your_whol yourself_<more>
        yourself_<place> yourself_<wrong> yourself_cheat yourself_up youv_<settle> youv_come youv_rock youv_stop
        youv_thrown
      `,
    ],
    [
      -0.2,
      `
        0_<place> <attend>_ahead <attend>_as <attend>_back <attend>_feet <attend>_from <attend>_just <attend>_leg
        <attend>_like <attend>_long <attend>_ther <attend>_they <attend>_to <attend>_your <chat>_do <chat>_feel
        <chat>_hang <chat>_have <chat>_it <chat>_your <do>_a <do>_about <do>_acros <do>_down <do>_forward <do>_on
        <do>_over <do>_straight <do>_the <do>_them <do>_ther <do>_through <far>_a <far>_and <far>_at <far>_back
        <far>_if <far>_stand <far>_the <far>_your <harm>_a <harm>_forward <harm>_one <harm>_with <kit>_behind
        <kit>_first <kit>_for <kit>_further <kit>_height <kit>_if <kit>_it <kit>_like <kit>_over <kit>_snug
        <kit>_touch <less>_on <more>_at <more>_in <more>_one <more>_the <more>_toward <more>_under <more>_your
        <move>_and <move>_both <move>_down <move>_from <move>_that <move>_the <move>_through <move>_your <not>_at
        <not>_to <num>_arm <num>_heel <num>_of <num>_on <num>_out <num>_second <num>_up <num>_with <pace>_on
        <pace>_pleas <part>_away <part>_between <part>_brush <part>_can <part>_com <part>_doe <part>_end
        <part>_finish <part>_first <part>_follow <part>_get <part>_goe <part>_high <part>_hover <part>_into
        <part>_land <part>_only <part>_push <part>_reach <part>_roll <part>_stay <part>_stop <part>_ther
        <part>_will <place>_befor <place>_between <place>_down <place>_like <place>_line <place>_of <place>_off
        <place>_out <place>_past <place>_side <place>_sideway <place>_stay <place>_to <place>_toe <place>_toward
        <place>_two <place>_wide <settle>_again <settle>_and <settle>_ever <settle>_off <settle>_on <settle>_out
        <settle>_someth <settle>_that <settle>_ther <settle>_two <settle>_you <settle>_your <swap>_a
        <swap>_behind <swap>_it <swap>_not <swap>_of <swap>_off <swap>_on <swap>_round <swap>_the <swap>_up
        <take>_again <take>_ever <take>_for <take>_like <take>_out <take>_up a_<do> a_<harm> a_<ill> a_<less>
        a_<pace> a_<settle> a_ball a_band a_bar a_door a_full a_moment a_tray a_wall all_<num> all_<place> all_of
        and_<chat> and_<do> and_<more> and_<swap> and_back and_come and_down and_help and_it and_just and_let
        and_low and_no and_stay ankl_<far> ankl_height are_<less> are_just arm_<chat> arm_<far> arm_<move>
        arm_<part> arm_<settle> arm_and arm_back arm_by arm_on as_a as_you at_<num> at_a at_ankl at_the
        back_<more> back_down back_on back_stay back_up bag_of bar_down bar_stay bar_to bell_<more> bell_down
        bell_snug bell_up bend_the bent_<part> bit_in both_arm both_leg both_sid bottom_<part> bottom_rib br_the
        brush_your can_<settle> car_<place> car_on chest_<do> chest_<place> chest_and chest_between chest_to
        chin_tuck com_<place> come_<part> come_back cross_<place> curl_<place> cushion_on do_<not> do_it do_not
        dont_<settle> down_<attend> down_and down_at down_between down_like down_the down_under each_<do>
        each_<num> each_arm each_one elbow_<far> elbow_and elbow_at elbow_back elbow_down ever_<pace> eye_on
        feel_it feet_away feet_in feet_up find_the finger_on finish_<place> flat_<attend> foot_<more> foot_down
        foot_under foot_up for_<chat> for_<num> for_a for_two for_your forward_a forward_in free_hand
        from_<place> from_under front_<part> front_heel front_knee get_<attend> get_a get_off get_your go_<far>
        go_<place> go_back goe_<attend> gone_<place> hair_<place> hand_<more> hand_<move> hand_<swap> hand_behind
        hand_down hand_end hand_finish hand_forward hand_out hand_up handl_with hang_<place> hang_on have_the
        have_to head_down head_over heel_<far> heel_against heel_under help_it hip_<settle> hip_forward hip_level
        hip_under hold_<place> hold_a hug_your if_ther if_they if_youv in_<far> in_<settle> in_by in_it in_the
        in_to in_your insid_of into_the into_your is_<less> is_to it_<attend> it_<move> it_<part> it_back it_down
        it_from it_open it_with its_a its_the just_<attend> just_<settle> just_<take> just_hang keep_your
        kne_<move> kne_and kne_down kne_straight knee_<do> knee_<far> knee_<more> knee_straight knee_up
        land_<place> land_under lean_forward lean_in leav_your leg_<do> leg_<far> leg_together leg_wide let_it
        lift_the like_an line_from long_and look_<place> loop_<place> loop_a loop_on low_<part> mak_it make_it
        mid_<part> mid_shin mind_your near_<far> near_stand neck_<attend> neck_<place> neck_long newspaper_under
        not_<far> not_at of_<harm> of_them on_<num> on_each on_two one_<chat> one_<more> one_<settle> one_arm
        one_finger one_heel one_to one_up open_<place> open_acros operat_side or_<settle> or_its other_<attend>
        other_ankl other_side other_way out_on out_over out_sideway out_the out_ther out_to out_wide over_<harm>
        over_a over_to over_toe past_your pick_a pick_the pillow_behind pillow_under pull_your push_<place>
        put_the put_them put_your rack_it rib_<place> rib_down right_<more> right_up ring_come ring_in
        roll_<place> roll_onto round_<place> same_th seat_and shav_your shin_<move> shoulder_<attend>
        shoulder_are shoulder_level shoulder_soft side_<do> side_plank side_to singl_<part> sit_<part> sit_back
        sit_between sit_to sit_your slid_<place> snug_<place> snug_against so_<chat> some_of spot_<place> spot_on
        squeez_<place> stand_<more> stand_right start_with stay_<place> stay_down step_<far> step_down step_in
        step_over straight_ahead tail_under take_it take_the take_your that_<kit> that_a that_the the_<air>
        the_<chat> the_<do> the_<place> the_<wrong> the_air the_belt the_box the_chest the_dumbbell the_ear
        the_fire the_first the_forearm the_good the_hand the_heel the_knee the_kneecap the_long the_loop the_one
        the_operat the_opposit the_ring the_same the_side the_spot the_thigh the_top the_way the_weight the_whol
        them_<place> them_down ther_<attend> ther_a thi_one through_the through_your thumb_<part> thumb_back
        thumb_width till_it to_<less> to_<part> to_<place> to_<swap> to_come to_just to_shoulder to_side to_wher
        toe_<far> toe_<move> toe_<settle> toe_and toe_forward toe_to top_hip touch_the toward_your tuck_behind
        tuck_under two_<place> under_<chat> under_each under_them under_you until_your up_the up_toward up_your
        wall_<place> want_it way_in weight_<place> weight_in wher_the whil_<chat> whil_your with_a with_the
        wrap_<do> wrap_<place> wrap_it wrap_round wrist_flat you_<move> you_feel you_have you_want youll_<settle>
        your_<far> your_<settle> your_<take> your_arm your_belt your_bottom your_elbow your_eye your_face
        your_finger your_fist your_foot your_head your_heel your_lac your_other your_palm your_pocket your_pol
        your_second your_sho your_thumb your_toe your_weight
      `,
    ],
    [
      -0.4,
      `
        <attend>_and <part>_are <part>_down <take>_your and_<place> back_<place> cushion_<place> feet_down if_the
        if_your kne_out out_of stand_up the_arm the_bottom the_foot toe_<do> your_hand
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
        breathing-likely caution-sure execution-hint fault-hint fault-likely fault-sure focus-sure harder-likely
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
        <chat>_<part> <chat>_<settle> <kit>_<more> <kit>_<place> <move>_<place> <not>_<place> <pace>_<kit>
        <part>_<place> all_four arm_to arm_to_the dont_jump elbow_in feet_flat forehead_down hand_in heel_down
        hip_width kne_up_over lean_back let_us let_us_come not_a_tightrop not_on_the other_foot palm_down
        same_side side_on stand_on_the
      `,
    ],
    [
      0.2,
      `
        0_hand 0_lan 0_lan_each 0_step 0_step_out <attend>_<far> <attend>_<kit> <attend>_<num> <chat>_<do>
        <chat>_<not> <chat>_<take> <do>_<place> <far>_<harm> <far>_<place> <harm>_<part> <kit>_<chat>
        <kit>_<less> <more>_<part> <move>_<settle> <move>_<take> <not>_<move> <num>_<do> <num>_<far> <num>_<kit>
        <num>_<part> <part>_<attend> <part>_<more> <part>_<num> <part>_<part> <part>_<wrong> <place>_<chat>
        <place>_<do> <place>_<harm> <place>_<kit> <place>_<less> <place>_<move> <place>_<part> <place>_<place>
        <settle>_<settle> <settle>_<take> <take>_<more> <take>_<place> <wrong>_<place> a_bit a_few_centimetr
        a_good_strid a_hair a_hand_off a_small a_touch a_wee a_wee_bend about_an about_an_inch abov_the_kne
        abov_your abov_your_kne all_your all_your_weight along_the_gras an_arm an_arm_length an_end an_end_in
        an_inch_off arm_fold arm_hang arm_length arm_lock arm_straight arm_up arm_up_to back_against back_heel
        back_heel_up back_off_the back_row ball_of ball_of_the band_round bar_in bar_off bar_off_the bar_on
        bar_on_the befor_anyth befor_anyth_else befor_you_so bel_down bell_a bell_in bell_in_the bend_your
        bend_your_kne bend_your_knee between_your big_plank big_toe big_toe_together biggest_hold body_like
        body_like_a both_feet both_feet_on both_hand both_hand_on both_leg_down both_the_same bottom_forward
        bottom_forward_a bottom_right bottom_to bottom_to_the box_underneath br_a br_a_hand br_it_up br_the_end
        br_the_shin br_your_feet br_your_leg brak_on bum_back bum_back_to bum_off bum_off_your bum_on bum_on_the
        butt_back cardigan_roll cardigan_roll_up chair_instead chair_instead_of chang_your chang_your_feet
        check_the check_the_brak check_the_lid chest_deep chest_over chest_proud chest_tip_to chin_over
        chin_over_your clos_to clos_to_your come_forward_on come_to come_to_the cros_the cros_your curl_the
        curl_the_head curl_your_head deadlift_it deadlift_it_up dont_jump_at dont_jump_for dont_let_go dont_lie
        dont_lie_back down_on down_on_one down_on_your down_you_go drop_in drop_the drop_the_ring duck_under
        dumbbell_in elbow_at_shoulder elbow_bent elbow_glu elbow_glu_to elbow_just elbow_level elbow_level_with
        elbow_on_the elbow_open elbow_out elbow_pin elbow_pin_to elbow_stay_on elbow_under_your end_in
        end_in_your ever_go eye_level fac_the face_the feat_together feet_a feet_plant feet_stack feet_stay_put
        find_a find_your find_your_tripod finger_at finger_at_the finger_point finger_spread fingertip_behind
        fingertip_behind_your finish_at finish_at_the first_position five_step flat_on_your float_the_kne
        forearm_down forearm_up forehead_on forehead_on_the four_finger from_downward from_downward_dog
        from_the_hang front_foot further_out garter_stay garter_stay_on get_up get_up_ther go_ahead go_ahead_and
        good_knee good_knee_bent good_side grab_it guard_up half_a half_a_squat half_kneel half_sit hand_as
        hand_at_your hand_by hand_by_your hand_just hand_just_outsid hand_loos hand_over_the hand_past
        hand_past_the hand_round_the hang_with have_a have_a_belt head_lift head_on head_on_your heel_a
        heel_a_hand heel_and heel_and_all heel_as heel_as_well heel_clos heel_dug heel_dug_in heel_hang
        heel_hang_off heel_on heel_on_the heel_together held_against high_plank hing_over hing_over_till hip_stay
        hip_up hold_both hold_both_end hold_it_wher hold_the_ring hold_them hook_at hook_at_about hop_forward
        hop_forward_till hop_up hug_it hug_the i_dont i_dont_mind i_would i_would_like if_its_heav if_your_is
        if_youv_come ill_come ill_come_round in_0 in_the_leg it_slip it_steadi it_steadi_it it_steadi_you
        it_touch it_touch_your its_a_decent its_got its_got_a its_your_knuckl jog_in keep_hold keep_the_wrist
        keep_them_ther kne_an kne_an_inch kne_bent kne_flop kne_over kne_over_hip kne_soft kne_under kne_up
        kne_up_again kne_wide knee_of knee_of_the knee_soft kneecap_and knuckl_to knuckl_to_the lac_down
        landmin_pres lat_on lean_a_fraction lean_right lean_right_back leav_lane leav_the left_arm_out
        left_hand_on left_leg_in leg_a_bit leg_out leg_stay leg_stay_down let_it_come let_the_leg let_your_feet
        lie_back lie_down lift_away light_hand light_loop like_a like_a_bucket like_a_garter like_a_rucksack
        like_a_tabl like_a_waiter like_piano_key like_pick like_the_esky like_your_go like_your_hold like_your_on
        like_youv like_youv_got like_youv_stop littl_bend littl_bend_in long_band long_by long_stanc long_strid
        lose_the_towel low_as low_as_you low_pair make_sure make_sure_the meet_the meet_the_punch middl_of
        middl_of_the near_hand near_hand_on nice_and nice_and_long no_bell no_crat no_leg no_thumbles
        no_thumbles_grip no_walk no_wander no_wander_about not_a not_a_fist not_a_rope not_cros not_cros_leg
        not_just not_just_your not_lac not_loll not_loll_as not_on not_on_a not_one not_over not_the not_the_bony
        not_the_toe not_too_far not_touch not_your_neck noth_at noth_at_all noth_hang noth_hang_off noth_under
        noth_under_the off_the on_the_mat on_the_meat on_you on_you_get on_your on_your_back on_your_front
        one_at_a one_behind one_each one_end one_end_rest one_foot one_foot_in one_in one_leg_back one_leg_out
        one_on one_ring open_the_finger operat_leg operat_leg_first opposit_arm opposit_arm_forward or_a
        or_a_bell or_bent or_bent_up or_one_in or_the_door or_youll or_youll_drift or_your_book other_elbow_first
        other_foot_off other_foot_out over_on over_on_your palm_look palm_to palm_to_the park_the park_the_walk
        pick_them pick_them_up pillow_out pillow_out_of pinch_them pinch_them_by pop_it_between posti_bow
        pull_the_shoulder push_your push_your_hip put_it_around quarter_squat read_for rib_knit_to ring_a
        ring_about ring_at ring_at_your ring_high ring_up roll_in roll_in_from roll_it_up roll_over_onto
        roll_to_it round_ten round_ten_on run_it run_it_down same_as_the same_block same_plac same_start sat_tall
        sat_up set_the shin_level sho_on sho_tied shoulder_blad shoulder_blad_in shoulder_blad_pinch
        shoulder_down_away shoulder_over shuffl_forward shuffl_to shuffl_to_the shut_it shut_the side_on_to
        sideway_on sink_down sink_till sink_till_your sit_back_an sit_down_into sit_forward sit_up sit_up_off
        slid_your_bum smooth_floor smooth_sid sock_on soft_kne soft_knee sol_of spread_out spread_the_finger
        squeez_everyth squeez_the_other squeez_your squeez_your_backsid stagger_your stagger_your_feet stand_in
        stand_next stand_next_to stand_still stand_tall start_at_the start_from start_in start_in_the stay_exact
        stay_tall stay_tall_through step_back_till step_back_until step_into step_onto step_onto_the step_under
        step_up step_up_off stick_down stick_down_your straddl_the sw_your sw_your_leg swap_your swap_your_feet
        swap_your_front take_a take_a_crat take_some_weight take_thre take_thre_or take_your_spe tall_kneel
        that_knee that_knee_soft that_what that_what_its the_band_just the_calf_and the_fat the_kne_not the_knot
        the_knot_goe the_other the_other_end the_other_in the_tre the_tre_behind the_tree the_two the_wrist
        the_wrist_stay ther_daylight they_dont_bend thi_time_stand thumb_point thumb_round thumb_wrap tie_it
        tight_bel_befor tiny_step tip_forward tip_forward_from tip_forward_till tip_over to_begin to_hold toe_at
        toe_at_ten toe_out toe_out_a toe_point_straight toe_tuck toe_turn toe_turn_out top_of top_of_a touch_them
        toward_you tuck_the tuck_the_toe turn_around turn_sideway turn_your_back two_dumbbell two_hand
        two_step_back under_the under_your_kne unles_your unles_your_a up_we up_we_get walk_back_till
        walk_back_to walk_it walk_it_out walk_the_feet walk_your_left we_are we_will weight_at weight_on
        weight_on_the wher_do wher_do_the whol_foot whol_foot_on wider_than wider_than_you with_the with_the_baby
        wrap_go wrap_go_on wrap_your wrist_under you_are you_can_catch you_go you_round you_stand you_will
        youll_want_somebod your_back your_back_to your_bum your_choic your_heel_go your_kne_want your_not_be
        your_not_on your_one_straight your_pal your_pal_goe your_stead your_tailbon
      `,
    ],
    [
      -0.2,
      `
        <air>_<place> <attend>_<attend> <chat>_<far> <chat>_<place> <far>_<do> <harm>_<do> <harm>_<far>
        <harm>_<take> <kit>_<part> <kit>_<settle> <move>_<far> <num>_<more> <num>_<pace> <part>_<do> <part>_<far>
        <part>_<ill> <part>_<not> <part>_<settle> <part>_<swap> <part>_<take> <place>_<attend> <place>_<more>
        arm_and arm_are arm_back arm_out_wide back_on bar_down bar_to bend_your_elbow both_arm by_the chin_tuck
        come_back come_down come_up cushion_on cushion_on_the down_on_the down_to elbow_back elbow_down
        elbow_tuck_under elbow_up_at eye_on feet_down feet_in feet_on feet_on_the feet_out feet_under
        feet_under_you feet_wider find_the fold_up free_hand free_hand_on from_the_hip get_your go_on
        hand_behind_the hand_end hand_end_up hand_finish hand_in_the hand_off hand_off_your hand_round_your
        hand_to hand_under_your hang_on head_down heel_and_toe heel_under heel_under_your heel_up hip_forward
        hip_level hip_squar_to hold_a hold_the hug_your if_the in_front_of its_the keep_it keep_the_kne kne_down
        kne_out kne_straight kne_to kne_up_to knee_bent knee_over knee_over_the knee_straight knee_up lean_in
        left_foot_forward leg_long_and leg_up_the look_at look_at_the loop_on neck_long not_at not_on_it
        not_on_your on_to one_finger over_the pick_a pick_the pick_up_one plat_on_your put_it_down put_the
        put_your rack_it rib_down ring_at_chest ring_in roll_on same_th shoulder_level shoulder_over_your
        shoulder_soft sit_back sit_between sit_between_your sit_down_between sit_down_to sit_tall_on sit_to
        sit_to_stand sit_your sit_your_hip stand_on_one stand_right stand_right_up stand_up start_with
        start_with_the step_back step_down take_one take_the take_your that_a that_the to_the toe_fac_front
        toe_forward toe_out_of toe_to toe_to_the toe_together tuck_behind tuck_behind_your tuck_it turn_your_palm
        up_onto weight_in weight_in_the weight_in_your with_a_dumbbell wrap_it wrist_flat wrist_straight your_a
      `,
    ],
    [-0.4, '<attend>_<place> hand_on hand_on_your'],
  ],
  word: [
    [0.8, 'palm'],
    [0.6, 'against end forearm forehead pad pin ring shin side sideway so stanc strap tall'],
    [
      0.4,
      `
        abov ahead alread bag begin behind bent bump butt cros crown edge fac finger foot forward four from front
        good half hand hang heaviest height hug kne kneel knuckl lac lie light long ly mat onto our outsid plank
        plant point position right roll same shuffl slack soft spread stagger strid thumb till tip touch tuck
        under underneath wide width
      `,
    ],
    [
      0.2,
      `
        about abreast along also alway anchor any anyth apart arm around as at away baby backrest backsid bar
        barbell befor bel bell bend beneath big blad blanket board bon bone bony both bow brak breastbon broom
        broomstick bum bushwalk button camera cannot cant carry case catch ceil chair check cheekbon choic clos
        collar cord crat curb damper deadlift decent downward duck dug dumbbell either elbow enough esky exact
        eyebrow face feat feet fenc fetch few fift fingertip fist flat flip foam fraction fram garter glov glu
        got grab grip guard gym held high hing hip hol hold holder hook hop horn how however jog jump just knee
        knot lan landmin lane lean left lefti leg length lid like line live load lock loll longway low make manag
        meat mermaid middl mood nearest neck next not noth now on one op or other otherwis over overhand pair
        parallel piano pinch pleas portrait post proud quarter rail reach read rim roof round run saddl sat
        scarecrow scon seriou set shad sho shoulder shrug shut sid skirt slop smooth sock sofa sog sol someth
        somewher spe spin split squat stack stand starfish start stead steadi stood straight stuck suitcas
        support sure tabl tabletop tailbon tea than them though throat thrown thumbles tickl tie tight tightrop
        tin tipto tour towel tree triangl tripod unles unlock unrack upright us walk wall want wedg week well
        wher widen wider wind worktop would wrap you your yourself
      `,
    ],
    [
      -0.2,
      `
        a after again and another banana band belt better book bor bounc brush buckl build call calv can cheek
        chin circl clear closer come comfortabl corner count curl day dead dig dip doe dont door doubl down drag
        draw drawer drink driv ease egg eight em empt ever everybod eye fall fifteen fill find fine fold folk
        follow full get give glut go gone grumbl hamstring has haul hear help here his hover i instead isnt it
        its jaw kick kiss kneecap know ladder last lazy lead leap leav lift longer look lot lower mak march me
        moment most mov my no nobody normal number old once overhead own paddl pass past paus peel perfect plent
        pocket pres puff quick quiet rais red relax rep rest rib rise rock saw say send sharp shav sheet should
        singl size skip slow snap some somebody squash stag stair star stay stick stool straighten stretch strong
        sw tak take tap tell the their then thes thi thigh third thirt thos tim time too try tum twelv twent
        twist untuck use warm was watch wet whatever when whil who window wing with without work
      `,
    ],
    [
      -0.4,
      `
        are breath car com ear finish for have higher is keep minut more only out pull push second shak spot stop
        that way weight
      `,
    ],
    [-0.6, 'do feel if land through'],
    [-0.8, 'put'],
  ],
} as const satisfies CueWeights
