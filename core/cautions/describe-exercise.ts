/** Gathers the traits of an exercise: its catalogue entry, the segment's own fields, the words of its name, cues and dose. */
import { entryById } from '../catalogue/catalogue.ts'
import type { CatalogueEntry, Movement, Position } from '../catalogue/entry.ts'
import { findEntry } from '../catalogue/find-entry.ts'
import type { Audience, LogSheet, Prescription, Scheme, Segment } from '../../shared/log-sheet.ts'
import { HAZARD_SLUGS } from './hazard-slugs.ts'
import type { HazardSlug } from './hazard-slugs.ts'
import { classSignsOf, isSaid, segmentSignsOf } from './read-signs.ts'
import { plainName } from './traits.ts'
import type { Traits } from './traits.ts'
import {
  AUDIENCE_WORDS,
  POSITION_SAYINGS,
  SETUP_POSITIONS,
  SHOWN_MOVEMENTS,
  SHOWN_POSITIONS,
} from './words/en/class-words.ts'
import { KIT_SAYINGS, LOADS, PASSING_WEIGHTS, WEIGHTS } from './words/en/kit-words.ts'
import { NAME_WORDS } from './words/en/name-words.ts'
import type { NameWords } from './words/en/name-words.ts'
import { KIT_CLASSES, NOTHING_LIFTED } from './words/en/sign-words.ts'
import type { Sign } from './words/en/sign-words.ts'

/**
 * The traits of a segment's exercise. Works for names that no catalogue holds, from their words.
 * @param classSigns what the class as a whole says; handed in by callers who describe many segments.
 */
export function exerciseTraits(
  segment: Segment,
  sheet: LogSheet,
  classSigns: ReadonlySet<Sign> = classSignsOf(sheet),
): Traits {
  const names = [segment.exercise.name, ...segment.exercise.alsoCalled].map(plainName)
  const told = toldKit(segment, names)
  const entry = likelyEntry(entryOf(segment, [...told]), told, classSigns)
  const signs: ReadonlySet<Sign> = new Set([...segmentSignsOf(segment, entry !== null), ...classSigns])
  const words = wordsOf(names, entry !== null)
  const allNames = entry ? [...names, plainName(entry.name)] : names
  const kit = kitOf(segment, told, entry, signs)
  const movements = new Set<Movement>([...(entry?.movements ?? []), ...words.flatMap((word) => word.movements ?? [])])
  if (entry === null) for (const movement of shown(SHOWN_MOVEMENTS, signs)) movements.add(movement)
  if (entry === null && kit.has('rowing machine')) movements.add('row-machine')
  const still = (entry?.still ?? false) || words.some((word) => word.still === true)
  const dose = segment.prescription?.state === 'declined' ? null : segment.prescription
  return {
    names: allNames,
    entry,
    positions: positionsOf(segment, entry, words, signs),
    movements,
    kit,
    regions: new Set(entry?.regions ?? []),
    sided: entry?.sided ?? false,
    still,
    loaded: isLoaded(entry, words, kit, signs),
    audience: audienceOf(sheet),
    signs,
    warned: warnedIn(segment),
    scheme: schemeOf(dose, sheet),
    toMax: dosesOf(dose).some((one) => one.reps === 'max'),
    holdSeconds: longestHold(dose, still),
  }
}

function warnedIn(segment: Segment): ReadonlySet<HazardSlug> {
  const spoken = segment.cautions.filter((one) => one.state !== 'declined' && one.source === 'spoken')
  return new Set(spoken.flatMap(({ hazard }) => HAZARD_SLUGS.filter((slug) => slug === hazard)))
}

/** Whom the class is for: as the sheet says; where it says nothing, as its title says, else as the draft heard. */
export function audienceOf(sheet: LogSheet): ReadonlySet<Audience> {
  if (sheet.audience.length > 0) return new Set(sheet.audience)
  const found = AUDIENCE_WORDS.filter(({ says }) => isSaid(sheet.title, says)).map(({ audience }) => audience)
  if (found.length > 0) return new Set(found)
  return new Set<Audience>(sheet.audienceHeard?.length ? sheet.audienceHeard : ['general'])
}

