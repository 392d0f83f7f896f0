// Measures forty clips from recording to manifest: one after the other, and two side by side.
import { rmSync } from 'node:fs'
import path from 'node:path'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { cutRecording } from '../../server/actions/cut-recording.ts'
import { buildSegment, buildSheet } from '../helpers/build-sheet.ts'
import type { Bench, BenchContext, Report } from './bench.ts'
import { cuttingSamples, makeCuttingSample } from './cutting-samples.ts'
import { costOf } from './cutting-sides.ts'

export const bench: Bench = { about: 'forty clips of one recording, one or two at a time', run }

async function run({ folder, quick, say }: BenchContext): Promise<Report> {
  const found = await findFfmpeg()
  const sample = cuttingSamples(quick).gop250
  const recordingPath = makeCuttingSample(sample)
  const durationMs = sample.pieces * sample.pieceSeconds * 1000
  const count = quick ? 8 : 40
  const stepMs = Math.floor((durationMs - 40_000) / count)
  const segments = Array.from({ length: count }, (_, number) => {
    const fromMs = 10_000 + number * stepMs
    return buildSegment(`s${number}`, fromMs / 1000, (fromMs + 18_000) / 1000)
  })
  const sheet = buildSheet({ durationMs, segments })
  const walls = new Map<number, number[]>([
    [1, []],
    [2, []],
  ])
  const cpus = new Map<number, number[]>([
    [1, []],
    [2, []],
  ])
  // twice, the second time in the other order
  for (const jobs of quick ? [1, 2] : [1, 2, 2, 1]) {
    say(`${count} clips, ${jobs} at a time`)
    const outDir = path.join(folder, `jobs-${jobs}`)
    const { wall, cpu, value } = await costOf(() => cutRecording({ recordingPath, sheet, outDir, jobs, found }))
    if (value.failed.length > 0) throw new Error(JSON.stringify(value.failed))
    walls.get(jobs)?.push(wall)
    cpus.get(jobs)?.push(cpu)
    rmSync(outDir, { recursive: true })
  }
  const sum = (list: readonly number[] = []) => list.reduce((all, one) => all + one, 0)
  return {
    series: [
      { name: `${count} clips, all steps, one job`, unit: 's', raw: walls.get(1) ?? [] },
      { name: `${count} clips, all steps, two jobs`, unit: 's', raw: walls.get(2) ?? [] },
      { name: `${count} clips, all steps, one job`, unit: 'CPU-s', raw: cpus.get(1) ?? [] },
      { name: `${count} clips, all steps, two jobs`, unit: 'CPU-s', raw: cpus.get(2) ?? [] },
    ],
    goals: [
      {
        what: 'two jobs take, of the time of one',
        value: sum(walls.get(2)) / sum(walls.get(1)),
        wants: 'at most',
        limit: 1,
      },
    ],
    notes: [`ffmpeg ${found.version}; the machine may be shared`],
  }
}
