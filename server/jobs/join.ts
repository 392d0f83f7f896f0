/** Job `join`: makes one film of the parts of a class. */
import { JOB_INPUTS } from '../actions/ask-job.ts'
import { joinRecording } from '../actions/join-recording.ts'
import { buildKind } from './job-kind.ts'
import { tellProgress } from './tell-progress.ts'

export const join = buildKind(
  'join',
  JOB_INPUTS.join,
  (input, context) =>
    joinRecording(context.studio, { ...input, signal: context.signal, onProgress: tellProgress(context) }),
  'middle',
)
