// Each caption rule: what it catches, and the nearest thing it lets pass.
import { describe, expect, it } from 'vitest'
import { buildCaptions } from '../../../core/captions/build-captions.ts'
import { checkCaptions } from '../../../core/captions/check-captions.ts'
import type { CaptionProfileName } from '../../../core/captions/profiles.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import type { CaptionCue } from '../../../shared/captions.ts'
import type { Transcript } from '../../../shared/transcript.ts'

const cue = (startMs: number, endMs: number, ...lines: string[]): CaptionCue => ({ startMs, endMs, lines })
const found = (cues: CaptionCue[], profile?: CaptionProfileName) =>
  checkCaptions(cues, profile).map(({ ruleId, severity, cueIndex }) => `${ruleId} ${severity} ${cueIndex}`)
const letters = (count: number) => 'a'.repeat(count)

describe('checkCaptions', () => {
  const cases: [string, CaptionCue[], CaptionProfileName, string[]][] = [
    [
      'ends before it starts',
      [cue(2000, 1000, 'Hold')],
      'web',
      [
        'caption-times stop 0',
        'caption-words-per-minute note 0',
        'caption-characters-per-second warn 0',
        'caption-too-short note 0',
      ],
    ],
    ['no text', [cue(0, 2000)], 'web', ['caption-empty warn 0']],
    ['43 characters', [cue(0, 5000, letters(43))], 'web', ['caption-line-length warn 0']],
    ['42 characters', [cue(0, 5000, letters(42))], 'web', []],
    ['38 characters on air', [cue(0, 5000, letters(38))], 'broadcast', ['caption-line-length warn 0']],
    ['37 characters on air', [cue(0, 5000, letters(37))], 'broadcast', []],
    ['26 characters upright', [cue(0, 5000, letters(26))], 'vertical', ['caption-line-length warn 0']],
    ['three lines', [cue(0, 5000, 'a', 'b', 'c')], 'web', ['caption-lines warn 0']],
    ['three lines upright', [cue(0, 5000, 'a', 'b', 'c')], 'vertical', []],
    ['7.001 s', [cue(0, 7001, 'Hold')], 'web', ['caption-too-long warn 0']],
    ['7 s', [cue(0, 7000, 'Hold')], 'web', []],
    ['0.832 s', [cue(0, 832, 'Hold')], 'web', ['caption-too-short note 0']],
    ['0.833 s', [cue(0, 833, 'Hold')], 'web', []],
    // 0.3 s a word: BBC 4.1 gives "4 words = 1.2 s" as its example.
    [
      'four words in 1.199 s',
      [cue(0, 1199, 'Do it at ten')],
      'web',
      ['caption-words-per-minute note 0', 'caption-too-short note 0'],
    ],
    ['four words in 1.2 s', [cue(0, 1200, 'Do it at ten')], 'web', ['caption-words-per-minute note 0']],
    ['six words in 2 s (180 a minute)', [cue(0, 2000, 'a b c d e f')], 'web', []],
    ['six words in 2 s, easy reading', [cue(0, 2000, 'a b c d e f')], 'easy', ['caption-words-per-minute note 0']],
    ['21 characters in a second', [cue(0, 1000, letters(21))], 'web', ['caption-characters-per-second warn 0']],
    ['20 characters in a second', [cue(0, 1000, letters(20))], 'web', []],
    ['0.5 s between', [cue(0, 2000, 'Hold'), cue(2500, 4000, 'Rest')], 'web', ['caption-gap note 0']],
    ['1 s between', [cue(0, 2000, 'Hold'), cue(3000, 4000, 'Rest')], 'web', []],
    ['no time between', [cue(0, 2000, 'Hold'), cue(2000, 4000, 'Rest')], 'web', []],
    ['two at once', [cue(0, 2000, 'Hold'), cue(1999, 4000, 'Rest')], 'web', ['caption-overlap note 0']],
  ]
  it.each(cases)('%s', (_name, cues, profile, rules) => {
    expect(found(cues, profile)).toEqual(rules)
  })

  it('every finding says what and who says so', () => {
    const findings = checkCaptions([cue(0, 300, `${letters(43)} b`, 'c', 'd'), cue(800, 9000, 'x')])
    expect(findings.length).toBeGreaterThan(4)
    for (const finding of findings) {
      expect(finding.message).toMatch(/\d/)
      expect(finding.source).not.toBe('')
    }
  })

  it('captions we build have no warning when the speech is calm', () => {
    const text =
      '[0:00] Hold the bell at your chest and keep your heels down. Sit between your knees, then stand up tall.\n[0:12] Rest.'
    expect(found(buildCaptions(parseTranscript(text) as Transcript))).toEqual([])
  })
})
