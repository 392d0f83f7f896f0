/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind tempo; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const TEMPO_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [1.2, 'pace'],
    [0.2, 'not num'],
    [-0.2, 'attend chat harm ill kit less place settle swap take wrong'],
    [-0.4, 'air far'],
    [-0.6, 'part'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.8, 'ease'],
    [0.6, '<pace> down lower'],
    [0.4, '0 brisk da even like nice nobody pleas reset ther two up wait'],
    [
      0.2,
      `
        <chat> <far> <harm> <more> <not> <num> <place> <settle> <swap> a about and as bone bounc build colin
        count crisper dawdl dead driv especial explod firm five float follow four get go hand hang hold land lazy
        let linger live loos make mapl move neat no not power pull quiet ratio sleep slower small snap soft stead
        strict ta take thes thre tick treacl unhurri walk we went work you
      `,
    ],
    [
      -0.2,
      `
        <air> <kit> <wrong> finish good half heel if in it last light look or out pres quick second squeez
        straight talk ten that they thirt time to too turn with youll
      `,
    ],
    [-0.4, 'the'],
    [-0.6, '<part>'],
  ],
  given: [
    [0.2, '<not> <swap> <take> can cant'],
    [-0.2, '<attend> <num> <pace> it'],
  ],
  last: [
    [0.6, 'back dum'],
    [0.4, 'bottom bounc brisk even last thre'],
    [
      0.2,
      `
        and beat book boot breath build bus catapult chest cockroach colin crash daft day dead dinner disco down
        driv drop effort egg elephant empt fast few fierc firm frantic furiou game gear gossip got gradual hard
        heron hotel hungover hur in it jerk jiggl just kick land landing lazy like live lower machin mississippi
        molass music neat negativ now passenger patient pendulum percent photocopier ping pleas plop polka puls
        quick quiet ratio rep reset rhythm seat second sentenc settl shap sharp singl slap snap snatch soft spe
        squeez stead step stick still strict sunda syrup tank ten tenth them thing to tock trampolin treacl two
        ugly underneath unhurri vertical wait wash wee wild word
      `,
    ],
    [
      -0.2,
      `
        0 about away bridg can done each eight faster first five flat hammock hand kne leg level line long loud
        metr no off other pres side sit six squat tall ther through time toe twist way whenever you
      `,
    ],
  ],
  length: [
    [-0.2, '3-4 5-7 8-12'],
    [-0.6, '1-2'],
  ],
  pair: [
    [0.6, '<num>_to about_<num> for_<num> for_one let_it to_<settle>'],
    [
      0.4,
      `
        <chat>_it <do>_it <not>_bounc <not>_jerk <num>_count <num>_second <pace>_on <pace>_with a_lift
        as_<attend> com_<place> da_dum ease_into full_<pace> full_second go_<place> into_it it_<part> it_back
        no_<wrong> not_a of_ten out_of slow_<attend> the_<pace> the_bottom the_out the_same ther_a two_<pace>
        two_<place> way_<place> way_down with_the
      `,
    ],
    [
      0.2,
      `
        0_<more> 0_<place> 0_down 0_go 0_in 0_turn <air>_be <air>_is <air>_to <attend>_and <attend>_as
        <attend>_day <attend>_feet <attend>_if <attend>_its <attend>_landing <attend>_long <attend>_out
        <attend>_slow <attend>_stir <attend>_the <attend>_ther <attend>_theyr <attend>_treacl <attend>_your
        <chat>_and <chat>_arriv <chat>_ask <chat>_at <chat>_balanc <chat>_build <chat>_can <chat>_cant
        <chat>_could <chat>_drop <chat>_few <chat>_gradual <chat>_hid <chat>_hungover <chat>_laundr <chat>_lower
        <chat>_mean <chat>_quiet <chat>_read <chat>_should <chat>_sneak <chat>_thirt <do>_bin <do>_down <do>_fast
        <do>_for <do>_hard <do>_sid <do>_slow <do>_with <far>_it <far>_lazy <far>_of <far>_quick <far>_quiet
        <far>_second <far>_squeez <far>_thing <far>_vertical <far>_wher <harm>_it <ill>_the <kit>_sid
        <less>_effort <less>_for <less>_it <less>_stop <more>_gear <more>_in <more>_normal <more>_not <more>_wher
        <more>_your <move>_at <move>_bin <move>_ever <move>_fast <move>_for <move>_in <move>_like <move>_off
        <move>_sid <move>_soft <move>_with <not>_a <not>_bus <not>_crash <not>_daft <not>_dead <not>_dive
        <not>_drop <not>_fierc <not>_fir <not>_flap <not>_flat <not>_forc <not>_frantic <not>_furiou <not>_grab
        <not>_halfwa <not>_it <not>_jiggl <not>_kick <not>_kne <not>_let <not>_own <not>_pay <not>_plop
        <not>_race <not>_shut <not>_slam <not>_snap <not>_snatch <not>_sprint <not>_swat <not>_throw <not>_when
        <not>_wild <num>_befor <num>_down <num>_elephant <num>_ever <num>_go <num>_in <num>_leav
        <num>_mississippi <num>_more <num>_out <num>_percent <num>_strok <num>_tenth <num>_turn <num>_up <pace>_a
        <pace>_as <pace>_at <pace>_com <pace>_each <pace>_effort <pace>_enough <pace>_go <pace>_home <pace>_in
        <pace>_it <pace>_like <pace>_now <pace>_out <pace>_step <pace>_than <pace>_up <part>_land <part>_last
        <part>_settl <part>_then <part>_together <part>_walk <place>_as <place>_breath <place>_charg <place>_com
        <place>_for <place>_landing <place>_normal <place>_of <place>_short <place>_somebod <place>_than
        <place>_that <place>_them <place>_time <place>_wher <settle>_0 <settle>_again <settle>_down <settle>_for
        <settle>_gradual <settle>_quiet <settle>_the <settle>_up <settle>_your <swap>_a <swap>_at <swap>_bounc
        <swap>_bus <swap>_drop <swap>_hear <swap>_it <swap>_jerk <swap>_jog <swap>_kne <swap>_not <swap>_rush
        <swap>_throw <swap>_up <take>_faster <take>_for <take>_the <wrong>_bomb <wrong>_chair <wrong>_me
        <wrong>_you a_<chat> a_<do> a_<far> a_<more> a_baby a_beat a_bounc a_brid a_brisk a_bucket a_bus a_car
        a_catapult a_cockroach a_disco a_drip a_full a_heron a_hotel a_hur a_librar a_moment a_natter a_pendulum
        a_photocopier a_rock a_sentenc a_sleep a_still a_sunda a_trampolin a_two a_well able_to about_<less>
        about_eight about_half about_one all_<place> all_out an_<less> an_<more> an_<pace> an_easy an_egg an_old
        and_<attend> and_<harm> and_<pace> and_<settle> and_<take> and_build and_even and_lazy and_put and_snap
        anybod_to are_<not> are_<pace> are_not arriv_<place> arriv_on as_<pace> as_<place> as_if as_long as_slow
        asleep_<place> asleep_on at_<num> at_six at_the ay_a baby_asleep balanc_<kit> balanc_<swap> balanc_book
        bar_<place> bar_on be_<pace> be_able be_an be_behind be_fling be_run be_the be_your befor_<chat> befor_it
        befor_you big_lazy boss_of both_way bottom_for bottom_then bounc_them br_the breath_be breath_is
        breath_to brick_at brid_could brisk_<do> brisk_<move> brisk_walk bucket_<place> build_it bus_com bus_now
        call_that can_hear cant_<not> cant_stop car_boot car_wash charg_<place> charg_on cheat_<chat> cheat_me
        com_<part> com_back come_<place> come_down comfortab_<less> comfortab_<pace> comfortab_hard could_be
        count_<num> count_<place> count_to crash_<place> crash_down crisper_than dawdl_<place> dawdl_down
        dead_<attend> dead_<not> dead_<place> dead_at dead_on dead_still dead_stop dive_bomb do_<not> do_not
        dont_<do> dont_<wrong> dont_cheat dont_crash dont_flap dont_forc dont_kick dont_own dont_pay dont_race
        dont_slam down_<attend> down_<pace> down_for down_like drip_<place> drip_down each_<air> each_<chat>
        each_<do> each_<place> each_breath each_round each_shap ease_in ease_it ease_off easy_<pace> egg_<place>
        egg_under eight_<place> eight_five eight_out eight_percent elbow_land especial_<far> especial_past
        even_<harm> even_<pace> even_pressur even_spe even_step ever_<num> ever_one ever_rep explod_<place>
        feet_thi fir_a first_<num> first_few five_percent flap_it flat_<place> flat_out fling_it float_<place>
        float_down follow_the foot_<settle> foot_settl for_thi for_thre for_two four_<pace> four_second from_dead
        full_of get_<pace> get_to get_ugly go_<pace> go_<part> go_back go_down go_gradual go_out go_quiet
        hand_walk hard_for head_last head_out hear_them hear_your heel_land hip_stay hold_the i_<not> i_dont
        i_want im_just in_charg in_short in_time in_treacl in_you is_at is_nowher it_<attend> it_<chat> it_<move>
        it_<pace> it_be it_crash it_drop it_if it_last it_nice it_ping it_slingshot it_want it_yank its_<not>
        its_a its_about its_call its_molass its_not its_pull its_stuck its_to kne_and land_soft last_<kit>
        last_<move> last_step laundr_<place> laundr_on lazy_<attend> lazy_as lazy_one librar_underneath
        lift_<place> lift_in lift_with like_its like_stir like_the like_ther like_your linger_<place> linger_in
        littl_<attend> littl_<do> littl_<move> littl_quiet littl_squeez littl_thing long_<attend> long_as
        long_com longer_<place> look_the loos_and lower_<chat> lower_it lower_like make_the mapl_syrup more_gear
        natter_whil need_a nice_<place> nice_and nice_in nine_tenth no_<pace> no_bounc no_bus no_drop no_grab
        no_jerk no_jog no_kne no_rush no_throw nobody_chas nobody_tim nobody_watch nobody_win not_<do> not_daft
        not_fierc not_fir not_flat not_frantic not_furiou not_jerk not_let not_plop not_shut not_sprint not_swat
        not_wild noth_jiggl noth_snatch nowher_to of_<num> of_egg of_ever of_temper off_it off_the on_somebod
        on_the one_<more> one_befor one_elephant one_ever one_from one_leav one_mississippi one_more one_second
        one_to one_up out_<air> out_and out_breath over_the own_it past_<far> past_vertical paus_at pay_<place>
        pay_by pedal_bin pedall_for percent_<pace> percent_effort pick_<more> pick_<place> pick_a pick_up
        power_<more> power_<place> power_up pretend_your pull_for pull_with push_<less> push_<pace> push_hard
        put_it put_your quick_<do> quick_<kit> quick_<place> quick_off quick_step quiet_<attend> quiet_<part>
        quiet_<place> quiet_hand reset_each reset_ever resist_it rock_<kit> rock_chair same_<more> same_<pace>
        same_<place> same_length same_spe same_up say_a second_go second_paus second_to seven_<place> seven_out
        should_<attend> should_be should_hear should_still shouldnt_<harm> shouldnt_snap shov_it sink_a sit_ther
        six_<place> six_out slam_it sleep_<far> sleep_littl slingshot_<chat> slingshot_you slow_as slow_on
        slower_than slowest_of snap_it sneak_<place> soft_landing sort_that spe_<place> spe_of sprint_it
        squeez_at start_<pace> stay_a stay_on stay_quiet step_in step_sid still_<attend> still_<chat> still_day
        stop_dead stop_when strok_a swat_wasp sweet_<pace> sweet_time ta_dum take_<num> take_your tear_<place>
        tear_through than_<place> than_befor that_<kit> that_<pace> that_<part> that_count that_elbow that_pedall
        that_stick that_wher that_why the_<air> the_<place> the_<settle> the_beat the_boss the_breath the_cadenc
        the_chest the_end the_game the_gas the_in the_lot the_movement the_music the_passenger the_polka the_rep
        the_slowest the_sort the_spe the_squeez the_stack the_tank the_tempo the_way them_<kit> them_seat
        then_<chat> then_<settle> then_go then_just ther_an ther_is theyr_singl thi_bit thi_is thre_<pace>
        thre_count thre_second thre_to through_them throw_your tick_tock time_with to_<chat> to_<swap> to_<take>
        to_bottom to_come to_five to_go to_keep to_know to_lower to_see to_sit to_straight to_warm top_befor
        top_to twent_<num> twent_two twic_<attend> twic_as two_down two_elephant two_second two_up up_<attend>
        up_for up_normal up_your wait_at walk_<more> walk_to walk_up want_the warm_<chat> warm_you way_<part>
        way_back way_to we_<not> we_dont went_<more> went_<place> went_up what_youv when_that wher_the why_its
        work_at yank_<chat> yank_you yere_tear you_<far> you_<less> you_<swap> you_<take> you_arriv you_be
        you_build you_can you_cant you_could you_lower you_should your_<pace> your_<take> your_balanc your_breath
        your_dinner your_drop your_feet your_hardest your_heel your_hid your_hungover your_last your_laundr
        your_leg your_read your_sneak your_sweet your_time yourself_<pace> yourself_gent youv_got
      `,
    ],
    [
      -0.2,
      `
        <attend>_a <attend>_befor <attend>_it <attend>_somebody <chat>_are <chat>_go <chat>_one <chat>_the
        <chat>_them <do>_back <do>_out <do>_up <do>_you <far>_one <kit>_and <more>_a <more>_and <more>_to
        <move>_up <move>_you <not>_count <not>_go <not>_hold <not>_on <not>_to <num>_a <num>_and <num>_for
        <num>_metr <num>_minut <num>_of <num>_slow <num>_step <pace>_down <pace>_one <part>_at <part>_down
        <part>_of <part>_off <part>_out <place>_a <place>_again <place>_at <place>_between <place>_from
        <place>_loud <place>_on <place>_up <place>_your <settle>_it <settle>_them <swap>_the <wrong>_in a_<kit>
        a_<move> a_<part> a_<settle> a_<swap> a_<take> a_bit a_count a_few a_kick a_time and_<chat> and_<not>
        and_<place> and_<swap> and_down and_it and_let and_not at_it both_<part> breath_<place> count_of do_the
        dont_<settle> dont_rush down_to each_<num> ever_<pace> foot_<place> for_a for_five for_ten get_it
        go_<less> go_to goe_<place> got_a half_a if_its im_<not> im_not in_<place> in_the into_a it_down it_is
        its_<far> let_them like_a like_somebody look_at lower_<place> lower_down make_it minut_<place> not_<num>
        not_<place> not_<settle> of_0 of_<chat> of_the of_you on_your one_<attend> one_<part> one_for one_of
        out_<attend> out_<place> out_loud quick_one second_<num> second_at second_down second_one slow_<air>
        slow_<settle> slow_breath slow_down slow_the stay_<more> stay_down stop_at straight_<place> talk_to
        ten_<pace> ten_second the_<do> the_<far> the_<harm> the_<more> the_<part> the_door the_hip the_kne
        the_other the_second them_<place> them_down to_<pace> to_a to_it to_your too_<pace> twent_<pace>
        twent_second two_<kit> up_a up_to walk_it with_<num> with_your you_<chat> you_are you_want your_<harm>
        your_<part> your_<place> your_<swap> your_back your_in
      `,
    ],
    [-0.4, '<do>_the <pace>_breath <pace>_the <place>_to the_<kit>'],
  ],
  phrase: [
    [1, 'tempo-sure'],
    [0.8, 'tempo-likely'],
    [0.6, 'breathing-likely'],
    [0.4, 'focus-hint'],
    [0.2, 'easier-likely fault-likely focus-likely retracted setup-likely tempo-hint'],
    [
      -0.2,
      `
        caution-sure chat easier-hint equipment-hint equipment-sure execution-sure focus-sure praise range-hint
        range-likely range-sure setup-hint setup-sure
      `,
    ],
    [-0.4, 'breathing-sure dose_only easier-sure empty_clauses harder-sure'],
  ],
  start: [
    [
      0.4,
      `
        <do>_<pace> <not>_<wrong> <num>_<pace> <num>_<place> <place>_<attend> <settle>_<pace> <swap>_<wrong>
        da_dum down_for nice_and take_your
      `,
    ],
    [
      0.2,
      `
        0_down 0_in 0_to 0_to_0 <attend>_<attend> <attend>_<more> <attend>_<place> <attend>_<take> <chat>_<do>
        <chat>_<move> <chat>_<num> <chat>_<pace> <do>_<part> <more>_<attend> <move>_<pace> <move>_<part>
        <not>_<pace> <pace>_<more> <pace>_<place> <place>_<more> <place>_<pace> <swap>_<more> <swap>_<not>
        <swap>_<pace> <swap>_<place> <take>_<pace> a_brid a_brid_could a_full a_pendulum a_well about_half
        all_out away_for away_for_two becaus_its_the big_lazy big_lazy_one bone_by bone_by_bone both_way build_it
        build_it_up come_down count_it crisper_than crisper_than_befor dawdl_down dead_still do_not_let
        dont_be_fling dont_be_run dont_bounc_them dont_cheat dont_cheat_me dont_crash dont_flap dont_flap_it
        dont_forc dont_let_it dont_pull dont_pull_with dont_race dont_slam dont_throw_your down_in down_like
        down_like_a ease_in ease_into ease_into_it ease_it ease_off ease_off_the eight_percent
        eight_percent_effort especial_past especial_past_vertical even_pressur even_step ever_rep five_second
        float_down float_it follow_the follow_the_breath four_second get_your_breath go_again go_down go_quicker
        go_quiet hand_walk hand_walk_up have_a_natter hold_for hold_it_at hold_it_for hold_it_nice hold_the
        hold_the_end hold_the_squeez i_dont i_dont_pay i_want i_want_to if_you_can if_you_cant im_just
        im_just_the in_charg in_charg_on it_is_a it_shouldnt_snap it_want it_want_to its_a its_a_cockroach
        its_a_drip its_a_pendulum its_about its_hard its_molass its_not its_not_a its_pull its_stuck its_stuck_in
        its_to its_to_warm jog_it keep_it_mov land_soft lazy_as lazy_as_you let_it let_it_be let_one_foot like_a
        like_a_rock like_the like_your_head like_your_work littl_squeez littl_squeez_at long_and long_and_float
        loos_and loos_and_lazy lower_it lower_it_like lower_yourself_gent make_it_last make_the mapl_syrup
        nice_and_even nine_tenth no_bounc no_drop no_grab no_jerk no_jog no_kne no_rush no_throw
        nobod_should_hear nobody_chas nobody_chas_you nobody_tim nobody_watch nobody_win not_a not_a_sw not_daft
        not_fierc not_flat not_flat_out not_frantic not_furiou not_like_a not_the_sort not_wild not_your_hardest
        noth_jiggl noth_snatch on_the on_the_way one_at_the one_breath_to one_ever one_mississippi one_second
        one_to one_to_stand one_up pick_a power_up pretend_your pretend_your_hungover pull_for pull_for_one
        push_hard push_hard_for put_it put_it_ther quick_off quick_off_the quiet_hand reset_each reset_ever
        same_spe shov_it sink_a sink_a_bit sit_in sit_in_the sit_ther sleep_littl sleep_littl_thing slow_as
        slow_on snap_it soft_feet_thi soft_landing stand_up stand_up_normal stay_a stay_on step_in still_as_a
        stop_dead stop_dead_at ta_dum take_your_sweet take_your_time that_a_stop that_pedall that_pedall_for
        that_the_game that_was_a that_wher that_wher_the that_why that_why_its the_out the_out_breath the_same
        the_same_up then_just ther_a ther_a_bus ther_is ther_is_nowher theyr_singl thi_is thi_is_at thre_count
        thre_to tick_tock top_to top_to_bottom two_down two_up up_for up_for_one up_for_two up_in up_in_one
        up_like up_with up_with_a we_dont we_dont_plank went_up work_at work_at_a you_be you_be_the you_build
        you_could you_dont_own you_driv you_should you_should_still your_a_lift your_balanc your_balanc_book
        your_drop your_last your_laundr your_laundr_on your_not_fir your_not_shut your_not_swat your_sneak
        your_sneak_up youv_got_one
      `,
    ],
    [
      -0.2,
      `
        <chat>_<chat> <chat>_<place> <less>_<place> <not>_<chat> <not>_<far> <not>_<place> <not>_<settle>
        <not>_<take> <num>_<attend> <num>_<do> <num>_<part> <pace>_<air> <pace>_<chat> <pace>_<settle>
        control_the control_the_middl dont_rush if_your im_not like_your_in one_at_a one_down paus_for_a
        quick_one rate_0_to slow_down slow_it_down slow_the take_a thirt_second two_second_squeez
      `,
    ],
    [-0.4, '<part>_<place>'],
  ],
  word: [
    [0.8, 'dead ease'],
    [0.6, 'bounc brisk dum even lazy like lower quick quiet should spe'],
    [
      0.4,
      `
        be beat befor bottom build bus crash da down effort float full jerk last nice no nobody rep reset sentenc
        sleep slower snap still than thre treacl two up wait way
      `,
    ],
    [
      0.2,
      `
        a able about an arriv as asleep at ay baby back bomb boss brick brid cadenc cant catapult charg clang
        cockroach colin com comfortab controll could count crisper day dinner disco dive dont driv drop easy egg
        eight elephant especial ever explod fast few fierc fir firm fl flap fling follow for forc four frantic
        furiou game gas gear gent get gossip gradual hardest hear hero hid hone hotel hungover hur hurry it its
        jiggl kick land landing late laundr let librar lift linger littl live longer machin mapl mean mississippi
        molass moment music natter neat negativ normal not nowher old one out pace paint passenger pedal pendulum
        percent photocopier pick ping pleas plop polka position power pressur pull puls quicker ratio resist
        rhythm same seat second settl seven shap sharp shop slam slap slingshot slow slowest small sneak soft
        speak sprint squeez step stir stop strict strok sunda swat sweet syrup ta take tank tenth then ther thes
        thing through throw tick tock trampolin twic ugly underneath unhurri vertical walk wash wasp went when
        wher wild word work yere youd youv
      `,
    ],
    [
      -0.2,
      `
        after all are arm backward been behind bell bend bent between big break chat dip do doesnt done dumbbell
        ear em feel finish five floor foot forget fort front goe gone good grip half hammock hand heav here high
        hip hold how i if inch is isnt jump kne lane lean leg light line lock look loud low metr my neck never
        ninet nobod of off on once only other over pair park peopl pres push reach right round row sag set
        shoulder show shrug side sit slack slid somebody someth split squat stand stay straight stretch strid
        swap tabl talk tall ten th that the they think thirt thos tight tightrop time too turn twent twist under
        use wall week were what whenever who will without youll your
      `,
    ],
    [-0.4, 'knee minut or toe'],
  ],
} as const satisfies CueWeights
