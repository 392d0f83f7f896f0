/** Finds the tempo of an exercise: the counts of lowering, the pause, lifting and the pause behind, as a teacher tells them. */
import type { TextSpan } from './place-spans.ts'
import type { Speech } from './read-speech.ts'
import {
  COUNTS_PHASE,
  FOR_SOME_ONLY,
  GOES_ON,
  MAY_COUNT_PHASE,
  NO_PHASE,
  OF_BREATH,
  OF_GREATER_NUMBER,
  PHASE_NUMBERS,
  PHASE_UNIT,
  PHASES,
  WAITS,
  WAITS_HIGH,
  WAITS_LOW,
} from './words/en/tempo-words.ts'

/** A tempo in the trade's notation (lowering-pause-lifting-pause, x = not told) with the words that tell it. */
export interface FoundTempo {
  tempo: string
  offset: number
  end: number
}

/** Those told in a stretch of speech, in order. @param breathing the exercise is one of breathing: in, hold, out, hold */
export function findTempos(speech: Speech, span: TextSpan, breathing: boolean): FoundTempo[] {
  const found: CountedPhases[] = []
  let before = -1
  for (const { offset, end, index, words } of speech.sentences.slice(
    speech.sentenceAt(span.offset),
    speech.sentenceAt(span.end - 1) + 1,
  )) {
    if (!COUNTED.test(words)) continue
    const from = Math.max(offset, span.offset)
    const said = speech.text.slice(from, Math.min(end, span.end))
    const last = before === index - 1 ? (found.at(-1) ?? null) : null
    const joined = last && phasesIn(said, from, breathing, last)
    const own = joined ?? phasesIn(said, from, breathing, null)
    if (!own) continue
    if (joined) found.pop()
    found.push(own)
    before = index
  }
  return found
    .filter(({ slots, sure }) => sure && (slots[0] !== null || slots[2] !== null))
    .map(({ slots, offset, end }) => ({ tempo: slots.map((slot) => slot ?? 'x').join('-'), offset, end }))
}

/** Nothing is counted without a number. */
const COUNTED = new RegExp(`\\b(?:${Object.keys(PHASE_NUMBERS).join('|')})\\b`)

/** Counts of lowering, the pause, lifting, the pause; null = not told. */
type Slots = readonly (number | null)[]

interface CountedPhases {
  slots: Slots
  /** The one counted last. */
  last: number | null
  /** The words tell that phases are counted. */
  sure: boolean
  offset: number
  end: number
}

interface Word {
  text: string
  offset: number
  end: number
  /** A comma or the like stands in front of it. */
  opens: boolean
}

/** A count in a sentence: its number, and the words around it that belong to it. */
interface Count {
  number: number
  /** From the last comma or count to it, and from it to the next. */
  lead: string
  behind: string
  /** Its clause holds both; else the words on one side may belong to another count. */
  closed: boolean
  /** The clause in front of its own. */
  clauseBefore: string
  /** It is told as seconds or counts, or by words that lead to one. */
  sure: boolean
  from: Word
  to: Word
}

/** @param before what was counted right in front of it: "Three on the way down. Stop for one at the bottom" */
function phasesIn(
  said: string,
  offset: number,
  breathing: boolean,
  before: CountedPhases | null,
): CountedPhases | null {
  const words = wordsOf(said)
  const counts = countsIn(words)
  const [first] = counts
  if (!first || counts.length > MOST_PHASES) return null
  const plain = words.map(({ text }) => text).join(' ')
  if ((!breathing && OF_BREATH.test(plain)) || FOR_SOME_ONLY.test(plain)) return null
  // "up in one hold it two down in three": every number stands behind its phase
  const isBehind = tellsPhase(first.lead) && (MAY_COUNT_PHASE.test(first.lead) || !tellsPhase(first.behind))
  const slots: (number | null)[] = before ? [...before.slots] : [null, null, null, null]
  let last: number | null = before?.last ?? null
  for (const count of counts) {
    const { lead, behind, closed, clauseBefore } = count
    const own = closed ? `${lead} ${behind}` : isBehind || !tellsPhase(behind) ? lead : behind
    const slot = slotOf(tellsPhase(own) ? own : clauseBefore, last, slots)
    if (slot === null || slots[slot] !== null) return null
    slots[slot] = count.number
    last = slot
  }
  const counted = slots.filter((slot) => slot !== null)
  const isMany = counted.length > 1 && counted.some((number) => number > 1)
  const sure = (before?.sure ?? false) || counts.some((one) => one.sure) || isMany
  const end = offset + (counts.at(-1)?.to.end ?? 0)
  return { slots, last, sure, offset: before?.offset ?? offset + first.from.offset, end }
}

