/** Publish: what each exercise of a class becomes, what is held back and why, and the lessons made so far. */
import type { LogSheet, Prescription, Segment, Use } from '../../shared/log-sheet.ts'
import { formatClock } from '../../shared/time.ts'
import { formatCount, upperFirst } from './format.ts'
import { buildJobLine } from './job-words.ts'
import type { JobInput, JobLine } from './job-words.ts'
import { buildLayout } from './layout.ts'
import type { Layout } from './layout.ts'
import { doseStrip } from './pictures/draw-dose-strip.ts'

export type PlanState = 'held' | 'new' | 'changed' | 'same' | 'known' | 'withdrawn' | 'keep' | 'leave-out'

/** A lesson whose place could be taken. */
export interface PlaceInput {
  id: string
  slug: string
  name: string
}

export interface PlannedInput {
  segment: Segment
  /** The dose in words; '' = none. */
  doseWords: string
  /** What the clip keeps, in ms. */
  lengthMs: number
  state: PlanState
  reasons: readonly string[]
  /** The rule behind each reason. */
  rules: readonly string[]
  own: PlaceInput | null
  known: readonly PlaceInput[]
  near: readonly PlaceInput[]
  place: string
}

export interface LessonInput {
  slug: string
  name: string
  state: 'draft' | 'published' | 'withdrawn'
  currentVersion: number | null
  /** Whether the version shown has key pictures. */
  hasPictures: boolean
  versions: readonly { version: number; title: string; name: string; publishedUtc: number }[]
}

export interface PublishInput {
  recordingId: string
  title: string
  sheet: Pick<LogSheet, 'segments' | 'media' | 'publishedSound'>
  planned: readonly PlannedInput[]
  lessons: readonly LessonInput[]
  /** Publishing of this class, the newest first. */
  jobs: readonly JobInput[]
  /** What the newest one that is done made. */
  last: {
    lessons: readonly { name: string; slug: string; change: string }[]
    failed: readonly { name: string; message: string }[]
  } | null
}

export interface PublishPage {
  layout: Layout
  id: string
  title: string
  facts: { label: string; value: string }[]
  /** The words of the one primary action. */
  action: string
  actionHelp: string
  count: number
  /** Which sound they are published with; '' = the film's own, as usual. */
  sound: string
  jobs: JobLine[]
  faults: string[]
  /** '' = nothing was published yet. */
  last: string
  lastLessons: { name: string; href: string }[]
  groups: { id: string; title: string; help: string; rows: PublishRow[] }[]
  /** Made from this class, and showing something else now. */
  lessons: LessonRow[]
  /** Some of them are shown, and can be taken along as a zip. */
  canExport: boolean
  isEmpty: boolean
}

export interface PublishRow {
  id: string
  name: string
  href: string
  facts: string[]
  strip: string
  state: string
  /** Shape of the state's mark. */
  look: 'done' | 'half' | 'off' | 'open'
  note: string
  /** Why it is held back, each with where that is closed. */
  reasons: { text: string; href: string; label: string }[]
  places: Option[]
  uses: Option[]
  /** The words of the fold that holds the choices; '' = they are open to be seen. */
  fold: string
  /** '' = it has none; so with the next two. */
  lessonHref: string
  start: string
  end: string
  /** The lesson that shows this very exercise. */
  lesson: LessonRow | null
}

interface Option {
  value: string
  label: string
  chosen: boolean
}

export interface LessonRow {
  slug: string
  name: string
  href: string
  state: string
  look: 'done' | 'off'
  isShown: boolean
  versions: { version: number; from: string; when: string; isShown: boolean; button: string }[]
}

