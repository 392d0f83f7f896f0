/** Finds every dose said in a class, with its place, its words, and what speaks for or against taking it. */
import type { Prescription, Quote } from '../../shared/log-sheet.ts'
import { findDoses } from '../dose/read-dose.ts'
import { quoteAt } from '../transcript/place-quote.ts'
import { classOf } from './break-features.ts'
import { SENTENCE_BREAK } from './restore-breaks.ts'
import type { Naming } from './naming.ts'
import type { Speech } from './read-speech.ts'
import { plainWords, splitClauses, splitSentences } from './split-speech.ts'
import type { Piece } from './split-speech.ts'
import { AMOUNT_WORDS, CORRECTIONS, NO_DOSE_BEHIND, NO_DOSE_HERE, NO_DOSE_PHRASES } from './words/en/dose-words.ts'
import { anyPhrase } from './words/en/word-groups.ts'

/** A dose said. Offsets count in the running text. */
export interface DoseHit {
  dose: Prescription
  quote: Quote
  offset: number
  end: number
  sentence: number
  /** "Make that eight", "I said ten earlier": it replaces what was said before. */
  corrects: boolean
  /** Only a number: it counts where nothing fuller is said. */
  bare: boolean
  /** A number that no phrase holds. */
  loose?: true
  /** All that a sentence says for many exercises. */
  forAll?: true
  /** Several numbers as one: each in order, and what stands between them. */
  steps?: { values: readonly number[]; links: readonly string[]; isCount: boolean }
  /** Told in a row of clauses that single phrases inside it do not show. */
  told?: true
  /** The exercises it names itself. */
  of?: readonly Naming[]
  /** The row of names it stands in. */
  row?: readonly Naming[]
}

/** All doses of a class in order; numbers in stories, options and chat are left out. */
export function findDoseHits(speech: Speech, namings: readonly Naming[]): DoseHit[] {
  let lineStart = 0
  const listed = namings.filter((naming) => naming.listed).map(({ offset }) => offset)
  return speech.lines.flatMap((line) => {
    const start = lineStart
    lineStart += line.text.length + 1
    return dosesOf(speech.text.slice(start, start + line.text.length), cutsIn(listed, start, lineStart)).flatMap(
      ({ dose, offset, length }): DoseHit[] => {
        const at = start + offset
        const index = speech.sentenceAt(at)
        const sentence = speech.sentences[index]
        const said = line.text.slice(offset, offset + length)
        const around = sentence?.words ?? plainWords(said)
        const clauses = sentence ? clausesAround(speech, sentence, at, at + length) : around
        if (!saysAmount(dose) || isDecoy(dose, plainWords(said), { around, clauses }, speech, index)) return []
        if (speech.unpunctuated && isLabel(dose, at, namings)) return []
        if (BEHIND.test(plainWords(speech.text.slice(at, at + length + 30)))) return []
        const reach = Math.min(at - 60, Math.max(sentence?.offset ?? at, at - 120))
        const before = plainWords(speech.text.slice(Math.max(0, reach), at + length))
        const corrects = CORRECTS.test(before) || CORRECTS.test(plainWords(said))
        const skipped = takenBack(dose, line.text.slice(offset, offset + length))
        return [
          {
            dose,
            quote: quoteAt(line, offset + skipped, length - skipped),
            offset: at + skipped,
            end: at + length,
            sentence: index,
            corrects,
            bare: isTimeCall(dose, around),
          },
        ]
      },
    )
  })
}

/** Breaks found in unpunctuated speech as the marks they stand for. */
function withMarks(text: string): string {
  return text
    .replace(NAMED_BY_NUMBER, (name) => name.replace(/\w/g, 'x'))
    .replace(DOUBLED, (all, word: string) => word.padEnd(all.length))
    .replace(
      /([\p{L}\d']*)([\n\v])(?=([\p{L}\d']*))/gu,
      (_, word: string, mark: string, next: string) => word + markBetween(classOf(word), mark, classOf(next)),
    )
}

/** Names with a number in them. */
const NAMED_BY_NUMBER = /\bfigures? (?:of )?(?:four|eight)s?\b/gi

