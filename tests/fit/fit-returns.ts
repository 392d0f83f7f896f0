/**
 * Fits the weights of returns on all marked classes and writes core/draft/words/en/return-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-returns.js [--apart | --without 60,61] && npx prettier --write core/draft/words/en/return-weights.ts; --apart only shows figures, an eighth of the classes left out of each fitting; --without leaves out the classes whose titles begin so.
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { findKit } from '../../core/draft/find-kit.ts'
import { readSpeech } from '../../core/draft/read-speech.ts'
import { isShort } from '../../core/draft/sided-table.ts'
import { TurnWatcher } from '../../core/draft/return-features.ts'
import { weighCandidates } from '../../core/draft/weigh-starts.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { plain } from '../core/draft/spoken-class.ts'
import { fitSentences, fitWholeAndShort, sided, writeKinds } from './fit-sentences.ts'
import type { MarkedSentences } from './fit-sentences.ts'
import { knownClasses } from './known-classes.ts'
import type { KnownClass } from './known-classes.ts'
import { breaksApart } from './weigh-gaps.ts'

/** A class as written and without punctuation; its turns up to each sentence are known. */
function returnsOf(known: KnownClass): MarkedSentences[] {
  return [known.text, plain(known.text)].map((text, at) => {
    const transcript = parseTranscript(text)
    if (transcript.kind !== 'timed') throw new Error(`${known.title} has no times.`)
    const speech = readSpeech(transcript.lines, at === 0 ? undefined : BREAKS.of(known.title))
    const weighed = weighCandidates(speech, findKit(speech.text))
    const watcher = new TurnWatcher(speech, weighed)
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

/** Breaks as they are found in a class that is new. */
const BREAKS = breaksApart()

function nearest(times: readonly number[], ms: number): number {
  return times.reduce(
    (best, time, index) => (Math.abs(time - ms) < Math.abs((times[best] ?? Infinity) - ms) ? index : best),
    0,
  )
}

const FOLDS = 8

/** Returns found with the turns before them known, right when they lie at most one sentence off. */
function showApart(classes: readonly MarkedSentences[]): void {
  const titles = [...new Set(classes.map(({ title }) => title))]
  const sums = { marked: { hit: 0, wanted: 0, found: 0 }, plain: { hit: 0, wanted: 0, found: 0 } }
  for (let fold = 0; fold < FOLDS; fold++) {
    const left = new Set(titles.filter((_, index) => index % FOLDS === fold))
    const weights = fitSentences(classes.filter(({ title }) => !left.has(title)))
    for (const { sentences, unpunctuated } of classes.filter(({ title }) => left.has(title))) {
      const odds = sentences.map(({ features, sought }) =>
        sought === null
          ? -Infinity
          : sided(features, unpunctuated).reduce((all, one) => all + (weights.get(one) ?? 0), 0),
      )
      const peaks = odds.flatMap((own, index) =>
        own > -1 && own >= Math.max(...odds.slice(Math.max(0, index - 2), index + 3)) ? [index] : [],
      )
      const wanted = sentences.flatMap(({ sought }, index) => (sought === true ? [index] : []))
      const sum = sums[unpunctuated ? 'plain' : 'marked']
      sum.wanted += wanted.length
      sum.found += peaks.length
      sum.hit += wanted.filter((index) => peaks.some((peak) => Math.abs(peak - index) <= 1)).length
    }
  }
  for (const [kind, { hit, wanted, found }] of Object.entries(sums))
    console.log(`${kind}: F1 ${((200 * hit) / (wanted + found)).toFixed(1)} (${hit} of ${wanted}, ${found} found)`)
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
if (process.argv.includes('--apart')) showApart(classes.filter(({ short }) => !short))
else write(fitWholeAndShort(classes))
