/** Compares a dose with what a person would write down for the same words. */
import type { Prescription, Range } from '../../../shared/log-sheet.ts'
import type { Expected } from './further-phrasings.ts'

/** What differs, one sentence each; empty when the dose says what is expected. */
export function differences(dose: Prescription | null, expected: Expected): string[] {
  if (dose === null) return ['no dose was read']
  const core = {
    sets: pair(dose.sets),
    reps: dose.reps === 'max' ? 'max' : pair(dose.reps),
    unit: dose.repUnit,
    work: pair(dose.workSeconds),
    hold: pair(dose.holdSeconds),
    dist: pair(dose.distanceM),
    rest: pair(dose.restSeconds),
    side: dose.perSide || undefined,
    scheme: dose.scheme,
    interval: dose.intervalSeconds?.min,
    repScheme: dose.repScheme ?? undefined,
  }
  const notes = {
    per: dose.holdPer,
    between: dose.restBetween,
    tempo: dose.tempo,
    load: dose.load,
    effort: dose.effort,
    freq: dose.frequency,
    progression: dose.progression !== null || undefined,
    open: dose.open !== null || undefined,
    approx: dose.approx || undefined,
    unsure: dose.unsure || undefined,
  }
  const wanted = { unit: 'rep', scheme: 'straight', ...expected }
  return [
    ...Object.entries(core).flatMap(([name, value]) => differs(name, value, wanted[name as keyof typeof core])),
    ...Object.entries(notes).flatMap(([name, value]) =>
      name in expected ? differs(name, value, expected[name as keyof typeof notes]) : [],
    ),
    ...partsDiffer(dose, expected),
  ]
}

function partsDiffer(dose: Prescription, expected: Expected): string[] {
  const thens = expected.then ?? []
  const levels = Object.entries(expected.levels ?? {})
  return [
    ...differs('parts that follow', dose.then.length, thens.length),
    ...differs('levels', dose.byLevel.map(({ level }) => level).sort(), levels.map(([level]) => level).sort()),
    ...thens.flatMap((part, index) => differences(dose.then[index] ?? null, part)),
    ...levels.flatMap(([level, part]) =>
      differences(dose.byLevel.find((one) => one.level === level)?.dose ?? null, part),
    ),
  ]
}

function differs(name: string, value: unknown, wanted: unknown): string[] {
  const [is, should] = [JSON.stringify(value ?? null), JSON.stringify(wanted ?? null)]
  return is === should ? [] : [`${name} is ${is}, should be ${should}`]
}

function pair(range: Range | null): [number | null, number | null] | undefined {
  return range ? [range.min, range.max] : undefined
}
