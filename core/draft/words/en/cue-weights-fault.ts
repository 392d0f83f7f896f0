/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind fault; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const FAULT_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [1, 'wrong'],
    [0.4, 'not part'],
    [0.2, 'move place settle'],
    [-0.2, 'attend do harm less more swap take'],
    [-0.4, 'air far ill num'],
    [-0.6, 'pace'],
  ],
  first: [
    [0.8, 'your'],
    [0.6, 'shoulder theyr'],
    [
      0.4,
      `
        <not> <part> bum carol divvent dont elbow keep open somebody strap that tuck unclench watch wrist
      `,
    ],
    [
      0.2,
      `
        <harm> are avoid beginner bel belly bent bet beth bethan br brak but careful chest chin clap clench coast
        colin denis derek dex everybod everyon eye fall fergal flatten gareth gerald get guy has heal hip i it
        its jaw jean jer joan kicking kirst knee kneecap knit kyle lean less level lift light long look lot lui
        marcu mo more most move nate neck no none pamela plant point pole quit resist rib ring shak shorten
        shorter show shrug sink sit slow smooth soft spoon squeez stack stand stiller strict ther they theyll try
        uncros weight weird whatv wher widen youll youm
      `,
    ],
    [
      -0.2,
      `
        0 <far> <ill> <move> <take> <wrong> a about anybod at back bell bend big bottom breath come curl do face
        feel feet finger forearm good hand heel hold how hug last leg littl nice off only or other over palm pop
        pres quiet rest roll round same set squash step still swap take tall the thi thumb tip to too turn two up
        we when you
      `,
    ],
    [-0.4, '<air> <do> <num> arm down let noth'],
    [-0.6, '<place> not'],
  ],
  given: [
    [0.4, '<do> <kit> in your'],
    [
      0.2,
      `
        <chat> <less> <place> <swap> <wrong> again all as back bend com dip div drop dump feet float floor gone
        have head heav here into it knee leav lost lower neck off one opposit pillow pop push put rock sag start
        stick stop swing the they too tummy under untid what you youll youv
      `,
    ],
    [-0.2, '<pace> a at br dont down got like not on or round straight them toe'],
    [-0.4, '<not>'],
  ],
  last: [
    [0.6, 'tent'],
    [
      0.4,
      `
        bounc carol down forward heav in passenger plank plonk shrug still they tipto toe up wing
      `,
    ],
    [
      0.2,
      `
        about again air alec along and angl ankl apart arrow backsid balanc banana bed behind bel bet beth bicep
        bicycl bird bit blinker board bow brac bridg camel cave ceil cheat chest chip claw clench colin collar
        corkscrew dangl deckchair degre denis derek dex die divvent door drag drift drink droop drop duck ear
        earring elevator em feet fergal film flap fling fold foot for front gale gareth gas gerald guy hammock
        hassan headlight hello hunch imran inch insid instead invit inward jaw jean jer joan kirst kiss knock
        kyle lac lazy lean leg level long loop low lui mad marcu margaret middl mirror mo move movement mower
        nate nee nose one opposit pamela park pay penguin pillow pin pleas plop pole pub punch quiet rail rep
        rest sag see sho shop short shorter side sideway skat slow squat stack stamp stomp stood strict sw sway
        swing t tail tall telegram them thre thumb tightrop together tomorrow touch trip turtl under visit waist
        yourself
      `,
    ],
    [
      -0.2,
      `
        all are away balloon bar bent bottom box breath bum button calv church clock cold com count crash cross
        danc do dog easy elbow fall fine finish floor goe grumbl hand handl head hike hip hold hook is jerk jump
        kne kneecap kneel last lift like meet minut more mov much need next no pelvi plat plent pocket pres pull
        purpl race reach rib run second shin sofa sprint squeez stand stick stop stretch teeth ten th that tight
        toda watch way weight width window wobbl
      `,
    ],
    [-0.4, 'now on'],
  ],
  length: [
    [0.2, '5-7'],
    [-0.2, '3-4'],
    [-0.6, '1-2'],
  ],
  pair: [
    [0.6, '<do>_them <move>_them <part>_are <part>_stay of_<chat> of_you off_your that_a'],
    [
      0.4,
      `
        <attend>_to <chat>_all <chat>_land <chat>_see <far>_toe <kit>_com <move>_tall <not>_a <num>_degre
        <part>_com <part>_do <part>_have <take>_again <wrong>_in <wrong>_is a_bridg a_passenger a_squat
        are_<wrong> at_me bent_<part> bum_<place> chin_<place> fall_<place> hand_off how_<chat> i_<swap>
        leap_<place> look_at look_down not_<move> not_a out_like over_the point_at rib_down roll_<place> room_for
        should_<not> should_not start_again stay_<place> stay_over that_cheat that_how the_bum the_ceil the_foot
        them_<place> thi_into to_<do> to_<wrong> toe_<do> toe_<far> tuck_it turn_thi wrist_<place>
      `,
    ],
    [
      0.2,
      `
        0_<far> 0_degre 0_that 0_wher <attend>_an <attend>_at <attend>_blinker <attend>_down <attend>_finger
        <attend>_hand <attend>_high <attend>_of <attend>_saw <attend>_shoulder <attend>_spin <attend>_thi
        <chat>_0 <chat>_a <chat>_about <chat>_acros <chat>_along <chat>_beast <chat>_behind <chat>_bit <chat>_box
        <chat>_brac <chat>_coffe <chat>_die <chat>_do <chat>_dump <chat>_em <chat>_forward <chat>_had
        <chat>_hundred <chat>_leap <chat>_leg <chat>_lift <chat>_longer <chat>_look <chat>_mad <chat>_margaret
        <chat>_on <chat>_pay <chat>_punch <chat>_push <chat>_rush <chat>_said <chat>_say <chat>_short
        <chat>_should <chat>_stand <chat>_start <chat>_tall <chat>_the <chat>_untid <chat>_was <chat>_watch
        <chat>_your <do>_again <do>_are <do>_as <do>_back <do>_em <do>_forward <do>_head <do>_right <do>_tall
        <do>_youv <far>_back <far>_for <far>_forward <far>_giv <far>_out <far>_shop <harm>_by <harm>_face
        <harm>_for <harm>_forward <harm>_into <harm>_long <harm>_to <kit>_drift <kit>_drop <kit>_of <kit>_off
        <kit>_stretch <less>_bounc <less>_fast <less>_heav <less>_look <less>_low <less>_much <less>_neck
        <less>_of <less>_on <less>_step <less>_the <more>_at <more>_behind <more>_bel <more>_like <more>_straight
        <move>_again <move>_as <move>_fac <move>_from <move>_honest <move>_it <move>_not <move>_quiet
        <move>_still <move>_stuck <move>_under <not>_arch <not>_banana <not>_bend <not>_bent <not>_bicycl
        <not>_bounc <not>_claw <not>_come <not>_cran <not>_curl <not>_dip <not>_drag <not>_duck <not>_elbow
        <not>_fling <not>_fold <not>_from <not>_grip <not>_haul <not>_heav <not>_hitch <not>_hoick <not>_hover
        <not>_in <not>_instead <not>_invit <not>_jam <not>_knock <not>_lean <not>_let <not>_lift <not>_neck
        <not>_of <not>_open <not>_out <not>_plonk <not>_plop <not>_priz <not>_quarter <not>_rock <not>_roll
        <not>_scrunch <not>_shov <not>_shrug <not>_snatch <not>_stamp <not>_start <not>_swing <not>_tent
        <not>_than <not>_thump <not>_to <not>_tug <not>_use <not>_want <not>_wing <not>_yank <num>_five <num>_of
        <num>_rail <num>_side <pace>_and <pace>_down <pace>_hand <pace>_make <pace>_the <pace>_toe <part>_apart
        <part>_arent <part>_at <part>_away <part>_doesnt <part>_dont <part>_drift <part>_drop <part>_face
        <part>_flap <part>_follow <part>_foot <part>_forward <part>_goe <part>_halfwa <part>_havent <part>_heel
        <part>_hik <part>_instead <part>_is <part>_isnt <part>_job <part>_just <part>_leg <part>_level
        <part>_long <part>_out <part>_over <part>_pin <part>_pleas <part>_point <part>_pok <part>_pop <part>_roll
        <part>_round <part>_shoot <part>_still <part>_straight <part>_that <part>_walk <part>_want <part>_were
        <part>_wider <part>_your <part>_youv <place>_ahead <place>_arm <place>_at <place>_behind <place>_elbow
        <place>_finger <place>_first <place>_heel <place>_just <place>_level <place>_like <place>_plank
        <place>_side <place>_them <place>_ther <place>_two <place>_under <place>_you <place>_youll <settle>_acros
        <settle>_again <settle>_along <settle>_an <settle>_back <settle>_behind <settle>_gone <settle>_it
        <settle>_like <settle>_longer <settle>_lost <settle>_mad <settle>_short <settle>_shorter <settle>_stretch
        <settle>_tall <settle>_them <settle>_they <settle>_untid <settle>_us <settle>_with <swap>_dip <swap>_duck
        <swap>_fling <swap>_flop <swap>_heav <swap>_hop <swap>_it <swap>_kick <swap>_not <swap>_off <swap>_plonk
        <swap>_plop <swap>_priz <swap>_push <swap>_right <swap>_tent <swap>_your <take>_a <take>_an <take>_back
        <take>_behind <take>_forward <take>_go <take>_right <take>_stretch <take>_tall <take>_wider <take>_work
        <wrong>_back <wrong>_forward <wrong>_its <wrong>_off <wrong>_out <wrong>_over <wrong>_the <wrong>_to
        <wrong>_up <wrong>_your a_<harm> a_<move> a_<not> a_bell a_bit a_boat a_bow a_camel a_chin a_crisp a_deck
        a_deckchair a_duck a_fer a_fib a_football a_gale a_jumper a_lag a_mous a_mower a_penguin a_pigeon
        a_pillow a_potato a_rest a_row a_ship a_spot a_straight a_sw a_t a_tap a_telegram a_tent a_tray a_view
        about_it all_<part> all_hamstring all_hip all_knee alway_<attend> am_<wrong> an_arrow an_egg and_<more>
        and_<part> and_car and_go and_hip and_it and_lose and_right and_stop ankl_roll any_lift are_<kit>
        are_bend are_bob are_clench are_com are_drop are_jump are_rop are_they are_too are_up arent_<wrong>
        arm_<less> arm_do arm_go arm_just arm_same arm_that as_high as_your at_0 at_<chat> at_<num> at_an at_the
        back_<not> back_<settle> back_<swap> back_<take> back_<wrong> back_a back_arch back_foot back_heel
        back_just back_near back_stay backward_to band_com bang_your bar_<do> bar_<wrong> bar_drift bar_drop
        bar_goe be_<swap> be_on be_rub beast_the becaus_that becaus_youv bend_<place> bend_on bend_the
        bent_<place> bent_back bent_elbow between_them big_shop big_toe bit_ahead both_shoulder both_sit
        bottom_foot bottom_leg bottom_stay box_to br_it bridg_yet bum_<far> bum_clench bum_down bum_in bum_level
        bum_shoot bum_stay button_fac by_side call_your can_tell car_<place> car_on catch_<chat> catch_you
        chas_the chest_lift chest_out chin_<more> chin_in chin_off chin_up clap_<place> clap_together
        clench_<part> clench_fist click_<place> click_together coast_it com_in com_off com_to com_with come_a
        come_to come_with could_eat crack_a crept_<place> crept_forward crush_it curl_<place> curl_it dead_<less>
        dead_<move> didnt_say different_drill div_<place> div_in do_<not> do_it do_not do_the doe_<not> doe_not
        doesnt_<do> doesnt_<less> doesnt_drop dont_<do> dont_<move> dont_<wrong> dont_arch dont_crank dont_drag
        dont_haul dont_hitch dont_hover dont_knock dont_lean dont_let dont_rock dont_roll dont_stamp dont_sw
        dont_thump dont_yank down_<pace> down_<place> down_and down_befor down_slow down_under down_when
        drink_bird drop_<place> drop_in drop_the drop_your dump_into each_<num> each_one each_other ear_goe
        eat_your elbow_<do> elbow_<far> elbow_<move> elbow_<place> elbow_are elbow_at elbow_clos elbow_down
        elbow_drop elbow_flap elbow_halfwa elbow_point elbow_soft elbow_to em_<do> em_<less> em_<move> em_<place>
        em_drop end_of ever_rep everyon_beast eye_<place> eye_on fac_the face_the fall_by fall_for fall_into
        fast_and feel_thi feet_<far> feet_<not> feet_on feet_wider feet_work fer_gaz few_of finish_stood first_0
        first_hundred five_<far> five_degre flat_<part> flatten_it float_<more> float_up floor_in floor_when
        flop_<part> flop_<place> fold_at follow_the foot_pleas foot_turn for_<harm> for_balanc for_height
        forc_the fort_<num> fort_five forward_on from_<attend> from_here from_still from_your front_<pace>
        front_<part> front_knee front_one front_rib front_slow front_with get_<ill> get_behind get_them glu_to
        go_<do> go_<less> go_acros go_along go_dead go_longer go_mad go_round go_short go_too go_untid go_up
        go_with goe_<attend> goe_over gone_<place> gone_out good_leg got_<not> got_taller grip_loos
        ground_<settle> ground_come half_of hamstring_<do> hand_<less> hand_are hand_out handl_com hang_<attend>
        hang_still has_<wrong> has_it has_wander haul_<place> haul_on have_gone have_lost have_they have_us
        head_<more> head_<part> head_are head_back head_hang head_up heal_<place> heal_down hear_<take> hear_feet
        hear_stomp heel_<chat> heel_are heel_com high_<attend> high_as hip_<do> hip_<move> hip_<place>
        hip_<settle> hip_<take> hip_<wrong> hip_dont hip_face hip_forward hip_hik hip_open hip_right hip_stack
        hip_together hip_under hit_your hold_a hold_an hold_your home_to how_you i_can i_die i_do i_said i_see
        i_should if_it if_one if_they ill_say im_pay im_see in_<attend> in_<place> in_high in_toward into_a
        into_it into_your is_<wrong> is_a is_bend is_go is_to is_too isnt_a it_<far> it_<more> it_come it_div
        it_down it_flat it_follow it_from it_gent it_has it_home it_is it_isnt it_leav it_once it_proud it_stay
        it_under it_wander it_with its_<far> its_<part> its_<wrong> its_all its_ankl its_hav its_kne its_leg
        its_nice its_only its_opposit its_park its_strong its_swing its_too jam_<place> jumper_<place>
        jumper_tuck just_a just_hold just_str just_thrash just_to keep_both keep_them keep_your kicking_for
        kiss_the kne_<attend> kne_<chat> kne_<settle> kne_<wrong> kne_apart kne_arent kne_follow kne_go kne_out
        kne_over kne_soft kne_stay kne_tuck knee_goe knee_straight kneecap_look knit_them knock_<place>
        knock_together knuckl_at knuckl_straight land_quiet lap_so last_bit leap_<part> leap_back leav_room
        leav_them leav_your leg_<chat> leg_<swap> leg_do leg_job leg_still leg_that leg_under less_<do>
        less_<part> less_neck let_em let_the let_them level_your lie_ther lift_<place> lift_and lift_it
        lift_through light_<part> light_hand like_a like_an like_blinker like_hold like_saw like_thi like_to
        littl_toe long_finger long_plank look_<attend> look_<place> look_for look_like loop_stretch loos_<move>
        loos_<settle> loos_grip lose_it lost_the lot_of lower_<part> lower_and lower_the me_the metr_<place>
        metr_in middl_toe mistak_is more_<air> more_<attend> more_<part> more_bel move_the much_<do> much_<move>
        much_<place> much_<settle> much_on my_coffe nam_a neck_<chat> neck_<more> neck_<place> neck_on
        never_<chat> never_<settle> never_let next_<num> next_one no_dip no_duck no_fling no_flop no_heav no_hop
        no_kick no_plonk no_plop no_priz no_push no_tent nobod_<do> nobody_film none_of not_<do> not_<place>
        not_<swap> not_<wrong> not_bend not_bent not_from not_grip not_in not_invit not_jam not_knock not_lift
        not_lock not_out not_pull not_quarter not_rush not_to not_want not_yank of_bear of_that of_thos on_<num>
        on_a on_them on_two on_with on_you one_side only_giv open_it open_them other_hand out_<attend> out_<chat>
        out_<place> out_first out_of out_past out_to over_it over_your pay_for peel_off peopl_<wrong>
        peopl_downstair pick_it pillow_under plant_the point_forward pok_<place> pol_<chat> pol_first pop_<more>
        pop_<place> pop_up potato_chip pretend_i puff_<more> puff_<place> puff_up pull_them push_<more> push_a
        push_tall push_them push_up push_your put_<chat> put_it quarter_to quit_<less> quit_<not> quit_<swap>
        quit_instead rather_than reach_out relax_<part> relax_hand rib_<place> rib_are rib_in rib_that
        right_<more> right_through right_up ring_<place> ring_in rob_yourself rock_<attend> rock_like
        roll_forward roll_in roll_out round_your rush_the said_<do> said_<move> said_drag said_float same_<part>
        same_arm same_leg saw_<place> saw_on say_brak say_it scrunch_your second_toe see_<num> see_<part>
        seen_that send_it shak_em shoot_<more> shoot_<place> shoot_up shorten_it shorten_the shoulder_<not>
        shoulder_<place> shoulder_an shoulder_are shoulder_arent shoulder_away shoulder_back shoulder_lift
        shoulder_thi shouldnt_<move> shov_off show_<chat> show_me sid_of side_by side_to sink_<part> sink_back
        sink_into sit_<part> sit_back sit_into sit_tall skirt_board slack_<place> slack_out slip_<place>
        slip_down slow_<place> slow_down snatch_at snatch_your sneak_<place> so_<attend> so_<chat> so_if so_you
        soft_<part> soft_in soft_shoulder soften_it somebody_<place> somebody_<wrong> somebody_call somebody_on
        sor_at spe_<move> spe_make sped_<more> sped_<place> sped_up spoon_your squat_it squeez_them stack_it
        stand_<attend> stand_<more> stand_<part> stand_kne stand_right stand_up star_at start_a start_dip
        start_from stay_down stay_fac stay_honest stay_off stay_on stay_out stay_point stay_still stay_stuck
        stay_tall stay_touch stay_under stay_upright step_are stick_<place> stick_com stick_out stiff_leg
        still_<part> still_befor still_leg still_ther stiller_than stop_<wrong> stop_it straight_<more>
        straight_ahead straight_down straight_up straighten_them strangl_it strap_off sure_<chat> sure_you
        swing_its swing_your tailbon_youv tak_the tall_and tall_spin tea_off tell_becaus tendon_tak tension_in
        than_a that_<settle> that_<wrong> that_catch that_done that_foot that_go that_is that_just that_move
        that_one that_rob that_up that_what that_wher the_<air> the_<chat> the_<harm> the_<ill> the_<kit>
        the_<pace> the_<part> the_<swap> the_<wrong> the_air the_big the_bus the_carpet the_end the_front
        the_good the_ground the_hat the_hip the_joint the_knee the_lac the_leg the_length the_light the_lot
        the_mat the_middl the_mirror the_nam the_nice the_part the_pillow the_pol the_pole the_pub the_second
        the_shap the_sid the_skirt the_slack the_sore the_straight the_swim the_thigh the_waist the_weight
        the_work their_<part> their_arm them_<attend> them_<chat> them_<less> them_<settle> them_down them_drag
        them_fift them_forward them_go them_over them_under ther_<less> ther_peopl ther_room ther_to ther_too
        they_<move> they_bend they_done they_like theyll_skat theyll_want theyr_<attend> theyr_<not> theyr_gossip
        theyr_just theyr_not theyr_step theyr_still thi_in thigh_<move> thigh_stay third_0 third_<num>
        thrash_about through_the tip_<place> to_<chat> to_<pace> to_<settle> to_get to_haul to_help to_knee
        to_lean to_roll to_rush to_side to_twist to_you toe_<attend> toe_<chat> toe_<part> toe_<settle>
        toe_<take> toe_face toe_forward toe_go toe_long toe_to toe_when too_<attend> too_<far> too_<pace>
        too_fast too_heav too_low too_much top_<part> top_heel top_shoulder touch_from touch_your toward_the
        train_lin tray_of try_<not> try_not tuck_them turn_<place> turn_it twist_<chat> twist_you two_rail
        unclench_it uncros_your untid_<not> untid_stop up_<attend> up_<chat> up_<place> up_at up_like up_straight
        us_your view_of wait_<far> wait_is wait_till walk_out wander_<place> wander_in wander_off want_<part>
        want_them want_to wash_<attend> wash_<settle> wash_line watch_that watch_your wav_at way_<place>
        way_apart way_down weight_<place> weight_and weight_of weight_over weird_your were_<not> were_jump
        were_not what_i what_we whatv_they when_<chat> when_you wher_it whol_<part> whol_foot widen_<place>
        widen_out wiggl_them with_<chat> with_the with_your work_and wrist_<attend> wrist_flat wrist_out
        you_<chat> you_<far> you_<settle> you_a you_about you_are you_get you_had you_have you_lift you_look
        you_margaret you_only you_punch youll_<chat> youll_<settle> youll_go your_<attend> your_<kit> your_<pace>
        your_<swap> your_<take> your_<wrong> your_all your_arm your_armpit your_belt your_bicep your_box
        your_brac your_but your_button your_collar your_dump your_ear your_earring your_feet your_guard your_knee
        your_lac your_land your_lap your_leap your_middl your_name your_nose your_on your_pictur your_push
        your_rib your_rush your_seam your_second your_sho your_sit your_spin your_stand your_start your_tall
        your_tea your_thumb your_top your_tum your_tummy your_turn your_us your_weight your_wrist youv_nee
        youv_round youv_sped
      `,
    ],
    [
      -0.2,
      `
        <attend>_as <attend>_back <attend>_go <attend>_that <attend>_when <attend>_with <chat>_at <chat>_done
        <chat>_dont <chat>_drop <chat>_it <chat>_like <chat>_put <chat>_to <chat>_want <do>_a <do>_by <do>_one
        <do>_over <do>_straight <do>_that <do>_the <far>_and <far>_one <far>_than <far>_up <far>_your <harm>_leg
        <harm>_out <kit>_at <kit>_back <kit>_down <kit>_it <kit>_on <kit>_so <kit>_stay <kit>_up <less>_it
        <less>_them <more>_in <more>_off <more>_that <move>_at <move>_for <move>_on <move>_one <move>_soft
        <move>_stack <move>_straight <move>_the <move>_ther <move>_up <not>_an <not>_back <not>_be <not>_cheat
        <not>_clamp <not>_for <not>_get <not>_hap <not>_have <not>_mov <not>_put <not>_sham <not>_slam
        <not>_spill <not>_stop <not>_the <not>_throw <not>_too <not>_turn <not>_wher <not>_your <num>_foot
        <num>_leg <num>_second <num>_to <part>_a <part>_and <part>_bent <part>_blad <part>_brush <part>_button
        <part>_get <part>_height <part>_high <part>_if <part>_in <part>_knee <part>_lock <part>_loos <part>_lower
        <part>_not <part>_off <part>_on <part>_only <part>_rock <part>_say <part>_toward <part>_tuck <part>_turn
        <part>_under <part>_up <part>_when <part>_width <part>_with <place>_0 <place>_again <place>_as
        <place>_for <place>_forward <place>_hip <place>_in <place>_knee <place>_now <place>_off <place>_that
        <place>_thi <place>_till <place>_until <place>_wher <settle>_on <settle>_straight <settle>_stuck
        <settle>_yourself <swap>_a <swap>_jerk <swap>_of <swap>_out <swap>_sham <swap>_them <swap>_twist
        <take>_at <take>_down <take>_flat <take>_it <take>_off <take>_stay <take>_straight <take>_stuck <take>_to
        <take>_your <wrong>_a <wrong>_it <wrong>_you a_<attend> a_<far> a_<part> a_<wrong> a_balloon a_bend a_car
        a_coffe a_foot a_littl a_round a_wee about_a abov_the an_<part> and_<chat> and_<move> and_<settle>
        and_<take> and_just and_let and_your are_<attend> are_<not> are_go are_not are_still arm_<do> arm_are
        arm_hang arm_out as_<attend> as_<place> as_a as_if as_they at_all at_you at_your back_in back_knee
        back_of back_up bar_<place> be_<attend> befor_<chat> befor_you behind_the behind_your below_the bend_your
        between_your big_<harm> bit_<place> bit_of both_<part> both_hand bounc_them breath_<place> brush_your
        bum_<part> bum_back by_the call_it chair_<place> chest_<do> clamp_<place> come_<part> come_<place>
        come_back dead_<attend> dead_still dont_<attend> dont_<pace> dont_<swap> dont_ask dont_be dont_bend
        dont_clamp dont_fall dont_flop dont_go dont_have dont_jump dont_lock dont_push dont_rush dont_slam
        dont_turn down_<attend> down_<not> down_away down_like down_the drop_it drop_off elbow_<more> elbow_brush
        elbow_glu elbow_under elbow_up feel_<attend> feet_stay flat_<place> fold_over foot_<place> foot_off
        for_them for_thi from_<chat> front_foot front_heel get_stuck get_up go_<attend> got_the hand_<move>
        hand_and have_a have_to head_<not> heel_<do> heel_<place> hip_back hip_not hold_the hop_<place> i_<not>
        i_dont i_want if_<chat> if_youv im_<not> im_not in_<num> in_your is_<chat> it_<wrong> it_crash it_ping
        it_should it_to it_yank its_<not> its_<num> its_<place> its_not just_<place> just_the keep_it kne_<more>
        kne_bent kne_down kne_in kne_not kne_to kne_up knee_track knit_<place> left_<part> leg_<do> leg_<more>
        leg_<move> leg_are leg_out leg_stay leg_up let_<chat> let_<settle> let_go let_it lift_your like_it
        like_the like_your long_<place> neck_stay never_<wrong> no_<kit> no_<more> no_<move> no_<place>
        no_<settle> no_jerk no_sham no_twist not_<chat> not_<far> not_<less> not_<num> not_<settle> not_an
        not_cheat not_for not_go not_hap not_need not_on not_the not_too not_your noth_<place> of_a of_it of_the
        of_them off_it on_that on_the one_<place> one_foot one_leg other_<part> other_foot out_and palm_<place>
        plank_<place> pull_the push_it put_them put_your reach_your rib_tuck roll_<more> roll_up round_and
        row_boat shoulder_<move> shoulder_<take> shoulder_blad shoulder_off shoulder_soft show_off side_of sit_on
        slam_it slid_<more> slid_up spill_it stack_<place> stack_over start_to stay_by stay_in stay_long
        stay_soft stay_stack stay_ther step_<place> stop_<chat> straighten_the take_your than_the that_<not>
        that_<part> that_<swap> that_all that_leg that_mat that_not that_your the_<do> the_<less> the_<move>
        the_<settle> the_bench the_box the_clock the_door the_gras the_kne the_kneecap the_neck the_spin
        the_stand the_top the_wrist the_wrong them_<far> them_com them_on them_ther thi_<num> thi_one
        thigh_<place> through_it through_them thumb_<place> till_your tip_it tipto_to to_<part> to_a to_hear
        to_hold to_lift to_your toe_out toe_stay top_of toward_your track_<place> track_over try_to tuck_in
        turn_the under_<part> under_the up_<far> up_off up_that upsid_<place> upsid_down wall_<place> want_it
        want_the we_are weight_down when_youv wher_you whil_<chat> with_<attend> with_a wrist_rock yank_<chat>
        yank_you you_<less> you_<more> you_<not> you_<take> you_can you_put your_<chat> your_<more> your_back
        your_eye your_finger your_foot your_head your_lean your_leg your_own your_shoulder your_side your_strap
        your_waist
      `,
    ],
    [
      -0.4,
      `
        <attend>_your <not>_drop <not>_go <not>_jump <part>_to <place>_the <place>_your a_<chat> arm_<place>
        dont_<less> dont_drop front_of go_to hand_<place> hold_it if_your it_out leg_<place> one_<part>
        over_<part> you_<swap>
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
        caution-hint chat easier-hint equipment-likely equipment-sure execution-hint execution-likely praise
        purpose setup-hint tempo-sure
      `,
    ],
    [
      -0.4,
      `
        breathing-sure caution-sure dose_only harder-sure range-likely range-sure setup-sure
      `,
    ],
    [-0.6, 'easier-sure empty_clauses'],
  ],
  start: [
    [0.6, '<part>_<settle> <place>_<part>'],
    [
      0.4,
      `
        <attend>_<part> <not>_<wrong> <part>_<far> <part>_<not> <part>_<take> <settle>_<attend> hand_off look_at
        look_at_the rib_down that_a that_cheat that_how tuck_it tuck_it_in
      `,
    ],
    [
      0.2,
      `
        0_degre <attend>_<place> <chat>_<attend> <chat>_<wrong> <do>_<attend> <do>_<more> <far>_<part>
        <far>_<place> <harm>_<attend> <harm>_<do> <harm>_<far> <harm>_<settle> <harm>_<take> <less>_<do>
        <less>_<kit> <less>_<less> <more>_<air> <move>_<attend> <not>_<do> <not>_<move> <num>_<far> <pace>_<part>
        <pace>_<place> <part>_<attend> <part>_<chat> <part>_<less> <place>_<place> <take>_<far> <take>_<more>
        <take>_<place> a_bit_in a_heel a_metr_in a_touch all_of all_of_you any_lift are_they arm_go as_the
        back_at back_at_0 back_foot bar_drop bar_for bar_for_balanc bend_it_gent bent_elbow body_a body_a_plank
        both_shoulder both_shoulder_heav br_it br_it_under br_the br_the_hip br_the_second br_your_chest
        brush_the brush_the_insid bum_down bum_in bum_in_the bum_level bum_level_with bum_stay but_are chest_and
        chest_and_hip chest_fac chest_fac_the chest_lift chest_out chest_out_of chest_up chin_in chin_off
        chin_off_your chin_up_in clap_together coast_it coast_it_out crush_it do_not_grip do_not_rush do_not_yank
        dont_arch dont_crank dont_crank_your dont_drop_the dont_haul dont_hitch dont_hold_your dont_hover
        dont_lean dont_lean_back dont_let dont_let_the dont_let_your dont_look_down dont_look_up dont_push_off
        dont_rock dont_shov dont_stamp dont_sw dont_thump dont_twist dont_watch_your draw_it_flat draw_the_front
        drink_bird drop_them each_one_start elbow_are elbow_at elbow_at_about elbow_clos elbow_down elbow_down_by
        elbow_halfwa elbow_on_a elbow_point elbow_point_back elbow_soft elbow_stay_as everyon_beast
        everyon_beast_the eye_on eye_on_the fall_for fall_for_thre feet_on_two feet_wider find_a_spot
        finish_stood finish_stood_up first_0_wher flat_back flatten_it front_knee front_knee_goe front_slow
        get_behind get_behind_it get_them go_along go_longer go_round_the grip_loos half_of half_of_you
        hand_off_the hand_off_your hand_rest hand_rest_on handl_com handl_com_in hang_still hang_still_befor
        has_it have_they head_are heal_down heel_are heel_are_com hip_dont hip_face hip_face_the hip_forward
        hip_go_with hip_right hip_right_through hold_a hold_a_crisp hold_a_potato hold_an hold_an_egg i_can
        i_can_tell i_cant_see i_didnt_say i_said i_said_drag i_said_float i_see i_should i_want_them if_it
        if_it_div if_its_all if_its_swing if_one if_the_knee if_the_opposit if_the_stick if_they if_they_bend
        if_they_go if_your if_your_back if_your_dump if_your_hip if_your_tummy ill_say ill_say_it im_see
        in_on_each it_doesnt_drop it_goe it_goe_over it_is_a it_isnt it_only_giv it_stay it_twist it_twist_you
        its_a_kickstand its_a_lift its_a_passenger its_a_plank its_a_tap its_all_hip its_ankl its_hav its_hav_a
        its_kne its_leg its_only its_only_for its_only_the its_opposit its_park its_slip_down its_still_leg
        its_the_thigh its_the_third its_ther_to its_too_heav its_your its_your_rib ive_seen_that jaw_like_jel
        keep_both keep_it_down keep_it_proud keep_that_loop keep_the_hip keep_them keep_them_flat keep_them_in
        keep_your keep_your_belt keep_your_button keep_your_chin keep_your_wrist kicking_for kicking_for_the
        kne_are_bend kne_arent kne_follow kne_follow_your kne_go kne_go_the kne_out_against kne_over
        kne_over_your kne_stay kne_stay_fac kne_tuck knee_over knee_over_the knee_point kneecap_look
        kneecap_look_at knit_them knuckl_at knuckl_at_the knuckl_straight land_quiet lean_a_touch lean_in_from
        lean_your_whol leav_it_home leav_room leav_room_for leg_still leg_under leg_under_you less_neck let_em
        let_em_drop let_it_come let_it_drop let_it_fall let_it_follow let_the_ground let_the_spe let_them
        let_them_drag let_them_go level_your level_your_belt lift_it lift_the_chest light_on light_on_your
        like_a_duck like_somebody_call like_your_on like_your_push like_your_start like_your_stuck like_youv
        like_youv_a long_finger long_way long_way_apart look_a_bit look_at_your look_straight_down loos_grip
        lot_of lot_of_you make_a_straight make_the_front most_of_you move_the move_the_bottl move_your_face
        never_let never_on_it no_dip no_duck no_fling no_flop no_heav no_hop no_kick no_plonk no_plop no_push
        no_tent nobod_should_be nobody_film none_of not_a_littl not_a_tent not_at not_at_the not_bent
        not_bent_back not_from not_from_the not_jam not_knock not_leap not_like_thi not_out not_out_like
        not_out_to not_quarter not_quarter_to not_the_head not_the_same not_your_elbow one_long one_long_plank
        open_it open_the_collarbon open_them or_its_a other_hand_stay out_at_me plant_the plant_the_pol
        pres_the_big pretend_i pretend_i_put pull_them pull_them_up push_tall push_them push_up_between
        push_your_kne put_it_back quit_instead relax_hand rib_stay_down ring_in ring_in_by ring_in_tight send_it
        send_it_away shak_em shak_them_down shorten_it shoulder_are shoulder_away shoulder_away_from
        shoulder_down shoulder_down_out shoulder_level shoulder_out shoulder_out_of shoulder_over_your show_me
        show_me_the sink_back sink_back_into sit_down_to sit_tall sit_tall_on sit_up slow_down slow_down_befor
        slow_it_down snap_your snap_your_knee snatch_your snatch_your_arm soft_in soft_in_the soft_knee
        soft_shoulder soft_shoulder_thi soften_it somebody_on somebody_on_a spoon_your spoon_your_hand
        squeez_them squeez_them_home squeez_your_tum stack_it stack_it_up stand_kne stand_right stand_right_up
        stand_tall_and stand_up_out stand_up_straight start_again stay_fac stay_off stay_over stay_still
        stay_tall stiller_than stiller_than_that straight_up straighten_it straighten_it_up strap_are
        strap_are_like strap_off strap_off_your take_the_slack tall_spin that_a_bow that_a_camel that_a_goos
        that_a_handbrak that_a_squat that_a_telegram that_a_tent that_how_you that_is that_is_a that_just
        that_just_thrash that_the that_the_next that_the_one that_the_part that_the_same that_wher_it
        the_arm_just the_band_com the_ear the_ear_goe the_heel the_light the_light_one the_lot the_lot_of the_nam
        the_nam_a the_shoulder the_thigh the_thigh_stay the_wait the_wait_is ther_a_cup ther_a_stop ther_no_priz
        ther_peopl ther_peopl_downstair ther_room ther_room_for they_dont they_like they_like_to theyll_skat
        theyll_want theyll_want_to theyr_gossip theyr_not theyr_still theyr_still_ther thi_is_not thigh_stay_on
        think_of_a toe_face toe_long toe_point_forward toe_to toe_to_the try_not try_not_to tuck_them
        tuck_your_tail turn_it_in turn_your_feet unclench_your_hand uncros_your uncros_your_ankl use_the_leg
        use_your_bel wait_till wait_till_the walk_out walk_out_of watch_that watch_the_knee watch_your_elbow
        weight_acros weight_acros_the weight_between_the weird_your weird_your_top were_not what_i whatv_they
        whatv_they_done wher_its_nice wher_your wher_your_go whol_foot widen_out wiggl_them wrist_are wrist_flat
        wrist_stay_straight you_could_eat you_dont_chas you_finish you_finish_stood you_look you_look_like
        you_should_not youll_go youll_go_over youll_have_us youll_trip youll_trip_on your_a_door your_all
        your_but your_leap your_not_a your_not_look your_not_on your_push your_push_your your_stand your_stand_up
        youv_nee youv_sped youv_sped_up
      `,
    ],
    [
      -0.2,
      `
        <air>_<place> <chat>_<not> <chat>_<num> <chat>_<place> <move>_<part> <move>_<place> <not>_<attend>
        <not>_<far> <not>_<kit> <not>_<more> <not>_<num> <not>_<pace> <num>_<part> <part>_<do> <part>_<ill>
        <part>_<place> <part>_<swap> <settle>_<place> <swap>_<kit> <swap>_<move> <swap>_<part> <swap>_<place>
        arm_out bend_the bend_your bend_your_kne big_toe br_it_back bum_back dont_ask dont_be dont_bounc_them
        dont_chas dont_clamp dont_flop dont_go dont_hold_it dont_jump dont_let_it dont_let_them dont_lock
        dont_lock_them dont_look_at dont_pull_with dont_push dont_push_through dont_roll_it dont_roll_up
        dont_rush dont_slam dont_tip_it dont_turn elbow_brush elbow_glu elbow_under elbow_up have_a hip_go_back
        hip_squar hold_it hold_the i_dont i_want i_want_to if_its_too if_you_get if_your_wrist if_youv its_not_an
        its_not_cheat keep_the_knee keep_them_com keep_them_ther keep_your_feet keep_your_shoulder kne_bent
        kne_down kne_in kne_point_at kne_up leav_the let_the lift_your like_a no_bounc_off no_jerk no_more
        no_yank_on not_a_squat not_a_tightrop not_at_your not_down_at not_in_the not_on not_on_your not_out_in
        not_the not_the_toe not_up_in not_your not_your_neck rib_knit shoulder_off shoulder_soft
        shoulder_stay_squar stay_on stay_on_your stop_at take_your that_all that_you that_your the_leg the_other
        they_dont_bend they_dont_flar toe_out toe_point toe_point_straight tuck_the tuck_your_toe you_should_be
        your_head your_lean your_lean_back youv_gone
      `,
    ],
    [-0.4, '<not>_<less> dont_drop let_your not_a'],
  ],
  word: [
    [0.8, 'bum stay'],
    [0.6, 'are chin look open point tent them they theyr too'],
    [
      0.4,
      `
        backsid bend carol ceil clench degre divvent dont drop duck ear elbow em gone heav hip into knock lean
        leap level middl passenger pillow plonk rib see shoulder shrug start stomp sw sway swing toe tuck
        unclench wander wing
      `,
    ],
    [
      0.2,
      `
        again air alec alway am angl apart arch arent arrow avoid back banana bang beast beginner bel belly belt
        bent beryl bet beth bicycl big bird blinker board bob body bounc bow brak bridg but camel carpet cave
        cheat chest claw colin collar com cran crept curl dangl death deck deckchair denis derek dex die dip div
        drag drift drink droop dump earring eat elevator error everyon fac fall fer fergal flap flar flatten fold
        follow football forward front gale gareth get glu goe grip guard guy hammock handl has hassan haul
        headlight heal hik hitch hoick home how hunch i in instead invit inward is isnt its jam jaw jean jer joan
        joint keep kicking king kirst kiss kne knee kneecap knit knuckl kyle lac lag land leav less lift ligament
        light lin line loop lost lui marcu margaret mirror mistak mo most mous move mower nail nam nate neck nee
        nice no none nose not off out pamela park pay peck penguin peopl pleas plop pok pole pop potato pub push
        quit rail rather rep resist rob roll room rop rub rush sag saw scrunch shak ship shoot shorten shorter
        should shouldnt shov sid sink skirt slack slow smooth snatch sneak somebody sped squar squat stack stamp
        stick still stiller straighten strangl strap strict t tall tea telegram themselv theyll thrash thump
        tightrop tipto together tray trip tug tummy turn turtl twist uncros untid up us visit wait want watch wav
        weight were whatv whol wiggl work wrist youll youm your youv
      `,
    ],
    [
      -0.2,
      `
        0 about abov after all allow any anybod anyon arm as asleep away bag balloon beat been befor behind bell
        below bench better between blad bomb bone both bottom build by calf call calv can cant cat chair chang
        check church circl clamp clean clear cold comf count cramp crash cros cross dead deep did dog door easy
        eight either else enough even ever everyth far feel feet fight find fine fingertip flat floor for forearm
        forget four full further gap give go got grab gras grumbl hair hamstr hap heel height held hing hook hot
        hug jog kneel last leg littl lock long lung machin mak march mark me meet mine minut month mov muscl near
        never ninet nip number on one other outsid overhead own pad pain pair partner pass paus pelvi phon ping
        plat plent pocket pret proper pump purpl put quick rais remember right run same sat sav save set sham
        sharp shut six skip slam slid small so sock sofa somebod someth spill spread sprint step stop strength
        stretch swap switch talk teeth ten th than then ther thes think thumb tight time tin tiny tip to toda top
        twent twic two until ups upsid walk warm water we wee whil who width wind window wobbl wont wrong you
      `,
    ],
    [-0.4, 'and finger hand hold if jump noth now palm pres shin take through till without'],
    [-0.6, 'breath or'],
  ],
} as const satisfies CueWeights
