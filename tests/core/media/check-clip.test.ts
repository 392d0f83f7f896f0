// A finished clip is held against its plan, and everything that differs is named.
import { describe, expect, it } from 'vitest'
import { checkClip } from '../../../core/media/check-clip.ts'
import type { ClipPlan } from '../../../core/media/plan-cut.ts'
import type { FrameIndex } from '../../../core/media/read-packets.ts'
import type { ClipFacts } from '../../../core/media/read-clip.ts'
import { readProbe } from '../../../core/media/read-probe.ts'
import type { Probe } from '../../../core/media/read-probe.ts'

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
const facts = (read: Probe | null, index = frames(), more: Partial<ClipFacts> = {}): ClipFacts | null =>
  read && { probe: read, index, hashes: [], backwards: [], ...more }
const COPIED = new Map([[1, 'aa']])

describe('checkClip', () => {
  it('finds nothing wrong with what was planned', () => {
    expect(checkClip(PLAN, facts(probe()), true)).toEqual([])
    expect(checkClip(PLAN, facts(probe(['video:h264'])), false)).toEqual([])
    expect(checkClip(PLAN, facts(probe(), frames(), { hashes: ['x', 'aa', 'y'] }), true, COPIED)).toEqual([])
  })

  it.each([
    { name: 'unreadable', found: null, says: 'cannot be read' },
    { name: 'a frame short', found: facts(probe(), frames([0, 100 / 3])), says: '2 frames, not 3' },
    { name: 'off in time', found: facts(probe(), frames([0, 34, 200 / 3])), says: 'frame 1 shows at 34.00' },
    { name: 'without key frame', found: facts(probe(), frames(undefined, false)), says: 'no key frame' },
    { name: 'of another codec', found: facts(probe(['video:hevc', 'audio:aac'])), says: 'hevc' },
    {
      name: 'with a third stream',
      found: facts(probe(['video:h264', 'audio:aac', 'data:x'])),
      says: 'data',
    },
    { name: 'without its sound', found: facts(probe(['video:h264'])), says: 'not video, audio' },
    { name: 'late', found: facts(probe(undefined, '0.066')), says: 'starts at 0.066' },
    { name: 'short of sound', found: facts(probe(undefined, '0', '0.04')), says: 'sound lasts 40 ms' },
  ])('says of a clip $name: $says', ({ found, says }) => {
    expect(checkClip(PLAN, found, true).join('; ')).toContain(says)
  })

  it('names a copied packet that is not the one of the recording', () => {
    const found = facts(probe(), frames(), { hashes: ['x', 'bb', 'y'] })
    expect(checkClip(PLAN, found, true, COPIED)).toEqual(['packet 1 is not the one of the recording'])
  })

  it('names what does not go forward', () => {
    expect(checkClip(PLAN, facts(probe(), frames(), { backwards: ['audio'] }), true)).toEqual([
      'the time stamps of its audio do not rise',
    ])
  })
})
