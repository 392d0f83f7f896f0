/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind tempo; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const TEMPO_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [1.2, 'pace'],
    [0.4, 'num'],
    [0.2, 'not'],
    [-0.2, 'attend harm ill kit less place settle swap take wrong'],
    [-0.4, 'air far'],
    [-0.6, 'part'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.8, 'ease'],
    [0.6, '<pace> down'],
    [0.4, 'brisk da lower nice nobody ther two up'],
    [
      0.2,
      `
        0 <chat> <far> <more> <not> <num> <place> <settle> <swap> a about and as bone bounc build colin crisper
        dead driv especial even explod five float follow get go hang hold land lazy lift like linger live loos
        make mapl move no not pleas power pull quiet ratio reset sleep slower small smooth snap step strict ta
        take thes thre treacl wait walk work you
      `,
    ],
    [
      -0.2,
      `
        <air> <kit> <wrong> both gent half if in it keep light look or out pres second squeez talk ten that the
        they thirt time turn with
      `,
    ],
    [-0.6, '<part>'],
  ],
  given: [
    [0.2, '<take>'],
    [-0.2, '<attend> <more> <num> <pace> the'],
  ],
  last: [
    [0.6, 'back dum'],
    [0.4, 'bounc brisk sentenc thre'],
    [
      0.2,
      `
        and beat book bottom breath build bus catapult chest clatter cockroach colin crash dead dinner down driv
        drop effort elephant empt even explod few frantic game gossip got gradual gulp halfwa heron hungover hur
        it jerk just kick land last lazy like live lower mississippi molass music negativ now one passenger
        patient pendulum percent ping pleas plop polka puls quiet ratio rep seat settl shap sharp singl smooth
        snap squeez stick still strict syrup tank tenth them thing to trampolin treacl two ugly underneath
        unhurri vertical wait wee wild
      `,
    ],
    [
      -0.2,
      `
        away done each eight end five flat go kne leg line long no off other pres right side sit squat tall ther
        time toe turn twist way whenever you
      `,
    ],
  ],
  length: [
    [-0.2, '3-4 8-12'],
    [-0.6, '1-2'],
  ],
  pair: [
    [0.6, 'for_<num> for_one to_<settle>'],
    [
      0.4,
      `
        <attend>_your <chat>_it <do>_it <not>_bounc <not>_jerk <num>_count <num>_second <num>_to <pace>_with
        a_lift about_<num> at_the com_<place> da_dum ever_rep full_<pace> full_second into_it it_<part> it_back
        let_it like_its no_<wrong> not_a of_ten the_<pace> the_bottom the_same the_way ther_a two_<pace>
        way_<place> way_down with_the
      `,
    ],
    [
      0.2,
      `
        0_<more> 0_down <air>_is <air>_to <attend>_an <attend>_and <attend>_com <attend>_day <attend>_feet
        <attend>_if <attend>_its <attend>_long <attend>_slow <attend>_than <attend>_the <attend>_ther
        <attend>_treacl <chat>_and <chat>_ask <chat>_at <chat>_balanc <chat>_can <chat>_cant <chat>_driv
        <chat>_drop <chat>_few <chat>_gradual <chat>_hid <chat>_hungover <chat>_like <chat>_lower <chat>_mean
        <chat>_quiet <chat>_should <chat>_sneak <chat>_thirt <do>_down <do>_fast <do>_for <do>_slow <do>_with
        <far>_it <far>_quick <far>_second <far>_squeez <far>_thing <far>_vertical <far>_wher <harm>_it <ill>_the
        <kit>_on <less>_effort <less>_for <less>_it <less>_stop <more>_in <more>_normal <more>_wher <more>_your
        <move>_at <move>_ever <move>_fast <move>_for <move>_in <move>_like <move>_soft <move>_with <not>_a
        <not>_bus <not>_clatter <not>_crash <not>_dead <not>_dive <not>_drop <not>_fierc <not>_fir <not>_flap
        <not>_flat <not>_forc <not>_frantic <not>_grab <not>_gulp <not>_halfwa <not>_it <not>_kick <not>_kne
        <not>_let <not>_like <not>_own <not>_pay <not>_plop <not>_race <not>_slam <not>_sprint <not>_stop
        <not>_swat <not>_throw <not>_when <not>_wild <num>_befor <num>_down <num>_elephant <num>_ever
        <num>_mississippi <num>_more <num>_out <num>_percent <num>_strok <num>_tenth <num>_up <pace>_a <pace>_as
        <pace>_at <pace>_com <pace>_each <pace>_effort <pace>_enough <pace>_go <pace>_in <pace>_it <pace>_now
        <pace>_on <pace>_out <pace>_step <pace>_than <pace>_up <part>_land <part>_then <part>_together
        <part>_walk <place>_as <place>_breath <place>_charg <place>_float <place>_for <place>_normal <place>_of
        <place>_out <place>_short <place>_somebod <place>_than <place>_them <place>_wher <settle>_down
        <settle>_for <settle>_gradual <settle>_quiet <settle>_the <settle>_up <settle>_your <swap>_a <swap>_at
        <swap>_bounc <swap>_bus <swap>_clatter <swap>_gulp <swap>_hear <swap>_jerk <swap>_jog <swap>_kne
        <swap>_not <swap>_one <swap>_rush <swap>_up <take>_faster <take>_for <wrong>_bomb <wrong>_me <wrong>_you
        a_<chat> a_<do> a_<far> a_<more> a_baby a_beat a_bounc a_brid a_brisk a_bucket a_bus a_catapult
        a_cockroach a_crash a_drip a_full a_hur a_librar a_moment a_natter a_pendulum a_sentenc a_still
        a_trampolin a_well able_to about_<less> about_eight about_half about_one all_<place> all_out an_<less>
        an_<more> an_<pace> an_easy and_<harm> and_<pace> and_<settle> and_build and_even and_lazy and_put
        and_snap are_<pace> are_not as_<attend> as_<pace> as_if as_long as_slow as_you at_<num> at_about at_six
        ay_a baby_asleep balanc_<kit> balanc_<swap> balanc_book bar_<place> bar_on be_<pace> be_able be_an
        be_behind be_run be_the be_your befor_<chat> befor_it befor_you boss_of bottom_then bounc_them br_the
        breath_be breath_is breath_to brid_could brisk_<do> brisk_<move> brisk_walk bucket_<place> build_it
        bus_com bus_now call_that can_hear cant_<not> cant_stop charg_<place> charg_on cheat_<chat> cheat_me
        com_<part> com_back com_forward come_<place> come_down comfortab_<less> comfortab_<pace> comfortab_hard
        could_be count_<place> count_to crisper_than dead_<attend> dead_<place> dead_at dead_on dead_still
        dive_bomb do_<not> do_not dont_<do> dont_<wrong> dont_bounc dont_cheat dont_crash dont_flap dont_forc
        dont_kick dont_own dont_pay dont_race down_<attend> down_<more> down_<pace> down_for down_like
        drip_<place> drip_down drop_it each_<air> each_breath each_round each_shap ease_in ease_into ease_it
        ease_off easy_<pace> eight_percent elbow_land especial_<far> especial_past even_<harm> even_<pace>
        even_pressur even_spe explod_<place> feet_thi film_skip fir_a first_few flap_it flat_<place> flat_out
        float_<place> float_down follow_the for_thi for_thre for_two four_<pace> four_second from_dead get_<pace>
        get_to get_ugly go_<attend> go_<pace> go_<part> go_<place> go_back go_down go_gradual go_quicker go_quiet
        hand_walk head_out hear_them hear_your heel_<move> heel_land hip_stay hold_the i_want im_just in_charg
        in_short in_treacl in_you is_a is_at is_nowher it_<chat> it_<move> it_<pace> it_drop it_if it_last
        it_like it_nice it_ping it_slingshot it_want it_yank its_<not> its_a its_about its_call its_molass
        its_not its_pull its_stuck just_the land_soft lazy_<attend> lazy_as librar_underneath lift_<place>
        lift_in lift_with like_an like_the like_treacl like_your linger_<place> linger_in littl_<do> littl_<move>
        littl_squeez littl_thing long_com longer_<place> longer_than look_the loos_and lower_<attend>
        lower_<chat> lower_it lower_like make_the mapl_syrup mean_<less> mean_<more> mean_<pace> mean_easy
        natter_whil nice_<place> nice_and nice_in nine_tenth no_<pace> no_bounc no_bus no_clatter no_drop no_grab
        no_gulp no_jerk no_jog no_kne no_rush nobody_chas nobody_watch nobody_win not_<chat> not_<do> not_fierc
        not_fir not_flat not_frantic not_jerk not_let not_plop not_sprint not_swat not_wild nowher_to of_<num>
        of_temper on_somebod on_the one_<more> one_<pace> one_befor one_elephant one_ever one_from
        one_mississippi one_more one_second one_to one_up out_<air> out_and out_breath out_of over_the own_it
        past_vertical paus_at pay_<place> pay_by pedall_for percent_<pace> percent_effort pick_<more>
        pick_<place> pick_a pick_up pie_<place> pie_on power_<more> power_<place> power_up pretend_<chat>
        pretend_your pull_for pull_with push_<pace> put_it put_your quick_<do> quick_<kit> quick_step
        quiet_<part> quiet_<place> quiet_hand reset_each reset_ever resist_it same_<more> same_<place>
        same_length same_up say_a second_go second_paus second_to seven_<place> seven_out should_<attend>
        should_be should_hear should_still sink_a sit_ther six_<place> six_out sleep_<far> sleep_littl
        slingshot_<chat> slingshot_you slow_<attend> slow_as slow_on slower_than slowest_of small_<pace> snap_it
        sneak_<place> soft_feet sort_that spe_<place> spe_of sprint_it squeez_at stay_a stay_on stay_quiet
        step_in still_<attend> still_<chat> still_day stop_<chat> stop_<far> stop_dead stop_halfwa stop_when
        strok_a sw_it swat_wasp sweet_<pace> sweet_time ta_dum take_<num> take_your tear_<place> tear_through
        than_<place> than_befor than_the that_<kit> that_<part> that_elbow that_pedall that_seat that_stick
        that_why the_<chat> the_<settle> the_beat the_boss the_breath the_bus the_chest the_end the_film
        the_first the_game the_gas the_lot the_movement the_music the_out the_passenger the_polka the_rep
        the_slowest the_sort the_spe the_squeez the_stack the_tank them_<kit> them_seat then_<chat> then_<settle>
        then_go then_just ther_is theyr_singl thi_bit thi_is thre_<pace> thre_count thre_second thre_to
        through_them throw_your tim_it time_with to_<do> to_<far> to_<place> to_<swap> to_<take> to_bottom
        to_come to_five to_keep to_let to_lower to_sit to_straight top_to twent_two two_<place> two_down
        two_elephant two_second up_<attend> up_normal up_your walk_<more> walk_to walk_up want_the way_<part>
        way_back way_to we_<not> we_dont went_<more> went_<place> went_up what_youv when_that why_its work_at
        yank_<chat> yank_you yere_tear you_<less> you_<swap> you_<take> you_be you_can you_cant you_driv
        you_lower you_should your_<pace> your_<take> your_balanc your_breath your_dinner your_drop your_feet
        your_hardest your_heel your_hid your_hungover your_last your_leg your_sneak your_sweet your_time
        yourself_<pace> yourself_gent youv_got
      `,
    ],
    [
      -0.2,
      `
        <attend>_a <attend>_it <chat>_are <chat>_go <chat>_them <do>_out <do>_up <do>_you <far>_one <kit>_and
        <less>_fast <less>_one <more>_a <more>_to <move>_up <move>_you <not>_count <not>_go <not>_hold <num>_and
        <num>_metr <num>_of <num>_slow <num>_step <pace>_down <part>_at <part>_down <part>_on <place>_at
        <place>_loud <place>_on <place>_to <place>_up <place>_your <settle>_it <settle>_them <swap>_the
        a_<settle> a_<swap> a_bit a_count a_race a_time and_<not> and_<swap> and_down and_it and_let
        breath_<place> count_of dont_<settle> dont_rush down_to ever_<pace> foot_<place> for_a for_five
        get_<place> get_it go_to got_a half_a if_its in_the into_a it_<more> it_down it_is let_them like_a
        look_at lower_<place> lower_down minut_<place> not_<num> not_<place> not_<settle> of_0 of_<chat> of_you
        on_your one_<attend> one_<part> one_for out_<place> out_loud second_<num> second_down second_one
        slow_<air> slow_<settle> slow_breath slow_down slow_it slow_the stop_at straight_<place> ten_<pace>
        ten_second the_<far> the_<harm> the_<kit> the_<more> the_<part> the_<swap> the_hip the_kne the_other
        the_second them_<place> to_0 to_<num> to_a to_your too_<pace> too_fast twent_<pace> twent_second
        two_<kit> up_to walk_it way_<more> way_up with_<num> with_your you_<chat> you_are you_want your_<harm>
        your_<part> your_<place> your_<swap> your_back
      `,
    ],
    [-0.4, '<do>_the <pace>_breath <pace>_the'],
  ],
  phrase: [
    [1, 'tempo-sure'],
    [0.8, 'tempo-likely'],
    [0.6, 'breathing-likely'],
    [0.2, 'easier-likely fault-likely focus-hint retracted setup-likely tempo-hint'],
    [
      -0.2,
      `
        breathing-sure caution-sure easier-hint equipment-hint equipment-sure execution-sure focus-sure praise
        range-hint range-likely range-sure setup-hint setup-sure transitions
      `,
    ],
    [-0.4, 'dose_only easier-sure empty_clauses harder-sure'],
  ],
  start: [
    [
      0.4,
      `
        <do>_<pace> <not>_<wrong> <num>_<pace> <num>_<place> <place>_<attend> <settle>_<pace> <swap>_<wrong>
        da_dum
      `,
    ],
    [
      0.2,
      `
        0_down 0_to <attend>_<attend> <attend>_<more> <attend>_<part> <attend>_<place> <attend>_<take>
        <chat>_<pace> <far>_<pace> <more>_<attend> <move>_<pace> <move>_<part> <not>_<pace> <num>_<more>
        <pace>_<less> <place>_<more> <place>_<pace> <swap>_<not> <swap>_<pace> <take>_<pace> a_brid a_brid_could
        a_full a_pendulum a_well about_half all_out bone_by bone_by_bone build_it build_it_up come_down count_it
        count_it_in crisper_than crisper_than_befor dead_still do_not_let dont_be_run dont_bounc dont_bounc_them
        dont_cheat dont_cheat_me dont_crash dont_flap dont_flap_it dont_forc dont_let_it dont_pull dont_pull_with
        dont_race dont_sw_it dont_throw_your down_for down_for_thre down_in down_like ease_in ease_into
        ease_into_it ease_it ease_off ease_off_the eight_percent eight_percent_effort especial_past
        especial_past_vertical even_pressur ever_rep five_second follow_the follow_the_breath four_second
        get_your_breath go_quiet hand_walk hand_walk_up have_a_natter hold_for hold_it_at hold_it_nice hold_the
        hold_the_end hold_the_squeez i_dont_pay i_mean_easy i_want i_want_the i_want_to im_just im_just_the
        in_charg in_charg_on it_want it_want_to its_a its_a_cockroach its_a_drip its_a_pendulum its_about
        its_molass its_not its_not_a its_pull its_stuck its_stuck_in jog_it keep_it_mov land_soft lazy_as
        lazy_as_you let_it like_the like_the_film like_your_head like_your_work littl_squeez littl_squeez_at
        long_and long_and_float loos_and loos_and_lazy lower_it lower_it_like lower_yourself_gent make_it_last
        make_the mapl_syrup nice_and nice_and_even nine_tenth no_bounc no_clatter no_drop no_grab no_gulp no_jerk
        no_jog no_kne no_rush nobod_should_hear nobody_chas nobody_chas_you nobody_tim_it nobody_watch nobody_win
        not_a not_a_sw not_drop not_fierc not_flat not_flat_out not_frantic not_like_a not_the_sort not_wild
        not_your_hardest on_the on_the_way one_breath_to one_ever one_mississippi one_second one_to one_to_stand
        one_up pick_a power_up pretend_your pretend_your_hungover pull_for pull_for_one put_it put_it_ther
        quiet_hand reset_each reset_ever sink_a sink_a_bit sit_ther sleep_littl sleep_littl_thing snap_it
        soft_feet soft_feet_thi stand_up stand_up_normal stay_a step_in still_as_a stop_dead stop_dead_at ta_dum
        take_your take_your_sweet take_your_time that_a_stop that_pedall that_pedall_for that_the_game that_was_a
        that_why that_why_its the_out the_out_breath the_same the_same_up then_just ther_a ther_a_bus ther_is
        ther_is_nowher theyr_singl thi_is thi_is_a thi_is_at thre_count thre_to top_to top_to_bottom two_down
        up_for up_for_two up_in up_in_one up_with up_with_a we_dont we_dont_plank work_at work_at_a you_be
        you_be_the you_could you_dont you_dont_own you_driv you_should you_should_still your_balanc
        your_balanc_book your_drop your_last your_not_fir your_not_swat your_sneak your_sneak_up
      `,
    ],
    [
      -0.2,
      `
        <chat>_<chat> <chat>_<place> <chat>_<settle> <not>_<chat> <not>_<far> <not>_<place> <not>_<settle>
        <not>_<take> <num>_<kit> <num>_<part> <pace>_<air> <pace>_<chat> <pace>_<pace> <pace>_<settle>
        control_the control_the_middl dont_rush let_go_slow paus_for_a sit_down slow_down slow_it slow_it_down
        slow_the take_a two_second_squeez
      `,
    ],
    [-0.4, '<part>_<place>'],
  ],
  word: [
    [0.8, 'ease'],
    [0.6, 'bounc brisk dead dum like lower quick spe'],
    [
      0.4,
      `
        be beat bottom build bus crash da down effort even full jerk kick last lazy nice no nobody quiet rep
        sentenc should sleep slower snap still stop than thre treacl two up wait
      `,
    ],
    [
      0.2,
      `
        a about an as asleep at ay baby back befor bomb boss brid bucket cant catapult charg clang clatter
        cockroach colin com come comfortab controll could count crisper dinner dive dont drip driv drop easy egg
        elephant especial ever explod feet few fir flap fling float follow for forc four frantic game gas gent
        gossip got gradual hardest hear hid hone hungover hur it its land late let librar lift linger littl live
        longer make mapl mean mississippi molass moment music natter negativ normal nowher old one out pace
        passenger pedal pendulum percent pick ping pleas plop polka position power pressur pull puls quicker
        ratio reset resist rhythm same seat second settl seven shap sharp shop slam slingshot slow slowest small
        sneak sprint squeez step stick strict strok swat sweet syrup ta take tank tenth then ther thes thing
        through throw trampolin ugly underneath unhurri vertical walk wash wasp way well went wild win work yere
        youd
      `,
    ],
    [
      -0.2,
      `
        after all arm bell between big both break cat chair chat do done ear em exhal feel finish five floor foot
        forget fort front goe good grip half hand heav here high hip hold how i if is isnt jump keep kne knee
        lean leg light line lock look loud low march metr middl my neck next ninet nobod of off on once only
        other over pair peopl pres push right round row run set shoulder show sid side sit slack slid someth
        split squat stand straight stretch swap talk tall ten th that the they third thirt thos time too twent
        twist under use wall week whenever who will without wobbl youll your
      `,
    ],
    [-0.4, 'minut or toe turn'],
  ],
} as const satisfies CueWeights
