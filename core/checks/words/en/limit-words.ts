/** Words by which an instructor sets a limit, angles in degrees, and seconds held at the top. */
import { readAmounts } from '../../../dose/read-amounts.ts'

/** "No lower than", "not past", "never beyond", "at most". */
export const NO_FURTHER =
  /\b(?:no|not|never|don['’]?t|do not)\b[^.]{0,20}\b(?:lower|further|farther|deeper|higher|past|beyond|above|below|more)\b|\bat (?:the )?most\b|\bmaximum\b/i

/** "Don't", "never": what is spoken against is not asked for. */
export const SPEAKS_AGAINST = /\b(?:no|not|never|don['’]?t|do not|isn['’]?t|aren['’]?t|rather than|instead of)\b/i

const ONES = 'one|two|three|four|five|six|seven|eight|nine'
const TENS = 'ten|fifteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety'
const ANGLE = new RegExp(`((?:${TENS}|\\d{1,3})(?:[ -](?:${ONES}))?)(?:[ -]degrees?\\b| ?°)`, 'gi')

/** The angles that the words name, in degrees, in the order said. */
export function degreesIn(text: string): number[] {
  return [...text.matchAll(ANGLE)].flatMap(([, number = '']) => numberIn(number) ?? [])
}

const COUNT = `(?:(?:${ONES}|${TENS}|eleven|twelve|a couple of|\\d{1,3})(?:[ -](?:${ONES}))?)`
const TO = `(?:(?:${COUNT})(?: to | or | ?[-–] ?))?`
const HELD = '(?:hold|holds|holding|held|pause|pauses|squeeze|squeezes|freeze|stay|wait)'
const PEAK =
  '(?:(?:at|up|in) )*(?:the |your )?(?:very )?(?:top|peak)(?: position| contraction| squeeze| of (?:it|the (?:lift|rep|curl|raise|movement|move)))?'

/** "Hold the top for eight seconds", "a five second squeeze at the top", "pause at the top for a count of four". */
const PEAK_HOLDS = new RegExp(
  [
    `\\b${HELD}(?: it| them| that| each one)?(?: right)? ${PEAK},?(?: and (?:squeeze|stay|hold)(?: it)?)? for (?:a count of )?${TO}(${COUNT})(?: seconds?| secs?| counts?)?\\b(?! (?:breath|rep|time|set|round|minute))`,
    `\\b${HELD}(?: it| them| that| each one)? for (?:a count of )?${TO}(${COUNT})(?: seconds?| secs?| counts?)? ${PEAK}\\b`,
    `\\b${TO}(${COUNT})[ -](?:second|sec|count)s?(?: \\w+)? ${HELD} ${PEAK}\\b`,
    `\\b${PEAK},? ${HELD}(?: it)?(?: there)? for (?:a count of )?${TO}(${COUNT})(?: seconds?| secs?| counts?)?\\b(?! (?:breath|rep|time|set|round|minute))`,
  ].join('|'),
  'gi',
)

/** Holds at the top of a repetition, in seconds, with their words and place. */
export function peakHoldsIn(text: string): { seconds: number; words: string; offset: number }[] {
  return [...text.matchAll(PEAK_HOLDS)].flatMap((match) => {
    const seconds = numberIn(match.slice(1).find((one) => one !== undefined) ?? '')
    return seconds === null ? [] : [{ seconds, words: match[0], offset: match.index }]
  })
}

function numberIn(words: string): number | null {
  const [first] = readAmounts(words.replace('-', ' '))
  return first?.max ?? null
}
