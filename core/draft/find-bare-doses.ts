/** Finds doses that are only a number where a dose is due ("Push through your heels. Twelve.") and sets said by repeating it. */
import { buildPrescription } from '../../shared/log-sheet.ts'
import { readDose } from '../dose/read-dose.ts'
import { isElsewhere } from './find-dose-hits.ts'
import type { DoseHit } from './find-dose-hits.ts'
import type { Naming } from './naming.ts'
import { quotePiece } from './quote-piece.ts'
import type { Speech } from './read-speech.ts'
import { plainWords, splitClauses } from './split-speech.ts'
import type { Piece } from './split-speech.ts'
import {
  BARE_DOSE,
  BARE_ON_SIDE,
  BARE_PLURAL,
  BARE_TIMES,
  COUNTS_DOWN,
  MINUTE_ALONE,
  OWN_COUNTED,
  REPEATED,
  TIMES_OVER,
} from './words/en/bare-doses.ts'
import { PLURAL_NUMBERS, TOLD_DOSES, TOLD_LADDER, TOLD_MINUTES } from './words/en/told-doses.ts'

/** Fewer than this alone is rather counting or a list; more is no count of a class. */
const LEAST = 3
const MOST = 60
/** Where the sentences are guessed, small numbers are too often something else. */
const LEAST_UNSURE = 5

/** Bare numbers as doses: clauses that hold nothing else, away from counting. They count where nothing fuller is said. */
export function findBareDoses(speech: Speech, namings: readonly Naming[]): DoseHit[] {
  const named = new Set(namings.map(({ sentence }) => sentence))
  const clauses = speech.sentences.flatMap((sentence) =>
    (speech.unpunctuated ? [sentence] : splitClauses(speech.text, sentence)).map((piece) => ({
      piece,
      sentence: sentence.index,
      words: plainWords(speech.text.slice(piece.offset, piece.end)),
    })),
  )
  let toldUntil = 0
  return clauses.flatMap(({ piece, sentence, words }, index): DoseHit[] => {
    if (piece.offset < toldUntil) return []
    const told = toldDose(
      speech,
      clauses.slice(index, index + MOST_TOLD).filter((one) => one.sentence === sentence),
    )
    if (told && !isElsewhere(speech.sentences[sentence]?.words ?? '')) {
      toldUntil = told.end
      const hit = hitAt(speech, { offset: piece.offset, end: told.end }, sentence, told.dose, !told.isSure)
      return [{ ...hit, told: true }]
    }
    const as = (dose: DoseHit['dose'], isBare: boolean): DoseHit[] => [
      hitAt(speech, piece, sentence, buildPrescription({ ...dose, unsure: false, why: [] }), isBare),
    ]
    const sets = TIMES_OVER[BARE_TIMES.exec(words)?.[1] ?? '']
    if (sets !== undefined) return as(buildPrescription({ sets: { min: sets, max: sets } }), false)
    const plural = PLURAL_NUMBERS[BARE_PLURAL.exec(words)?.[1] ?? '']
    const many = plural === undefined ? null : readDose(`${plural} reps`)
    if (many) return as(many, false)
    const onSide = BARE_ON_SIDE.exec(words)?.[1]
    const each = onSide === undefined || isOption(speech, sentence) ? null : readDose(`${onSide} reps each side`)
    if (each) return as(each, true)
    const minutes = MINUTE_ALONE.test(words) ? readDose(`${words.replace(/ of .*/, '')} of work`) : null
    if (minutes) return as(minutes, true)
    const own = OWN_COUNTED.exec(words)
    const counted = own && !isOption(speech, sentence) ? readDose(`${own[1] ?? own[2] ?? ''} reps`) : null
    if (counted) return as(counted, true)
    if (!BARE_DOSE.test(words) || isOption(speech, sentence)) return []
    // "Three. Plank jacks." counts the exercises.
    if (named.has(sentence) || (words.split(' ').length === 1 && named.has(sentence + 1))) return []
    const around = [clauses[index - 1]?.words ?? '', clauses[index + 1]?.words ?? '']
    if (around.some((other) => BARE_DOSE.test(other) || COUNTS_DOWN.test(other))) return []
    if (isCounted(clauses, index)) return []
    const dose = readDose(numberIn(words))
    const reps = dose?.reps
    if (
      !dose ||
      reps == null ||
      reps === 'max' ||
      (reps.min ?? 0) < (speech.unpunctuated ? LEAST_UNSURE : LEAST) ||
      (reps.max ?? 0) > MOST
    )
      return []
    const isMeant = CHANGED_MIND.test(
      plainWords(speech.text.slice(Math.max(0, piece.offset - MIND_CHARACTERS), piece.offset)),
    )
    return as(dose, !isMeant).map((hit) => ({ ...hit, corrects: isMeant }))
  })
}

interface Told {
  dose: DoseHit['dose']
  end: number
  /** It says more than any number alone. */
  isSure: boolean
}

/** A dose is told in so many clauses at most. */
const MOST_TOLD = 3

/** What a row of clauses tells, the longest that tells something; null = nothing. */
function toldDose(speech: Speech, clauses: readonly { piece: Piece; words: string }[]): Told | null {
  for (let length = clauses.length; length > 0; length -= 1) {
    const words = plainWords(
      clauses
        .slice(0, length)
        .map((one) => one.words)
        .join(' '),
    )
    const dose = ladderIn(words) ?? everyMinuteIn(words) ?? amountIn(words)
    const { reps, repScheme, perSide, scheme } = dose ?? {}
    const isRange = reps != null && reps !== 'max' && reps.min !== reps.max
    const isSure = isRange || repScheme != null || perSide === true || scheme === 'emom'
    if (dose) return { dose, end: endOf(speech, clauses[length - 1]?.piece), isSure }
  }
  return null
}

