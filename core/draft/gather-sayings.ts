/** Gathers for each exercise the sayings that may be meant for it, and marks what ties each to it. */
import type { DoseHit } from './find-dose-hits.ts'
import type { Teaching } from './find-exercises.ts'
import type { Group } from './find-groups.ts'
import type { Owning } from './find-owners.ts'
import { AMOUNT_KINDS, markSayings, OF_LATER_ROUND, saysAmountOf } from './mark-sayings.ts'
import type { Saying } from './mark-sayings.ts'
import type { TextSpan } from './place-spans.ts'
import { pushTo } from './push-to.ts'
import type { Speech } from './read-speech.ts'
import { isRestTold } from './rest-options.ts'
import { plainWords } from './split-speech.ts'
import { stemOf, tiesOf } from './tie-sayings.ts'
import { turnsOf, turnTies } from './tie-turns.ts'
import type { AskedFor, NearName, Place, PlacedSaying, Turns } from './tie-sayings.ts'
import { FOR_ALL, FOR_PART, IN_TURNS } from './words/en/default-words.ts'
import { HOW_OFTEN, ROUND_WORDS, SAID_OF_SOME } from './words/en/saying-words.ts'

/** A saying as seen from an exercise. */
export interface Told {
  saying: Saying
  place: Place
  /** Given to it by its name or its place (find-owners.ts). */
  owned: boolean
  /** What ties it to the exercise. */
  marks: string[]
}

/** The sayings of a class, ready to be asked for each exercise. */
export class SayingFinder {
  readonly #speech: Speech
  readonly #teachings: readonly Teaching[]
  readonly #placed: PlacedSaying[]
  /** Those that reach beyond the place where they are said. */
  readonly #far: PlacedSaying[]
  /** Those of a later round, and those that exercises done in turns may have in common. */
  readonly #later: PlacedSaying[]
  readonly #named = new Map<number, PlacedSaying[]>()
  readonly #at = new Map<number, PlacedSaying[]>()
  readonly #starts: readonly number[]
  readonly #groups: readonly Group[]
  /** The exercises that what is said at a character is given to. */
  readonly #owners = new Map<number, number[]>()

