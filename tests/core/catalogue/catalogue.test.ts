// The catalogue holds what it promises: sound entries, no name twice, neighbours that exist, words for every part of class life.
import { describe, expect, it } from 'vitest'
import { CATALOGUE, entryById } from '../../../core/catalogue/catalogue.ts'
import { MOVEMENTS, POSITIONS } from '../../../core/catalogue/entry.ts'
import { findEntry } from '../../../core/catalogue/find-entry.ts'
import { foldName } from '../../../core/catalogue/fold-words.ts'
import { EVERYDAY_NAMES, THING_NAMES } from '../../../core/catalogue/words/en/everyday-names.ts'
import { SHARED_NAMES } from '../../../core/catalogue/words/en/shared-names.ts'

const REGIONS = [
  'legs',
  'hips',
  'back',
  'chest',
  'shoulders',
  'arms',
  'trunk',
  'calves',
  'neck',
  'whole-body',
  'breath',
]

/** The values that occur more than once. */
function repeated(values: readonly string[]): string[] {
  return values.filter((value, index) => values.indexOf(value) !== index)
}

describe('the catalogue', () => {
  it('has at least 250 exercises', () => {
    expect(CATALOGUE.length).toBeGreaterThanOrEqual(250)
  })

  it('has ids that are slugs, each once', () => {
    const ids = CATALOGUE.map((entry) => entry.id)
    expect(repeated(ids)).toEqual([])
    expect(ids.filter((id) => !/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(id))).toEqual([])
  })

  it('has no name that stands for two exercises, however it is spelt', () => {
    const names = CATALOGUE.flatMap((entry) => [...new Set([entry.name, ...entry.alsoCalled].map(foldName))])
    expect(repeated(names)).toEqual([])
  })

  it('writes names as said: lower case, no space around', () => {
    const names = CATALOGUE.flatMap((entry) => [entry.name, ...entry.alsoCalled])
    expect(names.filter((name) => name !== name.toLowerCase().trim() || name === '')).toEqual([])
  })

  it('uses the vocabulary only, and says position and region of each', () => {
    const positions: readonly string[] = POSITIONS
    const movements: readonly string[] = MOVEMENTS
    for (const entry of CATALOGUE) {
      expect(entry.positions.length, entry.id).toBeGreaterThan(0)
      expect(entry.regions.length, entry.id).toBeGreaterThan(0)
      expect(
        entry.positions.filter((position) => !positions.includes(position)),
        entry.id,
      ).toEqual([])
      expect(
        entry.movements.filter((movement) => !movements.includes(movement)),
        entry.id,
      ).toEqual([])
      expect(
        entry.regions.filter((region) => !REGIONS.includes(region)),
        entry.id,
      ).toEqual([])
    }
  })

  it('names only neighbours that exist, and never the exercise itself', () => {
    for (const entry of CATALOGUE) {
      const neighbours = [...entry.easier, ...entry.harder]
      expect(
        neighbours.filter((id) => entryById(id) === null || id === entry.id),
        entry.id,
      ).toEqual([])
    }
  })

  it('finds every exercise by each of its own names', () => {
    const lost = CATALOGUE.flatMap((entry) =>
      [entry.name, ...entry.alsoCalled].filter((name) => findEntry(name)?.id !== entry.id),
    )
    expect(lost).toEqual([])
  })

  it('has a home for every shared name', () => {
    const ids = Object.values(SHARED_NAMES).flatMap((byKit) => Object.values(byKit))
    expect(ids.filter((id) => entryById(id) === null)).toEqual([])
  })

  it('lists no everyday name both as a movement and as a thing', () => {
    expect(repeated([...EVERYDAY_NAMES, ...THING_NAMES].map(foldName))).toEqual([])
  })

  it.each([
    ['strength', 'goblet-squat'],
    ['barbell', 'back-squat'],
    ['bands', 'band-pull-apart'],
    ['rings', 'ring-row'],
    ['machines', 'lat-pulldown'],
    ['mobility', 'cat-cow'],
    ['stretching', 'calf-stretch'],
    ['mat work', 'dead-bug'],
    ['conditioning', 'burpee'],
    ['running', 'a-skip'],
    ['rowing', 'rate-ladder'],
    ['chair', 'sit-to-stand'],
    ['pregnancy', 'rib-breathing'],
    ['rehabilitation', 'quad-set'],
    ['balance', 'tandem-stand'],
    ['breathing', 'box-breathing'],
  ])('covers %s', (_family, id) => {
    expect(entryById(id)).not.toBeNull()
  })
})
