/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind breathing; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const BREATHING_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [1, 'air'],
    [0.2, 'more'],
    [-0.2, 'attend chat do kit not pace place settle swap'],
    [-0.4, 'harm num part wrong'],
  ],
  first: [
    [1, 'out'],
    [0.8, '<air> <place> in'],
    [0.6, 'breath keep'],
    [0.4, '<pace> blow brac count dont fill hum littl short talk'],
    [
      0.2,
      `
        big brais brian chat derek draw easy empt ever everybod exhal five hah hold hup i inhal it lengthen let
        like long man mayb mouth nice normal pant pleas priya puff relax sigh sing sip slow small sniff soft take
        tell thank through tss umbrella wee winifr youll youv
      `,
    ],
    [
      -0.2,
      `
        0 <attend> <chat> <kit> <more> <move> <swap> <take> back catch flat follow full go have if leav make not
        off on only paus same shoulder sit somebody stay stop straight tall that ther they theyr thi to up walk
        we
      `,
    ],
    [-0.4, '<do> <num> <settle> down the'],
    [-0.6, '<part>'],
  ],
  given: [
    [0.2, '<harm> blood once pressur sing tablet you'],
    [-0.2, 'it'],
  ],
  last: [
    [0.6, 'breath purpl'],
    [0.4, 'allow com easy fac in jaw out puff sip top'],
    [
      0.2,
      `
        ask back balloon bel belt blow both bottom brac brais brian calv car cheek clamp clinic collarbon danc
        dare derek doe down drown everybod exam exhal face fish fit forget freez gasp goe gossip grow gut guy hah
        held help huff hum hup kick lift like lip loud low man me melt mouth movement normal nose one open part
        pleas prepar priya pull push return rib rise roof seriou shoulder sigh sing soup stand statu stop strok
        stuck talk tick to tss tum underwater water window
      `,
    ],
    [
      -0.2,
      `
        again all between count end feet first five front hand heel here hip leg no off on opposit plank rest
        right sid side squat straight tall that them ther thi through tight time toe well you
      `,
    ],
  ],
  length: [
    [-0.2, '3-4 5-7 8-12'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.8, 'hold_it'],
    [0.6, '<far>_sip <place>_for its_only the_<air>'],
    [
      0.4,
      `
        <air>_as <air>_at <air>_on <far>_breath <move>_breath <move>_talk <not>_clamp <not>_hold <num>_step
        <pace>_breath <pace>_to <place>_at <place>_go <place>_on <place>_up as_it dont_clamp for_two go_down
        go_purpl in_as in_down in_for in_go in_to into_the it_go its_<far> its_<less> keep_<air> keep_breath
        keep_talk littl_sip on_the out_<place> out_as out_for out_on out_when purpl_fac talk_to the_<do>
        the_<place> the_way them_com to_<do> two_<do> two_step your_<air>
      `,
    ],
    [
      0.2,
      `
        0_<air> 0_breath <air>_all <air>_befor <air>_ever <air>_go <air>_in <air>_into <air>_it <air>_low
        <air>_mov <air>_normal <air>_soft <air>_through <air>_with <air>_you <attend>_breath <attend>_it
        <attend>_out <attend>_rais <attend>_the <attend>_they <attend>_tum <attend>_you <chat>_all <chat>_allow
        <chat>_are <chat>_ask <chat>_can <chat>_car <chat>_clinic <chat>_cool <chat>_danc <chat>_dare <chat>_doe
        <chat>_guy <chat>_have <chat>_hold <chat>_inhal <chat>_know <chat>_long <chat>_not <chat>_past
        <chat>_pull <chat>_purpl <chat>_see <chat>_should <chat>_squeez <chat>_steam <chat>_the <chat>_took
        <chat>_turn <chat>_under <chat>_you <chat>_your <do>_in <do>_up <far>_a <far>_blood <far>_calv <far>_paus
        <far>_puff <far>_the <far>_walk <far>_your <kit>_com <kit>_in <kit>_it <kit>_out <less>_bit <less>_breath
        <less>_part <less>_way <more>_a <more>_breath <more>_huff <more>_inhal <more>_ther <more>_top <move>_into
        <move>_them <not>_an <not>_becom <not>_bite <not>_breath <not>_clench <not>_do <not>_faint <not>_freez
        <not>_gasp <not>_half <not>_held <not>_need <not>_park <not>_puff <not>_purpl <not>_save <not>_turn
        <not>_under <not>_underwater <not>_you <num>_in <num>_out <num>_pat <num>_way <pace>_bit <pace>_out
        <pace>_part <pace>_the <part>_get <part>_goe <part>_of <part>_rais <part>_soft <place>_and <place>_as
        <place>_com <place>_down <place>_each <place>_ever <place>_huff <place>_into <place>_loud <place>_past
        <place>_time <place>_to <place>_tum <place>_water <place>_when <settle>_anyth <settle>_at <settle>_back
        <settle>_heav <settle>_it <settle>_past <settle>_purpl <settle>_stuck <settle>_taller <swap>_clench
        <swap>_gasp <swap>_hold <swap>_puff <swap>_purpl <swap>_see <swap>_sing <take>_anyth <take>_heav
        <take>_it <take>_stuck <take>_taller a_<attend> a_<far> a_<part> a_balloon a_band a_bear a_calf a_clock
        a_few a_fish a_hair a_short a_statu a_tax a_window a_wrist able_to about_your air_<attend> air_go air_mov
        all_gone all_i all_stop all_with an_exam and_<air> and_<chat> and_<do> and_<far> and_<less> and_<more>
        and_<place> and_easy and_low and_out and_round any_<air> any_breath are_a as_the as_they ask_you at_the
        away_and back_of bar_com be_able becom_a bel_<attend> bel_<place> bel_in bel_soft belt_it big_<air>
        bit_<far> bit_<more> bit_further bite_your blood_<harm> blood_pressur blow_<attend> blow_<place> blow_as
        blow_it blow_on breath_<chat> breath_<far> breath_<more> breath_<place> breath_<settle> breath_at
        breath_befor breath_ever breath_for breath_go breath_into breath_low breath_normal breath_through
        breath_you calf_<do> calf_<move> calf_rais can_see can_sing chat_to clamp_<more> clamp_<place> clamp_down
        clamp_jaw clamp_up clamp_your clench_your com_<more> com_<place> com_down com_up come_<part> come_back
        cool_<swap> cool_soup count_<place> count_out dont_<settle> dont_<take> dont_becom dont_bite dont_clench
        dont_freez dont_hold dont_park dont_save dont_turn dont_you down_and down_in down_into draw_the drop_your
        em_mov ever_<do> ever_<move> ever_singl everybod_doe exhal_to faint_<place> faint_in fill_<more>
        fill_<place> fill_up five_pat floor_away for_0 for_<num> for_ever for_lunch get_<attend> get_heav
        get_stuck get_taller go_<more> go_<place> go_ear go_past gone_purpl gone_very hair_<more> hair_more
        half_way hard_bit hard_part hear_<chat> hear_it hear_you hold_<more> hold_anyth huff_at hum_someth
        i_<swap> i_ask i_can i_know i_see i_want if_you in_<attend> in_<place> in_at in_on in_time into_<num>
        into_thre into_your it_<chat> it_<do> it_<place> it_<settle> it_an it_get it_leav it_push it_send it_sink
        it_tick it_will its_allow its_just just_a keep_them know_<chat> know_your leg_goe lengthen_<place>
        lengthen_in let_it let_you like_<chat> like_your littl_breath littl_paus littl_puff long_<air>
        long_breath mayb_a my_car my_clinic need_to next_<air> next_inhal nice_<attend> nice_<place> nice_long
        no_clench no_gasp no_hold no_puff no_purpl nobod_faint nobody_ask nobody_drown not_<less> not_an not_do
        not_half not_held not_under not_underwater of_<air> of_air of_clamp of_my one_<place> one_in one_out
        only_a only_calv only_walk or_at or_whatever out_<attend> out_<far> out_<more> out_at out_com out_each
        out_ever out_loud out_past out_to out_up past_the pat_<place> paus_<attend> paus_if poke_<chat> poke_you
        puff_cheek puff_out push_the relax_the round_<more> round_<place> round_up run_your save_it see_<chat>
        see_a see_you send_your settl_into short_<air> short_and short_breath short_huff short_puff should_be
        sigh_<place> sigh_it sigh_out sing_<attend> sing_if singl_<num> singl_one slow_<air> slow_breath
        small_<air> small_breath small_sip soft_and soft_tum soften_out somebody_go steam_<more> steam_<place>
        steam_up step_<place> step_in step_out take_<place> take_a taller_<place> taller_on tell_<chat> tell_me
        that_allow that_run the_<less> the_<move> the_<pace> the_<part> the_air the_back the_bel the_bit
        the_bottom the_collarbon the_exhal the_gut the_hard the_jaw the_paus the_roof the_shoulder the_spin
        the_stick the_top the_walk they_<settle> they_come thi_<num> thre_<do> thre_<kit> thre_step through_the
        to_<chat> to_<less> to_<move> to_<not> to_<settle> to_<wrong> to_come to_flat to_gossip to_hear to_lift
        to_me to_peel to_prepar to_stop to_whoever top_of turn_into two_<kit> umbrella_<do> umbrella_clos
        under_water up_a up_huff up_ther up_top very_<attend> very_quiet very_seriou walk_<part> walk_back
        way_<place> way_down way_into way_out way_to whatever_fit when_<chat> when_you whil_<chat> whil_you
        will_help with_<air> with_<chat> with_air with_me you_<do> you_<move> you_<not> you_<settle> you_are
        you_dare you_guy you_have you_not you_pull you_should you_took youll_<settle> youll_forget your_<chat>
        your_<kit> your_<less> your_<more> your_<place> your_<settle> your_allow your_belt your_blood your_breath
        your_calv your_cool your_danc your_day your_face your_jaw your_lip your_lung your_neighbour your_next
        your_past your_shoulder your_steam your_tum your_under youv_all youv_gone
      `,
    ],
    [
      -0.2,
      `
        <air>_breath <air>_for <air>_push <attend>_as <attend>_youv <chat>_dont <chat>_go <do>_it <far>_as
        <more>_as <more>_to <move>_to <move>_your <not>_drop <not>_just <not>_let <num>_and <num>_second
        <pace>_of <part>_and <part>_breath <part>_down <part>_go <part>_to <part>_up <place>_all <place>_between
        <place>_front <place>_in <place>_it <place>_of <place>_you <place>_your <settle>_out <settle>_through
        <settle>_to <settle>_up <take>_down a_<air> a_<do> a_<move> a_<pace> a_bit a_breath and_<settle>
        and_<take> at_all bel_<air> bel_breath both_<part> breath_and breath_push breath_to bum_<place> bum_in
        by_the can_<settle> catch_your dont_<move> dont_let ever_<air> flat_<place> follow_the for_a for_five
        front_of get_<more> get_your go_<attend> have_a in_a in_between in_front it_<attend> it_<less> it_<not>
        it_at it_ther its_a its_your just_<air> just_breath keep_it let_<settle> let_go lift_the littl_<do>
        look_at nose_for of_the on_you on_your only_the out_all out_in out_of out_the the_<chat> the_<far>
        the_<kit> the_band the_end the_other the_side the_spe them_<place> ther_for to_<attend> to_<part> to_get
        to_the top_for up_<place> up_as up_to way_<more> way_up with_the you_breath you_want your_<part>
        your_feet
      `,
    ],
    [-0.4, '<move>_it in_the'],
  ],
  phrase: [
    [0.8, 'breathing-sure'],
    [0.4, 'breathing-hint'],
    [0.2, 'breathing-likely caution-hint fault-likely retracted'],
    [
      -0.2,
      `
        chat easier-hint easier-likely equipment-hint execution-sure focus-sure harder-sure praise range-hint
        setup-hint tempo-hint tempo-likely tempo-sure
      `,
    ],
    [-0.4, 'dose_only easier-sure empty_clauses range-sure setup-sure'],
  ],
  start: [
    [0.6, 'its_only'],
    [
      0.4,
      `
        <air>_<attend> <far>_<air> <move>_<air> <place>_<attend> dont_clamp hold_it in_as in_for in_to
        keep_them_com littl_sip out_as out_for
      `,
    ],
    [
      0.2,
      `
        0_breath <air>_<place> <attend>_<air> <attend>_<chat> <attend>_<place> <chat>_<air> <chat>_<attend>
        <chat>_<less> <chat>_<swap> <less>_<air> <more>_<air> <not>_<settle> <not>_<take> <num>_<air> <num>_<do>
        <num>_<kit> <pace>_<air> <place>_<air> <place>_<num> <place>_<pace> <place>_<place> a_littl a_short
        a_short_huff all_the_way bel_soft belt_it belt_it_in blow_it blow_it_up brac_like brac_like_somebody
        breath_into breath_low breath_normal chat_to chat_to_your come_back_to count_out count_out_loud
        do_not_hold dont_becom dont_becom_a dont_bite dont_bite_your dont_clamp_down dont_clamp_up
        dont_clamp_your dont_clench dont_clench_your dont_do_it dont_freez dont_go_purpl dont_hold dont_hold_the
        dont_park dont_park_it dont_save dont_save_it dont_turn dont_turn_into dont_you dont_you_dare down_into
        down_into_your draw_it_an draw_the drop_your drop_your_shoulder ever_singl ever_singl_one everybod_doe
        fill_up five_pat get_it get_it_go get_taller get_taller_on hold_it_down hold_it_to hum_someth i_can
        i_can_see i_know i_know_your i_see i_want_to if_you_can in_and in_and_out in_as_you in_down in_for_four
        in_for_two in_go in_go_down in_on_the in_the_nose in_time it_push it_push_the it_send it_send_your
        it_will its_allow its_just its_just_a its_not_an its_only_a its_only_calv its_only_walk keep_breath
        keep_em_mov keep_it_tick keep_talk keep_the_air keep_them lengthen_in let_it let_it_go let_it_out
        let_the_rib let_your_breath like_you_took like_your like_your_cool like_your_steam like_your_under
        littl_breath littl_puff lock_it_in mayb_a mayb_a_hair nice_and_easy nice_long no_clench no_gasp no_hold
        no_hold_it no_puff no_puff_cheek no_purpl no_purpl_fac nobod_faint nobod_faint_in nobod_need_to
        nobody_ask nobody_ask_you nobody_drown not_a not_a_fish not_a_tax not_half not_half_way not_held
        on_your_next or_at or_at_your or_whatever or_whatever_fit or_youll or_youll_go out_as_it out_as_they
        out_as_you out_at_the out_com out_com_up out_each out_for_two out_on out_on_the out_past out_to
        out_to_come out_up push_the_floor relax_the relax_the_jaw round_the_back settl_into settl_into_thre
        short_and short_breath short_puff sing_if sing_if_you small_breath small_sip soft_and soft_and_low
        soft_tum soften_out take_a take_a_breath talk_to talk_to_me talk_to_whoever tell_me tell_me_about
        tell_me_what thank_you that_all_i that_allow the_bit the_hard the_hard_bit the_leg the_leg_goe top_of_the
        two_step two_step_out umbrella_clos up_huff up_top you_are_a you_cant you_do you_guy you_should
        you_should_be youll_forget your_allow your_danc your_not_under your_not_underwater youv_all youv_all_gone
        youv_all_stop
      `,
    ],
    [
      -0.2,
      `
        <chat>_<do> <chat>_<settle> <do>_<place> <far>_<do> <not>_<move> <not>_<place> <part>_<place>
        <place>_<chat> <settle>_<place> <take>_<place> blow_out blow_out_as breath_a breath_a_bit breath_in_to
        breath_out_all breath_out_for catch_your catch_your_breath dont_let have_a hold_it_at hold_it_ther
        hold_the hold_your_breath in_a its_a keep_it let_go one_breath_to out_to_the
      `,
    ],
  ],
  word: [
    [1, 'purpl'],
    [0.8, 'breath exhal out puff sip'],
    [0.6, 'air blow clamp com hold in into sigh'],
    [
      0.4,
      `
        allow belt blood brac easy ever fill go hard hear hum jaw keep littl me mouth past short talk top way
      `,
    ],
    [
      0.2,
      `
        able as ask balloon becom big bit bottom brais brian calv can chat cheek clench clinic collarbon cool
        count danc dare derek dont draw drown each empt everybod exam fac face faint few fish fit forget freez
        further gasp goe gone gossip gut hah hair held help huff hup i inhal know lengthen let lip lot loud lung
        man mayb movement nearer neighbour next nice nobod normal once only open pant part pat pleas prepar
        pressur priya purs push relax remember return rib roof save see send seriou settl sing singl sink slow
        small sniff soft soup statu steam step stick strok tablet tax tell through tick to took tss tum two
        umbrella underwater very water whatever when whil window winifr you youll youv
      `,
    ],
    [
      -0.2,
      `
        0 about again ankl are back be becaus between both bum by catch chin dead doesnt ease eight elbow end
        enough everyth fall far feel feet finish first flat floor follow foot for from front full good got grip
        hand hang head heel here hip if just kne knee last lean left level lift light look lower make mean middl
        minut move near neck not noth of off one opposit other over pelvic plank put read rest right ring roll
        same second set show sid side sit somebody spe squat start still tall ten than them thes theyr think thos
        time too wait want watch we well were whenever who whol with work yourself
      `,
    ],
    [-0.4, 'a arm at is leg stay straight that the ther thi toe'],
  ],
} as const satisfies CueWeights
