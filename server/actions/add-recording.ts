/** Adds a recording before its film is there, and changes what was said about it. */
import { z } from 'zod'
import { mustBeAllowed } from '../../shared/actors.ts'
import type { Edit } from '../../shared/edit.ts'
import { Audience, Music, PersonShown } from '../../shared/log-sheet.ts'
import type { Recording } from '../store/keep-recordings.ts'
import type { Studio } from '../studio.ts'

const Title = z.string().trim().min(1, 'Give the class a title.').max(200)

export const RecordingWords = z.object({
  title: Title,
  /** null = of no kind. */
  kindId: z.string().min(1).nullable(),
  /** null = nobody has said yet. */
  audience: z.array(Audience).nullable(),
  equipment: z.array(z.string().trim().min(1).max(80)).max(60),
  music: Music.nullable(),
  /** null = nobody has said, [] = nobody but the instructor. */
  people: z.array(PersonShown).max(100).nullable(),
})
export type RecordingWords = z.infer<typeof RecordingWords>

const AddInput = RecordingWords.partial().extend({ title: Title })
const ChangeInput = RecordingWords.partial().extend({ recordingId: z.string().min(1) })

type Needs = Pick<Studio, 'store' | 'actor' | 'ids'>

/** A class kind lends what is not given. @throws AppError row-missing, not-allowed */
export async function addRecording(studio: Needs, input: z.input<typeof AddInput>): Promise<Recording> {
  const fields = AddInput.parse(input)
  mustBeAllowed(studio.actor, 'recording.add', { type: 'recording', id: 'new' })
  return studio.store.recordings.add(dropAbsent(fields), studio.actor)
}

/**
 * Changes what was said. Once there is a log sheet, the same is said there by edits that can be undone.
 * @throws AppError row-missing, not-allowed
 */
export async function changeRecording(studio: Needs, input: z.input<typeof ChangeInput>): Promise<Recording> {
  const { recordingId, ...said } = ChangeInput.parse(input)
  mustBeAllowed(studio.actor, 'recording.change', { type: 'recording', id: recordingId })
  const fields = dropAbsent(said)
  return studio.store.transaction(async ({ recordings, sheets, kinds }) => {
    if (fields.kindId) await kinds.read(fields.kindId)
    const now = await recordings.change(recordingId, null, fields, studio.actor)
    const sheet = await sheets.readOf(recordingId)
    const edits = sheet ? editsOf(fields) : []
    if (sheet && edits.length > 0) {
      await sheets.appendEdits({
        sheetId: sheet.id,
        baseVersion: sheet.version,
        edits: edits.map((op) => ({ opId: studio.ids(), op })),
        actor: studio.actor,
      })
    }
    return now
  })
}

/** Takes a recording from the shelf. Its files and lessons stay. @throws AppError row-missing, not-allowed */
export async function removeRecording(studio: Needs, recordingId: string): Promise<void> {
  mustBeAllowed(studio.actor, 'recording.change', { type: 'recording', id: recordingId })
  await studio.store.recordings.change(recordingId, null, { state: 'removed' }, studio.actor)
}

function editsOf(fields: Partial<RecordingWords>): Edit[] {
  return [
    ...(fields.title === undefined ? [] : [{ op: 'set-title' as const, title: fields.title }]),
    ...(fields.audience ? [{ op: 'set-audience' as const, audience: fields.audience }] : []),
    ...(fields.music === undefined ? [] : [{ op: 'set-music' as const, music: fields.music }]),
    ...(fields.people === undefined ? [] : [{ op: 'set-people' as const, people: fields.people }]),
  ]
}

/** Absent and undefined are the same here: nothing is said. */
function dropAbsent<Fields extends object>(fields: Fields): Fields {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Fields
}
