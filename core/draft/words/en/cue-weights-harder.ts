/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind harder; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const HARDER_WEIGHTS = {
  bias: [[-0.8, 'yes']],
  class: [
    [1.4, 'more'],
    [0.4, 'do part swap'],
    [0.2, 'attend kit num settle take'],
    [-0.2, 'air ill not wrong'],
    [-0.4, 'place'],
  ],
  conditional: [[0.6, 'yes']],
  early: [[-0.6, 'yes']],
  first: [
    [0.6, '<more>'],
    [0.4, '0 feel lift option try'],
    [
      0.2,
      `
        <far> <less> <pace> cros for got hold jump knee last mayb move once paus reach see show slow straighten
        stronger take thos to too turn use you
      `,
    ],
    [-0.2, '<air> <kit> <move> <not> <part> <settle> <swap> hand i it let one that the we'],
    [-0.4, '<chat>'],
  ],
  given: [
    [0.4, 'the'],
    [
      0.2,
      `
        <attend> <chat> <do> <far> <more> <move> <part> a and balanc full hold is lift version whil
      `,
    ],
    [-0.2, '<less> <not> <place> <swap> in take your'],
    [-0.4, 'it'],
  ],
  last: [
    [0.6, '0'],
    [0.4, 'on'],
    [
      0.2,
      `
        arm bell body box down elbow eye folk fresh further go hand leg lower off pace plat time toe twic version
        yeah
      `,
    ],
    [-0.2, 'brav easy one up'],
  ],
  late: [[0.2, 'yes']],
  length: [[-0.2, 'long']],
  pair: [
    [0.6, 'lift_the'],
    [
      0.4,
      `
        <do>_the <move>_the <place>_your can_<do> feel_<more> feet_<place> it_<place> last_<num> let_<settle>
        let_go take_it to_<far>
      `,
    ],
    [
      0.2,
      `
        <air>_at <attend>_each <attend>_good <attend>_on <attend>_that <attend>_yeah <attend>_you <chat>_again
        <chat>_can <chat>_could <chat>_drop <chat>_might <chat>_one <chat>_to <do>_at <do>_body <do>_both
        <do>_ups <far>_and <far>_further <far>_out <far>_the <far>_version <kit>_it <kit>_on <kit>_when <less>_b
        <less>_to <less>_you <more>_a <more>_back <more>_behind <more>_folk <more>_is <more>_out <more>_put
        <more>_the <more>_with <move>_body <move>_both <move>_it <move>_ups <not>_hand <not>_hold <num>_bell
        <num>_leg <num>_on <pace>_as <pace>_the <part>_further <part>_if <part>_off <part>_on <part>_weight
        <place>_down <settle>_again <settle>_it <settle>_to <swap>_a <swap>_go <swap>_hand <swap>_hold <swap>_it
        <swap>_two <take>_a <take>_off <take>_on <take>_your a_<air> a_<do> a_<kit> a_<more> a_<move> a_<take>
        a_box a_breath a_jump a_plat a_rest a_whil add_<part> add_a an_<far> an_inch ankl_<kit> ankl_weight
        are_<more> arm_<attend> arm_<more> arm_<place> arm_up at_<num> at_five at_the back_<place> back_down
        both_<part> both_leg breath_at can_<chat> can_<harm> can_<settle> can_go clos_the clos_your do_it
        drop_<place> each_<pace> each_time feel_<chat> feel_<pace> feel_good feet_off feet_on five_<place>
        five_on folk_<swap> for_<more> for_a for_more full_<do> full_<move> full_version further_<place>
        further_out go_again hand_<far> hand_and hand_further have_them hold_<place> hold_a hold_on if_<chat>
        if_that if_yeah if_you in_your is_<place> is_in it_<attend> it_<far> it_<more> it_<move> it_<not>
        it_<swap> it_<take> it_on it_onto it_up it_without its_ther jump_it keep_the knee_to later_<place>
        leg_float let_<chat> lower_<place> lower_down make_it more_<place> move_your next_<more> no_<attend>
        no_<part> no_hand nobody_<more> nobody_fresh on_<num> on_a on_each on_one one_<part> one_foot one_leg
        onto_your opposit_<part> opposit_elbow option_b or_go paus_for progression_is push_ups put_your reach_the
        same_<pace> same_split see_<attend> see_if slow_the split_<attend> split_as step_it straighten_both
        stronger_<chat> stronger_folk take_one that_is the_<chat> the_<far> the_<part> the_<take> the_arm
        the_bench the_feet the_full the_heel the_kne the_last the_lower the_opposit the_same the_wall thi_<swap>
        thos_of to_<do> to_<kit> to_<more> to_<move> to_<swap> to_make to_step to_the try_it turn_it two_<kit>
        two_bell up_behind up_the up_with use_<num> use_two version_is weight_<place> weight_on when_thi with_a
        you_can you_could you_drop you_might your_<attend> your_<harm> your_<num> your_eye your_one your_toe
      `,
    ],
    [
      -0.2,
      `
        <attend>_a <attend>_it <attend>_the <chat>_brav <kit>_and <kit>_for <less>_the <more>_one <more>_to
        <part>_and <place>_in <place>_the <place>_to <settle>_up <swap>_not <take>_the a_<far> a_<pace> a_<swap>
        and_<do> arm_and bend_the come_<place> do_<not> do_not for_<num> hand_<place> it_<pace> it_is more_<air>
        of_the take_a that_<pace> the_<do> the_<kit> the_<move> the_<pace> the_band the_knee the_leg the_shoulder
        to_<settle> to_<take> up_to with_the you_<far> your_<more> your_<part> your_brav
      `,
    ],
  ],
  phrase: [
    [2.4, 'harder-sure'],
    [0.4, 'harder-likely'],
    [0.2, 'dose_only easier-hint empty_clauses equipment-hint execution-sure'],
    [
      -0.2,
      `
        caution-sure chat easier-sure equipment-sure execution-likely fault-likely fault-sure focus-hint
        focus-likely range-hint range-sure tempo-likely
      `,
    ],
    [-0.4, 'focus-sure'],
  ],
  start: [
    [0.4, 'lift_the'],
    [
      0.2,
      `
        <attend>_<more> <chat>_<num> <more>_<chat> <more>_<num> <move>_<part> <not>_<part> <place>_<place>
        <settle>_<num> <settle>_<part> <swap>_<num> <swap>_<part> both_feet for_the for_the_full go_to hold_a
        hold_it keep_the_same knee_to move_your option_b or_go paus_for_a put_your reach_the see_if see_if_you
        stronger_folk take_it take_one thos_of thos_of_you to_step to_step_it turn_it you_could you_might
      `,
    ],
    [
      -0.2,
      `
        <chat>_<chat> <chat>_<settle> <do>_<place> <move>_<place> <settle>_<place> take_a
      `,
    ],
  ],
  word: [
    [0.6, 'further try'],
    [0.4, '0 add can clap feel feet last lift longer option paus without'],
    [
      0.2,
      `
        advanc ankl arm b balanc bell bench body bor both bottom box challeng clos comf could crank cros each
        elbow eye five folk fresh full go good hold hover if it jump later leg let lower mayb might more move no
        off on once onto opposit plat progres progression put race reach see show slow split straighten strap
        stronger take thos time tir toe twic two ups use version wall when whil yeah
      `,
    ],
    [
      -0.2,
      `
        all are back ball bar be bend br chair chest come dont from front get here hip i ill in just left like
        need of only or right round shoulder sit so someth stand stay stop than the then under up we wher your
      `,
    ],
    [-0.4, 'and not'],
  ],
} as const satisfies CueWeights
