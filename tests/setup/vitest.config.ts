// Vitest's projects: what runs where, and how long it may take.
import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('../..', import.meta.url))

/** Files run at once: two at least, since much of the time one waits for a process or a browser. */
const WORKERS = Math.max(2, availableParallelism() - 1)

/** One project: a name, its folders below tests/, and a time limit in ms for one test. */
const project = (
  name: string,
  folders: string[],
  testTimeout: number,
  { oneAtATime = false, isolate = true } = {},
) => ({
  test: {
    name,
    root,
    include: folders.map((folder) => `tests/${folder}/**/*.test.ts`),
    setupFiles: ['tests/setup/no-stray-output.ts'],
    testTimeout,
    hookTimeout: testTimeout,
    expect: { poll: { timeout: 20_000 } },
    isolate,
    fileParallelism: !oneAtATime,
    maxWorkers: oneAtATime ? 1 : WORKERS,
  },
})

export default defineConfig({
  root,
  test: {
    reporters: ['default'],
    projects: [
      project('architecture', ['architecture'], 60_000),
      // pure: files share what they import
      project('core', ['core', 'shared'], 20_000, { isolate: false }),
      project('unit', ['server', 'views'], 20_000),
      project('conformance', ['conformance'], 60_000),
      project('contract', ['contract'], 60_000),
      // beside the browser's tests (run-tests.mjs)
      project('media', ['media'], 240_000, { oneAtATime: true }),
      project('journey', ['journey'], 240_000, { oneAtATime: true }),
      project('crash', ['crash'], 240_000, { oneAtATime: true }),
    ],
  },
})
