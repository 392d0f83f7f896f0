/** Who does what to which thing, and the one place that says whether they may. */
import { z } from 'zod'
import { AppError } from './errors.ts'

/** owner = the person whose studio this is; member = watches published lessons; program = the studio's own upkeep. */
export const Role = z.enum(['owner', 'member', 'program'])
export type Role = z.infer<typeof Role>

export const Actor = z.object({ id: z.string().min(1), name: z.string(), role: Role })
export type Actor = z.infer<typeof Actor>

/** Everything that can be done, `thing.verb`; audit rows use the same names. */
export const ACTIONS = [
  'kind.add',
  'kind.change',
  'kind.remove',
  'recording.add',
  'recording.change',
  'media.add',
  'media.change',
  'media.remove',
  'transcript.add',
  'sheet.add',
  'sheet.edit',
  'sheet.read',
  'job.ask',
  'job.cancel',
  'job.retry',
  'job.run',
  'lesson.add',
  'lesson.publish',
  'lesson.choose-version',
  'lesson.withdraw',
  'lesson.watch',
  'library.search',
  'setting.change',
  'studio.read',
  'studio.backup',
  'studio.restore',
  'studio.export',
  'studio.import',
] as const
export const Action = z.enum(ACTIONS)
export type Action = z.infer<typeof Action>

export const ObjectType = z.enum([
  'kind',
  'recording',
  'media',
  'transcript',
  'sheet',
  'job',
  'lesson',
  'setting',
  'studio',
])
export type ObjectType = z.infer<typeof ObjectType>

/** What an action is done to. The state counts where it decides, as with a lesson that is not published. */
export interface ObjectRef {
  type: ObjectType
  id: string
  state?: string
}

/** The one person of a studio without accounts. */
export const LOCAL_OWNER: Actor = { id: 'local-owner', name: 'Owner', role: 'owner' }
/** The studio itself, as when it takes back the work of a worker that went away. */
export const PROGRAM: Actor = { id: 'program', name: 'Repslate', role: 'program' }

/** True when the actor may do this. What is not granted here is refused. */
export function can(actor: Actor, action: Action, object: ObjectRef): boolean {
  switch (actor.role) {
    case 'owner':
      return true
    case 'member':
      return action === 'library.search' || (action === 'lesson.watch' && object.state === 'published')
    case 'program':
      return action === 'job.run' || action === 'job.cancel' || action === 'media.remove'
  }
}

/** @throws AppError not-allowed */
export function mustBeAllowed(actor: Actor, action: Action, object: ObjectRef): void {
  if (can(actor, action, object)) return
  throw new AppError(
    'not-allowed',
    `${actor.name} may not do this (${action} on ${object.type} ${object.id}). Ask the studio's owner.`,
  )
}
