/** Says a dose in full sentences, for people and for screen readers. */
import type { Prescription, Range } from '../../shared/log-sheet.ts'

/** The dose in whole sentences, without signs that a screen reader would spell; empty when nothing is said. */
export function speakDose(dose: Prescription): string {
  const sentences = [
    workSentence(dose),
    sentence('Hold', dose.holdSeconds && isBesideWork(dose) ? `${seconds(dose.holdSeconds)}${holdWhere(dose)}` : ''),
    sentence('Start a new set every', dose.intervalSeconds ? seconds(dose.intervalSeconds) : ''),
    sentence('Rest', dose.restSeconds ? `${seconds(dose.restSeconds)}${between(dose)}` : ''),
    sentence('Tempo:', dose.tempo === null ? '' : tempoWords(dose.tempo)),
    sentence(
      'Load:',
      dose.load === null ? '' : dose.load.replaceAll('% 1RM', 'percent of your one-repetition maximum'),
    ),
    sentence('Effort:', dose.effort === null ? '' : effortWords(dose.effort)),
    sentence('How often:', dose.frequency ?? ''),
    sentence('To progress:', dose.progression ?? ''),
    sentence('How long is up to you:', dose.open ?? ''),
    ...dose.then.map((part) => sentence('Then', lowerFirst(speakDose(part)))),
    ...dose.byLevel.map(({ level, dose: one }) => sentence(`For ${level}:`, lowerFirst(speakDose(one)))),
  ]
  return sentences.filter((text) => text !== '').join(' ')
}

/** "3 sets of 10 to 12 repetitions on each side." */
function workSentence(dose: Prescription): string {
  const about = dose.approx ? 'about ' : ''
  const sets = dose.sets === null ? '' : counted(dose.sets, 'set')
  const work = workWords(dose)
  const side = dose.perSide ? ' on each side' : ''
  const scheme = SCHEMES[dose.scheme]
  const body = sets !== '' && work !== '' ? `${sets} of ${work}` : sets || work
  if (body === '') return scheme === '' ? '' : `${scheme}.`
  return upperFirst(`${scheme === '' ? '' : `${scheme}: `}${about}${body}${side}.`)
}

const SCHEMES = {
  straight: '',
  superset: 'Superset',
  circuit: 'Circuit',
  emom: 'On the clock',
  amrap: 'As many as you can',
  ladder: 'Ladder',
  interval: 'Intervals',
} as const satisfies Record<Prescription['scheme'], string>

const UNITS = {
  rep: 'repetition',
  breath: 'breath',
  stroke: 'stroke',
  cycle: 'cycle',
  length: 'length',
} as const satisfies Record<Prescription['repUnit'], string>

function workWords(dose: Prescription): string {
  const parts = [
    dose.repScheme === null ? '' : `${dose.repScheme.join(', then ')} repetitions`,
    repWords(dose),
    dose.distanceM ? counted(dose.distanceM, 'metre') : '',
    dose.workSeconds ? seconds(dose.workSeconds) : '',
    dose.holdSeconds && !isBesideWork(dose) ? `a hold of ${seconds(dose.holdSeconds)}` : '',
  ]
  return parts.filter((part) => part !== '').join(', ')
}

function repWords({ reps, repUnit, scheme }: Prescription): string {
  if (reps === null) return ''
  if (reps === 'max') return scheme === 'amrap' ? '' : 'as many repetitions as you can'
  return counted(reps, UNITS[repUnit])
}

function isBesideWork(dose: Prescription): boolean {
  return (
    dose.holdPer === 'rep' ||
    [dose.reps, dose.workSeconds, dose.distanceM, dose.repScheme].some((value) => value !== null)
  )
}

function holdWhere({ holdPer }: Prescription): string {
  return holdPer === 'rep' ? ' in each repetition' : ' in each set'
}

const BETWEEN = {
  reps: 'repetitions',
  sets: 'sets',
  sides: 'sides',
  stations: 'stations',
  rounds: 'rounds',
} as const satisfies Record<NonNullable<Prescription['restBetween']>, string>

function between({ restBetween }: Prescription): string {
  return restBetween === null ? '' : ` between ${BETWEEN[restBetween]}`
}

function tempoWords(tempo: string): string {
  const names = ['lowering', 'pause', 'lifting', 'pause at the end'] as const
  const phases = tempo.split('-').flatMap((phase, index) => {
    const name = names[index]
    if (name === undefined || phase === 'x') return []
    return [phase === 'X' ? `${name} as fast as you can` : `${name} ${secondsOf(Number(phase))}`]
  })
  return phases.join(', ')
}

function effortWords(effort: string): string {
  return effort
    .replaceAll(/\bRPE (\S+)/g, '$1 out of 10')
    .replaceAll(/^(\S+) in reserve$/g, 'stop with $1 repetitions in reserve')
    .replaceAll(/\bBorg (\S+)/g, '$1 on the scale from 6 to 20')
}

function sentence(lead: string, words: string): string {
  if (words === '') return ''
  return `${lead} ${words}${/[.!?]$/.test(words) ? '' : '.'}`
}

/** "10 repetitions", "10 to 12 repetitions", "at least 10", "up to 12". */
function counted(range: Range, unit: string): string {
  const { min, max } = range
  if (min === null && max === null) return ''
  const many = (value: number) => `${unit}${value === 1 ? '' : 's'}`
  if (min === null) return `up to ${String(max)} ${many(max ?? 0)}`
  if (max === null) return `at least ${String(min)} ${many(min)}`
  return min === max ? `${String(min)} ${many(min)}` : `${String(min)} to ${String(max)} ${many(max)}`
}

function seconds(range: Range): string {
  const { min, max } = range
  const isMinutes = [min, max].every((value) => value === null || (value >= 60 && value % 60 === 0))
  const by = (value: number | null) => (value === null || !isMinutes ? value : value / 60)
  return counted({ min: by(min), max: by(max) }, isMinutes ? 'minute' : 'second')
}

function secondsOf(value: number): string {
  return `${String(value)} second${value === 1 ? '' : 's'}`
}

function upperFirst(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1)
}

function lowerFirst(text: string): string {
  return text.slice(0, 1).toLowerCase() + text.slice(1)
}
