/** "Add a class": its film, and what is asked about it: who it is for, who is in the picture, the music, the words. */
import type { Audience, Music, PersonShown } from '../../shared/log-sheet.ts'
import { formatClock } from '../../shared/time.ts'
import { buildAnswers, choicesOf } from './class-answers.ts'
import type { Choice, ClassAnswers } from './class-answers.ts'
import { buildJobLine } from './job-words.ts'
import type { JobLine } from './job-words.ts'
import { buildLayout } from './layout.ts'
import type { Layout } from './layout.ts'
import { buildSoundPart } from './published-sound.ts'
import type { SoundPart } from './published-sound.ts'
import type { RecordingInput } from './shelf.ts'

export interface KindInput {
  id: string
  title: string
  audience: readonly Audience[]
  equipment: readonly string[]
  music: Music | null
  people: readonly PersonShown[] | null
}

export interface AddClassPage extends ClassAnswers {
  layout: Layout
  /** '' = a new class. */
  recordingId: string
  action: string
  heading: string
  title: string
  hasFilm: boolean
  /** Of the film, that are here. */
  parts: number
  hasFfmpeg: boolean
  /** The largest file, for people. */
  most: string
  /** The same in bytes. */
  mostBytes: number
  files: FileRow[]
  /** Said of several parts; '' = there is one. */
  joining: string
  /** null = nothing is marked yet. */
  sound: SoundPart | null
  length: string
  faults: string[]
  jobs: JobLine[]
  kinds: { value: string; label: string; chosen: boolean; answers: string }[]
  hasWords: boolean
  /** Who else reads the words, such as `reader.example`; '' = nobody. */
  secondReader: string
  /** True = its exercises are marked or proposed, so the class has its further pages. */
  hasSheet: boolean
  /** Speech can be turned into proposals. */
  canUseSpeech: boolean
}

interface FileRow {
  id: string
  name: string
  /** Of its role among several, such as "Part 2"; '' = the only one. */
  place: string
  size: string
  roles: Choice[]
  canGoUp: boolean
  canGoDown: boolean
}

const ROLE_WORDS = {
  part: 'The film, or a part of it',
  camera: 'A second camera',
  sound: 'Sound recorded apart',
  aside: 'Not used',
} as const satisfies Record<RecordingInput['files'][number]['role'], string>

export function buildAddClassPage(input: {
  entry: RecordingInput | null
  kinds: readonly KindInput[]
  maxBytes: number
  hasFfmpeg: boolean
  secondReader?: string
}): AddClassPage {
  const { entry, kinds, maxBytes, hasFfmpeg } = input
  const isNew = entry === null
  const title = isNew ? 'Add a class' : entry.title
  return {
    layout: buildLayout({
      title,
      kind: 'shelf',
      here: isNew ? 'add' : 'shelf',
      scripts: isNew ? ['upload', 'take-export'] : ['upload'],
      htmx: !isNew,
      sse: !isNew,
    }),
    recordingId: entry?.id ?? '',
    action: isNew ? '/recordings' : `/recordings/${entry.id}/words`,
    heading: title,
    title: entry?.title ?? '',
    hasFilm: entry?.hasFilm ?? false,
    parts: (entry?.files ?? []).filter(({ role }) => role === 'part').length,
    hasFfmpeg,
    most: formatBytes(maxBytes),
    mostBytes: maxBytes,
    files: buildFiles(entry?.files ?? []),
    joining: buildJoining(entry),
    sound: buildSoundPart(entry?.sound ?? null),
    length: entry?.durationMs == null ? '' : formatClock(entry.durationMs),
    faults: (entry?.failed ?? []).flatMap(({ error }) => (error ? [error.message, ...error.details] : [])),
    jobs: (entry?.jobs ?? []).map(buildJobLine),
    kinds: kinds.map((kind) => ({
      value: kind.id,
      label: kind.title,
      chosen: kind.id === entry?.kindId,
      answers: JSON.stringify(answersOf(kind)),
    })),
    ...buildAnswers(entry ?? { audience: null, equipment: [], music: null, people: null }),
    hasWords: entry?.hasWords ?? false,
    secondReader: input.secondReader ?? '',
    hasSheet: entry !== null && entry.work !== null,
    canUseSpeech: entry !== null && entry.hasWave && !entry.hasWords && entry.work === null,
  }
}

function buildFiles(files: RecordingInput['files']): FileRow[] {
  return files.map((file, index) => {
    const { id, role, fileName, bytes } = file
    const alike = files.filter((other) => other.role === role)
    const place = alike.indexOf(file)
    return {
      id,
      name: fileName,
      place: role === 'part' && alike.length > 1 ? `Part ${place + 1}` : '',
      size: bytes === null ? '' : formatBytes(bytes),
      roles: choicesOf(ROLE_WORDS, role),
      canGoUp: role === 'part' && place > 0 && index > 0,
      canGoDown: role === 'part' && place < alike.length - 1,
    }
  })
}

/** Where the parts are on their way to one film. */
function buildJoining(entry: RecordingInput | null): string {
  const parts = (entry?.files ?? []).filter(({ role }) => role === 'part').length
  if (!entry || parts < 2) return ''
  if (entry.state === 'ready') return `${parts} parts are joined, in this order. The files stay as they came.`
  return `${parts} parts are joined to one film as soon as all are looked into. Put them in order.`
}

/** As the page's script fills them in. */
function answersOf({ audience, equipment, music, people }: KindInput) {
  const rows = buildAnswers({ audience, equipment, music, people }).people
  const named = rows.filter(({ name }) => name !== '')
  return {
    ...{ audience, equipment, music },
    shown: people === null ? null : people.length === 0 ? 'nobody' : 'others',
    people: named.map(({ name, scope, until, isUnder18 }, index) => ({
      ...{ name, scope, until, age: isUnder18 ? 'under-18' : 'adult' },
      consent: people?.[index]?.consent ?? 'unknown',
    })),
  }
}

/** Sizes as disks and phones tell them: in thousands. */
export function formatBytes(bytes: number): string {
  if (bytes < 1e6) return `${Math.max(1, Math.round(bytes / 1e3))} kB`
  if (bytes < 1e9) return `${Math.round(bytes / 1e6)} MB`
  return `${(bytes / 1e9).toFixed(bytes < 1e10 ? 1 : 0)} GB`
}
