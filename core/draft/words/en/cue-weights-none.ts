/** How much each feature of a clause (cue-features.ts) speaks for no cue at all; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const NONE_WEIGHTS = {
  bias: [[0.8, 'yes']],
  class: [
    [0.4, 'chat do num'],
    [0.2, 'carer take'],
    [-0.2, 'ill more not place'],
    [-0.4, 'air harm less move part'],
    [-0.6, 'far wrong'],
  ],
  first: [
    [0.8, 'off'],
    [
      0.6,
      `
        <kit> down he how last oh remember rest row second shak some stay straight ten the ther up we who
      `,
    ],
    [
      0.4,
      `
        <chat> <num> <place> <wrong> actual back balanc bridg by calv curl done eight fifteen flop good have hes
        hug i ill it its ive love min my ninet okay other over park rack right roll she six so somebod somebody
        squat switch that thes they theyr thi third thirt till time turn twelv twent twic well what which whil
        with yes youll youv
      `,
    ],
    [
      0.2,
      `
        0 <take> agn along alright ankl another archer as at away aye b band bear beautiful becaus befor bench
        best better bev bicycl both bound broomstick bruc burpe calf carmel cat catch chang cheek chin circl clam
        clean climber clock collaps come couldnt crab crunch cushion dead deadlift des did ding dip dot drag
        drill drop each eleven enjo enough everybody except extension fabulou fall farmer find fine first fiv
        five flip floor foot for forget fort forty four fourth gorgeou grand grapevin gwen halo hamstring hand
        hed heel her here high hill hm hmm hold hollow home id ignor im imran is isnt jim keep kick knee later
        leg lie look lung make march margaret marjori maureen minut moos mov nah near never nine nobod nobody
        number och on once only oop operat our overhead pelvic peopl phil pigeon plank plat pointer press priya
        pull put quad quick r read rose same sanja save see seven shaking shed sid side singl sit sixteen skin
        slam smil snak soften somewher sor spe split sprint squad static station stepper still stood strid strong
        superman support swap swim swing terminal thatll them theyv thre thread tom trev tuck twenty twist very
        walk wall weight were weve whatever when whistl whos wide wipe without wobbl won work yeah yep youd
      `,
    ],
    [
      -0.2,
      `
        <far> <ill> <move> <pace> about abov alway anybod anyon arm backsid backward bar bare belt big bin blow
        blu blue body br braver brisk bum cant carol chest clear clos collarbon com count cut da divvent ease
        elbow even ever everybod explod fac fingertip firm flatten float fold follow forehead forward freez from
        full get give go grow halfwa halfway handl hang hard hello holder hum hup if imagin jab jaw jog kid kne
        kneel knuckl kyle lac land late lazy lean leav length let level light littl lock lose low mat middl miss
        more move new nod normal nose now open opposit option or palm pol pop pretend purpl quicker quiet reach
        red resist rib rock set settl sharp shift shin sho shorten shorter show shuffl shut sideway sink skip
        slower smooth sock spot spread spring stag stan stand start stop strap stretch sw tailbon tall tap thos
        tick tight tiny to toe together too top try tss tug tum unclench unhurri wait watch wee wher whit whol
        wob yellow your
      `,
    ],
    [
      -0.4,
      `
        <attend> <part> build check head lift loos not one out round short small soft take thumb use you
      `,
    ],
    [-0.6, '<air> half long pleas'],
    [-0.8, 'like'],
  ],
  given: [
    [0.4, 'its just want'],
    [
      0.2,
      `
        0 <far> <harm> <ill> <not> <swap> and anyon ask at bath bet break burn calv click count doesnt dont down
        dull easy harder hurt if it let lost mind no not odd off on only posh read somebod someth sore stomach
        take talk the thigh upstair wait writ your yourself
      `,
    ],
    [
      -0.2,
      `
        <do> <settle> <take> back bit cramp get go have jog late leg like once other put shoulder stay stop ten
        they too when
      `,
    ],
  ],
  last: [
    [1, 'no'],
    [0.6, 'between curl dip ladder lung minut now okay pres rais rest row that twic ups'],
    [
      0.4,
      `
        again arm band bar breath bridg bug clean climber count dog done down eight enough extension fanc five
        flop go good hold is lift look lot love name nine off oh remember seven six soften squat stair start
        stretch ten third twelv us walk
      `,
    ],
    [
      0.2,
      `
        0 actual advert afterward agn alread alright altogether anywa arc ask aye bad be bear beautiful beep
        beetl bell bench better bev bicycl biscuit boat body bog book both bound bowl breather britch burn burpe
        calv cap car cardigan carmel ceilidh chair chat chicken chin circl clam clas clever climb clock club coat
        com compan competition contact court cow crawl cream creep crunch cushion daughter deadlift deal debutant
        dentist des desk ding do door doreen drink duck each earlier eleven elwyn em fabulou face fair faster
        fenc fifteen fifth finish flamingo flick flip forgotten fort four fourth fram friend from gorgeou
        grapevin gravel great habit half hall halo hamstring haul heel hike him hing hm hmm holida home hors hour
        hug huw hydrant i internet its jack jim ken kettl kilo kne lad lap later leg life like list listen loo
        loop lower lowering ls mailbox many march marjori maureen me mine moment morn muscl nah near needl next
        nois not noth notic number obvious on once one only opener out over own pair pancak phil pick pictur plan
        plank pointer pol pose posh posti press pret prop proper pump quad queu quick quiet rac race rack
        radiator rain read real releas right ring ris rose run rung said sanja say second see set sham sheet shov
        sid sit skip slam slid snak so sofa sor spin spot sprint squad stepper stop stor stork straightener strid
        stuff sulk superman swap tea tempo then ther think thirt thos thre through thrust tidy tilt tim timer
        toda tom too total trap trip tune twent twist twister two wait wall wander warm watch water week weight
        well what whistl why win wor work wrong yeah year yep yes yet your
      `,
    ],
    [
      -0.2,
      `
        a about achill after ahead air all alway and ankl arch armpit backsid bag ball behind bend bigger blad
        blu blue bone bottom bounc bow brak brian brisk bruis buckl carol ceil cheek chest clos closer complete
        cone copy corner crash crat cros cute dead delux die dish divvent downstair drop dum dumbbell ear easier
        easy effort elephant fast feel fift fist fling float flutter follow foot forehead forward fresh further
        game gent get glas glut got grab gradual green ground grumbl guy hair hard harder headlight heal heavier
        held high higher holder horizon hover how hup in inch insid instead it jab jaw jean kick kickstand knee
        kneel knuckl kyle land lazy lean level lighter lip lock loos manner meaner measur mississippi more motion
        mov move movement nearest need nod nose open opposit option pad paper park passenger patient pay pendulum
        peopl piec pin ping plant plent plonk plop pocket pop position proud puddl pull puls purpos put ramp rep
        rhythm rib rise round safe sag seat seriou shallow shap shift shirt short shoulder shout shrug sideway
        sink slip smaller snap spe sprawl spread spring stamp stan stanc steer step stiff stomp straighten sway
        tailbon tall taller tank tap tent tenth the thereabout they thumb tick tiny tip tipto tock tonight touch
        towel treacl tss tug under underneath upright visit waist wheel wher wide wider with wob wood yellow
      `,
    ],
    [
      -0.4,
      `
        bent bit bum chang even firm for hang heav last low pleas red sharp soft still straight tight toe top
        version you
      `,
    ],
    [-0.6, 'long other'],
  ],
  length: [
    [0.8, '1-2'],
    [0.6, '3-4'],
    [0.4, '5-7'],
    [0.2, '8-12'],
    [-0.2, 'long'],
  ],
  pair: [
    [0.8, '<kit>_down'],
    [0.6, '<part>_stretch a_minut call_it chang_<part> leg_<do>'],
    [
      0.4,
      `
        <chat>_of <chat>_on <chat>_read <do>_apart <do>_out <do>_over <do>_ups <kit>_away <move>_apart
        <move>_over <move>_up <move>_ups <not>_count <not>_it <not>_wor <num>_a <num>_breath <num>_each <num>_if
        <num>_minut <num>_more <num>_of <part>_again <part>_breath <part>_flexor <part>_plank <part>_rais
        <part>_you <place>_here <settle>_on <take>_down a_<chat> and_a and_kne by_the catch_your chang_leg
        chest_<do> come_on dead_<do> dont_<pace> each_<part> each_leg ever_minut feet_down for_five for_the
        high_<part> hip_flexor i_<chat> in_here in_it is_<num> is_the it_<num> it_down its_<num> keep_<place>
        keep_go keep_it last_one long_<attend> long_as make_it minut_<place> need_to not_<num> of_a of_them
        on_your onto_your or_the other_<part> other_arm other_leg other_side pull_apart same_again shak_<place>
        shak_your shoulder_<do> side_<do> side_plank side_step sit_to stay_as stay_till that_<num> that_your
        ther_<chat> to_<swap> walk_<part> walk_back with_the youll_want your_<do> your_<kit> your_<num>
        your_front your_hand your_own your_read
      `,
    ],
    [
      0.2,
      `
        0_<num> 0_<pace> 0_a 0_centimetr 0_each 0_for 0_of 0_on 0_second 0_the 0_to <air>_a <air>_back
        <air>_between <air>_breath <air>_each <air>_in <air>_of <attend>_about <attend>_after <attend>_anyth
        <attend>_as <attend>_at <attend>_band <attend>_befor <attend>_bor <attend>_enough <attend>_fiv
        <attend>_has <attend>_have <attend>_i <attend>_into <attend>_jaw <attend>_like <attend>_long
        <attend>_many <attend>_now <attend>_odd <attend>_of <attend>_one <attend>_onto <attend>_over
        <attend>_shut <attend>_stretch <attend>_thre <attend>_you <attend>_youv <chat>_ahead <chat>_alway
        <chat>_anybod <chat>_away <chat>_be <chat>_bor <chat>_button <chat>_call <chat>_count <chat>_did
        <chat>_drink <chat>_enjoy <chat>_exercis <chat>_fanc <chat>_first <chat>_found <chat>_get <chat>_go
        <chat>_got <chat>_grandson <chat>_hear <chat>_if <chat>_it <chat>_its <chat>_just <chat>_like <chat>_lot
        <chat>_me <chat>_my <chat>_only <chat>_posh <chat>_rest <chat>_start <chat>_station <chat>_stay
        <chat>_tell <chat>_th <chat>_ther <chat>_think <chat>_through <chat>_time <chat>_told <chat>_trust
        <chat>_under <chat>_us <chat>_wake <chat>_warm <chat>_when <chat>_whit <chat>_will <chat>_wont
        <chat>_writ <chat>_you <do>_again <do>_and <do>_arm <do>_body <do>_countr <do>_down <do>_first <do>_if
        <do>_leg <do>_onto <do>_sid <do>_two <do>_when <far>_bath <far>_bel <far>_bell <far>_bit <far>_bowl
        <far>_home <far>_it <far>_kne <far>_lad <far>_loop <far>_lung <far>_minut <far>_pli <far>_six <far>_squar
        <far>_the <far>_thigh <far>_two <harm>_cream <harm>_hold <harm>_kne <harm>_leg <harm>_out <harm>_over
        <harm>_settl <harm>_your <ill>_its <ill>_of <kit>_again <kit>_for <kit>_now <kit>_quiet <kit>_squeak
        <kit>_squeez <kit>_stand <kit>_ups <less>_between <less>_hold <less>_in <less>_like <less>_long
        <less>_past <less>_them <less>_to <less>_your <more>_down <more>_ear <more>_foot <more>_for <more>_like
        <more>_more <more>_of <more>_on <more>_round <more>_than <more>_that <more>_time <more>_toda <move>_as
        <move>_back <move>_body <move>_countr <move>_deep <move>_eye <move>_for <move>_go <move>_it <move>_leg
        <move>_onto <move>_out <move>_push <move>_round <move>_sit <move>_that <move>_till <not>_ask <not>_bad
        <not>_break <not>_burpe <not>_clap <not>_clever <not>_come <not>_copy <not>_creep <not>_dont <not>_even
        <not>_ever <not>_fair <not>_fanc <not>_forget <not>_gap <not>_get <not>_go <not>_got <not>_hurt
        <not>_idea <not>_know <not>_long <not>_look <not>_make <not>_number <not>_pleas <not>_rest <not>_rush
        <not>_set <not>_talk <not>_ten <not>_that <not>_think <not>_thre <not>_toda <not>_you <num>_again
        <num>_and <num>_at <num>_big <num>_for <num>_goe <num>_hour <num>_hundr <num>_is <num>_leg <num>_lot
        <num>_on <num>_one <num>_past <num>_peopl <num>_round <num>_second <num>_set <num>_slow <num>_thousand
        <num>_thre <num>_tim <num>_trip <num>_way <num>_with <num>_year <pace>_among <pace>_band <pace>_between
        <pace>_bit <pace>_breath <pace>_but <pace>_by <pace>_help <pace>_just <pace>_lot <pace>_lowering
        <pace>_off <pace>_one <pace>_run <pace>_sip <pace>_squat <pace>_time <part>_a <part>_are <part>_between
        <part>_cone <part>_cramp <part>_dig <part>_down <part>_extension <part>_flick <part>_from <part>_has
        <part>_height <part>_hing <part>_in <part>_is <part>_lift <part>_no <part>_now <part>_one <part>_opener
        <part>_or <part>_pool <part>_pres <part>_prop <part>_pull <part>_pump <part>_rock <part>_roll <part>_row
        <part>_shut <part>_slid <part>_squat <part>_stand <part>_step <part>_stop <part>_straightener
        <part>_thrust <part>_toe <part>_toward <part>_ups <part>_warm <part>_wav <part>_wide <place>_after
        <place>_all <place>_band <place>_between <place>_church <place>_dog <place>_ear <place>_end
        <place>_enough <place>_his <place>_in <place>_into <place>_jaw <place>_loud <place>_me <place>_now
        <place>_of <place>_on <place>_onto <place>_out <place>_over <place>_pli <place>_round <place>_row
        <place>_squat <place>_still <place>_then <place>_thi <place>_to <place>_total <place>_us <place>_you
        <settle>_ahead <settle>_any <settle>_countr <settle>_each <settle>_pool <settle>_pull <settle>_that
        <settle>_to <settle>_two <settle>_ups <settle>_wet <swap>_arm <swap>_both <swap>_break <swap>_burpe
        <swap>_count <swap>_creep <swap>_dont <swap>_down <swap>_from <swap>_gap <swap>_get <swap>_idea <swap>_is
        <swap>_number <swap>_rest <swap>_squeez <swap>_stop <swap>_thes <swap>_two <swap>_with <swap>_you
        <take>_are <take>_at <take>_each <take>_out <take>_pool <take>_pull <take>_stop <take>_them <take>_ther
        <take>_to <take>_ups <take>_wet <take>_your <wrong>_back <wrong>_way a_<air> a_<carer> a_<settle>
        a_<take> a_<wrong> a_bet a_bit a_breather a_broomstick a_clean a_competition a_debutant a_desk
        a_different a_door a_dozen a_face a_few a_full a_ham a_handl a_hike a_hors a_hug a_hundr a_ladder a_leg
        a_man a_month a_nice a_pie a_proper a_race a_retir a_round a_run a_seat a_side a_sit a_skip a_test a_th
        a_trap a_very a_walk a_wander a_weight a_whol a_wobbl about_0 about_it about_the after_a after_each
        after_the again_<place> again_at again_in all_<attend> all_<pace> all_got all_it all_right all_together
        all_your along_<attend> among_yourselv an_advert anchor_<place> and_<chat> and_<more> and_<part>
        and_<place> and_again and_back and_do and_get and_grab and_it and_one and_stop and_the and_up ankl_pump
        are_<attend> are_<chat> are_<more> are_on are_so are_sore are_still are_stronger are_you arm_<settle>
        arm_a arm_at arm_together as_<ill> as_<place> as_befor as_long as_many as_the ask_<chat> ask_is at_<part>
        at_<swap> at_home at_that at_you away_<chat> away_if away_you back_<do> back_<harm> back_<move>
        back_<place> back_is back_now back_on back_squat back_to back_you bag_out band_<place> band_are band_off
        band_squeak bar_down bath_upstair be_<ill> be_<part> be_at be_back be_hard be_quiet be_sick bear_<do>
        becaus_<chat> becaus_the been_<place> been_to befor_i behind_the bel_<air> bel_breath bell_down
        bench_<do> bend_over bent_end better_than between_<part> between_them big_<air> big_<num> big_bowl
        big_lad big_one big_thigh bit_<num> bit_higher bit_longer both_<kit> both_arm both_sid bottom_<kit>
        bottom_<move> bottom_cone bottom_step bottom_toward br_both break_<place> breath_a breath_and
        breath_between breath_each bum_<do> burn_that bus_<not> bus_stop calf_<attend> calf_<do> calf_stretch
        call_a call_them calv_are came_<place> camera_away can_<chat> can_<pace> can_to car_<place> car_it car_on
        carry_a cat_cow caught_a chair_stand chang_arm cheek_<place> cheek_on chest_<far> chest_height chest_now
        chest_opener chest_pres chest_stretch child_pose chin_<more> chin_<take> chin_height chin_hold chin_up
        chin_ups clap_it clean_off clean_one climb_<kit> clos_<place> com_out com_the come_forward cone_to
        corkscrew_com corner_<num> could_<swap> could_do could_hear couldnt_<do> couldnt_<move> count_your
        crab_<do> crab_walk cros_countr cushion_<do> cushion_<move> cushion_down cushion_squeez d_ls dead_<move>
        dead_<settle> dead_bug dead_hang dead_lift depend_how dig_<far> dig_deep do_<num> do_a do_that do_the
        do_two doe_<num> doesnt_<harm> doesnt_<ill> doesnt_hurt doesnt_it dont_<attend> dont_answer dont_ask
        dont_be dont_bend dont_clap dont_come dont_copy dont_fall dont_kick dont_make dont_rush dont_set
        dont_shut dont_throw door_and down_<num> down_and down_dog down_on drill_0 drink_<swap> drink_soup
        drop_it dumbbell_now each_way ear_<place> easy_<swap> easy_no eight_if elbow_off elbow_wide em_<pace>
        empt_<kit> empt_bar end_down enjo_it eye_contact eye_shut fac_it face_<do> face_pool face_pull fall_out
        fall_over farmer_<do> farmer_<move> farmer_walk feel_<attend> feel_a feel_like feel_odd feet_are
        feet_stop few_<more> few_more few_till fifteen_<place> find_the find_yourself finish_like finish_your
        first_<chat> first_one first_side five_<attend> five_if five_slow flat_<place> flat_out flexor_<attend>
        floor_<do> floor_if foot_<place> foot_behind foot_forward foot_in for_<num> for_<part> for_a for_carry
        for_eight for_fort for_level for_your forearm_plank forget_to fort_<pace> fort_second forward_a found_it
        from_<num> from_<place> from_behind front_<do> front_squat full_bath full_minut gap_<place> gap_under
        get_<less> get_<more> get_a get_on get_up get_wet get_your give_<place> give_them give_up give_your
        go_ahead go_by go_on go_to go_when goe_at goe_by goe_on gone_<place> gone_in gone_the got_<harm>
        got_<num> got_<part> got_the grab_your grip_<attend> grip_burn had_to half_a half_past hamstr_<attend>
        hamstr_<do> hamstr_stretch hand_<place> hand_and hand_out hand_toward hand_up hang_out has_<num> has_a
        has_anybod has_gone have_<num> have_a have_it head_<attend> head_<do> head_<num> head_follow head_if
        head_is head_one heal_<do> hear_<chat> hear_a hear_somebody hear_the heart_<settle> heart_settl
        heav_<far> heav_<less> heav_enough heel_<do> heel_<settle> heel_dig heel_flick heel_prop heel_rais
        heel_slid heel_toe her_<part> her_the here_<place> high_kne hip_<more> hip_cramp hip_hing hip_thrust
        hip_up his_<part> hold_each hollow_<settle> hollow_<take> hollow_hold how_<attend> how_<less> how_<place>
        how_it how_long how_many how_much hug_the hug_your hundr_and i_<attend> i_<settle> i_alway i_look i_told
        i_was i_will i_wont ice_cream if_<chat> if_you if_youv ignor_it ill_<pace> im_<place> im_go in_<chat>
        in_<kit> in_a in_between in_church in_his in_step in_the in_thi in_total in_you inner_<far> inner_rang
        into_your is_<chat> is_it is_like is_suppos is_ten is_that is_what is_wher is_your isnt_it it_<chat>
        it_<ill> it_<more> it_<pace> it_com it_count it_eas it_feel it_for it_go it_goe it_hurt it_in it_is
        it_just it_let it_look it_out it_rest it_straight it_talk it_the it_to it_twic it_was it_work itll_be
        its_<attend> its_<not> its_<pace> its_<wrong> its_cold its_for its_in its_not its_on its_the its_thi
        its_warm its_wrong join_<place> join_in just_<settle> just_go just_like just_to keep_<chat> keep_<more>
        keep_on keep_push keep_that keep_up keep_you kick_it kne_<place> kne_and kne_are kne_down kne_from kne_in
        kne_on kne_out kne_that knee_<do> knee_<move> knee_extension knee_plank knee_straightener knock_your
        last_<chat> last_th leav_it left_foot left_over leg_<far> leg_<more> leg_<move> leg_<take> leg_again
        leg_and leg_are leg_if leg_lift leg_lower leg_off leg_only leg_rais leg_stand leg_together leg_up
        less_<attend> less_like let_me let_say let_us let_wake lie_<place> lie_down lie_ther light_band
        lighter_<attend> lighter_weight like_i like_it like_the like_they littl_<kit> littl_ankl littl_bell
        littl_loop littl_squar long_at long_band long_one look_<attend> look_at look_like loop_<place> loop_on
        low_<air> low_<move> low_bel low_lung ly_<place> make_eye many_<attend> many_as mark_it me_<attend>
        me_<place> mind_off mini_<do> mini_squat minut_<less> minut_in minut_off minut_on more_<attend> more_like
        more_of more_on more_time mother_listen move_<place> move_on muscl_that my_<chat> my_<part> my_grandson
        near_<far> near_<less> near_<swap> near_enough near_home near_ther neck_<attend> neck_<do> never_<more>
        never_touch next_<chat> next_<kit> ninet_<pace> ninet_second no_<chat> no_<less> no_<not> no_<pace>
        no_<settle> no_<take> no_break no_burpe no_creep no_dont no_gap no_hang no_idea no_it no_number no_rest
        nobod_ever nobody_<part> not_<attend> not_<chat> not_<harm> not_<ill> not_at not_bad not_cheat not_count
        not_even not_go not_got not_long not_pleas not_toda not_wor not_you noth_<more> noth_fanc number_<num>
        number_<place> number_on of_<take> of_an of_cereal of_feet of_rubber of_that of_thes of_thos of_us
        off_<chat> off_do off_you oil_it older_than on_<chat> on_<place> on_down on_each on_me on_thi once_<more>
        once_more one_<chat> one_<more> one_<pace> one_and one_as one_count one_finger one_for one_had one_leg
        one_minut one_more one_of one_way one_with only_<attend> only_<chat> only_<num> only_you operat_<part>
        operat_leg or_<part> or_a or_heel other_<chat> other_<less> other_half other_way out_and out_loud
        out_ther out_your outsid_of over_do over_ther over_to over_with own_<pace> pal_off park_them pass_through
        paus_the peel_the peopl_call peopl_say phon_go pinch_its point_like priz_for puff_<part> puff_back pull_a
        push_<chat> push_<place> push_through put_<place> put_them quad_<attend> quad_<chat> quad_set quick_<air>
        quick_sip r_d race_to rack_it remember_wher rest_<attend> rest_the rest_your rib_<air> rib_breath
        right_arm rise_to rock_<far> rock_<not> roll_<place> roll_on roll_onto roll_over round_again round_and
        row_it run_with rush_to same_<move> same_deal sat_down say_<chat> scap_<do> scap_pull seat_<do>
        seat_<move> second_<chat> second_<do> second_<move> second_<num> second_<pace> second_<settle>
        second_between second_help second_lot second_one second_time see_bum see_that see_the set_<num> shak_out
        shak_the shaking_<less> shed_<attend> shoulder_<chat> shoulder_<move> shoulder_first shoulder_land
        shoulder_off shoulder_pres shoulder_roll shoulder_wav show_you shut_<more> shut_up shut_your sick_of
        sid_<less> sid_alway side_<kit> side_<part> side_leg sinc_the singl_leg sip_of sit_<part> sit_at sit_back
        sixt_<num> skin_the slid_<more> slid_up slow_<air> slow_breath slow_lowering so_<do> so_<move> so_<place>
        so_clos soft_jaw some_peopl somebod_<place> somebody_chas somebody_knee somebody_phon somebody_stomach
        somebody_watch sound_<attend> sound_like soup_from split_<do> split_squat squar_with squeez_<more>
        squeez_and squeez_up stand_ups start_the start_with static_<attend> static_<part> static_quad
        station_<num> stay_<more> stay_for stay_in stay_sit stay_up step_<more> step_down step_ups stick_acros
        still_<num> still_<settle> still_and still_have still_on stomach_talk stop_<place> straight_<chat>
        straight_<do> straight_<place> straight_after straight_in straight_into straight_onto straight_over
        straight_round straight_to straighten_your strong_<part> stronger_than support_<settle> support_<take>
        support_hold support_your suppos_to swap_<part> swap_<place> swap_arm swap_over switch_<part> switch_it
        switch_leg take_it take_two take_your talk_<chat> talk_about tall_one tell_you ten_<do> ten_<less>
        ten_<pace> ten_second terminal_<part> terminal_knee thank_<chat> that_<more> that_<place> that_a
        that_about that_both that_dull that_hold that_just that_look that_low that_mat that_more that_nois
        that_normal that_out that_smooth that_the that_us that_was that_you thatll_<swap> thatll_be thatll_do
        the_0 the_<far> the_<harm> the_<place> the_bar the_beep the_bent the_best the_bin the_board the_book
        the_bucket the_cake the_can the_cat the_chair the_chin the_clock the_dentist the_dog the_driver the_feet
        the_fenc the_flamingo the_flat the_fun the_glut the_hall the_hand the_head the_hook the_hover
        the_internet the_kettl the_ladi the_lean the_left the_line the_littl the_long the_loo the_machin
        the_mailbox the_minut the_muscl the_name the_neck the_needl the_offic the_pair the_parish the_phon
        the_posh the_post the_radiator the_record the_rosar the_rose the_row the_shop the_slow the_sofa the_spin
        the_spot the_stag the_start the_step the_stork the_third the_timer the_wrong them_<swap> them_a them_all
        them_pret them_slow ther_<attend> ther_<far> ther_at ther_the ther_we thes_<place> thes_are they_<chat>
        they_<settle> they_say they_were theyr_<less> theyr_all theyr_the theyv_<not> theyv_not thi_<more>
        thi_<part> thi_again thi_is thi_one thi_when think_about think_its think_of third_<chat> third_one
        thirt_<pace> thirt_second thos_<part> thre_<air> thre_<num> thre_<part> thre_breath thre_goe thre_head
        thre_is thre_of thre_slow thre_tim thre_two thread_the tidy_one tied_<place> till_it till_the till_your
        time_<chat> time_<place> to_<num> to_chest to_do to_finish to_hand to_hang to_like to_look to_oil
        to_stand to_ten to_thos to_toe to_twent to_watch toe_<do> toe_tap toe_walk told_<chat> told_you
        tomorrow_<chat> too_<place> too_long tuck_<settle> tuck_the turn_<chat> turn_<place> twent_<pace>
        twent_second twic_<place> twic_through two_<air> two_<more> two_<num> two_at two_breath two_com two_lot
        two_more two_one two_thousand ugly_one under_the up_<chat> up_<part> up_down up_for up_out up_that up_the
        us_<chat> us_go used_to very_<chat> very_good wake_the walk_<place> walk_it walk_like wall_<do> wall_sit
        want_<num> want_it want_one want_that warm_<more> warm_<place> warm_up was_<chat> was_<place>
        watch_<chat> watch_me wav_<more> wav_<place> wav_up way_of way_ther way_to we_<chat> we_<settle>
        we_<swap> we_<take> we_do we_go we_start we_stop wee_huff weight_down weight_up weight_you went_to
        what_keep what_the whatever_<chat> whatever_<more> whatever_left when_the when_youv which_is who_<not>
        whol_<do> whol_<far> whol_<num> whol_point wide_as wide_pli will_be win_and wipe_your with_a wobbl_<less>
        wobbl_<swap> wobbl_fine won_a work_<place> would_be wrist_<do> wrist_rock writ_it wrong_way you_<chat>
        you_<less> you_<more> you_at you_dont you_down you_go you_just you_on you_see you_stay you_want you_what
        youd_be youll_<swap> youll_do youll_have youll_still your_<less> your_<settle> your_<take> your_best
        your_breath your_bridg your_camera your_cardigan your_chair your_drink your_fac your_fanc your_finger
        your_four your_head your_heart your_heel your_lean your_list your_mat your_mind your_minut your_mother
        your_mum your_my your_number your_only your_other your_partner your_pick your_pol your_posh your_pres
        your_puff your_rest your_second your_sheet your_shop your_two your_under your_warm your_writ youv_been
        youv_earn youv_finish youv_gone youv_read youv_the youv_your
      `,
    ],
    [
      -0.2,
      `
        0_<part> 0_go 0_hand 0_lan 0_oclock 0_or 0_turn <air>_for <air>_go <air>_out <attend>_0 <attend>_a
        <attend>_ahead <attend>_along <attend>_down <attend>_feet <attend>_hand <attend>_if <attend>_its
        <attend>_ive <attend>_kne <attend>_line <attend>_near <attend>_out <attend>_step <attend>_strid
        <attend>_ther <attend>_up <attend>_well <attend>_your <chat>_0 <chat>_a <chat>_am <chat>_balanc
        <chat>_bend <chat>_came <chat>_could <chat>_danc <chat>_done <chat>_finish <chat>_gravit <chat>_have
        <chat>_hundr <chat>_inch <chat>_jump <chat>_keep <chat>_land <chat>_leg <chat>_look <chat>_mean
        <chat>_newer <chat>_old <chat>_out <chat>_pull <chat>_say <chat>_see <chat>_seen <chat>_seriou
        <chat>_should <chat>_sit <chat>_squeez <chat>_third <chat>_thirt <chat>_to <chat>_walk <chat>_why
        <chat>_wobbl <chat>_would <chat>_yourself <do>_a <do>_about <do>_as <do>_at <do>_away <do>_each
        <do>_everyth <do>_for <do>_forward <do>_four <do>_from <do>_hand <do>_in <do>_not <do>_side <do>_the
        <do>_them <do>_ther <do>_till <do>_under <do>_up <do>_you <do>_yourself <far>_a <far>_at <far>_back
        <far>_down <far>_enough <far>_for <far>_go <far>_if <far>_is <far>_out <far>_plank <far>_sip <far>_step
        <far>_than <far>_to <far>_toe <far>_version <far>_were <harm>_it <harm>_on <harm>_to <kit>_a <kit>_com
        <kit>_in <kit>_is <kit>_lose <kit>_next <kit>_of <kit>_that <kit>_the <kit>_till <kit>_under <less>_far
        <less>_if <less>_on <less>_one <less>_peopl <less>_rep <less>_sit <less>_squat <less>_strength
        <less>_that <less>_when <less>_with <more>_folk <more>_in <more>_one <more>_pair <more>_thre <more>_to
        <more>_top <more>_with <move>_breath <move>_everyth <move>_forward <move>_from <move>_hand <move>_in
        <move>_left <move>_low <move>_not <move>_on <move>_peopl <move>_sure <move>_talk <move>_tall <move>_them
        <move>_to <move>_walk <move>_your <move>_yourself <not>_after <not>_and <not>_at <not>_back <not>_bounc
        <not>_bus <not>_crash <not>_do <not>_drop <not>_ear <not>_fish <not>_fling <not>_forc <not>_haul
        <not>_hav <not>_jump <not>_just <not>_kid <not>_let <not>_more <not>_mov <not>_need <not>_plank
        <not>_plonk <not>_plop <not>_sit <not>_snatch <not>_stamp <not>_the <not>_walk <not>_want <not>_when
        <not>_your <num>_behind <num>_bone <num>_degre <num>_dumbbell <num>_elephant <num>_finger <num>_go
        <num>_hand <num>_i <num>_lan <num>_line <num>_long <num>_mississippi <num>_oclock <num>_pat <num>_piec
        <num>_side <num>_sit <num>_squat <num>_strength <num>_strok <num>_tenth <num>_that <num>_to <num>_turn
        <pace>_a <pace>_as <pace>_for <pace>_hand <pace>_if <pace>_in <pace>_negativ <pace>_now <pace>_of
        <pace>_on <pace>_out <pace>_step <pace>_toe <pace>_up <pace>_with <part>_apart <part>_as <part>_away
        <part>_back <part>_bent <part>_blad <part>_by <part>_dead <part>_do <part>_each <part>_ever <part>_first
        <part>_flat <part>_goe <part>_here <part>_hover <part>_last <part>_lead <part>_level <part>_long
        <part>_loos <part>_over <part>_point <part>_push <part>_read <part>_right <part>_side <part>_spread
        <part>_straight <part>_thi <part>_through <part>_till <part>_tuck <part>_up <part>_when <part>_width
        <part>_with <part>_your <place>_at <place>_away <place>_back <place>_both <place>_each <place>_ever
        <place>_first <place>_flat <place>_for <place>_front <place>_hand <place>_if <place>_line <place>_our
        <place>_quiet <place>_strid <place>_that <place>_them <place>_thre <place>_till <place>_together
        <place>_under <place>_up <place>_when <place>_with <place>_your <settle>_about <settle>_again
        <settle>_another <settle>_back <settle>_down <settle>_from <settle>_heav <settle>_it <settle>_off
        <settle>_out <settle>_over <settle>_right <settle>_someth <settle>_the <settle>_them <settle>_they
        <settle>_thos <settle>_wher <settle>_with <swap>_0 <swap>_at <swap>_bell <swap>_bounc <swap>_bus
        <swap>_drop <swap>_each <swap>_fling <swap>_half <swap>_hold <swap>_if <swap>_kick <swap>_more <swap>_not
        <swap>_on <swap>_one <swap>_pair <swap>_plonk <swap>_the <swap>_under <swap>_walk <swap>_your <take>_0
        <take>_a <take>_again <take>_from <take>_it <take>_off <take>_right <take>_up <wrong>_about <wrong>_in
        <wrong>_off a_<attend> a_<far> a_<harm> a_<ill> a_<kit> a_<more> a_<move> a_<not> a_<pace> a_baby
        a_banana a_beat a_bounc a_bow a_box a_bridg a_bus a_car a_chair a_dinner a_drawer a_foot a_hair a_hand
        a_hot a_kickstand a_knee a_light a_liv a_look a_lot a_matchbox a_metr a_mug a_nerv a_passenger a_pendulum
        a_plank a_pres a_quarter a_rest a_right a_roll a_scar a_slop a_spot a_sprawl a_stop a_stretch a_tabl
        a_tent a_third a_tightrop a_tug a_two a_wall a_whisker about_eight abov_the acros_the again_<not>
        again_<swap> against_the ahead_of all_<num> all_hold all_i all_the all_thre an_<far> an_<less> an_<part>
        an_ankl an_inch and_<do> and_<harm> and_<move> and_<pace> and_<swap> and_call and_even and_five and_he
        and_just and_leg and_march and_right and_stand ankl_<chat> ankl_<settle> ankl_go anybod_with anyon_<more>
        anyon_who are_<less> are_<not> are_<wrong> are_a are_not are_they are_up arm_<more> arm_<place> arm_are
        as_<chat> as_<far> as_if as_near as_well at_a at_about at_me at_six at_the at_your away_again away_from
        baby_asleep back_<attend> back_<far> back_<part> back_a back_flat back_off back_till ball_of band_lose
        bar_<do> bar_<place> bar_on be_<pace> be_cute be_on be_your becaus_if becaus_ive been_sat befor_<chat>
        befor_you behind_<chat> behind_you bell_<do> below_the bench_<chat> bend_the between_<num> between_the
        between_your big_toe bin_it body_swing both_kne both_way bottom_<chat> bottom_<part> bottom_of
        breath_<chat> breath_for breath_out brisk_<do> brisk_<move> brisk_walk brush_your build_for bum_<place>
        bus_com bus_now call_that can_<do> can_<move> can_<settle> can_<take> can_hold catch_<chat> catch_it
        catch_you chang_your chest_<place> chin_<place> clock_<not> clock_doesnt com_off come_down come_off
        come_out count_0 count_<num> count_<place> curl_<place> cut_it da_dum dead_<attend> dead_<not>
        dead_<place> dead_still dead_stop dinner_<kit> dinner_plat do_0 do_<do> do_<not> do_<part> do_leg do_not
        do_row do_your doesnt_<settle> dont_<do> dont_<move> dont_<swap> dont_<wrong> dont_hold dont_just
        dont_plank dont_want down_<attend> down_<far> down_<less> down_<more> down_<pace> down_like down_quiet
        down_till drop_off each_<do> each_<pace> each_minut each_other ease_it ease_off eight_percent either_side
        elbow_<do> else_the em_<do> em_<move> em_<place> ever_<num> ever_<settle> ever_one ever_rep ever_time
        everybod_else eye_<place> fac_the face_<more> face_<place> face_the face_up feel_it feel_thi feet_off
        feet_together fill_<place> find_it finish_stood first_0 first_<num> first_third five_<far> five_<swap>
        five_degre five_kilo five_pat flatten_it float_<place> floor_away fold_<place> for_<harm> for_balanc
        for_four for_lunch for_my for_one for_thes for_thre for_tonight for_two forearm_<place> forearm_down
        forehead_<place> four_<pace> four_second from_you from_your front_<part> front_of full_second get_down
        get_ugly give_it go_<more> go_<pace> go_<swap> go_again go_purpl goe_<attend> goe_<chat> gone_very
        good_<part> good_side got_<chat> got_<more> got_taller got_you grab_it grip_go half_<chat> half_<do>
        half_one half_rep half_sit half_squat half_strength hand_<do> hand_down hang_off have_they head_<chat>
        head_last head_through hear_it hear_stomp heavier_pair heel_<attend> heel_<place> heel_down hip_<attend>
        hip_<chat> hip_<far> hip_<place> hip_and hip_that hold_<place> hold_it hold_on hold_your how_<chat>
        how_<part> how_peopl how_you however_<chat> i_<not> i_<swap> i_am i_do i_dont i_mean i_see i_would id_say
        if_0 if_<num> if_its if_ive if_the if_they if_thi ill_say im_after im_pay im_see im_seriou in_<attend>
        in_<less> in_<pace> in_<place> in_and in_as in_down in_each in_for in_front in_go in_on in_one in_till
        in_time in_to inch_is into_a into_it iron_board is_a is_at is_how is_in is_nowher is_okay it_<far>
        it_<move> it_<wrong> it_again it_at it_be it_even it_flat it_help it_home it_if it_into it_last it_on
        it_round it_stay it_stretch it_ther it_touch it_will it_yes itll_<settle> itll_have its_<do> its_<far>
        its_<harm> its_<kit> its_<less> its_<move> its_allow its_com its_hav its_higher its_nice its_one its_pull
        its_slip its_stair its_tiny its_your ive_<chat> ive_seen jog_a just_<far> just_<place> just_as just_the
        keen_one keep_<air> keep_breath keep_talk keep_walk keep_your kilo_<kit> kne_<attend> kne_<do> kne_<far>
        kne_<more> kne_<move> kne_bent kne_together kne_up knee_<place> knit_them knock_<place> lac_<place>
        lac_down lan_each land_<place> last_0 last_inch leap_<part> leap_<place> leav_thi left_in left_leg
        leg_<attend> leg_at leg_ever leg_goe leg_lead leg_long leg_on leg_push leg_still let_<pace> let_<settle>
        let_em let_gravit let_the let_them let_yourself lift_it light_<place> light_on like_<chat> like_you
        like_your listen_for littl_<do> littl_<num> littl_<pace> littl_one littl_sip lock_it look_<place>
        look_along look_for lose_the lose_their low_<place> lower_<chat> lower_it make_sure make_the me_why
        me_your mean_that middl_of mug_sit near_<num> need_a need_you nerv_talk next_<num> next_one next_to
        nice_and nine_tenth no_<do> no_<far> no_<kit> no_<more> no_<part> no_<swap> no_<wrong> no_bounc no_bus
        no_drop no_fling no_hand no_kick no_more no_plonk nobod_<do> nobody_ask nobody_chas nobody_measur
        nobody_watch not_<do> not_<less> not_<more> not_<place> not_after not_answer not_back not_be not_hav
        not_on not_to not_want not_your noth_else of_<chat> of_<far> of_<kit> of_<num> of_each of_five of_the
        of_what of_wood of_your off_<attend> off_again off_it off_the on_them once_your one_<attend> one_<kit>
        one_<move> one_<part> one_a one_at one_bone one_ever one_hand one_i one_if one_in one_line one_long
        one_piec one_side one_to one_two only_a only_go onto_the opposit_<part> opposit_arm or_0 or_<do>
        or_<move> or_<not> or_<settle> or_<swap> or_its or_so or_youll or_your or_youv other_end other_knee
        other_one other_pair our_sid out_<attend> out_as out_at out_for out_on out_to out_when over_a over_it
        over_onto over_the over_your pad_<place> palm_<place> paus_twic pay_for plank_of plat_<place>
        point_<place> point_at pres_<place> pull_<place> pull_in purpl_fac push_away push_it push_the put_your
        quarter_<do> quarter_<move> quarter_squat quiet_<part> quiet_<take> quiet_feet reach_<place> replac_them
        rest_<place> rest_on rest_with rib_<place> rib_down right_<place> right_into ring_<place> roll_through
        room_for round_four round_to round_your said_<do> said_<move> said_drag said_float same_<part>
        same_<swap> same_arm same_clock same_way sat_sinc scar_off second_<kit> second_it second_negativ
        second_toe see_<attend> see_<part> see_<swap> see_a see_if see_you sho_<place> sho_on short_<do>
        short_<kit> short_step shorten_it should_<attend> should_be shoulder_<place> shoulder_blad shoulder_down
        shov_it show_me show_off show_the shut_it shut_the side_and side_of side_to simp_<settle> simp_<take>
        singl_hand sit_<attend> sit_<swap> sit_in sit_ther six_<place> six_out slack_<place> small_<do>
        sneak_<place> so_it sock_<place> sock_on somebod_to somebody_<place> somewher_<place> somewher_between
        sor_at squat_<place> squeez_everyth stag_<num> stag_thre stand_<part> stand_leg star_at start_again
        start_from start_to stay_low stay_on step_<part> step_<place> still_<pace> still_a stop_and stop_at
        straight_<attend> straight_<more> straight_<part> straight_arm straight_down straight_up strok_a
        swap_each take_some take_thre tea_<place> tea_on tell_becaus tell_me ten_<swap> ten_kilo than_a than_that
        that_<attend> that_<do> that_<less> that_<wrong> that_all that_been that_catch that_count that_did
        that_done that_fine that_foot that_leg that_set that_station that_stay that_way that_what that_who
        that_work the_<chat> the_<ill> the_<kit> the_<more> the_<move> the_<pace> the_air the_back the_bel
        the_bend the_bit the_blad the_boss the_broomstick the_cheek the_chest the_cone the_corner the_delux
        the_edge the_end the_engin the_feel the_good the_hair the_hamstring the_heel the_height the_hole
        the_horizon the_in the_insid the_joint the_kne the_kneecap the_last the_leap the_leg the_lot the_mat
        the_meat the_more the_one the_out the_part the_passenger the_plac the_pocket the_pol the_rest the_rib
        the_room the_same the_shin the_shoulder the_sid the_side the_slid the_sneak the_sore the_split the_squeez
        the_tank the_top the_tree the_tricep the_turn the_two the_underneath the_upright the_wall the_wav
        the_whol their_<attend> their_stretch them_<attend> them_<far> them_<num> them_<settle> them_ther
        ther_<more> ther_buggi ther_for ther_is ther_more ther_to ther_whil thes_and thes_as thes_cold they_<not>
        they_dont they_stay theyr_still theyv_gone thi_by thi_into third_0 thirt_<far> thirt_degre thos_who
        thre_<pace> thre_and thre_count thre_for thre_second thre_step thre_to through_the thumb_<do> till_<chat>
        time_if time_with tip_<place> to_<chat> to_<far> to_<less> to_<not> to_<settle> to_<take> to_a to_be
        to_catch to_come to_help to_hold to_impres to_let to_meet to_round to_see to_side to_stop to_straight
        to_twist to_your toe_<more> toe_<place> toe_up too_<far> too_far top_<part> tray_of tuck_<place> turn_a
        turn_thi twic_<attend> twic_as two_<do> two_<far> two_<part> two_<place> two_<swap> two_dumbbell
        two_second two_step under_<chat> under_ther under_you under_your up_<attend> up_<far> up_top up_with
        us_all us_come use_a use_that wait_at wait_ther walk_in walk_to want_<more> want_anybod want_more want_to
        watch_your water_<swap> water_bottl way_<chat> way_<more> way_<swap> way_home way_up way_you we_<far>
        we_<less> we_lower we_tap wee_<do> week_<place> week_on weight_<place> weight_in weight_on were_after
        were_just what_its what_you whatever_that when_it wher_its wher_your who_are whol_<pace> whol_<part>
        whol_foot whol_way will_<settle> will_<take> with_both with_it with_just with_manner with_your
        within_<num> without_the work_the would_<chat> would_<settle> wrist_<place> you_<kit> you_<move>
        you_<place> you_<swap> you_by you_came you_could you_is you_move you_not you_pull you_rack you_should
        you_stop youll_<chat> youll_<settle> youll_feel youll_forget youll_go your_<harm> your_<not> your_<place>
        your_<wrong> your_after your_armpit your_backsid your_belt your_bicep your_bottom your_chest
        your_collarbon your_dinner your_elbow your_fist your_foot your_go your_good your_left your_look your_neck
        your_newer your_one your_pocket your_rib your_right your_shin your_shirt your_sho your_sid your_sign
        your_tail your_teeth your_that your_the your_tipto your_toe your_turn your_up yourself_<do>
        yourself_<more> yourself_<place> yourself_up youv_got
      `,
    ],
    [
      -0.4,
      `
        <chat>_after <chat>_is <chat>_the <chat>_your <do>_it <do>_to <kit>_if <move>_the <not>_a <not>_hold
        <num>_count <part>_at <part>_go <part>_on <part>_stay <part>_that <place>_like a_<do> a_squat a_time
        about_<num> all_<part> go_<less> go_<place> go_down i_want if_that is_<less> is_all it_<do> its_<part>
        its_ther let_<chat> let_go not_a of_ten on_a on_it one_<place> out_<place> same_side side_<place> side_on
        stay_<place> that_<part> that_how that_wher the_<air> the_arm the_ceil the_floor the_front the_ground
        the_next to_<do> to_<move> two_<kit> two_<pace> way_<place> way_down whol_time you_<do> you_have
        your_<part> your_a
      `,
    ],
    [-0.6, '<num>_out'],
    [-0.8, 'the_<part>'],
  ],
  phrase: [
    [0.8, 'transitions'],
    [0.6, 'chat empty_clauses praise purpose'],
    [0.4, 'dose_only range-hint'],
    [0.2, 'caution-likely retracted'],
    [
      -0.2,
      `
        breathing-hint breathing-likely caution-hint easier-hint easier-sure execution-likely range-sure
        setup-hint setup-sure
      `,
    ],
    [
      -0.4,
      `
        caution-sure easier-likely equipment-sure execution-sure fault-likely fault-sure focus-sure range-likely
        setup-likely tempo-hint tempo-likely
      `,
    ],
    [-0.6, 'breathing-sure harder-sure'],
    [-0.8, 'tempo-sure'],
  ],
  start: [
    [1, '<part>_<do>'],
    [0.6, 'back_to'],
    [
      0.4,
      `
        <kit>_<do> <move>_<do> <not>_<attend> <not>_<num> <not>_<pace> <num>_<more> by_the by_the_way catch_your
        catch_your_breath chang_leg come_on hand_on hand_on_your keep_it keep_it_com leg_up look_at make_it
        rack_it shak_the sit_to sit_to_stand stay_as stay_till that_your walk_it you_can
      `,
    ],
    [
      0.2,
      `
        0_a <attend>_<do> <chat>_<chat> <chat>_<num> <chat>_<settle> <chat>_<swap> <chat>_<take> <do>_<do>
        <do>_<part> <do>_<settle> <do>_<take> <far>_<part> <kit>_<move> <more>_<more> <move>_<far> <move>_<move>
        <not>_<harm> <not>_<take> <num>_<num> <pace>_<chat> <pace>_<do> <pace>_<num> <pace>_<pace> <part>_<air>
        <part>_<kit> <place>_<chat> <settle>_<do> <settle>_<more> <settle>_<num> <settle>_<place> <swap>_<attend>
        <swap>_<chat> <swap>_<less> <swap>_<move> <swap>_<not> <swap>_<num> <swap>_<settle> <swap>_<take>
        <take>_<part> a_breath a_few a_minut a_pair a_plank a_skip a_twist about_mid about_mid_shin all_one_foot
        all_right and_again ankl_pump arm_and as_long as_long_as as_many as_many_as at_the away_you away_you_go
        back_at_the back_down back_down_on back_on back_on_the back_pocket back_to_the back_up back_up_on
        back_up_to back_you bar_down big_lad big_thigh both_arm both_arm_together both_feet both_feet_down
        both_leg_together both_of_you both_sid bottom_cone bottom_cone_to bottom_toward bottom_toward_your
        br_both br_both_leg breath_a breath_a_bit car_on car_on_till chair_stand chang_arm cheek_on chest_opener
        chest_stretch chin_height chin_up come_back_to come_down_onto come_forward come_up cros_countr
        cushion_down dead_bug dead_hang dead_lift do_it_twic do_not_wor do_the do_the_other dont_answer dont_ask
        dont_be dont_be_look dont_bend dont_bend_over dont_clap dont_clap_it dont_fall_over dont_go_over dont_jog
        dont_jog_it dont_kick_it dont_look_at dont_make dont_make_eye dont_roll_up dont_rush dont_rush_to
        dont_shut dont_throw dont_throw_it down_on_the down_to_the drill_0 drop_it elbow_off elbow_off_the
        elbow_wide elbow_wide_as empt_bar ever_minut face_pull fall_out feel_it_from feet_down find_a find_a_bit
        find_the_middl find_yourself find_yourself_a finish_your first_one for_a for_a_bet for_the forearm_plank
        forehead_down_and from_the_bottom front_of_your get_on get_the get_the_weight get_up get_your give_them
        give_them_a give_your give_your_arm go_on half_a half_a_minut half_way_ther hand_and hand_and_kne
        hand_under hand_up hang_on hang_out has_anybod have_a have_a_littl have_a_wander head_down heel_flick
        heel_prop heel_slid heel_to_toe heel_toe heel_toe_walk her_the high_kne hip_hing hip_thrust hold_each
        hold_each_one hold_it_up hollow_hold how_many hug_the hug_the_kne hug_your hug_your_kne i_will
        if_it_click if_its_easy if_that_dull if_you if_you_sit if_you_want if_your if_your_mind if_your_on
        if_your_stomach im_go im_go_to im_not_count in_a in_you in_you_come in_your_own is_that isnt_it it_get
        it_goe_up it_just it_was itll_be its_a_ladder its_a_littl its_a_long its_a_run its_call its_how_you
        its_like_a its_not_the its_on its_the its_the_one its_the_same keep_go keep_it_go keep_it_straight
        keep_it_tidy keep_on keep_push keep_that keep_the_kne keep_them_pret keep_up kick_the_bag kne_are
        kne_down kne_in kne_out kne_to kne_to_chest knee_bent last_one left_foot left_foot_forward leg_down
        leg_up_the let_it_down let_it_rest let_say let_the_feet let_the_foot let_us let_us_go let_wake
        let_wake_the lie_ther lighter_weight like_a_debutant like_i like_your_in littl_ankl littl_loop long_one
        look_at_that look_at_you loop_on loop_on_your low_lung make_it_count make_it_your never_touch
        ninet_second no_break no_burpe no_creep no_gap no_number no_priz no_rest nobod_ever nobody_mark_it
        not_a_cup not_a_trap not_an_exam not_in_the not_like_somebody not_long not_the_other not_toda off_you
        off_you_go on_to on_your_back once_more one_arm one_arm_at one_foot_forward one_leg_stand one_more
        one_more_time onto_your onto_your_back or_near_enough or_the other_arm other_leg other_way out_to_the
        over_onto_your over_the over_to over_to_the park_it park_them paus_on paus_on_one paus_the peel_the
        peel_the_hip pelvic_tilt pick_up pick_up_your pull_a pull_apart push_back_onto push_down push_through
        put_it put_it_down quick_sip r_d r_d_ls rate_0_to remember_the remember_wher remember_wher_it rest_the
        rest_your ring_at_chest rise_to rise_to_hand roll_on roll_onto roll_onto_your roll_out roll_over
        roll_your_head row_it same_again same_as same_as_befor same_deal second_lot second_one second_time
        shak_it_out shak_out shak_them_out shak_your shoulder_off shoulder_off_your side_leg side_plank side_step
        singl_leg sip_of sit_back sit_on_your skin_the slid_down slid_down_onto slid_up slow_it slow_it_down
        slow_lowering soft_jaw some_of some_of_you some_peopl some_peopl_say somebody_knee somebody_stomach
        split_squat squeez_and squeez_up squeez_up_the stand_on_one stand_up start_again_at start_the start_with
        stay_as_long stay_at_the stay_down stay_for stay_in stay_in_it stay_sit stay_ther stay_ther_till
        stay_till_it stay_till_your stay_up step_down step_out step_out_of step_ups stick_acros stick_acros_your
        stick_away still_on still_on_your stop_for_one straight_down_on straight_in straight_into
        straight_into_the straight_on straight_onto straight_over straight_over_on straight_to straight_to_the
        straighten_your straighten_your_leg swap_arm swap_leg switch_it switch_it_up switch_leg take_a_handl
        take_the_towel take_two ten_second terminal_knee terminal_knee_extension that_a that_a_pull that_a_round
        that_about that_all_it that_both that_is_the that_look that_more that_the that_the_muscl that_the_way
        that_the_whol thatll_be thatll_do the_band the_band_squeak the_calf the_chin the_hip the_hip_flexor
        the_last the_last_one the_long the_other_arm the_other_hand the_other_leg the_other_side the_other_way
        the_second the_third the_third_one ther_a ther_a_gap ther_we ther_we_are ther_your thes_are they_go
        they_say theyr_all theyr_not_go theyv_not thi_is thi_is_the think_of think_of_the thirt_second
        thre_breath thread_the thread_the_needl through_the_middl till_it till_the till_your till_your_shoulder
        to_the to_the_wall toe_just_to toe_point_like toe_tap tuck_the tuck_the_back turn_over turn_your_camera
        two_minut under_the up_again up_and_down up_down up_on_top wait_for_it walk_back walk_it_back walk_it_in
        walk_it_off we_do we_go we_stop weight_up weight_up_at were_not_go whatever_left which_is which_is_a
        whil_you whil_your wide_pli wipe_your wipe_your_hand with_a with_a_dumbbell with_the wrist_rock you_all
        you_cant you_dont_come you_dont_need you_get you_just youll_be youll_do youll_want youll_want_that
        your_do your_feet your_lean your_lean_back your_leg your_leg_are your_not_a your_not_at your_other
        your_own your_partner your_second your_third youv_earn youv_gone
      `,
    ],
    [
      -0.2,
      `
        0_and 0_lan 0_lan_each 0_second_down 0_step_out <air>_<place> <attend>_<attend> <attend>_<more>
        <attend>_<num> <attend>_<settle> <attend>_<take> <chat>_<do> <chat>_<less> <chat>_<not> <chat>_<pace>
        <do>_<far> <do>_<less> <do>_<more> <do>_<not> <do>_<num> <do>_<pace> <do>_<place> <far>_<attend>
        <far>_<far> <far>_<place> <kit>_<far> <kit>_<place> <less>_<chat> <less>_<do> <less>_<less> <less>_<more>
        <less>_<move> <less>_<settle> <less>_<take> <more>_<attend> <more>_<place> <move>_<air> <move>_<attend>
        <move>_<less> <move>_<pace> <not>_<far> <not>_<part> <not>_<place> <not>_<swap> <not>_<wrong>
        <num>_<attend> <num>_<move> <num>_<pace> <num>_<part> <num>_<place> <pace>_<kit> <pace>_<more>
        <pace>_<part> <pace>_<place> <part>_<chat> <part>_<far> <part>_<harm> <part>_<ill> <part>_<less>
        <part>_<not> <part>_<num> <part>_<take> <place>_<kit> <place>_<pace> <place>_<place> <settle>_<pace>
        <settle>_<swap> <swap>_<wrong> <take>_<attend> <take>_<chat> <take>_<far> <take>_<settle> a_bit a_good
        a_hand a_littl a_pres a_pull about_half about_half_of all_of_you all_the all_the_way an_inch anyon_who
        are_they as_if as_you back_flat back_of back_of_the back_off band_lose band_lose_their becaus_if
        becaus_ive bin_it both_the_same build_up call_it_a chang_your com_down come_off come_out count_0 cut_it
        da_dum dead_still do_0 do_leg do_your dont_hold dont_just dont_let dont_let_it down_for down_in
        down_quiet down_to ease_it ever_rep ever_time everybod_else everybod_else_the fac_the five_pat flat_back
        flatten_it for_my four_second give_it go_on_your go_to grip_go half_rep half_sit hang_in_the hang_ther
        have_they head_last hold_for_one hold_it_at hold_the hold_your i_am i_dont i_dont_need i_dont_want
        i_know_your i_mean i_mean_it i_mean_that i_need_you i_said_drag i_said_float i_see i_want_to i_would
        id_say if_its if_that if_the if_you_get if_you_have ill_not_say ill_say ill_say_it im_just_the
        im_not_after im_not_be im_see im_seriou in_0 in_down in_for in_on in_to it_doesnt it_help it_stay
        it_touch its_a its_a_drawer its_allow its_got_a its_hard its_hav its_hav_a its_higher its_nice its_not_a
        its_not_an its_only_a its_stair its_the_third its_the_underneath its_ther its_tiny ive_a_scar keep_breath
        keep_hold keep_it_even keep_talk keep_them_ther keep_walk keep_your kne_bent kne_up knit_them lac_down
        last_0 last_0_metr left_leg leg_push let_em let_gravit let_it_be let_the let_them let_us_come
        let_yourself like_a like_somebody like_your like_youv listen_for littl_sip lock_it lose_the make_sure
        make_the near_the nice_and_even no_drop no_fling no_kick no_more no_plonk nobody_ask nobody_chas
        nobody_chas_you nobody_measur nobody_watch not_a noth_mov off_again off_the off_the_floor on_the_mat
        on_the_meat on_the_way one_at one_at_a one_bone one_ever one_leg_at one_to one_two one_up or_your or_youv
        other_knee out_for over_on_your paus_twic pick_it_up push_away push_the rest_with rest_with_me rib_down
        roll_over_onto roll_through round_four round_to round_to_the round_two_length same_clock same_side
        set_the shak_it_yes shak_them_down shorten_it shoulder_down shov_it show_me show_off shut_it side_on
        side_on_to side_to side_to_side sideway_on sit_on_the sit_ther sock_on squeez_everyth stag_thre
        stand_on_the stay_low stop_at stop_at_the swap_leg_when swap_the_leap take_it_off take_thre tell_me
        ten_kilo that_a_nerv that_a_squat that_a_stop that_all_i that_fine that_how_you that_is_how that_set
        that_the_feel that_the_next that_the_one that_the_part that_the_plac that_the_sneak that_ther_to
        that_what_its that_wher_it that_who that_work the_arm the_back the_bottom the_floor the_heel the_leg
        the_minut the_more the_next the_other_one the_other_pair the_second_it the_sore_leg the_truck the_two
        the_whol_time the_whol_way ther_a_littl ther_buggi ther_is ther_is_nowher ther_more ther_no_bus they_dont
        they_stay theyr_still thi_is_at thirt_degre thos_who thre_count thre_for thre_second thre_to toe_up
        try_to two_and_four two_dumbbell two_second two_step two_when two_when_your up_for up_the up_when
        up_when_your up_with up_with_a use_the wait_at walk_about watch_the we_are we_call_that were_just
        were_just_turn what_i whatever_that whol_foot you_are_go you_can_do you_could you_dont you_go you_like
        you_need you_never you_round you_should you_want youll_feel youll_forget your_after your_look
        your_look_at your_not your_on your_one your_the
      `,
    ],
    [
      -0.4,
      `
        <attend>_<part> <do>_<attend> <far>_<do> <more>_<num> <not>_<do> <num>_<far> <num>_<kit> <part>_<attend>
        <part>_<move> <part>_<part> <part>_<place> <place>_<attend> <place>_<num> <place>_<part>
        <settle>_<attend> <settle>_<far> <settle>_<less> five_second i_want look_at_the that_all that_how
        that_wher the_other the_whol your_a
      `,
    ],
  ],
  word: [
    [0.8, 'minut number row shak twic ups we'],
    [
      0.6,
      `
        again ask be bridg call clean eight fifteen fort got has he her hes his ladder lot lung many me muscl my
        now only pres rais remember rest she somebody squat thes thi thirt till twelv twent us was what who
      `,
    ],
    [
      0.4,
      `
        actual after all bad bear been best better breather bug calf calv car cat chang chat climber clock count
        curl cushion did dip do dog done each eleven extension five flexor had have hed here him hollow hug i ill
        is isnt its lad last later leg look love make march min name near never nine ninet of oh okay once other
        peopl phon plank posh proper quad rack rain read rose say second seven shed sheet sinc six some stair
        stor support switch tell ten th that the ther think third thos tidy trip used very walk warm went were
        weve which whistl wor work wrong youll
      `,
    ],
    [
      0.2,
      `
        0 about advert afterward age agn alread alright alway among and anybod anyth anywa arc archer are around
        awak aye balanc band bandstand bank bean beautiful becaus beep beetl between bev bicycl bike boat bog
        boiler bound bowl bread break britch broomstick brought burn burpe by cake came cap cardigan carmel carry
        ceilidh ceiling cereal chair cheer chicken child children chin chop clam clas click climb club coach coal
        coat cobra collaps colour comment compan competition contact cool couldnt council countr court cow crab
        crawl cream crunch d daft davo day dead deadlift deal debutant denis dentist depend derek des desk
        different dig ding doe door doorwa doreen dot dozen drill drink earlier eas eaten eh els elwyn email enjo
        enjoy enough everybody everyon except excus fabulou face fanc farmer fella felt fifth find finish fiv
        flamingo flick flip for forget forgotten forty found four fourth fram fridg friend fun gap gaz get glut
        goblet gold good gorgeou grandson grapevin great groan groceri group gwen gym habit hall halo ham hamstr
        head hear heart hid hike hing hm hmm holida home hors hour how hundr huw hydrant ice id idea ignor im
        imran in internet ive jack januar jim keep ken kettl kettlebell kevin kick kind know laugh learn less lie
        life list listen liv long loo loop lost ls machin made mailbox man marjori mark maureen mil mile mind
        mine mini moos morn mother mr much mum nah needl negativ nineteen nobod nobody nois noth obvious och odd
        off offic often oil older on onto oop opener our over own pair pancak parish park partner pass penguin
        phil physio pie plan pli pointer pool pose pound press pret priya priz probab prop pump pushup put
        question queu r race radiator raffl real record releas retir ris road roll romanian rosar rubber run rung
        said same sanja save saw scap school seat set sevent shaking sheila shop sick sid side sit sixteen skin
        slam slipper slow smell smil snak so sofa soften somebod sor sound soup speak spent spin split squad
        squar squeak static station stepper stomach stork straightener street stretch stronger stuff subscrib
        sulk superman suppos surpris swap talk tape tatti teach tempo terminal thank thatll their then theyr
        thought thousand thre thread thrust tim time timer tin toda toilet told tom took total trev tri trunk
        trust tune twenty twister ugly uncl until upstair wake wall wash watch week weight well werent whatever
        when whil why wife wiggl win wipe with wobbl woman won wonder wriggl writ written ya yeah year yep yes
        yet youd yourselv youv
      `,
    ],
    [
      -0.2,
      `
        abov achill acros against air allow am an angl ankl arch arm away baby backward bag ball bang bar bare
        begin beginner bell belt bent bigger biggest bit blad blow blu blue bon boss both bottom bow brak brisk
        bruis brush buckl build bus butt carol catch ceil centimetr chas cheek chest clamp clear clench clos
        closer coffe collarbon complete corner crack crank crash crat cros cut cute da deep delux die dinner dish
        div divvent dont doubl down downstair draw drawer drift drop dum dumbbell easier edge exhal explod fast
        fat feet fight fill fine finger fingertip fl flat flatten fling floor flutter fold follow forc forearm
        fresh further gear gent gentl glu gossip grab gradual green grind grip grumbl hair halfway handl hard
        harder headlight heavier heaviest heel height hello hero high higher hip hold holder hole hop horizon hot
        hover hum hup impres inhal insid instead inward itll jab jaw jerk jog jug jump just kickstand kilo kiss
        knee kneecap kneel knock kyle lac lan lane late lean leap leav length ligament lighter line lip load lock
        longer lose lower manner matchbox mayb mean meaner measur meat metr miss mississippi motion mouth mov
        move mug nearer nearest neck nerv newer nick nod nose nowher oclock one open option osteoporosi otherwis
        pace pad paddl paper passenger pat paus pay pedall peel perfect piec pin ping plac plat plent plonk plop
        point pop position pressur progres proud pub puddl puls punch purpl purpos quick quicker ramp rather
        reach red rep replac resist rhythm rise rope round rucksack safet sag saucer scar see seriou settl
        shallow shift shirt shorter shoulder shouldnt shout shov show shrug shuffl sideway simp skat skip skirt
        skull sleev slip slop slower smaller snap snatch sneak sock spe spik spill sprawl spread spring sprinkler
        squeez stack stan stanc stand statu stick stiff stiffer stomp str straight straighten strap strok stuck
        sure sw sway tail tailbon take tank tap tea tear teeth tension tent tenth thereabout tile tip tipto tock
        together tonight too touch towel treacl tss unclench unhurri upright waist wait want way wher whip
        whisker whit wider width wind within wob wrap wrist you zip
      `,
    ],
    [
      -0.4,
      `
        ahead armpit backsid behind bend bone bounc bum check ease effort elbow end even firm fist float foot
        forehead forward glas ground half hand if inch joint knuckl land lazy let level light loos middl opposit
        palm pleas pocket quarter sharp shin sho shorten sink slack small soft step tall taller thigh thumb tiny
        toe top tug underneath use version yourself
      `,
    ],
    [-0.6, 'heav into low out rib short should tight under'],
  ],
} as const satisfies CueWeights