/** Without the mark that ends the clause. */
function endOf(speech: Speech, piece: Piece | undefined): number {
  if (!piece) return 0
  return piece.offset + speech.text.slice(piece.offset, piece.end).replace(/[.,;:!?…]+$/, '').length
}

function amountIn(words: string): DoseHit['dose'] | null {
  for (const pattern of TOLD_DOSES) {
    const { from, to, seconds, sets, metres, side } = pattern.exec(words)?.groups ?? {}
    if (from === undefined) continue
    const [least, most] = [numberOf(from), numberOf(to ?? from)]
    if (least === null || most === null || most < least || most > MOST || (least < LEAST && !seconds && !metres))
      return null
    const range = { min: least, max: most }
    const times = sets === undefined ? null : /^(?:twice|two)/.test(sets) ? 2 : 3
    return buildPrescription({
      ...(seconds ? { workSeconds: range } : metres ? { distanceM: range } : { reps: range }),
      perSide: side !== undefined,
      ...(times !== null && { sets: { min: times, max: times } }),
    })
  }
  return null
}

function everyMinuteIn(words: string): DoseHit['dose'] | null {
  const [minutes, reps] = TOLD_MINUTES.exec(words)?.slice(1, 3).map(numberOf) ?? []
  if (minutes == null || reps == null) return null
  const sets = { min: minutes, max: minutes }
  return buildPrescription({
    scheme: 'emom',
    sets,
    reps: { min: reps, max: reps },
    intervalSeconds: { min: 60, max: 60 },
  })
}

function ladderIn(words: string): DoseHit['dose'] | null {
  const rungs = TOLD_LADDER.exec(words)?.slice(1, 4).map(numberOf) ?? []
  const [first, second, third] = rungs
  if (first == null || second == null || third == null || first === second || second === third) return null
  const repScheme = [first, second, third]
  return buildPrescription({
    scheme: 'ladder',
    repScheme,
    reps: { min: Math.min(...repScheme), max: Math.max(...repScheme) },
  })
}

function numberOf(word: string): number | null {
  const reps = readDose(`${word} reps`)?.reps
  return reps == null || reps === 'max' ? null : reps.min
}

/**
 * "Three. Keep your knees apart. Four.": a number whose neighbour is said a little before or behind is counting, and so is
 * one that a smaller number leads up to, or a greater one carries on.
 */
function isCounted(clauses: readonly { words: string }[], index: number): boolean {
  const value = countOf(clauses[index]?.words)
  if (value < 0) return false
  const near = clauses.slice(Math.max(0, index - COUNTING_CLAUSES), index + COUNTING_CLAUSES + 1)
  if (near.some(({ words }) => countOf(words) === value - 1 || countOf(words) === value + 1)) return true
  const before = clauses.slice(Math.max(0, index - COUNT_REACH), index).map(({ words }) => countOf(words))
  const behind = clauses.slice(index + 1, index + 1 + COUNT_REACH).map(({ words }) => countOf(words))
  return before.some((one) => one > 0 && one < value) && (behind.some((one) => one > value) || value <= MOST_COUNTED)
}

/** The number that a clause counts: "Six.", "And six.", "That's six." */
function countOf(words: string | undefined): number {
  return ALONE.indexOf(
    (words ?? '')
      .replace(/^(?:and|thats) /, '')
      .replace(/ (?:and (?:down|flop|off|rest|stop|relax|done|out|out you come)|more|good|lovely|nice|yes)$/, ''),
  )
}

const COUNT_REACH = 12
const MOST_COUNTED = 12
const COUNTING_CLAUSES = 6
const ALONE = 'one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen'.split(
  ' ',
)

/** "Ten of these. Hmm, no, it's early, eight." */
const CHANGED_MIND = /\b(?:no|actually|sorry|make (?:it|that)|call it|rather)\b/
const MIND_CHARACTERS = 30

/** A number in a sentence with a condition is somebody's option. */
function isOption(speech: Speech, sentence: number): boolean {
  return /\b(?:if|or|unless|instead)\b/.test(speech.sentences[sentence]?.words ?? '')
}

/** The second set of "eight, take a breather, then eight more" or "hold thirty seconds, then another thirty". */
export function findRepeats(speech: Speech, hits: readonly DoseHit[]): DoseHit[] {
  return hits.flatMap((hit): DoseHit[] => {
    const { reps, sets } = hit.dose
    const amount = reps ?? hit.dose.holdSeconds ?? hit.dose.workSeconds
    if (amount === null || amount === 'max' || sets !== null || amount.min !== amount.max) return []
    const behind = speech.text.slice(hit.end, hit.end + REPEAT_CHARACTERS)
    const found = REPEATED.exec(behind)
    const number = found?.[1] ?? found?.[2]
    if (!found || number === undefined) return []
    const again = readDose(`${number} reps`)?.reps
    if (again == null || again === 'max' || again.min !== amount.min) return []
    const offset = hit.end + found.index
    const piece = { offset, end: offset + found[0].length }
    const twice = buildPrescription({ sets: { min: 2, max: 2 } })
    return [hitAt(speech, piece, speech.sentenceAt(offset), twice, false)]
  })
}

/** A repeat comes within a sentence or two. */
const REPEAT_CHARACTERS = 90

/** The number of a bare clause without what stands around it. */
function numberIn(words: string): string {
  return `${BARE_DOSE.exec(words)?.[1] ?? ''} reps`
}

function hitAt(speech: Speech, piece: Piece, sentence: number, dose: DoseHit['dose'], bare: boolean): DoseHit {
  const { atMs, text } = quotePiece(speech, piece)
  return { dose, quote: { atMs, text }, offset: piece.offset, end: piece.end, sentence, corrects: false, bare }
}
