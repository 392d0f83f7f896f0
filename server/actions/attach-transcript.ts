/** Attaches what was said, or a plan of the class, to a recording; a draft follows by itself. */
import { z } from 'zod'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import { TranscriptOrigin } from '../store/keep-transcripts.ts'
import type { StoredTranscript } from '../store/keep-transcripts.ts'
import type { Job } from '../store/read-job.ts'
import type { Studio } from '../studio.ts'
import { askJob } from './ask-job.ts'

const TranscriptInput = z.object({
  recordingId: z.string().min(1),
  /** WebVTT, SRT, lines with [m:ss], JSON with words, or a class plan; its form is told by its content. */
  text: z.string(),
  origin: TranscriptOrigin,
  fileName: z.string().max(255).nullable().default(null),
})

/**
 * The same text again changes nothing, and drafts nothing anew.
 * @throws AppError file-empty, file-too-big, file-not-text, transcript-*, store-text, row-missing, not-allowed
 */
export async function attachTranscript(
  { store, actor }: Pick<Studio, 'store' | 'actor'>,
  input: z.input<typeof TranscriptInput>,
): Promise<{ transcript: StoredTranscript; job: Job }> {
  const { recordingId, text, origin, fileName } = TranscriptInput.parse(input)
  mustBeAllowed(actor, 'transcript.add', { type: 'transcript', id: recordingId })
  const { durationMs } = await store.recordings.read(recordingId)
  const parsed = parseTranscript(text, { durationMs })
  const form = parsed.kind === 'plan' ? 'plan' : parsed.form
  const language = parsed.kind === 'plan' ? null : parsed.language
  return store.transaction(async (rooms) => {
    const transcript = await rooms.transcripts.add(recordingId, { origin, form, language, fileName, text }, actor)
    const asked = { recordingId, transcriptVersion: transcript.version }
    const job = await askJob(rooms, actor, 'draft', asked, `draft-${recordingId}-${transcript.version}`)
    return { transcript, job }
  })
}
