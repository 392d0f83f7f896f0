/** Finds the parts of doses in a text: each saying that fits gives one fact with its place. */
import {
  compilePattern,
  findMatches,
  lineOf,
  type Line,
  type Match,
  type Pattern,
  type Piece,
} from './match-pattern.ts'
import { readAmounts } from './read-amounts.ts'
import { slotsOf, type Slots } from './read-slots.ts'
import { LISTS } from './words/en/lists.ts'
import { NO_DOSES } from './words/en/no-doses.ts'
import { BARE_SAYINGS } from './words/en/sayings-bare.ts'
import { FIRST_SAYINGS, SAYINGS, type Saying } from './words/en/sayings.ts'

/** One part of a dose. */
export interface Fact {
  slots: Slots
  /** Piece numbers; to is exclusive. */
  from: number
  to: number
  /** Place in the text. */
  start: number
  end: number
  /** Counts only beside another part, or when nothing else is said. */
  weak: boolean
  /** For whom; `everyone` = the main dose. */
  level: string | null
  /** The level is said after its number ("six if you are new"). */
  isLevelAfter: boolean
  /** What one unit of its time is in seconds, for "two minutes, no, three". */
  scale: number
  doubts: string[]
}

export interface Findings {
  facts: Fact[]
  /** The pieces as they were read. */
  pieces: Piece[]
  /** The tags that are left: taken pieces and amounts set aside have signs of their own. */
  left: string[]
}

/** A piece that a fact has taken, and an amount that is no dose. */
export const TAKEN = '·'
/** Rough times from here on, in seconds, are the length of a class (common practice, no source). */
const LEAST_CLASS_S = 600
/** "Thirty thirties" names an interval, "five fives" sets (common practice, no source). */
const LEAST_INTERVAL = 10
const SET_ASIDE = '#'

const compiled = (sayings: readonly Saying[]) =>
  sayings.map((saying) => ({ saying, pattern: compilePattern(saying.says, LISTS) }))
const FIRST = compiled(FIRST_SAYINGS)
const REST = compiled([...SAYINGS, ...BARE_SAYINGS])
const ASIDE = NO_DOSES.map((rule) => ({ ...rule, pattern: compilePattern(rule.says, LISTS) }))
const AMOUNT = /^[NTDPCL]$/

/** All facts of the text, in its order. */
export function findFacts(text: string): Findings {
  const pieces = readAmounts(text)
  const open = pieces.map((piece) => ({ ...piece }))
  const facts: Fact[] = []
  let line = lineOf(open)
  const take = (rules: typeof FIRST) => {
    for (const { saying, pattern } of rules) {
      const found = takeFacts(saying, pattern, line, open, text)
      if (found.length > 0) line = lineOf(open)
      facts.push(...found)
    }
  }
  take(FIRST)
  for (const { pattern, clause } of ASIDE) if (setAside(pattern, clause === true, line, open)) line = lineOf(open)
  take(REST)
  facts.sort((a, b) => a.from - b.from)
  return { facts, pieces, left: open.map((piece) => piece.tag) }
}

/** True when something was set aside. */
function setAside(pattern: Pattern, isClause: boolean, line: Line, open: Piece[]): boolean {
  const matches = findMatches(line, pattern)
  for (const match of matches) {
    const named = Object.entries(match.kept).flatMap(([name, piece]) => (name === 'no' ? [piece] : []))
    const to = isClause ? clauseEnd(open, match.to) : match.to
    for (let at = match.from; at < to; at++) {
      const piece = open[at]
      if (!piece || !AMOUNT.test(piece.tag)) continue
      if (named.length === 0 || named.includes(piece) || at >= match.to) piece.tag = SET_ASIDE
    }
  }
  return matches.length > 0
}

