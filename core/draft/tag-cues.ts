/** Tags the cues in something said: clause by clause, in exact words, leaving out counting, praise, purpose and chat. */
import type { CueKind } from '../../shared/log-sheet.ts'
import { heardBetween, hearWords } from './hear-words.ts'
import type { HeardWords } from './hear-words.ts'
import { restoreBreaks } from './restore-breaks.ts'
import { isUnpunctuated, plainWords, splitClauses, splitSentences } from './split-speech.ts'
import type { Piece } from './split-speech.ts'
import { sumBoth, sumClause, weighSums } from './weigh-clause.ts'
import type { CueTable } from './weigh-clause.ts'
import { DOSE_ONLY, EMPTY_CLAUSES, RETRACTED, TRANSITIONS } from './words/en/not-cue-words.ts'
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
  return tagWeighed(weighText(said, hearWords(said)), context)
}

/** A text whose clauses are weighed, but not yet judged by their place. */
export interface WeighedText {
  text: string
  sentences: { whole: WeighedPiece | null; clauses: readonly WeighedPiece[] }[]
}

/** A clause, or a sentence with a condition as a whole. Sums are null where it can be no cue. */
interface WeighedPiece extends Piece {
  wordCount: number
  sums: readonly number[] | null
}

/**
 * Weighs the clauses of a text. Weighed once, a text can be tagged for more than one place.
 * @param heard its words as the word net hears them where it stands @param from the offset of the text among them @param table other weights, for fitting
 */
export function weighText(text: string, heard: HeardWords, from = 0, table?: CueTable): WeighedText {
  const weigh = (words: string, { offset, end }: Piece, conditional: boolean): WeighedPiece => {
    const sums = isNoCue(words)
      ? null
      : sumBoth(sumClause(words, conditional, table), heardBetween(heard, from + offset, from + end))
    return { offset, end, wordCount: words.split(' ').length, sums }
  }
  const sentences = splitSentences(text).flatMap((sentence) => {
    const words = plainWords(text.slice(sentence.offset, sentence.end))
    if (isNoCue(words)) return []
    const clauses = splitClauses(text, sentence).map((clause) =>
      weigh(plainWords(text.slice(clause.offset, clause.end)), clause, false),
    )
    return [{ whole: isConditional(words) ? weigh(words, sentence, true) : null, clauses }]
  })
  return { text, sentences }
}

/** The cues of a weighed text in a place. */
export function tagWeighed({ text, sentences }: WeighedText, context: CueContext): TaggedCue[] {
  return sentences.flatMap(({ whole, clauses }) => {
    const all = whole && judge(whole, context)
    if (all && all.kinds.length > 0) return cuesOf(text, all)
    return joinClauses(clauses.map((clause) => judge(clause, context))).flatMap((verdict) => cuesOf(text, verdict))
  })
}

/** How much likelier a cue than none is taken to be when a text comes alone, outside any class (log of odds). */
const ALONE_FAVOUR = 0.25
/** A second kind of a text that comes alone counts from here on. */
const ALONE_SECOND = 0.12
/** A text that comes alone and says one kind as plainly as this has no second. */
const ALONE_PLAIN = 0.65
/** A second kind in a class counts from here on, and only in one of the pairs. */
const PAIR_SECOND = 0.3

/** Kinds that may share one stretch of words. */
const PAIRS: readonly (readonly [CueKind, CueKind])[] = [
  ['caution', 'easier'],
  ['caution', 'fault'],
  ['breathing', 'execution'],
  ['easier', 'equipment'],
  ['harder', 'equipment'],
]

const EMPTY = anyPhrase(EMPTY_CLAUSES)
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

/** Whether a sentence in plain words hangs on a condition: such a one is weighed as a whole first. */
export function isConditional(words: string): boolean {
  return CONDITION.test(words)
}

interface Verdict extends Piece {
  kinds: CueKind[]
  /** How likely the first kind is, 0-1. */
  score: number
  /** A clause that says nothing of its own and may go along with the one before. */
  loose: boolean
}

/** Counting, a dose, praise, a reason, chat, something taken back, a change of exercise. */
function isNoCue(words: string): boolean {
  if (words === '' || EMPTY.test(words) || DOSE.test(words) || GOING_ON.test(words) || TAKEN_BACK.test(words))
    return true
  return false
}

function judge({ offset, end, wordCount, sums }: WeighedPiece, context: CueContext): Verdict {
  const nothing: Verdict = { offset, end, kinds: [], score: 0, loose: false }
  if (sums === null) return nothing
  const alone = context.oneSentence !== true
  const { none, kinds } = weighSums(sums, context.early, alone ? ALONE_FAVOUR : 0)
  const [best, ...others] = kinds
  if (!best || best.likely < none) return { ...nothing, loose: wordCount <= LOOSE_WORDS }
  const second = others.find(({ kind, likely }) =>
    alone ? likely >= ALONE_SECOND && best.likely < ALONE_PLAIN : likely >= PAIR_SECOND && isPair(best.kind, kind),
  )
  return { ...nothing, kinds: second ? [best.kind, second.kind] : [best.kind], score: best.likely }
}

/** A longer clause that says nothing of its own is no remark to the one before. */
const LOOSE_WORDS = 4

function isPair(one: CueKind, other: CueKind): boolean {
  return PAIRS.some(([a, b]) => (a === one && b === other) || (b === one && a === other))
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
    confidence: Math.min(0.95, verdict.score),
  }))
}
