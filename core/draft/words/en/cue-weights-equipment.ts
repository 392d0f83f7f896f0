/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind equipment; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EQUIPMENT_WEIGHTS = {
  bias: [[-1, 'yes']],
  class: [
    [1.2, 'swap'],
    [0.6, 'kit'],
    [0.2, 'attend less settle'],
    [-0.2, 'air chat far harm ill move'],
    [-0.6, 'part place'],
  ],
  conditional: [[0.2, 'yes']],
  early: [[-0.4, 'yes']],
  first: [
    [0.6, 'a'],
    [0.4, '<swap> you'],
    [
      0.2,
      `
        <chat> <more> <wrong> all are band choos doubl glov grab have i if lift pick swap switch take trainer up
      `,
    ],
    [-0.2, '<less> <move> <num> <pace> <part> <take> do hold it or that we'],
  ],
  given: [
    [0.2, '<do> <far> <kit> <move> got have is it mat they'],
    [-0.2, '<less> to'],
  ],
  last: [
    [0.4, 'grip nice'],
    [
      0.2,
      `
        ball do fine floor glid heav here like need noth now reach read strong them thi you
      `,
    ],
    [-0.2, 'bell box it mat toda'],
  ],
  late: [[-0.6, 'yes']],
  length: [
    [0.4, '8-12'],
    [0.2, '3-4'],
    [-0.2, 'long'],
    [-0.4, '1-2'],
  ],
  pair: [
    [
      0.4,
      `
        <kit>_is <num>_kilo a_<swap> are_<less> are_<swap> for_thi not_need someth_with the_<swap>
      `,
    ],
    [
      0.2,
      `
        <attend>_one <attend>_they <chat>_do <chat>_for <chat>_like <chat>_need <chat>_only <chat>_would <do>_the
        <do>_to <kit>_do <kit>_for <kit>_here <kit>_lose <kit>_use <kit>_will <kit>_without <less>_noth <more>_it
        <more>_to <more>_up <not>_arm <not>_need <not>_reach <part>_is <part>_so <place>_or <place>_the
        <place>_to <settle>_for <settle>_someth <swap>_a <swap>_arm <swap>_help <swap>_if <swap>_of <swap>_on
        <swap>_one <swap>_or <swap>_the <swap>_under <swap>_what <take>_it <take>_yourself <wrong>_sho a_<attend>
        a_<kit> a_<less> a_<pace> a_bit a_heav a_heavier a_light a_step about_<num> all_<chat> all_you and_a
        are_<not> are_fine are_not band_lose bare_<part> bare_<take> bare_feet bit_of blue_<num> blue_one
        both_are can_<swap> can_hold chair_<not> chair_<swap> chair_without dont_<far> dont_reach doubl_<more>
        doubl_<place> doubl_up five_<swap> five_kilo for_a get_yourself glov_<place> glov_on got_a have_a
        heav_<num> heav_one hold_for i_would if_they is_<attend> is_<chat> is_hard is_nice is_strong it_<do>
        it_<more> it_<place> it_on lift_<swap> lift_sho lose_their mat_is need_<not> need_noth no_<kit> not_the
        of_floor off_<place> off_for on_or one_is or_<not> or_<swap> or_bare or_off replac_them sho_help
        small_<kit> so_that someth_<attend> someth_heav suit_<chat> suit_you swap_the take_the that_it the_<far>
        the_<less> the_band the_bell the_blue the_heav the_kne the_lighter their_<attend> their_<do>
        their_stretch they_<not> they_dont thi_with to_<chat> to_you trainer_or under_the up_to use_what
        want_your what_suit will_<do> will_<move> will_want would_<chat> you_<attend> you_<far> you_<less>
        you_<swap> you_do you_like you_need you_only you_use your_<more> your_<swap> your_heel your_mat
        yourself_a
      `,
    ],
    [
      -0.2,
      `
        <chat>_are <chat>_can <chat>_to <kit>_in <kit>_toda <kit>_when <less>_to <move>_it <move>_the <part>_to
        <swap>_not <take>_a <take>_the do_<not> do_not for_<num> in_<place> no_<attend> the_<kit> the_<more>
        the_<part> the_wall thi_<swap> to_<settle> to_<swap> weight_<chat> weight_toda when_<chat> when_thi
        when_you you_<do> you_are your_<part>
      `,
    ],
  ],
  phrase: [
    [1.2, 'equipment-sure'],
    [0.6, 'equipment-hint setup-hint'],
    [0.2, 'equipment-likely fault-hint'],
    [
      -0.2,
      `
        caution-sure dose_only empty_clauses execution-sure fault-sure harder-likely harder-sure range-likely
        range-sure setup-likely tempo-likely tempo-sure
      `,
    ],
    [-0.4, 'execution-likely focus-sure'],
  ],
  start: [
    [
      0.2,
      `
        <chat>_<less> <chat>_<swap> <more>_<more> <not>_<kit> <swap>_<kit> <wrong>_<swap> a_bit band_lose
        band_lose_their doubl_up doubl_up_the get_yourself glov_on glov_on_or grab_someth grab_someth_heav have_a
        i_would if_they lift_sho lift_sho_help not_the swap_the take_the trainer_or trainer_or_bare up_to you_can
        you_need you_need_noth you_will_want
      `,
    ],
    [-0.2, '<settle>_<place> <swap>_<not> do_not'],
  ],
  word: [
    [0.6, 'a need someth'],
    [0.4, 'fine floor for grip hard heav is kilo nice or sho thick will'],
    [
      0.2,
      `
        are bag ball band bare bell bit blue both but chair choos doubl feet five glid glov grab have heavier
        heel here if kitchen lift light lose noth now only pair read replac slid small so strong suit swap switch
        take their them towel trainer under up use what with without would you
      `,
    ],
    [
      -0.2,
      `
        at back between by can down from go higher in its just knee leg longer no out side sit stand stronger the
        ther tir toda us wall we when your
      `,
    ],
    [-0.4, 'to'],
  ],
} as const satisfies CueWeights
