/** Reads doses: one utterance or typed text, or all doses of running speech with their places. */
import type { Prescription } from '../../shared/log-sheet.ts'
import { findFacts, TAKEN, type Fact, type Findings } from './find-facts.ts'
import { finishDraft } from './finish-draft.ts'
import type { DoseContext } from './finish-draft.ts'
import { hasWork, joinFacts, NO_LINK, type Link } from './join-facts.ts'
import type { Piece } from './match-pattern.ts'
import type { Slots } from './read-slots.ts'
import { splitLevels } from './split-levels.ts'
import { tellingOdds } from './weigh-telling.ts'
import { DOSE_FILLERS } from './words/en/fillers.ts'
import { LISTS } from './words/en/lists.ts'

export type { DoseContext } from './finish-draft.ts'

/** A dose and the place of its phrase in the text, in UTF-16 units. */
export interface FoundDose {
  dose: Prescription
  offset: number
  length: number
}

/**
 * The dose of one utterance or of typed text; null when there is none. `said` holds the exact phrase at 0 ms.
 * `unsure` and `why` tell a person what to look at; what was not said stays null.
 */
export function readDose(text: string, context: DoseContext = {}): Prescription | null {
  const odds = tellingOdds(text)
  const found =
    odds < LEAST_TOLD && isSentence(text)
      ? null
      : (readWhole(text, context) ?? (odds > SURELY_TOLD ? readLone(text, context) : null))
  if (!found) return null
  const { dose, offset, length } = found
  dose.said = [{ atMs: 0, text: text.slice(offset, offset + length) }]
  return dose
}

/** Log odds: below, the words only speak of numbers; above, even a number that no phrase holds is a dose. */
const LEAST_TOLD = -2
const SURELY_TOLD = 0.5

/** What is typed in figures, and a word or two beside a number, tell too little by their words. */
function isSentence(text: string): boolean {
  return (text.match(/\p{L}{2,}/gu) ?? []).length >= SENTENCE_WORDS
}

const SENTENCE_WORDS = 4

/** The only amount of words that surely tell a dose, where nothing says that it is none. */
function readLone(text: string, context: DoseContext): FoundDose | null {
  const { pieces, left } = findFacts(text)
  const amounts = pieces.filter(({ tag }) => LONE_SLOTS[tag] !== undefined)
  const [only] = amounts.filter((piece) => left[pieces.indexOf(piece)] === piece.tag)
  const slot = LONE_SLOTS[only?.tag ?? '']
  if (!only || !slot || amounts.length > 1 || (only.max ?? only.min ?? 0) <= 1) return null
  const range = { min: only.min ?? null, max: only.max ?? null }
  const dose = finishDraft(
    { slots: { [slot]: range }, doubts: ['No phrase of a dose was heard, only a number.'] },
    context,
  )
  return { dose, offset: only.start, length: only.end - only.start }
}

const LONE_SLOTS: Readonly<Record<string, 'reps' | 'work' | 'distance'>> = { N: 'reps', T: 'work', D: 'distance' }

/**
 * All doses of running speech, in order. Parts of one dose that stand in different sentences, or far apart,
 * come as doses of their own (a rest, say); `said` is left empty.
 */
export function findDoses(text: string, context: DoseContext = {}): FoundDose[] {
  const findings = findFacts(text)
  return clustersOf(findings).flatMap((cluster) => {
    const facts = withoutIdleLevels(cluster)
    const counted = isMeant(facts) || isWholeSentence(facts, findings) ? facts : []
    const first = counted[0]
    if (!first || isKitOnly(counted.map((fact) => fact.slots))) return []
    const links = linksOf(counted, findings.pieces)
    const end = Math.max(...counted.map((fact) => fact.end))
    return [{ dose: joinFacts(counted, links, context), offset: first.start, length: end - first.start }]
  })
}

function readWhole(text: string, context: DoseContext): FoundDose | null {
  const parts = splitLevels(text)
  const findings = findFacts(parts.main)
  const all = withoutIdleLevels(findings.facts)
  const facts = all.some((fact) => !fact.weak) || isAllSaid(findings) ? all : []
  const levels = parts.levels.flatMap(({ level, text: words }) => {
    const dose = readWhole(words, context)?.dose
    return dose ? [{ level, dose }] : []
  })
  const thens = parts.thens.flatMap((words) => readWhole(words, context)?.dose ?? [])
  if (isKitOnly(facts.map((fact) => fact.slots)) && levels.length === 0 && thens.length === 0) return null
  const dose = joinFacts(facts, linksOf(facts, findings.pieces), context)
  dose.byLevel.push(...levels)
  dose.then.push(...thens)
  const isParted = parts.main.length < text.length
  const start = facts[0]?.start ?? 0
  const end = isParted ? text.length : Math.max(...facts.map((fact) => fact.end))
  return { dose, offset: start, length: end - start }
}

