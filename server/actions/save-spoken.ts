/** Takes what a person typed while the class played, stretch by stretch, as the transcript of the class. */
import { z } from 'zod'
import { writeVtt } from '../../core/captions/write-vtt.ts'
import { Ms } from '../../shared/time.ts'
import type { Studio } from '../studio.ts'
import { attachTranscript } from './attach-transcript.ts'

export const SpokenLine = z
  .object({ startMs: Ms, endMs: Ms, text: z.string().trim().min(1).max(2000) })
  .refine(({ startMs, endMs }) => endMs > startMs, { error: 'A line ends after it starts.' })

const SpokenInput = z.object({
  recordingId: z.string().min(1),
  /** All that is typed so far; it takes the place of what was saved before. */
  lines: z.array(SpokenLine).min(1).max(20_000),
})

/** @throws AppError row-missing, not-allowed, transcript-* */
export async function saveSpoken(
  studio: Pick<Studio, 'store' | 'actor'>,
  input: z.input<typeof SpokenInput>,
): Promise<void> {
  const { recordingId, lines } = SpokenInput.parse(input)
  const text = writeVtt(lines.map(({ startMs, endMs, text: words }) => ({ startMs, endMs, lines: [words] })))
  await attachTranscript(studio, { recordingId, text, origin: 'typed' })
}
