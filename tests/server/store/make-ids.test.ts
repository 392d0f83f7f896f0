// Ids: unlike each other, in order, also when the clock stands still or goes back.
import { describe, expect, it } from 'vitest'
import { makeIds } from '../../../server/store/make-ids.ts'

describe('ids', () => {
  it('sort in the order they were made while the clock stands still, goes back and jumps', () => {
    const times = [1000, 1000, 1000, 900, 2000, Date.UTC(2026, 0, 1), Date.UTC(2900, 0, 1)]
    let at = 0
    const ids = makeIds(() => times[at++] ?? 0)
    const made = times.map(() => ids())
    expect([...made].sort()).toEqual(made)
    expect(made.every((id) => /^[0-9a-hjkmnp-tv-z]{24}$/.test(id))).toBe(true)
  })

  it('stay in order beyond the count of one millisecond', () => {
    const ids = makeIds(() => 1000)
    const made = Array.from({ length: 70_000 }, ids)
    expect(new Set(made).size).toBe(made.length)
    expect(made.every((id, index) => index === 0 || id > (made[index - 1] ?? ''))).toBe(true)
  })

  it('of two makers at the same moment differ', () => {
    expect(makeIds(() => 1000)()).not.toBe(makeIds(() => 1000)())
  })
})
