/** Builds the chapters of a class from its log sheet, and of a lesson from the cues its clip keeps. */
import type { Chapter } from '../../shared/chapters.ts'
import type { Cue, LogSheet, Segment } from '../../shared/log-sheet.ts'
import type { Ms, Stretch } from '../../shared/time.ts'
import { CHAPTER_TITLES } from './chapter-titles.ts'
import { nameLessonChapters } from './name-lesson-chapters.ts'

/**
 * Sections with the exercises inside them; exercises that lie in no section stand alone. Sorted by start, outer before
 * inner, disjoint or nested only. An exercise returned to is "… (again)", and what would bear the name of
 * another is numbered. Declined and left-out segments are skipped.
 */
export function buildClassChapters(sheet: LogSheet): Chapter[] {
  const exercises = makeDisjoint(sheet.segments.flatMap(exerciseStretches))
  const sections = fitSections(sheet.sections, exercises)
  const isInside = (inner: Stretch) =>
    sections.some((section) => section.startMs <= inner.startMs && inner.endMs <= section.endMs)
  const chapters: Chapter[] = [
    ...sections.map((section): Chapter => ({ ...section, level: 1 })),
    ...exercises.map((exercise): Chapter => ({ ...exercise, level: isInside(exercise) ? 2 : 1 })),
  ]
  chapters.sort((a, b) => a.startMs - b.startMs || b.endMs - a.endMs || a.level - b.level)
  return [...numberTitles(chapters)]
}

/** Two of a level never bear one name: "Plank", "Plank (2)"; "Plank (again)", "Plank (again 2)". Names that people gave stay. */
function* numberTitles(chapters: readonly Chapter[]): Generator<Chapter> {
  const given = new Set(chapters.map(({ level, title }) => `${level} ${title}`))
  const told = new Set<string>()
  for (const chapter of chapters) {
    const { level } = chapter
    let { title } = chapter
    for (
      let number = 2;
      told.has(`${level} ${title}`) || (title !== chapter.title && given.has(`${level} ${title}`));
    ) {
      title = numbered(chapter.title, number)
      number += 1
    }
    told.add(`${level} ${title}`)
    yield { ...chapter, title }
  }
}

function numbered(title: string, number: number): string {
  const isOurs = [CHAPTER_TITLES.again, CHAPTER_TITLES.before].some((words) => title.endsWith(words))
  return isOurs ? `${title.slice(0, -1)} ${number})` : `${title} (${number})`
}

interface Titled extends Stretch {
  title: string
}

/** One stretch a span, in order of time; touching ones joined. Those after the main teaching are returns, those before it a look ahead. */
function exerciseStretches(segment: Segment): Titled[] {
  if (segment.state === 'declined' || segment.use === 'leave-out') return []
  const main = segment.spans[0]
  const sorted = segment.spans.filter((span) => span.endMs > span.startMs).sort((a, b) => a.startMs - b.startMs)
  const stretches: Titled[] = []
  for (const { startMs, endMs } of sorted) {
    const last = stretches.at(-1)
    const title = segment.exercise.name + placeWords(startMs - (main?.startMs ?? startMs))
    if (!last || startMs > last.endMs) {
      stretches.push({ startMs, endMs, title })
      continue
    }
    last.endMs = Math.max(last.endMs, endMs)
    // the main teaching names what it touches
    if (startMs === main?.startMs) last.title = title
  }
  return stretches
}

/** @param ms after the main teaching; negative = before it */
function placeWords(ms: number): string {
  if (ms === 0) return ''
  return ms > 0 ? CHAPTER_TITLES.again : CHAPTER_TITLES.before
}

/** Where two overlap, the earlier ends when the later starts; of two that start together the shorter goes first. */
function makeDisjoint(stretches: readonly Titled[]): Titled[] {
  const byStart = (a: Titled, b: Titled) => a.startMs - b.startMs || a.endMs - b.endMs
  const waiting = stretches.filter((stretch) => stretch.endMs > stretch.startMs).sort(byStart)
  const result: Titled[] = []
  for (let first = waiting.shift(); first; first = waiting.shift()) {
    const together = waiting.filter((stretch) => stretch.startMs === first?.startMs)
    waiting.splice(0, together.length)
    for (const { title, endMs } of together) {
      if (endMs > first.endMs) waiting.push({ title, startMs: first.endMs, endMs })
    }
    waiting.sort(byStart)
    result.push({ ...first, endMs: Math.min(first.endMs, waiting[0]?.startMs ?? Infinity) })
  }
  return result
}

