/** Builds a lesson from its segment, its clip and the check report: all that a member is shown. */
import type { CheckReport } from '../../shared/check-report.ts'
import { NOTICE, type Lesson, type LessonCaution } from '../../shared/lesson.ts'
import type { Cue, CueKind, LogSheet, Ref, Segment } from '../../shared/log-sheet.ts'
import type { ClipEntry } from '../../shared/manifest.ts'
import { describeCaution } from '../cautions/describe-caution.ts'
import { speakDose } from '../dose/speak-dose.ts'
import { writeDose } from '../dose/write-dose.ts'
import { isKept } from '../segments/kept-ranges.ts'

/** Names of the files in a lesson's folder. */
export interface LessonFiles {
  clip: string
  poster: string | null
  captions: string
  chapters: string
  description: string
}

export interface LessonInput {
  sheet: LogSheet
  segment: Segment
  report: CheckReport
  clip: ClipEntry
  /** sha256 of the clip as packed for the lesson (the cut clip with chapters added). */
  clipSha256: string
  recordingSha256: string
  slug: string
  files: LessonFiles
}

export function buildLesson(input: LessonInput): Lesson {
  const { sheet, segment, clip, files } = input
  const prescription = segment.prescription
  return {
    format: 'repslate-lesson',
    version: 1,
    slug: input.slug,
    name: segment.exercise.name,
    alsoCalled: segment.exercise.alsoCalled,
    audience: sheet.audience,
    equipment: segment.equipment,
    position: segment.position,
    ...(segment.mirrored === true && { mirrored: true }),
    dose: prescription && { text: writeDose(prescription), spoken: speakDose(prescription), prescription },
    cautions: cautionsOf(input, ['must', 'should']),
    takeCare: cautionsOf(input, ['info']),
    movement: [...wordsOf(segment, 'setup'), ...wordsOf(segment, 'execution')],
    easier: [...wordsOf(segment, 'easier'), ...refWords(sheet, segment.easier)],
    harder: [...wordsOf(segment, 'harder'), ...refWords(sheet, segment.harder)],
    notice: NOTICE,
    from: {
      title: sheet.title,
      segmentId: segment.id,
      recordingSha256: input.recordingSha256,
      spans: clip.spans,
    },
    clip: {
      file: files.clip,
      sha256: input.clipSha256,
      durationMs: clip.durationMs,
      frames: clip.frames,
      poster: files.poster,
    },
    captions: files.captions,
    chapters: files.chapters,
    description: files.description,
  }
}

/** One row a hazard; the instructor's own words where there are some, else the rule's wording. */
function cautionsOf({ report, segment, sheet }: LessonInput, levels: readonly string[]): LessonCaution[] {
  return report.cautions
    .filter((row) => row.segmentId === segment.id && levels.includes(row.level) && row.state !== 'missing')
    .map((row) => {
      const own = [...segment.cautions, ...sheet.classCautions].find(
        (caution) => caution.hazard === row.hazard && caution.state !== 'declined',
      )
      return {
        hazard: row.hazard,
        text: own?.text ?? describeCaution(row.hazard),
        concerns: row.concerns,
        said: row.state === 'spoken' && row.inClip,
      }
    })
}

function wordsOf(segment: Segment, kind: CueKind): string[] {
  const shown = (cue: Cue) => cue.kind === kind && cue.state !== 'declined' && isKept(segment, cue.startMs)
  return segment.cues.filter(shown).map((cue) => cue.text)
}

function refWords(sheet: LogSheet, refs: readonly Ref[]): string[] {
  return refs.flatMap((ref) => {
    const named = sheet.segments.find((segment) => segment.id === ref.segmentId)?.exercise.name
    const words = ref.text ?? named
    return words === undefined ? [] : [words]
  })
}
