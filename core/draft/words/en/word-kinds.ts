/** Finer kinds of words than word-classes.ts, for guessing where a clause ends: a word takes the first kind that lists it. */

const words = (list: string): readonly string[] => list.trim().split(/\s+/)

export const WORD_KINDS = {
  /** Whom it is done to. */
  object: words(`
    me him her them us 'em em myself yourself yourselves himself herself itself themselves ourselves
  `),
  /** Something, or how much of it. */
  amount: words(`
    something anything nothing everything whatever stuff things thing lot lots bit bits plenty enough ones more
    less rest half mine yours hers ours theirs none much many most
  `),
  /** Belongs to the noun behind it. */
  article: words('the a an any each every both another no some all either neither'),
  /** Whose. */
  owner: words('your my our his their its'),
  pointer: words('this that these those'),
  of: words('of'),
  to: words('to'),
  /** Stands in front of a noun. */
  preposition: words(`
    in on at by for with from into onto under against about through toward towards without like than per near
    beside above below between across during inside outside behind around round over along past underneath
    beneath upon within despite till until
  `),
  /** Goes along with a verb: where to. */
  particle: words(`
    up down out off back away forward forwards backward backwards upright upwards downwards inwards outwards
    sideways apart together overhead aside ahead
  `),
  and: words('and'),
  or: words('or nor'),
  but: words('but'),
  then: words('then'),
  /** Opens a clause that hangs on another. */
  because: words(`
    if when while because as so unless once since where wherever which who whose whom whether whenever though
    although before after why how what
  `),
  /** Who does it. */
  subject: words(`
    i you we they he she it nobody everybody everyone anyone somebody someone anybody one there
  `),
  /** A subject grown together with its verb. */
  contraction: words(`
    i'm i'll i'd i've you're you'll you'd you've we're we'll we'd we've they're they'll they've it's it'll
    that's that'll there's here's he's she's he'll what's who's where's how's let's im ill id ive youre youll
    youd youve theyre thats theres heres lets nobody's everybody's somebody's everyone's
  `),
  be: words(`is are was were be been being am isn't aren't wasn't weren't`),
  have: words(`has have had haven't hasn't hadn't having`),
  do: words(`do does did done doing doesn't didn't`),
  /** May, must, will. */
  modal: words(`
    will would can could should might may must shall won't wouldn't can't cannot couldn't shouldn't mustn't
  `),
  /** Stands in front of what is wanted. */
  want: words('need want wants needs wanted going gonna love try trying used allowed able'),
  /** Tells not to. */
  never: words(`don't dont never not avoid stop`),
  /** Says nothing of its own. */
  hello: words(`
    okay ok right alright hello hi hey welcome morning evening afternoon folks guys yes yeah yep yup nope oh um
    uh er erm ah ay aye ta cheers thanks thank bye please sorry anyway well now listen look see
  `),
  praise: words(`
    good great lovely nice brilliant perfect excellent beautiful amazing cool super fantastic gorgeous smashing
    wonderful awesome proper fab champion ace spot
  `),
  order: words('next first second third fourth fifth last lastly finally final'),
  /** How, when, how surely. */
  adverb: words(`
    slowly gently quickly easily again here just only really very too still even nearly almost maybe always
    straight instead otherwise perhaps probably actually usually also already ever yet soon later today tonight
    tomorrow yesterday twice sometimes anywhere somewhere everywhere nowhere afterwards straightaway honestly
    obviously basically properly carefully softly lightly slightly quietly deeply fully evenly steadily smoothly
  `),
  /** Of what kind. */
  adjective: words(`
    slow quick fast hard easy little flat tall long wide soft heavy light high low same other front side top
    left opposite big small whole dead middle fine sore tight full sharp warm steady deep short tucked loose wet
    narrow broad quiet calm bent level square stiff strong weak bad new old cold hot dry free proud happy sad
    tired dizzy sick sure ready lazy real normal single double upper lower inner outer operated supporting
    standing working floating bottom neutral natural empty gentle brisk smooth static hollow relaxed comfortable
    comfy careful brave tiny huge thin thick blue red green yellow black purple orange white pink funny silly
    daft clever tough tidy clear clean parallel vertical horizontal diagonal crossed alternate dull early late
    live locked long-arm shut open closed nasty rude
  `),
  /** More so than before. */
  compared: words(`
    harder lighter heavier higher longer shorter wider narrower slower faster quicker easier bigger smaller
    taller deeper further farther closer nearer better worse stronger softer gentler steadier straighter earlier
    thicker thinner
  `),
  number: words(`
    two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen
    eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand couple few dozen
  `),
  /** What is counted or measured. */
  unit: words(`
    seconds secs minute minutes min mins hour hours rep reps repetitions repetition set sets rounds time times
    breath breaths stroke strokes cycle cycles metre metres meter meters length lengths lap laps percent degrees
    kilo kilos pounds stone goes trips inch inches centimetres centimetre mile miles yards week weeks day days
    year years month months
  `),
  day: words(`
    monday tuesday wednesday thursday friday saturday sunday night weekend christmas summer winter moment
    o'clock
  `),
  part: words(`
    head heads neck necks chin chins eyes eye face jaw ears ear nose mouth lips teeth tongue hair cheeks
    shoulder shoulders blade blades arm arms elbow elbows forearm forearms wrist wrists hand hands palm palms
    finger fingers thumb thumbs fist fists knuckles fingertips chest breastbone collarbone collarbones rib ribs
    belly tummy stomach bellybutton waist core spine tailbone pelvis hip hips bum bottoms butt backside glute
    glutes thigh thighs hamstring hamstrings quad quads groin leg legs knee knees kneecap kneecaps shin shins
    calf calves ankle ankles feet foot heel heels toe toes sole soles body trunk torso weight gaze armpit
    armpits lungs heart muscle muscles bone bones joint joints skin lats abs obliques biceps triceps achilles
  `),
  /** Kit and what stands in the room. */
  kit: words(`
    bell bells kettlebell kettlebells dumbbell dumbbells weights bar bars barbell barbells plate plates band
    bands loop loops ring rings strap straps handle handles rope ropes chair chairs seat bench box step steps
    stair stairs wall door mat mats floor ground cushion pillow bolster blanket block blocks brick towel belt
    ball balls rower machine rack stick sticks cone cones line lines rail pole broomstick book books bottle shoe
    shoes laces sock socks clock timer watch ladder kerb curb track grass hill ceiling room window hall table
    sofa bed gate anchor sheet bag
  `),
  person: words(`
    mum mother dad daughter son wife husband sister brother mate friend neighbour physio doctor midwife surgeon
    nurse coach teacher man woman lady lad lads girl girls kids kid baby dog cat people granny nan grandad uncle
    aunt partner boss fella chap beginners runners
  `),
  /** Other things that are talked of. */
  noun: words(`
    way edge end part point place space height width shape position sides pair stretch squeeze hold pull push
    press work exercise movement move moves drill drills circuit class song music phone film camera water break
    trouble problem pain ache burn pinch cramp pressure balance effort power strength speed pace rhythm control
    count number numbers version option test job home house garden shed kitchen car bus train van pub tea coffee
    cake dinner lunch biscuit bridge tree bird world life name word question story sort kind idea tension
    distance direction corner centre gap spring hinge wave circle plank squat squats row rows lunge lunges
    deadlift deadlifts curl curls raise raises
  `),
  /** Verbs as told to a class. */
  verb: words(`
    lift bend straighten reach return rotate turn twist drop drive swing slide roll close extend tuck tilt draw
    bring send kick tap float jump hop land hug peel sink fold tip lean shift flex walk march run snap zip punch
    hike rise catch spread shrug thread rock sweep pause keep stay stand sit lie kneel lay start begin put grab
    take get come find wrap hook breathe inhale exhale feel think let make use go give remember imagine leave
    hang say tell skip shove fall shake blow touch carry relax melt soften lock unlock grip dip pop slip skim
    hover climb crawl shuffle skate jog sprint bounce pick change swap switch finish repeat add notice check
    know help hear ask call forget bear mind wait meet show wiggle wobble ease stack cross crush crack screw
    plant root lengthen shorten widen tighten loosen split brace bracket drink sip throw cut aim reset settle
    support follow drag haul yank scoop nod glance peek poke quit
  `),
  /** Verbs as told of somebody or something. */
  does: words(`
    comes stays gets makes takes keeps starts stops works feels looks says lifts drops sinks rises turns points
    faces travels hurts means wins lands hangs bends opens closes tips caves sags tells counts helps gives leads
    hits meets touches leaves hovers swings
  `),
  /** Verbs of what was. */
  did: words(`
    got said went came made told gone saw seen took taken knew thought lost heard felt gave asked called stood
    sat ran fell broke bought brought started stopped tried looked worked promised forgot forgotten dropped kept
    met
  `),
} as const satisfies Record<string, readonly string[]>
