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

/** One finding a cue; a clause that carries two kinds is two cues and still one finding. */
function wordsOf(segment: Segment): Found[] {
  const kept = segment.cues.filter((cue) => cue.state !== 'declined' && isKept(segment, cue.startMs))
  const once = kept.filter((cue, index) => index === kept.findIndex((one) => one.startMs === cue.startMs))
  return once.flatMap(({ text, startMs, endMs }) => {
    const empty = emptyWordsIn(text)
    if (empty === null) return []
    const message = `${quoted(empty.words)} at ${formatClock(startMs)} means nothing in a clip of its own. ${empty.tell}`
    return [
      { severity: 'warn', segmentId: segment.id, at: { startMs, endMs }, message: `${titleOf(segment)}: ${message}` },
    ]
  })
}

function emptyWordsIn(text: string): { words: string; tell: string } | null {
  for (const { says, tell } of EMPTY_WORDS) {
    const words = says.exec(text)?.[0]
    if (words !== undefined) return { words, tell }
  }
  return null
}
