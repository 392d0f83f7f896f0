/**
 * Analyses a file of a recording, piece by piece; each piece can be used as soon as it is there. Pieces that are there
 * are not made again, so that the work goes on where a kill ended it.
 */
import { mkdir, mkdtemp, rm } from 'node:fs/promises'
import path from 'node:path'
import { hashFile } from '../../core/media/engine/hash-file.ts'
import { openRecording } from '../../core/media/engine/open-recording.ts'
import type { OpenedRecording } from '../../core/media/engine/open-recording.ts'
import { probeSound } from '../../core/media/engine/probe-file.ts'
import { lookThrough } from '../../core/media/engine/run-analysis.ts'
import { findSpeech } from '../../core/media/find-speech.ts'
import { coarsenPeaks } from '../../core/media/measure-sound.ts'
import type { SoundMeasures } from '../../core/media/measure-sound.ts'
import { ANALYSIS_VERSION, PEAK_ZOOMS, planThumbs, WAVE_ZOOM } from '../../core/media/plan-analysis.ts'
import { mustBeAllowed, PROGRAM } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import type { Ms } from '../../shared/time.ts'
import { growingWaveKey, keyFramesKey, peaksKey, speechKey, thumbsKey } from '../storage/media-keys.ts'
import type { MediaFile } from '../store/keep-media.ts'
import type { Studio } from '../studio.ts'
import { askJob } from './ask-job.ts'
import { dropJoined } from './drop-joined.ts'
import { chooseClassMedia, partsOf } from './find-class-file.ts'
import { firstFacts, readFacts } from './media-facts.ts'
import type { MediaFacts } from './media-facts.ts'
import type { OnProgress } from './progress.ts'
import { reportSteps } from './report-steps.ts'
import { releaseClass, settleParts } from './settle-parts.ts'

export interface AnalyseInput {
  recordingId: string
  mediaId: string
  signal?: AbortSignal | undefined
  onProgress?: OnProgress | undefined
}

export type AnalyseNeeds = Pick<Studio, 'store' | 'storage' | 'ffmpeg' | 'actor' | 'dataFolder' | 'clock'>

/** Shares of the whole by a usual run, from the costs that were measured for a class of twenty minutes. */
const STEPS = {
  'Looking into the film': 0.1,
  'Looking through it: sound, pictures, loudness': 0.75,
  'Reading it whole': 0.15,
} as const

interface Desk extends AnalyseInput {
  studio: AnalyseNeeds
  ffmpeg: NonNullable<Studio['ffmpeg']>
  path: string
  step: ReturnType<typeof reportSteps<keyof typeof STEPS>>
}

/**
 * A film that cannot be used makes its recording refused; the reason is the job's error.
 * @throws AppError recording-*, engine-*, ffmpeg-missing, disk-full, row-missing
 */
export async function analyseRecording(studio: AnalyseNeeds, input: AnalyseInput): Promise<MediaFacts | null> {
  mustBeAllowed(PROGRAM, 'job.run', { type: 'media', id: input.mediaId })
  const { ffmpeg } = studio
  if (!ffmpeg) throw new AppError('ffmpeg-missing', 'No usable ffmpeg was found. Run "doctor", then try again.')
  const media = await studio.store.media.read(input.mediaId)
  if (media.storageKey === null) throw new AppError('row-missing', 'The file has not arrived yet.')
  const step = reportSteps(STEPS, input.onProgress, studio.clock)
  const desk: Desk = { ...input, studio, ffmpeg, path: studio.storage.path(media.storageKey), step }
  if (media.role === 'sound') return analyseSoundFile(desk, media)
  const opened = await openOrRefuse(desk, media)
  let facts = readFacts(media) ?? firstFacts(ANALYSIS_VERSION, opened, opened.index.frames.length)
  if (facts.version !== ANALYSIS_VERSION) facts = firstFacts(ANALYSIS_VERSION, opened, opened.index.frames.length)
  await keep(desk, { facts, durationMs: opened.durationMs })
  await putKeyFrames(desk, opened)
  // of several parts only the film that is joined of them is shown
  if (await isShown(desk, media)) {
    await release(desk, media, opened, facts)
    facts = await addPass(desk, opened, facts)
    await keep(desk, { facts })
  }
  await sum(desk, media, opened)
  if (media.role === 'part') await settleParts(studio, desk.recordingId)
  else await dropJoined(studio, desk.recordingId)
  return facts
}

