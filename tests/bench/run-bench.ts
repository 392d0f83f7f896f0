/**
 * `npm run bench [-- --quick] [-- name …]`: runs the measurements of this folder, each in a fresh process, and prints
 * medians beside their raw values. Ends with 1 when one failed or missed a goal. The figures are kept in .build/bench.
 */
import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { availableParallelism, cpus, loadavg, tmpdir, totalmem } from 'node:os'
import path from 'node:path'
import { fileURLToPath } from 'node:url'
import { projectRoot } from '../../server/setup/project-root.ts'
import { Skipped } from './bench.ts'
import type { Bench, Report } from './bench.ts'
import { writeReport } from './write-report.ts'

const here = fileURLToPath(import.meta.url)
const ENDING = '.bench.js'

const words = process.argv.slice(2)
const quick = words.includes('--quick')
const one = words.indexOf('--one')
process.exitCode = one === -1 ? runAll(words.filter((word) => !word.startsWith('--'))) : await runOne(words[one + 1])

function runAll(wanted: readonly string[]): number {
  const known = readdirSync(path.dirname(here))
    .filter((name) => name.endsWith(ENDING))
    .map((name) => name.slice(0, -ENDING.length))
    .sort()
  const strange = wanted.filter((name) => !known.includes(name))
  if (strange.length > 0) {
    say(`There is no measurement "${strange.join('", "')}". There are: ${known.join(', ')}.\n`)
    return 2
  }
  const [cpu] = cpus()
  print(`Node ${process.versions.node}, ${availableParallelism()} cores (${cpu?.model.trim() ?? 'unknown'}), `)
  print(`${(totalmem() / 1e9).toFixed(1)} GB, load ${loadavg()[0]?.toFixed(1) ?? '?'}${quick ? ', quick' : ''}\n`)
  const failed = (wanted.length > 0 ? wanted : known).filter((name) => {
    const args = [here, '--one', name, ...(quick ? ['--quick'] : [])]
    return spawnSync(process.execPath, args, { stdio: 'inherit' }).status !== 0
  })
  if (failed.length > 0) say(`bench: not as wanted: ${failed.join(', ')}\n`)
  return failed.length > 0 ? 1 : 0
}

async function runOne(name: string | undefined): Promise<number> {
  const { bench } = (await import(`./${name}${ENDING}`)) as { bench: Bench }
  print(`\n${name}: ${bench.about}\n`)
  const folder = mkdtempSync(path.join(tmpdir(), `repslate-bench-${name}-`))
  try {
    const report = await bench.run({ quick, folder, say: (text) => say(`  … ${text}\n`) })
    const { text, met } = writeReport(report)
    print(text)
    keep(name ?? '', report)
    return met ? 0 : 1
  } catch (error) {
    if (!(error instanceof Skipped)) throw error
    print(`  skipped: ${error.message}\n`)
    return 0
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

function keep(name: string, report: Report): void {
  const folder = path.join(projectRoot(), '.build', 'bench')
  mkdirSync(folder, { recursive: true })
  const about = { name, quick, node: process.versions.node, cores: availableParallelism(), load: loadavg()[0] }
  writeFileSync(path.join(folder, `${name}.json`), `${JSON.stringify({ ...about, ...report }, null, 2)}\n`)
}

function print(text: string): void {
  process.stdout.write(text)
}

function say(text: string): void {
  process.stderr.write(text)
}