/** "Twenty on, on, ten off": a small word said twice. */
const DOUBLED = /\b(on|off|and|for|of|to|the|each|then|rest|reps|seconds|sets|rounds|metres|a), \1\b/gi

/** No point: between two figures that would be a fraction. */
const FULL_STOP = '!'

/** Behind an amount a clause break is unsure, but for "three sets, four in a set" and "twenty, it's a short one". */
function markBetween(before: string, mark: string, behind: string): string {
  if (mark === SENTENCE_BREAK) return FULL_STOP
  if (before === 'unit' && behind === 'number') return ','
  const goesOn = !BEGINS_ANEW.has(behind)
  return (before === 'number' || before === 'unit') && goesOn ? ' ' : ','
}

/** Classes of words that add nothing to an amount. */
const BEGINS_ANEW: ReadonlySet<string> = new Set(['contraction', 'pronoun', 'never', 'auxiliary'])

/** Places in a line where a programme goes on to its next name: no dose reaches across. */
function cutsIn(listed: number[], start: number, end: number): number[] {
  const later = listed.findIndex((offset) => offset >= end)
  // Lines come in order, so what was used is taken off.
  const used = listed.splice(0, later < 0 ? listed.length : later)
  return used.filter((offset) => offset >= start).map((offset) => offset - start)
}

function dosesOf(text: string, cuts: readonly number[]): ReturnType<typeof findDoses> {
  const ends = [...cuts, text.length]
  return ends.flatMap((end, index) => {
    const from = ends[index - 1] ?? 0
    return piecesWithAmounts(text.slice(from, end)).flatMap((piece) =>
      findDoses(withMarks(text.slice(from + piece.offset, from + piece.end))).map((found) => ({
        ...found,
        offset: found.offset + from + piece.offset,
      })),
    )
  })
}

/** The sentences that may hold a dose, each with the one behind it; neighbours are read as one. Most speech holds none. */
function piecesWithAmounts(text: string): Piece[] {
  const sentences = splitSentences(text)
  const pieces: Piece[] = []
  sentences.forEach((sentence, index) => {
    if (!AMOUNT_WORDS.test(text.slice(sentence.offset, sentence.end))) return
    const end = sentences[index + 1]?.end ?? text.length
    const last = pieces.at(-1)
    if (last && last.end - last.offset > LONGEST_READ && sentence.offset <= last.end)
      pieces.push({ offset: last.end, end })
    else if (last && sentence.offset <= last.end) last.end = end
    else pieces.push({ offset: sentence.offset, end })
  })
  return pieces
}

/** Characters that are read for doses at one go, about; a dose is said in far fewer. */
const LONGEST_READ = 3000

const DECOY = anyPhrase(NO_DOSE_HERE)
const BEHIND = anyPhrase(NO_DOSE_BEHIND)
const NEVER = anyPhrase(NO_DOSE_PHRASES)
const CORRECTS = anyPhrase(CORRECTIONS)

/** The clauses that hold a phrase, with the one in front and the one behind. */
function clausesAround(speech: Speech, sentence: Piece, offset: number, end: number): string {
  const clauses = splitClauses(speech.text, sentence)
  const first = clauses.findIndex((clause) => clause.end > offset)
  const last = clauses.findLastIndex((clause) => clause.offset < end)
  const behind = clauses[last + 1]
  const [from, to] = [clauses[Math.max(0, first - 1)], behind && !goesOn(speech, behind) ? behind : clauses[last]]
  return plainWords(speech.text.slice(from?.offset ?? sentence.offset, to?.end ?? sentence.end))
}

/** "Eight of those, and if your knees are sore": what follows is a thought of its own. */
function goesOn(speech: Speech, clause: Piece): boolean {
  return /^(?:and|but|so)\s+if\b/i.test(speech.text.slice(clause.offset, clause.end))
}

interface Around {
  /** The whole sentence. */
  around: string
  clauses: string
}

/** "We'll do ten, no, eight": what was taken back in front of the number that holds is not quoted. @returns its characters */
function takenBack(dose: Prescription, said: string): number {
  const back = [...said.matchAll(TAKEN_BACK)].at(-1)
  if (!back) return 0
  const from = back.index + back[0].length
  const [left, ...others] = findDoses(said.slice(from))
  const isSame = left && others.length === 0 && SAID_FIELDS.every((field) => sameValue(left.dose[field], dose[field]))
  return isSame ? from : 0
}

