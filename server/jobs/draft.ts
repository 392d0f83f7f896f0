/** Job `draft`: proposes the log sheet from a transcript, merged with what people have done to it. */
import { JOB_INPUTS } from '../actions/ask-job.ts'
import { draftRecording } from '../actions/draft-recording.ts'
import { buildKind } from './job-kind.ts'

export const draft = buildKind(
  'draft',
  JOB_INPUTS.draft,
  ({ recordingId, transcriptVersion }, { studio, job }) =>
    draftRecording(studio, { recordingId, transcriptVersion, opId: `draft-${job.id}` }),
  'short',
)
