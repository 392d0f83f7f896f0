/** Random doses for property tests: every field that written text can hold, alone and together. */
import fc from 'fast-check'
import { buildPrescription, RepUnit, RestBetween, type Prescription, type Range } from '../../../shared/log-sheet.ts'

/** Exactly, from-to, at least or at most. */
function range(least: number, most: number, step = 1): fc.Arbitrary<Range> {
  const value = fc.integer({ min: least, max: most }).map((count) => count * step)
  return fc.oneof(
    value.map((exact) => ({ min: exact, max: exact })),
    fc
      .tuple(value, value)
      .filter(([a, b]) => a !== b)
      .map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) })),
    value.map((min) => ({ min, max: null })),
    value.map((max) => ({ min: null, max })),
  )
}

const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null, freq: 2 })
const seconds = (most: number) => fc.oneof(range(1, most), range(1, 60, 60), range(1, 40, 5))
const words = fc.oneof(
  fc.string({ minLength: 1, maxLength: 30, unit: 'grapheme' }),
  fc.constantFrom(
    'add a rep each week',
    '10 more; then 5 x 5',
    'say "stop", then rest 60 s',
    'beginners: 3 x 10',
    'C:\\ 3',
  ),
)
const phase = fc.oneof(fc.integer({ min: 0, max: 12 }).map(String), fc.constantFrom('x', 'X'))
const level = fc.oneof(
  fc.constantFrom('beginners', 'advanced', 'intermediate', 'on your knees', 'Over 60s', '2nd "group"'),
  words,
)

const fields = fc
  .record({
    scheme: fc.constantFrom(...(['straight', 'superset', 'circuit', 'emom', 'amrap', 'ladder', 'interval'] as const)),
    sets: maybe(range(1, 12)),
    reps: maybe(fc.oneof(range(1, 120), fc.constant('max' as const))),
    repUnit: fc.constantFrom(...RepUnit.options),
    repScheme: maybe(fc.array(fc.integer({ min: 1, max: 150 }), { minLength: 1, maxLength: 8 })),
    workSeconds: maybe(seconds(900)),
    holdSeconds: maybe(seconds(200)),
    holdPer: fc.constantFrom('rep' as const, 'set' as const),
    distanceM: maybe(fc.oneof(range(1, 3000), range(1, 400, 0.5))),
    intervalSeconds: maybe(seconds(300)),
    perSide: fc.boolean(),
    restSeconds: maybe(seconds(600)),
    restBetween: maybe(fc.constantFrom(...RestBetween.options)),
    tempo: maybe(fc.tuple(phase, phase, phase, phase).map((phases) => phases.join('-'))),
    load: maybe(
      fc.oneof(fc.constantFrom('80 % 1RM', '12.5 kg', '2 x 15 lb', 'bodyweight', 'red band', 'rate 18-20'), words),
    ),
    effort: maybe(
      fc.oneof(fc.constantFrom('RPE 7-8', '2 in reserve', 'Borg 13', 'zone 2', 'all out', 'pulses'), words),
    ),
    frequency: maybe(fc.oneof(fc.constantFrom('3 times a week', 'twice a day', 'every day', 'most days'), words)),
    progression: maybe(words),
    open: maybe(words),
    approx: fc.boolean(),
    unsure: fc.boolean(),
  })
  .map(tidy)
  .filter(isSomething)

/** A dose without levels or parts that follow. */
const plain = fields.map((values) => buildPrescription(values))

/** Any dose, with up to two levels and two parts that follow, each of these one deep again. */
export const anyDose: fc.Arbitrary<Prescription> = fc
  .tuple(plain, withParts(withParts(plain, 0), 1), fc.integer({ min: 0, max: 3 }))
  .map(([simple, deep, pick]) => (pick === 0 ? deep : simple))

function withParts(inner: fc.Arbitrary<Prescription>, least: number): fc.Arbitrary<Prescription> {
  return fc
    .tuple(
      plain,
      fc.array(inner, { minLength: least, maxLength: 2 }),
      fc.uniqueArray(fc.record({ level, dose: inner }), { maxLength: 2, selector: (one) => one.level }),
    )
    .map(([dose, then, byLevel]) => ({ ...dose, then, byLevel }))
}

/** Takes out what contradicts itself, such as a hold per nothing or a list beside repetitions. */
function tidy(values: Partial<Prescription>): Partial<Prescription> {
  const dose = { ...values }
  if (dose.scheme === 'amrap') Object.assign(dose, { reps: 'max', repScheme: null })
  if (dose.scheme === 'ladder' || dose.repScheme) dose.reps = null
  if (!dose.reps || dose.reps === 'max') dose.repUnit = 'rep'
  if (!dose.holdSeconds) dose.holdPer = null
  if (!dose.restSeconds) dose.restBetween = null
  if (dose.scheme === 'emom')
    Object.assign(dose, { intervalSeconds: dose.intervalSeconds ?? { min: 60, max: 60 }, workSeconds: null })
  return dose
}

/** A weight, a side or a scheme alone is no dose; some work is. */
function isSomething({ sets, reps, repScheme, workSeconds, holdSeconds, distanceM }: Partial<Prescription>): boolean {
  return [sets, reps, repScheme, workSeconds, holdSeconds, distanceM].some((value) => value != null)
}
