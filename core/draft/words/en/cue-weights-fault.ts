/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind fault; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const FAULT_WEIGHTS = {
  class: [
    [1.8, 'wrong'],
    [0.8, 'not'],
    [0.6, 'part'],
    [0.4, 'move'],
    [0.2, 'chat do less place'],
    [-0.2, 'harm more swap take'],
    [-0.4, 'attend far pace'],
    [-0.6, 'num'],
  ],
  first: [
    [0.6, '<not> <part>'],
    [0.4, '<less> your'],
    [
      0.2,
      `
        <chat> beginner br careful check chin drop elbow everyon eye front grip handl has heel i if keep less
        lift more neck nobod resist rib shoulder show slow some somebod stand that uncros watch wrist
      `,
    ],
    [
      -0.2,
      `
        <air> <far> <num> <settle> <wrong> hand hold in its leg let never not noth take we
      `,
    ],
    [-0.4, '<do> <place>'],
  ],
  given: [
    [0.4, '<place>'],
    [
      0.2,
      `
        <attend> <chat> <do> <kit> <less> <part> all are have in into lost neck opposit roll shoulder the too
        work your
      `,
    ],
    [-0.2, '<move> <not> a down get that'],
  ],
  last: [
    [0.4, 'short'],
    [
      0.2,
      `
        air bel breastbon death degre dont drift drop ear fast feet fingertip first front heav high hing honest
        in instead it land lawnmower length low movement not open past pleas rib soft sw tall them thi thigh toe
        tomorrow wobbl
      `,
    ],
    [
      -0.2,
      `
        arm back body bum clock face floor foot go hand hip jump kne kneel me on read rest spin yet
      `,
    ],
  ],
  late: [[0.4, 'yes']],
  length: [
    [0.2, '3-4'],
    [-0.2, '8-12'],
  ],
  pair: [
    [0.6, '<do>_them <move>_them'],
    [
      0.4,
      `
        <chat>_short <chat>_the <part>_are i_<swap> is_a look_<place> not_<move> the_length them_<place> thi_into
        to_<do> to_<wrong> turn_thi with_the your_<part> your_thumb
      `,
    ],
    [
      0.2,
      `
        <attend>_down <attend>_has <attend>_it <attend>_leg <attend>_on <attend>_the <attend>_thi <attend>_to
        <attend>_well <chat>_all <chat>_am <chat>_are <chat>_do <chat>_get <chat>_have <chat>_hundred <chat>_lift
        <chat>_should <chat>_start <chat>_them <do>_like <do>_tall <do>_through <do>_yourself <kit>_com <kit>_the
        <kit>_to <less>_fast <less>_low <less>_much <less>_the <less>_them <less>_too <less>_your <more>_at
        <more>_bel <more>_in <move>_back <move>_from <move>_honest <move>_not <move>_sure <move>_through
        <not>_bend <not>_bounc <not>_fly <not>_from <not>_grip <not>_just <not>_let <not>_lift <not>_like
        <not>_squash <not>_swing <not>_than <not>_thank <not>_to <not>_want <num>_degre <num>_five <pace>_and
        <pace>_down <pace>_the <part>_arent <part>_at <part>_do <part>_doe <part>_drop <part>_first <part>_flat
        <part>_from <part>_go <part>_has <part>_is <part>_just <part>_level <part>_off <part>_open <part>_shoot
        <part>_soft <part>_stay <part>_too <place>_from <place>_front <place>_instead <place>_just <place>_like
        <place>_over <place>_pleas <place>_when <place>_youll <settle>_back <settle>_caught <settle>_it
        <settle>_lost <settle>_not <settle>_short <settle>_tall <settle>_with <swap>_hear <swap>_squash
        <swap>_tall <take>_back <take>_caught <take>_tall <take>_the <take>_with <wrong>_forward <wrong>_is
        <wrong>_off <wrong>_out <wrong>_the <wrong>_to <wrong>_up a_<do> a_<move> a_<wrong> a_few a_hing a_hip
        a_lawnmower a_race about_fort about_it alway_<attend> alway_<less> alway_too and_die and_it are_<less>
        are_pull are_too are_wobbl arm_go as_well at_about at_your back_<less> back_<not> back_<swap> be_<place>
        be_on befor_the bend_the br_it bum_<place> bum_in can_hear chin_<place> chin_in com_<more> com_<place>
        com_in com_up doe_<not> doe_not dont_fly dont_just down_when drop_the drop_your elbow_drop eye_<place>
        eye_on first_hundred five_<far> five_degre floor_<place> fly_and fort_<num> fort_five forward_<place>
        forward_on front_<part> front_knee get_caught get_the go_short goe_<place> got_<far> got_past grip_the
        hand_off has_<wrong> has_wander have_<not> have_lost have_not heel_<settle> heel_are heel_down hip_<far>
        hip_<more> hip_<move> hip_level hip_open how_<chat> how_you i_am i_can i_do if_it in_front in_pleas
        into_a into_your is_<harm> is_<less> is_look is_too it_<chat> it_has it_in it_is it_roll it_tomorrow
        its_<attend> just_<do> keep_them kne_<attend> kne_soft knee_stay know_about lean_<place> lean_forward
        leg_<chat> leg_<swap> leg_do let_the let_them lift_<place> lift_off lift_the lift_through like_thi
        like_to lock_<place> lock_out logo_<place> logo_on look_at look_up loop_<place> loop_out lot_of lower_and
        make_sure mat_with me_the more_<air> more_<part> more_bel much_<settle> no_<chat> no_squash not_<do>
        not_<pace> not_<swap> not_a not_from not_grip not_hold not_lift not_like not_rush not_to not_want
        open_<attend> open_like opposit_shoulder or_the out_<attend> out_like out_to peopl_<kit> peopl_<wrong>
        pillow_<place> pillow_under pop_<more> pop_<place> pop_up pull_them rather_than rib_are roll_<place>
        roll_in round_the rush_the see_a shoot_<place> should_<not> should_be should_not shoulder_<attend>
        shoulder_<not> shoulder_lift show_<chat> show_me sit_<part> sit_back slow_<place> slow_down some_peopl
        somebod_is somebody_squat squash_the squat_it stand_<attend> stand_tall start_a start_with stay_<more>
        stay_<place> stay_honest stay_over stop_<wrong> straighten_them tension_in than_a thank_you that_is
        that_the the_<air> the_<kit> the_<num> the_<part> the_<swap> the_<wrong> the_air the_breastbon the_bum
        the_ceil the_lac the_leg the_logo the_mat the_one the_pillow the_shoulder the_sid the_thigh the_turn
        the_weight the_work them_down them_out they_<attend> they_like through_the to_<far> to_<move> to_<pace>
        to_<settle> to_drift to_lean too_<pace> too_<place> too_fast too_low too_much touch_your try_<not>
        try_not tuck_it tuck_your uncros_your under_your up_<place> up_at up_in wander_off want_to watch_your
        weight_and what_i when_<chat> when_you wrist_<place> you_<do> you_<move> you_<settle> you_are you_get
        you_have you_lift you_should youll_<chat> youll_<settle> youll_go youll_know your_<do> your_<kit>
        your_<not> your_ankl your_elbow your_feet your_fingertip your_heel your_knee your_not your_shirt
        your_short your_start your_toe your_weight
      `,
    ],
    [
      -0.2,
      `
        <attend>_that <attend>_you <chat>_it <do>_the <far>_with <less>_high <less>_to <move>_into <move>_on
        <not>_have <not>_it <not>_jump <not>_the <part>_and <part>_hang <part>_not <part>_to <part>_under
        <part>_with <place>_a <place>_and <place>_of <place>_to <settle>_down <settle>_to a_<attend> a_<chat>
        a_<far> a_<kit> a_chair and_<do> and_<move> and_<not> and_<settle> are_go as_you at_the back_<part>
        both_<part> chest_<place> come_<place> dont_<attend> dont_<take> dont_want feet_<place> go_to
        hand_<place> have_to head_<place> hear_<chat> hear_you hip_not if_you is_<place> is_<swap> is_the
        it_<less> it_<move> it_<place> its_<not> its_not keep_your leg_<place> let_<chat> let_it never_<do>
        not_<chat> not_<less> not_<settle> not_<take> not_have not_the of_the of_your on_it on_the other_<part>
        pull_<place> pull_on the_<do> the_<pace> the_clock the_kne the_other the_spin the_top the_wall the_way
        to_<part> to_lift to_your under_the weight_<place> you_<chat> you_<swap> you_can your_<air> your_<place>
        your_<settle> your_<swap> your_<take> your_back your_chest your_face your_hand your_shoulder
      `,
    ],
    [-0.4, '<place>_the'],
  ],
  phrase: [
    [1.2, 'fault-sure'],
    [0.4, 'tempo-likely'],
    [0.2, 'fault-likely focus-hint setup-likely'],
    [
      -0.2,
      `
        breathing-likely breathing-sure chat dose_only easier-sure empty_clauses equipment-likely execution-hint
        focus-sure harder-sure praise range-sure setup-hint
      `,
    ],
    [-0.4, 'caution-hint caution-sure execution-likely focus-likely'],
  ],
  start: [
    [0.4, 'that_is'],
    [
      0.2,
      `
        <do>_<attend> <less>_<do> <less>_<less> <more>_<air> <more>_<part> <not>_<chat> <not>_<move>
        <not>_<wrong> <pace>_<place> <part>_<more> <part>_<settle> <settle>_<attend> <swap>_<attend>
        <swap>_<chat> <take>_<attend> <take>_<part> br_it br_it_up br_them do_not_grip do_not_rush dont_fly
        dont_fly_and dont_just eye_on eye_on_the front_knee front_knee_stay hand_off hip_level i_am i_can
        i_can_hear if_it if_it_roll if_the if_the_opposit it_is_a kne_soft let_the_leg let_them lift_the
        make_sure not_from not_from_the not_like not_like_thi rib_are show_me show_me_the sit_back slow_down
        some_peopl somebod_is somebod_is_look stand_tall that_is_a that_the that_the_one thi_is_not try_not
        try_not_to uncros_your uncros_your_ankl watch_your watch_your_elbow you_should you_should_not your_not
        your_short
      `,
    ],
    [
      -0.2,
      `
        <move>_<place> <not>_<less> <not>_<pace> <not>_<place> <part>_<chat> <part>_<do> its_not its_not_a
        keep_your not_the not_the_back the_arm
      `,
    ],
  ],
  word: [
    [0.6, 'them too'],
    [0.4, 'alway are drop elbow has i in into is lean look see short should thumb turn up'],
    [
      0.2,
      `
        about am arent beginner bend br breastbon bum car careful caught ceil check chin com death degre die
        drift ear error everyon fast few fingertip first five fly forehead fort forward from front get goe gone
        grip handl hasnt hear heav heel hing hip honest hundred instead keep know lac land lawnmower length less
        lift like logo loop lost lot mat movement much neck nobod not open out peopl pillow pleas pop pull quit
        race rather resist rib roll rush sag shirt shoot shoulder slow soft somebod squat start stay stick still
        sure sw than the thi thigh throw tuck uncros wander want watch weight what when wing wobbl wrist youll
        your
      `,
    ],
    [
      -0.2,
      `
        0 a after allow an and arm between body both bottom breath by chair clock come crank cros down else face
        finger floor foot for go hang hap head hold hook hug if it its jump just kne kneel last lead need never
        noth of on one or other point reach read rest right round shin so someth spin stop straight strap stretch
        take then ther toda top walk wall way we wher without yet you
      `,
    ],
    [-0.4, 'hand'],
  ],
} as const satisfies CueWeights
