// A class in several files is cut as if it were one: across the joins, with the sound that was chosen.
import { createHash } from 'node:crypto'
import { readFileSync, readdirSync } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { cutClass } from '../../server/actions/cut-class.ts'
import type { ClassRequest } from '../../server/actions/cut-class.ts'
import { buildSegment, buildSheet, span } from '../helpers/build-sheet.ts'
import { readNumbers, readSound, soundLag } from '../helpers/media-reading.ts'
import { ffmpeg, noise, picture } from '../helpers/media-samples.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

/** Three parts of 4 s, 25 frames a second, as a camera that starts a new file every so often. */
let parts: [string, string, string]
/** The sound of all 12 s as it was before it was coded. */
let master: Float32Array
/** Other noise, 7 s longer at its start. */
let apart: string

let folder: string
afterAll(() => rm(folder, { recursive: true, force: true }))

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'repslate-test-'))
  const film = [...picture('320x180', '25', 12), ...noise(12)]
  const x264 = ['-c:v', 'libx264', '-preset', 'veryfast', '-crf', '26', '-g', '50', '-bf', '3', '-pix_fmt', 'yuv420p']
  const write = (name: string, piece: string[], sound: string): string => {
    const file = path.join(folder, name)
    ffmpeg([...film, ...piece, ...x264, '-c:a', sound, '-f', 'mov', file])
    return file
  }
  const part = (number: number): string => write(`part${number}.mov`, ['-ss', `${number * 4}`, '-t', '4'], 'aac')
  parts = [part(0), part(1), part(2)]
  master = readSound(write('whole.mov', [], 'pcm_s16le'))
  apart = path.join(folder, 'apart.flac')
  ffmpeg(['-f', 'lavfi', '-i', 'anoisesrc=c=pink:seed=99:r=48000:a=0.25:d=25', '-c:a', 'flac', apart])
})

const sumOf = (file: string): string => createHash('sha256').update(readFileSync(file)).digest('hex')
const media = (id: string, file: string, startMs: number, role = 'camera') => ({
  ...{ id, role, sha256: sumOf(file), startMs, durationMs: 4000 },
})
/** One span across each join, one across the whole second part. */
const SEGMENTS = [
  buildSegment('first', 3.52, 4.6),
  buildSegment('second', 0, 0, { spans: [span(7.4, 8.72), span(9, 9.4)] }),
  buildSegment('long', 3, 9),
]
const frames = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, frame) => from + frame)

const request = async (fields: Partial<ClassRequest> = {}): Promise<ClassRequest> => ({
  ...{ recordingPath: parts[0], parts: parts.slice(1), outDir: await tempFolder(), jobs: 2 },
  sheet: buildSheet({ durationMs: 12_000, segments: SEGMENTS }),
  ...fields,
})

describe('a class filmed in parts', () => {
  it('is refused where the sheet has the parts in another order, or means a part that is not given', async () => {
    const sheet = buildSheet({
      ...{ durationMs: 12_000, segments: SEGMENTS },
      media: [media('a', parts[0], 0), media('b', parts[1], 4000), media('c', parts[2], 8000)],
    })
    const swapped = await request({ sheet, parts: [parts[2], parts[1]] })
    await expect(cutClass(swapped)).rejects.toMatchObject({
      code: 'sheet-recording',
      message: expect.stringContaining('Part 2 begins at') as string,
    })
    const elsewhere = buildSheet({
      ...sheet,
      segments: [buildSegment('a', 1, 2, { spans: [{ ...span(9, 10), mediaId: 'c' }] })],
    })
    const missing = await request({ sheet: { ...elsewhere, durationMs: 12_000 }, parts: [parts[1]] })
    await expect(cutClass(missing)).rejects.toMatchObject({ code: expect.stringMatching(/^sheet-/) as string })
    expect(readdirSync(swapped.outDir)).toEqual([])
  })

  it('is cut across both joins: every frame, the sound in place, the working film gone', async () => {
    const sheet = buildSheet({
      ...{ durationMs: 12_000, segments: SEGMENTS },
      media: [media('a', parts[0], 0), media('b', parts[1], 4000), media('c', parts[2], 8000)],
    })
    const input = await request({ sheet })
    const { clips, failed } = await cutClass(input)
    expect(failed).toEqual([])
    const numbers = clips.map(({ file }) => readNumbers(path.join(input.outDir, file)))
    const wanted = [frames(88, 115), [...frames(185, 218), ...frames(225, 235)], frames(75, 225)]
    // a clip whose frames are copied may end up to 0.15 s late
    numbers.forEach((found, clip) => {
      const exact = wanted[clip] ?? []
      if (clips[clip]?.method === 'full') expect(found).toEqual(exact)
      else expect(found.slice(0, exact.length - 10)).toEqual(exact.slice(0, exact.length - 10))
    })
    const long = readSound(path.join(input.outDir, clips[2]?.file ?? ''))
    // before, between and after the joins; coded twice, noise is a little less alike; 2 ms, as a lost packet of sound would be 21 ms
    for (const at of [0.2, 0.8, 1.3, 3, 4.6, 5.4, 5.8]) {
      const { samples, correlation } = soundLag(long, at, master, at + 3)
      expect(correlation, `likeness at ${at} s`).toBeGreaterThan(0.7)
      expect(Math.abs(samples), `lag at ${at} s`).toBeLessThanOrEqual(96)
    }
    expect(readdirSync(path.join(input.outDir, '.work')).filter((name) => name.endsWith('.part'))).toEqual([])
    const again = await cutClass(input)
    expect(again.clips.map(({ reused }) => reused)).toEqual([true, true, true])
  })
})

describe('the sound that is published', () => {
  it('is asked for when the sheet chose one that is not given', async () => {
    const sheet = buildSheet({
      ...{ durationMs: 12_000, segments: SEGMENTS, publishedSound: { mediaId: 'collar' } },
      media: [{ ...media('collar', apart, -7000, 'sound'), label: 'collar microphone' }],
    })
    await expect(cutClass(await request({ sheet }))).rejects.toMatchObject({
      code: 'usage',
      message:
        'The log sheet publishes the sound "collar microphone", which was recorded apart. Give its file with --sound.',
    })
  })

  it('lies where the sheet says', async () => {
    const sheet = buildSheet({
      ...{ durationMs: 12_000, segments: SEGMENTS, publishedSound: { mediaId: 'collar' } },
      media: [media('a', parts[0], 0), media('collar', apart, -7000, 'sound')],
    })
    const input = await request({ sheet, soundPath: apart })
    const { clips } = await cutClass(input)
    const [heard, source] = [readSound(path.join(input.outDir, clips[2]?.file ?? '')), readSound(apart)]
    for (const at of [0.3, 3, 5.5]) {
      const { samples, correlation } = soundLag(heard, at, source, at + 3 + 7)
      expect(correlation).toBeGreaterThan(0.9)
      expect(Math.abs(samples)).toBeLessThanOrEqual(48)
    }
  })

  it('is refused when it is not of this class', async () => {
    await expect(cutClass(await request({ soundPath: apart }))).rejects.toMatchObject({ code: 'sound-not-matching' })
  })
})
