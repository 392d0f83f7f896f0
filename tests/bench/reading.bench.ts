/** 1, 2, 5 and 10 hours of speech drafted and checked on one core: time, memory, and whether time grows with length alone. */
import { spawnSync } from 'node:child_process'
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import { projectRoot } from '../../server/setup/project-root.ts'
import { median, Skipped, swapRounds } from './bench.ts'
import type { Bench, BenchContext, Report } from './bench.ts'

export const bench: Bench = { about: '1, 2, 5 and 10 hours of speech drafted and checked on one core', run }

const HOURS = [1, 2, 5, 10] as const
const CORPUS = path.join(projectRoot(), 'tests', 'fixtures', 'corpus', 'dev')

async function run({ quick, folder, say }: BenchContext): Promise<Report> {
  const raw = new Map(HOURS.map((hours) => [hours, { seconds: [] as number[], megabytes: [] as number[] }]))
  await swapRounds(
    quick ? 2 : 5,
    HOURS.map((hours) => async (round: number) => {
      say(`round ${round + 1}, ${hours} h`)
      const { seconds, megabytes } = readOnce(folder, hours)
      raw.get(hours)?.seconds.push(seconds)
      raw.get(hours)?.megabytes.push(megabytes)
      await Promise.resolve()
    }),
  )
  const seconds = (hours: (typeof HOURS)[number]) => median(raw.get(hours)?.seconds ?? [])
  return {
    series: HOURS.flatMap((hours) => [
      { name: `${hours} h drafted and checked`, unit: 'CPU-s', raw: raw.get(hours)?.seconds ?? [] },
      { name: `${hours} h, most memory held`, unit: 'MB', raw: raw.get(hours)?.megabytes ?? [] },
    ]),
    goals: [
      { what: '10 h drafted and checked, CPU-s', value: seconds(10), wants: 'at most', limit: 10 },
      { what: '10 h, MB', value: median(raw.get(10)?.megabytes ?? []), wants: 'at most', limit: 500 },
      {
        what: 'an hour of 10 takes as long as an hour of 2, times',
        value: seconds(10) / 10 / (seconds(2) / 2),
        wants: 'at most',
        limit: 1.3,
      },
    ],
    notes: [
      'The five annotated classes of the corpus, one after another with shifted times, as often as the length asks. Speech that never repeats takes longer: 10 h of 29 different classes took 1.7 times as long.',
      'A process of its own each time, with the settings of the command, held to one core where taskset is there; its whole CPU time counts, so that other work on the machine does not.',
    ],
  }
}

/** Drafts and checks once in a fresh process that tells its most memory. */
function readOnce(folder: string, hours: number): { seconds: number; megabytes: number } {
  const file = path.join(folder, `${hours}h.txt`)
  writeFileSync(file, repeated(hours * 3600))
  const built = path.join(projectRoot(), '.build', 'core')
  const code = `
    import { readFileSync } from 'node:fs'
    const { parseTranscript } = await import(${JSON.stringify(path.join(built, 'transcript', 'parse-transcript.js'))})
    const { draftSheet } = await import(${JSON.stringify(path.join(built, 'draft', 'draft-sheet.js'))})
    const { checkSheet } = await import(${JSON.stringify(path.join(built, 'checks', 'check-sheet.js'))})
    const durationMs = ${hours * 3_600_000}
    const sheet = draftSheet({ transcript: parseTranscript(readFileSync(${JSON.stringify(file)}, 'utf8'), { durationMs }) })
    const report = checkSheet(sheet)
    if (sheet.segments.length === 0 || report.cautions.length === 0) throw new Error('nothing was read')
    const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage()
    process.stdout.write(JSON.stringify({ megabytes: maxRSS / 1024, seconds: (userCPUTime + systemCPUTime) / 1e6 }))`
  const later = pathToFileURL(path.join(projectRoot(), 'server', 'setup', 'optimise-later.mjs')).href
  const node = [process.execPath, '--import', later, '--input-type=module', '--eval', code]
  const [command = '', ...words] = hasTaskset() ? ['taskset', '-c', '0', ...node] : node
  const { status, stdout, stderr } = spawnSync(command, words, { encoding: 'utf8' })
  if (status !== 0) throw new Error(`The class of ${hours} h could not be read: ${stderr.slice(-400)}`)
  return JSON.parse(stdout) as { seconds: number; megabytes: number }
}

const hasTaskset = (): boolean => spawnSync('taskset', ['--version']).status === 0

/** The classes one after another, their times shifted, up to a length. */
function repeated(seconds: number): string {
  const classes = readdirSync(CORPUS, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('transcript.txt'))
    .sort()
    .map((name) => readFileSync(path.join(CORPUS, name), 'utf8').trim().split('\n'))
  if (classes.length === 0) throw new Skipped('The annotated classes of tests/fixtures/corpus are not there.')
  const out: string[] = []
  for (let start = 0, at = 0; start < seconds; at++) {
    let last = 0
    for (const line of classes[at % classes.length] ?? []) {
      const [, minutes = '0', rest = '0', text = ''] = /^\[(\d+):(\d\d)\] (.*)/.exec(line) ?? []
      last = Number(minutes) * 60 + Number(rest)
      const time = start + last
      if (time < seconds) out.push(`[${Math.floor(time / 60)}:${String(time % 60).padStart(2, '0')}] ${text}`)
    }
    start += last + 20
  }
  return out.join('\n')
}
