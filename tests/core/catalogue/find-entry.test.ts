// Names as people say them find their exercise; everyday words do not.
import { describe, expect, it } from 'vitest'
import { findEntry, findNames } from '../../../core/catalogue/find-entry.ts'
import { foldName } from '../../../core/catalogue/fold-words.ts'

describe('findEntry', () => {
  it.each(['', '   ', '...', 'the', 'with the band', 'nonsense', 'a nice cup of tea', '🏋️', 'x'.repeat(5000)])(
    'knows nothing called %j',
    (name) => {
      expect(findEntry(name)).toBeNull()
    },
  )

  it.each([
    ['Press-Ups', 'press-up'],
    ['pushups', 'press-up'],
    ['the press ups', 'press-up'],
    ['dead lifts', 'deadlift'],
    ['Kettlebell deadlifts', 'kettlebell-deadlift'],
    ['goblet squat', 'goblet-squat'],
    ['Child’s pose', 'childs-pose'],
    ["child's pose", 'childs-pose'],
    ['heel raises holding the chair', 'heel-raise'],
    ['calf raises', 'heel-raise'],
    ['single-leg RDLs', 'single-leg-deadlift'],
    ['alternating reverse lunges', 'reverse-lunge'],
    ['slow mountain climbers', 'slow-mountain-climber'],
    ['some star jumps', 'jumping-jack'],
    ['Sit-to-stands', 'sit-to-stand'],
    ['half kneeling hip flexor stretch', 'hip-flexor-stretch'],
    ['ab curls', 'crunch'],
    ['clamshells', 'clam'],
    ['Pallof press', 'band-press-out'],
    ['plié', 'sumo-squat'],
  ])('%s is %s', (name, id) => {
    expect(findEntry(name)?.id).toBe(id)
  })

  it.each([
    ['row', ['band'], 'band-row'],
    ['rows', ['rings'], 'ring-row'],
    ['row', ['dumbbell'], 'bent-over-row'],
    ['rows with the band', [], 'band-row'],
    ['biceps curl', ['chair', 'dumbbell'], 'seated-biceps-curl'],
    ['biceps curl', ['dumbbell'], 'biceps-curl'],
    ['squats', ['barbell'], 'back-squat'],
    ['the press', ['kettlebell'], 'kettlebell-press'],
    ['reverse curl', [], 'reverse-crunch'],
    ['reverse curl', ['dumbbell'], 'biceps-curl'],
    ['barbell side bends', [], 'weighted-side-bend'],
    ['side bends', ['kettlebell'], 'weighted-side-bend'],
    ['calf raises on the machine', [], 'machine-calf-raise'],
    ['reverse calf raises', [], 'toe-raise'],
    ['bent-over triceps extension', [], 'triceps-kickback'],
    ['front barbell squat', [], 'front-squat'],
  ])('%s with %j is %s', (name, kit, id) => {
    expect(findEntry(name, { kit })?.id).toBe(id)
  })
})

describe('findNames', () => {
  const ids = (text: string): string[] => findNames(text).map((found) => found.entry.id)

  it.each([
    '',
    'A whole row of people sat on a plank of wood by the bridge to town.',
    'Push up through your heels and step up to the line.',
    'Roll back onto your front and sit up tall.',
    'If your heels lift, stick a book under them.',
    'Your arms swing, your hips drop, your knees bend.',
    'Good morning everyone, did you come on the bike?',
    'Mind the step, and grab a bench.',
    'Two hundred people, a cat and a cow in a boat.',
    'Chin up, it is nearly over.',
    'Squeeze your shoulders, squeeze your bum.',
  ])('finds no exercise in: %s', (text) => {
    expect(ids(text)).toEqual([])
  })

  it.each([
    ['Reverse lunches. Start tall.', ['reverse-lunge']],
    ['Then rows. Pull to the ribs.', ['kettlebell-row']],
    ['Next up, bridges.', ['glute-bridge']],
    ['Twenty press ups, then a plank.', ['press-up', 'plank']],
    ['press-ups and pressups and press ups', ['press-up', 'press-up', 'press-up']],
    ['Side plank, not the plank.', ['side-plank', 'plank']],
    ['the single um leg deadlift', ['single-leg-deadlift']],
  ])('finds in %j: %j', (text, expected) => {
    expect(ids(text)).toEqual(expected)
  })

  it('takes the longest name and gives its exact place', () => {
    const text = 'Now rear foot elevated split squats, then go.'
    const [found] = findNames(text)
    expect(found?.entry.id).toBe('rear-foot-elevated-split-squat')
    expect(text.slice(found?.offset, (found?.offset ?? 0) + (found?.length ?? 0))).toBe(
      'rear foot elevated split squats',
    )
  })

  it('does not read a name across the end of a sentence', () => {
    expect(ids('Send your hips back. Bend the knees.')).toEqual([])
  })
})

describe('foldName', () => {
  it.each([
    ['Press-ups', 'press up'],
    ['presses', 'press'],
    ['calves', 'calf'],
    ['flyes', 'fly'],
    ['crunches', 'crunch'],
    ['lunges', 'lunge'],
    ['biceps', 'bicep'],
  ])('%s -> %s', (name, folded) => {
    expect(foldName(name)).toBe(folded)
  })
})
