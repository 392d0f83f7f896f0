/** Turns ffmpeg's last lines into one of our errors, in plain words. */
import { AppError } from '../../shared/errors.ts'
import type { ErrorCode } from '../../shared/errors.ts'

/** How a run of ffmpeg or ffprobe ended. */
export interface FailedRun {
  /** What was being done, for the message: "Cutting the clip". */
  doing: string
  exitCode: number | null
  signal: string | null
  /** Its messages, in order, without the progress report. */
  lines: readonly string[]
}

interface Reason {
  pattern: RegExp
  code: ErrorCode
  means: string
}

/** The first that fits any line counts. */
const REASONS: readonly Reason[] = [
  {
    pattern: /No space left on device|Disk quota exceeded/i,
    code: 'disk-full',
    means: 'the disk is full. Free some space, then run it again; finished clips are kept.',
  },
  {
    pattern: /File too large/i,
    code: 'engine-too-big',
    means: 'the output grew larger than a file may be here. Raise the limit or choose another folder.',
  },
  {
    pattern: /CPU time limit exceeded/i,
    code: 'engine-timeout',
    means: 'it used more processor time than it may. Cut shorter spans or use a faster machine.',
  },
  {
    pattern: /moov atom not found|truncat|partial file|End of file/i,
    code: 'recording-broken',
    means: 'the recording is cut short: its end is missing. Copy the whole file again.',
  },
  {
    pattern:
      /Format not on whitelist|not on whitelist|could not find codec parameters|max_streams|max_pixels|Picture size .* is invalid|exceeds/i,
    code: 'recording-format',
    means: 'the file is no MP4, MOV, 3GP, MKV, WebM, TS or AVI recording that is accepted. Give one of these.',
  },
  {
    pattern:
      /Unknown (encoder|decoder)|No such filter|Unrecognized option|Option .* not found|Requested output format/i,
    code: 'ffmpeg-lacks',
    means: 'this ffmpeg lacks a part that is needed. Run "doctor" to see which.',
  },
  {
    pattern: /Permission denied|Read-only file system/i,
    code: 'out-not-writable',
    means: 'a file may not be read or written. Check the rights of the folder.',
  },
  {
    pattern: /Invalid data found when processing input/i,
    code: 'recording-format',
    means: 'the file is no recording that can be read. Give an MP4, MOV, 3GP, MKV, WebM, TS or AVI file.',
  },
  {
    pattern: /Cannot allocate memory|out of memory/i,
    code: 'engine-failed',
    means: 'there was not enough memory. Run fewer jobs at a time.',
  },
]

/** ffmpeg ends with this code and no word when a signal asks it to: ours is told apart before, so it is its CPU limit. */
const ASKED_TO_END = 255

/** Lines worth showing of a failed run. */
const KEPT_LINES = 8

/** The error for a failed run; its details are ffmpeg's last lines. */
export function explainFailure(run: FailedRun): AppError {
  const details = run.lines.map(plainLine).filter(Boolean).slice(-KEPT_LINES)
  const reason = reasonFor(run)
  return new AppError(reason.code, `${run.doing} failed: ${reason.means}`, { details })
}

/** True when a line says that the disk is full: some ffmpeg versions end with 0 all the same. */
export function saysDiskFull(lines: readonly string[]): boolean {
  return lines.some((line) => REASONS[0]?.pattern.test(line))
}

function reasonFor({ lines, signal, exitCode }: FailedRun): Pick<Reason, 'code' | 'means'> {
  if (signal === 'SIGXCPU') return { code: 'engine-timeout', means: 'it used more processor time than it may.' }
  if (signal === 'SIGXFSZ') return { code: 'engine-too-big', means: 'the output grew larger than a file may be here.' }
  const found = REASONS.find(({ pattern }) => lines.some((line) => pattern.test(line)))
  if (found) return found
  if (signal) {
    return { code: 'engine-failed', means: `ffmpeg was stopped from outside (${signal}), maybe for want of memory.` }
  }
  const last = lines.map(plainLine).filter(Boolean).at(-1)
  if (exitCode === ASKED_TO_END && last === undefined) {
    return {
      code: 'engine-timeout',
      means: 'it used more processor time than it may, or something on this machine ended it. Run it again alone.',
    }
  }
  return {
    code: 'engine-failed',
    means: last ? `ffmpeg says "${last}".` : `ffmpeg ended with code ${exitCode ?? 'unknown'} and said nothing.`,
  }
}

/** Without the part's name and memory address, as in `[mov,mp4 @ 0x55c8]`, and without the folder of a file, which is nobody's business. */
function plainLine(line: string): string {
  return line
    .replace(/^\[[^\]]* @ 0x[0-9a-f]+\] /, '')
    .replace(/\bfile:.*[\\/]/, '')
    .trim()
}
