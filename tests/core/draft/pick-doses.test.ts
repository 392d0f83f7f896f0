// Doses picked of all that is told in whole classes: nothing is made up, and doubt is told with the words of the other choice.
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { findDoses } from '../../../core/dose/read-dose.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { projectRoot } from '../../../server/setup/project-root.ts'
import type { LogSheet, Prescription } from '../../../shared/log-sheet.ts'

const folder = path.join(projectRoot(), 'tests/fixtures/corpus/dev')
const classes = readdirSync(folder).map((id) => {
  const text = readFileSync(path.join(folder, id, 'transcript.txt'), 'utf8').trimEnd()
  return { id, text, sheet: draftSheet({ transcript: parseTranscript(text) }) }
})

const dosesOf = (sheet: LogSheet): Prescription[] => sheet.segments.flatMap(({ prescription }) => prescription ?? [])
const numbersIn = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]+/g, ' ')

describe.each(classes)('$id', ({ text, sheet }) => {
  it('has words for every dose, the same each time', () => {
    expect(dosesOf(sheet).length).toBeGreaterThan(5)
    for (const { said, ruleId, confidence } of dosesOf(sheet)) {
      expect(said.length).toBeGreaterThan(0)
      expect(ruleId).toBe('dose-weighed')
      expect(confidence).toBeGreaterThan(0)
      expect(confidence).toBeLessThanOrEqual(1)
    }
    expect(draftSheet({ transcript: parseTranscript(text) })).toEqual(sheet)
  })

  it('says an amount that its words say, but for the range of what changes on the way', () => {
    for (const { reps, said, scheme } of dosesOf(sheet)) {
      if (reps === null || reps === 'max' || reps.min !== reps.max || scheme === 'emom') continue
      const words = said.map((quote) => quote.text).join('. ')
      const read = findDoses(words).flatMap(({ dose }) =>
        dose.reps === null || dose.reps === 'max' ? [] : [dose.reps.min],
      )
      const isSaid = read.includes(reps.min) || SPELLED[reps.min ?? 0]?.test(numbersIn(words)) === true
      expect(isSaid, `${String(reps.min)} in "${words}"`).toBe(true)
    }
  })

  it('names the words of the other choice where it doubts', () => {
    for (const { unsure, why } of dosesOf(sheet)) {
      const others = why.filter((reason) => reason.startsWith('Perhaps'))
      if (others.length > 0) expect(unsure).toBe(true)
      for (const reason of others) expect(text).toContain(/"(.+)"/.exec(reason)?.[1])
    }
  })
})

const WORDS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'
const SPELLED = WORDS.split(' ').map((word, value) => new RegExp(`\\b(?:${word}s?|${String(value)})\\b`))

it('a rest that changes with the round is a range: ten seconds off, later five', () => {
  const circuit = classes.find(({ id }) => id.startsWith('05'))?.sheet
  const rests = circuit ? dosesOf(circuit).filter(({ scheme }) => scheme === 'circuit') : []
  expect(rests.map(({ restSeconds }) => restSeconds)).toEqual(Array.from({ length: 7 }, () => ({ min: 5, max: 10 })))
})

it('what one phrase says of the demo class holds: sets, amount and hold', () => {
  const samples = path.join(projectRoot(), 'media-samples')
  const [captions = ''] = readdirSync(samples).filter((name) => name.endsWith('.vtt'))
  const { segments } = draftSheet({ transcript: parseTranscript(readFileSync(path.join(samples, captions), 'utf8')) })
  const doseOf = (name: string): Partial<Prescription> | null =>
    segments.find(({ exercise }) => exercise.name === name)?.prescription ?? null
  const at = (value: number): { min: number; max: number } => ({ min: value, max: value })
  expect(doseOf('Wall push-ups')).toMatchObject({ sets: at(1), reps: at(10), unsure: false })
  expect(doseOf('Shoulder press')).toMatchObject({ sets: at(1), reps: at(8), restSeconds: null })
  expect(doseOf('Heel raises')).toMatchObject({ sets: at(2), reps: at(10), holdSeconds: at(2) })
  expect(doseOf('Biceps curl')).toMatchObject({ sets: at(2), reps: at(8), restSeconds: at(30) })
})
