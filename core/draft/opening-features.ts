/** What speaks for and against a sentence opening the teaching of another exercise, whether or not it is named there. */
import type { CueKind } from '../../shared/log-sheet.ts'
import type { HeardTurn } from './hear-turns.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { ROUND_CALL } from './words/en/call-words.ts'
import { CALLS_BACK, KIT_TOLD, LEADS_ON, OPENS_TALK, PLACE_TOLD, SET_OVER } from './words/en/opening-words.ts'
import { groupOf, WORD_GROUPS } from './words/en/word-groups.ts'

/**
 * The features of every sentence, in order; each is a short phrase, the weights are filed under it.
 * @param odds by sentence the greatest log odds of a name in it to start an exercise; none = no name
 */
export function openingFeatures(
  speech: Speech,
  odds: ReadonlyMap<number, number>,
  heard: readonly HeardTurn[],
): string[][] {
  return speech.sentences.map((_, index) => [
    ...sentenceFeatures(speech, index),
    ...heardFeatures(heard, index),
    ...nameFeatures(odds, index),
  ])
}

/** Those that do not look at names. */
export function sentenceFeatures({ sentences }: Speech, index: number): string[] {
  const sentence = sentences[index]
  if (!sentence) return []
  return [
    'always',
    ...ofRoles(sentences, index),
    ...ofCues(sentences, index),
    ...ofWords(sentences, sentence, index),
    `place ${placeOf(index / sentences.length)}`,
  ]
}

function placeOf(share: number): number {
  return share < 0.04 ? 0 : share < 0.1 ? 1 : share > 0.95 ? 3 : 2
}

function ofRoles(sentences: readonly Sentence[], index: number): string[] {
  const role = (step: number): string => sentences[index + step]?.role ?? 'edge'
  let since = 1
  while (since <= LONG_AGO && !OVER.has(role(-since))) since += 1
  return [
    ...[`role ${role(0)}`, `role before ${role(-1)}`, `role two before ${role(-2)}`, `role behind ${role(1)}`],
    ...[`roles ${role(-1)} ${role(0)}`, `roles ${role(-2)} ${role(-1)} ${role(0)}`],
    `since work ${since <= 2 ? since : since <= 4 ? 3 : since <= 8 ? 4 : 5}`,
  ]
}

const LONG_AGO = 12
const OVER: ReadonlySet<string> = new Set(['work', 'end', 'edge'])

/** The cues around it: set-up lies ahead of an opening; faults, easier options and cautions lie behind. */
function ofCues(sentences: readonly Sentence[], index: number): string[] {
  const near = [-3, -2, -1, 0, 1, 2, 3].flatMap((step) =>
    kindsOf(sentences, index + step, index + step + 1).map((kind) => `cue ${step} ${kind}`),
  )
  const [ago, soon] = [kindsOf(sentences, index - 5, index), kindsOf(sentences, index + 1, index + 5)]
  const taught = sentences
    .slice(index, index + 6)
    .flatMap(({ cues }) => cues.filter(({ kind }) => kind === 'setup' || kind === 'execution'))
  const setUp = (from: number, to: number, also?: CueKind): number =>
    sentences
      .slice(Math.max(0, from), to)
      .filter(({ cues }) => cues.some(({ kind }) => kind === 'setup' || kind === also)).length
  return [
    ...near,
    ...TELLING.filter((kind) => ago.includes(kind)).map((kind) => `ago ${kind}`),
    ...TELLING.filter((kind) => soon.includes(kind)).map((kind) => `soon ${kind}`),
    `taught ${Math.min(4, taught.length)}`,
    `set up before ${Math.min(3, setUp(index - 6, index))}`,
    `many ${manyOf(sentences, index - 6, index)} ${manyOf(sentences, index, index + 6)}`,
    `set up ${Math.min(2, setUp(index - 5, index))} ${Math.min(3, setUp(index, index + 4, 'equipment'))}`,
  ]
}

const TELLING: readonly CueKind[] = ['setup', 'fault', 'easier', 'harder', 'caution', 'breathing', 'execution']

function kindsOf(sentences: readonly Sentence[], from: number, to: number): CueKind[] {
  const kinds = sentences.slice(Math.max(0, from), Math.max(0, to)).flatMap(({ cues }) => cues.map(({ kind }) => kind))
  return [...new Set(kinds)]
}

function manyOf(sentences: readonly Sentence[], from: number, to: number): number {
  const cues = sentences.slice(Math.max(0, from), to).reduce((sum, sentence) => sum + sentence.cues.length, 0)
  return Math.min(4, cues >> 1)
}

