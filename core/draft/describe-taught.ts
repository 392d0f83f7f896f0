/** Says what the catalogue and the words tell about a taught exercise: its names, kit, position and neighbours. */
import type { Segment, SideNamed } from '../../shared/log-sheet.ts'
import { entryById } from '../catalogue/catalogue.ts'
import type { CatalogueEntry } from '../catalogue/entry.ts'
import { findEntry } from '../catalogue/find-entry.ts'
import type { Teaching } from './find-exercises.ts'
import { findKit } from './find-kit.ts'

export type Description = Pick<Segment, 'exercise' | 'equipment' | 'position' | 'sideShown' | 'easier' | 'harder'>

/**
 * The description of one exercise.
 * @param said its words
 * @param sidesNamed the sides they name
 * @param classKit kit of the whole class
 * @param sureKit kit that the class names again and again
 */
export function describeExercise(
  teaching: Teaching,
  said: string,
  sidesNamed: readonly SideNamed[],
  classKit: readonly string[],
  sureKit: readonly string[] = classKit,
): Description {
  const ownKit = findKit(said, 1).filter((piece) => !OTHER_SENSE.includes(piece) || sureKit.includes(piece))
  const choice = sureKit.includes('barbell') && BAR.test(said) ? ['barbell', ...ownKit] : ownKit
  const entry = findEntry(teaching.name, { kit: [...choice, ...classKit] }) ?? teaching.entry
  const known = entry?.kit ?? []
  const equipment = [
    ...new Set([...known.filter((piece) => ownKit.includes(piece) || classKit.includes(piece)), ...heldKit(ownKit)]),
  ]
  return {
    exercise: { name: sentenceCase(teaching.name), alsoCalled: teaching.alsoCalled, catalogueId: entry?.id ?? null },
    equipment,
    position: entry?.positions[0] ?? null,
    sideShown: entry?.sided === true && isOnBoth(sidesNamed) ? 'both' : null,
    easier: neighbours(entry?.easier ?? []),
    harder: neighbours(entry?.harder ?? []),
  }
}

/** Kit whose words often mean something else: straps, a phone that rings, a heel that slides. */
const OTHER_SENSE: readonly string[] = ['rings', 'rowing machine']
/** How a barbell is named in a class that uses one. */
const BAR = /\b(?<!(?:pull|chin)[- ]?ups? )bar\b/i

/** Words that take one-sided work through both sides: left and right worked, or a change from one to the other. */
function isOnBoth(named: readonly SideNamed[]): boolean {
  const worked = named.filter(({ as }) => as === 'turn' || as === 'first' || as === 'limb').map(({ side }) => side)
  return worked.includes('other') || worked.includes('both') || (worked.includes('left') && worked.includes('right'))
}

/** Kit that the words show in use; a wall or a cushion is often only an option. */
function heldKit(kit: readonly string[]): string[] {
  const held = [
    'kettlebell',
    'dumbbell',
    'barbell',
    'band',
    'rings',
    'rowing machine',
    'chair',
    'step',
    'bench',
    'ball',
  ]
  return kit.filter((piece) => held.includes(piece))
}

function neighbours(ids: readonly string[]): Segment['easier'] {
  return ids.flatMap((id) => {
    const entry: CatalogueEntry | null = entryById(id)
    return entry ? [{ text: entry.name }] : []
  })
}

/** The spoken name with a capital letter. */
export function sentenceCase(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1)
}
