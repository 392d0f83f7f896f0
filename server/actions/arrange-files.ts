/** Says what each file of a recording is, and in which order its parts follow. */
import { z } from 'zod'
import { mustBeAllowed } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import { MediaRole } from '../store/keep-media.ts'
import type { Studio } from '../studio.ts'
import { partsOf } from './find-class-file.ts'
import { settleParts } from './settle-parts.ts'

/** What a person may say a file is. */
export const GivenRole = MediaRole.exclude(['joined'])
export type GivenRole = z.infer<typeof GivenRole>

const ArrangeInput = z.object({
  recordingId: z.string().min(1),
  /** Every file, in the order in which it shall stand. */
  files: z.array(z.object({ id: z.string().min(1), role: GivenRole })).max(500),
})

/**
 * Once there are marks, parts may be added behind the others only: else all marks would point elsewhere.
 * @throws AppError row-missing, row-changed, sheet-recording, not-allowed
 */
export async function arrangeFiles(
  studio: Pick<Studio, 'store' | 'storage' | 'actor'>,
  input: z.input<typeof ArrangeInput>,
): Promise<void> {
  const { recordingId, files } = ArrangeInput.parse(input)
  mustBeAllowed(studio.actor, 'media.change', { type: 'recording', id: recordingId })
  await studio.store.transaction(async (rooms) => {
    await rooms.recordings.read(recordingId)
    const now = partsOf(await rooms.media.list(recordingId)).map(({ id }) => id)
    const wanted = files.filter(({ role }) => role === 'part').map(({ id }) => id)
    const keeps = now.every((id, index) => wanted[index] === id)
    const isMarked = (await rooms.sheets.readOf(recordingId))?.sheet.segments.some(({ spans }) => spans.length > 0)
    if (isMarked && !keeps) {
      throw new AppError(
        'sheet-recording',
        'Exercises are marked on this film already, and would point to other places. Parts can still be added behind it; for another order, add it as a new class.',
      )
    }
    await rooms.media.arrange(recordingId, files, studio.actor)
  })
  await settleParts(studio, recordingId)
}
