// A recording from its file to its analysis by the real jobs: wave, pauses, small pictures, sums; bad ones; kills.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { openRecording } from '../../core/media/engine/open-recording.ts'
import { lookThrough } from '../../core/media/engine/run-analysis.ts'
import { planThumbs, WAVE_ZOOM } from '../../core/media/plan-analysis.ts'
import { analyseRecording } from '../../server/actions/analyse-recording.ts'
import { askCut } from '../../server/actions/ask-job.ts'
import { attachTranscript } from '../../server/actions/attach-transcript.ts'
import { importRecording } from '../../server/actions/import-recording.ts'
import { readFacts } from '../../server/actions/media-facts.ts'
import { openInbox } from '../../server/actions/watch-inbox.ts'
import { startWork } from '../../server/jobs/start-work.ts'
import {
  growingWaveKey,
  keyFramesKey,
  peaksKey,
  previewKey,
  speechKey,
  thumbsKey,
} from '../../server/storage/media-keys.ts'
import { openStudio } from '../../server/studio.ts'
import type { Studio } from '../../server/studio.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import type { FoundSpeech } from '../../core/media/find-speech.ts'
import { testSettings } from '../helpers/http-door.ts'
import { processesLeft } from '../helpers/media-processes.ts'
import { ffmpeg, FFPROBE, samplePath } from '../helpers/media-samples.ts'
import { projectRoot } from '../helpers/source-files.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

const sample = (name: string): string => path.join(projectRoot, 'media-samples', name)

async function openWorkingStudio(folder?: string): Promise<{ studio: Studio; stop: () => Promise<void> }> {
  const faults: unknown[] = []
  const studio = await openStudio(testSettings(folder ?? (await tempFolder())), {
    onFault: (error) => void faults.push(error),
  })
  const end = await startWork(studio)
  let ended: Promise<void> | null = null
  const stop = (): Promise<void> => (ended ??= end().then(() => studio.close()))
  onTestFinished(stop)
  return { studio, stop }
}

async function settled(studio: Studio, recordingId: string): Promise<void> {
  await expect
    .poll(async () => (await studio.store.jobs.list({ recordingId, states: ['queued', 'running'] })).length, {
      timeout: 60_000,
      interval: 50,
    })
    .toBe(0)
}

async function readSpeech(studio: Studio, recordingId: string, mediaId: string): Promise<FoundSpeech> {
  return JSON.parse(await readFile(studio.storage.path(speechKey(recordingId, mediaId)), 'utf8')) as FoundSpeech
}

describe('a recording that cannot be used', () => {
  it('is refused with its reason when its end is missing', async () => {
    const { studio } = await openWorkingStudio()
    const whole = await readFile(samplePath('faststart'))
    const file = path.join(await tempFolder(), 'cut-short.mp4')
    await writeFile(file, whole.subarray(0, whole.length / 2))
    const { recording } = await importRecording(studio, { path: file })
    await settled(studio, recording.id)
    expect((await studio.store.recordings.read(recording.id)).state).toBe('refused')
    const [job] = await studio.store.jobs.list({ recordingId: recording.id })
    expect(job).toMatchObject({ state: 'failed', attempts: 1, error: { code: 'recording-broken' } })
    // the person's own file is as it was
    expect((await readFile(file)).length).toBe(Math.floor(whole.length / 2))
  })

  it('leaves nothing on the shelf when it is no recording at all', async () => {
    const { studio } = await openWorkingStudio()
    const file = path.join(await tempFolder(), 'notes.mp4')
    await writeFile(file, 'shopping list')
    await expect(importRecording(studio, { path: file })).rejects.toMatchObject({ code: 'recording-format' })
    expect(await studio.store.recordings.list()).toEqual([])
  })
})

