/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind equipment; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EQUIPMENT_WEIGHTS = {
  bias: [[-0.8, 'yes']],
  class: [
    [0.8, 'swap'],
    [0.4, 'kit'],
    [0.2, 'less'],
    [-0.2, 'far harm move not num wrong'],
    [-0.4, 'air chat do pace part place'],
  ],
  conditional: [[0.4, 'yes']],
  first: [
    [0.6, 'a'],
    [0.4, 'fold'],
    [
      0.2,
      `
        <more> <swap> all are band block blu chalk choos flat get glov grab if legging lift pleas red skin stag
        swap switch take thick trainer use you
      `,
    ],
    [
      -0.2,
      `
        <air> <attend> <chat> <do> <far> <harm> <kit> <move> <pace> <take> belt do dont it its keep let or put
        stand the your
      `,
    ],
    [-0.4, '<not> <num> <part> <place> that'],
  ],
  given: [
    [0.4, 'it'],
    [
      0.2,
      `
        <do> <kit> <part> <place> <take> cannit doubl dumbbell feet foam hamstring have notic palm reach tie too
        up use weight yell
      `,
    ],
    [-0.2, '<wrong> a on'],
  ],
  last: [
    [0.4, 'dumbbell'],
    [
      0.2,
      `
        ball bare bike blue centimetr corner fifteen fine floor glid grip here ideal like minut need nice over
        pad pinch plat pleas read rice sens set slip sore them thi trainer twent with yell
      `,
    ],
    [
      -0.2,
      `
        again away back bell belt book chair down hip hold it kne knee mat off ther time towel wall
      `,
    ],
  ],
  length: [
    [0.2, '8-12'],
    [-0.2, '5-7'],
    [-0.6, '3-4'],
    [-1.2, '1-2'],
  ],
  pair: [
    [
      0.4,
      `
        <do>_the <kit>_if <swap>_if <swap>_on <swap>_or a_<kit> a_<swap> are_<less> are_<swap> for_thi or_<swap>
        the_<num> the_<swap>
      `,
    ],
    [
      0.2,
      `
        <attend>_dumbbell <attend>_hold <attend>_its <attend>_one <attend>_pair <attend>_the <attend>_to
        <attend>_yell <chat>_barefoot <chat>_brav <chat>_came <chat>_cannit <chat>_do <chat>_else <chat>_keep
        <chat>_like <chat>_need <chat>_only <chat>_weigh <chat>_would <chat>_you <do>_by <do>_to <do>_your
        <far>_ball <far>_plat <far>_squash <kit>_do <kit>_for <kit>_here <kit>_is <kit>_lose <kit>_over
        <kit>_round <kit>_so <kit>_that <kit>_under <kit>_up <kit>_use <kit>_will <kit>_without <kit>_work
        <less>_is <less>_noth <less>_what <more>_it <more>_pair <more>_to <move>_by <move>_the <move>_to
        <not>_arm <not>_bench <not>_else <not>_need <not>_pad <not>_preciou <not>_reach <not>_them
        <num>_centimetr <num>_is <num>_kilo <num>_set <num>_what <pace>_dumbbell <pace>_floor <pace>_pair
        <part>_is <part>_lift <part>_slip <part>_sore <part>_yell <place>_block <place>_or <place>_sho
        <place>_the <place>_what <settle>_barefoot <settle>_first <settle>_for <settle>_it <settle>_on
        <settle>_someth <swap>_a <swap>_are <swap>_arm <swap>_band <swap>_bell <swap>_cushion <swap>_doe
        <swap>_dumbbell <swap>_help <swap>_hold <swap>_mak <swap>_of <swap>_off <swap>_one <swap>_pad <swap>_pair
        <swap>_the <swap>_under <swap>_weight <swap>_work <take>_for <take>_it <take>_on <take>_someth
        <take>_yourself <wrong>_sho a_<num> a_<pace> a_<take> a_belt a_hard a_heav a_heavier a_light a_pair
        a_roll a_rucksack a_small a_step a_water about_<num> all_<chat> all_you anchor_<more> anchor_<place>
        anchor_up and_a and_noth are_<not> are_fine are_not at_<swap> at_home bag_<place> bag_under band_lose
        bar_and bare_<part> bare_<take> bare_feet bell_on bench_<settle> big_squash bit_of blu_the blue_<num>
        blue_one both_are bottl_of came_with can_<settle> can_<swap> can_<take> can_hold cannit_<settle>
        cannit_tie carrier_<swap> carrier_bag chair_<not> chair_<swap> chair_without chalk_<place> chalk_in
        crutch_or cushion_<attend> doe_it doubl_it elbow_<harm> elbow_<ill> elbow_sore else_the everybod_else
        fiv_<attend> fiv_if five_<swap> five_kilo flat_<swap> flat_sho fold_<more> fold_<place> fold_the fold_up
        fold_your for_a for_about get_yourself glov_<place> glov_on go_<swap> go_barefoot go_for grab_someth
        grip_go half_what hamstring_yell hand_slip have_the heav_<num> heav_dumbbell heavier_pair heel_<wrong>
        heel_lift hip_is hold_for hold_it i_would if_its if_the if_your im_<not> im_not in_the is_<attend>
        is_<chat> is_<more> is_<pace> is_hard is_nice is_strong it_<place> it_glid it_is it_now it_on its_slip
        its_your jacket_<place> jacket_under kitchen_<kit> kitchen_chair kne_is legging_the let_<chat> let_you
        lie_on lift_<swap> lift_sho light_dumbbell light_pair light_to lighter_<kit> littl_<kit> littl_plat
        lose_their low_<kit> low_step mak_a mat_<more> mat_<place> mat_over mat_up need_<not> need_a need_noth
        no_<kit> no_pad not_need not_preciou not_them noth_else of_<swap> of_floor of_water off_for on_<kit>
        on_block on_if on_or on_what one_<harm> one_<ill> one_<kit> one_<place> one_is one_pinch or_<not> or_bare
        or_chalk or_off or_stick pair_and pair_for pair_of preciou_about put_on red_the replac_them roll_<more>
        roll_<place> roll_up sho_are sho_help sho_or skin_one small_<kit> small_<swap> so_that sock_<place>
        sock_on someth_<attend> someth_<chat> someth_heav someth_with someth_you squash_<swap> squash_trainer
        squat_with stag_<num> step_by strap_<attend> strap_if suit_<chat> suit_you swap_the take_the tall_<num>
        tall_one ten_<far> ten_centimetr ten_kilo than_<chat> than_you that_<chat> that_it that_let the_<attend>
        the_<far> the_<less> the_<not> the_bar the_bare the_bell the_bike the_blue the_corner the_fifteen
        the_glov the_green the_heav the_lighter the_low the_small the_stiffer the_stop the_tall the_ten the_tub
        the_twent their_<attend> their_<do> their_stretch thi_with thre_<chat> thre_set tie_it to_<chat> to_notic
        to_you trainer_or two_<attend> two_heav under_your up_to use_a use_the use_what want_<more> want_more
        want_your what_<chat> what_let what_suit what_you whatever_<chat> whatever_you will_<do> will_<move>
        will_want without_<part> would_<chat> would_<settle> you_<far> you_<less> you_<move> you_<swap> you_came
        you_cannit you_do you_keep you_like you_need you_only you_put you_weigh your_<more> your_brav your_crutch
        your_hamstring your_heel your_mat youv_<attend> youv_sens
      `,
    ],
    [
      -0.2,
      `
        <attend>_if <attend>_you <chat>_a <chat>_are <chat>_can <chat>_go <kit>_in <kit>_with <move>_it <not>_a
        <part>_on <place>_on <place>_you <swap>_and <take>_the <take>_your a_<harm> a_<part> and_<do> and_<move>
        cushion_under for_<num> hand_<place> its_a of_<chat> of_<num> of_your off_the on_the on_your or_<settle>
        put_a the_<harm> the_<kit> the_chair the_other the_towel the_wall to_<settle> to_<swap> to_your two_<kit>
        up_<place> when_<chat> when_you with_a with_the you_<chat> you_<not> you_are your_back
      `,
    ],
    [-0.4, 'the_<part>'],
  ],
  phrase: [
    [1, 'equipment-sure'],
    [0.4, 'equipment-hint setup-hint'],
    [0.2, 'easier-likely easier-sure equipment-likely'],
    [
      -0.2,
      `
        breathing-likely breathing-sure chat execution-hint fault-likely fault-sure focus-hint range-hint
        range-likely range-sure tempo-likely tempo-sure
      `,
    ],
    [-0.4, 'dose_only empty_clauses execution-likely focus-sure'],
  ],
  start: [
    [
      0.2,
      `
        <chat>_<less> <chat>_<swap> <more>_<num> <more>_<place> <move>_<more> <not>_<kit> <num>_<attend>
        <part>_<harm> <part>_<ill> <part>_<wrong> <place>_<swap> <settle>_<swap> <swap>_<attend> <swap>_<kit>
        <swap>_<place> <wrong>_<swap> a_belt a_bit_of a_cushion band_lose band_lose_their blu_the blu_the_fifteen
        chalk_in chalk_in_the cushion_on elbow_sore flat_sho flat_sho_or fold_up fold_your fold_your_mat
        get_yourself glov_on glov_on_or grab_someth grab_someth_heav grip_go half_what half_what_you hand_slip
        heel_lift i_would if_its if_its_drag if_the if_you_cannit if_you_do if_your_hamstring im_not
        im_not_preciou its_the_bar leav_the_bell legging_the legging_the_bare lift_sho lift_sho_help littl_plat
        lose_the_glov no_pad not_them red_the red_the_stiffer skin_one skin_one_pinch slid_the_anchor strap_if
        swap_the take_the the_low the_low_step trainer_or trainer_or_bare two_heav two_heav_dumbbell up_to
        use_the you_can_do you_need you_need_noth you_put you_put_on you_will you_will_want your_on your_on_the
      `,
    ],
    [-0.2, '<kit>_<place> <part>_<place> <settle>_<place> <swap>_<not>'],
  ],
  word: [
    [0.6, 'need sho'],
    [0.4, 'are chalk dumbbell fold glov grip if nice or pair someth use wear'],
    [
      0.2,
      `
        bag ball band bare barefoot bell bike blanket block blu blue bottl brav but came cannit carrier centimetr
        choos corner crutch cushion doe doubl else fifteen fine fiv flat floor foam for glid grab green hamstring
        hard have heav heavier heel here ideal instead is jacket kilo kitchen legging lie lift light lighter lose
        low mak medium noth palm pinch plat pleas preciou reach read red replac roll rower rucksack sens skin
        slid slip small smug so sock sore spik squash squat stag stiffer switch take ten than their them thick
        tie trainer tub under water weigh what will with without would wrap yell you
      `,
    ],
    [
      -0.2,
      `
        0 an as at away be been belt book breath can come do dont each easy end ever foot from front get goe
        height in into it its just kne knee last leg longer look me my no nobody off other out pull put rest
        right ring second see side sit stand stay step still straight the ther thes they time toda toe turn wall
        way we when wher wobbl youll your
      `,
    ],
    [-0.4, 'and back down that to'],
  ],
} as const satisfies CueWeights
