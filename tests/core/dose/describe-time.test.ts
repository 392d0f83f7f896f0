// What the class page says of a dose's length, by hand: sets x repetitions x 3 s (2-0-1-0) and rests.
import { expect, it } from 'vitest'
import { describeTotals } from '../../../core/dose/describe-time.ts'
import { readDose } from '../../../core/dose/read-dose.ts'
import { buildPrescription } from '../../../shared/log-sheet.ts'

it.each([
  ['3 x max reps', ''],
  ['3 x 20 m', ''],
  ['3 x 12, rest 60 s', 'Takes about 4 minutes, 36 repetitions in all, 110 seconds of it work.'],
  ['2 x 30 s hold each side', 'Takes about 2 minutes.'],
  ['2-3 x 10-12, rest 60 s', 'Takes about 2 to 4 minutes, 20 to 36 repetitions in all, 60 to 110 seconds of it work.'],
  ['5 breaths', 'Takes about 25 seconds, 5 breaths in all.'],
  ['8 rounds of twenty on, ten off', 'Takes about 4 minutes, 2.5 minutes of it work.'],
])('%s: %s', (text, said) => {
  expect(describeTotals(readDose(text) ?? buildPrescription({})).text).toBe(said)
})

it('names what it took for granted', () => {
  expect(describeTotals(readDose('3 x 12, rest 60 s') ?? buildPrescription({})).assumed).toEqual([
    'Tempo 2-0-1-0 where none is said.',
  ])
  expect(describeTotals(buildPrescription({}))).toEqual({ text: '', assumed: [] })
})
