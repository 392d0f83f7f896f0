/** Gathers what the page of a class shows beside its log sheet: the film and what is said in it. */
import { buildCaptions } from '../../core/captions/build-captions.ts'
import { writeVtt } from '../../core/captions/write-vtt.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import type { Transcript } from '../../shared/transcript.ts'
import type { Recording } from '../store/keep-recordings.ts'
import type { Studio } from '../studio.ts'
import { findClassFileOrNull } from './find-class-file.ts'

export interface ShownClass {
  recording: Recording
  film: {
    mediaId: string
    /** null = a browser shows the file itself; else whether what it shows instead is begun. */
    preview: 'none' | 'growing' | 'whole' | null
    /** Length of one frame in ms, as a fraction. */
    frameMs: number
    /** Where someone speaks is known. */
    hasSpeech: boolean
    /** Its wave is here, or grows. */
    hasWave: boolean
  } | null
  /** null = without a transcript, or with a class plan only. */
  transcript: Transcript | null
  transcriptVersion: number
  /** The transcript was typed here, and can be typed on. */
  isTyped: boolean
}

/** Common practice where the rate is not known yet. */
const USUAL_FRAMES = 30

type Needs = Pick<Studio, 'store' | 'storage' | 'actor'>

/** @throws AppError row-missing, not-allowed */
export async function showClass(studio: Needs, recordingId: string): Promise<ShownClass> {
  const shown = await showFilm(studio, recordingId)
  return { ...shown, ...(await readTranscript(studio, recordingId, shown.recording.durationMs)) }
}

/** Without what is said. @throws AppError row-missing, not-allowed */
export async function showFilm(studio: Needs, recordingId: string): Promise<Pick<ShownClass, 'recording' | 'film'>> {
  mustBeAllowed(studio.actor, 'studio.read', { type: 'recording', id: recordingId })
  const recording = await studio.store.recordings.read(recordingId)
  const file = await findClassFileOrNull(studio, recordingId)
  const facts = file?.facts ?? null
  const rate = facts?.picture.rate ?? USUAL_FRAMES
  return {
    recording,
    film: file && {
      mediaId: file.media.id,
      preview: (facts?.needsPreview ?? null) === null ? null : (facts?.preview ?? 'none'),
      frameMs: 1000 / (rate > 0 ? rate : USUAL_FRAMES),
      hasSpeech: (facts?.wave ?? null) !== null,
      hasWave: facts !== null && (facts.wave !== null || (facts.sound !== null && facts.thumbs === null)),
    },
  }
}

/** The captions of the whole class as WebVTT. @throws AppError row-missing, not-allowed */
export async function writeClassCaptions(studio: Needs, recordingId: string): Promise<string> {
  mustBeAllowed(studio.actor, 'studio.read', { type: 'recording', id: recordingId })
  const { durationMs } = await studio.store.recordings.read(recordingId)
  const { transcript } = await readTranscript(studio, recordingId, durationMs)
  if (!transcript) throw new AppError('row-missing', 'This class has no transcript with times yet.')
  return writeVtt(buildCaptions(transcript))
}

async function readTranscript(
  { store }: Pick<Studio, 'store'>,
  recordingId: string,
  durationMs: number | null,
): Promise<Pick<ShownClass, 'transcript' | 'transcriptVersion' | 'isTyped'>> {
  const stored = await store.transcripts.read(recordingId)
  if (!stored || stored.form === 'plan') return { transcript: null, transcriptVersion: 0, isTyped: false }
  const parsed = parseTranscript(stored.text, { durationMs })
  return {
    transcript: parsed.kind === 'timed' ? parsed : null,
    transcriptVersion: stored.version,
    isTyped: stored.origin === 'typed',
  }
}
