/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind breathing; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const BREATHING_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [1.2, 'air'],
    [0.2, 'more'],
    [-0.2, 'attend chat far harm kit less num pace place swap wrong'],
    [-0.4, 'not'],
    [-0.6, 'part'],
  ],
  first: [
    [0.8, '<air> out'],
    [0.6, '<place>'],
    [0.4, 'breath in keep short tell tss'],
    [
      0.2,
      `
        <chat> <pace> and brac count dont empt ever everybod exhal hum i inhal its lengthen let littl long nice
        settl sigh sink sip soften thank umbrella when whil youll your
      `,
    ],
    [
      -0.2,
      `
        <attend> <far> <kit> <more> <move> <settle> <take> a as back catch down if make move not stay the thi up
        you
      `,
    ],
    [-0.4, '<do> <num>'],
    [-0.6, '<part>'],
  ],
  given: [[0.2, '0']],
  last: [
    [0.6, 'breath purpl'],
    [0.4, 'exam hum puff top tss'],
    [
      0.2,
      `
        and apart ask balloon band brac catch clos collarbon com danc day do down driv even everybod exhal face
        flat further go gossip grow help in jaw long loos loud lunch lung movement one out part prepar rais room
        sigh six strok stuck talk underwater up want
      `,
    ],
    [-0.2, 'again back five here hip it leg off side teeth ther thi toe two you'],
  ],
  length: [
    [-0.2, '5-7'],
    [-0.4, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.8, 'the_<air>'],
    [
      0.4,
      `
        <air>_in <not>_an <place>_as <place>_on <take>_it an_exam com_<place> dont_hold go_purpl hold_it
        it_<settle> not_an out_<place> out_on the_way you_<do> your_<air>
      `,
    ],
    [
      0.2,
      `
        0_<air> 0_breath <air>_as <air>_at <air>_into <air>_like <air>_loos <air>_on <air>_thre <attend>_blow
        <attend>_off <attend>_out <attend>_rais <attend>_you <chat>_about <chat>_all <chat>_ask <chat>_danc
        <chat>_it <chat>_once <chat>_see <chat>_should <chat>_stand <chat>_what <chat>_your <do>_a <do>_in
        <do>_out <far>_a <far>_breath <far>_sip <far>_the <kit>_com <kit>_in <kit>_out <less>_breath <less>_part
        <more>_a <more>_breath <move>_breath <move>_out <move>_sigh <move>_talk <not>_breath <not>_clench
        <not>_hold <not>_puff <not>_sav <not>_underwater <num>_out <num>_step <pace>_breath <pace>_out
        <pace>_part <pace>_to <part>_apart <part>_in <part>_of <part>_rais <place>_a <place>_com <place>_ever
        <place>_loud <place>_past <place>_to <place>_top <place>_up <place>_when <settle>_at <settle>_back
        <settle>_gone <settle>_into <settle>_it <settle>_more <settle>_once <settle>_stuck <swap>_puff <swap>_sav
        <swap>_see <take>_at <take>_stuck a_<attend> a_<kit> a_<part> a_band a_calf a_coupl a_lot a_strok able_to
        about_your air_at all_the all_turn and_<chat> and_even and_round as_it as_the as_they at_the back_of
        back_to bar_com be_able bel_<place> bel_in big_<air> bit_<far> bit_<more> bit_further blow_<attend>
        blow_<more> blow_up breath_<chat> breath_<place> breath_at breath_in breath_into calf_<do> calf_<move>
        calf_rais can_see chat_to cheek_puff clamp_jaw clench_your com_down come_<part> come_back count_<place>
        count_out coupl_tim dont_<settle> dont_<take> dont_clench down_in draw_the empt_all ever_<do> ever_<move>
        ever_<pace> ever_singl ever_time exhal_to fill_<more> fill_<place> fill_up for_four for_lunch for_six
        get_stuck get_to go_<more> go_at go_once gone_purpl had_for hand_apart hard_part have_<more> have_gone
        have_more head_down hold_at i_<swap> i_ask i_can i_see in_<attend> in_<place> in_as in_for in_on in_to
        into_<num> into_the into_thre it_<chat> it_<do> it_<place> it_down it_get it_go it_send it_will its_<far>
        its_<not> its_<place> its_just its_not its_only just_a keep_<air> keep_breath keep_mov keep_sigh
        keep_talk keep_them know_<chat> know_your lengthen_<place> lengthen_in let_it like_<air> like_blow
        littl_<air> littl_breath littl_sip lot_of loud_with me_about me_what mouth_loos neighbour_whil no_puff
        no_sav not_underwater of_<air> of_air of_clamp of_the on_the one_out only_a out_<attend> out_<far>
        out_<more> out_as out_at out_com out_down out_loud out_past out_up out_when past_the peel_the puff_cheek
        round_your sav_it see_a see_cheek see_you send_your settl_into short_puff should_be sigh_it singl_<num>
        singl_one sink_a sip_of soften_out spin_off step_<place> step_in step_out tail_and tell_<chat> tell_me
        thank_<chat> thank_you that_all the_<do> the_<less> the_<move> the_air the_back the_bel the_catch
        the_collarbon the_driv the_hard the_nose the_top them_com they_<settle> thi_<num> thi_one thre_<do>
        thre_<kit> thre_step to_0 to_<num> to_<place> to_flat to_gossip to_hum to_peel to_prepar to_ston
        tuck_your turn_to two_<do> two_<kit> two_step umbrella_<do> umbrella_clos up_a way_<place> way_out way_to
        what_you when_it whil_<chat> whil_its whil_you will_help with_<chat> with_me you_<move> you_<settle>
        you_<swap> you_<take> you_had you_have you_hold you_should you_stand you_want youll_<settle> youll_have
        your_<chat> your_<far> your_<more> your_<settle> your_<take> your_breath your_danc your_day your_face
        your_go your_hand your_mouth your_neighbour your_tail your_tum youv_gone
      `,
    ],
    [
      -0.2,
      `
        <air>_ther <attend>_on <attend>_your <chat>_come <do>_it <do>_on <more>_in <move>_on <move>_the
        <move>_your <not>_a <place>_all <place>_breath <place>_front <place>_in <place>_your <settle>_through
        <settle>_up <swap>_it <take>_the a_<air> a_<do> a_<move> a_breath breath_out breath_ther come_through
        for_a for_five go_<place> hiss_it hold_the in_front in_the keep_it let_<chat> let_<settle> let_go
        lift_the not_<place> of_your out_<air> out_all out_breath out_in out_of the_<chat> the_<kit> the_floor
        the_in the_out to_<chat> to_<settle> to_the up_<place> with_the you_breath you_can you_come your_<part>
        your_teeth
      `,
    ],
    [-0.4, '<move>_it'],
  ],
  phrase: [
    [1, 'breathing-sure'],
    [0.4, 'breathing-hint breathing-likely'],
    [0.2, 'execution-sure fault-likely fault-sure'],
    [
      -0.2,
      `
        caution-sure chat easier-hint easier-likely easier-sure empty_clauses equipment-hint equipment-sure
        focus-likely harder-sure praise range-sure setup-hint setup-likely tempo-likely tempo-sure
      `,
    ],
    [-0.4, 'dose_only setup-sure'],
  ],
  start: [
    [0.4, '<place>_<attend> dont_hold hold_it_down its_not_an tell_me'],
    [
      0.2,
      `
        0_breath <air>_<attend> <air>_<num> <attend>_<air> <chat>_<more> <chat>_<swap> <far>_<air> <less>_<air>
        <more>_<air> <move>_<air> <not>_<settle> <not>_<take> <pace>_<air> <pace>_<place> <place>_<place>
        <settle>_<part> breath_into breath_into_the come_back come_back_to count_out count_out_loud do_not_hold
        dont_clench dont_clench_your dont_hold_it draw_the ever_singl ever_singl_one hold_it i_can i_can_see
        i_know_your i_see i_see_a if_you_want in_as in_as_you its_just its_just_a its_not its_only its_only_a
        keep_breath keep_sigh keep_sigh_it keep_talk keep_them keep_them_com keep_your_mouth lengthen_in let_it
        let_it_go let_it_out let_your_tum littl_sip littl_sip_of nice_and_even no_puff no_puff_cheek no_sav
        no_sav_it one_out one_out_on out_as out_as_you out_com out_com_up out_on settl_into settl_into_thre
        short_puff sink_a sink_a_bit slow_breath soften_out tell_me_about tell_me_what thank_you that_all
        tuck_your tuck_your_tail two_step when_it when_it_get whil_you whil_you_hold you_do you_should_be
        youll_have youll_have_more your_go your_go_purpl your_not your_not_underwater youv_gone
      `,
    ],
    [
      -0.2,
      `
        <chat>_<settle> blow_out_as breath_in_for breath_out_all breath_out_as breath_out_for hold_the its_a
        keep_it one_breath_to
      `,
    ],
    [-0.4, 'breath_out'],
  ],
  word: [
    [0.8, 'breath out'],
    [0.6, 'air exhal purpl'],
    [0.4, 'as com empt ever exam hold hum in keep puff sigh top tss'],
    [
      0.2,
      `
        able all an ask band bel blow brac calf chat cheek clamp clench clos collarbon count coupl danc day dont
        down draw driv even everybod face fill flat further go gone gossip have help i inhal into its jaw
        lengthen let littl lot loud lunch lung me mouth movement neighbour nice past prepar rais room sav see
        settl short should singl sink sip six ston strok stuck tail talk tell thank to tum umbrella underwater
        way when whil you youll
      `,
    ],
    [
      -0.2,
      `
        a again arm by each end everyth feet first five floor for from front hang heel here hip if is it kne knee
        leg lift look make move off on or other over put right second side sit so somebod spe start stay stop
        straight tall teeth than thes toe under with
      `,
    ],
    [-0.4, 'that the ther thi'],
  ],
} as const satisfies CueWeights
