/**
 * Plays the stage directions: what the teacher's body, her props and the chair are doing at any moment.
 *
 * Offers `makePlayer(stage)`, which gives a function from a time in ms to { pose, props, chair, walking }.
 */
import { blendMs, chair, chairTurned, states, wallX } from './moves.mjs'
import { rise, takeFromStool } from './moves-seated.mjs'
import { between, mixPose } from './rig.mjs'

const smooth = (k) => k * k * k * (k * (6 * k - 15) + 10)
const clamp = (k) => Math.min(1, Math.max(0, k))
const radians = (degrees) => (degrees * Math.PI) / 180
const ahead = ({ x, z, yaw }, distance) => ({
  x: x + Math.sin(radians(yaw)) * distance,
  z: z + Math.cos(radians(yaw)) * distance,
  yaw,
})

/** How far behind the middle of the chair she stands to hold its back, and how far she comes forward in standing up, metres. */
const behindGap = 0.5
const risen = 0.29
const speed = 0.64
const times = { rise: 1500, settle: 600, turnChair: 1100, fetch: 1700 }

const wallSpot = { x: wallX - 0.735, z: 0.1, yaw: 82 }
const frontSpot = { x: -0.12, z: 0.62, yaw: 4 }
const routes = {
  'chair>behind': [
    [-0.36, 0.52],
    [-0.8, 0.2],
    [-0.72, -0.3],
  ],
  'behind>wall': [
    [-0.45, -0.62],
    [0.2, -0.66],
    [0.6, -0.25],
  ],
  'wall>front': [
    [0.55, 0.5],
    [0.2, 0.66],
  ],
}

export function makePlayer(stage) {
  const events = stage.map((event) => ({ ...event, state: states[event.to] ?? fail(event.to) }))
  const moves = events.map((event, index) => planMove(events[index - 1], event))
  const turned = moves.find((move) => move.turnsChair)
  const chairAt = (ms) => {
    const k = turned ? smooth(clamp((ms - turned.arriveMs) / times.turnChair)) : 0
    return {
      x: chair.x + (chairTurned.x - chair.x) * k,
      z: chair.z + (chairTurned.z - chair.z) * k,
      yaw: chair.yaw + (chairTurned.yaw - chair.yaw) * k,
    }
  }
  const rootOf = (place, ms) => {
    if (place === 'chair') return chair
    if (place === 'behind') return ahead(chairAt(ms), -behindGap)
    return place === 'wall' ? wallSpot : frontSpot
  }
  const poseOf = (index, ms) => {
    const move = moves[index]
    const own = () => ({ ...move.state.pose((ms - move.startsMs) / 1000), root: rootOf(move.state.place, ms) })
    if (index === 0 || ms >= move.startsMs) return own()
    const before = () => poseOf(index - 1, ms)
    if (move.kind === 'blend') return mixPose(before(), own(), smooth(clamp((ms - move.atMs) / blendMs)))
    if (move.kind === 'fetch') return fetchPose(before(), own(), (ms - move.atMs) / times.fetch)
    return walkPose(move, ms, before, own, rootOf)
  }
  return (ms) => {
    let index = moves.length - 1
    while (index > 0 && moves[index].atMs > ms) index--
    const move = moves[index]
    const halfway = move.kind === 'fetch' ? move.atMs + times.fetch * 0.5 : move.atMs + blendMs * 0.4
    const props = ms < halfway && index > 0 ? moves[index - 1].state.props : move.state.props
    return { pose: poseOf(index, ms), props, chair: chairAt(ms), place: move.state.place }
  }
}

function fail(name) {
  throw new Error(`The script asks for the state ${name}, which moves.mjs does not have.`)
}

/** How one state is reached from the one before: by a blend, by a turn to the stool for a prop, or on foot. */
function planMove(last, event) {
  const { atMs, state } = event
  if (!last) return { atMs, state, kind: 'start', startsMs: atMs }
  if (last.state.place === state.place) {
    const hasProp = (side) => side.props.length > 0
    const fetches = hasProp(last.state) !== hasProp(state)
    return { atMs, state, kind: fetches ? 'fetch' : 'blend', startsMs: atMs + (fetches ? times.fetch : blendMs) }
  }
  const path = roundPath(last.state.place, state.place)
  const leaveMs = last.state.place === 'chair' ? times.rise : times.settle
  const walkMs = Math.round((path.length / speed) * 1000 + 350)
  const arriveMs = atMs + leaveMs + walkMs
  return {
    atMs,
    state,
    kind: 'walk',
    path,
    from: last.state.place,
    leaveMs,
    walkMs,
    arriveMs,
    startsMs: arriveMs + times.settle,
    turnsChair: state.place === 'behind',
  }
}

/** Half way she has both hands on the stool beside the chair; the prop changes hands there. */
function fetchPose(before, own, k) {
  const reach = { ...takeFromStool(), root: own.root }
  if (k < 0.5) return mixPose(before, reach, smooth(clamp(k / 0.45)))
  return mixPose(reach, own, smooth(clamp((k - 0.55) / 0.45)))
}

