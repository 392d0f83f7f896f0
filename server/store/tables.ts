/** The tables as the queries see them: one interface a table, names in camel case, values as the database holds them. */
import type { ColumnType } from 'kysely'

/** Never written after the row was made. */
type Fixed<Value> = ColumnType<Value, Value, never>

export interface Tables {
  classKinds: ClassKindRow
  recordings: RecordingRow
  mediaFiles: MediaFileRow
  transcripts: TranscriptRow
  sheets: SheetRow
  sheetSnapshots: SheetSnapshotRow
  edits: EditRow
  jobs: JobRow
  lessons: LessonRow
  lessonVersions: LessonVersionRow
  auditRows: AuditTableRow
  settings: { name: string; valueJson: string; updatedUtc: number }
  counters: { name: string; value: number }
  events: { seq: Fixed<number>; topic: Fixed<string>; objectId: Fixed<string>; atUtc: Fixed<number> }
}

interface Times {
  createdUtc: Fixed<number>
  updatedUtc: number
}

export interface ClassKindRow extends Times {
  id: Fixed<string>
  title: string
  audienceJson: string
  equipmentJson: string
  music: string | null
  peopleJson: string | null
  removed: number
  rowVersion: number
}

export interface RecordingRow extends Times {
  id: Fixed<string>
  kindId: string | null
  title: string
  language: string
  audienceJson: string | null
  equipmentJson: string
  music: string | null
  peopleJson: string | null
  state: string
  durationMs: number | null
  rowVersion: number
}

export interface MediaFileRow extends Times {
  id: Fixed<string>
  recordingId: Fixed<string>
  role: string
  position: number
  label: string
  fileName: string
  bytes: number | null
  sha256: string | null
  durationMs: number | null
  storageKey: string | null
  startMs: number
  driftPpm: number
  factsJson: string | null
  rowVersion: number
}

export interface TranscriptRow {
  recordingId: Fixed<string>
  version: Fixed<number>
  origin: Fixed<string>
  form: Fixed<string>
  language: Fixed<string | null>
  fileName: Fixed<string | null>
  text: Fixed<string>
  sha256: Fixed<string>
  addedBy: Fixed<string>
  createdUtc: Fixed<number>
}

export interface SheetRow extends Times {
  id: Fixed<string>
  recordingId: Fixed<string>
  version: number
}

export interface SheetSnapshotRow {
  sheetId: Fixed<string>
  version: Fixed<number>
  sheetJson: Fixed<string>
  atUtc: Fixed<number>
}

export interface EditRow {
  sheetId: Fixed<string>
  version: Fixed<number>
  opId: Fixed<string>
  actor: Fixed<string>
  atUtc: Fixed<number>
  opJson: Fixed<string>
}

export interface JobRow {
  id: Fixed<string>
  kind: Fixed<string>
  state: string
  priority: number
  recordingId: Fixed<string | null>
  jobKey: Fixed<string | null>
  inputJson: Fixed<string>
  progressJson: string | null
  resultJson: string | null
  errorJson: string | null
  attempts: number
  maxAttempts: number
  cancelAsked: number
  workerId: string | null
  askedBy: Fixed<string>
  createdUtc: Fixed<number>
  runAfterUtc: number
  startedUtc: number | null
  beatUtc: number | null
  endedUtc: number | null
}

export interface LessonRow extends Times {
  id: Fixed<string>
  slug: Fixed<string>
  name: string
  state: string
  currentVersion: number | null
  rowVersion: number
}

export interface LessonVersionRow {
  lessonId: Fixed<string>
  version: Fixed<number>
  recordingId: Fixed<string>
  segmentId: Fixed<string>
  sheetVersion: Fixed<number>
  clipSha256: Fixed<string>
  lessonJson: Fixed<string>
  publishedBy: Fixed<string>
  publishedUtc: Fixed<number>
  withdrawnBy: string | null
  withdrawnUtc: number | null
}

export interface AuditTableRow {
  id: Fixed<string>
  actorId: Fixed<string>
  actorName: Fixed<string>
  action: Fixed<string>
  objectType: Fixed<string>
  objectId: Fixed<string>
  atUtc: Fixed<number>
  detailsJson: Fixed<string>
}
