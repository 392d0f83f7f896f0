/** Progress of longer work: one redrawn bar on a terminal, plain lines otherwise. */
import { formatClock } from '../../shared/time.ts'
import type { Progress } from '../actions/progress.ts'
import type { Io } from './io.ts'

const BAR_WIDTH = 24

export interface Shown {
  show(this: void, progress: Progress): void
  /** Clears the bar; call before printing anything else. */
  end(): void
}

/** @param quiet no plain lines (a program reads the result); the terminal's bar stays */
export function showProgress(io: Io, quiet = false): Shown {
  let drawn = false
  const clear = () => {
    if (drawn) io.say('\r\u001b[K')
    drawn = false
  }
  return {
    show: (progress) => {
      if (io.isTerminal) {
        io.say(`\r\u001b[K${bar(progress).slice(0, io.columns - 1)}`)
        drawn = true
      } else if (!quiet && progress.done) {
        io.say(`${plain(progress)}\n`)
      }
    },
    end: clear,
  }
}

function bar({ label, fraction, leftMs }: Progress): string {
  const filled = Math.round(Math.min(1, Math.max(0, fraction)) * BAR_WIDTH)
  const left = leftMs === null ? '' : `  ${formatClock(leftMs)} left`
  return `${'█'.repeat(filled)}${'░'.repeat(BAR_WIDTH - filled)} ${String(Math.round(fraction * 100)).padStart(3)} %  ${label}${left}`
}

function plain({ label, fraction }: Progress): string {
  return `${String(Math.round(fraction * 100)).padStart(3)} %  ${label}`
}
