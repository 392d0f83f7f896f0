/** Decides what of a sheet is cut, and stops where sheet and recording do not fit together. */
import type { OpenedRecording } from '../../core/media/engine/open-recording.ts'
import { findSpanProblems } from '../../core/segments/find-span-problems.ts'
import { AppError } from '../../shared/errors.ts'
import type { LogSheet, Segment } from '../../shared/log-sheet.ts'
import { formatClock } from '../../shared/time.ts'

/** A copy of the same class may be this much longer or shorter than what the sheet was marked on. */
const SAME_LENGTH_MS = 1000

/**
 * The segments that become clips: lessons nobody declined that have a place in the recording.
 * @throws AppError sheet-spans; each detail names one segment and what to do.
 */
export function chooseSegments(sheet: LogSheet, recording: OpenedRecording): Segment[] {
  const wanted = sheet.segments.filter(
    (segment) => segment.use === 'lesson' && segment.state !== 'declined' && segment.spans.length > 0,
  )
  const problems = wanted.flatMap((segment) =>
    findSpanProblems(segment, recording.durationMs).map(
      ({ message }) => `${segment.exercise.name} (${segment.id}): ${message}`,
    ),
  )
  if (problems.length > 0) {
    const count = problems.length === 1 ? 'A span' : `${problems.length} spans`
    throw new AppError(
      'sheet-spans',
      `${count} of the log sheet cannot be cut. Nothing was cut. Correct what is named.`,
      {
        details: problems,
      },
    )
  }
  return wanted
}

/**
 * Stops when a kept span lies in another file of the class (a further part or camera) than those at hand.
 * @param sums of the files at hand
 * @throws AppError sheet-recording.
 */
export function checkOneFile(sheet: LogSheet, segments: readonly Segment[], sums: readonly string[]): void {
  const here = new Set(
    sheet.media.filter((media) => sums.includes(media.sha256.toLowerCase())).map((media) => media.id),
  )
  const elsewhere = segments.filter((segment) =>
    segment.spans.some((span) => span.inClip && span.mediaId !== undefined && !here.has(span.mediaId)),
  )
  if (elsewhere.length === 0 || sheet.media.every(({ role }) => role !== 'camera')) return
  throw new AppError(
    'sheet-recording',
    `${elsewhere.length} exercises lie in another file of this class than those given. Give further parts with --part; a second camera is cut with a sheet of its own.`,
    { details: elsewhere.map((segment) => `${segment.exercise.name} (${segment.id})`) },
  )
}

/**
 * Stops when the sheet was marked on another recording: its times would cut other exercises. A copy that was only
 * saved anew has another sum but the same length, and its times hold.
 * @returns a note for the person when the sum differs and the length does not, else null.
 * @throws AppError sheet-recording.
 */
export function checkSameRecording(sheet: LogSheet, recording: OpenedRecording, sha256: string): string | null {
  const { source } = sheet
  if (!source || !/^[0-9a-f]{64}$/i.test(source.sha256) || source.sha256.toLowerCase() === sha256) return null
  if (Math.abs(source.durationMs - recording.durationMs) <= SAME_LENGTH_MS) {
    return 'The recording is not the very file the sheet was marked on, but as long. Look at the first clip.'
  }
  throw new AppError(
    'sheet-recording',
    `The sheet was marked on another recording: that one lasts ${formatClock(source.durationMs)}, this one ${formatClock(recording.durationMs)}. Give the right one, or add --any-recording.`,
  )
}
