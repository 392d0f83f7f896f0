// The head of an MP4: boxes that add up, tables that say where each sample lies and when it shows; broken ones read as nothing.
import { describe, expect, it } from 'vitest'
import { laySampleTimes } from '../../../../core/media/mp4/lay-times.ts'
import { listBoxes, readBoxHeader } from '../../../../core/media/mp4/read-boxes.ts'
import { readTracks } from '../../../../core/media/mp4/read-tracks.ts'
import { planChunks, writeMovieHead } from '../../../../core/media/mp4/write-movie.ts'
import type { MovieTrack } from '../../../../core/media/mp4/write-movie.ts'

const bytes = (...values: number[]) => Uint8Array.from(values)
const ENTRY = bytes(0, 0, 0, 8, 0x61, 0x76, 0x63, 0x31)

describe('boxes', () => {
  it.each([
    { name: 'nothing', data: bytes(), found: [] },
    { name: 'half a header', data: bytes(0, 0, 0), found: [] },
    { name: 'one longer than the file', data: bytes(0, 0, 0, 99, 102, 114, 101, 101), found: [] },
    { name: 'one shorter than its header', data: bytes(0, 0, 0, 4, 102, 114, 101, 101), found: [] },
    { name: 'one to the end', data: bytes(0, 0, 0, 0, 102, 114, 101, 101, 1), found: ['free 8-9'] },
    { name: 'one, then a broken one', data: bytes(0, 0, 0, 8, 102, 114, 101, 101, 0, 0), found: ['free 8-8'] },
    {
      name: 'one of a long size',
      data: bytes(0, 0, 0, 1, 102, 114, 101, 101, 0, 0, 0, 0, 0, 0, 0, 17, 7),
      found: ['free 16-17'],
    },
  ])('in $name: $found', ({ data, found }) => {
    expect(listBoxes(data).map(({ type, body, end }) => `${type} ${body}-${end}`)).toEqual(found)
  })
})

// B-frames as most cameras make them: a picture is decoded before two that show earlier
const ORDER = [0, 4, 2, 1, 3, 8, 6, 5, 7]

describe('the times of samples', () => {
  it('keep the order of decoding, and show none before it is decoded', () => {
    const { durations, offsets, mediaTime, shownTicks } = laySampleTimes(
      ORDER.map((frame) => frame * 512),
      9 * 512,
    )
    expect(new Set(durations)).toEqual(new Set([512]))
    expect(mediaTime).toBe(2 * 512)
    expect(shownTicks).toBe(9 * 512)
    expect(offsets).toEqual([2, 5, 2, 0, 1, 5, 2, 0, 1].map((frames) => frames * 512))
  })

  it('keep uneven steps, and need no delay where the orders agree', () => {
    const times = laySampleTimes([0, 512, 2048, 2560], 3000)
    expect(times).toEqual({ durations: [512, 1536, 512, 440], offsets: null, mediaTime: 0, shownTicks: 3000 })
  })
})

const PICTURE: MovieTrack = {
  ...{ kind: 'picture' as const, timescale: 1000, entry: ENTRY, keys: [0, 5] },
  ...laySampleTimes(
    ORDER.map((frame) => frame * 200),
    1800,
  ),
}
const SOUND: MovieTrack = {
  ...{ kind: 'sound' as const, timescale: 48_000, entry: ENTRY, keys: null, offsets: null },
  ...{ durations: new Array<number>(86).fill(1024), mediaTime: 1024, shownTicks: 86_400 },
}
const SIZES = [ORDER.map((frame) => 100 + frame), new Array<number>(86).fill(7)]

describe('the head of a file', () => {
  it.each([false, true])('reads back as it was written (large: %s)', (large) => {
    const tracks = [PICTURE, SOUND]
    const chunks = planChunks(tracks)
    const head = writeMovieHead(tracks, chunks, SIZES, large)
    const total = SIZES.flat().reduce((sum, size) => sum + size, 0)
    const whole = new Uint8Array(head.length + total)
    whole.set(head)
    expect(listBoxes(whole).map(({ type }) => type)).toEqual(['ftyp', 'moov', 'mdat'])
    expect(listBoxes(whole).at(-1)).toMatchObject({ body: head.length, end: whole.length })
    const moov = listBoxes(whole).find(({ type }) => type === 'moov')
    const read = readTracks(whole.slice(moov?.start, moov?.end), true)
    expect(read?.map(({ handler, timescale, mediaTime }) => [handler, timescale, mediaTime])).toEqual([
      ['vide', 1000, 400],
      ['soun', 48_000, 1024],
    ])
    expect(read?.map((track) => track.samples.map(({ size }) => size))).toEqual(SIZES)
    expect(read?.map((track) => track.durations)).toEqual(tracks.map((track) => track.durations))
    // every byte behind the head belongs to exactly one sample
    const places = (read ?? []).flatMap((track) => track.samples).sort((a, b) => a.pos - b.pos)
    let at = head.length
    for (const { pos, size } of places) {
      expect(pos).toBe(at)
      at += size
    }
    expect(at).toBe(whole.length)
  })

  it('has its length before the sizes are known', () => {
    const chunks = planChunks([PICTURE])
    const before = writeMovieHead([PICTURE], chunks, [ORDER.map(() => 1)], false)
    expect(writeMovieHead([PICTURE], chunks, [ORDER.map(() => 90_000)], false)).toHaveLength(before.length)
  })

  it('lets picture and sound take turns of half a second', () => {
    const chunks = planChunks([PICTURE, SOUND])
    expect(chunks.slice(0, 4).map(({ track }) => track)).toEqual([0, 1, 0, 1])
    expect(chunks.filter(({ track }) => track === 0).at(-1)?.to).toBe(ORDER.length)
    expect(chunks.filter(({ track }) => track === 1).at(-1)?.to).toBe(86)
  })

  it('cut short is no head', () => {
    const head = writeMovieHead([PICTURE], planChunks([PICTURE]), [SIZES[0] ?? []], false)
    const moov = listBoxes(head).find(({ type }) => type === 'moov')
    expect(readTracks(head.slice(moov?.start, (moov?.end ?? 0) - 1), true)).toBeNull()
    expect(readTracks(head, true)).toBeNull()
    expect(readBoxHeader(head, head.length, head.length)).toBeNull()
  })
})
