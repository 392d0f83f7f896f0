// Exercises done in turns: found in whole classes, and what such exercises say together of their rounds.
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import type { DoseOption } from '../../../core/draft/dose-option.ts'
import { draftSheet } from '../../../core/draft/draft-sheet.ts'
import { agreed } from '../../../core/draft/pick-answers.ts'
import { weighLinks } from '../../../core/draft/weigh-links.ts'
import { readSpeech } from '../../../core/draft/read-speech.ts'
import { readyOwning } from '../../../core/draft/find-owners.ts'
import { parseTranscript } from '../../../core/transcript/parse-transcript.ts'
import { projectRoot } from '../../../server/setup/project-root.ts'

describe('in a whole class', () => {
  const folder = path.join(projectRoot(), 'tests/fixtures/corpus/dev')
  const draft = (id: string) =>
    draftSheet({ transcript: parseTranscript(readFileSync(path.join(folder, id, 'transcript.txt'), 'utf8').trimEnd()) })

  it('the stations of a circuit have the same rounds, rest and scheme', () => {
    const doses = draft('05-hiit-circuit').segments.flatMap(({ prescription }) => prescription ?? [])
    const stations = doses.filter(({ scheme }) => scheme === 'circuit')
    expect(stations.length).toBeGreaterThanOrEqual(5)
    for (const { groupWith } of stations) expect(groupWith).toHaveLength(stations.length - 1)
    expect(new Set(stations.map(({ sets }) => JSON.stringify(sets))).size).toBe(1)
    expect(new Set(stations.map(({ restSeconds }) => JSON.stringify(restSeconds))).size).toBe(1)
    const times = stations.flatMap(({ workSeconds }) => workSeconds ?? [])
    expect(times.length).toBeGreaterThan(1)
    expect(new Set(times.map((time) => JSON.stringify(time))).size).toBe(1)
  })

  it('a pair is a superset, what stands alone is not', () => {
    const schemes = draft('01-kettlebell-basics').segments.flatMap(({ prescription }) => prescription?.scheme ?? [])
    expect(schemes.filter((scheme) => scheme === 'superset')).toHaveLength(2)
    expect(schemes.filter((scheme) => scheme === 'emom')).toHaveLength(1)
  })
})

it('groups nothing where nothing is taught', () => {
  const transcript = parseTranscript('[0:00] Hello and welcome.\n', { durationMs: 10_000 })
  if (transcript.kind !== 'timed') throw new Error('The line has a time.')
  const speech = readSpeech(transcript.lines)
  expect(weighLinks({ speech, owning: readyOwning([], []), groups: [], own: [] })).toEqual([])
})

describe('what exercises say together', () => {
  const answer = (key: string): DoseOption => ({
    ...{ key, kind: key === '' ? null : 'sets', value: null, marks: [], rows: [] },
  })

  it('is the mean of what each tells', () => {
    const first = [
      { option: answer('two'), share: 0.6 },
      { option: answer('three'), share: 0.4 },
    ]
    const second = [
      { option: answer('three'), share: 0.9 },
      { option: answer('two'), share: 0.1 },
    ]
    const together = agreed(first, [first, second])
    expect(together.map(({ option }) => option.key)).toEqual(['three', 'two'])
    expect(together[0]?.share).toBeCloseTo((0.4 + 0.9) / 2)
  })

  it('may be told of one of them alone', () => {
    const silent = [{ option: answer(''), share: 0.95 }]
    const telling = [
      { option: answer('four'), share: 0.95 },
      { option: answer(''), share: 0.05 },
    ]
    expect(agreed(silent, [silent, telling])[0]?.option.key).toBe('four')
  })

  it('is its own word where it stands alone', () => {
    const own = [{ option: answer('two'), share: 0.7 }]
    expect(agreed(own, [own])).toEqual(own)
  })
})
