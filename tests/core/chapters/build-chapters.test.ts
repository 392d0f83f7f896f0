// Chapters of a class and of a lesson: what is left out, what nests, where they start and end.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { buildClassChapters, buildLessonChapters } from '../../../core/chapters/build-chapters.ts'
import type { Chapter } from '../../../shared/chapters.ts'
import type { CueKind, Segment } from '../../../shared/log-sheet.ts'
import { CUE_KINDS, LogSheet, Segment as SegmentSchema } from '../../../shared/log-sheet.ts'

type Span = [start: number, end: number]

const segment = (name: string, spans: Span[], fields: Partial<Segment> = {}): Segment => ({
  ...SegmentSchema.parse({
    id: name,
    exercise: { name },
    spans: spans.map(([startMs, endMs]) => ({ startMs, endMs })),
  }),
  ...fields,
})
const sheet = (segments: Segment[], sections: [string, number, number][] = []): LogSheet => ({
  ...LogSheet.parse({
    format: 'repslate-log-sheet',
    version: 1,
    durationMs: 100_000,
    sections: sections.map(([title, startMs, endMs]) => ({ title, startMs, endMs })),
  }),
  segments,
})
const rows = (chapters: readonly Chapter[]) =>
  chapters.map(({ title, startMs, endMs, level }) => `${'  '.repeat(level - 1)}${title} ${startMs}-${endMs}`)

