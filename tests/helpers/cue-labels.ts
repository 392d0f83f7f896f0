/** The labels of tests/fixtures/cue-sentences.json in our kinds of cue. */
import type { CueKind } from '../../shared/log-sheet.ts'

/** Posture may be told in any of these. */
export const ALIGNMENT: readonly CueKind[] = ['execution', 'setup', 'focus', 'range']

export const CUE_LABELS: Readonly<Record<string, readonly CueKind[]>> = {
  SETUP: ['setup'],
  EXEC: ['execution'],
  BREATH: ['breathing'],
  TEMPO: ['tempo'],
  ROM: ['range'],
  FAULT: ['fault'],
  FIX: ['fault'],
  CAUTION: ['caution'],
  STOP: ['caution'],
  REGRESS: ['easier'],
  PROGRESS: ['harder'],
  EQUIP: ['equipment'],
  MUSCLE: ['focus'],
  FEEL: ['focus'],
  ALIGN: ALIGNMENT,
}
