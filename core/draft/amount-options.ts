/** Every amount that may be the dose of an exercise, with what speaks for each. */
import type { Prescription, Range } from '../../shared/log-sheet.ts'
import { amountKindOf, Answers, asBefore, keyOf, sizeOf, told as toldIn } from './dose-option.ts'
import type { DoseCase, DoseOption } from './dose-option.ts'
import type { DoseHit } from './find-dose-hits.ts'
import { stemOf } from './tie-sayings.ts'
import { WHILE_TAUGHT } from './tie-turns.ts'
import type { Told } from './gather-sayings.ts'
import { levelMarks, linkOf } from './level-spans.ts'
import { AMOUNT_KINDS, fieldsIn, OF_LATER_ROUND, SAID_BEFORE } from './mark-sayings.ts'
import type { AmountKind } from './mark-sayings.ts'
import { across } from './join-ranges.ts'
import { metresInName } from './name-tells.ts'
import { plainWords } from './split-speech.ts'
import { AS_MANY, COUNTED, COUNTS_NO_SECONDS, FOR_WHOM, ON_OFF } from './words/en/saying-words.ts'

/** Every amount told for an exercise: reps, metres, seconds moved or held. @param before the answers chosen for the one before */
export function amountOptions(asked: DoseCase, before: readonly DoseOption[]): DoseOption[] {
  const { told, ruled, scheme } = asked
  const answers = new Answers()
  const taken = takenBack(told)
  for (const one of told) if (!taken.some((value) => saysOf(one.saying.hit, value))) addAmounts(asked, answers, one)
  addSpans(asked, answers)
  const metres = metresInName(asked.teaching)
  if (metres) answers.add('distanceM', metres, { how: 'named', told: null, marks: ['alone'] })
  const kind = ruled ? amountKindOf(ruled) : null
  const value = kind === null ? null : (ruled?.[kind] ?? null)
  const ruledKey = kind === null || value === null ? '' : keyOf(kind, value)
  if (kind !== null && value !== null) answers.add(kind, value, { how: 'ruled', told: null, marks: ['alone'] })
  const main = told.filter(({ place, saying }) => place === 'main' && amountKindOf(saying.hit.dose) !== null)
  return answers.all(
    (option) => marksOfAmount(asked, option, { before, ruledKey }),
    [
      'none',
      `none main ${String(Math.min(MANY, main.length))}`,
      `none sure ${String(main.some(({ saying }) => !saying.hit.bare))}`,
      ...(ruledKey === '' ? [] : ['none though ruled']),
      ...(scheme ? [`none in ${scheme}`] : []),
    ],
  )
}

/** "I said ten earlier, make that eight": where both are of the exercise, nobody means ten. */
function takenBack(all: readonly Told[]): Range[] {
  return all.flatMap(({ saying }) => {
    const { reps } = saying.hit.dose
    if (!saying.marks.includes(SAID_BEFORE) || reps === null || reps === 'max') return []
    const isPutRight = all.some(({ owned, saying: { hit } }) => {
      const gap = hit.offset - saying.hit.end
      return owned && hit.corrects && gap >= 0 && gap <= NEAR_CHARACTERS && !saysOf(hit, reps)
    })
    return isPutRight ? [reps] : []
  })
}

function saysOf({ dose }: DoseHit, value: Range): boolean {
  return AMOUNT_KINDS.some((kind) => {
    const own = dose[kind]
    return own !== null && own !== 'max' && own.min === value.min && own.max === value.max
  })
}

function addAmounts(asked: DoseCase, answers: Answers, told: Told): void {
  const { hit } = told.saying
  const { dose } = hit
  for (const kind of AMOUNT_KINDS) {
    const rungs = kind === 'reps' && dose.reps === null ? rungsOf(dose.repScheme) : null
    const value = dose[kind] ?? rungs
    if (value === null) continue
    const marks = [`${kind} of ${fieldsIn(dose)}`, ...stillMarks(asked, kind), ...(rungs ? ['rungs'] : [])]
    const said = asked.speech.text.slice(hit.offset, hit.end)
    const isNumber = kind === 'reps' && dose.repUnit === 'rep' && !COUNTS_NO_SECONDS.test(said)
    const marksOfNumber = isNumber && value !== 'max' ? numberMarks(asked, value, hit) : null
    if (marksOfNumber && !COUNTED.test(said)) marks.push(...marksOfNumber)
    answers.add(kind, value, { how: kind === 'holdSeconds' && dose.reps !== null ? 'in rep' : 'said', told, marks })
    if (value === 'max') continue
    if (kind === 'workSeconds') answers.add('holdSeconds', value, { how: 'as hold', told, marks: [] })
    if (kind === 'workSeconds' && isForAsMany(asked, hit))
      answers.add('reps', 'max', { how: 'as many', told, marks: [] })
    if (kind === 'holdSeconds') answers.add('workSeconds', value, { how: 'as work', told, marks: [] })
    if (kind !== 'reps' && dose.sets !== null && dose.reps === null && (dose.sets.max ?? 0) > MOST_SETS)
      answers.add('reps', dose.sets, { how: 'sets as reps', told, marks: [`beside ${kind}`] })
    if (!marksOfNumber) continue
    answers.add('workSeconds', value, { how: 'as seconds', told, marks: marksOfNumber })
    const minutes = asMinutes(asked, told, value)
    if (minutes) answers.add('workSeconds', minutes, { how: 'as minutes', told, marks: [] })
    answers.add('holdSeconds', value, { how: 'as seconds held', told, marks: marksOfNumber })
  }
  for (const level of dose.byLevel)
    for (const kind of AMOUNT_KINDS)
      if (level.dose[kind] !== null) answers.add(kind, level.dose[kind], { how: 'level', told, marks: [] })
}

