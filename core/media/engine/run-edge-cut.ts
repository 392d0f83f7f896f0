/** Runs an edge cut: encodes the head and the sound with one run of ffmpeg, copies the rest, and writes one MP4 of both. */
import { createHash } from 'node:crypto'
import { open, rm } from 'node:fs/promises'
import type { FileHandle } from 'node:fs/promises'
import { AppError } from '../../../shared/errors.ts'
import { isDisposable, isIdr, listNals, NAL } from '../h264/read-nals.ts'
import { joinAvcConfigs, readAvcConfig, setIds, withAvcConfig } from '../h264/parameter-sets.ts'
import type { AvcConfig } from '../h264/parameter-sets.ts'
import { joinBytes, sameBytes } from '../mp4/join-bytes.ts'
import { laySampleTimes } from '../mp4/lay-times.ts'
import type { Mp4Track } from '../mp4/read-tracks.ts'
import type { MovieTrack } from '../mp4/write-movie.ts'
import type { EdgeCommand } from '../plan-edge-commands.ts'
import type { EdgePlan, EdgeSource } from '../plan-edge-cut.ts'
import type { RunLimits } from '../plan-limits.ts'
import type { RunProgress } from '../read-progress.ts'
import type { Ffmpeg } from './find-ffmpeg.ts'
import { readMovieTracks } from './read-movie.ts'
import { readPacketBytes } from './read-packet-bytes.ts'
import { runFfmpeg } from './run-ffmpeg.ts'
import { writeMovieFile } from './write-movie-file.ts'
import type { SampleSource, TrackSource } from './write-movie-file.ts'

export interface EdgeJob {
  doing: string
  /** The recording, for its sound. */
  recordingPath: string
  /** The MP4 that pictures are copied from; the recording itself, or what it was put into. */
  source: EdgeSource
  sourcePath: string
  plan: EdgePlan
  command: EdgeCommand
  outPath: string
  /** Gives paths for files that are thrown away afterwards. */
  partPath: (label: string) => string
  limits: RunLimits
  expectMs: number
  onProgress?: ((progress: RunProgress) => void) | undefined
  signal?: AbortSignal | undefined
}

/** MD5 of each copied packet, by its number in the clip. */
export type CopiedHashes = ReadonlyMap<number, string>

/**
 * @throws AppError clip-wrong when the recording turns out not to allow it (the message says why), recording-broken,
 * and what runFfmpeg throws.
 */
export async function runEdgeCut(found: Ffmpeg, job: EdgeJob): Promise<CopiedHashes> {
  const file = await open(job.sourcePath)
  const parts = { small: job.partPath('small'), head: job.partPath('head'), sound: job.partPath('sound') }
  try {
    await checkKeys(file, job)
    await writeSmallFile(file, job, parts.small)
    await encodeParts(found, job, parts)
    return await joinParts(file, job, parts)
  } finally {
    await file.close()
    for (const part of Object.values(parts)) await rm(part, { force: true })
  }
}

/** Decoding must be able to start anew at each key frame used. */
async function checkKeys(file: FileHandle, { plan, source }: EdgeJob): Promise<void> {
  const starts = plan.parts.flatMap(({ decode, copy }) => [decode, copy].filter(({ from, to }) => to > from))
  const keys = starts.flatMap(({ from }) => source.packets.slice(from, from + 1))
  for await (const { bytes } of readPacketBytes(file, keys)) {
    const nals = listNals(bytes)
    if (!nals) throw unfit('its frames are not stored in units')
    if (!isIdr(nals)) throw unfit('a key frame is no IDR picture')
  }
}

/** Only what must be decoded for the heads: pictures before the in-point that no other one needs are left out. */
async function writeSmallFile(file: FileHandle, { command, source }: EdgeJob, path: string): Promise<void> {
  const { samples, endTicks } = command.head
  if (samples.length === 0) return
  const places = samples.flatMap(({ packet, ticks, wanted }) => {
    const place = source.packets[packet]
    return place ? [{ pos: place.pos ?? 0, size: place.size, ticks, wanted, file }] : []
  })
  const kept: typeof places = []
  for await (const { packet, bytes } of readPacketBytes(file, places)) {
    const nals = packet.wanted ? null : listNals(bytes)
    if (packet.wanted || (nals && !isDisposable(nals))) kept.push(packet)
  }
  const ticks = kept.map((place) => place.ticks)
  const track = pictureTrack(source, source.entry, ticks, endTicks, null)
  await writeMovieFile(path, [{ track, samples: kept }])
}

async function encodeParts(
  found: Ffmpeg,
  job: EdgeJob,
  parts: { small: string; head: string; sound: string },
): Promise<void> {
  const { soundInputs, filter, pictureOutput, soundOutput } = job.command
  if (filter === null) return
  const sound = soundInputs.map(({ options }) => ({ path: job.recordingPath, options }))
  await runFfmpeg(found, {
    doing: job.doing,
    inputs: [...sound, ...(pictureOutput ? [{ path: parts.small, options: ['-threads', '1', '-noautorotate'] }] : [])],
    filter,
    outputs: [
      ...(pictureOutput ? [{ path: parts.head, options: pictureOutput }] : []),
      ...(soundOutput ? [{ path: parts.sound, options: soundOutput }] : []),
    ],
    limits: job.limits,
    expectMs: job.expectMs,
    onProgress: job.onProgress,
    signal: job.signal,
  })
}

