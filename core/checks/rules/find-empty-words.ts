/** Warns of words in the clip that mean nothing to whoever watches it alone, or cannot see it. */
import type { Segment } from '../../../shared/log-sheet.ts'
import { formatClock } from '../../../shared/time.ts'
import { isKept } from '../../segments/kept-ranges.ts'
import { quoted, titleOf } from '../rule.ts'
import type { Found, Rule } from '../rule.ts'
import { EMPTY_WORDS } from '../words/en/empty-words.ts'

export const MEANS_NOTHING_ALONE: Rule = {
  id: 'means-nothing-alone',
  why: 'The clip is watched alone, and by some without the picture: words that point away from it tell them nothing.',
  source: 'WCAG 2.2, success criteria 1.2.3 and 1.3.3 (do not rely on sight or place alone)',
  waivable: true,
  find: ({ lessons }) => lessons.flatMap(({ segment }) => wordsOf(segment)),
}

function wordsOf(segment: Segment): Found[] {
  const found = segment.cues
    .filter((cue) => cue.state !== 'declined' && isKept(segment, cue.startMs))
    .flatMap((cue) =>
      EMPTY_WORDS.flatMap(({ says, tell }) => [...cue.text.matchAll(says)].map(([words]) => ({ cue, words, tell }))),
    )
  const first = found.filter(
    ({ cue, words }, index) =>
      index === found.findIndex((other) => other.words === words && other.cue.startMs === cue.startMs),
  )
  return first.map(({ cue, words, tell }) => ({
    severity: 'warn',
    segmentId: segment.id,
    at: { startMs: cue.startMs, endMs: cue.endMs },
    message: `${titleOf(segment)}: ${quoted(words)} at ${formatClock(cue.startMs)} means nothing in a clip of its own. ${tell}`,
  }))
}
