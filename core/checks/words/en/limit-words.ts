/** Words by which an instructor sets a limit, and angles in degrees. */
import { readAmounts } from '../../../dose/read-amounts.ts'

/** "No lower than", "not past", "never beyond", "at most". */
export const NO_FURTHER =
  /\b(?:no|not|never|don'?t|do not)\b[^.]{0,20}\b(?:lower|further|farther|deeper|higher|past|beyond|above|below|more)\b|\bat (?:the )?most\b|\bmaximum\b/i

const TENS = 'ten|fifteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety'
const ANGLE = new RegExp(
  `((?:${TENS}|\\d{1,3})(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?)[ -]degrees?`,
  'gi',
)

/** The angles that the words name, in degrees, in the order said. */
export function degreesIn(text: string): number[] {
  return [...text.matchAll(ANGLE)].flatMap(([, number = '']) => {
    const [first] = readAmounts(number.replace('-', ' '))
    return first?.max === undefined || first.max === null ? [] : [first.max]
  })
}
