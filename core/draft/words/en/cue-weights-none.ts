/** How much each feature of a clause (cue-features.ts) speaks for no cue at all; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const NONE_WEIGHTS = {
  bias: [[0.8, 'yes']],
  class: [
    [0.4, 'carer chat do num'],
    [0.2, 'take'],
    [-0.2, 'harm less not place'],
    [-0.4, 'air ill move part'],
    [-0.6, 'far wrong'],
  ],
  first: [
    [0.8, 'off'],
    [
      0.6,
      `
        down eight he how my oh park remember rest row second shak she squat stay straight strong the ther up we
        who youv
      `,
    ],
    [
      0.4,
      `
        <chat> <kit> <num> <wrong> back balanc bridg by curl done fifteen flop four good have hes hug i ill it
        its ive last love min okay once other over rack right roll side six so some somebod somebody switch ten
        that thes they theyr third thirt till time turn twelv twent twic well weve what which whos with youll
      `,
    ],
    [
      0.2,
      `
        0 <place> <take> actual agn along alright ankl anywa archer away aye b band be bear beautiful becaus
        bench better bev bicycl both bound bravo brilliant broomstick bruc bug burpe calf calv can car carmel
        cash cat catch chang cheer chin circl clam climber clock collaps come couldnt crab crunch curtse cushion
        dead deadlift depend des did dig ding dip dot drag drawer drill drop each effort eleven enjo enough
        everybody except extension fabulou fall farmer find fine first fiv five flamingo flip floor foot for fort
        forty fourth gorgeou grand grapevin gwen halo hamstring hand has hed heel held her here high hill hm hmm
        hold hollow home ignor im imran isnt isometric jim joan keep kick knee ladder later leg lie look lung
        march margaret marjori maureen minut moderat moos morn mov muscl nah near negativ never next nine ninet
        nobod nobody number obvious och old on only onto ooh oop operat our paulin pelvic peopl phil pigeon plank
        plat pointer press pull put quick r read rose same sanja save see seven shaking shed sid sign singl sit
        sixt sixteen size skin slam smil snak soften somewher sor spe split sprint squad star static station
        stepper still stood strid superman superset support swap swim swing tempo terminal thatll them theyll
        theyv thi thre thread tom trev tuck twenty twist very vigorou walk wall weight were whatever whil whistl
        wiggl wipe without wobbl won work ye yeah yep yes youd
      `,
    ],
    [
      -0.2,
      `
        <attend> <far> <ill> <move> <pace> abov anybod anyon are arm bang bar bare belt big bigger bin blow blu
        blue body brak braver brisk bum call cant carol chest clear clos collarbon com count cut da divvent ease
        even ever expect explod eye fac feel fetch fingertip firm flatten float fold follow forehead freez from
        full get give glacial go got grow halfway handl hard holder however hum hup if imagin in jab jaw kid kne
        kneecap kneel knuckl kyle lac ladi land late lazy lean left length let level littl lock lose low mat
        match middl miss more move new none nose one open opposit option or palm pol pretend punch quicker quiet
        reach real red resist rib rock say serratu set settl sharp shift shin sho shorten shorter should shuffl
        shut sideway sing sink skip slower smooth sock spot spread spring stack stag stan start stead step stiff
        stop strap stretch sw tailbon take tall tap then think thos tick tight tiny to toe together too treacl
        try tss tug tum umbrella unclench underneath unhurri unles upper use wait want warm watch wee wher whit
        whol wob wrap yellow your
      `,
    ],
    [
      -0.4,
      `
        <part> about alway build check everybod head lift loos not out round short show small soft stand thumb
        you
      `,
    ],
    [-0.6, 'half long'],
    [-0.8, '<air> like pleas'],
  ],
  given: [
    [0.4, 'its just'],
    [
      0.2,
      `
        0 <attend> <far> <harm> <ill> <not> <swap> alon and anyon ask at bath bet book break burn calv card
        ceiling click count dirt doesnt down dull easy end harder hurt if it let lost mind no not odd off on only
        park pick posh read rest see set so somebod someth sore take talk the upstair want weight writ
      `,
    ],
    [
      -0.2,
      `
        <do> <move> <num> <part> <settle> are back com cramp eight get go goe gone have i late like other out
        over put shoulder start stop ten thos too when
      `,
    ],
  ],
  last: [
    [1, 'no'],
    [0.6, 'between curl dip ladder lung minut now okay pres rais rest row squat twic ups'],
    [
      0.4,
      `
        0 afterward again arm ask band breath bridg bug clean climber count desk dog done eight extension fanc
        five flop go good hold is later lift look lot love name nine off oh pose remember ring second seven six
        soften stair stretch ten that third twelv us walk
      `,
    ],
    [
      0.2,
      `
        actual advert agn ahm alon alread alright altogether anyon anywa arc away aye bad bar bear beautiful beep
        beetl befor bell bench better bev bicycl bike bin biscuit boat body bog boiler book bor both bound bowl
        break breather britch burn burpe call calv cap car cardigan carmel ceilidh chair chat chicken chin
        christma circl clam clas clever climb clock club coal coat collaps com competition contact court cow
        crawl creep cri crunch daughter day deadlift deal debutant denis dentist des ding door doreen down drink
        duck each earlier eh eleven elwyn em enough event everyth fabulou face fair faster februar fenc fifteen
        fifth finish first flamingo flick flip floorboard forgotten fort four fourth fram frida fridg friend from
        goe gorgeou grapevin gravel habit half hall halo hamstring handbag hank haul have heel heroic hike him
        hing hm hmm holida home hors hour hug husband huw hydrant i internet iron its jack jam jim ken kettl kilo
        kne lad lap larg leg life linda list listen loo loop lor lowering ls mailbox many march marjori marvellou
        maureen me milk mind mine moment muscl nah near needl next night nois not number obvious offic on once
        only opener out over own pair pancak past phil pick pictur pigeon plan plank pleasant pointer pol posh
        posti press pret prop proper pump quad question queu quiet rac race rack rain read real reception relax
        releas right ris rose run rung said same sandra sanja say screen see set sham sheet shov sid side sinc
        sit sixth skip slam slid snak so sofa sor spin spot sprint squad start stepper stop stor stork
        straightener strid stuff sulk superman swap tape tempo th then ther thes think thirt thos thre through
        throw thrust ticket tidy tilt tim timer tom too total trap trip tune turn twent twist twister two wait
        wall wander week weight well what whistl why wiggl win wor work wrong yeah year yep your yourselv
      `,
    ],
    [
      -0.2,
      `
        a achill after ahead air all allow alway and arch are armpit backsid bag ball bang banister belt bend
        bigger blad blu blue bone bottom bounc bow brak brian brisk bruis buckl bum carol catch ceil centimetr
        cheek clos closer complete cone copy corner crash crat cros cute dead die dish divvent downstair drop dum
        dumbbell ear earring easy effort elbow elephant else end feel fift fine firm fling float floor flutter
        follow foot forehead forward fresh fun further gent get glas got grab gradual green ground grumbl guy
        hair handl hard harder headlight heal heavier hello high higher holder hole hot hover how hup ideal inch
        insid instead jab jaw jean kick kickstand kneecap kneel knuckl kyle last lat lazy lean learn level
        lighter lip lock loos low manner meaner measur melt mississippi most motion mov move movement nearest
        neck need nod nose offenc open opposit optional pad paper park passenger patient paus pay pendulum peopl
        piec pin ping plant pleas plent plonk plop pocket pop position postcod proud pud puddl pull put ramp
        rhythm rib rise rough sag saucer seat seriou settl shallow shirt short shorter shoulder shout shrug
        sideway sink slider smaller snap snatch sore spe sprawl spread spring stamp stan stanc step stiff stomp
        straighten strong sway tailbon tall taller tap tent tenth the thereabout they thigh thumb thursda tiny
        tip tipto tock together towel treacl tss tug under underneath upright visit waist want wednesda wher
        wider wing with wob wood worktop yellow
      `,
    ],
    [
      -0.4,
      `
        ankl behind bent bit chang chest even fist for hang heav in knee more red sharp soft still straight tight
        toe top touch version wide you
      `,
    ],
    [-0.6, 'long'],
    [-0.8, 'other'],
  ],
  length: [
    [0.8, '1-2'],
    [0.6, '3-4'],
    [0.4, '5-7'],
    [0.2, '8-12'],
    [-0.2, 'long'],
  ],
  pair: [
    [
      0.6,
      `
        <kit>_down <part>_stretch a_minut call_it chang_<part> each_<part> leg_<do> over_to strong_<part>
      `,
    ],
    [
      0.4,
      `
        0_0 0_<num> <attend>_into <attend>_many <chat>_of <chat>_on <chat>_read <do>_apart <do>_out <do>_over
        <do>_ups <kit>_away <less>_your <move>_apart <move>_over <move>_till <move>_up <move>_ups <not>_count
        <not>_it <not>_wor <num>_a <num>_and <num>_breath <num>_each <num>_if <num>_minut <num>_more <num>_of
        <num>_rep <num>_second <num>_slow <part>_breath <part>_for <part>_now <part>_plank <part>_rais <part>_you
        <place>_here <settle>_on <take>_down <take>_to a_<chat> a_dozen all_right and_kne as_long as_many at_that
        behind_the chang_leg chest_<do> come_on dead_<do> dont_<pace> each_leg ever_minut feet_down for_five
        front_<do> get_<place> half_a have_a his_<part> in_here in_it is_that is_the it_<num> it_down its_<num>
        keep_<place> keep_go keep_it last_one leg_<move> like_the long_<attend> long_as make_it minut_<place>
        my_<part> not_<num> not_go not_wor of_an of_them on_your onto_your or_the other_<part> other_arm
        other_leg other_side pull_apart put_them same_again second_<more> second_<pace> shak_<place> shak_out
        shak_the shak_your shoulder_<do> side_<do> side_plank side_step sit_to stay_as stay_till straight_into
        that_<more> that_<num> that_your the_dog to_<num> to_stand under_the walk_<part> walk_back we_<settle>
        with_the youll_want your_<do> your_front your_read
      `,
    ],
    [
      0.2,
      `
        0_<chat> 0_a 0_each 0_for 0_min 0_of 0_on 0_rep 0_s 0_tempo 0_the 0_to 0_x <air>_a <air>_back
        <air>_between <air>_breath <air>_in <air>_of <attend>_about <attend>_ankl <attend>_anyon <attend>_anyth
        <attend>_as <attend>_at <attend>_band <attend>_befor <attend>_bor <attend>_cant <attend>_doorstop
        <attend>_easy <attend>_enough <attend>_fiv <attend>_for <attend>_goe <attend>_has <attend>_have
        <attend>_he <attend>_jaw <attend>_lightn <attend>_like <attend>_long <attend>_mean <attend>_milk
        <attend>_now <attend>_odd <attend>_one <attend>_onto <attend>_over <attend>_shut <attend>_stretch
        <attend>_thre <attend>_time <attend>_you <attend>_youv <chat>_alway <chat>_and <chat>_at <chat>_away
        <chat>_back <chat>_be <chat>_believ <chat>_block <chat>_bor <chat>_button <chat>_call <chat>_catch
        <chat>_count <chat>_coupl <chat>_crack <chat>_did <chat>_drag <chat>_drink <chat>_effort <chat>_enjoy
        <chat>_exercis <chat>_fanc <chat>_feel <chat>_first <chat>_found <chat>_get <chat>_give <chat>_go
        <chat>_got <chat>_grandson <chat>_hand <chat>_havent <chat>_hear <chat>_if <chat>_in <chat>_it <chat>_its
        <chat>_just <chat>_later <chat>_learn <chat>_leav <chat>_like <chat>_lose <chat>_lot <chat>_me
        <chat>_miss <chat>_my <chat>_nose <chat>_off <chat>_one <chat>_only <chat>_own <chat>_posh <chat>_rest
        <chat>_shoulder <chat>_sock <chat>_start <chat>_station <chat>_stay <chat>_still <chat>_tell <chat>_th
        <chat>_think <chat>_thos <chat>_thre <chat>_through <chat>_time <chat>_told <chat>_trip <chat>_trust
        <chat>_us <chat>_wake <chat>_warm <chat>_we <chat>_were <chat>_when <chat>_whit <chat>_will <chat>_wont
        <chat>_writ <chat>_you <do>_0 <do>_again <do>_and <do>_body <do>_countr <do>_down <do>_first <do>_if
        <do>_leg <do>_onto <do>_or <do>_sid <do>_when <far>_bath <far>_bel <far>_bell <far>_bit <far>_bowl
        <far>_four <far>_get <far>_home <far>_kne <far>_lad <far>_loop <far>_lung <far>_minut <far>_pli
        <far>_puls <far>_slower <far>_squar <far>_the <far>_thigh <far>_two <harm>_about <harm>_cream <harm>_hold
        <harm>_leg <harm>_out <harm>_over <harm>_settl <harm>_with <harm>_your <ill>_its <ill>_of <kit>_again
        <kit>_are <kit>_belong <kit>_easier <kit>_for <kit>_left <kit>_now <kit>_pres <kit>_quiet <kit>_squeak
        <kit>_squeez <kit>_stand <kit>_ups <less>_along <less>_better <less>_between <less>_hold <less>_in
        <less>_jog <less>_like <less>_long <less>_minut <less>_past <less>_shop <less>_them <more>_ankl
        <more>_down <more>_ear <more>_feel <more>_foot <more>_for <more>_four <more>_go <more>_leg <more>_like
        <more>_more <more>_muscl <more>_no <more>_of <more>_off <more>_or <more>_round <more>_set <more>_station
        <more>_than <more>_who <move>_as <move>_back <move>_body <move>_countr <move>_deep <move>_eye <move>_for
        <move>_go <move>_like <move>_onto <move>_out <move>_push <move>_round <move>_sid <move>_sit <move>_that
        <move>_when <not>_ask <not>_bad <not>_bar <not>_be <not>_been <not>_break <not>_burpe <not>_clap
        <not>_clever <not>_come <not>_complaint <not>_copy <not>_creep <not>_cri <not>_dont <not>_ever <not>_fair
        <not>_fanc <not>_forget <not>_gap <not>_got <not>_hurt <not>_idea <not>_know <not>_long <not>_look
        <not>_make <not>_my <not>_number <not>_pleas <not>_real <not>_rush <not>_saw <not>_spend <not>_talk
        <not>_ten <not>_that <not>_think <not>_thre <not>_throw <not>_toda <not>_two <not>_you <num>_0
        <num>_after <num>_again <num>_altogether <num>_at <num>_big <num>_effort <num>_eight <num>_for <num>_four
        <num>_goe <num>_hour <num>_hundr <num>_is <num>_left <num>_length <num>_lot <num>_metr <num>_min
        <num>_new <num>_on <num>_one <num>_past <num>_paus <num>_puls <num>_round <num>_s <num>_set
        <num>_thousand <num>_thre <num>_tim <num>_trip <num>_way <num>_with <num>_x <num>_year <pace>_0
        <pace>_about <pace>_among <pace>_at <pace>_between <pace>_bit <pace>_breath <pace>_but <pace>_for
        <pace>_from <pace>_help <pace>_just <pace>_lot <pace>_lowering <pace>_off <pace>_one <pace>_paus
        <pace>_run <pace>_sip <pace>_squat <pace>_time <pace>_up <part>_again <part>_are <part>_balanc
        <part>_cone <part>_cramp <part>_dig <part>_extension <part>_flexor <part>_flick <part>_from <part>_get
        <part>_has <part>_height <part>_hing <part>_home <part>_in <part>_is <part>_mak <part>_make <part>_mean
        <part>_no <part>_one <part>_opener <part>_pool <part>_pres <part>_prop <part>_pull <part>_pump
        <part>_rock <part>_roll <part>_shut <part>_slid <part>_some <part>_squat <part>_squeez <part>_stand
        <part>_step <part>_stop <part>_straightener <part>_thrust <part>_toe <part>_toward <part>_ups <part>_warm
        <part>_wav <place>_after <place>_afterward <place>_all <place>_are <place>_between <place>_church
        <place>_dog <place>_ear <place>_end <place>_februar <place>_get <place>_his <place>_in <place>_into
        <place>_jaw <place>_leed <place>_loud <place>_me <place>_now <place>_of <place>_onto <place>_out
        <place>_over <place>_pli <place>_round <place>_sinc <place>_six <place>_squat <place>_still <place>_then
        <place>_thi <place>_to <place>_total <place>_two <place>_wall <place>_who <settle>_any <settle>_around
        <settle>_at <settle>_countr <settle>_each <settle>_mean <settle>_pool <settle>_pull <settle>_that
        <settle>_thi <settle>_to <settle>_two <settle>_ups <settle>_wet <settle>_your <swap>_after <swap>_along
        <swap>_arm <swap>_back <swap>_both <swap>_break <swap>_burpe <swap>_complaint <swap>_count <swap>_creep
        <swap>_dont <swap>_easier <swap>_everyon <swap>_from <swap>_gap <swap>_i <swap>_idea <swap>_is
        <swap>_number <swap>_over <swap>_paus <swap>_pleas <swap>_put <swap>_shop <swap>_smell <swap>_squeez
        <swap>_ten <swap>_that <swap>_thes <swap>_up <swap>_with <take>_are <take>_at <take>_feel <take>_out
        <take>_pool <take>_pull <take>_stop <take>_them <take>_ther <take>_ups <take>_wet <take>_your <wrong>_way
        a_<air> a_<carer> a_<part> a_<settle> a_<take> a_bet a_better a_bit a_blue a_breather a_broomstick
        a_clean a_competition a_debutant a_desk a_different a_drink a_face a_few a_full a_fun a_ham a_hike a_hors
        a_hundr a_kilometr a_ladder a_leg a_man a_nice a_proper a_race a_run a_seat a_side a_singl a_sit a_skip
        a_test a_trap a_trip a_walk a_wander a_week a_weight a_whol a_wiggl a_wobbl about_0 about_it about_the
        after_a after_each after_that after_the after_your again_<place> again_at again_in all_<pace> all_got
        all_it all_of all_together along_<attend> alternat_<part> alternat_leg among_yourselv an_advert an_hour
        anchor_<place> and_<chat> and_<more> and_<part> and_<place> and_a and_again and_back and_clos and_do
        and_get and_grab and_head and_is and_it and_its and_nobod and_one and_releas and_see and_shak and_stop
        and_the and_then and_up ankl_is ankl_pump anyth_feel are_<attend> are_<chat> are_<place> are_go are_on
        are_so are_sore are_still are_stronger arm_<settle> arm_a arm_at arm_together as_<place> as_befor
        as_doorstop as_the ask_is ask_me at_eight at_you away_<chat> away_if away_you back_<harm> back_<place>
        back_are back_get back_is back_on back_some back_squat back_to back_up back_wall back_you bag_out
        balanc_goe ball_<place> band_<do> band_<num> band_<place> band_are band_off band_round band_squeak
        bar_down basket_afterward bath_upstair be_<less> be_<part> be_a be_at be_back be_hard be_quiet be_sick
        be_walk bear_<do> becaus_<chat> becaus_i becaus_the been_<more> been_<place> been_to befor_i behind_that
        bel_<air> bel_breath believ_it bell_down belong_to bench_<do> bench_<move> bend_over bent_end
        better_<move> better_than between_them big_<air> big_<num> big_bowl big_breath big_lad big_one big_thigh
        bin_lor bit_<num> bit_ever bit_higher bit_longer block_<part> block_<place> block_back blue_<kit>
        both_arm both_sid bottl_<place> bottom_<kit> bottom_<num> bottom_cone bottom_for bottom_toward br_both
        br_your break_<place> breath_<place> breath_a breath_and breath_between breath_in brilliant_<pace>
        brilliant_effort bum_<do> burn_that bus_<not> bus_stop by_<place> by_the calf_<attend> calf_<do>
        calf_stretch call_a call_them calv_are came_<place> camera_away can_<chat> can_<place> can_<swap>
        can_everyon can_in car_<place> car_it car_seat carry_a cash_<place> cash_in cat_and cat_cow catch_your
        catch_yourself ceiling_dirt chair_stand chang_arm chang_room cheek_<place> cheek_on chest_<far> chest_get
        chest_height chest_now chest_opener chest_pres chest_stretch child_pose chin_<attend> chin_<more>
        chin_height chin_up chin_ups clap_it clean_a clean_off clean_one climb_<kit> clock_<do> com_out com_the
        come_forward come_to complain_about cone_to consultant_letter corkscrew_com corner_<num> could_<swap>
        could_do could_hear couldnt_<do> couldnt_<move> count_of count_your crab_<do> crab_walk crack_<place>
        cros_countr cushion_<place> cushion_down d_ls day_at dead_<move> dead_<settle> dead_bog dead_bug
        dead_hang dead_lift depend_how did_the dig_<far> dig_<place> dig_deep dig_in do_<more> do_<num> do_a
        do_that do_the do_two doe_<num> doe_thi doesnt_<harm> doesnt_<ill> doesnt_hurt doesnt_it doesnt_want
        dont_<attend> dont_answer dont_ask dont_be dont_bend dont_clap dont_come dont_copy dont_fall dont_kick
        dont_make dont_rush dont_set dont_shut dont_spend dont_throw door_open down_<num> down_and down_on
        down_onto down_then down_two drill_0 drink_<swap> drink_soup drop_it dumbbell_now each_arm each_way
        ear_<place> easy_<chat> easy_<settle> easy_<swap> easy_go easy_just easy_no effort_<chat> eight_<chat>
        eight_<far> eight_if elbow_<attend> elbow_like elbow_off elbow_wide em_<pace> empt_<kit> empt_bar
        end_<place> end_down enjo_it even_for ever_<chat> ever_decad everyon_else everywher_and extra_<chat>
        eye_contact eye_shut fac_it face_<do> face_pool face_pull fall_out fall_over fallen_<place> fallen_over
        far_<attend> far_as farmer_<do> farmer_<move> farmer_walk fast_<take> fast_feet feel_<attend> feel_a
        feel_easy feel_like feel_odd feet_are feet_is feet_stop fell_<place> few_<more> few_more few_till
        few_word fifteen_<pace> fifteen_<place> find_yourself fine_along finish_like finish_your fire_<kit>
        fire_door first_<chat> first_one first_side five_<air> five_<attend> five_<chat> five_breath five_if
        flat_out flexor_<attend> floor_<do> floor_bit floor_if floor_is foot_<place> foot_behind foot_forward
        foot_in for_<num> for_<part> for_a for_carry for_fort for_stack for_the for_thre for_time for_your
        forearm_plank forget_to form_start fort_<pace> fort_second forward_a found_it four_<attend> four_<chat>
        four_<far> from_<num> from_behind front_<move> front_row front_squat full_bath full_minut fun_th
        gap_<place> gap_under get_<more> get_a get_long get_short get_up get_wet get_your give_<more>
        give_<place> give_them give_up give_your go_by go_for go_like go_on go_to go_when goe_at goe_everywher
        goe_in goe_off goe_on goe_with gone_<place> gone_in gone_the got_0 got_<harm> got_<num> got_<part> got_it
        got_the got_wet grab_your grip_<attend> grip_burn had_a half_<far> half_past hamstr_<attend> hamstr_<do>
        hamstr_stretch hand_<more> hand_<place> hand_off hand_out hand_say hand_toward hand_up hang_out
        hap_nowher has_<chat> has_<num> has_anybod has_anyon has_gone have_<num> have_it head_<attend> head_<num>
        head_follow head_if head_is head_one head_over heal_<do> hear_<chat> hear_a hear_me hear_somebody
        hear_the heart_<settle> heart_settl heav_<far> heav_<less> heav_band heav_enough heel_<do> heel_<settle>
        heel_dig heel_flick heel_prop heel_slid heel_to heel_toe hello_to help_<chat> help_you henc_the
        her_<part> her_the here_<place> here_on high_<part> high_kne hip_<move> hip_cramp hip_flexor hip_hing
        hip_thrust hip_up his_<harm> his_toe hold_at hold_each hollow_<settle> hollow_<take> hollow_hold hour_on
        how_<attend> how_<less> how_<place> how_it how_long how_many how_much however_<place> however_long
        hug_the hug_your hundr_and hurt_leav i_<attend> i_<chat> i_<do> i_<move> i_<settle> i_alway i_drag i_look
        i_told i_trust i_was i_will ice_cream if_<chat> if_<not> if_you if_youv ignor_it ill_<pace> im_go
        in_<chat> in_<kit> in_<part> in_a in_between in_church in_his in_leed in_the in_ther in_total in_you
        inner_<far> inner_rang into_your is_<chat> is_<num> is_eight is_hap is_it is_like is_only is_out
        is_suppos is_ten is_watch is_what is_wher is_why isnt_it it_<chat> it_<ill> it_<pace> it_as it_count
        it_eas it_feel it_for it_go it_goe it_hurt it_in it_is it_isnt it_just it_keep it_let it_out it_rain
        it_rest it_sound it_straight it_talk it_twic it_under it_up it_was it_with it_work it_your itll_be
        its_<attend> its_<not> its_<pace> its_<wrong> its_cold its_for its_in its_not its_on its_the its_thi
        its_warm its_wrong ive_<not> jar_<move> join_<place> join_in just_<move> just_<settle> just_go just_like
        just_to keep_<more> keep_on keep_push keep_that keep_up keep_you kick_it kilo_dumbbell kne_and kne_are
        kne_down kne_from kne_have kne_in kne_on kne_out kne_that knee_<do> knee_<move> knee_and knee_extension
        knee_plank knee_straightener knock_your know_how last_<chat> last_coupl last_exercis last_th learn_to
        left_a left_foot left_over leg_<far> leg_<more> leg_<take> leg_again leg_and leg_are leg_balanc leg_if
        leg_lift leg_make leg_off leg_only leg_out leg_rais leg_stand leg_together leg_up length_of less_like
        less_of less_your let_say let_us let_wake letter_is lie_down lie_ther light_are lighter_<attend>
        lighter_shop like_i like_it like_lightn like_milk like_normal like_they littl_<kit> littl_<place>
        littl_ankl littl_bell littl_loop littl_squar lock_<part> long_<pace> long_at long_for long_now long_one
        long_time longer_<place> look_<attend> look_<less> look_<pace> look_after look_at look_easy look_like
        loop_<place> loop_on lot_<less> lot_<not> lot_less low_<air> low_<do> low_<move> low_bel low_lung
        lower_<num> lower_for make_eye make_that many_<attend> many_as mark_it me_<attend> me_<num> me_at me_if
        mean_<chat> mean_you mind_off mini_<do> mini_squat minut_<less> minut_<num> minut_<pace> minut_and
        minut_in minut_off minut_on moderat_<pace> moderat_effort more_<attend> more_like more_muscl more_on
        more_time morn_and mov_for mov_on mr_ahm much_better muscl_<harm> muscl_that my_<air> my_<chat> my_<swap>
        my_grandson near_<far> near_<less> near_<swap> near_enough near_home near_ther neck_<attend> neck_<do>
        need_to never_<more> never_touch next_<chat> next_<kit> next_station nice_<chat> ninet_<pace>
        ninet_second no_<chat> no_<less> no_<not> no_<pace> no_<settle> no_<take> no_bar no_break no_burpe
        no_complaint no_creep no_dont no_gap no_hang no_idea no_it no_number no_paus nobod_cri nobod_ever
        nobod_is nobody_<part> not_<attend> not_<harm> not_<ill> not_at not_bad not_cheat not_count not_even
        not_got not_in not_long not_my not_pleas not_real not_toda not_you noth_<more> noth_fanc number_<num>
        number_<place> number_on of_<num> of_<take> of_a of_cereal of_feet of_rubber of_that of_thes of_thos
        off_<chat> off_a off_you oil_it old_gym older_than on_<chat> on_<place> on_down on_each on_me on_one
        on_thi on_with once_<more> once_<place> once_more one_<chat> one_<less> one_<more> one_<pace> one_<take>
        one_and one_as one_count one_finger one_had one_leg one_minut one_more one_of one_way one_with only_<num>
        only_<pace> only_<take> only_get only_slower only_you onto_all op_leg open_the operat_leg or_<part>
        or_heel or_not or_shall other_<chat> other_<less> other_day other_half other_way our_<chat> out_loud
        out_ther out_your outsid_of over_do over_ther over_you overhead_<do> overhead_<move> overhead_pres
        own_<pace> pal_off park_<place> park_them pass_through past_the paus_at paus_for paus_the peel_the
        penguin_that peopl_call peopl_say per_<part> percent_of phon_<place> phon_go pinch_its point_like pop_the
        pres_ups priz_for puff_<part> puff_back pull_<attend> pull_a push_<chat> push_<place> push_down
        push_through put_<place> put_the quad_<attend> quarter_of quick_sip quiet_on quit_<place> quit_on r_d
        rack_it reason_i reason_we red_<kit> red_band register_<place> register_on remember_the remember_wher
        rest_<attend> rest_the rest_your rib_<air> rib_breath right_and rise_to rock_<far> rock_<not> rock_until
        roll_on roll_onto roll_out roll_over romanian_deadlift round_again round_and round_in round_of row_it
        run_with rush_to same_<attend> same_<place> same_as same_deal same_on same_with sav_<chat> sav_you
        scap_<do> scap_pull seat_<do> seat_<move> seat_are second_<chat> second_<do> second_<far> second_<less>
        second_<move> second_<num> second_<settle> second_and second_at second_between second_help second_lot
        second_lower second_off second_one second_paus second_time second_up see_<chat> see_bum see_me see_some
        see_that see_the seen_the set_<num> set_of shaking_<less> shall_<chat> shall_i shed_<attend> sheet_by
        should_manag shoulder_<chat> shoulder_first shoulder_land shoulder_off shoulder_roll shoulder_wav
        show_you shut_<more> shut_up sick_of sid_<less> sid_alway side_<kit> side_<move> side_<part> side_bend
        side_leg sign_the sinc_the singl_<less> singl_<wrong> singl_wobbl sip_of sit_<part> sit_at sit_back
        six_<pace> six_and six_length sixt_<num> size_larg skin_the slid_<more> slid_up slow_<air> slow_breath
        slow_lowering so_<do> so_<move> so_<place> so_clos soft_jaw some_peopl somebody_<chat> somebody_ask
        somebody_chas somebody_knee somebody_phon somebody_stomach somebody_watch sound_<attend> sound_like
        soup_from split_<do> split_squat squar_with squeez_<more> squeez_and squeez_up stack_the stair_<less>
        stair_easier stand_<attend> stand_<swap> stand_on stand_ups stand_work start_the start_with
        static_<attend> static_<part> static_quad station_<num> stay_<more> stay_for stay_in stay_sit stay_up
        step_<more> step_down step_ups stick_acros stick_with still_<not> still_<num> still_<place>
        still_<settle> still_cant still_have still_on still_ther stomach_talk stop_be straight_<chat>
        straight_<do> straight_<place> straight_after straight_in straight_on straight_onto straight_over
        straight_round straight_to straighten_your strong_ankl strong_leg stronger_<part> stronger_than
        support_<settle> support_<take> support_hold support_your swap_<part> swap_<place> swap_arm swap_over
        switch_<part> switch_it switch_leg take_it talk_<chat> talk_about tall_one teacher_swor tell_you
        tell_your tempo_0 ten_<chat> ten_<do> ten_<less> ten_<pace> ten_effort ten_second terminal_<part>
        terminal_knee than_<num> than_most thank_<chat> thank_me that_<attend> that_<chat> that_<place> that_a
        that_about that_both that_dull that_fallen that_go that_hold that_just that_look that_mat that_more
        that_nois that_normal that_not that_one that_out that_sav that_smooth that_the that_was that_you
        thatll_<swap> thatll_do the_0 the_<far> the_<harm> the_<place> the_ankl the_basket the_beep the_bent
        the_best the_big the_bike the_bin the_board the_book the_break the_bucket the_cake the_can the_cat
        the_ceiling the_chang the_clock the_dentist the_driver the_feet the_fenc the_fire the_flamingo
        the_floorboard the_folder the_fun the_glut the_grandchildren the_gym the_hall the_hand the_handbag
        the_head the_heat the_hook the_internet the_jam the_kettl the_kettlebell the_ladder the_ladi the_left
        the_less the_lift the_light the_line the_littl the_long the_loo the_machin the_mailbox the_neck the_needl
        the_neighbour the_offic the_pair the_parish the_phon the_physio the_pink the_post the_radiator the_reason
        the_record the_register the_romanian the_rosar the_rose the_row the_rower the_sheet the_shop the_slow
        the_sofa the_sound the_spin the_spot the_stag the_stair the_start the_step the_stork the_studio
        the_summer the_tape the_timer the_video the_wash the_worst the_wrong them_<swap> them_all them_and
        them_pret then_<num> ther_<attend> ther_<chat> ther_<far> ther_<not> ther_at ther_the ther_until ther_we
        thes_<place> thes_are thes_the they_<chat> they_say they_were theyll_be theyr_<less> theyr_all theyr_the
        theyv_<not> theyv_not thi_<kit> thi_<more> thi_<not> thi_<swap> thi_again thi_help thi_is thi_isnt
        thi_when thigh_bone think_about think_its third_<chat> third_one thirt_<attend> thirt_<pace> thirt_second
        thos_<part> thos_are thre_<air> thre_<num> thre_<part> thre_at thre_breath thre_goe thre_head thre_of
        thre_tim thre_two thread_the tick_<place> tidy_one till_it till_the till_your time_<chat> time_is time_it
        to_<pace> to_<swap> to_ask to_chest to_complain to_eight to_failur to_finish to_go to_hand to_keep
        to_like to_oil to_save to_stay to_ten to_that to_thos to_toe to_twent to_us to_watch toe_<do> toe_tap
        toe_walk told_<chat> told_you tomorrow_<chat> too_<place> too_long top_for touch_your trust_<chat>
        trust_you tuck_<settle> tuck_the turn_<place> twent_<pace> twent_second twic_<place> twic_a twic_through
        two_<air> two_<more> two_<num> two_<settle> two_and two_at two_breath two_lot two_minut two_more two_one
        two_second two_stand ty_your ugly_one up_<num> up_<part> up_down up_for up_four up_off up_out up_the
        up_who us_<chat> us_<place> us_<settle> us_go used_to very_<chat> very_good wake_the walk_<do>
        walk_<place> walk_it walk_like wall_<do> wall_<move> wall_<settle> wall_<swap> wall_<take> wall_instead
        wall_sit want_<num> want_it want_one want_that warm_<more> warm_<place> warm_up was_<chat> was_<place>
        was_a was_the wash_<kit> wash_<more> wash_machin wash_up watch_<chat> watch_me wav_<more> wav_<place>
        wav_up way_of way_out way_ther way_to we_<chat> we_<swap> we_do we_go we_had we_start wee_huff week_<far>
        week_to weight_down weight_up weight_you went_to were_<place> wet_<part> wet_kne what_keep what_stop
        whatever_<chat> whatever_<more> whatever_left whatever_you when_<chat> when_your when_youv wher_<chat>
        wher_<num> wher_one which_<chat> which_is whil_your who_<not> who_doesnt who_got whol_<far> whol_<num>
        whol_point whos_is why_<chat> wide_as wide_pli win_and wipe_your with_a with_age with_them wobbl_<less>
        wobbl_<place> wobbl_fine won_a work_<more> would_be wrist_<do> wrist_rock wrist_say writ_it wrong_way x_0
        x_<num> you_<less> you_at you_cant you_dont you_get you_go you_havent you_just you_on you_park you_roll
        you_see you_stay you_to you_want you_what you_with youd_be youll_<swap> youll_do youll_have youll_still
        your_<kit> your_<less> your_<num> your_<settle> your_<swap> your_<take> your_best your_bottl your_breath
        your_bridg your_camera your_cardigan your_chair your_consultant your_daughter your_do your_drink your_fac
        your_fanc your_finger your_form your_four your_friend your_hand your_handbag your_heart your_heel
        your_kne your_lean your_light your_list your_lot your_mat your_mind your_minut your_mother your_mum
        your_my your_number your_other your_own your_partner your_pay your_pol your_posh your_pres your_puff
        your_rest your_second your_sheet your_shop your_ticket your_two your_under your_warm your_way your_weight
        your_writ youv_<settle> youv_come youv_earn youv_gone youv_lost youv_read youv_the youv_your
      `,
    ],
    [
      -0.2,
      `
        0_<part> 0_dumbbell 0_go 0_hand 0_lan 0_oclock 0_or 0_out 0_turn <air>_for <air>_on <air>_out <air>_to
        <attend>_0 <attend>_a <attend>_ahead <attend>_along <attend>_an <attend>_and <attend>_down <attend>_each
        <attend>_feet <attend>_hand <attend>_if <attend>_is <attend>_its <attend>_ive <attend>_just <attend>_kne
        <attend>_line <attend>_pair <attend>_step <attend>_strid <attend>_ten <attend>_that <attend>_the
        <attend>_ther <attend>_though <attend>_through <attend>_up <attend>_weigh <attend>_well <attend>_your
        <chat>_0 <chat>_backward <chat>_balanc <chat>_bare <chat>_bend <chat>_came <chat>_clap <chat>_danc
        <chat>_done <chat>_eight <chat>_finish <chat>_gravit <chat>_have <chat>_hope <chat>_hundr <chat>_inch
        <chat>_is <chat>_jump <chat>_keep <chat>_land <chat>_leg <chat>_look <chat>_margaret <chat>_mean
        <chat>_newer <chat>_old <chat>_out <chat>_pull <chat>_put <chat>_rac <chat>_say <chat>_seen <chat>_seriou
        <chat>_shouldnt <chat>_sit <chat>_squeez <chat>_stand <chat>_ten <chat>_the <chat>_them <chat>_third
        <chat>_thirt <chat>_walk <chat>_would <chat>_wouldnt <chat>_yourself <do>_a <do>_about <do>_at <do>_away
        <do>_each <do>_everyth <do>_for <do>_forward <do>_four <do>_from <do>_hand <do>_head <do>_is <do>_not
        <do>_side <do>_them <do>_till <do>_together <do>_under <do>_up <do>_you <far>_arm <far>_at <far>_back
        <far>_down <far>_enough <far>_for <far>_go <far>_got <far>_if <far>_in <far>_is <far>_or <far>_out
        <far>_plank <far>_push <far>_sip <far>_step <far>_than <far>_to <far>_toe <far>_version <far>_were
        <harm>_at <harm>_how <harm>_in <harm>_it <harm>_on <harm>_to <kit>_a <kit>_com <kit>_do <kit>_in <kit>_is
        <kit>_or <kit>_so <kit>_somebod <kit>_that <kit>_the <kit>_till <kit>_under <kit>_when <kit>_will
        <less>_and <less>_far <less>_fast <less>_if <less>_on <less>_one <less>_peopl <less>_rep <less>_sit
        <less>_squat <less>_strength <less>_that <less>_when <less>_with <more>_at <more>_folk <more>_in
        <more>_it <more>_one <more>_pair <more>_to <more>_top <more>_with <move>_and <move>_breath <move>_each
        <move>_everyth <move>_forward <move>_from <move>_left <move>_low <move>_not <move>_off <move>_on
        <move>_peopl <move>_sure <move>_talk <move>_tall <move>_them <move>_to <move>_together <move>_under
        <move>_walk <move>_with <move>_your <not>_after <not>_at <not>_back <not>_bench <not>_bounc <not>_bus
        <not>_crash <not>_curl <not>_down <not>_drop <not>_ear <not>_else <not>_fish <not>_fling <not>_forc
        <not>_haul <not>_jump <not>_just <not>_kid <not>_let <not>_mind <not>_mov <not>_need <not>_offenc
        <not>_plank <not>_plonk <not>_right <not>_snatch <not>_spill <not>_sprint <not>_stamp <not>_start
        <not>_than <not>_the <not>_want <num>_behind <num>_bone <num>_degre <num>_dumbbell <num>_elephant
        <num>_ever <num>_feel <num>_finger <num>_go <num>_hand <num>_i <num>_inch <num>_lan <num>_line <num>_long
        <num>_mississippi <num>_month <num>_move <num>_oclock <num>_pat <num>_piec <num>_side <num>_sit
        <num>_squat <num>_strength <num>_strid <num>_strok <num>_tenth <num>_that <num>_turn <num>_up <num>_week
        <pace>_a <pace>_as <pace>_bar <pace>_hand <pace>_if <pace>_in <pace>_negativ <pace>_now <pace>_on
        <pace>_out <pace>_pair <pace>_step <pace>_the <pace>_toe <pace>_twic <pace>_with <part>_and <part>_apart
        <part>_as <part>_away <part>_bent <part>_blad <part>_by <part>_complain <part>_do <part>_each <part>_ever
        <part>_first <part>_here <part>_hip <part>_hover <part>_last <part>_lead <part>_level <part>_long
        <part>_loos <part>_over <part>_point <part>_proud <part>_push <part>_read <part>_rest <part>_right
        <part>_sit <part>_spread <part>_straight <part>_that <part>_thi <part>_through <part>_tight <part>_till
        <part>_tuck <part>_under <part>_weight <part>_when <part>_width <part>_your <place>_against <place>_and
        <place>_at <place>_away <place>_back <place>_both <place>_case <place>_each <place>_ever <place>_fire
        <place>_first <place>_flat <place>_front <place>_hand <place>_if <place>_it <place>_kne <place>_line
        <place>_our <place>_quiet <place>_strid <place>_that <place>_them <place>_thes <place>_till <place>_tipto
        <place>_together <place>_toward <place>_under <place>_wednesda <place>_when <settle>_about <settle>_again
        <settle>_back <settle>_backward <settle>_down <settle>_from <settle>_heav <settle>_off <settle>_out
        <settle>_over <settle>_right <settle>_shorter <settle>_some <settle>_someth <settle>_the <settle>_them
        <settle>_they <settle>_thos <settle>_wher <settle>_with <swap>_0 <swap>_alway <swap>_at <swap>_bell
        <swap>_between <swap>_bounc <swap>_bus <swap>_drop <swap>_each <swap>_fling <swap>_go <swap>_half
        <swap>_here <swap>_hold <swap>_if <swap>_it <swap>_kick <swap>_leg <swap>_more <swap>_not <swap>_off
        <swap>_offenc <swap>_on <swap>_one <swap>_or <swap>_pair <swap>_plonk <swap>_someth <swap>_the
        <swap>_under <swap>_will <swap>_your <take>_a <take>_again <take>_from <take>_off <take>_right
        <take>_when <wrong>_about <wrong>_off a_<attend> a_<do> a_<far> a_<harm> a_<ill> a_<kit> a_<more>
        a_<move> a_<not> a_<pace> a_<swap> a_baby a_ball a_banana a_beat a_bounc a_bow a_box a_bridg a_bus a_car
        a_chair a_coupl a_drawer a_fair a_foot a_hair a_hand a_hot a_kickstand a_light a_liv a_matchbox a_metr
        a_mug a_nerv a_passenger a_paus a_pendulum a_pile a_plank a_pres a_pull a_rest a_right a_roll a_scar
        a_shelf a_shov a_slop a_small a_spot a_sprawl a_stop a_stretch a_tabl a_ten a_tent a_third a_tightrop
        a_toddler a_tug a_two a_wall a_whisker a_window about_a about_eight abov_the acros_the acros_to
        after_<place> after_another against_the ahead_of all_<num> all_four all_hold all_i all_im all_just
        all_over all_the all_thre am_<swap> am_us an_<far> an_<less> an_<part> an_ankl an_arm an_inch and_<do>
        and_<harm> and_<pace> and_<settle> and_<swap> and_call and_five and_just and_leg and_march and_no
        and_shout and_stand and_tell and_two ankl_<chat> ankl_<settle> ankl_go anybod_with anyon_<more>
        anyon_<place> are_<kit> are_<not> are_<wrong> are_a are_curl are_not are_rop are_they are_up are_we
        arm_<more> arm_are as_<attend> as_<chat> as_if as_near as_though as_well at_<more> at_about at_maureen
        at_me at_six at_your away_again away_from back_<far> back_<part> back_a back_of back_off back_till
        backrest_<not> backrest_isnt ball_of balloon_<place> band_for bar_<place> bar_on bar_peopl bare_<num>
        bare_one be_<pace> be_cute be_that be_your beat_<place> becaus_<attend> becaus_<not> becaus_if becaus_ive
        becaus_nobod been_sat befor_<chat> befor_you begin_<place> behind_<chat> believ_<chat> believ_me
        bell_<do> bell_in below_the bend_your between_<num> between_the between_your big_toe bin_it bit_of
        body_swing both_kne both_sit both_way bottom_<chat> bottom_<part> bottom_of brak_<place> brak_on
        breath_<chat> breath_for breath_out brisk_<do> brisk_<move> brisk_walk brush_your build_for bus_com
        bus_now by_your calf_the call_that calv_and can_<do> can_<less> can_<move> can_<settle> can_alway can_go
        can_hold car_a care_how catch_<chat> catch_you chang_your chest_<chat> chest_<place> chest_proud
        chin_<place> clean_sock clock_<not> clock_say com_off come_down come_off come_out comfortab_<less>
        comfortab_<pace> comfortab_hard could_<settle> count_0 count_<num> count_<place> count_who curl_<place>
        cut_it da_dum day_with dead_<attend> dead_<not> dead_<place> dead_still dead_stop degre_at
        different_drill dinner_<kit> dinner_plat do_0 do_<do> do_<move> do_<not> do_<part> do_all do_fifteen
        do_leg do_mean do_not do_row do_your doesnt_<do> doesnt_<settle> dont_<do> dont_<move> dont_<swap>
        dont_<wrong> dont_hold dont_just dont_plank dont_want doubl_<pace> doubl_time down_<attend> down_<far>
        down_<less> down_<pace> down_into down_quiet down_till down_to drop_off each_<do> each_<move> each_minut
        each_other each_time ease_it ease_off edge_of eight_out eight_percent eight_second either_side em_<do>
        em_<move> em_<place> engin_<place> engin_in even_on ever_<do> ever_<move> ever_<num> ever_one ever_time
        everybod_else expect_a eye_<place> fac_the face_<place> face_the feel_it feet_off feet_together
        fill_<place> find_it fine_<attend> fingertip_<place> fingertip_on finish_stood first_0 first_<num>
        first_and first_third fiv_<attend> fiv_if five_<far> five_<swap> five_degre five_kilo five_pat
        flat_<swap> flatten_it float_<place> floor_away fold_<place> for_<harm> for_about for_balanc for_fifteen
        for_it for_lunch for_more for_my for_thes for_thi for_tonight forearm_<place> forehead_<place>
        four_<part> four_count four_leg four_to freez_ther from_the from_you from_your front_<part> front_of
        full_<pace> full_second further_<place> get_down get_to get_ugly giv_<chat> giv_you go_<more> go_<pace>
        go_<place> go_<swap> go_after go_again go_backward go_out go_purpl goe_<attend> goe_<swap> goe_home
        goe_out goe_the gone_<less> gone_too gone_very good_<num> good_<part> good_side got_<chat> got_<more>
        got_you grab_it gravit_<swap> grip_go half_<chat> half_<do> half_on half_one half_rep half_sit half_squat
        half_strength half_that half_the halfwa_<do> hand_<do> hand_down handl_<place> hang_<attend> hang_off
        has_to have_<chat> have_they have_you head_<chat> head_<settle> head_last head_through hear_it
        hear_somebod hear_stomp heav_pair heavier_pair heel_<attend> heel_<place> heel_down hip_<attend>
        hip_<chat> hip_<far> hip_<place> hip_and hip_that hold_it hold_on how_<chat> how_<part> how_peopl how_you
        however_<chat> however_you i_<not> i_ask i_do i_dont i_hope i_know i_need i_see i_would id_say if_0
        if_<num> if_its if_ive if_they if_youd ill_say im_after im_pay im_seriou in_<attend> in_<less> in_<pace>
        in_<place> in_<settle> in_and in_case in_down in_each in_for in_front in_till in_to inch_is inner_<part>
        inner_thigh instead_of into_a into_it iron_board is_<do> is_<move> is_<not> is_a is_all is_at is_for
        is_how is_no is_normal is_nowher is_okay is_one is_over is_perfect is_strong is_to is_two it_<do>
        it_<far> it_<move> it_<settle> it_<wrong> it_a it_again it_at it_be it_even it_flat it_home it_if it_into
        it_last it_learn it_lift it_off it_on it_round it_stay it_stretch it_ther it_touch it_will it_wont it_yes
        itll_<do> itll_<settle> itll_have its_<do> its_<harm> its_<less> its_<move> its_com its_four its_hav
        its_higher its_nice its_one its_over its_pull its_slip its_stair its_still its_thos its_tiny its_your
        ive_<chat> ive_a ive_seen jog_a just_<far> just_<place> just_as just_the keen_one keep_<air>
        keep_<settle> keep_<take> keep_breath keep_hold keep_talk keep_them keep_walk keep_your kitchen_<harm>
        kitchen_worktop kne_<attend> kne_<do> kne_<far> kne_<more> kne_<move> kne_bent kne_over kne_together
        kne_up knee_<attend> knee_<place> knit_them knock_<place> lac_<place> lac_down lan_each land_<place>
        last_0 last_eight last_thirt leap_<part> leap_<place> leav_thi left_in left_leg leg_<attend> leg_at
        leg_ever leg_flat leg_goe leg_have leg_lead leg_long leg_on leg_push leg_still let_<chat> let_<pace>
        let_<settle> let_em let_gravit let_it let_them let_yourself level_<num> lift_for lift_it light_<part>
        light_<place> light_on light_pair like_<chat> like_<harm> like_you like_your listen_for littl_<do>
        littl_<num> littl_<pace> littl_one littl_sip lock_it long_<place> long_and long_on look_<place>
        look_along look_wher loos_<part> lose_the low_<place> low_in lower_<chat> lower_it make_sure may_<do>
        mean_that middl_of mug_sit near_<num> need_a nerv_talk never_<settle> never_<take> newspaper_<place>
        next_<num> next_to nice_and nine_tenth nine_tim no_<do> no_<far> no_<kit> no_<more> no_<part> no_<swap>
        no_<wrong> no_bounc no_bus no_drop no_fling no_hand no_kick no_more no_offenc no_plonk nobod_<place>
        nobod_in nobody_ask nobody_chas nobody_measur nobody_watch not_<do> not_<less> not_<more> not_<place>
        not_<settle> not_a not_after not_an not_answer not_back not_be not_down not_hav not_to not_want not_your
        noth_at noth_else of_<far> of_<swap> of_each of_soup of_the of_what of_wood of_your off_<attend>
        off_again off_it on_ever on_fire on_for on_tipto on_two on_wednesda once_your one_<kit> one_<move> one_a
        one_at one_bone one_ever one_folk one_hand one_i one_if one_in one_line one_long one_piec one_sit one_to
        one_two only_go only_got onto_our onto_the open_<place> open_all opposit_<part> opposit_arm or_0 or_<do>
        or_<move> or_<settle> or_<swap> or_<take> or_as or_so or_youll or_your or_youv other_end other_hand
        other_knee other_pair ought_to our_sid out_<attend> out_as out_for out_on out_to out_when over_a over_it
        over_onto over_the over_your pair_for palm_<place> past_<num> paus_twic pay_for pick_someth pile_<place>
        pile_by plank_of plat_<place> point_<place> point_at pour_the pull_<place> pull_in pull_is purpl_fac
        push_away push_it push_the put_your quarter_<do> quarter_<move> quarter_squat quick_<place> quiet_<part>
        quiet_<take> quiet_feet rather_than reach_<place> read_for recover_minut replac_them rest_<place> rest_on
        rest_with rib_<place> rib_down right_<place> right_ther ring_<place> ring_somebod roll_in roll_through
        room_for round_<part> round_four round_to round_your said_<do> said_<move> said_drag said_float
        same_<more> same_<part> same_<swap> same_arm same_length same_postcod same_up same_way sat_sinc say_hello
        scar_off second_<kit> second_in second_it second_negativ second_out second_toe see_<attend> see_<num>
        see_<part> see_<swap> see_a see_if see_star serratu_is set_is seven_out sham_<place> sham_in sho_<place>
        sho_on short_<kit> shorten_it should_<attend> should_be shoulder_<place> shoulder_blad shoulder_down
        shouldnt_be shout_for show_me show_the shut_it shut_the side_and simp_<settle> simp_<take> singl_hand
        sit_<attend> sit_<place> sit_<swap> sit_bon sit_in sit_ther slack_<place> slow_<attend> slower_than
        small_<do> small_<kit> sneak_<place> so_<attend> sock_<place> sock_on soft_kne somebod_stamp somebod_to
        somebody_<place> somebody_<wrong> somebody_got someth_to somewher_<place> somewher_between sor_at
        spe_<chat> squat_<place> squat_for squat_in squat_it squeez_everyth squeez_it stack_a stag_<num>
        stag_thre stand_<part> stand_at stand_leg star_at start_again start_from stay_flat stay_low stay_on
        step_<part> step_back still_<pace> still_row still_weigh stop_at straight_<attend> straight_<more>
        straight_<part> straight_arm straight_down straight_up stretch_<place> stretch_down strid_<place> strok_a
        swap_each swap_the switch_<place> switch_on tail_<place> take_<not> take_<swap> take_no take_some
        take_thre tea_<place> tea_on ten_<swap> ten_kilo th_<chat> th_i than_<place> than_my than_that
        that_<wrong> that_all that_an that_be that_been that_catch that_did that_done that_fine that_foot
        that_isnt that_leg that_set that_station that_stay that_way that_what that_who the_<attend> the_<chat>
        the_<ill> the_<kit> the_<less> the_<more> the_<move> the_<pace> the_<wrong> the_air the_answer the_armpit
        the_backrest the_bel the_bend the_boss the_breastbon the_broomstick the_cheek the_chest the_cone
        the_corner the_damper the_dial the_edge the_end the_engin the_farmer the_feel the_good the_hair
        the_hamstring the_heel the_height the_hip the_hole the_in the_insid the_joint the_kne the_kneecap
        the_last the_length the_lid the_lighter the_lot the_mat the_meat the_moment the_obliqu the_opposit
        the_other the_pace the_part the_passenger the_person the_plac the_pocket the_pol the_recover the_rest
        the_rhythm the_rib the_room the_same the_shin the_shoulder the_sid the_side the_size the_skull the_slid
        the_sneak the_sore the_spe the_split the_squeez the_tank the_th the_top the_tree the_tricep the_turn
        the_two the_underneath the_upright the_wall the_way the_weight the_whol the_wobbl the_work their_<do>
        them_<far> them_<num> them_<settle> them_ther then_<chat> ther_<more> ther_are ther_more ther_they
        ther_whil thes_<far> thes_as thes_cold they_<not> they_dont they_stay theyr_still theyv_<chat> theyv_gone
        thi_<do> thi_<move> thi_<num> thi_snatch thicker_<kit> third_0 thirt_<far> thirt_degre thos_<chat>
        thos_were thos_who thre_<kit> thre_<pace> thre_count thre_for thre_step thre_to thumb_<do> till_<chat>
        tim_out time_if time_with tip_<place> tip_over to_<air> to_<chat> to_<far> to_<less> to_<not> to_<take>
        to_a to_be to_catch to_cheat to_come to_gossip to_hear to_help to_hold to_impres to_know to_let to_read
        to_see to_side to_sit to_stop to_straight to_twist to_you to_your toe_<more> toe_<place> toe_on toe_up
        too_<far> too_<pace> too_far too_fast top_<part> top_leg tray_of trembl_is trust_the try_it tuck_<place>
        tuck_in tuck_your turn_a turn_it turn_to twent_two twent_week twic_<attend> twic_as two_<do> two_<far>
        two_<part> two_dumbbell two_step two_strid under_<chat> under_ther under_you under_your up_<attend>
        up_<far> up_<more> up_<move> up_at up_over up_top up_with us_all us_come use_that use_the wait_at
        wait_ther walk_in walk_to wall_<more> want_<more> want_hero want_is want_more want_to was_bare watch_your
        way_<chat> way_<more> way_<swap> way_up way_you we_<far> we_<less> we_dont we_lower we_tap wee_<do>
        week_<place> week_on weigh_<more> weigh_more weight_<place> weight_in weight_on weight_vest were_after
        were_go were_train what_its whatever_that whatever_the when_it wher_its whil_the whil_you who_are who_is
        who_visit who_were who_you whol_<part> whol_foot whol_way will_<attend> will_<less> will_<settle>
        will_<take> will_want with_four with_it with_manner with_thes with_thi with_your within_<num> without_the
        wont_<chat> wont_<settle> wont_tell work_the would_<chat> would_<settle> wrist_<attend> wrist_<move>
        wrist_<place> yall_fun you_<attend> you_<kit> you_<not> you_a you_balanc you_by you_came you_could
        you_done you_margaret you_move you_not you_pull you_rac you_rack you_smil you_stand you_stop
        youd_<attend> youll_<chat> youll_<settle> youll_feel youll_forget youll_go your_<attend> your_<far>
        your_<not> your_<place> your_<wrong> your_after your_all your_armpit your_backsid your_belt your_bicep
        your_bottom your_chest your_collarbon your_dinner your_elbow your_fist your_foot your_forearm your_go
        your_good your_gym your_left your_leg your_look your_neck your_neighbour your_newer your_nose your_on
        your_one your_pocket your_rib your_right your_shin your_shirt your_sid your_side your_sign your_slider
        your_tail your_teeth your_that your_the your_tipto your_turn your_up yourself_<do> yourself_<place>
        youv_got
      `,
    ],
    [
      -0.4,
      `
        <chat>_could <chat>_see <chat>_your <do>_in <do>_it <do>_the <do>_ther <do>_to <kit>_if <move>_the
        <not>_a <not>_hold <num>_count <num>_out <part>_at <part>_back <part>_flat <part>_go <part>_goe <part>_on
        <part>_stay <place>_for <place>_like <take>_it a_squat a_time about_<num> all_<part> arm_<place>
        behind_you each_<pace> ever_rep for_one go_<less> go_down hold_your i_mean i_want if_that if_the im_see
        is_<less> its_<far> its_<part> its_ther let_go let_the look_for of_ten off_the on_a on_it one_<attend>
        one_<part> one_<place> one_side out_<place> pres_<place> same_side show_off side_<place> side_of side_on
        side_to stay_<place> step_<place> tell_me that_<less> that_<part> that_count that_wher the_<air> the_ceil
        the_floor the_front the_ground the_leg the_next the_one the_out ther_for to_<do> to_<move> to_<settle>
        two_<kit> way_<place> way_down whol_<pace> whol_time you_<do> you_<move> you_have your_<part> your_a
      `,
    ],
    [-0.6, '<chat>_after that_how the_<part> the_arm'],
  ],
  phrase: [
    [0.8, 'transitions'],
    [0.6, 'chat empty_clauses praise purpose'],
    [0.4, 'dose_only'],
    [0.2, 'caution-likely range-hint'],
    [
      -0.2,
      `
        breathing-hint breathing-likely caution-hint easier-hint easier-sure equipment-sure execution-likely
        focus-likely range-likely range-sure setup-hint setup-sure tempo-likely
      `,
    ],
    [
      -0.4,
      `
        caution-sure easier-likely execution-sure fault-likely fault-sure focus-sure setup-likely tempo-hint
      `,
    ],
    [-0.6, 'breathing-sure harder-sure tempo-sure'],
  ],
  start: [
    [1, '<part>_<do>'],
    [0.6, 'back_to'],
    [
      0.4,
      `
        <kit>_<do> <more>_<part> <move>_<do> <not>_<attend> <not>_<num> <not>_<pace> <num>_<more> <place>_<chat>
        by_the by_the_way chang_leg come_on do_not_wor hand_on hand_on_your have_a keep_go keep_it keep_it_com
        keep_it_go look_at look_at_that make_it rack_it shak_the sit_to sit_to_stand stay_as stay_till that_the
        that_your the_hip thi_is walk_it you_can
      `,
    ],
    [
      0.2,
      `
        0_a <attend>_<do> <chat>_<chat> <chat>_<num> <chat>_<swap> <chat>_<take> <do>_<do> <do>_<part>
        <do>_<settle> <do>_<take> <far>_<pace> <far>_<part> <kit>_<move> <more>_<more> <not>_<harm> <not>_<take>
        <num>_<chat> <num>_<less> <num>_<num> <pace>_<chat> <pace>_<do> <pace>_<num> <pace>_<pace> <part>_<air>
        <part>_<kit> <settle>_<do> <settle>_<num> <settle>_<place> <swap>_<attend> <swap>_<chat> <swap>_<less>
        <swap>_<not> <swap>_<num> <swap>_<settle> <swap>_<take> <take>_<part> a_better a_breath a_coupl a_few
        a_minut a_pair a_pair_of a_plank a_skip a_twist about_mid about_mid_shin after_the all_one_foot all_right
        and_again ankl_pump anybod_who_doesnt arm_and as_long as_long_as as_many as_many_as away_you away_you_go
        back_at_the back_down back_down_on back_in_the back_on back_on_the back_pocket back_to_the back_up
        back_up_on back_you balanc_goe balanc_goe_off bar_down be_able be_able_to becaus_i big_lad big_thigh
        block_back block_back_in both_arm both_arm_together both_feet both_feet_down both_leg_together
        both_of_you both_sid bottom_cone bottom_cone_to bottom_toward bottom_toward_your br_both br_both_leg
        breath_a breath_a_bit brilliant_effort calf_stretch can_everyon car_on car_seat car_seat_are cash_in
        cash_in_the catch_your catch_your_breath chang_arm cheek_on chest_opener chest_stretch chin_height
        chin_up come_back_to come_down_onto come_forward come_up cros_countr cushion_down dead_bug dead_hang
        dead_lift dig_deep dig_in do_it_twic do_the do_the_other dont_answer dont_ask dont_be dont_be_look
        dont_bend dont_bend_over dont_clap dont_clap_it dont_fall_over dont_go_over dont_jog_it dont_kick_it
        dont_look_at dont_make dont_make_eye dont_roll_up dont_rush dont_rush_to dont_shut dont_spend dont_throw
        dont_throw_it down_on_the down_to_the drill_0 drop_it easy_jog elbow_like elbow_off elbow_off_the
        elbow_wide elbow_wide_as empt_bar ever_minut ever_minut_on ever_other_day face_pull fall_out farmer_walk
        feel_it_from feet_down find_a find_a_bit find_the find_the_middl find_yourself find_yourself_a
        finish_your first_one for_a for_a_bet forearm_plank forehead_down_and four_second_down from_the_bottom
        front_of_your get_the get_the_weight get_your give_them give_them_a give_your give_your_arm go_down_the
        go_on grab_your half_a half_a_dozen half_a_minut half_way_ther hand_and hand_and_kne hand_off hand_under
        hand_up hand_up_who hang_on hang_out has_anybod has_anyon have_a_littl have_a_wander head_down heav_band
        heel_flick heel_prop heel_slid heel_to heel_to_toe heel_toe heel_toe_walk her_the high_kne hip_hing
        hip_thrust hold_at hold_at_the hold_each hold_each_one hold_the_bottom hollow_hold how_many hug_the
        hug_the_kne hug_your hug_your_kne i_look i_trust i_trust_you i_will if_anyth_feel if_it_click if_its_easy
        if_that_dull if_the_ceiling if_you if_you_park if_you_want if_your if_your_mind im_go im_go_to
        im_not_count in_a in_you in_you_come is_it is_that isnt_it it_get it_goe_up it_just it_was itll_be
        its_a_ladder its_a_littl its_a_long its_a_run its_call its_how_you its_like_a its_not_the its_on its_the
        its_the_one its_the_same its_thi keep_go_until keep_it_straight keep_it_tidy keep_on keep_push keep_that
        keep_that_go keep_the_kne keep_them_pret keep_up kick_the_bag kne_are kne_down kne_in kne_out
        kne_to_chest knee_bent last_one left_foot left_foot_forward leg_down leg_up leg_up_the let_it_all
        let_it_down let_it_rest let_say let_the_feet let_the_foot let_us let_us_go let_wake let_wake_the lie_ther
        like_a_debutant like_a_penguin like_i like_your_in littl_ankl littl_loop long_one look_at_you loop_on
        loop_on_your low_lung lower_for lower_for_four make_it_count mind_the_handbag moderat_effort never_touch
        ninet_second no_bar no_break no_burpe no_complaint no_creep no_gap no_more_than no_number no_priz no_rest
        nobod_ever nobod_is nobod_is_watch nobody_mark_it not_a_cup not_a_trap not_an_exam not_bad
        not_like_somebody not_long not_long_now not_my not_the_other not_toda not_you off_to off_to_the off_you
        off_you_go on_the_gras on_to on_your_back once_more one_arm one_arm_at one_foot_forward one_leg_stand
        one_more one_more_time onto_your onto_your_back or_near_enough or_the other_arm other_leg other_way
        out_to_the over_onto_your over_the over_to over_to_the park_it park_them paus_for_two paus_the peel_the
        peel_the_hip pelvic_tilt pick_up_your pull_a pull_apart push_back_onto push_down push_through put_it
        put_it_down quick_sip r_d r_d_ls red_band remember_the remember_wher remember_wher_it rest_the rest_your
        ring_at_chest rise_to rise_to_hand roll_on roll_onto roll_onto_your roll_out roll_over roll_your_head
        row_it same_again same_as same_as_befor same_deal second_lot second_one second_time see_you shak_it_out
        shak_out shak_them_out shak_your shoulder_off shoulder_off_your side_leg side_plank side_step sign_the
        sign_the_register singl_leg sip_of sit_back sit_on_your skin_the slid_down_onto slid_up slow_it
        slow_it_down slow_lowering soft_jaw some_peopl some_peopl_say somebody_ask somebody_phon somebody_stomach
        split_squat squeez_and squeez_and_releas squeez_up squeez_up_the stand_on_one star_jump start_again_at
        start_the start_with static_quad stay_as_long stay_at_the stay_in stay_in_it stay_sit stay_ther
        stay_ther_till stay_till_it stay_till_your stay_up_for step_down step_out step_out_of step_ups
        stick_acros stick_acros_your still_on stop_for_one straight_down_on straight_in straight_into
        straight_into_the straight_on straight_onto straight_over straight_over_on straight_to straight_to_the
        straighten_your straighten_your_leg strong_ankl strong_leg strong_leg_make swap_arm swap_leg switch_it
        switch_it_up switch_leg take_a_handl take_the take_the_towel tempo_0 ten_second terminal_knee
        terminal_knee_extension thank_you_to that_a that_a_proper that_a_pull that_a_round that_about that_all_it
        that_both that_is_the that_look that_more that_the_muscl that_the_way that_the_whol that_was thatll_be
        thatll_do the_ankl the_ankl_is the_band the_band_squeak the_band_try the_bench the_chin the_floor_bit
        the_heat the_hip_flexor the_last the_last_one the_lift the_long the_more_muscl the_other_arm
        the_other_hand the_other_leg the_other_side the_other_way the_reason the_same_with the_second the_third
        the_third_one ther_a ther_a_gap ther_is_a ther_no ther_we ther_we_are ther_your thes_are they_go they_say
        theyr_all theyr_not_go theyv_not thi_help thi_help_you thi_is_the thi_is_your thi_isnt_the thi_one
        think_of_the thirt_second thos_are thread_the thread_the_needl through_the_middl till_it till_the
        till_your_shoulder to_the to_the_wall toe_just_to toe_point_like toe_tap tuck_the tuck_the_back turn_over
        turn_your_camera two_minut two_second_up under_the up_again up_and up_and_down up_down up_down_up
        up_like_normal up_on_top wait_for wait_for_it walk_back walk_it_back walk_it_in walk_it_off we_do we_go
        weight_up weight_up_at were_not_go whatever_left when_i when_the_last when_youv_done which_is which_is_a
        whil_your who_got whos_is whos_is_the wide_pli wipe_your wipe_your_hand with_a with_a_dumbbell
        with_your_elbow without_a wrist_rock you_cant you_dont_come you_dont_need you_get you_hang_off you_just
        you_rock_until you_turn youll_be youll_do youll_have youll_want youll_want_that your_consultant
        your_consultant_letter your_do your_feet your_lean your_lean_back your_leg your_leg_are your_not_a
        your_not_at your_other your_partner your_second your_thigh your_third youv_earn youv_gone youv_not
        youv_not_got
      `,
    ],
    [
      -0.2,
      `
        0_and 0_lan 0_lan_each 0_oclock 0_second_down 0_step_out 0_to_0 <attend>_<air> <attend>_<attend>
        <attend>_<far> <attend>_<more> <attend>_<num> <attend>_<part> <attend>_<settle> <attend>_<take>
        <chat>_<do> <chat>_<not> <chat>_<pace> <do>_<far> <do>_<less> <do>_<not> <do>_<num> <do>_<pace>
        <do>_<place> <far>_<attend> <far>_<far> <far>_<place> <kit>_<far> <kit>_<less> <kit>_<place> <less>_<air>
        <less>_<chat> <less>_<do> <less>_<less> <less>_<more> <less>_<move> <less>_<pace> <less>_<settle>
        <less>_<take> <more>_<air> <more>_<attend> <more>_<move> <more>_<place> <move>_<air> <move>_<attend>
        <move>_<less> <move>_<pace> <not>_<kit> <not>_<part> <not>_<swap> <num>_<attend> <num>_<far> <num>_<move>
        <num>_<pace> <num>_<part> <num>_<place> <num>_<swap> <pace>_<far> <pace>_<kit> <pace>_<more>
        <pace>_<part> <pace>_<place> <part>_<chat> <part>_<far> <part>_<harm> <part>_<ill> <part>_<less>
        <part>_<not> <part>_<pace> <part>_<take> <place>_<kit> <place>_<more> <place>_<pace> <place>_<place>
        <place>_<take> <settle>_<pace> <settle>_<swap> <swap>_<far> <swap>_<more> <swap>_<wrong> <take>_<attend>
        <take>_<chat> <take>_<far> <take>_<more> <take>_<settle> a_bit a_bit_of a_hand a_littl a_one a_one_second
        a_pres a_pull a_warm about_half about_half_of all_four all_the an_inch anyon_who are_they as_if as_though
        as_you back_of back_off back_row becaus_if becaus_ive bin_it both_the_same build_up call_it call_it_a
        calv_and chang_your child_pose_is com_down come_off come_out count_0 cut_it da_dum dead_still dead_stop
        do_0 do_leg dont_hold dont_just dont_let doubl_time down_for_four down_for_thre down_in down_in_the
        down_quiet down_up ease_it ever_rep ever_singl ever_singl_one ever_time everybod_else everybod_else_the
        expect_a fac_the five_pat flat_back flatten_it for_my forget_the_weight four_second_in freez_ther give_it
        give_me_a go_on_your go_to got_more got_more_in grab_it grip_go half_of half_of_you half_rep half_sit
        half_strength half_that hang_in_the hang_ther has_it have_a_look have_they head_last hold_for_one
        hold_it_at hold_your i_am i_am_us i_do_mean i_dont i_dont_need i_dont_want i_know i_know_your i_mean
        i_mean_it i_mean_that i_need i_need_you i_said_drag i_said_float i_see i_want_to i_would id_say if_its
        if_that if_the if_you_get if_you_have ill_not_say ill_say ill_say_it im_just_the im_not_after im_not_be
        im_see im_seriou in_0 in_down in_for in_for_four in_on in_to inner_thigh is_the it_doesnt it_help it_stay
        it_touch its_a its_a_drawer its_com its_four its_got_a its_hav its_hav_a its_higher its_nice its_not_a
        its_not_an its_only_a its_stair its_the_hip its_the_third its_the_underneath its_ther its_tiny ive_a
        ive_a_scar keep_a keep_breath keep_hold keep_it_even keep_talk keep_them keep_them_ther keep_walk
        keep_your kne_bent kne_up knit_them lac_down last_0 last_0_metr left_arm left_leg leg_push let_em
        let_gravit let_gravit_do let_the let_the_band let_them let_us_come let_yourself like_a like_somebody
        like_your like_youv listen_for littl_sip lock_it look_at_your look_wher look_wher_your lose_the lower_it
        make_sure make_the near_the nice_and nice_and_even nine_tim nine_tim_out no_drop no_fling no_plonk
        no_rush nobody_ask nobody_chas nobody_chas_you nobody_measur nobody_watch not_a off_again off_the_floor
        on_purpos on_the_car on_the_mat on_the_meat on_the_way one_at one_at_a one_bone one_ever one_to one_two
        one_up or_as or_your or_youv other_knee out_for_six over_on_your paus_twic pick_a push_away push_the
        put_your read_for rest_with rest_with_me rib_down roll_over_onto roll_through round_four round_to
        round_to_the round_two_length same_side say_hello second_toe see_star serratu_is serratu_is_the set_the
        shak_it_yes shak_them_down shorten_it shoulder_down show_me show_off shut_it side_on side_on_to side_to
        side_to_side sideway_on sit_on_the sit_ther sock_on squeez_everyth squeez_it stag_thre stand_on_the
        stay_low stop_at swap_leg_when swap_the take_it_off take_thre tell_me ten_kilo that_a_nerv that_a_squat
        that_a_stop that_all that_all_i that_fine that_how_you that_is_how that_set that_the_feel that_the_next
        that_the_one that_the_part that_the_sneak that_ther_to that_was_a that_what that_what_the that_wher
        that_wher_it that_who that_who_were that_work the_arm the_back the_bell the_bottom the_heel the_kne
        the_leg the_minut the_moment the_next the_one the_other_one the_other_pair the_second_it the_set the_size
        the_size_of the_slid the_truck the_two the_wall the_way the_whol_way ther_a_littl ther_are ther_is_nowher
        ther_more ther_no_bus ther_they ther_they_go they_dont they_stay theyr_still thi_is_at thi_is_one
        think_of_a thirt_degre thos_who thre_count thre_for thre_to toe_up two_and_four two_down two_dumbbell
        two_step two_strid two_when two_when_your up_the up_with up_with_a use_that use_the wait_at walk_about
        was_that_thre watch_the we_are were_go were_just_turn what_i whatever_that whatever_the which_is_the
        whil_the whol_foot you_are_go you_can_alway you_can_do you_can_say you_could you_dont you_go you_like
        you_need you_never you_round you_should you_want youll_forget your_after your_look your_look_at your_not
        your_on your_one your_the
      `,
    ],
    [
      -0.4,
      `
        <air>_<place> <chat>_<less> <do>_<attend> <do>_<more> <far>_<do> <more>_<num> <not>_<do> <not>_<far>
        <not>_<wrong> <num>_<kit> <part>_<attend> <part>_<move> <part>_<part> <part>_<place> <place>_<attend>
        <place>_<num> <settle>_<attend> <settle>_<far> <settle>_<less> down_for five_second i_want out_for
        that_how the_other the_whol the_whol_time thre_second your_a
      `,
    ],
    [-0.6, '<place>_<part> look_at_the'],
  ],
  word: [
    [0.8, 'his ladder minut number row shak twic we'],
    [
      0.6,
      `
        actual again ask best better bridg call clean eight fifteen fort got he her hes hour lot lung many me my
        now only rais remember rest she six somebody thirt till twelv twent ups us was what
      `,
    ],
    [
      0.4,
      `
        0 afterward bad be bear becaus been break breather bug car cat chang chat clas climber cushion deadlift
        desk did dig dip do dog done dozen drill each eleven everyon extension five four gorgeou gym had has have
        hear hed here him hollow hug i ill is its kettlebell lad last later leg less look lost love make min
        muscl name never ninet oh okay once other own phon physio plank posh pres press proper quad rack rain
        reason rose say second set seven sheet sixteen some squat stair stor stronger support switch teacher
        tempo ten th that then ther thes thi think third thos tidy trip used very walk warm went weve whistl who
        why wor word work wrong youll
      `,
    ],
    [
      0.2,
      `
        about advert after age agn ago ahm all almost alread alright alternat although altogether amaz and anybod
        anyon anywa arc archer are around at attach awak aye back baker balanc band bandstand bank basket bean
        beautiful beep beetl belong between bev bicycl bik bike bin bird biscuit boat bog boiler bottl bought
        bound bowl bravo brilliant britch brok brought burn burpe but buzz by cake calf calv came cap card
        cardigan carmel carri carry cash ceilidh ceiling cereal chair cheer chicken child children chin chop
        christma circuit clam click climb clock club coach coal coat cobra collaps colour com comment competition
        consultant contact cool couldnt council count countr court cow crab crawl cream cri crunch cry curl
        curtain d daft darling daughter davo day dead deal debutant decad denis dentist depend derek des
        different ding doe door doorstop doorwa doreen dot drink earlier eas eaten eh els elwyn email enjo enjoy
        enough event everybod everybody everywher except excus fabulou face fall fallen fanc februar fell fella
        felt fenc few fewer fift fifth final find finish fitnes fiv flamingo flexor flick flip floorboard folder
        for forget forgotten forty found fourteen fourth fram frank frida fridg friend from gap garag gaz get
        give glut goblet gold good grandchildren grandson grapevin great groan groceri group gwen habit hall halo
        ham hamstr handbag hank hap heart heat help henc heroic hid hike hing hm hmm holida honest hors hundr
        husband huw hydrant ice idea ignor im imran in insuranc internet invent isnt isometric ive jack janet
        januar jar jim joan keep ken kettl kevin kick kilometr kne know larg laugh leed letter lick lie life
        lightn linda list listen liv long longest loo lor lorrain ls machin made mailbox mak man march margaret
        marjori mark marvellou maureen mil mile milk mine mini moderat monday mone moos morn most mother mr much
        mum music nah natural near needl negativ nervou new next night nine nineteen nobod nobody nois noth
        noticeboard obvious och of off offic oil older on onto ooh oop opener or order our over pancak parish
        park partner paulin paus pelvic penguin peopl per phil pie pigeon pink plan play pleasant pli pointer
        pool pose postur pound pret priz probab prop pushup put question queu r rac race radiator raffl read real
        reception record register releas rep repeat retir ris road romanian rosar rubber run rung s said same
        sandra sanja save saw scap school screen seat september seri sevent shaking shed sheila shop sick sid
        side sign sinc sit sixt sixth size skin slam sled slept slipper smell snak so sofa soften somebod sor
        sound soup speak spent spin split sprint squad squar squeak static station stepper stomach stork
        straightener street strength stretch strong studio stuff subscrib sulk summer superman superset surpris
        swap swing swor talk tape tatti teach tell term terminal thank the they theyr thirteen thousand thre
        thread thrust ticket tidiest tim time timer timetabl tin toda toilet told tom took total train trainer
        trev tri tripl trot trunk tune twenty twister two ty ugly uncl until upstair urn van video vigorou wake
        wall warden wash wasnt watch wed week welcom well were werent whatever when which whod whoever whos wife
        wiggl win wipe with wobbl woman won worst wriggl writ written x ya yeah year yep yet youd yourselv youv
      `,
    ],
    [
      -0.2,
      `
        achill acros against air allow an angl arm away backrest bag ball bang bar beat beg beginner behind bell
        below bent bicep big bigger biggest blad blood blow blu bon boss both bottom bow brisk bruis brush buckl
        build bump bus butt carol ceil centimetr chas cheek chest clamp clear clench clos comfortab complete cord
        crank crash crat crown cut cute da damper deep dial die dinner disc dish div divvent dont doubl down
        downstair draw drawer drift drop drum dum earring easier edge empt engin exhal expect fast fat feet fetch
        fill fine finger fingertip fl flat flatten fling floor flutter fold follow forc forearm freez fresh gear
        gent gentl glacial glu gossip gradual gras green grind grip grumbl hair halfway hard harder heavier
        heaviest heel height hello hero high higher hip holder hole hop hot hover however hum hup ideal impres
        inhal instead inward itll jab jaw jog jug jumper just kickstand kiss knee knock knot kyle lac lan landmin
        lane lat late leap leav length lid ligament lighter line linger lip load lock lose lower manner match
        matchbox may mayb meaner measur meat melt miss mississippi moment motion mouth mov move movement mug nag
        nearer nearest neck nerv newer newspaper nick nod none normal nose notch obliqu offenc one open optional
        osteoporosi ought overhead overstrid pace pad paddl paper passenger pat peel pelvi perfect piec pile
        pillow pin ping plac plat pleas plent plonk plop point pole ponytail position postcod pour pregnanc
        pressur progres proud pud puddl puff pull punch purpl quarter quick quicker ramp rather reach rear red
        replac resist rhythm rise round rucksack rug safet saucer scar see sens sentenc seriou serratu settl
        shallow shift shirt sho shorter shoulder shouldnt shout shov shrug sideway simp skat skip skirt skull
        sleep sleev slip slop smaller smooth snap snatch sneak sniff sock spe spik spill spot sprawl spread
        spring sprinkler squeez stab stack stagger stamp stan stanc stand star statu stead stick stiff stitch
        stomp str straight straighten strap sure sw sway t tail tailbon take tap target tear teeth tension tent
        tenth thereabout thick thicker thigh thinner tip tipto tock together tonight too touch towel treacl
        tricep tripod try tss tuck tum turn twang unclench unhurri upright visit waist wait want way wedg
        wednesda wheel wher whisker whit wider width will wind wing within wob worktop wrap wrist yawn you
        yourself zip
      `,
    ],
    [
      -0.4,
      `
        abov ahead arch armpit baby backsid backward bare belt bend bone bounc brak bum check closer collarbon
        ease elbow end even firm fist float foot forehead forward further glas ground half hand handl headlight
        if insid into joint jump kneecap kneel knuckl land lazy lean let level loos middl opposit option out palm
        pocket sag sharp shin short shorten show sink slack small soft step strok taller thumb tiny toe top
        underneath use version
      `,
    ],
    [-0.6, 'heav inch low rib tall tight tug under'],
    [-0.8, 'should'],
  ],
} as const satisfies CueWeights
