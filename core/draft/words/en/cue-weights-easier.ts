/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind easier; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EASIER_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [0.8, 'less'],
    [0.4, 'swap'],
    [0.2, 'attend move'],
    [-0.2, 'carer chat far more num place wrong'],
    [-0.4, 'pace'],
    [-0.6, 'air'],
  ],
  conditional: [[0.2, 'yes']],
  first: [
    [0.6, 'leav or same take'],
    [0.4, '<less> bend bottom cut do let level lose put red step tap too use whit yellow'],
    [
      0.2,
      `
        0 <far> <more> <settle> <swap> another anybod arm believ cant child climb done feet fist for go hand
        higher if ill is jump kne lie loop looser marama march miss modification more new nobod only partner
        pillow plain pop quicker rock sat scal shallower shorten shorter should shuffl slack slid sol sos squat
        stag stick stop thinner thos to walk whichever wider with wob you
      `,
    ],
    [
      -0.2,
      `
        <air> <attend> <kit> <move> <not> <num> <pace> <part> a all alway and as bar chest chin come down driv
        ease elbow eye find get heel hip i instead it keep last look mind never okay open pick pres rib see shak
        shoulder small somebody squash squeez stand stay stiff still straighten switch tall that the thi thigh
        thre tuck up weight whol youll youv
      `,
    ],
    [-0.4, '<chat> <place> dont lower rest your'],
  ],
  given: [
    [0.4, 'get not'],
    [
      0.2,
      `
        <chat> <harm> <ill> <not> <num> again an back behind chair cramp crank cros day dont feel feet finish fiv
        from front grumbl hamstring hav hip hundr keep knot last lean like look lot moan nip onto or over pick
        pinch pres rather someth stay stiff ten then thirt thre tight tir toda two ugly up walk way week wire
        with wobbl
      `,
    ],
    [
      -0.2,
      `
        <far> <less> <pace> <swap> ball bend bit bottom can chest easy fine floor foot goe grab grip half hand
        have hold if is isnt its just kneecap let lift more noth of off one rock slid start still take ther they
        wait wall want your
      `,
    ],
  ],
  last: [
    [0.6, 'easier wob'],
    [0.4, 'fine fist help higher stiff thigh version yellow'],
    [
      0.2,
      `
        0 all allow are arm baby bag balanc beginner bell bent better box bridg cat cheat closer combination copy
        count cramp crank crim cros cycl deadlift deep dont dumbbell elegant empt fierc fight flutter forearm
        four geni gone grand green ground grumbl grump hamstring heav heel height high hundr jump kickstand
        kinder knee leg lighter lot marama march mean moan monda month much muddl need off option other peopl
        plain plent rack reach red requir ring row run sake sid sit slack slip someth sore sphinx sprawl stag
        steep stitch strong sure tell th ther tight tin tip to toda trouser twist upright want weekend whenever
        whit wider wobbl wrong
      `,
    ],
    [
      -0.2,
      `
        alway band bike bottom breath can clos cushion do doddl drop dull easy eight elbow end face finger first
        five flat further handl head hip hold home isnt light long no noth okay pillow plat pleas pres quiet rail
        rest rib shin shoulder slid soft spin spot squat stand step stop tall them thi towel under
      `,
    ],
    [-0.4, 'on toe top'],
  ],
  length: [
    [-0.2, '5-7 long'],
    [-0.4, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.6, '<far>_one <part>_on'],
    [
      0.4,
      `
        <attend>_its <attend>_that <attend>_your <do>_closer <do>_on <kit>_and <kit>_if <kit>_in <kit>_under
        <kit>_up <less>_one <less>_to <more>_one <not>_at <not>_hap <not>_have <not>_reach <not>_sham <part>_are
        <part>_bent <part>_can <part>_down <part>_if <place>_if <settle>_on <settle>_the <swap>_it <swap>_sham
        <swap>_the a_<kit> a_kickstand a_lot a_time and_help and_just arm_<place> at_a bend_the bottom_<part>
        bottom_knee cushion_<place> feel_<attend> feel_like foot_on for_it if_its if_that if_the if_your
        it_<less> its_<less> just_<attend> just_<swap> just_do kne_down leav_the leav_your level_<num> level_one
        lose_the mak_it no_<do> no_<kit> no_sham not_hap of_<harm> one_<kit> or_<settle> or_just out_in pose_is
        ring_<more> ring_up same_th sham_<place> sham_in still_a take_the that_<attend> that_<less> the_leg
        the_rack to_<less> toe_<place> toe_on toe_stay two_<part> walk_the whenever_you your_first your_fist
        your_thigh
      `,
    ],
    [
      0.2,
      `
        0_dumbbell 0_if 0_metr <attend>_a <attend>_are <attend>_bell <attend>_count <attend>_from <attend>_good
        <attend>_hard <attend>_it <attend>_just <attend>_knee <attend>_kneel <attend>_kneeling <attend>_like
        <attend>_ly <attend>_much <attend>_one <attend>_out <attend>_row <attend>_six <attend>_standing
        <attend>_straight <attend>_the <attend>_thi <attend>_two <attend>_way <attend>_weigh <attend>_well
        <attend>_youd <chat>_cat <chat>_clos <chat>_com <chat>_cramp <chat>_enough <chat>_four <chat>_half
        <chat>_if <chat>_it <chat>_keep <chat>_leap <chat>_march <chat>_may <chat>_mean <chat>_might <chat>_near
        <chat>_need <chat>_newer <chat>_of <chat>_one <chat>_out <chat>_overhead <chat>_rac <chat>_some
        <chat>_start <chat>_thirt <chat>_tip <chat>_to <chat>_toppl <chat>_up <chat>_version <chat>_week
        <chat>_wider <chat>_will <chat>_wobbl <chat>_wont <chat>_your <do>_all <do>_fine <do>_four <do>_in
        <do>_into <do>_it <do>_nearer <do>_side <do>_step <do>_that <do>_the <do>_ther <do>_up <do>_with
        <do>_your <far>_0 <far>_box <far>_by <far>_down <far>_if <far>_impact <far>_plat <far>_rang <far>_ring
        <far>_spring <far>_stand <far>_way <harm>_ankl <harm>_or <harm>_stay <harm>_under <harm>_with
        <harm>_wrist <ill>_ankl <ill>_at <ill>_or <ill>_wrist <kit>_a <kit>_behind <kit>_closer <kit>_dig
        <kit>_fine <kit>_for <kit>_higher <kit>_isnt <kit>_it <kit>_longer <kit>_mak <kit>_off <kit>_side
        <kit>_tak <kit>_your <less>_a <less>_find <less>_get <less>_hamstring <less>_high <less>_hold <less>_if
        <less>_keep <less>_kne <less>_manag <less>_option <less>_peopl <less>_steep <less>_stiff <less>_strong
        <less>_ther <less>_thi <less>_under <less>_version <less>_weight <less>_when <less>_work <more>_0
        <more>_again <more>_at <more>_bar <more>_just <more>_more <more>_slack <more>_taller <more>_upright
        <more>_weight <move>_all <move>_both <move>_closer <move>_down <move>_here <move>_in <move>_into
        <move>_it <move>_mak <move>_off <move>_on <move>_side <move>_step <move>_that <move>_the <move>_to
        <move>_up <move>_with <move>_your <not>_balanc <not>_book <not>_cheat <not>_everyon <not>_find <not>_get
        <not>_go <not>_happen <not>_hop <not>_jump <not>_kneel <not>_lift <not>_manag <not>_meet <not>_not
        <not>_pres <not>_read <not>_said <not>_sure <not>_tell <not>_then <not>_tin <not>_weight <num>_and
        <num>_arm <num>_bell <num>_cushion <num>_dumbbell <num>_feel <num>_feet <num>_get <num>_hand <num>_hundr
        <num>_metr <num>_mov <num>_off <num>_the <num>_toe <num>_weight <pace>_if <pace>_is <pace>_lamppost
        <pace>_longer <pace>_march <pace>_option <pace>_walk <pace>_work <part>_against <part>_along <part>_any
        <part>_at <part>_complain <part>_cros <part>_cycl <part>_dont <part>_from <part>_help <part>_hurt
        <part>_i <part>_instead <part>_knee <part>_light <part>_low <part>_lower <part>_more <part>_only
        <part>_so <part>_sore <part>_stay <part>_talk <part>_tap <part>_toe <part>_whenever <part>_wher
        <part>_whil <part>_wide <part>_wont <part>_you <place>_at <place>_bar <place>_bend <place>_block
        <place>_by <place>_closer <place>_ear <place>_in <place>_is <place>_mak <place>_more <place>_set
        <place>_taller <place>_them <place>_ther <place>_thes <place>_to <place>_toe <place>_two <place>_way
        <place>_whil <settle>_again <settle>_back <settle>_closer <settle>_for <settle>_go <settle>_had
        <settle>_higher <settle>_more <settle>_noth <settle>_of <settle>_off <settle>_out <settle>_that
        <settle>_ther <settle>_to <settle>_turn <swap>_0 <swap>_alway <swap>_band <swap>_be <swap>_behind
        <swap>_book <swap>_closer <swap>_come <swap>_hop <swap>_jump <swap>_just <swap>_leg <swap>_round
        <swap>_sixt <swap>_so <swap>_them <swap>_thi <swap>_tin <swap>_under <swap>_up <swap>_weight <swap>_your
        <take>_a <take>_closer <take>_cramp <take>_for <take>_higher <take>_it <take>_light <take>_nearer
        <take>_noth <take>_of <take>_on <take>_the <take>_wide <wrong>_about <wrong>_backward a_<ill> a_<pace>
        a_<part> a_baby a_ball a_bend a_bit a_box a_burpe a_chair a_complet a_crim a_cushion a_deadlift
        a_dumbbell a_fair a_fast a_fat a_fingertip a_gap a_geni a_grand a_heel a_hill a_knee a_love a_lower
        a_muddl a_paus a_perfect a_rais a_shoulder a_smaller a_smil a_sore a_sphinx a_sprawl a_thick a_toe a_wall
        along_the alway_<do> alway_<move> an_<less> an_easier and_<do> and_<num> and_<swap> and_car and_come
        and_give and_hold and_itll and_jog and_leav and_pull and_stand ankl_<place> ankl_over another_<less>
        another_option any_<pace> any_time anyon_whos are_<attend> are_<harm> are_<less> are_crank are_like
        are_moan are_open are_over are_puff are_stiff are_tight are_welcom arm_<settle> arm_and arm_by arm_down
        arm_on arm_stay arm_wher as_<chat> as_<less> as_<pace> as_good as_hard as_kneel as_much as_well at_<num>
        at_<part> at_all back_<chat> back_<less> back_<more> back_from back_of back_stiff back_the back_to
        back_toe back_up bad_ankl balanc_<part> balanc_heel balanc_is band_<swap> band_fine band_for band_go
        band_longer band_off bar_<attend> bar_if bare_floor be_<place> be_done be_on believ_<chat> believ_me
        bell_<attend> bell_dig bell_if bench_<attend> bench_and bench_if bend_your between_<chat> big_arm
        big_spring bit_for bit_of block_<place> block_<swap> block_and book_requir both_<part> both_<place>
        both_<take> both_feet both_hand both_together box_and br_the breath_out bum_<not> burpe_<place> burpe_in
        bus_ticket by_bend by_your call_that can_<far> can_<less> can_<move> can_alway can_be can_come
        cant_<settle> cant_<take> cant_find cant_get cant_manag car_<num> car_one catch_or chair_behind chest_if
        child_pose climb_<part> climb_<place> climb_back clos_a closer_<attend> closer_if closer_in closer_to
        com_<part> com_back come_<part> come_<place> come_back complain_<move> complain_make complet_<chat>
        complet_exercis count_just coupl_of cramp_<place> cramp_in cros_your cushion_on cushion_under cut_it
        cut_the danc_thi dig_into dip_<less> dip_allow do_<num> do_<part> do_it do_leg do_one do_sixt do_them
        do_thi do_your dodg_<part> done_<place> done_in done_sit dont_<chat> dont_<do> dont_<move> dont_<settle>
        dont_go dont_kneel dont_lift dont_pres down_<less> down_<swap> down_a down_at down_fine down_for down_is
        down_whil drop_a drop_to drop_your each_minut each_step ear_<attend> ear_if easy_<less> easy_option
        elbow_<far> elbow_<more> elbow_further elbow_lower elbow_on empt_<kit> empt_bar even_<num> even_two
        everybody_sake everyon_will eye_<far> eye_<more> eye_level fair_bit fast_<do> fast_<move> fast_march
        fast_walk fat_<kit> fat_<swap> fat_book feet_<attend> feet_<pace> feet_<part> feet_<place> feet_back
        feet_if feet_in feet_light feet_nearer feet_wide fine_<attend> fine_if first_<chat> first_week
        fiv_<attend> fiv_if flat_<kit> flat_<swap> flat_<take> flat_block flat_on floor_<attend> floor_<swap>
        floor_count floor_do floor_in foot_<place> foot_<swap> foot_and for_<chat> for_<harm> for_<less>
        for_<swap> for_everybody for_green for_less for_sore for_them for_tonight for_you forearm_for from_someth
        from_ther front_on further_forward gap_between get_cramp get_down get_ugly give_it give_yourself go_<num>
        go_as go_of go_to go_wider good_<num> good_hand good_one grand_version grip_go had_<far> had_<less>
        had_enough had_it had_to half_<do> half_the hamstring_are hand_<more> hand_<place> hand_do hand_down
        hand_each hand_feel hand_to hand_under hand_up hand_wider hang_ther hap_balanc happen_<place> happen_in
        hard_<swap> hard_work have_<chat> have_had have_to head_<not> head_<place> head_down heav_bell heel_<far>
        heel_against heel_at heel_can heel_low help_<chat> help_it help_the help_you higher_<kit> higher_ring
        hill_<attend> hill_as hip_<not> hip_are hold_<not> hold_<place> hold_noth hold_on hold_the hold_your
        hoodi_<more> hoodi_<place> hoodi_up hous_<more> hous_<place> hous_up i_mean i_wont if_<num> if_fiv if_it
        if_kneeling if_ly if_one if_six if_standing if_straight if_thi if_two if_youd ill_<not> ill_not
        impact_peopl in_<place> in_both in_closer in_front is_<attend> is_<do> is_<less> is_<move> is_<not>
        is_<swap> is_a is_easier is_grand is_no is_open is_perfect is_still is_to is_without isnt_<wrong>
        isnt_cheat isnt_go it_<attend> it_<far> it_<ill> it_a it_along it_easier it_elegant it_gentler it_kinder
        it_lighter it_nip it_real it_sat it_short it_sit it_slip it_stand it_still it_stood it_that it_wider
        it_wont its_<attend> its_<chat> its_<do> its_<far> its_<harm> its_comf its_fierc its_half its_heav
        its_higher its_lighter its_lower its_nice its_nip its_plent its_shak its_still its_wob jog_the
        jump_<more> jump_<place> jump_up just_<chat> just_<do> just_<move> just_as just_look just_the just_you
        keep_<num> keep_all keep_both keep_one keep_the kne_<less> kne_<pace> kne_<place> kne_any kne_bent
        kne_can kne_if kne_in kne_lower kne_more kne_talk knee_<attend> knee_<chat> knee_<move> knee_<swap>
        knee_at knee_bent knee_if knee_on knee_you kneel_<attend> kneel_for kneel_if last_<num> last_thirt
        later_month lean_on leav_a leg_<far> leg_<settle> leg_a leg_at leg_have leg_so let_some let_your level_0
        lift_the lighten_it like_<num> like_a littl_way long_way loop_<chat> loop_<do> loop_<place> loop_abov
        loop_off loop_round lose_it lot_toda love_<less> low_<do> low_<move> low_impact lower_<do> lower_<move>
        lower_step make_it make_them manag_with march_<attend> march_if march_it may_<settle> may_<take>
        measur_your metr_is might_<attend> miss_<place> miss_out month_of more_<attend> more_<kit> more_<place>
        more_slack more_upright more_weight much_<attend> much_as my_cat near_stand nearer_<place> nearer_in
        need_it neednt_<chat> neednt_<settle> neednt_go new_peopl new_stitch new_to night_<place> night_on
        nip_<place> nip_in no_<move> no_<swap> no_book no_hop no_jump no_tin no_weight nobod_said nobody_measur
        not_<harm> not_<more> not_balanc not_everyon not_have not_hold not_keen not_read not_say not_sure
        not_your noth_at of_<ill> of_<kit> of_<less> of_<place> of_block of_pregnanc off_<chat> off_a off_an
        off_you okay_to on_the on_thes on_to on_two on_your one_<part> one_are one_arm one_bell one_dumbbell
        one_off one_sit one_toe one_weight only_<do> only_<move> only_the onto_<part> open_all opposit_knee
        option_a or_0 or_<far> or_<not> or_<part> or_<take> or_forearm or_kne or_no or_none or_only or_push
        or_take other_<attend> other_heel other_thigh other_toe out_<not> out_<place> out_for out_the over_a
        palm_<more> palm_<place> paus_<attend> paus_longer perfect_<less> perfect_okay perfect_respectabl pick_it
        pinch_at play_with pop_that power_<do> power_<move> power_walk pres_it pressur_off pull_from push_down
        push_it push_off put_a put_the rac_at rack_<attend> rack_if rang_<place> rather_<not> rather_not
        reach_your read_for real_<far> real_low rest_<place> rest_a rest_on right_<less> ring_<far> ring_<place>
        ring_higher roll_<swap> round_<num> round_four round_your said_<chat> said_you same_<do> same_<settle>
        same_clock same_line sat_<place> sat_down say_<more> say_anyth scal_<place> scal_down second_lamppost
        shin_and shin_touch shorten_the should_that shoulder_are shoulder_pres shuffl_<place> shuffl_your
        side_<do> side_<kit> side_<move> simp_<settle> simp_<take> sit_<attend> sit_<far> sit_<more> sit_<swap>
        sit_down sit_higher sit_on six_is sixt_metr slack_in slid_the smaller_<far> smaller_<kit> so_<far>
        so_<not> so_dont so_its soft_knee some_of some_slack sooner_be sos_the spring_<do> squat_<place> squat_in
        squat_it squat_to squeez_both stag_<num> stag_one stand_<place> stand_closer start_<wrong> start_again
        start_wher starter_version stay_<place> stay_down stay_here stay_on step_<place> step_closer step_in
        step_it step_side stick_a stiff_<num> stiff_one still_<pace> still_count still_row still_weigh
        stool_<place> stool_behind stop_at stop_then straight_out straighten_that support_<place> swap_hand
        tak_some tak_the take_<less> take_<place> take_out talk_to tap_a tap_the tap_your teach_it than_<chat>
        than_<place> than_my that_<pace> that_a that_better that_come that_count that_done that_feel that_hammer
        that_plent that_roll that_top the_0 the_<do> the_<num> the_<settle> the_arm the_bed the_bench the_bend
        the_box the_bridg the_chair the_corner the_crat the_desk the_door the_empt the_fenc the_first the_floor
        the_foam the_gate the_good the_ground the_hamstring the_heel the_height the_hous the_inclin the_jump
        the_kerb the_kne the_later the_lever the_load the_low the_march the_other the_paus the_pressur the_pull
        the_rail the_rang the_skip the_sofa the_stag the_starter the_straight the_thistl the_tir the_twist
        the_wall the_weekend the_woggl them_<far> them_<place> them_forward then_<settle> then_<swap> ther_<do>
        ther_<more> ther_more they_are thick_<kit> thigh_and thinner_<kit> thinner_band thistl_<attend> thistl_if
        thos_who thumb_<swap> thumb_can ticket_<place> ticket_under tight_<part> tight_hamstring time_<attend>
        time_if tiny_one tip_backward tir_and to_<move> to_<not> to_<settle> to_a to_br to_do to_eye to_it
        to_lighten to_make to_modif to_play to_rest to_scal to_sit to_stop to_straighten to_take toda_<do>
        toda_<move> toe_<move> toe_down toe_of too_<less> too_<more> too_high too_steep too_stiff too_strong
        top_<num> top_<part> top_hand top_leg touch_<place> touch_down touch_the towel_<place> towel_behind
        two_<num> two_<take> two_cushion two_feet two_hand two_hundr two_inch under_each under_them under_ther
        under_your up_<kit> up_<more> up_again up_bar up_more up_taller use_a use_the walk_<less> walk_a walk_it
        wall_<attend> wall_for wall_if wall_isnt want_<place> want_in way_<less> way_to we_call weigh_<more>
        weigh_more weight_<attend> weight_<chat> weight_if weight_in weight_toda welcom_to whenever_<chat>
        wher_they whichever_<chat> whichever_keep whichever_you whil_the whil_your who_gone who_would whos_<part>
        wider_<attend> wider_if wider_with will_want with_<num> with_just with_one with_tight without_the
        wobbl_about wont_<do> wont_<far> wont_<move> wont_have wont_reach wont_tell work_just would_<not>
        would_rather wrap_it wrist_<harm> wrist_<not> wrist_complain you_<attend> you_<less> you_<more>
        you_<place> you_if you_may you_might you_need you_off you_rac you_start you_straight you_up you_want
        you_would youd_sooner your_<chat> your_<part> your_<wrong> your_back your_chest your_clos your_com
        your_down your_foot your_forearm your_get your_grip your_hamstring your_hoodi your_near your_newer
        your_palm your_shin your_sid your_side your_stiff your_th your_toe your_top your_trouser your_wobbl
        yourself_a youv_<not> youv_a youv_stop
      `,
    ],
    [
      -0.2,
      `
        0_<do> 0_<place> 0_step <attend>_at <attend>_down <attend>_if <attend>_is <attend>_noth <attend>_of
        <attend>_on <attend>_ther <attend>_to <attend>_you <attend>_youv <chat>_a <chat>_can <chat>_cant
        <chat>_come <chat>_could <chat>_dont <chat>_is <chat>_lift <chat>_like <chat>_on <chat>_that <chat>_you
        <do>_away <do>_down <do>_is <do>_you <far>_a <far>_for <far>_it <far>_its <far>_than <far>_you <far>_your
        <harm>_leg <ill>_is <kit>_are <kit>_do <kit>_down <kit>_instead <kit>_of <kit>_out <kit>_stay <kit>_tight
        <kit>_with <less>_hip <less>_low <less>_or <less>_sit <less>_the <more>_and <more>_leg <more>_the
        <move>_away <move>_back <move>_for <move>_is <move>_you <not>_be <not>_bend <not>_drop <not>_hand
        <not>_just <not>_more <not>_stop <not>_ther <not>_to <num>_a <num>_for <num>_step <num>_to <pace>_it
        <part>_as <part>_closer <part>_com <part>_come <part>_flat <part>_forward <part>_go <part>_into
        <part>_just <part>_lift <part>_lighter <part>_make <part>_of <part>_off <part>_out <part>_point
        <part>_right <part>_round <part>_slid <part>_start <part>_straight <part>_ther <part>_through
        <part>_width <part>_will <place>_as <place>_down <place>_enough <place>_into <place>_it <place>_its
        <place>_like <place>_one <place>_over <place>_thi <place>_top <settle>_a <settle>_in <settle>_instead
        <settle>_it <settle>_up <swap>_and <swap>_are <swap>_cushion <swap>_half <swap>_higher <swap>_is
        <swap>_more <swap>_not <take>_down <wrong>_in a_<do> a_<num> a_<place> a_<take> a_<wrong> a_bell a_doddl
        a_holida a_month a_second a_small a_sofa a_step a_straight a_wide about_<num> about_a abov_the
        all_<attend> all_<part> all_hamstring and_<attend> and_<chat> and_<less> and_<move> and_<part> and_a
        and_bend and_br and_it are_<swap> are_bend are_fine are_just are_sore arm_<attend> arm_<do> arm_<less>
        arm_of as_<place> as_a as_if as_your at_<chat> at_<swap> at_home at_it at_the at_you at_your
        away_<attend> away_if back_<attend> back_down back_if back_in back_knee ball_of band_<place> befor_<chat>
        befor_you behind_your below_the between_the between_your bit_<do> bit_<far> bit_<more> bit_<move>
        bit_lower both_are br_it br_your can_<chat> chin_<place> come_to could_<settle> could_do do_<not> do_not
        dont_<less> down_your drop_<place> drop_it drop_the dumbbell_<attend> each_<part> each_hand easy_<settle>
        elbow_are enough_for ever_<pace> eye_on feel_<less> feet_down foot_<attend> foot_if for_<num> for_a
        for_thi for_your forearm_and from_the from_your get_the go_dead got_the half_a hand_<do> hand_<less>
        hand_<settle> hand_ther have_a head_is hip_<place> hold_a hug_the i_<swap> if_you in_0 in_a in_each
        into_the is_<chat> is_<num> is_fine is_good is_in is_just is_plent it_<chat> it_<do> it_<not> it_<settle>
        it_<take> it_doesnt it_down it_for it_go it_goe it_in it_is it_isnt its_<more> its_<not> its_<pace> its_a
        its_noth its_only its_the just_<place> keep_it keep_them kne_and kne_to kne_up knee_and knuckl_<place>
        leg_<less> leg_<place> leg_<swap> leg_out let_<chat> let_it lie_on lift_<num> lift_one like_<chat>
        like_the like_your lower_<attend> lower_if make_a mat_<attend> mat_if no_<far> no_<more> no_<part>
        no_<wrong> no_more not_<do> not_<less> not_<move> not_<place> not_a not_the of_<num> of_two on_<chat>
        on_top on_you one_<chat> one_<settle> one_hand only_<less> onto_the open_the or_<attend> or_<kit> or_a
        other_arm other_knee out_<attend> out_a out_from out_to pres_the push_out push_the push_your
        reach_<place> rest_your right_<place> rower_<swap> same_<kit> same_as seat_<attend> seat_if
        shoulder_<place> show_off sit_<part> sit_back small_<kit> squeez_your stand_<attend> start_to
        stay_<attend> step_down step_the take_it tell_<chat> tell_me than_the that_<harm> that_<kit> that_<more>
        that_<not> that_<part> that_<place> that_is that_the that_too the_<air> the_<attend> the_<ill> the_<more>
        the_<place> the_<swap> the_<wrong> the_bar the_big the_bike the_bottom the_ceil the_end the_feet
        the_forearm the_grip the_handl the_knee the_kneecap the_kneel the_lower the_next the_pillow the_room
        the_slack the_stair the_stand the_step the_top the_way ther_<not> ther_<swap> ther_and ther_no thi_<pace>
        thi_time thumb_<place> till_it till_its to_<attend> to_<chat> to_<do> to_<far> to_<harm> to_<num> to_be
        to_get to_go to_one to_stand to_your too_<far> too_<pace> too_<place> too_far too_low turn_the two_<do>
        under_<attend> under_if under_it up_<attend> up_and up_for up_the walk_<place> wall_<swap> wall_and
        wall_instead want_a way_<place> when_<chat> wher_it whil_you whol_<part> whol_foot whol_of wide_<kit>
        with_both with_it wont_<chat> wont_go wrist_<attend> wrist_<place> you_<do> you_<not> you_<swap> you_can
        you_could you_have you_stop your_<attend> your_<harm> your_<kit> your_<more> your_<move> your_<num>
        your_<pace> your_<place> your_<settle> your_<swap> your_a your_ankl your_bel your_bum your_ear your_eye
        your_feel your_front your_good your_mat your_on your_other your_rib your_thumb youv_been youv_got
      `,
    ],
    [-0.4, '<not>_a <part>_is as_<attend> back_<place> for_the off_the on_one you_<settle>'],
  ],
  phrase: [
    [1, 'easier-sure'],
    [0.4, 'easier-hint harder-likely'],
    [
      0.2,
      `
        caution-sure easier-likely equipment-likely execution-sure praise range-likely setup-sure
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
        <more>_<num> <part>_<far> <part>_<swap> <place>_<num> <swap>_<kit> bottom_knee no_sham no_sham_in same_th
        stop_at the_leg
      `,
    ],
    [
      0.2,
      `
        0_dumbbell 0_percent <attend>_<less> <attend>_<num> <chat>_<num> <chat>_<place> <chat>_<swap> <do>_<less>
        <do>_<not> <do>_<num> <do>_<part> <do>_<place> <far>_<num> <harm>_<move> <kit>_<part> <less>_<attend>
        <less>_<do> <move>_<less> <move>_<not> <move>_<swap> <not>_<chat> <not>_<do> <not>_<kit> <not>_<move>
        <num>_<kit> <num>_<part> <part>_<harm> <part>_<move> <part>_<not> <part>_<part> <part>_<place>
        <settle>_<less> <settle>_<not> <settle>_<place> <swap>_<do> <swap>_<move> <swap>_<num> <take>_<far>
        <take>_<pace> a_band a_band_under a_hand_on a_littl_way a_smaller ankl_over ankl_over_the another_option
        anyon_who_gone arm_by arm_by_your arm_only arm_stay arm_stay_up bad_ankl band_to band_to_play bell_dig
        bell_dig_into bend_the bend_your_kne big_toe_stay both_feet bottom_knee_down br_the call_it child_pose
        child_pose_is climb_back climb_back_up come_out cros_your cros_your_arm cut_it cut_the cut_the_corner
        do_leg do_them do_your dont_go dont_lift drop_a drop_a_knee drop_your elbow_further elbow_further_forward
        elbow_lower even_two even_two_inch feet_light feet_light_on feet_wide fold_your_hoodi for_thos_with
        get_a_bus go_down go_lighter good_one got_a got_a_heav grip_go half_the hamstring_tight hand_behind_the
        hand_on hand_on_a hand_on_your hand_under hand_under_your hang_on_to hang_ther_in have_a_bar
        have_the_band heel_can heel_can_come heel_tap higher_ring hip_down hip_down_on hold_it_wider hold_on_to
        hold_the_rail hold_your_trouser i_wont if_fiv if_it_nip if_it_wont if_its if_its_too if_six if_six_is
        if_that if_that_too if_the_heel if_the_hip if_youd_sooner if_your_arm if_youv if_youv_a if_youv_stop
        ill_not ill_not_say in_the_later it_still its_a_fair its_half its_half_the its_higher its_just_as
        its_lower its_nice its_plent its_still jump_up jump_up_off keep_a keep_a_bend keep_all keep_all_the
        keep_one keep_one_foot keep_the_back keep_the_toe keep_your_heel kne_any kne_any_time kne_can
        kne_complain kne_down kne_down_for kne_sore lean_on_the leav_a_gap leav_the leav_the_arm leav_your
        let_go_of let_some let_some_slack let_the_band let_the_good let_your let_your_kne let_your_toe level_0
        level_one lift_the_heel lift_your_heel like_a_baby like_a_kickstand like_your_leap loop_off lose_the
        lose_the_band low_impact low_impact_peopl make_the make_them march_it miss_out miss_out_the more_upright
        new_peopl new_to no_band_fine no_bounc no_jump no_tin no_weight nobod_said nobod_said_you nobody_measur
        nobody_measur_your not_everyon not_everyon_will not_hap not_hap_balanc not_read not_read_for noth_happen
        noth_happen_in on_your one_at one_at_a one_bell one_dumbbell one_heel one_heel_at one_knee_at one_leg
        only_the_arm option_a or_0 or_just or_kne or_no or_none or_only or_push other_foot_on pop_that
        pop_that_roll pull_on pull_on_the push_off push_off_your put_a put_a_cushion put_it_up put_the
        put_the_dumbbell ring_higher round_four same_clock same_line sat_down set_the_bell shorten_the
        should_that should_that_feel sit_on sit_on_the skip_the slack_in slack_in_between slid_one_foot slid_the
        slid_your soft_knee sol_on sol_on_the some_of some_of_you sos_the sos_the_top squat_to squeez_both
        squeez_both_together stag_one stand_closer stand_on_it start_wher start_wher_its step_back step_in
        step_it step_off_a stick_a stick_a_cushion stop_at_0 stop_at_the swap_hand swap_hand_each take_a
        take_one_foot take_out take_out_the take_the tap_a tap_the tap_the_heel tap_your tap_your_toe that_a
        that_a_grand that_a_half that_a_sphinx that_fine that_hammer that_the_starter the_leg_if the_leg_is
        the_low the_one the_other the_other_heel the_wall ther_is_no ther_more they_can they_can_be thos_who
        thos_who_would thumb_can thumb_can_hover tiny_one to_modif to_scal to_scal_down to_take to_take_the
        to_the_chest toe_on toe_on_the toe_stay too_heav too_strong two_and_four two_feet two_feet_up use_a
        use_the use_the_kerb walk_a walk_a_minut walk_the walk_the_bend we_call we_call_that when_the_last
        whichever_keep whichever_keep_you wider_with wider_with_your with_a with_one_foot you_can you_can_alway
        you_can_do you_do you_do_not you_may you_might you_neednt_go your_not_hold
      `,
    ],
    [
      -0.2,
      `
        <attend>_<attend> <attend>_<chat> <attend>_<place> <chat>_<do> <do>_<attend> <far>_<part> <kit>_<do>
        <more>_<part> <move>_<more> <not>_<less> <not>_<place> <not>_<wrong> <num>_<far> <part>_<attend>
        <part>_<chat> <part>_<settle> <part>_<take> <part>_<wrong> <place>_<place> <settle>_<attend>
        <settle>_<more> <swap>_<attend> <swap>_<more> <swap>_<not> <take>_<part> br_your do_not feet_together
        half_a half_a_minut half_way hand_on_the if_the_back if_the_knee if_they if_you if_your_kne instead_of
        its_a its_only its_the keep_it keep_them leav_a_hand lower_it one_hand or_a pres_the push_the
        put_your_hand rest_your rest_your_hand same_as sit_back take_your that_is walk_it_in whol_foot
      `,
    ],
  ],
  word: [
    [1, 'help'],
    [0.6, 'closer easier higher if leav march tap toe version whenever wider wob wont'],
    [
      0.4,
      `
        bend block cut do empt fine fist fiv hamstring is just kickstand kinder kne knee level lighter lose mak
        more muddl new option perfect rather same sat sham smaller some stiff still tak take th toda use walk
        whit yellow
      `,
    ],
    [
      0.2,
      `
        0 a allow along alternativ altogether alway ambitiou an anyon arm backward bad balanc band bed believ
        bench bent better bit bodyweight book box bridg burpe by call can cant cheat child circu clock
        combination comf complet copy corner count cramp crank crat crim cros cycl day deadlift deep dig dodg
        done down dumb dumbbell elegant everybody fair far fast feet fenc fierc fight floor flutter for forearm
        free gap geni gentler give gone good grand green ground grumbl grump had half hammer hand hap happen
        happier have heel hill hoodi hous hundr impact inclin jog jump keep kerb kneel kneeling lamppost less
        lever lighten loop looser lot low lunch ly manag marama may meet metr might miss moan modif modification
        monda month murder nearer newer night nip nobod none notch on one or other palm paus peopl pinch plain
        plaster plat plent pose power prefer pregnanc pressur punch push put rac rack rais rang red requir
        respectabl ring row said sake scal shallower shorten shuffl simp sit sitting six sixt skip slack slid
        sofa sore sos sphinx sprawl spring squat stag standing starter steep stick stool struggl sure taller
        teach thigh thinner thirt thistl ticket time tip tir tonight toppl trouser ugly upright wall weekend
        weigh weight whichever whil who whos win wobbl wrist wrong
      `,
    ],
    [
      -0.2,
      `
        ach ache acros after again all arch armpit ask asleep b back backsid bag bark beat becaus befor bel below
        belt big bigger bike blad bon bone bor bottl buckl bum but came ceil chat cheek chest chin clos com could
        dead did doddl doe doesnt dog dont doubl draw driv drop dull each ease eight elbow else end even ever
        everyth eye face fifteen find finger five float fly folk from front full further get glov got grab grind
        hang hard has head hear here hing hip hot how hurt im insid into ive jaw kettlebell kick kiss kneecap
        land lead left like lock look loos mat me middl move movement neck never next nice no normal noth now of
        off opposit outsid over own pain park past pelvi pick pleas point posh proper quiet quit right room rower
        seat second settl shak sharp sho shop shoulder shov show shut side slow small snap soft somebod somebody
        soup spe spin spread squeez stair stand start straight stronger swim swing switch tabl tailbon than that
        the their ther theyr thi third thre through throw thumb tight toward tray try tuck tug turn twelv twent
        twic until wait warm water we were wet what whatever when wher whol width window with without yes youll
      `,
    ],
    [-0.4, 'about as away be breath easy goe handl home i long lower rib see tall till'],
    [-0.6, 'youv'],
  ],
} as const satisfies CueWeights
