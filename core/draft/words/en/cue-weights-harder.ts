/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind harder; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const HARDER_WEIGHTS = {
  bias: [[-0.8, 'yes']],
  class: [
    [1, 'more'],
    [0.2, 'far part swap'],
    [-0.2, 'harm less not place'],
    [-0.4, 'air wrong'],
  ],
  conditional: [[0.4, 'yes']],
  first: [
    [0.6, '<more> blu'],
    [0.4, '0 anybod arm blue feel go hover option paus red rock show straighten try turn'],
    [
      0.2,
      `
        <do> <far> <less> anyon bor braver callum car clever count creep cros draw driv dumbbell feet for forward
        got harder heel if jo keen last late leg level lift mayb narrow once or over pike put reach see spic stop
        straight stronger thre to too top want weld
      `,
    ],
    [
      -0.2,
      `
        <air> <kit> <move> <num> <pace> <settle> a all bend both chest come dont down easy elbow even hand i it
        keep let like lower make no on one other out pick pres push same shak shoulder sit smooth squeez stand
        step switch that the ther they thi thumb up walk we youll youv
      `,
    ],
    [-0.4, '<chat> <not> <part> <place> its your'],
  ],
  given: [
    [0.4, 'doddl'],
    [
      0.2,
      `
        <attend> <chat> <more> <pace> <take> a balanc befor breez enough fly full hold is lift noth off on paus
        strength that them version
      `,
    ],
    [
      -0.2,
      `
        <less> <num> <place> <swap> <wrong> back come down from hip ill it just last more one only take thigh too
        up wrist you your
      `,
    ],
    [-0.4, '<part>'],
  ],
  last: [
    [0.6, 'blu thre'],
    [0.4, '0 bor doddl off red'],
    [
      0.2,
      `
        all ankl archer b bell blue bottl breath chest clap clever closer cone cooler delux dont dull dumbbell
        easy end eye faster fly fold fresh further hand harder hole horribl jo jump keep kind kneecap leg lower
        nastier not noth on one pace paddl paus peopl plat quicker right shin shorter side smil solid stag tank
        two view wors
      `,
    ],
    [
      -0.2,
      `
        again first flat floor go heav height hip hold in knee lift like long now over pleas sid smooth tall ten
        that thi to turn up want
      `,
    ],
  ],
  length: [
    [-0.2, '5-7 long'],
    [-0.6, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.6, '<swap>_of arm_<place> if_<chat> show_off'],
    [
      0.4,
      `
        <do>_the <do>_your <far>_the <kit>_between <move>_the <not>_hand <num>_on <part>_for <part>_if <part>_off
        <part>_on <part>_right a_<more> a_breath a_doddl and_right arm_up at_the feel_<more> for_a hold_a if_its
        if_that it_onto knee_<place> last_<num> lift_the one_<part> rock_it the_heel the_last top_<part> try_it
        your_<harm> your_head your_toe
      `,
    ],
    [
      0.2,
      `
        0_<part> 0_<place> 0_and 0_leg <attend>_brav <attend>_each <attend>_good <attend>_its <attend>_ive
        <attend>_leg <attend>_nobody <attend>_on <attend>_pain <attend>_past <attend>_that <attend>_ther
        <attend>_well <attend>_youv <chat>_after <chat>_again <chat>_backward <chat>_bend <chat>_down <chat>_drop
        <chat>_eight <chat>_foot <chat>_for <chat>_keen <chat>_laugh <chat>_might <chat>_one <chat>_out
        <chat>_pres <chat>_said <chat>_set <chat>_show <chat>_stead <chat>_the <chat>_to <chat>_two <chat>_use
        <chat>_walk <do>_a <do>_another <do>_at <do>_behind <do>_both <do>_each <do>_further <do>_if <do>_it
        <do>_one <do>_two <do>_with <far>_and <far>_at <far>_behind <far>_down <far>_further <far>_if <far>_off
        <far>_push <far>_thre <far>_version <harm>_as <harm>_side <harm>_without <ill>_side <kit>_a <kit>_back
        <kit>_on <kit>_when <less>_b <less>_cheat <less>_easy <less>_kind <less>_left <less>_of <less>_you
        <more>_a <more>_and <more>_ankl <more>_back <more>_folk <more>_for <more>_if <more>_in <more>_into
        <more>_is <more>_it <more>_let <more>_of <more>_out <more>_the <more>_thi <more>_thre <more>_version
        <move>_a <move>_another <move>_back <move>_both <move>_further <move>_if <move>_it <move>_one <move>_your
        <not>_befor <not>_cheat <not>_enough <not>_halfwa <not>_hold <not>_of <num>_backward <num>_bell
        <num>_feel <num>_finger <num>_hand <num>_leg <num>_length <pace>_down <pace>_for <pace>_the <pace>_them
        <pace>_twic <part>_acros <part>_an <part>_as <part>_at <part>_cross <part>_float <part>_fold <part>_foot
        <part>_further <part>_long <part>_lower <part>_only <part>_out <part>_sideway <part>_slow <part>_together
        <part>_up <part>_weight <place>_closer <place>_foot <place>_if <place>_leg <place>_on <place>_past
        <place>_straight <place>_ther <place>_your <settle>_another <settle>_backward <settle>_both <settle>_down
        <settle>_from <settle>_of <settle>_out <settle>_the <settle>_them <settle>_your <swap>_at <swap>_band
        <swap>_between <swap>_each <swap>_fingertip <swap>_hand <swap>_hold <swap>_it <swap>_peopl <swap>_strap
        <take>_a <take>_from <take>_further <take>_right <take>_the <take>_together <take>_your <wrong>_on
        a_<air> a_<do> a_<kit> a_<less> a_<move> a_<num> a_<pace> a_<settle> a_beat a_challeng a_count a_feather
        a_hot a_jump a_medicin a_plat a_rest a_second a_singl a_thumb abov_the acros_to add_<part> add_a
        admir_the after_<harm> after_<ill> after_troubl air_with an_<far> an_archer an_inch and_<far> and_admir
        and_paus ankl_<kit> ankl_weight another_<num> another_<part> another_five another_foot anybod_find
        anybod_want anyon_who are_<more> are_past arm_<attend> arm_<more> arm_fold arm_if arm_over arm_to as_well
        at_all at_five b_<do> back_<part> back_foot back_past backward_<place> backward_on bad_side bag_of
        balanc_<swap> beat_at been_do befor_<chat> befor_week bell_<more> bell_up bend_a between_your big_<do>
        big_<kit> big_<move> big_step bit_<attend> bit_<do> bit_<move> bit_if bit_lower black_<kit> black_band
        blue_peopl both_<part> both_leg both_palm braver_one bum_asleep can_<chat> can_<do> can_<move>
        can_<settle> cant_<wrong> cant_cheat car_your chok_<more> chok_<place> chok_up clos_your count_them
        crank_it cros_your cross_<place> cross_on cushion_between do_it doubl_<pace> doubl_time down_and down_to
        drag_the draw_a driv_the drop_<part> drop_<place> drop_back each_<pace> each_time earn_its easy_<settle>
        empt_the feel_<chat> feel_<pace> feel_brav feel_good feet_<more> feet_<place> feet_further feet_on
        feet_right feet_together finger_<place> finger_on fingertip_<far> fingertip_only five_<place> five_on
        floor_if floor_whil folk_<swap> foot_<far> foot_<move> foot_float foot_hover foot_off foot_sideway
        foot_touch for_<more> for_it for_more for_my for_the from_<place> full_<do> full_<move> full_version
        further_<part> further_<place> further_back further_out get_horribl get_the go_<pace> go_again
        go_backward go_of go_quicker good_<part> good_<settle> good_foot got_<more> got_more got_the grab_the
        halfwa_<place> halfwa_down hand_<place> hand_<wrong> hand_at hand_away hand_cross hand_if hand_in
        hand_out head_<attend> head_<pace> head_slow heel_<place> heel_off heel_on hook_your hot_paddl hover_it
        hover_the if_ive if_nobody if_ther if_youv in_a in_closer in_the in_you initial_<place> initial_in
        instead_of is_<place> is_easy is_in is_to it_<attend> it_<do> it_<more> it_<move> it_<not> it_<swap>
        it_at it_dull it_get it_harder it_longer it_lower it_meaner it_nastier it_on it_spicier it_tougher
        it_with it_without its_<not> its_a its_bor its_fly its_further its_keep its_noth ive_said jump_it
        keen_one kilo_<more> kilo_<place> kilo_more kne_and kne_go kne_higher kne_if knee_<more> knee_acros
        knee_up last_0 last_<take> last_one last_set last_two late_<more> late_one late_stag later_<place>
        lean_away leg_<attend> leg_<place> leg_<settle> leg_arm leg_at leg_go leg_out leg_right leg_straight
        let_<chat> let_<settle> let_go let_the level_thre lift_<num> lift_one lift_your like_<harm> like_<ill>
        like_pain long_<place> long_on long_past longer_leg loop_<place> loop_down lower_<attend> lower_down
        lower_if make_it march_your me_and medicin_<kit> medicin_ball more_<swap> more_of next_<more> no_<attend>
        no_<part> no_<swap> no_hand nobody_sit not_<far> not_<less> not_befor not_enough of_0 of_<num> of_<part>
        of_<swap> of_each of_rice of_two of_weight off_<swap> off_the on_<num> on_each on_it on_one on_the
        on_your once_<chat> once_your one_<far> one_by one_foot one_hand only_if onto_the onto_your
        opposit_<part> opposit_elbow opposit_hand option_b or_<do> or_<move> or_<settle> or_drag other_<part>
        other_elbow other_knee out_<attend> out_straight out_until over_0 over_<num> over_to over_your past_the
        past_your paus_for paus_it paus_twic pike_it plat_on plent_<chat> plent_<more> plent_left point_behind
        progression_is pull_on push_ups push_with put_your reach_the rice_<place> right_<place> right_out
        right_under same_split second_<place> second_down second_in see_<attend> see_if shift_<place> shift_over
        shoulder_at shuffl_another side_to singl_<part> singl_hand singl_leg slid_the slow_the somebody_smil
        sore_leg spik_<place> split_<attend> split_as squeez_it stand_<part> start_from step_<part> step_back
        step_it stop_<chat> stop_<far> stop_for stop_halfwa straight_leg straighten_both strap_a stronger_<chat>
        stronger_folk swap_at swap_each take_it taller_<do> taller_<kit> taller_<move> taller_step ten_feel
        ten_kilo that_<move> that_an that_is the_<air> the_<chat> the_<far> the_<harm> the_<ill> the_<part>
        the_<settle> the_<take> the_air the_ankl the_bag the_balanc the_black the_cone the_cooler the_delux
        the_dumbbell the_full the_game the_heavier the_hole the_kneecap the_operat the_opposit the_other
        the_second the_taller the_tank the_toe the_tray the_view the_water the_weight the_wors them_<place>
        them_in ther_0 ther_<num> ther_for thi_<not> thi_<place> thi_<swap> thi_by thicker_<kit> thicker_band
        third_month thumb_<place> thumb_under thumb_width to_<far> to_<kit> to_<more> to_<move> to_make to_side
        to_step toe_as toe_off toe_to together_<attend> together_if too_<less> too_<more> too_<pace> too_easy
        too_kind top_arm top_for top_leg turn_the turn_your two_<part> two_backward two_bell two_finger
        two_length up_into up_the use_<part> use_a use_fingertip use_two version_is wait_<less> wait_too walk_in
        want_<more> want_it want_more want_to way_through week_<num> week_eight weight_of weight_on weld_<place>
        weld_down when_that when_thi when_you whil_<chat> whil_you who_are who_bor with_<num> with_a with_one
        without_a wors_your writ_your you_<do> you_<move> you_<not> you_dont you_drop you_keen you_might you_pres
        you_walk you_want your_<attend> your_<not> your_after your_ahead your_ankl your_bend your_chest your_ear
        your_even your_eye your_feel your_initial your_laugh your_not your_solid your_stead your_thumb your_up
      `,
    ],
    [
      -0.2,
      `
        <air>_out <attend>_a <attend>_at <attend>_if <attend>_it <attend>_to <chat>_brav <chat>_do <chat>_get
        <chat>_go <chat>_it <chat>_need <chat>_reach <far>_you <kit>_and <kit>_under <kit>_with <less>_the
        <more>_more <more>_one <more>_than <more>_to <move>_them <not>_it <not>_reach <num>_at <num>_for <num>_is
        <num>_more <num>_of <num>_second <pace>_and <pace>_on <part>_and <part>_are <part>_down <part>_flat
        <part>_stay <place>_as <place>_like <place>_of <place>_off <settle>_back <settle>_on <settle>_right
        <swap>_not <swap>_one <swap>_under <swap>_weight <take>_for <take>_it a_<far> a_<harm> a_<part> a_few
        a_minut a_time all_the and_<do> and_<move> and_<place> and_<take> and_just arm_at at_a back_<place>
        back_of becaus_<attend> been_<chat> bend_the bit_<num> bit_one both_hand breath_<place> by_your
        com_<place> do_<not> do_<num> do_not dont_<do> dont_<move> each_<part> end_<place> feel_it foot_<place>
        for_thi from_the front_of get_<place> got_<num> got_a hand_<more> hand_on hand_to hand_up have_to
        head_<place> hip_<place> if_it ill_<settle> ill_take in_<num> in_one is_<num> it_<chat> it_<less>
        it_<pace> it_<place> it_in it_is it_off its_the just_<do> left_<part> leg_off let_it lift_it like_a
        lower_<part> next_<num> of_the off_it on_<attend> on_if on_to one_<more> one_more open_the other_<num>
        other_foot other_leg other_one over_the right_<part> shak_the take_a take_your the_<attend> the_<do>
        the_<kit> the_<move> the_<pace> the_ball the_bar the_ceil the_first the_foot the_hip the_left the_leg
        the_right the_seat the_shoulder the_side they_<not> thi_<num> thi_one through_the to_<do> to_a
        toe_<place> too_<far> top_of two_<chat> under_the under_your up_to whol_<part> with_the you_<chat>
        you_<far> you_<take> you_get you_need you_reach your_<air> your_<kit> your_<more> your_<settle> your_back
        your_brav your_elbow your_fanc your_hip your_leg your_thigh your_wrist
      `,
    ],
    [-0.4, '<attend>_the for_<num>'],
  ],
  phrase: [
    [1.4, 'harder-sure'],
    [0.4, 'easier-hint harder-likely setup-likely'],
    [0.2, 'easier-likely equipment-likely equipment-sure execution-sure setup-sure'],
    [
      -0.2,
      `
        breathing-sure caution-hint dose_only easier-sure fault-hint fault-sure purpose range-hint range-sure
        tempo-likely
      `,
    ],
    [-0.4, 'caution-sure execution-likely fault-likely focus-hint focus-likely'],
    [-0.6, 'chat empty_clauses focus-sure'],
  ],
  start: [
    [0.4, '<attend>_<chat> <more>_<chat> rock_it show_off turn_your_head'],
    [
      0.2,
      `
        0_centimetr 0_leg 0_second_down <attend>_<more> <chat>_<more> <chat>_<num> <chat>_<place> <do>_<num>
        <less>_<less> <less>_<more> <less>_<pace> <more>_<num> <not>_<chat> <not>_<far> <not>_<part> <not>_<swap>
        <num>_<part> <num>_<swap> <part>_<wrong> <place>_<num> <place>_<part> <swap>_<part> <swap>_<swap>
        <take>_<place> a_plat a_plat_on and_right anybod_find anybod_find_it anybod_want anyon_who anyon_who_bor
        arm_and arm_and_leg arm_back arm_back_past arm_fold arm_long_past as_if_ther bend_a bend_a_bit blue_peopl
        br_the_kne braver_one car_your car_your_water cros_your_arm do_it dont_let_the draw_a driv_the
        driv_the_other drop_to_one empt_the empt_the_tank feet_together feet_together_if float_one_foot for_the
        for_the_full get_the get_the_heel go_backward go_backward_on go_for go_for_the go_out go_to
        grab_a_medicin half_a_pace hand_cross hand_cross_on hold_a hold_the_dumbbell hook_your hook_your_thumb
        hover_it hover_the if_its if_its_a if_its_fly if_its_noth if_nobody if_nobody_sit if_that if_ther
        if_you_want if_your_bend if_youv it_get it_get_horribl its_further keen_one keep_the_same kne_go
        kne_go_quicker knee_to knee_to_the last_0 last_0_metr late_one late_stag leav_the_second let_go_of
        let_the let_the_heel level_thre lift_the lift_the_back lift_the_toe lift_your lift_your_toe longer_leg
        lose_the_tray lower_with_one march_your march_your_feet no_hand not_befor not_befor_week once_your
        one_foot_float only_if_ive option_b over_0 paus_for paus_for_a paus_it paus_twic pike_it pull_it_down
        pull_on pull_on_it push_with push_with_two put_the put_your reach_the rest_your_hand round_two_length
        see_if see_if_you send_one_arm shift_over shift_over_to shuffl_another shuffl_another_foot side_to
        side_to_side slid_the_loop slow_the slow_the_way some_of_you somebody_smil stay_down stay_down_ther
        stop_halfwa stop_halfwa_down straight_leg straighten_both straighten_the_leg stronger_folk swap_at
        swap_at_half take_it take_one that_an that_an_archer that_the_delux the_sore the_sore_leg the_whol_time
        ther_0 ther_0_in to_step to_step_it toe_to toe_to_your too_easy top_arm top_arm_to top_leg top_leg_up
        try_it turn_out turn_out_until turn_your two_backward up_the use_two want_it want_more weld_down when_you
        you_can you_cant_cheat you_keen you_keen_one you_might
      `,
    ],
    [
      -0.2,
      `
        <attend>_<place> <chat>_<part> <do>_<attend> <more>_<place> <not>_<do> <num>_<more> <pace>_<part>
        <part>_<chat> <part>_<do> <part>_<move> <place>_<place> <settle>_<attend> <settle>_<place> <swap>_<more>
        <swap>_<place> bend_the both_hand hand_on if_it if_you if_you_have lift_it lift_the_other
        one_foot_forward straighten_the_arm take_a
      `,
    ],
  ],
  word: [
    [0.6, '0 blu bor feel further if last leg paus show try'],
    [
      0.4,
      `
        add ankl arm bag bell doddl feet for go hand harder hover lift longer noth option past singl straighten
        without
      `,
    ],
    [
      0.2,
      `
        abov acros admir advanc air another anybod anyon archer at b backward balanc band beat been black blue
        bottl braver breez callum can car centimetr challeng chok clap clever clos closer cone confident cooler
        crank creep cros cross delux doubl draw driv dull dumbbell earn easy faster finger fingertip float fly
        fold folk foot fresh full game good got halfwa head heavier heel hold hole horribl inch initial instead
        it ive jo jump keen kilo kind kneecap l late load loop lower mayb meaner medicin might more narrow
        nastier off on one onto operat pace paddl pike plat progres progression puls put quicker red rest rice
        right rock said second shorter slight slow solid spar spic spicier stag stick strap stronger tank thicker
        thos thre thumb to toe together too top tougher tray troubl turn two use version view wait want water
        weld when whil who wors
      `,
    ],
    [
      -0.2,
      `
        about all along and any apart as ask away back ball be becaus bel belt bend bent bit br breath ceil com
        come dead do doe dont down drop elbow ever fast few flat floor forearm fort four get give goe gone had
        hard hear heav help here high ill in into itll its keep leav left less lighter like line littl lot low
        mat middl minut near neck need next nice no nobod of old only open or other over pick plank pleas point
        position pressur puff pull quick quiet read rib ring roll run same say seat set shak short should sid sit
        skip slack small smooth so someth spin squeez stand stay stiff switch tall tap than that then they thi
        thigh thirt till toda toward towel twent under us walk warm we wee were what wher whol will wob wrist you
        youll your
      `,
    ],
    [-0.4, 'are bar first i just not shoulder up'],
    [-0.6, 'hip'],
  ],
} as const satisfies CueWeights
