/** The gaps between the words of our own punctuated speech, each told which mark stands there: what the weights of breaks are fitted on. */
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { featuresAt } from '../../core/draft/break-features.ts'
import { placeNames } from '../../core/draft/place-names.ts'
import type { PlacedWord } from '../../core/draft/place-names.ts'
import type { Mark } from '../../core/draft/weigh-breaks.ts'
import { projectRoot } from '../../server/setup/project-root.ts'
import { MARKED_CLASSES_FURTHER } from '../core/draft/marked-classes-further.ts'
import { MARKED_CLASSES_MORE } from '../core/draft/marked-classes-more.ts'
import { MARKED_CLASSES_NAMED } from '../core/draft/marked-classes-named.ts'
import { MARKED_CLASSES } from '../core/draft/marked-classes.ts'
import { MINI_CLASSES_APART } from '../core/draft/mini-classes-apart.ts'
import { MINI_CLASSES } from '../core/draft/mini-classes.ts'
import { unmarked } from '../core/draft/score-marked.ts'
import { SPOKEN_CLASSES_APART } from '../core/draft/spoken-classes-apart.ts'
import { SPOKEN_CLASSES } from '../core/draft/spoken-classes.ts'
import { annotatedClasses } from './annotated-classes.ts'

export interface BreakExample {
  title: string
  group: 'corpus' | 'own' | 'short' | 'sentences'
  words: readonly PlacedWord[]
  /** The mark in front of each word. */
  marks: readonly Mark[]
  /** What speaks for a mark in front of each word. */
  features: readonly (readonly string[])[]
}

/** All punctuated classes, and sentences of our own one behind the other. */
export function breakExamples(): BreakExample[] {
  const annotated = annotatedClasses(['dev', 'fit', 'more']).map(({ title, group, text }) => ({
    title,
    group,
    lines: linesOf(text),
  }))
  const marked = [MARKED_CLASSES, MARKED_CLASSES_FURTHER, MARKED_CLASSES_MORE, MARKED_CLASSES_NAMED].flat()
  const short = [SPOKEN_CLASSES, SPOKEN_CLASSES_APART, MINI_CLASSES, MINI_CLASSES_APART].flat()
  return [
    ...annotated,
    ...marked.map((one) => ({ title: one.title, group: 'short' as const, lines: linesOf(unmarked(one)) })),
    ...short.map(({ title, transcript }) => ({ title, group: 'short' as const, lines: linesOf(transcript) })),
    { title: 'sentences', group: 'sentences' as const, lines: [ownSentences().join(' ')] },
  ].flatMap((one) => {
    const example = exampleOf(one)
    return example.marks.filter((mark) => mark !== 'none').length * MOST_WORDS_A_MARK < example.words.length
      ? []
      : [example]
  })
}

/** A text with fewer marks is written without punctuation. */
const MOST_WORDS_A_MARK = 20

function linesOf(text: string): string[] {
  return text
    .trim()
    .split('\n')
    .map((line) => line.replace(/^\[[\d:]+\] /, ''))
}

function ownSentences(): string[] {
  const folder = path.join(projectRoot(), 'tests/fixtures/cue-sentences')
  return ['fitted-on.txt', 'tuned-on.txt'].flatMap((file) =>
    readFileSync(path.join(folder, file), 'utf8')
      .split('\n')
      .flatMap((line) => {
        const text = line.split(' | ')[1]
        return text === undefined ? [] : [/[.!?]$/.test(text) ? text : `${text}.`]
      }),
  )
}

function exampleOf({ title, group, lines }: Pick<BreakExample, 'title' | 'group'> & { lines: string[] }): BreakExample {
  const said: string[] = []
  const marks: Mark[] = []
  const lineStarts = new Set<number>()
  let behind: Mark = 'none'
  let length = 0
  for (const line of lines) {
    lineStarts.add(length)
    let from = 0
    for (const match of line.matchAll(/[a-z0-9']+/gi)) {
      marks.push(from === 0 ? behind : markIn(line.slice(from, match.index)))
      said.push(match[0].toLowerCase())
      length += match[0].length + 1
      from = match.index + match[0].length
    }
    behind = markIn(line.slice(from))
  }
  const words = placeNames(said.join(' '), lineStarts)
  return { title, group, words, marks, features: words.map((_, index) => featuresAt(words, index)) }
}

function markIn(gap: string): Mark {
  if (/[.!?…]/.test(gap)) return 'stop'
  return /[,;:—–]|\s-\s/.test(gap) ? 'comma' : 'none'
}
