/** What speaks for or against a candidate starting the teaching of an exercise: its place, what stands around it, and the class. */
import type { CueKind } from '../../shared/log-sheet.ts'
import { foldWords } from '../catalogue/fold-words.ts'
import {
  AGAIN,
  BRINGS,
  BRINGS_AT_PLACE,
  CLOSES,
  NOT_NOW,
  ONLY_PASSES,
  PASSES,
  PASSES_AFTER,
  PASSES_BEFORE,
} from './announcing-tests.ts'
import { withIs } from './find-candidates.ts'
import { groupKin, neighbour, othersOf } from './group-kin.ts'
import type { Others } from './group-kin.ts'
import type { Candidate } from './naming.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'
import { NAME_ENDINGS, OPENING_WORDS } from './words/en/announcing.ts'
import { AMOUNT_WORDS } from './words/en/dose-words.ts'
import { ARTICLE, CALLED, IN_TURN, MUSCLE, POINTED_AT, TURN_BEHIND } from './words/en/name-shapes.ts'
import { CHAT, EMPTY_CLAUSES, PRAISE } from './words/en/not-cue-words.ts'
import { anyPhrase, groupOf } from './words/en/word-groups.ts'

/** The features of every candidate, in their order; each feature is a short phrase, the weights are filed under it. */
export function startFeatures(speech: Speech, candidates: readonly Candidate[]): string[][] {
  const scenes = candidates.map((candidate) => sceneOf(speech, candidate))
  const worths = candidates.map((candidate, index) => worthOf(candidate, scenes[index]))
  const byKey = groupKin(candidates, worths)
  const isStretching = speech.sentences.filter(({ words }) => /\bstretch/.test(words)).length >= 3
  return candidates.map((candidate, index) => {
    const scene = scenes[index]
    if (!scene) return []
    const others = othersOf(byKey.get(candidate.key), index)
    const found = new Set<string>([
      ...ofWords(speech, candidate, scene),
      ...ofName(candidate, scene, isStretching),
      ...ofTeaching(speech, candidate, scene),
      ...ofClass(speech, candidates, index, others, worths),
      ...together(candidate, scene, others.before !== undefined),
    ])
    return [...found]
  })
}

/** What stands around a candidate. */
interface Scene {
  sentence: Sentence
  /** Plain words of the sentence before it, those of its clause, and those behind it. */
  before: string
  clause: string
  behind: string
  rawBehind: string
  opens: boolean
  opensSoftly: boolean
  opensClause: boolean
  brings: boolean
  closes: boolean
  inTurn: boolean
  called: boolean
  isPassing: boolean
  cuesHere: Sentence['cues']
  cuesNext: Sentence['cues']
  cuesSoon: Sentence['cues']
  earlier: readonly Sentence[]
}

function sceneOf(speech: Speech, { sentence: index, offset, end }: Candidate): Scene | undefined {
  const sentence = speech.sentences[index]
  if (!sentence) return undefined
  const raw = speech.text.slice(sentence.offset, offset)
  const rawBehind = speech.text.slice(end, Math.max(end, sentence.end))
  const [before, clause] = [withIs(raw), withIs(/[^,;:\v]*$/.exec(raw)?.[0] ?? '')]
  const isSoft = (words: string): boolean => words.split(' ').every((word) => OPENING_WORDS.has(word))
  return {
    ...{ sentence, before, clause, behind: plainWords(rawBehind), rawBehind },
    opens: before === '',
    opensSoftly: before !== '' && isSoft(before),
    opensClause: clause === '' || isSoft(clause),
    brings: BRINGS.test(before) || BRINGS.test(clause),
    closes: CLOSES.test(before) || CLOSES.test(clause),
    inTurn: IN_TURN.test(before) || IN_TURN.test(clause),
    called: CALLED.test(before) || CALLED.test(clause),
    isPassing: PASSES.test(sentence.words) || NOT_NOW.test(sentence.words),
    cuesHere: sentence.cues.filter((cue) => cue.offset >= end),
    cuesNext: speech.sentences[index + 1]?.cues ?? [],
    cuesSoon: speech.sentences.slice(index + 1, index + 4).flatMap(({ cues }) => cues),
    earlier: speech.sentences.slice(Math.max(0, index - 3), index),
  }
}

