/** The catalogue: every exercise of our own list, filled out and in the order of its families. */
import type { CatalogueEntry, EntrySource } from './entry.ts'
import { BALANCE } from './entries-balance.ts'
import { BAND } from './entries-band.ts'
import { BAND_LOWER } from './entries-band-lower.ts'
import { BARBELL } from './entries-barbell.ts'
import { BARBELL_UPPER } from './entries-barbell-upper.ts'
import { BREATHING } from './entries-breathing.ts'
import { CHAIR_UPPER } from './entries-chair-upper.ts'
import { CHAIR_STANDING } from './entries-chair-standing.ts'
import { CHAIR } from './entries-chair.ts'
import { CONDITIONING_STEPS } from './entries-conditioning-steps.ts'
import { CONDITIONING } from './entries-conditioning.ts'
import { HIPS } from './entries-hips.ts'
import { KETTLEBELL } from './entries-kettlebell.ts'
import { KETTLEBELL_WHOLE } from './entries-kettlebell-whole.ts'
import { LEGS } from './entries-legs.ts'
import { MACHINE } from './entries-machine.ts'
import { MACHINE_CARDIO } from './entries-machine-cardio.ts'
import { MAT_FLOW } from './entries-mat-flow.ts'
import { MAT } from './entries-mat.ts'
import { MOBILITY } from './entries-mobility.ts'
import { MOBILITY_LOWER } from './entries-mobility-lower.ts'
import { POSES } from './entries-poses.ts'
import { POSES_HELD } from './entries-poses-held.ts'
import { PRENATAL } from './entries-prenatal.ts'
import { PUSH } from './entries-push.ts'
import { PLANKS } from './entries-planks.ts'
import { REHAB } from './entries-rehab.ts'
import { RINGS } from './entries-rings.ts'
import { ROWING } from './entries-rowing.ts'
import { RUNNING } from './entries-running.ts'
import { STRETCH } from './entries-stretch.ts'
import { WEIGHTS_WHOLE } from './entries-weights-whole.ts'
import { WEIGHTS } from './entries-weights.ts'

const SOURCES: readonly EntrySource[] = [
  ...LEGS,
  ...HIPS,
  ...PUSH,
  ...PLANKS,
  ...MAT,
  ...MAT_FLOW,
  ...WEIGHTS,
  ...WEIGHTS_WHOLE,
  ...KETTLEBELL,
  ...KETTLEBELL_WHOLE,
  ...BARBELL,
  ...BARBELL_UPPER,
  ...BAND,
  ...BAND_LOWER,
  ...RINGS,
  ...MACHINE,
  ...MACHINE_CARDIO,
  ...MOBILITY,
  ...MOBILITY_LOWER,
  ...STRETCH,
  ...POSES,
  ...POSES_HELD,
  ...CONDITIONING,
  ...CONDITIONING_STEPS,
  ...RUNNING,
  ...ROWING,
  ...CHAIR,
  ...CHAIR_UPPER,
  ...CHAIR_STANDING,
  ...BALANCE,
  ...PRENATAL,
  ...REHAB,
  ...BREATHING,
]

/** All entries; ids are unique, and no name stands for two entries. */
export const CATALOGUE: readonly CatalogueEntry[] = SOURCES.map(fillOut)

const BY_ID: ReadonlyMap<string, CatalogueEntry> = new Map(CATALOGUE.map((entry) => [entry.id, entry]))

/** The entry of an id, or null. */
export function entryById(id: string): CatalogueEntry | null {
  return BY_ID.get(id) ?? null
}

function fillOut(source: EntrySource): CatalogueEntry {
  const none: Omit<CatalogueEntry, 'id' | 'name' | 'positions' | 'regions'> = {
    alsoCalled: [],
    kit: [],
    movements: [],
    sided: false,
    still: false,
    loaded: false,
    easier: [],
    harder: [],
  }
  return { ...none, ...source }
}
