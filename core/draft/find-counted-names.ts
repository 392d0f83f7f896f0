/** Finds doses said as a number and a name: "twelve rows, ten presses, three times through", "we want ten coat hangers". */
import { buildPrescription } from '../../shared/log-sheet.ts'
import { readDose } from '../dose/read-dose.ts'
import { isElsewhere } from './find-dose-hits.ts'
import type { DoseHit } from './find-dose-hits.ts'
import type { Naming } from './naming.ts'
import { quotePiece } from './quote-piece.ts'
import type { Speech } from './read-speech.ts'
import { COUNTED_NAME, EACH_SIDE_BEHIND, ROUNDS_SAID, WANTED } from './words/en/counted-names.ts'
import { NAME_IS, ON_NAME, PLURAL_NUMBERS } from './words/en/told-doses.ts'

/** So many characters behind the first name of a row its rounds are told. */
const ROW_CHARACTERS = 140

/**
 * The doses of names with their number in front: in a row of two or more that ends with its rounds, or behind words that ask
 * for it. Each knows whose it is.
 */
export function findCountedNames(speech: Speech, namings: readonly Naming[]): DoseHit[] {
  const counted = namings.flatMap((naming) => {
    const from = Math.max(0, naming.offset - LEAD_CHARACTERS)
    const match = COUNTED_NAME.exec(speech.text.slice(from, naming.offset))
    const number = match?.groups?.['number']
    if (!match || number === undefined || isElsewhere(speech.sentences[naming.sentence]?.words ?? '')) return []
    return [{ naming, number, offset: from + match.index + match[0].indexOf(number) }]
  })
  const rowOf = (at: number): Naming[] =>
    counted
      .filter(({ offset }) => Math.abs(offset - (counted[at]?.offset ?? 0)) <= ROW_CHARACTERS)
      .map(({ naming }) => naming)
  const told = namings.flatMap((naming) => toldWith(speech, naming))
  const inRows = counted.flatMap(({ naming, number, offset }, index): DoseHit[] => {
    const behind = speech.text.slice(naming.end, naming.end + ROW_CHARACTERS)
    const before = speech.text.slice(Math.max(0, offset - ROW_CHARACTERS), offset)
    const row = rowOf(index)
    const isRow = row.length > 1 && (ROUNDS_SAID.test(behind) || ROUNDS_SAID.test(before))
    const isWanted = WANTED.test(speech.text.slice(Math.max(0, offset - LEAD_CHARACTERS), offset))
    const read = isRow || isWanted ? readDose(`${number} reps`) : null
    if (!read?.reps) return []
    const sides = EACH_SIDE_BEHIND.exec(behind)
    const piece = { offset, end: naming.end + (sides?.[0].length ?? 0) }
    const { atMs, text } = quotePiece(speech, piece)
    const dose = buildPrescription({ reps: read.reps, perSide: sides !== null })
    return [
      {
        ...{ dose, quote: { atMs, text }, ...piece, sentence: speech.sentenceAt(offset), corrects: false, bare: false },
        ...{ of: [naming], row: isRow ? row : [naming] },
      },
    ]
  })
  return [...inRows, ...told.filter(({ offset, end }) => !inRows.some((hit) => hit.offset < end && offset < hit.end))]
}

/** "Six on the press", "the row's ten", "static quads ten": the number behind a name, or in front of it with "on". */
function toldWith(speech: Speech, naming: Naming): DoseHit[] {
  if (isElsewhere(speech.sentences[naming.sentence]?.words ?? '')) return []
  const from = Math.max(0, naming.offset - LEAD_CHARACTERS)
  const before = ON_NAME.exec(speech.text.slice(from, naming.offset))
  const behind = NAME_IS.exec(speech.text.slice(naming.end, naming.end + LEAD_CHARACTERS))
  const number = before?.[1] ?? behind?.[1]
  if (number === undefined) return []
  const known = PLURAL_NUMBERS[number.toLowerCase()] ?? number
  const read = readDose(`${known} reps`)
  if (!read?.reps || read.reps === 'max' || (read.reps.min ?? 0) < LEAST_REPS) return []
  const end = before ? naming.end : naming.end + (behind?.[0].length ?? 0)
  const offset = before ? from + before.index + before[0].indexOf(number) : naming.offset
  const sides = EACH_SIDE_BEHIND.exec(speech.text.slice(end, end + LEAD_CHARACTERS).replace(/^,/, ''))
  const piece = { offset, end: end + (sides?.[0].length ?? 0) }
  const { atMs, text } = quotePiece(speech, piece)
  const dose = buildPrescription({ reps: read.reps, perSide: sides !== null })
  const place = { ...piece, sentence: speech.sentenceAt(offset), corrects: false, bare: false }
  return [{ dose, quote: { atMs, text }, ...place, of: [naming], row: [naming] }]
}

const LEAST_REPS = 3

const LEAD_CHARACTERS = 40
