// Sets that differ by level, and numbers of a rest: what may be meant, by the words around it.
import { describe, expect, it } from 'vitest'
import { Answers } from '../../../core/draft/dose-option.ts'
import type { DoseHit } from '../../../core/draft/find-dose-hits.ts'
import { findLooseNumbers } from '../../../core/draft/find-loose-numbers.ts'
import { addSetSpans } from '../../../core/draft/level-spans.ts'
import { readSpeech } from '../../../core/draft/read-speech.ts'
import type { Speech } from '../../../core/draft/read-speech.ts'
import { isRestTold } from '../../../core/draft/rest-options.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'

function readNumbers(said: string): { speech: Speech; hits: DoseHit[] } {
  const transcript = parseTranscript(`[0:00] ${said}\n[0:20] That was that.`)
  if (transcript.kind !== 'timed') throw new Error('no times')
  const speech = readSpeech(transcript.lines)
  return { speech, hits: findLooseNumbers(speech, []).filter(({ steps }) => !steps) }
}

function spansIn(said: string): string[] {
  const { speech, hits } = readNumbers(said)
  const answers = new Answers()
  const told = hits.map((hit) => ({
    ...{ saying: { hit, marks: [], instead: false }, place: 'before' as const, owned: false, marks: [] },
  }))
  addSetSpans(speech, told, answers)
  return answers.all(() => [], []).flatMap(({ kind, key }) => (kind === null ? [] : [key]))
}

describe('sets by level', () => {
  it.each([
    ['Green bib, you go round twice. Orange bib, three times round.', ['sets 2-3']],
    ['Two laps if you are new, four laps if not.', ['sets 2-4']],
    ['Two laps for you, and two laps for you.', []],
    ['Two laps, and everybody does fifteen press-ups.', []],
  ])('%s', (said, keys) => expect(spansIn(said)).toEqual(keys))

  it('are no span where a whole speech lies between them', () =>
    expect(spansIn(`Two laps. ${'And so we talk about the weather for a while. '.repeat(4)}Four laps.`)).toEqual([]))
})

describe('a number that may be a rest', () => {
  it.each([
    ['Fifteen to get to the next station.', true],
    ['And twenty off between them.', true],
    ['Forty seconds, then sit down.', true],
    ['Fifteen of those, please.', false],
    ['Three to get to the next station.', false],
    ['Two hundred to get to the next station.', false],
  ])('%s', (said, is) => {
    const { speech, hits } = readNumbers(said)
    expect(hits.some((hit) => isRestTold(speech, hit))).toBe(is)
  })
})
