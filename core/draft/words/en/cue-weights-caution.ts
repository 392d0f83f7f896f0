/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind caution; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const CAUTION_WEIGHTS = {
  bias: [[-0.2, 'yes']],
  class: [
    [1, 'harm'],
    [0.6, 'ill'],
    [0.4, 'carer settle'],
    [0.2, 'less not part'],
    [-0.2, 'attend far more'],
    [-0.4, 'air pace'],
    [-0.6, 'num'],
  ],
  first: [
    [0.4, '<harm> becaus check come have its never safet that under walk'],
    [
      0.2,
      `
        <air> <kit> abov any ask back be bend bin both br breath bruis chair contraction discomfort dont ease
        front give half i if itll ive kne leav look make mind mine one only or pleas post rise shut sit slid
        sprinkler stand step stop the thi thos tug watch wed well wet whatever your
      `,
    ],
    [
      -0.2,
      `
        0 <chat> <do> <far> <more> <num> <pace> <place> <take> all bar big down for heel hip lift like long
        nobody not out pinch pull push see swap take thes try tuck two we youll
      `,
    ],
    [-0.4, '<part> no'],
  ],
  given: [
    [0.4, 'back'],
    [
      0.2,
      `
        <pace> <part> <place> a and been bit catch cramp done door easy feel goe grumbl hamstr in of or ping pull
        quit round scar shoulder so stand start swim take the wound your
      `,
    ],
    [
      -0.2,
      `
        <chat> <do> <move> balanc crank feet for hand hip is neck not off prefer ther too up wont
      `,
    ],
  ],
  last: [
    [0.4, 'first grumbl off over pleas teeth toda toe you'],
    [
      0.2,
      `
        argument around backward badg banana bar belt bottl bound busines cardboard chanc cheat chin cold corner
        crunch done dont down easy eye far foot for given held higher hot in instead it itll job joint keep kind
        kneel lane leav lock lowest me medal mind mov move neck night out overhead panic pass phon point pound
        quick quit read repair rule seriou shorter sid slip someth spik spin squeez stand station still stretch
        suffer swim that thi through tim time towel tree twist up walk way what wrist
      `,
    ],
    [
      -0.2,
      `
        arm breath chest day ear enough feet flat forward four front hard heav heel knee leg nice no now punch
        rest shoulder side sit soft spot step straight strok tall them together top turn under wrong
      `,
    ],
    [-0.4, 'back'],
  ],
  length: [
    [0.2, '5-7 8-12'],
    [-0.2, '3-4'],
    [-0.6, '1-2'],
  ],
  pair: [
    [
      0.4,
      `
        <attend>_it <chat>_land <do>_off <do>_on <harm>_in <move>_off <not>_and <num>_week <place>_that
        <settle>_down <take>_down a_<part> and_<not> down_and if_it into_a its_com let_<settle> let_go on_it
        stay_<place> stop_and the_<kit> the_chair the_whol whol_<pace> whol_time you_<move> you_land your_<carer>
        your_<place> your_foot your_lowest your_teeth
      `,
    ],
    [
      0.2,
      `
        0_week <air>_out <air>_ther <attend>_after <attend>_feet <attend>_for <attend>_here <attend>_in
        <attend>_soon <attend>_theyr <attend>_when <attend>_you <chat>_0 <chat>_a <chat>_all <chat>_at
        <chat>_back <chat>_befor <chat>_didnt <chat>_done <chat>_dont <chat>_feel <chat>_finish <chat>_first
        <chat>_go <chat>_heav <chat>_in <chat>_is <chat>_its <chat>_mean <chat>_move <chat>_must <chat>_on
        <chat>_over <chat>_overhead <chat>_puff <chat>_put <chat>_real <chat>_seriou <chat>_skip <chat>_squeez
        <chat>_trust <chat>_year <do>_gradual <do>_half <do>_into <do>_till <do>_up <do>_wher <far>_back
        <far>_bone <far>_it <far>_or <far>_over <far>_push <harm>_at <harm>_first <harm>_is <harm>_keep
        <harm>_leav <harm>_one <harm>_out <harm>_pleas <harm>_so <harm>_you <ill>_do <ill>_down <ill>_in <ill>_is
        <ill>_on <ill>_that <kit>_against <kit>_are <kit>_back <kit>_down <kit>_face <kit>_length <kit>_off
        <kit>_to <less>_a <less>_far <less>_on <less>_or <less>_see <less>_way <less>_with <less>_you
        <more>_higher <more>_till <more>_under <move>_clos <move>_gradual <move>_half <move>_hold <move>_on
        <move>_one <move>_out <move>_stand <move>_sure <move>_till <move>_up <not>_argu <not>_bench <not>_bound
        <not>_cros <not>_drop <not>_fight <not>_further <not>_higher <not>_hunt <not>_jump <not>_kid <not>_lock
        <not>_medal <not>_overhead <not>_panic <not>_pull <not>_pump <not>_see <not>_the <not>_toughnes
        <not>_twist <not>_want <not>_warm <not>_you <not>_your <num>_a <num>_behind <num>_elbow <num>_knee
        <num>_set <num>_way <pace>_a <pace>_with <pace>_your <part>_bark <part>_catch <part>_caught <part>_cramp
        <part>_down <part>_feel <part>_first <part>_from <part>_go <part>_grumbl <part>_hover <part>_in <part>_it
        <part>_joint <part>_mean <part>_not <part>_or <part>_read <part>_start <part>_stretch <part>_suffer
        <part>_that <place>_and <place>_back <place>_becaus <place>_from <place>_given <place>_has <place>_here
        <place>_higher <place>_if <place>_of <place>_off <place>_someth <place>_start <place>_the <place>_their
        <place>_tight <place>_turn <place>_you <settle>_another <settle>_been <settle>_do <settle>_heav
        <settle>_its <settle>_lower <settle>_of <settle>_real <settle>_someth <settle>_that <settle>_thes
        <settle>_through <settle>_till <settle>_until <settle>_up <settle>_wher <settle>_you <swap>_are
        <swap>_argu <swap>_find <swap>_further <swap>_grab <swap>_it <swap>_kid <swap>_medal <swap>_not
        <swap>_row <swap>_thi <swap>_towel <swap>_twist <take>_away <take>_go <take>_of <take>_someth <take>_thes
        <take>_under <take>_until <take>_up <take>_wher <take>_you <wrong>_door <wrong>_it a_<less> a_badg
        a_banana a_bend a_chair a_chanc a_crunch a_fella a_hand a_hip a_landmin a_lap a_leaner a_lot a_mate a_new
        a_newish a_night a_proper a_shoulder a_snap a_tabl a_thinner a_wedg about_<num> about_twent abov_that
        abov_the achill_will after_your against_the alway_the an_<part> an_ankl an_argument and_<attend>
        and_<move> and_<swap> and_call and_chest and_get and_it and_just and_keep and_lift and_no and_not
        and_push and_quit and_show and_straighten and_tell ankl_that another_<attend> another_look anybod_<place>
        anybod_on anybod_with are_<wrong> are_grumbl are_nip arent_a argu_with arm_<more> arm_in arm_read as_soon
        as_you at_<chat> at_all at_their at_you back_<attend> back_<place> back_down back_flat back_from back_has
        back_start back_the back_turn band_goe band_will bark_at be_<less> be_<pace> be_held beagl_<chat>
        beagl_<more> beagl_left becaus_<attend> becaus_a becaus_if becaus_off becaus_the becaus_thi been_<chat>
        been_an been_mov befor_<chat> befor_you behind_<chat> behind_you bell_length bench_<not> bench_<swap>
        bench_without bend_<place> bend_backward bend_in bend_your better_peopl bin_it blood_<harm> blood_pressur
        bone_densit both_end both_hand both_sid bounc_<place> br_that br_your breath_<place> breath_out
        breath_ther bruis_<not> bruis_arent by_that by_the calf_hot can_<settle> can_<take> can_find cant_see
        catch_<place> caught_<more> caught_<place> caught_up chair_<place> chair_against chair_and chair_with
        check_the chest_are clos_to com_at com_for com_with come_<do> come_<less> come_<more> come_<move>
        come_<place> come_down come_lower come_through come_up cros_the day_on discomfort_is do_<do> do_<harm>
        do_<not> do_a do_not do_one do_row dog_busines dont_<chat> dont_bound dont_drop dont_fight dont_hunt
        dont_panic dont_pump dont_want door_<part> door_<settle> door_<take> door_com door_face door_to down_on
        down_with drag_them drop_off drop_them ease_<part> ease_<place> ease_back elbow_<attend> elbow_feel em_a
        ever_<settle> ever_<take> ever_set eye_out face_it far_over feel_<attend> feel_<harm> feel_<ill> feel_it
        feel_like feet_<chat> feet_<far> feet_<settle> feet_away feet_down feet_go feet_under fella_miss
        flat_<attend> flat_<place> flat_as flat_on floor_<swap> floor_us for_glas for_two for_your
        forearm_<place> forearm_and forearm_on from_<place> from_about from_under front_knee get_<chat>
        get_<more> get_<part> get_<place> get_back get_down get_up get_you give_it go_do go_heav go_on go_real
        goe_<attend> goe_in goe_quiet gone_<less> gone_too grab_someth gras_<place> gras_behind greas_<place>
        greas_by ground_befor had_a hair_and half_a half_way hand_<place> hand_hover hand_in hand_on hang_on
        has_to have_a have_another have_been he_<chat> he_was head_and head_caught head_just hip_<attend>
        hip_<do> hip_joint hip_stretch hiss_it hold_of hold_on hold_the hover_<place> hover_over how_<harm>
        how_<part> how_high how_neck how_peopl hunt_for i_<less> i_<not> i_dont i_mean i_need if_the if_your
        ill_<settle> ill_take im_seriou in_becaus in_given in_the in_your insid_of is_<harm> is_<less> is_<not>
        is_how is_not is_okay is_over isnt_about it_<less> it_<pace> it_<wrong> it_a it_again it_away it_down
        it_into it_isnt it_lift it_lock it_long it_mov it_off it_pass it_sav its_alway its_an its_been its_for
        its_from its_greas its_job its_kind its_roll its_ther its_what its_your ive_<chat> ive_done jog_a
        jump_<place> just_rest keep_<settle> keep_<take> keep_a keep_hold keep_your kne_<not> kne_as kne_down
        kne_not knee_<attend> knee_<chat> knee_first kneecap_mean landmin_<place> landmin_in lane_and lap_befor
        last_<chat> last_year leaner_<chat> leaner_toda leav_it leav_thi leg_<more> leg_up let_<chat> lift_<num>
        lift_one like_theyr lock_it look_<place> look_after look_in look_wher lot_of low_back low_bone lower_back
        lowest_<do> lowest_<far> lowest_point make_sure mate_stood mean_that mind_your mine_is miss_it
        moment_befor natal_ladi need_<chat> need_you never_<do> never_<move> never_pull new_<part> newish_<part>
        newish_hip no_argu no_further no_kid no_medal no_twist nobod_bench not_<do> not_<more> not_<move>
        not_<settle> not_<take> not_cheat not_cros not_jump not_on not_overhead not_toughnes not_warm not_your
        now_<chat> now_you of_0 of_<num> of_it of_pound of_them off_better off_it on_<less> on_a on_forearm
        on_someth on_that on_their on_tight on_to one_<part> one_behind one_elbow one_knee only_<do> only_<move>
        only_push or_<chat> or_<settle> or_<take> or_a or_you or_your out_all out_of out_through pain_is
        palm_<more> palm_up peopl_<harm> peopl_than person_<chat> person_<more> person_next pick_it pinch_<more>
        pinch_<place> pinch_up ping_<place> ping_out point_over post_natal pressur_<place> pressur_on
        pull_<place> pull_on pump_it push_<less> push_<num> push_half push_with put_your quiet_<part>
        quiet_<take> quiet_feet quit_the rather_<chat> rather_you real_deep rest_in right_<chat> right_<do>
        right_round rise_<pace> rise_gradual roll_off roll_on room_<attend> room_still root_<place> root_by
        round_<place> round_the scar_pull second_your see_what set_<place> set_is set_of set_over sharp_<harm>
        sharp_<ill> sharp_pain shin_suffer shorter_<do> shoulder_<ill> shoulder_are shoulder_bark shoulder_catch
        shoulder_grumbl show_<chat> show_me shuffl_<far> shuffl_till shut_it sign_to sinc_now sit_<far> sit_thes
        sit_until skip_the slid_<more> slid_up smaller_or snap_<kit> snap_band somebod_<chat> somebod_toda
        somebody_water someth_<harm> someth_<more> someth_<pace> someth_stead someth_to soon_<attend> soon_as
        spot_<chat> spot_you sprinkler_<part> sprinkler_head start_to stay_<do> stay_<move> stay_clos stay_flat
        stay_stand stay_straight step_down step_off stop_<far> stop_higher straight_<part> straight_<place>
        straight_here straight_in straighten_it strap_are stretch_<chat> stretch_you strip_<chat> strip_first
        sure_your tell_<chat> tell_me that_<kit> that_<part> that_beagl that_been that_how that_its that_leg
        that_set that_ther that_tree that_way that_your the_<wrong> the_bar the_belt the_bend the_biggest the_box
        the_hamstr the_hand the_joint the_kneecap the_lane the_overhead the_person the_rack the_rail the_room
        the_root the_rule the_scar the_set the_toe the_wall the_weight the_wound their_<chat> their_head
        their_phon them_down them_in them_track them_would ther_<far> ther_been ther_dog ther_for ther_someth
        ther_sprinkler ther_till ther_to thes_<place> thes_out they_<settle> they_go theyr_bend thi_<attend>
        thi_<num> thi_goe thi_one thigh_cramp thinner_<kit> thinner_<swap> thinner_towel third_<harm>
        third_trimester thre_second thumb_right tight_to till_it till_its to_<chat> to_<harm> to_be to_both to_go
        to_grab to_stay toe_<settle> toe_<take> toe_out too_<far> too_<pace> too_far top_ther track_out trust_it
        tug_it turn_into twent_week two_<chat> two_set under_<chat> under_you under_your until_the up_<far>
        up_<less> up_higher up_till us_the wait_at wait_for walk_around walk_your wall_ther want_anybod was_0
        was_<num> watch_your water_<swap> water_bottl way_and wed_a week_<place> week_on week_some wet_leav
        what_its what_rep whatever_that whatever_the wher_<chat> whol_way will_drag with_<attend> with_<far>
        with_<kit> with_<part> with_a with_low with_weight with_you with_your work_<attend> work_if
        worktop_<place> worktop_in wrench_it wrong_<kit> wrong_door you_<not> you_<wrong> you_all you_didnt
        you_feel you_first you_in you_is you_move you_must you_skip you_squeez you_trust your_<chat> your_<do>
        your_<far> your_achill your_arch your_back your_calf your_chin your_done your_eye your_fist your_forearm
        your_head your_joint your_kne your_lane your_palm your_puff your_put your_shin your_sign your_strap
        your_strip your_surgeon your_third your_time youv_gone youv_had
      `,
    ],
    [
      -0.2,
      `
        <air>_in <attend>_a <attend>_its <attend>_that <attend>_thi <chat>_and <chat>_can <chat>_punch
        <chat>_should <chat>_that <chat>_up <chat>_want <chat>_went <chat>_you <do>_if <do>_the <do>_your
        <far>_you <harm>_leg <harm>_up <ill>_you <kit>_if <kit>_in <kit>_on <kit>_under <kit>_up <less>_your
        <more>_on <move>_and <move>_for <move>_if <move>_it <not>_a <not>_bend <not>_need <not>_sit <not>_stop
        <num>_and <pace>_to <part>_blad <part>_do <part>_lift <part>_off <part>_over <part>_prefer
        <part>_straight <part>_to <part>_together <place>_a <place>_each <place>_for <place>_in <place>_into
        <place>_like <place>_one <place>_onto <place>_prefer <place>_them <place>_ther <place>_your <settle>_back
        <settle>_forward <settle>_got <settle>_it <settle>_out <settle>_ther <settle>_to <settle>_with
        <settle>_your <swap>_under <swap>_up <swap>_your <take>_in <take>_on <take>_out <take>_ther <take>_your
        a_<far> a_<num> a_<pace> a_<settle> a_<take> a_bad a_bit a_pain a_spot an_<harm> an_injur and_<place>
        and_<settle> and_<take> and_a and_let and_the and_your anybod_com are_<harm> are_<ill> are_<less>
        are_crank arm_and as_<attend> as_it at_the back_<less> back_<part> back_prefer back_to bad_<part>
        balanc_is bell_<place> between_your bit_of both_<take> both_feet breath_in by_your com_off come_<part>
        come_back come_on do_it doe_<not> doe_not dont_need dont_sit down_into each_<part> for_a for_it for_thi
        forward_<place> get_it get_ther get_your go_<far> have_got heart_<place> hold_it how_<chat> i_<swap>
        if_<chat> if_its if_that in_a in_ther into_it into_the into_your is_off it_<chat> it_<do> it_<far>
        it_<move> it_<part> it_<settle> it_<swap> it_at it_back it_doesnt it_get it_wont its_<far> its_<place>
        its_<wrong> its_a its_the knee_in leg_<far> let_you like_<chat> like_a like_your look_at need_to of_a
        of_the of_your off_<chat> off_an off_you operat_<part> operat_leg or_<place> other_<part> pinch_at
        prefer_it send_your should_be shoulder_<place> shoulder_blad show_off sit_on spot_<place> spot_on stay_on
        stop_<chat> that_<place> that_a that_hip that_it the_<air> the_<attend> the_<chat> the_<ill> the_<less>
        the_<place> the_back the_bell the_bench the_ceil the_first the_foot the_front the_knee the_other the_spot
        the_strap them_out ther_<do> through_the to_<swap> toe_<do> tuck_your up_<attend> up_<chat> up_on up_with
        walk_it want_it way_down what_<chat> wont_<settle> you_<far> you_<less> you_<swap> you_punch you_should
        you_want you_went your_<attend> your_<ill> your_arm your_chair your_chest your_ear your_elbow your_grip
        your_heel your_hip your_rib your_sid your_thumb your_toe
      `,
    ],
    [-0.4, '<move>_the <part>_and a_<kit> not_a on_the up_<place> with_the'],
  ],
  phrase: [
    [1, 'caution-sure'],
    [0.6, 'fault-likely'],
    [0.4, 'caution-hint caution-likely'],
    [0.2, 'equipment-likely fault-hint purpose'],
    [
      -0.2,
      `
        breathing-likely chat dose_only equipment-sure execution-likely execution-sure fault-sure focus-sure
        harder-likely praise setup-hint tempo-sure transitions
      `,
    ],
    [-0.4, 'empty_clauses focus-hint harder-sure'],
  ],
  start: [
    [0.4, 'if_it its_com'],
    [
      0.2,
      `
        <air>_<place> <chat>_<chat> <chat>_<do> <far>_<move> <move>_<do> <move>_<move> <move>_<take> <num>_<part>
        <part>_<harm> <part>_<ill> <part>_<more> <part>_<not> <place>_<more> <place>_<place> <settle>_<far>
        <settle>_<less> <settle>_<move> <settle>_<place> a_snap a_snap_band anybod_with anybod_with_a as_soon
        as_soon_as back_flat back_flat_as back_from back_from_it back_up becaus_a becaus_if becaus_if_that
        becaus_off becaus_off_the becaus_thi becaus_thi_is bend_the_kne bend_your bend_your_kne bin_it both_sid
        br_that br_that_leg br_your br_your_hand breath_out breath_out_all breath_out_as bruis_arent
        bruis_arent_a chair_against chair_against_the check_the check_the_lane come_down come_lower come_up
        discomfort_is discomfort_is_okay do_it do_it_on do_not do_not_jump dont_fight dont_fight_it dont_go
        dont_hunt dont_hunt_for dont_just dont_lock_it dont_panic dont_pump dont_pump_it elbow_feel
        elbow_feel_like feet_under feet_under_you flat_back flat_back_the from_about from_about_twent front_knee
        get_down get_down_on give_it give_yourself_a go_back go_do go_do_row go_on go_on_to got_a half_a
        half_a_chanc hand_on hang_on_tight have_a have_another have_another_look have_your_eye hold_of hold_of_it
        hold_the hold_the_chair i_dont i_dont_want i_mean i_mean_that i_need i_need_you if_it_lift if_it_ping
        if_its_your if_the if_the_back if_the_door if_the_hamstr if_the_scar if_ther_a if_you if_you_feel
        if_you_go if_your_back if_your_kne im_seriou in_becaus in_becaus_the in_your in_your_third it_isnt
        it_isnt_about its_a_hip its_an its_an_argument its_been its_been_mov its_com_at its_com_for its_for
        its_for_your its_from its_from_the its_greas its_greas_by its_not_cheat its_roll its_roll_off its_what
        its_what_its its_your_teeth ive_done keep_a_hand keep_hold keep_it_mov keep_the_knee keep_them_track
        keep_your keep_your_chin keep_your_feet kne_down lean_on lean_on_it let_go let_it_off let_your_feet
        look_after look_after_your look_in look_in_front look_wher look_wher_your lower_it lower_it_down
        make_sure make_sure_your mind_your mine_is no_medal nobod_bench nobod_bench_without not_the not_the_toe
        one_hand only_push only_push_half pick_it pick_it_up post_natal post_natal_ladi pres_it pres_it_away
        put_it_down put_them_down put_your_feet rise_gradual shoulder_bark shoulder_bark_at shuffl_till
        shuffl_till_its shut_it shut_it_lock sinc_now sinc_now_you sit_thes sit_thes_out sit_until sit_until_the
        slid_up slid_up_to sprinkler_head stay_clos stay_stand step_back_down step_down step_off stop_and
        stop_higher take_your_time that_how that_how_neck that_is_how that_its that_its_job that_not
        that_the_rule that_the_wrong that_ther that_ther_to that_you_finish that_your that_your_bottom
        that_your_sign the_second the_second_your the_weight the_whol the_whol_time the_worktop the_worktop_in
        ther_a_chair ther_been ther_been_an ther_no_argu ther_sprinkler ther_sprinkler_head thi_goe thi_goe_in
        thi_one thos_with thos_with_low to_get to_get_up toe_out toe_out_of tug_it tug_it_again turn_it
        turn_it_into turn_your_palm under_you under_your under_your_lowest up_ther wait_at wait_at_the
        walk_around walk_your walk_your_lane walk_your_strip watch_the_root watch_your wed_a wed_a_fella wet_leav
        when_your when_your_done you_dont you_dont_drop you_hang_on you_keep you_must you_skip your_a_leaner
        your_back_has your_head your_head_just youv_gone youv_gone_too
      `,
    ],
    [
      -0.2,
      `
        <attend>_<attend> <attend>_<chat> <chat>_<swap> <chat>_<take> <do>_<attend> <do>_<part> <move>_<attend>
        <not>_<kit> <not>_<pace> <part>_<chat> <part>_<part> <part>_<place> <place>_<attend> <swap>_<place>
        both_feet both_hand_on come_up_on do_not_hold dont_drop_it dont_sit hold_it if_it_pinch if_its if_that
        its_not_a its_the look_at not_a put_the that_a
      `,
    ],
  ],
  word: [
    [0.6, 'befor chair head or'],
    [
      0.4,
      `
        and becaus been bend check feel goe grumbl how its joint leav lock lowest mean never overhead pleas
        pressur round safet set teeth that ther thi tug you
      `,
    ],
    [
      0.2,
      `
        abov ache achill after against arch arent argu argument around back backward badg band bark beagl biggest
        bin blood bone both bother bottl bound box br bruis busines calf cant catch caught chanc clear cold com
        come contraction cramp crank crunch densit discomfort dish dog done dont door drink drop ease eye far
        first fist flat forearm from gentl give given go grab greas half hamstr hap have held here higher hiss
        hold hot hover hunt hurt if in instead itll ive job jog keep kind kneecap kneel ladi land landmin lane
        leaner look medal mind miss moment mov must natal neck new newish next night notch off on pain panic pay
        peopl person pin ping point post pound problem proper pump put quick quiet quit read rise room root rule
        scar seriou sharp shorter shoulder sid sign skip slid snap so someon someth soon spik sprinkler stand
        stay strain stretch strip suffer sure surgeon swim tell their thes thinner till tim time toda too
        toughnes towel tree trimester trust twist under unlock wait walk way wed week wet what whatever whol will
        with wound wrench wrist year your
      `,
    ],
    [
      -0.2,
      `
        0 a about again air all an arc arm backsid bad ball bel bell bent between bit blad body bridg bum button
        can chang chest could count dead ear elbow even ever fac fall five free full good got guard halfwa handl
        hang heal help hip injur into is knot lead lean let lift littl long mat more my near nice no nobody nose
        not noth number only onto operat opposit own pair park past paus pinch plank prefer pres punch rais reach
        rest rib rock same say seat send sho short should side six small sock squat stick strid strok stuck
        support swap take talk tall ten th them then theyv thigh think to together top touch toward try tuck twic
        two want we went were whil who without wont youll
      `,
    ],
    [-0.4, 'as balanc each forward grip leg like other the'],
    [-0.6, 'heel'],
  ],
} as const satisfies CueWeights
