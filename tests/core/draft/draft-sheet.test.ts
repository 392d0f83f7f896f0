// A draft finds the exercises, doses, cues and cautions of a class, and says of each where it comes from.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { LogSheet } from '../../../shared/log-sheet.ts'
import type { Segment } from '../../../shared/log-sheet.ts'
import type { Transcript } from '../../../shared/transcript.ts'
import { MINI_CLASSES } from './mini-classes.ts'
import { MINI_CLASSES_APART } from './mini-classes-apart.ts'

const draft = (text: string): LogSheet => draftSheet({ transcript: parseTranscript(text) })

/** All words that a sheet quotes. */
function quotesOf(sheet: LogSheet): string[] {
  const ofSegment = (segment: Segment): string[] => [
    ...(segment.prescription?.said ?? []).map((quote) => quote.text),
    ...segment.cues.map((cue) => cue.text),
    ...segment.cautions.map((caution) => caution.text),
  ]
  return [...sheet.segments.flatMap(ofSegment), ...sheet.classCautions.map((caution) => caution.text)]
}

const timed = (lines: string[]): Transcript => ({
  kind: 'timed',
  form: 'stamped-text',
  language: 'en',
  durationMs: lines.length * 10_000,
  lines: lines.map((text, index) => ({
    startMs: index * 10_000,
    endMs: (index + 1) * 10_000,
    text,
    words: [],
    speaker: null,
  })),
})

describe('draftSheet on broken or empty input', () => {
  it.each([
    ['no lines', []],
    ['an empty line', ['']],
    ['silence', ['', '', '']],
    ['only marks', ['...', '?!']],
    ['one word', ['hello']],
    ['only chat', ['My brother came round yesterday and we had cake.', 'It was lovely cake.']],
  ])('%s gives a sheet without segments', (_what, lines) => {
    const sheet = draftSheet({ transcript: timed(lines) })
    expect(sheet.segments).toEqual([])
    expect(LogSheet.parse(sheet)).toEqual(sheet)
  })

  it('gives a sound sheet with exact quotes for any jumble of coaching words', () => {
    const pieces = fc.constantFrom(
      'Next up, goblet squats.',
      'okay rows',
      'Feet hip width, sit down and drive up.',
      'Three sets of ten, rest a minute.',
      "Don't let your knees fall in.",
      'If you feel dizzy stop',
      'no, sorry, let me start that again',
      'Back to the rows.',
      'And rest.',
      'My gran does thirty of these',
      'make that eight',
      'The plank.',
    )
    fc.assert(
      fc.property(fc.array(fc.array(pieces, { maxLength: 5 }), { minLength: 1, maxLength: 8 }), (blocks) => {
        const transcript = timed(blocks.map((block) => block.join(' ')))
        const sheet = draftSheet({ transcript })
        expect(LogSheet.parse(sheet)).toEqual(sheet)
        for (const quote of quotesOf(sheet)) {
          expect(transcript.lines.some((line) => line.text.includes(quote))).toBe(true)
        }
        for (const { spans } of sheet.segments) {
          for (const span of spans) expect(span.endMs).toBeGreaterThanOrEqual(span.startMs)
        }
      }),
      { numRuns: 60 },
    )
  })
})

describe.each([...MINI_CLASSES, ...MINI_CLASSES_APART])('a class: $title', ({ transcript, notTaught, ...known }) => {
  const sheet = draft(transcript)
  const taught = known.taught.filter(({ missed }) => missed !== true)

  it('finds what is taught, in order, and nothing else', () => {
    expect(sheet.segments.map((segment) => segment.exercise.catalogueId)).toEqual(taught.map(({ id }) => id))
    taught.forEach(({ name }, index) => {
      expect(sheet.segments[index]?.exercise.name).toMatch(name)
    })
  })

  it('gives each exercise the dose said for it', () => {
    taught.forEach(({ said }, index) => {
      if (said === null) return
      const quotes = sheet.segments[index]?.prescription?.said.map((quote) => quote.text).join(' | ') ?? 'no dose'
      expect(quotes.toLowerCase()).toContain(said.toLowerCase())
    })
  })

  it('makes no lesson of what is only mentioned', () => {
    for (const name of notTaught) {
      expect(sheet.segments.filter((segment) => name.test(segment.exercise.name))).toEqual([])
    }
  })

  it('gives spans that do not overlap', () => {
    const spans = sheet.segments.flatMap((segment) => segment.spans).sort((a, b) => a.startMs - b.startMs)
    spans.forEach((span, index) => {
      const next = spans[index + 1]
      if (next) expect(span.endMs).toBeLessThanOrEqual(next.startMs)
    })
  })
})

