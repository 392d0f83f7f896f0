/**
 * What each mark of an answer adds to the log of the odds that it is the right one: for each question the marks of the answer,
 * and those of each way in which a saying tells it (dose-options.ts). Fitted by tests/fit/fit-doses.ts, not by hand.
 */
export const DOSE_WEIGHTS: Readonly<
  Record<
    'amount' | 'hold' | 'sets' | 'sides' | 'rest' | 'scheme',
    Readonly<Record<string, readonly (readonly [weight: number, marks: string])[]>>
  >
> = {
  amount: {
    option: [
      [1.3, 'times said 0'],
      [1.2, 'called march workSeconds'],
      [1.1, 'workSeconds to 40'],
      [1.0, 'as before in circuit|called support holdSeconds|distanceM to 1000|workSeconds to 30'],
      [0.9, 'called hold holdSeconds|called rais reps|called skip distanceM|holdSeconds to 15|run distanceM'],
      [0.8, 'called quad reps|circuit workSeconds|jump distanceM|none main 0'],
      [
        0.7,
        'called bear holdSeconds|heel-raise reps|none|none main 1|none sure false|reps to 5|row-machine workSeconds|spine-flexion reps|squat reps',
      ],
      [
        0.6,
        "balance reps|called carry distanceM|called deadlift reps|called dip' reps|called leg reps|called push-up holdSeconds|called squat reps|holdSeconds to 20|holdSeconds to 40|isometric holdSeconds|reps range|reps to 10|reps to 20|reps to 9|still holdSeconds|workSeconds to 60",
      ],
      [
        0.5,
        'called curl workSeconds|called door reps|called grapevine distanceM|called plank holdSeconds|called rail holdSeconds|called raise reps|called row reps|called step workSeconds|carry distanceM|curl-up holdSeconds|distanceM to 20|holdSeconds range|holdSeconds to 30|kind distanceM|known still holdSeconds|leg-crossing distanceM|load-over-face reps|lunge reps|none though ruled|not as before|not as before in superset|reps max|side-bend workSeconds',
      ],
      [
        0.4,
        'as before in superset|as neighbour workSeconds|called chop workSeconds|called climber workSeconds|called cushion reps|called flutter workSeconds|called four reps|called jog workSeconds|called pogo reps|called prop holdSeconds|called set reps|called up reps|holdSeconds to 120|jump workSeconds|known distanceM|pull reps|push holdSeconds|reps to 15|reps to 7|ruled behind|ruled main|ruled workSeconds|sit-to-stand reps|spine-rotation workSeconds|superset reps|swing-kit workSeconds|wide-legs workSeconds',
      ],
      [
        0.3,
        'as neighbour distanceM|called 400 distanceM|called beetle holdSeconds|called bit holdSeconds|called bound reps|called box workSeconds|called bug reps|called cat reps|called com holdSeconds|called cow reps|called dip reps|called drag workSeconds|called fallout reps|called hill workSeconds|called hinge workSeconds|called ladder workSeconds|called lift reps|called lower workSeconds|called lung reps|called pose workSeconds|called pres workSeconds|called slid holdSeconds|called straighten reps|called swing workSeconds|called thrust reps|distanceM to 120|distanceM to 30|distanceM to 5|holdSeconds to 10|leg-lowering holdSeconds|lunge workSeconds|push distanceM|ruled|ruled reps|step workSeconds|superset workSeconds',
      ],
      [
        0.2,
        'called ankl distanceM|called bicycl workSeconds|called cleanse reps|called dog reps|called flick distanceM|called foot holdSeconds|called gate holdSeconds|called grip holdSeconds|called heel holdSeconds|called hug reps|called kick reps|called kne workSeconds|called lever reps|called lunge holdSeconds|called needle reps|called off reps|called optimistic holdSeconds|called out reps|called pelican holdSeconds|called press holdSeconds|called pull reps|called pushup reps|called roe reps|called saw workSeconds|called sit holdSeconds|called sit reps|called stand reps|called stay reps|called step distanceM|called straightener reps|called tap workSeconds|called tightrope distanceM|called tuck holdSeconds|called up workSeconds|called walk distanceM|called your holdSeconds|curl-up workSeconds|deep-hip reps|deep-knee workSeconds|floor-to-stand reps|leg-lowering workSeconds|not as before in circuit|overhead reps|push reps|ruled distanceM|ruled holdSeconds|run workSeconds|spine-extension reps|spine-extension workSeconds|step distanceM|workSeconds range',
      ],
      [
        0.1,
        'breathing reps|called 500 distanceM|called apart reps|called back reps|called banana holdSeconds|called behind reps|called bench reps|called body reps|called breath reps|called bridge holdSeconds|called bridge reps|called cabinet reps|called canoe reps|called clean reps|called climb reps|called curl-up reps|called dip holdSeconds|called dock reps|called doll reps|called down reps|called down workSeconds|called elevator reps|called extension reps|called flamingo holdSeconds|called greenhouse reps|called hang holdSeconds|called hedge reps|called heron holdSeconds|called hollow holdSeconds|called jog distanceM|called jump reps|called kick distanceM|called kne distanceM|called kneel holdSeconds|called lower reps|called lunch workSeconds|called lunge workSeconds|called march distanceM|called mat reps|called messag distanceM|called on reps|called only reps|called patter distanceM|called pres reps|called press-up reps|called pull-up reps|called punch workSeconds|called push distanceM|called push-up workSeconds|called right workSeconds|called shrug reps|called slide reps|called squat distanceM|called squeez reps|called stand holdSeconds|called statue holdSeconds|called strid distanceM|called superman workSeconds|called swimm workSeconds|called swimmer workSeconds|called thi reps|called to reps|called touch reps|called treadmill workSeconds|called wall reps|called with reps|circuit distanceM|circuit holdSeconds|hinge holdSeconds|hinge reps|hip-rotation reps|holdSeconds to 25|lunge holdSeconds|reps to 12|spine-flexion workSeconds|times said 3|times said 4|wide-legs holdSeconds',
      ],
      [
        -0.1,
        "balance holdSeconds|ballistic distanceM|ballistic holdSeconds|ballistic reps|ballistic workSeconds|called back holdSeconds|called banana workSeconds|called bat holdSeconds|called bat reps|called beetle reps|called beetle workSeconds|called bicycl reps|called bit reps|called body holdSeconds|called bound workSeconds|called box holdSeconds|called broomstick reps|called carry workSeconds|called circl holdSeconds|called climb holdSeconds|called climber holdSeconds|called climber reps|called crawl workSeconds|called curl holdSeconds|called curl reps|called curl-up workSeconds|called dangle reps|called deadlift holdSeconds|called deadlift workSeconds|called dock holdSeconds|called dog holdSeconds|called down holdSeconds|called drag holdSeconds|called drag reps|called extension holdSeconds|called flamingo workSeconds|called four holdSeconds|called gate reps|called gate workSeconds|called grip reps|called hand holdSeconds|called hand reps|called handstand holdSeconds|called handstand reps|called hang workSeconds|called heel reps|called heel workSeconds|called hollow workSeconds|called hug distanceM|called hydrant reps|called hydrant workSeconds|called jump distanceM|called kick holdSeconds|called kick workSeconds|called kne holdSeconds|called ladder holdSeconds|called ladder reps|called leg holdSeconds|called leg workSeconds|called lever holdSeconds|called lift distanceM|called lift holdSeconds|called lunch reps|called lung distanceM|called messag reps|called morn reps|called off holdSeconds|called opener workSeconds|called plat holdSeconds|called plat workSeconds|called press workSeconds|called press-up holdSeconds|called pump holdSeconds|called pump workSeconds|called punch holdSeconds|called punch reps|called quad workSeconds|called rail workSeconds|called rais distanceM|called rais holdSeconds|called rais workSeconds|called raise workSeconds|called right holdSeconds|called rock workSeconds|called roe workSeconds|called roll workSeconds|called round reps|called row distanceM|called row holdSeconds|called set workSeconds|called sit workSeconds|called slid workSeconds|called squeez holdSeconds|called statue reps|called step holdSeconds|called step reps|called swimmer reps|called swing distanceM|called thrust holdSeconds|called tightrope reps|called tilt workSeconds|called to workSeconds|called tuck reps|called tuck workSeconds|called twist workSeconds|called walk' reps|called your reps|called your workSeconds|carry holdSeconds|deep-hip distanceM|deep-knee distanceM|distanceM to 60|floor-to-stand workSeconds|heel-raise holdSeconds|hip-rotation holdSeconds|hip-rotation workSeconds|holdSeconds more|isometric reps|lunge distanceM|overhead distanceM|pull distanceM|push workSeconds|reps to 1000|side-bend holdSeconds|sit-to-stand holdSeconds|spine-extension holdSeconds|squat distanceM|squat holdSeconds|swing-kit holdSeconds|workSeconds to 12",
      ],
      [
        -0.2,
        "balance workSeconds|called 400 reps|called bat workSeconds|called bit workSeconds|called bound distanceM|called box reps|called bridg reps|called bug holdSeconds|called chop reps|called chop' workSeconds|called circl workSeconds|called cleanse workSeconds|called crawl distanceM|called dip workSeconds|called fallout workSeconds|called foot workSeconds|called hill reps|called hinge holdSeconds|called lift workSeconds|called lower holdSeconds|called lung workSeconds|called optimistic workSeconds|called pelican reps|called plank reps|called pull holdSeconds|called pull workSeconds|called raise holdSeconds|called rock holdSeconds|called saw reps|called skip holdSeconds|called skip workSeconds|called squat holdSeconds|called stand workSeconds|called stretch holdSeconds|called swing holdSeconds|called up holdSeconds|called walk holdSeconds|called walk workSeconds|carry workSeconds|circles holdSeconds|curl-up reps|hinge distanceM|holdSeconds to 12|jump reps|pull workSeconds|reps to 3|row-machine holdSeconds|sit-to-stand workSeconds|spine-flexion distanceM|spine-rotation reps|step reps|superset distanceM|superset holdSeconds|wide-legs reps|workSeconds to 3|workSeconds to 4|workSeconds to 7|workSeconds to 9",
      ],
      [
        -0.3,
        'called bridg holdSeconds|called broom reps|called circle reps|called com reps|called cushion holdSeconds|called flutter distanceM|called hold workSeconds|called kne reps|called march holdSeconds|called pogo distanceM|called pose reps|called quad holdSeconds|called rock reps|called set holdSeconds|called support workSeconds|called tap holdSeconds|circles workSeconds|deep-knee holdSeconds|distanceM to 15|hinge workSeconds|holdSeconds to 4|holdSeconds to 9|isometric distanceM|isometric workSeconds|kind holdSeconds|kind workSeconds|leg-lowering distanceM|load-over-face workSeconds|none main 3|none sure true|overhead holdSeconds|pull holdSeconds|reps to 25|reps to 4|run holdSeconds|side-bend reps|squat workSeconds|step holdSeconds|times said 2|words as before|workSeconds more|workSeconds to 1000|workSeconds to 120|workSeconds to 2',
      ],
      [
        -0.4,
        'called carry reps|called crawl reps|called grapevine reps|called halo reps|called hold reps|called jog reps|called pose holdSeconds|called rail reps|called roll reps|called swing reps|called twist holdSeconds|called twist reps|circuit reps|deep-knee reps|holdSeconds to 60|holdSeconds to 7|jump holdSeconds|leg-crossing reps|overhead workSeconds|ruled return|workSeconds to 1|workSeconds to 5',
      ],
      [
        -0.5,
        'as neighbour holdSeconds|called bik reps|called bridg workSeconds|called bridge workSeconds|called hinge reps|called opener reps|called skip reps|called stretch distanceM|called stretch workSeconds|called tap reps|called th reps|distanceM more|distanceM range|holdSeconds to 1|known holdSeconds|reps to 60|row-machine reps|ruled earlier|ruled later|spine-rotation holdSeconds|stretch holdSeconds|stretch reps|stretch workSeconds|workSeconds to 25',
      ],
      [
        -0.6,
        "called bear reps|called dip' workSeconds|called march reps|called opener holdSeconds|called plat reps|called push-up reps|called slid reps|called support reps|holdSeconds to 2|known still workSeconds|none in superset|said before|spine-flexion holdSeconds|still workSeconds|stretch distanceM|swing-kit reps|workSeconds to 10",
      ],
      [
        -0.7,
        'balance distanceM|called walk reps|carry reps|holdSeconds to 3|none in circuit|reps to 40|run reps|times said 1|workSeconds to 15',
      ],
      [
        -0.8,
        'called hang reps|called stretch reps|holdSeconds to 1000|known still distanceM|known still reps|reps to 30|still distanceM|still reps',
      ],
      [-0.9, 'holdSeconds to 5'],
      [-1.0, 'circles reps|reps to 120|reps to 2'],
      [-1.1, 'reps to 1'],
    ],
    said: [
      [1.4, 'closes breaths'],
      [1.3, 'before word with'],
      [1.2, 'closes twelve|named in the sentence before'],
      [1.1, 'named around'],
      [1.0, 'before word all|behind word was|opens 12'],
      [
        0.9,
        'before word come|before word cone|before word up|behind word counted|behind word repeats|behind word sets|closes eight|closes sixteen|closes through|row before|row of 3|row up to|sided true|words of the name, not named',
      ],
      [
        0.8,
        'before word bounces|before word cleans|before word long|before word step|behind word and|behind word are|behind word faces|behind word ladder|behind word six|closes fifteen|closes total|just before the group|opens eight|opens every',
      ],
      [
        0.7,
        'before owned|before word as|before word clocks|before word have|before word one|before word park|before word rest|before word so|before word will|behind word clock|behind word do|behind word its|behind word stick|behind word ten|closes each|closes minute|closes those|fields workSeconds restSeconds|from start some|in turns before rounds|in turns later|opens sixteen|opens ten|row then|sure before owned|whole earlier not owned|workSeconds of workSeconds restSeconds',
      ],
      [
        0.6,
        'ahead 6|before word change|before word on|before word only|before word other|before word rate|before word rows|before word still|behind word is|behind word it|behind word negatives|behind word stand|behind word that|behind word thats|behind word today|closes 8|closes five|closes fives|corrects before not owned|corrects main owned|from start 3|in clauses|only one|opens 10|opens 4|opens eighty|opens fives|opens twelve|opens twenty|past 5|per side|to end far|while the group is taught|whole before owned',
      ],
      [
        0.5,
        'before word 8|before word dips|before word drag|before word operated|before word the|behind word all|behind word ankles|behind word back|behind word cushion|behind word last|behind word one|behind word presses|closes 15|closes minutes|closes squeezes|closes ten|common|distanceM of sets distanceM|fields reps holdSeconds|fields sets distanceM|in turns main|last of more|main owned|names a mate|nearest before|opens and|opens thirty|reps of reps holdSeconds|sure earlier not owned|weight unknown|words of the name',
      ],
      [
        0.4,
        'a neighbour named|before word after|before word an|before word chins|before word contacts|before word every|before word from|before word into|before word just|before word move|before word rack|before word s|before word slippy|before word steps|before word switch|before word there|before word walk|before word whats|behind word 7|behind word between|behind word eleven|behind word finisher|behind word fourteen|behind word me|behind word move|behind word rope|behind word rowing|behind word seconds|behind word shoulder|behind word stretch|behind word theres|behind word theyre|behind word times|behind word usual|both neighbours named|closes 12|closes 20|closes eights|closes half|closes sides|closes told|from start 2|in breathing|in turns return|instead before|instead main|interval alone main|interval in turns before|later owned|main|opens 8|opens 80|opens six|role move|row counts then|row rising|sure later owned|sure main owned|weight true',
      ],
      [
        0.3,
        'alone main|bare return|before word a|before word depending|before word dont|before word each|before word half|before word hug|before word jog|before word put|before word quick|before word remember|before word right|before word ring|before word since|before word twenty|behind word 400s|behind word another|behind word band|behind word belt|behind word bit|behind word bounds|behind word bus|behind word day|behind word early|behind word fifteen|behind word goes|behind word if|behind word many|behind word number|behind word orange|behind word pages|behind word right|behind word says|behind word slack|behind word so|behind word time|behind word ups|behind word yet|closes 10|closes 4|closes drawers|closes it|closes lunges|corrects|distanceM of distanceM|fields distanceM|fields sets reps|fields sets reps restSeconds|fields sets workSeconds distanceM|fields sets workSeconds restSeconds|followed by then|in turns, told of one alone|instead|instead earlier|interval alone before|named before 1|named behind far|nearest behind|opens 3|opens eights|opens fifteen|opens id|opens stay|reps of sets reps|reps of sets reps restSeconds|row|row of 4|run true|said for all before|whole main owned|will do|workSeconds of sets workSeconds restSeconds',
      ],
      [
        0.2,
        'alone behind rounds|bare behind|bare main|before word at|before word cos|before word facing|before word farmers|before word four|before word hangs|before word heavier|before word it|before word mind|before word nothings|before word of|before word okay|before word out|before word shoulders|before word start|before word twice|before word two|before word unless|behind word again|behind word arm|behind word cow|behind word deadlifts|behind word deal|behind word dog|behind word drills|behind word face|behind word from|behind word gets|behind word go|behind word heel|behind word jan|behind word keen|behind word ligaments|behind word lower|behind word nine|behind word press|behind word prop|behind word sheet|behind word shrugs|behind word skipping|behind word slides|behind word yes|behind word your|closes 3|closes down|closes go|closes laps|closes meters|closes middle|closes other|closes right|closes side|in caution|in turns earlier rounds|interval in turns earlier|just behind the group|longer sentence|named behind some|opens 15|opens 30|opens about|opens bit|opens call|opens i|opens its|opens mini|opens same|opens so|opens we|reps of reps workSeconds|return owned|role chat|run unknown|said before|said for all|seated unknown|standing true|sure main not owned|weight false|whole return owned|workSeconds moving',
      ],
      [
        0.1,
        'alone later rounds|alone main rounds|before word 5k|before word already|before word and|before word any|before word are|before word band|before word basically|before word bench|before word calf|before word deep|before word didnt|before word gets|before word grip|before word head|before word heel|before word hips|before word if|before word like|before word lunges|before word over|before word pedal|before word roll|before word same|before word sticks|before word tailbone|before word tens|before word tuck|before word waiting|before word whatever|before word whatevers|behind word 14|behind word 19|behind word bar|behind word behind|behind word bell|behind word breathe|behind word bridge|behind word buckets|behind word bugs|behind word cheating|behind word chest|behind word climb|behind word climbers|behind word curls|behind word feet|behind word flat|behind word front|behind word goal|behind word grass|behind word hair|behind word hands|behind word hover|behind word i|behind word isnt|behind word jog|behind word just|behind word light|behind word mat|behind word mes|behind word morning|behind word next|behind word old|behind word opens|behind word other|behind word out|behind word over|behind word plenty|behind word pyramid|behind word ride|behind word said|behind word same|behind word short|behind word shoulders|behind word sit|behind word slide|behind word slowly|behind word small|behind word squat|behind word squats|behind word still|behind word strict|behind word swap|behind word t|behind word tall|behind word taps|behind word these|behind word thirties|behind word tight|behind word touch|behind word turn|behind word twenty|behind word under|behind word wait|behind word way|behind word were|behind word wind|behind word with|behind word wood|behind word yellow|closes altogether|closes awake|closes bench|closes between|closes curls|closes different|closes do|closes lap|closes left|closes metres|closes press|closes pushups|closes raises|closes sets|closes strokes|closes them|distanceM of reps distanceM|distanceM of sets distanceM restSeconds|distanceM of sets reps distanceM restSeconds|fields reps workSeconds tempo|fields sets distanceM restSeconds|fields sets reps distanceM restSeconds|first of more|followed by level|for part|from start 1|holdSeconds still|in harder|in turns before|named before|named before 2|named behind 0|opens 2|opens 40|opens 400|opens 5|opens a|opens anything|opens first|opens sixes|opens sixty|opens somewhere|reps of reps workSeconds tempo|right behind the one before|role work|rounds|row earlier|stretch unknown|to end 1|to end some|told|whole main not owned|workSeconds of sets reps workSeconds restSeconds',
      ],
      [
        -0.1,
        'ahead 180|ahead 60|before word 10|before word 13|before word 18|before word 2|before word 3|before word actually|before word behind|before word bend|before word bikes|before word blow|before word blues|before word both|before word bottom|before word breathe|before word bring|before word chest|before word coming|before word days|before word dogs|before word done|before word doors|before word end|before word everyone|before word eyes|before word feel|before word feels|before word fingers|before word flights|before word for|before word fourteen|before word front|before word go|before word gordons|before word grow|before word gwilym|before word hollows|before word im|before word its|before word ive|before word keep|before word kilo|before word lay|before word lean|before word leave|before word lets|before word lower|before word months|before word nearly|before word nineteen|before word ninety|before word onto|before word outside|before word pace|before word partner|before word phone|before word pick|before word points|before word press|before word presses|before word ribs|before word seven|before word shake|before word side|before word sit|before word sitting|before word somebody|before word somebodys|before word stood|before word straight|before word swimming|before word take|before word than|before word thirty|before word threes|before word till|before word tiptoes|before word twelve|before word us|before word was|before word well|before word when|before word whole|before word wont|before word write|before word you|before word youll|before word youve|behind not owned|behind word 13|behind word 2|behind word 3|behind word 4|behind word 8|behind word allowed|behind word an|behind word aparts|behind word big|behind word bottom|behind word brave|behind word but|behind word ceiling|behind word circuit|behind word click|behind word count|behind word courting|behind word doors|behind word drags|behind word drink|behind word each|behind word ear|behind word eighteen|behind word end|behind word faster|behind word fat|behind word figure|behind word floor|behind word forward|behind word going|behind word good|behind word granddaughters|behind word hand|behind word has|behind word head|behind word hes|behind word high|behind word higher|behind word hill|behind word hips|behind word hold|behind word hollow|behind word home|behind word kind|behind word knees|behind word left|behind word legs|behind word lift|behind word like|behind word long|behind word manage|behind word mean|behind word menu|behind word mighty|behind word minutes|behind word more|behind word much|behind word neck|behind word need|behind word needs|behind word neither|behind word nineteen|behind word off|behind word or|behind word palm|behind word pink|behind word plank|behind word planned|behind word pockets|behind word pull|behind word push|behind word quads|behind word ramp|behind word rate|behind word reason|behind word records|behind word reds|behind word remember|behind word rest|behind word return|behind word rise|behind word room|behind word row|behind word run|behind word saying|behind word set|behind word shes|behind word skips|behind word spilling|behind word squash|behind word squatted|behind word station|behind word steps|behind word take|behind word than|behind word them|behind word thigh|behind word thighs|behind word things|behind word thirteen|behind word thirty|behind word those|behind word toe|behind word top|behind word tyrant|behind word waistband|behind word waited|behind word waiting|behind word want|behind word week|behind word well|behind word wide|behind word wobbling|between|closes 14|closes 16|closes 30|closes 45|closes 5k|closes 9|closes all|closes brave|closes change|closes done|closes eighteen|closes kilometres|closes leg|closes lengths|closes miles|closes outs|closes over|closes plenty|closes rows|closes set|closes steps|closes time|condition|fields sets holdSeconds|fields sets holdSeconds restSeconds|fields sets reps workSeconds restSeconds|followed later|held in the sentence|holdSeconds of sets holdSeconds|holdSeconds of sets holdSeconds restSeconds|in easier|in turns|in turns behind rounds|in turns later rounds|in turns main rounds|in turns return rounds|interval alone behind|interval in turns later|later|loose behind|named before 3|named before another between|named behind 2|no name|opens 14|opens 16|opens 17|opens 18|opens 300|opens 41|opens 5k|opens change|opens each|opens eighteen|opens everythings|opens four|opens heel|opens push|opens tens|opens then|others in the sentence before|reps of reps distanceM|return not owned|right behind another|role teach|row later|row return|run false|said for all behind|said for all main|seated false|short sentence|sure behind not owned|sure return not owned|to end 2|whole return not owned|workSeconds of reps workSeconds tempo',
      ],
      [
        -0.2,
        'alone earlier|alone earlier rounds|at the start|before|before word 20|before word 9|before word ankle|before word back|before word because|before word bell|before word between|before word centimetre|before word drink|before word elbows|before word eleven|before word enough|before word feet|before word first|before word forty|before word hamstring|before word hand|before word hundred|before word id|before word in|before word is|before word leg|before word lift|before word lovely|before word miles|before word my|before word near|before word now|before word once|before word people|before word percent|before word pound|before word pounds|before word score|before word slow|before word swap|before word thirteen|before word thousand|before word weights|before word work|before word years|before word youre|behind word bear|behind word blue|behind word blues|behind word can|behind word county|behind word done|behind word everythings|behind word fine|behind word fingertips|behind word forget|behind word got|behind word had|behind word hall|behind word heels|behind word here|behind word instead|behind word ive|behind word jeans|behind word lets|behind word level|behind word nose|behind word of|behind word once|behind word pair|behind word past|behind word pillow|behind word raises|behind word rather|behind word say|behind word seven|behind word smell|behind word swinging|behind word swings|behind word this|behind word us|behind word window|behind word you|behind word youve|closes 11|closes 60|closes 7|closes enough|closes fifty|closes four|closes fours|closes fourteen|closes lifts|closes out|closes red|closes round|closes row|closes seventy|closes squats|closes tens|closes these|closes thirteen|closes twice|closes up|closes ups|closes you|earlier not owned|fields reps tempo|fields sets reps workSeconds|fields workSeconds|followed by or|in fault|in turns, names one alone|in turns, told of another group|instead later|interval alone, named around|loose|named behind 3|only others named around|opens 11|opens 13|opens 20|opens 60|opens 9|opens fifty|opens five|opens fours|opens ladder|opens lets|opens ninety|opens per|opens say|opens seventy|opens static|opens take|opens well|reps of reps tempo|reps of sets reps workSeconds restSeconds|row behind|row level|row main|standing false|standing unknown|stretch false|stretch true|sure before not owned|sure behind owned|unsure|whole before not owned|whole later not owned|workSeconds of sets reps workSeconds|workSeconds of workSeconds',
      ],
      [
        -0.3,
        'alone before|alone, told of one alone|at later|before not owned|before word backs|before word but|before word down|before word eight|before word five|before word foot|before word good|before word hands|before word hang|before word hmm|before word ignore|before word inches|before word kilos|before word left|before word look|before word och|before word oclock|before word off|before word six|before word stop|before word thatll|before word this|before word three|before word today|behind word bench|behind word box|behind word bulgarians|behind word climbs|behind word core|behind word did|behind word even|behind word first|behind word get|behind word have|behind word little|behind word ones|behind word put|behind word really|behind word rose|behind word saturday|behind word the|behind word tonight|behind word youll|closes 1|closes again|closes arm|closes benches|closes couple|closes goes|closes nineteen|closes off|closes rounds|closes seven|closes sixty|corrects return owned|earlier|fields holdSeconds|fields reps workSeconds|followed by up to|followed near|for all|from start far|holdSeconds of holdSeconds|in focus|in turns, names one of another group|interval alone earlier|interval in turns, named around|later not owned|named behind 1|opens 7|opens do|opens forty|opens hold|opens nineteen|opens thats|opens thirteen|opens threes|opens twice|role end|row counts level|said for all earlier|to end 3|told of a mate',
      ],
      [
        -0.4,
        'alone before rounds|alone, told of another group|bare earlier|before word big|before word degrees|before word euro|before word flat|before word hold|before word i|before word last|before word let|before word not|before word rings|before word then|before word weeks|before word written|behind word 9|behind word badge|behind word chair|behind word counts|behind word down|behind word five|behind word half|behind word in|behind word lifts|behind word minute|behind word raised|behind word road|behind word rows|behind word stage|behind word there|behind word twists|behind word two|behind word up|closes 2|closes 5|closes 6|closes eleven|closes twenty|earlier owned|fields reps restSeconds|followed by one for some|in range|in setup|in turns earlier|instead behind|instead return|loose before|loose earlier|loose later|named before some|opens fourteen|opens half|opens seven|reps of reps restSeconds|seated true|sure earlier owned|sure return owned|whole behind owned|whole earlier owned',
      ],
      [
        -0.5,
        'ahead far|before word going|before word more|before word nah|before word or|behind word a|behind word for|behind word leg|behind word no|behind word on|behind word only|behind word strides|behind word to|closes ones|closes presses|closes times|corrects later not owned|of a later round|opens circuit|others named|sure later not owned|workSeconds of reps workSeconds',
      ],
      [
        -0.6,
        'alone later|alone return|alone, names one of another group|before word oh|behind word about|behind word round|behind word then|behind word three|closes breath|closes thirty|closes two|closes way|corrects earlier not owned|from start 0|opens 1|opens two|past 60|taken back',
      ],
      [-0.7, 'bare before|before word to|closes three|followed by comma|holdSeconds moving|row of 2'],
      [
        -0.8,
        'behind word not|closes forty|closes nine|fields sets workSeconds|opens nine|sided false|workSeconds of sets workSeconds',
      ],
      [
        -0.9,
        'before word nine|before word round|before word your|behind word at|behind word eight|in tempo|opens eleven|opens one|row comma|workSeconds still',
      ],
      [-1.0, 'another nearer|behind word four|closes one|in execution|opens for|row counts|row counts comma'],
      [-1.2, 'before word no'],
    ],
    'as seconds': [
      [0.7, 'before word go|behind word to|closes 30|opens 30'],
      [0.6, 'closes twenty|in turns, told of one alone'],
      [0.5, 'in turns later|named around|named in the sentence before|opens twenty|past 60'],
      [0.3, 'before word its|before word on|before word same|behind word in|named before|nearest before'],
      [
        0.2,
        'behind word backs|behind word last|closes thirty|corrects|instead later|later|later owned|named before 2|named before some|opens make|sure later owned|words of the name',
      ],
      [0.1, 'bare later|from start some|loose later|only one'],
      [
        -0.1,
        'ahead 180|ahead none|alone behind|alone, names one alone|alone, told of another group|bare behind|before word of|before word s|before word two|behind|behind not owned|behind word and|behind word supermans|closes 1|closes eight|closes five|closes forty|closes four|closes six|closes ten|closes three|counted name|fields sets reps|followed by then|followed near|for all|from start 1|held in the sentence|in execution|in setup|in turns|in turns before|in turns earlier|instead main|loose behind|main owned|named before 0|named behind|names a mate|nearest behind|only others named around|opens 1|opens eight|opens five|opens forty|opens four|opens six|opens ten|others in the sentence before|past 5|right behind another|role move|rounds|row|row comma|row counts|row counts comma|row falling|row main|row of 2|row rising|short sentence|sided false|sure earlier not owned|sure later not owned|sure main owned|to end 0|to end 1|to end 2|to end 3|will do',
      ],
      [
        -0.2,
        'a neighbour named|ahead 20|ahead 6|ahead 60|ahead far|alone before|alone earlier|alone later|alone main|alone, told of one alone|at later|at the start|bare|bare before|bare earlier|bare main|bare return|before word and|closes two|condition|earlier|earlier not owned|fields reps|followed by comma|followed by level|from start far|in turns main|in turns return|just behind the group|loose|loose before|loose earlier|loose main|loose return|main|main not owned|opens three|opens two|others named|past 15|per side|return|return not owned|right behind the one before|role chat|role work|sure before not owned|to end far|told|told of a mate',
      ],
      [
        -0.3,
        'before|before not owned|closes one|followed later|longer sentence|no name|opens one|past far|role teach|while the group is taught',
      ],
    ],
    'as seconds held': [
      [1.2, 'opens make'],
      [0.8, 'closes twenty|followed by up to|only one'],
      [0.7, 'behind word so|corrects main owned|from start some'],
      [
        0.6,
        'before word feels|before word rings|behind word if|behind word it|behind word say|behind word you|corrects|main owned|opens 20|whole main owned',
      ],
      [
        0.5,
        'before word in|before word with|closes 20|fields sets reps restSeconds|in harder|instead main|per side|to end far',
      ],
      [0.4, 'closes forty|closes off|opens fifteen|row of 3'],
      [
        0.3,
        'alone main rounds|before word 20|before word back|before word knees|behind word whole|closes fifteen|closes leg|closes ten|in easier|in execution|instead|opens 30',
      ],
      [
        0.2,
        'before word a|before word its|behind word 20|behind word no|condition|from start 2|in turns main|opens its|opens lets|row main',
      ],
      [
        0.1,
        'before word and|closes thirty|closes twice|first of more|from start 3|in fault|opens ten|opens thirty|opens twenty|row comma|row rising',
      ],
      [
        -0.1,
        'a neighbour named|ahead 180|alone before rounds|alone behind|alone later|alone main|alone, names one alone|alone, names one of another group|alone, told of another group|bare behind|bare later|bare return|before word between|before word breathe|before word dont|before word hand|before word i|before word keep|before word no|before word of|before word on|before word s|before word thats|before word to|before word up|before word we|before word whos|before word you|behind|behind not owned|behind word about|behind word and|behind word ask|behind word at|behind word back|behind word do|behind word dog|behind word down|behind word for|behind word go|behind word heels|behind word in|behind word is|behind word last|behind word one|behind word three|behind word two|behind word was|behind word well|between|closes 10|closes 15|closes 6|closes eight|closes nine|closes seconds|closes seven|closes side|closes six|closes through|closes twelve|fields reps tempo|fields reps workSeconds|followed by then|for all|in caution|in tempo|in turns|in turns before|in turns earlier|in turns later|in turns return|loose behind|loose later|loose return|named around|of a later round|opens 10|opens 3|opens and|opens eight|opens for|opens forty|opens same|opens seven|opens twelve|others in the sentence before|past 5|past 60|past far|return not owned|right behind another|role move|role teach|rounds|row falling|row level|sure earlier not owned|sure later not owned|sure main owned|to end 2|whole before not owned|will do',
      ],
      [
        -0.2,
        'ahead 20|ahead 6|ahead 60|bare|bare before|before word elbows|before word foot|before word if|before word one|behind word its|behind word on|behind word the|closes five|closes four|closes those|closes three|closes two|fields reps restSeconds|from start 0|from start 1|from start far|held in the sentence|in setup|last of more|later|later not owned|longer sentence|loose before|loose earlier|loose main|main not owned|only others named around|opens five|opens four|opens six|others named|past 15|return|role chat|row counts|row counts comma|row of 2|to end 0|to end some|told|told of a mate',
      ],
      [
        -0.3,
        'ahead far|ahead none|alone before|alone earlier|alone, told of one alone|at later|at the start|bare earlier|before|before not owned|closes them|earlier|earlier not owned|fields reps|loose|opens three|opens two|right behind the one before|role work|short sentence|sure before not owned|taken back|to end 3',
      ],
      [-0.4, 'closes one|followed near|no name'],
      [-0.5, 'opens one'],
    ],
    ruled: [[-0.1, 'alone|told']],
    span: [
      [1.3, 'sure loose'],
      [1.1, 'before word for|from start some'],
      [1.0, 'closes eight'],
      [0.9, 'before word big'],
      [0.8, 'before word if|behind word dream|closes 8|closes ten|closes twenty'],
      [
        0.7,
        'before word dumbbell|behind word does|behind word or|behind word third|by or, for whom|by then|opens 2|opens 30|opens fifteen|then for whom',
      ],
      [
        0.6,
        'before word at|before word fifteen|before word on|before word s|behind word blues|behind word go|behind word so|behind word two|closes foot|opens ten|opens twenty|role chat|row counts level|sure later not owned|told of a mate|while the group is taught',
      ],
      [
        0.5,
        'before word keep|before word the|before word two|before word weights|behind word leg|closes seconds|from start 3|in a later round, in turns|in turns later|interval in turns later|row counts',
      ],
      [
        0.4,
        'before word leave|behind word and|by if, for whom|by or|closes 10|condition|fields sets reps|in turns later rounds|last of more|of intervals|opens 10|opens eight|row counts then|row level',
      ],
      [
        0.3,
        'before word not|behind word do|behind word round|behind word weeks|by up to|closes four|closes off|fields reps workSeconds restSeconds|in a later round|in a later round, no interval|in turns main|in turns main rounds|later|later not owned|opens twos|past 60|row rising|row then|sure sure|to end far|whole main owned',
      ],
      [
        0.2,
        'alone return|behind word its|behind word nine|behind word then|behind word to|by far|closes fifteen|closes five|closes thirty|fields workSeconds|followed by then|in breathing|instead main|of a later round|opens two|rising|row main',
      ],
      [
        0.1,
        'before word dont|before word youre|behind word at|behind word just|by up to, for whom|common|corrects behind not owned|corrects later not owned|fields workSeconds restSeconds|in a later round, interval|in fault|in turns behind|in turns behind rounds|in turns, names one of another group|interval in turns behind|of workSeconds|opens forty|row|row of 3|sure behind not owned|taken back',
      ],
      [
        -0.1,
        'ahead 20|ahead 6|ahead none|alone before rounds|alone earlier rounds|alone main|alone main rounds|alone, names one of another group|alone, told of another group|bare behind|bare return|before word a|before word an|before word between|before word breathe|before word but|before word cleans|before word degrees|before word each|before word eight|before word five|before word four|before word have|before word hold|before word hollows|before word im|before word in|before word into|before word its|before word just|before word kilos|before word left|before word let|before word like|before word look|before word lovely|before word more|before word nine|before word no|before word now|before word off|before word okay|before word one|before word park|before word past|before word people|before word percent|before word shoulders|before word sit|before word six|before word so|before word step|before word ten|before word that|before word thats|before word there|before word thirty|before word walk|before word weeks|before word with|before word yes|before word you|behind owned|behind word about|behind word can|behind word clock|behind word did|behind word down|behind word each|behind word eight|behind word five|behind word is|behind word it|behind word last|behind word me|behind word nineteen|behind word not|behind word of|behind word on|behind word once|behind word ones|behind word right|behind word same|behind word say|behind word second|behind word seven|behind word six|behind word stand|behind word take|behind word that|behind word thats|behind word there|behind word up|behind word ups|behind word was|behind word your|behind word youve|closes 1|closes 12|closes 2|closes 20|closes 3|closes 30|closes 5|closes 6|closes 75|closes between|closes brave|closes breath|closes goes|closes leg|closes lengths|closes metres|closes nineteen|closes seven|closes seventy|closes them|closes those|closes through|closes times|closes twice|corrects before not owned|counted name|fields distanceM|fields reps restSeconds|fields sets reps restSeconds|fields sets workSeconds|followed by one for some|followed near|for all|in caution|in easier|in execution|in harder|in range|in setup|in turns before|in turns before rounds|in turns earlier|in turns earlier rounds|in turns, told of one alone|instead|instead earlier|instead later|instead return|interval alone earlier|interval in turns before|just before the group|longer sentence|loose behind|loose return|main|main not owned|names a mate|of reps|opens 1|opens 12|opens 20|opens 4|opens 6|opens 75|opens 8|opens do|opens eighty|opens five|opens for|opens its|opens nine|opens nineteen|opens seven|opens seventy|opens so|opens thirty|others named|past 15|past 5|past far|per side|return not owned|right behind the one before|row behind|row return|said for all|said for all before|sided true|sided unknown|sure behind owned|sure main not owned|sure main owned|to end 0|to end some|whole before not owned|whole earlier not owned|words of the name',
      ],
      [
        -0.2,
        'a neighbour named|alone before|alone behind|alone earlier|alone later|alone, told of one alone|at the start|bare|before word of|before word then|before word three|behind word four|behind word going|behind word if|behind word in|behind word the|behind word you|between|by far, for whom|closes nine|closes sixty|closes twelve|corrects|corrects main owned|fields reps|followed by comma|from start 0|in tempo|interval alone before|just behind the group|loose|loose later|named around|of distanceM|only one|opens 15|opens 3|opens a|opens four|opens hold|opens ninety|opens sixty|opens twelve|others in the sentence before|role move|row falling|sure earlier not owned|sure return owned|told',
      ],
      [
        -0.3,
        'at later|bare later|before|before not owned|before word i|before word to|behind word one|behind word three|by if|closes forty|closes minute|closes side|earlier|earlier not owned|fields holdSeconds|fields sets workSeconds restSeconds|first of more|followed by level|no name|only others named around|return|return owned|short sentence|sure before not owned|to end 2',
      ],
      [
        -0.4,
        'ahead far|behind word for|by then, for whom|closes minutes|in turns return|loose sure|role teach|role work',
      ],
      [-0.5, 'by near|falling|from start far|of holdSeconds|row counts comma|will do'],
      [-0.6, 'closes one|closes two|held in the sentence|opens one|row comma'],
      [-0.7, 'loose loose|opens three'],
    ],
    'as hold': [
      [1.0, 'row then'],
      [0.9, 'closes twenty|row rising|whole main owned'],
      [0.8, 'before word if|closes leg|row of 3|to end far'],
      [0.7, 'ahead 180|opens twenty|row main'],
      [0.6, 'closes times|from start some|last of more|row up to'],
      [
        0.5,
        'before word for|before word just|behind word bear|closes twice|corrects main owned|fields sets workSeconds restSeconds|main owned|only one|opens two|row|short sentence|words of the name',
      ],
      [
        0.4,
        'alone main|before word breathe|before word on|before word round|before word stop|behind word brenda|behind word its|behind word lets|behind word your|corrects|fields sets workSeconds|followed by level|from start 3|interval alone main|interval alone, named around|main|named around|named in the sentence before|nearest before|role teach|sided true|sure main owned',
      ],
      [
        0.3,
        'before word each|before word hips|before word its|before word youll|behind word do|behind word same|behind word supports|behind word well|closes 15s|closes between|closes fifteen|common|in clauses|instead main|named before 0|opens 15s|opens forty|opens nine|opens say|opens thirty|per side|row or|sure later not owned|words of the name, not named',
      ],
      [
        0.2,
        'alone later|alone, names one alone|at the start|bare main|before word anybody|before word long|before word swap|behind word bent|behind word eight|behind word isnt|behind word knees|behind word level|behind word long|behind word shame|behind word so|behind word ten|behind word twenty|behind word up|closes 40|closes forty|closes thirty|closes three|fields sets reps workSeconds restSeconds|in turns before rounds|instead|interval alone before|just behind the group|named before|opens 25|opens so|opens ten|past 60|return owned|sure return owned|told',
      ],
      [
        0.1,
        'before word back|before word between|before word cons|before word please|before word squeeze|before word then|before word up|behind owned|behind word deal|behind word floor|behind word holds|behind word kind|behind word ladder|behind word planks|behind word soft|behind word thats|behind word there|behind word you|between|closes air|fields reps workSeconds|in caution|in setup|in turns before|in turns return|later|later not owned|longer sentence|loose main|main not owned|names a mate|opens 10|opens bit|opens call|opens circuit|past 5|role work|sided unknown|sure behind owned|whole before not owned|whole before owned',
      ],
      [
        -0.1,
        'alone before rounds|alone earlier rounds|alone later rounds|alone return|alone, told of another group|bare before|bare earlier|before word dont|before word go|before word i|before word ignore|before word ill|before word im|before word ive|before word lie|before word off|before word partner|before word rows|before word shake|before word stood|before word thirty|before word three|before word to|before word will|behind not owned|behind word and|behind word back|behind word core|behind word each|behind word finisher|behind word go|behind word head|behind word held|behind word it|behind word knee|behind word minute|behind word plank|behind word prop|behind word really|behind word records|behind word round|behind word six|behind word swings|behind word teeth|behind word that|behind word the|behind word waistband|behind word was|behind word with|closes each|closes half|closes nine|closes one|closes over|closes rounds|closes side|closes six|closes stations|closes ten|closes through|fields workSeconds|followed by then|for all|from start 1|from start far|in execution|in focus|in turns later|in turns later rounds|in turns, names one of another group|in turns, told of one alone|instead before|interval alone earlier|just before the group|loose|loose before|loose earlier|named before 3|named behind|nearest behind|opens 13|opens 15|opens eight|opens half|opens ninety|others named|past 15|past far|row counts comma|row earlier|row return|said for all|said for all before|stretch false|sure before not owned|sure behind not owned|to end 3|told of a mate|unsure|whole earlier not owned',
      ],
      [
        -0.2,
        'ahead 60|alone, names one of another group|another nearer|bare later|bare return|before|before not owned|before word keep|before word left|before word s|behind word a|behind word had|closes foot|condition|followed later|from start 0|held in the sentence|in fault|in harder|in tempo|in turns|loose later|loose return|named before another between|opens 3|opens five|opens ladder|opens twelve|return not owned|right behind another|right behind the one before|rounds|row later|said before|sure earlier not owned|to end 0|to end 1|whole later not owned',
      ],
      [
        -0.3,
        'ahead 20|alone before|alone earlier|before word no|behind word down|behind word is|earlier|earlier not owned|of a later round|opens 30|opens a|opens three|others in the sentence before|row counts|row counts level|sided false|will do',
      ],
      [
        -0.4,
        'before word and|before word hang|before word is|before word of|before word or|behind word heel|fields workSeconds restSeconds|first of more|followed by or|followed near|no name|only others named around|opens 20|opens four|to end some',
      ],
      [-0.5, 'at later|closes minute|closes minutes|followed by one for some|opens fifteen|opens one|to end 2'],
      [-0.6, 'ahead far|behind word for|row comma|row level'],
      [-0.7, 'closes seconds|row falling|taken back'],
      [-0.8, 'closes goes'],
    ],
    'as work': [
      [
        -0.1,
        'alone before|alone main|at later|at the start|before|before not owned|before word and|fields holdSeconds|held in the sentence|main|main owned|no name|only one|opens hold|role teach|role work|sure before not owned|sure main owned',
      ],
      [-0.2, 'longer sentence|told'],
    ],
    'in rep': [
      [0.3, 'holdSeconds still|only one|role chat'],
      [
        0.2,
        'alone main|before word each|followed near|from start some|longer sentence|main|main owned|stretch true|sure main owned|to end far|told',
      ],
      [
        0.1,
        'ahead far|alone before|at the start|before|before not owned|before word and|behind word just|closes time|fields reps holdSeconds|fields sets reps holdSeconds|from start 2|held in the sentence|holdSeconds of reps holdSeconds|holdSeconds of sets reps holdSeconds|only others named around|opens eight|opens hold|opens stay|others in the sentence before|sure before not owned|whole before not owned',
      ],
      [
        -0.1,
        'alone earlier|alone, told of one alone|at later|before word dont|behind word long|closes seconds|earlier|earlier not owned|for all|holdSeconds moving|in tempo|last of more|opens its|per side|role work|sure earlier not owned',
      ],
      [-0.2, 'stretch false'],
    ],
    'as many': [
      [0.7, 'alone main|main'],
      [0.6, 'longer sentence|main owned|sure main owned|to end far'],
      [0.5, 'fields workSeconds|from start some|told'],
      [0.4, 'only one|role work'],
      [0.3, 'before word as|closes minutes|closes seconds'],
      [0.2, 'before word on|opens ninety'],
      [0.1, 'bare|bare main|behind word hammers|behind word in|loose|loose main|main not owned|role chat|role teach'],
      [-0.1, 'ahead none|alone, told of one alone'],
      [-0.2, 'at later|no name'],
    ],
    'sets as reps': [
      [0.7, 'fields sets workSeconds'],
      [0.5, 'beside workSeconds'],
      [0.4, 'main|main owned|opens ten|sure main owned|told|whole main owned'],
      [0.3, 'alone main|closes those|longer sentence|role teach'],
      [0.2, 'ahead 60|right behind the one before|role work|to end far'],
      [
        0.1,
        'at later|corrects|corrects earlier not owned|earlier|earlier not owned|first of more|followed later|from start far|in turns earlier|in turns, told of one alone|instead|instead earlier|no name|sure earlier not owned|whole earlier not owned',
      ],
      [
        -0.1,
        'ahead 180|alone before|alone, names one alone|at the start|before|before not owned|before word then|before word work|behind word eight|behind word strides|behind word swings|beside distanceM|closes metres|common|fields sets distanceM|followed by then|followed near|in turns before|in turns earlier rounds|interval in turns earlier|last of more|only others named around|opens eight|opens six|others named|role chat|sure before not owned|whole before not owned',
      ],
      [-0.2, 'ahead far|closes off|fields sets workSeconds restSeconds|in turns|rounds'],
    ],
  },
  hold: {
    option: [
      [1.4, 'to 3'],
      [1.3, 'to 5'],
      [0.5, 'none though ruled'],
      [0.4, 'none|to 2'],
      [-0.1, 'ruled'],
      [-0.2, 'to 25'],
      [-0.3, 'more|range|to 15|to 40'],
      [-0.4, 'beside distanceM|beside undefined|beside workSeconds|to 1000'],
      [-0.5, 'to 1|to 120|to 30|to 60'],
      [-0.7, 'still|to 10|to 20'],
      [-1.0, 'beside holdSeconds'],
    ],
    'from work': [
      [0.8, 'before word at'],
      [0.6, 'held in the sentence'],
      [0.5, 'before word heel|closes sets'],
      [0.4, 'behind word thats|closes those|from start some|in execution'],
      [0.3, 'behind word quads|closes each|opens five|unsure|whole main owned'],
      [0.2, 'before word its|behind word with|fields sets reps workSeconds|opens 3|opens three|whole before owned'],
      [
        0.1,
        'before owned|before word no|behind word for|followed by comma|named in the sentence before|opens ten|sure before owned|with amount',
      ],
      [
        -0.1,
        'ahead 180|alone behind|alone earlier rounds|alone later rounds|alone main rounds|alone return|alone, names one of another group|alone, told of another group|bare behind|bare later|bare main|bare return|before word 60|before word after|before word as|before word between|before word dont|before word each|before word for|before word go|before word going|before word i|before word if|before word im|before word left|before word really|before word round|before word sat|before word shake|before word so|before word the|before word with|behind word again|behind word circuit|behind word do|behind word eight|behind word go|behind word in|behind word is|behind word it|behind word level|behind word rest|behind word round|behind word said|behind word so|behind word stand|behind word swings|behind word take|behind word that|behind word the|behind word there|behind word time|behind word to|behind word way|behind word your|behind word youve|between|closes between|closes circles|closes half|closes hour|closes leg|closes one|closes over|closes rounds|closes second|closes side|closes three|closes through|closes times|closes twice|corrects before not owned|corrects main owned|fields reps workSeconds|fields sets reps workSeconds restSeconds|fields workSeconds tempo|first of more|followed by one for some|from start 0|from start 1|from start 2|from start 3|in easier|in setup|in tempo|in turns behind|in turns earlier rounds|in turns later rounds|in turns main rounds|in turns, names one alone|instead before|instead earlier|instead later|interval alone main|interval alone, named around|just behind the group|loose behind|loose later|loose main|loose return|main not owned|named before|nearest before|opens 20|opens 4|opens 40|opens 45|opens 5|opens 6|opens 60|opens an|opens as|opens circuit|opens eight|opens fifteen|opens sixty|others named|past 5|per side|return not owned|return owned|row comma|row falling|row of 3|row then|said before|seated false|sided false|standing true|stretch false|sure behind not owned|sure main not owned|sure return owned|to end 3|to end far|told of a mate|whole main not owned|words of the name',
      ],
      [
        -0.2,
        'a neighbour named|ahead 20|ahead 6|alone before rounds|alone main|alone, names one alone|bare|bare before|bare earlier|before word and|before word in|before word of|before word on|before word then|before word to|behind|behind not owned|behind word and|closes off|fields workSeconds restSeconds|followed by then|followed near|in turns before rounds|in turns earlier|in turns later|in turns return|in turns, told of one alone|instead main|interval alone before|interval in turns before|just before the group|last of more|loose|loose before|loose earlier|of a later round|opens 30|opens four|opens half|opens ninety|opens one|opens thirteen|others in the sentence before|past 15|return|right behind another|row level|row main|row of 2|row rising|said for all|said for all before|to end 0|to end 1|to end 2|to end some|whole before not owned|whole earlier not owned|whole later not owned',
      ],
      [
        -0.3,
        'ahead 60|alone before|alone earlier|alone later|alone, told of one alone|at the start|before|behind word its|closes seconds|common|condition|corrects|earlier|earlier not owned|fields sets workSeconds restSeconds|followed by level|followed later|for all|in turns|in turns before|in turns main|instead|later|later not owned|longer sentence|main|main owned|only one|only others named around|opens a|opens forty|opens thirty|opens twenty|opens two|past 60|past far|right behind the one before|role teach|role work|rounds|row|sure earlier not owned|sure later not owned|sure main owned|while the group is taught|will do',
      ],
      [
        -0.4,
        'ahead far|ahead none|at later|before not owned|closes minute|closes minutes|fields workSeconds|from start far|no name|role chat|short sentence|sure before not owned|told',
      ],
    ],
    said: [
      [0.6, 'closes 2'],
      [0.5, 'before word and|from start 2|main|main owned|only one|sure main owned'],
      [0.4, 'before word then|fields reps holdSeconds'],
      [0.3, 'alone main|closes them|closes two|corrects main owned|opens hold|to end far'],
      [
        0.2,
        'behind word forward|behind word long|behind word mat|behind word the|behind word those|behind word to|behind word up|closes seconds|corrects|fields holdSeconds restSeconds|from start 3|held in the sentence|in turns main|instead main|last of more|opens 15|opens five|to end some',
      ],
      [
        0.1,
        'before word dont|before word thats|behind word and|behind word go|behind word so|behind word thigh|behind word together|behind word train|closes five|followed by then|from start 1|in clauses|in execution|opens its|opens so|opens two|role teach|while the group is taught|will do',
      ],
      [
        -0.1,
        'a neighbour named|ahead 180|alone, names one of another group|alone, told of another group|before word keep|before word no|behind word band|behind word can|behind word gymnasts|behind word we|closes brave|closes minute|closes off|closes side|closes three|closes time|fields holdSeconds|fields sets holdSeconds|fields sets holdSeconds restSeconds|followed by level|followed near|from start some|in turns|in turns before|in turns return|in turns, told of one alone|instead earlier|named around|opens plank|opens squeeze|opens then|opens wait|others in the sentence before|others named|past far|per side|said for all|said for all before|sided false|sided true|told of a mate|whole main owned|words of the name',
      ],
      [
        -0.2,
        'ahead 60|alone before|at the start|before|before not owned|before word top|behind word ankles|closes one|closes up|fields holdSeconds tempo|followed later|in turns earlier|only others named around|opens three|return|return owned|right behind the one before|stretch unknown|sure before not owned|sure return owned|whole before not owned|with amount',
      ],
      [
        -0.3,
        'alone later|closes goes|first of more|from start far|later|later not owned|past 15|short sentence|sure later not owned',
      ],
      [
        -0.4,
        'ahead far|alone earlier|behind word well|closes six|closes twenty|for all|longer sentence|role chat|role work',
      ],
      [
        -0.5,
        'ahead none|alone, told of one alone|behind word nose|behind word you|earlier|earlier not owned|in breathing|in tempo|opens for|stretch false|sure earlier not owned|told',
      ],
      [-0.6, 'followed by comma|taken back'],
      [-0.7, 'at later|no name'],
    ],
    ruled: [[-0.9, 'alone|told']],
  },
  sets: {
    option: [
      [1.1, 'as before in circuit'],
      [0.9, 'to 3'],
      [0.8, 'to 2'],
      [0.5, 'as before in superset|in superset'],
      [0.4, 'as before|none|none of reps|none, amount said 0|none, amount said 1|none, amount said 2'],
      [0.3, 'none of workSeconds|not as before|ruled'],
      [0.2, 'as 2 neighbours|none of holdSeconds|of distanceM|of undefined|words as before'],
      [0.1, 'none in circuit'],
      [-0.1, 'in circuit|not as before in circuit'],
      [-0.2, 'none of distanceM|none of undefined|none, amount said 3|of holdSeconds|to 4|to 40|to 60'],
      [-0.3, 'as 1 neighbours|of workSeconds|to 7'],
      [-0.4, 'not as before in superset|of reps'],
      [-0.5, 'none in superset|none though ruled|to 15|to 5'],
      [-0.6, 'range|to 1'],
      [-0.8, 'to 9'],
      [-1.2, 'to 10'],
    ],
    said: [
      [1.3, 'gap 0'],
      [1.1, 'just behind the group|with amount'],
      [1.0, 'opens four|while the group is taught'],
      [0.9, 'closes time'],
      [
        0.8,
        'ahead 6|before word of|behind word its|behind word marches|behind word the|in turns before|in turns before rounds|instead main|opens 12|opens every|past 60|sided unknown|stretch unknown|to end far',
      ],
      [
        0.7,
        'before word second|before word whats|behind word head|behind word is|behind word just|behind word so|closes lots|fields sets reps holdSeconds|in turns earlier rounds|named around',
      ],
      [
        0.6,
        'before word but|behind word next|behind word second|behind word then|closes between|common|corrects|in turns return|just before the group|opens 4|right behind the one before|short sentence',
      ],
      [
        0.5,
        'before word cleans|before word unless|before word with|behind word chair|behind word does|behind word long|behind word press|behind word squats|closes lot|closes twice|corrects main owned|counted name|gap 2|in turns earlier|in turns main|loose before|main owned|named before|named in the sentence before|names a mate|only one|opens now|opens well|past 5|standing false',
      ],
      [
        0.4,
        'ahead 180|bare return|before word and|before word bend|before word going|before word hangs|before word heavier|behind word pair|behind word round|behind word shrugs|behind word sit|behind word together|behind word ups|closes hand|closes lengths|closes over|closes sets|closes stations|closes trips|corrects later not owned|fields sets reps restSeconds|fields sets tempo|first of more|loose return|main|nearest before|opens another|opens stretches|right behind another|told of a mate',
      ],
      [
        0.3,
        'before word 10|before word if|before word ive|before word round|before word so|before word twenty|before word two|before word you|behind word are|behind word behind|behind word drive|behind word first|closes eight|closes five|closes minutes|closes up|fields sets restSeconds|from start 3|gap 1|in easier|in turns|in turns behind rounds|in turns, told of one alone|named behind 3|opens 2|role chat|seated unknown|weight true|words of the name|words of the name, not named',
      ],
      [
        0.2,
        'alone main|at later|bare before|before owned|before word calves|before word take|behind|behind word along|behind word bar|behind word bugs|behind word eight|behind word ligaments|behind word plonk|behind word say|behind word wood|both neighbours named|closes 3|closes 6|closes from|closes leg|closes twelve|corrects before not owned|followed by comma|from start 1|gap -1|in turns behind|in turns later|in turns later rounds|interval alone main|interval alone, named around|named before 0|named before 3|named before far|opens 10|opens 3|opens 5|opens make|opens three|return not owned|stretch false|sure before owned|whole before owned|will do',
      ],
      [
        0.1,
        'before word 5k|before word after|before word again|before word dont|before word elbows|before word every|before word first|before word flat|before word go|before word i|before word not|before word och|before word partner|before word press|before word rings|before word sit|before word some|before word three|behind not owned|behind owned|behind word and|behind word bounds|behind word breather|behind word curls|behind word do|behind word drink|behind word faces|behind word menu|behind word now|behind word off|behind word ramp|behind word rounds|behind word stage|behind word still|behind word stops|behind word supersets|behind word ten|behind word thirties|behind word this|closes different|closes goes|closes minute|closes out|closes pair|closes second|closes side|closes them|corrects behind not owned|corrects main not owned|fields sets|fields sets holdSeconds|fields sets workSeconds|followed by then|followed later|from start some|opens 15|opens 6|opens 90|opens and|opens eight|opens forty|opens its|opens one|opens sixty|opens twelve|opens twenty|role work|rounds|run unknown|said for all behind|seated true|stretch true|sure before not owned|sure behind owned|sure later not owned|to end 3|told|whole behind owned|whole later not owned',
      ],
      [
        -0.1,
        'ahead 20|alone, told of one alone|bare behind|bare later|before not owned|before word at|before word bench|before word chin|before word make|before word now|before word oh|before word okay|before word rest|before word sat|before word sitting|before word squats|before word walk|before word we|before word whoevers|before word write|behind word aparts|behind word between|behind word circuit|behind word down|behind word each|behind word fifteen|behind word finisher|behind word fives|behind word for|behind word forth|behind word get|behind word ground|behind word have|behind word his|behind word hung|behind word laps|behind word on|behind word out|behind word planks|behind word really|behind word said|behind word stand|behind word stations|behind word them|between|closes 10|closes 4|closes again|closes fold|closes laps|closes set|closes these|closes total|closes you|corrects return owned|earlier|fields sets reps distanceM restSeconds|followed by level|for part|in clauses|in equipment|in fault|in range|in setup|in tempo|in turns main rounds|in turns, names one alone|instead|instead return|interval alone before|later|later not owned|loose|loose later|named before 1|named behind some|no name|of a later round|opens for|opens id|opens thats|others in the sentence before|past 15|per side|return|said for all before|said for all main|sided false|standing unknown|sure behind not owned|sure return owned|taken back|to end some|whole return owned',
      ],
      [
        -0.2,
        'alone behind rounds|alone later rounds|another nearer|bare|before word as|before word each|before word for|before word lunges|before word next|before word out|before word put|before word rows|before word start|before word step|before word work|behind word at|behind word drills|behind word hips|behind word leg|behind word little|behind word many|behind word ones|behind word other|behind word remember|behind word skipping|behind word stands|behind word supports|behind word theres|behind word was|behind word way|closes 12|closes everything|closes forty|closes lap|closes rounds|closes six|closes ten|closes through|closes turns|closes ups|earlier not owned|fields sets reps workSeconds|fields sets reps workSeconds restSeconds|instead before|instead later|interval alone behind|interval alone earlier|interval in turns before|loose behind|main not owned|named before some|named behind|named behind 0|opens 20|opens hold|opens once|opens set|opens twice|others named|said for all earlier|standing true|sure main not owned|to end 2|whole main not owned',
      ],
      [
        -0.3,
        'alone earlier rounds|alone later|alone, names one alone|alone, names one of another group|at the start|before word between|before word eight|before word hang|before word have|before word one|before word to|before word your|behind word bench|behind word mat|behind word rowing|behind word rows|behind word wrote|closes 8|closes those|closes two|fields sets reps|followed near|gap -3|in caution|in turns return rounds|in turns, told of another group|interval alone later|interval in turns earlier|named behind far|opens circuit|opens ten|opens thirty|return owned|run false|said for all|seated false|sure main owned|weight false|whole main owned',
      ],
      [
        -0.4,
        'ahead far|alone before|before word a|before word here|before word in|before word then|before word this|behind word a|behind word about|behind word again|behind word to|closes altogether|closes rest|closes three|closes times|closes turn|gap 3|only others named around|opens 30|opens a|opens change|opens six|role teach|sided true',
      ],
      [
        -0.5,
        'ahead 60|alone earlier|alone main rounds|before word bit|before word turn|before word us|behind word fence|behind word go|behind word jog|behind word planned|behind word sheet|behind word that|closes do|closes each|corrects earlier not owned|fields sets workSeconds restSeconds|interval in turns, named around|opens call|opens fifteen|opens five',
      ],
      [
        -0.6,
        'bare earlier|before word its|behind word back|behind word lifts|behind word outs|closes metres|fields sets distanceM|held in the sentence|in execution|in focus|loose earlier|opens 1|said before|to end 0',
      ],
      [
        -0.7,
        'alone before rounds|alone return|alone, told of another group|before word no|behind word both|behind word time|instead earlier',
      ],
      [-0.8, 'before word on|gap -2|gap behind|opens then'],
      [-0.9, 'in turns, names one of another group|opens 8|past far'],
      [-1.0, 'behind word thats|gap before'],
    ],
    'from reps': [
      [0.9, 'followed by then'],
      [0.8, 'opens 3'],
      [0.7, 'before word i|closes them|fields reps restSeconds|named around|opens twice'],
      [0.6, 'behind word down|behind word is|for all|for part|words of the name, not named'],
      [
        0.5,
        'before word dont|closes between|closes down|closes stroke|closes times|fields reps tempo|followed by comma',
      ],
      [
        0.4,
        'before word round|behind word of|closes twice|first of more|followed by one for some|gap 0|just behind the group|opens 5|rounds|weight true|while the group is taught|words of the name',
      ],
      [
        0.3,
        'a neighbour named|ahead 60|alone main rounds|bare later|before owned|behind word back|behind word bent|behind word bit|behind word them|closes up|followed near|gap 2|in focus|in setup|in turns|named behind 3|named in the sentence before|only one|opens couple|opens ladder|past 5|past 60|sure before owned|sure main owned',
      ],
      [
        0.2,
        'alone earlier rounds|before word after|before word sit|before word then|behind|behind not owned|behind word its|behind word little|behind word so|closes circuit|closes off|closes two|condition|from start far|in turns later|in turns main|in turns return|opens do|opens each|role teach|sure behind not owned|sure earlier not owned|to end far|told of a mate|will do',
      ],
      [
        0.1,
        'ahead 6|ahead none|alone behind|alone, names one alone|before word and|before word ive|behind word a|behind word set|behind word want|behind word well|behind word you|closes back|closes lifts|closes these|closes works|from start 1|gap 1|in turns behind|in turns behind rounds|in turns earlier|in turns, told of one alone|instead|instead before|instead main|just before the group|longer sentence|opens circuit|opens so|opens thats|opens two|others in the sentence before|to end 1',
      ],
      [
        -0.1,
        'alone before|alone earlier|before word in|before word no|before word once|before word one|before word same|before word short|before word so|before word ten|before word thats|before word this|before word three|before word to|before word twice|before word two|before word unless|behind word and|behind word are|behind word for|behind word gets|behind word go|behind word goes|behind word it|behind word lifts|behind word long|behind word nose|behind word on|behind word out|behind word pair|behind word remember|behind word rings|behind word row|behind word see|behind word sit|behind word thats|behind word the|behind word up|between|closes 3|closes bench|closes benches|closes do|closes four|closes goes|closes leg|closes lengths|closes ones|closes press|closes seconds|closes stands|closes three|closes turns|corrects earlier not owned|fields reps workSeconds restSeconds|followed by up to|gap -2|in turns before|in turns main rounds|instead earlier|later|main|main owned|no name|opens a|opens fall|opens sixes|opens twos|past 15|said for all|seated false|sided true|stretch true|to end 3',
      ],
      [
        -0.2,
        'ahead 20|alone before rounds|alone return|alone, told of another group|alone, told of one alone|at later|bare earlier|before|before word each|before word the|before word there|behind word in|behind word round|closes 5|closes five|closes those|common|corrects main owned|fields reps holdSeconds|followed later|gap -3|gap before|in clauses|named behind 1|of a later round|opens 4|opens for|opens one|opens stay|others named|role chat|role work|run false|sided false|taken back|told',
      ],
      [
        -0.3,
        'ahead far|alone later|alone main|bare|bare main|before word with|behind word menu|closes 6|closes ups|corrects|fields reps|fields reps workSeconds|followed by level|from start some|gap behind|held in the sentence|in breathing|in caution|opens 2|opens and|opens its|sure later not owned|to end 0|weight false',
      ],
      [
        -0.4,
        'alone, names one of another group|before not owned|closes breaths|closes side|closes six|gap -1|last of more|opens five|right behind another|short sentence|sure before not owned',
      ],
      [-0.5, 'opens six|past far'],
      [-0.6, 'only others named around'],
      [-0.8, 'per side'],
    ],
    ruled: [[-0.7, 'alone|told']],
    'as they come': [
      [1.1, 'another return'],
      [0.9, 'third return'],
      [0.8, 'again main|second main'],
      [0.5, 'told'],
      [0.4, 'third main'],
      [0.1, 'again return'],
      [-0.3, 'more main'],
      [-0.4, 'another main'],
      [-0.7, 'more return'],
      [-1.1, 'again behind|second return'],
    ],
    returns: [
      [0.3, '2'],
      [-0.2, 'told'],
      [-0.5, '3'],
    ],
    steps: [[-0.1, 'so many|told']],
    'from reps, timed': [
      [0.9, 'role chat'],
      [0.8, 'closes fours|main owned|opens fours|sure main owned'],
      [0.7, 'behind word in|from start some|gap 0'],
      [0.6, 'before word i|behind word three|behind word was|fields reps restSeconds|followed near|per side'],
      [0.5, 'behind word station|behind word want|closes lengths|gap -1|gap 1|in turns main|to end 1'],
      [0.4, 'before word one|first of more|only one|to end far'],
      [
        0.3,
        'before word and|before word dont|before word each|behind word do|behind word its|behind word round|closes goes|closes six|corrects|from start 2|gap 2|held in the sentence|opens do|opens each|opens four|opens six|while the group is taught|words of the name|words of the name, not named',
      ],
      [
        0.2,
        'ahead 20|alone earlier|before word because|before word twenty|before word walk|behind word toes|closes those|corrects main owned',
      ],
      [
        0.1,
        'a neighbour named|ahead 180|before word at|before word find|before word go|before word of|before word so|before word still|behind word again|behind word and|behind word are|behind word go|behind word leg|behind word level|behind word ones|behind word out|behind word plank|behind word sides|behind word we|behind word youve|between|closes three|closes times|closes twice|corrects earlier not owned|earlier|earlier not owned|fields reps holdSeconds|fields reps tempo|followed by one for some|for all|from start 3|in turns|in turns main rounds|last of more|main|rounds|run true|short sentence|sure earlier not owned',
      ],
      [
        -0.1,
        'ahead none|alone before rounds|alone main|alone main rounds|alone, names one of another group|bare earlier|before word 2|before word for|before word its|before word now|before word pounds|before word round|before word s|before word short|before word steps|before word then|before word this|before word toes|before word two|behind word all|behind word back|behind word bent|behind word cone|behind word drill|behind word first|behind word for|behind word it|behind word lane|behind word last|behind word number|behind word or|behind word past|behind word shin|behind word thats|behind word the|behind word these|behind word this|closes 1|closes 4|closes 6|closes breath|followed by up to|gap -2|gap -3|in easier|in execution|in focus|in harder|in turns before rounds|in turns earlier|later|later not owned|longer sentence|named before|named before far|named behind|names a mate|nearest behind|no name|opens 1|opens 4|opens 6|opens a|opens change|opens for|opens its|opens three|opens twice|others in the sentence before|past 15|right behind the one before|role end|role move|row|row comma|row counts|row counts comma|row falling|row main|said before|sided true|stretch false|to end 2|told|told of a mate',
      ],
      [
        -0.2,
        'ahead 60|alone later|alone, names one alone|alone, told of one alone|at later|before word after|before word foot|before word four|before word if|before word im|before word left|before word no|before word off|before word out|before word three|before word to|behind word at|behind word five|behind word four|behind word to|closes 2|closes five|closes them|fields reps|followed by comma|from start 1|in setup|in turns before|named around|only others named around|opens 2|others named|to end 0|to end 3',
      ],
      [
        -0.3,
        'alone before|at the start|bare main|behind word ladder|behind word left|behind word two|closes 3|closes four|counted name|in breathing|in caution|loose|loose main|main not owned|opens five|role work|to end some',
      ],
      [
        -0.4,
        'ahead far|bare|before|before not owned|before word you|closes one|fields reps distanceM|followed later|from start far|gap behind|sure before not owned|taken back|with amount',
      ],
      [-0.5, 'before word as|opens 3|opens one|role teach|will do'],
      [-0.7, 'followed by then|gap before'],
    ],
    minutes: [
      [0.3, 'alone main|followed near|from start far|gap 0|main|role work|to end far'],
      [0.2, 'longer sentence|told'],
      [0.1, 'behind word minute'],
      [
        -0.1,
        'alone before|at later|bare before|bare main|before|before not owned|gap before|loose before|loose main|main not owned|opens two|role chat|row before|row main',
      ],
      [-0.2, 'bare|loose|row|row level|row of 2|row rising'],
    ],
  },
  sides: {
    option: [
      [1.3, 'ruled'],
      [1.2, 'said main'],
      [1.1, 'side with'],
      [1.0, 'other side in it'],
      [0.8, 'sided true'],
      [0.7, 'both told|other side beside|with amount'],
      [0.6, 'alone|leg with'],
      [0.5, 'both told, sided|way with'],
      [0.4, 'leg'],
      [0.3, 'arm|arm with|legs'],
      [0.2, 'apart|said behind|said earlier|sides'],
      [-0.1, 'each|other side in it, sided|way'],
      [-0.2, 'hand|of holdSeconds'],
      [-0.4, 'foot|other'],
      [-0.5, 'of distanceM'],
      [-0.6, 'sided unknown'],
      [-0.7, 'of undefined'],
      [-0.8, 'said return'],
      [-0.9, 'each with|of reps'],
      [-1.0, 'amount without side|other with|side|sided false'],
      [-1.1, 'sides with|total in it'],
      [-1.4, 'of workSeconds|total beside'],
    ],
  },
  rest: {
    option: [
      [1.3, 'as before in circuit'],
      [1.0, 'ruled superset'],
      [0.9, 'as before'],
      [0.7, 'to 120'],
      [0.6, 'in superset|none'],
      [0.5, 'ruled'],
      [0.4, 'ruled circuit|to 30|words as before'],
      [0.3, 'in circuit|not as before in superset'],
      [0.1, 'as before in superset|as neighbour|none though ruled|not as before|range|to 60'],
      [-0.1, 'ruled alone|to 10|to 15'],
      [-0.2, 'to 1|to 20'],
      [-0.3, 'none in circuit|not as before in circuit|to 4|to 9'],
      [-0.4, 'to 2|to 25|to 3|to 40'],
      [-0.5, 'more'],
      [-0.6, 'none in superset|to 1000|to 5|to 7'],
    ],
    said: [
      [1.7, 'with amount'],
      [1.3, 'just before the group'],
      [1.0, 'closes between|named around'],
      [0.9, 'before word dont|past 60|while the group is taught'],
      [0.8, 'ahead 6|behind word you|in turns earlier|only one|to end far'],
      [0.7, 'behind word round|closes minutes|from start some|in turns before rounds|just behind the group'],
      [
        0.6,
        'before word hug|closes nothing|in turns, told of one alone|instead before|instead main|main owned|opens a',
      ],
      [
        0.5,
        'a neighbour named|before word i|corrects main owned|fields reps restSeconds|in turns before|in turns earlier rounds|rounds|short sentence|told of a mate|words of the name',
      ],
      [
        0.4,
        'alone later rounds|before word cleans|before word first|before word hang|behind word mat|behind word then|closes rest|closes through|fields reps workSeconds restSeconds|main|named in the sentence before|opens twice|opens twos|past 5|seated unknown|to end some|words of the name, not named',
      ],
      [
        0.3,
        'ahead 20|alone main|before word after|before word so|behind word supports|behind word that|behind word things|both neighbours named|closes walk|common|fields restSeconds|in turns behind|in turns main|in turns, names one alone|instead|interval alone, named around|sided unknown|sure earlier not owned|weight true',
      ],
      [
        0.2,
        'before word 5k|before word between|before word both|before word did|before word sit|before word us|behind word between|behind word do|behind word get|behind word ground|behind word pair|behind word press|behind word them|behind word there|closes both|closes do|closes seconds|counted name|from start 1|from start 3|in caution|in turns|in turns later rounds|interval alone later|interval alone main|named before|opens fifteen|opens make|opens so|opens twelve|opens two|seated false|whole before owned',
      ],
      [
        0.1,
        'alone later|another nearer|at the start|before word each|before word flat|before word in|before word my|before word operated|before word please|before word proper|before word round|before word sixteen|before word thats|before word with|behind word climbers|behind word deal|behind word fifteen|behind word here|behind word on|behind word out|behind word presses|behind word sit|behind word squat|behind word stops|behind word want|closes minute|closes sets|closes so|closes three|corrects main not owned|earlier owned|followed by comma|for all|in turns behind rounds|interval alone before|interval in turns earlier|interval in turns, named around|last of more|later|later not owned|named before another between|opens 4|opens and|opens bit|opens eight|opens forty|opens its|opens rest|opens thirty|opens three|opens twenty|role end|sure later not owned|to end 3|whole before not owned',
      ],
      [
        -0.1,
        'ahead none|alone return rounds|alone, told of another group|before word and|before word cons|before word every|before word have|before word if|before word ignore|before word im|before word last|before word off|before word one|before word partner|before word ring|before word weights|before word when|behind|behind owned|behind word core|behind word curls|behind word dish|behind word floor|behind word hips|behind word its|behind word language|behind word neither|behind word no|behind word really|behind word said|behind word steps|behind word thats|behind word time|behind word two|behind word weights|between|closes after|closes air|closes lap|closes laps|closes one|closes round|closes stations|closes times|fields sets distanceM restSeconds|fields sets holdSeconds restSeconds|fields sets reps restSeconds|fields sets workSeconds restSeconds|fields workSeconds restSeconds|in turns, names one of another group|of a later round|opens 2|opens 20|opens 40|opens ninety|opens now|opens we|past 15|return not owned|return owned|role move|role teach|said before|said for all behind|said for all earlier|sure main not owned|told|whole main not owned|whole main owned',
      ],
      [
        -0.2,
        'ahead 180|alone return|alone, names one alone|before word for|before word ill|before word no|before word three|before word we|behind word go|behind word over|behind word plank|behind word remember|behind word side|behind word smell|behind word swings|behind word tonight|behind word twists|behind word wood|closes each|closes from|closes lot|closes off|closes pair|closes sit|condition|corrects|corrects before not owned|corrects earlier not owned|corrects later not owned|earlier|earlier not owned|instead later|interval in turns before|no name|opens 3|opens half|opens ten|opens then|per side|return|right behind the one before|said for all|sure before not owned|taken back|to end 2|whole later not owned|will do',
      ],
      [
        -0.3,
        'alone behind rounds|before|before word done|before word its|before word not|closes again|closes rounds|first of more|from start 2|held in the sentence|in focus|instead behind|instead earlier|interval alone earlier|interval in turns later|longer sentence|named behind|named behind far|nearest behind|opens 30|opens circuit|opens sixty|sided false|whole behind not owned',
      ],
      [
        -0.4,
        'ahead 60|alone behind|before not owned|before word of|before word then|behind word and|behind word eight|closes half|closes twice|followed later|opens for|opens hold|weight false',
      ],
      [
        -0.5,
        'before word step|before word the|behind word of|fields sets reps workSeconds restSeconds|followed by then|main not owned|only others named around|opens water|others named|to end 1',
      ],
      [
        -0.6,
        'alone before|alone, names one of another group|at later|behind word rounds|to end 0|whole earlier not owned',
      ],
      [-0.7, 'ahead far|alone before rounds|alone main rounds|right behind another|sure main owned'],
      [-0.8, 'alone earlier'],
      [-0.9, 'alone, told of one alone'],
      [-1.1, 'past far'],
    ],
    ruled: [[-0.5, 'alone|told']],
    'from work': [
      [1.4, 'between behind'],
      [1.1, 'opens half'],
      [1.0, 'ahead 6'],
      [0.9, 'closes over'],
      [
        0.8,
        'before word between|before word next|before word shuffle|before word to|behind word take|named around|opens 4|past 60|rest before|while the group is taught',
      ],
      [
        0.7,
        'behind word after|behind word and|behind word have|behind word six|behind word ten|behind word with|instead before|named before|only one|take before',
      ],
      [
        0.6,
        'before word each|before word lie|before word so|before word then|behind word a|behind word eight|closes 20|closes half|common|in turns later|just before the group|just behind the group|names a mate|nearest before|sit before|take behind|told of a mate',
      ],
      [
        0.5,
        'before word bend|behind word is|behind word off|closes hand|followed by then|in turns|in turns main|in turns return|named in the sentence before|opens 60|opens seventy|whole earlier not owned|words of the name',
      ],
      [
        0.4,
        'a neighbour named|ahead 20|before word except|before word flat|before word knees|behind word get|behind word rest|breath behind|change behind|closes everything|in turns, told of one alone|opens second|opens sixty|said for all|taken back|will do',
      ],
      [
        0.3,
        'alone before rounds|before word breathe|before word dont|before word im|before word put|before word while|behind owned|behind word 8|behind word down|behind word the|from start 1|in turns earlier rounds|loose before|of a later round|opens 20|opens 75|opens forty|said for all earlier|seated true|sit behind',
      ],
      [
        0.2,
        'bare behind|bare return|before owned|before word after|before word back|before word go|before word off|before word with|behind word holiday|behind word its|behind word out|behind word pair|behind word said|closes minute|closes seconds|closes times|followed later|from start far|held in the sentence|in turns earlier|loose return|opens 15|opens 30|opens about|opens circuit|opens two|past 15|rest behind|return not owned|sure before owned|then again behind|to end 0|to end 2|whole before owned|whole later not owned|whole main owned',
      ],
      [
        0.1,
        'alone behind|another nearer|before word calves|before word rest|before word s|before word sat|before word shift|before word thats|before word there|behind word go|behind word got|behind word stands|behind word twenty|fields sets reps workSeconds|in turns behind rounds|in turns later rounds|instead|loose behind|named before another between|off before|off behind|opens 45|opens 90|opens bench|others in the sentence before|rounds|sure behind owned|sure earlier not owned|whole behind not owned',
      ],
      [
        -0.1,
        'alone earlier rounds|bare before|bare later|before word a|before word as|before word down|before word fast|before word going|before word hips|before word i|before word in|before word it|before word its|before word ive|before word just|before word my|before word not|before word on|before word please|before word presses|before word push|before word scrape|before word stood|before word stop|before word take|before word ten|before word tidy|before word up|before word walk|before word when|before word will|behind word again|behind word armpits|behind word bet|behind word breaths|behind word brenda|behind word broom|behind word circles|behind word circuit|behind word clocks|behind word did|behind word do|behind word faster|behind word floor|behind word had|behind word hammers|behind word holds|behind word jog|behind word kind|behind word leg|behind word like|behind word line|behind word lower|behind word morning|behind word nice|behind word ninety|behind word only|behind word planks|behind word rows|behind word says|behind word shame|behind word soft|behind word stand|behind word straight|behind word teeth|behind word thats|behind word to|behind word toothbrush|behind word waistband|behind word walk|behind word your|change before|closes breath|closes five|closes forty|closes go|closes hour|closes min|closes one|closes swap|closes thirty|closes those|closes twenty|closes two|condition|corrects earlier not owned|corrects later not owned|followed by or|for part|in caution|in clauses|in execution|in harder|in setup|in turns before rounds|in turns behind|instead earlier|loose|main|main owned|named before 3|opens 2|opens 25|opens 3|opens 6|opens 8|opens an|opens and|opens say|opens seven|opens six|opens twenty|opens well|past 5|role chat|role move|row counts|row counts level|row later|row of 3|said before|sided false|standing true|weight unknown',
      ],
      [
        -0.2,
        'alone behind rounds|bare|before word and|before word for|before word now|before word sit|before word this|before word you|behind word done|behind word held|behind word it|behind word knee|behind word long|behind word next|behind word ones|behind word remember|behind word say|behind word so|behind word was|between|closes fifteen|closes goes|closes ten|corrects before not owned|corrects main owned|fields reps workSeconds|fields workSeconds tempo|followed by level|followed by up to|in turns, names one of another group|instead behind|last of more|loose later|named before some|named behind|nearest behind|opens 17|opens as|opens eight|opens fifty|opens ninety|opens thirteen|return owned|right behind the one before|row before|sided true|sure main owned|sure return owned|to end 1|to end 3|to end some|weight false',
      ],
      [
        -0.3,
        'alone main|at later|before word gone|before word grow|before word has|before word if|before word planks|before word shake|behind not owned|behind word click|behind word doing|behind word records|behind word row|behind word sheet|behind word time|closes it|closes second|closes side|earlier|earlier not owned|fields workSeconds|followed near|from start 3|from start some|in easier|in turns before|longer sentence|loose earlier|opens 40|opens fifteen|opens nine|right behind another|role end|role teach|role work|row comma|row falling|row then|told',
      ],
      [
        -0.4,
        'ahead 180|alone before|alone return|at the start|before word drink|before word is|before word no|before word swap|behind word round|behind word that|breath before|closes leg|closes twice|fields sets workSeconds|in turns, told of another group|instead later|later not owned|no name|opens 5|opens five|opens ten|opens twice|row level|short sentence|sure behind not owned|sure later not owned',
      ],
      [
        -0.5,
        'alone earlier|alone later|alone later rounds|alone, names one of another group|alone, told of another group|bare earlier|before|before not owned|before word at|before word or|behind word in|behind word things|followed by comma|followed by one for some|opens one|row main|row of 2|row rising|seated false|sure before not owned|whole before not owned',
      ],
      [-0.6, 'alone, told of one alone|before word left|in tempo|opens three|row'],
      [
        -0.7,
        'ahead far|behind word for|closes minutes|only others named around|opens four|opens thirty|past far|per side',
      ],
      [-0.8, 'ahead 60|before word of|others named'],
      [-1.0, 'alone main rounds'],
      [-1.1, 'with amount'],
    ],
  },
  scheme: {
    option: [
      [1.5, 'amrap: as many as can|emom: minute beside'],
      [1.3, 'amrap: as many beside|amrap: as many in it|emom: minute in it|ladder: by steps'],
      [1.2, 'emom: told as emom|interval: alone of distanceM'],
      [1.1, 'circuit: circuit beside|ladder: ladder beside|ladder: range of reps|superset: pair beside'],
      [1.0, 'interval: alone of workSeconds|interval: of distanceM|interval: ruled interval|superset: pair in it'],
      [0.9, 'interval: circuit in it|interval: rest with workSeconds|ladder: ladder in it|ladder: ruled ladder'],
      [
        0.8,
        'circuit: range of workSeconds|circuit: turns of 4|emom: ruled emom|interval: of workSeconds|interval: rest with distanceM|ladder: range of holdSeconds',
      ],
      [
        0.7,
        'circuit: announced circuit, turns of 3|circuit: in turns of workSeconds|circuit: ruled none|circuit: turns of 3|interval: on off in it|superset: in turns of undefined|superset: of reps|superset: turns of 2',
      ],
      [
        0.6,
        'circuit: announced circuit|circuit: of undefined|circuit: of workSeconds|circuit: on off beside|circuit: ruled circuit|straight: rest with holdSeconds|straight: rest with reps|straight: ruled straight|superset: in turns of reps|superset: ruled none|superset: turns of 3',
      ],
      [
        0.5,
        'circuit: in turns of holdSeconds|circuit: rest with workSeconds|circuit: told as circuit|circuit: told as interval|straight: alone of holdSeconds|straight: alone of reps|straight: always|straight: announced superset, turns of 0|straight: of holdSeconds|straight: of reps|straight: told as straight|straight: turns of 0|superset: ruled superset',
      ],
      [
        0.4,
        'circuit: alone of undefined|circuit: always|circuit: announced circuit, turns of 4|circuit: announced superset, turns of 2|circuit: in turns of undefined|circuit: steady in it|interval: announced circuit, turns of 0|interval: ladder in it|ladder: circuit in it|ladder: steady in it|ladder: told as ladder|straight: alone of distanceM|straight: of distanceM|superset: announced superset|superset: announced superset, turns of 2',
      ],
      [
        0.3,
        'amrap: circuit in it|circuit: in turns of distanceM|interval: alone of undefined|interval: on off beside|interval: pair in it|ladder: steady beside|straight: alone of workSeconds|straight: announced circuit, turns of 2|straight: ruled none|straight: steady in it|superset: always|superset: announced circuit, turns of 2|superset: in turns of holdSeconds|superset: of undefined|superset: told as straight',
      ],
      [
        0.2,
        'amrap: ruled amrap|amrap: told as amrap|circuit: announced superset|circuit: on off in it|circuit: range of reps|circuit: rest with holdSeconds|emom: announced circuit, turns of 0|ladder: alone of undefined|ladder: announced circuit, turns of 0|straight: alone of undefined|straight: on off in it|straight: range of holdSeconds|straight: steady beside|superset: in turns of distanceM|superset: steady beside',
      ],
      [
        0.1,
        'circuit: in turns of reps|circuit: of holdSeconds|emom: ruled none|emom: steady beside|interval: of undefined|interval: told as interval|ladder: alone of holdSeconds|ladder: alone of workSeconds|straight: announced circuit, turns of 4|straight: pair beside|straight: ruled circuit|straight: told as circuit|superset: rest with workSeconds|superset: told as ladder',
      ],
      [
        -0.1,
        'amrap: announced circuit, turns of 2|amrap: announced circuit, turns of 3|amrap: announced circuit, turns of 4|amrap: in turns of distanceM|amrap: in turns of holdSeconds|amrap: in turns of undefined|amrap: in turns of workSeconds|amrap: minute in it|amrap: on off in it|amrap: range of holdSeconds|amrap: rest with reps|amrap: rest with workSeconds|amrap: ruled ladder|amrap: steady beside|amrap: steady in it|amrap: told as emom|amrap: told as interval|amrap: turns of 4|circuit: announced circuit, turns of 2|circuit: announced superset, turns of 0|circuit: of distanceM|circuit: ruled emom|circuit: told as ladder|emom: alone of reps|emom: announced circuit, turns of 2|emom: announced circuit, turns of 4|emom: as many as can|emom: by steps|emom: in turns of distanceM|emom: in turns of holdSeconds|emom: in turns of undefined|emom: in turns of workSeconds|emom: of holdSeconds|emom: on off beside|emom: range of reps|emom: rest with holdSeconds|emom: rest with workSeconds|emom: ruled interval|emom: told as interval|interval: as many as can|interval: as many beside|interval: in turns of holdSeconds|interval: minute in it|interval: rest with reps|interval: ruled circuit|interval: ruled emom|interval: told as emom|interval: told as ladder|ladder: announced circuit, turns of 2|ladder: announced superset, turns of 0|ladder: as many as can|ladder: in turns of distanceM|ladder: in turns of holdSeconds|ladder: in turns of undefined|ladder: of workSeconds|ladder: rest with workSeconds|ladder: ruled circuit|ladder: ruled emom|ladder: ruled interval|ladder: told as emom|ladder: told as interval|straight: announced circuit, turns of 0|straight: announced superset|straight: as many in it|straight: circuit beside|straight: in turns of distanceM|straight: in turns of reps|straight: ladder in it|straight: of workSeconds|straight: on off beside|straight: ruled amrap|straight: ruled superset|straight: told as amrap|straight: turns of 2|superset: range of workSeconds|superset: ruled interval|superset: told as interval',
      ],
      [
        -0.2,
        'amrap: alone of reps|amrap: alone of workSeconds|amrap: announced circuit, turns of 0|amrap: announced superset, turns of 2|amrap: minute beside|amrap: on off beside|amrap: pair in it|amrap: turns of 3|circuit: announced circuit, turns of 0|circuit: as many as can|circuit: circuit in it|circuit: minute in it|circuit: rest with reps|circuit: ruled superset|circuit: told as emom|emom: announced circuit, turns of 3|emom: announced superset|emom: announced superset, turns of 2|emom: as many beside|emom: as many in it|emom: pair in it|emom: ruled ladder|emom: ruled superset|emom: steady in it|emom: turns of 3|emom: turns of 4|interval: announced circuit|interval: announced circuit, turns of 2|interval: announced circuit, turns of 3|interval: announced circuit, turns of 4|interval: announced superset, turns of 2|interval: circuit beside|interval: in turns of distanceM|interval: in turns of undefined|interval: minute beside|interval: range of holdSeconds|interval: rest with holdSeconds|interval: steady beside|interval: told as circuit|ladder: alone of reps|ladder: announced circuit, turns of 3|ladder: announced circuit, turns of 4|ladder: announced superset, turns of 2|ladder: in turns of workSeconds|ladder: minute in it|ladder: on off beside|ladder: range of workSeconds|ladder: rest with holdSeconds|ladder: rest with reps|ladder: turns of 0|ladder: turns of 4|straight: of undefined|straight: told as ladder|superset: announced circuit, turns of 3|superset: announced circuit, turns of 4|superset: of holdSeconds|superset: rest with holdSeconds|superset: ruled emom|superset: told as circuit',
      ],
      [
        -0.3,
        'amrap: alone of distanceM|amrap: alone of undefined|amrap: announced superset|amrap: by steps|amrap: of workSeconds|amrap: ruled none|amrap: ruled superset|circuit: as many beside|circuit: ladder beside|circuit: pair in it|circuit: ruled straight|circuit: told as straight|emom: alone of distanceM|emom: alone of workSeconds|emom: announced circuit|emom: circuit beside|emom: ladder beside|emom: ladder in it|emom: of reps|emom: of workSeconds|emom: range of holdSeconds|emom: turns of 0|interval: announced superset|interval: by steps|interval: range of reps|interval: range of workSeconds|interval: ruled ladder|interval: ruled superset|interval: turns of 0|interval: turns of 3|interval: turns of 4|ladder: announced circuit|ladder: announced superset|ladder: as many beside|ladder: as many in it|ladder: circuit beside|ladder: ruled superset|ladder: turns of 3|straight: announced circuit, turns of 3|straight: circuit in it|straight: in turns of holdSeconds|straight: range of workSeconds|superset: alone of reps|superset: alone of undefined|superset: announced circuit|superset: announced circuit, turns of 0|superset: announced superset, turns of 0|superset: as many beside|superset: circuit in it|superset: ladder beside|superset: on off in it|superset: range of reps|superset: rest with reps|superset: ruled straight|superset: told as emom',
      ],
      [
        -0.4,
        'amrap: alone of holdSeconds|amrap: announced circuit|amrap: ladder beside|amrap: ladder in it|amrap: of distanceM|amrap: of holdSeconds|amrap: of reps|amrap: pair beside|amrap: range of reps|amrap: ruled circuit|circuit: alone of distanceM|circuit: alone of holdSeconds|circuit: as many in it|circuit: ladder in it|circuit: ruled ladder|circuit: turns of 2|emom: alone of undefined|emom: always|emom: circuit in it|emom: of distanceM|emom: pair beside|emom: ruled circuit|emom: told as straight|interval: as many in it|interval: in turns of reps|interval: in turns of workSeconds|interval: ladder beside|interval: ruled straight|ladder: alone of distanceM|ladder: of distanceM|ladder: of reps|ladder: pair in it|straight: announced superset, turns of 2|straight: in turns of workSeconds|straight: ladder beside|straight: told as interval|superset: alone of holdSeconds|superset: as many as can|superset: in turns of workSeconds|superset: minute in it|superset: of distanceM|superset: ruled circuit',
      ],
      [
        -0.5,
        'amrap: in turns of reps|amrap: of undefined|amrap: ruled straight|amrap: told as straight|amrap: turns of 0|amrap: turns of 2|circuit: alone of reps|circuit: by steps|circuit: of reps|circuit: steady beside|emom: in turns of reps|emom: of undefined|emom: turns of 2|interval: alone of holdSeconds|interval: always|interval: told as straight|interval: turns of 2|ladder: always|ladder: in turns of reps|ladder: minute beside|ladder: ruled none|ladder: told as straight|ladder: turns of 2|straight: in turns of undefined|straight: ruled ladder|straight: turns of 4|superset: as many in it|superset: circuit beside|superset: range of holdSeconds',
      ],
      [
        -0.6,
        'amrap: always|circuit: ruled interval|circuit: turns of 0|emom: ruled straight|interval: of holdSeconds|interval: pair beside|ladder: ruled straight|straight: pair in it|straight: ruled emom|straight: turns of 3|superset: alone of distanceM|superset: alone of workSeconds|superset: by steps|superset: ladder in it|superset: turns of 0|superset: turns of 4',
      ],
      [
        -0.7,
        'circuit: alone of workSeconds|circuit: minute beside|interval: alone of reps|interval: of reps|interval: ruled none|ladder: on off in it|ladder: pair beside|straight: by steps|straight: minute beside|straight: range of reps|straight: rest with distanceM',
      ],
      [-0.8, 'straight: as many beside|superset: of workSeconds|superset: on off beside|superset: steady in it'],
      [-0.9, 'straight: told as emom'],
      [-1.0, 'circuit: pair beside|superset: minute beside'],
      [-1.1, 'straight: rest with workSeconds'],
      [-1.3, 'straight: minute in it'],
      [-1.4, 'straight: as many as can'],
    ],
  },
}
