/** Tells where a cut stands: the step or clip at work, and how much of the whole is done. */
import type { Ms } from '../../shared/time.ts'
import type { Progress } from './progress.ts'

/** A step is work on the whole recording; a clip is one exercise; a note is a sentence for the person. */
export interface CutProgress extends Progress {
  kind: 'step' | 'clip' | 'note'
  segmentId: string | null
  /** Of this step or clip, 0 to 100, whole. */
  percent: number
}

export interface CutReporter {
  step: (name: CutStep, percent: number) => void
  /** What is to be cut, once it is known: the clips' lengths weigh their shares. */
  expect: (clips: readonly { segmentId: string; durationMs: Ms }[]) => void
  clip: (segmentId: string, name: string, percent: number) => void
  note: (text: string) => void
}

/** Shares of the whole by a usual run: the rest is clips. */
const STEPS = { reading: ['Reading the recording', 0.03], loudness: ['Measuring the loudness', 0.07] } as const
export type CutStep = keyof typeof STEPS
const CLIPS_SHARE = 0.9
/** Below this share, time left is a guess nobody should see. */
const TOO_EARLY = 0.05

/** @param now milliseconds of any clock that only goes forward. */
export function reportCut(onProgress: ((progress: CutProgress) => void) | undefined, now: () => number): CutReporter {
  const startMs = now()
  const steps = new Map<CutStep, number>()
  const clips = new Map<string, { percent: number; durationMs: Ms }>()
  let last = ''

  const fraction = (): number => {
    const stepsDone = [...steps].reduce((sum, [step, percent]) => sum + (STEPS[step][1] * percent) / 100, 0)
    const all = [...clips.values()]
    const whole = all.reduce((sum, clip) => sum + clip.durationMs, 0)
    const done = all.reduce((sum, clip) => sum + (clip.durationMs * clip.percent) / 100, 0)
    return Math.min(1, stepsDone + (whole > 0 ? (CLIPS_SHARE * done) / whole : 0))
  }
  const tell = (kind: CutProgress['kind'], segmentId: string | null, label: string, percent: number): void => {
    const key = `${kind} ${segmentId ?? label} ${percent}`
    if (!onProgress || key === last) return
    last = key
    const share = fraction()
    const leftMs = share < TOO_EARLY ? null : Math.round(((now() - startMs) * (1 - share)) / share)
    onProgress({ kind, segmentId, label, percent, fraction: share, leftMs, done: percent >= 100 })
  }

  return {
    step: (step, percent) => {
      steps.set(step, percent)
      tell('step', null, STEPS[step][0], percent)
    },
    expect: (expected) => {
      for (const { segmentId, durationMs } of expected) clips.set(segmentId, { percent: 0, durationMs })
    },
    clip: (segmentId, name, percent) => {
      const clip = clips.get(segmentId)
      if (clip) clip.percent = percent
      tell('clip', segmentId, `Cutting ${name}`, percent)
    },
    note: (text) => tell('note', null, text, 100),
  }
}
