// The class ribbon: what is published, what is missing and where an exercise comes back, in shapes and in words.
import { describe, expect, it } from 'vitest'
import type { CautionCoverage, CheckReport } from '../../shared/check-report.ts'
import { classRibbon } from '../../views/pages/pictures/draw-class-ribbon.ts'
import type { RibbonOptions } from '../../views/pages/pictures/draw-class-ribbon.ts'
import { cautionNotches, describeClass, listClass, sharesOfLanes } from '../../views/pages/pictures/read-class.ts'
import { buildCaution, buildSegment, buildSheet, span } from '../helpers/build-sheet.ts'

const sheet = buildSheet({
  sections: [
    { title: 'Warm-up', startMs: 0, endMs: 60_000 },
    { title: 'Strength & balance', startMs: 60_000, endMs: 600_000 },
  ],
  segments: [
    buildSegment('a', 10, 50, { exercise: { name: 'March' } }),
    buildSegment('b', 60, 120, {
      exercise: { name: 'Squat' },
      spans: [span(60, 120), span(300, 330, { inClip: false })],
      cautions: [buildCaution('knee-pain', { source: 'spoken', atMs: 75_000 })],
    }),
    buildSegment('c', 130, 200, { exercise: { name: 'Plank' }, use: 'keep' }),
    buildSegment('d', 210, 260, { exercise: { name: 'Talk' }, use: 'leave-out' }),
    buildSegment('e', 400, 450, { exercise: { name: 'Wrong' }, state: 'declined' }),
  ],
})

const row = (hazard: string, fields: Partial<CautionCoverage>): CautionCoverage => ({
  segmentId: 'b',
  hazard,
  ruleId: `needs-${hazard}`,
  level: 'must',
  state: 'spoken',
  inClip: true,
  concerns: '',
  ...fields,
})
const report: CheckReport = {
  findings: [],
  cautions: [
    row('knee-pain', {}),
    row('fall-risk', { state: 'missing', inClip: false }),
    row('k32', { level: 'info', state: 'missing' }),
  ],
}
const published = new Set(['a'])
const options: RibbonOptions = { size: 'page', published, here: null, words: 'A class' }
const draw = (fields: Partial<RibbonOptions> = {}): string => classRibbon(sheet, report, { ...options, ...fields })
const count = (svg: string, look: string): number => svg.split(`class="${look}"`).length - 1

describe('a ribbon', () => {
  it.each(['row', 'page'] as const)('as a %s is drawn as in its file', async (size) => {
    await expect(`${draw({ size })}\n`).toMatchFileSnapshot(`../fixtures/golden/pictures/ribbon-${size}.svg`)
  })

  it('shows what is published solid, what is not hatched, what is kept bare, what is left out in outline', () => {
    const svg = draw()
    const looks = ['r-block r-solid', 'r-hatch', 'r-block r-bare', 'r-block r-out']
    // two spans of the squat are bare and hatched; the plank is bare
    expect(looks.map((look) => count(svg, look))).toEqual([1, 2, 3, 1])
  })

  it('names a section only from the width on at which its whole name has room', () => {
    const sections = [
      { title: 'Warm-up', startMs: 0, endMs: 60_000 },
      { title: 'Strength and balance', startMs: 60_000, endMs: 150_000 },
      { title: 'Finish', startMs: 594_000, endMs: 600_000 },
    ]
    const svg = classRibbon({ ...sheet, sections }, report, options)
    expect(svg).toMatch(/class="r-from-40" x="0" y="70">Warm-up</)
    expect(svg).toMatch(/class="r-from-52" x="0" y="70">Strength and balance</)
    expect(svg).not.toContain('Finish')
    // and no band is left empty for names that are not there
    expect(classRibbon({ ...sheet, sections: [] }, report, options)).toContain('height="58"')
  })

  it('leaves out what was declined, in shapes and in words', () => {
    expect(draw()).not.toContain('x="66.667%"')
    expect(listClass(sheet, report, published).join()).not.toContain('Wrong')
  })

  it('puts things where they are in time', () => {
    // 130 s of 600 s, 70 s long
    expect(draw()).toContain('class="r-block r-bare" x="21.667%" y="16" width="11.667%"')
  })

  it('colours the one exercise that the page is about, wherever it is taught', () => {
    expect(count(draw({ here: 'b' }), 'r-block r-here')).toBe(2)
  })

  it('has no length to divide by, and is still drawn', () => {
    const empty = buildSheet({ durationMs: 0 })
    expect(classRibbon(empty, { findings: [], cautions: [] }, options)).not.toMatch(/NaN|Infinity/)
  })

  it('keeps the names of sections harmless', () => {
    expect(draw()).toContain('>Strength &amp; balance</text>')
  })

  it('is silent where the words stand beside it', () => {
    expect(draw({ words: '' })).toContain('aria-hidden="true"')
    expect(draw({ words: '' })).not.toContain('role="img"')
  })
})

describe('notches', () => {
  it('lie where the caution was said, else on the teaching; missing ones are hollow and come last', () => {
    expect(cautionNotches(sheet, report)).toEqual([
      { atMs: 75_000, missing: false },
      { atMs: 105_000, missing: true },
    ])
  })

  it('are hollow when what was said is not in the clip', () => {
    const outside = { ...report, cautions: [row('knee-pain', { inClip: false })] }
    expect(cautionNotches(sheet, outside)).toEqual([{ atMs: 75_000, missing: true }])
  })
})

it('lines of one lane never touch', () => {
  const line = (startMs: number, endMs: number) => ({ startMs, endMs })
  expect(sharesOfLanes([line(0, 10), line(5, 20), line(11, 30), line(12, 13)])).toEqual([0, 1, 0, 2])
})

it('the class in words says how far it is', () => {
  expect(describeClass(sheet, report, published)).toBe(
    'Class of 10:00: 4 exercises in 2 sections, 1 published, 1 of 2 cautions covered.',
  )
  expect(listClass(sheet, report, published)).toEqual([
    'March, 0:10 to 0:50: published',
    'Squat, 1:00 to 2:00 and 5:00 to 5:30: not published, 1 caution missing',
    'Plank, 2:10 to 3:20: kept for search',
    'Talk, 3:30 to 4:20: left out',
  ])
})
