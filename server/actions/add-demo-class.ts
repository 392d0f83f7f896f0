/** Puts the demo class into the studio as a person would: film, words, draft, and lessons of what has no stop. */
import { constants } from 'node:fs'
import { cp } from 'node:fs/promises'
import path from 'node:path'
import { z } from 'zod'
import { mustBeAllowed } from '../../shared/actors.ts'
import type { Audience } from '../../shared/log-sheet.ts'
import type { Ms } from '../../shared/time.ts'
import { cutFolder } from '../storage/media-keys.ts'
import type { Studio } from '../studio.ts'
import { attachTranscript } from './attach-transcript.ts'
import { draftRecording } from './draft-recording.ts'
import type { OnProgress } from './progress.ts'
import { publishLessons } from './publish-lessons.ts'
import { takeMedia } from './take-media.ts'

export interface DemoClass {
  filmPath: string
  /** Of the film, in hex. */
  sha256: string
  durationMs: Ms
  title: string
  audience: Audience[]
  /** Its transcript. */
  text: string
  /** A folder with clips that were cut of it already; they are not cut again. */
  cutDir: string
}

/** Kept in the store: which recording is the demo class, and whether all of it is there. */
const Kept = z.object({ recordingId: z.string(), isWhole: z.boolean() })
const NAME = 'demo-class'

/**
 * Goes on where a killed run ended. What is whole is left alone, with all that a person has changed in it since; a class
 * that was taken from the shelf comes anew.
 * @returns its recording's id. @throws AppError as taking in, drafting and publishing do
 */
export async function addDemoClass(
  studio: Studio,
  demo: DemoClass,
  told: { signal?: AbortSignal; onProgress?: OnProgress } = {},
): Promise<string> {
  const { store, actor } = studio
  const kept = (await readKept(studio)) ?? (await begin(studio, demo))
  const { recordingId } = kept
  if (kept.isWhole) return recordingId
  const file = { recordingId, role: 'part', fileName: path.basename(demo.filmPath), fileId: 'demo-film' } as const
  const media = await takeMedia(studio, file, { path: demo.filmPath, mode: 'copy' })
  const { sha256, durationMs } = demo
  await store.media.change(media.id, { sha256, durationMs }, actor)
  await store.recordings.change(recordingId, null, { state: 'ready', durationMs }, actor)
  const { transcript, job } = await attachTranscript(studio, { recordingId, text: demo.text, origin: 'file' })
  // the job that was queued does the same under the same name, and so finds it done
  await draftRecording(studio, { recordingId, transcriptVersion: transcript.version, opId: `draft-${job.id}` })
  await lendClips(studio, recordingId, demo.cutDir)
  await publishLessons(studio, { recordingId }, told)
  await store.settings.write(NAME, { recordingId, isWhole: true }, actor)
  return recordingId
}

async function readKept({ store }: Studio): Promise<z.infer<typeof Kept> | null> {
  const kept = await store.settings.read(NAME, Kept)
  if (!kept) return null
  const { state } = await store.recordings.read(kept.recordingId)
  return state === 'removed' ? null : kept
}

async function begin({ store, actor }: Studio, { title, audience }: DemoClass): Promise<z.infer<typeof Kept>> {
  mustBeAllowed(actor, 'recording.add', { type: 'recording', id: 'new' })
  return store.transaction(async ({ recordings, settings }) => {
    const { id } = await recordings.add({ title, audience, music: 'none', people: [] }, actor)
    const kept = { recordingId: id, isWhole: false }
    await settings.write(NAME, kept, actor)
    return kept
  })
}

/** Clips and the loudness measured for them; each is checked before it is used. */
async function lendClips({ storage }: Studio, recordingId: string, cutDir: string): Promise<void> {
  for (const name of ['clips', '.work']) {
    const to = path.join(storage.path(cutFolder(recordingId)), name)
    await cp(path.join(cutDir, name), to, { recursive: true, mode: constants.COPYFILE_FICLONE })
  }
}
