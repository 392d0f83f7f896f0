/** The questions that make a dose: how much, how long held, how often, on each side, how long between, arranged how. */
import type { Range } from '../../shared/log-sheet.ts'
import { readDose } from '../dose/read-dose.ts'
import { amountOptions } from './amount-options.ts'
import { countGoes } from './count-goes.ts'
import { amountKindOf, Answers, asBefore, keyOf, sizeOf, told, withAmount } from './dose-option.ts'
import type { DoseCase, DoseOption, DoseQuestion } from './dose-option.ts'
import type { Told } from './gather-sayings.ts'
import { addSetSpans } from './level-spans.ts'
import { SAID_BEFORE } from './mark-sayings.ts'
import type { Speech } from './read-speech.ts'
import { restOptions } from './rest-options.ts'
import { schemeOptions } from './scheme-options.ts'
import { plainWords } from './split-speech.ts'
import {
  AGAIN_BEHIND,
  BACK_TO_OTHER,
  EVERY_MINUTE,
  IN_TOTAL,
  OTHER_SIDE,
  SETS_AS_THEY_COME,
  SIDE_WORD,
  STEP_WORDS,
} from './words/en/saying-words.ts'

/** The questions of one exercise. */
export class DoseOptions {
  readonly #case: DoseCase
  readonly #before: readonly DoseOption[]

  /** @param before the answers chosen for the exercise before */
  constructor(asked: DoseCase, before: readonly DoseOption[]) {
    this.#case = asked
    this.#before = before
  }

