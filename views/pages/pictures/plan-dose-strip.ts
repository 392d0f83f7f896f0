/** Places a dose on its strip: which blocks stand where, in units of the picture, and what is written in them. */
import type { Prescription } from '../../../shared/log-sheet.ts'
import { formatSeconds } from '../format.ts'
import { labelFor, labelWidth, sum, textWidth } from './measure-label.ts'
import type { Label } from './measure-label.ts'
import { middle, readAmounts, readLadder, readSets, readTempo } from './read-amounts.ts'
import type { Amount } from './read-amounts.ts'
import { MOST_SETS, spreadSets } from './spread-sets.ts'

/** Sizes of a strip: card = 48 px high on a card, floor = across a phone, and larger on a larger screen. */
export const STRIP_SIZES = {
  card: { width: 280, height: 48, font: 30, smallFont: 14, foot: 6, tempo: 60, gap: 5, between: 2 },
  floor: { width: 360, height: 108, font: 66, smallFont: 18, foot: 11, tempo: 84, gap: 8, between: 4 },
} as const
export type StripSize = keyof typeof STRIP_SIZES

export interface Box {
  x: number
  y: number
  width: number
  height: number
}

export interface Block extends Box {
  /** The parts of the set, beside each other, and how wide each is. */
  parts: { amount: Amount; x: number; width: number; label: Label | null }[]
  /** true = this set may be left out. */
  maybe: boolean
  /** true = the marks stand beside the words, as in a row that is half as high. */
  inline: boolean
}

export interface StripPlan {
  width: number
  height: number
  blocks: Block[]
  /** Rests as lines at the floor, with what is written above them. */
  rests: (Box & { text: string })[]
  /** Work of other exercises of the same round. */
  others: Box[]
  /** Where a clock starts the next set. */
  starts: number[]
  /** "left", "right" or the name of a level, and where it stands. */
  names: { text: string; x: number; y: number; font: number; middle: boolean }[]
  tempo: { phases: string[]; box: Box } | null
  /** Written where nothing is said; '' otherwise. */
  nothing: string
}

const OTHERS_MOST = 4
/** They leave most of the strip to the exercise itself. */
const OTHERS_SHARE = 0.4

type Measures = (typeof STRIP_SIZES)[StripSize]

export function planDoseStrip(dose: Prescription | null, size: StripSize): StripPlan {
  const measures = STRIP_SIZES[size]
  const empty = emptyPlan(measures)
  if (dose === null) return { ...empty, nothing: 'no dose yet' }
  const amounts = readAmounts(dose)
  const ladder = readLadder(dose)
  if (amounts.length === 0 && ladder === null) {
    if (dose.byLevel.length > 0) return planLevels(dose, measures)
    if (dose.sets === null) return { ...empty, nothing: 'no amount said' }
  }
  return planSets(dose, amounts.length > 0 ? amounts : [SET], ladder, measures)
}

/** Stands behind the last set where more may follow. */
const MORE: Amount = { number: '+', unit: '', mark: 'none', sure: 0, maybe: 0, seconds: 1 }
/** Sets are said, and not of what. */
const SET: Amount = { number: 'set', unit: '', mark: 'none', sure: 0, maybe: 0, seconds: 30 }
const NOTHING: Amount = { number: '', unit: '', mark: 'none', sure: 0, maybe: 0, seconds: 30 }

function emptyPlan({ width, height }: Measures): StripPlan {
  return { width, height, blocks: [], rests: [], others: [], starts: [], names: [], tempo: null, nothing: '' }
}

