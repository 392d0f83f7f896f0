/** Jobs in words: what is done, how far it is, how long it will take. */
import { formatCount } from './format.ts'

/** A job as pages know it. */
export interface JobInput {
  id: string
  kind: string
  state: 'queued' | 'running' | 'done' | 'failed' | 'cancelled'
  progress: { part: number | null; step: string; leftMs: number | null } | null
  error: { code: string; message: string; details: readonly string[] } | null
  cancelAsked: boolean
}

export interface JobLine {
  id: string
  what: string
  step: string
  left: string
  /** 0 to 100; -1 = not known. */
  percent: number
}

const KIND_WORDS: Readonly<Record<string, string>> = {
  analyse: 'Looking into the film',
  join: 'Joining the parts',
  'place-sound': 'Finding the place of the sound',
  preview: 'Making a preview',
  draft: 'Drafting the log sheet',
  'read-again': 'The second reader reads',
  cut: 'Cutting lessons',
  publish: 'Publishing lessons',
}

export function kindWords(kind: string): string {
  return KIND_WORDS[kind] ?? kind.replaceAll('-', ' ')
}

export function buildJobLine({ id, kind, state, progress, cancelAsked }: JobInput): JobLine {
  const part = progress?.part ?? null
  const step =
    state === 'queued'
      ? 'Waits for its turn'
      : cancelAsked
        ? 'Is being stopped'
        : stepOf(progress?.step, kindWords(kind))
  return {
    id,
    what: kindWords(kind),
    step,
    left: state === 'running' && progress?.leftMs != null ? formatLeft(progress.leftMs) : '',
    percent: state === 'running' && part !== null ? Math.round(part * 100) : -1,
  }
}

/** The first step of some work is called like the work. */
function stepOf(step: string | undefined, what: string): string {
  return step === undefined || step === what ? 'Begins' : step
}

/** "about 3 minutes left"; never more exact than a guess can be. */
export function formatLeft(ms: number): string {
  const seconds = Math.round(ms / 1000)
  if (seconds < 10) return 'a few seconds left'
  if (seconds < 50) return `about ${Math.ceil(seconds / 10) * 10} seconds left`
  const minutes = Math.round(seconds / 60)
  if (minutes < 60) return `about ${formatCount(Math.max(1, minutes), 'minute')} left`
  return `about ${formatCount(Math.round(minutes / 60), 'hour')} left`
}