/** Sections apart from each other, their edges moved out of the exercises they would cut, to the nearer side. */
function fitSections(sections: LogSheet['sections'], exercises: readonly Stretch[]): Titled[] {
  const moveOut = (ms: Ms): Ms => {
    const cut = exercises.find((exercise) => exercise.startMs < ms && ms < exercise.endMs)
    if (!cut) return ms
    return ms - cut.startMs < cut.endMs - ms ? cut.startMs : cut.endMs
  }
  const titled = sections.map(({ title, startMs, endMs }) => ({ title, startMs, endMs }))
  return makeDisjoint(titled.filter((section) => section.endMs > section.startMs))
    .map(({ title, startMs, endMs }) => ({ title, startMs: moveOut(startMs), endMs: moveOut(endMs) }))
    .filter((section) => section.endMs > section.startMs)
}

/** No lesson chapter is shorter than this, and no clip has more chapters than this. */
const SHORTEST_CHAPTER_MS = 2000
const MOST_CHAPTERS = 12

/**
 * What the clip shows when, told from the kinds of its cues; no two chapters bear one name. Times from the clip's start; the first chapter starts at 0,
 * each ends where the next starts, the last with the clip. A stretch from a later part of the class starts a chapter.
 * @param ranges what the clip keeps of the recording, in the order of the clip.
 */
export function buildLessonChapters(segment: Pick<Segment, 'cues' | 'spans'>, ranges: readonly Stretch[]): Chapter[] {
  const lengthMs = ranges.reduce((sum, range) => sum + range.endMs - range.startMs, 0)
  if (lengthMs <= 0) return []
  const marks = [...joinMarks(segment, ranges), ...cueMarks(segment, ranges)].sort((a, b) => a.startMs - b.startMs)
  const shortest = Math.max(SHORTEST_CHAPTER_MS, lengthMs / MOST_CHAPTERS)
  const kept: Mark[] = []
  for (const mark of marks) {
    const last = kept.at(-1)
    const tooClose = last !== undefined && mark.startMs - last.startMs < shortest
    if (lengthMs - mark.startMs < shortest && kept.length > 0) continue
    if (!last) kept.push({ ...mark, startMs: 0 })
    else if (mark.isJoin && tooClose) kept.splice(-1, 1, last.startMs === 0 ? last : mark)
    else if (mark.isJoin || (!tooClose && mark.title !== last.title)) kept.push(mark)
  }
  if (kept.length === 0) kept.push({ startMs: 0, title: CHAPTER_TITLES.whole, isJoin: false, cue: null })
  return nameLessonChapters(kept).map((title, index) => ({
    startMs: kept[index]?.startMs ?? 0,
    endMs: kept[index + 1]?.startMs ?? lengthMs,
    title,
    level: 1,
  }))
}

interface Mark {
  /** On the clip's clock. */
  startMs: Ms
  title: string
  isJoin: boolean
  /** What is said there; null at a join and in a clip without cues. */
  cue: Cue | null
}

function cueMarks({ cues }: Pick<Segment, 'cues'>, ranges: readonly Stretch[]): Mark[] {
  return cues.flatMap((cue: Cue) => {
    const startMs = cue.state === 'declined' ? null : toClip(cue.startMs, ranges)
    return startMs === null ? [] : [{ startMs, title: CHAPTER_TITLES.kinds[cue.kind], isJoin: false, cue }]
  })
}

/** Where a range of another span follows. A join made by a cut-out inside one span is none. */
function joinMarks({ spans }: Pick<Segment, 'spans'>, ranges: readonly Stretch[]): Mark[] {
  const spanAt = (ms: Ms) => spans.findIndex((span) => span.startMs <= ms && ms < span.endMs)
  let offset = 0
  return ranges.flatMap((range, index) => {
    const startMs = offset
    offset += range.endMs - range.startMs
    const before = ranges[index - 1]
    if (!before || spanAt(before.startMs) === spanAt(range.startMs)) return []
    return [{ startMs, title: CHAPTER_TITLES.laterPart, isJoin: true, cue: null }]
  })
}

/** The moment on the clip's clock, or null when the clip does not keep it. */
function toClip(ms: Ms, ranges: readonly Stretch[]): Ms | null {
  let offset = 0
  for (const range of ranges) {
    if (range.startMs <= ms && ms < range.endMs) return offset + ms - range.startMs
    offset += range.endMs - range.startMs
  }
  return null
}
