/** The one file on whose clock a class runs: its film as it came, or the film that was joined of its parts. */
import { hashText } from '../../core/media/engine/hash-file.ts'
import { AppError } from '../../shared/errors.ts'
import { joinedKey } from '../storage/media-keys.ts'
import type { MediaFile } from '../store/keep-media.ts'
import type { Studio } from '../studio.ts'
import { readFacts } from './media-facts.ts'
import type { MediaFacts } from './media-facts.ts'

export interface ClassFile {
  media: MediaFile
  /** null = not looked into yet. */
  facts: MediaFacts | null
  storageKey: string
  /** On this machine, for ffmpeg. */
  path: string
}

/** @throws AppError row-missing when no film has arrived */
export async function findClassFile(
  studio: Pick<Studio, 'store' | 'storage'>,
  recordingId: string,
): Promise<ClassFile> {
  const found = await findClassFileOrNull(studio, recordingId)
  if (found) return found
  throw new AppError('row-missing', 'The film of this class has not arrived yet. Add it, or wait for its upload.')
}

export async function findClassFileOrNull(
  { store, storage }: Pick<Studio, 'store' | 'storage'>,
  recordingId: string,
): Promise<ClassFile | null> {
  const media = chooseClassMedia(recordingId, await store.media.list(recordingId))
  if (!media || media.storageKey === null) return null
  return { media, facts: readFacts(media), storageKey: media.storageKey, path: storage.path(media.storageKey) }
}

/** The files that are the class, in order. */
export function partsOf(files: readonly MediaFile[]): MediaFile[] {
  return files.filter(({ role, storageKey }) => role === 'part' && storageKey !== null)
}

/** null = none has arrived, or several are not joined yet. */
export function chooseClassMedia(recordingId: string, files: readonly MediaFile[]): MediaFile | null {
  const parts = partsOf(files)
  if (parts.length <= 1) return parts[0] ?? null
  const key = keyOfParts(recordingId, parts)
  return files.find(({ role, storageKey }) => role === 'joined' && storageKey === key) ?? null
}

/** Where the film that is joined of these parts, in this order, lies. */
export function keyOfParts(recordingId: string, parts: readonly Pick<MediaFile, 'id'>[]): string {
  return joinedKey(recordingId, hashText(parts.map(({ id }) => id).join(' ')).slice(0, 16))
}
