/**
 * Publishes a class: checks the sheet, cuts what has no stop, and makes a lesson folder of each clip with captions,
 * chapters, description and lesson.json. What has a stop is held back with its reasons; nothing is waived here.
 */
import { copyFile, mkdir, readdir, rename, rm } from 'node:fs/promises'
import path from 'node:path'
import { buildCaptions } from '../../core/captions/build-captions.ts'
import { rebaseToClip } from '../../core/captions/rebase-to-clip.ts'
import { writeVtt } from '../../core/captions/write-vtt.ts'
import { buildClassChapters, buildLessonChapters } from '../../core/chapters/build-chapters.ts'
import { writeChaptersVtt } from '../../core/chapters/write-chapters-vtt.ts'
import { writeClassDescription, writeLessonDescription } from '../../core/chapters/write-description.ts'
import { checkSheet } from '../../core/checks/check-sheet.ts'
import { buildLesson } from '../../core/library/build-lesson.ts'
import { mayPublish, type Held } from '../../core/library/may-publish.ts'
import { slugsOf } from '../../core/library/name-slug.ts'
import { embedChapters } from '../../core/media/engine/embed-chapters.ts'
import { hashFile } from '../../core/media/engine/hash-file.ts'
import { keptRanges } from '../../core/segments/kept-ranges.ts'
import type { CaptionCue } from '../../shared/captions.ts'
import type { CheckReport } from '../../shared/check-report.ts'
import type { Lesson, Library } from '../../shared/lesson.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import type { ClipEntry, FailedClip } from '../../shared/manifest.ts'
import { writeLogSheet } from '../../shared/read-log-sheet.ts'
import { overlapMs } from '../../shared/time.ts'
import type { Transcript } from '../../shared/transcript.ts'
import { writeTextFile } from '../files/text-files.ts'
import { cutRecording } from './cut-recording.ts'
import type { OnProgress } from './progress.ts'

export interface PublishInput {
  recordingPath: string
  sheet: LogSheet
  transcript: Transcript
  outDir: string
  jobs: number
  nowUtc: number
  /** Told as soon as the checks are done, before anything is cut. */
  onChecked?: (report: CheckReport) => void
  signal?: AbortSignal
  onProgress?: OnProgress
}

export interface Published {
  report: CheckReport
  library: Library
  lessons: Lesson[]
  held: Held[]
  failed: FailedClip[]
}

/** @throws AppError for bad input; single clips that fail are listed in `failed` and stop no other. */
export async function publishClass(input: PublishInput): Promise<Published> {
  const { sheet, outDir } = input
  const cues = buildCaptions(input.transcript)
  const report = checkSheet(sheet, { captions: captioned(sheet, cues), nowUtc: input.nowUtc })
  input.onChecked?.(report)
  const { ready, held } = mayPublish(sheet, report)
  const manifest = await cutRecording({
    recordingPath: input.recordingPath,
    sheet: { ...sheet, segments: ready },
    outDir: path.join(outDir, 'cut'),
    jobs: input.jobs,
    signal: input.signal,
    onProgress: input.onProgress,
  })
  const slugs = slugsOf(sheet.segments.map((segment) => segment.exercise.name))
  const lessons: Lesson[] = []
  for (const clip of manifest.clips) {
    const index = sheet.segments.findIndex((segment) => segment.id === clip.segmentId)
    const slug = slugs[index] ?? clip.segmentId
    lessons.push(await packLesson(input, report, cues, clip, slug, manifest.recording.sha256))
  }
  const library = buildLibrary(sheet, lessons, held)
  await withdrawOthers(outDir, lessons)
  await writeClassFiles(outDir, sheet, report, cues, library)
  return { report, library, lessons, held, failed: manifest.failed }
}

function captioned(sheet: LogSheet, cues: readonly CaptionCue[]): Record<string, boolean> {
  const has = (ranges: ReturnType<typeof keptRanges>) =>
    ranges.some((range) => cues.some((cue) => overlapMs(range, cue) > 0))
  return Object.fromEntries(sheet.segments.map((segment) => [segment.id, has(keptRanges(segment))]))
}

