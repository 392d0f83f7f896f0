/** What speaks for and against two exercises, taught one behind the other, being done in turns: a pair, or stations of a circuit. */
import type { Teaching } from './find-exercises.ts'
import type { Group } from './find-groups.ts'
import type { DoseHit } from './find-dose-hits.ts'
import type { Owning } from './find-owners.ts'
import type { Naming } from './naming.ts'
import type { TextSpan } from './place-spans.ts'
import { pushTo } from './push-to.ts'
import type { Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'
import { LINK_WORDS } from './words/en/link-words.ts'

/** A class with what was found in it so far. */
export interface LinkedClass {
  speech: Speech
  owning: Owning
  /** As announced by known phrases (find-groups.ts, find-loops.ts), or called in turns. */
  groups: readonly Group[]
  /** The hits given to each teaching. */
  own: readonly (readonly DoseHit[])[]
}

/** The features of each teaching and the one behind it, in the order of the teachings; each is a short phrase, the weights are filed under it. */
export function linkFeatures(known: LinkedClass): string[][] {
  const { teachings } = known.owning
  const names = namesBySentence(known.owning)
  return teachings.slice(0, -1).map((first, index) => {
    const second = teachings[index + 1]
    const [from] = first.spans
    const [to] = second?.spans ?? []
    if (!second || !from || !to) return ['always']
    const pair = { index, first, second, from, to }
    return [
      'always',
      ...ofGroups(known, index),
      ...ofReturns(known.speech, pair),
      ...ofAnnouncement(known.speech, names, pair),
      ...ofBorder(known.speech, names, pair),
      ...ofDoses(known, pair),
    ]
  })
}

interface Pair {
  index: number
  first: Teaching
  second: Teaching
  from: TextSpan
  to: TextSpan
}

function ofGroups({ groups }: LinkedClass, index: number): string[] {
  const own = groups.find(({ members }) => members.includes(index))
  const next = groups.find(({ members }) => members.includes(index + 1))
  if (own && own === next) return ['ruled', `ruled ${own.scheme}`]
  if (own && next) return ['ruled apart', 'in two groups']
  if (!own && !next) return ['ruled none']
  return ['ruled apart', `${own ? 'first' : 'second'} in a ${(own ?? next)?.scheme ?? ''}`]
}

/** Whether the class comes back to both, and in turn. */
function ofReturns(speech: Speech, { first, second, to }: Pair): string[] {
  const [back, backOfSecond] = [first, second].map(({ spans }) => spans.slice(1))
  const backBehind = back?.find(({ offset }) => offset >= to.offset)
  const many = (spans?: readonly TextSpan[]): string => String(Math.min(2, spans?.length ?? 0))
  const marks = [`returns ${many(back)} ${many(backOfSecond)}`]
  if (!backBehind) return marks
  marks.push(`first comes back ${apart(speech, to.end, backBehind.offset)}`)
  const next = backOfSecond?.find(({ offset }) => offset >= backBehind.end)
  if (next) marks.push('both in turn', `second in turn ${apart(speech, backBehind.end, next.offset)}`)
  return marks
}

function apart(speech: Speech, from: number, to: number): string {
  const seconds = (speech.timeOf(Math.max(from, to)) - speech.timeOf(from)) / 1000
  return seconds < 6 ? 'at once' : seconds < 20 ? 'soon' : seconds < 60 ? 'later' : 'far'
}

/** The exercises named in each sentence, and the sentences in which each is named. */
interface Names {
  inSentence: ReadonlyMap<number, readonly { teaching: number; naming: Naming }[]>
  ofTeaching: ReadonlyMap<number, readonly number[]>
}

function namesBySentence({ bySentence, teachingOf }: Owning): Names {
  const inSentence = new Map<number, { teaching: number; naming: Naming }[]>()
  const ofTeaching = new Map<number, number[]>()
  for (const [sentence, namings] of bySentence)
    for (const naming of namings) {
      const teaching = teachingOf(naming)
      if (teaching === null) continue
      pushTo(inSentence, sentence, { teaching, naming })
      if (ofTeaching.get(teaching)?.at(-1) !== sentence) pushTo(ofTeaching, teaching, sentence)
    }
  return { inSentence, ofTeaching }
}

/** How the two were named together before they are taught, and while they are. */
function ofAnnouncement(speech: Speech, names: Names, { index, from, to }: Pair): string[] {
  const marks: string[] = []
  const start = speech.sentenceAt(from.offset)
  const [last, behind] = [speech.sentenceAt(to.offset), speech.sentenceAt(Math.max(to.offset, to.end - 1))]
  for (const sentence of names.ofTeaching.get(index) ?? []) {
    if (sentence > behind) continue
    const named = names.inSentence.get(sentence) ?? []
    const [one, two] = [index, index + 1].map((at) => named.find(({ teaching }) => teaching === at))
    if (!one || !two) continue
    const where = sentence < start ? 'before' : sentence < last ? 'in the first' : 'in the second'
    const all = new Set(named.map(({ teaching }) => teaching)).size
    marks.push(`together ${where}`, `together ${where} of ${String(Math.min(4, all))}`)
    const [words, before, next] = [0, -1, 1].map((step) => speech.sentences[sentence + step]?.words ?? '')
    const [left, right] = one.naming.offset < two.naming.offset ? [one.naming, two.naming] : [two.naming, one.naming]
    const between = plainWords(speech.text.slice(left.end, right.offset)).trim().split(' ')
    marks.push(between.length <= 2 ? `between ${between.join(' ')}` : `between ${between.length < 6 ? 'some' : 'many'}`)
    for (const [what, pattern] of LINK_WORDS) {
      if (pattern.test(words ?? '')) marks.push(`together ${where} ${what}`)
      if (pattern.test(between.join(' '))) marks.push(`between ${what}`)
      if (pattern.test(before ?? '')) marks.push(`before together ${what}`)
      if (pattern.test(next ?? '')) marks.push(`behind together ${what}`)
    }
  }
  return [...new Set(marks)]
}

/** What is said where the first ends and the second starts, and where the first starts. */
function ofBorder(speech: Speech, names: Names, { index, from, to }: Pair): string[] {
  const text = (a: number, b: number): string => plainWords(speech.text.slice(Math.max(0, a), Math.max(a, b)))
  const stretches = {
    intro: text(from.offset - LONG_REACH, from.offset),
    opens: text(from.offset, Math.min(from.end, from.offset + REACH)),
    ends: text(Math.max(from.offset, from.end - REACH), from.end),
    gap: text(from.end, to.offset),
    starts: text(to.offset, Math.min(to.end, to.offset + REACH)),
    closes: text(Math.max(to.offset, to.end - REACH), to.end),
    behind: text(to.end, to.end + REACH),
    inside: text(from.offset, from.end),
    inner: text(to.offset, to.end),
  }
  const marks = Object.entries(stretches).flatMap(([where, words]) =>
    LINK_WORDS.flatMap(([what, pattern]) => (pattern.test(words) ? [`${where} ${what}`] : [])),
  )
  const gap = to.offset - from.end
  marks.push(`gap ${gap < 5 ? 'none' : gap < 80 ? 'short' : gap < 250 ? 'some' : 'long'}`)
  const namedIn = (teaching: number, a: number, b: number): boolean => {
    for (let at = speech.sentenceAt(a); at <= speech.sentenceAt(b); at += 1)
      for (const one of names.inSentence.get(at) ?? [])
        if (one.teaching === teaching && one.naming.offset >= a && one.naming.end <= b) return true
    return false
  }
  if (namedIn(index, to.offset, Math.min(to.end, to.offset + LONG_REACH))) marks.push('first named as second starts')
  else if (namedIn(index, to.offset, to.end)) marks.push('first named in second')
  if (namedIn(index + 1, from.offset, from.end)) marks.push('second named in first')
  const length = (span: TextSpan): string => {
    const words = speech.wordsBefore(span.end) - speech.wordsBefore(span.offset)
    return words < 60 ? 'short' : words < 120 ? 'some' : 'long'
  }
  marks.push(`first ${length(from)}`, `second ${length(to)}`)
  return marks
}

const REACH = 110
const LONG_REACH = 260

/** What is told of sets and rests in the teaching of each. */
function ofDoses({ own }: LinkedClass, { index, from, to }: Pair): string[] {
  const inside = (at: number, span: TextSpan): DoseHit[] =>
    (own[at] ?? []).filter(({ offset }) => offset >= span.offset && offset < span.end)
  const [first, second] = [inside(index, from), inside(index + 1, to)]
  const marks: string[] = []
  for (const [which, hits] of [
    ['first', first],
    ['second', second],
  ] as const) {
    if (hits.some(({ dose }) => dose.sets !== null && dose.reps !== null)) marks.push(`${which} tells its sets`)
    else if (hits.some(({ dose }) => dose.sets !== null)) marks.push(`${which} tells sets`)
    if (hits.some(({ dose }) => dose.restSeconds !== null)) marks.push(`${which} tells a rest`)
    if (hits.length === 0) marks.push(`${which} tells no dose`)
  }
  const sets = [first, second].map((hits) => hits.find(({ dose }) => dose.sets !== null)?.dose.sets?.max ?? null)
  if (sets[0] != null && sets[1] != null) marks.push(sets[0] === sets[1] ? 'same sets' : 'other sets')
  return marks
}
