/**
 * Draws what is laid over the room: the corner tag with section and running clock, and the title at the start.
 *
 * Offers `drawTag(context, title, ms)` and `drawTitle(context, ms)`. The look is a film slate with a strip of floor tape.
 */
import { palette } from './page.mjs'
import { classSubtitle, classTitle, instructor } from './script.mjs'

const text = 'Cabin'

export function drawTag(context, title, ms) {
  const [x, y, w, h] = [40, 34, 236, 58]
  context.fillStyle = palette.ink
  context.beginPath()
  context.roundRect(x, y, w, h, 5)
  context.fill()
  drawStripes(context, x, y, w, 11)
  context.fillStyle = palette.paper
  context.font = `600 23px ${text}`
  context.textBaseline = 'alphabetic'
  context.textAlign = 'left'
  context.fillText(title, x + 16, y + 43)
  drawClock(context, ms, x + w - 16, y + 43)
}

/** Each digit stands in a cell of its own, so that the clock does not jump as it runs. */
function drawClock(context, ms, right, y) {
  const seconds = Math.floor(ms / 1000)
  const said = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`
  context.font = `700 23px ${text}`
  context.textAlign = 'center'
  let x = right
  for (const sign of [...said].reverse()) {
    const cell = sign === ':' ? 8 : 14
    context.fillText(sign, x - cell / 2, y)
    x -= cell
  }
  context.textAlign = 'left'
}

/** The slanted bars of a film slate, along the top of a dark plate. */
function drawStripes(context, x, y, w, h) {
  context.save()
  context.beginPath()
  context.roundRect(x, y, w, h, [5, 5, 0, 0])
  context.clip()
  context.fillStyle = palette.accent
  context.fillRect(x, y, w, h)
  context.fillStyle = palette.paper
  for (let left = x - 20; left < x + w + 20; left += 34) {
    context.beginPath()
    context.moveTo(left, y + h)
    context.lineTo(left + 11, y)
    context.lineTo(left + 28, y)
    context.lineTo(left + 17, y + h)
    context.fill()
  }
  context.restore()
}

const titleMs = { from: 700, settled: 1400, leaving: 8200, gone: 8800 }
const smooth = (k) => {
  const inside = Math.min(1, Math.max(0, k))
  return inside * inside * (3 - 2 * inside)
}

export function drawTitle(context, ms) {
  if (ms <= titleMs.from || ms >= titleMs.gone) return
  const shown =
    smooth((ms - titleMs.from) / (titleMs.settled - titleMs.from)) *
    (1 - smooth((ms - titleMs.leaving) / (titleMs.gone - titleMs.leaving)))
  const [w, h] = [452, 142]
  const x = 40 - (1 - shown) * (w + 60)
  const y = 536
  context.fillStyle = palette.ink
  context.beginPath()
  context.roundRect(x, y, w, h, 6)
  context.fill()
  drawStripes(context, x, y, w, 16)
  context.fillStyle = palette.paper
  context.font = `700 50px ${text}`
  context.fillText(classTitle, x + 26, y + 70)
  context.font = `500 21px ${text}`
  context.fillStyle = '#ddd3bf'
  context.fillText(classSubtitle, x + 28, y + 99)
  context.fillText(`with ${instructor}`, x + 28, y + 126)
}
