/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind execution; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EXECUTION_WEIGHTS = {
  bias: [[0.2, 'yes']],
  class: [
    [0.4, 'do'],
    [0.2, 'move part place take'],
    [-0.2, 'attend pace'],
    [-0.4, 'far less not swap'],
  ],
  conditional: [[-0.4, 'yes']],
  early: [[0.8, 'yes']],
  first: [
    [0.8, '<do>'],
    [0.4, '<air> <place> and jab out we'],
    [
      0.2,
      `
        <part> <take> <wrong> allow arm as body both chang chest curl do dont down draw driv ear extend give hand
        heel hold inhal kneel land lean leg length long not opposit paddl park pull push rotat same settl shift
        skip slip stand stick sw the thre tip toe top trac you
      `,
    ],
    [
      -0.2,
      `
        <attend> <chat> <less> <more> <not> <pace> <settle> all back bend br brac come i it knee lie lift make no
        or rib rise roll shak snap squat start stop straighten to walk your
      `,
    ],
    [-0.4, '<move>'],
  ],
  given: [
    [0.2, 'stead'],
    [-0.2, '<part> the'],
  ],
  last: [
    [0.4, 'and one strok tap way'],
    [
      0.2,
      `
        again air anyth arch armpit back beat bit book bow ceil chang chin complete cros ear fall first floor
        flow foot forward four glas handl hang harder hat hundr knee lead left log other paus pelvi position
        proud rest return right settl side spot stand step swap switch ten toe together under waist want
      `,
    ],
    [
      -0.2,
      `
        0 bounc breath bum clos elbow feet fold follow front gent hand march needl off pleas row tall top ups
        wall well
      `,
    ],
    [-0.4, 'kne'],
  ],
  late: [[-0.2, 'yes']],
  length: [
    [0.4, '1-2'],
    [-0.2, '5-7 8-12'],
  ],
  pair: [
    [0.6, '<part>_to'],
    [
      0.4,
      `
        <chat>_it <do>_forward <do>_the <part>_back <part>_like and_<do> and_<move> are_go breath_<place>
        into_the kne_<more> kne_up to_<part> to_your we_<do> we_<move> your_hip
      `,
    ],
    [
      0.2,
      `
        <air>_down <air>_out <air>_over <air>_up <attend>_a <attend>_and <attend>_if <attend>_over <attend>_step
        <attend>_under <attend>_wher <attend>_you <chat>_armpit <chat>_breath <chat>_come <chat>_complete
        <chat>_draw <chat>_found <chat>_hundr <chat>_push <chat>_reach <chat>_right <do>_acros <do>_again
        <do>_and <do>_away <do>_from <do>_hand <do>_left <do>_off <do>_one <do>_right <do>_straight <do>_under
        <do>_up <do>_your <far>_bit <far>_forward <far>_the <harm>_and <harm>_kne <harm>_left <harm>_on
        <harm>_right <kit>_and <kit>_apart <kit>_at <kit>_it <kit>_tap <less>_the <more>_armpit <more>_one
        <move>_again <move>_an <move>_at <move>_away <move>_forward <move>_from <move>_off <move>_straight
        <move>_the <move>_under <not>_at <not>_do <not>_paus <not>_sit <not>_stop <num>_side <num>_to <pace>_to
        <part>_as <part>_away <part>_be <part>_between <part>_com <part>_ever <part>_first <part>_flat
        <part>_into <part>_lead <part>_on <part>_out <part>_proud <part>_push <part>_roll <part>_still
        <part>_swing <part>_then <part>_until <place>_an <place>_edge <place>_in <place>_like <place>_of
        <place>_out <place>_ther <place>_toward <place>_with <place>_your <settle>_and <settle>_by
        <settle>_complete <settle>_down <settle>_it <settle>_ther <settle>_up <swap>_anyth <swap>_hand
        <take>_back <take>_in <take>_it <take>_out <take>_ther a_<pace> a_beat a_big a_book a_hat a_log a_moment
        a_tiny acros_your allow_the an_orang and_<place> and_<settle> and_<swap> and_<take> and_clos and_hold
        and_let and_stand and_walk arm_<attend> arm_<do> arm_<move> arm_<place> arm_<settle> arm_straight
        as_<chat> as_if as_you back_<far> back_and behind_<chat> behind_you bicep_is big_<do> big_<move>
        body_<do> body_swing both_arm both_hand breath_out chest_<attend> chest_<chat> chest_<place> chest_down
        chest_proud circl_with clos_it com_<place> come_down do_<more> do_anyth dont_<chat> dont_<settle>
        dont_<swap> dont_<take> dont_do dont_let dont_sit down_the down_ther down_to draw_a driv_the each_armpit
        ear_<place> elbow_and elbow_lead elbow_to exhal_<more> exhal_<place> exhal_up extend_the feet_in
        first_<num> first_hundr flex_the float_it for_<num> for_a for_four for_ten found_it from_here
        front_<part> front_of get_it get_out go_complete go_right go_to hand_down hand_to head_like heel_<attend>
        heel_as heel_to hip_<chat> hip_<place> hip_first hip_still hold_the hold_your hot_glas if_step in_<place>
        in_an in_for in_with inhal_<place> inhal_down invisibl_<kit> invisibl_chair is_<num> is_by is_one
        it_<chat> it_<far> it_<harm> it_flow it_for it_mov it_round it_the it_ther it_up its_hot jump_again
        just_in kne_<attend> kne_<do> kne_<less> kne_<move> kne_<place> kne_as knee_into knee_through
        kneel_<more> kneel_<place> kneel_up left_armpit leg_<do> leg_<place> leg_ever leg_flat leg_on leg_push
        let_it let_the light_<place> like_a like_wher loos_<pace> loos_strok lower_the march_<place> march_on
        move_<far> next_<num> next_one nose_<place> nose_over not_<not> not_<pace> not_paus not_stop not_the
        of_the on_the one_side only_the opposit_<part> opposit_arm orang_<place> orang_in out_<place> out_in
        out_of outsid_<far> outsid_edge over_a palm_<place> park_it pedal_the pres_the push_<more> push_<place>
        push_up put_it reach_<place> reach_forward right_into rock_<place> rock_over roll_<part> roll_back
        same_way settl_<place> settl_by shoulder_<place> shoulder_roll sit_<part> sit_<place> sit_back sit_down
        sit_in skip_<place> skip_on slip_<chat> slip_<more> slip_left slip_right spot_<part> spot_kne squar_to
        stay_at step_over stop_at straight_<place> straight_down sw_the swap_<part> swap_hand swap_leg tap_the
        that_<harm> that_<more> that_<pace> that_stead the_<chat> the_<less> the_<more> the_<part> the_<settle>
        the_<take> the_arm the_ball the_bar the_ceil the_cone the_ear the_floor the_foot the_handl the_hip
        the_knee the_left the_other the_outsid the_pelvi the_shoulder the_side the_spot the_tailbon the_top
        the_waist the_way them_<part> them_back then_<attend> then_<do> then_<move> ther_a ther_and ther_for
        thre_to throw_the tiny_bit to_<do> to_bum to_chin to_knee to_one to_round to_shoulder toe_on top_<move>
        top_keep touch_the toward_your until_<chat> until_it until_you up_<attend> up_<settle> walk_your way_in
        we_<far> we_<less> we_lift we_lower we_tap with_your you_<air> you_<settle> you_breath you_come you_found
        you_push you_reach you_want your_<chat> your_<harm> your_<part> your_bicep your_body your_breastbon
        your_chin your_draw your_elbow your_finger your_head your_heel your_kne your_left your_side your_toe
      `,
    ],
    [
      -0.2,
      `
        <attend>_it <attend>_the <chat>_can <chat>_to <chat>_us <chat>_your <do>_around <do>_in <do>_it <do>_leg
        <do>_through <do>_to <do>_ups <far>_and <far>_toe <harm>_it <harm>_under <kit>_back <kit>_down <kit>_in
        <more>_a <more>_with <move>_a <move>_around <move>_back <move>_behind <move>_it <move>_them
        <move>_through <move>_to <move>_ups <not>_a <num>_foot <part>_are <part>_do <part>_follow <part>_go
        <part>_off <place>_at <place>_on <place>_the <place>_through <place>_two <settle>_a <settle>_from
        <settle>_on <settle>_the <settle>_to <settle>_with <settle>_your <swap>_it <swap>_leg <swap>_the a_<kit>
        all_the and_<harm> and_open and_snap and_sw and_the and_your ankl_and arm_<far> arm_and as_<place>
        away_from behind_the bel_in bend_the bend_your both_<take> both_feet both_leg br_your come_<part>
        come_back cros_the do_it dont_<do> down_<place> down_and down_for feet_<more> feet_up float_<place>
        float_down foot_<place> for_the forward_<place> hand_and if_<chat> in_your it_<attend> it_<place> knee_to
        leg_<more> leg_up lengthen_<place> let_us let_your lie_<place> lift_the not_<chat> not_<do> not_<move>
        not_<settle> on_to on_your one_<part> onto_your other_arm out_and reach_the right_<place> roll_<place>
        roll_on roll_over shoulder_<do> slid_<more> slid_up so_that spread_the squeez_your stay_<place> sw_your
        the_<air> the_<far> the_<move> the_<pace> the_<swap> the_bel the_chair the_finger the_ground the_kne
        the_needl the_toe the_wall the_weight thread_the through_the to_make tuck_it under_the up_<place> want_to
        way_down with_the you_<attend> you_<less> you_<swap> you_can your_<air> your_<place> your_<take>
        your_back your_bum your_chest your_feet your_hand your_leg your_palm
      `,
    ],
    [-0.4, 'it_out the_<do>'],
  ],
  phrase: [
    [1, 'execution-likely'],
    [0.4, 'execution-hint'],
    [0.2, 'fault-hint fault-likely focus-sure range-sure'],
    [
      -0.2,
      `
        breathing-likely caution-sure chat empty_clauses execution-sure harder-likely harder-sure range-hint
        range-likely setup-hint tempo-hint tempo-likely tempo-sure transitions
      `,
    ],
    [-0.4, 'easier-hint easier-sure fault-sure'],
    [-0.6, 'setup-sure'],
  ],
  start: [
    [0.6, '<air>_<place>'],
    [0.4, '<take>_<place>'],
    [
      0.2,
      `
        <attend>_<chat> <chat>_<settle> <do>_<chat> <do>_<more> <do>_<num> <do>_<place> <far>_<harm>
        <harm>_<more> <move>_<chat> <move>_<num> <not>_<chat> <not>_<take> <part>_<attend> <part>_<chat>
        <part>_<do> <part>_<move> <settle>_<more> <settle>_<place> <swap>_<not> <take>_<more> allow_the
        allow_the_back as_you as_you_breath as_you_push both_hand both_hand_on breath_out chest_proud do_not
        do_not_paus do_not_stop dont_let dont_let_it dont_sit extend_the from_here hand_to hand_to_shoulder
        heel_to heel_to_bum hold_it_ther hold_the hold_your if_that_stead inhal_down kneel_up leg_flat leg_push
        let_it let_the lift_one march_on march_on_the open_the park_it pres_the pull_the sit_down skip_on
        skip_on_the slip_left sw_the swap_hand swap_leg_ever take_it_round the_arm the_other top_of top_of_the
        tuck_your we_lift when_you_come you_are you_are_go you_go you_reach you_reach_forward
      `,
    ],
    [
      -0.2,
      `
        <attend>_<place> <do>_<attend> <do>_<pace> <kit>_<place> <move>_<attend> <move>_<do> <move>_<far>
        <move>_<pace> <not>_<do> <not>_<move> <part>_<far> <part>_<place> <place>_<attend> <place>_<do>
        <place>_<num> <settle>_<part> arm_and bend_your bend_your_kne br_your come_back hand_on knee_to let_us
        let_your roll_over slid_up squeez_your squeez_your_bum straighten_the straighten_the_arm swap_leg
      `,
    ],
    [-0.4, 'lift_the'],
  ],
  word: [
    [0.6, 'and ear'],
    [
      0.4,
      `
        arm as back body by hip jab left leg over pull settl sit strok swap tap then ther together top way
      `,
    ],
    [
      0.2,
      `
        acros again an anyth arc arch armpit away ball bar beat bicep book bow ceil chang chin circl com cone
        curl dont down draw driv elbow extend fall first flex floor flow forward found four give glas go hand
        handl harder hat head heel held hit hold hot hug hundr in invisibl it knee land lead light like log loos
        lower mid moment move much near one opposit orang other paddl park paus pedal pelvi position proud punch
        push rest return right rotat same shift shoulder side skip slip spot squash stead stick stop sweep swing
        tailbon the throw tip to toe toward trac under until waist we
      `,
    ],
    [
      -0.2,
      `
        0 a about abov ankl are around befor behind bel bottom bounc br brac bum can chair clos dead drop each
        end even face feel feet finger fist five follow for gent goe ground has have heav help i its just kne
        last level lie lift littl low lung minut more needl no of off onto open or plant pleas point rib rise row
        second shak shin should snap so some spin squat start stretch take tall than they thread through till too
        tuck turn two ups us walk wall weight well will wrist
      `,
    ],
    [-0.4, 'all bend is make on that thi'],
  ],
} as const satisfies CueWeights
