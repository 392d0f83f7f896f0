/** Names the teachings that openings begin: of what is said in each and what was announced, the likeliest. */
import type { Candidate } from './naming.ts'
import { NameChooser } from './name-features.ts'
import type { NameChoice, UnnamedTeaching } from './name-features.ts'
import type { Speech } from './read-speech.ts'
import { isShort } from './sided-table.ts'
import type { WeighedCandidate } from './weigh-starts.ts'
import { START_SHAPES } from './words/en/announcing.ts'
import { NAME_WEIGHTS, NOBODY_NAMES } from './words/en/name-weights.ts'

/** The name of each teaching, null where none is likelier than that nobody names it; `inside` = it is said there. */
export interface PickedName {
  candidate: Candidate
  inside: boolean
}

/** Names for teachings in the order taught. "Squats. Pins first." and what follows is one teaching, where its own name is no likelier. */
export function pickNames(
  speech: Speech,
  weighed: readonly WeighedCandidate[],
  teachings: readonly UnnamedTeaching[],
): NamedTeaching[] {
  const chooser = new NameChooser(speech, weighed)
  const nobody = isShort(speech) ? NOBODY_NAMES - SHORT_NAMED : NOBODY_NAMES
  const used = new Set<string>()
  let previous: string | null = null
  const named: NamedTeaching[] = []
  /** The one before was named for the first time, in a sentence or two, and is taught in those behind. */
  let isOnlyNamed = false
  for (const teaching of teachings) {
    const soFar = { used, previous }
    const best = likeliest(chooser.choices(teaching, soFar), nobody)
    const before = named.at(-1)
    if (before && isOnlyNamed && best.odds < SURELY_OTHER && !isShort(speech)) {
      const whole = { first: before.first, end: teaching.end }
      const joined = likeliest(chooser.choices(whole, soFar), nobody)
      const isNamedBefore = joined.name?.inside === true && joined.name.candidate.sentence < teaching.first
      if (isNamedBefore && joined.odds >= best.odds) {
        named.pop()
        named.push({ ...whole, name: joined.name })
        isOnlyNamed = false
        continue
      }
    }
    named.push({ ...teaching, name: best.name })
    const key = best.name?.candidate.key
    isOnlyNamed =
      key !== undefined && best.name?.inside === true && !used.has(key) && teaching.end - teaching.first <= MOST_NAMING
    if (key === undefined) continue
    used.add(key)
    previous = key
  }
  return named
}

/** In a few minutes nearly everything is named. */
const SHORT_NAMED = 1.5

const MOST_NAMING = 3
/** A name this likely is that of another exercise. */
const SURELY_OTHER = 4.2

/** A teaching with its name. */
export interface NamedTeaching extends UnnamedTeaching {
  name: PickedName | null
}

/** The likeliest name, and how much likelier it is than that nobody names it (log of the odds). */
function likeliest(choices: readonly NameChoice[], nobody: number): { name: PickedName | null; odds: number } {
  let best: PickedName | null = null
  let most = nobody
  const isMoved = choices.some(({ choice, inside }) => inside && choice.odds > LEAST_KNOWN && isMovement(choice))
  for (const { choice, inside, features } of choices) {
    if (choice.odds < NO_NAME) continue
    const shape = isMoved && START_SHAPES.has(choice.candidate.entry?.id ?? '') ? SHAPE : 0
    const odds = features.reduce((sum, feature) => sum + (TABLE.get(feature) ?? 0), shape)
    if (odds <= most) continue
    most = odds
    best = { candidate: choice.candidate, inside }
  }
  return { name: best, odds: most - nobody }
}

/** What the catalogue knows and is no shape that others start from. */
function isMovement({ candidate: { entry } }: WeighedCandidate): boolean {
  return entry !== null && !START_SHAPES.has(entry.id)
}

/** "Big plank, hands under your shoulders", and what is done in it has a name, too. */
const SHAPE = -2
const LEAST_KNOWN = -1.5
/** Log odds: words that are no name ("onto your backs") are none for want of a better. */
const NO_NAME = -7.5

const TABLE = new Map(
  NAME_WEIGHTS.flatMap(([weight, features]) => features.split('|').map((feature) => [feature, weight] as const)),
)
