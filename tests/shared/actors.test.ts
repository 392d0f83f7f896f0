// Who may do what: refused unless granted.
import { describe, expect, it } from 'vitest'
import { ACTIONS, can, LOCAL_OWNER, mustBeAllowed, PROGRAM } from '../../shared/actors.ts'
import type { Action, Actor } from '../../shared/actors.ts'

const MEMBER: Actor = { id: 'm', name: 'Mia', role: 'member' }
const granted = (actor: Actor, state?: string): Action[] =>
  ACTIONS.filter((action) => can(actor, action, { type: 'lesson', id: 'x', ...(state !== undefined && { state }) }))

describe('can', () => {
  it.each([
    ['a member, before anything is published', MEMBER, 'draft', ['library.search']],
    ['a member, after it was withdrawn', MEMBER, 'withdrawn', ['library.search']],
    ['a member, when nothing is said of the state', MEMBER, undefined, ['library.search']],
    ['a member, of a published lesson', MEMBER, 'published', ['lesson.watch', 'library.search']],
    ['the program', PROGRAM, 'published', ['job.cancel', 'job.run', 'media.remove']],
    ['the owner', LOCAL_OWNER, 'draft', [...ACTIONS]],
  ])('grants %s exactly this', (_name, actor, state, actions) => {
    expect(granted(actor, state).sort()).toEqual([...actions].sort())
  })

  it('says who may not do what', () => {
    const call = () => mustBeAllowed(MEMBER, 'lesson.publish', { type: 'lesson', id: 'x' })
    expect(call).toThrow('Mia may not do this (lesson.publish on lesson x).')
    expect(call).toThrow(expect.objectContaining({ code: 'not-allowed' }))
    expect(() => mustBeAllowed(LOCAL_OWNER, 'lesson.publish', { type: 'lesson', id: 'x' })).not.toThrow()
  })
})