export function buildPublishPage(input: PublishInput): PublishPage {
  const { recordingId, title, planned, jobs, last } = input
  const active = jobs.filter(({ state }) => state === 'queued' || state === 'running')
  const [newest] = jobs
  const count = planned.filter(({ place }) => place !== 'skip').length
  const held = planned.filter(({ state }) => state === 'held').length
  const shown = input.lessons.filter(({ state }) => state === 'published').length
  return {
    layout: buildLayout({
      ...{ title: `Publish: ${title}`, kind: 'shelf', here: 'shelf', scripts: ['publish'], htmx: true, sse: true },
    }),
    id: recordingId,
    title,
    facts: [
      { label: 'Ready', value: String(count) },
      { label: 'Held back', value: String(held) },
      { label: 'In the library', value: String(shown) },
    ],
    action: actionWords(count),
    actionHelp:
      count === 0
        ? 'What is in the library can be replaced below.'
        : 'Each lesson is cut to the frame, with captions, chapters, dose and cautions.',
    count,
    sound: soundWords(input.sheet),
    jobs: active.map(buildJobLine),
    faults: [
      ...(newest?.state === 'failed' && newest.error ? [newest.error.message] : []),
      ...(active.length === 0 && last ? last.failed.map(({ name, message }) => `${name}: ${message}`) : []),
    ],
    last: last && active.length === 0 ? `Last time: ${formatCount(last.lessons.length, 'lesson')}` : '',
    lastLessons:
      active.length === 0 ? (last?.lessons ?? []).map(({ name, slug }) => ({ name, href: `/lessons/${slug}` })) : [],
    groups: GROUPS.flatMap(({ states, ...group }) => {
      const chosen = planned.filter(({ state }) => states.includes(state))
      const rows = chosen.map((one) => buildRow(recordingId, one, input.lessons))
      return rows.length === 0 ? [] : [{ ...group, title: `${group.title} (${rows.length})`, rows }]
    }),
    lessons: input.lessons.filter(({ slug }) => planned.every(({ own }) => own?.slug !== slug)).map(buildLesson),
    canExport: planned.some(({ own }) =>
      input.lessons.some(({ slug, state }) => slug === own?.slug && state === 'published'),
    ),
    isEmpty: planned.length === 0,
  }
}

function soundWords({ media, publishedSound }: PublishInput['sheet']): string {
  const { mediaId = null, track = null, gainDb = 0 } = publishedSound ?? {}
  const label = media.find(({ id }) => id === mediaId)?.label
  const sound =
    mediaId !== null ? (label ?? 'sound recorded apart') : track !== null ? `track ${track} of the film` : ''
  const gain = gainDb === 0 ? '' : `${Math.abs(gainDb)} dB ${gainDb > 0 ? 'louder' : 'softer'} than usual`
  return [sound === '' ? '' : `with the sound “${sound}”`, gain].filter(Boolean).join(', ')
}

/** The script of the page says the same when a choice is changed. */
export function actionWords(count: number): string {
  return count === 0 ? 'Nothing new to publish' : `Publish ${formatCount(count, 'lesson')}`
}

const GROUPS: readonly { id: string; title: string; help: string; states: readonly PlanState[] }[] = [
  { id: 'ready', title: 'Ready', help: 'Checked, without a stop.', states: ['new', 'changed'] },
  {
    ...{ id: 'held', title: 'Held back', states: ['held'] },
    help: 'A lesson without a dose, or one that lacks a caution, could hurt someone.',
  },
  {
    ...{ id: 'there', title: 'Already in the library', states: ['same', 'known', 'withdrawn'] },
    help: 'They stay as they are unless you choose otherwise.',
  },
  { id: 'others', title: 'No lessons', help: 'They can become lessons at any time.', states: ['keep', 'leave-out'] },
]

const STATES = {
  held: ['Held back', 'off'],
  new: ['New', 'open'],
  changed: ['Changed since it was published', 'half'],
  same: ['Published as it is', 'done'],
  known: ['Already in the library', 'half'],
  withdrawn: ['Withdrawn', 'off'],
  keep: ['Kept for search', 'off'],
  'leave-out': ['Left out', 'off'],
} as const satisfies Record<PlanState, readonly [string, PublishRow['look']]>

function buildRow(recordingId: string, planned: PlannedInput, lessons: readonly LessonInput[]): PublishRow {
  const { segment, state, lengthMs, doseWords, own } = planned
  const lesson = lessons.find(({ slug }) => slug === own?.slug)
  const isShown = lesson?.state === 'published'
  const picture = (file: string): string =>
    own && isShown && lesson.hasPictures ? `/lessons/${own.slug}/${file}?v=${String(lesson.currentVersion ?? 1)}` : ''
  const [words, look] = STATES[state]
  const startMs = segment.spans[0]?.startMs
  const at = startMs === undefined ? '' : `#t=${String(startMs / 1000)}`
  return {
    id: segment.id,
    name: upperFirst(segment.exercise.name),
    href: `/recordings/${encodeURIComponent(recordingId)}${at}`,
    facts: [...(lengthMs > 0 ? [formatClock(lengthMs)] : []), ...(doseWords === '' ? [] : [doseWords])],
    strip: stripOf(segment.prescription),
    state: words,
    look,
    note: noteOf(planned, isShown),
    reasons: planned.reasons.map((reason, index) => ({
      text: withoutName(reason, segment.exercise.name),
      ...closedAt(recordingId, planned.rules[index] ?? '', at),
    })),
    places: state === 'held' || state === 'keep' || state === 'leave-out' ? [] : placesOf(planned),
    uses: USES.map(([value, label]) => ({ value, label, chosen: value === segment.use })),
    fold: FOLDS[state],
    lessonHref: own && isShown ? `/lessons/${own.slug}` : '',
    start: picture('start.jpg'),
    end: picture('end.jpg'),
    lesson: lesson ? buildLesson(lesson) : null,
  }
}

