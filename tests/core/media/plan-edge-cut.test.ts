// Edge cuts are planned from the packet index alone: heads, copies, ends, moved in-points, and every reason against.
import { describe, expect, it } from 'vitest'
import type { AcceptedRecording } from '../../../core/media/accept-recording.ts'
import { buildEdgeSource } from '../../../core/media/build-edge-source.ts'
import { chooseFrames } from '../../../core/media/choose-frames.ts'
import { freeInPoints } from '../../../core/media/free-in-points.ts'
import type { Mp4Track } from '../../../core/media/mp4/read-tracks.ts'
import { planEdgeCommand } from '../../../core/media/plan-edge-commands.ts'
import { planEdgeCut, whyNoEdge } from '../../../core/media/plan-edge-cut.ts'
import type { EdgeSource } from '../../../core/media/plan-edge-cut.ts'
import type { FrameIndex, PacketPlace } from '../../../core/media/read-packets.ts'
import { withAvcConfig } from '../../../core/media/h264/parameter-sets.ts'
import type { Segment } from '../../../shared/log-sheet.ts'
import { buildSegment, span } from '../../helpers/build-sheet.ts'

const GOP = 30
const FRAMES = 300

/** Frames of a group in decode order: a key frame, then B-frames in a pyramid of four, then what is left. */
function groupOrder(): number[] {
  const order = [0]
  for (let frame = 0; frame + 4 < GOP; frame += 4) order.push(frame + 4, frame + 2, frame + 1, frame + 3)
  return [...order, GOP - 1]
}

/** 25 frames a second (1000 ticks); packets lie behind each other in the file. */
function packetsOf(change: (packet: PacketPlace, frame: number) => Partial<PacketPlace> = () => ({})): PacketPlace[] {
  const order = Array.from({ length: FRAMES / GOP }, (_, group) =>
    groupOrder().map((frame) => group * GOP + frame),
  ).flat()
  return order.map((frame, place) => {
    const packet = { ticks: frame * 40, size: 10, pos: place * 10, key: frame % GOP === 0, hidden: false }
    return { ...packet, ...change(packet, frame) }
  })
}

const INDEX: FrameIndex = {
  frames: Array.from({ length: FRAMES }, (_, frame) => ({ atMs: frame * 40, key: frame % GOP === 0 })),
  ...{ endMs: FRAMES * 40, withoutTime: 0, sameTime: 0, jumpsAtMs: [] },
}

function entryOf(lengthBytes = 4, ids = [0]): Uint8Array {
  const fixed = new Uint8Array(86)
  fixed.set([0, 0, 0, 86, 0x61, 0x76, 0x63, 0x31])
  // Exp-Golomb codes below 31 that fit one byte here: n + 1 in binary behind as many zeros as it has bits less one
  const code = (id: number) => [0b1000_0000, 0b0100_0000, 0b0110_0000][id] ?? 0
  const entry = withAvcConfig(fixed, {
    ...{ profile: 100, compatibility: 0, level: 31, lengthBytes },
    sps: ids.map((id) => Uint8Array.from([0x67, 100, 0, 31, code(id), 1])),
    pps: [Uint8Array.from([0x68, code(0), 1])],
    more: new Uint8Array(),
  })
  return entry
}

const track = (fields: Partial<Mp4Track> = {}): Mp4Track => ({
  ...{ handler: 'vide', timescale: 1000, matrix: new Uint8Array(36), shownSize: new Uint8Array(8) },
  ...{ entries: [{ type: 'avc1', bytes: entryOf() }], mediaTime: 0, samples: [], durations: [] },
  ...fields,
})

function sourceOf(packets = packetsOf(), index = INDEX): EdgeSource {
  const source = buildEdgeSource([track()], packets, index)
  if (typeof source === 'string') throw new Error(source)
  return source
}

const plan = (startMs: number, endMs: number, source = sourceOf(), index = INDEX) =>
  planEdgeCut(source, index, chooseFrames([{ startMs, endMs }], index))

