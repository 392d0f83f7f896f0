/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind tempo; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const TEMPO_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [1, 'pace'],
    [0.2, 'not num'],
    [-0.2, 'attend chat harm ill kit less place settle swap take wrong'],
    [-0.6, 'air far part'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.8, 'ease'],
    [0.6, '<pace> brisk down nice sharp up'],
    [0.4, '<far> about da even firm lazy like lower nobody pleas reset small thre two wait'],
    [
      0.2,
      `
        0 <chat> <less> <more> <num> <place> <settle> <swap> a all and basical bit bounc build chip colin
        controll crisp dawdl dead do drum easy explod find float follow four gentl get go hang head hold its land
        lift linger littl loos make move neat nine no not one open paus peel power pretend pull quicker quiet
        quieter ramp ratio settl sink slower smallish snap soft stead still stop strict sw syrup ta take tea ther
        thes thi tick tidy tooth treacl unhurri we wee were whol work yere you your
      `,
    ],
    [
      -0.2,
      `
        <wrong> at breath chat drop feet finish for front gent good grip have heel hip i ill in it ive keep last
        lean left level light long look ninet nobod once only or pres quick round set short somebody squeez
        straight swap talk tall ten that the they thirt time to toe too tuck turn with youll
      `,
    ],
    [-0.4, '<air> <kit> if out second'],
    [-0.6, '<part>'],
  ],
  given: [
    [0.2, '<less> <take> can choru feet right sing too you your'],
    [-0.2, '<num> its'],
  ],
  last: [
    [0.6, 'back bottom dum sharp'],
    [
      0.4,
      `
        brisk build effort even firm it jerk last lazy percent pleas snap step still two
      `,
    ],
    [
      0.2,
      `
        and beat boot boss bounc breath bus cake catapult chas chest cockroach colin control conversation crash
        curtsey dead dinner disco down driv drop elephant elevator empt everywher fast feather few furiou game
        gear gentl gossip got gradual home hone hotel hungover hur in jiggl just landing late leav lighthous
        lurch machin mississippi music neat negativ nice now one open pace paint patient peel pendulum ping plop
        polka pop pret pull puls quick quiet ratio rep reset rhythm round seat sentenc settl shap singl sink slap
        smart smooth snatch soft spe sprint squeez stamped station stead stick strength strict strong sunda syrup
        tank tenth them thereabout thre tidy to tock tooth trampolin treacl ugly underneath underwater unhurri
        vertical wait war wash woodpecker word wrestl
      `,
    ],
    [
      -0.2,
      `
        away bar bend bridg can cat cheat dip do done ear eight faster fine five flat front gate good hammock
        hand high jump kne left light line lock long minut neck nose off pair rest shoulder shrug sid side six
        squat swap tabl tall tent th ther through tightrop time toe turn twist wall way whenever work
      `,
    ],
    [-0.4, 'no'],
  ],
  length: [
    [0.2, 'long'],
    [-0.2, '5-7 8-12'],
    [-0.4, '3-4'],
    [-0.6, '1-2'],
  ],
  pair: [
    [0.8, '<num>_to for_<num> for_one'],
    [0.6, '<num>_count about_<num> da_dum let_it to_<settle>'],
    [
      0.4,
      `
        <chat>_it <do>_for <do>_it <move>_for <not>_a <not>_drop <not>_jerk <not>_throw <num>_out <pace>_with
        <part>_for <place>_for <take>_for all_out as_<attend> both_way com_<place> down_<attend> down_for ease_it
        full_<pace> full_second go_<place> into_it it_<part> it_back like_its no_<wrong> not_a of_ten one_to
        out_of slow_<attend> slow_as slower_than take_your the_<pace> the_boss the_bottom the_end the_out
        the_same the_spe ther_a to_come two_<pace> way_<place> with_the you_<less> you_can your_time youv_got
      `,
    ],
    [
      0.2,
      `
        0_<more> 0_<place> 0_at 0_go 0_turn <air>_be <air>_is <attend>_and <attend>_as <attend>_com <attend>_day
        <attend>_down <attend>_feet <attend>_hone <attend>_if <attend>_landing <attend>_long <attend>_round
        <attend>_step <attend>_stir <attend>_than <attend>_the <attend>_ther <attend>_treacl <attend>_up
        <attend>_your <chat>_again <chat>_arriv <chat>_ask <chat>_at <chat>_balanc <chat>_bit <chat>_build
        <chat>_can <chat>_cant <chat>_could <chat>_curtsey <chat>_drop <chat>_few <chat>_gradual <chat>_hid
        <chat>_hungover <chat>_just <chat>_late <chat>_laundr <chat>_lower <chat>_mean <chat>_read <chat>_right
        <chat>_say <chat>_should <chat>_sit <chat>_sneak <chat>_stack <chat>_thirt <chat>_underwater <chat>_want
        <chat>_wax <chat>_went <do>_down <do>_fast <do>_slow <do>_smart <do>_them <do>_ther <do>_with <far>_and
        <far>_halt <far>_it <far>_just <far>_of <far>_second <far>_squeez <far>_step <far>_thing <far>_vertical
        <far>_wher <harm>_it <ill>_the <kit>_do <kit>_not <kit>_on <less>_effort <less>_for <less>_it <less>_of
        <less>_stop <less>_strength <less>_that <less>_when <more>_gear <more>_in <more>_normal <more>_pace
        <more>_strong <more>_wher <more>_your <move>_at <move>_ever <move>_fast <move>_in <move>_like <move>_with
        <not>_big <not>_bounc <not>_bus <not>_daft <not>_dead <not>_dive <not>_fierc <not>_fir <not>_fl
        <not>_flap <not>_flat <not>_flick <not>_forc <not>_frantic <not>_furiou <not>_jiggl <not>_kick <not>_kne
        <not>_let <not>_lurch <not>_own <not>_pat <not>_pay <not>_plop <not>_race <not>_sil <not>_slam <not>_snap
        <not>_snatch <not>_sprint <not>_sw <not>_swat <not>_want <not>_woodpecker <num>_befor <num>_com
        <num>_down <num>_elephant <num>_ever <num>_go <num>_leav <num>_mississippi <num>_percent <num>_second
        <num>_strength <num>_strok <num>_tenth <num>_turn <num>_two <num>_up <pace>_a <pace>_and <pace>_as
        <pace>_at <pace>_back <pace>_com <pace>_each <pace>_effort <pace>_enough <pace>_go <pace>_in <pace>_it
        <pace>_like <pace>_negativ <pace>_now <pace>_off <pace>_on <pace>_or <pace>_out <pace>_step <pace>_test
        <pace>_than <pace>_up <pace>_when <part>_if <part>_land <part>_last <part>_settl <part>_slow <part>_then
        <part>_thi <part>_together <part>_walk <part>_wrestl <place>_as <place>_bit <place>_breath <place>_charg
        <place>_in <place>_landing <place>_normal <place>_of <place>_quiet <place>_short <place>_somebod
        <place>_strong <place>_them <place>_time <place>_tooth <place>_wher <place>_with <settle>_0
        <settle>_again <settle>_clang <settle>_down <settle>_for <settle>_gradual <settle>_quicker <settle>_quiet
        <settle>_smart <settle>_tir <settle>_your <swap>_0 <swap>_a <swap>_at <swap>_bounc <swap>_bus <swap>_drop
        <swap>_flick <swap>_hear <swap>_jerk <swap>_jog <swap>_kne <swap>_lurch <swap>_march <swap>_only
        <swap>_rush <swap>_say <swap>_sing <swap>_smart <swap>_some <swap>_throw <swap>_up <swap>_whip
        <take>_faster <take>_in <take>_smart <take>_the <take>_tir <take>_when <wrong>_bomb <wrong>_chair
        <wrong>_me <wrong>_off <wrong>_you a_<chat> a_<do> a_<more> a_<pace> a_<wrong> a_baby a_beat a_blink
        a_bounc a_brisk a_bucket a_bus a_car a_catapult a_cockroach a_conversation a_disco a_drip a_drop
        a_feather a_fire a_full a_hero a_hot a_hotel a_hur a_librar a_lift a_lighthous a_moment a_pendulum
        a_photo a_queu a_rhythm a_rock a_second a_sentenc a_sprint a_stamped a_state a_still a_sunda a_third
        a_trampolin a_tug a_well able_to about_<less> about_eight about_half after_another again_from all_<place>
        an_<less> an_<more> an_<pace> an_easy an_old and_<harm> and_<pace> and_<settle> and_build and_even
        and_lazy and_patient and_snap any_slap anybod_to are_<not> are_<pace> are_not arm_wrestl arriv_<place>
        arriv_on as_<pace> as_<place> as_if as_long as_slow asleep_<place> asleep_on at_six at_the at_twent
        away_from ay_a baby_asleep back_<pace> back_for back_slow balanc_<kit> balanc_<swap> balanc_book ball_go
        band_<not> band_not bar_<place> bar_on be_<pace> be_able be_an be_run be_the be_your been_sat
        befor_<chat> befor_you big_and bit_<pace> bit_by bit_of bit_quicker bit_that blink_at bomb_it bone_after
        boss_of bottom_then bounc_them br_the breath_be breath_is breath_to brisk_<do> brisk_<move> brisk_walk
        bucket_<place> build_it bus_com bus_now bus_to by_bit by_tooth call_that can_<far> can_hear can_only
        can_say can_sing cant_<not> cant_stop car_boot car_wash catch_it charg_<place> charg_on chas_<chat>
        chas_you cheat_<chat> cheat_me chip_at choru_<chat> choru_your clock_<not> clock_doesnt com_<part>
        com_back com_down come_<place> come_down comfortab_<less> comfortab_<pace> comfortab_hard could_<attend>
        could_<settle> could_<take> could_hold could_still count_0 count_<num> count_<place> crash_<place>
        crash_down crisper_than dawdl_<place> dawdl_down dead_<attend> dead_<not> dead_<place> dead_at dead_on
        dead_still dead_stop dive_bomb do_0 do_some dont_<do> dont_<less> dont_<wrong> dont_cheat dont_drop
        dont_fl dont_flap dont_forc dont_kick dont_own dont_pay dont_race dont_run dont_slam dont_throw dont_want
        down_<pace> down_like down_quiet drip_<place> drip_down drum_it each_<do> each_round each_shap
        ease_<place> ease_in ease_into ease_the easy_<pace> egg_<place> egg_under eight_<place> eight_five
        eight_out eight_percent elbow_land especial_<far> especial_past even_<do> even_<harm> even_<pace>
        even_one even_pressur even_spe ever_<harm> ever_<ill> ever_<num> ever_click ever_metr ever_one ever_rep
        everyth_youv feet_thi feet_under film_skip final_mov fir_a first_<not> first_few first_shouldnt
        five_percent fl_it fl_them flap_it flat_<place> flat_out float_<place> float_down float_it floor_<attend>
        follow_it follow_the foot_<settle> foot_settl for_0 for_four for_thi for_thre for_two four_<pace>
        four_second four_to from_<chat> from_dead from_you full_of gate_<place> gate_in get_<pace> get_tir get_to
        get_ugly get_your go_<pace> go_<part> go_again go_back go_down go_downstair go_gradual go_quiet
        gone_everywher good_are half_of half_on half_strength halt_at hand_walk head_<chat> head_last head_out
        hear_any hear_them hear_your heel_land heel_on hold_for hold_the i_dont i_want id_say im_just in_charg
        in_short in_soft in_time in_treacl in_you is_a is_at is_nowher isnt_pat it_<attend> it_<chat> it_<pace>
        it_<wrong> it_a it_at it_bor it_crash it_drop it_even it_if it_in it_ping it_slingshot it_slow it_snap
        it_want it_yank its_0 its_<kit> its_<not> its_<num> its_a its_about its_call its_firm its_four its_molass
        its_not its_pull its_stair its_stuck its_to just_hold just_turn keep_it kne_and land_<attend> land_like
        laundr_<place> laundr_on lazy_<attend> lazy_as left_<place> left_in leg_<more> librar_underneath
        lift_<place> lift_in lift_with like_hone like_stir like_the like_ther like_treacl like_your
        linger_<place> linger_in littl_<attend> littl_<do> littl_<move> littl_halt littl_quiet littl_squeez
        littl_thing long_and long_com longer_<place> longer_than look_<chat> look_<do> look_round loos_and lot_is
        lower_<attend> lower_<chat> lower_for lower_it lower_like make_the mark_<chat> mark_you mean_<less>
        mean_<more> mean_<pace> mean_easy more_each more_gear mov_the move_<attend> move_like need_a nice_<place>
        nice_and nice_in nine_tenth no_bounc no_bus no_drop no_flick no_jerk no_jog no_kne no_lurch no_march
        no_rush no_throw no_whip nobody_chas nobody_tim nobody_watch not_<do> not_<far> not_big not_daft not_drop
        not_fierc not_fir not_flat not_frantic not_furiou not_higher not_let not_plop not_shut not_sil not_sprint
        not_swat not_that not_woodpecker noth_jiggl nowher_to of_<air> of_<num> of_<swap> of_breath of_egg of_it
        of_soup of_your off_the on_somebod on_the one_<more> one_<num> one_befor one_elephant one_ever one_from
        one_leav one_more one_second one_the one_two one_up only_just out_<air> out_and out_breath out_by
        over_the own_it past_vertical pat_cake paus_at pay_<place> pay_by pedall_for peel_them percent_<pace>
        percent_effort pick_<more> pick_<place> pick_a pick_up pol_<swap> pol_do power_<more> power_<place>
        power_up pres_for proper_<do> proper_<move> proper_squeez pull_for pull_with push_<less> push_<pace>
        put_it put_your quick_<attend> quick_<kit> quick_<place> quick_off quick_step quicker_<place>
        quiet_<attend> quiet_<part> quiet_<place> quiet_hand ramp_it reset_each reset_ever resist_it rest_when
        rock_<kit> rock_chair roll_down same_<more> same_<pace> same_<place> same_length same_spe same_up
        sat_sinc saw_<kit> saw_machin say_a second_go second_negativ second_or second_paus second_to settl_befor
        seven_<place> seven_out sharp_now short_quick short_sentenc should_<attend> should_be should_still sinc_0
        sing_the sink_a sit_<place> sit_in sit_ther six_<place> six_out slam_it slingshot_<chat> slingshot_you
        slow_<far> slow_is slow_on slowest_of small_<do> small_<kit> small_<pace> small_quick small_step
        smallish_<do> smallish_<kit> smallish_step snap_it sneak_<place> so_<pace> soft_landing sort_that
        spe_<chat> spe_of spe_you speed_<num> speed_one sprint_it squeez_about squeez_at stack_a stack_clang
        stand_smart state_<swap> state_home stay_a stay_on still_<attend> still_as still_day stop_<more>
        stop_dead stop_up strok_a sw_it swat_wasp sweet_<pace> sweet_time ta_dum take_<num> talk_test tea_gone
        tear_<place> tear_through than_<more> than_<place> than_befor than_up that_<chat> that_<kit> that_<pace>
        that_count that_elbow that_final that_pedall that_station that_stick that_the that_wher that_why
        the_<air> the_<chat> the_<place> the_beat the_belt the_bit the_breath the_cadenc the_chest the_choru
        the_clock the_dial the_down the_duck the_film the_first the_game the_gas the_in the_lot the_movement
        the_music the_passenger the_polka the_rep the_rhythm the_room the_slowest the_sneak the_sort the_squeez
        the_stack the_talk the_tank the_way them_<kit> them_<part> them_back them_come them_seat then_<chat>
        then_<settle> then_go then_just ther_another ther_egg ther_is thes_are theyr_singl thi_bit thre_<pace>
        thre_count thre_lot thre_second thre_to through_them tick_tock time_with to_<do> to_<far> to_<move>
        to_<swap> to_<take> to_begin to_bottom to_five to_gossip to_let to_lower to_see to_sit to_warm
        tooth_<place> tooth_by top_to twent_<num> twent_two twic_<attend> twic_as two_<place> two_count two_down
        two_elephant two_second two_to two_up under_your up_<attend> up_<more> up_<move> up_<pace> up_for
        up_normal up_strong up_with up_your wait_<num> wait_at wait_for wait_one walk_<more> walk_<pace> walk_to
        walk_up walk_your wall_<not> wall_not want_it want_the warm_<chat> warm_you wax_the way_<part> way_back
        way_down way_to we_<not> we_dont wee_<kit> wee_step went_<more> went_<place> went_up were_just were_stack
        what_youv when_that wher_the whol_one why_its wobbl_to work_at yank_<chat> yank_you yere_tear you_<far>
        you_<pace> you_<swap> you_<take> you_arriv you_build you_cant you_could you_lower you_put you_should
        you_sit you_went your_<chat> your_<pace> your_<take> your_balanc your_breath your_curtsey your_dinner
        your_drop your_feet your_hand your_hardest your_heel your_hid your_hungover your_keep your_last your_late
        your_laundr your_leg your_read your_right your_sneak your_sweet your_underwater your_wax yourself_<pace>
        yourself_gent youv_all
      `,
    ],
    [
      -0.2,
      `
        0_<kit> <attend>_it <attend>_somebody <chat>_are <chat>_go <chat>_one <chat>_stead <chat>_to <chat>_you
        <do>_back <do>_one <do>_out <do>_up <far>_back <far>_down <far>_one <kit>_and <kit>_back <kit>_it
        <less>_one <less>_way <more>_and <more>_down <more>_to <more>_you <move>_the <not>_count <not>_for
        <not>_hold <not>_lock <not>_on <not>_to <not>_yank <num>_a <num>_and <num>_for <num>_hand <num>_if
        <num>_kilo <num>_leg <num>_metr <num>_minut <num>_of <num>_one <num>_quick <num>_side <num>_slow
        <num>_step <num>_tim <num>_way <pace>_bit <pace>_down <pace>_floor <pace>_if <pace>_lot <pace>_pull
        <pace>_run <part>_at <part>_down <part>_of <part>_off <part>_out <part>_to <place>_a <place>_again
        <place>_at <place>_befor <place>_first <place>_from <place>_front <place>_loud <place>_on <place>_your
        <settle>_it <swap>_hold <swap>_of <swap>_the <take>_down <take>_ever <wrong>_in a_<kit> a_<move> a_<part>
        a_<settle> a_<swap> a_<take> a_bridg a_count a_crisp a_few a_kick a_slow a_squat a_tightrop all_the
        and_<not> and_<swap> and_down and_it and_let and_not at_your big_<pace> both_<part> break_it
        breath_<place> can_<settle> can_<take> count_of dead_<do> do_the dont_<chat> dont_<settle> dont_<take>
        down_befor down_first down_to each_<num> each_<part> ever_<pace> ever_minut fast_<do> feel_<attend>
        feet_<pace> foot_<place> for_a for_five for_ten for_the for_your forget_the from_the get_<more>
        get_<place> get_it go_<less> go_to goe_<place> got_a half_a half_way if_its if_your im_<not> im_not
        in_<place> in_for in_front in_slow into_a is_<not> is_not it_<far> it_all it_away it_come it_doesnt
        it_down it_is its_<attend> its_<far> its_like last_one lean_<place> let_your like_<num> like_it
        like_somebody look_at lower_<place> lower_down make_it minut_<place> ninet_<pace> ninet_second no_<do>
        no_<far> no_<less> not_<more> not_<num> not_<place> not_<settle> not_<swap> not_at not_one of_<chat>
        of_the of_them of_you on_it on_your one_<attend> one_<part> one_<place> one_at one_for one_in one_of
        one_side out_<attend> out_<place> out_at out_for out_loud push_<place> quick_<air> quick_<part> quick_one
        sat_<place> second_<num> second_at second_lot slow_<air> slow_breath slow_down slow_it slow_the
        stay_<more> stay_down step_<part> step_<place> step_back straight_<place> take_a take_the talk_to
        ten_<pace> ten_second that_<more> the_<far> the_<harm> the_<more> the_<num> the_<part> the_ground
        the_heel the_hip the_middl the_one the_other the_slow them_<place> them_down thre_quick to_0 to_<num>
        to_<pace> to_a to_it to_the to_your too_<pace> twent_<pace> twent_second two_<do> two_<kit> up_<less>
        up_and up_to wait_a walk_in walk_it way_<more> way_up what_<chat> with_<num> with_your you_<not>
        you_<settle> you_are you_dont you_go your_<harm> your_<kit> your_<more> your_<num> your_<part>
        your_<swap> your_<wrong> your_back your_be your_in your_kne your_own your_second your_spe your_stead
      `,
    ],
    [
      -0.4,
      `
        <do>_the <move>_up <pace>_breath <pace>_one <pace>_the <place>_to a_time the_second you_<chat>
        your_<place>
      `,
    ],
  ],
  phrase: [
    [1, 'tempo-sure'],
    [0.6, 'breathing-likely tempo-likely'],
    [0.4, 'focus-hint'],
    [0.2, 'fault-likely setup-likely tempo-hint'],
    [
      -0.2,
      `
        breathing-hint caution-sure easier-hint equipment-hint equipment-likely equipment-sure focus-sure praise
        range-hint range-likely range-sure setup-hint
      `,
    ],
    [-0.4, 'breathing-sure dose_only easier-sure empty_clauses harder-sure setup-sure'],
  ],
  start: [
    [
      0.4,
      `
        <attend>_<attend> <do>_<pace> <not>_<pace> <not>_<wrong> <num>_<pace> <num>_<place> <place>_<attend>
        <settle>_<pace> both_way da_dum down_for one_to take_your take_your_time you_could
      `,
    ],
    [
      0.2,
      `
        0_at_the 0_to 0_to_0 0_to_come <attend>_<chat> <attend>_<more> <attend>_<place> <attend>_<take>
        <chat>_<move> <chat>_<pace> <far>_<do> <far>_<kit> <far>_<not> <more>_<attend> <more>_<more>
        <move>_<pace> <move>_<part> <pace>_<far> <pace>_<less> <pace>_<more> <pace>_<place> <part>_<chat>
        <place>_<more> <place>_<pace> <place>_<place> <swap>_<more> <swap>_<not> <swap>_<pace> <swap>_<wrong>
        <take>_<pace> a_full a_gap a_one a_one_second a_paus a_pendulum about_eight about_half all_out
        becaus_its_the big_lazy_one bit_by bit_by_bit build_it build_it_up chip_at chip_at_it come_down count_0
        count_it_in dawdl_down dead_still do_0 do_not_let dont_be_run dont_bounc_them dont_cheat dont_cheat_me
        dont_crash dont_fall_in dont_fl dont_fl_it dont_flap dont_flap_it dont_forc dont_let_it dont_pull
        dont_pull_with dont_race dont_run dont_slam dont_throw down_for_0 down_for_thre down_in down_like
        down_like_a down_quiet down_with down_with_manner drum_it ease_in ease_into ease_into_it ease_it
        ease_off_the ease_the ease_the_weight eight_percent eight_percent_effort even_pressur ever_one ever_rep
        everyth_youv everyth_youv_got five_second flat_out float_down float_it follow_the follow_the_breath
        four_second four_to full_breath get_your get_your_breath go_again go_quicker half_strength hand_walk
        hand_walk_up head_last hold_for hold_for_one hold_it hold_it_a hold_it_at hold_it_for hold_the
        hold_the_end hold_the_squeez i_dont i_dont_pay i_mean_easy i_want i_want_it i_want_to id_say if_you
        if_you_can im_just im_just_the in_charg in_charg_on it_is_a its_0 its_a its_a_cockroach its_a_drip
        its_a_pendulum its_a_push its_a_rock its_a_state its_about its_firm its_four its_molass its_not its_not_a
        its_not_that its_pull its_stair its_stuck its_stuck_in its_to its_to_warm keep_it keep_it_even
        keep_it_mov land_soft lazy_as lazy_as_you let_it let_one_foot let_the_breath let_the_out let_the_pol
        let_them_come like_a like_a_ball like_a_photo like_a_queu like_clos like_clos_a like_hone like_stir
        like_the like_the_film like_treacl like_your like_your_head like_your_late like_your_work littl_halt
        littl_halt_at littl_quiet littl_quiet_step littl_stop long_and long_and_float loos_and loos_and_lazy
        lower_for lower_it lower_it_as lower_it_like lower_like lower_yourself_gent make_it_bor make_it_last
        make_the move_like nice_and nice_and_even nine_tenth no_bounc no_bounc_off no_drop no_flick no_jerk
        no_jog no_kne no_lurch no_march no_rush no_throw nobod_should_hear nobody_chas nobody_chas_you
        nobody_mark_you nobody_tim nobody_tim_it nobody_watch not_a not_big not_daft not_fierc not_flat
        not_flat_out not_frantic not_furiou not_higher not_like_a not_sil not_the_leg not_the_sort not_woodpecker
        not_your_hardest on_the on_the_way one_at_the one_bone one_bone_after one_breath_to one_ever one_second
        one_to_come one_to_stand one_two one_up pick_a power_up pres_for pres_for_0 pretend_ther_egg pretend_your
        pretend_your_hungover pull_for pull_for_one put_it put_it_ther quick_off quick_off_the quiet_hand ramp_it
        ramp_it_down ramp_it_up reset_each reset_ever rest_when rest_when_you roll_down same_spe sharp_now
        short_quick short_quick_step sink_a sink_a_bit sit_in sit_ther slow_as slow_on slow_on_the slower_than
        small_quick small_quick_step small_step smallish_step snap_it soft_feet soft_feet_thi soft_landing
        squeez_about squeez_about_half stand_smart stand_up stand_up_normal stand_up_when stay_a stay_ther_for
        step_in still_as still_as_a stop_dead stop_dead_at stop_ther_for stop_up stop_up_top sw_it ta_dum
        take_your_sweet tea_gone tea_gone_everywher that_a_stop that_pedall that_pedall_for that_the
        that_the_game that_the_sneak that_the_talk that_was_a that_wher that_wher_the that_why that_why_its
        the_band_not the_belt the_out the_out_breath the_same the_same_up the_wall the_wall_not then_just
        ther_a_bus ther_another ther_another_one ther_is ther_is_nowher ther_no_bus ther_no_whip thes_are
        thes_are_all theyr_singl thi_is thi_is_at thi_isnt_pat thre_count thre_second thre_step_to thre_to
        tick_tock tooth_by tooth_by_tooth top_to top_to_bottom two_count two_down two_second two_to two_up up_for
        up_for_two up_in up_in_one up_like up_like_you up_strong up_with up_with_a wait_at wait_one walk_your
        walk_your_hand we_are we_dont we_dont_plank wee_step were_just were_just_turn were_stack were_stack_a
        whol_one work_at work_at_a yere_tear yere_tear_through you_build you_can_say you_could_hold
        you_could_still you_dont_own you_dont_want you_driv you_float_off you_should you_should_still your_balanc
        your_balanc_book your_curtsey your_drop your_keep your_keep_it your_last your_laundr your_laundr_on
        your_not_fir your_not_shut your_not_swat youv_got
      `,
    ],
    [
      -0.2,
      `
        <attend>_<num> <chat>_<chat> <chat>_<less> <chat>_<not> <chat>_<place> <chat>_<settle> <chat>_<swap>
        <far>_<num> <far>_<place> <less>_<do> <more>_<chat> <more>_<num> <move>_<more> <move>_<place>
        <not>_<chat> <not>_<num> <not>_<place> <not>_<settle> <not>_<swap> <not>_<take> <num>_<attend>
        <num>_<chat> <num>_<part> <pace>_<air> <pace>_<take> <part>_<attend> <place>_<chat> <place>_<part>
        <settle>_<less> <settle>_<part> <settle>_<place> <swap>_<do> <swap>_<far> <swap>_<less> <swap>_<num>
        <take>_<attend> <take>_<place> build_up control_the control_the_middl count_out count_out_loud
        hold_it_ther if_its its_like let_your like_your_in littl_quick not_one one_at one_at_a one_down one_foot
        out_for paus_for paus_for_a quick_feet quick_one slow_down slow_down_befor slow_it slow_it_down slow_the
        take_a talk_to the_second thirt_second thre_quick thre_quick_step up_to wait_a walk_it your_not_a
      `,
    ],
    [-0.4, '<part>_<place>'],
  ],
  word: [
    [1, 'ease'],
    [0.8, 'brisk even lazy lower quiet sharp'],
    [0.6, 'build da dead dum effort quick snap spe still wait'],
    [
      0.4,
      `
        about be beat boss bottom bounc bus chas down drop ever firm float full jerk land last like nice no
        nobody pace pleas quicker rep reset rhythm sentenc settl should slower sprint squeez than treacl two up
        youv
      `,
    ],
    [
      0.2,
      `
        a able an another arriv as asleep at ay baby back befor begin bit blink bomb bone brid by cadenc cake
        catapult catch charg choru cockroach colin com comfortab controll conversation could count crash crisper
        curtsey dial dinner disco dive dont driv easy egg elephant elevator end especial everyth everywher explod
        fall feather feet fir fire fl flap flick fling follow forc four frantic furiou game gas gear gentl go
        gossip gradual halt hardest hear hid hone hotel hungover hur hurry id in its jiggl kick landing late
        laundr let librar lift lighthous linger littl live longer loos lurch machin mean mississippi molass
        moment music neat negativ nine not now nowher old one patient pedal peel pendulum percent pick plop polka
        position power pret pretend pull puls quieter ramp ratio resist rock rude same saw say seat second seven
        shap shop shouldnt sing sink slam slap sleep slingshot slow slowest small smallish smart snatch sneak
        soft speak speed stack stamped state step stir strength strok strong sunda sw swat sweet syrup ta tak
        take tank tenth then ther thereabout thes thing thre through throw tick tidy tock trampolin twic ugly
        underneath underwater unhurri vertical want wash wasp wax way wee went wet when whip word work yere youd
      `,
    ],
    [
      -0.2,
      `
        allow alway ankl arm backward bag banana been behind bell bend bent between big brac break bridg bum cat
        chat check chin curl degre dip do doesnt done drag dumbbell ear elbow else em everybod eye fac far feel
        fift fifteen finger finish five flat floor flop foot forget fort forward goe good grip ground grow half
        hammock hand hang hard have heav heel help here high hip hold hop hover how hug ill inch instead is ive
        jog jump kilo kne ladder lamp lane later lean leg lie light line lock long look lose loud low lung mat
        metr middl my near neck never next ninet nobod nose number of on once only other over overhead pain pair
        park peopl plat plent point pour pres priz puff purpl put rest right round row run said set shak shin
        shoulder show shrug sid sip slack slid slip sock somebody someth split squash stag star stay stiff
        straight stretch strid swap tabl talk ten tent th that the them they think thirt thos tight tightrop till
        time tip too tray tuck turn twelv twent twist us wall water week what whatever whenever who will with
        without year youll your
      `,
    ],
    [-0.4, 'front i if knee off or side squat tall toe'],
    [-0.6, 'minut'],
  ],
} as const satisfies CueWeights
