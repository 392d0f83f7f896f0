// The candidates of one exercise held against each other in one pass: the same as looking at every pair.
import { describe, expect, it } from 'vitest'
import { groupKin, othersOf } from '../../../core/draft/group-kin.ts'
import type { Candidate } from '../../../core/draft/naming.ts'

function candidate(key: string, strength: 0 | 1 | 2 | 3, listed: boolean): Candidate {
  return {
    ...{ key, strength, listed, source: 'known', entry: null, kind: 'own', name: key, offset: 0, end: 1 },
    ...{ sentence: 0, late: false, bare: false, back: false, described: false },
  }
}

describe('othersOf', () => {
  const worths = [1, 3, 0, 3, 2, -4, 3, 5, -1, 2]
  const all = worths.map((_, index) =>
    candidate(index < 7 ? 'squat' : `row ${String(index % 2)}`, index === 2 ? 3 : 1, false),
  )

  it.each(worths.map((_, index) => index))('tells of candidate %d what looking at every other one tells', (index) => {
    const same = all.flatMap((one, other) => (one.key === all[index]?.key && other !== index ? [other] : []))
    const best = Math.max(-9, ...same.map((other) => worths[other] ?? 0))
    const found = othersOf(groupKin(all, worths).get(all[index]?.key ?? ''), index)
    expect(found).toMatchObject({
      count: same.length,
      before: same.filter((other) => other < index).at(-1),
      best,
      isStronger: same.some((other) => (all[other]?.strength ?? 0) >= 2),
    })
    if (worths[index] === best)
      expect(found.isFirst).toBe(same.every((other) => other > index || (worths[other] ?? 0) < best))
  })
})
