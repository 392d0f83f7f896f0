// Search in the library: names and other names, spellings, one wrong letter, filters.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { describeLesson, offeredAudience } from '../../../core/library/describe-lesson.ts'
import type { LessonFacts } from '../../../core/library/describe-lesson.ts'
import { findNeighbours } from '../../../core/library/find-neighbours.ts'
import { placeInClip } from '../../../core/library/place-in-clip.ts'
import { isOneLetterOff, lengthOf, listChoices, searchLessons } from '../../../core/library/search-lessons.ts'
import type { LessonQuery } from '../../../core/library/search-lessons.ts'
import { NOTICE } from '../../../shared/lesson.ts'
import type { Lesson } from '../../../shared/lesson.ts'

function lesson(name: string, fields: Partial<Lesson> = {}): Lesson {
  return {
    format: 'repslate-lesson',
    version: 1,
    slug: name.toLowerCase().replaceAll(' ', '-'),
    name,
    alsoCalled: [],
    audience: ['general'],
    equipment: [],
    position: null,
    dose: null,
    cautions: [],
    takeCare: [],
    movement: [],
    easier: [],
    harder: [],
    notice: NOTICE,
    from: { title: '', segmentId: 's', recordingSha256: '', spans: [] },
    clip: { file: 'clip.mp4', sha256: '', durationMs: 45_000, frames: 1, poster: null },
    captions: '',
    chapters: '',
    description: '',
    ...fields,
  }
}
const clip = (durationMs: number): Pick<Lesson, 'clip'> => ({ clip: { ...lesson('x').clip, durationMs } })

const LIBRARY: LessonFacts[] = [
  lesson('Press-ups'),
  lesson('Wall push-ups', { equipment: ['wall'], position: 'standing' }),
  lesson('Sit to stand', { equipment: ['chair'], audience: ['older-adults'], alsoCalled: ['Chair rise'] }),
  lesson('Goblet squat', { equipment: ['kettlebell'], ...clip(90_000) }),
  lesson('Squat'),
  lesson('Glute bridge', clip(200_000)),
  lesson('Côté étirement'),
].map((one) => describeLesson(one, true))

const NOTHING: LessonQuery = {
  text: '',
  kit: null,
  position: null,
  region: null,
  level: null,
  audience: null,
  length: null,
}
const find = (query: Partial<LessonQuery>): string[] =>
  searchLessons(LIBRARY, { ...NOTHING, ...query }).map(({ name }) => name)

describe('words', () => {
  it.each([
    ['nothing like it', 'xyzzy', []],
    ['signs only', '?!', []],
    ['another spelling', 'pressups', ['Press-ups']],
    ['another name of the same exercise', 'push up', ['Press-ups', 'Wall push-ups']],
    ['the name itself before names that hold it', 'squat', ['Squat', 'Goblet squat']],
    ['the beginning of a word', 'gobl', ['Goblet squat']],
    ['a letter too few', 'gobet squat', ['Goblet squat']],
    ['two letters swapped', 'gobelt', ['Goblet squat']],
    ['a letter too many', 'brridge', ['Glute bridge']],
    ['the instructor’s other name', 'chair rise', ['Sit to stand']],
    ['words in another order', 'stand sit', ['Sit to stand']],
    ['kit beside the name', 'kettlebell squat', ['Goblet squat']],
    ['accents left out', 'cote etirement', ['Côté étirement']],
  ])('%s: "%s"', (_what, text, names) => {
    expect(find({ text }).slice(0, Math.max(1, names.length))).toEqual(names)
  })

  it('without words are all lessons, by name', () => {
    expect(find({ text: '  ' })).toHaveLength(LIBRARY.length)
    expect(find({})).toEqual([...find({})].sort())
  })
})

