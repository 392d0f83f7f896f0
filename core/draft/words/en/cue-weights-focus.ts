/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind focus; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const FOCUS_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [0.6, 'attend'],
    [0.4, 'part'],
    [-0.2, 'chat more not settle wrong'],
    [-0.4, 'air do less num pace swap'],
  ],
  first: [
    [0.6, '<attend> calv grow loos not wher your'],
    [
      0.4,
      `
        expect eye grip head imagin its listen noth pick push reach rib squeez stiff thi think warm
      `,
    ],
    [
      0.2,
      `
        <far> <move> <part> ahead all armpit at bel belt between bicep big bum chas chest collarbon control crack
        crown crush curl even ever everyth feel fift flop gaze ghost glue hammi hang headlight heal heav here hip
        inner insid into it lat lead lengthen like long look low lung motion neck notic odd on paddl paint pictur
        pinch posh pres pretend proud puddl pull pump punch quick rear rotator run screw serratu shak shoulder
        shut sleep small smooth snap softer spot spread spring squash stair stan stead tailbon tall taller till
        tirednes tricep trust tug under upper upright watch which whol yawn you zip
      `,
    ],
    [
      -0.2,
      `
        0 <chat> <do> <kit> <more> <place> <settle> <swap> <take> any anybod becaus breath chang check come do
        draw drop ease elbow feet fill finger first fold forearm give go half hand i im in is ive keep land leav
        leg littl make mind my no nobod nobody off one open opposit or other over peel quiet remember roll same
        shin short should slow soft some start step still stop straight straighten strong swap thes theyr thigh
        thumb to touch wait walk when without wobbl work
      `,
    ],
    [-0.4, '<num> <wrong> arm as dont kne lift take turn up'],
    [-0.6, 'if toe'],
  ],
  given: [
    [
      0.2,
      `
        <chat> <kit> <less> <move> <settle> <swap> a at bel buttock check fine for found go have join lift like
        moment much noth peopl quad ride right tail too top under water were
      `,
    ],
    [-0.2, '<attend> <ill> <num> feel get hamstring shoulder'],
  ],
  last: [
    [0.6, 'blad'],
    [
      0.4,
      `
        ahead bum calv elbow feet heav heel hook kneecap lat level loos neck rop tall turn wednesda
      `,
    ],
    [
      0.2,
      `
        achill after area armpit asleep away back backsid ball banana bath belt bench bicep broad bucket buttock
        calf calm ceil cellar chassi clock clos coat complaint cone crown cuff delt drawbridg dull elastic else
        end escalator ever failur feel flipper float forearm front further glut ground hair hammi hammock hand
        head headlight heal heavier hello high hip hope horizon hot hurri ignor impres insid it jean jug keep
        kick knee lake learn leg light long med middl moment most move narrow newspaper normal number odd off
        offenc pass plac plat pocket point post press proud puddl purpos quaysid quieter relax ride rush same
        sand scal shak shelf shift sho shoulder shut sidewalk slap slipper smooth sock sor sore spe spill spot
        spr spread spring squash squat stan str strengthen string swell t taller teardrop thigh thing thumb time
        tip toe tomato train treacl tricep twang underneath up visit waddl wanna warm was weight weightles wher
        why wide wind wing wobbl wonder wood work
      `,
    ],
    [
      -0.2,
      `
        0 again all allow arch are baby band befor behind bent bin body bone bottom breath bridg button chair
        chicken collarbon count cramp duck dumbbell ear edge enough everyth eye first four from go grip height
        job land lap left look lot lower lung march mat minut mirror more muscl name nice only over pair pay
        plank pleas pull quiet rais reach right ring room row seat set shop sid soften stair straight stretch
        strid switch that think through top track two van walk well wrist
      `,
    ],
    [-0.4, 'down in'],
  ],
  length: [
    [-0.2, '3-4'],
    [-0.6, '1-2'],
  ],
  pair: [
    [0.6, '<chat>_after <far>_toe are_just down_the push_the the_side your_a'],
    [
      0.4,
      `
        <attend>_if <attend>_on <chat>_want <harm>_it <kit>_buckl <kit>_like <not>_back <not>_be <not>_mov
        <not>_spill <part>_as <part>_flat <place>_wednesda <swap>_buckl a_<harm> a_<wrong> all_<num> all_<part>
        and_star arm_are as_a as_if at_it behind_the belt_buckl between_your big_toe calv_and chest_<more>
        chest_up do_the ear_to feel_it from_the from_your front_of inner_<part> inner_thigh is_normal it_help
        it_like its_the just_the listen_for more_than no_<more> not_<part> not_at not_back not_your on_a
        on_wednesda ought_to pelvic_floor pick_a pull_your side_of slid_<place> spill_it star_at stretch_<place>
        tea_on than_the that_<not> that_who the_<attend> the_back the_engin the_middl the_one thi_<num>
        through_the till_it toe_<do> toward_your try_to want_to weight_in you_<not> you_want your_<attend>
        your_after your_elbow
      `,
    ],
    [
      0.2,
      `
        0_move <air>_and <air>_button <air>_go <air>_goe <attend>_ahead <attend>_along <attend>_are <attend>_as
        <attend>_at <attend>_between <attend>_both <attend>_butter <attend>_chest <attend>_com <attend>_draw
        <attend>_earn <attend>_ever <attend>_forward <attend>_go <attend>_is <attend>_just <attend>_knuckl
        <attend>_lift <attend>_line <attend>_my <attend>_neck <attend>_once <attend>_pull <attend>_rop
        <attend>_somebody <attend>_someon <attend>_stay <attend>_take <attend>_test <attend>_the <attend>_ther
        <attend>_tight <attend>_to <attend>_turn <attend>_up <attend>_waist <attend>_wet <chat>_a <chat>_anybod
        <chat>_by <chat>_chang <chat>_chest <chat>_cone <chat>_could <chat>_crack <chat>_door <chat>_forward
        <chat>_go <chat>_gravit <chat>_hamstring <chat>_hard <chat>_hold <chat>_hope <chat>_jump <chat>_mak
        <chat>_nan <chat>_peer <chat>_perch <chat>_pour <chat>_push <chat>_rise <chat>_round <chat>_say
        <chat>_shouldnt <chat>_shut <chat>_stab <chat>_step <chat>_strengthen <chat>_take <chat>_tea <chat>_theyr
        <chat>_tight <chat>_train <chat>_visit <chat>_wait <chat>_wanna <chat>_weightles <chat>_what <chat>_why
        <chat>_wiggl <chat>_wonder <do>_acros <do>_even <do>_from <do>_ful <do>_go <do>_in <do>_like <do>_of
        <do>_tall <do>_ther <do>_through <do>_trap <do>_you <far>_chest <far>_down <far>_heavier <far>_higher
        <far>_hook <far>_it <far>_muscl <far>_quieter <far>_run <far>_shoulder <far>_trap <far>_tum <far>_up
        <far>_wing <far>_you <harm>_a <harm>_and <harm>_bit <harm>_coat <harm>_down <harm>_in <harm>_on
        <harm>_over <harm>_spread <harm>_towel <harm>_up <ill>_a <ill>_in <kit>_and <kit>_in <kit>_into
        <kit>_land <kit>_of <kit>_ought <kit>_over <kit>_stay <kit>_together <kit>_try <kit>_want <kit>_will
        <kit>_with <kit>_would <less>_as <less>_back <less>_be <less>_bel <less>_it <less>_jaw <less>_jean
        <less>_pull <less>_some <less>_trap <more>_cone <more>_door <more>_in <more>_lat <more>_shoulder
        <more>_than <more>_toward <more>_youv <move>_an <move>_and <move>_behind <move>_button <move>_even
        <move>_everyth <move>_from <move>_heav <move>_level <move>_light <move>_low <move>_narrow <move>_room
        <move>_taller <move>_tension <move>_the <move>_through <move>_touch <move>_trap <move>_with <move>_you
        <move>_your <move>_yourself <not>_at <not>_behind <not>_down <not>_drop <not>_else <not>_escalator
        <not>_failur <not>_further <not>_gwilym <not>_hav <not>_hot <not>_in <not>_look <not>_move <not>_much
        <not>_offenc <not>_one <not>_saucer <not>_sore <not>_star <not>_strain <not>_tip <not>_to <not>_twang
        <not>_your <num>_bucket <num>_finger <num>_for <num>_headlight <num>_jug <num>_like <num>_long <num>_move
        <num>_piec <num>_plat <num>_runner <num>_slap <num>_straight <num>_tap <pace>_do <pace>_heart <pace>_in
        <pace>_is <pace>_pull <pace>_that <pace>_toda <pace>_toe <part>_blad <part>_button <part>_do
        <part>_exercis <part>_go <part>_hav <part>_heav <part>_here <part>_hip <part>_leav <part>_me <part>_med
        <part>_most <part>_muscl <part>_only <part>_open <part>_pocket <part>_right <part>_rock <part>_rush
        <part>_say <part>_slid <part>_sor <part>_spread <part>_squash <part>_stay <part>_straight <part>_th
        <part>_than <part>_the <part>_thi <part>_to <part>_track <part>_tuck <part>_vertical <part>_waist
        <part>_widen <part>_with <part>_your <place>_befor <place>_both <place>_case <place>_duty <place>_edge
        <place>_fire <place>_flat <place>_half <place>_hip <place>_iron <place>_leg <place>_like <place>_line
        <place>_low <place>_me <place>_neck <place>_now <place>_of <place>_paint <place>_pocket <place>_purpos
        <place>_shoulder <place>_spread <place>_the <place>_thi <place>_toe <place>_together <place>_toward
        <place>_treacl <place>_two <settle>_a <settle>_found <settle>_from <settle>_ful <settle>_goe
        <settle>_hard <settle>_heav <settle>_in <settle>_me <settle>_no <settle>_off <settle>_ther <settle>_tight
        <settle>_up <settle>_weightles <settle>_you <swap>_a <swap>_ful <swap>_further <swap>_like <swap>_more
        <swap>_mov <swap>_offenc <swap>_on <swap>_saucer <swap>_some <swap>_strain <swap>_the <swap>_to
        <swap>_will <swap>_you <take>_as <take>_ful <take>_goe <take>_heav <take>_like <take>_me <take>_off
        <take>_tall <take>_up <take>_you <take>_your <wrong>_of <wrong>_t <wrong>_way <wrong>_when <wrong>_your
        a_<do> a_<move> a_back a_banana a_book a_bow a_bus a_car a_coat a_coffe a_complaint a_crisp a_cros a_deer
        a_drawbridg a_drawer a_dull a_flannel a_gentl a_grap a_hammock a_head a_kick a_lamp a_medal a_metr
        a_moment a_mug a_newspaper a_nosy a_pint a_plank a_rest a_seriou a_shak a_shrug a_skip a_sock a_spot
        a_spr a_spread a_squat a_stab a_str a_time a_tray a_turn a_walnut a_warm a_wet a_wonk about_to about_wher
        abov_the ache_<place> ache_in ache_is acros_the acros_your after_the aint_count air_goe alarm_<place>
        alarm_by all_<place> all_bun all_in all_over all_tricep along_for an_<part> an_arm an_egg and_<more>
        and_<pace> and_<part> and_down and_feel and_float and_hip and_mean and_more and_relax and_shut and_squeez
        and_that and_thi and_you and_your anybod_<harm> anybod_nick apart_with arch_of are_<kit> are_after
        are_awak are_done are_only are_rop are_work arm_<chat> arm_is arm_only arm_th arm_than arm_travel
        armpit_at armpit_to as_<attend> as_ever as_my ask_me at_<more> at_next at_one at_someth at_whoever
        at_your away_from away_like back_<do> back_<move> back_as back_flat back_of back_pocket back_spread
        back_straight back_with backrest_<not> backrest_isnt balanc_a balloon_<place> band_try band_want
        bar_<place> bar_land bar_over bathroom_scal be_<attend> be_a be_alarm be_both be_dull be_get be_hurri
        be_in be_sore be_squash behind_<chat> behind_you bel_button bel_go bell_ought bell_turn belli_<place>
        belli_touch belong_to belt_<attend> bend_the between_the between_two bicep_<place> bicep_on big_chest
        big_run big_wing bingo_wing bit_and bit_of blad_<do> blad_at blad_into blad_slid body_<place> body_goe
        body_in body_over bon_whil bone_<do> bone_<more> bone_up book_<place> book_on both_hip both_of
        bottom_round bottom_side bottom_together bottom_waist bra_<kit> bra_<settle> bra_strap break_it
        breath_and brush_your buckl_to bum_and bunt_at burn_<place> buttock_<chat> button_<place> button_down
        button_to by_now by_the calf_the call_them calv_<place> can_<take> can_you cannot_see cant_be car_<kit>
        car_door case_<chat> case_you catch_it chain_<place> chain_on chang_a chas_somebod cheek_of chest_<move>
        chest_<place> chest_lift chest_look chest_open chin_<attend> chin_tuck clos_it coffe_tabl
        collarbon_<attend> collarbon_<far> collarbon_<place> collarbon_broad collarbon_wide control_the corner_to
        could_<chat> could_<do> could_<settle> could_<take> could_tell could_you count_<chat> count_toda crack_in
        crack_it crisp_<place> crisp_in crush_a crush_the crusher_sound cup_of curl_the dead_<attend> dead_<far>
        dead_<more> dead_level dead_still deep_<part> deep_<place> do_it do_to doe_it doesnt_move dog_<place>
        dont_<attend> dont_<less> dont_<move> dont_ask dont_break dont_drop dont_heav dont_lift dont_look
        dont_spill dont_star dont_tip door_tomato door_with down_it down_like down_low down_together
        downstair_<attend> draw_<chat> draw_you driv_your drop_it dull_<harm> dull_<ill> dull_ache dur_thi
        duty_now each_<num> each_arm each_one each_other earn_their elbow_behind elbow_finish elbow_to
        else_<attend> else_mov empt_<part> empt_hand end_<more> end_are end_up engin_<place> engin_in even_<part>
        even_<take> even_feet ever_<pace> ever_time everyth_else everyth_pull expect_a eye_<attend> eye_<place>
        eye_a eye_if eye_up face_me fat_bit feel_that feel_the file_a finger_right finish_<far> finish_high
        finish_it finisher_giv first_<harm> first_stab flat_<attend> flat_like floor_<settle> floor_a floor_apart
        floor_away floor_hot floor_with flop_cheek flop_slipper follow_your foot_com foot_like for_a for_age
        for_lunch for_the for_turn for_your forearm_<chat> forget_the from_<part> front_hand front_leg
        gaze_<place> gentl_<do> gentl_<move> gentl_pull get_off get_to ghost_yourself give_a glue_the glue_your
        glut_med go_<less> go_<more> go_<place> go_after go_hard go_soft go_tight go_up go_weightles goe_<attend>
        goe_<far> goe_<place> goe_quiet goe_straight goe_wide got_a grap_<place> grap_under gras_<place>
        gras_apart gravit_<swap> gravit_do grip_and grip_it ground_a grow_<more> grow_<place> grow_an grow_out
        grow_taller grow_up grumbl_<more> grumbl_more hamstring_pull hand_<attend> hand_end hand_into hand_soft
        handl_get handl_like hang_<attend> hang_off hang_ther hav_a hav_it have_found head_<more> head_<not>
        head_<place> head_rush head_the head_up headlight_<place> headlight_forward hear_about heart_<more>
        heart_<place> heart_over heart_up heav_<attend> heav_<place> heav_heel heav_on heel_<attend> heel_into
        heel_push held_it hello_<attend> hello_<part> hello_hamstring here_the here_to high_<more> high_up
        hip_<attend> hip_<more> hip_level hip_rock hip_that hip_to hold_<chat> hold_<more> hold_up hold_you
        how_the hug_a i_<settle> i_aint i_got i_hope i_take if_noth imagin_<chat> imagin_your in_<less> in_<num>
        in_breath in_case in_half in_like in_on in_one in_slow in_the in_thi in_till in_your insid_of into_the
        invisibl_<attend> invisibl_as iron_board is_<place> is_all is_allow is_happen is_in is_it is_its is_just
        is_on is_perfect isnt_failur isnt_it it_<far> it_acros it_at it_burn it_clos it_in it_learn it_let
        it_look it_may it_off it_pass it_shav it_should it_stop it_till it_touch it_under itll_come its_<part>
        its_<place> its_a its_all its_bottom its_bum its_like its_our its_round its_that its_thos its_try
        its_water its_wind ive_<chat> jaw_<do> jaw_<settle> jaw_thi join_<place> join_in just_<kit> just_<part>
        just_along just_hook just_rop just_visit keep_room keep_tension keep_your kne_and kne_bend kne_over
        knee_a knee_point knee_sink knee_track kneecap_slid knit_<place> knit_down know_<chat> know_you knuckl_to
        lamp_post last_to lat_and lead_from lead_with lean_<part> lean_back leg_grumbl leg_has leg_only
        legsll_follow lengthen_<place> let_<pace> let_anybod let_gravit let_your level_<part> level_shoulder
        lift_from lift_go lift_on like_<harm> like_butter like_draw like_test like_ther littl_quieter littl_toe
        long_<part> long_iron long_neck look_a look_ahead look_at look_for look_once loos_<part> loos_<settle>
        low_<part> low_<place> low_down lower_<place> lower_trap lung_<place> lung_on machin_and make_yourself
        may_<chat> may_<less> mayor_walk me_what me_why medal_<place> medal_on metr_<place> metr_out mind_<far>
        mind_higher moment_at more_lat mov_<far> mov_them much_<attend> much_is mud_off mug_sit muscl_with my_nan
        my_tea name_and nan_call neck_<attend> neck_<pace> neck_<place> neck_long never_lik newspaper_<place>
        newspaper_under next_<num> next_cone next_door nick_it no_<far> no_<harm> no_<ill> no_further no_more
        no_offenc no_saucer no_strain nobod_here nobody_spill normal_for nose_to nosy_at not_<harm> not_<ill>
        not_down not_escalator not_gwilym not_hav not_hot not_mov not_of not_on not_sore not_spill not_twang
        noth_<less> noth_else noth_in noth_to nowher_<place> of_<swap> of_bag of_bathroom of_be of_cramp of_metr
        of_tea of_the of_them of_thi of_wood of_you off_a off_it off_you on_<chat> on_duty on_fire on_me
        on_purpos once_youv one_<attend> one_<wrong> one_at one_bit one_for one_just one_long one_piec one_runner
        one_slap one_straight only_heavier only_higher only_hook open_<place> open_and or_<attend> or_as
        other_like our_waiter out_of outsid_<far> outsid_edge over_<chat> over_<harm> over_<part> over_is
        over_now over_paint over_toe over_you paint_your pal_hand part_<place> peer_<place> peer_over
        pencil_<place> pencil_between peopl_are perfect_<wrong> perfect_usual pinch_a pint_<place> pint_on
        plac_ever plank_of plank_that plank_with pocket_area pocket_is point_wher pool_<not> poor_thing pour_the
        pres_<place> pres_down pres_even pres_the pres_through proud_<part> proud_chest pull_both pull_with
        pump_the punch_the push_<part> push_back push_it push_yourself put_a put_your quad_hav quick_<part>
        quick_hand quiet_<take> quiet_and quiet_feet quit_normal reach_<attend> reach_like rear_delt relax_your
        rib_<place> rib_button rib_down ring_are ring_stay rise_your room_for rotator_cuff round_<chat> round_you
        run_<attend> run_<do> run_<kit> run_step run_tall runner_ignor same_<kit> same_number sat_on say_<chat>
        say_hello screw_your seat_of second_heart second_toe see_<attend> see_if seem_<attend> seem_as seen_a
        send_your seriou_<num> seriou_one serratu_is shak_<part> shak_a shar_it shin_on should_<attend>
        should_<do> should_<move> should_<settle> should_feel shoulder_<far> shoulder_<more> shoulder_<place>
        shoulder_away shoulder_blad shoulder_down shoulder_face shoulder_level shoulder_soft shouldnt_be
        sid_<place> sid_and sid_of sid_on side_<chat> sit_<attend> sit_on sit_tall skip_with skull_crusher
        sleep_calm slid_<more> slid_up snap_and so_<move> soft_hand soften_on soften_your softer_<part>
        softer_jaw some_till somebod_you somebody_<swap> somebody_pull someth_that sore_<place> sore_down
        sound_dreadful sound_the spill_<num> spill_one spot_<place> spot_on spread_<place> spread_out squash_a
        squeez_a stab_<chat> stab_is stab_you stair_<chat> stand_<far> stand_<part> stand_ful stand_leg star_of
        stay_<attend> stay_<far> stay_<more> stay_<pace> stay_button stay_level stay_light stay_long stay_low
        stay_narrow stay_touch stead_<attend> stiff_<attend> stiff_<place> stiff_as stiff_on stir_<more>
        stir_anyth stop_nag stop_you str_<place> str_on straight_<attend> straight_<part> straight_<settle>
        straight_knuckl straight_leg straight_line strain_<place> strain_in stretch_down suppos_to switch_<place>
        switch_on tabl_with tail_<place> tail_bone tail_under take_<not> take_<swap> take_no take_over
        tall_<attend> tall_as tall_like taller_<chat> taller_first target_for tea_<place> teeth_<place>
        teeth_apart ten_<part> tension_<place> than_that that_<place> that_<swap> that_bum that_do that_fac
        that_fine that_hip that_isnt that_should that_wee that_wher that_work the_<far> the_<less> the_<num>
        the_<part> the_<wrong> the_achill the_arch the_armpit the_backrest the_backsid the_bel the_belt the_bench
        the_bingo the_blad the_bone the_breastbon the_bunt the_buttock the_calf the_cellar the_chassi the_cheek
        the_crab the_deep the_effort the_empt the_far the_fat the_feel the_floor the_foot the_forearm the_front
        the_glut the_ground the_hair the_handl the_horizon the_knee the_kneecap the_legsll the_lino the_loop
        the_mayor the_meat the_mid the_name the_next the_oak the_obliqu the_outsid the_pelvic the_power the_pubic
        the_quaysid the_rib the_ride the_same the_shop the_sid the_sidewalk the_skull the_socket the_stair
        the_stand the_sun the_swell the_tail the_target the_thigh the_top the_track the_tricep the_underneath
        the_wallet the_whol the_world the_wreck their_<move> their_keep them_big ther_<far> ther_<not> ther_a
        ther_and ther_like ther_nobod ther_till thes_<far> they_<not> they_dont theyr_<chat> theyr_done
        theyr_draw theyv_<chat> thi_com thi_finisher thi_is thi_one thigh_<settle> thigh_here think_<attend>
        think_<place> third_<pace> third_minut thos_<chat> thos_were though_your through_treacl tight_<air>
        tight_bel tight_jean tip_it tirednes_all to_<attend> to_<harm> to_<part> to_ankl to_be to_break to_corner
        to_drag to_ear to_file to_hair to_heel to_hold to_impres to_kne to_know to_opposit to_see to_shak
        to_spill to_turn to_wake toddler_with toe_<far> toe_and toe_press toe_spread tongu_<place> tongu_behind
        top_like top_shelf track_<place> track_over track_with trap_<swap> trap_are trap_do tray_<place> tray_on
        trembl_is tricep_<settle> tricep_take tum_<attend> tum_muscl turn_<chat> turn_over turn_you two_<chat>
        two_<do> two_bucket two_headlight two_jug two_plat two_tap two_year under_each underneath_side until_you
        up_in up_toward upper_trap waist_<more> waist_off waist_up waiter_again wall_<place> wall_and wall_behind
        want_it warm_<not> warm_not wash_<place> wash_out watch_the water_<place> way_<far> way_<more> way_down
        way_past way_up we_are wee_teardrop weight_<settle> were_after were_go were_strengthen were_train
        were_visit wet_<kit> wet_<swap> wet_coat wet_towel what_<chat> what_thi what_were what_your whatever_it
        wher_a wher_the who_<chat> who_were whoever_opposit whol_<part> whol_body whol_foot whol_hand will_be
        will_feel with_<swap> with_ever with_manner with_no with_thes with_thi with_your without_mov wob_bit
        won_someth wonk_t work_the world_<place> world_down would_<settle> would_<take> would_sit wrap_<place>
        wring_<place> wring_out wrist_<place> wrist_flat wrist_straight wrong_way yawn_dur you_<do> you_and
        you_by you_do you_dont you_rise you_round you_should you_shouldnt you_theyr you_wanna you_wiggl
        you_wonder youll_<attend> youll_feel youll_see your_<swap> your_<wrong> your_abs your_armpit your_back
        your_backsid your_big your_chang your_chin your_coat your_crack your_finger your_get your_glut your_hat
        your_heart your_hold your_jaw your_jump your_kneecap your_lat your_look your_mak your_obliqu your_other
        your_peer your_pelvi your_perch your_pocket your_pour your_say your_sho your_shov your_sit your_slipper
        your_sock your_spot your_step your_t your_tongu your_waist your_watch yourself_<attend> yourself_as
        yourself_away youv_<harm> youv_check youv_held youv_seen youv_won zip_<more> zip_<place> zip_up
      `,
    ],
    [
      -0.2,
      `
        <air>_in <attend>_after <attend>_and <attend>_arm <attend>_be <attend>_enough <attend>_has <attend>_into
        <attend>_knee <attend>_off <attend>_one <attend>_out <attend>_over <attend>_shoulder <attend>_shut
        <attend>_sit <attend>_someth <attend>_theyr <attend>_thi <attend>_though <attend>_train <attend>_treacl
        <attend>_wher <attend>_you <chat>_about <chat>_all <chat>_and <chat>_as <chat>_can <chat>_done
        <chat>_feel <chat>_in <chat>_just <chat>_like <chat>_not <chat>_pull <chat>_see <chat>_shav <chat>_to
        <chat>_were <chat>_you <do>_away <do>_forward <do>_into <do>_it <do>_off <do>_the <do>_them <do>_to
        <do>_up <do>_your <far>_and <far>_as <far>_of <far>_one <far>_than <far>_the <far>_with <far>_your
        <harm>_leg <harm>_under <kit>_as <kit>_at <kit>_is <kit>_off <kit>_run <kit>_shut <kit>_to <kit>_up
        <more>_a <more>_like <more>_to <more>_with <move>_a <move>_away <move>_by <move>_forward <move>_in
        <move>_it <move>_off <move>_one <move>_over <move>_them <move>_to <not>_a <not>_do <not>_hold <not>_like
        <not>_out <num>_big <num>_foot <num>_metr <num>_of <num>_second <num>_to <num>_with <pace>_at <pace>_one
        <part>_abov <part>_away <part>_back <part>_be <part>_becaus <part>_befor <part>_between <part>_bone
        <part>_cramp <part>_dont <part>_eye <part>_fac <part>_feel <part>_first <part>_flap <part>_foot
        <part>_from <part>_help <part>_if <part>_is <part>_light <part>_like <part>_of <part>_out <part>_round
        <part>_stretch <part>_tight <part>_till <part>_touch <part>_under <part>_upright <part>_want <part>_width
        <place>_and <place>_arm <place>_as <place>_at <place>_between <place>_down <place>_ever <place>_foot
        <place>_for <place>_from <place>_here <place>_into <place>_knee <place>_long <place>_one <place>_onto
        <place>_out <place>_over <place>_than <place>_that <place>_them <place>_through <place>_under
        <settle>_down <settle>_long <settle>_on <settle>_the <settle>_with <swap>_it <swap>_of <swap>_up
        <swap>_your <take>_in <take>_is <take>_on <wrong>_from <wrong>_on <wrong>_up a_<attend> a_<chat> a_<far>
        a_<ill> a_<kit> a_bell a_cat a_duck a_few a_glas a_littl a_lot a_pair a_pull a_shed a_touch a_wee able_to
        about_a after_your all_of all_the all_your and_<do> and_<far> and_<move> and_<not> and_<settle>
        and_<take> and_let and_look and_shoulder are_<attend> are_<more> are_<place> are_<wrong> are_go are_heav
        are_like are_on arm_<attend> arm_<place> arm_<swap> arm_long arm_that arm_to as_<chat> as_<far>
        as_<place> as_though as_you as_your at_<chat> at_me at_that at_the at_you away_and away_as back_<not>
        back_from back_like back_long back_to bag_of balanc_<place> balanc_on band_<place> be_able befor_<chat>
        befor_you behind_it bell_<place> bend_your big_one bit_<far> bit_<more> bit_<place> blad_<attend>
        blad_<place> blad_like bon_<attend> both_<part> both_<take> both_feet both_hand bum_<place> by_your
        call_it cat_asleep chair_<place> chest_<attend> chest_tall com_<place> come_<place> do_<more> do_<not>
        do_<place> do_up dont_<settle> door_<place> door_shut down_to driv_the each_shoulder each_side elbow_flap
        elbow_go end_of eye_level fall_<place> feel_<attend> feel_a feel_like feet_<place> finger_<place>
        flat_<place> floor_<num> floor_in floor_just floor_two foot_on for_<num> for_it for_thi forearm_<place>
        from_<place> from_behind front_foot front_knee get_<less> go_down go_long go_to got_the grow_<attend>
        grow_tall had_a hand_<place> hand_behind hang_your has_<num> head_<attend> head_down head_like head_to
        heav_<far> heav_<less> heav_<num> heav_<take> heav_enough heav_feet heav_one heav_shoulder heel_<do>
        heel_and heel_down hug_the i_<not> i_<swap> i_can if_a if_it if_the if_youv in_a in_here in_toward
        into_it is_<swap> is_a is_not is_your it_<do> it_<pace> it_<place> it_<settle> it_a it_com it_down
        it_feel it_flat it_from it_go it_on it_to its_<less> its_<not> its_just its_only itself_<place>
        just_<attend> just_<place> just_in keep_it keep_them kick_from kne_<attend> kne_<place> knee_<attend>
        knee_<place> knee_down knee_soft knee_that knee_to knuckl_<place> last_<num> leav_the leg_<attend>
        leg_<more> leg_up let_it let_the lift_the lift_with light_<place> light_hand like_an like_it like_theyr
        like_thi like_train littl_<do> littl_<part> long_and long_arm long_as look_after lower_<attend>
        lower_like make_it neck_<part> neck_bone nice_and nose_<place> not_<attend> not_<do> not_<wrong> not_like
        not_out noth_<more> noth_more of_<harm> of_<num> of_it of_punch of_sher of_water on_<num> on_each on_ever
        on_one on_to one_<part> one_<settle> one_of one_with only_<attend> only_<part> onto_your open_like
        open_the other_<part> other_foot out_<attend> out_like over_the over_your pad_to pop_<place> pull_apart
        pull_it punch_<place> punch_through push_<more> push_<place> push_off push_up put_it rest_<place> rest_on
        right_<part> right_<place> roll_<place> round_your run_from sher_<place> sher_on should_the shoulder_and
        side_to skirt_board so_<chat> soft_<part> soft_knee some_of sore_<part> sound_<attend> sound_like
        stand_<more> start_to stay_<place> stay_down stay_tall step_<place> stop_<place> str_pull
        straight_<place> straight_down straighten_the tailbon_<place> tall_<place> tall_spin tall_through
        than_<chat> than_you that_<chat> that_<more> that_<settle> that_a that_all that_foot that_pay that_you
        the_<chat> the_<settle> the_<swap> the_air the_ankl the_box the_bridg the_bum the_chair the_dumbbell
        the_edge the_elbow the_feet the_heav the_heel the_kne the_last the_light the_lung the_mirror the_moment
        the_neck the_other the_pad the_rail the_roller the_seat the_shrug the_skirt the_small the_towel
        the_weight them_<attend> them_<place> ther_for thes_are through_your thumb_<place> till_its tip_from
        to_<num> to_<place> to_<settle> to_<swap> to_<wrong> to_lift to_side to_the to_your toe_<place> toe_on
        top_<part> touch_your toward_the train_track turn_the turn_your two_<far> two_big under_your until_your
        up_like up_on up_with walk_like walk_your want_<place> weight_off weight_on weight_over were_a when_your
        wher_<chat> whol_arm wide_<attend> with_an work_<place> you_<attend> you_<far> you_<less> you_<move>
        you_can you_feel you_like you_look you_on you_were youll_be youll_want your_<chat> your_<far> your_<kit>
        your_<less> your_<more> your_<move> your_<not> your_<pace> your_about your_all your_balanc your_bottom
        your_bum your_chest your_forearm your_hip your_kne your_knee your_lap your_name your_not your_on
        your_palm your_rib your_shav your_spin your_weight your_whol your_wrist youv_stop
      `,
    ],
    [
      -0.4,
      `
        <chat>_it <chat>_on <part>_at <part>_long <part>_off <part>_on <place>_on crown_of heel_<place> if_your
        leg_<place> like_a off_the on_the stay_on that_your the_<harm> the_crown the_hand the_head the_way
      `,
    ],
    [-0.6, '<place>_to'],
  ],
  phrase: [
    [0.8, 'focus-sure'],
    [0.4, 'focus-hint focus-likely'],
    [0.2, 'execution-sure tempo-hint'],
    [
      -0.2,
      `
        easier-likely equipment-likely equipment-sure praise setup-likely tempo-sure transitions
      `,
    ],
    [
      -0.4,
      `
        caution-hint caution-likely caution-sure chat dose_only easier-hint empty_clauses range-likely setup-sure
      `,
    ],
    [-0.6, 'breathing-sure easier-sure harder-sure range-sure'],
  ],
  start: [
    [0.6, 'not_on_your your_a'],
    [
      0.4,
      `
        <do>_<attend> <not>_<place> <part>_<move> <take>_<attend> a_bit_of back_of back_of_the head_up it_help
        its_a its_the look_at_the not_at not_at_your not_the not_your pick_a push_the that_who weight_in you_want
      `,
    ],
    [
      0.2,
      `
        <air>_<pace> <attend>_<attend> <attend>_<less> <attend>_<place> <attend>_<settle> <chat>_<part>
        <do>_<far> <far>_<more> <less>_<place> <move>_<attend> <move>_<more> <move>_<pace> <not>_<ill>
        <not>_<less> <not>_<part> <num>_<attend> <pace>_<attend> <pace>_<do> <part>_<attend> <place>_<attend>
        <settle>_<attend> <settle>_<chat> <settle>_<less> <swap>_<chat> <swap>_<far> <swap>_<more> <take>_<chat>
        <take>_<more> a_banana a_bit a_dull a_dull_ache a_gentl a_gentl_pull a_hand_in a_pres a_seriou
        a_seriou_one a_warm about_wher abov_the_kneecap all_in all_in_one all_one all_one_piec all_the_weight
        all_tricep arm_are armpit_to armpit_to_knee as_if_you at_your_kne back_flat back_flat_like back_leg
        back_leg_only back_squash balanc_a bar_land bar_land_in bar_over bar_over_the behind_the_shoulder
        belt_buckl belt_buckl_to bend_the bend_the_back bend_the_bar between_the bicep_on bicep_on_the big_chest
        big_toe big_toe_press body_in body_in_one both_hip both_kne both_kne_bend both_the_same bottom_waist
        bottom_waist_up br_the_whol calv_and can_you cat_on cat_on_a catch_it_with chas_somebod cheek_of
        chest_and chest_and_hip chest_goe_wide chest_lift chest_open chest_proud chest_to_kne chin_tuck chin_wher
        chin_wher_it control_the control_the_middl could_you could_you_wiggl crown_of crown_of_the crush_the
        curl_the curl_the_hip dont_ask dont_ask_me dont_be_alarm dont_break dont_break_it dont_drop dont_drop_it
        dont_drop_the dont_heav dont_let_anybod dont_look dont_look_at dont_spill dont_spill_it down_by
        down_by_your down_low down_the down_the_quaysid drag_it drag_it_up driv_your driv_your_elbow
        ear_over_shoulder ear_to ear_to_ankl elbow_finish elbow_finish_high elbow_stay elbow_stay_narrow
        elbow_straight even_feet ever_time everyth_pull everyth_pull_in expect_a expect_a_bit eye_a eye_on eye_up
        feel_it feel_the feel_your finger_right finger_right_to flop_cheek flop_slipper for_a for_a_moment
        front_of front_of_the get_off_it ghost_yourself ghost_yourself_up glue_the glue_the_belt glue_your
        glue_your_shoulder go_tight grip_it grip_it_like grow_an grow_an_inch grow_taller grow_up hamstring_pull
        hand_end hand_end_up hand_full hand_full_of hand_soft hang_in_the hang_off hang_off_you hang_ther
        hang_ther_till have_a_nosy head_in headlight_forward heart_up heav_heel heel_heav heel_push
        heel_push_away heel_stay_heav heel_to heel_to_ear heel_to_hair hello_hamstring here_the hip_level
        hip_level_shoulder hip_squar hip_stay_level hip_to hip_to_opposit hip_up_high hold_it_till i_aint
        i_aint_count i_could_put i_got i_got_a i_take if_noth imagin_your in_front in_front_of in_on in_on_a
        inner_thigh insid_of insid_of_the into_the into_the_bench it_cant it_cant_be it_help_with it_help_you
        it_is_normal it_is_the it_may it_pass it_should it_touch its_0_move its_a_drawer its_a_shrug its_a_skip
        its_a_time its_all its_all_bun its_bottom its_bum its_like its_not_back its_our its_our_waiter its_that
        its_the_deep its_the_hip its_the_toddler its_the_underneath its_try its_try_to its_water its_wind
        its_your_bum keep_it_clos keep_room keep_room_for keep_tension keep_the_back keep_the_pelvi keep_the_tum
        keep_your_chest keep_your_eye keep_your_neck keep_your_shoulder kick_the_wall kne_lock kne_over
        knee_track knee_track_over knuckl_point knuckl_point_straight lat_and lat_and_more lead_with
        lead_with_your lean_back_on lean_your_heart let_gravit let_gravit_do let_the_back let_the_floor
        let_the_ground let_your let_your_back let_your_head let_your_jaw lift_from lift_from_the like_a_cat
        like_a_coat like_a_door like_a_pendulum like_butter like_draw like_draw_a like_somebody like_the_mayor
        like_ther like_ther_a like_your_show like_youv like_youv_won listen_for listen_for_your littl_toe
        long_neck look_a look_a_metr look_once lower_trap lower_trap_do make_yourself make_yourself_as near_the
        neck_long neck_stay neck_stay_long never_mind_higher no_further no_saucer no_strain no_strain_in
        nobody_spill nose_over_the not_a not_a_fl not_a_squat not_back not_behind not_behind_the not_down
        not_down_at not_escalator not_gwilym not_high not_in_the not_just_the not_on not_the_floor not_up_in
        not_your_back not_your_sho noth_else noth_else_mov noth_to noth_to_hold on_purpos on_the_horizon
        once_youv once_youv_check one_at one_at_a one_long one_long_iron one_straight only_heavier or_a_wonk
        or_as out_as_you paint_your paint_your_leg pelvic_floor_the pinch_a pocket_area pres_down pres_down_like
        pres_down_through pres_even pres_the pres_the_floor proud_chest pull_both pull_both_way pull_the_elbow
        pull_with pull_with_the pull_your pull_your_bel pump_the pump_the_arm punch_the push_back push_the_ground
        push_the_ring push_the_whol push_the_world push_through_the push_yourself push_yourself_away put_your
        put_your_feet quick_and quick_and_light quick_hand reach_for reach_for_the reach_the_top reach_up_at
        rear_delt relax_your rest_your_tongu rib_down rib_knit_down rib_stay_button rib_toward_your ring_stay
        ring_stay_glu rotator_cuff run_tall run_to run_to_the same_number say_hello screw_your see_if see_if_its
        send_the_breath send_your serratu_is serratu_is_the shoulder_blad_slid shoulder_down shoulder_face
        shoulder_face_me shoulder_soft show_me_your shut_a shut_a_car sid_and sit_tall sit_tall_first sit_up
        sit_up_tall snap_and snap_and_float soft_hand soften_your soften_your_kne softer_jaw softer_jaw_thi
        somebody_pull somebody_pull_your spread_the squash_a squash_a_grap squeez_a squeez_that squeez_the_seat
        squeez_your_bum stand_ful stand_up_out star_at stay_light stay_long stay_low stiff_as stiff_as_a
        switch_on that_bum that_fac that_fac_the that_not_for that_should that_should_be that_the_engin
        that_the_feel that_the_plac that_the_swell that_what_were that_wher that_wher_it that_who_were that_work
        that_your_second that_your_spot the_arm the_arm_are the_arm_only the_back the_band_want the_bell
        the_bell_turn the_body the_bottom the_cone the_head the_head_last the_head_the the_kne_only the_knee
        the_leg the_next the_next_one the_one the_ring_are the_skull the_skull_crusher the_wob the_wob_bit
        ther_a_str ther_nobod ther_nobod_here they_dont_lift thi_com thi_com_from thi_is_one third_one tight_jean
        till_it tip_it_at tirednes_all tirednes_all_over tricep_take tricep_take_over try_to try_to_drag
        tuck_a_newspaper two_bucket two_headlight under_the upper_trap upper_trap_are warm_not watch_the
        watch_the_kneecap watch_the_oak watch_your_kneecap we_are we_are_work weight_even weight_in_the
        weight_in_your were_go when_the_leg wher_a wher_the wher_you whol_body whol_foot wrist_flat
        wrist_straight yawn_dur yawn_dur_thi you_can_put you_dont_go you_go_up you_never_lik you_round
        you_shouldnt you_shouldnt_be you_wanna you_want_it you_want_that you_will_feel youll_feel youll_feel_it
        your_after your_arm_are your_hand_are your_look your_look_at your_look_for your_mak your_mak_a
        your_not_hav your_not_to your_say your_step your_step_over youv_got_a youv_held youv_held_it youv_seen
        youv_seen_a zip_up
      `,
    ],
    [
      -0.2,
      `
        <air>_<attend> <attend>_<do> <attend>_<far> <attend>_<take> <chat>_<attend> <chat>_<chat> <chat>_<move>
        <chat>_<not> <chat>_<swap> <far>_<do> <far>_<move> <kit>_<place> <more>_<part> <move>_<num> <not>_<chat>
        <not>_<wrong> <num>_<part> <pace>_<place> <part>_<chat> <part>_<do> <part>_<less> <part>_<settle>
        <place>_<part> <settle>_<place> <take>_<place> a_pull all_of all_the_way back_to bend_your body_like_an
        chest_tall feel_it_from from_the_hip front_knee grow_tall heav_feet heav_shoulder heav_shoulder_blad
        if_the if_ther if_your is_your it_is_a its_only its_the_insid its_your_rib keep_it keep_them
        keep_your_hip lead_with_the let_it let_your_arm let_your_toe lift_the like_a_tabl like_the like_your_in
        like_your_shav long_arm look_at_that look_at_you lower_like make_it nice_and not_at_the not_from_the
        not_like not_out not_out_like not_the_toe on_your open_the pinch_your_shoulder pull_it round_the same_as
        should_the shoulder_away shoulder_away_from shoulder_blad_in soft_knee squeez_the_bum stay_tall tall_spin
        tall_through tall_through_the that_a that_all that_how that_is that_wher_the that_your the_hip
        the_hip_flexor the_other thes_are thi_is_the think_of_punch think_of_the to_the turn_the turn_your
        weight_on weight_on_the with_the you_are your_all your_back your_bum
      `,
    ],
    [-0.4, 'like_your'],
  ],
  word: [
    [0.6, 'armpit belt calv heav normal pocket spill squeez thigh warm wher'],
    [
      0.4,
      `
        a abs ache after ahead be bel between big blad bum cheek coat collarbon crack dull else everyth expect
        feel floor glut grip ground grow hip inner kneecap lat lead listen loos may muscl newspaper not noth
        notic obliqu ought pelvic push rib rop sens shak should side spot spread star tight tricep tug waist
        wednesda your
      `,
    ],
    [
      0.2,
      `
        achill acros alarm all anyth apart area as attention away backrest backsid banana bath bathroom belli
        belong bench bicep bingo boat body both bra brac brew broad buckl bunt buttock button calm case cellar
        chassi chest church clos coffe coin complaint cone control could crab crisp crush crusher cuff cup deep
        deer delt door downstair drag drawbridg drawer dreadful dur duty effort elastic empt end engag engin
        escalator even ever exercis eye failur file find finisher flipper float flop fog follow forehead forget
        from front garden gaze gentl ghost glue grap gravit grown guitar hair hammi hammock hang hav head
        headlight heal heart heavier hedg hello here high hing hook hope horizon hot hurri ice imagin impres
        insid invisibl is isnt its jaw jean join jug jump just lake lamp learn legsll lengthen like lino look low
        machin mayor meat med medal meet melt metr middl moment most mov much mud mug nag nan neck neglect next
        nosy number odd offenc only paint pan part pass peer pelvi pendulum perfect pick pictur piec pint plac
        plaster poor post pour power press puddl pull pump purpos quad quaysid quieter quit reach rear relax ride
        rise root rope rotator runner sand say scal scrap screw see seem seen serratu shar shelf shift shouldnt
        shout shut sid sidewalk skull slap sleev slipper small snap snug somebody someon sor sore sound spe spr
        spring squash stab stair stan stand stiff stir str strengthen string suitcas sun suppos t tail tall
        taller target teardrop teeth tension test that the theyv thi thing think through till tirednes toward
        track trap tray trembl try tum twang underneath upper visit wake wall walnut wanna want wardrob watch
        weightles were wet which whol widen wind wing wonder wonk wood world wr wring yawn yourself zip
      `,
    ],
    [
      -0.2,
      `
        able about afterward against air alway an ankl another any anybod anyon arent arm bad band beat befor
        begin bent best better bin block blow bor bounc box br build call came can centimetr cheat check circl
        clear clench com count cramp crown cut desk did dig dip doe dont drop duck ease eight either enough
        everyon exhal fac fall fast feet few fifteen fill fingertip finish first fist five fold foot football for
        forward fridg friend full give go gone gossip got half halfwa hammer has haul have hear height her holida
        hop hover hundr id ill im instead itself job jog joint jumper kettlebell kitchen land lap left leg length
        less let lift littl liv long lung make march mate mean medicin might milk minut mirror miss month
        movement my near need never nice nobod nobody off onto operat overhead own pair palm park paus pay pedal
        peel peopl phon pleas plent pop puff quicker rail rais read remember rep rest ridg roller roof row said
        same seat second settl sharp shed sher shin shop shorten sideway singl sink six skirt slip soft some sort
        split squar squat stack stay steal step straight straighten stretch strid stronger stuck support sure sw
        swap tak take thank then thes they theyr thos thre thumb tilt tiny together too took trampolin trip twent
        twic unles until up us use van wallpaper way we week weight wheel when wider width wrist writ youd
      `,
    ],
    [
      -0.4,
      `
        0 again becaus breath bridg chair come dumbbell four hand i keep knee last leav lot or roll short so
        start still stop them walk
      `,
    ],
    [-0.6, 'kne out'],
    [-0.8, 'if'],
  ],
} as const satisfies CueWeights
