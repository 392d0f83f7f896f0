/** Looks into a recording or clip with ffprobe: container, streams, the time of every frame. Nothing is decoded. */
import { open, stat } from 'node:fs/promises'
import { AppError } from '../../../shared/errors.ts'
import { explainFailure } from '../explain-failure.ts'
import { HEAD_BYTES, looksLikeRecording } from '../read-file-head.ts'
import { PACKET_FIELDS, readPacketPlaces, readPackets } from '../read-packets.ts'
import type { FrameIndex, PacketPlace } from '../read-packets.ts'
import { readProbe } from '../read-probe.ts'
import type { Fraction, Probe } from '../read-probe.ts'
import { announcesTooMuch } from './find-false-size.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { RECORDING_GUARDS, SOUND_GUARDS, fileName } from './guard-input.ts'
import { runProcess } from './run-process.ts'
import type { ProcessResult } from './run-process.ts'

const PROBE_LIMITS = { timeoutMs: 30_000, maxOutputBytes: 4_000_000 }
/** A day of packets at 60 a second prints about 130 MB; the time is for slow network disks. */
const INDEX_LIMITS = { timeoutMs: 600_000, maxOutputBytes: 200_000_000 }

/**
 * Reads container and streams.
 * @throws AppError file-missing, recording-empty, recording-format, recording-broken, engine-timeout, engine-cancelled.
 */
export async function probeFile(found: Ffmpeg, path: string, signal?: AbortSignal): Promise<Probe> {
  return probeBehind(RECORDING_GUARDS, found, path, signal)
}

/** The same of a file that is only listened to: WAV, MP3, FLAC and others too. @throws AppError as probeFile; recording-no-sound */
export async function probeSound(found: Ffmpeg, path: string, signal?: AbortSignal): Promise<Probe> {
  const probe = await probeBehind([...RECORDING_GUARDS, ...SOUND_GUARDS], found, path, signal)
  if (probe.audio) return probe
  throw new AppError('recording-no-sound', 'The file holds no sound. Give the one that the recorder made.')
}

async function probeBehind(
  guards: readonly string[],
  found: Ffmpeg,
  path: string,
  signal: AbortSignal | undefined,
): Promise<Probe> {
  await checkFile(path)
  const args = ['-v', 'error', ...guards, '-show_format', '-show_streams', '-of', 'json', fileName(path)]
  const result = await runProcess(found.ffprobe, args, { ...PROBE_LIMITS, signal })
  // by its name alone ffprobe takes any text for a damaged MP4
  if (result.exitCode !== 0 && result.stopped === null && !(await beginsRight(path))) throw noRecording()
  try {
    checkResult(result, 'Reading the recording')
  } catch (error) {
    // ffprobe asks for as much memory as the file announces, and what it says then would blame this machine
    if (error instanceof AppError && error.code === 'engine-failed' && (await announcesTooMuch(path))) throw falseSize()
    throw error
  }
  const probe = readProbe(result.stdout)
  if (!probe) throw noRecording()
  return probe
}

/** The frames a player shows, and every packet where it lies in the file, in decode order. */
export interface IndexedFrames extends FrameIndex {
  packets: PacketPlace[]
}

/**
 * Reads the times of all frames (or sound packets) of one stream.
 * @throws AppError recording-broken, engine-timeout, engine-cancelled, engine-failed.
 */
export async function indexFrames(
  found: Ffmpeg,
  path: string,
  stream: { index: number; timeBase: Fraction; clockStartSeconds: number },
  signal?: AbortSignal,
): Promise<IndexedFrames> {
  const what = ['-select_streams', String(stream.index), '-show_entries', PACKET_FIELDS, '-of', 'csv=p=0']
  const args = ['-v', 'error', ...RECORDING_GUARDS, ...what, fileName(path)]
  const result = await runProcess(found.ffprobe, args, { ...INDEX_LIMITS, signal })
  checkResult(result, 'Reading the frames of the recording')
  const index = readPackets(result.stdout, stream.timeBase, stream.clockStartSeconds)
  return { ...index, packets: readPacketPlaces(result.stdout) }
}

/**
 * Asks for more than the above; returns ffprobe's text.
 * @throws AppError as probeFile.
 */
export async function askFfprobe(
  found: Ffmpeg,
  path: string,
  options: readonly string[],
  signal?: AbortSignal,
): Promise<string> {
  await checkFile(path)
  const args = ['-v', 'error', ...RECORDING_GUARDS, ...options, fileName(path)]
  const result = await runProcess(found.ffprobe, args, { ...INDEX_LIMITS, signal })
  checkResult(result, 'Reading the clip')
  return result.stdout
}

async function checkFile(path: string): Promise<void> {
  const file = await stat(path).catch((cause: unknown) => {
    throw new AppError('file-missing', `"${path}" is not there or cannot be read. Check the name.`, { cause })
  })
  if (!file.isFile()) throw new AppError('recording-format', `"${path}" is no file. Give the recording itself.`)
  if (file.size === 0) throw new AppError('recording-empty', `"${path}" is empty. Copy the recording again.`)
}

async function beginsRight(path: string): Promise<boolean> {
  const file = await open(path)
  try {
    const { buffer, bytesRead } = await file.read(new Uint8Array(HEAD_BYTES), 0, HEAD_BYTES, 0)
    return looksLikeRecording(buffer.subarray(0, bytesRead))
  } finally {
    await file.close()
  }
}

function noRecording(): AppError {
  return new AppError(
    'recording-format',
    'The file is no MP4, MOV, 3GP, MKV, WebM, TS or AVI recording. Give one of these.',
  )
}

function falseSize(): AppError {
  return new AppError(
    'recording-broken',
    'The file announces more than it holds, so its head is damaged. Copy the recording again, or export it again as MP4.',
  )
}

function checkResult(result: ProcessResult, doing: string): void {
  if (result.stopped === 'cancelled') throw new AppError('engine-cancelled', `${doing} was cancelled.`)
  if (result.stopped === 'timeout') {
    throw new AppError('engine-timeout', `${doing} took too long and was stopped. Copy the file to a faster disk.`)
  }
  if (result.stopped === 'too-much-output') {
    throw new AppError('recording-broken', `${doing} was stopped: the file holds more than any class would.`)
  }
  if (result.startError) {
    throw new AppError('ffmpeg-missing', `ffprobe could not be started. Run "doctor".`, { cause: result.startError })
  }
  if (result.exitCode !== 0) {
    const { exitCode, exitSignal: signal, lines } = result
    throw explainFailure({ doing, exitCode, signal, lines })
  }
}
