/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind setup; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const SETUP_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [0.8, 'place'],
    [0.4, 'part take'],
    [0.2, 'far harm kit settle'],
    [-0.2, 'pace wrong'],
    [-0.4, 'air chat less more swap'],
    [-0.6, 'do not'],
  ],
  conditional: [[-0.4, 'yes']],
  first: [
    [0.6, '<part> <settle>'],
    [0.4, 'a arm light one palm same set tall wider'],
    [
      0.2,
      `
        <do> <harm> <kit> <move> <pace> <swap> <take> <wrong> an at bar bench big both bottom bum butt cardigan
        clos cros feet finger fingertip forearm forehead from guard half hang heaviest heel hook hug in knuckl
        kyle left leg let like load mid mine near not on or other outsid plank position right ring roll sat sho
        shuffl side smooth sock spread squeez start stood strap strid sw switch thi thumb toe tuck turn wrap
      `,
    ],
    [
      -0.2,
      `
        0 <air> <chat> <more> <not> all anchor and as chair chest chin come do dont down ear go if it its lift
        long look neck only out pull rest some step stop straight straighten take the ther thre to under use
        weight wrist
      `,
    ],
    [-0.4, 'hold keep put up'],
  ],
  given: [
    [0.2, 'comfier hard look prefer'],
    [-0.2, '<chat> <kit> <settle>'],
  ],
  last: [
    [0.4, 'bent bum ceil height kne kneel light tall tightrop touch'],
    [
      0.2,
      `
        all anchor anybod arch around away backrest backward band behind bit blanket bump butt camera cash chair
        closer cold collarbon comfier crat deadlift edge feet fenc fift flat fram front gent good hard hip hold
        it knee kyle mid neck on opposit out pair peopl plank portrait rail right rock roll room round run same
        seat shin short shoulder soft split squar stanc start support tailbon ten think time together top track
        triangl under upright wee well wide width worktop wrist you
      `,
    ],
    [
      -0.2,
      `
        and arm ball bar body bottom breath cooler ear end face first hand heel here higher inch leg level now
        one pleas rack second strap tabl ther up way weight
      `,
    ],
    [-0.4, 'back down go toe'],
  ],
  length: [
    [-0.2, '5-7 8-12'],
    [-0.4, '1-2'],
  ],
  pair: [
    [0.6, 'leg_<place> thi_<pace> thi_time'],
    [
      0.4,
      `
        <chat>_us <far>_than <kit>_at <more>_to <not>_on <part>_a <part>_hang <part>_length <part>_point
        <part>_till <part>_under <part>_width <place>_our <place>_the <place>_till <settle>_the a_tightrop
        and_<settle> and_the and_your by_your each_hand end_<place> fac_the foot_<place> knee_<place> left_<part>
        let_us not_<place> not_on of_it set_the side_<place> side_on strid_away the_<do> the_ceil the_neck to_be
        turn_<place> under_the us_come your_<kit> your_shoulder
      `,
    ],
    [
      0.2,
      `
        <air>_on <attend>_arm <attend>_fac <attend>_fift <attend>_kne <attend>_kneel <attend>_off <attend>_on
        <attend>_pair <attend>_ten <attend>_train <attend>_under <attend>_well <chat>_against <chat>_are
        <chat>_can <chat>_foot <chat>_hand <chat>_is <chat>_kneel <chat>_lift <chat>_make <chat>_stiff
        <chat>_switch <chat>_the <do>_arm <do>_around <do>_baby <do>_between <do>_from <do>_into <do>_kne
        <do>_leg <do>_sideway <do>_under <far>_again <far>_of <far>_off <far>_on <far>_plank <far>_ther
        <far>_youv <harm>_leg <harm>_point <harm>_to <harm>_turn <kit>_and <kit>_between <kit>_by <kit>_fift
        <kit>_into <kit>_off <kit>_short <kit>_so <kit>_to <kit>_up <kit>_with <less>_as <less>_kneel <less>_sit
        <more>_as <more>_foot <more>_hand <more>_high <more>_in <more>_over <more>_ther <more>_you <move>_a
        <move>_arm <move>_around <move>_baby <move>_forward <move>_into <move>_kne <move>_leg <move>_room
        <move>_sideway <move>_so <move>_to <move>_up <not>_a <not>_bell <not>_care <not>_crat <not>_out
        <not>_over <num>_behind <num>_end <num>_foot <num>_for <num>_hand <num>_in <num>_kneel <num>_sit
        <num>_step <pace>_pair <part>_an <part>_and <part>_as <part>_at <part>_behind <part>_bent <part>_bone
        <part>_cross <part>_distanc <part>_fac <part>_fift <part>_height <part>_hold <part>_just <part>_like
        <part>_long <part>_make <part>_on <part>_opposit <part>_over <part>_prefer <part>_rest <part>_round
        <part>_so <part>_that <part>_tuck <part>_turn <part>_when <part>_wherever <part>_wide <part>_with
        <place>_abov <place>_again <place>_as <place>_away <place>_by <place>_flat <place>_for <place>_front
        <place>_gent <place>_hand <place>_hip <place>_in <place>_kne <place>_lan <place>_like <place>_one
        <place>_onto <place>_over <place>_position <place>_prefer <place>_so <place>_support <place>_than
        <place>_them <place>_thre <place>_tipto <place>_top <place>_until <place>_your <settle>_against
        <settle>_between <settle>_bon <settle>_each <settle>_forward <settle>_hold <settle>_leg <settle>_one
        <settle>_side <settle>_so <settle>_some <settle>_stiff <settle>_tall <settle>_them <settle>_up
        <settle>_yourself <swap>_and <swap>_bell <swap>_crat <swap>_down <swap>_handl <swap>_hold <swap>_just
        <swap>_manag <swap>_reach <swap>_short <swap>_tied <take>_between <take>_bon <take>_each <take>_flat
        <take>_hip <take>_on <take>_over <take>_the <take>_yourself <wrong>_a a_0 a_<chat> a_<num> a_<swap>
        a_cold a_cushion a_good a_mat a_portrait a_stick a_thre a_touch a_towel a_triangl a_wee about_a
        about_your abov_your acros_the against_the against_your ahead_of all_<settle> all_<take> all_four
        an_<far> an_<part> an_arm an_end an_inch an_iron and_<move> and_<take> and_all and_five and_head and_keep
        and_lie and_open and_someth and_spread and_test and_walk ankl_and are_<place> are_go arm_<attend>
        arm_<wrong> arm_cross arm_hang arm_length arm_opposit arm_straight arm_to as_an as_well assum_an at_about
        at_chest at_your away_from baby_<place> baby_in back_<attend> back_<far> back_<less> back_as back_of
        back_prefer back_till back_with backsid_and ball_<place> ball_between band_<more> bar_in bar_on
        behind_your bel_<place> bel_on bell_a bend_<attend> bend_like bent_<more> bent_<place> bent_over bent_up
        between_your big_<harm> big_<part> big_plank bit_<place> bit_closer body_lean bon_<attend> bon_heav
        bony_bit both_the broom_<kit> broom_handl by_ther can_hold can_manag can_reach cardigan_roll chest_<far>
        chest_height chest_is clos_to come_down cros_leg cros_the cushion_and cushion_under deadlift_it
        done_<place> dont_care down_<place> down_away down_flat down_onto down_until down_your downward_dog
        duck_<place> duck_under dug_<place> dug_in dumbbell_at each_<part> each_side edge_of elbow_<chat>
        elbow_<place> elbow_first elbow_tuck end_<more> end_in end_up fac_<place> face_the feat_<place>
        feat_together feet_a feet_flat feet_hip feet_over feet_to find_your finger_<place> fingertip_<place>
        fingertip_on fist_<place> fist_and floor_<less> floor_<pace> floor_<place> floor_about floor_hard
        foot_<part> foot_back foot_behind foot_forward for_ten for_the for_thi forearm_<place> forearm_down
        forehead_<place> forehead_and forehead_down forward_again from_anybod from_downward from_it from_the
        from_your front_<far> front_edge further_than get_<place> get_down get_it give_yourself go_<less>
        go_against go_stiff go_to guard_<more> guard_<place> guard_up half_kneel half_sit hand_<attend>
        hand_<chat> hand_<do> hand_<place> hand_and hand_as hand_at hand_hold hand_just hand_over hand_rest
        hand_round hand_toward hand_under handl_<place> handl_by hang_down hang_it hang_off head_<move> head_make
        head_touch heaviest_pair heel_<attend> heel_<place> heel_a heel_and heel_go heel_hang help_<chat>
        help_you high_about high_again hip_distanc hip_over hip_width hold_them hook_at how_<harm> how_<more>
        how_<pace> how_peopl how_stead hug_baby hug_in i_would in_<harm> in_<num> in_<pace> in_a in_each in_front
        in_gent in_one in_support inch_off into_it iron_board is_all it_<place> it_bent it_off it_on it_out
        it_under its_<place> its_how its_touch jog_<place> jog_in just_<place> just_assum just_outsid kne_an
        kne_bent kne_under kne_when knee_<attend> knee_and knee_down knee_hug knee_soft kneel_<harm> kneel_spot
        knuckl_<more> knuckl_<place> knuckl_to knuckl_up lat_<place> lat_on lean_<part> lean_<place> lean_a
        lean_back leav_lane left_foot left_hand leg_<attend> leg_<move> leg_behind leg_in leg_long leg_out
        leg_stay leg_wherever length_from lie_<part> lie_<place> lie_back lift_it light_pair like_<chat>
        like_<num> like_ten like_train like_you like_your littl_<part> littl_<place> littl_back look_from
        make_<attend> make_<place> make_a make_room make_soft mat_is mat_stick middl_of mine_is near_<part>
        near_hand neck_bone newspaper_tuck next_to no_<kit> no_bell no_crat not_a not_out not_over oclock_<place>
        oclock_on of_<chat> of_the of_you off_your on_our on_them on_tipto on_to on_top one_<part> one_behind
        one_dumbbell one_each one_end one_foot one_for one_hand one_in onto_our open_the operat_<part> operat_leg
        or_<place> or_bent or_on or_the other_<part> other_<place> other_elbow other_fist other_knee other_on
        our_back out_<num> out_a outsid_lan over_<place> over_for over_onto pad_<place> pad_on pair_<chat>
        pair_you palm_down palm_look palm_to point_<place> point_at prefer_it push_<more> push_<place> push_up
        reach_<place> rear_<part> rear_heel rest_on right_<part> ring_<far> ring_high ring_to roll_<more>
        roll_<settle> roll_<take> roll_up run_<place> run_in same_<kit> same_<less> same_<take> same_bar
        same_foot same_half sat_<attend> sat_tall sav_your seriou_peopl sho_tied shoe_away shorten_your
        shoulder_<move> shoulder_<place> shoulder_over shoulder_width shuffl_<place> shuffl_forward sid_<place>
        side_of sideway_<place> sideway_on sit_away sit_bon sit_forward sleev_roll small_plat so_it so_that
        sock_<place> sock_on soft_<part> soft_kne some_<attend> some_<kit> some_<part> some_weight somebod_to
        someth_<chat> someth_you somewher_<place> somewher_between spread_<place> spread_out spread_the
        squeez_your stack_<place> stack_on stand_between stand_with start_<attend> start_<place> start_in
        start_on stay_down stead_<chat> stead_to stead_you step_<more> step_into step_up stick_<harm>
        stick_<place> stick_down stick_each stiff_<attend> stiff_as still_<place> still_fac straight_and
        strap_<place> strap_down strap_short sure_the sw_your swap_your switch_<part> switch_arm switch_kne
        take_<settle> take_<take> take_a take_hold take_some tall_kneel tall_on tea_tray ten_to test_it than_youd
        that_been that_comfier that_is that_knee that_your the_<harm> the_<ill> the_<part> the_<swap> the_<wrong>
        the_anchor the_ankl the_arch the_back the_backrest the_ball the_band the_banister the_blanket the_bony
        the_broom the_camera the_cash the_chair the_door the_edge the_fenc the_finger the_floor the_glov the_kne
        the_left the_long the_meat the_middl the_newspaper the_other the_pad the_seriou the_shin the_split
        the_step the_toe the_wrist ther_off they_<take> they_want thigh_together thre_and thumb_<place>
        thumb_point till_ther till_your tipto_to to_<move> to_<take> to_help to_jump to_the to_two toe_<place>
        toe_point toe_turn towel_<more> towel_out towel_up train_track triangl_with tuck_<place> tuck_in tuck_the
        turn_around turn_out turn_sideway two_<do> two_<far> two_<kit> two_step under_<part> under_shoulder
        until_youv up_<attend> up_<kit> up_<less> up_as up_high up_in up_over up_ther us_<settle> want_somebod
        want_to we_will weight_<num> weight_fift weight_off whol_of wide_for wider_than wider_to will_<settle>
        will_<take> with_the with_your would_<attend> would_like wrap_your you_<attend> you_<move> you_<swap>
        you_are you_can you_kneel you_lift you_like you_make you_switch youd_<attend> youd_think your_<move>
        your_<part> your_<place> your_<swap> your_armpit your_backsid your_bel your_book your_bum your_butt
        your_chair your_chest your_collarbon your_deadlift your_feet your_forehead your_go your_grip
        your_heaviest your_in your_knee your_palm your_right your_run your_side your_strap your_tailbon
        your_thigh your_tripod your_whol yourself_<place> youv_rock
      `,
    ],
    [
      -0.2,
      `
        <attend>_a <attend>_as <attend>_at <attend>_in <attend>_it <attend>_over <attend>_the <attend>_to
        <attend>_you <chat>_first <chat>_it <chat>_on <chat>_your <do>_down <do>_on <do>_that <do>_them
        <do>_through <far>_down <far>_that <far>_the <harm>_on <kit>_for <kit>_from <kit>_if <kit>_it <kit>_out
        <kit>_over <less>_to <more>_at <more>_onto <more>_the <more>_your <move>_and <move>_off <move>_on
        <move>_that <move>_them <move>_through <move>_with <move>_your <num>_on <num>_second <pace>_on
        <pace>_with <part>_are <part>_away <part>_back <part>_down <part>_foot <part>_goe <part>_hover <part>_in
        <part>_level <part>_off <part>_only <part>_to <place>_and <place>_at <place>_between <place>_block
        <place>_both <place>_foot <place>_if <place>_someth <place>_squeez <place>_toward <place>_you <settle>_a
        <settle>_out <settle>_to <swap>_a <swap>_it <swap>_on <swap>_round <swap>_the <swap>_under <take>_down
        <take>_it <take>_out <take>_together <take>_your a_<do> a_<harm> a_<kit> a_<less> a_<pace> a_box a_chair
        a_plat a_spot a_time and_<attend> and_<chat> and_<place> and_<swap> and_leav and_let and_row as_a as_you
        at_a back_<place> back_and back_foot back_to bar_over bell_<more> bell_up both_sid by_squeez by_the
        chest_<place> chest_to com_<place> come_<part> come_<place> come_back cushion_<place> cushion_on do_it
        dont_<do> down_and down_between each_one elbow_<attend> eye_<place> eye_on face_forward feet_<more>
        feet_<place> feet_away feet_down feet_together find_the floor_<swap> foot_<more> foot_down foot_off
        foot_up from_<place> from_under front_<part> get_your go_<place> goe_<place> hair_<place> hair_in
        hand_<far> hand_<more> hand_down hand_off hand_to hand_wider have_a hip_level hold_<place> hover_<place>
        hover_over in_<place> in_ther in_tight into_the it_down it_in keep_the keep_your kne_and kne_in knee_on
        knee_to land_<place> leav_the leav_your leg_<chat> leg_<do> leg_a let_the like_a mid_<part> mid_shin
        of_<harm> on_<kit> on_block on_someth on_your one_<attend> one_<more> one_on or_<settle> or_<take> out_to
        over_<harm> over_toe over_your palm_<more> palm_up plat_<place> put_a put_it put_your rib_<place>
        rib_down ring_in roll_onto round_your seat_<place> shin_<far> shoulder_rest sit_<part> sit_<place>
        sit_back sit_down sit_to some_of spot_<place> spot_on squar_to stand_<more> stand_up start_with stay_on
        step_<part> step_<place> step_in step_out straight_<attend> straight_<part> straight_<settle>
        straight_line take_the take_your tall_<place> tall_by that_shoulder the_arm the_bar the_bottom the_cooler
        the_foot the_handl the_kneecap the_leg the_length the_rack the_rib the_side the_thigh thi_one thigh_and
        through_the tight_to to_<part> toe_<do> touch_the toward_your turn_your until_that up_at up_onto up_the
        way_<place> weight_<more> weight_<place> weight_over weight_up whil_<chat> with_a wrist_flat you_<chat>
        you_<place> you_<settle> you_<take> you_first you_want your_<attend> your_<harm> your_<pace> your_arm
        your_bottom your_ear your_elbow your_eye your_face your_head your_lowest your_middl your_sid your_weight
      `,
    ],
    [-0.4, '<kit>_in <place>_of out_of the_way your_toe'],
  ],
  phrase: [
    [0.8, 'setup-sure'],
    [0.6, 'equipment-likely'],
    [0.4, 'setup-hint setup-likely'],
    [0.2, 'easier-hint equipment-hint focus-hint range-likely tempo-hint'],
    [
      -0.2,
      `
        breathing-likely caution-hint chat execution-hint execution-sure fault-hint praise purpose range-sure
        tempo-likely tempo-sure transitions
      `,
    ],
    [-0.4, 'breathing-sure dose_only easier-sure fault-sure harder-sure'],
    [-0.6, 'empty_clauses execution-likely focus-sure'],
  ],
  start: [
    [0.6, '<part>_<place>'],
    [0.4, '<place>_<part> a_bit let_us let_us_come not_a not_a_tightrop set_the thi_time'],
    [
      0.2,
      `
        <attend>_<num> <chat>_<not> <chat>_<part> <do>_<place> <far>_<harm> <kit>_<place> <more>_<part>
        <move>_<more> <move>_<place> <not>_<kit> <not>_<place> <num>_<kit> <num>_<part> <num>_<place>
        <part>_<attend> <part>_<chat> <part>_<wrong> <place>_<harm> <place>_<less> <place>_<place>
        <settle>_<attend> <settle>_<less> <settle>_<part> <swap>_<kit> <swap>_<place> <take>_<attend>
        <take>_<part> a_bit_closer a_good a_wee an_inch_off arm_like arm_like_train arm_opposit arm_out_like
        arm_straight arm_to arm_to_the at_your at_your_chest bar_in bar_in_the bar_on bar_on_the bell_a
        bell_a_long bend_like bend_like_your bend_your_knee big_plank big_toe body_lean body_lean_a both_hand
        both_hand_on both_the both_the_same bottom_at bottom_at_the br_the_end bum_back bum_back_to cardigan_roll
        cardigan_roll_up chest_height chest_on chest_on_the clos_to clos_to_your cros_leg cros_the deadlift_it
        deadlift_it_up dont_just_assum down_flat down_onto down_onto_your elbow_tuck fac_the_chair face_the
        feet_a feet_flat find_your find_your_tripod fingertip_on forearm_down from_downward from_downward_dog
        get_up get_up_ther give_yourself give_yourself_a go_stiff go_stiff_as grab_a_stick guard_up half_kneel
        hand_as hand_just hand_just_outsid hand_on_the hand_over hand_over_the heaviest_pair heaviest_pair_you
        heel_a heel_a_shoe heel_and heel_as_well heel_hang heel_hang_off heel_on heel_on_the high_about
        high_about_your hike_it_up hip_up hold_the_bell hold_them hook_at hook_at_about hug_baby hug_baby_in
        i_dont_care i_would i_would_like if_that_comfier if_the if_the_floor if_your_back if_your_look in_the
        in_the_arch kne_an kne_an_inch kne_bent kne_up_over lean_back leg_long leg_wherever lie_back light_pair
        like_your make_soft make_sure_the mine_is near_hand near_hand_on no_bell no_crat not_on not_on_a not_out
        not_out_in not_over not_over_your not_the not_the_bony on_your on_your_back on_your_side one_behind
        one_each one_each_side one_foot one_hand_at one_in operat_leg_straight or_a or_a_towel or_bent or_bent_up
        other_elbow other_elbow_first palm_down palm_look palm_look_in palm_to palm_to_the pop_it_between push_up
        put_your_whol rib_and rib_and_head ring_up ring_up_as roll_the_towel same_bar same_foot same_half
        same_half_kneel sho_tied shorten_your shorten_your_strap shoulder_down_away shoulder_over shuffl_forward
        side_on side_on_to sit_away sit_away_from sit_bon sit_bon_heav sit_forward sit_forward_again sock_on
        soft_kne spread_out squeez_the_other squeez_your squeez_your_backsid squeez_your_bum stand_between
        stand_between_them stand_on_the stand_tall_on start_at_the start_in start_in_the step_into step_into_it
        step_up stick_down stick_down_your strap_short strid_away swap_your swap_your_feet switch_kne
        switch_kne_when take_a take_a_thre take_some take_some_weight take_the_banister tall_kneel that_knee
        that_knee_soft that_your_bel the_other thigh_together toe_point toe_point_straight toe_turn toe_turn_out
        towel_out tuck_the tuck_the_toe turn_around turn_sideway turn_sideway_on turn_the_palm up_on_the walk_it
        we_will weight_on weight_on_the wider_than wider_to wider_to_make wrap_your wrist_straight you_are
        you_are_go you_make you_make_a youll_want youll_want_somebod your_heel_go your_not your_not_on
      `,
    ],
    [
      -0.2,
      `
        <air>_<place> <attend>_<place> <chat>_<place> <chat>_<swap> <kit>_<part> <not>_<do> <num>_<more>
        <num>_<pace> <part>_<do> <part>_<more> <part>_<settle> <part>_<take> <settle>_<far> <settle>_<more>
        <swap>_<more> arm_out_in back_to back_to_your bar_over both_feet cushion_under_your down_on eye_on
        eye_on_the feet_on_the feet_under_you get_your hand_down hand_down_by hand_on hand_on_a hand_to
        hand_wider hold_the_chair keep_your leg_a leg_a_hair leg_flat on_to palm_up put_a put_your put_your_feet
        rest_your rib_down ring_in ring_in_tight roll_onto roll_onto_your sit_down sit_to sit_to_stand
        stand_tall_by step_back step_in take_your toe_on toe_on_the turn_your up_to weight_in weight_up
        weight_up_at whol_foot_on with_a wrist_flat
      `,
    ],
    [-0.4, '<settle>_<place> feet_together'],
  ],
  word: [
    [0.6, 'bent palm tall tuck'],
    [
      0.4,
      `
        about an away behind ceil edge fac forehead forward from front half hand hang height knee kneel left
        light other our pad plant right ring same side so spread strap tightrop wide wider
      `,
    ],
    [
      0.2,
      `
        abov against ahead arch arm armpit around assum at backrest backsid balanc banister begin bell between
        bit blanket bon bony broom bum bump butt camera cardigan care cash clos cold collarbon comfier crat cros
        deadlift distanc downward duck dug dumbbell each end feat feet fenc fift finger fingertip fist flat foot
        forearm fram give good grip guard heaviest heel high hip hook horn how hug inch iron jog just kne knuckl
        kyle lan lane lat length lie like ly make manag mat meat mid mine neck not of on onto operat outsid pair
        peopl plank point portrait position prefer rail rear rock roll run sat sav seat seriou set shin shoulder
        shuffl sid sleev smooth sock soft somewher sort split squeez stanc start stead step stiff strid support
        sw switch test than thi thumb tied till time tipto touch train triangl tripod turn under upright us want
        wee wherever width wrap wrist you youd your yourself youv
      `,
    ],
    [
      -0.2,
      `
        0 after all along and are belt body bottom breath car check chin com come cooler count curl dont driv
        even ever eye far feel finish first float fold for full go goe gone got hair handl has have head here
        higher hover is kneecap land last leav level lift line littl lock look lot lower lowest mak me mind minut
        more mov nice nose out past paus pleas pocket pull push rack rais rib round row see shak should six
        somebody spot squash squat stop straight straighten stretch tail tak take tap that them then ther thes
        thos tight tim too toward use watch weight what wher whil
      `,
    ],
    [-0.4, 'a down ear if it its keep only second stay the through way'],
    [-0.6, 'do put'],
  ],
} as const satisfies CueWeights
