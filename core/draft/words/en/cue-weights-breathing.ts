/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind breathing; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const BREATHING_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [2, 'air'],
    [0.4, 'do'],
    [0.2, 'chat settle'],
    [-0.2, 'far harm kit less not pace swap wrong'],
    [-0.4, 'part'],
  ],
  first: [
    [0.8, '<air>'],
    [0.4, '<place> in'],
    [
      0.2,
      `
        <chat> brac breath do dont draw everybod lengthen let one out settl short soften some thank tuck two
        umbrella when
      `,
    ],
    [-0.2, '<do> <kit> <more> <move> <part> <take> catch make not the up you'],
  ],
  given: [[0.2, '0 get want']],
  last: [
    [0.4, 'prepar'],
    [
      0.2,
      `
        apart catch clos collarbon complete driv everybod exhal face flat go grow help in lung movement nose out
        puff purpl strok top tss want
      `,
    ],
    [-0.2, 'back bel here it shap'],
  ],
  late: [[0.2, 'yes']],
  length: [
    [0.2, '1-2'],
    [-0.2, 'long'],
  ],
  pair: [
    [0.6, 'the_<air>'],
    [0.4, '<air>_in <place>_on in_to out_<place> out_on to_prepar'],
    [
      0.2,
      `
        0_<air> 0_breath <air>_as <air>_at <air>_be <air>_like <air>_on <air>_to <attend>_out <attend>_the
        <attend>_you <chat>_are <chat>_it <chat>_stand <chat>_you <do>_in <do>_out <kit>_com <kit>_out <more>_the
        <move>_breath <move>_in <move>_out <not>_forget <not>_hold <num>_out <num>_step <part>_apart <part>_of
        <part>_up <place>_a <place>_as <place>_at <place>_of <place>_to <place>_up <settle>_at <settle>_back
        <settle>_gone <settle>_into <settle>_your <swap>_see <take>_at <take>_it a_<far> a_strok all_the
        and_<chat> and_<place> as_<chat> as_the as_you at_the back_<more> back_<place> back_of back_to back_up
        bar_com bel_<place> bel_in blow_<attend> breath_<place> can_see chest_<place> com_<place> com_down
        come_<part> come_back dont_<do> dont_hold draw_the exhal_to get_to gone_purpl hand_apart have_gone
        hold_at hold_it hold_your i_<swap> i_can in_<place> into_<num> into_thre it_<settle> it_get it_go it_out
        it_will keep_<air> keep_breath lengthen_<place> let_it mouth_<place> mouth_out not_forget of_<chat>
        of_the of_you on_the one_<place> out_<attend> out_as out_at round_your settl_into sharp_<air> some_of
        step_<place> step_out thank_<chat> thank_you the_<do> the_<more> the_<move> the_back the_bel the_catch
        the_collarbon the_driv the_exhal the_nose the_rib the_top the_way thre_<do> thre_<kit> thre_step to_0
        to_<num> to_<place> to_flat tuck_your two_<do> two_<kit> two_step umbrella_<do> umbrella_clos up_the
        way_to when_it will_help you_<do> you_<settle> you_are you_stand you_want your_<air> your_<more>
        your_<settle> your_<take> your_breath your_face your_hand your_tail
      `,
    ],
    [
      -0.2,
      `
        <attend>_on <chat>_breath <do>_it <do>_on <move>_it <move>_on <move>_the <move>_your <place>_breath
        <place>_in <settle>_for <settle>_the <swap>_thi <take>_for <take>_the and_lift breath_<attend> breath_and
        each_shap for_a hold_the in_breath lift_<place> lift_on make_the out_for soften_on the_end the_in the_out
        to_<settle> up_<place> with_the you_breath
      `,
    ],
  ],
  phrase: [
    [1.6, 'breathing-sure'],
    [0.4, 'breathing-likely'],
    [
      0.2,
      `
        breathing-hint empty_clauses execution-hint execution-likely execution-sure fault-likely fault-sure
        harder-hint
      `,
    ],
    [
      -0.2,
      `
        caution-sure chat dose_only easier-likely easier-sure equipment-hint setup-sure tempo-likely
      `,
    ],
  ],
  start: [
    [
      0.2,
      `
        0_breath <air>_<attend> <air>_<place> <chat>_<chat> <chat>_<swap> <move>_<air> <not>_<do> <num>_<air>
        <num>_<do> <num>_<kit> <num>_<place> <place>_<attend> <place>_<place> <settle>_<part> all_the all_the_way
        breath_into breath_into_your come_back come_back_to do_not_forget dont_hold draw_the hold_it i_can
        i_can_see if_you if_you_want keep_breath let_it let_it_go out_as out_as_you out_on out_on_the settl_into
        settl_into_thre some_of some_of_you thank_you tuck_your tuck_your_tail when_it
      `,
    ],
    [-0.2, 'as_you_breath hold_the'],
  ],
  word: [
    [0.6, 'out'],
    [0.4, 'air brac breath empt exhal in lung prepar to'],
    [
      0.2,
      `
        apart as at back blow cheek clos collarbon com complete dont draw driv everybod face flat forget gone
        help hold into lengthen let mouth movement nose puff purpl rib round see sharp short some step strok tail
        thank thre top tss umbrella way will
      `,
    ],
    [
      -0.2,
      `
        a arm catch down each end everyth five floor for from here hip is kne leg lift make move not or over
        position shap shoulder side stay that the ther thi up use with
      `,
    ],
  ],
} as const satisfies CueWeights
