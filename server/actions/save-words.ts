/** Saves all that a person says of a class on one page: its answers, a kind to keep them under, its transcript. */
import { z } from 'zod'
import type { Recording } from '../store/keep-recordings.ts'
import type { Studio } from '../studio.ts'
import { changeRecording, RecordingWords } from './add-recording.ts'
import { attachTranscript } from './attach-transcript.ts'
import { addKind } from './change-kinds.ts'

const SaveInput = z.object({
  recordingId: z.string().min(1),
  words: RecordingWords,
  /** Name of a new kind that keeps these answers; '' = none. */
  keepAs: z.string().trim().max(200),
  /** '' = none is handed in now. */
  transcript: z.string(),
  transcriptName: z.string().max(255),
})

/**
 * A transcript that cannot be read is told after the answers are saved, so that none of them is lost.
 * @throws AppError as attachTranscript and changeRecording
 */
export async function saveWords(
  studio: Pick<Studio, 'store' | 'actor' | 'ids'>,
  input: z.input<typeof SaveInput>,
): Promise<Recording> {
  const { recordingId, words, keepAs, transcript, transcriptName } = SaveInput.parse(input)
  const kind =
    keepAs === ''
      ? null
      : await addKind(studio, {
          title: keepAs,
          audience: words.audience ?? [],
          equipment: words.equipment,
          music: words.music,
          // who is in the picture is asked anew each time: consent is given for a film, not for a kind
          people: words.people?.length === 0 ? [] : null,
        })
  const saved = await changeRecording(studio, { recordingId, ...words, kindId: kind?.id ?? words.kindId })
  if (transcript.trim() !== '') {
    const origin = transcriptName === '' ? 'pasted' : 'file'
    await attachTranscript(studio, { recordingId, text: transcript, origin, fileName: transcriptName || null })
  }
  return saved
}