/** The words around it, and which phrases they are. */
function ofWords(speech: Speech, candidate: Candidate, scene: Scene): string[] {
  const { before, clause, behind, rawBehind, sentence } = scene
  const words = before.split(' ').filter((word) => word !== '')
  const ahead = behind.split(' ').filter((word) => word !== '')
  const inside = sentence.cues.find(
    ({ offset, text }) => offset <= candidate.offset && candidate.offset < offset + text.length,
  )
  return [
    'always',
    `before ${words.at(-1) ?? '^'}`,
    ...(words.length > 1 ? [`before ${words.slice(-2).join(' ')}`] : []),
    `behind ${behind === '' || /^\s*[.!?…\n]/.test(rawBehind) ? '$' : /^\s*[,;:–—\v]/.test(rawBehind) ? ',' : (ahead[0] ?? '$')}`,
    scene.opens ? 'opens' : scene.opensSoftly ? 'opens softly' : scene.opensClause ? 'opens clause' : 'inside',
    ...(scene.opens || scene.opensSoftly || scene.opensClause
      ? []
      : [`words before ${Math.min(3, words.length >> 2)}`]),
    behind === '' ? 'ends' : `words behind ${Math.min(3, ahead.length >> 2)}`,
    `length ${sentence.wordCount <= 3 ? 0 : sentence.wordCount <= 7 ? 1 : sentence.wordCount <= 14 ? 2 : 3}`,
    `in ${inside?.kind ?? 'no cue'}`,
    ...flags({
      brings: scene.brings,
      closes: scene.closes,
      'in turn': scene.inTurn,
      called: scene.called,
      'brings by place': BRINGS_AT_PLACE.test(clause),
      'pointed at': POINTED_AT.test(clause),
      article: ARTICLE.test(before),
      'passing before': PASSES_BEFORE.test(before),
      'only passing': ONLY_PASSES.test(before),
      'passing behind': PASSES_AFTER.test(behind),
      'passing sentence': PASSES.test(sentence.words),
      'not today': NOT_NOW.test(sentence.words),
      'said again': AGAIN.test(behind),
      praise: CHEERS.test(sentence.words),
      chat: CHATS.test(sentence.words),
      'amount behind': AMOUNT_WORDS.test(behind),
      'amount before': AMOUNT_WORDS.test(before),
      'amount soon': speech.sentences
        .slice(candidate.sentence + 1, candidate.sentence + 3)
        .some((next) => AMOUNT_WORDS.test(next.words)),
    }),
  ]
}

/** What kind of name it is. */
function ofName(candidate: Candidate, scene: Scene, isStretching: boolean): string[] {
  const { entry, source, strength, kind, name } = candidate
  const features = [
    `source ${source}`,
    `strength ${strength}`,
    `kind ${kind}`,
    ...flags({
      listed: candidate.listed,
      late: candidate.late,
      bare: candidate.bare,
      back: candidate.back,
      described: candidate.described,
      known: entry !== null,
      'empty words': EMPTY.test(plainWords(name)),
    }),
  ]
  const turn = TURN_BEHIND.exec(scene.behind)?.[1]
  if (turn !== undefined) features.push(`turn ${turn}`, ...flags({ 'turn behind': scene.opens || scene.opensSoftly }))
  if (entry) return features
  const words = plainWords(name).split(' ')
  const last = foldWords(name).at(-1)?.text ?? ''
  const isMuscle = words.length <= 3 && foldWords(name).some(({ text }) => MUSCLE.test(text))
  return [
    ...features,
    `own last ${NAME_ENDINGS.has(last) ? 'ending' : (groupOf(last) ?? 'other')}`,
    `own first ${groupOf(words[0] ?? '') ?? 'other'}`,
    `own words ${words.length}`,
    ...flags({
      'own ing': last.endsWith('ing'),
      'own plural': name.endsWith('s'),
      'own body': words.every((word) => BODY.has(groupOf(word) ?? '')),
      muscle: isMuscle,
      'muscle in stretches': isMuscle && isStretching,
      'muscle in turn': isMuscle && turn !== undefined,
      'muscle alone': isMuscle && scene.behind === '' && scene.opens,
    }),
  ]
}

const BODY: ReadonlySet<string> = new Set(['part', 'place', 'num', 'kit', 'take', 'ill'])

/** What the class does right before and behind. */
function ofTeaching(speech: Speech, { sentence: index }: Candidate, scene: Scene): string[] {
  const { sentence, earlier, cuesHere, cuesNext, cuesSoon } = scene
  const past = earlier.flatMap(({ cues }) => cues.map(({ kind }) => kind))
  const far = speech.sentences.slice(index, index + 10).reduce((sum, { cues }) => sum + cues.length, 0)
  const lastCue = past.at(-1)
  return [
    `role ${sentence.role}`,
    `role before ${speech.sentences[index - 1]?.role ?? 'none'}`,
    `role behind ${speech.sentences[index + 1]?.role ?? 'none'}`,
    ...new Set(earlier.map(({ role }) => `lately ${role}`)),
    ...flags({
      'cues lately': past.length > 0,
      'amount lately': earlier.some(({ words }) => AMOUNT_WORDS.test(words)),
    }),
    ...AGO.filter((kind) => past.includes(kind)).map((kind) => `lately ${kind}`),
    ...(lastCue ? [`last cue ${lastCue}`] : []),
    `first cue ${cuesHere[0]?.kind ?? cuesSoon[0]?.kind ?? 'none'}`,
    ...AHEAD.flatMap((kind) => [
      ...(cuesHere.some((cue) => cue.kind === kind) ? [`here ${kind}`] : []),
      ...(cuesNext.some((cue) => cue.kind === kind) ? [`next ${kind}`] : []),
      ...(cuesSoon.some((cue) => cue.kind === kind) ? [`soon ${kind}`] : []),
    ]),
    `cues behind ${Math.min(5, cuesHere.length + cuesSoon.length)}`,
    `cues far ${Math.min(4, far >> 1)}`,
  ]
}

