/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind range; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const RANGE_WEIGHTS = {
  bias: [[-0.6, 'yes']],
  class: [
    [1, 'far'],
    [0.2, 'not'],
    [-0.2, 'carer chat more part'],
    [-0.4, 'air harm num take wrong'],
    [-0.6, 'pace'],
  ],
  conditional: [[-0.2, 'yes']],
  first: [
    [0.4, '<far> <part> finish full go half hip long short start stop that thigh to up'],
    [
      0.2,
      `
        <attend> <kit> <more> <not> a about abov aim an and ankl as baby backsid bar bare bell between bicep
        bigger br chair chin clear collarbon creas curl deeper down everybod get halfwa halfway handl heel
        heightll higher how is it kiss kne knee ladi lean length lock make middl more no nobody nose not only
        pelvi quick reach rope shin shirt small smaller stand straighten stretch strid tall thi thirt tiny toe
        wherever yesterday
      `,
    ],
    [
      -0.2,
      `
        0 <air> <chat> <do> <harm> <less> <move> <num> <pace> <settle> <swap> <take> at back befor bel big breath
        dead dont drop elbow eye feet flat grow hand have hold i in leav level look noth on other out palm rib
        ring saddl same see sit squeez stay take the ther theyr think till tuck wait walk when wher wide wider
      `,
    ],
  ],
  given: [
    [
      0.2,
      `
        <not> <place> <settle> any are arm back been bon dead go hand i lift more round sock ten than that theyll
        thin told wont ye youv
      `,
    ],
    [-0.2, '<kit> <move> <take> a all can high just the'],
  ],
  last: [
    [0.8, 'plent'],
    [0.6, 'more tiny'],
    [0.4, 'all bigger do ear fine flat long shirt smaller top way'],
    [
      0.2,
      `
        air and angl arc armchair body bottom box brick can carpet cartwheel centimetr clear cliff clos compan
        cross cup deck dig enough fingernail floor fly ful further glu gras ground grow here high honest hover
        inch kerb kne knee know land leap lid lift limbo load mat matchbox meaner measur mine moon most mountain
        move movement much need nod notic nowher oclock outsid pain paintbrush perfect plat pocket pull ramp rib
        ring room saucer settl shallow shin shoulder show slop small sore stairwell stay stool t tap thumb tight
        tile time tug under uphill walnut whisker wont yourself
      `,
    ],
    [
      -0.2,
      `
        again away back band bar bel bell breath bum cone door drop edge four front go hall heav heel higher home
        in keep me middl ninet no nose now open other out plank reach rep rest round sid side soft stand steep
        still stop tall th that them thigh thre to toe together weight well work wrist yes
      `,
    ],
    [-0.4, 'down leg'],
  ],
  length: [
    [0.2, 'long'],
    [-0.2, '5-7'],
    [-0.4, '3-4'],
    [-1, '1-2'],
  ],
  pair: [
    [0.8, 'about_a that_all'],
    [0.6, '<far>_is a_foot below_the no_<far> right_<place>'],
    [
      0.4,
      `
        <far>_as <far>_enough <far>_if <far>_movement <far>_than <less>_rep <not>_land <not>_need <part>_bare
        <part>_come <part>_hover <part>_knee <part>_stop <part>_to <place>_at <place>_knee <place>_till
        <settle>_to a_<harm> a_<ill> a_<num> a_<part> a_pain a_whisker all_the as_<far> back_knee brush_the
        brush_your chest_to down_to half_<chat> half_rep height_<less> higher_than is_<far> is_<less> it_doesnt
        its_a just_<place> mid_<part> mid_shin no_<less> not_<chat> of_<far> of_a reach_your right_<more>
        right_up size_of strid_<move> that_it the_<do> the_arm the_size the_top the_way to_<place> to_about
        to_wher to_your your_<far>
      `,
    ],
    [
      0.2,
      `
        0_<place> 0_<take> 0_feet 0_in 0_oclock <air>_is <air>_right <air>_when <attend>_arm <attend>_be
        <attend>_befor <attend>_by <attend>_chin <attend>_come <attend>_deep <attend>_draw <attend>_from
        <attend>_low <attend>_near <attend>_next <attend>_paintbrush <attend>_sit <attend>_start <attend>_step
        <attend>_tall <attend>_they <attend>_through <attend>_when <attend>_with <chat>_after <chat>_as
        <chat>_behind <chat>_can <chat>_chin <chat>_could <chat>_dead <chat>_door <chat>_feel <chat>_from
        <chat>_here <chat>_in <chat>_inch <chat>_is <chat>_it <chat>_neednt <chat>_own <chat>_proper <chat>_pull
        <chat>_run <chat>_settl <chat>_shav <chat>_stop <chat>_the <chat>_tip <chat>_tir <chat>_to <chat>_travel
        <chat>_want <chat>_wouldnt <chat>_you <do>_about <do>_as <do>_be <do>_bigger <do>_forward <do>_meaner
        <do>_no <do>_nowher <do>_only <do>_plent <do>_right <do>_should <do>_ther <do>_until <do>_wherever
        <do>_you <far>_a <far>_an <far>_and <far>_at <far>_beat <far>_each <far>_for <far>_here <far>_its
        <far>_lean <far>_of <far>_one <far>_only <far>_or <far>_shoulder <far>_tap <far>_the <far>_till <far>_to
        <far>_until <far>_up <far>_version <far>_will <far>_with <far>_you <far>_your <harm>_just <harm>_letter
        <ill>_letter <kit>_brush <kit>_come <kit>_had <kit>_height <kit>_is <kit>_no <kit>_or <kit>_plent
        <kit>_puff <kit>_stool <kit>_tap <kit>_to <kit>_touch <less>_on <less>_one <more>_about <more>_all
        <more>_befor <more>_door <more>_if <more>_till <more>_to <more>_until <more>_with <move>_abov <move>_away
        <move>_forward <move>_heav <move>_is <move>_it <move>_low <move>_nowher <move>_only <move>_right
        <move>_shallow <move>_should <move>_until <move>_you <not>_a <not>_about <not>_bounc <not>_count
        <not>_crack <not>_dig <not>_get <not>_giant <not>_go <not>_half <not>_have <not>_high <not>_higher
        <not>_hump <not>_lower <not>_mine <not>_more <not>_mountain <not>_nearer <not>_plank <not>_priz
        <not>_quit <not>_shout <not>_sit <not>_take <not>_tip <not>_to <not>_too <not>_try <not>_watch <not>_when
        <not>_wher <not>_wider <num>_degre <num>_feet <num>_fingernail <num>_from <num>_inch <num>_line
        <num>_oclock <num>_one <num>_ramp <num>_rep <num>_side <num>_with <pace>_feet <pace>_one <pace>_theyr
        <pace>_toe <part>_a <part>_all <part>_allow <part>_and <part>_begin <part>_blad <part>_bon <part>_brush
        <part>_by <part>_curl <part>_ever <part>_finish <part>_forward <part>_goe <part>_just <part>_level
        <part>_lift <part>_make <part>_neednt <part>_no <part>_off <part>_only <part>_pass <part>_proud
        <part>_reach <part>_rest <part>_rib <part>_shouldnt <part>_sink <part>_skim <part>_start <part>_straight
        <part>_through <part>_upright <part>_width <place>_0 <place>_a <place>_about <place>_arm <place>_as
        <place>_befor <place>_flat <place>_front <place>_has <place>_it <place>_itself <place>_lift <place>_line
        <place>_more <place>_nine <place>_paintbrush <place>_shoulder <place>_ther <place>_tipto <place>_your
        <settle>_as <settle>_behind <settle>_bigger <settle>_dead <settle>_forward <settle>_from <settle>_only
        <settle>_past <settle>_proper <settle>_right <settle>_small <settle>_under <settle>_wherever
        <settle>_with <swap>_giant <swap>_go <swap>_half <swap>_higher <swap>_hump <swap>_lower <swap>_more
        <swap>_mountain <swap>_nearer <swap>_priz <swap>_stay <swap>_wider <take>_at <take>_bigger <take>_down
        <take>_small <take>_your <wrong>_a <wrong>_it <wrong>_youv a_0 a_<attend> a_big a_book a_cartwheel
        a_chair a_cliff a_comf a_coupl a_dinner a_dustbin a_fist a_half a_hand a_line a_liv a_magazin a_matchbox
        a_newspaper a_nod a_paddl a_peach a_phon a_pull a_quarter a_right a_ruler a_saucer a_sheet a_six a_slop
        a_small a_squat a_stairwell a_stretch a_third a_twang a_wee about_<far> about_<less> about_half about_the
        about_your abov_it after_<place> after_flat aim_for all_im an_<far> an_armchair an_inch and_<harm>
        and_<not> and_<num> and_come and_gent and_late and_not and_stay and_stop and_that and_twelv angl_at
        ankl_<far> ankl_height any_<more> any_more are_at arm_<far> arm_<swap> arm_by arm_do arm_ever arm_finish
        arm_goe arm_long as_<attend> as_<place> as_deep as_it as_low as_near as_tall as_you ask_for
        asleep_<place> asleep_on at_0 at_ankl at_most baby_<do> baby_<kit> baby_<num> baby_one baby_step
        back_<do> back_<part> back_has back_lift back_off bad_letter band_<far> band_till bar_<far> bar_com
        bar_stool bar_touch bare_<far> bare_mov bare_off bare_part bare_show be_at befor_<far> befor_high
        begin_to bel_when bell_tap bent_hand between_<num> bicep_<place> bicep_by big_one big_version bigger_than
        biggest_<do> bit_<more> bit_below blad_<far> bon_<move> bon_<part> bon_<settle> bon_<take> bon_face
        both_hip both_way bottom_at bottom_rib bounc_it bum_tight button_stay by_a by_itself by_the can_<chat>
        can_<not> can_go can_stay can_with cat_asleep ceil_with chair_height chest_<place> chest_between
        chest_forward chest_level chest_proud chin_<place> chin_a chin_over chin_tuck circl_<far> clear_the
        collarbon_to com_to come_<far> come_<more> come_right come_up complete_<attend> complete_<place>
        corner_of could_<do> could_<move> could_<swap> could_do could_slid count_<num> count_one crack_walnut
        creas_of crown_of cushion_<air> cushion_puff dead_<place> dead_straight deep_<attend> deep_<far>
        deep_<less> deep_as deep_enough deeper_<attend> deeper_if degre_at dinner_<kit> dinner_plat do_<num>
        doesnt_<move> doesnt_<settle> doesnt_have doesnt_land dont_<less> dont_<settle> dont_<wrong> dont_bounc
        dont_dig dont_land dont_need dont_plank dont_stretch dont_take dont_yank door_<chat> door_had down_<far>
        down_till draw_<place> draw_on dustbin_lid each_<pace> each_time easier_<place> easier_on elbow_<settle>
        elbow_<take> elbow_are elbow_come elbow_lock elbow_stop end_of enough_for even_<attend> ever_<pace>
        ever_time everybod_else eye_<place> far_<not> far_<place> feel_a feel_your few_<far> few_centimetr
        finger_<do> finger_<far> finger_<move> finish_<place> finish_behind finish_each finish_with first_<far>
        fist_off flat_<attend> floor_just floor_pleas foot_length foot_off for_<far> for_some forward_<more>
        forward_more forward_until friend_wee from_<place> front_<part> front_<place> front_shin full_<attend>
        full_<do> full_<move> full_squeez full_stretch gent_<place> get_bigger get_your giant_strid go_<far>
        go_as go_behind go_dead go_proper go_to goe_<more> goe_<part> ground_stop had_the hair_<place> hair_in
        half_one halfwa_is halfway_<less> halfway_plent hand_<chat> hand_<settle> hand_bare hand_brush hand_go
        hand_height hand_land hand_lift hand_width hang_about hang_wherever hard_leap has_to have_to
        head_shouldnt heel_<chat> heel_<far> heel_<place> heel_bare heel_goe heel_hover heel_sink heel_skim
        height_<swap> height_fine height_of heightll_<settle> heightll_come hero_<place> hero_on high_with
        higher_<less> higher_easier hip_allow hip_bon hip_high hip_through hot_tub hover_a how_<far> how_far
        how_low hump_<place> hump_over i_<not> i_<swap> i_do i_dont i_want if_<more> if_draw if_i if_next if_the
        if_theyll in_front inch_is inch_or insid_of insid_your is_<place> is_all is_over is_plent is_small is_the
        is_too it_<harm> it_<move> it_<not> it_<take> it_clos it_crash it_cross it_doe it_end it_flat it_float
        it_from it_get it_grow it_hang it_harder it_insid it_off it_smaller it_to its_about its_any its_shallow
        its_tight its_tiny its_under just_<far> just_brush just_clear just_hang just_past just_under keep_it
        keep_off keep_the keep_them kiss_the kiss_your kne_<move> kne_and kne_forward kne_to kne_up knee_<do>
        knee_<far> knee_hover knee_if knee_only knee_to kneecap_and knuckl_to ladi_and land_<place> land_by
        last_<far> last_inch lean_forward leg_<swap> leg_until leg_with length_<chat> length_first length_of
        let_it let_you level_with lift_<far> lift_it like_<chat> like_<far> like_sit line_from line_with lip_and
        littl_<do> littl_beat littl_bit littl_lean littl_step littl_tap lock_it long_befor long_each long_leg
        long_paintbrush lot_<do> lot_<move> low_<attend> low_<far> low_as lower_<chat> lower_<far> lower_meaner
        lower_you magazin_<place> magazin_under make_the meet_the meet_your middl_and moment_the more_the
        mov_hous movement_<attend> movement_if near_<far> near_<place> near_it near_your need_the need_to
        neednt_<do> neednt_<far> neednt_<move> neednt_reach next_<kit> next_door nine_<far> nine_oclock no_<do>
        no_<more> no_<move> no_<num> no_<place> no_giant no_half no_higher no_hump no_lower no_more no_mountain
        no_nearer no_priz no_wider nobod_<place> nobod_in nobod_watch nobody_measur nose_is nose_to not_<far>
        not_<settle> not_a not_an not_crack not_go not_high not_mine not_revers not_shout not_to not_too not_try
        nowher_<place> nowher_near oclock_and of_inch of_what of_ye of_your off_the on_tipto one_<attend>
        one_<settle> one_fingernail one_from one_line one_ramp one_side one_step one_with only_<attend>
        only_<far> only_a only_an only_as only_bend only_till open_<place> open_by opposit_ankl or_0 or_<num>
        or_its or_wherever other_<part> other_hand out_<place> out_at out_behind over_a over_shoulder over_the
        over_your part_compan pass_your past_<far> peach_away person_<chat> person_<more> person_next phon_<kit>
        pictur_a plank_<place> plank_in pres_right priz_for proud_chin puff_right pull_and pull_to quarter_is
        quarter_of quick_<far> quick_<part> quick_<take> quick_feet quick_littl quick_one rang_<chat> rang_you
        reach_for revers_a rex_<part> rex_arm rib_stay right_angl right_down ring_<settle> ring_come rope_stay
        round_ther row_should ruler_length run_<place> run_out same_<kit> same_<swap> same_brick say_stop
        seat_<place> second_theyr second_toe see_daylight sheet_of shin_and shin_at shirt_button short_<attend>
        short_<do> short_<kit> short_<place> short_light short_step shorten_<more> shorten_<place> shorten_up
        should_be should_see shoulder_<place> shoulder_blad shouldnt_bob sink_<place> sink_it sit_<more>
        sit_<place> sit_up six_out skim_the slid_a small_<attend> small_movement some_of somewher_<place>
        stand_right stand_up start_<far> start_at start_small start_to stay_abov stay_heav stay_low stay_on
        stay_shallow step_<less> step_<not> step_about step_plent sticker_<place> sticker_on stop_a stop_at
        stop_just stop_the stop_ther stop_when stop_wher straight_<attend> straight_<part> straight_<settle>
        straight_arm straight_at straight_line straighten_the stretch_<far> stretch_and stretch_the stuff_<place>
        stuff_out t_rex take_it tall_<attend> tall_<place> tall_as tall_at tall_for tall_through tall_when
        than_<place> than_down than_your that_<far> that_<less> that_back that_bench that_enough that_halfwa
        that_load that_plent that_the that_your the_<chat> the_<move> the_<part> the_<place> the_bed the_biggest
        the_body the_carpet the_circl the_crown the_deck the_ear the_elbow the_first the_floor the_ground
        the_height the_hot the_insid the_kerb the_kne the_knee the_leg the_length the_moment the_moon the_more
        the_movement the_outsid the_person the_point the_rib the_ring the_shirt the_shoulder the_staircas
        the_step the_stuff the_thicknes the_toenail the_width the_zip them_<attend> them_<do> them_<move>
        them_<place> them_<settle> them_clos them_hang them_long ther_<chat> ther_were ther_you thes_t they_<not>
        they_dont they_hang they_wont theyr_<less> theyr_too thi_<part> thi_for thi_wrist thicknes_of thigh_<far>
        thigh_<more> thigh_<place> thigh_level thirt_<far> thirt_degre thos_wav till_ther tip_a tip_out
        to_<attend> to_<settle> to_a to_armpit to_back to_floor to_just to_lift to_lip to_long to_shoulder
        to_start to_the to_thigh to_tuck toe_just toenail_<far> toenail_touch told_your too_<attend> too_<far>
        too_<place> touch_the track_hot travel_nowher tub_<place> tub_out tuck_<place> tuck_in turn_<do>
        turn_<far> turn_round turn_will twelv_<far> two_<far> two_centimetr under_0 under_<num> under_ther
        underneath_<chat> underneath_you until_its until_your up_<far> up_about up_befor up_in up_till up_to
        up_until wall_is want_hero want_it want_the watch_would way_<attend> way_<more> way_<place> way_a
        way_down way_straight way_up we_want wee_<do> wee_<move> wee_pull weight_<settle> weight_to well_below
        were_a what_you when_the when_your wher_<chat> wher_its wher_you wherever_<chat> wherever_they
        wherever_you wherever_your whil_the whisker_<more> width_of will_<chat> will_<swap> will_do will_stay
        with_the with_them would_know wrist_<attend> wrist_<do> wrist_<place> wrist_curl yesterday_sticker
        you_<attend> you_<settle> you_can you_could you_feel you_have you_like you_neednt you_own you_run
        you_settl you_travel your_<air> your_<attend> your_<less> your_<not> your_<part> your_<place> your_<swap>
        your_back your_bel your_belt your_body your_bottom your_chest your_comfortabl your_ear your_end
        your_hamstring your_in your_lot your_not your_pocket your_rang your_rib your_shav your_shirt your_stop
        your_tailbon your_tip your_tir your_waist
      `,
    ],
    [
      -0.2,
      `
        0_centimetr <attend>_it <attend>_its <attend>_kneel <attend>_well <chat>_come <chat>_for <chat>_go
        <chat>_if <chat>_one <chat>_tall <chat>_will <chat>_your <do>_at <do>_behind <do>_down <do>_from
        <do>_half <do>_on <do>_the <do>_them <do>_with <do>_your <far>_arm <far>_away <far>_it <far>_out
        <far>_plat <far>_them <far>_toe <kit>_a <kit>_at <kit>_if <kit>_in <kit>_on <less>_a <less>_as <less>_of
        <less>_steep <more>_one <more>_ther <move>_a <move>_at <move>_down <move>_from <move>_half <move>_over
        <move>_the <move>_up <move>_with <not>_at <not>_be <not>_come <not>_drop <not>_let <not>_short <num>_a
        <num>_and <num>_of <num>_to <pace>_enough <pace>_to <part>_an <part>_away <part>_dont <part>_down
        <part>_for <part>_have <part>_in <part>_like <part>_lower <part>_of <part>_open <part>_out <part>_point
        <part>_stay <part>_that <place>_feet <place>_for <place>_high <place>_one <place>_wher <settle>_a
        <settle>_it <settle>_of <settle>_out <settle>_the <settle>_your <swap>_a <swap>_if <swap>_it <swap>_of
        <swap>_on <swap>_reach <take>_it <wrong>_the a_<do> a_<kit> a_<more> a_<move> a_<pace> a_<place>
        a_<settle> a_<take> a_bit a_littl a_plank a_touch about_<attend> about_<part> about_an about_fort
        all_<place> all_it along_the and_<do> and_<far> and_<place> and_all and_back and_the are_<attend>
        are_only arm_<more> arm_are arm_to as_kneel as_long as_the as_well at_<far> at_about at_ninet back_of
        back_to belt_<far> bend_the bend_your big_<kit> big_<part> big_step big_toe bit_of bum_<place> can_<do>
        can_<far> can_reach chest_<do> chest_<far> chest_height chest_up come_down do_it do_the dont_<do>
        dont_<move> down_<place> down_and down_on down_the each_<part> ear_to elbow_<far> elbow_<move> elbow_at
        finish_<far> flat_<part> for_<num> for_the for_thi full_of further_<place> glu_to go_up got_a half_<far>
        half_a hand_<place> hand_as hand_off hand_on heel_to height_and high_<part> if_<chat> if_a if_it if_its
        if_you if_your in_your into_the is_a it_<attend> it_<chat> it_<more> it_and it_down it_go it_goe it_isnt
        it_stop it_touch it_up its_<attend> its_only its_the its_your just_<do> just_<move> just_abov just_the
        kne_<far> kne_an kne_is knee_<place> knee_height kneel_<attend> kneel_if leg_<chat> leg_<do> leg_<place>
        let_<settle> let_go let_your level_<num> lift_the lift_your like_a like_the long_<attend> look_<place>
        look_at low_<move> no_<kit> not_<num> not_in not_the of_<chat> of_them of_you off_your on_a on_it on_the
        on_to on_your one_<part> one_<place> only_<chat> only_the out_<far> over_to past_your pull_<place>
        rib_<place> ring_<far> ring_<place> roll_<place> round_the shoulder_<far> smaller_<far> soft_<part>
        stay_<more> stay_level stay_till stop_<far> stop_halfwa stop_higher tell_<chat> than_<num> than_that
        that_<chat> that_a that_knee that_what that_you the_<far> the_<less> the_<num> the_<pace> the_<take>
        the_<wrong> the_ankl the_band the_bench the_collarbon the_cone the_door the_feet the_hall the_line
        the_littl the_low the_shin the_thigh the_thistl the_toe the_weight ther_<far> ther_a ther_till thi_is
        thistl_<attend> thistl_if till_it to_<chat> to_<kit> to_<less> to_<num> to_<swap> to_chest to_finish
        to_hear to_it toe_<do> too_steep top_of until_you up_<chat> up_the up_ther way_out way_to when_<chat>
        when_you with_a with_your you_<chat> you_<less> you_<move> you_<not> you_come your_<harm> your_<pace>
        your_arm your_shoulder your_thigh youv_got
      `,
    ],
    [-0.4, '<part>_on the_<harm> the_<settle>'],
  ],
  phrase: [
    [0.8, 'range-likely range-sure'],
    [0.4, 'praise'],
    [0.2, 'execution-hint harder-likely range-hint'],
    [
      -0.2,
      `
        easier-likely equipment-likely fault-likely fault-sure focus-hint setup-sure tempo-likely tempo-sure
        transitions
      `,
    ],
    [-0.4, 'breathing-sure caution-sure chat dose_only easier-sure harder-sure'],
    [-0.6, 'empty_clauses'],
  ],
  start: [
    [0.8, 'that_all'],
    [
      0.4,
      `
        <far>_<attend> <far>_<do> <not>_<far> <not>_<more> <num>_<far> <swap>_<far> <swap>_<more> about_a
        all_the_way back_knee down_to it_doesnt its_a that_it to_the
      `,
    ],
    [
      0.2,
      `
        <attend>_<attend> <attend>_<do> <attend>_<far> <attend>_<kit> <chat>_<attend> <chat>_<far> <chat>_<not>
        <do>_<far> <far>_<far> <far>_<wrong> <kit>_<far> <kit>_<not> <less>_<chat> <more>_<attend> <more>_<place>
        <move>_<far> <not>_<less> <num>_<chat> <pace>_<part> <pace>_<take> <part>_<chat> <part>_<not>
        <part>_<part> <part>_<settle> <place>_<far> <place>_<less> <place>_<part> <settle>_<far> <settle>_<more>
        <swap>_<less> <swap>_<num> a_foot a_foot_off a_hand a_hand_height a_hand_width a_sheet a_sheet_of
        a_wee_bit a_whisker about_half abov_the abov_the_knee aim_for aim_for_a all_the an_inch arm_by arm_by_the
        arm_long as_high as_high_as as_tall as_tall_as baby_step back_knee_hover bar_get bar_get_to bar_over_your
        bare_show belt_height bent_hand both_hip both_hip_bon bottom_of bottom_of_the bottom_rib bottom_rib_stay
        br_the br_the_front bum_goe_up bum_tight chair_height chest_forward_more chest_level chest_level_with
        chest_proud_chin chest_to chest_to_floor chest_to_thigh chin_a chin_a_peach chin_over chin_over_the
        clear_the collarbon_to collarbon_to_the come_up_till creas_of creas_of_the curl_it curl_up_to deeper_if
        do_half do_half_the dont_bounc dont_bounc_it dont_bounc_off dont_dig dont_land dont_plank dont_plank_in
        dont_stretch dont_stretch_the dont_take dont_take_the dont_yank dont_yank_it down_till down_to_a
        draw_it_in elbow_brush_the elbow_just_past elbow_lock elbow_stop elbow_up_at everybod_else feel_a
        feel_a_friend feet_under feet_under_you finish_each finish_each_one finish_with finish_with_your for_some
        for_some_of front_foot_to front_shin_upright full_stretch get_them_high get_your go_as half_rep half_way
        half_way_a half_way_is halfwa_is halfway_plent hand_brush hand_brush_your hand_go hand_go_to hand_land
        hand_land_by heel_hover heel_skim heightll_come higher_easier higher_easier_on higher_than hip_come
        hip_come_forward hip_high hip_level_with hip_through hit_the_same how_low i_do_thi i_dont i_dont_need
        i_want i_want_the if_i if_its_about if_its_any if_the_arm if_the_back if_theyll if_theyll_go if_youv_been
        im_not_after is_your it_doesnt_land it_float its_a_pull its_a_quarter its_a_slop its_a_stretch its_not
        its_not_a its_only_a its_shallow its_tiny keep_it keep_it_clos keep_it_insid keep_off keep_off_the
        keep_the keep_the_wrist keep_them keep_them_clos keep_them_long kiss_your kne_forward kne_stay_low
        kne_to_shoulder knee_to lean_forward leg_a_hair length_first let_it_get let_it_grow let_the let_the_arm
        let_the_weight let_them_hang lift_it lift_it_off like_your like_your_about like_your_in like_your_shav
        like_your_tip littl_step littl_tap lock_it lock_it_out long_befor long_befor_high long_each
        long_each_time lower_meaner make_it_smaller make_the middl_and middl_and_late near_enough never_mind_the
        no_giant no_giant_strid no_half no_higher no_hump no_hump_over no_more no_mountain no_nearer nobod_in
        nobod_in_the nobod_watch nobod_watch_would nobody_ask_for nobody_measur none_of_thes not_a not_a_0
        not_a_big not_a_pain not_a_twang not_an not_an_armchair not_mine not_shout not_sore not_the_far
        not_the_last not_to not_to_the not_too not_your not_your_chin not_your_neck one_fingernail one_ramp
        one_step only_an only_an_inch or_0 or_0_feet or_a_bad or_its_a or_wherever out_to_long pictur_a
        pres_right pres_right_up pull_to pull_to_just quick_feet quick_littl quick_littl_beat quick_one
        quiet_step ring_come ring_come_to rope_stay rope_stay_on row_should row_should_see second_toe send_it
        send_it_to shin_at shin_at_the shirt_button short_light short_light_step short_step shorten_up
        shorten_up_befor sink_it sink_it_right sit_down squeez_your_bottom stand_right stand_right_up stand_up
        start_at start_at_ankl start_small stay_shallow stay_tall_through step_about step_about_the stop_a
        stop_a_fist stop_at stop_the stop_when stop_when_your stop_wher straight_arm straighten_the
        straighten_the_arm take_it take_it_all tall_when tall_when_your that_bench that_bench_is that_enough
        that_load that_plent that_your_end the_back the_back_knee the_bar_com the_lower the_lower_you the_moment
        the_moment_the the_size the_size_of the_sw the_toenail the_toenail_touch the_top the_way the_way_down
        ther_no_priz ther_you thigh_level thirt_degre thos_wav thre_quarter thre_quarter_is thumb_to_armpit
        to_the_bottom to_the_end toe_just toe_just_off touch_the_shirt two_centimetr two_inch up_by up_by_the
        up_on up_on_tipto up_to we_want we_want_it weight_to were_not_crack yesterday_sticker
        yesterday_sticker_on you_could you_could_slid you_dont_need you_neednt you_travel you_travel_nowher
        your_after_flat your_all_do your_head_shouldnt your_not your_not_revers your_not_sit your_not_try
        your_only_bend your_stop your_stop_short
      `,
    ],
    [
      -0.2,
      `
        <chat>_<less> <far>_<air> <far>_<num> <far>_<part> <less>_<do> <more>_<num> <not>_<do> <not>_<move>
        <not>_<pace> <not>_<take> <num>_<part> <num>_<place> <part>_<do> <part>_<far> <part>_<more> <part>_<move>
        <part>_<place> a_hand_off a_smaller about_an about_an_inch as_far as_far_as elbow_at elbow_brush_your
        hand_off its_only its_the its_your keep_go keep_your lift_your like_a no_more_than not_the only_go_as
        stay_ther stay_till stop_halfwa take_the that_a that_all_it that_is that_the the_knee the_other ther_a
        thi_is up_as_high your_not_a
      `,
    ],
    [-0.4, '<kit>_<place>'],
  ],
  word: [
    [0.8, 'plent'],
    [
      0.6,
      `
        about bare below bigger brush finish inch movement right stay step stop tiny width
      `,
    ],
    [
      0.4,
      `
        all centimetr circl clear deeper doesnt far fine flat floor half height higher hip insid just length line
        mid mild more near need only pain rib shin shirt short small straight stretch strid tall to top way wher
        wherever whisker
      `,
    ],
    [
      0.2,
      `
        a abov aim angl ankl arc armchair as baby backsid bar bed befor begin behind besid between bicep biggest
        blad bon book bottom breastbon brick bump button by can carpet cartwheel chin cliff collarbon come
        comfortabl compan complete corner could coupl creas crisp cross crown deep degre dinner drift dustbin ear
        either elbow end enough fingernail first fist free front ful full gent get gras ground halfwa halfway
        handl headlamp heel heightll high hit honest hot hover however its itself kerb kiss kne knee kneecap
        knuckl ladi land lean leap letter level lid lift limbo lock long low magazin make matchbox mayb meaner
        measur meet miss moment moon most much neednt never newspaper no nobody nod nose not nowher oclock of
        outsid over own packet paintbrush part pass peach peel pelvi person phon pocket ponytail priz pull
        quarter quick quit ramp rang rex rise ruler sag saucer seat shallow sheet shoe should shoulder sink size
        skim smaller snug somewher staircas stairwell start sticker stool suitcas t tailbon tap than thicknes
        thigh third tile time tip tipto toenail touch travel tub tuck tug under until uphill upright wee when
        will wont wouldnt ye yesterday
      `,
    ],
    [
      -0.2,
      `
        0 again along an and another anybod anyon anyth apart arent around at away back band be becaus been bel
        bench bend big block bow bridg bus calf car chang check cheek clean click clinic com cone day door down
        drag dumbbell ease easy eight em empt everyon everyth fac feel feet fingertip five fold follow four giv
        give grab grip hall hand has head hear held help hing hold home hook hug if instead isnt ive jaw jump
        kind kneel lead leav left leg less light lighter like littl loos lower many march me metr minut mov muscl
        my neck new nice ninet noth now off once other pad pair palm past paus plank pop push put rack rest ring
        rock saddl said same set sharp shov shuffl shut sid side sip slack slip soft somebod somebody someth
        squash squeez stand steep stick stiff swap tak take tell ten th them then ther think thistl thos till tin
        toe together towel tum twent two us wait warm was watch we week weight what wider window with wobbl work
        yes youll yourself youv
      `,
    ],
    [-0.4, 'are breath drop for in into look on out roll walk'],
  ],
} as const satisfies CueWeights
