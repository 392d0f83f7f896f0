// Whom a class is meant for, heard from its words alone, on the classes kept apart from all fitting.
// Source of the gold: the cautions that their annotation requires (ours; a working rule and no clinical standard): those of rehabilitation
// or of falls in at least a quarter of the exercises.
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { hearAudience } from '../../core/draft/hear-audience.ts'
import { plain } from '../core/draft/spoken-class.ts'
import type { GoldClass } from '../core/cautions/sheet-of-class.ts'

const ROOT = path.join(import.meta.dirname, '../fixtures/corpus/apart')
const FALLS: ReadonlySet<string> = new Set(['fall-risk', 'dizziness-rise', 'bone-health'])

function meantFor({ exercises }: GoldClass): string[] {
  const withOne = (is: (reason: string) => boolean): number =>
    exercises.filter(({ requiredCautions }) => requiredCautions.some(({ reason }) => is(reason))).length
  if (withOne((reason) => reason === 'pain-stop') * 2 >= exercises.length) return ['rehab']
  return withOne((reason) => FALLS.has(reason)) * 4 >= exercises.length ? ['older-adults'] : []
}

const classes = readdirSync(ROOT).map((name) => {
  const text = readFileSync(path.join(ROOT, name, 'transcript.txt'), 'utf8').trimEnd()
  const gold = JSON.parse(readFileSync(path.join(ROOT, name, 'gold.json'), 'utf8')) as GoldClass
  return { text, meant: meantFor(gold) }
})
const words = (text: string): string => text.replace(/^\[[\d:]+\] /gm, '')

describe.each([
  ['as written', (text: string) => words(text)],
  ['without punctuation', (text: string) => words(plain(text))],
])('whom a class is meant for, %s', (_how, said) => {
  it('is heard in six of the seven classes for guarded people', () => {
    const guarded = classes.filter(({ meant }) => meant.length > 0)
    expect(guarded).toHaveLength(7)
    const right = guarded.filter(({ text, meant }) => hearAudience(said(text)).join() === meant.join())
    expect(right.length).toBeGreaterThanOrEqual(6)
  })

  it('is heard in none of the nineteen others', () => {
    const others = classes.filter(({ meant }) => meant.length === 0)
    expect(others).toHaveLength(19)
    expect(others.flatMap(({ text }) => hearAudience(said(text)))).toEqual([])
  })
})
