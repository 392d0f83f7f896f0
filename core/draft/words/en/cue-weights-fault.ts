/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind fault; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const FAULT_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [1, 'wrong'],
    [0.4, 'not part'],
    [0.2, 'move place settle'],
    [-0.2, 'attend do harm ill less more swap take'],
    [-0.4, 'air far num'],
    [-0.6, 'pace'],
  ],
  first: [
    [0.8, 'your'],
    [0.6, 'shoulder theyr'],
    [0.4, '<not> <part> bum carol dont elbow keep neck strap that tuck watch wrist'],
    [
      0.2,
      `
        <chat> <harm> <less> avoid beginner belly bent bet beth bethan but careful chin clap click colin denis
        derek divvent drift everybod everyon eye fergal flatten gareth get half has heal hip i it jean jer
        kicking kirst kneecap knit lean less lift line lot lui marcu mo more most nate open pamela point pull
        quit resist rib shak shrug sink sir smooth soft some somebody squar stack stand stay stretch strict sw
        ther they track try unclench uncros weight weird whatv wher widen youm
      `,
    ],
    [
      -0.2,
      `
        0 <far> <move> <take> <wrong> a about all at big both bottom breath chang curl do down feel feet finger
        forearm go good hand heel how hug leg lock nose noth off once one other palm pres quiet rest roll same
        step take thi thumb tip to too turn up we when you
      `,
    ],
    [-0.4, '<air> <do> <num> <place> arm back bend let'],
    [-0.6, 'not'],
  ],
  given: [
    [0.4, '<do> <kit> in'],
    [
      0.2,
      `
        <chat> <less> <move> <num> <part> <place> <swap> <wrong> again all as bend com dip div here into it knee
        leav lost lower neck off one opposit start stick stop sw the they thigh too turn untid work you your youv
      `,
    ],
    [-0.2, '<more> a at dont down get not or them'],
    [-0.4, '<not> like'],
  ],
  last: [
    [0.4, 'bounc carol ear forward plonk shrug still stomp tall tent tipto toe'],
    [
      0.2,
      `
        about acros again air alec and ankl apart arm arrow backsid bed bel belt bend bet beth bethan bit bow
        brak bridg bun camel ceil chair chest chin chip clench clos colin collar deckchair degre denis derek dex
        die divvent dont down drop earring elevator em feet fergal fib film flap flat fling flutter foot front
        gale gareth gas gate hammock handbrak hat headlight heav hunch imran in insid instead inward jaw jean jer
        lac leg level long low lui marcu margaret middl mirror mo movement nate nee nose one open opposit pamela
        park passenger past pay pillow pin pirat plank pleas plop pub punch quiet ring sho shop short shut side
        slow soft stood straight strict sw sway t them they thumb together tomorrow trip turn turtl under up wing
        wrist
      `,
    ],
    [
      -0.2,
      `
        all away bent body bottom breath bum calv clock com count danc do dog face go hand head heel hike hold
        jerk jump kne kneel lift like lot lower meet more no now pelvi pocket point pres purpl reach read shin
        sit sofa squeez stand stick stiff stop time watch width wobbl
      `,
    ],
    [-0.4, 'on'],
  ],
  length: [
    [0.2, 'long'],
    [-0.2, '3-4'],
    [-0.6, '1-2'],
  ],
  pair: [
    [0.6, '<move>_them <part>_are of_<chat> of_you them_<place>'],
    [
      0.4,
      `
        <attend>_to <chat>_see <do>_them <far>_toe <kit>_com <move>_from <not>_a <part>_do <part>_stay
        <place>_like <settle>_with <wrong>_in <wrong>_is a_squat bum_<place> chin_<more> how_<chat> i_<swap>
        leap_<place> look_at not_<move> not_a off_your out_like roll_<place> stay_<place> that_a the_ceil
        the_foot them_down thi_into to_<do> to_<wrong> turn_thi wrist_<place>
      `,
    ],
    [
      0.2,
      `
        0_degre 0_wher <air>_tight <attend>_an <attend>_at <attend>_down <attend>_hand <attend>_high <attend>_it
        <attend>_neck <attend>_saw <attend>_spin <attend>_thi <attend>_up <attend>_well <chat>_0 <chat>_all
        <chat>_beast <chat>_box <chat>_coffe <chat>_die <chat>_do <chat>_em <chat>_forward <chat>_had
        <chat>_hundred <chat>_land <chat>_leap <chat>_leg <chat>_lift <chat>_longer <chat>_look <chat>_mad
        <chat>_margaret <chat>_punch <chat>_push <chat>_rush <chat>_shav <chat>_short <chat>_should <chat>_stand
        <chat>_stuck <chat>_the <chat>_them <chat>_turn <chat>_untid <chat>_watch <chat>_were <chat>_your
        <do>_again <do>_as <do>_back <do>_em <do>_forward <do>_tall <do>_together <do>_you <far>_for
        <far>_forward <far>_from <far>_giv <far>_i <far>_out <far>_shop <harm>_for <harm>_forward <harm>_long
        <kit>_drift <kit>_drop <kit>_off <less>_bounc <less>_em <less>_fast <less>_heav <less>_look <less>_low
        <less>_much <less>_neck <less>_of <less>_on <less>_the <more>_and <more>_at <more>_behind <more>_bel
        <more>_ever <more>_first <more>_like <move>_again <move>_as <move>_back <move>_em <move>_fac
        <move>_honest <move>_not <move>_still <move>_tall <not>_bend <not>_bent <not>_come <not>_curl <not>_dip
        <not>_fling <not>_fold <not>_from <not>_grip <not>_haul <not>_heav <not>_hoick <not>_hover <not>_in
        <not>_instead <not>_jam <not>_just <not>_knock <not>_lean <not>_let <not>_neck <not>_of <not>_plonk
        <not>_priz <not>_rock <not>_roll <not>_scrunch <not>_see <not>_should <not>_shov <not>_snatch <not>_start
        <not>_swing <not>_than <not>_to <not>_want <not>_yank <num>_degre <num>_of <num>_rail <num>_side
        <pace>_and <pace>_down <pace>_hand <pace>_the <pace>_toe <part>_about <part>_apart <part>_arent
        <part>_com <part>_dont <part>_drop <part>_flap <part>_follow <part>_foot <part>_front <part>_go
        <part>_have <part>_heel <part>_is <part>_isnt <part>_job <part>_leg <part>_level <part>_long <part>_open
        <part>_over <part>_pop <part>_shoot <part>_still <part>_straight <part>_walk <part>_want <place>_arm
        <place>_behind <place>_elbow <place>_first <place>_foot <place>_glu <place>_heel <place>_just
        <place>_level <place>_neck <place>_one <place>_over <place>_pleas <place>_round <place>_you <place>_youll
        <settle>_again <settle>_and <settle>_back <settle>_behind <settle>_em <settle>_forward <settle>_front
        <settle>_gone <settle>_longer <settle>_lost <settle>_low <settle>_mad <settle>_my <settle>_off
        <settle>_shorter <settle>_tall <settle>_them <settle>_they <settle>_ugly <settle>_untid <settle>_us
        <swap>_clench <swap>_dip <swap>_fling <swap>_hear <swap>_heav <swap>_it <swap>_kick <swap>_not <swap>_off
        <swap>_plonk <swap>_plop <swap>_priz <swap>_tall <swap>_your <take>_again <take>_behind <take>_forward
        <take>_front <take>_low <take>_my <take>_tall <take>_ugly <wrong>_back <wrong>_off <wrong>_out
        <wrong>_over <wrong>_the <wrong>_to <wrong>_up a_<harm> a_<not> a_bit a_boat a_bridg a_camel a_chin
        a_deck a_deckchair a_few a_fib a_gale a_handbrak a_hang a_hing a_lag a_no a_passenger a_pigeon a_pillow
        a_pirat a_potato a_rope a_sack a_ship a_spot a_sw a_tent a_view about_fort all_<attend> all_<part>
        all_hamstring all_in all_knee alway_<attend> am_<wrong> an_arrow and_<part> and_<place> and_car and_go
        and_it and_level any_lift are_<kit> are_<wrong> are_bend are_bob are_drop are_jump are_pull are_rop
        are_they are_too arm_<chat> arm_<less> arm_do arm_go as_high as_well as_your at_0 at_about at_me at_the
        avoid_<wrong> back_<not> back_<settle> back_<swap> back_<wrong> back_arch back_foot back_from back_glu
        back_heel back_instead back_just back_over band_com bang_your bar_<do> bar_drop be_<swap> be_on be_rub
        beast_the becaus_youv bel_tight bend_the bent_<part> bent_<place> bent_elbow big_shop big_toe bit_ahead
        body_<attend> body_to both_cheek bottom_leg bottom_stay box_to bum_down bum_in bum_stay call_your
        can_hear car_<place> car_on catch_<chat> catch_you chin_<place> chin_in chin_off chin_up clap_<place>
        clap_together click_<place> click_together com_<more> com_in com_off com_to com_up come_off come_to
        come_with corner_of creep_<place> crept_<place> crept_forward crush_it curl_<place> daylight_<place>
        daylight_under dead_<less> dead_<move> didnt_say different_drill div_<place> div_in do_<not> do_any do_it
        do_not do_the doe_<not> doe_not doesnt_<do> doesnt_<less> doesnt_<settle> doesnt_drop dont_<do>
        dont_<far> dont_<kit> dont_<move> dont_crank dont_hover dont_knock dont_lean dont_let dont_rock dont_shov
        dont_step dont_yank down_<place> down_out down_pleas drift_<place> drift_in drop_<place> drop_em drop_in
        drop_the each_<num> each_one each_other ear_goe elbow_<do> elbow_<move> elbow_<place> elbow_are elbow_at
        elbow_clos elbow_down elbow_drop elbow_flap elbow_stay elbow_wide em_<do> em_<less> em_<move> em_<place>
        em_drop ever_rep everyon_<chat> everyon_beast everyon_sor eye_<place> eye_in eye_on fac_the face_front
        fall_<place> fall_for fast_and feel_thi feet_on few_of finish_stood first_0 first_hundred five_<far>
        five_degre flatten_it floor_in flop_<place> follow_the foot_all foot_turn fort_five front_<pace>
        front_<part> front_knee front_one front_rib front_slow front_with get_behind get_low get_them go_<do>
        go_<less> go_<more> go_and go_dead go_longer go_mad go_untid go_up go_with goe_over gone_<place> gone_out
        good_leg got_taller grip_loos ground_<settle> ground_come half_of hand_are hand_off handl_com
        hang_<attend> hang_<place> has_<wrong> has_it has_wander have_gone have_lost have_they have_us
        head_<part> head_are head_back heal_<place> heal_down hear_stomp heel_are heel_heav high_<attend> high_as
        hip_<do> hip_<move> hip_<place> hip_<wrong> hip_are hip_dont hip_open hip_together hit_your hold_a
        hold_your how_you i_can i_didnt i_die i_do i_see i_should if_it if_they ill_say im_see in_<place> in_a
        in_high in_on into_your is_<less> is_a is_bend is_to is_too it_<attend> it_<far> it_<place> it_flat
        it_follow it_has it_is it_leav it_off it_peel it_proud it_stay it_up it_with itll_tell its_<chat>
        its_<far> its_<part> its_all its_ankl its_hav its_nice its_only its_opposit its_park its_your just_a
        just_to keep_them keep_your kicking_for kiss_the kne_<attend> kne_<chat> kne_<settle> kne_<wrong>
        kne_apart kne_follow kne_have kne_over kne_soft kne_stay kne_straight knee_goe knee_in knee_straight
        knit_them knock_<place> knock_together know_its knuckl_<far> land_quiet lean_<place> lean_and leap_<part>
        leap_back leav_room leav_them leg_<chat> leg_<swap> leg_do leg_job leg_still leg_with less_<do> less_neck
        let_em let_the level_your lift_<place> lift_through light_<part> light_hand like_a like_an like_saw
        like_thi like_to littl_toe logo_<place> logo_on long_neck look_<attend> look_<more> look_<place>
        look_down look_like look_up loos_<move> loos_grip lose_it lot_of lower_and lower_the me_the metr_<place>
        metr_in mistak_is more_<air> more_<part> more_bel more_ever much_<do> much_<move> much_<place>
        much_<settle> much_on my_coffe nam_a neck_<more> neck_<place> neck_on never_<chat> never_<place>
        never_let never_on no_clench no_dip no_fling no_heav no_kick no_plonk no_plop no_priz nobod_<do>
        nobod_should nobody_film none_of not_<do> not_<swap> not_bent not_from not_grip not_in not_just not_lift
        not_look not_out not_rush not_to not_want of_that of_thos off_the on_<chat> on_them on_with on_you one_do
        one_side only_ankl only_giv open_the opposit_shoulder out_<attend> out_<chat> out_<place> out_behind
        out_first out_of out_to over_it over_the over_your pay_for peel_off peopl_<wrong> peopl_downstair
        pillow_<place> pillow_under point_at point_forward pop_<more> pop_<place> pop_up potato_chip puff_<more>
        puff_<place> puff_up pull_them push_tall push_them push_your put_<chat> put_my quit_<less> quit_<not>
        quit_<swap> quit_instead rather_than reach_out rib_<place> rib_are rib_down rib_that rock_your
        roll_forward roll_in roll_out room_for round_your rush_the sack_of said_<do> said_<move> said_float
        same_<part> same_arm saw_<place> saw_on say_brak say_it scrunch_your second_toe see_<num> see_<part>
        seen_that shak_em shoot_<more> shoot_<place> shoot_up should_<not> should_not shoulder_<not>
        shoulder_<place> shoulder_are shoulder_back shoulder_lift shoulder_over shoulder_thi show_<chat> show_me
        sid_of sink_<part> sink_back sit_<part> sit_back sit_them slip_<place> slip_down smooth_<place> snap_your
        snatch_at sneak_<more> sneak_<place> sneak_up soft_knee soft_shoulder soften_it somebody_<chat>
        somebody_<wrong> somebody_call sor_at squat_it stack_it stand_<more> stand_kne stand_tall stand_up
        start_again start_dip stay_down stay_fac stay_honest stay_on stay_over stay_point stay_still stay_tall
        stick_<place> stick_com stick_out stick_the still_ther stiller_than stop_<wrong> straight_ahead
        straighten_them strap_off sure_<chat> sure_you sw_<chat> sw_<do> sw_round sway_<place> tall_spin
        tell_becaus that_<num> that_<wrong> that_catch that_cheat that_done that_foot that_how that_is that_just
        that_pay that_the that_what the_<air> the_<ill> the_<kit> the_<pace> the_<part> the_<wrong> the_air
        the_big the_bum the_carpet the_collarbon the_ear the_end the_ground the_hat the_hip the_insid the_joint
        the_knee the_lac the_leg the_length the_ligament the_logo the_mat the_middl the_mirror the_nam the_operat
        the_part the_pillow the_pub the_seat the_second the_sid the_slack the_sore the_swim the_thigh the_turn
        the_weight the_whol the_work their_<part> their_arm them_<attend> them_<chat> them_<settle> them_fift
        them_forward them_go them_over ther_<less> ther_peopl ther_to ther_too they_<chat> they_<do> they_<move>
        they_<settle> they_done they_like theyll_want theyr_<attend> theyr_<not> theyr_gossip theyr_headlight
        theyr_just theyr_not theyr_step theyr_still thi_in third_0 third_<num> tight_to till_i to_<chat>
        to_<move> to_<pace> to_<settle> to_<take> to_get to_help to_lean to_roll to_rush to_twist to_you
        toe_<attend> toe_<do> toe_<far> toe_<settle> toe_forward toe_long toe_to too_<far> too_<less> too_<pace>
        too_fast too_heav too_low too_much touch_from touch_your try_<not> try_not tuck_it tuck_them turn_it
        turn_out twist_<chat> two_rail unclench_your uncros_your untid_<not> untid_stop up_<chat> up_<place>
        up_at up_first up_like up_out us_your view_of wait_<far> wait_till walk_out walk_your wander_<place>
        wander_in wander_off want_them want_to wash_<attend> wash_<settle> wash_line watch_that watch_your
        weight_<place> weight_and weight_over weird_your were_<not> were_jump were_not what_i what_we whatv_they
        when_<chat> when_you whol_shop widen_<place> widen_out wiggl_them with_it with_the with_your
        wrist_<attend> wrist_<move> wrist_flat wrist_out wrist_straight you_<attend> you_<chat> you_get you_had
        you_land you_lift you_look you_margaret you_plank you_punch you_were youll_<settle> youll_be your_<far>
        your_<pace> your_<part> your_<swap> your_<wrong> your_all your_arm your_backsid your_belt your_body
        your_box your_bun your_ear your_knee your_leap your_middl your_name your_nose your_push your_rib
        your_rush your_shav your_sho your_stand your_stuck your_thumb your_top your_turn your_weight your_wrist
        youv_nee
      `,
    ],
    [
      -0.2,
      `
        <attend>_and <attend>_as <attend>_kne <attend>_like <attend>_that <attend>_you <attend>_youv <chat>_done
        <chat>_dont <chat>_down <chat>_drop <chat>_for <chat>_it <chat>_like <chat>_put <chat>_to <chat>_want
        <do>_a <do>_over <do>_that <do>_the <do>_with <far>_than <far>_your <harm>_it <harm>_out <kit>_at
        <kit>_back <kit>_down <kit>_so <more>_off <more>_the <move>_at <move>_for <move>_off <move>_stack
        <not>_cheat <not>_clamp <not>_down <not>_forc <not>_get <not>_go <not>_hap <not>_have <not>_it <not>_jump
        <not>_mov <not>_pull <not>_sham <not>_slam <not>_spill <not>_stop <not>_the <not>_throw <not>_turn
        <not>_your <num>_foot <part>_and <part>_bent <part>_blad <part>_brush <part>_button <part>_hang <part>_if
        <part>_in <part>_knee <part>_lock <part>_loos <part>_not <part>_of <part>_on <part>_sag <part>_stop
        <part>_to <part>_track <part>_tuck <part>_turn <part>_under <part>_width <place>_as <place>_for
        <place>_forward <place>_if <place>_in <place>_kne <place>_off <place>_straight <place>_that <place>_till
        <place>_up <place>_your <settle>_down <settle>_in <settle>_on <settle>_the <settle>_your <swap>_a
        <swap>_jerk <swap>_sham <swap>_the <swap>_them <take>_at <take>_down <take>_it <take>_off <take>_up
        <take>_your <wrong>_it <wrong>_you a_<chat> a_<far> a_<num> a_<part> a_balloon a_bend a_foot a_lift
        a_metr abov_your acros_the an_<part> and_<chat> and_<move> and_<not> and_<pace> and_<take> and_let
        and_your are_<attend> are_go are_just are_still arm_<attend> arm_are arm_out as_<attend> as_<place>
        as_you at_all at_you back_knee back_of back_straight back_to back_up bar_<place> befor_<chat> befor_you
        behind_the bend_in bend_your between_your big_<harm> bit_of both_<part> bounc_them brush_your by_the
        call_it can_<move> chair_<place> chest_<attend> clamp_<place> come_<place> dont_<attend> dont_<less>
        dont_<pace> dont_be dont_clamp dont_do dont_go dont_have dont_jump dont_kick dont_like dont_pull
        dont_slam dont_want down_like down_to drop_it elbow_<more> elbow_brush elbow_glu elbow_under fac_<place>
        fac_forward feel_<attend> feel_like feet_<place> flat_<place> foot_<move> foot_<place> foot_off foot_on
        for_thi front_foot get_<more> get_up go_<attend> go_down go_to hand_<place> have_a have_to hip_<part>
        hip_back hip_not i_<not> i_dont i_want if_<chat> if_your if_youv im_<not> im_not in_your is_<chat>
        is_<place> is_the it_<less> it_<not> it_<settle> it_get it_go it_out it_yank its_<not> its_<place>
        jump_<place> just_<place> kne_<more> kne_bent kne_in kne_up knee_<place> knee_soft knee_track left_<part>
        leg_<move> let_<chat> lift_your like_the lock_the never_<do> never_<wrong> no_<kit> no_<more> no_<move>
        no_<settle> no_jerk no_sham not_<chat> not_<more> not_<num> not_down not_go not_hap not_the not_your
        of_the of_them of_your off_<place> off_it one_<part> one_<place> one_foot other_<part> over_<part>
        palm_<place> pull_<place> push_<place> push_through put_them put_your rib_tuck roll_<more> roll_up
        row_boat shoulder_<move> shoulder_blad shoulder_stay show_off sit_on slam_it soft_kne spill_it stack_over
        start_to stay_at stay_stack stay_ther step_<place> that_<not> that_<part> that_<place> that_all that_not
        that_your the_<attend> the_<do> the_<less> the_<move> the_<settle> the_ankl the_body the_clock the_door
        the_kne the_neck the_spin the_toe the_top them_<far> them_<part> them_back them_com them_on them_ther
        thi_<num> thi_one thigh_<place> through_it through_them till_your tip_it tipto_to to_<part> to_it to_lift
        to_your toe_out top_of track_<place> try_to tuck_<place> turn_<chat> turn_your under_the up_<far> up_off
        up_the upsid_<place> upsid_down want_the way_<place> we_are weight_down when_your with_<attend>
        with_<kit> with_<part> with_weight yank_<chat> yank_you you_<less> you_<more> you_<place> you_and you_can
        you_put you_want your_<chat> your_<more> your_<place> your_back your_cheek your_eye your_head your_lean
        your_neck your_shoulder your_side your_strap
      `,
    ],
    [
      -0.4,
      `
        <attend>_your <not>_drop <part>_a <part>_up <place>_the arm_<place> dont_drop front_of hold_it
        leg_<place> you_<swap>
      `,
    ],
  ],
  phrase: [
    [0.6, 'fault-sure'],
    [0.4, 'fault-likely'],
    [0.2, 'easier-likely execution-sure fault-hint focus-likely focus-sure setup-likely'],
    [
      -0.2,
      `
        caution-hint chat easier-hint equipment-likely execution-hint execution-likely praise range-likely
        setup-hint
      `,
    ],
    [
      -0.4,
      `
        breathing-sure caution-sure dose_only easier-sure equipment-sure harder-sure range-sure setup-sure
      `,
    ],
    [-0.6, 'empty_clauses'],
  ],
  start: [
    [
      0.4,
      `
        <attend>_<part> <part>_<not> <part>_<settle> <place>_<part> look_at look_at_the rib_down that_a
      `,
    ],
    [
      0.2,
      `
        <air>_<less> <attend>_<place> <chat>_<attend> <chat>_<wrong> <do>_<attend> <do>_<chat> <harm>_<attend>
        <harm>_<do> <harm>_<far> <less>_<do> <less>_<less> <more>_<air> <move>_<attend> <not>_<do> <not>_<move>
        <not>_<part> <not>_<take> <not>_<wrong> <part>_<chat> <part>_<far> <part>_<move> <part>_<take>
        <settle>_<attend> <take>_<more> <wrong>_<place> a_bit a_few_of are_they back_foot bar_drop bel_tight
        bent_elbow body_like_an both_cheek br_the_second brush_the brush_the_insid bum_down bum_stay but_are
        chest_fac chest_fac_the chest_up chin_off chin_up_in clap_together click_together come_off come_off_the
        come_with come_with_it crush_it do_any do_any_lift do_not_grip do_not_rush dont_crank dont_hover
        dont_lean dont_let_your dont_rock dont_shov dont_step draw_it_flat drop_em drop_them elbow_at
        elbow_at_about elbow_clos elbow_down elbow_stay elbow_wide everyon_beast everyon_beast_the eye_in
        eye_in_front eye_on eye_on_the eye_on_your face_the_wall fall_for fall_for_thre find_a_spot first_0
        first_0_wher flatten_it front_knee_goe front_slow get_behind get_behind_it get_low get_them go_longer
        grip_loos half_of half_of_you hand_off hand_off_your handl_com handl_com_in has_it have_they head_are
        heal_down heel_are heel_are_com heel_down_pleas hip_dont hip_go_with hip_under hold_a hold_a_crisp
        hold_a_potato hold_the_end i_can i_can_tell i_didnt i_didnt_say i_know_its i_said_float i_see i_should
        i_want_them if_it if_it_div if_its_all if_the_knee if_the_opposit if_the_stick if_they if_they_go
        if_your_hip ill_say ill_say_it im_see in_on in_on_each it_doesnt_drop it_goe it_goe_over it_is_a
        it_only_giv it_stay its_a_passenger its_a_plank its_ankl its_hav its_hav_a its_only its_only_ankl
        its_only_the its_opposit its_park its_slip its_slip_down its_the_front its_the_thigh its_the_third
        its_your its_your_rib ive_seen_that keep_it_down keep_it_proud keep_that_loop keep_the_hip keep_them
        keep_them_flat keep_them_in keep_your keep_your_wrist kicking_for kicking_for_the kne_apart kne_are_bend
        kne_follow kne_follow_your kne_stay_fac kne_straight_ahead knit_them land_quiet lean_a_touch lean_and
        lean_and_go leav_it_home leav_room leav_room_for leg_still less_neck let_em let_em_drop let_it_drop
        let_it_follow let_the_ground let_the_spe let_them let_them_go level_your level_your_belt like_a_pirat
        like_somebody_call like_theyr like_theyr_step like_your_shav like_your_stuck long_neck look_a_bit
        look_at_your loos_grip lot_of lot_of_you make_the_front most_of_you move_your_face never_let never_on
        never_on_it nice_and_level no_clench no_dip no_fling no_heav no_kick no_plonk no_plop nobod_should
        nobody_film not_a_littl not_a_tent not_at_me not_at_the not_bent not_from not_from_the not_like_thi
        not_out not_out_like not_the_same not_your_elbow open_the open_the_collarbon pick_it pick_it_up
        plant_your_feet pres_the_big pull_them pull_your_front push_tall push_them push_your_kne quit_instead
        ring_in ring_in_tight rock_your rock_your_whol shak_em shak_the_wrist shak_them_down shoulder_are
        shoulder_down_out shoulder_over_your show_me_the sink_back sink_back_into sit_back_instead sit_them
        sit_them_down sit_up snap_your snap_your_knee soft_knee soft_shoulder soft_shoulder_thi soften_it
        squar_to squar_to_the squeez_it_off squeez_your_bun stack_it stack_it_up stand_kne stand_tall
        stand_up_out start_again stay_as_high stay_fac stay_over stay_over_the stay_still stay_tall
        stop_when_they straight_up straighten_it_up strap_are strap_are_like strap_off strap_off_your stretch_the
        stretch_the_whol sw_round sw_your_body take_the_slack tall_spin that_a_camel that_a_handbrak that_a_no
        that_a_squat that_cheat that_how that_how_you that_is that_is_a that_just that_just_a that_same
        that_same_arm that_the that_the_one that_the_part that_the_same the_band_com the_ear the_ear_goe the_lot
        the_lot_of the_nam the_nam_a ther_a_stop ther_no_priz ther_peopl ther_peopl_downstair they_dont
        theyll_want theyll_want_to theyr_gossip theyr_headlight theyr_just theyr_just_hook theyr_not theyr_still
        theyr_still_ther thi_is_not toe_forward toe_long toe_point_forward toe_to toe_to_the try_not try_not_to
        tuck_it tuck_it_in tuck_them turn_it_in uncros_your uncros_your_ankl wait_till wait_till_the walk_out
        walk_out_of watch_the_knee watch_your_elbow weight_between weight_between_the weight_in_both weird_your
        weird_your_top were_not what_i whatv_they whatv_they_done when_you_turn wher_its_nice wher_they
        wher_they_are widen_out wrist_are wrist_flat wrist_stay_straight you_finish you_finish_stood you_look
        you_look_like you_should you_should_not youll_have_us your_a your_a_door your_all your_box your_box_to
        your_leap your_not_a your_not_look your_not_on your_push your_push_your your_stand your_stand_up
        your_turn your_weight youv_nee
      `,
    ],
    [
      -0.2,
      `
        <air>_<place> <attend>_<attend> <chat>_<more> <chat>_<not> <chat>_<num> <chat>_<part> <chat>_<place>
        <move>_<more> <move>_<part> <move>_<place> <not>_<attend> <not>_<more> <not>_<num> <not>_<pace>
        <num>_<place> <part>_<do> <part>_<place> <part>_<wrong> <place>_<attend> <settle>_<place> <swap>_<kit>
        <swap>_<move> <swap>_<place> <swap>_<settle> bend_the bend_your big_toe both_feet come_up dont_be
        dont_bounc_them dont_clamp dont_drop_them dont_go dont_jump dont_jump_for dont_let_them dont_look_at
        dont_pull dont_pull_with dont_roll_up dont_slam dont_tip_it dont_turn elbow_brush elbow_glu elbow_under
        have_a hold_it i_dont i_want i_want_to if_its if_youv im_not its_a keep_the_knee keep_them_com
        keep_them_ther keep_your_shoulder kne_up knee_stay leav_the let_the let_your lift_your like_a no_yank_on
        not_a not_at_your not_in_the not_on not_out_in not_the not_the_toe not_your not_your_neck soft_kne
        stay_on stay_on_your that_all that_your the_other turn_your your_lean your_lean_back your_shoulder
        youv_gone
      `,
    ],
    [-0.4, '<not>_<less> dont_drop'],
  ],
  word: [
    [0.6, 'are bum chin drop em look stay them theyr too'],
    [
      0.4,
      `
        backsid carol ceil clench dont ear elbow forward hip i knock lean leap level ligament middl neck open
        plonk point rib see sw sway tent they toe unclench
      `,
    ],
    [
      0.2,
      `
        again air alec alway am arch arent arrow avoid back bang beast bed beginner belly belt bend bent bet beth
        bethan big board bob bounc box brak bridg bump bun but camel cheat chest colin com cran crept death deck
        deckchair degre denis derek dex die dip div divvent doesnt drift droop earring everyon fall fergal fib
        film flap flar flatten fold follow front gale gareth get giv goe gone grip ground half hammock handbrak
        handl has haul hav heal heav hitch hoick how hunch in insid instead into inward is itll its jam jean jer
        keep kicking king kiss knee knit lac lag land leav less like line logo lost low lui mad marcu margaret
        mirror mistak mo most nam nate nee nice no none nose not off only out over pamela park part passenger pay
        peel peopl pillow pirat pleas plop pok pop potato pub quit rail rather resist roll room rop round rush
        sack sag scrunch shak ship sho shoot shop shorter should shoulder shouldnt shov shrug sid sink sir smooth
        snatch sneak some somebody squat stack start stick still stiller stomp straighten strap strict swim swing
        t tall that themselv thump tipto together trip tuck turn turtl twist uncros untid up us wander watch wav
        weight were whatv wiggl wing wrist youll youm your yourself youv
      `,
    ],
    [
      -0.2,
      `
        about abov acros after all allow anybod anyon arm as away balanc balloon band been befor bell below bench
        between blad bomb bon bone both build by calf calv came cant cat chang clamp cold count cramp crash cros
        cushion dead did dog door dumbbell easy eight else enough even ever everyth far feel fight find fine
        finger flat floor for forc forearm full gent give go got grab hamstr hap head heel hike hold hug it jog
        jump just kneel last leg lie littl lock long machin mak march me moan month mov muscl near need never
        next now number once one other outsid overhead own pain pair partner pass paus phon pick plent pocket
        post pres pull purpl put quick rais reach read relax rest right row run same sav set sham shin sit slam
        slid small so sofa someth spill spread stiff stop stretch swap switch tailbon talk tap ten th then thes
        think thre through till time tip to toda top two until upsid walk water we wee when whil who wider will
        wobbl wont wrong you
      `,
    ],
    [-0.4, 'and breath if noth on or palm take ther without'],
    [-0.6, 'hand'],
  ],
} as const satisfies CueWeights
