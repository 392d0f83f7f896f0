/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind focus; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const FOCUS_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [0.8, 'attend'],
    [0.4, 'part'],
    [0.2, 'move'],
    [-0.2, 'air chat harm ill more not pace'],
    [-0.4, 'do less num settle swap wrong'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.8, '<attend>'],
    [0.6, 'its not'],
    [0.4, '<move> grow imagin lead squeez the thi think wher your'],
    [
      0.2,
      `
        <far> <not> <part> all bel big body chest collarbon control crack crush door eye feel fift grip hammi
        hang head heav heel hello hip insid it itll ladi lengthen listen littl loos neck nope noth notic only
        pick pictur pres pretend prod proud pump punch push reach rib run see send snap spin spread tailbon tall
        try under watch whol with youll
      `,
    ],
    [
      -0.2,
      `
        <do> <harm> <kit> <less> <more> <place> <settle> <swap> <wrong> and arm as at becaus come do down draw
        drop ease elbow from go i in keep kne land leav leg lift lower make no nobod or quiet remember roll slid
        soft some step still stop sw switch take thes top turn two up use walk
      `,
    ],
    [-0.4, '<num> hand toe'],
    [-0.6, 'if'],
  ],
  given: [
    [0.2, '<air> <move> <swap> bel down on'],
    [-0.2, '<attend> <part> feel in the your'],
  ],
  last: [
    [0.4, 'blad feet heel hip hook it kneecap pocket turn'],
    [
      0.2,
      `
        achill after ahead armpit away ball banana broad bum buttock calf carpet clock cone elastic elbow end
        face fift fl float front ful glut goe gwilym hair hammi hammock hamstr hamstring head heal heav heavier
        horizon hot is kickstand ladi leg level lift loos machin manner me middl move neck no nope past point
        post press puddl purpos relax ride rop round sand say shelf sho shoulder shut sock spe spill spin spr
        squash string swell tailbon tall teardrop toe tomato tricep upward wanna was weight why wind wobbl wood
        work
      `,
    ],
    [
      -0.2,
      `
        afterward air all and bar body bottom box breath chair chin ear eye in kne line lot mat mirror muscl one
        pleas quiet ring seat straight stretch that them thi think through top wrist
      `,
    ],
    [-0.4, 'down'],
  ],
  length: [
    [0.2, 'long'],
    [-0.2, '3-4 8-12'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.6, 'the_<attend>'],
    [
      0.4,
      `
        <attend>_if <chat>_want <far>_toe <not>_at <not>_spill all_<part> are_just arm_are feel_it from_your
        in_your is_all not_at push_the should_be slid_<place> spill_it that_should through_the toward_your
        wher_the with_your you_<place> your_<attend> your_a your_elbow
      `,
    ],
    [
      0.2,
      `
        <air>_button <attend>_ahead <attend>_as <attend>_at <attend>_both <attend>_chest <attend>_com
        <attend>_elastic <attend>_forward <attend>_from <attend>_go <attend>_guitar <attend>_is <attend>_neck
        <attend>_of <attend>_on <attend>_somebody <attend>_someon <attend>_stay <attend>_switch <attend>_ther
        <attend>_tight <attend>_to <attend>_you <chat>_a <chat>_after <chat>_by <chat>_chest <chat>_crack
        <chat>_door <chat>_gravit <chat>_hamstring <chat>_hard <chat>_march <chat>_put <chat>_round <chat>_say
        <chat>_theyr <chat>_wanna <chat>_why <do>_ful <do>_tall <far>_chest <far>_down <far>_heavier <far>_hook
        <far>_in <far>_it <far>_up <harm>_a <harm>_and <harm>_it <harm>_on <harm>_over <harm>_point <harm>_towel
        <ill>_a <kit>_go <kit>_into <kit>_like <kit>_of <kit>_on <kit>_over <kit>_stay <kit>_want <kit>_was
        <less>_bel <less>_it <more>_door <more>_from <more>_shoulder <more>_together <more>_toward <move>_everyth
        <move>_heav <move>_look <move>_out <move>_taller <move>_that <move>_touch <move>_you <move>_your
        <move>_yourself <not>_behind <not>_down <not>_drop <not>_else <not>_gwilym <not>_hav <not>_here <not>_in
        <not>_lift <not>_me <not>_mov <not>_move <not>_your <num>_at <num>_bit <num>_finger <num>_get
        <num>_straight <pace>_do <pace>_heart <pace>_is <pace>_the <part>_and <part>_are <part>_as <part>_blad
        <part>_button <part>_go <part>_hand <part>_here <part>_last <part>_level <part>_lift <part>_not <part>_of
        <part>_pocket <part>_push <part>_rock <part>_side <part>_slid <part>_squash <part>_switch <part>_the
        <part>_track <part>_vertical <part>_widen <place>_both <place>_each <place>_edge <place>_leg <place>_line
        <place>_me <place>_neck <place>_of <place>_paint <place>_pocket <place>_purpos <place>_shoulder
        <place>_squash <place>_straight <place>_the <place>_toe <place>_together <place>_toward <place>_your
        <settle>_a <settle>_from <settle>_ful <settle>_hard <settle>_heav <settle>_off <swap>_a <swap>_ful
        <swap>_the <take>_ful a_<do> a_<harm> a_<move> a_banana a_car a_crisp a_deer a_door a_fl a_grap a_hammock
        a_kick a_kickstand a_lamp a_medal a_metr a_necklac a_newspaper a_nosy a_row a_spot a_spr a_str a_tight
        a_time a_wet a_wring about_to abov_the acros_the all_<num> all_bun all_in along_for and_<kit> and_<pace>
        and_ball and_float and_hip and_reel and_star and_the and_you and_your anybod_<harm> anybod_nick
        apart_with are_<far> are_only are_work arm_is armpit_head as_<attend> as_a as_if ask_me at_it at_someth
        at_your away_from back_leg back_of back_pocket back_squash back_straight balanc_a balloon_<place>
        band_want bar_<place> bar_into bar_over be_<attend> be_talk behind_the bel_button bend_the between_the
        between_your big_chest big_toe blad_at body_<place> body_goe body_in bon_whil both_sid bottom_<chat>
        bottom_<do> bottom_<place> bottom_goe bottom_round bottom_side bottom_together bra_<kit> bra_<settle>
        bra_strap brac_<attend> brac_like button_in chest_<less> chest_<more> chest_<place> chest_lift chest_up
        coffe_<place> coffe_on collarbon_<attend> collarbon_broad control_the crack_<place> crack_in crack_it
        crisp_<place> crisp_in crush_a curl_the dead_<far> dead_<more> dead_level deep_<place> deep_in do_it
        do_the doesnt_move dont_<less> dont_<move> dont_ask dont_drop dont_lift dont_look dont_spill door_tomato
        door_with down_<place> down_and down_ther downstair_<attend> downstair_as draw_<chat> draw_you driv_your
        drop_it each_arm each_other ear_to elbow_behind else_<attend> else_mov empt_<part> empt_hand end_<more>
        end_up even_<attend> even_<kit> even_through even_weight ever_<air> everyth_from eye_<attend> eye_<place>
        eye_forward eye_if feel_the feel_thi feel_your floor_<settle> floor_<take> floor_away floor_hold
        floor_hot follow_your for_<attend> for_quiet for_that for_turn forearm_vertical forehead_<settle>
        forget_the from_<part> from_the front_hand front_leg front_of get_off go_<attend> go_<less> go_<pace>
        go_hard goe_<part> goe_back got_a grap_<place> grap_under gravit_<swap> gravit_do grip_it grow_<more>
        grow_<place> grow_taller grow_up guitar_string hand_are hang_off hav_it head_<chat> head_for head_in
        head_last heart_<place> heart_down heart_over heav_<attend> heav_in heel_into heel_push hello_<attend>
        hello_<part> hello_hamstring help_with here_to hip_<more> hip_<place> hip_level hip_rock hip_squar
        hip_that hip_to hold_a if_<chat> in_<attend> in_<num> in_one in_the into_the into_your is_<place> is_in
        is_just it_<far> it_help it_in it_let it_like it_melt it_should it_till it_touch itll_<settle> itll_come
        its_<part> its_all its_low its_our its_that its_the its_wind jaw_loos just_<kit> just_along just_hook
        just_the kne_and kne_over knee_<move> knee_point knee_sink knee_track kneecap_slid lamp_post lead_from
        lead_with leg_follow lengthen_<place> let_<pace> let_anybod let_gravit let_your light_on like_<chat>
        like_<harm> like_elastic like_guitar like_somebody like_youm line_from listen_for littl_toe long_<part>
        long_neck look_ahead look_at loos_<part> loos_<settle> loos_<take> loos_face low_<place> low_down me_why
        medal_<place> medal_on melt_<attend> melt_if metr_ahead more_than mov_<far> muscl_<place> neck_<attend>
        neck_long necklac_to newspaper_<place> newspaper_under next_door nick_it nobod_here nobody_spill nosy_at
        not_<chat> not_<part> not_<place> not_behind not_down not_gwilym not_hand not_hav not_me not_spill
        not_your noth_else of_<chat> of_drink of_the of_waterwork of_wood of_you of_your off_it on_<chat> on_a
        on_me on_purpos one_<attend> one_at one_bit one_get one_straight only_<more> only_<swap> only_heavier
        only_hook open_<place> our_waiter out_<place> out_on out_toward outsid_<far> outsid_edge over_<harm>
        over_<part> over_paint over_toe paint_<swap> paint_can part_<place> pick_a pick_the pinch_a plank_of
        plank_with pocket_is point_<place> point_wher pres_down pres_the pretend_ther prod_it proud_<part>
        proud_chest pull_your pump_the punch_the reach_<more> reach_up reel_it rib_<place> rib_down right_into
        run_<attend> run_tall seat_of second_<harm> second_heart see_bunch seen_a send_your should_<do>
        should_<move> should_<settle> should_feel shoulder_<far> shoulder_<more> shoulder_<place> shoulder_away
        shoulder_blad shoulder_level shoulder_soft sid_<place> sid_on side_of sit_<more> sit_up slid_<more>
        slid_up snap_and someon_is someth_that spill_<num> spill_one spot_<place> spot_on spread_<place>
        spread_out squeez_that stand_<far> stand_ful stand_leg star_at stay_<attend> stay_look stay_touch
        str_<place> straight_leg stretch_<place> switch_<place> switch_on tall_<attend> tall_as ten_<part>
        tension_<place> that_<not> that_<place> that_<swap> that_back that_doesnt that_fac that_move that_the
        that_wee that_wher that_work the_<far> the_<less> the_<more> the_<move> the_<place> the_achill the_armpit
        the_back the_bel the_bench the_body the_bone the_carpet the_clock the_cone the_downstair the_effort
        the_foot the_front the_ground the_hip the_horizon the_knee the_kneecap the_leg the_lino the_meat
        the_middl the_next the_outsid the_pelvi the_plac the_power the_rib the_ride the_side the_stand the_sun
        the_swell the_track the_tricep the_underneath the_wall the_whol the_wobbl the_world ther_<not> ther_nobod
        theyr_<chat> theyr_done theyr_draw thi_<num> thi_one think_<attend> think_<place> through_both
        tight_<air> tight_<part> tight_bel till_it to_<attend> to_<harm> to_<part> to_hair to_heel to_impres
        to_poke to_see to_show to_spill to_turn to_your toe_<do> toe_<far> toe_and toe_point toe_press top_shelf
        track_<place> track_over try_to two_year under_each under_ther underneath_side up_from up_in up_together
        up_toward waiter_again wall_and want_to waterwork_<attend> waterwork_as way_<far> way_past wee_teardrop
        weight_go weight_in were_after wet_<kit> wet_<swap> wet_towel what_your wher_it wher_your whol_<part>
        whol_foot whol_of will_<attend> will_feel wind_upward with_ever with_manner work_the world_<place>
        world_down wring_<place> wring_out year_old you_<chat> you_<do> you_and you_by you_round you_theyr
        you_turn you_wait you_wanna you_want youll_<attend> youll_feel your_<num> your_<swap> your_after
        your_backsid your_belt your_crack your_get your_hand your_hang your_heal your_kneecap your_pelvi
        your_pocket your_say your_sho your_sit your_sock your_step your_the your_thigh your_watch youv_been
        youv_seen
      `,
    ],
    [
      -0.2,
      `
        <attend>_and <attend>_be <attend>_hand <attend>_has <attend>_its <attend>_one <attend>_over <attend>_that
        <attend>_they <attend>_under <chat>_all <chat>_can <chat>_feel <chat>_in <chat>_it <chat>_look <chat>_on
        <chat>_to <do>_away <do>_back <do>_into <do>_it <do>_the <do>_them <do>_with <do>_your <far>_as
        <far>_with <far>_your <kit>_down <kit>_to <less>_your <more>_with <move>_away <move>_back <move>_it
        <move>_off <move>_on <move>_over <move>_them <not>_a <not>_like <not>_out <num>_metr <num>_of <part>_at
        <part>_back <part>_flexor <part>_foot <part>_from <part>_has <part>_heav <part>_long <part>_off
        <part>_out <part>_stretch <part>_under <place>_arm <place>_as <place>_into <place>_is <place>_it
        <place>_out <place>_over <place>_that <place>_till <place>_you <settle>_down <settle>_on <settle>_the
        <swap>_it <swap>_of <take>_the a_<attend> a_<ill> a_<pace> a_<part> a_<place> a_<swap> a_bit a_littl
        a_lot a_wee and_<do> and_<place> and_<settle> and_<take> and_let are_<place> arm_<attend> arm_<place>
        as_<chat> as_<place> as_the as_you as_your at_<chat> at_the at_you back_from back_to both_<part>
        bottom_of com_<place> come_<place> each_hand elbow_<attend> end_of feel_<attend> feel_like feet_<attend>
        feet_<place> floor_in floor_just for_your front_foot front_knee get_a heel_<place> hip_flexor if_it
        if_its if_that if_your in_a is_<not> it_<do> it_feel its_only just_<place> just_in keep_it kne_<attend>
        knee_<attend> knee_<place> leg_<place> let_it lift_the like_a like_the look_<place> look_like lot_of
        make_it neck_<part> nose_<place> not_<attend> not_like not_out of_it off_the on_the one_<part> one_of
        onto_your open_the other_<part> out_<attend> out_like over_the over_your roll_<place> same_<attend>
        shoulder_<do> soft_<part> stand_<place> stay_on step_<place> straight_<place> tailbon_<place> than_<chat>
        than_you that_<chat> that_a that_is the_<air> the_<harm> the_<kit> the_<swap> the_<take> the_air the_arm
        the_box the_cake the_chest the_feet the_head the_insid the_jaw the_neck the_other the_straight the_way
        the_weight them_<place> to_<settle> to_<take> to_the toe_<place> top_<part> toward_the turn_your
        under_the under_your up_through walk_<attend> want_<place> want_in way_<place> weight_<place> weight_over
        when_<chat> wher_<chat> with_the you_<attend> you_<less> you_<move> you_<settle> your_<air> your_<chat>
        your_<far> your_<less> your_<more> your_all your_bel your_foot your_hip your_kne your_leg your_lower
        your_shoulder your_thumb your_whol your_wrist
      `,
    ],
    [-0.4, '<part>_on <place>_to hand_<place> stay_<place> that_your'],
  ],
  phrase: [
    [1, 'focus-sure'],
    [0.4, 'focus-hint'],
    [0.2, 'execution-hint focus-likely tempo-hint'],
    [
      -0.2,
      `
        breathing-sure caution-likely caution-sure dose_only easier-likely equipment-sure fault-sure range-likely
        setup-hint setup-likely tempo-sure transitions
      `,
    ],
    [-0.4, 'caution-hint chat harder-sure'],
    [-0.6, 'easier-hint easier-sure empty_clauses range-sure setup-sure'],
  ],
  start: [
    [
      0.4,
      `
        <do>_<attend> not_at not_at_your push_the that_should that_should_be you_want your_a
      `,
    ],
    [
      0.2,
      `
        <air>_<pace> <attend>_<attend> <attend>_<less> <chat>_<part> <far>_<more> <far>_<place> <far>_<swap>
        <move>_<attend> <move>_<more> <move>_<pace> <not>_<less> <not>_<more> <not>_<place> <pace>_<attend>
        <settle>_<attend> <settle>_<more> <swap>_<far> <take>_<far> <take>_<more> a_banana a_bit_of a_hand
        a_hand_in abov_the_kneecap all_in all_in_one all_the_weight as_if_you back_leg back_of back_of_the
        bar_over bar_over_the bel_button bend_the_bar big_chest big_toe body_in body_in_one bottom_goe
        bottom_goe_back br_your brac_like cat_on cat_on_a chest_and chest_and_hip chest_lift control_the
        control_the_middl crack_it crush_a curl_the curl_the_hip dont_ask dont_ask_me dont_drop dont_drop_it
        dont_let_anybod dont_look dont_look_at dont_spill dont_spill_it down_by down_by_your drag_it drag_it_up
        driv_your driv_your_elbow elbow_brush_your even_weight eye_forward feel_it feel_the feel_your follow_your
        follow_your_hand forearm_vertical front_of get_your_armpit grip_it grip_it_like grow_taller grow_up
        hang_off hang_off_you have_a_nosy heel_and_ball heel_push heel_push_away heel_to_hair hello_hamstring
        hip_level hip_squar hip_squar_to hip_to_toe hold_it_till in_front in_front_of insid_of into_the
        into_the_bench it_help it_help_with it_is_the it_should it_touch itll_come itll_come_to its_a its_a_skip
        its_a_spr its_a_twist its_all its_all_bun its_low its_low_down its_our its_our_waiter its_pull its_that
        its_the its_the_underneath its_wind keep_the_back keep_the_pelvi keep_the_ring keep_your_chest
        keep_your_shoulder kne_over knee_track knee_track_over lead_with lead_with_your lean_your_heart
        let_gravit let_gravit_do let_the_floor let_the_lower let_your let_your_head like_a like_elastic
        like_somebody like_you littl_toe long_neck look_ahead look_at_someth loos_face near_the_achill neck_long
        nobody_spill not_a_fl not_a_wring not_behind not_behind_the not_gwilym not_in not_in_the not_me
        not_on_your not_the_back not_up_in not_your noth_else noth_else_mov on_purpos one_at one_at_a
        only_heavier pick_a pick_the pick_the_back pinch_a pres_down pres_the pretend_ther prod_it proud_chest
        pull_with pull_with_the pull_your pull_your_bel pump_the pump_the_arm punch_the push_the_ground
        push_the_ring push_the_world push_through_the put_your quick_light quick_light_step reach_for
        reach_for_the reach_up reach_up_at rib_down run_tall send_your shoulder_soft sit_up sit_up_tall snap_and
        snap_and_float soften_your_kne spread_out spread_out_on squeez_everyth_from squeez_the_seat
        squeez_your_bum stand_ful start_a start_a_car that_fac that_fac_the that_not_for that_the_one
        that_the_plac that_the_swell that_what_your that_wher that_wher_it that_work that_your_second the_arm
        the_band_want the_bottom the_bottom_round the_bottom_side the_cone the_floor the_floor_hot the_head_last
        the_knee the_shoulder_stay the_whol the_whol_time ther_nobod ther_nobod_here they_dont they_dont_lift
        thi_one think_of try_to under_the watch_your_kneecap we_are weight_even weight_in weight_in_your wher_the
        whol_foot whol_foot_on wind_upward with_manner you_round you_wanna you_want_it you_want_that
        you_will_feel youll_feel youll_feel_it your_arm your_arm_are your_hang your_hang_off your_not_hav
        your_not_to your_say your_step your_step_over your_the youv_got_a youv_seen youv_seen_a
      `,
    ],
    [
      -0.2,
      `
        <attend>_<chat> <attend>_<more> <attend>_<part> <attend>_<take> <chat>_<move> <chat>_<not> <chat>_<swap>
        <harm>_<place> <kit>_<place> <not>_<wrong> <part>_<do> <part>_<less> <part>_<settle> <place>_<part>
        <settle>_<place> front_knee grow_tall_through if_your its_only its_the_insid its_your_rib keep_it
        keep_the_weight keep_your_hip let_it let_your_arm let_your_toe like_an like_the like_your like_your_in
        not_from_the not_like not_out not_out_like pres_through_the pull_the push_the_floor that_a that_your
        the_hip_flexor the_other think_of_the turn_your weight_on weight_on_the you_are your_all
      `,
    ],
  ],
  word: [
    [0.6, 'should spill wher'],
    [
      0.4,
      `
        a abs all bel blad crack door else even feel from heav hook imagin into kneecap lead mov not pocket
        squeez the thigh through tight want your
      `,
    ],
    [
      0.2,
      `
        achill acros after ahead along apart armpit attention away backsid ball banana bar be been belt bench
        between big board boat both bra brac break broad bum buttock calv carpet cheek chest clock coffe
        collarbon cone control crisp crown crush deep deer downstair drag each effort elastic elbow empt everyth
        eye find finger floor forehead forget front ful get grap gravit grip ground grow guitar gwilym hair hammi
        hammock hang hav head heal heart heavier hedg hello hip horizon hot impres is its just kickstand ladi
        lamp lengthen level lino listen loos low machin manner me meat medal melt middl move neck necklac
        newspaper next nick nope nosy notic of only part pelvi pick plank poke power pres press pretend prod
        puddl pump punch purpos push reach reel relax rib ride rop sand see seen send sens shelf sho shoulder
        shut sid side slid snap sock somebody spe spot spr spread stand star str string sun swell tailbon tall
        taller teardrop tension that think toe tomato toward towel track tricep truck try upward waist waiter
        wall wanna watch waterwork wet whol widen wind with wobbl wood world wr wring you youv
      `,
    ],
    [
      -0.2,
      `
        0 afterward again air an ankl arm as asleep back band becaus befor bell below bend bent best box br
        breath bridg cake call chair check circl com come did doe down drop ease em fac feet finish first flexor
        fold foot for forward four go gone half hand has hear hold how i joint keep land last leav left leg
        length let long lot lower make mild minut mirror my need never nice off one onto open operat other own
        palm park paus pay pedal peel peopl pleas quiet rail rais remember right roll same second shin shirt
        short so soft some start stay step still stop straighten stretch strid support sw take than thes they
        thos thumb tightrop time tip toda two up us use way weight what when wide wider width without wrist youd
      `,
    ],
    [-0.4, 'kne knee or out them walk'],
    [-0.8, 'if'],
  ],
} as const satisfies CueWeights
