// An open list of 873 exercise names (yuhonas/free-exercise-db, the Unlicense; read in place, never copied): how many our
// catalogue knows, and that what it makes of a name has the name's own kind of movement.
import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { findEntry, findNames } from '../../core/catalogue/find-entry.ts'
import { foldName } from '../../core/catalogue/fold-words.ts'

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

describe.skipIf(list.length === 0)('the open list (outside data; skipped where ../shared/domain is absent)', () => {
  const whole = list.flatMap(({ name, primaryMuscles }) => {
    const entry = findEntry(name)
    return entry ? [{ name, entry, primaryMuscles }] : []
  })

  it('has 873 names, of which the catalogue knows at least a sixth as a whole', () => {
    expect(list).toHaveLength(873)
    expect(whole.length).toBeGreaterThanOrEqual(873 / 6)
  })

  it('takes few names for an exercise of another part of the body', () => {
    const wrong = whole.filter(({ entry, primaryMuscles }) => {
      const fits = primaryMuscles.flatMap((muscle) => REGION_OF[muscle] ?? [])
      return !entry.regions.includes('whole-body') && !entry.regions.some((region) => fits.includes(region))
    })
    expect(wrong.length / whole.length).toBeLessThanOrEqual(0.03)
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
