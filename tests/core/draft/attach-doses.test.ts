// Doses as teachers spread them over a class reach the right exercise, in the right field.
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { projectRoot } from '../../../server/setup/project-root.ts'
import { doseOf } from './spoken-class.ts'

const SQUAT =
  'Next up, goblet squats. Stand with your feet wide, bell at your chest. Sit down between your knees and stand up tall.'
const ROW = 'Next up, the bent over row. Hinge forward, flat back. Pull the bells to your hips and lower them slowly.'
const PRESS = 'Next up, the shoulder press. Stand tall, bells at your shoulders. Press up and lower slowly.'

function dosesOf(...lines: string[]) {
  const text = lines.map((line, index) => `[${index}:00] ${line}`).join('\n')
  return draftSheet({ transcript: parseTranscript(text) }).segments.map(({ prescription }) => doseOf(prescription))
}

describe('what is said for one exercise', () => {
  it.each([
    {
      name: 'a rest put right by a number alone',
      said: 'Three sets of eight. Rest sixty seconds between sets. Actually, it is cold, make that forty-five.',
      dose: { sets: 3, reps: 8, rest: 45 },
    },
    {
      name: 'sets put right by repeating the number that is wrong',
      said: 'Five sets of eight. That feels good. Listen, I said five, we are only doing four.',
      dose: { sets: 4, reps: 8 },
    },
    {
      name: 'repetitions put right by a number alone',
      said: 'We will take ten of these. Hmm, no, it is early, eight.',
      dose: { reps: 8 },
    },
    {
      name: 'a number taken back in one breath',
      said: "Right, I wrote it down wrong. It's not 8s, it's 4 sets of 6.",
      dose: { sets: 4, reps: 6 },
    },
    {
      name: 'what was going to be said',
      said: 'I was going to say five sets of five, and I have seen your faces, three sets of six.',
      dose: { sets: 3, reps: 6 },
    },
    {
      name: 'counting aloud with cues in between',
      said: 'Ten of those. One. Lovely. Two. Knees over your toes. Four. Chest up, eyes ahead. Breathe out. Six.',
      dose: { reps: 10 },
    },
    {
      name: 'a minute of it',
      said: "A minute of it, that's all. Slow and steady.",
      dose: { work: 60 },
    },
    {
      name: 'warm-up sets',
      said: 'Empty bell for ten, to warm it up. Now the proper ones. Three sets of five.',
      dose: { sets: 3, reps: 5 },
    },
    {
      name: 'one at a time',
      said: 'Three sets of six, one at a time. Take your time.',
      dose: { sets: 3, reps: 6 },
    },
    {
      name: 'sets named beside the ones to warm up',
      said: 'Three sets of five when your warm up sets are done.',
      dose: { sets: 3, reps: 5 },
    },
    {
      name: 'a rest behind a pair',
      said: 'Eight of these. Three times through, and 90 seconds after the pair.',
      dose: { sets: 3, reps: 8, rest: 90 },
    },
    {
      name: 'a record of many hours',
      said: 'Thirty seconds of work. I read that the record is over nine hours.',
      dose: { work: 30 },
    },
    {
      name: 'sets that differ',
      said: 'Two goes at it, eight a side first time and six a side the second.',
      dose: { sets: 2, reps: [6, 8], sides: true },
    },
    {
      name: 'the half of a total',
      said: 'Twelve in total, so six a side.',
      dose: { reps: 6, sides: true },
    },
    {
      name: 'a range and goes with the sitting down between',
      said: 'Somewhere between five and eight, and two goes, with a minute sat down in between.',
      dose: { sets: 2, reps: [5, 8], rest: 60 },
    },
    {
      name: 'one side named, then the other',
      said: "Six on the sore leg and then, because it'll sulk, six on the other.",
      dose: { reps: 6, sides: true },
    },
    {
      name: 'rounds counted by the one just done',
      said: "Ten reps. That's one round, and there's three of those.",
      dose: { sets: 3, reps: 10 },
    },
    { name: 'steps of a ladder', said: 'We ladder it, so four of them, then six, then eight.', dose: { reps: [4, 8] } },
    { name: 'a name of the coach’s own counted', said: 'We want ten coat hangers.', dose: { reps: 10 } },
    {
      name: 'what replaces a plan',
      said: "I'd written down five sets, but it's three sets of ten.",
      dose: { sets: 3, reps: 10 },
    },
    {
      name: 'a full dose behind a first thought',
      said: 'Twelve of them. Twelve is optimistic. Ten of them, three sets.',
      dose: { sets: 3, reps: 10 },
    },
    {
      name: 'a time behind a rest',
      said: "Twelve reps. Have a rest, shake the ankles. Twenty seconds, that's all you're getting.",
      dose: { reps: 12, rest: 20 },
    },
  ])('$name', ({ said, dose }) => {
    expect(dosesOf(`${SQUAT} ${said}`)).toEqual([dose])
  })

  it.each([
    'My neighbour is nine and she can do forty squats.',
    'I tore my hamstring playing five a side football.',
    'When your back starts to round, stop.',
    'It is the little step, ten centimetres, not the big one.',
    'One. Slow down. Two. Three. Keep your knees apart. Four.',
    'Six, seven, and change legs.',
    'Nine, ten, and twelve.',
    "You've taken about fifteen emails' worth of breath since lunch.",
  ])('is none: %s', (said) => {
    expect(dosesOf(`${SQUAT} ${said}`)).toEqual([{}])
  })

  it.each([
    { said: 'On the way down I want three seconds.', tempo: '3-x-x-x' },
    { said: "There's a pause at the bottom, two full seconds.", tempo: 'x-2-x-x' },
    { said: 'Take a full count of three to sit down.', tempo: '3-x-x-x' },
  ])('may be a tempo: $said', ({ said, tempo }) => {
    const { segments } = draftSheet({ transcript: parseTranscript(`[0:00] ${SQUAT} Eight reps. ${said}`) })
    expect(segments[0]?.prescription).toMatchObject({ reps: { min: 8, max: 8 }, workSeconds: null, tempo })
  })

  it('may stand right behind the teaching', () => {
    expect(dosesOf(`${SQUAT} My bus was late today and everybody on it sang. Eight reps, two sets.`)).toEqual([
      { sets: 2, reps: 8 },
    ])
  })

  it('is done again where the class comes back for another set', () => {
    const doses = dosesOf(
      `${SQUAT} Ten reps.`,
      `${PRESS} Eight reps.`,
      'Back to the goblet squats. One more set, sit down tall.',
    )
    expect(doses).toEqual([{ sets: 2, reps: 10 }, { reps: 8 }])
  })
})

