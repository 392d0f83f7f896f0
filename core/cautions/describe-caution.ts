/** The words offered for a caution, of either layer. */
import { findHazard } from './hazards.ts'
import { findTakeCare } from './take-care.ts'

/** The wording of a hazard's slug or of a take-care rule ("k15"); for a hazard of the instructor's own, its name in plain words. */
export function describeCaution(hazard: string): string {
  return findHazard(hazard)?.offer ?? findTakeCare(hazard)?.text ?? `Take care: ${hazard.replaceAll('-', ' ')}.`
}

/** Its source, with the grade; null for a hazard that no table holds. */
export function sourceOfCaution(hazard: string): string | null {
  const row = findHazard(hazard) ?? findTakeCare(hazard)
  return row === null ? null : `${row.source} (grade ${row.grade})`
}
