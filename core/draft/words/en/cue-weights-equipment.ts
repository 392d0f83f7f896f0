/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind equipment; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EQUIPMENT_WEIGHTS = {
  bias: [[-0.8, 'yes']],
  class: [
    [0.8, 'swap'],
    [0.4, 'kit'],
    [-0.2, 'far harm move not num wrong'],
    [-0.4, 'air chat do pace part place'],
  ],
  conditional: [[0.4, 'yes']],
  first: [
    [0.4, 'a fold'],
    [
      0.2,
      `
        <swap> all are band block check choos doubl dry everybod flat glov grab hand have heel lift loop red stag
        swap switch take thick trainer use wear whatever you
      `,
    ],
    [
      -0.2,
      `
        0 <air> <do> <harm> <kit> <less> <move> and bar belt do dont it keep kne let like stand step the your
        youv
      `,
    ],
    [-0.4, '<attend> <chat> <far> <not> <num> <pace> <part> <place> its that'],
  ],
  given: [
    [
      0.2,
      `
        <do> <kit> <take> cannit dumbbell foam grab have hold it loop mat much reach tie too up use weight
      `,
    ],
    [-0.2, '<wrong> a do go off youv'],
  ],
  last: [
    [0.4, 'dumbbell'],
    [
      0.2,
      `
        ball bike blue box corner door edge else fifteen floor grip here ideal like medium need nice noth now pad
        pick plat pleas reach read rice sens set slip sore stick stiffer strap strong them thi trainer twent
        weight wet with
      `,
    ],
    [
      -0.2,
      `
        0 again and away back bell belt breath chair down goe hold it kne mat off stand step tall time top towel
        wall way
      `,
    ],
  ],
  length: [
    [0.2, '8-12 long'],
    [-0.4, '5-7'],
    [-0.6, '3-4'],
    [-1.2, '1-2'],
  ],
  pair: [
    [0.6, 'the_<num>'],
    [
      0.4,
      `
        <attend>_the <kit>_if <num>_kilo <swap>_if <swap>_on <swap>_or <swap>_the a_<kit> a_<pace> a_<swap>
        are_<less> are_<swap> bag_<place> bit_of for_thi no_<kit> or_<swap> the_<far>
      `,
    ],
    [
      0.2,
      `
        0_<swap> <attend>_dumbbell <attend>_hold <attend>_its <attend>_one <attend>_pair <attend>_to
        <attend>_youv <chat>_barefoot <chat>_brav <chat>_came <chat>_cannit <chat>_do <chat>_else <chat>_like
        <chat>_need <chat>_only <chat>_squat <chat>_weigh <chat>_would <chat>_you <do>_by <do>_the <do>_to
        <do>_your <far>_ball <far>_door <far>_got <far>_plat <harm>_chair <kit>_do <kit>_doe <kit>_for <kit>_here
        <kit>_is <kit>_lose <kit>_over <kit>_round <kit>_so <kit>_that <kit>_too <kit>_under <kit>_up <kit>_use
        <kit>_will <kit>_without <less>_bell <less>_is <less>_noth <less>_reach <less>_what <more>_it <more>_pair
        <more>_the <more>_to <move>_by <move>_goe <move>_to <not>_arm <not>_bench <not>_broom <not>_else
        <not>_need <not>_reach <num>_bench <num>_centimetr <num>_set <num>_what <pace>_floor <pace>_if
        <pace>_pair <part>_at <part>_if <part>_is <part>_lift <part>_slip <part>_sore <part>_weight <place>_block
        <place>_door <place>_or <place>_plac <place>_sho <place>_what <settle>_a <settle>_barefoot <settle>_for
        <settle>_goe <settle>_it <settle>_on <settle>_someth <swap>_a <swap>_are <swap>_arm <swap>_band
        <swap>_bell <swap>_broom <swap>_cushion <swap>_doe <swap>_dumbbell <swap>_fifteen <swap>_help <swap>_hold
        <swap>_mak <swap>_of <swap>_off <swap>_one <swap>_pair <swap>_round <swap>_under <swap>_weight <take>_it
        <take>_on <take>_someth <take>_yourself <wrong>_sho a_<far> a_<num> a_<place> a_<take> a_bag a_belt a_box
        a_carrier a_hard a_heav a_heavier a_kitchen a_light a_pair a_roll a_rucksack a_step a_ten a_time a_towel
        a_wide about_<num> about_five all_<chat> all_you anchor_<more> anchor_<place> anchor_up and_a and_noth
        and_use are_<not> are_fine are_not arm_at at_<swap> at_home at_mid at_your bag_under band_<attend>
        band_if band_lose bar_<swap> bare_<part> bare_<take> bare_feet befor_your bell_for bell_on bench_<settle>
        bench_and blue_<num> blue_one both_are bottl_of brought_them came_with can_<settle> can_<swap> can_<take>
        can_hold cannit_<settle> cannit_tie carrier_<swap> carrier_bag centimetr_<kit> centimetr_box chair_<not>
        chair_<swap> chair_is chair_will chair_without chalk_<place> chalk_in cushion_<attend> cushion_on
        do_fifteen doe_it doubl_it dumbbell_if elbow_<harm> elbow_<ill> elbow_sore else_the everybod_else
        five_<swap> five_kilo flat_<swap> flat_sho floor_will fold_<more> fold_<place> fold_the fold_up fold_your
        for_a for_about for_most get_yourself glov_<place> glov_on go_<swap> go_barefoot go_for got_lighter
        grab_someth grip_goe half_what hand_on hand_slip have_a have_the heav_<num> heav_dumbbell heavier_pair
        heel_<wrong> heel_lift heel_off hip_is hold_for hold_it i_would if_its if_the if_your if_youv in_<take>
        in_plac in_the is_<attend> is_<chat> is_<more> is_<pace> is_hard is_nice is_strong it_<place> it_is
        it_now it_on it_start it_than its_<harm> its_wet jacket_<place> jacket_under kilo_<kit> kitchen_<kit>
        kitchen_chair kne_is knee_<far> knee_height let_<chat> let_you lie_on lift_<swap> lift_sho light_pair
        lighter_<kit> littl_<kit> littl_plat loop_a lose_their low_<kit> mak_a mat_<more> mat_<place> mat_over
        mat_up need_<not> need_a need_noth no_broom not_need not_them noth_else of_<swap> of_floor of_water
        off_<place> off_for on_<kit> on_block on_or on_what one_<kit> one_<place> one_bench one_is one_stiffer
        only_got or_<more> or_<not> or_<place> or_a or_bare or_chalk or_heavier or_off or_on or_stick pair_for
        pair_of plac_of plat_under proper_<attend> proper_<pace> proper_light put_<place> put_on red_the
        replac_them roll_<more> roll_<place> roll_up round_the seat_<attend> seat_if sho_are sho_help sho_or
        small_<kit> small_<swap> so_that sock_<place> sock_on sock_pleas someth_<attend> someth_<chat>
        someth_heav someth_with someth_you squash_<swap> squash_trainer squat_with stag_<num> stag_thre stand_it
        start_at step_by strap_<attend> strap_if sturd_<kit> sturd_chair swap_the swap_to take_the tall_<num>
        tall_one ten_<far> ten_<swap> ten_centimetr ten_kilo than_<chat> than_you that_<chat> that_<part>
        that_<settle> that_it that_knee that_let the_<attend> the_<less> the_<not> the_<settle> the_<swap>
        the_anchor the_bar the_bell the_bike the_blue the_corner the_edge the_fifteen the_glov the_green the_heav
        the_lighter the_low the_medium the_small the_stiffer the_stop the_tall the_ten the_tub the_twent
        their_<attend> their_<do> their_stretch them_big thi_with thre_<chat> thre_set tie_it time_<attend>
        time_if to_<chat> to_you trainer_or two_<attend> two_<swap> two_heav under_them under_your up_the up_to
        use_a use_that use_the want_<more> want_more what_<chat> what_let what_you whatever_<chat> whatever_you
        whatever_youv wide_<kit> wide_door will_<do> will_<move> without_<part> would_<chat> would_<settle>
        yellow_for you_<far> you_<less> you_<move> you_<swap> you_came you_cannit you_do you_like you_need
        you_only you_put you_squat you_weigh you_will your_<more> your_brav your_crutch your_heel your_leg
        your_mat your_shoulder your_wrist yourself_a youv_<attend> youv_<far> youv_brought youv_only youv_pick
        youv_sens
      `,
    ],
    [
      -0.2,
      `
        <attend>_a <attend>_if <chat>_a <chat>_are <chat>_can <chat>_go <do>_on <kit>_in <kit>_on <kit>_with
        <less>_weight <move>_it <not>_a <num>_of <part>_up <place>_of <place>_you <settle>_to <swap>_and
        <take>_the a_<chat> a_<part> a_book and_<do> and_<move> as_<attend> at_the bell_if could_<swap>
        feet_<place> for_<num> its_<attend> its_not lighter_<part> lighter_weight like_a of_<num> of_your off_the
        on_the or_<num> or_<settle> put_a stay_<place> the_<harm> the_<kit> the_<more> the_<move> the_<place>
        the_bench the_chair the_cushion the_other the_towel the_wall the_way the_weight tin_<place> to_<settle>
        to_<swap> to_use to_your up_<place> want_to when_<chat> when_you with_a with_the you_<chat> you_are
        you_can you_want your_<part> your_kne
      `,
    ],
    [-0.4, 'the_<part>'],
  ],
  phrase: [
    [1, 'equipment-sure'],
    [0.4, 'equipment-hint setup-hint'],
    [0.2, 'easier-hint easier-likely easier-sure equipment-likely'],
    [
      -0.2,
      `
        breathing-likely breathing-sure chat execution-hint fault-sure focus-hint focus-likely range-hint
        range-likely range-sure
      `,
    ],
    [-0.4, 'dose_only execution-likely fault-likely focus-sure tempo-likely tempo-sure'],
    [-0.6, 'empty_clauses'],
  ],
  start: [
    [
      0.2,
      `
        <chat>_<less> <chat>_<swap> <more>_<num> <move>_<more> <not>_<kit> <not>_<swap> <part>_<harm>
        <part>_<ill> <part>_<wrong> <place>_<swap> <settle>_<swap> <swap>_<kit> <swap>_<place> <wrong>_<swap>
        a_belt a_bit_of a_cushion a_pillow a_roll all_you band_lose band_lose_their cushion_on cushion_under_the
        elbow_sore everybod_else everybod_else_the flat_sho fold_up fold_up_a fold_your fold_your_mat
        get_yourself get_yourself_a glov_on glov_on_or grab_someth grab_someth_heav grip_go hand_on hand_on_the
        hand_slip have_a heel_lift heel_off heel_off_the i_would if_the if_you_cannit if_your if_your_heel
        its_the_bar leav_the_bell lift_sho lift_sho_help littl_plat loop_a lose_the_glov no_broom one_arm
        one_arm_at one_bench or_a or_heavier or_on proper_light red_the red_the_stiffer slid_the slid_the_anchor
        stag_thre stand_it stand_it_on strap_if swap_the swap_to swap_to_the take_the the_low the_low_step
        trainer_or trainer_or_bare two_heav two_heav_dumbbell up_to use_the whatever_you whatever_you_came
        whatever_youv whatever_youv_pick you_can_do you_need you_need_noth you_will your_on your_on_the
      `,
    ],
    [
      -0.2,
      `
        <chat>_<chat> <part>_<place> <settle>_<place> <swap>_<not> <take>_<place> hold_the its_a
      `,
    ],
  ],
  word: [
    [0.6, 'need sho use'],
    [
      0.4,
      `
        are chalk dumbbell fold glov grip if kilo light nice or pair someth wear without
      `,
    ],
    [
      0.2,
      `
        anchor bag ball band bar bare barefoot bean bench bike blanket block blu blue bottl box brav but came
        cannit carrier centimetr check choos cord corner crutch cushion doe doubl dry edge else fifteen fiv flat
        floor for grab green hard have heav heavier heel here hug ideal instead is jacket kitchen lift lighter
        loop lose low mak mat medium most noth on palm pick plat pleas reach red replac roll round rower rucksack
        sens slid slider slip small so sock sore spik stag stiffer stretch sturd switch take ten than their them
        thick tie tin too trainer tub under water wedg weigh wet what whatever will with would wrap yellow you
      `,
    ],
    [
      -0.2,
      `
        0 an as away back be been behind belt book breath brick by can car come dont end even ever far feel feet
        foot forward four from front get go half head in into it its just keep kne knee leg like longer look me
        middl mov my no nobody off other peopl pillow pull push put rest right ring second see side sit some
        squeez stand stay step still stop straight the ther thes they theyr thigh toda toe top turn walk wall way
        when wher who whol wobbl your
      `,
    ],
    [-0.4, 'and do down out that to'],
  ],
} as const satisfies CueWeights