/** The entry by its id, else by the exercise's names; the kit decides between exercises that share a short name. */
function entryOf({ exercise }: Segment, kit: readonly string[]): CatalogueEntry | null {
  const byId = exercise.catalogueId === null ? null : entryById(exercise.catalogueId)
  if (byId) return byId
  for (const name of [exercise.name, ...exercise.alsoCalled]) {
    const entry = findEntry(name, { kit })
    if (entry) return entry
  }
  return null
}

/** A wall, step or chair in a name may say how the exercise looks and not what it stands on: side step, wall sit, chair pose. */
const FURNITURE: readonly string[] = ['wall', 'step', 'chair', 'box', 'bench', 'mat']

/** Kit that the segment's field or the exercise's name states. */
function toldKit(segment: Segment, names: readonly string[]): ReadonlySet<string> {
  const fromNames = names.flatMap(kitIn).filter((kit) => !FURNITURE.includes(kit))
  return new Set([...segment.equipment.map(plainName).flatMap(kitIn), ...fromNames])
}

/** Whole words, longest sayings first: the bar of "pull up bar" is not a bar for weights. */
function kitIn(words: string): string[] {
  const found: string[] = []
  let rest = ` ${words} `
  for (const [saying, kit] of KIT_SAYINGS) {
    if (!rest.includes(` ${saying} `)) continue
    found.push(kit)
    rest = rest.replaceAll(` ${saying} `, ' | ')
  }
  return found
}

function kitOf(
  segment: Segment,
  told: ReadonlySet<string>,
  entry: CatalogueEntry | null,
  signs: ReadonlySet<Sign>,
): ReadonlySet<string> {
  const namesWeight = WEIGHTS.some((weight) => told.has(weight))
  const other = namesWeight ? null : classKitInstead(told, entry, signs)
  const usual = (entry?.kit ?? []).filter((one) => !(namesWeight || other !== null) || !WEIGHTS.includes(one))
  const kit = new Set([...told, ...usual, ...(other === null ? [] : [other])])
  if (signs.has('anchored') && signs.has('band-class')) kit.add('band')
  if (!LOADS.some((load) => kit.has(load)) && !signs.has('no-load')) {
    for (const load of passingWeights(segment)) kit.add(load)
  }
  if (entry === null && kit.size === 0 && signs.has('rowing-class')) kit.add('rowing machine')
  return kit
}

/** Where the catalogue expects a weight that the class is not built on, the class's own kit is meant. */
function classKitInstead(
  told: ReadonlySet<string>,
  entry: CatalogueEntry | null,
  signs: ReadonlySet<Sign>,
): string | null {
  const expected = (entry?.kit ?? []).filter((one) => WEIGHTS.includes(one))
  const built = KIT_CLASSES.filter(({ sign }) => signs.has(sign)).map(({ kit }) => kit)
  if (expected.length === 0 || built.some((kit) => expected.includes(kit))) return null
  return built.find((kit) => told.has(kit)) ?? (LOADS.some((load) => told.has(load)) ? null : (built[0] ?? null))
}

/** A name that stands for work with weights means something else in a class that lifts none: "curls" on a mat. */
function likelyEntry(
  entry: CatalogueEntry | null,
  told: ReadonlySet<string>,
  classSigns: ReadonlySet<Sign>,
): CatalogueEntry | null {
  if (entry === null || !classSigns.has(NOTHING_LIFTED)) return entry
  if (KIT_CLASSES.some(({ sign }) => classSigns.has(sign))) return entry
  return entry.kit.some((one) => LOADS.includes(one)) && !LOADS.some((load) => told.has(load)) ? null : entry
}