/** Makes one lesson's folder beside its place and moves it in whole. */
async function packLesson(
  input: PublishInput,
  report: CheckReport,
  cues: readonly CaptionCue[],
  clip: ClipEntry,
  slug: string,
  recordingSha256: string,
): Promise<Lesson> {
  const { sheet, outDir } = input
  const segment = sheet.segments.find(({ id }) => id === clip.segmentId)
  if (!segment) throw new Error(`no segment ${clip.segmentId} on the sheet`)
  const folder = path.join(outDir, 'lessons', slug)
  const part = `${folder}.part`
  const files = {
    clip: 'clip.mp4',
    poster: clip.poster === null ? null : 'poster.jpg',
    captions: 'captions.en.vtt',
    chapters: 'chapters.vtt',
    description: 'description.txt',
  }
  await rm(part, { recursive: true, force: true })
  await mkdir(part, { recursive: true })
  const chapters = buildLessonChapters(segment, clip.spans)
  const clipFile = path.join(part, files.clip)
  await embedChapters({
    clipPath: path.join(outDir, 'cut', clip.file),
    chapters,
    outPath: clipFile,
    title: segment.exercise.name,
    durationMs: clip.durationMs,
    signal: input.signal,
  })
  if (clip.poster !== null) await copyFile(path.join(outDir, 'cut', clip.poster), path.join(part, 'poster.jpg'))
  await writeTextFile(path.join(part, files.captions), writeVtt(rebaseToClip(cues, clip.spans)))
  await writeTextFile(path.join(part, files.chapters), writeChaptersVtt(chapters))
  const clipSha256 = await hashFile(clipFile)
  const lesson = buildLesson({ sheet, segment, report, clip, clipSha256, recordingSha256, slug, files })
  await writeTextFile(path.join(part, files.description), writeLessonDescription(lesson, chapters))
  await writeTextFile(path.join(part, 'lesson.json'), `${JSON.stringify(lesson, null, 2)}\n`)
  await swapIn(part, folder)
  return lesson
}

/** Puts the finished folder in the place of the old one; a reader meets the old lesson or the new one. */
async function swapIn(part: string, folder: string): Promise<void> {
  const old = `${folder}.old`
  await rm(old, { recursive: true, force: true })
  await rename(folder, old).catch(() => undefined)
  await rename(part, folder)
  await rm(old, { recursive: true, force: true })
}

/** Takes away lessons of an earlier run that are no longer published, and what a killed run left. */
async function withdrawOthers(outDir: string, lessons: readonly Lesson[]): Promise<void> {
  const published = new Set(lessons.map((lesson) => lesson.slug))
  const folder = path.join(outDir, 'lessons')
  const names = await readdir(folder).catch(() => [])
  const others = names.filter((name) => !published.has(name))
  for (const name of others) await rm(path.join(folder, name), { recursive: true, force: true })
}

function buildLibrary(sheet: LogSheet, lessons: readonly Lesson[], held: readonly Held[]): Library {
  return {
    format: 'repslate-library',
    version: 1,
    title: sheet.title,
    lessons: lessons.map((lesson) => ({
      slug: lesson.slug,
      name: lesson.name,
      folder: `lessons/${lesson.slug}`,
      dose: lesson.dose?.text ?? '',
      durationMs: lesson.clip.durationMs,
    })),
    heldBack: held.map(({ segment, reasons }) => ({ segmentId: segment.id, name: segment.exercise.name, reasons })),
  }
}

async function writeClassFiles(
  outDir: string,
  sheet: LogSheet,
  report: CheckReport,
  cues: readonly CaptionCue[],
  library: Library,
): Promise<void> {
  const chapters = buildClassChapters(sheet)
  const write = (name: string, text: string) => writeTextFile(path.join(outDir, name), text)
  await write('class.captions.en.vtt', writeVtt([...cues]))
  await write('class.chapters.vtt', writeChaptersVtt(chapters))
  await write('class.description.txt', writeClassDescription(sheet, chapters))
  await write('log-sheet.json', writeLogSheet(sheet))
  await write('check-report.json', `${JSON.stringify(report, null, 2)}\n`)
  await write('library.json', `${JSON.stringify(library, null, 2)}\n`)
}
