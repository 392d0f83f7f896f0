/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind range; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const RANGE_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [1.2, 'far'],
    [0.2, 'ill less not'],
    [-0.2, 'chat kit move num part place wrong'],
    [-0.4, 'air harm take'],
    [-0.8, 'pace'],
  ],
  first: [
    [0.4, '<part> about finish it that thigh up'],
    [
      0.2,
      `
        <far> <kit> <not> <place> <wrong> a aim all and as baby backsid bar bare behind below belt between clear
        come creas curl down either elbow full get go half halfwa halfway handl heel hip honest knee lock long
        low make nobody not reach shin start stop straighten strid to tug
      `,
    ],
    [
      -0.2,
      `
        <air> <attend> <chat> <harm> <less> <move> <num> <pace> <swap> big do dont feet hold in its level look
        ring same shoulder sit take the ther walk you your youv
      `,
    ],
    [-0.4, '<do>'],
  ],
  given: [
    [0.2, '<settle> <swap> any are dead hand it lift more than that wont youv'],
    [-0.2, '<part> a the to'],
  ],
  last: [
    [0.6, 'plent'],
    [0.4, 'flat more pull tiny top'],
    [
      0.2,
      `
        and arc armpit at body bottom box can carpet centimetr do ear else end enough fine floor ful glu goe got
        gras grow hand here high honest inch itself kerb knee level line long mat meaner measur mine most
        mountain move need oclock own pain perfect pleas pretend rib shin shirt short show smaller so squeez
        stairwell step straight t ther tight tug uphill waist walnut whisker width wont yelp zip
      `,
    ],
    [
      -0.2,
      `
        about again arm ceil down edge feet foot front heel height is it leg no now plank side tall them thigh
        toe well
      `,
    ],
    [-0.4, 'back'],
  ],
  length: [
    [0.2, '8-12'],
    [-0.2, '5-7'],
    [-0.4, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.6, 'about_a all_the no_<far>'],
    [
      0.4,
      `
        <far>_as <far>_is <place>_at <settle>_to a_<harm> a_<ill> a_foot a_pain a_whisker chest_to down_to
        not_<chat> not_<far> right_<place> strid_<move> that_<less> the_way they_<not> to_your way_<place>
      `,
    ],
    [
      0.2,
      `
        <attend>_be <attend>_come <attend>_far <attend>_from <attend>_hand <attend>_line <attend>_near
        <attend>_sit <attend>_tall <attend>_they <attend>_youv <chat>_after <chat>_as <chat>_behind <chat>_can
        <chat>_could <chat>_dont <chat>_else <chat>_here <chat>_is <chat>_own <chat>_pull <chat>_run <chat>_stop
        <chat>_to <chat>_travel <do>_about <do>_as <do>_be <do>_meaner <do>_off <do>_only <do>_you <far>_a
        <far>_about <far>_an <far>_and <far>_enough <far>_for <far>_if <far>_its <far>_of <far>_squeez
        <far>_stretch <far>_than <far>_to <far>_version <far>_will <far>_with <far>_you <far>_your <kit>_about
        <kit>_come <kit>_is <kit>_tap <kit>_to <kit>_touch <less>_is <less>_more <less>_rep <less>_tall <more>_at
        <more>_with <move>_and <move>_it <move>_off <move>_only <move>_you <not>_crack <not>_down <not>_go
        <not>_half <not>_have <not>_high <not>_higher <not>_hump <not>_lower <not>_mine <not>_more <not>_mountain
        <not>_need <not>_shout <not>_sit <not>_sore <not>_take <not>_up <not>_when <not>_wher <not>_yank
        <num>_degre <num>_fingernail <num>_inch <num>_line <num>_oclock <num>_out <num>_rep <num>_with <part>_a
        <part>_all <part>_besid <part>_by <part>_come <part>_ever <part>_finish <part>_goe <part>_hover
        <part>_just <part>_knee <part>_level <part>_lift <part>_off <part>_pretend <part>_reach <part>_rib
        <part>_stop <part>_to <place>_a <place>_flat <place>_front <place>_hand <place>_has <place>_its
        <place>_itself <place>_knee <place>_line <place>_nine <place>_till <place>_to <place>_your <settle>_as
        <settle>_at <settle>_back <settle>_behind <settle>_bigger <settle>_right <settle>_small <settle>_ther
        <swap>_half <swap>_higher <swap>_hump <swap>_lower <swap>_more <swap>_mountain <swap>_that <take>_at
        <take>_bigger <take>_small <take>_ther <take>_your <wrong>_it a_0 a_<num> a_<part> a_chair a_coupl a_fist
        a_liv a_magazin a_phon a_pull a_quarter a_right a_ruler a_stairwell a_wee a_yelp about_<less> about_half
        about_the abov_the after_<place> after_flat aim_for an_<far> an_inch and_<not> and_<num> and_shoulder
        and_stay and_twelv angl_at ankl_<far> ankl_height any_<more> any_more arm_<far> arm_<swap> arm_besid
        arm_do arm_ever as_<chat> as_<far> as_<place> as_far as_it as_near as_tall as_you ask_for at_ankl at_most
        baby_<do> baby_<kit> baby_step back_<do> back_<far> back_has back_knee bar_<far> bar_touch bare_off
        bare_show bell_<do> bell_tap below_the bench_is bent_hand between_<num> big_version biggest_<do>
        bottom_at bottom_rib bounc_off brush_the bum_<less> bum_tight button_stay by_itself by_the can_go
        can_with can_without circl_<far> clear_the come_<far> come_right complete_<attend> complete_<place>
        could_<do> could_<move> could_<swap> could_do could_slid crack_walnut creas_of curl_it dead_<attend>
        dead_<place> dead_straight doesnt_<move> doesnt_<settle> dont_<less> dont_<settle> dont_<wrong>
        dont_bounc dont_have dont_need dont_stretch dont_take dont_yank down_<far> down_till each_<num> each_one
        either_end elbow_<more> elbow_<place> elbow_<settle> elbow_<wrong> elbow_finish elbow_lock elbow_stop
        ever_<pace> ever_time everybod_else far_<attend> far_<far> far_<less> far_<not> far_as far_enough feel_a
        finger_<do> finger_<move> finish_at fist_off flat_<attend> flat_as floor_just foot_off for_some
        friend_wee front_of full_<attend> full_<do> full_squeez full_stretch get_<far> get_as get_bigger get_ther
        get_your go_<far> go_as good_<do> good_<move> good_pull ground_stop hair_<place> hair_in half_<chat>
        half_rep halfway_<less> halfway_plent hand_<settle> hand_finish hand_land hand_lift handl_or have_to
        heel_<far> heel_<place> heel_goe height_fine higher_than hip_<place> hip_through how_far hump_<place>
        hump_over i_<not> i_do i_dont in_a in_front inch_will insid_your is_<far> is_<less> is_enough is_plent
        is_small it_<do> it_<less> it_<move> it_<not> it_<place> it_<take> it_clos it_cross it_doesnt it_end
        it_flat it_float it_get it_grow it_insid it_off it_out it_smaller its_<less> its_<swap> its_a its_about
        its_any its_hard its_own its_tight its_tiny just_<far> just_<place> just_brush just_past keep_it keep_off
        kiss_your kne_just kne_straight knee_<far> knee_hover knee_only knee_to land_<place> land_by let_it
        letter_t level_with lift_it like_<far> like_sit line_from line_with lock_it long_<part> low_<attend>
        low_as lower_<far> lower_meaner lower_you magazin_<place> magazin_under make_the mayb_your mid_<part>
        mid_shin more_than more_the much_<more> much_more near_<place> need_to nine_<far> nine_oclock no_<do>
        no_<less> no_<more> no_<move> no_<num> no_half no_higher no_hump no_lower no_more no_mountain nobod_need
        nobody_ask nobody_measur not_<less> not_<more> not_<settle> not_crack not_down not_go not_high not_mine
        not_shout not_sit not_sore not_up oclock_and of_<far> of_a of_what off_the on_its one_<attend>
        one_<settle> one_fingernail one_line one_with only_<far> only_about only_an only_as open_<place> open_on
        or_<attend> or_as or_its or_so other_hand out_at over_a over_your own_that pass_your past_<far> pull_and
        quarter_of rang_<chat> rang_you reach_for reach_your rib_<attend> rib_pretend right_<more> right_angl
        right_down right_up round_to run_<place> run_out see_daylight short_<do> short_<kit> short_step
        shoulder_in sit_<more> sit_<place> sit_up slid_a some_of staircas_<num> staircas_one start_<far> start_at
        start_small stay_<far> stay_on step_about stop_ther stop_when stop_wher stop_you straight_<attend>
        straight_<settle> straight_line straighten_the stretch_<far> stuff_<place> stuff_out tall_<attend>
        tall_as tall_for tap_the that_<far> that_all that_bench that_enough that_it that_plent that_your
        the_<chat> the_<do> the_<more> the_<part> the_arm the_biggest the_box the_carpet the_circl the_first
        the_floor the_ground the_hip the_insid the_kerb the_kne the_knee the_leg the_more the_movement the_point
        the_rib the_seat the_shoulder the_staircas the_step the_stretch the_stuff the_top the_width the_zip
        them_<attend> them_long they_dont they_wont thi_for thi_much thigh_<far> thigh_<more> thigh_<place>
        thigh_level thirt_<far> thirt_degre thumb_to till_its to_<far> to_<settle> to_<take> to_armpit to_floor
        to_hold to_just to_long to_the to_wher too_tall touch_the under_ther until_its up_at up_to way_<attend>
        way_<more> way_down way_is way_straight way_up we_want wee_<do> wee_pull weight_<settle> what_you
        when_the wher_<chat> wher_its wher_you wherever_<chat> wherever_you whisker_<more> width_of will_<chat>
        with_the you_<swap> you_can you_could you_own you_run you_travel your_<less> your_<part> your_<place>
        your_<swap> your_after your_bel your_bottom your_comfortabl your_ear your_end your_rib your_shirt
        your_stop your_thumb your_waist
      `,
    ],
    [
      -0.2,
      `
        <attend>_at <attend>_if <attend>_to <attend>_well <chat>_are <chat>_just <chat>_your <do>_at <do>_with
        <do>_your <far>_down <far>_off <far>_toe <move>_at <move>_down <move>_to <move>_with <move>_your <not>_at
        <not>_let <not>_reach <part>_an <part>_are <part>_com <part>_down <part>_is <part>_on <part>_point
        <part>_that <place>_for <place>_in <place>_like <place>_on <place>_wher <place>_you <settle>_a
        <settle>_it <settle>_out <swap>_a <swap>_it <swap>_reach <take>_it a_<far> a_bit about_0 and_<do>
        and_<settle> as_well at_about back_to bend_the big_toe can_reach chest_<far> do_it dont_<move>
        down_<place> down_and elbow_at for_<num> for_the hand_<place> have_a if_<chat> if_you if_your in_your
        into_the it_<attend> it_<chat> it_<far> it_<more> it_down it_up its_<not> its_not its_the its_your
        just_<do> just_<move> leg_<place> let_your lift_your like_a littl_<move> look_at not_a of_it off_your
        on_the on_to on_your one_<part> one_<place> only_the out_<far> past_the ring_<far> roll_<place> round_the
        smaller_<far> stop_<far> stop_higher that_a the_<far> the_<harm> the_<less> the_<num> the_<pace>
        the_<settle> the_<swap> the_<take> the_collarbon the_shin the_thigh the_toe ther_a till_it till_the
        to_<chat> to_<part> to_<swap> way_to when_<chat> when_you with_a with_your you_<less> you_are your_<harm>
        your_shin your_shoulder
      `,
    ],
    [-0.4, '<far>_it'],
  ],
  phrase: [
    [1, 'range-sure'],
    [0.6, 'range-likely'],
    [0.2, 'caution-hint easier-hint execution-hint execution-likely harder-likely praise'],
    [
      -0.2,
      `
        caution-sure chat dose_only easier-likely equipment-hint equipment-likely equipment-sure fault-sure
        focus-hint setup-likely setup-sure tempo-likely
      `,
    ],
    [-0.4, 'breathing-sure easier-sure empty_clauses harder-sure'],
  ],
  start: [
    [
      0.4,
      `
        <far>_<do> <move>_<far> <not>_<far> <not>_<more> <num>_<far> <swap>_<far> all_the all_the_way
      `,
    ],
    [
      0.2,
      `
        <attend>_<far> <chat>_<far> <chat>_<more> <chat>_<not> <do>_<far> <do>_<more> <far>_<attend> <far>_<far>
        <far>_<wrong> <less>_<chat> <more>_<place> <not>_<less> <num>_<chat> <part>_<chat> <part>_<part>
        <part>_<settle> <place>_<far> <place>_<part> <settle>_<far> <settle>_<more> <swap>_<less> <swap>_<more>
        <swap>_<num> a_foot a_good_pull a_pull a_wee_bit a_whisker about_a about_half abov_the aim_for aim_for_a
        an_inch_will as_tall as_tall_as baby_step back_knee back_knee_hover bar_over_your bare_show behind_your
        behind_your_body bell_tap bell_tap_the below_the below_the_step belt_height belt_height_fine bent_hand
        bottom_of bottom_of_the br_the_front bum_tight chest_to chest_to_floor clear_the come_right come_right_up
        creas_of creas_of_the curl_it curl_up_to dont_bounc dont_bounc_off dont_stretch dont_stretch_the
        dont_take dont_take_the dont_yank dont_yank_it down_till down_till_your down_to down_to_a either_end
        elbow_finish elbow_just_past elbow_lock elbow_stop everybod_else feel_a feel_a_friend finish_with_your
        full_stretch get_your go_as half_way_is halfway_plent hand_finish hand_finish_at hand_go_to hand_land
        hand_land_by handl_or handl_or_your hip_level_with hip_through i_do i_do_thi i_dont i_dont_need
        if_its_any if_they_wont if_youv it_doesnt it_float its_a its_a_pull its_a_quarter its_tiny keep_it
        keep_it_clos keep_it_insid keep_off keep_off_the keep_the keep_them_long kne_straight leg_a_hair
        let_it_get let_it_grow let_the let_the_strid let_the_weight lift_it lift_it_off like_your like_your_about
        like_your_in lock_it lock_it_out lower_meaner make_it_smaller make_the make_the_circl mayb_your
        mayb_your_bel no_half no_higher no_hump no_hump_over no_more no_mountain nobod_need nobody_ask
        nobody_ask_for nobody_measur not_a_0 not_a_pain not_a_yelp not_mine not_shout not_sore not_the_last
        not_up not_up_at not_your_neck one_fingernail only_an only_an_inch out_to out_to_long reach_your_rib
        squeez_your_bottom start_at start_at_ankl start_small step_about step_about_the stop_at_the stop_when
        stop_when_your stop_wher straighten_the straighten_the_arm take_it that_all that_bench that_bench_is
        that_enough that_it that_plent that_wher_you that_your_end the_ground the_ground_stop the_leg the_lower
        the_lower_you the_more they_dont thi_much thi_much_more thigh_level thirt_degre to_the to_the_bottom
        to_the_end up_by_the we_want we_want_it were_not_crack you_could you_could_slid you_travel your_after
        your_after_flat your_not_sit your_stop your_stop_short
      `,
    ],
    [
      -0.2,
      `
        <far>_<part> <kit>_<place> <move>_<attend> <move>_<place> <not>_<move> <not>_<take> <part>_<do>
        <settle>_<place> <take>_<place> about_an elbow_at its_not keep_your take_the that_a the_knee
      `,
    ],
    [-0.4, '<part>_<place>'],
  ],
  word: [
    [0.6, 'knee plent stay'],
    [
      0.4,
      `
        a about all brush circl doesnt far finish floor get inch insid just line long mild more pain pull rib
        right shirt short step stop stretch strid tiny to whisker
      `,
    ],
    [
      0.2,
      `
        abov aim angl arc arm as backsid bar bare behind below bigger biggest blad bottom button by can carpet
        centimetr clear come comfortabl complete could creas cross curl deeper ear either elbow end enough fine
        fingernail fist flat foot free ful full go goe ground grow hair half halfwa halfway handl have hello here
        high higher hip honest hump its itself kerb kiss length letter level lift lock low magazin make mayb
        meaner measur mid mine most mountain movement near need nine nobody nowher oclock of only or own pass
        phon pleas priz quarter rang rep ruler seat see shin shoe slid smaller staircas stairwell start straight
        straighten stuff t tall tap than the thirt through thumb tight tonight top travel tug twelv under uphill
        waist walnut way wee when wher wherever width will wont yelp
      `,
    ],
    [
      -0.2,
      `
        0 again along and anybod apart around at away back band be becaus big breath call cant ceil chin
        collarbon com door drop ease eight fac five for forward four from grip had hang hear heav hold hook if in
        into isnt jump leav left leg let like littl look me minut mov my noth now one other outsid palm paus
        peopl pick pres push rest ring rock roll round same second sharp sid side skip slack soft strap take tell
        th them then ther thi thos till toe together turn two us wait walk watch we weight well wider with wrist
        you yourself
      `,
    ],
    [-0.4, 'are feet head out'],
    [-0.6, 'on'],
  ],
} as const satisfies CueWeights
