/**
 * Fits the weights of openings on all marked classes and writes core/draft/words/en/opening-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-openings.js [--apart | --without 60,61] && npx prettier --write core/draft/words/en/opening-weights.ts; --apart only shows figures, an eighth of the classes left out of each fitting; --without leaves out the classes whose titles begin so.
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { findKit } from '../../core/draft/find-kit.ts'
import { openingFeatures } from '../../core/draft/opening-features.ts'
import { readSpeech } from '../../core/draft/read-speech.ts'
import { isShort } from '../../core/draft/sided-table.ts'
import { oddsBySentence } from '../../core/draft/weigh-openings.ts'
import { weighCandidates } from '../../core/draft/weigh-starts.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { plain } from '../core/draft/spoken-class.ts'
import { fitSentences, fitWholeAndShort, sided, writeKinds } from './fit-sentences.ts'
import type { MarkedSentences } from './fit-sentences.ts'
import { knownClasses } from './known-classes.ts'
import type { KnownClass } from './known-classes.ts'
import { breaksApart } from './weigh-gaps.ts'

/** A class as written and without punctuation. */
function openingsOf(known: KnownClass): MarkedSentences[] {
  return [known.text, plain(known.text)].map((text, at) => {
    const transcript = parseTranscript(text)
    if (transcript.kind !== 'timed') throw new Error(`${known.title} has no times.`)
    const speech = readSpeech(transcript.lines, at === 0 ? undefined : BREAKS.of(known.title))
    const features = openingFeatures(speech, oddsBySentence(weighCandidates(speech, findKit(speech.text))))
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

/** Breaks as they are found in a class that is new. */
const BREAKS = breaksApart()
const NEAR_SECONDS = 4

function nearest(times: readonly number[], seconds: number): number {
  return times.reduce(
    (best, time, index) => (Math.abs(time - seconds) < Math.abs((times[best] ?? Infinity) - seconds) ? index : best),
    0,
  )
}

const FOLDS = 8

/** Openings found where the odds are for it and no sentence near has better ones, right when they lie at most one sentence off. */
function showApart(classes: readonly MarkedSentences[]): void {
  const titles = [...new Set(classes.map(({ title }) => title))]
  const sums = { marked: { hit: 0, wanted: 0, found: 0 }, plain: { hit: 0, wanted: 0, found: 0 } }
  for (let fold = 0; fold < FOLDS; fold++) {
    const left = new Set(titles.filter((_, index) => index % FOLDS === fold))
    const weights = fitSentences(classes.filter(({ title }) => !left.has(title)))
    for (const { sentences, unpunctuated } of classes.filter(({ title }) => left.has(title))) {
      const odds = sentences.map(({ features }) =>
        sided(features, unpunctuated).reduce((sum, one) => sum + (weights.get(one) ?? 0), 0),
      )
      const peaks = odds.flatMap((own, index) =>
        own > -0.5 && own >= Math.max(...odds.slice(Math.max(0, index - 3), index + 4)) ? [index] : [],
      )
      const wanted = sentences.flatMap(({ sought }, index) => (sought === true ? [index] : []))
      const sum = sums[unpunctuated ? 'plain' : 'marked']
      sum.wanted += wanted.length
      sum.found += peaks.filter((peak) => sentences[peak]?.sought !== null).length
      sum.hit += wanted.filter((index) => peaks.some((peak) => Math.abs(peak - index) <= 1)).length
    }
  }
  for (const [kind, { hit, wanted, found }] of Object.entries(sums))
    console.log(`${kind}: F1 ${((200 * hit) / (wanted + found)).toFixed(1)} (${hit} of ${wanted}, ${found} found)`)
}

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
if (process.argv.includes('--apart')) showApart(classes.filter(({ short }) => !short))
else write(fitWholeAndShort(classes))
