/** All classes whose teachings are marked, for fitting: the annotated ones and short ones of our own. */
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { projectRoot } from '../../server/setup/project-root.ts'
import { MARKED_CLASSES_FURTHER } from '../core/draft/marked-classes-further.ts'
import { MARKED_CLASSES_MORE } from '../core/draft/marked-classes-more.ts'
import { MARKED_CLASSES_NAMED } from '../core/draft/marked-classes-named.ts'
import { MARKED_CLASSES } from '../core/draft/marked-classes.ts'
import { MINI_CLASSES_APART } from '../core/draft/mini-classes-apart.ts'
import { MINI_CLASSES } from '../core/draft/mini-classes.ts'
import { stretchesOf, unmarked } from '../core/draft/score-marked.ts'
import type { MarkedClass } from '../core/draft/score-marked.ts'
import { SPOKEN_CLASSES_APART } from '../core/draft/spoken-classes-apart.ts'
import { SPOKEN_CLASSES } from '../core/draft/spoken-classes.ts'
import { annotatedClasses } from './annotated-classes.ts'
import type { ClassFolder } from './annotated-classes.ts'
import { shareWords } from './share-words.ts'

/** What a class teaches; the first span is the main teaching, the others are returns. */
export interface Taught {
  isNamed: (name: string) => boolean
  spans: readonly { startMs: number; endMs: number }[]
}

export interface KnownClass {
  title: string
  group: 'corpus' | 'own' | 'short'
  text: string
  taught: readonly Taught[]
}

/** Those annotated in the folders, and all short ones. */
export function knownClasses(folders?: readonly ClassFolder[]): KnownClass[] {
  const marked = [MARKED_CLASSES, MARKED_CLASSES_FURTHER, MARKED_CLASSES_MORE, MARKED_CLASSES_NAMED]
    .flat()
    .map(ofMarked)
  const short = [SPOKEN_CLASSES, SPOKEN_CLASSES_APART, MINI_CLASSES, MINI_CLASSES_APART].flat().flatMap(ofShort)
  return [...corpusClasses(folders), ...marked, ...short]
}

function ofMarked(marked: MarkedClass): KnownClass {
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
}): KnownClass[] {
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

function corpusClasses(folders?: readonly ClassFolder[]): KnownClass[] {
  return annotatedClasses(folders).map(({ title, group, text, exercises }) => ({
    title,
    group,
    text,
    taught: exercises.map(({ name, aliases, start, end, alsoAt }) => ({
      isNamed: (said: string) => [name, ...aliases].some((one) => shareWords(one, said)),
      spans: [[start, end] as const, ...alsoAt].map(([from, to]) => ({ startMs: from * 1000, endMs: to * 1000 })),
    })),
  }))
}
