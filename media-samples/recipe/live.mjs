/**
 * The small things that make a drawn person look alive: breath, gaze, a nod while she talks, blinking, a moving mouth.
 *
 * Offers `addLife(now, ms, frame, loudness)`, giving { pose, look } without changing what it was handed.
 */
import { frameRate } from './page.mjs'

const smoothStep = (k) => k * k * (3 - 2 * k)

export function addLife(now, ms, frame, loudness) {
  const pose = { ...now.pose, head: { ...now.pose.head } }
  const talk = soften(loudness, frame)
  const seconds = ms / 1000
  pose.lift = 0.0035 * Math.sin((2 * Math.PI * seconds) / 3.7)
  pose.head.turn += gaze(now) + 2.2 * Math.sin(seconds / 2.3) + talk * 3 * Math.sin(seconds * 1.9)
  pose.head.nod += 1.5 * Math.sin(seconds / 1.7) + talk * 4.5 * Math.sin(seconds * 4.1)
  return { pose, look: { mouth: loudness[frame] ?? 0, blink: blink(seconds) } }
}

/** She looks towards the viewer as far as her neck goes, less so at the wall and when her body turns. */
function gaze(now) {
  const yaw = ((((now.pose.root.yaw + 180) % 360) + 360) % 360) - 180
  const wanted = Math.abs(yaw) > 130 ? 0 : Math.max(-46, Math.min(46, yaw * 0.72))
  return wanted * (1 - Math.min(0.75, Math.abs(now.pose.twist ?? 0) / 50))
}

/** Speech in the last half second, so that the head does not shake with every syllable. */
function soften(loudness, frame) {
  let sum = 0
  const span = Math.round(frameRate / 2)
  for (let back = 0; back < span; back++) sum += loudness[frame - back] ?? 0
  return Math.min(1, (2 * sum) / span)
}

/** Shut for 0.16 s, at two uneven intervals. */
function blink(seconds) {
  for (const [every, shift] of [
    [4.3, 1.2],
    [7.1, 3.9],
  ]) {
    const since = (seconds + shift) % every
    if (since < 0.16) return smoothStep(1 - Math.abs(since - 0.08) / 0.08)
  }
  return 0
}
