/**
 * Imports an export of another studio: every file is proven before anything is kept, and a lesson that lacks its dose or a
 * caution is held back here as it would be there. All of it comes in, or nothing.
 */
import { mkdir, readFile, rm } from 'node:fs/promises'
import path from 'node:path'
import { readVtt } from '../../core/captions/read-vtt.ts'
import { mayPublish } from '../../core/library/may-publish.ts'
import { hashBytes } from '../../core/media/engine/hash-file.ts'
import { probeFile } from '../../core/media/engine/probe-file.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import { ExportList } from '../../shared/backup.ts'
import type { CheckReport } from '../../shared/check-report.ts'
import { AppError } from '../../shared/errors.ts'
import { Lesson } from '../../shared/lesson.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import { readLogSheet } from '../../shared/read-log-sheet.ts'
import { openZip } from '../files/read-zip.ts'
import type { ZipReader } from '../files/read-zip.ts'
import { MAX_TEXT_BYTES } from '../files/text-files.ts'
import type { Studio } from '../studio.ts'
import { EXPORT, EXPORTED_FILES, exportName } from './export-recording.ts'
import { checkForLessons, PACKED } from './pack-lesson.ts'
import { storeLesson } from './store-lesson.ts'

export interface Imported {
  /** null = everything was here already. */
  recordingId: string | null
  title: string
  lessons: { name: string; slug: string }[]
  /** Names of lessons whose very clip is in the library. */
  known: string[]
  held: { name: string; reasons: string[] }[]
}

type Needs = Pick<Studio, 'store' | 'storage' | 'actor' | 'clock' | 'ids' | 'dataFolder' | 'ffmpeg' | 'settings'>

/** Files of a studio's whole work; a class has some fifteen lessons of eight files. */
const MOST_ENTRIES = 4000
/** A clip's length as told may be off by a frame or two of sound. */
const LENGTH_OFF_MS = 250

/** @throws AppError archive-wrong, sheet-*, disk-full, ffmpeg-missing, not-allowed; nothing is kept then */
export async function importExport(
  studio: Needs,
  { file, called }: { file: string; called?: string },
): Promise<Imported> {
  mustBeAllowed(studio.actor, 'studio.import', { type: 'studio', id: 'studio' })
  const bytes = Math.min(studio.settings.maxUploadBytes, await studio.storage.freeBytes())
  const zip = await openZip(file, { entries: MOST_ENTRIES, bytes }, called)
  const work = path.join(studio.dataFolder, 'work', studio.ids())
  try {
    await mkdir(work, { recursive: true, mode: 0o700 })
    const list = await readList(zip)
    const texts = await readTexts(zip, list)
    const sheet = readLogSheet(texts.sheet)
    const packed: Packed[] = []
    for (const { slug, segmentId } of list.lessons) {
      packed.push(await takeLesson(studio, zip, list, { slug, segmentId, folder: path.join(work, slug) }))
    }
    return await keep(studio, list, sheet, texts.transcript, packed)
  } finally {
    zip.close()
    await rm(work, { recursive: true, force: true })
  }
}

/** Is it an export, as far as its list tells? Needs no studio. @throws AppError archive-wrong */
export async function lookIntoExport(file: string): Promise<void> {
  const zip = await openZip(file, { entries: MOST_ENTRIES, bytes: Number.MAX_SAFE_INTEGER })
  await readList(zip).finally(() => zip.close())
}

interface Packed {
  slug: string
  segmentId: string
  folder: string
  lesson: Lesson
}

