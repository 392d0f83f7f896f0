// What the npm scripts call: does the missing set-up, then the named work (demo, test, doctor).
import { spawnSync } from 'node:child_process'
import path from 'node:path'
import './optimise-later.mjs'
import { prepare, root } from './prepare.mjs'

const [work = 'demo', ...rest] = process.argv.slice(2)
prepare()

if (work === 'test') {
  const run = spawnSync(process.execPath, [path.join(root, 'tests', 'setup', 'run-tests.mjs'), ...rest], {
    cwd: root,
    stdio: 'inherit',
  })
  process.exit(run.status ?? 3)
}
const { main } = await import('../../.build/server/cli/main.js')
process.exitCode = await main([work, ...rest])
