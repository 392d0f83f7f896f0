// Chapters as text: WebVTT, ffmetadata, a description, JSON-LD.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readVtt } from '../../../core/captions/read-vtt.ts'
import { flattenChapters } from '../../../core/chapters/flatten-chapters.ts'
import { writeChaptersVtt } from '../../../core/chapters/write-chapters-vtt.ts'
import { writeClassDescription, writeLessonDescription } from '../../../core/chapters/write-description.ts'
import { writeFfmetadata } from '../../../core/chapters/write-ffmetadata.ts'
import { buildJsonLd, isoDuration, writeJsonLd } from '../../../core/chapters/write-json-ld.ts'
import type { Chapter } from '../../../shared/chapters.ts'
import { Lesson, NOTICE } from '../../../shared/lesson.ts'
import { buildPrescription } from '../../../shared/log-sheet.ts'
import { chapterLists } from '../../helpers/caption-cases.ts'

const chapter = (startMs: number, endMs: number, title = 'x', level: 1 | 2 = 1): Chapter => ({
  startMs,
  endMs,
  title,
  level,
})
const nested = [
  chapter(0, 40_000, 'Warm-up'),
  chapter(5000, 20_000, 'March', 2),
  chapter(20_000, 40_000, 'Halo', 2),
  chapter(45_000, 60_000, 'Squat'),
]

describe('writeChaptersVtt', () => {
  it('refuses chapters that overlap in part', () => {
    expect(() => writeChaptersVtt([chapter(0, 10), chapter(5, 15)])).toThrow('overlap in part')
    expect(() => writeChaptersVtt([chapter(0, 20), chapter(0, 10), chapter(5, 15)])).toThrow('overlap in part')
  })

  it('keeps nesting, outer before inner', () => {
    expect(writeChaptersVtt([...nested].reverse())).toBe(
      'WEBVTT\n\nchapter-1\n00:00:00.000 --> 00:00:40.000\nWarm-up\n\nchapter-2\n00:00:05.000 --> 00:00:20.000\nMarch\n\nchapter-3\n00:00:20.000 --> 00:00:40.000\nHalo\n\nchapter-4\n00:00:45.000 --> 00:01:00.000\nSquat\n',
    )
  })

  it.each([
    ['a\nb', 'a b'],
    ['', 'Chapter'],
    [' \0 ', 'Chapter'],
    ['Push & pull <fast> -->', 'Push & pull <fast> -->'],
  ])('the title %j is read back as %j', (title, read) => {
    expect(readVtt(writeChaptersVtt([chapter(0, 1, title)])).cues[0]?.lines).toEqual([read])
  })

  it('reading gives what was written', () => {
    fc.assert(
      fc.property(chapterLists, (chapters) => {
        const { cues, problems } = readVtt(writeChaptersVtt(chapters))
        expect(problems).toEqual([])
        expect(cues.map((cue) => [cue.startMs, cue.endMs, cue.lines[0]])).toEqual(
          chapters.map((one) => [one.startMs, one.endMs, one.title.replace(/\s+/g, ' ')]),
        )
      }),
    )
  })
})

describe('flattenChapters', () => {
  const cases: [string, Chapter[], number | null, [string, number, number][]][] = [
    ['none', [], 1000, []],
    [
      'nested, gaps closed',
      nested,
      70_000,
      [
        ['Warm-up', 0, 5000],
        ['March', 5000, 20_000],
        ['Halo', 20_000, 45_000],
        ['Squat', 45_000, 70_000],
      ],
    ],
    ['an exercise that starts with its section', [chapter(0, 20, 'S'), chapter(0, 10, 'E', 2)], null, [['E', 0, 20]]],
    [
      'a long opening',
      [chapter(5000, 9000, 'E')],
      null,
      [
        ['Start', 0, 5000],
        ['E', 5000, 9000],
      ],
    ],
    ['a short opening', [chapter(500, 9000, 'E')], null, [['E', 0, 9000]]],
  ]
  it.each(cases)('%s', (_name, chapters, durationMs, rows) => {
    expect(flattenChapters(chapters, durationMs).map((one) => [one.title, one.startMs, one.endMs])).toEqual(rows)
  })

  it('any chapters become one row without gaps', () => {
    fc.assert(
      fc.property(chapterLists, (chapters) => {
        const flat = flattenChapters(chapters)
        flat.forEach((one, index) => {
          expect(one.startMs).toBe(index === 0 ? 0 : flat[index - 1]?.endMs)
          expect(one.endMs).toBeGreaterThan(one.startMs)
        })
      }),
    )
  })
})

