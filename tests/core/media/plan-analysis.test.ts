// What is made of a film, as plans: whether browsers show it, how many small pictures, which zooms.
import { describe, expect, it } from 'vitest'
import type { AcceptedRecording } from '../../../core/media/accept-recording.ts'
import { PEAK_ZOOMS, planPass, planThumbs, previewOptions, whyPreview } from '../../../core/media/plan-analysis.ts'

interface Film {
  names?: string[]
  codec?: string
  pixelFormat?: string
  interlaced?: boolean
  audio?: string | null
  size?: [number, number]
  rotation?: number
}

function film(given: Film = {}): AcceptedRecording {
  const { names = ['mov', 'mp4'], codec = 'h264', pixelFormat = 'yuv420p', audio = 'aac' } = given
  const [width, height] = given.size ?? [1920, 1080]
  const timeBase = { num: 1, den: 90_000 }
  const sound =
    audio === null ? null : { index: 1, codec: audio, sampleRate: 48_000, channels: 2, timeBase, durationMs: null }
  const video = {
    ...{ index: 0, codec, width, height, rotation: given.rotation ?? 0, pixelFormat, timeBase },
    ...{ interlaced: given.interlaced ?? false, averageRate: 30, durationMs: null },
  }
  const times = { startSeconds: 0, clockStartSeconds: 0, durationMs: null, sizeBytes: 1 }
  return { video, audio: sound, probe: { formatNames: names, ...times, video, audio: sound, streamKinds: [] } }
}

describe('a preview', () => {
  it.each<[string, Film, RegExp]>([
    ['HEVC of newer phones', { codec: 'hevc' }, /shows hevc/],
    ['ten bits', { pixelFormat: 'yuv420p10le' }, /of the form yuv420p10le/],
    ['full colour', { pixelFormat: 'yuv444p' }, /of the form yuv444p/],
    ['half frames', { interlaced: true }, /half frames/],
    ['a transport stream', { names: ['mpegts'] }, /this kind of file/],
    ['an MKV with H.264', { names: ['matroska', 'webm'] }, /shows h264 in this kind of file/],
    ['sound of cameras', { audio: 'pcm_s16le' }, /plays pcm_s16le/],
  ])('is needed for %s', (_what, given, why) => {
    expect(whyPreview(film(given))).toMatch(why)
  })

  it.each<[string, Film]>([
    ['H.264 with AAC in MP4', {}],
    ['a film without sound', { audio: null }],
    ['VP9 with Opus in WebM', { names: ['matroska', 'webm'], codec: 'vp9', audio: 'opus' }],
  ])('is not needed for %s', (_what, given) => {
    expect(whyPreview(film(given))).toBeNull()
  })

  it('takes no sound where there is none', () => {
    expect(previewOptions(film({ audio: null })).output.filter((one) => one === '-map')).toHaveLength(1)
  })
})

describe('small pictures', () => {
  it.each<[number, Film, object]>([
    [0, {}, { everyMs: 2000, count: 1, sheets: 1 }],
    [24_000, {}, { everyMs: 2000, count: 12, sheets: 1, width: 160, height: 90 }],
    [100_001, {}, { everyMs: 2000, count: 51, sheets: 2 }],
    [3_600_000, {}, { everyMs: 6000, count: 600, sheets: 12 }],
    [36_000_000, {}, { everyMs: 60_000, count: 600, sheets: 12 }],
    [24_000, { rotation: 90 }, { width: 160, height: 284 }],
    [24_000, { size: [4000, 10] }, { height: 2 }],
  ])('of a class of %d ms', (durationMs, given, plan) => {
    expect(planThumbs(film(given), durationMs)).toMatchObject(plan)
  })
})

it('each zoom of the wave is a whole part of the finest', () => {
  for (const zoom of PEAK_ZOOMS) expect(PEAK_ZOOMS[0] % zoom).toBe(0)
})

describe('the one pass', () => {
  const thumbs = planThumbs(film(), 24_000)

  it('reads sound, loudness, small pictures and dull parts at one time, key frames only', () => {
    const { input, output } = planPass(film(), thumbs, '/made/sheet-%d.jpg')
    expect(input).toContain('nokey')
    const chains = (output[1] ?? '').split(';')
    expect(chains.map((chain) => /\](\w+)=/.exec(chain)?.[1])).toEqual([
      ...['asplit', 'ebur128', 'aresample', 'scale', 'fps', 'blackdetect'],
    ])
    expect(output.filter((one) => one === '-map')).toHaveLength(2)
  })

  it('asks for no sound where there is none, and mixes six channels to two', () => {
    const silent = planPass(film({ audio: null }), thumbs, '/made/sheet-%d.jpg').output
    expect(silent[1]).not.toMatch(/ebur128/)
    expect(silent).not.toContain('pipe:1')
    const six = film()
    const audio = six.audio && { ...six.audio, channels: 6 }
    expect(planPass({ ...six, audio }, thumbs, 'x').output[1]).toContain('aformat=channel_layouts=stereo,ebur128')
  })
})
