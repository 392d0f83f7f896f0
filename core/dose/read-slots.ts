/** The slots of a dose that one saying fills, from the amounts it kept. */
import type { Prescription, Range } from '../../shared/log-sheet.ts'
import type { Match, Piece } from './match-pattern.ts'

/** Seconds, or X for "as fast as you can". */
export type Phase = number | 'X'

export interface Slots {
  scheme?: Prescription['scheme']
  sets?: Range
  reps?: Range | 'max'
  repUnit?: Prescription['repUnit']
  repScheme?: number[]
  /** Seconds of work; of a hold. */
  work?: Range
  hold?: Range
  holdPer?: 'rep' | 'set'
  /** "per set", "per rep" stands in the words. */
  isHoldPerSaid?: true
  /** Metres. */
  distance?: Range
  /** Seconds from one start to the next, and seconds in all. */
  every?: Range
  total?: number
  rest?: Range
  restBetween?: Prescription['restBetween']
  phases?: { down?: Phase; pause?: Phase; up?: Phase; top?: Phase }
  tempo?: string
  perSide?: true
  /** "Ten each": each side, or in a group each exercise. */
  each?: true
  alternating?: true
  /** "Three times": sets of what was said, or repetitions; "repeat three times". */
  times?: Range
  repeats?: Range
  /** "Six of those": repetitions, or sets of what was said before. */
  many?: Range
  /** It is done once more: two sets where none are said. */
  again?: true
  /** A number that takes the slot of the one before it. */
  same?: Range
  /** "3 x 30" without a word for what is counted. */
  bare?: true
  load?: string
  effort?: string
  frequency?: string
  progression?: string
  open?: string
  approx?: true
}

/** What kept amounts say; `scales` of times go along in the fact. */
export function slotsOf(kept: Match['kept']): Slots {
  const slots: Slots = {}
  for (const [name, piece] of Object.entries(kept)) READ[name]?.(slots, piece, kept)
  if (Object.values(kept).some((piece) => piece.approx)) slots.approx = true
  return slots
}

type Reader = (slots: Slots, piece: Piece, kept: Match['kept']) => void

/** One reader for each name that sayings keep. */
const READ: Readonly<Record<string, Reader>> = {
  sets: (slots, piece) => (slots.sets = rangeOf(piece)),
  reps: (slots, piece) => (slots.reps = rangeOf(piece)),
  breaths: (slots, piece) => counted(slots, piece, 'breath'),
  strokes: (slots, piece) => counted(slots, piece, 'stroke'),
  cycles: (slots, piece) => counted(slots, piece, 'cycle'),
  lengths: (slots, piece) => counted(slots, piece, 'length'),
  work: (slots, piece, kept) => (slots.work = seconds(piece, kept['rest'])),
  seconds: (slots, piece) => (slots.work = rangeOf(piece)),
  hold: (slots, piece) => (slots.hold = rangeOf(piece)),
  // a hold in front is in seconds, and so is the letting go
  rest: (slots, piece, kept) => (slots.rest = kept['hold'] ? rangeOf(piece) : seconds(piece, kept['work'])),
  dist: (slots, piece) => (slots.distance = rangeOf(piece)),
  every: (slots, piece) => (slots.every = rangeOf(piece)),
  everyMinutes: (slots, piece) => (slots.every = { min: (piece.min ?? 0) * 60, max: (piece.max ?? 0) * 60 }),
  total: (slots, piece) => (slots.total = piece.min ?? piece.max ?? 0),
  list: (slots, piece) => listed(slots, piece.values ?? [piece.min ?? null, piece.max ?? null]),
  step1: (slots, _, kept) =>
    listed(
      slots,
      ['step1', 'step2', 'step3', 'step4', 'step5', 'more'].flatMap(
        (name) => kept[name]?.values ?? kept[name]?.min ?? [],
      ),
    ),
  climb: (slots, piece, kept) =>
    listed(slots, steps(piece.min === piece.max ? 1 : (piece.min ?? 1), piece.max ?? 1, kept['step']?.min ?? 1)),
  from: (slots, piece, kept) => listed(slots, steps(piece.min ?? 1, kept['to']?.min ?? 1)),
  bareSets: (slots, piece) => (slots.sets = rangeOf(piece)),
  bareReps: (slots, piece) => Object.assign(slots, { reps: rangeOf(piece), bare: true }),
  plural: (slots, piece) => Object.assign(slots, { reps: rangeOf(piece), bare: true }),
  times: (slots, piece) => (slots.times = rangeOf(piece)),
  repeats: (slots, piece) => (slots.repeats = rangeOf(piece)),
  many: (slots, piece) => (slots.many = rangeOf(piece)),
  same: (slots, piece) => (slots.same = rangeOf(piece)),
  workMost: (slots, piece, kept) => {
    const least = kept['workLeast']
    const factor = least?.tag === 'T' || (piece.max ?? 0) >= 60 ? 1 : 60
    slots.work = { min: least?.min == null ? null : least.min * factor, max: piece.max ?? null }
  },
  repsMost: (slots, piece, kept) => (slots.reps = { min: kept['repsLeast']?.min ?? null, max: piece.max ?? null }),
  workTo: (slots, piece, kept) => {
    const scale = piece.tag === 'N' ? (kept['work']?.scale ?? 1) : 1
    slots.work = { min: slots.work?.min ?? null, max: (piece.max ?? 0) * scale }
  },
  secondsUp: (slots, piece) => (slots.work = { min: null, max: piece.max ?? null }),
  workUp: (slots, piece) => (slots.work = { min: null, max: piece.max ?? null }),
  holdUp: (slots, piece) => (slots.hold = { min: null, max: piece.max ?? null }),
  repsTo: (slots, piece) => (slots.reps = { min: leastOf(slots.reps), max: piece.max ?? null }),
  repsFrom: (slots, piece) => (slots.reps = { min: piece.min ?? null, max: null }),
  repsUp: (slots, piece) => (slots.reps = { min: null, max: piece.max ?? null }),
  setsUp: (slots, piece) => (slots.sets = { min: null, max: piece.max ?? null }),
  down: (slots, piece) => phase(slots, 'down', piece),
  pause: (slots, piece) => phase(slots, 'pause', piece),
  up: (slots, piece) => phase(slots, 'up', piece),
  top: (slots, piece) => phase(slots, 'top', piece),
  pace: (slots, piece) => (slots.effort = `slow, ${numberText(piece)} s all the way`),
  tempo: (slots, piece) => (slots.tempo = tempoText(piece)),
  between: (slots, piece) => (slots.restBetween = BETWEEN[piece.tag] ?? 'sets'),
  percent: (slots, piece) => (slots.load = `${numberText(piece)} % 1RM`),
  kg: (slots, piece) => (slots.load = `${numberText(piece)} kg`),
  lb: (slots, piece) => (slots.load = `${numberText(piece)} lb`),
  pairKg: (slots, piece) => (slots.load = `2 x ${numberText(piece)} kg`),
  pairLb: (slots, piece) => (slots.load = `2 x ${numberText(piece)} lb`),
  colour: (slots, piece) => (slots.load = `${piece.tag} band`),
  rate: (slots, piece) => (slots.load = `rate ${numberText(piece)}`),
  load: (slots, piece) => (slots.load = piece.text ?? ''),
  effort: (slots, piece) => (slots.effort = piece.text ?? ''),
  frequency: (slots, piece) => (slots.frequency = piece.text ?? ''),
  progression: (slots, piece) => (slots.progression = piece.text ?? ''),
  open: (slots, piece) => (slots.open = piece.text ?? ''),
  rpe: (slots, piece) => (slots.effort = `RPE ${numberText(piece)}`),
  reserve: (slots, piece) => (slots.effort = `${numberText(piece)} in reserve`),
  borg: (slots, piece) => (slots.effort = `Borg ${numberText(piece)}`),
  zone: (slots, piece) => (slots.effort = `zone ${numberText(piece)}`),
  perWeek: (slots, piece) => (slots.frequency = often(piece, 'week')),
  perDay: (slots, piece) => (slots.frequency = often(piece, 'day')),
}

