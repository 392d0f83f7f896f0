// Contrast of every pair of colours that carries words: WCAG 2.2 (W3C, 2023), success criteria 1.4.3, 1.4.6, 1.4.11.
import { describe, expect, it } from 'vitest'
import { readProjectFile } from '../helpers/source-files.ts'

type Tokens = Readonly<Record<string, string>>

const css = readProjectFile('views/styles/tokens.css')

/** Custom properties of the first block after a mark in the file. */
function tokensAfter(mark: string): Tokens {
  const from = css.indexOf(mark)
  expect(from, mark).toBeGreaterThanOrEqual(0)
  const open = css.indexOf('{', from + mark.length - 1)
  const block = css.slice(open + 1, css.indexOf('}', open))
  return Object.fromEntries(
    [...block.matchAll(/--([\w-]+):\s*([^;]+);/g)].map(([, name = '', value = '']) => [name, value]),
  )
}

const light = tokensAfter(':root {')
const darkBySystem = tokensAfter(":root:not([data-theme='light']) {")
const darkByChoice = tokensAfter(":root[data-theme='dark'] {")
const schemes: Record<string, Tokens> = { light, dark: { ...light, ...darkByChoice } }

/** WCAG 2.2, "relative luminance". */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const part = parseInt(hex.slice(at, at + 2), 16) / 255
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

/** WCAG 2.2, "contrast ratio". */
function contrast(a: string, b: string): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x)
  return (light + 0.05) / (dark + 0.05)
}

const SURFACES = ['paper', 'sheet', 'floor']
/** 7 = AAA for words, 4.5 = AA for words, 3 = AA for what is no word. */
const PAIRS: [what: string, front: string, backs: string[], least: number][] = [
  ['doses inside tape', 'on-tape', ['tape', 'tape-pressed'], 7],
  ['doses in words', 'ink', SURFACES, 7],
  ['cautions', 'ink', ['warn-wash', ...SURFACES], 7],
  ['quiet words', 'ink-quiet', SURFACES, 4.5],
  ['the slate', 'chalk', ['slate'], 7],
  ['quiet words on the slate', 'chalk-quiet', ['slate'], 4.5],
  ['stops', 'stop', ['stop-wash', ...SURFACES], 4.5],
  ['warnings', 'warn', ['warn-wash', ...SURFACES], 4.5],
  ['notes', 'note', ['note-wash', ...SURFACES], 4.5],
  ['edges of fields', 'edge', ['paper', 'sheet'], 3],
  ['edges of fields on the slate', 'chalk-quiet', ['slate'], 3],
  ['rules', 'rule', SURFACES, 3],
  ['blocks on the ribbon', 'ink', ['shade-1', 'shade-2', 'shade-3'], 3],
]

describe('the reckoning', () => {
  // WCAG 2.2: black on white is 21:1; #767676 on white is the darkest grey that just passes AA, widely published
  it.each([
    ['#000000', '#ffffff', 21],
    ['#767676', '#ffffff', 4.54],
    ['#ffffff', '#ffffff', 1],
  ])('of %s on %s is %d', (a, b, ratio) => {
    expect(contrast(a, b)).toBeCloseTo(ratio, 2)
  })
})

describe.each(Object.entries(schemes))('in %s', (_name, tokens) => {
  it.each(PAIRS)('%s stand out', (_what, front, backs, least) => {
    for (const back of backs) {
      const ratio = contrast(tokens[front] ?? '', tokens[back] ?? '')
      expect(ratio, `${front} on ${back}`).toBeGreaterThanOrEqual(least)
    }
  })
})

it('is the same dark by the system and by choice', () => {
  expect(darkByChoice).toEqual(darkBySystem)
})

describe('kinds of cue', () => {
  const cues = readProjectFile('views/styles/parts/cue.css')
  // M. Okabe and K. Ito, "Color Universal Design (CUD)", 2008: the eight colours
  const PALETTE = ['#000000', '#e69f00', '#56b4e9', '#009e73', '#f0e442', '#0072b2', '#d55e00', '#cc79a7']

  it('take their colours from the palette', () => {
    const hues = Object.entries(light).filter(([name]) => name.startsWith('hue-'))
    expect(hues.map(([, value]) => value)).toEqual(PALETTE)
  })

  it('can be read on their colour', () => {
    const rules = [...cues.matchAll(/--hue: var\(--(hue-\w+)\);(?:\s*--on-hue: (#\w+);)?/g)]
    expect(rules.length).toBeGreaterThan(7)
    for (const [, hue = '', onHue] of rules.slice(1)) {
      const letter = onHue === '#fff' ? '#ffffff' : '#000000'
      expect(contrast(letter, light[hue] ?? ''), hue).toBeGreaterThanOrEqual(4.5)
    }
  })
})
