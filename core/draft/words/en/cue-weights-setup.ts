/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind setup; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const SETUP_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [1, 'place'],
    [0.6, 'part'],
    [0.4, 'num'],
    [0.2, 'far ill kit settle take'],
    [-0.2, 'air attend chat less swap wrong'],
    [-0.4, 'more not pace'],
    [-0.6, 'do'],
  ],
  conditional: [[-0.4, 'yes']],
  early: [[1, 'yes']],
  first: [
    [0.6, '<part> <settle>'],
    [0.4, '<chat> <do> half set tall wider'],
    [
      0.2,
      `
        <far> <move> <num> <take> arm bar big cros elbow feet find finger from guard hang hug knuckl left leg lie
        like load not one or palm plank roll sho shuffl soft squeez stagger start sw that toe tuck turn wrap your
      `,
    ],
    [-0.2, '<air> <more> <pace> a come get handl it keep push stay take the up'],
    [-0.4, 'hold put'],
  ],
  given: [
    [0.2, 'from look other side'],
    [-0.2, '<part> <place>'],
  ],
  last: [
    [0.4, 'front kneel plank tall'],
    [
      0.2,
      `
        book bum bump camera dog feet fift finger fram gent ground heav is it kne knee mat neck other rock room
        seat shoulder sid side sit sofa split squar stanc ten top touch triangl wall well wide width wrist
      `,
    ],
    [
      -0.2,
      `
        arm back ball body box breath down ear face first foot go heel high in leg level off only pleas tim toe
      `,
    ],
    [-0.4, 'bar'],
  ],
  late: [[-1.2, 'yes']],
  length: [
    [0.2, '1-2 8-12'],
    [-0.2, '5-7'],
  ],
  pair: [
    [
      0.4,
      `
        <chat>_us <kit>_and <kit>_with <part>_hang <part>_under <place>_front <place>_our <place>_the
        <settle>_the and_<settle> arm_hang from_it let_us set_the toe_<place> us_come your_<kit>
      `,
    ],
    [
      0.2,
      `
        <air>_on <attend>_fift <attend>_kneel <attend>_ten <attend>_well <chat>_are <chat>_hand <chat>_is
        <chat>_kneel <chat>_look <chat>_the <chat>_would <do>_a <do>_from <do>_sideway <far>_back <far>_of
        <far>_than <far>_youv <harm>_to <harm>_under <kit>_at <kit>_between <kit>_fift <kit>_so <kit>_your
        <less>_sit <more>_for <more>_hand <more>_to <move>_a <move>_sideway <move>_the <not>_a <not>_lean
        <not>_on <not>_out <num>_foot <num>_hand <num>_sit <num>_to <part>_a <part>_and <part>_behind <part>_by
        <part>_fac <part>_fift <part>_forward <part>_height <part>_hold <part>_in <part>_length <part>_make
        <part>_point <part>_rest <part>_so <part>_stay <part>_straight <part>_turn <part>_up <part>_want
        <part>_wide <part>_width <part>_with <place>_abov <place>_at <place>_each <place>_for <place>_forward
        <place>_kne <place>_like <place>_onto <place>_shoulder <place>_so <place>_than <place>_to <place>_top
        <place>_until <place>_you <settle>_seat <settle>_your <settle>_yourself <swap>_and <swap>_tied
        <take>_flat <take>_seat <take>_the <take>_yourself <wrong>_on a_<far> a_<swap> a_cushion a_foot a_mat
        a_touch a_triangl about_<far> about_an about_ninet against_the all_four an_<part> an_arm and_<take>
        and_open and_someth and_spread and_take and_the and_your ankl_and are_go are_on arm_<place> arm_length
        arm_out as_well at_about at_chest back_<attend> back_as back_with balanc_is ball_between band_<more>
        be_<place> behind_the bel_<place> between_your by_your chair_<part> chest_<far> chest_height chest_on
        come_<more> come_up cros_the cushion_and down_<far> down_onto down_to down_until downward_dog each_<part>
        each_hand edge_of elbow_<place> fac_<place> fac_forward face_<place> find_your finger_<place>
        finger_forward foot_<place> foot_behind for_ten from_downward from_the guard_<more> guard_<place>
        guard_up half_sit hand_and hand_hold hand_rest hang_<place> hang_down head_make heel_<more> heel_<place>
        heel_a heel_up hip_<place> hip_over i_would in_<harm> in_<pace> in_each in_front into_a is_all it_under
        knee_<place> knee_down knuckl_<place> knuckl_fac left_<part> left_hand leg_<attend> leg_<move>
        leg_<place> leg_behind leg_in leg_stay length_from lie_<part> lie_<place> lie_back like_<chat> like_<num>
        like_ten like_you look_from make_a mat_is not_<place> not_a not_lean not_on not_out of_the on_our on_the
        on_top one_<part> one_foot one_hand onto_our open_the or_the or_your other_<place> other_on our_back
        over_the over_wrist reach_<place> rear_<part> rear_heel rest_<place> rest_on right_<part> roll_<place>
        roll_over sat_<attend> sat_tall sho_tied shoulder_<place> shoulder_over shoulder_width sideway_<place>
        sideway_on sleev_roll slid_the so_it so_that soft_<part> someth_<chat> someth_you spread_the squeez_the
        stagger_your start_<place> start_seat stay_down stead_to sure_the sw_your tall_kneel ten_to than_the
        that_is that_your the_<harm> the_<ill> the_<kit> the_<swap> the_camera the_door the_edge the_finger
        the_ground the_kne the_other the_pad the_sofa the_split the_step the_toe the_wall thumb_<place> to_be
        to_hold to_stand to_two turn_<place> turn_out turn_sideway under_<part> until_youv up_<place> up_for
        us_<settle> walk_it we_will weight_<num> weight_fift wide_for wider_than will_<less> will_<settle>
        will_<take> will_need would_<attend> would_like you_are you_kneel your_<move> your_<place> your_<swap>
        your_back your_balanc your_book your_bum your_chair your_front your_leg your_look your_palm your_right
        your_tripod yourself_<place> youv_rock
      `,
    ],
    [
      -0.2,
      `
        <attend>_on <attend>_the <attend>_to <attend>_you <chat>_go <do>_in <do>_on <do>_out <far>_the <kit>_com
        <kit>_down <kit>_if <kit>_out <more>_the <move>_it <move>_on <move>_with <part>_are <part>_away
        <part>_back <part>_down <part>_flat <part>_level <part>_only <place>_all <place>_and <place>_of
        <place>_toe <settle>_out <swap>_not <swap>_the <swap>_under <take>_away <take>_out a_<do> a_box
        and_<chat> as_you at_all at_the back_<place> chest_forward chest_to com_<place> com_in do_<not> do_not
        feet_<place> feet_away feet_on from_<place> from_under hand_on hold_the if_you in_<place> in_your is_a
        it_<do> kne_and kne_over knee_on kneel_<more> kneel_up leg_flat let_<chat> let_the lie_on on_a
        over_<harm> over_toe put_the put_your sit_<place> sit_on step_<place> take_the the_<attend> the_<place>
        the_arm the_bar the_foot the_length the_rail the_top the_way the_weight to_<do> to_your tuck_your up_the
        walk_your way_<place> weight_<place> your_<attend> your_<more> your_<part> your_arm your_chest your_face
        your_hand your_head your_hip your_kne your_toe
      `,
    ],
    [-0.4, '<part>_to'],
  ],
  phrase: [
    [1, 'setup-sure'],
    [0.6, 'equipment-likely setup-hint setup-likely'],
    [0.2, 'chat equipment-hint focus-hint tempo-hint'],
    [
      -0.2,
      `
        breathing-likely breathing-sure dose_only easier-sure empty_clauses equipment-sure execution-hint
        focus-sure harder-sure praise range-hint range-sure tempo-likely transitions
      `,
    ],
    [-0.4, 'execution-likely'],
  ],
  start: [
    [0.6, '<part>_<place>'],
    [0.4, 'let_us let_us_come set_the'],
    [
      0.2,
      `
        <attend>_<num> <attend>_<part> <chat>_<part> <far>_<place> <kit>_<num> <more>_<part> <not>_<place>
        <num>_<part> <part>_<attend> <part>_<move> <place>_<part> <swap>_<place> <take>_<attend> <take>_<part>
        arm_hang chest_on chest_on_the find_your find_your_tripod from_downward from_downward_dog guard_up
        hand_on_the i_would i_would_like if_your_look knuckl_fac knuckl_fac_forward lie_back lie_flat
        make_sure_the not_a not_on not_out one_foot one_hand or_the or_your roll_over sho_tied shoulder_over
        shoulder_over_wrist slid_the squeez_the stagger_your stagger_your_feet start_seat tall_kneel that_is
        that_your the_other turn_sideway turn_sideway_on walk_it we_will wider_than you_are you_are_go
        you_will_need your_back
      `,
    ],
    [
      -0.2,
      `
        <attend>_<place> <chat>_<swap> <place>_<num> <settle>_<more> chest_forward come_down hand_on hold_the
        kneel_up leg_flat let_the lie_on lie_on_your put_the put_your take_the tuck_your walk_your_feet
      `,
    ],
    [-0.4, '<part>_<more> <settle>_<place>'],
  ],
  word: [
    [0.6, 'tall'],
    [
      0.4,
      `
        behind between from front half kneel other our palm plank plant set so turn wide wider your
      `,
    ],
    [
      0.2,
      `
        about abov against an and ankl baby balanc be begin bent big blanket bon book bum bump camera cros
        cushion dog door downward dumbbell each edge elbow fac face feet fift find finger fist foot forward fram
        gent grip ground guard hand hang heav height hip hook hug kne knee knuckl left leg length lie like ly
        make manag mat mine ninet not onto open pad point rear ring rock roll room sat seat sho shoulder show
        shuffl sid side sideway sit sleev sofa someth split spread squeez stagger stanc stand start sw ten than
        that tied toe touch triangl tripod tuck under us width with would wrap wrist yourself youv
      `,
    ],
    [
      -0.2,
      `
        back body box breath chest com down drop ear even eye feel first floor full get go handl have head here
        high higher hold hover if it just leav level lift mov no off only out pleas pull push rail second shak
        short small some stay take tap them ther thi thigh through tim time too toward use way weight wher
      `,
    ],
    [-0.4, 'do keep put the'],
  ],
} as const satisfies CueWeights
