/** What an invented class teaches, and how much of it a draft finds: exercise, dose, and names only mentioned. */
import type { LogSheet, Prescription, Segment } from '../../../shared/log-sheet.ts'

type Amount = number | readonly [number, number]

/** The amounts of a dose as said; what is not given must not be drafted. Seconds and metres. */
export interface SpokenDose {
  sets?: Amount
  reps?: Amount
  unit?: 'breath' | 'stroke' | 'cycle' | 'length'
  work?: Amount
  hold?: Amount
  metres?: Amount
  rest?: Amount
  sides?: true
}

export interface SpokenClass {
  title: string
  transcript: string
  /** In the order taught; no dose: none was said. */
  taught: readonly { name: RegExp; dose?: SpokenDose; returns?: number }[]
  notTaught: readonly RegExp[]
}

export interface ClassScore {
  taught: number
  found: number
  dosesRight: number
  /** Segments that nobody taught. */
  invented: number
  /** What was missed, in words, for whoever looks. */
  missed: string[]
}

/** Counts what a draft has right: each taught exercise matches the next segment of its name. */
export function scoreClass({ taught, title }: SpokenClass, sheet: LogSheet): ClassScore {
  const score: ClassScore = { taught: taught.length, found: 0, dosesRight: 0, invented: 0, missed: [] }
  const left = [...sheet.segments]
  for (const { name, dose } of taught) {
    const index = left.findIndex((segment) => names(segment).some((known) => name.test(known)))
    const segment = index < 0 ? undefined : left.splice(index, 1)[0]
    if (!segment) {
      score.missed.push(`${title}: ${String(name)} not found`)
      continue
    }
    score.found += 1
    const got = doseOf(segment.prescription)
    if (sameDose(got, dose ?? {})) score.dosesRight += 1
    else score.missed.push(`${title}: ${String(name)} ${JSON.stringify(dose ?? {})} but drafted ${JSON.stringify(got)}`)
  }
  score.invented = left.length
  for (const segment of left) score.missed.push(`${title}: ${segment.exercise.name} was not taught`)
  return score
}

/** The sum of several scores. */
export function sumScores(scores: readonly ClassScore[]): ClassScore {
  const sum = (field: 'taught' | 'found' | 'dosesRight' | 'invented') =>
    scores.reduce((total, score) => total + score[field], 0)
  return {
    taught: sum('taught'),
    found: sum('found'),
    dosesRight: sum('dosesRight'),
    invented: sum('invented'),
    missed: scores.flatMap(({ missed }) => missed),
  }
}

function names({ exercise }: Segment): string[] {
  return [exercise.name, ...exercise.alsoCalled]
}

/** The amounts of a drafted dose; a list of repetitions counts from its least to its most. */
export function doseOf(dose: Prescription | null): SpokenDose {
  if (!dose) return {}
  const { sets, reps, repUnit, repScheme, workSeconds, holdSeconds, distanceM, restSeconds, perSide } = dose
  const amount = (range: { min: number | null; max: number | null } | 'max' | null): { is?: Amount } => {
    if (range === null) return {}
    if (range === 'max') return { is: Number.POSITIVE_INFINITY }
    const { min, max } = range
    return { is: min === max || min === null || max === null ? (min ?? max ?? 0) : [min, max] }
  }
  const steps = repScheme && { min: Math.min(...repScheme), max: Math.max(...repScheme) }
  const pairs = {
    sets,
    reps: reps ?? steps,
    work: workSeconds,
    hold: holdSeconds,
    metres: distanceM,
    rest: restSeconds,
  }
  const amounts = Object.entries(pairs).flatMap(([key, range]) => {
    const { is } = amount(range)
    return is === undefined ? [] : [[key, is] as const]
  })
  return {
    ...Object.fromEntries(amounts),
    ...(reps !== null && repUnit !== 'rep' ? { unit: repUnit } : {}),
    ...(perSide ? { sides: true as const } : {}),
  }
}

/** True when both say the same amounts. */
export function sameDose(got: SpokenDose, wanted: SpokenDose): boolean {
  return JSON.stringify(sorted(got)) === JSON.stringify(sorted(wanted))
}

function sorted(dose: SpokenDose): [string, unknown][] {
  return Object.entries(dose).sort(([a], [b]) => a.localeCompare(b))
}

/** Lower case without punctuation, as some recognisers write; the time stamps stay. */
export function plain(text: string): string {
  return text
    .split('\n')
    .map((line) => {
      const [, stamp = '', said = ''] = /^(\[[\d:]+\]) (.*)/.exec(line) ?? []
      return `${stamp} ${said
        .toLowerCase()
        .replace(/[^a-z0-9' ]/g, ' ')
        .replace(/ +/g, ' ')
        .trim()}`
    })
    .join('\n')
}
