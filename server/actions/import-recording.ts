/** Imports a recording that lies on this machine already. */
import path from 'node:path'
import { z } from 'zod'
import type { MediaFile } from '../store/keep-media.ts'
import type { Recording } from '../store/keep-recordings.ts'
import type { Studio } from '../studio.ts'
import { addRecording } from './add-recording.ts'
import { takeMedia } from './take-media.ts'
import type { TakeNeeds } from './take-media.ts'

const FilePath = z.string().min(1)
const ImportInput = z.object({
  /** Of the film, on this machine. */
  path: FilePath,
  /** Further parts of the film, in their order. */
  parts: z.array(FilePath).max(100).default([]),
  /** Sound recorded apart. */
  sound: z.array(FilePath).max(20).default([]),
  /** Films of other cameras. */
  cameras: z.array(FilePath).max(20).default([]),
  /** Absent = the film's name without its ending. */
  title: z.string().trim().min(1).max(200).optional(),
  kindId: z.string().min(1).optional(),
  /** copy = the files stay as they are; link = no second copy where the disk allows; move = they go into the storage. */
  mode: z.enum(['copy', 'link', 'move']).default('copy'),
})

/**
 * When one of the files is no recording, the class is not on the shelf.
 * @returns media = its film, or the first part of it
 * @throws AppError file-missing, recording-*, disk-full, ffmpeg-missing, row-missing, not-allowed
 */
export async function importRecording(
  studio: TakeNeeds & Pick<Studio, 'ids'>,
  input: z.input<typeof ImportInput>,
): Promise<{ recording: Recording; media: MediaFile }> {
  const { path: first, parts, sound, cameras, title, kindId, mode } = ImportInput.parse(input)
  const nameOf = (from: string): string => path.basename(from).slice(-255)
  const recording = await addRecording(studio, { title: title ?? titleOf(nameOf(first)), ...(kindId && { kindId }) })
  const take = (from: string, role: 'part' | 'sound' | 'camera'): Promise<MediaFile> => {
    const file = { recordingId: recording.id, role, fileName: nameOf(from), fileId: studio.ids() } as const
    return takeMedia(studio, file, { path: from, mode })
  }
  try {
    const media = await take(first, 'part')
    for (const from of parts) await take(from, 'part')
    for (const from of sound) await take(from, 'sound')
    for (const from of cameras) await take(from, 'camera')
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
