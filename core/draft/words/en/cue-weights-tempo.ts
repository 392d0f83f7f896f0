/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind tempo; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const TEMPO_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [1, 'pace'],
    [0.2, 'not num'],
    [-0.2, 'attend chat kit less more place settle swap take wrong'],
    [-0.4, 'harm ill'],
    [-0.6, 'air far part'],
  ],
  first: [
    [0.8, 'ease'],
    [0.6, '<pace> brisk down lazy like nice sharp up'],
    [
      0.4,
      `
        <far> <more> about da even lower nobody pleas reset small snap thre treacl two wait
      `,
    ],
    [
      0.2,
      `
        0 <chat> <less> <num> <place> <settle> <swap> a all and bang basical bit bounc build chip clos colin
        controll count crisp dawdl dead do doubl easy explod fast find firm five float follow four gentl get give
        glacial go graham hang head hold its land lift linger littl loos make match melt move neat no not one
        open paus peel power pretend pull quicker quiet quieter ramp rate ratio rough settl sink slower smallish
        soft stand stead still stop strict sw syrup ta take tea ther thes thi tick tidy tooth unhurri was wee
        were whol why work yall yere you
      `,
    ],
    [
      -0.2,
      `
        <wrong> befor breath chang chat control draw drop feet finish front gent good grip half have i ill in it
        ive keep last lean leav left level light long look nobod once only or peopl pres quick round set short
        somebody squeez straight swap talk tall tempo ten that the they thirt time to toe too tuck turn twent
        whatever wher with youll
      `,
    ],
    [-0.4, '<air> <kit> if out second'],
    [-0.6, '<part>'],
  ],
  given: [
    [
      0.2,
      `
        <chat> <less> <pace> can choru eight fast feet get me music quick right sing the then too wait you your
      `,
    ],
    [-0.2, '<attend> <num> a its one'],
  ],
  last: [
    [0.6, 'back bottom dum sharp treacl'],
    [
      0.4,
      `
        brisk build drop effort even firm it jerk last lazy pleas quick sentenc snap step still thre tidy two
      `,
    ],
    [
      0.2,
      `
        and august bang beat boot bor boss bounc breath bus cake catapult chas chest clang cockroach colin
        control conversation crash curtsey daft dead dinner direction disco down driv elephant elevator empt
        everywher feather few fierc furiou game gear gentl gone gossip got gradual graham handl hole home hone
        hotel hungover hur in jiggl just kitten landing late leav lighthous lurch machin march meter metronom
        mississippi music neat negativ nice now on one open pace paint patient paus peel pendulum percent ping
        plop polka pop pret prid pull puls queu quiet race ratio rep reset rhythm rough round seat settl shap
        shorten singl sink slap smart smooth snatch soft spe sprint squeez stamped stead stick strength strict
        strong sunda syrup tank tenth thereabout to tock tooth ugly underneath underwater unhurri vertical wait
        war wash woodpecker word wrestl yall yawn
      `,
    ],
    [
      -0.2,
      `
        all arm away bag bar bell bend bit cat chat cheat clos dip do done ear faster fine five flat front gate
        good hammock hand high jump kne ladder left line lock long mat me neck nose off over pres rest right row
        set shak shrug sid side squat swap tabl tall tent th then ther tight tightrop toe turn twist wall way
        whenever work yet
      `,
    ],
    [-0.4, 'no time'],
  ],
  length: [
    [-0.2, '5-7 8-12'],
    [-0.4, '3-4'],
    [-0.6, '1-2'],
  ],
  pair: [
    [0.8, '<num>_to for_<num> for_one'],
    [
      0.6,
      `
        <num>_count <place>_for about_<num> da_dum down_<attend> let_it the_<pace> to_<settle> with_the your_time
      `,
    ],
    [
      0.4,
      `
        <attend>_the <chat>_can <chat>_could <chat>_it <move>_for <not>_drop <not>_jerk <not>_sprint <not>_throw
        <num>_out <num>_up <pace>_a <pace>_than <pace>_with <settle>_your <take>_for a_<do> a_lift all_out
        and_<pace> as_<attend> befor_<chat> both_way com_<place> down_for ease_it ever_<num> full_<pace>
        full_second go_<place> into_it it_back like_its no_<wrong> not_a of_ten off_the one_to out_of should_be
        slow_<attend> slower_than take_your the_<chat> the_beat the_boss the_end the_out the_spe ther_a to_come
        way_<part> way_<place> way_back you_<less> you_can you_could your_<pace> your_leg youv_got
      `,
    ],
    [
      0.2,
      `
        0_<more> 0_<place> 0_at 0_go 0_turn <air>_be <attend>_as <attend>_com <attend>_day <attend>_down
        <attend>_feet <attend>_hone <attend>_if <attend>_landing <attend>_long <attend>_over <attend>_round
        <attend>_step <attend>_stir <attend>_than <attend>_ther <attend>_treacl <attend>_up <attend>_your
        <chat>_again <chat>_arriv <chat>_at <chat>_balanc <chat>_bare <chat>_build <chat>_cant <chat>_curtsey
        <chat>_driv <chat>_drop <chat>_ease <chat>_eight <chat>_few <chat>_gradual <chat>_hid <chat>_home
        <chat>_hungover <chat>_in <chat>_just <chat>_late <chat>_laundr <chat>_lower <chat>_mean <chat>_quicker
        <chat>_quiet <chat>_read <chat>_right <chat>_say <chat>_should <chat>_sit <chat>_sneak <chat>_that
        <chat>_underwater <chat>_want <chat>_went <chat>_youv <do>_befor <do>_down <do>_fast <do>_for <do>_hard
        <do>_is <do>_it <do>_slow <do>_smart <do>_them <do>_ther <do>_to <do>_with <far>_and <far>_halt <far>_it
        <far>_just <far>_of <far>_quick <far>_second <far>_squeez <far>_step <far>_thing <far>_vertical
        <far>_wher <far>_with <far>_your <far>_yourself <harm>_befor <harm>_it <harm>_up <kit>_arent <kit>_at
        <kit>_do <kit>_go <kit>_on <kit>_shorten <less>_a <less>_effort <less>_for <less>_it <less>_of
        <less>_stop <less>_strength <less>_that <less>_when <less>_yourself <more>_gear <more>_in <more>_normal
        <more>_pace <more>_quick <more>_strong <more>_time <more>_when <more>_wher <more>_your <move>_ever
        <move>_fast <move>_in <move>_is <move>_like <move>_of <move>_with <not>_a <not>_big <not>_bounc <not>_bus
        <not>_daft <not>_dead <not>_dive <not>_fiddl <not>_fierc <not>_fir <not>_fl <not>_flap <not>_flick
        <not>_forc <not>_frantic <not>_furiou <not>_higher <not>_jiggl <not>_jog <not>_kick <not>_kne <not>_let
        <not>_lurch <not>_on <not>_own <not>_pat <not>_pay <not>_plop <not>_prid <not>_race <not>_slam <not>_snap
        <not>_snatch <not>_sw <not>_swat <not>_want <not>_water <not>_woodpecker <num>_banana <num>_beat
        <num>_befor <num>_com <num>_down <num>_elephant <num>_ever <num>_go <num>_leav <num>_mississippi
        <num>_percent <num>_second <num>_shoulder <num>_strength <num>_strok <num>_tenth <num>_turn <num>_two
        <pace>_and <pace>_as <pace>_back <pace>_bar <pace>_com <pace>_each <pace>_effort <pace>_enough
        <pace>_ever <pace>_four <pace>_go <pace>_here <pace>_im <pace>_in <pace>_it <pace>_like <pace>_negativ
        <pace>_now <pace>_of <pace>_off <pace>_on <pace>_or <pace>_out <pace>_step <pace>_test <pace>_to
        <pace>_when <pace>_you <part>_come <part>_for <part>_if <part>_into <part>_land <part>_last <part>_settl
        <part>_slow <part>_then <part>_together <part>_walk <part>_wrestl <place>_as <place>_august <place>_bit
        <place>_blacktop <place>_breath <place>_charg <place>_in <place>_landing <place>_like <place>_normal
        <place>_of <place>_out <place>_quiet <place>_short <place>_sleep <place>_somebod <place>_strong
        <place>_them <place>_thes <place>_time <place>_tooth <place>_wher <place>_with <settle>_0 <settle>_again
        <settle>_clang <settle>_down <settle>_for <settle>_gradual <settle>_home <settle>_quicker <settle>_quiet
        <settle>_smart <settle>_ther <settle>_tir <settle>_twic <settle>_when <swap>_0 <swap>_a <swap>_at
        <swap>_bounc <swap>_bus <swap>_drop <swap>_fiddl <swap>_flick <swap>_hear <swap>_jerk <swap>_kne
        <swap>_lurch <swap>_march <swap>_one <swap>_only <swap>_rush <swap>_say <swap>_sing <swap>_smart
        <swap>_some <swap>_throw <swap>_up <swap>_whip <take>_in <take>_smart <take>_tir <take>_when <wrong>_bomb
        <wrong>_chair <wrong>_me <wrong>_off <wrong>_you a_<air> a_<chat> a_<more> a_<pace> a_<wrong> a_baby
        a_beat a_blink a_bounc a_breath a_brisk a_bucket a_bus a_butler a_car a_catapult a_cockroach
        a_conversation a_disco a_drip a_drop a_feather a_fire a_full a_hot a_hotel a_hur a_level a_librar
        a_lighthous a_moment a_pace a_paus a_pendulum a_photo a_queu a_rhythm a_rock a_second a_sentenc a_sprint
        a_stamped a_state a_still a_sunda a_third a_tug a_two a_well a_yawn able_to about_<less> about_eight
        about_half after_<place> after_another after_on again_from all_<place> an_<less> an_<more> an_<pace>
        an_easy an_old and_<harm> and_<settle> and_build and_even and_lazy and_patient and_snap and_two
        another_<num> another_thre anybod_to are_<pace> are_mov are_we arent_<place> arm_are arm_wide arm_wrestl
        arriv_<place> arriv_in arriv_on as_<pace> as_<place> as_if as_long as_slow asleep_<place> asleep_on
        at_<num> at_about at_six at_the at_twent away_for away_from ay_a baby_asleep back_<pace> back_<place>
        back_down back_for back_into back_slow balanc_<kit> balanc_<swap> balanc_book ball_go banana_<attend>
        banana_as band_<not> band_not band_shorten bar_<place> bar_on bar_peopl bare_<num> bare_one
        barefoot_<place> barefoot_on be_<pace> be_able be_an be_run be_the be_your beat_<place> becaus_hook
        befor_you big_and big_feet bit_<pace> bit_by bit_of bit_quicker bit_that blacktop_<place> blacktop_in
        blink_at bomb_it bone_after boss_of bottom_then bounc_them br_the breath_be breath_to brisk_<do>
        brisk_<move> brisk_walk bucket_<place> build_it bus_com bus_now bus_to by_bit by_tooth call_that
        can_<far> can_hear can_only can_say can_sing cant_<not> cant_stop car_boot car_wash catch_a catch_it
        charg_<place> charg_on chas_<chat> chas_you cheat_<chat> cheat_me chip_at choru_<chat> choru_your
        chuck_yourself clock_<not> clock_doesnt com_<part> com_back com_down come_<place> come_down
        comfortab_<less> comfortab_<pace> comfortab_hard could_<attend> could_<settle> could_<take> could_hold
        could_still count_0 count_<num> count_<place> count_on cover_<place> cover_in crash_<place> crash_down
        crisper_than dawdl_<place> dawdl_down dead_<attend> dead_<not> dead_<place> dead_at dead_on dead_still
        dead_stop dive_bomb do_0 do_not do_some dont_<do> dont_<less> dont_<pace> dont_<wrong> dont_cheat
        dont_drop dont_fl dont_flap dont_forc dont_own dont_pay dont_race dont_slam dont_sprint dont_want
        doubl_<pace> doubl_time down_<pace> down_like down_quiet drip_<place> drip_down drum_it each_<do>
        each_rep each_shap ease_<place> ease_in ease_into ease_the easy_<pace> effort_here egg_<place> egg_under
        eight_<place> eight_five eight_out eight_percent elbow_land empt_the especial_<far> especial_past
        even_<do> even_<harm> even_on even_one even_pressur ever_<harm> ever_<ill> ever_click ever_one ever_rep
        ever_two everyth_youv explod_off farmer_<kit> farmer_handl fast_<place> fast_and feet_thi feet_under
        fiddl_the final_<num> final_mov final_ten fir_a first_few five_percent fl_it fl_them flap_it flat_out
        float_<place> float_down float_it floor_<attend> follow_it follow_the foot_<settle> foot_settl for_0
        for_effort for_thi for_thre forward_as four_count four_to from_<chat> from_dead from_you full_of
        gate_<place> gate_in get_<pace> get_quicker get_to get_ugly get_your give_<chat> give_me go_<pace>
        go_<part> go_again go_back go_down go_downstair go_gradual go_quiet gone_everywher good_are good_thre
        got_left half_of half_on half_strength halt_at hand_walk hang_<place> hard_for head_<chat> head_last
        head_out hear_them hear_your heel_<move> heel_come heel_land heel_on hold_the hook_<not> hook_dont i_want
        id_say if_you im_after im_just in_a in_august in_charg in_short in_sleep in_soft in_time in_you is_<swap>
        is_at is_cover is_nowher is_snap is_treacl is_what isnt_pat it_<attend> it_<chat> it_<move> it_<pace>
        it_<part> it_<wrong> it_a it_at it_bor it_crash it_drop it_even it_if it_in it_ping it_quick it_slingshot
        it_slow it_want it_yank its_0 its_<kit> its_<not> its_<num> its_a its_about its_call its_firm its_four
        its_molass its_not its_pull its_stair its_to just_<take> just_hold keep_it kettl_<not> kettl_isnt kne_and
        land_<attend> land_like last_eight laundr_<place> laundr_on lazy_<attend> lazy_<place> lazy_as
        left_<place> left_in leg_<more> librar_underneath lift_<place> lift_in lift_with like_hone like_stir
        like_the like_ther like_treacl like_your linger_at littl_<attend> littl_<do> littl_<move> littl_halt
        littl_squeez littl_thing long_and long_com longer_<place> longer_than look_<do> look_round loos_and
        lot_is lower_<attend> lower_<chat> lower_a lower_for lower_it lower_like lower_yourself make_the
        mark_<chat> mark_you mat_is match_the me_a me_in mean_<less> mean_<more> mean_<pace> mean_easy
        melt_<part> melt_<place> melt_back moment_at more_each more_gear mov_<place> mov_through move_<attend>
        move_like need_a nice_<place> nice_and nice_in nine_tenth no_bounc no_bus no_drop no_fiddl no_flick
        no_jerk no_jog no_kne no_lurch no_march no_rush no_throw no_whip nobody_chas nobody_tim nobody_watch
        nod_from not_<do> not_<far> not_big not_daft not_drop not_fierc not_fir not_flat not_frantic not_furiou
        not_higher not_let not_plop not_prid not_shut not_sprint not_swat not_water not_woodpecker noth_jiggl
        nowher_to of_<air> of_<num> of_breath of_egg of_four of_it of_soup old_motor on_blacktop on_somebod
        on_the one_<more> one_<num> one_befor one_elephant one_ever one_from one_leav one_more one_second
        one_shoulder one_the one_two one_up only_just or_so out_<air> out_and out_breath out_by out_than out_ther
        over_<num> over_one over_the own_it past_<far> past_vertical pat_cake pay_<place> pay_by pedall_for
        peel_them peopl_for percent_<pace> percent_effort pick_<more> pick_<place> pick_a pick_up pol_<swap>
        pol_do power_<more> power_<place> power_up pres_for proper_<do> proper_<move> proper_squeez pull_for
        push_<less> push_<pace> push_hard put_it put_your quick_<attend> quick_<kit> quick_<more> quick_<place>
        quick_off quick_step quick_up quicker_<place> quiet_<attend> quiet_<part> quiet_<place> quiet_hand
        quiet_through ramp_it reach_your reset_each reset_ever resist_it rest_when rock_<kit> rock_chair
        roll_down rush_the same_<more> same_<pace> same_<place> same_length same_spe same_up sat_sinc saw_<kit>
        saw_machin say_a second_go second_negativ second_or second_out second_to settl_befor seven_<place>
        seven_out sharp_now short_quick short_sentenc should_<attend> should_hear should_look should_still
        sing_the sink_a sit_<place> sit_in sit_ther slam_it sleep_kitten slingshot_<chat> slingshot_you
        slow_<far> slow_as slow_is slow_on slow_to slowest_of small_<do> small_<kit> small_<pace> small_quick
        small_step smallish_<do> smallish_<kit> smallish_step snap_<more> snap_<place> snap_it snap_up
        sneak_<place> so_<pace> soft_landing sort_that spe_<chat> spe_im spe_of spe_you speed_<num> speed_one
        sprint_it squat_is squeez_about squeez_at stack_clang stand_smart state_<swap> state_home stay_a stay_on
        step_to still_<attend> still_as still_day stop_<more> stop_<place> stop_dead stop_up strok_a
        stroll_<part> stroll_<place> stroll_back sw_is sw_it swat_wasp sweet_<pace> sweet_time ta_dum take_<num>
        take_twic talk_test tea_gone tear_<place> tear_through ten_for ten_strok than_<more> than_<place>
        than_befor than_in than_up that_<kit> that_<pace> that_count that_final that_pedall that_station
        that_stick that_the that_thre that_wher that_why the_<air> the_<kit> the_<move> the_<place> the_arm
        the_band the_bit the_bottom the_breath the_cadenc the_chest the_choru the_clock the_dial the_down
        the_drum the_duck the_dumbbell the_eccentric the_farmer the_final the_first the_fourth the_game the_gas
        the_hole the_in the_music the_pace the_passenger the_polka the_rep the_room the_same the_slowest
        the_sneak the_sort the_squat the_squeez the_stack the_talk the_tank the_top the_way them_<kit>
        them_<part> them_back them_come them_seat then_<chat> then_<settle> then_go then_just ther_egg ther_is
        thes_are thes_bridg theyr_singl thi_bit thi_is thre_<pace> thre_count thre_to through_them tick_tock
        tim_it time_com time_with to_<do> to_<far> to_<move> to_<swap> to_<take> to_arriv to_begin to_bottom
        to_catch to_five to_gossip to_let to_lower to_pull to_see to_sit to_warm tooth_<place> tooth_by top_befor
        top_to turn_the twent_<num> twent_two twic_<attend> twic_as two_<pace> two_<place> two_banana two_beat
        two_count two_elephant two_to two_up under_your up_<attend> up_<more> up_<pace> up_normal up_quick
        up_strong up_when up_with up_your wait_<num> wait_at wait_for wait_one walk_<more> walk_<pace> walk_to
        walk_up walk_your wall_<not> wall_not want_it warm_<chat> warm_you was_bare was_that way_down way_to
        we_<not> we_<pace> we_dont wee_<kit> wee_step went_<more> went_<place> went_up were_just were_stack
        what_the when_that wher_the whol_one why_are why_its wide_with with_an wobbl_to work_at yank_<chat>
        yank_you yere_tear you_<far> you_<swap> you_<take> you_arriv you_build you_cant you_driv you_lower
        you_put you_should you_sit you_went youd_<settle> your_<take> your_balanc your_barefoot your_breath
        your_curtsey your_dinner your_drop your_feet your_hand your_hardest your_heel your_hid your_hungover
        your_keep your_last your_late your_laundr your_read your_right your_sneak your_sweet your_underwater
        yourself_<pace> yourself_at yourself_gent youv_<chat> youv_all
      `,
    ],
    [
      -0.2,
      `
        0_0 0_<kit> 0_<num> <attend>_a <attend>_it <attend>_like <attend>_somebody <attend>_that <chat>_are
        <chat>_go <chat>_hold <chat>_of <chat>_on <chat>_one <chat>_stead <chat>_the <chat>_to <chat>_two
        <chat>_will <chat>_you <do>_back <do>_one <do>_out <do>_the <do>_up <far>_back <far>_down <far>_for
        <far>_one <kit>_and <kit>_back <kit>_down <kit>_it <less>_to <less>_way <more>_a <more>_down <more>_four
        <more>_thre <more>_to <move>_the <move>_up <move>_your <not>_come <not>_count <not>_for <not>_go
        <not>_hold <not>_lock <not>_of <not>_paus <not>_to <not>_yank <num>_and <num>_for <num>_hand <num>_if
        <num>_kilo <num>_leg <num>_metr <num>_minut <num>_of <num>_one <num>_quick <num>_rep <num>_side
        <num>_slow <num>_step <num>_tim <num>_way <pace>_bit <pace>_down <pace>_floor <pace>_for <pace>_if
        <pace>_lot <pace>_one <pace>_pull <pace>_run <pace>_the <pace>_toe <pace>_up <part>_and <part>_at
        <part>_of <part>_off <part>_out <part>_to <place>_a <place>_again <place>_at <place>_befor
        <place>_between <place>_first <place>_four <place>_from <place>_front <place>_here <place>_loud
        <place>_on <place>_the <place>_to <place>_two <place>_your <settle>_on <swap>_of <swap>_the <take>_down
        <take>_on <take>_up <wrong>_in a_<harm> a_<kit> a_<move> a_<part> a_<settle> a_<swap> a_<take> a_bit
        a_bridg a_count a_crisp a_few a_kick a_long a_slow a_squat a_tightrop about_to all_the and_<not> and_down
        and_it and_not at_a be_<attend> big_<pace> both_<part> break_it can_<chat> can_<settle> count_of
        dead_<do> do_the dont_<chat> dont_<settle> dont_<take> dont_count down_<chat> down_<num> down_befor
        down_first down_one drop_the each_<num> each_time eight_<pace> ever_<pace> ever_minut ever_time
        explod_<more> explod_up fast_<do> feel_<attend> feel_like feet_<pace> foot_<place> for_a for_five for_ten
        for_twent for_your forget_the fort_<pace> fort_second from_the get_<more> get_<place> get_it go_<less>
        go_<num> go_to goe_<place> got_a half_<pace> half_way hear_<chat> hear_you if_its if_your im_<not> im_not
        in_<air> in_<place> in_breath in_front in_slow in_the in_ther into_a into_the is_<place> is_not it_<far>
        it_<not> it_all it_come it_doesnt it_for it_is its_<attend> its_<far> its_like keep_the last_one
        lean_<place> let_your like_<num> like_a like_it like_somebody look_<attend> look_at lower_<place>
        lower_down minut_<place> need_to ninet_<pace> no_<do> no_<kit> no_<less> not_<more> not_<num> not_<place>
        not_<settle> not_<swap> not_on not_one not_to of_<chat> of_five of_the of_them of_two of_you on_<chat>
        on_<num> on_it on_top on_your one_<attend> one_<part> one_<place> one_at one_for one_in one_leg one_of
        one_side only_<pace> out_<place> out_at out_for out_loud out_on paus_for pres_<place> push_<place>
        quick_<air> quick_<part> quick_one rush_to second_<far> second_<less> second_<more> second_<pace>
        second_<settle> second_at second_down second_lot second_one second_toe second_up slow_<air> slow_breath
        slow_down slow_it slow_the so_<chat> spe_<move> spe_make stay_<more> stay_<place> stay_down step_<part>
        step_<place> step_back straight_<place> take_the talk_to tempo_0 that_<more> that_your the_<attend>
        the_<far> the_<harm> the_<more> the_<num> the_<part> the_back the_effort the_ground the_hip the_mayor
        the_middl the_minut the_one the_other the_slow the_wall the_whol them_<place> them_down thi_<num> thi_one
        thre_<num> thre_quick to_0 to_<num> to_<pace> to_a to_the to_your top_for twent_<pace> twent_second
        two_<do> two_<kit> two_and two_more up_<less> up_<num> up_four up_to walk_in walk_it way_<more> way_up
        what_<chat> with_<chat> with_<num> with_your you_<not> you_<settle> you_are you_go your_<harm>
        your_<more> your_<num> your_<part> your_<swap> your_<wrong> your_back your_be your_in your_kne your_own
        your_put your_spe your_stead
      `,
    ],
    [-0.4, '<pace>_breath <settle>_it a_time the_second you_<chat> your_<place>'],
  ],
  phrase: [
    [0.8, 'tempo-sure'],
    [0.6, 'breathing-likely tempo-likely'],
    [0.4, 'focus-hint'],
    [0.2, 'easier-likely fault-likely setup-likely tempo-hint'],
    [
      -0.2,
      `
        breathing-hint caution-likely caution-sure easier-hint equipment-hint equipment-likely equipment-sure
        focus-sure praise range-hint range-sure setup-hint
      `,
    ],
    [-0.4, 'breathing-sure dose_only easier-sure empty_clauses range-likely setup-sure'],
    [-0.6, 'harder-sure'],
  ],
  start: [
    [0.6, '<num>_<pace> <num>_<place>'],
    [
      0.4,
      `
        <do>_<pace> <not>_<pace> <place>_<attend> <settle>_<pace> <swap>_<wrong> both_way da_dum down_for i_want
        one_to take_your take_your_time you_could
      `,
    ],
    [
      0.2,
      `
        0_at_the 0_second 0_to 0_to_0 0_to_come <attend>_<attend> <attend>_<more> <attend>_<place>
        <attend>_<take> <chat>_<move> <chat>_<pace> <do>_<less> <do>_<more> <do>_<part> <far>_<attend> <far>_<do>
        <far>_<kit> <far>_<not> <harm>_<more> <harm>_<place> <more>_<attend> <more>_<more> <more>_<pace>
        <move>_<pace> <move>_<part> <not>_<wrong> <num>_<move> <pace>_<far> <pace>_<less> <pace>_<more>
        <pace>_<place> <part>_<chat> <place>_<more> <place>_<pace> <swap>_<more> <swap>_<not> <swap>_<pace>
        <take>_<pace> a_count a_count_of a_full a_gap a_one a_one_second a_paus a_pendulum about_eight about_half
        all_out away_for away_for_two becaus_its_the big_lazy_one bit_by bit_by_bit build_it build_it_up chip_at
        chip_at_it come_down count_0 count_it_in dawdl_down dead_still dead_stop do_0 do_not_let dont_be_run
        dont_bounc_them dont_cheat dont_cheat_me dont_chuck_yourself dont_crash dont_fall_in dont_fl dont_fl_it
        dont_flap dont_flap_it dont_forc dont_let dont_let_it dont_pull dont_pull_with dont_race dont_run
        dont_rush_the dont_slam dont_sprint doubl_time down_for_0 down_for_four down_for_thre down_in down_like
        down_like_a down_quiet down_with down_with_manner drum_it ease_in ease_into ease_into_it ease_it
        ease_off_the ease_the ease_the_weight eight_percent eight_percent_effort even_pressur ever_one ever_rep
        everyth_youv everyth_youv_got explod_off explod_off_the five_second flat_out float_down float_it
        follow_the follow_the_breath for_the four_second_in four_to full_breath get_your get_your_breath give_me
        give_me_a go_again go_quicker half_strength hand_walk hand_walk_up hang_on_for head_last hold_for
        hold_for_one hold_it hold_it_a hold_it_at hold_the hold_the_end hold_the_squeez i_dont i_dont_need
        i_dont_pay i_mean_easy i_want_it i_want_to id_say if_you_can im_just im_just_the in_charg in_charg_on
        it_is_a its_0 its_a its_a_cockroach its_a_drip its_a_pendulum its_a_push its_a_rock its_a_state its_about
        its_firm its_four its_molass its_not its_not_a its_not_that its_pull its_stair its_to its_to_warm
        keep_it_even land_soft lazy_as lazy_as_you let_it let_one_foot let_the_breath let_the_out let_the_pol
        let_them_come like_a like_a_ball like_a_photo like_clos like_clos_a like_hone like_stir like_the
        like_treacl like_your like_your_head like_your_late like_your_work linger_at linger_at_the littl_halt
        littl_halt_at littl_squeez littl_squeez_at littl_stop long_and long_and_float loos_and loos_and_lazy
        lower_for lower_for_five lower_it lower_it_as lower_it_like lower_like lower_yourself lower_yourself_gent
        make_it_bor make_it_last make_the match_the match_the_drum move_like nice_and nice_and_even nine_tenth
        no_bounc no_bounc_off no_drop no_flick no_jerk no_jog no_kne no_lurch no_march no_rush no_throw
        nobod_should_hear nobody_chas nobody_chas_you nobody_mark_you nobody_tim nobody_tim_it nobody_watch not_a
        not_a_bounc not_big not_big_feet not_daft not_fierc not_flat not_flat_out not_frantic not_furiou
        not_higher not_like_a not_the_leg not_the_sort not_woodpecker not_your_hardest on_the on_the_beat
        on_the_way one_at_the one_bone one_bone_after one_breath_to one_ever one_second one_to_come one_to_stand
        one_two one_up open_the_arm pick_a power_up pres_for pres_for_0 pretend_ther_egg pretend_your
        pretend_your_hungover pull_for pull_for_one push_hard push_hard_for put_it put_it_ther quick_off
        quick_off_the quick_up quiet_hand ramp_it ramp_it_down ramp_it_up reset_each reset_ever rest_when
        rest_when_you roll_down same_spe sharp_now short_quick short_quick_step sink_a sink_a_bit sit_in
        sit_in_the sit_ther slow_as slow_on slow_on_the slower_than small_quick small_quick_step small_step
        smallish_step snap_it snap_up snap_up_out soft_feet soft_feet_thi soft_landing squeez_about
        squeez_about_half squeez_and_let squeez_it_ther stand_smart stand_up stand_up_normal stand_up_when
        start_at_a stay_a stay_ther_for step_in still_as still_as_a stop_dead stop_dead_at stop_up stop_up_top
        stroll_back sw_it ta_dum take_0 take_0_second take_a_good take_your_sweet tea_gone tea_gone_everywher
        that_a_stop that_pedall that_pedall_for that_the that_the_game that_the_sneak that_the_talk that_was_a
        that_wher that_wher_the that_why that_why_its the_band_not the_belt the_kettl the_last the_out the_same
        the_same_up the_squat the_sw the_sw_is the_wall the_wall_not then_just ther_a_bus ther_another_one
        ther_is ther_is_nowher ther_no_bus ther_no_whip thes_are thes_are_all theyr_singl thi_is thi_is_at
        thi_isnt_pat thre_count thre_second thre_to tick_tock tooth_by tooth_by_tooth top_to top_to_bottom
        turn_the_head two_beat two_count two_down two_to two_up up_for up_for_one up_in up_in_one up_like
        up_like_you up_strong up_with up_with_a wait_at wait_one walk_your walk_your_hand was_that was_that_thre
        we_are we_dont we_dont_plank wee_step were_just were_just_turn were_stack were_stack_a when_the whol_one
        why_are work_at work_at_a yere_tear yere_tear_through you_build you_build_for you_can_say you_could_hold
        you_could_still you_dont_own you_dont_want you_driv you_float_off you_should you_should_still
        your_all_fall your_balanc your_balanc_book your_curtsey your_drop your_keep your_keep_it your_last
        your_laundr your_laundr_on your_not_fir your_not_shut your_not_swat youv_got
      `,
    ],
    [
      -0.2,
      `
        <attend>_<num> <chat>_<chat> <chat>_<not> <chat>_<place> <chat>_<settle> <chat>_<swap> <far>_<num>
        <far>_<place> <less>_<do> <less>_<pace> <more>_<chat> <more>_<num> <move>_<place> <not>_<chat>
        <not>_<kit> <not>_<place> <not>_<settle> <not>_<swap> <not>_<take> <num>_<attend> <num>_<chat>
        <num>_<far> <num>_<part> <pace>_<air> <pace>_<chat> <pace>_<do> <part>_<attend> <place>_<chat>
        <place>_<part> <settle>_<less> <settle>_<part> <settle>_<place> <swap>_<do> <swap>_<kit> <swap>_<less>
        <swap>_<num> <take>_<attend> build_up control_the control_the_middl count_out count_out_loud dont_rush_to
        four_second_down half_a if_its if_your its_like let_the_spe let_your like_your_in littl_quick not_one
        not_the one_at one_at_a one_down one_foot out_for paus_for paus_for_two quick_feet quick_one sit_down
        slow_down slow_down_befor slow_it_down slow_the slow_the_way squeez_at squeez_at_the squeez_it_for
        take_the talk_to tempo_0 the_second thirt_second thre_quick thre_quick_step two_second_up up_to wait_a
        walk_it
      `,
    ],
    [-0.4, '<part>_<place>'],
  ],
  word: [
    [1, 'ease'],
    [0.8, 'beat brisk dead even lazy lower quiet sharp snap spe treacl wait'],
    [0.6, 'build da dum full nice pace quick quicker should still'],
    [
      0.4,
      `
        about be boss bounc bus chas crash down drop easy ever firm float hone jerk land last like no nobody
        pleas rep reset rhythm sentenc settl sleep slower sprint take than then tidy up youv
      `,
    ],
    [
      0.2,
      `
        able an another arent arriv as asleep august ay baby back bang basical befor begin blacktop blink bomb
        bone bottom brid cadenc cake cant catapult catch charg choru clang cockroach colin com comfortab controll
        conversation could count cover crisper curtsey dial dinner direction disco dont driv drum each eccentric
        effort egg eight elephant empt end especial everyth everywher explod fall farmer fast feather feet fiddl
        fierc final fir fire fl flap flick fling follow forc four fourth frantic furiou game gas gear gentl give
        glacial go gone gossip gradual graham halt handl hardest hear hid hole home hotel hungover hur hurry id
        in into its jiggl kick kitten landing late laundr let librar lift lighthous linger littl live longer loos
        lurch machin match mean melt meter metronom mississippi molass moment motor mov move music neat negativ
        not now nowher old one patient pedal peel pendulum percent pick plop polka position power pret pretend
        prid pull queu quieter race ramp ratio resist rock rough rude rush same say seat seven shouldnt sing sink
        slam slap slingshot slipper slow slowest small smallish smart snatch sneak soft speak speed squeez
        stamped state steal step stir stop strength strok stroll sunda sw swat sweet syrup ta tak tank tenth ther
        thereabout thes thre through throw tick tock twic two ugly underneath underwater unhurri vertical want
        wash way wee went wet when whip why woodpecker word work yall yawn yere youd
      `,
    ],
    [
      -0.2,
      `
        all allow alway ankl anyon anyth arm backward bag behind bell bench bend bent better between big box brac
        break bum but cat chat check cheek chin clean curl deadlift dip do doesnt done drag draw ear elbow else
        em everybod everyon exhal eye fac far feel fift fifteen finger finish fist five flat floor flop foot
        forget fort further goe good grip ground grow had hammock hand hard has have he heav help her here high
        hip hold hop hour hover how hum ill inch instead is ive jog jump kilo kne ladder lamp lane lap later lean
        left leg lie light line lock long look lose lost lot loud low lung mayor medal metr middl most my near
        neck never next ninet nobod nose number of once over overhead pain pair park peopl plank plent point pour
        pres priz puff purpl push put rail rest right ring roll round row run sag said set shak she shin sho
        shoulder shrug sid sip sixt slack slid slip sock somebody someth split squash squat stag stand star stay
        stiff straight stretch strid swap tabl talk tempo ten tent th that the them they thi thirt thos tight
        tightrop till time tip toda too tray try tuck turn twelv twent twist us very wall week were whatever
        whenever who will without year yet youll your yourselv
      `,
    ],
    [-0.4, 'front i if knee off only or other side six tall toe'],
    [-0.6, 'minut'],
  ],
} as const satisfies CueWeights
