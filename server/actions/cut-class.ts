/** Cuts a class that may lie in several files: parts filmed one after the other, and sound recorded apart. */
import { resolve } from 'node:path'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import type { Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { hashFile } from '../../core/media/engine/hash-file.ts'
import { joinParts } from '../../core/media/engine/join-parts.ts'
import { findPlace, laySound, openSound } from '../../core/media/engine/lay-sound.ts'
import type { SoundFile } from '../../core/media/engine/lay-sound.ts'
import { openRecording } from '../../core/media/engine/open-recording.ts'
import type { OpenedRecording } from '../../core/media/engine/open-recording.ts'
import { AppError } from '../../shared/errors.ts'
import type { LogSheet, Media } from '../../shared/log-sheet.ts'
import type { Manifest } from '../../shared/manifest.ts'
import { formatClock } from '../../shared/time.ts'
import type { Ms } from '../../shared/time.ts'
import { checkOneFile, chooseSegments } from './cut-checks.ts'
import { cutRecording } from './cut-recording.ts'
import type { CutRequest } from './cut-recording.ts'
import { openWorkFolder } from './cut-work-folder.ts'
import type { WorkFolder } from './cut-work-folder.ts'

export interface ClassRequest extends CutRequest {
  /** Further files of the class, in order; the recording itself is the first. */
  parts?: readonly string[] | undefined
  /** Sound recorded apart, published in place of the film's own. */
  soundPath?: string | undefined
  /** A sentence for the person who waits. */
  onNote?: ((text: string) => void) | undefined
}

/**
 * One file is cut as it is. Otherwise a working film is made in the work folder and removed again: parts joined in order, then
 * the other sound laid under them; it is the very same each time, so that clips of an earlier run are kept.
 * The one way in: nothing else calls cutRecording.
 * @throws AppError as cutRecording; sound-not-matching; usage when the sheet wants a sound that is not given
 */
export async function cutClass(request: ClassRequest): Promise<Manifest> {
  const { sheet, parts = [], soundPath, onNote, ...rest } = request
  const wanted = sheet.publishedSound ?? null
  if (wanted?.mediaId && soundPath === undefined) throw soundMissing(sheet, wanted.mediaId)
  const soundTrack = request.soundTrack ?? (soundPath === undefined ? (wanted?.track ?? undefined) : undefined)
  if (parts.length === 0 && soundPath === undefined) return cutRecording({ ...rest, sheet, soundTrack })

  const found = request.found ?? (await findFfmpeg())
  const paths = [request.recordingPath, ...parts].map((path) => resolve(path))
  const folder = await openWorkFolder(resolve(request.outDir), (request.now ?? Date.now)())
  let done = false
  try {
    const desk: Desk = {
      ...{ found, folder, sheet, soundTrack, onNote },
      signal: request.signal,
      silent: request.silent,
    }
    const film = await openFilm(desk, paths)
    const withSound = soundPath === undefined ? film : await addSound(desk, film, resolve(soundPath))
    // its files were held against the sheet here: the working film itself is in no sheet
    const known = { ...sheet, source: null, media: [] }
    const track = soundPath === undefined ? soundTrack : undefined
    const manifest = await cutRecording({
      ...{ ...rest, found, sheet: known, recordingPath: withSound.path, soundTrack: track },
    })
    done = true
    return manifest
  } finally {
    await folder.leave(done)
  }
}

interface Desk {
  found: Ffmpeg
  folder: WorkFolder
  sheet: LogSheet
  soundTrack: number | undefined
  silent: boolean | undefined
  onNote: ((text: string) => void) | undefined
  signal: AbortSignal | undefined
}

function soundMissing({ media }: LogSheet, mediaId: string): AppError {
  const label = media.find(({ id }) => id === mediaId)?.label
  return new AppError(
    'usage',
    `The log sheet publishes the sound "${label || mediaId}", which was recorded apart. Give its file with --sound.`,
  )
}

/** The film of all parts, as one file, once it is what the sheet was marked on. */
async function openFilm(desk: Desk, paths: readonly string[]): Promise<OpenedRecording> {
  const { found, folder, sheet, signal, silent } = desk
  const sums: string[] = []
  for (const path of paths) sums.push(await hashFile(path, { signal }))
  const [first = ''] = paths
  if (paths.length === 1) {
    const film = await openRecording(found, first, { ...{ silent, soundTrack: desk.soundTrack, signal } })
    checkOneFile(sheet, chooseSegments(sheet, film), sums)
    return film
  }
  const { film, startsMs, why } = await joinParts(found, paths, folder.partPath('class'), { signal })
  if (why !== null) desk.onNote?.(`The parts were coded anew to be joined: ${why}.`)
  checkParts(sheet, sums, startsMs)
  checkOneFile(sheet, chooseSegments(sheet, film), sums)
  return film
}

/** A part may begin this far from where the sheet has it: a frame, and what sound packets stick out. */
const START_TOLERANCE_MS = 100

/** @throws AppError sheet-recording when the sheet has the parts in another order or at other times */
function checkParts({ media }: LogSheet, sums: readonly string[], startsMs: readonly Ms[]): void {
  sums.forEach((sum, part) => {
    const listed = media.find((one) => isOf(one, 'camera', sum))
    const startMs = startsMs[part] ?? 0
    if (!listed || Math.abs(listed.startMs - startMs) <= START_TOLERANCE_MS) return
    throw new AppError(
      'sheet-recording',
      `Part ${part + 1} begins at ${formatClock(startMs)}, and the log sheet has it at ${formatClock(Math.max(0, listed.startMs))}. Give the parts in the order in which they were filmed.`,
    )
  })
}

/** Where the sheet says it begins, else where it is heard. */
async function addSound(desk: Desk, film: OpenedRecording, soundPath: string): Promise<OpenedRecording> {
  const { found, folder, signal } = desk
  const sound = await openSound(found, soundPath, signal)
  const place = await placeOf(desk, film, sound)
  return laySound(found, film, sound, place, folder.partPath('class-sound'), { signal })
}

async function placeOf(desk: Desk, film: OpenedRecording, sound: SoundFile) {
  const { found, sheet, signal, onNote } = desk
  const sum = sheet.media.length > 0 ? await hashFile(sound.path, { signal }) : ''
  const listed = sheet.media.find((one) => isOf(one, 'sound', sum))
  if (listed) return { startMs: listed.startMs, driftPpm: listed.driftPpm }
  const place = await findPlace(found, film, sound, { signal })
  const when = `${(Math.abs(place.startMs) / 1000).toFixed(2)} s ${place.startMs < 0 ? 'before' : 'after'} the film`
  onNote?.(`The other sound begins ${when}; its clock is ${place.driftPpm.toFixed(1)} ppm off.`)
  return place
}

function isOf({ role, sha256 }: Media, wanted: Media['role'], sum: string): boolean {
  return role === wanted && sha256.toLowerCase() === sum
}
