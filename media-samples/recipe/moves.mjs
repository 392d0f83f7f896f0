/**
 * What the teacher can do: every state named in the script, where it is done, and where things stand in the room.
 *
 * Offers `states` (name to { place, pose(seconds), props, beat }), `beatOf`, `blendMs` and the places of chair, stool, wall.
 */
import { curl, gesture, knee, march, press, rise, row, rowWrong, sitToStand, twist } from './moves-seated.mjs'
import { calf, heels, push, sideLift } from './moves-standing.mjs'
import { sit, stand, wave } from './pose-parts.mjs'

/** Time in ms that one state takes to flow into another at the same place. */
export const blendMs = 700

export const chair = { x: -0.14, z: 0, yaw: 41 }
export const chairTurned = { x: -0.22, z: 0.05, yaw: 56 }
/** The stool at her left, for weights and band. */
export const stool = { x: 0.5, z: -0.24 }
/** Where the wall's face is, in room metres. */
export const wallX = 1.58

const onChair = 'chair'
const behindChair = 'behind'
const atWall = 'wall'
const inFront = 'front'
const state = (place, pose, extra = {}) => ({ place, pose, props: [], ...extra })
const weights = { props: ['weights'] }

/** Every state: where it is done, its pose after some seconds, what she holds, and when its far end first comes (ms). */
export const states = {
  sit: state(onChair, gesture),
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
  'rise.go': state(onChair, sitToStand),
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
