// What publishing would do to each exercise: held back whoever asks, new, changed, the same, in the library from elsewhere.
import { describe, expect, it } from 'vitest'
import { OWN, planPublishing, SKIP } from '../../../core/library/plan-publishing.ts'
import type { LibraryEntry } from '../../../core/library/plan-publishing.ts'
import type { CheckReport } from '../../../shared/check-report.ts'
import { buildSegment, buildSheet } from '../../helpers/build-sheet.ts'

const NOTHING_FOUND: CheckReport = { findings: [], cautions: [] }
const STOP = {
  ...({ ruleId: 'dose-missing', severity: 'stop', startMs: 0, endMs: 1, why: '', source: '' } as const),
  message: 'No dose is said.',
}

function entry(fields: Partial<LibraryEntry> & { name?: string } = {}): LibraryEntry {
  const { name = 'Chair squats', ...more } = fields
  const slug = more.slug ?? 'chair-squats'
  const facts = { slug, name, otherNames: [], kit: [], position: null, regions: [], level: null, audience: [] }
  return {
    ...{ id: 'l1', slug, state: 'published', recordingId: 'other', segmentId: 'x' },
    facts: { ...facts, durationMs: 1000, catalogueId: null },
    ...more,
  }
}

function plan(
  segment: Record<string, unknown>,
  library: LibraryEntry[] = [],
  { report = NOTHING_FOUND, isSame = true } = {},
) {
  const segments = [buildSegment('s1', 0, 30, { exercise: { name: 'Chair squats' }, ...segment })]
  const [planned] = planPublishing({
    ...{ sheet: buildSheet({ segments }), report, recordingId: 'r1', library },
    isSame: () => isSame,
  })
  return planned
}

const OWN_LESSON = { recordingId: 'r1', segmentId: 's1' }

describe('is held back', () => {
  it('what has a stop, also when it is in the library', () => {
    const report = { findings: [{ ...STOP, segmentId: 's1' }], cautions: [] }
    expect(plan({}, [entry(OWN_LESSON)], { report })).toMatchObject({
      ...{ state: 'held', reasons: ['No dose is said.'], rules: [STOP.ruleId], place: SKIP },
    })
  })

  it('everything while a stop stands on the whole class', () => {
    const report = { findings: [{ ...STOP, segmentId: null, message: 'Consent is missing.' }], cautions: [] }
    expect(plan({}, [], { report })).toMatchObject({ state: 'held', reasons: ['Consent is missing.'] })
  })

  it('what has no place in the film', () => {
    const planned = plan({ spans: [] })
    expect(planned?.reasons[0]).toMatch(/no place in the film/)
    expect(planned?.rules).toEqual(['no-place'])
  })

  it('never counts a stop of what is no lesson', () => {
    const report = { findings: [{ ...STOP, segmentId: 's1' }], cautions: [] }
    expect(plan({ use: 'keep' }, [], { report })).toMatchObject({ state: 'keep', reasons: [], place: SKIP })
  })
})

describe('is', () => {
  it.each<[string, LibraryEntry[], boolean, string, string]>([
    ['new where the library lacks it', [], true, 'new', OWN],
    ['new beside another exercise', [entry({ name: 'Side plank' })], true, 'new', OWN],
    ['changed when its marks are others than those shown', [entry(OWN_LESSON)], false, 'changed', OWN],
    ['the same when nothing changed', [entry(OWN_LESSON)], true, 'same', SKIP],
    ['known when another class has taught it', [entry()], true, 'known', SKIP],
    ['known by another name', [entry({ name: 'chair SQUATS' })], true, 'known', SKIP],
    ['new where the lesson from elsewhere is withdrawn', [entry({ state: 'withdrawn' })], true, 'new', OWN],
    ['withdrawn, and stays so', [entry({ ...OWN_LESSON, state: 'withdrawn' })], false, 'withdrawn', SKIP],
  ])('%s', (_what, library, isSame, state, place) => {
    expect(plan({}, library, { isSame })).toMatchObject({ state, place })
  })

  it('left out of the list when a person declined it', () => {
    expect(plan({ state: 'declined' })).toBeUndefined()
  })
})

it('offers the places of lessons that are like it, the same exercise first', () => {
  const library = [
    entry({ id: 'a', slug: 'wall-squats', name: 'Wall squats' }),
    entry({ id: 'b', slug: 'side-plank', name: 'Side plank' }),
    entry({ id: 'c', slug: 'chair-squats' }),
  ]
  const near = plan({}, library)?.near.map(({ id }) => id)
  expect(near?.[0]).toBe('c')
  expect(near).not.toContain('b')
})
