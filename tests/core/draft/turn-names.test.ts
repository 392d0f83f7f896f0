// Whose turn a sentence names among the exercises taught so far, and how it is called.
import { describe, expect, it } from 'vitest'
import { readSpeech } from '../../../core/draft/read-speech.ts'
import { TurnNames } from '../../../core/draft/turn-names.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

function namesFor(said: string, ...taught: string[][]): TurnNames {
  const transcript = parseTranscript(`[0:00] ${said}\n[0:20] That was that.`)
  if (transcript.kind !== 'timed') throw new Error('no times')
  const names = new TurnNames(readSpeech(transcript.lines), [])
  for (const one of taught) names.open(0, one)
  return names
}

const best = (names: TurnNames): number | undefined => names.namedIn(0).toSorted((a, b) => a.rank - b.rank)[0]?.teaching

describe('who is named', () => {
  it.each([
    ['And paddle, go.', [['sit to stand'], ['paddling']], 1],
    ['Then the steppers.', [['step up'], ['wall sit']], 0],
    ['Archers, go.', [['chin hold'], ['archer press up']], 1],
    ['To the wall.', [['step up'], ['wall sit']], 1],
  ])('%s', (said, taught, whose) => expect(best(namesFor(said, ...taught))).toBe(whose))

  it('a place named in a long sentence calls nobody', () => {
    const names = namesFor('Mind the wall while you are standing there with all that kit.', ['wall sit'])
    expect(names.namedIn(0)).toEqual([])
  })

  it('a word that two share calls either, less surely than a word of one', () => {
    const names = namesFor('Press, nice and smooth.', ['floor press'], ['overhead press'])
    expect(names.namedIn(0).map(({ rank }) => rank)).toEqual([3, 3])
  })
})

describe('an exercise called by a word that only its teaching began with', () => {
  const transcript = parseTranscript(
    '[0:00] Plank. Make a board of yourself. Ribs in. Squats. Feet wide. Sit back. Rows. Hinge over.\n[0:30] Boards, ribs in. Feet, feet. That will do.',
  )
  if (transcript.kind !== 'timed') throw new Error('no times')
  const speech = readSpeech(transcript.lines)
  const names = new TurnNames(speech, [])
  const at = (words: string): number => speech.sentences.findIndex((sentence) => sentence.words.startsWith(words))
  names.open(at('plank'), ['plank'])
  names.open(at('squats'), ['squat'])
  names.open(at('rows'), ['row'])

  it('is named by it, behind all names', () => {
    expect(names.namedIn(at('boards'))).toEqual([{ teaching: 0, rank: 4 }])
  })

  it('is not named by it in the middle of a sentence', () => {
    expect(names.namedIn(at('that will'))).toEqual([])
  })
})

describe('how it is called', () => {
  it.each([
    ['Lunges, go.', 'first and ends'],
    ['And then the lunges.', 'led and ends'],
    ['Round two, lunges.', 'led and ends'],
    ['While we have the mat, back to the lunges.', 'led and ends'],
    ['Your back knee bends, then the lunges.', 'late'],
    ['Lunges push the floor away', 'first and goes on'],
    ['I have never in my life liked any lunges.', 'late'],
  ])('%s', (said, how) => expect(namesFor(said, ['lunges']).callOf(0, 0)).toBe(how))
})
