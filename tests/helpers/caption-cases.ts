// Makes captions and chapters for property tests, from plain to nasty.
import fc from 'fast-check'
import type { CaptionCue } from '../../shared/captions.ts'
import type { Chapter } from '../../shared/chapters.ts'

/** A line as a caption may hold it: no control characters, nothing at its ends, not empty. */
const line = fc
  .oneof(
    fc.string({ minLength: 1, maxLength: 40, unit: 'grapheme' }),
    fc.constantFrom(
      '-->',
      '<b>hold</b>',
      '&amp;',
      'A & B',
      '00:00:01.000 --> 00:00:02.000',
      'NOTE x',
      '<v',
      '&lt',
      '1 < 2 > 0',
      'WEBVTT',
      '#',
      '<00:00:01.000>',
    ),
  )
  .map((text) => text.replace(/[\p{Cc}\p{Cs}\u2028\u2029\uFEFF]/gu, '').trim())
  .filter((text) => text !== '')

const time = fc.oneof(fc.integer({ min: 0, max: 20_000 }), fc.integer({ min: 0, max: 400_000_000 }))

/** Captions sorted as a file holds them, ids unique, every text writable. */
export const captionLists: fc.Arbitrary<CaptionCue[]> = fc
  .array(
    fc.record({
      startMs: time,
      lengthMs: fc.integer({ min: 1, max: 9000 }),
      lines: fc.array(line, { minLength: 1, maxLength: 3 }),
      speaker: fc.option(fc.constantFrom('Maya', 'Coach & Co', 'Ann > Bo', 'Dr. Ó'), { nil: null }),
      named: fc.boolean(),
    }),
    { maxLength: 12 },
  )
  .map((list) =>
    list
      .map(({ startMs, lengthMs, lines, speaker, named }, index) => ({
        startMs,
        endMs: startMs + lengthMs,
        lines,
        speaker,
        ...(named ? { id: `cue ${index}` } : {}),
      }))
      .sort((a, b) => a.startMs - b.startMs || b.endMs - a.endMs),
  )

/** Chapters of two levels, disjoint or nested. */
export const chapterLists: fc.Arbitrary<Chapter[]> = fc
  .array(
    fc.record({
      gapMs: fc.integer({ min: 0, max: 5000 }),
      title: line,
      inner: fc.array(fc.record({ title: line, lengthMs: fc.integer({ min: 1, max: 60_000 }) }), { maxLength: 4 }),
      tailMs: fc.integer({ min: 1, max: 5000 }),
    }),
    { maxLength: 6 },
  )
  .map((sections) => {
    const chapters: Chapter[] = []
    let at = 0
    for (const { gapMs, title, inner, tailMs } of sections) {
      const startMs = at + gapMs
      at = startMs
      const inside = inner.map((one): Chapter => {
        const chapter: Chapter = { startMs: at, endMs: at + one.lengthMs, title: one.title, level: 2 }
        at = chapter.endMs
        return chapter
      })
      at += tailMs
      chapters.push({ startMs, endMs: at, title, level: 1 }, ...inside)
    }
    return chapters
  })