function walkPose(move, ms, before, own, rootOf) {
  const standing = (root) => ({ ...states.stand.pose(0), root })
  if (ms < move.atMs + move.leaveMs) {
    const k = (ms - move.atMs) / move.leaveMs
    if (move.from !== 'chair') return mixPose(before(), standing(rootOf(move.from, ms)), smooth(k))
    const rising = { ...rise(smooth(clamp((k - 0.15) / 0.85)), false), root: rootOf('chair', ms) }
    return mixPose(before(), rising, smooth(clamp(k / 0.3)))
  }
  const gone = (ms - move.atMs - move.leaveMs) / move.walkMs
  if (gone < 1) {
    const distance = move.path.length * easeWalk(gone)
    const startYaw = rootOf(move.from, ms).yaw
    const endYaw = rootOf(move.state.place, move.arriveMs).yaw
    return stepping(
      standing({ ...move.path.at(distance), yaw: walkYaw(move.path, distance, startYaw, endYaw) }),
      distance,
      gone,
    )
  }
  return mixPose(standing(rootOf(move.state.place, ms)), own(), smooth(clamp((ms - move.arriveMs) / times.settle)))
}

/** Slow at both ends, even in between. */
function easeWalk(k) {
  const ramp = 0.16
  const top = 1 / (1 - ramp)
  if (k < ramp) return (top * k * k) / (2 * ramp)
  if (k > 1 - ramp) return 1 - (top * (1 - k) ** 2) / (2 * ramp)
  return top * (k - ramp / 2)
}

/** Faces along the path, and eases from and to the way she faces at its ends. */
function walkYaw(path, distance, startYaw, endYaw) {
  const a = path.at(Math.max(0, distance - 0.12))
  const b = path.at(Math.min(path.length, distance + 0.12))
  const along = (Math.atan2(b.x - a.x, b.z - a.z) * 180) / Math.PI
  const mix = (from, to, k) => from + (((((to - from) % 360) + 540) % 360) - 180) * k
  const first = mix(startYaw, along, smooth(clamp(distance / 0.4)))
  return mix(first, endYaw, smooth(clamp((distance - path.length + 0.45) / 0.45)))
}

/** Swings legs and arms for the distance walked. */
function stepping(pose, distance, gone) {
  const step = 0.42
  const strength = smooth(clamp(gone / 0.14)) * smooth(clamp((1 - gone) / 0.14))
  for (const [side, sign, offset] of [
    ['R', 1, 0],
    ['L', -1, 0.5],
  ]) {
    const share = (distance / (2 * step) + offset) % 1
    const swinging = share >= 0.5
    const k = swinging ? (share - 0.5) * 2 : share * 2
    const forward = swinging ? -step / 2 + step * smooth(k) : step / 2 - step * k
    const lift = swinging ? Math.sin(Math.PI * k) * 0.06 : 0
    const heel = swinging ? 30 * Math.sin(Math.PI * k) * (1 - k) - 8 * k : k > 0.7 ? 22 * ((k - 0.7) / 0.3) : 0
    pose.feet[side] = {
      ...pose.feet[side],
      at: [sign * 0.085, 0.075 + (lift + Math.max(0, heel) * 0.0011) * strength, forward * strength],
      pitch: heel * strength,
    }
    const other = step / 2 - step * (swinging ? 1 - k : k)
    pose.hands[side] = {
      at: [sign * 0.22, 0.85 + 0.012 * Math.abs(other), 0.03 - other * 0.75 * strength],
      hint: [sign * 0.3, 0, -1],
    }
  }
  pose.pelvis = [0, pose.pelvis[1] - 0.024 * strength, 0]
  pose.lean = 2
  return pose
}

/** A path along rounded corners, measured in metres; `at(distance)` is a point on it. */
function roundPath(from, to) {
  const ends = {
    chair: ahead(chair, risen),
    behindFirst: ahead(chair, -behindGap),
    behind: ahead(chairTurned, -behindGap),
    wall: wallSpot,
    front: frontSpot,
  }
  const end = to === 'behind' ? ends.behindFirst : ends[to]
  let points = [[ends[from].x, ends[from].z], ...(routes[`${from}>${to}`] ?? fail(`${from}>${to}`)), [end.x, end.z]]
  for (let round = 0; round < 4; round++) points = cutCorners(points)
  const lengths = points
    .slice(1)
    .map((point, index) => Math.hypot(point[0] - points[index][0], point[1] - points[index][1]))
  const length = lengths.reduce((sum, value) => sum + value, 0)
  const at = (distance) => {
    let left = clamp(distance / length) * length
    let index = 0
    while (index < lengths.length - 1 && left > lengths[index]) left -= lengths[index++]
    const [x, z] = between(points[index], points[index + 1], clamp(left / lengths[index]))
    return { x, z, yaw: 0 }
  }
  return { length, at }
}

function cutCorners(points) {
  const inner = points
    .slice(1)
    .flatMap((point, index) => [between(points[index], point, 0.25), between(points[index], point, 0.75)])
  return [points[0], ...inner.slice(1, -1), points.at(-1)]
}