function takeFacts(saying: Saying, pattern: Pattern, line: Line, open: Piece[], text: string): Fact[] {
  const facts: Fact[] = []
  for (const match of findMatches(line, pattern)) {
    if (!isAllowed(saying, match)) continue
    const to = saying.clause ? clauseEnd(open, match.to) : match.to
    const taken = open.slice(match.from, to)
    const start = taken[0]?.start ?? 0
    const end = taken.at(-1)?.end ?? start
    const slots: Slots = { ...saying.means, ...slotsOf(match.kept) }
    if (saying.words) slots[saying.words] = text.slice(start, end)
    facts.push({
      slots,
      from: match.from,
      to,
      start,
      end,
      weak: saying.weak === true,
      level: saying.level ?? null,
      isLevelAfter: saying.after === true,
      scale: Object.values(match.kept).find((piece) => piece.tag === 'T')?.scale ?? 1,
      doubts: [...(saying.doubt ? [saying.doubt] : []), ...slipDoubts(taken)],
    })
    for (const piece of taken) piece.tag = TAKEN
  }
  return facts
}

function isAllowed({ only }: Saying, { kept }: Match): boolean {
  const amounts = Object.values(kept)
  const single = (piece: Piece | undefined): number => (piece?.min != null && piece.min === piece.max ? piece.min : NaN)
  switch (only) {
    case undefined:
      return true
    case 'tens':
      return amounts.every((piece) => piece.tag === 'T' || (single(piece) >= 10 && single(piece) % 5 === 0))
    case 'same on both sides':
      return single(kept['reps'] ?? kept['plural'] ?? kept['work'] ?? kept['dist']) === single(kept['sides'])
    case 'more than one':
      return amounts.every((piece) => (piece.max ?? piece.min ?? 0) > 1 || piece.isFigure === true)
    case 'a range':
      return amounts.every((piece) => (piece.min ?? 0) >= 2 && (piece.max ?? 0) > (piece.min ?? Infinity))
    case 'two or more':
      return amounts.every((piece) => (piece.max ?? piece.min ?? 0) >= 2)
    case 'up to ten':
      return amounts.every((piece) => (piece.max ?? 0) <= 10)
    case 'fewer than a hundred':
      return amounts.every((piece) => (piece.max ?? 0) < 100)
    case 'no whole class':
      // "about twelve minutes" is how long the class takes.
      return amounts.every((piece) => piece.approx !== true || (piece.min ?? 0) < LEAST_CLASS_S)
    case 'out of ten':
      return single(kept['ten']) === 10 && (kept['rpe']?.max ?? 11) <= 10
    case 'the same twice':
      return single(kept['work'] ?? kept['reps']) === single(kept['twice'])
    case 'steps': {
      const steps = ['step1', 'step2', 'step3', 'step4', 'step5', 'more'].flatMap((name) => {
        const piece = kept[name]
        return piece?.values?.map((value) => value ?? NaN) ?? (piece ? [single(piece)] : [])
      })
      const ups = steps.slice(1).map((step, index) => Math.sign(step - (steps[index] ?? 0)))
      return ups.every((up) => up !== 0 && up === ups[0])
    }
    case 'falling':
      return single(kept['from']) > single(kept['to'])
    case 'falling to one':
      return single(kept['from']) > 2 && single(kept['to']) === 1
    case 'name of an interval':
      return single(kept['work']) === single(kept['rest']) && single(kept['work']) >= LEAST_INTERVAL
    case 'open below':
      return amounts.every((piece) => piece.min === null)
  }
}

/** Where the clause ends that goes on at this piece: at a mark or "but", ten pieces on at the latest. */
function clauseEnd(pieces: readonly Piece[], from: number): number {
  let to = from
  while (to < pieces.length && to < from + 10 && !/^(?:[,.;:()?]|but)$/.test(pieces[to]?.tag ?? '')) to++
  return to
}

function slipDoubts(taken: readonly Piece[]): string[] {
  return taken.flatMap((piece) => (piece.heard ? [`“${piece.heard}” was taken for a slip of the recogniser.`] : []))
}
