/** Words by which the parts of a class tell themselves apart. */
import { DOSE_ONLY, EMPTY_CLAUSES, PRAISE } from './not-cue-words.ts'
import { anyPhrase } from './word-groups.ts'

/** The set or the exercise is over. */
export const ENDINGS = [
  '^(?:and |okay |ok |right |lovely |good |great |nice )*(?:rest|off|stop|done|relax|finish|finished|release|walk|down)(?: it out| around| now| there| everyone| everybody| please| and relax| and rest| good| lovely| nice| well done| walk| for me| put it down| put them down| shake it out| come up| sit down| have a rest| have a drink)*$',
  '^(?:and |okay |ok |right |lovely |good |great |nice )*(?:park it|let that go|have a rest|shake it out|shake (?:it|them|the \\w+|your \\w+) out|thats it|come out|put (?:it|them|the \\w+) down|weights down|bells? down|pop (?:it|them|the \\w+) down|have a (?:drink|breather)|take a (?:breather|breath|moment|drink)|get a drink|grab (?:a|some) (?:drink|water)|drinks down|walk around)',
  '^(?:and |okay |ok |right |lovely |good |great |nice |then )*(?:both |all |your |the )*(?:feet|foot|legs?|arms?|hands?|heels?|knees?|hips|elbows|shoulders|head) (?:is |are |comes? |come |back )*(?:down|back down|to the floor|flat|together)$',
  '^(?:and |okay |ok |right |lovely |good |great |nice |then |come |step |bring it |bring them )*(?:back )?(?:to|into) (?:the )?(?:middle|centre|center|start|starting position|standing)$',
  '(?:two|three|one) (?:and )?rest$|and rest$|have a rest$',
  '^rest(?: now| there| here| for| a| about|$)',
  'thats (?:a|the|your) (?:round|set|circuit|last|one|warm up)|that is (?:a|the) (?:round|set)|last one of|all done|well done everyone',
]

/** Going on to the next exercise, or to another place or position. */
export const MOVES = [
  '^(?:and |okay |right |so )*(?:one (?:more|last|other) (?:thing|one|exercise)|one thing before|last thing|finally|to finish|before you go)',
  '^(?:and |so |okay |ok |right |now |then |lovely |good |great |well |lets )*(?:next|next up|moving on|move on|on to|lets move|last (?:one|station|exercise)|station|exercise|drill|number|time for|from here|from there|from all fours)',
  '^(?:and |so |okay |ok |right |now |then |lovely |good |great |well |from here |come |all the way |lets |everybody |everyone )*(?:come|go|get|roll|turn|move|lie|rise|up|down|onto|back|over|stand|sit|kneel)? ?(?:down |over |up |back |forward )?(?:on|onto|on to|to|into)? ?(?:your|the|all)? ?(?:back|front|belly|tummy|side|fours|all fours|hands and knees|knees|floor|standing|sitting|feet|chairs?)(?: now| please| again| slowly| then| for this)?$',
  '(?:were|we are|lets) (?:going to|gonna) (?:do|go|move)|now the (?:pair|second|next)|coming up (?:next|now)',
]

const WORK = anyPhrase([...EMPTY_CLAUSES, ...DOSE_ONLY, '^(?:and )?go(?: again)?$', '^(?:go|and go) '])
const CHEER = anyPhrase(PRAISE)
const END = anyPhrase(ENDINGS)
const MOVE = anyPhrase(MOVES)

/** The role that the words alone decide, or null. */
export function plainRole(words: string): 'work' | 'end' | 'move' | null {
  if (END.test(words) && words.split(' ').length <= 8) return 'end'
  if (MOVE.test(words)) return 'move'
  if (/^(?:and |so )*(?:thank you|thanks)\b/.test(words)) return null
  if (WORK.test(words)) return 'work'
  return CHEER.test(words) && words.split(' ').length <= 8 ? 'work' : null
}