/** Where a person closes what a rule found: captions come from the words of the class, the rest is on the checks page. */
function closedAt(recordingId: string, rule: string, at: string): { href: string; label: string } {
  const id = encodeURIComponent(recordingId)
  if (rule.startsWith('captions-')) return { href: `/add/${id}#words`, label: 'Give its captions' }
  if (rule === 'no-place') return { href: `/recordings/${id}${at}`, label: 'Place it' }
  return { href: `/recordings/${id}/checks`, label: 'Put it right' }
}

/** What asks for a decision is open; the rest is out of the way. */
const FOLDS = {
  ...{ new: '', changed: '', known: '', held: 'Make no lesson of it' },
  ...{ same: 'Replace, withdraw, older versions', withdrawn: 'Bring back, older versions' },
  ...{ keep: 'Change what it is for', 'leave-out': 'Change what it is for' },
} as const satisfies Record<PlanState, string>

const USES: readonly (readonly [Use, string])[] = [
  ['lesson', 'A lesson'],
  ['keep', 'Kept for search'],
  ['leave-out', 'Left out'],
]

function stripOf(dose: Prescription | null): string {
  return dose === null ? '' : doseStrip(dose, { size: 'card', words: '' })
}

function noteOf({ state, own, known }: PlannedInput, isShown: boolean): string {
  if (state === 'held' && isShown) return `An older version is still shown at /lessons/${own?.slug ?? ''}.`
  if (state === 'known') return `The library has “${known[0]?.name ?? ''}”, at /lessons/${known[0]?.slug ?? ''}.`
  if (state === 'changed') return `Its address stays: /lessons/${own?.slug ?? ''}.`
  return ''
}

function placesOf({ state, own, known, near, place }: PlannedInput): Option[] {
  const others = [...known, ...near.filter(({ id }) => known.every((one) => one.id !== id))]
  const ownWords = !own
    ? 'A lesson of its own'
    : state === 'withdrawn'
      ? `Show it again at /lessons/${own.slug}`
      : `The next version of /lessons/${own.slug}`
  return [
    { value: 'own', label: ownWords, chosen: place === 'own' },
    ...others.map(({ id, name, slug }) => ({
      ...{ value: id, label: `In place of “${name}” at /lessons/${slug}`, chosen: place === id },
    })),
    { value: 'skip', label: own && state !== 'withdrawn' ? 'Leave it as it is' : 'Not now', chosen: place === 'skip' },
  ]
}

/** The reason under the exercise's name need not repeat it. */
function withoutName(reason: string, name: string): string {
  return upperFirst(reason.startsWith(`${name}: `) ? reason.slice(name.length + 2) : reason)
}

function buildLesson({ slug, name, state, currentVersion, versions }: LessonInput): LessonRow {
  const isShown = state === 'published'
  return {
    slug,
    name: upperFirst(name),
    href: `/lessons/${slug}`,
    state: isShown ? `Version ${String(currentVersion ?? 1)} is shown` : 'Withdrawn: members read that it is gone',
    look: isShown ? 'done' : 'off',
    isShown,
    versions: versions.map(({ version, title, name: named, publishedUtc }) => {
      const isCurrent = version === currentVersion
      return {
        version,
        from: `${upperFirst(named)}, from ${title}`,
        when: new Date(publishedUtc).toISOString().slice(0, 16).replace('T', ' '),
        isShown: isShown && isCurrent,
        button: isShown && isCurrent ? '' : isCurrent ? 'Bring back' : 'Show this one',
      }
    }),
  }
}