describe('the small measuring film', () => {
  it('gives wave, pauses, key frames, small pictures, loudness and sum', async () => {
    const { studio } = await openWorkingStudio()
    const { recording, media } = await importRecording(studio, { path: sample('small-class.mp4') })
    await settled(studio, recording.id)
    const now = await studio.store.recordings.read(recording.id)
    expect([now.state, now.durationMs, now.title]).toEqual(['ready', 24_000, 'small class'])
    const file = await studio.store.media.read(media.id)
    const samples = JSON.parse(await readFile(sample('SAMPLES.json'), 'utf8')) as {
      files: { file: string; sha256: string }[]
    }
    expect(file.sha256).toBe(samples.files.find((one) => one.file === 'small-class.mp4')?.sha256)
    const facts = readFacts(file)
    expect(facts).toMatchObject({
      picture: { codec: 'h264', width: 640, height: 360, rate: 30 },
      frames: 720,
      needsPreview: null,
      thumbs: { everyMs: 2000, count: 12, sheets: 1 },
    })
    expect(facts?.loudness?.integratedLufs).toBeLessThan(-10)

    // by its recipe: a tone of 60 ms at each full second over quiet noise
    const { islands, pauses } = await readSpeech(studio, recording.id, media.id)
    expect(islands.map(({ startMs }) => Math.round(startMs / 1000))).toEqual(Array.from({ length: 24 }, (_, s) => s))
    for (const { startMs, endMs } of islands) {
      expect(Math.abs((startMs % 1000) - (startMs % 1000 > 500 ? 1000 : 0))).toBeLessThanOrEqual(20)
      expect(endMs - startMs).toBeGreaterThanOrEqual(50)
      expect(endMs - startMs).toBeLessThanOrEqual(90)
    }
    expect(pauses).toHaveLength(24)

    // the tone's size is 0.4 on one side at a time in time; both together at most 0.4 in the mix of two channels
    const peaks = await readFile(studio.storage.path(peaksKey(recording.id, media.id, 100)))
    expect(peaks).toHaveLength(2400)
    for (let second = 0; second < 24; second += 1) {
      const tone = Math.max(...peaks.subarray(second * 100 + 1, second * 100 + 5)) / 255
      const quiet = Math.max(...peaks.subarray(second * 100 + 20, second * 100 + 90)) / 255
      expect(tone).toBeGreaterThan(0.2)
      expect(tone).toBeLessThan(0.48)
      expect(quiet).toBeLessThan(0.08)
    }
    for (const [zoom, length] of [
      [20, 480],
      [4, 96],
      [1, 24],
    ] as const) {
      const coarse = await readFile(studio.storage.path(peaksKey(recording.id, media.id, zoom)))
      expect(coarse).toHaveLength(length)
      expect(Math.max(...coarse)).toBe(Math.max(...peaks))
    }

    const keys = JSON.parse(
      await readFile(studio.storage.path(keyFramesKey(recording.id, media.id)), 'utf8'),
    ) as number[]
    expect(keys).toEqual([0, 8333, 16_667])
    const sheet = spawnSync(FFPROBE, [
      ...['-v', 'error', '-show_entries', 'stream=codec_name,width,height', '-of', 'csv=p=0'],
      studio.storage.path(thumbsKey(recording.id, media.id, 0)),
    ])
    expect(sheet.stdout.toString().trim()).toBe('mjpeg,1600,450')
  })
})

it('finds the starts of sentences in the demo class as the captions have them', async () => {
  const { studio } = await openWorkingStudio()
  const { recording, media } = await importRecording(studio, { path: sample('steady-and-strong.mp4'), mode: 'link' })
  await settled(studio, recording.id)
  const { islands } = await readSpeech(studio, recording.id, media.id)
  const said = parseTranscript(await readFile(sample('steady-and-strong.vtt'), 'utf8'))
  const lines = said.kind === 'timed' ? said.lines : []
  const starts = lines.filter((line, index) => line.startMs - (lines[index - 1]?.endMs ?? 0) >= 250)
  const found = starts.filter((line) => islands.some((island) => Math.abs(island.startMs - line.startMs) <= 150))
  expect(starts.length).toBeGreaterThan(100)
  expect(found.length / starts.length).toBeGreaterThanOrEqual(0.95)
})

