// Names of the chapters of one lesson: unlike each other, and saying what comes.
import { describe, expect, it } from 'vitest'
import { CHAPTER_TITLES } from '../../../core/chapters/chapter-titles.ts'
import { nameLessonChapters } from '../../../core/chapters/name-lesson-chapters.ts'
import type { CueKind } from '../../../shared/log-sheet.ts'

type Said = readonly [kind: CueKind | null, text: string]

const names = (...said: Said[]): string[] =>
  nameLessonChapters(
    said.map(([kind, text]) =>
      kind === null
        ? { title: CHAPTER_TITLES.laterPart, cue: null }
        : { title: CHAPTER_TITLES.kinds[kind], cue: { kind, text } },
    ),
  )

describe('nameLessonChapters', () => {
  const cases: [string, Said[], string[]][] = [
    ['none', [], []],
    [
      'nothing said twice over: numbers',
      [
        ['execution', ''],
        ['execution', '  '],
        ['execution', ' ?! '],
      ],
      ['Movement', 'Movement (2)', 'Movement (3)'],
    ],
    [
      'two joins, which have no words',
      [
        [null, ''],
        [null, ''],
      ],
      ['Again, later in the class', 'Again, later in the class (2)'],
    ],
    [
      'the very same words twice',
      [
        ['breathing', 'Breathe'],
        ['breathing', 'Breathe out.'],
        ['breathing', 'Breathe out.'],
      ],
      ['Breathing', 'Breathing: Breathe out', 'Breathing (2)'],
    ],
    [
      'names that differ stay',
      [
        ['setup', 'a'],
        ['execution', 'b'],
        ['breathing', 'c'],
      ],
      ['Set-up', 'Movement', 'Breathing'],
    ],
    [
      'a later one says what it is about',
      [
        ['execution', 'Lift the knee'],
        ['breathing', 'Breathe out'],
        ['tempo', 'Slower than that'],
        ['caution', 'Stop on pain'],
        ['range', 'Only as high as the hip'],
      ],
      ['Movement', 'Breathing', 'Pace', 'Take care', 'How far'],
    ],
    [
      'the plain name of another is not taken from it',
      [
        ['equipment', 'Take the band'],
        ['caution', 'Stop on pain'],
        ['setup', 'Sit tall'],
      ],
      ['Set-up', 'Take care', 'Set-up: Sit tall'],
    ],
    [
      'long words end at a clause',
      [
        ['caution', 'Stop on pain'],
        ['caution', 'If your shoulder pinches, stop, or lift only as high as the chin.'],
        ['caution', 'Keep one hand on the back of the chair the whole time'],
        ['caution', `${'ha'.repeat(40)} ha`],
      ],
      [
        'Take care',
        'Take care: If your shoulder pinches, stop …',
        'Take care: Keep one hand on the back …',
        'Take care (2)',
      ],
    ],
  ]
  it.each(cases)('%s', (_, said, expected) => {
    expect(names(...said)).toEqual(expected)
  })
})
