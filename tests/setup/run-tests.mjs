// Runs the checks and the tests, and closes with one line of counts.
// `--only check|quick|real|soak` runs a part; `--only bench [--quick] [name …]` measures.
// Under CI a skipped test fails the run, unless it names outside data.
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import path from 'node:path'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))
const bin = (name, file) => path.join(root, 'node_modules', name, file)
const only = process.argv.includes('--only') ? process.argv[process.argv.indexOf('--only') + 1] : 'all'

const { ensureFfmpeg, ensureBrowser, ensurePostgres } = await import('../../.build/server/setup/ensure-tools.js')
const say = (text) => process.stderr.write(text)

const CODE = ['shared', 'core', 'server', 'views', 'tests']
const LINT_SETUP = ['--config', 'tests/setup/eslint.config.mjs', '--max-warnings', '0']
const TYPES = [bin('typescript', 'bin/tsc'), '-b']
const LINT = [bin('eslint', 'bin/eslint.js'), ...LINT_SETUP, ...CODE]
const FORMAT = [bin('prettier', 'bin/prettier.cjs'), '--check', '--log-level', 'warn', ...CODE]

const counts = { passed: 0, failed: 0, skipped: 0 }
const failures = []
const has = (...parts) => parts.includes(only)

// What needs no processor of its own runs beside what does: a browser test mostly waits, a media test mostly computes.
if (has('all', 'check')) await runNode('types', TYPES)
await Promise.all([
  has('all', 'check') && runNode('lint', LINT).then(() => runNode('format', FORMAT)),
  has('check') && runProjects('architecture', ['architecture']),
  has('all', 'quick') && withTools(runQuick),
])
if (has('all', 'real', 'soak')) await withTools(runReal)
if (only === 'bench') {
  const words = process.argv.slice(process.argv.indexOf('--only') + 2)
  await runNode('build', [...TYPES, 'tests'])
  if (counts.failed === 0) await runNode('bench', ['.build/tests/bench/run-bench.js', ...words])
}

for (const failure of failures) say(`FAILED ${failure}\n`)
process.stdout.write(`tests: ${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped\n`)
process.exit(counts.failed > 0 ? 1 : 0)

/** What the machine lacks fails the part that needs it, in words. */
async function withTools(run) {
  try {
    await run()
  } catch (error) {
    failures.push(error.message)
    counts.failed += 1
  }
}

async function runQuick() {
  // a few read what they wrote with ffprobe
  await ensureFfmpeg(say)
  await runProjects('quick', ['architecture', 'core', 'unit', 'conformance'])
}

async function runReal() {
  const ffmpeg = await ensureFfmpeg(say)
  const browser = ensureBrowser(say)
  const postgres = ensurePostgres(say)
  say(`ffmpeg ${ffmpeg.version}, browser ${browser}, PostgreSQL ${postgres}\n`)
  process.env.REPSLATE_CHROMIUM = browser
  if (only === 'soak') process.env.REPSLATE_SOAK = '1'
  await Promise.all([runProjects('media', ['contract', 'media']), runProjects('browser', ['journey', 'crash'])])
}

async function runNode(name, args) {
  say(`${name} …\n`)
  if ((await run(name, args)) === 0) counts.passed += 1
  else {
    counts.failed += 1
    failures.push(name)
  }
}

/** A process whose lines are shown as they come, each behind the name of its part. @returns its exit code, or null */
async function run(name, args) {
  const child = spawn(process.execPath, args, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] })
  const ended = once(child, 'close')
  for (const [from, to] of [
    [child.stdout, process.stdout],
    [child.stderr, process.stderr],
  ])
    createInterface({ input: from }).on('line', (line) => to.write(`${name} | ${line}\n`))
  return (await ended)[0]
}

async function runProjects(name, projects) {
  const report = path.join(root, '.build', `tests-${name}.json`)
  mkdirSync(path.dirname(report), { recursive: true })
  rmSync(report, { force: true })
  const args = [
    bin('vitest', 'vitest.mjs'),
    'run',
    '--config',
    'tests/setup/vitest.config.ts',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...projects.flatMap((project) => ['--project', project]),
  ]
  addCounts(name, report, await run(name, args))
}

function addCounts(name, report, status) {
  let result
  try {
    result = JSON.parse(readFileSync(report, 'utf8'))
  } catch {
    counts.failed += 1
    failures.push(`${name}: the test runner ended without a report`)
    return
  }
  const skipped = result.testResults.flatMap((file) =>
    file.assertionResults.filter(
      (test) => test.status === 'pending' || test.status === 'skipped' || test.status === 'todo',
    ),
  )
  counts.passed += result.numPassedTests
  counts.failed += result.numFailedTests
  counts.skipped += skipped.length
  for (const test of skipped) {
    say(`skipped: ${test.fullName}\n`)
    if (process.env.CI && !/outside data/i.test(test.fullName)) {
      counts.failed += 1
      failures.push(`skipped in CI: ${test.fullName}`)
    }
  }
  if (status !== 0 && result.numFailedTests === 0) {
    counts.failed += 1
    failures.push(`${name}: the test runner failed outside a test`)
  }
}