/** Lowering, a pause, lifting, a pause. */
const MOST_PHASES = 4

function wordsOf(said: string): Word[] {
  return [...said.matchAll(/[\p{L}\p{N}'’]+/gu)].map((match) => ({
    text: match[0].toLowerCase().replace(/['’]/g, ''),
    offset: match.index,
    end: match.index + match[0].length,
    opens: /[,;:–—]\s*$/.test(said.slice(0, match.index)),
  }))
}

function countsIn(words: readonly Word[]): Count[] {
  const isCount = ({ text }: Word): boolean => PHASE_NUMBERS[text] !== undefined
  const join = (some: readonly Word[]): string => some.map(({ text }) => text).join(' ')
  return words.flatMap((word, index): Count[] => {
    const number = PHASE_NUMBERS[word.text]
    if (number === undefined) return []
    const clauseStart = word.opens ? index : words.slice(0, index).findLastIndex(({ opens }) => opens)
    const lastCount = words.slice(0, index).findLastIndex(isCount)
    const from = Math.max(clauseStart, lastCount + 1, index - REACH, 0)
    const clauseEnd = words.findIndex(({ opens }, at) => at > index && opens)
    const nextCount = words.findIndex((one, at) => at > index && isCount(one))
    const until = Math.min(...[clauseEnd, nextCount, index + 1 + REACH, words.length].filter((at) => at > index))
    const [lead, behind] = [join(words.slice(from, index)), join(words.slice(index + 1, until))]
    // "three, two, one": counting aloud
    const isRow = lead === '' && behind === '' && (lastCount === index - 1 || nextCount === index + 1) && index > 0
    if (isRow || NO_PHASE.test(behind) || OF_GREATER_NUMBER.test(lead) || !GOES_ON.test(behind)) return []
    const hasUnit = PHASE_UNIT.test(behind)
    return [
      {
        ...{ number, lead, behind, from: word },
        closed: clauseStart >= lastCount + 1 && (nextCount < 0 || (clauseEnd >= 0 && clauseEnd <= nextCount)),
        clauseBefore: join(words.slice(Math.max(0, clauseStart - REACH), Math.max(0, clauseStart))),
        sure: hasUnit || COUNTS_PHASE.test(lead) || (number > 1 && /^to \w/.test(behind)),
        to: words[Math.min(words.length - 1, index + (hasUnit ? 1 : 0))] ?? word,
      },
    ]
  })
}

/** Words. */
const REACH = 9

type Phase = (typeof PHASES)[number][0]

/** The way that is told first. */
function phaseOf(words: string): { phase: Phase; index: number } | null {
  const found = PHASES.flatMap(([phase, pattern]) => {
    const index = pattern.exec(words)?.index
    return index === undefined ? [] : [{ phase, index }]
  })
  return found.toSorted((a, b) => a.index - b.index)[0] ?? null
}

function tellsPhase(words: string): boolean {
  return phaseOf(words) !== null || WAITS.test(words)
}

/** Where a count goes: lowering 0, the pause behind it 1, lifting 2, the pause behind that 3; null = nowhere. */
function slotOf(words: string, last: number | null, slots: Slots): number | null {
  if (WAITS_LOW.test(words)) return 1
  if (WAITS_HIGH.test(words)) return 3
  const way = phaseOf(words)
  const waits = WAITS.exec(words)?.index ?? Infinity
  if (waits < (way?.index ?? Infinity)) return last === 0 ? 1 : last === 2 ? 3 : null
  if (way === null) return null
  if (way.phase === 'lift') return 2
  return slots[0] === null ? 0 : 2
}
