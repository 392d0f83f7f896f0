/** Brings a class in line with its parts: one part is the film itself, several are joined as soon as all are looked into. */
import { PROGRAM } from '../../shared/actors.ts'
import type { Actor } from '../../shared/actors.ts'
import type { MediaFile } from '../store/keep-media.ts'
import type { Rooms } from '../store/open-store.ts'
import type { Job } from '../store/read-job.ts'
import type { Studio } from '../studio.ts'
import { askJob, JOB_INPUTS } from './ask-job.ts'
import { dropJoined } from './drop-joined.ts'
import { chooseClassMedia, keyOfParts, partsOf } from './find-class-file.ts'
import { readFacts } from './media-facts.ts'
import { askPlaces } from './place-sound.ts'

/** May be called at any time, and twice: it asks for what is missing and for nothing else. */
export async function settleParts(
  { store, storage, actor }: Pick<Studio, 'store' | 'storage' | 'actor'>,
  recordingId: string,
): Promise<void> {
  await store.transaction(async (rooms) => {
    const { state } = await rooms.recordings.read(recordingId)
    const files = await rooms.media.list(recordingId)
    const parts = partsOf(files)
    if (state === 'removed' || parts.length === 0) return
    const film = chooseClassMedia(recordingId, files)
    const jobs = await rooms.jobs.list({ recordingId, states: ['queued', 'running'] })
    if (film) return settleFilm(rooms, actor, recordingId, film, jobs)
    if (state === 'ready') await rooms.recordings.change(recordingId, null, { state: 'checking' }, PROGRAM)
    // each is looked into first, so that one that cannot be used is told by its name
    if (parts.some(({ sha256 }) => sha256 === null)) return
    const key = `join-${keyOfParts(recordingId, parts)}`
    for (const job of jobs) if (isOutdated(job, key)) await rooms.jobs.cancel(job.id, PROGRAM)
    const { id, state: asked } = await askJob(
      rooms,
      actor,
      'join',
      { recordingId, mediaIds: parts.map(({ id }) => id) },
      key,
    )
    // an order that was left and is wanted again
    if (asked === 'done' || asked === 'cancelled') await rooms.jobs.retry(id, actor)
  })
  await dropJoined({ store, storage }, recordingId)
}

/** The class can be worked on: its length is the film's, and its log sheet stands on this film. */
export async function releaseClass(rooms: Rooms, actor: Actor, recordingId: string, film: MediaFile): Promise<void> {
  const { id, sha256, durationMs } = film
  if (sha256 === null || durationMs === null) return
  await rooms.recordings.change(recordingId, null, { state: 'ready', durationMs }, PROGRAM)
  await askPlaces(rooms, actor, recordingId, film)
  const sheet = await rooms.sheets.readOf(recordingId)
  const former = sheet?.sheet.source?.sha256 ?? null
  // a sheet that was begun on the first part goes on over all of them; one of another recording is left alone
  const isOurs = former === null || (await rooms.media.list(recordingId)).some((file) => file.sha256 === former)
  if (!sheet || !isOurs || former === sha256) return
  const edit = { op: 'set-source' as const, source: { sha256, durationMs }, durationMs }
  const edits = [{ opId: `source-${id}-${sheet.version}`, op: edit }]
  await rooms.sheets.appendEdits({ sheetId: sheet.id, baseVersion: sheet.version, edits, actor: PROGRAM })
}

async function settleFilm(
  rooms: Rooms,
  actor: Actor,
  recordingId: string,
  film: MediaFile,
  jobs: readonly Job[],
): Promise<void> {
  if (readFacts(film)?.thumbs) return releaseClass(rooms, actor, recordingId, film)
  const isLookedInto = jobs.some(
    ({ kind, input }) => kind === 'analyse' && JOB_INPUTS.analyse.safeParse(input).data?.mediaId === film.id,
  )
  // a part that was only glanced at, and is the whole film now
  if (!isLookedInto) {
    await askJob(rooms, actor, 'analyse', { recordingId, mediaId: film.id }, `analyse-${film.id}-as-film`)
  }
}

/** Nobody looks at the preview of a part, or at a film joined in another order. */
function isOutdated({ kind, jobKey }: Job, key: string): boolean {
  return kind === 'preview' || (kind === 'join' && jobKey !== key)
}
