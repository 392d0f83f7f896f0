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
        <air> <do> <far> <part> <take> <wrong> build down elbow follow from gent jab land left let like lower
        nose off quiet set shov tum
      `,
    ],
    [
      0.2,
      `
        <attend> <move> <place> <settle> <swap> after all allow alternat arm as away backward bar big body bounc
        bow brush can chest chin chop clear collarbon com come crawl do drag draw driv ear ease fetch first flex
        flutter freez grab haul head hey hip hold home inhal jaw jump kneel lean lift lock middl nod not noth one
        other over overhead paddl pat paw pedal peel pick pinch plant plat pol pop pres prim pull push rib right
        rock roll rotat round safe scrunch settl shav short shoulder sidestep skip slip slow small soak soft
        squar squash squeez stack stand start step stretch sw swap tailbon take they thre throw tighten tip
        together trac two underneath up waist we when whol without writ you
      `,
    ],
    [
      -0.2,
      `
        <chat> <less> <not> <num> a ankl anyth be becaus befor between br bum by calv check clos drop eight face
        feel finger fingertip fist flop fold forearm forehead get grip have hug if im in it keep knee leav lie
        littl look loos low make melt mind neck nice no nobod nobody only open operat or palm pleas pump reach
        remember rest screw shorten shut sink snap some somebody spread squat stop straight tap ten thos try
        twist use watch weight whatever wher which with youll your youv
      `,
    ],
    [-0.4, 'bottom i shuffl ther tuck'],
    [-0.6, 'its that'],
  ],
  given: [
    [
      0.2,
      `
        <do> <harm> <move> <take> a are bad bit clap down fail float hand i just kne right rock side them
      `,
    ],
    [-0.2, '<attend> <part> it other the youv'],
  ],
  last: [
    [0.8, 'and'],
    [0.6, 'again middl other step toe'],
    [
      0.4,
      `
        arm behind button chang first five follow gent hang home land last left long right soft straight swap
      `,
    ],
    [
      0.2,
      `
        acros air another armpit away back beat bend body bone bow bump came careful ceil chicken circl click
        clos come complete cros curtain drawer ear fall fifteen finger floor flow foot forward freez front get
        goe grap half hall handl head hedg heel hey hip hook hop in jab jacket jaw jog jumper kick kiss kitchen
        lead lean leg littl loos lower mat meet metr name ninet noth nowt opposit park parrot part pedal plant
        pocket posh position pour proud puls rib roller room safe second shed shin shirt shop shout sid side
        sidestep sideway sink skip sky slow small smidg stand stay stick stiff still stomp strok sw switch tall
        tap third through tight tightrop time tipto together touch towel under up upright waist wallpaper way
        wheel wide window yet you
      `,
    ],
    [
      -0.2,
      `
        afterward apart around bar bench breath bridg build calv chair closer collar cross curl dip do dont drag
        dumbbell enough eye fine float ful gone good hand height help higher instead late lift like lot lung
        march me minut more nearer needl normal now on once only out peopl post press puff quick rail rais ring
        round row set settl short shoulder shov slid someth squat stack strid them thi think tiny tum ups
        waistband wait walk wider
      `,
    ],
    [-0.4, '0 go high off pleas pres'],
  ],
  length: [
    [-0.2, '3-4 5-7 8-12'],
    [-0.4, '1-2'],
  ],
  pair: [
    [0.6, '<part>_to <place>_again <place>_between down_between for_<num> the_other'],
    [
      0.4,
      `
        <air>_out <chat>_them <do>_forward <do>_straight <more>_as <not>_drop <not>_rest <not>_stop <num>_bone
        <num>_side <part>_away <part>_back <part>_be <part>_first <part>_lead <part>_loos <part>_push
        <part>_straight <place>_like <place>_that <place>_through <settle>_through a_littl after_it and_<do>
        and_<move> and_<place> and_down and_stand are_go arm_<do> ball_of bar_stay bit_<place> bit_in breath_in
        drop_it feet_in first_<num> front_of hip_<chat> hip_and it_mov it_ther kne_<move> kne_up land_<place>
        like_<chat> look_<place> not_<take> one_<part> one_bone one_side only_the opposit_<part> out_to
        pull_<place> rib_<place> rib_tuck stay_<place> tail_<place> tall_<place> the_ball the_handl the_right
        the_window toward_your we_<do> we_<move> whol_<part>
      `,
    ],
    [
      0.2,
      `
        0_<chat> 0_<part> 0_<place> 0_behind 0_foot 0_oclock 0_short <air>_for <air>_over <air>_the <air>_tight
        <air>_to <air>_whil <air>_with <attend>_a <attend>_again <attend>_and <attend>_back <attend>_bent
        <attend>_curl <attend>_down <attend>_even <attend>_feet <attend>_follow <attend>_if <attend>_kne
        <attend>_line <attend>_on <attend>_out <attend>_over <attend>_pat <attend>_pedall <attend>_plat
        <attend>_pour <attend>_shut <attend>_someth <attend>_step <attend>_ther <attend>_theyll <attend>_though
        <attend>_youll <chat>_arm <chat>_armpit <chat>_bend <chat>_breath <chat>_came <chat>_check <chat>_clap
        <chat>_clos <chat>_complete <chat>_draw <chat>_elbow <chat>_em <chat>_fight <chat>_it <chat>_just
        <chat>_know <chat>_last <chat>_leg <chat>_lift <chat>_look <chat>_meet <chat>_mone <chat>_open <chat>_out
        <chat>_polish <chat>_posh <chat>_pull <chat>_rack <chat>_reach <chat>_right <chat>_shout <chat>_sit
        <chat>_stop <chat>_straight <chat>_third <chat>_to <chat>_were <chat>_yourself <chat>_zip <do>_acros
        <do>_away <do>_backward <do>_cros <do>_down <do>_for <do>_from <do>_hand <do>_left <do>_long <do>_off
        <do>_right <do>_that <do>_the <do>_them <do>_till <do>_to <do>_under <do>_yourself <far>_all <far>_arm
        <far>_between <far>_bit <far>_circl <far>_dip <far>_down <far>_exaggerat <far>_in <far>_of <far>_or
        <far>_round <far>_step <far>_straight <far>_the <far>_them <far>_under <far>_wall <far>_we <far>_you
        <far>_your <harm>_and <harm>_away <harm>_fac <harm>_forward <harm>_left <harm>_leg <harm>_point
        <harm>_right <harm>_the <harm>_to <ill>_and <ill>_leg <kit>_apart <kit>_as <kit>_can <kit>_drag
        <kit>_have <kit>_height <kit>_of <kit>_one <kit>_out <kit>_rather <kit>_shut <kit>_sideway <kit>_slid
        <kit>_stay <kit>_that <kit>_tight <kit>_toward <kit>_turn <kit>_walk <kit>_with <less>_all <less>_bounc
        <less>_it <less>_straight <less>_till <less>_when <more>_arm <more>_armpit <more>_bone <more>_its
        <more>_on <more>_one <more>_onto <more>_sit <more>_tall <more>_through <more>_to <more>_you <move>_acros
        <move>_an <move>_fail <move>_first <move>_forward <move>_hand <move>_it <move>_low <move>_or <move>_relax
        <move>_squar <move>_straight <move>_swap <move>_the <move>_ther <move>_together <move>_under
        <move>_yourself <not>_acros <not>_away <not>_bend <not>_by <not>_come <not>_crash <not>_curl <not>_fish
        <not>_flar <not>_flop <not>_forward <not>_heav <not>_just <not>_leap <not>_like <not>_mid <not>_mov
        <not>_out <not>_park <not>_paus <not>_ping <not>_put <not>_sag <not>_spin <not>_stiff <not>_ther
        <num>_doe <num>_drawer <num>_five <num>_go <num>_heel <num>_knee <num>_line <num>_metr <num>_piec
        <num>_quick <num>_second <num>_short <num>_step <num>_up <num>_vertebra <pace>_of <pace>_on <pace>_up
        <part>_and <part>_arch <part>_becaus <part>_befor <part>_bend <part>_between <part>_big <part>_blad
        <part>_brush <part>_button <part>_clos <part>_com <part>_dead <part>_down <part>_driv <part>_drop
        <part>_ever <part>_go <part>_hard <part>_high <part>_hip <part>_insid <part>_into <part>_join <part>_kiss
        <part>_land <part>_last <part>_lik <part>_long <part>_look <part>_low <part>_mov <part>_off <part>_out
        <part>_past <part>_point <part>_pres <part>_pull <part>_reach <part>_rib <part>_round <part>_still
        <part>_sw <part>_swing <part>_tak <part>_tall <part>_that <part>_then <part>_through <part>_tight
        <part>_till <part>_touch <part>_tuck <part>_until <part>_up <part>_when <place>_a <place>_acros
        <place>_arch <place>_as <place>_back <place>_bone <place>_down <place>_forward <place>_front <place>_goe
        <place>_hand <place>_hard <place>_kick <place>_kne <place>_knee <place>_one <place>_onto <place>_out
        <place>_part <place>_pull <place>_right <place>_sideway <place>_sit <place>_so <place>_soft
        <place>_squeez <place>_step <place>_tall <place>_thos <place>_till <place>_toward <place>_under
        <place>_until <place>_with <place>_yet <place>_you <settle>_about <settle>_complete <settle>_fail
        <settle>_it <settle>_last <settle>_long <settle>_read <settle>_slow <settle>_straight <settle>_tall
        <settle>_ther <settle>_together <settle>_without <swap>_about <swap>_again <swap>_and <swap>_anyth
        <swap>_bend <swap>_drop <swap>_get <swap>_handl <swap>_height <swap>_into <swap>_not <swap>_rest
        <swap>_stop <swap>_turn <swap>_twist <swap>_you <take>_about <take>_between <take>_ever <take>_fall
        <take>_for <take>_in <take>_it <take>_off <take>_out <take>_read <take>_through <take>_your
        <wrong>_forward <wrong>_from <wrong>_it <wrong>_out <wrong>_straight <wrong>_the a_<do> a_<far> a_<pace>
        a_barn a_bit a_bucket a_burglar a_cano a_car a_cat a_chicken a_circl a_door a_flat a_glas a_hair a_hedg
        a_jacket a_jog a_knee a_log a_longer a_parrot a_plank a_shed a_shift a_shop a_ski a_smidg a_stand a_strip
        a_tap a_tightrop a_time acros_to air_out air_with all_of all_the allow_the along_your an_impatient
        and_<settle> and_<swap> and_<take> and_away and_br and_clos and_draw and_foot and_four and_hand and_hang
        and_hold and_jump and_leg and_let and_look and_lower and_over and_stay and_turn and_wide ankl_<chat>
        ankl_be ankl_behind answer_the any_<more> any_more apart_<far> arch_after are_<harm> are_<ill>
        are_<place> are_bad are_tip arm_<attend> arm_<move> arm_be arm_big arm_come arm_float arm_goe arm_like
        arm_out arm_overhead arm_sw arm_then as_<attend> as_a as_if as_on as_though as_with as_youll at_<chat>
        at_<far> at_<num> at_a at_each at_it at_maureen at_me at_ninet away_<attend> away_again away_as away_to
        baby_a back_<place> back_and back_arch back_down back_in back_into back_knee back_like back_one back_out
        back_still back_through backsid_<place> backsid_first bad_and ball_<attend> ball_that balloon_<place>
        band_<settle> band_apart band_come bar_<do> bar_slid bar_to barn_<kit> barn_door bath_water be_<less>
        be_<wrong> be_heav be_pour be_stiff behind_<chat> behind_you bel_<less> bel_<swap> bel_do bel_tight
        bell_<more> bell_is bell_onto bell_up belt_<far> belt_height bench_back bend_<pace> bend_a bent_a
        bent_behind between_the between_your big_<do> big_<move> big_arm big_circl big_exaggerat big_step
        bit_side bit_taller blad_<place> blad_down body_<do> body_swing body_then bone_at bone_by both_<part>
        both_<take> both_feet both_hook both_kne both_sit bottom_<num> bottom_<part> bottom_back bottom_of
        bottom_one bow_<place> bow_again br_it br_them brac_<place> brac_on breastbon_<do> breastbon_lift
        breath_<place> breath_out broom_<kit> broom_handl brush_your bucket_of buckl_stay build_<more>
        build_<place> build_for build_up bum_<part> bum_<place> bum_back bum_befor bum_to burglar_who but_the
        by_bone by_pull by_squeez can_<chat> can_turn can_you careful_at chair_<settle> chair_have cheek_to
        chest_<do> chest_<place> chest_and chest_away chest_between chest_com chest_down chest_tall chest_to
        chin_<place> chin_out circl_<place> circl_on circl_with clear_of clos_thos closest_to come_<attend>
        come_through could_<settle> could_<take> count_of creep_forward cros_<num> cros_<place> cross_<place>
        curl_<more> curl_the curl_up dead_<far> dead_<more> dead_<not> dead_<place> dead_level dead_stop dip_of
        do_<not> do_anyth do_not do_your doe_the doesnt_crash dog_befor dont_<far> dont_<kit> dont_<move>
        dont_<swap> dont_<take> dont_<wrong> dont_come dont_drop dont_fish dont_flar dont_heav dont_just
        dont_leap dont_let dont_ping dont_put dont_reach dont_spin door_<place> door_in door_shut door_with
        down_<attend> down_<more> down_<not> down_again down_like down_now down_part down_proper down_soft
        down_the down_under down_up down_without down_yet drag_<more> drag_<place> drag_them drag_up draw_it
        drift_<place> drift_out driv_<more> driv_<place> driv_up drop_straight each_<pace> each_end each_time
        ease_off egg_on eight_<pace> eight_second elbow_<chat> elbow_<move> elbow_<place> elbow_and elbow_at
        elbow_back elbow_brush elbow_high elbow_insid elbow_lead elbow_near elbow_that elbow_through elbow_up
        em_leav entir_<harm> entir_trip even_on ever_<pace> ever_time eye_<chat> eye_<settle> eye_follow eye_go
        far_<kit> far_wall feet_<move> feet_<take> feet_fall feet_off few_<part> few_chin first_0 first_<do>
        first_<move> first_bend first_third fish_for fish_it flex_the float_<place> float_it float_out float_your
        floor_and floor_away floor_just flutter_them fold_<place> fold_forward foot_<do> foot_<more> foot_goe
        foot_off foot_over foot_under foot_up for_eight for_fifteen for_four for_ten for_them for_thes for_twent
        fort_<num> fort_five forward_a forward_again forward_whil four_<do> four_<kit> four_<part> four_<place>
        four_back four_step free_<part> free_hand freez_ther from_each from_here from_the from_you front_<part>
        front_heel front_shin get_<attend> get_read get_tall give_baby go_<chat> go_<pace> go_again go_all
        go_complete go_first go_last go_out go_right go_sideway go_slow go_too goe_<part> goe_<place> goe_back
        goe_long goe_out goe_slack goe_the gone_<place> gone_straight good_<part> good_foot grab_the grip_fail
        ground_<attend> ground_like grow_a hair_or hand_<attend> hand_<move> hand_at hand_down hand_finish
        hand_forward hand_help hand_like hand_on hand_stay hand_tak hand_that hand_to hand_when handl_with
        hang_in hang_your happen_at hard_<chat> hard_<settle> hard_go has_someth haul_it head_<chat> head_be
        head_come head_in head_it head_last head_through head_to hear_it hear_nowt hear_stomp heav_the heel_all
        heel_down heel_glu heel_kiss heel_nail heel_of heel_out heel_right heel_stay heel_to heel_under
        height_and help_it high_<place> high_and high_between high_to hike_it hing_forward hip_<place> hip_dead
        hip_first hip_go hip_over hip_with hit_the hold_for hold_your home_again home_it hook_when hop_over
        i_<do> i_clap i_know i_say i_shout if_i if_step impatient_hors in_<far> in_<pace> in_again in_and in_by
        in_front in_out in_slow in_to in_with inch_<place> inch_down inhal_<place> inhal_down inhal_to insid_the
        into_a into_the is_<num> is_one is_two is_your it_<chat> it_<not> it_<part> it_<swap> it_away it_back
        it_behind it_bent it_came it_click it_die it_doesnt it_down it_fall it_flow it_from it_hang it_home
        it_into it_land it_lift it_on it_smooth it_spin it_stretch it_wont its_flat its_mate jab_<do> jab_<move>
        jab_<settle> jab_cros jaw_loos jog_a jog_is join_it jump_again jump_forward jump_the just_<do> just_fish
        just_in just_leav just_let just_lower just_rock just_wave keep_fac keep_it keep_swap keep_your kick_a
        kick_from kne_<do> kne_<far> kne_<more> kne_are kne_as kne_drop kne_out kne_point kne_pres kne_push
        kne_to kne_together knee_<more> knee_<place> knee_bend knee_com knee_down knee_in knee_up kneel_<more>
        kneel_<place> kneel_up know_it knuckl_look land_on land_under lazy_<do> lazy_circl lead_<place> lead_with
        lean_from lean_in lean_the leap_<part> leap_at leap_leg leav_a left_<part> left_arm left_armpit left_leg
        left_to leg_<place> leg_away leg_ever leg_first leg_hover leg_lead leg_on leg_over leg_push leg_straight
        leg_when leg_wide let_both let_em let_go let_them let_yourself lift_<num> lift_for lift_your lik_that
        like_<part> like_<place> like_down like_pat like_pedall like_plat like_pour like_someth like_your
        line_and littl_<do> littl_<move> littl_dip littl_hop littl_step liv_<place> liv_under lock_<place>
        lock_out lock_the long_<place> long_<settle> long_again long_back long_line long_on long_step longer_<do>
        longer_<kit> longer_<move> longer_step look_over loop_has low_in lower_<num> lower_it lower_them
        lower_till make_<num> make_a make_one march_<place> march_on mat_and mate_<swap> mate_do medicin_<kit>
        medicin_ball meet_a met_your mid_<air> mid_air moment_ther more_as mouth_whil mov_<not> mov_<place>
        mov_<swap> mov_in mov_no move_<far> nail_<place> nail_down name_<place> name_in neck_lik never_away
        no_<wrong> no_lean no_rest no_stop no_twist nose_<place> nose_for nose_over not_<less> not_<not>
        not_<pace> not_<place> not_<settle> not_<wrong> not_acros not_answer not_by not_curl not_flar not_flop
        not_forward not_kick not_like not_lock not_mid not_out not_park not_paus not_rest not_stiff not_stop
        not_the noth_mov oclock_<place> of_five of_strid of_stubborn of_water of_your off_<harm> off_<not>
        off_<pace> off_again off_and off_careful off_the off_with off_without on_both on_that on_thos once_its
        one_<attend> one_<settle> one_doe one_hand one_heel one_knee one_leg one_line one_piec one_up
        one_vertebra onto_<num> onto_one open_<place> open_out opposit_arm opposit_knee opposit_leg opposit_one
        or_<do> or_<kit> or_<move> or_some or_step or_walk or_youll other_<num> other_foot other_one other_out
        other_pair other_shoulder other_way out_<far> out_<place> out_again out_behind out_goe out_sideway
        out_ther out_till out_wide outsid_<part> outsid_leg over_<part> over_<place> over_elbow over_hand over_it
        over_onto over_with over_your overhead_goe paddl_light palm_with park_it past_your pat_the paw_at
        pedal_the pick_the ping_it plat_on point_<more> point_up pol_<place> polish_it pop_it pour_tea
        pres_<place> pres_it pres_the pres_your prim_them pull_<more> pull_it pull_the pull_up pull_your
        pull_yourself punch_<place> push_<place> push_away push_off push_out put_<place> put_your quick_<do>
        quick_<part> rail_for reach_<part> reach_<place> reach_back reach_down reach_for reach_under relax_your
        rest_at rest_on rib_soft right_<part> right_hand right_in right_into right_leg ring_<move> ring_<not>
        ring_<place> ring_<swap> ring_can rise_<place> rock_<place> rock_a rock_over roll_<part> roll_back
        roll_through roll_to roll_under rope_turn rotat_from round_<place> round_to ruin_your sag_<place>
        said_your same_<attend> same_as same_bow same_leg same_road same_way say_0 scarf_into scrunch_the
        seat_<place> set_it set_them settl_<place> shin_<move> shin_stay shop_<swap> shop_bag short_<pace>
        short_strok shoulder_<attend> shoulder_<far> shoulder_<place> shoulder_and shoulder_blad shoulder_down
        shoulder_heav shoulder_low shoulder_rest shov_the shut_a side_by side_to sit_<part> sit_<place> sit_back
        sit_between sit_your ski_jumper skim_your skip_<place> skip_on slack_0 slack_<num> slid_down slid_it
        slid_them slid_to slid_your slight_<place> slight_flat slip_<chat> slip_<more> slip_left slip_right
        small_<do> snap_the so_your soft_kne soften_the someth_that spot_<part> spot_kne squar_to squash_the
        squash_your squat_for squeez_it squeez_the squeez_your stack_the stack_yourself stand_<part> stand_about
        stand_and stand_knee stand_on stand_right start_with stay_glu stay_in stay_low stay_near stay_on
        stay_relax stay_soft stay_squar stay_ther stay_up step_<num> step_<place> step_and step_one step_out
        step_sideway step_through step_walk stick_it stiff_bounc stiff_when still_bent stop_<place> stop_at
        stop_in straight_<place> straight_and straight_as straight_back straight_down straight_out
        straighten_<more> straighten_<place> straighten_up stretch_the strid_each strik_<place> strik_down
        strip_of strok_to stubborn_wallpaper sulk_after sw_the swap_<part> swap_leg tail_tuck tail_under
        tailbon_<do> tailbon_<place> tailbon_curl take_your tall_<part> tall_through tap_it tea_<place> tea_out
        ten_metr tension_on that_<do> that_<far> that_<more> that_<pace> that_<part> that_bend that_big
        that_closest that_foot that_heel that_is that_it that_liv that_nice that_reach that_slight that_stead
        the_<chat> the_<more> the_<part> the_<settle> the_<take> the_alphabet the_arm the_balloon the_band
        the_brac the_broom the_ceil the_click the_cone the_ear the_far the_feet the_floor the_fold the_forearm
        the_forehead the_grip the_hall the_hip the_hook the_jog the_kitchen the_knee the_leap the_left the_loop
        the_lower the_mat the_medicin the_neck the_next the_nose the_operat the_opposit the_palm the_rest
        the_ring the_roller the_rope the_same the_scarf the_shoulder the_side the_sky the_sled the_spot the_squat
        the_time the_top the_towel the_way the_weaker the_work the_writ them_<far> them_<more> them_<move>
        them_<part> them_<place> them_<swap> them_away them_back them_down them_home them_level them_meet them_up
        then_<attend> then_<chat> then_<do> then_<part> then_body then_leg then_let ther_and ther_for ther_whil
        ther_writ they_<far> they_<move> they_are they_hard they_want theyr_park thi_<pace> thi_time
        thigh_<place> thigh_are thigh_stay think_of thos_<part> thos_fist though_ther thre_<pace> thre_quick
        thre_to through_and through_the through_your throw_the thumb_<far> thumb_<part> thumb_<place> thumb_back
        thumb_out thumb_turn tight_all tighten_the till_you time_befor tip_from tip_it tip_of to_<attend>
        to_<part> to_a to_ankl to_belt to_bum to_cheek to_clos to_fold to_grow to_hear to_left to_lengthen
        to_look to_low to_one to_open to_round to_ruin to_side to_slow to_the to_touch to_twist to_your
        toe_<more> toe_away toe_fac toe_forward toe_point toe_pull toe_up together_on top_<move> top_<settle>
        top_<take> top_hip top_keep top_knee tother_way touch_<place> touch_in touch_the toward_the trail_foot
        tuck_<place> tuck_a tuck_behind tuck_your tum_<less> tum_button tum_tight turn_to turn_with twent_<pace>
        twent_second two_drawer two_metr under_<chat> under_a under_you underneath_<chat> underneath_you
        until_<chat> up_<attend> up_<chat> up_<num> up_<pace> up_<place> up_<settle> up_as up_on up_one up_onto
        up_sit up_tall up_the up_through up_you vertebra_sulk waist_<place> waist_and wait_ther walk_it walk_to
        wall_away want_to wave_at way_<chat> way_home way_if way_in way_you we_<far> we_<less> we_lift we_lower
        we_simp we_tap weaker_<part> wee_<move> wee_bit wee_rock weight_<more> weight_<place> weight_even
        weight_off weight_up were_a when_i wher_they whil_i whil_they who_met whol_leg wide_<attend> will_<not>
        will_not with_<not> with_it with_its with_that without_a without_bend without_drop wont_<chat>
        wont_<settle> wont_go wrist_<attend> wrist_<place> wrist_stack writ_<place> writ_on writ_your you_<air>
        you_<do> you_<kit> you_<settle> you_breath you_came you_curl you_fight you_fold you_just you_mone
        you_pull you_rack you_reach you_sit you_take you_thought you_were youll_<wrong> youll_tip your_<harm>
        your_<move> your_<not> your_<part> your_ankl your_bottom your_breastbon your_bum your_bus your_check
        your_clos your_dog your_ear your_elbow your_full your_hip your_jaw your_jog your_kne your_lac your_left
        your_look your_name your_neighbour your_one your_own your_pocket your_polish your_posh your_put your_rib
        your_right your_shin your_shirt your_sid your_side your_stick your_tail your_tipto your_toe your_watch
        your_weight your_zip yourself_<attend> yourself_<part> yourself_back youv_done zip_it
      `,
    ],
    [
      -0.2,
      `
        <air>_as <air>_down <air>_is <air>_when <attend>_befor <attend>_elbow <attend>_for <attend>_it
        <attend>_its <attend>_knuckl <attend>_leg <attend>_like <attend>_long <attend>_one <attend>_than
        <attend>_they <attend>_your <chat>_ahead <chat>_carry <chat>_have <chat>_knee <chat>_land <chat>_leap
        <chat>_let <chat>_like <chat>_need <chat>_round <chat>_side <chat>_stand <chat>_stay <chat>_the
        <chat>_two <chat>_up <chat>_us <chat>_want <chat>_you <do>_again <do>_arm <do>_around <do>_back <do>_on
        <do>_still <do>_ups <do>_when <do>_with <far>_forward <far>_if <far>_kne <far>_squar <far>_squeez
        <far>_than <far>_ther <far>_toe <far>_until <far>_with <harm>_as <harm>_it <harm>_out <harm>_tuck
        <kit>_away <kit>_between <kit>_by <kit>_for <kit>_go <kit>_into <kit>_over <kit>_so <kit>_till
        <kit>_under <less>_back <less>_for <less>_of <less>_one <less>_your <more>_and <more>_behind <more>_high
        <more>_if <more>_in <more>_it <more>_out <more>_taller <move>_about <move>_apart <move>_around <move>_as
        <move>_back <move>_down <move>_even <move>_like <move>_onto <move>_out <move>_over <move>_quiet
        <move>_them <move>_up <move>_ups <not>_bounc <not>_in <not>_jump <not>_on <not>_to <num>_and <num>_ankl
        <num>_breath <num>_finger <num>_in <num>_mov <num>_on <pace>_at <pace>_the <pace>_with <part>_acros
        <part>_again <part>_an <part>_are <part>_arm <part>_as <part>_at <part>_behind <part>_bent <part>_can
        <part>_cramp <part>_doesnt <part>_face <part>_fold <part>_for <part>_further <part>_get <part>_hang
        <part>_has <part>_have <part>_height <part>_higher <part>_if <part>_just <part>_length <part>_level
        <part>_now <part>_only <part>_or <part>_over <part>_right <part>_slow <part>_soft <part>_step <part>_stop
        <part>_stretch <part>_stuck <part>_toe <part>_wide <part>_widen <part>_will <part>_without <place>_0
        <place>_abov <place>_away <place>_bend <place>_by <place>_closer <place>_com <place>_each <place>_from
        <place>_if <place>_knuckl <place>_of <place>_on <place>_round <place>_sooner <place>_stay <place>_taller
        <place>_two <settle>_a <settle>_ahead <settle>_away <settle>_forward <settle>_from <settle>_goe
        <settle>_heav <settle>_of <settle>_on <settle>_round <settle>_still <settle>_that <settle>_them
        <settle>_yourself <swap>_arm <swap>_at <swap>_of <swap>_out <swap>_the <swap>_to <take>_a <take>_again
        <take>_flat <take>_goe <take>_of <take>_to <wrong>_a <wrong>_your a_<chat> a_<harm> a_<less> a_baby
        a_foot a_hand a_minut a_pull a_second a_small a_whisker about_the acros_the after_the air_down all_<chat>
        along_the and_<harm> and_<pace> and_<part> and_again and_cros and_do and_hip and_it and_keep and_kne
        and_open and_pres and_reach and_round and_shak and_snap and_start and_stop and_straight and_the and_toe
        and_your ankl_and ankl_over arm_<far> arm_<less> arm_<place> arm_finish arm_hang arm_length arm_only
        arm_stay arm_wide as_long as_the asleep_on at_<part> away_from back_<do> back_<harm> back_a back_against
        back_long back_onto back_stay back_till back_toe bag_<place> bar_<place> bar_over be_a befor_the
        bel_<place> below_the bend_<place> bend_in bend_it bend_the bit_and bit_of body_<attend> body_<place>
        both_leg both_way bottom_knee br_the br_your button_<place> by_the by_your call_it can_<far> chang_<part>
        chang_leg chest_is chest_tight chest_with chin_<more> chin_over chin_up clos_a clos_to come_out
        come_right cros_the cros_your dead_<do> do_it do_the doesnt_<do> doesnt_<move> dont_go down_<pace>
        down_by down_for down_into down_whil drop_<part> drop_back drop_to drop_your each_<part> each_other
        egg_under elbow_<less> elbow_<settle> elbow_lower elbow_on elbow_out end_<more> end_<place> end_of end_up
        eye_<place> feet_<far> feet_back feet_on finger_<do> finger_<place> fingertip_<place> first_and
        floor_<attend> fold_the fold_your foot_<place> foot_behind foot_forward foot_out for_<chat> for_<more>
        for_a for_one for_thi for_two forward_until from_side from_ther from_your front_rib front_with go_<more>
        go_ahead go_for goe_<far> got_the gras_<place> hand_<more> hand_in hand_off hand_toward hand_up
        handl_like hang_from head_<more> head_<move> head_<num> head_<pace> head_one head_slow head_up heel_<do>
        heel_<settle> heel_in heel_on help_<chat> help_you hip_<settle> hip_come hold_it hop_<more> hop_up
        hug_the if_<chat> if_it if_its if_the if_your in_<attend> in_as in_at in_closer in_from in_on in_under
        in_your into_it is_<chat> is_<far> is_<place> is_over is_the it_<far> it_<less> it_<take> it_a it_gent
        it_get it_hard it_is it_long it_onto it_side it_under it_with its_<less> its_tight just_outsid keep_<num>
        keep_a keep_one keep_them kick_the kne_and kne_back kne_down kne_follow kne_over kne_when kne_wide
        knee_bent knee_goe knee_hover knee_on knee_point knee_soft lead_from lean_<part> lean_away lean_back
        lean_right leav_the leg_<attend> leg_<more> leg_<settle> leg_<swap> leg_and leg_at leg_go leg_long
        leg_lower leg_out leg_right leg_up lengthen_<place> let_us level_<num> lie_<place> lift_it lift_them
        littl_<attend> littl_<place> littl_squar long_as longer_than low_<part> lower_for make_it make_the
        mat_<place> mid_<part> middl_of middl_toe near_the need_to next_<kit> nose_is not_<chat> not_<do>
        not_<far> not_<move> not_<part> not_in not_let not_on of_<chat> of_it of_one of_that off_a off_one
        off_your on_a on_with on_your one_<do> one_<kit> one_ankl one_foot one_in only_<attend> only_<do>
        only_<far> only_<move> onto_your open_it opposit_shoulder or_the or_your other_<part> other_arm other_leg
        other_side out_of out_straight out_the out_until over_<far> over_till palm_down point_wher pres_even
        pull_them pull_with push_through push_yourself put_the reach_<more> reach_the reach_up reach_your
        rib_<move> rib_stay right_<chat> right_<more> right_<place> right_back right_down rock_it roll_on
        roll_out roll_over round_<num> round_the run_it same_<pace> same_<settle> same_again screw_your shak_the
        shin_<place> shoulder_<do> shoulder_away shuffl_<place> shuffl_forward side_<do> side_on side_step
        sit_<attend> sit_<more> sit_on sit_tall sit_up skip_the slid_<more> slid_up slow_<do> snap_it snap_your
        soft_<place> soft_elbow soft_knee spread_<place> spread_out spread_the squar_with squeez_a start_again
        stay_over step_away step_down step_in step_it step_your straight_arm straight_at straight_away
        straight_knuckl straight_over straight_to straighten_it straighten_your strap_<place> stuck_to switch_it
        that_<not> that_a that_your the_<do> the_<far> the_<num> the_<place> the_<wrong> the_anchor the_back
        the_bag the_bell the_box the_breath the_chair the_collarbon the_door the_dumbbell the_elbow the_fenc
        the_lac the_last the_long the_pad the_pull the_rack the_second the_spin the_step the_strap the_track
        the_tum the_wall them_<settle> them_forward them_out ther_<far> ther_<not> ther_till they_<settle>
        thi_<num> thi_one thigh_<move> through_at till_ther to_<settle> to_<take> to_<wrong> to_about to_be
        to_hip to_lift to_peel to_toe toe_<attend> toe_<place> toe_at toe_out toe_stay toe_tuck toe_when
        together_and top_of towel_<place> try_to tuck_it tuck_them turn_<more> turn_<place> turn_around turn_over
        turn_sideway two_<far> two_<part> under_the under_your up_a up_behind up_high up_in up_out up_taller
        us_<settle> way_<part> way_back way_down way_through way_to we_<settle> weight_down when_your whil_your
        whol_<pace> whol_time wide_and with_the with_them wrist_<move> wrist_stay you_<less> you_<more> you_land
        you_need you_put you_run you_stand you_stay you_want your_<attend> your_<pace> your_<place> your_<swap>
        your_<take> your_big your_breath your_bridg your_carry your_chair your_eye your_foot your_front your_go
        your_heart your_knee your_middl your_spin your_time your_wrist yourself_<pace> yourself_gent
      `,
    ],
    [
      -0.4,
      `
        <attend>_the <chat>_and <do>_in <kit>_down <less>_to <more>_a <part>_a <part>_lower <place>_at
        <place>_straight <settle>_to a_<part> at_your behind_the down_and down_on feet_<place> it_out slid_the
        that_the the_<pace> the_bench to_it way_<place> you_<attend> your_back
      `,
    ],
  ],
  phrase: [
    [0.4, 'execution-hint execution-likely tempo-hint'],
    [0.2, 'fault-hint focus-sure range-hint'],
    [
      -0.2,
      `
        breathing-hint caution-hint caution-sure easier-hint easier-likely empty_clauses equipment-likely
        equipment-sure focus-hint harder-hint harder-likely harder-sure purpose transitions
      `,
    ],
    [-0.4, 'breathing-sure dose_only fault-sure setup-likely setup-sure tempo-sure'],
    [-0.6, 'chat easier-sure'],
  ],
  start: [
    [0.6, 'the_other'],
    [
      0.4,
      `
        <air>_<place> <chat>_<do> <chat>_<move> <not>_<wrong> <part>_<move> br_the_other ease_off from_the_hip
        hold_it_ther keep_your_hip push_away push_off sit_down_between
      `,
    ],
    [
      0.2,
      `
        0_behind 0_oclock 0_short 0_short_strok <air>_<less> <attend>_<attend> <attend>_<chat> <attend>_<far>
        <attend>_<part> <attend>_<settle> <chat>_<attend> <do>_<do> <do>_<more> <do>_<move> <do>_<num>
        <do>_<place> <far>_<do> <far>_<move> <harm>_<more> <kit>_<swap> <more>_<chat> <more>_<part>
        <more>_<place> <move>_<num> <move>_<place> <not>_<place> <not>_<settle> <num>_<far> <num>_<pace>
        <num>_<settle> <pace>_<more> <part>_<attend> <part>_<chat> <part>_<far> <part>_<pace> <part>_<part>
        <part>_<place> <place>_<place> <settle>_<attend> <settle>_<more> <settle>_<num> <settle>_<place>
        <swap>_<not> <take>_<place> a_part a_smidg a_tap after_it all_of all_the all_the_time allow_the
        allow_the_back an_inch an_inch_down ankl_on ankl_on_the arm_are_the arm_big arm_go_too arm_long_in
        arm_straight_and arm_up_over as_far as_far_as as_if_ther as_you at_the_top away_from back_and
        back_and_down back_down back_heel_down back_in backsid_first band_off band_off_with bar_slid bar_slid_to
        bar_stay bar_stay_on bar_to bar_to_the bel_tight bell_down bench_back bench_back_ther bend_the_elbow
        bend_your_elbow big_arm big_exaggerat big_step big_toe_as bone_by bone_by_bone both_feet_for both_hip
        both_hook_when both_sit both_sit_bon br_it br_it_back br_them br_them_back br_them_home br_your_chest
        br_your_nose breath_in breath_in_to breath_out build_for build_for_the build_up build_up_for bum_to
        bum_to_the can_you chang_your_grip cheek_to cheek_to_cheek chest_between chest_between_the chest_down
        chest_get chest_tall chest_to_the chest_toward chest_toward_the chin_tuck chin_tuck_a collarbon_wide
        come_through come_through_the come_up come_up_on come_up_onto crawl_to crawl_to_the cros_one_foot
        dead_stop do_all do_all_the do_it_again do_not do_not_park do_not_paus do_not_rest do_not_stop do_your
        dont_come dont_come_down dont_drop dont_drop_it dont_fish dont_fish_for dont_heav dont_heav_the dont_just
        dont_just_let dont_just_wave dont_leap dont_leap_at dont_let dont_let_it dont_let_them dont_ping
        dont_ping_it dont_reach dont_reach_for dont_roll_it dont_sit_ther dont_spin dont_stand_on dont_tip_it
        down_again down_like_your down_one down_one_bone down_the_front down_to down_to_your down_up driv_up
        drop_straight drop_straight_down drop_the_back drop_the_heel drop_them_over elbow_a_touch elbow_about
        elbow_about_fort elbow_at elbow_at_ninet elbow_back elbow_brush elbow_brush_your elbow_high
        elbow_high_and elbow_in_by elbow_insid elbow_insid_the elbow_skim_your elbow_stay_a elbow_stay_by
        elbow_tuck_under elbow_under_the elbow_up explod_up eye_follow eye_go fac_the_kitchen feet_in feet_land
        find_it find_the_floor finger_wide first_bend five_second float_your float_your_kne flutter_them
        free_hand free_hand_on freez_ther from_here from_the from_the_ankl front_shin get_out get_out_of get_tall
        give_baby give_baby_a go_all go_all_the go_the_other go_till_you go_up_on grab_the grab_the_shin grow_a
        grow_a_bit hand_finish hand_on_the hand_over_hand hand_round_your hand_stay hand_to hand_to_shoulder
        hang_in_the haul_it head_last head_to head_to_heel heel_all heel_all_the heel_nail heel_nail_down heel_of
        heel_of_the heel_stay heel_stay_down heel_to_bum heel_under heel_under_your heel_up high_to high_to_low
        hing_forward hip_and hip_and_shoulder hip_back hip_dead hip_first hip_go hip_go_back hip_over_your
        hip_squar_to hip_stay_fac hit_the_floor hold_it_in hold_it_smooth hold_the_top hold_your hold_your_elbow
        hop_over i_know_it i_want_to if_i if_the_bell if_the_grip if_your_kne in_again in_to_open inhal_down
        inhal_to inhal_to_lengthen is_your it_doesnt it_doesnt_come it_doesnt_crash its_not_an its_only_the
        its_your_ankl jab_cros jaw_loos keep_fac keep_fac_the keep_it keep_it_bent keep_it_on keep_it_stretch
        keep_mov_in keep_swap keep_tension_on keep_the keep_the_rope keep_the_squeez keep_them_level
        keep_them_wide keep_your keep_your_back keep_your_bel keep_your_feet keep_your_rib kick_from
        kick_from_the kne_out kne_out_over kne_point kne_point_at kne_pres kne_pres_out kne_push kne_push_out
        kne_stay_soft kne_to kne_to_your kne_together knee_stay_in knee_up kneel_up land_on land_on_the lead_with
        lead_with_the lean_back_until lean_in lean_in_a lean_into lean_the left_arm left_to left_to_left
        leg_hover leg_push leg_together let_both let_em let_em_leav let_go_slow let_it let_it_go let_it_hang
        let_the let_the_kne let_the_knee let_the_shoulder let_your_arm let_yourself lift_it_and lift_one
        lift_one_foot lift_the_hip lift_the_other lift_the_top lift_your lift_your_chest lift_your_hip like_a
        like_a_scarecrow like_open_the like_your like_your_check like_your_in like_your_look like_your_put
        littl_beat littl_quick littl_quick_one lock_the lock_the_elbow long_arm look_down_at look_straight_ahead
        lower_them make_a_fist make_one make_yourself_a march_on march_on_the near_to near_to_the never_away
        no_lean no_twist nose_over nose_over_toe nose_over_your not_a_stand not_acros not_by not_flar not_forward
        not_forward_like not_like not_like_your not_lock not_lock_out not_mid not_mid_air not_out not_out_in
        not_stiff not_the_chin not_your not_your_tum noth_mov off_again off_straight off_the off_the_roll
        one_big_slow one_bone one_bone_at one_hand one_hand_at one_hand_back one_hand_forward one_line only_the
        only_the_down open_the_arm opposit_arm_and opposit_hand opposit_hand_and or_some or_some_of other_hand
        other_hip other_knee other_shoulder out_goe out_goe_the out_in out_to_the over_the over_the_broom
        overhead_goe overhead_goe_the paddl_light palm_up pat_the paw_at paw_at_it paw_at_the pedal_the peel_the
        pick_the pick_the_other pick_up pick_up_one pinch_your_shoulder plant_both plant_both_pol plat_on
        plat_on_your pop_it pop_it_up pres_it pres_it_up pres_the pres_the_back pres_your pres_your_kne
        pretend_ther_writ prim_them pull_it pull_it_to pull_the_slack pull_till pull_your pull_yourself push_it
        push_off_the push_the_floor push_the_wall push_your_backsid put_it_down put_your put_your_hand
        put_your_head quiet_feet reach_back relax_your rib_soft rib_tuck ring_can ring_can_turn roll_back_down
        roll_through rotat_from rotat_from_the round_the round_to round_to_the same_as same_as_on same_as_with
        same_as_your same_bow same_length same_length_of same_way scrunch_the scrunch_the_scarf set_it
        set_it_down set_them set_them_down shin_stay shoulder_low shoulder_stay_heav shoulder_stay_squar shov_the
        shov_your show_the show_the_mirror side_by side_to side_to_side sit_back_as sit_between sit_between_your
        sit_down sit_down_like sit_straight_down sit_under sit_under_it sit_your sit_your_hip skip_on skip_on_the
        slack_0 slack_0_step slid_down_until slid_it slid_them_up slip_left snap_the snap_the_hip soak_it
        soak_it_up soft_kne soften_the spread_your_finger squash_the squeez_at squeez_at_the squeez_it
        squeez_it_for squeez_the squeez_the_bum squeez_the_glut squeez_your_cheek stack_the stack_the_top
        stack_yourself stack_yourself_like stand_and stand_knee start_with start_with_the stay_down_ther stay_in
        stay_in_the stay_low stay_on stay_on_the stay_relax stay_ther stay_up stay_up_ther step_one step_out
        step_over_the step_sideway step_through stick_it stick_it_for still_bent straight_down straighten_up
        sw_the sw_your_arm swap_leg_when swap_the_leap tailbon_curl take_it_off take_it_round take_ten_metr
        take_the take_your take_your_feet take_your_right tall_as_you tall_through tap_it that_closest
        that_closest_to that_is that_it the_arm the_bar the_breastbon the_chest the_heel the_jog the_jog_is
        the_knee the_left the_loop_has the_next the_opposit the_other_one the_other_pair the_right the_toe
        the_whol they_dont_flar they_hard they_hard_go theyr_park theyv_gone theyv_gone_straight thi_time
        thi_time_befor thigh_level thigh_stay think_of thre_quick thre_quick_step thre_to thre_to_the
        thumb_at_ten thumb_back thumb_turn thumb_turn_out to_come toe_away toe_fac toe_fac_front toe_forward
        toe_point toe_pull toe_pull_up toe_up toe_up_toward tuck_behind tuck_behind_your tuck_your tuck_your_toe
        tum_in tum_tight turn_from_the turn_the_ring turn_with turn_your_chest turn_your_rib two_step
        two_step_walk unclench_your_jaw underneath_you up_as_high up_on_your up_onto up_onto_the up_onto_your
        up_over up_over_the up_when up_when_your up_you up_you_come up_you_get wait_ther walk_back_on walk_it_in
        walk_it_into walk_to walk_to_the walk_your_hand we_are_go we_lift we_simp weight_even_on weight_in
        weight_over_the were_go_sideway when_i_clap when_you when_you_come when_you_do whol_foot whol_foot_on
        with_your_arm without_bend without_mov without_mov_them wrist_stack wrist_stack_over wrist_straight
        writ_your you_are you_are_go you_dont_pull you_fight you_fight_it you_go you_just you_just_leav
        you_just_lower you_like you_walk your_chest your_chest_and your_front your_front_knee your_jog your_jog_a
        your_jump your_jump_forward your_neck_stay your_not your_not_answer your_not_curl your_polish
        your_polish_it your_stick your_stick_bow
      `,
    ],
    [
      -0.2,
      `
        <attend>_<more> <chat>_<swap> <do>_<pace> <do>_<part> <harm>_<move> <kit>_<part> <more>_<num>
        <move>_<attend> <move>_<do> <move>_<move> <move>_<part> <not>_<do> <num>_<place> <pace>_<place>
        <part>_<do> <part>_<harm> <part>_<ill> <part>_<more> <part>_<not> <part>_<settle> <part>_<swap>
        <part>_<wrong> <place>_<attend> <place>_<num> <place>_<part> <settle>_<chat> <settle>_<do> <swap>_<kit>
        <swap>_<place> <take>_<do> <take>_<far> and_again ankl_over ankl_over_the arm_and arm_stay arm_to
        arm_to_the arm_up arm_up_to back_foot back_heel_up back_off back_up bend_it bend_the_kne bend_your_kne
        both_way br_the br_the_front br_your br_your_hand by_the chang_leg chest_and chest_and_hip chin_over
        chin_up clos_to come_back_to come_down cros_the cros_your cros_your_arm curl_the curl_the_head
        curl_the_hip do_not_let do_the dont_let_the dont_let_your down_on driv_the_other elbow_in elbow_pin
        fold_the fold_your front_foot hand_on_your hand_up hang_on head_up heel_and heel_down hip_through
        hold_it_down hold_it_till hop_up hug_the if_you in_the its_the keep_it_clos keep_one keep_one_foot
        keep_the_back keep_the_hip keep_the_knee keep_them keep_your_chest keep_your_wrist kick_the kne_down
        kne_follow kne_go kne_over kne_over_your kne_up_over kne_wide knee_to lean_a_touch lean_back lean_forward
        lean_on left_foot leg_stay leg_up let_it_out let_the_arm let_the_floor let_the_ground let_us lift_the_arm
        lift_the_back lift_the_heel lift_your_heel lift_your_toe lower_for lower_it_down lower_yourself_gent
        make_it make_the not_in not_on on_your_back one_leg open_it opposit_arm_forward other_foot out_as
        out_as_you palm_down peel_the_hip pres_even pull_them push_the_ring push_through push_through_the
        push_your_hip push_yourself push_yourself_away put_them reach_the reach_the_arm rib_stay rock_it roll_out
        roll_over roll_your_head run_it screw_your shak_the shuffl_forward sit_back_down sit_tall sit_up
        slid_one_foot slid_the snap_it soft_elbow soft_knee squat_and squeez_a squeez_your_backsid stand_tall_on
        stand_up_and stand_up_out stay_clos stay_ther_till step_back step_back_to step_down step_in step_it
        step_your sw_your_leg switch_it switch_it_up take_your_hand take_your_time tap_the_heel that_the
        that_your the_hand the_leg the_other_arm the_other_hand the_other_leg the_shoulder the_sw the_thigh
        through_the toe_out tuck_it tuck_it_in tuck_the_toe tuck_them turn_around turn_out turn_sideway turn_them
        turn_your_back turn_your_head under_the walk_it_back walk_the_feet walk_your_left wrist_stay
        wrist_stay_straight you_can
      `,
    ],
  ],
  word: [
    [0.8, 'home'],
    [0.6, 'away forward land left opposit swap tall'],
    [
      0.4,
      `
        again ball bow chang chin curl ear elbow fall first follow freez gent goe jab lead let littl middl nose
        other overhead pocket right shov sideway soft squash stand stiff straight tail then tip together touch
        toward waist writ
      `,
    ],
    [
      0.2,
      `
        acros along alphabet alternat appl arch arm as back backsid backward bad balloon barn behind bend bent
        between big bit blueber body bon bone both breastbon broom brush bucket build bum burglar buttock came
        car careful ceil cheek chest chicken chop circl clap click closest come complete curtain die dip
        direction door down draw drawer drift driv drop ease em exhal fail fetch fish five flar flex float flow
        flutter foot front glas glu hair hall handl hang hear hedg heel hey hike hip hit hook hop impatient
        includ inhal into ish jacket jaw join jump jumper kiss kitchen knee lean leap leg lik like liv lock long
        look loos lower mate medicin meet met metr mov name natural near ninet nod noth nowt off outsid own paddl
        park parrot past pat paw pedal pelvi pick piec pol polish posh position pour prim proud pull punch push
        put quick relax rest return rib road rock roller rotat ruin safe sag scoop shav shed shin shirt shop
        shoulder side sidestep simp sit skip sky slack slight small smidg soften spot squeez stay stomp stool
        strik strip strok sw sweep swing tailbon tak tea them ther though through throw thumb tight tighten
        tightrop till time tipto to toe tother trac turn underneath up upright vertebra wait wallpaper wave way
        weaker wee were wheel whol wide wind window without yes yet yourself
      `,
    ],
    [
      -0.2,
      `
        0 abov afterward all anchor angl anybod are arent around ask at bag band bare be been befor begin below
        better bigger block blue bottl box br bridg calf call calv can cant carry centimetr chair chas child
        collar crack cramp crank crisp cros crush day deadlift do done duck each eight else empt end enough even
        ever everybod everyon fenc fine finger fingertip fist flat four friend ful further get give glov gone got
        grip had half hamstr hamstring has heart help her higher hill hold hover how hug ill instead isnt itll
        itself keep knot ladder late lie longer lot love lung mak march may mean melt miss more most muscl my
        nearer need needl nice nine nobod nobody normal notic now number of old or our pad parallel partner pass
        peopl pin plent post power puff pump rail rais red remember rep round row sat say screw see shak sharp
        sho shoe shorten should singl sip six slipper snap snatch so some somebod somebody someth sooner spe spin
        split spread squat stag stanc star start still stood straighten stuck talk tell than their thirt thre
        tidy tie tim tin track treacl tug twelv twic twist two us use waistband walk want warm was watch week
        well what whatever wher whisker widen width work wrap wrist
      `,
    ],
    [
      -0.4,
      `
        a about bench closer dumbbell face feel for good have its leav make me minut on pleas second shuffl strap
        that thi try ups wider will youv
      `,
    ],
    [-0.6, 'breath if is only'],
  ],
} as const satisfies CueWeights
