/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind caution; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const CAUTION_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [0.6, 'harm ill'],
    [0.4, 'carer'],
    [0.2, 'not settle take'],
    [-0.2, 'far more wrong'],
    [-0.4, 'num pace'],
    [-0.6, 'air'],
  ],
  first: [
    [0.8, 'check'],
    [0.6, 'back come look mind'],
    [
      0.4,
      `
        <harm> any be becaus bend do feet give make never only should step stop tug walk
      `,
    ],
    [
      0.2,
      `
        <ill> <less> <not> a alway anybod anyon anyth ask asthmatic befor bin br bruis burn burning call caus
        chair closer cold com contraction cos cramp discomfort dish divvent drop finger fingertip fold glas go
        hamstring hand have heart heavines hiss hypermobil i if im itll its ive janin jog keep kick kid kne leav
        miss nobod numb one or partner past pleas post purpl rest rise roll ron rug safet see shift shorten shout
        skip sore spik that theyv thi thos thumb tight under unhook wait watch wet whatever whoever wrist you
        youll your
      `,
    ],
    [
      -0.2,
      `
        0 <air> <do> <far> <pace> <part> <take> <wrong> all bar bell big bottom bum calv elbow feel finish for
        forearm grab grip grow hang hip hold how ill imagin is jump last let lift long loos neck nice nobody nose
        off on other out over palm rib same second set slip small snap some somebody squeez start stay take tall
        ten thre toe try up were wher whil whol
      `,
    ],
    [-0.4, '<chat> <more> <num> <place> down heel like not pinch push'],
  ],
  given: [
    [0.4, 'goe knee sharp shoulder'],
    [
      0.2,
      `
        <ill> <part> <wrong> a ach angr at baby back bark be bit bladder bon bottom buckl but calf catch cave com
        cramp do done drop easy enough fist forearm grab grip had half halfwa hamstr heel hip hot ill jog just
        kitchen late light lock low miss moan of open out pinch pull quit room shin side slow start step still
        stuck swim take than the them they towel twing wobbl your zing
      `,
    ],
    [
      -0.2,
      `
        0 <chat> <kit> again all and bad balanc ball befor behind bend can chair crank doesnt face feet floor for
        gone hurt i is look lot lower moment off on only onto pres reach real stick that to too want way whol
        wont work
      `,
    ],
  ],
  last: [
    [0.6, 'first off'],
    [0.4, 'after cold cramp far grumbl instead me over pleas round thursda toda toe walk'],
    [
      0.2,
      `
        about ach all alway arch argument around backward bar bark bell bill bit broken bruis buckl buggi catch
        caus chanc complain confidenc cos cur cute dead dear deep did dish distanc divvent do done doubl drop e
        effort elbow everybod eye face fan fingertip finish fist floor foot for forgiv fun gan glas good goos
        grab hamstr hand handl handrail here hero higher hol hold hot isnt job jog joint kid kind kneel knuckl
        land left limit lock lowest lump mix mol month morn nearer neck nick night on open osteoporosi otherwis
        out overhead palm panic park partner pay piano pinch ping prawn pressur quick rainbow read ron rule sag
        say seriou shak sharp shift shorter sl smaller snatch so somebod spik spin star stop stretch sure sw swim
        tabl talk teeth th that then ther thi thin tim time tomorrow tonight towel truck tug twist unhook watch
        way wet wrist yes you your
      `,
    ],
    [
      -0.2,
      `
        arc arm ask bad bed bench breath bridg bump chest clock clos com count door enough fenc flop fold forward
        four home hook jaw kne last leg low middl no noth one past pillow plent pocket rack rais rib room
        shoulder side sit skip soft sore squat stair start step straight strok swap tall them thigh thre top
        touch trip turn twic two upright waist weight wide wob work
      `,
    ],
    [-0.4, 'back knee'],
  ],
  length: [
    [0.2, '8-12'],
    [-0.2, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.6, '<chat>_done the_box'],
    [
      0.4,
      `
        <air>_out <attend>_away <attend>_it <chat>_for <chat>_land <do>_about <kit>_down <kit>_off <less>_with
        <move>_about <move>_on <move>_sure <move>_walk <not>_and <num>_week <part>_cramp <part>_down <part>_feel
        <part>_grumbl <part>_lower <part>_read <part>_start <place>_and <place>_away <place>_off <settle>_and
        a_new an_<part> an_ankl at_all at_you befor_<chat> befor_you catch_<place> chair_<place> chest_tight
        come_off come_out down_and drop_off finger_on front_of go_and hand_<more> hand_on have_a how_<part>
        in_your it_a its_ther its_your keep_walk leav_it let_<settle> let_go make_sure mind_the mind_your
        not_<num> or_your out_all out_the see_star short_of shorten_it skip_the start_to stay_<place> step_down
        straight_away tell_me that_<part> that_leg that_your the_buckl the_car the_chair the_joint the_kneecap
        thi_<num> too_<far> walk_about whol_<pace> whol_time you_<wrong> you_feel you_land your_<carer>
        your_<place> your_done your_neck your_palm your_teeth
      `,
    ],
    [
      0.2,
      `
        <air>_hold <air>_push <attend>_a <attend>_abov <attend>_after <attend>_along <attend>_be <attend>_behind
        <attend>_cramp <attend>_feet <attend>_for <attend>_head <attend>_here <attend>_in <attend>_is
        <attend>_off <attend>_someth <attend>_through <attend>_tight <attend>_tip <attend>_when <attend>_wher
        <carer>_has <chat>_back <chat>_befor <chat>_by <chat>_check <chat>_come <chat>_day <chat>_feel
        <chat>_finish <chat>_heav <chat>_is <chat>_its <chat>_jog <chat>_let <chat>_light <chat>_lighter
        <chat>_mean <chat>_mol <chat>_move <chat>_need <chat>_on <chat>_open <chat>_overhead <chat>_ping
        <chat>_puff <chat>_put <chat>_seen <chat>_seriou <chat>_skip <chat>_sooner <chat>_stay <chat>_stop
        <chat>_stuck <chat>_sw <chat>_till <chat>_to <chat>_trust <chat>_understand <chat>_up <chat>_with
        <chat>_wobbl <chat>_year <do>_around <do>_gradual <do>_in <do>_instead <do>_is <do>_like <do>_off <do>_on
        <do>_peopl <do>_still <do>_up <do>_we <do>_wher <do>_you <far>_back <far>_bone <far>_go <far>_it
        <far>_turn <far>_twent <harm>_are <harm>_first <harm>_happen <harm>_has <harm>_how <harm>_in <harm>_is
        <harm>_keep <harm>_leav <harm>_more <harm>_out <harm>_pleas <harm>_shoulder <harm>_thi <harm>_to
        <harm>_you <ill>_do <ill>_down <ill>_is <ill>_keep <ill>_shoulder <ill>_stay <ill>_stop <kit>_abov
        <kit>_against <kit>_are <kit>_back <kit>_doesnt <kit>_first <kit>_from <kit>_handl <kit>_one
        <kit>_somebod <kit>_that <kit>_the <kit>_under <kit>_whil <kit>_you <less>_as <less>_far <less>_grip
        <less>_hip <less>_low <less>_or <less>_pacemaker <less>_slid <less>_the <less>_them <less>_way <less>_you
        <more>_and <more>_day <more>_higher <more>_off <more>_pinch <more>_taller <more>_to <more>_too
        <move>_around <move>_clos <move>_fist <move>_gradual <move>_half <move>_hold <move>_is <move>_left
        <move>_light <move>_off <move>_one <move>_peopl <move>_soft <move>_stack <move>_to <move>_too <move>_we
        <not>_after <not>_argument <not>_be <not>_bench <not>_brian <not>_care <not>_crank <not>_cross <not>_dead
        <not>_dive <not>_do <not>_drop <not>_fight <not>_for <not>_forgiv <not>_hap <not>_haul <not>_here
        <not>_hop <not>_in <not>_jump <not>_just <not>_kid <not>_like <not>_lock <not>_medal <not>_mix <not>_now
        <not>_one <not>_overhead <not>_push <not>_read <not>_right <not>_run <not>_sharp <not>_short <not>_sit
        <not>_skip <not>_slid <not>_sock <not>_stay <not>_thank <not>_that <not>_trust <not>_twist <not>_until
        <not>_want <not>_within <not>_work <not>_wrench <num>_as <num>_buckl <num>_com <num>_finger <num>_hand
        <num>_month <num>_more <num>_that <num>_to <num>_way <num>_when <pace>_first <pace>_pleas <pace>_right
        <pace>_toe <pace>_under <pace>_with <pace>_your <part>_abov <part>_ach <part>_bark <part>_catch
        <part>_caught <part>_doesnt <part>_each <part>_find <part>_first <part>_fun <part>_get <part>_go
        <part>_goe <part>_grab <part>_hide <part>_higher <part>_hover <part>_in <part>_joint <part>_let
        <part>_light <part>_long <part>_mean <part>_moan <part>_not <part>_of <part>_on <part>_open <part>_or
        <part>_pay <part>_puff <part>_right <part>_swim <part>_tap <part>_that <part>_ther <part>_tight
        <part>_with <place>_all <place>_below <place>_blood <place>_com <place>_effort <place>_first <place>_from
        <place>_fun <place>_ground <place>_here <place>_higher <place>_how <place>_its <place>_long
        <place>_nearer <place>_of <place>_peel <place>_stag <place>_start <place>_stay <place>_taller
        <place>_that <place>_the <place>_thi <place>_through <place>_thursda <place>_too <place>_two
        <place>_wheel <settle>_a <settle>_another <settle>_been <settle>_broken <settle>_by <settle>_down
        <settle>_each <settle>_flat <settle>_instead <settle>_is <settle>_its <settle>_lighter <settle>_off
        <settle>_onto <settle>_out <settle>_over <settle>_overhead <settle>_ping <settle>_somebod <settle>_someth
        <settle>_still <settle>_straight <settle>_them <settle>_till <settle>_wooz <settle>_you <swap>_are
        <swap>_argu <swap>_argument <swap>_behind <swap>_brian <swap>_cross <swap>_for <swap>_grab <swap>_heel
        <swap>_hurt <swap>_medal <swap>_not <swap>_reach <swap>_snap <swap>_sock <swap>_sprint <swap>_squat
        <swap>_stick <swap>_still <swap>_thi <swap>_through <swap>_twist <swap>_yank <take>_another <take>_away
        <take>_befor <take>_broken <take>_closer <take>_down <take>_each <take>_find <take>_flat <take>_from
        <take>_is <take>_onto <take>_or <take>_somebod <take>_someth <take>_still <take>_straight <take>_wher
        <take>_you <wrong>_and <wrong>_door <wrong>_it <wrong>_them a_<attend> a_<harm> a_<ill> a_<less> a_<part>
        a_<settle> a_badg a_ball a_bell a_bent a_break a_cat a_chair a_chanc a_click a_crunch a_day a_detach
        a_door a_fly a_game a_hammer a_hamstr a_hand a_heart a_hing a_hip a_hose a_knif a_lip a_look a_loos
        a_miss a_nerv a_pole a_prawn a_pull a_reason a_rest a_ridg a_scar a_second a_sharp a_shoulder a_stab
        a_straight a_stretch a_tabl a_thinner a_time a_zing about_slip about_twent abov_that achill_will
        after_your against_the all_goe all_hold all_with alon_<place> alon_in am_<not> am_not among_<chat>
        among_you an_ache and_<attend> and_<move> and_<not> and_back and_call and_hug and_just and_keep and_lift
        and_look and_march and_miss and_needl and_not and_only and_push and_shout and_slow and_stay
        and_straighten and_take and_tell and_they ankl_<chat> ankl_<settle> ankl_go any_<far> any_<harm>
        any_<ill> any_deeper any_sharp anybod_<place> anybod_on anybod_with anyon_<place> anyon_up anyon_whos
        anyth_<ill> anyth_pinch anyth_that are_<not> are_dear are_gopher are_heav are_left are_not are_thin
        arm_<far> arm_<more> arm_<move> arm_fun arm_level arm_lower arm_of arm_on arm_read as_a as_you as_your
        at_<chat> at_<more> at_once back_<attend> back_<place> back_a back_at back_com back_down back_grumbl
        back_long back_off back_out back_peel back_start back_stay ball_is band_on bar_with bark_at be_<less>
        be_<pace> be_cute be_held be_proud be_that becaus_<attend> becaus_<chat> becaus_<part> becaus_a becaus_if
        becaus_ive been_<chat> been_mov befor_the behind_<chat> behind_you bell_<not> bell_doesnt below_wher
        bench_<not> bench_<swap> bench_alon bench_without bend_it bend_the bend_your big_<kit> big_step bin_it
        bit_at blood_<harm> blood_pressur blood_thinner blow_<place> blow_out bon_are bone_densit book_are
        both_hand both_sid bottom_is bounc_<place> box_<chat> box_first box_with br_your breath_<attend>
        breath_<do> breath_hold breath_out breath_push buckl_again burning_<less> burning_allow by_how by_the
        calf_is calv_<chat> calv_<settle> calv_go came_late can_<do> can_<move> can_<pace> can_grab can_reach
        cant_slid car_park care_how catch_<more> catch_peopl catch_up caught_<more> caught_<place> caught_up
        chair_<chat> chair_<part> chair_against chair_back chair_in chair_next check_its check_the check_them
        check_your chest_<less> chest_feel chest_with clear_of clinic_has clock_say clos_<do> clos_<move> clos_to
        closer_than cold_<attend> cold_<part> com_at com_for com_off come_<place> come_down come_over
        cramp_<take> crank_your cros_the cross_the cue_to damp_at day_with detach_<harm> detach_retina disc_befor
        discomfort_is do_<do> do_<harm> do_<less> do_<move> do_<not> do_heel do_hero do_mean do_not do_snap
        doesnt_<attend> doesnt_like doesnt_rock dog_park done_for dont_<not> dont_<swap> dont_dive dont_do
        dont_drop dont_fight dont_flop dont_go dont_hang dont_haul dont_hop dont_just dont_lock dont_push
        dont_run dont_skip dont_stop dont_trust dont_want door_and door_want down_<pace> down_befor down_below
        down_first down_hard down_here down_nice down_straight down_with drop_<num> drop_them each_other
        ease_<part> ease_<place> ease_back ease_off elbow_<do> elbow_<far> elbow_<less> elbow_a elbow_feel
        elbow_lower else_<place> else_in end_lump everybod_<num> everybod_two eye_<far> face_each fall_happen
        feel_<harm> feel_<ill> feel_<less> feel_it feel_sharp feel_tight feel_tip feet_<chat> feet_<place>
        feet_<settle> feet_away feet_closer feet_down feet_find feet_or feet_to feet_under few_inch find_the
        finger_<place> fingertip_<place> fingertip_on first_<attend> first_look flat_<place> flat_ground
        flat_here flat_on floor_<move> floor_<swap> floor_ther floor_us fly_<kit> fly_bell fold_<kit> fold_<swap>
        fold_over fold_towel foot_<attend> foot_<do> foot_at foot_down foot_heav foot_lift for_<chat> for_<harm>
        for_anybod for_glas for_me for_nick forearm_and forward_at from_<place> from_about from_under front_knee
        frozen_<part> frozen_shoulder gan_to get_<place> get_broken get_down get_off get_somebod get_up give_it
        give_the glas_thi go_<attend> go_<ill> go_<swap> go_back go_heav go_its go_lighter go_overhead go_ping
        goe_<not> goe_dont goe_in gone_<less> gone_down gone_too gopher_hol grab_someth gras_<place> gras_behind
        greas_<place> greas_by grip_one ground_befor had_a had_mol half_<attend> half_as half_that half_the
        half_way hammer_<place> hammer_in hamstring_cramp hand_<do> hand_<place> hand_hover hand_it hand_open
        hand_read hand_stay hand_ther hand_up handl_down happen_when has_said haul_<place> haul_on have_<chat>
        have_been have_your head_<far> head_caught head_just head_light head_swim head_with headll_swim
        heart_tablet heav_<take> heavines_<place> heavines_down heel_in heel_nearer heel_tap hide_<place>
        hide_insid higher_<place> hip_<ill> hip_in hip_stretch hiss_it hold_<place> hold_on hold_the home_with
        hop_<place> hose_<place> hose_acros hover_<place> hover_over hover_your how_<chat> how_peopl however_many
        hug_them hurt_<chat> hurt_your hypermobil_peopl i_<less> i_dont i_like i_mean i_need id_sooner if_<more>
        if_a if_anyth if_it if_someth if_the if_ther if_your ill_<settle> ill_take im_<not> im_not im_seriou
        in_<settle> in_line in_nearer in_stag in_the in_two inhaler_at into_a is_<harm> is_<less> is_<place>
        is_<swap> is_closer is_fine is_how is_okay is_over it_<do> it_<less> it_<num> it_<pace> it_<wrong>
        it_again it_arch it_at it_becaus it_befor it_bit it_div it_down it_for it_goe it_hard it_long it_off
        it_on it_out it_roll it_round it_sav it_settl it_side itll_<do> itll_have its_bark its_com its_damp
        its_glas its_greas its_job its_over its_pin its_pret its_sharp its_slip its_socket its_still its_what
        ive_<chat> ive_a ive_seen jaw_<ill> jaw_ach jog_<chat> jog_first joint_is jump_down jump_off just_<air>
        just_<do> just_<move> just_<take> just_below just_breath just_hold just_walk keep_<settle> keep_<take>
        keep_hold keep_it keep_left keep_your kne_<ill> kne_<not> kne_<settle> kne_as kne_complain kne_down
        kne_follow kne_not kne_or knee_<attend> knee_first knee_goe knee_lock knee_puff knee_start knee_stay
        knif_<not> knif_isnt know_about knuckl_on land_<attend> land_soft lane_and lap_of last_<chat> last_<do>
        last_<place> last_round last_year late_and least_of leav_<place> leav_out leav_that leav_thi leg_<more>
        leg_and leg_here leg_higher leg_up let_<chat> let_that lie_<place> lie_flat lift_your light_<place>
        light_head light_in light_under littl_turn lock_it lock_them long_and look_<place> look_along look_behind
        look_in look_what look_wher lot_of low_<part> low_<place> low_back low_bone lower_<place> lower_back
        lowest_<do> lowest_<far> lowest_point mak_<chat> mak_you make_<part> make_fist many_are mat_and mat_so
        mate_<place> mate_on may_<not> may_not may_shak me_<place> me_on mean_<part> mean_it mean_that middl_of
        middl_toe minut_or minut_the miss_<chat> miss_thursda moment_<chat> moment_<more> moment_anyth
        moment_befor moment_you month_<swap> mov_the mov_till muscl_<chat> muscl_<settle> natal_ladi need_<chat>
        need_you never_<do> never_<move> never_<wrong> new_<part> new_hip new_pacemaker next_<chat> next_day
        next_to nip_at no_<harm> no_argu no_argument no_brian no_cross no_hold no_medal no_sock no_sprint
        no_squat no_stick no_twist no_yank nobod_<do> nobod_bench nobod_doe nobod_else nobod_within none_at
        not_<attend> not_<do> not_<more> not_<move> not_<settle> not_after not_be not_come not_cros not_for
        not_here not_in not_jump not_kid not_kneel not_leav not_now not_one not_overhead not_read not_until
        not_with not_work noth_sharp now_<place> now_on numb_<part> of_<chat> of_<harm> of_all of_everybod of_it
        of_its of_the off_<attend> off_<far> off_<num> off_even off_everybod off_if off_one on_a on_blood on_it
        on_that on_their on_through on_thursda on_to on_wheel once_your one_com one_folk one_of one_slow one_that
        one_to only_<chat> only_<do> only_<move> only_go only_if onto_the open_away open_your operat_<place>
        operat_on or_<chat> or_<settle> or_<take> or_get or_grip or_have or_it or_itll or_sit or_stop or_you
        or_youv other_end out_<chat> out_of out_on out_over over_fun overhead_<attend> overhead_<swap> pain_is
        palm_in partner_stand past_<num> past_a past_twent pay_for peel_off pillow_behind pin_and pin_the
        pinch_<more> pinch_<place> pinch_up plat_off pop_<place> pop_out post_natal practis_thi pressur_<place>
        pressur_on pret_<place> pret_flat pull_<place> pull_in pull_we purpl_<num> purpl_one push_through
        push_with put_them put_your rack_the rail_<place> reach_it reason_to regular_<air> regular_breath rest_it
        rest_with right_<chat> right_<do> right_round right_then right_ther ring_somebod rise_<pace> rise_gradual
        roll_<attend> roll_like roll_off roll_on roll_the room_start round_<attend> round_it round_like
        rule_<attend> rule_as safet_<chat> safet_first said_yes same_rule scar_off scoot_your scrap_anyon
        second_at second_toe second_your see_<more> see_doubl see_spot seen_it send_the set_finish set_for set_is
        sharp_<harm> sharp_<ill> sharp_<num> sharp_<place> sharp_one sharp_pain shed_roof shin_are sho_<place>
        sho_on should_that should_the shoulder_<do> shoulder_<ill> shoulder_<move> shoulder_bark
        shoulder_complain shoulder_grumbl shout_for shut_in side_<less> side_<not> side_<swap> side_and
        side_instead sign_to signal_to sit_<attend> sit_out sit_straight sit_thi slid_<more> slid_up slip_at
        slip_disc slow_down slow_right somebody_water someon_to someth_<harm> someth_<more> someth_<pace>
        someth_and someth_stead someth_were soon_<attend> soon_as spin_do spot_<chat> spot_you spread_<place>
        sprinkler_<part> sprinkler_head sprint_<place> sprint_on squat_<far> squat_till squeez_<place> squeez_in
        stab_and stand_and stand_at stand_behind stand_still stand_wher star_<place> star_down stay_<attend>
        stay_<do> stay_<move> stay_by stay_clos stay_flat stay_stack stay_ther step_<part> step_back step_off
        step_ther stick_stay still_a stop_and stop_dead stop_higher stop_right stop_short stop_that
        straight_<part> straight_knee straighten_it strap_are stretch_it surgeon_has swap_the take_them
        tell_<chat> test_it than_<more> than_your thank_you that_<harm> that_<take> that_arm that_be that_beagl
        that_bell that_did that_doe that_foot that_get that_how that_hurt that_its that_nearest that_not that_set
        that_shoulder that_stab that_th that_ther that_too that_way that_you thatll_<settle> thatll_<take>
        the_<carer> the_<kit> the_<pace> the_arch the_banister the_bar the_bend the_bill the_block the_breath
        the_calf the_clinic the_doctor the_edge the_elbow the_eye the_face the_fan the_front the_goos the_gravel
        the_hand the_insid the_jump the_knee the_knot the_minut the_moment the_morn the_next the_overhead
        the_person the_piano the_rail the_room the_rule the_second the_set the_side the_signal the_spin
        the_stitch the_track the_truck the_turn the_wall the_warm the_whol the_wob their_phon them_<harm>
        them_befor them_down them_off them_on ther_buggi ther_is ther_so ther_someth ther_to thes_and thes_cold
        they_<move> they_<wrong> they_stay theyr_bend thi_<attend> thi_<place> thi_end thi_one thi_out thi_snatch
        thigh_cramp third_<harm> third_trimester thos_<chat> thos_are thos_of thos_toda thos_with thre_month
        through_<pace> through_a through_effort through_it thumb_<place> thumb_hide thumb_right tight_<less>
        tight_fine tight_to till_its time_of tir_<move> tir_<settle> tir_grip to_<harm> to_drop to_face to_grab
        to_rack to_spin to_spot to_squeez to_watch to_your toe_<settle> toe_out too_far too_low track_wher
        trust_the tuck_<place> tuck_under tug_it turn_<less> turn_an turn_too turn_your twang_<chat> twang_you
        twent_week twist_and two_<far> two_big two_buckl two_more two_when under_<chat> under_you under_your
        understand_<chat> understand_me until_the up_<do> up_<less> up_<move> up_and up_higher up_roll up_taller
        up_too us_the use_it wait_a walk_<more> walk_<place> walk_around walk_in warm_<more> warm_<place> warm_up
        watch_for watch_your water_<swap> water_bottl way_<chat> way_<more> way_up we_<attend> we_<kit> we_<not>
        we_like we_ring we_turn we_work wear_it week_<place> week_on weight_abov weight_down weight_off
        were_about wet_leav weve_mov what_its what_under whatever_that whatever_the when_<chat> wher_<chat>
        wher_<part> wher_your who_<chat> who_you whos_<part> will_<harm> will_<move> wipe_it with_<attend>
        with_<chat> with_<far> with_<part> with_a with_both with_low with_nobod with_weight with_you within_0
        within_<num> wont_thank work_<attend> work_<place> work_if work_on work_through wrist_<move>
        wrist_<settle> wrist_stay wrong_<kit> wrong_door you_<chat> you_<kit> you_<move> you_<settle> you_<take>
        you_befor you_done you_drop you_finish you_first you_have you_in you_let you_move you_open you_put
        you_sag you_see you_skip you_stand you_stay you_stop you_sw you_trust you_twist you_understand you_wobbl
        youd_a youll_be youll_bruis youll_come youll_gan youll_wear your_<chat> your_<do> your_<far> your_<harm>
        your_<more> your_<settle> your_achill your_arch your_back your_bladder your_blood your_bon your_bottom
        your_breath your_calvesll your_confidenc your_cue your_eye your_face your_fingertip your_fist your_foot
        your_forearm your_handrail your_headll your_heart your_joint your_kne your_knee your_knuckl your_lane
        your_limit your_low your_lowest your_mate your_middl your_out your_partner your_put your_rainbow
        your_safet your_shin your_shoe your_sign your_station your_strap your_stuck your_surgeon your_third
        your_up your_vision your_wrist yourself_<chat> yourself_<place> yourself_round youv_<chat> youv_had
        youv_mov zing_<place> zing_down
      `,
    ],
    [
      -0.2,
      `
        <air>_in <attend>_at <attend>_its <attend>_of <attend>_on <attend>_over <attend>_that <attend>_the
        <attend>_thi <attend>_youv <chat>_be <chat>_behind <chat>_cant <chat>_could <chat>_it <chat>_not
        <chat>_of <chat>_off <chat>_push <chat>_read <chat>_should <chat>_start <chat>_the <chat>_ther
        <chat>_want <do>_a <do>_and <do>_befor <do>_if <do>_round <do>_your <far>_for <far>_that <far>_the
        <far>_you <harm>_goe <harm>_leg <harm>_make <harm>_point <harm>_side <ill>_its <ill>_leg <ill>_side
        <kit>_a <kit>_if <kit>_in <kit>_out <kit>_up <less>_hold <less>_it <less>_of <less>_when <more>_for
        <more>_on <move>_a <move>_at <move>_for <move>_here <move>_if <move>_round <move>_that <move>_the <not>_a
        <not>_at <not>_bend <not>_have <not>_hurt <not>_is <not>_it <not>_lean <not>_lift <not>_look <not>_mind
        <not>_mov <not>_need <not>_of <not>_rest <not>_roll <not>_sore <not>_spill <not>_ther <not>_tip
        <not>_when <not>_wor <num>_and <num>_if <num>_minut <num>_second <num>_spot <num>_step <pace>_off
        <part>_a <part>_and <part>_befor <part>_behind <part>_bend <part>_blad <part>_come <part>_drop <part>_for
        <part>_forward <part>_if <part>_instead <part>_knee <part>_over <part>_point <part>_so <part>_stop
        <part>_straight <part>_the <part>_tip <part>_to <part>_together <part>_tuck <part>_under <part>_up
        <part>_wher <part>_width <part>_you <place>_again <place>_as <place>_at <place>_behind <place>_by
        <place>_each <place>_ear <place>_for <place>_go <place>_hand <place>_into <place>_is <place>_me
        <place>_now <place>_over <place>_quiet <place>_so <place>_till <place>_under <place>_until <place>_yet
        <settle>_anyth <settle>_at <settle>_behind <settle>_got <settle>_hold <settle>_in <settle>_one
        <settle>_ther <settle>_when <settle>_your <swap>_in <swap>_of <swap>_on <take>_a <take>_in <take>_on
        <take>_ther <take>_your <wrong>_out <wrong>_the <wrong>_your a_<air> a_<more> a_<num> a_<swap> a_<wrong>
        a_bit a_breath a_half a_littl a_long a_pain a_plat a_sock a_spot a_squat a_weight able_to and_<more>
        and_<part> and_<place> and_down and_give and_grab and_stop and_the and_turn any_more are_<harm>
        are_<less> are_<place> are_bad are_crank arm_out as_<attend> as_<place> as_if as_it at_<num> at_it
        at_your back_<far> back_<less> back_<move> back_<part> back_<settle> back_arch back_knee back_of bad_leg
        balanc_is ball_of band_off be_able be_the bell_<place> bend_<place> between_the between_your bit_<place>
        bit_of breath_in calf_<do> came_<place> can_<chat> catch_it chest_<chat> chest_<place> chin_<place>
        com_<place> come_<part> come_back come_to complain_<move> complain_make could_<settle> cushion_<place>
        do_it do_the doesnt_<harm> doesnt_<ill> doesnt_hurt dont_bend dont_come dont_need dont_tip down_<place>
        down_at down_for down_like drop_it ear_<attend> ear_if elbow_<place> elbow_and eye_<place> eye_on fac_the
        face_the feel_<more> feet_<attend> feet_<harm> feet_<more> find_a first_<chat> floor_<attend> foot_in
        for_a for_it for_the forehead_<place> forward_<place> forward_on found_it from_the front_<place>
        further_<place> get_<attend> get_<less> get_ther half_of hand_<attend> hand_<settle> hand_and hand_at
        hand_behind hand_go hand_off hang_off have_got have_it have_the have_to heel_<settle> help_<chat>
        help_you hip_<move> hip_<wrong> hip_are hip_tip hold_a hold_it i_<chat> if_<chat> if_its if_that in_a
        in_it in_one in_you instead_of into_it into_the is_it is_the is_to is_what it_<chat> it_<harm> it_<more>
        it_<part> it_back it_click it_doe it_drop it_get it_insid it_let it_stand it_till it_up it_wont its_<far>
        its_<less> its_<not> its_<num> its_<wrong> its_a its_all its_just its_not its_only its_tight just_your
        kne_<move> kne_if knee_<do> knee_and knee_bend knee_down leap_<place> leav_the leav_your left_<part>
        leg_<chat> leg_first let_it let_the let_you lift_the like_<chat> like_<harm> like_your littl_<kit>
        long_<part> look_at may_<chat> most_of never_mind nip_<place> nip_in no_<far> no_<less> no_<move>
        nobod_is not_<harm> not_<ill> not_<less> not_<not> not_<wrong> not_at not_go not_sore not_wor off_befor
        off_the off_you on_<chat> on_each on_me on_the one_<attend> one_<harm> one_<kit> one_spot only_the
        onto_your operat_<part> operat_leg opposit_<part> or_<num> or_<part> or_<place> or_<swap> other_<part>
        other_hand out_<far> out_<place> out_befor out_in out_ther over_<chat> over_to past_the pelvi_<place>
        pelvi_under pick_a pinch_your point_at push_<more> push_off push_the push_up put_<num> put_<place>
        rest_on rib_<place> roll_<place> round_your sat_<place> see_<chat> see_you set_the shin_<place> shin_on
        should_be shoulder_<place> shoulder_and shoulder_blad shoulder_down show_off sit_on some_of sore_side
        spot_<place> spot_on spread_the stand_<part> stand_on star_at stay_down step_<more> step_out step_up
        stop_<chat> stop_for stop_when support_your take_the than_the that_<attend> that_<do> that_<far>
        that_<more> that_<num> that_<pace> that_<place> that_all that_back that_go that_hip that_it that_just
        the_<air> the_<more> the_<num> the_<place> the_air the_ankl the_back the_ball the_bed the_bell the_ceil
        the_chest the_feet the_finger the_first the_handl the_hip the_kne the_loop the_middl the_other the_pelvi
        the_rack the_rib the_rope the_same the_sore the_spot the_stair the_strap the_tail the_thigh them_<attend>
        them_<far> then_<chat> then_<settle> ther_<do> ther_that thi_<chat> thi_<pace> thi_time thos_<part>
        thos_who through_the tight_<part> to_<attend> to_<far> to_<wrong> to_it to_keep to_make toe_<do> toe_on
        too_<attend> too_<less> top_<part> tuck_the turn_<chat> turn_<place> under_the up_<place> up_for up_on
        walk_<part> walk_back walk_it walk_the want_it want_to way_down weight_in what_<chat> whatever_<chat>
        wher_it whil_the whol_<part> will_<swap> with_your wrist_<place> wrist_complain you_and you_could
        you_dont you_go you_had you_just you_like you_should you_start you_want your_<not> your_a your_after
        your_ankl your_backsid your_balanc your_breastbon your_bum your_calv your_chair your_ear your_elbow
        your_feet your_first your_hamstring your_hand your_hip your_jaw your_kneecap your_lap your_not your_read
        your_rib your_shoulder your_sid your_toe youv_<settle>
      `,
    ],
    [
      -0.4,
      `
        <part>_are <place>_in <place>_ther <settle>_to a_<far> for_<num> it_<not> not_a the_<ill> the_<less>
        with_the your_arm
      `,
    ],
  ],
  phrase: [
    [0.6, 'caution-hint caution-likely caution-sure'],
    [0.2, 'easier-hint easier-likely purpose'],
    [
      -0.2,
      `
        breathing-sure equipment-sure execution-likely execution-sure focus-sure range-likely range-sure
        retracted tempo-likely transitions
      `,
    ],
    [-0.4, 'chat dose_only empty_clauses focus-hint harder-sure praise tempo-sure'],
  ],
  start: [
    [
      0.4,
      `
        <chat>_<chat> <chat>_<not> <kit>_<place> <part>_<ill> <settle>_<place> a_pull chest_tight come_down
        i_mean i_need if_you_get if_your_kne keep_walk mind_the see_star that_how that_your the_minut walk_about
      `,
    ],
    [
      0.2,
      `
        <air>_<place> <attend>_<ill> <attend>_<place> <chat>_<less> <chat>_<place> <chat>_<settle> <far>_<chat>
        <far>_<move> <far>_<num> <far>_<settle> <harm>_<part> <ill>_<part> <kit>_<harm> <kit>_<part>
        <move>_<chat> <move>_<do> <move>_<move> <move>_<pace> <move>_<part> <move>_<settle> <move>_<take>
        <not>_<do> <not>_<swap> <num>_<part> <part>_<harm> <part>_<less> <part>_<more> <part>_<settle>
        <part>_<take> <settle>_<far> <settle>_<less> <swap>_<harm> a_bent a_bent_wrist a_fly a_fly_bell a_frozen
        a_knif a_knif_isnt a_pull_in a_pull_we a_stab a_stretch an_ache ankl_are ankl_are_dear any_deeper
        any_sharp anybod_with arm_and_a at_you back_a back_a_plank back_like back_like_a back_off back_out
        back_start back_start_curl back_stay back_stay_flat band_on band_on_the becaus_a becaus_if becaus_ive
        becaus_ive_seen befor_you bend_the bend_the_kne bend_your bend_your_kne bin_it bit_of bit_of_a blow_out
        both_hand both_hand_on both_sid br_the_arm br_your br_your_heel breath_out breath_out_all breath_out_as
        build_up build_up_to burning_allow call_it call_it_a catch_peopl chair_against chair_against_the
        chair_back chair_in chair_in_front check_its check_the com_off come_off come_off_it come_out come_out_of
        come_up come_up_a come_up_higher cramp_in cramp_in_the discomfort_is discomfort_is_okay do_it do_it_on
        do_not_jump dont_be_proud dont_dive dont_drop dont_flop dont_go dont_go_up dont_hang dont_haul
        dont_haul_on dont_hold_it dont_hop dont_just dont_let_your dont_lock dont_lock_them dont_panic dont_push
        dont_push_through dont_skip dont_stop dont_stop_dead drop_the_elbow ease_back elbow_feel elbow_feel_like
        ever_time everybod_two everybod_two_big feet_back feet_back_on feet_find feet_find_the feet_to
        feet_to_the feet_under find_the_box finger_on finger_on_the fingertip_on fingertip_on_it first_look
        fold_towel fold_towel_under foot_down from_about from_about_twent front_knee get_down get_down_on get_off
        give_it give_it_0 give_it_a give_the give_the_th give_yourself give_yourself_a go_and go_back go_back_to
        go_on_your half_a_chanc half_as_far hamstring_cramp hand_on_that hand_on_the hand_read handl_down have_a
        have_a_look have_a_rest head_light head_light_in heavines_down heavines_down_below hiss_it hiss_it_out
        hold_the hold_the_chair hold_the_sid hold_your hold_your_breath however_many hypermobil_peopl i_am_not
        i_do_mean i_dont i_dont_want i_like i_like_your i_mean_it i_mean_that i_need_to i_need_you id_sooner if_a
        if_it if_it_bit if_it_goe if_its_sharp if_its_still if_that_shoulder if_the if_the_back if_the_front
        if_the_knee if_ther if_ther_a if_they_cave if_you if_you_are if_you_feel if_you_have if_your
        if_your_blood if_your_grip if_your_knee if_your_shoulder if_youv_had im_not im_not_be in_line in_the_shin
        in_your in_your_third it_is it_should itll_have its_a_game its_a_hip its_been_mov its_com its_damp
        its_damp_at its_glas its_glas_thi its_greas its_greas_by its_not_cheat its_pin its_pin_the its_pret
        its_pret_flat its_slip its_slip_at its_ther its_wet its_what its_what_its its_your its_your_handrail
        its_your_shin ive_a ive_a_scar jaw_ach keep_hold keep_it_in keep_it_long keep_left keep_mov_till
        keep_one_hand keep_that_foot keep_the_knee keep_your_feet kne_down kne_follow knee_puff knee_puff_up
        land_light_under land_soft lean_on lean_on_it leav_a_hand leav_it leav_thi let_that light_on light_on_the
        look_after look_after_your look_behind look_behind_you look_in look_in_front look_up_befor look_wher
        look_wher_your lower_it lower_it_down make_fist make_it_smaller make_sure march_it mind_your
        mind_your_finger more_than more_than_that near_the_bench no_argument no_bag no_brian no_hold no_hold_your
        no_loop no_sock no_stick no_yank no_yank_on nobod_bench nobod_bench_alon nobod_doe nobod_doe_thes
        nobod_drop_off nobod_within not_0_finger not_for not_in_the not_now not_on_it not_one not_the_toe
        not_with not_with_a noth_on_wheel noth_sharp on_your_knuckl one_hand one_hand_on one_of one_on one_on_the
        only_go or_it or_itll or_your or_youv partner_stand_at past_twent past_twent_week pick_it pick_it_up
        pin_and pin_and_needl plat_off plat_off_even post_natal post_natal_ladi pres_the_front pull_it_hard
        purpl_one put_it_down put_them put_them_down rest_with rest_with_me rest_your rise_gradual roll_the
        safet_arm safet_first same_rule scoot_your scoot_your_feet seat_wet see_star_down shift_the
        shift_the_elbow shorten_it should_that should_the shoulder_grumbl sit_back_down sit_down_if sit_thi
        sit_thi_out sit_with sit_with_the sit_your_weight skip_it skip_the slow_right slow_right_down
        soft_kne_when somebody_water somebody_water_bottl spread_out stand_still_a stand_up_and stay_clos
        stay_clos_to stay_on stay_on_your step_back step_back_down step_down step_down_onto step_off step_off_one
        step_on_it stop_and stop_higher stop_short stop_short_of stop_ther take_them that_a_nerv that_its
        that_its_job that_nearest that_not that_not_your that_set that_set_finish that_the_end that_ther
        that_ther_to that_too that_you that_you_done that_your_bottom that_your_cue that_your_neck the_breath
        the_door the_door_want the_hand the_minut_the the_moment the_moment_anyth the_moment_you the_second
        the_second_it the_set the_truck the_weight the_whol the_whol_time ther_a_hose ther_a_lip ther_are_gopher
        ther_buggi thes_are_the theyv_had_mol thi_end thi_end_lump thi_one thos_are thos_of thos_of_you
        thos_with_low thumb_right thumb_right_round thumb_wrap_round tight_fine tir_grip to_get to_get_up toe_out
        toe_out_of tuck_your_heel tug_it tug_it_again turn_your turn_your_palm two_when two_when_your under_you
        under_your under_your_lowest wait_a wait_a_second wait_at_the walk_around walk_your_lane watch_your
        we_work we_work_through weight_abov weight_abov_the weve_mov weve_mov_the whatever_that whatever_the
        when_your_up wipe_it with_a_tug wrist_stay_stack you_come you_dont you_have you_keep you_keep_it you_let
        you_let_go you_may_shak you_never you_put_it you_stop youll_gan youll_wear youll_wear_it your_back
        your_calvesll your_done your_head_just your_on_one your_partner_stand your_shoulder your_whol
        your_whol_foot youv_gone youv_gone_too
      `,
    ],
    [
      -0.2,
      `
        <attend>_<chat> <chat>_<more> <chat>_<move> <chat>_<swap> <do>_<part> <harm>_<more> <ill>_<place>
        <kit>_<more> <not>_<pace> <not>_<part> <not>_<place> <num>_<kit> <part>_<do> <part>_<move> <part>_<place>
        <place>_<part> <swap>_<far> <swap>_<place> a_bit bad_leg come_back come_on come_up_on do_not_hold
        do_not_wor dont_come dont_drop_it find_a go_down hand_on_your if_it_click if_it_nip if_you_can
        if_you_cant if_your_heel if_your_neck it_doesnt its_only keep_it_insid keep_the leav_the like_a like_your
        look_at never_mind no_sham nobod_is not_a on_your_back operat_leg pick_a sit_down sit_on sit_up stay_ther
        stop_at_the stop_when that_all the_arm the_knee ther_is walk_back walk_it walk_your_feet whol_foot
        you_are you_can you_could you_dont_need you_should your_not
      `,
    ],
    [-0.4, 'hold_it'],
  ],
  word: [
    [0.8, 'check sharp'],
    [0.6, 'becaus buckl cold cramp joint leav mean miss or tug'],
    [
      0.4,
      `
        anybod bark befor blood bruis catch chair closer dog drop end feel finger first flat give glas goe grab
        grumbl hot how itll ive jog lock mind moment month never new off overhead pain partner pay pleas round
        safet shorten skip spin stretch sure swim than thi thursda toda trust twist walk week within wrist youll
      `,
    ],
    [
      0.2,
      `
        abov ach achill after alon along among and any anyon anyth arch argument around asthmatic badg beagl been
        behind below bench bend bill bin bladder bon bottl box buggi burn burning calf calvesll car caus chanc
        clear clinic clip collar com come complain confidenc contraction cos cue cur cute dear densit detach
        discomfort dish distanc div dive divvent dizz do doctor done door doubl down e ease eye fan far fast feet
        find fine fingertip finish flutter fly forc forgiv front frozen fun gan gentl get given go goos gopher
        gravel had half hammer hamstr hamstring handrail have head headach headll heart heavines here hero hide
        higher hiss histor hol hold hose hover however hump hurt hypermobil im inhaler instead it its janin job
        jump keep kid kind knee kneecap kneel knif know land lane lap late least ligament light limit limp look
        lowest make many march mate medal mix moan mol morning mov nag natal neck needl nerv next nick nip nobod
        on once one open osteoporosi otherwis over pacemaker pack palm panic peopl person pin ping pop prawn
        pregnant pressur problem put rail rainbow read regular retina right roll ron room root rug rule sag said
        scar see seen set shak shift shin shorter shoulder shout signal sit skat slab slip slow smaller snatch
        sneez so somebod someon someth soon sooner spik spotter sprain sprinkler stab stand star start station
        stay stitch stop straighten strain strap suffer surgeon tabl tak tear teeth tell tendon test that thatll
        ther thes they thin thinner thos thumb tight till time tingl told tomorrow tonight towel track tree
        trimester truck twing under understand unhook unstead vision warm watch wet whatever wheel whoever with
        wooz wrap wrench yank year yes you your zing
      `,
    ],
    [
      -0.2,
      `
        able acros again age ahead air all an apart arc arm armpit as asleep backsid ball beat bed begin bel best
        better big bit blad board body bor bow breastbon bridg brush bump bus button by calv can ceil cheat cheek
        chest child chin clap clean clench coat collarbon cone count coupl cushion dangl degre desk dig dip draw
        driv dumbbell each ear easier eight elbow empt enough everyth fac fall fifteen fire five float forget
        fort four fram free full gap got grip grow grump guard hang heal hear help home hook i imagin into lac
        ladder last lazy lead let letter level lik line littl long longer loop lose lot love lung mat meet most
        much name near need nice nose number of onto operat opposit other our outsid own pair paus pelvi perfect
        pick plac plant plent pocket point pol pretend punch quad quarter rais rang reach real red relax rest
        rock rope row run rush sat she shop shouldnt shov show shrug sideway six slack small soften some somebody
        sore sort spe spill squash squat squeez stair stiff stool strid strok strong support t take tea the
        themselv theyll think though thre throw tightrop tin to toe top toward tray trip try tuck twic two ugly
        underneath up very waist wander was wash wee well went were which who why wide width without wor would
        yellow yourself
      `,
    ],
    [
      -0.4,
      `
        0 bad balanc between bum could heel hip lean lift like my noth rib same tall ten thigh together touch
        want whil
      `,
    ],
    [-0.6, 'forward leg'],
  ],
} as const satisfies CueWeights
