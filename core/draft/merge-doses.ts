/** Builds the one dose of an exercise from everything said about it: later words fill gaps, corrections replace. */
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription } from '../../shared/log-sheet.ts'
import type { DoseHit } from './find-dose-hits.ts'

/** Fields that say how much work is done; at most one kind of work stands in a dose, a hold inside a rep apart. */
const AMOUNTS = ['reps', 'workSeconds', 'holdSeconds', 'distanceM', 'repScheme'] as const
const OTHERS = [
  'sets',
  'restSeconds',
  'restBetween',
  'tempo',
  'intervalSeconds',
  'load',
  'effort',
  'frequency',
  'progression',
] as const

/** The dose of all hits in order, or null when none says an amount. @param still held still rather than repeated */
export function mergeDoses(hits: readonly DoseHit[], still: boolean): Prescription | null {
  let merged: Prescription | null = null
  const used: DoseHit[] = []
  for (const hit of withoutEarlier(asRounds(hits))) {
    const next: Prescription = merged ? addHit(merged, hit) : hit.dose
    if (!merged || JSON.stringify(next) !== JSON.stringify(merged)) used.push(hit)
    merged = next
  }
  merged = merged && asCounted(merged, used)
  if (!merged || !hasWork(merged)) return null
  const said = [...used].sort((a, b) => weight(b) - weight(a)).map((hit) => hit.quote)
  const open = asRepeats(upToAdvanced(withoutTarget(merged)))
  const dose = asLadder(still ? withoutCount(asHold(open)) : open)
  const sure = dose.unsure ? 0.5 : 0.8
  return buildPrescription({ ...dose, said, origin: 'draft', state: 'proposed', confidence: sure, ruleId: 'dose-said' })
}

/** "Two goes at it, eight a side": how often, said in front of how much. */
function asRounds(hits: readonly DoseHit[]): DoseHit[] {
  return hits.map((hit, index) => {
    const { reps, sets } = hit.dose
    const isOften = /\b(?:twice|thrice|times|goes|rounds)\b/i.test(hit.quote.text) && isOnly(hit.dose, 'reps')
    if (!isOften || reps === null || reps === 'max' || sets !== null || (reps.max ?? Infinity) > MOST_ROUNDS) return hit
    const isBefore = hits.slice(index + 1).some(({ dose, bare }) => !bare && hasWork(dose) && dose.sets === null)
    return isBefore ? { ...hit, dose: buildPrescription({ sets: reps, perSide: hit.dose.perSide }) } : hit
  })
}

const MOST_ROUNDS = 6

/** "Thirty seconds. That's optimistic: twenty seconds, three goes": what is said with its sets replaces the amount alone. */
function withoutEarlier(hits: readonly DoseHit[]): DoseHit[] {
  const full = hits.find(({ dose }) => dose.sets !== null && SINGLE.some((field) => dose[field] !== null))
  const field = full && SINGLE.find((one) => full.dose[one] !== null)
  if (!full || !field) return [...hits]
  return hits.filter((hit) => {
    const isEarlier = hit.offset < full.offset && full.offset - hit.offset <= NEAR_CHARACTERS
    return !(
      isEarlier &&
      isOnly(hit.dose, field) &&
      JSON.stringify(hit.dose[field]) !== JSON.stringify(full.dose[field])
    )
  })
}

const SINGLE = ['reps', 'workSeconds', 'holdSeconds', 'distanceM'] as const
const NEAR_CHARACTERS = 200

/** The dose says this and nothing else of how much, how often or how long between. */
function isOnly(dose: Prescription, field: (typeof SINGLE)[number]): boolean {
  const others = [...AMOUNTS, 'sets', 'restSeconds', 'tempo'] as const
  return dose[field] !== null && others.every((one) => one === field || dose[one] === null)
}

/** True when the dose says how much: sets alone or a rest alone is none. */
export function hasWork(dose: Prescription): boolean {
  return (
    AMOUNTS.some((field) => dose[field] !== null) ||
    dose.open !== null ||
    dose.then.length > 0 ||
    dose.byLevel.length > 0
  )
}

