/** Joins the parts of one dose: changes of mind, levels, what follows what, and what was left unsaid. */
import type { Prescription } from '../../shared/log-sheet.ts'
import type { Fact } from './find-facts.ts'
import { finishDraft, NUMBER_SLOTS, type Draft, type DoseContext, type NumberSlot } from './finish-draft.ts'
import type { Slots } from './read-slots.ts'

/** How the words between two facts join them. */
export interface Link {
  /** "sorry", "no, make it": the later number takes the place of the earlier. */
  isFix: boolean
  /** "then", "followed by". */
  isThen: boolean
  /** Next to each other: at most two words and no mark between. */
  isClose: boolean
}

export const NO_LINK: Link = { isFix: false, isThen: false, isClose: false }

const SCHEME_ORDER = ['straight', 'interval', 'ladder', 'superset', 'amrap', 'emom', 'circuit'] as const
const WORK_SLOTS = ['reps', 'work', 'hold', 'distance', 'repScheme'] as const

/** One dose from facts in order; links[i] tells how facts[i] follows the one before. */
export function joinFacts(facts: readonly Fact[], links: readonly Link[], context: DoseContext): Prescription {
  const main = emptyDraft()
  const levels = new Map<string, Draft>()
  const thens: Draft[] = []
  const owners = levelsOf(facts, links)
  let last: NumberSlot | null = null
  let scale = 1
  facts.forEach((fact, index) => {
    const said = links[index] ?? NO_LINK
    const link = fact.slots.same && fact.level === null ? { ...said, isFix: true } : said
    const owner = owners[index]
    const target = owner ? levelDraft(levels, owner) : mainOrThen(fact, link, main, thens)
    const slots = resolved(link.isFix ? inPlace(fact.slots, last) : fact.slots, last, scale)
    // "fifteen, sorry, fifty seconds": the number alone was no repetitions.
    if (link.isFix && slots.work && facts[index - 1]?.weak) delete target.slots.reps
    putSlots(target, slots, link)
    target.doubts.push(...fact.doubts)
    last = lastNumber(slots) ?? last
    if (hasTime(fact.slots)) scale = fact.scale
  })
  joinLadder(main, thens)
  const dose = finishDraft(main, context)
  dose.then = thens.map((draft) => finishDraft(draft, context))
  dose.byLevel = [...levels].map(([level, draft]) => ({ level, dose: finishDraft(likeMain(draft, main), context) }))
  return dose
}

/** A ladder said step by step, "one each side, then two, then three", is one list. */
function joinLadder(main: Draft, thens: Draft[]): void {
  const steps = [main, ...thens].map(({ slots }) =>
    typeof slots.reps === 'object' && slots.reps.min === slots.reps.max ? slots.reps.min : null,
  )
  const rises = steps.slice(1).map((step, index) => Math.sign((step ?? 0) - (steps[index] ?? 0)))
  const isSaid = main.slots.scheme === 'ladder' || rises.every((rise) => rise !== 0 && rise === rises[0])
  if (!isSaid || thens.length < 2 || steps.includes(null)) return
  main.slots.scheme = 'ladder'
  main.slots.repScheme = steps.map((step) => step ?? 0)
  delete main.slots.reps
  thens.length = 0
}

/** True when the fact says how much work, so that it can stand on its own. */
export function hasWork(slots: Slots): boolean {
  return WORK_SLOTS.some((slot) => slots[slot] !== undefined)
}

function emptyDraft(): Draft {
  return { slots: {}, doubts: [] }
}

function levelDraft(levels: Map<string, Draft>, level: string): Draft {
  const draft = levels.get(level) ?? emptyDraft()
  levels.set(level, draft)
  return draft
}

/** "then" and a second amount of work opens a new part; all else belongs to the whole. */
function mainOrThen(fact: Fact, link: Link, main: Draft, thens: Draft[]): Draft {
  const latest = thens.at(-1) ?? main
  const { many, ...others } = latest.slots
  // "four of them, then six": what is counted first are repetitions as well
  if (link.isThen && many && fact.slots.reps && !hasWork(others)) latest.slots = { ...others, reps: many }
  if (!link.isThen || !hasWork(fact.slots) || !hasWork(latest.slots)) return main
  const draft = emptyDraft()
  thens.push(draft)
  return draft
}

