/** Drafts the log sheet of a recording from its transcript or plan, or from where someone speaks; what people decided stays. */
import type { FoundSpeech } from '../../core/media/find-speech.ts'
import { proposeFromSpeech } from '../../core/media/propose-from-speech.ts'
import { mergeDraft } from '../../core/segments/merge-draft.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import type { Actor } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import { LogSheet } from '../../shared/log-sheet.ts'
import { speechKey } from '../storage/media-keys.ts'
import type { StoredSheet } from '../store/keep-sheets.ts'
import type { Rooms } from '../store/open-store.ts'
import type { Studio } from '../studio.ts'
import { askSecondReader } from './ask-second-reader.ts'
import { findReader } from './change-reader.ts'
import { draftAside } from './draft-aside.ts'
import type { DraftedWords } from './draft-words.ts'
import { findClassFile, findClassFileOrNull } from './find-class-file.ts'

type Needs = Pick<Studio, 'store' | 'storage' | 'actor'>

/**
 * Running it twice for one job is running it once.
 * @param input.opId names the change on the sheet
 * @throws AppError row-missing, transcript-*, engine-cancelled, not-allowed
 */
export async function draftRecording(
  studio: Needs,
  input: { recordingId: string; transcriptVersion: number; opId: string },
  signal?: AbortSignal,
): Promise<{ sheetId: string; version: number; segments: number }> {
  const { recordingId, transcriptVersion, opId } = input
  const { fresh } = await draftFrom(studio, recordingId, transcriptVersion, signal)
  return putDraft(studio, recordingId, fresh, opId)
}

/**
 * Asks the second reader of the settings about a class that is drafted, and adds what it proposes. Running it twice for one
 * job is running it once.
 * @returns null = newer words are here, or it is a plan, so nobody was asked
 * @throws AppError second-reader, row-missing, transcript-*, engine-cancelled, not-allowed
 */
export async function readAgain(
  studio: Needs & Pick<Studio, 'settings' | 'dataFolder'>,
  input: { recordingId: string; transcriptVersion: number; opId: string },
  signal?: AbortSignal,
): Promise<{ added: number; refused: number } | null> {
  const { recordingId, transcriptVersion, opId } = input
  const reader = await findReader(studio)
  const newest = await studio.store.transcripts.read(recordingId)
  if (!reader || newest?.version !== transcriptVersion) return null
  const { transcript, fresh } = await draftFrom(studio, recordingId, transcriptVersion, signal)
  if (transcript.kind !== 'timed') return null
  const { sheet, added, refused } = await askSecondReader(reader, transcript.lines, fresh, signal)
  await putDraft(studio, recordingId, sheet, opId)
  return { added, refused }
}

async function draftFrom(
  studio: Needs,
  recordingId: string,
  transcriptVersion: number,
  signal: AbortSignal | undefined,
): Promise<DraftedWords> {
  const stored = await studio.store.transcripts.read(recordingId, transcriptVersion)
  if (!stored) throw new AppError('row-missing', 'The transcript is not in the store. Add it again.')
  return draftAside({ text: stored.text, head: await readHead(studio, recordingId) }, signal)
}

/**
 * Without a transcript: stretches of speech become proposals to name.
 * @throws AppError row-missing while the sound is not read yet; not-allowed
 */
export async function draftFromSpeech(
  studio: Needs & Pick<Studio, 'ids'>,
  recordingId: string,
): Promise<{ sheetId: string; version: number; segments: number }> {
  const { media, facts } = await findClassFile(studio, recordingId)
  if (!facts?.wave) throw new AppError('row-missing', 'The sound of this class is not read yet. Try again when it is.')
  const parts: Buffer[] = []
  for await (const part of await studio.storage.openRange(speechKey(recordingId, media.id))) parts.push(part as Buffer)
  const { islands } = JSON.parse(Buffer.concat(parts).toString('utf8')) as FoundSpeech
  const head = await readHead(studio, recordingId)
  const fresh = LogSheet.parse({ ...head, segments: proposeFromSpeech(islands, head.durationMs) })
  return putDraft(studio, recordingId, fresh, studio.ids())
}

async function readHead(studio: Needs, recordingId: string) {
  const { title, language, audience, music, people, durationMs } = await studio.store.recordings.read(recordingId)
  const sha256 = (await findClassFileOrNull(studio, recordingId))?.media.sha256 ?? null
  return {
    format: 'repslate-log-sheet' as const,
    version: 1 as const,
    title,
    language,
    durationMs: durationMs ?? 0,
    source: sha256 !== null && durationMs !== null ? { sha256, durationMs } : null,
    audience: audience ?? [],
    music,
    people,
  }
}

async function putDraft({ store, actor }: Needs, recordingId: string, fresh: LogSheet, opId: string) {
  return store.transaction(async ({ sheets }) => {
    const now = (await sheets.readOf(recordingId)) ?? (await addSheet(sheets, recordingId, fresh, actor))
    mustBeAllowed(actor, 'sheet.edit', { type: 'sheet', id: now.id })
    const { version, sheet } = await sheets.rebuild({
      sheetId: now.id,
      opId,
      actor,
      build: (newest) => mergeDraft(newest, fresh),
    })
    return { sheetId: now.id, version, segments: sheet.segments.length }
  })
}

function addSheet(sheets: Rooms['sheets'], recordingId: string, sheet: LogSheet, actor: Actor): Promise<StoredSheet> {
  mustBeAllowed(actor, 'sheet.add', { type: 'sheet', id: recordingId })
  return sheets.add({ recordingId, sheet, actor })
}