function addHit(dose: Prescription, hit: DoseHit): Prescription {
  const next: Prescription = { ...dose, byLevel: [...dose.byLevel], then: [...dose.then] }
  const fresh = asTimes(dose, hit)
  if (isHalf(dose, fresh)) return { ...next, reps: fresh.reps, perSide: true }
  const replaces = hit.corrects && AMOUNTS.some((field) => fresh[field] !== null && dose[field] !== null)
  if (replaces) for (const field of AMOUNTS) if (fresh[field] !== null) Object.assign(next, { [field]: fresh[field] })
  const hadWork = AMOUNTS.some((field) => dose[field] !== null)
  for (const field of AMOUNTS) {
    const fits =
      !hadWork || field === 'holdSeconds' || (field === 'reps' && dose.reps === null && dose.holdSeconds !== null)
    if (next[field] === null && fresh[field] !== null && fits) Object.assign(next, { [field]: fresh[field] })
  }
  if (!hadWork && fresh.reps !== null) next.repUnit = fresh.repUnit
  if (next.holdSeconds !== null && fresh.holdSeconds !== null) next.holdPer ??= fresh.holdPer
  for (const field of OTHERS) {
    if (fresh[field] !== null && (next[field] === null || hit.corrects)) Object.assign(next, { [field]: fresh[field] })
  }
  if (next.scheme === 'straight') next.scheme = fresh.scheme
  next.perSide ||= fresh.perSide && !isTempoOnly(fresh)
  next.approx ||= fresh.approx
  next.open ??= fresh.open
  if (next.byLevel.length === 0) next.byLevel = [...fresh.byLevel]
  if (next.then.length === 0 && !hadWork) next.then = [...fresh.then]
  next.why = [...new Set([...dose.why, ...fresh.why])]
  return next
}

/** "Twelve in total, so six a side": the half of what was said, on each side. */
function isHalf(dose: Prescription, fresh: Prescription): boolean {
  if (dose.reps === null || dose.reps === 'max' || fresh.reps === null || fresh.reps === 'max') return false
  return !dose.perSide && fresh.perSide && fresh.reps.max !== null && dose.reps.max === fresh.reps.max * 2
}

/** A hold of a few seconds done many times is held in each rep; a long one a few times is held in each set. */
const SHORT_HOLD_SECONDS = 12
const MANY_TIMES = 4

/** Timed or measured pieces are done up to so often. */
const MOST_PIECES = 12

/** "Twice" or "three times" behind a hold or a timed piece counts its sets. */
function asTimes(dose: Prescription, hit: DoseHit): Prescription {
  const { reps, sets } = hit.dose
  const isFew = dose.holdPer === 'set' && /\bof (?:them|those|these)\b/i.test(hit.quote.text)
  const isTimes = isFew || /\b(?:once|twice|thrice|times|goes|rounds?)\b/i.test(hit.quote.text)
  // "Ten seconds each, ... we'll do six": a count behind timed or measured work counts the pieces.
  const isPieces =
    (dose.workSeconds !== null || dose.distanceM !== null) &&
    dose.reps === null &&
    reps !== null &&
    reps !== 'max' &&
    (reps.max ?? Infinity) <= MOST_PIECES &&
    hit.dose.workSeconds === null &&
    hit.dose.distanceM === null
  const counted =
    dose.holdSeconds !== null || dose.workSeconds !== null || dose.distanceM !== null || dose.reps !== null
  if (!(isTimes || isPieces) || !counted || reps === null || reps === 'max' || sets !== null) return hit.dose
  const isShortHold = (dose.holdSeconds?.max ?? 0) > 0 && (dose.holdSeconds?.max ?? 0) <= SHORT_HOLD_SECONDS
  if (isShortHold && (reps.min ?? 0) >= MANY_TIMES) return { ...hit.dose, holdPer: 'rep' }
  return { ...hit.dose, sets: reps, reps: null }
}

