/** A studio in a process of its own that tests kill without warning, and what must hold of it after each kill. */
import { spawn, spawnSync } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { existsSync, readdirSync, statSync } from 'node:fs'
import path from 'node:path'
import { expect, onTestFinished } from 'vitest'
import { makeIds } from '../../server/store/make-ids.ts'
import { openStore } from '../../server/store/open-store.ts'
import type { Store } from '../../server/store/open-store.ts'
import { FFMPEG } from './media-samples.ts'
import { projectRoot } from './source-files.ts'
import { tempFolder } from './temp-folder.ts'

export interface KilledStudio {
  data: string
  store: Store
  /** Changes with each start. */
  url: () => string
  kill: () => Promise<void>
  start: () => Promise<void>
}

/** @param data its folder; what lies there is used */
export async function openKilledStudio(data?: string): Promise<KilledStudio> {
  data ??= await tempFolder()
  const command = path.join(projectRoot, 'server', 'cli', 'repslate.mjs')
  let child: ChildProcess | null = null
  let url = ''
  const start = async (): Promise<void> => {
    const started = spawn(process.execPath, [command, 'serve', '--port', '0', '--data', data], {
      stdio: ['ignore', 'pipe', 'ignore'],
    })
    child = started
    url = await new Promise<string>((resolve) => {
      started.stdout.setEncoding('utf8').on('data', (text: string) => resolve(text.trim()))
      // killed before it was open: whoever asks will ask again
      started.once('close', () => resolve('http://127.0.0.1:9'))
    })
  }
  const kill = async (): Promise<void> => {
    const killed = child
    if (!killed || killed.exitCode !== null || killed.signalCode !== null) return
    const closed = new Promise((resolve) => killed.once('close', resolve))
    killed.kill('SIGKILL')
    await closed
  }
  onTestFinished(kill)
  const store = await openStore({ dataFolder: data }, { ids: makeIds(Date.now), clock: Date.now })
  onTestFinished(() => store.close())
  return { data, store, url: () => url, kill, start }
}

/** Waits until the last job of this kind is done; a failed one is told. */
export async function done({ store }: Pick<KilledStudio, 'store'>, recordingId: string, kind: string): Promise<void> {
  const open = async (): Promise<string[]> =>
    (await store.jobs.list({ recordingId }))
      .filter((job) => job.kind === kind && job.state !== 'done')
      .map(({ state, error }) => `${state} ${error?.code ?? ''}`)
  await expect.poll(open, { timeout: 600_000, interval: 200 }).toEqual([])
}

/** Every film that can be seen under its own name, in the class's clips and in the library. */
function clipsSeen(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const place = path.join(folder, entry.name)
    if (entry.name.startsWith('.')) return []
    if (entry.isDirectory()) return clipsSeen(place)
    return entry.name.endsWith('.mp4') ? [place] : []
  })
}

const checked = new Set<string>()

/** Decodes each once; a half one ends with an error. */
export function halfClips(data: string): string[] {
  const media = path.join(data, 'media')
  // a studio that is killed at once has no folder yet
  return (existsSync(media) ? clipsSeen(media) : []).filter((clip) => {
    const { size, mtimeMs } = statSync(clip)
    const key = `${clip} ${size} ${mtimeMs}`
    if (checked.has(key)) return false
    checked.add(key)
    const run = spawnSync(FFMPEG, ['-nostdin', '-v', 'error', '-xerror', '-i', clip, '-f', 'null', '-'])
    return size === 0 || run.status !== 0 || run.stderr.length > 0
  })
}
