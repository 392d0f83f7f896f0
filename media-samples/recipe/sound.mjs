/**
 * Sound beside the voice: how open the mouth is on each frame. Offers `mouthByFrame(track, rate, frames)`, 0 to 1 a frame.
 */
import { frameRate } from './page.mjs'

export function mouthByFrame(track, rate, frames) {
  const span = rate / frameRate
  const open = new Float32Array(frames)
  for (let frame = 0; frame < frames; frame++) {
    let sum = 0
    const first = Math.round(frame * span)
    for (let index = first; index < first + span && index < track.length; index++) sum += track[index] * track[index]
    const level = Math.sqrt(sum / span)
    const wanted = Math.min(1, Math.max(0, (level - 0.012) / 0.15)) ** 0.7
    const last = frame > 0 ? open[frame - 1] : 0
    open[frame] = last + (wanted - last) * 0.65
  }
  return open
}
