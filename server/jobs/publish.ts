/** Job `publish`: makes lessons of chosen exercises, and shows them. */
import { JOB_INPUTS } from '../actions/ask-job.ts'
import { publishLessons } from '../actions/publish-lessons.ts'
import { buildKind } from './job-kind.ts'
import { tellProgress } from './tell-progress.ts'

export const publish = buildKind('publish', JOB_INPUTS.publish, (input, context) =>
  publishLessons(context.studio, input, { signal: context.signal, onProgress: tellProgress(context) }),
)
