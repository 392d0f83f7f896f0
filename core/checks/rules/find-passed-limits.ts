/** Notes where the words of an exercise pass a limit in degrees that the instructor set, or that the trade goes by. */
import type { Audience, Cue, Segment } from '../../../shared/log-sheet.ts'
import { audienceOf } from '../../cautions/describe-exercise.ts'
import { placeOf, quoted, titleOf } from '../rule.ts'
import type { Found, Rule } from '../rule.ts'
import { degreesIn, NO_FURTHER } from '../words/en/limit-words.ts'
import { TRADE_ANGLES } from '../words/en/trade-values.ts'

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

function tradeLimits(segment: Segment, cues: readonly Cue[], audience: ReadonlySet<Audience>): Found[] {
  const names = [segment.exercise.name, ...segment.exercise.alsoCalled].join('. ').toLowerCase()
  const row = TRADE_ANGLES.find(({ name }) => names.includes(name))
  if (!row) return []
  const most = audience.has('beginners') ? row.beginners : row.most
  return cues
    .filter((cue) => degreesIn(cue.text).some((degrees) => degrees > most))
    .map((cue) => ({
      severity: 'note' as const,
      segmentId: segment.id,
      at: placeOf(segment),
      message: `${titleOf(segment)}: ${quoted(cue.text)} is more than the usual ${String(most)} degrees. Listen again and keep or correct it.`,
      why: 'A larger angle loads the back or the shoulder more than most people are used to.',
    }))
}
