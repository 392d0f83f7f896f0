/** The movements done on the chair, as poses after some seconds (see rig.mjs for what a pose is). */
import { both, clamp, degrees, hand, hintKnee, sit, sitting, smooth, standing, stroke } from './pose-parts.mjs'
import { bones, onTorso } from './rig.mjs'

/** The wrist of an arm hanging from an upright seated shoulder, raised forwards by `flex` and bent by `elbow` degrees. */
function armAt(sign, shoulderUp, flex, elbow, wide = 0) {
  const first = degrees(flex)
  const second = degrees(flex + elbow)
  return [
    sign * (bones.shoulder + wide),
    shoulderUp - bones.upperArm * Math.cos(first) - bones.forearm * Math.cos(second),
    -0.05 + bones.upperArm * Math.sin(first) + bones.forearm * Math.sin(second),
  ]
}

const seatedShoulder = sitting + bones.torso - 0.035
const holdSeat = both((sign) => hand([sign * 0.245, 0.535, -0.02], [sign * 0.5, 0, -1], [0, -1, 0.25]))

export function march(seconds, arms) {
  const period = 2.6
  const share = seconds <= 0 ? 0 : (seconds / period) % 1
  const lift = {
    R: share < 0.5 ? Math.sin(share * 2 * Math.PI) ** 2 : 0,
    L: share >= 0.5 ? Math.sin(share * 2 * Math.PI) ** 2 : 0,
  }
  const swing = Math.sin(share * 2 * Math.PI)
  const pose = sit({ lean: -1 })
  pose.feet = both((sign, side) => ({
    at: [sign * 0.115, bones.ankle + 0.2 * lift[side], 0.37 - 0.035 * lift[side]],
    pitch: 14 * lift[side],
    hint: hintKnee[side],
  }))
  pose.hands = arms
    ? both((sign) => hand(armAt(sign, seatedShoulder, -6 - sign * swing * 30, 84, 0.02), [sign * 0.2, -0.6, -1]))
    : holdSeat
  return pose
}

export function knee(side, seconds) {
  const pelvis = [0, sitting, -0.1]
  const pose = sit({
    pelvis,
    hands: both((sign) => hand([sign * 0.24, 0.535, -0.04], [sign * 0.5, 0, -1], [0, -1, 0.25])),
  })
  pose.feet = both((sign, name) => ({ at: [sign * 0.105, bones.ankle + 0.01, 0.31], pitch: 0, hint: hintKnee[name] }))
  if (!side) return pose
  const sign = side === 'R' ? 1 : -1
  const angle = 84 * stroke(seconds, 3.4, 0.36, 0.12, 0.42)
  const kneeAt = [sign * 0.1, sitting - 0.045, pelvis[2] + 0.396]
  pose.feet[side] = {
    at: [
      sign * 0.1,
      kneeAt[1] - bones.shin * Math.cos(degrees(angle)),
      kneeAt[2] + bones.shin * Math.sin(degrees(angle)),
    ],
    pitch: -angle * 1.06,
    hint: [0, 1, 0.6],
  }
  return pose
}

export function curl(seconds) {
  const k = stroke(seconds, 3, 0.36, 0.06, 0.5)
  const pose = sit({ lean: 0 })
  pose.hands = both((sign) =>
    hand(armAt(sign, seatedShoulder, 2 + 10 * k, 6 + 128 * k, 0.045 + 0.01 * k), [sign * 0.1, -0.6, -1]),
  )
  return pose
}

export function press(seconds) {
  const k = stroke(seconds, 3.6, 0.36, 0.06, 0.48)
  const pose = sit({ pelvis: [0, sitting, -0.09], lean: -1, head: { turn: 0, nod: -3 * k } })
  pose.hands = both((sign) =>
    hand(
      [sign * (0.275 - 0.115 * k), 1.045 + 0.4 * k, -0.03],
      [sign * 1, -0.75 + 0.4 * k, 0.25],
      [-sign * 0.05, 1, 0.05],
    ),
  )
  return pose
}

export function row(seconds) {
  const k = stroke(seconds, 3.2, 0.36, 0.1, 0.44)
  const pose = sit({ pelvis: [0, sitting, -0.06], lean: 3 - 6 * k })
  pose.feet = both((sign, side) => ({
    at: [sign * 0.1, bones.ankle + 0.005, 0.575],
    pitch: -46,
    out: 3,
    hint: hintKnee[side],
  }))
  pose.hands = both((sign) =>
    hand([sign * (0.12 + 0.1 * k), 0.78 + 0.02 * k, 0.4 - 0.36 * k], [sign * 0.35, -0.5, -1], [0, 0.05, 1]),
  )
  return pose
}

