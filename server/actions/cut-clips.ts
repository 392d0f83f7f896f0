/** Cuts planned clips, a few at a time; one that fails stops no other. */
import type { ClipPlan } from '../../core/media/plan-cut.ts'
import { AppError } from '../../shared/errors.ts'
import type { ClipEntry, FailedClip } from '../../shared/manifest.ts'
import { clipNames, cutClip } from './cut-clip.ts'
import type { CutContext } from './cut-clip.ts'

/** What came of the plans, each list in the plans' order. */
export interface CutResult {
  clips: ClipEntry[]
  failed: FailedClip[]
}

/**
 * @param jobs how many run at one time, at least 1.
 * @throws AppError engine-cancelled once nothing runs any more.
 */
export async function cutClips(
  context: CutContext,
  plans: readonly ClipPlan[],
  jobs: number,
  onPercent: (plan: ClipPlan, percent: number) => void,
): Promise<CutResult> {
  const results = new Array<ClipEntry | FailedClip | undefined>(plans.length)
  // two segments may ask for the very same clip: the second waits and takes what the first made
  const running = new Map<string, Promise<unknown>>()
  const queue = plans.map((plan, place) => ({ plan, place })).values()
  const work = async (): Promise<void> => {
    for (const { plan, place } of queue) {
      if (context.signal?.aborted) return
      const { id } = clipNames(plan)
      const job = (running.get(id) ?? Promise.resolve()).then(() => cutOne(context, plan, onPercent))
      running.set(id, job)
      results[place] = await job
    }
  }
  await Promise.all(Array.from({ length: Math.max(1, Math.floor(jobs)) }, work))
  if (context.signal?.aborted) {
    throw new AppError('engine-cancelled', 'Cutting was cancelled. Finished clips are kept; run it again to go on.')
  }
  const done = results.filter((result) => result !== undefined)
  return { clips: done.filter((result) => 'file' in result), failed: done.filter((result) => 'code' in result) }
}

async function cutOne(
  context: CutContext,
  plan: ClipPlan,
  onPercent: (plan: ClipPlan, percent: number) => void,
): Promise<ClipEntry | FailedClip> {
  try {
    onPercent(plan, 0)
    const entry = await cutClip(context, plan, (percent) => onPercent(plan, percent))
    onPercent(plan, 100)
    return entry
  } catch (error) {
    const { segmentId, name } = plan
    const code = error instanceof AppError ? error.code : 'internal'
    return { segmentId, name, code, message: error instanceof Error ? error.message : String(error) }
  }
}