function passingWeights(segment: Segment): string[] {
  const text = segment.cues
    .filter((cue) => cue.state !== 'declined' && (cue.kind === 'setup' || cue.kind === 'execution'))
    .map((cue) => cue.text)
    .join('. ')
  return PASSING_WEIGHTS.filter(([, saying]) => isSaid(text, [saying])).map(([kit]) => kit)
}

function shown<Word>(table: readonly (readonly [readonly Sign[], Word])[], signs: ReadonlySet<Sign>): Word[] {
  return table.filter(([all]) => all.every((sign) => signs.has(sign))).map(([, word]) => word)
}

const BODY: readonly Position[] = ['standing', 'seated', 'supine', 'prone', 'side-lying', 'all-fours', 'kneeling']
const NOT_ON_FEET: readonly Position[] = ['seated', 'supine', 'prone', 'side-lying', 'all-fours']

/**
 * Where the segment or the name says where the body is, that takes the place of the catalogue's;
 * how it is held (on the hands, head down, half-kneeling) stays. Set-up words help only where nothing else tells.
 */
function positionsOf(
  segment: Segment,
  entry: CatalogueEntry | null,
  words: readonly NameWords[],
  signs: ReadonlySet<Sign>,
): ReadonlySet<Position> {
  const told = [...positionsIn(segment.position ?? ''), ...words.flatMap((word) => word.positions ?? [])]
  const usual = entry?.positions ?? []
  const kept = told.some((one) => BODY.includes(one)) ? usual.filter((one) => !BODY.includes(one)) : usual
  const positions = new Set<Position>([...told, ...kept])
  if (positions.size === 0) for (const [sign, position] of SETUP_POSITIONS) if (signs.has(sign)) positions.add(position)
  if (entry === null) for (const position of shown(SHOWN_POSITIONS, signs)) positions.add(position)
  if (!positions.has('standing') && NOT_ON_FEET.some((one) => positions.has(one))) positions.delete('single-leg')
  return positions
}

function positionsIn(position: string): Position[] {
  const plain = plainName(position)
  return POSITION_SAYINGS.filter(([saying]) => plain === saying).map(([, found]) => found)
}

function wordsOf(names: readonly string[], known: boolean): NameWords[] {
  const all: readonly NameWords[] = NAME_WORDS
  const isNamed = (word: string) => names.some((name) => ` ${name} `.includes(` ${plainName(word)} `))
  return all.filter((one) => (one.always === true || !known) && one.words.some(isNamed))
}

function isLoaded(
  entry: CatalogueEntry | null,
  words: readonly NameWords[],
  kit: ReadonlySet<string>,
  signs: ReadonlySet<Sign>,
): boolean {
  if (signs.has('no-load')) return false
  return LOADS.some((load) => kit.has(load)) || (entry?.loaded ?? false) || words.some((word) => word.loaded === true)
}

/** A dose, what follows it in the same set, and its other levels. */
function dosesOf(dose: Prescription | null): Prescription[] {
  return dose === null ? [] : [dose, ...dose.then.flatMap(dosesOf), ...dose.byLevel.flatMap((one) => dosesOf(one.dose))]
}

/** The timed work of something held still is a hold, too. */
function longestHold(dose: Prescription | null, still: boolean): number | null {
  const ranges = dosesOf(dose).flatMap((one) => [one.holdSeconds, still ? one.workSeconds : null])
  const seconds = ranges.flatMap((range) => (range === null ? [] : [range.max ?? range.min ?? 0]))
  return seconds.length === 0 ? null : Math.max(...seconds)
}

/** A circuit is announced once: a segment without a dose is organised as most doses of the class are. */
function schemeOf(dose: Prescription | null, sheet: LogSheet): Scheme {
  if (dose !== null) return dose.scheme
  const doses = sheet.segments.flatMap((segment) => segment.prescription ?? [])
  const common = doses.find((one) => doses.filter((other) => other.scheme === one.scheme).length * 2 > doses.length)
  return common?.scheme ?? 'straight'
}
