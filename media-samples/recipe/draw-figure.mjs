/**
 * Draws the teacher from her joints, as flat shapes with an ink line, far parts first.
 *
 * Offers `figureParts(joints, look)`: a list of { depth, draw(context) } to be sorted with the furniture.
 * `look` = { mouth (0 to 1, how open), blink (0 to 1) }. Sizes are metres on the body, pixels on the page.
 */
import { palette, pixels, project } from './page.mjs'
import { add, between, subtract, times, unit } from './rig.mjs'
import { headParts } from './draw-head.mjs'

const line = 2.4
const sizes = {
  thigh: 0.083,
  knee: 0.062,
  shin: 0.06,
  ankle: 0.041,
  shoulder: 0.062,
  elbow: 0.044,
  wrist: 0.033,
  hand: 0.038,
}

export function figureParts(joints, look) {
  const parts = []
  for (const side of ['L', 'R']) parts.push(...legParts(joints, joints.sides[side]), ...armParts(joints.sides[side]))
  parts.push(torsoPart(joints), neckPart(joints), ...headParts(joints, look))
  return parts
}

/** A soft shape: the outline round two circles, as a path on the page. */
function capsule(context, from, to, first, second) {
  const a = project(from)
  const b = project(to)
  const r1 = first * pixels
  const r2 = second * pixels
  const distance = Math.hypot(b.x - a.x, b.y - a.y)
  context.beginPath()
  if (distance <= Math.abs(r1 - r2) + 0.01) {
    const big = r1 > r2 ? a : b
    context.arc(big.x, big.y, Math.max(r1, r2), 0, 2 * Math.PI)
    return
  }
  const way = Math.atan2(b.y - a.y, b.x - a.x)
  const open = Math.acos((r1 - r2) / distance)
  context.arc(a.x, a.y, r1, way + open, way - open)
  context.arc(b.x, b.y, r2, way - open, way + open)
  context.closePath()
}

/** Fills capsules as one shape: first all of them in ink and a line wider, then each in its colour. */
export function drawJoined(context, pieces) {
  context.lineJoin = 'round'
  for (const [from, to, first, second] of pieces) {
    capsule(context, from, to, first, second)
    context.strokeStyle = palette.ink
    context.lineWidth = line * 2
    context.stroke()
  }
  for (const [from, to, first, second, colour] of pieces) {
    capsule(context, from, to, first, second)
    context.fillStyle = colour
    context.fill()
  }
}

function legParts(joints, side) {
  const leg = [
    [side.hip, side.knee, sizes.thigh, sizes.knee, palette.legs],
    [side.knee, side.ankle, sizes.shin, sizes.ankle, palette.legs],
  ]
  const shin = subtract(side.ankle, side.knee)
  const sock = add(side.ankle, times(unit(shin), -0.035))
  const shoe = [
    [sock, side.ankle, 0.036, 0.036, palette.skin],
    [side.heel, side.ball, 0.043, 0.041, palette.shoe],
    [side.ball, side.toe, 0.041, 0.034, palette.shoe],
  ]
  const soleDrop = unit(subtract(between(side.heel, side.toe, 0.3), side.ankle))
  const drawShoe = (context) => {
    drawJoined(context, shoe)
    const from = project(add(side.heel, times(soleDrop, 0.027)))
    const to = project(add(side.toe, times(soleDrop, 0.02)))
    context.strokeStyle = palette.accent
    context.lineWidth = 4.5
    context.lineCap = 'round'
    context.beginPath()
    context.moveTo(from.x, from.y)
    context.lineTo(to.x, to.y)
    context.stroke()
  }
  const kneeDepth = project(between(side.hip, side.ankle, 0.5)).depth
  return [
    { depth: Math.min(kneeDepth, project(side.ankle).depth) - 0.01, draw: drawShoe },
    { depth: legDepth(joints, side), draw: (context) => drawJoined(context, leg) },
  ]
}

/** A hanging thigh lies under the top; one that comes forward, as in sitting, lies over it. */
function legDepth(joints, side) {
  const down = -unit(subtract(side.knee, side.hip))[1]
  const own = project(between(side.hip, side.knee, 0.55)).depth
  if (down < 0.7) return own
  return Math.min(own, torsoDepth(joints) - 0.02 + 0.01 * Math.sign(side.hip[2] - joints.pelvis[2]))
}

const torsoDepth = (joints) => project(between(joints.pelvis, joints.neck, 0.45)).depth

function armParts(side) {
  const sleeveEnd = between(side.shoulder, side.elbow, 0.62)
  const skin = [
    [side.shoulder, side.elbow, sizes.shoulder - 0.012, sizes.elbow, palette.skin],
    [side.elbow, side.wrist, sizes.elbow, sizes.wrist, palette.skin],
    [side.wrist, side.fingers, sizes.hand - 0.003, sizes.hand - 0.008, palette.skin],
  ]
  const draw = (context) => {
    drawJoined(context, skin)
    drawJoined(context, [[side.shoulder, sleeveEnd, sizes.shoulder, sizes.elbow + 0.014, palette.top]])
  }
  const depth = project(side.elbow).depth * 0.5 + project(side.wrist).depth * 0.25 + project(side.shoulder).depth * 0.25
  return [{ depth, draw }]
}

/** The top: a loop round shoulders, ribs, waist and hips, as seen from here. */
function torsoPart(joints) {
  const { L, R } = joints.sides
  const waist = between(joints.pelvis, joints.neck, 0.3)
  const across = unit(subtract(R.shoulder, L.shoulder))
  const hips = unit(subtract(R.hip, L.hip))
  const collar = between(joints.neck, joints.chest, 0.16)
  const pieces = [
    [add(collar, times(across, 0.118)), add(collar, times(across, -0.118)), 0.068, 0.068, palette.top],
    [add(collar, times(across, 0.1)), add(waist, times(across, 0.058)), 0.082, 0.088, palette.top],
    [add(collar, times(across, -0.1)), add(waist, times(across, -0.058)), 0.082, 0.088, palette.top],
    [collar, waist, 0.1, 0.1, palette.top],
    [waist, joints.pelvis, 0.11, 0.11, palette.top],
    [add(waist, times(hips, 0.055)), add(joints.pelvis, times(hips, 0.07)), 0.09, 0.098, palette.top],
    [add(waist, times(hips, -0.055)), add(joints.pelvis, times(hips, -0.07)), 0.09, 0.098, palette.top],
  ]
  return { depth: torsoDepth(joints), draw: (context) => drawJoined(context, pieces) }
}

function neckPart(joints) {
  const top = between(joints.neck, joints.head.centre, 0.75)
  const towardsViewer = joints.direction([0, 0, 1])[2] > -0.2
  const base = add(joints.neck, times(joints.head.up, towardsViewer ? -0.03 : 0.03))
  const draw = (context) => drawJoined(context, [[base, top, 0.05, 0.047, palette.skin]])
  return { depth: project(joints.neck).depth, draw }
}
