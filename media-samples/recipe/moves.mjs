/**
 * What the teacher can do: every state named in the script, as a function of time.
 *
 * Offers `states` (name to { place, pose, props, beat }), `poseOf`, `beatOf`, `blendMs` and the places of chair and wall.
 * A pose is in body terms (see rig.mjs); `phase` functions give 0 at the start of a repetition and 1 at its far end.
 */
import { ankleOver, bones, onTorso } from './rig.mjs'

/** Time in ms that one state takes to flow into another at the same place. */
export const blendMs = 700

export const chair = { x: -0.1, z: 0, yaw: 33 }
export const chairTurned = { x: 0.12, z: 0.02, yaw: 56 }
/** Where the wall's face is, in room metres. */
export const wallX = 1.58

const standing = bones.ankle + bones.shin + bones.thigh - 0.008
const sitting = 0.545
const degrees = (angle) => (angle * Math.PI) / 180
const smooth = (k) => k * k * k * (k * (6 * k - 15) + 10)
const clamp = (k) => Math.min(1, Math.max(0, k))

/** Out in the share `out` of the period, a stay, back in the share `back`, a rest: 0 to 1 and back to 0. */
function stroke(seconds, period, out = 0.38, stay = 0.07, back = 0.45) {
  if (seconds <= 0) return 0
  const share = (seconds / period) % 1
  if (share < out) return smooth(share / out)
  if (share < out + stay) return 1
  return 1 - smooth(clamp((share - out - stay) / back))
}

const hintDown = { R: [0.35, -1, -0.5], L: [-0.35, -1, -0.5] }
const hintKnee = { R: [0.08, 0.2, 1], L: [-0.08, 0.2, 1] }
const both = (make) => ({ R: make(1, 'R'), L: make(-1, 'L') })
const hand = (at, hint, dir) => ({ at, hint, ...(dir ? { dir } : {}) })

function sit(changes = {}) {
  const pelvis = changes.pelvis ?? [0, sitting, -0.05]
  return {
    pelvis,
    lean: 1,
    tilt: 0,
    twist: 0,
    head: { turn: 0, nod: 0 },
    hands: both((sign, side) =>
      hand([sign * 0.13, 0.655, pelvis[2] + 0.25], [sign * 0.8, -0.7, -0.5], [-sign * 0.25, -0.3, 1]),
    ),
    feet: both((sign, side) => ({ at: [sign * 0.115, bones.ankle, pelvis[2] + 0.42], pitch: 0, hint: hintKnee[side] })),
    ...changes,
  }
}

