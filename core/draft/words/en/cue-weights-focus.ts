/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind focus; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const FOCUS_WEIGHTS = {
  class: [
    [1, 'attend'],
    [0.6, 'part'],
    [0.2, 'pace'],
    [-0.2, 'kit more not num take wrong'],
    [-0.4, 'chat do harm less swap'],
    [-0.6, 'settle'],
  ],
  conditional: [[-0.4, 'yes']],
  early: [[-0.6, 'yes']],
  first: [
    [0.8, '<attend>'],
    [0.6, '<move>'],
    [0.4, '<part> pres the thi'],
    [
      0.2,
      `
        <pace> big both brac control dead each forget grow hello hip hold imagin it its knee lead light like long
        noth notic one only pretend rib run send shoulder soften spread squeez think weight wher you your
      `,
    ],
    [
      -0.2,
      `
        <air> <more> <not> <place> <settle> <swap> arm chin elbow leg lift make not open remember some switch
        take tall that thes
      `,
    ],
    [-0.4, '<do> if'],
  ],
  given: [[-0.2, '<attend> <part> feel that the your']],
  last: [
    [0.4, 'heel hip level long you'],
    [
      0.2,
      `
        away bel bird bow broad bum chest clock elbow end finger goe hamstring handl hing hundred inhal last leg
        loos middl move point sid slid spe squat still tall tight toe wait work
      `,
    ],
    [
      -0.2,
      `
        afterward all body breastbon breath help joint kne muscl open pelvi pleas stretch that ther think top up
        well wrist
      `,
    ],
  ],
  late: [[0.2, 'yes']],
  length: [
    [0.2, '3-4 5-7'],
    [-0.2, '1-2'],
    [-0.4, '8-12'],
  ],
  pair: [
    [0.6, 'the_<attend> the_<place>'],
    [
      0.4,
      `
        <move>_your both_sid from_the is_all is_just on_a rib_<place> the_back through_the wher_the your_<attend>
        your_arm your_chest
      `,
    ],
    [
      0.2,
      `
        <air>_button <attend>_a <attend>_as <attend>_both <attend>_com <attend>_from <attend>_go <attend>_ice
        <attend>_in <attend>_is <attend>_line <attend>_someon <attend>_to <attend>_you <chat>_end <chat>_go
        <chat>_hamstring <chat>_hang <chat>_wait <chat>_want <do>_tall <do>_through <far>_bird <far>_chest
        <far>_it <harm>_a <less>_bel <more>_from <more>_look <more>_one <move>_into <move>_tall <move>_that
        <move>_through <not>_a <not>_arm <not>_else <not>_spill <not>_the <num>_a <num>_at <pace>_do <pace>_is
        <pace>_the <part>_and <part>_are <part>_button <part>_down <part>_follow <part>_goe <part>_is <part>_last
        <part>_level <part>_lift <part>_loos <part>_not <part>_over <part>_point <part>_that <part>_widen
        <place>_a <place>_away <place>_both <place>_line <place>_look <place>_through <place>_toe <place>_your
        <settle>_from <settle>_it <take>_it a_<do> a_<far> a_<move> a_<settle> a_bowl a_coupl a_hing a_littl
        a_pint a_small a_squat a_time ahead_of and_lift and_the and_your arm_and as_<attend> as_a at_a away_from
        balanc_a be_<attend> behind_<chat> behind_you bel_button big_<part> big_chest body_goe br_your breath_and
        chest_<more> chest_lift chest_up collarbon_<attend> collarbon_broad control_the coupl_of dead_<far>
        dead_<more> dead_<place> dead_level dont_<attend> down_and else_<attend> else_mov end_<more> end_<place>
        end_up eye_<chat> eye_<settle> eye_go feel_that feel_the feel_thi floor_with for_the forget_the
        from_<part> ghost_yourself hand_<move> hang_off head_<chat> head_last heav_<attend> hello_<attend>
        hello_<part> hello_hamstring hip_not hip_squar hip_that hold_a hold_it ice_it if_you in_<air> in_breath
        in_the in_your is_in is_the it_<chat> it_<far> it_let it_melt it_out it_should its_<attend> its_<not>
        its_like its_not jaw_loos keep_your kne_over lead_from let_<chat> let_<settle> let_go let_your lift_on
        like_<harm> like_ice line_from look_at melt_<attend> melt_if metr_ahead next_<num> next_one not_a
        not_spill not_the noth_else of_<chat> of_metr of_you one_<place> one_a one_at only_the over_<harm>
        over_<part> over_toe pelvi_is pelvic_floor pint_<place> pint_on point_wher pres_<place> pres_through
        push_the right_into run_<attend> run_tall send_the should_<attend> should_be should_feel shoulder_<far>
        shoulder_<more> shoulder_<place> shoulder_level side_of slid_<place> small_bird soften_on someon_is
        spill_it spread_the squeez_your stay_<attend> straight_<attend> straight_<settle> straight_line
        stretch_<place> tension_<place> that_<part> that_move the_<pace> the_body the_breath the_clock the_corner
        the_effort the_elbow the_end the_eye the_front the_ground the_handl the_head the_hip the_in the_leg
        the_middl the_next the_out the_power the_second the_slid the_toe thi_<chat> thi_<num> thi_is thi_one
        through_both tight_<air> tight_<part> tight_bel to_<attend> to_<part> to_<wrong> to_feel to_heel toe_and
        try_to up_from up_look will_<attend> will_feel with_ever with_your work_the wr_it you_<chat> you_end
        you_wait you_want your_<place> your_<take> your_back your_bum your_jaw your_pelvi your_pelvic
        yourself_<more> yourself_<place> yourself_up
      `,
    ],
    [
      -0.2,
      `
        <attend>_and <attend>_feet <attend>_has <attend>_one <attend>_out <attend>_over <attend>_well <chat>_all
        <chat>_can <chat>_the <chat>_think <do>_back <do>_it <do>_the <far>_back <less>_back <less>_your
        <move>_back <move>_it <move>_out <move>_the <part>_flexor <part>_into <part>_like <part>_out <part>_stay
        <part>_still <part>_to <part>_under <place>_as <place>_front <place>_into <place>_like <place>_of
        <place>_over <place>_to <settle>_the <take>_the a_<more> a_<part> a_bit a_hip a_lot arm_<attend>
        arm_<place> as_<chat> as_the as_well as_you at_<chat> bel_<place> chin_<place> come_<place> eye_on
        feel_<attend> feel_like floor_<place> floor_just hand_<place> has_<num> hip_<attend> hip_flexor hip_still
        if_the if_your in_front it_<do> it_<more> it_<place> just_<place> just_in keep_it kne_<attend> kne_soft
        last_<num> last_one leg_<place> let_the lift_the like_a lower_<part> lower_<place> move_<far> not_<place>
        of_the of_your one_<part> other_<part> out_<attend> over_the quiet_<part> quiet_<take> quiet_feet
        soft_<part> stay_<place> step_<place> than_<chat> than_you that_<attend> that_is the_<air> the_<kit>
        the_air the_bridg the_chest the_kne the_last the_other the_same the_shoulder the_way when_<chat> when_you
        with_the you_<attend> you_<move> you_<settle> you_<swap> you_all you_can you_think your_<far> your_<harm>
        your_<move> your_finger your_hip your_toe
      `,
    ],
    [-0.4, '<part>_has <part>_on on_the'],
  ],
  phrase: [
    [1.8, 'focus-sure'],
    [0.6, 'focus-likely'],
    [0.4, 'range-hint'],
    [0.2, 'execution-likely execution-sure focus-hint tempo-hint'],
    [
      -0.2,
      `
        caution-likely easier-sure empty_clauses equipment-hint equipment-sure fault-likely harder-sure
        range-likely range-sure setup-likely tempo-sure
      `,
    ],
    [-0.4, 'caution-sure chat easier-hint setup-hint'],
    [-0.6, 'setup-sure'],
  ],
  start: [
    [0.4, '<attend>_<attend> <move>_<attend> <part>_<place>'],
    [
      0.2,
      `
        <chat>_<pace> <chat>_<part> <do>_<attend> <far>_<part> <less>_<air> <less>_<part> <part>_<more> as_if
        as_if_you big_chest both_sid br_your chest_lift control_the control_the_middl each_one hello_hamstring
        hip_squar hold_it it_is_the its_like its_like_ice its_not its_not_a keep_the_back keep_the_pelvi
        keep_your let_your let_your_pelvic like_a not_the_back noth_else noth_else_mov pres_down pres_through
        push_the run_tall send_the spread_the spread_the_floor squeez_your squeez_your_bum the_arm the_knee
        the_next the_next_one thi_is thi_one try_to we_are weight_in wher_the wher_the_eye you_end you_end_up
        you_want you_want_to you_will_feel
      `,
    ],
    [
      -0.2,
      `
        <air>_<attend> <air>_<place> <attend>_<more> <attend>_<part> <part>_<attend> <place>_<part>
        <settle>_<place> eye_on eye_on_the if_your keep_it kne_soft let_the look_at you_are
      `,
    ],
  ],
  word: [
    [0.6, 'through'],
    [0.4, 'abs along away both chest else end even is just pres the tight toe wher'],
    [
      0.2,
      `
        a ahead all are bel between big bird bow bowl brac broad bum button clock collarbon control corner coupl
        dead effort ever everyth feel finger follow forget from ghost goe ground grow hamstring handl hang head
        heav hello hing hip hook hundred ice imagin inhal into its jaw lead level lift light line littl long look
        melt metr middl mov next noth notic of one only over pelvic pint point pull relax rib run second send
        should shoulder sid side slid small soften someon spe spill squeez stand tall ten tension thi thigh till
        track wait widen wr your
      `,
    ],
    [
      -0.2,
      `
        afterward air an and at bar bend bit breastbon bridg by can come down draw drop feet first flexor for
        four hand have help hit i it joint knee kneel leg longer lot lower make mild muscl natural near neck on
        onto open or other out paus peopl pleas pressur quiet same short sit soft some stay step still stop
        stretch support take that them ther thes to top two under walk way well what when width with wrist
      `,
    ],
    [-0.4, 'has if kne remember'],
  ],
} as const satisfies CueWeights
