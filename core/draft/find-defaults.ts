/** Finds doses said once for many exercises: for the whole class, for what comes, or for the stations of a circuit nobody lists. */
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription } from '../../shared/log-sheet.ts'
import { findDoses } from '../dose/read-dose.ts'
import type { DoseHit } from './find-dose-hits.ts'
import { asHold } from './merge-doses.ts'
import { quotePiece } from './quote-piece.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { FOR_ALL, FOR_PART, FOR_SOME, IN_TURNS, NEXT_PART, SAID_SO, TURN_NAMES } from './words/en/default-words.ts'

/** A dose for all exercises that start behind it and say nothing else. */
export interface DefaultDose {
  hit: DoseHit
  /** Its stations are done in turns. */
  circuit: boolean
  /** For a part of the class only. */
  part: boolean
  /** Where the next part of the class is announced. */
  until: number | null
}

/** The defaults of a class in order. Inside a teaching only words for all make one. @param isTaughtAt whether an exercise is being taught at a character */
export function findDefaults(speech: Speech, isTaughtAt: (offset: number) => boolean): DefaultDose[] {
  return speech.sentences.flatMap((sentence, index): DefaultDose[] => {
    const said = speech.text.slice(sentence.offset, sentence.end)
    const next = speech.sentences[index + 1]
    const isForAll = FOR_ALL.test(said) && !FOR_SOME.test(said)
    const isInTurns = IN_TURNS.test(said) || (next !== undefined && /\brounds?\b/i.test(next.words) && isForAll)
    if (!isForAll && !(isInTurns && !isTaughtAt(sentence.offset))) return []
    if (isTaughtAt(sentence.offset) && !/\b(?:everything|unless|all of (?:them|these|those))\b/i.test(said)) return []
    const own = readAll(said)
    const circuit =
      isInTurns &&
      own.workSeconds !== null &&
      TURN_NAMES.test(`${speech.sentences[index - 1]?.words ?? ''} ${said} ${next?.words ?? ''}`)
    // the rounds may be told in the sentence behind
    const rounds = circuit && own.sets === null && next && !isTaughtAt(next.offset) ? roundsOf(speech, next) : null
    const dose = rounds ? { ...own, sets: rounds } : own
    if (!isForAll && !circuit) return []
    if (!saysSomething(dose)) return []
    const part = FOR_PART.test(said)
    const until = part
      ? (speech.sentences.slice(index + 1).find(({ words }) => NEXT_PART.test(words))?.offset ?? null)
      : null
    return [{ hit: hitAt(speech, sentence, STILL.test(said) ? asHold(dose) : dose), circuit, part, until }]
  })
}

/** Told of what is held. */
const STILL = /\b(?:stretch(?:es)?|holds?|poses?|shapes?|planks?|balances?)\b/i

function roundsOf(speech: Speech, sentence: Sentence): Prescription['sets'] {
  return readAll(speech.text.slice(sentence.offset, sentence.end)).sets
}

/** Everything that a sentence says, as one dose. */
function readAll(said: string): Prescription {
  const plain = SAID_SO.reduce((text, [pattern, known]) => text.replace(pattern, known), said)
  const found = findDoses(plain).map(({ dose }) => dose)
  const first = <Field extends keyof Prescription>(field: Field): Prescription[Field] | null =>
    found.find((dose) => dose[field] !== null)?.[field] ?? null
  return buildPrescription({
    sets: first('sets'),
    reps: first('reps'),
    workSeconds: first('workSeconds'),
    holdSeconds: first('holdSeconds'),
    distanceM: first('distanceM'),
    restSeconds: first('restSeconds'),
    restBetween: first('restBetween'),
    tempo: first('tempo'),
    perSide: found.some(({ perSide }) => perSide),
  })
}

function saysSomething({ sets, reps, workSeconds, holdSeconds, distanceM, restSeconds, tempo }: Prescription): boolean {
  return [sets, reps, workSeconds, holdSeconds, distanceM, restSeconds, tempo].some((value) => value !== null)
}

function hitAt(speech: Speech, sentence: Sentence, dose: Prescription): DoseHit {
  const { atMs, text } = quotePiece(speech, { offset: sentence.offset, end: sentence.end })
  return {
    ...{ dose, quote: { atMs, text }, offset: sentence.offset, end: sentence.end, sentence: sentence.index },
    ...{ corrects: false, bare: false },
  }
}
