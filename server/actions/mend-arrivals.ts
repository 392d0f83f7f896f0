/** After a kill: films that lie in the storage without a row are given one, so that nothing that arrived is lost. */
import { filesFolder } from '../storage/media-keys.ts'
import { takeMedia } from './take-media.ts'
import type { TakeNeeds } from './take-media.ts'
import { settleParts } from './settle-parts.ts'

/** Only recordings that still wait for their film are looked at. */
export async function mendArrivals(studio: TakeNeeds): Promise<number> {
  let mended = 0
  for (const { id: recordingId, title, state } of await studio.store.recordings.list()) {
    if (state === 'checking') await settleParts(studio, recordingId)
    if (state !== 'arriving') continue
    const known = new Set((await studio.store.media.list(recordingId)).map(({ storageKey }) => storageKey))
    const lost = (await studio.storage.list(filesFolder(recordingId))).filter((key) => !known.has(key))
    for (const key of lost.slice(0, 1)) {
      const fileId = key.slice(key.lastIndexOf('/') + 1)
      const file = { recordingId, role: 'part', fileName: title, fileId } as const
      await takeMedia(studio, file, { path: studio.storage.path(key), mode: 'copy' })
      mended += 1
    }
  }
  return mended
}
