/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind easier; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EASIER_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [1.2, 'less'],
    [0.6, 'swap'],
    [0.2, 'harm kit move not part settle'],
    [-0.2, 'air do pace wrong'],
    [-0.4, 'chat more'],
  ],
  conditional: [[0.4, 'yes']],
  early: [[-0.4, 'yes']],
  first: [
    [0.6, '<less> or'],
    [0.4, 'bend same step take to use'],
    [
      0.2,
      `
        <kit> another anyon child drop figur for forearm kne lean leav let level lie littl low march modification
        put should sit you
      `,
    ],
    [
      -0.2,
      `
        <num> <pace> <part> <place> <swap> get halfwa have i its lift one paus the thi your
      `,
    ],
    [-0.4, '<attend>'],
  ],
  given: [
    [
      0.2,
      `
        <less> <not> <part> <settle> breathles get hamstring like lot that then thos tight to up with
      `,
    ],
    [-0.2, '<do> <kit> back is off the'],
  ],
  last: [
    [0.4, 'arm help'],
    [
      0.2,
      `
        0 a bed beginner between bit bridg down enough four gone ground jump kne lot march month mov off option
        puff sit stretch thigh think to toda together twist version wall well wrong you
      `,
    ],
    [-0.2, 'further go here hip knee okay on out thi'],
  ],
  late: [[0.4, 'yes']],
  pair: [
    [0.6, '<part>_on <settle>_on'],
    [
      0.4,
      `
        <kit>_if <part>_down <take>_on a_paus bend_the for_<chat> for_you is_<swap> that_a
      `,
    ],
    [
      0.2,
      `
        0_and <attend>_it <attend>_like <attend>_thi <attend>_well <attend>_your <chat>_breathles <chat>_keep
        <chat>_think <chat>_up <chat>_would <chat>_your <do>_if <do>_on <do>_side <far>_box <far>_down
        <far>_impact <far>_one <far>_rang <harm>_off <harm>_under <harm>_up <ill>_up <kit>_back <kit>_for
        <kit>_in <kit>_side <kit>_toda <kit>_version <less>_a <less>_hamstring <less>_is <less>_kne <less>_one
        <less>_than <less>_the <less>_to <less>_weight <more>_again <more>_one <more>_onto <more>_ther
        <more>_with <move>_get <move>_here <move>_if <move>_in <move>_off <move>_one <move>_side <move>_the
        <not>_at <not>_ear <not>_have <not>_jump <not>_sit <not>_weight <num>_arm <num>_mov <num>_off
        <pace>_longer <pace>_one <part>_are <part>_now <part>_stay <part>_still <part>_to <place>_a <place>_at
        <place>_bend <place>_between <place>_onto <place>_toe <settle>_had <settle>_off <settle>_out <settle>_the
        <settle>_to <swap>_a <swap>_in <swap>_it <swap>_jump <swap>_just <swap>_the <swap>_weight <take>_one
        <take>_stay a_<far> a_<pace> a_<swap> a_ball a_bit a_fast a_higher a_knee a_lot a_love a_pair an_<less>
        an_easier and_just and_practis ankl_<place> ankl_over another_<less> another_option anyon_who are_<harm>
        are_<ill> as_well at_0 at_<num> bend_your blanket_in block_<swap> both_<take> both_feet bottom_<part>
        br_the breathles_<more> breathles_<place> breathles_up by_bend chair_<attend> chair_back chair_if
        child_pose come_<part> come_<place> come_back come_out do_<part> do_it down_a down_at fast_<do>
        fast_<move> fast_<num> fast_one feel_<attend> feel_like feet_<move> feet_out feet_stay figur_<num>
        figur_four floor_<swap> foot_<place> foot_down foot_on for_<harm> for_an for_balanc for_thos
        forearm_<place> forward_<place> forward_on get_it hand_<place> hand_and hand_to hard_<less> have_<chat>
        have_had have_to head_<place> head_down help_<chat> help_you higher_<kit> higher_box hip_<attend>
        hip_still hold_it if_<chat> if_it if_that if_the if_thi if_your impact_peopl in_<place> in_between
        is_<less> is_<not> is_your it_<less> it_<wrong> it_is it_ther it_wrong just_<attend> just_<do> just_<kit>
        just_<move> just_<swap> just_as just_do just_step just_the keep_get kne_<place> kne_are kne_now kne_on
        knee_<place> knee_on kneel_<num> kneel_one lean_<place> lean_forward leav_the leg_to let_your level_<num>
        level_one littl_<do> love_<less> low_impact might_<attend> no_jump no_weight not_have of_<harm> of_<kit>
        off_a okay_to on_a on_the on_to one_arm one_is one_off onto_<harm> onto_<part> onto_toe option_a or_0
        or_<move> or_<num> or_<place> or_just or_kneel other_<num> other_<part> other_leg other_one other_thigh
        out_and out_the paus_<attend> paus_longer pick_it pose_is practis_the pressur_off put_the same_<attend>
        same_<do> same_<num> same_stretch same_ten shorten_the should_that side_to simp_<settle> simp_<take>
        sit_<attend> sit_<more> sit_on so_<far> some_of squat_and start_with stay_down stay_here step_<part>
        step_<place> step_back step_in step_side still_<place> stood_<place> stop_at stop_ear take_<place> take_a
        take_the tap_<place> tap_behind than_<chat> than_you that_<attend> that_feel the_<do> the_<move>
        the_<pace> the_<part> the_arm the_band the_bridg the_chair the_floor the_foot the_ground the_head
        the_lever the_other the_paus the_pressur the_rang the_wall ther_for ther_is thos_with tight_<attend>
        tight_hamstring to_<less> to_<move> to_<not> to_<settle> to_lift to_modif to_side to_stop to_take
        two_<part> up_<place> up_again up_onto up_ther up_with use_a use_the walk_it wall_version want_to
        way_down we_call weight_<chat> weight_toda welcom_to when_<chat> when_you who_gone with_<less> with_<num>
        with_just with_tight with_two without_the would_<not> would_rather you_<more> you_<place> you_keep
        you_think you_would your_<harm> your_<ill> your_<part> your_breathles your_hand your_leg your_toe
      `,
    ],
    [
      -0.2,
      `
        <attend>_you <chat>_can <chat>_if <chat>_is <do>_to <far>_back <far>_further <far>_the <harm>_is
        <harm>_on <kit>_do <kit>_down <more>_the <move>_them <move>_to <pace>_the <part>_as <part>_is <part>_up
        <place>_instead <place>_you <place>_your <take>_back a_<do> a_<harm> a_<place> a_mat alway_<attend>
        and_<do> and_<move> are_<swap> are_fine as_you at_the back_<less> back_<not> back_<swap> for_<num>
        for_the have_a is_<far> it_<place> kne_<attend> kne_and kne_as look_<place> of_a off_the or_<swap>
        sit_<part> sit_back take_it that_is the_<attend> the_<chat> the_<swap> the_<take> the_bar the_knee
        the_shoulder the_top to_<far> to_get to_your up_the you_<not> you_<settle> you_<swap> you_can your_<kit>
      `,
    ],
  ],
  phrase: [
    [2, 'easier-sure'],
    [0.6, 'easier-hint'],
    [
      0.2,
      `
        caution-hint easier-likely equipment-hint equipment-sure focus-likely range-likely setup-sure
      `,
    ],
    [
      -0.2,
      `
        breathing-likely breathing-sure chat equipment-likely execution-hint fault-hint fault-likely harder-sure
        setup-likely transitions
      `,
    ],
    [-0.4, 'empty_clauses'],
  ],
  start: [
    [0.4, '<settle>_<place>'],
    [
      0.2,
      `
        <chat>_<swap> <do>_<place> <far>_<do> <far>_<num> <kit>_<part> <kit>_<place> <more>_<num> <move>_<num>
        <move>_<place> <place>_<num> <settle>_<less> another_option anyon_who anyon_who_gone bend_the bend_your
        bend_your_kne both_feet child_pose come_back_to come_out do_it for_thos for_thos_with half_the hand_on
        hand_on_a if_that if_your if_your_breathles keep_the_back kne_on kne_on_the leav_the let_your level_one
        lie_on lie_on_your low_impact low_impact_peopl make_the make_the_paus no_jump option_a put_a should_that
        should_that_feel sit_on start_with step_back step_in stop_at stop_at_0 take_a that_a ther_is to_modif
        to_take to_take_the use_the we_call you_do you_do_not
      `,
    ],
    [-0.2, '<chat>_<not> <less>_<less> <take>_<part> do_not have_a sit_back that_is'],
  ],
  word: [
    [0.8, 'help if'],
    [0.6, 'bend just take'],
    [0.4, '0 a down kne march on or sit to use'],
    [
      0.2,
      `
        alternativ another any anyon arm ball band bed bit block breathles bridg by call chair child closer comf
        do ear empt far fast figur first foot for forearm gone ground had hamstring hand head higher impact is
        jump keep leav leg let level lever lighter littl lot love low modif modification month one option other
        paus pose practis pressur puff put rais rang rather same scal shorten simp smaller stay step stood stop
        tak that ther thigh think thos tilt toda toe together twist up version walk wall welcom well whil who
        work would wrong you
      `,
    ],
    [
      -0.2,
      `
        all and are as back be body breath can chest clos cushion dumbbell each easy elbow find five from front
        full further get go good got grip halfwa handl heav heel here hip i in into left long look lower mat
        minut much not noth over pull reach roll second see set shoulder spin straight swap thre through top
        towel what will
      `,
    ],
    [-0.4, 'your'],
  ],
} as const satisfies CueWeights
