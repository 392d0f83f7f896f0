/** Job `cut`: cuts lessons to look at. */
import { JOB_INPUTS } from '../actions/ask-job.ts'
import { cutLessons } from '../actions/cut-lessons.ts'
import { buildKind } from './job-kind.ts'
import { tellProgress } from './tell-progress.ts'

export const cut = buildKind('cut', JOB_INPUTS.cut, async (input, context) => {
  const { clips, failed } = await cutLessons(context.studio, {
    ...input,
    signal: context.signal,
    onProgress: tellProgress(context),
  })
  return { clips: clips.length, failed }
})