/** "Everyone" says something only beside a level. */
function withoutIdleLevels(facts: readonly Fact[]): Fact[] {
  const hasLevel = facts.some((fact) => fact.level !== null && fact.level !== 'everyone')
  return facts.filter((fact) => hasLevel || fact.level !== 'everyone' || Object.keys(fact.slots).length > 0)
}

/** Weak facts count when no other words stand beside them. */
function isAllSaid({ left }: Findings): boolean {
  return left.every((tag) => tag === TAKEN || DOSE_FILLERS.has(tag))
}

/** A weight, a side or a scheme alone is no dose. */
function isKitOnly(all: readonly Slots[]): boolean {
  return !all.some((slots) => {
    const {
      load,
      perSide: _side,
      each: _each,
      alternating: _turns,
      scheme: _scheme,
      restBetween: _between,
      approx: _approx,
      ...rest
    } = slots
    return Object.keys(rest).length > 0 || /%|^rate/.test(load ?? '')
  })
}

/** A cluster counts when something in it stands on its own. */
function isMeant(facts: readonly Fact[]): boolean {
  return facts.some((fact) => !fact.weak)
}

/** "Three times." or "Ninety seconds." as a sentence of its own; a lone number there is counting aloud. */
function isWholeSentence(facts: readonly Fact[], { left }: Findings): boolean {
  const [first, last] = [facts[0], facts.at(-1)]
  if (
    !first ||
    !last ||
    !facts.some(({ slots }) => slots.times ?? slots.many ?? slots.work ?? slots.distance ?? slots.repScheme)
  )
    return false
  const start = left.lastIndexOf('.', first.from) + 1
  const end = left.indexOf('.', last.to)
  return left.slice(start, end < 0 ? left.length : end).every((tag) => tag === TAKEN || DOSE_FILLERS.has(tag))
}

// Clusters: which facts of running speech make one dose

/** More words than this between two facts part them, where no mark does. */
const MOST_WORDS_BETWEEN = 6

function clustersOf({ facts, pieces }: Findings): Fact[][] {
  const clusters: Fact[][] = []
  for (const fact of facts) {
    const cluster = clusters.at(-1)
    const before = cluster?.at(-1)
    if (cluster && before && !isParted(before, fact, pieces) && !clashes(cluster, fact, pieces)) cluster.push(fact)
    else clusters.push([fact])
  }
  return clusters
}

function isParted(before: Fact, fact: Fact, pieces: readonly Piece[]): boolean {
  const between = pieces.slice(before.to, fact.from)
  const words = between.filter((piece) => /^\p{L}/u.test(piece.tag))
  return words.length > MOST_WORDS_BETWEEN || between.some((piece) => piece.tag === '.' || /^[NTDL]$/.test(piece.tag))
}

/** Both say how much, and nothing between them makes one the heir of the other. */
function clashes(cluster: readonly Fact[], fact: Fact, pieces: readonly Piece[]): boolean {
  const before = cluster.at(-1)
  if (!before || fact.slots.same || fact.level !== null || cluster.some((one) => one.level !== null)) return false
  const link = linkBetween(before, fact, pieces)
  if (link.isFix || (link.isThen && hasWork(fact.slots))) return false
  // "six of those, rows, eight each arm" are two exercises
  if (fact.slots.reps && cluster.some((one) => one.slots.many)) return true
  const slots = ['sets', 'reps', 'many', 'work', 'hold', 'distance', 'rest', 'tempo'] as const
  return slots.some((slot) => {
    const mine = fact.slots[slot]
    return mine !== undefined && cluster.some((one) => one.slots[slot] !== undefined && !isSame(one.slots[slot], mine))
  })
}

function isSame(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b)
}

function linksOf(facts: readonly Fact[], pieces: readonly Piece[]): Link[] {
  return facts.map((fact, index) => {
    const before = facts[index - 1]
    return before ? linkBetween(before, fact, pieces) : NO_LINK
  })
}

const FIX = new RegExp(` (?:${LISTS.fix.join('|')})(?= |$)`)
const THEN = / (?:then|followed by|straight into|finish with)(?= |$)/
const MOST_WORDS_CLOSE = 2

function linkBetween(before: Fact, fact: Fact, pieces: readonly Piece[]): Link {
  const between = pieces.slice(before.to, fact.from)
  const words = between.map((piece) => ` ${piece.tag}`).join('')
  return {
    isFix: FIX.test(words),
    isThen: THEN.test(words) || pieces[fact.from]?.tag === 'then',
    isClose: between.length <= MOST_WORDS_CLOSE && between.every((piece) => /^\p{L}/u.test(piece.tag)),
  }
}
