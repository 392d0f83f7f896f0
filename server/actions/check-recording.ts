/** Checks the log sheet of a recording and gathers what its pages say of it: cautions with their words, counts, undo. */
import { coverCautions } from '../../core/cautions/cover-cautions.ts'
import { checkSheet } from '../../core/checks/check-sheet.ts'
import { summariseReport } from '../../core/checks/summarise-report.ts'
import type { ReportSummary } from '../../core/checks/summarise-report.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import type { CautionCoverage, CheckReport } from '../../shared/check-report.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import type { Ms } from '../../shared/time.ts'
import type { Studio } from '../studio.ts'
import { findUndo } from './find-undo.ts'
import type { UndoStep } from './find-undo.ts'

/** A required caution of one lesson: why it is needed, where it stands, and the words that cover it. */
export interface CautionNeed extends Pick<CautionCoverage, 'segmentId' | 'hazard' | 'state' | 'inClip' | 'concerns'> {
  level: 'must' | 'should'
  /** To be read after "because". */
  why: string
  said: { text: string; atMs: Ms | null } | null
}

export interface CheckedSheet {
  sheetId: string
  version: number
  sheet: LogSheet
  report: CheckReport
  summary: ReportSummary
  needs: CautionNeed[]
  /** Ids of the segments whose lessons are shown to members now. */
  published: ReadonlySet<string>
  undo: UndoStep | null
  redo: UndoStep | null
}

/** So many edits back one can go. */
const UNDO_DEPTH = 300

type Needs = Pick<Studio, 'store' | 'actor' | 'clock'>

/** null = nothing is drafted yet. @throws AppError row-missing, not-allowed */
export async function checkRecording(studio: Needs, recordingId: string): Promise<CheckedSheet | null> {
  const { store, actor, clock } = studio
  mustBeAllowed(actor, 'sheet.read', { type: 'sheet', id: recordingId })
  const stored = await store.sheets.readOf(recordingId)
  if (!stored) return null
  const { id: sheetId, version, sheet } = stored
  const transcript = await store.transcripts.list(recordingId)
  const lessons = sheet.segments.filter(({ use, state }) => use === 'lesson' && state !== 'declined')
  const covered = coverCautions(sheet, lessons)
  const captions = transcript.some(({ form }) => form !== 'plan')
  const report = checkSheet(sheet, { nowUtc: clock(), captions, lessons: covered })
  return {
    sheetId,
    version,
    sheet,
    report,
    summary: summariseReport(
      report,
      lessons.map(({ id }) => id),
    ),
    needs: covered.flatMap(({ segment, required }) =>
      required.map(({ required: { hazard, level, why, concerns }, state, inClip, said }) => ({
        ...{ segmentId: segment.id, hazard, level, why, concerns, state, inClip, said },
      })),
    ),
    published: await listPublished(store, recordingId),
    ...findUndo(await store.sheets.readEdits(sheetId, Math.max(0, version - UNDO_DEPTH)), actor.id),
  }
}

async function listPublished(store: Studio['store'], recordingId: string): Promise<Set<string>> {
  const lessons = await store.lessons.list(['published'])
  return new Set(lessons.flatMap(({ current }) => (current?.recordingId === recordingId ? [current.segmentId] : [])))
}
