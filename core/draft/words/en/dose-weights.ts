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
      [1.2, 'as before in circuit'],
      [1.0, 'called hold holdSeconds|times said 0'],
      [0.9, 'called march workSeconds|holdSeconds range|none main 0'],
      [
        0.8,
        'as neighbour workSeconds|called rais reps|circuit workSeconds|distanceM to 1000|none sure false|reps range|run distanceM',
      ],
      [
        0.7,
        'called bear holdSeconds|called support holdSeconds|distanceM to 20|holdSeconds to 20|holdSeconds to 40|isometric holdSeconds|lunge workSeconds|none|reps to 10|reps to 5|squat reps',
      ],
      [
        0.6,
        'called curl workSeconds|called prop holdSeconds|called quad reps|called skip distanceM|called stay reps|carry distanceM|holdSeconds to 120|holdSeconds to 15|jump distanceM|not as before in circuit|reps to 7|row-machine workSeconds|ruled workSeconds|workSeconds to 30',
      ],
      [
        0.5,
        'as neighbour distanceM|called carry distanceM|called deadlift reps|called dish reps|called door reps|called set reps|called squat reps|called the reps|called up reps|distanceM to 30|heel-raise reps|jump workSeconds|kind distanceM|lunge reps|none main 1|none though ruled|not as before|pull reps|reps to 12|reps to 9|superset reps|swing-kit workSeconds|workSeconds to 60',
      ],
      [
        0.4,
        'as before in superset|balance reps|called box workSeconds|called bridge holdSeconds|called cat reps|called climber workSeconds|called com holdSeconds|called crawl workSeconds|called cushion reps|called drag workSeconds|called floor holdSeconds|called floor reps|called kne workSeconds|called leg reps|called lunge workSeconds|called raise reps|called row reps|called slid holdSeconds|called strid holdSeconds|called walk distanceM|called your holdSeconds|holdSeconds to 30|known distanceM|known still holdSeconds|push reps|reps max|reps to 15|reps to 20|ruled main|spine-flexion reps|step workSeconds|still holdSeconds|wide-legs workSeconds',
      ],
      [
        0.3,
        'called cow holdSeconds|called flamingo holdSeconds|called ladder workSeconds|called plank holdSeconds|called pogo reps|called right workSeconds|called side holdSeconds|called sit holdSeconds|called step workSeconds|called straighten reps|called sw holdSeconds|called swimmer workSeconds|called tree workSeconds|called up workSeconds|circuit distanceM|curl-up workSeconds|holdSeconds to 10|not as before in superset|overhead reps|ruled|ruled behind|ruled reps|sit-to-stand reps|spine-extension workSeconds',
      ],
      [
        0.2,
        'ballistic holdSeconds|called beetle holdSeconds|called bell reps|called bend reps|called bit holdSeconds|called bound distanceM|called bug workSeconds|called ceil holdSeconds|called chop workSeconds|called cow reps|called dip reps|called dog reps|called fellow reps|called gate holdSeconds|called needle reps|called off reps|called okay reps|called optimistic holdSeconds|called palloff reps|called pres holdSeconds|called pres workSeconds|called pull-up reps|called punch workSeconds|called roe reps|called shrug reps|called sprawl reps|called squat workSeconds|called stage reps|called stand reps|called statue holdSeconds|called superman workSeconds|called swing workSeconds|called tuck holdSeconds|called walk workSeconds|deep-hip reps|distanceM to 5|hinge distanceM|hinge reps|hip-rotation workSeconds|isometric reps|load-over-face reps|overhead holdSeconds|push workSeconds|spine-extension holdSeconds|superset workSeconds',
      ],
      [
        0.1,
        'breathing reps|called 500 distanceM|called apart reps|called balcony holdSeconds|called bar reps|called bench reps|called bicycl workSeconds|called body reps|called breath reps|called bug reps|called cabinet reps|called canoe reps|called climb reps|called crawl distanceM|called curl-up reps|called dock reps|called four reps|called greenhouse reps|called hang holdSeconds|called hanger workSeconds|called hollow holdSeconds|called jog distanceM|called jog workSeconds|called kick distanceM|called kneel holdSeconds|called lever reps|called lift reps|called lower reps|called lower workSeconds|called lunch workSeconds|called lung reps|called lunge reps|called messag distanceM|called patter distanceM|called pelican holdSeconds|called plank reps|called please reps|called press holdSeconds|called press-up reps|called pump reps|called push-up reps|called push-up workSeconds|called row workSeconds|called shopp distanceM|called slide reps|called so reps|called step reps|called step-up reps|called swimm reps|called thi reps|called to reps|called wall reps|called with reps|curl-up holdSeconds|curl-up reps|distanceM to 120|hinge holdSeconds|leg-lowering holdSeconds|push distanceM|ruled holdSeconds|run workSeconds|spine-extension reps|wide-legs holdSeconds',
      ],
      [
        -0.1,
        "as neighbour holdSeconds|as neighbour reps|balance holdSeconds|balance workSeconds|ballistic reps|breathing workSeconds|called 500 reps|called back holdSeconds|called balcony reps|called bat holdSeconds|called bat reps|called beetle reps|called bit reps|called bit workSeconds|called body holdSeconds|called bound workSeconds|called breath workSeconds|called bridg reps|called bridg workSeconds|called broomstick reps|called cat holdSeconds|called chest holdSeconds|called climb holdSeconds|called climber holdSeconds|called climber reps|called cow workSeconds|called curl-up workSeconds|called dip holdSeconds|called dock holdSeconds|called dog holdSeconds|called down reps|called drag holdSeconds|called drag reps|called feet reps|called gate reps|called gate workSeconds|called hand holdSeconds|called hand reps|called hinge holdSeconds|called hydrant reps|called jog reps|called ladder distanceM|called ladder holdSeconds|called leg workSeconds|called lift distanceM|called lift holdSeconds|called lunge holdSeconds|called messag reps|called morn reps|called off holdSeconds|called okay holdSeconds|called opener workSeconds|called optimistic workSeconds|called paddle reps|called pelican reps|called plat holdSeconds|called pose workSeconds|called press workSeconds|called pull holdSeconds|called pull workSeconds|called pump holdSeconds|called pump workSeconds|called punch holdSeconds|called punch reps|called rais holdSeconds|called rais workSeconds|called right holdSeconds|called right reps|called rock holdSeconds|called roe workSeconds|called round reps|called row distanceM|called row holdSeconds|called shift workSeconds|called shopp reps|called shrug holdSeconds|called sit reps|called sit workSeconds|called skip holdSeconds|called slid workSeconds|called slide holdSeconds|called sorted reps|called sprawl workSeconds|called straighten holdSeconds|called straighten workSeconds|called strid reps|called strid workSeconds|called superman holdSeconds|called support workSeconds|called swing holdSeconds|called thrust workSeconds|called tilt holdSeconds|called to holdSeconds|called tree reps|called tuck reps|called tuck workSeconds|called walk holdSeconds|called walk' reps|called water holdSeconds|called water reps|called wrist holdSeconds|called your reps|carry workSeconds|circuit holdSeconds|deep-knee distanceM|holdSeconds more|isometric workSeconds|load-over-face workSeconds|lunge holdSeconds|reps to 1000|ruled distanceM|ruled earlier|sit-to-stand holdSeconds|sit-to-stand workSeconds|spine-rotation reps|squat distanceM|step distanceM|step holdSeconds|swing-kit holdSeconds|times said 3|workSeconds to 12|workSeconds to 4|workSeconds to 7",
      ],
      [
        -0.2,
        'called box holdSeconds|called box reps|called bug holdSeconds|called ceil workSeconds|called crawl reps|called deadlift holdSeconds|called flamingo reps|called handstand holdSeconds|called hang reps|called hinge reps|called hydrant workSeconds|called kne holdSeconds|called ladder reps|called lift workSeconds|called palloff holdSeconds|called plank workSeconds|called pogo distanceM|called pose reps|called pull-up workSeconds|called raise holdSeconds|called rock reps|called side reps|called skip reps|called skip workSeconds|called squat holdSeconds|called stand workSeconds|called statue reps|called stay holdSeconds|called strid distanceM|called swimmer reps|called tree holdSeconds|called water workSeconds|called wrist reps|deep-hip workSeconds|deep-knee workSeconds|distanceM range|distanceM to 3|distanceM to 60|hinge workSeconds|hip-rotation holdSeconds|holdSeconds to 12|holdSeconds to 4|jump reps|pull distanceM|reps to 25|row-machine holdSeconds|squat workSeconds|swing-kit reps|workSeconds to 3|workSeconds to 9',
      ],
      [
        -0.3,
        'called bat workSeconds|called bridg holdSeconds|called bridge reps|called broom reps|called com reps|called curl reps|called cushion holdSeconds|called hold workSeconds|called kne reps|called march holdSeconds|called quad holdSeconds|called roll reps|called set holdSeconds|called stay workSeconds|called stretch holdSeconds|called sw reps|called twist holdSeconds|called twist reps|called twist workSeconds|called up holdSeconds|called your workSeconds|circuit reps|deep-knee holdSeconds|distanceM to 15|holdSeconds to 25|holdSeconds to 7|holdSeconds to 9|kind holdSeconds|none main 2|none main 3|ruled return|superset holdSeconds|workSeconds more|workSeconds range|workSeconds to 1|workSeconds to 1000|workSeconds to 2|workSeconds to 5',
      ],
      [
        -0.4,
        'called bridge workSeconds|called feet workSeconds|called floor workSeconds|called hold reps|called march reps|called opener holdSeconds|called opener reps|called pose holdSeconds|called stretch workSeconds|called tap reps|called the workSeconds|deep-hip holdSeconds|deep-knee reps|holdSeconds to 1|jump holdSeconds|kind workSeconds|known holdSeconds|overhead workSeconds|ruled later|spine-flexion holdSeconds|spine-flexion workSeconds|spine-rotation holdSeconds|times said 2|wide-legs reps|workSeconds to 120|workSeconds to 20',
      ],
      [
        -0.5,
        'called bear reps|called bik reps|called carry reps|called dish holdSeconds|called down workSeconds|called plat reps|called stretch distanceM|called support reps|called th reps|circles reps|holdSeconds to 60|none sure true|pull holdSeconds|reps to 30|row-machine reps|still workSeconds|stretch distanceM|stretch holdSeconds|workSeconds to 15',
      ],
      [
        -0.6,
        'carry reps|distanceM more|holdSeconds to 2|holdSeconds to 3|known still distanceM|known still reps|known still workSeconds|reps to 60|run reps|still distanceM|stretch reps|stretch workSeconds|words as before|workSeconds to 10|workSeconds to 25',
      ],
      [-0.7, 'called slid reps|holdSeconds to 1000|reps to 40|still reps|times said 1'],
      [-0.8, 'balance distanceM|called stretch reps|reps to 120|reps to 3'],
      [-0.9, 'called walk reps|holdSeconds to 5|none in circuit|none in superset'],
      [-1.0, 'reps to 1|reps to 2'],
    ],
    said: [
      [1.3, 'before word with'],
      [1.2, 'closes breaths|named in the sentence before'],
      [1.1, 'before owned|behind word and|behind word was|closes fifteen|named around'],
      [1.0, 'before word all|before word as|before word rest|closes eight|closes twelve|words of the name, not named'],
      [0.9, 'behind word its|closes each|opens 10|opens 12|opens eight|sided true'],
      [
        0.8,
        'before word bounces|before word one|behind word ladder|behind word ten|behind word thats|from start some|opens 4|opens every|words of the name',
      ],
      [
        0.7,
        'before word rack|behind word clock|behind word cushion|behind word faces|behind word is|closes sixteen|closes squeezes|fields sets reps restSeconds|from start 3|only one|opens 40|reps of reps workSeconds|reps of sets reps restSeconds|to end far',
      ],
      [
        0.6,
        'a neighbour named|before word change|before word long|before word right|behind word are|behind word nine|behind word outside|behind word today|closes fives|closes minutes|closes ten|closes told|fields sets workSeconds restSeconds|fields workSeconds restSeconds|instead main|last of more|main|main owned|opens 15|opens 20|opens sixteen|row rising|run true|weight true|will do|workSeconds of sets workSeconds restSeconds|workSeconds of workSeconds restSeconds',
      ],
      [
        0.5,
        'ahead 6|before word come|before word cone|before word each|before word on|before word rate|before word rows|before word so|before word still|behind word between|behind word bit|behind word bounds|behind word eleven|behind word me|behind word presses|behind word that|behind word times|behind word ups|closes 12|closes eights|closes minute|corrects|fields reps holdSeconds|in clauses|instead before|opens 80|opens eights|past 5|reps of reps holdSeconds|right behind another|role move|row level|row of 3|row up to|said for all before',
      ],
      [
        0.4,
        'bare later|bare return|before word an|before word cleans|before word forward|before word if|before word just|before word okay|before word only|before word quick|before word there|behind word ankles|behind word climbers|behind word from|behind word it|behind word many|behind word mat|behind word press|behind word rope|behind word stretch|behind word waistband|behind word with|closes 20|closes 4|closes 8|closes five|closes meters|closes pair|closes sets|closes sides|distanceM of distanceM|distanceM of sets distanceM|fields distanceM|fields sets distanceM|from start 2|loose later|named before far|opens 2|opens 8|opens a|opens and|opens eighty|opens fives|opens mini|opens same|opens six|past far|per side|row before|row then|run unknown|sided unknown|to end some',
      ],
      [
        0.3,
        'before word 15|before word a|before word after|before word chins|before word every|before word from|before word heavier|before word into|before word jog|before word ring|before word s|before word same|before word since|before word sixteen|before word slippy|before word thats|before word twenty|before word whats|before word wiggle|behind not owned|behind word 400s|behind word burpees|behind word deadlifts|behind word go|behind word goes|behind word rowing|behind word small|behind word so|behind word stand|behind word theyre|behind word usual|behind word your|both neighbours named|closes 10|closes 15|closes drawers|closes pushups|closes rows|closes side|closes those|common|fields reps workSeconds|fields sets reps|fields sets workSeconds distanceM|later owned|longer sentence|named behind far|nearest before|opens 30|opens as|opens its|opens so|opens twelve|opens twenty|reps of sets reps|role work|said for all|standing true|told|workSeconds moving',
      ],
      [
        0.2,
        'ahead 20|bare behind|before word and|before word bench|before word between|before word clocks|before word cons|before word depending|before word feet|before word half|before word hang|before word have|before word heels|before word ive|before word like|before word nothings|before word of|before word set|before word shake|before word step|before word switch|before word theres|before word twice|before word will|behind|behind word archer|behind word bus|behind word chest|behind word day|behind word drills|behind word early|behind word face|behind word finisher|behind word forget|behind word gets|behind word keen|behind word mes|behind word old|behind word orange|behind word pages|behind word shoulder|behind word shoulders|behind word side|behind word sides|behind word sit|behind word slack|behind word supports|behind word twenty|behind word wait|behind word were|behind word yes|closes air|closes em|closes half|closes it|closes laps|closes lunges|closes metres|closes other|closes through|closes time|closes way|from start 1|in caution|in harder|nearest behind|opens fifteen|opens i|opens id|opens static|opens stay|opens ten|opens then|reps of reps workSeconds tempo|role chat|row counts then|row earlier|to end 1',
      ],
      [
        0.1,
        'before word any|before word anybody|before word are|before word band|before word basically|before word breath|before word cos|before word farmers|before word fifteen|before word first|before word for|before word gets|before word go|before word heel|before word i|before word move|before word nice|before word other|before word park|before word pedal|before word remember|before word shoulders|before word sit|before word slow|before word start|before word tailbone|before word tens|before word the|before word waiting|before word weight|before word weights|before word whatever|before word wrists|behind word 11|behind word 19|behind word another|behind word back|behind word bands|behind word bridge|behind word cheating|behind word clever|behind word cow|behind word eh|behind word fifteen|behind word flat|behind word fourteen|behind word front|behind word goal|behind word hair|behind word hands|behind word hips|behind word if|behind word isnt|behind word lower|behind word morning|behind word move|behind word music|behind word on|behind word one|behind word ones|behind word other|behind word pause|behind word prop|behind word put|behind word rest|behind word ride|behind word rules|behind word say|behind word second|behind word sets|behind word six|behind word slide|behind word soft|behind word squat|behind word squats|behind word stands|behind word still|behind word strict|behind word t|behind word the|behind word theres|behind word tight|behind word turn|behind word way|behind word yellow|closes awake|closes do|closes down|closes from|closes go|closes left|closes otherwise|closes raises|closes same|closes squats|closes stations|closes strokes|closes total|counted name|fields reps workSeconds tempo|first of more|instead|instead behind|named before 1|named behind 0|opens call|opens drills|opens first|opens sixes|opens sixty|opens thirty|opens three|opens well|right behind the one before|row|stretch false|to end 2|unsure',
      ],
      [
        -0.1,
        'bare main|before word 11|before word 13|before word 18|before word 2|before word 3|before word 5|before word 6|before word 7|before word 8|before word anything|before word arms|before word bell|before word bikes|before word bottom|before word bring|before word calf|before word check|before word coming|before word denise|before word didnt|before word dogs|before word drink|before word dumbbell|before word feel|before word fifty|before word fourteen|before word grow|before word hands|before word here|before word im|before word in|before word inches|before word keep|before word kilo|before word knees|before word lean|before word lets|before word lift|before word look|before word miles|before word minute|before word months|before word nearly|before word off|before word people|before word percent|before word phone|before word pick|before word pounds|before word rhythm|before word score|before word shift|before word side|before word sitting|before word somebody|before word squeezes|before word straight|before word than|before word theyre|before word thing|before word thousand|before word till|before word top|before word twelve|before word unless|before word walk|before word well|before word whos|before word wont|before word years|behind word 18|behind word 2|behind word 3|behind word 4|behind word 5|behind word 6|behind word 7|behind word 8|behind word all|behind word an|behind word ankle|behind word aparts|behind word asleep|behind word bench|behind word blue|behind word can|behind word circuit|behind word clean|behind word click|behind word cone|behind word core|behind word count|behind word county|behind word cue|behind word deal|behind word does|behind word done|behind word doors|behind word drink|behind word ear|behind word enough|behind word even|behind word everythings|behind word fast|behind word figure|behind word fine|behind word fingertips|behind word floor|behind word good|behind word got|behind word granddaughters|behind word had|behind word hand|behind word has|behind word heels|behind word height|behind word here|behind word hes|behind word high|behind word higher|behind word hill|behind word him|behind word knees|behind word left|behind word lets|behind word lift|behind word lose|behind word lot|behind word menu|behind word minutes|behind word more|behind word neither|behind word next|behind word no|behind word nose|behind word off|behind word once|behind word out|behind word past|behind word push|behind word rack|behind word ramp|behind word rate|behind word reason|behind word remember|behind word return|behind word rings|behind word rise|behind word run|behind word rung|behind word said|behind word same|behind word see|behind word shin|behind word skipping|behind word slow|behind word spilling|behind word squatted|behind word stage|behind word steps|behind word than|behind word third|behind word thirteen|behind word this|behind word those|behind word toe|behind word top|behind word tyrant|behind word waited|behind word well|behind word wide|behind word work|behind word youve|closes 14|closes 16|closes 22|closes 30|closes 60|closes 7|closes 9|closes all|closes altogether|closes bench|closes between|closes brave|closes couple|closes different|closes done|closes fours|closes leg|closes miles|closes ones|closes over|closes plenty|closes rest|closes right|closes round|closes row|closes seventy|closes six|closes sixty|closes steps|closes these|closes thirteen|closes turns|closes ups|closes water|distanceM of reps distanceM|earlier|earlier not owned|fields holdSeconds tempo|fields reps distanceM|fields sets holdSeconds|fields sets reps workSeconds|fields sets reps workSeconds restSeconds|followed later|holdSeconds of holdSeconds tempo|holdSeconds of sets holdSeconds|in fault|loose main|named before 3|named behind 1|named behind 2|named behind some|opens 1|opens 14|opens 16|opens 17|opens 18|opens 25|opens 3|opens 300|opens 45|opens 5|opens 6|opens anything|opens bench|opens bit|opens change|opens each|opens eighteen|opens everythings|opens fall|opens five|opens fours|opens heel|opens ladder|opens lets|opens make|opens ninety|opens say|opens threes|opens twos|reps of sets reps workSeconds restSeconds|return|role end|said for all behind|said for all earlier|stretch true|stretch unknown|to end 3|weight false|weight unknown|workSeconds of reps workSeconds tempo',
      ],
      [
        -0.2,
        'ahead 60|ahead none|bare|before word 9|before word actually|before word at|before word backs|before word because|before word doors|before word down|before word eleven|before word foot|before word forty|before word going|before word hand|before word hmm|before word ill|before word is|before word left|before word leg|before word lovely|before word more|before word my|before word near|before word oclock|before word outside|before word pound|before word press|before word red|before word squeeze|before word stood|before word swap|before word ten|before word thatll|before word thirteen|before word when|before word work|behind owned|behind word away|behind word bear|behind word climbs|behind word did|behind word end|behind word going|behind word jeans|behind word just|behind word last|behind word legs|behind word lifts|behind word little|behind word minute|behind word noise|behind word of|behind word or|behind word pillow|behind word pink|behind word pull|behind word raises|behind word records|behind word row|behind word rows|behind word seconds|behind word seven|behind word swap|behind word swinging|behind word them|behind word thigh|behind word thighs|behind word to|behind word tonight|behind word two|behind word up|behind word van|behind word want|behind word week|closes 1|closes 11|closes 3|closes 45|closes 5|closes 6|closes again|closes arm|closes benches|closes breath|closes fifty|closes fourteen|closes hedge|closes lengths|closes nineteen|closes off|closes seconds|closes you|condition|fields workSeconds|from start far|in focus|in turns|loose|loose before|named before|named before some|named behind 3|opens 11|opens 9|opens circuit|opens fifty|opens half|opens nineteen|opens seventy|opens thirteen|return owned|row behind|row of 2|row of 4|run false|seated true|workSeconds of sets reps workSeconds|workSeconds of workSeconds',
      ],
      [
        -0.3,
        'ahead 180|before|before word 20|before word centimetre|before word good|before word its|before word let|before word nah|before word now|before word och|before word oh|before word seven|before word then|before word three|before word weeks|behind word counts|behind word deadlift|behind word do|behind word half|behind word have|behind word in|behind word instead|behind word ive|behind word leg|behind word only|behind word pair|behind word plank|behind word round|behind word swings|behind word there|behind word three|behind word window|behind word youll|closes outs|closes presses|closes rounds|fields reps restSeconds|fields reps tempo|for all|held in the sentence|in breathing|in easier|in equipment|in range|instead return|named before 0|opens 60|opens do|opens forty|opens four|opens fourteen|opens hold|opens per|opens thats|reps of reps restSeconds|reps of reps tempo|row counts level|row return|standing false|to end 0',
      ],
      [
        -0.4,
        'at the start|before word back|before word breathe|before word degrees|before word elbows|before word kilos|before word last|before word not|before word or|before word written|behind word about|behind word chair|behind word down|behind word strides|closes 2|closes eleven|closes goes|closes set|closes seven|closes thirty|closes twice|closes up|followed near|in setup|loose behind|no name|opens twice|past 15|standing unknown|workSeconds of reps workSeconds',
      ],
      [
        -0.5,
        'at later|before not owned|before word euro|before word five|before word hold|before word once|before word two|before word youre|behind word a|behind word eight|behind word first|behind word raised|behind word saturday|behind word then|behind word you|closes forty|fields holdSeconds|from start 0|holdSeconds of holdSeconds|in execution|instead earlier|later|opens 7|opens seven|taken back',
      ],
      [
        -0.6,
        'another nearer|bare before|before word to|behind word five|closes four|closes two|later not owned|loose earlier|row falling|workSeconds still',
      ],
      [
        -0.7,
        'ahead far|bare earlier|before word but|behind word at|closes nine|closes three|closes times|fields sets workSeconds|holdSeconds moving|only others named around|others named|past 60|workSeconds of sets workSeconds',
      ],
      [-0.8, 'before word round|closes twenty|opens nine'],
      [
        -0.9,
        'behind word for|behind word four|behind word not|in tempo|instead later|opens eleven|opens for|opens one|opens two|sided false',
      ],
      [-1.0, 'before word nine|before word no|closes one|row comma|row counts|row counts comma'],
    ],
    'as seconds': [
      [0.4, 'behind word backs|opens make'],
      [0.3, 'before word same|closes thirty|corrects|instead return|return owned'],
      [0.2, 'only one'],
      [0.1, 'instead|return'],
      [
        -0.1,
        'a neighbour named|ahead 180|ahead 6|ahead 60|bare before|bare behind|bare later|behind|behind not owned|behind word and|closes eight|closes five|closes four|closes six|closes ten|closes those|closes three|closes two|counted name|fields sets reps|for all|from start some|held in the sentence|in setup|in turns|loose before|loose behind|loose later|main owned|named around|only others named around|opens eight|opens five|opens forty|opens four|opens six|opens ten|opens thirty|opens three|others in the sentence before|others named|past 15|past 5|past 60|past far|per side|role move|rounds|row|row comma|row counts|row counts comma|row of 2|row rising|taken back|to end 0|to end 1|to end 2|to end some|will do',
      ],
      [
        -0.2,
        'ahead 20|ahead far|at the start|bare earlier|bare return|before word and|condition|earlier|earlier not owned|followed near|later|later not owned|loose earlier|loose return|opens two|return not owned|right behind the one before|role chat|to end far',
      ],
      [
        -0.3,
        'ahead none|at later|bare|bare main|before|before not owned|closes one|fields reps|followed later|from start far|longer sentence|loose|loose main|main|main not owned|no name|opens one|role teach|role work|short sentence|told',
      ],
    ],
    'as seconds held': [
      [1.2, 'opens make'],
      [0.9, 'closes twenty'],
      [0.8, 'behind word so|corrects|main owned|only one'],
      [0.7, 'opens 20'],
      [0.6, 'behind word you|closes 20|from start some|to end far'],
      [0.5, 'before word in|closes off|fields sets reps restSeconds|in easier|instead main'],
      [0.3, 'before word 20|before word its|behind word no|instead|opens lets|per side'],
      [0.2, 'before word a|behind word 20|behind word it|closes leg|from start 3|opens its'],
      [0.1, 'before word knees|first of more|followed later'],
      [
        -0.1,
        'a neighbour named|ahead 180|ahead 6|bare behind|bare later|bare main|bare return|before word breathe|before word dont|before word elbows|before word foot|before word if|before word im|before word keep|before word of|before word once|before word so|before word thats|before word then|before word whos|behind|behind not owned|behind word and|behind word ask|behind word do|behind word heels|behind word is|behind word raised|behind word said|behind word the|behind word three|behind word well|between|closes eight|closes fifteen|closes five|closes four|closes nine|closes seconds|closes seven|closes side|closes six|closes them|closes these|closes thirty|closes those|closes three|closes twelve|closes twice|counted name|fields reps holdSeconds|fields reps workSeconds|fields sets reps|for all|from start 0|from start 1|from start 2|in clauses|in execution|in harder|in tempo|in turns|last of more|loose before|loose behind|loose later|loose return|named around|only others named around|opens 10|opens 30|opens and|opens eight|opens eleven|opens five|opens for|opens forty|opens same|opens six|opens twelve|opens twenty|others in the sentence before|others named|past 5|past 60|past far|return not owned|return owned|right behind another|role move|role teach|rounds|row comma|row counts|row counts comma|row falling|row main|row of 2|row rising|to end 0|to end 2|to end 3|will do',
      ],
      [
        -0.2,
        'ahead 20|ahead 60|ahead far|bare before|bare earlier|closes ten|closes two|from start far|held in the sentence|in setup|later|later not owned|loose earlier|opens four|opens three|opens two|past 15|return|role chat|row|short sentence|taken back',
      ],
      [
        -0.3,
        'ahead none|at the start|bare|before|before not owned|earlier|earlier not owned|fields reps|followed near|longer sentence|loose|loose main|main not owned|opens ten|right behind the one before|role work|told',
      ],
      [-0.4, 'at later|closes one|no name|opens one|to end some'],
    ],
    ruled: [[-0.1, 'alone|told']],
    span: [
      [1.3, 'sure loose'],
      [1.2, 'before word dumbbell|behind word third'],
      [0.8, 'before word for|closes eight|from start some'],
      [0.7, 'by then|closes ten|opens eight|opens ten|opens twenty'],
      [0.6, 'before word at|before word fifteen|behind word does|behind word just|closes 10|opens 10|row counts level'],
      [0.5, 'before word eleven|before word on|before word the|behind word do|closes twenty|past 60'],
      [
        0.4,
        'before word if|before word two|behind word and|behind word or|in breathing|row counts|row counts then|row level|row then',
      ],
      [
        0.3,
        'before word its|behind word go|behind word it|behind word then|behind word weeks|closes five|closes three|fields workSeconds restSeconds|opens five|row main|row rising|taken back',
      ],
      [
        0.2,
        'ahead none|behind word nine|behind word two|by or|closes off|common|corrects|in harder|later|later not owned|opens two|row of 3|to end far',
      ],
      [0.1, 'at later|before word and|behind|behind not owned|of intervals|opens six|role chat|row|to end some'],
      [
        -0.1,
        'a neighbour named|at the start|bare|before|before not owned|before word again|before word back|before word chest|before word chins|before word cleans|before word degrees|before word dont|before word down|before word fall|before word five|before word good|before word hinge|before word hold|before word i|before word in|before word into|before word kilos|before word let|before word lovely|before word more|before word nine|before word of|before word off|before word one|before word s|before word same|before word sit|before word six|before word ten|before word thats|before word then|before word three|before word to|before word work|before word you|behind word 9|behind word about|behind word at|behind word back|behind word down|behind word eight|behind word if|behind word in|behind word last|behind word not|behind word of|behind word on|behind word side|behind word six|behind word so|behind word that|behind word the|behind word was|behind word your|between|by far|closes 3|closes 6|closes forty|closes nine|closes seconds|closes sixty|closes thirty|closes through|closes twelve|earlier|earlier not owned|fields sets reps|fields sets reps workSeconds restSeconds|first of more|for all|from start 0|from start 2|in caution|in range|in setup|in turns|instead earlier|instead return|loose|loose return|named in the sentence before|only others named around|opens 3|opens 4|opens 6|opens a|opens its|opens nine|opens ninety|opens seven|opens thirty|opens twelve|return not owned|rising|role move|role teach|rounds|row falling|said for all|said for all before',
      ],
      [
        -0.2,
        'bare return|before word four|behind word five|behind word for|behind word one|behind word seven|behind word three|behind word up|closes seven|fields reps|fields sets workSeconds restSeconds|fields workSeconds|followed later|in easier|in tempo|last of more|main|named around|opens forty|opens sixty|past far|per side|return owned|row return|sure sure|told',
      ],
      [
        -0.3,
        'ahead far|by if|closes four|falling|followed near|instead main|only one|opens four|return|role work|to end 1|to end 2|will do',
      ],
      [-0.4, 'behind word four|by near|from start far|held in the sentence|loose sure|main owned|to end 0'],
      [-0.5, 'closes one|instead|short sentence'],
      [-0.6, 'closes two|loose loose|opens one|opens three|row comma|row counts comma'],
    ],
    'as hold': [
      [1.0, 'to end far'],
      [0.8, 'closes leg|closes twenty|from start some|opens thirty|opens twenty|row then'],
      [0.7, 'fields sets workSeconds restSeconds|main owned|row of 3|row rising'],
      [
        0.6,
        'ahead 180|before word both|behind word bear|behind word brenda|closes between|from start 3|main|only one|opens two|role teach|row main|row up to',
      ],
      [
        0.5,
        'before word breathe|before word for|before word if|behind word lets|closes twice|last of more|named in the sentence before|past 60|words of the name, not named',
      ],
      [
        0.4,
        'before word each|before word just|before word round|before word stop|before word with|behind word well|closes forty|closes times|common|corrects|fields sets workSeconds|opens ten|told|words of the name',
      ],
      [
        0.3,
        'before owned|before word its|before word on|behind word eight|behind word its|behind word there|behind word your|fields sets reps workSeconds restSeconds|instead main|longer sentence|opens 25|opens forty|opens nine|opens say|per side|role work|row|short sentence',
      ],
      [
        0.2,
        'bare main|before word at|before word back|before word please|before word youll|behind owned|behind word climb|behind word do|behind word floor|behind word shame|behind word ten|behind word twenty|behind word up|between|closes side|in clauses|later|later not owned|named around|opens so|sided true',
      ],
      [
        0.1,
        'a neighbour named|before word anybody|before word cons|before word in|before word squeeze|before word there|behind|behind word isnt|behind word long|behind word mat|behind word planks|behind word thats|behind word the|closes air|closes fifteen|closes thirty|fields reps workSeconds|from start far|loose main|main not owned|opens circuit|opens then|row or|sided unknown',
      ],
      [
        -0.1,
        'ahead 20|ahead 6|ahead none|another nearer|at the start|bare|bare before|bare behind|bare earlier|bare return|before word after|before word bend|before word between|before word cleans|before word dont|before word every|before word five|before word ive|before word lie|before word off|before word pull|before word ring|before word thirty|before word to|behind not owned|behind word a|behind word and|behind word ankles|behind word each|behind word finisher|behind word is|behind word lean|behind word minute|behind word ones|behind word only|behind word pair|behind word plank|behind word prop|behind word rest|behind word row|behind word said|behind word six|behind word stand|behind word swings|behind word then|behind word tonight|behind word was|behind word with|closes 6|closes fifty|closes hand|closes it|closes laps|closes off|closes one|closes over|closes rounds|closes stations|closes three|closes through|fields sets reps workSeconds|for all|from start 1|in caution|in execution|instead before|instead earlier|instead return|loose|loose before|loose behind|loose earlier|loose return|named before|named before 3|named before another between|opens 10|opens 15|opens 3|opens bench|opens half|opens minute|opens ninety|past 15|right behind the one before|row earlier|row return|said for all|said for all before',
      ],
      [
        -0.2,
        'ahead 60|bare later|before|before word and|before word im|before word left|before word no|before word s|before word shake|before word stood|behind word down|behind word it|behind word records|behind word that|behind word waistband|closes goes|closes half|condition|earlier|earlier not owned|fields workSeconds|fields workSeconds restSeconds|first of more|loose later|opens a|opens fifteen|opens five|others named|return not owned|return owned|right behind another|row counts level|row later|row of 2|to end 2|to end 3',
      ],
      [
        -0.3,
        'before not owned|before word hang|before word of|closes minutes|closes two|followed later|in tempo|opens four|opens three|rounds|row counts|sided false',
      ],
      [
        -0.4,
        'in turns|no name|only others named around|opens one|others in the sentence before|past far|return|to end 0|to end some',
      ],
      [-0.5, 'at later|closes minute|followed near|opens 20|opens eight|row comma'],
      [-0.6, 'behind word for|opens 30'],
      [-0.7, 'ahead far|closes seconds|row falling|row level|taken back'],
    ],
    'as work': [
      [
        0.1,
        'before word bicycles|behind word hollow|closes round|fields sets holdSeconds restSeconds|in turns|named around|named behind|named behind far|nearest behind|opens then|rounds|said for all|said for all before|words of the name',
      ],
      [
        -0.1,
        'a neighbour named|ahead 60|at later|before word and|closes time|fields holdSeconds|held in the sentence|longer sentence|main|main owned|no name|only one|only others named around|opens hold|others in the sentence before|others named|role teach|role work|stretch false|to end far|told',
      ],
    ],
    'in rep': [
      [0.4, 'holdSeconds still|role chat'],
      [0.3, 'longer sentence|only one|per side|stretch true|to end far'],
      [
        0.2,
        'fields reps holdSeconds|from start 2|held in the sentence|holdSeconds of reps holdSeconds|main|main owned|only others named around|told',
      ],
      [
        0.1,
        'ahead far|at the start|before|before not owned|before word and|behind word just|closes time|fields sets reps holdSeconds|from start 3|holdSeconds of sets reps holdSeconds|opens eight|others in the sentence before',
      ],
      [
        -0.1,
        'ahead 180|at later|before word dont|behind word long|closes seconds|earlier|earlier not owned|for all|from start far|holdSeconds moving|in tempo|opens its|role teach|role work|stretch unknown',
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
      [-0.3, 'beside distanceM|more|range|to 15'],
      [-0.4, 'beside undefined|beside workSeconds|to 1000|to 40'],
      [-0.5, 'to 120|to 60'],
      [-0.6, 'to 1|to 10|to 30'],
      [-0.7, 'still|to 20'],
      [-1.0, 'beside holdSeconds'],
    ],
    'from work': [
      [0.6, 'opens 3'],
      [0.5, 'before word heel|behind word thats|closes sets'],
      [0.3, 'behind word quads|held in the sentence'],
      [0.2, 'behind word with'],
      [
        0.1,
        'before owned|before word no|fields reps workSeconds|fields sets reps workSeconds|from start 3|from start some',
      ],
      [
        -0.1,
        'bare before|bare behind|bare later|bare return|before word after|before word and|before word at|before word dont|before word fast|before word for|before word i|before word if|before word im|before word its|before word left|before word of|before word round|before word shake|before word sitting|before word to|behind not owned|behind word and|behind word clocks|behind word for|behind word go|behind word in|behind word is|behind word it|behind word ones|behind word round|behind word said|behind word stand|behind word stands|behind word swings|behind word take|behind word that|behind word the|behind word there|behind word together|behind word wedding|behind word youve|closes fifteen|closes half|closes over|closes rounds|closes second|closes side|closes through|closes times|closes twice|fields sets reps workSeconds restSeconds|from start 2|in easier|instead before|instead earlier|instead main|loose before|loose behind|loose earlier|loose return|opens 20|opens 45|opens 6|opens circuit|opens eight|opens fifteen|opens half|opens one|opens sixty|opens ten|others named|past 5|return not owned|row comma|row falling|row level|row then|seated false|sided false|standing true|to end 1|to end 2|words of the name, not named',
      ],
      [
        -0.2,
        'ahead 180|ahead 20|ahead 6|bare earlier|bare main|before word in|before word on|before word then|behind|behind word its|closes off|common|condition|corrects|fields sets workSeconds|fields workSeconds restSeconds|first of more|followed near|in tempo|last of more|loose main|main not owned|opens 30|opens a|opens four|opens ninety|past 15|past 60|past far|right behind another|row|row main|row of 2|row rising|said for all|said for all before|to end 0|to end far|to end some|words of the name',
      ],
      [
        -0.3,
        'ahead 60|at the start|bare|before|closes minute|earlier|earlier not owned|fields sets workSeconds restSeconds|for all|instead|later|later not owned|loose|named around|only one|only others named around|opens forty|opens thirty|opens three|opens twenty|opens two|others in the sentence before|per side|return|return owned|right behind the one before|role work|rounds|taken back|will do',
      ],
      [
        -0.4,
        'ahead far|ahead none|at later|before not owned|closes minutes|closes seconds|fields workSeconds|followed later|in turns|longer sentence|main|main owned|no name|role chat|role teach|short sentence|told',
      ],
      [-0.5, 'from start far'],
    ],
    said: [
      [0.9, 'only one'],
      [0.7, 'main owned'],
      [0.6, 'main'],
      [0.5, 'before word then|fields reps holdSeconds|to end some'],
      [0.4, 'closes 2|closes seconds|from start 2|opens hold|role teach|to end far'],
      [0.3, 'before word and|closes two|instead main'],
      [0.2, 'before word each|behind word forward|behind word to|from start 1|instead|will do'],
      [
        0.1,
        'before word dont|before word thats|behind word band|behind word go|behind word long|behind word so|closes five|closes them|corrects|from start far|in clauses|in execution|last of more|opens its|opens so|opens squeeze',
      ],
      [
        -0.1,
        'a neighbour named|before word bicycles|before word no|behind word hollow|behind word just|behind word you|closes round|closes side|closes time|condition|fields sets holdSeconds|fields sets holdSeconds restSeconds|from start 3|in turns|instead earlier|named around|opens eight|opens plank|opens then|others in the sentence before|others named|rounds|said for all|said for all before|short sentence|sided true|stretch true',
      ],
      [
        -0.2,
        'ahead 180|at the start|before|before not owned|before word keep|before word top|behind word ankles|behind word can|behind word we|closes brave|closes one|closes six|closes three|closes up|fields holdSeconds tempo|in harder|only others named around|opens stay|opens three|opens wait|per side|stretch unknown|with amount',
      ],
      [-0.3, 'ahead 60|closes twenty|followed later|right behind the one before'],
      [
        -0.4,
        'ahead far|ahead none|first of more|followed near|for all|in tempo|later|later not owned|longer sentence|past 15|role chat',
      ],
      [-0.5, 'behind word nose|behind word well|in breathing|opens for|role work|stretch false|taken back|told'],
      [-0.6, 'earlier|earlier not owned'],
      [-0.7, 'no name'],
      [-0.8, 'at later'],
    ],
    ruled: [[-0.8, 'alone|told']],
  },
  sets: {
    option: [
      [1.2, 'as before in circuit'],
      [0.7, 'in superset'],
      [0.6, 'as before in superset|to 2'],
      [0.5, 'as before|none|none of reps|none, amount said 2|to 3'],
      [0.4, 'none of holdSeconds|none, amount said 0'],
      [0.3, 'none, amount said 1|not as before in circuit|ruled|words as before'],
      [0.2, 'in circuit|none of undefined|of distanceM'],
      [0.1, 'as 2 neighbours|none of workSeconds'],
      [-0.1, 'as 1 neighbours|none, amount said 3|not as before in superset|of workSeconds|range|to 40'],
      [-0.2, 'none in circuit|none of distanceM|of undefined|to 120|to 20'],
      [-0.4, 'of holdSeconds|to 5'],
      [-0.5, 'none though ruled|of reps|to 15'],
      [-0.6, 'to 10|to 7|to 9'],
      [-0.7, 'none in superset'],
      [-0.8, 'to 1'],
    ],
    said: [
      [1.4, 'gap 0|with amount'],
      [1.3, 'right behind the one before'],
      [1.1, 'ahead 6|closes time'],
      [1.0, 'past 60'],
      [0.9, 'to end far'],
      [0.8, 'behind word behind|closes lots|gap 2|instead main'],
      [0.7, 'behind word row|behind word so|common|fields sets restSeconds|opens four|sided unknown'],
      [
        0.6,
        'behind word its|behind word just|behind word the|fields sets reps holdSeconds|fields sets tempo|named around|opens well|short sentence',
      ],
      [
        0.5,
        'bare before|before owned|before word 10|before word going|before word im|before word ive|behind word drive|behind word pair|behind word presses|behind word round|closes minutes|closes trips|loose before|main|main owned|named before|seated true|standing false|stretch true',
      ],
      [
        0.4,
        'before word after|before word and|before word bend|before word elbows|before word of|before word rings|before word second|before word some|behind|behind word and|behind word long|behind word plonk|behind word press|behind word second|behind word together|closes hand|closes minute|closes twelve|closes up|fields sets reps restSeconds|fields sets workSeconds|from start far|last of more|named before 3|only one|opens 10|opens five|opens three|opens twenty|past 5|role chat|seated unknown|weight true',
      ],
      [
        0.3,
        'bare behind|before word again|before word calves|before word i|before word if|before word leg|before word not|before word so|before word the|before word two|behind word bounds|behind word chair|behind word deadlifts|behind word do|behind word first|behind word heads|behind word menu|behind word ten|both neighbours named|closes 8|closes leg|closes pair|closes stations|followed later|from start 3|gap 1|in caution|in harder|nearest before|opens for|opens stretches|right behind another|stretch unknown|to end some|words of the name, not named',
      ],
      [
        0.2,
        'ahead none|before word check|before word every|before word like|before word sitting|before word whats|behind not owned|behind owned|behind word down|behind word each|behind word fifteen|behind word for|behind word other|behind word stand|behind word still|behind word then|behind word this|closes 6|closes five|closes from|closes seconds|corrects|fields sets reps workSeconds|first of more|in setup|instead behind|later|later not owned|named before another between|named behind 3|named in the sentence before|opens 2|opens 4|opens and|opens six|rounds|will do',
      ],
      [
        0.1,
        'another nearer|bare main|before word at|before word both|before word dont|before word first|before word heavier|before word late|before word och|before word out|before word press|before word somebody|before word then|before word three|before word twenty|before word with|behind word bars|behind word breather|behind word done|behind word eight|behind word faces|behind word get|behind word got|behind word negatives|behind word plank|behind word right|behind word rowing|behind word side|behind word sit|behind word squat|behind word squats|behind word stands|behind word stops|behind word with|closes around|closes between|closes goes|closes otherwise|closes over|closes rounds|closes second|closes sets|closes them|closes those|closes through|for all|from start some|in clauses|instead|loose behind|main not owned|nearest behind|opens 90|opens eight|opens every|opens make|opens the|opens twelve|opens twice|others in the sentence before|run true|to end 2|told|words of the name',
      ],
      [
        -0.1,
        'ahead 20|ahead 60|at later|before|before word between|before word heel|before word itll|before word next|before word now|before word walk|behind word blank|behind word both|behind word climbers|behind word deal|behind word ground|behind word hips|behind word his|behind word in|behind word many|behind word planks|behind word quads|behind word rows|behind word skipping|behind word skips|behind word we|closes 4|closes lap|closes laps|closes lot|closes off|closes set|closes side|closes twice|closes you|condition|fields sets reps|from start 2|gap -1|gap -3|in tempo|instead before|instead later|longer sentence|named before far|named before some|named behind some|opens 25|opens 3|opens bit|opens footy|opens go|opens now|opens so|opens stay|past 15|per side|run false|said for all behind|said for all earlier|stretch false|to end 3',
      ],
      [
        -0.2,
        'ahead 180|before word as|before word bench|before word bicycles|before word chin|before word go|before word off|before word rest|before word rows|before word step|before word to|before word we|before word were|before word you|behind word a|behind word bench|behind word forth|behind word hollow|behind word hung|behind word it|behind word leg|behind word out|behind word outs|behind word supports|behind word to|closes 12|closes again|closes altogether|closes six|closes these|counted name|fields sets holdSeconds restSeconds|loose|named behind far|opens a|opens change|opens circuit|opens once|opens one|opens sixty|opens two|return not owned|role work|standing true|taken back|to end 1',
      ],
      [
        -0.3,
        'bare later|before not owned|before word hang|before word here|before word its|before word one|before word put|before word round|behind word are|behind word circuit|behind word mat|behind word says|behind word slides|between|closes turn|closes two|fields sets holdSeconds|gap -2|loose later|opens 20|opens 8|opens hold|opens set|opens thirty|role teach|said for all before|seated false|sided true',
      ],
      [
        -0.4,
        'at the start|before word bit|before word on|behind word bear|behind word drills|behind word had|behind word jog|behind word planned|behind word was|behind word wrote|closes ten|earlier|earlier not owned|fields sets reps workSeconds restSeconds|opens ten|opens then|weight false',
      ],
      [
        -0.5,
        'bare earlier|before word but|before word have|before word no|before word us|before word written|behind word again|behind word back|behind word fence|behind word go|behind word lifts|closes 10|closes do|closes times|in execution|loose earlier|opens 30|opens fifteen|said for all',
      ],
      [
        -0.6,
        'a neighbour named|before word eight|before word turn|behind word little|behind word thats|closes metres|closes round|closes ups|gap 3|gap behind|held in the sentence|only others named around|return owned',
      ],
      [-0.7, 'ahead far|before word your|behind word that|fields sets distanceM|others named|sided false'],
      [-0.8, 'before word a|gap before|instead earlier|return'],
      [-0.9, 'fields sets workSeconds restSeconds|past far'],
      [-1.0, 'to end 0'],
      [-1.2, 'behind word said'],
    ],
    'from reps': [
      [0.9, 'behind word want|fields reps restSeconds|only one'],
      [0.7, 'a neighbour named|before word dont|gap 0'],
      [0.6, 'closes times|gap 2|opens three|opens two'],
      [0.5, 'before word round|closes between|instead before|main|main owned|opens each|opens four|to end far'],
      [
        0.4,
        'before word first|behind word of|closes goes|closes lengths|closes stroke|closes twice|from start some|past 5',
      ],
      [
        0.3,
        'before word i|behind not owned|behind word bent|behind word little|behind word them|closes off|from start 1|gap 1|longer sentence|opens twice|run true|words of the name, not named',
      ],
      [
        0.2,
        'ahead none|before word and|behind|behind word out|behind word thats|closes all|closes them|from start 3|gap -1|instead|opens circuit|opens do|role chat|to end 1|to end some|will do|words of the name',
      ],
      [
        0.1,
        'ahead far|before owned|before word after|before word back|before word breathe|before word find|before word land|before word with|behind word and|behind word do|behind word down|behind word menu|behind word sides|behind word so|behind word still|behind word three|behind word up|closes 3|closes altogether|closes plenty|closes ups|fields reps workSeconds restSeconds|from start 2|in focus|named in the sentence before|opens 5|opens threes|opens twos|others in the sentence before',
      ],
      [
        -0.1,
        'ahead 180|ahead 6|ahead 60|another nearer|at the start|bare return|before word a|before word at|before word feel|before word in|before word no|before word right|before word same|before word tailbone|before word ten|before word thats|before word this|before word three|behind word for|behind word gets|behind word goes|behind word it|behind word nose|behind word pair|behind word seconds|behind word see|behind word sit|behind word straight|behind word take|both neighbours named|closes benches|closes different|closes do|closes down|closes leg|closes lines|closes seconds|closes side|closes stands|closes strides|closes those|common|fields reps distanceM|fields reps holdSeconds|fields reps workSeconds|for part|gap -2|gap 3|in equipment|in execution|in setup|in turns|last of more|later|later not owned|named before|named behind|no name|opens 2|opens 4|opens a|opens and|opens change|opens thats|right behind another|role teach|said for all|said for all before|seated true|sided true|stretch false|to end 2|weight false',
      ],
      [
        -0.2,
        'before|before not owned|before word if|before word its|before word then|before word unless|behind word back|behind word to|between|closes breaths|closes circuit|closes ones|closes six|corrects|counted name|from start far|gap -3|held in the sentence|in breathing|instead main|opens one|return|return owned|right behind the one before|role work|run false|to end 3|told',
      ],
      [
        -0.3,
        'before word of|closes five|closes four|condition|earlier|earlier not owned|fields reps tempo|named around|only others named around|opens 3|opens couple|others named|past 15|per side',
      ],
      [-0.4, 'ahead 20|at later|bare main|closes three|fields reps|first of more|for all'],
      [-0.5, 'bare|in caution|opens five|opens for|opens six|taken back'],
      [-0.6, 'gap behind|in tempo|short sentence'],
      [-1.1, 'gap before'],
    ],
    ruled: [[-0.6, 'alone|told']],
    'as they come': [
      [1.5, 'second main'],
      [1.1, 'another return'],
      [0.9, 'third return'],
      [0.4, 'again main|told'],
      [-0.2, 'again return'],
      [-0.3, 'another main'],
      [-0.4, 'third main'],
      [-0.7, 'more return'],
      [-0.9, 'second return'],
      [-1.2, 'again behind'],
    ],
    returns: [
      [-0.1, '1'],
      [-0.5, '3'],
      [-0.6, 'told'],
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
      [0.4, 'as before in superset|none though ruled|to 15|to 30|to 60|words as before'],
      [0.3, 'none'],
      [0.2, 'ruled|to 20'],
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
      [1.1, 'named around|past 60'],
      [1.0, 'sided unknown'],
      [0.9, 'before word dont|only one|to end far|words of the name'],
      [0.8, 'main owned|opens a'],
      [0.7, 'fields reps restSeconds|words of the name, not named'],
      [0.6, 'named in the sentence before|seated unknown'],
      [0.5, 'before word after|behind word you|both neighbours named|common|instead main|main|to end some'],
      [0.4, 'corrects|from start far|opens ninety'],
      [
        0.3,
        'ahead 20|another nearer|before word both|before word hang|before word i|before word one|before word so|behind word circuit|behind word mat|behind word presses|behind word then|closes between|closes minutes|closes second|from start some|opens make|opens three|role teach|short sentence',
      ],
      [
        0.2,
        'before word cons|before word did|before word go|before word hug|behind word deal|behind word floor|behind word its|behind word round|behind word rows|behind word supports|behind word time|closes air|closes nothing|closes three|instead before|last of more|later not owned|named before another between|opens bit|opens rest|opens take|seated false',
      ],
      [
        0.1,
        'a neighbour named|at the start|before word between|before word done|before word first|before word im|before word knees|before word proper|before word ring|before word rings|before word rows|before word shake|before word sit|before word sixteen|before word three|before word us|before word your|behind owned|behind word between|behind word climbers|behind word get|behind word ground|behind word pair|behind word press|behind word so|behind word that|behind word thats|behind word two|behind word we|closes do|closes done|closes laps|closes seconds|closes side|closes through|counted name|fields restSeconds|from start 1|in execution|in turns|instead|later|named before|opens and|opens go|opens then|opens twelve|opens twice|role chat',
      ],
      [
        -0.1,
        'ahead 60|before word bicycles|before word every|before word have|before word if|before word operated|before word when|before word whos|behind|behind word 2|behind word bear|behind word hips|behind word hollow|behind word neither|behind word other|behind word said|behind word squat|behind word steps|behind word tonight|between|closes both|closes half|closes rest|closes round|closes sets|closes ten|closes times|closes twice|condition|fields sets holdSeconds restSeconds|followed near|for all|instead later|opens 20|opens 4|opens circuit|opens forty|opens its|opens now|opens so|opens two|past 15|return not owned|said for all before|said for all behind|said for all earlier|taken back',
      ],
      [
        -0.2,
        'before word breathe|before word its|before word not|before word round|before word these|before word weights|behind not owned|behind word and|behind word it|behind word plank|behind word really|behind word sorry|behind word them|behind word weights|behind word wood|closes lap|fields sets workSeconds restSeconds|fields workSeconds restSeconds|held in the sentence|in breathing|in tempo|instead behind|opens for|role end|role work|said for all|to end 2|told|weight unknown|will do',
      ],
      [
        -0.3,
        'before|before not owned|before word no|before word off|before word then|before word you|behind word go|behind word side|behind word stops|behind word swings|closes each|closes rounds|fields sets reps restSeconds|fields sets reps workSeconds restSeconds|followed later|instead earlier|no name|opens 30|sided true|to end 0',
      ],
      [
        -0.4,
        'before word ill|behind word of|earlier|earlier not owned|first of more|longer sentence|opens twenty|opens water|return|return owned|sided false|weight false',
      ],
      [-0.5, 'before word the|behind word eight|opens sixty|others named|per side'],
      [-0.6, 'at later|main not owned'],
      [-0.7, 'ahead 180|only others named around|right behind another|to end 1'],
      [-0.8, 'ahead far|opens 3'],
      [-0.9, 'past far'],
    ],
    'from work': [
      [1.1, 'before word between'],
      [0.8, 'ahead 20|ahead 6|common|opens half'],
      [0.6, 'only one'],
      [0.5, 'behind word then|behind word with|past 60|return|words of the name|words of the name, not named'],
      [0.4, 'closes over|from start 2|instead before|opens 4|opens two'],
      [
        0.3,
        'bare return|before word go|before word i|before word on|before word thats|behind word and|closes seconds|first of more|followed later|in turns|instead main|loose return|named in the sentence before|opens twenty|return not owned|rounds|seated unknown|taken back|to end 3',
      ],
      [
        0.2,
        'bare behind|before owned|before word bend|before word five|before word im|before word shift|before word then|behind word ankles|behind word only|behind word pair|behind word the|closes hand|closes minute|condition|fields sets reps workSeconds|held in the sentence|instead|loose behind|loose main|main not owned|named around|opens sixty|return owned|to end 1|to end 2|will do',
      ],
      [
        0.1,
        'bare main|before word sitting|before word take|behind word circuit|behind word rest|behind word stand|behind word stands|behind word your|closes half|main|opens forty|opens three|past 5|to end 0',
      ],
      [
        -0.1,
        'at later|bare|before word at|before word each|before word for|before word lie|before word shake|before word to|before word with|behind word in|behind word lap|behind word long|behind word no|behind word things|behind word well|closes each|closes three|closes twenty|corrects|fields sets workSeconds|longer sentence|main owned|opens 20|opens bench|opens circuit|opens fifteen|opens fifty|opens say|opens well|others in the sentence before|per side|role teach|row of 3|row of 4|row return|row then|row up to|said for all|standing false|standing true',
      ],
      [
        -0.2,
        'bare before|bare later|before word after|before word check|before word in|before word left|before word off|before word rest|behind|behind not owned|behind word down|behind word go|behind word morning|behind word ones|behind word remember|behind word up|closes between|closes fifteen|closes swap|instead behind|loose before|loose later|opens 45|opens ninety|opens ten|right behind the one before|role work|row falling|row level|short sentence|to end some|told',
      ],
      [
        -0.3,
        'ahead 60|ahead none|before|before word of|behind word it|behind word its|behind word records|behind word that|from start far|later|later not owned|opens a|opens five|row comma',
      ],
      [
        -0.4,
        'a neighbour named|ahead 180|bare earlier|before word now|before word there|closes minutes|from start 3|instead later|last of more|loose earlier|no name|opens 40|row of 2|row rising|to end far',
      ],
      [
        -0.5,
        'before not owned|only others named around|opens four|opens thirty|others named|right behind another|row|row main',
      ],
      [-0.6, 'at the start|followed near'],
      [-0.7, 'before word and|behind word for|fields workSeconds|seated false'],
      [-0.8, 'past far'],
      [-1.0, 'ahead far'],
    ],
  },
}
