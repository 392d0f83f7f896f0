/** Packs one cut clip into a lesson's folder: clip with chapters, poster, key pictures, captions, chapters, description, lesson.json. */
import { copyFile, mkdir, rm } from 'node:fs/promises'
import path from 'node:path'
import { buildCaptions } from '../../core/captions/build-captions.ts'
import { rebaseToClip } from '../../core/captions/rebase-to-clip.ts'
import { writeVtt } from '../../core/captions/write-vtt.ts'
import { buildLessonChapters } from '../../core/chapters/build-chapters.ts'
import { writeChaptersVtt } from '../../core/chapters/write-chapters-vtt.ts'
import { writeLessonDescription } from '../../core/chapters/write-description.ts'
import { checkSheet } from '../../core/checks/check-sheet.ts'
import { buildLesson } from '../../core/library/build-lesson.ts'
import { placeInClip } from '../../core/library/place-in-clip.ts'
import { embedChapters } from '../../core/media/engine/embed-chapters.ts'
import type { Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { hashFile } from '../../core/media/engine/hash-file.ts'
import { makeKeyPictures } from '../../core/media/engine/make-key-pictures.ts'
import { isKept, keptRanges } from '../../core/segments/kept-ranges.ts'
import type { CaptionCue } from '../../shared/captions.ts'
import type { CheckReport } from '../../shared/check-report.ts'
import type { Lesson } from '../../shared/lesson.ts'
import type { LogSheet, Segment } from '../../shared/log-sheet.ts'
import type { ClipEntry } from '../../shared/manifest.ts'
import { overlapMs } from '../../shared/time.ts'
import type { Stretch } from '../../shared/time.ts'
import type { Transcript } from '../../shared/transcript.ts'
import { writeTextFile } from '../files/text-files.ts'

/** Names of the files in a lesson's folder. */
export const PACKED = {
  clip: 'clip.mp4',
  poster: 'poster.jpg',
  start: 'start.jpg',
  end: 'end.jpg',
  captions: 'captions.en.vtt',
  chapters: 'chapters.vtt',
  description: 'description.txt',
  lesson: 'lesson.json',
} as const

/** What all lessons of one class share. */
export interface ClassToPack {
  sheet: LogSheet
  report: CheckReport
  cues: readonly CaptionCue[]
  /** The folder that the paths of clip and poster start from. */
  cutDir: string
  recordingSha256: string
  /** Found by search when not given. */
  found?: Ffmpeg | undefined
  /** true = with square stills of where a repetition starts and ends; needs `found`. */
  keyPictures?: boolean
  signal?: AbortSignal | undefined
}

/** Captions of the class, and its check report with captions counted. @param transcript null = nothing was written down */
export function checkForLessons(
  sheet: LogSheet,
  transcript: Transcript | null,
  nowUtc: number,
): { cues: CaptionCue[]; report: CheckReport } {
  const cues = transcript ? buildCaptions(transcript) : []
  return { cues, report: checkSheet(sheet, { captions: captioned(sheet, cues), nowUtc }) }
}

/** @param folder made new; what lay there before is gone. @throws AppError of the engine, out-not-writable, disk-full */
export async function packLesson(given: ClassToPack, clip: ClipEntry, slug: string, folder: string): Promise<Lesson> {
  const { sheet, report, cues, cutDir, recordingSha256, found, signal } = given
  const segment = sheet.segments.find(({ id }) => id === clip.segmentId)
  if (!segment) throw new Error(`no segment ${clip.segmentId} on the sheet`)
  const at = (name: string): string => path.join(folder, name)
  await rm(folder, { recursive: true, force: true })
  await mkdir(folder, { recursive: true })
  const chapters = buildLessonChapters(segment, clip.spans)
  await embedChapters({
    clipPath: path.join(cutDir, clip.file),
    chapters,
    outPath: at(PACKED.clip),
    title: segment.exercise.name,
    durationMs: clip.durationMs,
    signal,
    ...(found && { found }),
  })
  if (clip.poster !== null) await copyFile(path.join(cutDir, clip.poster), at(PACKED.poster))
  await writeTextFile(at(PACKED.captions), writeVtt(rebaseToClip(cues, clip.spans)))
  await writeTextFile(at(PACKED.chapters), writeChaptersVtt(chapters))
  const clipSha256 = await hashFile(at(PACKED.clip), { signal })
  const files = { ...PACKED, poster: clip.poster === null ? null : PACKED.poster }
  const built = buildLesson({ sheet, segment, report, clip, clipSha256, recordingSha256, slug, files })
  const hasPictures = given.keyPictures === true && found && (await addKeyPictures(found, segment, clip, at, signal))
  const lesson: Lesson = hasPictures ? { ...built, pictures: { start: PACKED.start, end: PACKED.end } } : built
  await writeTextFile(at(PACKED.description), writeLessonDescription(lesson, chapters))
  await writeTextFile(at(PACKED.lesson), `${JSON.stringify(lesson, null, 2)}\n`)
  return lesson
}

/** @returns false when hardly anything moves */
async function addKeyPictures(
  found: Ffmpeg,
  segment: Segment,
  clip: ClipEntry,
  at: (name: string) => string,
  signal: AbortSignal | undefined,
): Promise<boolean> {
  const within = findMovement(segment, clip)
  const paths = { clipPath: at(PACKED.clip), startPath: at(PACKED.start), endPath: at(PACKED.end) }
  return (await makeKeyPictures(found, { ...paths, within, signal })) !== null
}

/** Where a clip shows the movement: its clean repetitions, else from the first word on how to move; on the clip's clock. */
export function findMovement(
  segment: Segment,
  { spans, durationMs }: Pick<ClipEntry, 'spans' | 'durationMs'>,
): Stretch {
  const loop = segment.loop && placeInClip(segment.loop, spans)
  if (loop) return loop
  const first = segment.cues.find(
    ({ kind, state, startMs }) => kind === 'execution' && state !== 'declined' && isKept(segment, startMs),
  )
  const from = first ? placeInClip({ startMs: first.startMs, endMs: first.startMs + 1 }, spans) : null
  return { startMs: from?.startMs ?? 0, endMs: durationMs }
}

function captioned(sheet: LogSheet, cues: readonly CaptionCue[]): Record<string, boolean> {
  const has = (ranges: ReturnType<typeof keptRanges>) =>
    ranges.some((range) => cues.some((cue) => overlapMs(range, cue) > 0))
  return Object.fromEntries(sheet.segments.map((segment) => [segment.id, has(keptRanges(segment))]))
}