async function openOrRefuse(desk: Desk, media: MediaFile): Promise<OpenedRecording> {
  desk.step('Looking into the film', 0)
  try {
    return await openRecording(desk.ffmpeg, desk.path, { silent: true, signal: desk.signal })
  } catch (error) {
    const isBad = error instanceof AppError && error.code.startsWith('recording-')
    if (isBad && media.role === 'part') await refuse(desk, media)
    throw error
  }
}

/** Without its only film a class is refused; one of several parts is set aside, and the others are the class. */
async function refuse({ studio, recordingId }: Desk, bad: MediaFile): Promise<void> {
  const files = await studio.store.media.list(recordingId)
  if (partsOf(files).length <= 1) {
    await studio.store.recordings.change(recordingId, null, { state: 'refused' }, PROGRAM)
    return
  }
  const brought = files.filter(({ role }) => role !== 'joined')
  const arranged = brought.map(({ id, role }) => ({ id, role: id === bad.id ? ('aside' as const) : role }))
  await studio.store.media.arrange(recordingId, arranged, PROGRAM)
  await settleParts(studio, recordingId)
}

async function isShown({ studio, recordingId }: Desk, { id, role }: MediaFile): Promise<boolean> {
  if (role === 'camera') return true
  return chooseClassMedia(recordingId, await studio.store.media.list(recordingId))?.id === id
}

/** Now the class can be marked: its length is known and browsers can show it, or soon will. */
async function release(desk: Desk, media: MediaFile, opened: OpenedRecording, facts: MediaFacts): Promise<void> {
  const { recordingId, mediaId, studio } = desk
  await studio.store.transaction(async (rooms) => {
    if (media.role !== 'camera') {
      await rooms.recordings.change(recordingId, null, { state: 'ready', durationMs: opened.durationMs }, PROGRAM)
    }
    if (facts.needsPreview !== null && facts.preview !== 'whole') {
      await askJob(rooms, studio.actor, 'preview', { recordingId, mediaId }, `preview-${mediaId}`)
    }
  })
}

/** The sum of the whole file takes as long as the disk; only a cut and the log sheet need it. */
async function sum(desk: Desk, media: MediaFile, opened: OpenedRecording): Promise<void> {
  const whole = opened.probe.sizeBytes
  const onBytes = (bytes: number): void => desk.step('Reading it whole', whole > 0 ? bytes / whole : 1)
  const sha256 = media.sha256 ?? (await hashFile(desk.path, { signal: desk.signal, onBytes }))
  const { recordingId, mediaId, studio } = desk
  await studio.store.transaction(async (rooms) => {
    await rooms.media.change(mediaId, { sha256 }, PROGRAM)
    if (chooseClassMedia(recordingId, await rooms.media.list(recordingId))?.id !== mediaId) return
    await releaseClass(rooms, studio.actor, recordingId, await rooms.media.read(mediaId))
  })
}

async function putKeyFrames(desk: Desk, opened: OpenedRecording): Promise<void> {
  const times = opened.index.frames.filter(({ key }) => key).map(({ atMs }) => Math.round(atMs))
  await desk.studio.storage.putBytes(keyFramesKey(desk.recordingId, desk.mediaId), JSON.stringify(times))
}

