// Sides said against sides shown on whole classes: nothing is found where nothing is wrong, and most of what was planted is.
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { checkSheet } from '../../core/checks/check-sheet.ts'
import { draftSheet } from '../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { RIGHT_SIDES, WRONG_SIDES } from '../core/draft/planted-sides.ts'

const corpus = fileURLToPath(new URL('../fixtures/corpus/', import.meta.url))
const RULES = ['side-differs', 'one-side-shown', 'limit-passed', 'peak-hold-long']

/** A transcript in lower case without punctuation, as some recognisers write. */
const plain = (text: string): string =>
  text.replace(/^(\[[\d:]+\] )(.*)$/gm, (_line, stamp: string, said: string) => {
    const words = said.toLowerCase().replace(/[^a-z0-9' ]/g, ' ')
    return stamp + words.replace(/ +/g, ' ').trim()
  })

function foundIn(text: string, durationMs: number): string[] {
  const sheet = draftSheet({ transcript: parseTranscript(text, { durationMs }), durationMs })
  return checkSheet(sheet)
    .findings.filter(({ ruleId }) => RULES.includes(ruleId))
    .map(({ message }) => message)
}

/** Classes kept apart, in each of which one finding is wrong. */
const FOUND_WRONGLY: ReadonlySet<string> = new Set(['57-stretch-evening', '99-core-raw-studio'])

describe('the annotated classes, in which no side is wrong', () => {
  const classes = ['dev', 'fit', 'apart'].flatMap((set) =>
    readdirSync(path.join(corpus, set)).map((id) => path.join(corpus, set, id)),
  )
  it.each(classes.map((folder) => [path.basename(folder), folder]))('%s', (id, folder) => {
    const { duration } = JSON.parse(readFileSync(path.join(folder, 'gold.json'), 'utf8')) as { duration: number }
    const text = readFileSync(path.join(folder, 'transcript.txt'), 'utf8').trimEnd()
    expect(foundIn(text, duration * 1000).length).toBeLessThanOrEqual(FOUND_WRONGLY.has(id) ? 1 : 0)
    // the larger set only as written, for time; without punctuation a spelled-out change of hands falls outside the clip once
    if (!folder.includes(`${path.sep}fit${path.sep}`))
      expect(foundIn(plain(text), duration * 1000).length).toBeLessThanOrEqual(
        id === '01-kettlebell-basics' || FOUND_WRONGLY.has(id) ? 1 : 0,
      )
  })
})

// Of the last 6 wrong and 8 right ones, written before the rules had seen them, 4 and 0 were found as written, 4 and 1 plain.
describe('planted classes', () => {
  const count = (texts: readonly string[], change: (text: string) => string) =>
    texts.filter((text) => foundIn(change(text), 90_000).length > 0).length

  it('are found as written in 17 of 18, without punctuation in 14', () => {
    expect(WRONG_SIDES).toHaveLength(18)
    expect(count(WRONG_SIDES, (text) => text)).toBeGreaterThanOrEqual(17)
    expect(count(WRONG_SIDES, plain)).toBeGreaterThanOrEqual(14)
  })

  it('are left alone where they are right, also without punctuation', () => {
    expect(RIGHT_SIDES).toHaveLength(20)
    expect(count(RIGHT_SIDES, (text) => text)).toBe(0)
    expect(count(RIGHT_SIDES, plain)).toBe(0)
  })
})
