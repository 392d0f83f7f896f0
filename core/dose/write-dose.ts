/**
 * Writes a dose as text in one house style, such as `3 x 10-12 each side, rest 60 s, tempo 3-1-1-0`.
 * What readDose makes of the text is the same dose, apart from said, why, marks and ids of other segments.
 */
import type { Prescription, Range } from '../../shared/log-sheet.ts'

/** The dose as text; empty when nothing is said. Free words stand in quotes: `progression "add a rep each week"`. */
export function writeDose(dose: Prescription): string {
  const parts = [bodyText(dose), ...measures(dose), ...notes(dose)].filter((part) => part !== '')
  const lead = leadText(dose)
  const needsApprox = dose.approx && !isAboutPlaced(dose)
  const main = [...parts, ...(needsApprox ? ['approx'] : [])].join(', ')
  const thens = dose.then.map((part) => `, then ${thenText(part)}`).join('')
  const unsure = dose.unsure ? ' (?)' : ''
  return `${lead}${main}${unsure}${thens}${dose.byLevel.map(levelText).join('')}`.trim()
}

/** "10", "10-12", "10+" or "up to 12"; empty for a range without numbers. */
export function writeRange(range: Range | null): string {
  if (range === null || (range.min === null && range.max === null)) return ''
  const { min, max } = range
  if (min === null) return `up to ${String(max)}`
  if (max === null) return `${String(min)}+`
  return min === max ? String(min) : `${String(min)}-${String(max)}`
}

/** The same with a unit: whole minutes from two on, else seconds. */
export function writeSeconds(range: Range | null): string {
  const { min = null, max = null } = range ?? {}
  const isMinutes = [min, max].every((value) => value === null || (value >= 120 && value % 60 === 0))
  const shown = isMinutes ? scaled({ min, max }, 1 / 60) : { min, max }
  const text = writeRange(shown)
  return text === '' ? '' : `${text} ${isMinutes ? 'min' : 's'}`
}

const LEADS = {
  straight: '',
  superset: 'superset: ',
  circuit: 'circuit: ',
  emom: '',
  amrap: '',
  ladder: '',
  interval: 'interval: ',
} as const satisfies Record<Prescription['scheme'], string>

function leadText(dose: Prescription): string {
  if (dose.scheme === 'interval' && isWorkRest(dose)) return ''
  if (dose.scheme === 'ladder' && !isLadderList(dose)) return 'ladder: '
  return LEADS[dose.scheme]
}

/** Sets and the first amount of work: `3 x 10 each side`. */
function bodyText(dose: Prescription): string {
  const about = dose.approx && isAboutPlaced(dose) ? 'about ' : ''
  const sets = writeRange(dose.sets)
  const work = workTexts(dose)[0] ?? ''
  const side = dose.perSide ? ' each side' : ''
  const body = isOddOrder(dose)
    ? `${sets} sets x ${work}`
    : sets !== '' && work !== ''
      ? `${sets} x ${work}`
      : sets !== ''
        ? `${sets} set${sets === '1' ? '' : 's'}`
        : work
  return `${about}${body}${side}`.trim()
}

/** The first amount that can carry "about" in front: sets, or a number of work. */
function isAboutPlaced(dose: Prescription): boolean {
  if (writeRange(dose.sets) !== '') return true
  return /^(?:\d|up to)/.test(workTexts(dose)[0] ?? '')
}

/** "10 x 3" would be taken for the wrong order, so sets and repetitions are named. */
function isOddOrder({ sets, reps, repUnit }: Prescription): boolean {
  return (
    sets !== null && reps !== null && reps !== 'max' && repUnit === 'rep' && (sets.min ?? 0) > 6 && (reps.max ?? 0) <= 6
  )
}

/** All amounts of work, the main one first; the others say what they are. */
function workTexts(dose: Prescription): string[] {
  const work = writeSeconds(dose.workSeconds)
  const hold = writeSeconds(dose.holdSeconds)
  const distance = writeRange(dose.distanceM)
  const main = [amrapText(dose, work), ladderText(dose), repsText(dose)].filter((text) => text !== '')
  const isWorkMain = main.length === 0 && distance === ''
  if (distance !== '') main.push(main.length === 0 ? `${distance} m` : `over ${distance} m`)
  if (work !== '' && dose.scheme !== 'amrap') main.push(isWorkMain ? workRestText(dose, work) : `over ${work}`)
  if (hold !== '') {
    const isPlain = main.length === 0 && dose.holdPer !== 'rep'
    main.push(isPlain ? `${hold} hold` : `hold ${hold} per ${dose.holdPer ?? 'set'}`)
  }
  return main
}

function amrapText({ scheme }: Prescription, work: string): string {
  return scheme === 'amrap' ? `AMRAP ${work}`.trim() : ''
}

