/** Doses told without the words that a written dose has. Phrases of our own. */
import { describe, expect, it } from 'vitest'
import { findBareDoses } from '../../../core/draft/find-bare-doses.ts'
import { readSpeech } from '../../../core/draft/read-speech.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

function read(said: string) {
  const transcript = parseTranscript(`[0:00] ${said}\n[0:30] That is the end of it, well done.`)
  if (transcript.kind !== 'timed') throw new Error('not timed')
  return findBareDoses(readSpeech(transcript.lines), [])[0]?.dose
}

const one = (value: number) => ({ min: value, max: value })

describe('a dose is read from', () => {
  it.each([
    ['And ten on the operated leg, not the other.', { reps: one(10), perSide: false }],
    ['So that was twenty, twenty with both feet.', { reps: one(20) }],
    ['So it is twenty seconds on the operated leg, and swap.', { workSeconds: one(20) }],
    ['Eight, up to twelve if it behaves.', { reps: { min: 8, max: 12 } }],
    ['Five each leg, and up to eight if it all goes well.', { reps: { min: 5, max: 8 }, perSide: true }],
    ["Five if you're under six weeks, ten for everyone else.", { reps: { min: 5, max: 10 } }],
    [
      'It goes by level, so level one is five seconds, level two is eight, level three is ten.',
      { workSeconds: { min: 5, max: 10 } },
    ],
    ['We come back to it later, so ten, twice.', { reps: one(10), sets: one(2) }],
    ['Six to the window and six to the piano.', { reps: one(6), perSide: true }],
    ['So it is one, then two, then three.', { scheme: 'ladder', repScheme: [1, 2, 3] }],
    ['Eight minutes, two reps in each.', { scheme: 'emom', sets: one(8), reps: one(2) }],
    ['You look tired, so do eights.', { reps: one(8) }],
    ['Eight presses that is.', { reps: one(8) }],
  ])('%s', (said, wanted) => expect(read(said)).toMatchObject(wanted))
})

describe('no dose is read from', () => {
  it.each([
    'Five, four, three, two, one, and rest.',
    'Six, seven, and eight.',
    'Hold one in each hand.',
    'She is eighty two on Friday and still comes.',
  ])('%s', (said) => expect(read(said)).toBeUndefined())
})
