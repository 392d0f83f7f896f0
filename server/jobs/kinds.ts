/** Every kind of job, one line each. */
import { analyse } from './analyse.ts'
import { cut } from './cut.ts'
import { draft } from './draft.ts'
import { join } from './join.ts'
import type { JobKind } from './job-kind.ts'
import { placeSoundKind } from './place-sound.ts'
import { preview } from './preview.ts'
import { publish } from './publish.ts'
import { readAgainKind } from './read-again.ts'

export const JOB_KINDS: readonly JobKind[] = [
  analyse,
  cut,
  draft,
  join,
  placeSoundKind,
  preview,
  publish,
  readAgainKind,
]
