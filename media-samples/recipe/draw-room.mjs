/**
 * Draws the room itself: wall, window, pegs, floor, tape, the end of the side wall, and shadows on the floor.
 *
 * Offers `drawBackdrop(context)`, the part that never changes, and `drawShadow(context, spots)`.
 */
import { wallX } from './moves.mjs'
import { height, palette, pixels, project, width } from './page.mjs'

const backZ = -1.25

/** The still part: drawn once and kept. */
export function drawBackdrop(context) {
  const floorTop = project([0, 0, backZ]).y
  context.fillStyle = palette.wall
  context.fillRect(0, 0, width, floorTop)
  const dado = project([0, 0.92, backZ]).y
  context.fillStyle = palette.wallLow
  context.fillRect(0, dado, width, floorTop - dado)
  context.fillStyle = palette.trim
  context.fillRect(0, dado - 5, width, 5)
  context.fillStyle = palette.floor
  context.fillRect(0, floorTop, width, height - floorTop)
  drawBoards(context, floorTop)
  context.fillStyle = palette.paper
  context.fillRect(0, floorTop - 20, width, 20)
  context.fillStyle = palette.trim
  context.fillRect(0, floorTop - 22, width, 2.5)
  context.fillRect(0, floorTop - 1, width, 3)
  drawWindow(context)
  drawPegs(context)
  drawTape(context)
  drawWallEnd(context)
}

function drawBoards(context, top) {
  context.fillStyle = palette.floorLine
  for (const y of [18, 42, 72, 108, 150, 200]) if (top + y < height) context.fillRect(0, top + y, width, 1.6)
}

/** A window with a hill and a low sun, in paper tones so that it stays behind the teacher. */
function drawWindow(context) {
  const [x, y, w, h] = [846, 70, 196, 190]
  context.fillStyle = palette.paper
  context.fillRect(x - 12, y - 12, w + 24, h + 24)
  context.fillStyle = '#dfe5dd'
  context.fillRect(x, y, w, h)
  context.save()
  context.beginPath()
  context.rect(x, y, w, h)
  context.clip()
  context.fillStyle = '#f3dcae'
  context.beginPath()
  context.arc(x + 136, y + 74, 27, 0, 2 * Math.PI)
  context.fill()
  context.fillStyle = '#bccab8'
  context.beginPath()
  context.ellipse(x + 40, y + 214, 150, 96, 0, 0, 2 * Math.PI)
  context.fill()
  context.fillStyle = '#a9bba9'
  context.beginPath()
  context.ellipse(x + 190, y + 226, 120, 84, 0, 0, 2 * Math.PI)
  context.fill()
  context.restore()
  context.fillStyle = palette.paper
  context.fillRect(x + w / 2 - 4, y, 8, h)
  context.fillRect(x, y + 84, w, 7)
  context.strokeStyle = palette.trim
  context.lineWidth = 2
  context.strokeRect(x - 12, y - 12, w + 24, h + 24)
  context.fillStyle = palette.trim
  context.fillRect(x - 22, y + h + 12, w + 44, 7)
}

/** A peg rail with a towel and a jump of colour: where class things hang. */
function drawPegs(context) {
  context.fillStyle = palette.wood
  context.fillRect(150, 196, 210, 12)
  context.strokeStyle = palette.woodDark
  context.lineWidth = 1.6
  context.strokeRect(150, 196, 210, 12)
  for (const x of [180, 230, 280, 330]) {
    context.fillStyle = palette.steel
    context.beginPath()
    context.arc(x, 204, 4.5, 0, 2 * Math.PI)
    context.fill()
  }
  context.fillStyle = '#c9d3cf'
  context.beginPath()
  context.roundRect(214, 206, 34, 104, 5)
  context.fill()
  context.fillStyle = '#aebdb8'
  context.fillRect(214, 288, 34, 8)
  context.strokeStyle = palette.trim
  context.lineWidth = 7
  context.beginPath()
  context.ellipse(330, 236, 15, 30, 0, 0, 2 * Math.PI)
  context.stroke()
}

/** Tape on the floor: a long line and a cross that marks the chair's place. */
function drawTape(context) {
  const strip = (from, to, half) => {
    const [x1, z1] = from
    const [x2, z2] = to
    const length = Math.hypot(x2 - x1, z2 - z1)
    const [nx, nz] = [(-(z2 - z1) / length) * half, ((x2 - x1) / length) * half]
    const corners = [
      [x1 + nx, z1 + nz],
      [x2 + nx, z2 + nz],
      [x2 - nx, z2 - nz],
      [x1 - nx, z1 - nz],
    ].map(([x, z]) => project([x, 0, z]))
    context.beginPath()
    corners.forEach(({ x, y }, index) => (index === 0 ? context.moveTo(x, y) : context.lineTo(x, y)))
    context.closePath()
    context.fillStyle = palette.accent
    context.fill()
  }
  strip([-2.2, 1.3], [2.2, 1.3], 0.055)
  strip([-1.5, 0.18], [-1.1, 0.62], 0.034)
  strip([-1.5, 0.62], [-1.1, 0.18], 0.034)
}

/** The end of the side wall, which she leans on. */
function drawWallEnd(context) {
  const near = project([wallX, 0, 0.55])
  context.fillStyle = palette.wallEnd
  context.fillRect(near.x, 0, width - near.x, near.y)
  context.fillStyle = palette.paper
  context.fillRect(near.x - 3, near.y - 26, width - near.x + 3, 26)
  context.fillStyle = palette.trim
  context.fillRect(near.x - 3, near.y - 28, width - near.x + 3, 2.5)
  context.fillRect(near.x - 3, near.y - 1, width - near.x + 3, 3)
  context.fillRect(near.x - 1.5, 0, 3, near.y - 26)
}

/** Soft-edged by shape, not by blur: one flat ellipse under each thing on the floor. */
export function drawShadow(context, spots) {
  context.fillStyle = palette.shadow
  for (const { x, z, wide, deep } of spots) {
    const at = project([x, 0, z])
    context.beginPath()
    context.ellipse(at.x, at.y, wide * pixels, deep * pixels, 0, 0, 2 * Math.PI)
    context.fill()
  }
}
