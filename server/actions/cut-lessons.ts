/** Cuts chosen lessons of a recording in the studio's storage, to be looked at before they are published. */
import { mustBeAllowed } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import type { Manifest } from '../../shared/manifest.ts'
import type { Studio } from '../studio.ts'
import { cutStoredClass } from './cut-stored-class.ts'
import type { OnProgress } from './progress.ts'

export interface CutLessonsInput {
  recordingId: string
  /** null = all that are lessons and have a place in the film. */
  segmentIds: readonly string[] | null
  signal?: AbortSignal | undefined
  onProgress?: OnProgress | undefined
}

/** Clips that are right from an earlier run are kept. @throws AppError as cutStoredClass; row-missing, not-allowed */
export async function cutLessons(
  studio: Pick<Studio, 'store' | 'storage' | 'ffmpeg' | 'actor' | 'clock' | 'dataFolder' | 'ids'>,
  { recordingId, segmentIds, signal, onProgress }: CutLessonsInput,
): Promise<Manifest> {
  mustBeAllowed(studio.actor, 'job.ask', { type: 'recording', id: recordingId })
  const stored = await studio.store.sheets.readOf(recordingId)
  if (!stored) throw new AppError('row-missing', 'The class has no log sheet yet, so nothing can be cut.')
  const segments = stored.sheet.segments.filter(
    ({ id, use, state, spans }) =>
      use === 'lesson' && state !== 'declined' && spans.length > 0 && (segmentIds?.includes(id) ?? true),
  )
  return cutStoredClass(studio, recordingId, { ...stored.sheet, segments }, { signal, onProgress })
}