function ladderText(dose: Prescription): string {
  if (dose.repScheme === null || dose.repScheme.length === 0) return ''
  const list = dose.repScheme.join('-')
  return isLadderList(dose) ? `ladder ${list}` : `reps by set ${list}`
}

function isLadderList({ scheme, repScheme }: Prescription): boolean {
  return scheme === 'ladder' && (repScheme?.length ?? 0) >= 3
}

function repsText(dose: Prescription): string {
  if (dose.reps === null || dose.scheme === 'amrap') return ''
  if (dose.reps === 'max') return 'max reps'
  const text = writeRange(dose.reps)
  if (text === '') return ''
  const isBare = dose.repUnit === 'rep' && writeRange(dose.sets) !== '' && !isDoubtful(dose.reps) && !isOddOrder(dose)
  return isBare ? text : `${text} ${dose.repUnit}${text === '1' ? '' : 's'}`
}

/** "3 x 30" may mean seconds. */
function isDoubtful({ min, max }: Range): boolean {
  return (min ?? max ?? 0) >= 20
}

function isWorkRest(dose: Prescription): boolean {
  const others = [dose.reps, dose.repScheme, dose.distanceM, dose.holdSeconds, dose.restBetween]
  const needed = [dose.sets, dose.workSeconds, dose.restSeconds]
  return others.every((value) => value === null) && needed.every((value) => writeRange(value) !== '')
}

function workRestText(dose: Prescription, work: string): string {
  return dose.scheme === 'interval' && isWorkRest(dose) ? `${work} / ${writeSeconds(dose.restSeconds)} rest` : work
}

/** Further work, the clock, rest and tempo. */
function measures(dose: Prescription): string[] {
  const every = writeSeconds(dose.intervalSeconds)
  const rest = dose.scheme === 'interval' && isWorkRest(dose) ? '' : writeSeconds(dose.restSeconds)
  const between = dose.restBetween === null ? '' : ` between ${dose.restBetween}`
  return [
    ...workTexts(dose).slice(1),
    every === '' ? '' : dose.scheme === 'emom' ? `EMOM every ${every}` : `new set every ${every}`,
    rest === '' ? '' : `rest ${rest}${between}`,
    // In text an x means "as fast as you can", so a phase that was not said is a question mark.
    dose.tempo === null ? '' : `tempo ${dose.tempo.replaceAll('x', '?')}`,
  ]
}

// Notes in the words that readDose itself would choose need no quotes.
const PLAIN_LOAD = /^(?:\d+(?:\.\d+)?(?:-\d+(?:\.\d+)?)? (?:% 1RM|kg|lb)|bodyweight)$/
const PLAIN_EFFORT =
  /^(?:RPE \d+(?:-\d+)?|\d+(?:-\d+)? in reserve|Borg \d+(?:-\d+)?|zone \d|all out|last set to failure)$/
const PLAIN_FREQUENCY = /^(?:(?:once|twice|\d+(?:-\d+)? times) a (?:week|day)|every day|every other day|most days)$/

function notes(dose: Prescription): string[] {
  return [
    noteText('load', dose.load, PLAIN_LOAD),
    noteText('effort', dose.effort, PLAIN_EFFORT),
    noteText('frequency', dose.frequency, PLAIN_FREQUENCY),
    noteText('progression', dose.progression, null),
    noteText('open', dose.open, null),
  ]
}

function noteText(name: string, words: string | null, plain: RegExp | null): string {
  if (words === null) return ''
  return plain?.test(words) ? words : `${name} ${quoted(words)}`
}

function quoted(words: string): string {
  return `"${words.replaceAll(/[\\"]/g, '\\$&')}"`
}

function thenText(dose: Prescription): string {
  return isOneAmount(dose) ? writeDose(dose) : `[${writeDose(dose)}]`
}

function levelText({ level, dose }: Prescription['byLevel'][number]): string {
  const name = /^\p{Ll}[\p{Ll} -]*$/u.test(level) ? level : quoted(level)
  const text = writeDose(dose)
  return `; ${name}: ${dose.byLevel.length > 0 || dose.then.length > 0 ? `[${text}]` : text}`
}

/** Nothing but one number of repetitions, breaths or seconds. */
function isOneAmount(dose: Prescription): boolean {
  const texts = workTexts(dose)
  return (
    texts.length === 1 &&
    writeDose({ ...dose, byLevel: [], then: [] }) === texts[0] &&
    dose.then.length === 0 &&
    dose.byLevel.length === 0
  )
}

function scaled({ min, max }: { min: number | null; max: number | null }, by: number): Range {
  return { min: min === null ? null : Math.round(min * by), max: max === null ? null : Math.round(max * by) }
}
