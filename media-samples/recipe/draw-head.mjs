/**
 * Draws the head: a ball with a face, silver hair in a bun and round glasses, turned the way the head turns.
 *
 * Offers `headParts(joints, look)`; `look` = { mouth, blink }, both 0 to 1.
 */
import { palette, pixels, project } from './page.mjs'
import { add, dot, times, unit } from './rig.mjs'

const radius = 0.112
const tall = 1.1

export function headParts(joints, look) {
  const frame = faceFrame(joints.head)
  const bun = add(joints.head.centre, add(times(joints.head.up, 0.115), times(joints.head.forward, -0.075)))
  const bunBehind = frame.forward.depth > -0.2
  const depth = project(joints.head.centre).depth + 0.12
  const draw = (context) => {
    if (bunBehind) drawBun(context, bun)
    drawSkull(context, frame)
    drawFace(context, frame, look)
    if (!bunBehind) drawBun(context, bun)
  }
  return [{ depth, draw }]
}

/** The head's own axes as they lie on the page, in pixels a unit. */
function faceFrame(head) {
  const centre = project(head.centre)
  const axis = (vector) => {
    const tip = project(add(head.centre, vector))
    return { x: (tip.x - centre.x) / pixels, y: (tip.y - centre.y) / pixels, depth: tip.depth - centre.depth }
  }
  return { centre, right: axis(head.right), up: axis(head.up), forward: axis(head.forward) }
}

/** A point of the head's surface: `turn` degrees to her right, `rise` degrees up from the middle of the face. */
function surface(frame, turn, rise, out = 1) {
  const a = (turn * Math.PI) / 180
  const b = (rise * Math.PI) / 180
  return place(frame, [Math.sin(a) * Math.cos(b), Math.sin(b), Math.cos(a) * Math.cos(b)], out)
}

function place(frame, [right, up, forward], out = 1) {
  const scale = radius * pixels * out
  const high = up * tall
  return {
    x: frame.centre.x + (frame.right.x * right + frame.up.x * high + frame.forward.x * forward) * scale,
    y: frame.centre.y + (frame.right.y * right + frame.up.y * high + frame.forward.y * forward) * scale,
    depth: frame.right.depth * right + frame.up.depth * up + frame.forward.depth * forward,
  }
}

/** The visible part of the head within `spread` degrees of a direction, as a closed path (empty when none is visible). */
function cap(context, frame, middle, spread) {
  const axis = unit(middle)
  const [one, two] = acrossOf(axis)
  const angle = (spread * Math.PI) / 180
  const edge = Array.from({ length: 96 }, (_, index) => {
    const round = (index / 96) * 2 * Math.PI
    const outwards = add(times(one, Math.cos(round)), times(two, Math.sin(round)))
    return place(frame, add(times(axis, Math.cos(angle)), times(outwards, Math.sin(angle))))
  })
  const first = edge.findIndex((point, index) => point.depth >= 0 && edge.at(index - 1).depth < 0)
  context.beginPath()
  if (first < 0 && edge[0].depth < 0) return
  const ordered = first < 0 ? edge : [...edge.slice(first), ...edge.slice(0, first)]
  const seen = ordered.filter((point) => point.depth >= 0)
  const closing = first < 0 ? [] : rimBetween(frame, seen.at(-1), seen[0], axis, Math.cos(angle))
  trace(context, [...seen, ...closing])
}

/** Points along the rim of the visible half from one to another, by the way that runs inside the cap. */
function rimBetween(frame, from, to, axis, cosine) {
  const rim = Array.from({ length: 144 }, (_, index) => {
    const direction = rimDirection(frame, (index / 144) * 2 * Math.PI)
    return { ...place(frame, direction), inside: dot(direction, axis) >= cosine }
  })
  const start = rim.findIndex((point, index) => point.inside && !rim.at(index - 1).inside)
  if (start < 0) return []
  const inside = [...rim.slice(start), ...rim.slice(0, start)].filter((point) => point.inside)
  const far = (point, other) => Math.hypot(point.x - other.x, point.y - other.y)
  return far(inside[0], from) <= far(inside[0], to) ? inside : inside.reverse()
}

function trace(context, points) {
  points.forEach(({ x, y }, index) => (index === 0 ? context.moveTo(x, y) : context.lineTo(x, y)))
  context.closePath()
}

/** Two directions square to one and to each other. */
function acrossOf(axis) {
  const one = unit(cross(axis, Math.abs(axis[1]) > 0.9 ? [0, 0, 1] : [0, 1, 0]))
  return [one, cross(axis, one)]
}

const cross = (p, q) => [p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]]

function drawBun(context, bun) {
  const { x, y } = project(bun)
  context.beginPath()
  context.arc(x, y, 0.056 * pixels, 0, 2 * Math.PI)
  context.fillStyle = palette.hair
  context.strokeStyle = palette.ink
  context.lineWidth = 4.8
  context.stroke()
  context.fill()
}

