/** Picks the likeliest answers to what the dose of each exercise is; those that are done in turns answer together. */
import { told } from './dose-option.ts'
import type { DoseCase, DoseOption, DoseQuestion } from './dose-option.ts'
import { DoseOptions } from './dose-options.ts'
import type { OptionScale, Weighed } from './weigh-options.ts'

/** The answers to each question, the likeliest first. */
type WeighedDose = Record<DoseQuestion, Weighed[]>

/** The answers chosen for one exercise. */
export type PickedDose = Record<DoseQuestion, Chosen>

/** An answer with its share of the odds of all, 0-1, and the one that comes next. */
interface Chosen extends Weighed {
  second: DoseOption | null
}

/** The answers chosen for each exercise. */
export function pickAnswers(cases: readonly DoseCase[], scale: OptionScale): PickedDose[] {
  let before: DoseOption[] = []
  const alone = cases.map((asked) => {
    const questions = new DoseOptions(asked, before)
    const dose = answersTo(questions, scale.weigh('amount', questions.ask('amount', null)), scale)
    before = (['amount', 'sets', 'rest'] as const).flatMap((question) => dose[question][0]?.option ?? [])
    return { questions, dose }
  })
  const weighed = alone.map(({ questions, dose }, index) => {
    const mates = (cases[index]?.members ?? []).map((member) => alone[member]?.dose.amount ?? [])
    return asStation(questions, dose, mates, scale)
  })
  return cases.map((asked, index) => {
    const together = asked.members.flatMap((member) => weighed[member] ?? [])
    const choose = (question: DoseQuestion): Chosen => {
      const answers = weighed[index]?.[question] ?? []
      const [first, second] = SHARED.has(question)
        ? agreed(
            answers,
            together.map((one) => one[question]),
          )
        : answers
      return { option: NONE, share: 1, ...first, second: second?.option ?? null }
    }
    const own = weighed[index]
    const rest = choose('rest')
    const amount = asRest(choose('amount'), own?.amount ?? [], rest)
    const sets = besideAmount(choose('sets'), own?.sets ?? [], amount)
    const hold = besideAmount(choose('hold'), own?.hold ?? [], amount)
    return { amount, hold, sets, sides: choose('sides'), rest, scheme: choose('scheme') }
  })
}

/** What is the same for all exercises that are done in turns. */
const SHARED: ReadonlySet<DoseQuestion> = new Set(['sets', 'rest', 'scheme'])

/**
 * What some exercises say together, as answers of one of them: the mean of their shares of each answer. Nothing is told where all of
 * them tell nothing: of that it is the geometric mean, since rounds and the rest behind them are told once, for one of them.
 */
export function agreed(own: readonly Weighed[], all: readonly (readonly Weighed[])[]): Weighed[] {
  if (all.length < 2) return [...own]
  const answers = new Map<string, { option: DoseOption; sum: number; product: number }>()
  for (const { option } of [own, ...all].flat())
    if (!answers.has(option.key)) answers.set(option.key, { option, sum: 0, product: 1 })
  for (const weighed of all) {
    const shares = new Map(weighed.map(({ option, share }) => [option.key, share]))
    for (const [key, answer] of answers) {
      const share = shares.get(key) ?? 0
      answer.sum += share
      answer.product *= share
    }
  }
  const means = [...answers.values()].map(({ option, sum, product }) => ({
    option,
    share: option.kind === null ? product ** (1 / all.length) : sum / all.length,
  }))
  const whole = means.reduce((total, { share }) => total + share, 0)
  return means.map(({ option, share }) => ({ option, share: share / whole })).toSorted((a, b) => b.share - a.share)
}

/** The answers to all questions, where these are the ones to the first. */
function answersTo(questions: DoseOptions, amount: Weighed[], scale: OptionScale): WeighedDose {
  const chosen = amount[0]?.option ?? null
  const ask = (question: DoseQuestion): Weighed[] => scale.weigh(question, questions.ask(question, chosen))
  return {
    amount,
    hold: ask('hold'),
    sets: ask('sets'),
    sides: ask('sides'),
    rest: ask('rest'),
    scheme: ask('scheme'),
  }
}

/**
 * What is done in turns for a time is done for the same time: in 38 of 41 annotated groups. So those that take a time say together
 * which, and what is asked behind it is asked anew.
 */
function asStation(
  questions: DoseOptions,
  dose: WeighedDose,
  mates: readonly (readonly Weighed[])[],
  scale: OptionScale,
): WeighedDose {
  const timed = mates.filter(isTimed)
  if (!isTimed(dose.amount) || timed.length < 2) return dose
  const known = new Set(dose.amount.map(({ option }) => option.key))
  const best = agreed(dose.amount, timed).find(({ option: { kind, key } }) => kind === 'workSeconds' && known.has(key))
  if (!best || best.option === dose.amount[0]?.option) return dose
  const amount = [best, ...dose.amount.filter(({ option }) => option !== best.option)]
  return answersTo(questions, amount, scale)
}

/** "Twenty on, ten off", later "twenty five on, five off": where the rest is the one that changes, the time is, too. */
function asRest(amount: Chosen, own: readonly Weighed[], rest: Chosen): Chosen {
  const changing = new Set(rest.option.rows.map(({ ofAmount }) => ofAmount))
  const other = amount.option.kind === 'workSeconds' && own.find(({ option }) => changing.has(option.key))
  return other ? { option: other.option, share: rest.share, second: amount.option } : amount
}

/** "One set of ten, and pause for two seconds": what one phrase says beside the amount holds, unless another answer is likelier than none; the odds of none are its own. */
function besideAmount(chosen: Chosen, own: readonly Weighed[], { option: amount }: Chosen): Chosen {
  if (chosen.option.kind !== null || amount.kind !== 'reps') return chosen
  const phrases = told(amount.rows).filter(({ place }) => place === 'main')
  const beside = own.find(({ option }) =>
    option.rows.some(({ how, told: one }) => how === 'said' && one !== null && phrases.includes(one)),
  )
  return beside ? { option: beside.option, share: beside.share + chosen.share, second: null } : chosen
}

const isTimed = ([first]: readonly Weighed[]): boolean => first?.option.kind === 'workSeconds'

/** Nothing is told. */
export const NONE: DoseOption = { key: '', kind: null, value: null, marks: [], rows: [] }
