/** What ties a saying outside of a teaching to an exercise: names near it, words they share, what it is said of, how far ahead. */
import type { Teaching } from './find-exercises.ts'
import type { Saying } from './mark-sayings.ts'
import type { TextSpan } from './place-spans.ts'
import type { Speech } from './read-speech.ts'
import { SAID_OF_SOME } from './words/en/saying-words.ts'

/** Where a saying stands as seen from an exercise: in its teaching, its returns, in front of it, behind it, while others are taught. */
export type Place = 'main' | 'return' | 'before' | 'earlier' | 'behind' | 'later'

/** A name said near a saying. */
export interface NearName {
  teaching: number | null
  offset: number
  end: number
}

/** What all exercises ask of a saying. */
export interface PlacedSaying extends Saying {
  atMs: number
  inside: number | null
  /** Outside of all teaching but just behind one. */
  behindTeaching: number | null
  inSentence: readonly NearName[]
  lastBefore: NearName | null
  around: ReadonlySet<number>
  /** Said for all, in turns and the like. */
  tells: readonly string[]
  /** Kinds of exercises that its sentence speaks of. */
  some: readonly string[]
  clause: readonly string[]
}

/** The exercise that sayings are sought for. */
export interface AskedFor {
  speech: Speech
  teaching: Teaching
  index: number
  main: TextSpan
  returns: readonly TextSpan[]
  nextStart: number
  startMs: number
  endMs: number
  turns: Turns
}

/** The group that an exercise is done in turns with, and the others. */
export interface Turns {
  /** Its mates by index, without itself; none where it stands alone. */
  mates: ReadonlySet<number>
  /** Exercises of other groups. */
  others: ReadonlySet<number>
  /** Where the first of its group starts and the last of it is taught; its own where it stands alone. */
  offset: number
  end: number
}

/** Marks of a saying outside the teaching. */
export function tiesOf(one: PlacedSaying, asked: AskedFor): string[] {
  const { speech, teaching, index, startMs, endMs } = asked
  const { atMs, around, clause, inside, behindTeaching, tells, some } = one
  const marks = [...nameTies(speech, one, index), ...tells]
  const isNamed = one.inSentence.some((near) => near.teaching === index)
  const name = nameStems(teaching)
  if (clause.some((word) => name.has(word)))
    marks.push('words of the name', ...(isNamed ? [] : ['words of the name, not named']))
  for (const kind of some) marks.push(`${kind} ${isOne(kind, asked)}`)
  const ahead = (startMs - atMs) / 1000
  const past = (atMs - endMs) / 1000
  if (past >= 0) marks.push(`past ${past < 5 ? '5' : past < 15 ? '15' : past < 60 ? '60' : 'far'}`)
  marks.push(
    `ahead ${ahead < 0 ? 'none' : ahead < 6 ? '6' : ahead < 20 ? '20' : ahead < 60 ? '60' : ahead < 180 ? '180' : 'far'}`,
  )
  if (ahead > 0 && inside === null && behindTeaching !== null && behindTeaching !== index)
    marks.push('right behind another')
  if (ahead > 0 && behindTeaching === index - 1 && index > 0) marks.push('right behind the one before')
  const [isBefore, isNext] = [around.has(index - 1), around.has(index + 1)]
  if (around.has(index)) marks.push('named around')
  else if (isBefore && isNext) marks.push('both neighbours named')
  else if (isBefore || isNext) marks.push('a neighbour named')
  else if (around.size > 0) marks.push('only others named around')
  marks.push(`at ${atMs < PROGRAMME_MS ? 'the start' : 'later'}`)
  return marks
}

/** A programme is told in the first minute or so. */
const PROGRAMME_MS = 75_000

function nameTies(speech: Speech, { hit, inSentence, lastBefore }: PlacedSaying, index: number): string[] {
  const gap = ({ offset, end }: NearName): number =>
    end <= hit.offset ? hit.offset - end : Math.max(0, offset - hit.end)
  const others = inSentence.filter(({ teaching }) => teaching !== index)
  const nearest = inSentence.filter(({ teaching }) => teaching === index).toSorted((a, b) => gap(a) - gap(b))[0]
  if (!nearest) {
    if (others.length > 0) return ['others named']
    if (!lastBefore) return ['no name']
    return ['no name', lastBefore.teaching === index ? 'named in the sentence before' : 'others in the sentence before']
  }
  const isBefore = nearest.end <= hit.offset
  const [from, to] = isBefore ? [nearest.end, hit.offset] : [hit.end, nearest.offset]
  const words = Math.abs(speech.wordsBefore(to) - speech.wordsBefore(from))
  const side = isBefore ? 'before' : 'behind'
  const marks = [`named ${side}`, `named ${side} ${words > 8 ? 'far' : words > 3 ? 'some' : String(words)}`]
  if (others.some(({ offset, end }) => offset >= from && end <= to)) marks.push(`named ${side} another between`)
  marks.push(others.some((other) => gap(other) < gap(nearest)) ? 'another nearer' : `nearest ${side}`)
  return marks
}

const STEMS = new WeakMap<Teaching, ReadonlySet<string>>()

function nameStems(teaching: Teaching): ReadonlySet<string> {
  const known = STEMS.get(teaching)
  if (known) return known
  const stems = new Set(
    [teaching.name, ...teaching.alsoCalled]
      .flatMap((one) => one.split(/[ -]/))
      .map(stemOf)
      .filter((one) => one.length > 3),
  )
  STEMS.set(teaching, stems)
  return stems
}

/** A word without its ending. */
export function stemOf(word: string): string {
  return word.toLowerCase().replace(/(?:ing|es|s)$/, '')
}

function isOne(kind: string, { speech, teaching: { entry }, main }: AskedFor): string {
  if (entry === null) {
    const words = SAID_OF_SOME.find(([name]) => name === kind)?.[1]
    const said = speech.text.slice(main.offset, Math.min(main.end, main.offset + SHOWN_CHARACTERS))
    return words?.test(said.toLowerCase()) === true ? 'heard' : 'unheard'
  }
  const { kit, movements, positions, sided } = entry
  const is: Readonly<Record<string, boolean>> = {
    weight: kit.some((one) => /bell|weight|bar/.test(one)),
    band: kit.some((one) => /band|loop/.test(one)),
    rings: kit.includes('rings'),
    floor: positions.some((one) => FLOOR.has(one)),
    stretch: movements.includes('stretch'),
    seated: positions[0] === 'seated',
    standing: positions[0] === 'standing',
    run: movements.includes('run'),
    sided: sided === true,
  }
  return String(is[kind] ?? false)
}

/** Characters of a teaching in which it is shown what it is. */
const SHOWN_CHARACTERS = 600
const FLOOR: ReadonlySet<string> = new Set(['supine', 'prone', 'side-lying', 'all-fours', 'forearm-supported'])
