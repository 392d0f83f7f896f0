// Runs the checks and the tests, and closes with one line of counts.
// `--only check|quick|real|soak` runs a part; `--only bench [--quick] [name …]` measures.
// Under CI a skipped test fails the run, unless it names outside data.
import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import path from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))
const bin = (name, file) => path.join(root, 'node_modules', name, file)
const only = process.argv.includes('--only') ? process.argv[process.argv.indexOf('--only') + 1] : 'all'

const { ensureFfmpeg, ensureBrowser, ensurePostgres } = await import('../../.build/server/setup/ensure-tools.js')
const say = (text) => process.stderr.write(text)

/** The parts, in order. A vitest part lists its projects. */
const CHECKS = [
  ['types', [bin('typescript', 'bin/tsc'), '-b']],
  [
    'lint',
    [
      bin('eslint', 'bin/eslint.js'),
      '--config',
      'tests/setup/eslint.config.mjs',
      '--max-warnings',
      '0',
      'shared',
      'core',
      'server',
      'views',
      'tests',
    ],
  ],
  [
    'format',
    [
      bin('prettier', 'bin/prettier.cjs'),
      '--check',
      '--log-level',
      'warn',
      'shared',
      'core',
      'server',
      'views',
      'tests',
    ],
  ],
]
const QUICK = ['architecture', 'unit', 'conformance']
const REAL = ['contract', 'media', 'journey', 'crash']

const counts = { passed: 0, failed: 0, skipped: 0 }
const failures = []

if (only === 'all' || only === 'check') runChecks()
if (only === 'check') runProjects('architecture', ['architecture'])
if (only === 'all' || only === 'quick')
  await withTools(async () => {
    // a few read what they wrote with ffprobe
    await ensureFfmpeg(say)
    runProjects('quick', QUICK)
  })
if (only === 'all' || only === 'real' || only === 'soak')
  await withTools(async () => {
    const ffmpeg = await ensureFfmpeg(say)
    const browser = ensureBrowser(say)
    const postgres = ensurePostgres(say)
    say(`ffmpeg ${ffmpeg.version}, browser ${browser}, PostgreSQL ${postgres}\n`)
    process.env.REPSLATE_CHROMIUM = browser
    if (only === 'soak') process.env.REPSLATE_SOAK = '1'
    runProjects('real', REAL)
  })
if (only === 'bench') {
  const words = process.argv.slice(process.argv.indexOf('--only') + 2)
  runNode('build', [bin('typescript', 'bin/tsc'), '-b', 'tests'])
  if (counts.failed === 0) runNode('bench', ['.build/tests/bench/run-bench.js', ...words])
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

function runChecks() {
  for (const [name, args] of CHECKS) runNode(name, args)
}

function runNode(name, args) {
  say(`${name} …\n`)
  const run = spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit' })
  if (run.status === 0) counts.passed += 1
  else {
    counts.failed += 1
    failures.push(name)
  }
}

function runProjects(name, projects) {
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
  const run = spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit' })
  addCounts(name, report, run.status)
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
