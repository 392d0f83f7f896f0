/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind execution; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EXECUTION_WEIGHTS = {
  bias: [[-0.2, 'yes']],
  class: [
    [0.4, 'part'],
    [0.2, 'do move place'],
    [-0.2, 'harm ill num pace swap'],
    [-0.4, 'air less not'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.6, 'opposit'],
    [
      0.4,
      `
        <do> <far> <part> <take> and build chang down elbow hold jab land lean let like long not pres quiet shov
        squash toe
      `,
    ],
    [
      0.2,
      `
        <air> <move> <place> <settle> <swap> <wrong> all allow as away backward bar bel big body both bow cheek
        chest chin chop drag draw driv ear ease fetch follow free from gent grab hang haul head hey home hop jaw
        jump kne kneel left length lock lower near nose off one other paddl pedal peel pick pinch pop prim pull
        rib set settl shelf short shoulder skip slip slow small soak squar squeez start sw swap take the they thi
        thought tight together trac tum two underneath wait we when wind without you
      `,
    ],
    [
      -0.2,
      `
        <chat> <harm> <less> <not> <pace> a ankl arm back bottom br bum by clos dont drop feel fold forearm good
        have heel hug i it last leav leg lie low no nobod nobody operat or palm pump reach rest row run shak snap
        some squat stay stop straight straighten switch tall tap ten theyr think try turn use walk watch with
        youll youv
      `,
    ],
    [-0.4, '<num> if its make shuffl that ther tuck your'],
  ],
  given: [
    [0.2, '<do> <harm> <move> a and are bad bit dont gone just kne rock side to your'],
    [-0.2, 'the'],
  ],
  last: [
    [0.6, 'and other'],
    [0.4, 'again button chang first home middl soft step swap toe way'],
    [
      0.2,
      `
        acros air anywher arch armpit away backward behind bend bent board body bow bus by came ceil cheek
        chicken click complete control cros doesnt door ear escalator fall five floor flow follow foot forehead
        full gent half hang hard head hike hip hop in jab kiss kitchen knee land last lead lean left leg littl
        log long loos mat meet metr nice nowt parrot pocket point position proud rest return rib right roller run
        shin shirt side sideway sink skip slow small smidg stand stomp straight strok sw switch tall tap thought
        tight time tipto together touch towel under up upright waist were wide window you
      `,
    ],
    [
      -0.2,
      `
        0 around bel bench bottom box breath bum calv chair chest closer com flat float front ful go ground help
        high higher instead level lung march me now off out plank pleas pres rail round row short slid spin squat
        squeez stretch taller then thi turn twist ups walk wrist
      `,
    ],
    [-0.4, 'hand shoulder'],
  ],
  length: [
    [-0.2, '3-4 5-7 8-12'],
    [-0.4, '1-2'],
  ],
  pair: [
    [0.8, '<place>_again'],
    [0.6, 'the_other'],
    [
      0.4,
      `
        <chat>_them <do>_forward <far>_you <more>_as <part>_back <part>_first <part>_push <part>_to <part>_up
        <place>_between <place>_with <settle>_through and_<do> and_<move> and_<place> and_down and_stand are_go
        arm_<do> bit_<place> down_again down_between down_the for_<num> hip_<chat> into_the it_ther land_<place>
        let_them only_the opposit_<part> opposit_arm rib_<place> shoulder_<attend> shoulder_<place> tail_<place>
        tall_<place> the_ball the_side the_top to_your toward_your way_in we_<do> we_<move>
      `,
    ],
    [
      0.2,
      `
        0_behind 0_oclock 0_short <air>_down <air>_for <air>_out <air>_over <air>_tight <attend>_a <attend>_again
        <attend>_and <attend>_at <attend>_back <attend>_down <attend>_even <attend>_fast <attend>_feet
        <attend>_follow <attend>_if <attend>_in <attend>_kne <attend>_on <attend>_out <attend>_over <attend>_step
        <attend>_that <attend>_ther <attend>_theyll <attend>_through <attend>_youll <chat>_again <chat>_arm
        <chat>_bend <chat>_breath <chat>_complete <chat>_em <chat>_fight <chat>_it <chat>_last <chat>_meet
        <chat>_pull <chat>_rack <chat>_reach <chat>_right <chat>_say <chat>_slow <chat>_third <chat>_to
        <chat>_toward <chat>_yourself <do>_a <do>_about <do>_acros <do>_any <do>_cros <do>_down <do>_from
        <do>_hand <do>_it <do>_left <do>_off <do>_right <do>_straight <do>_that <do>_the <do>_them <do>_ther
        <do>_till <do>_under <do>_up <do>_yourself <far>_arm <far>_bit <far>_hip <far>_round <far>_step <far>_the
        <far>_under <far>_your <harm>_and <harm>_away <harm>_fac <harm>_left <harm>_point <harm>_right <ill>_and
        <ill>_it <kit>_apart <kit>_back <kit>_bow <kit>_even <kit>_height <kit>_it <kit>_of <kit>_out <kit>_slid
        <kit>_stay <kit>_through <kit>_with <less>_all <less>_bounc <less>_it <less>_when <more>_arm <more>_on
        <more>_onto <more>_sit <more>_tall <more>_through <more>_till <more>_to <more>_you <move>_acros <move>_an
        <move>_any <move>_at <move>_first <move>_forward <move>_it <move>_left <move>_one <move>_relax
        <move>_squar <move>_straight <move>_swap <move>_tall <move>_the <move>_ther <move>_together <move>_under
        <move>_your <not>_acros <not>_answer <not>_at <not>_away <not>_bend <not>_drop <not>_flar <not>_flop
        <not>_forward <not>_leap <not>_like <not>_mid <not>_out <not>_paus <not>_sit <not>_stop <num>_bone
        <num>_doe <num>_drawer <num>_heel <num>_hip <num>_knee <num>_leg <num>_line <num>_metr <num>_point
        <num>_short <num>_side <num>_step <num>_up <pace>_go <pace>_of <pace>_on <part>_and <part>_away <part>_be
        <part>_befor <part>_between <part>_big <part>_brush <part>_button <part>_com <part>_cop <part>_doe
        <part>_driv <part>_even <part>_full <part>_go <part>_goe <part>_heav <part>_high <part>_into <part>_join
        <part>_land <part>_lead <part>_lik <part>_like <part>_loos <part>_low <part>_mov <part>_nail <part>_of
        <part>_one <part>_out <part>_pull <part>_round <part>_stay <part>_still <part>_straight <part>_sw
        <part>_swing <part>_tall <part>_then <part>_through <part>_till <part>_until <place>_as <place>_back
        <place>_bone <place>_down <place>_first <place>_front <place>_hard <place>_in <place>_into <place>_kne
        <place>_knee <place>_like <place>_out <place>_pull <place>_sideway <place>_sit <place>_slow <place>_so
        <place>_step <place>_still <place>_tall <place>_that <place>_thos <place>_till <place>_toward <place>_you
        <settle>_about <settle>_all <settle>_by <settle>_complete <settle>_in <settle>_it <settle>_last
        <settle>_long <settle>_slow <settle>_ther <swap>_about <swap>_drop <swap>_face <swap>_height <swap>_lean
        <take>_about <take>_in <take>_it <take>_land <take>_off <take>_out <take>_through <take>_your
        <wrong>_forward <wrong>_in <wrong>_out <wrong>_the a_<do> a_<far> a_<pace> a_<take> a_bell a_bit a_book
        a_cat a_chicken a_circl a_count a_flat a_hug a_jog a_knee a_littl a_log a_parrot a_smidg a_stand a_time
        a_wee after_it all_com all_of all_the all_touch allow_the along_your an_escalator and_<settle> and_<swap>
        and_<take> and_away and_back and_br and_clos and_draw and_fold and_hold and_if and_let and_lift and_over
        and_roll and_stay and_turn ankl_be ankl_behind answer_the are_<attend> are_<harm> are_<ill> are_<place>
        are_bad arm_<attend> arm_<chat> arm_<move> arm_<part> arm_big arm_go arm_goe arm_like arm_out arm_sw
        arm_then as_<attend> as_a as_fast as_if as_on as_youll at_<far> at_<num> at_a at_each at_it at_ninet
        away_<attend> away_again away_to baby_a back_<place> back_and back_in back_into back_knee back_like
        back_one back_out back_still backsid_first bad_and ball_of bar_<do> bar_slid bar_stay be_<less>
        be_<wrong> be_stiff befor_you behind_<chat> behind_it behind_you bel_<less> bel_tight belt_<far>
        belt_height bench_back bend_<pace> bend_any between_your big_<do> big_<move> big_arm bit_<chat> bit_at
        bit_good bit_in bit_side blad_<place> blad_down body_<do> body_swing bone_<place> bone_at bone_by
        both_<part> both_hook both_sit bottom_<far> bottom_of bow_again br_it br_them brac_<place> brac_on
        breath_<place> breath_in breath_out brush_your build_<more> build_<place> build_up bum_<place>
        butt_<less> butt_tight by_bone by_pull calv_want catch_it cheek_to chest_<attend> chest_and chest_com
        chest_down chest_get chest_open chest_tall chin_<part> chin_<place> chin_tuck circl_with closest_to
        come_all come_away come_through come_together count_of creep_<place> creep_forward cros_<num>
        cross_<place> curl_your curtain_<place> curtain_on dead_<attend> do_your dont_<chat> dont_<move>
        dont_<wrong> dont_bend dont_leap dont_let dont_pull door_with down_<attend> down_<place> down_as
        down_first down_in down_under draw_it drift_<place> drift_out driv_<more> driv_<place> driv_up drop_it
        ear_to ease_off elbow_<far> elbow_at elbow_brush elbow_high elbow_skim elbow_up end_with ever_time
        exhal_<more> exhal_<place> exhal_up eye_follow eye_on fast_<attend> fast_as feet_for feet_in feet_land
        feet_off fetch_it fight_it finish_<place> first_0 first_<do> first_<move> first_<num> first_bend
        first_third five_<pace> flex_the float_the float_your floor_and flutter_them fold_<place> fold_forward
        follow_along foot_<more> foot_follow foot_goe foot_under foot_up for_four for_ten for_them for_thes
        forward_a forward_and forward_whil free_<part> free_hand from_<chat> from_each from_here from_the
        from_you front_<far> front_<part> front_heel front_of front_shin front_wider get_<attend> get_tall
        give_baby go_<chat> go_<far> go_again go_anywher go_complete go_last go_long go_right go_slow go_to
        go_too goe_<part> goe_<place> goe_back goe_long goe_out gone_<place> gone_by gone_straight good_<part>
        good_foot grab_the hand_<chat> hand_<far> hand_<move> hand_down hand_finish hand_go hand_on hand_stay
        hand_straight hand_to hand_when hang_in hang_ther happen_at head_come head_through head_to hear_nowt
        hear_stomp heel_<move> heel_glu heel_nail heel_of heel_right heel_stay heel_to high_<place> hike_it
        hip_<far> hip_and hip_first hip_forward hold_<place> hold_your home_again hook_when i_say if_step if_that
        in_<far> in_<less> in_<pace> in_again in_and in_front in_out in_slow in_ther in_till in_toward in_with
        inhal_<place> inhal_down is_<num> is_one it_<attend> it_<not> it_<part> it_away it_back it_bent it_came
        it_click it_doesnt it_down it_fall it_flow it_hit it_home it_into it_land it_mov it_smooth it_to its_gone
        its_mate its_only its_your jaw_loos jog_is join_it jump_again jump_forward just_<do> just_<less> just_in
        just_lower just_off keep_swap keep_the keep_your kne_<do> kne_<more> kne_<move> kne_as kne_out kne_point
        kne_push kne_to kne_up knee_<more> knee_<place> knee_a knee_com knee_down knee_stay knee_up kneel_<more>
        kneel_<place> kneel_up knuckl_look land_on land_under lean_in leap_at left_<part> left_arm leg_<do>
        leg_<move> leg_away leg_ever leg_on leg_push leg_together let_em let_yourself lift_<num> lift_one
        lift_your lik_that like_<chat> like_<part> like_<place> like_a like_down like_open like_your line_and
        littl_<do> littl_<kit> littl_step lock_<place> lock_out lock_the long_<do> long_<move> long_again
        long_step look_<place> look_over look_straight look_the lov_let make_<num> make_one march_<place>
        march_on mate_<swap> mate_do mid_<air> mid_air mind_<more> mind_up more_<attend> more_as mov_<place>
        mov_in move_<far> nail_<place> nail_down neck_lik never_away next_to no_lean no_sit nose_<place> nose_for
        nose_over not_<not> not_<pace> not_<place> not_<wrong> not_acros not_answer not_flar not_flop not_forward
        not_mid not_out not_paus not_stop oclock_<place> of_<num> of_five of_your off_<not> off_<pace> off_<swap>
        off_and off_the off_without on_that on_the on_thos one_<attend> one_<part> one_<settle> one_at one_bone
        one_doe one_down one_heel one_hip one_knee one_leg one_line one_long one_side one_up opposit_leg
        opposit_one or_<kit> or_youll other_<num> other_foot other_hip other_one other_pair other_toe out_<place>
        out_again out_in out_like out_sideway out_to outsid_<part> outsid_leg over_a over_your own_<settle>
        own_<take> own_face paddl_light past_your pedal_the pick_the pinch_it pres_<more> pres_<place> pres_it
        pres_up pres_your pull_<far> pull_<more> pull_<place> pull_it pull_the pull_up push_<place> push_away
        push_down push_off push_out put_your reach_<part> reach_<place> reach_back reach_under read_your rib_and
        rib_over rib_soft rib_tuck right_arm right_into right_leg right_off ring_<move> rock_a rock_over
        roll_<part> roll_back roll_it roll_through round_to same_<attend> same_as same_bow same_leg same_road
        same_way seat_<place> set_it settl_<place> short_<move> short_<wrong> short_hike short_strok shoulder_and
        shoulder_down shoulder_heav shoulder_up shov_the shov_your side_to sit_<part> sit_<place> sit_back
        sit_down sit_ther sit_your skim_your skip_<place> skip_on skirt_board slack_<place> slack_out slam_the
        slid_down slid_to slid_your slip_<chat> slip_<more> slip_left slip_right slow_<settle> slow_go small_<do>
        small_step snap_the soak_it sock_<more> sock_up soft_kne split_your spot_<part> spot_kne squar_to
        squash_the squeez_<place> squeez_and squeez_at squeez_the squeez_your stand_about start_with stay_<place>
        stay_<settle> stay_<take> stay_in stay_near stay_on stay_put stay_relax stay_squar stay_ther step_<do>
        step_<move> step_<place> step_and step_out step_over step_through stick_bow stick_it stiff_bounc
        stiff_when stop_at straight_<place> straight_down straighten_<place> straighten_that strid_each
        strik_<place> strik_down strok_to sw_the swap_<part> swap_hand swap_leg t_shirt tail_under
        tailbon_<place> tailbon_under take_your tall_at tall_through that_<pace> that_<part> that_closest that_is
        that_it that_nice the_<chat> the_<harm> the_<more> the_<part> the_<take> the_arm the_band the_ceil
        the_cone the_ear the_fingertip the_finish the_floor the_handl the_head the_jog the_kitchen the_knee
        the_left the_loop the_mat the_middl the_neck the_nose the_operat the_opposit the_outsid the_phon
        the_pocket the_rest the_right the_ring the_roller the_same the_sky the_spot the_tail the_time the_towel
        the_waist the_way the_whol the_window the_work them_<move> them_<part> them_<swap> them_away them_back
        them_home them_meet them_wide then_<attend> then_<chat> then_<do> then_<move> then_<part> then_let ther_a
        ther_for ther_whil ther_writ they_<far> they_hard thi_<pace> thi_time thigh_stay though_ther thre_point
        thre_to through_and through_the through_your throw_the thumb_<part> thumb_<place> thumb_back thumb_out
        thumb_turn tight_all tighten_the till_<chat> till_you to_<part> to_a to_ankl to_belt to_bum to_cheek
        to_fold to_hear to_look to_one to_side to_the toe_<more> toe_away toe_fac toe_point toe_pull toe_up
        together_at top_<move> top_<settle> top_<take> top_hip top_keep tother_way toward_the trail_<part>
        trail_foot tuck_in tuck_your tum_<pace> tum_button tum_gent turn_<chat> two_drawer two_metr under_<chat>
        under_you underneath_<chat> underneath_you up_<attend> up_<chat> up_<place> up_<settle> up_<take> up_as
        up_on up_onto up_sit up_tall up_through up_till up_with up_you wait_in wait_ther walk_<attend> walk_tall
        walk_to wall_and want_to way_<chat> way_<swap> way_home way_it way_you we_<far> we_<less> we_lift
        we_lower we_tap wee_<move> wee_bit weight_<place> weight_even weight_in when_it whil_i whol_<part>
        whol_leg with_it with_its without_bend without_drop wrist_<attend> wrist_are writ_<place> writ_on
        you_<air> you_<kit> you_breath you_fight you_just you_pull you_rack you_reach you_sit you_take
        your_<harm> your_<part> your_ankl your_bottom your_bum your_bus your_cheek your_elbow your_hand your_hip
        your_knuckl your_lac your_left your_leg your_look your_pocket your_right your_seat your_shirt your_sid
        your_stick your_t your_tail your_tipto your_toe your_weight yourself_<part> yourself_<place>
        yourself_back youv_done
      `,
    ],
    [
      -0.2,
      `
        <air>_and <attend>_befor <attend>_it <attend>_its <attend>_leg <attend>_like <attend>_long <attend>_off
        <attend>_one <attend>_they <attend>_with <attend>_youv <chat>_a <chat>_and <chat>_at <chat>_hold
        <chat>_in <chat>_land <chat>_like <chat>_stay <chat>_time <chat>_turn <chat>_up <chat>_us <chat>_with
        <chat>_you <do>_around <do>_if <do>_in <do>_like <do>_on <do>_out <do>_ups <do>_with <far>_like <far>_one
        <far>_squeez <far>_ther <far>_toe <far>_up <far>_with <harm>_as <harm>_out <kit>_into <kit>_off
        <kit>_under <kit>_up <less>_back <less>_of <less>_to <more>_a <more>_in <more>_like <more>_out
        <more>_ther <move>_apart <move>_around <move>_as <move>_if <move>_in <move>_into <move>_like <move>_out
        <move>_quiet <move>_them <move>_ups <not>_a <not>_go <not>_in <not>_on <num>_finger <num>_foot <num>_hand
        <num>_in <num>_mov <num>_on <pace>_in <pace>_it <pace>_the <pace>_with <part>_a <part>_acros <part>_again
        <part>_all <part>_are <part>_arm <part>_as <part>_at <part>_behind <part>_bent <part>_heel <part>_height
        <part>_just <part>_long <part>_lower <part>_now <part>_only <part>_or <part>_over <part>_right
        <part>_slid <part>_slow <part>_stop <part>_stretch <part>_the <part>_wide <part>_widen <part>_with
        <place>_0 <place>_at <place>_befor <place>_closer <place>_com <place>_each <place>_heel <place>_here
        <place>_if <place>_long <place>_of <place>_on <place>_round <place>_shoulder <place>_stay
        <place>_straight <place>_the <place>_toe <place>_two <place>_up <place>_when <settle>_at <settle>_forward
        <settle>_from <settle>_heav <settle>_of <settle>_on <settle>_them <settle>_to <settle>_with <settle>_your
        <swap>_at <take>_a <take>_again <take>_forward <take>_of <take>_on <take>_stay <take>_them
        <take>_together a_<attend> a_<harm> a_<part> a_foot a_hand a_second acros_the all_<chat> along_the
        and_<harm> and_<pace> and_<part> and_again and_do and_it and_keep and_kne and_open and_pull and_round
        and_snap ankl_and ankl_over are_<far> arm_<more> arm_<place> arm_and arm_are arm_hang arm_to arm_up
        as_long at_<part> back_<do> back_heel back_long back_stay bar_<place> befor_the behind_your bel_in
        bell_<place> below_the bend_<place> bend_the bent_<place> bit_<far> bit_of both_leg both_way bottom_knee
        br_the br_your button_<place> button_in by_the by_your chair_<place> chang_leg chin_<more> chin_up
        clos_to come_right cros_the cros_your do_it down_by down_for down_on down_to drop_to each_<part> each_one
        end_<more> end_<place> end_up feet_<part> feet_back feet_stay feet_together finger_<do> fold_your
        foot_<place> foot_forward foot_through for_the for_thi for_two forward_till from_your front_knee
        go_<place> good_<num> good_one hand_and hand_in hang_<attend> head_<pace> head_slow heel_<place>
        heel_down heel_in hug_the if_<chat> if_it if_its if_your in_<attend> in_a in_closer in_it in_under
        in_your is_<chat> it_<take> it_com it_get it_is it_off it_stop it_under its_<less> keep_<num> keep_one
        keep_them kne_and kne_down kne_over kne_soft knee_<attend> knee_on knee_point knee_soft lean_<part>
        lean_away lean_back leav_the leg_<more> leg_<settle> leg_arm leg_go leg_long leg_out leg_right leg_up
        let_<chat> let_us lie_<place> lift_it lift_them littl_<place> littl_toe long_and loop_<place> low_<place>
        make_it make_the not_<chat> not_<do> not_<move> not_<settle> not_in not_on of_a of_it off_your on_<num>
        on_to one_foot open_<place> other_<part> other_arm other_elbow other_leg other_side out_as out_of
        out_straight out_the point_<attend> point_straight pull_them pull_with push_through put_them reach_out
        right_<chat> right_back right_down rock_it roll_over run_<place> run_it same_again shin_<place>
        shuffl_<place> shuffl_forward sit_<more> sit_on sit_tall sit_up slid_<more> slid_up snap_it
        spread_<place> spread_out spread_the start_again stay_<far> stay_down step_in step_your straighten_it
        straighten_your strap_<place> that_the that_your the_<air> the_<attend> the_<do> the_<far> the_<move>
        the_back the_bell the_bench the_bottom the_box the_chair the_elbow the_finger the_ground the_insid
        the_kneel the_last the_leg the_littl the_rail the_second the_spin the_step the_strap the_world
        them_<settle> them_forward ther_<attend> ther_<far> they_<settle> thi_one through_at till_your to_<move>
        to_<settle> to_<take> to_be to_hip to_toe toe_<attend> toe_<place> top_of top_shelf towel_<place> tuck_it
        tuck_them turn_around turn_it two_<part> under_the under_your up_a up_in up_like up_out up_ther
        us_<settle> walk_the way_<part> way_<place> way_back way_down way_through way_to we_<settle> when_<chat>
        whil_your with_<chat> with_the world_<place> world_down wrist_<move> wrist_stay you_<attend> you_<less>
        you_<more> you_<move> you_<take> you_land you_stand you_stay you_turn your_<air> your_<attend> your_<far>
        your_<pace> your_<place> your_<settle> your_<swap> your_<take> your_back your_big your_chair your_eye
        your_front your_heart your_knee your_spin your_wrist yourself_<pace>
      `,
    ],
    [
      -0.4,
      `
        <attend>_the <kit>_down <settle>_a at_your behind_the feet_<place> if_the it_out right_<place> slid_the
        the_<pace>
      `,
    ],
    [-0.6, 'down_and'],
  ],
  phrase: [
    [0.4, 'execution-hint execution-likely'],
    [0.2, 'breathing-likely fault-hint focus-sure praise range-hint tempo-hint'],
    [
      -0.2,
      `
        breathing-hint caution-hint caution-sure dose_only easier-likely empty_clauses equipment-likely
        fault-sure focus-hint harder-likely harder-sure purpose range-likely tempo-sure transitions
      `,
    ],
    [-0.4, 'breathing-sure chat easier-hint equipment-sure setup-likely setup-sure'],
    [-0.6, 'easier-sure'],
  ],
  start: [
    [0.6, '<air>_<place> the_other'],
    [0.4, '<not>_<wrong> <part>_<move> hold_it_ther'],
    [
      0.2,
      `
        0_behind 0_short 0_short_strok <air>_<less> <attend>_<chat> <attend>_<far> <attend>_<part>
        <attend>_<place> <chat>_<do> <chat>_<move> <do>_<move> <do>_<num> <do>_<settle> <far>_<part>
        <harm>_<more> <more>_<chat> <more>_<place> <move>_<num> <move>_<place> <not>_<place> <num>_<settle>
        <pace>_<chat> <part>_<attend> <part>_<far> <part>_<pace> <place>_<place> <settle>_<more> <settle>_<num>
        <settle>_<place> <swap>_<not> <take>_<place> a_bit a_bit_good a_smidg after_it all_the all_the_time
        allow_the allow_the_back arm_big arm_go_too as_far as_far_as as_fast as_fast_as as_you at_the
        at_the_finish at_the_top away_from back_and back_and_down backsid_first bar_slid bar_slid_to bar_stay
        bar_stay_on bel_tight bench_back bench_back_ther bend_the_back bend_the_elbow bend_your_elbow big_arm
        big_toe_as both_feet_for both_hook both_hook_when both_sit both_sit_bon br_it br_it_down br_it_home
        br_the_other br_them br_them_back br_them_home breath_in breath_out build_up build_up_for butt_tight
        car_on_like cheek_to chest_down chest_get chest_tall chin_tuck come_together come_together_at come_up
        come_up_on come_up_onto curl_your do_not do_not_paus do_not_stop dont_drop_it dont_let dont_let_them
        dont_reach_for dont_roll_it dont_sit_ther dont_slam_the dont_tip_it down_again down_as down_the down_to
        down_to_your driv_up drop_the_back ear_to ear_to_ankl ease_off elbow_at elbow_back elbow_brush
        elbow_brush_your elbow_high elbow_skim elbow_skim_your elbow_up eye_follow eye_on feet_land
        feet_under_you finger_wide finish_one_leg first_bend flex_the float_your flutter_them free_hand
        free_hand_on from_here from_the from_the_hip front_shin get_tall give_baby give_baby_a go_long grab_the
        hand_finish hand_on hand_round_your hand_stay hand_to hand_to_shoulder hang_in_the haul_it haul_it_into
        head_to head_to_heel heel_nail heel_nail_down heel_of heel_of_the heel_stay heel_to_bum hip_and hip_back
        hip_first hold_it_in hold_the_top hold_your hold_your_elbow i_want_to if_your_kne in_slow inhal_down
        it_all_com it_doesnt its_not_an its_only_the its_your_ankl jaw_loos keep_it_bent keep_it_on keep_mov_in
        keep_swap keep_the keep_the_band keep_them_wide keep_your keep_your_back keep_your_bel keep_your_feet
        keep_your_hip keep_your_rib kne_out kne_point kne_point_at kne_push kne_push_out kne_straight kne_to
        kne_to_your knee_bent knee_stay_in knee_straight knee_up kneel_up land_on land_on_the lead_with
        lead_with_the lean_in left_arm leg_flat leg_push leg_together let_go_slow let_it_go let_it_hang
        let_the_knee let_the_shoulder let_your_arm let_yourself lift_one lift_the_other lift_your lift_your_chest
        lift_your_hip like_a like_open like_open_the like_your_clos like_your_look long_again look_at_the
        look_straight look_straight_ahead look_the look_the_other make_one march_on march_on_the mind_up
        mind_up_and no_lean no_sit nose_over nose_over_your not_a_stand not_acros not_behind_it not_flar
        not_forward not_forward_like not_like_your not_mid not_mid_air not_out not_your not_your_tum off_the
        off_the_floor off_the_roll once_your_hip one_at_a one_bone one_bone_at one_down one_line only_a
        only_a_littl only_the opposit_arm opposit_hand opposit_leg other_hip other_knee out_in paddl_light
        paddl_light_in palm_up pedal_the pick_the pinch_it pinch_it_ther point_them_away pop_it_down pop_the_foot
        pres_it pres_it_up pres_the_back pres_your pretend_ther_writ pull_it pull_it_to pull_the pull_the_slack
        push_away push_off push_the_floor push_them_away push_your push_your_backsid put_one_heel put_the_good
        put_your put_your_head quiet_feet rib_soft rock_a roll_through round_the round_to round_to_the same_as
        same_as_on same_as_your same_bow same_length same_length_of same_way set_it set_it_down short_hike
        shoulder_stay shov_it_away shov_the shov_your side_to side_to_side sit_down sit_down_between sit_your
        skip_on skip_on_the slid_down slid_down_until slip_left slow_go snap_the soak_it soak_it_up sock_up
        soft_kne split_your split_your_hand spread_your_finger squash_the squeez_and squeez_at squeez_at_the
        squeez_the squeez_the_bum squeez_your_cheek stand_it_up stand_up_with start_with start_with_the
        stay_a_bit stay_down_ther stay_relax step_through stick_it stick_it_for straight_down sw_the sw_your_arm
        swap_hand_when swap_leg_when take_the take_the_handl take_your take_your_feet take_your_right
        that_closest that_closest_to that_it the_arm the_bar the_chest the_jog the_jog_is the_knee the_left
        the_opposit the_other_one the_other_pair the_other_way the_right the_way they_dont_bend they_hard
        theyv_gone theyv_gone_straight thi_time thigh_level thigh_stay thumb_at_ten thumb_turn thumb_turn_out
        tight_all tight_all_the to_finish toe_away toe_fac toe_fac_front toe_point toe_up tuck_your tuck_your_toe
        tum_gent turn_the_ring turn_your_chest turn_your_rib underneath_you up_onto up_with up_with_its up_you
        up_you_come wait_for_your wait_in wait_in_the wait_ther walk_back_on walk_it_in walk_tall walk_to
        walk_to_the we_are_go we_lift weight_even_on weight_in weight_over_the were_go were_go_sideway
        without_bend without_mov without_mov_them wrist_straight you_are you_are_go you_dont_pull you_fight
        you_fight_it you_just you_just_lower you_walk your_chest your_jump your_jump_forward your_not_answer
        your_stick your_stick_bow
      `,
    ],
    [
      -0.2,
      `
        <chat>_<swap> <do>_<pace> <do>_<part> <far>_<attend> <harm>_<move> <harm>_<part> <kit>_<more>
        <more>_<num> <move>_<do> <move>_<more> <num>_<part> <pace>_<place> <part>_<do> <part>_<harm> <part>_<not>
        <part>_<settle> <part>_<wrong> <place>_<more> <place>_<num> <place>_<part> <settle>_<do> <settle>_<part>
        <take>_<far> arm_and arm_long arm_to arm_to_the arm_up back_up bend_the_kne bend_your_kne both_sid br_the
        br_the_front br_your chang_leg chest_and chest_and_hip come_down cros_the cros_your cros_your_arm
        curl_the_hip do_it dont_let_your driv_the_other elbow_in fold_your get_your go_to go_to_the heel_and
        heel_down hold_it_down hold_it_till hug_the if_it if_the its_the keep_one keep_the_back keep_them
        keep_your_chest keep_your_wrist kne_down kne_over kne_up_over knuckl_to knuckl_to_the lean_on leg_long
        leg_up let_the_arm let_the_back let_us lift_it lift_the_back lift_the_heel lift_the_toe lift_your_toe
        lower_it_down make_it make_the not_on other_foot pull_them push_the_ground push_the_world push_through
        push_yourself_away rock_it roll_over roll_up run_it shoulder_blad shuffl_forward sit_back_down
        sit_down_into sit_tall sit_up slid_the slid_up snap_it squeez_your_backsid stand_up_out step_back step_up
        step_your straighten_the_leg straighten_your straighten_your_leg tap_the_heel that_the that_your the_leg
        the_other_arm the_other_leg tuck_it tuck_the_toe tuck_them turn_around turn_your_head walk_the wrist_stay
      `,
    ],
  ],
  word: [
    [0.6, 'forward home left opposit tall'],
    [
      0.4,
      `
        again away bow chang down ear elbow first hip jab land let nose other pocket right sit skip squash
        straight swap tail then tight together toward without
      `,
    ],
    [
      0.2,
      `
        acros along and answer anywher arm armpit as back backsid backward ball bar besid between big bit board
        body bon bone both brush build bum bus button came cat ceil cheek chest chicken chin circl click closest
        come cop dig doesnt draw drawer drift driv ease em escalator exact fall fetch fight finish five flar
        float flow follow foot gent glas glu goe hair handl hang hard head hear heel hey hike hook hop jaw join
        jump kitchen knee lead lean leg length lik like littl lock log long look loos lower mate meet metr middl
        mov much nail nowt off one outsid paddl parrot pedal peel pelvic pick piec position pres prim pull punch
        push put quiet return rib road roll roller shirt shoulder shov side sideway sky slip slow small smidg
        soak soft soften spot squar squeez stand stay step stick stiff stomp stool strik strok sw sweep swing
        tailbon tap the them ther thigh though thought through throw till tilt time tip tipto to toe tother touch
        trac trail turn underneath until up upright waist way we wee were whol wind window writ yourself
      `,
    ],
    [
      -0.2,
      `
        0 about abov anchor ankl another anybod are around ask attention be been befor below bench better block
        bottom box bridg buckl calf call can car collar crank crush cushion dead do dog dumbbell each eight else
        empt end face few finger fist flat for ful further get good got grip ground had half hamstring has heal
        height help here higher hing hover how hug i im insid instead itll just last leav level lie load longer
        lot low lung mak march minut more my need needl no nobod nobody of only open pad palm peopl pin plank
        plat pleas post pressur proper puff pump rail red remember round row sat screw see shak should sip snap
        so some someth spe spin spread squat start still stop straighten strap stretch stuck tabl talk taller
        than theyr think thre try tuck tug twic two ups us use walk was watch well what wher widen wider width
        will world wrap
      `,
    ],
    [
      -0.4,
      `
        a breath chair closer feel have its make me now on or second shuffl that thi youv
      `,
    ],
    [-0.6, 'if is'],
  ],
} as const satisfies CueWeights
