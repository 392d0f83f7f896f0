/** How much each feature of a clause (cue-features.ts) speaks for a cue of the kind equipment; see cue-weights.ts. */
import type { CueWeights } from './cue-weights.ts'

export const EQUIPMENT_WEIGHTS = {
  bias: [[-0.8, 'yes']],
  class: [
    [0.6, 'swap'],
    [0.4, 'kit'],
    [-0.2, 'far harm ill move not num place'],
    [-0.4, 'air chat do pace part wrong'],
  ],
  conditional: [[0.4, 'yes']],
  first: [
    [0.4, 'a fold whatever'],
    [
      0.2,
      `
        <more> <swap> all any anyth at band block broom cabl chalk choos clean con doubl dress dry eye flat folk
        get glov grab hand heel if instead knot lift loop not old paper pleas pram real red stag swap switch
        tenni then thick though tie trainer umbrella unles use wear whichever you
      `,
    ],
    [
      -0.2,
      `
        0 <air> <do> <harm> <move> <take> and arm as bar come dont for hold it keep kne let like long no put roll
        stand step stick thi we your
      `,
    ],
    [-0.4, '<attend> <chat> <far> <kit> <not> <num> <pace> <part> <place> do its'],
    [-0.6, 'that'],
  ],
  given: [
    [
      0.2,
      `
        <do> <kit> all bottl cannit chest dumbbell feel foam got have it loop mat much no one rope take tie too
        up use weight
      `,
    ],
    [-0.2, '<chat> <wrong> a and bell do go kne off youv'],
  ],
  last: [
    [0.4, 'dumbbell ideal thi'],
    [
      0.2,
      `
        arch attitud ball banister bend bike blue broom carpet chalk colour cord corner door edge enough even
        fifteen fine flannel floor foam folk glov grip hand here knot leg like low medium melon need next nice on
        one optional pad pick pleas pound radiator reach rice sens set slider slip sock some sore stiffer stool
        strap strong them then tie tight trainer twent umbrella weight wet which with worktop
      `,
    ],
    [
      -0.2,
      `
        0 again and away back belt bit breath chair down foot go goe head heav hold kne mat off out side sit
        stand step tall ther time towel wall way
      `,
    ],
    [-0.4, 'it'],
  ],
  length: [
    [0.4, 'long'],
    [0.2, '8-12'],
    [-0.2, '5-7'],
    [-0.6, '3-4'],
    [-1.2, '1-2'],
  ],
  pair: [
    [0.6, '<swap>_if for_thi the_<num>'],
    [
      0.4,
      `
        <attend>_pair <attend>_the <attend>_to <kit>_if <more>_it <not>_need <num>_kilo <swap>_of <swap>_on
        <swap>_or <swap>_the a_<kit> a_<swap> a_roll are_<less> are_<swap> at_<swap> at_home chalk_<place>
        dress_gown for_a gown_cord if_the mak_a mat_<place> no_<kit> not_the or_<swap>
      `,
    ],
    [
      0.2,
      `
        0_<swap> <attend>_band <attend>_dumbbell <attend>_enough <attend>_go <attend>_hold <attend>_its
        <attend>_not <attend>_one <attend>_too <attend>_under <attend>_well <attend>_youv <chat>_barefoot
        <chat>_brav <chat>_buy <chat>_cannit <chat>_do <chat>_dont <chat>_else <chat>_head <chat>_like <chat>_mow
        <chat>_need <chat>_only <chat>_own <chat>_squat <chat>_weigh <chat>_will <chat>_would <chat>_you <do>_a
        <do>_buoy <do>_by <do>_head <do>_some <do>_the <do>_to <do>_your <far>_ball <far>_door <far>_got
        <far>_plat <harm>_mak <harm>_pad <kit>_and <kit>_are <kit>_do <kit>_doe <kit>_for <kit>_head <kit>_here
        <kit>_is <kit>_it <kit>_lose <kit>_machin <kit>_over <kit>_rather <kit>_round <kit>_so <kit>_that
        <kit>_the <kit>_under <kit>_up <kit>_use <kit>_without <less>_bell <less>_hand <less>_is <less>_noth
        <less>_reach <less>_what <less>_work <more>_long <more>_pair <more>_the <more>_to <more>_under
        <move>_buoy <move>_by <move>_goe <move>_some <move>_to <not>_arm <not>_bend <not>_broom <not>_else
        <not>_everybod <not>_mind <not>_of <not>_reach <not>_than <not>_the <num>_bench <num>_centimetr <num>_is
        <num>_leg <num>_thick <num>_what <num>_with <pace>_floor <pace>_if <pace>_pair <part>_at <part>_if
        <part>_is <part>_lift <part>_of <part>_put <part>_sit <part>_slip <part>_sore <part>_weight <place>_band
        <place>_carpet <place>_door <place>_four <place>_head <place>_it <place>_or <place>_plac <place>_sho
        <place>_to <place>_top <place>_what <settle>_a <settle>_barefoot <settle>_better <settle>_buy
        <settle>_for <settle>_goe <settle>_gone <settle>_it <settle>_of <settle>_on <settle>_someth <settle>_the
        <swap>_a <swap>_are <swap>_arm <swap>_as <swap>_at <swap>_bell <swap>_broom <swap>_cushion <swap>_do
        <swap>_doe <swap>_dumbbell <swap>_fifteen <swap>_for <swap>_help <swap>_here <swap>_hold <swap>_in
        <swap>_mak <swap>_off <swap>_one <swap>_pair <swap>_round <swap>_someth <swap>_under <swap>_what
        <take>_better <take>_it <take>_of <take>_on <take>_someth <wrong>_sho a_<num> a_<pace> a_<place>
        a_<settle> a_<take> a_bag a_bar a_bath a_box a_dress a_dry a_hard a_heavier a_kettlebell a_kitchen
        a_light a_long a_luxur a_meditation a_melon a_perfect a_pile a_pull a_rucksack a_scarf a_sock a_splendid
        a_step a_ten a_water a_wide about_<num> about_five agilit_ladder all_<attend> all_<chat> all_<more>
        all_<swap> all_gone all_work all_you alway_work am_<swap> am_us an_agilit an_empt an_old anchor_<more>
        anchor_<place> anchor_up and_<attend> and_<swap> and_a and_noth and_straight ankl_<kit> antiqu_<num>
        antiqu_one anyth_<attend> anyth_<place> anyth_long are_<attend> are_<not> are_a are_fine are_heav are_not
        are_your arm_at arm_of as_well at_mid bag_<place> bag_under balanc_pad band_<attend> band_if band_lose
        band_that bar_<swap> bar_for bare_<part> bare_<take> bare_feet bare_floor bath_<kit> bath_mat been_kind
        befor_your bell_for bell_you bench_and better_<place> better_on between_the bit_of blue_<num> blue_one
        body_has both_are bottl_of br_some brought_them buoy_<place> buoy_between buy_a by_the cabl_<kit>
        cabl_machin came_with can_<settle> can_<swap> can_<take> can_do can_hold cannit_<settle> cannit_tie
        cant_<do> cant_<far> cant_reach carrier_<swap> carrier_bag carton_with centimetr_<kit> centimetr_box
        chair_<not> chair_<swap> chair_is chair_rather chair_without chalk_in clean_sock con_are count_just
        cushion_<attend> cushion_if cushion_on disc_<settle> disc_have do_fifteen doe_for doe_it doe_the
        dont_<move> dont_bend dont_mind doubl_it dry_tea dumbbell_<attend> dumbbell_if elbow_<harm> elbow_<ill>
        elbow_sore else_the empt_milk everybod_else everybod_own eye_<kit> eye_<swap> eye_pillow fail_that
        feel_<less> feel_<more> five_<swap> five_kilo flat_sho floor_count floor_will fold_<more> fold_<place>
        fold_a fold_the fold_up fold_your foot_<attend> foot_if for_about for_most for_the four_<part> four_leg
        get_the glov_<place> glov_on glov_or go_<swap> go_barefoot go_buy go_for gone_walkabout got_a grab_someth
        gras_has green_<kit> green_band grip_goe half_what hand_put hand_slip handl_<part> handl_head has_<less>
        has_alway has_been have_gone have_one have_the havent_got head_<settle> head_<take> head_off head_sit
        heav_<chat> heav_<far> heav_<less> heav_dumbbell heav_enough heav_pair heavier_pair heel_<wrong>
        heel_lift heel_off hex_one hip_is hold_for i_dont i_would if_its if_youv in_<settle> in_<take> in_four
        in_plac in_the instead_of is_<attend> is_<chat> is_<more> is_hard is_medium is_nice is_strong it_<place>
        it_is it_on it_start it_than its_<harm> its_the its_wet jacket_<place> jacket_under jumper_<place>
        jumper_on just_<attend> just_as kind_<far> kind_<less> kind_enough kitchen_<harm> kitchen_<kit>
        kitchen_chair kitchen_worktop kne_is knee_<far> knee_height lawn_<place> lawn_in leav_the left_your
        leg_of let_<chat> let_you lid_<place> lid_are lid_on lift_<swap> lift_sho light_pair lighter_<kit>
        lighter_bell littl_<kit> littl_plat long_<kit> long_and long_band loop_a lose_their low_<kit> mat_<more>
        mat_over mat_up meditation_stool milk_carton mind_which mow_the need_<not> need_<part> need_hand
        need_noth no_broom not_<chat> not_everybod not_need not_them noth_else of_<swap> of_chalk of_floor
        of_jumper of_tight of_water off_<place> off_for offic_<kit> offic_chair old_pair old_sock on_<kit>
        on_block on_carpet on_or on_top on_what one_<place> one_bench one_is one_stiffer one_with only_got
        opposit_hand or_<more> or_<not> or_<place> or_a or_bare or_chalk or_heavier or_off or_on or_stick own_an
        pair_<chat> pair_for pair_of pair_you paper_<kit> paper_plat perfect_<chat> perfect_good pick_someth
        pile_<place> pile_by plac_of plastic_one plat_<place> plat_it plat_under pram_<kit> pram_handl progres_it
        proper_<attend> proper_<pace> proper_light provid_the pull_buoy put_<place> put_on rather_than
        real_sneaker red_the replac_them roll_<more> roll_<place> roll_about roll_up round_<part> round_head
        rower_<swap> same_attitud seat_<attend> seat_if sette_doe sho_are sho_help short_<num> short_one
        sit_better slid_disc small_<kit> small_ball sneaker_for so_that sock_<place> sock_on sock_pleas
        someth_<attend> someth_<chat> someth_heav someth_with someth_you splendid_bar squash_<swap>
        squash_trainer stack_a stag_<num> stand_in stand_it start_at step_by strap_if suit_<chat> suit_you
        swap_to take_the tall_<num> tall_one ten_<far> ten_<swap> ten_centimetr ten_kilo than_<chat> than_you
        that_<chat> that_<part> that_<settle> that_an that_it that_knee that_let the_<attend> the_<far>
        the_<less> the_<not> the_<swap> the_antiqu the_arch the_balanc the_bare the_bell the_bike the_blue
        the_bounc the_corner the_edge the_fifteen the_foam the_gras the_green the_heav the_hex the_job
        the_laminat the_lawn the_lid the_light the_lighter the_low the_medium the_offic the_one the_opposit
        the_plastic the_radiator the_round the_same the_sette the_short the_slid the_small the_stiffer the_stop
        the_tall the_ten the_tub the_twent the_wooden their_<attend> their_<do> their_stretch ther_are they_<not>
        they_dont thi_with thicker_<kit> thigh_is though_<not> though_not thre_<chat> thre_set tie_it tied_to
        time_<attend> time_if tin_of to_<more> to_hand to_progres to_the to_you too_<attend> trainer_or
        two_<attend> two_heav under_the under_them under_your unles_its up_the up_to use_<kit> use_a use_dumbbell
        use_that use_the use_what walk_<kit> walk_pole want_<more> want_more weight_<place> weight_in weight_vest
        what_<chat> what_let what_suit what_you whatever_roll whatever_youv when_<num> whichever_to wide_<kit>
        wide_door will_<do> will_<swap> will_want with_<move> with_<num> with_four without_<part> wooden_<kit>
        wooden_chair work_<place> work_under worktop_mak would_<chat> would_<settle> wouldnt_<swap> wouldnt_use
        yellow_for you_<far> you_<less> you_<swap> you_cannit you_do you_like you_mow you_need you_only you_put
        you_squat you_weigh your_<kit> your_<more> your_arm your_brav your_crutch your_foot your_heel your_leg
        your_mat your_on your_rail your_shoulder your_slider your_wrist yourself_a youv_<attend> youv_<far>
        youv_brought youv_only youv_pick youv_sens
      `,
    ],
    [
      -0.2,
      `
        <attend>_a <attend>_if <attend>_on <attend>_ther <chat>_a <chat>_are <chat>_can <chat>_go <chat>_it
        <do>_if <do>_on <harm>_on <kit>_off <kit>_with <less>_weight <more>_is <move>_it <num>_a <num>_bell
        <num>_foot <num>_of <part>_a <part>_and <part>_down <part>_on <part>_to <part>_up <place>_front
        <take>_the a_<chat> a_<harm> a_<part> a_book a_cushion all_the and_<do> and_<move> as_<attend> as_if
        as_you at_the bar_<place> bell_<attend> bell_if both_<part> come_<place> could_<swap> do_it feet_<place>
        for_<num> for_<swap> front_of handl_<place> hold_the i_<swap> if_<num> in_front in_your is_<not>
        it_<attend> it_<not> its_<attend> its_<not> its_a its_not lighter_<part> lighter_weight like_a need_to
        not_<place> of_<num> of_your off_the one_<part> one_foot one_hand or_<num> or_<settle> out_<place> put_a
        same_<kit> stay_<place> that_the the_<harm> the_<move> the_back the_bench the_chair the_cushion the_end
        the_leg the_middl the_other the_towel the_way thi_<place> thi_by tin_<place> to_<swap> to_use to_your
        up_<place> want_to we_are when_<chat> when_you with_a with_the you_<chat> you_<place> you_are you_can
        you_want your_<attend> your_<not> your_<part> your_back your_kne your_not
      `,
    ],
    [-0.4, 'the_<kit> the_<part> the_wall'],
  ],
  phrase: [
    [0.8, 'equipment-sure'],
    [0.4, 'equipment-hint setup-hint'],
    [0.2, 'easier-likely easier-sure equipment-likely harder-hint'],
    [
      -0.2,
      `
        breathing-likely caution-hint caution-sure fault-sure focus-hint focus-likely purpose range-hint
        range-likely range-sure
      `,
    ],
    [
      -0.4,
      `
        breathing-sure chat dose_only execution-likely fault-likely focus-sure tempo-likely tempo-sure
      `,
    ],
    [-0.6, 'empty_clauses'],
  ],
  start: [
    [
      0.2,
      `
        <chat>_<less> <chat>_<swap> <do>_<more> <more>_<num> <more>_<place> <move>_<more> <not>_<chat>
        <not>_<kit> <not>_<swap> <part>_<harm> <part>_<ill> <part>_<wrong> <place>_<swap> <settle>_<swap>
        <swap>_<kit> <swap>_<place> <swap>_<swap> <wrong>_<swap> a_dress a_dress_gown a_pillow a_pull a_pull_buoy
        a_roll a_tin_of all_you at_home band_lose band_lose_their broom_handl broom_handl_head con_are con_are_a
        cushion_on cushion_under_the dont_go dont_go_buy dress_gown dress_gown_cord elbow_sore everybod_else
        everybod_else_the eye_pillow flat_sho fold_up fold_up_a fold_your forget_the forget_the_weight get_the
        get_yourself_a glov_on glov_on_or grab_someth grab_someth_heav grip_go hand_on hand_on_the hand_slip
        have_the heel_lift heel_off heel_off_the i_am i_am_us i_dont_mind i_would i_wouldnt_use if_the if_you
        if_you_cannit if_you_have if_your if_your_heel in_plac in_plac_of instead_of instead_of_the it_all
        its_the_bar leav_the leav_the_bell leav_the_weight lift_sho lift_sho_help littl_plat loop_a lose_the_glov
        no_broom not_everybod not_everybod_own not_the not_the_offic old_sock old_sock_on one_arm one_arm_at
        one_bench or_a or_heavier or_on paper_plat pram_handl proper_light real_sneaker real_sneaker_for red_the
        red_the_stiffer slid_the slid_the_anchor stag_thre stand_it stand_it_on strap_if swap_the swap_to
        swap_to_the ten_if ten_if_your tenni_ball the_arm the_arm_of the_heav the_heav_pair the_low_step
        the_one_with the_slid the_slid_disc the_wooden the_wooden_chair ther_are they_dont_bend to_progres
        to_progres_it trainer_or trainer_or_bare two_heav two_heav_dumbbell up_to use_the whatever_you
        whatever_you_came whatever_youv whatever_youv_pick you_can_do you_need you_need_noth your_on_the
      `,
    ],
    [
      -0.2,
      `
        <attend>_<attend> <attend>_<kit> <chat>_<chat> <kit>_<place> <not>_<take> <part>_<place> <place>_<place>
        <settle>_<place> <take>_<place> hold_the its_a no_weight we_are
      `,
    ],
  ],
  word: [
    [0.8, 'pair'],
    [0.6, 'fold need sho sock use'],
    [
      0.4,
      `
        are bare block chalk cord doe dress dumbbell foam for glov gown have ideal if kitchen light mak or roll
        someth thick tie whatever will
      `,
    ],
    [
      0.2,
      `
        a about agilit antiqu anyth arch attitud bag ball band banister bar barefoot bath bean bench better bike
        blanket blu blue bottl box brav broom buoy but buy cannit carpet carrier carton centimetr chair check
        choos clean con corner count crutch cushion dictionar disc doubl dry edge else enough everybod fail
        fifteen fiv flannel floor folk glid gone good got grab gras green grip hand handl hard has havent heav
        heavier heel here hex home hug instead itll jacket job jumper kettlebell kilo knot ladder laminat lawn
        lid lift lighter long loop lose low luxur mat meditation medium melon milk mow nice noth offic old on one
        optional own pad palm paper pile plac plastic plat pleas pole pram progres provid radiator reach real red
        replac rice round rower rucksack satsuma sette short slid slider slip small sneaker so sore spik splendid
        squash stiffer stool strong suit switch take taken ten than their thicker though tight tin too trainer
        umbrella under unles vest walkabout water wear wedg weigh weight wet what whichever with without wooden
        work worktop would wrap wrist
      `,
    ],
    [
      -0.2,
      `
        0 after again along and at away be been behind belt book both bottom breath brick can car clos come done
        door each end ever far feet finish foot forward from front get go goe had half hear high i in inch into
        isnt it its jump just keep knee land last leg let like longer look lot lower ly make me meet middl mov my
        neck new no off once open over overhead peopl plank pull push put rest right ring say second see shak
        should sit six slow somebod stand star step still stop the ther thes theyr time toda toe touch turn
        underneath wait way we when wher whol wobbl your
      `,
    ],
    [-0.4, 'back do down kne other out side stay that to wall'],
  ],
} as const satisfies CueWeights