  /** The answers to one question. @param amount the amount chosen */
  ask(question: DoseQuestion, amount: DoseOption | null): DoseOption[] {
    if (question === 'amount') return amountOptions(this.#case, this.#before)
    if (question === 'hold') return this.#holds(amount)
    if (question === 'sets') return this.#sets(amount)
    if (question === 'scheme') return schemeOptions(this.#case, amount)
    return question === 'rest' ? restOptions(this.#case, this.#before, amount) : this.#sides(amount)
  }

  /** A hold inside each repetition. */
  #holds(amount: DoseOption | null): DoseOption[] {
    const { ruled, still } = this.#case
    const answers = new Answers()
    for (const one of this.#case.told)
      for (const kind of ['holdSeconds', 'workSeconds'] as const) {
        const value = one.saying.hit.dose[kind]
        const how = kind === 'holdSeconds' ? 'said' : 'from work'
        if (!value) continue
        const { hit } = one.saying
        const verb = HOLD_VERB.exec(this.#case.speech.text.slice(hit.offset, hit.end))?.[0].toLowerCase()
        const isBeside = hit.dose.reps !== null
        const marks = [
          ...withAmount(one, amount),
          ...(verb ? [`told ${verb}`, `told ${verb} ${isBeside ? 'beside reps' : 'alone'}`] : []),
        ]
        answers.add('holdSeconds', value, { how, told: one, marks })
      }
    const ruledKey = ruled?.holdSeconds ? keyOf('holdSeconds', ruled.holdSeconds) : ''
    if (ruled?.holdSeconds)
      answers.add('holdSeconds', ruled.holdSeconds, { how: 'ruled', told: null, marks: ['alone'] })
    return answers.all(
      ({ key, value }) => [
        sizeOf(value),
        `beside ${String(amount?.kind)}`,
        ...(still ? ['still'] : []),
        ...(key === ruledKey ? ['ruled'] : []),
      ],
      ['none', ...(ruledKey === '' ? [] : ['none though ruled'])],
    )
  }

  #sets(amount: DoseOption | null): DoseOption[] {
    const { told: sayings, ruled, teaching, scheme, near } = this.#case
    const answers = new Answers()
    const taken = setsTakenBack(sayings)
    for (const one of sayings)
      if (!taken.some((value) => isSameRange(one.saying.hit.dose.sets, value))) this.#addSets(answers, one, amount)
    addSetSpans(this.#case.speech, sayings, answers)
    const returns = teaching.spans.length - 1
    const addCount = (sets: number, how: string, ...marks: string[]): void => {
      answers.add('sets', { min: sets, max: sets }, { how, told: null, marks })
    }
    if (returns > 0 && returns < MOST_RETURNS) addCount(returns + 1, 'returns', String(returns))
    for (const one of told(amount?.rows ?? [])) this.#addSteps(answers, one, amount)
    for (const [mark, sets] of this.#setsAsTheyCome(amount)) addCount(sets, 'as they come', mark)
    this.#addGoes(addCount, amount)
    const ruledKey = ruled?.sets ? keyOf('sets', ruled.sets) : ''
    if (ruled?.sets) answers.add('sets', ruled.sets, { how: 'ruled', told: null, marks: ['alone'] })
    const of = String(amount?.kind)
    return answers.all(
      (option) => {
        const { key, value } = option
        const alike = near.filter(({ sets }) => sets && keyOf('sets', sets) === key).length
        return [
          sizeOf(value),
          `of ${of}`,
          ...asBefore(option, this.#before, scheme),
          ...(scheme ? [`in ${scheme}`] : []),
          ...(key === ruledKey ? ['ruled'] : []),
          ...(alike > 0 ? [`as ${String(alike)} neighbours`] : []),
        ]
      },
      [
        'none',
        `none of ${of}`,
        `none, amount said ${String(Math.min(MANY, told(amount?.rows ?? []).length))}`,
        ...(scheme ? [`none in ${scheme}`] : []),
        ...(ruledKey === '' ? [] : ['none though ruled']),
      ],
    )
  }

  /** "Twenty seconds, then thirty, then forty": so many rungs are so many sets, where one rests between them. */
  #addSteps(answers: Answers, { saying: { hit } }: Told, amount: DoseOption | null): void {
    const values = hit.steps?.values ?? hit.dose.repScheme
    if (!values || values.length < 2) return
    const { text } = this.#case.speech
    const around = plainWords(text.slice(Math.max(0, hit.offset - STEPS_BEFORE), hit.end + STEPS_BEHIND))
    const way = (values.at(-1) ?? 0) > (values[0] ?? 0) ? 'rising' : 'falling'
    const told = STEP_WORDS.filter(([, pattern]) => pattern.test(around)).map(([what]) => what)
    const marks = [
      'so many',
      `of ${String(amount?.kind)} ${way}`,
      `${String(values.length)} of them`,
      ...told.map((what) => `told ${what}`),
    ]
    answers.add('sets', { min: values.length, max: values.length }, { how: 'steps', told: null, marks })
  }

  #addSets(answers: Answers, one: Told, amount: DoseOption | null): void {
    const { hit } = one.saying
    const { sets, reps } = hit.dose
    const amounts = ownOf(told(amount?.rows ?? []))
    const isAmount = amounts.includes(one)
    const gaps = amounts.map(({ saying }) => hit.sentence - saying.hit.sentence)
    const gap = gaps.toSorted((a, b) => Math.abs(a) - Math.abs(b))[0]
    const isWhole = isAmount && sets !== null && one.place === 'main'
    const marks = [
      ...(isAmount ? ['with amount'] : []),
      ...(isWhole ? [IN_ONE_PHRASE, `${IN_ONE_PHRASE}, ${sizeOf(sets)}`] : []),
      ...(gap === undefined ? [] : [`gap ${gapOf(gap)}`]),
    ]
    const minutes = minutesOf(this.#case.speech, one)
    if (minutes) answers.add('sets', minutes, { how: 'minutes', told: one, marks })
    if (sets) answers.add('sets', sets, { how: 'said', told: one, marks })
    else if (reps !== null && reps !== 'max' && (reps.max ?? Infinity) <= MOST_SETS) {
      const isTimed = amount !== null && amount.kind !== 'reps'
      if (isTimed ? !hit.loose || one.place === 'main' : !hit.loose && !isAmount)
        answers.add('sets', reps, { how: isTimed ? 'from reps, timed' : 'from reps', told: one, marks })
    }
  }

  /** Goes counted over all that is said while it is done. */
  #addGoes(add: (sets: number, how: string, ...marks: string[]) => void, amount: DoseOption | null): void {
    const { speech, teaching } = this.#case
    const value = amount !== null && typeof amount.value === 'object' ? amount.value : null
    const said = teaching.spans.map(({ offset, end }) => speech.text.slice(offset, end).replace(/[\n\v]/g, ' '))
    const all = countGoes(said.join(' '), value)
    if (!all) return
    add(
      all.goes,
      'goes',
      `by ${String(Math.min(MANY, all.tellings.length))} tellings of ${String(all.goes)}`,
      ...[...new Set(all.tellings)].map((telling) => `by ${telling}`),
      ...(said.length > 1 ? ['with returns'] : []),
    )
  }

  /** "Second set", "another ten", "once more": how it was told, and how many sets there are by then. */
  #setsAsTheyCome(amount: DoseOption | null): [string, number][] {
    const { speech, teaching } = this.#case
    return teaching.spans.flatMap((span, index): [string, number][] => {
      const all = speech.text.slice(span.offset, span.end)
      const said = index === 0 ? (all.split(BACK_TO_OTHER)[0] ?? all) : all
      const where = index === 0 ? 'main' : 'return'
      const found = SETS_AS_THEY_COME.filter(([, pattern]) => {
        const match = pattern.exec(said)
        return match !== null && !isOfOther(said.slice(match.index + match[0].length), amount)
      })
      const isAgain = index === 0 && AGAIN_BEHIND.test(speech.text.slice(span.end, span.end + AGAIN_CHARACTERS))
      return [
        ...found.map(([name, , sets]): [string, number] => [`${name} ${where}`, sets]),
        ...(isAgain ? ([['again behind', 2]] as [string, number][]) : []),
      ]
    })
  }

  #sides(amount: DoseOption | null): DoseOption[] {
    const { ruled, teaching, bothSides, speech } = this.#case
    const withIt = new Set(told(amount?.rows ?? []))
    const marks = new Set<string>([
      'side',
      `of ${String(amount?.kind)}`,
      `sided ${String(teaching.entry?.sided ?? 'unknown')}`,
    ])
    for (const one of this.#case.told) {
      const { dose, offset, end } = one.saying.hit
      if (!dose.perSide) continue
      const isWith = withIt.has(one)
      marks.add(`said ${one.place}`)
      marks.add(isWith ? 'with amount' : 'apart')
      if (amountKindOf(dose) === null) marks.add('alone')
      const word = SIDE_WORD.exec(speech.text.slice(offset, end))?.[0].toLowerCase() ?? 'other'
      marks.add(`${word}${isWith ? ' with' : ''}`)
    }
    if (![...withIt].some(({ saying }) => saying.hit.dose.perSide)) marks.add('amount without side')
    const [main] = teaching.spans
    const words = main ? plainWords(speech.text.slice(main.offset, main.end)) : ''
    const beside = [...withIt].map(({ saying: { hit } }) =>
      plainWords(speech.text.slice(Math.max(0, hit.offset - SIDE_CHARACTERS), hit.end + SIDE_CHARACTERS)),
    )
    if (IN_TOTAL.test(words)) marks.add('total in it')
    if (beside.some((one) => IN_TOTAL.test(one))) marks.add('total beside')
    if (OTHER_SIDE.test(words)) marks.add('other side in it')
    if (beside.some((one) => OTHER_SIDE.test(one))) marks.add('other side beside')
    if (OTHER_SIDE.test(words) && teaching.entry?.sided === true) marks.add('other side in it, sided')
    if (ruled?.perSide === true) marks.add('ruled')
    if (bothSides) marks.add('both told')
    if (bothSides && teaching.entry?.sided === true) marks.add('both told, sided')
    return [
      { key: '', kind: null, value: false, marks: [], rows: [] },
      { key: 'sides', kind: 'sides', value: true, marks: [...marks], rows: [] },
    ]
  }
}

const HOLD_VERB = /\b(?:pause|squeeze|hold|stay|wait|keep|freeze|stop)\b/i
/** "Three sets of ten", where it is taught. */
const IN_ONE_PHRASE = 'in one phrase'
const MANY = 3
/** Characters. */
const STEPS_BEFORE = 50
const STEPS_BEHIND = 90
/** Characters. */
const SIDE_CHARACTERS = 50
const MOST_SETS = 6
const MOST_RETURNS = 5
const AGAIN_CHARACTERS = 90

/** "I said four rounds, make it three": four are done of nothing told before. */
function setsTakenBack(all: readonly Told[]): Range[] {
  return all.flatMap(({ saying }) => {
    const { sets } = saying.hit.dose
    if (!sets || !saying.marks.includes(SAID_BEFORE)) return []
    const isPutRight = all.some(({ saying: { hit } }) => {
      const gap = hit.offset - saying.hit.end
      const { sets: later, reps } = hit.dose
      const other = later ?? (reps !== 'max' && (reps?.max ?? Infinity) <= MOST_SETS ? reps : null)
      return other !== null && gap >= 0 && gap <= NEAR_CHARACTERS && !isSameRange(other, sets)
    })
    return isPutRight ? [sets] : []
  })
}

function isSameRange(one: Range | null, other: Range): boolean {
  return one !== null && one.min === other.min && one.max === other.max
}

/** Characters. */
const NEAR_CHARACTERS = 120

/** "Three of them, every minute, for six": so many minutes are so many sets. */
function minutesOf(speech: Speech, { saying: { hit } }: Told): Range | null {
  const sentence = speech.sentences[hit.sentence]
  if (!sentence || !EVERY_MINUTE.test(sentence.words)) return null
  const { workSeconds, reps } = hit.dose
  if (workSeconds && (workSeconds.min ?? 0) % 60 === 0)
    return { min: (workSeconds.min ?? 0) / 60, max: (workSeconds.max ?? 0) / 60 }
  const isFor =
    /\bfor $/i.test(speech.text.slice(Math.max(0, hit.offset - 4), hit.offset)) ||
    /^for\b/i.test(speech.text.slice(hit.offset, hit.end))
  return isFor && reps !== null && reps !== 'max' ? reps : null
}

/** Those of its own, where there are any. */
function ownOf(all: readonly Told[]): readonly Told[] {
  const own = all.filter(({ owned, place }) => owned || place === 'main')
  return own.length > 0 ? own : all
}

/** "One more set of ten" is none of an exercise that is done eight times. */
function isOfOther(behind: string, amount: DoseOption | null): boolean {
  const number = /^ of ([a-z]+|\d+)\b/i.exec(behind)?.[1]
  const said = number === undefined ? null : (readDose(`${number} reps`)?.reps ?? null)
  const value = amount?.value ?? null
  if (said === null || said === 'max' || value === null || typeof value !== 'object') return false
  return said.min !== value.min || said.max !== value.max
}

function gapOf(sentences: number): string {
  if (Math.abs(sentences) <= 3) return String(sentences)
  return sentences < 0 ? 'before' : 'behind'
}
