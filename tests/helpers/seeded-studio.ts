// Studios with a class in them that is ready to publish, without waiting for any job: the demo class drafted, or a small one.
import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { hashFile } from '../../core/media/engine/hash-file.ts'
import { attachTranscript } from '../../server/actions/attach-transcript.ts'
import { draftRecording } from '../../server/actions/draft-recording.ts'
import { importRecording } from '../../server/actions/import-recording.ts'
import type { Studio } from '../../server/studio.ts'
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Audience, Segment } from '../../shared/log-sheet.ts'
import { buildCue, buildSegment, buildSheet } from './build-sheet.ts'
import { projectRoot } from './source-files.ts'

export const DEMO_MS = 468_000
export const SMALL_MS = 24_000
const sample = (name: string): string => path.join(projectRoot, 'media-samples', name)

export interface SeededClass {
  recordingId: string
  sheetId: string
  segments: readonly Segment[]
}

/** @param audience null = nobody said for whom the class is */
export async function seedDemoClass(
  studio: Studio,
  audience: Audience[] | null = ['older-adults'],
): Promise<SeededClass> {
  const { store, actor } = studio
  const film = sample('steady-and-strong.mp4')
  const { recording, media } = await importRecording(studio, { path: film, title: 'Steady and strong', mode: 'copy' })
  await store.media.change(media.id, { sha256: await hashFile(film), durationMs: DEMO_MS }, actor)
  await store.recordings.change(
    recording.id,
    null,
    { audience, music: 'none', people: [], state: 'ready', durationMs: DEMO_MS },
    actor,
  )
  const text = await readFile(sample('steady-and-strong.vtt'), 'utf8')
  const { transcript, job } = await attachTranscript(studio, { recordingId: recording.id, text, origin: 'file' })
  await draftRecording(studio, { recordingId: recording.id, transcriptVersion: transcript.version, opId: 'seed' })
  // what the jobs would do is done, or is not needed here
  await store.jobs.cancel(job.id, actor)
  for (const waiting of await store.jobs.list({ states: ['queued'] })) await store.jobs.cancel(waiting.id, actor)
  const stored = await store.sheets.readOf(recording.id)
  if (!stored) throw new Error('nothing was drafted')
  return { recordingId: recording.id, sheetId: stored.id, segments: stored.sheet.segments }
}

/** Exercises of the small class; the last has no dose, so a stop stands. */
export const SMALL_EXERCISES = [
  'Arm circles',
  'Shoulder rolls',
  'Neck turns',
  'Wrist circles',
  'Ankle circles',
] as const

/** A class of 24 seconds that is quick to cut, marked by hand: each exercise in turn, a second between two. */
export async function seedSmallClass(
  studio: Studio,
  {
    title = 'Small class',
    audience = ['general'],
    exercises = SMALL_EXERCISES,
  }: { title?: string; audience?: Audience[] | null; exercises?: readonly string[] } = {},
): Promise<SeededClass> {
  const { store, actor } = studio
  const film = sample('small-class.mp4')
  const { recording, media } = await importRecording(studio, { path: film, title, mode: 'copy' })
  const recordingId = recording.id
  const sha256 = await hashFile(film)
  await store.media.change(media.id, { sha256, durationMs: SMALL_MS }, actor)
  const said = { audience, music: 'none' as const, people: [], state: 'ready' as const, durationMs: SMALL_MS }
  await store.recordings.change(recordingId, null, said, actor)
  const stepS = Math.floor((SMALL_MS / 1000 - 1) / exercises.length)
  const startS = (index: number): number => index * stepS + 1
  const lines = exercises.map((name, index) => `[0:${String(startS(index)).padStart(2, '0')}] ${name}, slowly.`)
  const words = { origin: 'pasted' as const, form: 'stamped-text', language: 'en', fileName: null }
  await store.transcripts.add(recordingId, { ...words, text: lines.join('\n') }, actor)
  const segments = exercises.map((name, index) =>
    buildSegment(`small-${index}`, startS(index), startS(index) + Math.max(1, stepS - 1), {
      exercise: { name },
      prescription: index === exercises.length - 1 ? null : buildPrescription({ reps: { min: 8, max: 8 } }),
      cues: [buildCue(`cue-${index}`, startS(index), { kind: 'setup', text: 'Sit tall.' })],
    }),
  )
  const head = { title, durationMs: SMALL_MS, audience: audience ?? [], music: 'none', people: [] }
  const sheet = buildSheet({ ...head, source: { sha256, durationMs: SMALL_MS }, segments })
  const { id } = await store.sheets.add({ recordingId, sheet, actor })
  for (const waiting of await store.jobs.list({ states: ['queued'] })) await store.jobs.cancel(waiting.id, actor)
  return { recordingId, sheetId: id, segments }
}