/**
 * For whom each fact is: null = everyone. A level said first counts until the next one;
 * "six if you are new" takes the number right before it.
 */
function levelsOf(facts: readonly Fact[], links: readonly Link[]): (string | null)[] {
  const owners: (string | null)[] = facts.map(() => null)
  let current: string | null = null
  facts.forEach((fact, index) => {
    const level = fact.level === 'everyone' ? null : fact.level
    if (fact.level === null) owners[index] = current
    else if (fact.isLevelAfter) {
      owners[index] = level
      if (fact.slots.same === undefined && links[index]?.isClose && index > 0) owners[index - 1] = level
      else if (fact.slots.same === undefined) current = level
    } else {
      current = level
      owners[index] = level
    }
  })
  return owners
}

/** "a minute if you are brave" beside a hold is a hold as well. */
function likeMain(draft: Draft, main: Draft): Draft {
  const { work, ...others } = draft.slots
  if (!work || !main.slots.hold || main.slots.work) return draft
  return { ...draft, slots: { ...others, hold: work, ...(main.slots.holdPer ? { holdPer: main.slots.holdPer } : {}) } }
}

/** A bare number after "no, make it" fills the slot filled last, in the same unit. */
function resolved(slots: Slots, last: NumberSlot | null, scale: number): Slots {
  const { same, ...others } = slots
  if (!same) return others
  const slot = last ?? 'reps'
  const factor = slot === 'work' || slot === 'hold' || slot === 'rest' || slot === 'distance' ? scale : 1
  const inUnit = (value: number | null) => (value === null ? null : value * factor)
  return { ...others, [slot]: { min: inUnit(same.min), max: inUnit(same.max) } }
}

/** "rest thirty, no, forty-five seconds": a bare time after a change of mind is a rest as well. */
function inPlace(slots: Slots, last: NumberSlot | null): Slots {
  const { work, ...others } = slots
  return work && Object.keys(others).length === 0 && (last === 'rest' || last === 'hold') ? { [last]: work } : slots
}

function putSlots(draft: Draft, slots: Slots, link: Link): void {
  const { scheme, phases, effort, load, frequency, approx, hold, ...others } = slots
  for (const slot of NUMBER_SLOTS) noteClash(draft, slot, slots, link)
  Object.assign(draft.slots, others)
  if (approx) draft.slots.approx = true
  if (scheme) draft.slots.scheme = strongest(draft.slots.scheme, scheme)
  if (hold) {
    draft.slots.hold = hold
    draft.isHoldAfterUp = draft.slots.phases?.up !== undefined
  }
  if (phases) draft.slots.phases = { ...draft.slots.phases, ...phases }
  if (effort !== undefined) draft.slots.effort = joinedText(draft.slots.effort, effort)
  if (load !== undefined) draft.slots.load = joinedText(draft.slots.load, load)
  if (frequency !== undefined) draft.slots.frequency = joinedText(draft.slots.frequency, frequency)
}

function noteClash(draft: Draft, slot: NumberSlot, slots: Slots, link: Link): void {
  const before = draft.slots[slot]
  const after = slots[slot]
  if (before === undefined || after === undefined || link.isFix) return
  if (JSON.stringify(before) !== JSON.stringify(after))
    draft.doubts.push('Two different numbers were said; the last one was taken.')
}

function strongest(before: Slots['scheme'], after: NonNullable<Slots['scheme']>): NonNullable<Slots['scheme']> {
  return SCHEME_ORDER.indexOf(before ?? 'straight') > SCHEME_ORDER.indexOf(after) ? (before ?? after) : after
}

function joinedText(before: string | undefined, after: string): string {
  return before === undefined || before === after ? after : `${before}, ${after}`
}

function lastNumber(slots: Slots): NumberSlot | null {
  return NUMBER_SLOTS.findLast((slot) => slots[slot] !== undefined) ?? null
}

function hasTime(slots: Slots): boolean {
  return slots.work !== undefined || slots.hold !== undefined || slots.rest !== undefined
}
