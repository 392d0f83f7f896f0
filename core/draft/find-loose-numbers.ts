/** Finds the numbers of a class that no phrase of a dose holds, alone and in rows: each may be one, as what stands around it says. */
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription } from '../../shared/log-sheet.ts'
import type { DoseHit } from './find-dose-hits.ts'
import { quotePiece } from './quote-piece.ts'
import type { Speech } from './read-speech.ts'
import type { Piece } from './split-speech.ts'
import { ANY_NUMBER, NUMBER_LINKS, NUMBER_VALUES, SET_UNITS, SIDE_BEHIND } from './words/en/saying-words.ts'

type Unit = 'none' | 'seconds' | 'minutes' | 'metres' | 'breaths' | 'sets'

interface FoundNumber {
  from: number
  to: number
  unit: Unit
  offset: number
  end: number
}

/** Single numbers and rows of them, in order. @param known hits whose words no single number may share */
export function findLooseNumbers(speech: Speech, known: readonly DoseHit[]): DoseHit[] {
  const numbers = [...speech.text.matchAll(ANY_NUMBER)].flatMap(readFound)
  return [...singlesOf(speech, numbers, known), ...rowsOf(speech, numbers)]
}

function readFound(found: RegExpExecArray): FoundNumber[] {
  const [all, first = '', second] = found
  const from = valueOf(first)
  const to = second === undefined ? from : valueOf(second)
  if (from === null || to === null || to < from) return []
  const said = found.groups?.['unit']?.trim().toLowerCase() ?? ''
  const half = (found.groups?.['half'] ?? found.groups?.['behind']) === undefined ? 0 : 0.5
  const unit = /^(?:once|twice)$/i.test(first) ? 'sets' : unitOf(said)
  if ((half > 0 || from < 1) && unit !== 'minutes') return []
  return [{ from: from + half, to: to + half, unit, offset: found.index, end: found.index + all.length }]
}

function unitOf(said: string): Unit {
  if (said === '') return 'none'
  if (SET_UNITS.test(said)) return 'sets'
  if (said.startsWith('mi')) return 'minutes'
  if (said.startsWith('me')) return 'metres'
  return said.startsWith('b') ? 'breaths' : 'seconds'
}

function singlesOf(speech: Speech, numbers: readonly FoundNumber[], known: readonly DoseHit[]): DoseHit[] {
  const taken = known.toSorted((a, b) => a.offset - b.offset)
  let at = 0
  return numbers.flatMap((number): DoseHit[] => {
    while (at < taken.length && (taken[at]?.end ?? 0) <= number.offset) at++
    if (taken.slice(at, at + NEIGHBOURS).some((hit) => hit.offset < number.end && number.offset < hit.end)) return []
    return [hitOf(speech, number, number)]
  })
}

/** Phrases that share words stand next to each other. */
const NEIGHBOURS = 3

/** "Twenty seconds, then thirty, then forty", "six, up to ten", "eight for the early ones, everyone else twelve". */
function rowsOf(speech: Speech, numbers: readonly FoundNumber[]): DoseHit[] {
  const hits: DoseHit[] = []
  let at = 0
  while (at < numbers.length) {
    const { row, links } = rowFrom(speech, numbers, at)
    const [first] = row
    const last = row.at(-1)
    at += row.length
    if (!first || !last || row.length < 2) continue
    const values = row.map(({ from }) => from)
    const [least, most] = [Math.min(...values), Math.max(...values)]
    if (most > least * MOST_TIMES || most > MOST_IN_ROW) continue
    const unit = row.map((one) => one.unit).find((one) => one !== 'none') ?? 'none'
    const hit = hitOf(speech, { ...first, unit, from: least, to: most, end: last.end }, last)
    if (least === most) continue
    const isCount = values.every((value, index) => index === 0 || Math.abs(value - (values[index - 1] ?? 0)) === 1)
    hits.push({ ...hit, steps: { values, links: [...new Set(links)], isCount } })
  }
  return hits
}

/** One that is so many times another is of something else. */
const MOST_TIMES = 5
const MOST_IN_ROW = 130
const LONGEST_ROW = 5
const LINK_CHARACTERS = 60