/** The whole ball in hair, then the face, ears and hairline. */
function drawSkull(context, frame) {
  const outline = () => {
    context.beginPath()
    const points = Array.from({ length: 72 }, (_, index) =>
      place(frame, rimDirection(frame, (index / 72) * 2 * Math.PI)),
    )
    trace(context, points)
  }
  outline()
  context.strokeStyle = palette.ink
  context.lineWidth = 4.8
  context.stroke()
  context.fillStyle = palette.hair
  context.fill()
  context.save()
  outline()
  context.clip()
  cap(context, frame, [0, -0.34, 1], 71)
  context.fillStyle = palette.skin
  context.fill()
  context.strokeStyle = palette.ink
  context.lineWidth = 1.6
  context.stroke()
  context.restore()
  for (const side of [1, -1]) drawEar(context, frame, side)
}

/** A direction on the rim of the visible half, `angle` round it. */
function rimDirection(frame, angle) {
  const [one, two] = acrossOf(unit([frame.right.depth, frame.up.depth, frame.forward.depth]))
  return add(times(one, Math.cos(angle)), times(two, Math.sin(angle)))
}

function drawEar(context, frame, side) {
  const ear = surface(frame, side * 92, -12, 1.02)
  if (ear.depth < -0.12) return
  context.beginPath()
  context.ellipse(ear.x, ear.y, 5.2, 8.2, 0, 0, 2 * Math.PI)
  context.fillStyle = palette.skin
  context.strokeStyle = palette.ink
  context.lineWidth = 1.8
  context.fill()
  context.stroke()
  context.beginPath()
  context.arc(ear.x, ear.y + 9, 3, 0, 2 * Math.PI)
  context.fillStyle = palette.accent
  context.fill()
}

function drawFace(context, frame, look) {
  context.lineCap = 'round'
  for (const side of [1, -1]) {
    drawBrow(context, frame, side)
    drawEye(context, frame, side, look.blink)
  }
  drawBridge(context, frame)
  drawNose(context, frame)
  drawMouth(context, frame, look.mouth)
}

function drawEye(context, frame, side, blink) {
  const eye = surface(frame, side * 23, 0)
  if (eye.depth < 0.1) return
  const squeeze = Math.max(0.25, eye.depth)
  context.fillStyle = palette.ink
  context.beginPath()
  context.ellipse(eye.x, eye.y, 3 * Math.min(1, squeeze + 0.2), 3.5 * (1 - blink * 0.85), 0, 0, 2 * Math.PI)
  context.fill()
  context.strokeStyle = palette.ink
  context.lineWidth = 1.7
  context.beginPath()
  context.ellipse(eye.x, eye.y, 9.2 * squeeze, 9, 0, 0, 2 * Math.PI)
  context.stroke()
}

function drawBrow(context, frame, side) {
  const from = surface(frame, side * 14, 22)
  const to = surface(frame, side * 34, 20)
  if (to.depth < 0.05 || from.depth < 0.05) return
  stroke(context, [from, surface(frame, side * 24, 25), to], palette.hairShade, 3)
}

function drawBridge(context, frame) {
  const from = surface(frame, 8, 1)
  const to = surface(frame, -8, 1)
  if (from.depth > 0.1 && to.depth > 0.1) stroke(context, [from, to], palette.ink, 1.7)
  for (const side of [1, -1]) {
    const hinge = surface(frame, side * 42, 1)
    const temple = surface(frame, side * 86, 2)
    if (temple.depth > 0 && hinge.depth > 0)
      stroke(context, [hinge, surface(frame, side * 64, 2), temple], palette.ink, 1.7)
  }
}

function drawNose(context, frame) {
  const top = surface(frame, 0, -6, 1.02)
  const tip = surface(frame, 0, -21, 1.14)
  const under = surface(frame, 0, -27, 1.0)
  if (tip.depth < -0.05) return
  stroke(context, [top, tip, under], palette.skinShade, 2.6)
}

function drawMouth(context, frame, open) {
  const middle = surface(frame, 0, -46)
  if (middle.depth < 0) return
  const left = surface(frame, 23, -38)
  const right = surface(frame, -23, -38)
  const low = surface(frame, 0, -52 - open * 16)
  const high = surface(frame, 0, -47)
  context.beginPath()
  context.moveTo(left.x, left.y)
  context.quadraticCurveTo(high.x, high.y + 1, right.x, right.y)
  context.quadraticCurveTo(low.x, low.y + 2, left.x, left.y)
  context.closePath()
  context.fillStyle = '#6d2f27'
  context.fill()
  context.strokeStyle = palette.ink
  context.lineWidth = 2.2
  context.lineJoin = 'round'
  context.stroke()
}

function stroke(context, points, colour, size) {
  context.beginPath()
  context.moveTo(points[0].x, points[0].y)
  if (points.length === 3) context.quadraticCurveTo(points[1].x, points[1].y, points[2].x, points[2].y)
  else context.lineTo(points[1].x, points[1].y)
  context.strokeStyle = colour
  context.lineWidth = size
  context.stroke()
}
