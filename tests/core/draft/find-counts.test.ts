// Counting aloud is kept beside the dose: where it starts, its words, how far it gets.
import { expect, it } from 'vitest'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

const countedIn = (said: string) => {
  const text = `[0:00] First exercise is the glute bridge. Lie on your back with your knees bent. Push the hips up.\n[0:20] ${said} Squeeze your glutes.`
  return draftSheet({ transcript: parseTranscript(text, { durationMs: 90_000 }) }).segments.flatMap(({ counted }) =>
    (counted ?? []).map(({ upTo }) => upTo),
  )
}

it.each([
  ['no numbers', 'Ten of those please.', []],
  ['a count-in', 'Three, two, one, go.', []],
  ['a count-down', 'Five, four, three, two, one.', []],
  ['four beats', 'One, two, three, four, hold.', []],
  ['a run with talk in it', 'One. Two. Three, hips up, four, lovely, five. Six, seven, eight.', [8]],
  ['two runs', 'One, two, three, four, five, six. Again. One, two, three, four, five.', [6, 5]],
  ['figures', '1, 2, 3, 4, 5, 6, 7.', [7]],
] as const)('%s', (_what, said, upTo) => {
  expect(countedIn(said)).toEqual(upTo)
})
