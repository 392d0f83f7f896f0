/** Gathers what the shelf shows of each recording: how far it is, what is under way, what went wrong. */
import { checkSheet } from '../../core/checks/check-sheet.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import type { CheckReport } from '../../shared/check-report.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import type { MediaFile } from '../store/keep-media.ts'
import type { StoredSheet } from '../store/keep-sheets.ts'
import type { Recording } from '../store/keep-recordings.ts'
import type { Job } from '../store/read-job.ts'
import type { Studio } from '../studio.ts'

export interface ShelfEntry {
  recording: Recording
  /** Parts first, then sound, then cameras. */
  media: MediaFile[]
  hasWords: boolean
  /** null = nothing is drafted yet. */
  work: { sheet: LogSheet; report: CheckReport; published: Set<string> } | null
  /** Queued and running, the oldest first. */
  jobs: Job[]
  /** The newest job of each kind, where that one failed. */
  failed: Job[]
}

type Needs = Pick<Studio, 'store' | 'actor' | 'clock'>

/** The newest first. @throws AppError not-allowed */
export async function showShelf(studio: Needs): Promise<ShelfEntry[]> {
  mustBeAllowed(studio.actor, 'studio.read', { type: 'studio', id: 'studio' })
  const published = await listPublishedSegments(studio.store)
  const recordings = await studio.store.recordings.list()
  return Promise.all(recordings.map((recording) => readEntry(studio, recording, published)))
}

/** @throws AppError row-missing, not-allowed */
export async function showRecording(studio: Needs, recordingId: string): Promise<ShelfEntry> {
  mustBeAllowed(studio.actor, 'studio.read', { type: 'recording', id: recordingId })
  const recording = await studio.store.recordings.read(recordingId)
  return readEntry(studio, recording, await listPublishedSegments(studio.store))
}

async function readEntry(
  { store, clock }: Needs,
  recording: Recording,
  published: ReadonlyMap<string, Set<string>>,
): Promise<ShelfEntry> {
  const { id: recordingId } = recording
  const jobs = await store.jobs.list({ recordingId })
  const stored = await store.sheets.readOf(recordingId)
  return {
    recording,
    media: await store.media.list(recordingId),
    hasWords: (await store.transcripts.list(recordingId)).length > 0,
    work: stored && {
      sheet: stored.sheet,
      report: checkOnce(store, stored, clock()),
      published: published.get(recordingId) ?? new Set(),
    },
    jobs: jobs.filter(({ state }) => state === 'queued' || state === 'running').reverse(),
    failed: newestOfKind(jobs).filter(({ state }) => state === 'failed'),
  }
}

/** Checking is the dear part of a shelf; a sheet of one version gives one report, but for consents that run out. */
const checked = new WeakMap<object, Map<string, { at: string; report: CheckReport }>>()

function checkOnce(store: Studio['store'], { id, version, sheet }: StoredSheet, nowUtc: number): CheckReport {
  const known = checked.get(store) ?? new Map<string, { at: string; report: CheckReport }>()
  checked.set(store, known)
  const at = `${version} ${Math.floor(nowUtc / CHECK_AGAIN_MS)}`
  const former = known.get(id)
  if (former?.at === at) return former.report
  const report = checkSheet(sheet, { nowUtc })
  known.set(id, { at, report })
  return report
}

const CHECK_AGAIN_MS = 600_000

/** Segments that are shown as lessons now, by recording. */
async function listPublishedSegments(store: Studio['store']): Promise<Map<string, Set<string>>> {
  const byRecording = new Map<string, Set<string>>()
  for (const { current } of await store.lessons.list(['published'])) {
    if (!current) continue
    const segments = byRecording.get(current.recordingId) ?? new Set()
    byRecording.set(current.recordingId, segments.add(current.segmentId))
  }
  return byRecording
}

/** @param jobs the newest first */
function newestOfKind(jobs: readonly Job[]): Job[] {
  return jobs.filter((job, index) => jobs.findIndex(({ kind }) => kind === job.kind) === index)
}
