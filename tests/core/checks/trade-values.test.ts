// Check values of the trade. All of them: common practice, no source.
import { describe, expect, it } from 'vitest'
import { checkSheet } from '../../../core/checks/check-sheet.ts'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { degreesIn, peakHoldsIn } from '../../../core/checks/words/en/limit-words.ts'
import { cueSaid } from '../cautions/sheet-of-class.ts'
import { foundIn } from './good-class.ts'

const isFoundIn = (ruleId: string, segment: Record<string, unknown>, audience: string[] = ['general']) =>
  foundIn(segment, { audience }).includes(`note ${ruleId}`)

describe('a side bend goes to about 45 degrees at most (common practice, no source)', () => {
  it.each([
    ['side bend', 'Go to about sixty degrees.', true],
    ['side bend', 'About forty-six degrees.', true],
    ['lateral bend', 'Tip over to 50°.', true],
    ['mermaid', 'Bend over to the side, all of sixty degrees.', true],
    ['side bend', 'No further than sixty degrees.', true],
    ['side bend', 'About forty-five degrees is right.', false],
    ['side bend', 'Thirty degrees is plenty.', false],
    ['side bend', "Don't go down to ninety degrees.", false],
    ['side bend', 'The elbow stays at ninety degrees.', false],
    ['squat', 'Come down to ninety degrees.', false],
  ])('%s: %s', (name, text, isFound) => {
    expect(isFoundIn('limit-passed', { exercise: { name }, cues: [cueSaid('range', text)] })).toBe(isFound)
  })
})

describe('a decline bench stands at 30 to 40 degrees, 10 for beginners, never past 45 (common practice, no source)', () => {
  it.each([
    ['decline press', 'Set the bench to 50 degrees.', 'general', true],
    ['decline press', 'Set the bench to 46 degrees.', 'general', true],
    ['sit-up', 'Set it to decline at fifty degrees.', 'general', true],
    ['decline press', 'Set the bench to 45 degrees.', 'general', false],
    ['decline press', 'Set the bench to 40 degrees.', 'general', false],
    ['decline press', 'Set the bench to 30 degrees.', 'general', false],
    ['decline press', 'Set the bench to 30 degrees.', 'beginners', true],
    ['decline press', 'Set the bench to fifteen degrees.', 'beginners', true],
    ['decline press', 'Set the bench to ten degrees.', 'beginners', false],
    ['decline press', 'Elbows at seventy-five degrees.', 'general', false],
    ['incline press', 'Set the bench to 60 degrees.', 'general', false],
  ])('%s: %s (%s)', (name, text, audience, isFound) => {
    expect(isFoundIn('limit-passed', { exercise: { name }, cues: [cueSaid('setup', text)] }, [audience])).toBe(isFound)
  })
})

describe('a hold at the top lasts one to three seconds (common practice, no source)', () => {
  const holds = (text: string, fields: object = {}) => ({
    exercise: { name: 'biceps curl' },
    cues: [cueSaid('tempo', text)],
    ...fields,
  })

  it.each([
    ['Hold the top for eight seconds.', true],
    ['Pause at the top for a count of four.', true],
    ['A five second squeeze at the top.', true],
    ['At the top, hold it for six.', true],
    ['Hold the top for five to eight seconds.', true],
    ['Hold the top for one second.', false],
    ['Hold the peak for two seconds.', false],
    ['Squeeze at the top for a count of three.', false],
    ['Hold the top for two to three seconds.', false],
    ["Don't hold the top for eight seconds.", false],
    ['Hold the top for three breaths.', false],
    ['Hold the top for thirty seconds.', false],
    ['Lift to the top for eight reps.', false],
  ])('%s', (text, isFound) => {
    expect(isFoundIn('peak-hold-long', holds(text))).toBe(isFound)
  })

  it('is also told in the words of a dose', () => {
    const prescription = {
      sets: { min: 2, max: 2 },
      reps: { min: 10, max: 10 },
      holdSeconds: { min: 8, max: 8 },
      holdPer: 'rep',
      said: [{ atMs: 9000, text: 'hold the top for eight seconds' }],
    }
    expect(isFoundIn('peak-hold-long', holds('Curl it up.', { prescription }))).toBe(true)
    expect(
      isFoundIn('peak-hold-long', holds('Curl it up.', { prescription: { ...prescription, state: 'declined' } })),
    ).toBe(false)
  })

  it('says nothing of what is held still, and of rehabilitation, where longer holds are usual', () => {
    const text = 'Hold the top for eight seconds.'
    expect(isFoundIn('peak-hold-long', { exercise: { name: 'forearm plank' }, cues: [cueSaid('tempo', text)] })).toBe(
      false,
    )
    expect(isFoundIn('peak-hold-long', holds(text), ['rehab'])).toBe(false)
  })
})

it('are found where they are only spoken, from transcript to report', () => {
  const transcript = parseTranscript(
    [
      '[0:00] First exercise is the decline press. Set the bench to fifty degrees and hook your feet in. Lower the bar to your chest and press it up. Three sets of ten.',
      '[0:40] Next exercise is the biceps curl. Stand tall with a dumbbell in each hand. Curl the weights up. Hold the top for eight seconds, then lower slowly. Two sets of ten.',
      '[1:20] Next exercise is the side bend. Stand tall with one weight. Bend to the side, go to sixty degrees. Ten each side.',
    ].join('\n'),
    { durationMs: 120_000 },
  )
  const { findings } = checkSheet(draftSheet({ transcript }))
  const told = findings.filter(({ ruleId }) => ruleId === 'limit-passed' || ruleId === 'peak-hold-long')
  expect(told.map(({ message }) => message.split(':')[0])).toEqual(['Decline press', 'Biceps curl', 'Side bend'])
})

it('reads degrees and seconds in words, figures and signs', () => {
  expect(degreesIn('fifty degrees, forty-five degrees, a 30-degree decline, 10°')).toEqual([50, 45, 30, 10])
  expect(degreesIn('my degree, ten of you')).toEqual([])
  expect(peakHoldsIn('pause at the top for a count of four').map(({ seconds }) => seconds)).toEqual([4])
})