function stand(changes = {}) {
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

function march(seconds, arms) {
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

function knee(side, seconds) {
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

function curl(seconds) {
  const k = stroke(seconds, 3, 0.36, 0.06, 0.5)
  const pose = sit({ lean: 0 })
  pose.hands = both((sign) =>
    hand(armAt(sign, seatedShoulder, 2 + 10 * k, 6 + 128 * k, 0.045 + 0.01 * k), [sign * 0.1, -0.6, -1]),
  )
  return pose
}

function press(seconds) {
  const k = stroke(seconds, 3.6, 0.36, 0.06, 0.48)
  const pose = sit({ pelvis: [0, sitting, -0.09], lean: -1, head: { turn: 0, nod: -3 * k } })
  pose.hands = both((sign) =>
    hand(
      [sign * (0.245 - 0.085 * k), 1.1 + 0.345 * k, -0.02],
      [sign * 1, -0.75 + 0.4 * k, 0.25],
      [-sign * 0.05, 1, 0.05],
    ),
  )
  return pose
}

function row(seconds) {
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

function rowWrong() {
  const pose = sit({ lean: 4 })
  pose.hands = both((sign) => hand([sign * 0.3, 0.86, 0.16], [sign * 1, -0.8, -0.4], [-sign * 0.3, 0.3, 1]))
  return pose
}

function twist(seconds) {
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
export function rise(k) {
  const forwards = smooth(clamp(k / 0.45))
  const up = smooth(clamp((k - 0.25) / 0.75))
  const lean = 40 * Math.sin(Math.PI * clamp(k / 0.95)) ** 1.2
  const pelvis = [0, sitting + (standing - sitting) * up, 0.04 + 0.07 * forwards + 0.18 * up]
  const seat = [0.245, 0.54, 0.02]
  const pose = sit({ pelvis, lean })
  const shoulder = onTorso(pose, [0, pelvis[1] + bones.torso - 0.035, pelvis[2]])
  pose.feet = both((sign, side) => ({ at: [sign * 0.12, bones.ankle, 0.29], pitch: 0, hint: hintKnee[side] }))
  const hang = [0.215, shoulder[1] - 0.48, shoulder[2] + 0.02 + 0.22 * Math.sin(Math.PI * clamp(k))]
  const free = smooth(clamp((k - 0.08) / 0.4))
  pose.hands = both((sign) => {
    const at = seat.map((value, index) => value + (hang[index] - value) * free)
    return hand([sign * at[0], at[1], at[2]], [sign * 0.5, 0, -1])
  })
  return pose
}

const chairBack = both((sign) => hand([sign * 0.155, 0.925, 0.31], [sign * 0.9, -0.6, -0.6], [-sign * 0.1, -0.45, 0.9]))

function heels(seconds) {
  const k = stroke(seconds, 4, 0.25, 0.33, 0.32)
  const pitch = 36 * k
  const pose = stand({ lean: 2, hands: chairBack })
  pose.feet = both((sign, side) => ({ at: ankleOver([sign * 0.1, 0.105], pitch), pitch, out: 4, hint: hintKnee[side] }))
  pose.pelvis = [0, standing + (ankleOver([0, 0.105], pitch)[1] - bones.ankle), 0.035 * k]
  return pose
}

function sideLift(side, seconds) {
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
  both((sign) => hand([sign * 0.2, height, forward], [sign * 0.8, -0.9, -0.3], [-sign * 0.08, 1, 0.12]))

function push(seconds) {
  const k = stroke(seconds, 3.4, 0.4, 0.08, 0.4)
  const angle = 9 + 14 * k
  const line = (length) => [length * Math.sin(degrees(angle)), bones.ankle + length * Math.cos(degrees(angle))]
  const [forward, up] = line(standing - bones.ankle)
  const pose = stand({
    lean: angle,
    pelvis: [0, up, forward],
    hands: wallHand(1.26, 0.665),
    head: { turn: 0, nod: -angle * 0.4 },
  })
  pose.feet = both((sign, side) => ({
    at: ankleOver([sign * 0.095, 0.105], 5 * k),
    pitch: 5 * k,
    out: 3,
    hint: hintKnee[side],
  }))
  return pose
}

function calf(side, seconds) {
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

function wave(pose, seconds) {
  const way = Math.sin((seconds * 2 * Math.PI) / 0.9)
  const shoulder = pose.pelvis[1] + bones.torso - 0.035
  pose.hands.R = hand([0.33 + 0.03 * way, shoulder + 0.17, 0.13], [0.7, -1, 0], [0.25 * way, 1, 0.1])
  return pose
}

const onChair = 'chair'
const behindChair = 'behind'
const atWall = 'wall'
const inFront = 'front'
const state = (place, pose, extra = {}) => ({ place, pose, props: [], ...extra })
const weights = { props: ['weights'] }

/** Every state: where it is done, its pose after some seconds, what she holds, and when its far end first comes (ms). */
export const states = {
  sit: state(onChair, () => sit()),
  wave: state(onChair, (seconds) => wave(sit(), seconds)),
  'march.ready': state(onChair, () => march(0, false)),
  'march.go': state(onChair, (seconds) => march(seconds, false), { beat: { firstMs: 650, everyMs: 1300 } }),
  'march.swing': state(onChair, (seconds) => march(seconds, true)),
  'knee.ready': state(onChair, () => knee(null, 0)),
  'knee.right': state(onChair, (seconds) => knee('R', seconds)),
  'knee.left': state(onChair, (seconds) => knee('L', seconds)),
  'curl.ready': state(onChair, () => curl(0), weights),
  'curl.go': state(onChair, curl, { ...weights, beat: { firstMs: 1100, everyMs: 3000 } }),
  'press.ready': state(onChair, () => press(0), weights),
  'press.go': state(onChair, press, weights),
  'row.wrong': state(onChair, rowWrong, { props: ['band-behind'] }),
  'row.ready': state(onChair, () => row(0), { props: ['band'] }),
  'row.go': state(onChair, row, { props: ['band'] }),
  'twist.ready': state(onChair, () => twist(0)),
  'twist.go': state(onChair, twist),
  'rise.ready': state(onChair, () => rise(0)),
  'rise.go': state(onChair, (seconds) => rise(stroke(seconds, 4.8, 0.34, 0.14, 0.4))),
  behind: state(behindChair, () => heels(0)),
  'heels.go': state(behindChair, heels),
  'side.ready': state(behindChair, () => sideLift('R', 0)),
  'side.right': state(behindChair, (seconds) => sideLift('R', seconds)),
  'side.left': state(behindChair, (seconds) => sideLift('L', seconds)),
  wall: state(atWall, () => push(0)),
  'push.go': state(atWall, push),
  'calf.right': state(atWall, (seconds) => calf('R', seconds)),
  'calf.left': state(atWall, (seconds) => calf('L', seconds)),
  centre: state(inFront, () => stand()),
  goodbye: state(inFront, (seconds) => wave(stand(), seconds)),
  stand: state(inFront, () => stand()),
}

/** When the far ends of a state's movement come, in ms after the state was called for. */
export function beatOf(name) {
  const beat = states[name]?.beat
  if (!beat) throw new Error(`The state ${name} has no beat to count on: give it one in moves.mjs.`)
  return { firstMs: blendMs + beat.firstMs, everyMs: beat.everyMs }
}
