/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind execution; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EXECUTION_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [0.4, 'do part'],
    [0.2, 'move place'],
    [-0.2, 'air chat ill num take wrong'],
    [-0.4, 'less not pace'],
  ],
  conditional: [[-0.4, 'yes']],
  first: [
    [0.6, '<do>'],
    [0.4, 'after and as elbow jab let now opposit we without you'],
    [
      0.2,
      `
        <air> <far> <part> <place> <swap> <take> <wrong> again allow an arm ball big body build butt chang chest
        com do down ear finish flatten float from give hand hold jump kneel land lean leg length like long lower
        middl next nose not one out paddl park peel pull send settl shift shov skip slip small soak sock squash
        stand stick sw take theyv tip toe together touch trac two underneath until up wait
      `,
    ],
    [
      -0.2,
      `
        <chat> <kit> <less> <not> <num> a bend br bum clos hip i if keep knee left lie make no on only pleas pump
        punch reach rest rib roll row shak shoulder shuffl spread squat squeez start stay stop straighten tall
        ther thi to tuck use
      `,
    ],
    [-0.4, '<pace> its that'],
  ],
  given: [
    [0.2, 'come down'],
    [-0.2, '<part> the'],
  ],
  last: [
    [0.6, 'again and'],
    [0.4, 'chang first hang knee other step strok way'],
    [
      0.2,
      `
        acros after air anyth arch arm armpit away back basement beat behind bell big board bow break bus button
        ceil chin come complete cros drawer ear fall flat floor flow foot forward four glas gras hall handl
        harder held home hug hundr inch jab jump lead lean leav left leg log long lower mat mate metr middl nose
        now one paus pelvi pocket position proud rest return right side skip spot stand swap tap ther thought
        tight tipto toe two under waist wide window you
      `,
    ],
    [
      -0.2,
      `
        0 around bel breath bum chair chest closer front go hand heel help higher kne level lift like lung march
        off over pleas pres pull row second shin shoulder slid stretch then thigh through turn ups walk well
        wrist
      `,
    ],
  ],
  length: [[-0.2, '1-2 3-4 5-7 8-12']],
  pair: [
    [0.6, '<part>_back and_<move> kne_<more> kne_up to_<part>'],
    [
      0.4,
      `
        <do>_forward <do>_the <do>_them <more>_onto <part>_like <part>_out <part>_to <place>_again
        <place>_between <place>_with <settle>_it and_<do> are_go arm_<do> arm_<move> back_<place> front_of
        goe_<place> into_the opposit_<part> opposit_arm straight_<place> swap_<part> that_<part> the_handl
        the_other the_side to_your toward_your up_onto we_<do> we_<move> your_hip
      `,
    ],
    [
      0.2,
      `
        0_metr 0_short <air>_down <air>_goe <air>_out <air>_over <attend>_a <attend>_again <attend>_and
        <attend>_by <attend>_fast <attend>_if <attend>_iron <attend>_kne <attend>_knee <attend>_much
        <attend>_open <attend>_out <attend>_over <attend>_step <attend>_through <attend>_wher <attend>_youll
        <attend>_yourself <chat>_0 <chat>_armpit <chat>_breath <chat>_clos <chat>_come <chat>_complete
        <chat>_draw <chat>_em <chat>_fight <chat>_for <chat>_found <chat>_gravit <chat>_hundr <chat>_it
        <chat>_just <chat>_long <chat>_look <chat>_off <chat>_pres <chat>_push <chat>_reach <chat>_right
        <chat>_slow <chat>_ther <chat>_thought <chat>_together <chat>_wide <chat>_yourself <do>_about <do>_acros
        <do>_all <do>_cros <do>_down <do>_first <do>_hand <do>_it <do>_left <do>_one <do>_right <do>_straight
        <do>_under <do>_up <do>_yourself <far>_arm <far>_at <far>_bit <far>_exaggerat <far>_from <far>_hit
        <far>_round <far>_squat <far>_step <far>_strok <far>_that <far>_them <far>_you <far>_your <harm>_foot
        <harm>_kne <harm>_left <harm>_right <kit>_apart <kit>_bow <kit>_further <kit>_it <kit>_out <kit>_stay
        <kit>_through <kit>_with <less>_the <more>_armpit <more>_between <more>_one <more>_sit <more>_tall
        <move>_all <move>_an <move>_at <move>_down <move>_first <move>_forward <move>_from <move>_go <move>_it
        <move>_one <move>_or <move>_over <move>_straight <move>_swap <move>_the <move>_them <move>_ther
        <move>_under <not>_acros <not>_at <not>_behind <not>_break <not>_by <not>_do <not>_drop <not>_mid
        <not>_mov <not>_paus <not>_roll <not>_sit <not>_stop <num>_back <num>_drawer <num>_knee <num>_leg
        <num>_long <num>_metr <num>_short <pace>_do <pace>_into <pace>_to <part>_and <part>_away <part>_big
        <part>_com <part>_down <part>_driv <part>_ever <part>_find <part>_first <part>_flat <part>_goe <part>_in
        <part>_into <part>_lead <part>_off <part>_proud <part>_pull <part>_push <part>_rest <part>_right
        <part>_still <part>_straight <part>_swing <part>_then <part>_through <part>_turn <part>_under
        <place>_down <place>_first <place>_in <place>_iron <place>_it <place>_kne <place>_leg <place>_onto
        <place>_out <place>_pull <place>_sit <place>_squeez <place>_step <place>_tall <place>_that <place>_to
        <place>_together <place>_toward <place>_under <place>_until <place>_your <settle>_about <settle>_by
        <settle>_complete <settle>_in <settle>_light <settle>_long <settle>_out <settle>_outsid <settle>_slow
        <settle>_ther <settle>_together <settle>_wide <swap>_all <swap>_anyth <swap>_bend <swap>_break
        <swap>_drop <swap>_get <swap>_hand <swap>_mov <swap>_sit <take>_and <take>_get <take>_in <take>_it
        <take>_light <take>_off <take>_out <take>_outsid <take>_the <take>_ther <take>_your <wrong>_forward
        <wrong>_from a_<far> a_<pace> a_beat a_bell a_hat a_hug a_log a_moment a_time a_tiny about_<place>
        about_in acros_your after_it all_the allow_the an_<far> an_inch an_orang and_<less> and_<place>
        and_<settle> and_<swap> and_<take> and_br and_down and_four and_hold and_let and_lower and_stand and_stay
        and_take are_long arm_<attend> arm_<part> arm_<settle> arm_back arm_big arm_driv arm_go arm_goe arm_like
        arm_pull arm_straight arm_then as_<less> as_<pace> as_fast as_if as_much as_you as_youll at_a baby_a
        back_and back_in back_into back_like back_together back_under ball_of bar_stay be_held behind_it bent_and
        besid_it between_each between_your bicep_is big_arm big_exaggerat bit_<place> bit_at bit_in blad_<place>
        body_<do> body_swing both_hand bottom_of bounc_off bow_<place> bow_again bow_down br_it breath_<place>
        breath_in breath_out build_<more> build_<place> build_for build_up butt_<less> butt_tight by_pull
        by_squeez can_get chair_<far> chair_<more> chair_further chest_<chat> chest_<place> chest_down
        chest_proud circl_with clang_both com_<part> com_back com_up come_up cros_<num> cros_it cros_one
        curtain_<place> curtain_on dead_<attend> dead_straight deep_squat do_<more> do_all do_anyth dont_<swap>
        dont_do dont_roll dont_sit door_with down_<attend> down_<do> down_<move> down_again down_between
        down_roll down_the down_ther down_to down_under down_your driv_<place> driv_the each_armpit ear_to
        elbow_<part> elbow_<place> elbow_a elbow_back elbow_lead elbow_to em_leav exaggerat_run exhal_<more>
        exhal_<place> exhal_up face_out far_<chat> far_<do> far_round fast_<attend> fast_as feet_<settle>
        feet_<take> feet_get feet_in feet_off fight_it find_the finish_<attend> finish_tall fire_<kit> fire_door
        first_0 first_<num> first_hundr flatten_the flex_the float_it float_the floor_<swap> floor_and floor_us
        fold_<place> fold_a fold_forward foot_goe foot_off for_<num> for_four for_ten for_twent for_your found_it
        from_here from_the front_heel full_<harm> full_<ill> full_strok further_off get_<attend> get_<pace>
        get_it get_light get_out give_baby go_<far> go_<less> go_<pace> go_complete go_long go_right go_slow
        go_to go_together go_too go_wide goe_out gone_<attend> gone_<place> gone_straight gravit_<swap> gravit_do
        hand_<move> hand_down hand_stay hand_to hand_when handl_<move> handl_with hang_about head_<attend>
        head_like head_through heel_<attend> heel_as heel_right heel_to hip_<chat> hip_<part> hip_<place>
        hip_back hip_first hip_still hit_<chat> hit_you hold_outsid hold_the hot_glas if_step in_<far> in_for
        in_front in_out in_till in_toward in_with inhal_<place> inhal_down iron_board is_<num> is_by is_one
        it_<chat> it_<do> it_<harm> it_<settle> it_<swap> it_fall it_flow it_for it_go it_hang it_home it_mov
        it_near it_slid it_ther it_to its_hot its_mate jump_again jump_or just_<far> just_<less> keep_go kne_<do>
        kne_<move> kne_<place> kne_as kne_bent knee_<place> knee_com knee_down knee_out kneel_<more>
        kneel_<place> kneel_up knuckl_turn land_<place> land_on lean_in left_armpit leg_away leg_be leg_ever
        leg_flat leg_goe leg_on leg_push leg_the let_<pace> let_em let_gravit let_it let_off let_yourself
        lift_<more> lift_up lift_your light_<place> light_in like_a like_open like_wher like_your littl_<kit>
        littl_from littl_step long_<do> long_<move> long_again long_iron long_step look_<place> look_out
        look_over loos_<pace> loos_strok lower_them march_<place> march_on mid_<air> mid_air mov_them move_<far>
        much_<attend> much_as near_hit next_to no_sit nose_<place> nose_goe nose_over not_<not> not_<pace>
        not_<place> not_acros not_behind not_by not_mid not_paus not_stop of_the of_your off_<not> off_<swap>
        off_than off_the off_without on_<chat> on_the on_you one_<num> one_<part> one_at one_knee one_leg
        one_long one_two only_the onto_the operat_foot opposit_leg opposit_one orang_<place> orang_in other_ear
        other_foot out_behind out_in out_till out_to outsid_<part> outsid_leg over_a paddl_light palm_<place>
        pedal_the peel_it peel_your pop_it pres_it pull_<more> pull_harder pull_it pull_the pull_your push_<more>
        push_off push_the push_up put_it rest_<place> rest_on right_<part> right_into right_leg ring_so
        rock_<place> rock_over roll_<part> roll_back roll_it roll_to roll_under same_bow same_way seat_<place>
        seat_in send_your settl_<place> settl_by shift_your short_<pace> short_strok shoulder_<attend>
        shoulder_and shoulder_rest shoulder_roll shoulder_squar shov_the sit_<part> sit_<place> sit_back sit_down
        sit_ther sit_your skip_<place> skip_on slid_down slid_them slid_your slip_<chat> slip_<more> slip_left
        slip_right slow_into small_<do> small_of small_step so_off so_your soak_it sock_<more> sock_<place>
        sock_up soft_kne soften_the spot_<part> spot_kne squar_to squash_it squeez_<chat> squeez_first
        stand_<attend> stand_tall stay_at stay_on stay_ther step_<do> step_<move> step_<place> step_out step_over
        step_through stick_bow stick_it stop_at straight_down straight_knee straight_on straight_out
        stretch_yourself strok_to sw_the swap_hand swap_leg tail_<place> tail_under take_<num> tall_<place>
        tall_by tall_through templ_<attend> templ_like that_<more> that_<pace> that_is that_shoulder that_stead
        the_<chat> the_<more> the_<part> the_<settle> the_<take> the_arm the_ball the_bar the_basement the_ceil
        the_cone the_curtain the_dark the_ear the_eye the_fire the_floor the_front the_gras the_hall the_hip
        the_left the_mat the_neck the_one the_pelvi the_rest the_right the_same the_small the_spot the_top
        the_waist the_window them_<part> them_<swap> them_away them_back them_home then_<attend> then_<do>
        then_<move> ther_for theyv_gone thre_to through_the throw_the thumb_out till_<chat> till_your tilt_the
        tiny_bit tip_from to_<chat> to_bum to_fold to_it to_look to_shoulder to_the to_you toe_<far> toe_on
        toe_pull toe_touch too_the top_<move> top_<settle> top_<take> top_keep toward_the tuck_your turn_a
        turn_in turn_your twent_metr two_drawer underneath_<chat> underneath_you until_that up_<attend> up_<num>
        up_<place> up_between up_one up_sit up_tall up_with wait_for wait_ther walk_<attend> walk_tall walk_to
        way_in we_<far> we_<less> we_lift we_lower we_tap weight_<do> whol_way with_it with_its without_bend
        without_break without_drop without_mov you_<air> you_<settle> you_breath you_come you_down you_fight
        you_found you_just you_pres you_push you_reach you_thought youll_<chat> youll_<settle> youll_go
        your_<chat> your_<harm> your_<move> your_<num> your_<part> your_body your_bottom your_breastbon your_bus
        your_clos your_draw your_elbow your_finger your_head your_left your_look your_nose your_one your_operat
        your_pocket your_right your_side your_squeez your_stick your_templ your_tipto your_toe yourself_<attend>
        yourself_<do> yourself_<place> yourself_<settle> yourself_hang yourself_long
      `,
    ],
    [
      -0.2,
      `
        <attend>_as <attend>_from <attend>_leg <attend>_long <attend>_the <attend>_your <chat>_and <chat>_at
        <chat>_can <chat>_do <chat>_get <chat>_go <chat>_hang <chat>_lower <chat>_slid <chat>_us <do>_around
        <do>_back <do>_for <do>_like <do>_on <do>_out <do>_ups <do>_you <far>_and <far>_toe <harm>_it <kit>_and
        <kit>_down <kit>_into <kit>_to <kit>_under <kit>_up <kit>_your <less>_to <more>_in <more>_out <more>_ther
        <move>_a <move>_around <move>_as <move>_back <move>_both <move>_for <move>_in <move>_out <move>_ups
        <move>_you <num>_foot <num>_hand <num>_second <part>_are <part>_at <part>_behind <part>_do <part>_for
        <part>_if <part>_is <part>_just <part>_level <part>_long <part>_or <part>_over <part>_point <part>_rais
        <part>_widen <part>_with <place>_and <place>_at <place>_by <place>_over <place>_position <place>_straight
        <place>_the <place>_two <settle>_a <settle>_from <settle>_on <settle>_the <settle>_to <settle>_with
        <swap>_the <take>_a <take>_forward <take>_go <take>_under a_<part> abov_the and_<harm> and_go and_keep
        and_open and_round and_same and_snap and_sw and_the and_your ankl_and arm_<more> arm_and arm_up
        as_<place> as_it as_long at_the at_your back_till behind_the big_toe bit_of both_<take> both_feet
        both_leg button_<place> by_the by_your call_it clos_to come_right cros_the cros_your curl_the dead_<do>
        do_it do_the dont_<do> down_for down_on each_<part> each_other elbow_behind end_<place> feet_<chat>
        feet_<more> feet_<place> feet_go float_down fold_your foot_<place> foot_through for_one for_the for_two
        forward_<attend> from_it front_knee hand_and hang_out heart_<place> heel_down if_<chat> if_the if_your
        in_<attend> in_your inch_off into_it it_<less> it_<more> it_<move> it_<place> it_com it_is it_off it_on
        it_out it_under keep_them knee_<attend> knee_<do> knee_as lean_<part> lean_back leav_the leg_<more>
        leg_follow leg_in leg_up lengthen_<place> let_<settle> let_go let_us lift_it line_from make_it
        mat_<place> not_<do> not_<move> not_<settle> of_<chat> of_a of_it of_you off_your on_it on_to one_foot
        or_the other_<attend> other_arm other_side out_<attend> out_and out_as over_your pump_the punch_the
        reach_your rib_<place> right_<place> right_down rock_it roll_<place> roll_over same_again shoulder_<do>
        shuffl_<place> shuffl_forward sit_<attend> slid_<more> slid_the slid_up so_that spread_the stand_<part>
        stay_<attend> stay_<place> step_in step_your straighten_the strap_<place> sw_your that_the the_<air>
        the_<far> the_<harm> the_<move> the_<place> the_<swap> the_ankl the_bench the_bottom the_chair the_door
        the_end the_ground the_hand the_second the_stand the_weight them_forward them_in them_out to_<move>
        to_flat to_wher toe_<place> tuck_it turn_around turn_it under_the up_out up_ther us_<settle> want_to
        way_<place> way_down whil_<chat> will_<chat> with_the wrist_<place> wrist_down you_<attend> you_<less>
        you_<move> you_<swap> you_do you_get you_slid your_<far> your_<place> your_<take> your_arm your_bel
        your_heart your_palm your_shoulder
      `,
    ],
    [-0.4, '<attend>_it down_and the_<do> the_<pace> your_back'],
  ],
  phrase: [
    [0.6, 'execution-likely'],
    [0.4, 'execution-hint'],
    [0.2, 'breathing-likely fault-hint range-hint'],
    [
      -0.2,
      `
        breathing-hint caution-hint chat equipment-likely equipment-sure fault-sure focus-sure harder-likely
        purpose range-likely setup-likely tempo-hint transitions
      `,
    ],
    [-0.4, 'breathing-sure caution-sure easier-hint'],
    [-0.6, 'easier-sure'],
    [-0.8, 'setup-sure'],
  ],
  start: [
    [0.6, '<air>_<place>'],
    [0.4, '<settle>_<place> <take>_<place> hand_to hold_it_ther'],
    [
      0.2,
      `
        0_short 0_short_strok <attend>_<chat> <attend>_<far> <attend>_<pace> <attend>_<part> <chat>_<do>
        <chat>_<far> <chat>_<place> <chat>_<settle> <do>_<chat> <do>_<do> <do>_<more> <do>_<move> <do>_<num>
        <do>_<place> <do>_<settle> <far>_<do> <far>_<harm> <far>_<ill> <far>_<kit> <more>_<place> <move>_<chat>
        <move>_<num> <not>_<place> <part>_<attend> <part>_<move> <settle>_<more> <swap>_<not> <take>_<settle>
        <take>_<take> after_it all_the_other allow_the allow_the_back an_inch arm_back arm_big arm_go arm_go_too
        as_fast as_fast_as as_you as_you_breath back_to back_to_your ball_of ball_of_the bend_the_knee
        bend_your_elbow big_arm big_exaggerat big_exaggerat_run both_hand_on br_it_home br_them br_them_back
        br_them_home br_your_nose breath_in_for breath_out_for build_for build_for_the butt_tight chest_down
        chest_proud com_back come_back_together come_up come_up_on cros_one cros_one_foot do_all do_not
        do_not_paus do_not_stop do_your do_your_squeez dont_let_it dont_roll dont_roll_it dont_sit dont_sit_ther
        down_like_the down_to driv_the driv_up drop_the_back ear_to ear_to_ankl elbow_a elbow_a_bit
        elbow_stay_glu face_out face_out_of feet_down_and feet_in finish_tall flatten_the flatten_the_small
        float_the from_here full_strok get_out get_out_of give_baby give_baby_a go_down_to go_long go_long_again
        go_wide hand_to_shoulder hand_to_your hang_about hang_about_in hang_in_the heel_as heel_as_you heel_right
        heel_to heel_to_bum hold_it hold_it_in hold_it_out hold_the inhal_down jump_or keep_it_bent kne_and
        kne_and_hip kne_up kneel_up knuckl_turn knuckl_turn_in land_on land_on_the lead_with_your lean_in
        leg_flat leg_push let_em let_em_leav let_gravit let_gravit_do let_it_go let_it_hang let_it_near let_the
        let_yourself let_yourself_hang lift_one lift_the_other lift_up lift_your lift_your_chest lift_your_hip
        like_your littl_step lower_them march_on march_on_the next_to next_to_your no_sit nose_over nose_over_toe
        nose_over_your not_acros not_behind not_behind_it not_by not_by_pull not_mid not_mid_air one_knee
        one_knee_out one_two opposit_hand other_ear paddl_light paddl_light_in palm_up park_it peel_your
        point_them_away pop_it pop_it_down pull_it pull_the pull_your push_off push_the_floor push_your
        put_it_back put_your_head same_bow send_your shov_the shov_the_floor sit_down sit_down_slow sit_your
        sit_your_hip skip_on skip_on_the slid_down slid_down_until slid_them slid_your_right slip_left small_step
        soak_it soak_it_up soft_kne soften_the soften_the_kne stand_tall_by stand_tall_through stay_down step_out
        step_out_to step_through stick_it stick_it_for stretch_yourself stretch_yourself_long sw_the swap_hand
        swap_hand_when swap_leg_ever the_arm the_opposit the_other the_other_way thre_to tip_from tip_from_the
        top_of top_of_the tuck_the_pelvi tuck_your tuck_your_toe turn_a turn_a_littl turn_round turn_the_ring
        turn_your turn_your_chest turn_your_thumb underneath_you up_onto up_to up_to_the up_with up_with_its
        wait_for wait_for_your wait_ther walk_back_on walk_it_in walk_tall walk_to walk_to_the we_are_go we_lift
        when_you_come without_bend without_bend_your without_break you_are_go you_come you_just you_pres
        your_operat your_operat_foot
      `,
    ],
    [
      -0.2,
      `
        <attend>_<attend> <attend>_<place> <chat>_<part> <chat>_<swap> <do>_<far> <do>_<pace> <do>_<part>
        <kit>_<part> <kit>_<place> <move>_<attend> <move>_<far> <move>_<pace> <move>_<part> <not>_<do>
        <num>_<place> <part>_<far> <place>_<chat> <place>_<num> <settle>_<part> <swap>_<place> all_the_way
        bend_your bend_your_kne br_the come_down cros_the cros_your cros_your_arm curl_the curl_the_hip do_it
        fold_your hang_out hold_it_down hold_it_till keep_the_back knee_to knee_to_the let_the_floor let_us
        let_your lift_it lift_it_off lift_the lift_the_back lower_it_down one_foot pres_the_wrist pump_the
        pump_the_arm push_the_ground reach_the rock_it roll_over shoulder_down shuffl_forward sit_back_down
        slid_the slid_up slid_up_to squeez_your squeez_your_backsid squeez_your_bum step_back step_your
        straighten_the tuck_the_toe turn_around turn_it
      `,
    ],
  ],
  word: [
    [0.8, 'ear'],
    [0.6, 'opposit without'],
    [
      0.4,
      `
        again arm back ball body bow down elbow first handl jab left leg let long lower nose other right sit
        strok swap tall then till toward
      `,
    ],
    [
      0.2,
      `
        acros after an and anyth arc arch armpit away bar basement beat besid between big board break build bus
        butt by ceil chang chest chin circl clang climb complete curtain dark draw drawer driv em exaggerat fall
        fight find fire flatten flex float floor flow foot forward found four front give glas go goe gras gravit
        hall hand hang harder heel held hip hit home hot hundr inch iron it jump knee knuckl land lead lean light
        like log look loos mate metr mid middl moment mov move next now off one orang outsid overhead paddl park
        paus peel pelvi pocket pres proud pull push rest return roll send settl shift shov side sideway skip slip
        small soak spot squash stand stead step stick straight take tap templ the them ther theyv thought tighten
        tipto together top touch trac underneath until up waist wait way we wind window you yourself
      `,
    ],
    [
      -0.2,
      `
        0 about abov ahead all ankl anybod are around band be becaus befor bel bench bend brac breath bum calf
        call can chair check clos closer count dead do done drag each even fac face feel feet finger fist five
        forearm forehead ful gent good got grab grip ground grow has have heal heart heav help higher hover how i
        just kneecap knot last leav level lie low lung me minut more most need nice no not only or out pick plant
        pleas point pump quiet rack rail reach rib ring row shak shin should shuffl sid snap some somebody spin
        spread squat straighten strap taller thes they theyr thos tuck turn twic ups use walk want watch weight
        well when wher whil widen wider will wrist youv
      `,
    ],
    [-0.4, 'at end if is its keep make of second start that thi'],
    [-0.6, 'a on'],
  ],
} as const satisfies CueWeights
