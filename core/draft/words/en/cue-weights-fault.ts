/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind fault; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const FAULT_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [1.2, 'wrong'],
    [0.6, 'not'],
    [0.4, 'part'],
    [0.2, 'move place settle'],
    [-0.2, 'attend chat do harm ill less more swap take'],
    [-0.4, 'air far'],
    [-0.6, 'num pace'],
  ],
  first: [
    [0.8, 'your'],
    [0.6, 'shoulder theyr'],
    [0.4, '<not> <part> carol dont elbow keep neck that tuck watch wrist'],
    [
      0.2,
      `
        <chat> <harm> <less> avoid beginner bet beth bethan bum but careful chin clap click colin denis derek
        divvent eye fergal front get half has heal hip i it jean jer kicking kirst kneecap knit less level lift
        line lui marcu mo more most nate open pamela pull quit resist rib round sir smooth soft some somebody
        squar stack stand stay strap stretch strict sw they track try unclench uncros weight weird whatv wher
        widen youm youv
      `,
    ],
    [
      -0.2,
      `
        <far> <pace> a all ankl arm at bend bottom chang curl do down feel feet finger forearm go hand how hug
        leg let lock nice nobody noth off one other out palm roll same start step take thi thumb tip to too turn
        up we when you
      `,
    ],
    [-0.4, '<air> <do> <num> <wrong> back'],
    [-0.6, '<place> not'],
  ],
  given: [
    [0.4, '<kit> <less> <place> your'],
    [
      0.2,
      `
        <attend> <chat> <do> <far> <move> <part> <swap> all as back bend dip div drop forward have here in into
        knee leav lost lower neck off opposit shoulder start the they too under work you youv
      `,
    ],
    [-0.2, '<more> <not> a dont down like on'],
  ],
  last: [
    [0.4, 'carol forward front heav shrug stomp tent toe'],
    [
      0.2,
      `
        about acros again air alec backsid bel belt bend bet beth bethan bit bounc bow bridg bun camel ceil chair
        cheat chest chin chip clench colin collar crisp deckchair degre denis derek dex divvent dont down drop
        ear earring elevator em everybod feet fergal flap flat fling flutter foot gale gas hammock hat honest
        hunch imran insid instead inward jaw jean jer lac leg level low lui marcu middl mirror mo movement nate
        nee nice nose one open opposit pamela pigeon pillow pin pirat plank pleas plonk plop pub punch scarecrow
        shop short sid side slow soft squar still stood straight strict sw sway swim tall them thi thumb tipto
        together trip turtl under up wing wrist
      `,
    ],
    [
      -0.2,
      `
        all away bent bum calv clock com count do dog face hand head heel hold jerk jump kne kneel lift lock
        lower more no now pelvi ping pocket pres purpl reach read shin sit sofa spin stand stick stop tight way
        width wobbl you
      `,
    ],
    [-0.4, 'on'],
  ],
  length: [
    [0.2, 'long'],
    [-0.2, '3-4'],
    [-0.4, '1-2'],
  ],
  pair: [
    [0.6, '<move>_them <part>_are of_<chat> of_you them_<place>'],
    [
      0.4,
      `
        <attend>_to <do>_them <far>_toe <not>_a <wrong>_is a_squat how_<chat> i_<swap> look_at not_<move> not_a
        off_your out_like roll_<place> stay_<place> that_a the_ceil the_foot to_<wrong>
      `,
    ],
    [
      0.2,
      `
        0_<far> 0_degre 0_wher <attend>_a <attend>_down <attend>_hand <attend>_it <attend>_neck <attend>_saw
        <attend>_shoulder <attend>_they <attend>_thi <attend>_up <chat>_all <chat>_am <chat>_box <chat>_coffe
        <chat>_em <chat>_forward <chat>_get <chat>_had <chat>_have <chat>_hundred <chat>_land <chat>_lift
        <chat>_look <chat>_mad <chat>_margaret <chat>_punch <chat>_push <chat>_see <chat>_short <chat>_should
        <chat>_stuck <chat>_the <chat>_them <chat>_till <chat>_watch <chat>_were <chat>_with <chat>_your
        <do>_again <do>_as <do>_back <do>_em <do>_forward <do>_not <do>_tall <do>_together <do>_you <far>_for
        <far>_out <harm>_for <harm>_forward <harm>_long <kit>_com <kit>_drift <kit>_off <kit>_the <less>_bounc
        <less>_em <less>_fast <less>_low <less>_neck <less>_of <less>_the <more>_and <more>_bel <more>_like
        <more>_out <move>_again <move>_as <move>_back <move>_em <move>_fac <move>_from <move>_honest <move>_it
        <move>_not <move>_sure <move>_tall <not>_bend <not>_bent <not>_come <not>_dip <not>_fling <not>_fly
        <not>_from <not>_grip <not>_haul <not>_heav <not>_hover <not>_just <not>_knock <not>_lean <not>_let
        <not>_neck <not>_of <not>_plonk <not>_priz <not>_rock <not>_roll <not>_should <not>_shov <not>_snatch
        <not>_swing <not>_than <not>_to <not>_want <not>_yank <num>_degre <num>_do <num>_metr <num>_of <num>_rail
        <num>_side <pace>_and <pace>_hand <pace>_the <pace>_toe <part>_apart <part>_arent <part>_at <part>_com
        <part>_do <part>_drop <part>_flap <part>_foot <part>_go <part>_have <part>_heel <part>_is <part>_isnt
        <part>_leg <part>_level <part>_long <part>_open <part>_over <part>_pop <part>_shoot <part>_stay
        <part>_straight <part>_that <part>_too <part>_underneath <part>_walk <part>_want <part>_your <part>_youv
        <place>_arm <place>_behind <place>_first <place>_foot <place>_heel <place>_into <place>_just
        <place>_level <place>_like <place>_neck <place>_out <place>_over <place>_pleas <place>_round <place>_you
        <place>_youll <settle>_and <settle>_back <settle>_em <settle>_forward <settle>_front <settle>_gone
        <settle>_lost <settle>_mad <settle>_my <settle>_off <settle>_tall <settle>_them <settle>_ugly <settle>_us
        <settle>_with <swap>_clench <swap>_dip <swap>_fling <swap>_heav <swap>_it <swap>_kick <swap>_not
        <swap>_plonk <swap>_plop <swap>_priz <swap>_tall <swap>_your <take>_a <take>_again <take>_forward
        <take>_front <take>_my <take>_tall <take>_the <take>_ugly <take>_work <wrong>_back <wrong>_in <wrong>_off
        <wrong>_out <wrong>_over <wrong>_the <wrong>_to <wrong>_up a_<harm> a_<not> a_<wrong> a_bit a_boat
        a_bridg a_camel a_deck a_deckchair a_few a_fib a_gale a_hing a_lag a_letter a_no a_penguin a_pigeon
        a_pillow a_pirat a_plank a_potato a_rope a_sack a_scarecrow a_spot a_sw a_tent a_tug about_fort
        all_<attend> all_hamstring all_in alway_<attend> am_<wrong> an_arrow and_car and_go and_it and_right
        are_<kit> are_<wrong> are_bend are_com are_pull are_rop are_too are_up arm_<less> arm_<swap> arm_go
        as_your at_0 at_about at_an at_me at_the avoid_<wrong> back_<not> back_<swap> back_<wrong> back_arch
        back_foot back_from back_heel back_instead back_over be_<swap> be_on becaus_youv befor_the bend_the
        bent_<part> bent_<place> bent_back big_toe bit_ahead both_cheek bottom_leg bottom_stay box_to bum_<place>
        bum_down bum_in car_<place> car_on catch_<chat> catch_you chest_fac chin_<far> chin_<more> chin_<place>
        chin_level chin_up clap_<place> clap_together click_<place> click_together com_<more> com_in com_off
        com_up come_off come_to crept_<place> crush_it daylight_<place> daylight_under dead_<less> dead_<move>
        div_<place> div_in do_it do_not do_the doe_<not> doe_not dont_<do> dont_<far> dont_<move> dont_crank
        dont_hover dont_just dont_lean dont_let dont_rock dont_shov dont_snatch dont_step down_<place> down_pleas
        down_so drop_em drop_the drop_your each_other elbow_<move> elbow_are elbow_at elbow_down elbow_flap
        elbow_is elbow_stay em_<do> em_<less> em_<move> em_<place> em_drop end_of ever_rep fac_the face_front
        fall_<place> fall_for feel_thi feet_on feet_work few_of finish_stood first_0 first_hundred five_<far>
        five_degre floor_in flop_<place> follow_the foot_turn for_thre front_<pace> front_<part> front_knee
        front_one front_rib front_slow front_with get_them go_<less> go_<more> go_and go_dead go_mad go_up
        go_with goe_over gone_<place> gone_out gone_soft good_leg goos_<do> goos_<kit> goos_<move> goos_step
        got_taller grip_loos grip_the ground_<settle> ground_come guy_in half_of hand_off handl_com hang_<place>
        has_<wrong> has_it has_wander have_gone have_lost have_us head_<part> head_back heal_<place> heal_down
        heav_feet heel_are heel_heav high_<attend> high_as hip_<do> hip_<move> hip_<wrong> hip_go hip_open
        hip_together hit_your hold_a hold_your how_you i_am i_can i_do i_see i_should if_it if_they im_see
        in_<place> in_high in_the in_tight into_your is_a is_bend is_to is_too it_<do> it_<place> it_div it_flat
        it_follow it_has it_home it_is it_leav it_proud it_stay it_up it_with its_<chat> its_<part> its_all
        its_ankl its_hav its_nice its_only its_opposit just_to keep_your kicking_for kiss_the kne_<attend>
        kne_<chat> kne_<settle> kne_<wrong> kne_apart kne_follow kne_soft knee_goe knee_in knee_straight
        knee_underneath knit_them knock_<place> knock_together know_its knuckl_<far> land_quiet lead_with
        lean_<place> lean_and leav_room leg_<chat> leg_<swap> leg_do less_<do> less_neck let_em let_the
        level_your lift_<place> lift_off lift_through light_<part> light_hand like_a like_saw like_thi like_to
        logo_<place> logo_on long_<part> long_neck look_<attend> look_<more> look_<place> look_down look_like
        look_up loos_<move> loos_grip lose_it lot_of lower_and lower_the make_sure me_the metr_<place> metr_in
        mistak_is more_<air> more_<attend> more_<part> more_bel most_of much_<do> much_<move> much_<settle>
        my_coffe nam_a neck_<more> neck_<place> neck_on never_<place> never_on no_<chat> no_clench no_dip
        no_fling no_heav no_kick no_plonk no_plop no_priz nobod_<do> nobod_should none_of not_<do> not_<swap>
        not_bent not_from not_grip not_lift not_like not_look not_out not_rush not_to not_want of_that of_war
        off_the on_<chat> on_each on_them on_with on_you one_<swap> one_do one_side open_the opposit_shoulder
        out_<attend> out_<chat> out_<place> out_first out_of over_it over_the over_your pay_for peopl_<kit>
        peopl_<wrong> pillow_<place> pillow_under point_at pok_<place> pop_<more> pop_<place> pop_up potato_chip
        pull_them push_tall push_your put_<chat> put_my put_the rather_than reach_for reach_out rib_are rib_down
        rib_in rib_that roll_forward roll_in roll_out room_for round_the round_your rush_the sack_of same_arm
        saw_<place> saw_on second_toe see_<part> seen_that shak_em shoot_<more> shoot_<place> shoot_up
        should_<not> should_not shoulder_<not> shoulder_are shoulder_lift shoulder_thi show_<chat> show_me
        sink_<part> sink_<place> sink_back sit_<part> sit_back slip_<place> slip_down smooth_<place> snap_your
        snatch_at sneak_<more> sneak_<place> sneak_up soft_shoulder soften_it somebody_<wrong> squat_it stack_it
        stand_<attend> stand_<more> stand_<part> stand_kne stand_right stand_tall stand_up star_at start_again
        start_dip stay_<attend> stay_down stay_fac stay_honest stay_over stay_point stay_still stay_tall
        stick_the still_<part> still_leg still_ther stop_<wrong> straight_ahead straighten_them sure_<chat>
        sure_you sw_<chat> sw_<do> sw_round tell_becaus than_a that_<wrong> that_catch that_cheat that_done
        that_how that_is that_loop that_what the_<air> the_<ill> the_<kit> the_<part> the_<wrong> the_air the_big
        the_bum the_chair the_ear the_elbow the_end the_ground the_guy the_hat the_insid the_joint the_knee
        the_lac the_leg the_length the_ligament the_logo the_mat the_mirror the_nam the_operat the_part
        the_pillow the_plank the_pub the_seat the_sore the_swim the_thigh the_turn the_weight the_whol the_work
        them_<attend> them_<chat> them_<num> them_<settle> them_down them_fift them_forward them_go them_over
        ther_to they_<do> they_<move> they_done theyr_<attend> theyr_<not> theyr_gossip theyr_just theyr_not
        theyr_step theyr_still thi_in thi_into third_0 third_<num> tight_to to_<chat> to_<do> to_<move> to_<pace>
        to_<settle> to_<take> to_get to_lean to_rush to_touch to_twist toe_<attend> toe_forward toe_long
        too_<far> too_<pace> too_<place> too_fast too_low touch_your try_<not> try_not tuck_it tuck_them tug_of
        turn_it turn_thi twist_<chat> two_rail unclench_your uncros_your up_<chat> up_<place> up_at up_out
        us_your wait_<far> wait_till walk_out wander_off want_them wash_<attend> wash_<settle> wash_line
        watch_the weight_and weight_over weird_your were_<not> were_jump were_not what_i what_we whatv_they
        when_<chat> when_you whol_shop widen_<place> widen_out wiggl_them with_the with_your wrist_<attend>
        wrist_<place> wrist_flat wrist_straight you_<attend> you_<chat> you_get you_had you_have you_land
        you_lift you_look you_margaret you_plank you_punch you_should you_were youll_<settle> your_<far>
        your_<pace> your_<part> your_<wrong> your_all your_ankl your_arm your_big your_body your_box your_bun
        your_chin your_collar your_ear your_knee your_middl your_push your_rib your_second your_sho your_sid
        your_spin your_stand your_stuck your_thumb your_toe your_top your_turn your_weight your_wrist youv_nee
      `,
    ],
    [
      -0.2,
      `
        <attend>_and <attend>_as <attend>_that <attend>_you <attend>_youv <chat>_at <chat>_done <chat>_dont
        <chat>_down <chat>_it <chat>_like <chat>_put <chat>_to <chat>_want <do>_a <do>_into <do>_over <do>_that
        <do>_the <far>_at <far>_with <kit>_back <kit>_down <kit>_so <more>_off <more>_the <move>_at <move>_heav
        <move>_off <move>_stack <move>_up <not>_cheat <not>_clamp <not>_drop <not>_get <not>_go <not>_hap
        <not>_have <not>_jump <not>_mov <not>_pull <not>_sham <not>_stop <not>_the <not>_throw <not>_turn
        <not>_your <num>_foot <part>_a <part>_and <part>_bent <part>_blad <part>_height <part>_if <part>_in
        <part>_knee <part>_loos <part>_not <part>_of <part>_on <part>_soft <part>_to <part>_touch <part>_under
        <part>_width <place>_as <place>_away <place>_for <place>_forward <place>_in <place>_knee <place>_off
        <place>_straight <place>_that <place>_the <place>_till <place>_to <place>_your <settle>_down <settle>_in
        <settle>_on <settle>_your <swap>_a <swap>_jerk <swap>_sham <swap>_the <swap>_yank <take>_down <take>_it
        <take>_your <wrong>_you a_<chat> a_<far> a_<num> a_<part> a_chair a_foot abov_your and_<chat> and_<move>
        and_<not> and_your are_<attend> are_go are_just are_still arm_<attend> arm_are as_<attend> at_all at_you
        back_in back_knee back_of back_up befor_<chat> befor_you behind_the bend_in bend_your between_your bit_of
        both_<part> bounc_them br_the by_the chair_<place> chest_<attend> clamp_<place> come_<place>
        dont_<attend> dont_<less> dont_<pace> dont_be dont_clamp dont_go dont_jump dont_pull down_<attend>
        down_to drop_it each_<part> elbow_<chat> fac_<place> fac_forward feel_<attend> feel_like feet_<place>
        feet_down flat_<place> foot_<move> foot_<place> for_a for_thi from_the front_foot get_<more> get_<place>
        get_up go_<attend> go_down go_to hand_<move> hand_<place> have_a have_to hip_not hold_it i_<not> i_dont
        i_want if_<chat> if_your if_youv in_your is_<place> it_<not> it_<settle> it_get it_go it_out it_yank
        its_<not> its_<place> its_a its_not just_<place> kne_<more> kne_bent kne_up knee_soft leg_<move>
        let_<chat> lift_your never_<do> no_<kit> no_<settle> no_jerk no_sham no_yank not_<chat> not_<more>
        not_<place> not_<settle> not_the not_up not_your of_a of_the of_them of_your off_it on_the one_<part>
        other_<part> over_<part> palm_<place> pull_<place> push_<place> push_through put_them put_your reach_your
        roll_<more> roll_up shoulder_<move> shoulder_blad show_off sit_on stack_over stay_stack straight_<part>
        that_<not> that_<place> that_your the_<attend> the_<chat> the_<do> the_<less> the_<more> the_<move>
        the_<settle> the_band the_bench the_clock the_kne the_neck the_spin the_toe the_top the_way the_wrist
        them_com them_on them_ther through_it through_them till_your tipto_to to_your track_<place> try_to
        turn_your under_the up_off up_the upsid_<place> upsid_down want_the we_are when_your with_<part> with_a
        yank_<chat> yank_you you_<less> you_can you_put you_want your_<chat> your_<more> your_back your_finger
        your_hand your_head your_lean your_neck your_shoulder your_side
      `,
    ],
    [-0.4, '<attend>_your <part>_up arm_<place> dont_drop front_of leg_<place> you_<swap>'],
  ],
  phrase: [
    [0.6, 'fault-sure'],
    [0.4, 'execution-sure fault-likely'],
    [0.2, 'easier-likely fault-hint focus-likely focus-sure tempo-likely'],
    [
      -0.2,
      `
        breathing-likely caution-hint caution-sure chat easier-hint execution-hint execution-likely harder-sure
        praise range-hint range-likely range-sure setup-hint setup-sure tempo-sure
      `,
    ],
    [-0.4, 'breathing-sure dose_only easier-sure equipment-likely equipment-sure'],
    [-0.6, 'empty_clauses'],
  ],
  start: [
    [0.4, 'look_at_the that_a'],
    [
      0.2,
      `
        <attend>_<part> <attend>_<place> <chat>_<attend> <chat>_<swap> <chat>_<wrong> <do>_<attend> <do>_<chat>
        <harm>_<attend> <less>_<do> <less>_<less> <more>_<air> <move>_<attend> <not>_<do> <not>_<far>
        <not>_<move> <not>_<part> <not>_<take> <not>_<wrong> <pace>_<place> <part>_<chat> <part>_<far>
        <part>_<move> <part>_<not> <part>_<settle> <place>_<part> <take>_<more> a_bit a_few_of back_foot
        both_cheek br_them br_your_chest brush_the brush_the_insid bum_down but_are chest_and chest_and_hip
        chest_fac chest_fac_the chest_up chin_level chin_up_in clap_together click_together come_off come_off_the
        crush_it do_not_grip do_not_rush dont_crank dont_crank_your dont_hover dont_just dont_lean dont_let_your
        dont_reach dont_rock dont_shov dont_snatch dont_snatch_at dont_step draw_it_flat drop_em drop_them
        elbow_are elbow_at elbow_at_about elbow_down elbow_is elbow_is_too elbow_stay eye_on eye_on_your
        face_front fall_for fall_for_thre find_a_spot first_0 first_0_wher front_knee_goe front_slow get_them
        grip_loos half_of half_of_you hand_off hand_off_your handl_com handl_com_in has_it heal_down heav_feet
        heel_are heel_are_com heel_down_pleas hip_forward hip_go hip_go_with hold_a hold_a_crisp hold_a_potato
        hold_the_end i_am i_can i_can_tell i_know_its i_see i_see_it i_should i_want_them if_its_all if_the_knee
        if_the_opposit if_the_stick if_they if_your_back if_your_hip im_see in_on in_on_each it_goe it_goe_over
        it_is_a it_stay its_a_plank its_ankl its_go_round its_hav its_hav_a its_opposit its_slip its_slip_down
        its_still_leg its_the_thigh its_the_third its_your its_your_rib ive_seen_that keep_both_feet keep_it_down
        keep_it_proud keep_that_loop keep_the_hip keep_the_weight keep_them_in keep_your keep_your_wrist
        kicking_for kicking_for_the kne_apart kne_are kne_are_bend kne_follow kne_follow_your kne_straight_ahead
        knit_them land_quiet lean_and lean_and_go leav_it_home leav_room leav_room_for less_neck let_em
        let_em_drop let_it_drop let_it_follow let_the_arm let_the_ground let_them let_them_go level_your
        level_your_belt like_a_pirat like_theyr like_theyr_step like_your_stuck long_neck look_a_bit look_at
        loos_grip make_sure make_the_front most_of most_of_you move_your_face never_on never_on_it no_clench
        no_dip no_fling no_kick no_plonk no_plop nobod_should not_a_littl not_a_tent not_at_me not_bent
        not_bent_back not_from not_from_the not_like not_like_thi not_out not_out_like not_the_same
        not_your_elbow open_the open_the_collarbon plant_your_feet pres_the_big pull_them pull_your_front
        push_tall put_the put_the_foot rib_down ring_in ring_in_tight shak_em shoulder_are shoulder_down
        shoulder_over_your show_me_the sink_back sink_back_into sit_back_instead snap_your snap_your_knee
        soft_knee_underneath soft_shoulder soft_shoulder_thi soften_it squar_to squar_to_the squeez_your_bun
        stack_it stack_it_up stand_kne stand_right stand_right_up stand_tall stand_up_out stay_as_high stay_over
        stay_over_the stay_tall stop_when_they straight_up straighten_it_up strap_are strap_are_like stretch_the
        stretch_the_whol sw_round sw_your_body take_the_slack that_a_camel that_a_goos that_a_no that_a_squat
        that_cheat that_how that_how_you that_is that_is_a that_same that_same_arm that_the_one that_the_part
        the_bottom_leg the_good the_good_leg the_guy the_guy_in the_lot the_lot_of the_nam the_nam_a ther_a_stop
        ther_no_priz theyr_gossip theyr_just theyr_just_hook theyr_not theyr_still theyr_still_ther thi_is_not
        toe_forward toe_long toe_to_the try_not try_not_to tuck_it tuck_it_in tuck_them turn_it_in uncros_your
        uncros_your_ankl wait_till wait_till_the walk_out walk_out_of watch_the watch_the_knee watch_your_elbow
        weight_on_the weird_your weird_your_top were_not what_i whatv_they whatv_they_done wher_its wher_its_nice
        wher_they wher_they_are widen_out wrist_flat you_dont_let you_finish you_finish_stood you_look
        you_look_like you_should you_should_not youll_have_us your_a_tabl your_all your_box your_box_to your_bum
        your_not_a your_not_look your_push your_push_your your_stand your_stand_up your_turn your_weight youv_nee
      `,
    ],
    [
      -0.2,
      `
        <air>_<place> <attend>_<attend> <chat>_<more> <chat>_<not> <chat>_<part> <chat>_<place> <do>_<place>
        <move>_<more> <move>_<part> <move>_<place> <not>_<less> <not>_<more> <not>_<pace> <part>_<do>
        <part>_<place> <place>_<attend> <settle>_<place> <swap>_<kit> <swap>_<settle> bend_the bend_your dont_be
        dont_bounc_them dont_clamp dont_drop dont_go dont_jump dont_let_them dont_look_at dont_turn hold_it
        i_dont i_want i_want_to im_not its_a its_not keep_the_knee keep_them_com keep_them_ther kne_out kne_up
        leav_the let_the let_your like_a no_yank no_yank_on not_a not_at_your not_on not_the not_the_toe not_up
        not_your not_your_neck put_them put_them_down stay_on stay_on_your that_your the_other turn_your
        your_shoulder
      `,
    ],
  ],
  word: [
    [0.6, 'are chin em look stay them theyr too'],
    [
      0.4,
      `
        backsid bum carol ceil clench drop elbow fall forward hip i lean middl open point rib see shoulder squat
        stomp tent they toe tuck weight wrist
      `,
    ],
    [
      0.2,
      `
        alec alway am arch arent arrow avoid back bang becaus beginner bend bent bet beth bethan big bob bounc
        box bump bun but camel cav cheat colin com cran crept daylight death deck deckchair degre denis derek dex
        dip div divvent dont drift droop ear earring fast fer fergal few flap flar fling flop fly fold follow
        front gale get goe gone grip ground guard hammock handl has haul heal hear heav hitch how hunch in insid
        instead into inward is itll jaw jean jer keep kicking king kiss knit knock know lac lag land less level
        ligament light like line logo lost lot low lui mad marcu mirror mistak mo most nam nate neck nee no none
        not off out over pamela park part pay penguin pillow pin pirat pleas plonk plop pok pop potato priz pub
        quit rail rather resist roll rop rope round rush sack sag scarecrow shoot should shouldnt shov shrug sid
        sink sir slow snatch sneak some somebody sore squar stack stand start stick stood straighten strap strict
        sure sw sway swim swing tall taller that thigh thump together trip tug turn turtl twist unclench uncros
        up us wander war watch were whatv wiggl wing work youll youm your yourself youv
      `,
    ],
    [
      -0.2,
      `
        about abov after all allow anybod arm away balanc band bar been befor behind bell below bench between
        blad bomb bon bone both by calf call calv cant cat chang clamp clock cold count crash cros dive dog each
        easy eight else enough even ever far feel finger flat floor for forearm gent go got grab hamstr hap head
        heel hold hug it jog just kneel last leg littl long machin march me moan month mov muscl need never next
        nobody now number on overhead own pain pair palm paus pelvi phon pick ping plent pocket pres pull purpl
        put read relax rest right row run same sav say set sham shin sit slid small so sofa someth spill sprint
        stiff stretch swap switch take tap ten then ther thes think till time tip to toda top under until upsid
        walk water we wee week when whil who without wont yet you
      `,
    ],
    [-0.4, 'and breath if jump lock noth one or through'],
    [-0.6, 'hand'],
  ],
} as const satisfies CueWeights
