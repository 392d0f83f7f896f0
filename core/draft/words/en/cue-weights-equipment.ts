/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind equipment; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EQUIPMENT_WEIGHTS = {
  bias: [[-1, 'yes']],
  class: [
    [1, 'swap'],
    [0.4, 'kit'],
    [0.2, 'less'],
    [-0.2, 'air do far ill move num pace wrong'],
    [-0.4, 'chat harm part place'],
  ],
  conditional: [[0.4, 'yes']],
  first: [
    [0.6, 'a'],
    [0.4, '<swap>'],
    [
      0.2,
      `
        <wrong> all are band block choos flat fold glov grab if lift littl not pick pleas reach round run swap
        switch take trainer use you
      `,
    ],
    [-0.2, '<kit> <less> <move> <not> <pace> <take> do dont its one or put step that your'],
    [-0.4, '<num> <part>'],
  ],
  given: [
    [
      0.2,
      `
        <kit> <num> <take> band first grab have heel it no now palm short tear the too two up
      `,
    ],
    [-0.2, 'read'],
  ],
  last: [
    [
      0.2,
      `
        ball bike do fine floor glid grip here instead like need nice pad palm plat pleas reach read shin
        shoulder slack sock spong stop strong them thi to trainer you
      `,
    ],
    [-0.2, 'bell belt book down go ther wall'],
    [-0.4, 'it'],
  ],
  length: [
    [0.2, '8-12'],
    [-0.4, '5-7'],
    [-0.6, '3-4'],
    [-1.2, '1-2'],
  ],
  pair: [
    [
      0.4,
      `
        <do>_your <kit>_is <num>_kilo <swap>_or <take>_it a_<kit> a_<swap> are_<less> are_<swap> for_thi
        someth_with
      `,
    ],
    [
      0.2,
      `
        <attend>_good <attend>_one <attend>_pair <attend>_squat <attend>_the <chat>_do <chat>_each <chat>_for
        <chat>_light <chat>_like <chat>_need <chat>_only <chat>_put <chat>_two <chat>_would <chat>_you <do>_each
        <do>_the <do>_to <far>_plat <far>_squash <far>_your <kit>_do <kit>_doe <kit>_for <kit>_here <kit>_if
        <kit>_lose <kit>_round <kit>_so <kit>_use <kit>_without <less>_is <less>_noth <less>_short <more>_pair
        <more>_to <move>_your <not>_arm <not>_bench <not>_need <not>_pad <not>_reach <not>_them <num>_is
        <pace>_pair <part>_are <part>_is <place>_block <place>_each <place>_or <place>_sho <place>_what
        <settle>_for <settle>_it <settle>_on <settle>_someth <swap>_a <swap>_are <swap>_arm <swap>_cushion
        <swap>_doe <swap>_dumbbell <swap>_help <swap>_if <swap>_of <swap>_on <swap>_one <swap>_pad <swap>_pair
        <swap>_the <swap>_under <take>_for <take>_on <take>_yourself <wrong>_sho a_<attend> a_<less> a_<pace>
        a_belt a_heav a_heavier a_light a_roll a_spong a_step about_<num> all_<chat> all_you and_a are_<not>
        are_fine are_not are_tear as_good at_mid band_<less> band_lose band_too bare_<part> bare_<take> bare_feet
        big_squash bit_of blue_<num> blue_one both_are can_<swap> chair_<not> chair_<swap> chair_without
        chalk_<place> dont_<far> dont_reach each_<part> each_palm first_<num> first_two five_<swap> five_kilo
        flat_<swap> flat_sho fold_your for_a get_yourself glov_<place> glov_on go_for grab_it have_a heav_<num>
        heav_one heavier_pair heel_so hold_for hold_it i_would if_the is_<attend> is_<chat> is_<more> is_nice
        is_strong it_<do> it_<place> it_at it_is it_on it_start keep_the kne_is let_<chat> let_you lie_<place>
        lie_on lift_<swap> lift_sho light_pair lighter_<kit> like_squat littl_<kit> littl_plat lose_their
        mat_<place> need_<not> need_noth no_<kit> no_pad not_need not_the not_them of_floor off_<place> on_<kit>
        on_block on_or on_what one_is or_<not> or_<swap> or_bare or_off or_sock pair_for palm_are put_<place>
        put_on reach_your replac_them round_each sho_are sho_help sho_or short_to small_<kit> so_that
        sock_<place> sock_on someth_<attend> someth_heav squash_<swap> squash_trainer squat_<place> squat_on
        stand_it start_at swap_the swap_to take_the tear_<more> tear_<place> tear_up that_it the_<far> the_<less>
        the_<not> the_<swap> the_band the_bell the_blue the_first the_heav the_lighter the_small the_stop
        their_<attend> their_<do> their_stretch they_<not> they_dont thi_with to_<chat> to_you too_short
        trainer_or under_the up_to use_a use_that wast_<less> wast_<not> wast_<swap> wast_instead were_<attend>
        were_<pace> were_light what_<chat> will_<do> will_<move> will_<swap> will_do without_<part> would_<chat>
        would_<settle> you_<attend> you_<far> you_<less> you_<settle> you_<swap> you_<take> you_do you_like
        you_need you_only you_put your_heel your_mat your_palm your_shoulder your_wast youv_<not> youv_<swap>
        youv_no
      `,
    ],
    [
      -0.2,
      `
        <attend>_its <chat>_are <chat>_can <kit>_in <kit>_when <kit>_with <less>_to <move>_it <not>_a <part>_on
        <place>_your <settle>_up <take>_a <take>_the a_<part> at_the for_<num> no_<attend> no_weight off_the
        on_your put_a read_a the_<kit> the_<part> the_wall thi_<not> thi_<place> thi_<swap> to_<settle> to_<swap>
        when_thi you_<do> you_are your_<part> youv_read
      `,
    ],
  ],
  phrase: [
    [1, 'equipment-sure'],
    [0.4, 'equipment-hint setup-hint'],
    [0.2, 'easier-likely'],
    [
      -0.2,
      `
        breathing-sure caution-sure chat execution-likely fault-likely harder-likely harder-sure range-hint
        range-likely range-sure setup-likely tempo-likely tempo-sure
      `,
    ],
    [-0.4, 'dose_only empty_clauses fault-sure focus-sure'],
  ],
  start: [
    [
      0.2,
      `
        <chat>_<less> <chat>_<swap> <far>_<kit> <place>_<swap> <settle>_<swap> <wrong>_<swap> a_belt a_bit_of
        a_cushion band_lose band_lose_their flat_sho flat_sho_or fold_your fold_your_mat get_yourself glov_on
        glov_on_or grab_someth grab_someth_heav have_a hold_it_at i_would if_the if_the_band if_the_first
        if_they_dont if_you_have if_your_heel if_your_palm if_youv_no lift_sho lift_sho_help littl_plat no_pad
        not_them reach_your reach_your_shoulder round_each round_each_palm stand_it stand_it_on swap_the swap_to
        swap_to_the take_the trainer_or trainer_or_bare up_to use_that use_the you_can_do you_need you_need_noth
      `,
    ],
    [-0.2, '<kit>_<place> <settle>_<place> <swap>_<not> do_not if_youv_read no_weight'],
  ],
  word: [
    [0.6, 'need sho'],
    [0.4, 'are band for is kilo nice or palm reach sock someth use will'],
    [
      0.2,
      `
        bag ball bare bike blanket block blue but chair chalk choos doe doubl dumbbell fine five floor fold glid
        glov grab grip hard have heav heavier heel here if instead kitchen light lighter littl lose mat mid noth
        pad pair plat pleas replac round run shin slack small so spong squash strong switch take tear their them
        thick trainer wast what without would you
      `,
    ],
    [
      -0.2,
      `
        0 again an away back bar be been between book breath by can chest do dont door from go goe half hand in
        into it just knee leg longer look make more no out over rest ring see side sit stay step stronger that
        the ther time tir toda toe top wall way we when wher
      `,
    ],
    [-0.4, 'and down its to your'],
  ],
} as const satisfies CueWeights
