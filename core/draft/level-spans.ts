/** From the sets of some people to those of others, and what tells that two numbers are meant so. */
import type { Range } from '../../shared/log-sheet.ts'
import { sizeOf } from './dose-option.ts'
import type { Answers } from './dose-option.ts'
import type { Told } from './gather-sayings.ts'
import { across } from './join-ranges.ts'
import type { Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'
import { HOW_OFTEN } from './words/en/saying-words.ts'

/** "Green, you go round twice. Orange, three times": from two to three. */
export function addSetSpans({ text }: Speech, told: readonly Told[], answers: Answers): void {
  const ends = told.flatMap((one) => {
    const value = setsIn(text, one)
    return value ? [{ one, value }] : []
  })
  ends.forEach((first, at) => {
    for (const second of ends.slice(at + 1, at + MOST_SPANS)) {
      const [a, b] = [first.one.saying.hit, second.one.saying.hit]
      const gap = b.offset - a.end
      const range = across(first.value, second.value)
      if (gap < 0 || gap > NEAR_CHARACTERS || range.min === range.max) continue
      const between = plainWords(text.slice(a.end, b.offset))
      const order = (first.value.max ?? 0) < (second.value.max ?? 0) ? 'rising' : 'falling'
      const marks = [...levelMarks(first.one, second.one), `by ${linkOf(between)}`, order, sizeOf(second.value)]
      answers.add('sets', range, { how: 'span', told: second.one, marks })
    }
  })
}

/** Sets, or how many times. */
function setsIn(text: string, { saying: { hit } }: Told): Range | null {
  const { sets, reps } = hit.dose
  if (sets) return sets
  const isOften = reps !== null && reps !== 'max' && (reps.max ?? Infinity) <= MOST_SETS
  return isOften && HOW_OFTEN.test(text.slice(hit.offset, hit.end)) ? reps : null
}

const NEAR_CHARACTERS = 120
const MOST_SPANS = 4
const MOST_SETS = 6

/** Each end is said of some people: "five for stage one, eight for stage two". */
export function levelMarks(first: Told, second: Told): string[] {
  const [one, two] = [first, second].map(({ saying: { marks } }) => SOME_MARKS.filter((mark) => marks.includes(mark)))
  const [a, b] = [(one?.length ?? 0) > 0, (two?.length ?? 0) > 0]
  return a || b ? [`${a && b ? 'both' : a ? 'first' : 'second'} for some`] : []
}

const SOME_MARKS = ['for some before', 'for some behind'] as const

/** How two numbers are joined, by what stands between them. */
export function linkOf(between: string | null): string {
  if (between === null) return 'far'
  return ['up to', 'or', 'then', 'if', 'level', 'group'].find((word) => ` ${between} `.includes(` ${word} `)) ?? 'near'
}