describe('what a draft says of itself', () => {
  const text = MINI_CLASSES[0]?.transcript ?? ''

  it('is the same each time', () => {
    expect(draft(text)).toEqual(draft(text))
  })

  it('marks everything as proposed by the draft, with a confidence and a rule', () => {
    const { segments, classCautions } = draft(text)
    const marks = [
      ...segments,
      ...segments.flatMap(({ cues }) => cues),
      ...segments.flatMap(({ cautions }) => cautions),
      ...segments.flatMap(({ prescription }) => (prescription ? [prescription] : [])),
      ...classCautions,
    ]
    for (const mark of marks) {
      expect(mark).toMatchObject({ origin: 'draft', state: 'proposed' })
      expect(mark.confidence).toBeGreaterThan(0)
      expect(mark.ruleId).toMatch(/^[a-z-]+$/)
    }
  })

  it('numbers segments and cues from one', () => {
    const { segments } = draft(text)
    expect(segments.map(({ id }) => id)).toEqual(segments.map((_, index) => `seg-${String(index + 1)}`))
    const cues = segments.flatMap(({ cues }) => cues.map(({ id }) => id))
    expect(cues).toEqual(cues.map((_, index) => `cue-${String(index + 1)}`))
  })

  it('takes title, audience, length and source as given', () => {
    const source = { sha256: 'a'.repeat(64), durationMs: 200_000 }
    const sheet = draftSheet({
      transcript: parseTranscript(text),
      title: 'Monday lifting',
      audience: ['beginners'],
      durationMs: 200_000,
      source,
    })
    expect(sheet).toMatchObject({ title: 'Monday lifting', audience: ['beginners'], durationMs: 200_000, source })
  })

  it('keeps sections without gaps or overlaps over the whole class', () => {
    const { sections, durationMs } = draft(text)
    expect(sections[0]?.startMs).toBe(0)
    expect(sections.at(-1)?.endMs).toBe(durationMs)
    sections.slice(1).forEach((section, index) => {
      expect(section.startMs).toBe(sections[index]?.endMs)
    })
  })
})

describe('single habits of coaches', () => {
  it('proposes to cut out a slip and its retake', () => {
    const [segment] = draft(
      '[0:00] Hello.\n[0:10] Next, the calf stretch. Calf stretch. Face the chair, no, sorry, let me start that again. Calf stretch. Face the wall, hands flat. Step one foot back and press the heel down. Twenty seconds each side.\n[0:40] And rest.',
    ).segments
    expect(segment?.cutOuts).toHaveLength(1)
    expect(segment?.cutOuts[0]?.why).toMatch(/start that again/)
    const cut = segment?.cutOuts[0]
    const main = segment?.spans[0]
    expect(cut && main && cut.startMs >= main.startMs && cut.endMs < main.endMs).toBe(true)
  })

  it('lets a later correction win, even while another exercise is taught', () => {
    const sheet = draft(
      '[0:00] First, heel raises. Stand tall behind your chair. Lift your heels and lower them. Ten of those. Keep hold of the chair.\n[0:30] And rest. Next, the wall push up. Hands flat on the wall. Bend your elbows and press away. Do eight. Oh, the heel raises, I said ten earlier, make that six.\n[1:00] Breathe out as you press. And rest.',
    )
    expect(sheet.segments.map(({ prescription }) => prescription?.reps)).toEqual([
      expect.objectContaining({ min: 6, max: 6 }),
      expect.objectContaining({ min: 8, max: 8 }),
    ])
  })

  it('takes a return as a further span outside the clip', () => {
    const [raises] = draft(
      '[0:00] Heel raises. Stand tall, hands on the chair. Lift both heels, then lower slowly. Twelve of those.\n[0:30] And rest. Side steps. Stand with soft knees. Step to the right, then bring the feet together. Ten each way.\n[1:00] And rest. Back to the heel raises, one more set. Lift your heels and lower slowly. Keep hold of the chair.\n[1:20] And relax.',
    ).segments
    expect(raises?.exercise.catalogueId).toBe('heel-raise')
    expect(raises?.spans.map((span) => span.inClip)).toEqual([true, false])
  })

  it('takes a leg, a way or the class for no exercise', () => {
    const { segments } = draft(
      '[0:00] Next, the knee extension. Sit right back. Straighten the right knee, and slowly down. Ten on each leg.\n[0:25] Now the left leg, straighten, and slowly down. Breathe out, squeeze, then ease forwards. Sit tall.\n[0:45] Well done, that is the whole class. Do it twice a week.',
    )
    expect(segments.map(({ exercise }) => exercise.name)).toEqual(['Knee extension'])
  })

  it('links the two of a superset', () => {
    const sheet = draft(
      '[0:00] A pair now, goblet squats, eight of them, and push ups, ten, back to back, three rounds.\n[0:20] Goblet squats. Hold the bell at your chest, feet wide. Sit down and drive up.\n[0:50] Straight into push ups. Hands under your shoulders. Lower your chest and press away.\n[1:20] And rest.',
    )
    expect(sheet.segments.map(({ prescription }) => [prescription?.scheme, prescription?.groupWith])).toEqual([
      ['superset', ['seg-2']],
      ['superset', ['seg-1']],
    ])
  })

  it('keeps a caution said to everyone as a caution of the class', () => {
    const { classCautions } = draft(
      '[0:00] Hello everyone. If you feel dizzy at any point, stop and sit down.\n[0:20] Heel raises. Stand tall, hands on the chair. Lift both heels and lower. Ten times.',
    )
    expect(classCautions.length).toBeGreaterThan(0)
    for (const caution of classCautions) expect(caution).toMatchObject({ scope: 'class', source: 'spoken' })
  })
})

describe('a class plan', () => {
  const sheet = draft('# Tuesday\nGoblet squat: 3 x 10\nPlank: 3 x 30\nGarden gate opener\n')

  it('gives segments without spans, with doses from their text', () => {
    expect(sheet.title).toBe('Tuesday')
    expect(sheet.segments.map(({ exercise, spans }) => [exercise.name, exercise.catalogueId, spans])).toEqual([
      ['Goblet squat', 'goblet-squat', []],
      ['Plank', 'plank', []],
      ['Garden gate opener', null, []],
    ])
    expect(sheet.segments.map(({ prescription }) => prescription?.said.map(({ text }) => text) ?? null)).toEqual([
      ['3 x 10'],
      ['3 x 30'],
      null,
    ])
  })

  it('reads a bare number as a hold where the exercise is still', () => {
    expect(sheet.segments[1]?.prescription?.holdSeconds).toMatchObject({ min: 30, max: 30 })
  })
})
