/** The movements done behind the chair and at the wall, as poses after some seconds. */
import { both, degrees, hand, hintKnee, stand, standing, stroke } from './pose-parts.mjs'
import { ankleOver, bones } from './rig.mjs'

const chairBack = both((sign) => hand([sign * 0.155, 0.925, 0.31], [sign * 0.9, -0.6, -0.6], [-sign * 0.1, -0.45, 0.9]))

export function heels(seconds) {
  const k = stroke(seconds, 4, 0.25, 0.33, 0.32)
  const pitch = 36 * k
  const pose = stand({ lean: 2, hands: chairBack })
  pose.feet = both((sign, side) => ({ at: ankleOver([sign * 0.1, 0.105], pitch), pitch, out: 4, hint: hintKnee[side] }))
  pose.pelvis = [0, standing + (ankleOver([0, 0.105], pitch)[1] - bones.ankle), 0.035 * k]
  return pose
}

export function sideLift(side, seconds) {
  const sign = side === 'R' ? 1 : -1
  const angle = degrees(33 * stroke(seconds, 3.4, 0.36, 0.1, 0.44))
  const pelvis = [-sign * 0.06, standing - 0.004, 0]
  const pose = stand({ pelvis, lean: 2, tilt: -sign * 2.5 * Math.sin(angle), hands: chairBack })
  const leg = bones.thigh + bones.shin - 0.012
  pose.feet = both((way, name) => ({
    at: [-sign * 0.085 + (name === side ? 0 : 0), bones.ankle, 0],
    pitch: 0,
    out: 3,
    hint: hintKnee[name],
  }))
  const hip = pelvis[0] + sign * bones.hip
  pose.feet[side] = {
    at: [hip + sign * (0.03 + leg * Math.sin(angle)), pelvis[1] - leg * Math.cos(angle) + 0.006, 0.01],
    pitch: 0,
    out: 2,
    hint: hintKnee[side],
  }
  return pose
}

const wallHand = (height, forward) =>
  both((sign) => hand([sign * 0.215, height, forward], [sign * 0.8, -0.9, -0.3], [-sign * 0.08, 1, 0.12]))

/** The whole body turns about the ankles as one line, and the elbows let the chest come to the wall. */
export function push(seconds) {
  const k = stroke(seconds, 3.4, 0.4, 0.08, 0.4)
  const angle = 9 + 11 * k
  const feet = both((sign, side) => {
    const pitch = 4 * k
    return { at: ankleOver([sign * 0.095, 0.105], pitch), pitch, out: 3, hint: hintKnee[side] }
  })
  const [, ankleUp, ankleForward] = feet.R.at
  const leg = bones.thigh + bones.shin - 0.002
  return stand({
    lean: angle,
    pelvis: [0, ankleUp + leg * Math.cos(degrees(angle)), ankleForward + leg * Math.sin(degrees(angle))],
    hands: wallHand(1.2, 0.665),
    feet,
    head: { turn: 0, nod: -angle * 0.4 },
  })
}

export function calf(side, seconds) {
  const k = 0.5 - 0.5 * Math.cos((2 * Math.PI * Math.max(0, seconds)) / 5)
  const pose = stand({ lean: 9, pelvis: [0, 0.752 - 0.006 * k, 0.11 + 0.022 * k], hands: wallHand(1.24, 0.665) })
  const back = side === 'R' ? 1 : -1
  pose.feet = both((sign, name) => ({
    at: [sign * 0.1, bones.ankle, sign === back ? -0.295 : 0.27],
    pitch: 0,
    out: 2,
    hint: hintKnee[name],
  }))
  return pose
}