/** "It says eight minutes, call it six": what takes back a number of minutes is one of minutes. */
function asMinutes({ told }: DoseCase, { place, saying }: Told, { min, max }: Range): Range | null {
  const { hit, instead } = saying
  if ((place !== 'main' && place !== 'return') || !(instead || hit.corrects)) return null
  const isMinutes = told.some(({ saying: { hit: other } }) => {
    const gap = hit.offset - other.end
    const seconds = other.dose.workSeconds?.min ?? 0
    return gap >= 0 && gap <= NEAR_CHARACTERS && seconds >= 60 && seconds % 60 === 0
  })
  if (!isMinutes || min === null || max === null) return null
  return { min: min * 60, max: max * 60 }
}

/** From the lowest rung to the highest. */
function rungsOf(rungs: readonly number[] | null): Range | null {
  return rungs && rungs.length > 1 ? { min: Math.min(...rungs), max: Math.max(...rungs) } : null
}

/** A number that may be one of seconds: of what is held or moved, how great, and whether in whole fives. */
function numberMarks({ still, teaching, speech }: DoseCase, { min, max }: Range, hit: DoseHit): string[] {
  const isFives = [min, max].every((value) => value !== null && value >= 10 && value % 5 === 0)
  const known = teaching.entry ? (teaching.entry.still ? 'known still' : 'known moving') : 'unknown'
  const manner = still ? 'held' : 'moved'
  const isOnOff = ON_OFF.test(plainWords(speech.text.slice(hit.offset, hit.end + ON_OFF_CHARACTERS)))
  return [
    ...[manner, known, isFives ? 'in fives' : 'not in fives'],
    `${manner} ${isFives ? 'in fives' : 'not in fives'}`,
    `${manner} ${sizeOf({ min: max, max })}`,
    ...(isOnOff ? ['on and off'] : []),
  ]
}

/** Characters. */
const ON_OFF_CHARACTERS = 30

function stillMarks(asked: DoseCase, kind: AmountKind): string[] {
  const isTime = kind === 'workSeconds' || kind === 'holdSeconds'
  return isTime ? [`${kind} ${asked.still ? 'still' : 'moving'}`] : []
}

/** Whether as many are done as can be in a time, read once for all exercises that ask. */
function isForAsMany({ speech: { text } }: DoseCase, hit: DoseHit): boolean {
  const known = FOR_AS_MANY.get(hit)
  if (known !== undefined) return known
  const isSo = AS_MANY.test(plainWords(text.slice(Math.max(0, hit.offset - AROUND), hit.end + AROUND)))
  FOR_AS_MANY.set(hit, isSo)
  return isSo
}

const FOR_AS_MANY = new WeakMap<DoseHit, boolean>()

/** Characters. */
const AROUND = 70

/** From one amount to another of the same kind: levels, and sets that differ. */
function addSpans(asked: DoseCase, answers: Answers): void {
  for (const kind of AMOUNT_KINDS) {
    const ends = asked.told.flatMap((told) => endOf(told, kind))
    ends.forEach((first, at) => {
      for (const second of ends.slice(at + 1, at + MOST_SPANS)) {
        const value = inMinutes(first, second, kind) ?? second.value
        const range = across(first.value, value)
        const isNew = [first.value, value].every((one) => one.min !== range.min || one.max !== range.max)
        const marks = isNew && (first.isKind || second.isKind) ? spanMarks(asked, kind, first, second) : null
        if (marks && value !== second.value) marks.push('of minutes')
        if (marks) answers.add(kind, range, { how: 'span', told: second.told, marks })
      }
    })
  }
}

/** "Two minutes, or up to five": what follows minutes is minutes. */
function inMinutes(first: SpanEnd, second: SpanEnd, kind: AmountKind): Range | null {
  const isTime = kind === 'workSeconds' || kind === 'holdSeconds'
  const seconds = first.value.min ?? 0
  const { min, max } = second.value
  if (!isTime || !first.isKind || second.isKind || seconds < 60 || seconds % 60 !== 0) return null
  return min === null || max === null || max > MOST_MINUTES ? null : { min: min * 60, max: max * 60 }
}

