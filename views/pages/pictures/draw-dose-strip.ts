/**
 * The dose strip: one dose as a short strip of tape. Each set is a block and each rest a gap in proportion; left and right
 * are two rows; the amount of work stands inside in big numerals; marks along the foot say how it is done; the tempo is
 * four small steps at the end.
 */
import type { Prescription } from '../../../shared/log-sheet.ts'
import { textWidth, UNIT_FONT } from './measure-label.ts'
import type { Label } from './measure-label.ts'
import { planDoseStrip, STRIP_SIZES } from './plan-dose-strip.ts'
import type { Block, Box, StripPlan, StripSize } from './plan-dose-strip.ts'
import type { Amount } from './read-amounts.ts'
import { element, escapeXml, round } from './write-svg.ts'

export interface StripOptions {
  size: StripSize
  /** The dose in words: the picture's accessible name. '' where the words stand beside it. */
  words: string
}

/** SVG, made to be put into a page as it is. null = the dose is still missing. */
export function doseStrip(dose: Prescription | null, { size, words }: StripOptions): string {
  const plan = planDoseStrip(dose, size)
  const isSilent = words === ''
  return element(
    'svg',
    {
      class: `strip strip-${size}`,
      viewBox: `0 0 ${plan.width} ${plan.height}`,
      width: plan.width,
      height: plan.height,
      preserveAspectRatio: 'xMinYMid meet',
      role: isSilent ? null : 'img',
      'aria-hidden': isSilent ? 'true' : null,
      'aria-label': isSilent ? null : words,
      focusable: 'false',
    },
    ...drawAll(plan, size),
  )
}

function drawAll(plan: StripPlan, size: StripSize): string[] {
  const { smallFont, foot } = STRIP_SIZES[size]
  if (plan.nothing !== '') return drawNothing(plan, smallFont)
  return [
    ...plan.rests.map((rest) => drawRest(rest, smallFont)),
    ...plan.others.map(({ x, y, width, height }) => rect('s-other', { x, y, width, height }, 'none')),
    ...plan.starts.map((x) => drawLine('s-out', x, 0, x, plan.height, 2)),
    ...plan.blocks.flatMap((block) => drawBlock(block, foot)),
    ...plan.names.map(({ text, x, y, font, middle }) => drawText(text, x, y + font * 0.35, font, middle, 's-on-floor')),
    ...(plan.tempo ? drawTempo(plan.tempo, smallFont) : []),
  ]
}

/** A dashed place where tape belongs. */
function drawNothing({ width, height, nothing }: StripPlan, smallFont: number): string[] {
  const dashed = { fill: 'none', stroke: '#14181a', 'stroke-width': 2, 'stroke-dasharray': '6 5' }
  return [
    element('rect', { class: 's-out', x: 1, y: 1, width: width - 2, height: height - 2, ...dashed }),
    drawText(nothing, width / 2, height / 2 + smallFont * 0.42, smallFont * 1.3, true, 's-on-floor'),
  ]
}

function drawBlock(block: Block, foot: number): string[] {
  const { x, y, width, height, maybe, inline } = block
  const look = maybe
    ? { class: 's-maybe', fill: '#fdfdfb', 'stroke-dasharray': '4 3' }
    : { class: 's-block', fill: '#f5bf1f', 'stroke-dasharray': null }
  const footHeight = Math.min(foot, height * 0.2)
  return [
    element('path', { ...look, stroke: '#14181a', 'stroke-width': 1.5, d: tapePath(x, y, width, height) }),
    ...block.parts.flatMap(({ amount, x: from, width: long, label }, index) => {
      const line = index === 0 ? [] : [drawLine('s-line', from, y, from, y + height, 1.5)]
      if (inline) return [...line, ...drawBeside(amount, label, { x: from, y, width: long, height }, maybe)]
      return [
        ...line,
        ...drawMarks(
          amount,
          { x: from + 4, y: y + height - footHeight - 2, width: long - 8, height: footHeight },
          maybe,
        ),
        ...(label
          ? [drawLabel(label, from + (long - labelSize(label)) / 2, y + (height - footHeight) / 2, maybe)]
          : []),
      ]
    }),
  ]
}

/** In a low row the words come first and the marks behind them, if there is room. */
function drawBeside(amount: Amount, label: Label | null, { x, y, width, height }: Box, maybe: boolean): string[] {
  if (!label)
    return drawMarks(amount, { x: x + 4, y: y + height * 0.35, width: width - 8, height: height * 0.3 }, maybe)
  const size = labelSize(label)
  const room = width - size - 24
  if (room < 16) return [drawLabel(label, x + (width - size) / 2, y + height / 2, maybe)]
  const marks = { x: x + size + 18, y: y + height * 0.32, width: room, height: height * 0.36 }
  return [drawLabel(label, x + 8, y + height / 2, maybe), ...drawMarks(amount, marks, maybe)]
}

/** A piece of tape, torn at both ends; too small a piece is cut straight. */
function tapePath(x: number, y: number, width: number, height: number): string {
  if (width < 16) return `M${round(x)} ${round(y)}h${round(width)}v${round(height)}h${round(-width)}z`
  const teeth = Math.max(2, Math.round(height / 8))
  const step = height / teeth / 2
  const bite = 2.5
  const down = Array.from({ length: teeth }, () => `l${round(-bite)} ${round(step)}l${round(bite)} ${round(step)}`)
  const up = Array.from({ length: teeth }, () => `l${round(bite)} ${round(-step)}l${round(-bite)} ${round(-step)}`)
  return `M${round(x)} ${round(y)}h${round(width)}${down.join('')}h${round(-width)}${up.join('')}z`
}