export function rowWrong() {
  const pose = sit({ lean: 4 })
  pose.hands = both((sign) => hand([sign * 0.3, 0.86, 0.16], [sign * 1, -0.8, -0.4], [-sign * 0.3, 0.3, 1]))
  return pose
}

export function twist(seconds) {
  const period = 5.6
  const share = seconds <= 0 ? 0 : (seconds / period) % 1
  const half = share < 0.5 ? stroke(share * 2, 1, 0.42, 0.1, 0.42) : -stroke(share * 2 - 1, 1, 0.42, 0.1, 0.42)
  const pose = sit({ lean: 0, twist: 40 * half, head: { turn: 10 * half, nod: 0 } })
  const up = seatedShoulder
  pose.hands = both((sign) =>
    hand(
      onTorso(pose, [-sign * 0.1, up - 0.13 - 0.02 * sign, 0.155 + 0.012 * sign]),
      [sign * 1, -1, 0.35],
      [-sign * 1, 0.55, -0.1],
    ),
  )
  return pose
}

/** Sit to stand: `k` 0 sits on the front of the chair, 1 stands with the pelvis 0.3 m further forward. */
export function rise(k, fromHeldSeat = true) {
  const forwards = smooth(clamp(k / 0.45))
  const up = smooth(clamp((k - 0.25) / 0.75))
  const lean = 40 * Math.sin(Math.PI * clamp(k / 0.95)) ** 1.2
  const pelvis = [0, sitting + (standing - sitting) * up, 0.04 + 0.07 * forwards + 0.18 * up]
  const seat = [0.245, 0.54, 0.02]
  const pose = sit({ pelvis, lean })
  const shoulder = onTorso(pose, [0, pelvis[1] + bones.torso - 0.035, pelvis[2]])
  pose.feet = both((sign, side) => ({ at: [sign * 0.12, bones.ankle, 0.29], pitch: 0, hint: hintKnee[side] }))
  const hang = [0.215, shoulder[1] - 0.48, shoulder[2] + 0.02 + 0.22 * Math.sin(Math.PI * clamp(k))]
  const free = fromHeldSeat ? smooth(clamp((k - 0.08) / 0.4)) : smooth(clamp(k / 0.5))
  pose.hands = both((sign) => {
    const at = seat.map((value, index) => value + (hang[index] - value) * free)
    return hand([sign * at[0], at[1], at[2]], [sign * 0.5, 0, -1])
  })
  return pose
}

/** Up in a third of the time, a stay, and down with control. */
export function sitToStand(seconds) {
  return rise(stroke(seconds, 4.8, 0.34, 0.14, 0.4))
}

/** Both hands on the stool at her left, where the weights and the band lie. */
export function takeFromStool() {
  const pose = sit({ lean: 17, twist: -34, tilt: -9, head: { turn: 0, nod: 16 } })
  pose.hands.L = hand([-0.46, 0.6, 0.22], [-1, -0.2, -1], [-0.3, -0.8, 0.5])
  pose.hands.R = hand([-0.29, 0.62, 0.3], [1, -1, 0.2], [-0.7, -0.6, 0.4])
  return pose
}

/** Sitting and talking: now and then one hand, or both, opens towards the viewer. */
export function gesture(seconds) {
  const pose = sit()
  const lift = (every, shift) => {
    const since = (Math.max(0, seconds) + shift) % every
    return since < 2.6 ? Math.sin((Math.PI * since) / 2.6) ** 2 : 0
  }
  const raise = { R: lift(5.3, 3.2), L: lift(10.6, 3.2) }
  for (const [side, sign] of [
    ['R', 1],
    ['L', -1],
  ]) {
    const { at, hint, dir } = pose.hands[side]
    const k = raise[side]
    const open = [sign * 0.25, 0.83, at[2] + 0.12]
    pose.hands[side] = {
      at: at.map((value, index) => value + (open[index] - value) * k),
      hint,
      dir: dir.map((value, index) => value + ([sign * 0.35, 0.55, 0.8][index] - value) * k),
    }
  }
  return pose
}
