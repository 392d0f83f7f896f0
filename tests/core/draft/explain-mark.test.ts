// Every mark of a draft tells its words, time, rule and sureness, in words of the transcript.
import { describe, expect, it } from 'vitest'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { explainMark, listMarks } from '../../../core/draft/explain-mark.ts'
import { DRAFT_RULES } from '../../../core/draft/words/en/draft-rules.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { CUE_KINDS } from '../../../shared/log-sheet.ts'

const TEXT = `[0:00] First exercise is the goblet squat. Hold the bell at your chest, feet a bit wider than the hips.
[0:15] Sit down between your heels and stand up. Keep the knees over the toes. Breathe out as you stand.
[0:30] Three sets of eight. If your knees hurt, do not go so deep.`
const sheet = draftSheet({ transcript: parseTranscript(TEXT, { durationMs: 60_000 }) })

describe('explainMark', () => {
  it.each([
    ['no such exercise', { mark: 'segment', segmentId: 'nobody' }],
    ['no such cue', { mark: 'cue', segmentId: 'seg-1', cueId: 'nothing' }],
    ['a caution whose hazard has changed', { mark: 'caution', segmentId: 'seg-1', index: 0, hazard: 'neck-pull' }],
    ['a caution of the class that is not there', { mark: 'caution', segmentId: null, index: 7, hazard: 'neck-pull' }],
  ] as const)('knows nothing of %s', (_what, ref) => {
    expect(explainMark(sheet, ref)).toBeNull()
  })

  const marks = listMarks(sheet)

  it('lists exercise, dose, cues and cautions', () => {
    expect(new Set(marks.map(({ mark }) => mark))).toEqual(new Set(['segment', 'dose', 'cue', 'caution']))
  })

  it.each(marks)('tells words, rule and sureness of $mark $segmentId', (ref) => {
    const why = explainMark(sheet, ref)
    expect(why?.words.length).toBeGreaterThan(0)
    expect(why?.rule && DRAFT_RULES[why.rule.id]).toBe(why?.rule?.says)
    expect(why?.confidence).toBeGreaterThan(0)
    for (const { text } of why?.words ?? []) expect(TEXT.toLowerCase()).toContain(text.toLowerCase())
  })

  it('tells the source of a caution', () => {
    const ref = marks.find(({ mark }) => mark === 'caution')
    expect(ref && explainMark(sheet, ref)?.source).toMatch(/\w/)
  })

  it('has a sentence for every kind of cue', () => {
    for (const kind of CUE_KINDS) expect(DRAFT_RULES[`cue-${kind}`]).toBeDefined()
  })
})
