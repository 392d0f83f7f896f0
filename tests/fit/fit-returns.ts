/**
 * Fits the weights of returns on all marked classes and writes core/draft/words/en/return-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-returns.js [--apart | --without 60,61] && npx prettier --write core/draft/words/en/return-weights.ts; --apart only shows figures, an eighth of the classes left out of each fitting; --without leaves out the classes whose titles begin so.
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { findKit } from '../../core/draft/find-kit.ts'
import { hearTurns, turnFeatures } from '../../core/draft/hear-turns.ts'
import { isShort } from '../../core/draft/sided-table.ts'
import { TurnWatcher } from '../../core/draft/return-features.ts'
import { weighCandidates } from '../../core/draft/weigh-starts.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { fitWholeAndShort, nearest, showApart, writeKinds } from './fit-sentences.ts'
import type { MarkedSentences } from './fit-sentences.ts'
import { knownClasses } from './known-classes.ts'
import type { KnownClass } from './known-classes.ts'
import { readApart } from './read-apart.ts'

/** A class as written and without punctuation; its turns up to each sentence are known. */
function returnsOf(known: KnownClass): MarkedSentences[] {
  return readApart(known).map(({ speech }) => {
    const weighed = weighCandidates(speech, findKit(speech.text))
    const watcher = new TurnWatcher(speech, weighed, hearTurns(turnFeatures(speech, weighed), speech.turnNet))
    const times = speech.sentences.map(({ offset }) => speech.timeOf(offset))
    const taught = known.taught
      .filter(({ spans }) => spans.length > 0)
      .toSorted((a, b) => (a.spans[0]?.startMs ?? 0) - (b.spans[0]?.startMs ?? 0))
    const said = [...new Set(weighed.map(({ candidate }) => candidate.name))]
    const mains = new Map(
      taught.map(({ isNamed, spans }) => [nearest(times, spans[0]?.startMs ?? 0), said.filter(isNamed)]),
    )
    const returns = new Map(
      taught.flatMap(({ spans }, teaching) =>
        spans.slice(1).map(({ startMs }) => [nearest(times, startMs), teaching] as const),
      ),
    )
    const sentences = speech.sentences.map((_, index) => {
      const names = mains.get(index)
      if (names) watcher.open(index, names)
      const teaching = names ? undefined : returns.get(index)
      const sought = names || watcher.current < 0 ? null : teaching !== undefined
      const features = sought === null ? [] : watcher.features(index)
      if (teaching !== undefined) watcher.turnTo({ sentence: index, teaching })
      return { features, sought }
    })
    return { title: known.title, short: isShort(speech), unpunctuated: speech.unpunctuated, sentences }
  })
}

function write(weights: Parameters<typeof writeKinds>[0]): void {
  const text = `/**
 * What each feature of return-features.ts adds to the log of the odds that the class comes back to an exercise in a
 * sentence: in whole classes and in short ones, with and without punctuation. Fitted by tests/fit/fit-returns.ts, not by hand.
 */
import type { KindWeights } from './sided-weights.ts'

export const RETURN_WEIGHTS: KindWeights = {
${writeKinds(weights)}
}
`
  writeFileSync(path.join(projectRoot(), 'core/draft/words/en/return-weights.ts'), text)
}

const without = process.argv.includes('--without') ? (process.argv.at(-1) ?? '').split(',') : []
const known = knownClasses(['dev', 'fit', 'more']).filter(({ title }) => !without.some((one) => title.startsWith(one)))
const classes = known.flatMap(returnsOf)
if (process.argv.includes('--apart')) showApart(classes, { least: -1, reach: 2 })
else write(fitWholeAndShort(classes))
