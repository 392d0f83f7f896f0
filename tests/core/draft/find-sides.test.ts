// Sides said in a class, from its transcript to the findings; what is planted is wrong on purpose, the rest is right.
import { describe, expect, it } from 'vitest'
import { checkSheet } from '../../../core/checks/check-sheet.ts'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { Segment } from '../../../shared/log-sheet.ts'

/** A one-sided exercise taught in three blocks; what is said of the sides goes in between. */
const draftOf = (start: string, middle: string, end: string, before = 'Hello everybody.') =>
  draftSheet({
    transcript: parseTranscript(
      [
        `[0:00] ${before}`,
        `[0:10] First exercise is the clamshell. Lie on your side with your knees bent. ${start} Open the top knee and close it. Ten each side.`,
        `[0:40] Keep your hips stacked. Breathe out as it opens. ${middle}`,
        `[1:05] ${end} Open and close, don't roll back. And rest.`,
      ].join('\n'),
      { durationMs: 100_000 },
    ),
  })

const findingsOf = (sheet: ReturnType<typeof draftOf>) =>
  checkSheet(sheet)
    .findings.filter(({ ruleId }) => ruleId === 'side-differs' || ruleId === 'one-side-shown')
    .map(({ severity, ruleId }) => `${severity} ${ruleId}`)

describe('wrong on purpose', () => {
  it.each([
    ['the same side after the change', 'Right side first.', 'And change sides.', 'Right leg now.', 'warn side-differs'],
    ['one side called for both turns', 'Right leg first.', 'Lovely.', 'Right leg again.', 'warn one-side-shown'],
    [
      'both hands are no sides',
      'Right leg first, both hands on the floor.',
      'Lovely.',
      'Right leg again.',
      'warn one-side-shown',
    ],
    ['one side is all that is said', 'Lift your right knee.', 'Lovely.', 'Keep going.', 'note one-side-shown'],
    ['two orders', 'Right side first. Start with the left leg.', 'Change sides.', 'Lovely.', 'warn side-differs'],
  ])('%s', (_what, start, middle, end, finding) => {
    expect(findingsOf(draftOf(start, middle, end))).toContain(finding)
  })

  it('the side that a person marked is not the one that is said', () => {
    const sheet = draftOf('Right leg first.', 'Lovely.', 'Keep the right knee high.')
    const [segment] = sheet.segments
    const marked = { ...sheet, segments: [{ ...segment, sideShown: 'left' as const }].map((one) => Segment.parse(one)) }
    expect(findingsOf(marked)).toContain('warn side-differs')
    expect(
      findingsOf({ ...marked, segments: marked.segments.map((one) => ({ ...one, sideShown: 'right' as const })) }),
    ).not.toContain('warn side-differs')
  })
})

describe('right', () => {
  it.each([
    ['one after the other', 'Right side first.', 'And change sides.', 'Left leg now.'],
    ['the other is not named', 'Right side first.', 'Now the other side.', 'Lovely.'],
    ['rolled over', 'On your right side.', 'Roll over.', 'Same again.'],
    ['no side at all', 'Lovely.', 'Right, keep going, five left.', 'All right.'],
    ['a correction', 'Left leg, no, right leg first.', 'Change sides.', 'Left leg now.'],
    [
      'a limb named after the change',
      'Right side first.',
      'And change sides.',
      'Hand on your right hip if you wobble.',
    ],
    ['both at the end', 'Right side first.', 'Swap.', 'And that is both sides.'],
  ])('%s', (_what, start, middle, end) => {
    expect(findingsOf(draftOf(start, middle, end))).toEqual([])
  })
})

it('a call just behind the end is told as outside the clip, and shows nothing of the second side', () => {
  const text = [
    '[0:10] First exercise is the clamshell. Lie on your side with your knees bent. Right side first. Open the top knee and close it. Ten each side.',
    '[0:40] Keep your hips stacked. Breathe out as it opens. And change sides. Right leg now.',
    '[1:20] Next exercise is the biceps curl. Stand tall with a dumbbell in each hand. Curl the weights up. Two sets of ten.',
  ].join('\n')
  const sheet = draftSheet({ transcript: parseTranscript(text, { durationMs: 110_000 }) })
  // Cut short by a person who left open which side is shown: the draft itself keeps the call.
  const [clamshell] = sheet.segments
  if (clamshell) Object.assign(clamshell, { sideShown: null, spans: [{ ...clamshell.spans[0], endMs: 62_000 }] })
  const message = checkSheet(sheet).findings.find(({ ruleId }) => ruleId === 'one-side-shown')?.message
  expect(message).toMatch(/name the right only; "change sides" at 1:0\d is outside it\. Put that in the clip/)
})

describe('taught as in a mirror', () => {
  const mirroredOf = (sheet: ReturnType<typeof draftOf>) => sheet.segments.map(({ mirrored }) => mirrored)

  it('is marked where it is told for the class, and nothing is then compared', () => {
    const sheet = draftOf(
      'Right leg first.',
      'Lovely.',
      'Right leg again.',
      "I'll mirror you today, so my left is your right.",
    )
    expect(mirroredOf(sheet)).toEqual([true])
    expect(findingsOf(sheet)).not.toContain('warn side-differs')
  })

  it('is marked where it is told in an exercise, and not because of a mirror on the wall', () => {
    expect(mirroredOf(draftOf('You go right as I go left.', 'Change sides.', ''))).toEqual([true])
    expect(mirroredOf(draftOf('Watch your knee in the mirror.', 'Change sides.', ''))).toEqual([null])
  })
})

it('quotes exact words with their times', () => {
  const [segment] = draftOf('Right side first.', 'And change sides.', 'Left leg now.').segments
  expect(segment?.sidesNamed?.map(({ text, side, as }) => [text, side, as])).toEqual([
    ['Right side first', 'right', 'first'],
    ['change sides', 'other', 'turn'],
    ['Left leg now', 'left', 'turn'],
  ])
  expect(segment?.sidesNamed?.every(({ atMs }) => atMs >= 10_000 && atMs < 100_000)).toBe(true)
})
