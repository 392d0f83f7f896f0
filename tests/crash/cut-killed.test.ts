// The whole program killed (SIGKILL) in the middle of a cut: no ffmpeg goes on, no half clip is seen, the next run goes on.
import { spawn, spawnSync } from 'node:child_process'
import { readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { beforeAll, expect, it } from 'vitest'
import { guardWorks } from '../../core/media/engine/guard-process.ts'
import { cutRecording } from '../../server/actions/cut-recording.ts'
import { writeLogSheet } from '../../shared/read-log-sheet.ts'
import { buildSegment, buildSheet } from '../helpers/build-sheet.ts'
import { processesLeft, processesWith } from '../helpers/media-processes.ts'
import { readNumbers } from '../helpers/media-reading.ts'
import { samplePath } from '../helpers/media-samples.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))
const BUILT = join(ROOT, '.build')

const SHEET = buildSheet({
  durationMs: 16_000,
  segments: [buildSegment('a', 0, 3), buildSegment('b', 5, 9), buildSegment('c', 1, 6)],
})
const FRAMES: Record<string, number> = { 'exercise-a': 180, 'exercise-b': 240, 'exercise-c': 300 }

/** When to kill: after the first line that starts so, and then so many ms. */
const KILLS = [
  { after: 'step', ms: 0 },
  { after: 'step', ms: 250 },
  { after: 'clip', ms: 0 },
  { after: 'clip', ms: 150 },
  { after: 'clip', ms: 400 },
  { after: 'clip', ms: 900 },
  { after: 'clip 100', ms: 0 },
]

beforeAll(() => {
  spawnSync(process.execPath, [join(ROOT, 'node_modules/typescript/bin/tsc'), '-b', 'server'], { cwd: ROOT })
  expect(guardWorks(), 'setpriv of util-linux is needed for these tests').toBe(true)
}, 120_000)

/** ffmpeg processes that were at work when their parent was killed, over all cases. */
let running = 0

it.each(KILLS)('killed $ms ms after "$after"', async ({ after, ms }) => {
  const folder = await tempFolder()
  const outDir = join(folder, 'out')
  const sheetPath = join(folder, 'sheet.json')
  writeFileSync(sheetPath, writeLogSheet(SHEET))
  await cutAndKill([BUILT, samplePath('cfr-59.94'), sheetPath, outDir], after, ms)

  expect(await processesLeft(outDir, 2), 'ffmpeg that goes on').toEqual([])
  expectWholeClips(outDir)
  const manifest = await cutRecording({ recordingPath: samplePath('cfr-59.94'), sheet: SHEET, outDir, jobs: 2 })
  expect(manifest.failed).toEqual([])
  expect(manifest.clips).toHaveLength(3)
  expectWholeClips(outDir)
  expect(readdirSync(join(outDir, '.work')).filter((name) => name.endsWith('.part'))).toEqual([])
})

it('some of those kills met ffmpeg at work', () => {
  expect(running).toBeGreaterThan(0)
})

/** REPSLATE_SOAK=1 takes the long form. */
const MANY = process.env.REPSLATE_SOAK === '1' ? { clips: 40, kills: 25 } : { clips: 6, kills: 2 }

it(`${MANY.clips} clips, killed ${MANY.kills} times on the way`, async () => {
  const folder = await tempFolder()
  const outDir = join(folder, 'out')
  const sheetPath = join(folder, 'sheet.json')
  const places = Array.from({ length: MANY.clips }, (_, index) => ({
    start: index % 13,
    seconds: 1 + Math.floor(index / 13),
  }))
  const segments = places.map(({ start, seconds }, index) => buildSegment(`m${index}`, start, start + seconds))
  const sheet = buildSheet({ durationMs: 16_000, segments })
  // what each clip holds is told by a cut that nobody disturbs
  const calm = await cutRecording({
    recordingPath: samplePath('cfr-59.94'),
    sheet,
    outDir: join(folder, 'calm'),
    jobs: 2,
  })
  for (const { segmentId, frames } of calm.clips) FRAMES[`exercise-${segmentId}`] = frames
  writeFileSync(sheetPath, writeLogSheet(sheet))
  let whole = 0
  for (let kill = 0; kill < MANY.kills; kill += 1) {
    // spread over a second and a half by the golden ratio: the same moments each time, no two alike
    const ms = Math.round(((kill * 0.618) % 1) * 1500)
    await cutAndKill([BUILT, samplePath('cfr-59.94'), sheetPath, outDir], 'clip', ms)
    expect(await processesLeft(outDir, 2), 'ffmpeg that goes on').toEqual([])
    expectWholeClips(outDir)
    const seen = listed(join(outDir, 'clips')).filter((name) => name.endsWith('.mp4')).length
    expect(seen, 'clips once seen stay').toBeGreaterThanOrEqual(whole)
    whole = seen
  }
  const manifest = await cutRecording({ recordingPath: samplePath('cfr-59.94'), sheet, outDir, jobs: 2 })
  expect(manifest.failed).toEqual([])
  expect(manifest.clips).toHaveLength(MANY.clips)
  expectWholeClips(outDir)
  expect(readdirSync(join(outDir, '.work')).filter((name) => name.endsWith('.part'))).toEqual([])
}, 600_000)

it('a run that is alive keeps its part files when another run starts in the same folder', async () => {
  const outDir = await tempFolder()
  const request = { recordingPath: samplePath('cfr-59.94'), sheet: SHEET, outDir, jobs: 1 }
  const results = await Promise.all([cutRecording(request), cutRecording(request)])
  for (const { clips, failed } of results) expect([clips.length, failed]).toEqual([3, []])
  expectWholeClips(outDir)
})

function cutAndKill(args: string[], after: string, ms: number): Promise<void> {
  const outDir = args.at(-1) ?? ''
  const child = spawn(process.execPath, [join(ROOT, 'tests/crash/cut-child.mjs'), ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let errors = ''
  child.stderr.on('data', (chunk: Buffer) => (errors += chunk.toString()))
  return new Promise((resolve, reject) => {
    let seen = ''
    let armed = false
    child.stdout.on('data', (chunk: Buffer) => {
      seen += chunk.toString()
      if (armed || !seen.split('\n').some((line) => line.startsWith(after))) return
      armed = true
      setTimeout(() => {
        running += processesWith(outDir).filter((pid) => pid !== child.pid).length
        child.kill('SIGKILL')
      }, ms)
    })
    child.on('close', (code, signal) => {
      if (signal === 'SIGKILL' || code === 0) resolve()
      else reject(new Error(`the child ended with ${code}: ${errors}`))
    })
  })
}

/** Every clip that is seen has all its frames, one after the other. */
function expectWholeClips(outDir: string): void {
  const clips = listed(join(outDir, 'clips')).filter((name) => name.endsWith('.mp4'))
  for (const clip of clips) {
    const name = clip.replace(/-[0-9a-f]{16}\.mp4$/, '')
    const numbers = readNumbers(join(outDir, 'clips', clip))
    expect(numbers.length).toBe(FRAMES[name])
    expect(numbers.every((number, at) => at === 0 || number === (numbers[at - 1] ?? 0) + 1)).toBe(true)
  }
}

function listed(folder: string): string[] {
  try {
    return readdirSync(folder)
  } catch {
    return []
  }
}
