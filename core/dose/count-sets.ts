/** Counts sets by region of the body, over a routine or a class: what is worked often, and what hardly. */
import type { Prescription } from '../../shared/log-sheet.ts'
import type { Region } from '../catalogue/entry.ts'
import { setsInAll } from './time-dose.ts'
import type { Amount } from './time-dose.ts'

/** One exercise of a routine: the regions it works and its dose; null = none is set, which counts as no set. */
export interface RegionDose {
  regions: readonly Region[]
  dose: Prescription | null
}

/**
 * Sets by region, most first (by the larger number), then by name. A set counts once for each region that the exercise
 * works, in full; a set on each side counts once, since each side gets it. One set where a dose says none.
 */
export function setsByRegion(routine: readonly RegionDose[]): { region: Region; sets: Amount }[] {
  const sums = new Map<Region, Amount>()
  for (const { regions, dose } of routine) {
    if (dose === null) continue
    const { min, max } = setsInAll(dose)
    for (const region of new Set(regions)) {
      const before = sums.get(region) ?? { min: 0, max: 0 }
      sums.set(region, { min: before.min + min, max: before.max + max })
    }
  }
  return [...sums]
    .map(([region, sets]) => ({ region, sets }))
    .toSorted((a, b) => b.sets.max - a.sets.max || b.sets.min - a.sets.min || (a.region < b.region ? -1 : 1))
}
