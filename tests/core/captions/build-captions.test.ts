// Captions from a transcript: whole text, within the profile, long enough to read, good line ends.
import { readFileSync, readdirSync } from 'node:fs'
import path from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { buildCaptions } from '../../../core/captions/build-captions.ts'
import type { CaptionProfileName } from '../../../core/captions/profiles.ts'
import { CAPTION_PROFILES, shortestMs } from '../../../core/captions/profiles.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import type { CaptionCue } from '../../../shared/captions.ts'
import type { Transcript } from '../../../shared/transcript.ts'

const timed = (text: string) => parseTranscript(text) as Transcript
const built = (text: string, profile?: CaptionProfileName) => buildCaptions(timed(text), profile)
const shown = (cues: readonly CaptionCue[]) => cues.map((cue) => cue.lines.join(' | '))
const wordsOf = (cue: CaptionCue) => cue.lines.join(' ').split(' ').length
const srt = (...cues: [string, string, string][]) =>
  cues.map(([start, end, text]) => `00:00:${start} --> 00:00:${end}\n${text}\n`).join('\n')

/** Facts that hold for any captions we build. Sources of the numbers: profiles.ts. */
function expectSound(transcript: Transcript, cues: readonly CaptionCue[], profile: CaptionProfileName): void {
  const { lineLength, lines } = CAPTION_PROFILES[profile]
  const said = transcript.lines.flatMap((line) => line.text.split(/\s+/)).filter((word) => word !== '')
  expect(cues.flatMap((cue) => cue.lines.join(' ').split(' '))).toEqual(said)
  cues.forEach((cue, index) => {
    const next = cues[index + 1]
    expect(cue.lines.length).toBeLessThanOrEqual(lines)
    for (const line of cue.lines) expect(line.length <= lineLength || !line.includes(' ')).toBe(true)
    expect(cue.endMs).toBeGreaterThan(cue.startMs)
    expect(cue.endMs - cue.startMs).toBeLessThanOrEqual(7000)
    if (!next) return
    const gap = next.startMs - cue.endMs
    expect(gap === 0 || gap >= 1000).toBe(true)
    // Shorter than can be read only where the next one follows at once.
    if (gap > 0) expect(cue.endMs - cue.startMs).toBeGreaterThanOrEqual(Math.min(7000, shortestMs(wordsOf(cue))))
  })
}

describe('any transcript', () => {
  const word = fc.oneof(
    fc.constantFrom(
      'hold',
      'the',
      'bell',
      'and',
      'breathe.',
      'ten',
      'reps,',
      'don’t',
      'lean',
      'back',
      'One,',
      'two',
      'kg',
      'Squat!',
    ),
    fc.string({ minLength: 1, maxLength: 50, unit: fc.constantFrom('a', 'é', '.', '-') }),
  )
  const lines = fc.array(
    fc.record({
      words: fc.array(word, { maxLength: 40 }),
      gapMs: fc.integer({ min: -3000, max: 4000 }),
      lengthMs: fc.integer({ min: 1, max: 20_000 }),
      speaker: fc.constantFrom(null, 'Maya', 'Bo'),
    }),
    { maxLength: 12 },
  )
  const form = fc.constantFrom('stamped-text' as const, 'webvtt' as const)

  it.each(['web', 'vertical', 'broadcast', 'easy'] as const)('profile %s', (profile) => {
    fc.assert(
      fc.property(lines, form, (list, kind) => {
        let at = 3000
        const transcript: Transcript = {
          kind: 'timed',
          form: kind,
          language: null,
          durationMs: 1_000_000,
          lines: list.map(({ words, gapMs, lengthMs, speaker }) => {
            const startMs = Math.max(0, at + gapMs)
            at = startMs + lengthMs
            return { startMs, endMs: at, text: words.join(' '), words: [], speaker }
          }),
        }
        transcript.lines.sort((a, b) => a.startMs - b.startMs)
        expectSound(transcript, buildCaptions(transcript, profile), profile)
      }),
      { numRuns: 150 },
    )
  })

  const corpus = path.resolve(import.meta.dirname, '../../fixtures/corpus/dev')
  it.each(readdirSync(corpus))('%s', (name) => {
    const transcript = timed(readFileSync(path.join(corpus, name, 'transcript.txt'), 'utf8'))
    for (const profile of ['web', 'vertical'] as const)
      expectSound(transcript, buildCaptions(transcript, profile), profile)
  })
})

