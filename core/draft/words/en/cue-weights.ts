/**
 * How much the features of a clause speak for each kind of cue: the natural log of odds, in steps of 0.2. Fitted by
 * logistic regression on our own invented classes and sentences; features not listed say nothing. `a_b` = two words in
 * a row, `<part>` = a word of that group; words are stems.
 */
import type { CueKind } from '../../../../shared/log-sheet.ts'
import { BREATHING_WEIGHTS } from './cue-weights-breathing.ts'
import { CAUTION_WEIGHTS } from './cue-weights-caution.ts'
import { EASIER_WEIGHTS } from './cue-weights-easier.ts'
import { EQUIPMENT_WEIGHTS } from './cue-weights-equipment.ts'
import { EXECUTION_WEIGHTS } from './cue-weights-execution.ts'
import { FAULT_WEIGHTS } from './cue-weights-fault.ts'
import { FOCUS_WEIGHTS } from './cue-weights-focus.ts'
import { HARDER_WEIGHTS } from './cue-weights-harder.ts'
import { NONE_WEIGHTS } from './cue-weights-none.ts'
import { RANGE_WEIGHTS } from './cue-weights-range.ts'
import { SETUP_WEIGHTS } from './cue-weights-setup.ts'
import { TEMPO_WEIGHTS } from './cue-weights-tempo.ts'

/** By sign of the feature: weight, then the features that carry it. */
export type CueWeights = Readonly<Record<string, readonly (readonly [weight: number, features: string])[]>>

export const CUE_WEIGHTS: Readonly<Record<CueKind | 'none', CueWeights>> = {
  none: NONE_WEIGHTS,
  setup: SETUP_WEIGHTS,
  execution: EXECUTION_WEIGHTS,
  breathing: BREATHING_WEIGHTS,
  tempo: TEMPO_WEIGHTS,
  range: RANGE_WEIGHTS,
  fault: FAULT_WEIGHTS,
  caution: CAUTION_WEIGHTS,
  easier: EASIER_WEIGHTS,
  harder: HARDER_WEIGHTS,
  equipment: EQUIPMENT_WEIGHTS,
  focus: FOCUS_WEIGHTS,
}
