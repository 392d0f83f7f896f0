/**
 * Publishes a class: checks the sheet, cuts what has no stop, and makes a lesson folder of each clip with captions,
 * chapters, description and lesson.json. What has a stop is held back with its reasons; nothing is waived here.
 */
import { readdir, rename, rm } from 'node:fs/promises'
import path from 'node:path'
import { writeVtt } from '../../core/captions/write-vtt.ts'
import { buildClassChapters } from '../../core/chapters/build-chapters.ts'
import { writeChaptersVtt } from '../../core/chapters/write-chapters-vtt.ts'
import { writeClassDescription } from '../../core/chapters/write-description.ts'
import { mayPublish, type Held } from '../../core/library/may-publish.ts'
import { slugsOf } from '../../core/library/name-slug.ts'
import type { CaptionCue } from '../../shared/captions.ts'
import type { CheckReport } from '../../shared/check-report.ts'
import type { Lesson, Library } from '../../shared/lesson.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import type { FailedClip } from '../../shared/manifest.ts'
import { writeLogSheet } from '../../shared/read-log-sheet.ts'
import type { Transcript } from '../../shared/transcript.ts'
import { writeTextFile } from '../files/text-files.ts'
import { cutClass } from './cut-class.ts'
import { checkForLessons, packLesson } from './pack-lesson.ts'
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
  const { cues, report } = checkForLessons(sheet, input.transcript, input.nowUtc)
  input.onChecked?.(report)
  const { ready, held } = mayPublish(sheet, report)
  const cutDir = path.join(outDir, 'cut')
  const manifest = await cutClass({
    recordingPath: input.recordingPath,
    sheet: { ...sheet, segments: ready },
    outDir: cutDir,
    jobs: input.jobs,
    signal: input.signal,
    onProgress: input.onProgress,
  })
  const slugs = slugsOf(sheet.segments.map((segment) => segment.exercise.name))
  const lessons: Lesson[] = []
  const shared = { sheet, report, cues, cutDir, recordingSha256: manifest.recording.sha256, signal: input.signal }
  for (const clip of manifest.clips) {
    const index = sheet.segments.findIndex((segment) => segment.id === clip.segmentId)
    const slug = slugs[index] ?? clip.segmentId
    const folder = path.join(outDir, 'lessons', slug)
    lessons.push(await packLesson(shared, clip, slug, `${folder}.part`))
    await swapIn(`${folder}.part`, folder)
  }
  const library = buildLibrary(sheet, lessons, held)
  await withdrawOthers(outDir, lessons)
  await writeClassFiles(outDir, sheet, report, cues, library)
  return { report, library, lessons, held, failed: manifest.failed }
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
