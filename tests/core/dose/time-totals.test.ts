// Totals of any dose against a class played through: each set, side, repetition and rest one after the other.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { entryById } from '../../../core/catalogue/catalogue.ts'
import type { Region } from '../../../core/catalogue/entry.ts'
import { setsByRegion } from '../../../core/dose/count-sets.ts'
import { brzycki, epley, estimateOneRepMax } from '../../../core/dose/estimate-effort.ts'
import { TIME_ASSUMPTIONS, timeDose, timeRoutine, timeUnderTension, totalReps } from '../../../core/dose/time-dose.ts'
import { buildPrescription } from '../../../shared/log-sheet.ts'

const exactly = (value: number) => ({ min: value, max: value })
const small = fc.integer({ min: 1, max: 6 })

/** A dose of exact numbers, as the player below understands it. */
interface Plain {
  sets: number | null
  reps: number | number[]
  tempo: number[]
  holdPerRep: number
  sides: 1 | 2
  rest: number
  parts: number[]
}
const plain: fc.Arbitrary<Plain> = fc.record({
  sets: fc.option(small),
  reps: fc.oneof(small, fc.array(small, { minLength: 2, maxLength: 4 })),
  tempo: fc.array(fc.integer({ min: 0, max: 5 }), { minLength: 4, maxLength: 4 }),
  holdPerRep: fc.integer({ min: 0, max: 4 }),
  sides: fc.constantFrom(1 as const, 2 as const),
  rest: fc.integer({ min: 0, max: 90 }),
  parts: fc.array(small, { maxLength: 2 }),
})

const doseOf = ({ sets, reps, tempo, holdPerRep, sides, rest, parts }: Plain) =>
  buildPrescription({
    sets: Array.isArray(reps) || sets === null ? null : exactly(sets),
    ...(Array.isArray(reps) ? { repScheme: reps } : { reps: exactly(reps) }),
    tempo: tempo.join('-'),
    ...(holdPerRep > 0 && { holdSeconds: exactly(holdPerRep), holdPer: 'rep' as const }),
    perSide: sides === 2,
    restSeconds: exactly(rest),
    then: parts.map((count) => buildPrescription({ reps: exactly(count), tempo: '1-0-1-0' })),
  })

/** The class as it goes, second by second. */
function play({ sets, reps, tempo, holdPerRep, sides, rest, parts }: Plain) {
  const bySet = Array.isArray(reps) ? reps : Array.from({ length: sets ?? 1 }, () => reps)
  let time = 0
  let tension = 0
  let done = 0
  bySet.forEach((count, set) => {
    if (set > 0) time += rest
    for (let side = 0; side < sides; side++) {
      if (side > 0) time += TIME_ASSUMPTIONS.swapSeconds
      for (let rep = 0; rep < count; rep++) {
        for (const phase of [...tempo, holdPerRep]) {
          time += phase
          tension += phase
        }
        done++
      }
      for (const part of parts) {
        for (let rep = 0; rep < part; rep++) {
          time += 2
          tension += 2
          done++
        }
      }
    }
  })
  return { time, tension, done, sets: bySet.length }
}

describe('any dose', () => {
  it('takes the time, the tension and the repetitions that playing it through takes', () => {
    fc.assert(
      fc.property(plain, (one) => {
        const dose = doseOf(one)
        const { time, tension, done } = play(one)
        expect(timeDose(dose).seconds).toEqual(exactly(time))
        expect(timeUnderTension(dose).seconds).toEqual(exactly(tension))
        expect(totalReps(dose)).toEqual(exactly(done))
      }),
      { numRuns: 500, seed: 7 },
    )
  })

  it('takes no less with the last rest, and no less than its tension', () => {
    fc.assert(
      fc.property(plain, (one) => {
        const dose = doseOf(one)
        const without = timeDose(dose).seconds?.max ?? NaN
        expect(timeDose(dose, { countLastRest: true }).seconds?.max).toBe(without + one.rest)
        expect(timeUnderTension(dose).seconds?.max).toBeLessThanOrEqual(without)
      }),
      { numRuns: 200, seed: 7 },
    )
  })

  it('never has its least above its most, whatever the ranges', () => {
    const range = fc.tuple(small, small).map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) }))
    fc.assert(
      fc.property(range, range, range, fc.boolean(), (sets, reps, restSeconds, perSide) => {
        const dose = buildPrescription({ sets, reps, restSeconds, perSide })
        for (const amount of [timeDose(dose).seconds, timeUnderTension(dose).seconds, totalReps(dose)]) {
          expect(amount?.min).toBeLessThanOrEqual(amount?.max ?? NaN)
        }
        // both ends of the range, each done alone
        const least = buildPrescription({
          sets: exactly(sets.min),
          reps: exactly(reps.min),
          restSeconds: exactly(restSeconds.min),
          perSide,
        })
        const most = buildPrescription({
          sets: exactly(sets.max),
          reps: exactly(reps.max),
          restSeconds: exactly(restSeconds.max),
          perSide,
        })
        expect(timeDose(dose).seconds).toEqual({ min: timeDose(least).seconds?.min, max: timeDose(most).seconds?.max })
      }),
      { numRuns: 200, seed: 7 },
    )
  })
})

