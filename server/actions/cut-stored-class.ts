/** Cuts a class of the studio: its film from the storage, with the sound that its log sheet publishes. */
import { AppError } from '../../shared/errors.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import type { Manifest } from '../../shared/manifest.ts'
import { cutFolder } from '../storage/media-keys.ts'
import type { MediaFile } from '../store/keep-media.ts'
import type { Studio } from '../studio.ts'
import { cutClass } from './cut-class.ts'
import { holdFilm } from './hold-film.ts'
import type { OnProgress } from './progress.ts'

type Needs = Pick<Studio, 'store' | 'storage' | 'ffmpeg' | 'clock' | 'dataFolder' | 'ids'>

/**
 * @param sheet with the segments that are wanted only
 * @returns the manifest, which names the film as it lies in the storage also where another sound was laid under it
 * @throws AppError row-missing when the film or the chosen sound is not here; as cutClass
 */
export async function cutStoredClass(
  studio: Needs,
  recordingId: string,
  sheet: LogSheet,
  { signal, onProgress }: { signal?: AbortSignal | undefined; onProgress?: OnProgress | undefined },
): Promise<Manifest> {
  const { storage, store } = studio
  const { film, release } = await holdFilm(studio, recordingId)
  try {
    const sound = chosenSound(sheet, await store.media.list(recordingId))
    if (sound) await mustFit(studio, film.media)
    const manifest = await cutClass({
      ...{ recordingPath: film.path, sheet, outDir: storage.path(cutFolder(recordingId)), jobs: 1, silent: true },
      ...(sound && { soundPath: storage.path(sound.storageKey ?? '') }),
      ...(studio.ffmpeg && { found: studio.ffmpeg }),
      ...{ now: studio.clock, signal, onProgress },
    })
    const sha256 = film.media.sha256 ?? manifest.recording.sha256
    return { ...manifest, recording: { ...manifest.recording, sha256 } }
  } finally {
    await release()
  }
}

/** By its id, or by its sum where the sheet came from another studio. null = the film's own sound is published. */
function chosenSound({ publishedSound, media }: LogSheet, files: readonly MediaFile[]): MediaFile | null {
  const mediaId = publishedSound?.mediaId
  if (mediaId == null) return null
  const told = media.find(({ id }) => id === mediaId)
  const found = files.find(
    ({ id, sha256, storageKey }) => storageKey !== null && (id === mediaId || (told && sha256 === told.sha256)),
  )
  if (found) return found
  throw new AppError(
    'row-missing',
    `The sound "${told?.label || mediaId}", which is chosen to be published, is not among the files of this class. Add it, or choose another sound where its film is.`,
  )
}

/** A film with the other sound is as large as the film, and lies here while it is cut. */
async function mustFit({ storage }: Needs, { bytes }: MediaFile): Promise<void> {
  const needed = (bytes ?? 0) * 1.2
  if ((await storage.freeBytes()) > needed) return
  const gigabytes = (needed / 1e9).toFixed(1)
  throw new AppError(
    'disk-full',
    `Laying the other sound needs ${gigabytes} GB of room. Free some space, then try again.`,
  )
}
