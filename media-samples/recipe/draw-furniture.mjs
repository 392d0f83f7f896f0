/**
 * Draws the chair, the stool and what lies on it.
 *
 * Offers `furnitureParts(chair, stool, onStool)`: parts { depth, draw } to be sorted with the teacher's; and `drawWeight`.
 */
import { palette, pixels, project } from './page.mjs'
import { add, between, subtract, times, toRoom, unit } from './rig.mjs'

const inChair = (chair, point) => toRoom(chair, point)

/** Chair and stool as parts to be sorted by depth. */
export function furnitureParts(chair, stool, onStool) {
  const at = (point) => inChair(chair, point)
  const bar = (from, to, bias = 0) => ({
    depth: project(between(at(from), at(to), 0.5)).depth + bias,
    draw: (context) => drawBar(context, at(from), at(to), 9),
  })
  const parts = [
    bar([0.19, 0.44, 0.19], [0.21, 0, 0.22], -0.05),
    bar([-0.19, 0.44, 0.19], [-0.21, 0, 0.22], -0.05),
    bar([0.19, 0.44, -0.19], [0.2, 0, -0.24], -0.05),
    bar([-0.19, 0.44, -0.19], [-0.2, 0, -0.24], -0.05),
    bar([0.19, 0.44, -0.19], [0.19, 0.9, -0.235]),
    bar([-0.19, 0.44, -0.19], [-0.19, 0.9, -0.235]),
    { depth: project(at([0, 0.45, 0])).depth - 0.1, draw: (context) => drawSeat(context, at) },
    { depth: project(at([0, 0.8, -0.23])).depth + 0.01, draw: (context) => drawBackrest(context, at) },
  ]
  parts.push({
    depth: project([stool.x, 0.4, stool.z]).depth - 0.06,
    draw: (context) => drawStool(context, stool, onStool),
  })
  return parts
}

function drawBar(context, from, to, size, colour = palette.steel) {
  const a = project(from)
  const b = project(to)
  context.lineCap = 'round'
  for (const [style, extra] of [
    [palette.ink, 3.6],
    [colour, 0],
  ]) {
    context.strokeStyle = style
    context.lineWidth = size + extra - 3
    context.beginPath()
    context.moveTo(a.x, a.y)
    context.lineTo(b.x, b.y)
    context.stroke()
  }
}

/** A flat board with thickness: its upper face, then the rim below it. */
function drawBoard(context, corners, drop, colours) {
  const upper = corners.map(project)
  const lower = corners.map((corner) => project(add(corner, drop)))
  const shape = (points) => {
    context.beginPath()
    points.forEach(({ x, y }, index) => (index === 0 ? context.moveTo(x, y) : context.lineTo(x, y)))
    context.closePath()
  }
  context.lineJoin = 'round'
  context.strokeStyle = palette.ink
  context.lineWidth = 4.6
  const faces = corners.map((_, index) => [upper[index], upper[(index + 1) % 4], lower[(index + 1) % 4], lower[index]])
  for (const face of [lower, ...faces, upper]) {
    shape(face)
    context.stroke()
  }
  for (const face of faces) {
    shape(face)
    context.fillStyle = colours[1]
    context.fill()
  }
  shape(upper)
  context.fillStyle = colours[0]
  context.fill()
}

function drawSeat(context, at) {
  const corners = [
    [0.215, 0.46, 0.22],
    [-0.215, 0.46, 0.22],
    [-0.2, 0.46, -0.2],
    [0.2, 0.46, -0.2],
  ].map(at)
  drawBoard(context, corners, [0, -0.028, 0], [palette.wood, palette.woodDark])
}

function drawBackrest(context, at) {
  const corners = [
    [0.195, 0.9, -0.232],
    [-0.195, 0.9, -0.232],
    [-0.195, 0.7, -0.215],
    [0.195, 0.7, -0.215],
  ].map(at)
  const thick = subtract(at([0, 0, -0.022]), at([0, 0, 0]))
  const towards = thick[2] > 0 ? times(thick, -1) : thick
  drawBoard(context, corners, towards, [palette.wood, palette.woodDark])
}

function drawStool(context, stool, onStool) {
  const corner = (x, y, z) => [stool.x + x, y, stool.z + z]
  for (const [x, z] of [
    [-0.12, -0.1],
    [0.12, -0.1],
    [-0.12, 0.1],
    [0.12, 0.1],
  ]) {
    drawBar(context, corner(x * 0.9, 0.4, z * 0.9), corner(x * 1.15, 0, z * 1.15), 8)
  }
  const top = [
    [-0.15, 0.42, 0.13],
    [0.15, 0.42, 0.13],
    [0.15, 0.42, -0.13],
    [-0.15, 0.42, -0.13],
  ].map(([x, y, z]) => corner(x, y, z))
  drawBoard(context, top, [0, -0.026, 0], [palette.wood, palette.woodDark])
  if (onStool.weights) {
    drawWeight(context, corner(-0.06, 0.465, -0.06), [1, 0, 0.15])
    drawWeight(context, corner(-0.03, 0.465, 0.05), [1, 0, 0.1])
  }
  if (onStool.band) drawCoil(context, corner(0.095, 0.44, 0.02))
}

function drawCoil(context, at) {
  const { x, y } = project(at)
  context.lineWidth = 4
  for (const [size, drop] of [
    [13, 0],
    [11, -4],
    [9, -8],
  ]) {
    context.strokeStyle = palette.accent
    context.beginPath()
    context.ellipse(x, y + drop, size, size * 0.42, 0, 0, 2 * Math.PI)
    context.stroke()
  }
}

/** A hand weight seen as two ends and a bar. */
export function drawWeight(context, middle, way) {
  const along = times(unit(way), 0.062)
  const ends = [add(middle, along), subtract(middle, along)]
  drawBar(context, ends[0], ends[1], 9)
  for (const end of ends.sort((p, q) => p[2] - q[2])) {
    const { x, y } = project(end)
    context.beginPath()
    context.arc(x, y, 0.037 * pixels, 0, 2 * Math.PI)
    context.fillStyle = palette.accent
    context.strokeStyle = palette.ink
    context.lineWidth = 4.6
    context.stroke()
    context.fill()
  }
}
