/** The candidates of marked classes, each told whether it starts what the class teaches: what the weights of starts are fitted on. */
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { foldName } from '../../core/catalogue/fold-words.ts'
import { findCandidates } from '../../core/draft/find-candidates.ts'
import { findKit } from '../../core/draft/find-kit.ts'
import type { Candidate } from '../../core/draft/naming.ts'
import { readSpeech } from '../../core/draft/read-speech.ts'
import { startFeatures } from '../../core/draft/start-features.ts'
import type { BreakTable } from '../../core/draft/weigh-breaks.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { MARKED_CLASSES_MORE } from '../core/draft/marked-classes-more.ts'
import { MARKED_CLASSES_NAMED } from '../core/draft/marked-classes-named.ts'
import { MARKED_CLASSES_FURTHER } from '../core/draft/marked-classes-further.ts'
import { MARKED_CLASSES } from '../core/draft/marked-classes.ts'
import { MINI_CLASSES_APART } from '../core/draft/mini-classes-apart.ts'
import { MINI_CLASSES } from '../core/draft/mini-classes.ts'
import { stretchesOf, unmarked } from '../core/draft/score-marked.ts'
import type { MarkedClass } from '../core/draft/score-marked.ts'
import { plain } from '../core/draft/spoken-class.ts'
import { SPOKEN_CLASSES_APART } from '../core/draft/spoken-classes-apart.ts'
import { SPOKEN_CLASSES } from '../core/draft/spoken-classes.ts'
import { annotatedClasses } from './annotated-classes.ts'
import { breaksApart } from './weigh-gaps.ts'

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

interface Taught {
  isNamed: (name: string) => boolean
  spans: readonly { startMs: number; endMs: number }[]
}

interface Known {
  title: string
  group: FitClass['group']
  text: string
  taught: readonly Taught[]
}

/** All classes, as written and without punctuation, there with the breaks of the table, which know the class, and as they are found in a class that is new. */
export function fitClasses(): FitClass[] {
  const breaks = breaksApart()
  const marked = [MARKED_CLASSES, MARKED_CLASSES_FURTHER, MARKED_CLASSES_MORE, MARKED_CLASSES_NAMED]
    .flat()
    .map(ofMarked)
  const short = [SPOKEN_CLASSES, SPOKEN_CLASSES_APART, MINI_CLASSES, MINI_CLASSES_APART].flat().flatMap(ofShort)
  return [...corpusClasses(), ...marked, ...short].flatMap((known) => [
    examplesOf(known),
    examplesOf({ ...known, text: plain(known.text) }),
    examplesOf({ ...known, text: plain(known.text) }, breaks.of(known.title)),
  ])
}

function ofMarked(marked: MarkedClass): Known {
  const stretches = stretchesOf(marked)
  return {
    title: marked.title,
    group: 'short',
    text: unmarked(marked),
    taught: marked.taught.map(({ name }, index) => ({
      isNamed: (said) => name.test(said),
      spans: stretches.get(index + 1) ?? [],
    })),
  }
}

/** Short classes, whose stretches lie in a file: placed by the reader of phrases, kept where it found all that is taught by its name and nothing else. */
function ofShort({
  title,
  transcript,
  taught,
}: {
  title: string
  transcript: string
  taught: readonly { name: RegExp }[]
}): Known[] {
  const marks = SHORT_STRETCHES[title]
  if (!marks) return []
  return [
    {
      title,
      group: 'short' as const,
      text: transcript,
      taught: taught.map(({ name }, index) => ({
        isNamed: (said) => name.test(said),
        spans: (marks[index] ?? []).map(([startMs, endMs]) => ({ startMs, endMs })),
      })),
    },
  ]
}

/** By title, for each exercise in the order taught its stretches, in ms. */
const SHORT_STRETCHES = JSON.parse(
  readFileSync(path.join(projectRoot(), 'tests/fixtures/short-class-stretches.json'), 'utf8'),
) as Readonly<Record<string, readonly (readonly [number, number])[][]>>

function corpusClasses(): Known[] {
  return annotatedClasses().map(({ title, group, text, exercises }) => ({
    title,
    group,
    text,
    taught: exercises.map(({ name, aliases, start, end, alsoAt }) => ({
      isNamed: (said: string) => [name, ...aliases].some((one) => shareWords(one, said)),
      spans: [[start, end] as const, ...alsoAt].map(([from, to]) => ({ startMs: from * 1000, endMs: to * 1000 })),
    })),
  }))
}

/** At least half of the words of both. */
function shareWords(a: string, b: string): boolean {
  const [one, two] = [foldName(a).split(' '), foldName(b).split(' ')]
  const common = one.filter((word) => two.includes(word)).length
  return (2 * common) / (one.length + two.length) >= 0.5
}

function examplesOf({ title, group, text, taught }: Known, breakWeights?: BreakTable): FitClass {
  const transcript = parseTranscript(text)
  if (transcript.kind !== 'timed') throw new Error(`${title} has no times.`)
  const speech = readSpeech(transcript.lines, breakWeights)
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
