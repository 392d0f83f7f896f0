// An open list of 873 exercise names (yuhonas/free-exercise-db, the Unlicense; read in place, never copied): how many our
// catalogue knows, that what it makes of a name has the name's own kind of movement, and how many of a hundred matches that
// were judged by hand are right.
import { createHash } from 'node:crypto'
import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { entryById } from '../../core/catalogue/catalogue.ts'
import type { CatalogueEntry } from '../../core/catalogue/entry.ts'
import { findEntry, findNames } from '../../core/catalogue/find-entry.ts'
import { foldName } from '../../core/catalogue/fold-words.ts'
import { JUDGED } from './open-list-judged.ts'

const file = fileURLToPath(new URL('../../../shared/domain/free-exercise-db.exercises.json', import.meta.url))

interface Listed {
  name: string
  primaryMuscles: string[]
  category: string
  instructions: string[]
}
const list: Listed[] = existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Listed[]) : []

/** The list's muscles in the words of our regions. */
const REGION_OF: Record<string, string[]> = {
  quadriceps: ['legs', 'hips'],
  hamstrings: ['legs', 'hips', 'back'],
  glutes: ['hips', 'legs'],
  adductors: ['legs', 'hips'],
  abductors: ['hips', 'legs'],
  calves: ['calves', 'legs'],
  abdominals: ['trunk', 'hips'],
  'lower back': ['back', 'hips', 'trunk'],
  'middle back': ['back', 'arms', 'shoulders'],
  lats: ['back', 'arms', 'shoulders'],
  traps: ['shoulders', 'neck', 'back'],
  neck: ['neck'],
  chest: ['chest', 'arms', 'shoulders'],
  shoulders: ['shoulders', 'arms', 'back', 'chest'],
  biceps: ['arms', 'back'],
  triceps: ['arms', 'chest', 'shoulders'],
  forearms: ['arms'],
}

/** The muscles of a name and the regions of an entry have nothing in common. */
const isElsewhere = ({ entry, primaryMuscles }: { entry: CatalogueEntry; primaryMuscles: string[] }): boolean => {
  const fits = primaryMuscles.flatMap((muscle) => REGION_OF[muscle] ?? [])
  return !entry.regions.includes('whole-body') && !entry.regions.some((region) => fits.includes(region))
}

const sumOf = (name: string) => createHash('sha256').update(name).digest('hex').slice(0, 12)

describe.skipIf(list.length === 0)('the open list (outside data; skipped where ../shared/domain is absent)', () => {
  const whole = list.flatMap(({ name, primaryMuscles }) => {
    const entry = findEntry(name)
    return entry ? [{ name, entry, primaryMuscles }] : []
  })
  /** The last name inside a longer one that the catalogue does not know as a whole, as speech is read. */
  const part = list.flatMap(({ name, primaryMuscles }) => {
    const entry = findEntry(name) ? undefined : findNames(name).at(-1)?.entry
    return entry ? [{ name, entry, primaryMuscles }] : []
  })

  it('has 873 names, of which the catalogue knows at least 31 in 100 as a whole and 62 whole or in part', () => {
    expect(list).toHaveLength(873)
    expect(whole.length / 873).toBeGreaterThanOrEqual(0.31)
    expect((whole.length + part.length) / 873).toBeGreaterThanOrEqual(0.62)
  })

  it('takes few names for an exercise of another part of the body', () => {
    expect(whole.filter(isElsewhere).length / whole.length).toBeLessThanOrEqual(0.02)
    expect(part.filter(isElsewhere).length / part.length).toBeLessThanOrEqual(0.04)
  })

  describe('a hundred matches judged by hand', () => {
    const found = new Map([...whole, ...part].map(({ name, entry }) => [sumOf(name), entry.id]))
    const known = new Set(whole.map(({ name }) => sumOf(name)))
    const count = (verdict: string, sums: readonly (typeof JUDGED)[number][] = JUDGED) =>
      sums.filter((row) => row[2] === verdict).length

    it('are still what was judged; a name that is taken for another exercise now is to be judged anew', () => {
      expect(JUDGED).toHaveLength(100)
      expect(new Set(JUDGED.map(([sum]) => sum)).size).toBe(100)
      const names = new Map(list.map(({ name }) => [sumOf(name), name]))
      const other = JUDGED.flatMap(([sum, id]) => {
        const now = found.get(sum)
        return now === undefined || now === id ? [] : [`${names.get(sum) ?? sum}: ${id} was judged, now ${now}`]
      })
      expect(other).toEqual([])
    })

    it('are wrong in at most 9, right in at least 70; of names known as a whole at most 2 are wrong', () => {
      expect(count('wrong')).toBeLessThanOrEqual(9)
      expect(count('right')).toBeGreaterThanOrEqual(70)
      const asWhole = JUDGED.filter(([sum]) => known.has(sum))
      expect(asWhole.length).toBeGreaterThanOrEqual(50)
      expect(count('wrong', asWhole)).toBeLessThanOrEqual(2)
    })

    it('hold nothing of the list but sums, and ids of our own', () => {
      for (const [sum, id] of JUDGED) {
        expect(sum).toMatch(/^[0-9a-f]{12}$/)
        expect(entryById(id)).not.toBeNull()
      }
    })
  })

  it('gives a found name its exact place and never the same place twice', () => {
    for (const { name } of list) {
      let last = -1
      for (const found of findNames(name)) {
        expect(found.offset).toBeGreaterThanOrEqual(last)
        last = found.offset + found.length
        const said = foldName(name.slice(found.offset, last))
        const names = [found.entry.name, ...found.entry.alsoCalled].map(foldName)
        expect(found.slip || names.includes(said), `${name}: ${said}`).toBe(true)
      }
    }
  })

  it('finds few names in the instructions, which tell movements and seldom name exercises', () => {
    const sentences = list.flatMap(({ instructions }) => instructions)
    const named = sentences.filter((sentence) => findNames(sentence).length > 0)
    expect(named.length / sentences.length).toBeLessThanOrEqual(0.06)
  })
})
