/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind range; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const RANGE_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [1, 'far'],
    [0.2, 'ill less not'],
    [-0.2, 'chat move part take wrong'],
    [-0.4, 'air harm num'],
    [-0.6, 'pace'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.4, '<far> <part> about finish full go hip it long not short start that thigh to'],
    [
      0.2,
      `
        <kit> <not> a abov aim an and as baby backsid bar bare between bicep bigger br chair clear creas curl
        down everybod get half halfwa halfway handl heel heightll higher kiss kne knee length lock make nobody
        nose only quick reach rope shin shirt small stand stop straighten strid tall tap thirt toe tug up weight
      `,
    ],
    [
      -0.2,
      `
        0 <air> <chat> <do> <move> <num> <pace> <settle> <swap> back bel bend big breath do dont elbow feet flat
        grow hand hold i in leav look noth on other out rib ring saddl same sit squeez stay take the ther theyr
        till wait walk when wider with youv
      `,
    ],
    [-0.4, '<less>'],
  ],
  given: [
    [
      0.2,
      `
        <not> <place> <settle> any are back been bon dead get go halfwa hand i lift more on road round sock that
        ther theyll thin told wont ye youv
      `,
    ],
    [-0.2, '<far> <take> a hip just start the to'],
  ],
  last: [
    [0.8, 'plent'],
    [0.6, 'all'],
    [0.4, 'bigger do fine long more shirt tiny top way'],
    [
      0.2,
      `
        after air and angl arc armchair body bottom box brick can carpet cartwheel centimetr chin clear cliff
        clos cross cup deck dig ear enough fingernail flat floor fly ful further glu got gras grow here high
        honest hous hover inch kerb kne knee know land lean leap lift like line load mat matchbox meaner measur
        mine moon most mountain move need nowher oclock only outsid pain perfect plat pocket pretend pull ramp
        rib ring room saucer shallow shin shoulder show slop small smaller sore stairwell stay stool straight t
        tap through tight tile time tug under uphill walnut whisker width wont yelp yourself zip
      `,
    ],
    [
      -0.2,
      `
        about again ankl arm away back bel bell breath bum ceil cone door edge foot front go heel height home in
        keep leg lower middl ninet no nose now one open other out plank reach rest round sid side soft stand
        still stop tall th them thigh thre to toe together weight well wide work wrist
      `,
    ],
    [-0.4, 'down'],
  ],
  length: [
    [0.2, 'long'],
    [-0.2, '5-7'],
    [-0.4, '3-4'],
    [-1, '1-2'],
  ],
  pair: [
    [0.8, 'about_a'],
    [0.6, '<far>_as a_foot below_the no_<far> right_<place> that_all'],
    [
      0.4,
      `
        <far>_enough <far>_is <not>_land <not>_need <part>_finish <part>_hover <part>_knee <part>_stop <part>_to
        <place>_at <place>_knee <place>_till <settle>_to <swap>_higher a_<harm> a_<ill> a_<part> a_pain a_whisker
        all_the as_<far> back_knee brush_the chest_to down_to half_<chat> height_<less> is_<far> it_doesnt its_a
        just_<place> mid_<part> mid_shin no_higher not_<chat> of_a off_the reach_your right_<more> right_up
        strid_<move> that_it the_arm the_top the_way they_<not> to_<place> to_about to_wher to_your you_<attend>
      `,
    ],
    [
      0.2,
      `
        0_<place> 0_<take> 0_feet 0_in 0_oclock <air>_when <attend>_arm <attend>_at <attend>_be <attend>_befor
        <attend>_by <attend>_come <attend>_each <attend>_for <attend>_from <attend>_line <attend>_low
        <attend>_near <attend>_sit <attend>_step <attend>_tall <attend>_they <attend>_when <chat>_after <chat>_as
        <chat>_behind <chat>_could <chat>_dead <chat>_dont <chat>_else <chat>_feel <chat>_here <chat>_in
        <chat>_inch <chat>_is <chat>_it <chat>_like <chat>_neednt <chat>_on <chat>_own <chat>_pull <chat>_run
        <chat>_shav <chat>_stop <chat>_tip <chat>_to <chat>_travel <chat>_you <do>_about <do>_all <do>_and
        <do>_as <do>_be <do>_bigger <do>_meaner <do>_nowher <do>_only <do>_right <do>_should <do>_through
        <do>_will <do>_you <far>_a <far>_an <far>_and <far>_at <far>_each <far>_for <far>_if <far>_its <far>_lean
        <far>_of <far>_one <far>_or <far>_step <far>_stretch <far>_tap <far>_than <far>_the <far>_till <far>_to
        <far>_touch <far>_up <far>_version <far>_with <far>_you <far>_your <harm>_just <harm>_letter <ill>_letter
        <kit>_come <kit>_height <kit>_no <kit>_puff <kit>_stool <kit>_tap <kit>_to <kit>_touch <less>_more
        <less>_on <less>_rep <more>_about <more>_all <more>_at <more>_befor <more>_till <more>_to <more>_with
        <move>_it <move>_low <move>_nowher <move>_only <move>_out <move>_shallow <move>_should <move>_will
        <move>_you <not>_a <not>_about <not>_after <not>_bounc <not>_crack <not>_dig <not>_flat <not>_giant
        <not>_go <not>_half <not>_have <not>_high <not>_higher <not>_hump <not>_longer <not>_lower <not>_mine
        <not>_more <not>_mountain <not>_nearer <not>_plank <not>_priz <not>_quit <not>_shout <not>_sit <not>_sore
        <not>_take <not>_ther <not>_too <not>_try <not>_watch <not>_when <not>_wher <not>_wider <num>_degre
        <num>_feet <num>_fingernail <num>_from <num>_inch <num>_line <num>_oclock <num>_out <num>_ramp <num>_rep
        <num>_with <pace>_feet <pace>_one <pace>_theyr <part>_a <part>_all <part>_allow <part>_bare <part>_below
        <part>_blad <part>_by <part>_come <part>_ever <part>_forward <part>_just <part>_level <part>_lift
        <part>_make <part>_meet <part>_off <part>_pass <part>_pretend <part>_reach <part>_rib <part>_say
        <part>_shouldnt <part>_skim <part>_through <part>_want <part>_width <place>_0 <place>_a <place>_about
        <place>_arm <place>_as <place>_befor <place>_flat <place>_front <place>_has <place>_it <place>_itself
        <place>_lift <place>_line <place>_more <place>_nine <place>_your <settle>_as <settle>_at <settle>_behind
        <settle>_bigger <settle>_dead <settle>_from <settle>_only <settle>_proper <settle>_right <settle>_small
        <swap>_giant <swap>_go <swap>_half <swap>_hump <swap>_longer <swap>_lower <swap>_more <swap>_mountain
        <swap>_nearer <swap>_priz <swap>_stay <swap>_wider <swap>_with <take>_at <take>_bigger <take>_down
        <take>_small <take>_ther <take>_your <wrong>_a <wrong>_it <wrong>_youv a_0 a_<attend> a_<chat> a_<num>
        a_book a_cartwheel a_chair a_cliff a_comf a_coupl a_dinner a_fist a_line a_liv a_magazin a_matchbox
        a_paddl a_peach a_phon a_pull a_quarter a_right a_ruler a_saucer a_sheet a_six a_slop a_squat a_stairwell
        a_stretch a_twang a_wee a_yelp about_<far> about_<less> about_half about_the about_your abov_the
        after_<place> after_flat aim_for an_armchair and_<num> and_come and_late and_let and_stay and_twelv
        angl_at ankl_<far> ankl_height any_<more> any_more are_at arm_<far> arm_<place> arm_<swap> arm_by arm_do
        arm_ever arm_finish arm_long as_<attend> as_<place> as_deep as_it as_low as_near as_tall as_you ask_for
        at_0 at_ankl baby_<do> baby_<kit> baby_step back_<do> back_<part> back_has back_lift back_off bad_letter
        bar_<far> bar_stool bar_touch bare_mov bare_off bare_show be_at befor_<far> bel_when bell_<do> bell_tap
        bent_hand between_<num> bicep_<place> bicep_by big_one big_version bigger_than biggest_<do> bit_<more>
        bit_below bit_further blad_stay both_way bottom_at bottom_rib bounc_it brush_your bum_tight button_stay
        by_itself by_the can_<chat> can_<not> can_go can_stay can_with chair_height chest_forward chin_a
        clear_the collarbon_to come_<far> come_<more> come_right complete_<attend> complete_<place> could_<do>
        could_<move> could_<swap> could_do could_slid count_<num> count_one coupl_of crack_walnut creas_of
        cushion_<air> cushion_puff daylight_<place> daylight_under dead_<attend> dead_<place> dead_straight
        deep_<attend> deep_as deeper_<attend> deeper_if degre_at dinner_<kit> dinner_plat doesnt_<move>
        doesnt_<settle> doesnt_land dont_<less> dont_<settle> dont_bounc dont_dig dont_have dont_land dont_need
        dont_plank dont_stretch dont_take dont_yank down_<far> down_till each_<pace> each_time easier_<place>
        easier_on elbow_<settle> elbow_come elbow_lock elbow_stop enough_for even_<attend> even_if ever_<pace>
        ever_time everybod_else far_<not> far_<place> far_you feel_a feel_your few_centimetr finger_<do>
        finger_<far> finger_<move> finish_<place> finish_behind finish_each finish_either finish_over finish_with
        first_<far> fist_off flat_<attend> floor_just foot_length foot_off for_<far> for_some for_your
        forward_<more> forward_more friend_wee from_<place> front_<part> front_shin full_<attend> full_<do>
        full_<far> full_<move> full_squeez full_stretch get_bigger get_ther get_your giant_strid go_<far> go_as
        go_behind go_dead go_proper go_to goe_<more> ground_stop hair_<place> hair_in half_rep halfwa_is
        halfway_<less> halfway_plent hand_<chat> hand_<settle> hand_bare hand_go hand_height hand_land hand_lift
        hand_width handl_goe hard_leap has_to have_to head_shouldnt heel_<chat> heel_<far> heel_<place> heel_goe
        heel_hover heel_skim height_<swap> height_fine height_of heightll_<settle> heightll_come hero_<place>
        hero_on high_<far> high_<less> high_enough high_with higher_<less> higher_easier higher_than hip_<far>
        hip_allow hip_high hip_through how_far hump_<place> hump_over i_<not> i_do i_dont if_the if_they
        if_theyll in_0 in_a inch_is inch_or insid_of insid_your is_<less> is_enough is_plent is_small it_<do>
        it_<harm> it_<move> it_<not> it_<take> it_clos it_crash it_cross it_end it_finish it_flat it_float
        it_from it_get it_grow it_hang it_insid it_out it_smaller it_to its_about its_any its_shallow its_tight
        its_tiny its_under just_<far> just_brush just_clear just_in just_past just_under keep_off keep_them
        kiss_your kne_<move> kne_forward kne_to knee_<do> knee_<far> knee_hover knee_if knee_only knee_to
        knuckl_to land_<place> land_by last_<far> last_inch leg_as leg_stay leg_with length_<chat> length_first
        length_of let_it let_the let_you letter_t level_with lift_<far> lift_it like_<chat> like_<far> like_sit
        line_from line_with littl_<do> littl_<settle> littl_bit littl_lean littl_one littl_step littl_tap lock_it
        long_each long_leg longer_stay low_<attend> low_as lower_<chat> lower_<far> lower_meaner lower_you
        magazin_<place> magazin_under make_the middl_and more_than more_the mov_hous much_<more> much_more
        near_<far> near_<place> near_it near_touch need_to neednt_<do> neednt_<far> neednt_<move> neednt_reach
        nine_<far> nine_oclock no_<attend> no_<less> no_<more> no_<num> no_<place> no_giant no_half no_hump
        no_longer no_lower no_more no_mountain no_nearer no_priz no_wider nobod_<place> nobod_in nobod_watch
        nobody_measur nose_<far> not_<far> not_<settle> not_about not_after not_crack not_flat not_go not_high
        not_mine not_revers not_shout not_sore not_to not_too not_try oclock_and of_<far> of_what of_ye of_your
        one_<attend> one_<do> one_<settle> one_fingernail one_from one_line one_ramp one_step one_thi one_with
        only_<attend> only_<far> only_a only_an only_as only_till open_<place> open_by or_0 or_<num> or_its
        or_wherever other_<part> other_hand out_at over_a over_your pass_your past_<far> peach_away phon_<kit>
        plank_<place> plank_in pres_right priz_for puff_right pull_and pull_to quarter_is quarter_of quick_<part>
        quick_<take> quick_feet quick_one rang_<chat> rang_you reach_for rib_pretend rib_stay right_angl
        right_down ring_<settle> ring_come road_its rope_stay row_should ruler_length run_<place> run_out
        same_<kit> same_<swap> same_brick say_stop seat_<place> second_theyr see_daylight see_you send_it
        sheet_of shin_at shin_is shirt_button short_<attend> short_<do> short_<kit> short_<place> short_light
        short_step shorten_<more> shorten_<place> shorten_up should_see shoulder_blad shouldnt_bob sink_<place>
        sink_it sit_<more> sit_<place> sit_up size_of skim_<place> skim_over skim_the slid_a small_<attend>
        so_<far> some_of somewher_<place> stand_up start_<far> start_at start_small start_to stay_<far> stay_low
        stay_on stay_shallow step_<not> step_about step_that stop_a stop_at stop_just stop_ther stop_when
        stop_wher straight_<attend> straight_<part> straight_<settle> straight_arm straight_at straight_line
        straighten_the stretch_<far> stretch_and stuff_<place> stuff_out tall_<attend> tall_as tall_at tall_for
        tall_when than_<chat> than_<place> than_a than_down than_your that_<far> that_<less> that_back that_bench
        that_enough that_halfwa that_load that_plent the_<chat> the_<do> the_<part> the_<place> the_air
        the_biggest the_body the_carpet the_deck the_elbow the_first the_floor the_ground the_height the_hip
        the_insid the_kerb the_kne the_knee the_length the_moment the_moon the_more the_movement the_outsid
        the_point the_rib the_ring the_seat the_shirt the_shoulder the_size the_staircas the_step the_stretch
        the_stuff the_thicknes the_toenail the_track the_width the_zip them_<attend> them_<do> them_<move>
        them_<place> them_clos them_long they_dont they_wont theyr_<less> theyr_too thi_for thi_much thicknes_of
        thigh_<far> thigh_<more> thigh_<place> thigh_level thirt_<far> thirt_degre thos_wav till_ther tip_a
        to_<attend> to_<settle> to_<take> to_a to_armpit to_back to_floor to_just to_long to_shoulder to_start
        to_thigh toe_just toenail_<far> toenail_touch told_your too_<attend> top_hand touch_the track_hot
        travel_nowher turn_will two_<far> two_centimetr under_0 under_<num> under_ther until_its until_your
        up_about up_at up_befor up_in up_till up_to want_hero want_the watch_would way_<attend> way_<more>
        way_<place> way_a way_down way_is way_straight way_up we_want wee_<do> wee_<move> wee_pull
        weight_<settle> weight_to what_<chat> what_you when_the when_your wher_<chat> wher_its wher_you
        wherever_<chat> wherever_you whisker_<more> width_of will_<chat> will_<swap> will_do with_the with_them
        would_know you_<swap> you_can you_could you_feel you_have you_like you_neednt you_own you_run you_travel
        your_<far> your_<less> your_<not> your_<part> your_<place> your_<swap> your_bel your_belt your_bottom
        your_collarbon your_comfortabl your_ear your_end your_in your_kneecap your_not your_on your_pocket
        your_shav your_shirt your_stop your_thumb your_tip your_waist
      `,
    ],
    [
      -0.2,
      `
        0_centimetr <attend>_its <attend>_kneel <attend>_long <attend>_well <chat>_are <chat>_come <chat>_for
        <chat>_go <chat>_if <chat>_tall <chat>_your <do>_at <do>_on <do>_the <do>_them <do>_with <do>_your
        <far>_away <far>_circl <far>_down <far>_it <far>_off <far>_out <far>_toe <kit>_a <kit>_at <kit>_on
        <less>_a <less>_as <less>_of <less>_that <move>_at <move>_down <move>_from <move>_the <move>_up
        <move>_with <not>_at <not>_big <not>_drop <not>_let <not>_like <not>_on <num>_a <num>_and <num>_at
        <num>_of <pace>_to <part>_an <part>_are <part>_down <part>_for <part>_in <part>_like <part>_of
        <part>_point <part>_that <part>_the <place>_for <place>_on <place>_one <place>_them <place>_wher
        <settle>_a <settle>_it <settle>_out <swap>_a <swap>_it <swap>_of <swap>_reach <swap>_the <take>_it
        a_<far> a_<kit> a_<move> a_<pace> a_<place> a_<take> a_littl a_plank a_touch about_an about_fort about_it
        and_<do> and_<far> and_all are_<attend> arm_are as_kneel as_long as_the as_well at_<far> at_about
        at_ninet back_of belt_<far> bend_the bend_your big_<kit> big_<part> big_step big_toe can_<do> can_<far>
        can_reach chest_<far> chest_height do_it do_the dont_<do> dont_<move> down_<place> down_and ear_to
        elbow_<far> elbow_<move> elbow_at elbow_stay elbow_to for_<num> for_the glu_to go_up got_a hand_off
        hand_on if_<chat> if_it if_its if_you in_your inch_off is_a it_<attend> it_<chat> it_down it_go it_is
        it_isnt it_stop it_up its_<attend> its_only its_the its_your just_<do> just_<move> just_the kne_<chat>
        kne_<far> kne_<settle> kne_an knee_<place> knee_height kneel_<attend> kneel_if leg_<place> let_<settle>
        let_go let_your level_<num> lift_the lift_your like_a long_<attend> look_at low_<move> no_<kit>
        no_<wrong> not_<num> not_on of_<chat> of_them of_you off_your on_a on_the on_to one_<part> one_<place>
        only_<chat> only_the out_<far> out_till past_the past_your ring_<far> ring_<place> roll_<place> round_the
        shoulder_<far> smaller_<far> soft_<part> stay_<attend> stay_<more> stay_till stop_<far> stop_halfwa
        stop_higher tell_<chat> that_a that_knee that_you the_<far> the_<harm> the_<num> the_<swap> the_<take>
        the_ankl the_band the_ceil the_chair the_collarbon the_feet the_front the_line the_shin the_small
        the_thigh the_toe ther_<far> they_<settle> thi_is till_it to_<chat> to_<less> to_<swap> to_chest to_hear
        to_it to_make to_you under_the until_you up_the way_out way_to when_<chat> when_you with_a with_your
        you_<chat> you_<less> you_<move> you_<place> your_<harm> your_shoulder your_thigh your_toe
      `,
    ],
    [-0.4, '<part>_on back_to it_<more> on_your the_<settle>'],
  ],
  phrase: [
    [0.8, 'range-likely range-sure'],
    [0.4, 'praise'],
    [0.2, 'easier-hint execution-hint harder-likely range-hint'],
    [
      -0.2,
      `
        caution-sure easier-likely equipment-likely fault-likely fault-sure focus-hint setup-likely setup-sure
        tempo-likely tempo-sure transitions
      `,
    ],
    [-0.4, 'breathing-sure chat dose_only easier-sure harder-sure'],
    [-0.6, 'empty_clauses'],
  ],
  start: [
    [0.6, 'that_all'],
    [
      0.4,
      `
        <far>_<attend> <far>_<do> <not>_<far> <not>_<more> <num>_<far> <swap>_<far> <swap>_<more> all_the_way
        back_knee down_to it_doesnt that_it to_the
      `,
    ],
    [
      0.2,
      `
        <attend>_<do> <attend>_<far> <attend>_<kit> <chat>_<far> <chat>_<more> <chat>_<not> <do>_<far>
        <far>_<far> <far>_<wrong> <kit>_<far> <kit>_<not> <less>_<chat> <more>_<place> <move>_<far> <not>_<less>
        <num>_<chat> <pace>_<part> <pace>_<take> <part>_<chat> <part>_<not> <part>_<part> <part>_<settle>
        <place>_<far> <place>_<less> <place>_<part> <settle>_<attend> <settle>_<far> <swap>_<less> <swap>_<num>
        a_foot a_hand a_hand_height a_hand_width a_sheet a_sheet_of a_wee_bit a_whisker about_a about_half
        abov_the abov_the_knee aim_for aim_for_a all_the an_inch arm_by arm_by_the arm_long as_high as_high_as
        as_tall as_tall_as baby_step back_knee_hover bar_over_your bare_show belt_height bent_hand bottom_of
        bottom_of_the bottom_rib bottom_rib_stay br_the br_the_front bum_tight chair_height chest_forward
        chest_forward_more chest_to chest_to_floor chest_to_thigh chin_a chin_a_peach clear_the collarbon_to
        collarbon_to_the come_up_till creas_of creas_of_the curl_it curl_up_to dont_bounc dont_bounc_it dont_dig
        dont_land dont_plank dont_plank_in dont_stretch dont_stretch_the dont_take dont_take_the dont_yank
        dont_yank_it down_till down_to_a draw_it_in elbow_brush_the elbow_just_past elbow_lock elbow_stop
        elbow_up_at everybod_else feel_a feel_a_friend feet_under feet_under_you finish_each finish_each_one
        finish_either finish_either_side finish_with finish_with_your for_some for_some_of front_foot_to
        front_shin_upright full_stretch get_them_high get_your go_as half_rep half_way half_way_a half_way_is
        halfwa_is halfway_plent hand_go hand_go_to hand_land hand_land_by handl_goe heel_hover heel_skim
        heightll_come higher_easier higher_easier_on hip_come hip_come_forward hip_high hip_level_with
        hip_through hit_the_same i_do i_do_thi i_dont i_dont_need if_i_see if_its_about if_its_any if_the_arm
        if_theyll if_theyll_go if_youv_been im_not_after it_doesnt_land it_finish it_finish_over it_float its_a
        its_a_longer its_a_pull its_a_quarter its_a_slop its_a_stretch its_not_a its_only_a its_shallow its_tiny
        keep_it keep_it_clos keep_it_insid keep_off keep_off_the keep_the keep_the_kne keep_them keep_them_clos
        keep_them_long kiss_your kne_forward kne_to_shoulder knee_to leg_a_hair length_first let_it_get
        let_it_grow let_the let_the_arm let_the_weight lift_it lift_it_off like_your like_your_about like_your_in
        like_your_shav like_your_tip littl_step littl_tap lock_it lock_it_out long_each long_each_time
        lower_meaner make_it_smaller make_the middl_and middl_and_late no_giant no_giant_strid no_half no_higher
        no_hump no_hump_over no_more no_mountain no_nearer nobod_in nobod_in_the nobod_watch nobod_watch_would
        nobody_ask_for nobody_measur not_a_0 not_a_pain not_a_suitcas not_a_twang not_a_yelp not_an_armchair
        not_flat not_mine not_shout not_sore not_the_last not_to not_to_the not_too not_your_chin not_your_neck
        one_fingernail one_ramp one_step only_a only_an only_an_inch or_0 or_0_feet or_its or_its_a or_wherever
        out_to_long pres_right pres_right_up pull_to pull_to_just quick_feet quick_one quiet_step reach_your
        reach_your_rib rope_stay rope_stay_on row_should row_should_see send_it send_it_to shin_at shin_at_the
        shirt_button short_light short_light_step short_step shorten_up shorten_up_befor sink_it sink_it_right
        sit_down squeez_your_bottom stand_right stand_right_up stand_up start_at start_at_ankl start_small
        stay_shallow step_about step_about_the stop_a stop_a_fist stop_at stop_when stop_when_your stop_wher
        stop_wher_your straight_arm straighten_the straighten_the_arm take_it tall_when tall_when_your
        that_all_im that_bench that_bench_is that_enough that_load that_plent that_your_end the_back the_lower
        the_lower_you the_more the_toenail the_toenail_touch the_top ther_no_priz thi_much thi_much_more
        thigh_level thirt_degre thos_wav thre_quarter thre_quarter_is thumb_to thumb_to_armpit to_the_bottom
        to_the_end toe_just toe_just_off touch_the_shirt two_centimetr up_by up_by_the up_to we_want we_want_it
        weight_to were_not_crack wrist_and wrist_and_elbow you_could you_could_slid you_dont_need you_neednt
        you_travel you_travel_nowher your_after_flat your_all_do your_head_shouldnt your_not your_not_revers
        your_not_sit your_not_try your_stop your_stop_short
      `,
    ],
    [
      -0.2,
      `
        <attend>_<part> <attend>_<place> <chat>_<swap> <far>_<num> <far>_<part> <move>_<place> <not>_<do>
        <not>_<move> <not>_<take> <num>_<part> <num>_<place> <part>_<attend> <part>_<do> <part>_<far>
        <part>_<more> <part>_<move> <place>_<place> a_hand_off a_smaller about_an as_far as_far_as elbow_at
        elbow_brush_your elbow_stay hand_off it_isnt its_only keep_your lift_your like_a only_go_as stay_till
        stop_halfwa take_the that_a that_is that_the the_other ther_a thi_is up_as_high
      `,
    ],
    [-0.4, '<kit>_<place> <part>_<place>'],
  ],
  word: [
    [0.8, 'plent'],
    [0.6, 'about all below bigger brush finish right step stop stretch tiny width'],
    [
      0.4,
      `
        a bare centimetr clear doesnt far floor height higher inch insid just knee length line long mid mild more
        near need only own pain rib shin shirt short stay straight strid tall than to way wher whisker will
      `,
    ],
    [
      0.2,
      `
        after aim angl arc armchair as backsid befor behind bicep biggest blad book bottom brick button by can
        carpet cartwheel circl cliff come comfortabl complete could coupl crack creas crisp cross daylight deck
        deeper degre dinner drift ear either elbow end enough fine fingernail fist flat foot free ful full get
        giant gras ground half halfwa halfway handl heel heightll high hip honest its itself kerb kiss kne land
        leap letter level lift lock low magazin matchbox mayb meaner measur miss moment moon most move movement
        neednt nine no nobody not nowher oclock of outsid packet pass peel phon pocket priz pull quarter quick
        quit ramp rang rep rise ruler saucer say seat shallow sheet shoe sink size skim slid slop small smaller
        somewher sore staircas stairwell start stool straighten stuff t tap the thicknes thigh third through
        tight tile time toenail top touch tug under until uphill walnut wee when wherever wont ye yelp
      `,
    ],
    [
      -0.2,
      `
        0 again along and another anybod anyth apart around at away back bag band becaus bend big bow bus call
        cant car cat ceil chang check cheek clean click com cone door down dumbbell ease eight em fac face fall
        feet fingertip five fold for forearm four give got grip had hear heav help home hook hug i if instead
        into isnt ive jump keep kneel lead leav left leg lighter like littl march me metr minut my neck nice
        ninet noth now once other pair palm past paus peopl plank pop push put read rest ring rock round saddl
        same set sharp shut sid slack soft somebody someth spin squeez stick strap swap tail tak take tell ten th
        them then thes thi think thre toe together towel tuck turn two us wait warm was we week weight whil who
        whol wide wider with wobbl work wrist you youll youv
      `,
    ],
    [-0.4, 'are breath drop head hold in look roll side ther walk'],
    [-0.6, 'on out'],
  ],
} as const satisfies CueWeights
