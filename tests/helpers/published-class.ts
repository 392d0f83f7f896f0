// A studio with a published class of invented lessons, for the members' pages. Nothing is cut: files are stand-ins.
import { mkdir, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { speakDose } from '../../core/dose/speak-dose.ts'
import { writeDose } from '../../core/dose/write-dose.ts'
import { LESSON_FILE_NAMES, lessonFileKey } from '../../core/library/name-lesson-files.ts'
import { LOCAL_OWNER } from '../../shared/actors.ts'
import { NOTICE, Lesson } from '../../shared/lesson.ts'
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription } from '../../shared/log-sheet.ts'
import type { Studio } from '../../server/studio.ts'
import { buildCaution, buildCue, buildSegment, buildSheet } from './build-sheet.ts'

const just = (value: number) => ({ min: value, max: value })

export interface InventedLesson {
  name: string
  startS: number
  endS: number
  dose: Partial<Prescription>
  equipment?: string[]
  position?: string
  fields?: Partial<Lesson>
}

/** Each with another shape of dose. */
export const INVENTED: readonly InventedLesson[] = [
  {
    name: 'Chair squats',
    startS: 30,
    endS: 95,
    dose: { sets: just(3), reps: { min: 10, max: 12 }, restSeconds: just(60), tempo: '3-1-1-0' },
    equipment: ['chair'],
    position: 'standing',
    fields: {
      alsoCalled: ['Sit to stand'],
      cautions: [
        { hazard: 'fall-risk', text: 'Keep one hand near the wall.', concerns: 'anyone unsteady', said: true },
        { hazard: 'knee-pain', text: 'go only as deep as your knees like', concerns: 'sore knees', said: false },
      ],
      takeCare: [{ hazard: 'k32', text: 'Stand within reach of a wall.', concerns: 'older adults', said: false }],
      movement: ['feet as wide as your hips', 'reach back for the chair, and stand up tall'],
      easier: ['use your hands on the seat'],
      harder: ['goblet squat'],
    },
  },
  {
    name: 'Wall push-ups',
    startS: 120,
    endS: 160,
    dose: { sets: just(2), reps: just(10) },
    equipment: ['wall'],
    position: 'standing',
    fields: { easier: [], harder: ['press-up'] },
  },
  {
    name: 'Goblet squat',
    startS: 180,
    endS: 250,
    dose: { sets: just(4), reps: just(8), restSeconds: just(90) },
    equipment: ['kettlebell'],
    position: 'standing',
  },
  {
    name: 'Side plank',
    startS: 270,
    endS: 300,
    dose: { sets: just(2), holdSeconds: just(30), perSide: true },
    position: 'side-lying',
  },
  { name: 'Box breathing', startS: 320, endS: 520, dose: { reps: just(5), repUnit: 'breath' }, position: 'seated' },
]

export interface PublishedClass {
  recordingId: string
  /** By name. */
  slugs: Record<string, string>
}

/** @param files by name in the address; what is not given is an empty file. */
export async function publishInvented(
  studio: Studio,
  {
    audience = ['general'],
    isAudienceSet = true,
    files = {},
  }: { audience?: Lesson['audience']; isAudienceSet?: boolean; files?: Partial<Record<string, Buffer>> } = {},
): Promise<PublishedClass> {
  const { store } = studio
  const recording = await store.recordings.add(
    { title: 'Tuesday strength', audience: isAudienceSet ? audience : null, state: 'ready', durationMs: 600_000 },
    LOCAL_OWNER,
  )
  const segments = INVENTED.map(({ name, startS, endS, dose, equipment = [] }, index) =>
    buildSegment(`seg-${index}`, startS, endS, {
      exercise: { name },
      equipment,
      prescription: buildPrescription(dose),
      loop: index === 0 ? { startMs: (startS + 20) * 1000, endMs: (startS + 30) * 1000 } : null,
      cues: [
        buildCue(`c${index}-1`, startS + 1, { kind: 'setup' }),
        buildCue(`c${index}-2`, startS + 15, { kind: 'execution' }),
      ],
      cautions: index === 0 ? [buildCaution('fall-risk')] : [],
    }),
  )
  const sections = [
    { title: 'Standing', startMs: 0, endMs: 260_000 },
    { title: 'On the floor', startMs: 260_000, endMs: 600_000 },
  ]
  const sheet = await store.sheets.add({
    recordingId: recording.id,
    sheet: buildSheet({ title: recording.title, segments, sections, audience }),
    actor: LOCAL_OWNER,
  })
  const slugs: Record<string, string> = {}
  for (const [index, one] of INVENTED.entries()) {
    const added = await store.lessons.add(one.name, LOCAL_OWNER)
    const lesson = inventLesson(one, index, audience)
    const version = {
      recordingId: recording.id,
      segmentId: `seg-${index}`,
      sheetVersion: sheet.version,
      clipSha256: 'a'.repeat(64),
      lesson,
    }
    const shown = await store.lessons.publish(added.id, version, LOCAL_OWNER)
    await writeFiles(studio.dataFolder, shown.id, files)
    slugs[one.name] = shown.slug
  }
  return { recordingId: recording.id, slugs }
}

async function writeFiles(dataFolder: string, id: string, files: Partial<Record<string, Buffer>>): Promise<void> {
  for (const name of LESSON_FILE_NAMES) {
    const file = path.join(dataFolder, 'media', lessonFileKey(id, 1, name))
    await mkdir(path.dirname(file), { recursive: true })
    await writeFile(file, files[name] ?? (name.endsWith('.vtt') ? 'WEBVTT\n' : ''))
  }
}

function inventLesson(one: InventedLesson, index: number, audience: Lesson['audience']): Lesson {
  const prescription = buildPrescription(one.dose)
  return Lesson.parse({
    format: 'repslate-lesson',
    version: 1,
    slug: 'set-by-the-store',
    name: one.name,
    alsoCalled: [],
    audience,
    equipment: one.equipment ?? [],
    position: one.position ?? null,
    dose: { text: writeDose(prescription), spoken: speakDose(prescription), prescription },
    cautions: [],
    takeCare: [],
    movement: [],
    easier: [],
    harder: [],
    notice: NOTICE,
    from: {
      title: 'Tuesday strength',
      segmentId: `seg-${index}`,
      recordingSha256: 'b'.repeat(64),
      spans: [{ startMs: one.startS * 1000, endMs: one.endS * 1000 }],
    },
    clip: {
      file: 'clip.mp4',
      sha256: 'a'.repeat(64),
      durationMs: (one.endS - one.startS) * 1000,
      frames: 1000,
      poster: 'poster.jpg',
    },
    captions: 'captions.en.vtt',
    chapters: 'chapters.vtt',
    description: 'description.txt',
    ...one.fields,
  })
}
