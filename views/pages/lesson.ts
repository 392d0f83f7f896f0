/** One lesson for a member: what must be read before play, the film, and what helps afterwards. */
import type { Chapter } from '../../shared/chapters.ts'
import type { CheckReport } from '../../shared/check-report.ts'
import type { Lesson, LessonCaution } from '../../shared/lesson.ts'
import type { Audience, LogSheet } from '../../shared/log-sheet.ts'
import { formatClock } from '../../shared/time.ts'
import type { Ms, Stretch } from '../../shared/time.ts'
import { formatList, upperFirst } from './format.ts'
import { buildLayout } from './layout.ts'
import type { Layout } from './layout.ts'
import { AUDIENCE_NAMES, LEVEL_NAMES, nameOf, POSITION_NAMES } from './names.ts'
import { classRibbon } from './pictures/draw-class-ribbon.ts'
import { doseStrip } from './pictures/draw-dose-strip.ts'

export interface LessonInput {
  lesson: Lesson
  slug: string
  version: number
  recordingId: string
  otherNames: readonly string[]
  position: string | null
  level: string | null
  /** For whom it is offered. */
  audience: readonly Audience[]
  chapters: readonly Chapter[]
  loop: Stretch | null
  easier: readonly LessonLink[]
  harder: readonly LessonLink[]
  mustHazards: readonly string[]
  origin: { sheet: LogSheet; report: CheckReport; published: ReadonlySet<string> } | null
  /** true = the reader may open the class it comes from. */
  canOpenClass: boolean
}

/** An easier or harder exercise in words; slug = the lesson that teaches it. */
export interface LessonLink {
  text: string
  slug: string | null
}

export interface LessonPage {
  layout: Layout
  name: string
  /** '' = none. */
  alsoCalled: string
  madeFor: string
  facts: { label: string; value: string }[]
  strip: string
  doseWords: string
  cautions: CautionPart[]
  takeCare: CautionPart[]
  notice: string
  film: { clip: string; captions: string; chapters: string; poster: string; length: string; lengthMs: Ms }
  loop: { label: string; startMs: Ms; endMs: Ms }
  chapters: { title: string; clock: string; startMs: Ms; href: string }[]
  movement: string[]
  /** Whose left and right are meant; '' = nothing to say. */
  sides: string
  /** Where a repetition starts and where it ends. */
  pictures: { src: string; alt: string; label: string }[]
  easier: { text: string; href: string }[]
  harder: { text: string; href: string }[]
  from: { title: string; times: string; ribbon: string; href: string }
}

export interface CautionPart {
  text: string
  concerns: string
  /** true = it is said in the film too. */
  said: boolean
}

export function buildLessonPage(input: LessonInput): LessonPage {
  const { lesson, loop } = input
  const at = (file: string): string => `/lessons/${input.slug}/${file}?v=${String(input.version)}`
  const { durationMs } = lesson.clip
  return {
    layout: buildLayout({ title: lesson.name, kind: 'floor', here: 'library', scripts: ['lesson'] }),
    name: lesson.name,
    alsoCalled: otherNames(lesson.name, input.otherNames),
    madeFor: formatList(input.audience.map((one) => AUDIENCE_NAMES[one])),
    facts: factsOf(input),
    strip: doseStrip(lesson.dose?.prescription ?? null, { size: 'floor', words: '' }),
    doseWords: lesson.dose?.spoken ?? 'No dose is set.',
    cautions: [...lesson.cautions].sort(mustFirst(input.mustHazards)).map(cautionPart),
    takeCare: lesson.takeCare.map((one) => cautionPart({ ...one, concerns: upperFirst(one.concerns) })),
    notice: lesson.notice,
    film: {
      clip: at('clip.mp4'),
      captions: at('captions.en.vtt'),
      chapters: at('chapters.vtt'),
      poster: lesson.clip.poster === null ? '' : at('poster.jpg'),
      length: formatClock(durationMs),
      lengthMs: durationMs,
    },
    loop: loop
      ? { label: 'Repeat a few clean repetitions', ...loop }
      : { label: 'Play again and again', startMs: 0, endMs: durationMs },
    chapters: chaptersOf(input.chapters, at('clip.mp4')),
    movement: lesson.movement.map(sentence),
    sides: lesson.mirrored === true ? 'Taught as in a mirror: when left is said, it is your left.' : '',
    pictures: lesson.pictures
      ? [
          { src: at('start.jpg'), alt: `Where ${lesson.name} starts`, label: 'Start' },
          { src: at('end.jpg'), alt: `Where ${lesson.name} ends`, label: 'End' },
        ]
      : [],
    easier: otherThan(lesson.name, input.easier).map(linkOf),
    harder: otherThan(lesson.name, input.harder).map(linkOf),
    from: originOf(input),
  }
}

