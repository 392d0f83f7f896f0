/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind caution; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const CAUTION_WEIGHTS = {
  bias: [[0.2, 'yes']],
  class: [
    [1.6, 'harm'],
    [0.4, 'ill'],
    [0.2, 'attend carer less move not settle'],
    [-0.2, 'air chat more'],
    [-0.4, 'num'],
  ],
  conditional: [[0.2, 'yes']],
  first: [
    [0.4, 'never'],
    [
      0.2,
      `
        <harm> <ill> <move> abov ask be bend check contraction discomfort do drink ease feet give have i kne leav
        look lower make one or post rise roll safet shuffl skip stand stay thos walk watch
      `,
    ],
    [
      -0.2,
      `
        <attend> <far> <kit> <less> <more> <pace> <settle> <swap> balanc heel no push slip take we
      `,
    ],
    [-0.4, '<chat> <part> you'],
  ],
  given: [
    [0.2, '<less> <more> <not> <num> <place> back been do down easy goe or round take'],
    [-0.2, '<do> <kit> <move> are is too'],
  ],
  last: [
    [0.4, 'on'],
    [
      0.2,
      `
        badg bar belt down easy first foot goe gradual high higher hot joint kne kneecap kneel land lock march
        mov neck normal off okay overhead pleas read sag snap someth spin stand still stretch suffer that thi tim
        twist walk wrist you
      `,
    ],
    [-0.2, 'arm balanc hold in mat one rest shoulder side sit strok them toe'],
  ],
  late: [[0.2, 'yes']],
  length: [
    [0.2, '5-7 8-12 long'],
    [-0.2, '1-2'],
    [-0.4, '3-4'],
  ],
  pair: [
    [
      0.4,
      `
        <chat>_land <kit>_down <settle>_up get_<place> on_it stay_<place> the_<kit> you_<move> you_land
      `,
    ],
    [
      0.2,
      `
        <air>_normal <attend>_after <attend>_and <attend>_feet <attend>_here <attend>_out <attend>_when
        <attend>_you <chat>_all <chat>_didnt <chat>_feel <chat>_in <chat>_is <chat>_need <chat>_put <chat>_real
        <chat>_stay <chat>_take <do>_back <do>_down <do>_gradual <do>_into <do>_it <do>_off <do>_on <do>_to
        <do>_wher <far>_back <far>_bone <far>_it <far>_the <harm>_at <harm>_first <harm>_is <harm>_leav <harm>_on
        <harm>_one <harm>_pleas <harm>_to <ill>_is <kit>_are <less>_into <less>_it <less>_on <less>_with
        <less>_you <more>_with <move>_clos <move>_gradual <move>_into <move>_it <move>_off <move>_on <move>_stand
        <move>_sure <move>_to <not>_about <not>_and <not>_cros <not>_dog <not>_hunt <not>_jump <not>_kid
        <not>_overhead <not>_round <not>_twist <not>_want <not>_you <num>_elbow <num>_knee <num>_week <pace>_with
        <part>_as <part>_away <part>_first <part>_joint <part>_not <part>_soft <part>_suffer <place>_back
        <place>_forearm <place>_if <place>_it <place>_on <place>_someth <place>_that <place>_the <settle>_a
        <settle>_been <settle>_down <settle>_heav <settle>_real <settle>_someth <swap>_are <swap>_dog <swap>_grab
        <swap>_if <swap>_it <swap>_kid <swap>_not <swap>_round <swap>_snap <swap>_thi <swap>_twist <take>_away
        <take>_down <take>_someth <take>_the <take>_up <wrong>_and a_<part> a_badg a_dull a_hip a_moment a_round
        a_stretch about_<num> about_how about_twent abov_that abov_the ache_is achill_will after_your and_<move>
        and_chest and_get and_lift and_no and_push and_slow and_still are_<far> are_<wrong> are_higher arent_a
        around_<chat> around_you at_all avoid_hold away_from back_<attend> back_if be_<less> be_<pace>
        befor_<chat> befor_you blood_<harm> blood_pressur bone_densit bounc_<place> breath_normal bruis_<not>
        bruis_arent by_the can_<settle> can_<take> chair_<place> check_the chest_are clos_to come_<do>
        come_<less> come_<more> come_<move> come_<place> come_lower come_up cros_the discomfort_is do_<do>
        do_<harm> do_<move> do_<not> do_not do_snap dont_hunt dont_twist dont_want down_<attend> drop_into
        drop_it dull_<harm> dull_<ill> dull_ache ease_<part> ease_<place> ease_back feel_<ill> feel_<less>
        feet_<far> feet_away floor_<swap> floor_is floor_us for_<attend> for_<place> for_long forearm_and
        from_<place> from_about from_the from_under get_<harm> get_<more> get_down get_up give_yourself
        go_<attend> go_real grab_someth hand_on have_a have_been head_<place> head_and hear_<chat> hear_you
        hip_<attend> hip_<do> hip_joint hold_<place> hold_on hold_the hold_thi how_<far> how_high how_peopl
        hunt_for i_<less> if_your in_the into_a is_<harm> is_<less> is_hot is_how is_okay isnt_about it_<attend>
        it_<pace> it_down it_goe it_if it_isnt it_long it_mov its_a its_from just_abov keep_your kne_<attend>
        kne_<not> kne_as knee_<attend> knee_<chat> knee_first leav_thi lighten_off long_and look_<place>
        look_after low_<part> low_<place> low_back low_bone lower_it make_sure mind_your moment_befor natal_ladi
        never_<do> no_<wrong> no_dog no_kid no_round no_twist not_<do> not_<move> not_<settle> not_<take>
        not_cros not_jump not_on not_overhead of_them off_<attend> off_if on_forearm on_someth on_your one_<part>
        one_elbow one_hand one_knee or_<chat> or_<settle> or_a or_you or_your out_for pain_is peopl_<harm>
        post_natal pressur_<place> pull_<place> pull_on push_with put_a quiet_<part> quiet_<take> quiet_feet
        rather_<chat> rather_you real_deep rise_<pace> rise_gradual roll_<place> roll_on round_<place> round_and
        safet_<chat> safet_first shin_suffer shoulder_are side_and sit_down someth_<harm> someth_<more>
        someth_<pace> someth_stead spot_<chat> spot_you stay_stand step_<place> step_down still_for stop_and
        sure_your tear_a the_<harm> the_belt the_biggest the_chair the_joint the_kneecap the_neck the_rail
        the_room the_wall the_weight them_would thi_<attend> thi_<num> thi_one thi_still third_<harm>
        third_trimester thos_with to_<chat> to_<settle> to_go too_<pace> twent_week under_the until_the up_<less>
        us_the use_it wall_ther watch_your week_<place> week_on week_some weight_<place> wher_<chat> wher_you
        will_<chat> will_<harm> will_thank with_<far> with_<part> with_low with_weight with_your work_<attend>
        work_if you_<settle> you_<take> you_all you_didnt you_feel you_put you_will your_<carer> your_<far>
        your_<place> your_achill your_back your_foot your_hand your_head your_joint your_kne your_low your_neck
        your_shin your_strap your_surgeon your_third your_wrist yourself_a
      `,
    ],
    [
      -0.2,
      `
        <air>_on <attend>_a <chat>_can <chat>_it <chat>_want <chat>_would <do>_forward <do>_if <do>_the <do>_your
        <kit>_if <less>_to <less>_your <more>_ther <move>_forward <move>_if <move>_your <not>_let <not>_wor
        <part>_to <part>_up <place>_a <place>_as <place>_onto <place>_your <settle>_back <settle>_it <settle>_on
        <settle>_to <settle>_with <take>_it <take>_your a_<far> a_<ill> a_<kit> a_<move> a_<pace> a_<swap>
        are_<harm> are_<ill> at_the balanc_is both_<part> breath_<place> can_<move> drop_your get_your hold_it
        into_your is_a is_too it_<far> it_<part> it_<place> it_back just_<kit> just_step kne_<place> kne_are
        lean_<place> let_it like_a not_<wrong> not_a not_wor on_the the_<chat> the_<pace> the_<place>
        the_<settle> the_<take> the_back the_mat the_top to_<move> up_ther with_the you_want you_would
        your_<attend> your_<harm> your_<ill> your_<take> your_arm your_balanc your_elbow your_feet your_heel
        your_knee your_toe
      `,
    ],
    [-0.4, '<settle>_your'],
  ],
  phrase: [
    [2, 'caution-sure'],
    [0.6, 'caution-hint fault-likely'],
    [
      0.2,
      `
        caution-likely easier-hint easier-sure fault-hint focus-likely range-hint setup-sure
      `,
    ],
    [
      -0.2,
      `
        breathing-likely breathing-sure dose_only empty_clauses equipment-likely equipment-sure execution-likely
        focus-hint focus-sure harder-sure praise purpose range-likely range-sure tempo-sure
      `,
    ],
    [-0.4, 'execution-sure'],
  ],
  start: [
    [0.4, '<settle>_<far>'],
    [
      0.2,
      `
        <attend>_<part> <chat>_<less> <do>_<far> <do>_<pace> <move>_<do> <move>_<far> <move>_<pace> <not>_<do>
        <not>_<move> <num>_<part> <part>_<not> <settle>_<do> <settle>_<more> <settle>_<move> <take>_<far> a_dull
        a_dull_ache bend_the bend_the_kne bend_your bend_your_kne check_the come_up discomfort_is
        discomfort_is_okay do_not_jump dont_hunt dont_hunt_for from_about from_about_twent get_down get_down_on
        give_yourself hand_on have_a hold_the hold_the_chair if_you_go in_your in_your_third its_a its_from
        its_from_the keep_it_mov keep_your leav_the look_after look_after_your lower_it lower_it_down make_sure
        make_sure_your one_hand one_knee post_natal post_natal_ladi rise_gradual safet_first stay_stand stop_and
        that_is_how the_weight thos_with thos_with_low to_get to_get_up watch_your
      `,
    ],
    [
      -0.2,
      `
        <chat>_<chat> <chat>_<swap> <do>_<place> <not>_<chat> <part>_<place> do_not_wor watch_your_elbow
      `,
    ],
  ],
  word: [
    [
      0.4,
      `
        abov and befor joint leav never on or overhead someth stand stretch thi you your
      `,
    ],
    [
      0.2,
      `
        ache achill after alon arent ask badg been bend biggest blood bone bounc bruis chair check clos collar
        come contraction crank densit didnt discomfort down drink dull ease easy feel first forearm from gentl
        get give goe grab gradual hap have head here higher hold hot hover how hunt hurt ill isnt its kid kind
        kne knee kneecap kneel ladi land lighten lock low lower march mine moment natal neck normal off okay one
        pay peopl pin pleas post pressur put quiet rail read rise room root round safet sav sharp shin shoulder
        shuffl skip slow so soft someon spot still straight strain suffer sure surgeon tear third thos till tim
        too trimester twent twist until walk wall week weight wet will with wrist
      `,
    ],
    [
      -0.2,
      `
        0 a again an arc as ball body both can com each ear elbow fall forward free full gone grip guard insid it
        just lean leg let lift mat me no now only onto other out point rest right rock slip squat start step
        strok support take ther thes thigh through top try tuck two way we without wor
      `,
    ],
    [-0.4, 'arm heel like the to toe'],
    [-0.6, 'balanc'],
  ],
} as const satisfies CueWeights
