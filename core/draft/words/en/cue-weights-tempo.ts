/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind tempo; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const TEMPO_WEIGHTS = {
  bias: [[0.2, 'yes']],
  class: [
    [1.8, 'pace'],
    [0.4, 'num'],
    [0.2, 'chat'],
    [-0.2, 'air kit less move place settle swap take'],
    [-0.4, 'attend'],
    [-0.8, 'part'],
  ],
  conditional: [[-0.2, 'yes']],
  early: [[-0.2, 'yes']],
  first: [
    [0.4, '<pace> ease ratio'],
    [
      0.2,
      `
        <do> <harm> <move> <num> <settle> <swap> and count do down even explod five float go hold linger lower
        make move nice nobody not power rate resist snap stop ther thes two work
      `,
    ],
    [-0.2, '<air> <chat> <kit> control dont four i slow squeez stick that the time'],
    [-0.4, '<part>'],
  ],
  given: [
    [0.2, '<part>'],
    [-0.2, '<more> it'],
  ],
  last: [
    [0.6, 'bounc'],
    [0.4, 'back'],
    [
      0.2,
      `
        0 and asleep bit bottom breath chest down elephant explod few goe hold it jerk jog last lower more music
        now one plop pressur puls settl shap sing singl squeez tea that them to wait watch
      `,
    ],
    [-0.2, 'kne leg off paus strok sw ther way you'],
    [-0.4, 'time'],
  ],
  length: [
    [0.2, '1-2'],
    [-0.2, '3-4 long'],
  ],
  pair: [
    [
      0.4,
      `
        <not>_a <not>_let <pace>_at <pace>_with <place>_them a_<far> at_the full_<pace> not_a should_be
        the_bottom
      `,
    ],
    [
      0.2,
      `
        0_<attend> 0_if <attend>_at <attend>_com <attend>_its <attend>_long <attend>_slow <attend>_than
        <attend>_that <attend>_up <attend>_you <chat>_can <chat>_few <chat>_gradual <chat>_it <chat>_lower
        <chat>_should <chat>_thirt <chat>_thre <do>_down <do>_fast <do>_it <do>_like <far>_like <far>_second
        <far>_wher <harm>_it <ill>_the <kit>_on <less>_like <more>_for <move>_at <move>_down <move>_fast
        <move>_like <not>_dead <not>_frantic <not>_in <not>_it <not>_jerk <not>_more <not>_plop <not>_sprint
        <num>_count <num>_elephant <num>_ever <num>_if <num>_out <num>_percent <num>_second <num>_strok
        <num>_thre <pace>_a <pace>_it <pace>_now <pace>_on <pace>_to <pace>_up <pace>_walk <part>_slap
        <part>_then <place>_and <place>_breath <place>_com <place>_each <place>_for <place>_of <place>_wher
        <settle>_four <settle>_gradual <settle>_to <settle>_with <swap>_at <swap>_bounc <swap>_go <swap>_hear
        <swap>_more <swap>_rush <take>_slap <take>_to <take>_with a_<air> a_<more> a_<place> a_breath a_brisk
        a_full a_good a_jog a_pogo all_<place> all_out an_<less> an_<more> an_<pace> an_easy and_<do> and_<harm>
        and_<move> and_<pace> and_build and_snap and_wait as_<attend> as_<chat> as_<pace> as_<place> as_long
        as_slow as_you at_a at_six bar_<place> be_your befor_<chat> befor_you bend_your bottom_then
        breath_<attend> brisk_<do> brisk_<move> brisk_walk came_<place> came_in can_hear com_<place> com_forward
        comfortab_<less> comfortab_<pace> comfortab_hard could_drink count_<place> count_it count_on dead_at
        down_for drink_tea each_<chat> each_<num> each_<place> each_one each_shap ease_off easy_<pace>
        eight_percent even_<harm> even_<pace> even_pressur even_spe ever_<num> explod_<more> explod_<place>
        explod_up feet_<wrong> feet_slap first_few five_<pace> five_second float_<place> float_down for_one
        for_thi forward_<attend> forward_as full_second get_to go_<pace> go_<part> go_back go_gradual good_<num>
        good_thre hear_your hold_the if_that if_the in_<pace> is_at is_nowher it_<do> it_<less> it_<move>
        it_<part> it_<place> it_back it_drop it_goe it_out its_<not> its_not kne_and let_it like_its longer_than
        lower_<chat> make_the no_<do> no_<more> no_<pace> no_bounc no_more no_rush not_<chat> not_<wrong>
        not_frantic not_jerk not_let not_plop not_sprint nowher_to of_ten off_the on_the one_elephant out_<air>
        out_and out_breath out_of over_the percent_<pace> percent_effort pick_<more> pick_<place> pick_up
        pogo_<kit> pogo_stick power_<more> power_<place> power_up push_<pace> resist_it room_spin same_length
        six_<place> six_out slow_<attend> slow_<far> slow_as spe_<place> sprint_it step_in stop_dead strok_a
        take_<num> take_four than_the the_<chat> the_<pace> the_bar the_chest the_eccentric the_end the_first
        the_in the_music the_out the_same the_spe the_squeez then_<chat> then_<settle> then_go ther_is thes_are
        they_came thre_<pace> thre_count time_with to_<settle> to_<take> to_be to_come to_keep twic_<attend>
        twic_as two_<num> two_<pace> two_elephant two_second two_thre up_<do> up_<move> up_for want_to
        way_<place> way_down wher_<chat> wher_you wherever_it with_the work_at you_<far> you_<less> you_<swap>
        you_can you_lower you_should your_<chat> your_<pace> your_feet your_last
      `,
    ],
    [
      -0.2,
      `
        0_<pace> 0_to <air>_at <chat>_are <chat>_one <do>_the <do>_up <kit>_it <less>_fast <more>_to <move>_it
        <not>_at <not>_rush <num>_slow <pace>_breath <pace>_off <place>_at <place>_on <place>_to <settle>_a
        <settle>_it <take>_it a_<do> a_<kit> a_<move> a_paus and_it be_<less> breath_at control_the dont_<pace>
        dont_rush get_it hold_for it_<pace> it_down it_is lower_<place> lower_down make_it not_<pace>
        not_<settle> not_<swap> not_paus not_rush one_<part> one_at out_at rush_the slow_<place> slow_down
        slow_the ten_<pace> that_<pace> the_<air> the_<do> the_<kit> the_<part> the_arm the_middl the_rate
        the_turn to_0 to_<num> to_the too_<pace> too_fast twent_<pace> twent_second you_<settle> you_are
        your_<part>
      `,
    ],
    [-0.4, '<pace>_the'],
  ],
  phrase: [
    [1.4, 'tempo-sure'],
    [0.8, 'tempo-likely'],
    [0.2, 'breathing-likely easier-likely execution-hint setup-likely tempo-hint'],
    [
      -0.2,
      `
        caution-sure dose_only equipment-hint equipment-likely equipment-sure focus-likely focus-sure setup-hint
      `,
    ],
    [-0.4, 'easier-sure harder-sure'],
  ],
  start: [
    [0.4, '<settle>_<pace>'],
    [
      0.2,
      `
        <attend>_<more> <attend>_<place> <chat>_<pace> <do>_<attend> <do>_<pace> <far>_<attend> <move>_<attend>
        <move>_<pace> <move>_<place> <pace>_<far> <place>_<num> <place>_<pace> <swap>_<more> <swap>_<not>
        <swap>_<pace> <take>_<pace> all_out count_it do_not do_not_let down_for down_for_four ease_off
        eight_percent eight_percent_effort even_pressur five_second hold_it_for hold_the hold_the_squeez it_is_a
        its_not its_not_a keep_it_mov make_the no_rush not_a not_a_pogo not_frantic power_up step_in stop_dead
        stop_dead_at take_a_good ther_is ther_is_nowher thes_are thi_is_at work_at work_at_a you_should
      `,
    ],
    [
      -0.2,
      `
        <chat>_<swap> <not>_<place> <part>_<place> control_the control_the_middl do_not_paus do_not_rush
        dont_rush make_it rate_0_to slow_down slow_it_down
      `,
    ],
  ],
  word: [
    [0.6, 'at bounc'],
    [0.4, 'bottom brisk ease lower not out quick ratio second spe two'],
    [
      0.2,
      `
        able asleep back bar be beat begin bit build came com comfortab controll count dead down each easy
        eccentric effort elephant end even explod few float for forward four frantic full gent hear hur in its
        jerk jog last length let level linger make music nice no nobody now nowher pace percent plop pogo
        position power pressur puls quicker resist same shap should sing singl slap slower snap sprint start step
        take tea than them then thes thre through twic up wait watch wherever with work
      `,
    ],
    [
      -0.2,
      `
        0 a arm by clos dont feel floor forget from have hip i is jump just knee leg look middl minut on one or
        rest rush set side someth split stand sw that the thos time to toe too turn use will you your
      `,
    ],
    [-0.4, 'paus'],
  ],
} as const satisfies CueWeights
