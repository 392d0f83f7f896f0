/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind caution; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const CAUTION_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [0.8, 'harm'],
    [0.6, 'ill'],
    [0.4, 'carer'],
    [0.2, 'not settle take'],
    [-0.2, 'far more swap'],
    [-0.4, 'air num pace'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.6, 'give'],
    [0.4, 'back becaus bend check come feet its look mind never shorten step stop that tug'],
    [
      0.2,
      `
        <harm> <ill> <less> a after alway any ask at be bin br catch caus chair closer com contraction cos cramp
        discomfort divvent do finger fingertip first half have hiss if im itll ive janin jog keep kid kne kneecap
        leav lower make nobod one only or partner pleas post rest rise ron rug safet shift sit skip sore spik
        sprinkler test the thos thumb twang under unhook wait walk watch wed whatever when wider you your
      `,
    ],
    [
      -0.2,
      `
        <do> <far> <more> <num> <part> <swap> <take> <wrong> about all arm bottom down elbow feel for grab grip
        heel hip hold last let lift like long nobody off on other out pinch push rib same see shak slip some
        squeez start stay swap take theyr toe try we wher
      `,
    ],
    [-0.4, '<chat> <pace> <place> not'],
  ],
  given: [
    [0.4, 'goe sharp'],
    [
      0.2,
      `
        <part> <place> <wrong> are at back bark been bit bon bottom buckl calf catch com cramp do doctor down
        easy feel fine grab grip half hamstr hot ill its kitchen late leg light of or out round scar shoulder
        start still swim take the they thin twing your
      `,
    ],
    [
      -0.2,
      `
        <chat> <far> <harm> <move> <not> <take> again arm balanc befor doesnt feet floor hamstring hand i lower
        neck off stay stick too wont
      `,
    ],
  ],
  last: [
    [0.6, 'off'],
    [0.4, 'cold cos eye far first for grumbl hand on over you'],
    [
      0.2,
      `
        achill alon alway argument around backward bar belt bit break buckl catch caus chanc complain cramp cur
        cute dead dear debat deep dish divvent dizz down drop fast fist foot forearm glas goos grab handrail here
        higher hol hot hurt in instead isnt job joint kid kneel land late less lowest me month nearer neck nick
        night nip osteoporosi out overhead palm panic park pay pleas point prawn quick quit rainbow read ron
        round rule sag shoe smaller socket someth spik spin stop stretch suffer sure swim talk teeth then ther
        thin tim time toda toe towel truck tug twist unhook up walk way wet wrist yet
      `,
    ],
    [
      -0.2,
      `
        arc arm bad bounc breath bum clos count day ear enough fenc forward four front hip home jaw knee leg
        level line mat middl plent rack rest shoulder side sit sore spot start step straight tall them thigh thre
        together touch trip turn two wrong
      `,
    ],
    [-0.4, 'back'],
  ],
  length: [
    [0.2, '8-12 long'],
    [-0.2, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [
      0.4,
      `
        <air>_out <attend>_it <chat>_done <chat>_feel <chat>_land <do>_on <far>_back <harm>_in <less>_with
        <move>_sure <num>_week <part>_down <part>_grumbl <part>_on a_<less> a_<part> an_<part> an_ankl at_all
        chair_<place> check_the come_out hand_on have_a in_your it_again its_com its_ther leav_it let_<settle>
        let_go make_sure new_<part> out_all start_to stay_<place> the_<kit> the_box the_chair thi_<num>
        whol_<pace> whol_time you_feel you_land your_<carer> your_<place> your_foot
      `,
    ],
    [
      0.2,
      `
        <air>_push <attend>_a <attend>_after <attend>_along <attend>_away <attend>_behind <attend>_cramp
        <attend>_do <attend>_feet <attend>_for <attend>_head <attend>_here <attend>_in <attend>_under
        <attend>_when <attend>_wher <chat>_a <chat>_an <chat>_check <chat>_come <chat>_cos <chat>_do
        <chat>_finish <chat>_for <chat>_go <chat>_heav <chat>_in <chat>_is <chat>_its <chat>_jog <chat>_let
        <chat>_light <chat>_mean <chat>_on <chat>_over <chat>_puff <chat>_put <chat>_seen <chat>_skip <chat>_so
        <chat>_stop <chat>_to <chat>_trust <chat>_tug <chat>_understand <chat>_wobbl <chat>_year <do>_about
        <do>_around <do>_down <do>_gradual <do>_into <do>_is <do>_like <do>_of <do>_off <do>_or <do>_peopl
        <do>_too <do>_under <do>_wher <far>_bone <far>_it <far>_or <far>_over <harm>_at <harm>_happen <harm>_is
        <harm>_keep <harm>_leav <harm>_one <harm>_out <harm>_pleas <harm>_shoulder <harm>_to <harm>_wrist
        <harm>_you <ill>_in <ill>_is <ill>_shoulder <ill>_wrist <kit>_against <kit>_back <kit>_down <kit>_first
        <kit>_off <kit>_with <less>_as <less>_far <less>_hip <less>_or <less>_see <less>_way <less>_you
        <more>_higher <more>_one <more>_too <move>_about <move>_around <move>_by <move>_clos <move>_down
        <move>_fist <move>_gradual <move>_hold <move>_is <move>_light <move>_off <move>_on <move>_peopl
        <move>_too <move>_walk <move>_your <not>_and <not>_argu <not>_argument <not>_be <not>_bench <not>_crank
        <not>_dead <not>_debat <not>_do <not>_drop <not>_fight <not>_hop <not>_jump <not>_lock <not>_medal
        <not>_overhead <not>_panic <not>_push <not>_read <not>_see <not>_short <not>_twist <not>_want
        <not>_wrench <num>_a <num>_as <num>_hand <num>_month <num>_out <num>_way <num>_when <pace>_at <pace>_toe
        <pace>_under <pace>_with <part>_along <part>_bark <part>_catch <part>_caught <part>_cramp <part>_feel
        <part>_find <part>_get <part>_go <part>_goe <part>_heav <part>_hover <part>_in <part>_lower <part>_mean
        <part>_not <part>_of <part>_open <part>_read <part>_right <part>_start <part>_stay <part>_suffer
        <part>_that <part>_will <part>_with <place>_all <place>_and <place>_away <place>_back <place>_befor
        <place>_first <place>_goe <place>_here <place>_higher <place>_if <place>_it <place>_long <place>_nearer
        <place>_of <place>_off <place>_start <place>_stay <place>_that <place>_the <place>_too <settle>_a
        <settle>_and <settle>_another <settle>_been <settle>_down <settle>_is <settle>_off <settle>_out
        <settle>_over <settle>_someth <settle>_them <settle>_thi <settle>_till <settle>_wher <settle>_you
        <swap>_are <swap>_argu <swap>_argument <swap>_debat <swap>_for <swap>_grab <swap>_jump <swap>_medal
        <swap>_not <swap>_thes <swap>_thi <swap>_towel <swap>_twist <swap>_yank <take>_away <take>_down
        <take>_find <take>_is <take>_someth <take>_them <take>_thi <take>_wher <take>_with <take>_you <wrong>_and
        <wrong>_door <wrong>_into a_break a_chair a_chanc a_fly a_game a_hammer a_hamstr a_hand a_hip a_hose
        a_knif a_look a_lot a_miss a_moment a_nerv a_new a_prawn a_second a_shoulder a_stab a_stretch a_tabl
        a_thinner about_<num> about_twent abov_that after_about after_your all_hold and_<attend> and_<move>
        and_<not> and_call and_crawl and_do and_just and_lift and_look and_march and_no and_not and_push
        and_still and_straighten and_take and_tell and_they ankl_<chat> ankl_<settle> ankl_go any_<harm>
        any_sharp anybod_<place> anybod_with anyon_<more> anyon_<place> anyon_up are_<not> are_dear are_gopher
        are_not are_thin arm_<do> arm_<far> arm_<move> arm_of as_<chat> as_you at_<chat> at_you back_<attend>
        back_<place> back_com back_down back_goe back_grumbl back_long back_off back_start back_stay band_on
        bark_at be_<less> be_<pace> be_cute beagl_<chat> beagl_<more> beagl_left becaus_<attend> becaus_a
        becaus_if been_<chat> been_mov befor_<chat> befor_the befor_you below_wher bend_it bend_your bin_it
        blood_<harm> blood_pressur blow_out bon_are bone_densit both_hand both_sid bounc_<place> bounc_on
        box_with br_the br_your breath_<do> breath_out breath_push by_the came_late can_<take> can_grab can_talk
        cant_see catch_<more> catch_<place> catch_peopl catch_up caught_<more> caught_<place> caught_up
        chair_against chang_your clos_to com_at com_for come_<place> come_down come_off cramp_<place> cramp_in
        crank_your crawl_<place> crawl_out curl_<attend> curl_like discomfort_is div_<place> div_in divvent_gan
        do_<do> do_<harm> do_<less> do_<not> do_half do_not do_thes dog_park done_an dont_<not> dont_drop
        dont_fight dont_hop dont_panic dont_push dont_stop dont_want door_want down_and down_first down_if
        drop_off drop_them ease_<part> ease_<place> ease_back elbow_feel elbow_on end_of even_if fall_happen
        feel_<attend> feel_<harm> feel_<ill> feel_it feet_<chat> feet_<place> feet_<settle> feet_away feet_down
        feet_find feet_go feet_to feet_under fella_miss find_the finger_<place> finger_on fingertip_<place>
        fingertip_on first_<attend> first_cos flat_<place> flat_here flat_on floor_mean floor_ther floor_us
        fly_<kit> fly_bell foot_at foot_heav for_<harm> for_me forearm_and from_<place> from_about from_under
        front_knee front_of gan_purpl gan_to get_<more> get_<place> get_a get_down get_off get_up give_it
        give_thi go_and go_heav goe_<attend> goe_<do> goe_round gone_<less> gone_too good_tug gopher_hol
        grab_someth gras_behind had_a half_<attend> half_as half_the half_way hammer_<place> hammer_in hand_<do>
        hand_<more> hand_<place> hand_hover hand_open hand_read hang_on happen_when haul_<place> haul_on
        have_been have_your head_<far> head_caught head_just head_light heel_in higher_<more> higher_<place>
        higher_up hip_<ill> hip_in hip_not hip_stretch hiss_it hold_on hold_the hold_your hose_<place> hose_acros
        hover_<place> hover_over hover_your how_<harm> how_<part> how_peopl i_<less> i_mean i_need if_a if_it
        if_the if_youd if_your ill_<settle> ill_take im_<not> im_not in_nearer in_the insid_of into_a is_<harm>
        is_<less> is_<swap> is_fine is_glas is_how is_nobody is_not is_okay it_0 it_<pace> it_<wrong> it_a
        it_alon it_becaus it_bit it_div it_do it_down it_goe it_long it_mov it_off it_roll it_sav it_settl
        its_pret its_sharp its_slip its_socket its_what its_your ive_done ive_seen jog_<chat> jump_<place>
        jump_down jump_off just_<air> just_breath keep_<settle> keep_<take> keep_hold keep_walk keep_your
        kne_<not> kne_<part> kne_and kne_as kne_dont kne_down knee_first knee_point knee_stay knee_that
        kneecap_mean knif_<not> knif_isnt land_<attend> land_it lap_of last_year leav_thes leav_thi leg_<more>
        leg_higher leg_up let_<chat> lie_on light_<place> light_head light_in light_under like_theyr lock_it
        long_and look_<place> look_after look_along look_behind look_in look_wher lot_of low_<part> low_<place>
        low_back low_bone lower_<place> lower_back lower_in lowest_<do> lowest_<far> lowest_point make_<part>
        make_fist mat_so mean_that medal_for middl_toe mind_your moment_befor mov_the mov_till muscl_<settle>
        natal_ladi need_<chat> need_you never_<do> never_<move> never_<wrong> never_pull new_hip nip_at no_argu
        no_argument no_debat no_jump no_medal no_twist no_yank nobod_<do> nobod_bench nobod_doe nobody_<chat>
        nobody_friend not_<attend> not_<do> not_<more> not_<move> not_<num> not_<settle> not_<swap> not_<take>
        not_be not_come not_cros not_hap not_in not_jump not_overhead not_read of_<num> of_it off_<far> off_if
        off_it on_a on_it on_that one_<part> one_folk one_hand one_of only_<do> only_<move> onto_the open_away
        operat_<place> operat_on or_<chat> or_<settle> or_have or_itll or_leav or_you or_youll or_your or_youv
        out_of out_over out_the overhead_<attend> overhead_<swap> pain_is palm_in partner_stand peel_off
        pinch_<place> plat_over post_natal pressur_<place> pressur_on pull_<place> pull_is purpl_<num> purpl_one
        push_<place> push_through push_with put_them rack_and rest_with right_<chat> right_<do> right_round
        rise_<pace> rise_gradual roll_on roll_the round_<chat> round_it round_like rug_<more> rug_<place> rug_up
        safet_<chat> safet_first scar_pull scoot_your scrap_anyon second_at second_toe second_your see_star
        set_for shak_that sharp_<place> shift_the shin_suffer short_of shorten_it shoulder_<ill> shoulder_are
        shoulder_bark shoulder_complain shoulder_grumbl shout_for side_<less> side_<not> side_<place> side_<swap>
        side_instead side_on sit_thi skip_the slid_<more> slid_up somebody_water someon_to someth_<harm>
        someth_<more> someth_<pace> someth_stead soon_<attend> soon_as spin_do spot_<chat> spot_you
        sprinkler_<part> sprinkler_head stand_at stand_behind start_curl stay_<attend> stay_<do> stay_<move>
        stay_by stay_clos stay_flat stay_off stay_straight stay_ther step_<part> step_<place> step_back step_down
        step_off stop_and stop_dead stop_higher stop_short straight_<part> straight_away straight_knee
        straighten_your strap_are tell_<chat> tell_me test_it thank_<chat> thank_you that_<ill> that_<kit>
        that_<take> that_beagl that_chair that_doe that_get that_how that_its that_leg that_pay that_set
        that_shoulder that_the that_ther that_your the_<part> the_banister the_bar the_belt the_bench the_block
        the_buckl the_car the_edge the_end the_face the_front the_goos the_hamstr the_hand the_head the_joint
        the_kitchen the_kneecap the_leg the_overhead the_rail the_room the_rule the_scar the_second the_shin
        the_side the_stitch the_truck the_turn the_whol the_wob them_<harm> them_<place> them_befor them_down
        them_would ther_are ther_so ther_someth ther_to thes_and thes_cold they_<move> they_<wrong> they_stay
        theyr_bend thi_<attend> thi_<place> thi_one thi_out thinner_<swap> thinner_towel third_<harm>
        third_trimester thirt_four thre_month through_it thumb_right tight_to to_<chat> to_<do> to_<harm> to_both
        to_catch to_go to_grab to_open to_round to_spot toe_out too_<far> too_far top_ther tuck_<place>
        tuck_under tug_it turn_<less> turn_an turn_too turn_your twang_<chat> twang_you twent_week two_<part>
        two_when under_<chat> under_you under_your understand_<chat> understand_me up_<far> up_<less> up_higher
        up_off up_too upsid_<place> upsid_down us_the wait_a walk_about walk_around wall_<less> wall_<not>
        wall_<swap> wall_instead want_anybod watch_your way_<more> way_up we_turn wed_a week_<place> week_on
        week_some weight_down weight_just wet_leav what_its whatever_that when_we wher_<chat> wipe_it
        with_<attend> with_<chat> with_<far> with_<kit> with_<part> with_a with_both with_low with_weight
        within_<num> within_two work_<attend> work_if wrist_<move> wrist_stay wrong_<kit> wrong_door year_and
        you_<attend> you_<move> you_<not> you_<settle> you_<take> you_<wrong> you_all you_befor you_come
        you_finish you_in you_let you_put you_set you_skip you_stop you_trust you_understand you_wobbl youd_a
        youll_be youll_gan your_<chat> your_<far> your_<settle> your_achill your_arch your_back your_bon
        your_bottom your_breath your_done your_eye your_face your_forearm your_handrail your_joint your_kne
        your_lane your_low your_lowest your_neck your_palm your_partner your_plat your_rainbow your_safet
        your_shin your_shoe your_station your_strap your_surgeon your_teeth your_third your_up your_vision
        your_wrist youv_gone youv_had youv_mov
      `,
    ],
    [
      -0.2,
      `
        <air>_in <attend>_its <attend>_over <attend>_that <attend>_ther <attend>_thi <attend>_youv <chat>_after
        <chat>_can <chat>_could <chat>_read <chat>_should <chat>_start <chat>_the <chat>_turn <chat>_want
        <do>_and <do>_if <do>_your <far>_as <far>_for <far>_of <far>_the <harm>_leg <ill>_its <ill>_leg <kit>_if
        <kit>_in <kit>_out <kit>_round <kit>_up <less>_hold <less>_of <more>_on <move>_a <move>_at <move>_for
        <move>_the <move>_with <move>_you <not>_a <not>_at <not>_bend <not>_have <not>_is <not>_lift <not>_look
        <not>_need <not>_roll <not>_when <not>_wor <num>_and <num>_second <pace>_to <part>_a <part>_and
        <part>_are <part>_behind <part>_blad <part>_come <part>_do <part>_doe <part>_drop <part>_for <part>_if
        <part>_knee <part>_so <part>_still <part>_straight <part>_to <part>_together <part>_you <place>_again
        <place>_as <place>_at <place>_behind <place>_for <place>_into <place>_me <place>_out <place>_them
        <place>_ther <place>_under <place>_with <place>_your <settle>_back <settle>_forward <settle>_one
        <settle>_right <settle>_ther <settle>_to <settle>_your <swap>_bounc <swap>_on <swap>_under <swap>_your
        <take>_ther <take>_together <take>_your a_<air> a_<kit> a_<move> a_<num> a_few a_littl a_pain a_spot
        about_your all_<place> and_<part> and_<place> and_<settle> and_a and_come and_hold and_stand and_your
        are_<harm> are_<ill> are_<less> as_<attend> as_it at_<num> at_your back_<less> back_<part> back_<settle>
        back_knee balanc_is bell_<place> bit_<place> bit_of box_and chin_<place> come_<part> come_back come_on
        come_to cushion_<place> do_it doe_<not> doe_not dont_<wrong> dont_bend dont_need down_<place> down_at
        eye_<place> feet_together floor_<place> foot_<place> for_<num> for_a for_it forward_<place> from_the
        from_your front_<place> get_ther half_of hand_are hang_off have_to heel_<settle> heel_down hip_<move>
        hip_are hold_a hold_it if_<chat> if_its if_that in_<num> in_<place> in_a in_it into_it into_the into_your
        is_to it_<move> it_<part> it_<place> it_all it_back it_doesnt it_get it_insid it_ther it_till its_<far>
        its_<less> its_<not> its_<num> its_<wrong> its_a its_not kne_are lean_<part> lean_back leav_the let_it
        let_you lift_the like_<chat> like_<harm> like_your look_at nice_and nip_<place> no_<less> no_bounc
        nobod_is not_<chat> not_<harm> not_<ill> not_<less> not_a of_a off_<chat> off_befor off_the off_you
        on_<chat> on_me on_the one_<attend> onto_your operat_<part> operat_leg or_<num> out_<far> out_and out_in
        pinch_at pinch_your point_at push_off should_be shoulder_<place> shoulder_blad show_off side_of sit_on
        so_it spot_<place> spot_on stand_<part> stand_on stay_<far> stay_down stay_in stop_<chat> stop_when
        that_<do> that_<far> that_<pace> that_<place> that_back that_it that_run the_<air> the_<chat> the_<far>
        the_<ill> the_<less> the_<num> the_<settle> the_ankl the_ball the_bed the_bell the_body the_ceil the_fenc
        the_first the_foot the_heel the_kne the_knee the_middl the_other the_same the_spot the_stick then_<chat>
        thi_<pace> thi_time through_the to_<swap> to_a to_it toe_on too_<less> top_of turn_<place> up_<attend>
        up_on walk_it want_it way_down weight_in what_<chat> wher_it whil_<chat> wont_<settle> wrist_complain
        you_<swap> you_could you_go you_like you_want your_<ill> your_<not> your_after your_ankl your_arm
        your_bum your_chair your_chest your_ear your_feet your_hamstring your_hand your_hip your_kneecap your_not
        your_rib your_shoulder your_thigh your_toe your_tum
      `,
    ],
    [-0.4, '<attend>_on <part>_up <place>_in a_<far> it_<not> up_<place> with_the'],
  ],
  phrase: [
    [0.8, 'caution-sure'],
    [0.6, 'caution-hint'],
    [0.4, 'caution-likely'],
    [0.2, 'easier-likely fault-likely focus-likely'],
    [
      -0.2,
      `
        breathing-likely breathing-sure equipment-sure execution-likely execution-sure focus-sure harder-hint
        harder-likely praise range-likely range-sure tempo-likely transitions
      `,
    ],
    [-0.4, 'chat dose_only empty_clauses focus-hint harder-sure tempo-sure'],
  ],
  start: [
    [0.4, '<chat>_<chat> <chat>_<not> check_the that_your'],
    [
      0.2,
      `
        0_out <air>_<place> <attend>_<place> <attend>_<take> <chat>_<settle> <far>_<place> <harm>_<place>
        <kit>_<part> <kit>_<place> <move>_<do> <move>_<move> <move>_<pace> <move>_<settle> <move>_<take>
        <not>_<do> <not>_<not> <num>_<part> <part>_<harm> <part>_<ill> <settle>_<far> <settle>_<place> a_knif
        a_knif_isnt a_stretch a_stretch_is after_about after_about_thirt ankl_are ankl_are_dear any_sharp
        anybod_with anybod_with_a as_if_youd at_you at_your_eye back_off back_start back_start_curl back_stay
        back_stay_flat band_on band_on_the becaus_a becaus_if befor_you bend_your bend_your_kne bin_it blow_out
        both_hand both_sid br_the_arm br_your br_your_hand br_your_heel breath_out breath_out_all catch_peopl
        chair_against chair_against_the chang_your chang_your_plat come_down come_off come_out cramp_in
        cramp_in_the discomfort_is discomfort_is_okay divvent_gan divvent_gan_to do_it do_not do_not_jump
        dont_drop dont_go dont_hold_it dont_panic dont_push dont_push_through dont_stop dont_stop_dead drop_it
        ease_back elbow_feel elbow_feel_like even_if even_if_your feet_find feet_find_the feet_to feet_to_the
        feet_under find_the finger_on_the fingertip_on fingertip_on_it first_cos flat_back_the flat_here
        from_about from_about_twent front_knee get_down get_down_on give_it give_it_0 give_it_a give_thi
        give_thi_one give_yourself_a go_and go_and_do go_back go_on_your good_tug half_a_chanc half_way
        hamstring_cramp hand_on hand_on_that hand_on_the hand_read have_a have_a_look head_light head_light_in
        hiss_it hiss_it_out hold_the hold_the_band hold_the_chair hold_the_sid hold_your hold_your_breath
        i_dont_want i_mean i_mean_that i_need i_need_you if_a if_a_strap if_it if_its_sharp if_that_shoulder
        if_the if_the_back if_the_front if_the_hamstr if_the_scar if_ther_a if_you if_you_are if_you_feel
        if_you_get if_your if_your_grip if_your_kne if_your_shoulder im_not im_not_be in_the_shin in_your
        in_your_third it_goe_for it_is it_lock it_lock_it it_stay_ther its_a_game its_a_hip its_been_mov its_com
        its_com_for its_not_cheat its_pret its_wet its_what its_what_its its_your its_your_eye its_your_handrail
        ive_done ive_done_an keep_hold keep_mov_till keep_that_foot keep_the_knee keep_walk keep_your
        keep_your_chin keep_your_feet kne_down land_light_under lean_on lean_on_it leav_it leav_thi look_after
        look_after_your look_in look_in_front look_wher look_wher_your lower_in lower_in_the lower_it
        lower_it_down make_it_smaller make_sure mind_your no_argument no_debat no_hold no_hold_your no_jump
        no_medal no_yank no_yank_on nobod_bench nobod_doe nobod_doe_thes not_in_the not_on_it not_the_toe
        one_hand one_hand_on one_of one_on_the operat_on or_it or_itll or_your or_youv partner_stand
        partner_stand_at pick_it_up post_natal post_natal_ladi push_out push_out_in put_it_down put_them
        put_them_down rest_with rest_with_me rise_gradual rug_up safet_first scoot_your scoot_your_feet shift_the
        shift_the_elbow shorten_it shoulder_grumbl sit_back_down sit_thi sit_thi_out sit_with_the slid_up
        slid_up_to somebody_water somebody_water_bottl sprinkler_head stay_clos stay_clos_to step_back
        step_back_down step_down step_off stop_and stop_higher stop_short stop_short_of stop_ther test_it
        test_it_again that_how that_is_how that_its that_its_job that_not that_not_your that_set that_the_end
        that_ther that_ther_to that_too that_you_finish that_your_bottom that_your_spin the_door_want the_minut
        the_second the_second_your the_weight_just the_whol the_whol_time ther_a_hose ther_are ther_are_gopher
        thos_with thos_with_low thumb_right thumb_right_round thumb_wrap_round tight_to tight_to_both to_get
        to_get_up toe_out toe_out_of tuck_your_heel tug_it tug_it_again turn_your turn_your_palm twang_you
        two_when two_when_your under_you under_your under_your_lowest up_ther wait_a wait_a_second walk_about
        walk_around watch_your wed_a wed_a_fella whatever_that whatever_that_beagl wipe_it with_a_tug you_come
        you_dont you_let you_let_go you_move you_stop youll_gan youll_gan_purpl your_done your_head your_shoulder
        your_whol your_whol_foot youv_gone youv_gone_too
      `,
    ],
    [
      -0.2,
      `
        <attend>_<chat> <chat>_<more> <chat>_<swap> <kit>_<do> <not>_<place> <place>_<attend> <place>_<part>
        <place>_<place> <settle>_<more> <swap>_<place> all_the dont_drop_it go_down if_your_hamstring if_your_hip
        its_only keep_it_insid let_go_of look_at nice_and not_a on_your operat_leg stop_when that_run
        that_run_your you_are your_not
      `,
    ],
    [-0.4, '<part>_<place> hold_it'],
  ],
  word: [
    [0.6, 'buckl chair check first joint or sharp tug'],
    [
      0.4,
      `
        and becaus befor bend br catch cold come cos cramp feel flat give goe grab grumbl head how leav mean mov
        never overhead partner pleas pressur put round safet set shorten sure that thi under wrist
      `,
    ],
    [
      0.2,
      `
        abov ache achill alon along among ankl any anybod anyon arch argument backward bark be beagl been below
        bench bin blood bon bone both box bruis calf caus chanc clip closer com complain contraction crack crank
        creep cur cute dear debat densit discomfort dish div divvent dizz do doctor dog done dont down drink drop
        dry ease end eye far feet find finger fingertip for forearm fun gan gentl get glas go goos gopher half
        hammer hamstr hand handrail have height here higher hiss hol hold hose hot hover hurt if im in instead it
        itll its ive janin job jog keep kid kneecap kneel knif ladi land lane lap late ligament lock look lowest
        make march marvellou mate medal mind miss moment month nag natal neck nerv new next nick night nip nobod
        off on open osteoporosi otherwis pain palm panic park pay peopl person post prawn proper quit rail
        rainbow read roll ron room root rubber rug rule sag scar second seen shin shoe shorter shoulder skat skip
        slip smaller so socket someon someth soon spik spin sprinkler stab stand stay stitch stop strain strap
        stretch suffer surgeon swim tabl talk teeth test thank ther thes they thin thos thumb till time tingl
        toda tomorrow towel tree trimester truck trust turn twang twing twist understand unhook upsid vision wait
        walk warm watch week wet what will with within wooz wrap wrench yank you youll your
      `,
    ],
    [
      -0.2,
      `
        a about again ahead air all arc as away backsid ball bed between bit blad body bor bridg bump button can
        cheat chest clean clock could count doesnt driv dumbbell each ear eight elbow else enough exhal fac fenc
        five float fold foot forehead four free full got grip grow halfwa hang heal hear help hip home hook i
        into jaw kick last lazy lean let line littl long loop lose mat metr more much my need nice nose not noth
        number of operat opposit other our outsid pair part past paus pick pinch plank plant plent pocket punch
        rack rais reach right rock run sat say seat sho should shov show shrug sideway six slack small sock some
        sore squash squat squeez stick stiff strid strok support swap switch take tap ten the thigh think thre
        top touch toward trip try tuck twic underneath up ups want was we wee well were whil width without wor
      `,
    ],
    [-0.4, '0 arm bad balanc bum forward heel lift rib same tall to together'],
    [-0.6, 'leg like'],
  ],
} as const satisfies CueWeights
