/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind range; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const RANGE_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [1.2, 'far'],
    [0.2, 'ill less not'],
    [-0.2, 'chat kit move part place wrong'],
    [-0.4, 'air harm num take'],
    [-0.6, 'pace'],
  ],
  first: [
    [0.6, '<part>'],
    [0.4, 'about it long that thigh to up'],
    [
      0.2,
      `
        <far> <kit> <not> <place> <wrong> a abov aim all an and as baby backsid bar bare behind belt between br
        brush clear come creas curl down either everybod finish full get go half halfwa halfway handl heel hip
        honest knee lock make nobody nose not nowher quick quiet reach rise say seam send shin shirt short stand
        start stop straighten strid thirt touch tug youd
      `,
    ],
    [
      -0.2,
      `
        0 <air> <chat> <harm> <less> <move> <num> <pace> <swap> back big do dont feet front hold in look near
        noth off ring same sit small take ther walk wider you your youv
      `,
    ],
    [-0.4, '<do>'],
  ],
  given: [
    [0.2, '<settle> <swap> any are dead go hand it lift more off than that wont youv'],
    [-0.2, '<do> <part> a the to'],
  ],
  last: [
    [0.6, 'plent'],
    [0.4, 'all do flat more pull tiny top'],
    [
      0.2,
      `
        0 and arc at bigger body bottom box can carpet centimetr ear else end enough fight fine floor ful further
        glu got gras ground grow hand here high hip honest hous inch itself kerb knee level line load long mat
        matchbox meaner measur mine most mountain move oclock own pain perfect pleas pocket pretend quit ramp rib
        ring shin shirt show small smaller so sore squeez stairwell step straight stretch t think through tight
        time tug uphill waist walnut whisker width wont yelp
      `,
    ],
    [
      -0.2,
      `
        about again are arm away back cone down edge feet front heel height home is leg low no now plank side
        still them thigh toe touch up well wide
      `,
    ],
  ],
  length: [
    [-0.2, '5-7'],
    [-0.4, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.6, 'about_a no_<far>'],
    [
      0.4,
      `
        <far>_as <far>_is <part>_stop <part>_to <place>_at <place>_till <settle>_right <settle>_to a_<harm>
        a_<ill> a_foot a_pain a_whisker all_the as_<far> below_the chest_to dont_<settle> down_to is_<far>
        it_doesnt its_a just_<place> not_<chat> not_<far> right_<place> strid_<move> that_all that_it the_<do>
        the_arm the_way they_<not> to_your way_<place>
      `,
    ],
    [
      0.2,
      `
        0_oclock <attend>_be <attend>_befor <attend>_come <attend>_each <attend>_far <attend>_from <attend>_hand
        <attend>_line <attend>_sit <attend>_step <attend>_tall <attend>_they <attend>_with <chat>_after <chat>_as
        <chat>_behind <chat>_breath <chat>_could <chat>_dead <chat>_dont <chat>_else <chat>_here <chat>_inch
        <chat>_is <chat>_not <chat>_own <chat>_proper <chat>_pull <chat>_run <chat>_stop <chat>_to <chat>_travel
        <chat>_you <do>_about <do>_as <do>_be <do>_meaner <do>_only <do>_plent <do>_right <do>_should <do>_will
        <do>_you <far>_a <far>_about <far>_an <far>_and <far>_bend <far>_enough <far>_for <far>_if <far>_its
        <far>_of <far>_or <far>_squeez <far>_stretch <far>_tap <far>_than <far>_till <far>_to <far>_until
        <far>_version <far>_with <far>_you <far>_your <harm>_just <kit>_about <kit>_come <kit>_is <kit>_plent
        <kit>_tap <kit>_to <kit>_touch <less>_is <less>_more <less>_rep <less>_tall <more>_at <more>_if <more>_in
        <more>_row <more>_with <move>_and <move>_back <move>_for <move>_it <move>_off <move>_only <move>_should
        <move>_will <move>_you <not>_after <not>_bounc <not>_go <not>_half <not>_have <not>_high <not>_higher
        <not>_hump <not>_land <not>_lower <not>_mine <not>_more <not>_mountain <not>_need <not>_shout <not>_sit
        <not>_sore <not>_take <not>_too <not>_up <not>_when <not>_wher <not>_wider <not>_yank <num>_degre
        <num>_fingernail <num>_inch <num>_line <num>_oclock <num>_out <num>_ramp <num>_rep <num>_with <pace>_one
        <part>_a <part>_all <part>_below <part>_besid <part>_come <part>_ever <part>_finish <part>_hip
        <part>_just <part>_knee <part>_let <part>_level <part>_lift <part>_off <part>_pretend <part>_reach
        <part>_rib <part>_straight <part>_through <part>_up <part>_width <place>_a <place>_flat <place>_front
        <place>_hand <place>_has <place>_its <place>_itself <place>_knee <place>_line <place>_nine <place>_off
        <place>_to <place>_your <settle>_as <settle>_at <settle>_behind <settle>_bigger <settle>_dead
        <settle>_proper <settle>_small <settle>_ther <swap>_go <swap>_half <swap>_higher <swap>_hump <swap>_lower
        <swap>_more <swap>_mountain <swap>_right <swap>_still <swap>_that <swap>_wider <swap>_without <take>_at
        <take>_bigger <take>_right <take>_small <take>_ther <take>_your <wrong>_it a_0 a_<attend> a_<num>
        a_<part> a_chair a_comf a_coupl a_fight a_fist a_letter a_liv a_magazin a_matchbox a_peach a_phon a_pull
        a_quarter a_right a_ruler a_stairwell a_stretch a_wee a_yelp about_<less> about_half about_the abov_the
        admir_it after_<place> after_flat aim_for all_of and_<not> and_<num> and_stay and_twelv angl_at
        ankl_<far> ankl_height any_<more> any_more arm_<far> arm_<swap> arm_at arm_besid arm_do arm_ever
        as_<place> as_far as_tall as_you ask_for at_ankl at_most baby_<do> baby_<kit> baby_step back_<far>
        back_<more> back_has back_knee back_off back_up bar_<far> bar_touch bare_mov bare_off bare_show
        befor_<far> befor_high bell_<do> bell_tap bench_is bent_hand between_<num> big_version biggest_<do>
        blad_stay bottom_at bottom_rib bounc_it brush_the brush_your bum_<less> bum_tight button_stay by_itself
        by_the can_<attend> can_<chat> can_go can_still can_with can_without chin_a circl_<far> clear_the
        come_<far> come_<more> come_right complete_<attend> complete_<place> could_<do> could_<move> could_<swap>
        could_do could_slid crack_walnut creas_of curl_it dead_<attend> dead_<place> dead_straight doesnt_<move>
        doesnt_<settle> doesnt_have doesnt_land doesnt_sink dont_<less> dont_<wrong> dont_bounc dont_have
        dont_need dont_stretch dont_take dont_yank down_<far> down_till each_<do> each_<move> either_end
        elbow_<more> elbow_<place> elbow_<settle> elbow_lock elbow_stop everybod_else far_<attend> far_<not>
        far_as feel_a few_centimetr finger_<do> finger_<far> finger_<move> finish_at finish_each finish_either
        fist_off flat_<attend> flat_as floor_just foot_off for_some friend_wee from_acros from_your front_of
        full_<attend> full_<do> full_<move> full_squeez full_stretch get_<far> get_as get_bigger get_ther
        get_your go_<far> go_as go_behind go_dead go_proper good_<do> good_<move> good_pull got_it ground_stop
        hair_<place> hair_in half_<chat> half_rep halfwa_is halfway_<less> halfway_plent hand_<settle> hand_come
        hand_height hand_land hand_width handl_or have_to heel_<chat> heel_<far> heel_<place> heel_below heel_goe
        height_<less> height_<swap> height_fine higher_than hip_<place> hip_through how_far hump_<place>
        hump_over i_<not> i_do i_dont in_front inch_is inch_or insid_your is_<less> is_nobod is_plent is_small
        it_<do> it_<less> it_<move> it_<not> it_<take> it_clos it_cross it_end it_flat it_float it_from it_get
        it_grow it_insid it_off it_out it_smaller it_to itll_go its_<less> its_<swap> its_about its_any its_hard
        its_own its_tight its_tiny just_<far> just_brush just_past just_under keep_off kiss_your knee_<far>
        knee_<part> knee_hip knee_hover knee_only knee_to land_<place> land_by last_<far> last_inch let_<chat>
        let_it let_the let_you letter_t level_with lift_it like_<far> like_sit line_from line_with littl_tap
        lock_it long_<part> long_befor long_each long_leg low_<attend> low_as lower_<far> lower_meaner lower_you
        magazin_<place> magazin_under make_the mayb_your mid_<part> mid_shin miss_it more_than more_the mov_hous
        much_<more> much_more near_<place> need_to next_<move> next_row nine_<far> nine_oclock no_<less>
        no_<more> no_<num> no_<place> no_half no_higher no_hump no_lower no_more no_mountain no_wider nobody_ask
        nobody_measur nose_<far> not_<more> not_<settle> not_after not_go not_high not_mine not_shout not_sore
        not_too not_up oclock_and of_<far> of_a of_what of_your off_the on_its one_<attend> one_<settle>
        one_fingernail one_line one_ramp one_with only_<far> only_an only_as only_till open_<place> open_on
        or_its other_hand over_a own_that pass_your past_<far> peach_away priz_for pull_and quarter_of quick_one
        rang_<chat> rang_you reach_for reach_your rib_<attend> rib_pretend right_<more> right_angl right_down
        right_up row_should ruler_length run_<place> run_out say_<not> say_stop seam_of seat_<place> send_it
        shirt_button short_<do> short_<kit> short_step should_see shoulder_in sink_in sit_<more> sit_<place>
        sit_up size_of slid_a some_of somewher_<place> staircas_<num> staircas_one stand_right start_<far>
        start_at start_small stay_<far> stay_a stay_on step_<less> step_about step_plent stop_a stop_at stop_when
        stop_wher stop_you straight_<attend> straight_<settle> straight_line straighten_the stretch_<far>
        stuff_<place> stuff_out tall_<attend> tall_as tall_for tap_the than_your that_<far> that_<less> that_back
        that_bench that_enough that_load that_plent the_<chat> the_<part> the_<place> the_biggest the_box
        the_carpet the_circl the_elbow the_first the_floor the_ground the_height the_insid the_kerb the_kne
        the_knee the_last the_more the_movement the_point the_rib the_seat the_shoulder the_size the_staircas
        the_step the_stretch the_stuff the_top the_width the_zip them_long they_dont they_wont thi_<less> thi_for
        thi_much thigh_<far> thigh_<more> thigh_<place> thigh_level thirt_<far> thirt_degre till_its till_ther
        to_<settle> to_<take> to_about to_armpit to_floor to_hold to_just to_long to_shoulder to_start to_the
        to_wher toe_just too_tall top_third touch_the turn_will twelv_<far> under_ther until_its until_your
        up_<far> up_at up_in up_to want_the way_<attend> way_<more> way_<part> way_back way_down way_is
        way_straight way_up we_want wee_<do> wee_<move> wee_pull weight_<settle> when_the wher_<chat> wher_its
        wher_you wherever_<chat> wherever_you whisker_<more> width_of will_<chat> will_<swap> will_do with_the
        wont_go you_<air> you_<attend> you_<swap> you_breath you_can you_could you_have you_own you_run
        you_travel youd_miss your_<far> your_<less> your_<not> your_<part> your_<swap> your_bottom
        your_comfortabl your_ear your_end your_kneecap your_not your_rib your_shirt your_stop your_thumb
        your_tight your_waist
      `,
    ],
    [
      -0.2,
      `
        0_centimetr <attend>_at <attend>_it <attend>_its <attend>_well <chat>_all <chat>_are <chat>_your <do>_at
        <do>_with <do>_your <far>_down <far>_off <far>_toe <move>_down <move>_with <not>_drop <not>_halfwa
        <not>_let <not>_reach <not>_short <part>_an <part>_down <part>_in <part>_is <part>_of <part>_on
        <part>_over <part>_point <part>_that <place>_for <place>_on <place>_wher <place>_you <settle>_a
        <settle>_it <settle>_out <swap>_a <swap>_it <swap>_just <swap>_of <swap>_reach <swap>_the <take>_it
        a_<far> a_<pace> a_bit a_littl about_an and_<do> and_<settle> are_<attend> as_well at_about back_of
        back_to bend_the big_toe can_<do> can_reach chest_<far> chest_height do_it do_the dont_<move>
        down_<place> down_a down_and down_on elbow_at for_<num> for_the glu_to hand_<place> hand_off have_a if_it
        if_its if_you in_your inch_off into_the is_a it_<attend> it_<chat> it_<far> it_<more> it_down it_go it_up
        its_<not> its_not its_only its_your just_<do> just_<move> leg_<place> let_<settle> let_go let_your
        lift_the lift_your like_a littl_<move> look_at low_<move> lower_it not_<num> not_a of_<chat> of_you
        off_your on_the on_to on_your one_<part> one_<place> only_the out_<attend> out_<far> reach_<place>
        ring_<far> ring_<place> roll_<place> round_the short_of shoulder_<far> smaller_<far> stay_till stop_<far>
        stop_halfwa stop_higher that_a that_too the_<far> the_<harm> the_<less> the_<num> the_<pace> the_<settle>
        the_<take> the_collarbon the_front the_heel the_line the_shin the_toe ther_a till_it to_<chat> to_<part>
        to_<swap> way_to when_<chat> with_a with_your you_<less> you_are your_<attend> your_<harm> your_arm
        your_hand your_head your_shin your_shoulder
      `,
    ],
    [-0.4, '<far>_it if_<chat>'],
  ],
  phrase: [
    [1, 'range-sure'],
    [0.8, 'range-likely'],
    [0.2, 'easier-hint execution-hint harder-likely praise'],
    [
      -0.2,
      `
        caution-sure easier-likely equipment-hint equipment-likely equipment-sure fault-sure setup-likely
        setup-sure tempo-likely tempo-sure
      `,
    ],
    [-0.4, 'breathing-sure chat dose_only easier-sure empty_clauses harder-sure'],
  ],
  start: [
    [
      0.4,
      `
        <chat>_<not> <far>_<do> <far>_<far> <move>_<far> <not>_<far> <not>_<more> <swap>_<far> all_the
        all_the_way that_all that_it to_the
      `,
    ],
    [
      0.2,
      `
        <attend>_<far> <chat>_<far> <chat>_<more> <do>_<far> <far>_<attend> <far>_<wrong> <less>_<chat>
        <not>_<less> <num>_<chat> <num>_<far> <part>_<chat> <part>_<not> <part>_<part> <part>_<settle>
        <place>_<far> <place>_<part> <settle>_<far> <swap>_<less> <swap>_<more> <swap>_<num> a_comf a_foot
        a_good_pull a_pull a_wee_bit a_whisker about_a about_half about_the abov_the aim_for aim_for_a an_inch
        as_tall as_tall_as baby_step back_knee back_knee_hover bar_over_your bare_show behind_your
        behind_your_body bell_tap bell_tap_the belt_height belt_height_fine bent_hand bottom_of bottom_of_the
        br_the br_the_front bum_tight chest_to chest_to_floor chin_a chin_a_peach clear_the creas_of creas_of_the
        curl_it curl_up_to dont_bounc dont_bounc_it dont_bounc_off dont_stretch dont_stretch_the dont_take
        dont_take_the dont_yank dont_yank_it down_till down_till_your down_to down_to_a down_to_wher either_end
        elbow_just_past elbow_lock elbow_stop elbow_up_at everybod_else feel_a feel_a_friend finish_each
        finish_each_one finish_either finish_either_side finish_with_your for_some_of full_stretch get_your go_as
        go_proper half_way half_way_is halfwa_is halfway_plent hand_finish_at hand_go hand_go_to hand_land
        hand_land_by handl_or handl_or_your heel_below heel_below_the heel_to_the hip_level_with hip_through i_do
        i_do_thi i_dont i_dont_need if_i_see if_its_any if_they_wont if_youv im_not_after it_doesnt
        it_doesnt_land it_doesnt_sink it_float it_is_nobod its_a its_a_pull its_a_quarter its_a_stretch its_tiny
        keep_it keep_it_clos keep_it_insid keep_off keep_off_the keep_the keep_the_kne keep_them_long
        kne_to_shoulder knee_hip leg_a_hair let_it_get let_it_grow let_the let_the_arm let_the_strid
        let_the_weight let_you let_you_breath lift_it lift_it_off like_your like_your_about like_your_in
        littl_tap lock_it lock_it_out long_and_low long_each long_each_time lower_meaner make_it_smaller make_the
        make_the_circl mayb_your mayb_your_bel no_half no_higher no_hump no_hump_over no_more no_mountain
        nobody_ask nobody_ask_for nobody_measur not_a_0 not_a_pain not_a_yelp not_an not_an_argument not_mine
        not_shout not_sore not_the_last not_too not_up not_up_at not_your_chin one_fingernail one_ramp only_an
        only_an_inch or_its_a out_to_long pull_to_just quick_one quiet_step reach_your_rib ring_to_your seam_of
        seam_of_your send_it send_it_to shirt_button shirt_button_in short_step sit_down_to squeez_your_bottom
        stand_right stand_right_up start_at start_at_ankl start_small step_about step_about_the stop_at
        stop_at_the stop_when stop_when_your stop_wher straighten_the straighten_the_arm take_it that_bench
        that_bench_is that_enough that_load that_plent that_wher_you that_your_end the_foot the_ground
        the_ground_stop the_lift the_lower the_lower_you the_top the_top_third ther_no_priz thi_much
        thi_much_more thirt_degre to_the_bottom to_the_end toe_just toe_just_off up_by_the we_want we_want_it
        weight_to weight_to_your were_not_crack you_could you_could_slid you_travel youd_miss youd_miss_it
        your_after your_after_flat your_not your_not_sit your_stop your_stop_short
      `,
    ],
    [
      -0.2,
      `
        <far>_<part> <kit>_<place> <move>_<attend> <move>_<place> <not>_<move> <not>_<take> <part>_<attend>
        <part>_<do> <settle>_<place> as_far as_far_as elbow_at elbow_brush_your its_not keep_your let_your
        stop_short stop_short_of take_the that_a that_the the_knee the_other ther_a
      `,
    ],
    [-0.4, '<part>_<place>'],
  ],
  word: [
    [0.8, 'plent'],
    [0.6, 'about step stretch'],
    [
      0.4,
      `
        a all bare below bigger brush circl doesnt far finish floor inch insid just knee line long more own pain
        pull right shirt short stay stop tiny to way whisker width
      `,
    ],
    [
      0.2,
      `
        after aim angl arc as backsid bar befor behind between biggest blad book button by can carpet centimetr
        clear come comfortabl complete could creas deeper degre each ear either elbow end enough everybod fine
        fingernail fist flat float foot free ful full get go gras ground hair half halfwa halfway handl have heel
        height hello here high higher hip honest hump its kerb kiss kne length letter level lift lock magazin
        matchbox mayb meaner measur mid mild miss most mountain movement near need no not nowher oclock of only
        pass peach phon pleas pocket priz quarter ramp rang reach rep rib rise ruler seam seat shin shoe shoulder
        size skim slid smaller somewher staircas stairwell start straight straighten strid tall tap than the
        thicknes thigh through tight time top touch tug under until uphill waist walnut wee when wher wherever
        will wont yelp
      `,
    ],
    [
      -0.2,
      `
        0 again ahead along and anybod around at away back band be becaus big breath call cant car chang
        collarbon com cone depth door down driv drop ease eight fac five fold for forward four grip had hang hear
        heav hold home hook if into isnt jump leav left leg like littl longer march me mind minut my neck nice
        noth now other outsid pair palm paus peopl pick plank pres push put rest ring rock roll round same second
        set sharp sid side skip slack soft spin strap swap take tell ten th then ther theyr thi thos till toe too
        tuck turn two us wait walk watch we what whil wide with wrist you yourself
      `,
    ],
    [-0.4, 'are feet head in look out them'],
    [-0.6, 'on'],
  ],
} as const satisfies CueWeights