async function joinParts(
  file: FileHandle,
  job: EdgeJob,
  parts: { head: string; sound: string },
): Promise<CopiedHashes> {
  const { plan, source, command } = job
  const opened: FileHandle[] = []
  const hashes = new Map<number, string>()
  try {
    const head = command.pictureOutput ? await openEncoded(parts.head, opened) : null
    const sound = command.soundOutput ? await openEncoded(parts.sound, opened) : null
    const picture = joinPicture(file, source, plan, head, hashes)
    const total = picture.track.shownTicks / source.timescale
    await writeMovieFile(job.outPath, [picture, ...(sound ? [soundTrack(sound, total)] : [])])
    return hashes
  } finally {
    for (const one of opened) await one.close()
  }
}

interface Encoded {
  file: FileHandle
  track: Mp4Track
}

async function openEncoded(path: string, opened: FileHandle[]): Promise<Encoded> {
  const track = (await readMovieTracks(path, true))?.[0]
  if (!track) throw unfit('what was encoded cannot be read')
  const file = await open(path)
  opened.push(file)
  return { file, track }
}

/** All pictures in decode order: of each range first what was encoded, then what is copied. */
function joinPicture(
  file: FileHandle,
  source: EdgeSource,
  plan: EdgePlan,
  head: Encoded | null,
  hashes: Map<number, string>,
): TrackSource {
  const config = head ? headConfig(source, plan, head.track) : null
  if ((head?.track.samples.length ?? 0) !== plan.headFrames) {
    throw unfit(`${head?.track.samples.length ?? 0} frames were encoded, not ${plan.headFrames}`)
  }
  const samples: (SampleSource & { copied: boolean })[] = []
  const ticks: number[] = []
  const keys: number[] = []
  let encoded = 0
  let start = 0
  for (const { headTicks, copy, fromTicks, lengthTicks } of plan.parts) {
    if (headTicks.length > 0) keys.push(samples.length)
    for (const tick of headTicks) {
      const place = head?.track.samples[encoded]
      encoded += 1
      if (head && place) samples.push({ ...place, file: head.file, copied: false })
      ticks.push(start + tick - fromTicks)
    }
    for (const packet of source.packets.slice(copy.from, copy.to)) {
      if (packet.key) keys.push(samples.length)
      samples.push({ pos: packet.pos ?? 0, size: packet.size, file, copied: true })
      ticks.push(start + (packet.ticks ?? 0) - fromTicks)
    }
    start += lengthTicks
  }
  const entry = withAvcConfig(source.entry, config ? joinAvcConfigs(source.config, config) : source.config)
  const own = config ? joinAvcConfigs(source.config, config) : source.config
  return {
    track: pictureTrack(source, entry, ticks, start, keys),
    samples,
    take: (bytes, sample) => {
      const taken = withoutSets(bytes, own)
      if (samples[sample]?.copied) hashes.set(sample, createHash('md5').update(taken).digest('hex'))
      return taken
    },
  }
}

/** The encoder's own sets: their ids must be free, and its profile and lengths the recording's. */
function headConfig(source: EdgeSource, plan: EdgePlan, track: Mp4Track): AvcConfig {
  const config = track.entries[0] && readAvcConfig(track.entries[0].bytes)
  if (!config || config.lengthBytes !== 4) throw unfit('the parameter sets of what was encoded cannot be read')
  const ids = [...setIds(config)]
  if (ids.length !== 1 || ids[0] !== plan.setId) throw unfit('the encoder did not use its own parameter set id')
  return config
}

/** Parameter sets belong into the head of the file. Those inside must be the very same, and are taken out. */
function withoutSets(sample: Uint8Array, { sps, pps }: AvcConfig): Uint8Array {
  const nals = listNals(sample)
  if (!nals) throw unfit('its frames are not stored in units')
  if (nals.some(({ type }) => type >= NAL.partitionA && type <= NAL.partitionC)) throw unfit('its slices are in parts')
  const isSet = (type: number) => type === NAL.sps || type === NAL.pps || type === NAL.spsExtension
  if (!nals.some(({ type }) => isSet(type))) return sample
  for (const { type, body, end } of nals) {
    const unit = sample.subarray(body, end)
    if (isSet(type) && ![...sps, ...pps].some((set) => sameBytes(set, unit))) throw unfit('its parameter sets change')
  }
  return joinBytes(nals.filter(({ type }) => !isSet(type)).map(({ start, end }) => sample.subarray(start, end)))
}

function pictureTrack(
  source: EdgeSource,
  entry: Uint8Array,
  ticks: readonly number[],
  endTicks: number,
  keys: readonly number[] | null,
): MovieTrack {
  const { timescale, matrix, shownSize } = source
  return { kind: 'picture', timescale, entry, keys, matrix, shownSize, ...laySampleTimes(ticks, endTicks) }
}

/** As it was encoded; it is played for as long as the picture, where there is so much. */
function soundTrack({ file, track }: Encoded, seconds: number): TrackSource {
  const { timescale, durations, mediaTime } = track
  const entry = track.entries[0]?.bytes ?? new Uint8Array()
  const whole = durations.reduce((sum, duration) => sum + duration, 0) - mediaTime
  const shownTicks = Math.min(Math.round(seconds * timescale), whole)
  return {
    track: { kind: 'sound', timescale, entry, durations, offsets: null, keys: null, mediaTime, shownTicks },
    samples: track.samples.map((sample) => ({ ...sample, file })),
  }
}

function unfit(why: string): AppError {
  return new AppError('clip-wrong', `The picture cannot be copied: ${why}.`)
}
