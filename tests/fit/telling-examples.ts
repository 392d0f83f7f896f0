/** Sentences with a number that say a dose, and those that do not: of the annotated classes and of phrases by many hands. */
import { existsSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { projectRoot } from '../../server/setup/project-root.ts'
import { classNegatives, classPositives } from '../core/dose/class-phrasings.ts'
import { negatives, positives } from '../core/dose/further-phrasings.ts'
import { lastNegatives, lastPositives } from '../core/dose/last-phrasings.ts'
import { laterNegatives, laterPositives } from '../core/dose/later-phrasings.ts'
import { shortNegatives, shortPositives } from '../core/dose/short-phrasings.ts'
import { annotatedClasses, classFolderOf } from './annotated-classes.ts'

export interface TellingExample {
  /** The class or set of phrases it comes from, for leaving it out. */
  from: string
  text: string
  told: boolean
  weight: number
}

/** Sentences of classes come by the thousand. */
const CLASS_WEIGHT = 0.5

export function tellingExamples(): TellingExample[] {
  return [...ofPhrases(), ...ofOwnPhrases(), ...annotatedClasses(['dev', 'fit', 'more']).flatMap(ofClass)]
}

/** Phrases of one hand bear the same letters in front of their numbers. */
function ofPhrases(): TellingExample[] {
  return ['phrasings.json', 'phrasings-tuned-on.json'].flatMap((name) => {
    const file = path.join(projectRoot(), 'tests/fixtures', name)
    const phrases = JSON.parse(readFileSync(file, 'utf8')) as { id: string; text: string; is: boolean }[]
    return phrases.map(({ id, text, is }) => ({
      from: `phrases ${name === 'phrasings.json' ? 'open' : id.replace(/\d+$/, '')}`,
      text,
      told: is,
      weight: 1,
    }))
  })
}

/** The sets that the phrases of doses were written on, in our own words. */
function ofOwnPhrases(): TellingExample[] {
  return OWN.flatMap(([from, positives, negatives]) => [
    ...positives.map(([text]) => ({ from: `phrases ${from}`, text, told: true, weight: 1 })),
    ...negatives.map((text) => ({ from: `phrases ${from}`, text, told: false, weight: 1 })),
  ])
}

const OWN = [
  ['first', positives, negatives],
  ['later', laterPositives, laterNegatives],
  ['last', lastPositives, lastNegatives],
  ['short', shortPositives, shortNegatives],
  ['of classes', classPositives, classNegatives],
] as const

function ofClass({ title, text, exercises }: ReturnType<typeof annotatedClasses>[number]): TellingExample[] {
  const file = path.join(classFolderOf(title), 'extra.json')
  if (!existsSync(file)) return []
  const said = text.replaceAll(/\[\d+:\d+(?::\d+)?\] ?/g, ' ').replaceAll(/\s+/g, ' ')
  const { notPrescriptions } = JSON.parse(readFileSync(file, 'utf8')) as { notPrescriptions: { evidence: string }[] }
  const example = (evidence: string, told: boolean): TellingExample => ({
    from: title,
    text: sentenceAround(said, evidence),
    told,
    weight: CLASS_WEIGHT,
  })
  return [
    ...notPrescriptions.map(({ evidence }) => example(evidence, false)),
    ...exercises.flatMap(({ prescription }) => (prescription ? [example(prescription.evidence, true)] : [])),
  ]
}

function sentenceAround(text: string, evidence: string): string {
  const at = text.indexOf(evidence)
  if (at < 0) return evidence
  const before = /[^.!?]*$/.exec(text.slice(0, at))?.[0] ?? ''
  const behind = /^[^.!?]*/.exec(text.slice(at + evidence.length))?.[0] ?? ''
  return `${before}${evidence}${behind}`.trim()
}
