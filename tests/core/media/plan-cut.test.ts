// The plan of a clip: which frames, when they show, how ffmpeg is told, and what names the clip.
import { describe, expect, it } from 'vitest'
import { chooseFrames, clipTimes } from '../../../core/media/choose-frames.ts'
import { planCut, slug } from '../../../core/media/plan-cut.ts'
import type { CutInput } from '../../../core/media/plan-cut.ts'
import { planLoudness } from '../../../core/media/plan-loudness.ts'
import type { FrameIndex } from '../../../core/media/read-packets.ts'
import type { Probe } from '../../../core/media/read-probe.ts'
import { buildSegment, span } from '../../helpers/build-sheet.ts'

const VIDEO = {
  index: 0,
  codec: 'h264',
  width: 1280,
  height: 720,
  rotation: 0,
  pixelFormat: 'yuv420p',
  interlaced: false,
  timeBase: { num: 1, den: 15_360 },
  averageRate: 30,
  durationMs: 60_000,
}
const AUDIO = {
  index: 1,
  codec: 'aac',
  sampleRate: 48_000,
  channels: 2,
  timeBase: { num: 1, den: 48_000 },
  durationMs: 60_000,
}
const PROBE: Probe = {
  formatNames: ['mov', 'mp4'],
  startSeconds: 0,
  clockStartSeconds: 0,
  durationMs: 60_000,
  sizeBytes: 1,
  video: VIDEO,
  audio: AUDIO,
  streamKinds: ['video', 'audio'],
}

/** The clip says its colours itself. */
const TAGS = 'setparams=color_primaries=bt709:color_trc=bt709:colorspace=bt709:range=tv'

/** A minute at 25 frames a second, or at the given times. */
const indexOf = (times = Array.from({ length: 1500 }, (_, frame) => frame * 40)): FrameIndex => ({
  frames: times.map((atMs, frame) => ({ atMs, key: frame % 250 === 0 })),
  endMs: (times.at(-1) ?? 0) + 40,
  withoutTime: 0,
  sameTime: 0,
  jumpsAtMs: [],
})

const input = (fields: Partial<CutInput> = {}, recording: Partial<CutInput['recording']> = {}): CutInput => ({
  segment: buildSegment('a', 1, 3),
  recording: { probe: PROBE, video: VIDEO, audio: AUDIO, ...recording },
  index: indexOf(),
  loudness: planLoudness(null),
  sha256: 'ab',
  ...fields,
})

describe('the frames of a stretch', () => {
  const index = indexOf([0, 33.333, 66.667, 100, 133.333, 500, 533.333])
  it.each([
    { name: 'from a frame to a frame', startMs: 33, endMs: 100, frames: [1, 2], ms: [33.333, 100] },
    { name: 'rounded to the millisecond', startMs: 67, endMs: 101, frames: [2, 3], ms: [66.667, 133.333] },
    { name: 'from between frames', startMs: 34, endMs: 68, frames: [2, 2], ms: [66.667, 100] },
    { name: 'to the end of the recording', startMs: 500, endMs: 9999, frames: [5, 6], ms: [500, 573.333] },
    { name: 'before a hole: it ends where it was told to', startMs: 100, endMs: 150, frames: [3, 4], ms: [100, 150] },
    {
      name: 'before a short gap: it ends with the next frame',
      startMs: 100,
      endMs: 300,
      frames: [3, 4],
      ms: [100, 500],
    },
  ])('$name', ({ startMs, endMs, frames, ms }) => {
    const [range] = chooseFrames([{ startMs, endMs }], index)
    expect([range?.firstFrame, range?.lastFrame]).toEqual(frames)
    expect([range?.fromMs, range?.toMs]).toEqual(ms)
  })

  it('none where none shows', () => {
    expect(
      chooseFrames(
        [
          { startMs: 140, endMs: 480 },
          { startMs: 34, endMs: 60 },
        ],
        index,
      ),
    ).toEqual([])
  })

  it('show in the clip from 0 on, one range after the other', () => {
    const ranges = chooseFrames(
      [
        { startMs: 33, endMs: 100 },
        { startMs: 500, endMs: 600 },
      ],
      index,
    )
    expect(clipTimes(ranges, index).map(Math.round)).toEqual([0, 33, 67, 100])
  })
})