const MOST_MINUTES = 20

function spanMarks(asked: DoseCase, kind: AmountKind, first: SpanEnd, second: SpanEnd): string[] | null {
  const [a, b] = [first.told.saying.hit, second.told.saying.hit]
  const gap = b.offset - a.end
  if ((a.loose ?? b.loose) && gap > NEAR_CHARACTERS && !isLaterRound(second.told)) return null
  const between = gap < NEAR_CHARACTERS ? plainWords(asked.speech.text.slice(a.end, b.offset)) : null
  const isRising = (first.value.min ?? 0) < (second.value.min ?? 0)
  const isLater = isLaterRound(second.told)
  const behind = plainWords(asked.speech.text.slice(b.end, b.end + AROUND))
  return [
    `of ${kind}`,
    ...(FOR_WHOM.test(behind) ? ['then for whom', `by ${linkOf(between)}, for whom`] : []),
    ...levelMarks(first.told, second.told),
    ...(isLater
      ? ['in a later round', `in a later round, ${isInterval(first.told) ? 'interval' : 'no interval'}`]
      : []),
    ...(isLater && asked.members.length > 0 ? ['in a later round, in turns'] : []),
    `by ${linkOf(between)}`,
    `${a.loose ? 'loose' : 'sure'} ${b.loose ? 'loose' : 'sure'}`,
    isRising ? 'rising' : 'falling',
    ...(isInterval(first.told) && isInterval(second.told) ? ['of intervals'] : []),
  ]
}

function marksOfAmount(
  asked: DoseCase,
  option: DoseOption,
  { before, ruledKey }: { before: readonly DoseOption[]; ruledKey: string },
): string[] {
  const { kind, value, key, rows } = option
  const { teaching, still, scheme, near } = asked
  const name = String(kind)
  const marks = [
    `kind ${name}`,
    `${name} ${sizeOf(value)}`,
    `times said ${String(Math.min(MANY + 1, toldIn(rows).length))}`,
  ]
  marks.push(...asBefore(option, before, asked.scheme))
  for (const movement of teaching.entry?.movements ?? []) marks.push(`${movement} ${name}`)
  marks.push(`called ${stemOf(teaching.name.split(' ').at(-1) ?? '')} ${name}`)
  if (toldIn(rows).some(({ saying }) => saying.marks.includes(SAID_BEFORE))) marks.push(SAID_BEFORE)
  if (still) marks.push(`still ${name}`)
  if (teaching.entry) marks.push(`known ${name}`)
  if (teaching.entry?.still === true) marks.push(`known still ${name}`)
  if (scheme) marks.push(`${scheme} ${name}`)
  if (near.some((dose) => keyIn(dose, kind) === key)) marks.push(`as neighbour ${name}`)
  if (key !== ruledKey) return marks
  marks.push('ruled', `ruled ${name}`, ...new Set(toldIn(rows).map(({ place }) => `ruled ${place}`)))
  return marks
}

const MANY = 3
/** Nobody does more sets than these, as far as they are told without their name. */
const MOST_SETS = 4
const NEAR_CHARACTERS = 120
/** An amount is joined with so many behind it. */
const MOST_SPANS = 8

function keyIn(dose: Prescription, kind: DoseOption['kind']): string | null {
  const known = AMOUNT_KINDS.find((one) => one === kind)
  const value = known === undefined ? null : dose[known]
  return value === null ? null : keyOf(kind, value)
}

interface SpanEnd {
  told: Told
  value: Range
  /** It says the kind of amount itself. */
  isKind: boolean
}

/** One end of a span of amounts; a number without a unit may be of any kind. */
function endOf(one: Told, kind: AmountKind): SpanEnd[] {
  const { dose, loose } = one.saying.hit
  const time = kind === 'holdSeconds' ? dose.workSeconds : kind === 'workSeconds' ? dose.holdSeconds : null
  const own = dose[kind] ?? time
  const value = own ?? (loose && dose.workSeconds === null && dose.distanceM === null ? dose.reps : null)
  if (value === null || value === 'max') return []
  const isNear =
    one.owned ||
    one.place === 'main' ||
    one.place === 'return' ||
    isInterval(one) ||
    isLaterRound(one) ||
    isOfGroup(one)
  return isNear ? [{ told: one, value, isKind: own !== null }] : []
}

function isInterval({ saying }: Told): boolean {
  const { workSeconds, restSeconds } = saying.hit.dose
  return workSeconds !== null && restSeconds !== null
}

/** A time told while those are taught that go in turns. */
function isOfGroup({ saying, marks }: Told): boolean {
  return saying.hit.dose.workSeconds !== null && marks.includes(WHILE_TAUGHT)
}

/** Said of a later round of those that go in turns, or of the sets behind. */
function isLaterRound({ saying, marks }: Told): boolean {
  return saying.marks.includes(OF_LATER_ROUND) && !marks.includes('before')
}
