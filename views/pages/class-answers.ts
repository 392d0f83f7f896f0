/** What is asked about a class or a kind of class: who it is for, its kit, who is in the picture, the music. */
import { Audience } from '../../shared/log-sheet.ts'
import type { Music, PersonShown } from '../../shared/log-sheet.ts'
import { upperFirst } from './format.ts'
import { AUDIENCE_NAMES } from './names.ts'

export interface AnswersInput {
  /** null = nobody has said, as with the two below. */
  audience: readonly Audience[] | null
  equipment: readonly string[]
  music: Music | null
  people: readonly PersonShown[] | null
}

/** Fields of the templates `parts/class-who` and `parts/class-rights`. */
export interface ClassAnswers {
  audience: Choice[]
  equipment: string
  shown: Choice[]
  people: PersonRow[]
  music: Choice[]
}

export interface Choice {
  value: string
  label: string
  chosen: boolean
}

interface PersonRow {
  number: number
  name: string
  scope: string
  until: string
  isUnder18: boolean
  consent: Choice[]
}

const MUSIC_WORDS = {
  none: 'None',
  own: 'Our own',
  licensed: 'Licensed for this use',
  unknown: 'I do not know',
} as const satisfies Record<Music, string>

const CONSENT_WORDS = {
  unknown: 'Not asked yet',
  given: 'Agreed',
  none: 'Did not agree',
  withdrawn: 'Took it back',
} as const satisfies Record<PersonShown['consent'], string>

/** Empty rows for people, beside those that are known. */
const ROWS = 3

export function buildAnswers({ audience, equipment, music, people }: AnswersInput): ClassAnswers {
  return {
    audience: Audience.options.map((value) => ({
      value,
      label: upperFirst(AUDIENCE_NAMES[value]),
      chosen: audience?.includes(value) ?? false,
    })),
    equipment: equipment.join(', '),
    shown: [
      { value: 'nobody', label: 'The instructor only', chosen: people?.length === 0 },
      { value: 'others', label: 'Others too', chosen: (people ?? []).length > 0 },
    ],
    people: buildPeople(people ?? []),
    music: choicesOf(MUSIC_WORDS, music ?? ''),
  }
}

/** "agreed until 3 May 2026", for a list. */
export function describePerson({ name, consent, scope, untilUtc, under18 }: PersonShown): string {
  const until = untilUtc === null ? '' : ` until ${dayOf(untilUtc)}`
  const facts = [
    `${CONSENT_WORDS[consent].toLowerCase()}${until}`,
    ...(scope ? [scope] : []),
    ...(under18 ? ['under 18'] : []),
  ]
  return `${name} (${facts.join(', ')})`
}

export const describeMusic = (music: Music | null): string =>
  music === null ? 'not said' : MUSIC_WORDS[music].toLowerCase()

export function choicesOf(words: Readonly<Record<string, string>>, chosen: string): Choice[] {
  return Object.entries(words).map(([value, label]) => ({ value, label, chosen: value === chosen }))
}

function buildPeople(people: readonly PersonShown[]): PersonRow[] {
  const empty = Array.from({ length: ROWS }, () => null)
  return [...people, ...empty].map((person, index) => ({
    number: index + 1,
    name: person?.name ?? '',
    scope: person?.scope ?? '',
    until: person?.untilUtc == null ? '' : dayOf(person.untilUtc),
    isUnder18: person?.under18 ?? false,
    consent: choicesOf(CONSENT_WORDS, person?.consent ?? 'unknown'),
  }))
}

/** As date fields have it. */
const dayOf = (utcMs: number): string => new Date(utcMs).toISOString().slice(0, 10)
