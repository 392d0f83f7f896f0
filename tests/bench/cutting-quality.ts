/** How right a clip is, told by ffmpeg and ffprobe alone: head beside the recording, copied frames, ends. */
import { spawnSync } from 'node:child_process'
import type { ClipPlan } from '../../core/media/plan-cut.ts'

export interface Quality {
  /** Of the encoded frames against the recording's, dB; null without a head. */
  headPsnr: number | null
  /** Bytes of the encoded frames for each byte of the recording's for the same frames; null without a head. */
  headBytes: number | null
  /** Copied frames, and how many of them decode to the very same pixels. */
  copied: number
  same: number
  /** ms from the mark: at most one frame. */
  inLateMs: number
  outLateMs: number
}

export function judgeClip(
  recording: string,
  plan: ClipPlan,
  clip: string,
  asked: { startMs: number; endMs: number },
): Quality {
  const [range] = plan.ranges
  const head = plan.edge?.plan.headFrames ?? 0
  if (!range) throw new Error('The plan keeps nothing.')
  // opened half a frame early, so that the first frame decoded is the first one kept
  const at = ['-ss', ((range.cutFromMs + 0.001) / 1000).toFixed(6)]
  const hashes = frameHashes([...at, '-i', recording], plan.frames)
  const found = frameHashes(['-i', clip], plan.frames)
  const same = found.slice(head).filter((hash, frame) => hash === hashes[head + frame]).length
  return {
    ...{ copied: plan.frames - head, same },
    headPsnr: head > 0 ? psnr(['-i', clip], [...at, '-i', recording], head) : null,
    headBytes: head > 0 ? pictureBytes(clip, 0, head) / pictureBytes(recording, range.firstFrame, head) : null,
    inLateMs: range.fromMs - asked.startMs,
    outLateMs: range.toMs - asked.endMs,
  }
}

function frameHashes(input: readonly string[], frames: number): string[] {
  const text = ffmpeg([
    ...input,
    '-map',
    '0:v:0',
    '-frames:v',
    String(frames),
    '-fps_mode',
    'passthrough',
    '-f',
    'framemd5',
    '-',
  ])
  return text.stdout.split('\n').flatMap((line) => (/^\d/.test(line) ? [line.split(',').at(-1)?.trim() ?? ''] : []))
}

function psnr(a: readonly string[], b: readonly string[], frames: number): number {
  const cut = (input: number) => `[${input}:v]setpts=N,trim=end_frame=${frames}`
  const graph = `${cut(0)}[a];${cut(1)}[b];[a][b]psnr`
  const { stderr } = ffmpeg([...a, ...b, '-filter_complex', graph, '-f', 'null', '-'], 'info')
  return Number(/average:([\d.]+)/.exec(stderr)?.[1])
}

const sizes = new Map<string, number[]>()

/** Bytes of frames in order of showing. */
function pictureBytes(file: string, from: number, count: number): number {
  const args = ['-v', 'error', '-select_streams', 'v', '-show_entries', 'packet=pts,size', '-of', 'csv=p=0', file]
  const known = sizes.get(file)
  const all =
    known ??
    spawnSync('ffprobe', args, { maxBuffer: 1 << 28 })
      .stdout.toString()
      .trim()
      .split('\n')
      .map((line) => line.split(',').map(Number))
      .sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0))
      .map(([, size]) => size ?? 0)
  // a clip's name is used again, the recording's is not
  if (!known && all.length > 5000) sizes.set(file, all)
  return all.slice(from, from + count).reduce((sum, size) => sum + size, 0)
}

function ffmpeg(args: readonly string[], level = 'error'): { stdout: string; stderr: string } {
  const run = spawnSync('ffmpeg', ['-nostdin', '-hide_banner', '-v', level, '-y', ...args], { maxBuffer: 1 << 28 })
  if (run.status !== 0) throw new Error(run.stderr.toString())
  return { stdout: run.stdout.toString(), stderr: run.stderr.toString() }
}
