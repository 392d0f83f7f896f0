/** Draws what she holds. Offers `propParts(joints, props)`: parts { depth, draw } to be sorted with the rest. */
import { drawWeight } from './draw-furniture.mjs'
import { palette, project } from './page.mjs'
import { add, between, subtract, times, unit } from './rig.mjs'

/** What she holds: weights in both hands, or the band from hand to sole to hand. */
export function propParts(joints, props) {
  const { R, L } = joints.sides
  if (props.includes('weights')) {
    return [R, L].map((side) => {
      const palm = between(side.wrist, side.fingers, 0.55)
      return {
        depth: project(side.wrist).depth * 0.5 + project(side.elbow).depth * 0.5 + 0.004 + (side === R ? 0.02 : 0),
        draw: (context) => drawWeight(context, palm, joints.direction([1, 0, 0.12])),
      }
    })
  }
  const palm = (side) => between(side.wrist, side.fingers, 0.5)
  if (props.includes('band')) {
    const sole = (side) => add(between(side.ball, side.toe, 0.4), times(unit(subtract(side.ball, side.ankle)), 0.035))
    return [{ depth: 9, draw: (context) => drawBand(context, [palm(R), sole(R), sole(L), palm(L)]) }]
  }
  if (props.includes('band-behind')) {
    const back = (sign) => add(joints.chest, joints.direction([sign * 0.13, 0.02, -0.11]))
    return [
      {
        depth: project(joints.chest).depth - 0.02,
        draw: (context) => drawBand(context, [palm(R), back(1), back(-1), palm(L)]),
      },
    ]
  }
  return []
}

function drawBand(context, points) {
  const onPage = points.map(project)
  context.lineJoin = 'round'
  context.lineCap = 'round'
  for (const [colour, size] of [
    [palette.ink, 9],
    [palette.accent, 5.6],
  ]) {
    context.beginPath()
    onPage.forEach(({ x, y }, index) => (index === 0 ? context.moveTo(x, y) : context.lineTo(x, y)))
    context.strokeStyle = colour
    context.lineWidth = size
    context.stroke()
  }
}
