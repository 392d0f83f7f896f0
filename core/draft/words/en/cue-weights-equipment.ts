/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind equipment; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EQUIPMENT_WEIGHTS = {
  bias: [[-0.8, 'yes']],
  class: [
    [1, 'swap'],
    [0.4, 'kit'],
    [0.2, 'less'],
    [-0.2, 'air do harm ill move num pace wrong'],
    [-0.4, 'chat far part place'],
  ],
  conditional: [[0.4, 'yes']],
  first: [
    [0.6, 'a'],
    [0.4, 'fold'],
    [
      0.2,
      `
        <more> <swap> all are band block chalk choos flat get glov hand i if lift stag swap switch take ten
        trainer use you
      `,
    ],
    [
      -0.2,
      `
        <attend> <chat> <far> <kit> <move> <num> <pace> <place> <take> do dont it its keep let or put the your
      `,
    ],
    [-0.4, '<not> <part> that'],
  ],
  given: [
    [0.4, '<part> it'],
    [0.2, '<kit> <place> <take> cannit foam hamstring have palm reach tie too use yell'],
    [-0.2, '<chat> <wrong> and that'],
  ],
  last: [
    [0.4, 'dumbbell'],
    [
      0.2,
      `
        ball bike corner floor glid grip here ideal like minut need nice one pad plat read sens set slip strong
        them thi trainer twent yell you
      `,
    ],
    [-0.2, 'again bell book chair it knee mat time towel wall'],
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
        <num>_kilo <swap>_if <swap>_or <swap>_under a_<kit> a_<swap> are_<less> are_<swap> for_thi or_<swap>
        small_<kit> the_<swap>
      `,
    ],
    [
      0.2,
      `
        0_<swap> <attend>_dumbbell <attend>_one <attend>_pair <attend>_the <attend>_yell <chat>_brav
        <chat>_cannit <chat>_do <chat>_else <chat>_for <chat>_like <chat>_need <chat>_only <chat>_weigh
        <chat>_would <chat>_you <do>_the <do>_to <do>_your <far>_plat <far>_squash <kit>_do <kit>_for <kit>_here
        <kit>_if <kit>_is <kit>_lose <kit>_so <kit>_that <kit>_under <kit>_up <kit>_use <kit>_will <kit>_without
        <less>_noth <less>_what <more>_fiv <more>_pair <more>_to <move>_to <move>_your <not>_arm <not>_else
        <not>_need <not>_pad <not>_preciou <not>_reach <not>_them <num>_centimetr <num>_is <num>_set <num>_what
        <pace>_dumbbell <pace>_pair <part>_is <part>_lift <part>_slip <part>_yell <place>_block <place>_or
        <place>_sho <place>_the <place>_what <settle>_for <settle>_it <settle>_on <settle>_someth <swap>_a
        <swap>_are <swap>_arm <swap>_bell <swap>_cushion <swap>_doe <swap>_dumbbell <swap>_help <swap>_hold
        <swap>_mak <swap>_of <swap>_off <swap>_on <swap>_one <swap>_pad <swap>_pair <swap>_the <swap>_weight
        <take>_for <take>_it <take>_on <take>_someth <take>_yourself <wrong>_sho a_<attend> a_<pace> a_<take>
        a_belt a_hard a_heav a_heavier a_light a_roll a_small a_step a_towel a_water about_<num> about_it
        all_<chat> all_you anchor_<more> anchor_<place> anchor_up and_a and_noth are_<not> are_fine are_not
        at_<swap> at_home bag_<place> bag_under band_lose bar_and bare_<part> bare_<take> bare_feet big_squash
        bit_of blue_<num> blue_one both_are bottl_of brav_fiv can_<settle> can_<swap> can_<take> can_hold
        cannit_<settle> cannit_tie carrier_<swap> carrier_bag chair_<not> chair_<swap> chair_without
        chalk_<place> chalk_in cushion_<attend> doe_it else_the everybod_else fiv_<attend> fiv_if five_<swap>
        five_kilo flat_<swap> flat_sho fold_<more> fold_<place> fold_up fold_your for_a for_about get_yourself
        glov_<place> glov_on go_<swap> go_for grab_someth grip_go half_what hamstring_yell hand_slip heav_<num>
        heav_one heavier_pair heel_<wrong> heel_lift heel_so hold_for hold_it i_would if_the if_your im_<not>
        im_not in_the is_<attend> is_<chat> is_<more> is_hard is_nice is_strong it_<place> it_is it_on its_slip
        kitchen_<kit> kitchen_chair kne_is let_<chat> let_you lift_<swap> lift_sho light_<kit> light_dumbbell
        light_pair lighter_<kit> littl_<kit> littl_plat lose_their mat_<more> mat_<place> mat_up need_<not>
        need_a need_noth no_<kit> no_pad not_need not_preciou not_them noth_else of_<swap> of_floor off_<more>
        off_<place> off_for on_<kit> on_block on_or on_what one_<kit> one_is or_<not> or_bare or_chalk or_off
        pair_and pair_for preciou_about red_the replac_them roll_<more> roll_<place> roll_up sho_are sho_help
        sho_or small_<swap> so_that sock_<place> sock_on someth_<attend> someth_heav someth_with someth_you
        squash_<swap> squash_trainer stag_<num> swap_the take_the tall_<num> tall_one ten_<far> ten_centimetr
        ten_kilo that_it that_let the_<attend> the_<far> the_<less> the_<not> the_<num> the_bell the_blue
        the_corner the_glov the_green the_heav the_lighter the_small the_stiffer the_stop the_tall the_ten
        the_tub the_twent their_<attend> their_<do> their_stretch thi_with thre_<chat> thre_set tie_it to_<chat>
        to_you trainer_or under_your up_to use_a use_the want_your what_<chat> what_let what_you will_<do>
        will_<move> will_want without_<part> would_<chat> would_<settle> you_<attend> you_<far> you_<less>
        you_<move> you_<settle> you_<swap> you_cannit you_do you_like you_need you_only you_weigh your_<more>
        your_brav your_hamstring your_heel your_mat your_on youv_<attend> youv_sens
      `,
    ],
    [
      -0.2,
      `
        <attend>_if <chat>_are <chat>_can <kit>_with <move>_it <not>_a <part>_on <place>_on <place>_you
        <settle>_the <take>_a <take>_the a_<part> and_<do> at_the for_<num> hold_the its_a like_<chat> off_the
        put_a step_<place> the_<chat> the_<kit> the_<more> the_wall to_<settle> to_<swap> when_<chat> with_a
        you_are your_<part> your_kne
      `,
    ],
    [-0.4, 'the_<part>'],
  ],
  phrase: [
    [1, 'equipment-sure'],
    [0.4, 'equipment-hint setup-hint'],
    [0.2, 'easier-sure equipment-likely harder-hint'],
    [
      -0.2,
      `
        breathing-sure caution-hint chat execution-hint fault-likely fault-sure harder-likely range-hint
        range-likely range-sure tempo-likely tempo-sure
      `,
    ],
    [-0.4, 'dose_only empty_clauses execution-likely focus-sure'],
  ],
  start: [
    [
      0.2,
      `
        <chat>_<less> <chat>_<swap> <more>_<num> <move>_<more> <not>_<kit> <part>_<wrong> <place>_<swap>
        <settle>_<swap> <swap>_<kit> <wrong>_<swap> a_cushion band_lose band_lose_their chalk_in chalk_in_the
        flat_sho flat_sho_or fold_up fold_your fold_your_mat get_yourself glov_on glov_on_or grab_someth
        grab_someth_heav grip_go half_what half_what_you hand_slip heel_lift i_would if_the if_you if_you_cannit
        if_your if_your_hamstring im_not im_not_preciou its_the_bar leav_the_bell lift_sho lift_sho_help
        littl_plat lose_the_glov no_pad not_them red_the red_the_stiffer slid_the_anchor swap_the take_the
        trainer_or trainer_or_bare up_to use_the you_can_do you_need you_need_noth you_put you_put_on
        you_will_want your_on your_on_the
      `,
    ],
    [-0.2, '<kit>_<place> <part>_<place> <settle>_<place> <swap>_<not> put_a'],
  ],
  word: [
    [0.6, 'need'],
    [
      0.4,
      `
        are chalk dumbbell floor fold glov grip heav if is kilo nice or pair sho someth use
      `,
    ],
    [
      0.2,
      `
        bag ball band bare bell bike blanket block blue bottl box brav but cannit carrier centimetr choos corner
        doe doubl else fine fiv flat foam for glid grab green hamstring hard have heavier heel here ideal instead
        kitchen lie lift light lighter lose mak medium noth pad palm plat preciou reach read red replac roll
        rower sens short slid slip small so sock stag stiffer stretch switch take ten their thick tie tin trainer
        tub under water wear weigh what will without would wrap yell you
      `,
    ],
    [
      -0.2,
      `
        0 again an at away back be been book breath by can come do dont door each foot from front goe height in
        into it its just kne knee leg longer look make me more next no off other out over pull put rest right
        ring same see side sit stand stay step still strap that the ther time toda toe wall way we when wher
      `,
    ],
    [-0.4, 'and down to your'],
  ],
} as const satisfies CueWeights
