/** The sides that are measured beside each other on one segment: plain commands, and the product's own way. */
import { spawnSync } from 'node:child_process'
import { rmSync } from 'node:fs'
import path from 'node:path'
import type { Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { openRecording } from '../../core/media/engine/open-recording.ts'
import type { OpenedRecording } from '../../core/media/engine/open-recording.ts'
import { measureSound } from '../../core/media/engine/run-analysis.ts'
import { runEdgeCut } from '../../core/media/engine/run-edge-cut.ts'
import { verifyClip } from '../../core/media/engine/verify-clip.ts'
import { findSpeech } from '../../core/media/find-speech.ts'
import { planCut } from '../../core/media/plan-cut.ts'
import type { ClipPlan } from '../../core/media/plan-cut.ts'
import type { EdgeSource } from '../../core/media/plan-edge-cut.ts'
import { clipLimits } from '../../core/media/plan-limits.ts'
import { planLoudness } from '../../core/media/plan-loudness.ts'
import { openEdgeSource } from '../../server/actions/open-edge-source.ts'
import { openWorkFolder } from '../../server/actions/cut-work-folder.ts'
import type { WorkFolder } from '../../server/actions/cut-work-folder.ts'
import { Segment } from '../../shared/log-sheet.ts'
import type { Stretch } from '../../shared/time.ts'
import { childCpuSeconds, Skipped } from './bench.ts'

export interface Desk {
  found: Ffmpeg
  path: string
  recording: OpenedRecording
  source: EdgeSource
  work: WorkFolder
  pauses: Stretch[]
  /** CPU-s of the packet index and all else that is read once. */
  indexCpu: number
  /** CPU-s of finding the pauses. */
  pausesCpu: number
}

export interface Cost {
  cpu: number
  wall: number
}

/** CPU-s of this process and of all its children, and wall time. */
export async function costOf<Value>(work: () => Promise<Value> | Value): Promise<Cost & { value: Value }> {
  const [own, child, start] = [process.cpuUsage(), childCpuSeconds(), performance.now()]
  if (child === null) throw new Skipped('CPU time of children is read from /proc, which this system has not.')
  const value = await work()
  const used = process.cpuUsage(own)
  const cpu = (used.user + used.system) / 1e6 + (childCpuSeconds() ?? 0) - child
  return { cpu, wall: (performance.now() - start) / 1000, value }
}

export async function openDesk(found: Ffmpeg, file: string, folder: string): Promise<Desk> {
  const work = await openWorkFolder(path.join(folder, 'work'), Date.now())
  const opened = await costOf(async () => {
    const recording = await openRecording(found, file)
    const edge = await openEdgeSource(found, work, recording, undefined)
    if (typeof edge === 'string') throw new Error(`The sample cannot be cut at its edges: ${edge}.`)
    return { recording, source: edge.source }
  })
  const { recording, source } = opened.value
  const { audio, durationMs } = recording
  if (!audio) throw new Error('The sample has no sound.')
  const sound = await costOf(() => measureSound(found, { path: file, audio, durationMs }))
  const { pauses } = findSpeech(sound.value.levels, durationMs)
  return { ...{ found, path: file, recording, source, work, pauses }, indexCpu: opened.cpu, pausesCpu: sound.cpu }
}

/** Lessons of 20 to 60 s all over the recording, each starting well inside a pause, as a draft has them. */
export function placeSegments({ pauses, recording }: Desk, count: number): Stretch[] {
  const step = (recording.durationMs - 65_000) / count
  return Array.from({ length: count }, (_, number) => {
    const wantedMs = 5000 + number * step
    const pause = pauses.find((one) => one.startMs >= wantedMs) ?? { startMs: wantedMs, endMs: wantedMs + 1000 }
    const startMs = Math.round(pause.startMs + (pause.endMs - pause.startMs) * 0.6)
    return { startMs, endMs: startMs + 20_000 + Math.round((number * 40_000 * 0.618) % 40_000) }
  })
}

/** @param free true lets the in-point move inside its pause. */
export function planOne({ recording, source, pauses }: Desk, { startMs, endMs }: Stretch, free: boolean): ClipPlan {
  return planCut({
    segment: Segment.parse({ id: 'a', exercise: { name: 'a' }, spans: [{ startMs, endMs }] }),
    ...{ recording, index: recording.index, sha256: '', edge: source, pauses: free ? pauses : [] },
    // a gain and a limiter, as a class filmed from afar needs
    loudness: planLoudness({ integratedLufs: -24, truePeakDbtp: -4 }),
  })
}

/** Plans and cuts, as the product does. */
export async function cutEdge(desk: Desk, at: Stretch, free: boolean, out: string) {
  const plan = planOne(desk, at, free)
  if (!plan.edge) throw new Error(plan.why)
  const copied = await runEdgeCut(desk.found, {
    ...{ doing: 'Cutting', recordingPath: desk.path, source: desk.source, sourcePath: desk.path, outPath: out },
    ...{ plan: plan.edge.plan, command: plan.edge.command, partPath: desk.work.partPath },
    limits: clipLimits(plan.durationMs, 1920 * 1080),
    expectMs: plan.durationMs,
  })
  return { plan, copied }
}

export function verifyEdge(desk: Desk, made: Awaited<ReturnType<typeof cutEdge>>, out: string): Promise<string[]> {
  const { found, path: recordingPath, recording, work } = desk
  return verifyClip(found, { ...made, clipPath: out, recordingPath, recording, partPath: work.partPath })
}

const GUARDS = ['-protocol_whitelist', 'file,pipe', '-format_whitelist', 'mov']
/** Both sides code sound with the same coder: ffmpeg's AAC, fast, 160 kbit/s. */
export const SOUND = ['-c:a', 'aac', '-aac_coder', 'fast', '-b:a', '160k']

/** ffmpeg -ss A -t D -i src -map 0:v:0 -map 0:a:0 -c:v libx264 -preset veryfast -crf 20 + sound: encodes all. */
export function encodeWhole(file: string, at: Stretch, out: string): void {
  plain(file, at, ['-c:v', 'libx264', '-preset', 'veryfast', '-crf', '20', ...SOUND], out)
}

/** ffmpeg -ss A -t D -i src -map 0:v:0 -map 0:a:0 -c copy: starts at a key frame before, hidden by an edit list. */
export function copyWhole(file: string, at: Stretch, out: string): void {
  plain(file, at, ['-c', 'copy'], out)
}

function plain(file: string, { startMs, endMs }: Stretch, coding: string[], out: string): void {
  rmSync(out, { force: true })
  const where = ['-ss', (startMs / 1000).toFixed(3), '-t', ((endMs - startMs) / 1000).toFixed(3)]
  const what = ['-map', '0:v:0', '-map', '0:a:0', ...coding, '-movflags', '+faststart']
  const args = ['-nostdin', '-v', 'error', '-y', ...where, ...GUARDS, '-i', file, ...what, out]
  const run = spawnSync('ffmpeg', args)
  if (run.status !== 0) throw new Error(run.stderr.toString())
}
