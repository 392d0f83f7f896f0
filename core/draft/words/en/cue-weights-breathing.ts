/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind breathing; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const BREATHING_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [1.2, 'air'],
    [0.2, 'more'],
    [-0.2, 'attend chat kit less not pace place settle'],
    [-0.4, 'harm num wrong'],
    [-0.6, 'part'],
  ],
  first: [
    [0.8, '<air> <place> out'],
    [0.6, '<pace> in'],
    [0.4, 'breath dont keep let littl short'],
    [
      0.2,
      `
        <far> belt blow brac brais brian chat chest count da derek draw easy empt ever everybod exhal fill four
        hum inhal long mouth nice or relax settl sigh sink sip small soft spun take talk tell thank tss two
        umbrella winifr
      `,
    ],
    [
      -0.2,
      `
        <chat> <harm> <kit> <more> <move> <num> <settle> a down have if not same stay stop straight that the ther
        thi up you
      `,
    ],
    [-0.4, '<do>'],
    [-0.6, '<part>'],
  ],
  given: [[-0.2, '<part> it']],
  last: [
    [0.4, 'breath com in purpl top'],
    [
      0.2,
      `
        ask balloon bel belt bottom brac brais brian calv car clinic code collarbon da danc dare derek down easy
        everybod exam exhal fac face fish forward freez grow gut help hum jaw lift loud lung me out part prepar
        pres puff pull rais return shoulder sigh sip six soup statu strok stuck talk thereabout tss tum
        underwater water
      `,
    ],
    [-0.2, 'again floor hand here leg off side that them ther thi through time toe you'],
  ],
  length: [
    [-0.2, '3-4 5-7 long'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.8, 'the_<air>'],
    [0.6, 'go_down hold_it'],
    [
      0.4,
      `
        <far>_breath <move>_breath <not>_hold <num>_step <pace>_to <place>_as <place>_on <place>_up go_purpl
        it_go keep_<air> keep_breath on_the out_<place> out_on them_com you_<do> your_<air>
      `,
    ],
    [
      0.2,
      `
        <air>_and <air>_as <air>_at <air>_go <air>_in <air>_into <air>_it <air>_on <air>_thre <air>_to
        <attend>_breath <attend>_it <attend>_rais <attend>_the <attend>_tum <attend>_you <chat>_all <chat>_are
        <chat>_ask <chat>_cant <chat>_car <chat>_clinic <chat>_cool <chat>_danc <chat>_dare <chat>_have
        <chat>_hear <chat>_inhal <chat>_it <chat>_past <chat>_pull <chat>_purpl <chat>_see <chat>_squeez
        <chat>_took <chat>_you <chat>_your <do>_in <do>_into <do>_out <far>_sip <far>_the <far>_your <kit>_in
        <kit>_out <less>_bit <less>_part <less>_way <more>_a <more>_breath <more>_inhal <more>_room <more>_top
        <move>_into <move>_talk <move>_them <not>_an <not>_becom <not>_clamp <not>_clench <not>_faint <not>_freez
        <not>_half <not>_sav <not>_turn <not>_under <not>_underwater <not>_you <num>_in <num>_out <num>_way
        <pace>_breath <pace>_out <pace>_part <part>_rais <place>_at <place>_com <place>_down <place>_for
        <place>_go <place>_into <place>_loud <place>_past <place>_through <place>_tum <place>_water <place>_when
        <settle>_at <settle>_gone <settle>_home <settle>_it <settle>_more <settle>_purpl <settle>_stuck
        <settle>_taller <swap>_puff <swap>_sav <swap>_see <take>_it <take>_stuck <take>_taller a_<attend> a_<far>
        a_balloon a_band a_calf a_few a_fish a_statu a_tax able_to about_your all_i an_exam and_<chat> and_<do>
        and_<less> and_<more> and_<pace> and_<place> and_easy and_round as_it as_the at_the away_and back_of
        be_able becom_a befor_it bel_<place> bel_in belt_it big_<air> bit_<far> bit_<more> bit_further
        blood_<harm> blood_pressur blow_<attend> blow_<place> blow_as breath_<chat> breath_<far> breath_<place>
        breath_<settle> breath_at breath_for breath_into breath_through calf_<do> calf_<move> calf_rais can_see
        chat_to clamp_<more> clamp_<place> clamp_down clamp_jaw clamp_up clench_your colour_of com_<place>
        com_down come_<part> come_<swap> come_back come_home cool_<swap> cool_soup count_<place> count_out
        dont_<settle> dont_<take> dont_becom dont_clamp dont_clench dont_freez dont_hold dont_turn dont_you
        down_into draw_the drop_your empt_all ever_<do> ever_<move> ever_<pace> ever_singl ever_time exhal_to
        faint_<place> faint_in fill_<more> fill_<place> fill_up floor_away for_ever for_lunch for_two get_stuck
        get_taller go_<place> go_ear gone_purpl half_way hard_bit hard_part have_<more> have_gone have_more
        i_<swap> i_ask i_can i_see if_<chat> if_you in_<attend> in_<place> in_as in_for in_go in_on in_to
        into_<num> into_the into_thre into_your it_<do> it_<place> it_<settle> it_com it_down it_get it_leav
        it_out it_send it_till it_will its_<far> its_just its_only just_a keep_talk keep_them know_<chat>
        know_your leav_the let_it like_<chat> like_you littl_sip long_<air> long_breath me_hear more_room my_car
        my_clinic next_<air> next_inhal nice_and no_hold no_puff no_sav nobod_faint not_<num> not_an not_half
        not_under not_underwater of_<air> of_<chat> of_air of_clamp of_my one_<place> one_in one_out only_your
        or_at or_thereabout or_youll out_<attend> out_<more> out_as out_at out_com out_for out_loud out_up
        out_when past_the puff_cheek purpl_<place> purpl_fac purpl_on push_the quick_<air> relax_the round_<more>
        round_<place> round_up run_your sav_it see_a see_you send_your settl_into short_and short_puff should_be
        sigh_it sing_<attend> sing_if singl_<num> singl_one sip_of slow_<air> small_<air> small_breath
        soft_<part> soft_tum spun_short step_<place> step_in step_out talk_to taller_<place> taller_on tax_<do>
        tax_<move> tax_return tell_<chat> tell_me thank_<chat> thank_you that_<do> that_all that_run the_<do>
        the_<less> the_<move> the_<pace> the_<place> the_air the_back the_bel the_collarbon the_colour the_exhal
        the_gut the_hard the_jaw the_nose the_shoulder the_spin the_stick the_top the_way thre_<do> thre_<kit>
        thre_step through_the to_<air> to_each to_flat to_gossip to_hum to_prepar turn_into two_<do> two_<kit>
        two_step under_water up_a up_top way_<place> way_out way_to when_it will_help with_<air> with_air
        you_<move> you_<not> you_are you_dare you_have you_pull you_took youll_<settle> your_<chat> your_<more>
        your_<place> your_belt your_blood your_breath your_calv your_cool your_danc your_face your_neighbour
        your_next your_past your_shoulder
      `,
    ],
    [
      -0.2,
      `
        <air>_push <attend>_on <chat>_want <do>_it <move>_up <move>_your <not>_let <part>_down <part>_go
        <place>_all <place>_front <place>_in <place>_you <place>_your <settle>_out <settle>_the <settle>_through
        a_<air> a_<do> a_<move> a_<pace> a_breath breath_<do> breath_out breath_push dont_<move> ever_<air> for_a
        front_of get_your have_a hold_the in_front in_the it_<attend> it_at its_a keep_it let_<settle> let_go
        lift_the out_all out_in out_of sit_<place> the_<chat> the_<far> the_<kit> the_end the_other them_<place>
        to_go to_the up_<place> want_to with_the you_breath you_can your_<harm> your_<part>
      `,
    ],
    [-0.4, '<move>_it'],
  ],
  phrase: [
    [1, 'breathing-sure'],
    [0.4, 'breathing-hint'],
    [0.2, 'breathing-likely caution-hint fault-likely fault-sure range-likely'],
    [
      -0.2,
      `
        chat easier-hint easier-likely easier-sure empty_clauses equipment-hint focus-likely harder-sure praise
        range-sure setup-hint setup-sure tempo-hint tempo-likely
      `,
    ],
    [-0.4, 'dose_only'],
  ],
  start: [
    [0.4, '<far>_<air> <place>_<attend> hold_it keep_them_com'],
    [
      0.2,
      `
        <air>_<attend> <air>_<num> <air>_<place> <attend>_<air> <attend>_<chat> <attend>_<place> <chat>_<swap>
        <less>_<air> <more>_<air> <move>_<air> <not>_<num> <not>_<settle> <not>_<take> <num>_<do> <num>_<kit>
        <pace>_<air> <place>_<air> <place>_<place> belt_it belt_it_in breath_into chat_to chat_to_your come_back
        come_back_to count_out count_out_loud do_not_hold dont_becom dont_becom_a dont_clamp dont_clamp_down
        dont_clamp_up dont_clench dont_clench_your dont_freez dont_go_purpl dont_hold dont_hold_it dont_turn
        dont_turn_into dont_you dont_you_dare down_into down_into_your draw_the drop_your drop_your_shoulder
        empt_all empt_all_the ever_singl ever_singl_one get_it get_it_go get_taller get_taller_on go_down
        hold_it_down i_can i_can_see i_know i_know_your i_see i_see_a in_as in_as_it in_as_you in_for in_for_four
        in_on_the in_to it_send it_send_your it_will its_just its_just_a its_not its_not_an its_only
        its_only_your keep_breath keep_talk keep_them let_it let_it_go let_it_out let_me_hear like_you
        like_you_took littl_one littl_sip lock_it_in nice_and nice_and_easy no_puff no_puff_cheek no_sav
        no_sav_it nobod_faint nobod_faint_in not_a not_a_fish not_a_tax not_half not_half_way on_your_next
        one_breath_for or_at or_at_your or_thereabout or_youll or_youll_go out_as out_as_you out_at out_at_the
        out_com out_com_up out_for out_on out_on_the push_the push_the_floor relax_the relax_the_jaw settl_into
        settl_into_thre short_and short_puff small_breath soft_and soft_and_low soft_tum spun_short talk_to
        talk_to_each talk_to_me tell_me tell_me_what thank_you that_all that_all_i that_run that_run_your
        the_colour the_colour_of two_step two_step_out up_top you_do you_should_be youll_have_more your_danc
        your_not your_not_under your_not_underwater youv_gone_purpl
      `,
    ],
    [
      -0.2,
      `
        <chat>_<settle> <not>_<place> <part>_<place> <place>_<chat> blow_out_as breath_out breath_out_all
        hold_it_at hold_your hold_your_breath its_a keep_it one_breath_to
      `,
    ],
  ],
  word: [
    [0.8, 'out purpl'],
    [0.6, 'air breath com exhal hold in into puff'],
    [0.4, 'blow clamp ever go hum keep littl loud me short sigh sip talk way'],
    [
      0.2,
      `
        able as balloon becom bel belt blood brac brais brian calf calv chat cheek clinic code collarbon colour
        cool count da danc dare derek dont down draw easy empt everybod exam fac face faint few fill fish freez
        gone gut hard hear help hiss i inhal jaw let long lung mouth my neighbour nice part past peel prepar
        pressur return sav see shoulder singl six small soft soup spun statu step strok tax tell thank thereabout
        to took top tss tum turn underwater when whil winifr youll
      `,
    ],
    [
      -0.2,
      `
        0 a again arm at back both by catch do eight elbow end feet first five follow foot for from front good
        got hand hang head heel here hip if just knee last leg level lift light lower make minut move neck not
        noth off other over put right roll same second side sit somebody spe squat start stay still stop straight
        tall ten than them thes thi time toe too want we wher with
      `,
    ],
    [-0.4, 'is that the ther'],
  ],
} as const satisfies CueWeights
