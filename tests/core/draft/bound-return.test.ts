// A return begins where it is called and ends where the class has its rest.
import { describe, expect, it } from 'vitest'
import { endAtRest, startAtCall } from '../../../core/draft/bound-return.ts'
import { readSpeech } from '../../../core/draft/read-speech.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

function kept(said: string): string {
  const transcript = parseTranscript(`[0:00] ${said}`)
  if (transcript.kind !== 'timed') throw new Error('no times')
  const speech = readSpeech(transcript.lines)
  const { offset, end } = endAtRest(speech, { offset: 0, end: speech.text.length })
  return speech.text.slice(offset, end)
}

describe('a return', () => {
  it.each([
    [
      'Squats, chest up. Push the floor away. And rest. My sister came to stay on Sunday.',
      'Squats, chest up. Push the floor away. And rest.',
    ],
    [
      'Rows, squeeze your shoulder blades. Elbows close. Minute off, I saw a film last night.',
      'Rows, squeeze your shoulder blades. Elbows close.',
    ],
    [
      "Rows, squeeze your shoulder blades. Elbows close. There's your minute. I saw a film.",
      'Rows, squeeze your shoulder blades. Elbows close.',
    ],
  ])('%s', (said, whole) => expect(kept(said)).toBe(whole))

  it('goes on behind a rest that most of its teaching stands behind', () => {
    const said =
      'Squats. And rest. Now keep your chest up. Push the floor away. Knees out over your toes. Breathe out as you stand.'
    expect(kept(said)).toBe(said)
  })

  it('is whole where there is no rest', () => {
    const said = 'Squats, chest up. Push the floor away. Breathe out as you stand.'
    expect(kept(said)).toBe(said)
  })
})

describe('a return that a round opens', () => {
  it.each([
    ['Round two, off you go. Squats, chest up.', ['squat'], 'Squats, chest up.'],
    ['Round two. Same numbers. Goblets, chest up.', ['goblet squat'], 'Goblets, chest up.'],
    ['Squats, round two. Squats stay low.', ['squat'], 'Squats, round two. Squats stay low.'],
    [
      'Round two. Push the floor away. Squats, chest up.',
      ['squat'],
      'Round two. Push the floor away. Squats, chest up.',
    ],
    ['Round two, off you go. Chest up.', ['squat'], 'Round two, off you go. Chest up.'],
  ])('%s', (said, names, kept) => {
    const transcript = parseTranscript(`[0:00] ${said}`)
    if (transcript.kind !== 'timed') throw new Error('no times')
    const speech = readSpeech(transcript.lines)
    const { offset, end } = startAtCall(speech, { offset: 0, end: speech.text.length }, names)
    expect(speech.text.slice(offset, end)).toBe(kept)
  })
})

it('a return whose call its rest cut off keeps its bounds', () => {
  const transcript = parseTranscript('[0:00] Round two. Minute off first. Squats, chest up.')
  if (transcript.kind !== 'timed') throw new Error('no times')
  const span = { offset: 0, end: 10, called: 29 }
  expect(startAtCall(readSpeech(transcript.lines), span, ['squat'])).toEqual(span)
  expect(startAtCall(readSpeech(transcript.lines), { ...span, end: 49 }, ['squat'])).toMatchObject({
    offset: 29,
    end: 49,
  })
})
