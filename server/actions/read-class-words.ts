/** The newest timed transcript of a recording; a class plan is none. */
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import type { Transcript } from '../../shared/transcript.ts'
import type { StoredTranscript } from '../store/keep-transcripts.ts'
import type { Rooms } from '../store/open-store.ts'

export interface ClassWords {
  stored: StoredTranscript
  transcript: Transcript
}

/** null = nothing was written down. @throws AppError transcript-* */
export async function readClassWords(
  { transcripts }: Pick<Rooms, 'transcripts'>,
  recordingId: string,
  durationMs: number,
): Promise<ClassWords | null> {
  const newest = (await transcripts.list(recordingId)).find(({ form }) => form !== 'plan')
  const stored = newest ? await transcripts.read(recordingId, newest.version) : null
  if (!stored) return null
  const transcript = parseTranscript(stored.text, { durationMs: durationMs || null })
  return transcript.kind === 'plan' ? null : { stored, transcript }
}