const BETWEEN: Readonly<Record<string, Prescription['restBetween']>> = {
  sets: 'sets',
  reps: 'reps',
  sides: 'sides',
  legs: 'sides',
  rounds: 'rounds',
  laps: 'rounds',
  stations: 'stations',
  exercises: 'stations',
}

function rangeOf(piece: Piece): Range {
  return { min: piece.min ?? null, max: piece.max ?? null }
}

function counted(slots: Slots, piece: Piece, unit: Prescription['repUnit']): void {
  slots.reps = rangeOf(piece)
  slots.repUnit = unit
}

/** "thirty seconds on, fifteen off": a bare number takes the unit of its partner; alone, one to five are minutes. */
function seconds(piece: Piece, partner: Piece | undefined): Range {
  if (piece.tag === 'T') return rangeOf(piece)
  const isSmall = (amount: Piece | undefined) => (amount?.max ?? 0) <= 5
  const isMinutes = isSmall(piece) && (partner?.tag === 'T' ? partner.scale === 60 : !partner || isSmall(partner))
  const scale = isMinutes ? 60 : 1
  return { min: piece.min == null ? null : piece.min * scale, max: piece.max == null ? null : piece.max * scale }
}

/** A list of repetitions holds whole numbers from one on; anything else is none. */
function listed(slots: Slots, values: readonly (number | null)[]): void {
  const reps = values.flatMap((value) => (value !== null && Number.isInteger(value) && value > 0 ? [value] : []))
  if (reps.length === values.length) slots.repScheme = reps
}

function leastOf(reps: Slots['reps']): number | null {
  return reps === undefined || reps === 'max' ? null : reps.min
}

function steps(from: number, to: number, by = 1): number[] {
  const step = from <= to ? by : -by
  return Array.from(
    { length: Math.min(Math.floor(Math.abs(to - from) / by), 99) + 1 },
    (_, index) => from + step * index,
  )
}

function phase(slots: Slots, name: 'down' | 'pause' | 'up' | 'top', piece: Piece): void {
  slots.phases = { ...slots.phases, [name]: piece.max ?? piece.min ?? 0 }
}

/** Four parts; X = as fast as you can, x = not said. A lone typed x means fast, several mean "not said". */
function tempoText(piece: Piece): string {
  const parts = piece.text?.split('-') ?? (piece.values ?? []).map(String)
  const isUnsaid = parts.filter((part) => part === 'x').length > 1
  const read = parts.map((part) => (part === '?' ? 'x' : part === 'x' && !isUnsaid ? 'X' : part))
  return [...read, 'x', 'x', 'x'].slice(0, 4).join('-')
}

function often(piece: Piece, unit: 'week' | 'day'): string {
  const count = piece.min === piece.max ? piece.min : null
  const words = count === 1 ? 'once' : count === 2 ? 'twice' : `${numberText(piece)} times`
  return `${words} a ${unit}`
}

/** "8", "8-10", "8+", "up to 8". */
function numberText(piece: Piece): string {
  const { min = null, max = null } = piece
  if (min === max) return String(min ?? 0)
  if (min === null) return `up to ${String(max)}`
  return max === null ? `${String(min)}+` : `${String(min)}-${String(max)}`
}
