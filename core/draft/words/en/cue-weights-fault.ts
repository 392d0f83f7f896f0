/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind fault; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const FAULT_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [1, 'wrong'],
    [0.4, 'not part'],
    [0.2, 'move place settle'],
    [-0.2, 'attend do far less more swap take'],
    [-0.4, 'ill num'],
    [-0.6, 'air pace'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.8, 'theyr your'],
    [0.6, 'neck wrist'],
    [
      0.4,
      `
        <not> <part> are bum carol divvent dont elbow everyon hip keep open shoulder somebody strap that try tuck
        untuck watch
      `,
    ],
    [
      0.2,
      `
        <harm> <kit> and avoid beginner bel belly bent bet beth br but careful chest chin clench coast colin
        denis derek dex drink ear eye fall fergal flatten foot gareth gerald get guy half heal hear hello i if it
        its jaw jean jer joyc kicking kirst kne knee kneecap knit kyle land lean less level lift light long los
        lost lot lui marcu mind mo more most move nate nine no overstrid pamela peopl plant point pole quit
        rather resist rib ring shak shorter show shrug sink sit slow smooth soft somebod spoon squeez stack stand
        stiller strict ther they theyll think unclench uncros weight weird what whatv wher widen wobbl youll youm
      `,
    ],
    [
      -0.2,
      `
        0 <far> <ill> <more> <move> <pace> <take> a about all anybod as at back bell bend big bottom breath calv
        come curl do even face feet fill finger fingertip for forearm from good hold how hug last leg littl never
        nice off once one or other out over palm pop pres quiet rest roll round run same second set side spin
        squash step still swap take tall the thi thumb tip to too tug two up walk whatever whil with you
      `,
    ],
    [-0.4, '<air> <do> <num> arm down hand heel noth we'],
    [-0.6, '<place> let not'],
  ],
  given: [
    [0.4, '<kit> <less> your'],
    [
      0.2,
      `
        <do> <move> <place> <wrong> again all as away band bend dip div drift feel floor forward harder heav here
        in into it leav lost lower more neck off one opposit pillow push rock run side sooner spot spread star
        start stop swing they thigh too tummy under untid wall will work you youv
      `,
    ],
    [
      -0.2,
      `
        <air> <ill> a are at dont down got heel i let not or right round see stay that them ther to touch want
        wrist
      `,
    ],
    [-0.4, '<not> like'],
  ],
  last: [
    [0.6, 'tent'],
    [
      0.4,
      `
        bounc carol forward front heav in level passenger plank plonk shrug still sway tall they tipto toe up
        wing
      `,
    ],
    [
      0.2,
      `
        about acros again air alec along and angl ankl answer apart armpit arrow backbend backsid balanc ball
        banana behind bel bet beth bicep bicycl bird blinker board bow brac brak camel carpet cave ceil chest
        chip claw colin collar corkscrew dangl degre denis derek dex die differenc divvent door down drag droop
        drop duck ear earring elevator em fergal film flap flatten fling float fold foot for gale gareth gas
        giraff guy hammock hassan headlight hello hill hunch imran inch insid instead invit inward itself jaw
        jean jer joan joyc kirst kiss knock kyle lac lazy lean leg long low lui mad marcu mirror mo move movement
        mower nate nee nose one opposit out pamela park pay penguin pillow pin pleas plop point pole pub pud
        quiet rail rep sag see settl sho shop short shorter side skat sooner spend squar stack stamp step stomp
        stood straight strict sw swing t tail telegram them themselv thi thre thumb tightrop together tomorrow
        touch trampolin trip turtl under visit want wash we wider wrist yourself
      `,
    ],
    [
      -0.2,
      `
        0 after are arm away balloon bar bend bent bottom box breath bum button calv church click clock cold com
        crash cross danc dig dog easy elbow fall fine finish goe grumbl hand handl head heel hike hip hold hook
        is isnt jerk jump kneecap kneel last lift like lot lower march meet minut most mov much next no normal
        not pad pelvi plat plent pres pull purpl race reach rib run say smil snatch sofa spin sprint squeez star
        stick stop strap stretch th think through tight toda two watch width window wobbl yet
      `,
    ],
    [-0.4, 'all now on stand'],
  ],
  length: [
    [0.2, 'long'],
    [-0.2, '3-4 8-12'],
    [-0.6, '1-2'],
  ],
  pair: [
    [
      0.6,
      `
        <do>_them <move>_them <part>_are <part>_stay bum_<place> of_<chat> of_you off_your to_<wrong>
      `,
    ],
    [
      0.4,
      `
        <attend>_hand <attend>_thi <chat>_all <chat>_land <chat>_see <far>_toe <kit>_com <move>_again <move>_from
        <move>_tall <not>_a <num>_degre <part>_arent <part>_com <part>_do <part>_dont <part>_have <place>_first
        <take>_again <wrong>_is <wrong>_up a_bridg a_passenger a_squat a_tent and_it are_<wrong> are_bend
        bent_<part> chin_<more> elbow_go get_<less> hand_off hip_<settle> how_<chat> i_<swap> im_see its_<part>
        knock_<place> knock_together leap_<place> leg_<swap> look_at look_down lot_of not_<move> not_a out_like
        over_the rib_<place> rib_down roll_<place> same_arm should_<not> should_not sit_<part> sit_back star_at
        stay_<place> stay_over that_a that_cheat that_how the_<kit> the_ceil the_thigh them_<place> to_<do>
        toe_<do> toe_<far> tuck_it wher_it whol_<part> you_look
      `,
    ],
    [
      0.2,
      `
        0_<far> 0_degre 0_that 0_wher <air>_as <attend>_an <attend>_blinker <attend>_down <attend>_finger
        <attend>_high <attend>_i <attend>_of <attend>_saw <attend>_shoulder <attend>_spin <attend>_to <attend>_up
        <attend>_wash <chat>_0 <chat>_acros <chat>_along <chat>_and <chat>_are <chat>_arent <chat>_ask
        <chat>_beast <chat>_beg <chat>_bit <chat>_box <chat>_brac <chat>_coffe <chat>_die <chat>_em
        <chat>_forward <chat>_have <chat>_hundred <chat>_leap <chat>_leg <chat>_lift <chat>_longer <chat>_look
        <chat>_mad <chat>_margaret <chat>_on <chat>_pay <chat>_punch <chat>_push <chat>_rush <chat>_said
        <chat>_say <chat>_shall <chat>_short <chat>_should <chat>_stand <chat>_start <chat>_tall <chat>_the
        <chat>_turn <chat>_untid <chat>_watch <chat>_with <chat>_your <do>_again <do>_are <do>_as <do>_back
        <do>_em <do>_even <do>_forward <do>_from <do>_head <do>_hug <do>_instead <do>_it <do>_on <do>_right
        <do>_round <do>_tall <do>_their <do>_youv <far>_back <far>_feel <far>_finger <far>_for <far>_forward
        <far>_giv <far>_out <far>_shop <far>_stanc <far>_wider <harm>_as <harm>_by <harm>_face <harm>_for
        <harm>_forward <harm>_into <harm>_long <harm>_on <harm>_rock <harm>_to <ill>_put <ill>_should <kit>_drift
        <kit>_drop <kit>_further <kit>_keep <kit>_stretch <less>_alway <less>_bounc <less>_do <less>_fast
        <less>_heav <less>_in <less>_look <less>_low <less>_neck <less>_of <less>_on <less>_slip <less>_step
        <more>_at <more>_behind <more>_bel <more>_like <more>_out <more>_straight <more>_with <move>_as <move>_be
        <move>_down <move>_even <move>_fac <move>_honest <move>_not <move>_over <move>_quiet <move>_round
        <move>_still <move>_stuck <move>_try <move>_under <not>_banana <not>_bend <not>_bent <not>_bicycl
        <not>_bounc <not>_claw <not>_come <not>_cran <not>_curl <not>_dip <not>_drag <not>_duck <not>_dump
        <not>_elbow <not>_fling <not>_fly <not>_fold <not>_grip <not>_hang <not>_haul <not>_hoick <not>_hold
        <not>_hook <not>_hover <not>_in <not>_instead <not>_invit <not>_jam <not>_just <not>_knock <not>_lean
        <not>_let <not>_lift <not>_lock <not>_neck <not>_of <not>_open <not>_out <not>_plonk <not>_plop
        <not>_priz <not>_pud <not>_quarter <not>_rock <not>_roll <not>_scrunch <not>_shov <not>_shrug
        <not>_snatch <not>_squash <not>_stamp <not>_sw <not>_swing <not>_tent <not>_than <not>_thump <not>_to
        <not>_tug <not>_use <not>_want <not>_wing <not>_yank <num>_five <num>_full <num>_i <num>_of <num>_rail
        <num>_spot <num>_strok <num>_tim <pace>_and <pace>_come <pace>_down <pace>_hand <pace>_make <pace>_the
        <pace>_toe <pace>_up <pace>_you <part>_a <part>_ach <part>_apart <part>_at <part>_away <part>_behind
        <part>_can <part>_cock <part>_creep <part>_doesnt <part>_drift <part>_drop <part>_face <part>_flap
        <part>_flar <part>_follow <part>_foot <part>_forward <part>_go <part>_goe <part>_havent <part>_heel
        <part>_hik <part>_isnt <part>_job <part>_just <part>_knock <part>_level <part>_long <part>_look
        <part>_nail <part>_out <part>_over <part>_pick <part>_pleas <part>_point <part>_pok <part>_pop
        <part>_punch <part>_roll <part>_round <part>_shoot <part>_sooner <part>_stick <part>_still
        <part>_straight <part>_sway <part>_that <part>_walk <part>_want <part>_were <part>_wider <part>_will
        <part>_your <part>_youv <place>_arm <place>_at <place>_befor <place>_behind <place>_by <place>_cat
        <place>_each <place>_elbow <place>_finger <place>_from <place>_heel <place>_level <place>_like
        <place>_one <place>_plank <place>_quiet <place>_side <place>_slid <place>_sooner <place>_stanc
        <place>_stay <place>_them <place>_tighter <place>_two <place>_youll <settle>_acros <settle>_again
        <settle>_an <settle>_back <settle>_caught <settle>_equal <settle>_gone <settle>_in <settle>_it
        <settle>_like <settle>_longer <settle>_lost <settle>_mad <settle>_one <settle>_shorter <settle>_someth
        <settle>_stretch <settle>_tall <settle>_the <settle>_them <settle>_they <settle>_tir <settle>_untid
        <settle>_with <swap>_be <swap>_duck <swap>_fling <swap>_flop <swap>_hear <swap>_heav <swap>_hop <swap>_it
        <swap>_kick <swap>_leg <swap>_not <swap>_plonk <swap>_plop <swap>_priz <swap>_pud <swap>_push
        <swap>_right <swap>_someth <swap>_tent <swap>_your <take>_a <take>_an <take>_caught <take>_equal
        <take>_forward <take>_in <take>_one <take>_right <take>_stretch <take>_tall <take>_thos <take>_tir
        <take>_wider <take>_work <wrong>_about <wrong>_away <wrong>_br <wrong>_by <wrong>_error <wrong>_fix
        <wrong>_forward <wrong>_in <wrong>_its <wrong>_like <wrong>_off <wrong>_on <wrong>_over <wrong>_pres
        <wrong>_the <wrong>_to <wrong>_with <wrong>_your a_<harm> a_<move> a_<not> a_<place> a_banana a_bell
        a_boat a_bow a_camel a_chin a_crisp a_deck a_deckchair a_duck a_fer a_fib a_fl a_football a_gale a_hip
        a_jumper a_kick a_lag a_mous a_mower a_newborn a_penguin a_pigeon a_pillow a_plug a_potato a_rest a_row
        a_ship a_shov a_spot a_straight a_sw a_t a_tap a_telegram a_thud a_tightrop a_toddler a_touch a_trampolin
        a_tray a_view a_zip about_<place> about_in ach_<settle> add_the after_themselv all_<part> all_along
        all_hamstring all_hip all_knee alway_<attend> am_<wrong> an_arrow an_egg an_orang and_<far> and_car
        and_go and_hip and_isnt and_itll and_pres and_reach and_run and_shoulder and_stop and_then and_theyll
        and_think and_youll ankl_roll another_<settle> another_go any_lift are_<kit> are_bob are_clench are_com
        are_curl are_drop are_hook are_jump are_rop are_they are_too are_up arent_hang arm_<less> arm_<not>
        arm_<swap> arm_do arm_go arm_just arm_same arm_that as_<num> as_high as_your at_0 at_<num> at_an at_it
        at_me at_the avoid_<wrong> away_from back_<not> back_<settle> back_<swap> back_<take> back_<wrong>
        back_arch back_foot back_from back_heel back_just back_near back_on back_sooner back_stay backward_to
        band_com bang_your bar_<attend> bar_<wrong> bar_drop bar_like be_<swap> be_on be_rub beast_the
        becaus_that becaus_youv beg_<chat> beg_you beginner_<swap> beginner_do behind_it bell_<far> bend_<place>
        bend_on bend_the bent_<place> bent_back bent_elbow between_them big_shop big_toe bit_<far> bit_<more>
        bit_ahead bit_further bit_harder body_a both_heel both_shoulder both_sit bottom_a bottom_foot bottom_leg
        bottom_stay box_to br_it br_your breastbon_befor bridg_<do> bridg_<move> bridg_yet bum_<far> bum_clench
        bum_down bum_in bum_level bum_stay button_fac by_side call_your can_be can_hear car_the catch_<chat>
        catch_you chair_with chas_the chest_lift chin_<place> chin_<wrong> chin_and chin_in chin_off chin_pok
        chin_up clap_<place> clap_together clench_<part> clench_fist click_<place> click_together coast_it
        cock_<part> cock_<place> cock_back com_in com_off com_with come_a come_to could_eat crack_a cramp_and
        creep_<more> creep_<place> creep_up crept_<place> crept_forward crush_it cure_the curl_<place> curl_it
        daylight_<place> daylight_under dead_<less> deck_<kit> deck_chair didnt_say different_drill dig_into
        dig_the disc_<take> disc_get div_<place> div_in do_<not> do_is do_it do_not doe_<not> doe_not doesnt_<do>
        doesnt_<less> doesnt_<settle> doesnt_<wrong> doesnt_come doesnt_drop dont_<do> dont_<move> dont_arch
        dont_cran dont_crank dont_drag dont_haul dont_hook dont_hover dont_lean dont_let dont_rock dont_roll
        dont_stamp dont_sw dont_thump dont_yank down_<pace> down_<place> down_and down_slow down_under down_when
        drag_<chat> drag_you draw_the drift_<place> drink_bird drop_<place> drop_in drop_the drop_your dump_into
        each_<num> each_armpit each_one each_other each_shoulder ear_and ear_goe eat_your elbow_<do> elbow_<far>
        elbow_<move> elbow_<place> elbow_are elbow_at elbow_bent elbow_clos elbow_down elbow_drop elbow_flap
        elbow_halfwa elbow_point elbow_soft em_<do> em_<less> em_<move> em_<place> em_drop end_of equal_<attend>
        equal_<kit> equal_<part> equal_weight error_is even_<place> even_through ever_rep everyon_beast
        everyon_want exit_sign eye_<place> eye_on fac_the face_the fall_<place> fall_by fall_for fall_in
        fall_into feel_thi feet_<far> feet_<not> feet_again feet_in feet_on feet_stuck feet_wider feet_work
        fer_gaz few_of finger_and finish_stood fire_exit first_0 first_and first_hundred five_<far> five_<pace>
        five_degre five_strok fix_your fl_the flatten_it float_<more> float_up floor_when floor_with flop_<part>
        flop_<place> flop_back fold_<part> fold_at fold_back follow_the foot_a foot_pleas foot_turn for_<harm>
        for_balanc for_five for_height for_you forearm_<do> forearm_<move> forearm_punch fort_<num> fort_five
        forward_on fraction_<more> fraction_more from_<attend> from_here from_pubic from_still from_your
        front_<pace> front_<part> front_knee front_one front_rib front_slow further_<place> further_under
        get_<ill> get_behind get_caught get_hurt get_them get_thos get_tight get_tir glu_to go_<do> go_<less>
        go_<more> go_acros go_along go_dead go_longer go_mad go_round go_untid go_up go_with goe_<place> goe_over
        goe_to gone_<place> gone_out good_leg got_<not> got_taller grip_<place> grip_in grip_loos grip_the
        grip_with ground_<settle> ground_come grow_<attend> half_of hand_<wrong> hand_are hand_behind hand_belong
        hand_can hand_through handl_com hang_<attend> hang_off hang_still harder_<place> harder_on has_<wrong>
        has_it has_wander haul_<place> haul_on have_gone have_lost have_not have_they head_<more> head_<part>
        head_are head_back head_stay head_up heal_<place> heal_down hear_stomp heav_feet heel_are heel_com
        high_<attend> high_as hip_<do> hip_<move> hip_<place> hip_<take> hip_<wrong> hip_are hip_dont hip_face
        hip_forward hip_have hip_hik hip_open hip_right hip_roll hip_stack hip_together hip_under hit_your
        hitch_the hold_a hold_an hold_your home_to hook_and how_disc how_you hug_the i_beg i_can i_die i_do
        i_said i_see i_shall i_should if_it if_one if_the if_they ill_say im_pay imagin_a imaginar_<num>
        imaginar_one in_<attend> in_<place> in_all in_by in_cat in_high in_is in_its in_toward in_youll
        instead_of into_both into_it into_your is_<harm> is_<not> is_<wrong> is_a is_bend is_cheat is_fall
        is_love is_not is_the is_thi is_to is_too isnt_a isnt_the it_<far> it_<more> it_<swap> it_and it_back
        it_come it_div it_follow it_from it_gent it_has it_home it_is it_leav it_once it_over it_proud it_stay
        it_take it_under it_wander it_with itll_settl itll_tell its_<far> its_<wrong> its_all its_ankl its_hav
        its_kne its_leg its_nice its_only its_opposit its_park its_strong its_swing its_too itself_<place>
        jam_<place> jerk_it jumper_<place> jumper_tuck just_<settle> just_a just_hold just_str just_thrash
        just_to keep_both keep_them keep_your kicking_for kiss_<place> kiss_the kne_<attend> kne_<chat>
        kne_<settle> kne_<wrong> kne_apart kne_arent kne_drift kne_follow kne_knock kne_out kne_over kne_soft
        kne_stay knee_goe knee_straight kneecap_look knit_them knuckl_<far> knuckl_<place> knuckl_at
        knuckl_straight land_in land_quiet land_with lap_so last_bit lean_away leap_<part> leap_back leav_room
        leav_them leav_your leg_<chat> leg_do leg_job leg_pick leg_still leg_that leg_under leg_your less_<do>
        less_<part> less_neck let_em let_the let_them level_your lie_ther lift_<place> lift_<settle> lift_it
        lift_the lift_through light_<num> light_<part> light_hand like_a like_an like_blinker like_hold like_saw
        like_thi like_to like_wash line_the littl_finger littl_toe long_finger long_plank look_<attend>
        look_<place> look_for look_like look_up loop_stretch loos_<move> loos_<settle> loos_grip los_your
        lost_the love_and lower_<part> lower_<place> lower_back lower_the make_the me_the metr_<place> metr_in
        middl_toe mil_<place> mil_out mind_<chat> mind_you mistak_is more_<air> more_<attend> more_<part>
        more_bel most_folk most_of most_peopl move_the movement_<not> much_<do> much_<move> much_<place>
        much_<settle> much_on my_coffe nam_a neck_<ill> neck_<more> neck_<place> neck_get neck_is neck_on
        neck_the never_<chat> never_<settle> never_let newborn_giraff next_<num> next_one nice_<num> nine_tim
        no_duck no_fling no_flop no_heav no_hop no_kick no_plonk no_plop no_priz no_pud no_push no_tent
        nobod_<do> nobody_film noodl_and not_<do> not_<place> not_<wrong> not_at not_bend not_bent not_grip
        not_in not_invit not_jam not_knock not_let not_lift not_lock not_look not_out not_pull not_quarter
        not_rush not_to not_want not_wing of_<num> of_bear of_pull of_punch of_sher of_ten of_that of_thos
        off_like off_sideway on_<num> on_each on_one on_two on_you one_<harm> one_i one_spot only_feel only_for
        only_giv only_your open_it open_them orang_<place> orang_in other_hand out_<chat> out_a out_first out_of
        out_past over_and over_it over_your overstrid_again pad_to pay_for peel_off pelvi_under peopl_<chat>
        peopl_<do> peopl_<move> peopl_<wrong> peopl_downstair peopl_love peopl_tend pick_a pick_it pick_someth
        pillow_<place> pillow_under pinch_in plant_the plug_socket point_at point_forward point_it point_wher
        pok_<place> pol_<chat> pol_first pop_<more> pop_<place> pop_up potato_chip pres_down pres_even pretend_i
        pubic_bone puff_<more> puff_<place> puff_up pull_is pull_them pull_with punch_<place> punch_through
        push_<more> push_a push_tall push_them push_up push_your put_<chat> put_<num> put_equal put_one
        quit_<less> quit_<not> quit_<swap> quit_instead rail_<attend> rather_than reach_<place> reach_out
        relax_<part> relax_hand rest_<place> rest_in rhythm_<settle> rhythm_come rib_<settle> rib_are rib_in
        rib_pop rib_that ridg_should right_<more> right_through right_up ring_in rob_yourself rock_<attend>
        rock_from rock_like roll_<do> roll_forward roll_in roll_out room_for round_with round_your run_again
        run_at rush_the said_<do> said_<move> said_drag said_float same_<part> same_leg saw_<place> saw_on
        say_brak say_it scrunch_your second_toe see_<attend> see_<num> see_<part> see_how see_if seen_that
        send_it shak_em shall_be sher_<place> sher_on shoot_<more> shoot_<place> shoot_up shorten_it shorten_the
        should_flatten shoulder_<more> shoulder_<not> shoulder_<place> shoulder_an shoulder_are shoulder_arent
        shoulder_away shoulder_back shoulder_creep shoulder_down shoulder_lift shoulder_thi shouldnt_<move>
        shov_off show_<chat> show_me shrug_<place> sid_of side_by side_first side_to sign_and sink_<move>
        sink_<part> sink_back sink_into sit_into sit_tall skirt_board slack_<place> slack_out slid_the
        slip_<place> slip_a slip_down slow_<more> slow_<place> slow_down slow_up snatch_at sneak_<place>
        so_<attend> so_<chat> so_if so_you soft_<part> soft_in soft_shoulder soften_it somebod_is somebod_stamp
        somebody_<place> somebody_<wrong> somebody_call somebody_on sor_at sort_it sort_the spe_<move> spe_make
        sped_<more> sped_<place> sped_up spoon_your spot_<do> spot_<move> spot_<place> spot_on spot_rock
        spread_them squat_<do> squat_<move> squat_it squeez_an squeez_them stack_it stand_<more> stand_<part>
        stand_for stand_kne stand_right stand_up start_a start_again start_dip start_from start_with stay_down
        stay_fac stay_honest stay_off stay_on stay_out stay_still stay_stuck stay_tall stay_touch stay_under
        stay_upright step_are stick_<place> stick_com stick_out stiff_leg still_<part> still_befor still_leg
        still_ther stiller_than stop_<wrong> stop_it straight_ahead straight_down straighten_them strangl_it
        strap_off stuck_to suck_<place> suck_in sure_<chat> sure_you sway_<place> swing_its swing_your
        tailbon_youv tall_and tap_<place> tap_out tea_off tell_becaus tend_to tendon_tak tension_in th_<chat>
        th_i than_a thank_<chat> thank_you that_<harm> that_<ill> that_<wrong> that_catch that_done that_go
        that_just that_loop that_move that_one that_rail that_ridg that_rob that_side that_the that_up that_usual
        that_what that_wher thatll_sort the_<air> the_<chat> the_<harm> the_<ill> the_<num> the_<pace> the_<part>
        the_<swap> the_<wrong> the_air the_answer the_bell the_big the_build the_bum the_bus the_carpet the_chair
        the_classic the_differenc the_dumbbell the_end the_exercis the_foot the_goblet the_good the_hand the_hat
        the_head the_heel the_hip the_joint the_knee the_last the_lean the_leg the_length the_light the_littl
        the_lot the_mat the_middl the_mirror the_nam the_nice the_noodl the_one the_part the_pelvi the_pillow
        the_pol the_pole the_pub the_quietest the_rest the_rhythm the_run the_second the_ship the_skirt the_skull
        the_slack the_sore the_stick the_straight the_swim the_tap the_th the_thumb the_waist the_weight the_whol
        the_work their_<part> their_arm them_<attend> them_<chat> them_<less> them_<settle> them_down them_drag
        them_fift them_forward them_go them_over them_under ther_<less> ther_<not> ther_<swap> ther_no ther_peopl
        ther_room ther_they ther_to ther_too they_<chat> they_bend they_done they_go they_like theyll_settl
        theyll_skat theyll_want theyr_<attend> theyr_<not> theyr_gossip theyr_just theyr_not theyr_step
        theyr_still thi_in thi_into thigh_<do> thigh_<move> thigh_stay think_of third_0 third_<num> thos_<place>
        thos_down thos_shoulder thrash_about through_both through_sooner through_the thumb_dig thumb_width
        tight_<do> tim_<place> tim_out time_you to_<chat> to_<pace> to_arm to_breastbon to_car to_cheat to_cure
        to_do to_draw to_get to_haul to_help to_hug to_knee to_lean to_roll to_side to_spend to_star to_thre
        to_twist to_yank to_you toddler_told toe_<attend> toe_<part> toe_<settle> toe_<take> toe_face toe_forward
        toe_go toe_long toe_to toe_when told_ther too_<attend> too_<far> too_<pace> too_fast too_heav too_low
        top_<part> top_heel top_shoulder toppl_<place> touch_your toward_the train_lin tray_of try_<not> try_not
        try_squeez tuck_them turn_it turn_thi twist_<chat> twist_you two_full two_rail unclench_it uncros_your
        under_<chat> under_you untid_<not> untid_stop up_<attend> up_<chat> up_<place> up_at up_like up_out
        up_straight us_your usual_sort view_of waist_will wait_<far> wait_is wait_till walk_out wall_behind
        wander_<place> wander_in wander_off want_<part> want_is want_them want_to wash_<attend> wash_<settle>
        wash_line watch_that watch_the watch_your wav_at way_<place> way_apart weight_and weight_over weird_your
        were_<not> were_go were_jump were_not what_<less> what_beginner what_i what_most what_we whatv_they
        when_<chat> when_you which_is whol_arm whol_foot whol_shop widen_<place> widen_out wider_<part>
        wider_<take> wider_feet width_and wiggl_them will_<attend> will_look with_soft with_the with_your
        wobbl_about wobbl_fix work_and wrist_<place> wrist_cock wrist_out yank_<place> yank_on you_<attend>
        you_<far> you_a you_about you_are you_arent you_have you_land you_lean you_lift you_margaret you_only
        you_punch youll_<chat> youll_<settle> youll_find youll_go your_<pace> your_<part> your_<swap> your_<take>
        your_<wrong> your_all your_arm your_armpit your_belt your_bicep your_box your_brac your_bum your_but
        your_button your_collar your_ear your_earring your_feet your_grip your_guard your_knee your_lac your_land
        your_lap your_leap your_middl your_nose your_on your_pictur your_push your_rib your_rush your_seam
        your_second your_sho your_stand your_start your_tall your_tea your_tipto your_top your_tummy your_turn
        your_wrist youv_<num> youv_nee youv_round youv_sped youv_thre zip_from
      `,
    ],
    [
      -0.2,
      `
        <air>_to <attend>_as <attend>_back <attend>_forward <attend>_go <attend>_is <attend>_knuckl <attend>_off
        <attend>_that <attend>_ther <attend>_through <attend>_when <attend>_with <attend>_you <chat>_again
        <chat>_at <chat>_done <chat>_dont <chat>_drop <chat>_it <chat>_like <chat>_out <chat>_put <chat>_to
        <chat>_want <do>_a <do>_of <do>_one <do>_out <do>_over <do>_straight <do>_that <do>_the <do>_with
        <far>_and <far>_bit <far>_of <far>_one <far>_shoulder <far>_than <far>_to <far>_your <harm>_and
        <harm>_leg <harm>_out <harm>_turn <kit>_and <kit>_at <kit>_back <kit>_down <kit>_it <kit>_on <kit>_stay
        <kit>_up <less>_it <less>_them <more>_in <more>_off <more>_shoulder <more>_than <more>_that <move>_at
        <move>_for <move>_heav <move>_on <move>_one <move>_out <move>_room <move>_soft <move>_straight
        <move>_ther <move>_up <not>_an <not>_back <not>_be <not>_clamp <not>_dive <not>_for <not>_get <not>_hap
        <not>_have <not>_mov <not>_on <not>_put <not>_sham <not>_slam <not>_spill <not>_stop <not>_the
        <not>_think <not>_throw <not>_try <not>_turn <not>_your <num>_foot <num>_second <pace>_in <part>_and
        <part>_bent <part>_blad <part>_bon <part>_bone <part>_brush <part>_button <part>_float <part>_height
        <part>_high <part>_hip <part>_if <part>_in <part>_knee <part>_lean <part>_lock <part>_loos <part>_lower
        <part>_most <part>_neither <part>_off <part>_pres <part>_rock <part>_say <part>_squeez <part>_toward
        <part>_track <part>_tuck <part>_up <part>_with <place>_0 <place>_about <place>_again <place>_as
        <place>_away <place>_for <place>_forward <place>_hip <place>_if <place>_in <place>_into <place>_knee
        <place>_lift <place>_nor <place>_now <place>_off <place>_shoulder <place>_than <place>_that
        <place>_through <place>_till <place>_toe <place>_yet <settle>_at <settle>_by <settle>_down <settle>_for
        <settle>_of <settle>_on <settle>_straight <settle>_stuck <settle>_yourself <swap>_higher <swap>_in
        <swap>_jerk <swap>_on <swap>_out <swap>_sham <swap>_the <swap>_them <swap>_twist <take>_at <take>_down
        <take>_flat <take>_for <take>_it <take>_of <take>_off <take>_stay <take>_straight <take>_to <take>_your
        <wrong>_a <wrong>_and <wrong>_it <wrong>_of <wrong>_you a_<attend> a_<num> a_<pace> a_<part> a_<wrong>
        a_balloon a_bend a_big a_car a_competition a_foot a_lamp a_long a_moment a_wee about_a abov_the abov_your
        against_the an_<part> an_arm and_<chat> and_<move> and_<place> and_<settle> and_<take> and_back and_come
        and_just and_not and_stay and_your ankl_<not> ankl_neither are_<chat> are_go are_still are_the arm_<do>
        arm_are arm_by arm_hang as_<attend> as_<place> as_a as_they at_all at_you at_your back_down back_in
        back_knee back_lift back_of back_up bar_<place> be_<attend> becaus_the befor_<chat> befor_you behind_the
        below_the bend_your between_your bit_<place> bit_of both_<part> both_hip bounc_them breath_<place>
        brush_your bum_<part> bum_back by_the by_your call_it can_<chat> can_<do> can_<move> can_<settle>
        chair_<place> chest_<attend> chest_<do> chin_tuck clamp_<place> come_<place> cramp_<place> cramp_in
        dead_<attend> do_thi dont_<attend> dont_<less> dont_<pace> dont_<swap> dont_be dont_bend dont_clamp
        dont_dive dont_do dont_fall dont_flop dont_go dont_have dont_jump dont_push dont_run dont_slam dont_turn
        down_<attend> down_<not> down_away down_like down_to down_with drop_it drop_off ear_belong elbow_<more>
        elbow_glu elbow_under elbow_up even_when fac_<place> fall_out feel_<attend> feel_like feet_<move>
        feet_<part> feet_<place> feet_down feet_stay finger_<place> flat_<place> flat_on fold_over foot_<far>
        foot_<move> foot_in foot_off for_them for_thi forget_the from_the front_<do> front_<move> front_<place>
        front_foot front_over gap_<place> get_<more> get_<place> get_stuck get_up go_<attend> go_<part> go_back
        go_to got_the hand_<attend> hand_<far> hand_<more> hand_<move> hand_<place> hand_in hand_on have_a
        have_to head_<not> head_<pace> head_in heav_the heel_<do> heel_to hip_and hip_back hip_bon hip_not
        hip_width hold_the hop_<place> how_peopl i_<not> i_dont i_want if_<chat> if_youv in_<not> in_<num> in_nor
        in_your insid_your is_<place> is_in is_it is_wher is_your it_<not> it_<wrong> it_as it_crash it_go it_off
        it_out it_ping it_should it_to it_yank its_<num> its_<place> just_<do> just_<place> just_the keep_it
        kne_<more> kne_and kne_bent kne_down kne_in kne_to kne_up knee_<do> knee_<move> knuckl_to left_<part>
        leg_<do> leg_<more> leg_<move> leg_<place> leg_are leg_stay leg_up let_<chat> let_<settle> let_go
        level_<attend> level_<part> level_shoulder lie_<place> lift_your like_it like_the like_your long_<place>
        lower_them more_than neck_stay neither_<wrong> neither_tip never_<wrong> no_<do> no_<far> no_<kit>
        no_<more> no_<move> no_<place> no_<settle> no_jerk no_lean no_more no_sham no_twist nor_<wrong> nor_tip
        not_<chat> not_<far> not_<less> not_<more> not_<num> not_<settle> not_an not_cheat not_for not_go not_hap
        not_on not_try not_your of_<swap> of_it of_the of_them of_water of_your off_a on_the one_<more>
        one_<part> one_<place> one_foot opposit_<part> or_youll other_foot over_hip palm_<place> plank_<place>
        proud_<part> push_it put_them put_your reach_your rib_tuck right_<part> roll_<more> roll_<part> roll_back
        roll_up round_and row_boat see_some shoulder_<move> shoulder_<take> shoulder_blad shoulder_not
        shoulder_off show_off side_of sit_on slam_it slid_<more> slid_<place> slid_up somebod_<wrong> spill_it
        stack_<place> stack_over stand_on start_to stay_against stay_by stay_in stay_long stay_soft stay_ther
        step_<place> stop_<chat> straight_<part> straight_knuckl straighten_the tail_<place> than_<chat>
        than_<place> than_the that_<not> that_<part> that_<swap> that_all that_leg that_mat that_not the_<do>
        the_arch the_back the_bel the_bench the_box the_clock the_crown the_door the_ear the_far the_first
        the_gras the_kne the_kneecap the_neck the_push the_right the_ring the_rope the_same the_shop the_sofa
        the_top the_wrist the_wrong them_<far> them_<harm> them_<part> them_back them_com them_on them_ther
        ther_and thigh_<place> through_it through_them tight_<part> till_your tipto_to to_<attend> to_a to_come
        to_hear to_hold to_lift to_make to_the to_toe toe_on toe_stay toe_turn top_of touch_the toward_your
        track_<place> try_to tuck_<place> tuck_in turn_the under_the up_<far> up_off up_on up_that up_the
        upper_<part> upsid_<place> upsid_down want_it want_the we_are weight_down weight_on what_the when_the
        when_youv wher_you whil_<chat> with_<not> with_<num> with_<part> with_<swap> with_no would_<not>
        wrist_rock yank_<chat> yank_you you_<do> you_<less> you_<more> you_<take> you_drop you_put you_see you_up
        you_want your_<chat> your_<do> your_<less> your_<more> your_<num> your_dinner your_fist your_head
        your_lean your_leg your_palm your_shin your_shoulder your_side your_waist youv_<chat>
      `,
    ],
    [
      -0.4,
      `
        <attend>_your <not>_cheat <not>_drop <not>_go <not>_jump <part>_not <part>_to <place>_the <place>_your
        a_<chat> are_<attend> dont_drop foot_<place> front_of hold_it if_your not_the of_a over_<part> that_your
        tip_it you_<swap> you_can
      `,
    ],
    [-0.6, 'arm_<place>'],
  ],
  phrase: [
    [0.6, 'fault-sure'],
    [0.4, 'fault-likely'],
    [
      0.2,
      `
        easier-likely execution-sure fault-hint focus-hint focus-likely focus-sure setup-likely
      `,
    ],
    [
      -0.2,
      `
        breathing-likely caution-hint easier-hint execution-hint execution-likely praise purpose range-hint
        setup-hint tempo-sure
      `,
    ],
    [
      -0.4,
      `
        caution-sure chat dose_only equipment-likely equipment-sure harder-sure range-likely range-sure
        setup-sure
      `,
    ],
    [-0.6, 'breathing-sure easier-sure empty_clauses'],
  ],
  start: [
    [0.8, '<place>_<part>'],
    [0.6, '<part>_<settle>'],
    [
      0.4,
      `
        <attend>_<part> <not>_<wrong> <part>_<far> <part>_<not> <part>_<take> <settle>_<attend> half_of
        half_of_you hand_off look_at look_at_the not_out not_out_like rib_down that_a that_cheat that_how
        theyr_not tuck_it tuck_it_in
      `,
    ],
    [
      0.2,
      `
        0_degre <attend>_<chat> <chat>_<attend> <chat>_<swap> <chat>_<wrong> <do>_<attend> <do>_<more>
        <do>_<part> <far>_<part> <far>_<place> <far>_<take> <harm>_<attend> <harm>_<do> <harm>_<far>
        <harm>_<settle> <harm>_<take> <kit>_<wrong> <less>_<do> <less>_<kit> <less>_<less> <more>_<air>
        <move>_<attend> <not>_<do> <not>_<move> <not>_<part> <not>_<place> <pace>_<part> <pace>_<place>
        <part>_<attend> <part>_<chat> <part>_<less> <place>_<more> <place>_<place> <take>_<far> <take>_<more>
        <take>_<part> <take>_<place> a_bit_in a_few_of a_heel a_metr_in a_round all_of_you any_lift are_they
        are_we as_the back_at back_at_0 back_foot bar_drop bar_for bar_for_balanc becaus_that becaus_that_how
        bend_it bend_it_gent bent_elbow body_a body_a_plank both_shoulder both_shoulder_heav br_it br_it_under
        br_the_second brush_the brush_the_insid bum_down bum_in bum_in_the bum_level bum_level_with bum_stay
        but_are chest_and chest_and_hip chest_fac chest_fac_the chest_lift chest_up chin_in chin_off
        chin_off_your chin_up chin_up_in clap_together coast_it coast_it_out crush_it do_not_rush dont_arch
        dont_cran dont_crank dont_crank_your dont_drop_the dont_go_off dont_haul dont_hold_your dont_hook
        dont_hover dont_lean dont_lean_back dont_let dont_let_the dont_let_your dont_look_up dont_push_off
        dont_rock dont_stamp dont_sw dont_thump dont_twist dont_watch_your draw_it_flat draw_the_front drink_bird
        drop_them each_one_start ear_and ear_and_shoulder ease_off_the elbow_are elbow_at elbow_at_about
        elbow_clos elbow_down elbow_halfwa elbow_on_a elbow_point elbow_point_back elbow_soft elbow_stay_as
        everyon_beast everyon_beast_the everyon_want everyon_want_to eye_on eye_on_the fall_for fall_for_thre
        feel_thi feel_thi_one feet_on_two feet_stuck feet_stuck_to feet_wider finish_stood finish_stood_up
        first_0_wher flat_back flatten_it front_knee front_knee_goe front_slow get_behind get_behind_it get_them
        go_along go_longer go_round_the grip_loos hand_off_the hand_off_your hand_rest hand_rest_on handl_com
        handl_com_in hang_still hang_still_befor has_it have_they head_are heal_down heav_feet heel_are
        heel_are_com heel_com hip_are hip_dont hip_face hip_face_the hip_forward hip_go_with hip_right
        hip_right_through hold_a hold_a_crisp hold_a_potato hold_an hold_an_egg i_am i_can i_can_hear i_can_tell
        i_cant_see i_didnt_say i_said i_said_drag i_said_float i_should i_want_them if_it if_it_div if_its_all
        if_its_swing if_one if_the_knee if_the_opposit if_the_stick if_they if_they_bend if_they_go if_you_feel
        if_you_only if_your_hip if_your_tummy ill_say ill_say_it im_see in_cat in_on_each is_the it_doesnt_drop
        it_goe it_goe_over it_is_a it_is_not it_isnt it_only_giv it_stay it_twist it_twist_you its_a_kickstand
        its_a_lift its_a_passenger its_a_plank its_a_tap its_all_hip its_ankl its_hav its_hav_a its_kne its_leg
        its_only its_only_the its_opposit its_park its_slip_down its_still_leg its_the_arm its_the_thigh
        its_the_third its_ther_to its_too_heav its_your its_your_rib ive_seen_that jaw_like_jel keep_both
        keep_it_down keep_it_proud keep_it_soft keep_that_loop keep_the_hip keep_them keep_them_flat keep_them_in
        keep_thos_down keep_your keep_your_belt keep_your_button keep_your_chin kicking_for kicking_for_the
        kne_are_bend kne_arent kne_follow kne_follow_your kne_go kne_go_the kne_out_against kne_over
        kne_over_your kne_stay kne_stay_fac kne_straight_ahead knee_over knee_over_the knee_point kneecap_look
        kneecap_look_at knit_them knuckl_at knuckl_at_the knuckl_straight land_quiet lean_a_touch lean_from
        lean_in_from lean_your_whol leav_it_home leav_room leav_room_for leg_still leg_under leg_under_you
        less_neck let_em let_em_drop let_it_come let_it_drop let_it_fall let_it_follow let_the_ground let_the_spe
        let_them let_them_drag let_them_go level_your level_your_belt lift_it lift_the lift_the_chest
        lift_the_knee light_on light_on_your like_a_duck like_somebody_call like_your_on like_your_push
        like_your_start like_your_stuck like_youv like_youv_a long_finger long_way long_way_apart look_a_bit
        look_at_your look_straight_down loos_grip los_your los_your_balanc lost_the lost_the_rhythm lot_of
        lot_of_you lower_back make_a_straight make_the_front mind_you most_of_you move_the move_the_bottl
        move_your_face never_let never_on_it nine_tim nine_tim_out no_dip no_duck no_fling no_flop no_heav no_hop
        no_kick no_plonk no_plop no_push no_tent nobod_should_be nobody_film none_of not_a_littl not_a_tent
        not_at not_at_me not_at_the not_bent not_bent_back not_from not_from_the not_jam not_knock not_leap
        not_like not_like_thi not_out_to not_quarter not_quarter_to not_the_head not_the_same not_the_waist
        one_long one_long_plank open_it open_the_collarbon open_them or_its_a other_hand_stay out_at out_at_me
        overstrid_again peopl_love peopl_tend peopl_tend_to plant_the plant_the_pol pres_even pretend_i
        pretend_i_put pull_it_back pull_them pull_them_up pull_your_front push_tall push_them push_up_between
        push_your_kne put_it_back quit_instead rather_than relax_hand rib_stay rib_stay_down ring_in ring_in_by
        ring_in_tight see_how send_it send_it_away shak_em shak_them_down shorten_it shoulder_are shoulder_away
        shoulder_away_from shoulder_back shoulder_down_out shoulder_level shoulder_out shoulder_out_of
        shoulder_over_your show_me show_me_the sink_back sink_back_into sit_back_sooner sit_down_to sit_tall
        sit_tall_on slow_down slow_down_befor slow_it_down snap_your snap_your_knee soft_in soft_in_the
        soft_knee_underneath soft_shoulder soft_shoulder_thi soften_it somebod_is somebody_on somebody_on_a
        spoon_your spoon_your_hand spread_them squeez_them squeez_them_home squeez_your_tum stack_it stack_it_up
        stand_kne stand_right stand_right_up stand_tall_and stand_up_out stand_up_straight start_again stay_fac
        stay_off stay_over stay_still stay_tall stiller_than stiller_than_that straight_up straighten_it
        straighten_it_up strap_are strap_are_like strap_off strap_off_your take_the_slack that_a_bow that_a_camel
        that_a_goos that_a_handbrak that_a_squat that_a_telegram that_a_tent that_how_you that_is that_is_a
        that_just that_just_thrash that_the that_the_next that_the_one that_the_part that_the_same that_wher_it
        the_arm_just the_band_com the_ear the_ear_goe the_hand the_heel the_light the_light_one the_lot
        the_lot_of the_nam the_nam_a the_shoulder the_thigh the_thigh_stay the_wait the_wait_is ther_a_cup
        ther_a_stop ther_no_priz ther_peopl ther_peopl_downstair ther_room ther_room_for ther_they ther_they_go
        they_dont they_like they_like_to theyll_skat theyll_want theyll_want_to theyr_gossip theyr_still
        theyr_still_ther thi_is_not thi_isnt_a thigh_stay_on think_about_the think_of think_of_do think_of_punch
        think_of_the to_cure to_cure_the toe_face toe_long toe_point_forward toe_straight_ahead toe_to toe_to_the
        top_hip_roll try_it_again try_not try_not_to try_squeez try_squeez_an tuck_them tuck_your_tail turn_it_in
        turn_the_leg turn_your_feet unclench_your_hand uncros_your uncros_your_ankl use_the_leg use_your_bel
        wait_till wait_till_the walk_out walk_out_of watch_that watch_the watch_the_knee weight_acros
        weight_acros_the weight_between_the weird_your weird_your_top were_not what_i what_most whatv_they
        whatv_they_done wher_its_nice wher_your wher_your_go which_is whol_foot widen_out wider_feet wiggl_them
        without_the without_the_thumb wrist_are wrist_cock wrist_cock_back wrist_flat wrist_stack
        wrist_stay_straight you_could_eat you_dont_chas you_finish you_finish_stood you_look you_look_like
        you_should_not youll_go youll_go_over youll_trip youll_trip_on your_a_door your_all your_box your_box_to
        your_but your_leap your_neck_the your_not_a your_not_look your_not_on your_push your_push_your your_stand
        your_stand_up youv_nee youv_sped youv_sped_up
      `,
    ],
    [
      -0.2,
      `
        <air>_<place> <attend>_<attend> <chat>_<not> <chat>_<num> <chat>_<place> <more>_<place> <move>_<place>
        <not>_<attend> <not>_<far> <not>_<more> <not>_<num> <num>_<part> <part>_<do> <part>_<place> <part>_<swap>
        <settle>_<place> <swap>_<far> <swap>_<kit> <swap>_<move> <swap>_<part> <swap>_<place> ankl_neither
        ankl_neither_tip arm_out at_the bend_the bend_your bend_your_kne big_toe both_feet br_it_back bum_back
        dont_be dont_bounc_them dont_clamp dont_dive dont_flop dont_go dont_hold_it dont_jump dont_let_it
        dont_let_them dont_lock_them dont_look_at dont_pull_with dont_push dont_push_through dont_roll_it
        dont_slam dont_tip_it dont_turn drop_the elbow_glu elbow_stay_against elbow_under elbow_up hand_on have_a
        heel_to hip_go_back hip_level_shoulder hip_squar hold_it hold_the i_dont i_want i_want_to if_its_too
        if_you_get if_youv its_not_an its_not_cheat keep_the_knee keep_the_wrist keep_them_com keep_them_ther
        keep_your_feet keep_your_shoulder kne_bent kne_down kne_in kne_point_at kne_up leav_the let_it_go
        lift_your like_a look_at_that no_bounc no_bounc_off no_jerk no_more not_a_squat not_a_tightrop
        not_at_your not_down_at not_in_the not_on not_out_in not_the not_the_toe not_up_in not_your not_your_neck
        rib_knit shoulder_off stay_on stay_on_your stop_at take_your that_all that_you that_your the_leg
        the_other they_dont_bend they_dont_flar to_the toe_out toe_point toe_turn toe_turn_out tuck_the
        tuck_your_toe wrist_rock you_should_be your_ear_belong your_head your_lean your_lean_back your_leg
        youv_gone
      `,
    ],
    [-0.4, '<not>_<less> <not>_<pace> dont_drop let_the let_your not_a'],
  ],
  word: [
    [0.8, 'bum'],
    [
      0.6,
      `
        are elbow into knock lean look point see sort stay sway tent them they theyr too
      `,
    ],
    [
      0.4,
      `
        again backsid beginner bend bridg carol ceil chin clench degre divvent dont drift drop dump ear em fall
        flatten forward get gone hip i instead itself kiss leap level middl neck open out passenger pillow plonk
        rail rib ship shoulder shov shrug squat start sw swing theyll toe try tuck unclench untuck wander watch
        weight wider wing your
      `,
    ],
    [
      0.2,
      `
        ach add alec also am an angl answer apart arch arent arrow avoid back backbend banana bang beast beg bel
        belly bent beryl bet beth better bicep bicycl big blinker board bob bounc bow br brak camel carpet cave
        cheat chest clank classic claw clutch coast cock colin com cran crept cure curl dangl death deck
        deckchair denis derek dex die differenc dig dip div drag drawn droop duck earring eat egg elevator equal
        error everyon fer fergal fix fl flap flar fling fold folk follow foot football front gale gareth giraff
        giv glu goe grip guard guy half hammock handl hassan haul havent headlight heal hear heav hik hitch hoick
        how hunch im in invit inward is isnt jam jean jer joint joyc keep kicking king kirst kne knee knit kyle
        lac lag land leav less lift ligament lin line lorna los lost love lui marcu mil mirror mistak mo most
        mous mower nail nam nate nee newborn nine no nose only orang overstrid pamela park pay peck penguin peopl
        pick pleas plop plug pok pole pool pop potato priya pub pubic pud punch push quietest quit rep resist
        rhythm rid ridg rob rock roll room rop round sag saw scrunch shak sher sho shoot shorten shorter should
        shouldnt shuffl sink skirt skull slack slow slump smooth snatch sneak soft somebody sooner sped spot
        squar stack stamp star stick still stiller stomp strangl strok stuck tall telegram tend thank their
        themselv thigh think thought thrash thump tighter tightrop tim tipto tir toddler together toppl trampolin
        tray trip tummy turn turtl twist uncros untid up us visit want wash wav were what whatv whol wiggl will
        wrist yank youll youm youv
      `,
    ],
    [
      -0.2,
      `
        0 about after against alarm all allow and any anybod anyon as asleep bag balloon bare beat befor below
        bench between blad blood bomb bor bottom break calf call calv can cant chair chang check church circl
        clamp clean clear cold collarbon comf competition count coupl cramp crash creas cros cross crown cushion
        day dead deadlift deep did dinner dog done door driv easy eight either else empt enough ever everyth eye
        face far feel fight fill fine finger flat flick floor for forearm forget four full gap give go good got
        grab gras grumbl gym had hamstr hamstring hand hap heart height held hing his hot hug jog kneel ladder
        last left littl lock long lung ly machin mak march may me mean meet mine minut moment month muscl natural
        near neither never new next ninet nip nobody nor normal nowher number on once other our outsid overhead
        own pain pair partner pass paus perfect phon ping plent pres pressur pret proper pump purpl quad quick
        quicker rais real remember same sat sav save say sham sharp shelf shut sinc singl sit six skip slam slid
        slight small smil so sock sofa someth spill sprint step stop strength stretch swap switch tabl tailbon
        take talk teeth ten than then ther thes thi thirt though thre through time tin tiny toda top twent twic
        until upper upright upsid version walk warm water way we wear wee week wet whatever wherever whil whos
        why wide wind window wobbl wont would wrap wrong yes yet you
      `,
    ],
    [
      -0.4,
      `
        abov been hold if jump mov noth now palm right set shin till tip two who without
      `,
    ],
    [-0.6, 'breath or'],
  ],
} as const satisfies CueWeights