describe('what edge cuts copy from', () => {
  it.each<{ name: string; tracks: Mp4Track[] | null; packets?: PacketPlace[]; says: string }>([
    { name: 'no head', tracks: null, says: 'cannot be read' },
    { name: 'sound only', tracks: [track({ handler: 'soun' })], says: 'cannot be read' },
    { name: 'two pictures', tracks: [track(), track()], says: 'several pictures' },
    {
      name: 'two sample entries',
      tracks: [track({ entries: [...track().entries, ...track().entries] })],
      says: 'changes its parameter sets',
    },
    { name: 'sets inside only', tracks: [track({ entries: [{ type: 'avc3', bytes: entryOf() }] })], says: 'avc3' },
    {
      name: 'no configuration',
      tracks: [track({ entries: [{ type: 'avc1', bytes: new Uint8Array(86) }] })],
      says: 'sets cannot be read',
    },
    { name: 'no places', tracks: [track()], packets: packetsOf(() => ({ pos: null })), says: 'where its frames lie' },
    { name: 'other times', tracks: [track({ timescale: 1001 })], says: 'odd time stamps' },
    {
      name: 'a frame more',
      tracks: [track()],
      packets: [...packetsOf(), { ticks: 12_000, size: 1, pos: 1, key: false, hidden: false }],
      says: 'odd time stamps',
    },
  ])('is not there with $name: $says', ({ tracks, packets = packetsOf(), says }) => {
    expect(buildEdgeSource(tracks, packets, INDEX)).toContain(says)
  })
})

describe('a recording', () => {
  const video = { codec: 'h264', pixelFormat: 'yuv420p', interlaced: false, width: 1280, height: 720, averageRate: 25 }
  const recording = (fields: object, names = ['mov']) =>
    ({ video: { ...video, ...fields }, probe: { formatNames: names } }) as unknown as AcceptedRecording
  it.each([
    { name: 'HEVC', fields: { codec: 'hevc' }, says: 'hevc, not H.264' },
    { name: '10 bits', fields: { pixelFormat: 'yuv420p10le' }, says: 'yuv420p10le' },
    { name: '4:2:2', fields: { pixelFormat: 'yuv422p' }, says: 'yuv422p' },
    { name: 'full range', fields: { pixelFormat: 'yuvj420p' }, says: 'BT.709' },
    {
      name: 'old colours',
      fields: { colour: { transfer: '', primaries: '', matrix: 'smpte170m', range: 'tv' } },
      says: 'BT.709',
    },
    { name: 'half frames', fields: { interlaced: true }, says: 'half frames' },
    { name: 'an odd side', fields: { width: 321 }, says: 'odd side' },
  ])('of $name is not cut at its edges: $says', ({ fields, says }) => {
    expect(whyNoEdge(recording(fields), INDEX)).toContain(says)
  })

  it('whose frames lack times, or whose clock jumps, is not', () => {
    expect(whyNoEdge(recording({}), { ...INDEX, sameTime: 1 })).toContain('lack a time')
    expect(whyNoEdge(recording({}, ['mpegts']), { ...INDEX, jumpsAtMs: [1] })).toContain('jumps')
    expect(whyNoEdge(recording({}), { ...INDEX, jumpsAtMs: [1] })).toBeNull()
  })
})

