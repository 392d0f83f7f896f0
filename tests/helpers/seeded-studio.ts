// A studio with the demo class in it, drafted and ready to publish, without waiting for any job.
import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { hashFile } from '../../core/media/engine/hash-file.ts'
import { attachTranscript } from '../../server/actions/attach-transcript.ts'
import { draftRecording } from '../../server/actions/draft-recording.ts'
import { importRecording } from '../../server/actions/import-recording.ts'
import type { Studio } from '../../server/studio.ts'
import type { Audience, Segment } from '../../shared/log-sheet.ts'
import { projectRoot } from './source-files.ts'

export const DEMO_MS = 468_000
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
