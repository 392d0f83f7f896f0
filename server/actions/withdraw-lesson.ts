/** Takes a lesson from the members at once, and brings one back; its address stays either way. */
import { z } from 'zod'
import { checkSheet } from '../../core/checks/check-sheet.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import type { ShownLesson } from '../store/keep-lessons.ts'
import type { Studio } from '../studio.ts'

const WithdrawInput = z.object({ slug: z.string().min(1), why: z.string().trim().max(500).default('') })
const BringBackInput = z.object({
  slug: z.string().min(1),
  /** Absent = the version shown last. */
  version: z.number().int().positive().optional(),
})

/** Twice is once. @throws AppError row-missing, not-allowed */
export async function withdrawLesson(
  studio: Pick<Studio, 'store' | 'actor'>,
  input: z.input<typeof WithdrawInput>,
): Promise<ShownLesson> {
  const { slug, why } = WithdrawInput.parse(input)
  const { id } = await readAt(studio, slug)
  mustBeAllowed(studio.actor, 'lesson.withdraw', { type: 'lesson', id })
  return studio.store.lessons.withdraw(id, why, studio.actor)
}

/**
 * Shows a version that was published before, also in place of a newer one.
 * @throws AppError not-allowed while a stop stands on the whole class it comes from, such as a consent that was taken back;
 * row-missing
 */
export async function bringBackLesson(
  studio: Pick<Studio, 'store' | 'actor' | 'clock'>,
  input: z.input<typeof BringBackInput>,
): Promise<ShownLesson> {
  const { slug, version } = BringBackInput.parse(input)
  const { id, name, currentVersion } = await readAt(studio, slug)
  mustBeAllowed(studio.actor, 'lesson.choose-version', { type: 'lesson', id })
  const wanted = version ?? currentVersion
  const chosen = (await studio.store.lessons.listVersions(id)).find((one) => one.version === wanted)
  if (!chosen) throw new AppError('row-missing', `The lesson "${name}" has no such version.`)
  const stored = await studio.store.sheets.readOf(chosen.recordingId)
  const stops = (stored ? checkSheet(stored.sheet, { nowUtc: studio.clock() }).findings : [])
    .filter(({ severity, segmentId }) => severity === 'stop' && segmentId === null)
    .map(({ message }) => message)
  if (stops.length > 0) {
    throw new AppError('not-allowed', `"${name}" cannot be shown while a stop stands on its class. Close it first.`, {
      details: stops,
    })
  }
  return studio.store.lessons.chooseVersion(id, chosen.version, studio.actor)
}

async function readAt({ store }: Pick<Studio, 'store'>, slug: string): Promise<ShownLesson> {
  const lesson = await store.lessons.readAt(slug)
  if (lesson) return lesson
  throw new AppError('row-missing', `There is no lesson at the address "${slug}".`)
}
