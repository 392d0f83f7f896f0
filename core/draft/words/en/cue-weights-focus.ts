/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind focus; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const FOCUS_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [0.6, 'attend'],
    [0.4, 'part'],
    [0.2, 'move place'],
    [-0.2, 'air chat do ill more not settle wrong'],
    [-0.4, 'less num pace swap'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.8, 'not'],
    [0.6, '<attend> grow its loos think your'],
    [0.4, 'eye feel head imagin listen pick reach rib squeez tall thi wher'],
    [
      0.2,
      `
        <far> <move> <part> ahead all and armpit at bar bel belt big by chas chest collarbon control crack crush
        ever everyth fift flop gaze ghost glue grip hammi hang headlight heal heart heav hello hip insid it lead
        lengthen like long look motion neck noth notic on paddl paint pictur pinch posh pres pretend proud puddl
        pull pump punch push quick run see send shut smooth snap softer spot spread spring squash stan stand star
        stead stiff tailbon taller the third tight till trust try tum under upright watch whol you youll zip
      `,
    ],
    [
      -0.2,
      `
        0 <air> <do> <kit> <less> <more> <place> <settle> <swap> <take> any anybod becaus breath chang check come
        do draw drop ease elbow feet finger first for give go half hamstring hand i im in ive keep land leav leg
        lift lower make no nobod off one open or other over peel pleas quiet remember roll same shin short slid
        slow soft some start step still stop straight straighten take thes theyr thumb to touch turn wait walk
        work
      `,
    ],
    [-0.4, '<num> <wrong> arm as dont kne up'],
    [-0.6, 'if toe'],
  ],
  given: [
    [0.2, '<air> <chat> <do> <less> <move> bel check down go like too'],
    [-0.2, 'are feel in shoulder the your'],
  ],
  last: [
    [0.6, 'blad'],
    [
      0.4,
      `
        after ahead bum feet heav heel hip hook kneecap leg level loos neck rop tall turn
      `,
    ],
    [
      0.2,
      `
        achill area armpit asleep away back ball banana bath bench bit broad bucket bun calf clock clos coat cone
        corner drawbridg dull elastic elbow end escalator feel flat flipper float forearm front glut ground
        gwilym hair hammi hammock head headlight heal heavier hedg high horizon hurri impres insid is it jean jug
        knee lake lead light long middl motion move narrow newspaper no number plac plat pocket point ponytail
        posh post press puddl purpos quaysid quieter relax ride same sand shelf shift sho shoulder shut sidewalk
        slap slipper smooth sock spe spill spot spr spread spring squat stan still str string swell t tailbon
        taller teardrop thigh thumb tight tighter time tip toe tomato treacl tricep up visit wanna was watch
        weight wher why wide wobbl wood work
      `,
    ],
    [
      -0.2,
      `
        0 afterward again air all are arm baby be bear behind bent bin body bottl bottom breath bridg button
        chair chicken count cramp duck dumbbell ear eye four go grip half height home in job kne land look lot
        mat mirror name one other over paint pair pay plank pleas pull rais reach rest ring room row seat sid
        soften straight stretch strid that think through top track two van walk well wheel wrist
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
    [0.6, '<chat>_after <far>_toe arm_are push_the the_<attend> your_a'],
    [
      0.4,
      `
        <attend>_if <chat>_a <chat>_want <harm>_a <harm>_it <kit>_buckl <kit>_like <not>_back <not>_mov
        <not>_spill <part>_go <swap>_buckl a_<wrong> all_<num> all_<part> and_star are_just as_a as_if at_it
        belt_buckl between_your big_toe chest_<more> chest_up down_the ear_to feel_it from_your front_of
        grow_<place> is_all it_help it_like its_the listen_for not_<part> not_at not_back on_a over_<part> pick_a
        pull_your side_of spill_it star_at tea_<place> tea_on that_<not> the_back the_ground the_middl the_side
        through_the till_it to_<part> toe_<do> toward_your want_to weight_in whol_<part> with_your you_want
        your_<attend> your_after your_elbow
      `,
    ],
    [
      0.2,
      `
        0_move <air>_and <air>_button <air>_go <air>_goe <air>_to <attend>_ahead <attend>_as <attend>_at
        <attend>_between <attend>_both <attend>_butter <attend>_com <attend>_draw <attend>_forward <attend>_go
        <attend>_it <attend>_just <attend>_line <attend>_neck <attend>_on <attend>_once <attend>_somebody
        <attend>_stay <attend>_switch <attend>_the <attend>_ther <attend>_tight <attend>_to <attend>_two
        <attend>_up <attend>_waist <attend>_wet <chat>_aint <chat>_anybod <chat>_balanc <chat>_by <chat>_chang
        <chat>_chest <chat>_cone <chat>_could <chat>_crack <chat>_door <chat>_forward <chat>_gravit <chat>_had
        <chat>_hamstring <chat>_hard <chat>_heav <chat>_hold <chat>_jump <chat>_mak <chat>_peer <chat>_perch
        <chat>_pour <chat>_push <chat>_rise <chat>_round <chat>_say <chat>_shov <chat>_step <chat>_tea
        <chat>_theyr <chat>_tight <chat>_wait <chat>_wanna <chat>_why <chat>_wiggl <do>_ful <do>_go <do>_in
        <do>_like <do>_tall <do>_that <do>_ther <do>_through <do>_you <do>_yourself <far>_chest <far>_down
        <far>_heavier <far>_hook <far>_in <far>_it <far>_quieter <far>_run <far>_shoulder <far>_up <far>_wing
        <far>_you <harm>_and <harm>_as <harm>_bit <harm>_coat <harm>_on <harm>_over <harm>_spread <harm>_towel
        <harm>_up <ill>_a <kit>_behind <kit>_in <kit>_into <kit>_over <kit>_stay <kit>_want <kit>_with <less>_as
        <less>_be <less>_bel <less>_it <less>_jaw <less>_jean <more>_cone <more>_door <more>_from <more>_in
        <more>_shoulder <more>_toward <more>_youv <move>_an <move>_button <move>_everyth <move>_from <move>_heav
        <move>_level <move>_light <move>_low <move>_narrow <move>_room <move>_taller <move>_tension <move>_that
        <move>_the <move>_through <move>_touch <move>_up <move>_you <move>_your <move>_yourself <not>_at
        <not>_behind <not>_down <not>_drop <not>_else <not>_escalator <not>_for <not>_gwilym <not>_hav <not>_here
        <not>_high <not>_lik <not>_look <not>_mind <not>_one <not>_saucer <not>_stop <not>_the <not>_tight
        <not>_to <not>_your <num>_at <num>_bit <num>_bucket <num>_finger <num>_get <num>_headlight <num>_jug
        <num>_long <num>_move <num>_piec <num>_slap <num>_straight <num>_tap <pace>_do <pace>_heart <pace>_in
        <pace>_is <pace>_the <part>_are <part>_as <part>_bend <part>_blad <part>_button <part>_do <part>_flat
        <part>_heav <part>_here <part>_hip <part>_is <part>_leav <part>_me <part>_only <part>_open <part>_pocket
        <part>_rock <part>_should <part>_slid <part>_spread <part>_squash <part>_stay <part>_straight <part>_th
        <part>_the <part>_track <part>_waist <part>_widen <part>_with <part>_your <place>_befor <place>_do
        <place>_each <place>_edge <place>_flat <place>_get <place>_half <place>_hip <place>_leg <place>_line
        <place>_low <place>_me <place>_neck <place>_of <place>_paint <place>_pocket <place>_purpos
        <place>_shoulder <place>_spread <place>_straight <place>_the <place>_toe <place>_together <place>_toward
        <place>_treacl <settle>_a <settle>_from <settle>_ful <settle>_hard <settle>_heav <settle>_in <settle>_me
        <settle>_off <settle>_ther <settle>_tight <settle>_up <settle>_you <swap>_a <swap>_ful <swap>_further
        <swap>_mov <swap>_on <swap>_saucer <swap>_stop <swap>_the <take>_ful <take>_like <take>_me <take>_tall
        <take>_up <wrong>_t <wrong>_way a_<do> a_<harm> a_<move> a_back a_banana a_book a_bow a_bus a_car a_coffe
        a_crisp a_cros a_deer a_drawbridg a_drawer a_dull a_grap a_hammock a_kick a_lamp a_medal a_metr a_mug
        a_newspaper a_nosy a_pint a_plank a_seriou a_shrug a_spot a_spr a_squat a_str a_time a_tray a_walnut
        a_warm a_wet a_wonk abov_the acros_the acros_your aint_count air_goe all_<place> all_about all_bun all_in
        along_for an_arm and_<pace> and_bum and_down and_float and_hip and_it and_relax and_shut and_the and_you
        and_your anybod_<harm> anybod_nick apart_with are_<far> are_a are_only are_work arm_is arm_only arm_th
        armpit_at armpit_to as_<attend> ask_me at_<more> at_next at_one at_someth at_whoever at_your
        away_<attend> away_from away_like back_<do> back_<move> back_as back_flat back_get back_hip back_of
        back_pocket back_spread back_straight backsid_do balanc_a balloon_<place> band_want bar_<place> bar_over
        bathroom_scal be_<attend> be_dull be_hurri be_in behind_the behind_you bel_button bel_go bell_turn
        belli_<place> belli_touch belt_<attend> bend_the between_the big_<part> big_chest big_run big_wing
        bit_and blad_at blad_into body_<place> body_goe body_in body_over bon_whil bone_<do> bone_<more> bone_up
        book_<place> book_on both_sid bottom_side bottom_together bottom_waist bra_<kit> bra_<settle> bra_strap
        break_it breath_and brush_your buckl_to bum_and buttock_<chat> button_<place> button_down button_to
        by_now can_<settle> can_<take> cant_be car_<kit> car_door catch_it chain_<place> chain_on chang_a
        chas_somebod cheek_of chest_<place> chest_lift chest_look chin_<attend> chin_tuck clos_it coffe_tabl
        collarbon_<attend> collarbon_broad control_the corner_to could_<chat> could_<do> could_<settle>
        could_<take> could_tell could_you count_just crack_<place> crack_in crack_it crisp_<place> crisp_in
        crush_a crush_the cup_of cushion_<place> dead_<attend> dead_<far> dead_<more> dead_level dead_still
        deep_<num> deep_<place> deep_one do_it do_the do_to doe_it doesnt_move dont_<attend> dont_<less>
        dont_<move> dont_ask dont_break dont_drop dont_heav dont_lift dont_look dont_spill door_tomato door_with
        down_like down_low down_together downstair_<attend> downstair_as draw_<chat> draw_you drink_<place>
        drink_on driv_your drop_it dull_<do> dull_<move> dull_pull each_<num> each_arm each_one each_other
        elbow_behind elbow_finish elbow_high elbow_to else_<attend> else_mov empt_<part> empt_hand end_<more>
        end_up even_<part> even_<take> even_feet even_through ever_<air> ever_<pace> ever_time everyth_<do>
        everyth_else everyth_pull eye_<attend> eye_<place> eye_a eye_forward eye_on eye_up face_me fat_bit
        feel_that feel_the feel_thi finger_right finish_<far> finish_high finish_it flat_<attend> floor_<settle>
        floor_<take> floor_a floor_apart floor_away floor_hold floor_hot floor_with flop_cheek flop_slipper
        follow_your for_age for_lunch for_the for_turn forget_the from_<part> from_the front_hand front_leg
        full_of gaze_<place> get_off ghost_yourself give_a glue_the glue_your go_<less> go_<more> go_<pace>
        go_<place> go_hard go_soft go_the go_tight go_up goe_<attend> goe_<far> goe_<place> goe_quiet goe_wide
        got_<chat> got_a got_you grap_<place> grap_under gras_<place> gras_apart gravit_<swap> gravit_do grip_it
        grip_the ground_a grow_<more> grow_an grow_out grow_taller grow_up hand_<attend> hand_are hand_end
        hand_into hand_soft hand_with handl_like hang_off hang_ther hav_it head_<more> head_<not> head_<place>
        head_the head_up headlight_<place> headlight_forward hear_about heart_<more> heart_<place> heart_over
        heart_up heav_<attend> heav_<part> heav_<place> heav_on heel_into heel_push held_it hello_<attend>
        hello_<part> hello_hamstring here_to high_<more> high_up hip_<attend> hip_<more> hip_level hip_that
        hip_to hold_<more> hold_<place> hold_up hug_a i_aint i_could i_got imagin_<chat> imagin_your in_<less>
        in_<num> in_breath in_half in_like in_on in_one in_the in_till in_your into_the iron_board is_<place>
        is_in is_just isnt_back isnt_mov it_<chat> it_<far> it_<not> it_acros it_all it_at it_clos it_in it_let
        it_off it_shav it_should it_start it_stop it_till it_touch it_under itll_come its_<part> its_<place>
        its_a its_all its_bottom its_bum its_chang its_like its_our its_round its_that its_try its_wind
        ive_<chat> jaw_<settle> jaw_thi just_<kit> just_along just_hook just_rop just_the just_visit keep_room
        keep_tension keep_your kne_bend kne_only kne_over knee_a knee_point knee_sink knee_track kneecap_slid
        knit_<place> knit_down lamp_post last_to lead_from lead_with leg_only legsll_follow lengthen_<place>
        let_<pace> let_anybod let_gravit let_your level_<part> lift_from lift_go lift_on like_<harm> like_butter
        like_draw like_somebody like_someon like_ther like_two littl_quieter littl_toe long_<part> long_neck
        longer_<part> look_<more> look_a look_ahead look_at look_once loos_<part> loos_<settle> low_<part>
        low_<place> low_down mak_a make_yourself mayor_walk me_why medal_<place> medal_on metr_<place> metr_out
        mind_<far> mind_higher more_than mov_<far> mov_them move_<not> much_<attend> mud_off mug_sit my_tea
        neck_<attend> neck_<pace> neck_<place> never_lik never_mind newspaper_under next_<kit> next_<num>
        next_cone next_door nick_it no_<more> no_further no_saucer no_stop nobod_here nobody_spill nose_to
        nosy_at not_<place> not_arm not_down not_escalator not_for not_gwilym not_hav not_high not_just not_mov
        not_on not_spill not_to not_your noth_else noth_tight noth_to of_<swap> of_bag of_bathroom of_tea of_that
        of_the of_waterwork of_wood of_you off_a off_it off_you on_me on_purpos once_youv one_<attend>
        one_<place> one_<wrong> one_at one_bit one_get one_just one_long one_piec one_slap one_straight
        only_<more> only_heavier only_hook open_<place> open_and opposit_shoulder other_like other_one ought_to
        our_waiter out_of out_toward outsid_<far> outsid_edge over_<chat> over_<harm> over_paint over_shoulder
        over_toe over_you paint_your pal_hand part_<place> peach_<place> peach_under peer_<place> peer_over
        pelvic_floor pencil_<place> pencil_between pinch_a pint_<place> pint_on plank_of plank_that plank_with
        pocket_area pocket_is point_wher pres_<place> pres_down pres_the pretend_the proud_<part> proud_chest
        pull_both pull_with punch_the push_<part> push_back push_it push_yourself put_a put_your quick_<part>
        quick_hand quiet_<take> quiet_and quiet_feet reach_<attend> reach_like relax_your rib_<place> rib_button
        rib_down right_into right_to ring_are rise_your run_<attend> run_<do> run_<kit> run_step run_tall
        same_number sat_on seat_of second_<harm> second_heart see_<attend> see_if seen_a seriou_<num> seriou_one
        shar_it should_<attend> should_<do> should_<move> should_<settle> should_be should_feel shoulder_<far>
        shoulder_<more> shoulder_<place> shoulder_away shoulder_blad shoulder_down shoulder_face shoulder_level
        shoulder_soft shov_a show_off shut_a sid_<place> sid_on sit_<attend> sit_tall skip_with slid_<more>
        slid_<place> slid_up snap_and so_<move> soft_hand soften_on soften_your softer_<part> softer_jaw
        some_<far> some_till somebody_got somebody_pull someon_is someth_that sound_the spill_<num> spill_one
        spot_<place> spot_on spread_<place> spread_out squash_a squeez_a stand_<far> stand_ful stand_leg
        statu_for stay_<attend> stay_<far> stay_<more> stay_<pace> stay_button stay_heav stay_level stay_light
        stay_long stay_low stay_narrow stay_touch stead_<attend> stiff_<attend> stiff_as stir_<more> stir_anyth
        stop_nag str_<place> str_on straight_<attend> straight_leg switch_<place> switch_on tail_bone
        tall_<attend> tall_as tall_like taller_<chat> taller_first teeth_<place> teeth_apart ten_<part>
        tension_<place> than_the that_<part> that_<place> that_<swap> that_back that_bum that_do that_fac
        that_hip that_isnt that_should that_the that_wee that_wher that_who that_work the_<less> the_<more>
        the_<part> the_<wrong> the_armpit the_bel the_belt the_bench the_blad the_bone the_breastbon the_calv
        the_chain the_cheek the_church the_clock the_downstair the_effort the_far the_fat the_feel the_floor
        the_forearm the_front the_gras the_hair the_handl the_horizon the_knee the_kneecap the_leg the_legsll
        the_lino the_mat the_mayor the_meat the_next the_one the_outsid the_pelvi the_plac the_power the_push
        the_quaysid the_rib the_ride the_rope the_same the_sidewalk the_skull the_socket the_stand the_sun
        the_swell the_tail the_thigh the_top the_track the_tricep the_underneath the_whol the_world the_wreck
        them_big ther_<far> ther_<not> ther_a ther_and ther_like ther_nobod ther_till they_<not> they_dont
        theyr_<chat> theyr_done theyr_draw thi_<num> thi_one think_<attend> think_<place> think_of though_<chat>
        through_both through_treacl tight_<air> tight_bel tight_jean to_<attend> to_ankl to_corner to_ear to_hair
        to_hold to_impres to_kne to_opposit to_read to_see to_spill to_wake toddler_with toe_<far> toe_and
        toe_press toe_spread tongu_<place> tongu_behind top_<attend> top_like top_shelf track_<place> track_over
        track_with tray_<place> tray_on try_to turn_over two_<chat> two_bucket two_headlight two_jug two_plat
        two_tap two_year under_a under_each underneath_side until_you up_<place> up_from up_in up_toward
        waist_<more> waist_off waist_up wait_for waiter_again wall_<place> wall_and wall_behind want_it
        wash_<place> wash_out watch_the water_<place> waterwork_<attend> waterwork_as way_<far> way_past we_are
        wee_teardrop were_after wet_<kit> wet_<swap> wet_coat wet_towel what_<chat> wher_a wher_the wher_your
        who_were whoever_opposit whol_body whol_foot will_<attend> will_feel with_manner without_mov wob_bit
        won_someth wonk_t work_the world_<place> world_down would_<settle> would_<take> would_sit wring_<place>
        wring_out wrong_way you_<chat> you_<do> you_<not> you_<place> you_and you_balanc you_by you_do you_dont
        you_rise you_round you_theyr you_turn you_wanna you_wiggl youll_<attend> youll_<take> youll_feel
        your_<swap> your_<wrong> your_abs your_armpit your_back your_backsid your_big your_chang your_chin
        your_crack your_finger your_go your_hang your_hat your_hold your_jaw your_jump your_kneecap your_mak
        your_other your_peer your_pelvi your_perch your_pocket your_pour your_say your_sho your_shov your_slipper
        your_sock your_spot your_step your_tongu your_watch yourself_<attend> yourself_as yourself_away
        youv_<harm> youv_check youv_held youv_won
      `,
    ],
    [
      -0.2,
      `
        <air>_in <attend>_and <attend>_arm <attend>_has <attend>_its <attend>_kne <attend>_knee <attend>_long
        <attend>_out <attend>_over <attend>_sit <attend>_under <attend>_youv <chat>_about <chat>_all <chat>_can
        <chat>_feel <chat>_in <chat>_like <chat>_not <chat>_on <chat>_see <chat>_to <do>_away <do>_forward
        <do>_into <do>_it <do>_off <do>_the <do>_them <do>_to <do>_up <do>_your <far>_and <far>_as <far>_than
        <far>_the <far>_with <far>_your <harm>_in <harm>_leg <kit>_as <kit>_at <kit>_to <kit>_up <more>_like
        <more>_on <more>_to <more>_with <move>_away <move>_both <move>_in <move>_into <move>_it <move>_like
        <move>_off <move>_one <move>_over <move>_them <move>_to <not>_like <not>_out <num>_leg <num>_metr
        <num>_of <num>_second <pace>_at <part>_abov <part>_back <part>_befor <part>_bone <part>_cramp <part>_feel
        <part>_flexor <part>_foot <part>_from <part>_has <part>_if <part>_light <part>_like <part>_off <part>_out
        <part>_round <part>_stretch <part>_till <part>_touch <part>_under <part>_want <place>_and <place>_arm
        <place>_as <place>_at <place>_between <place>_down <place>_foot <place>_for <place>_from <place>_here
        <place>_into <place>_knee <place>_long <place>_on <place>_onto <place>_over <place>_that <place>_them
        <place>_through <place>_with <settle>_down <settle>_long <settle>_the <swap>_it <swap>_of <take>_on
        <take>_the a_<chat> a_<far> a_<ill> a_<kit> a_<less> a_bell a_bit a_duck a_few a_glas a_littl a_lot
        a_pull a_straight a_touch a_wee about_a against_the all_of all_the all_your and_<do> and_<far>
        and_<place> and_<settle> and_<take> and_back and_let and_look are_<more> are_<place> are_like
        arm_<attend> arm_<place> arm_that as_<chat> as_<far> as_<place> as_you as_your at_<chat> at_that at_the
        at_you back_from back_into back_like back_long back_to bag_of balanc_<place> balanc_on band_<place>
        befor_<chat> befor_you behind_it bend_your bit_<place> blad_<attend> blad_<place> blad_like bon_<attend>
        both_<part> both_<take> both_feet both_hand both_shoulder bum_<place> by_your chair_<place> chest_tall
        com_<place> come_<place> corner_of do_<not> down_to driv_the each_hand each_side elbow_<do> elbow_<place>
        end_of eye_<far> eye_level fall_<place> feel_<attend> feel_a feel_like feet_<place> finger_<place>
        flat_<place> floor_<num> floor_in floor_just floor_two for_it forearm_<place> from_<place> from_behind
        front_foot front_knee glas_of go_long got_the grow_<attend> grow_tall hand_<place> head_<attend>
        head_down heav_<num> heav_<take> heav_feet heav_one heel_<do> heel_down hip_flexor i_<swap> if_it if_its
        if_the if_youv in_a in_front in_ther into_it is_<not> it_<do> it_<more> it_<pace> it_<place> it_a it_down
        it_feel it_from it_on it_to its_<less> its_<not> its_<pace> its_only just_<attend> just_<place> just_in
        keep_it keep_them kne_<attend> kne_<place> knee_<attend> knee_<place> knee_down knee_soft knee_that
        knee_to last_<num> leg_<attend> leg_<more> leg_<place> let_it let_the lift_the lift_with lift_your
        light_hand like_<part> like_an like_it littl_<do> long_arm long_as look_like lower_<attend> lower_like
        make_it more_<attend> neck_<part> neck_bone nice_and not_<attend> not_<wrong> not_like not_out of_<harm>
        of_a of_it on_to one_<settle> one_leg only_<attend> onto_your open_the other_<part> out_<attend> out_in
        out_like over_the over_your point_at pull_it push_<more> push_up push_your put_it rest_<place>
        right_<place> roll_<place> round_your shoulder_and skirt_board so_<chat> so_your soft_<part> soft_knee
        some_of stay_down stay_on stay_tall step_<place> straight_<place> straight_down tailbon_<place>
        tall_<place> than_<chat> than_you that_<chat> that_<settle> that_all that_foot that_is that_pay that_you
        the_<chat> the_<harm> the_<swap> the_<take> the_air the_ankl the_band the_bum the_cake the_chair
        the_chest the_edge the_elbow the_feet the_first the_hand the_head the_heav the_joint the_kne the_last
        the_mirror the_neck the_other the_palm the_rail the_seat the_skirt the_small the_straight the_towel
        the_weight them_<place> ther_egg ther_for through_your to_<place> to_<settle> to_look to_the toe_<place>
        top_<part> touch_your toward_the train_track turn_the turn_your under_the under_your up_on up_through
        want_<place> way_<place> weight_on weight_over weight_to when_<chat> when_your wher_<chat> you_<far>
        you_<less> you_<move> you_<settle> you_<take> you_can you_feel you_get you_like youll_want your_<chat>
        your_<do> your_<far> your_<kit> your_<less> your_<more> your_<move> your_<pace> your_all your_bottom
        your_ear your_forearm your_hip your_kne your_knee your_lower your_name your_on your_rib your_spin
        your_whol your_wrist
      `,
    ],
    [
      -0.4,
      `
        <attend>_one <chat>_it <part>_at <part>_long heel_<place> if_your like_a off_the on_the one_<part>
        stay_<place> that_a that_your the_way you_<attend>
      `,
    ],
    [-0.6, '<part>_on <place>_to'],
  ],
  phrase: [
    [0.8, 'focus-sure'],
    [0.6, 'focus-hint'],
    [0.2, 'execution-sure focus-likely tempo-hint'],
    [
      -0.2,
      `
        caution-likely easier-likely equipment-likely equipment-sure fault-sure harder-likely praise setup-likely
        tempo-sure transitions
      `,
    ],
    [
      -0.4,
      `
        breathing-sure caution-hint caution-sure chat dose_only empty_clauses harder-sure range-likely setup-sure
      `,
    ],
    [-0.6, 'easier-hint easier-sure range-sure'],
  ],
  start: [
    [0.6, 'you_want your_a'],
    [
      0.4,
      `
        <do>_<attend> <part>_<move> <take>_<attend> back_of back_of_the it_help its_a its_the not_at not_at_your
        not_on_your pick_a push_the that_wher
      `,
    ],
    [
      0.2,
      `
        <air>_<pace> <attend>_<attend> <attend>_<less> <chat>_<part> <far>_<more> <far>_<place> <far>_<swap>
        <less>_<part> <move>_<attend> <move>_<more> <move>_<pace> <not>_<less> <not>_<part> <not>_<place>
        <num>_<attend> <pace>_<attend> <pace>_<do> <pace>_<move> <pace>_<take> <part>_<attend> <part>_<far>
        <part>_<more> <place>_<attend> <settle>_<attend> <settle>_<chat> <settle>_<less> <swap>_<far>
        <take>_<chat> <take>_<more> a_banana a_bit_of a_dull a_dull_pull a_hand_in a_pres a_seriou a_seriou_one
        a_tug abov_the_kneecap all_in all_in_one all_one all_one_piec all_the_weight arm_are arm_are_just
        armpit_to armpit_to_knee as_if_you at_your_kne back_flat back_flat_like back_leg back_leg_only
        back_squash balanc_a bar_over bar_over_the belt_buckl belt_buckl_to bend_the_back bend_the_bar
        between_the big_chest big_toe big_toe_press big_wing body_in body_in_one both_kne_bend bottom_waist
        bottom_waist_up br_the_whol by_the cat_on cat_on_a catch_it_with chas_somebod cheek_of chest_and
        chest_and_hip chest_goe_wide chest_lift chest_open chest_proud chest_to_kne chin_tuck chin_wher
        chin_wher_it control_the control_the_middl could_you could_you_wiggl crush_the curl_the_hip dont_ask
        dont_ask_me dont_break dont_break_it dont_drop dont_drop_it dont_drop_the dont_heav dont_let_anybod
        dont_look dont_look_at dont_spill dont_spill_it down_by down_by_your down_low down_the down_the_quaysid
        drag_it_up driv_your driv_your_elbow ear_over_shoulder ear_to ear_to_ankl elbow_finish elbow_finish_high
        elbow_high elbow_stay_narrow elbow_straight even_feet ever_time everyth_pull everyth_pull_in eye_a
        eye_forward eye_on eye_up feel_it feel_the feel_your finger_right finger_right_to flop_cheek flop_slipper
        from_the_chest from_the_ear front_of front_of_the get_off get_off_it ghost_yourself ghost_yourself_up
        glue_the glue_the_belt glue_your glue_your_shoulder go_tight grip_it grip_it_like grow_an grow_an_inch
        grow_taller grow_up hand_end hand_end_up hand_full hand_full_of hand_soft hang_in_the hang_off
        hang_off_you hang_ther hang_ther_till have_a_nosy head_in head_up headlight_forward heart_up heel_push
        heel_push_away heel_stay_heav heel_to heel_to_ear heel_to_hair hello_hamstring hip_level hip_not_arm
        hip_squar hip_squar_to hip_to hip_to_opposit hip_up_high hold_it_till i_aint i_aint_count i_could
        i_could_put i_got i_got_a imagin_your in_front in_front_of in_on in_on_a insid_of insid_of_the into_the
        into_the_bench it_cant it_cant_be it_help_you it_is_the it_isnt_back it_should it_touch its_0_move
        its_a_drawer its_a_shrug its_a_skip its_a_time its_all its_all_bun its_bottom its_bum its_like
        its_not_back its_our its_our_waiter its_that its_the_deep its_the_underneath its_try its_try_to its_wind
        its_your_bum keep_it_clos keep_room keep_room_for keep_tension keep_the_back keep_the_pelvi keep_the_tum
        keep_your_chest keep_your_eye keep_your_neck keep_your_shoulder kick_the_wall kne_lock kne_over
        knee_track knee_track_over knuckl_point knuckl_point_straight lead_with lead_with_your lean_back_on
        lean_your_heart let_gravit let_gravit_do let_the_back let_the_floor let_the_ground let_the_pelvic
        let_your let_your_back let_your_head let_your_jaw lift_from lift_from_the like_a_cat like_a_door
        like_a_pendulum like_butter like_somebody like_the_mayor like_ther like_ther_a like_youv like_youv_won
        listen_for listen_for_your littl_toe long_neck look_a look_a_metr look_at_the look_once make_yourself
        make_yourself_as near_the neck_stay neck_stay_long never_mind never_mind_higher no_saucer nobody_spill
        nose_over_the not_a not_a_squat not_back not_behind_the not_down not_down_at not_escalator not_gwilym
        not_high not_in_the not_just not_just_the not_on not_the not_the_floor not_to not_up_in not_your
        not_your_back not_your_sho noth_else noth_else_mov noth_tight noth_to noth_to_hold on_purpos on_the
        on_the_horizon once_youv once_youv_check one_at one_at_a one_long one_long_iron one_straight only_heavier
        or_a_wonk out_as_you paint_your paint_your_leg pick_a_back pinch_a pinch_your_rib pocket_area pres_down
        pres_down_like pres_the_floor pretend_the proud_chest pull_both pull_both_way pull_the_elbow pull_with
        pull_with_the pull_your pull_your_bel punch_the push_back push_the_ground push_the_world push_through_the
        push_yourself push_yourself_away put_your put_your_feet quick_hand reach_for reach_for_the reach_up
        reach_up_at relax_your relax_your_jaw rest_your_tongu rib_down rib_knit_down rib_stay_button
        ring_stay_glu run_tall same_number see_if see_if_its send_your shoulder_down shoulder_face
        shoulder_face_me shoulder_soft show_me_your shut_a shut_a_car side_of side_of_the sit_tall sit_tall_first
        sit_up sit_up_tall snap_and snap_and_float soft_hand soften_your soften_your_kne softer_jaw
        softer_jaw_thi somebody_pull somebody_pull_your squash_a squash_a_grap squeez_a squeez_your_bum stand_ful
        stand_ther_like stand_up_out star_at stay_light stay_long stay_low stay_up stiff_as stiff_as_a switch_on
        that_bum that_fac that_fac_the that_not_for that_should that_should_be that_the_engin that_the_feel
        that_the_plac that_the_swell that_wher_it that_who that_work that_your_second that_your_spot the_arm
        the_arm_are the_arm_only the_band_want the_bell the_bell_turn the_body the_bottom the_cone the_floor
        the_head the_head_last the_head_the the_kne_only the_knee the_leg the_next the_next_one the_wob
        the_wob_bit ther_a ther_a_str ther_nobod ther_nobod_here they_dont they_dont_lift thi_one thi_one_is
        think_about third_one tight_jean till_it tip_it_at try_to two_bucket two_headlight under_the watch_the
        watch_the_kneecap watch_your_kneecap we_are weight_even weight_in weight_in_the weight_in_your
        when_the_leg wher_a wher_the whol_body whol_foot wrist_straight you_dont_go you_dont_turn you_go_up
        you_never you_never_lik you_round you_wanna you_want_it you_want_that you_will_feel youll_feel
        youll_feel_it your_after your_arm your_arm_are your_look your_look_at your_mak your_mak_a your_not_hav
        your_not_to your_say your_step your_step_over youv_got_a youv_held youv_held_it
      `,
    ],
    [
      -0.2,
      `
        <air>_<attend> <attend>_<chat> <attend>_<do> <attend>_<far> <attend>_<take> <chat>_<attend> <chat>_<chat>
        <chat>_<move> <chat>_<settle> <chat>_<swap> <do>_<place> <far>_<do> <far>_<move> <kit>_<place>
        <move>_<num> <not>_<wrong> <pace>_<place> <part>_<chat> <part>_<do> <part>_<settle> <place>_<part>
        <settle>_<place> <take>_<place> a_pull all_the_way as_if_your bend_your body_like_an chest_tall eye_level
        feel_it_from from_the_hip front_knee grow_tall heav_feet if_it if_the if_you_feel if_your if_youv
        imagin_a_glas its_only its_the_insid its_your_rib keep_it keep_them keep_your_hip let_it let_it_go
        let_your_arm let_your_toe lift_the like_a_hors like_a_tabl like_the like_your_in long_arm look_at
        look_at_that look_at_you make_it nice_and not_at_the not_behind_it not_from_the not_like not_out
        not_out_like not_the_toe not_your_neck on_your open_the pinch_your_shoulder pull_it push_your put_it
        same_as shoulder_away shoulder_away_from shoulder_blad_in soft_knee squeez_the_bum stay_tall that_a
        that_all that_is that_wher_the the_calf the_hip_flexor think_of_the to_the touch_the turn_your weight_on
        weight_on_the you_are you_should_be your_all your_back your_bum
      `,
    ],
    [-0.4, 'like_your that_your'],
  ],
  word: [
    [0.6, 'grow heav loos pocket should spill squeez thigh tight wher'],
    [
      0.4,
      `
        a abs ahead armpit bel belt between big blad cheek collarbon crack else even everyth eye feel from grip
        ground hang headlight hook imagin kneecap lead like listen mov push rib rop spot spread star str taller
        the think tray waist want your
      `,
    ],
    [
      0.2,
      `
        ache achill acros after all apart area as attention away backsid banana bar bath bathroom be belli bench
        boat body bone both bra brac break broad buckl bum buttock button chain chest church clock clos coat
        coffe coin cone control could crab crisp crush cup deep deer do door downstair drawbridg drawer dull
        effort elastic engag escalator ever fat find finger flipper floor flop fog follow footprint forehead
        forget front garden gaze giraff glue glut grap guitar gwilym hair hammi hammock hav head heal heart hedg
        help high hip horizon hot hurri ice impres insid into is isnt its jar jaw jean jug jump just lake lamp
        legsll lengthen lino low matter mayor me meat medal meet melt metr middl motion move mud mug neck
        newspaper next nosy not noth notic number of ought paint pan part peer pelvi pelvic pick pictur piec pint
        plac plaster poke ponytail post pour power pres press pretend proud puddl pump purpos quaysid quick
        quieter reach relax ride rise root rope run sand scal scrap screw see seen sens shak shar shelf shout
        shut sid side sidewalk slap sleev slid slipper snap softer somebod somebody someon someth spe spr spring
        squash stan stand stiff stir string sun swell t tail tailbon tall tea teardrop teeth tension test that
        through tighter till tomato toward track treacl try tum two underneath waiter wake wall walnut wanna
        wardrob watch waterwork wet whol widen wind wing wonk wood world wr wring you yourself zip
      `,
    ],
    [
      -0.2,
      `
        about afterward again against air ankl any anyon arm back band beat becaus befor bell bent bin bor bounc
        box bridg build by cake call can centimetr cheat check circl clear come count cramp cut did dip dont drop
        duck dumbbell ease eight either fac fall feet few fingertip first fist five flexor fold for forward four
        go gone grab half halfwa hammer hand has haul have height hit hover how i im job jog joint jumper know
        land last leav left leg length let lie lift littl long lower lung make march mean minut mirror more my
        name near need nice off onto operat overhead own pair palm pancak park paus pay pedal peel peopl phon
        pleas point pressur puff quicker rais remember rest ring roller roof said same seat second sharp sheet
        shin shop short sideway sink six skirt soft some sore split squar stack start stay steal step stop
        straight straighten stretch strid stuck support sure sw swap tak than their thes they theyr thos thre
        tiny together too touch train until us van week weight well what whatever wheel when wider width will
        wrist writ youd youll
      `,
    ],
    [-0.4, '0 breath chair com foot keep knee lot or out roll so still take them walk way'],
    [-0.6, 'kne'],
    [-0.8, 'if'],
  ],
} as const satisfies CueWeights
