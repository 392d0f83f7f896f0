/** Reads the signs of an exercise and of a class from their words. */
import { remember } from '../remember.ts'
import { findEntry } from '../catalogue/find-entry.ts'
import type { CueKind, LogSheet, Prescription, Segment } from '../../shared/log-sheet.ts'
import { plainSentences, readPhrase } from './words/match-phrase.ts'
import type { Phrase } from './words/match-phrase.ts'
import { LOADS, WEIGHT_SAYING } from './words/en/kit-words.ts'
import { SHOWN_WORDS } from './words/en/shown-words.ts'
import {
  ANCHOR_SAYING,
  BREATHING_CUED,
  CLASS_KINDS,
  CLASS_SIGN_WORDS,
  KIT_CLASSES,
  NOTHING_LIFTED,
  NO_ANCHOR,
  SIGN_WORDS,
} from './words/en/sign-words.ts'
import type { Sign, SignWords } from './words/en/sign-words.ts'

const OPTIONS: readonly CueKind[] = ['easier', 'harder', 'equipment']

/**
 * The signs of one segment: what its cues, its name and the words of its dose say. Declined marks say nothing.
 * @param known the catalogue tells how it moves, so that the words need not
 */
export function segmentSignsOf(segment: Segment, known = false): ReadonlySet<Sign> {
  const cues = segment.cues
    .filter((cue) => cue.state !== 'declined')
    .map((cue) => ({ kind: cue.kind, sentences: plainSentences(cue.text) }))
  const dose = plainSentences(doseWords(segment))
  const found = new Set<Sign>()
  for (const { sign, ...words } of [...SIGN_WORDS, ...(known ? [] : SHOWN_WORDS)]) {
    if (saysOne(sentencesFor(words, cues, dose), words.says)) found.add(sign)
  }
  if (cues.some((cue) => cue.kind === 'breathing')) found.add(BREATHING_CUED)
  return found
}

/** The signs of the whole class: where it is, and whether it is of one kind. */
export function classSignsOf(sheet: LogSheet): ReadonlySet<Sign> {
  const titles = [sheet.title, ...sheet.sections.map((section) => section.title)].join('. ')
  const cautions = sheet.classCautions.map((caution) => caution.text)
  const cues = sheet.segments.flatMap((segment) => segment.cues.map((cue) => cue.text))
  const told = plainSentences([titles, ...cautions].join('. '))
  const taught = plainSentences([...sheet.segments.map((segment) => segment.exercise.name), ...cues].join('. '))
  const isLong = sheet.segments.length >= TELLING_LENGTH && cues.length >= TELLING_LENGTH * 4
  const signs = new Set<Sign>()
  for (const { sign, says } of CLASS_SIGN_WORDS) {
    if (saysOne(told, says) || countSaid(taught, says) >= (isLong ? 2 : 1)) signs.add(sign)
  }
  const entries = sheet.segments.map((segment) => findEntry(segment.exercise.name))
  for (const { sign, says, movement, words } of CLASS_KINDS) {
    const of = entries.filter((entry) => entry?.movements.includes(movement)).length
    const isOf = isSaid(sheet.title, says) || (of >= 3 && of * 4 >= entries.length)
    if (isOf || countSaid(taught, words) >= KIND_WORDS) signs.add(sign)
  }
  const kits = sheet.segments.map((segment) => segment.equipment.map((piece) => piece.toLowerCase()))
  for (const { sign, kit } of KIT_CLASSES) {
    const of = kits.filter((pieces) => pieces.includes(kit)).length
    if (of >= 3 && of * 4 >= kits.length) signs.add(sign)
  }
  const isLifted = kits.flat().some((piece) => LOADS.includes(piece)) || saysOne([...told, ...taught], LIFTED)
  if (!isLifted && isLong) signs.add(NOTHING_LIFTED)
  if (isLong && !saysOne([...told, ...taught], ANCHORS)) signs.add(NO_ANCHOR)
  return signs
}

/** A class of so many exercises names its weights somewhere, and speaks of its place more than once. */
const TELLING_LENGTH = 6
/** So many sentences with words of a kind make a class of that kind. */
const KIND_WORDS = 4
const LIFTED = [WEIGHT_SAYING]
const ANCHORS = [ANCHOR_SAYING]

/** True when the text says one of the phrases and does not say it with a "don't" in front. */
export function isSaid(text: string, phrases: readonly string[]): boolean {
  return saysOne(plainSentences(text), phrases)
}

function saysOne(sentences: readonly string[], phrases: readonly string[]): boolean {
  return sentences.some((sentence) => phrases.some((phrase) => built(phrase)(sentence)))
}

function countSaid(sentences: readonly string[], phrases: readonly string[]): number {
  return sentences.filter((sentence) => phrases.some((phrase) => built(phrase)(sentence))).length
}

interface SaidCue {
  kind: CueKind
  sentences: readonly string[]
}

function sentencesFor(
  { kinds, from = 'cues' }: Omit<SignWords, 'sign'>,
  cues: readonly SaidCue[],
  dose: readonly string[],
): string[] {
  const said = cues.filter(({ kind }) => (kinds ? kinds.includes(kind) : !OPTIONS.includes(kind)))
  return [...(from === 'dose' ? [] : said.flatMap((cue) => cue.sentences)), ...(from === 'cues' ? [] : dose)]
}

function doseWords(segment: Segment): string {
  const dose = segment.prescription?.state === 'declined' ? null : segment.prescription
  return [segment.exercise.name, ...segment.exercise.alsoCalled, ...(dose === null ? [] : wordsOf(dose))].join('. ')
}

function wordsOf(dose: Prescription): string[] {
  const own = [dose.load, dose.effort, ...dose.said.map((quote) => quote.text)]
  return own.flatMap((text) => text ?? [])
}

/** "don't", "not", "never" up to two words before a phrase turn it round. */
const NEGATED = /(?: (?:dont|not|never|no|without|avoid|stop|cant|cannot|instead of|rather than)(?: [^ ]+){0,2})$/

const built = remember(5000, (pattern): Phrase => readPhrase(pattern, {}, NEGATED))