it('makes a preview with the times of the source where browsers cannot show the film', async () => {
  const { studio } = await openWorkingStudio()
  const file = path.join(await tempFolder(), 'ten-bit.mkv')
  ffmpeg(['-i', samplePath('vfr'), '-t', '6', '-c:v', 'libx264', '-pix_fmt', 'yuv420p10le', '-c:a', 'copy', file])
  const { recording, media } = await importRecording(studio, { path: file })
  await settled(studio, recording.id)
  const facts = readFacts(await studio.store.media.read(media.id))
  expect((await studio.store.jobs.list({ recordingId: recording.id })).map(({ error }) => error)).toEqual([null, null])
  expect(facts).toMatchObject({ needsPreview: 'not every browser shows h264 in this kind of file', preview: 'whole' })
  const preview = studio.storage.path(previewKey(recording.id, media.id, true))
  const times = (of: string): number[] =>
    spawnSync(FFPROBE, [
      '-v',
      'error',
      '-select_streams',
      'v:0',
      '-show_entries',
      'frame=pts_time',
      '-of',
      'csv=p=0',
      of,
    ])
      .stdout.toString()
      .split('\n')
      .filter(Boolean)
      .map((line) => Math.round(Number.parseFloat(line) * 1000))
  const [made, source] = [times(preview), times(file)]
  expect(made).toHaveLength(source.length)
  expect(Math.max(...made.map((time, index) => Math.abs(time - (source[index] ?? 0))))).toBeLessThanOrEqual(1)
})

it('goes on after the studio stopped in the middle, and leaves no ffmpeg behind', async () => {
  const folder = await tempFolder()
  const first = await openWorkingStudio(folder)
  const { recording, media } = await importRecording(first.studio, { path: sample('steady-and-strong.mp4') })
  await expect.poll(async () => (await first.studio.store.jobs.list({ states: ['running'] })).length).toBe(1)
  await first.stop()
  expect(await processesLeft(media.id, 1)).toEqual([])
  const second = await openWorkingStudio(folder)
  await settled(second.studio, recording.id)
  expect((await second.studio.store.jobs.list({ recordingId: recording.id })).map(({ state }) => state)).toEqual([
    'done',
  ])
  expect(readFacts(await second.studio.store.media.read(media.id))).toMatchObject({ thumbs: { sheets: 5 } })
})

it('takes in what is laid into the inbox once it has stopped growing, and lays aside what it cannot take', async () => {
  const { studio } = await openWorkingStudio()
  const inbox = await tempFolder()
  const { look } = openInbox(studio, inbox)
  const film = await readFile(sample('small-class.mp4'))
  await writeFile(path.join(inbox, 'monday_class.mp4'), film.subarray(0, 1000))
  await writeFile(path.join(inbox, 'still.part'), film)
  expect(await look()).toEqual([])
  await writeFile(path.join(inbox, 'monday_class.mp4'), film)
  await writeFile(path.join(inbox, 'list.mp4'), 'milk, eggs')
  expect(await look()).toEqual([])
  expect(await look()).toEqual(['list.mp4', 'monday_class.mp4'])
  expect(await look()).toEqual([])
  expect((await studio.store.recordings.list()).map(({ title }) => title)).toEqual(['monday class'])
  expect(await readFile(path.join(inbox, 'refused', 'list.mp4.why.txt'), 'utf8')).toMatch(/no MP4, MOV, 3GP, MKV/)
})

it('drafts from the words, and cuts a lesson that a person chose', async () => {
  const { studio } = await openWorkingStudio()
  const { recording, media } = await importRecording(studio, { path: sample('steady-and-strong.mp4') })
  const text = await readFile(sample('steady-and-strong.vtt'), 'utf8')
  await attachTranscript(studio, { recordingId: recording.id, text, origin: 'file', fileName: 'words.vtt' })
  await settled(studio, recording.id)
  const drafted = await studio.store.sheets.readOf(recording.id)
  const { sha256 } = await studio.store.media.read(media.id)
  // whichever of the two jobs came first
  expect(drafted?.sheet.source).toEqual({ sha256, durationMs: 468_047 })
  const [first, second] = drafted?.sheet.segments ?? []
  const job = await askCut(studio, { recordingId: recording.id, segmentIds: [second?.id ?? ''] })
  await settled(studio, recording.id)
  expect((await studio.store.jobs.read(job.id)).result).toEqual({ clips: 1, failed: [] })
  const clips = (await studio.storage.list(`recordings/${recording.id}/cut`)).filter((key) => key.endsWith('.mp4'))
  expect(clips).toHaveLength(1)

  // drafting again keeps what a person decided
  await studio.store.sheets.appendEdits({
    sheetId: drafted?.id ?? '',
    baseVersion: (await studio.store.sheets.readOf(recording.id))?.version ?? 0,
    edits: [{ opId: 'person-1', op: { op: 'rename', segmentId: first?.id ?? '', name: 'My own name' } }],
    actor: studio.actor,
  })
  await attachTranscript(studio, { recordingId: recording.id, text: `${text}\n`, origin: 'pasted' })
  await settled(studio, recording.id)
  const again = await studio.store.sheets.readOf(recording.id)
  expect(again?.sheet.segments.find(({ id }) => id === first?.id)?.exercise.name).toBe('My own name')
})

