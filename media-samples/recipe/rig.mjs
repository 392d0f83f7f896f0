/**
 * The teacher's skeleton: a pose in the body's own terms becomes joints in the room.
 *
 * Offers `bones` (lengths), `solvePose` (pose to joints), `mixPose` (between two poses) and small sums with vectors.
 * Lengths are metres. A body point is [right, up, forward]; a room point is [x to the viewer's right, y up, z to the viewer].
 * A pose: root { x, z, yaw } (yaw 0 faces the viewer, 90 faces the viewer's right), pelvis point, lean (forwards),
 * tilt (to her right), twist (of the shoulders to her right), head { turn, nod }, and for each side R and L a hand
 * { at, hint, dir } and a foot { at (ankle), pitch (heel up is positive), out (toes turned out), hint }.
 */

export const bones = {
  hip: 0.088,
  thigh: 0.4,
  shin: 0.39,
  torso: 0.46,
  shoulder: 0.165,
  upperArm: 0.265,
  forearm: 0.235,
  neck: 0.085,
  ankle: 0.075,
}

const radians = (degrees) => (degrees * Math.PI) / 180
export const add = (p, q) => [p[0] + q[0], p[1] + q[1], p[2] + q[2]]
export const subtract = (p, q) => [p[0] - q[0], p[1] - q[1], p[2] - q[2]]
export const times = (p, k) => [p[0] * k, p[1] * k, p[2] * k]
export const dot = (p, q) => p[0] * q[0] + p[1] * q[1] + p[2] * q[2]
export const size = (p) => Math.hypot(p[0], p[1], p[2])
export const unit = (p) => times(p, 1 / (size(p) || 1))
export const between = (p, q, k) => p.map((value, index) => value + (q[index] - value) * k)

/** Turns a body direction by the torso's lean (about the side axis), tilt (about forward) and twist (about up). */
export function turnWithTorso(pose, [right, up, forward]) {
  const twist = radians(pose.twist ?? 0)
  const afterTwist = [
    right * Math.cos(twist) + forward * Math.sin(twist),
    up,
    forward * Math.cos(twist) - right * Math.sin(twist),
  ]
  const tilt = radians(pose.tilt ?? 0)
  const [r1, u1, f1] = afterTwist
  const afterTilt = [r1 * Math.cos(tilt) + u1 * Math.sin(tilt), u1 * Math.cos(tilt) - r1 * Math.sin(tilt), f1]
  const lean = radians(pose.lean ?? 0)
  const [r2, u2, f2] = afterTilt
  return [r2, u2 * Math.cos(lean) - f2 * Math.sin(lean), f2 * Math.cos(lean) + u2 * Math.sin(lean)]
}

/** A point given on the upright torso (measured from the floor below the pelvis) moved along with the real torso. */
export function onTorso(pose, point) {
  return add(pose.pelvis, turnWithTorso(pose, subtract(point, pose.pelvis)))
}

/** Body point to room point. */
export function toRoom(root, [right, up, forward]) {
  const yaw = radians(root.yaw)
  return [
    root.x - right * Math.cos(yaw) + forward * Math.sin(yaw),
    up + (root.y ?? 0),
    root.z + right * Math.sin(yaw) + forward * Math.cos(yaw),
  ]
}

/** The middle joint of a two-bone limb from `start` towards `end`, bent towards `hint`; returns [middle, end reached]. */
function bend(start, end, first, second, hint) {
  const line = subtract(end, start)
  const reach = Math.min(size(line), (first + second) * 0.9995)
  const along = unit(line)
  const reached = add(start, times(along, reach))
  const cosine = (first * first + reach * reach - second * second) / (2 * first * reach)
  const foot = first * cosine
  const height = Math.sqrt(Math.max(0, first * first - foot * foot))
  const side = unit(subtract(hint, times(along, dot(hint, along))))
  return [add(add(start, times(along, foot)), times(side, height)), reached]
}

