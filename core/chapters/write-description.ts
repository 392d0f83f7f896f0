/** Writes the text that stands under a video: chapter times, the dose, the cautions, and what this is not. */
import type { Chapter } from '../../shared/chapters.ts'
import type { Lesson, LessonCaution } from '../../shared/lesson.ts'
import { NOTICE } from '../../shared/lesson.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import { formatClock } from '../../shared/time.ts'
import { flattenChapters } from './flatten-chapters.ts'
import { chapterTitle } from './write-chapters-vtt.ts'

/** Plain text for a whole class: title, chapter times from 0:00, the notice. */
export function writeClassDescription(
  sheet: Pick<LogSheet, 'title' | 'classCautions' | 'durationMs'>,
  chapters: readonly Chapter[],
): string {
  const cautions = sheet.classCautions.filter((caution) => caution.state !== 'declined').map((caution) => caution.text)
  return joinBlocks([
    [oneLine(sheet.title)],
    listOf('Take care', cautions),
    chapterTimes(chapters, sheet.durationMs),
    [NOTICE],
  ])
}

/** Plain text for one lesson: name, dose, kit, cautions, easier and harder, chapter times from 0:00, the notice. */
export function writeLessonDescription(lesson: Lesson, chapters: readonly Chapter[]): string {
  const about = (caution: LessonCaution) =>
    caution.concerns === '' ? caution.text : `${caution.text} (${caution.concerns})`
  return joinBlocks([
    [oneLine(lesson.name)],
    [lesson.dose ? `Dose: ${oneLine(lesson.dose.text)}` : ''],
    [lesson.equipment.length > 0 ? `You need: ${lesson.equipment.map(oneLine).join(', ')}` : ''],
    listOf(
      'Take care',
      lesson.cautions.map((caution) => caution.text),
    ),
    listOf('Take care if this concerns you', lesson.takeCare.map(about)),
    listOf('Easier', lesson.easier),
    listOf('Harder', lesson.harder),
    chapterTimes(chapters, lesson.clip.durationMs),
    [oneLine(lesson.notice)],
  ])
}

/** `0:00 Title`, one a line; the first at 0:00, which players need to make links of them (common practice, no source). */
function chapterTimes(chapters: readonly Chapter[], durationMs: number): string[] {
  const flat = flattenChapters(chapters, durationMs)
  return flat.map(({ startMs, title }) => `${formatClock(startMs)} ${chapterTitle(title)}`)
}

function listOf(heading: string, lines: readonly string[]): string[] {
  const unique = [...new Set(lines.map(oneLine))].filter((line) => line !== '')
  return unique.length === 0 ? [] : [`${heading}:`, ...unique.map((line) => `- ${line}`)]
}

function joinBlocks(blocks: readonly string[][]): string {
  const texts = blocks.map((lines) => lines.filter((line) => line !== '').join('\n')).filter((block) => block !== '')
  return `${texts.join('\n\n')}\n`
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim()
}
