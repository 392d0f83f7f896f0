/** How the sets of an exercise are arranged: straight, in turns with others, by the clock, up a ladder; with what speaks for each. */
import type { Prescription } from '../../shared/log-sheet.ts'
import { Scheme } from '../../shared/log-sheet.ts'
import { sizeOf, told } from './dose-option.ts'
import type { DoseCase, DoseOption } from './dose-option.ts'
import { plainWords } from './split-speech.ts'
import { SCHEME_WORDS } from './words/en/saying-words.ts'

/** Every scheme as an answer. @param amount the amount chosen */
export function schemeOptions(asked: DoseCase, amount: DoseOption | null): DoseOption[] {
  const marks = marksOf(asked, amount)
  return Scheme.options.map((value) => ({
    key: `scheme ${value}`,
    kind: 'scheme',
    value,
    marks: marks.map((mark) => `${value}: ${mark}`),
    rows: [],
  }))
}

function marksOf({ ruled, scheme, members, teaching, speech }: DoseCase, amount: DoseOption | null): string[] {
  const of = String(amount?.kind)
  const size = Math.min(4, members.length)
  const marks = ['always', `of ${of}`, `turns of ${String(size)}`, `${size === 0 ? 'alone' : 'in turns'} of ${of}`]
  if (scheme) marks.push(`announced ${scheme}`, `announced ${scheme}, turns of ${String(size)}`)
  marks.push(`ruled ${ruled?.scheme ?? 'none'}`)
  if (amount?.value === 'max') marks.push('as many as can')
  if (amount && sizeOf(amount.value) === 'range') marks.push(`range of ${of}`)
  const sayings = told(amount?.rows ?? [])
  if (sayings.some(({ saying }) => saying.hit.steps)) marks.push('by steps')
  if (sayings.some(({ saying }) => saying.hit.dose.restSeconds !== null)) marks.push(`rest with ${of}`)
  for (const said of new Set(sayings.map(({ saying }) => saying.hit.dose.scheme))) marks.push(`told as ${said}`)
  const [main] = teaching.spans
  const words = main ? plainWords(speech.text.slice(main.offset, main.end)) : ''
  const beside = sayings.map(({ saying: { hit } }) =>
    plainWords(speech.text.slice(Math.max(0, hit.offset - REACH), hit.end + REACH)),
  )
  for (const [what, pattern] of SCHEME_WORDS) {
    if (pattern.test(words)) marks.push(`${what} in it`)
    if (beside.some((one) => pattern.test(one))) marks.push(`${what} beside`)
  }
  return marks
}

/** Characters. */
const REACH = 120

/** The scheme that was chosen. */
export function schemeOf({ value }: DoseOption): Prescription['scheme'] | null {
  return Scheme.options.find((one) => one === value) ?? null
}