describe('buildClassChapters', () => {
  const cases: [string, LogSheet, string[]][] = [
    ['an empty sheet', sheet([]), []],
    ['a segment without spans', sheet([segment('Squat', [])]), []],
    ['a span of no length', sheet([segment('Squat', [[5, 5]]), segment('Plank', [[9, 7]])]), []],
    [
      'declined and left out',
      sheet([
        segment('Squat', [[0, 10]], { state: 'declined' }),
        segment('Chat', [[10, 20]], { use: 'leave-out' }),
        segment('Plank', [[20, 30]], { use: 'keep' }),
      ]),
      ['Plank 20-30'],
    ],
    [
      'in order of time',
      sheet([segment('Plank', [[20, 30]]), segment('Squat', [[0, 10]])]),
      ['Squat 0-10', 'Plank 20-30'],
    ],
    [
      'a return',
      sheet([
        segment('Squat', [
          [0, 10],
          [40, 50],
        ]),
        segment('Plank', [[20, 30]]),
      ]),
      ['Squat 0-10', 'Plank 20-30', 'Squat (again) 40-50'],
    ],
    [
      'a short look before the main teaching',
      sheet([
        segment('Squat', [
          [20, 30],
          [0, 5],
        ]),
      ]),
      ['Squat (a look ahead) 0-5', 'Squat 20-30'],
    ],
    [
      'two of one name, a name that is numbered by hand, and returns to both',
      sheet([
        segment('Plank', [
          [0, 10],
          [40, 50],
          [60, 70],
        ]),
        segment('Plank', [[20, 25]]),
        segment('Plank (2)', [[30, 35]]),
      ]),
      ['Plank 0-10', 'Plank (3) 20-25', 'Plank (2) 30-35', 'Plank (again) 40-50', 'Plank (again 2) 60-70'],
    ],
    [
      'touching spans of one exercise',
      sheet([
        segment('Squat', [
          [0, 10],
          [10, 20],
        ]),
      ]),
      ['Squat 0-20'],
    ],
    [
      'two that overlap',
      sheet([segment('Squat', [[0, 15]]), segment('Plank', [[10, 20]])]),
      ['Squat 0-10', 'Plank 10-20'],
    ],
    [
      'two that start together, and one inside the first',
      sheet([segment('Squat', [[0, 10]]), segment('Circuit', [[0, 20]]), segment('Plank', [[5, 8]])]),
      ['Squat 0-5', 'Plank 5-8', 'Circuit 10-20'],
    ],
    [
      'exercises inside sections',
      sheet(
        [segment('Squat', [[5, 10]]), segment('Plank', [[30, 40]])],
        [
          ['Warm-up', 0, 20],
          ['Strength', 20, 50],
        ],
      ),
      ['Warm-up 0-20', '  Squat 5-10', 'Strength 20-50', '  Plank 30-40'],
    ],
    [
      'an exercise outside every section',
      sheet([segment('Squat', [[5, 10]]), segment('Plank', [[60, 70]])], [['Warm-up', 0, 20]]),
      ['Warm-up 0-20', '  Squat 5-10', 'Plank 60-70'],
    ],
    [
      'a section that ends inside an exercise moves to its nearer edge',
      sheet(
        [segment('Squat', [[5, 22]])],
        [
          ['Warm-up', 0, 20],
          ['Strength', 20, 50],
        ],
      ),
      ['Warm-up 0-22', '  Squat 5-22', 'Strength 22-50'],
    ],
    [
      'a section inside one exercise goes',
      sheet([segment('Squat', [[0, 100]])], [['Warm-up', 60, 80]]),
      ['Squat 0-100'],
    ],
    [
      'sections that overlap',
      sheet(
        [],
        [
          ['Warm-up', 0, 30],
          ['Strength', 20, 50],
        ],
      ),
      ['Warm-up 0-20', 'Strength 20-50'],
    ],
  ]
  it.each(cases)('%s', (_name, given, expected) => {
    expect(rows(buildClassChapters(given))).toEqual(expected)
  })

  it('any sheet gives chapters that are disjoint or nested, sorted, and at most two deep', () => {
    const span = fc
      .tuple(fc.integer({ min: 0, max: 1000 }), fc.integer({ min: -5, max: 300 }))
      .map(([start, length]): Span => [start, Math.max(0, start + length)])
    const any = fc.record({
      segments: fc.array(fc.array(span, { maxLength: 3 }), { maxLength: 8 }),
      sections: fc.array(span, { maxLength: 5 }),
    })
    fc.assert(
      fc.property(any, ({ segments, sections }) => {
        const chapters = buildClassChapters(
          sheet(
            segments.map((spans, index) => segment(`E${index % 3}`, spans)),
            sections.map(([start, end], index) => [`S${index}`, start, end]),
          ),
        )
        const names = chapters.map(({ level, title }) => `${level} ${title}`)
        expect(new Set(names).size).toBe(names.length)
        chapters.forEach((a, index) => {
          expect(a.endMs).toBeGreaterThan(a.startMs)
          for (const b of chapters.slice(index + 1)) {
            expect(b.startMs).toBeGreaterThanOrEqual(a.startMs)
            const apart = b.startMs >= a.endMs
            const inside = b.endMs <= a.endMs && a.level === 1 && b.level === 2
            expect(apart || inside).toBe(true)
          }
        })
      }),
      { numRuns: 500 },
    )
  })
})

const lesson = (cues: [CueKind, number][], spans: Span[] = [[0, 60_000]]): Segment =>
  segment('Squat', spans, {
    cues: cues.map(([kind, startMs], index) => ({
      origin: 'person',
      state: 'accepted',
      confidence: null,
      ruleId: null,
      id: `c${index}`,
      kind,
      startMs,
      endMs: startMs + 1000,
      text: kind,
    })),
  })
const range = ([startMs, endMs]: Span) => ({ startMs, endMs })

