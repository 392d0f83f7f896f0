// The demo class in a studio, drafted and ready to be worked on; nothing is analysed, so that a test begins at once.
import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { ANALYSIS_VERSION } from '../../core/media/plan-analysis.ts'
import { attachTranscript } from '../../server/actions/attach-transcript.ts'
import { draftRecording } from '../../server/actions/draft-recording.ts'
import type { MediaFacts } from '../../server/actions/media-facts.ts'
import { fileKey, speechKey } from '../../server/storage/media-keys.ts'
import type { Studio } from '../../server/studio.ts'
import type { Stretch } from '../../shared/time.ts'
import { projectRoot } from './source-files.ts'

/** Length of the demo class, of `SAMPLES.json`. */
export const DEMO_MS = 468_000

/** What the analysis finds first; waves and small pictures are not made. */
const FACTS: MediaFacts = {
  version: ANALYSIS_VERSION,
  picture: { codec: 'h264', width: 1280, height: 720, rate: 25 },
  sound: { codec: 'aac', channels: 1, sampleRate: 48_000 },
  frames: 11_700,
  needsPreview: null,
  preview: 'none',
  wave: null,
  thumbs: null,
  loudness: null,
}

const sample = (name: string): string => path.join(projectRoot, 'media-samples', name)

interface Wanted {
  /** Text of a transcript or plan; null = nothing is said of the class. */
  words?: string | null
  hasFilm?: boolean
  /** Where someone speaks, as if the sound had been read. */
  islands?: readonly Stretch[]
}

/** @returns the id of the recording */
export async function addDemoClass(studio: Studio, { words, hasFilm = true, islands }: Wanted = {}): Promise<string> {
  const { store, storage, actor } = studio
  const fields = { title: 'Steady and strong', audience: ['older-adults' as const], durationMs: DEMO_MS }
  const { id } = await store.recordings.add(fields, actor)
  if (hasFilm) {
    const film = sample('steady-and-strong.mp4')
    const key = fileKey(id, 'film')
    const { bytes } = await storage.putFile(key, film, 'copy')
    const { id: mediaId } = await store.media.add(
      id,
      { role: 'part', fileName: 'steady-and-strong.mp4', bytes, storageKey: key },
      actor,
    )
    const sha256 = createHash('sha256')
      .update(await readFile(film))
      .digest('hex')
    const wave = islands ? { zooms: [100], islands: islands.length, pauses: 0 } : null
    await store.media.change(mediaId, { sha256, facts: { ...FACTS, wave } }, actor)
    if (islands) await storage.putBytes(speechKey(id, mediaId), JSON.stringify({ islands, pauses: [] }))
  }
  await store.recordings.change(id, null, { state: 'ready', durationMs: DEMO_MS }, actor)
  if (words === null) return id
  const text = words ?? (await readFile(sample('steady-and-strong.vtt'), 'utf8'))
  const { transcript } = await attachTranscript(studio, { recordingId: id, text, origin: 'file' })
  await draftRecording(studio, { recordingId: id, transcriptVersion: transcript.version, opId: 'draft-1' })
  return id
}