describe('filters', () => {
  it.each([
    [{ kit: 'chair' }, ['Sit to stand']],
    [{ kit: 'none', length: 'long' }, ['Glute bridge']],
    [{ length: 'middle' }, ['Goblet squat']],
    [{ audience: 'older-adults' }, ['Sit to stand']],
    [{ position: 'standing', kit: 'wall' }, ['Wall push-ups']],
    [{ text: 'squat', kit: 'kettlebell' }, ['Goblet squat']],
    [{ kit: 'trampoline' }, []],
  ])('%j', (query, names) => {
    expect(find(query)).toEqual(names)
  })

  it('offer what the library holds, once each', () => {
    const { kit, length } = listChoices(LIBRARY)
    expect(kit).toEqual(['chair', 'kettlebell', 'none', 'wall'])
    expect(length).toEqual(['long', 'middle', 'short'])
  })

  it.each([
    [0, 'short'],
    [59_999, 'short'],
    [60_000, 'middle'],
    [179_999, 'middle'],
    [180_000, 'long'],
  ])('a clip of %d ms is %s', (ms, length) => {
    expect(lengthOf(ms)).toBe(length)
  })
})

describe('one letter off', () => {
  /** Damerau's distance (Communications of the ACM 7, 1964), restricted to neighbours, by the full table. */
  function distance(a: string, b: string): number {
    const table = Array.from({ length: a.length + 1 }, (_, i) =>
      Array.from({ length: b.length + 1 }, (_, j) => (i === 0 ? j : j === 0 ? i : 0)),
    )
    const at = (i: number, j: number): number => table[i]?.[j] ?? 0
    for (let i = 1; i <= a.length; i += 1) {
      for (let j = 1; j <= b.length; j += 1) {
        const cost = a[i - 1] === b[j - 1] ? 0 : 1
        let least = Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + cost)
        if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
          least = Math.min(least, at(i - 2, j - 2) + 1)
        table[i]![j] = least
      }
    }
    return at(a.length, b.length)
  }

  it('agrees with the full table of distances', () => {
    const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 6 })
    fc.assert(
      fc.property(word, word, (a, b) => a === b || isOneLetterOff(a, b) === (distance(a, b) === 1)),
      { numRuns: 3000 },
    )
  })
})

describe('what the library knows of a lesson', () => {
  it('takes region, level and other names from the catalogue', () => {
    const [pressUps] = LIBRARY
    expect(pressUps?.regions).toContain('chest')
    expect(pressUps?.otherNames).toContain('push up')
    expect(pressUps?.level).toBe('building')
  })

  it('knows nothing of a name that the catalogue lacks', () => {
    expect(describeLesson(lesson('Moonwalk of ours'), true)).toMatchObject({ regions: [], level: null, otherNames: [] })
  })

  it('is offered to those whom a wrong offer can harm only when a person says so', () => {
    const audience = ['general', 'older-adults', 'pregnancy', 'after-birth', 'rehab', 'juniors', 'beginners'] as const
    expect(offeredAudience(audience, false)).toEqual(['general', 'beginners'])
    expect(offeredAudience(audience, true)).toEqual(audience)
  })
})

describe('easier and harder', () => {
  const squat = LIBRARY.find(({ name }) => name === 'Squat')!

  it('link the instructor’s words to the lesson that they name', () => {
    expect(findNeighbours(squat, 'harder', ['hold a bell', 'goblet squat'], LIBRARY)).toEqual([
      { text: 'hold a bell', slug: null },
      { text: 'goblet squat', slug: 'goblet-squat' },
    ])
  })

  it('add lessons that the catalogue puts there', () => {
    expect(findNeighbours(squat, 'easier', [], LIBRARY)).toEqual([{ text: 'Sit to stand', slug: 'sit-to-stand' }])
  })

  it('never lead back to the same lesson', () => {
    expect(findNeighbours(squat, 'easier', ['squat'], LIBRARY)[0]).toEqual({ text: 'squat', slug: null })
  })
})

describe('a stretch of the recording in the clip', () => {
  const kept = [
    { startMs: 1000, endMs: 2000 },
    { startMs: 5000, endMs: 7000 },
  ]
  it.each([
    ['before all that is kept', 0, 1000, null],
    ['in what was cut out', 2500, 4000, null],
    ['in the first part', 1200, 1800, { startMs: 200, endMs: 800 }],
    ['in the second part', 5500, 6000, { startMs: 1500, endMs: 2000 }],
    ['over the cut', 1500, 6000, { startMs: 500, endMs: 2000 }],
    ['longer than all', 0, 9000, { startMs: 0, endMs: 3000 }],
  ])('%s', (_what, startMs, endMs, placed) => {
    expect(placeInClip({ startMs, endMs }, kept)).toEqual(placed)
  })
})