describe('the plan of a range', () => {
  it('encodes up to the next key frame, copies the rest, and decodes from the key frame before', () => {
    const { plan: found, why } = plan(1000, 5800)
    const [part] = found?.parts ?? []
    // frame 25 to key frame 30, then to frame 144, the last before 5800 ms and itself the end of a group of four
    expect(part?.headTicks).toEqual([1000, 1040, 1080, 1120, 1160])
    expect(part?.decode).toEqual({ from: 0, to: 30 })
    expect(part?.copy.from).toBe(30)
    expect(found?.headFrames).toBe(5)
    expect(found?.setId).toBe(1)
    expect(found?.ranges[0]).toMatchObject({ firstFrame: 25, lastFrame: 144, toMs: 5800 })
    expect(why).toBe('The first 5 of 120 frames, up to a key frame, are encoded; the rest is copied as it is.')
  })

  it.each([
    { frames: 1, startMs: 1160, crf: '30' },
    { frames: 3, startMs: 1080, crf: '28' },
    { frames: 5, startMs: 1000, crf: '26' },
    { frames: 6, startMs: 960, crf: '24' },
  ])('encodes a head of $frames, whose first picture is whole, at $crf', ({ frames, startMs, crf }) => {
    const { plan: found } = plan(startMs, 5800)
    if (!found) throw new Error('no edge cut')
    const silent = { audio: null, video: { pixelFormat: 'yuv420p' } } as unknown as AcceptedRecording
    const { pictureOutput } = planEdgeCommand(silent, INDEX, sourceOf(), found, {
      loudness: null,
      filters: [],
    } as never)
    expect(found.headFrames).toBe(frames)
    expect(pictureOutput?.[pictureOutput.indexOf('-crf') + 1]).toBe(crf)
  })

  it('on a key frame copies all', () => {
    const { plan: found, why } = plan(1200, 5800)
    expect(found?.parts[0]).toMatchObject({ headTicks: [], decode: { from: 0, to: 0 }, fromTicks: 1200 })
    expect(why).toContain('copied as it is')
  })

  it.each([
    [4960, 4960, 'between two groups of four'],
    [4880, 4960, 'two frames into one'],
    [4840, 4960, 'a frame into one'],
  ])('that should end at %d ms ends at %d ms, %s', (askedMs, endMs) => {
    // frames 121 to 124 are decoded as 124, 122, 121, 123; the end is where none of them is missing or left over
    const range = plan(1200, askedMs).plan?.ranges[0]
    expect(Math.round(range?.toMs ?? 0)).toBeGreaterThanOrEqual(askedMs)
    expect(Math.round(range?.toMs ?? 0)).toBeLessThanOrEqual(Math.max(endMs, askedMs) + 40)
    if (range && range.toMs > askedMs) expect(range.soundToMs).toBe(askedMs)
  })

  it('takes the next key frame where pictures show across the first', () => {
    // the picture decoded behind the key frame at 1200 ms shows before it
    const open = packetsOf((_, frame) => (frame === 31 ? { ticks: 1160 } : frame === 29 ? { ticks: 1240 } : {}))
    const source = { ...sourceOf(), packets: open }
    const found = plan(1000, 7000, { ...source, shown: sourceOf(packetsOf()).shown }).plan
    expect(found?.parts[0]?.headTicks.at(-1)).toBe(2360)
  })

  it.each([
    { name: 'no key frame', startMs: 1240, endMs: 2300, says: 'no key frame lies in it' },
    { name: 'a key frame near its end', startMs: 1240, endMs: 2800, says: 'lie before a key frame' },
  ])('with $name is encoded as a whole: $says', ({ startMs, endMs, says }) => {
    expect(plan(startMs, endMs)).toMatchObject({ plan: null, why: expect.stringContaining(says) as string })
  })

  it('with hidden frames inside is encoded as a whole', () => {
    const packets = packetsOf((_, frame) => ({ hidden: frame === 62 }))
    const index = { ...INDEX, frames: INDEX.frames.filter((_, frame) => frame !== 62) }
    expect(plan(1000, 5800, sourceOf(packets, index), index)).toMatchObject({
      plan: null,
      why: expect.stringContaining('hidden') as string,
    })
  })

  it('with short lengths, or with every set id taken, is encoded as a whole', () => {
    const source = sourceOf()
    const config = { ...source.config, lengthBytes: 2 }
    expect(plan(1000, 5800, { ...source, config }).why).toContain('short lengths')
  })

  it('joins ranges, also one without a key frame, when most is copied', () => {
    const stretches = [
      { startMs: 1000, endMs: 5800 },
      { startMs: 6040, endMs: 6400 },
    ]
    const found = planEdgeCut(sourceOf(), INDEX, chooseFrames(stretches, INDEX)).plan
    expect(found?.parts.map(({ headTicks, copy }) => [headTicks.length, copy.to > copy.from])).toEqual([
      [5, true],
      [9, false],
    ])
    expect(found?.parts.map(({ lengthTicks }) => lengthTicks)).toEqual([4800, 360])
  })
})

describe('an in-point', () => {
  const pauses = [{ startMs: 500, endMs: 2500 }]
  const free = (segment: Segment, given = pauses) => freeInPoints(segment, INDEX, sourceOf(), given).ranges[0]?.startMs
  it.each([
    { name: 'outside a pause', given: [{ startMs: 0, endMs: 700 }], startMs: 720 },
    { name: 'in a pause that ends before the key frame', given: [{ startMs: 500, endMs: 1000 }], startMs: 720 },
    { name: 'in a pause with a key frame', given: pauses, startMs: 1200 },
    {
      name: 'in a pause whose speech begins right behind the key frame',
      given: [{ startMs: 500, endMs: 1300 }],
      startMs: 720,
    },
  ])('$name starts at $startMs', ({ given, startMs }) => {
    expect(free(buildSegment('a', 0.72, 6), given)).toBe(startMs)
  })

  it('that is locked, or was set by a person, stays', () => {
    expect(free(buildSegment('a', 0, 0, { spans: [span(0.72, 6, { lockedIn: true })] }))).toBe(720)
    expect(free(buildSegment('a', 0.72, 6, { setByPerson: ['spans'] }))).toBe(720)
  })

  it('behind a cut-out stays', () => {
    const segment = buildSegment('a', 0.2, 6, { cutOuts: [{ startMs: 200, endMs: 720 }] })
    expect(free(segment)).toBe(720)
  })

  it('does not move into what was kept before', () => {
    const segment = buildSegment('a', 0, 0, { spans: [span(0, 1.22), span(1.3, 6)] })
    expect(freeInPoints(segment, INDEX, sourceOf(), pauses).ranges[1]?.startMs).toBeGreaterThanOrEqual(1220)
  })
})
