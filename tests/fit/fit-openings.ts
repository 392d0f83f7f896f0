/**
 * Fits the weights of openings on all marked classes and writes core/draft/words/en/opening-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-openings.js [--apart | --without 60,61] && npx prettier --write core/draft/words/en/opening-weights.ts; --apart only shows figures, an eighth of the classes left out of each fitting; --without leaves out the classes whose titles begin so.
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { findKit } from '../../core/draft/find-kit.ts'
import { hearTurns, oddsBySentence, turnFeatures } from '../../core/draft/hear-turns.ts'
import { openingFeatures } from '../../core/draft/opening-features.ts'
import { isShort } from '../../core/draft/sided-table.ts'
import { weighCandidates } from '../../core/draft/weigh-starts.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { fitWholeAndShort, nearest, showApart, writeKinds } from './fit-sentences.ts'
import type { MarkedSentences } from './fit-sentences.ts'
import { knownClasses } from './known-classes.ts'
import type { KnownClass } from './known-classes.ts'
import { readApart } from './read-apart.ts'

/** A class as written and without punctuation. */
function openingsOf(known: KnownClass): MarkedSentences[] {
  return readApart(known).map(({ speech }) => {
    const candidates = weighCandidates(speech, findKit(speech.text))
    const heard = hearTurns(turnFeatures(speech, candidates), speech.turnNet)
    const features = openingFeatures(speech, oddsBySentence(candidates), heard)
    const times = speech.sentences.map(({ offset }) => speech.timeOf(offset) / 1000)
    const opens: (boolean | null)[] = times.map(() => false)
    const mark = (seconds: number, value: true | null): void => {
      const near = nearest(times, seconds)
      if (Math.abs((times[near] ?? 0) - seconds) < NEAR_SECONDS && opens[near] !== true) opens[near] = value
    }
    for (const { spans } of known.taught) for (const { startMs } of spans.slice(1)) mark(startMs / 1000, null)
    for (const { spans } of known.taught) for (const { startMs } of spans.slice(0, 1)) mark(startMs / 1000, true)
    return {
      title: known.title,
      short: isShort(speech),
      unpunctuated: speech.unpunctuated,
      sentences: features.map((list, index) => ({ features: list, sought: opens[index] ?? false })),
    }
  })
}

const NEAR_SECONDS = 4

function write(weights: Parameters<typeof writeKinds>[0]): void {
  const text = `/**
 * What each feature of opening-features.ts adds to the log of the odds that a sentence opens the teaching of another
 * exercise: in whole classes and in short ones, with and without punctuation. Fitted by tests/fit/fit-openings.ts, not by hand.
 */
import type { KindWeights } from './sided-weights.ts'

export const OPENING_WEIGHTS: KindWeights = {
${writeKinds(weights)}
}
`
  writeFileSync(path.join(projectRoot(), 'core/draft/words/en/opening-weights.ts'), text)
}

const without = process.argv.includes('--without') ? (process.argv.at(-1) ?? '').split(',') : []
const known = knownClasses(['dev', 'fit', 'more']).filter(({ title }) => !without.some((one) => title.startsWith(one)))
const classes = known.flatMap(openingsOf)
if (process.argv.includes('--apart')) showApart(classes, { least: -0.5, reach: 3 })
else write(fitWholeAndShort(classes))
