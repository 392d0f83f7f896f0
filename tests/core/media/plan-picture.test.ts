// What is done to a camera's picture: nothing where nothing is needed, and each step is named.
import { describe, expect, it } from 'vitest'
import { isHdr, planPicture } from '../../../core/media/plan-picture.ts'
import type { PictureColour, VideoStream } from '../../../core/media/read-probe.ts'

const colour = (fields: Partial<PictureColour> = {}): PictureColour => ({
  ...{ transfer: '', primaries: '', matrix: '', range: '' },
  ...fields,
})
const video = (fields: Partial<VideoStream> = {}): VideoStream => ({
  ...{ index: 0, codec: 'h264', width: 1280, height: 720, rotation: 0, pixelFormat: 'yuv420p', interlaced: false },
  ...{ timeBase: { num: 1, den: 15_360 }, averageRate: 25, durationMs: null },
  ...fields,
})
const TAGS = 'setparams=color_primaries=bt709:color_trc=bt709:colorspace=bt709:range=tv'

describe('planPicture', () => {
  it.each([
    { name: 'nothing said of colours', fields: {} },
    {
      name: 'BT.709',
      fields: { colour: colour({ transfer: 'bt709', primaries: 'bt709', matrix: 'bt709', range: 'tv' }) },
    },
    { name: '10 bits 4:2:2', fields: { pixelFormat: 'yuv422p10le' } },
  ])('leaves the colours as they are: $name', ({ fields }) => {
    expect(planPicture(video(fields))).toEqual({ before: [], after: ['format=yuv420p', TAGS], done: [] })
  })

  it('makes half frames whole before any is taken out, and tells the rate', () => {
    const { before, done } = planPicture(video({ interlaced: true, averageRate: 29.970_03 }))
    expect(before).toEqual(['bwdif=mode=send_frame:deint=all'])
    expect(done).toEqual(['half frames made whole by bwdif, 29.97 frames a second'])
  })

  it.each([
    { transfer: 'smpte2084', name: 'PQ' },
    { transfer: 'arib-std-b67', name: 'HLG' },
  ])('maps $name by the Moebius curve from reference white', ({ transfer, name }) => {
    const plan = planPicture(video({ colour: colour({ transfer }), pixelFormat: 'yuv420p10le' }))
    // ITU-R BT.2408: reference white is 203 cd/m2; 1000 / 203 = 4.926
    expect(plan.after.slice(0, 5)).toEqual([
      `setparams=color_trc=${transfer}:color_primaries=bt2020:colorspace=bt2020nc:range=tv`,
      'zscale=t=linear:npl=203',
      'format=gbrpf32le',
      'zscale=p=bt709',
      'tonemap=tonemap=mobius:param=0.7:peak=4.926:desat=0',
    ])
    expect(plan.done[0]).toContain(`(${name}) tone-mapped by the Moebius curve`)
    expect(isHdr(video({ colour: colour({ transfer }) }))).toBe(true)
  })

  it.each([
    { name: 'BT.601', fields: { colour: colour({ matrix: 'smpte170m' }) }, says: 'colours of BT.601 made BT.709' },
    { name: 'full range', fields: { pixelFormat: 'yuvj420p' }, says: 'full range made video range' },
    {
      name: 'wide colours',
      fields: { colour: colour({ primaries: 'bt2020' }) },
      says: 'colours of BT.2020 narrowed to BT.709',
    },
  ])('says what was done: $name', ({ fields, says }) => {
    const plan = planPicture(video(fields))
    expect(plan.done).toEqual([says])
    expect(plan.after.length).toBeGreaterThan(2)
  })

  it('drops an odd last row, or scales where that is asked for', () => {
    expect(planPicture(video({ height: 721 })).after[0]).toBe('crop=trunc(iw/2)*2:trunc(ih/2)*2:0:0')
    expect(planPicture(video({ height: 721 }), ['scale=-2:360']).after[0]).toBe('scale=-2:360')
  })
})
