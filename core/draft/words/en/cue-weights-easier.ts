/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind easier; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EASIER_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [0.8, 'less'],
    [0.4, 'swap'],
    [0.2, 'attend move'],
    [-0.2, 'carer chat far harm more num place wrong'],
    [-0.4, 'pace'],
    [-0.6, 'air'],
  ],
  conditional: [[0.2, 'yes']],
  first: [
    [0.6, 'leav or same take'],
    [0.4, '<less> bend cut do let level lose put red step tap to too use whit yellow'],
    [
      0.2,
      `
        0 <far> <more> <swap> another anybod anyon arm bottom cant child climb feet fist for go got half hand
        higher if ill jump kne lie loop looser marama march miss modification more new only pillow plain pop
        quicker rock sat shallower shorten shorter should shuffl sit slack slid slower sos squat stag stick stop
        thinner tiny walk whichever wider wob you
      `,
    ],
    [
      -0.2,
      `
        <air> <attend> <not> <num> <pace> <part> a about all and as bar chest chin down driv ease elbow eye find
        get heel hip i it last like long look not okay open paus pick pres rib shoulder small squash squeez stand
        stay still straighten switch that thi thigh thre tuck up weight when whol youll youv
      `,
    ],
    [-0.4, '<chat> <place> dont lower rest'],
    [-0.6, 'your'],
  ],
  given: [
    [0.4, 'lot'],
    [
      0.2,
      `
        <chat> <ill> <not> <num> a again an bar behind chair cramp crank cros day dont feel feet from front get
        grumbl had hamstring hav hip keep last like much nip not now or out over pick pinch pres rather someth
        stay stiff then thre tight toda two up week with wobbl
      `,
    ],
    [
      -0.2,
      `
        <far> <less> <pace> <swap> bend bit bottom can cant down easy fine fly forearm grab grind grip half hand
        have hold if is its just knee kneecap let lift light more of off one rock slid sore start the they turn
        wait want your
      `,
    ],
  ],
  last: [
    [0.6, 'easier wob'],
    [0.4, 'fist help higher stiff thigh version yellow'],
    [
      0.2,
      `
        0 about are arm baby bag bed beginner bell bent better bit bridg closer complain copy corner count cramp
        crank crim cros deadlift deep dumbbell empt enough fierc fine flutter four geni gone grand green ground
        grumbl grump hamstring hand hap heav heel height high jump kickstand kinder knee leg lighter like longer
        lot marama march mean minut moan mov much muddl need off only option other peopl plain plent rack reach
        red ring sake sid sit slack slip someth sore sphinx sprawl stag steep sure th ther tight tin tip tir to
        toda turn twist want whenever whit wider wobbl wrong
      `,
    ],
    [
      -0.2,
      `
        ankl back band bike bottom breath can do doddl drop dull easy elbow end face finger first five flat handl
        hard hip hold home isnt long me no noth okay pillow plat pleas pres quiet rail rib shoulder slid soft
        spin spot squat stand step stop tall them thi top towel two under walk
      `,
    ],
    [-0.4, 'on toe'],
  ],
  length: [
    [-0.2, '5-7 long'],
    [-0.4, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.6, '<part>_on'],
    [
      0.4,
      `
        <attend>_its <attend>_your <do>_closer <far>_one <kit>_and <kit>_if <kit>_in <kit>_under <kit>_up
        <less>_to <more>_one <not>_at <not>_have <not>_reach <not>_sham <part>_bent <part>_can <part>_down
        <part>_if <place>_if <settle>_on <settle>_the <swap>_sham <swap>_the a_lot a_time and_just at_a bend_the
        bottom_<part> bottom_knee cushion_<place> have_to if_its if_the if_your it_<less> its_<less>
        just_<attend> leav_the leav_your level_<num> lose_the mak_it no_<do> no_<kit> no_sham one_<kit> or_just
        out_in same_th still_a that_<attend> the_<do> the_arm the_leg the_rack to_<less> toe_<place> toe_on
        toe_stay two_<part> two_hand walk_the whenever_<chat> whenever_you your_first your_fist your_thigh
      `,
    ],
    [
      0.2,
      `
        0_dumbbell 0_metr <attend>_a <attend>_are <attend>_bell <attend>_count <attend>_go <attend>_hard
        <attend>_it <attend>_just <attend>_knee <attend>_kneel <attend>_like <attend>_ly <attend>_one
        <attend>_out <attend>_six <attend>_standing <attend>_straight <attend>_that <attend>_the <attend>_thi
        <attend>_way <attend>_well <chat>_as <chat>_clos <chat>_com <chat>_cramp <chat>_down <chat>_enough
        <chat>_four <chat>_get <chat>_half <chat>_if <chat>_it <chat>_keep <chat>_leap <chat>_may <chat>_mean
        <chat>_might <chat>_near <chat>_need <chat>_newer <chat>_of <chat>_one <chat>_out <chat>_overhead
        <chat>_rac <chat>_some <chat>_tip <chat>_tir <chat>_toppl <chat>_up <chat>_version <chat>_week
        <chat>_wider <chat>_wobbl <chat>_would <chat>_your <do>_fine <do>_four <do>_into <do>_it <do>_on
        <do>_side <do>_ther <do>_with <do>_your <far>_0 <far>_box <far>_by <far>_down <far>_if <far>_impact
        <far>_plat <far>_rang <far>_ring <far>_spring <far>_stand <far>_way <harm>_ankl <harm>_day <harm>_if
        <harm>_or <harm>_stay <harm>_under <ill>_ankl <ill>_at <ill>_in <ill>_or <kit>_a <kit>_behind
        <kit>_closer <kit>_dig <kit>_for <kit>_is <kit>_it <kit>_longer <kit>_mak <kit>_off <kit>_side <kit>_tak
        <kit>_toda <less>_by <less>_find <less>_get <less>_hamstring <less>_hold <less>_if <less>_is <less>_kne
        <less>_manag <less>_one <less>_option <less>_peopl <less>_steep <less>_stiff <less>_strong <less>_ther
        <less>_thi <less>_under <less>_weight <less>_when <less>_work <more>_0 <more>_again <more>_at <more>_just
        <more>_more <more>_slack <more>_taller <more>_upright <more>_weight <move>_both <move>_closer <move>_down
        <move>_here <move>_in <move>_into <move>_off <move>_on <move>_side <move>_the <move>_to <move>_with
        <move>_your <not>_ear <not>_find <not>_get <not>_go <not>_hap <not>_happen <not>_hop <not>_jump
        <not>_lift <not>_manag <not>_meet <not>_pres <not>_read <not>_say <not>_sure <not>_then <not>_tin
        <not>_weight <num>_and <num>_arm <num>_cushion <num>_dumbbell <num>_knee <num>_metr <num>_mov <num>_off
        <num>_out <num>_the <num>_toe <num>_weight <pace>_if <pace>_is <pace>_lamppost <pace>_longer <pace>_march
        <pace>_option <pace>_walk <pace>_work <part>_along <part>_any <part>_are <part>_at <part>_complain
        <part>_cros <part>_from <part>_help <part>_hurt <part>_i <part>_instead <part>_knee <part>_light
        <part>_lower <part>_nearer <part>_not <part>_only <part>_sore <part>_tap <part>_whenever <part>_wher
        <part>_wide <part>_wont <part>_you <place>_a <place>_at <place>_bend <place>_block <place>_by
        <place>_closer <place>_ear <place>_four <place>_in <place>_is <place>_mak <place>_more <place>_set
        <place>_taller <place>_them <place>_thes <place>_to <place>_toe <place>_way <place>_whil <settle>_back
        <settle>_closer <settle>_had <settle>_more <settle>_off <settle>_out <settle>_that <settle>_ther
        <settle>_to <swap>_0 <swap>_band <swap>_be <swap>_behind <swap>_closer <swap>_come <swap>_do <swap>_hop
        <swap>_in <swap>_it <swap>_jump <swap>_just <swap>_leg <swap>_one <swap>_them <swap>_tin <swap>_touch
        <swap>_under <swap>_up <swap>_weight <swap>_your <take>_a <take>_back <take>_closer <take>_cramp
        <take>_higher <take>_it <take>_light <take>_nearer <take>_on <take>_the <take>_wide <wrong>_about
        <wrong>_backward a_<kit> a_<pace> a_<part> a_baby a_ball a_bend a_bit a_box a_burpe a_chair a_complet
        a_crim a_cushion a_deadlift a_dumbbell a_fair a_fat a_gap a_geni a_grand a_heel a_hill a_kickstand a_knee
        a_lighter a_littl a_love a_muddl a_paus a_rais a_shoulder a_smaller a_sore a_sphinx a_sprawl a_toe
        a_twist a_wall along_the an_<less> an_easier and_<do> and_<num> and_<swap> and_come and_give and_help
        and_hold and_itll and_jog and_leav and_let and_pull and_stand ankl_<place> ankl_over another_<less>
        another_option any_<pace> any_time anyon_whos are_<attend> are_<chat> are_<less> are_crank are_moan
        are_open are_over are_stiff are_tight arm_<place> arm_and arm_by arm_down arm_on arm_stay arm_wher
        as_<chat> as_<less> as_<pace> as_hard as_kneel as_much as_well at_<num> at_<part> at_all back_<chat>
        back_<ill> back_<less> back_<more> back_from back_had back_of back_stiff back_the back_to back_toe
        back_up bad_ankl balanc_is band_<swap> band_fine band_for band_go band_longer band_off be_<place> be_done
        bell_<attend> bell_dig bell_if bench_<attend> bench_if bend_your between_<chat> big_arm big_spring
        bit_for bit_of block_<swap> both_<part> both_<place> both_<take> both_feet both_hand both_together
        box_and box_tak br_the bum_<not> bus_ticket by_bend by_your call_that can_<far> can_<move> can_<swap>
        can_be can_come can_do can_touch cant_<settle> cant_<take> cant_find cant_get cant_manag car_<num>
        car_one catch_or chair_behind chest_<attend> chest_if child_pose climb_<part> climb_<place> climb_back
        clos_a closer_<attend> closer_if closer_in closer_to com_<part> com_back come_<part> come_<place>
        come_back come_out complet_<chat> complet_exercis cramp_<place> cramp_in cros_your cushion_on
        cushion_under cut_it cut_the dig_into dip_<less> dip_allow do_<num> do_<part> do_it do_leg do_one do_them
        do_your done_<place> done_in done_sit dont_<chat> dont_<do> dont_<move> dont_<settle> dont_go dont_lift
        dont_pres down_<less> down_<swap> down_a down_at down_fine down_for down_is down_whil drop_a drop_to
        drop_your each_minut each_step ear_<attend> ear_if easy_<less> easy_option elbow_<far> elbow_<more>
        elbow_further elbow_lower elbow_on empt_<kit> empt_bar even_<num> even_two everybody_sake eye_<far>
        eye_<more> eye_level fair_bit far_<attend> far_as fast_<do> fast_<move> fast_march fast_walk fat_<kit>
        fat_<swap> fat_book feel_<attend> feel_like feet_<attend> feet_<pace> feet_<part> feet_back feet_if
        feet_light feet_nearer feet_wide fine_<attend> fine_if first_<chat> first_week fiv_<attend> fiv_if
        flat_<swap> flat_block flat_on floor_<attend> floor_<place> floor_<swap> floor_do floor_in foot_<place>
        foot_and foot_on for_<chat> for_<harm> for_<ill> for_<less> for_<swap> for_everybody for_green for_it
        for_less for_sore for_tonight for_you forearm_<attend> forearm_for from_someth from_ther front_on
        further_forward gap_<place> gap_between get_cramp get_down give_it give_yourself go_<attend> go_<num>
        go_as go_lighter go_of go_wider good_<num> good_one grand_version grip_go had_<far> had_<less> had_enough
        had_it half_<attend> half_<do> half_as half_the hamstring_are hand_<more> hand_<place> hand_behind
        hand_down hand_each hand_to hand_under hand_up happen_<place> happen_in hard_<less> hard_<swap> hard_work
        hate_it have_<chat> have_had have_the head_<place> head_down heav_bell heel_<far> heel_at heel_can
        heel_low help_<chat> help_it help_you higher_<kit> higher_ring hill_<attend> hill_as hip_<not> hip_are
        hold_<place> hold_the hoodi_<more> hoodi_<place> hoodi_up hous_<more> hous_<place> hous_up i_mean
        if_<num> if_it if_ly if_six if_standing if_straight if_that if_thi if_youd ill_<not> ill_not impact_peopl
        in_<place> in_closer in_front is_<attend> is_<less> is_<not> is_<swap> is_a is_easier is_grand is_no
        is_perfect is_still it_<attend> it_<far> it_<ill> it_a it_along it_easier it_gentler it_lighter it_nip
        it_real it_sat it_short it_slip it_stand it_stood it_wider it_wont its_<attend> its_<chat> its_<do>
        its_<far> its_<harm> its_fierc its_heav its_higher its_lighter its_lower its_nice its_nip its_plent
        its_shak its_wob jog_the jump_<more> jump_<place> jump_up just_<chat> just_<do> just_<move> just_<swap>
        just_as just_do just_look just_the just_you keep_<num> keep_all keep_one kne_<less> kne_<place> kne_any
        kne_bent kne_can kne_down kne_in kne_lower kne_more knee_<attend> knee_<chat> knee_<move> knee_<swap>
        knee_at knee_if knee_on knee_you kneel_<attend> kneel_if lean_on leav_a leg_<far> leg_<settle> leg_at
        let_some let_your level_0 level_one lift_the lighten_it littl_one littl_way long_way loop_abov loop_off
        lose_it lot_<chat> lot_toda love_<less> low_impact make_it make_them march_<attend> march_if march_it
        mat_<place> may_<settle> may_<take> measur_your might_<attend> miss_<place> miss_out more_<attend>
        more_<kit> more_<place> more_slack more_upright more_weight much_as near_stand nearer_<place> nearer_in
        new_peopl new_to night_<place> night_on nip_<place> nip_in no_<move> no_<swap> no_hop no_jump no_tin
        no_weight nobody_measur not_<more> not_hap not_have not_hold not_keen not_read not_say not_sure of_<harm>
        of_<less> of_<place> of_a of_the off_<chat> off_a off_an off_you okay_to on_the on_thes on_to on_your
        one_<harm> one_<part> one_arm one_bell one_knee one_off one_toe one_weight only_<do> only_<move> only_the
        onto_<part> option_a or_0 or_<far> or_<not> or_<settle> or_<take> or_kne or_none or_only or_push or_put
        or_take other_<attend> other_heel other_thigh out_<not> out_<place> out_for out_the over_a palm_<more>
        palm_<place> paus_<attend> paus_longer perfect_<less> perfect_okay pick_it pinch_at play_with pop_that
        pose_is pres_it pressur_off pull_from push_down push_it push_off put_a put_the rac_at rack_<attend>
        rack_if rang_<place> reach_your read_for real_<far> real_low rest_<place> rest_on right_<less> ring_<far>
        ring_<more> ring_<place> ring_higher ring_up round_<num> round_four round_your same_<do> same_<settle>
        same_clock same_line sat_<place> sat_down say_<more> say_anyth scal_<place> scal_down second_lamppost
        sham_<place> sham_in shin_and shin_touch shorten_the should_that shoulder_are shuffl_<place> shuffl_your
        side_<do> side_<kit> simp_<settle> simp_<take> sit_<attend> sit_<swap> sit_higher sit_on six_is sixt_metr
        slack_<place> slack_in slid_the smaller_<far> so_<chat> so_<far> so_its soft_knee sol_<place> sol_on
        some_of some_slack sooner_be sos_the spring_<do> squat_to squeez_both stag_<num> stag_one stand_<place>
        stand_closer start_<wrong> start_wher starter_version stay_<place> stay_down stay_here stay_on
        step_<place> step_closer step_in step_it step_side stick_a still_<pace> still_count stool_<place>
        stool_behind stop_at stop_ear stop_then straight_out support_<place> swap_hand tak_some take_<less>
        take_<place> take_the talk_to tap_a tap_the tap_your teach_it that_<less> that_<pace> that_a that_better
        that_come that_count that_done that_feel that_hammer that_plent that_roll the_0 the_<num> the_<settle>
        the_bed the_bench the_bend the_bridg the_chair the_corner the_crat the_desk the_door the_empt the_fenc
        the_first the_floor the_foot the_gate the_good the_ground the_hamstring the_heel the_height the_hous
        the_jump the_kerb the_kne the_lever the_load the_low the_march the_one the_paus the_pressur the_rang
        the_skip the_sofa the_starter the_straight the_thistl the_twist the_wall the_wav the_woggl the_wrist
        them_<far> them_<place> them_forward then_<settle> then_<swap> ther_<do> ther_<more> ther_more
        they_<swap> they_are thigh_and thinner_<kit> thinner_band thistl_<attend> thistl_if thumb_<swap>
        thumb_can ticket_<place> ticket_under tight_<part> tight_hamstring time_<attend> time_if tiny_one
        tip_backward to_<not> to_<settle> to_a to_eye to_it to_lighten to_make to_modif to_play to_rest to_scal
        to_sit to_stop to_take toe_<move> toe_can toe_down toe_of too_<less> too_<more> too_steep too_stiff
        too_strong top_<num> top_<part> top_hand top_of touch_<place> touch_down touch_the towel_<place>
        towel_behind two_<take> two_cushion two_feet two_inch under_them under_ther under_your up_<more> up_again
        up_more up_taller up_with use_a use_the walk_<less> walk_a walk_it wall_<attend> wall_for wall_if
        want_<place> want_in way_<less> way_off we_call weight_<attend> weight_<chat> weight_if weight_in
        weight_toda welcom_to wher_they whichever_keep whil_the who_gone whos_<part> wider_<attend> wider_if
        wider_with with_just with_tight without_the wobbl_about wont_<do> wont_<far> wont_<move> wont_have
        wont_reach would_<not> would_rather wrap_it wrist_<harm> wrist_<not> wrist_complain wrist_or wrist_sore
        you_<attend> you_<less> you_<more> you_<place> you_if you_keep you_may you_might you_need you_rac
        you_start you_straight you_up you_want you_would youd_sooner your_<chat> your_<part> your_<wrong>
        your_back your_chest your_clos your_com your_down your_get your_grip your_hamstring your_hoodi your_near
        your_newer your_palm your_sid your_side your_stiff your_tir your_toe your_top your_wobbl yourself_<more>
        yourself_a yourself_up youv_<not> youv_a
      `,
    ],
    [
      -0.2,
      `
        0_<do> 0_<place> <attend>_at <attend>_down <attend>_if <attend>_is <attend>_on <attend>_ther <attend>_to
        <attend>_you <attend>_youv <chat>_a <chat>_cant <chat>_could <chat>_lift <chat>_like <chat>_that
        <chat>_you <do>_at <do>_away <do>_down <far>_door <far>_it <far>_its <far>_than <far>_you <far>_your
        <harm>_leg <kit>_are <kit>_do <kit>_down <kit>_of <kit>_out <kit>_stay <kit>_tight <kit>_with <less>_far
        <less>_heav <less>_low <less>_or <less>_the <more>_than <more>_the <move>_back <move>_you <not>_a
        <not>_bend <not>_drop <not>_hand <not>_just <not>_stop <not>_ther <not>_to <num>_a <num>_leg <num>_of
        <num>_step <num>_to <num>_up <pace>_it <part>_a <part>_as <part>_closer <part>_com <part>_come
        <part>_forward <part>_go <part>_is <part>_just <part>_lift <part>_long <part>_of <part>_off <part>_out
        <part>_point <part>_right <part>_round <part>_slid <part>_straight <part>_ther <part>_through
        <part>_width <place>_arm <place>_as <place>_behind <place>_door <place>_down <place>_enough <place>_into
        <place>_it <place>_its <place>_leg <place>_one <place>_over <place>_top <place>_you <settle>_a
        <settle>_in <settle>_instead <settle>_it <settle>_up <swap>_and <swap>_are <swap>_is <swap>_more
        <swap>_not <swap>_with <take>_down a_<num> a_<take> a_<wrong> a_bell a_doddl a_mat a_second a_small
        a_sofa a_step a_wide about_<num> about_a abov_the against_the all_<attend> all_<part> all_hamstring
        and_<attend> and_<less> and_<move> and_<part> and_a and_br and_get and_it and_keep are_<place> are_<swap>
        are_bend are_fine are_pull are_sore arm_<attend> arm_<less> arm_of as_<attend> as_a as_if as_your
        at_<chat> at_<swap> at_home at_the at_you at_your away_<attend> away_if back_<attend> back_<part>
        back_<place> back_down back_if back_in back_knee band_<place> band_and befor_<chat> befor_you behind_your
        below_the bend_too between_your bit_<far> bit_<more> bone_at both_are come_to could_do do_<not> do_not
        dont_<less> dont_<take> down_in down_to down_your drop_<place> drop_it drop_the dumbbell_<attend>
        each_<part> each_hand easy_<settle> elbow_are ever_<pace> feet_down foot_<attend> foot_if for_<num> for_a
        for_thi for_your forearm_and from_the from_your get_the go_dead got_the half_a hand_<do> hand_<less>
        hand_<settle> hand_on hand_ther have_a head_is heav_<place> heel_<attend> hip_<place> hug_the i_<swap>
        if_you in_0 in_each into_a into_the is_<chat> is_<num> is_fine is_good is_in is_just is_plent it_<chat>
        it_<do> it_<not> it_<settle> it_<take> it_doesnt it_down it_go it_goe it_in it_isnt its_<more> its_<not>
        its_<pace> its_a its_noth its_only its_the just_<place> keep_them kne_and kne_to kne_up knuckl_<place>
        leg_<place> leg_out let_<chat> let_it lie_<place> lie_on like_<chat> like_the like_your lower_<attend>
        mat_<attend> mat_if no_<attend> no_<far> no_<part> not_<do> not_<move> not_a of_<num> on_<chat> on_one
        on_top on_you one_<chat> one_<more> one_<settle> one_of only_<less> onto_the open_the or_<attend>
        or_<kit> or_a or_on out_<attend> out_a out_from out_of out_on out_to overhead_<attend> pres_the push_the
        push_your reach_<place> right_<place> same_as seat_<attend> seat_if shoulder_<do> shoulder_<move>
        shoulder_<place> show_off sit_<part> sit_back sit_up small_<kit> squeez_your stand_<attend> start_to
        stay_<attend> step_the take_it that_<kit> that_<more> that_<part> that_<place> that_is that_the that_too
        the_<air> the_<attend> the_<ill> the_<less> the_<place> the_<swap> the_bar the_big the_bike the_bottom
        the_ceil the_end the_front the_grip the_handl the_knee the_kneecap the_lower the_next the_pillow the_room
        the_same the_slack the_stand the_step the_stick the_top the_way them_<swap> ther_<less> ther_<not>
        ther_<swap> ther_and ther_no thi_<pace> thi_time thumb_<place> till_it to_<attend> to_<chat> to_<do>
        to_<far> to_<num> to_be to_get to_go to_one to_your too_<far> too_<pace> too_far too_heav too_low
        two_<do> under_<attend> under_if under_it up_<attend> up_<less> walk_<place> want_a way_<place>
        when_<chat> wher_it whol_<part> whol_foot wide_<kit> wide_door with_both with_it without_<part>
        wont_<chat> wont_go wrist_<place> you_<chat> you_<do> you_<not> you_<settle> you_can you_cant you_could
        you_stop your_<attend> your_<harm> your_<kit> your_<more> your_<num> your_<pace> your_<place>
        your_<settle> your_<swap> your_a your_bel your_bum your_ear your_eye your_feel your_good your_rib
        your_thumb youv_been youv_got
      `,
    ],
    [-0.4, '<chat>_can for_the off_the one_hand you_<swap>'],
  ],
  phrase: [
    [1, 'easier-sure'],
    [0.4, 'easier-hint easier-likely'],
    [
      0.2,
      `
        caution-sure equipment-likely execution-sure harder-likely praise range-likely setup-hint setup-likely
        setup-sure
      `,
    ],
    [
      -0.2,
      `
        breathing-likely dose_only execution-hint fault-hint fault-sure focus-hint focus-likely purpose
        range-hint tempo-hint tempo-likely tempo-sure transitions
      `,
    ],
    [-0.4, 'breathing-sure empty_clauses fault-likely'],
    [-0.6, 'chat focus-sure harder-sure'],
  ],
  start: [
    [
      0.4,
      `
        <more>_<num> <part>_<swap> <place>_<num> <swap>_<kit> bottom_knee leav_your same_th stop_at the_leg
        the_other
      `,
    ],
    [
      0.2,
      `
        0_dumbbell 0_percent <attend>_<less> <attend>_<num> <chat>_<num> <chat>_<place> <chat>_<swap> <do>_<less>
        <do>_<not> <do>_<num> <do>_<part> <do>_<place> <far>_<num> <far>_<settle> <harm>_<move> <less>_<attend>
        <less>_<do> <move>_<less> <move>_<not> <move>_<num> <not>_<chat> <not>_<do> <not>_<kit> <not>_<move>
        <not>_<settle> <num>_<kit> <num>_<part> <part>_<do> <part>_<far> <part>_<harm> <part>_<ill> <part>_<move>
        <part>_<not> <part>_<part> <part>_<place> <settle>_<less> <settle>_<place> <swap>_<do> <swap>_<move>
        <swap>_<num> <take>_<far> <take>_<pace> a_band a_band_under a_hand_on a_littl_way a_smaller ankl_over
        ankl_over_the another_option anyon_who_gone arm_by arm_by_your arm_only arm_stay arm_stay_up bad_ankl
        band_to band_to_play bell_dig bell_dig_into bend_the bend_your_kne big_toe_stay both_feet
        bottom_knee_down child_pose climb_back climb_back_up come_out cros_your cros_your_arm cut_it cut_the
        cut_the_corner do_leg do_them do_your dont_go dont_lift drop_a drop_a_knee drop_your elbow_further
        elbow_further_forward elbow_lower even_two even_two_inch feet_light feet_light_on feet_on_the feet_wide
        fold_your_hoodi for_thos for_thos_with get_a_bus go_down go_lighter good_one got_a got_a_heav grip_go
        half_as half_the hamstring_tight hand_behind_the hand_on hand_on_a hand_on_your hand_under
        hand_under_your hang_on_to have_a_bar have_the_band heel_can heel_can_come heel_tap higher_ring
        hold_it_wider hold_on_to hold_the hold_the_rail if_it_nip if_it_wont if_its if_its_too if_six if_six_is
        if_that if_that_too if_the_heel if_the_hip if_the_kne if_youd_sooner if_your_arm if_your_hamstring
        if_youv if_youv_stop ill_not ill_not_say it_is it_still it_still_count its_a_fair its_higher its_just_as
        its_lower its_nice its_plent its_still_a jump_up jump_up_off keep_a_bend keep_all keep_all_the keep_both
        keep_one keep_one_foot keep_the_toe keep_your_heel kne_any kne_any_time kne_can kne_complain kne_down
        kne_down_for kne_sore lean_on_the leav_a_gap leav_the leav_the_arm let_go_of let_some let_some_slack
        let_the_band let_your let_your_kne let_your_toe level_0 level_one lift_the_heel lift_your_heel
        like_a_baby like_your_leap loop_off lose_the lose_the_band low_impact low_impact_peopl make_them march_it
        miss_out miss_out_the new_peopl new_to no_band_fine no_bounc no_jump no_sham no_sham_in no_tin no_weight
        nobody_measur nobody_measur_your not_read not_read_for not_sure noth_happen noth_happen_in on_your one_at
        one_at_a one_bell one_dumbbell one_heel one_heel_at one_knee_at only_the_arm option_a or_0 or_just or_kne
        or_none or_only or_push other_foot_on pop_that pop_that_roll pull_on pull_on_the push_down push_off
        push_off_your put_a put_a_cushion put_it_up ring_higher round_four same_clock same_line sat_down
        set_the_bell shorten_the should_that should_that_feel sit_on sit_on_the slack_in slack_in_between
        slid_one_foot slid_the slid_your soft_knee sol_on sol_on_the sos_the sos_the_top squat_to squeez_both
        squeez_both_together stag_one stand_closer stand_on_it start_wher start_wher_its step_back step_in
        step_it step_off_a stick_a stick_a_cushion stop_at_0 stop_at_the swap_hand swap_hand_each take_a
        take_one_foot take_the tap_a tap_the tap_the_heel tap_your that_a that_a_grand that_a_half that_a_sphinx
        that_fine that_hammer that_the_starter the_leg_is the_low the_one the_other_heel ther_is ther_more
        they_can they_can_be thumb_can thumb_can_hover tiny_one to_modif to_scal to_scal_down to_take to_take_the
        toe_on toe_on_the toe_stay too_heav too_strong two_and_four two_feet two_feet_up use_a use_the
        use_the_kerb walk_a walk_a_minut walk_the walk_the_bend we_call we_call_that whichever_keep
        whichever_keep_you wider_with wider_with_your with_one with_one_foot wrist_sore you_can you_can_do you_do
        you_do_not you_may you_might your_not_hold
      `,
    ],
    [
      -0.2,
      `
        <attend>_<chat> <attend>_<place> <chat>_<do> <do>_<attend> <not>_<less> <not>_<place> <not>_<wrong>
        <num>_<far> <part>_<attend> <part>_<chat> <part>_<settle> <part>_<take> <place>_<place> <settle>_<attend>
        <settle>_<more> <swap>_<attend> <swap>_<more> <swap>_<not> <take>_<part> a_fold both_hand_on br_your
        come_up do_not feet_together half_a half_a_minut half_way hand_on_the if_the_back if_the_knee if_they
        if_you if_your_kne its_a its_only its_the keep_it keep_them leav_a_hand lower_it one_hand or_a pres_the
        push_the put_your_hand rest_your rest_your_hand same_as sit_back sit_on_your stand_on_the take_your
        that_is walk_it_in whol_foot
      `,
    ],
  ],
  word: [
    [1, 'help'],
    [0.6, 'closer easier higher if leav march take toe version whenever wider wob'],
    [
      0.4,
      `
        bend block cut do empt fine fist hamstring is just kne knee level lighter lose lot mak more option same
        sat sham stag stiff tap thigh use walk whit wont yellow
      `,
    ],
    [
      0.2,
      `
        0 a allow along alternativ altogether an and any anybod anyon arm backward bad bed beginner bench bent
        better bodyweight book box bridg by can cant child comf complet copy corner cramp crank crat crim cros
        day deadlift deep dig done down dumb dumbbell everybody fair far fast feet fenc fierc fight fiv flutter
        foot for four free gap geni gentler give gone good grand green ground grumbl grump had half hammer hap
        happen hav have heel hoodi hous impact jog jump keep kerb kickstand kinder kneel lamppost less lever
        lighten loop looser low ly manag marama may mean metr might miss moan modif modification month much muddl
        murder nearer need new newer nip none on one or other palm paus peopl perfect pinch plain plat play plent
        pose prefer pressur punch put rac rack rag rais rang rather red ring sake scal shallower shorten shuffl
        sid simp sit sitting six sixt size skip slack slid smaller some sore sos sphinx sprawl spring standing
        starter steep stick still stool stop sure surfac tak taller teach th thinner thistl ticket time tiny tip
        toda tonight toppl upright wall weight whichever who whos wobbl wrist
      `,
    ],
    [
      -0.2,
      `
        ache acros after again against all arch armpit ask asleep away b backsid bag bark be beat becaus been
        befor bel below belt bigger bike blad blanket bon bone bor bottl breath buckl bum but ceil cheek chest
        chin clos could dead doddl doe doesnt dog dont door doubl driv drop dull each ease eight elbow end even
        ever everyth eye face find finger finish five float flop fly follow from front full further get glov got
        grind hang hard has head hear here hold hot im insid into isnt kick kind kiss kneecap land last left
        light lock look loos mat me middl neck never next nice no normal noth off open outsid over own pain park
        past pick pillow pleas point proper quiet quit rest right room rop rower seat second settl shak sharp sho
        shoulder show shut side slow small soft somebod somebody soup spe spin squeez stand step straight
        straighten swap swim swing switch tabl tailbon tell than that ther theyr thi third thre through throw
        thumb top toward towel tray try tuck tug turn twent twic until us wait warm water we were wet when whol
        width will with youll
      `,
    ],
    [-0.4, 'about as easy goe handl home i like long of rib see tall till youv'],
    [-0.6, 'lower'],
  ],
} as const satisfies CueWeights
