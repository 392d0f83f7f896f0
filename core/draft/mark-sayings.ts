/** Marks every saying of an amount with what speaks for or against it, whoever's dose it may be. */
import type { Prescription } from '../../shared/log-sheet.ts'
import type { DoseHit } from './find-dose-hits.ts'
import type { Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'
import {
  FOR_WHOM,
  HELD_SENTENCE,
  LATER_ROUND,
  NUMBER_LINKS,
  NUMBER_TAKEN_BACK,
  PLAINLY_TAKEN_BACK,
  SAID_EARLIER,
  THIS_ROUND,
  WHO_BEFORE,
  WILL_DO,
} from './words/en/saying-words.ts'
import { markTelling, wordsAround } from './mark-telling.ts'
import type { WordsAround } from './mark-telling.ts'

export const AMOUNT_KINDS = ['reps', 'distanceM', 'workSeconds', 'holdSeconds'] as const
export type AmountKind = (typeof AMOUNT_KINDS)[number]

/** One place where an amount, sets, a rest or a tempo is said, with its marks. */
export interface Saying {
  hit: DoseHit
  marks: readonly string[]
  /** A number in front of it was taken back for this one. */
  instead: boolean
}

const FIELDS = ['sets', 'reps', 'workSeconds', 'holdSeconds', 'distanceM', 'restSeconds', 'tempo'] as const

/** The fields a dose fills, as one word. */
export function fieldsIn(dose: Prescription): string {
  return FIELDS.filter((field) => dose[field] !== null).join(' ')
}

export function saysAmountOf(dose: Prescription): boolean {
  return AMOUNT_KINDS.some((kind) => dose[kind] !== null)
}

/** @param hits all of a class, in order */
export function markSayings(speech: Speech, hits: readonly DoseHit[]): Saying[] {
  return hits.map((hit, index) => {
    const next = neighbour(hits, index, 1)
    const last = neighbour(hits, index, -1)
    const between = next ? plainWords(speech.text.slice(hit.end, next.offset)) : ''
    const since = last ? plainWords(speech.text.slice(last.end, hit.offset)) : ''
    const instead = last !== null && NUMBER_TAKEN_BACK.test(since)
    const around = wordsAround(speech, hit)
    const marks = [...marksOfKind(hit), ...marksOfPlace(speech, hit, around), ...markTelling(speech, hit, last, around)]
    if (next) marks.push(`followed ${next.offset - hit.end < NEAR ? 'near' : 'later'}`)
    if (next && NUMBER_TAKEN_BACK.test(between)) marks.push('taken back')
    if (next && PLAINLY_TAKEN_BACK.test(between)) marks.push('taken back plainly')
    if (WHO_BEFORE.test(around.before)) marks.push('for some before')
    if (FOR_WHOM.test(around.behind)) marks.push('for some behind')
    if ((next ?? hit.dose.sets) && SAID_EARLIER.test(around.before)) marks.push(SAID_BEFORE)
    if (instead) marks.push('instead')
    if (last && PLAINLY_TAKEN_BACK.test(since)) marks.push('instead plainly')
    if (isOfLaterRound(speech, hit, around)) marks.push(OF_LATER_ROUND)
    if (next) marks.push(...linkMarks(speech, hit, next, between))
    return { hit, marks, instead }
  })
}

/** The next amount within reach on one side; rows of numbers hold others, and are none. */
function neighbour(hits: readonly DoseHit[], index: number, step: 1 | -1): DoseHit | null {
  const own = hits[index]
  for (let at = index + step; own && at >= 0 && at < hits.length; at += step) {
    const other = hits[at]
    if (!other) break
    const gap = step > 0 ? other.offset - own.end : own.offset - other.end
    if (gap > REACH) break
    if (gap >= 0 && !other.steps && !other.forAll && saysAmountOf(other.dose)) return other
  }
  return null
}

/** "Second time have forty": so near in front of the number, or right in front of its sentence. */
function isOfLaterRound(speech: Speech, { offset, sentence }: DoseHit, { behind }: WordsAround): boolean {
  const from = Math.max(speech.sentences[sentence - 1]?.offset ?? 0, offset - ROUND_REACH)
  return LATER_ROUND.test(plainWords(speech.text.slice(from, offset))) || THIS_ROUND.test(behind)
}

/** Another amount follows, for others or for later. */
function linkMarks({ text }: Speech, hit: DoseHit, next: DoseHit, between: string): string[] {
  const link = NUMBER_LINKS.find(([, pattern]) => pattern.test(between))?.[0]
  const isForSome = FOR_WHOM.test(plainWords(text.slice(next.end, next.end + WORD_REACH)))
  const isNear = next.offset - hit.end < NEAR
  return [
    ...(link === undefined ? [] : [`followed by ${link}`]),
    ...(isForSome && isNear ? ['followed by one for some'] : []),
  ]
}

/** Said of a later round. */
export const OF_LATER_ROUND = 'of a later round'

/** Said before, and another number follows. */
export const SAID_BEFORE = 'said before'

/** Characters. */
const ROUND_REACH = 60
const REACH = 120
const NEAR = 40

function marksOfKind({ dose, bare, loose, corrects, told, of, steps, forAll }: DoseHit): string[] {
  const marks = [`fields ${fieldsIn(dose)}`]
  if (dose.perSide) marks.push('per side')
  if (bare) marks.push('bare')
  if (loose) marks.push('loose')
  if (forAll) marks.push('said for all')
  if (corrects) marks.push('corrects')
  if (told) marks.push('in clauses')
  if (of) marks.push('counted name')
  if (dose.unsure) marks.push('unsure')
  if (!steps) return marks
  const { values, links, isCount } = steps
  marks.push('row', `row of ${String(values.length)}`, ...links.map((link) => `row ${link}`))
  marks.push(`row ${(values.at(-1) ?? 0) > (values[0] ?? 0) ? 'rising' : 'falling'}`)
  if (isCount) marks.push('row counts', `row counts ${links.join(' ')}`)
  return marks
}

function marksOfPlace(speech: Speech, hit: DoseHit, { before, own, behind }: WordsAround): string[] {
  const marks: string[] = []
  const sentence = speech.sentences[hit.sentence]
  if (sentence) {
    marks.push(`role ${sentence.role}`)
    const over = sentence.cues.filter((cue) => cue.offset < hit.end && hit.offset < cue.offset + cue.text.length)
    for (const kind of new Set(over.map((cue) => cue.kind))) marks.push(`in ${kind}`)
    marks.push(sentence.wordCount <= SHORT_WORDS ? 'short sentence' : 'longer sentence')
    if (/\b(?:if|unless|or)\b/.test(sentence.words)) marks.push('condition')
    if (HELD_SENTENCE.test(sentence.words)) marks.push('held in the sentence')
  }
  const words = own.split(' ')
  if (before !== '') marks.push(`behind word ${before.split(' ').at(-1) ?? ''}`)
  if (behind !== '') marks.push(`before word ${behind.split(' ')[0] ?? ''}`)
  if (WILL_DO.test(behind.slice(0, WILL_DO_REACH))) marks.push('will do')
  marks.push(`opens ${words[0] ?? ''}`, `closes ${words.at(-1) ?? ''}`)
  return marks
}

const SHORT_WORDS = 4
const WORD_REACH = 30
const WILL_DO_REACH = 20