function labelSize({ number, unit, font }: Label): number {
  return textWidth(number, font) + (unit === '' ? 0 : textWidth(` ${unit}`, font * UNIT_FONT))
}

/** @param middle the height of the middle of the figures */
function drawLabel({ number, unit, font }: Label, x: number, middle: number, maybe: boolean): string {
  const words = unit === '' ? '' : element('tspan', { 'font-size': font * UNIT_FONT }, ` ${escapeXml(unit)}`)
  const look = maybe ? 's-on-floor' : null
  const place = { x, y: middle + font * 0.35, 'font-size': font, 'xml:space': 'preserve' }
  return element('text', { class: look, ...place }, escapeXml(number), words)
}

/** Marks along the foot of a block; what may be left out is half as high. */
function drawMarks(amount: Amount, { x, y, width, height }: Box, maybe: boolean): string[] {
  if (width < 4) return []
  const look = maybe ? 's-maybe-work' : 's-work'
  const count = amount.sure + amount.maybe
  const bar = (from: number, long: number, high = height): string =>
    rect(look, { x: from, y: y + height - high, width: long, height: high }, '#14181a')
  switch (amount.mark) {
    case 'ticks':
    case 'bars':
    case 'dots':
      return count === 0 || width / count < 2.4
        ? denseMarks(bar, x, width)
        : countedMarks(amount, x, y, width, height, look)
    case 'bar':
      return [bar(x, width)]
    case 'dashes':
      return spaced(width, 9).map((from) => bar(x + from, 5.5))
    case 'measure':
      return [bar(x, width, height * 0.3), bar(x, 2), bar(x + width - 2, 2)]
    case 'chevrons':
      return spaced(width, 8).map((from) => {
        const half = height / 2
        const d = `M${round(x + from)} ${round(y)}l${round(half)} ${round(half)}l${round(-half)} ${round(half)}`
        return element('path', {
          class: maybe ? 's-out' : 's-line',
          d,
          fill: 'none',
          stroke: '#14181a',
          'stroke-width': 2,
        })
      })
    case 'open':
      return spaced(width, 12).map((from, index) => bar(x + from, Math.max(1, 8 - index * 1.2), height * 0.5))
    case 'none':
      return []
  }
}

function countedMarks(amount: Amount, x: number, y: number, width: number, height: number, look: string): string[] {
  const count = amount.sure + amount.maybe
  const step = width / count
  return Array.from({ length: count }, (_, index) => {
    const high = index < amount.sure ? height : height / 2
    const from = x + step * index
    if (amount.mark === 'dots') {
      const radius = Math.min(high / 2, step * 0.35)
      return element('circle', {
        class: look,
        cx: from + step / 2,
        cy: y + height - radius,
        r: radius,
        fill: '#14181a',
      })
    }
    const long = amount.mark === 'bars' ? step * 0.7 : Math.min(2.4, step * 0.5)
    return rect(look, { x: from + (step - long) / 2, y: y + height - high, width: long, height: high }, '#14181a')
  })
}

/** Too many to count by eye: a close comb. */
function denseMarks(bar: (from: number, long: number) => string, x: number, width: number): string[] {
  return spaced(width, 2.4).map((from) => bar(x + from, 1))
}

function spaced(width: number, step: number): number[] {
  return Array.from({ length: Math.max(1, Math.floor(width / step)) }, (_, index) => index * step)
}

/** A measured line on the floor, its length written above where there is room. */
function drawRest({ x, y, width, text }: StripPlan['rests'][number], smallFont: number): string {
  if (width < 12) return ''
  const from = x + 4
  const to = x + width - 4
  const isRoomy = textWidth(text, smallFont) <= width - 6
  return [
    drawLine('s-floor', from, y - 3, to, y - 3, 1.5),
    drawLine('s-floor', from, y - 7, from, y + 1, 1.5),
    drawLine('s-floor', to, y - 7, to, y + 1, 1.5),
    isRoomy && text !== '' ? drawText(text, x + width / 2, y - 10, smallFont, true, 's-on-floor') : '',
  ].join('')
}

/** Lowering, pause, lifting, pause: a line that goes down, stays, comes up, stays; the seconds beneath. */
function drawTempo({ phases, box }: NonNullable<StripPlan['tempo']>, smallFont: number): string[] {
  const step = box.width / 4
  const top = box.y + 3
  const low = box.y + box.height - smallFont - 8
  const at = (index: number): number => box.x + step * index
  const points = [
    [at(0), top],
    [at(1), low],
    [at(2), low],
    [at(3), top],
    [at(4), top],
  ]
  const d = points.map(([x = 0, y = 0], index) => `${index === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('')
  return [
    element('path', { class: 's-out', d, fill: 'none', stroke: '#14181a', 'stroke-width': 2 }),
    ...phases.map((phase, index) =>
      drawText(
        phase === '' ? '·' : phase,
        at(index) + step / 2,
        box.y + box.height - 1,
        smallFont * 1.1,
        true,
        's-on-floor',
      ),
    ),
  ]
}

function drawText(text: string, x: number, y: number, font: number, middle: boolean, look: string): string {
  return element(
    'text',
    { class: look, x, y, 'font-size': font, 'text-anchor': middle ? 'middle' : null },
    escapeXml(text),
  )
}

function drawLine(look: string, x1: number, y1: number, x2: number, y2: number, thick: number): string {
  return element('line', { class: look, x1, y1, x2, y2, stroke: '#14181a', 'stroke-width': thick })
}

function rect(look: string, box: { x: number; y: number; width: number; height: number }, fill: string): string {
  return element('rect', { class: look, ...box, fill, stroke: fill === 'none' ? '#14181a' : null })
}
