/** Chooses the sound that lessons are published with: the film's own, another of its tracks, or sound recorded apart. */
import { z } from 'zod'
import { mustBeAllowed } from '../../shared/actors.ts'
import type { EditOf } from '../../shared/edit.ts'
import { AppError } from '../../shared/errors.ts'
import type { MediaFile } from '../store/keep-media.ts'
import type { Rooms } from '../store/open-store.ts'
import type { Studio } from '../studio.ts'
import { chooseClassMedia } from './find-class-file.ts'
import { readFacts, readPlace } from './media-facts.ts'

const TRACK = /^track-(\d{1,2})$/

export const SoundInput = z.object({
  recordingId: z.string().min(1),
  /** `film`, `track-2` (from 1), or the id of a sound file. */
  sound: z.string().min(1).max(200),
  /** All clips louder or softer than lessons usually are. */
  gainDb: z.coerce.number().min(-12).max(12).default(0),
})

/**
 * The same choice again changes nothing.
 * @throws AppError row-missing without a log sheet or file, sound-not-matching, recording-no-sound, not-allowed
 */
export async function chooseSound(
  { store, actor, ids }: Pick<Studio, 'store' | 'actor' | 'ids'>,
  input: z.input<typeof SoundInput>,
): Promise<void> {
  const { recordingId, sound, gainDb } = SoundInput.parse(input)
  mustBeAllowed(actor, 'sheet.edit', { type: 'recording', id: recordingId })
  await store.transaction(async (rooms) => {
    const stored = await rooms.sheets.readOf(recordingId)
    if (!stored) {
      throw new AppError(
        'row-missing',
        'Nothing is marked in this class yet. Choose the sound once its words are here.',
      )
    }
    const former = stored.sheet.publishedSound ?? null
    const op = await buildEdit(rooms, recordingId, sound, gainDb, former?.mediaId ?? null)
    const isKnown = op.media === undefined || stored.sheet.media.some((one) => isSame(one, op.media))
    if (isKnown && isSame(former, op.sound)) return
    const { id: sheetId, version: baseVersion } = stored
    await rooms.sheets.appendEdits({ sheetId, baseVersion, edits: [{ opId: `sound-${ids()}`, op }], actor })
  })
}

async function buildEdit(
  rooms: Rooms,
  recordingId: string,
  sound: string,
  gainDb: number,
  formerId: string | null,
): Promise<EditOf<'set-sound'>> {
  const files = await rooms.media.list(recordingId)
  const film = chooseClassMedia(recordingId, files)
  const gain = gainDb === 0 ? {} : { gainDb }
  if (sound === 'film') {
    return { op: 'set-sound', sound: gainDb === 0 ? null : { mediaId: null, track: null, ...gain } }
  }
  const track = Number(TRACK.exec(sound)?.[1] ?? 0)
  if (track > 0) {
    const count = (film && readFacts(film)?.tracks?.length) ?? 0
    if (track > count) throw new AppError('recording-no-sound', `The film has no sound track number ${track}.`)
    return { op: 'set-sound', sound: { mediaId: null, track, ...gain } }
  }
  const file = files.find(({ id, role }) => id === sound && role === 'sound')
  if (!file) throw new AppError('row-missing', 'This sound is not among the files of the class any more.')
  const { id, label, fileName, sha256, durationMs, startMs, driftPpm } = file
  // what was chosen stays chosen while it is compared with a longer film
  if (id === formerId && !isPlaced(file, film)) return { op: 'set-sound', sound: { mediaId: id, track: null, ...gain } }
  mustBePlaced(file, film)
  const media = {
    ...{ id, role: 'sound' as const, label: label || fileName, sha256: sha256 ?? '' },
    ...{ durationMs: durationMs ?? 0, startMs, driftPpm },
  }
  return { op: 'set-sound', sound: { mediaId: id, track: null, ...gain }, media }
}

function mustBePlaced(sound: MediaFile, film: MediaFile | null): void {
  if (isPlaced(sound, film)) return
  const place = readPlace(sound)
  throw new AppError(
    'sound-not-matching',
    place && place.found === null
      ? `"${sound.fileName}" is not heard in the film, so where it lies is not known. Choose the sound of this class, or say where it begins.`
      : `Where "${sound.fileName}" lies under the film is not measured yet. Wait a moment, then choose it again.`,
  )
}

function isPlaced(sound: MediaFile, film: MediaFile | null): boolean {
  const place = readPlace(sound)
  return film !== null && place?.filmId === film.id && place.found !== null
}

/** By what both say, whatever the order of their fields. */
function isSame(a: object | null | undefined, b: object | null | undefined): boolean {
  const text = (value: object | null | undefined): string =>
    JSON.stringify(Object.entries(value ?? {}).sort(([x], [y]) => (x < y ? -1 : 1)))
  return text(a) === text(b)
}
