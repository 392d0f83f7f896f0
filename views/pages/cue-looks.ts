/** How kinds of cue are told apart: by a letter and a name; their colours are in styles/parts/cue.css. */
import type { CueKind } from '../../shared/log-sheet.ts'

export interface CueLook {
  /** No two kinds share one. */
  letter: string
  name: string
}

export const CUE_LOOKS = {
  setup: { letter: 'S', name: 'Set-up' },
  execution: { letter: 'D', name: 'Doing it' },
  breathing: { letter: 'B', name: 'Breathing' },
  tempo: { letter: 'T', name: 'Tempo' },
  range: { letter: 'R', name: 'Range' },
  fault: { letter: 'F', name: 'Fault' },
  caution: { letter: 'C', name: 'Caution' },
  easier: { letter: 'E', name: 'Easier' },
  harder: { letter: 'H', name: 'Harder' },
  equipment: { letter: 'K', name: 'Kit' },
  focus: { letter: 'A', name: 'Where to attend' },
} as const satisfies Record<CueKind, CueLook>
