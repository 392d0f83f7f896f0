/** What the net hears in the sentences of a short class: where an exercise opens, where it is come back to, and where none goes on. */
import { expect, it } from 'vitest'
import { findKit } from '../../../core/draft/find-kit.ts'
import { findExercises } from '../../../core/draft/find-exercises.ts'
import { hearTurns, turnFeatures } from '../../../core/draft/hear-turns.ts'
import { readSpeech } from '../../../core/draft/read-speech.ts'
import type { Speech } from '../../../core/draft/read-speech.ts'
import { weighCandidates } from '../../../core/draft/weigh-starts.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

const CLASS = `[0:00] Morning everyone, come on in and find a space. There's water on the side.
[0:20] First up, goblet squats. Hold the bell at your chest, feet a bit wider than your hips. Sit down between your heels and stand up tall. Don't let your knees fall in. Ten of those.
[0:55] And rest. I was going to tell you about my cat. She got into the neighbour's garden again and ate the tulips. He wasn't pleased. Have a sip of water.
[1:30] Next one is the bent over row. Hinge at the hips, flat back. Pull the bells to your pockets and lower them slowly. Eight of those.
[2:05] Back to the goblet squats, last set. Ten again, breathe out as you stand.
[2:40] Well done, that's us. See you on Thursday.`

function read(text: string): Speech {
  const transcript = parseTranscript(text)
  if (transcript.kind !== 'timed') throw new Error('The class has no times.')
  return readSpeech(transcript.lines)
}

const heardIn = (speech: Speech) => hearTurns(turnFeatures(speech, weighCandidates(speech, findKit(speech.text))))

it('hears openings where exercises begin, a return where one is come back to, and talk between', () => {
  const speech = read(CLASS)
  const heard = heardIn(speech)
  const at = (words: string) => heard[speech.sentences.findIndex((one) => one.words.includes(words))]
  expect(at('first up goblet squats')?.opens).toBeGreaterThan(0)
  expect(at('next one is the bent over row')?.opens).toBeGreaterThan(0)
  expect(at('back to the goblet squats')?.comesBack).toBeGreaterThan(0)
  expect(at('she got into')?.over).toBeGreaterThan(0)
  expect(at('sit down between your heels')?.over).toBeLessThan(-3)
  expect(at('sit down between your heels')?.opens).toBeLessThan(-3)
})

it('odds are of one against all else: the likelihoods of a sentence add up to no more than one', () => {
  for (const { opens, comesBack, over } of heardIn(read(CLASS))) {
    const likely = [opens, comesBack, over].map((odds) => 1 / (1 + Math.exp(-odds)))
    expect(likely.reduce((sum, one) => sum + one, 0)).toBeLessThanOrEqual(1.00001)
  }
})

it('an exercise ends with its last words, before the talk behind it', () => {
  const speech = read(CLASS)
  const [squats] = findExercises(speech, findKit(speech.text)).teachings
  const main = squats?.spans[0]
  const said = speech.text.slice(main?.offset, main?.end)
  expect(said).toMatch(/^First up/)
  expect(said).toMatch(/Ten of those\. And rest\.$|Ten of those\.$/)
})

it('the same words are heard the same each time', () => {
  expect(heardIn(read(CLASS))).toEqual(heardIn(read(CLASS)))
})
