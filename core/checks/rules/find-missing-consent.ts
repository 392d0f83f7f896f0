/** Stops everything while someone is in the picture without a consent that holds. */
import type { PersonShown } from '../../../shared/log-sheet.ts'
import type { Found, Rule } from '../rule.ts'

export const PERSON_WITHOUT_CONSENT: Rule = {
  id: 'person-without-consent',
  why: 'A person in the picture must have agreed, may withdraw at any time, and is then taken out.',
  source: 'Regulation (EU) 2016/679, Article 7(3) on withdrawal; for under-18s, common practice; local rules decide',
  waivable: false,
  find: ({ sheet, nowUtc }) => {
    if (sheet.people === null) {
      return [
        {
          severity: 'note',
          segmentId: null,
          at: null,
          message: 'Nobody has said who is in the picture. List the people, or say that there is only the instructor.',
        },
      ]
    }
    return sheet.people.flatMap((person) => problemOf(person, nowUtc))
  },
}

function problemOf(person: PersonShown, nowUtc: number | null): Found[] {
  const lack = lackOf(person, nowUtc)
  if (lack === null) return []
  return [{ severity: 'stop', segmentId: null, at: null, message: `${person.name}: ${lack}` }]
}

function lackOf({ consent, untilUtc, under18 }: PersonShown, nowUtc: number | null): string | null {
  if (consent === 'withdrawn') return 'consent was withdrawn. Leave out what shows this person.'
  if (consent !== 'given') {
    return under18
      ? 'is under 18 and nobody has agreed for this person. Get it from a parent or guardian, or leave out what shows this person.'
      : 'has not agreed to be shown. Ask, or leave out what shows this person.'
  }
  if (untilUtc !== null && nowUtc !== null && untilUtc < nowUtc) {
    return 'consent has run out. Ask again, or leave out what shows this person.'
  }
  return null
}
