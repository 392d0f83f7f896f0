/** Names the teachings that openings begin: of what is said in each and what was announced, the likeliest. */
import type { Candidate } from './naming.ts'
import { NameChooser } from './name-features.ts'
import type { UnnamedTeaching } from './name-features.ts'
import type { Speech } from './read-speech.ts'
import type { WeighedCandidate } from './weigh-starts.ts'
import { START_SHAPES } from './words/en/announcing.ts'
import { NAME_WEIGHTS, NOBODY_NAMES } from './words/en/name-weights.ts'

/** The name of each teaching, null where none is likelier than that nobody names it; `inside` = it is said there. */
export interface PickedName {
  candidate: Candidate
  inside: boolean
}

/** Names for teachings in the order taught. */
export function pickNames(
  speech: Speech,
  weighed: readonly WeighedCandidate[],
  teachings: readonly UnnamedTeaching[],
): (PickedName | null)[] {
  const chooser = new NameChooser(speech, weighed)
  const used = new Set<string>()
  let previous: string | null = null
  return teachings.map((teaching) => {
    let best: PickedName | null = null
    let most = NOBODY_NAMES
    const choices = chooser.choices(teaching, { used, previous })
    const isMoved = choices.some(({ choice, inside }) => inside && choice.odds > LEAST_KNOWN && isMovement(choice))
    for (const { choice, inside, features } of choices) {
      const shape = isMoved && START_SHAPES.has(choice.candidate.entry?.id ?? '') ? SHAPE : 0
      const odds = features.reduce((sum, feature) => sum + (TABLE.get(feature) ?? 0), shape)
      if (odds <= most) continue
      most = odds
      best = { candidate: choice.candidate, inside }
    }
    if (best) {
      used.add(best.candidate.key)
      previous = best.candidate.key
    }
    return best
  })
}

/** What the catalogue knows and is no shape that others start from. */
function isMovement({ candidate: { entry } }: WeighedCandidate): boolean {
  return entry !== null && !START_SHAPES.has(entry.id)
}

/** "Big plank, hands under your shoulders", and what is done in it has a name, too. */
const SHAPE = -2
const LEAST_KNOWN = -1.5

const TABLE = new Map(
  NAME_WEIGHTS.flatMap(([weight, features]) => features.split('|').map((feature) => [feature, weight] as const)),
)
