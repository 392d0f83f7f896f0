/** The one pass over a recording beside the plain commands for the same: processor seconds, and how soon marking can start. */
import { spawnSync } from 'node:child_process'
import { mkdirSync, rmSync } from 'node:fs'
import path from 'node:path'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import type { Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { openRecording } from '../../core/media/engine/open-recording.ts'
import { lookThrough } from '../../core/media/engine/run-analysis.ts'
import { findSpeech } from '../../core/media/find-speech.ts'
import { planThumbs } from '../../core/media/plan-analysis.ts'
import { childCpuSeconds, median, Skipped, swapRounds } from './bench.ts'
import type { Bench, BenchContext, Report } from './bench.ts'

export const bench: Bench = { about: 'the one pass over a recording, beside the plain commands', run }

/** Unique film that is repeated, and how often: 20 minutes of 720p, 30 frames a second, 3 Mb/s, a key frame every 250. */
const PIECE_SECONDS = 60

interface Figures {
  cpu: number[]
  readyMs: number[]
  wallMs: number[]
}

async function run({ quick, folder, say }: BenchContext): Promise<Report> {
  if (childCpuSeconds() === null) throw new Skipped('This system does not tell the processor time of children.')
  const found = await findFfmpeg()
  const pieces = quick ? 5 : 20
  say(`making ${pieces} minutes of film`)
  const film = makeFilm(found, folder, pieces)
  const [ours, plain]: [Figures, Figures] = [
    { cpu: [], readyMs: [], wallMs: [] },
    { cpu: [], readyMs: [], wallMs: [] },
  ]
  await swapRounds(quick ? 3 : 5, [
    async (round) => {
      say(`round ${round + 1}, one pass`)
      await inFolder(folder, (work) => measure(ours, (ready) => lookOnce(found, film, work, ready)))
    },
    async (round) => {
      say(`round ${round + 1}, plain commands`)
      await inFolder(folder, (work) => measure(plain, () => runPlain(found, film, work)))
    },
  ])
  const memoryMb = process.resourceUsage().maxRSS / 1024
  return {
    series: [
      { name: 'one pass: index, sound, loudness, pictures, dull parts', unit: 'CPU-s', raw: ours.cpu },
      { name: 'plain commands: packet list, combined pass', unit: 'CPU-s', raw: plain.cpu },
      { name: 'one pass, until marking can start', unit: 'ms', raw: ours.readyMs },
      { name: 'one pass, until all is there', unit: 'ms', raw: ours.wallMs },
      { name: 'memory of the measuring process', unit: 'MB', raw: [memoryMb] },
    ],
    goals: [
      {
        what: 'processor time of the one pass over that of the plain commands',
        value: median(ours.cpu) / median(plain.cpu),
        ...{ wants: 'at most', limit: 1.15 },
      },
    ],
    notes: [
      `ffmpeg ${found.version}; ${pieces} minutes of 1280 x 720, 30 frames a second, a key frame every 250; the sum of the file is not counted`,
      'the plain commands find pauses by a fixed level, 8 kHz samples and scene changes; the one pass 16 kHz samples, speech by a level that follows the room, black and still parts, and a small picture every 2 s',
    ],
  }
}

function makeFilm({ ffmpeg }: Ffmpeg, folder: string, pieces: number): string {
  const [piece, film] = [path.join(folder, 'piece.mp4'), path.join(folder, 'film.mp4')]
  const picture = `testsrc2=s=1280x720:r=30:d=${PIECE_SECONDS},noise=alls=8:allf=t`
  const sound = `anoisesrc=c=pink:r=48000:a=0.3:d=${PIECE_SECONDS},tremolo=f=1.3:d=0.9,aformat=channel_layouts=stereo`
  const x264 = ['-c:v', 'libx264', '-preset', 'superfast', '-b:v', '3M', '-g', '250', '-keyint_min', '250', '-bf', '3']
  must(ffmpeg, ['-f', 'lavfi', '-i', picture, '-f', 'lavfi', '-i', sound, ...x264, '-pix_fmt', 'yuv420p', piece])
  must(ffmpeg, ['-stream_loop', String(pieces - 1), '-i', piece, '-c', 'copy', film])
  return film
}

async function lookOnce(found: Ffmpeg, film: string, work: string, ready: () => void): Promise<void> {
  const opened = await openRecording(found, film)
  ready()
  const looked = await lookThrough(found, opened, planThumbs(opened, opened.durationMs), work)
  if (looked.sound) findSpeech(looked.sound.levels, opened.durationMs)
}

function runPlain({ ffmpeg, ffprobe }: Ffmpeg, film: string, work: string): Promise<void> {
  const packets = [
    '-select_streams',
    'v:0',
    '-show_entries',
    'packet=pts,dts,duration,size,pos,flags',
    '-of',
    'csv=p=0',
  ]
  must(ffprobe, ['-v', 'error', ...packets, film], false)
  const sound =
    '[0:a]asplit=3[a][b][c];[a]pan=mono|c0=c0,silencedetect=n=-35dB:d=0.6,anullsink;[b]ebur128=framelog=verbose:peak=true,anullsink'
  const samples = '[c]aresample=8000,aformat=sample_fmts=s16:channel_layouts=mono[o]'
  const pictures = '[0:v]scale=160:-2,scdet=t=10,tile=10x5[v]'
  must(ffmpeg, [
    ...['-skip_frame', 'nokey', '-i', film, '-filter_complex', [sound, samples, pictures].join(';')],
    ...['-map', '[o]', '-f', 's16le', path.join(work, 'peaks.raw')],
    ...['-map', '[v]', '-fps_mode', 'passthrough', '-q:v', '4', path.join(work, 'sheet_%02d.jpg')],
  ])
  return Promise.resolve()
}

function must(program: string, args: readonly string[], isFfmpeg = true): void {
  const general = isFfmpeg ? ['-nostdin', '-y', '-v', 'error'] : []
  const { status, stderr } = spawnSync(program, [...general, ...args], { maxBuffer: 1 << 28 })
  if (status !== 0) throw new Error(`${program}: ${stderr.toString()}`)
}

async function measure(figures: Figures, work: (ready: () => void) => Promise<void>): Promise<void> {
  const cpu = (): number => {
    const { user, system } = process.cpuUsage()
    return (childCpuSeconds() ?? 0) + (user + system) / 1_000_000
  }
  const [startMs, before] = [performance.now(), cpu()]
  await work(() => void figures.readyMs.push(performance.now() - startMs))
  figures.wallMs.push(performance.now() - startMs)
  figures.cpu.push(cpu() - before)
}

async function inFolder(folder: string, work: (path: string) => Promise<void>): Promise<void> {
  const own = path.join(folder, 'work')
  mkdirSync(own, { recursive: true })
  try {
    await work(own)
  } finally {
    rmSync(own, { recursive: true, force: true })
  }
}
