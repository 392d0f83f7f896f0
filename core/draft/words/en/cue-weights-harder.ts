/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind harder; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const HARDER_WEIGHTS = {
  bias: [[-0.8, 'yes']],
  class: [
    [1, 'more'],
    [0.2, 'attend do part settle'],
    [-0.2, 'air harm ill less not place'],
    [-0.4, 'wrong'],
  ],
  conditional: [[0.4, 'yes']],
  first: [
    [0.6, '<more> red'],
    [0.4, '0 anybod cros feel go lift option rock show straighten try'],
    [
      0.2,
      `
        <do> <far> <less> arm bell bor draw feet foot for got grab hook hover if knee lose mayb once past paus
        pike put reach see slow somebody stop straight stronger to too top trad turn use want when
      `,
    ],
    [
      -0.2,
      `
        <air> <harm> <kit> <move> <not> <place> <settle> <swap> bend br come dont down find have i it keep kne
        let lower make not pick push same sit stay the thi up walk we youll your
      `,
    ],
    [-0.4, '<chat> <part> its that'],
  ],
  given: [
    [0.4, 'doddl'],
    [
      0.2,
      `
        <attend> <chat> <more> <move> a arm bag balanc bell bor boss breez cheap fly full good got hold is its
        lift nobody off oh on simpl someon stubborn that the version whil youv
      `,
    ],
    [
      -0.2,
      `
        0 <less> <num> <part> <place> <swap> <wrong> back do just lot or take too up you your
      `,
    ],
  ],
  last: [
    [0.8, '0'],
    [0.6, 'red'],
    [0.4, 'bor cooler doddl'],
    [
      0.2,
      `
        back bag ball bell bench body chest elbow end feather float fly foot fresh further hand hover inch it
        jump leg mark off oh on other pace paddl resistanc rude second side simpl slid smil solid strap thes
        together tougher tray tricep tuck twic
      `,
    ],
    [-0.2, 'again away brav feet hip in knee stand step tall to up'],
  ],
  length: [
    [-0.2, '5-7 8-12'],
    [-0.6, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.6, '<part>_on arm_<place> one_<part>'],
    [
      0.4,
      `
        <attend>_its <do>_the <far>_the <not>_hand <part>_float <part>_off a_<pace> a_<settle> a_doddl a_second
        arm_<more> arm_up cros_your feel_<more> feet_<place> for_a if_<chat> if_its last_<num> let_<settle>
        let_go lift_the rock_it show_off slow_the take_it the_cooler the_heel your_<harm>
      `,
    ],
    [
      0.2,
      `
        0_<place> 0_and 0_in <air>_with <attend>_each <attend>_good <attend>_leg <attend>_long <attend>_nobody
        <attend>_on <attend>_that <attend>_ther <attend>_theyr <attend>_youv <chat>_0 <chat>_again
        <chat>_backward <chat>_boss <chat>_can <chat>_come <chat>_dont <chat>_drop <chat>_feel <chat>_lower
        <chat>_mark <chat>_might <chat>_one <chat>_slid <chat>_solid <chat>_squash <chat>_to <do>_a <do>_at
        <do>_aunti <do>_both <do>_gent <do>_thos <do>_your <far>_and <far>_further <far>_mark <far>_push
        <far>_version <far>_week <harm>_of <harm>_without <kit>_on <kit>_when <less>_a <less>_b <less>_to
        <less>_way <less>_you <more>_a <more>_and <more>_at <more>_back <more>_behind <more>_folk <more>_if
        <more>_is <more>_let <more>_peopl <more>_put <more>_the <more>_time <more>_version <move>_a <move>_aunti
        <move>_back <move>_both <move>_gent <move>_it <move>_the <move>_thos <move>_your <not>_for <not>_halfwa
        <not>_hold <not>_mix <num>_and <num>_bell <num>_finger <num>_foot <num>_hand <num>_in <num>_on <num>_way
        <pace>_at <pace>_foot <pace>_of <pace>_the <pace>_twic <part>_by <part>_fold <part>_foot <part>_for
        <part>_further <part>_if <part>_instead <part>_out <part>_slow <part>_together <part>_up <part>_weight
        <place>_at <place>_down <place>_foot <place>_if <place>_leg <place>_straight <place>_ther <place>_your
        <settle>_a <settle>_again <settle>_aunti <settle>_backward <settle>_body <settle>_them <settle>_two
        <settle>_your <swap>_a <swap>_at <swap>_go <swap>_hand <swap>_it <swap>_mix <swap>_of <swap>_on <swap>_to
        <take>_a <take>_further <take>_on <take>_them <take>_together <take>_your a_<air> a_<do> a_<kit> a_<more>
        a_<move> a_<take> a_bag a_band a_beat a_breath a_count a_feather a_hot a_jump a_load a_look a_medicin
        a_nana a_pace a_plat a_rest a_thumb a_tuck add_<part> add_a advanc_peopl again_<not> air_with and_0
        and_<far> and_<num> and_<settle> and_call and_hang and_have and_right ankl_<kit> ankl_weight
        anybod_<more> anybod_bor anybod_find anybod_fresh are_<more> are_cheap arm_<attend> arm_fold arm_off
        arm_on arm_over at_<less> at_<num> at_half at_the at_your back_<part> back_down back_foot
        backward_<place> backward_on bag_of beat_at bell_<more> bell_<place> bell_in boss_it both_<part> both_arm
        both_leg both_palm bottom_<more> bottom_up brought_<num> brought_one by_a can_<chat> can_<do> can_<move>
        can_<settle> can_go come_<more> come_up confident_one count_of cros_<part> cros_aunti cros_body do_it
        doubl_<pace> doubl_time down_as down_to draw_a draw_your drop_<place> drop_to each_<pace> each_end
        each_time earn_it easy_<settle> fac_<chat> fac_you feel_<chat> feel_<pace> feel_good feet_<far>
        feet_further feet_on feet_out feet_together find_it finger_<place> finger_on float_off floor_whil
        fold_<attend> fold_like folk_<swap> foot_<do> foot_<less> foot_<not> foot_<swap> foot_float foot_hover
        foot_instead for_<more> for_it for_more for_the for_thes from_side full_<do> full_<move> full_version
        further_<place> gent_from go_again go_backward go_out good_<settle> got_the grab_a grab_the grip_gone
        half_<place> half_a half_on half_way halfwa_and halfwa_mark hand_along hand_by have_them head_<pace>
        head_and head_slow heel_float heel_off heel_on hold_a hold_on hook_your hover_the if_nobody if_that
        if_ther if_theyr if_your if_youv in_the in_ther in_your initial_<place> initial_in initial_with
        is_<place> is_bor is_in is_to it_<attend> it_<far> it_<more> it_<move> it_<not> it_<swap> it_<take> it_at
        it_dull it_onto it_rude it_tougher it_without its_a its_fly its_noth jump_it kne_and knee_as knee_to
        last_one later_<place> leg_<place> leg_float leg_out let_<chat> let_the lift_<num> lift_one lift_your
        load_<swap> load_rucksack long_on lose_the lower_<place> lower_down make_it medicin_<kit> medicin_ball
        more_<place> nana_<place> nana_in narrow_your next_<more> no_<attend> no_<part> no_hand no_mix nobody_sit
        of_0 of_rest of_sugar off_<swap> on_<num> on_each on_for on_one on_the on_your one_foot one_hand
        onto_your opposit_<part> opposit_elbow option_b or_<settle> or_cros or_go out_straight out_ther palm_fac
        past_<chat> past_week paus_twic pike_it plat_<place> plat_on pres_the progression_is push_ups put_your
        reach_<far> reach_<more> reach_the rock_<pace> rock_gent rucksack_<place> rucksack_on same_<pace>
        same_split second_<part> second_foot see_<attend> see_if side_to six_are slid_a some_resistanc
        somebody_smil someon_to spic_it split_<attend> split_as stand_foot step_<part> step_back step_it
        still_<place> still_down stop_<chat> stop_<far> stop_for stop_halfwa straight_<part> straight_leg
        straighten_both straighten_that straighten_thos stronger_<chat> stronger_folk stubborn_oh sugar_to
        swap_at that_is that_leg that_simpl that_stubborn the_<air> the_<chat> the_<far> the_<pace> the_<part>
        the_<swap> the_<take> the_air the_bag the_balanc the_bench the_feet the_full the_grip the_heavier the_kne
        the_last the_lower the_opposit the_same the_second the_strap the_toe the_tray the_tricep the_wrist ther_0
        ther_<num> ther_someon theyr_<attend> theyr_still thi_<not> thi_<place> thi_<swap> thos_<part> thos_leg
        thumb_for thumb_under to_<far> to_<kit> to_<more> to_<move> to_make to_put to_reach to_side to_step
        toe_befor toe_of top_<part> top_leg try_it turn_your two_<kit> two_<part> two_bell two_finger
        under_<attend> under_if up_and up_behind up_if use_<num> use_a use_two version_is wait_a want_<more>
        want_more weight_on when_thi whil_<chat> whil_you with_a without_a wrist_<place> wrist_down writ_your
        you_<do> you_<move> you_can you_come you_dont you_drop you_might you_slid you_squash your_<attend>
        your_arm your_boss your_chest your_eye your_feel your_head your_initial your_neighbour your_solid
        your_that your_toe yourself_some youv_brought youv_earn
      `,
    ],
    [
      -0.2,
      `
        <attend>_the <chat>_at <chat>_brav <chat>_it <do>_in <do>_on <far>_your <kit>_and <more>_ther <more>_to
        <num>_more <num>_second <part>_are <part>_in <part>_when <place>_as <place>_to <settle>_on <swap>_if
        <swap>_not <take>_down <take>_it <take>_up a_<chat> a_<harm> a_<place> a_bit a_minut a_time and_<do>
        and_<move> and_<take> arm_<far> at_a been_<chat> behind_<chat> behind_you bend_the both_hand can_<take>
        do_<not> do_not dont_<do> each_<part> find_a foot_<place> for_0 from_the got_a hand_to if_it ill_<settle>
        ill_take in_<num> it_<chat> it_<pace> it_in it_is it_off it_out just_<do> just_<move> kne_<place>
        left_<part> lift_it of_it of_your on_a on_to one_more over_the stay_<place> take_a take_your that_<harm>
        that_<pace> that_stead that_the the_<do> the_<kit> the_<less> the_<move> the_<place> the_ball the_first
        the_front the_knee the_left the_shoulder thi_<num> thi_one to_<chat> toe_<place> under_your up_ther up_to
        you_<attend> you_<chat> you_<take> your_<air> your_<part> your_<take> your_brav your_hand your_hip
        your_kne
      `,
    ],
    [-0.4, '<attend>_it for_<num>'],
  ],
  phrase: [
    [1.4, 'harder-sure'],
    [0.4, 'easier-hint harder-likely setup-likely'],
    [0.2, 'execution-sure setup-sure'],
    [
      -0.2,
      `
        breathing-hint breathing-sure empty_clauses execution-likely fault-hint fault-sure purpose range-hint
        setup-hint
      `,
    ],
    [
      -0.4,
      `
        caution-sure chat easier-sure fault-likely focus-hint focus-likely range-sure tempo-likely
      `,
    ],
    [-0.6, 'focus-sure'],
  ],
  start: [
    [0.4, '<attend>_<chat> <num>_<part> show_off'],
    [
      0.2,
      `
        0_and 0_and_0 <attend>_<attend> <attend>_<more> <do>_<pace> <far>_<chat> <kit>_<more> <kit>_<part>
        <kit>_<place> <more>_<chat> <more>_<num> <move>_<pace> <move>_<part> <not>_<chat> <not>_<far>
        <not>_<part> <part>_<place> <place>_<part> <take>_<place> a_plat a_plat_on and_right anybod_bor
        anybod_find anybod_find_it arm_off arm_off_the arm_out arm_out_in as_if as_if_ther cros_body cros_your
        cros_your_arm draw_a draw_your draw_your_initial drop_to drop_to_one feet_on feet_on_the feet_together
        for_the for_the_full go_backward go_backward_on go_to grab_a grab_a_medicin grab_the half_a half_a_pace
        hand_on_your heel_off heel_off_the hold_a hold_them_up hook_your hook_your_thumb hover_the if_its
        if_its_a if_its_fly if_its_noth if_nobody if_nobody_sit if_six_are if_that_a if_that_simpl if_ther_someon
        if_your_boss if_your_feel if_your_solid if_your_that if_youv keep_the_same knee_to knee_to_the
        leav_the_second lift_one lift_one_foot lift_the lift_the_back lift_the_toe lift_your_toe lose_the no_mix
        one_foot one_foot_float one_foot_off option_b or_go past_week paus_twic pike_it pres_the pres_the_wrist
        put_a_load put_your put_your_heel reach_the rock_gent rock_gent_from rock_it see_if see_if_you
        slid_a_second slow_the slow_the_way somebody_smil squeez_it_for step_back stop_for stop_for_a stop_halfwa
        stop_halfwa_and straight_leg straighten_that straighten_that_leg straighten_the_leg straighten_thos
        straighten_thos_leg stronger_folk swap_at swap_at_half take_it the_other ther_0 ther_0_in to_step
        to_step_it top_leg top_leg_up turn_your turn_your_head two_finger up_the use_a use_two wait_a wait_a_beat
        want_more when_you you_could you_might
      `,
    ],
    [
      -0.2,
      `
        <chat>_<not> <do>_<attend> <do>_<place> <move>_<place> <num>_<more> <num>_<pace> <part>_<attend>
        <part>_<do> <settle>_<place> find_a if_it if_the if_you lift_the_other take_a ther_a
      `,
    ],
  ],
  word: [
    [0.6, 'bor if red'],
    [
      0.4,
      `
        0 add anybod arm bag bell can cooler cros doddl feel feet for further go hover last lift longer off on
        option paus rock show straighten try without
      `,
    ],
    [
      0.2,
      `
        a abov advanc air ankl at aunti b backward balanc barefoot beat bench boss breez by challeng cheap clap
        clos comf confident crank doubl draw earn end eye feather finger float fly folk foot fresh full gent good
        got grab grip half halfwa hand harder head heel hold hot initial it jump leg load lose mark mayb medicin
        might mix more move nana narrow neighbour nobody one onto opposit pace paddl past pike plat progres
        progression put reach resistanc rest rucksack rude second see simpl slow smil somebody someon spic split
        straight stronger stubborn sugar thes thos thumb tir toe together top tougher trad tray tricep twic two
        use version whil writ
      `,
    ],
    [
      -0.2,
      `
        about all and anyth are ask away back bar be behind bel bend between bit br but chang com dead do dont
        down ear eight even face fast few finish first flat floor from front goe hard heav help here high i ill
        in into its keep kne knee lean leav left light like littl look lot me minut neck of only or over pick
        pull rail read rib ring roll round shak sheet shoulder sid sit so someth squat squeez stand start stay
        stead stick switch tall than that the then they thigh thre through till twist under walk we what wher
        whol you youll
      `,
    ],
    [-0.4, 'get hip just not up your'],
  ],
} as const satisfies CueWeights
