/** Notes where a hold at the top of a repetition is longer than the trade's one to three seconds. */
import type { Segment } from '../../../shared/log-sheet.ts'
import { audienceOf } from '../../cautions/describe-exercise.ts'
import { quoted, titleOf } from '../rule.ts'
import type { Found, Rule } from '../rule.ts'
import { peakHoldsIn, SPEAKS_AGAINST } from '../words/en/limit-words.ts'
import { PEAK_HOLD } from '../words/en/trade-values.ts'

/**
 * A note, since a longer squeeze harms nobody: what is at stake is a misheard number (eight, a). Left alone are exercises
 * that are held still, holds so long that they are the exercise, and rehabilitation, where five to ten seconds are usual.
 */
export const PEAK_HOLD_LONG: Rule = {
  id: 'peak-hold-long',
  why: 'A hold at the top usually lasts 1 to 3 seconds; a longer one is more often misheard, or another exercise.',
  source: 'common practice, no source',
  waivable: true,
  find: ({ lessons, sheet }) =>
    audienceOf(sheet).has('rehab')
      ? []
      : lessons.flatMap(({ segment, traits }) => (traits.still ? [] : longPeaks(segment))),
}

function longPeaks(segment: Segment): Found[] {
  const dose = segment.prescription
  const cues = segment.cues
    .filter(({ state }) => state !== 'declined')
    .map(({ startMs: atMs, text }) => ({ atMs, text }))
  const texts = [...cues, ...(dose && dose.state !== 'declined' ? dose.said : [])]
  const found = texts.flatMap(({ atMs, text }) =>
    !/\b(?:top|peak)\b/i.test(text) || SPEAKS_AGAINST.test(text)
      ? []
      : peakHoldsIn(text)
          .filter(({ seconds }) => seconds > PEAK_HOLD.most && seconds < PEAK_HOLD.isometricFrom)
          .map((one) => ({ ...one, atMs })),
  )
  return found
    .filter((one, index) => found.findIndex(({ words }) => words === one.words) === index)
    .map(({ words, atMs }) => ({
      severity: 'note' as const,
      segmentId: segment.id,
      at: { startMs: atMs, endMs: atMs },
      message: `${titleOf(segment)}: ${quoted(words)} is longer than a usual hold at the top (${PEAK_HOLD.usual}). Listen again and keep or correct it.`,
    }))
}
