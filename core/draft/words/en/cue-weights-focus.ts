/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind focus; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const FOCUS_WEIGHTS = {
  bias: [[-0.4, 'yes']],
  class: [
    [0.8, 'attend'],
    [0.4, 'part'],
    [-0.2, 'air far not take wrong'],
    [-0.4, 'chat less more num settle swap'],
    [-0.6, 'do'],
  ],
  conditional: [[-0.4, 'yes']],
  first: [
    [0.8, '<attend>'],
    [0.4, '<move> big blad its long only push squeez the think wher your'],
    [
      0.2,
      `
        <far> <pace> <part> all bar bel calv chest control crush curl feel grip grow hang hard heal heav heel
        hello hip hook imagin into itll lead lean like littl loos near nobody not noth notic pick pres pretend
        pump punch quick rib send shoulder stick stiff tall ther thi tum under whol wind
      `,
    ],
    [
      -0.2,
      `
        <air> <chat> <place> <swap> <take> <wrong> a and as becaus bottom breath come do draw elbow front hand
        have i in keep leav leg lift look lower make nose or quiet remember same some somebody step still stop
        straight switch take thes tip toe up walk
      `,
    ],
    [-0.4, '<do> <more> <num> arm'],
    [-0.6, 'if'],
  ],
  given: [
    [0.2, '<move> hamstr on'],
    [-0.2, '<attend> <part> feel hamstring like the your'],
  ],
  last: [
    [0.6, 'heel'],
    [0.4, 'heal hook sock you'],
    [
      0.2,
      `
        achill after ahead away backsid ball bicep bird bit blad broad bum calf calv carpet chest clock complain
        crab end face feat feet gate goe hair hamstr hamstring handl hard head heav hing hip hundred is it kick
        kneecap ladder last leg level long loos me neck no oclock only past pocket point post press quieter relax
        ride sand sandal shelf sho shoulder sit spe spill spin spr squat stack step still sway swell tailbon talk
        tall tight toe together towel tuck turn upward wait was wind wobbl wood
      `,
    ],
    [
      -0.2,
      `
        advert afterward again air and bell body bottom breastbon breath chair chin down help kne line mat mirror
        muscl one open pleas pull rais remember right spot squar stretch think top under wrist
      `,
    ],
  ],
  length: [
    [-0.2, '3-4 8-12'],
    [-0.6, '1-2'],
  ],
  pair: [
    [0.6, 'all_<part> the_<attend>'],
    [
      0.4,
      `
        <chat>_want <far>_toe <harm>_a <move>_everyth <move>_your <place>_each a_spot feel_it from_the front_leg
        heart_<place> not_at push_the rib_<place> should_be slid_<place> spot_<place> spot_on the_<place>
        the_back the_front the_ground the_stand through_the toe_<do> wher_the your_<attend> your_a
      `,
    ],
    [
      0.2,
      `
        <air>_button <air>_gent <attend>_a <attend>_ahead <attend>_as <attend>_both <attend>_forward
        <attend>_from <attend>_ice <attend>_in <attend>_is <attend>_neck <attend>_of <attend>_somebody
        <attend>_someon <attend>_stay <attend>_switch <attend>_tight <attend>_tre <attend>_you <attend>_your
        <attend>_youv <chat>_a <chat>_after <chat>_anybod <chat>_crack <chat>_do <chat>_end <chat>_forgot
        <chat>_go <chat>_hamstring <chat>_hang <chat>_is <chat>_round <chat>_say <chat>_show <chat>_soft
        <chat>_sway <chat>_wait <do>_everyth <do>_through <far>_bird <far>_chest <far>_down <far>_hook <far>_in
        <far>_it <far>_quieter <harm>_down <harm>_it <harm>_on <harm>_over <harm>_sand <kit>_buckl <kit>_of
        <kit>_over <kit>_stay <kit>_together <kit>_want <kit>_was <kit>_would <kit>_your <less>_bel <less>_it
        <more>_away <more>_look <more>_one <more>_toward <more>_your <move>_glu <move>_look <move>_tall
        <move>_taller <move>_that <move>_the <move>_through <move>_yourself <not>_arm <not>_at <not>_drop
        <not>_each <not>_else <not>_in <not>_look <not>_me <not>_mov <not>_spill <not>_your <num>_at <num>_bit
        <num>_finger <num>_get <num>_pound <num>_the <pace>_is <pace>_light <pace>_step <pace>_the <part>_and
        <part>_behind <part>_blad <part>_brush <part>_button <part>_closer <part>_gent <part>_here <part>_hug
        <part>_is <part>_last <part>_leav <part>_level <part>_lift <part>_loos <part>_pocket <part>_slid
        <part>_the <part>_to <part>_toward <part>_tuck <part>_were <part>_widen <place>_ahead <place>_both
        <place>_by <place>_line <place>_look <place>_neck <place>_of <place>_pocket <place>_shoulder
        <place>_straight <place>_the <place>_ther <place>_toe <place>_your <settle>_a <settle>_from <settle>_heav
        <settle>_it <settle>_of <settle>_soft <settle>_would <settle>_your <swap>_a <swap>_buckl <swap>_note
        <take>_a <take>_it <take>_of <wrong>_you a_<do> a_<far> a_<harm> a_<move> a_board a_bow a_bowl a_crisp
        a_cup a_deer a_hing a_kick a_ladder a_lamp a_medal a_mov a_newspaper a_pal a_pint a_plank a_sock a_spr
        a_squat a_str a_ten a_time a_walnut about_to about_wher acros_the acros_your all_<num> all_day all_hamstr
        along_for and_<pace> and_feel and_it and_its and_not and_star and_the and_your anybod_<harm> anybod_nick
        are_<far> are_a are_just are_only arm_are as_<attend> as_a at_a at_it away_from away_with back_of
        back_pocket backsid_from balanc_a ball_of balloon_<place> balloon_in band_want bar_<place> bar_over
        be_<attend> be_complain be_like be_talk been_<wrong> been_sat been_shrug behind_<chat> behind_you
        bel_<pace> bel_button bel_gent belt_buckl bench_<chat> bench_was between_your big_chest big_toe bit_and
        blad_<not> blad_and blad_not body_goe bon_whil both_<attend> both_bicep both_of both_sid bottom_<place>
        bottom_is bottom_together breath_and brush_your buckl_into by_the chain_<place> chain_on cheek_should
        chest_<more> chest_<place> chest_lift chest_up chin_follow chin_tuck collarbon_<attend> collarbon_broad
        come_to control_the crack_a crush_the cup_of curl_the dead_<far> dead_<more> dead_<place> dead_level
        deer_<place> deer_over do_it dont_<attend> dont_<less> dont_drop dont_look down_and down_by down_ther
        drag_it driv_your drop_it each_<part> each_arm each_other ear_<place> ear_over ear_to elbow_behind
        elbow_brush else_<attend> else_mov end_<more> end_<place> end_up even_<attend> even_<kit> even_<part>
        even_<place> even_weight everyth_from eye_<place> feel_the feel_your five_the floor_away foot_closer
        for_five for_the forget_the forgot_your from_<part> front_<part> gent_<place> gent_in ghost_yourself
        glu_to go_<attend> go_<less> go_soft grip_it grip_the ground_away grow_<attend> grow_<place> grow_out
        grow_tall grow_taller hand_are hang_off head_<chat> head_<do> head_<settle> head_hang head_last
        heart_down heart_over heav_<attend> hello_<attend> hello_<part> hello_hamstring help_with hip_<more>
        hip_<place> hip_do hip_down hip_leav hip_level hip_that hip_to hold_it hug_<more> hug_<place> hug_up
        imagin_<chat> in_<air> in_<num> in_breath in_one in_the in_your into_the into_your is_all is_in is_just
        isnt_mov it_<chat> it_<far> it_<more> it_all it_help it_let it_like it_melt it_out it_should it_stop
        it_till it_up itll_<settle> itll_come its_<part> its_acros its_all its_buttock its_chang its_like its_low
        its_that its_the its_wind its_your jar_<place> jar_on jaw_loos jump_<attend> jump_tall just_along
        just_hook keep_your kne_over kneecap_<do> kneecap_slid lamp_post lead_from lean_your leg_follow leg_the
        let_<settle> let_anybod let_go lift_on light_<do> light_<place> light_on light_step like_<harm> like_ice
        like_somebody like_tre like_you like_youv line_from lino_with littl_quieter littl_toe lock_and
        long_<part> long_neck look_at loos_<part> loos_<settle> loos_<take> loos_face low_<part> low_<place>
        low_back low_down medal_<place> medal_on melt_<attend> melt_if metr_ahead mov_plank near_the
        neck_<attend> newspaper_<place> newspaper_under next_<num> next_one nick_it nine_<far> nine_oclock
        nobody_spill not_<chat> not_<part> not_<place> not_arm not_each not_in not_me not_spill not_your
        note_<place> note_between noth_else of_backsid of_metr of_them of_waterwork of_wood of_you off_<chat>
        off_you on_a on_both on_it on_your one_a one_at one_bit one_get only_hook other_side over_<harm>
        over_<part> over_toe pelvic_floor pick_a pint_<place> pint_on planet_away plank_of plank_with pocket_is
        point_wher pound_note pres_<place> pres_down prod_it pull_your pump_the punch_the push_yourself
        quick_<attend> quick_<pace> quick_light rest_of rib_down rib_to rib_toward right_into ring_<move>
        ring_are round_and run_<attend> run_tall same_bit sat_<place> sat_on seat_of seen_a send_the
        shin_<attend> shin_<place> shin_straight should_<attend> should_<less> should_<wrong> should_feel
        should_wobbl shoulder_<far> shoulder_<more> shoulder_<place> shoulder_away shoulder_blad shoulder_level
        show_off sid_<place> sid_on side_of sinc_<num> sinc_nine sit_<more> sit_bon sit_up slid_<more> slid_the
        slid_up small_bird soften_on somebod_else someon_is spill_it squeez_everyth squeez_the squeez_your
        stand_<part> stand_leg star_at stay_<attend> stay_glu stay_look stick_from stick_your stiff_<attend>
        stop_<chat> stop_you straight_ahead strap_would switch_<place> switch_on tall_<attend> tall_as
        taller_<chat> taller_first ten_<part> ten_<swap> ten_pound tension_<place> that_<not> that_<place>
        that_<swap> that_been that_bit that_do that_isnt that_move that_seen that_should that_the that_water
        the_<ill> the_<less> the_<move> the_<part> the_achill the_bench the_body the_bone the_breath the_carpet
        the_chain the_clock the_corner the_crab the_effort the_end the_eye the_feel the_foot the_forehead
        the_head the_hip the_in the_knee the_kneecap the_leg the_lino the_middl the_next the_out the_planet
        the_power the_rest the_ride the_ring the_slid the_swell the_thigh the_top the_track the_underneath
        the_whol the_wobbl the_wreck ther_a thi_<num> thi_one thigh_and think_<place> through_both tight_<air>
        tight_<part> tight_bel till_it to_<attend> to_ankl to_hair to_poke to_toe to_turn to_you toe_<far>
        toe_and toe_press told_off top_shelf toward_your tower_is track_<place> track_with try_to tuck_a tum_hug
        turn_<chat> turn_you under_each underneath_side up_away up_from up_in up_look up_toward up_your wall_and
        want_that want_to want_your waterwork_<attend> waterwork_as way_<far> way_past weight_in were_after
        wet_sand wher_that wher_youv whil_<chat> whil_you whol_<part> whol_floor whol_foot whol_way will_<attend>
        will_feel wind_upward with_elbow with_ever with_your work_the would_<settle> would_<take> would_sit wr_it
        you_<chat> you_<place> you_do you_end you_forgot you_is you_round you_sway you_wait you_want
        youll_<attend> youll_feel your_<swap> your_<take> your_arm your_backsid your_belt your_cheek your_chest
        your_crack your_elbow your_feat your_hand your_hang your_head your_heal your_heart your_jaw your_kneecap
        your_low your_neck your_pelvic your_pocket your_sandal your_say your_sho your_show your_sit your_sock
        yourself_away youv_been
      `,
    ],
    [
      -0.2,
      `
        <attend>_and <attend>_arm <attend>_be <attend>_hand <attend>_has <attend>_out <attend>_over <attend>_that
        <attend>_theyr <attend>_under <attend>_wher <chat>_all <chat>_can <chat>_feel <chat>_in <chat>_it
        <chat>_look <chat>_not <chat>_you <do>_back <do>_them <do>_with <far>_the <kit>_with <less>_back
        <less>_the <less>_your <more>_to <move>_back <move>_both <move>_in <move>_it <move>_over <move>_them
        <num>_metr <num>_of <pace>_hand <part>_a <part>_at <part>_back <part>_flexor <part>_has <part>_like
        <part>_long <part>_off <part>_out <part>_still <part>_stretch <part>_under <place>_as <place>_front
        <place>_into <place>_like <place>_on <place>_out <place>_over <settle>_down <settle>_on <settle>_the
        <take>_the <wrong>_is a_<attend> a_<kit> a_<part> a_bell a_lot an_advert and_<do> and_<place>
        and_<settle> and_<take> and_let are_<attend> are_<more> are_<place> arm_<attend> arm_<place> arm_like
        as_<chat> as_the as_you as_your at_<chat> at_the back_like back_to backsid_and bottom_of chin_<more>
        com_<place> come_<place> dont_<settle> draw_a elbow_<attend> fac_the feel_<attend> feel_like feet_<place>
        floor_<place> floor_in floor_just for_your front_knee has_<num> head_follow heel_<place> hip_flexor
        hip_still if_that if_the if_your in_front into_a is_<attend> it_<do> it_<place> it_on its_only
        just_<place> just_in keep_it keep_the kne_<attend> knee_<attend> knee_<place> knee_soft last_<num>
        leg_<place> leg_long let_it let_the lift_the light_hand like_a like_theyr like_your look_<place> lot_of
        lower_<part> lower_<place> lower_back make_the not_<attend> of_<harm> of_an off_the one_<part>
        other_<part> out_like over_your reach_your sit_on soft_<part> stack_<place> stay_down step_<place>
        straight_<place> than_<chat> than_you that_a that_is that_mov that_your the_<air> the_<chat> the_air
        the_ankl the_arm the_bar the_bridg the_ceil the_chest the_hamstring the_heel the_insid the_kne the_last
        the_mirror the_neck the_rail the_same the_shoulder the_way them_<place> till_your to_<settle> to_the
        to_your toe_<place> toe_on toward_the tuck_<place> under_the up_<attend> up_through up_to walk_<attend>
        way_<place> way_down weight_over wher_<chat> with_a you_<move> you_<settle> you_feel your_<air>
        your_<chat> your_<kit> your_<not> your_<part> your_ankl your_bottom your_hip your_kne your_knee your_leg
        your_lower your_not your_thumb your_toe your_weight your_wrist
      `,
    ],
    [
      -0.4,
      `
        <far>_your <part>_on <place>_to hand_<place> stay_<place> the_other you_<attend>
      `,
    ],
  ],
  phrase: [
    [1.2, 'focus-sure'],
    [0.4, 'focus-hint focus-likely'],
    [0.2, 'execution-likely execution-sure tempo-hint'],
    [
      -0.2,
      `
        breathing-sure caution-hint caution-likely easier-likely equipment-sure praise range-likely setup-hint
        transitions
      `,
    ],
    [
      -0.4,
      `
        caution-sure chat dose_only easier-sure empty_clauses harder-sure setup-likely tempo-sure
      `,
    ],
    [-0.6, 'easier-hint range-sure setup-sure'],
  ],
  start: [
    [
      0.4,
      `
        <attend>_<attend> <move>_<attend> keep_your_chest like_a not_your push_the you_want your_a
      `,
    ],
    [
      0.2,
      `
        <air>_<pace> <attend>_<less> <attend>_<place> <chat>_<part> <do>_<attend> <far>_<place> <kit>_<move>
        <not>_<chat> <not>_<less> <pace>_<pace> <part>_<pace> <part>_<place> <take>_<more> a_bit a_bit_and all_in
        all_in_one all_the_weight as_if_you balanc_a bar_over bar_over_the bel_gent bel_gent_in big_chest big_toe
        big_toe_press blad_and blad_and_its blad_not blad_not_up both_sid chest_lift chin_tuck control_the
        control_the_middl crush_the crush_the_bar curl_the curl_the_hip dont_drop dont_drop_it dont_let_anybod
        dont_look dont_look_at driv_your driv_your_elbow each_one_a ear_over elbow_brush elbow_brush_your
        even_weight feel_your find_a_spot grip_it grip_it_like grip_the grip_the_lino grow_out grow_out_of
        grow_taller hang_off heel_to heel_to_hair hello_hamstring hip_level hip_not hip_not_arm hip_squar hip_to
        hip_to_toe hold_it hold_it_for hold_it_till i_want_your into_the it_help it_help_with it_is_the it_should
        it_should_be its_a its_a_balloon its_a_bow its_a_mov its_a_spr its_acros its_acros_the its_all
        its_buttock its_like its_like_an its_like_ice its_low its_low_down its_not_a its_that its_the its_the_hip
        its_the_underneath jump_tall keep_the_back keep_the_pelvi keep_your keep_your_shoulder kne_lock
        kne_lock_and kne_over lean_your lean_your_heart let_the_floor let_the_forehead let_the_thigh let_your
        let_your_pelvic like_somebody like_you like_youv like_youv_been littl_toe loos_face nobody_spill not_at
        not_at_each not_each not_each_other not_in not_me not_the_back not_your_low not_your_sho noth_else
        noth_else_mov one_at one_at_a pick_a pick_a_spot pres_down pull_your pump_the pump_the_arm punch_the
        punch_the_ground push_the_ground push_the_planet push_the_whol push_through_the push_your_belt
        push_yourself push_yourself_away put_your_hand quick_light quick_light_step rib_down rib_toward
        rib_toward_your run_tall send_the send_the_breath sit_up sit_up_on slid_the spread_the spread_the_floor
        squeez_everyth squeez_everyth_from squeez_the squeez_the_seat squeez_your squeez_your_bum stick_your
        stick_your_head stiff_as stiff_as_a that_isnt that_isnt_mov that_should that_should_be that_the_feel
        that_the_swell that_your_second the_chain the_chain_on the_hip_do the_knee the_next the_next_one the_rest
        the_rest_of the_shoulder the_whol_way ther_a ther_a_ten thi_one try_to tuck_a tuck_a_newspaper tum_hug
        tum_hug_up under_the we_are weight_in wher_the wher_youv wher_youv_been whol_foot whol_foot_on
        wrist_stack you_end you_end_up you_want_that you_will_feel youll_feel your_a_board your_a_plank your_arm
        your_arm_are your_hang your_hang_off your_show your_show_off
      `,
    ],
    [
      -0.2,
      `
        <air>_<attend> <air>_<place> <attend>_<chat> <attend>_<part> <chat>_<chat> <chat>_<not> <chat>_<swap>
        <move>_<place> <part>_<do> <place>_<part> all_the_way breath_into eye_on_your front_knee if_the if_your
        its_only its_only_the its_the_insid keep_it keep_the_hip keep_your_weight keep_your_wrist let_it
        let_the_heel look_at make_the not_a reach_your soften_the_kne that_a that_your the_hip_flexor the_other
        think_of_the weight_on weight_over_your your_not
      `,
    ],
    [-0.4, 'like_your'],
  ],
  word: [
    [0.6, 'blad else wher'],
    [
      0.4,
      `
        a abs all away bel both chest each even feel ground grow hang heal heart heav hip hook into kneecap loos
        pocket push rib should slid spill squeez the through tight want whol your
      `,
    ],
    [
      0.2,
      `
        achill acros ahead along attention backsid ball be been belt bench between big bit bon bone bowl brac
        broad brush buckl butt buttock calv carpet chain cheek clock collarbon complain control corner crab crack
        crown crush cup curl deer drag driv ear effort elbow end everyth feat forehead forget forgot from ghost
        glu grip hair head heel hello hundred ice imagin is isnt itll its jar jaw kick lamp lead level lino littl
        low medal melt metr middl mov neck newspaper nick nobody not note noth notic of only over pal pelvi
        pelvic pick pint planet plank poke post pound pres press pretend prod proud pump punch quick quieter
        relax ride ring sand sandal shelf sho shoulder shrug sid side sock someon spe spin spot spr stand star
        stiff str strap sway swell tailbon tall taller ten tension that thigh think toe toward tower track tum
        underneath upward walnut water waterwork were wet whil widen wind wobbl wood would wr wreck you yourself
      `,
    ],
    [
      -0.2,
      `
        0 advert afterward again air an ankl arm baby back band becaus befor bell bend bent box breath bridg but
        cake call can ceil chair com come count draw fac feet first flat flexor fold for four full gone good gras
        half has have hot how i joint kneel land left leg length longer lot make mat mild minut mirror muscl nice
        nose now off onto opposit or other palm paus pedal peopl pleas put quiet rail rais reach right roll round
        same shirt short skip slow so some stay step still straight stretch support sw take than thes they theyr
        thos thre thumb tiny tip to toda too touch two up waist walk way weight what when wrist
      `,
    ],
    [-0.4, 'bottom down hand keep knee lower out remember them'],
    [-0.6, 'kne'],
    [-0.8, 'if'],
  ],
} as const satisfies CueWeights
