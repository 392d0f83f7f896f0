/**
 * Numbers in coaching talk that are no dose, by the words around them. Every amount inside a match is set aside
 * (or the one kept as `no` alone); with `clause` those up to the end of the clause as well. Patterns: see match-pattern.ts.
 */
export interface NoDose {
  why: string
  says: string
  clause?: true
}

export const NO_DOSES: readonly NoDose[] = [
  // counting and calling time
  { why: 'counting aloud', says: '~sets|ladder|pyramid|tempo C !reps|ladder|pyramid' },
  {
    why: 'how to breathe',
    says: '{no:N} breaths for|per|a|each|every each|every? shape|strokes|reps|movement|movements|position|squat|lift',
  },
  { why: 'a kind of grip or stance', says: 'N handed|legged|armed|footed|sided' },
  { why: 'time call', says: 'N|T|D more $' },
  { why: 'time call', says: 'N|T|D more of|for|to|before|like|times|now|seconds|reps|breaths|things|minutes' },
  { why: 'time call', says: 'another T|N|D' },
  { why: 'on top of the dose', says: 'N|T|D extra|additional' },
  { why: 'time call', says: 'N|T|D left|remaining|gone $' },
  { why: 'time call', says: 'N|T|D minutes? to go' },
  { why: 'time call', says: 'N|T|D to come|finish $' },
  { why: 'time call', says: 'N|T|D of these|those|them? to_go|left' },
  { why: 'time call', says: 'N|T|D down ,? {no:N|T|D} to go' },
  { why: 'time call', says: 'T|D to_go|left|remaining|gone|already' },
  { why: 'time call', says: 'last|final|first N|T|D' },
  { why: 'time call', says: 'next T' },
  { why: 'time call', says: 'halfway|nearly|almost|only N|T to_go|left|in' },
  { why: 'time call', says: 'thats N|T $' },
  { why: 'time for something else', says: 'T to find|get|grab|set|put|sort|fetch|breathe|think|yourself' },
  { why: 'past', says: 'i|he|she|they|people could|can .. N|T|D', clause: true },
  { why: 'age', says: 'when .. was|were N' },
  { why: 'counting aloud', says: 'count to|from|down|backwards .. N' },
  // the class's clock
  { why: 'class clock', says: 'have|has|got|ive|weve|youve .. T .. left|today|together|before|until|tonight' },
  {
    why: 'class clock',
    says: 'have_got|weve_got|ive_got|youve_got|we_have|i_have|only_have .. T !on|at|each|per|of|off',
  },
  { why: 'class clock', says: 'takes|took|lasts|takes_you|take_us|take_you|lasting .. T' },
  { why: 'class clock', says: 'class|session|workout|video|routine|programme|practice|lesson ... T', clause: true },
  {
    why: 'class clock',
    says: '{no:T} class|session|workout|video|routine|programme|program|practice|lesson|film|slot',
  },
  { why: 'class clock', says: 'whole|entire|all thing|things|lot|class|of_it .. T' },
  {
    why: 'parts of one run',
    says: 'build|build_up|accelerate for|over|to N|T|D ,? hold|relax|float|keep .. for? N|T|D',
  },
  { why: 'parts of one run', says: 'build|build_up|accelerate .. first|last N|T|D' },
  { why: 'class clock', says: 'T all_told|of_your_life|of_my_life' },
  { why: 'time for something else', says: 'T ,|. thats ... water|drink|drinks', clause: true },
  { why: 'class clock', says: 'T in|into $' },
  { why: 'class clock', says: 'T in you|we|the|this|and' },
  { why: 'soon', says: 'see|back|meet|start|starts|begin|ready|arrive|again .. in|at|within T' },
  { why: 'soon', says: '^ in T' },
  { why: 'soon', says: 'wait|hang_on|hold_on|bear_with_me|give_me|give_us for? T' },
  { why: 'soon', says: 'in T .. we|well|ill|i|you|youll|lie|sit|stand' },
  // clock, calendar, age, money
  { why: 'past time', says: 'T|N ago|earlier|later' },
  { why: 'clock time', says: 'N o_clock|oclock|am|pm' },
  { why: 'clock time', says: 'half|quarter|ten|five past|to N' },
  { why: 'clock time', says: 'at|until T N? $' },
  { why: 'clock time', says: 'at|by|until N N' },
  { why: 'year', says: 'in|since|year N N' },
  { why: 'years', says: 'N years|year|months|month|decades|yearolds' },
  { why: 'weeks', says: 'N full|whole? weeks|week' },
  { why: 'days', says: 'N days after|before|ago|post|old|later|off|rest' },
  { why: 'age', says: 'over|aged|turned|past|approaching the|age|of? N $' },
  { why: 'age', says: 'is|am|im|shes|hes|youre N and|,|years' },
  { why: 'age', says: 'if .. over|under|past|above N' },
  { why: 'money', says: '{no:N} quid|dollars|euros|pence|bucks' },
  { why: 'money', says: 'costs|cost|paid|pay|price ... N', clause: true },
  // measures that are not work
  { why: 'angle or temperature', says: 'N degrees|degree|°' },
  { why: 'name of a position', says: 'N N .. position|shape|stretch|sit|seat' },
  { why: 'name of a position', says: 'the|a|into N N $' },
  { why: 'name of a position', says: 'N / N position|stretch|shape|sit' },
  { why: 'spacing', says: 'N inches|inch|centimetres|centimetre|centimeters|centimeter|cm|mm|millimetres|millimeters' },
  { why: 'spacing', says: 'N feet|foot .. apart|wide|away|back|forward|forwards|out|tall|high|off|behind|in|from' },
  { why: 'spacing', says: 'back|forward|out|apart|away|sideways N feet|foot' },
  { why: 'spacing', says: 'D .. apart|away|ahead|behind|above|below|high|deep|tall|wide|off|from' },
  { why: 'body height', says: 'N foot N' },
  { why: 'heart rate', says: 'heart|hearts|pulse|bpm|beats ... N', clause: true },
  { why: 'beats', says: 'T of the? music|song|track' },
  { why: 'other people', says: 'i do|run|hold|lift|row .. N|T|D' },
  { why: 'beats', says: 'N .. beats|bpm|beat' },
  { why: 'music or machine', says: 'split|drag|music|showing|shows|screen ... N|T', clause: true },
  { why: 'body weight or kit', says: 'weighs|weigh|weighing ... N', clause: true },
  { why: 'share', says: 'N % of the|people|you|us|class|them|women|men|clients|what' },
  { why: 'share', says: 'N % of your|their|my .. speed|pace|power|weight|bodyweight|heart|energy' },
  { why: 'share', says: 'N times out of N' },
  { why: 'comparison', says: 'N times as|more|less|slower|faster|harder|bigger|heavier' },
  { why: 'rate', says: 'N breaths a|per|every|each stroke|strokes|reps' },
  // labels and things
  {
    why: 'label',
    says: 'number|step|level|stage|week|day|chapter|part|exercise|station|drill|move|page|room|version|option|rule|lesson|class|module|season|phase|section|point|grade|episode|question|channel|bus|floor N !reps|sets|times|x|rounds|breaths',
  },
  {
    why: 'things',
    says: 'N .. things|thing|points|point|fingers|finger|toes|mistakes|parts|options|levels|versions|variations|types|kinds|reasons|corners|books|blocks|cushions|mats|bands|chairs|dumbbells|bells|kettlebells|plates|cues|rules|ideas|muscles|joints|bones|ribs|phases|classes|sessions|positions|shapes|questions|choices|ways|modifications|topics|videos|pillows|towels|holes|notches|weeks|people|persons|women|men|clients|students|members|participants|friends|kids|folk',
  },
  { why: 'people', says: 'N of you|us|you' },
  { why: 'kit', says: 'pick_up|grab|hold|take|use|choose|find|lift a|the|your|an pair? of? N kg|lb' },
  // past, other people, best marks
  {
    why: 'past',
    says: 'last week|time|month|year|night|class|session|monday|tuesday|wednesday|thursday|friday|saturday|sunday ... N|T|D|P',
    clause: true,
  },
  { why: 'past', says: 'yesterday|earlier|previously ... N|T|D', clause: true },
  { why: 'past', says: 'N|T ... last time|week|month|year|night|class' },
  { why: 'past', says: 'N|T ... yesterday' },
  { why: 'past', says: 'used to ... N|T|D', clause: true },
  {
    why: 'past',
    says: 'i|we|he|she|they|you|somebody|someone|everybody|everyone did|managed|had|got|filmed|taught|started|rowed|ran|rode|swam|walked|cycled|climbed|jumped|lifted|held|carried|asked|lied|trained|went|finished|completed|used|took|made|spent|counted .. N|T|D',
    clause: true,
  },
  { why: 'past', says: 'ive|weve|youve|have been|taught|done|had|seen|coached|trained ... N|T|D', clause: true },
  { why: 'best or record', says: 'best|record ... N|T|D', clause: true },
  {
    why: 'other people',
    says: '~as some|most|many|other|of_people|folk|folks|coaches|teachers|trainers|classes|gyms|instructors|athletes ... N|T|D',
    clause: true,
  },
  {
    why: 'other people',
    says: 'people|somebody|someone|he|she|who|athletes|pros do|does|did|get|gets|manage|manages|hold|holds|run|runs|lift|lifts|say|says|will|can|go|goes .. N|T|D',
    clause: true,
  },
  {
    why: 'other people',
    says: 'my|a|his|her .. gran|grandma|mum|mom|dad|friend|client|daughter|son|sister|brother|coach|husband|wife|neighbour ... N|T|D',
    clause: true,
  },
  {
    why: 'other people',
    says: 'he|she|they|who|somebody|everybody swims|runs|rows|lifts|presses|benches|squats|walks|cycles|deadlifts|pulls|carries|teaches ... N|T|D',
    clause: true,
  },
  { why: 'study', says: 'study|trial|research|survey|paper|studies|scientists ... N|T', clause: true },
  // not asked for
  { why: 'limit of ability', says: 'can|could only|just .. N|T' },
  { why: 'limit of ability', says: 'cant|cannot|couldnt|unable .. N|T' },
  { why: 'limit of ability', says: 'can|could not .. N|T' },
  {
    why: 'negated',
    says: 'not|dont|never|wont|didnt|shouldnt|neednt|doesnt|isnt|avoid do|doing|hold|holding|go|going|stay|try|need|take|use|make|have|want|be|about|ever|worry|push <notMuch>? <notMuch>? <notMuch>? {no:N|T|D|P}',
    clause: true,
  },
  { why: 'negated', says: 'never|nobody ... N|T', clause: true },
  { why: 'contrast', says: ', not {no:N|T|D}' },
  { why: 'contrast', says: 'N|T|D not {no:N|T|D}' },
  { why: 'contrast', says: '^ not {no:N|T|D} ,|but' },
  { why: 'contrast', says: 'instead_of|rather_than the|your? usual? {no:N|T|D}' },
]
