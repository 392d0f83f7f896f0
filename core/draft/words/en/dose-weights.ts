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
      [0.8, 'called quad reps|circuit workSeconds|none main 0|none sure false|row-machine workSeconds'],
      [
        0.7,
        'called bear holdSeconds|called deadlift reps|heel-raise reps|jump distanceM|none|none main 1|spine-flexion reps|squat reps',
      ],
      [
        0.6,
        "balance reps|called carry distanceM|called dip' reps|called leg reps|called push-up holdSeconds|holdSeconds to 20|holdSeconds to 40|isometric holdSeconds|reps range|reps to 10|reps to 20|reps to 5|reps to 9|still holdSeconds|workSeconds to 60",
      ],
      [
        0.5,
        'as neighbour workSeconds|called curl workSeconds|called door reps|called grapevine distanceM|called plank holdSeconds|called rail holdSeconds|called raise reps|called row reps|called squat reps|called step workSeconds|carry distanceM|distanceM to 20|holdSeconds range|holdSeconds to 30|kind distanceM|known still holdSeconds|leg-crossing distanceM|load-over-face reps|lunge reps|none though ruled|not as before|not as before in superset|reps max|side-bend workSeconds',
      ],
      [
        0.4,
        'as before in superset|called chop workSeconds|called climber workSeconds|called cushion reps|called flutter workSeconds|called four reps|called jog workSeconds|called pogo reps|called prop holdSeconds|called set reps|called up reps|curl-up holdSeconds|holdSeconds to 120|jump workSeconds|known distanceM|pull reps|push holdSeconds|reps to 15|reps to 7|ruled behind|ruled main|ruled workSeconds|sit-to-stand reps|spine-rotation workSeconds|swing-kit workSeconds|wide-legs workSeconds',
      ],
      [
        0.3,
        'as neighbour distanceM|called 400 distanceM|called beetle holdSeconds|called bit holdSeconds|called bound reps|called box workSeconds|called bug reps|called cat reps|called com holdSeconds|called cow reps|called dip reps|called drag workSeconds|called fallout reps|called hill workSeconds|called hinge workSeconds|called ladder workSeconds|called lift reps|called lower workSeconds|called lung reps|called pose workSeconds|called slid holdSeconds|called straighten reps|called swing workSeconds|called thrust reps|distanceM to 30|distanceM to 5|holdSeconds to 10|leg-lowering holdSeconds|lunge workSeconds|push distanceM|ruled|ruled distanceM|ruled reps|step workSeconds|superset reps|superset workSeconds',
      ],
      [
        0.2,
        'called ankl distanceM|called back reps|called bicycl workSeconds|called cleanse reps|called dog reps|called flick distanceM|called foot holdSeconds|called gate holdSeconds|called grip holdSeconds|called heel holdSeconds|called hug reps|called kick reps|called kne workSeconds|called lever reps|called lunge holdSeconds|called lunge workSeconds|called needle reps|called off reps|called optimistic holdSeconds|called out reps|called pelican holdSeconds|called pres workSeconds|called press holdSeconds|called pull reps|called pushup reps|called saw workSeconds|called sit holdSeconds|called sit reps|called squat workSeconds|called stand reps|called stay reps|called step distanceM|called straightener reps|called tap workSeconds|called tightrope distanceM|called tuck holdSeconds|called walk distanceM|called your holdSeconds|deep-hip reps|deep-knee workSeconds|distanceM to 120|leg-lowering workSeconds|overhead reps|push reps|ruled holdSeconds|run workSeconds|spine-extension reps|spine-extension workSeconds|step distanceM|workSeconds range',
      ],
      [
        0.1,
        'breathing reps|called 500 distanceM|called apart reps|called banana holdSeconds|called behind reps|called bench reps|called body reps|called breath reps|called bridge holdSeconds|called bridge reps|called cabinet reps|called canoe reps|called clean reps|called climb reps|called curl-up reps|called dip holdSeconds|called dock reps|called doll reps|called down reps|called down workSeconds|called elevator reps|called extension reps|called flamingo holdSeconds|called greenhouse reps|called hang holdSeconds|called hanger workSeconds|called hedge reps|called heron holdSeconds|called hollow holdSeconds|called jog distanceM|called jump reps|called kick distanceM|called kne distanceM|called kneel holdSeconds|called lower reps|called lunch workSeconds|called march distanceM|called mat reps|called messag distanceM|called on reps|called only reps|called patter distanceM|called pres reps|called press-up reps|called pull-up reps|called punch workSeconds|called push distanceM|called push-up workSeconds|called right workSeconds|called roe reps|called shrug reps|called slide reps|called squat distanceM|called squeez reps|called stand holdSeconds|called statue holdSeconds|called strid distanceM|called superman workSeconds|called swimm workSeconds|called swimmer workSeconds|called thi reps|called to reps|called touch reps|called treadmill workSeconds|called up workSeconds|called wall reps|called with reps|circuit distanceM|circuit holdSeconds|curl-up workSeconds|distanceM to 10|floor-to-stand reps|hinge holdSeconds|hinge reps|hip-rotation reps|lunge holdSeconds|not as before in circuit|reps to 12|times said 3|times said 4|wide-legs holdSeconds',
      ],
      [
        -0.1,
        "balance holdSeconds|ballistic distanceM|ballistic holdSeconds|ballistic reps|ballistic workSeconds|called back holdSeconds|called back workSeconds|called banana workSeconds|called bat holdSeconds|called bat reps|called beetle reps|called beetle workSeconds|called bicycl reps|called bit reps|called body holdSeconds|called bound workSeconds|called box holdSeconds|called broomstick reps|called carry workSeconds|called circl holdSeconds|called climb holdSeconds|called climber holdSeconds|called climber reps|called crawl workSeconds|called curl holdSeconds|called curl reps|called curl-up workSeconds|called dangle reps|called deadlift holdSeconds|called deadlift workSeconds|called dock holdSeconds|called dog holdSeconds|called down holdSeconds|called drag holdSeconds|called drag reps|called extension holdSeconds|called flamingo workSeconds|called four holdSeconds|called gate reps|called gate workSeconds|called grip reps|called hand holdSeconds|called hand reps|called handstand holdSeconds|called handstand reps|called hang workSeconds|called heel reps|called heel workSeconds|called hollow workSeconds|called hug distanceM|called hydrant reps|called hydrant workSeconds|called jump distanceM|called kick holdSeconds|called kick workSeconds|called kne holdSeconds|called ladder distanceM|called ladder holdSeconds|called leg holdSeconds|called leg workSeconds|called lever holdSeconds|called lift distanceM|called lift holdSeconds|called lunch reps|called lung distanceM|called messag reps|called morn reps|called off holdSeconds|called opener workSeconds|called plank workSeconds|called plat holdSeconds|called plat workSeconds|called press reps|called press workSeconds|called press-up holdSeconds|called pump holdSeconds|called pump workSeconds|called punch holdSeconds|called punch reps|called pushup workSeconds|called quad workSeconds|called rail workSeconds|called rais distanceM|called rais holdSeconds|called rais workSeconds|called raise workSeconds|called right holdSeconds|called rock workSeconds|called roe workSeconds|called roll workSeconds|called round reps|called row distanceM|called row holdSeconds|called set workSeconds|called sit workSeconds|called slid workSeconds|called squeez holdSeconds|called statue reps|called step holdSeconds|called step reps|called swimmer reps|called swing distanceM|called thrust holdSeconds|called tightrope reps|called tilt workSeconds|called to workSeconds|called treadmill reps|called tuck reps|called tuck workSeconds|called twist workSeconds|called walk workSeconds|called walk' reps|called your reps|called your workSeconds|carry holdSeconds|deep-hip distanceM|deep-knee distanceM|distanceM to 60|floor-to-stand workSeconds|heel-raise holdSeconds|hip-rotation holdSeconds|hip-rotation workSeconds|holdSeconds more|isometric reps|lunge distanceM|overhead distanceM|pull distanceM|push workSeconds|reps to 1000|side-bend holdSeconds|sit-to-stand holdSeconds|spine-extension holdSeconds|squat distanceM|squat holdSeconds|swing-kit holdSeconds|workSeconds to 12",
      ],
      [
        -0.2,
        "balance workSeconds|called 400 reps|called bat workSeconds|called bit workSeconds|called bound distanceM|called box reps|called bridg reps|called bug holdSeconds|called chop reps|called chop' workSeconds|called circl workSeconds|called cleanse workSeconds|called crawl distanceM|called dip workSeconds|called fallout workSeconds|called foot workSeconds|called hill reps|called hinge holdSeconds|called ladder reps|called lift workSeconds|called lower holdSeconds|called lung workSeconds|called optimistic workSeconds|called pelican reps|called plank reps|called pull holdSeconds|called pull workSeconds|called raise holdSeconds|called rock holdSeconds|called saw reps|called skip holdSeconds|called skip workSeconds|called squat holdSeconds|called stand workSeconds|called stretch holdSeconds|called swing holdSeconds|called up holdSeconds|called walk holdSeconds|carry workSeconds|circles holdSeconds|curl-up reps|hinge distanceM|holdSeconds to 12|jump reps|pull workSeconds|reps to 3|reps to 4|sit-to-stand workSeconds|spine-flexion distanceM|spine-rotation reps|squat workSeconds|step reps|superset distanceM|superset holdSeconds|wide-legs reps|workSeconds to 3|workSeconds to 4|workSeconds to 7|workSeconds to 9",
      ],
      [
        -0.3,
        'called bridg holdSeconds|called broom reps|called circle reps|called com reps|called cushion holdSeconds|called flutter distanceM|called hold workSeconds|called kne reps|called march holdSeconds|called pogo distanceM|called pose reps|called quad holdSeconds|called rail reps|called rock reps|called set holdSeconds|called support workSeconds|called swing reps|called tap holdSeconds|circles workSeconds|deep-knee holdSeconds|distanceM to 15|hinge workSeconds|holdSeconds to 4|holdSeconds to 9|isometric distanceM|isometric workSeconds|kind holdSeconds|kind workSeconds|leg-lowering distanceM|load-over-face workSeconds|none main 3|none sure true|overhead holdSeconds|pull holdSeconds|reps to 25|row-machine holdSeconds|run holdSeconds|side-bend reps|step holdSeconds|times said 2|workSeconds more|workSeconds to 1000|workSeconds to 120|workSeconds to 2',
      ],
      [
        -0.4,
        'called carry reps|called crawl reps|called grapevine reps|called halo reps|called hold reps|called jog reps|called opener reps|called pose holdSeconds|called roll reps|called twist holdSeconds|called twist reps|circuit reps|deep-knee reps|holdSeconds to 60|holdSeconds to 7|jump holdSeconds|leg-crossing reps|overhead workSeconds|ruled return|words as before|workSeconds to 1|workSeconds to 5',
      ],
      [
        -0.5,
        'as neighbour holdSeconds|called bik reps|called bridg workSeconds|called bridge workSeconds|called hinge reps|called skip reps|called stretch distanceM|called stretch workSeconds|called tap reps|called th reps|distanceM more|distanceM range|holdSeconds to 1|known holdSeconds|row-machine reps|ruled earlier|ruled later|said before|spine-rotation holdSeconds|stretch holdSeconds|stretch reps|stretch workSeconds|workSeconds to 25',
      ],
      [
        -0.6,
        "called bear reps|called dip' workSeconds|called march reps|called opener holdSeconds|called plat reps|called push-up reps|called slid reps|called support reps|holdSeconds to 2|known still workSeconds|none in superset|reps to 60|spine-flexion holdSeconds|stretch distanceM|swing-kit reps|workSeconds to 10",
      ],
      [
        -0.7,
        'balance distanceM|called walk reps|carry reps|holdSeconds to 3|known still distanceM|none in circuit|reps to 40|run reps|still workSeconds|times said 1|workSeconds to 15',
      ],
      [
        -0.8,
        'called hang reps|called stretch reps|holdSeconds to 1000|known still reps|reps to 30|still distanceM|still reps',
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
      [1.0, 'before word all|behind word repeats|behind word was|opens 12|row up to'],
      [
        0.9,
        'before word come|before word cone|before word up|behind word counted|behind word sets|closes eight|closes sixteen|closes through|row before|row of 3|sided true|words of the name, not named',
      ],
      [
        0.8,
        'before word as|before word bounces|before word cleans|before word long|before word step|behind word and|behind word are|behind word faces|behind word ladder|behind word six|closes fifteen|closes total|just before the group|opens eight|opens every',
      ],
      [
        0.7,
        'before owned|before word clocks|before word have|before word one|before word park|before word rest|before word so|before word still|before word will|behind word clock|behind word do|behind word its|behind word stick|behind word ten|closes each|closes fives|closes those|fields workSeconds restSeconds|from start some|in turns before rounds|opens sixteen|opens ten|row then|sure before owned|workSeconds of workSeconds restSeconds',
      ],
      [
        0.6,
        'before word change|before word on|before word only|before word rate|before word rows|behind word back|behind word is|behind word it|behind word negatives|behind word presses|behind word stand|behind word that|behind word thats|behind word today|closes 15|closes 8|closes five|closes minute|corrects before not owned|corrects main owned|from start 3|in clauses|in turns later|only one|opens 10|opens 4|opens eighty|opens fives|opens twelve|opens twenty|past 5|per side|while the group is taught|whole before owned|whole earlier not owned',
      ],
      [
        0.5,
        'ahead 6|before word 8|before word dips|before word drag|before word operated|before word other|before word the|behind word all|behind word ankles|behind word cushion|behind word finisher|behind word last|behind word one|behind word theyre|closes minutes|closes squeezes|closes ten|common|distanceM of sets distanceM|fields reps holdSeconds|fields sets distanceM|in turns main|last of more|main owned|names a mate|nearest before|opens thirty|reps of reps holdSeconds|sure earlier not owned|to end far|weight unknown|words of the name',
      ],
      [
        0.4,
        'a neighbour named|before word after|before word an|before word chins|before word contacts|before word each|before word every|before word into|before word just|before word move|before word rack|before word s|before word slippy|before word steps|before word switch|before word there|before word walk|before word whats|behind word 7|behind word between|behind word eleven|behind word fourteen|behind word if|behind word me|behind word move|behind word rope|behind word rowing|behind word seconds|behind word shoulder|behind word stretch|behind word theres|behind word times|behind word usual|both neighbours named|closes 12|closes 20|closes half|closes sides|closes told|from start 2|in breathing|in turns return|instead before|instead main|interval alone main|interval in turns before|later owned|main|opens 8|opens 80|opens and|opens six|role move|row counts then|row rising|sure later owned|sure main owned|weight true',
      ],
      [
        0.3,
        'alone main|bare return|before word a|before word depending|before word from|before word half|before word hug|before word it|before word jog|before word put|before word quick|before word remember|before word right|before word ring|before word since|before word twenty|behind word 400s|behind word another|behind word band|behind word belt|behind word bit|behind word bounds|behind word bus|behind word day|behind word early|behind word fifteen|behind word goes|behind word many|behind word number|behind word orange|behind word pages|behind word right|behind word says|behind word slack|behind word so|behind word time|behind word ups|behind word yet|closes 10|closes 4|closes drawers|closes eights|closes it|closes lunges|corrects|distanceM of distanceM|fields distanceM|fields sets reps|fields sets reps restSeconds|fields sets workSeconds distanceM|followed by then|in turns, told of one alone|instead|instead earlier|just behind the group|named before 1|named behind far|nearest behind|opens 3|opens 30|opens eights|opens id|opens stay|reps of sets reps|reps of sets reps restSeconds|row|run true|said before|said for all before|standing true|whole main owned|will do',
      ],
      [
        0.2,
        'alone behind rounds|bare behind|bare main|before word at|before word cos|before word dont|before word facing|before word farmers|before word four|before word hangs|before word heavier|before word if|before word mind|before word nothings|before word of|before word okay|before word out|before word shoulders|before word start|before word twice|before word two|before word unless|behind word again|behind word arm|behind word bar|behind word cheating|behind word cow|behind word deadlifts|behind word deal|behind word dog|behind word drills|behind word face|behind word from|behind word gets|behind word go|behind word goal|behind word heel|behind word jan|behind word keen|behind word ligaments|behind word nine|behind word opens|behind word press|behind word prop|behind word sheet|behind word shoulders|behind word shrugs|behind word skipping|behind word slides|behind word squat|behind word wait|behind word yes|behind word your|closes 3|closes between|closes down|closes go|closes laps|closes meters|closes middle|closes other|closes right|closes side|fields sets workSeconds restSeconds|in caution|in turns earlier rounds|interval alone before|longer sentence|named behind some|opens 15|opens about|opens bit|opens call|opens fifteen|opens i|opens its|opens mini|opens same|opens so|opens we|reps of reps workSeconds|return owned|role chat|row of 4|run unknown|said for all|seated unknown|sure main not owned|weight false|whole return owned|workSeconds moving|workSeconds of sets workSeconds restSeconds',
      ],
      [
        0.1,
        'alone main rounds|before word 5k|before word already|before word and|before word any|before word are|before word band|before word basically|before word bench|before word broom|before word by|before word calf|before word deep|before word didnt|before word gets|before word grip|before word head|before word heel|before word hips|before word like|before word lunges|before word over|before word pedal|before word roll|before word same|before word sticks|before word tailbone|before word tens|before word tuck|before word waiting|before word whatever|before word whatevers|behind word 14|behind word 19|behind word behind|behind word bell|behind word breathe|behind word bridge|behind word buckets|behind word bugs|behind word chest|behind word climb|behind word climbers|behind word curls|behind word feet|behind word flat|behind word front|behind word grass|behind word hair|behind word hands|behind word hover|behind word i|behind word isnt|behind word jog|behind word just|behind word light|behind word lower|behind word mat|behind word mes|behind word morning|behind word next|behind word old|behind word other|behind word out|behind word over|behind word plenty|behind word pyramid|behind word ride|behind word said|behind word same|behind word see|behind word short|behind word slide|behind word slowly|behind word small|behind word squats|behind word still|behind word strict|behind word swap|behind word t|behind word tall|behind word taps|behind word these|behind word thirties|behind word tight|behind word touch|behind word turn|behind word twenty|behind word under|behind word way|behind word were|behind word wind|behind word with|behind word wood|behind word yellow|closes altogether|closes awake|closes bench|closes curls|closes different|closes do|closes lap|closes left|closes metres|closes press|closes pushups|closes raises|closes sets|closes strokes|closes them|distanceM of reps distanceM|distanceM of sets distanceM restSeconds|distanceM of sets reps distanceM restSeconds|fields reps workSeconds tempo|fields sets distanceM restSeconds|fields sets reps distanceM restSeconds|first of more|followed by level|for part|from start 1|holdSeconds still|in harder|in turns before|interval in turns earlier|named before|named before 2|named behind 0|opens 2|opens 40|opens 400|opens 5|opens a|opens anything|opens first|opens sixes|opens sixty|opens somewhere|reps of reps workSeconds tempo|right behind the one before|role work|rounds|row earlier|stretch unknown|to end 1|to end some|told|whole main not owned|workSeconds of sets reps workSeconds restSeconds',
      ],
      [
        -0.1,
        'ahead 180|ahead 60|before word 10|before word 13|before word 18|before word 2|before word 3|before word actually|before word behind|before word bend|before word bikes|before word blow|before word blues|before word both|before word bottom|before word breathe|before word bring|before word coming|before word days|before word done|before word doors|before word end|before word everyone|before word eyes|before word feel|before word feels|before word fingers|before word flights|before word for|before word fourteen|before word go|before word gordons|before word grow|before word gwilym|before word hollows|before word im|before word its|before word ive|before word keep|before word kilo|before word lay|before word lean|before word leave|before word lets|before word lower|before word months|before word nearly|before word nineteen|before word ninety|before word outside|before word pace|before word partner|before word past|before word phone|before word pick|before word points|before word press|before word presses|before word ribs|before word seven|before word shake|before word side|before word sit|before word sitting|before word somebody|before word somebodys|before word stood|before word straight|before word swimming|before word take|before word than|before word thirty|before word threes|before word till|before word tiptoes|before word twelve|before word us|before word was|before word well|before word when|before word whole|before word wont|before word write|before word you|before word youre|before word youve|behind not owned|behind word 13|behind word 2|behind word 3|behind word 4|behind word 8|behind word allowed|behind word an|behind word aparts|behind word big|behind word bottom|behind word brave|behind word breath|behind word but|behind word ceiling|behind word charity|behind word circuit|behind word click|behind word count|behind word courting|behind word doors|behind word drags|behind word drink|behind word each|behind word ear|behind word eighteen|behind word end|behind word faster|behind word fat|behind word figure|behind word floor|behind word forward|behind word going|behind word good|behind word granddaughters|behind word hand|behind word has|behind word head|behind word hes|behind word high|behind word higher|behind word hill|behind word hips|behind word hold|behind word hollow|behind word home|behind word kind|behind word knees|behind word left|behind word legs|behind word lift|behind word like|behind word long|behind word manage|behind word mean|behind word menu|behind word mighty|behind word minutes|behind word more|behind word much|behind word neck|behind word need|behind word needs|behind word neither|behind word nineteen|behind word numbers|behind word off|behind word or|behind word overhead|behind word palm|behind word pink|behind word plank|behind word planned|behind word pull|behind word push|behind word quads|behind word ramp|behind word rate|behind word reason|behind word records|behind word reds|behind word remember|behind word rest|behind word return|behind word rise|behind word room|behind word row|behind word run|behind word saying|behind word set|behind word shes|behind word skips|behind word smell|behind word spilling|behind word squash|behind word squatted|behind word station|behind word steps|behind word swinging|behind word take|behind word than|behind word them|behind word thigh|behind word thighs|behind word things|behind word thirteen|behind word thirty|behind word those|behind word toe|behind word top|behind word tyrant|behind word waistband|behind word waited|behind word waiting|behind word want|behind word week|behind word well|behind word wide|behind word wobbling|between|closes 14|closes 16|closes 30|closes 45|closes 5k|closes 9|closes all|closes back|closes brave|closes change|closes done|closes eighteen|closes kilometres|closes leg|closes lengths|closes miles|closes outs|closes over|closes plenty|closes rows|closes set|closes six|closes steps|closes time|condition|fields sets holdSeconds|fields sets holdSeconds restSeconds|fields sets reps workSeconds restSeconds|followed later|held in the sentence|holdSeconds of sets holdSeconds|holdSeconds of sets holdSeconds restSeconds|in easier|in turns|in turns behind rounds|in turns later rounds|in turns return rounds|interval alone behind|interval in turns later|later|named before 3|named before another between|named behind 2|no name|opens 14|opens 16|opens 17|opens 18|opens 300|opens 41|opens 5k|opens change|opens each|opens eighteen|opens everythings|opens four|opens heel|opens push|opens then|others in the sentence before|reps of reps distanceM|return not owned|right behind another|role teach|row later|row return|run false|said for all behind|said for all main|seated false|short sentence|stretch false|sure behind not owned|sure return not owned|to end 2|whole return not owned|workSeconds of reps workSeconds tempo',
      ],
      [
        -0.2,
        'alone earlier|alone earlier rounds|at the start|before|before word 20|before word 9|before word ankle|before word because|before word bell|before word between|before word centimetre|before word drink|before word elbows|before word eleven|before word enough|before word feet|before word first|before word forty|before word hamstring|before word hand|before word hundred|before word id|before word in|before word is|before word leg|before word lift|before word lovely|before word miles|before word my|before word near|before word now|before word once|before word people|before word percent|before word pound|before word pounds|before word score|before word slow|before word swap|before word thirteen|before word thousand|before word weights|before word work|before word years|behind word bear|behind word blue|behind word blues|behind word can|behind word county|behind word done|behind word everythings|behind word fine|behind word fingertips|behind word forget|behind word got|behind word had|behind word hall|behind word heels|behind word here|behind word instead|behind word ive|behind word jeans|behind word lets|behind word level|behind word nose|behind word of|behind word once|behind word pair|behind word past|behind word pillow|behind word pockets|behind word raises|behind word rather|behind word say|behind word seven|behind word this|behind word us|behind word window|behind word you|behind word youve|closes 11|closes 60|closes 7|closes enough|closes fifty|closes four|closes fours|closes fourteen|closes lifts|closes out|closes red|closes round|closes row|closes seventy|closes squats|closes tens|closes these|closes thirteen|closes twice|closes up|closes ups|closes you|earlier not owned|fields reps tempo|fields reps workSeconds|fields sets reps workSeconds|fields workSeconds|followed by or|in fault|in turns, told of another group|instead later|loose|named behind 3|only others named around|opens 11|opens 13|opens 20|opens 60|opens 9|opens fifty|opens five|opens fours|opens ladder|opens lets|opens ninety|opens per|opens say|opens seventy|opens static|opens take|opens well|reps of reps tempo|reps of sets reps workSeconds restSeconds|row behind|row main|standing false|standing unknown|stretch true|sure before not owned|sure behind owned|unsure|whole before not owned|whole later not owned|workSeconds of sets reps workSeconds|workSeconds of workSeconds',
      ],
      [
        -0.3,
        'alone before|alone, told of one alone|at later|before not owned|before word back|before word backs|before word but|before word degrees|before word down|before word eight|before word five|before word foot|before word good|before word hands|before word hang|before word hmm|before word ignore|before word inches|before word kilos|before word left|before word look|before word och|before word oclock|before word off|before word six|before word stop|before word thatll|before word this|before word three|before word today|behind word bench|behind word box|behind word bulgarians|behind word climbs|behind word core|behind word did|behind word even|behind word first|behind word get|behind word have|behind word little|behind word ones|behind word put|behind word really|behind word rose|behind word rows|behind word saturday|behind word swings|behind word the|behind word tonight|behind word youll|closes 1|closes again|closes arm|closes benches|closes couple|closes goes|closes nineteen|closes off|closes rounds|closes seven|closes sixty|corrects return owned|earlier|fields holdSeconds|followed by up to|followed near|for all|from start far|holdSeconds of holdSeconds|in focus|in turns, names one alone|interval alone earlier|interval alone, named around|later not owned|named behind 1|opens 7|opens do|opens forty|opens hold|opens nineteen|opens thats|opens thirteen|opens threes|opens twice|role end|row counts level|row level|said for all earlier|sure return owned|to end 3|told of a mate',
      ],
      [
        -0.4,
        'alone before rounds|alone, told of another group|bare earlier|before word big|before word euro|before word flat|before word hold|before word i|before word last|before word let|before word not|before word or|before word rings|before word then|before word weeks|before word written|behind word 9|behind word badge|behind word chair|behind word counts|behind word down|behind word five|behind word half|behind word in|behind word lifts|behind word minute|behind word raised|behind word road|behind word stage|behind word there|behind word twists|behind word two|behind word up|closes 2|closes 5|closes 6|closes eleven|closes twenty|earlier owned|fields reps restSeconds|followed by one for some|in range|in setup|in turns earlier|in turns, names one of another group|instead behind|instead return|interval in turns, named around|loose before|loose earlier|loose later|named before some|opens fourteen|opens half|opens seven|reps of reps restSeconds|seated true|sure earlier owned|whole behind owned|whole earlier owned|workSeconds of reps workSeconds',
      ],
      [
        -0.5,
        'ahead far|before word going|before word more|before word nah|behind word for|behind word leg|behind word no|behind word on|behind word only|behind word round|behind word strides|behind word to|closes ones|closes presses|closes times|corrects later not owned|of a later round|opens circuit|others named|sure later not owned',
      ],
      [
        -0.6,
        'alone later|alone return|alone, names one of another group|before word oh|behind word a|behind word about|behind word then|behind word three|closes breath|closes thirty|closes two|closes way|corrects earlier not owned|from start 0|opens 1|opens two|past 60|taken back',
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
      [-1.1, 'before word no'],
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
        'ahead 180|ahead none|alone behind|alone, names one alone|alone, told of another group|bare behind|before word of|before word s|before word two|behind|behind not owned|behind word and|behind word supermans|closes 1|closes eight|closes five|closes forty|closes four|closes six|closes ten|closes three|counted name|fields sets reps|followed by then|followed near|for all|from start 1|held in the sentence|in execution|in setup|in turns before|in turns earlier|instead main|loose behind|main owned|named before 0|named behind|names a mate|nearest behind|of a later round|only others named around|opens 1|opens eight|opens five|opens forty|opens four|opens six|opens ten|opens thirty|others in the sentence before|past 5|right behind another|role move|rounds|row|row comma|row counts|row counts comma|row falling|row main|row of 2|row rising|short sentence|sided false|sure earlier not owned|sure later not owned|sure main owned|to end 0|to end 1|to end 2|to end 3|told of a mate|will do',
      ],
      [
        -0.2,
        'a neighbour named|ahead 20|ahead 6|ahead 60|ahead far|alone before|alone earlier|alone later|alone main|alone, told of one alone|at later|at the start|bare|bare before|bare earlier|bare main|bare return|before word and|closes two|condition|earlier|earlier not owned|fields reps|followed by comma|followed by level|from start far|in turns|in turns main|in turns return|just behind the group|loose|loose before|loose earlier|loose main|loose return|main|main not owned|opens three|opens two|others named|past 15|per side|return|return not owned|right behind the one before|role chat|role work|sure before not owned|to end far|told',
      ],
      [
        -0.3,
        'before|before not owned|closes one|followed later|longer sentence|no name|opens one|past far|role teach|while the group is taught',
      ],
    ],
    'as seconds held': [
      [1.2, 'opens make'],
      [0.8, 'behind word so|closes twenty|followed by up to|only one'],
      [0.7, 'corrects main owned|from start some'],
      [
        0.6,
        'before word feels|before word rings|behind word if|behind word it|behind word you|corrects|main owned|opens 20|whole main owned',
      ],
      [
        0.5,
        'before word in|before word with|behind word say|closes 20|fields sets reps restSeconds|in harder|instead main|per side|to end far',
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
        'a neighbour named|ahead 180|alone before rounds|alone behind|alone later|alone main|alone, names one alone|alone, names one of another group|alone, told of another group|bare behind|bare later|bare return|before word between|before word breathe|before word dont|before word hand|before word i|before word keep|before word no|before word of|before word s|before word thats|before word to|before word up|before word we|before word whos|before word you|behind|behind not owned|behind word about|behind word and|behind word ask|behind word at|behind word back|behind word do|behind word dog|behind word down|behind word for|behind word go|behind word heels|behind word in|behind word is|behind word last|behind word one|behind word three|behind word two|behind word was|behind word well|between|closes 10|closes 15|closes 6|closes eight|closes nine|closes seconds|closes seven|closes side|closes six|closes through|closes twelve|fields reps tempo|fields reps workSeconds|followed by then|for all|in caution|in tempo|in turns|in turns before|in turns earlier|in turns later|in turns return|in turns, told of one alone|loose behind|loose later|loose return|named around|of a later round|opens 10|opens 3|opens and|opens eight|opens for|opens forty|opens same|opens seven|opens twelve|others in the sentence before|past 5|past 60|past far|return not owned|right behind another|role move|role teach|rounds|row falling|row level|sure earlier not owned|sure later not owned|sure main owned|to end 2|whole before not owned|will do',
      ],
      [
        -0.2,
        'ahead 20|ahead 6|ahead 60|bare|bare before|before word elbows|before word foot|before word if|before word on|before word one|behind word its|behind word on|behind word the|closes five|closes four|closes those|closes three|closes two|fields reps restSeconds|from start 0|from start 1|from start far|held in the sentence|in setup|last of more|later|later not owned|longer sentence|loose before|loose earlier|loose main|main not owned|only others named around|opens five|opens four|opens six|others named|past 15|return|role chat|row counts|row counts comma|row of 2|to end 0|to end some|told|told of a mate',
      ],
      [
        -0.3,
        'ahead far|ahead none|alone before|alone earlier|alone, told of one alone|at later|at the start|bare earlier|before|before not owned|closes them|earlier|earlier not owned|fields reps|loose|opens three|opens two|right behind the one before|role work|short sentence|sure before not owned|taken back|to end 3',
      ],
      [-0.4, 'closes one|followed near|no name'],
      [-0.5, 'opens one'],
    ],
    span: [
      [1.3, 'sure loose'],
      [1.2, 'before word the'],
      [1.1, 'before word for|from start some'],
      [0.9, 'closes eight'],
      [
        0.8,
        'before word big|before word if|behind word does|behind word dream|by then|closes 8|closes ten|closes twenty|opens 30',
      ],
      [
        0.7,
        'before word dumbbell|before word on|behind word third|by or, for whom|opens 2|opens fifteen|opens twenty|row counts level|then for whom',
      ],
      [
        0.6,
        'before word at|before word fifteen|before word s|behind word go|behind word not|behind word or|behind word so|behind word two|closes foot|closes thirty|opens ten|role chat|row counts|while the group is taught',
      ],
      [
        0.5,
        'before word keep|before word two|before word weights|behind word blues|behind word leg|in a later round, in turns|in turns later|interval in turns later|last of more',
      ],
      [
        0.4,
        'before word leave|by if, for whom|by or|closes 10|closes off|condition|fields reps workSeconds restSeconds|fields sets reps|from start 3|in turns later rounds|in turns, told of another group|later|later not owned|of intervals|opens 10|opens eight|opens twos|row counts then|row level',
      ],
      [
        0.3,
        'behind word and|behind word do|behind word round|behind word then|behind word weeks|closes four|in a later round|in a later round, no interval|in turns main|in turns main rounds|instead main|of a later round|opens thirty|past 60|row then|sure later not owned|to end far|told of a mate|whole main owned',
      ],
      [
        0.2,
        'behind word its|behind word just|behind word nine|closes fifteen|closes five|closes seconds|followed by then|followed later|in breathing|of workSeconds|opens two|rising|row main|row rising',
      ],
      [
        0.1,
        'alone return|bare later|before word dont|before word youre|behind word at|behind word to|by far|by up to|by up to, for whom|common|corrects behind not owned|corrects later not owned|fields workSeconds|fields workSeconds restSeconds|from start 1|in fault|in turns behind|in turns behind rounds|in turns, names one of another group|interval in turns behind|loose later|main owned|row of 3|sure behind not owned|sure sure|taken back',
      ],
      [
        -0.1,
        'ahead 6|alone before rounds|alone earlier rounds|alone main|alone main rounds|alone, told of another group|bare|bare behind|bare return|before word an|before word breathe|before word but|before word degrees|before word down|before word each|before word five|before word four|before word have|before word hold|before word hollows|before word im|before word in|before word into|before word its|before word just|before word kilos|before word left|before word let|before word look|before word lovely|before word more|before word nine|before word no|before word not|before word now|before word off|before word one|before word park|before word partner|before word past|before word people|before word percent|before word ribs|before word same|before word shoulders|before word sit|before word six|before word so|before word start|before word step|before word ten|before word that|before word thats|before word there|before word thirty|before word walk|before word weeks|before word with|before word you|behind owned|behind word a|behind word about|behind word bar|behind word can|behind word clock|behind word counted|behind word curls|behind word did|behind word down|behind word each|behind word eight|behind word five|behind word going|behind word if|behind word is|behind word it|behind word kind|behind word last|behind word long|behind word lot|behind word me|behind word nineteen|behind word of|behind word on|behind word once|behind word ones|behind word right|behind word same|behind word say|behind word second|behind word seven|behind word six|behind word stand|behind word still|behind word take|behind word that|behind word thats|behind word there|behind word up|behind word was|behind word your|behind word youve|by far, for whom|closes 1|closes 12|closes 20|closes 3|closes 30|closes 5|closes 6|closes 75|closes between|closes brave|closes breath|closes goes|closes leg|closes lengths|closes metres|closes middle|closes rounds|closes seven|closes seventy|closes them|closes those|closes times|closes twice|corrects before not owned|counted name|fields distanceM|fields reps restSeconds|fields sets reps restSeconds|fields sets workSeconds|for all|in caution|in easier|in execution|in range|in setup|in turns before|in turns before rounds|in turns earlier|in turns earlier rounds|instead earlier|instead return|interval alone earlier|interval in turns before|loose|loose behind|loose main|loose return|main|main not owned|names a mate|of reps|opens 1|opens 12|opens 20|opens 4|opens 6|opens 75|opens 8|opens do|opens eighty|opens for|opens its|opens nine|opens nineteen|opens seven|opens seventy|opens so|opens we|others named|past 5|past far|per side|return not owned|right behind the one before|row behind|row return|said for all|said for all before|sided true|sure behind owned|to end 1|to end some|whole earlier not owned|whole later not owned|words of the name',
      ],
      [
        -0.2,
        'alone before|alone behind|alone earlier|alone later|alone, told of one alone|at the start|before word of|before word then|before word three|behind word four|behind word in|behind word the|behind word ups|behind word you|between|closes 2|closes minute|closes nine|closes sixty|closes twelve|corrects|corrects main owned|fields reps|followed by comma|followed by one for some|followed near|from start 0|in harder|in tempo|in turns, told of one alone|instead|interval alone before|named around|of distanceM|only one|opens 15|opens 3|opens a|opens five|opens forty|opens four|opens hold|opens ninety|opens sixty|opens twelve|past 15|role move|row falling|sure earlier not owned|sure return owned|told|whole before not owned',
      ],
      [
        -0.3,
        'a neighbour named|at later|before|before not owned|before word i|behind word for|behind word one|behind word three|by if|by then, for whom|closes forty|closes side|earlier|earlier not owned|fields holdSeconds|fields sets workSeconds restSeconds|first of more|followed by level|instead later|just behind the group|no name|only others named around|others in the sentence before|return|return owned|role work|short sentence|sure before not owned|to end 2',
      ],
      [-0.4, 'ahead far|before word to|by near|closes minutes|in turns return'],
      [-0.5, 'falling|from start far|loose sure|of holdSeconds|role teach|row counts comma|will do'],
      [-0.6, 'closes one|closes two|held in the sentence'],
      [-0.7, 'loose loose|opens one|opens three|row comma'],
    ],
    'as hold': [
      [1.0, 'row then'],
      [0.9, 'closes twenty|row rising|whole main owned'],
      [0.8, 'before word if|closes leg|row of 3|to end far'],
      [0.7, 'ahead 180|opens twenty|row main'],
      [0.6, 'closes times|from start some|last of more|row up to'],
      [
        0.5,
        'before word for|before word just|behind word bear|closes twice|corrects main owned|main owned|only one|opens two|row|short sentence|words of the name',
      ],
      [
        0.4,
        'alone main|before word breathe|before word on|before word round|before word stop|behind word brenda|behind word its|behind word lets|behind word your|corrects|fields sets workSeconds|fields sets workSeconds restSeconds|from start 3|interval alone main|interval alone, named around|main|named around|named in the sentence before|nearest before|role teach|sided true|sure main owned',
      ],
      [
        0.3,
        'before word each|before word hips|before word its|before word swap|behind word do|behind word same|behind word supports|behind word well|closes 15s|closes between|closes fifteen|common|followed by level|in clauses|instead main|named before 0|opens 15s|opens forty|opens nine|opens say|opens thirty|per side|row or|sure later not owned|words of the name, not named',
      ],
      [
        0.2,
        'alone later|alone, names one alone|at the start|bare main|before word anybody|before word long|before word youll|behind word bent|behind word eight|behind word isnt|behind word knees|behind word level|behind word long|behind word shame|behind word so|behind word ten|behind word twenty|behind word up|closes 40|closes forty|closes thirty|closes three|fields sets reps workSeconds restSeconds|in turns before rounds|instead|interval alone before|just behind the group|named before|opens 25|opens so|opens ten|past 60|sure return owned|told',
      ],
      [
        0.1,
        'before owned|before word back|before word between|before word cons|before word please|before word squeeze|before word then|before word up|behind owned|behind word deal|behind word floor|behind word holds|behind word kind|behind word ladder|behind word planks|behind word soft|behind word thats|behind word there|behind word you|between|closes air|fields reps workSeconds|in caution|in setup|in turns before|in turns return|later|later not owned|longer sentence|loose main|main not owned|names a mate|opens 10|opens bit|opens call|opens circuit|past 5|return owned|role work|sided unknown|sure before owned|sure behind owned|whole before not owned|whole before owned',
      ],
      [
        -0.1,
        'alone before rounds|alone earlier rounds|alone later rounds|alone return|alone, told of another group|bare before|bare earlier|before word dont|before word go|before word i|before word ignore|before word ill|before word im|before word ive|before word lie|before word off|before word partner|before word rows|before word shake|before word stood|before word thirty|before word three|before word to|before word will|before word with|behind not owned|behind word and|behind word back|behind word breaths|behind word core|behind word each|behind word finisher|behind word go|behind word head|behind word held|behind word it|behind word knee|behind word minute|behind word plank|behind word prop|behind word really|behind word records|behind word round|behind word six|behind word swings|behind word teeth|behind word that|behind word the|behind word waistband|behind word was|behind word with|closes 6|closes each|closes half|closes nine|closes one|closes over|closes six|closes stations|closes ten|closes through|fields workSeconds|followed by then|for all|from start 1|from start far|in execution|in focus|in turns later|in turns later rounds|in turns, names one of another group|in turns, told of one alone|instead before|interval alone earlier|just before the group|loose|loose before|loose earlier|named before 3|named behind|nearest behind|opens 13|opens 15|opens eight|opens half|opens ninety|others named|past 15|past far|row counts comma|row earlier|row return|said before|said for all|said for all before|stretch false|sure before not owned|sure behind not owned|to end 3|told of a mate|unsure|whole earlier not owned',
      ],
      [
        -0.2,
        'ahead 60|alone, names one of another group|another nearer|bare later|bare return|before|before not owned|before word keep|before word left|before word s|behind word a|behind word had|closes foot|closes rounds|condition|followed later|from start 0|held in the sentence|in fault|in harder|in tempo|in turns|loose later|loose return|named before another between|opens 3|opens five|opens ladder|opens twelve|return not owned|right behind another|right behind the one before|rounds|row counts|row later|sure earlier not owned|to end 0|to end 1|whole later not owned',
      ],
      [
        -0.3,
        'ahead 20|alone before|alone earlier|before word no|before word or|behind word down|behind word heel|behind word is|earlier|earlier not owned|followed by or|of a later round|opens 30|opens a|opens three|others in the sentence before|row counts level|sided false|will do',
      ],
      [
        -0.4,
        'before word and|before word hang|before word is|before word of|fields workSeconds restSeconds|first of more|followed by one for some|followed near|no name|only others named around|opens 20|opens four|to end some',
      ],
      [-0.5, 'at later|closes minute|closes minutes|opens fifteen|opens one|to end 2'],
      [-0.6, 'ahead far|behind word for|row comma|row level'],
      [-0.7, 'closes seconds|row falling|taken back'],
      [-0.8, 'closes goes'],
    ],
    'as minutes': [
      [
        -0.1,
        'at later|bare|bare main|closes one|fields reps|longer sentence|loose|loose main|main|main not owned|no name|role chat|told',
      ],
    ],
    'as work': [
      [
        -0.1,
        'ahead 60|alone before|alone main|at later|at the start|before|before not owned|before word and|fields holdSeconds|held in the sentence|main|main owned|no name|only one|opens hold|role teach|role work|sure before not owned|sure main owned',
      ],
      [-0.2, 'longer sentence|told'],
    ],
    'in rep': [
      [0.3, 'holdSeconds still|only one|role chat'],
      [
        0.2,
        'alone main|before word each|followed near|from start some|longer sentence|main|main owned|opens stay|stretch true|sure main owned|to end far|told',
      ],
      [
        0.1,
        'ahead far|alone before|at the start|before|before not owned|before word and|behind word just|closes time|fields reps holdSeconds|fields sets reps holdSeconds|from start 2|held in the sentence|holdSeconds of reps holdSeconds|holdSeconds of sets reps holdSeconds|only others named around|opens eight|opens hold|others in the sentence before|sure before not owned|whole before not owned',
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
      [0.4, 'beside workSeconds|main|main owned|opens ten|sure main owned|told|whole main owned'],
      [0.3, 'alone main|closes those|longer sentence|role teach'],
      [0.2, 'ahead 60|right behind the one before|role work|to end far'],
      [
        0.1,
        'at later|corrects|corrects earlier not owned|earlier|earlier not owned|first of more|followed later|from start far|in turns earlier|in turns, told of one alone|instead|instead earlier|no name|sure earlier not owned|whole earlier not owned',
      ],
      [
        -0.1,
        'ahead 180|alone before|alone, names one alone|at the start|before|before not owned|before word every|before word then|before word work|behind word eight|behind word said|behind word strides|behind word swings|beside distanceM|closes metres|closes rounds|fields sets distanceM|followed by then|followed near|in turns before|in turns earlier rounds|interval in turns earlier|last of more|only others named around|opens 30|opens eight|opens six|others named|role chat|sure before not owned|whole before not owned',
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
      [-0.1, 'ruled|to 25'],
      [-0.3, 'more|range|to 15|to 40'],
      [-0.4, 'beside distanceM|beside undefined|to 1000'],
      [-0.5, 'beside workSeconds|to 1|to 120|to 30|to 60'],
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
        'ahead 180|alone behind|alone earlier rounds|alone later rounds|alone main rounds|alone return|alone, names one of another group|alone, told of another group|bare behind|bare later|bare main|bare return|before word 60|before word after|before word as|before word between|before word dont|before word each|before word for|before word go|before word going|before word i|before word if|before word im|before word left|before word really|before word round|before word sat|before word shake|before word so|before word the|before word with|behind word again|behind word circuit|behind word do|behind word eight|behind word go|behind word in|behind word is|behind word it|behind word level|behind word rest|behind word round|behind word said|behind word says|behind word so|behind word stand|behind word swings|behind word take|behind word that|behind word the|behind word there|behind word time|behind word to|behind word way|behind word your|behind word youve|between|closes between|closes circles|closes half|closes hour|closes leg|closes one|closes over|closes rounds|closes second|closes side|closes three|closes through|closes times|closes twice|corrects before not owned|corrects main owned|fields reps workSeconds|fields sets reps workSeconds restSeconds|fields workSeconds tempo|first of more|followed by one for some|from start 0|from start 1|from start 2|from start 3|in easier|in setup|in tempo|in turns behind|in turns earlier rounds|in turns later rounds|in turns main rounds|in turns, names one alone|instead before|instead earlier|instead later|interval alone main|interval alone, named around|just behind the group|loose behind|loose later|loose main|loose return|main not owned|named before|nearest before|opens 20|opens 4|opens 40|opens 45|opens 5|opens 6|opens 60|opens an|opens as|opens circuit|opens eight|opens fifteen|opens sixty|others named|past 5|per side|return not owned|return owned|row comma|row falling|row of 3|row then|said before|seated false|sided false|standing true|stretch false|sure behind not owned|sure main not owned|sure return owned|to end 3|to end far|told of a mate|whole main not owned|words of the name',
      ],
      [
        -0.2,
        'a neighbour named|ahead 20|ahead 6|alone before rounds|alone main|alone, names one alone|bare|bare before|bare earlier|before word and|before word in|before word of|before word on|before word then|before word to|behind|behind not owned|behind word and|closes off|fields workSeconds restSeconds|followed by then|followed near|in turns before rounds|in turns earlier|in turns later|in turns return|in turns, told of one alone|instead main|interval alone before|interval in turns before|just before the group|last of more|loose|loose before|loose earlier|opens 30|opens four|opens half|opens ninety|opens one|opens thirteen|others in the sentence before|past 15|return|right behind another|row level|row main|row of 2|row rising|said for all|said for all before|to end 0|to end 1|to end 2|to end some|whole before not owned|whole earlier not owned|whole later not owned',
      ],
      [
        -0.3,
        'ahead 60|alone before|alone earlier|alone later|alone, told of one alone|at the start|before|behind word its|closes seconds|common|condition|corrects|earlier|earlier not owned|fields sets workSeconds restSeconds|followed by level|followed later|for all|in turns|in turns before|in turns main|instead|later|later not owned|longer sentence|main|main owned|of a later round|only one|only others named around|opens a|opens forty|opens thirty|opens twenty|opens two|past 60|past far|right behind the one before|role teach|role work|rounds|row|sure earlier not owned|sure later not owned|sure main owned|while the group is taught|will do',
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
      [0.3, 'alone main|closes seconds|closes them|closes two|corrects main owned|opens hold|to end far'],
      [
        0.2,
        'behind word forward|behind word long|behind word mat|behind word the|behind word those|behind word to|behind word up|corrects|fields holdSeconds restSeconds|from start 3|held in the sentence|in turns main|instead main|last of more|opens 15|opens five|to end some',
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
      [1.2, 'as before in circuit'],
      [0.9, 'to 3'],
      [0.8, 'to 2'],
      [0.5, 'as before in superset|in superset|none of reps'],
      [0.4, 'as before|none, amount said 1'],
      [0.3, 'none|none, amount said 2|of distanceM|ruled'],
      [0.2, 'as 2 neighbours|none, amount said 0|not as before|words as before'],
      [0.1, 'none in circuit|none of holdSeconds|none of workSeconds|of undefined'],
      [-0.1, 'in circuit|none of undefined|not as before in circuit|of holdSeconds|of workSeconds|to 25|to 60'],
      [-0.2, 'none, amount said 3|to 4|to 40|to 7'],
      [-0.3, 'as 1 neighbours|none of distanceM|to 120'],
      [-0.4, 'none though ruled'],
      [-0.5, 'none in superset|not as before in superset|of reps|to 15'],
      [-0.6, 'to 1|to 5'],
      [-0.8, 'range|to 9'],
      [-1.2, 'to 10'],
    ],
    said: [
      [1.4, 'gap 0'],
      [1.1, 'opens four|with amount'],
      [1.0, 'just behind the group'],
      [0.9, 'before word of|behind word its|closes between|opens every|past 60|while the group is taught'],
      [
        0.8,
        'ahead 6|behind word is|behind word marches|behind word the|closes lots|closes time|in turns before|in turns before rounds|in turns return|named around|opens 12|stretch unknown|to end far',
      ],
      [
        0.7,
        'before word second|before word whats|behind word head|behind word just|behind word next|in turns earlier rounds|instead main|sided unknown',
      ],
      [
        0.6,
        'before word partner|before word unless|behind word chair|behind word so|behind word then|corrects|fields sets reps holdSeconds|just before the group|past 5|right behind the one before|short sentence',
      ],
      [
        0.5,
        'bare return|before word but|before word cleans|before word with|behind word does|behind word long|behind word press|behind word rounds|behind word second|behind word squats|closes lengths|closes lot|closes twice|common|corrects later not owned|fields sets tempo|in turns earlier|loose before|loose return|main owned|named before|names a mate|nearest before|opens make|standing false|told of a mate',
      ],
      [
        0.4,
        'ahead 180|before word bend|before word going|before word hangs|before word heavier|behind word curls|behind word pair|behind word round|behind word shrugs|behind word sit|behind word together|behind word ups|closes hand|closes over|closes sets|closes stations|closes trips|counted name|first of more|from start 3|gap 2|in turns behind rounds|in turns main|main|named before 0|named in the sentence before|only one|opens 4|opens another|opens now|opens stretches|opens well|right behind another',
      ],
      [
        0.3,
        'before word 10|before word and|before word calves|before word dont|before word if|before word round|before word so|before word twenty|behind word are|behind word behind|behind word drive|behind word first|both neighbours named|closes 6|closes minutes|closes twelve|closes up|corrects main owned|fields sets reps restSeconds|fields sets restSeconds|fields sets workSeconds|in easier|in turns behind|in turns, told of one alone|interval alone earlier|named behind 3|return not owned|seated unknown|stretch false|weight true|words of the name|words of the name, not named',
      ],
      [
        0.2,
        'alone main|at later|bare before|before word go|before word ive|before word take|before word two|before word you|behind|behind word along|behind word bar|behind word bugs|behind word ligaments|behind word now|behind word off|behind word plonk|behind word wood|closes 3|closes eight|closes five|closes from|closes leg|closes minute|followed by then|from start 1|gap 1|in turns later|interval alone main|named before far|opens 2|opens 5|role chat|sure before owned|whole before owned|will do',
      ],
      [
        0.1,
        'a neighbour named|before owned|before word again|before word every|before word first|before word i|before word not|before word och|before word press|before word sit|before word some|behind not owned|behind owned|behind word and|behind word bounds|behind word breather|behind word dish|behind word do|behind word eight|behind word faces|behind word it|behind word menu|behind word negatives|behind word plank|behind word ramp|behind word stage|behind word still|behind word stops|behind word strides|behind word supersets|behind word ten|closes different|closes out|closes pair|closes second|condition|corrects before not owned|corrects behind not owned|corrects main not owned|fields sets|fields sets holdSeconds|followed by comma|followed later|from start some|gap -1|in turns|in turns later rounds|interval alone, named around|named before 3|opens 10|opens 3|opens 6|opens 90|opens and|opens eight|opens for|opens forty|opens one|opens sixty|opens three|opens twelve|opens twenty|role work|rounds|run unknown|said for all behind|seated true|stretch true|sure behind owned|sure earlier not owned|to end 3|told|whole behind owned|whole earlier not owned',
      ],
      [
        -0.1,
        'alone behind|alone earlier rounds|alone later rounds|bare behind|before|before not owned|before word at|before word bench|before word chin|before word itll|before word now|before word off|before word okay|before word out|before word rest|before word sat|before word sitting|before word squats|before word walk|before word whoevers|before word write|behind word aparts|behind word at|behind word between|behind word blank|behind word circuit|behind word deal|behind word each|behind word fifteen|behind word finisher|behind word fives|behind word for|behind word forth|behind word get|behind word ground|behind word his|behind word hung|behind word laps|behind word other|behind word out|behind word planks|behind word presses|behind word really|behind word row|behind word rows|behind word stand|behind word tonight|behind word two|behind word yourself|closes 10|closes 4|closes again|closes fold|closes forty|closes round|closes seconds|closes three|closes total|closes turns|closes you|corrects return owned|fields sets reps distanceM restSeconds|fields sets reps workSeconds restSeconds|followed by level|followed by one for some|for part|from start 2|gap 3|in equipment|in fault|in range|in setup|in turns, names one alone|instead later|interval in turns later|later|later not owned|loose main|named behind some|nearest behind|no name|opens 25|opens bit|opens each|opens ten|opens thats|opens thirty|run true|said for all main|sided false|standing unknown|sure behind not owned|sure return not owned|sure return owned|to end 1|whole before not owned|whole return not owned|whole return owned',
      ],
      [
        -0.2,
        'ahead 20|alone behind rounds|alone, names one alone|alone, told of one alone|another nearer|before word as|before word for|before word make|before word next|before word one|before word put|before word step|before word work|before word written|before word your|behind word drills|behind word hips|behind word leg|behind word little|behind word many|behind word on|behind word ones|behind word remember|behind word say|behind word skipping|behind word stations|behind word steps|behind word theres|between|closes 12|closes done|closes everything|closes lap|closes laps|closes six|closes ten|closes these|closes through|closes ups|earlier|fields sets reps workSeconds|in turns main rounds|instead|interval alone before|interval alone behind|interval in turns before|loose|loose behind|main not owned|named before some|named behind 0|of a later round|opens 20|opens hold|opens id|opens once|opens set|opens twice|others named|past 15|per side|said for all earlier|sure main not owned|to end 2|to end some|whole main not owned',
      ],
      [
        -0.3,
        'ahead far|alone later|alone, names one of another group|at the start|bare|before word a|before word between|before word each|before word eight|before word hang|before word have|before word rows|before word to|behind word bench|behind word mat|behind word rowing|behind word stands|behind word supports|behind word was|closes rounds|closes those|earlier not owned|fields sets reps|followed near|gap -3|in caution|instead before|interval alone later|interval in turns earlier|named behind|only others named around|opens circuit|return owned|run false|said for all|seated false|standing true|weight false|whole main owned',
      ],
      [
        -0.4,
        'alone before|alone main rounds|bare later|before word here|before word in|before word then|before word this|behind word a|behind word about|behind word again|behind word go|behind word planned|behind word wrote|closes 8|closes each|closes rest|closes turn|closes two|in turns return rounds|in turns, told of another group|loose later|named behind far|opens 30|opens call|opens six|role teach|sided true|sure main owned',
      ],
      [
        -0.5,
        'alone earlier|bare earlier|before word bit|before word turn|before word us|behind word back|behind word fence|behind word jog|behind word said|behind word that|behind word to|closes altogether|closes do|closes times|corrects earlier not owned|fields sets workSeconds restSeconds|interval in turns, named around|loose earlier|opens 1|opens a|opens change|opens five',
      ],
      [
        -0.6,
        'ahead 60|alone before rounds|before word its|behind word both|behind word lifts|behind word outs|behind word sheet|behind word time|closes metres|fields sets distanceM|held in the sentence|in execution|in focus|instead earlier|opens fifteen',
      ],
      [-0.7, 'alone, told of another group|before word no|gap -2|gap behind|opens then|said before|to end 0|unsure'],
      [-0.8, 'alone return'],
      [-0.9, 'before word on|behind word thats|gap before|opens 8|past far'],
      [-1.0, 'in turns, names one of another group'],
    ],
    'from reps': [
      [0.9, 'gap 1|opens four'],
      [0.8, 'before word dont'],
      [0.7, 'fields reps restSeconds|for part|gap 2|opens make'],
      [0.6, 'behind word want|closes stroke|gap 0|only one'],
      [
        0.5,
        'before word 2|before word and|before word i|behind word of|behind word three|closes plenty|followed by comma|followed near|named around|named behind 3|opens do|opens threes|opens twice|to end far|words of the name, not named',
      ],
      [
        0.4,
        'alone main rounds|before word first|behind word bit|behind word down|behind word is|closes between|closes lengths|closes them|closes times|closes twice|followed by one for some|named in the sentence before|opens 5|past 5|sure main owned|to end 1|weight true|while the group is taught',
      ],
      [
        0.3,
        'before word round|behind not owned|behind word different|behind word out|behind word you|closes down|closes two|fields reps tempo|for all|from start some|gap 3|in turns return|in turns, told of one alone|instead before|just behind the group|opens each|opens rows|opens two|past 60|rounds|sure behind not owned|words of the name',
      ],
      [
        0.2,
        'a neighbour named|ahead 20|alone behind|alone earlier rounds|bare later|before owned|before word between|before word walk|behind|behind word back|behind word bent|behind word them|behind word things|behind word well|behind word youll|closes goes|closes up|closes walk|condition|first of more|followed by then|from start 2|from start 3|in focus|in turns|in turns earlier rounds|in turns later|in turns main|just before the group|longer sentence|opens 3|others in the sentence before|sure before owned|sure earlier not owned',
      ],
      [
        0.1,
        'ahead 6|ahead none|before word each|before word find|before word sit|before word take|behind word and|behind word do|behind word go|behind word have|behind word its|behind word little|behind word sides|behind word thats|closes all|closes circuit|closes lifts|closes off|closes those|corrects|corrects earlier not owned|corrects main owned|from start 1|gap -1|in harder|in setup|in turns behind|in turns behind rounds|in turns earlier|instead|main owned|named behind|nearest behind|opens circuit|opens couple|right behind the one before|role chat|seated unknown|sure return owned',
      ],
      [
        -0.1,
        'alone earlier|alone, told of another group|another nearer|at the start|bare return|before word a|before word at|before word feel|before word im|before word land|before word left|before word now|before word once|before word short|before word ten|before word than|before word thats|before word this|before word three|behind word are|behind word bounding|behind word for|behind word it|behind word on|behind word overhead|behind word pair|behind word remember|behind word row|behind word said|behind word see|behind word so|behind word squats|behind word still|behind word straight|behind word then|behind word two|closes 3|closes altogether|closes back|closes bench|closes benches|closes change|closes different|closes lines|closes lunges|closes press|closes stands|closes way|corrects before not owned|counted name|fields reps|fields reps workSeconds restSeconds|followed by up to|in equipment|in turns before rounds|instead earlier|later|later not owned|named before|named before another between|named behind 1|names a mate|no name|opens a|opens change|opens drills|opens ladder|opens sixes|opens thats|opens twos|opens well|others named|past 15|role teach|said before|sided false|sided true|stretch false|to end 2|to end some|unsure',
      ],
      [
        -0.2,
        'ahead 180|alone before|alone main|at later|bare earlier|bare main|before word after|before word because|before word its|before word no|before word of|before word tailbone|before word the|before word then|before word to|before word unless|before word with|behind word a|behind word in|behind word menu|behind word nose|behind word stations|behind word to|between|closes four|closes leg|closes ones|closes presses|closes side|closes ups|fields reps distanceM|fields reps holdSeconds|gap -2|held in the sentence|in turns before|named before far|of a later round|opens and|opens stay|said for all|said for all before|to end 3|told|weight false|will do',
      ],
      [
        -0.3,
        'alone later|alone return|alone, names one of another group|alone, told of one alone|bare|before|before word there|before word two|behind word ladder|behind word round|closes 5|closes five|common|fields reps workSeconds|from start far|in clauses|only others named around|role work|run false|sure later not owned',
      ],
      [
        -0.4,
        'ahead far|alone before rounds|before not owned|before word if|gap -3|in breathing|in tempo|last of more|opens 2|opens for|opens its|opens one|right behind another|sure before not owned',
      ],
      [-0.5, 'closes 6|closes breaths|in caution|opens five|past far|short sentence|taken back|to end 0'],
      [-0.7, 'gap before|gap behind'],
      [-0.8, 'opens six|per side'],
    ],
    ruled: [[-0.6, 'alone|told']],
    'as they come': [
      [1.2, 'another return'],
      [0.9, 'second main'],
      [0.8, 'third return'],
      [0.7, 'again main'],
      [0.4, 'told'],
      [0.3, 'third main'],
      [0.1, 'again return'],
      [-0.1, 'fourth main'],
      [-0.3, 'more main'],
      [-0.4, 'another main'],
      [-0.6, 'more return'],
      [-1.0, 'second return'],
      [-1.1, 'again behind'],
    ],
    returns: [
      [0.3, '2'],
      [-0.2, 'told'],
      [-0.5, '3'],
    ],
    minutes: [
      [0.2, 'alone main|followed near|from start far|gap 0|main|role work|to end far'],
      [0.1, 'longer sentence|told'],
      [
        -0.1,
        'ahead none|at later|bare before|bare main|before|before not owned|before word each|gap before|gap behind|loose before|loose main|main not owned|opens four|opens two|others named|per side|role chat|row before|row level|row main|row rising',
      ],
      [-0.2, 'bare|loose|row|row of 2'],
    ],
  },
  sides: {
    option: [
      [1.3, 'ruled'],
      [1.2, 'said main'],
      [1.1, 'side with'],
      [1.0, 'other side in it'],
      [0.8, 'sided true'],
      [0.7, 'alone|both told|other side beside|with amount'],
      [0.6, 'leg with'],
      [0.5, 'both told, sided|way with'],
      [0.4, 'leg'],
      [0.3, 'arm|arm with'],
      [0.2, 'apart|legs|said behind|said earlier|sides'],
      [-0.1, 'each|other side in it, sided'],
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
      [0.6, 'instead before|instead main|main owned|opens a'],
      [
        0.5,
        'a neighbour named|before word hug|before word i|closes nothing|corrects main owned|fields reps restSeconds|in turns before|in turns earlier rounds|in turns, told of one alone|rounds|short sentence|told of a mate|words of the name',
      ],
      [
        0.4,
        'alone later rounds|before word cleans|before word first|before word hang|behind word mat|behind word then|closes rest|closes through|fields reps workSeconds restSeconds|main|named in the sentence before|opens twice|opens twos|past 5|seated unknown|to end some|words of the name, not named',
      ],
      [
        0.3,
        'ahead 20|alone main|before word after|before word so|behind word supports|behind word that|behind word things|both neighbours named|closes walk|common|fields restSeconds|in turns|in turns behind|in turns main|in turns, names one alone|instead|interval alone, named around|sided unknown|sure earlier not owned|weight true',
      ],
      [
        0.2,
        'before word 5k|before word between|before word both|before word did|before word sit|before word us|behind word between|behind word ground|behind word pair|behind word press|behind word them|behind word there|closes both|closes do|closes seconds|counted name|from start 1|from start 3|in caution|in turns later rounds|interval alone later|interval alone main|named before|opens fifteen|opens make|opens so|opens twelve|opens two|seated false|whole before owned',
      ],
      [
        0.1,
        'alone later|another nearer|before word each|before word flat|before word in|before word my|before word operated|before word please|before word proper|before word round|before word sixteen|before word thats|before word with|behind word climbers|behind word deal|behind word do|behind word fifteen|behind word get|behind word here|behind word on|behind word out|behind word presses|behind word sit|behind word squat|behind word stops|behind word want|closes minute|closes sets|closes so|closes three|corrects main not owned|earlier owned|followed by comma|for all|in turns behind rounds|interval alone before|interval in turns earlier|interval in turns, named around|last of more|later|later not owned|named before another between|opens 4|opens and|opens bit|opens eight|opens forty|opens its|opens thirty|opens three|opens twenty|role end|sure later not owned|to end 3|whole before not owned',
      ],
      [
        -0.1,
        'ahead none|alone return rounds|alone, told of another group|before word and|before word cons|before word every|before word have|before word if|before word ignore|before word im|before word last|before word off|before word one|before word partner|before word ring|before word weights|before word when|behind|behind owned|behind word core|behind word curls|behind word dish|behind word floor|behind word hips|behind word its|behind word language|behind word neither|behind word one|behind word over|behind word really|behind word said|behind word steps|behind word thats|behind word time|behind word two|behind word weights|between|closes after|closes air|closes lap|closes laps|closes one|closes round|closes stations|closes times|fields sets distanceM restSeconds|fields sets holdSeconds restSeconds|fields sets reps restSeconds|fields sets workSeconds restSeconds|fields workSeconds restSeconds|in turns return rounds|in turns, names one of another group|opens 2|opens 20|opens 40|opens ninety|opens now|opens we|past 15|return not owned|return owned|role move|role teach|role work|said for all behind|said for all earlier|sure main not owned|told|whole main not owned|whole main owned',
      ],
      [
        -0.2,
        'ahead 180|alone return|alone, names one alone|before word for|before word ill|before word no|before word three|before word we|behind word go|behind word plank|behind word remember|behind word side|behind word smell|behind word swings|behind word tonight|behind word twists|behind word wood|closes each|closes from|closes lot|closes off|closes pair|closes sit|condition|corrects|corrects before not owned|corrects earlier not owned|corrects later not owned|earlier|earlier not owned|instead later|interval in turns before|no name|of a later round|opens 3|opens half|opens ten|opens then|per side|return|right behind the one before|said for all|sure before not owned|taken back|to end 2|whole later not owned|will do',
      ],
      [
        -0.3,
        'alone behind rounds|before|before word done|before word its|before word not|closes again|closes rounds|closes twice|first of more|held in the sentence|in focus|instead behind|instead earlier|interval alone earlier|interval in turns later|longer sentence|named behind|named behind far|nearest behind|opens 30|opens circuit|opens sixty|sided false|whole behind not owned',
      ],
      [
        -0.4,
        'ahead 60|alone behind|before not owned|before word of|behind word and|behind word eight|followed later|from start 2|opens for|opens hold|weight false',
      ],
      [
        -0.5,
        'before word step|before word the|before word then|behind word of|closes half|fields sets reps workSeconds restSeconds|followed by then|main not owned|only others named around|opens water|others named|to end 1',
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
      [1.1, 'ahead 6|opens half'],
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
        'a neighbour named|ahead 20|before word except|before word flat|before word knees|behind word rest|breath behind|change behind|closes everything|opens second|opens sixty|said for all|taken back|will do',
      ],
      [
        0.3,
        'alone before rounds|before word breathe|before word dont|before word im|before word put|before word while|behind owned|behind word 8|behind word down|behind word get|behind word the|from start 1|in turns earlier|in turns earlier rounds|in turns, told of one alone|loose before|of a later round|opens 20|opens 75|opens forty|said for all earlier|seated true|sit behind',
      ],
      [
        0.2,
        'bare behind|bare return|before owned|before word after|before word back|before word go|before word off|before word with|behind word holiday|behind word its|behind word out|behind word pair|behind word rounds|closes minute|closes seconds|closes times|followed later|from start far|held in the sentence|in turns later rounds|loose return|opens 15|opens 30|opens about|opens circuit|opens two|past 15|rest behind|return not owned|sure before owned|then again behind|to end 0|to end 2|whole before owned|whole later not owned|whole main owned',
      ],
      [
        0.1,
        'alone behind|another nearer|before word calves|before word once|before word rest|before word s|before word sat|before word shift|before word thats|before word there|behind word go|behind word got|behind word said|behind word stands|behind word twenty|fields sets reps workSeconds|in turns behind rounds|instead|loose behind|named before another between|named before far|off before|off behind|opens 45|opens 90|opens bench|rounds|sure behind owned|sure earlier not owned|whole behind not owned',
      ],
      [
        -0.1,
        'alone earlier rounds|bare before|before word a|before word as|before word down|before word fast|before word going|before word hips|before word i|before word in|before word it|before word its|before word ive|before word just|before word my|before word not|before word on|before word please|before word presses|before word push|before word scrape|before word stood|before word stop|before word ten|before word tidy|before word up|before word walk|before word when|before word will|behind word again|behind word armpits|behind word bet|behind word breaths|behind word brenda|behind word broom|behind word circles|behind word circuit|behind word clocks|behind word did|behind word do|behind word faster|behind word floor|behind word hammers|behind word holds|behind word jog|behind word kind|behind word leg|behind word like|behind word line|behind word lower|behind word morning|behind word nice|behind word ninety|behind word only|behind word planks|behind word rows|behind word says|behind word shame|behind word soft|behind word stand|behind word straight|behind word teeth|behind word thats|behind word to|behind word toothbrush|behind word waistband|behind word walk|behind word your|change before|closes breath|closes five|closes forty|closes go|closes hour|closes min|closes one|closes swap|closes thirty|closes those|closes twenty|closes two|condition|corrects earlier not owned|corrects later not owned|followed by or|for part|in caution|in clauses|in execution|in harder|in setup|in turns before rounds|in turns behind|instead earlier|later|loose|main|main owned|named before 3|opens 2|opens 25|opens 3|opens 6|opens 8|opens an|opens and|opens ninety|opens say|opens seven|opens six|opens twenty|opens well|past 5|role chat|role move|row counts|row counts level|row of 3|sided false|standing true|weight unknown',
      ],
      [
        -0.2,
        'alone behind rounds|alone main|bare|bare later|before word and|before word for|before word now|before word sit|before word this|before word you|behind word done|behind word had|behind word held|behind word it|behind word knee|behind word long|behind word next|behind word ones|behind word remember|behind word say|behind word so|behind word was|between|closes fifteen|closes goes|closes ten|corrects before not owned|corrects main owned|fields reps workSeconds|fields workSeconds tempo|followed by level|followed by up to|in turns, names one of another group|instead behind|last of more|loose later|named before some|named behind|nearest behind|opens 17|opens as|opens eight|opens fifty|opens thirteen|return owned|right behind the one before|row before|sided true|sure main owned|sure return owned|to end 1|to end 3|to end some|weight false',
      ],
      [
        -0.3,
        'at later|before word drink|before word gone|before word grow|before word has|before word if|before word planks|before word shake|behind not owned|behind word click|behind word doing|behind word records|behind word row|behind word sheet|behind word time|closes it|closes second|closes side|earlier|earlier not owned|fields workSeconds|followed near|from start 3|from start some|in easier|in turns before|longer sentence|loose earlier|opens 40|opens fifteen|opens nine|right behind another|role end|role teach|role work|row comma|row falling|row then|told',
      ],
      [
        -0.4,
        'ahead 180|alone before|alone return|at the start|before word is|before word no|before word swap|behind word round|behind word that|breath before|closes leg|closes twice|fields sets workSeconds|in turns, told of another group|instead later|later not owned|no name|opens 5|opens five|opens ten|opens twice|row level|short sentence|sure behind not owned|sure later not owned',
      ],
      [
        -0.5,
        'alone earlier|alone later|alone later rounds|alone, told of another group|bare earlier|before|before not owned|before word at|before word or|behind word in|behind word things|followed by comma|followed by one for some|opens one|row main|row of 2|row rising|seated false|sure before not owned|whole before not owned',
      ],
      [-0.6, 'alone, names one of another group|alone, told of one alone|before word left|in tempo|opens three|row'],
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
      [
        0.9,
        'circuit: range of workSeconds|interval: circuit in it|interval: rest with workSeconds|ladder: ladder in it|ladder: ruled ladder',
      ],
      [
        0.8,
        'circuit: in turns of workSeconds|circuit: turns of 4|emom: ruled emom|interval: of workSeconds|interval: rest with distanceM|ladder: range of holdSeconds',
      ],
      [
        0.7,
        'circuit: announced circuit, turns of 3|circuit: ruled none|circuit: turns of 3|interval: on off in it|superset: in turns of undefined|superset: of reps|superset: turns of 2',
      ],
      [
        0.6,
        'circuit: announced circuit|circuit: of undefined|circuit: of workSeconds|circuit: on off beside|circuit: ruled circuit|straight: rest with holdSeconds|straight: rest with reps|superset: in turns of reps|superset: ruled none',
      ],
      [
        0.5,
        'circuit: in turns of holdSeconds|circuit: rest with workSeconds|circuit: told as circuit|circuit: told as interval|straight: alone of holdSeconds|straight: alone of reps|straight: always|straight: announced superset, turns of 0|straight: of holdSeconds|straight: of reps|straight: ruled straight|straight: told as straight|straight: turns of 0|superset: ruled superset|superset: turns of 3',
      ],
      [
        0.4,
        'circuit: alone of undefined|circuit: always|circuit: announced circuit, turns of 4|circuit: announced superset, turns of 2|circuit: steady in it|interval: announced circuit, turns of 0|interval: ladder in it|ladder: circuit in it|ladder: steady in it|ladder: told as ladder|straight: alone of distanceM|straight: alone of workSeconds|straight: of distanceM|superset: announced superset|superset: announced superset, turns of 2|superset: of undefined',
      ],
      [
        0.3,
        'amrap: circuit in it|circuit: in turns of distanceM|circuit: in turns of undefined|interval: alone of undefined|interval: on off beside|interval: pair in it|ladder: steady beside|straight: announced circuit, turns of 2|straight: steady in it|superset: always|superset: announced circuit, turns of 2|superset: in turns of holdSeconds|superset: told as straight',
      ],
      [
        0.2,
        'amrap: ruled amrap|amrap: told as amrap|circuit: announced superset|circuit: in turns of reps|circuit: on off in it|circuit: range of reps|circuit: rest with holdSeconds|emom: announced circuit, turns of 0|ladder: alone of undefined|ladder: announced circuit, turns of 0|straight: alone of undefined|straight: on off in it|straight: range of holdSeconds|straight: ruled none|straight: steady beside|superset: in turns of distanceM|superset: steady beside',
      ],
      [
        0.1,
        'circuit: of holdSeconds|emom: ruled none|emom: steady beside|interval: of undefined|interval: told as interval|ladder: alone of holdSeconds|ladder: alone of workSeconds|straight: announced circuit, turns of 4|straight: pair beside|straight: ruled circuit|straight: told as circuit|superset: rest with workSeconds|superset: told as ladder',
      ],
      [
        -0.1,
        'amrap: announced circuit, turns of 2|amrap: announced circuit, turns of 3|amrap: announced circuit, turns of 4|amrap: in turns of distanceM|amrap: in turns of holdSeconds|amrap: in turns of undefined|amrap: in turns of workSeconds|amrap: minute in it|amrap: on off in it|amrap: range of holdSeconds|amrap: rest with reps|amrap: rest with workSeconds|amrap: ruled ladder|amrap: steady beside|amrap: steady in it|amrap: told as emom|amrap: told as interval|amrap: turns of 4|circuit: announced circuit, turns of 0|circuit: announced superset, turns of 0|circuit: of distanceM|circuit: ruled emom|circuit: told as ladder|emom: alone of reps|emom: announced circuit, turns of 2|emom: announced circuit, turns of 4|emom: as many as can|emom: by steps|emom: in turns of distanceM|emom: in turns of holdSeconds|emom: in turns of undefined|emom: in turns of workSeconds|emom: of holdSeconds|emom: on off beside|emom: range of reps|emom: rest with holdSeconds|emom: rest with workSeconds|emom: ruled interval|emom: told as interval|interval: announced circuit, turns of 2|interval: as many as can|interval: as many beside|interval: in turns of holdSeconds|interval: minute in it|interval: rest with reps|interval: ruled circuit|interval: ruled emom|interval: told as emom|interval: told as ladder|ladder: announced circuit, turns of 2|ladder: announced superset, turns of 0|ladder: as many as can|ladder: in turns of distanceM|ladder: in turns of holdSeconds|ladder: in turns of undefined|ladder: of workSeconds|ladder: rest with workSeconds|ladder: ruled circuit|ladder: ruled emom|ladder: ruled interval|ladder: told as emom|ladder: told as interval|straight: announced circuit, turns of 0|straight: announced superset|straight: as many in it|straight: circuit beside|straight: in turns of distanceM|straight: in turns of reps|straight: ladder in it|straight: of workSeconds|straight: on off beside|straight: ruled amrap|straight: ruled superset|straight: told as amrap|straight: turns of 2|superset: range of workSeconds|superset: ruled interval|superset: told as interval',
      ],
      [
        -0.2,
        'amrap: alone of reps|amrap: alone of workSeconds|amrap: announced circuit, turns of 0|amrap: announced superset, turns of 2|amrap: minute beside|amrap: on off beside|amrap: pair in it|amrap: turns of 3|circuit: announced circuit, turns of 2|circuit: as many as can|circuit: circuit in it|circuit: minute in it|circuit: rest with reps|circuit: ruled superset|circuit: told as emom|circuit: told as straight|emom: announced circuit, turns of 3|emom: announced superset|emom: announced superset, turns of 2|emom: as many beside|emom: as many in it|emom: pair in it|emom: ruled ladder|emom: ruled superset|emom: steady in it|emom: turns of 3|emom: turns of 4|interval: announced circuit|interval: announced circuit, turns of 3|interval: announced circuit, turns of 4|interval: announced superset, turns of 2|interval: circuit beside|interval: in turns of distanceM|interval: in turns of undefined|interval: minute beside|interval: range of holdSeconds|interval: rest with holdSeconds|interval: steady beside|interval: told as circuit|ladder: alone of reps|ladder: announced circuit, turns of 3|ladder: announced circuit, turns of 4|ladder: announced superset, turns of 2|ladder: in turns of workSeconds|ladder: minute in it|ladder: on off beside|ladder: range of workSeconds|ladder: rest with holdSeconds|ladder: rest with reps|ladder: turns of 0|ladder: turns of 4|straight: of undefined|straight: told as ladder|superset: announced circuit, turns of 3|superset: announced circuit, turns of 4|superset: of holdSeconds|superset: rest with holdSeconds|superset: ruled emom|superset: told as circuit',
      ],
      [
        -0.3,
        'amrap: alone of distanceM|amrap: alone of undefined|amrap: announced superset|amrap: by steps|amrap: of workSeconds|amrap: ruled none|amrap: ruled superset|circuit: as many beside|circuit: ladder beside|circuit: pair in it|circuit: ruled straight|emom: alone of distanceM|emom: alone of workSeconds|emom: announced circuit|emom: circuit beside|emom: ladder beside|emom: ladder in it|emom: of reps|emom: of workSeconds|emom: range of holdSeconds|emom: turns of 0|interval: announced superset|interval: by steps|interval: range of reps|interval: range of workSeconds|interval: ruled ladder|interval: ruled superset|interval: turns of 0|interval: turns of 3|interval: turns of 4|ladder: announced circuit|ladder: announced superset|ladder: as many beside|ladder: as many in it|ladder: circuit beside|ladder: ruled superset|ladder: turns of 3|straight: announced circuit, turns of 3|straight: circuit in it|straight: in turns of holdSeconds|superset: alone of reps|superset: announced circuit|superset: announced circuit, turns of 0|superset: announced superset, turns of 0|superset: as many beside|superset: circuit in it|superset: ladder beside|superset: on off in it|superset: range of reps|superset: rest with reps|superset: ruled circuit|superset: ruled straight|superset: told as emom',
      ],
      [
        -0.4,
        'amrap: alone of holdSeconds|amrap: announced circuit|amrap: ladder beside|amrap: ladder in it|amrap: of distanceM|amrap: of holdSeconds|amrap: of reps|amrap: pair beside|amrap: range of reps|amrap: ruled circuit|amrap: turns of 2|circuit: alone of distanceM|circuit: alone of holdSeconds|circuit: as many in it|circuit: ladder in it|circuit: ruled ladder|circuit: turns of 2|emom: alone of undefined|emom: always|emom: circuit in it|emom: of distanceM|emom: pair beside|emom: ruled circuit|emom: told as straight|interval: as many in it|interval: in turns of reps|interval: in turns of workSeconds|interval: ladder beside|interval: ruled straight|ladder: alone of distanceM|ladder: of distanceM|ladder: of reps|ladder: pair in it|straight: announced superset, turns of 2|straight: in turns of undefined|straight: ladder beside|straight: range of workSeconds|straight: told as interval|superset: alone of holdSeconds|superset: alone of undefined|superset: as many as can|superset: minute in it|superset: of distanceM',
      ],
      [
        -0.5,
        'amrap: in turns of reps|amrap: of undefined|amrap: ruled straight|amrap: told as straight|amrap: turns of 0|circuit: alone of reps|circuit: by steps|circuit: of reps|circuit: steady beside|emom: in turns of reps|emom: of undefined|emom: turns of 2|interval: alone of holdSeconds|interval: always|interval: told as straight|interval: turns of 2|ladder: always|ladder: in turns of reps|ladder: minute beside|ladder: ruled none|ladder: told as straight|ladder: turns of 2|straight: in turns of workSeconds|straight: ruled ladder|straight: turns of 4|superset: as many in it|superset: circuit beside|superset: in turns of workSeconds|superset: range of holdSeconds',
      ],
      [
        -0.6,
        'amrap: always|circuit: ruled interval|circuit: turns of 0|emom: ruled straight|interval: of holdSeconds|interval: pair beside|ladder: ruled straight|straight: pair in it|straight: ruled emom|straight: turns of 3|superset: alone of distanceM|superset: alone of workSeconds|superset: by steps|superset: ladder in it|superset: turns of 0|superset: turns of 4',
      ],
      [
        -0.7,
        'circuit: alone of workSeconds|interval: alone of reps|interval: of reps|interval: ruled none|ladder: on off in it|ladder: pair beside|straight: by steps|straight: minute beside|straight: range of reps|straight: rest with distanceM',
      ],
      [
        -0.8,
        'circuit: minute beside|straight: as many beside|superset: of workSeconds|superset: on off beside|superset: steady in it',
      ],
      [-0.9, 'straight: told as emom'],
      [-1.0, 'circuit: pair beside|superset: minute beside'],
      [-1.1, 'straight: rest with workSeconds'],
      [-1.3, 'straight: minute in it'],
      [-1.4, 'straight: as many as can'],
    ],
  },
}
