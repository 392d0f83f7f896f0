/** Facts about the choice of an exercise by what its teaching shows. */
import { describe, expect, it } from 'vitest'
import { entryById } from '../../../core/catalogue/catalogue.ts'
import type { CatalogueEntry } from '../../../core/catalogue/entry.ts'
import type { Shape } from '../../../core/catalogue/hear-shape.ts'
import { fitFeatures, shapeFit } from '../../../core/draft/shape-fit.ts'

const shown = (...shapes: readonly (readonly [Shape, number])[]): ReadonlyMap<Shape, number> => new Map(shapes)

const known = (id: string): CatalogueEntry => {
  const entry = entryById(id)
  if (!entry) throw new Error(`The catalogue has no ${id}.`)
  return entry
}

describe('shapeFit', () => {
  it('is better for what is shown than for what is not', () => {
    const odds = shown(['supine', -4], ['hanging', 3], ['pull', 2], ['squat', -3])
    expect(shapeFit(known('pull-up'), odds)).toBeGreaterThan(shapeFit(known('back-squat'), odds))
  })

  it('is the same for all where nothing is shown', () => {
    expect(shapeFit(known('pull-up'), shown())).toBe(shapeFit(known('back-squat'), shown()))
  })
})

describe('fitFeatures', () => {
  const at = { odds: shown(['hanging', 3], ['pull', 2]), kit: new Set(['rings']) }

  it('says where the kit of an exercise was named', () => {
    expect(fitFeatures(known('ring-row'), at, 0, new Set())).toContain('kit here')
    expect(fitFeatures(known('back-squat'), at, 0, new Set(['barbell']))).toContain('kit of the class')
    expect(fitFeatures(known('back-squat'), at, 0, new Set())).toContain('kit nowhere')
    expect(fitFeatures(known('plank'), at, 0, new Set())).toContain('kit none')
  })

  it('says how far an exercise is behind the best', () => {
    const [ring, squat] = [known('pull-up'), known('back-squat')]
    const best = Math.max(shapeFit(ring, at.odds), shapeFit(squat, at.odds))
    expect(fitFeatures(ring, at, best, new Set())).toContain('behind 0')
    expect(fitFeatures(squat, at, best, new Set())).not.toContain('behind 0')
  })
})
