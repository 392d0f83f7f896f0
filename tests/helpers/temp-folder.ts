// A folder of its own for a test, removed when the test is done.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { onTestFinished } from 'vitest'

export async function tempFolder(): Promise<string> {
  const folder = await mkdtemp(path.join(tmpdir(), 'repslate-test-'))
  onTestFinished(() => rm(folder, { recursive: true, force: true }))
  return folder
}