/** "Six rounds" of a movement with nothing else said counts the movement itself. */
function asCounted(dose: Prescription, used: readonly DoseHit[]): Prescription {
  const isRounds = used.some(({ quote }) => /\b(?:rounds?|times|goes)\b/i.test(quote.text))
  return dose.sets === null || hasWork(dose) || !isRounds ? dose : { ...dose, reps: dose.sets, sets: null }
}

/** A ladder said step by step ("one each side, then two, then three") as one scheme. */
function asLadder(dose: Prescription): Prescription {
  if (dose.repScheme !== null && dose.reps === null)
    return { ...dose, reps: { min: Math.min(...dose.repScheme), max: Math.max(...dose.repScheme) } }
  const steps = [dose, ...dose.then].flatMap(({ reps }) =>
    reps !== null && reps !== 'max' && reps.min !== null ? [reps.min] : [],
  )
  if (dose.scheme !== 'ladder' || dose.then.length === 0 || steps.length !== dose.then.length + 1) return dose
  return { ...dose, reps: { min: Math.min(...steps), max: Math.max(...steps) }, repScheme: steps, then: [] }
}

/** "Ten seconds, build up to twenty": the target is no count beside a time. */
function withoutTarget(dose: Prescription): Prescription {
  const isTarget = dose.reps !== null && dose.reps !== 'max' && dose.reps.min === null && dose.progression !== null
  return isTarget && (dose.workSeconds ?? dose.holdSeconds) ? { ...dose, reps: null } : dose
}

/** "Forty-five seconds, a minute if you're brave": from the one up to the other. */
function upToAdvanced(dose: Prescription): Prescription {
  const more = dose.byLevel.find(({ level }) => level === 'advanced')?.dose
  if (!more) return dose
  const next: Prescription = { ...dose }
  for (const field of ['reps', 'workSeconds', 'holdSeconds', 'distanceM'] as const) {
    const [base, most] = [dose[field], more[field]]
    if (base === null || base === 'max' || most === null || most === 'max') continue
    if ((most.max ?? 0) > (base.max ?? 0)) Object.assign(next, { [field]: { min: base.min, max: most.max } })
  }
  return next
}

/** A distance from here on, done several times with rest, is an interval session (common practice, no source). */
const LEAST_INTERVAL_M = 100

/** "Three times 500 metres, two minutes rest" are intervals. */
function asRepeats(dose: Prescription): Prescription {
  const isFar = (dose.distanceM?.min ?? 0) >= LEAST_INTERVAL_M
  return isFar && dose.sets && dose.restSeconds && dose.scheme === 'straight' ? { ...dose, scheme: 'interval' } : dose
}

function isTempoOnly(dose: Prescription): boolean {
  return dose.tempo !== null && !hasWork(dose)
}

/** What is held still: its seconds of work are a hold. */
export function asHold(dose: Prescription): Prescription {
  if (dose.workSeconds === null || dose.holdSeconds !== null) return dose
  return { ...dose, workSeconds: null, holdSeconds: dose.workSeconds, holdPer: 'set' }
}

/** "Hold it for fifteen. Fifteen, each foot in front": a long hold is not also counted so often. */
function withoutCount(dose: Prescription): Prescription {
  const { reps, holdSeconds } = dose
  const isLong = (holdSeconds?.min ?? 0) >= LONG_HOLD_SECONDS
  const isMany = reps !== null && reps !== 'max' && (reps.min ?? 0) >= MANY_TIMES
  return isLong && isMany ? { ...dose, reps: null } : dose
}

const LONG_HOLD_SECONDS = 10

/** How much a phrase says: the fields it fills. */
function weight(hit: DoseHit): number {
  const amounts = AMOUNTS.filter((field) => hit.dose[field] !== null).length
  const others = OTHERS.filter((field) => hit.dose[field] !== null).length
  return amounts * 3 + others + (hit.dose.perSide ? 1 : 0) + (hit.corrects ? 2 : 0)
}