/** A list of one chapter tells nothing. Addresses carry a time as in W3C Media Fragments URI 1.0 (2012), section 4.2.1. */
function chaptersOf(chapters: readonly Chapter[], clip: string): LessonPage['chapters'] {
  if (chapters.length < 2) return []
  return chapters.map(({ title, startMs }) => ({
    title,
    startMs,
    clock: formatClock(startMs),
    href: `${clip}#t=${String(startMs / 1000)}`,
  }))
}

/** Names in other letters or plural are no other names. */
function otherNames(name: string, names: readonly string[]): string {
  const plain = (text: string): string =>
    text
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '')
      .replace(/s$/, '')
  const kept = names.filter((one, index) => {
    const first = names.findIndex((other) => plain(other) === plain(one))
    return plain(one) !== plain(name) && first === index
  })
  return formatList(kept.slice(0, 4))
}

function factsOf({ lesson, position, level }: LessonInput): LessonPage['facts'] {
  const kit = lesson.equipment.length === 0 ? 'None' : upperFirst(formatList(lesson.equipment))
  return [
    { label: 'Length', value: formatClock(lesson.clip.durationMs) },
    ...(position === null ? [] : [{ label: 'Position', value: upperFirst(nameOf(POSITION_NAMES, position)) }]),
    { label: 'Kit', value: kit },
    ...(level === null ? [] : [{ label: 'Level', value: upperFirst(nameOf(LEVEL_NAMES, level)) }]),
  ]
}

function mustFirst(must: readonly string[]): (a: LessonCaution, b: LessonCaution) => number {
  return (a, b) => Number(must.includes(b.hazard)) - Number(must.includes(a.hazard))
}

function cautionPart({ text, concerns, said }: LessonCaution): CautionPart {
  return { text: sentence(text), concerns, said }
}

/** A lesson is not its own harder one: a seated curl and the standing one may both be called a curl. */
function otherThan(name: string, links: readonly LessonLink[]): LessonLink[] {
  return links.filter(({ text }) => text.trim().toLowerCase() !== name.trim().toLowerCase())
}

function linkOf({ text, slug }: LessonLink): { text: string; href: string } {
  return { text: upperFirst(text), href: slug === null ? '' : `/lessons/${slug}` }
}

/** A word that only joins to what was said before, as in "Then reach back". */
const JOINS = /^(and then|then|and),? (?=\p{L})/iu

/** Spoken words as they came, with a capital and a stop. */
function sentence(text: string): string {
  const trimmed = upperFirst(text.trim().replace(JOINS, ''))
  return /[.!?…]$/.test(trimmed) || trimmed === '' ? trimmed : `${trimmed.replace(/[,;:]$/, '')}.`
}

function originOf({ lesson, origin, recordingId, canOpenClass }: LessonInput): LessonPage['from'] {
  const { title, segmentId, spans } = lesson.from
  const times = spans.map(({ startMs, endMs }) => `${formatClock(startMs)} to ${formatClock(endMs)}`)
  const options = { size: 'row', here: segmentId, words: '' } as const
  const startSeconds = (spans[0]?.startMs ?? 0) / 1000
  return {
    title: title === '' ? 'a class' : title,
    times: formatList(times),
    ribbon: origin ? classRibbon(origin.sheet, origin.report, { ...options, published: origin.published }) : '',
    href: canOpenClass ? `/recordings/${encodeURIComponent(recordingId)}#t=${String(startSeconds)}` : '',
  }
}
