/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind range; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const RANGE_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [1.8, 'far'],
    [0.2, 'not'],
    [-0.2, 'air attend do harm kit num part swap take'],
    [-0.6, 'pace'],
  ],
  early: [[-0.2, 'yes']],
  first: [
    [
      0.2,
      `
        <kit> <not> <part> <place> <wrong> about abov aim chest come finger full get go half halfwa handl high
        how it keep lift make mayb no not only pleas shin stay stop straighten stretch that thigh up
      `,
    ],
    [
      -0.2,
      `
        <attend> <pace> <settle> <take> big do dont hand hold if kne leg or sit we you your
      `,
    ],
    [-0.4, '<do>'],
  ],
  given: [[-0.2, '<far> <part> the']],
  last: [
    [0.4, 'here pleas'],
    [
      0.2,
      `
        all bar bottom box can clos ear flat floor hold kne knee level mat oclock rib shin smaller squeez
        straight stretch top whisker width zip
      `,
    ],
    [-0.2, 'arm bel collarbon leg one out up'],
  ],
  length: [
    [0.2, '8-12'],
    [-0.2, '1-2 3-4'],
  ],
  pair: [
    [
      0.4,
      `
        <chat>_here <far>_as <num>_rep <part>_to chest_to come_right half_<chat> it_<place> right_<place>
        the_<do> the_<part> the_arm
      `,
    ],
    [
      0.2,
      `
        <air>_button <attend>_far <attend>_line <chat>_can <chat>_could <chat>_dont <chat>_feel <chat>_is
        <chat>_to <chat>_you <do>_for <do>_until <do>_you <far>_and <far>_degre <far>_if <far>_is <far>_of
        <far>_or <far>_squeez <far>_stretch <far>_than <far>_to <far>_with <far>_you <kit>_goe <less>_high
        <more>_by <more>_if <more>_the <move>_for <move>_it <move>_you <not>_bang <not>_down <not>_ear <not>_go
        <not>_interest <not>_lower <num>_degre <num>_oclock <num>_with <part>_button <part>_come <part>_do
        <part>_has <part>_reach <part>_width <place>_a <place>_all <place>_at <place>_by <place>_has <place>_line
        <place>_of <place>_the <settle>_behind <settle>_right <settle>_to <settle>_your <take>_your <wrong>_it
        a_<harm> a_<ill> a_<part> a_straight a_whisker about_a about_sixt aim_for all_the and_<not> and_<num>
        and_stop arm_<far> as_<chat> as_<far> as_<place> as_far as_you at_the back_has bang_it behind_the
        bel_button between_<num> biggest_<do> brush_the by_the circl_<far> could_<swap> could_do doesnt_bang
        down_<far> down_at each_<num> each_one eye_<place> far_<attend> far_as finger_<far> floor_just for_a
        full_<attend> full_<do> full_<move> full_squeez full_stretch get_your go_<far> go_<place> goe_<more>
        goe_<place> has_to heel_<chat> how_far is_<far> is_<less> it_<do> it_<less> it_<move> it_off it_out
        it_smaller just_<place> keep_it kiss_the knee_<far> knee_to let_the let_you lift_it long_<part>
        low_<attend> low_as lower_<far> make_the mid_<part> more_the need_to ninet_<far> ninet_degre no_<far>
        no_<more> not_<chat> not_<less> not_<settle> not_down not_go not_interest of_<far> of_what of_your
        off_the out_at over_the pull_and right_<more> right_down sixt_percent stay_<far> stop_ear
        straight_<settle> straight_line straighten_the stretch_<far> the_bar the_biggest the_box the_circl
        the_floor the_hand the_kne the_knee the_mat the_more the_movement the_point the_rib the_stretch the_top
        the_width the_zip to_<take> to_about to_floor to_hold to_squat to_your too_<far> under_the up_<place>
        way_<more> way_<place> way_down way_up weight_<settle> what_<chat> what_you when_the width_of with_the
        you_<attend> you_<swap> you_can you_could you_feel your_<more> your_bottom your_chest your_hip your_sid
      `,
    ],
    [
      -0.2,
      `
        <chat>_are <chat>_it <chat>_us <do>_the <do>_with <do>_your <far>_it <far>_the <move>_down <move>_your
        <not>_stop <not>_the <part>_and <part>_on <place>_on <place>_your <settle>_a <settle>_it <settle>_the
        <swap>_it <take>_it <take>_the a_<do> a_<far> a_bit and_<far> arm_<place> at_about back_to be_<place>
        down_<place> for_the from_the hold_it if_<chat> if_you in_the it_<chat> it_<more> it_<not> it_is it_up
        let_it let_us not_<not> not_stop on_to only_the opposit_<part> take_the the_<harm> the_<swap>
        the_collarbon the_cone to_<chat> want_to with_your you_<less> you_are your_<harm>
      `,
    ],
  ],
  phrase: [
    [1.8, 'range-sure'],
    [0.6, 'range-likely'],
    [0.4, 'execution-likely'],
    [0.2, 'dose_only execution-hint focus-likely harder-likely setup-hint'],
    [
      -0.2,
      `
        breathing-sure chat easier-likely easier-sure empty_clauses equipment-hint equipment-likely
        equipment-sure fault-likely fault-sure focus-sure harder-sure praise setup-likely setup-sure tempo-likely
      `,
    ],
  ],
  start: [
    [0.4, '<less>_<chat> <num>_<chat>'],
    [
      0.2,
      `
        <attend>_<far> <chat>_<far> <chat>_<more> <chat>_<not> <do>_<far> <far>_<attend> <far>_<do> <far>_<far>
        <more>_<place> <move>_<far> <not>_<less> <not>_<more> <part>_<chat> <part>_<do> <part>_<far>
        <part>_<settle> <place>_<num> <place>_<part> <place>_<place> <swap>_<more> abov_the aim_for aim_for_a
        chest_to chest_to_floor full_stretch get_your how_far keep_it keep_the let_the lift_it lift_it_off
        make_it make_the make_the_circl no_more straighten_the straighten_the_arm take_it
      `,
    ],
    [
      -0.2,
      `
        <do>_<place> <move>_<place> <part>_<place> <settle>_<place> <swap>_<not> do_not do_not_stop let_us
      `,
    ],
  ],
  word: [
    [0.6, 'insid stay the'],
    [0.4, 'all brush chest far floor here no pleas right shin short stretch strid to width'],
    [
      0.2,
      `
        about aim almost arc as bang bar between biggest box can circl clos come comfortabl complete could deeper
        degre doesnt each end enough finger finish flat free get go half halfwa hand handl high how interest just
        keep knee lift line lock make mat mayb mid mild more movement nine not oclock of only pain past rang rep
        rib sixt smaller squeez stop straight straighten tiny top twelv when whisker your zip
      `,
    ],
    [
      -0.2,
      `
        0 and are at back bend bent big bit breath clean collarbon com cone dead elbow feet forward from head if
        into is isnt last leg like littl look mov move one opposit other out push room round same side sit still
        take them thi through toe touch two us we wider
      `,
    ],
    [-0.4, 'in on'],
  ],
} as const satisfies CueWeights
