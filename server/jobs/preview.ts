/** Job `preview`: makes a film that browsers can show. */
import { JOB_INPUTS } from '../actions/ask-job.ts'
import { makeRecordingPreview } from '../actions/make-preview.ts'
import { buildKind } from './job-kind.ts'
import { tellProgress } from './tell-progress.ts'

export const preview = buildKind('preview', JOB_INPUTS.preview, async (input, context) => {
  await makeRecordingPreview(context.studio, { ...input, signal: context.signal, onProgress: tellProgress(context) })
  return null
})
