// ffmpeg never runs, grows or stays without end: time, processor time, size, cancelling, a full disk.
import { execFileSync, spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readdirSync } from 'node:fs'
import { chmod, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { beforeAll, describe, expect, it, onTestFinished } from 'vitest'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import type { Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { probeFile } from '../../core/media/engine/probe-file.ts'
import { runFfmpeg } from '../../core/media/engine/run-ffmpeg.ts'
import type { FfmpegJob } from '../../core/media/engine/run-ffmpeg.ts'
import { cutRecording } from '../../server/actions/cut-recording.ts'
import { buildSegment, buildSheet } from '../helpers/build-sheet.ts'
import { processesLeft } from '../helpers/media-processes.ts'
import { FFMPEG, samplePath } from '../helpers/media-samples.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

let found: Ffmpeg
beforeAll(async () => {
  found = await findFfmpeg()
})

const AMPLE = { timeoutMs: 60_000, cpuSeconds: 60, maxBytes: 1_000_000_000 }

/** Encodes a sample over and over: it would never end. */
const endless = (out: string, fields: Partial<FfmpegJob>): FfmpegJob => ({
  doing: 'Encoding for ever',
  inputs: [{ path: samplePath('cfr-30'), options: ['-stream_loop', '-1'] }],
  outputs: [{ path: out, options: ['-c:v', 'libx264', '-preset', 'ultrafast', '-c:a', 'copy', '-f', 'matroska'] }],
  limits: AMPLE,
  expectMs: 1_000_000,
  ...fields,
})

describe('a run without end', () => {
  it.each([
    { limit: 'time', limits: { ...AMPLE, timeoutMs: 800 }, code: 'engine-timeout' },
    { limit: 'processor time', limits: { ...AMPLE, cpuSeconds: 1 }, code: 'engine-timeout' },
    { limit: 'size', limits: { ...AMPLE, maxBytes: 200_000 }, code: 'engine-too-big' },
  ])('is stopped at its limit of $limit and its output removed', async ({ limits, code }) => {
    const out = join(await tempFolder(), 'endless.part')
    await expect(runFfmpeg(found, endless(out, { limits }))).rejects.toMatchObject({ name: 'AppError', code })
    expect(existsSync(out)).toBe(false)
    expect(await processesLeft(out, 3)).toEqual([])
  })

  it('is not stopped at once when it may last longer than a timer can wait', async () => {
    const limits = { ...AMPLE, timeoutMs: 2 ** 31 }
    const out = join(await tempFolder(), 'short.part')
    const inputs = [{ path: samplePath('cfr-30'), options: [] }]
    await runFfmpeg(found, { ...endless(out, { limits }), inputs })
    expect(existsSync(out)).toBe(true)
  })

  it('ends when cancelled, and tells nothing more', async () => {
    const out = join(await tempFolder(), 'endless.part')
    const controller = new AbortController()
    let after = 0
    const onProgress = (): void => {
      if (controller.signal.aborted) after += 1
      controller.abort()
    }
    const run = runFfmpeg(found, endless(out, { signal: controller.signal, onProgress }))
    await expect(run).rejects.toMatchObject({ code: 'engine-cancelled' })
    expect(after).toBe(0)
    expect(existsSync(out)).toBe(false)
    expect(await processesLeft(out, 3)).toEqual([])
  })

  it('is killed when it does not end on request', async () => {
    const folder = await tempFolder()
    const script = join(folder, 'ffmpeg')
    await writeFile(
      script,
      `#!/bin/sh\ncase "$*" in *stubborn.part*) trap '' TERM; while :; do read -r _ < /dev/null; done;; esac\nexec "${FFMPEG}" "$@"\n`,
    )
    await chmod(script, 0o755)
    const out = join(folder, 'stubborn.part')
    const job = endless(out, { limits: { ...AMPLE, timeoutMs: 300 } })
    await expect(runFfmpeg({ ...found, ffmpeg: script }, job)).rejects.toMatchObject({ code: 'engine-timeout' })
    expect(await processesLeft(out, 3)).toEqual([])
  })
})

describe('a run that fails', () => {
  it('says in plain words why, with the last lines as details', async () => {
    const folder = await tempFolder()
    const job = endless(join(folder, 'no', 'such', 'folder.part'), {})
    const error = await runFfmpeg(found, job).catch((reason: unknown) => reason)
    expect(error).toMatchObject({ name: 'AppError', code: 'engine-failed' })
    expect((error as Error).message).toMatch(/^Encoding for ever failed: ffmpeg says ".*No such file or directory"\.$/)
  })

  it('when ffmpeg is gone since it was found', async () => {
    const job = endless(join(await tempFolder(), 'x.part'), {})
    const run = runFfmpeg({ ...found, ffmpeg: '/nowhere/ffmpeg' }, job)
    await expect(run).rejects.toMatchObject({ name: 'AppError' })
  })

  it('when the probe hangs', async () => {
    const script = join(await tempFolder(), 'ffprobe')
    await writeFile(script, '#!/bin/sh\nexec sleep 60\n')
    await chmod(script, 0o755)
    const controller = new AbortController()
    setTimeout(() => controller.abort(), 200)
    const run = probeFile({ ...found, ffprobe: script }, samplePath('cfr-30'), controller.signal)
    await expect(run).rejects.toMatchObject({ code: 'engine-cancelled' })
  })
})

describe('a full disk', () => {
  const sheet = buildSheet({ durationMs: 16_000, segments: [buildSegment('a', 0, 16)] })

  it('is told before the work when the clips cannot fit', async () => {
    const outDir = smallDisk(await tempFolder(), 300)
    const run = cutRecording({ recordingPath: samplePath('cfr-30'), sheet, outDir, jobs: 1 })
    await expect(run).rejects.toMatchObject({ code: 'disk-full', message: /need about 0\.6 MB and 0\.\d MB are free/ })
    expect(readdirSync(outDir)).toEqual([])
  })

  it('in the middle of the work gives a clear error and leaves no half file', async () => {
    const outDir = smallDisk(await tempFolder(), 700)
    const manifest = await cutRecording({ recordingPath: samplePath('cfr-30'), sheet, outDir, jobs: 1 })
    expect(manifest.clips).toEqual([])
    expect(manifest.failed).toMatchObject([{ segmentId: 'a', code: 'disk-full', message: /the disk is full/ }])
    expect(readdirSync(outDir).sort()).toEqual(['.work', 'manifest.json'])
    expect(readdirSync(join(outDir, '.work')).filter((name) => name.endsWith('.part'))).toEqual([])
  })

  it('with no room even for the manifest is an error', async () => {
    const outDir = smallDisk(await tempFolder(), 700)
    const request = { recordingPath: samplePath('cfr-30'), outDir, jobs: 1 }
    const short = buildSheet({ durationMs: 16_000, segments: [buildSegment('a', 0, 4)] })
    await cutRecording({ ...request, sheet: short })
    spawnSync('sh', ['-c', 'rm "$1/manifest.json"; cat /dev/zero > "$1/filler"', 'sh', outDir])
    await expect(cutRecording({ ...request, sheet: short })).rejects.toMatchObject({ code: 'disk-full' })
    expect(readdirSync(outDir).sort()).toEqual(['.work', 'clips', 'filler'])
  })

  it('or a limit on file size is told apart', async () => {
    const script = join(await tempFolder(), 'ffmpeg')
    await writeFile(script, `#!/bin/sh\nexec prlimit --fsize=100000 "${FFMPEG}" "$@"\n`)
    await chmod(script, 0o755)
    const request = { recordingPath: samplePath('cfr-30'), sheet, outDir: await tempFolder(), jobs: 1 }
    const manifest = await cutRecording({ ...request, found: { ...found, ffmpeg: script } })
    expect(manifest.failed).toMatchObject([{ code: 'engine-too-big' }])
    expect(readdirSync(request.outDir).sort()).toEqual(['.work', 'manifest.json'])
  })
})

/** A disk of so many kilobytes, mounted in the folder (needs root on Linux; anything else fails the test). */
function smallDisk(folder: string, kilobytes: number): string {
  const path = join(folder, 'disk')
  mkdirSync(path)
  execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${kilobytes}k`, 'tmpfs', path])
  onTestFinished(() => {
    execFileSync('umount', ['-l', path])
  })
  return path
}
