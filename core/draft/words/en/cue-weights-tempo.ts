/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind tempo; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const TEMPO_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [1.2, 'pace'],
    [0.2, 'not num'],
    [-0.2, 'air attend far harm ill kit less place swap take'],
    [-0.4, 'settle'],
    [-0.6, 'part'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.6, '<pace> ease'],
    [0.4, '<num> bounc down even lower nice nobody pleas quiet ther two up'],
    [
      0.2,
      `
        0 <harm> <more> <not> <place> <settle> <swap> about brisk build clos count crisper da explod five float
        hand hold its land like linger littl live loos make move not one open power put rate ratio reset snap
        stead still ta take thes thre treacl unhurri wait well work
      `,
    ],
    [
      -0.2,
      `
        <air> <do> <kit> <less> <wrong> a as both control half i if keep last light or out second sit slow squeez
        ten they thirt to turn youv
      `,
    ],
    [-0.4, 'the'],
    [-0.6, '<part>'],
  ],
  given: [
    [0.2, '<part> <swap> <wrong> hid hurry neck'],
    [-0.2, '<attend> <more> <num> <pace> a it'],
  ],
  last: [
    [0.6, 'bounc'],
    [0.4, 'back dead dum pleas sharp thre wait'],
    [
      0.2,
      `
        ankl asleep befor bin bottom breath brisk catapult com correction cut dave drop effort elephant even feet
        few goal goe got grab gradual gulp gun halfwa heron hold hot hur it jerk jog land last late lazy like
        live lower melt mississippi music negativ nice now parad pendulum percent ping plop pull puls ratio run
        settl shap singl sledg slow smooth soft stick still stop strict syrup temper that thes tidy treacl ugly
        underwater unhurri vertical wash watch wild window
      `,
    ],
    [
      -0.2,
      `
        again first five floor four light metr no off right side sit six squat strok tightrop toe way whenever
        you
      `,
    ],
    [-0.4, 'ther time'],
  ],
  length: [
    [-0.2, '3-4'],
    [-0.4, '1-2'],
  ],
  pair: [
    [0.6, 'to_<settle> with_the'],
    [
      0.4,
      `
        <chat>_it <do>_for <do>_with <far>_second <move>_for <move>_with <num>_count <num>_second <num>_to
        <num>_up <pace>_at <pace>_with <place>_for at_the ease_into for_<num> for_one from_dead full_<pace>
        full_second it_<part> it_back let_it the_<pace> the_bottom the_way ther_a two_<pace> way_<place> way_down
        you_<less>
      `,
    ],
    [
      0.2,
      `
        0_<more> 0_<place> 0_down 0_more 0_percent <air>_longer <air>_to <attend>_as <attend>_com <attend>_day
        <attend>_feet <attend>_hand <attend>_if <attend>_its <attend>_slow <attend>_syrup <attend>_theyr
        <attend>_through <attend>_treacl <attend>_up <attend>_wors <attend>_your <chat>_0 <chat>_and <chat>_at
        <chat>_can <chat>_dont <chat>_drop <chat>_few <chat>_gradual <chat>_hid <chat>_hurry <chat>_late
        <chat>_laundr <chat>_lower <chat>_that <chat>_thirt <chat>_underwater <chat>_went <chat>_work <do>_at
        <do>_befor <do>_bin <do>_down <do>_fast <do>_it <far>_correction <far>_like <far>_of <far>_squeez
        <far>_thing <far>_vertical <far>_wher <harm>_and <harm>_it <ill>_the <kit>_cut <kit>_in <kit>_of <kit>_on
        <kit>_wher <less>_like <less>_stop <more>_in <more>_like <more>_your <move>_at <move>_bin <move>_ever
        <move>_fast <move>_soft <not>_a <not>_bounc <not>_bus <not>_cheat <not>_dead <not>_dive <not>_everyth
        <not>_fir <not>_flap <not>_flick <not>_frantic <not>_grab <not>_gulp <not>_halfwa <not>_it <not>_jerk
        <not>_kne <not>_let <not>_more <not>_own <not>_plop <not>_pull <not>_race <not>_should <not>_sprint
        <not>_stop <not>_sw <not>_swing <not>_the <not>_want <not>_whil <not>_wild <num>_breath <num>_down
        <num>_elephant <num>_ever <num>_mississippi <num>_out <num>_percent <num>_sid <num>_strok <pace>_a
        <pace>_as <pace>_com <pace>_dave <pace>_for <pace>_go <pace>_in <pace>_it <pace>_now <pace>_on <pace>_out
        <pace>_over <pace>_up <part>_land <part>_slap <part>_then <part>_walk <part>_wher <place>_and <place>_as
        <place>_breath <place>_charg <place>_com <place>_how <place>_like <place>_of <place>_quieter <place>_slow
        <place>_them <place>_wher <place>_you <settle>_down <settle>_for <settle>_four <settle>_gradual
        <settle>_the <settle>_up <swap>_at <swap>_bounc <swap>_bus <swap>_flick <swap>_grab <swap>_gulp
        <swap>_kne <swap>_more <swap>_not <swap>_rush <swap>_stop <swap>_swing <swap>_up <take>_again <take>_for
        <take>_slap <take>_to <wrong>_bomb <wrong>_me a_<attend> a_<do> a_<far> a_<more> a_<not> a_baby a_bounc
        a_box a_brid a_brisk a_bus a_car a_catapult a_crash a_donke a_drip a_field a_full a_heron a_lift a_parad
        a_pedal a_pendulum a_piston a_pogo a_sledg a_sleep a_start a_still a_stop a_wait a_wee a_weight a_window
        about_0 about_<num> again_from all_<place> all_out an_<less> an_<more> an_<pace> an_easy and_<attend>
        and_<harm> and_<settle> and_<take> and_build and_follow and_lazy and_put and_snap and_start and_wait
        and_you anybod_to are_<not> are_not as_<attend> as_<pace> as_a as_if as_slow as_theyr as_you at_<num>
        at_six baby_asleep bar_<place> bar_on be_<pace> be_behind be_run be_your befor_it behind_<chat>
        behind_you bomb_it bottom_for bottom_then bounc_it box_of breath_<attend> breath_longer breath_to
        brid_could brisk_<do> brisk_<move> brisk_walk build_it bus_com cabl_cut call_that came_<place> came_in
        cant_<not> cant_stop car_wash charg_<place> charg_on chas_<chat> chas_you cheat_<chat> cheat_me clos_for
        com_<part> com_<place> com_back com_forward come_<place> come_down comfortab_<less> comfortab_<pace>
        comfortab_hard could_be count_<place> count_it count_to coupl_of crisper_than da_dum dead_at dive_bomb
        do_not donke_<do> donke_<move> donke_kick dont_<do> dont_<move> dont_<swap> dont_<wrong> dont_bounc
        dont_cheat dont_dive dont_flap dont_jump dont_own dont_pull dont_race dont_sw dont_want down_<attend>
        down_<pace> down_a down_as down_for down_like down_quieter drip_<place> drip_down each_<chat> each_<do>
        each_<place> each_one each_shap ease_off easy_<pace> eight_percent especial_<far> especial_past
        even_<harm> even_<pace> even_pressur even_spe ever_coupl ever_rep everyth_youv explod_<place> fall_and
        feel_wors feet_<wrong> feet_slap field_goal film_skip fir_a first_few five_<pace> five_second flap_it
        float_<place> float_down floor_<attend> floor_like follow_it for_<air> for_<pace> for_air for_thi for_two
        forc_the forward_<attend> forward_as four_<pace> four_second four_sid full_of get_<pace> get_to get_ugly
        go_<pace> go_<part> go_<place> go_back go_down go_gradual got_to hand_walk have_0 hear_<not> hear_noth
        hear_your heel_<move> hid_your hold_the hurry_<chat> hurry_your i_want in_<pace> in_charg in_slow in_you
        into_it is_at is_nowher it_<attend> it_<do> it_<less> it_<move> it_<place> it_drop it_get it_gradual
        it_if it_like it_melt it_out it_ping it_want its_<chat> its_<do> its_<move> its_a its_call its_molass
        its_not its_pull its_still jump_for kick_a land_soft last_0 last_<num> laundr_<place> laundr_on
        lazy_<attend> lazy_as length_of lift_with like_<chat> like_its like_syrup like_ther like_treacl like_your
        linger_<place> linger_in littl_<do> littl_<move> littl_squeez littl_thing longer_<place> longer_on
        look_better loos_and lower_<attend> lower_<chat> lower_like make_<far> make_small make_the more_in
        move_<attend> move_like need_a nice_and no_<not> no_<pace> no_<part> no_<wrong> no_bounc no_bus no_flick
        no_grab no_gulp no_kne no_more no_rush no_stop no_swing nobod_should nobody_chas nobody_kick nobody_watch
        not_a not_everyth not_fir not_frantic not_jerk not_let not_plop not_sprint not_the not_wild noth_at
        nowher_to of_<air> of_<pace> of_<swap> of_breath of_egg of_soup of_temper of_ten off_<place> off_over
        off_the on_the one_<air> one_breath one_elephant one_ever one_from one_mississippi one_second one_to
        one_up open_for out_<air> out_and out_breath out_of over_it over_the own_it past_<far> past_vertical
        paus_at paus_it pedal_bin percent_<pace> percent_effort pick_<more> pick_<place> pick_up pogo_<kit>
        pogo_stick power_<more> power_<place> power_up pull_for pull_with push_<pace> put_it quiet_<part>
        quiet_<place> quiet_<take> quiet_feet quiet_through quieter_than race_dave rep_sharp reset_each resist_it
        same_length second_<place> second_at second_go second_on second_paus settl_the seven_<place> seven_out
        shak_befor should_be should_hear sid_the six_<place> six_out slipper_<far> slipper_full slow_<attend>
        slow_as small_correction somebod_your sort_that spe_<place> spend_<attend> spend_longer sprint_it
        squeez_at start_again start_gun stay_on step_in still_<attend> still_<chat> still_as still_day
        stop_<chat> stop_<far> stop_dead stop_halfwa stop_whil strok_a sw_it sweet_<pace> sweet_time ta_dum
        take_four take_your than_befor that_<kit> that_a that_stick that_was that_why the_<chat> the_<num>
        the_ankl the_cabl the_chest the_end the_film the_first the_four the_gas the_in the_music the_out the_pace
        the_polka the_same the_shak the_sort the_spe the_squeez then_<chat> then_<settle> then_go ther_and
        ther_is ther_yet they_came theyr_singl theyr_tidy thi_bit thre_to time_over time_with to_<far> to_<less>
        to_<part> to_<swap> to_<take> to_bottom to_come to_five to_keep to_know to_lower to_pick to_sing to_sit
        top_to treacl_com twent_two twic_<attend> twic_as two_count two_elephant two_mississippi up_<pace>
        up_like up_your wait_at walk_<attend> walk_<more> walk_like walk_up want_a want_to was_a weekend_<not>
        weekend_<swap> weekend_without weight_wher went_<more> went_<place> went_up wher_youd wherever_it
        whol_weekend without_stop work_a work_at you_<far> you_<not> you_<pace> you_<swap> you_at you_can
        you_dont you_like you_lower you_went youd_<settle> youd_have your_<pace> your_drop your_heel your_hid
        your_hurry your_last your_late your_laundr your_leg your_slipper your_sweet your_underwater your_whol
        your_work youv_got
      `,
    ],
    [
      -0.2,
      `
        <air>_at <attend>_it <chat>_are <chat>_for <chat>_go <chat>_one <do>_a <do>_back <do>_one <do>_the
        <do>_them <do>_your <far>_one <less>_fast <more>_to <move>_back <move>_up <move>_your <not>_drop
        <not>_for <not>_go <not>_rush <num>_a <num>_and <num>_hand <num>_metr <num>_of <num>_slow <pace>_breath
        <pace>_down <part>_at <part>_down <part>_on <part>_to <place>_at <place>_on <place>_ther <place>_up
        <settle>_it <wrong>_it a_<less> a_<pace> a_<settle> a_count a_race a_slow a_squat a_tightrop a_time
        all_the and_<swap> and_it breath_<place> breath_at count_of do_<num> do_it dont_<pace> dont_<settle>
        dont_rush down_to each_<part> ever_<pace> for_a for_five for_twent from_the get_<place> get_it
        goe_<place> half_a hand_<place> hold_it in_<place> in_the into_a it_<chat> it_<far> it_<more> it_<not>
        it_down it_go it_is it_up its_<pace> like_a look_at lower_<place> lower_down make_it not_<pace>
        not_<place> not_<settle> of_0 of_<chat> of_a of_it of_you on_your one_<part> one_at one_for out_<attend>
        out_<place> rush_the rush_to sid_<place> slow_<air> slow_breath slow_down slow_it slow_the slow_walk
        stop_at ten_<pace> ten_second the_<air> the_<attend> the_<far> the_<harm> the_<swap> the_hip the_middl
        the_second them_<place> they_<not> to_0 to_<num> to_a to_your too_<pace> too_fast up_<place> up_to
        walk_<part> walk_back with_your you_<chat> you_<settle> you_are you_want your_<part> your_<place>
        your_<swap>
      `,
    ],
    [-0.4, '<pace>_the <place>_to'],
  ],
  phrase: [
    [1, 'tempo-sure'],
    [0.8, 'tempo-likely'],
    [0.4, 'tempo-hint'],
    [
      0.2,
      `
        breathing-likely easier-likely execution-hint fault-hint fault-likely fault-sure focus-hint purpose
        retracted
      `,
    ],
    [
      -0.2,
      `
        breathing-sure caution-hint caution-sure equipment-hint equipment-likely execution-sure focus-sure praise
        range-likely
      `,
    ],
    [-0.4, 'dose_only easier-sure empty_clauses harder-sure range-sure setup-hint'],
  ],
  start: [
    [
      0.4,
      `
        <not>_<wrong> <num>_<pace> <num>_<place> <settle>_<pace> down_for five_second not_a
      `,
    ],
    [
      0.2,
      `
        0_down <attend>_<attend> <attend>_<chat> <attend>_<more> <attend>_<part> <attend>_<place> <attend>_<take>
        <chat>_<not> <chat>_<pace> <do>_<pace> <far>_<pace> <kit>_<place> <less>_<attend> <more>_<attend>
        <move>_<pace> <not>_<do> <not>_<part> <num>_<air> <num>_<more> <pace>_<more> <place>_<attend>
        <place>_<pace> <swap>_<more> <swap>_<not> <swap>_<pace> <swap>_<part> <swap>_<place> <swap>_<wrong>
        <take>_<pace> all_out br_the build_it build_it_gradual clos_for clos_for_thre come_down_like
        come_down_quieter count_it crisper_than crisper_than_befor da_dum do_not_let dont_be_run dont_bounc
        dont_bounc_it dont_cheat dont_cheat_me dont_dive dont_dive_bomb dont_flap dont_flap_it dont_forc_the
        dont_jump dont_jump_for dont_pull dont_pull_with dont_race dont_race_dave dont_sw dont_sw_it
        down_for_thre ease_into ease_into_it ease_off ease_off_over ease_off_the eight_percent
        eight_percent_effort even_pressur ever_rep ever_rep_sharp four_second four_second_in hand_walk
        hand_walk_up hold_the hold_the_end hold_the_squeez i_dont_want i_want i_want_to if_your_hurry it_is_a
        it_want its_a its_a_drip its_a_pendulum its_molass its_not_the its_pull its_up its_up_for jog_it
        keep_it_mov keep_the_four land_soft let_it let_it_fall like_the like_treacl like_treacl_com littl_squeez
        littl_squeez_at lower_it lower_it_like lower_like make_the make_the_out move_like move_like_your nice_and
        no_bounc no_flick no_grab no_gulp no_kne no_rush no_stop no_stop_at no_swing nobod_should
        nobod_should_hear nobody_chas nobody_chas_you nobody_kick nobody_kick_a nobody_watch not_a_car
        not_a_parad not_a_pogo not_a_sw not_everyth not_everyth_youv not_frantic not_like_a not_the_sort not_wild
        off_the off_the_floor one_breath one_breath_to one_ever one_ever_coupl one_to one_to_stand open_for
        open_for_one paus_it pick_a_weight power_up pull_for pull_for_one put_it put_it_down quiet_feet
        reset_each reset_each_one stand_up stay_on stay_on_the step_in stop_dead stop_dead_at ta_dum take_your
        take_your_sweet that_a that_a_stop that_was that_was_a that_why ther_a ther_a_bus ther_a_wait ther_is
        ther_is_nowher ther_no_bus theyr_singl thi_is thi_is_at thre_second_on thre_to thre_to_sit top_to
        top_to_bottom two_count two_mississippi up_for up_for_one up_for_two up_like up_with up_with_a walk_like
        walk_like_your work_at work_at_a you_dont you_dont_own you_dont_want you_should_be you_stop_whil
        your_last your_laundr your_laundr_on your_not_fir
      `,
    ],
    [
      -0.2,
      `
        <chat>_<chat> <chat>_<swap> <not>_<chat> <not>_<far> <not>_<place> <not>_<settle> <num>_<part>
        <pace>_<air> <place>_<place> control_the control_the_middl dont_rush dont_rush_to half_a let_it_go
        not_a_tightrop rate_0_to sit_down slow_down slow_it slow_it_down slow_the slow_the_way ther_a_stop
        thirt_second thirt_second_down
      `,
    ],
    [-0.4, '<part>_<place>'],
  ],
  word: [
    [0.6, 'bottom bounc brisk ease like lower'],
    [
      0.4,
      `
        bus dead down dum even full hear its nice nobody pick pleas quick quiet should spe still stop than thre
        treacl two up wait
      `,
    ],
    [
      0.2,
      `
        0 a as asleep at baby back be beat befor bomb brid build cabl call catapult charg chas com comfortab
        controll correction could count crash crisper da dive donke dont drip effort egg elephant end especial
        ever everyth explod feet few field film fir flap flick float follow for four frantic gas gent goal got
        gradual gulp gun halfwa hand heron hid hur hurry into jerk jog kick land last late laundr lazy length let
        linger littl live longer make melt mississippi molass move music negativ no not now nowher pace parad
        pedal pendulum percent ping piston plop pogo polka position power pressur pull put ratio rep reset resist
        second sentenc settl shap sharp shop singl slap sledg sleep slipper slower snap soft sort soup spend
        sprint start stick strict strok sweet syrup ta take temper then ther thes theyr thing through tidy ugly
        underwater unhurri vertical walk want wash watch way wee went why wild window work
      `,
    ],
    [
      -0.2,
      `
        all are arm been between big both brac bridg bum by chair do doesnt done driv elbow feel flat floor foot
        forget front go hang head heav hip i if is isnt just knee lean leav left leg lock look loud low metr
        middl minut my ninet off on only other pair peopl point pres reach right round row rush see set shoulder
        side sit slid someth split squat stay straight stretch swap talk tall that the them they thi think thirt
        thos tightrop till time toda toe too turn twent twist under use what when whenever who will you youll
      `,
    ],
    [-0.4, 'half light or your'],
  ],
} as const satisfies CueWeights
