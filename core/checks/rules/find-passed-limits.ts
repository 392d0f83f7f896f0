/** Notes where the words of an exercise pass a limit in degrees that the instructor set, or that the trade goes by. */
import type { Audience, Cue, Segment } from '../../../shared/log-sheet.ts'
import { audienceOf } from '../../cautions/describe-exercise.ts'
import { quoted, titleOf } from '../rule.ts'
import type { Found, Rule } from '../rule.ts'
import { degreesIn, NO_FURTHER, SPEAKS_AGAINST } from '../words/en/limit-words.ts'
import { OTHER_ANGLE, TRADE_ANGLES } from '../words/en/trade-values.ts'

export const LIMIT_PASSED: Rule = {
  id: 'limit-passed',
  why: 'Two numbers for one movement leave a member to guess which one holds.',
  source: 'common practice, no source',
  waivable: true,
  find: ({ lessons, sheet }) =>
    lessons.flatMap(({ segment }) => {
      const cues = segment.cues.filter((cue) => cue.state !== 'declined')
      return [...ownLimits(segment, cues), ...tradeLimits(segment, cues, audienceOf(sheet))]
    }),
}

/** "No lower than forty-five degrees", and later "go to ninety degrees". */
function ownLimits(segment: Segment, cues: readonly Cue[]): Found[] {
  const limit = cues.find((cue) => NO_FURTHER.test(cue.text) && degreesIn(cue.text).length > 0)
  const most = limit && Math.max(...degreesIn(limit.text))
  if (limit === undefined || most === undefined) return []
  return cues
    .filter((cue) => cue.startMs > limit.startMs && !NO_FURTHER.test(cue.text))
    .filter((cue) => degreesIn(cue.text).some((degrees) => degrees > most))
    .map((cue) => ({
      severity: 'warn' as const,
      segmentId: segment.id,
      at: { startMs: cue.startMs, endMs: cue.endMs },
      message: `${titleOf(segment)}: ${quoted(limit.text)} is said first and ${quoted(cue.text)} later. Keep the one that holds.`,
    }))
}

/** "Set the bench to fifty degrees" on a decline; the angle of another joint is left alone, and what is spoken against. */
function tradeLimits(segment: Segment, cues: readonly Cue[], audience: ReadonlySet<Audience>): Found[] {
  const names = [segment.exercise.name, ...segment.exercise.alsoCalled].join('. ')
  const angles = cues.filter(({ text }) => /degree|°/i.test(text))
  const once = angles.filter(
    ({ text, startMs }, index) => index === angles.findIndex((one) => one.text === text && one.startMs === startMs),
  )
  return TRADE_ANGLES.flatMap(({ name, words, most, beginners, usual }) => {
    const limit = audience.has('beginners') ? beginners : most
    return once
      .filter(({ text }) => (name.test(names) && !OTHER_ANGLE.test(text)) || words.test(text))
      .filter(({ text }) => NO_FURTHER.test(text) || !SPEAKS_AGAINST.test(text))
      .filter(({ text }) => degreesIn(text).some((degrees) => degrees > limit))
      .map((cue) => ({
        severity: 'note' as const,
        segmentId: segment.id,
        at: { startMs: cue.startMs, endMs: cue.endMs },
        message: `${titleOf(segment)}: ${quoted(cue.text)} is more than the usual ${String(limit)} degrees. Listen again and keep or correct it.`,
        why: usual,
      }))
  })
}
