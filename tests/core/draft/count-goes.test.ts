// Sets that are told as they come, counted over what is said while an exercise is done.
import { describe, expect, it } from 'vitest'
import { countGoes } from '../../../core/draft/count-goes.ts'

const eight = { min: 8, max: 8 }
const half = { min: 30, max: 30 }

describe('goes told as they come', () => {
  it.each([
    ['Eight. And rest. And another eight. Good. And a last eight, please.', eight, 3],
    ['Eight of those. Second set, same number.', eight, 2],
    ['First lot. Have a rest. Second lot. And your third, the last one.', eight, 3],
    ['Eight. Then eight more, and have a breather.', eight, 2],
    ['Hold it there. Half a minute more, then sit.', half, 2],
    ['Set two. Chest up. Set three. Done.', eight, 3],
    ['Down you go, and then all of that again.', eight, 2],
    ['That was one, and two more trips of it.', eight, 3],
    ['There is a third lap in you.', eight, 3],
    ['Back to it, for a second round. Hold the chair, and one more set of eight.', eight, 2],
    ['Second set, eight of them. Chest up. And one more set of eight.', eight, 3],
  ])('%s', (said, amount, goes) => expect(countGoes(said, amount)?.goes).toBe(goes))

  it.each([
    ['Another ten seconds and you may sit down.', eight],
    ['Wait a second. Breathe out as you push.', eight],
    ['Keep your chest up and your heels down.', eight],
    ['Lift a third of the way, and two more people join us.', eight],
  ])('none in: %s', (said, amount) => expect(countGoes(said, amount)).toBeNull())

  it('"third and last" is one telling', () =>
    expect(countGoes('Eight. Second set. Third and last set.', eight)).toMatchObject({ goes: 3 }))
})