it('finds where the picture is black and where it stands still', async () => {
  const { studio } = await openWorkingStudio()
  const file = path.join(await tempFolder(), 'dull.mp4')
  const pieces = ['testsrc2=s=320x180:r=25:d=6', 'color=black:s=320x180:r=25:d=5', 'smptebars=s=320x180:r=25:d=14']
  const inputs = pieces.flatMap((piece) => ['-f', 'lavfi', '-i', `${piece},format=yuv420p,setsar=1`])
  const graph = '[0][1][2]concat=n=3:v=1:a=0[v]'
  ffmpeg([
    ...inputs,
    '-f',
    'lavfi',
    '-i',
    'sine=d=25',
    '-filter_complex',
    graph,
    '-map',
    '[v]',
    '-map',
    '3:a',
    '-g',
    '25',
    file,
  ])
  const { media } = await importRecording(studio, { path: file })
  await settled(studio, media.recordingId)
  const dull = readFacts(await studio.store.media.read(media.id))?.dull
  expect(dull?.black).toHaveLength(1)
  expect(dull?.still).toHaveLength(1)
  // to one key frame, here a second
  const [black, still] = [dull?.black[0], dull?.still[0]]
  expect(Math.abs((black?.startMs ?? NaN) - 6000)).toBeLessThanOrEqual(1000)
  expect(Math.abs((black?.endMs ?? NaN) - 11_000)).toBeLessThanOrEqual(1000)
  expect(Math.abs((still?.startMs ?? NaN) - 11_000)).toBeLessThanOrEqual(1000)
  expect(still?.endMs).toBeGreaterThan(24_000)
})

it('a film whose only key frame is its first has all its sheets of small pictures', async () => {
  const folder = await tempFolder()
  const file = path.join(folder, 'one-key.mp4')
  const coded = ['-c:v', 'libx264', '-preset', 'ultrafast', '-g', '9999', '-sc_threshold', '0', file]
  ffmpeg(['-f', 'lavfi', '-i', 'testsrc=size=64x36:rate=2:duration=130', ...coded])
  const found = await findFfmpeg()
  const opened = await openRecording(found, file, { silent: true })
  const plan = planThumbs(opened, opened.durationMs)
  expect([plan.sheets, opened.index.frames.filter(({ key }) => key).length]).toEqual([2, 1])
  const { sheets } = await lookThrough(found, opened, plan, folder)
  expect(sheets.map((sheet) => existsSync(sheet))).toEqual([true, true])
})

it('the wave grows while the film is looked through, each piece the beginning of the next, and is whole at the end', async () => {
  let nowMs = Date.now()
  // each look at the clock is a second, so that every chance to write is taken
  const studio = await openStudio(testSettings(await tempFolder()), { clock: () => (nowMs += 1000) })
  onTestFinished(() => studio.close())
  const { recording, media } = await importRecording(studio, { path: sample('steady-and-strong.mp4'), mode: 'copy' })
  const grown: Uint8Array[] = []
  const putBytes: Studio['storage']['putBytes'] = async (key, bytes) => {
    if (key === growingWaveKey(recording.id, media.id) && typeof bytes !== 'string') grown.push(bytes)
    return studio.storage.putBytes(key, bytes)
  }
  const input = { recordingId: recording.id, mediaId: media.id }
  await analyseRecording({ ...studio, storage: { ...studio.storage, putBytes } }, input)
  const whole = await readFile(studio.storage.path(peaksKey(recording.id, media.id, WAVE_ZOOM)))
  expect(grown.length).toBeGreaterThan(2)
  grown.forEach((piece, index) => {
    expect(piece.length).toBeGreaterThanOrEqual(grown[index - 1]?.length ?? 1)
    // the last step may not be known whole yet
    const known = piece.length - 1
    expect(Buffer.from(piece.subarray(0, known)).equals(whole.subarray(0, known))).toBe(true)
  })
  expect(grown[0]?.length).toBeLessThan(whole.length)
  expect(await studio.storage.head(growingWaveKey(recording.id, media.id))).toBeNull()
})
