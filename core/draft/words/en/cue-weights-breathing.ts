/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind breathing; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const BREATHING_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [1, 'air'],
    [0.2, 'more'],
    [-0.2, 'attend chat harm kit not pace place settle swap take'],
    [-0.4, 'num'],
    [-0.6, 'part wrong'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.8, '<air> <place> in out'],
    [0.6, '<pace>'],
    [0.4, 'breath count dont keep littl short'],
    [
      0.2,
      `
        <far> belt big blow brac brais brian chat chest da derek draw easy empt ever everybod exhal fill four hum
        inhal let like long mouth nice nobod or puff push sigh sing slow small soft spun take talk tell thank top
        tss two umbrella winifr youv
      `,
    ],
    [
      -0.2,
      `
        <chat> <kit> <more> <move> <swap> a all bel catch flat have if leav not only same stay stop straight that
        ther thi up you
      `,
    ],
    [-0.4, '<do> <num> <settle> down the'],
    [-0.6, '<part>'],
  ],
  given: [
    [0.2, '<harm> blood let pressur'],
    [-0.2, 'it'],
  ],
  last: [
    [0.6, 'purpl'],
    [0.4, 'allow breath com in puff sip top'],
    [
      0.2,
      `
        ask balloon be bel belt blood both brac brais brian calv cheek clinic code collarbon da danc derek down
        easy everybod exam exhal fac face fish forward freez grow gut help huff hum jaw lift loud lung mouth nose
        one out part prepar pull rais return shoulder sigh six slow soup statu strok stuck talk thereabout tick
        tss tum underwater window
      `,
    ],
    [
      -0.2,
      `
        again floor hand here leg off on right side that them ther thi through time toe you
      `,
    ],
  ],
  length: [
    [-0.2, '3-4 5-7 8-12 long'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.6, 'hold_it the_<air>'],
    [
      0.4,
      `
        <air>_as <air>_on <far>_breath <far>_sip <move>_breath <not>_clamp <not>_hold <num>_step <pace>_to
        <place>_as <place>_for <place>_go <place>_on <place>_up dont_clamp go_down go_purpl in_as in_for its_only
        keep_<air> keep_breath on_the out_<place> out_as out_on step_<place> them_com
      `,
    ],
    [
      0.2,
      `
        0_<air> 0_breath <air>_and <air>_at <air>_befor <air>_go <air>_in <air>_into <air>_it <air>_through
        <air>_to <air>_with <attend>_breath <attend>_it <attend>_rais <attend>_the <attend>_they <attend>_tum
        <attend>_you <chat>_all <chat>_allow <chat>_are <chat>_ask <chat>_can <chat>_cant <chat>_car
        <chat>_clinic <chat>_cool <chat>_danc <chat>_have <chat>_hear <chat>_hold <chat>_inhal <chat>_it
        <chat>_not <chat>_past <chat>_pull <chat>_purpl <chat>_see <chat>_squeez <chat>_steam <chat>_took
        <chat>_your <do>_in <do>_into <do>_out <do>_up <far>_blood <far>_danc <far>_one <far>_sigh <far>_the
        <far>_your <kit>_in <kit>_out <less>_bit <less>_breath <less>_part <less>_way <more>_a <more>_breath
        <more>_huff <more>_inhal <more>_room <more>_top <move>_into <move>_talk <move>_them <not>_an <not>_becom
        <not>_clench <not>_do <not>_faint <not>_freez <not>_half <not>_sav <not>_save <not>_turn <not>_under
        <not>_underwater <num>_out <num>_way <pace>_bit <pace>_breath <pace>_out <pace>_part <part>_rais
        <place>_0 <place>_at <place>_com <place>_down <place>_ever <place>_huff <place>_into <place>_loud
        <place>_past <place>_tum <place>_water <place>_when <settle>_at <settle>_back <settle>_gone <settle>_home
        <settle>_it <settle>_more <settle>_purpl <settle>_stuck <settle>_taller <swap>_sav <swap>_see <take>_it
        <take>_stuck <take>_taller a_<attend> a_<far> a_balloon a_band a_calf a_few a_fish a_human a_littl
        a_statu a_tax a_window able_to about_your air_<attend> all_gone all_i all_stop all_with an_exam
        and_<chat> and_<do> and_<less> and_<more> and_<pace> and_<place> and_easy and_out and_round as_it as_the
        as_they as_you at_the away_and back_of bar_com be_able becom_a befor_it bel_<place> bel_in belt_it
        big_<air> big_sigh bit_<far> bit_<more> bit_further blood_<harm> blood_pressur blow_<attend> blow_<place>
        blow_as blow_on breath_<chat> breath_<far> breath_<place> breath_<settle> breath_at breath_for breath_go
        breath_into calf_<do> calf_<move> calf_rais can_see chat_to clamp_<more> clamp_<place> clamp_down
        clamp_jaw clamp_up clench_your colour_of com_<place> com_down come_<part> come_<swap> come_back come_home
        cool_<swap> cool_soup count_<place> count_out dont_<settle> dont_<take> dont_becom dont_clench dont_freez
        dont_hold dont_save dont_turn down_into draw_the drop_your ever_<do> ever_<move> ever_singl ever_time
        exhal_to faint_<place> faint_in fill_<more> fill_<place> fill_up floor_away for_ever for_two four_slow
        get_stuck get_taller go_<place> go_ear gone_purpl gone_very half_way hard_bit hard_part have_<more>
        have_gone have_more human_be i_<swap> i_ask i_can i_know i_see if_<chat> if_you in_<attend> in_<place>
        in_down in_go in_on in_to into_<num> into_the into_thre into_your it_<do> it_<place> it_<settle> it_down
        it_get it_go it_leav it_out it_send it_tick it_till it_will its_<far> its_<less> its_allow its_just
        just_a keep_talk keep_them know_<chat> know_your leav_the let_it like_<chat> like_you littl_sip
        long_<air> long_breath me_hear more_room my_car my_clinic next_<air> next_inhal nice_and no_hold no_puff
        no_sav nobod_faint not_<num> not_an not_do not_half not_under not_underwater of_<air> of_air of_clamp
        of_my one_<place> one_in one_out only_blood only_danc only_your open_<air> or_at or_thereabout or_youll
        out_<attend> out_<more> out_at out_com out_each out_for out_loud out_up out_when past_the pressur_<place>
        puff_cheek purpl_fac push_the quick_<air> relax_the round_<more> round_<place> round_up run_your sav_it
        save_it see_<chat> see_a see_you send_your settl_into short_and short_puff should_be sigh_<place>
        sigh_out sing_<attend> sing_if singl_<num> singl_one sip_of small_<air> small_breath soft_<part> soft_and
        soft_tum soften_out spun_short steam_<more> steam_<place> steam_up step_in step_out take_a talk_to
        taller_<place> taller_on tax_<do> tax_<move> tax_return tell_<chat> tell_me thank_<chat> thank_you
        that_<do> that_run the_<do> the_<less> the_<move> the_<pace> the_<part> the_<place> the_air the_back
        the_bel the_collarbon the_colour the_exhal the_gut the_hard the_jaw the_lung the_shoulder the_spin
        the_stick the_top the_way thre_<do> thre_<kit> thre_step through_the to_<do> to_<move> to_come to_each
        to_flat to_gossip to_hum to_lift to_prepar top_of turn_into two_<do> two_<kit> two_step under_water up_a
        up_huff up_top very_<attend> very_quiet way_<place> way_out way_to whil_<chat> will_help with_<air>
        with_air you_<do> you_<move> you_<not> you_are you_cant you_have you_not you_pull you_should you_took
        youll_<settle> your_<air> your_<chat> your_<kit> your_<less> your_<more> your_allow your_belt your_blood
        your_breath your_calv your_cool your_danc your_day your_face your_lung your_neighbour your_next your_on
        your_past your_shoulder your_steam youv_all
      `,
    ],
    [
      -0.2,
      `
        <air>_push <attend>_as <attend>_on <chat>_dont <chat>_one <chat>_want <move>_your <not>_let <num>_and
        <pace>_of <place>_all <place>_front <place>_in <place>_you <place>_your <settle>_through a_<air> a_<do>
        a_<move> a_<pace> a_breath as_<attend> as_<place> at_all breath_<do> breath_out breath_push dont_<move>
        dont_let ever_<air> flat_<place> for_five get_your in_front in_the it_<attend> it_at its_a keep_it
        let_<settle> let_go lift_the look_at nose_for out_all out_in out_of out_the the_<chat> the_<far>
        the_<kit> the_end them_<place> to_the up_<place> want_to with_the you_breath your_<harm> your_<part>
        your_chest
      `,
    ],
    [-0.4, '<do>_it <move>_it'],
  ],
  phrase: [
    [0.8, 'breathing-sure'],
    [0.4, 'breathing-hint'],
    [0.2, 'breathing-likely fault-likely fault-sure retracted'],
    [
      -0.2,
      `
        chat easier-hint easier-likely easier-sure equipment-hint execution-sure focus-likely harder-sure praise
        range-hint setup-hint setup-sure tempo-hint tempo-likely tempo-sure
      `,
    ],
    [-0.4, 'dose_only empty_clauses range-sure'],
  ],
  start: [
    [
      0.4,
      `
        <far>_<air> <move>_<air> <place>_<attend> dont_clamp hold_it in_for its_only keep_them_com out_for
      `,
    ],
    [
      0.2,
      `
        <air>_<attend> <air>_<place> <attend>_<air> <attend>_<chat> <chat>_<less> <chat>_<swap> <do>_<air>
        <less>_<air> <more>_<air> <not>_<settle> <not>_<take> <num>_<do> <num>_<kit> <pace>_<air> <pace>_<place>
        <place>_<air> <place>_<place> a_littl belt_it belt_it_in big_one blow_as blow_on breath_into chat_to
        chat_to_your come_back come_back_to count_out count_out_loud do_not_hold dont_becom dont_becom_a
        dont_clamp_down dont_clamp_up dont_clench dont_clench_your dont_do_it dont_freez dont_hold dont_hold_the
        dont_save dont_save_it dont_turn dont_turn_into dont_you_dare down_into down_into_your draw_the drop_your
        drop_your_shoulder ever_singl ever_singl_one four_slow four_slow_breath get_it get_it_go get_taller
        get_taller_on go_down hold_it_down i_can i_can_see i_know i_know_your i_see i_see_a in_as in_as_it
        in_as_you in_down in_for_four in_go in_on_the in_to in_to_come it_send it_send_your it_will its_allow
        its_just its_just_a its_not_an its_only_blood its_only_danc its_only_your keep_breath keep_it_tick
        keep_talk keep_them let_it let_it_go let_it_out let_me_hear let_your_breath like_a_human like_you
        like_you_took like_your_steam littl_one littl_sip lock_it_in nice_and nice_and_easy no_puff no_puff_cheek
        no_sav no_sav_it nobod_faint nobod_faint_in not_a not_a_fish not_a_tax not_half not_half_way on_your_next
        or_at or_at_your or_thereabout or_youll or_youll_go out_as out_as_you out_at out_at_the out_com
        out_com_up out_on out_on_the push_the push_the_floor relax_the relax_the_jaw settl_into settl_into_thre
        short_and short_puff sing_if sing_if_you small_breath soft_and soft_and_low soft_tum soften_out
        spun_short take_a talk_to talk_to_each talk_to_me tell_me tell_me_about tell_me_what thank_you that_all_i
        that_run that_run_your the_colour the_colour_of top_of_the two_step two_step_out up_huff up_top you_do
        you_should you_should_be youll_have_more your_allow your_danc your_not_under your_not_underwater youv_all
        youv_all_gone youv_all_stop
      `,
    ],
    [
      -0.2,
      `
        <chat>_<do> <chat>_<settle> <far>_<do> <not>_<move> <not>_<place> <not>_<wrong> <part>_<place>
        <place>_<chat> blow_out blow_out_as breath_out breath_out_all hold_your hold_your_breath in_your its_a
        one_breath_to
      `,
    ],
  ],
  word: [
    [0.8, 'out purpl'],
    [0.6, 'air breath clamp com exhal go hold in into puff sigh sip'],
    [0.4, 'allow blow ever hum keep littl loud me mouth short talk top'],
    [
      0.2,
      `
        able all as balloon becom bel belt big bit blood brac brais brian calv cant chat cheek clinic code
        collarbon colour cool count danc derek dont down draw easy empt exam fac face faint few fill fish freez
        further gone gut hard hear help huff human i inhal jaw let long lung neighbour nice nose only open part
        past peel prepar pressur return sav save see settl shoulder sing singl small soft soup spun statu steam
        step strok tax tell thank thereabout through tick took tss tum turn two underwater way when whil window
        winifr
      `,
    ],
    [
      -0.2,
      `
        0 again are arm at back between bum by catch dead eight elbow end feet first five flat follow foot for
        from front got hand hang head heel here hip if just kne knee last left leg level light look lower make
        middl minut move neck nobody not noth opposit other over put rest right ring roll same say second side
        sit somebody someth spe squat start stay still stop straight tall ten than them thes time toe too twic
        walk want watch we with yourself
      `,
    ],
    [-0.4, 'a is off that the ther thi'],
  ],
} as const satisfies CueWeights
