/** The one file on whose clock a class runs: its film as it came. */
import { AppError } from '../../shared/errors.ts'
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
  const parts = (await store.media.list(recordingId)).filter(({ role }) => role === 'part')
  // a film that was refused stays in the list; the newest is the one that holds
  const media = parts.at(-1)
  if (!media || media.storageKey === null) return null
  return { media, facts: readFacts(media), storageKey: media.storageKey, path: storage.path(media.storageKey) }
}
