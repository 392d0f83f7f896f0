/** The words offered for a caution, of either layer. */
import { findHazard } from './hazards.ts'
import { findTakeCare } from './take-care.ts'

/** The wording of a hazard's slug or of a take-care rule ("k15"); for a hazard of the instructor's own, its name in plain words. */
export function describeCaution(hazard: string): string {
  return findHazard(hazard)?.offer ?? findTakeCare(hazard)?.text ?? `Take care: ${hazard.replaceAll('-', ' ')}.`
}

/** What the letters of a grade stand for (hazards.ts), for people who read a source. */
const GRADE_WORDS = { S: 'study', G: 'guideline', X: 'expert review', P: 'common practice' } as const
const LETTER = /[SGXP]/g

/** Its source, with its grade in words; null for a hazard that no table holds. */
export function sourceOfCaution(hazard: string): string | null {
  const row = findHazard(hazard) ?? findTakeCare(hazard)
  if (row === null) return null
  const grade = row.grade
    .replace(LETTER, (letter) => GRADE_WORDS[letter as keyof typeof GRADE_WORDS])
    .replace(/[+/]/g, ' and ')
  return row.source.startsWith(grade) ? row.source : `${row.source} (${grade})`
}
