/** Job `draft`: proposes the log sheet from a transcript, merged with what people have done to it. */
import { askReading, JOB_INPUTS } from '../actions/ask-job.ts'
import { draftRecording } from '../actions/draft-recording.ts'
import { buildKind } from './job-kind.ts'

export const draft = buildKind(
  'draft',
  JOB_INPUTS.draft,
  async (input, { studio, job, signal }) => {
    const drafted = await draftRecording(studio, { ...input, opId: `draft-${job.id}` }, signal)
    await askReading(studio, input)
    return drafted
  },
  'short',
)