const TAKEN_BACK = /\b(?:no|actually|sorry|hang on|hmm|nah)\b[,.]?\s+/gi
const SAID_FIELDS = [
  'sets',
  'reps',
  'workSeconds',
  'holdSeconds',
  'distanceM',
  'restSeconds',
  'tempo',
  'perSide',
] as const
const sameValue = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

/** The sentence tells of other people, other days or the class itself. */
export function isElsewhere(words: string): boolean {
  return DECOY.test(words)
}

function isDecoy(
  dose: Prescription,
  said: string,
  { around, clauses }: Around,
  speech: Speech,
  index: number,
): boolean {
  if (NEVER.test(said) || DECOY.test(around) || isBeyondBelief(dose) || isOne(dose, said)) return true
  if (dose.byLevel.length > 0) return false
  const sentence = speech.sentences[index]
  const kinds = sentence?.cues.map((cue) => cue.kind) ?? []
  const isOption = /\b(?:if|option|easier|harder|more|less|or|want|new|instead)\b/.test(clauses)
  return isOption && kinds.length > 0 && kinds.every((kind) => kind === 'easier' || kind === 'harder')
}

/** "Ten seconds." alone is rather called than asked for. */
function isTimeCall({ workSeconds, perSide }: Prescription, sentence: string): boolean {
  return workSeconds !== null && !perSide && /^(?:and )?(?:five|ten|fifteen|5|10|15) seconds$/.test(sentence)
}

/** "That's a nice one": no repetition is asked for. */
function isOne(dose: Prescription, said: string): boolean {
  const { reps, sets, workSeconds, holdSeconds, distanceM, restSeconds, tempo, perSide } = dose
  const isAlone = [sets, workSeconds, holdSeconds, distanceM, restSeconds, tempo].every((value) => value === null)
  return (
    reps !== null &&
    reps !== 'max' &&
    reps.max === 1 &&
    isAlone &&
    !perSide &&
    !/\b(?:reps?|each|per|once)\b/.test(said)
  )
}

/** "Two speed skaters leap side to side": where marks are missing, a small number in front of a name that starts counts the stations. */
function isLabel(dose: Prescription, at: number, namings: readonly Naming[]): boolean {
  const { reps, sets } = dose
  if (reps === null || reps === 'max' || sets !== null || (reps.max ?? 0) > MOST_STATIONS) return false
  return namings.some(({ offset, strength }) => strength >= 2 && offset > at && offset - at <= LABEL_CHARACTERS)
}

/** A longer row of stations is rare; "three " and the like in front of the name. */
const MOST_STATIONS = 8
const LABEL_CHARACTERS = 7

/** Farther than this nobody goes in a class. */
const MOST_METRES = 10_000

/** More than anybody does in a class: a record, a story or a number misread. */
function isBeyondBelief(dose: Prescription): boolean {
  const reps = dose.reps === null || dose.reps === 'max' ? 0 : (dose.reps.min ?? dose.reps.max ?? 0)
  const isWholeClass = (dose.workSeconds?.min ?? 0) >= 300 && dose.frequency !== null
  const held = dose.holdSeconds?.min ?? 0
  const worked = dose.workSeconds?.min ?? 0
  const isLong = held > 900 || worked > 3600 || (dose.restSeconds?.min ?? 0) > 900
  const isTravel = (dose.distanceM?.min ?? 0) > MOST_METRES
  return isTravel || reps > 120 || (dose.sets?.min ?? 0) > 20 || isLong || isWholeClass
}

/** True when a dose holds anything that a lesson shows as its dose. */
export function saysAmount(dose: Prescription): boolean {
  return [
    dose.sets,
    dose.reps,
    dose.workSeconds,
    dose.holdSeconds,
    dose.distanceM,
    dose.restSeconds,
    dose.tempo,
    dose.repScheme,
    dose.intervalSeconds,
  ].some((value) => value !== null)
}