const AGO: readonly CueKind[] = ['easier', 'caution', 'fault', 'execution', 'setup', 'breathing']
const AHEAD: readonly CueKind[] = ['setup', 'execution', 'equipment', 'breathing', 'range', 'fault', 'easier']

/** Its place in the class and among the other candidates. */
function ofClass(
  speech: Speech,
  all: readonly Candidate[],
  index: number,
  others: Others,
  worths: readonly number[],
): string[] {
  const candidate = all[index]
  if (!candidate) return []
  const { offset, end, entry } = candidate
  const words = speech.wordsBefore(offset)
  const lastSame = all[others.before ?? -1]
  const since = lastSame ? words - speech.wordsBefore(lastSame.offset) : null
  const gapBefore = words - speech.wordsBefore(neighbour(speech, all, index, -1)?.end ?? -1)
  const next = neighbour(speech, all, index, 1)
  const gapBehind = next ? speech.wordsBefore(next.offset) - speech.wordsBefore(end) : Infinity
  const worth = worths[index] ?? 0
  const { best, isFirst } = others
  const rank = worth > best ? 'best' : worth === best ? (isFirst ? 'first of the best' : 'later of the best') : null
  // a few words of a class have no opening talk
  const place = speech.text.length < SHORT_TEXT ? 0.5 : offset / speech.text.length
  return [
    `others ${Math.min(3, others.count)}`,
    ...(since === null ? [] : ['said before', `since ${since < 15 ? 0 : since < 60 ? 1 : since < 200 ? 2 : 3}`]),
    `gap before ${gapOf(gapBefore)}`,
    `gap behind ${gapOf(gapBehind)}`,
    others.count === 0 ? 'only one' : (rank ?? (best - worth >= 2 ? 'far below the best' : 'below the best')),
    `worth ${Math.max(-1, Math.min(5, Math.round(worth)))}`,
    ...(entry ? [] : [`own worth ${Math.max(-1, Math.min(5, Math.round(worth)))}`]),
    ...flags({ 'stronger elsewhere': others.isStronger }),
    `place ${place < 0.08 ? 0 : place < 0.2 ? 1 : place > 0.95 ? 3 : 2}`,
  ]
}

/** Characters; about two minutes of speech. */
const SHORT_TEXT = 1500

function gapOf(words: number): number {
  return words < 4 ? 0 : words < 10 ? 1 : words < 30 ? 2 : 3
}

/** A first, rough measure of how well a candidate stands, to hold those of one exercise against each other. */
function worthOf({ strength, listed }: Candidate, scene: Scene | undefined): number {
  if (!scene) return 0
  const isStrong = scene.brings || scene.called || scene.inTurn || scene.closes
  const taught = [...scene.cuesHere, ...scene.cuesSoon].filter(({ kind }) => kind === 'setup' || kind === 'execution')
  const opens = scene.opens || scene.opensSoftly
  return (
    (isStrong ? 2 : opens ? 1.5 : 0) +
    Math.min(2, taught.length) +
    (strength >= 2 ? 1 : 0) -
    (listed ? 2 : 0) -
    (scene.isPassing ? 2 : 0)
  )
}

/** Features that only tell something together. */
function together(candidate: Candidate, scene: Scene, isAgain: boolean): string[] {
  const source = candidate.entry ? 'known' : candidate.source
  const cues = [...scene.cuesHere, ...scene.cuesSoon]
  const taught = cues.some(({ kind }) => kind === 'setup' || kind === 'execution') ? 'taught' : 'untaught'
  const free = scene.earlier.at(-1)?.role === 'teach' ? 'busy' : 'free'
  const start = scene.opens
    ? 'opens'
    : scene.opensSoftly
      ? 'softly'
      : scene.brings
        ? 'brings'
        : scene.closes
          ? 'closes'
          : scene.opensClause
            ? 'clause'
            : 'inside'
  const stop = scene.behind === '' ? 'ends' : /^\s*[,;:–—\v]/.test(scene.rawBehind) ? 'comma' : 'on'
  return [
    `${start} ${stop}`,
    `${source} ${start} ${stop}`,
    `${start} ${stop} ${taught}`,
    `${start} ${taught} ${free}`,
    `${source} ${taught} ${free}`,
    `${candidate.listed ? 'listed' : 'single'} ${start} ${taught}`,
    ...(isAgain ? [`again ${start} ${stop} ${free}`] : []),
  ]
}

function flags(values: Readonly<Record<string, boolean>>): string[] {
  return Object.entries(values).flatMap(([name, isSo]) => (isSo ? [name] : []))
}

const CHEERS = anyPhrase(PRAISE)
const CHATS = anyPhrase(CHAT)
const EMPTY = anyPhrase(EMPTY_CLAUSES)
