/** Job `read-again`: has the second reader of the settings look through the words of a class, aside from its draft. */
import { JOB_INPUTS } from '../actions/ask-job.ts'
import { readAgain } from '../actions/draft-recording.ts'
import { buildKind } from './job-kind.ts'

export const readAgainKind = buildKind(
  'read-again',
  JOB_INPUTS['read-again'],
  (input, { studio, job, signal }) => readAgain(studio, { ...input, opId: `read-again-${job.id}` }, signal),
  'middle',
)
