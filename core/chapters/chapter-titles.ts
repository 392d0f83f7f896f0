/** Words that chapters are named with. */
import type { CueKind } from '../../shared/log-sheet.ts'

export const CHAPTER_TITLES = {
  /** After the name of an exercise that the class returns to. */
  again: ' (again)',
  /** After the name of an exercise that is shown before it is taught. */
  before: ' (a look ahead)',
  /** A stretch of the clip from a later part of the class. */
  laterPart: 'Again, later in the class',
  /** A clip without cues. */
  whole: 'The exercise',
  kinds: {
    setup: 'Set-up',
    equipment: 'Set-up',
    execution: 'Movement',
    tempo: 'Movement',
    range: 'Movement',
    focus: 'Movement',
    fault: 'Movement',
    breathing: 'Breathing',
    caution: 'Take care',
    easier: 'Easier and harder',
    harder: 'Easier and harder',
  } satisfies Record<CueKind, string>,
  /** What a chapter is about more narrowly, where the name above is taken by an earlier one of the lesson. */
  finer: {
    setup: 'Set-up',
    equipment: 'Kit',
    execution: 'Movement',
    tempo: 'Pace',
    range: 'How far',
    focus: 'What to watch',
    fault: 'Slips to avoid',
    breathing: 'Breathing',
    caution: 'Take care',
    easier: 'Easier',
    harder: 'Harder',
  } satisfies Record<CueKind, string>,
} as const
