// Measures cutting: edge cuts beside encoding all and copying all, with how right they are, and how cost grows.
import { rmSync } from 'node:fs'
import path from 'node:path'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import type { Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { median } from './bench.ts'
import type { Bench, BenchContext, Goal, Report, Series } from './bench.ts'
import { judgeClip } from './cutting-quality.ts'
import type { Quality } from './cutting-quality.ts'
import { cuttingSamples, makeCuttingSample } from './cutting-samples.ts'
import {
  copyWhole,
  costOf,
  cutEdge,
  encodeWhole,
  openDesk,
  placeSegments,
  planOne,
  verifyEdge,
} from './cutting-sides.ts'
import type { Cost, Desk } from './cutting-sides.ts'

export const bench: Bench = { about: 'clips cut at their edges, beside encoding all and copying all', run }

/** What one recording showed, each list in the order of the segments. */
interface Measured {
  full: Cost[]
  copy: Cost[]
  edge: Cost[]
  free: (Cost | null)[]
  verify: Cost[]
  quality: Quality[]
  wrong: string[]
  indexCpu: number
  pausesCpu: number
}

async function run(context: BenchContext): Promise<Report> {
  const { quick, say } = context
  const found = await findFfmpeg()
  const samples = cuttingSamples(quick)
  say('making the recordings, once a machine')
  const paths = { gop250: makeCuttingSample(samples.gop250), gop60: makeCuttingSample(samples.gop60) }
  const count = quick ? 4 : 20
  const long = await measure(context, found, paths.gop250, count, true)
  const short = await measure(context, found, paths.gop60, count, false)
  const large = await measure(context, found, makeCuttingSample(samples.large), quick ? 1 : 3, false)
  const growth = await measureGrowth(context, found)
  const series = [...seriesOf('GOP 250', long), ...seriesOf('GOP 60', short), ...seriesOf('1080p60', large), ...growth]
  return {
    series,
    goals: goalsOf(long, short),
    notes: notesOf(found, long, quick),
  }
}

/** Every side on every segment, their order swapped from segment to segment. */
async function measure(
  { folder, say }: BenchContext,
  found: Ffmpeg,
  file: string,
  count: number,
  withFree: boolean,
): Promise<Measured> {
  const desk = await openDesk(found, file, folder)
  const m: Measured = {
    ...{ full: [], copy: [], edge: [], free: [], verify: [], quality: [], wrong: [] },
    ...{ indexCpu: desk.indexCpu, pausesCpu: desk.pausesCpu },
  }
  const out = path.join(folder, 'clip.mp4')
  for (const [number, at] of placeSegments(desk, count).entries()) {
    say(`segment ${number + 1} of ${count}`)
    const sides = [
      async () => m.full.push(await costOf(() => encodeWhole(file, at, out))),
      async () => m.copy.push(await costOf(() => copyWhole(file, at, out))),
      async () => {
        const made = await costOf(() => cutEdge(desk, at, false, out))
        m.edge.push(made)
        const verified = await costOf(() => verifyEdge(desk, made.value, out))
        m.verify.push(verified)
        m.wrong.push(...verified.value)
        m.quality.push(judgeClip(file, made.value.plan, out, at))
      },
      async () => m.free.push(withFree ? await measureFree(desk, at, out) : null),
    ]
    for (const side of number % 2 === 0 ? sides : sides.toReversed()) await side()
  }
  await desk.work.leave(true)
  rmSync(out, { force: true })
  return m
}

/** null when no key frame lies in reach of the in-point. */
async function measureFree(desk: Desk, at: { startMs: number; endMs: number }, out: string): Promise<Cost | null> {
  if (planOne(desk, at, true).method !== 'copy') return null
  return costOf(() => cutEdge(desk, at, true, out))
}

function seriesOf(name: string, m: Measured): Series[] {
  const cpu = (what: string, costs: readonly Cost[]): Series => {
    return { name: `${name}: ${what}`, unit: 'CPU-s a clip', raw: costs.map((cost) => cost.cpu) }
  }
  const wall = (what: string, costs: readonly Cost[]): Series => {
    return { name: `${name}: ${what}`, unit: 's a clip', raw: costs.map((cost) => cost.wall) }
  }
  const free = m.free.filter((cost) => cost !== null)
  const psnr = m.quality.flatMap(({ headPsnr }) => headPsnr ?? [])
  const bytes = m.quality.flatMap(({ headBytes }) => headBytes ?? [])
  return [
    cpu('all encoded', m.full),
    cpu('edge cut', m.edge),
    ...(free.length > 0 ? [cpu('edge cut, in-point free', free)] : []),
    cpu('all copied', m.copy),
    cpu('verifying the edge cut', m.verify),
    wall('all encoded', m.full),
    wall('edge cut', m.edge),
    { name: `${name}: reading once (packet index)`, unit: 'CPU-s', raw: [m.indexCpu] },
    ...(psnr.length > 0 ? [{ name: `${name}: head, PSNR`, unit: 'dB', raw: psnr }] : []),
    { name: `${name}: head, bytes for each recorded`, unit: '', raw: bytes },
  ]
}

function goalsOf(long: Measured, short: Measured): Goal[] {
  const index = (m: Measured) => m.indexCpu / m.edge.length
  const middle = (costs: readonly Cost[]) => median(costs.map(({ cpu }) => cpu))
  const edge = (m: Measured) => middle(m.edge) + index(m)
  const free = long.free.flatMap((cost, number) => (cost ? [{ cost, full: long.full[number] }] : []))
  const quality = [...long.quality, ...short.quality]
  const heads = quality.filter(({ headPsnr }) => headPsnr !== null)
  const copied = quality.reduce((sum, one) => sum + one.copied, 0)
  const least = (what: string, value: number, limit: number): Goal => ({ what, value, wants: 'at least', limit })
  const most = (what: string, value: number, limit: number): Goal => ({ what, value, wants: 'at most', limit })
  return [
    least(
      'GOP 250: all encoded / edge cut with its share of the index, CPU medians',
      middle(long.full) / edge(long),
      6,
    ),
    most('GOP 250: edge cut with its share of the index, CPU-s a clip', edge(long), 2),
    least(
      'GOP 60: all encoded / edge cut with its share of the index, CPU medians',
      middle(short.full) / edge(short),
      9,
    ),
    ...(free.length > 0
      ? [
          least(
            `GOP 250, in-point free: all encoded / edge cut, CPU medians of the ${free.length} of ${long.free.length} that qualified`,
            median(free.map(({ full }) => full?.cpu ?? 0)) / (median(free.map(({ cost }) => cost.cpu)) + index(long)),
            20,
          ),
        ]
      : []),
    most('GOP 250: verifying / edge cut, CPU medians', middle(long.verify) / middle(long.edge), 0.5),
    least('head: least PSNR of all clips, dB', Math.min(...heads.map(({ headPsnr }) => headPsnr ?? 0)), 44),
    most("head: most bytes for each of the recording's", Math.max(...heads.map(({ headBytes }) => headBytes ?? 0)), 3),
    most(
      'in-point: latest start behind its mark, ms (a frame is 33)',
      Math.max(...quality.map((one) => one.inLateMs)),
      34,
    ),
    most('out-point: latest end behind its mark, ms', Math.max(...quality.map((one) => one.outLateMs)), 184),
    least(
      `copied frames that decode the same, of ${copied}`,
      quality.reduce((sum, one) => sum + one.same, 0),
      copied,
    ),
    most('clips that the verifier found wrong', long.wrong.length + short.wrong.length, 0),
  ]
}

/** The same clips out of recordings of 5, 20 and 60 minutes: reading grows with the length, cutting does not. */
async function measureGrowth({ folder, quick, say }: BenchContext, found: Ffmpeg): Promise<Series[]> {
  const sample = cuttingSamples(quick).gop250
  const rowSeconds = sample.pieces * sample.pieceSeconds
  const out = path.join(folder, 'clip.mp4')
  const series: Series[] = []
  for (const minutes of quick ? [5] : [5, 20, 60]) {
    say(`a recording of ${minutes} minutes`)
    const desk = await openDesk(
      found,
      makeCuttingSample(sample, Math.max(1, Math.round((minutes * 60) / rowSeconds))),
      folder,
    )
    const cuts: number[] = []
    for (let number = 0; number < 3; number += 1) {
      // the same place of the picture each time: 3 s before a key frame
      const startMs = 22_000 + number * 75_000
      cuts.push((await costOf(() => cutEdge(desk, { startMs, endMs: startMs + 30_000 }, false, out))).cpu)
    }
    series.push({ name: `${minutes} min: reading once, a minute`, unit: 'CPU-s', raw: [desk.indexCpu / minutes] })
    series.push({ name: `${minutes} min: pauses, a minute`, unit: 'CPU-s', raw: [desk.pausesCpu / minutes] })
    series.push({ name: `${minutes} min: edge cut of 30 s`, unit: 'CPU-s', raw: cuts })
    await desk.work.leave(true)
  }
  return series
}

function notesOf(found: Ffmpeg, long: Measured, quick: boolean): string[] {
  return [
    `ffmpeg ${found.version}; CPU-s = user and system of this process and all it started; the machine may be shared`,
    'both sides code sound by ffmpeg AAC, fast coder, 160 kbit/s; the edge cut also evens the level (gain and limiter)',
    'all encoded: -c:v libx264 -preset veryfast -crf 20; all copied: -c copy, whose start is hidden by an edit list',
    `the pauses of a recording are found once, on import: ${long.pausesCpu.toFixed(2)} CPU-s here, not counted in the clips`,
    'the out-point may lie one frame and 0.15 s behind its mark',
    ...(quick ? ['quick: 5 minutes, 4 segments'] : []),
  ]
}
