// Doses as published guidance words them, and energy values of a published table.
import fs from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { energyByMet, energyByOxygen } from '../../core/dose/estimate-effort.ts'
import { readDose } from '../../core/dose/read-dose.ts'
import { timeUnderTension } from '../../core/dose/time-dose.ts'
import { buildPrescription, type Prescription } from '../../shared/log-sheet.ts'

const range = (min: number, max: number) => ({ min, max })

// Our short wording of numbers from: Ratamess et al., Progression models in resistance training for healthy adults,
// Med Sci Sports Exerc 41(3):687-708, 2009 (abstract): 8-12 repetitions for novices, 3-5 minutes of rest for strength,
// 2-3 days a week for novices, 4-5 for the advanced, a load raise at one or two repetitions above the target.
const ACSM_2009: readonly [text: string, fields: Partial<Prescription>][] = [
  ['8-12 repetitions', { reps: range(8, 12) }],
  ['rest 3-5 min between sets', { restSeconds: range(180, 300), restBetween: 'sets' }],
  ['2-3 days per week', { frequency: '2-3 times a week' }],
  ['4-5 days per week', { frequency: '4-5 times a week' }],
  ['at 60-70% of 1RM', { load: '60-70 % 1RM' }],
]

// Garber et al., Med Sci Sports Exerc 43(7):1334-1359, 2011: 30 min on 5 days a week (abstract);
// 2-4 sets, holds of 10-30 s (from memory).
const ACSM_2011: readonly [text: string, fields: Partial<Prescription>][] = [
  ['at least 30 minutes', { workSeconds: { min: 1800, max: null } }],
  ['2-4 sets of 8-12 repetitions', { sets: range(2, 4), reps: range(8, 12) }],
  ['hold the stretch for 10-30 seconds', { holdSeconds: range(10, 30), holdPer: 'set' }],
]

describe('published guidance', () => {
  it.each([...ACSM_2009, ...ACSM_2011])('%s', (text, fields) => {
    expect(readDose(text)).toMatchObject(fields)
  })

  // ACSM 2011 (from memory): 60 s in all for each stretch.
  it.each([
    ['2 x 30 s hold', true],
    ['2 x 20 s hold', false],
    ['4 x 15 s hold', true],
  ])('%s reaches 60 s for the stretch: %s', (text, isEnough) => {
    const held = timeUnderTension(readDose(text) ?? buildPrescription({})).seconds?.min ?? 0
    expect(held >= 60).toBe(isEnough)
  })
})

// Outside data, never copied: exercise rows of the 2011 Compendium of Physical Activities
// (Ainsworth et al., Med Sci Sports Exerc 43(8):1575-1581, 2011).
const TABLE = path.join(import.meta.dirname, '../../../shared/domain/met2011_exercise.csv')
const isThere = fs.existsSync(TABLE)

describe.skipIf(!isThere)(`the 2011 Compendium${isThere ? '' : ' (skipped: outside data is not there)'}`, () => {
  const rows = isThere ? fs.readFileSync(TABLE, 'utf8').trim().split('\n').slice(1) : []
  const mets = new Map(rows.map((row) => [row.slice(0, 5), Number(row.split(',')[1])]))

  it.each([
    ['02054', 3.5],
    ['02020', 8],
    ['02022', 3.8],
    ['02101', 2.3],
    ['02105', 3],
    ['02150', 2.5],
  ])('row %s has the MET that the worked numbers use', (code, met) => {
    expect(mets.get(code)).toBe(met)
  })

  it('differs by exactly 5 % between the two common forms, for every row', () => {
    expect(mets.size).toBeGreaterThan(50)
    for (const met of mets.values()) {
      expect(energyByOxygen(met, 70, 30) / energyByMet(met, 70, 30)).toBeCloseTo(1.05, 9)
    }
  })
})
