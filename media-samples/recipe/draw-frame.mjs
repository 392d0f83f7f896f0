/**
 * Draws one whole frame of the class. Offers `makeFramePainter(plan, loudness)`, giving a function from a frame number
 * to raw BGRA bytes, where `loudness[frame]` (0 to 1) opens her mouth.
 */
import { createCanvas, GlobalFonts } from '@napi-rs/canvas'
import { figureParts } from './draw-figure.mjs'
import { furnitureParts } from './draw-furniture.mjs'
import { propParts } from './draw-props.mjs'
import { drawBackdrop, drawShadow } from './draw-room.mjs'
import { drawTag, drawTitle } from './draw-titles.mjs'
import { addLife } from './live.mjs'
import { stool } from './moves.mjs'
import { frameRate, height, width } from './page.mjs'
import { makePlayer } from './play.mjs'
import { solvePose } from './rig.mjs'

const fontFolder = '/usr/share/fonts/opentype/cabin'

export function makeFramePainter(plan, loudness) {
  GlobalFonts.loadFontsFromDir(fontFolder)
  if (!GlobalFonts.has('Cabin')) throw new Error('The font Cabin is missing: apt-get install fonts-cabin.')
  const backdrop = createCanvas(width, height)
  drawBackdrop(backdrop.getContext('2d'))
  const canvas = createCanvas(width, height)
  const context = canvas.getContext('2d')
  const play = makePlayer(plan.stage)
  return (frame) => {
    const ms = (frame * 1000) / frameRate
    const now = play(ms)
    const { pose, look } = addLife(now, ms, frame, loudness)
    const joints = solvePose(pose)
    context.drawImage(backdrop, 0, 0)
    drawShadow(context, shadows(joints, now.chair))
    const onStool = {
      weights: !now.props.includes('weights'),
      band: !now.props.some((prop) => prop.startsWith('band')),
    }
    const parts = [
      ...furnitureParts(now.chair, stool, onStool),
      ...figureParts(joints, look),
      ...propParts(joints, now.props),
    ]
    parts.sort((one, two) => one.depth - two.depth)
    for (const part of parts) part.draw(context)
    drawTag(context, titleAt(plan.sections, ms), ms)
    drawTitle(context, ms)
    return canvas
  }
}

function titleAt(sections, ms) {
  return sections.findLast((section) => section.atMs <= ms)?.title ?? sections[0].title
}

function shadows(joints, chair) {
  const { R, L } = joints.sides
  const middle = (axis) => (R.ankle[axis] + L.ankle[axis] + joints.pelvis[axis]) / 3
  return [
    { x: chair.x, z: chair.z, wide: 0.34, deep: 0.075 },
    { x: stool.x, z: stool.z, wide: 0.22, deep: 0.045 },
    { x: middle(0), z: middle(2), wide: 0.27, deep: 0.06 },
    ...[R, L].map(footShadow),
  ]
}

/** Smaller the higher the foot is off the floor. */
function footShadow(side) {
  const near = Math.max(0, 1 - (side.toe[1] + side.heel[1]) / 0.7)
  return {
    x: (side.heel[0] + side.toe[0]) / 2,
    z: (side.heel[2] + side.toe[2]) / 2,
    wide: 0.13 * near,
    deep: 0.03 * near,
  }
}
