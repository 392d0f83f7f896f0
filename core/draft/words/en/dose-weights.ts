/**
 * What each mark of an answer adds to the log of the odds that it is the right one: for each question the marks of the answer,
 * and those of each way in which a saying tells it (dose-options.ts). Fitted by tests/fit/fit-doses.ts, not by hand.
 */
export const DOSE_WEIGHTS: Readonly<
  Record<
    'amount' | 'hold' | 'sets' | 'sides' | 'rest',
    Readonly<Record<string, readonly (readonly [weight: number, marks: string])[]>>
  >
> = {
  amount: {
    option: [
      [1.4, 'workSeconds to 40'],
      [1.2, 'as before in circuit|times said 0'],
      [1.0, 'called hold holdSeconds'],
      [0.9, 'called march workSeconds|holdSeconds range|none main 0'],
      [0.8, 'as neighbour workSeconds|called rais reps|circuit workSeconds|none sure false|reps range|reps to 5'],
      [
        0.7,
        'distanceM to 1000|distanceM to 20|holdSeconds to 40|isometric holdSeconds|lunge workSeconds|none|reps to 10|run distanceM|squat reps',
      ],
      [
        0.6,
        'called bear holdSeconds|called curl workSeconds|called prop holdSeconds|called quad reps|called skip distanceM|called stay reps|called support holdSeconds|carry distanceM|holdSeconds to 120|holdSeconds to 20|jump distanceM|none main 1|row-machine workSeconds|ruled workSeconds|swing-kit workSeconds',
      ],
      [
        0.5,
        'as neighbour distanceM|called carry distanceM|called deadlift reps|called dish reps|called set reps|called squat reps|called strid holdSeconds|called the reps|distanceM to 30|heel-raise reps|holdSeconds to 15|jump workSeconds|kind distanceM|lunge reps|not as before|not as before in circuit|pull reps|reps to 12|reps to 7|reps to 9|superset reps|workSeconds to 30',
      ],
      [
        0.4,
        'as before in superset|balance reps|called box workSeconds|called bridge holdSeconds|called cat reps|called climber workSeconds|called door reps|called drag workSeconds|called floor holdSeconds|called floor reps|called kne workSeconds|called leg reps|called lunge workSeconds|called raise reps|called row reps|called slid holdSeconds|called up reps|called up workSeconds|called walk distanceM|called your holdSeconds|known distanceM|known still holdSeconds|none though ruled|not as before in superset|push reps|reps max|reps to 15|reps to 20|sit-to-stand reps|spine-flexion reps|step workSeconds|still holdSeconds|wide-legs workSeconds|workSeconds to 60',
      ],
      [
        0.3,
        'called com holdSeconds|called cow holdSeconds|called crawl workSeconds|called cushion reps|called flamingo holdSeconds|called ladder workSeconds|called plank holdSeconds|called pogo reps|called pres workSeconds|called right workSeconds|called side holdSeconds|called sit holdSeconds|called step workSeconds|called straighten reps|called sw holdSeconds|called swimmer workSeconds|called tree workSeconds|circuit distanceM|curl-up workSeconds|distanceM to 5|holdSeconds to 10|holdSeconds to 30|overhead reps|ruled|ruled behind|ruled main|ruled reps|spine-extension workSeconds',
      ],
      [
        0.2,
        'ballistic holdSeconds|called beetle holdSeconds|called bell reps|called bend reps|called bit holdSeconds|called bound distanceM|called bug workSeconds|called ceil holdSeconds|called chop workSeconds|called cow reps|called dip reps|called dog reps|called gate holdSeconds|called lift reps|called needle reps|called off reps|called okay reps|called palloff reps|called plank reps|called pres holdSeconds|called pull-up reps|called punch workSeconds|called roe reps|called row workSeconds|called shrug reps|called sprawl reps|called squat workSeconds|called stage reps|called stand reps|called statue holdSeconds|called tuck holdSeconds|called walk workSeconds|deep-hip reps|hinge distanceM|hinge reps|hip-rotation workSeconds|isometric reps|load-over-face reps|overhead holdSeconds|push distanceM|push workSeconds|said before|spine-extension holdSeconds|superset workSeconds',
      ],
      [
        0.1,
        'breathing reps|called 400 distanceM|called 500 distanceM|called apart reps|called balcony holdSeconds|called bar reps|called bench reps|called bicycl workSeconds|called body reps|called breath reps|called bug reps|called cabinet reps|called canoe reps|called climb reps|called crawl distanceM|called curl-up reps|called deadlift workSeconds|called dock reps|called fellow reps|called four reps|called greenhouse reps|called hang holdSeconds|called hanger workSeconds|called hollow holdSeconds|called jog distanceM|called kick distanceM|called kneel holdSeconds|called lever reps|called lower reps|called lower workSeconds|called lunch workSeconds|called lung reps|called lunge reps|called messag distanceM|called optimistic holdSeconds|called patter distanceM|called pelican holdSeconds|called pickpocket reps|called please reps|called press holdSeconds|called press-up reps|called pump reps|called push-up reps|called push-up workSeconds|called shopp distanceM|called slide reps|called so reps|called step distanceM|called step reps|called superman workSeconds|called swimm reps|called swing reps|called swing workSeconds|called thi reps|called to reps|called wall reps|called with reps|curl-up holdSeconds|curl-up reps|distanceM to 10|leg-lowering holdSeconds|row-machine distanceM|spine-extension reps|wide-legs holdSeconds',
      ],
      [
        -0.1,
        "as neighbour holdSeconds|balance workSeconds|called 500 reps|called back holdSeconds|called bat reps|called beetle reps|called bit reps|called bit workSeconds|called body holdSeconds|called bound workSeconds|called box reps|called bridg reps|called bridg workSeconds|called broomstick reps|called cat holdSeconds|called chest holdSeconds|called climb holdSeconds|called climber holdSeconds|called climber reps|called cow workSeconds|called curl-up workSeconds|called dip holdSeconds|called dock holdSeconds|called dog holdSeconds|called down reps|called drag holdSeconds|called drag reps|called feet holdSeconds|called gate workSeconds|called hand holdSeconds|called hand reps|called handstand holdSeconds|called hang reps|called hinge holdSeconds|called hydrant reps|called hydrant workSeconds|called jog reps|called kne distanceM|called ladder distanceM|called ladder holdSeconds|called leg workSeconds|called lift distanceM|called lift holdSeconds|called lunge holdSeconds|called march distanceM|called messag reps|called morn reps|called off holdSeconds|called okay holdSeconds|called opener workSeconds|called optimistic workSeconds|called paddle reps|called palloff holdSeconds|called pelican reps|called plat holdSeconds|called plat workSeconds|called pose workSeconds|called press workSeconds|called pull holdSeconds|called pull workSeconds|called pump holdSeconds|called pump workSeconds|called punch holdSeconds|called punch reps|called rais holdSeconds|called right holdSeconds|called right reps|called rock holdSeconds|called roe workSeconds|called round reps|called row distanceM|called row holdSeconds|called set workSeconds|called shopp reps|called shrug holdSeconds|called shrug workSeconds|called sit reps|called sit workSeconds|called skip holdSeconds|called slid workSeconds|called sorted reps|called sprawl workSeconds|called straighten workSeconds|called strid reps|called strid workSeconds|called support workSeconds|called swing holdSeconds|called thrust workSeconds|called tilt holdSeconds|called to holdSeconds|called tree reps|called tuck workSeconds|called walk holdSeconds|called walk' reps|called water holdSeconds|called water reps|called wrist holdSeconds|carry workSeconds|circuit holdSeconds|deep-knee distanceM|heel-raise holdSeconds|hinge workSeconds|holdSeconds more|isometric workSeconds|load-over-face workSeconds|lunge holdSeconds|pull distanceM|pull workSeconds|push holdSeconds|reps to 1000|ruled before|ruled distanceM|sit-to-stand holdSeconds|sit-to-stand workSeconds|spine-rotation reps|squat distanceM|step distanceM|step holdSeconds|step reps|swing-kit holdSeconds|times said 3|workSeconds to 12|workSeconds to 4|workSeconds to 7",
      ],
      [
        -0.2,
        'called bat holdSeconds|called box holdSeconds|called bridge reps|called bug holdSeconds|called ceil workSeconds|called crawl reps|called deadlift holdSeconds|called flamingo reps|called hinge reps|called kne holdSeconds|called ladder reps|called lift workSeconds|called plank workSeconds|called pogo distanceM|called pose reps|called pull-up workSeconds|called quad holdSeconds|called raise holdSeconds|called rock reps|called side reps|called skip reps|called skip workSeconds|called squat holdSeconds|called stand workSeconds|called statue reps|called stay holdSeconds|called strid distanceM|called swimmer reps|called tree holdSeconds|called tuck reps|called water workSeconds|called wrist reps|deep-hip workSeconds|deep-knee workSeconds|distanceM range|distanceM to 3|distanceM to 60|hip-rotation holdSeconds|holdSeconds to 12|holdSeconds to 4|reps to 25|row-machine holdSeconds|ruled earlier|squat workSeconds|workSeconds to 2|workSeconds to 3|workSeconds to 9',
      ],
      [
        -0.3,
        'called bridg holdSeconds|called broom reps|called com reps|called curl reps|called cushion holdSeconds|called feet workSeconds|called hold workSeconds|called kne reps|called march holdSeconds|called pose holdSeconds|called set holdSeconds|called stay workSeconds|called stretch holdSeconds|called sw reps|called twist holdSeconds|called twist reps|called twist workSeconds|called up holdSeconds|called your workSeconds|circuit reps|deep-knee holdSeconds|distanceM to 15|holdSeconds to 25|holdSeconds to 7|holdSeconds to 9|jump reps|kind holdSeconds|none main 2|none main 3|overhead workSeconds|ruled return|superset holdSeconds|swing-kit reps|workSeconds more|workSeconds range|workSeconds to 1|workSeconds to 5',
      ],
      [
        -0.4,
        'called bat workSeconds|called bridge workSeconds|called floor workSeconds|called hold reps|called march reps|called opener holdSeconds|called opener reps|called roll reps|called stretch workSeconds|called support reps|called tap reps|called the workSeconds|deep-hip holdSeconds|deep-knee reps|holdSeconds to 1|jump holdSeconds|kind workSeconds|known holdSeconds|none sure true|spine-flexion holdSeconds|spine-flexion workSeconds|spine-rotation holdSeconds|times said 2|wide-legs reps|workSeconds to 1000|workSeconds to 120|workSeconds to 20',
      ],
      [
        -0.5,
        'called bear reps|called bik reps|called carry reps|called dish holdSeconds|called down workSeconds|called plat reps|called stretch distanceM|called th reps|holdSeconds to 60|pull holdSeconds|reps to 30|reps to 60|row-machine reps|ruled later|run reps|still workSeconds|stretch distanceM|stretch holdSeconds|words as before|workSeconds to 15|workSeconds to 25',
      ],
      [
        -0.6,
        'carry reps|circles reps|distanceM more|holdSeconds to 2|holdSeconds to 3|known still distanceM|known still reps|known still workSeconds|still distanceM|stretch workSeconds|workSeconds to 10',
      ],
      [-0.7, 'called slid reps|holdSeconds to 1000|reps to 40|still reps|stretch reps|times said 1'],
      [-0.8, 'balance distanceM|called stretch reps|holdSeconds to 5|reps to 120|reps to 3'],
      [-0.9, 'called walk reps|none in circuit|none in superset'],
      [-1.0, 'reps to 1|reps to 2'],
    ],
    said: [
      [1.4, 'named in the sentence before'],
      [1.2, 'before word with|closes breaths|closes fifteen|named around'],
      [1.1, 'behind word was|words of the name, not named'],
      [1.0, 'before word all|before word rest|behind word and|closes eight|closes twelve'],
      [0.9, 'before word as|closes each|opens 10|opens eight|sided true|whole earlier not owned'],
      [
        0.8,
        'before word one|behind word faces|behind word its|behind word ladder|behind word ten|behind word thats|from start some|opens 12|opens every',
      ],
      [
        0.7,
        'before word bounces|before word change|before word come|behind word clock|closes sixteen|from start 3|opens 4|opens 40|reps of reps workSeconds|to end far|words of the name',
      ],
      [
        0.6,
        'a neighbour named|ahead 6|before owned|before word long|before word right|behind word are|behind word cushion|behind word is|behind word nine|behind word today|closes 12|closes squeezes|closes ten|corrects main owned|fields sets reps restSeconds|fields workSeconds restSeconds|instead main|last of more|only one|opens 20|opens sixteen|past 5|reps of sets reps restSeconds|row of 3|row rising|sure before owned|will do|workSeconds of workSeconds restSeconds',
      ],
      [
        0.5,
        'before word cone|before word each|before word on|before word rate|before word rows|before word still|behind word between|behind word bounds|behind word eleven|behind word from|behind word it|behind word me|behind word outside|behind word presses|behind word that|behind word with|closes eights|closes fives|closes minute|closes minutes|closes told|corrects before not owned|fields reps holdSeconds|fields sets workSeconds restSeconds|in clauses|instead before|main|main owned|opens 15|opens eights|opens fives|per side|reps of reps holdSeconds|right behind another|role move|row up to|run true|said for all before|sided unknown|sure earlier not owned|sure main not owned|sure main owned|weight true|workSeconds of sets workSeconds restSeconds',
      ],
      [
        0.4,
        'before word an|before word cleans|before word forward|before word just|before word okay|before word only|before word quick|before word so|before word there|behind word ankles|behind word bit|behind word climbers|behind word many|behind word press|behind word rope|behind word stretch|behind word times|behind word ups|behind word waistband|closes 20|closes 4|closes 8|closes meters|closes sides|closes those|common|distanceM of distanceM|distanceM of sets distanceM|fields distanceM|fields sets distanceM|from start 2|named before 1|named behind far|opens 8|opens 80|opens a|opens and|opens eighty|opens six|opens twelve|row before|row level|row then|run unknown',
      ],
      [
        0.3,
        'before word 15|before word a|before word after|before word every|before word from|before word heavier|before word if|before word into|before word ive|before word s|before word set|before word since|before word sixteen|before word slippy|before word thats|before word twenty|before word whats|before word wiggle|behind word burpees|behind word finisher|behind word go|behind word goes|behind word mat|behind word rowing|behind word sit|behind word stand|behind word theyre|both neighbours named|closes 10|closes 15|closes drawers|closes half|closes pair|closes pushups|closes sets|closes side|corrects|fields reps workSeconds|longer sentence|nearest before|opens 2|opens as|opens its|opens mini|opens same|opens so|opens twenty|said for all|standing true|to end some|whole main owned',
      ],
      [
        0.2,
        'bare behind|bare return|before word and|before word between|before word chins|before word depending|before word feet|before word half|before word have|before word jog|before word like|before word nothings|before word of|before word ring|before word same|before word shake|before word start|before word step|before word switch|before word twice|before word will|behind|behind word 400s|behind word bus|behind word chest|behind word day|behind word deadlifts|behind word early|behind word face|behind word forget|behind word gets|behind word goal|behind word keen|behind word mes|behind word old|behind word on|behind word orange|behind word pages|behind word shoulder|behind word shoulders|behind word side|behind word sides|behind word slack|behind word small|behind word so|behind word squats|behind word supports|behind word turn|behind word twenty|behind word usual|behind word wait|behind word way|behind word your|closes awake|closes em|closes five|closes it|closes laps|closes lunges|closes metres|closes other|closes through|closes way|fields sets reps|fields sets workSeconds distanceM|from start 1|in caution|loose later|nearest behind|opens 30|opens fifteen|opens i|opens id|opens sixes|opens static|opens stay|opens ten|opens then|opens thirty|past far|reps of reps workSeconds tempo|reps of sets reps|return owned|right behind the one before|role work|row counts then|row earlier|said before|to end 1|told|whole main not owned|workSeconds moving',
      ],
      [
        0.1,
        'ahead 20|bare later|bare main|before word any|before word anybody|before word are|before word band|before word basically|before word bench|before word blues|before word breath|before word clocks|before word cons|before word cos|before word deep|before word farmers|before word fifteen|before word find|before word for|before word gets|before word go|before word hang|before word heels|before word i|before word move|before word nice|before word other|before word out|before word pedal|before word rack|before word remember|before word shoulders|before word six|before word slow|before word tailbone|before word tens|before word the|before word theres|before word waiting|before word weights|before word whatever|before word while|before word wrists|behind not owned|behind owned|behind word 11|behind word 19|behind word another|behind word archer|behind word back|behind word bands|behind word bar|behind word breathe|behind word bridge|behind word cheating|behind word clever|behind word cow|behind word drills|behind word eh|behind word feet|behind word flat|behind word fourteen|behind word front|behind word get|behind word hands|behind word hips|behind word if|behind word isnt|behind word light|behind word lower|behind word morning|behind word move|behind word music|behind word ones|behind word prop|behind word put|behind word rest|behind word ride|behind word rules|behind word said|behind word say|behind word second|behind word sets|behind word six|behind word slide|behind word soft|behind word squat|behind word stands|behind word still|behind word t|behind word tall|behind word the|behind word theres|behind word tight|behind word touch|behind word yellow|behind word yes|closes air|closes down|closes go|closes left|closes otherwise|closes press|closes raises|closes same|closes squats|closes stations|closes strokes|closes them|closes time|closes total|counted name|fields reps workSeconds tempo|first of more|in harder|instead|instead behind|later owned|main not owned|named behind 0|opens call|opens drills|opens everything|opens first|opens sixty|opens three|others in the sentence before|return|role chat|row|seated false|stretch false|sure behind not owned|sure later owned|to end 2|unsure|whole before not owned',
      ],
      [
        -0.1,
        'bare|before word 11|before word 13|before word 18|before word 3|before word 5|before word 6|before word 7|before word 8|before word anything|before word arms|before word bell|before word bikes|before word bottom|before word bring|before word check|before word chin|before word coming|before word denise|before word dogs|before word doors|before word drink|before word feel|before word feels|before word fifty|before word fourteen|before word grow|before word hamstring|before word here|before word hmm|before word in|before word inches|before word keep|before word kilo|before word knees|before word lean|before word lift|before word look|before word miles|before word minute|before word months|before word over|before word people|before word phone|before word pick|before word pounds|before word rhythm|before word score|before word side|before word sitting|before word somebody|before word squeeze|before word straight|before word than|before word theyre|before word thing|before word thousand|before word till|before word top|before word twelve|before word unless|before word walk|before word well|before word whos|before word wont|before word work|before word years|behind word 18|behind word 2|behind word 4|behind word 5|behind word 6|behind word 8|behind word 9|behind word all|behind word an|behind word ankle|behind word asleep|behind word away|behind word bench|behind word can|behind word circuit|behind word click|behind word climbs|behind word cone|behind word core|behind word count|behind word county|behind word cue|behind word deal|behind word does|behind word done|behind word doors|behind word drink|behind word ear|behind word enough|behind word even|behind word everythings|behind word figure|behind word fine|behind word fingertips|behind word floor|behind word forgotten|behind word good|behind word got|behind word granddaughters|behind word had|behind word hand|behind word has|behind word head|behind word heels|behind word height|behind word here|behind word hes|behind word high|behind word hill|behind word him|behind word knees|behind word last|behind word left|behind word lets|behind word lift|behind word long|behind word lose|behind word lot|behind word menu|behind word minutes|behind word more|behind word neck|behind word neither|behind word next|behind word no|behind word off|behind word oh|behind word once|behind word one|behind word or|behind word past|behind word push|behind word quads|behind word rack|behind word rate|behind word reason|behind word remember|behind word return|behind word right|behind word rings|behind word rise|behind word rose|behind word row|behind word run|behind word rung|behind word same|behind word see|behind word shin|behind word skipping|behind word skips|behind word slow|behind word spilling|behind word station|behind word steps|behind word than|behind word thighs|behind word third|behind word thirteen|behind word this|behind word those|behind word time|behind word toe|behind word top|behind word tyrant|behind word waited|behind word wedding|behind word well|behind word wide|behind word work|closes 14|closes 16|closes 30|closes 5|closes 60|closes 7|closes 9|closes all|closes bench|closes between|closes brave|closes couple|closes different|closes done|closes fours|closes leg|closes lengths|closes miles|closes over|closes plenty|closes red|closes rest|closes right|closes round|closes sevens|closes seventy|closes sixes|closes sixty|closes steps|closes thirteen|closes turns|closes ups|distanceM of reps distanceM|fields holdSeconds tempo|fields reps distanceM|fields sets holdSeconds|fields sets reps holdSeconds|fields sets reps workSeconds restSeconds|fields workSeconds|holdSeconds of holdSeconds tempo|holdSeconds of sets holdSeconds|in fault|in focus|in turns|loose return|opens 1|opens 14|opens 16|opens 17|opens 18|opens 25|opens 3|opens 300|opens 45|opens 5|opens 6|opens 9|opens anything|opens bench|opens bit|opens change|opens each|opens eighteen|opens everythings|opens fall|opens four|opens fours|opens heel|opens ladder|opens lets|opens now|opens say|opens sevens|opens well|reps of sets reps holdSeconds|return not owned|role end|said for all behind|seated true|stretch true|sure return not owned|to end 3|weight false|weight unknown|whole before owned|whole behind not owned|whole behind owned|workSeconds of reps workSeconds tempo|workSeconds of workSeconds',
      ],
      [
        -0.2,
        'ahead 60|at the start|before word 20|before word 9|before word actually|before word backs|before word because|before word down|before word eleven|before word foot|before word forty|before word good|before word hand|before word hands|before word ill|before word is|before word left|before word leg|before word lovely|before word my|before word near|before word oclock|before word outside|before word percent|before word pound|before word press|before word red|before word stood|before word swap|before word ten|before word thatll|before word then|before word thirteen|before word three|before word when|behind word bear|behind word blue|behind word counts|behind word deadlift|behind word did|behind word end|behind word first|behind word going|behind word ive|behind word jeans|behind word just|behind word leg|behind word legs|behind word lifts|behind word minute|behind word noise|behind word nose|behind word of|behind word pink|behind word pull|behind word ramp|behind word records|behind word seconds|behind word seven|behind word squatted|behind word stage|behind word swap|behind word swinging|behind word them|behind word thigh|behind word tonight|behind word two|behind word up|behind word van|behind word want|behind word week|behind word window|closes 1|closes 11|closes 3|closes 45|closes again|closes altogether|closes arm|closes breath|closes fifty|closes fourteen|closes hedge|closes nineteen|closes off|closes outs|closes seconds|closes you|condition|fields reps restSeconds|fields sets reps workSeconds|from start far|held in the sentence|in breathing|loose|named before some|named behind 1|named behind some|no name|opens 11|opens circuit|opens fifty|opens five|opens half|opens nineteen|opens ninety|opens seventy|opens thats|opens thirteen|opens threes|reps of reps restSeconds|reps of sets reps workSeconds restSeconds|row behind|row of 2|row of 4|said for all earlier|standing false|stretch unknown|sure behind owned|sure return owned|workSeconds of sets reps workSeconds',
      ],
      [
        -0.3,
        'before|before word back|before word eight|before word let|before word lets|before word more|before word nah|before word now|before word seven|before word weeks|behind word aparts|behind word do|behind word half|behind word have|behind word in|behind word instead|behind word little|behind word only|behind word pair|behind word pillow|behind word plank|behind word round|behind word rows|behind word there|behind word three|behind word to|behind word youll|closes 6|closes benches|closes ones|closes presses|closes rounds|closes row|closes seven|closes twice|corrects earlier not owned|corrects later not owned|corrects return owned|fields reps tempo|for all|in easier|in range|loose before|named before 2|opens 60|opens do|opens fourteen|opens hold|opens per|past 15|reps of reps tempo|row counts level|row return|run false|sure before not owned|to end 0|whole later not owned|workSeconds of reps workSeconds',
      ],
      [
        -0.4,
        'before not owned|before word breathe|before word centimetre|before word degrees|before word elbows|before word going|before word its|before word kilos|before word last|before word not|before word och|before word oh|before word or|before word two|before word written|behind word a|behind word about|behind word chair|behind word down|behind word raises|behind word saturday|behind word strides|behind word swings|closes 2|closes eleven|closes goes|closes set|closes thirty|closes up|earlier|earlier not owned|fields holdSeconds|followed near|from start 0|holdSeconds of holdSeconds|in equipment|in setup|instead return|later|later not owned|loose behind|loose earlier|opens forty|opens seven|opens twice|standing unknown',
      ],
      [
        -0.5,
        'at later|before word euro|before word five|before word hold|before word to|before word youre|behind word raised|behind word then|closes forty|in execution|instead earlier|opens 7|others named|past 60|row falling|taken back',
      ],
      [
        -0.6,
        'another nearer|bare earlier|before word once|behind word eight|behind word five|behind word you|closes times|closes two',
      ],
      [
        -0.7,
        'ahead far|bare before|before word but|behind word at|closes four|closes nine|closes three|holdSeconds moving|only others named around|sure later not owned|workSeconds still',
      ],
      [
        -0.8,
        'before word round|closes twenty|fields sets workSeconds|instead later|opens for|opens nine|workSeconds of sets workSeconds',
      ],
      [-0.9, 'behind word for|behind word four|behind word not|in tempo|opens eleven|opens one|opens two|sided false'],
      [-1.0, 'before word nine|before word no|closes one|row counts|row counts comma'],
      [-1.1, 'row comma'],
    ],
    'as seconds': [
      [
        0.3,
        'before word same|behind word backs|closes thirty|corrects|corrects return owned|instead return|named before some|opens make',
      ],
      [0.2, 'named before|nearest before|only one|return owned|sure return owned|words of the name'],
      [0.1, 'instead|named around|past 60'],
      [
        -0.1,
        'a neighbour named|ahead 180|ahead 6|ahead 60|bare before|bare behind|bare later|behind|behind not owned|behind word and|closes eight|closes five|closes forty|closes four|closes ten|closes three|closes two|counted name|for all|from start some|in setup|in turns|loose before|loose behind|loose later|main owned|only others named around|opens eight|opens five|opens forty|opens four|opens six|opens ten|opens three|others in the sentence before|others named|past 15|past 5|per side|role move|rounds|row|row comma|row counts|row counts comma|row of 2|row rising|sure earlier not owned|sure main owned|taken back|to end 0|to end some|will do',
      ],
      [
        -0.2,
        'ahead 20|ahead far|ahead none|at the start|bare earlier|bare return|before word and|condition|earlier|earlier not owned|followed later|followed near|from start far|later|later not owned|loose earlier|loose return|opens two|past far|return not owned|right behind the one before|role chat|sure before not owned|to end far',
      ],
      [
        -0.3,
        'at later|bare|bare main|before|before not owned|closes one|fields reps|longer sentence|loose|loose main|main|main not owned|no name|opens one|role teach|role work|short sentence|told',
      ],
    ],
    'as seconds held': [
      [1.2, 'opens make'],
      [0.9, 'closes twenty'],
      [0.8, 'behind word so|corrects main owned|only one'],
      [0.7, 'behind word you|closes 20|corrects|main owned|opens 20'],
      [0.6, 'to end far'],
      [0.5, 'before word in|closes off|fields sets reps restSeconds|from start some|in easier|instead main'],
      [0.4, 'whole main owned'],
      [0.3, 'before word 20|behind word no|instead|opens lets|per side'],
      [0.2, 'before word a|before word its|behind word 20|closes leg|followed later|from start 3|opens its'],
      [0.1, 'before word knees|behind word it|first of more|sure main owned'],
      [
        -0.1,
        'a neighbour named|ahead 180|ahead 6|bare behind|bare later|bare main|bare return|before word breathe|before word dont|before word elbows|before word foot|before word if|before word keep|before word once|before word so|before word thats|before word whos|behind|behind not owned|behind word and|behind word ask|behind word do|behind word heels|behind word is|behind word raised|behind word the|behind word three|behind word well|between|closes eight|closes fifteen|closes five|closes four|closes nine|closes seconds|closes seven|closes side|closes six|closes ten|closes them|closes thirty|closes those|closes three|closes through|closes twelve|closes twice|fields reps holdSeconds|fields reps workSeconds|fields sets reps|for all|from start 0|from start 1|from start 2|in execution|in harder|in tempo|in turns|loose before|loose behind|loose later|loose return|named around|only others named around|opens 10|opens 30|opens eight|opens eleven|opens five|opens for|opens forty|opens four|opens same|opens six|opens thirty|opens twenty|others in the sentence before|others named|past 5|past 60|past far|return|return not owned|right behind another|role move|role teach|rounds|row comma|row counts|row counts comma|row falling|row main|row of 2|row rising|sure earlier not owned|sure later not owned|to end 0|to end 1|to end 2|whole before not owned|will do',
      ],
      [
        -0.2,
        'ahead 20|ahead 60|ahead far|at the start|bare|bare before|bare earlier|closes two|followed near|from start far|held in the sentence|in setup|last of more|later|later not owned|loose earlier|opens ten|opens three|opens two|past 15|role chat|row|short sentence|sure before not owned|taken back|to end 3',
      ],
      [
        -0.3,
        'ahead none|before|before not owned|earlier|earlier not owned|fields reps|longer sentence|loose|loose main|main not owned|right behind the one before|role work|told',
      ],
      [-0.4, 'at later|closes one|no name|opens one|to end some'],
    ],
    span: [
      [1.3, 'sure loose'],
      [1.2, 'before word dumbbell|behind word third'],
      [0.8, 'before word for|closes eight|from start some'],
      [0.7, 'by then|opens eight|opens ten|opens twenty'],
      [
        0.6,
        'before word at|before word fifteen|behind word does|behind word just|closes 10|closes ten|opens 10|row counts level',
      ],
      [0.5, 'before word eleven|before word if|before word on|before word the|behind word do|closes twenty'],
      [
        0.4,
        'before word two|behind word and|behind word or|in breathing|past 60|row counts|row counts then|row level|row then',
      ],
      [
        0.3,
        'before word its|behind word go|behind word it|behind word then|behind word two|behind word weeks|closes five|closes off|common|fields workSeconds restSeconds|opens five|row main|row rising|taken back',
      ],
      [
        0.2,
        'behind word nine|by or|corrects|corrects later not owned|in harder|later|later not owned|opens two|row|row of 3|sure later not owned|to end far',
      ],
      [
        0.1,
        'ahead none|before word and|behind|behind not owned|condition|corrects behind not owned|of intervals|opens six|role chat|sure behind not owned|to end some',
      ],
      [
        -0.1,
        'a neighbour named|at later|at the start|bare|bare main|bare return|before|before not owned|before word again|before word back|before word chins|before word cleans|before word degrees|before word dont|before word fall|before word five|before word good|before word hinge|before word hold|before word i|before word in|before word kilos|before word let|before word more|before word nine|before word no|before word off|before word one|before word rest|before word same|before word shoulders|before word sit|before word six|before word ten|before word thats|before word then|before word three|before word to|before word work|before word you|behind word 9|behind word about|behind word at|behind word back|behind word down|behind word eight|behind word if|behind word in|behind word last|behind word not|behind word of|behind word on|behind word side|behind word six|behind word so|behind word that|behind word the|behind word was|behind word your|closes 3|closes 6|closes 8|closes forty|closes nine|closes seconds|closes seven|closes sixty|closes thirty|closes through|closes twelve|corrects earlier not owned|earlier|earlier not owned|fields reps|first of more|followed later|for all|from start 0|from start 2|in caution|in range|in setup|in turns|instead earlier|instead return|loose|loose main|main not owned|named in the sentence before|no name|only others named around|opens 4|opens 6|opens a|opens its|opens nine|opens ninety|opens seven|opens sixty|opens thirty|opens twelve|past 15|rising|role move|role teach|rounds|row falling|said for all|said for all before|sure before not owned|sure earlier not owned|sure return owned|sure sure|whole before not owned|whole earlier not owned',
      ],
      [
        -0.2,
        'ahead far|before word four|before word of|behind word five|behind word for|behind word one|behind word seven|behind word three|behind word up|fields sets workSeconds restSeconds|fields workSeconds|in easier|in tempo|last of more|main|named around|opens forty|per side|return|return owned|row return|told',
      ],
      [
        -0.3,
        'by if|falling|followed near|instead main|main owned|only one|past far|role work|sure main owned|to end 1|to end 2|will do',
      ],
      [
        -0.4,
        'behind word four|by near|from start far|held in the sentence|loose sure|opens four|short sentence|to end 0',
      ],
      [-0.5, 'closes one|instead|opens three'],
      [-0.6, 'loose loose|opens one|row comma|row counts comma'],
      [-0.7, 'closes two'],
    ],
    'as hold': [
      [0.9, 'to end far'],
      [0.8, 'closes twenty|opens thirty|opens twenty|row then|whole main owned'],
      [0.7, 'before word both|closes leg|from start some|row rising|words of the name|words of the name, not named'],
      [
        0.6,
        'ahead 180|before word if|behind word bear|behind word brenda|fields sets workSeconds restSeconds|from start 3|only one|opens two|role teach|row main|row of 3|row up to',
      ],
      [
        0.5,
        'before word breathe|before word for|behind word lets|closes between|last of more|main|main owned|named in the sentence before|sure main owned',
      ],
      [
        0.4,
        'before word each|before word just|before word round|before word stop|closes forty|closes times|closes twice|common|corrects main owned|opens ten|past 60|sided true|sure later not owned',
      ],
      [
        0.3,
        'bare main|before word at|before word its|before word on|before word with|behind word do|behind word there|behind word well|behind word your|fields sets reps workSeconds restSeconds|in clauses|named around|opens 25|opens forty|opens nine|opens say|per side|row|short sentence|told|whole earlier not owned',
      ],
      [
        0.2,
        'before owned|before word please|before word youll|behind owned|behind word climb|behind word eight|behind word its|behind word mat|behind word shame|behind word ten|behind word up|between|closes side|corrects|fields sets workSeconds|instead main|longer sentence|loose main|main not owned|named before 0|opens so|role work|sure before owned|sure behind owned|whole before owned',
      ],
      [
        0.1,
        'a neighbour named|at the start|before word anybody|before word back|before word cons|before word squeeze|before word there|behind|behind word floor|behind word holds|behind word isnt|behind word long|behind word planks|behind word supports|behind word thats|behind word the|behind word twenty|closes air|closes fifteen|closes ten|closes thirty|fields reps workSeconds|later|later not owned|named before|nearest before|opens circuit|opens then|past 5|row or|sided unknown',
      ],
      [
        -0.1,
        'ahead 6|ahead none|another nearer|bare|bare before|bare behind|bare earlier|bare return|before word after|before word bend|before word cleans|before word dont|before word every|before word five|before word ive|before word lie|before word off|before word pull|before word ring|before word thirty|before word to|behind not owned|behind word a|behind word and|behind word ankles|behind word each|behind word finisher|behind word lean|behind word minute|behind word ones|behind word only|behind word pair|behind word plank|behind word prop|behind word rest|behind word row|behind word said|behind word six|behind word swings|behind word then|behind word tonight|behind word was|behind word with|closes 6|closes fifty|closes hand|closes it|closes laps|closes off|closes one|closes over|closes stations|closes through|corrects earlier not owned|fields sets reps workSeconds|fields workSeconds|for all|from start 1|in caution|in execution|instead|instead before|instead earlier|instead return|loose|loose before|loose behind|loose earlier|loose return|named before 3|named before another between|opens 10|opens 15|opens 3|opens bench|opens ninety|others named|return owned|right behind the one before|role chat|rounds|row before|row earlier|row return|said before|said for all|said for all before|sure earlier not owned|sure return not owned|sure return owned|whole before not owned|whole return not owned',
      ],
      [
        -0.2,
        'ahead 60|bare later|before|before word and|before word hang|before word im|before word left|before word no|before word s|before word shake|before word stood|behind word down|behind word is|behind word it|behind word records|behind word that|behind word waistband|closes half|condition|earlier|earlier not owned|fields workSeconds restSeconds|in turns|loose later|opens a|opens fifteen|opens five|past 15|return|return not owned|right behind another|row counts level|row later|row of 2|sided false|sure before not owned|to end 3',
      ],
      [
        -0.3,
        'before not owned|before word of|closes goes|closes minutes|first of more|followed later|in tempo|no name|opens four|opens three|row counts|to end 2|whole later not owned',
      ],
      [
        -0.4,
        'closes minute|closes two|only others named around|others in the sentence before|past far|to end 0|to end some',
      ],
      [-0.5, 'ahead far|at later|followed near|opens eight|opens one|row comma'],
      [-0.6, 'behind word for|closes seconds|opens 20|opens 30|row falling|row level'],
      [-0.7, 'taken back'],
    ],
    'as work': [
      [
        0.1,
        'before word bicycles|behind word hollow|closes round|fields sets holdSeconds restSeconds|in turns|named around|named behind|named behind far|nearest behind|opens then|rounds|said for all|said for all before|words of the name',
      ],
      [
        -0.1,
        'a neighbour named|ahead 60|at later|before word and|fields holdSeconds|held in the sentence|longer sentence|main|main owned|no name|only one|only others named around|opens hold|others in the sentence before|others named|role teach|role work|sure main owned|told',
      ],
    ],
    'in rep': [
      [0.4, 'holdSeconds still|role chat'],
      [0.3, 'longer sentence|only one|per side|stretch true|to end far'],
      [
        0.2,
        'fields reps holdSeconds|from start 2|held in the sentence|holdSeconds of reps holdSeconds|main|main owned|only others named around|sure main owned|told',
      ],
      [
        0.1,
        'ahead far|at the start|before|before not owned|before word and|behind word just|closes time|fields sets reps holdSeconds|from start 3|holdSeconds of sets reps holdSeconds|opens eight|others in the sentence before|sure before not owned|whole before not owned',
      ],
      [
        -0.1,
        'ahead 180|at later|before word dont|behind word long|closes seconds|earlier|earlier not owned|for all|from start far|holdSeconds moving|in tempo|opens its|role teach|role work|stretch unknown|sure earlier not owned',
      ],
      [-0.2, 'stretch false'],
    ],
  },
  hold: {
    option: [
      [1.3, 'to 3'],
      [1.1, 'to 5'],
      [0.5, 'none'],
      [0.4, 'none though ruled|to 2'],
      [-0.1, 'beside reps'],
      [-0.2, 'to 25'],
      [-0.3, 'beside distanceM|beside undefined|more|range|to 15|to 40'],
      [-0.4, 'beside workSeconds|to 1000|to 120'],
      [-0.5, 'to 10|to 30|to 60'],
      [-0.6, 'to 1'],
      [-0.7, 'still|to 20'],
      [-1.0, 'beside holdSeconds'],
    ],
    'from work': [
      [0.6, 'before word heel|closes sets|opens 3'],
      [0.5, 'behind word thats'],
      [0.4, 'held in the sentence'],
      [0.3, 'behind word quads'],
      [
        0.2,
        'before owned|behind word with|fields sets reps workSeconds|named in the sentence before|sure before owned|whole before owned',
      ],
      [0.1, 'before word no|from start some|opens five'],
      [
        -0.1,
        'bare before|bare behind|bare later|bare return|before word after|before word and|before word at|before word dont|before word for|before word if|before word im|before word its|before word left|before word of|before word round|before word shake|before word sitting|before word to|behind not owned|behind word and|behind word for|behind word go|behind word in|behind word is|behind word it|behind word its|behind word round|behind word stand|behind word swings|behind word take|behind word that|behind word the|behind word together|behind word wedding|behind word youve|closes fifteen|closes over|closes rounds|closes second|closes side|closes through|closes times|closes twice|fields sets reps workSeconds restSeconds|from start 2|in easier|instead before|instead earlier|instead main|loose before|loose behind|loose earlier|loose later|loose return|named before|nearest before|opens 20|opens 45|opens 6|opens eight|opens fifteen|opens half|opens one|opens sixty|opens ten|others named|past 5|return not owned|return owned|row comma|row falling|row level|row then|seated false|sided false|standing true|sure behind not owned|sure return owned|to end 0|to end 1|to end 2|whole later not owned|words of the name, not named',
      ],
      [
        -0.2,
        'ahead 20|ahead 6|bare earlier|bare main|before word in|before word on|before word then|behind|closes off|common|condition|corrects|fields sets workSeconds|fields workSeconds restSeconds|first of more|followed near|for all|in tempo|last of more|loose main|main not owned|named around|only others named around|opens 30|opens a|opens four|opens ninety|others in the sentence before|past 15|past 60|return|right behind another|row|row main|row of 2|row rising|said for all|said for all before|to end far|to end some|whole before not owned|whole earlier not owned|whole main owned|words of the name',
      ],
      [
        -0.3,
        'ahead 60|at the start|bare|before|closes minute|closes seconds|earlier|earlier not owned|fields sets workSeconds restSeconds|in turns|instead|later|later not owned|loose|only one|opens forty|opens thirty|opens three|opens twenty|opens two|past far|per side|right behind the one before|role work|rounds|sure before not owned|sure earlier not owned|sure later not owned|taken back|will do',
      ],
      [
        -0.4,
        'ahead far|ahead none|at later|before not owned|closes minutes|fields workSeconds|followed later|longer sentence|main|main owned|no name|role chat|role teach|short sentence|sure main owned|told',
      ],
      [-0.5, 'from start far'],
    ],
    said: [
      [0.8, 'only one'],
      [0.5, 'before word then|fields reps holdSeconds|main|main owned|sure main owned'],
      [0.4, 'closes seconds|from start 2|opens hold|to end some'],
      [0.3, 'before word and|closes 2|closes two|instead main|role teach|to end far'],
      [0.2, 'before word each|behind word forward|behind word to|from start 1|instead|will do'],
      [
        0.1,
        'before word dont|before word thats|behind word band|behind word go|behind word long|behind word so|closes five|closes them|corrects|corrects main owned|from start far|in clauses|in execution|last of more|opens its|opens so|opens squeeze',
      ],
      [
        -0.1,
        'a neighbour named|ahead 180|before word bicycles|before word no|behind word hollow|behind word you|closes round|closes side|closes time|condition|corrects earlier not owned|fields holdSeconds|fields sets holdSeconds|fields sets holdSeconds restSeconds|from start 3|in turns|instead earlier|named around|opens plank|opens then|others in the sentence before|others named|rounds|said for all|said for all before|short sentence|sided true|stretch true|whole main owned',
      ],
      [
        -0.2,
        'ahead 60|at the start|before|before not owned|before word keep|before word top|behind word ankles|behind word can|behind word we|closes brave|closes one|closes six|closes three|closes up|fields holdSeconds tempo|in harder|only others named around|opens stay|opens three|opens wait|per side|stretch unknown|sure before not owned|whole before not owned|with amount',
      ],
      [
        -0.3,
        'ahead far|ahead none|closes twenty|followed later|later|later not owned|past 15|right behind the one before|sure later not owned',
      ],
      [-0.4, 'first of more|followed near|for all|in tempo|longer sentence|role chat|stretch false'],
      [
        -0.5,
        'behind word nose|behind word well|earlier|earlier not owned|in breathing|opens for|role work|sure earlier not owned|taken back|told',
      ],
      [-0.7, 'at later|no name'],
    ],
    ruled: [[-0.8, 'alone|told']],
  },
  sets: {
    option: [
      [1.2, 'as before in circuit'],
      [0.7, 'in superset|to 2'],
      [0.6, 'as before in superset'],
      [0.5, 'none|none, amount said 2|to 3'],
      [0.4, 'as before|none of holdSeconds|none of reps|none, amount said 0|none, amount said 1'],
      [0.3, 'not as before in circuit'],
      [0.2, 'as 2 neighbours|in circuit|none of undefined|of distanceM|ruled|words as before'],
      [0.1, 'none of workSeconds|to 4'],
      [-0.1, 'not as before|of workSeconds|range|to 40'],
      [-0.2, 'none in circuit|none of distanceM|not as before in superset|of undefined|to 20'],
      [-0.3, 'none, amount said 3|to 120'],
      [-0.4, 'of holdSeconds|of reps|to 15'],
      [-0.5, 'to 10|to 7'],
      [-0.6, 'none though ruled|to 5'],
      [-0.7, 'none in superset|to 9'],
      [-0.8, 'to 1'],
    ],
    said: [
      [1.4, 'gap 0'],
      [1.3, 'right behind the one before|with amount'],
      [1.2, 'closes time'],
      [1.0, 'ahead 6'],
      [0.9, 'named around|to end far'],
      [0.8, 'gap 2|instead main|past 60|sided unknown|standing false'],
      [
        0.7,
        'before word ive|behind word behind|behind word its|behind word just|behind word so|common|fields sets restSeconds|opens four|past 5',
      ],
      [
        0.6,
        'before word im|behind word row|closes lots|closes minutes|closes trips|fields sets reps holdSeconds|named before|named in the sentence before|opens well|short sentence|stretch unknown|weight true',
      ],
      [
        0.5,
        'behind word presses|behind word round|behind word second|closes minute|fields sets reps workSeconds|loose before|main|main owned|opens 10|role chat|seated unknown',
      ],
      [
        0.4,
        'before word 10|before word bend|before word going|before word rings|before word second|before word two|behind|behind not owned|behind word do|behind word drive|behind word long|behind word pair|behind word the|closes hand|closes twelve|corrects|corrects later not owned|fields sets reps restSeconds|fields sets tempo|fields sets workSeconds|from start far|in caution|in harder|named before 3|opens twenty|seated true|words of the name, not named',
      ],
      [
        0.3,
        'ahead 20|bare before|before word after|before word and|before word calves|before word check|before word dont|before word elbows|before word i|before word not|before word of|before word sit|before word sitting|before word so|before word some|before word whats|behind word and|behind word heads|behind word plonk|behind word rowing|behind word stand|behind word ten|closes from|closes pair|closes up|corrects main owned|from start 3|gap -1|last of more|named before 0|nearest before|only one|opens 2|opens every|opens five|opens for|opens stretches|opens three|right behind another|stretch true|to end some|whole before owned',
      ],
      [
        0.2,
        'bare behind|before word again|before word if|before word leg|before word out|before word press|before word somebody|before word the|before word twenty|behind word are|behind word bar|behind word bounds|behind word fifteen|behind word first|behind word for|behind word menu|behind word press|behind word stands|behind word still|behind word this|behind word together|behind word with|both neighbours named|closes 5|closes 6|closes around|closes leg|closes sets|closes stations|closes them|closes those|followed later|for all|instead behind|later|later not owned|named behind 3|opens 4|opens twelve|standing unknown|sure before owned|sure earlier not owned|whole earlier not owned',
      ],
      [
        0.1,
        'another nearer|bare main|before word both|before word every|before word first|before word heavier|before word in|before word late|before word like|before word och|before word with|behind word aparts|behind word breather|behind word bugs|behind word chair|behind word done|behind word down|behind word each|behind word eight|behind word get|behind word got|behind word lets|behind word now|behind word off|behind word plank|behind word really|behind word right|behind word side|behind word sit|behind word squat|behind word squats|behind word stops|behind word then|behind word time|behind word tonight|closes 8|closes eight|closes five|closes over|closes rest|closes second|closes seconds|closes twice|from start some|gap -2|gap 1|in setup|instead|instead later|loose behind|loose main|main not owned|named before 2|named before another between|opens 90|opens and|opens call|opens eight|opens the|opens twice|others in the sentence before|sure later not owned|to end 2|told|whole later not owned|will do',
      ],
      [
        -0.1,
        'ahead 180|before|before not owned|before owned|before word between|before word bicycles|before word chin|before word for|before word itll|before word lose|before word next|before word okay|before word rest|before word then|before word three|before word to|before word walk|before word were|before word whoevers|before word you|before word youll|behind word between|behind word blank|behind word both|behind word climbers|behind word deal|behind word freezing|behind word ground|behind word hips|behind word hollow|behind word no|behind word rows|behind word skipping|behind word slides|behind word steps|behind word we|behind word well|behind word yourself|closes 4|closes between|closes done|closes lap|closes lot|closes of|closes three|closes total|closes you|condition|fields sets|fields sets holdSeconds restSeconds|fields sets reps|fields sets reps tempo|followed near|for part|from start 1|from start 2|gap -3|in breathing|in tempo|longer sentence|named before far|named behind|named behind 0|opens 20|opens 25|opens bit|opens circuit|opens go|opens its|opens now|opens six|opens so|opens stay|per side|run false|said for all behind|said for all earlier|stretch false|sure before not owned|sure behind owned|sure main not owned|sure return owned|to end 3|whole behind not owned|whole behind owned|whole main not owned|whole return owned',
      ],
      [
        -0.2,
        'ahead 60|at later|at the start|bare|before word bench|before word go|before word its|before word one|before word rows|before word step|before word we|behind word a|behind word bench|behind word forth|behind word had|behind word his|behind word it|behind word leg|behind word many|behind word out|behind word says|closes 12|closes laps|closes set|closes side|closes six|closes these|closes two|corrects earlier not owned|corrects return owned|fields sets holdSeconds|instead before|loose|named before some|named behind far|named behind some|opens 3|opens 8|opens forty|opens once|opens one|opens sixty|opens thirty|opens two|past 15|return not owned|role work|sure behind not owned|taken back|to end 1|weight false|whole before not owned',
      ],
      [
        -0.3,
        'bare later|before word as|before word eight|before word hang|before word here|before word off|before word put|before word round|before word written|behind word circuit|behind word hung|behind word jog|behind word mat|behind word supports|behind word to|behind word wrote|between|closes 10|closes again|closes altogether|closes ten|closes turn|loose later|opens a|opens change|opens hold|opens ten|role teach|said for all before|sided true|standing true|sure return not owned|whole return not owned',
      ],
      [
        -0.4,
        'a neighbour named|before word but|before word us|behind word back|behind word drills|behind word little|behind word outs|behind word planned|behind word was|closes do|closes times|closes ups|earlier|earlier not owned|fields sets reps workSeconds restSeconds|opens fifteen|opens set|opens then|return owned|seated false',
      ],
      [
        -0.5,
        'bare earlier|before word bit|before word have|before word on|behind word again|behind word bear|behind word fence|behind word go|closes metres|in execution|loose earlier|opens 30|others named|return|said for all',
      ],
      [-0.6, 'before word turn|before word your|gap behind|held in the sentence|only others named around|sided false'],
      [
        -0.7,
        'ahead far|before word no|behind word lifts|behind word that|behind word thats|closes round|fields sets distanceM|gap 3',
      ],
      [-0.8, 'before word a|gap before'],
      [-0.9, 'behind word said|fields sets workSeconds restSeconds|instead earlier|to end 0'],
      [-1.0, 'past far'],
      [-1.2, 'said before'],
    ],
    'from reps': [
      [1.0, 'fields reps restSeconds'],
      [0.9, 'only one'],
      [0.8, 'behind word want|gap 0'],
      [0.6, 'before word dont|closes times|opens two'],
      [0.5, 'closes between|opens each|opens four|opens three|past 5|sure main owned'],
      [
        0.4,
        'a neighbour named|before word first|before word round|behind word bent|behind word of|behind word them|closes 3|closes goes|closes lengths|closes stroke|from start some|instead before|longer sentence|to end far',
      ],
      [
        0.3,
        'ahead 60|before word i|behind not owned|closes off|closes twice|gap 1|main|main owned|named in the sentence before|opens twice|sure behind not owned',
      ],
      [
        0.2,
        'before word so|behind|behind word little|behind word out|closes turns|followed later|from start 1|from start 2|gap -1|gap 2|in turns|instead|opens do|role chat|run true|seated unknown|to end 1|to end some|will do|words of the name',
      ],
      [
        0.1,
        'ahead none|at the start|before word and|before word back|before word breathe|before word find|before word land|behind word back|behind word do|behind word down|behind word ladder|behind word menu|behind word pairs|behind word rings|behind word sides|behind word so|behind word still|behind word thats|behind word three|behind word up|closes all|closes altogether|closes plenty|closes them|closes ups|corrects main owned|from start 3|in focus|opens 5|opens its|opens threes|past 60|rounds|words of the name, not named',
      ],
      [
        -0.1,
        'ahead 6|bare main|bare return|before word a|before word each|before word feel|before word in|before word no|before word right|before word same|before word tailbone|before word than|before word three|before word unless|behind word are|behind word for|behind word gets|behind word goes|behind word it|behind word row|behind word seconds|behind word see|behind word sit|behind word straight|behind word take|both neighbours named|closes different|closes do|closes down|closes lines|closes press|closes seconds|closes side|closes stands|closes those|corrects before not owned|corrects earlier not owned|fields reps distanceM|fields reps workSeconds|followed near|gap -2|gap -3|gap 3|in equipment|in setup|last of more|named before|named behind|nearest behind|only others named around|opens 3|opens 4|opens a|opens and|opens couple|opens sixes|opens thats|others named|return|return owned|said for all|said for all before|sided false|sided true|stretch false|to end 0|to end 2|told|weight false',
      ],
      [
        -0.2,
        'ahead 180|ahead far|another nearer|before|before not owned|before word if|before word its|before word thats|before word this|behind word nose|closes breaths|closes ones|closes strides|corrects|for part|from start far|held in the sentence|in execution|instead main|named around|named before far|no name|opens 2|opens change|past 15|past far|right behind another|right behind the one before|role teach|role work|run false|sure before not owned|to end 3',
      ],
      [
        -0.3,
        'bare|before word of|behind word to|between|closes five|closes four|closes six|condition|counted name|earlier|earlier not owned|fields reps|fields reps tempo|for all|in breathing|opens one|sure earlier not owned',
      ],
      [-0.4, 'ahead 20|first of more|per side'],
      [-0.5, 'at later|closes three|in caution|opens five|opens six|taken back'],
      [-0.6, 'in tempo|opens for'],
      [-0.7, 'gap behind|short sentence'],
      [-0.8, 'gap before'],
    ],
    ruled: [[-0.7, 'alone|told']],
    'as they come': [
      [1.3, 'second main'],
      [1.1, 'another return'],
      [0.7, 'again main|third return'],
      [0.3, 'told'],
      [-0.2, 'again return'],
      [-0.4, 'another main|third main'],
      [-0.7, 'more return'],
      [-0.9, 'second return'],
      [-1.2, 'again behind'],
    ],
    returns: [
      [0.1, '2'],
      [-0.3, '1'],
      [-0.5, '3'],
      [-0.7, 'told'],
    ],
    steps: [[0.2, 'so many|told']],
  },
  sides: {
    option: [
      [1.3, 'ruled'],
      [1.2, 'both told|said main'],
      [1.1, 'side with'],
      [0.9, 'sided true'],
      [0.8, 'with amount'],
      [0.7, 'both told, sided|way with'],
      [0.4, 'arm with|leg|said earlier'],
      [0.3, 'alone|arm|leg with'],
      [0.2, 'apart'],
      [0.1, 'of undefined|said before|said behind'],
      [-0.1, 'sides'],
      [-0.2, 'foot'],
      [-0.3, 'each|of distanceM|sided unknown'],
      [-0.4, 'each with|of holdSeconds|other with|said return'],
      [-0.5, 'said later'],
      [-0.7, 'sides with'],
      [-0.9, 'of reps'],
      [-1.0, 'amount without side|side'],
      [-1.1, 'sided false'],
      [-1.4, 'of workSeconds'],
    ],
  },
  rest: {
    option: [
      [1.3, 'as before in circuit'],
      [0.9, 'in superset|to 120'],
      [0.7, 'as before'],
      [0.5, 'in circuit|not as before in superset'],
      [0.4, 'as before in superset|none though ruled|to 15|words as before'],
      [0.3, 'none|ruled|to 30|to 60'],
      [0.2, 'to 20'],
      [0.1, 'not as before'],
      [-0.1, 'not as before in circuit'],
      [-0.3, 'more'],
      [-0.4, 'to 2'],
      [-0.5, 'none in circuit|to 1000'],
      [-0.6, 'to 40|to 5'],
      [-0.7, 'to 7'],
      [-0.9, 'none in superset'],
    ],
    said: [
      [1.7, 'with amount'],
      [1.3, 'ahead 6'],
      [1.2, 'past 60'],
      [1.0, 'named around|sided unknown'],
      [0.9, 'only one'],
      [0.8, 'before word dont|main owned|opens a|to end far|words of the name'],
      [0.7, 'fields reps restSeconds|words of the name, not named'],
      [0.6, 'named in the sentence before|past 5|seated unknown'],
      [
        0.5,
        'before word after|behind word you|both neighbours named|common|instead main|main|seated false|to end some',
      ],
      [0.4, 'behind word then|closes between|corrects main owned|from start far|short sentence'],
      [
        0.3,
        'another nearer|before word both|before word hang|before word one|before word so|behind word circuit|behind word mat|behind word presses|closes minutes|closes second|corrects|corrects before not owned|from start some|opens make|opens ninety|opens rest|opens three|role teach|sure later not owned',
      ],
      [
        0.2,
        'ahead 20|before word cons|before word hug|before word i|behind owned|behind word deal|behind word floor|behind word round|behind word rows|behind word supports|behind word we|closes air|closes nothing|closes three|last of more|later not owned|named before another between|opens bit|opens go',
      ],
      [
        0.1,
        'a neighbour named|at the start|before word between|before word did|before word done|before word first|before word go|before word im|before word in|before word knees|before word on|before word proper|before word ring|before word rings|before word rows|before word shake|before word sit|before word sixteen|before word three|before word your|behind word between|behind word climbers|behind word get|behind word ground|behind word its|behind word pair|behind word press|behind word so|behind word that|behind word thats|behind word time|behind word two|closes done|closes laps|closes off|closes seconds|closes side|closes through|corrects main not owned|counted name|fields restSeconds|from start 1|in execution|in turns|instead|instead before|later|named before some|opens and|opens fifteen|opens take|opens then|opens thirty|opens twelve|opens twice|role chat|rounds|seated true|sure earlier not owned|weight true|whole before owned',
      ],
      [
        -0.1,
        'ahead 60|before owned|before word and|before word bicycles|before word every|before word have|before word if|before word operated|before word when|before word whos|behind word 2|behind word bear|behind word hips|behind word hollow|behind word neither|behind word other|behind word said|behind word squat|behind word steps|behind word tonight|between|closes both|closes half|closes rest|closes round|closes sets|closes times|closes twice|corrects earlier not owned|corrects later not owned|fields sets holdSeconds restSeconds|fields sets workSeconds restSeconds|followed near|for all|instead later|opens 20|opens 4|opens circuit|opens forty|opens now|opens so|opens two|return|return not owned|return owned|said for all behind|said for all earlier|sure before owned|whole main owned',
      ],
      [
        -0.2,
        'before word breathe|before word its|before word not|before word round|before word these|before word weights|behind not owned|behind word and|behind word it|behind word plank|behind word really|behind word sorry|behind word them|behind word weights|behind word wood|closes lap|fields sets reps restSeconds|held in the sentence|in breathing|in tempo|instead behind|opens for|role end|role work|said for all|sure main owned|to end 2|told|weight unknown|whole earlier not owned|whole later not owned',
      ],
      [
        -0.3,
        'before|before not owned|before word no|before word off|before word you|behind word go|behind word side|behind word stops|closes each|closes rounds|fields sets reps workSeconds restSeconds|fields workSeconds restSeconds|first of more|followed later|instead earlier|longer sentence|nearest before|no name|opens twenty|sided true|to end 0|will do',
      ],
      [
        -0.4,
        'before word ill|before word then|behind word of|behind word swings|corrects behind not owned|earlier|earlier not owned|opens 30|opens water|sided false|weight false',
      ],
      [-0.5, 'before word the|behind word eight|others named|past 15|per side|sure behind not owned'],
      [-0.6, 'at later|main not owned|opens sixty'],
      [-0.7, 'ahead 180|only others named around|opens 3|right behind another|to end 1'],
      [-0.8, 'ahead far'],
      [-1.0, 'past far'],
    ],
    'from work': [
      [1.1, 'before word between'],
      [0.8, 'ahead 20|common|opens half'],
      [0.7, 'ahead 6|whole earlier not owned'],
      [0.6, 'only one|past 60|words of the name'],
      [0.5, 'behind word then|behind word with|words of the name, not named'],
      [0.4, 'closes over|followed later|instead before|named around|opens 4|opens two|seated true|taken back'],
      [
        0.3,
        'before word go|before word i|before word on|before word thats|behind word and|closes minute|closes seconds|first of more|from start 2|instead main|named in the sentence before|opens twenty|return|to end 3',
      ],
      [
        0.2,
        'bare behind|bare main|bare return|before owned|before word bend|before word five|before word then|behind word ankles|behind word only|behind word pair|behind word the|closes hand|condition|held in the sentence|in turns|instead|loose behind|loose main|loose return|main|main not owned|nearest before|opens sixty|return not owned|rounds|seated unknown|sure before owned|to end 1|to end 2',
      ],
      [
        0.1,
        'before word im|before word shift|before word sitting|before word take|before word when|behind word circuit|behind word rest|behind word stand|behind word stands|behind word your|closes half|fields sets reps workSeconds|from start some|instead earlier|named before|named before some|opens forty|opens three|past 5|return owned|sure earlier not owned|sure main owned|sure return owned|to end 0|will do',
      ],
      [
        -0.1,
        'ahead none|bare|before word at|before word each|before word for|before word off|before word shake|before word to|before word with|behind word in|behind word lap|behind word long|behind word no|behind word row|behind word things|behind word well|closes each|closes three|closes twenty|corrects|corrects main owned|fields sets workSeconds|longer sentence|opens 20|opens circuit|opens fifty|opens say|opens well|per side|role teach|row of 3|row of 4|row return|row then|row up to|standing false|standing true|sure later not owned|to end some|whole behind not owned|whole main owned',
      ],
      [
        -0.2,
        'bare before|bare later|before|before word after|before word check|before word in|before word left|before word rest|behind|behind not owned|behind word down|behind word go|behind word morning|behind word ones|behind word remember|behind word up|closes between|closes fifteen|closes swap|earlier|earlier not owned|from start far|instead behind|loose before|loose later|opens 45|opens ninety|opens one|opens ten|others in the sentence before|right behind the one before|row falling|row level|short sentence|told|whole later not owned',
      ],
      [
        -0.3,
        'ahead 60|bare earlier|before word of|behind word it|behind word its|behind word records|behind word that|later|later not owned|loose earlier|no name|opens 40|opens five|role work|row comma|sure before not owned',
      ],
      [
        -0.4,
        'a neighbour named|ahead 180|before not owned|before word now|before word there|from start 3|instead later|last of more|opens a|others named|right behind another|row of 2|row rising|sure behind not owned|to end far',
      ],
      [-0.5, 'at the start|closes minutes|only others named around|opens four|row main'],
      [-0.6, 'behind word for|opens thirty|row'],
      [-0.7, 'before word and|fields workSeconds|followed near|seated false'],
      [-0.8, 'past far'],
      [-0.9, 'ahead far'],
    ],
  },
}
