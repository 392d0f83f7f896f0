// A finished clip is held against its plan, and everything that differs is named.
import { describe, expect, it } from 'vitest'
import { checkClip } from '../../../core/media/check-clip.ts'
import type { ClipPlan } from '../../../core/media/plan-cut.ts'
import type { FrameIndex } from '../../../core/media/read-packets.ts'
import { readProbe } from '../../../core/media/read-probe.ts'

const PLAN = { frames: 3, frameTimesMs: [0, 100 / 3, 200 / 3], durationMs: 100 } as ClipPlan
const frames = (times = PLAN.frameTimesMs, key = true): FrameIndex => ({
  frames: times.map((atMs) => ({ atMs, key })),
  endMs: 100,
  withoutTime: 0,
  sameTime: 0,
  jumpsAtMs: [],
})
const probe = (codecs = ['video:h264', 'audio:aac'], start = '0.000', soundSeconds = '0.1') =>
  readProbe(
    JSON.stringify({
      format: { format_name: 'mov', start_time: start },
      streams: codecs.map((entry, index) => {
        const [codec_type, codec_name] = entry.split(':')
        return { index, codec_type, codec_name, duration: soundSeconds }
      }),
    }),
  )

describe('checkClip', () => {
  it('finds nothing wrong with what was planned', () => {
    expect(checkClip(PLAN, probe(), frames(), true)).toEqual([])
    expect(checkClip(PLAN, probe(['video:h264']), frames(), false)).toEqual([])
  })

  it.each([
    { name: 'unreadable', found: [null, frames()] as const, says: 'cannot be read' },
    { name: 'a frame short', found: [probe(), frames([0, 100 / 3])] as const, says: '2 frames, not 3' },
    { name: 'off in time', found: [probe(), frames([0, 34, 200 / 3])] as const, says: 'frame 1 shows at 34.00' },
    { name: 'without key frame', found: [probe(), frames(undefined, false)] as const, says: 'no key frame' },
    { name: 'of another codec', found: [probe(['video:hevc', 'audio:aac']), frames()] as const, says: 'hevc' },
    {
      name: 'with a third stream',
      found: [probe(['video:h264', 'audio:aac', 'data:x']), frames()] as const,
      says: 'data',
    },
    { name: 'without its sound', found: [probe(['video:h264']), frames()] as const, says: 'not video, audio' },
    { name: 'late', found: [probe(undefined, '0.066'), frames()] as const, says: 'starts at 0.066' },
    { name: 'short of sound', found: [probe(undefined, '0', '0.04'), frames()] as const, says: 'sound lasts 40 ms' },
  ])('says of a clip $name: $says', ({ found: [clip, index], says }) => {
    expect(checkClip(PLAN, clip, index, true).join('; ')).toContain(says)
  })
})
