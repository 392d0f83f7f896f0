/**
 * Exports the lessons of a recording as one zip: for each its clip, pictures, captions, chapters, description and
 * lesson.json; beside them the log sheet, the transcript and a manifest with the sum of every file. The film stays here.
 */
import { stat } from 'node:fs/promises'
import type { Writable } from 'node:stream'
import { hashBytes, hashFile } from '../../core/media/engine/hash-file.ts'
import { LESSON_FILE_NAMES, lessonFileKey } from '../../core/library/name-lesson-files.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import type { ExportList } from '../../shared/backup.ts'
import { AppError } from '../../shared/errors.ts'
import { writeLogSheet } from '../../shared/read-log-sheet.ts'
import { sendZip, writeZip } from '../files/write-zip.ts'
import type { ZipPart } from '../files/write-zip.ts'
import type { LessonVersion, ShownLesson } from '../store/keep-lessons.ts'
import type { Studio } from '../studio.ts'
import { PACKED } from './pack-lesson.ts'
import { readClassWords } from './read-class-words.ts'
import { furtherKey } from './store-lesson.ts'

/** Names in the archive. */
export const EXPORT = { manifest: 'manifest.json', sheet: 'log-sheet.json', transcript: 'transcript.txt' } as const
/** Files of one lesson, below `lessons/<address>/`. */
export const EXPORTED_FILES: readonly string[] = [...LESSON_FILE_NAMES, PACKED.description, PACKED.lesson]
export const exportName = (slug: string, file: string): string => `lessons/${slug}/${file}`

export interface Exported {
  file: string
  bytes: number
  lessons: string[]
}

type Needs = Pick<Studio, 'store' | 'storage' | 'actor' | 'clock'>

/** @throws AppError row-missing when nothing of it is published, out-not-writable, disk-full, not-allowed */
export async function exportRecording(
  studio: Needs,
  { recordingId, file }: { recordingId: string; file: string },
): Promise<Exported> {
  const { parts, lessons } = await gatherExport(studio, recordingId)
  const bytes = await writeZip(file, parts, studio.clock())
  await noteExport(studio, recordingId, lessons)
  return { file, bytes, lessons }
}

export interface SentExport {
  title: string
  /** Sends it, file by file; no file is made here. @throws Error when the reader goes away */
  send: (out: Writable, onSize: (bytes: number) => void) => Promise<void>
}

/** The same into a stream. @throws AppError row-missing when nothing of it is published, not-allowed */
export async function sendExport(studio: Needs, { recordingId }: { recordingId: string }): Promise<SentExport> {
  const { title, parts, lessons } = await gatherExport(studio, recordingId)
  return {
    title,
    send: async (out, onSize) => {
      await sendZip(out, parts, studio.clock(), onSize)
      await noteExport(studio, recordingId, lessons)
    },
  }
}

async function noteExport({ store, actor }: Needs, recordingId: string, lessons: string[]): Promise<void> {
  await store.audit.add(actor, 'studio.export', { type: 'recording', id: recordingId }, { lessons })
}

async function gatherExport(
  studio: Needs,
  recordingId: string,
): Promise<{ title: string; parts: ZipPart[]; lessons: string[] }> {
  mustBeAllowed(studio.actor, 'studio.export', { type: 'recording', id: recordingId })
  const { store } = studio
  const recording = await store.recordings.read(recordingId)
  const stored = await store.sheets.readOf(recordingId)
  const shown = (await store.lessons.list(['published'])).filter(({ current }) => current?.recordingId === recordingId)
  if (!stored || shown.length === 0) {
    throw new AppError('row-missing', `No lesson of "${recording.title}" is published, so there is nothing to export.`)
  }
  const words = await readClassWords(store, recordingId, stored.sheet.durationMs)
  const parts: ZipPart[] = [textPart(EXPORT.sheet, writeLogSheet(stored.sheet))]
  if (words) parts.push(textPart(EXPORT.transcript, words.stored.text))
  for (const one of shown) if (one.current) parts.push(...(await lessonParts(studio, one, one.current)))
  const { title, language, durationMs, audience, equipment, music } = recording
  const manifest: ExportList = {
    ...{ format: 'repslate-export', version: 1, exportedUtc: studio.clock() },
    recording: { title, language, durationMs, audience, equipment, music },
    lessons: shown.flatMap(({ slug, current }) => (current ? [{ slug, segmentId: current.segmentId }] : [])),
    files: await Promise.all(parts.map(sumPart)),
  }
  const all = [textPart(EXPORT.manifest, `${JSON.stringify(manifest, null, 2)}\n`), ...parts]
  return { title, parts: all, lessons: shown.map(({ slug }) => slug) }
}

async function lessonParts(
  { storage }: Needs,
  { id, slug }: ShownLesson,
  { version, lesson }: LessonVersion,
): Promise<ZipPart[]> {
  const files = [
    ...LESSON_FILE_NAMES.map((name) => ({ name, key: lessonFileKey(id, version, name) })),
    { name: PACKED.description, key: furtherKey(id, version, PACKED.description) },
  ]
  const there: ZipPart[] = []
  for (const { name, key } of files) {
    if (await storage.head(key)) there.push({ name: exportName(slug, name), path: storage.path(key) })
  }
  return [...there, textPart(exportName(slug, PACKED.lesson), `${JSON.stringify({ ...lesson, slug }, null, 2)}\n`)]
}

const textPart = (name: string, text: string): ZipPart => ({ name, bytes: Buffer.from(text, 'utf8') })

async function sumPart(part: ZipPart): Promise<ExportList['files'][number]> {
  if ('bytes' in part) {
    return { name: part.name, bytes: part.bytes.length, sha256: hashBytes(part.bytes) }
  }
  return { name: part.name, bytes: (await stat(part.path)).size, sha256: await hashFile(part.path) }
}