describe('writeFfmetadata', () => {
  // Source: ffmpeg documentation, "Metadata": special characters = ; # \ and newline are escaped with a backslash.
  it('escapes what the format uses', () => {
    expect(writeFfmetadata([chapter(0, 1500, 'a=b;c#d\\e')], { title: 'Squat; deep' })).toBe(
      ';FFMETADATA1\ntitle=Squat\\; deep\n[CHAPTER]\nTIMEBASE=1/1000\nSTART=0\nEND=1500\ntitle=a\\=b\\;c\\#d\\\\e\n',
    )
  })

  it('a title that looks like a section is a title', () => {
    expect(writeFfmetadata([chapter(0, 1, '[CHAPTER]\nSTART=5')])).toContain('title=[CHAPTER] START\\=5\n')
  })

  it('no chapters', () => {
    expect(writeFfmetadata([])).toBe(';FFMETADATA1\n')
  })
})

const lesson = Lesson.parse({
  format: 'repslate-lesson',
  version: 1,
  slug: 'goblet-squat',
  name: 'Goblet squat',
  alsoCalled: [],
  audience: [],
  equipment: ['kettlebell'],
  dose: {
    text: '3 x 8-10, rest 60 s',
    spoken: 'Three sets',
    prescription: buildPrescription({
      sets: { min: 3, max: 3 },
      reps: { min: 8, max: 10 },
      restSeconds: { min: 60, max: 60 },
      effort: 'steady',
    }),
  },
  cautions: [{ hazard: 'knee-tracking', text: 'Keep your knees over\nyour toes.', concerns: 'everyone', said: true }],
  takeCare: [{ hazard: 'k1', text: 'Go only as low as is comfortable.', concerns: 'sore knees', said: false }],
  movement: [],
  easier: ['Sit to a chair.', 'Sit to a chair.'],
  harder: [],
  notice: NOTICE,
  from: { title: 'Class', segmentId: 's1', recordingSha256: '0', spans: [] },
  clip: { file: 'clip.mp4', sha256: '0', durationMs: 61_500, frames: 1, poster: null },
  captions: 'c.vtt',
  chapters: 'ch.vtt',
  description: 'd.txt',
})

describe('descriptions', () => {
  it('a lesson', () => {
    expect(writeLessonDescription(lesson, [chapter(0, 20_000, 'Set-up'), chapter(20_000, 61_500, 'Movement')])).toBe(
      `Goblet squat

Dose: 3 x 8-10, rest 60 s

You need: kettlebell

Take care:
- Keep your knees over your toes.

Take care if this concerns you:
- Go only as low as is comfortable. (sore knees)

Easier:
- Sit to a chair.

0:00 Set-up
0:20 Movement

${NOTICE}
`,
    )
  })

  it('a lesson without dose, cautions and chapters still says what it is not', () => {
    const bare = { ...lesson, dose: null, equipment: [], cautions: [], takeCare: [], easier: [] }
    expect(writeLessonDescription(bare, [])).toBe(`Goblet squat\n\n${NOTICE}\n`)
  })

  it('a class, its times from 0:00', () => {
    expect(writeClassDescription({ title: 'Steady', classCautions: [], durationMs: 4_000_000 }, nested)).toBe(
      `Steady\n\n0:00 Warm-up\n0:05 March\n0:20 Halo\n0:45 Squat\n\n${NOTICE}\n`,
    )
  })
})

describe('JSON-LD', () => {
  const at = { contentUrl: 'https://example.org/a.mp4', uploadDate: '2026-05-14' }

  // Source: ISO 8601 durations; schema.org's own example "P10M" on VideoObject would be ten months.
  it.each([
    [0, 'PT0S'],
    [600_000, 'PT10M'],
    [90_500, 'PT1M30.5S'],
    [3_600_000, 'PT1H'],
    [3_661_001, 'PT1H1M1.001S'],
    [59_999, 'PT59.999S'],
  ])('%i ms is %s', (ms, text) => {
    expect(isoDuration(ms)).toBe(text)
  })

  it('a video with clips and an exercise plan', () => {
    expect(buildJsonLd(lesson, [chapter(0, 20_000, 'Set-up'), chapter(20_000, 61_500, 'Movement')], at)).toMatchObject({
      '@type': 'VideoObject',
      name: 'Goblet squat',
      duration: 'PT1M1.5S',
      uploadDate: '2026-05-14',
      hasPart: [
        { '@type': 'Clip', name: 'Set-up', startOffset: 0, endOffset: 20 },
        { '@type': 'Clip', name: 'Movement', startOffset: 20, endOffset: 61.5 },
      ],
      about: {
        '@type': 'ExercisePlan',
        repetitions: { '@type': 'QuantitativeValue', minValue: 8, maxValue: 10 },
        restPeriods: '60 s',
        intensity: 'steady',
        additionalVariable: '3 x 8-10, rest 60 s',
      },
    })
  })

  it('no dose, no plan', () => {
    expect(buildJsonLd({ ...lesson, dose: null }, [], at)).not.toHaveProperty('about')
  })

  it('a name cannot end the script element it stands in', () => {
    const text = writeJsonLd({ ...lesson, name: '</script><script>' }, [], at)
    expect(text).not.toContain('<')
    expect((JSON.parse(text) as { name: string }).name).toBe('</script><script>')
  })
})
