/** Job `analyse`: looks into a file that arrived, piece by piece. */
import { analyseRecording } from '../actions/analyse-recording.ts'
import { JOB_INPUTS } from '../actions/ask-job.ts'
import { buildKind } from './job-kind.ts'
import { tellProgress } from './tell-progress.ts'

export const analyse = buildKind(
  'analyse',
  JOB_INPUTS.analyse,
  async (input, context) => {
    const facts = await analyseRecording(context.studio, {
      ...input,
      signal: context.signal,
      onProgress: tellProgress(context),
    })
    return { pauses: facts?.wave?.pauses ?? 0, sheets: facts?.thumbs?.sheets ?? 0 }
  },
  'middle',
)
