// Tempos as teachers count them, and counts that are none. The order lowering, pause, lifting, pause is common practice, no source.
import { describe, expect, it } from 'vitest'
import { findTempos } from '../../../core/draft/find-tempo.ts'
import { readSpeech } from '../../../core/draft/read-speech.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

function temposIn(said: string, breathing = false): string[] {
  const transcript = parseTranscript(`[0:00] ${said}\n`, { durationMs: 60_000 })
  if (transcript.kind !== 'timed') throw new Error('The line has a time.')
  const speech = readSpeech(transcript.lines)
  return findTempos(speech, { offset: 0, end: speech.text.length }, breathing).map(({ tempo }) => tempo)
}

describe('a tempo is read', () => {
  it.each([
    ['Three seconds to go down.', '3-x-x-x'],
    ['Take two seconds going down.', '2-x-x-x'],
    ['Come down for three.', '3-x-x-x'],
    ['Down on a count of four, then drive.', '4-x-x-x'],
    ['Take five whole seconds getting to the bottom.', '5-x-x-x'],
    ['Let it come back for a slow count of two.', '2-x-x-x'],
    ['Three seconds down, one second up.', '3-x-1-x'],
    ['Four to go down, one up.', '4-x-1-x'],
    ['Lower for two, press for one.', '2-x-1-x'],
    ['Three out, two home, count it.', '3-x-2-x'],
    ['Count three in, and one going out.', '3-x-1-x'],
    ['I want three seconds going down and one second waiting at the bottom.', '3-1-x-x'],
    ['3 seconds down, 2 in the hole.', '3-2-x-x'],
    ['Two counts to pull, hold for one, and three to let it back.', '3-x-2-1'],
    ['Three seconds down, hang for one, pull, and then two up top.', '3-1-x-2'],
    ['Count of three on the way down. Stop for one at the bottom.', '3-1-x-x'],
  ])('%s', (said, tempo) => {
    expect(temposIn(said)).toEqual([tempo])
  })

  it('without marks', () => {
    expect(temposIn('up in one and hold for two then down in three')).toEqual(['3-x-1-2'])
    expect(temposIn('3 going down 1 sitting there and 1 to come up')).toEqual(['3-1-1-x'])
  })

  it('of breaths only where breathing is the exercise', () => {
    const said = 'Breathe in for four, hold it for two, and let it out for six.'
    expect(temposIn(said, true)).toEqual(['4-2-6-x'])
    expect(temposIn(said)).toEqual([])
    expect(temposIn('Breathe in for three, hold for two, out for four, stay empty for one.', true)).toEqual(['3-2-4-1'])
  })
})

describe('no tempo is read', () => {
  it.each([
    'Stay up for ten seconds.',
    'Three sets of five down the room.',
    'One, two, three, up.',
    'Two minutes down on the mat.',
    'Up for three rounds.',
    'Take one elbow over to the other knee.',
    'Lower in one piece.',
    'One up, one down.',
    'If you want it meaner, two seconds down.',
    'I rowed in an 8 for years and sat down in seat 2.',
    'Forty five seconds off in between.',
    'Touch it in three places on the way down.',
  ])('%s', (said) => {
    expect(temposIn(said)).toEqual([])
  })
})

it('says where its words stand', () => {
  const said = 'Feet under the hips. Three seconds down, one second up. Off we go.'
  const transcript = parseTranscript(`[0:00] ${said}\n`, { durationMs: 60_000 })
  if (transcript.kind !== 'timed') throw new Error('The line has a time.')
  const speech = readSpeech(transcript.lines)
  const [found] = findTempos(speech, { offset: 0, end: speech.text.length }, false)
  expect(speech.text.slice(found?.offset, found?.end)).toBe('Three seconds down, one second')
})