function rowFrom(speech: Speech, numbers: readonly FoundNumber[], at: number): { row: FoundNumber[]; links: string[] } {
  const row = numbers.slice(at, at + 1)
  const links: string[] = []
  for (const next of numbers.slice(at + 1, at + LONGEST_ROW)) {
    const last = row.at(-1)
    if (!last || [last, next].some(({ from, to, unit }) => from !== to || unit === 'sets')) break
    const units = new Set([...row, next].map(({ unit }) => unit).filter((unit) => unit !== 'none'))
    if (units.size > 1 || next.offset - last.end > LINK_CHARACTERS) break
    const between = speech.text
      .slice(last.end, next.offset)
      .replace(/[\n\v]/g, ' ')
      .toLowerCase()
    const link = NUMBER_LINKS.find(([, pattern]) => pattern.test(between))?.[0]
    if (link === undefined || !isOnward(row, next, link)) break
    links.push(link)
    row.push(next)
  }
  return { row, links }
}

/** Rungs go one way; the last may be climbed twice ("twelve, ten, eight, eight"), and sets may stay ("eight, then eight, then six"). */
function isOnward(row: readonly FoundNumber[], next: FoundNumber, link: string): boolean {
  const [first] = row
  const last = row.at(-1)
  if (!first || !last) return false
  const way = Math.sign(last.from - first.from)
  if (next.from === last.from) return link === 'then' || way !== 0
  return way === 0 || Math.sign(next.from - last.from) === way
}

function hitOf(speech: Speech, { from, to, unit, offset, end }: FoundNumber, last: FoundNumber): DoseHit {
  const perSide = SIDE_BEHIND.test(speech.text.slice(last.end, last.end + SIDE_CHARACTERS))
  const { atMs, text } = quotePiece(speech, clauseAround(speech, offset, end))
  return {
    dose: { ...NOTHING_SAID, ...fieldsOf(unit, from, to), perSide },
    quote: { atMs, text },
    ...{ offset, end, sentence: speech.sentenceAt(offset), corrects: false, bare: true },
    loose: true,
  }
}

/** A number alone explains little: the clause around it, where that is short. */
function clauseAround({ text, joined }: Speech, offset: number, end: number): Piece {
  const before = text.slice(Math.max(0, offset - CLAUSE_CHARACTERS), offset)
  const behind = text.slice(end, end + CLAUSE_CHARACTERS)
  const from = /[^.,;:!?…\n\v]*$/.exec(before)?.[0].trimStart() ?? ''
  const to = /^[^.,;:!?…\n\v]*/.exec(behind)?.[0].trimEnd() ?? ''
  const clause = { offset: offset - from.length, end: end + to.length }
  const isLong = Math.max(from.length, to.length) >= CLAUSE_CHARACTERS - 1
  const isOneLine = joined.at(clause.offset).lineIndex === joined.at(clause.end - 1).lineIndex
  return isLong || !isOneLine ? { offset, end } : clause
}

const CLAUSE_CHARACTERS = 60

/** Built once: a class has thousands of numbers. */
const NOTHING_SAID = buildPrescription({})
const SIDE_CHARACTERS = 40

function fieldsOf(unit: Unit, min: number, max: number): Partial<Prescription> {
  const range = { min, max }
  if (unit === 'minutes') return { workSeconds: { min: min * 60, max: max * 60 } }
  if (unit === 'seconds') return { workSeconds: range }
  if (unit === 'metres') return { distanceM: range }
  if (unit === 'sets') return { sets: range }
  return { reps: range, ...(unit === 'breaths' && { repUnit: 'breath' as const }) }
}

function valueOf(said: string): number | null {
  const word = said.toLowerCase().replace('-', ' ')
  if (/^\d+$/.test(word)) return Number(word)
  const whole = NUMBER_VALUES[word]
  if (whole !== undefined) return whole
  const [tens, ones] = word.split(' ').map((one) => NUMBER_VALUES[one])
  return tens === undefined || ones === undefined ? null : tens + ones
}
