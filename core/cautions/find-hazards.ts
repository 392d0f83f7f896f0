/** Which hazards a thing said warns of, read from its words. */
import { remember } from '../remember.ts'
import type { CueKind } from '../../shared/log-sheet.ts'
import { HAZARD_SLUGS } from './hazard-slugs.ts'
import type { HazardSlug } from './hazard-slugs.ts'
import { indexPhrases, plainSentences } from './words/match-phrase.ts'
import type { KeyedPhrase } from './words/match-phrase.ts'
import { TOPICS } from './words/en/topic-words.ts'
import { CLASS_WIDE_WORDS, EFFORT_BREATH_WORDS, HAZARD_GROUPS, HAZARD_WORDS, UNHEARD } from './words/en/hazard-words.ts'

/** The slugs of the hazards that the words of a sentence or two cover, in the order of the table. */
export function hazardsIn(text: string): HazardSlug[] {
  const found = new Set<HazardSlug>()
  for (const sentence of plainSentences(text)) for (const slug of slugsOf(sentence)) found.add(slug)
  return HAZARD_SLUGS.filter((slug) => found.has(slug))
}

/** The hazards that a cue of a kind speaks of by a word or two, for kinds that are warnings by themselves. */
export function topicsOf(kind: CueKind, text: string): HazardSlug[] {
  const said = plainSentences(text).flatMap((sentence) => [...topics()(sentence)])
  return said.filter((slug) => TOPICS[slug]?.kinds.includes(kind))
}

/** True when the words speak against a held breath itself; breathing out on the effort is not enough for this. */
export function warnsOfHeldBreath(text: string): boolean {
  return plainSentences(text).some((sentence) => heldBreath()(sentence).size > 0)
}

/** True when the words hold for the whole class: "before every exercise", "through the session". */
export function isClassWide(text: string): boolean {
  return plainSentences(text).some((sentence) => classWide()(sentence).size > 0)
}

/** A sheet is checked again after each edit, on the same words: what they warn of is kept. */
const slugsOf = remember(1000, (sentence): ReadonlySet<HazardSlug> => readSlugs(sentence))

function readSlugs(sentence: string): Set<HazardSlug> {
  const found = hazards()(sentence)
  for (const slug of found) {
    const unheard = UNHEARD[slug]
    if (unheard === undefined) continue
    const rest = sentence.replace(unheard, '')
    if (rest !== sentence && !hazards()(rest).has(slug)) found.delete(slug)
  }
  return found
}

/** Phrases are built on first use and kept. */
function once<Value>(build: () => Value): () => Value {
  let kept: { value: Value } | null = null
  return () => (kept ??= { value: build() }).value
}

const keyed = (key: HazardSlug, patterns: readonly string[]): KeyedPhrase<HazardSlug>[] =>
  patterns.map((pattern) => ({ key, pattern }))

const index = (phrases: readonly KeyedPhrase<HazardSlug>[]) => indexPhrases(phrases, HAZARD_GROUPS)

const hazards = once(() =>
  index([
    ...HAZARD_SLUGS.flatMap((slug) => keyed(slug, HAZARD_WORDS[slug])),
    ...keyed('breath-hold', EFFORT_BREATH_WORDS),
  ]),
)
const topics = once(() => index(HAZARD_SLUGS.flatMap((slug) => keyed(slug, TOPICS[slug]?.says ?? []))))
const heldBreath = once(() => index(keyed('breath-hold', HAZARD_WORDS['breath-hold'])))
const classWide = once(() =>
  indexPhrases(
    CLASS_WIDE_WORDS.map((pattern) => ({ key: true, pattern })),
    HAZARD_GROUPS,
  ),
)
