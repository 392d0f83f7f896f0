// Numbers outside all phrases of doses: each with its unit and side, and rows of them as one.
import { describe, expect, it } from 'vitest'
import { findLooseNumbers } from '../../../core/draft/find-loose-numbers.ts'
import { readSpeech } from '../../../core/draft/read-speech.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import type { Prescription } from '../../../shared/log-sheet.ts'

function numbersIn(said: string): { text: string; dose: Prescription; steps: readonly number[] | null }[] {
  const transcript = parseTranscript(`[0:00] ${said}\n[0:20] That was that.`)
  if (transcript.kind !== 'timed') throw new Error('no times')
  const hits = findLooseNumbers(readSpeech(transcript.lines), [])
  return hits.map(({ quote, dose, steps }) => ({ text: quote.text, dose, steps: steps?.values ?? null }))
}

const at = (value: number, to = value): { min: number; max: number } => ({ min: value, max: to })

describe('numbers that no phrase of a dose holds', () => {
  it.each([
    ['You owe me fifteen.', 'fifteen', { reps: at(15) }],
    ['Do eights on these.', 'eights', { reps: at(8) }],
    ['It is twenty-five for you.', 'twenty-five', { reps: at(25) }],
    ['Somewhere from six to ten.', 'six to ten', { reps: at(6, 10) }],
    ['And that is half a minute of it.', 'half a minute', { workSeconds: at(30) }],
    ['Stay for a minute and a half.', 'a minute and a half', { workSeconds: at(90) }],
    ['Stay for two minutes there.', 'two minutes', { workSeconds: at(120) }],
    ['You have ninety seconds on the clock.', 'ninety seconds', { workSeconds: at(90) }],
    ['The line is 10 metres away.', '10 metres', { distanceM: at(10) }],
    ['Just the two lots today.', 'two lots', { sets: at(2) }],
    ['Round the hall twice, please.', 'twice', { sets: at(2) }],
    ['We take four breaths here.', 'four breaths', { reps: at(4), repUnit: 'breath' as const }],
    ['Just the once, please.', 'once', { sets: at(1) }],
    ['Have a whole minute off.', 'a whole minute', { workSeconds: at(60) }],
    ['Three more trips like that.', 'Three', { reps: at(3) }],
    ['It is three trips for you.', 'three trips', { sets: at(3) }],
    ['Seven, on each leg.', 'Seven', { reps: at(7), perSide: true }],
  ])('%s', (said, text, dose) => {
    const [found] = numbersIn(said)
    expect(found).toMatchObject({ dose, steps: null })
    expect(found?.text).toContain(text)
  })

  it('takes no "once" that joins sentences', () => expect(numbersIn('Once you are up, breathe.')).toEqual([]))

  it('leaves alone what a phrase of a dose holds', () => {
    const transcript = parseTranscript('[0:00] Three sets of ten, and then fifteen.')
    if (transcript.kind !== 'timed') throw new Error('no times')
    const speech = readSpeech(transcript.lines)
    const [known] = findLooseNumbers(speech, [])
    if (!known) throw new Error('no number')
    const phrase = { ...known, offset: 0, end: speech.text.indexOf(',') }
    const single = findLooseNumbers(speech, [phrase]).filter(({ steps }) => !steps)
    expect(single.map(({ quote }) => quote.text)).toEqual(['and then fifteen'])
  })
})

it('quotes the clause around a number, where that is short and stands in one line', () => {
  const long = 'that we have been promising each other since the very first week of all this '
  expect(numbersIn('Push up, and do eights today, no more.')[0]?.text).toBe('and do eights today')
  expect(numbersIn(`Push up ${long}eight ${long}.`)[0]?.text).toBe('eight')
})

describe('numbers that belong together', () => {
  it.each([
    ['Twenty seconds, then thirty, then forty.', [20, 30, 40], { workSeconds: at(20, 40) }],
    ['It is four then six then eight.', [4, 6, 8], { reps: at(4, 8) }],
    ['Twelve, then ten, then eight.', [12, 10, 8], { reps: at(8, 12) }],
    ['Ten seconds if you wobble, up to twenty if you do not.', [10, 20], { workSeconds: at(10, 20) }],
    ["Early ones, that's eight. Everyone else twelve.", [8, 12], { reps: at(8, 12) }],
    ["Two minutes if you're new, and up to five for the rest.", [2, 5], { workSeconds: at(120, 300) }],
  ])('%s', (said, steps, dose) => {
    const row = numbersIn(said).find((one) => one.steps !== null)
    expect(row).toMatchObject({ steps, dose })
  })

  it.each([
    ['the same number twice', 'Ten, and then ten.'],
    ['numbers of different things', 'Ten seconds, then twenty metres.'],
    ['numbers far apart in size', 'Two, then forty.'],
    [
      'numbers far apart in the talk',
      `Eight of those. ${'Keep your back long and your neck easy. '.repeat(4)}Then nine.`,
    ],
  ])('%s are none', (_what, said) => {
    expect(numbersIn(said).filter(({ steps }) => steps !== null)).toEqual([])
  })
})
