// Required cautions on five annotated classes: which are required, and whether they were said.
// Source of the gold: the annotated class transcripts in tests/fixtures/corpus (ours; one annotator, a working rule and no
// clinical standard). The sheets are made from the annotation, so this measures the table and the words alone.
import fs from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { hazardsIn } from '../../core/cautions/find-hazards.ts'
import { checkSheet } from '../../core/checks/check-sheet.ts'
import { HAZARD_SLUGS } from '../../core/cautions/hazard-slugs.ts'
import type { Audience } from '../../shared/log-sheet.ts'
import { sheetOfClass } from '../core/cautions/sheet-of-class.ts'
import type { GoldClass, GoldExtra } from '../core/cautions/sheet-of-class.ts'

const ROOT = path.join(import.meta.dirname, '../fixtures/corpus/dev')
const AUDIENCES: Readonly<Record<string, readonly Audience[]>> = { '03-prenatal-mobility': ['pregnancy'] }

interface Counts {
  wanted: number
  given: number
  both: number
  stateRight: number
}

const read = (name: string, file: string): unknown => JSON.parse(fs.readFileSync(path.join(ROOT, name, file), 'utf8'))

function countsOf(name: string): Counts {
  const gold = read(name, 'gold.json') as GoldClass
  const extra = read(name, 'extra.json') as GoldExtra
  const report = checkSheet(sheetOfClass(gold, extra, AUDIENCES[name] ?? [], hazardsIn))
  const counts = { wanted: 0, given: 0, both: 0, stateRight: 0 }
  gold.exercises.forEach((exercise, index) => {
    const rows = report.cautions.filter((row) => row.segmentId === `seg-${index + 1}` && row.level !== 'info')
    counts.wanted += exercise.requiredCautions.length
    counts.given += rows.length
    for (const { reason, spoken } of exercise.requiredCautions) {
      const row = rows.find((one) => one.hazard === reason)
      if (row) counts.both += 1
      if (row && (row.state === 'spoken') === spoken) counts.stateRight += 1
    }
  })
  return counts
}

const names = fs.readdirSync(ROOT).toSorted()

describe('required cautions of annotated classes', () => {
  const all = names.map(countsOf)
  const sum = (field: keyof Counts) => all.reduce((total, counts) => total + counts[field], 0)

  it('reads five classes with 43 required cautions', () => {
    expect(names).toHaveLength(5)
    expect(sum('wanted')).toBe(43)
  })

  it('finds nearly all that are required (reached: 43 of 43)', () => {
    expect(sum('both')).toBeGreaterThanOrEqual(41)
  })

  it('raises few false alarms (reached: 43 right of 43 raised)', () => {
    expect(sum('both') / sum('given')).toBeGreaterThanOrEqual(0.95)
  })

  it('tells said from not said (reached: 43 of 43)', () => {
    expect(sum('stateRight')).toBeGreaterThanOrEqual(41)
  })

  it.each(names)('%s: the words an annotator named cover the hazard', (name) => {
    const { cautionEvidence } = read(name, 'extra.json') as GoldExtra
    for (const [exercise, hazards] of Object.entries(cautionEvidence)) {
      for (const [hazard, { evidence }] of Object.entries(hazards)) {
        expect(HAZARD_SLUGS).toContain(hazard)
        expect(hazardsIn(evidence), `${exercise}: ${evidence}`).toContain(hazard)
      }
    }
  })
})