describe('any routine', () => {
  it('takes its doses one after the other, with the way between them', () => {
    fc.assert(
      fc.property(fc.array(plain, { minLength: 1, maxLength: 6 }), (list) => {
        const played = list.map((one) => play(one).time).reduce((a, b) => a + b, 0)
        const ways = (list.length - 1) * TIME_ASSUMPTIONS.transitionSeconds
        expect(timeRoutine(list.map(doseOf)).seconds).toEqual(exactly(played + ways))
      }),
      { numRuns: 200, seed: 7 },
    )
  })

  const regions: readonly Region[] = ['legs', 'hips', 'back', 'chest', 'arms']
  const item = fc.record({ one: plain, regions: fc.array(fc.constantFrom(...regions), { maxLength: 4 }) })

  it('has as many sets a region as its exercises there have, whatever their order', () => {
    fc.assert(
      fc.property(fc.array(item, { maxLength: 8 }), (list) => {
        const routine = list.map(({ one, regions: worked }) => ({ regions: worked, dose: doseOf(one) }))
        const counted = setsByRegion(routine)
        for (const region of regions) {
          const sets = list.filter((each) => each.regions.includes(region)).map(({ one }) => play(one).sets)
          const total = sets.reduce((a, b) => a + b, 0)
          expect(counted.find((each) => each.region === region)?.sets ?? exactly(0)).toEqual(exactly(total))
        }
        expect(setsByRegion(routine.toReversed())).toEqual(counted)
      }),
      { numRuns: 200, seed: 7 },
    )
  })

  it('counts by the regions of the catalogue, a set on each side once, and nothing without a dose', () => {
    const regionsOf = (id: string) => entryById(id)?.regions ?? []
    const bridge = {
      regions: regionsOf('glute-bridge'),
      dose: buildPrescription({ sets: exactly(3), reps: exactly(10) }),
    }
    const clam = {
      regions: regionsOf('clam'),
      dose: buildPrescription({ sets: { min: 2, max: 3 }, reps: exactly(10), perSide: true }),
    }
    const open = { regions: regionsOf('glute-bridge'), dose: null }
    const hips = setsByRegion([bridge, clam, open]).find(({ region }) => region === 'hips')
    expect(hips).toEqual({ region: 'hips', sets: { min: 5, max: 6 } })
    expect(setsByRegion([open])).toEqual([])
  })
})

// Epley 1985, Brzycki 1993: both rise with the load and with the repetitions, and meet at ten.
describe('any estimate of one repetition', () => {
  const load = fc.integer({ min: 1, max: 400 })
  const reps = fc.integer({ min: 2, max: 36 })

  it('is never below the load, rises with repetitions and grows as the load does', () => {
    fc.assert(
      fc.property(load, reps, (w, r) => {
        for (const formula of ['epley', 'brzycki'] as const) {
          const value = estimateOneRepMax(w, r, formula).value ?? NaN
          expect(value).toBeGreaterThan(w)
          expect(value).toBeGreaterThan(estimateOneRepMax(w, r - 1, formula).value ?? NaN)
          expect(estimateOneRepMax(2 * w, r, formula).value).toBeCloseTo(2 * value, 6)
          expect(estimateOneRepMax(w, r, formula).isUnsound).toBe(r > 10)
        }
      }),
      { numRuns: 300, seed: 7 },
    )
  })

  it('lets Epley be the larger below ten repetitions and the smaller above', () => {
    fc.assert(
      fc.property(load, reps, (w, r) => {
        const difference = epley(w, r) - brzycki(w, r)
        expect(Math.sign(Math.abs(difference) < 1e-9 ? 0 : difference)).toBe(Math.sign(10 - r))
      }),
      { numRuns: 300, seed: 7 },
    )
  })
})