function ofWords(sentences: readonly Sentence[], { words, cues, offset }: Sentence, index: number): string[] {
  const own = words.split(' ')
  const before = sentences[index - 1]?.words ?? ''
  const last = before.split(' ')
  const [first = '', second = ''] = own
  const flag = (name: string, isSo: boolean): string[] => (isSo ? [name] : [])
  return [
    ...[
      `first ${first}`,
      `group ${groupOf(first) ?? '-'}`,
      `groups ${groupOf(first) ?? '-'} ${groupOf(second) ?? '-'}`,
    ],
    ...[`last before ${last.at(-1) ?? ''}`, `first before ${last[0] ?? ''}`],
    ...[`length ${lengthOf(own.length)}`, `length before ${lengthOf(last.length)}`],
    ...flag('kit', KIT_TOLD.test(words)),
    ...flag('place told', PLACE_TOLD.test(words)),
    ...flag('number', NUMBER.test(words)),
    ...flag('number before', NUMBER.test(before)),
    `talk ${Number(OPENS_TALK.test(words))} ${Number(LEADS_ON.test(words))} ${Number(/\byour?\b/.test(words))}`,
    `over before ${Number(SET_OVER.test(before))}`,
    `opens with ${cues[0]?.offset === offset ? cues[0].kind : '-'}`,
    `kin ${kinOf(sentences, index)}`,
  ]
}

const NUMBER = new RegExp(`\\b(?:${WORD_GROUPS.num})\\b`)

function lengthOf(words: number): number {
  return words <= 2 ? 0 : words <= 5 ? 1 : words <= 10 ? 2 : 3
}

/** How many of the longer words ahead were said shortly before. */
function kinOf(sentences: readonly Sentence[], index: number): number {
  const before = new Set(sentences.slice(Math.max(0, index - 8), index).flatMap(longWords))
  const ahead = new Set(sentences.slice(index, index + 5).flatMap(longWords))
  let shared = 0
  for (const word of ahead) if (before.has(word)) shared += 1
  return ahead.size === 0 ? 0 : Math.min(4, Math.floor((12 * shared) / ahead.size))
}

const LONG_WORDS = new WeakMap<Sentence, readonly string[]>()

function longWords(sentence: Sentence): readonly string[] {
  const known = LONG_WORDS.get(sentence)
  if (known) return known
  const words = sentence.words.split(' ').filter((word) => word.length > 3)
  LONG_WORDS.set(sentence, words)
  return words
}

/** What the names in it and near it tell. */
export function nameFeatures(odds: ReadonlyMap<number, number>, index: number): string[] {
  const at = (...steps: number[]): number => Math.max(...steps.map((step) => odds.get(index + step) ?? -9))
  const [here, ahead, before] = [at(0), at(1, 2), at(-1, -2)].map(sure)
  return [`name ${here}`, `name ahead ${ahead}`, `name before ${before}`, `names ${here} ${ahead}`]
}

function sure(odds: number): number {
  return odds > 3 ? 4 : odds > 1.2 ? 3 : odds > 0 ? 2 : odds > -1.5 ? 1 : 0
}

/** What the net hears in it and near it. */
export function heardFeatures(heard: readonly HeardTurn[], index: number): string[] {
  const most = (of: keyof HeardTurn, ...steps: number[]): number =>
    heardStep(Math.max(...steps.map((step) => heard[index + step]?.[of] ?? -9)))
  const [opens, comesBack] = [most('opens', 0), most('comesBack', 0)]
  return [
    `heard opens ${opens}`,
    `heard back ${comesBack}`,
    `heard ${opens} ${comesBack}`,
    `heard opens near ${most('opens', -2, -1)} ${opens} ${most('opens', 1, 2)}`,
    `heard back near ${most('comesBack', -2, -1)} ${comesBack} ${most('comesBack', 1, 2)}`,
  ]
}

/** Log odds in steps. */
export function heardStep(odds: number): number {
  const step = HEARD_STEPS.findIndex((most) => odds < most)
  return step < 0 ? HEARD_STEPS.length : step
}

const HEARD_STEPS = [-6, -4.5, -3, -2, -1, 0, 1, 2.5, 4]

/** Words that call back, by their names, in a sentence and in the one before; and whether it or one of the three before calls a round. */
export function callsBackAt(
  sentences: readonly Sentence[],
  index: number,
): { isRound: boolean; here: string[]; before: string[] } {
  const callsIn = (at: number): string[] => {
    const said = ` ${sentences[at]?.words ?? ''} `
    return CALLS_BACK.flatMap(([name, pattern]) => (pattern.test(said) ? [name] : []))
  }
  const isRound = [0, 1, 2, 3].some((step) => ROUND_CALL.test(sentences[index - step]?.words ?? ''))
  return { isRound, here: callsIn(index), before: callsIn(index - 1) }
}
