/** Puts a packed lesson into storage and store as one step: members meet the version before or this one, never half of it. */
import { isDeepStrictEqual } from 'node:util'
import { readFile, stat } from 'node:fs/promises'
import path from 'node:path'
import { LESSON_FILE_NAMES, lessonFileKey } from '../../core/library/name-lesson-files.ts'
import { OWN } from '../../core/library/plan-publishing.ts'
import type { Place } from '../../core/library/plan-publishing.ts'
import { AppError } from '../../shared/errors.ts'
import type { NewVersion, ShownLesson } from '../store/keep-lessons.ts'
import type { Rooms } from '../store/open-store.ts'
import type { Studio } from '../studio.ts'
import { PACKED } from './pack-lesson.ts'

/** Files beside those that members are sent; kept with each version, for exports. */
const FURTHER = [PACKED.description, PACKED.lesson] as const

export interface StoredStep {
  shown: ShownLesson
  /** new = a new address; next = the next version of a lesson; same = it was shown like this already. */
  change: 'new' | 'next' | 'same'
}

/**
 * The files get their names while the row is locked, because only then the version's number is ours alone. A run that was
 * killed before the row was written leaves files that the next version of that number replaces.
 * @param place of a lesson, or the address that a new one takes where it is free
 * @param folder holds the files as packed; nothing is taken from it
 * @throws AppError row-missing, disk-full, out-not-writable
 */
export async function storeLesson(
  studio: Pick<Studio, 'actor' | 'storage'>,
  rooms: Pick<Rooms, 'lessons'>,
  place: Place | { address: string },
  version: NewVersion,
  folder: string,
): Promise<StoredStep> {
  const isNew = typeof place === 'object'
  const target = isNew ? null : await findTarget(rooms, place, version)
  if (target && (await isShown(studio, target, version, folder))) return { shown: target, change: 'same' }
  const { id } =
    target ?? (await rooms.lessons.add(version.lesson.name, studio.actor, isNew ? place.address : undefined))
  const shown = await rooms.lessons.publish(id, version, studio.actor)
  const number = shown.currentVersion ?? 1
  for (const name of LESSON_FILE_NAMES) await put(studio, lessonFileKey(id, number, name), path.join(folder, name))
  for (const name of FURTHER) await put(studio, furtherKey(id, number, name), path.join(folder, name))
  return { shown, change: target ? 'next' : 'new' }
}

/** Where the storage keeps what is not sent to members. */
export function furtherKey(lessonId: string, version: number, name: (typeof FURTHER)[number]): string {
  return `lessons/${lessonId}/${version}/${name}`
}

/** An address of its own is that of the lesson which shows this very segment, so that publishing twice is publishing once. */
async function findTarget({ lessons }: Pick<Rooms, 'lessons'>, place: Place, version: NewVersion) {
  if (place !== OWN) return lessons.read(place)
  for (const shown of await lessons.list()) {
    const { current } = shown
    if (current?.recordingId === version.recordingId && current.segmentId === version.segmentId) return shown
  }
  return null
}

async function isShown(
  { storage }: Pick<Studio, 'storage'>,
  { id, slug, state, current }: ShownLesson,
  next: NewVersion,
  folder: string,
): Promise<boolean> {
  if (state !== 'published' || !current) return false
  const isSame =
    current.recordingId === next.recordingId &&
    current.segmentId === next.segmentId &&
    current.clipSha256 === next.clipSha256 &&
    isDeepStrictEqual(plain({ ...current.lesson, slug }), plain({ ...next.lesson, slug }))
  if (!isSame) return false
  for (const name of ['captions.en.vtt', 'chapters.vtt'] as const) {
    const file = storage.path(lessonFileKey(id, current.version, name))
    const [now, then] = await Promise.all([readFile(path.join(folder, name)), readFile(file).catch(() => null)])
    if (!then?.equals(now)) return false
  }
  return true
}

const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value)) as unknown

/** A lesson may lack pictures; all else must be there. */
async function put({ storage }: Pick<Studio, 'storage'>, key: string, file: string): Promise<void> {
  const isThere = await stat(file).then(
    () => true,
    () => false,
  )
  if (isThere) await storage.putFile(key, file, 'link')
  else if (!file.endsWith('.jpg')) throw new AppError('internal', `The packed lesson lacks ${path.basename(file)}.`)
}
