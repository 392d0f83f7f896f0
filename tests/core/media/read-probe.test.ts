// What ffprobe prints becomes the facts that the plan needs, and text that is not its output becomes nothing.
import { describe, expect, it } from 'vitest'
import { readProbe } from '../../../core/media/read-probe.ts'

const video = {
  index: 0,
  codec_type: 'video',
  codec_name: 'h264',
  width: 1280,
  height: 720,
  pix_fmt: 'yuv420p',
  field_order: 'progressive',
  time_base: '1/15360',
  avg_frame_rate: '30/1',
  duration: '12.000000',
  disposition: { default: 1 },
}
const audio = {
  index: 1,
  codec_type: 'audio',
  codec_name: 'aac',
  sample_rate: '48000',
  channels: 2,
  time_base: '1/48000',
  disposition: { default: 1 },
}
const AAC_TRACK = {
  index: 1,
  codec: 'aac',
  sampleRate: 48_000,
  channels: 2,
  timeBase: { num: 1, den: 48_000 },
  durationMs: null,
}
const probe = (streams: object[], format: object = {}) =>
  readProbe(
    JSON.stringify({
      streams,
      format: { format_name: 'mov,mp4,m4a', start_time: '0.000000', duration: '12.010000', size: '1000', ...format },
    }),
  )

describe('readProbe', () => {
  it.each(['', 'not json', '[]', '{}', '{"streams":[]}', 'null'])('gives null for %j', (text) => {
    expect(readProbe(text)).toBeNull()
  })

  it('reads container, picture and sound', () => {
    expect(probe([video, audio])).toEqual({
      formatNames: ['mov', 'mp4', 'm4a'],
      startSeconds: 0,
      clockStartSeconds: 0,
      durationMs: 12_010,
      sizeBytes: 1000,
      video: {
        index: 0,
        codec: 'h264',
        width: 1280,
        height: 720,
        rotation: 0,
        pixelFormat: 'yuv420p',
        interlaced: false,
        timeBase: { num: 1, den: 15_360 },
        averageRate: 30,
        durationMs: 12_000,
        colour: { transfer: '', primaries: '', matrix: '', range: '' },
      },
      audio: AAC_TRACK,
      soundTracks: [AAC_TRACK],
      streamKinds: ['video', 'audio'],
    })
  })

  it('reads colours as they are said, DV as half frames, and every sound track', () => {
    const hdr = {
      color_transfer: 'arib-std-b67',
      color_primaries: 'bt2020',
      color_space: 'bt2020nc',
      color_range: 'tv',
    }
    const colour = { transfer: 'arib-std-b67', primaries: 'bt2020', matrix: 'bt2020nc', range: 'tv' }
    expect(probe([{ ...video, ...hdr }])?.video?.colour).toEqual(colour)
    expect(probe([{ ...video, color_space: 'unknown' }])?.video?.colour?.matrix).toBe('')
    expect(probe([{ ...video, codec_name: 'dvvideo', field_order: 'unknown' }])?.video?.interlaced).toBe(true)
    expect(probe([video, audio, { ...audio, index: 2 }])?.soundTracks?.map(({ index }) => index)).toEqual([1, 2])
  })

  it('takes a cover picture for none', () => {
    const cover = { ...video, codec_name: 'mjpeg', disposition: { default: 1, attached_pic: 1 } }
    expect(probe([cover, audio])).toMatchObject({ video: null, streamKinds: ['cover', 'audio'] })
    expect(probe([cover, { ...video, index: 2 }])?.video?.index).toBe(2)
  })

  it('prefers the default stream, else the first', () => {
    const second = { ...audio, index: 2 }
    expect(probe([video, { ...audio, disposition: { default: 0 } }, second])?.audio?.index).toBe(2)
    const none = { disposition: { default: 0 } }
    expect(probe([video, { ...audio, ...none }, { ...second, ...none }])?.audio?.index).toBe(1)
  })

  it.each([
    [[{ rotation: -90 }], 90],
    [[{ rotation: 90 }], 270],
    [[{ rotation: 180 }], 180],
    [[{ rotation: -180 }], 180],
    [[{ other: 1 }], 0],
  ])('reads the display matrix %j as %i degrees clockwise', (side_data_list, degrees) => {
    expect(probe([{ ...video, side_data_list }])?.video?.rotation).toBe(degrees)
  })

  it('starts our clock with the container, but not before 0', () => {
    expect(probe([video], { start_time: '1.400000' })).toMatchObject({ startSeconds: 1.4, clockStartSeconds: 1.4 })
    expect(probe([video], { start_time: '-0.007000' })).toMatchObject({ startSeconds: -0.007, clockStartSeconds: 0 })
  })

  it('knows fields from whole pictures', () => {
    const interlaced = ['tt', 'bb', 'tb', 'bt', 'progressive', 'unknown'].map(
      (field_order) => probe([{ ...video, field_order }])?.video?.interlaced,
    )
    expect(interlaced).toEqual([true, true, true, true, false, false])
  })
})
