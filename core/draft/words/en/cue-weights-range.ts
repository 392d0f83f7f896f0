/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind range; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const RANGE_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [1.2, 'far'],
    [0.4, 'not'],
    [0.2, 'less settle'],
    [-0.2, 'air attend chat do kit more move part swap'],
    [-0.4, 'harm num take'],
    [-0.8, 'pace'],
  ],
  first: [
    [0.6, '<part>'],
    [0.4, '<kit> all go it stop up'],
    [
      0.2,
      `
        <far> <not> <wrong> a about abov aim arm as bar between box bum clear either elbow finish full get half
        halfwa handl heel hip honest how keep knee lift lock make mayb no nobody nose not only reach shin shirt
        start stay step straighten stretch strid that they thigh to
      `,
    ],
    [
      -0.2,
      `
        <chat> <harm> <less> <move> <num> <pace> <swap> <take> big both do dont hold kne near one out push ring
        sit take the ther touch we you
      `,
    ],
    [-0.4, '<do>'],
  ],
  given: [
    [0.2, '<not> <settle> go gone hand have heal lift straight wont'],
    [-0.2, '<do> <far> <kit> <more> <part> a its the to'],
  ],
  last: [
    [0.6, 'plent'],
    [0.4, 'hand straight tiny top'],
    [
      0.2,
      `
        all and angl armpit bottom box can centimetr clos clover curb drift ear fine finish flat floor gras grow
        half here high higher honest level liv lock long meaner measur more most oclock pain pleas pretend pull
        ring shar shin shoe shout small smaller squat squeez stretch t ther through tight too tre tug under up
        uphill version whisker width wont zip
      `,
    ],
    [
      -0.2,
      `
        0 arm away back bel bit collarbon down first foot forward heel it leg neck one out past side that thigh
        toe well
      `,
    ],
  ],
  length: [
    [-0.2, '5-7'],
    [-0.4, '3-4'],
    [-0.6, '1-2'],
  ],
  pair: [
    [
      0.4,
      `
        <far>_as <part>_to a_<harm> a_<ill> a_foot a_pain a_whisker all_the brush_the chest_to it_<move>
        it_doesnt its_a just_<place> no_<far> not_<chat> right_<place> that_<less> the_<part> the_arm the_knee
        they_<not> your_ear
      `,
    ],
    [
      0.2,
      `
        <air>_when <attend>_be <attend>_centimetr <attend>_come <attend>_far <attend>_from <attend>_line
        <attend>_tall <attend>_that <attend>_they <attend>_theyll <attend>_with <chat>_about <chat>_after
        <chat>_as <chat>_behind <chat>_book <chat>_can <chat>_could <chat>_dead <chat>_do <chat>_dont <chat>_have
        <chat>_here <chat>_is <chat>_polit <chat>_to <chat>_you <do>_about <do>_away <do>_back <do>_meaner
        <do>_until <do>_you <far>_and <far>_at <far>_degre <far>_enough <far>_if <far>_is <far>_its <far>_or
        <far>_squeez <far>_stretch <far>_than <far>_to <far>_tonight <far>_version <far>_want <far>_will
        <far>_with <far>_you <far>_your <harm>_letter <ill>_letter <kit>_about <kit>_over <kit>_tap <less>_high
        <more>_by <more>_if <move>_away <move>_back <move>_it <move>_off <move>_them <move>_you <not>_bang
        <not>_down <not>_go <not>_half <not>_have <not>_higher <not>_hump <not>_interest <not>_land <not>_lower
        <not>_more <not>_need <not>_shout <not>_sink <not>_sit <not>_take <not>_ther <not>_try <not>_up
        <not>_when <not>_wher <num>_inch <num>_oclock <num>_rep <num>_straight <num>_with <part>_a <part>_about
        <part>_at <part>_blad <part>_by <part>_come <part>_finish <part>_high <part>_hover <part>_just
        <part>_knee <part>_land <part>_lift <part>_lock <part>_long <part>_neednt <part>_off <part>_pretend
        <part>_reach <part>_say <part>_shar <part>_through <part>_tight <part>_up <place>_a <place>_and
        <place>_at <place>_below <place>_front <place>_has <place>_knee <place>_line <place>_nine <settle>_as
        <settle>_back <settle>_behind <settle>_bigger <settle>_dead <settle>_from <settle>_much <settle>_only
        <settle>_right <settle>_small <settle>_ther <settle>_to <swap>_higher <swap>_hump <swap>_lower
        <swap>_more <swap>_thi <swap>_with <take>_at <take>_bigger <take>_small <take>_ther <take>_your
        <wrong>_it <wrong>_youv a_<move> a_<part> a_bad a_blad a_coupl a_hair a_half a_line a_liv a_magazin
        a_phon a_pull a_quarter a_right a_shoe a_squat a_stuck a_tiny a_wall about_<chat> about_<far> about_a
        about_halfwa about_the about_to abov_the admir_it after_<place> after_flat and_<num> and_admir and_come
        and_low and_that are_<wrong> are_lift arm_<attend> arm_<far> arm_<place> arm_<swap> arm_by arm_do
        arm_long as_<chat> as_<far> as_<place> as_far as_it as_tall as_you at_most at_shin back_<part> back_and
        back_has back_knee bad_letter bang_it bar_over be_over behind_the bel_when bell_<do> bell_tap below_the
        between_<num> big_version bigger_<place> biggest_<do> blad_of blad_stay book_under both_leg bottom_at
        bum_<less> bum_tight button_<place> button_in button_stay by_the can_go can_with circl_<far> clear_the
        come_<far> come_right could_<do> could_<move> coupl_of creas_of do_thi doesnt_<do> doesnt_<move>
        doesnt_<settle> doesnt_bang doesnt_land doesnt_sink doesnt_take dont_<less> dont_have dont_need
        down_<far> down_at down_below down_till down_to draw_it each_<num> each_one either_end elbow_<chat>
        elbow_<settle> elbow_<wrong> elbow_finish elbow_lock elbow_neednt even_<attend> even_if far_<attend>
        far_<far> far_<less> far_as far_enough few_<far> few_centimetr finger_<far> first_polit fist_off
        flat_<attend> flat_as floor_at floor_just foot_<more> foot_off foot_up for_a for_low front_of
        full_<attend> full_<do> full_<move> full_squeez full_stretch get_<far> get_bigger get_ther get_your
        go_<attend> go_<far> go_as go_dead goe_level goe_right hair_<place> hair_in half_<chat> halfwa_<place>
        halfway_<less> halfway_plent hand_land hand_width handl_goe has_to have_it heal_are heel_goe higher_than
        hip_high hip_through how_far hump_<place> hump_over i_<swap> i_do i_dont if_that if_they if_theyll
        in_front in_to inch_at inch_will insid_your is_<far> is_<less> is_enough is_off is_plent it_<do> it_<not>
        it_<place> it_<take> it_brush it_clos it_cross it_grow it_in it_off it_out it_smaller its_talk its_tight
        its_tiny its_tug just_<far> just_brush just_past just_skim keep_them kiss_your kne_<attend> kne_just
        kne_straight kne_to knee_<do> knee_<far> knee_<more> knee_hover knee_to knee_up knuckl_to land_<place>
        land_by lean_<part> lean_<place> lean_back leg_a leg_shar length_of let_you letter_t lift_it lift_off
        lift_youv like_<chat> like_<far> like_centimetr line_from line_with lock_it long_and low_<attend> low_as
        lower_<far> lower_meaner magazin_<place> magazin_under make_it make_the mayb_your mid_<part> mid_shin
        more_the need_it need_to nine_<far> nine_oclock ninet_<far> ninet_degre no_<more> no_higher no_hump
        no_lower no_more nobody_measur nose_to not_<far> not_<less> not_<more> not_<settle> not_down not_go
        not_interest not_shout not_sit not_try not_up of_<attend> of_<far> of_a of_gras of_like of_pull of_your
        off_befor off_is off_the one_<attend> one_straight only_as only_want or_its other_hand out_at over_the
        over_your past_<far> past_<place> peel_away perch_<place> perch_on phon_<kit> phon_<swap> phon_book
        pull_behind quarter_of rang_tonight reach_for reach_your rib_<attend> rib_pretend right_<more> right_angl
        right_down right_up seat_and shin_<far> shin_<more> shin_height shin_level shirt_button short_<place>
        shoulder_blad sink_<place> sink_in sit_<more> sit_<place> sit_up skim_<place> skim_over slid_a
        squeez_your start_<far> start_small stay_<far> stay_<place> stay_on step_about stop_<less> stop_a
        stop_half stop_ther stop_when stop_wher straight_<attend> straight_<settle> straight_line straighten_the
        stretch_<far> take_<less> take_much tall_<attend> tall_as tap_the that_<attend> that_<swap> that_all
        that_fine that_it that_plent that_the the_<do> the_biggest the_carpet the_circl the_clover the_curb
        the_first the_floor the_hand the_insid the_kne the_more the_movement the_point the_rib the_ring
        the_shoulder the_size the_stretch the_top the_tre the_very the_way the_zip them_<attend> them_<place>
        them_long they_wont theyll_<chat> theyll_<settle> theyll_go thi_for thigh_<far> thigh_<place> thumb_to
        to_<num> to_<settle> to_<take> to_about to_armpit to_floor to_hold to_just to_perch to_the to_wher
        to_your toe_just too_high try_to two_inch until_its until_your up_<place> up_by up_to very_most
        way_<attend> way_<more> way_<place> way_down way_is way_like way_up weight_<settle> when_it when_the
        when_your wher_its whisker_<more> whisker_more will_<chat> with_both with_the wont_<chat> wont_<settle>
        wont_go you_<attend> you_<settle> you_<swap> you_can you_could you_dont you_have your_<not> your_<part>
        your_about your_after your_bottom your_hand your_heal your_hip your_jumper your_kneecap your_not
        your_rang your_thumb
      `,
    ],
    [
      -0.2,
      `
        <attend>_its <attend>_to <chat>_go <do>_up <far>_it <far>_push <kit>_up <move>_down <move>_up <not>_at
        <not>_the <part>_an <part>_are <part>_down <part>_in <part>_on <part>_stay <place>_like <place>_on
        <settle>_a <settle>_it <settle>_the <settle>_up <swap>_a <swap>_it <take>_it a_<far> a_<kit> a_<pace>
        a_<place> a_bit and_<do> and_<move> and_the at_about back_of back_to can_<do> can_<far> chest_<far>
        chest_<place> chest_height com_<place> come_<place> do_it dont_<do> down_<place> down_on elbow_<move>
        elbow_<place> elbow_at elbow_stay for_the hand_<place> hold_it if_<chat> if_its if_you in_the it_<attend>
        it_<chat> it_<more> it_down it_is it_up its_<attend> its_<not> its_<place> its_not its_only just_<do>
        just_<move> kne_an let_<settle> let_go lift_the lift_your littl_<do> look_at not_the off_your on_the
        on_to on_your one_<part> only_the out_<far> shoulder_<place> sid_<place> stay_as step_<place> stop_<far>
        stop_at stop_higher take_the the_<harm> the_<less> the_<num> the_<pace> the_<settle> the_<swap> the_back
        the_collarbon the_kneecap the_shin the_thigh the_wall ther_a they_<settle> till_it till_your to_<chat>
        to_<part> way_and when_<chat> when_you with_your you_<less> you_<move> your_<attend> your_<harm>
        your_<kit> your_arm your_feet your_shin your_toe
      `,
    ],
  ],
  phrase: [
    [1.2, 'range-sure'],
    [0.8, 'range-likely'],
    [0.2, 'caution-hint easier-hint execution-hint focus-likely harder-likely'],
    [
      -0.2,
      `
        caution-sure chat dose_only easier-likely easier-sure equipment-hint equipment-likely equipment-sure
        fault-likely focus-hint setup-likely setup-sure
      `,
    ],
    [-0.4, 'breathing-sure empty_clauses fault-sure harder-sure'],
  ],
  start: [
    [0.6, 'all_the_way'],
    [0.4, '<chat>_<not> <not>_<far> <not>_<more> <swap>_<far> a_whisker all_the it_doesnt'],
    [
      0.2,
      `
        <attend>_<far> <chat>_<more> <do>_<far> <far>_<attend> <far>_<far> <far>_<wrong> <kit>_<do> <kit>_<far>
        <less>_<chat> <more>_<place> <move>_<far> <not>_<less> <not>_<place> <num>_<chat> <num>_<far>
        <part>_<attend> <part>_<chat> <part>_<far> <part>_<settle> <part>_<wrong> <place>_<num> <place>_<part>
        <settle>_<attend> <settle>_<far> <swap>_<more> <take>_<far> a_bit_of a_pull a_whisker_more abov_the
        aim_for_a an_inch_will arm_by arm_by_your arm_long back_knee back_knee_hover bar_over bar_over_your
        bottom_of bottom_of_the br_the br_the_front bum_tight chest_to chest_to_floor clear_the come_right
        come_right_up dont_stop_half draw_it draw_it_in elbow_finish elbow_just_past elbow_lock elbow_neednt
        full_stretch get_your go_as handl_goe handl_goe_level heel_goe heel_goe_right hip_high hip_through
        how_far i_do i_do_thi i_dont i_dont_need if_they if_they_wont if_you_have if_your_hand if_your_heal its_a
        its_a_coupl its_a_quarter its_a_tiny its_about_a its_tiny keep_it keep_it_clos keep_the keep_them
        keep_them_long kne_straight knee_hover leg_a leg_a_hair let_it_get let_the let_the_weight lift_it
        lift_it_off like_your long_and long_and_low make_it make_it_smaller make_the make_the_circl mayb_your
        mayb_your_bel no_higher no_hump no_hump_over no_more nobody_measur not_a_pain not_down not_down_at not_up
        not_up_in or_a_bad or_its or_its_a pull_it_open reach_your reach_your_rib shin_level shirt_button
        shirt_button_in squeez_your squeez_your_bottom start_at start_at_shin start_small step_about
        step_about_the stop_at_the stop_when stop_when_your stop_wher straighten_the straighten_the_arm take_it
        that_all that_fine that_plent that_the_big the_arm they_dont_have they_wont thumb_to thumb_to_armpit
        till_its till_its_tug to_the to_the_bottom toe_just toe_just_skim up_by up_by_the you_dont you_dont_need
        your_after your_after_flat your_not your_not_sit your_not_try
      `,
    ],
    [
      -0.2,
      `
        <do>_<place> <far>_<part> <move>_<place> <not>_<settle> <not>_<wrong> <part>_<more> <part>_<place>
        <settle>_<place> chest_height elbow_at elbow_stay its_not keep_your stop_higher till_your
      `,
    ],
  ],
  word: [
    [0.6, 'about knee plent'],
    [
      0.4,
      `
        a all brush doesnt far finish flat floor insid just lock long more pain right shirt stay straight stretch
        tiny to whisker wont
      `,
    ],
    [
      0.2,
      `
        abov admir aim angl arc armpit as baby backsid bad bang bar below between bigger biggest blad bottom box
        button by centimetr circl clear clover come comfortabl complete could coupl creas cross curb deeper drift
        ear either elbow end enough even fine foot free ful full get go goe gras grow hair half halfwa halfway
        hand here higher honest hump inch interest its jumper kiss land letter level lift line liv lower magazin
        make mayb meaner measur mid mild most movement need neednt nine no nobody nose not oclock of only open
        over pass perch phon pleas polit pretend pull quarter rang reach rep rib shar shin shoe short shout skim
        squeez start step stop straighten strid t the they theyll through thumb tight tonight top tre tug twelv
        under until uphill version very way when wher width will zip
      `,
    ],
    [
      -0.2,
      `
        0 again and ankl anybod are around away back band becaus bend bent big bit breath call chin collarbon com
        fac feel feet forward from good got hang head hear heav help hold hook if into is isnt last leav left
        littl look mov neck nice noth now opposit palm peopl plank pres push put rest roll room round same second
        see shoulder sid side soft stand stick strap take ten them ther thi think thre till time toe up us wait
        walk we well wider with work wrist you youll youv
      `,
    ],
    [-0.4, 'at in one'],
    [-0.6, 'on out'],
  ],
} as const satisfies CueWeights
