// What a name tells of the dose: metres that are run, with the words that say them.
import { describe, expect, it } from 'vitest'
import { metresInName, quoteOfName } from '../../../core/draft/name-tells.ts'
import { readSpeech } from '../../../core/draft/read-speech.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

const named = (name: string, ...alsoCalled: string[]) => metresInName({ name, alsoCalled, entry: null })

describe('metres in a name', () => {
  it.each([
    ['three hundreds', 300],
    ['the 400s', 400],
    ['flying thirties', 30],
    ['flying 40s', 40],
  ])('%s', (name, metres) => expect(named(name)).toEqual({ min: metres, max: metres }))

  it('in what it is called besides', () => expect(named('fast ones', 'the 200s')).toEqual({ min: 200, max: 200 }))

  it.each(['hundred', 'the 10s', 'strides', 'ninety ninety'])('none in: %s', (name) => expect(named(name)).toBeNull())
})

describe('the words of it', () => {
  const transcript = parseTranscript('[0:00] Now the three hundreds, nice and easy. Stay tall. Walk back.')
  if (transcript.kind !== 'timed') throw new Error('no times')
  const speech = readSpeech(transcript.lines)
  const spans = [{ offset: 0, end: speech.text.length }]

  it('are the name where it is said', () =>
    expect(quoteOfName(speech, { name: 'three hundreds', spans }).text).toBe('three hundreds'))

  it('are the first words where it is not', () =>
    expect(quoteOfName(speech, { name: 'shuttle', spans }).text).toContain('Now the three hundreds'))
})