async function readList(zip: ZipReader): Promise<ExportList> {
  const text = (await zip.readBytes(EXPORT.manifest, MAX_TEXT_BYTES)).toString('utf8')
  const list = ExportList.safeParse(parseJson(text)).data
  if (!list) throw wrong('Its manifest is none of ours, damaged, or of a newer version')
  const told = new Set([EXPORT.manifest, ...list.files.map(({ name }) => name)])
  const there = new Set(zip.entries.map(({ name }) => name))
  const slugs = new Set(list.lessons.map(({ slug }) => slug))
  const ours = new Set<string>([EXPORT.manifest, EXPORT.sheet, EXPORT.transcript])
  for (const slug of slugs) for (const file of EXPORTED_FILES) ours.add(exportName(slug, file))
  const strange = [...there].filter((name) => !told.has(name) || !ours.has(name))
  const missing = [...told].filter((name) => !there.has(name))
  if (strange.length > 0) throw wrong(`It holds "${strange[0] ?? ''}", which no export has`)
  if (missing.length > 0) throw wrong(`It lacks "${missing[0] ?? ''}"`)
  if (slugs.size < list.lessons.length || list.files.length !== told.size - 1) throw wrong('It names a file twice')
  return list
}

async function readTexts(zip: ZipReader, list: ExportList): Promise<{ sheet: string; transcript: string | null }> {
  const read = async (name: string): Promise<string | null> => {
    const told = list.files.find((one) => one.name === name)
    if (!told) return null
    const bytes = await zip.readBytes(name, MAX_TEXT_BYTES)
    mustBe(name, told.sha256, hashBytes(bytes))
    return bytes.toString('utf8')
  }
  const sheet = await read(EXPORT.sheet)
  if (sheet === null) throw wrong(`It lacks "${EXPORT.sheet}"`)
  return { sheet, transcript: await read(EXPORT.transcript) }
}

/** Its files go into a folder of ours, under names of ours. */
async function takeLesson(
  studio: Needs,
  zip: ZipReader,
  list: ExportList,
  { slug, segmentId, folder }: Omit<Packed, 'lesson'>,
): Promise<Packed> {
  await mkdir(folder, { mode: 0o700 })
  const sums = new Map<string, string>()
  for (const file of EXPORTED_FILES) {
    const told = list.files.find(({ name }) => name === exportName(slug, file))
    if (!told) continue
    const sum = await zip.extract(told.name, path.join(folder, file))
    mustBe(told.name, told.sha256, sum)
    sums.set(file, sum)
  }
  for (const needed of [PACKED.clip, PACKED.captions, PACKED.chapters, PACKED.description, PACKED.lesson]) {
    if (!sums.has(needed)) throw wrong(`It lacks "${exportName(slug, needed)}"`)
  }
  const lesson = Lesson.safeParse(parseJson(await readFile(path.join(folder, PACKED.lesson), 'utf8'))).data
  if (!lesson) throw wrong(`The lesson "${slug}" cannot be read`)
  mustBe(exportName(slug, PACKED.clip), lesson.clip.sha256, sums.get(PACKED.clip) ?? '')
  const pictures = [PACKED.poster, PACKED.start, PACKED.end].filter((name) => sums.has(name))
  const named = [lesson.clip.poster, lesson.pictures?.start, lesson.pictures?.end].filter((name) => name != null)
  if (named.some((name) => !sums.has(name))) throw wrong(`The lesson "${slug}" lacks a picture that it names`)
  for (const name of pictures) await mustBePicture(path.join(folder, name), exportName(slug, name))
  for (const name of [PACKED.captions, PACKED.chapters]) {
    await mustBeVtt(path.join(folder, name), exportName(slug, name))
  }
  await mustBeClip(studio, path.join(folder, PACKED.clip), lesson)
  return { slug, segmentId, folder, lesson }
}

/** ITU-T T.81 (1992), section B.1.1.3: a JPEG starts with the markers SOI and another. */
async function mustBePicture(file: string, name: string): Promise<void> {
  const bytes = await readFile(file)
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8 || bytes[2] !== 0xff) throw wrong(`"${name}" is no JPEG picture`)
}

async function mustBeVtt(file: string, name: string): Promise<void> {
  const bad = readVtt(await readFile(file, 'utf8')).problems.filter(({ kind }) => kind !== 'untidy')
  if (bad.length > 0) throw wrong(`"${name}" is no sound WebVTT`)
}

