/** Which hazards a thing said warns of, read from its words. */
import { HAZARD_SLUGS } from './hazard-slugs.ts'
import type { HazardSlug } from './hazard-slugs.ts'
import { plainSentences, readPhrase } from './words/match-phrase.ts'
import type { Phrase } from './words/match-phrase.ts'
import { CLASS_WIDE_WORDS, EFFORT_BREATH_WORDS, HAZARD_GROUPS, HAZARD_WORDS, UNHEARD } from './words/en/hazard-words.ts'

/** The slugs of the hazards that the words of a sentence or two cover, in the order of the table. */
export function hazardsIn(text: string): HazardSlug[] {
  const sentences = plainSentences(text)
  return HAZARD_SLUGS.filter(
    (slug) =>
      says(heard(sentences, slug), phrasesOf(slug)) || (slug === 'breath-hold' && says(sentences, effortBreath())),
  )
}

/** True when the words speak against a held breath itself; breathing out on the effort is not enough for this. */
export function warnsOfHeldBreath(text: string): boolean {
  return says(plainSentences(text), phrasesOf('breath-hold'))
}

/** True when the words hold for the whole class: "before every exercise", "all through the class". */
export function isClassWide(text: string): boolean {
  return says(plainSentences(text), classWide())
}

function heard(sentences: readonly string[], slug: HazardSlug): readonly string[] {
  const unheard = UNHEARD[slug]
  return unheard === undefined ? sentences : sentences.map((sentence) => sentence.replace(unheard, ''))
}

const says = (sentences: readonly string[], phrases: readonly Phrase[]): boolean =>
  sentences.some((sentence) => phrases.some((phrase) => phrase(sentence)))

const read = (patterns: readonly string[]): Phrase[] => patterns.map((pattern) => readPhrase(pattern, HAZARD_GROUPS))

/** Phrases are built on first use and kept. */
function once<Value>(build: () => Value): () => Value {
  let kept: { value: Value } | null = null
  return () => (kept ??= { value: build() }).value
}

const built = once(() => new Map(HAZARD_SLUGS.map((slug) => [slug, read(HAZARD_WORDS[slug])])))
const phrasesOf = (slug: HazardSlug): readonly Phrase[] => built().get(slug) ?? []
const effortBreath = once(() => read(EFFORT_BREATH_WORDS))
const classWide = once(() => read(CLASS_WIDE_WORDS))