describe('what is told while it is taught', () => {
  it('is its own where another is named in passing', () => {
    const doses = dosesOf(`${SQUAT} Ten reps.`, `${PRESS} After those squats, eight reps, two sets.`)
    expect(doses).toEqual([{ reps: 10 }, { sets: 2, reps: 8 }])
  })
})

describe('no exercise', () => {
  it.each([
    'A cat came in. It is called Huw. Ribs down. Keep your chest tall.',
    'Lovely, Maureen, that is gorgeous. Walk in a step. Stand up more.',
    "For everybody's sake. Keep your feet wide. Push the floor away.",
    'Onto your backs. Arms to the ceiling. Knees over your hips.',
    "Don't lean back and make it a bench press. Breathe in at the bottom. Push up tall.",
    'Bells, please. Push your hips back. Stand up tall.',
    'Hold the chair, it is for your balance. Push up onto your toes. Lower your heels.',
  ])('is %s', (said) => {
    const { segments } = draftSheet({ transcript: parseTranscript(`[0:00] ${SQUAT} Ten reps.\n[1:00] ${said}`) })
    expect(segments.map(({ exercise }) => exercise.name.toLowerCase())).toEqual(['goblet squats'])
  })
})

describe('what is said for several', () => {
  it('reaches both that are named in front', () => {
    const doses = dosesOf(
      'Today we have goblet squats and then the bent over row, same deal for the two of them, three sets of eight.',
      SQUAT,
      ROW,
    )
    expect(doses).toEqual([
      { sets: 3, reps: 8 },
      { sets: 3, reps: 8 },
    ])
  })

  it('is each one’s number where names are counted, with the rounds and the rest of all', () => {
    const doses = dosesOf(
      'Hello. Twelve goblet squats, ten shoulder presses, twice through, and a minute off after both.',
      SQUAT,
      PRESS,
    )
    expect(doses).toEqual([
      { sets: 2, reps: 12, rest: 60 },
      { sets: 2, reps: 10, rest: 60 },
    ])
  })

  it('is no rest between sets for an exercise of one set behind it', () => {
    const text = readFileSync(path.join(projectRoot(), 'media-samples/steady-and-strong.vtt'), 'utf8')
    const { segments } = draftSheet({ transcript: parseTranscript(text) })
    const rests = segments.map(({ exercise, prescription }) => [exercise.name, prescription?.restSeconds?.min ?? null])
    expect(rests).toContainEqual(['Biceps curl', 30])
    expect(rests).toContainEqual(['Shoulder press', null])
  })

  it('goes round a circuit told by its number of stops', () => {
    const doses = dosesOf(
      'Circuit time. Three stops, two rounds, and fifteen seconds to get from one to the next.',
      `${SQUAT} Ten reps.`,
      `${ROW} Eight reps.`,
      `${PRESS} Six reps.`,
    )
    expect(doses).toEqual([
      { sets: 2, reps: 10, rest: 15 },
      { sets: 2, reps: 8, rest: 15 },
      { sets: 2, reps: 6, rest: 15 },
    ])
  })

  it('counts for the one being taught, and until the next part', () => {
    const doses = dosesOf(
      `${SQUAT} Eight reps. We will do three sets of everything in this first part.`,
      `${ROW} Ten reps.`,
      'Part two now. Have a drink.',
      `${PRESS} Six reps.`,
    )
    expect(doses).toEqual([{ sets: 3, reps: 8 }, { sets: 3, reps: 10 }, { reps: 6 }])
  })
})
