/** Job `place-sound`: finds where sound recorded apart lies under the film. */
import { JOB_INPUTS } from '../actions/ask-job.ts'
import { placeSound } from '../actions/place-sound.ts'
import { buildKind } from './job-kind.ts'
import { tellProgress } from './tell-progress.ts'

export const placeSoundKind = buildKind(
  'place-sound',
  JOB_INPUTS['place-sound'],
  (input, context) =>
    placeSound(context.studio, { ...input, signal: context.signal, onProgress: tellProgress(context) }),
  'middle',
)
