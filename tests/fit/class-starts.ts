/** The candidates of marked classes, each told whether it starts what the class teaches: what the weights of starts are fitted on. */
import { foldName } from '../../core/catalogue/fold-words.ts'
import { findCandidates } from '../../core/draft/find-candidates.ts'
import { findKit } from '../../core/draft/find-kit.ts'
import type { Candidate } from '../../core/draft/naming.ts'
import { readSpeech } from '../../core/draft/read-speech.ts'
import { startFeatures } from '../../core/draft/start-features.ts'
import type { BreakTable, MarkScores } from '../../core/draft/weigh-breaks.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { plain } from '../core/draft/spoken-class.ts'
import { knownClasses } from './known-classes.ts'
import type { KnownClass, Taught } from './known-classes.ts'
import { readApartTables } from './apart-tables.ts'

/** A candidate as an example: `start` null = says the name again inside its teaching, tells nothing. */
export interface Example {
  features: readonly string[]
  start: boolean | null
}

export interface FitClass {
  title: string
  group: 'corpus' | 'own' | 'short'
  unpunctuated: boolean
  examples: Example[]
}

const breaksOf = readApartTables<MarkScores>('breaks', 'first')

/** All classes, as written and without punctuation, there with the breaks of the table, which know the class, and as they are found in a class that is new. */
export function fitClasses(): FitClass[] {
  return knownClasses().flatMap((known) => [
    examplesOf(known),
    examplesOf({ ...known, text: plain(known.text) }),
    examplesOf({ ...known, text: plain(known.text) }, breaksOf(known.title)),
  ])
}

function examplesOf({ title, group, text, taught }: KnownClass, breakWeights?: BreakTable): FitClass {
  const transcript = parseTranscript(text)
  if (transcript.kind !== 'timed') throw new Error(`${title} has no times.`)
  const speech = readSpeech(transcript.lines, { breaks: breakWeights })
  const candidates = findCandidates(speech, findKit(speech.text))
  const at = candidates.map(({ offset }) => speech.timeOf(offset))
  const starts: (boolean | null)[] = candidates.map(() => false)
  for (const one of taught) {
    const isNamed = namedBy(one, candidates, at)
    for (const { startMs, endMs } of one.spans) {
      const inside = candidates.flatMap((candidate, index) => {
        const time = at[index] ?? 0
        return time >= startMs - EARLY_MS && time <= endMs && isNamed(candidate) ? [index] : []
      })
      inside.forEach((index, place) => (starts[index] = place === 0 ? true : null))
    }
  }
  const features = startFeatures(speech, candidates)
  return {
    title,
    group,
    unpunctuated: speech.unpunctuated,
    examples: features.map((list, index) => ({ features: list, start: starts[index] ?? null })),
  }
}

const EARLY_MS = 3000

/** By its name, or by a part of a name said in one of its stretches. */
function namedBy(
  { isNamed, spans }: Taught,
  candidates: readonly Candidate[],
  at: readonly number[],
): (candidate: Candidate) => boolean {
  const parts = new Set<string>()
  candidates.forEach(({ name, key }, index) => {
    const time = at[index] ?? 0
    if (!isNamed(name) || !spans.some(({ startMs, endMs }) => time >= startMs - EARLY_MS && time <= endMs)) return
    parts.add(key)
    const words = foldName(name).split(' ')
    words.forEach((_, cut) => parts.add(words.slice(cut).join(' ')).add(words.slice(0, cut + 1).join(' ')))
  })
  return ({ name, key, source }) =>
    isNamed(name) || (source === 'part' && (parts.has(key) || parts.has(foldName(name))))
}