/** One pass over the file gives everything that marking shows; when it was done before, nothing is read. */
async function addPass(desk: Desk, opened: OpenedRecording, facts: MediaFacts): Promise<MediaFacts> {
  if (facts.thumbs && facts.dull) return facts
  const { recordingId, mediaId, studio, signal } = desk
  const thumbs = planThumbs(opened, opened.durationMs)
  const work = path.join(studio.dataFolder, 'work')
  await mkdir(work, { recursive: true, mode: 0o700 })
  const folder = await mkdtemp(path.join(work, 'thumbs-'))
  try {
    const onShare = (share: number): void => desk.step('Looking through it: sound, pictures, loudness', share)
    const wave = openGrowingWave(desk)
    const options = { signal, onShare, onWave: wave.grow }
    const looked = await lookThrough(desk.ffmpeg, opened, thumbs, folder, options).finally(wave.end)
    for (const [index, file] of looked.sheets.entries()) {
      await studio.storage.putFile(thumbsKey(recordingId, mediaId, index), file, 'move')
    }
    const put = looked.sound && (await putWave(desk, looked.sound, opened.durationMs))
    await studio.storage.delete(growingWaveKey(recordingId, mediaId))
    return { ...facts, wave: put, thumbs, loudness: looked.loudness, dull: looked.dull }
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

/** ms between two looks at a wave that grows. */
const GROW_MS = 1000

/** The wave as far as it is known, at the zoom that a page draws. What cannot be written is of no matter: all of it comes at the end. */
function openGrowingWave({ studio, recordingId, mediaId }: Desk) {
  let atMs = studio.clock()
  let writing: Promise<unknown> | null = null
  const grow = (peek: () => Uint8Array): void => {
    if (writing !== null || studio.clock() - atMs < GROW_MS) return
    atMs = studio.clock()
    const [finest] = PEAK_ZOOMS
    writing = studio.storage
      .putBytes(growingWaveKey(recordingId, mediaId), coarsenPeaks(peek(), finest / WAVE_ZOOM))
      .catch(() => undefined)
      .finally(() => (writing = null))
  }
  const end = async (): Promise<void> => {
    await writing
  }
  return { grow, end }
}

async function putWave(desk: Desk, measures: SoundMeasures, durationMs: Ms): Promise<MediaFacts['wave']> {
  const { recordingId, mediaId, studio } = desk
  const [finest] = PEAK_ZOOMS
  for (const zoom of PEAK_ZOOMS) {
    const peaks = zoom === finest ? measures.peaks : coarsenPeaks(measures.peaks, finest / zoom)
    await studio.storage.putBytes(peaksKey(recordingId, mediaId, zoom), peaks)
  }
  const speech = findSpeech(measures.levels, durationMs)
  await studio.storage.putBytes(speechKey(recordingId, mediaId), JSON.stringify(speech))
  return { zooms: [...PEAK_ZOOMS], islands: speech.islands.length, pauses: speech.pauses.length }
}

/** Sound recorded apart is kept with its sum and length; it has no picture to look at. */
async function analyseSoundFile(desk: Desk, media: MediaFile): Promise<null> {
  desk.step('Looking into the film', 0)
  const probe = await probeSound(desk.ffmpeg, desk.path, desk.signal)
  const onBytes = (bytes: number): void => desk.step('Reading it whole', bytes / Math.max(1, probe.sizeBytes))
  const sha256 = media.sha256 ?? (await hashFile(desk.path, { signal: desk.signal, onBytes }))
  await keep(desk, { sha256, durationMs: probe.durationMs })
  await settleParts(desk.studio, desk.recordingId)
  return null
}

/** How far the preview is, its own job says meanwhile; that is never written over. */
async function keep(desk: Desk, fields: { facts?: MediaFacts; sha256?: string; durationMs?: number | null }) {
  await desk.studio.store.transaction(async ({ media }) => {
    const preview = readFacts(await media.read(desk.mediaId))?.preview ?? fields.facts?.preview
    const facts = fields.facts && preview ? { facts: { ...fields.facts, preview } } : {}
    await media.change(desk.mediaId, { ...fields, ...facts }, PROGRAM)
  })
}
