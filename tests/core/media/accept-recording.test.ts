// What is accepted as a recording once its frames are listed.
import { describe, expect, it } from 'vitest'
import { acceptFrames, acceptRecording } from '../../../core/media/accept-recording.ts'
import type { FrameIndex } from '../../../core/media/read-packets.ts'
import { readProbe } from '../../../core/media/read-probe.ts'

const HOUR_MS = 3_600_000

/** A film that its container says to last so long, its picture track too when told. */
function probed(containerMs: number, pictureMs: number | null) {
  const picture = { index: 0, codec_type: 'video', codec_name: 'h264', width: 640, height: 360, time_base: '1/90000' }
  const duration = pictureMs === null ? {} : { duration: String(pictureMs / 1000) }
  const format = { format_name: 'mov,mp4,m4a,3gp,3g2,mj2', duration: String(containerMs / 1000), size: '9' }
  const probe = readProbe(JSON.stringify({ format, streams: [{ ...picture, ...duration }] }))
  if (!probe) throw new Error('no probe')
  return acceptRecording(probe, { silent: true })
}

function framesTo(endMs: number): FrameIndex {
  const frames = [{ atMs: 0, key: true }] as unknown as FrameIndex['frames']
  return { frames, endMs, withoutTime: 0, sameTime: 0, jumpsAtMs: [] }
}

describe('how long a recording may be', () => {
  it.each([
    ['a day', 24 * HOUR_MS, 24 * HOUR_MS, 24 * HOUR_MS, null],
    ['a container that says 136 years over a picture of a minute', 1.2e6 * HOUR_MS, 60_000, 60_000, /up to a day/],
    ['a frame after a thousand hours', 1000 * HOUR_MS, null, 1000 * HOUR_MS, /lasts 1000 hours; up to a day/],
  ])('%s', (_what, containerMs, pictureMs, endMs, refused) => {
    const check = (): void => acceptFrames(probed(containerMs, pictureMs), framesTo(endMs), null)
    if (refused === null) expect(check).not.toThrow()
    else expect(check).toThrow(refused)
  })
})
