/** Cuts every lesson of a log sheet out of its recording: clips, stills and a manifest in one folder. */
import { stat, statfs } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import type { Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { hashFile } from '../../core/media/engine/hash-file.ts'
import { openRecording } from '../../core/media/engine/open-recording.ts'
import type { OpenedRecording } from '../../core/media/engine/open-recording.ts'
import { planCut } from '../../core/media/plan-cut.ts'
import type { ClipPlan } from '../../core/media/plan-cut.ts'
import { guessClipBytes } from '../../core/media/plan-limits.ts'
import { planLoudness } from '../../core/media/plan-loudness.ts'
import { AppError } from '../../shared/errors.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import type { Manifest } from '../../shared/manifest.ts'
import { checkOneFile, checkSameRecording, chooseSegments } from './cut-checks.ts'
import { clipNames } from './cut-clip.ts'
import { cutClips } from './cut-clips.ts'
import { loudnessOf, pausesOf } from './cut-facts.ts'
import { reportCut } from './cut-progress.ts'
import type { CutProgress } from './cut-progress.ts'
import { openEdgeSource } from './open-edge-source.ts'
import { openWorkFolder, writeWhole } from './cut-work-folder.ts'
import type { WorkFolder } from './cut-work-folder.ts'

export interface CutRequest {
  recordingPath: string
  sheet: LogSheet
  /** Made if absent. Clips go to `clips/`, the manifest to `manifest.json`. */
  outDir: string
  /** Clips at one time. */
  jobs: number
  /** Allow a recording without sound. */
  silent?: boolean | undefined
  /** Which of the recording's sound tracks is published, from 1; without it the file's default one. */
  soundTrack?: number | undefined
  /** Cut even when the sheet names another recording. */
  anyRecording?: boolean | undefined
  /** Let in-points that nobody holds move to a cheaper frame of the same pause; without it every clip starts on its mark. */
  freeInPoints?: boolean | undefined
  signal?: AbortSignal | undefined
  onProgress?: ((progress: CutProgress) => void) | undefined
  /** Found by search when not given. */
  found?: Ffmpeg | undefined
  /** UTC milliseconds now. */
  now?: () => number
}

/**
 * Cuts the sheet. What is right from an earlier run is kept. A clip that fails is listed in `failed` and stops no other.
 * @returns the manifest, which is also written.
 * @throws AppError, with nothing left behind: recording-*, sheet-spans, sheet-recording, disk-full, out-not-writable,
 * ffmpeg-missing, engine-cancelled (finished clips stay, no part file does).
 */
export async function cutRecording(request: CutRequest): Promise<Manifest> {
  const { sheet, signal } = request
  const now = request.now ?? Date.now
  const recordingPath = resolve(request.recordingPath)
  const report = reportCut(request.onProgress, now)
  const found = request.found ?? (await findFfmpeg())

  report.step('reading', 0)
  const recording = await openRecording(found, recordingPath, {
    ...{ silent: request.silent, soundTrack: request.soundTrack, signal },
  })
  const segments = chooseSegments(sheet, recording)
  const sha256 = await hashFile(recordingPath, {
    signal,
    onBytes: (bytes) => report.step('reading', share(bytes, recording.probe.sizeBytes)),
  })
  const note = request.anyRecording === true ? null : checkSameRecording(sheet, recording, sha256)
  if (note !== null) report.note(note)
  checkOneFile(sheet, segments, [sha256])

  const folder = await openWorkFolder(resolve(request.outDir), now())
  let done = false
  try {
    const desk = { found, folder, recording, sha256, signal }
    const measured = await loudnessOf(desk, report)
    const loudness = planLoudness(measured, sheet.publishedSound?.gainDb)
    const edge = await openEdgeSource(found, folder, recording, signal)
    const pauses = request.freeInPoints && typeof edge !== 'string' ? await pausesOf(desk) : []
    const plans = segments.map((segment) =>
      planCut({
        ...{ segment, recording, index: recording.index, loudness, sha256 },
        edge: typeof edge === 'string' ? edge : edge.source,
        pauses,
      }),
    )
    report.step('loudness', 100)
    report.expect(plans)
    await checkSpace(folder, plans, recording)
    const context = {
      ...{ found, folder, recordingPath, recording, signal },
      loudness: recording.audio ? loudness.loudness : null,
      edge: typeof edge === 'string' ? null : edge,
    }
    const { clips, failed } = await cutClips(context, plans, request.jobs, (plan, percent) =>
      report.clip(plan.segmentId, plan.name, percent),
    )
    const manifest: Manifest = {
      format: 'repslate-manifest',
      version: 1,
      recording: { sha256, durationMs: recording.durationMs },
      clips,
      failed,
    }
    await writeWhole(folder, join(folder.outDir, 'manifest.json'), `${JSON.stringify(manifest, null, 2)}\n`)
    done = true
    return manifest
  } finally {
    await folder.leave(done)
  }
}

/** Stops before the work when the disk cannot hold what is still to be cut, by a guess on the low side. */
async function checkSpace(folder: WorkFolder, plans: readonly ClipPlan[], recording: OpenedRecording): Promise<void> {
  let missingMs = 0
  for (const plan of plans) {
    const made = await stat(join(folder.outDir, 'clips', clipNames(plan).clip)).catch(() => null)
    if (!made) missingMs += plan.durationMs
  }
  const needed = guessClipBytes(missingMs, recording.probe.sizeBytes, recording.durationMs)
  const disk = await statfs(folder.outDir)
  const free = disk.bavail * disk.bsize
  if (needed <= free) return
  throw new AppError(
    'disk-full',
    `The clips need about ${megabytes(needed)} MB and ${megabytes(free)} MB are free in "${folder.outDir}". Free some space, or choose another folder with --out.`,
  )
}

function share(part: number, whole: number): number {
  return whole > 0 ? Math.min(100, Math.floor((part / whole) * 100)) : 100
}

function megabytes(bytes: number): string {
  return (bytes / 1_000_000).toFixed(bytes < 10_000_000 ? 1 : 0)
}
