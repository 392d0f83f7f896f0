/** Ties ffmpeg and ffprobe to our own life: where the system can, they are killed when we are. */
import { spawnSync } from 'node:child_process'
import { accessSync, constants } from 'node:fs'
import { fileURLToPath } from 'node:url'

/** What to start in place of the program, and the environment it needs. */
export interface GuardedProgram {
  command: string
  env: Record<string, string>
}

/**
 * The program behind the guard script. Without `setpriv` (other systems than Linux) it is the program itself:
 * there a run that outlives us ends by its own time limit, and its part file is swept at the next start.
 */
export function guardProgram(program: string): GuardedProgram {
  const script = guardScript()
  if (script === null) return { command: program, env: {} }
  return { command: script, env: { REPSLATE_PARENT_PID: String(process.pid), REPSLATE_GUARDED_PROGRAM: program } }
}

/** True when a run cannot outlive us. */
export function guardWorks(): boolean {
  return guardScript() !== null
}

let known: { script: string | null } | null = null

function guardScript(): string | null {
  known ??= { script: process.platform === 'linux' && setprivWorks() ? findScript() : null }
  return known.script
}

/** Some small systems have a setpriv without this option. */
function setprivWorks(): boolean {
  return spawnSync('setpriv', ['--pdeathsig', 'KILL', '--', 'true'], { stdio: 'ignore', timeout: 5000 }).status === 0
}

/** Beside this file in the sources; compiled code lies elsewhere and looks back at the sources. */
function findScript(): string | null {
  const places = ['./stop-with-parent.sh', '../../../../core/media/engine/stop-with-parent.sh']
  for (const place of places) {
    const path = fileURLToPath(new URL(place, import.meta.url))
    if (isExecutable(path)) return path
  }
  return null
}

/** True when the file is there and may be run. */
export function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}