describe('planCut', () => {
  it('plans one span', () => {
    const plan = planCut(input())
    expect(plan).toMatchObject({
      segmentId: 'a',
      name: 'exercise a',
      slug: 'exercise-a',
      spans: [{ startMs: 1000, endMs: 3000 }],
      frames: 50,
      durationMs: 2000,
      method: 'full',
      posterFrame: 16,
    })
    expect(plan.command.inputs).toEqual([{ options: ['-ss', '0.980000'] }])
    expect(plan.command.filter.split(';')).toEqual([
      '[0:0]trim=start=0.000000:end=2.000000,setpts=PTS-STARTPTS[v0]',
      `[v0]format=yuv420p,${TAGS}[v]`,
      '[0:1]atrim=start=0.020000:end=2.020000,asetpts=PTS-round(0.020000/TB),' +
        'aresample=48000:async=1:min_hard_comp=0.02:first_pts=0,aformat=sample_fmts=fltp:channel_layouts=stereo,' +
        'apad=whole_dur=2.000000,asetpts=N,atrim=end=2.000000,afade=t=in:d=0.005000,afade=t=out:st=1.995000:d=0.005000[a0]',
      '[a0]anull[a]',
    ])
  })

  it('opens the recording once for near spans and again for far ones', () => {
    const segment = buildSegment('a', 0, 0, {
      spans: [span(1, 3), span(40, 42)],
      cutOuts: [{ startMs: 1500, endMs: 2000 }],
    })
    const plan = planCut(input({ segment }))
    expect(plan.spans).toEqual([
      { startMs: 1000, endMs: 1520 },
      { startMs: 2000, endMs: 3000 },
      { startMs: 40_000, endMs: 42_000 },
    ])
    expect(plan.command.inputs.map(({ options }) => options[1])).toEqual(['0.980000', '39.980000'])
    const chains = plan.command.filter.split(';')
    expect(chains[0]).toBe('[0:0]split=2[v0_][v1_]')
    expect(chains[3]).toMatch(/^\[1:0\]trim=.*\[v2\]$/)
    expect(chains[4]).toMatch(
      /^\[v0\]\[v1\]\[v2\]concat=n=3:v=1:a=0,setpts='if\(N,.*eq\(N,13\).*eq\(N,38\).*',format=yuv420p,setparams=[^;]*\[v\]$/,
    )
  })

  it.each([
    { name: 'without sound', recording: { audio: null }, fits: /^(?!.*\[a\])/ },
    { name: 'of one channel', recording: { audio: { ...AUDIO, channels: 1 } }, fits: /channel_layouts=mono/ },
    { name: 'of six channels', recording: { audio: { ...AUDIO, channels: 6 } }, fits: /channel_layouts=stereo/ },
    { name: 'of an odd width', recording: { video: { ...VIDEO, width: 1281 } }, fits: /crop=trunc/ },
    { name: 'in fields', recording: { video: { ...VIDEO, interlaced: true } }, fits: /\[0:0\]bwdif=/ },
    { name: 'of even size and whole pictures', recording: {}, fits: /^(?!.*(crop|bwdif))/ },
  ])('plans for a recording $name', ({ recording, fits }) => {
    expect(planCut(input({}, recording)).command.filter).toMatch(fits)
  })

  it('reads a transport stream from a key frame earlier, and times from there', () => {
    const recording = { probe: { ...PROBE, formatNames: ['mpegts'] } }
    const plan = planCut(input({ segment: buildSegment('a', 25, 26) }, recording))
    expect(plan.command.inputs[0]?.options).toEqual(['-ss', '9.999000'])
    expect(plan.command.filter).toMatch(/^\[0:0\]trim=start=14\.981000:end=15\.981000/)
  })

  it('seeks from the earliest stream where sound starts before our clock', () => {
    const recording = { probe: { ...PROBE, startSeconds: -0.007 } }
    expect(planCut(input({}, recording)).command.inputs[0]?.options).toEqual(['-ss', '0.987000'])
  })

  it.each([
    [{ num: 1, den: 15_360 }, '15360'],
    [{ num: 1, den: 1000 }, '10000'],
    [{ num: 1, den: 600 }, '10200'],
    [{ num: 1001, den: 30_000 }, '90000'],
  ])('counts time base %j in ticks of 1/%s', (timeBase, ticks) => {
    const { output } = planCut(input({}, { video: { ...VIDEO, timeBase } })).command
    expect(output[output.indexOf('-video_track_timescale') + 1]).toBe(ticks)
    expect(output[output.indexOf('-enc_time_base:v') + 1]).toBe(`1/${ticks}`)
  })

  it('takes the start of the loop for the still when the clip keeps it', () => {
    const loop = (startMs: number) =>
      planCut(input({ segment: buildSegment('a', 1, 3, { loop: { startMs, endMs: startMs + 500 } }) }))
    expect(loop(2000).posterFrame).toBe(25)
    expect(loop(9000).posterFrame).toBe(16)
  })

  it('stops when no frame is kept', () => {
    expect(() => planCut(input({ segment: buildSegment('a', 70, 80) }))).toThrow(
      expect.objectContaining({ code: 'sheet-spans' }) as Error,
    )
  })

  it('names the clip by what it holds, not by what it is called', () => {
    const key = (fields: Partial<CutInput>) => planCut(input(fields)).key
    const same = key({})
    expect(key({ segment: buildSegment('other', 1, 3, { exercise: { name: 'Other' } }) })).toBe(same)
    expect(key({ segment: buildSegment('a', 1.04, 3) })).not.toBe(same)
    expect(key({ sha256: 'cd' })).not.toBe(same)
    expect(key({ loudness: planLoudness({ integratedLufs: -20, truePeakDbtp: -9 }) })).not.toBe(same)
  })
})

describe('slug', () => {
  it.each([
    ['Squat', 'squat'],
    ['Lunge, left & right', 'lunge-left-right'],
    ['Käsefüße', 'kasefusse'],
    ['../../etc/passwd', 'etc-passwd'],
    ['-y', 'y'],
    ['%d', 'd'],
    ['体操', 'clip'],
    ['', 'clip'],
    ['a'.repeat(60), 'a'.repeat(40)],
    [`${'a'.repeat(39)} b`, 'a'.repeat(39)],
  ])('of %j is %j', (name, expected) => {
    expect(slug(name)).toBe(expected)
  })
})
