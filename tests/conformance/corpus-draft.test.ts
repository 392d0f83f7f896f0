// The draft on the five annotated classes, taken through the adapter and the scorer, which share no code with the product.
// The classes were open while the rules were written, so these floors guard against loss; they are no measure of new classes.
import { execFileSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { draftSheet } from '../../core/draft/draft-sheet.ts'
import { tagCues } from '../../core/draft/tag-cues.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import type { Audience } from '../../shared/log-sheet.ts'
import { CUE_LABELS } from '../helpers/cue-labels.ts'

const corpus = fileURLToPath(new URL('../fixtures/corpus/', import.meta.url))
const AUDIENCES: Record<string, Audience[]> = { '03-prenatal-mobility': ['pregnancy'] }

/** A transcript in lower case without punctuation, as some recognisers write. */
function plain(text: string): string {
  return text
    .split('\n')
    .map((line) => {
      const [, stamp = '', said = ''] = /^(\[[\d:]+\]) (.*)/.exec(line) ?? []
      return `${stamp} ${said
        .toLowerCase()
        .replace(/[^a-z0-9' ]/g, ' ')
        .replace(/ +/g, ' ')
        .trim()}`
    })
    .join('\n')
}

/** What the scorer prints for drafts of all classes of a set. */
function score(folder: string, set: 'dev' | 'apart', change: (text: string) => string): string {
  for (const id of readdirSync(path.join(corpus, set))) {
    const { duration } = JSON.parse(readFileSync(path.join(corpus, set, id, 'gold.json'), 'utf8')) as {
      duration: number
    }
    const text = change(readFileSync(path.join(corpus, set, id, 'transcript.txt'), 'utf8').trimEnd())
    const durationMs = duration * 1000
    const transcript = parseTranscript(text, { durationMs })
    const sheet = path.join(folder, `${id}.sheet`)
    writeFileSync(sheet, JSON.stringify(draftSheet({ transcript, durationMs, audience: AUDIENCES[id] ?? [] })))
    const adapted = execFileSync(process.execPath, [path.join(corpus, 'from-log-sheet.mjs'), id, sheet])
    writeFileSync(path.join(folder, `${id}.json`), adapted)
  }
  return execFileSync(process.execPath, [path.join(corpus, 'score.mjs'), folder, set], { encoding: 'utf8' })
}

/** A figure of the scorer's text, in percent. */
function figure(text: string, pattern: RegExp): number {
  return Number(pattern.exec(text)?.[1] ?? Number.NaN)
}

describe('the draft on the annotated classes', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'draft-corpus-'))
  let asWritten = ''
  let unpunctuated = ''
  beforeAll(() => {
    asWritten = score(folder, 'dev', (text) => text)
    unpunctuated = score(folder, 'dev', plain)
  })
  afterAll(() => {
    rmSync(folder, { recursive: true })
  })

  it.each([
    ['exercise segments', /exercise segments .*F1 ([\d.]+)/, 93],
    ['names right', /name ok ([\d.]+)%/, 97],
    ['doses exactly right', /dose exactly right ([\d.]+)%/, 89],
    ['cues', /cues .*F1 ([\d.]+)/, 65],
    ['returns', /returns .*F1 ([\d.]+)/, 80],
    ['quotes exact', /quotes exact ([\d.]+)%/, 100],
  ])('keeps its figure: %s', (_what, pattern, floor) => {
    expect(figure(asWritten, pattern)).toBeGreaterThanOrEqual(floor)
  })

  it('makes no lesson of an exercise that is only mentioned', () => {
    expect(figure(asWritten, /mentioned-only wrongly made a lesson ([\d.]+)%/)).toBe(0)
  })

  it.each([
    ['exercise segments', /exercise segments .*F1 ([\d.]+)/, 85],
    ['names right', /name ok ([\d.]+)%/, 83],
    ['doses exactly right', /dose exactly right ([\d.]+)%/, 69],
    ['cues', /cues .*F1 ([\d.]+)/, 52],
    ['returns', /returns .*F1 ([\d.]+)/, 52],
  ])('keeps its figure without punctuation: %s', (_what, pattern, floor) => {
    expect(figure(unpunctuated, pattern)).toBeGreaterThanOrEqual(floor)
  })
})

// Twenty-six classes by some twenty other writers; no weight was fitted on them and no rule made for them, and only their figures
// were looked at. They say what to expect of a class from elsewhere; the floors lie a little below what was seen.
describe('the draft on classes kept apart', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'draft-apart-'))
  let said = ''
  beforeAll(() => {
    said = score(folder, 'apart', (text) => text)
  })
  afterAll(() => {
    rmSync(folder, { recursive: true })
  })

  it.each([
    ['exercise segments', /exercise segments .*F1 ([\d.]+)/, 88],
    ['names right', /name ok ([\d.]+)%/, 91],
    ['doses exactly right', /dose exactly right ([\d.]+)%/, 44],
    ['cues', /cues .*F1 ([\d.]+)/, 56],
    ['returns', /returns .*F1 ([\d.]+)/, 39],
    ['quotes exact', /quotes exact ([\d.]+)%/, 100],
  ])('keeps its figure: %s', (_what, pattern, floor) => {
    expect(figure(said, pattern)).toBeGreaterThanOrEqual(floor)
  })
})

describe('the cue tagger on single sentences', () => {
  const file = fileURLToPath(new URL('../fixtures/cue-sentences.json', import.meta.url))
  const cases = (JSON.parse(readFileSync(file, 'utf8')) as { text: string; labels: string[] }[]).map(
    ({ text, labels }) => ({
      wanted: labels.flatMap((label) => CUE_LABELS[label] ?? []),
      got: [...new Set(tagCues(text).map((cue) => cue.kind))],
    }),
  )
  const withCue = cases.filter(({ wanted }) => wanted.length > 0)
  const without = cases.filter(({ wanted }) => wanted.length === 0)

  it('shares a label in at least 85 % of the sentences', () => {
    const shared = withCue.filter(({ wanted, got }) => got.some((kind) => wanted.includes(kind)))
    expect(shared.length / withCue.length).toBeGreaterThanOrEqual(0.85)
  })

  it('gives at most one and a half kinds to a sentence', () => {
    const kinds = withCue.reduce((sum, { got }) => sum + got.length, 0)
    expect(kinds / withCue.length).toBeLessThanOrEqual(1.5)
  })

  it('leaves at least 80 % of the sentences without a cue empty', () => {
    const empty = without.filter(({ got }) => got.length === 0)
    expect(empty.length / without.length).toBeGreaterThanOrEqual(0.8)
  })
})
