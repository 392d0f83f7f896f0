/** Passes an action's progress on as a job's. */
import type { OnProgress } from '../actions/progress.ts'
import type { JobContext } from './job-kind.ts'

export function tellProgress({ onProgress }: Pick<JobContext, 'onProgress'>): OnProgress {
  return ({ label, fraction, leftMs }) => onProgress({ part: Math.min(1, Math.max(0, fraction)), step: label, leftMs })
}
