// What the filters say of black and still parts becomes stretches.
import { describe, expect, it } from 'vitest'
import { openDullReader } from '../../../core/media/read-dull.ts'

const read = (lines: readonly string[], durationMs = 60_000) => {
  const reader = openDullReader()
  lines.forEach(reader.take)
  return reader.read(durationMs)
}

describe('openDullReader', () => {
  it('finds nothing in other words', () => {
    expect(read(['Stream #0:0: Video: h264', '[ebur128 @ 0x1] Summary:', 'freeze_end: 4'])).toEqual({
      black: [],
      still: [],
    })
  })

  it('reads both, ends the last with the recording, and calls black not still', () => {
    const lines = [
      '[blackdetect @ 0x55] black_start:0 black_end:4.5 black_duration:4.5',
      '[freezedetect @ 0x56] lavfi.freezedetect.freeze_start: 0',
      '[freezedetect @ 0x56] lavfi.freezedetect.freeze_duration: 4',
      '[freezedetect @ 0x56] lavfi.freezedetect.freeze_end: 4',
      '[freezedetect @ 0x56] lavfi.freezedetect.freeze_start: 41.667',
      '[blackdetect @ 0x55] black_start:58 black_end:61 black_duration:3',
    ]
    expect(read(lines)).toEqual({
      black: [
        { startMs: 0, endMs: 4500 },
        { startMs: 58_000, endMs: 60_000 },
      ],
      still: [{ startMs: 41_667, endMs: 60_000 }],
    })
  })
})
