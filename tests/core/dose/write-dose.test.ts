// Writing a dose: the house style as cases, and reading what was written gives the same dose for any dose.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readDose } from '../../../core/dose/read-dose.ts'
import { writeDose } from '../../../core/dose/write-dose.ts'
import { buildPrescription, type Prescription } from '../../../shared/log-sheet.ts'
import { anyDose } from './any-dose.ts'

const exactly = (value: number) => ({ min: value, max: value })

const cases: readonly [text: string, fields: Partial<Prescription>][] = [
  ['3 x 10', { sets: exactly(3), reps: exactly(10) }],
  [
    '3 x 10-12 each side, rest 60 s, tempo 3-1-1-0',
    { sets: exactly(3), reps: { min: 10, max: 12 }, perSide: true, restSeconds: exactly(60), tempo: '3-1-1-0' },
  ],
  ['5 breaths each side', { reps: exactly(5), repUnit: 'breath', perSide: true }],
  [
    '8 x 20 s / 10 s rest',
    { scheme: 'interval', sets: exactly(8), workSeconds: exactly(20), restSeconds: exactly(10) },
  ],
  ['3 x 30 reps', { sets: exactly(3), reps: exactly(30) }],
  ['3 x 30 s', { sets: exactly(3), workSeconds: exactly(30) }],
  ['3 x 30 s hold', { sets: exactly(3), holdSeconds: exactly(30), holdPer: 'set' }],
  ['2 x 8, hold 3 s per rep', { sets: exactly(2), reps: exactly(8), holdSeconds: exactly(3), holdPer: 'rep' }],
  ['10 sets x 3 reps', { sets: exactly(10), reps: exactly(3) }],
  ['10 x 8, EMOM every 60 s', { scheme: 'emom', sets: exactly(10), reps: exactly(8), intervalSeconds: exactly(60) }],
  ['AMRAP 8 min', { scheme: 'amrap', reps: 'max', workSeconds: exactly(480) }],
  ['ladder 10-8-6', { scheme: 'ladder', repScheme: [10, 8, 6] }],
  [
    '4 x 250 m, rest 90 s between sets',
    { sets: exactly(4), distanceM: exactly(250), restSeconds: exactly(90), restBetween: 'sets' },
  ],
  ['about 3 x 10+', { sets: exactly(3), reps: { min: 10, max: null }, approx: true }],
  ['up to 20 reps', { reps: { min: null, max: 20 } }],
  ['tempo 3-?-X-?', { tempo: '3-x-X-x' }],
  [
    '3 x 5, 80 % 1RM, RPE 8, 3 times a week',
    { sets: exactly(3), reps: exactly(5), load: '80 % 1RM', effort: 'RPE 8', frequency: '3 times a week' },
  ],
  ['open "as long as it feels good"', { open: 'as long as it feels good' }],
  ['', {}],
]

describe('writeDose', () => {
  it.each(cases)('writes %j', (text, fields) => {
    expect(writeDose(buildPrescription(fields))).toBe(text)
  })

  it('writes levels and parts that follow', () => {
    const dose = buildPrescription({
      reps: exactly(10),
      then: [
        buildPrescription({ reps: exactly(10), effort: 'pulses' }),
        buildPrescription({ holdSeconds: exactly(10), holdPer: 'set' }),
      ],
      byLevel: [{ level: 'beginners', dose: buildPrescription({ reps: exactly(6) }) }],
    })
    expect(writeDose(dose)).toBe('10 reps, then [10 reps, effort "pulses"], then 10 s hold; beginners: 6 reps')
  })

  it('is read back as the same dose, for any dose', () => {
    fc.assert(
      fc.property(anyDose, (dose) => {
        const text = writeDose(dose)
        expect({ text, ...plainOf(readDose(text)) }).toEqual({ text, ...plainOf(dose) })
      }),
      { numRuns: 400, seed: 20240 },
    )
  })
})

/** The dose without what text does not hold: said, why, marks, ids of other segments. */
function plainOf(dose: Prescription | null): object | null {
  if (dose === null) return null
  const {
    said: _said,
    why: _why,
    origin: _origin,
    state: _state,
    confidence: _confidence,
    ruleId: _rule,
    groupWith: _ids,
    ...rest
  } = dose
  return {
    ...rest,
    then: dose.then.map(plainOf),
    byLevel: dose.byLevel.map(({ level, dose: one }) => ({ level, dose: plainOf(one) })),
  }
}
