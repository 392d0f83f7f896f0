/** Tags the cues in something said: clause by clause, in exact words, leaving out counting, praise, purpose and chat. */
import { CUE_KINDS } from '../../shared/log-sheet.ts'
import type { CueKind } from '../../shared/log-sheet.ts'
import { restoreBreaks } from './restore-breaks.ts'
import { isUnpunctuated, plainWords, splitClauses, splitSentences } from './split-speech.ts'
import type { Piece } from './split-speech.ts'
import { CUE_WORDS } from './words/en/cue-words.ts'
import { CHAT, DOSE_ONLY, EMPTY_CLAUSES, PRAISE, PURPOSE, RETRACTED, TRANSITIONS } from './words/en/not-cue-words.ts'
import { anyPhrase } from './words/en/word-groups.ts'

/** One cue: its kind, exact words, where they start in the text, and how plain it was (0-1). */
export interface TaggedCue {
  kind: CueKind
  text: string
  offset: number
  confidence: number
}

/** What is known around the text. */
export interface CueContext {
  /** True before the movement of an exercise has been told: positions are then set-up rather than form. */
  early?: boolean
  /** True when the text is known to be one sentence: no breaks are looked for where punctuation is missing. */
  oneSentence?: boolean
}

/** The cues of a text in the order said. One stretch of words may carry two kinds. */
export function tagCues(text: string, context: CueContext = {}): TaggedCue[] {
  const said = context.oneSentence !== true && isUnpunctuated(text) ? restoreBreaks(text) : text
  return splitSentences(said).flatMap((sentence) => tagSentence(said, sentence, context))
}

/** Points for a phrase of each strength; a kind counts from `ENOUGH` on. */
const SURE = 4
const LIKELY = 2
const HINT = 1
const ENOUGH = 2

/** Where two kinds are equally plain, the earlier one wins. */
const FIRST_WINS: readonly CueKind[] = [
  'caution',
  'harder',
  'easier',
  'breathing',
  'fault',
  'tempo',
  'range',
  'setup',
  'equipment',
  'focus',
  'execution',
]

/** Kinds that may share one stretch of words. */
const PAIRS: readonly (readonly [CueKind, CueKind])[] = [
  ['caution', 'easier'],
  ['caution', 'fault'],
  ['breathing', 'execution'],
  ['easier', 'equipment'],
  ['harder', 'equipment'],
]

const TESTS = CUE_KINDS.map((kind) => ({
  kind,
  sure: anyPhrase(CUE_WORDS[kind].sure),
  likely: anyPhrase(CUE_WORDS[kind].likely),
  hint: anyPhrase(CUE_WORDS[kind].hint),
}))
const EMPTY = anyPhrase(EMPTY_CLAUSES)
const PRAISED = anyPhrase(PRAISE)
const REASON = anyPhrase(PURPOSE)
const TALK = anyPhrase(CHAT)
const TAKEN_BACK = anyPhrase(RETRACTED)
const DOSE = anyPhrase(DOSE_ONLY)
const GOING_ON = anyPhrase(TRANSITIONS)
const CONDITION = anyPhrase([
  '^(?:and |so |but |now |or )*(?:if|anyone|anybody|those of you|any|when youre|once|had|got|people with|new mums|no <kit>|want|wants|fancy|need|ready for|after the first|after about)',
  '^(?:and |so |but |now |or )*for (?:a|an|the) (?:\\w+ )?(?:easier|harder|gentler|lighter|kinder|softer|simpler|tougher|stronger|bigger)',
  '^(?:<part>|back|knee|shoulder|wrist|hip|neck) (?:trouble|problems?|issues?|sore|hurting|going)',
  '^(?:<ill>)',
  '(?:if|when) (?:you|youre|youve|its|it|thats|that|this|your|the|needed|need|not)',
])

type Scores = Map<CueKind, number>

interface Verdict extends Piece {
  kinds: CueKind[]
  score: number
  /** A clause that says nothing of its own and may go along with the one before. */
  loose: boolean
}

