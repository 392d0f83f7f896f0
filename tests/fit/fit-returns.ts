/**
 * Fits the weights of returns on all marked classes and writes core/draft/words/en/return-weights.ts.
 * Run: npx tsc -b && node .build/tests/fit/fit-returns.js [--apart | --without 60,61] && npx prettier --write core/draft/words/en/return-weights.ts; --apart only shows figures, an eighth of the classes left out of each fitting; --without leaves out the classes whose titles begin so.
 */
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { findOpened } from '../../core/draft/find-exercises.ts'
import { findKit } from '../../core/draft/find-kit.ts'
import { findReturns } from '../../core/draft/find-returns.ts'
import { hearTurns, turnFeatures } from '../../core/draft/hear-turns.ts'
import { isShort } from '../../core/draft/sided-table.ts'
import { TurnWatcher } from '../../core/draft/return-features.ts'
import type { Speech } from '../../core/draft/read-speech.ts'
import { weighSentences } from '../../core/draft/weigh-openings.ts'
import { weighCandidates } from '../../core/draft/weigh-starts.ts'
import type { WeighedCandidate } from '../../core/draft/weigh-starts.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { fitWholeAndShort, nearest, showApart, writeKinds } from './fit-sentences.ts'
import type { MarkedSentences } from './fit-sentences.ts'
import { knownClasses } from './known-classes.ts'
import type { KnownClass, Taught } from './known-classes.ts'
import { readApart } from './read-apart.ts'

/** A class as written and without punctuation, each twice: as it went, and as its reader takes it to have gone up to each sentence. */
function returnsOf(known: KnownClass): MarkedSentences[] {
  const taught = known.taught
    .filter(({ spans }) => spans.length > 0)
    .toSorted((a, b) => (a.spans[0]?.startMs ?? 0) - (b.spans[0]?.startMs ?? 0))
  return readApart(known).flatMap(({ speech }) => {
    const weighed = weighCandidates(speech, findKit(speech.text))
    const kinds = { title: known.title, short: isShort(speech), unpunctuated: speech.unpunctuated }
    return [
      { ...kinds, sentences: asItWent(speech, weighed, taught) },
      { ...kinds, sentences: asItIsRead(speech, weighed, taught) },
    ]
  })
}

function asItWent(
  speech: Speech,
  weighed: readonly WeighedCandidate[],
  taught: readonly Taught[],
): MarkedSentences['sentences'] {
  const watcher = new TurnWatcher(speech, weighed, hearTurns(turnFeatures(speech, weighed), speech.turnNet))
  const times = speech.sentences.map(({ offset }) => speech.timeOf(offset))
  const said = [...new Set(weighed.map(({ candidate }) => candidate.name))]
  const mains = new Map(
    taught.map(({ isNamed, spans }) => [nearest(times, spans[0]?.startMs ?? 0), said.filter(isNamed)]),
  )
  const returns = new Map(
    taught.flatMap(({ spans }, teaching) =>
      spans.slice(1).map(({ startMs }) => [nearest(times, startMs), teaching] as const),
    ),
  )
  return speech.sentences.map((_, index) => {
    const names = mains.get(index)
    if (names) watcher.open(index, names)
    const teaching = names ? undefined : returns.get(index)
    const sought = names || watcher.current < 0 ? null : teaching !== undefined
    const features = sought === null ? [] : watcher.features(index)
    if (teaching !== undefined) watcher.turnTo({ sentence: index, teaching })
    return { features, sought }
  })
}

/** Openings and turns are those that are found, so that the weights learn to go on behind a fault. Where a return is under way already, nothing is asked. */
function asItIsRead(
  speech: Speech,
  weighed: readonly WeighedCandidate[],
  taught: readonly Taught[],
): MarkedSentences['sentences'] {
  const odds = weighSentences(speech, weighed)
  const opened = findOpened(speech, weighed, odds)
  const found = findReturns(speech, weighed, opened, odds)
  const watcher = new TurnWatcher(speech, weighed, odds.heard)
  const times = speech.sentences.map(({ offset }) => speech.timeOf(offset))
  const ownerOf = opened.map(({ sentence }) => ownerAt(taught, times[sentence] ?? 0))
  const openedAt = new Map(opened.map((one, place) => [one.sentence, { ...one, place }]))
  const foundAt = new Map(found.map((turn) => [turn.sentence, turn.teaching]))
  const sought = new Map(
    taught.flatMap(({ spans }, owner) =>
      spans.slice(1).map(({ startMs }) => [nearest(times, startMs), owner] as const),
    ),
  )
  const indexOf = new Map<number, number>()
  return speech.sentences.map((_, index) => {
    const main = openedAt.get(index)
    const turned = foundAt.get(index)
    if (main && turned === undefined) {
      indexOf.set(main.place, watcher.open(index, main.names).teaching)
      return { features: [], sought: null }
    }
    const owner = sought.get(index)
    const current = [...indexOf].find(([, teaching]) => teaching === watcher.current)?.[0]
    const isUnderWay = owner !== undefined && current !== undefined && ownerOf[current] === owner
    const isAsked = watcher.current >= 0 && !isUnderWay && !openedAt.has(index + 1)
    const features = isAsked ? watcher.features(index) : []
    const teaching = turned === undefined ? undefined : indexOf.get(turned)
    if (teaching !== undefined) watcher.turnTo({ sentence: index, teaching })
    return { features, sought: isAsked ? owner !== undefined : null }
  })
}

/** Whose main teaching goes on at a time in ms. */
function ownerAt(taught: readonly Taught[], ms: number): number {
  return taught.findIndex(({ spans: [main] }) => main && ms >= main.startMs - NEAR_MS && ms < main.endMs)
}

const NEAR_MS = 2000

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
