// What was asked lately is answered from memory, and the memory stays small.
import { describe, expect, it } from 'vitest'
import { remember } from '../../core/remember.ts'

describe('remember', () => {
  it('asks once for the same text', () => {
    const asked: string[] = []
    const lengthOf = remember(10, (text) => asked.push(text) && text.length)
    expect(['set', 'set', '', 'rest', ''].map(lengthOf)).toEqual([3, 3, 0, 4, 0])
    expect(asked).toEqual(['set', '', 'rest'])
  })

  it('keeps at least as many as it is told, also when nothing is the answer', () => {
    let times = 0
    const none = remember(3, () => ((times += 1), null))
    for (const text of ['a', 'b', 'c', 'a', 'b', 'c']) expect(none(text)).toBeNull()
    expect(times).toBe(3)
  })

  it('forgets what was asked long ago, so that it never grows without end', () => {
    const asked: string[] = []
    const same = remember(2, (text) => (asked.push(text), text))
    for (let index = 0; index < 100; index++) same(String(index))
    same('0')
    expect(asked.filter((text) => text === '0')).toHaveLength(2)
  })
})