  /** @param own what is given to each exercise */
  constructor(
    speech: Speech,
    hits: readonly DoseHit[],
    owning: Owning,
    { groups, own }: { groups: readonly Group[]; own: readonly (readonly DoseHit[])[] },
  ) {
    this.#groups = groups
    own.forEach((given, index) => {
      for (const { offset } of given) pushTo(this.#owners, offset, index)
    })
    this.#speech = speech
    this.#teachings = owning.teachings
    const sayings = markSayings(speech, hits)
    const sentences = new Map<number, ToldSentence>()
    this.#placed = sayings.map((saying) => place(speech, saying, owning, sentences))
    this.#far = this.#placed.filter(
      (one) =>
        one.hit.dose.distanceM !== null ||
        ((!one.hit.loose || isRestTold(speech, one.hit)) && (one.inside === null || isForMany(one))),
    )
    this.#later = this.#placed.filter(
      ({ hit, marks }) => !hit.steps && (marks.includes(OF_LATER_ROUND) || mayBeShared(speech, hit)),
    )
    for (const one of this.#placed) if (!one.hit.steps) pushTo(this.#at, one.hit.offset, one)
    for (const one of this.#placed)
      for (const teaching of new Set(
        [...one.inSentence, ...(one.lastBefore ? [one.lastBefore] : [])].flatMap((near) => near.teaching ?? []),
      ))
        pushTo(this.#named, teaching, one)
    this.#starts = owning.teachings.flatMap(({ spans: [main] }) => main?.offset ?? []).toSorted((a, b) => a - b)
  }

  /** Those for one exercise, in order. @param own those given to it, as meant for it @param common those said for its group or for all */
  toldFor(index: number, own: readonly DoseHit[], common: readonly DoseHit[]): Told[] {
    const teaching = this.#teachings[index]
    const [main, ...returns] = teaching?.spans ?? []
    if (!teaching || !main) return []
    const [startMs, endMs] = [this.#speech.timeOf(main.offset), this.#speech.timeOf(main.end)]
    const nextStart = this.#starts.find((offset) => offset > main.offset) ?? Infinity
    const turns = turnsOf(index, this.#groups, this.#teachings)
    const wanted = new Set<PlacedSaying>()
    if (turns.mates.size > 0) {
      const until = Math.min(
        turns.end + LATER_CHARACTERS,
        this.#starts.find((offset) => offset > turns.end) ?? Infinity,
      )
      for (const one of this.#later) if (one.hit.offset > turns.offset && one.hit.offset < until) wanted.add(one)
    }
    for (const one of within(this.#placed, startMs - CLOSE_BEFORE_MS, endMs + CLOSE_BEHIND_MS)) wanted.add(one)
    for (const span of returns) for (const one of this.#within(span)) wanted.add(one)
    for (const one of this.#within({ offset: main.end, end: Math.min(nextStart, main.end + LONGEST_GAP) }))
      wanted.add(one)
    for (const one of this.#named.get(index) ?? []) wanted.add(one)
    for (const one of within(this.#far, startMs - ANNOUNCED_MS, startMs + ROUNDS_MS))
      if (reaches(one, startMs)) wanted.add(one)
    const given = new Map(own.flatMap((hit) => (this.#at.get(hit.offset) ?? []).map((one) => [one, hit] as const)))
    for (const one of given.keys()) wanted.add(one)
    const shared = new Set(common.flatMap((hit) => this.#at.get(hit.offset)?.find((one) => one.hit === hit) ?? []))
    for (const one of shared) wanted.add(one)
    const asked = { speech: this.#speech, teaching, index, main, returns, nextStart, startMs, endMs, turns }
    const told = [...wanted]
      .slice(0, MOST_TOLD)
      .toSorted((a, b) => a.hit.offset - b.hit.offset)
      .map((one): Told => {
        const where = placeOf(one, asked)
        const meant = given.get(one)
        const owned = meant !== undefined
        const ties = where === 'main' ? [] : tiesOf(one, asked)
        const marks = [
          ...placeMarks(one, where, owned, asked),
          ...ties,
          ...turnTies(one, where, asked),
          ...(owned ? [] : givenMarks(this.#owners.get(one.hit.offset) ?? [], index, turns)),
          ...(shared.has(one) ? ['common'] : []),
        ]
        return { saying: meant ? { ...one, hit: meant } : one, place: where, owned, marks }
      })
    for (const one of told) one.marks.push(...orderMarks(one, told))
    return told
  }

  #within({ offset, end }: TextSpan): PlacedSaying[] {
    return this.#placed.slice(
      firstFrom(this.#placed, ({ hit }) => hit.offset >= offset),
      firstFrom(this.#placed, ({ hit }) => hit.offset >= end),
    )
  }
}

/** So long in front of a teaching and behind it any number may be meant for it. */
const CLOSE_BEFORE_MS = 30_000
const CLOSE_BEHIND_MS = 15_000
/** More is said of no exercise. */
const MOST_TOLD = 400
/** Characters behind the last exercise of a group in which its later rounds are told. */
const LATER_CHARACTERS = 5000
/** Characters behind a teaching that still are about it. */
const LONGEST_GAP = 600
/** What is announced holds for so long; rounds are told so long behind the start at most. */
const ANNOUNCED_MS = 60 * 60_000
const ROUNDS_MS = 400_000

/** Those said from one time to another. */
function within(placed: readonly PlacedSaying[], fromMs: number, toMs: number): PlacedSaying[] {
  return placed.slice(
    firstFrom(placed, ({ atMs }) => atMs >= fromMs),
    firstFrom(placed, ({ atMs }) => atMs > toMs),
  )
}

function reaches({ atMs, inside, hit, tells }: PlacedSaying, startMs: number): boolean {
  if (atMs <= startMs) return startMs - atMs <= ANNOUNCED_MS
  return inside !== null && atMs - startMs <= ROUNDS_MS && tells.includes('rounds') && isRounds(hit)
}

function isForMany({ hit, tells }: PlacedSaying): boolean {
  return tells.includes('for all') || (tells.includes('rounds') && isRounds(hit))
}

/** A time, a rest, or how often: what those that go in turns have in common. */
function mayBeShared(speech: Speech, hit: DoseHit): boolean {
  return hit.dose.workSeconds !== null || isOften(speech, hit) || isRestTold(speech, hit)
}

/** Sets, or so many times. */
function isOften({ text }: Speech, { dose, offset, end, loose }: DoseHit): boolean {
  if (dose.sets !== null) return true
  return !loose && dose.reps !== null && HOW_OFTEN.test(text.slice(offset, end))
}

function isRounds({ dose }: DoseHit): boolean {
  return dose.sets !== null || (dose.workSeconds !== null && dose.restSeconds !== null)
}

function firstFrom<One>(list: readonly One[], isPast: (one: One) => boolean): number {
  let low = 0
  let high = list.length
  while (low < high) {
    const middle = (low + high) >> 1
    const one = list[middle]
    if (one !== undefined && isPast(one)) high = middle
    else low = middle + 1
  }
  return low
}

/** What a sentence with an amount tells besides it. */
type ToldSentence = Pick<PlacedSaying, 'tells' | 'some' | 'inSentence' | 'lastBefore' | 'around'>

function tellsOf(speech: Speech, sentence: number, owning: Owning): ToldSentence {
  const namesIn = (index: number): NearName[] =>
    (owning.bySentence.get(index) ?? []).map((naming) => ({
      ...{ teaching: owning.teachingOf(naming), offset: naming.offset, end: naming.end },
    }))
  const [before, inSentence, behind] = [namesIn(sentence - 1), namesIn(sentence), namesIn(sentence + 1)]
  const words = speech.sentences[sentence]?.words ?? ''
  const tells = TELLS.filter(([, pattern]) => pattern.test(words)).map(([what]) => what)
  const some = SAID_OF_SOME.filter(([, pattern]) => pattern.test(words)).map(([kind]) => kind)
  const around = new Set([...before, ...inSentence, ...behind].flatMap((near) => near.teaching ?? []))
  return { tells, some, inSentence, lastBefore: before.at(-1) ?? null, around }
}

const TELLS: readonly (readonly [string, RegExp])[] = [
  ['for all', FOR_ALL],
  ['for part', FOR_PART],
  ['in turns', IN_TURNS],
  ['rounds', ROUND_WORDS],
]

function place(speech: Speech, saying: Saying, owning: Owning, sentences: Map<number, ToldSentence>): PlacedSaying {
  const { hit } = saying
  const sentence = speech.sentences[hit.sentence]
  const known = sentences.get(hit.sentence) ?? tellsOf(speech, hit.sentence, owning)
  sentences.set(hit.sentence, known)
  const from = Math.max(sentence?.offset ?? 0, hit.offset - CLAUSE_BEFORE)
  const clause = speech.text.slice(from, Math.min(sentence?.end ?? 0, hit.end + CLAUSE_BEHIND))
  return {
    ...saying,
    ...known,
    atMs: speech.timeOf(hit.offset),
    inside: owning.teachingAt(hit.offset),
    behindTeaching: owning.teachingAt(hit.offset - JUST_BEHIND),
    clause: plainWords(clause).split(' ').map(stemOf),
  }
}

/** Characters. */
const CLAUSE_BEFORE = 60
const CLAUSE_BEHIND = 30
const JUST_BEHIND = 60

function placeOf({ hit, inside }: PlacedSaying, { main, returns, nextStart }: AskedFor): Place {
  const isIn = (span: TextSpan): boolean => hit.offset >= span.offset && hit.offset < span.end
  if (isIn(main)) return 'main'
  if (returns.some(isIn)) return 'return'
  if (hit.offset < main.offset) return inside === null ? 'before' : 'earlier'
  return inside === null && hit.offset < nextStart ? 'behind' : 'later'
}

function placeMarks(
  { hit, instead }: PlacedSaying,
  where: Place,
  owned: boolean,
  { speech, main }: AskedFor,
): string[] {
  const whose = `${where} ${owned ? 'owned' : 'not owned'}`
  const marks: string[] = [where, whose]
  if (hit.dose.sets !== null && saysAmountOf(hit.dose)) marks.push(`whole ${whose}`)
  if (hit.corrects) marks.push(`corrects ${whose}`)
  if (!hit.bare && saysAmountOf(hit.dose)) marks.push(`sure ${whose}`)
  if (hit.bare) marks.push(`bare ${where}`)
  if (hit.loose) marks.push(`loose ${where}`)
  if (hit.forAll) marks.push(`said for all ${where}`)
  if (hit.steps) marks.push(`row ${where}`)
  if (instead) marks.push(`instead ${where}`)
  if (where !== 'main') return marks
  const behind = hit.sentence - speech.sentenceAt(main.offset)
  const left = speech.sentenceAt(main.end - 1) - hit.sentence
  marks.push(`from start ${few(behind)}`, `to end ${few(left)}`)
  return marks
}

function few(sentences: number): string {
  if (sentences > 6) return 'far'
  return sentences > 3 ? 'some' : String(sentences)
}

/** What is given to another exercise is rarely meant for this one, unless both go in turns. */
function givenMarks(owners: readonly number[], index: number, { mates }: Turns): string[] {
  if (owners.length === 0) return []
  if (owners.some((owner) => mates.has(owner))) return ['given to a mate']
  return [
    'given to another',
    `given to ${owners.includes(index - 1) ? 'the one before' : owners.includes(index + 1) ? 'the one behind' : 'one farther off'}`,
  ]
}

/** Whether it is the first, the last or the only one of those given to the exercise that fill the same fields. */
function orderMarks({ saying: { hit } }: Told, told: readonly Told[]): string[] {
  const fields = (['sets', ...AMOUNT_KINDS, 'restSeconds'] as const).filter((field) => hit.dose[field] !== null)
  const same = told.filter(
    ({ owned, saying }) =>
      owned && saying.hit.bare === hit.bare && fields.some((field) => saying.hit.dose[field] !== null),
  )
  const at = same.findIndex((other) => other.saying.hit === hit)
  if (at < 0) return []
  if (same.length === 1) return ['only one']
  if (at === 0) return ['first of more']
  return [at === same.length - 1 ? 'last of more' : 'between']
}
