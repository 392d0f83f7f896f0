/** How much each feature of a clause (cue-features.ts) speaks for no cue at all; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const NONE_WEIGHTS = {
  bias: [[0.8, 'yes']],
  class: [
    [0.4, 'chat do num'],
    [0.2, 'take'],
    [-0.2, 'ill less move pace place settle'],
    [-0.4, 'air harm part'],
    [-0.6, 'far wrong'],
  ],
  first: [
    [0.8, 'the'],
    [0.6, 'good off rest second shak'],
    [
      0.4,
      `
        <chat> <num> <place> back catch come down eight four how im its last love my okay remember right row six
        some squat stay straight ten that thirt till we who youll youv
      `,
    ],
    [
      0.2,
      `
        0 <kit> <pace> <take> a actual all alright anchor ankl as at away balanc banana becaus belt blu bound
        bridg calv cat chang cheer curl cushion did do done dont easy everyth fabulou face fast find five forearm
        have he hed here hes high hike hip hm hmm home i ignor ill is isnt it keep leg look lung make marg mat
        min minut near nine no nobod oh on onto oop other over paus peopl pickpocket pigeon pres press priya pull
        push pushup put rack righto rise roll ron save seven shaky she shed side sideway sit skater smil sor spin
        split squash static stroll swap switch tabl tatti thatll then ther thes thi third thre thread time twelv
        twent twic up walk wall weight were weve what which with wobbling yes youd
      `,
    ],
    [
      -0.2,
      `
        <attend> <harm> <ill> <move> <settle> about abov after again and anybod bell bench bin blad bor both
        bottom bounc breath brisk build bum butt carol check clos com count da ear ease either elbow even feet
        finish flat fold forehead from give got hard has heav hook jab jaw jog jump kyle land lean length light
        like littl live loop loos lower mid middl mine move nobody not now opposit option point quit ratio red
        resist rib rock round sat set settl shin short shoulder show sir skip sock squeez stand step stop strap
        stretch strid sw ta take tall tap tell thumb to toe together top treacl try tss tug two umbrella use wher
        wider wrist
      `,
    ],
    [-0.4, '<air> <far> <part> go half leav let one pleas wait you your'],
    [-0.6, 'long'],
  ],
  given: [
    [
      0.2,
      `
        <more> <swap> <wrong> anybod anyth ask book burn ceiling daughter dirt do dull easy feet few finger
        finish for grip happen it just last let lose mind normal not odd off or put read sav shop somebod stomach
        supin take talk the till together twist warm your yourself youv
      `,
    ],
    [-0.2, '<harm> <less> <num> <settle> are feel from go have like one'],
  ],
  last: [
    [0.6, 'minut no pres row'],
    [
      0.4,
      `
        again between body com curl eight five go lot lung many now okay rais set squat then ther twic ups
      `,
    ],
    [
      0.2,
      `
        accordion actual advert afterward alright arm back bar book brav breastbon breath breather bridg bucket
        bug calv car cardigan centr chair cheer clas clean clever click climber clock cobra comf count cow crawl
        da daughter deadlift desk dog done down drink each eas enough everyth everywher fabulou fac fanc fifteen
        fight finger finish flamingo follow forgotten four get good hanger hed himself hip hm hmm hold holida
        home hour i its kettlebell kicker kne lad ladder lap later leg less life line look lopsid love man marg
        me mine moment muscl name needl neither next nine nois not number off oh oil on only open opener over
        overtim pair pickpocket pictur pigeon plank pose press priya pushup quad quiet rac race rack rail releas
        remember rest rose rush say second sette seven sheet shut side six skater sor spin spot sprint squash
        squish stag stair stay stretch strid stuff sw tabl ten that think third thirt thos thrust tilt total tour
        trip twelv underneath v walk warm wash water wedding week wet wheez why work wrapper wrong year yes
      `,
    ],
    [
      -0.2,
      `
        achill after ahead air and anyth arch armpit backward bag band behind bell bit bottom bow box brisk bum
        bus carol ceil chanc chang chest chin clos closer complete crab crat cros crunch dead dont dum ear elbow
        elephant end even everybod exam eye far fift first fist floor foot for forward fram fresh glas grab
        gradual grip ground hammock hamstring hand hat held here high hook how in it itll jab jean jump knee
        kneel kyle land last lean light like live loos low lower margaret measur mid middl mississippi more mov
        move movement neck oclock opposit other out palm pendulum plat plent pocket post prepar puff purpl red
        rib room rule run seriou sharp short shoulder shrug singl sock soft sphinx sprawl squeez still stomp
        straight sway swim tall taller tent them thumb tight tiny tipto together tonight top treacl tricep tss
        tuck turn under version wait way wee what window wrist
      `,
    ],
    [-0.4, 'bounc flat heav long pleas toe'],
    [-0.6, 'you'],
  ],
  length: [
    [0.8, '1-2 3-4'],
    [0.4, '5-7 8-12'],
  ],
  pair: [
    [0.6, '<kit>_down'],
    [
      0.4,
      `
        0_<pace> <chat>_on <do>_ups <kit>_up <move>_ups <num>_more <num>_of <num>_slow <part>_only <place>_here
        <place>_on <place>_to <take>_down a_<chat> a_<take> a_minut and_<chat> and_<place> back_to call_it
        chang_<part> chang_leg dont_<pace> dont_rush down_on have_a i_<chat> is_it is_the it_com it_is its_the
        leg_<do> leg_<far> long_as of_a on_your same_again shoulder_<do> sit_to your_own
      `,
    ],
    [
      0.2,
      `
        0_0 0_<num> 0_centimetr 0_foot 0_minut 0_second 0_to <attend>_about <attend>_anybod <attend>_anyth
        <attend>_as <attend>_at <attend>_befor <attend>_fiv <attend>_got <attend>_has <attend>_into <attend>_jaw
        <attend>_like <attend>_long <attend>_lopsid <attend>_many <attend>_much <attend>_noth <attend>_odd
        <attend>_oil <attend>_overtim <attend>_shut <attend>_somebody <attend>_stretch <attend>_wriggl <chat>_are
        <chat>_be <chat>_brav <chat>_call <chat>_cant <chat>_else <chat>_enjoy <chat>_exercis <chat>_first
        <chat>_go <chat>_got <chat>_home <chat>_i <chat>_if <chat>_in <chat>_like <chat>_lose <chat>_lost
        <chat>_lot <chat>_me <chat>_miss <chat>_of <chat>_or <chat>_read <chat>_rest <chat>_sav <chat>_slack
        <chat>_take <chat>_tell <chat>_time <chat>_told <chat>_us <chat>_was <chat>_will <chat>_writ <do>_apart
        <do>_if <do>_onto <do>_out <do>_over <do>_round <do>_two <far>_home <far>_it <far>_kne <far>_lad
        <far>_longer <far>_lung <far>_one <far>_somebod <far>_you <far>_your <harm>_again <harm>_asleep
        <harm>_back <harm>_hold <harm>_leg <harm>_your <ill>_back <ill>_its <ill>_leg <ill>_of <kit>_away
        <kit>_for <kit>_from <kit>_it <kit>_sit <kit>_squeak <kit>_squish <kit>_them <kit>_ups <less>_hold
        <less>_just <less>_long <less>_to <less>_your <more>_feel <more>_for <more>_of <more>_out <more>_sheet
        <more>_toda <move>_apart <move>_as <move>_back <move>_by <move>_deep <move>_eye <move>_go <move>_if
        <move>_it <move>_like <move>_mov <move>_onto <move>_over <move>_push <move>_round <move>_step <move>_that
        <move>_up <not>_0 <not>_ask <not>_bar <not>_be <not>_burpe <not>_cheer <not>_clever <not>_count
        <not>_fanc <not>_get <not>_got <not>_is <not>_it <not>_jog <not>_kick <not>_leav <not>_make <not>_on
        <not>_rac <not>_rush <not>_talk <not>_tell <not>_that <not>_think <not>_throw <not>_tour <not>_watch
        <not>_wheez <not>_wor <num>_0 <num>_a <num>_centimetr <num>_each <num>_five <num>_for <num>_goe
        <num>_hundr <num>_is <num>_length <num>_minut <num>_muscl <num>_on <num>_second <num>_set <num>_tim
        <num>_year <pace>_0 <pace>_from <pace>_just <pace>_ladder <pace>_lot <pace>_off <pace>_one <pace>_sit
        <pace>_than <part>_again <part>_and <part>_breath <part>_extension <part>_flexor <part>_has <part>_kicker
        <part>_opener <part>_plank <part>_pres <part>_pull <part>_rais <part>_shut <part>_slid <part>_squeez
        <part>_stair <part>_stand <part>_stretch <part>_ta <part>_thrust <part>_tilt <part>_to <part>_wher
        <part>_wobbl <part>_you <place>_0 <place>_all <place>_as <place>_between <place>_down <place>_end
        <place>_everyth <place>_februar <place>_in <place>_into <place>_jaw <place>_me <place>_my <place>_now
        <place>_thi <place>_thos <place>_total <place>_v <settle>_a <settle>_both <settle>_comf <settle>_each
        <settle>_in <settle>_off <settle>_on <settle>_pull <settle>_round <settle>_slack <settle>_ta <settle>_wet
        <settle>_your <swap>_ankl <swap>_bar <swap>_burpe <swap>_count <swap>_for <swap>_hear <swap>_light
        <swap>_over <swap>_pace <swap>_rac <swap>_rest <swap>_squish <swap>_tour <swap>_two <swap>_use
        <swap>_wheez <swap>_with <take>_comf <take>_pull <take>_ta <take>_them <take>_to <take>_together
        <take>_wet <take>_your <wrong>_you a_<air> a_<part> a_<settle> a_bit a_book a_bottom a_breather
        a_corkscrew a_desk a_door a_dumbbell a_face a_fight a_hundr a_littl a_number a_pictur a_pie a_race a_seat
        a_side a_sip a_skip a_slow a_very a_wash a_week a_whol about_0 advanc_sheet after_a again_<place>
        all_<pace> all_faster all_four all_go all_of all_right all_your an_advert an_upsid anchor_<place>
        anchor_down and_<more> and_<part> and_a and_again and_back and_check and_do and_its and_kne and_one
        and_round and_same and_shak and_sing and_sw and_the and_up and_your ankl_<wrong> ankl_wobbl anybod_ask
        anyth_<attend> anyth_feel are_<chat> are_so are_stronger arm_and arm_only as_<place> as_befor as_long
        as_many ask_<chat> ask_me at_<chat> at_all at_that away_you back_<do> back_wher bad_<place> bad_back
        band_in band_squeak bar_down be_<harm> be_<ill> be_hard be_look be_sick becaus_<chat> becaus_you
        been_stuck behind_the bell_<place> bell_down bend_it bent_end between_them big_<air> big_<num> big_breath
        big_lad big_one bit_of both_<take> both_feet bottom_<kit> bottom_<swap> bottom_and bottom_kicker
        bottom_stair br_it burn_that by_the calf_<attend> calf_<do> calf_stretch call_a can_<pace> can_<swap>
        can_hear can_use ceiling_dirt chas_<chat> check_that cheer_a chest_<do> chest_opener chest_stretch
        child_pose clos_<place> coat_hanger com_<more> come_on corkscrew_com could_<swap> could_do cushion_from
        cushion_with dead_<do> dead_<move> dead_bug dead_lift deodorant_is dig_<far> dig_deep do_<num> do_<swap>
        do_its do_that do_the do_two doe_thi doesnt_lead dont_<attend> dont_be dont_cheer dont_jog dont_kick
        dont_leav dont_look dont_make dont_throw door_and down_<place> down_and down_for down_v dumbbell_<place>
        dumbbell_in each_<part> each_leg each_side easy_just either_com enjo_it even_it ever_minut eye_contact
        eye_shut face_<do> face_pull face_ta fall_asleep fanc_it far_and fast_<part> fast_<take> fast_feet
        faster_than feel_lopsid feel_odd feel_oil feet_<more> feet_<place> feet_down feet_together feet_up
        few_<far> few_till find_the find_yourself finish_<chat> finish_first first_<chat> first_<pace> first_time
        fiv_your flexor_<attend> flexor_<do> flexor_stretch foot_through for_0 for_<num> for_carry for_child
        for_finish for_five for_fort for_now for_the for_toda forearm_plank fridg_<place> from_underneath get_a
        get_comf get_off get_wet give_them go_and go_in go_like go_slack go_to goblet_<do> goblet_<move>
        goblet_squat got_<num> got_your green_light grip_<attend> grip_burn gymnastic_<kit> gymnastic_<swap>
        gymnastic_book half_a hamstr_<do> hand_<more> hand_<place> hand_so hand_to hand_up hang_out has_<num>
        have_<num> he_<less> head_follow hear_a heart_<part> heart_back heel_<do> heel_<move> heel_rais heel_slid
        high_<part> high_kne hike_it hip_flexor hip_lift hip_thrust his_<part> hold_<num> hold_each hold_in
        how_many hug_the i_<attend> i_<settle> i_take i_was if_<chat> if_<more> if_<not> if_anybod if_anyth
        if_noth if_you if_youv ignor_it im_<not> im_not in_<part> in_a in_everyth in_februar in_here in_the
        in_ther in_thi in_total is_<chat> is_<do> is_<ill> is_<num> is_click is_like is_suppos is_watch is_what
        is_work isnt_a isnt_it it_<chat> it_<not> it_<pace> it_down it_eas it_either it_feel it_here it_less
        it_liv it_never it_pinch it_talk it_tidy it_to it_twic it_was it_your its_<attend> its_<less> its_<not>
        its_<num> its_<pace> its_<wrong> its_green its_not its_twist its_warm its_wrong join_<place> join_in
        just_hang just_life keep_<chat> keep_go keep_it keep_push keep_step keep_that keep_you kick_it kne_are
        kne_in knee_<do> knee_is knee_squeez knot_again land_wher last_one leg_<more> leg_extension leg_only
        leg_stand leg_swing leg_up let_me let_us lie_down lie_ther life_with like_<less> like_a like_and like_it
        like_much like_the like_they littl_<settle> littl_<take> long_<attend> look_<attend> look_<less>
        look_<more> look_at look_like low_<do> low_<move> low_lung make_a make_em make_eye make_it many_<attend>
        many_as me_<chat> mind_off minut_<place> more_<attend> more_like more_with mountain_climber mov_<place>
        mov_yet move_<place> move_on my_<chat> my_<part> near_<swap> near_home neck_<do> neck_tilt need_to
        never_land ninet_<pace> no_<attend> no_<less> no_<settle> no_<take> no_bar no_break no_burpe no_rac
        no_rest no_tell no_tour no_weight no_wheez nobod_is nobody_ever nobody_look nobody_mov not_0 not_<attend>
        not_<num> not_<wrong> not_cheat not_even not_get not_got not_watch not_wor noth_<more> noth_fanc
        number_<num> of_an of_gossip of_rail of_spac of_that of_them of_thos off_<chat> off_do off_you on_<chat>
        on_<part> on_<place> on_hip on_me once_<more> one_and one_finger one_for one_more one_of only_<attend>
        only_<chat> only_<num> only_longer only_you onto_all onto_your or_a or_carpet or_is or_plough or_put
        or_the or_two other_<num> other_<part> other_arm other_leg other_one other_side other_way our_<chat>
        out_your outsid_of over_ther over_to own_<pace> own_<part> own_ankl own_pace park_it peopl_say
        percent_for pie_wrapper pinch_its pop_the priz_for proper_<chat> proper_set pull_apart push_<part>
        push_<place> push_back push_through push_ups put_the put_them rack_it rate_ladder read_a rib_<air>
        rib_breath right_arm ring_them rise_to roll_<place> roll_onto roll_over round_<num> round_<place>
        round_in run_<attend> run_like rush_off rush_to same_<place> same_as sav_yourself second_<chat>
        second_<pace> second_<settle> second_lot see_some see_that seen_<far> seen_<less> seen_enough set_on
        shak_<place> shak_it shak_out shak_the shak_your shed_<attend> shed_still shoulder_<move> shoulder_pres
        shoulder_tap sick_of side_<part> side_leg side_plank sing_<far> sing_till sit_<place> sit_on sit_tall
        skin_the slip_<place> slip_on slow_<air> slow_<do> slow_<settle> slow_<take> slow_breath slow_it slow_sit
        slow_walk so_<chat> so_<not> so_<place> so_<swap> so_clos so_no soft_jaw some_evening somebod_com
        somebody_<part> somebody_deodorant somebody_hum sore_<part> sore_leg spac_<place> spac_on squar_<air>
        squar_breath squeez_for stand_<attend> stand_at start_the start_with static_<attend> static_<part>
        static_quad stay_<attend> stay_<more> stay_<place> stay_as stay_by stay_in stay_level stay_up step_<more>
        step_up step_ups still_got still_wriggl stomach_talk stop_ask straight_into straighten_the stroll_<part>
        stroll_<place> stroll_back strong_<part> stronger_than stuck_<place> supin_<do> supin_<move> supin_twist
        support_<settle> support_<take> support_hold suppos_to swap_<attend> swap_<place> swap_if swap_over ta_da
        take_your tell_off tell_you tell_your ten_<less> ten_too that_<chat> that_<harm> that_<more> that_<num>
        that_<place> that_between that_both that_dull that_for that_just that_knot that_nice that_normal that_one
        that_your thatll_<swap> thatll_do the_0 the_<carer> the_<far> the_<harm> the_<place> the_<settle>
        the_advanc the_ankl the_bear the_bell the_bent the_board the_bottl the_bridg the_bucket the_calculator
        the_car the_cat the_ceiling the_clock the_dead the_glut the_gymnastic the_kite the_needl the_number
        the_operat the_pair the_physio the_record the_right the_shop the_spin the_sprint the_start the_straight
        the_supin the_sw the_third the_wee their_<part> their_knee them_a ther_<chat> ther_<far> ther_at
        ther_until thes_<attend> thes_are they_all theyr_all theyv_seen thi_<not> thi_feel thi_isnt thi_umbrella
        think_about third_one thirt_<pace> thirt_second thread_the through_<chat> throw_it till_somebod till_your
        time_<place> time_is to_<attend> to_<num> to_<swap> to_centr to_hand to_one to_stand to_that to_your
        tomorrow_<chat> too_<place> too_long towel_squish turn_<attend> twent_<pace> twent_second twist_<chat>
        twist_you two_goe two_more two_one under_0 until_it until_you up_<chat> up_and up_out us_<chat>
        us_<settle> us_go use_thi used_to walk_<part> walk_<place> walk_back walk_it wall_<do> wall_<settle>
        wall_<take> wall_sit want_<place> want_in warm_<more> warm_<place> warm_up was_<chat> was_<less>
        watch_<chat> watch_me way_around way_ther we_<chat> we_<settle> we_<swap> we_<take> we_are we_do we_start
        wee_<kit> wee_<settle> wee_<take> wee_loop weight_<more> weight_<place> weight_up what_keep when_<chat>
        when_youv wher_child wher_it which_is whol_th will_be with_<attend> with_<kit> with_<place> with_a
        with_his with_kettlebell with_squar wobbl_is wobbling_<less> wobbling_<swap> wobbling_fine work_overtim
        would_be wriggl_<place> wriggl_out writ_it you_<chat> you_<more> you_are you_can you_go you_lose you_lost
        you_on you_or you_see you_the you_to youd_be youll_<less> youll_<not> youll_<swap> youll_need youll_not
        youll_want your_<do> your_<kit> your_<more> your_<num> your_<swap> your_<take> your_back your_ball
        your_brav your_breastbon your_cardigan your_chair your_cushion your_daughter your_fac your_feet
        your_front your_hand your_heart your_jacket your_lot your_number your_other your_read your_row your_sav
        your_shoulder your_sore your_spin your_stomach your_tell your_writ yourself_for youv_<chat> youv_<not>
        youv_finish youv_not youv_read
      `,
    ],
    [
      -0.2,
      `
        0_metr <air>_on <attend>_a <attend>_again <attend>_hand <attend>_if <attend>_kne <attend>_on <attend>_thi
        <attend>_up <chat>_0 <chat>_a <chat>_after <chat>_all <chat>_ask <chat>_backward <chat>_dont
        <chat>_finish <chat>_gravit <chat>_have <chat>_here <chat>_hundr <chat>_keep <chat>_land <chat>_leg
        <chat>_lift <chat>_look <chat>_margaret <chat>_mean <chat>_over <chat>_pay <chat>_see <chat>_seen
        <chat>_seriou <chat>_stand <chat>_turn <chat>_want <chat>_would <chat>_year <do>_a <do>_about <do>_at
        <do>_down <do>_each <do>_forward <do>_in <do>_off <do>_the <do>_them <do>_to <do>_under <do>_you
        <do>_your <do>_yourself <far>_a <far>_on <far>_than <far>_the <far>_toe <far>_version <harm>_on
        <ill>_side <kit>_are <kit>_at <kit>_if <kit>_is <kit>_next <kit>_of <kit>_on <kit>_over <less>_fast
        <less>_it <less>_you <more>_in <more>_one <more>_pair <more>_your <move>_a <move>_breath <move>_down
        <move>_forward <move>_in <move>_off <move>_on <move>_out <move>_sure <move>_swap <move>_talk <move>_tall
        <move>_your <not>_an <not>_at <not>_bus <not>_drop <not>_ear <not>_hold <not>_in <not>_let <not>_more
        <not>_mov <not>_race <not>_want <num>_back <num>_count <num>_elephant <num>_ever <num>_kilo
        <num>_mississippi <num>_oclock <num>_up <pace>_a <pace>_at <pace>_for <pace>_in <pace>_now <pace>_out
        <pace>_to <pace>_twic <pace>_with <part>_a <part>_are <part>_as <part>_at <part>_back <part>_down
        <part>_first <part>_go <part>_goe <part>_here <part>_hover <part>_off <part>_over <part>_point
        <part>_push <part>_stay <part>_straight <part>_that <place>_a <place>_again <place>_ahead <place>_both
        <place>_each <place>_flat <place>_for <place>_front <place>_if <place>_it <place>_lan <place>_like
        <place>_line <place>_one <place>_onto <place>_our <place>_slow <place>_than <place>_that <place>_the
        <place>_till <place>_with <place>_your <settle>_another <settle>_at <settle>_back <settle>_backward
        <settle>_from <settle>_it <settle>_more <settle>_of <settle>_someth <settle>_up <swap>_a <swap>_all
        <swap>_be <swap>_bell <swap>_bus <swap>_go <swap>_grab <swap>_hand <swap>_hold <swap>_it <swap>_more
        <swap>_not <swap>_of <swap>_on <swap>_one <swap>_pair <swap>_your <take>_a <take>_it <take>_on
        <take>_over <take>_the a_<attend> a_<harm> a_<move> a_<not> a_<pace> a_<swap> a_beat a_bounc a_box
        a_chanc a_coupl a_crunch a_good a_goos a_hip a_knee a_lamp a_light a_liv a_lot a_night a_no a_pendulum
        a_pull a_right a_sphinx a_spot a_spr a_sprawl a_squat a_stop a_tabl a_ten a_wee a_whisker about_<num>
        after_it again_<not> all_<part> all_the an_<far> an_<part> an_ankl an_exam an_inch and_0 and_<move>
        and_<pace> and_<take> and_call and_even and_go and_it and_right and_still and_you are_<less> are_<not>
        are_<wrong> are_not arm_<do> arm_<move> arm_<place> as_if at_six at_the back_<part> bar_<attend> be_held
        becaus_thi befor_<chat> befor_you behind_<chat> behind_you between_<num> big_toe bin_it body_<do>
        body_swing both_hand both_sid brisk_<do> brisk_<move> brisk_walk bum_<place> bus_com can_<settle>
        can_<take> can_be can_hold clos_to com_<part> com_<place> com_back com_down com_for come_<more> come_down
        come_up count_<place> count_out da_dum dead_<attend> dead_<place> do_<do> do_all do_not do_your
        doesnt_<settle> dont_<chat> dont_<settle> dont_hold dont_let dont_race dont_want down_<pace> down_flat
        down_ther down_to each_<do> each_<place> each_one each_palm ease_off elbow_<chat> end_<more> end_<place>
        end_up face_<place> feel_<more> feel_it few_of fight_it finish_<attend> first_<num> first_hundr
        five_<pace> five_<swap> five_kilo five_second float_<place> fold_<place> for_four for_lunch for_one
        for_thi for_two for_you forehead_<place> forehead_down four_<pace> four_second from_dead from_it
        front_<part> full_<pace> full_second get_<pace> get_down get_to give_yourself go_<far> go_<less>
        go_<more> go_<pace> go_<place> go_<swap> go_backward go_down go_purpl good_<part> good_leg got_taller
        gravit_<swap> gravit_do half_<chat> half_<num> half_one happen_<place> happen_in has_it have_<more>
        have_more head_<place> heavier_pair heel_<place> hip_<attend> hip_<place> hip_stretch hip_that hold_a
        hold_it hold_of hold_on hold_the how_<chat> how_peopl how_you i_<swap> i_ask i_do i_dont i_know i_mean
        i_see i_want i_would if_it if_its if_that if_the ill_<not> ill_not im_pay im_see im_seriou in_<attend>
        in_<pace> in_for in_front in_one in_to in_your into_a is_<swap> is_a is_all is_at is_fine is_how isnt_mov
        it_<far> it_<move> it_<settle> it_<swap> it_at it_home it_into it_mov it_one it_out its_<chat> its_<part>
        its_all its_buttock its_com its_easier its_molass its_nice its_opposit its_pull its_ther its_what
        ive_<chat> ive_done ive_seen keep_<air> keep_breath keep_talk keep_them knee_<place> know_its know_your
        lamp_post last_0 last_year lean_<place> leav_lane left_and leg_<place> leg_push let_<chat> let_<pace>
        let_<settle> let_go let_gravit let_it let_the let_you level_<num> lift_the light_<place> light_in
        like_you like_your like_youv long_<place> long_again look_<place> lose_the lower_<chat> make_sure
        make_the mean_that mine_is need_it next_<num> next_one nine_<far> nine_oclock no_<do> no_<more> no_bus
        no_more nobody_chas nobody_measur nobody_watch not_<chat> not_<do> not_an not_in not_want of_0 of_<far>
        of_<kit> of_it of_pound of_ten of_you off_the on_a on_both on_our on_the one_<attend> one_<part>
        one_<place> one_at one_ever one_foot one_second one_to only_a onto_our onto_the open_for opposit_<part>
        or_0 or_its or_so our_back out_<place> out_for out_on outsid_lan over_your pair_for paus_it paus_twic
        pay_for pres_<place> put_it quiet_<part> right_<place> right_into roll_<more> roll_<settle> roll_<take>
        roll_up round_each round_your same_<num> same_bow same_way sat_<place> say_<more> say_anyth see_a
        see_tent seen_that set_over set_the shoulder_<place> show_me show_off side_<place> side_of side_on
        simp_<settle> simp_<take> singl_<num> singl_one sit_<more> sit_ther six_out sock_<place> sock_on
        somebody_smil sore_side stand_<more> stand_<place> stand_up start_<place> stay_on stop_at stop_ear
        straight_<more> straight_up strid_away strok_a sw_<chat> ta_dum take_the tell_me ten_<swap> than_a
        that_<less> that_<move> that_<not> that_<part> that_<swap> that_all that_been that_count that_done
        that_fine that_is that_isnt that_leg that_move that_set that_should that_ther that_why the_<air>
        the_<chat> the_<ill> the_<kit> the_<pace> the_<swap> the_<wrong> the_achill the_air the_back the_bag
        the_ball the_band the_basement the_carpet the_ceil the_crab the_curtain the_end the_feel the_first
        the_floor the_good the_ground the_hat the_head the_hip the_joint the_leg the_length the_mat the_next
        the_one the_other the_part the_rule the_same the_seat the_sore the_thigh the_top the_tricep
        the_underneath the_upright the_way the_whol ther_0 ther_<swap> ther_a ther_for ther_no ther_to they_<not>
        they_wont theyr_singl thi_<num> thi_<pace> thi_for thi_into thi_time thi_with thre_to through_the
        time_for time_with to_<chat> to_<do> to_<far> to_<less> to_<pace> to_<place> to_<settle> to_be to_help
        to_prepar to_round to_sit to_the to_you toe_<do> too_fast tug_it turn_it turn_thi twic_<attend> twic_as
        two_<do> two_<kit> two_<pace> two_<part> two_finger two_mississippi two_step under_<chat> under_you
        underneath_side up_<attend> up_in up_with up_your us_come use_a use_that wait_at wait_ther want_them
        way_<more> way_<place> way_down way_up we_<do> we_<move> we_lift we_tap week_<place> week_on were_after
        when_it wher_its wher_the wher_your whil_<chat> whil_you whol_<pace> whol_shop whol_time whol_way
        will_<settle> will_<take> with_just with_your work_the would_<chat> you_<swap> you_could you_do you_dont
        you_finish you_have you_in you_is you_keep you_lift you_margaret you_move youll_<chat> youll_<settle>
        youll_go your_<carer> your_<far> your_<less> your_<not> your_<place> your_a your_backsid your_bottom
        your_bus your_chest your_chin your_head your_leg your_look your_not your_pocket your_sho your_templ
        your_tipto your_turn yourself_<more> yourself_<place> yourself_up youv_been
      `,
    ],
    [
      -0.4,
      `
        <attend>_your <chat>_do <chat>_is <chat>_the <move>_the <move>_them <not>_a <num>_out <part>_on
        <place>_up <settle>_the a_<do> and_<settle> call_that is_<less> it_<do> like_<chat> not_a over_the
        should_be the_arm to_<move> want_to you_<do> your_<part>
      `,
    ],
    [-0.6, 'you_<move>'],
    [-0.8, 'the_<part>'],
  ],
  phrase: [
    [0.8, 'chat praise transitions'],
    [0.6, 'dose_only empty_clauses'],
    [0.4, 'purpose range-hint'],
    [0.2, 'breathing-likely caution-likely equipment-likely retracted'],
    [
      -0.2,
      `
        caution-hint easier-likely execution-likely fault-hint focus-likely range-likely setup-hint setup-sure
        tempo-hint
      `,
    ],
    [
      -0.4,
      `
        breathing-sure caution-sure easier-sure execution-sure fault-likely fault-sure focus-sure range-sure
        tempo-likely
      `,
    ],
    [-0.6, 'harder-sure tempo-sure'],
  ],
  start: [
    [0.6, '<part>_<do>'],
    [
      0.4,
      `
        <chat>_<chat> <chat>_<settle> <not>_<attend> <not>_<pace> back_to dont_rush its_the look_at
      `,
    ],
    [
      0.2,
      `
        <attend>_<do> <attend>_<not> <chat>_<take> <do>_<part> <far>_<attend> <far>_<part> <kit>_<do>
        <kit>_<more> <move>_<attend> <move>_<do> <not>_<place> <not>_<take> <num>_<do> <num>_<num> <pace>_<chat>
        <pace>_<num> <pace>_<settle> <pace>_<take> <place>_<chat> <settle>_<chat> <settle>_<do> <settle>_<place>
        <swap>_<attend> <swap>_<chat> <swap>_<less> <swap>_<part> <swap>_<settle> <swap>_<take> a_minut a_seat
        a_skip a_slow a_slow_sit all_of an_upsid an_upsid_down anchor_down anchor_down_to arm_and arm_and_sw
        as_long as_long_as as_many as_many_as back_down_for back_to_the band_in band_in_the bend_it big_breath
        big_lad both_feet both_feet_down br_it_in by_the by_the_way chang_leg chang_leg_if cheer_a cheer_a_littl
        chest_opener chest_stretch come_down_onto come_forward come_on dead_lift do_it_twic do_not_wor do_the
        dont_be dont_be_look dont_cheer dont_get_comf dont_jog dont_jog_it dont_kick dont_kick_it dont_leav
        dont_leav_it dont_make dont_make_eye dont_rush_off dont_rush_to dont_sit_down dont_sit_on dont_throw_it
        down_on face_ta face_ta_da fast_feet find_a_bit find_yourself find_yourself_a forearm_plank get_a
        get_your get_your_cushion give_them give_them_a go_slack half_a_minut half_way_ther hand_on hand_on_hip
        hand_up hang_out hang_out_in have_a heel_rais high_kne hike_it hip_lift hip_thrust hold_each
        hold_each_one hold_for hold_it_up hug_the hug_the_kne if_anybod if_anybod_ask if_anyth if_anyth_feel
        if_its_twist if_noth if_noth_happen if_that_dull if_the_ceiling if_you_lose if_you_lost if_your_grip
        if_your_mind if_your_sav if_your_stomach if_youv_read im_not isnt_it it_doesnt_lead it_get it_never
        it_never_land it_was its_a_ladder its_not_0 its_the_insid its_your_sore keep_go keep_it keep_it_com
        keep_it_go keep_it_tidy keep_push keep_step keep_the_kne kne_are kne_are_go kne_in knee_squeez leg_swing
        leg_up let_it_all let_me let_us let_us_go let_your_head lie_ther like_an like_an_umbrella like_the_other
        look_at_all look_at_each look_at_that look_at_you make_em make_it make_it_your no_bar no_burpe no_rac
        no_rest no_tell no_tell_off no_tour no_weight no_wheez nobod_is nobod_is_watch nobody_ever nobody_mov
        nobody_mov_yet not_like_somebody not_near_the not_on_the not_the_big off_you off_you_go on_the on_to
        on_to_the on_your_hand one_leg only_longer only_you only_you_like onto_your onto_your_back or_a
        or_a_bottom or_a_support or_carpet or_plough or_the other_arm out_to out_to_the over_to over_to_the
        paus_on paus_on_one pick_up pick_up_the pop_the pop_the_bell pull_apart push_back push_through push_ups
        rack_it rate_0_to rest_your_feet rise_to rise_to_hand roll_onto roll_onto_your roll_over roll_over_on
        run_like run_like_your same_again second_lot shak_the shak_your shed_still shed_still_got shoulder_pres
        side_plank sit_back_down sit_on_your sit_to sit_to_stand slid_up slip_on slip_on_a slow_it slow_it_down
        soft_jaw some_evening some_peopl somebody_deodorant somebody_deodorant_is somebody_hum stand_at
        stand_at_the static_quad stay_as stay_as_long stay_as_you stay_by stay_by_the stay_in stay_in_the stay_up
        stay_up_for step_ups stop_ask straight_down straight_down_on straight_into straight_into_the straight_on
        straighten_the stroll_back swap_leg swap_over take_a_breath take_your_hand that_a_good that_a_pictur
        that_between that_between_them that_the_ankl that_your thatll_do the_band the_band_squeak the_handl_just
        the_hip the_hip_flexor the_other_arm the_other_leg they_all they_do they_do_it theyr_all theyr_all_faster
        thi_is thi_is_the thi_isnt thi_one_on think_of_an think_of_the thirt_second thirt_second_down thread_the
        thread_the_needl till_your till_your_heart till_your_shoulder turn_your_back up_and up_to_the use_thi
        use_thi_umbrella walk_it walk_it_off walk_your_feet we_do weight_up weight_up_at which_is which_is_a
        with_a wobbling_fine you_can you_can_use you_get you_hang_off youd_be youll_not youll_not_get youll_want
        your_other your_own your_own_pace
      `,
    ],
    [
      -0.2,
      `
        0_and 0_and_0 <air>_<place> <attend>_<attend> <attend>_<chat> <attend>_<num> <attend>_<part>
        <chat>_<pace> <do>_<more> <do>_<pace> <far>_<kit> <far>_<place> <less>_<chat> <more>_<num> <move>_<pace>
        <not>_<chat> <not>_<do> <not>_<far> <not>_<wrong> <num>_<kit> <part>_<attend> <place>_<more>
        <place>_<pace> <place>_<part> <place>_<place> <settle>_<attend> <settle>_<far> <settle>_<less>
        <settle>_<more> <settle>_<pace> <settle>_<swap> <take>_<pace> <take>_<place> a_few_of a_good a_pull a_wee
        a_whisker after_it all_the all_the_other and_right as_if becaus_thi becaus_thi_is bin_it both_hand
        br_it_home come_up da_dum do_it_one dont_hold dont_let dont_race dont_sit_ther down_flat down_for
        down_for_thre down_to ease_off ever_singl ever_singl_one four_second four_second_in give_yourself
        go_backward go_down go_to half_a_chanc has_it hold_it hold_of hold_of_it hold_the i_do i_do_thi i_dont
        i_dont_want i_know i_know_your i_mean i_mean_that i_see i_see_a i_see_tent i_want i_want_them i_would
        if_it if_the if_you_have ill_not ill_not_say im_seriou in_the it_doesnt its_a_hip its_a_pendulum
        its_a_spr its_buttock its_com its_com_for its_easier its_molass its_not_a its_not_an its_opposit its_pull
        its_the_underneath its_what ive_done ive_seen ive_seen_that keep_talk keep_them leav_it leg_push
        let_gravit let_gravit_do let_it let_the let_them let_us_come like_your make_sure make_the mine_is
        nice_and_even no_more nobody_chas nobody_chas_you nobody_measur nobody_watch not_a noth_happen
        noth_happen_in on_your on_your_side one_at one_at_a one_ever one_foot one_to one_to_stand or_0 paus_it
        paus_twic round_each round_each_palm round_the same_bow set_the shov_the show_off side_on side_on_to
        somebody_smil strid_away swap_at ta_dum take_the tell_me tell_me_what that_a_goos that_a_no that_a_sphinx
        that_a_stop that_all that_been that_count that_fine that_is that_its that_its_job that_should
        that_should_be that_the_feel that_the_one that_the_part that_the_rule that_ther that_ther_to that_was_a
        that_why the_arm the_next the_other the_rest_of the_whol the_whol_time ther_0 ther_0_in ther_no
        ther_no_bus theyr_singl thi_is_at thi_time thre_to try_to tug_it tug_it_again turn_it two_finger
        two_mississippi two_thre up_for up_ther up_with use_that wait_for_your wait_ther walk_back_on walk_it_the
        we_call_that we_lift when_your_done wher_the you_are_go you_can_do you_come you_dont you_look
        you_look_like you_need youll_have_more your_a your_not
      `,
    ],
    [-0.4, '<num>_<part> <place>_<attend> a_bit five_second'],
    [-0.6, '<part>_<place>'],
  ],
  word: [
    [0.8, 'me minut shak we'],
    [0.6, 'again eight i leg lot my number only read remember rest row some squat walk'],
    [
      0.4,
      `
        0 all becaus bridg call calv car clock cushion did do each fifteen five good got has have he his is its
        last love lung make many muscl near of on other peopl pres rack rais say second side so spin stair ten th
        that the ther thes thi think third thirt thos thre till twent twic ups us warm was were when who youll
        youv
      `,
    ],
    [
      0.2,
      `
        accordion actual advert afterward alright amaz and angel anyth apart are ask at awful bad balanc banana
        bank be bear best better between bird blu body book bottl br brav breastbon breath breather bug burn
        burpe but cake calculator calf carri cat catch ceiling centr chang chas cheer child clas clean clever
        click clifford climb climber coat cobra com comment contact corkscrew count cow crawl curl daughter day
        deodorant desk didnt different dig dirt doe dog done door drill dull eas easy eleven else email enjo
        enjoy enough evening ever everybod everyon everyth everywher exercis extension extra fabulou face fanc
        februar felt find finish fiv flamingo flexor for forget forgotten fort found four freez fridg fun get
        glut goblet great group gymnastic had halo hamstr hanger hav hear heart hed her here hes hike him himself
        hm hmm holida hollow home hour hundr id idea ignor ill im in isnt it jacket join keep kettlebell kicker
        kite kne knot lad ladder later lie life lik liv look lopsid lost made man marg mark match min mind moos
        mountain much name natural needl neither never nicer nine ninet nineteen nobod nois noth now odd oh oil
        okay once oop opener operat overtim own park physio pickpocket pie pigeon pinch plank play plough pose
        posh press pret priya proper pushup put quad quiet rac rain record releas righto rise ron rose round
        runner rush said same save saw screen set sette seven shaky she shed sheet shop shut sick sideway sinc
        sit six skater skin slow smash somebod somebody sor sound spac split squeak squish static stay stomach
        stor straight strength stroll stronger stuck stuff subscrib supin support suppos switch tabl tak taken
        talk tatti tell thatll then theyv though thousand thread thrust tick tidiest tilt tim time toda told
        total tour train trip twelv twist used v very video wall wash watch wedding week well went weve what
        wheez which why wiggl wipe with wobbling wonder wor work worth wrapper wriggl writ wrong year yes youd
      `,
    ],
    [
      -0.2,
      `
        abov achill acros air along an arch armpit baby backsid backward bag ball band beat begin behind bell
        bench bent bit blad blanket block bon bone both bottom bow box brac brisk brush bus butt buttock carol
        ceil chanc cheek chest chin circl clos closer collarbon complete crat cros crunch curtain down drip drop
        dum ease effort elephant everybody exam exhal explod far fast feel feet fift fist float forehead fram
        fresh front full further gent glas go goos grab gradual gravit grip ground hair hammock hamstring hand
        handl hard head heavier height higher hold hook hundred if inch inhal instead inward jab jean jog joint
        jump kilo knee kneecap kneel kyle lamp lan land lane lazy leav left length lift lighter live load lock
        long loos low manag margaret mayb mean melt metr mid middl mississippi molass mov move movement neck
        nobody nose not nowher oclock one option overhead pace pad palm peel pendulum pick pin plat plent pocket
        position post prepar pressur proud puff purpl quarter quick quicker rang rather ratio red rep resist rib
        right rock sag sat see seriou settl sharp shin shirt sho shorten show shrug shuffl sid simp singl sink
        sir skip slower small smaller someth spe sphinx spik spill sprawl squeez stand stead step stiff stomp
        stop strap strok sure sway take taller tap templ tent than theyr thigh tight tiny tipto together tonight
        treacl tricep try tss tuck tug turn under up upright use version way weight whisker whol wide wind
        without wrist you your
      `,
    ],
    [
      -0.4,
      `
        bounc bum ear elbow end even flat floor foot forward half into lean let light lower opposit out pleas
        point short should sock tall thumb top wait want yourself
      `,
    ],
    [-0.6, 'heav toe'],
  ],
} as const satisfies CueWeights