describe('buildLessonChapters', () => {
  const cases: [string, Segment, Span[], string[]][] = [
    ['nothing kept', lesson([['setup', 0]]), [], []],
    ['no cues', lesson([]), [[0, 60_000]], ['The exercise 0-60000']],
    [
      'from set-up to options; the first starts at 0',
      lesson([
        ['setup', 3000],
        ['execution', 15_000],
        ['range', 18_000],
        ['breathing', 30_000],
        ['easier', 45_000],
        ['harder', 50_000],
      ]),
      [[0, 60_000]],
      ['Set-up 0-15000', 'Movement 15000-30000', 'Breathing 30000-45000', 'Easier and harder 45000-60000'],
    ],
    [
      'times are the clip’s',
      lesson(
        [
          ['setup', 100_000],
          ['execution', 120_000],
        ],
        [[100_000, 140_000]],
      ),
      [[100_000, 140_000]],
      ['Set-up 0-20000', 'Movement 20000-40000'],
    ],
    [
      'cues outside the clip count for nothing',
      lesson([
        ['breathing', 1000],
        ['setup', 31_000],
        ['easier', 90_000],
      ]),
      [[30_000, 60_000]],
      ['Set-up 0-30000'],
    ],
    [
      'too short at the end',
      lesson([
        ['setup', 0],
        ['caution', 59_000],
      ]),
      [[0, 60_000]],
      ['Set-up 0-60000'],
    ],
    [
      'too short in the middle',
      lesson([
        ['setup', 0],
        ['breathing', 1000],
        ['execution', 10_000],
      ]),
      [[0, 20_000]],
      ['Set-up 0-10000', 'Movement 10000-20000'],
    ],
    [
      'a later part of the class',
      lesson(
        [
          ['setup', 0],
          ['execution', 10_000],
          ['breathing', 90_000],
        ],
        [
          [0, 20_000],
          [80_000, 100_000],
        ],
      ),
      [
        [0, 20_000],
        [80_000, 100_000],
      ],
      ['Set-up 0-10000', 'Movement 10000-20000', 'Again, later in the class 20000-30000', 'Breathing 30000-40000'],
    ],
    [
      'a cut-out is no later part',
      lesson([
        ['setup', 0],
        ['execution', 15_000],
      ]),
      [
        [0, 5000],
        [10_000, 30_000],
      ],
      ['Set-up 0-10000', 'Movement 10000-25000'],
    ],
  ]
  it.each(cases)('%s', (_name, given, ranges, expected) => {
    expect(rows(buildLessonChapters(given, ranges.map(range)))).toEqual(expected)
  })

  it('a declined cue counts for nothing', () => {
    const given = lesson([
      ['setup', 0],
      ['breathing', 30_000],
    ])
    given.cues[1]!.state = 'declined'
    expect(rows(buildLessonChapters(given, [range([0, 60_000])]))).toEqual(['Set-up 0-60000'])
  })

  it('any lesson is covered from 0 to its end, each chapter 2 s or more', () => {
    const cues = fc.array(fc.tuple(fc.constantFrom(...CUE_KINDS), fc.integer({ min: 0, max: 60_000 })), {
      maxLength: 30,
    })
    const ranges = fc.array(fc.tuple(fc.integer({ min: 0, max: 3000 }), fc.integer({ min: 1, max: 20_000 })), {
      minLength: 1,
      maxLength: 4,
    })
    fc.assert(
      fc.property(cues, ranges, fc.boolean(), (list, parts, oneSpan) => {
        let at = 0
        const kept = parts.map(([gap, length]): Span => {
          const start = at + gap
          at = start + length
          return [start, at]
        })
        const chapters = buildLessonChapters(lesson(list, oneSpan ? [[0, at]] : kept), kept.map(range))
        const total = kept.reduce((sum, [start, end]) => sum + end - start, 0)
        expect(chapters[0]?.startMs).toBe(0)
        expect(chapters.at(-1)?.endMs).toBe(total)
        expect(new Set(chapters.map(({ title }) => title)).size).toBe(chapters.length)
        chapters.forEach((chapter, index) => {
          if (index > 0) expect(chapter.startMs).toBe(chapters[index - 1]?.endMs)
          if (chapters.length > 1) expect(chapter.endMs - chapter.startMs).toBeGreaterThanOrEqual(2000)
        })
      }),
      { numRuns: 500 },
    )
  })
})
