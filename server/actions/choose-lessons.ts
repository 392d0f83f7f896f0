/** Chooses what segments are for: a lesson, kept for search, or left out. Each choice is an edit that can be undone. */
import { z } from 'zod'
import { mustBeAllowed } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import { Use } from '../../shared/log-sheet.ts'
import type { Studio } from '../studio.ts'

export const ChooseInput = z.object({
  recordingId: z.string().min(1),
  /** By segment id; what is not named stays. */
  uses: z.record(z.string().min(1), Use),
})

/** @returns the sheet's version afterwards. @throws AppError row-missing, edit-target, not-allowed */
export async function chooseLessons(
  { store, actor, ids }: Pick<Studio, 'store' | 'actor' | 'ids'>,
  input: z.input<typeof ChooseInput>,
): Promise<{ version: number; changed: number }> {
  const { recordingId, uses } = ChooseInput.parse(input)
  mustBeAllowed(actor, 'sheet.edit', { type: 'sheet', id: recordingId })
  return store.transaction(async ({ sheets }) => {
    const stored = await sheets.readOf(recordingId)
    if (!stored) throw new AppError('row-missing', 'The class has no log sheet yet, so there is nothing to choose.')
    const now = new Map(stored.sheet.segments.map(({ id, use }) => [id, use]))
    const edits = Object.entries(uses)
      .filter(([segmentId, use]) => now.get(segmentId) !== use)
      .map(([segmentId, use]) => ({ opId: ids(), op: { op: 'set-use' as const, segmentId, use } }))
    if (edits.length === 0) return { version: stored.version, changed: 0 }
    const { version } = await sheets.appendEdits({ sheetId: stored.id, baseVersion: stored.version, edits, actor })
    return { version, changed: edits.length }
  })
}
