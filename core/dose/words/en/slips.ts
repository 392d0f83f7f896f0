/**
 * Words that a speech recogniser writes for others of nearly the same sound. The list is plausible, not measured.
 * Most are real words of a class as well ("wrist", "lots"), so each is mended only where its neighbours ask for it.
 */

/** Where a slip is mended. A number is a figure or a number word; a time unit is second, minute and the like. */
export type SlipPlace =
  | 'after a number'
  | 'before a number'
  | 'before sets'
  | 'before reps'
  | 'in a range of reps'
  | 'after sets of'
  | 'after each'
  | 'next to a time'
  | 'before figures'
  | 'between numbers'
  | 'anywhere'

export interface Slip {
  heard: string
  meant: string
  where: SlipPlace
}

export const SLIPS = [
  { heard: 'wraps', meant: 'reps', where: 'after a number' },
  { heard: 'wrap', meant: 'reps', where: 'after a number' },
  { heard: 'raps', meant: 'reps', where: 'after a number' },
  { heard: 'wreps', meant: 'reps', where: 'after a number' },
  { heard: 'perhaps', meant: 'reps', where: 'after a number' },
  { heard: 'sats', meant: 'sets', where: 'after a number' },
  { heard: 'says', meant: 'sets', where: 'after a number' },
  { heard: 'sects', meant: 'secs', where: 'after a number' },
  { heard: 'breads', meant: 'breaths', where: 'after a number' },
  { heard: 'sight', meant: 'side', where: 'after each' },
  { heard: 'sigh', meant: 'side', where: 'after each' },
  { heard: 'lake', meant: 'leg', where: 'after each' },
  { heard: 'wrist', meant: 'rest', where: 'next to a time' },
  { heard: 'wrest', meant: 'rest', where: 'next to a time' },
  { heard: 'to', meant: 'two', where: 'before sets' },
  { heard: 'too', meant: 'two', where: 'before sets' },
  { heard: 'for', meant: 'four', where: 'before sets' },
  { heard: 'won', meant: 'one', where: 'before sets' },
  { heard: 'free', meant: 'three', where: 'before sets' },
  { heard: 'tree', meant: 'three', where: 'before sets' },
  { heard: 'tan', meant: 'ten', where: 'before sets' },
  { heard: 'ate', meant: 'eight', where: 'before sets' },
  { heard: 'tan', meant: 'ten', where: 'in a range of reps' },
  { heard: 'ate', meant: 'eight', where: 'in a range of reps' },
  { heard: 'tan', meant: 'ten', where: 'before reps' },
  { heard: 'ate', meant: 'eight', where: 'before reps' },
  { heard: 'tan', meant: 'ten', where: 'after sets of' },
  { heard: 'ate', meant: 'eight', where: 'after sets of' },
  { heard: 'for', meant: 'four', where: 'after sets of' },
  { heard: 'too', meant: 'to', where: 'between numbers' },
  { heard: 'temple', meant: 'tempo', where: 'before figures' },
  { heard: 'our pee', meant: 'rpe', where: 'before a number' },
  { heard: 'are pe', meant: 'rpe', where: 'before a number' },
  { heard: 'rp', meant: 'rpe', where: 'before a number' },
  { heard: 'are i are', meant: 'rir', where: 'anywhere' },
  { heard: 'am wrap', meant: 'amrap', where: 'anywhere' },
  { heard: 'm wrap', meant: 'amrap', where: 'anywhere' },
  { heard: 'am rap', meant: 'amrap', where: 'anywhere' },
  { heard: 'm rap', meant: 'amrap', where: 'anywhere' },
  { heard: 'e mom', meant: 'emom', where: 'anywhere' },
  { heard: 'eat mom', meant: 'emom', where: 'anywhere' },
  { heard: 'ee mom', meant: 'emom', where: 'anywhere' },
] as const satisfies readonly Slip[]
