/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind focus; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const FOCUS_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [0.6, 'attend'],
    [0.4, 'part'],
    [0.2, 'move'],
    [-0.2, 'air chat ill more not pace settle'],
    [-0.4, 'do less num swap wrong'],
  ],
  first: [
    [0.8, '<attend>'],
    [0.6, 'its not'],
    [
      0.4,
      `
        <move> eye feel grip grow imagin lead push reach squeez tall thi think wher your
      `,
    ],
    [
      0.2,
      `
        <far> <part> all back bel belt big chest collarbon control crack crush door everyth fift hammi hang head
        heav hello hip insid into it itll ladi lengthen listen loos motion nope noth notic on pick pictur pinch
        pocket pres pretend prod proud punch quick quieter rib run see send shut smooth snap spin spread stiff
        tailbon that the tight try tuck under watch whol you youll
      `,
    ],
    [
      -0.2,
      `
        0 <air> <do> <harm> <kit> <less> <more> <place> <settle> <swap> <wrong> a arm as at becaus both breath
        bum come do dont down draw drop elbow feet from give go hand i keep kne kneecap land leav leg lift lower
        make nice no nobod off one or other palm quiet remember roll shin slow soft some stay step still stop
        straighten sw take theyr top turn up use walk
      `,
    ],
    [-0.4, '<num> toe'],
    [-0.6, 'if'],
  ],
  given: [
    [0.2, '<air> <chat> <not> <swap> arm bel down go hip isnt leg of off on still tabletop'],
    [-0.2, 'are feel in its shoulder the your'],
  ],
  last: [
    [0.6, 'blad'],
    [0.4, 'after feet heel hook kneecap level neck pocket tall turn'],
    [
      0.2,
      `
        achill ahead area armpit asleep at away ball banana broad bucket bum buttock calf clock cone corner
        drawbridg elastic elbow else end feel fift fl flat flipper float front ful gate glut gwilym hair hammi
        hamstr hamstring hand handl head heal heav heavier hedg hip horizon hot insid is it kick ladi leg lift
        lik long loos manner me middl motion move newspaper no nope point post press puddl purpos relax ride rop
        rope round sand say scal shelf sho shoulder shout shut sidewalk slap slipper smooth sock spe spill spot
        spr squash string swell tailbon taller teardrop thi thigh tight tighter toe tomato tricep tuck upward
        wanna was watch why wind wobbl wood work
      `,
    ],
    [
      -0.2,
      `
        0 afterward again air all apart bar body bottom box breastbon breath bridg bus chair count drop ear eye
        fenc forward in job kne land late liv lot mirror muscl one pair pleas pull quiet rais ring seat shin
        shrug sid straight stretch tabl tabletop that them ther think through touch track two wrist
      `,
    ],
    [-0.4, 'down'],
  ],
  length: [
    [0.2, 'long'],
    [-0.2, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.6, '<chat>_after the_<attend>'],
    [
      0.4,
      `
        <attend>_if <chat>_a <chat>_want <far>_toe <not>_spill <part>_blad all_<num> all_<part> are_just arm_are
        as_a as_if chest_<more> chest_up feel_it front_of is_all it_<far> its_the not_at on_a push_the
        shoulder_blad slid_<place> spill_it star_at that_<not> that_<place> that_should the_middl through_the
        till_it toward_your with_your you_<place> your_<attend> your_a your_after your_elbow
      `,
    ],
    [
      0.2,
      `
        <air>_button <air>_go <attend>_a <attend>_about <attend>_ahead <attend>_as <attend>_at <attend>_both
        <attend>_chest <attend>_com <attend>_elastic <attend>_first <attend>_forward <attend>_from <attend>_go
        <attend>_guitar <attend>_is <attend>_leg <attend>_neck <attend>_of <attend>_on <attend>_somebody
        <attend>_someon <attend>_stay <attend>_switch <attend>_ther <attend>_tight <attend>_two <chat>_by
        <chat>_carry <chat>_chest <chat>_cone <chat>_crack <chat>_door <chat>_gravit <chat>_hamstring <chat>_hard
        <chat>_jump <chat>_march <chat>_never <chat>_rise <chat>_round <chat>_theyr <chat>_wanna <chat>_why
        <do>_ful <do>_heav <do>_in <do>_tall <do>_that <do>_ther <do>_through <far>_befor <far>_chest <far>_down
        <far>_heavier <far>_hook <far>_in <far>_it <far>_up <far>_you <harm>_a <harm>_and <harm>_it <harm>_on
        <harm>_over <harm>_point <harm>_sand <harm>_towel <ill>_a <kit>_buckl <kit>_go <kit>_in <kit>_into
        <kit>_like <kit>_on <kit>_over <kit>_stay <kit>_want <kit>_was <less>_as <less>_bel <less>_it <more>_cone
        <more>_crack <more>_door <more>_from <more>_in <more>_shoulder <more>_together <more>_toward <move>_down
        <move>_everyth <move>_taller <move>_that <move>_the <move>_through <move>_touch <move>_up <move>_you
        <move>_your <move>_yourself <not>_at <not>_back <not>_behind <not>_drop <not>_else <not>_gwilym <not>_hav
        <not>_here <not>_lift <not>_lik <not>_look <not>_me <not>_mind <not>_mov <not>_one <not>_tight <not>_to
        <not>_your <num>_at <num>_bit <num>_bucket <num>_finger <num>_get <num>_plat <num>_slap <num>_spot
        <num>_straight <num>_tap <pace>_do <pace>_heart <pace>_in <pace>_is <pace>_light <pace>_the <part>_and
        <part>_are <part>_as <part>_button <part>_copy <part>_do <part>_flat <part>_go <part>_here <part>_in
        <part>_level <part>_lift <part>_not <part>_of <part>_pocket <part>_push <part>_rock <part>_slid
        <part>_squash <part>_switch <part>_the <part>_track <part>_vertical <part>_widen <part>_your <place>_both
        <place>_do <place>_each <place>_edge <place>_flat <place>_leg <place>_line <place>_me <place>_neck
        <place>_of <place>_paint <place>_pocket <place>_purpos <place>_shoulder <place>_squash <place>_straight
        <place>_the <place>_toe <place>_together <place>_toward <place>_treacl <place>_two <place>_your
        <settle>_a <settle>_from <settle>_ful <settle>_hard <settle>_heav <settle>_like <settle>_off
        <settle>_that <settle>_ther <swap>_a <swap>_as <swap>_buckl <swap>_ful <swap>_on <swap>_the <take>_as
        <take>_ful a_<do> a_<harm> a_<move> a_banana a_bow a_car a_coffe a_crisp a_deer a_drawbridg a_drawer
        a_dull a_fl a_gate a_grap a_hammock a_kick a_lamp a_medal a_metr a_newspaper a_nosy a_plank a_playground
        a_spot a_spr a_str a_time a_wet a_wring about_to abov_the acros_the all_bun all_in along_for and_<kit>
        and_<pace> and_ball and_bum and_float and_hip and_keep and_reel and_relax and_star and_the and_you
        and_your ankl_flop anybod_<harm> anybod_nick apart_with are_<far> are_<move> are_keep are_only are_work
        arm_is armpit_head as_<attend> as_an at_it at_one at_someth at_your away_<place> away_behind away_from
        back_flat back_of back_pocket back_squash back_straight balanc_a band_want bar_<place> bar_into bar_over
        bathroom_scal be_<attend> be_in be_talk befor_each behind_<chat> behind_the behind_you bel_button bel_go
        belt_buckl bend_the between_the between_your big_<part> big_chest big_toe blad_at body_<place> body_goe
        body_in bon_whil both_sid bottom_<chat> bottom_<do> bottom_<place> bottom_goe bottom_round
        bottom_together bra_<kit> bra_<settle> bra_strap brac_<attend> brac_like buckl_to button_in by_now
        cheek_of chest_<less> chest_<place> chest_lift chest_look chin_tuck chin_wher coffe_<place> coffe_on
        collarbon_<attend> collarbon_<place> collarbon_broad collarbon_wide control_the corner_to crack_<place>
        crack_in crack_it crisp_<place> crisp_in crush_a crush_the curl_the dead_<far> dead_<more> dead_level
        deep_<place> deep_in do_the doe_thi dont_<attend> dont_<less> dont_ask dont_break dont_drop dont_heav
        dont_lift dont_look dont_spill door_tomato door_with down_and down_like down_the downstair_<attend>
        downstair_as drag_it draw_<chat> draw_you drawer_<place> drink_<place> drink_on driv_your drop_it
        each_<num> each_arm each_one each_other ear_to elbow_behind elbow_finish else_<attend> else_mov
        empt_<part> empt_hand even_<part> even_through even_weight ever_<air> eye_<attend> eye_<place>
        eye_forward eye_if far_<kit> feel_the feel_thi feel_your finish_<far> finish_high floor_<settle>
        floor_<take> floor_away floor_hold floor_hot follow_your foot_down for_quiet for_that for_turn
        forearm_vertical forehead_<settle> forget_the from_<part> from_the from_your front_hand front_leg get_off
        go_<attend> go_<less> go_<pace> go_hard goe_<attend> goe_quiet got_a got_you grap_<place> grap_under
        gravit_<swap> gravit_do grip_it ground_away grow_<place> grow_an grow_taller guitar_string hand_<move>
        hand_are hang_heav hang_off hang_ther hav_it head_for head_in head_stay heart_<place> heart_down
        heart_over heav_<attend> heav_<place> heel_into heel_push hello_<attend> hello_<part> hello_hamstring
        here_to high_<more> high_<place> high_up hip_<attend> hip_<more> hip_<place> hip_level hip_rock hip_that
        hip_to hold_a in_<num> in_on in_one in_the in_your inch_befor into_the into_your is_<place> is_in is_just
        isnt_<part> isnt_back it_<not> it_help it_isnt it_let it_like it_low it_should it_stop it_that it_till
        it_touch itll_come its_<part> its_all its_bottom its_our its_that its_wind jaw_loos just_<kit> just_along
        just_hook just_rop just_the kne_over knee_<move> knee_point knee_sink knee_track kneecap_slid knock_on
        lamp_post lead_from lead_with leg_copy leg_only legsll_follow lengthen_<place> let_<pace> let_anybod
        let_gravit let_your level_<part> light_on like_<chat> like_<harm> like_elastic like_guitar like_somebody
        like_youm line_from listen_for littl_toe long_<part> long_neck look_at loos_<part> loos_<settle>
        loos_<take> loos_face low_<part> low_<place> low_down me_why medal_<place> medal_on melt_<attend> melt_if
        mind_<far> mind_higher more_than mov_<far> mov_off mud_off muscl_<place> neck_<attend> neck_<place>
        neck_long necklac_to never_lik never_mind newspaper_under next_cone next_crack next_door nick_it
        nobod_here nobody_spill nosy_at not_<part> not_<place> not_arm not_back not_behind not_gwilym not_hand
        not_hav not_me not_mov not_one not_spill not_to not_your noth_<less> noth_else noth_tight of_<chat>
        of_drink of_metr of_the of_waterwork of_wood of_you of_your off_it on_me on_purpos one_<attend>
        one_<wrong> one_at one_bit one_get one_slap one_straight only_<more> only_heavier only_hook open_<place>
        opposit_shoulder other_<attend> other_like our_waiter out_on out_toward outsid_<far> outsid_edge
        over_<harm> over_<part> over_paint over_toe paint_<swap> paint_can part_<place> pick_a pinch_a plank_of
        pocket_area pocket_is point_<place> point_wher pres_<place> pres_down pres_the pretend_ther prod_it
        proud_<part> proud_chest pull_<place> pull_in pull_your punch_the push_it push_yourself quick_<pace>
        quick_<part> quick_hand quick_light quiet_and quieter_<part> quieter_<take> quieter_feet reach_<attend>
        reel_it relax_your rib_<place> rib_down right_into rise_your run_<attend> run_tall run_to same_number
        seat_of second_<harm> second_heart see_bunch seen_a should_<attend> should_<do> should_<move>
        should_<settle> should_be should_feel shoulder_<far> shoulder_<more> shoulder_<place> shoulder_away
        shoulder_level shoulder_soft shoulder_stay shut_a sid_<place> sid_on side_of sit_<attend> sit_<more>
        sit_up skip_with slid_<more> slid_up snap_and soften_your somebody_got someon_is someth_that spill_<num>
        spill_one spot_<place> spot_on spread_<place> spread_out spread_the squeez_the stack_<attend> stack_like
        stand_<far> stand_<part> stand_ful stand_leg statu_for stay_<attend> stay_<more> stay_heav stay_touch
        stiff_<attend> stiff_as still_as stop_nag str_<place> straight_<attend> straight_<more> straight_leg
        straight_up stretch_<place> switch_<place> switch_on tabletop_off tall_<chat> tall_as tall_first
        tell_<chat> ten_<part> tension_<place> that_<swap> that_back that_bum that_move that_wee that_who
        the_<less> the_<more> the_<move> the_achill the_armpit the_back the_bel the_bench the_body the_bone
        the_carpet the_cheek the_clock the_downstair the_effort the_feel the_foot the_front the_ground the_hip
        the_horizon the_kneecap the_leg the_legsll the_lino the_meat the_next the_oak the_outsid the_pelvi
        the_plac the_power the_rib the_ride the_rope the_side the_sidewalk the_skull the_stand the_sun the_swell
        the_thigh the_track the_tricep the_underneath the_whol the_wobbl the_world them_shin ther_<far>
        ther_<not> ther_a ther_and ther_like ther_nobod ther_till theyr_<chat> theyr_done theyr_draw thi_<num>
        thi_one thigh_and think_<attend> think_<place> think_about think_of third_<num> third_one though_<chat>
        through_both tight_<air> tight_<part> tight_bel to_<attend> to_<part> to_corner to_hair to_heel to_impres
        to_kne to_opposit to_poke to_see to_show to_spill toe_<do> toe_<far> toe_and toe_press top_shelf
        track_<place> track_over tray_<place> tray_on try_to turn_you two_<chat> two_<do> two_<kit> two_bucket
        two_plat two_tap under_each under_ther underneath_side until_you up_<place> up_from up_in up_together
        up_toward waiter_again wall_and want_it want_to watch_the waterwork_<attend> waterwork_as way_<far>
        way_past wee_teardrop weight_in were_after wet_<kit> wet_<swap> wet_sand wet_towel wher_a wher_it
        wher_the wher_your whoever_opposit whol_<pace> whol_<part> whol_foot whol_time will_<attend> will_feel
        wind_upward with_manner work_the world_<place> world_down wr_it wring_<place> wring_out you_<chat>
        you_<do> you_and you_by you_never you_rise you_round you_theyr you_turn you_wanna you_want youll_<attend>
        youll_feel your_<swap> your_arm your_backsid your_belt your_carry your_crack your_drag your_hand
        your_hang your_jump your_kneecap your_pelvi your_pocket your_say your_sho your_sit your_slipper your_sock
        your_spot your_step your_the your_waist your_watch yourself_away youv_been
      `,
    ],
    [
      -0.2,
      `
        <attend>_and <attend>_be <attend>_hand <attend>_has <attend>_in <attend>_its <attend>_one <attend>_that
        <attend>_they <attend>_theyr <attend>_under <chat>_all <chat>_can <chat>_feel <chat>_it <chat>_not
        <chat>_on <chat>_to <do>_away <do>_back <do>_from <do>_into <do>_it <do>_over <do>_them <do>_your
        <far>_one <far>_the <far>_with <far>_your <harm>_in <kit>_back <kit>_between <kit>_to <less>_your
        <more>_as <more>_like <more>_with <move>_away <move>_back <move>_it <move>_off <move>_on <move>_over
        <move>_them <not>_like <not>_out <num>_foot <num>_in <num>_metr <num>_of <part>_at <part>_back
        <part>_between <part>_bone <part>_flexor <part>_from <part>_has <part>_long <part>_off <part>_out
        <part>_stretch <part>_till <part>_under <place>_arm <place>_as <place>_between <place>_here <place>_if
        <place>_into <place>_onto <place>_out <place>_over <place>_that <place>_through <settle>_down <settle>_on
        <settle>_the <swap>_of <swap>_your <take>_the a_<attend> a_<ill> a_<pace> a_<place> a_bit a_littl a_lot
        a_wee about_a all_of and_<do> and_<place> and_<settle> and_<take> and_let and_look and_stay are_<place>
        arm_<attend> arm_<place> arm_like as_<chat> as_<far> as_<place> as_the as_you as_your at_<chat> at_that
        at_the at_you back_from back_like back_to bag_of blad_<attend> blad_like both_<part> chest_<do>
        com_<place> come_<place> dont_<settle> each_hand elbow_<attend> feel_<attend> feel_like feet_<place>
        floor_<num> floor_in floor_just floor_two front_<far> front_foot front_knee get_a has_<num> heav_<num>
        heav_<take> heav_feet heav_one heel_<move> hip_flexor if_its if_the if_your is_<not> it_<do> it_feel
        it_on it_with its_only just_<place> just_in keep_it kne_<attend> kne_<place> knee_<attend> knee_<place>
        knee_down leg_<place> let_it lift_the light_hand like_a like_it like_the long_as look_<place> lot_of
        make_it neck_<part> not_<attend> not_like not_out of_<harm> of_it off_the on_one on_the one_<part> one_of
        only_<attend> onto_your open_the other_<part> out_<attend> out_like over_the over_your point_at pull_it
        push_<place> put_it roll_<place> same_<attend> shoulder_and soft_<part> stack_<place> stay_<place>
        stay_on step_<place> straight_<place> tailbon_<place> tall_<place> than_<chat> than_you that_<chat>
        that_a that_is the_<chat> the_<harm> the_<swap> the_<take> the_air the_arm the_box the_cake the_chair
        the_chest the_feet the_hand the_heav the_heel the_jaw the_mirror the_neck the_other the_seat the_straight
        the_way the_weight them_<place> thi_<pace> thi_time through_your till_<chat> to_<place> to_<take> to_the
        toe_<place> top_<part> toward_the turn_<place> turn_your two_metr under_the under_your up_through
        walk_<attend> want_<place> want_in way_<place> weight_<place> when_<chat> wher_<chat> with_the
        you_<attend> you_<less> you_<move> you_feel your_<air> your_<chat> your_<kit> your_<less> your_<more>
        your_all your_bottom your_foot your_hip your_kne your_lower your_on your_shoulder your_thumb your_toe
        your_whol your_wrist
      `,
    ],
    [-0.4, '<place>_to hand_<place> heel_<place> that_your to_<settle>'],
    [-0.6, '<part>_on'],
  ],
  phrase: [
    [0.8, 'focus-sure'],
    [0.6, 'focus-hint'],
    [0.2, 'execution-hint focus-likely range-hint tempo-hint'],
    [
      -0.2,
      `
        breathing-likely breathing-sure caution-likely easier-likely fault-sure harder-likely praise setup-likely
        transitions
      `,
    ],
    [
      -0.4,
      `
        caution-hint caution-sure chat dose_only easier-sure harder-sure range-likely range-sure setup-sure
      `,
    ],
    [-0.6, 'easier-hint empty_clauses'],
  ],
  start: [
    [0.6, 'your_a'],
    [
      0.4,
      `
        <do>_<attend> its_the not_at not_at_your not_on_your push_the that_should that_should_be you_want
      `,
    ],
    [
      0.2,
      `
        <air>_<pace> <attend>_<attend> <attend>_<less> <chat>_<part> <far>_<more> <far>_<place> <far>_<swap>
        <less>_<attend> <move>_<attend> <move>_<more> <not>_<less> <not>_<place> <part>_<attend> <place>_<attend>
        <place>_<place> <settle>_<attend> <settle>_<more> <swap>_<far> <take>_<attend> <take>_<more> a_banana
        a_bit_of a_hand_in abov_the_kneecap all_in all_in_one all_one all_one_piec all_the_weight ankl_flop
        arm_are arm_are_just as_if_you back_flat back_leg back_of back_of_the bar_over bar_over_the bel_button
        belt_buckl belt_buckl_to bend_the_bar big_chest big_toe body_in body_in_one bottom_goe bottom_goe_back
        br_your brac_like cat_on cat_on_a chest_and chest_and_hip chest_lift chest_to_kne chin_tuck chin_wher
        chin_wher_it collarbon_wide control_the control_the_middl crack_it crush_the curl_the curl_the_hip
        dont_ask dont_ask_me dont_break dont_break_it dont_drop dont_drop_it dont_heav dont_let_anybod dont_look
        dont_look_at dont_spill dont_spill_it down_by down_by_your drag_it drag_it_up driv_your driv_your_elbow
        elbow_finish elbow_finish_high even_weight eye_forward eye_up feel_it feel_the feel_your follow_your
        follow_your_hand forearm_vertical front_of get_your_armpit grip_it grip_it_like grow_an grow_an_inch
        grow_taller hang_off hang_off_you hang_ther hang_ther_till have_a_nosy heel_and_ball heel_push
        heel_push_away heel_to_hair hello_hamstring hip_level hip_not_arm hip_squar hip_squar_to hip_stack
        hip_stack_like hip_to hip_to_opposit hip_to_toe hold_it_till if_you_have in_front in_front_of in_on
        in_on_a insid_of into_the into_the_bench it_help it_help_with it_is_the it_isnt it_isnt_back it_should
        it_touch itll_come itll_come_to its_a its_a_playground its_a_skip its_a_time its_a_twist its_all
        its_all_bun its_bottom its_low_down its_our its_our_waiter its_that its_the_underneath its_wind
        keep_the_back keep_the_pelvi keep_the_ring keep_your_chest keep_your_shoulder kne_over knee_track
        knee_track_over lead_with lead_with_your lean_your_heart let_gravit let_gravit_do let_the_back
        let_the_floor let_the_lower let_your let_your_head like_a_pendulum like_somebody like_you listen_for
        littl_toe long_neck look_a_metr look_at_someth loos_face near_the near_the_achill neck_long never_mind
        never_mind_higher nobody_spill not_a_fl not_a_wring not_back not_behind not_behind_the not_gwilym not_in
        not_in_the not_me not_on not_the_back not_the_cat not_the_floor not_to not_up_in not_your not_your_knee
        not_your_sho noth_else noth_else_mov noth_tight on_purpos one_at one_at_a only_heavier out_as_you pick_a
        pick_the_back pinch_a pocket_area pres_down pres_down_like pres_the pres_the_floor prod_it proud_chest
        pull_the_bel pull_with pull_with_the pull_your pull_your_bel punch_the push_it push_it_away
        push_the_ground push_the_world push_through_the push_yourself push_yourself_away put_your quick_hand
        quick_light quick_light_step quieter_feet reach_for reach_for_the reach_up reach_up_at relax_your
        relax_your_jaw rib_down run_tall run_to run_to_the same_number send_your send_your_elbow shoulder_soft
        shut_a shut_a_car sit_tall_first sit_up sit_up_tall snap_and snap_and_float soften_your soften_your_kne
        spread_out spread_out_on spread_the squash_a squash_a_grap squeez_the squeez_the_seat squeez_your_bum
        stand_ful stand_ther_like start_a start_a_car stay_up stiff_as stiff_as_a switch_on that_bum that_not_for
        that_stand that_stand_foot that_the_feel that_the_plac that_the_swell that_wher that_wher_it that_who
        that_your_second that_your_spot the_arm the_arm_are the_band_want the_bottom the_bottom_round the_cone
        the_floor the_floor_hot the_head_last the_knee the_leg_copy ther_a_baby ther_nobod ther_nobod_here
        thes_are_keep they_dont_lift thi_one thi_one_is think_of think_of_a try_to two_bucket under_the watch_the
        watch_the_kneecap watch_the_oak watch_your_kneecap we_are weight_even weight_in weight_in_your wher_the
        whol_foot whol_foot_on wind_upward with_manner you_never you_never_lik you_round you_wanna you_want_it
        you_want_that you_will_feel youll_feel youll_feel_it your_after your_arm your_arm_are your_hang
        your_hang_off your_look your_not_hav your_not_to your_say your_step your_step_over your_the youv_got
        youv_got_a
      `,
    ],
    [
      -0.2,
      `
        <air>_<attend> <attend>_<chat> <attend>_<do> <attend>_<part> <attend>_<take> <chat>_<move> <chat>_<not>
        <chat>_<swap> <do>_<part> <far>_<do> <harm>_<place> <kit>_<place> <move>_<far> <move>_<part>
        <not>_<wrong> <part>_<chat> <part>_<do> <part>_<less> <part>_<settle> <place>_<part> <settle>_<place>
        all_the_way from_the front_knee grow_tall heav_feet if_the if_you_feel if_your its_only its_only_the
        its_the_insid its_your_rib keep_it keep_your_back keep_your_hip let_it let_your_arm let_your_toe
        light_hand like_the like_your like_your_on look_at look_at_you make_it not_from_the not_like not_out
        not_out_like not_your_neck push_the_floor that_a that_is that_wher_the that_your the_calf the_hip_flexor
        the_other think_of_the turn_your weight_on weight_on_the you_are your_all
      `,
    ],
  ],
  word: [
    [0.6, 'else pocket should spill wher'],
    [
      0.4,
      `
        a abs after bel belt blad crack door everyth feel from grow heav hook into kneecap lead mov spot squeez
        star taller that the thigh through tight want your
      `,
    ],
    [
      0.2,
      `
        achill acros ahead all along apart area armpit attention away backsid ball banana bathroom be between big
        board boat both bra brac broad buckl bum bunch buttock calv candl cano carpet cheek chest clock coffe
        collarbon cone control crisp crush deer downstair drag drawbridg drawer drink dull each effort elastic
        engag even eye find finger flipper float floor follow forehead forget front giraff grap gravit grip
        ground guitar gwilym hair hammi hammock hang hav head heal heart hedg hello high hing hip horizon hot ice
        imagin impres is isnt its jaw just ladi lamp legsll lengthen like lino listen loos low manner me meat
        medal meet melt metr middl motion move mud neck necklac newspaper next nick nope nosy not noth notic of
        part pelvi pick pictur plank playground poke post pour power pres press prod puddl pump punch purpos push
        quick quieter reach reel relax rib ride rise rop rope sand scal scrap see seen send sens shelf sho
        shoulder shout shut sid side sidewalk skull slap slid slipper snap sock somebody spe spr spread stamp
        stand stiff str string sun swell tailbon tall teardrop tension think tomato toward track tray tricep
        truck upward waist waiter wall wanna watch water waterwork wet whol widen wind with wobbl wood world wr
        wring yourself youv
      `,
    ],
    [
      -0.2,
      `
        about afterward again against air an ankl any arm back band becaus befor bell below bend bent bin bit box
        br breath bridg call can catch check circl come count cramp did dont down drop dumbbell ease em fac feet
        fenc fingertip first flap flexor fold foot for forward four give go gone grab half hammer hand has haul
        hear height hold how i im job joint keep lac land last late leav left leg length let letter lift liv long
        lot lower make minut mirror more my name near need nice no nose one onto operat other own pad pair palm
        pancak park paus pay pedal peel peopl pleas quiet rail rais remember rest right same second shin shirt
        short soft some sore squat start stay still stop straight straighten stretch strid support sure sw tak
        take than they thos thumb toda touch up us use what when wider width wrist writ youd
      `,
    ],
    [-0.4, '0 chair com knee or out roll so step them walk way weight'],
    [-0.6, 'kne'],
    [-0.8, 'if'],
  ],
} as const satisfies CueWeights
