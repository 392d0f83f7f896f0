/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind execution; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EXECUTION_WEIGHTS = {
  bias: [[-0.2, 'yes']],
  class: [
    [0.4, 'part'],
    [0.2, 'do move place'],
    [-0.2, 'chat harm ill more num pace swap'],
    [-0.4, 'air less not'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.6, 'and chang opposit toe'],
    [
      0.4,
      `
        <do> <part> <take> <wrong> as build chest down elbow follow from gent jab land let like lower nose not
        off quiet set shov skip tum
      `,
    ],
    [
      0.2,
      `
        <air> <far> <move> <place> <settle> <swap> after all allow alternat arm away backward bar big bounc bow
        chin chop clear com come crawl dig do drag draw driv ear ease fetch flex flutter grab head hey hip hold
        home jaw jump kneel lean left lift lock middl nod noth one other over paddl paw pedal pick pinch plant
        pol pop pres prim pull puls push rib rotat round safe settl shav short shoulder sidestep slip small soak
        soft squar squash stack stand start step stretch strik sw swap tailbon take the they thre throw tighten
        tip together trac two underneath up we when whol without you
      `,
    ],
    [
      -0.2,
      `
        <chat> <less> <not> <num> <pace> a ankl between br bum by calv check cros drop eight feel finger
        fingertip fist flop fold forearm forehead get grip have hing hug if im keep kick knee leav lie loos low
        make nice no nobod nobody on only operat or palm pleas pump reach remember rest row screw shorten snap
        some somebody spin spread squat stay stop straight ten think try twist use walk watch weight youll youv
      `,
    ],
    [-0.4, 'bottom i its shuffl ther tuck your'],
    [-0.6, 'that'],
  ],
  given: [
    [0.2, '<harm> <move> <take> and are bad bit down fail grip just kne rock side them to'],
    [-0.2, '<attend> <chat> <part> other the'],
  ],
  last: [
    [0.8, 'and'],
    [0.6, 'again middl other step toe'],
    [
      0.4,
      `
        button chang first follow gent hang home land left littl long right soft straight swap way
      `,
    ],
    [
      0.2,
      `
        acros air arch arm armpit away back beat behind bend board bone bow came cano ceil chicken circl click
        clos come complete cros curtain drawer ear fall five floor flow foot forward freez full goe grap half
        head hey hip hold hook hop in jab jaw jog jumper kick kiss kitchen last lead lean leg log loos mat meet
        metr ninet nod nose nowt opposit park parrot pedal plant pocket position pour proud puls put rib roller
        room safe shin shirt shout sid side sidestep sideway sink skip sky slow small smidg stand stay stick
        stiff stomp strok sw switch tall tap through tight tightrop time tipto together touch towel under up
        upright waist were wheel wide window you
      `,
    ],
    [
      -0.2,
      `
        apart around bench bottom breath bridg calv closer com cross curl dip drag dumbbell elbow enough fenc
        fine float ful gone good hamstring hand height help higher late like lot lung march me melt minut more
        nearer needl now only out peopl post press proper quick rack rail rais ring roll rop round row set short
        shoulder slid someth squat squeez stack strid taller them thi thumb tum ups wait walk wider
      `,
    ],
    [-0.4, '0 go high off pleas pres'],
  ],
  length: [
    [-0.2, '3-4 5-7 8-12'],
    [-0.4, '1-2'],
  ],
  pair: [
    [0.6, '<place>_again down_between the_other'],
    [
      0.4,
      `
        <attend>_and <chat>_them <do>_forward <do>_straight <kit>_stay <more>_as <not>_drop <num>_bone
        <part>_back <part>_be <part>_first <part>_into <part>_lead <part>_loos <part>_push <part>_straight
        <part>_to <place>_between <place>_kne <place>_like <place>_that <settle>_through <take>_your a_littl
        and_<do> and_<move> and_<place> and_down and_stand are_go arm_<do> bit_<place> breath_<place> breath_in
        drop_it feet_in first_<num> for_<num> hip_<chat> hip_and into_the it_ther kne_<move> kne_up land_<place>
        let_them like_<chat> like_your of_five one_<part> one_bone only_the opposit_<part> out_to over_your
        pull_<place> reach_<place> rib_<place> straight_down tail_<place> tall_<place> that_<part> the_ball
        the_right the_side the_window toward_the toward_your way_in we_<do> we_<move> whol_<part>
      `,
    ],
    [
      0.2,
      `
        0_<chat> 0_<part> 0_behind 0_foot 0_oclock 0_short <air>_for <air>_out <air>_over <air>_tight
        <attend>_again <attend>_back <attend>_bent <attend>_down <attend>_feet <attend>_follow <attend>_if
        <attend>_kne <attend>_nudg <attend>_on <attend>_out <attend>_over <attend>_pat <attend>_pedall
        <attend>_plat <attend>_step <attend>_that <attend>_ther <attend>_theyll <attend>_through <chat>_arm
        <chat>_bend <chat>_breath <chat>_came <chat>_check <chat>_clos <chat>_come <chat>_complete <chat>_elbow
        <chat>_em <chat>_fight <chat>_go <chat>_it <chat>_just <chat>_last <chat>_leg <chat>_lift <chat>_look
        <chat>_meet <chat>_out <chat>_polish <chat>_pull <chat>_rack <chat>_reach <chat>_right <chat>_shout
        <chat>_sit <chat>_stop <chat>_ther <chat>_third <chat>_to <chat>_walk <chat>_yourself <do>_a <do>_acros
        <do>_away <do>_backward <do>_down <do>_from <do>_hand <do>_left <do>_long <do>_off <do>_right <do>_that
        <do>_the <do>_them <do>_ther <do>_till <do>_to <do>_under <do>_up <do>_yourself <far>_all <far>_arm
        <far>_between <far>_bit <far>_circl <far>_dip <far>_down <far>_exaggerat <far>_for <far>_or <far>_round
        <far>_step <far>_straight <far>_the <far>_them <far>_under <far>_wall <far>_we <far>_you <far>_your
        <harm>_and <harm>_away <harm>_fac <harm>_forward <harm>_kne <harm>_left <harm>_point <harm>_right
        <harm>_the <harm>_to <ill>_and <ill>_leg <kit>_apart <kit>_can <kit>_drag <kit>_height <kit>_of <kit>_one
        <kit>_onto <kit>_out <kit>_shut <kit>_slid <kit>_tight <kit>_walk <kit>_with <less>_all <less>_bounc
        <less>_it <less>_straight <less>_we <less>_when <more>_arm <more>_bone <more>_its <more>_on <more>_one
        <more>_onto <more>_sit <more>_tall <more>_through <more>_you <move>_acros <move>_an <move>_at <move>_fail
        <move>_forward <move>_hand <move>_or <move>_relax <move>_squar <move>_straight <move>_swap <move>_the
        <move>_ther <move>_together <move>_under <move>_yourself <not>_acros <not>_answer <not>_at <not>_away
        <not>_bend <not>_by <not>_crash <not>_fish <not>_flar <not>_flop <not>_forward <not>_leap <not>_like
        <not>_mid <not>_mov <not>_out <not>_paus <not>_ping <not>_put <not>_sit <not>_spin <not>_stand
        <not>_stiff <not>_stop <not>_ther <num>_doe <num>_drawer <num>_five <num>_go <num>_heel <num>_knee
        <num>_leg <num>_line <num>_metr <num>_piec <num>_quick <num>_short <num>_side <num>_step <num>_up
        <pace>_of <pace>_on <pace>_up <part>_and <part>_away <part>_befor <part>_bend <part>_between <part>_big
        <part>_brush <part>_button <part>_clos <part>_com <part>_cop <part>_down <part>_driv <part>_drop
        <part>_ever <part>_full <part>_go <part>_goe <part>_high <part>_hip <part>_insid <part>_join <part>_kiss
        <part>_land <part>_last <part>_lik <part>_look <part>_low <part>_mov <part>_out <part>_point <part>_pres
        <part>_pull <part>_reach <part>_round <part>_stay <part>_still <part>_sw <part>_swing <part>_tak
        <part>_tall <part>_that <part>_then <part>_through <part>_tight <part>_till <part>_touch <part>_tuck
        <part>_until <part>_up <part>_when <place>_back <place>_bone <place>_down <place>_first <place>_forward
        <place>_front <place>_hand <place>_hard <place>_kick <place>_one <place>_onto <place>_out <place>_part
        <place>_pull <place>_right <place>_sideway <place>_sit <place>_so <place>_soft <place>_squeez
        <place>_step <place>_tall <place>_thos <place>_through <place>_till <place>_to <place>_toward
        <place>_under <place>_wide <place>_with <place>_you <settle>_about <settle>_complete <settle>_fail
        <settle>_it <settle>_last <settle>_long <settle>_slow <settle>_tall <settle>_ther <settle>_together
        <settle>_without <swap>_about <swap>_again <swap>_anyth <swap>_drop <swap>_get <swap>_hand <swap>_height
        <swap>_lean <swap>_on <swap>_turn <swap>_twist <take>_about <take>_between <take>_ever <take>_fall
        <take>_in <take>_it <take>_off <take>_out <take>_through <wrong>_forward <wrong>_from <wrong>_it
        <wrong>_out <wrong>_straight <wrong>_the a_<do> a_<far> a_<pace> a_bit a_cano a_cat a_chicken a_circl
        a_count a_door a_fist a_flat a_hair a_hing a_jog a_knee a_log a_longer a_parrot a_plank a_shift a_shop
        a_ski a_smidg a_stand a_tap a_tick a_tightrop a_time about_in acros_to after_it all_of all_the allow_the
        along_your and_<settle> and_<swap> and_<take> and_away and_clos and_draw and_four and_hand and_hang
        and_hold and_jump and_let and_lower and_over and_stay and_turn and_wide ankl_<chat> ankl_be ankl_behind
        answer_the any_<more> any_more apart_<far> are_<ill> are_<place> are_bad arm_<attend> arm_<move> arm_big
        arm_come arm_goe arm_out arm_sw arm_th arm_then as_<attend> as_if as_on as_with at_<far> at_a at_each
        at_it at_ninet away_again away_to baby_a back_<place> back_and back_in back_into back_knee back_like
        back_one back_out back_still back_through backsid_<place> backsid_first bad_and ball_at ball_of
        band_<settle> band_come bar_<do> bar_slid bar_stay bar_to bath_water be_<less> be_<wrong> be_heav
        be_stiff behind_<chat> behind_you bel_<less> bel_<swap> bel_tight bell_onto belt_<far> belt_height
        bench_back bend_<pace> bend_a bent_a bent_behind between_the between_your big_<do> big_<move> big_arm
        big_circl big_exaggerat big_step bit_in bit_side bit_taller blad_<place> blad_down body_<do> body_swing
        bon_<move> bone_at bone_by both_<take> both_hook both_sit bottom_<num> bottom_<part> bottom_back
        bottom_of bottom_one bow_<place> bow_again br_it br_them brac_<place> brac_on breath_out brush_your
        buckl_stay build_<more> build_<place> build_for build_up bum_<part> bum_<place> bum_back bum_befor bum_to
        by_bone by_pull by_squeez can_turn careful_at chang_hand cheek_to chest_<place> chest_and chest_between
        chest_down chest_get chest_open chest_tall chest_to chest_toward chin_<place> chin_out chin_tuck
        circl_with clear_of closest_to come_<attend> come_through count_of cros_<num> cros_<place> cross_<place>
        crown_of dead_<far> dead_<more> dead_<not> dead_<place> dead_level dead_stop dip_of do_<more> do_<not>
        do_anyth do_your doe_the doesnt_crash dont_<far> dont_<kit> dont_<move> dont_<swap> dont_<take>
        dont_<wrong> dont_drop dont_fish dont_flar dont_forget dont_just dont_leap dont_let dont_ping dont_put
        dont_reach dont_spin dont_stand door_<place> door_shut door_with down_<attend> down_<more> down_<not>
        down_<place> down_again down_like down_part down_proper down_soft down_the down_under down_up
        down_without draw_it drift_<place> drift_out driv_<more> driv_<place> driv_up drop_straight each_<pace>
        each_time ease_off egg_on elbow_<chat> elbow_<part> elbow_<place> elbow_and elbow_at elbow_back
        elbow_brush elbow_go elbow_high elbow_insid elbow_near elbow_stay elbow_that elbow_through elbow_up
        em_leav even_<place> ever_<pace> ever_time exhal_<more> exhal_<place> exhal_up explod_<more> explod_up
        eye_<chat> eye_<settle> eye_follow eye_go far_<kit> feet_<take> feet_fall feet_off few_<part> few_chin
        find_the first_0 first_<do> first_<move> first_bend first_third fish_for fish_it five_<pace> five_second
        flat_back flex_the float_your floor_and floor_just flutter_them fold_<place> fold_forward foot_<more>
        foot_goe foot_off foot_under foot_up for_four for_six for_ten for_them for_thes fort_<num> fort_five
        forward_a forward_again forward_whil four_<do> four_<kit> four_<part> four_<place> four_back four_step
        free_hand from_each from_the front_<part> front_heel front_of front_shin get_<attend> get_tall give_baby
        go_<chat> go_<pace> go_again go_all go_complete go_first go_last go_out go_right go_sideway go_slow
        go_too goe_<part> goe_<place> goe_back goe_long goe_out goe_slack gone_<attend> gone_<place>
        gone_straight good_<part> good_foot grip_fail grow_a hair_or hand_<attend> hand_<move> hand_at
        hand_finish hand_forward hand_go hand_help hand_like hand_on hand_stay hand_tak hand_that hand_to
        hand_when handl_as hang_in happen_at hard_<chat> hard_<settle> hard_go head_be head_come head_last
        head_through head_to hear_it hear_nowt hear_stomp heel_all heel_glu heel_kiss heel_nail heel_of
        heel_right heel_stay heel_to heel_under help_it high_<place> high_and high_between high_to hike_it
        hip_<place> hip_dead hip_first hip_go hip_over hip_with hit_the hold_your home_again hook_when hop_over
        i_say i_shout if_step in_<far> in_<pace> in_again in_and in_by in_front in_out in_slow in_ther in_with
        inch_down inhal_<place> inhal_down insid_the into_a is_<num> is_one it_<chat> it_<not> it_<part>
        it_<swap> it_all it_away it_back it_behind it_bent it_came it_click it_die it_doesnt it_down it_fall
        it_flow it_from it_hang it_home it_into it_land it_mov it_on it_owe it_smooth it_spin it_stretch it_tight
        its_flat its_mate jaw_loos jog_a jog_is join_it jump_again jump_forward just_fish just_in just_leav
        just_let just_rock keep_swap keep_the keep_your kne_<do> kne_<far> kne_<more> kne_are kne_out kne_point
        kne_pres kne_push kne_together knee_<more> knee_<place> knee_bend knee_com knee_down knee_in knee_up
        kneel_<more> kneel_<place> kneel_up knuckl_look land_on land_under lazy_<do> lazy_circl lead_<place>
        lead_with lean_in lean_into lean_the leap_<part> leap_at leap_leg left_<part> left_arm left_leg left_to
        leg_away leg_ever leg_hover leg_lead leg_on leg_over leg_push leg_straight leg_when let_both let_em
        let_yourself lift_<num> lift_your lik_that like_<part> like_<place> like_a like_down like_nudg like_pat
        like_pedall like_plat littl_<do> littl_dip littl_hop littl_step lock_<place> lock_out lock_the
        long_<place> long_again long_line longer_<do> longer_<kit> longer_<move> longer_step look_<place>
        look_over lower_<num> lower_it lower_them make_<num> make_a make_one mat_and mate_<swap> mate_do meet_a
        mid_<air> mid_air moment_ther more_<attend> more_as mov_<place> mov_in move_<far> nail_<place> nail_down
        neck_lik never_away no_lean no_twist nose_<place> nose_for nose_over not_<not> not_<pace> not_<place>
        not_<wrong> not_acros not_answer not_by not_flar not_flop not_forward not_like not_lock not_mid not_out
        not_paus not_stiff not_stop noth_mov nudg_a oclock_<place> of_strid of_your off_<not> off_<pace>
        off_again off_and off_the off_with off_without on_both on_that on_thos once_its one_<attend> one_<settle>
        one_doe one_hand one_heel one_knee one_leg one_line one_piec one_side one_up onto_the opposit_arm
        opposit_leg opposit_one or_<do> or_<kit> or_<move> or_some or_stay or_step or_walk or_youll other_<num>
        other_foot other_out other_pair other_shoulder other_way out_<far> out_<place> out_again out_for
        out_sideway out_ther out_till out_wide outsid_<part> outsid_leg over_<part> over_<place> over_elbow
        over_hand over_it over_onto paddl_light past_your paus_<chat> paw_at pedal_the pick_the ping_it
        point_<more> point_up pol_<place> polish_it pop_it pres_<place> pres_it pres_out pres_your prim_them
        pull_<far> pull_<more> pull_it pull_the pull_up pull_your punch_<place> push_<place> push_away push_it
        push_off push_out put_<place> put_one put_your quick_<part> rail_for reach_<part> reach_back reach_down
        reach_for reach_under relax_your rib_soft rib_tuck right_hand right_in right_into right_leg ring_<move>
        ring_<place> ring_<swap> ring_can ring_out rise_<place> rock_<place> rock_a roll_<part> roll_back
        roll_through round_<place> round_to ruin_your same_<attend> same_as same_bow same_leg same_road same_way
        say_0 seat_<place> set_it settl_<place> sheet_<place> sheet_in shin_<move> shin_stay shop_<swap> shop_bag
        short_<pace> short_strok shoulder_<attend> shoulder_<place> shoulder_and shoulder_down shoulder_heav
        shoulder_low shoulder_rest shov_the shov_your side_by side_to sit_<part> sit_<place> sit_back sit_between
        sit_down sit_your ski_jumper skim_your skip_<place> skip_on slack_0 slack_<num> slid_it slid_them slid_to
        slid_your slip_<chat> slip_<more> slip_left slip_right small_<do> small_of snap_the so_your soak_it
        soft_kne soften_the spot_<part> spot_kne squar_to squash_the squash_your squeez_<place> squeez_the
        squeez_your stack_the stack_yourself stand_<part> stand_about stand_and stand_knee stand_on start_with
        stay_<place> stay_in stay_near stay_on stay_relax stay_soft stay_squar stay_ther step_<num> step_<place>
        step_and step_one step_out step_through step_walk stick_it stiff_bounc stiff_when still_bent stop_at
        stop_ther straight_<place> straight_and straight_as straight_out straighten_<more> straighten_<place>
        straighten_up stretch_the strid_each strik_<place> strik_down strok_to sw_the swap_<part> swap_leg
        swap_the tail_under tailbon_<place> tailbon_under tak_it take_your tall_through tap_it ten_metr
        tension_on that_<more> that_<pace> that_bend that_closest that_heel that_is that_it that_nice that_reach
        that_stead the_<chat> the_<less> the_<more> the_<part> the_<settle> the_<take> the_arm the_band the_brac
        the_ceil the_chest the_click the_cone the_ear the_feet the_fingertip the_floor the_forehead the_grip
        the_handl the_hip the_hook the_jog the_kitchen the_knee the_leap the_left the_loop the_lower the_mat
        the_neck the_next the_nose the_operat the_opposit the_palm the_rest the_ring the_roller the_same
        the_shoulder the_sky the_spot the_time the_top the_towel the_wind the_work the_writ them_<far>
        them_<more> them_<move> them_<part> them_<place> them_<swap> them_away them_back them_down them_home
        them_level them_meet them_up then_<attend> then_<do> then_<move> then_<part> then_leg ther_a ther_for
        ther_whil ther_writ they_<far> they_hard they_want theyr_park thi_<pace> thi_time thigh_<place> thigh_are
        thigh_stay though_ther thre_<pace> thre_quick thre_to through_and through_the through_your throw_the
        thumb_<part> thumb_<place> thumb_back thumb_out thumb_turn tight_all tighten_the till_you time_befor
        tip_from tip_it tip_of to_<chat> to_<part> to_a to_ankl to_belt to_bum to_cheek to_fold to_hear to_heel
        to_left to_low to_one to_round to_ruin to_side to_the to_touch to_your toe_<more> toe_away toe_fac
        toe_forward toe_point toe_pull toe_up top_<move> top_<settle> top_<take> top_hip top_keep tother_way
        touch_<place> touch_the trail_foot tuck_<place> tuck_a tuck_behind tuck_your tum_<less> tum_button
        tum_tight turn_with turn_your two_drawer two_metr under_<chat> under_you underneath_<chat> underneath_you
        until_<chat> up_<attend> up_<chat> up_<num> up_<pace> up_<place> up_<settle> up_as up_on up_one up_onto
        up_sit up_tall up_through up_you waist_<place> wait_in wait_ther walk_it walk_to wall_<place> wall_with
        way_<chat> way_<swap> way_home way_if way_it way_you we_<far> we_<less> we_lift we_lower we_simp we_tap
        wee_<move> wee_bit wee_rock weight_<place> when_i when_it wher_they whil_i whol_leg with_it with_its
        without_a without_bend without_drop wrist_<attend> wrist_<place> wrist_stack wrist_straight writ_<place>
        writ_on you_<air> you_<settle> you_bend you_breath you_came you_come you_fight you_hear you_just you_meet
        you_pull you_push you_rack you_reach you_sit you_take you_walk youll_tip your_<harm> your_<move>
        your_<part> your_ankl your_bottom your_breastbon your_bum your_bus your_check your_elbow your_hip
        your_jaw your_jog your_lac your_left your_leg your_look your_one your_pocket your_polish your_put
        your_rib your_right your_seat your_shin your_shirt your_sid your_side your_stick your_tail your_tipto
        your_toe your_waist your_watch your_weight yourself_<attend> yourself_<part> yourself_back yourself_like
        youv_done zigzag_it
      `,
    ],
    [
      -0.2,
      `
        <air>_as <air>_when <attend>_befor <attend>_elbow <attend>_for <attend>_its <attend>_leg <attend>_like
        <attend>_long <attend>_off <attend>_one <attend>_they <attend>_your <chat>_a <chat>_ahead <chat>_and
        <chat>_carry <chat>_get <chat>_have <chat>_land <chat>_late <chat>_leap <chat>_let <chat>_like
        <chat>_need <chat>_round <chat>_side <chat>_stand <chat>_stay <chat>_the <chat>_two <chat>_up <chat>_us
        <chat>_you <do>_again <do>_arm <do>_around <do>_back <do>_on <do>_out <do>_ups <do>_when <do>_with
        <far>_forward <far>_if <far>_kne <far>_squar <far>_squeez <far>_ther <far>_toe <far>_with <harm>_as
        <harm>_it <harm>_out <harm>_tuck <kit>_away <kit>_between <kit>_by <kit>_into <kit>_off <kit>_so
        <kit>_under <kit>_up <less>_back <less>_to <less>_your <more>_a <more>_behind <more>_high <more>_if
        <more>_in <more>_out <more>_taller <more>_together <move>_about <move>_apart <move>_around <move>_as
        <move>_back <move>_down <move>_hold <move>_like <move>_over <move>_quiet <move>_them <move>_up <move>_ups
        <not>_bounc <not>_go <not>_in <not>_on <not>_the <num>_a <num>_and <num>_ankl <num>_finger <num>_in
        <num>_mov <num>_on <pace>_down <pace>_the <pace>_with <part>_acros <part>_again <part>_an <part>_are
        <part>_arm <part>_at <part>_behind <part>_bent <part>_can <part>_doesnt <part>_fold <part>_for
        <part>_further <part>_hang <part>_height <part>_higher <part>_if <part>_is <part>_just <part>_length
        <part>_level <part>_lift <part>_now <part>_only <part>_or <part>_over <part>_pin <part>_right <part>_slow
        <part>_soft <part>_step <part>_stop <part>_stretch <part>_toe <part>_wide <part>_widen <place>_0
        <place>_bend <place>_closer <place>_com <place>_each <place>_from <place>_high <place>_hip <place>_if
        <place>_itself <place>_of <place>_on <place>_round <place>_shoulder <place>_stay <place>_taller
        <place>_the <place>_thre <place>_two <settle>_ahead <settle>_away <settle>_forward <settle>_from
        <settle>_goe <settle>_heav <settle>_of <settle>_on <settle>_them <settle>_yourself <swap>_arm <swap>_at
        <swap>_between <swap>_out <swap>_to <take>_a <take>_again <take>_flat <take>_forward <take>_of <take>_to
        <wrong>_a <wrong>_up <wrong>_your a_<attend> a_<harm> a_<kit> a_<less> a_<part> a_baby a_ball a_foot
        a_hand a_minut a_small abov_your all_<chat> along_the and_<harm> and_<not> and_<pace> and_<part>
        and_again and_cros and_do and_hip and_it and_keep and_kne and_open and_round and_slow and_snap
        and_straighten and_the and_toe and_your ankl_and ankl_over are_<far> arm_<less> arm_<place> arm_finish
        arm_hang arm_in arm_length arm_stay arm_to arm_wide as_long as_the as_your asleep_on at_<part>
        back_<harm> back_a back_against back_long back_onto back_stay back_till back_to back_toe bag_<place>
        bar_<place> befor_the bel_in below_the bend_<place> bend_in bend_it bend_the big_toe bit_and bit_of
        body_<place> both_leg both_way bottom_knee br_the br_your button_<place> by_itself by_your call_it
        chang_<part> chang_leg chest_is chin_<more> chin_up clos_to come_<place> come_out come_right cros_the
        cros_your dead_<do> do_the doesnt_<do> doesnt_<move> dont_go down_<pace> down_by down_for down_whil
        drag_your drop_<part> drop_back drop_to drop_your each_<part> each_other edge_of egg_under elbow_<less>
        elbow_<settle> elbow_lower elbow_on elbow_out end_<more> end_<place> end_of end_up face_the feel_it
        feet_<part> feet_back feet_on finger_<do> fingertip_<place> floor_<attend> fold_the fold_your
        foot_<place> foot_behind foot_forward foot_out for_<more> for_thi for_two from_ther from_your front_rib
        go_<more> go_ahead goe_<far> good_one gras_<place> hand_<more> hand_are hand_in hand_off hand_toward
        hang_from head_<more> head_<move> head_<num> head_<pace> head_<place> head_one head_slow head_up
        heel_<do> heel_<settle> heel_hang heel_in heel_on hip_<settle> hip_come hold_it hop_<more> hop_up hug_the
        if_<chat> if_it if_its if_your in_<attend> in_closer in_it in_the in_under in_your into_it is_<chat>
        it_<far> it_a it_at it_com it_gent it_get it_hard it_is it_onto it_side it_under it_with its_<less>
        its_the its_tight keep_<num> keep_a keep_one keep_them kick_the kne_and kne_back kne_down kne_follow
        kne_over kne_when knee_bent knee_goe knee_hover knee_on knee_point knee_soft knuckl_<far> lead_from
        lean_<part> lean_away lean_back lean_right leav_the leg_<attend> leg_<far> leg_<more> leg_<settle> leg_at
        leg_go leg_long leg_right leg_stay leg_up lengthen_<place> let_us lie_<place> lift_it lift_them
        littl_<attend> littl_<place> littl_squar long_as low_<place> make_it make_the mat_<place> mid_<part>
        middl_of middl_toe near_the need_to next_<kit> not_<chat> not_<do> not_<far> not_<move> not_<part>
        not_<settle> not_a not_in not_on of_a of_it of_one of_that off_one off_your on_a on_your one_<do>
        one_<kit> one_ankl one_foot one_in only_<do> only_<move> onto_your open_it or_<settle> or_the or_your
        other_arm other_leg other_side out_as out_of out_straight out_the out_until over_<far> over_hip over_the
        over_till palm_down point_wher pull_them pull_with push_through put_the reach_the reach_your rib_<move>
        rib_stay right_<chat> right_<more> right_<place> right_back right_down rock_it roll_on roll_over
        round_the run_it same_<kit> same_<settle> same_again screw_your shak_the shin_<place> shoulder_away
        shuffl_<place> shuffl_forward side_<do> side_<kit> side_on side_step sit_<attend> sit_<more> sit_on
        sit_tall sit_up slid_<more> slid_up slow_<do> snap_it snap_your soft_<place> soft_elbow soft_knee
        spread_<place> spread_out spread_the squar_with squeez_a start_again stay_down stay_over step_away
        step_down step_in step_it step_your straight_arm straight_away straight_over straight_to straighten_your
        strap_<place> sw_it switch_it that_the that_your the_<attend> the_<do> the_<num> the_<place> the_back
        the_bag the_bell the_bench the_box the_breastbon the_breath the_chair the_door the_elbow the_fenc
        the_finger the_heel the_insid the_lac the_last the_leg the_rack the_second the_spin the_step the_tum
        the_wall the_weight them_<settle> them_forward them_out ther_<far> they_<settle> thi_one though_<chat>
        through_at till_ther to_<move> to_<settle> to_<take> to_<wrong> to_about to_be to_it to_toe toe_<attend>
        toe_<swap> toe_at toe_out toe_tuck together_and top_of touch_from towel_<place> try_to tuck_it tuck_them
        turn_<more> turn_<place> turn_around turn_sideway two_<part> under_the under_your up_a up_behind up_high
        up_in up_out up_taller up_to up_together us_<settle> way_<more> way_<part> way_<place> way_back way_down
        way_through way_to we_<settle> weight_down when_your wher_the whil_your whol_<pace> whol_time with_<num>
        with_them wrist_<move> wrist_stay you_<attend> you_<chat> you_<less> you_<more> you_land you_let you_need
        you_put you_stand you_stay your_<attend> your_<pace> your_<place> your_<swap> your_back your_big
        your_breath your_bridg your_carry your_chair your_eye your_foot your_front your_go your_heart your_knee
        your_middl your_spin your_time your_wrist yourself_<pace> yourself_gent
      `,
    ],
    [
      -0.4,
      `
        <attend>_it <attend>_the <do>_in <kit>_down <part>_a <part>_lower <place>_at <place>_straight <settle>_a
        <settle>_to at_your behind_the by_the down_and down_on feet_<place> if_the it_out slid_the the_<pace>
      `,
    ],
  ],
  phrase: [
    [0.4, 'execution-hint execution-likely tempo-hint'],
    [0.2, 'breathing-likely fault-hint focus-sure range-hint'],
    [
      -0.2,
      `
        breathing-hint caution-hint caution-sure easier-likely empty_clauses fault-likely focus-hint harder-hint
        harder-likely harder-sure purpose transitions
      `,
    ],
    [
      -0.4,
      `
        dose_only easier-hint equipment-sure fault-sure setup-likely setup-sure tempo-sure
      `,
    ],
    [-0.6, 'breathing-sure chat'],
    [-0.8, 'easier-sure'],
  ],
  start: [
    [0.6, 'the_other'],
    [
      0.4,
      `
        <air>_<place> <chat>_<do> <chat>_<move> <more>_<place> <not>_<wrong> <part>_<move> br_the_other
        from_the_hip hold_it_ther keep_your_hip sit_down_between
      `,
    ],
    [
      0.2,
      `
        0_behind 0_short 0_short_strok <air>_<less> <attend>_<attend> <attend>_<chat> <attend>_<far>
        <attend>_<part> <attend>_<settle> <do>_<do> <do>_<more> <do>_<move> <do>_<num> <do>_<place> <do>_<settle>
        <far>_<do> <far>_<move> <harm>_<more> <kit>_<swap> <more>_<chat> <more>_<part> <move>_<num>
        <move>_<place> <not>_<less> <not>_<place> <num>_<far> <num>_<pace> <num>_<settle> <pace>_<more>
        <part>_<attend> <part>_<chat> <part>_<far> <part>_<pace> <part>_<part> <place>_<place> <settle>_<attend>
        <settle>_<more> <settle>_<num> <settle>_<place> <swap>_<not> <swap>_<wrong> <take>_<place> a_part a_smidg
        a_tap after_it all_of all_the all_the_time allow_the allow_the_back an_inch an_inch_down arm_are_the
        arm_big arm_go_too arm_up_over as_far as_far_as as_if as_if_ther as_you at_the_top away_from back_and
        back_and_down back_down back_heel_down back_in backsid_first band_off band_off_with bar_slid bar_slid_to
        bar_stay bar_stay_on bar_to bel_tight bell_down bench_back bench_back_ther bend_the_elbow bend_your_elbow
        big_arm big_exaggerat big_step big_toe_as bone_by bone_by_bone both_feet_for both_hook_when both_sit
        both_sit_bon br_it br_it_back br_them br_them_back br_them_home br_your_nose breath_in breath_in_to
        breath_out build_for build_for_the build_up build_up_for chang_hand chang_your_grip cheek_to
        cheek_to_cheek chest_between chest_between_the chest_down chest_get chest_tall chest_to_the chest_toward
        chest_toward_the chin_tuck chin_tuck_a come_through come_through_the come_up come_up_on come_up_onto
        crawl_to crawl_to_the cros_it_behind cros_one_foot curl_up dead_stop do_all do_all_the do_it_again do_not
        do_not_paus do_not_stop do_your dont_drop dont_drop_it dont_fish dont_fish_for dont_forget
        dont_forget_the dont_just dont_just_let dont_leap dont_leap_at dont_let dont_let_it dont_let_them
        dont_ping dont_ping_it dont_reach dont_reach_for dont_roll_it dont_sit_ther dont_spin dont_stand
        dont_stand_on dont_tip_it down_again down_one down_one_bone down_the_front down_to down_to_your down_up
        driv_up drop_straight drop_straight_down drop_the_back drop_them_over ease_off elbow_a_touch elbow_about
        elbow_about_fort elbow_at elbow_at_ninet elbow_back elbow_brush elbow_brush_your elbow_high
        elbow_high_and elbow_in_by elbow_insid elbow_insid_the elbow_skim_your elbow_stay elbow_stay_a
        elbow_stay_by elbow_tuck_under elbow_under_the elbow_up explod_up eye_follow eye_follow_the eye_go
        fac_the_kitchen feet_in feet_land find_it find_the_floor finger_wide first_bend five_second float_your
        flutter_them free_hand free_hand_on from_here from_the from_the_ankl front_shin get_tall give_baby
        give_baby_a go_all go_all_the go_the_other go_till_you go_up_on grab_the grab_the_shin grow_a grow_a_bit
        hand_finish hand_on_the hand_over_hand hand_round_your hand_stay hand_to hand_to_shoulder hang_in_the
        head_last head_to head_to_heel heel_all heel_all_the heel_nail heel_nail_down heel_of heel_of_the
        heel_stay heel_stay_down heel_to_bum heel_under heel_under_your heel_up high_to high_to_low hip_and
        hip_and_shoulder hip_back hip_dead hip_first hip_go hip_go_back hip_over_your hip_squar_to hip_stay_fac
        hold_it_in hold_it_smooth hold_the_top hold_your hold_your_elbow home_again hop_over i_want_to
        if_the_grip if_your_kne in_again inhal_down it_doesnt it_doesnt_come it_doesnt_crash it_never_goe
        its_not_an its_only_the its_your_ankl jaw_loos keep_it_bent keep_it_stretch keep_it_tight keep_mov_in
        keep_swap keep_tension_on keep_the keep_them_level keep_them_wide keep_your keep_your_back keep_your_bel
        keep_your_feet keep_your_rib kne_out kne_out_over kne_point kne_point_at kne_pres kne_pres_out kne_push
        kne_push_out kne_to kne_to_your kne_together knee_stay_in knee_up kneel_up land_on land_on_the lead_with
        lead_with_the lean_back_until lean_in lean_in_a lean_into lean_the left_arm left_to left_to_left
        leg_hover leg_push leg_together let_both let_em_leav let_go_slow let_it let_it_come let_it_go let_it_hang
        let_the_kne let_the_knee let_the_shoulder let_your_arm let_yourself lift_one lift_one_foot lift_the_hip
        lift_the_knee lift_the_other lift_the_top lift_your lift_your_chest lift_your_hip like_a like_a_scarecrow
        like_open_the like_your like_your_check like_your_in like_your_look like_your_put littl_quick
        littl_quick_one lock_the lock_the_elbow long_arm look_at_the look_down_at look_straight_ahead
        look_the_other lower_them make_a_fist make_one make_yourself_a never_away no_lean no_twist nose_over
        nose_over_toe nose_over_your not_a_stand not_acros not_by not_flar not_forward not_forward_like not_like
        not_like_your not_lock not_lock_out not_mid not_mid_air not_out not_out_in not_stiff not_your
        not_your_feet not_your_tum noth_mov off_again off_the off_the_roll one_big_slow one_bone one_bone_at
        one_foot one_hand one_hand_at one_hand_back one_hand_forward one_line only_the_down open_the_arm
        opposit_arm opposit_arm_and opposit_hand or_some or_some_of other_hip other_knee other_shoulder
        out_for_six out_in out_to_the paddl_light palm_up paw_at paw_at_it pedal_the pick_the pick_the_other
        pick_up pick_up_one pinch_your_shoulder plant_both plant_both_pol pop_it pop_it_up pres_it pres_it_up
        pres_the pres_your pres_your_kne pretend_ther_writ prim_them pull_it pull_it_to pull_the pull_the_slack
        pull_yourself push_away push_it push_off push_off_the push_the_floor push_your_backsid push_your_bum
        put_it_down put_your put_your_hand put_your_head quiet_feet reach_back relax_your rib_soft ring_can
        ring_can_turn roll_back_down roll_through round_the round_to round_to_the same_as same_as_on same_as_with
        same_as_your same_bow same_length same_length_of same_way set_it set_it_down shin_stay shoulder_low
        shoulder_stay shoulder_stay_heav shoulder_stay_squar shov_the shov_your show_the show_the_mirror side_by
        side_to side_to_side sit_back sit_back_as sit_between sit_between_your sit_down sit_down_like
        sit_straight_down sit_under sit_under_it sit_up_out sit_your sit_your_hip skip_on skip_on_the slack_0
        slack_0_step slid_down_until slid_it slid_them_up slip_left snap_the soak_it soak_it_up soft_kne
        soften_the spread_your_finger squash_the squeez_at squeez_at_the squeez_the squeez_the_bum
        squeez_your_cheek squeez_your_shoulder stack_the stack_the_top stack_yourself stack_yourself_like
        stand_and stand_knee start_with start_with_the stay_on stay_on_the stay_relax stay_ther_a step_one
        step_one_foot step_out step_through stick_it stick_it_for still_bent straight_down straighten_up
        stretch_the strik_down sw_the sw_your_arm swap_leg_when swap_the swap_the_leap take_it_off take_it_round
        take_the take_the_handl take_your take_your_feet take_your_right take_your_weight tall_as_you tap_it
        that_closest that_closest_to that_it the_arm the_bar the_chest the_jog the_jog_is the_knee the_left
        the_next the_opposit the_other_one the_other_pair the_right the_toe the_whol_body they_dont_flar
        they_hard they_hard_go theyr_park theyv_gone theyv_gone_straight thi_time thi_time_befor thigh_level
        thigh_stay thre_quick thre_quick_step thre_to_the thumb_at_ten thumb_back thumb_turn thumb_turn_out
        tip_from to_come toe_fac toe_fac_front toe_forward toe_point toe_pull toe_pull_up toe_up tuck_behind
        tuck_behind_your tuck_your tuck_your_toe tum_in tum_tight turn_the_ring turn_with turn_your_chest
        turn_your_rib two_step two_step_walk underneath_you up_as_high up_on_your up_onto up_onto_the up_over_the
        up_when up_when_your up_you up_you_come wait_in wait_in_the wait_ther walk_back_on walk_it_in
        walk_it_into walk_to walk_to_the walk_your_hand we_are_go we_lift we_simp weight_even_on weight_in
        weight_over_the were_go were_go_sideway whol_foot whol_foot_on with_your_arm without_bend without_mov
        without_mov_them wrist_stack wrist_stack_over wrist_straight you_are you_are_go you_dont you_dont_pull
        you_fight you_fight_it you_go you_just you_just_leav you_like you_walk your_chest your_chest_and
        your_front your_front_knee your_jog your_jog_a your_jump your_jump_forward your_neck_stay your_not_answer
        your_polish your_polish_it your_stick your_stick_bow
      `,
    ],
    [
      -0.2,
      `
        <attend>_<more> <chat>_<chat> <chat>_<swap> <do>_<pace> <do>_<part> <far>_<attend> <harm>_<move>
        <more>_<num> <move>_<attend> <move>_<do> <move>_<move> <move>_<part> <not>_<do> <num>_<place>
        <pace>_<place> <part>_<do> <part>_<harm> <part>_<ill> <part>_<not> <part>_<settle> <part>_<swap>
        <part>_<wrong> <place>_<attend> <place>_<num> <place>_<part> <settle>_<chat> <settle>_<do> <swap>_<place>
        <take>_<do> <take>_<far> <take>_<more> and_again arm_and arm_stay arm_to arm_to_the arm_up arm_up_to
        back_foot back_heel_up back_off bend_it bend_the_kne bend_your_kne both_way br_the br_the_front br_your
        br_your_hand by_the chang_leg chest_and chest_and_hip chin_up clos_to come_back_to come_down cros_the
        cros_your cros_your_arm curl_the curl_the_head do_the dont_let_the dont_let_your down_on draw_a_littl
        draw_the driv_the_other elbow_in elbow_pin fold_your front_foot hang_on head_up heel_and heel_down
        hip_through hold_it_down hold_it_till hop_up hug_the its_the keep_one keep_one_foot keep_the_back
        keep_the_hip keep_the_knee keep_them keep_your_chest keep_your_wrist kick_the kne_down kne_follow kne_go
        kne_over kne_over_your kne_up_over knee_to knuckl_to knuckl_to_the lean_a_touch lean_back lean_on
        lean_right lean_right_back left_foot leg_stay leg_up let_it_fall let_it_out let_the_arm let_the_floor
        let_the_ground let_us lift_it lift_the_back lift_the_heel lift_the_toe lift_your_heel lift_your_toe
        lower_for lower_it_down lower_yourself_gent make_it make_the not_in not_on on_your on_your_back one_leg
        open_it other_foot out_as palm_down pull_them pull_your_bel push_through push_through_the push_your_hip
        push_your_kne push_yourself push_yourself_away put_them reach_the rib_stay rock_it roll_out roll_over
        roll_your_head run_it screw_your shak_the shuffl_forward sit_back_down sit_down_into sit_tall sit_up
        slid_one_foot slid_the snap_it soft_elbow soft_knee squeez_a squeez_your_backsid stand_tall_on stand_up
        stand_up_out stay_ther_till step_back step_back_to step_down step_in step_it step_your sw_your_leg
        switch_it switch_it_up take_your_hand take_your_time tap_the_heel that_the that_your the_leg
        the_other_arm the_other_hand the_other_leg the_shoulder through_the tip_forward_from tip_forward_till
        toe_out toe_tuck tuck_it tuck_it_in tuck_the_toe tuck_them turn_around turn_out turn_sideway turn_them
        turn_your_back turn_your_head under_the up_to walk_it_back walk_the_feet wrist_stay wrist_stay_straight
        you_can
      `,
    ],
  ],
  word: [
    [0.6, 'away forward home land left nose opposit swap tall'],
    [
      0.4,
      `
        again arm bow chang cheek chest draw ear elbow fall first follow gent hip jab lead let littl lower other
        pocket put right soft squash stand stiff straight tail then through tight together touch toward without
      `,
    ],
    [
      0.2,
      `
        acros alternat and answer appl as back backsid backward bad ball bar behind bend bent besid between bit
        body bon bone brush build bum bus buttock came careful cat ceil chicken chin chop circl click closest
        come cop curtain die direction doesnt door down drawer drift driv drop ease em fail fetch finish fish
        five flar flex flow flutter foot front glas glu goe hair handl hear heel hey hike hit hook hop into ish
        jaw join jump jumper kiss kitchen knee lean leap leg lik like lock log long look loos mate meet metr
        middl mov near ninet nod nowt off outsid over overhead paddl park parrot past pat paw pedal pick piec
        plant pol position prim proud pull puls punch push quick rib road rock roller rotat ruin safe scoop shav
        shin shirt shoulder shout shov side sidestep sideway simp sit skip sky slack slip small smidg soak soften
        spot squeez stay stomp stool strik strok sw sweep swing tailbon tak tap them ther throw thumb tighten
        tightrop till time tip tipto to toe tother trac turn underneath until up upright waist wait way wee wheel
        when whol wind window writ yourself zigzag
      `,
    ],
    [
      -0.2,
      `
        0 abov all anchor angl anybod are around ask at attention bag bare be becaus been befor below bench box
        bridg calf call can cant car carry centimetr chair clock cramp crank crisp cros crush cushion day
        deadlift do dog done duck dumbbell each edge eight else empt end everybod fenc fine fist flat fold
        forearm ful further gone good got grip had half hamstring have help here higher hing hover how hug i ill
        instead itll keep late lie lot low lung mak march mean melt minut more most muscl my nearer need needl
        nice no nobod nobody normal now number of old or pad palm pass peopl pin post puff pump rail rais red
        remember rest rop round row sat screw see shak sharp sho shoe shorten should sigh singl sip snap so some
        somebod somebody someth soup spe spin split spread stag stanc start stood str straighten strap stuck talk
        tell than think thirt thre tidy track try tug twic twist two under ups us use walk want warm was what
        whatever wher widen wider width will work would wrap youd
      `,
    ],
    [
      -0.4,
      `
        a about breath closer face feel finger for get its leav make me on only pleas second shuffl squat that
        thi youv
      `,
    ],
    [-0.6, 'if'],
    [-0.8, 'is'],
  ],
} as const satisfies CueWeights
