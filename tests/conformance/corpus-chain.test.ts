// The chain from log sheet to score, on the annotated classes: a perfect sheet scores 100 % everywhere, a damaged one less.
// The adapter and the scorer are scripts of their own that share no code with the product.
import { execFile } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { writeFile } from 'node:fs/promises'
import path from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { describe, expect, it } from 'vitest'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { timeAt } from '../../core/transcript/place-quote.ts'
import type { CheckReport } from '../../shared/check-report.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import { readLogSheet, writeLogSheet } from '../../shared/read-log-sheet.ts'
import { Gold, GoldExtra, sheetFromGold } from '../helpers/sheet-from-gold.ts'
import { findBroken } from '../helpers/sheet-invariants.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

const corpus = fileURLToPath(new URL('../fixtures/corpus/', import.meta.url))
const run = promisify(execFile)

const classes = readdirSync(path.join(corpus, 'dev')).map((id) => {
  const read = (name: string): string => readFileSync(path.join(corpus, 'dev', id, name), 'utf8')
  const gold = Gold.parse(JSON.parse(read('gold.json')))
  const text = read('transcript.txt')
  return { id, gold, text, ...sheetFromGold(gold, text, GoldExtra.parse(JSON.parse(read('extra.json')))) }
})

/** What the scorer prints for these sheets and reports, taken through files as a user would. */
async function score(sheets: readonly { id: string; sheet: LogSheet; report: CheckReport }[]): Promise<string> {
  const folder = await tempFolder()
  for (const { id, sheet, report } of sheets) {
    const [sheetFile, reportFile] = [path.join(folder, `${id}.sheet`), path.join(folder, `${id}.report`)]
    await writeFile(sheetFile, writeLogSheet(sheet))
    await writeFile(reportFile, JSON.stringify(report))
    const adapted = await run(process.execPath, [path.join(corpus, 'from-log-sheet.mjs'), id, sheetFile, reportFile])
    await writeFile(path.join(folder, `${id}.json`), adapted.stdout)
  }
  return (await run(process.execPath, [path.join(corpus, 'score.mjs'), folder])).stdout
}

describe('the annotated classes', () => {
  it.each(classes)('$id makes a sound sheet that reads back', ({ sheet }) => {
    expect(findBroken(sheet)).toEqual([])
    expect(readLogSheet(writeLogSheet(sheet))).toStrictEqual(sheet)
  })

  it.each(classes)(
    '$id: the transcript reader and the annotation agree on when each cue is said, to 0.1 s',
    ({ gold, text, sheet }) => {
      const transcript = parseTranscript(text, { durationMs: sheet.durationMs })
      if (transcript.kind !== 'timed') throw new Error('read as a class plan')
      const cues = gold.exercises.flatMap((exercise) => exercise.cues)
      expect(cues.length).toBeGreaterThan(0)
      for (const { at, evidence } of cues) {
        const places = transcript.lines.flatMap((line) =>
          [...line.text.matchAll(new RegExp(evidence.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'), 'g'))].map((match) =>
            timeAt(line, match.index),
          ),
        )
        expect(Math.min(...places.map((ms) => Math.abs(ms - at * 1000))), evidence).toBeLessThanOrEqual(100)
      }
    },
  )

  it('score 100 % in everything when the sheet is perfect', async () => {
    const printed = await score(classes)
    const percents = [...printed.matchAll(/(\d+\.\d)%/g)].map((match) => Number(match[1]))
    const f1 = [...printed.matchAll(/F1 (\d+\.\d)/g)].map((match) => Number(match[1]))
    const wrong = printed.match(/mentioned-only wrongly made a lesson (\d+\.\d)%/)
    expect(Number(wrong?.[1])).toBe(0)
    expect(percents.filter((percent) => percent !== 100)).toEqual([0])
    expect(f1.filter((value) => value !== 100)).toEqual([])
    expect(printed).toContain('median start error 0.0 s, end error 0.0 s')
    expect(printed).toContain('decoy number used 0 ')
    expect(printed, 'nothing went unmeasured').not.toContain('n/a')
    expect(f1.length).toBeGreaterThanOrEqual(14)
  })

  it('score less when a dose, a cue or a caution is lost', async () => {
    const damaged = classes.map((one, at) => {
      if (at > 0) return one
      const [first, ...rest] = one.sheet.segments
      const sheet = { ...one.sheet, segments: [{ ...first!, prescription: null, cues: first!.cues.slice(1) }, ...rest] }
      return { ...one, sheet, report: { ...one.report, cautions: one.report.cautions.slice(1) } }
    })
    const printed = await score(damaged)
    expect(printed).toMatch(/^prescriptions +P 100\.0 R 97\.\d/m)
    expect(printed).toMatch(/^cues +P 100\.0 R 99\.\d/m)
    expect(printed).toMatch(/^required cautions +spoken found 96\.\d%/m)
  })
})
