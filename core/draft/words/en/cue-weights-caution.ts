/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind caution; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const CAUTION_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [0.8, 'harm'],
    [0.6, 'ill'],
    [0.4, 'carer'],
    [0.2, 'not settle take'],
    [-0.2, 'far more swap'],
    [-0.4, 'air num pace'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.8, 'check'],
    [0.6, 'back come give mind'],
    [0.4, 'any becaus bend do feet leav look make never only step stop tug walk'],
    [
      0.2,
      `
        <harm> <ill> <less> <not> a alway anybod ask be befor bin br bruis caus chair closer cold com contraction
        cos cramp discomfort dish divvent drop finger fingertip fold glas go half hamstring hand have hiss i if
        im itll its ive janin jog keep kid kne kneecap nobod one or partner pleas post purpl rest rise ron rug
        safet shift shorten shout skip sore spik that the ther theyv thi thos thumb tight under unhook wait watch
        whatever when wrist you youll your
      `,
    ],
    [
      -0.2,
      `
        0 <air> <do> <far> <pace> <part> <take> <wrong> all bar bell big bottom bum chest curl down elbow feel
        find finish for forearm grab grip grow hang hip hold how ill imagin in last let lift like long loos nice
        nobody off on other out over palm pinch rib same set slip small snap squeez start stay take tall thre tip
        toe try up we wher whol
      `,
    ],
    [-0.4, '<chat> <more> <num> <place> heel push'],
    [-0.6, 'not'],
  ],
  given: [
    [0.4, 'sharp shoulder'],
    [
      0.2,
      `
        <part> <wrong> a ach at back bark bit bladder bon bottom buckl but calf catch cave cramp creep do down
        easy enough feel fine fist forearm goe grab half hamstr hip hot ill jog just kitchen knee late moan of
        open or out pull room scar shin start still stuck swim switch take than the they twing wobbl your zing
      `,
    ],
    [
      -0.2,
      `
        0 <chat> <harm> <kit> <not> again and balanc befor bend can chair crank doesnt feet hamstring head hurt
        lower noth off on pres put reach stick tablet that tonight too want way wont
      `,
    ],
  ],
  last: [
    [0.6, 'first'],
    [0.4, 'cold cramp far for grumbl instead off on over pleas read toe walk you'],
    [
      0.2,
      `
        about after alway arch argument backward bar bark bell bit bon broken bruis buckl buggi cat catch caus
        chanc complain cos cur cute dead dear deep did dish divvent done elbow everybod eye face fingertip finish
        fist floor foot forearm frida fun gan glas good goos grab hamstr hand handl handrail here higher hol hot
        isnt job jog joint kid kind kneel knuckl land left lock lowest lump me mol month nearer neck nick night
        open osteoporosi other otherwis out overhead palm panic park partner pay piano pinch ping prawn pressur
        proud quick quit rainbow ron round rule sag seriou shak shallow sharp shoe shorter smaller spik stop
        stretch sure swim tabl talk teeth th that then ther thi thin thursda tim time toda tomorrow tonight towel
        truck tug twist unhook way wet wrist
      `,
    ],
    [
      -0.2,
      `
        arc arm ask bad bed bench breath chin clos com count day door enough fenc flop forward four front home
        hook jaw kne knee last leg line low middl no noth pillow plent pocket rack rest seat shoulder sit skip
        soft sore spot squat stair start step straight strok swap tall them thigh thre trip turn twic two weight
        wide wob
      `,
    ],
    [-0.4, 'back'],
  ],
  length: [
    [0.2, '5-7 8-12'],
    [-0.2, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.6, '<chat>_done the_box'],
    [
      0.4,
      `
        <air>_out <attend>_it <chat>_land <chat>_put <do>_about <do>_on <harm>_in <kit>_off <move>_about
        <move>_on <move>_sure <move>_walk <num>_week <part>_cramp <part>_down <part>_grumbl <part>_lower
        <part>_on <part>_read <part>_start <place>_off <place>_that <settle>_and a_hand an_ankl anybod_with
        at_all befor_<chat> befor_you chair_<place> come_off come_out drop_off get_<place> hand_hover hand_on
        have_a how_<part> in_your it_a its_ther its_your keep_walk leav_it let_<settle> let_go make_sure
        new_<part> not_<do> or_your out_all shorten_it start_to stay_<place> step_down that_your the_<kit>
        the_buckl the_chair the_joint thi_<num> too_<far> walk_about whol_<pace> whol_time you_land your_<carer>
        your_<place> your_foot your_palm
      `,
    ],
    [
      0.2,
      `
        0_week <air>_push <attend>_a <attend>_abov <attend>_after <attend>_along <attend>_away <attend>_behind
        <attend>_cramp <attend>_feet <attend>_for <attend>_head <attend>_here <attend>_in <attend>_is
        <attend>_off <attend>_under <attend>_when <attend>_wher <chat>_back <chat>_come <chat>_do <chat>_feel
        <chat>_finish <chat>_for <chat>_heav <chat>_is <chat>_its <chat>_jog <chat>_let <chat>_lighter
        <chat>_mean <chat>_mol <chat>_on <chat>_open <chat>_over <chat>_ping <chat>_puff <chat>_seen
        <chat>_seriou <chat>_skip <chat>_so <chat>_stop <chat>_stuck <chat>_to <chat>_trust <chat>_understand
        <chat>_up <chat>_wobbl <chat>_year <do>_around <do>_cold <do>_gradual <do>_instead <do>_is <do>_like
        <do>_off <do>_peopl <do>_still <do>_up <do>_wher <far>_back <far>_bone <far>_go <far>_it <far>_to
        <far>_turn <harm>_at <harm>_do <harm>_first <harm>_happen <harm>_how <harm>_is <harm>_keep <harm>_leav
        <harm>_out <harm>_pleas <harm>_shoulder <harm>_to <harm>_wrist <harm>_you <ill>_do <ill>_down <ill>_in
        <ill>_is <ill>_shoulder <ill>_stay <ill>_stop <ill>_wrist <kit>_abov <kit>_against <kit>_are <kit>_back
        <kit>_down <kit>_first <kit>_from <kit>_handl <kit>_instead <kit>_it <kit>_one <kit>_that <kit>_with
        <kit>_you <less>_as <less>_back <less>_far <less>_grip <less>_hip <less>_low <less>_or <less>_slid
        <less>_the <less>_them <less>_way <less>_with <less>_you <more>_and <more>_higher <more>_taller
        <more>_than <more>_to <more>_too <move>_around <move>_clos <move>_fist <move>_gradual <move>_half
        <move>_hold <move>_is <move>_left <move>_light <move>_off <move>_one <move>_peopl <move>_stack <move>_to
        <move>_too <not>_0 <not>_and <not>_argument <not>_be <not>_bench <not>_brian <not>_crank <not>_cross
        <not>_dead <not>_do <not>_drop <not>_fight <not>_hap <not>_haul <not>_hop <not>_jok <not>_jump <not>_just
        <not>_kid <not>_like <not>_lock <not>_medal <not>_now <not>_overhead <not>_push <not>_read <not>_sharp
        <not>_short <not>_sit <not>_slid <not>_sock <not>_twist <not>_want <not>_within <not>_wrench <not>_you
        <num>_as <num>_buckl <num>_finger <num>_hand <num>_month <num>_that <num>_the <num>_way <num>_when
        <pace>_down <pace>_first <pace>_head <pace>_pleas <pace>_right <pace>_toe <pace>_under <pace>_with
        <part>_abov <part>_bark <part>_caught <part>_closer <part>_complain <part>_each <part>_feel <part>_find
        <part>_first <part>_get <part>_go <part>_goe <part>_grab <part>_higher <part>_hover <part>_in <part>_it
        <part>_joint <part>_let <part>_light <part>_long <part>_mean <part>_moan <part>_not <part>_of <part>_open
        <part>_or <part>_pay <part>_right <part>_swim <part>_tap <part>_that <part>_ther <part>_will <part>_with
        <place>_all <place>_and <place>_away <place>_back <place>_com <place>_first <place>_from <place>_fun
        <place>_ground <place>_here <place>_higher <place>_it <place>_its <place>_long <place>_nearer <place>_of
        <place>_peel <place>_start <place>_stay <place>_taller <place>_the <place>_through <place>_thursda
        <place>_too <place>_wheel <settle>_a <settle>_another <settle>_been <settle>_broken <settle>_down
        <settle>_flat <settle>_for <settle>_halfwa <settle>_instead <settle>_lighter <settle>_off <settle>_onto
        <settle>_out <settle>_over <settle>_ping <settle>_somebod <settle>_someth <settle>_still
        <settle>_straight <settle>_till <settle>_wooz <settle>_you <swap>_are <swap>_argu <swap>_argument
        <swap>_behind <swap>_brian <swap>_for <swap>_grab <swap>_heel <swap>_hero <swap>_hurt <swap>_medal
        <swap>_not <swap>_sock <swap>_stick <swap>_still <swap>_the <swap>_thi <swap>_twist <swap>_yank
        <take>_another <take>_away <take>_befor <take>_broken <take>_closer <take>_down <take>_each <take>_find
        <take>_flat <take>_onto <take>_somebod <take>_someth <take>_still <take>_straight <take>_up <take>_wher
        <take>_you <wrong>_and <wrong>_door <wrong>_in <wrong>_into <wrong>_it <wrong>_them a_<attend> a_<harm>
        a_<less> a_<part> a_<settle> a_bell a_cat a_chanc a_crunch a_door a_game a_hammer a_hamstr a_hip a_hose
        a_knif a_lip a_look a_miss a_moment a_nerv a_new a_pole a_prawn a_pull a_rest a_scar a_second a_sharp
        a_shoulder a_stab a_straight a_stretch a_switch a_tabl a_thinner a_time a_zing about_twent abov_that
        after_your against_the all_hold all_the alon_<place> alon_in am_<not> am_not an_<part> an_ache
        and_<attend> and_<move> and_<not> and_back and_call and_just and_keep and_look and_march and_miss
        and_needl and_not and_only and_push and_slow and_still and_straighten and_take and_tell and_they
        ankl_<chat> ankl_<settle> ankl_go any_<far> any_<harm> any_sharp anybod_<place> anybod_on anyon_<place>
        anyon_up are_<not> are_dear are_gopher are_heav are_not are_shak are_thin arm_<do> arm_<far> arm_<more>
        arm_<move> arm_<place> arm_lower arm_of arm_read as_you as_your at_<chat> at_you back_<attend>
        back_<place> back_a back_com back_grumbl back_long back_off back_peel back_start back_stay band_on
        bar_with bark_at be_<harm> be_<less> be_<pace> be_cute be_held be_proud becaus_<attend> becaus_a
        becaus_if becaus_ive been_<chat> been_mov befor_the below_wher bench_alon bend_it bend_the bend_your
        big_<kit> big_step bin_it bit_at blood_<harm> blood_pressur blow_out bon_are bone_densit book_are
        both_hand both_sid bounc_<place> box_<chat> box_first box_with br_your breath_<do> breath_out breath_push
        buckl_again by_the calv_<chat> calv_<settle> calv_go came_late can_grab car_park care_how catch_<more>
        catch_<place> catch_peopl catch_up caught_<more> caught_<place> caught_up chair_<part> chair_against
        chair_back chair_in chair_next check_its check_the check_them chest_with clear_of clos_to cold_<part>
        com_at com_for com_off come_<place> come_down come_over cramp_<take> crank_your crawl_out cue_to damp_at
        discomfort_is do_<do> do_<harm> do_<less> do_<move> do_<not> do_a do_heel do_hero do_not do_snap
        doesnt_<attend> doesnt_like doesnt_rock dog_<more> dog_left dog_park dont_<not> dont_<swap> dont_do
        dont_drop dont_fight dont_flop dont_go dont_hang dont_haul dont_hop dont_just dont_lock dont_push
        dont_stop dont_want door_want door_you down_<pace> down_and down_first down_hard down_if down_nice
        down_with drop_<num> drop_down drop_them each_other ease_<part> ease_<place> ease_back ease_off
        elbow_<do> elbow_<far> elbow_<less> elbow_<move> elbow_feel elbow_lower end_lump everybod_<num>
        everybod_two eye_<far> face_each fall_happen feel_<attend> feel_<harm> feel_<ill> feel_it feel_sharp
        feet_<chat> feet_<place> feet_<settle> feet_away feet_closer feet_down feet_find feet_to feet_under
        few_inch find_the finger_<place> finger_on fingertip_<place> fingertip_on first_<attend> flat_<place>
        flat_ground flat_on floor_<do> floor_<move> floor_mean floor_ther floor_us fold_<kit> fold_<swap>
        fold_over fold_towel foot_at foot_down foot_heav foot_lift for_<harm> for_glas for_me for_nick
        forearm_and from_<place> from_about from_under front_knee front_of get_<more> get_a get_broken get_down
        get_off get_somebod get_up give_it give_the give_thi glas_thi go_<attend> go_<ill> go_<less> go_<swap>
        go_and go_heav go_its go_lighter go_on go_ping goe_<attend> gone_<less> gone_too gopher_hol got_a
        got_blood grab_someth gras_<place> gras_behind ground_befor had_a had_mol half_<attend> half_as half_that
        half_the half_way hammer_<place> hammer_in hamstring_cramp hand_<do> hand_<more> hand_<place> hand_it
        hand_open hand_read hand_stay hand_ther happen_when haul_<place> haul_on have_been have_your head_and
        head_caught head_just head_light head_swim headll_swim heel_in heel_nearer heel_tap higher_<place>
        hip_<ill> hip_in hip_stretch hiss_it hold_<place> hold_of hold_on hold_the hop_<place> hose_<place>
        hose_acros hover_<place> hover_over hover_your how_<harm> how_peopl hurt_<chat> hurt_your i_<less> i_like
        i_mean i_need if_a if_it if_the if_ther if_your ill_<settle> ill_take im_<not> im_not im_seriou in_nearer
        in_the insid_of into_a is_<harm> is_fine is_how is_okay it_<do> it_<less> it_<num> it_<pace> it_<wrong>
        it_again it_arch it_becaus it_bit it_div it_down it_for it_goe it_hard it_on it_out it_roll it_sav
        it_settl it_should it_side it_smaller itll_<do> itll_have its_bark its_com its_damp its_glas its_kind
        its_pin its_sharp its_slip its_still its_the its_what ive_<chat> ive_a ive_seen jog_<chat> jog_first
        jump_<place> jump_down jump_off just_<air> just_<do> just_<move> just_<take> just_below just_breath
        just_hold just_walk keep_<settle> keep_<take> keep_hold keep_left keep_your kne_<ill> kne_<not>
        kne_<settle> kne_as kne_complain kne_down kne_or knee_<attend> knee_doesnt knee_first knee_goe knee_stay
        knif_<not> knif_isnt knuckl_on land_<attend> land_soft lap_of last_year late_and leav_that leav_thi
        leg_<more> leg_here leg_higher leg_up let_<chat> lie_<place> lie_on lift_your light_<place> light_head
        light_in light_under littl_turn lock_it lock_them long_and look_<place> look_after look_along look_behind
        look_in look_wher lot_of low_<part> low_<place> low_back low_bone lower_<place> lower_back lower_it
        lowest_<do> lowest_<far> lowest_point mak_<chat> mak_you make_<part> make_fist march_it mat_so mean_it
        mean_that medal_for middl_of middl_toe mind_<more> mind_the mind_up mind_your minut_or moment_befor
        mov_the mov_till muscl_<settle> natal_ladi need_<chat> need_you never_<do> never_<move> never_<wrong>
        new_hip next_to nip_at no_<harm> no_argu no_argument no_brian no_hold no_medal no_sock no_stick no_twist
        no_yank nobod_<do> nobod_bench nobod_doe nobod_within not_0 not_<more> not_<move> not_<num> not_<place>
        not_<settle> not_<swap> not_<take> not_be not_come not_cros not_hap not_jok not_jump not_kid not_now
        not_on not_one not_overhead not_read noth_sharp of_<chat> of_<num> of_everybod of_it of_its of_the
        off_<attend> off_<far> off_<num> off_<place> off_even off_everybod off_if off_one on_a on_it on_that
        on_to on_wheel one_<part> one_com one_folk one_hand one_of one_slow one_that only_<chat> only_<do>
        only_<move> only_go only_if onto_the open_away open_your or_<chat> or_<settle> or_<take> or_have or_it
        or_itll or_sit or_you or_youv out_of out_over out_the over_fun overhead_<attend> overhead_<swap> pain_is
        palm_in partner_stand pay_for peel_off pillow_behind pin_and pin_the pinch_<more> pinch_<place> pinch_in
        pinch_up post_natal pressur_<place> pressur_on pull_<place> pull_in pull_is purpl_<num> purpl_one
        push_through push_with put_the put_them put_your rail_<place> regular_<air> regular_breath rest_with
        right_<chat> right_<do> right_round right_then rise_<pace> rise_gradual roll_off roll_on roll_the
        round_<attend> round_it round_like rule_<attend> rule_as safet_<chat> safet_first same_rule scar_off
        scoot_your scrap_anyon second_at second_toe second_your see_star see_the seen_it send_the set_finish
        set_for sharp_<harm> sharp_<ill> sharp_<num> sharp_<place> sharp_one shed_roof shin_are short_of
        shoulder_<ill> shoulder_bark shoulder_complain shoulder_grumbl shout_for shuffl_<far> shuffl_till shut_in
        side_<less> side_<not> side_<swap> side_and side_instead sit_<attend> sit_straight sit_thi skip_it
        skip_the slid_<more> slid_up slip_at slow_<place> slow_down slow_right somebody_water someon_to
        someth_<harm> someth_<more> someth_<pace> someth_and someth_stead soon_<attend> soon_as spin_do
        spot_<chat> spot_you sprinkler_<part> sprinkler_head stand_at stand_behind stand_still stand_wher
        stay_<attend> stay_<do> stay_<move> stay_by stay_clos stay_flat stay_stack step_<part> step_back step_it
        step_off step_ther stick_stay stood_behind stop_and stop_dead stop_higher stop_short stop_that
        straight_<part> straight_away straight_knee strap_are stretch_it tell_<chat> tell_me test_it than_that
        thank_you that_<kit> that_<not> that_<part> that_<take> that_beagl that_chair that_did that_doe that_foot
        that_get that_how that_its that_leg that_nearest that_not that_set that_shoulder that_th that_ther
        that_way thatll_<settle> thatll_<take> the_<pace> the_<part> the_<wrong> the_arch the_banister the_bar
        the_bill the_block the_calf the_car the_doctor the_edge the_elbow the_end the_face the_front the_goos
        the_gravel the_hand the_head the_kneecap the_knot the_minut the_overhead the_piano the_rail the_room
        the_rule the_second the_set the_shin the_stitch the_truck the_turn the_wall the_weight the_whol the_wob
        their_phon them_<harm> them_befor them_down them_on ther_are ther_buggi ther_is ther_so ther_someth
        ther_to thes_and thes_cold they_<move> they_<wrong> they_stay theyr_bend theyv_had thi_<attend>
        thi_<place> thi_end thi_one thi_out third_<harm> third_trimester thos_are thre_month through_it
        thumb_<place> thumb_right tight_<less> tight_<swap> tight_fine tight_to time_of tir_<move> tir_<settle>
        tir_grip to_<harm> to_both to_catch to_face to_grab to_open to_spot to_your toe_<settle> toe_out too_far
        too_low tuck_<place> tuck_under tug_it turn_<less> turn_an turn_too turn_your twent_week two_<far>
        two_big two_buckl two_when under_<chat> under_you under_your understand_<chat> understand_me until_the
        up_<less> up_and up_higher up_taller up_too us_the use_it wait_a walk_<more> walk_around walk_in
        wall_<not> wall_<swap> wall_instead watch_for watch_your water_<swap> water_bottl way_<chat> way_<more>
        way_up we_turn week_<place> week_on weight_abov weight_down weight_off wet_leav weve_mov what_its
        whatever_that when_we wher_<chat> wher_your wipe_it with_<attend> with_<chat> with_<far> with_<part>
        with_a with_both with_low with_weight within_0 within_<num> wont_<chat> wont_thank work_<attend> work_if
        wrist_<move> wrist_<settle> wrist_stay wrong_<kit> wrong_door you_<chat> you_<kit> you_<move> you_<pace>
        you_<settle> you_<take> you_<wrong> you_all you_befor you_feel you_first you_in you_let you_open you_put
        you_see you_skip you_stop you_trust you_twist you_understand you_wobbl youd_a youll_be youll_come
        youll_gan youll_wear your_<air> your_<chat> your_<do> your_<far> your_<harm> your_<more> your_<settle>
        your_achill your_arch your_back your_bladder your_blood your_bon your_bottom your_breath your_calvesll
        your_cue your_done your_eye your_face your_fingertip your_forearm your_handrail your_head your_headll
        your_heart your_joint your_kne your_knee your_knuckl your_lane your_low your_lower your_lowest your_middl
        your_neck your_out your_partner your_put your_rainbow your_shin your_shoe your_station your_strap
        your_stuck your_surgeon your_teeth your_third your_up your_vision your_wrist yourself_<chat>
        yourself_<place> yourself_round youv_had youv_mov zing_<place> zing_down
      `,
    ],
    [
      -0.2,
      `
        <air>_in <attend>_at <attend>_befor <attend>_its <attend>_on <attend>_over <attend>_that <attend>_thi
        <attend>_youv <chat>_behind <chat>_can <chat>_cant <chat>_could <chat>_of <chat>_only <chat>_push
        <chat>_read <chat>_should <chat>_start <chat>_that <chat>_the <chat>_ther <chat>_turn <chat>_want <do>_a
        <do>_and <do>_backward <do>_for <do>_if <do>_your <far>_for <far>_the <far>_you <harm>_leg <harm>_or
        <harm>_point <ill>_its <ill>_leg <ill>_side <kit>_a <kit>_if <kit>_in <kit>_is <kit>_out <kit>_up
        <less>_for <less>_hold <less>_it <less>_of <less>_your <more>_for <more>_on <move>_a <move>_for <move>_if
        <move>_it <move>_that <move>_you <not>_a <not>_at <not>_bend <not>_have <not>_hurt <not>_is <not>_it
        <not>_lean <not>_lift <not>_look <not>_mind <not>_mov <not>_need <not>_roll <not>_ther <not>_when
        <not>_wor <num>_and <num>_if <num>_second <num>_step <pace>_befor <part>_a <part>_and <part>_are
        <part>_behind <part>_bend <part>_blad <part>_come <part>_doe <part>_drop <part>_forward <part>_instead
        <part>_knee <part>_point <part>_so <part>_straight <part>_to <part>_together <part>_tuck <part>_up
        <part>_want <part>_width <part>_you <place>_again <place>_as <place>_at <place>_behind <place>_by
        <place>_each <place>_ear <place>_for <place>_hand <place>_into <place>_me <place>_slow <place>_so
        <place>_ther <place>_under <settle>_at <settle>_behind <settle>_got <settle>_hold <settle>_if <settle>_in
        <settle>_one <settle>_the <settle>_ther <settle>_your <swap>_in <swap>_on <take>_a <take>_in <take>_ther
        <take>_your <wrong>_out <wrong>_the <wrong>_your a_<air> a_<chat> a_<far> a_<num> a_<swap> a_<wrong>
        a_breath a_cushion a_half a_littl a_pain a_plat a_proper a_spot a_squat a_step about_a and_<num>
        and_<place> and_down and_give and_stop and_the and_turn and_your any_more are_<harm> are_<less> are_bad
        are_crank arm_out as_<attend> as_<place> as_if as_it at_<num> back_<chat> back_<far> back_<less>
        back_<move> back_<part> back_<settle> back_arch back_knee back_of bad_leg balanc_is ball_of band_off
        bell_<place> bell_down bend_<place> between_the between_your bit_<place> bit_of bottom_<place> can_<chat>
        catch_it chest_<place> chin_<place> come_<part> come_back come_on come_to cushion_<place> doe_<not>
        doe_not doesnt_<ill> doesnt_hurt dont_come dont_need down_<place> down_in down_like drop_it ear_<attend>
        ear_if elbow_<place> elbow_and eye_<place> fac_the face_the feet_<attend> feet_<harm> find_a first_<chat>
        floor_<place> foot_in for_a for_it forward_<place> forward_on from_the front_<place> get_<less> get_ther
        go_<pace> half_of hand_<attend> hand_<settle> hand_and hand_at hand_go hand_off hang_off have_got have_it
        head_<not> heel_<settle> hip_<move> hold_a hold_it i_<chat> if_<chat> if_its if_that in_<num> in_<place>
        in_a in_it in_one into_it into_the is_the is_to it_<chat> it_<harm> it_<more> it_<move> it_<part>
        it_<place> it_back it_doesnt it_drop it_get it_insid it_let it_stand it_till it_up it_wont its_<far>
        its_<less> its_<not> its_<num> its_<place> its_<wrong> its_a its_just its_not its_only kne_<move> kne_are
        kne_if knee_<do> leap_<place> leav_the leav_your left_<part> leg_<chat> leg_<do> leg_first let_it let_the
        let_you lie_down lift_the like_<chat> like_<harm> like_your look_at much_<settle> need_to nice_and
        nip_<place> nip_in no_<less> no_<move> nobod_is not_<chat> not_<far> not_<harm> not_<ill> not_<not>
        not_<wrong> not_a not_wor of_a off_befor off_the off_you on_me one_<attend> one_<harm> one_<kit> only_the
        onto_your operat_<part> operat_leg opposit_<part> or_<num> or_<place> or_<swap> other_<part> other_hand
        out_<far> out_befor out_in out_ther past_the pinch_your point_at push_off put_<place> rib_<place>
        round_your sat_<place> should_be shoulder_<place> shoulder_and shoulder_blad shoulder_down show_off
        sit_on sock_on some_of spot_<place> spot_on stand_on start_with stay_down stay_on step_<more> step_out
        step_up stop_<chat> stop_when support_your take_the that_<attend> that_<do> that_<far> that_<num>
        that_<pace> that_<place> that_all that_back that_it the_<air> the_<chat> the_<more> the_<num> the_<place>
        the_<settle> the_air the_ankl the_ball the_bed the_bell the_body the_bottom the_ceil the_clock the_finger
        the_first the_hip the_kne the_loop the_middl the_other the_rest the_rib the_same the_spot the_stair
        the_thigh them_<far> then_<chat> ther_<do> ther_a ther_that thi_<pace> thi_time through_the tight_<part>
        to_<attend> to_<far> to_<swap> to_<wrong> to_it toe_<do> toe_on too_<attend> too_<less> top_<part>
        tuck_the turn_<place> up_<attend> up_<place> up_for up_on walk_<part> walk_back walk_it walk_the want_it
        way_down weight_in what_<chat> wher_it whol_<part> with_your wrist_complain you_<far> you_<less>
        you_<more> you_could you_dont you_just you_like you_should you_start you_take you_want your_<ill>
        your_<not> your_a your_after your_ankl your_bum your_calv your_chair your_ear your_elbow your_feet
        your_first your_front your_hamstring your_hand your_hip your_jaw your_kneecap your_lap your_not your_read
        your_rib your_shoulder your_sid your_thumb your_toe
      `,
    ],
    [
      -0.4,
      `
        <part>_for <part>_if <place>_in <settle>_to do_it for_<num> it_<not> the_<ill> the_<less> with_the you_go
        your_arm
      `,
    ],
  ],
  phrase: [
    [0.6, 'caution-hint caution-sure'],
    [0.4, 'caution-likely'],
    [0.2, 'easier-hint easier-likely fault-likely purpose'],
    [
      -0.2,
      `
        breathing-sure chat equipment-sure execution-likely execution-sure focus-sure range-likely range-sure
        retracted tempo-likely transitions
      `,
    ],
    [-0.4, 'dose_only empty_clauses focus-hint harder-sure praise tempo-sure'],
  ],
  start: [
    [
      0.4,
      `
        <chat>_<chat> <chat>_<not> <part>_<ill> <settle>_<place> come_down i_mean keep_walk that_how that_your
        walk_about
      `,
    ],
    [
      0.2,
      `
        <air>_<place> <attend>_<place> <chat>_<place> <chat>_<settle> <far>_<chat> <far>_<move> <ill>_<part>
        <kit>_<harm> <kit>_<part> <kit>_<place> <move>_<chat> <move>_<do> <move>_<move> <move>_<pace>
        <move>_<settle> <move>_<take> <not>_<do> <not>_<settle> <not>_<swap> <num>_<part> <part>_<attend>
        <part>_<harm> <part>_<more> <part>_<settle> <part>_<take> <settle>_<far> <settle>_<less> <swap>_<harm>
        a_bent a_door_you a_knif a_knif_isnt a_pull a_pull_in a_stretch a_stretch_is an_ache ankl_are
        ankl_are_dear any_sharp anybod_on anybod_on_a anybod_with anybod_with_a arm_and_a at_you back_a
        back_a_plank back_like back_like_a back_off back_start back_start_curl back_stay back_stay_flat band_on
        band_on_the becaus_a becaus_if becaus_ive befor_you bend_the bend_the_kne bend_your bend_your_kne bin_it
        blow_out both_hand both_hand_on both_sid br_the_arm br_your br_your_heel breath_out breath_out_all
        breath_out_as build_up build_up_to catch_peopl chair_against chair_against_the chair_in chair_in_front
        check_its check_the com_off come_off come_off_it come_out come_out_of come_up come_up_a come_up_higher
        cramp_in cramp_in_the discomfort_is discomfort_is_okay do_it do_it_on do_not_jump dont_be_proud dont_drop
        dont_fight dont_fight_it dont_flop dont_go dont_go_up dont_hang dont_haul dont_haul_on dont_hold_it
        dont_hop dont_just dont_lock dont_lock_them dont_panic dont_push dont_push_through dont_stop
        dont_stop_dead drop_the_elbow ease_back elbow_feel elbow_feel_like ever_time everybod_two
        everybod_two_big feet_back feet_back_on feet_find feet_find_the feet_to feet_to_the feet_under
        find_the_box finger_on finger_on_the fingertip_on fingertip_on_it fold_towel fold_towel_under foot_down
        from_about from_about_twent front_knee get_down get_down_on give_it give_it_0 give_it_a give_the
        give_the_th give_thi give_thi_one give_yourself_a go_and go_back go_back_to go_on_your got_a half_a_chanc
        hamstring_cramp hand_on hand_on_that hand_on_the hand_read have_a have_a_look have_a_rest head_light
        head_light_in hiss_it hiss_it_out hold_the hold_the_chair hold_the_sid hold_your hold_your_breath
        i_am_not i_dont i_dont_want i_like i_like_your i_mean_it i_mean_that i_need i_need_you if_a if_it
        if_it_arch if_it_bit if_it_goe if_its_sharp if_its_still if_that_shoulder if_the if_the_back if_the_front
        if_ther if_ther_a if_they_cave if_you if_you_are if_you_feel if_you_get if_your if_your_grip if_your_kne
        if_your_knee if_your_shoulder if_youv_a im_not im_not_be in_the_shin in_your in_your_third it_is
        it_should itll_have its_a_game its_a_hip its_been_mov its_com its_damp its_damp_at its_glas its_glas_thi
        its_not_cheat its_pin its_pin_the its_slip its_slip_at its_ther its_wet its_what its_what_its its_your
        its_your_handrail ive_a ive_a_scar keep_hold keep_left keep_mov_till keep_that_foot keep_the_knee
        keep_your_feet kne_down knee_goe knee_goe_over land_light_under land_soft lean_on lean_on_it leav_a_hand
        leav_it leav_thi light_on light_on_the look_after look_after_your look_behind look_behind_you look_in
        look_in_front look_wher look_wher_your lower_it lower_it_down make_fist make_it_smaller make_sure
        march_it mind_the mind_up mind_your more_than more_than_that near_the_bench no_argument no_bag no_brian
        no_hold no_hold_your no_loop no_medal no_sock no_stick no_yank no_yank_on nobod_bench nobod_bench_alon
        nobod_doe nobod_doe_thes nobod_drop_off nobod_within not_0 not_0_finger not_now not_on not_on_it
        not_the_toe noth_on_wheel noth_sharp on_your_knuckl one_hand one_hand_on one_of one_on one_on_the only_go
        or_it or_itll or_your or_youv partner_stand_at pick_it pick_it_up pin_and pin_and_needl plat_off
        plat_off_even post_natal post_natal_ladi pres_it pres_the_front pull_it_hard purpl_one put_it_down
        put_them put_them_down rest_with rest_with_me rise_gradual roll_the safet_first same_rule scoot_your
        scoot_your_feet seat_wet shift_the shift_the_elbow shorten_it shoulder_grumbl shuffl_till shuffl_till_its
        sit_back_down sit_down_if sit_thi sit_thi_out sit_with sit_with_the skip_it slow_right slow_right_down
        soft_kne_when somebody_water somebody_water_bottl spread_out stand_still_a stand_up_and stay_clos
        stay_clos_to stay_on stay_on_your step_back step_back_down step_down step_down_onto step_off step_off_one
        step_on_it stop_and stop_higher stop_short stop_short_of stop_ther that_a_nerv that_how_you that_is_how
        that_its that_its_job that_nearest that_not that_not_your that_set that_set_finish that_the_end that_ther
        that_ther_to that_too that_you that_you_done that_your_bottom that_your_cue that_your_neck the_door_want
        the_floor the_hand the_minut the_second the_truck the_weight the_whol the_whol_time ther_a_hose
        ther_a_lip ther_are ther_are_gopher ther_buggi thes_are_the theyv_had theyv_had_mol thi_end thi_end_lump
        thi_one thos_are thos_with thos_with_low thumb_right thumb_right_round thumb_wrap_round tight_fine
        tight_to tight_to_both tir_grip to_get to_get_up toe_out toe_out_of tuck_your_heel tug_it tug_it_again
        turn_your turn_your_palm two_when two_when_your under_you under_your under_your_lowest wait_a
        wait_a_second wait_at_the walk_around walk_your_lane watch_your weight_abov weight_abov_the weve_mov
        weve_mov_the whatever_that whatever_that_dog when_your when_your_up wipe_it with_a_tug wrist_stay_stack
        you_come you_keep you_keep_it you_let you_let_go you_never you_put_it you_sit you_stop youll_come_over
        youll_gan youll_wear youll_wear_it your_calvesll your_done your_on_one your_partner_stand your_shoulder
        your_whol your_whol_foot youv_gone youv_gone_too
      `,
    ],
    [
      -0.2,
      `
        <attend>_<chat> <chat>_<more> <chat>_<swap> <do>_<part> <harm>_<more> <kit>_<more> <less>_<do>
        <not>_<part> <not>_<place> <num>_<kit> <part>_<do> <part>_<move> <part>_<place> <place>_<part>
        <swap>_<far> <swap>_<place> bad_leg come_back come_on come_up_on do_not_hold do_not_wor dont_drop_it
        find_a front_knee_follow hand_on_your if_it_click if_it_nip if_you_can if_you_cant if_your_heel its_a
        its_only keep_it_insid like_your look_at not_a sit_down stay_ther stop_when that_all the_arm the_knee
        walk_back walk_it walk_your_feet whol_foot whol_foot_on you_are you_can you_could you_should your_not
      `,
    ],
    [-0.4, 'hold_it'],
  ],
  word: [
    [0.8, 'check sharp'],
    [0.6, 'buckl cramp joint mean or tug'],
    [
      0.4,
      `
        and bark becaus been befor bruis catch chair cold dog drop end finger fingertip first flat give glas goe
        grab grumbl head hover how hurt instead itll ive jog kneecap land leav lock mind miss month never nobod
        overhead pain partner pay pleas round safet set shorten sure swim that thi walk within wrist youll
      `,
    ],
    [
      0.2,
      `
        abov ach ache achill alon along alway among ankl any anybod anyon arch argument around beagl behind below
        bend bill bin bladder blood bon bottl box br buggi calf calvesll cat caus chanc clear clip closer clunk
        com come complain contraction cos cue cur cute damp dear deep densit discomfort dish divvent dizz do
        doctor done door ease everybod eye face far fast feel feet find fist forearm form frida fun gan gentl get
        giv go good goos gopher gravel had half hammer hamstr hamstring handl handrail have havent headll here
        hero higher hiss hol hold hop hose hot hump im it its janin job keep kid kind knif knuckl ladi lane lap
        late ligament look lower lowest make march marvellou mate medal moan mol moment mov nag natal neck needl
        nerv new next nick nip normal now off on one open osteoporosi otherwis palm park peopl piano pin ping
        post prawn pressur put rail rainbow read regular roll ron room root rug rule sag sav scar seen shak shift
        shin shoe shorter shout sit skat skip slab smaller so someon someth soon spik spin sprinkler stab stand
        start station stay stitch stop straighten strain strap stretch suffer surgeon tabl tak tear teeth test
        than thatll ther thes they theyv thin thumb thursda till time tingl toda told tomorrow towel tree
        trimester truck trust twing twist under understand unhook unstead vision wait warm watch week wet
        whatever wheel will with wooz wrap wrench yank year you your zing
      `,
    ],
    [
      -0.2,
      `
        ahead air all allow an apart arc as asleep at backsid ball beat bed bel big blad body bor bottom bow brac
        breastbon bridg brush bump bus button can ceil cheat cheek child chin clap clench clock cone count
        cushion day desk dig dip doesnt draw driv each ear easier eight elbow else empt enough fac fall five
        float forget four free full gap gone got grip grow hang heal hear help hip home hook i imagin into jaw
        ladder last lead lean let letter lik line littl long longer loop lose lung most much name near need nice
        not noth number of operat opposit other our outsid own pair part past paus pick plac plant plent pocket
        pol pretend punch rack rais rang reach red relax rock row run rush same sat she shop should show shrug
        sideway six slack small soften some somebody sore spe spot squash squat squeez stair stiff stool strid
        strok strong support take ten the think thre throw to top toward trip try tuck twic underneath up very
        waist wander was we wee went were which whil who why wide width without wont wor
      `,
    ],
    [
      -0.4,
      `
        0 arm bad balanc between bum chest could forward heel lift my rib tall thigh together touch want
      `,
    ],
    [-0.6, 'leg like'],
  ],
} as const satisfies CueWeights
