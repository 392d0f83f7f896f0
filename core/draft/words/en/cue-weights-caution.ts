/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind caution; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const CAUTION_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [0.8, 'harm'],
    [0.6, 'ill'],
    [0.2, 'carer not settle take'],
    [-0.2, 'far more swap'],
    [-0.4, 'air num pace'],
  ],
  first: [
    [0.4, 'becaus bend check come give look mind never step that tug'],
    [
      0.2,
      `
        <harm> <ill> <less> a after alway any ask at back be bin br caus chair contraction cos cramp discomfort
        divvent do feet finger fingertip first flat from front half have hiss if im its ive janin keep kid leav
        lower make nobod one only or pleas post rise ron safet shift shorten sit skip sore spik sprinkler stop
        test thos thumb under wait walk watch whatever your
      `,
    ],
    [
      -0.2,
      `
        <do> <far> <more> <num> <part> <swap> <take> <wrong> all down elbow for get heel hip hold last let lift
        like long off on other pinch push same see shoulder side slip squeez stay take theyr try tuck we
      `,
    ],
    [-0.4, '<chat> <pace> <place> not'],
  ],
  given: [
    [0.4, 'goe'],
    [
      0.2,
      `
        <part> <place> a at back bark been bit bon calf catch com cramp do doctor down easy feel got grumbl half
        hamstr its light low of or round scar sharp shoulder start swim take the thin your
      `,
    ],
    [
      -0.2,
      `
        <chat> <far> <harm> <kit> <move> bad balanc befor bend feet floor i lower neck off ther tonight too wont
      `,
    ],
  ],
  last: [
    [0.4, 'cos eye first grumbl hand off on over you'],
    [
      0.2,
      `
        achill alon alway argument around backward bar bit bottom break buckl catch caus chanc cold cute dear
        divvent down drop elbow face far fast finish fist foot for forearm glas goos ham handrail held here
        higher hol hot in instead isnt job joint kid kneel leap less me mov neck nick night nip open out overhead
        panic park pay pleas point prawn quick quit rainbow read ron round rule sag shoe slip smaller socket
        someth spik stand stop stretch suffer sure swim talk teeth then ther thi thin tim time toda toe towel
        truck tug twist up walk way wet wrist
      `,
    ],
    [
      -0.2,
      `
        arc arm bad bench bounc breath clos day ear enough forward four front hip home knee leg line middl plank
        punch shoulder side sit start step straight tall them thigh together touch turn two under wait wrong
      `,
    ],
    [-0.4, 'back'],
  ],
  length: [
    [0.2, '8-12 long'],
    [-0.2, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [
      0.4,
      `
        <attend>_it <chat>_done <chat>_land <do>_on <far>_back <harm>_in <move>_sure <not>_and <part>_grumbl
        <part>_on <part>_that a_<less> a_<part> hand_on have_a in_your it_again its_com leav_it let_<settle>
        let_go make_sure stay_<place> stop_and the_<kit> the_box the_chair whol_<pace> whol_time you_land
        your_<place> your_foot
      `,
    ],
    [
      0.2,
      `
        0_out <air>_out <air>_push <attend>_after <attend>_along <attend>_and <attend>_away <attend>_behind
        <attend>_for <attend>_head <attend>_here <attend>_in <attend>_knee <attend>_theyr <attend>_when
        <attend>_wher <chat>_back <chat>_check <chat>_cos <chat>_do <chat>_feel <chat>_finish <chat>_for
        <chat>_go <chat>_heav <chat>_in <chat>_is <chat>_its <chat>_let <chat>_mean <chat>_on <chat>_over
        <chat>_puff <chat>_put <chat>_seen <chat>_stop <chat>_trust <chat>_tug <chat>_understand <do>_around
        <do>_down <do>_gradual <do>_into <do>_like <do>_of <do>_off <do>_or <do>_till <do>_too <do>_up <do>_wher
        <far>_bone <far>_it <far>_or <far>_over <far>_when <harm>_at <harm>_first <harm>_happen <harm>_keep
        <harm>_leav <harm>_on <harm>_one <harm>_pleas <harm>_to <harm>_wrist <harm>_you <ill>_in <ill>_is
        <ill>_on <ill>_wrist <kit>_against <kit>_back <kit>_down <kit>_first <kit>_off <kit>_sometim <less>_as
        <less>_far <less>_hip <less>_or <less>_see <less>_way <less>_with <less>_you <more>_higher <more>_one
        <more>_to <more>_too <move>_around <move>_by <move>_clos <move>_down <move>_gradual <move>_hold <move>_is
        <move>_mov <move>_off <move>_on <move>_to <move>_too <move>_walk <not>_argument <not>_be <not>_crank
        <not>_cros <not>_do <not>_drop <not>_fight <not>_fish <not>_hap <not>_in <not>_jump <not>_leap
        <not>_medal <not>_overhead <not>_push <not>_read <not>_see <not>_short <not>_twist <not>_want <num>_a
        <num>_as <num>_month <num>_out <num>_way <num>_week <num>_when <pace>_with <pace>_your <part>_bark
        <part>_catch <part>_caught <part>_cramp <part>_down <part>_feel <part>_find <part>_get <part>_go
        <part>_goe <part>_heav <part>_hover <part>_in <part>_mean <part>_not <part>_of <part>_open <part>_read
        <part>_right <part>_start <part>_stay <part>_suffer <part>_with <place>_all <place>_and <place>_away
        <place>_back <place>_here <place>_higher <place>_if <place>_it <place>_long <place>_of <place>_off
        <place>_start <place>_stay <place>_that <place>_the <place>_too <settle>_a <settle>_and <settle>_another
        <settle>_been <settle>_down <settle>_is <settle>_out <settle>_someth <settle>_them <settle>_thi
        <settle>_till <settle>_up <settle>_wher <settle>_you <swap>_are <swap>_argument <swap>_for <swap>_grab
        <swap>_it <swap>_leap <swap>_medal <swap>_not <swap>_thes <swap>_thi <swap>_towel <swap>_twist
        <swap>_yank <take>_away <take>_down <take>_flat <take>_someth <take>_them <take>_thi <take>_until
        <take>_wher <take>_you <wrong>_and <wrong>_door <wrong>_into a_break a_chair a_chanc a_hammer a_hamstr
        a_hand a_hip a_hose a_look a_lot a_miss a_moment a_nerv a_new a_prawn a_second a_shoulder a_stab
        a_stretch a_thinner a_time about_<num> about_twent abov_that after_your all_hold an_<part> an_ankl
        and_<attend> and_<move> and_<not> and_call and_lift and_look and_march and_no and_not and_push and_still
        and_straighten and_take and_tell and_they ankl_<chat> ankl_<settle> ankl_are ankl_go any_<harm> any_sharp
        anybod_<place> anybod_with are_dear are_gopher are_thin arm_<do> arm_<far> arm_<move> arm_of as_you
        at_<chat> at_all at_you back_<attend> back_<place> back_com back_grumbl back_long back_off back_start
        back_stay bark_at be_<less> be_<pace> be_cute be_held beagl_<chat> beagl_<more> beagl_left
        becaus_<attend> becaus_a becaus_if been_<chat> been_an been_mov befor_<chat> befor_the befor_you
        below_wher bench_sometim bend_it bend_your bin_it blood_<harm> blood_pressur bon_are bone_densit both_end
        both_hand both_sid bounc_<place> box_<chat> box_first br_the br_your breath_<do> breath_out breath_push
        by_the can_<take> can_grab can_talk cant_see car_park catch_<more> catch_<place> catch_up caught_<more>
        caught_<place> caught_up chair_<place> chair_against chair_and check_the clos_to com_at com_for
        come_<place> come_down come_off come_out cramp_<place> cramp_in crank_your crawl_<place> crawl_out
        curl_<attend> curl_like discomfort_is divvent_gan do_<do> do_<harm> do_<less> do_<not> do_half do_not
        do_thes dog_park dont_drop dont_fight dont_push dont_want down_and down_if drop_off ease_<part>
        ease_<place> ease_back elbow_feel end_of fall_happen feel_<attend> feel_<harm> feel_<ill> feel_it
        feet_<place> feet_<settle> feet_away feet_down feet_go feet_under find_the finger_<place> finger_on
        fingertip_<place> fingertip_on first_<attend> first_cos flat_<place> flat_here flat_on floor_<swap>
        floor_mean floor_ther floor_us foot_at foot_heav for_<harm> for_me forearm_and from_<place> from_about
        from_under front_<not> front_<swap> front_instead front_knee front_of gan_purpl gan_to get_<more>
        get_<place> get_down get_off get_up give_it give_thi go_heav goe_<attend> gone_<less> gone_too good_tug
        gopher_hol grab_<place> grab_someth had_a half_<attend> half_as half_way hammer_<place> hammer_in
        hand_hover hand_open hand_read hang_on happen_when haul_<place> haul_on have_been head_caught head_just
        head_light heel_in higher_<place> hip_not hip_stretch hold_<place> hold_on hold_your hose_<place>
        hose_acros hover_<place> hover_over hover_your how_<harm> how_<part> how_peopl i_<less> i_mean i_need
        if_it if_the if_youd if_your ill_<settle> ill_take im_<not> im_not into_a is_<harm> is_<less> is_glas
        is_how is_not is_okay it_0 it_<less> it_<wrong> it_a it_bit it_down it_isnt it_long it_off it_sav
        it_smaller it_start its_<harm> its_pret its_sharp its_socket its_ther its_wet its_what its_your ive_seen
        jump_off just_<air> just_breath keep_<settle> keep_<take> keep_hold keep_walk keep_your kne_<not> kne_and
        kne_as kne_dont kne_not knee_<chat> knee_first knee_stay knee_that kneecap_mean land_it leav_thes
        leav_thi leg_<more> leg_higher leg_up let_<chat> light_head light_in like_theyr lock_it long_and
        look_<place> look_after look_along look_behind look_in look_wher lot_of low_<part> low_<place> low_back
        low_bone lower_back lower_it lowest_<do> lowest_<far> lowest_point mat_so mean_that middl_toe mind_your
        moment_befor mov_the mov_till muscl_<settle> natal_ladi need_<chat> need_you never_<do> never_<move>
        never_<wrong> never_pull new_<part> new_hip next_<num> next_one nip_at no_argument no_leap no_medal
        no_twist no_yank not_<do> not_<move> not_<num> not_<settle> not_<take> not_be not_come not_cros not_fish
        not_hap not_in not_jump not_overhead not_read of_<num> of_it off_<far> off_if off_it on_a on_it on_that
        one_folk one_hand one_of only_<do> only_<move> or_<chat> or_<settle> or_have or_itll or_leav or_you
        or_your or_youv out_all out_of out_over overhead_<attend> pain_is palm_<place> palm_in peopl_<harm>
        pinch_<more> pinch_<place> pinch_up plat_<place> plat_over post_natal pressur_<place> pressur_on
        pull_<place> pull_is purpl_<num> purpl_one push_<place> push_through push_with put_them quiet_<take>
        quiet_feet rack_and right_<chat> right_<do> right_round rise_<pace> rise_gradual roll_on roll_the
        room_<attend> room_still round_like round_the safet_<chat> safet_first scar_pull second_your shift_the
        shin_suffer short_of shorten_it shoulder_<ill> shoulder_bark shoulder_catch shoulder_grumbl shout_for
        side_<less> side_<not> side_<place> side_<swap> side_instead sit_thi sit_until sit_with skip_the
        slid_<more> slid_up somebody_water someon_to someth_<harm> someth_<more> someth_<pace> someth_stead
        soon_<attend> soon_as spot_<chat> spot_you sprinkler_<part> sprinkler_head stand_behind start_curl
        start_to stay_<attend> stay_<do> stay_<move> stay_by stay_clos stay_flat stay_off stay_straight stay_ther
        step_<part> step_<place> step_back step_down step_off stop_short straight_<part> straight_away
        straight_knee strap_are sure_your take_a tell_<chat> tell_me test_it that_<ill> that_<kit> that_<take>
        that_beagl that_chair that_get that_how that_its that_set that_shoulder that_the that_ther that_your
        the_<pace> the_bar the_belt the_buckl the_face the_goos the_ham the_hamstr the_hand the_head the_joint
        the_kneecap the_next the_overhead the_rail the_room the_rule the_scar the_second the_truck the_turn
        the_whol the_wob them_<harm> them_befor them_down ther_<far> ther_are ther_been ther_for ther_to thes_and
        thes_cold they_<move> they_stay theyr_bend thi_<attend> thi_<num> thi_<place> thi_one thi_out
        thinner_<kit> thinner_<swap> thinner_towel third_<harm> third_trimester thos_with thre_month through_it
        thumb_right tight_to till_its to_<chat> to_<do> to_both to_catch to_go to_grab to_round toe_<take>
        toe_out too_<far> too_<pace> too_far top_ther tuck_under tug_it turn_<less> turn_too turn_your twent_week
        two_when under_<chat> under_and under_you under_your understand_<chat> understand_me up_<far> up_<less>
        up_higher up_too us_the wait_a walk_around wall_<less> wall_instead want_anybod watch_your way_<more>
        way_up we_turn week_<place> week_on weight_just wet_leav what_its whatever_that when_we when_your
        wher_<chat> wipe_it with_<attend> with_<far> with_<kit> with_<part> with_a with_both with_low with_weight
        with_you within_<num> within_two work_<attend> work_if wrist_<move> wrist_stay wrong_<kit> wrong_door
        you_<attend> you_<chat> you_<move> you_<not> you_<take> you_<wrong> you_all you_feel you_finish you_in
        you_let you_put you_set you_skip you_stop you_trust you_understand you_with you_wobbl youd_a youll_be
        youll_gan your_<carer> your_<chat> your_<far> your_<settle> your_achill your_back your_bon your_bottom
        your_breath your_done your_eye your_face your_forearm your_handrail your_joint your_kne your_low
        your_lowest your_neck your_palm your_plat your_puff your_rainbow your_safet your_shin your_shoe
        your_strap your_surgeon your_teeth your_third your_up your_vision your_wrist youv_gone youv_mov
      `,
    ],
    [
      -0.2,
      `
        <air>_in <attend>_its <attend>_on <attend>_that <attend>_thi <attend>_youv <chat>_are <chat>_could
        <chat>_should <chat>_start <chat>_the <chat>_want <do>_a <do>_and <do>_if <far>_of <far>_the <harm>_leg
        <harm>_up <ill>_leg <kit>_if <kit>_in <kit>_on <kit>_out <kit>_up <less>_of <more>_on <more>_your
        <move>_a <move>_for <move>_if <move>_the <not>_a <not>_bend <not>_have <not>_lift <not>_need <not>_roll
        <not>_stop <not>_when <not>_wor <num>_and <num>_second <pace>_the <pace>_to <part>_and <part>_are
        <part>_blad <part>_drop <part>_for <part>_if <part>_is <part>_knee <part>_point <part>_straight
        <part>_together <part>_up <part>_you <place>_a <place>_again <place>_as <place>_at <place>_for
        <place>_into <place>_me <place>_out <place>_ther <place>_under <place>_with <place>_your <settle>_back
        <settle>_forward <settle>_got <settle>_in <settle>_right <settle>_ther <settle>_to <settle>_under
        <settle>_with <settle>_your <swap>_on <swap>_under <swap>_your <take>_in <take>_ther <take>_together
        <take>_your a_<far> a_<num> a_bad a_littl a_pain a_spot and_<place> and_<settle> and_a and_come and_stand
        and_your are_<harm> are_<ill> are_<less> as_<attend> as_<place> as_it at_<num> at_the back_<less>
        back_<part> back_knee balanc_is bell_<place> bit_of come_<part> come_back come_on doe_<not> doe_not
        down_<place> eye_<place> feet_together foot_<place> for_<num> for_it forward_<place> from_your
        front_<place> get_ther half_of hand_and have_got have_to hip_<move> hold_it if_<chat> if_its if_that
        in_<num> in_a in_it into_it into_the into_your is_to it_<move> it_<not> it_<part> it_<place> it_back
        it_doesnt it_get it_insid it_pinch it_ther it_till its_<part> its_<wrong> its_a kne_are lean_<part>
        lean_back leav_the leav_your let_it let_the lift_the like_<chat> like_your look_at nobod_is not_<chat>
        not_<harm> not_<ill> not_<wrong> not_a of_a off_<chat> off_befor off_you on_<chat> on_me on_the
        one_<attend> onto_your operat_<part> operat_leg out_<far> out_in pinch_at push_off run_your should_be
        shoulder_<place> shoulder_blad show_off sit_on spot_<place> spot_on stay_down stay_in stop_<chat>
        stop_when take_the that_<place> that_a that_it that_run the_<air> the_<chat> the_<ill> the_<less>
        the_<place> the_back the_ball the_bell the_ceil the_feet the_first the_foot the_knee the_other the_seat
        the_sore the_step the_stick then_<chat> thi_<pace> thi_time through_the to_<swap> to_it to_the too_<less>
        top_of up_<chat> up_on walk_it want_it way_down what_<chat> whil_<chat> you_<swap> you_are you_could
        you_go you_should you_want your_<ill> your_<not> your_ankl your_arm your_balanc your_bum your_chair
        your_chest your_ear your_hamstring your_hand your_hip your_kneecap your_not your_rib your_thumb your_toe
      `,
    ],
    [-0.4, '<part>_to <place>_in a_<kit> up_<place> with_the'],
  ],
  phrase: [
    [0.8, 'caution-sure'],
    [0.6, 'caution-hint'],
    [0.2, 'caution-likely fault-likely'],
    [
      -0.2,
      `
        breathing-likely breathing-sure chat dose_only equipment-sure execution-likely execution-sure focus-sure
        harder-likely praise range-sure tempo-hint tempo-likely transitions
      `,
    ],
    [-0.4, 'empty_clauses focus-hint harder-sure tempo-sure'],
  ],
  start: [
    [0.4, '<chat>_<chat>'],
    [
      0.2,
      `
        0_out <air>_<place> <attend>_<place> <chat>_<less> <chat>_<not> <chat>_<settle> <do>_<pace>
        <harm>_<place> <ill>_<part> <kit>_<part> <kit>_<place> <move>_<do> <move>_<move> <num>_<part>
        <part>_<harm> <part>_<ill> <part>_<not> <settle>_<far> <settle>_<place> <swap>_<not> ankl_are
        ankl_are_dear any_sharp anybod_with anybod_with_a as_if_youd at_you at_your_eye back_off back_start
        back_start_curl becaus_a becaus_if bend_the_kne bend_your bend_your_kne bin_it both_sid br_the_arm
        br_your br_your_hand br_your_heel breath_out breath_out_all chair_against chair_against_the
        chang_your_plat check_the come_down come_down_and come_out cramp_in cramp_in_the discomfort_is
        discomfort_is_okay divvent_gan divvent_gan_to do_it do_not do_not_jump dont_drop dont_go dont_panic
        dont_push dont_push_through drop_it ease_back elbow_feel elbow_feel_like feet_under fingertip_on
        fingertip_on_it first_cos flat_here from_about from_about_twent front_knee get_down get_down_on give_it
        give_it_0 give_it_a give_thi give_thi_one give_yourself_a go_on_your good_tug half_a_chanc half_way
        hand_on hand_on_that hand_read have_a have_a_look head_light head_light_in hold_the_chair hold_your
        hold_your_breath i_dont_want i_mean i_mean_that i_need i_need_you if_it if_its_sharp if_that_shoulder
        if_the if_the_front if_the_hamstr if_the_scar if_ther_a if_you_are if_you_feel if_you_get if_your
        if_your_kne if_your_low im_not im_not_be im_not_fish in_your in_your_third it_is it_lock it_lock_it
        it_stay_ther its_a_hip its_been_mov its_com its_com_for its_not_cheat its_pret its_slip_on its_wet
        its_what its_what_its its_your_handrail keep_mov keep_mov_till keep_that_foot keep_walk keep_your_chin
        keep_your_feet lean_on leav_it leav_thi look_after look_after_your look_in look_in_front look_wher
        look_wher_your lower_it lower_it_down make_it_smaller make_sure make_sure_your mind_your no_argument
        no_hold no_hold_your no_leap no_medal no_yank no_yank_on not_in_the not_on_it not_the_toe one_hand
        one_hand_on one_of or_itll or_your pick_it pick_it_up post_natal post_natal_ladi push_out push_out_in
        put_it_down put_them put_them_down rest_your rise_gradual safet_first shift_the shift_the_elbow
        shorten_it sit_back_down sit_thi sit_thi_out sit_until sit_until_the sit_with sit_with_the slid_up
        slid_up_to somebody_water somebody_water_bottl sprinkler_head stay_clos stay_clos_to step_back
        step_back_to step_down step_off stop_and test_it test_it_again that_how that_how_you that_is_how that_its
        that_its_job that_not that_set that_the_end that_ther that_ther_to that_too that_you_finish that_your
        that_your_bottom the_hand the_minut the_second the_second_your the_weight_just the_whol the_whol_time
        ther_a_hose ther_are ther_are_gopher ther_been ther_been_an thos_with thos_with_low thumb_right
        thumb_right_round thumb_wrap_round tight_to tight_to_both to_get to_get_up toe_out toe_out_of tug_it
        tug_it_again turn_your turn_your_palm two_when two_when_your under_you under_your under_your_lowest
        up_ther wait_a wait_a_second walk_around watch_your whatever_that whatever_that_beagl wipe_it with_a_tug
        you_move you_stop youll_gan youll_gan_purpl your_done your_head your_shoulder your_whol your_whol_foot
        youv_gone youv_gone_too youv_mov youv_mov_the
      `,
    ],
    [
      -0.2,
      `
        <attend>_<chat> <chat>_<swap> <do>_<attend> <move>_<attend> <not>_<kit> <part>_<chat> <part>_<place>
        <place>_<attend> <place>_<part> <swap>_<place> dont_drop_it hold_it if_the_knee its_a keep_it_insid
        look_at not_a that_run that_run_your you_are your_not
      `,
    ],
  ],
  word: [
    [0.6, 'chair check joint leav or tug'],
    [
      0.4,
      `
        and becaus befor br buckl catch cold com come cos feel first flat give grumbl head how mean never
        overhead pleas pressur put round safet set sharp that ther thi wrist
      `,
    ],
    [
      0.2,
      `
        abov ache achill after alon among any anybod arch argument back bark be beagl been below bend blood bon
        bone both box caus chanc contraction cramp crank cute dear densit discomfort dish divvent do doctor dog
        done dont drink drop dry ease end eye far feet finger for forearm fun gan gentl get glas go goe good goos
        gopher grab half hammer hamstr hand handrail have here higher hiss hol hold hose hot hover hurt if im
        instead it itll its ive janin job jog keep kid kneecap kneel ladi land lane lap leap lock look lowest
        make mate medal mind miss moment month mov nag natal neck nerv new next nick night nip nobod off old on
        one open pain park pay person post prawn quit rail rainbow read ron room root rule sag scar second seen
        shoe shorten shorter shoulder skip slip smaller so socket someon someth sometim soon spik spin sprinkler
        stab stand stay stop strain stretch suffer sure surgeon swim talk teeth test thes they thin thinner till
        tingl toda towel tree trimester truck trust twist under understand vision walk way week wet weve what
        whatever whol will with within yank you youll your
      `,
    ],
    [
      -0.2,
      `
        0 about ahead air all an arc as backsid ball bent between blad block body bridg bum bump button can chest
        clean could count dead driv dumbbell each ear eight elbow else enough fac few five float fold forehead
        four free full got grip halfwa hang heal hear help hip home hook i into just know last lead lean let line
        littl long loop mat more much my need nice nose not noth number of onto operat opposit other outsid own
        pair part past paus pick pinch plank punch rais reach row run same say seat sho should shov shrug six
        slack slow small sock some squat squeez stick stiff strid strok support swap tak take tall ten the thigh
        think thre tir together top touch toward trip try tuck underneath up want was we wee were whil without
        wont wor
      `,
    ],
    [-0.4, 'arm bad balanc forward heel lift like rib to'],
    [-0.6, 'leg'],
  ],
} as const satisfies CueWeights
