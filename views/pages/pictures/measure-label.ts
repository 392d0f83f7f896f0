/** How wide words are on a strip, before any browser has drawn them. */
import type { Amount } from './read-amounts.ts'

export interface Label {
  number: string
  unit: string
  font: number
}

/** The unit is left out where there is no room for it; seconds keep theirs. */
export function labelFor(amount: Amount, width: number, font: number): Label {
  const keepsUnit = amount.unit.length <= 3 || labelWidth(amount, font) <= width + 1
  return { number: amount.number, unit: keepsUnit ? amount.unit : '', font }
}

const PADDING = 12

/** With the room it needs beside it. */
export function labelWidth({ number, unit }: Amount, font: number): number {
  return PADDING + textWidth(number, font) + (unit === '' ? 0 : textWidth(` ${unit}`, font * UNIT_FONT))
}

/** A unit is smaller than its number. */
export const UNIT_FONT = 0.56

/** Widths of letters of Barlow Condensed 600 in parts of the font size, as measured in a browser. */
const WIDTHS: Readonly<Record<string, number>> = {
  m: 0.67,
  w: 0.62,
  ' ': 0.2,
  i: 0.22,
  l: 0.22,
  t: 0.29,
  r: 0.32,
  '–': 0.38,
}

export function textWidth(text: string, font: number): number {
  return sum([...text].map((letter) => WIDTHS[letter] ?? (/\d/.test(letter) ? 0.48 : 0.44))) * font
}

export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
