// Doses said once for many exercises reach each of them, and give way to what is said for one.
import { describe, expect, it } from 'vitest'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { doseOf } from './spoken-class.ts'

const TEACHING = {
  squat: 'Next up, goblet squats. Stand with your feet wide, bell at your chest. Sit down and stand up tall.',
  row: 'Next up, the bent over row. Hinge forward, flat back. Pull the bells to your hips and lower them slowly.',
  press: 'Next up, the shoulder press. Stand tall, bells at your shoulders. Press up and lower slowly.',
}

function dosesOf(opening: string, { squat = '', row = '', press = '' } = {}) {
  const text = [
    `[0:00] ${opening}`,
    `[0:20] ${TEACHING.squat} ${squat}`,
    `[0:50] ${TEACHING.row} ${row}`,
    `[1:20] ${TEACHING.press} ${press}`,
  ].join('\n')
  return draftSheet({ transcript: parseTranscript(text) }).segments.map(({ prescription }) => doseOf(prescription))
}

describe('a dose said once', () => {
  it('is each exercise’s', () => {
    const ten = { reps: 10 }
    expect(dosesOf('Hello all. Everything today is ten reps.')).toEqual([ten, ten, ten])
  })

  it('gives way to what is said for one', () => {
    const doses = dosesOf('Hello. Everything is ten reps unless I say otherwise.', { row: 'Twelve reps here.' })
    expect(doses).toEqual([{ reps: 10 }, { reps: 12 }, { reps: 10 }])
  })

  it('fills in the sets beside what is said for one', () => {
    const doses = dosesOf('Hello. Three sets of everything.', { squat: 'Eight reps.', row: 'Ten reps.', press: 'Six.' })
    expect(doses).toEqual([
      { sets: 3, reps: 8 },
      { sets: 3, reps: 10 },
      { sets: 3, reps: 6 },
    ])
  })

  it.each([
    'We have three exercises, forty seconds each, twenty seconds to switch, and we go round three times.',
    'Three stations, forty seconds on, twenty off, three rounds.',
  ])('makes stations of what is taught behind it: %s', (opening) => {
    const station = { sets: 3, work: 40, rest: 20 }
    expect(dosesOf(`Hello. ${opening}`)).toEqual([station, station, station])
  })

  it('is none when it tells of other days', () => {
    expect(dosesOf('Hello. Last week everything was twenty reps.')).toEqual([{}, {}, {}])
  })
})
