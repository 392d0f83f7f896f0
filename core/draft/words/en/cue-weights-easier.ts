/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind easier; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EASIER_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [0.8, 'less'],
    [0.6, 'swap'],
    [0.2, 'attend kit move take'],
    [-0.2, 'do harm pace place'],
    [-0.4, 'air chat more wrong'],
  ],
  conditional: [[0.4, 'yes']],
  first: [
    [0.6, '<less> or'],
    [0.4, 'anyon bend bottom do if leav same step take tap to use'],
    [
      0.2,
      `
        <swap> ankl another anybod both breath cant child drop feet figur for go got hand ill kne let level lie
        low march modification not noth one put sat shallower shorten should sit sos squat stick they thumb tip
        too two walk you
      `,
    ],
    [
      -0.2,
      `
        0 <attend> <chat> <far> <num> <pace> <part> a all arm back elbow get heel hold i it its keep like lower
        nobod only paus pick shoulder stay straighten strap swap switch the ther thi
      `,
    ],
    [-0.4, '<place> your'],
  ],
  given: [
    [0.4, 'up'],
    [
      0.2,
      `
        0 <chat> <harm> <ill> <less> <move> <settle> a again amber at come cramp crank enough everybody for front
        get had hamstring hang hip its keep kne like lot moan much nip pick rather sake shak stiff then tir toda
        win wire
      `,
    ],
    [
      -0.2,
      `
        <kit> <pace> <place> <swap> can doddl easy got hamstr have in lift off or the your youv
      `,
    ],
  ],
  last: [
    [0.4, 'arm help'],
    [
      0.2,
      `
        0 amber anyth back bed beginner bell bench bit bridg chair chor closer count cramp crim deadlift down
        drawer dumb easier enough fight forth go gone ground heel height jump knee lift low march moan month more
        newer nip nowher one quicker rack reach sake sit sphinx sprawl strap stretch sure taller th that ther
        thigh think through time toda turn twist two version weight well whenever whos wider win wrong yet you
      `,
    ],
    [
      -0.2,
      `
        ball band bar breath cant ceil doddl first further grumbl hard hip hold home long neck okay on shoulder
        soft squat stand step tall toe top way
      `,
    ],
  ],
  length: [
    [-0.2, '5-7 8-12 long'],
    [-0.4, '3-4'],
    [-0.6, '1-2'],
  ],
  pair: [
    [
      0.4,
      `
        <attend>_its <far>_one <kit>_if <kit>_in <less>_one <not>_sham <part>_are <part>_down <part>_on
        <settle>_on <settle>_the <swap>_sham <swap>_your <take>_the a_<kit> are_<attend> are_<harm> bend_the
        cushion_<place> for_<chat> for_you if_its if_your is_<swap> just_<attend> just_<do> just_<move> leav_the
        leav_your no_sham on_the put_a sham_<place> sham_in sit_on that_a the_arm to_<not> to_stop toe_<place>
        toe_on your_toe
      `,
    ],
    [
      0.2,
      `
        0_<kit> 0_metr <air>_out <attend>_a <attend>_are <attend>_bell <attend>_count <attend>_dumb <attend>_it
        <attend>_like <attend>_one <attend>_standing <attend>_well <attend>_wire <attend>_your <chat>_clos
        <chat>_down <chat>_enough <chat>_keep <chat>_lighter <chat>_may <chat>_might <chat>_month <chat>_newer
        <chat>_not <chat>_one <chat>_sit <chat>_the <chat>_think <chat>_tir <chat>_up <chat>_want <chat>_week
        <chat>_wider <chat>_would <chat>_your <do>_a <do>_and <do>_both <do>_closer <do>_elbow <do>_if <do>_in
        <do>_on <do>_side <do>_sit <do>_yet <far>_box <far>_down <far>_elbow <far>_impact <far>_rang <far>_tilt
        <far>_with <harm>_ankl <harm>_if <harm>_off <harm>_under <harm>_up <ill>_ankl <ill>_at <kit>_a <kit>_all
        <kit>_and <kit>_back <kit>_on <kit>_side <kit>_stool <kit>_toda <kit>_under <kit>_up <kit>_whil
        <less>_down <less>_elbow <less>_from <less>_if <less>_is <less>_than <less>_ther <less>_thi <less>_to
        <less>_weight <less>_your <more>_again <more>_just <more>_on <more>_one <more>_taller <more>_ther
        <more>_under <more>_week <move>_a <move>_closer <move>_elbow <move>_get <move>_here <move>_if <move>_in
        <move>_off <move>_on <move>_side <move>_small <move>_the <move>_them <move>_yet <not>_at <not>_ear
        <not>_go <not>_happen <not>_have <not>_lift <not>_reach <not>_say <not>_sure <not>_sw <not>_weight
        <num>_and <num>_arm <num>_feet <num>_metr <num>_mov <num>_one <num>_teach <num>_the <num>_toe
        <num>_weight <pace>_dumb <pace>_longer <part>_at <part>_back <part>_can <part>_cramp <part>_do
        <part>_dont <part>_height <part>_if <part>_knee <part>_leg <part>_nip <part>_now <part>_still <part>_talk
        <part>_tap <part>_touch <part>_wher <part>_wider <part>_wont <place>_at <place>_bend <place>_between
        <place>_closer <place>_like <place>_onto <place>_taller <place>_ther <place>_thes <place>_to <place>_toe
        <place>_together <place>_under <place>_us <place>_whil <settle>_closer <settle>_lighter <settle>_off
        <settle>_out <settle>_to <settle>_whil <settle>_wider <swap>_be <swap>_closer <swap>_do <swap>_hover
        <swap>_in <swap>_jump <swap>_just <swap>_keep <swap>_on <swap>_round <swap>_sixt <swap>_sw <swap>_ten
        <swap>_the <swap>_them <swap>_under <swap>_weight <take>_a <take>_back <take>_closer <take>_on <take>_one
        <take>_stay a_<far> a_<pace> a_bar a_bend a_bit a_box a_chor a_crim a_drawer a_fast a_fight a_heav
        a_kickstand a_knee a_lot a_love a_night a_pair a_paus a_rais a_smaller a_sphinx a_sprawl a_time a_toe
        actual_<kit> actual_chair aim_for along_the along_with an_<harm> an_<ill> an_<less> an_actual an_amber
        an_injur and_<far> and_<pace> and_<swap> and_<take> and_aim and_help and_hold and_jog and_just and_leav
        and_low and_practis and_row and_stand ankl_<place> ankl_over another_<less> another_option anybod_com
        anyon_who anyon_whos are_<ill> are_crank are_heav are_moan are_open are_still are_torn arm_and arm_at
        arm_wher as_well at_0 at_<num> at_<part> at_a at_that back_<chat> back_had bad_<part> bad_ankl balanc_is
        bar_<attend> bar_if bar_stool be_<chat> be_done bench_and bend_<place> bend_and bend_in bend_your
        bit_<attend> bit_if blanket_in both_<part> both_<place> both_<take> both_feet both_together bottom_<not>
        bottom_<part> bottom_knee bottom_on bottom_wont br_the breath_out by_<swap> by_bend by_us by_your
        call_that can_<far> can_<move> can_be can_do can_hover can_keep cant_<settle> cant_<take> chair_<part>
        chest_on child_pose clos_a closer_<place> closer_to closer_together come_<part> come_<place> come_back
        come_out cushion_on do_<num> do_<part> do_sixt do_ten do_them do_your done_sit dont_<chat> dont_<do>
        dont_<move> dont_<settle> dont_go dont_lift down_a down_at down_by down_is down_to down_whil drag_<place>
        drag_on everybody_sake fast_<do> fast_<move> fast_<num> fast_for fast_one feel_<attend> feel_like
        feet_<more> feet_<move> feet_<part> feet_<place> feet_back feet_stay feet_up fenc_and figur_<num>
        figur_four finger_are first_month floor_<attend> floor_<swap> fold_your foot_<place> foot_down for_balanc
        for_everybody for_five forward_<attend> forward_a forward_like forward_on go_<far> go_<place> go_lighter
        go_nowher go_wider good_<num> good_one got_a grip_go had_<far> had_<less> had_enough had_it half_<num>
        half_one half_the hamstring_are hand_<far> hand_<place> hand_and hand_down hand_wider happen_<place>
        happen_in have_<chat> have_to head_<place> head_down heal_<do> heal_rais heav_<kit> heav_bell heel_down
        heel_tap help_<chat> help_it help_you higher_<more> higher_<place> higher_up hip_<ill> hip_height hip_nip
        hip_still hold_<place> hold_on hold_the hoodi_<more> hoodi_<place> hoodi_up if_<num> if_a if_standing
        if_the if_thi ill_<not> ill_not impact_peopl in_<place> in_between in_closer in_it in_ther is_<attend>
        is_<less> is_<not> is_fine is_off is_still it_<less> it_<num> it_<wrong> it_by it_one it_real it_stood
        it_through it_wrong its_<not> its_easier its_nip its_not its_win jog_the just_as just_look just_the
        keep_<num> keep_get keep_one kne_<pace> kne_<place> kne_in kne_lower kne_now kne_on kne_talk knee_<swap>
        knee_as knee_at knee_on kneel_<num> kneel_one lean_forward lean_on leg_<far> leg_are leg_to let_<num>
        let_one let_the let_your level_<num> level_one light_dumb lighter_<attend> like_wire littl_<do> littl_one
        littl_tilt lose_the love_<less> low_impact lower_elbow make_them march_it might_<attend> much_<part>
        need_it next_week night_<place> night_on nip_<chat> nip_you no_<do> no_<move> no_jump no_sw no_weight
        not_have not_say not_sure noth_happen of_<harm> of_<kit> of_the off_an off_it okay_to on_thes on_to
        one_<attend> one_<do> one_<kit> one_<move> one_are one_arm one_on one_teach one_toe one_weight
        onto_<part> option_a or_0 or_<num> or_<take> or_closer or_forearm or_just or_kneel or_strid
        other_<attend> other_calf other_thigh out_for out_in out_the pair_of paus_<attend> paus_longer pick_it
        pinch_at pose_is practis_the pres_them pressur_off pull_on push_them rack_whil rail_<attend> rail_if
        rais_sit real_<far> real_low rest_your ring_<more> ring_all ring_up rock_<part> rock_<place> rock_back
        round_your row_<num> same_<attend> same_<do> same_<part> same_knee same_stretch same_ten same_th
        sat_<place> sat_down say_<more> say_anyth scoot_the shin_<far> shin_<move> shin_touch shorten_the
        should_that shoulder_<chat> shuffl_closer side_to simp_<settle> simp_<take> sit_<attend> sit_<more>
        sixt_and small_and so_<far> some_of sos_the squat_to squeez_both stand_<place> stand_back stand_closer
        standing_a stay_<far> stay_here stay_small stay_with step_in step_side step_your stick_a still_<pace>
        still_a still_count still_one stool_<place> stool_behind stop_at stop_ear strid_it sw_yet tail_and
        take_<less> take_<place> take_a take_the talk_to tap_a teach_it ten_<pace> ten_second than_<chat>
        than_you that_<attend> that_<pace> that_<settle> that_come that_count that_fast that_feel the_<do>
        the_<kit> the_<move> the_<pace> the_<settle> the_bench the_bridg the_crat the_empt the_first the_floor
        the_foot the_good the_ground the_hamstring the_head the_heel the_jump the_leg the_lever the_load
        the_other the_paus the_pressur the_rack the_rail the_rang the_sixteen the_straight the_strap the_towel
        the_wall the_wrist them_forward them_hold them_out then_<settle> then_<swap> ther_<do> ther_for
        they_<attend> they_<swap> they_are they_can they_still thumb_<swap> thumb_can tight_<attend> tilt_with
        tip_<place> tip_forward to_<less> to_an to_do to_hip to_lift to_modif to_side to_take to_wher toe_along
        toe_drag together_and too_<less> top_of torn_<more> torn_<place> torn_up touch_the towel_<chat>
        towel_<do> towel_<place> towel_round towel_under two_<part> two_<take> two_feet two_hand under_them
        up_<place> up_again up_on up_taller up_ther up_under up_with upright_of use_a use_the use_your walk_it
        walk_the wall_<attend> wall_for wall_if want_it want_to way_down we_call weight_<chat> weight_toda
        wher_they wher_your which_they who_gone wider_with with_just with_two with_your without_the wont_<do>
        wont_<far> wont_<move> wont_reach would_<not> would_rather you_<more> you_<place> you_and you_keep
        you_may you_might you_think you_up you_want you_would your_<less> your_arm your_back your_chest your_clos
        your_deadlift your_down your_first your_grip your_hamstring your_head your_hoodi your_kne your_newer
        your_sid your_thigh your_tir
      `,
    ],
    [
      -0.2,
      `
        <attend>_at <attend>_down <attend>_much <attend>_ther <attend>_to <attend>_you <attend>_youv <chat>_dont
        <chat>_feel <chat>_if <chat>_lift <chat>_like <do>_down <do>_out <far>_back <far>_it <far>_or <far>_toe
        <kit>_are <kit>_down <kit>_with <less>_or <more>_for <more>_in <not>_and <not>_stop <num>_a <num>_at
        <num>_step <num>_to <num>_way <part>_as <part>_go <part>_is <part>_lift <part>_out <part>_together
        <place>_and <place>_down <place>_of <place>_your <settle>_down <settle>_in <settle>_it <settle>_them
        <settle>_up <swap>_hand <swap>_if <swap>_not <swap>_with a_<more> a_<move> a_<place> a_<settle> a_<swap>
        a_doddl a_mat a_minut a_sofa a_towel all_the alway_<attend> and_<attend> and_<chat> and_<move> and_<not>
        and_<part> are_<place> are_<swap> are_grumbl arm_<attend> as_<attend> as_if as_you at_your back_<place>
        back_<swap> back_down back_instead befor_<chat> befor_you between_the come_down cushion_with do_<not>
        do_not do_the down_and down_on feet_<far> feet_on for_a for_the go_dead go_too half_a half_way hand_on
        hip_<place> if_youv in_<less> is_<far> it_<attend> it_<do> it_<place> it_down it_in it_on its_a
        kne_<attend> kne_and kne_as let_it lift_<num> lift_off lift_one look_down no_<attend> no_<part>
        not_<move> not_<place> of_<chat> of_<num> of_you of_your on_it on_one on_your one_hand opposit_<part>
        or_a out_of put_your shoulder_<do> sit_<part> sit_back stay_<place> stop_and straight_<place> take_it
        that_is that_the the_<attend> the_<take> the_bar the_ceil the_chest the_handl the_same the_second
        the_shoulder ther_a to_<do> to_<far> to_<take> to_be to_one to_your turn_<place> two_<kit> up_for
        walk_your with_both you_<do> you_<not> you_<settle> you_<swap> you_can you_dont your_<air> your_<do>
        your_<kit> your_<more> your_<swap> your_<take> your_eye your_forearm your_hip youv_gone youv_got
      `,
    ],
    [-0.4, '<chat>_can <settle>_your at_the off_the'],
  ],
  phrase: [
    [1.2, 'easier-sure'],
    [0.6, 'easier-hint'],
    [0.4, 'setup-sure'],
    [0.2, 'easier-likely equipment-hint execution-sure range-likely'],
    [
      -0.2,
      `
        breathing-likely breathing-sure dose_only execution-hint fault-hint focus-hint purpose range-hint
        range-sure tempo-likely tempo-sure transitions
      `,
    ],
    [-0.4, 'chat fault-likely focus-sure harder-sure'],
    [-0.6, 'empty_clauses'],
  ],
  start: [
    [0.4, '<settle>_<place>'],
    [
      0.2,
      `
        0_metr <attend>_<num> <chat>_<far> <chat>_<place> <chat>_<swap> <do>_<less> <do>_<part> <do>_<place>
        <far>_<num> <less>_<kit> <less>_<part> <more>_<num> <move>_<far> <move>_<less> <not>_<do> <not>_<move>
        <num>_<attend> <num>_<kit> <num>_<part> <num>_<take> <part>_<far> <part>_<part> <part>_<place>
        <part>_<swap> <place>_<num> <settle>_<far> <settle>_<less> <swap>_<do> <swap>_<move> <swap>_<num>
        <take>_<num> <take>_<place> a_bit_if ankl_over ankl_over_the another_option anybod_com anybod_com_off
        anyon_who anyon_who_gone anyon_whos arm_at arm_at_a bad_ankl bend_the bend_your bend_your_kne both_feet
        both_hand bottom_knee bottom_wont bottom_wont_reach br_the br_the_ring breath_out breath_out_for
        child_pose come_back cushion_under_your do_it do_it_one do_it_stood do_sixt do_sixt_and do_them do_your
        do_your_deadlift dont_go dont_lift feet_back feet_down figur_four fist_or fist_or_forearm fold_your
        fold_your_hoodi for_everybody for_everybody_sake go_lighter go_wider go_wider_with got_a got_a_heav
        half_the hand_and hand_down hand_down_by hand_on_a hand_wider hang_on_to have_a_bar hold_the_rail if_a
        if_it_pinch if_its if_its_nip if_its_win if_that if_that_fast if_that_hip if_your ill_not ill_not_say
        it_is its_easier its_not its_not_a keep_a keep_a_bend keep_it_real keep_one kne_lower leav_the
        leav_the_arm leav_your let_go_of let_one let_your level_one littl_tilt littl_tilt_with low_impact
        low_impact_peopl lower_elbow make_the_paus make_them march_it no_jump no_sham no_sham_in no_sw no_sw_yet
        no_weight not_sure noth_happen noth_happen_in one_arm one_foot_down one_knee_at option_a or_0 or_closer
        or_closer_together or_just or_strid or_strid_it or_your_hand pres_them pres_them_out pull_on pull_on_the
        push_them push_them_forward put_a put_a_cushion put_the put_the_weight rest_your_back same_knee
        same_stretch same_ten same_th sat_down scoot_the scoot_the_crat should_that should_that_feel
        shuffl_closer shuffl_closer_to sit_down_to sit_on sit_on_the slid_your_toe sos_the sos_the_top
        squeez_both squeez_both_together stand_closer stay_small stay_small_and step_back step_in step_it
        step_your step_your_feet stick_a stop_at stop_at_0 take_a that_a that_a_half that_a_sphinx that_count
        that_fine the_leg the_other ther_is they_can they_can_be they_still they_still_count thumb_can
        thumb_can_hover tip_forward to_modif to_take to_take_the toe_on toe_on_the tuck_the_tail up_with use_a
        use_the walk_it walk_it_the walk_it_through walk_the we_call we_call_that you_can_do you_do you_do_not
        you_may you_might
      `,
    ],
    [
      -0.2,
      `
        <attend>_<chat> <do>_<attend> <move>_<attend> <not>_<less> <not>_<take> <part>_<attend> <place>_<part>
        <place>_<place> <settle>_<more> <swap>_<attend> <swap>_<not> do_not hold_it if_the if_you if_youv its_a
        make_it_smaller or_a or_the sit_back sit_back_instead walk_your
      `,
    ],
  ],
  word: [
    [0.8, 'help'],
    [0.6, 'bend closer if just leav toe'],
    [0.4, '0 anyon do easier kne knee low march or same sham sit still take tap use wider'],
    [
      0.2,
      `
        a aim along alternativ amber an ankl anyth are arm bad balanc bed bench bit block bottom box bridg by
        call can chair child chor come comf cramp crat crim deadlift deep done down drag drawer dumb dumbbell
        everybody fast feet fight figur forth forward ground had hamstring happen heav higher hoodi ill impact
        injur is jump keep kickstand kinder lever lie lighter littl lot love manag may metr might moan modif
        modification month newer nip nowher on one onto option other pair paus plat pose practis pressur put
        quicker rack rail rais rang rather real row sake sat say scal shallower shorten simp sixt sixteen smaller
        sos sphinx sprawl squat standing stiff stool stretch strid sure tak teach ten th they thigh time tip tir
        to toda torn touch up version walk wall want weight whenever whil who whos win wire wont wrong yet
      `,
    ],
    [
      -0.2,
      `
        about again all as ask away back bag band be becaus befor belt big body bor breath ceil chang cros dead
        doddl dull each easy elbow end even ever eye from front full further get goe grumbl halfwa hamstr handl
        hard here hip home i inch into its land left light like long look lower mat minut near no of only opposit
        over palm past point rib right roll round run seat second see sho short shut side slid slow so soft spin
        spot straight straighten swap switch tall tell theyr thi thre till tuck wait way what when whol will with
        without youll your yourself
      `,
    ],
    [-0.4, 'shoulder youv'],
  ],
} as const satisfies CueWeights
