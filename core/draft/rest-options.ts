/** The rest between sets, with what speaks for each. */
import type { Range } from '../../shared/log-sheet.ts'
import { Answers, asBefore, keyOf, sizeOf, withAmount } from './dose-option.ts'
import type { DoseCase, DoseOption } from './dose-option.ts'
import type { DoseHit } from './find-dose-hits.ts'
import { across } from './join-ranges.ts'
import { OF_LATER_ROUND } from './mark-sayings.ts'
import type { Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'
import { REST_WORDS } from './words/en/saying-words.ts'

/** Every time that may be the rest between sets. @param before the answers chosen for the one before @param amount the amount chosen */
export function restOptions(asked: DoseCase, before: readonly DoseOption[], amount: DoseOption | null): DoseOption[] {
  const { told, ruled, scheme, speech, near } = asked
  const answers = new Answers()
  for (const one of told) {
    const { hit } = one.saying
    const { restSeconds, workSeconds } = hit.dose
    const value = workSeconds ?? secondsOf(hit)
    if (restSeconds) answers.add('restSeconds', restSeconds, { how: 'said', told: one, marks: withAmount(one, amount) })
    else if (value && (workSeconds !== null || isRestTold(speech, hit)))
      answers.add('restSeconds', value, {
        ...{ how: workSeconds ? 'from work' : 'from number', told: one },
        marks: [...withAmount(one, amount), ...restMarks(speech, hit)],
      })
  }
  addSpans(asked, answers, amount)
  const ruledKey = ruled?.restSeconds ? keyOf('restSeconds', ruled.restSeconds) : ''
  if (ruled?.restSeconds) answers.add('restSeconds', ruled.restSeconds, { how: 'ruled', told: null, marks: ['alone'] })
  return answers.all(
    (option) => [
      sizeOf(option.value),
      ...asBefore(option, before, scheme),
      ...(scheme ? [`in ${scheme}`] : []),
      ...(option.key === ruledKey ? ['ruled', `ruled ${scheme ?? 'alone'}`] : []),
      ...(near.some(({ restSeconds }) => restSeconds && keyOf('restSeconds', restSeconds) === option.key)
        ? ['as neighbour']
        : []),
    ],
    ['none', ...(scheme ? [`none in ${scheme}`] : []), ...(ruledKey === '' ? [] : ['none though ruled'])],
  )
}

/** "Twenty on, ten off", and in a later round "twenty five on, five off": from five to ten. */
function addSpans({ told, scheme }: DoseCase, answers: Answers, amount: DoseOption | null): void {
  const intervals = told.flatMap((one) => {
    const { workSeconds: work, restSeconds: rest } = one.saying.hit.dose
    return work && rest ? [{ told: one, work, rest }] : []
  })
  intervals.forEach((first, at) => {
    for (const { told: second, work, rest } of intervals.slice(at + 1)) {
      if (keyOf('restSeconds', first.rest) === keyOf('restSeconds', rest)) continue
      const isLater = second.saying.marks.includes(OF_LATER_ROUND)
      const ofAmount = keyOf('workSeconds', across(first.work, work))
      const marks = [
        ...[isLater ? 'in a later round' : 'in no later round', scheme ?? 'alone', second.place],
        amount?.key === ofAmount ? 'as the amount' : 'not as the amount',
      ]
      answers.add('restSeconds', across(first.rest, rest), { how: 'span', told: second, marks, ofAmount })
    }
  })
}

/** Whether a time or a number is one of a rest, by itself or by what stands around it. */
export function isRestTold(speech: Speech, hit: DoseHit): boolean {
  const { restSeconds, workSeconds } = hit.dose
  if (restSeconds !== null) return true
  if (workSeconds === null && secondsOf(hit) === null) return false
  return restMarks(speech, hit).some((mark) => !WEAK_MARKS.some((weak) => mark.startsWith(weak)))
}

/** These stand beside any number. */
const WEAK_MARKS = ['take', 'then again'] as const

/** A number without a unit that may be seconds: "and there's fifteen after it". */
function secondsOf({ dose: { sets, reps, workSeconds } }: DoseHit): Range | null {
  if (sets !== null || workSeconds !== null || reps === null || reps === 'max') return null
  const { min, max } = reps
  return min !== null && min >= LEAST_SECONDS && max !== null && max <= MOST_SECONDS ? reps : null
}

const LEAST_SECONDS = 5
const MOST_SECONDS = 180
const REST_CHARACTERS = 40

/** What around a time tells of a rest, read once for all exercises that ask. */
function restMarks(speech: Speech, hit: DoseHit): readonly string[] {
  const known = REST_MARKS.get(hit)
  if (known) return known
  const { text } = speech
  const before = plainWords(text.slice(Math.max(0, hit.offset - REST_CHARACTERS), hit.offset))
  const behind = plainWords(text.slice(hit.offset, hit.end + REST_CHARACTERS))
  const marks = REST_WORDS.flatMap(([what, pattern]) => [
    ...(pattern.test(before) ? [`${what} before`] : []),
    ...(pattern.test(behind) ? [`${what} behind`] : []),
  ])
  REST_MARKS.set(hit, marks)
  return marks
}

const REST_MARKS = new WeakMap<DoseHit, readonly string[]>()