function tagSentence(text: string, sentence: Piece, context: CueContext): TaggedCue[] {
  const words = plainWords(text.slice(sentence.offset, sentence.end))
  if (isNoCue(words)) return []
  if (CONDITION.test(words)) {
    const whole = judge(words, sentence, context, true)
    if (whole.kinds.length > 0) return cuesOf(text, whole)
  }
  const clauses = splitClauses(text, sentence).map((clause) => {
    const said = plainWords(text.slice(clause.offset, clause.end))
    return judge(said, clause, context, false)
  })
  return joinClauses(clauses).flatMap((verdict) => cuesOf(text, verdict))
}

/** Counting, a dose, praise, a reason, chat, something taken back, a change of exercise. */
function isNoCue(words: string): boolean {
  if (words === '' || EMPTY.test(words) || DOSE.test(words) || GOING_ON.test(words) || TAKEN_BACK.test(words))
    return true
  return false
}

function judge(words: string, piece: Piece, context: CueContext, whole: boolean): Verdict {
  const none: Verdict = { ...piece, kinds: [], score: 0, loose: true }
  if (isNoCue(words)) return { ...none, loose: false }
  const scores = scoreKinds(words, context, whole)
  const ranked = [...scores].filter(([, score]) => score >= ENOUGH).sort(byScore)
  const [best] = ranked
  const top = best?.[1] ?? 0
  const isTalk = TALK.test(words) || REASON.test(words) || PRAISED.test(words)
  if (!best || (isTalk && !outweighsTalk(best[0], top))) return { ...none, loose: !isTalk }
  const second = ranked.find(
    ([kind, score]) =>
      score >= SURE && PAIRS.some(([a, b]) => (a === best[0] && b === kind) || (b === best[0] && a === kind)),
  )
  const kinds = second && (whole || top >= SURE) ? [best[0], second[0]] : [best[0]]
  return { ...piece, kinds, score: top, loose: false }
}

/** Safety, options and faults count even when they come with a story. */
function outweighsTalk(kind: CueKind, score: number): boolean {
  return score >= SURE && ['caution', 'easier', 'harder', 'fault', 'breathing', 'range', 'tempo'].includes(kind)
}

/** In a sentence with a condition, what to move is the lesser part: the condition says which kind it is. */
function scoreKinds(words: string, context: CueContext, conditional: boolean): Scores {
  const scores: Scores = new Map()
  for (const test of TESTS) {
    const base = test.sure.test(words) ? SURE : test.likely.test(words) ? LIKELY : 0
    const lesser = conditional && ['execution', 'setup', 'focus'].includes(test.kind) ? LIKELY : 0
    const score = base - lesser + (test.hint.test(words) ? HINT : 0)
    if (score > 0) scores.set(test.kind, score)
  }
  const setup = scores.get('setup')
  if (setup !== undefined && context.early !== undefined) scores.set('setup', setup + (context.early ? HINT : -LIKELY))
  return scores
}

function byScore(a: readonly [CueKind, number], b: readonly [CueKind, number]): number {
  return b[1] - a[1] || FIRST_WINS.indexOf(a[0]) - FIRST_WINS.indexOf(b[0])
}

/** Joins clauses that belong to one cue: of one kind, or a remark behind a cue. */
function joinClauses(clauses: readonly Verdict[]): Verdict[] {
  const joined: Verdict[] = []
  for (const clause of clauses) {
    const last = joined.at(-1)
    const isSame = last && clause.kinds[0] !== undefined && last.kinds[0] === clause.kinds[0]
    if (last && last.kinds.length > 0 && (isSame || clause.loose)) {
      last.end = clause.end
      last.score = Math.max(last.score, clause.score)
    } else joined.push({ ...clause, kinds: [...clause.kinds] })
  }
  return joined.filter((verdict) => verdict.kinds.length > 0)
}

function cuesOf(text: string, verdict: Verdict): TaggedCue[] {
  const lead =
    /^(?:(?:and|so|okay|ok|right|now|then|but)[ ,]+)*/i.exec(text.slice(verdict.offset, verdict.end))?.[0].length ?? 0
  const offset = verdict.end - verdict.offset - lead > 3 ? verdict.offset + lead : verdict.offset
  const said = text
    .slice(offset, verdict.end)
    .replace(/[\n\v]/g, ' ')
    .replace(/[.,;:!?…]+$/, '')
  return verdict.kinds.map((kind) => ({
    kind,
    text: said,
    offset,
    confidence: Math.min(0.9, 0.4 + verdict.score / 14),
  }))
}