/** Every joint of a pose, in room points. */
export function solvePose(pose) {
  const room = (point) => toRoom(pose.root, point)
  const direction = (vector) => subtract(room(vector), room([0, 0, 0]))
  const up = turnWithTorso(pose, [0, 1, 0])
  const chest = add(pose.pelvis, times(up, bones.torso * 0.62))
  const neck = add(pose.pelvis, times(up, bones.torso + (pose.lift ?? 0)))
  const joints = { pelvis: room(pose.pelvis), chest: room(chest), neck: room(neck), direction, sides: {} }
  for (const [name, sign] of [
    ['R', 1],
    ['L', -1],
  ]) {
    const shoulder = add(neck, turnWithTorso(pose, [sign * bones.shoulder, -0.035, 0]))
    const hip = add(pose.pelvis, turnWithTorso({ twist: (pose.twist ?? 0) * 0.15 }, [sign * bones.hip, 0, 0]))
    const hand = pose.hands[name]
    const foot = pose.feet[name]
    const [elbow, wrist] = bend(shoulder, hand.at, bones.upperArm, bones.forearm, hand.hint)
    const [knee, ankle] = bend(hip, foot.at, bones.thigh, bones.shin, foot.hint)
    const handWay = hand.dir ? unit(hand.dir) : unit(subtract(wrist, elbow))
    joints.sides[name] = {
      shoulder: room(shoulder),
      elbow: room(elbow),
      wrist: room(wrist),
      fingers: room(add(wrist, times(handWay, 0.085))),
      hip: room(hip),
      knee: room(knee),
      ankle: room(ankle),
      ...footPoints(ankle, foot, sign, room),
    }
  }
  const nod = (pose.head.nod ?? 0) + (pose.lean ?? 0) * 0.45
  const turn = (pose.twist ?? 0) + (pose.head.turn ?? 0)
  const headFrame = { twist: turn, lean: nod, tilt: (pose.tilt ?? 0) * 0.5 }
  const headWay = (vector) => direction(turnWithTorso(headFrame, vector))
  const skull = add(
    neck,
    turnWithTorso({ lean: (pose.lean ?? 0) * 0.7 + (pose.head.nod ?? 0) * 0.3 }, [0, bones.neck + 0.095, 0.02]),
  )
  return {
    ...joints,
    head: { centre: room(skull), right: headWay([1, 0, 0]), up: headWay([0, 1, 0]), forward: headWay([0, 0, 1]) },
  }
}

/** Heel, ball and toe below an ankle, with the foot tipped by its pitch. */
function footPoints(ankle, foot, sign, room) {
  const pitch = radians(foot.pitch ?? 0)
  const out = radians(foot.out ?? 6) * sign
  const place = (forward, up) => {
    const f = forward * Math.cos(pitch) + up * Math.sin(pitch)
    const u = up * Math.cos(pitch) - forward * Math.sin(pitch)
    return room(add(ankle, [f * Math.sin(out), u, f * Math.cos(out)]))
  }
  const drop = -bones.ankle
  return { heel: place(-0.05, drop + 0.038), ball: place(0.105, drop + 0.03), toe: place(0.16, drop + 0.028) }
}

/** The ankle of a foot whose ball stays on the floor below `ball` = [right, forward] while the heel lifts by `pitch` degrees. */
export function ankleOver([right, forward], pitch) {
  const angle = radians(pitch)
  const back = 0.105
  return [
    right,
    bones.ankle * Math.cos(angle) + back * Math.sin(angle),
    forward - back * Math.cos(angle) + bones.ankle * Math.sin(angle),
  ]
}

const mixNumber = (from, to, k) => (from ?? 0) + ((to ?? 0) - (from ?? 0)) * k

/** A pose `k` (0 to 1) of the way between two; yaw goes the short way round. */
export function mixPose(from, to, k) {
  const limb = (part, side) => {
    const one = from[part][side]
    const two = to[part][side]
    const mixed = { at: between(one.at, two.at, k), hint: between(one.hint, two.hint, k) }
    if (part === 'feet')
      return { ...mixed, pitch: mixNumber(one.pitch, two.pitch, k), out: mixNumber(one.out ?? 6, two.out ?? 6, k) }
    const dir = one.dir || two.dir
    if (!dir) return mixed
    return { ...mixed, dir: between(one.dir ?? straightDir(one), two.dir ?? straightDir(two), k) }
  }
  const turn = ((((to.root.yaw - from.root.yaw) % 360) + 540) % 360) - 180
  return {
    root: {
      x: mixNumber(from.root.x, to.root.x, k),
      z: mixNumber(from.root.z, to.root.z, k),
      yaw: from.root.yaw + turn * k,
    },
    pelvis: between(from.pelvis, to.pelvis, k),
    lean: mixNumber(from.lean, to.lean, k),
    tilt: mixNumber(from.tilt, to.tilt, k),
    twist: mixNumber(from.twist, to.twist, k),
    lift: mixNumber(from.lift, to.lift, k),
    head: { turn: mixNumber(from.head.turn, to.head.turn, k), nod: mixNumber(from.head.nod, to.head.nod, k) },
    hands: { R: limb('hands', 'R'), L: limb('hands', 'L') },
    feet: { R: limb('feet', 'R'), L: limb('feet', 'L') },
  }
}

/** A stand-in for the way an unsteered hand points: on from the shoulder, downwards and forwards. */
function straightDir(hand) {
  return hand.hint[1] < 0 ? [0, 0.2, 1] : [0, -0.6, 0.8]
}