describe('where captions part', () => {
  it('nothing said, nothing shown', () => {
    expect(buildCaptions({ kind: 'timed', form: 'webvtt', language: null, durationMs: 0, lines: [] })).toEqual([])
  })

  it('one sentence a caption', () => {
    expect(shown(built('[0:00] Hold the bell at your chest. Keep both heels on the floor.\n[0:08] Rest.'))).toEqual([
      'Hold the bell at your chest.',
      'Keep both heels on the floor.',
      'Rest.',
    ])
  })

  it('sentences too short to read alone share one', () => {
    expect(shown(built(srt(['01,000', '02,200', 'One. Two. Three.'], ['09,000', '10,000', 'Rest.'])))).toEqual([
      'One. Two.',
      'Three.',
      'Rest.',
    ])
  })

  it('a long sentence parts at the end of a clause', () => {
    expect(
      shown(
        built(
          '[0:00] Hinge at the hips until you feel the back of your legs, then push the floor away and stand up tall again.\n[0:12] Rest.',
        ),
      ),
    ).toEqual([
      'Hinge at the hips | until you feel the back of your legs,',
      'then push the floor away | and stand up tall again.',
      'Rest.',
    ])
  })

  it('a sentence over two lines of the file is one', () => {
    expect(shown(built(srt(['01,000', '03,000', 'Hold the bell'], ['03,000', '05,000', 'at your chest.'])))).toEqual([
      'Hold the bell at your chest.',
    ])
  })

  it('a pause of a second parts captions whatever the words', () => {
    expect(shown(built(srt(['01,000', '03,000', 'Hold the bell'], ['04,000', '06,000', 'at your chest.'])))).toEqual([
      'Hold the bell',
      'at your chest.',
    ])
  })

  it('another speaker, another caption', () => {
    const cues = built(
      'WEBVTT\n\n00:01.000 --> 00:03.000\n<v Ann>Is this\n\n00:03.000 --> 00:05.000\n<v Bo>right? Yes.',
    )
    expect(cues.map((cue) => [cue.speaker, cue.lines.join(' ')])).toEqual([
      ['Ann', 'Is this'],
      ['Bo', 'right?'],
      ['Bo', 'Yes.'],
    ])
  })

  it('speech without punctuation still parts, and never inside a dose', () => {
    const text =
      'okay so next up we have the goblet squat hold the bell at your chest feet a bit wider than your hips and we are going to do three sets of ten reps with sixty seconds rest between sets so take your time'
    const cues = built(`[0:00] ${text}\n[0:25] x`)
    expect(cues.length).toBeGreaterThan(2)
    for (const cue of cues) {
      for (const line of cue.lines) expect(line).not.toMatch(/\b(?:three|ten|sixty|of|the|a|your)$/)
    }
  })
})

describe('times', () => {
  it('start with the speech and stay long enough to read', () => {
    expect(
      built(srt(['01,000', '01,300', 'Breathe in now please.'], ['09,000', '10,000', 'Rest.'])).map((cue) => [
        cue.startMs,
        cue.endMs,
      ]),
    ).toEqual([
      [1000, 2200],
      [9000, 10_000],
    ])
  })

  it('a short gap is closed', () => {
    expect(
      built(srt(['01,000', '03,000', 'Hold.'], ['03,900', '05,000', 'Rest.'])).map((cue) => [cue.startMs, cue.endMs]),
    ).toEqual([
      [1000, 3900],
      [3900, 5000],
    ])
  })

  it('a caption of the file that lasts too long ends after 7 s', () => {
    expect(built(srt(['01,000', '20,000', 'Hold.'])).map((cue) => [cue.startMs, cue.endMs])).toEqual([[1000, 8000]])
  })

  it('a gap that closing would make too long is widened', () => {
    expect(
      built(srt(['01,000', '07,500', 'Hold.'], ['08,200', '09,200', 'Rest.'])).map((cue) => [cue.startMs, cue.endMs]),
    ).toEqual([
      [1000, 7200],
      [8200, 9200],
    ])
  })

  it('word times are used where the file has them', () => {
    const words = [
      ['Hold.', 0.5, 2],
      ['Rest', 5.25, 6],
      ['now.', 6, 7],
    ].map(([text, start, end]) => ({ text, start, end }))
    expect(built(JSON.stringify({ words })).map((cue) => [cue.startMs, cue.endMs])).toEqual([
      [500, 2000],
      [5250, 7000],
    ])
  })
})
