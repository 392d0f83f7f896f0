/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind breathing; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const BREATHING_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [1, 'air'],
    [0.2, 'more'],
    [-0.2, 'attend chat do far kit not pace place settle take'],
    [-0.4, 'harm num part wrong'],
  ],
  first: [
    [1, 'out'],
    [0.8, '<air> <place> in'],
    [0.6, 'breath fill keep'],
    [0.4, '<pace> blow dont exhal hum littl short talk'],
    [
      0.2,
      `
        alway as big brac brais brian chat count derek draw easy empt ever everybod five gone hah hup i inhal it
        lengthen let long malcolm man mayb mouth nice nobod normal or pant pleas priya puff relax send sigh sing
        sip slow small smell sniff soft take tell through tss two umbrella wee winifr without yes youll youv
      `,
    ],
    [
      -0.2,
      `
        0 <chat> <kit> <move> <swap> <take> back bel catch flat follow full go half have if leav off only paus
        quick same shoulder sit somebody stay stop straight tall that ther they theyr thi to up wait walk we with
      `,
    ],
    [-0.4, '<do> <more> <num> <settle> down not the'],
    [-0.6, '<part>'],
  ],
  given: [
    [
      0.2,
      `
        <harm> <swap> about all blood can effort hum let once pressur sing tablet through you
      `,
    ],
    [-0.2, 'it'],
  ],
  last: [
    [0.6, 'breath puff purpl'],
    [0.4, 'allow collarbon com fac jaw mouth out sip top'],
    [
      0.2,
      `
        alway back balloon bel belt bit blow both brac brais brian calv candl car cheek chest clamp clinic danc
        dare derek doe door down drown easy everybod exam exhal fish fit forget freez gasp goe gossip grow gut
        guy hah held help huff hum hup in inhal kick lesson lift like lip longer loud low malcolm man melt
        movement normal nose not open optional order part pleas prepar pres priya pull pump punch push return rib
        rise roof ros seriou shoulder sigh sing six soup stand statu stop strok stuck talk think tick to tss tum
        two underwater waistband water window yes
      `,
    ],
    [
      -0.2,
      `
        again air all away between count end feet first front hand heel hip leg no off on opposit plank read rest
        side squat straight tall that them ther thi through tight time toe twist well
      `,
    ],
  ],
  length: [
    [0.2, 'long'],
    [-0.2, '3-4 5-7 8-12'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.8, 'hold_it'],
    [0.6, '<far>_sip <not>_hold <place>_for go_purpl in_for its_only the_<air> the_<place>'],
    [
      0.4,
      `
        <air>_as <air>_at <air>_on <far>_breath <more>_a <move>_breath <move>_talk <not>_clamp <num>_step
        <pace>_bit <pace>_breath <pace>_to <place>_go <place>_into <place>_on <place>_up as_it dont_clamp
        ever_<move> for_two go_down in_as in_down in_go in_to into_the it_go its_<far> its_<less> keep_<air>
        keep_breath keep_talk littl_sip on_the out_<place> out_for out_on out_when talk_to the_<do> the_<more>
        the_back the_chest the_collarbon the_way them_com two_<do> up_a
      `,
    ],
    [
      0.2,
      `
        0_<air> 0_breath <air>_against <air>_befor <air>_com <air>_down <air>_each <air>_ever <air>_go <air>_in
        <air>_into <air>_it <air>_low <air>_mov <air>_normal <air>_soft <air>_through <attend>_and
        <attend>_breath <attend>_it <attend>_off <attend>_out <attend>_rais <attend>_somebod <attend>_steam
        <attend>_the <attend>_they <attend>_though <attend>_tum <attend>_you <chat>_about <chat>_allow <chat>_can
        <chat>_car <chat>_clinic <chat>_cool <chat>_danc <chat>_dare <chat>_doe <chat>_down <chat>_guy
        <chat>_have <chat>_hold <chat>_inhal <chat>_it <chat>_know <chat>_long <chat>_mist <chat>_past
        <chat>_pull <chat>_purpl <chat>_push <chat>_see <chat>_should <chat>_sound <chat>_squeez <chat>_steam
        <chat>_stiff <chat>_took <chat>_turn <chat>_under <chat>_were <chat>_you <chat>_your <do>_has <do>_in
        <far>_a <far>_blood <far>_calv <far>_paus <far>_puff <far>_the <far>_walk <far>_your <harm>_bit
        <kit>_down <kit>_in <kit>_it <kit>_out <less>_and <less>_bit <less>_breath <less>_in <less>_part
        <less>_to <less>_way <more>_bit <more>_breath <more>_huff <more>_inhal <more>_ther <move>_has <move>_into
        <move>_them <not>_an <not>_becom <not>_bite <not>_breath <not>_clench <not>_do <not>_faint <not>_freez
        <not>_gasp <not>_half <not>_held <not>_hoist <not>_medal <not>_mouth <not>_need <not>_optional <not>_park
        <not>_purpl <not>_save <not>_turn <not>_under <not>_underwater <not>_up <not>_you <num>_in <num>_out
        <num>_pat <num>_sniff <num>_strid <num>_way <pace>_if <pace>_out <pace>_part <pace>_the <part>_against
        <part>_goe <part>_lower <part>_not <part>_of <part>_rais <part>_soft <place>_air <place>_and <place>_as
        <place>_at <place>_com <place>_down <place>_ever <place>_huff <place>_loud <place>_not <place>_past
        <place>_that <place>_time <place>_to <place>_tum <place>_water <place>_when <settle>_another
        <settle>_anyth <settle>_at <settle>_back <settle>_heav <settle>_it <settle>_past <settle>_purpl
        <settle>_stiff <settle>_stuck <settle>_taller <swap>_clench <swap>_gasp <swap>_hear <swap>_hoist
        <swap>_hold <swap>_hum <swap>_medal <swap>_puff <swap>_purpl <swap>_see <swap>_sing <take>_anyth
        <take>_heav <take>_it <take>_stuck <take>_taller <wrong>_from <wrong>_you a_<attend> a_<part> a_balloon
        a_band a_bear a_bicycl a_calf a_clock a_fair a_few a_fish a_fridg a_hair a_hymn a_pair a_short a_statu
        a_swim a_tax a_window a_wrist able_to about_right about_your age_that air_<attend> air_<chat> air_<place>
        air_<settle> air_com air_down air_go air_in air_mov all_gone all_i all_just all_stop all_with
        alway_<place> alway_in an_exam an_umbrella and_<air> and_<chat> and_<do> and_<less> and_<more>
        and_<place> and_easy and_go and_low and_out and_round and_slid and_warm anno_the any_<air> any_breath
        are_a are_we as_<attend> as_if as_the as_they as_though ask_you at_our at_the away_and back_<not>
        back_not back_of bar_down be_<place> be_able be_over becaus_<not> becaus_nobod becom_a been_sav befor_it
        bel_<attend> bel_<place> bel_against bel_in bel_soft bell_down belt_it bicycl_<do> bicycl_<move>
        bicycl_pump big_<air> bit_<far> bit_<more> bit_further bite_your blood_<harm> blood_pressur blow_<attend>
        blow_<place> blow_as blow_it blow_on breath_<chat> breath_<far> breath_<more> breath_<place>
        breath_<settle> breath_at breath_befor breath_ever breath_for breath_go breath_into breath_low
        breath_normal breath_through calf_<do> calf_<move> calf_rais can_hear can_hum can_see can_sing chat_to
        cheek_puff chest_<place> choir_<chat> choir_<more> choir_next clamp_<more> clamp_<place> clamp_down
        clamp_jaw clamp_up clamp_your clench_your colour_of com_<more> com_<place> com_up come_<part> come_back
        cool_<swap> cool_soup count_<place> count_out dont_<take> dont_becom dont_bite dont_clench dont_freez
        dont_hold dont_park dont_save dont_turn dont_you down_<place> down_and down_in down_into down_your
        draw_the drop_your effort_your em_mov ever_<do> ever_pres ever_punch ever_singl everybod_doe
        everyon_sound exhal_to faint_<place> faint_in fair_few few_candl fill_<more> fill_<place> fill_the
        fill_up fill_your five_pat floor_away for_0 for_<num> for_ever for_go for_it for_lunch fridg_that
        get_<attend> get_heav get_stuck get_taller go_<less> go_<more> go_<place> go_ear go_longer go_past
        go_stiff goe_<place> gone_purpl gone_very hair_<more> hair_more half_way hard_bit hard_part hear_<chat>
        hear_it hear_who hear_you hoist_the hold_anyth huff_at hum_someth i_<swap> i_ask i_can i_know i_see
        i_want if_somebod if_steam if_you imagin_the in_<air> in_<attend> in_<place> in_air in_at in_on in_time
        into_<num> into_thre into_your is_<not> is_not isnt_a it_<chat> it_<do> it_<place> it_<settle> it_an
        it_get it_in it_leav it_push it_send it_sink it_tick it_to it_will its_allow its_just just_a just_wait
        keep_them know_<chat> know_your leg_<do> leg_goe leg_lower lengthen_<place> lengthen_in let_it let_you
        like_<chat> like_a like_your littl_breath littl_paus littl_puff long_<air> long_and loud_<far>
        loud_<less> loud_enough lungful_sinc mayb_a me_hear medal_for mist_<more> mist_<place> mist_up my_car
        my_clinic need_to next_<air> next_inhal nice_<attend> nice_<place> nice_long no_clench no_gasp no_hold
        no_medal no_puff no_purpl nobod_<place> nobod_faint nobod_in nobod_need nobody_ask nobody_drown not_<air>
        not_<less> not_<more> not_<swap> not_an not_do not_half not_held not_mouth not_optional not_under
        not_underwater not_up of_<air> of_air of_clamp of_glass on_ever one_<air> one_<place> one_in one_out
        only_a only_calv only_walk open_<attend> open_like or_are or_at or_whatever our_age out_<attend>
        out_<far> out_<more> out_as out_at out_com out_each out_loud out_past out_to out_up past_the pat_<place>
        pattern_<place> pattern_on paus_<attend> paus_if plank_<not> plank_isnt poke_<chat> poke_you puff_cheek
        puff_out purpl_fac push_off push_the recover_<pace> recover_minut relax_the rep_<num> rep_two rib_open
        round_<more> round_<place> round_up run_your sav_<more> sav_<place> sav_up save_it see_<chat> see_a
        see_you send_your sharp_tss short_<air> short_and short_breath short_huff short_puff short_sharp
        sigh_<place> sigh_it sigh_out sinc_<chat> sinc_tuesda sing_<attend> sing_if singl_<num> singl_one sip_the
        slow_<air> small_<air> small_breath small_sip smell_the sniff_<place> sniff_in soft_tum soften_out
        some_of somebod_were sound_<attend> sound_like spin_off stead_bit steam_<more> steam_<place> steam_up
        step_<place> step_in step_out still_<air> still_breath stop_<air> stop_breath strid_<place> strid_in
        strid_out swim_lesson take_<place> take_a take_in taller_<place> taller_on tell_<chat> tell_me
        that_<attend> that_lungful that_order that_run that_think the_<less> the_<move> the_<pace> the_<part>
        the_air the_bel the_bell the_belt the_bit the_bottom the_car the_choir the_colour the_effort the_exhal
        the_gut the_hard the_jaw the_longer the_lung the_nose the_paus the_plank the_recover the_roof the_ros
        the_shoulder the_spin the_stead the_stick the_top the_walk the_wall they_<settle> they_come thi_<do>
        thi_<move> though_<chat> though_you thre_<do> thre_<kit> thre_step through_the tip_from to_<air>
        to_<chat> to_<do> to_<less> to_<not> to_<settle> to_<wrong> to_anno to_breath to_come to_flat to_gossip
        to_hear to_lift to_me to_peel to_poke to_prepar to_stop to_whoever top_of tss_with turn_into two_<kit>
        two_sniff two_step two_strid umbrella_<do> umbrella_clos under_water up_huff up_ther very_<attend>
        very_quiet very_seriou wait_for walk_<part> walk_back way_<place> way_into way_out way_to we_all
        were_about were_mist whatever_fit when_<chat> when_you whil_<chat> whil_the whil_your who_is will_help
        with_<chat> with_air with_me without_hoist you_<chat> you_<do> you_<move> you_<not> you_<settle> you_dare
        you_guy you_have you_like you_not you_pull you_push you_should you_took you_were youll_<settle>
        youll_forget your_<air> your_<chat> your_<less> your_<more> your_<place> your_<settle> your_<take>
        your_allow your_belt your_blood your_breath your_calv your_cool your_danc your_day your_face your_jaw
        your_lip your_lung your_neighbour your_next your_past your_pattern your_rib your_shoulder your_squeez
        your_steam your_teeth your_tum your_under youv_all youv_stop
      `,
    ],
    [
      -0.2,
      `
        <air>_breath <air>_for <air>_hold <air>_push <attend>_youv <chat>_dont <chat>_fold <chat>_go <do>_it
        <do>_on <far>_as <more>_as <more>_the <more>_to <move>_for <move>_forward <move>_on <move>_out <move>_up
        <move>_your <not>_drop <not>_just <not>_let <num>_and <num>_second <num>_to <pace>_in <part>_breath
        <part>_down <part>_go <part>_in <part>_to <part>_up <place>_all <place>_between <place>_front <place>_in
        <place>_it <place>_of <place>_you <place>_your <settle>_for <settle>_out <settle>_through <settle>_to
        <settle>_up <take>_down <take>_the a_<air> a_<do> a_<move> a_<swap> a_bit a_breath air_out and_<part>
        and_<take> as_a at_all bel_<air> bel_breath both_<part> breath_and breath_in breath_push breath_to
        bum_<place> bum_in by_the can_<chat> can_<settle> catch_your dont_<move> dont_let down_the flat_<place>
        fold_<place> fold_forward follow_the for_a for_five front_of get_<more> get_<place> get_your have_a
        i_dont in_a in_between in_front it_<attend> it_<less> it_<move> it_<not> it_at it_ther its_a its_your
        just_<air> just_breath keep_it let_<settle> let_go lift_on lift_the littl_<do> long_<part> look_at
        nose_for not_<chat> of_the on_you on_your only_the out_all out_in out_of pelvic_floor sit_<place>
        soften_on stay_<place> that_<chat> that_the the_<chat> the_<far> the_<kit> the_arm the_band the_end
        the_middl the_other the_spe them_<place> ther_for to_<attend> to_<part> to_get to_lengthen to_twist
        to_your top_for up_<attend> up_<place> up_as up_to way_<more> way_up weight_<place> with_a with_the
        you_<place> you_fold your_<part> your_chest your_feet your_head your_heel youv_got
      `,
    ],
    [-0.4, '<move>_it in_the to_the'],
  ],
  phrase: [
    [0.8, 'breathing-sure'],
    [0.4, 'breathing-hint'],
    [0.2, 'breathing-likely execution-hint fault-likely retracted'],
    [
      -0.2,
      `
        easier-hint easier-likely equipment-hint equipment-likely focus-sure harder-likely harder-sure praise
        range-hint setup-hint tempo-hint tempo-likely tempo-sure
      `,
    ],
    [-0.4, 'chat dose_only easier-sure empty_clauses range-sure setup-sure'],
  ],
  start: [
    [0.6, 'its_only'],
    [
      0.4,
      `
        <air>_<attend> <attend>_<air> <attend>_<chat> <far>_<air> <move>_<air> <place>_<attend> dont_clamp
        hold_it in_as in_for in_to keep_breath keep_talk keep_them_com littl_sip out_as out_for talk_to
      `,
    ],
    [
      0.2,
      `
        0_breath <air>_<place> <attend>_<attend> <chat>_<air> <chat>_<attend> <chat>_<less> <chat>_<swap>
        <less>_<air> <more>_<air> <not>_<settle> <not>_<take> <num>_<air> <num>_<do> <num>_<kit> <pace>_<air>
        <part>_<attend> <place>_<num> <place>_<place> a_littl a_short a_short_huff a_short_sharp as_if
        as_if_steam as_though as_though_you as_you as_you_push bar_down bel_soft belt_it belt_it_in blow_it
        breath_into breath_low breath_normal chat_to chat_to_your cheek_puff come_back_to count_out
        count_out_loud do_not_hold dont_becom dont_becom_a dont_bite dont_bite_your dont_clamp_down dont_clamp_up
        dont_clamp_your dont_clench dont_clench_your dont_do_it dont_freez dont_go_purpl dont_hold dont_hold_it
        dont_hold_the dont_park dont_park_it dont_save dont_save_it dont_turn dont_turn_into dont_you
        dont_you_dare down_in down_in_the down_into down_into_your draw_it_an draw_the drop_your
        drop_your_shoulder ever_singl ever_singl_one everybod_doe fill_the fill_the_back fill_up fill_your
        fill_your_bel five_pat four_slow four_slow_breath get_it get_it_go get_taller get_taller_on hold_it_down
        hold_it_to hum_someth i_can i_can_hear i_can_see i_know i_know_your i_see i_want_to if_you_can imagin_the
        in_and in_and_out in_as_you in_down in_for_four in_for_two in_go in_go_down in_on_the in_the_nose in_time
        it_is_not it_push it_push_the it_send it_send_your it_will its_allow its_just its_just_a its_not_an
        its_only_a its_only_calv its_only_walk keep_em_mov keep_it_tick keep_the_air keep_them lengthen_in let_it
        let_it_go let_it_out let_me_hear let_your_breath like_you_took like_your like_your_cool like_your_under
        littl_breath littl_puff lock_it_in mayb_a mayb_a_hair never_hold nice_and_easy nice_long no_clench
        no_gasp no_hold no_hold_it no_medal no_medal_for no_puff no_puff_cheek no_purpl no_purpl_fac nobod_faint
        nobod_faint_in nobod_need nobod_need_to nobody_ask nobody_ask_you nobody_drown not_a not_a_fish not_a_tax
        not_half not_half_way not_held not_up on_the_car on_your_next or_at or_at_your or_whatever
        or_whatever_fit or_youll_go out_as_it out_as_they out_as_you out_at out_at_the out_com out_com_up
        out_each out_for_two out_on out_on_the out_past out_to out_to_come out_up push_the_floor relax_the
        relax_the_jaw round_the_back send_the_air settl_into_thre short_and short_breath short_puff sing_if
        sing_if_you slow_breath small_breath small_sip smell_the smell_the_ros soft_and soft_and_low soft_tum
        soften_out some_of some_of_you still_breath take_a take_a_breath talk_to_me talk_to_whoever tell_me
        tell_me_about tell_me_what that_all_i that_allow that_is the_bit the_hard the_hard_bit the_leg
        the_leg_goe the_plank top_of_the two_sniff two_sniff_in two_step two_step_out two_strid two_strid_in
        umbrella_clos up_huff up_top whil_the without_hoist without_hoist_the you_are_a you_cant you_do you_guy
        you_should you_should_be youll_forget your_allow your_danc your_not_under your_not_underwater youv_all
        youv_all_gone youv_all_stop
      `,
    ],
    [
      -0.2,
      `
        <chat>_<settle> <do>_<place> <far>_<do> <not>_<attend> <not>_<do> <not>_<far> <not>_<move> <not>_<pace>
        <not>_<place> <part>_<place> <place>_<chat> <settle>_<place> <take>_<place> breath_a breath_a_bit
        breath_in breath_in_to breath_out_all breath_out_for catch_your catch_your_breath dont_let have_a
        hold_it_at hold_it_ther hold_the hold_your_breath in_a inhal_to_lengthen its_a keep_it let_go
        one_breath_to
      `,
    ],
    [-0.4, 'out_to_the'],
  ],
  word: [
    [1, 'puff purpl'],
    [0.8, 'air breath exhal out sip'],
    [0.6, 'blow clamp com fill hold hum in into sigh'],
    [
      0.4,
      `
        allow as belt blood brac cheek ever face few go hard hear inhal jaw keep lip littl loud mouth nobod past
        short talk top tss way
      `,
    ],
    [
      0.2,
      `
        able age all alway anno ask balloon becom bicycl bit brais brian calv can candl car chat chest choir
        clench clinic collarbon colour cool count danc dare derek draw drown each easy empt everybod everyon exam
        fac faint fair fish forget fridg gasp glass goe gone gossip gut hah hair held help hoist however huff hup
        hymn i lesson let like long longer lung lungful malcolm mayb me medal mist mov movement nearer next nice
        normal only open optional pant pat pattern peel pleas poke prepar pressur priya pump purs push recover
        relax return rib roof ros sav save send seriou settl sharp sinc sing singl small smell sniff soft some
        sound soup statu stead steam step strid strok suck swim tablet tax teeth tell through tick to tum two
        umbrella underwater very waistband water whatever when whil window winifr yes you youll youv
      `,
    ],
    [
      -0.2,
      `
        0 again along ankl back bend bent between both bum button catch check chin curl dead do doesnt done ease
        eight elbow end everyth fall far feel feet finish first flat floor fold follow foot for forward four from
        front full gent good got grip hang head heel here hip if is its jog just kne knee last lean leav left leg
        light look make mean middl minut more near neck noth of off one other over overhead pelvic put read rest
        right ring roll same say second set shak shin show sid side sit skip so somebody spe squat start still
        stretch tall ten th than them then thes theyr third thos time too touch twent twist us want watch we
        weight well whenever whol with work yourself
      `,
    ],
    [-0.4, 'a arm at by hand stay straight that the ther thi toe'],
  ],
} as const satisfies CueWeights
