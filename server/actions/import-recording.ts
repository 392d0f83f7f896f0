/** Imports a recording that lies on this machine already. */
import path from 'node:path'
import { z } from 'zod'
import type { MediaFile } from '../store/keep-media.ts'
import type { Recording } from '../store/keep-recordings.ts'
import type { Studio } from '../studio.ts'
import { addRecording } from './add-recording.ts'
import { takeMedia } from './take-media.ts'
import type { TakeNeeds } from './take-media.ts'

const ImportInput = z.object({
  /** Of the file, on this machine. */
  path: z.string().min(1),
  /** Absent = the file's name without its ending. */
  title: z.string().trim().min(1).max(200).optional(),
  kindId: z.string().min(1).optional(),
  /** copy = the file stays as it is; link = no second copy where the disk allows; move = it goes into the storage. */
  mode: z.enum(['copy', 'link', 'move']).default('copy'),
})

/**
 * A file that is no recording leaves nothing behind.
 * @throws AppError file-missing, recording-*, disk-full, ffmpeg-missing, row-missing, not-allowed
 */
export async function importRecording(
  studio: TakeNeeds & Pick<Studio, 'ids'>,
  input: z.input<typeof ImportInput>,
): Promise<{ recording: Recording; media: MediaFile }> {
  const { path: from, title, kindId, mode } = ImportInput.parse(input)
  const fileName = path.basename(from).slice(-255)
  const recording = await addRecording(studio, { title: title ?? titleOf(fileName), ...(kindId && { kindId }) })
  try {
    const file = { recordingId: recording.id, role: 'part', fileName, fileId: studio.ids() } as const
    const media = await takeMedia(studio, file, { path: from, mode })
    return { recording: await studio.store.recordings.read(recording.id), media }
  } catch (error) {
    await studio.store.recordings.change(recording.id, null, { state: 'removed' }, studio.actor)
    throw error
  }
}

/** `2026-05-03_morning-class.MP4` becomes "2026-05-03 morning class": what a person would have typed. */
export function titleOf(fileName: string): string {
  const name = fileName.replace(/\.\w{1,5}$/, '')
  const words = name
    .replaceAll('_', ' ')
    // a hyphen between letters parts words; between digits it is a date
    .replace(/(?<=[a-z])-(?=[a-z])/gi, ' ')
    .trim()
  return (words || 'Untitled class').slice(0, 200)
}
