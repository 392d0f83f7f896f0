/**
 * Writes a lesson as JSON-LD for search engines: VideoObject with Clips, and an ExercisePlan.
 * Source: schema.org, VideoObject, Clip, ExercisePlan (pages read). Sets, sides, holds and tempo have no property there
 * and go into additionalVariable.
 */
import type { Chapter } from '../../shared/chapters.ts'
import type { Lesson } from '../../shared/lesson.ts'
import type { Prescription, Range } from '../../shared/log-sheet.ts'
import type { Ms } from '../../shared/time.ts'
import { flattenChapters } from './flatten-chapters.ts'

/** Addresses and the day a lesson is published under; they are known only where it is published. */
export interface PublishedAt {
  contentUrl: string
  thumbnailUrl?: string | null
  /** ISO 8601, such as 2026-05-14. */
  uploadDate?: string | null
}

/** JSON text that may stand inside a script element of a page. */
export function writeJsonLd(lesson: Lesson, chapters: readonly Chapter[], at: PublishedAt): string {
  return JSON.stringify(buildJsonLd(lesson, chapters, at), null, 2).replace(/</g, '\\u003c')
}

export function buildJsonLd(lesson: Lesson, chapters: readonly Chapter[], at: PublishedAt): Record<string, unknown> {
  return {
    '@context': 'https://schema.org',
    '@type': 'VideoObject',
    name: lesson.name,
    description: [lesson.dose?.text, ...lesson.cautions.map((caution) => caution.text), lesson.notice]
      .filter(Boolean)
      .join(' '),
    duration: isoDuration(lesson.clip.durationMs),
    contentUrl: at.contentUrl,
    ...(at.thumbnailUrl ? { thumbnailUrl: at.thumbnailUrl } : {}),
    ...(at.uploadDate ? { uploadDate: at.uploadDate } : {}),
    hasPart: flattenChapters(chapters, lesson.clip.durationMs).map(({ startMs, endMs, title }) => ({
      '@type': 'Clip',
      name: title,
      startOffset: startMs / 1000,
      endOffset: endMs / 1000,
    })),
    ...(lesson.dose ? { about: exercisePlan(lesson.name, lesson.dose.text, lesson.dose.prescription) } : {}),
  }
}

/** ISO 8601 duration, hours to seconds: 90 500 ms = PT1M30.5S. */
export function isoDuration(ms: Ms): string {
  const hours = Math.floor(ms / 3_600_000)
  const minutes = Math.floor(ms / 60_000) % 60
  const seconds = (ms % 60_000) / 1000
  const parts = [hours > 0 ? `${hours}H` : '', minutes > 0 ? `${minutes}M` : '', seconds > 0 ? `${seconds}S` : '']
  return `PT${parts.join('') || '0S'}`
}

function exercisePlan(name: string, text: string, dose: Prescription): Record<string, unknown> {
  const work = dose.workSeconds ?? dose.holdSeconds
  const repetitions = dose.reps === 'max' || dose.reps === null ? null : quantity(dose.reps)
  const rest = dose.restSeconds && rangeText(dose.restSeconds)
  return {
    '@type': 'ExercisePlan',
    name,
    exerciseType: name,
    ...(repetitions === null ? {} : { repetitions }),
    ...(work?.min && work.min === work.max ? { activityDuration: isoDuration(work.min * 1000) } : {}),
    ...(rest ? { restPeriods: `${rest} s` } : {}),
    ...(dose.effort === null ? {} : { intensity: dose.effort }),
    ...(dose.frequency === null ? {} : { activityFrequency: dose.frequency }),
    additionalVariable: text,
  }
}

function quantity(range: Range): number | Record<string, unknown> | null {
  if (range.min === null && range.max === null) return null
  if (range.min === range.max) return range.min
  return {
    '@type': 'QuantitativeValue',
    ...(range.min === null ? {} : { minValue: range.min }),
    ...(range.max === null ? {} : { maxValue: range.max }),
  }
}

function rangeText(range: Range): string | null {
  if (range.min === null || range.max === null) return String(range.min ?? range.max ?? '') || null
  return range.min === range.max ? String(range.min) : `${range.min}-${range.max}`
}
