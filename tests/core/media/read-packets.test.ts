// The packet list of ffprobe becomes the frames a player shows, each at its exact time.
import { describe, expect, it } from 'vitest'
import { PACKET_FIELDS, readPackets } from '../../../core/media/read-packets.ts'

const AT_30 = { num: 1, den: 15_360 }
const times = (csv: string, base = AT_30, start = 0) => readPackets(csv, base, start).frames.map(({ atMs }) => atMs)

describe('readPackets', () => {
  it('asks for the fields in the order that ffprobe prints them', () => {
    expect(PACKET_FIELDS).toBe('packet=pts,duration,size,pos,flags')
  })

  it.each(['', '\n', 'nonsense', '1,2'])('finds no frame in %j', (csv) => {
    expect(readPackets(csv, AT_30, 0)).toEqual({ frames: [], endMs: 0, withoutTime: 0, sameTime: 0, jumpsAtMs: [] })
  })

  it('puts frames in order of time and keeps exact times', () => {
    const index = readPackets('0,512,K_\n1536,512,__\n512,512,__\n1024,512,__\n', AT_30, 0)
    expect(index.frames).toEqual([
      { atMs: 0, key: true },
      { atMs: 512 / 15.36, key: false },
      { atMs: 1024 / 15.36, key: false },
      { atMs: 100, key: false },
    ])
    expect(index.endMs).toBeCloseTo(133.333, 3)
  })

  // 30030 / 60000 s is exactly half a millisecond after 500: a rounding error would put the frame one ms early
  it('places half milliseconds exactly', () => {
    expect(times('0,1001,K_\n30030,1001,__\n', { num: 1, den: 60_000 })[1]).toBe(500.5)
  })

  it('leaves out what the container hides', () => {
    expect(times('0,512,KD\n512,512,_D\n1024,512,K_\n1536,512,__\n')).toEqual([1024 / 15.36, 100])
  })

  it('leaves out what cannot be decoded: before the first key frame, in the file or in time', () => {
    expect(times('0,512,__\n512,512,__\n2048,512,K_\n1024,512,__\n1536,512,__\n2560,512,__\n')).toEqual([
      2048 / 15.36,
      500 / 3,
    ])
  })

  it('takes the start of the clock off', () => {
    expect(times('126000,3000,K_\n129000,3000,__\n', { num: 1, den: 90_000 }, 1.4).map((ms) => ms.toFixed(6))).toEqual([
      '0.000000',
      '33.333333',
    ])
  })

  it('reads Windows lines and further columns, as of packets with side data', () => {
    expect(times('0,512,K__,\r\n\r\n512,512,___,\r\n')).toHaveLength(2)
  })

  it('counts frames without a time and frames at one time', () => {
    const index = readPackets('0,512,K_\nN/A,512,__\n512,512,__\n512,512,__\n', AT_30, 0)
    expect(index).toMatchObject({ withoutTime: 1, sameTime: 1 })
    expect(index.frames).toHaveLength(2)
  })

  it.each([
    { name: 'goes on', csv: '0,1,K_\n90000,1,__\n45000,1,__\n', jumps: [] },
    { name: 'jumps ahead', csv: '0,1,K_\n990000,1,__\n', jumps: [11_000] },
    { name: 'goes back', csv: '0,1,K_\n450000,1,K_\n180000,1,K_\n', jumps: [2000] },
  ])('tells where the clock of the file $name', ({ csv, jumps }) => {
    expect(readPackets(csv, { num: 1, den: 90_000 }, 0).jumpsAtMs).toEqual(jumps)
  })

  it('lets the last frame last as long as its packet says, else as the one before', () => {
    expect(readPackets('0,0,K_\n1000,0,__\n', { num: 1, den: 1000 }, 0).endMs).toBe(2000)
    expect(readPackets('0,40,K_\n1000,500,__\n', { num: 1, den: 1000 }, 0).endMs).toBe(1500)
    expect(readPackets('0,N/A,K_\n', { num: 1, den: 1000 }, 0).endMs).toBe(40)
  })
})
