/** Makes the two key pictures of a clip: square JPEGs of where a repetition starts and where it ends. */
import type { Ms, Stretch } from '../../../shared/time.ts'
import { AppError } from '../../../shared/errors.ts'
import { chooseKeyPictures, squareAround } from '../choose-key-pictures.ts'
import type { KeyPictures } from '../choose-key-pictures.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { makePoster } from './make-poster.ts'
import { probeFile } from './probe-file.ts'
import { readOutput } from './read-output.ts'

export interface KeyPicturesJob {
  clipPath: string
  /** Where in the clip the movement is shown; only this is looked at. */
  within: Stretch
  startPath: string
  endPath: string
  signal?: AbortSignal | undefined
}

const WIDTH = 64
const HEIGHT = 36
const MOST_PICTURES = 120
const LEAST_STEP_MS = 200
/** Looked at before the movement: the last of the set-up. */
const BEFORE_MS = 4000
/** Side of the pictures, in pixels: sharp on a card and on a phone. */
const SIDE = 480

/** @returns null when hardly anything moves; then nothing is written. @throws AppError of the engine */
export async function makeKeyPictures(found: Ffmpeg, job: KeyPicturesJob): Promise<KeyPictures | null> {
  const { clipPath, within, signal } = job
  const { video } = await probeFile(found, clipPath, signal)
  if (!video) throw new AppError('clip-wrong', 'The clip has no picture.')
  const chosen = chooseKeyPictures(await readSmall(found, clipPath, within, signal))
  if (!chosen) return null
  const { side, left, top } = squareAround(chosen.centre, video.width, video.height)
  const filter = `crop=${side}:${side}:${left}:${top},scale=${SIDE}:${SIDE}`
  await makePoster(found, { clipPath, atMs: chosen.startMs, outPath: job.startPath, filter, signal })
  await makePoster(found, { clipPath, atMs: chosen.endMs, outPath: job.endPath, filter, signal })
  return chosen
}

async function readSmall(found: Ffmpeg, path: string, { startMs, endMs }: Stretch, signal: AbortSignal | undefined) {
  const lengthMs: Ms = Math.max(LEAST_STEP_MS, endMs - startMs)
  const stepMs: Ms = Math.max(LEAST_STEP_MS, Math.ceil(lengthMs / MOST_PICTURES))
  const steps = Math.floor(Math.min(BEFORE_MS, startMs) / stepMs)
  const fromMs: Ms = startMs - steps * stepMs
  const chunks: Buffer[] = []
  await readOutput(found, {
    ...{ doing: 'Looking for key pictures', path, signal, timeoutMs: 120_000 },
    input: ['-ss', String(fromMs / 1000), '-t', String((endMs - fromMs) / 1000), '-an', '-sn', '-dn'],
    output: [
      ...['-map', '0:v:0', '-vf', `fps=1000/${stepMs}:round=up,scale=${WIDTH}:${HEIGHT}:flags=area,format=gray`],
      ...['-f', 'rawvideo', 'pipe:1'],
    ],
    onBytes: (chunk) => chunks.push(chunk),
  })
  const bytes = Buffer.concat(chunks)
  const size = WIDTH * HEIGHT
  const pictures = Array.from({ length: Math.floor(bytes.length / size) }, (_, index) =>
    bytes.subarray(index * size, (index + 1) * size),
  )
  const [before, within] = [pictures.slice(0, steps), pictures.slice(steps)]
  return { width: WIDTH, height: HEIGHT, stepMs, startMs, pictures: within, before }
}
