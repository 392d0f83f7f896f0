/**
 * Small parts that every movement is made of: heights, timing of a repetition, hints for elbows and knees, standing still.
 *
 * Offers `standing` and `sitting` (height of the hips, metres), `stroke`, `smooth`, `clamp`, `degrees`, `both`, `hand`,
 * `hintKnee`, `sit`, `stand` and `wave`.
 */
import { bones } from './rig.mjs'

export const standing = bones.ankle + bones.shin + bones.thigh - 0.004
export const sitting = 0.545
export const degrees = (angle) => (angle * Math.PI) / 180
export const smooth = (k) => k * k * k * (k * (6 * k - 15) + 10)
export const clamp = (k) => Math.min(1, Math.max(0, k))

/** Out in the share `out` of the period, a stay, back in the share `back`, a rest: 0 to 1 and back to 0. */
export function stroke(seconds, period, out = 0.38, stay = 0.07, back = 0.45) {
  if (seconds <= 0) return 0
  const share = (seconds / period) % 1
  if (share < out) return smooth(share / out)
  if (share < out + stay) return 1
  return 1 - smooth(clamp((share - out - stay) / back))
}

export const hintKnee = { R: [0.08, 0.2, 1], L: [-0.08, 0.2, 1] }
export const both = (make) => ({ R: make(1, 'R'), L: make(-1, 'L') })
export const hand = (at, hint, dir) => ({ at, hint, ...(dir ? { dir } : {}) })

export function sit(changes = {}) {
  const pelvis = changes.pelvis ?? [0, sitting, -0.075]
  return {
    pelvis,
    lean: 1,
    tilt: 0,
    twist: 0,
    head: { turn: 0, nod: 0 },
    hands: both((sign, side) =>
      hand([sign * 0.115, 0.65, pelvis[2] + 0.22], [sign * 0.9, -0.5, -0.6], [-sign * 0.25, -0.35, 1]),
    ),
    feet: both((sign, side) => ({ at: [sign * 0.115, bones.ankle, pelvis[2] + 0.42], pitch: 0, hint: hintKnee[side] })),
    ...changes,
  }
}

export function stand(changes = {}) {
  return {
    pelvis: [0, standing, 0],
    lean: 1,
    tilt: 0,
    twist: 0,
    head: { turn: 0, nod: 0 },
    hands: both((sign) => hand([sign * 0.215, 0.845, 0.03], [sign * 0.3, 0, -1])),
    feet: both((sign, side) => ({ at: [sign * 0.095, bones.ankle, 0], pitch: 0, hint: hintKnee[side] })),
    ...changes,
  }
}

export function wave(pose, seconds) {
  const way = Math.sin((seconds * 2 * Math.PI) / 0.9)
  const shoulder = pose.pelvis[1] + bones.torso - 0.035
  pose.hands.R = hand([0.42 + 0.035 * way, shoulder + 0.15, 0.1], [0.5, -1, 0], [0.3 * way + 0.1, 1, 0.1])
  return pose
}
