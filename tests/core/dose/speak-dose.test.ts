// A dose as sentences for people and screen readers.
import { describe, expect, it } from 'vitest'
import { readDose } from '../../../core/dose/read-dose.ts'
import { speakDose } from '../../../core/dose/speak-dose.ts'
import { buildPrescription } from '../../../shared/log-sheet.ts'

const cases: readonly [written: string, spoken: string][] = [
  ['3 x 10-12 each side, rest 60 s', '3 sets of 10 to 12 repetitions on each side. Rest 1 minute.'],
  ['1 set of 8 reps', '1 set of 8 repetitions.'],
  ['5 breaths each side', '5 breaths on each side.'],
  ['3 x 30 s hold', '3 sets of a hold of 30 seconds.'],
  ['10 reps, hold 1 s per rep', '10 repetitions. Hold 1 second in each repetition.'],
  ['8 x 20 s / 10 s rest', 'Intervals: 8 sets of 20 seconds. Rest 10 seconds.'],
  ['10 x 8, EMOM every 60 s', 'On the clock: 10 sets of 8 repetitions. Start a new set every 1 minute.'],
  ['AMRAP 8 min', 'As many as you can: 8 minutes.'],
  ['10+ reps', 'At least 10 repetitions.'],
  ['tempo 3-1-X-?', 'Tempo: lowering 3 seconds, pause 1 second, lifting as fast as you can.'],
  ['10 reps, RPE 8, 80 % 1RM', '10 repetitions. Load: 80 percent of your one-repetition maximum. Effort: 8 out of 10.'],
  ['10 reps; beginners: 6 reps', '10 repetitions. For beginners: 6 repetitions.'],
  ['10 reps, then 10 s hold', '10 repetitions. Then a hold of 10 seconds.'],
]

describe('speakDose', () => {
  it.each(cases)('%s', (written, spoken) => {
    const dose = readDose(written)
    expect(dose && speakDose(dose)).toBe(spoken)
  })

  it('says nothing for a dose without content', () => {
    expect(speakDose(buildPrescription({}))).toBe('')
  })
})
