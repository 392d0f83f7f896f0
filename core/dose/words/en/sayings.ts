/**
 * How coaches say a dose: every pattern with what it means. Tried in this order; what one has taken, later ones do not see.
 * The names kept in {braces} are the slots of a dose (see read-slots.ts); `means` adds what the words imply.
 */
import type { Slots } from '../../read-slots.ts'
import { CLOCK_SAYINGS } from './sayings-clock.ts'
import { MANNER_SAYINGS, PROGRESS_SAYINGS } from './sayings-manner.ts'
import { REST_SAYINGS, TEMPO_SAYINGS } from './sayings-pace.ts'
import { CONTRACT_SAYINGS, COUNT_SAYINGS, HOLD_SAYINGS, SIDE_SAYINGS, UNIT_SAYINGS } from './sayings-work.ts'

export interface Saying {
  says: string
  means?: Slots
  /** A test that words cannot say. */
  only?:
    | 'more than one'
    | 'two or more'
    | 'a range'
    | 'up to ten'
    | 'fewer than a hundred'
    | 'no whole class'
    | 'tens'
    | 'same on both sides'
    | 'out of ten'
    | 'falling'
    | 'falling to one'
    | 'steps'
    | 'the same twice'
    | 'name of an interval'
    | 'open below'
  /** Counts only beside another part of a dose, or when nothing else is said. */
  weak?: true
  /** The matched words themselves are the value of this slot. */
  words?: 'progression' | 'open' | 'effort' | 'frequency'
  /** Takes the rest of the clause as well. */
  clause?: true
  /** For whom: the words belong to a level. */
  level?: string
  /** The level may be said after its number. */
  after?: true
  /** A sentence for the person who checks the dose. */
  doubt?: string
}

export const SAYINGS: readonly Saying[] = [
  ...CLOCK_SAYINGS,
  ...CONTRACT_SAYINGS,
  ...TEMPO_SAYINGS,
  ...SIDE_SAYINGS,
  ...MANNER_SAYINGS,
  ...UNIT_SAYINGS,
  ...HOLD_SAYINGS,
  ...REST_SAYINGS,
  ...COUNT_SAYINGS,
]

/** Read before anything is set aside: these name past or future numbers on purpose. */
export const FIRST_SAYINGS: readonly Saying[] = PROGRESS_SAYINGS