async function mustBeClip({ ffmpeg }: Needs, file: string, { slug, clip }: Lesson): Promise<void> {
  if (!ffmpeg)
    throw new AppError('ffmpeg-missing', 'No usable ffmpeg was found, so clips cannot be checked. Run "doctor".')
  const probe = await probeFile(ffmpeg, file).catch((cause: unknown) => {
    throw wrong(`The clip of "${slug}" cannot be read`, cause)
  })
  const isRight = probe.video !== null && Math.abs((probe.durationMs ?? 0) - clip.durationMs) <= LENGTH_OFF_MS
  if (!isRight) throw wrong(`The clip of "${slug}" is not what its lesson says`)
}

async function keep(
  studio: Needs,
  list: ExportList,
  sheet: LogSheet,
  transcript: string | null,
  packed: readonly Packed[],
): Promise<Imported> {
  const { store, actor } = studio
  const parsed = transcript === null ? null : parseTranscript(transcript, { durationMs: sheet.durationMs || null })
  const { report } = checkForLessons(sheet, parsed?.kind === 'plan' ? null : parsed, studio.clock())
  const reasons = new Map(packed.map((one) => [one, findReasons(sheet, report, one)]))
  const clips = new Set((await store.lessons.list(['published'])).map(({ current }) => current?.clipSha256))
  const known = packed.filter(({ lesson }) => clips.has(lesson.clip.sha256))
  const fresh = packed.filter((one) => !known.includes(one) && reasons.get(one)?.length === 0)
  const told = {
    title: list.recording.title,
    known: known.map(({ lesson }) => lesson.name),
    held: packed.flatMap((one) => {
      const why = reasons.get(one) ?? []
      return why.length === 0 || known.includes(one) ? [] : [{ name: one.lesson.name, reasons: why }]
    }),
  }
  if (known.length === packed.length) return { ...told, recordingId: null, lessons: [] }
  return store.transaction(async (rooms) => {
    const { people } = sheet
    const { id: recordingId } = await rooms.recordings.add({ ...list.recording, people, state: 'arriving' }, actor)
    const { version: sheetVersion } = await rooms.sheets.add({ recordingId, sheet, actor })
    if (parsed && transcript !== null) {
      const form = parsed.kind === 'plan' ? 'plan' : parsed.form
      const words = { origin: 'file' as const, form, language: list.recording.language, fileName: null }
      await rooms.transcripts.add(recordingId, { ...words, text: transcript }, actor)
    }
    const lessons: Imported['lessons'] = []
    for (const { slug, segmentId, folder, lesson } of fresh) {
      const version = { recordingId, segmentId, sheetVersion, clipSha256: lesson.clip.sha256, lesson }
      const { shown } = await storeLesson(studio, rooms, { address: slug }, version, folder)
      lessons.push({ name: lesson.name, slug: shown.slug })
    }
    await rooms.audit.add(actor, 'studio.import', { type: 'recording', id: recordingId }, { lessons: lessons.length })
    return { ...told, recordingId, lessons }
  })
}

/** Stops of its sheet, and what its sheet requires and the lesson does not say. */
function findReasons(sheet: LogSheet, report: CheckReport, { segmentId, lesson }: Packed): string[] {
  const segment = sheet.segments.find(({ id, use }) => id === segmentId && use === 'lesson')
  if (!segment) return ['Its exercise is not on the sheet.']
  const held = mayPublish(sheet, report).held.find((one) => one.segment.id === segmentId)?.reasons ?? []
  const said = new Set(lesson.cautions.map(({ hazard }) => hazard))
  const lost = report.cautions.filter(
    (row) => row.segmentId === segmentId && row.level === 'must' && row.state !== 'waived' && !said.has(row.hazard),
  )
  return [
    ...held,
    ...(held.length === 0 ? lost.map(({ hazard }) => `The lesson lacks the caution ${hazard}.`) : []),
    ...(lesson.dose === null && segment.prescription !== null ? ['The lesson lacks its dose.'] : []),
  ]
}

function mustBe(name: string, told: string, found: string): void {
  if (told !== found) throw wrong(`"${name}" is not what its sum says`)
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

const wrong = (what: string, cause?: unknown): AppError =>
  new AppError('archive-wrong', `The export cannot be taken in. ${what}. Nothing was kept.`, { cause })