/** Sets one after the other, rests between them in proportion to the work as far as the numerals leave room. */
function planSets(dose: Prescription, amounts: Amount[], ladder: Amount[] | null, measures: Measures): StripPlan {
  const plan = emptyPlan(measures)
  const phases = readTempo(dose.tempo)
  const sets = readSets(dose)
  const count = ladder?.length ?? sets.sure + sets.maybe
  const more = ladder === null && sets.open ? [[MORE]] : []
  const sides = dose.perSide ? SIDES : [null]
  const isStaggered = dose.perSide && dose.restBetween === 'sides'
  const nameWidth = dose.perSide ? measures.smallFont : 0
  const left = 1 + nameWidth + (dose.intervalSeconds === null ? 0 : 4)
  const right = measures.width - 1 - (phases ? measures.tempo : 0)
  const rowHeight = (measures.height - 2 - (sides.length - 1) * measures.between) / sides.length
  const rests = restOf(dose, amounts)
  const alike = Array.from({ length: Math.min(MOST_SETS, count) }, () => amounts)
  const eachSet: Amount[][] = [...(ladder?.slice(0, MOST_SETS).map((amount) => [amount]) ?? alike), ...more]
  const unit = isStaggered ? 2 : 1
  const oneOther = measures.gap + measures.foot + 2
  const roomForOthers = Math.floor((OTHERS_SHARE * (right - left)) / (eachSet.length * oneOther))
  const others = Math.min(OTHERS_MOST, dose.groupWith.length, roomForOthers)
  const isInline = dose.perSide
  const slots = spreadSets({
    sets: eachSet,
    count,
    room: right - left,
    restSeconds: rests.seconds,
    trailing: dose.intervalSeconds !== null,
    largest: Math.min(measures.font, (rowHeight - (isInline ? 0 : measures.foot)) * 0.86),
    unit,
    otherWidth: others * oneOther,
    leastGap: measures.gap,
  })
  slots.forEach((slot, index) => {
    const x = left + slot.x
    sides.forEach((side, row) => {
      const y = 1 + row * (rowHeight + measures.between)
      const halfGap = isStaggered ? Math.min(measures.gap, slot.width * 0.2) : 0
      const width = isStaggered ? (slot.width - halfGap) / 2 : slot.width
      const box = { x: isStaggered && row === 1 ? x + width + halfGap : x, y, width, height: rowHeight }
      const maybe = ladder === null && index >= sets.sure
      plan.blocks.push({ ...box, parts: placeParts(slot.amounts, box, slot.font), maybe, inline: isInline })
      if (side !== null && index === 0) {
        plan.names.push({ text: side, x: 0, y: y + rowHeight / 2, font: measures.smallFont, middle: false })
      }
    })
    for (let other = 0; other < others; other += 1) {
      const otherX = x + slot.width + measures.gap + other * oneOther
      plan.others.push({ x: otherX, y: measures.height * 0.3, width: measures.foot + 2, height: measures.height * 0.4 })
    }
    if (dose.intervalSeconds !== null) plan.starts.push(x - 3)
    const end = x + slot.width + others * oneOther
    if (slot.gap > measures.gap + 2) {
      plan.rests.push({ x: end, y: measures.height - 2, width: slot.gap, height: 0, text: rests.text })
    }
  })
  const boxX = right + measures.gap * 2
  plan.tempo = phases && {
    phases,
    box: { x: boxX, y: 1, width: measures.width - 1 - boxX, height: measures.height - 2 },
  }
  return plan
}

const SIDES = ['L', 'R'] as const

/** Rest between sets; on a clock, what the work leaves of its interval. */
function restOf(dose: Prescription, amounts: readonly Amount[]): { seconds: number; text: string } {
  const work = amounts.reduce((sum, amount) => sum + amount.seconds, 0)
  if (dose.intervalSeconds !== null) {
    const every = formatSeconds(dose.intervalSeconds)
    const seconds = Math.max(0, middle(dose.intervalSeconds, 0) - work)
    return { seconds, text: `every ${every.number} ${every.unit}` }
  }
  if (dose.restBetween === 'reps' || dose.restBetween === 'sides') return { seconds: 0, text: '' }
  const rest = formatSeconds(dose.restSeconds)
  return { seconds: middle(dose.restSeconds, 0), text: rest.number === '' ? '' : `${rest.number} ${rest.unit}` }
}

function placeParts(amounts: readonly Amount[], box: Box, font: number): Block['parts'] {
  const needs = amounts.map((amount) => Math.max(1, font === 0 ? 1 : labelWidth(amount, font)))
  let x = box.x
  return amounts.map((amount, index) => {
    const width = (box.width * (needs[index] ?? 1)) / sum(needs)
    const part = { amount, x, width, label: font === 0 || amount.number === '' ? null : labelFor(amount, width, font) }
    x += width
    return part
  })
}

/** Doses by level only: one block a level, its name above its amount. */
function planLevels(dose: Prescription, measures: Measures): StripPlan {
  const plan = emptyPlan(measures)
  const levels = dose.byLevel
  const width = (measures.width - 2 - (levels.length - 1) * measures.gap) / levels.length
  levels.forEach(({ level, dose: one }, index) => {
    const x = 1 + index * (width + measures.gap)
    const nameHeight = measures.smallFont
    const box = { x, y: 1 + nameHeight, width, height: measures.height - 2 - nameHeight }
    const sets = readSets(one)
    const amounts = readAmounts(one)
    const shown = amounts.length > 0 ? amounts : (readLadder(one)?.slice(0, 1) ?? [])
    const first = shown[0] ?? NOTHING
    const times = sets.sure > 1 && first.number !== '' ? `${String(sets.sure)}×${first.number}` : first.number
    const amount = { ...first, number: times }
    const largest = (box.height - measures.foot) * 0.86
    const font = Math.min(largest, (largest * width) / labelWidth(amount, largest))
    plan.blocks.push({ ...box, parts: placeParts([amount], box, font), maybe: false, inline: false })
    const nameFont = Math.min(nameHeight * 0.92, (nameHeight * width) / textWidth(level, nameHeight))
    plan.names.push({ text: level, x: x + width / 2, y: 1 + nameHeight / 2, font: nameFont, middle: true })
  })
  return plan
}
