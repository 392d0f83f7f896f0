/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind harder; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const HARDER_WEIGHTS = {
  bias: [[-0.8, 'yes']],
  class: [
    [1, 'more'],
    [0.2, 'far pace part swap'],
    [-0.2, 'harm ill less not place'],
    [-0.4, 'air wrong'],
  ],
  conditional: [[0.6, 'yes']],
  first: [
    [0.6, '<more>'],
    [0.4, '0 anybod arm blue feel go option paus red rock show straighten try'],
    [
      0.2,
      `
        <do> <less> and anyon bor braver callum car cros draw feet float for got grab harder heel hold hover if
        jo keen knee last late level lift mayb once or over pike put reach see send straight stronger thre to too
        top turn want when you
      `,
    ],
    [
      -0.2,
      `
        <air> <kit> <not> <num> <pace> <settle> a bend both chest come dont down easy elbow hand i it keep let
        make no one only other pick pres push same sit squeez stand stay that the thi tuck walk we your
      `,
    ],
    [-0.4, '<chat> <part> <place> its up'],
  ],
  given: [
    [
      0.2,
      `
        <attend> <chat> <more> <pace> a balanc breez doddl enough fly full hold is its lift light noth other paus
        show simpl strength that them to version
      `,
    ],
    [
      -0.2,
      `
        <less> <place> <swap> <wrong> back do from it just more only take too up you your
      `,
    ],
    [-0.4, '<part>'],
  ],
  last: [
    [0.4, '0 red thre'],
    [
      0.2,
      `
        all ankl archer bag bell blue bor bottl breath cheat chest clap closer cone cooler doddl dont easy end
        eye faster feather fly foot fresh further hand harder hole horribl jo jump kneecap leg lower noth off on
        one pace paddl paus peopl plat quicker right set shin shorter side smil spicier stag tank toe two view
      `,
    ],
    [
      -0.2,
      `
        and down flat floor hip hold in kne knee lift long now pleas tall that ther thigh to up
      `,
    ],
  ],
  length: [
    [-0.2, '5-7 long'],
    [-0.4, '3-4'],
    [-0.8, '1-2'],
  ],
  pair: [
    [0.6, '<do>_the arm_<place> lift_the'],
    [
      0.4,
      `
        <do>_your <far>_the <not>_hand <part>_if <part>_off <part>_on <swap>_of <take>_a a_<more> a_doddl
        and_right arm_up at_the bag_of each_<pace> feel_<more> for_a hold_a if_<chat> if_youv it_onto last_<num>
        one_<part> show_off the_heel the_last top_<part> top_leg try_it your_<harm> your_head
      `,
    ],
    [
      0.2,
      `
        0_<place> 0_and 0_in 0_leg <attend>_brav <attend>_each <attend>_good <attend>_its <attend>_leg
        <attend>_nobody <attend>_on <attend>_past <attend>_that <attend>_ther <attend>_well <attend>_youv
        <chat>_0 <chat>_again <chat>_down <chat>_drop <chat>_eight <chat>_foot <chat>_keen <chat>_might
        <chat>_out <chat>_set <chat>_show <chat>_solid <chat>_stead <chat>_the <chat>_tough <chat>_use
        <chat>_walk <chat>_want <do>_a <do>_at <do>_behind <do>_both <do>_each <do>_further <do>_one <do>_with
        <far>_and <far>_at <far>_behind <far>_down <far>_further <far>_out <far>_push <far>_thre <far>_version
        <far>_your <harm>_without <ill>_leg <kit>_between <kit>_on <kit>_when <less>_a <less>_b <less>_cheat
        <less>_easy <less>_light <less>_you <more>_a <more>_and <more>_ankl <more>_back <more>_folk <more>_for
        <more>_if <more>_in <more>_is <more>_it <more>_let <more>_of <more>_on <more>_out <more>_the <more>_thi
        <more>_thre <move>_a <move>_both <move>_further <move>_it <move>_one <move>_the <move>_your <not>_befor
        <not>_cheat <not>_halfwa <not>_hold <not>_of <num>_bell <num>_finger <num>_foot <num>_hand <num>_leg
        <num>_on <pace>_at <pace>_down <pace>_the <pace>_them <pace>_twic <part>_acros <part>_at <part>_float
        <part>_fold <part>_foot <part>_for <part>_further <part>_only <part>_out <part>_right <part>_slow
        <part>_together <part>_up <part>_weight <place>_closer <place>_foot <place>_if <place>_leg <place>_on
        <place>_past <place>_straight <place>_your <settle>_again <settle>_both <settle>_out <settle>_the
        <settle>_them <swap>_at <swap>_between <swap>_each <swap>_hand <swap>_hold <swap>_it <swap>_peopl
        <swap>_strap <take>_further <take>_the <take>_together a_<air> a_<do> a_<kit> a_<move> a_<pace>
        a_<settle> a_beat a_breath a_count a_feather a_hot a_jump a_medicin a_plat a_rest a_second a_singl
        a_small a_thumb abov_the acros_to add_<part> add_a admir_the air_with an_<far> an_archer an_inch
        and_<far> and_admir and_paus ankl_<kit> ankl_weight another_<num> another_five anybod_find anybod_want
        anyon_who are_<more> are_past arm_<attend> arm_<more> arm_and arm_fold arm_if arm_over arm_to as_well
        at_all at_five at_your b_<do> back_<part> back_foot backward_<place> backward_on balanc_<swap>
        band_<place> beat_at been_do befor_week bell_<more> bell_<place> bell_up between_your big_<do> big_<kit>
        big_<move> big_step black_<kit> black_band blue_peopl both_<part> both_leg braver_one can_<chat> can_<do>
        can_<move> can_<settle> cant_<wrong> cant_cheat car_your chok_<more> chok_<place> chok_up clos_your
        count_of count_them crank_it cros_your do_it doubl_<pace> doubl_time down_<do> down_and down_round
        down_to drag_the draw_a driv_the drop_<part> drop_<place> drop_back each_time easy_<settle> empt_the
        feel_<chat> feel_<pace> feel_brav feel_good feet_<more> feet_<place> feet_further feet_on feet_together
        finger_<place> finger_on fingertip_<far> fingertip_only five_<place> five_on floor_<attend> floor_if
        folk_<swap> foot_<move> foot_forward foot_hover foot_touch for_<more> for_it for_more for_my for_thes
        full_<do> full_<move> full_version further_<part> further_<place> further_back further_out get_horribl
        go_again go_quicker good_<settle> good_foot got_<more> got_more got_the halfwa_<place> halfwa_down
        hand_<far> hand_at hand_in hand_out have_both head_<pace> head_slow heel_off hold_the hook_your hot_paddl
        hover_the if_its if_nobody if_that if_ther in_a in_closer in_the in_you initial_<place> initial_in
        instead_of is_<place> is_easy is_in is_to it_<attend> it_<more> it_<move> it_<not> it_<swap> it_at
        it_dull it_get it_harder it_horribl it_longer it_lower it_on it_spicier it_tougher it_with it_without
        its_<more> its_<not> its_a its_fly its_further its_noth jump_it keen_one kilo_<more> kilo_<place>
        kilo_more kne_and kne_go kne_higher knee_<place> knee_acros last_0 last_<take> last_one last_set
        late_<more> late_one late_stag later_<place> left_and leg_arm leg_at leg_go leg_out leg_right let_<chat>
        let_<settle> let_go let_the level_thre lift_your long_<far> long_<place> long_on long_past loop_<place>
        loop_down lower_down make_it march_your medicin_<kit> medicin_ball more_<place> more_<swap> more_of
        next_<more> no_<attend> no_<part> no_<swap> no_hand nobody_sit not_befor of_0 of_<swap> of_each of_rice
        of_sugar off_<swap> off_the on_<num> on_each on_it on_one on_the one_<far> one_foot one_hand one_leg
        onto_your opposit_<part> opposit_elbow opposit_hand option_b or_<do> or_<move> or_drag other_<part>
        other_elbow other_knee out_<attend> out_straight out_until over_0 over_<num> over_your past_your paus_for
        paus_it paus_twic pike_it plat_on point_behind progression_is pull_on push_ups push_with put_your
        reach_the rice_<place> right_out rock_it same_split second_<place> second_down second_in see_<attend>
        see_if side_to singl_<part> singl_hand singl_leg slid_the slow_the somebody_smil sore_leg spik_<place>
        split_<attend> split_as squeez_it step_it stop_<chat> stop_<far> stop_halfwa straight_<part> straight_leg
        straighten_both strap_a stronger_<chat> stronger_folk swap_at swap_each take_<num> take_it take_one
        ten_kilo that_<do> that_<move> that_an that_is that_simpl the_<air> the_<chat> the_<far> the_<harm>
        the_<part> the_<take> the_air the_bag the_balanc the_big the_black the_cone the_cooler the_dumbbell
        the_full the_heavier the_hole the_kne the_kneecap the_land the_loop the_operat the_opposit the_other
        the_second the_sore the_tank the_tray the_view the_water the_wors them_<place> ther_0 ther_<num>
        thi_<not> thi_<place> thi_<swap> thi_by third_month thumb_<place> thumb_under thumb_width to_<far>
        to_<kit> to_<more> to_<move> to_<swap> to_make to_side to_step toe_off toe_to together_<attend>
        together_if too_<more> too_<pace> too_easy too_light top_arm top_for touch_the turn_your two_<part>
        two_bell two_finger until_your up_the use_a use_two version_is wait_<less> wait_too walk_in want_<more>
        want_it want_more way_through week_<num> week_eight weight_<place> weight_on when_thi when_you
        whil_<chat> whil_you who_are who_bor with_<num> with_a with_one without_a wors_your writ_your you_<do>
        you_<move> you_drop you_keen you_might you_walk you_want your_<attend> your_ankl your_bend your_chest
        your_even your_eye your_feel your_initial your_show your_solid your_stead your_thumb your_toe your_tough
        your_up
      `,
    ],
    [
      -0.2,
      `
        <attend>_a <attend>_at <attend>_if <attend>_it <attend>_the <chat>_brav <chat>_do <chat>_go <chat>_it
        <chat>_need <far>_you <harm>_on <kit>_and <kit>_off <less>_the <more>_one <more>_than <more>_to
        <move>_them <not>_reach <num>_for <num>_is <num>_more <num>_of <num>_second <pace>_and <pace>_on
        <part>_are <part>_down <place>_off <settle>_back <settle>_for <settle>_on <swap>_not <swap>_one
        <swap>_weight <take>_for <take>_it a_<far> a_<harm> a_bit a_few a_minut a_time all_the and_<move>
        and_<take> at_a been_<chat> bend_the by_your com_<place> do_<not> do_<num> do_not dont_<do> dont_<move>
        each_<part> foot_<place> for_thi from_the front_of hand_on hand_to head_<place> hip_<place> if_it
        ill_<settle> ill_take in_<num> in_one is_<num> it_<chat> it_<less> it_<pace> it_in it_is it_off it_out
        its_<less> its_too keep_it left_<part> let_it lift_it lower_<part> of_it of_the of_your on_to one_<more>
        one_more open_the other_<num> other_foot other_leg other_one over_the right_<part> stag_one stay_<place>
        take_a the_<attend> the_<do> the_<move> the_ball the_bar the_ceil the_first the_floor the_foot the_hip
        the_left the_leg the_rail the_ring the_shoulder thi_<num> thi_one to_<num> to_<part> toe_<place>
        under_your up_<far> up_to when_your whol_<part> with_the with_your you_<chat> you_<far> you_lift you_need
        your_<air> your_<chat> your_<kit> your_<part> your_back your_brav your_elbow your_hip your_leg your_thigh
      `,
    ],
    [-0.4, 'for_<num>'],
  ],
  phrase: [
    [1.4, 'harder-sure'],
    [0.4, 'easier-hint setup-likely'],
    [0.2, 'easier-likely equipment-sure execution-sure harder-likely setup-sure tempo-sure'],
    [
      -0.2,
      `
        breathing-sure caution-hint dose_only easier-sure execution-hint fault-hint fault-sure range-hint
        range-sure tempo-likely
      `,
    ],
    [
      -0.4,
      `
        caution-sure chat empty_clauses execution-likely fault-likely focus-hint focus-likely
      `,
    ],
    [-0.6, 'focus-sure'],
  ],
  start: [
    [0.4, '<attend>_<chat> show_off turn_your_head'],
    [
      0.2,
      `
        0_leg 0_second_down <attend>_<more> <chat>_<more> <chat>_<place> <do>_<num> <less>_<less> <less>_<more>
        <less>_<pace> <more>_<chat> <move>_<num> <not>_<chat> <not>_<far> <not>_<part> <not>_<swap> <num>_<part>
        <place>_<num> <place>_<part> <swap>_<part> <swap>_<swap> a_plat a_plat_on and_right anybod_find
        anybod_find_it anybod_want anyon_who anyon_who_bor arm_and arm_and_leg arm_back arm_back_past
        arm_long_past as_if_ther blue_peopl br_the_kne br_your_hand braver_one car_your car_your_water cros_your
        cros_your_arm do_it dont_let_the draw_a driv_the driv_the_other empt_the empt_the_tank feet_on_the
        feet_together for_the for_the_full go_backward go_out grab_a_medicin half_a half_a_pace have_both
        have_both_leg hold_a hold_the_dumbbell hook_your hook_your_thumb hover_the if_its if_its_a if_its_fly
        if_its_noth if_nobody if_nobody_sit if_that_simpl if_ther if_you_want if_your if_your_bend if_your_show
        if_youv it_get it_get_horribl its_further keen_one keep_the_same kne_go kne_go_quicker knee_to
        knee_to_the last_0 last_0_metr late_one late_stag leav_the_second let_the_heel level_thre lift_the
        lift_the_back lift_the_toe lift_your lift_your_toe lose_the_tray march_your march_your_feet no_hand
        not_befor not_befor_week one_foot option_b over_0 paus_for paus_for_a paus_it paus_twic pike_it
        pull_it_down pull_on pull_on_it push_with push_with_two put_the_front put_your reach_the rock_it see_if
        see_if_you side_to side_to_side slid_the_loop slow_the slow_the_way somebody_smil stop_halfwa
        stop_halfwa_down straight_leg straighten_both straighten_the_leg stronger_folk swap_at swap_at_half
        take_it take_one that_an that_an_archer the_sore the_sore_leg the_whol_time ther_0 ther_0_in to_step
        to_step_it toe_to toe_to_your too_easy top_arm top_arm_to top_leg top_leg_up try_it turn_out
        turn_out_until turn_your two_finger use_two when_you you_can you_cant_cheat you_keen you_keen_one
        you_might
      `,
    ],
    [
      -0.2,
      `
        <chat>_<chat> <chat>_<part> <more>_<place> <move>_<place> <num>_<more> <part>_<do> <place>_<place>
        <settle>_<place> <swap>_<more> if_it if_you keep_it lift_the_other take_a
      `,
    ],
  ],
  word: [
    [0.6, '0 further if last paus try'],
    [
      0.4,
      `
        add ankl arm bag bell bor can cros doddl feel go harder hover leg lift longer one option red show
        straighten without
      `,
    ],
    [
      0.2,
      `
        abov acros admir advanc air anybod anyon archer at b backward balanc band beat black blue bottl braver
        breez callum challeng chok clap clever clos closer cone confident cooler crank doubl draw each earn easy
        fanc faster feather feet finger fingertip float fly folk foot for fresh full halfwa hand head heavier
        heel hold hole horribl inch initial it jo jump keen kilo kneecap late load lower mayb medicin might more
        noth off on onto operat opposit pace paddl past pike plat progres progression put quicker rest rice right
        rock second send shorter side simpl singl slight slow solid spar spic spicier spik stag strap strength
        stronger sugar tank thos thre thumb to toe top tougher tray turn two use version view want water week
        whil who wors
      `,
    ],
    [
      -0.2,
      `
        about all and any anyth are as away back ball bar be bel belt bent bit block bum ceil chair chin com come
        cushion dead do doe done dont down ease ever face fast few finish first fiv flat floor fort get goe had
        hang hard hear heav help here high i ill in into is its keep leav left length lighter like line littl lot
        low me minut much near neck need next nice of only open or pick plank pleas position pressur pull quick
        rail read ring roll same say seat shak short sid sit skip slack so soft spin squeez stand start stiff
        talk tall than that the then they thigh tight till toward towel twent under us walk warm we wee what wher
        whol will wrist youll your
      `,
    ],
    [-0.4, 'bend just not shoulder stay up'],
    [-0.6, 'hip'],
  ],
} as const satisfies CueWeights
