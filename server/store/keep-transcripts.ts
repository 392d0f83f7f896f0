/** Transcripts and class plans of a recording, as they were handed in; a new one is a new version, the old ones stay. */
import { createHash } from 'node:crypto'
import type { Selectable } from 'kysely'
import { z } from 'zod'
import type { Actor } from '../../shared/actors.ts'
import type { Hold } from './hold-store.ts'
import { readRecording } from './keep-recordings.ts'
import type { TranscriptRow } from './tables.ts'

export const TranscriptOrigin = z.enum(['file', 'pasted', 'typed'])
export type TranscriptOrigin = z.infer<typeof TranscriptOrigin>

export interface StoredTranscript {
  recordingId: string
  /** 1, 2, 3 ... */
  version: number
  origin: TranscriptOrigin
  /** The form that read it, such as webvtt or plan. */
  form: string
  language: string | null
  fileName: string | null
  /** Exactly as handed in; reading it again gives the lines. */
  text: string
  sha256: string
  addedBy: string
  createdUtc: number
}

export type TranscriptFields = Pick<StoredTranscript, 'origin' | 'form' | 'language' | 'fileName' | 'text'>

export interface Transcripts {
  /** The same text again is no new version. @throws AppError row-missing, store-text */
  add: (recordingId: string, fields: TranscriptFields, actor: Actor) => Promise<StoredTranscript>
  /** The newest, or the one of a version; null = there is none. */
  read: (recordingId: string, version?: number) => Promise<StoredTranscript | null>
  /** The newest first, without their text. */
  list: (recordingId: string) => Promise<Omit<StoredTranscript, 'text'>[]>
}

export function keepTranscripts(hold: Hold): Transcripts {
  return {
    add: (recordingId, fields, actor) =>
      hold.write(async (step) => {
        await lockRecording(step.db, hold.engine, recordingId)
        const last = await readVersion(step.db, recordingId)
        const sha256 = createHash('sha256').update(fields.text).digest('hex')
        if (last?.sha256 === sha256 && last.form === fields.form) return last
        const version = (last?.version ?? 0) + 1
        const row = { recordingId, version, ...fields, sha256, addedBy: actor.id, createdUtc: step.nowUtc }
        await step.db.insertInto('transcripts').values(row).execute()
        await step.audit(actor, 'transcript.add', { type: 'transcript', id: recordingId }, { version })
        step.emit('recordings', recordingId)
        return row
      }),
    read: (recordingId, version) => readVersion(hold.db, recordingId, version),
    list: async (recordingId) => {
      const rows = await hold.db
        .selectFrom('transcripts')
        .select(['recordingId', 'version', 'origin', 'form', 'language', 'fileName'])
        .select(['sha256', 'addedBy', 'createdUtc'])
        .where('recordingId', '=', recordingId)
        .orderBy('version', 'desc')
        .execute()
      return rows.map((row) => ({ ...row, origin: TranscriptOrigin.parse(row.origin) }))
    },
  }
}

/** Two that add at once get two versions. @throws AppError row-missing */
async function lockRecording(db: Hold['db'], engine: Hold['engine'], recordingId: string): Promise<void> {
  await readRecording(db, recordingId)
  if (engine === 'postgres') {
    await db.selectFrom('recordings').select('id').where('id', '=', recordingId).forUpdate().execute()
  }
}

async function readVersion(db: Hold['db'], recordingId: string, version?: number): Promise<StoredTranscript | null> {
  const row = await db
    .selectFrom('transcripts')
    .selectAll()
    .where('recordingId', '=', recordingId)
    .$if(version !== undefined, (query) => query.where('version', '=', version ?? 0))
    .orderBy('version', 'desc')
    .limit(1)
    .executeTakeFirst()
  return row ? toTranscript(row) : null
}

function toTranscript(row: Selectable<TranscriptRow>): StoredTranscript {
  return { ...row, origin: TranscriptOrigin.parse(row.origin) }
}
