// Cues are tagged clause by clause in exact words; what is no cue stays out.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { tagCues } from '../../../core/draft/tag-cues.ts'
import { CUE_KINDS } from '../../../shared/log-sheet.ts'
import type { CueKind } from '../../../shared/log-sheet.ts'

const kinds = (text: string): CueKind[] => [...new Set(tagCues(text).map((cue) => cue.kind))]

describe('tagCues', () => {
  it.each(['', ' ', '...', '?!', '12', 'um', '🏋️‍♀️', ',,,,'])('finds nothing in %j', (text) => {
    expect(tagCues(text)).toEqual([])
  })

  it.each([
    ['counting', 'One, two, three, four.'],
    ['counting down', 'Five, four, three, two, last one.'],
    ['time calls', 'Ten seconds to go.'],
    ['praise', 'Lovely work, keep going.'],
    ['cheering', 'Come on, you have got this.'],
    ['a dose', 'Three sets of ten.'],
    ['a dose to come', "We'll do twelve on each side."],
    ['a rest', 'Rest for a minute.'],
    ['going over', 'Let us move on to the floor.'],
    ['changing sides', 'And change sides.'],
    ['a story', 'My sister ran a marathon last year.'],
    ['housekeeping', 'The car park shuts at nine.'],
    ['a reason', 'This helps you on the stairs.'],
    ['something taken back', 'We were going to do a side plank here.'],
    ['greeting', 'Hello and welcome everyone.'],
  ])('leaves out %s: %s', (_what, text) => {
    expect(tagCues(text)).toEqual([])
  })

  const CASES: [CueKind, string][] = [
    ['setup', 'Lie on your side with your knees bent.'],
    ['setup', 'Feet a little wider than your hips.'],
    ['setup', 'Loop the band round both feet.'],
    ['execution', 'Lower the weights to your shoulders and press them up again.'],
    ['execution', 'Step back and bend both knees.'],
    ['breathing', 'Blow out as you push.'],
    ['breathing', 'In through the nose, out through the mouth.'],
    ['tempo', 'Take three seconds to lower.'],
    ['tempo', 'Nice and slow.'],
    ['range', 'Only go as far as is comfortable.'],
    ['range', 'Stop when your arms are level with your shoulders.'],
    ['fault', "Don't let your knees roll in."],
    ['fault', 'I see people shrugging their shoulders.'],
    ['caution', 'Stop if you feel dizzy.'],
    ['caution', 'If you have had a hip replaced, leave this one out.'],
    ['caution', 'Keep hold of the chair.'],
    ['easier', "If that's too much, put your knees down."],
    ['easier', 'You can always hold on to the wall.'],
    ['harder', 'Want more? Close your eyes.'],
    ['harder', 'If this is easy, add a hop.'],
    ['equipment', 'No band? A towel will do.'],
    ['focus', 'Feel the back of your legs working.'],
    ['focus', 'Imagine a string pulling you up.'],
  ]
  it.each(CASES)('%s: %s', (kind, text) => {
    expect(kinds(text)).toContain(kind)
  })

  it('covers every kind in its cases', () => {
    expect([...new Set(CASES.map(([kind]) => kind))].sort()).toEqual([...CUE_KINDS].sort())
  })

  it.each([
    ['a fault is no caution', "Don't let your elbows flare.", 'fault', 'caution'],
    ['a caution is no fault', 'Leave this out if your back hurts.', 'caution', 'fault'],
    ['a challenge is not easier', 'For a challenge, lift one leg.', 'harder', 'easier'],
  ] as const)('%s', (_what, text, kind, not) => {
    expect(kinds(text)).toContain(kind)
    expect(kinds(text)).not.toContain(not)
  })

  it('cuts a sentence at the clause where the kind changes', () => {
    const tagged = tagCues('Bend your elbows and lower your chest, and breathe in as you go.', { oneSentence: true })
    expect(tagged.map((cue) => [cue.kind, cue.text])).toEqual([
      ['execution', 'Bend your elbows and lower your chest'],
      ['breathing', 'breathe in as you go'],
    ])
  })

  it('gives at most two kinds to one stretch of words', () => {
    fc.assert(
      fc.property(fc.constantFrom(...CASES.map(([, text]) => text)), (text) => {
        for (const cue of tagCues(text)) {
          expect(tagCues(text).filter((other) => other.offset === cue.offset).length).toBeLessThanOrEqual(2)
        }
      }),
    )
  })

  it('quotes exactly, whatever the text', () => {
    const words = fc.constantFrom(
      ..."keep your knees down, if it hurts stop. breathe out as you lift the bell slowly don’t don't three sets feel a stretch, okay now".split(
        ' ',
      ),
    )
    fc.assert(
      fc.property(fc.array(words, { maxLength: 40 }), (list) => {
        const text = list.join(' ')
        for (const cue of tagCues(text)) expect(text.slice(cue.offset, cue.offset + cue.text.length)).toBe(cue.text)
      }),
    )
  })

  it('survives any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
        for (const cue of tagCues(text)) expect(cue.text.length).toBeGreaterThan(0)
      }),
    )
  })
})

describe('an option with its lead-in', () => {
  it.each([
    ['easier', 'For an easier row, hold the band nearer its ends.'],
    ['harder', 'And for a harder version, lift the other foot.'],
  ])('is one %s cue: %s', (kind, text) => {
    expect(tagCues(text)).toEqual([
      expect.objectContaining({ kind, text: text.replace(/^And /, '').replace(/\.$/, '') }),
    ])
  })
})
