/** Groups of words that the phrase lists of the draft name in angle brackets: `<part>`, `<kit>`, `<ill>`. */
import { remember } from '../../../remember.ts'

export const WORD_GROUPS = {
  /** Parts of the body. */
  part: 'heads?|necks?|chins?|eyes|face|jaw|ears?|shoulders?|shoulder blades?|arms?|elbows?|forearms?|wrists?|hands?|palms?|fingers?|fingertips|thumbs?|fists?|knuckles|chest|breastbone|ribs?|rib cage|belly|belly button|tummy|stomach|waist|core|back|low back|lower back|upper back|spine|tailbone|pelvis|hips?|hip bones?|sit bones|bum|bottom|seat|buttocks?|glutes?|thighs?|hamstrings?|quads?|legs?|knees?|kneecaps?|shins?|calf|calves|ankles?|feet|foot|heels?|toes|big toes|soles?|balls? of|body|trunk|torso|weight|gaze',
  /** Things that are held, stood on or lain on. */
  kit: 'bells?|kettlebells?|dumbbells?|weights?|bars?|barbells?|plates?|bands?|loops?|rings?|straps?|handles?|ropes?|chairs?|seats?|bench|box|steps?|stairs?|wall|door|mat|cushions?|pillows?|bolsters?|blankets?|blocks?|bricks?|books?|towels?|belt|scarf|balls?|rower|machine|pin|rack|anchor|stick|poles?|cones?|sliders?|footplate|cable',
  /** Where a part goes. */
  place:
    'under|over|on|onto|by|beside|behind|between|against|around|round|across|apart|together|wide|wider|width|forward|back|out|in|down|up|close|closer|near|flat|bent|straight|soft|long|tucked|stacked|square|level|crossed|inside|outside|through|above|below|towards?|parallel|upright|touching|facing',
  /** Verbs of the movement itself, as told to a class. */
  move: 'lift|lower|push|pull|press|bend|straighten|curl|uncurl|reach|return|squeeze|rotate|turn|twist|raise|drop|drive|swing|slide|roll|open|close|extend|hinge|tuck|tilt|draw|bring|send|kick|tap|float|jump|hop|land|hug|peel|sink|fold|tip|lean|shift|pedal|flex|circle|row|squat|lunge|stand up|sit down|sit back|come up|come back|come down|come tall|come forward|go up|go down|walk|march|run|snap|zip|punch|hike|rise|catch|spread|shrug|thread|wring|rock|sweep|push off|let it|let the|let your|swap legs|swap hands|change legs|change hands|pass|scoop|unroll|lengthen|soften|wrap your|rotate|swivel|pivot|stomp|step|drag|pump|nod|look up|look left|look right|hands away|hands down|feet in|chest to|knee to|squash|crush|grow|melt|release|let go|make|imagine you are pulling|start the|switch|flick|dip|stick it|stick the|set it down|put it back|put it down|park it|break|spin|cross|uncross|pulse|alternate|travel|go one|do the|push through|pull through|load|unlock|brace|engage|tighten|press into|dig|screw|grip|lead|keep|hold it|hold there|stay|pause and|scissor|shuffle|kiss|touch',
  /** Verbs of taking up the start. */
  take: 'stand|sit|lie|kneel|lay|start|begin|set|set up|place|put|grab|take hold|hold|pick up|get|come onto|come on to|come down onto|come down on|come to the|get down|get onto|find|face|wrap|loop|hook|anchor|rest|line up|position|sit on|lie on|stand on|stand with|sit tall|sit up|stand tall|feet|step into|step onto|turn to face|walk your|tuck your toes|straddle|roll onto|turn onto|shuffle to|scoot|load up|clip|adjust',
  /** Illness, complaint, sensation that means harm. */
  ill: 'pains?|painful|hurts?|hurting|sore|soreness|ache|aches|aching|achy|pinch|pinches|pinching|nip|nips|twinge|niggle|niggles|grumbly|grumpy|cranky|dodgy|bad|injur\\w*|strain\\w*|dizzy|dizziness|giddy|faint|light ?headed|sick|breathless|short of breath|numb|numbness|tingl\\w*|pins and needles|chest tightness|tight chest|palpitations|blood pressure|heart (?:condition|trouble|problem)s?|glaucoma|osteoporosis|osteopenia|brittle bones|thin bones|arthritis|arthritic|hernia|slipped disc|disc|sciatica|vertigo|pregnan\\w*|bump|prolapse|leak\\w*|bleed\\w*|surgery|operation|replacement|replaced|stroke|diabet\\w*|asthma|epilep\\w*|migraine|headache|doming|dome|ridge|coning|clicks|clicking|grinds?|grinding|gives way|swollen|swelling|wobbly on your feet|unsteady|trouble',
  /** People who are asked first. */
  carer: 'doctor|gp|nurse|midwife|physio|physiotherapist|consultant|surgeon|health visitor|specialist',
  /** Numbers in words or figures. */
  num: '\\d+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|half|a couple|a few|a dozen',
} as const

export type WordGroup = keyof typeof WORD_GROUPS

/** A list of phrases as one test on plain words. `<part>` stands for a group; `^` for the start of the clause. */
export function anyPhrase(phrases: readonly string[]): RegExp {
  const sources = phrases.map((phrase) =>
    phrase.trim().replace(/<(\w+)>/g, (whole, name: string) => {
      const group = Object.entries(WORD_GROUPS).find(([key]) => key === name)
      if (!group) throw new RangeError(`No word group is called ${whole}.`)
      return `(?:${group[1]})`
    }),
  )
  const anchored = sources.filter((source) => source.startsWith('^')).map((source) => source.slice(1))
  const free = sources.filter((source) => !source.startsWith('^'))
  const parts = [
    ...(anchored.length > 0 ? [`^(?:${anchored.join('|')})(?![a-z0-9])`] : []),
    ...(free.length > 0 ? [`(?<![a-z0-9])(?:${free.join('|')})(?![a-z0-9])`] : []),
  ]
  return new RegExp(parts.length > 0 ? parts.join('|') : '(?!)')
}

const GROUP_TESTS = Object.entries(WORD_GROUPS).map(([name, source]) => ({
  name: name as WordGroup,
  test: new RegExp(`^(?:${source})$`),
}))

/** The first group that a word belongs to, or null. */
export const groupOf = remember(
  5000,
  (word): WordGroup | null => GROUP_TESTS.find(({ test }) => test.test(word))?.name ?? null,
)
