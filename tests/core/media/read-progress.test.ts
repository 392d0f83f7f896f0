// ffmpeg's progress report becomes per cent of the clip that is made, never of the recording it is cut from.
import { describe, expect, it } from 'vitest'
import { isProgressLine, progressReader } from '../../../core/media/read-progress.ts'

const block = (us: string, size: string, progress: string) => [
  'frame=1',
  'fps=0.00',
  'stream_0_0_q=-0.0',
  'bitrate=N/A',
  `total_size=${size}`,
  `out_time_us=${us}`,
  `out_time_ms=${us}`,
  'out_time=00:00:00.085333',
  'dup_frames=0',
  'drop_frames=0',
  'speed=40.1x',
  `progress=${progress}`,
]
const read = (expectMs: number, ...blocks: string[][]) => {
  const reader = progressReader(expectMs)
  return blocks.flat().flatMap((line) => reader(line) ?? [])
}

describe('progressReader', () => {
  it('reports once a block', () => {
    expect(read(10_000, block('2500000', '1234', 'continue'), block('10000000', '5000', 'end'))).toEqual([
      { outMs: 2500, bytes: 1234, percent: 25, done: false },
      { outMs: 10_000, bytes: 5000, percent: 100, done: true },
    ])
  })

  it('stays under 100 until the end, though the output is longer than planned', () => {
    expect(read(1000, block('1010667', '1', 'continue'))[0]?.percent).toBe(99)
  })

  it('never goes back and never below 0', () => {
    const negative = block('-23220', 'N/A', 'continue')
    const reports = read(1000, negative, block('500000', '9', 'continue'), block('400000', '9', 'continue'))
    expect(reports.map(({ percent }) => percent)).toEqual([0, 50, 50])
    expect(reports[0]?.bytes).toBeNull()
  })

  it('says 0 until the end when no length is known', () => {
    expect(
      read(0, block('500000', '9', 'continue'), block('500000', '9', 'end')).map(({ percent }) => percent),
    ).toEqual([0, 100])
  })
})

describe('isProgressLine', () => {
  it('knows every line of a report', () => {
    expect(block('1', '2', 'end').filter((line) => !isProgressLine(line))).toEqual([])
  })
  it.each(['[mp4 @ 0x55] Error', 'Conversion failed!', 'size=1', ''])('leaves the message %j', (line) => {
    expect(isProgressLine(line)).toBe(false)
  })
})
