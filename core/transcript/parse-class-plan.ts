/** Reads a class plan: exercises and doses, one a line, no times. */
import { AppError } from '../../shared/errors.ts'
import type { ClassPlan } from '../../shared/transcript.ts'
import { BadLines } from './bad-lines.ts'

type Item = ClassPlan['items'][number]

const LONGEST_NAME = 80
const MOST_NAME_WORDS = 12
const LONGEST_LINE = 300

/**
 * Reads cleaned text. The first `# …` line is the title; further lines starting with #, // or ; are comments.
 * Numbers and bullets in front of a name are passed over.
 * @throws AppError transcript-line for lines that hold no name; transcript-unknown when that is most of the text.
 */
export function parseClassPlan(text: string): ClassPlan {
  const bad = new BadLines()
  const items: Item[] = []
  let title: string | null = null
  text.split('\n').forEach((raw, index) => {
    const line = raw.trim()
    const heading = /^#+\s*(.*)$/.exec(line)
    if (heading) title ??= heading[1] ?? null
    if (line === '' || heading || line.startsWith('//') || line.startsWith(';')) return
    if (line.length > LONGEST_LINE) {
      bad.add(index + 1, 'too long for the name of an exercise')
      return
    }
    const item = readItem(line, index + 1)
    if (!/\p{L}/u.test(item.name)) bad.add(index + 1, 'no name of an exercise')
    else if (item.name.length > LONGEST_NAME || item.name.split(/\s+/).length > MOST_NAME_WORDS)
      bad.add(index + 1, 'too long for the name of an exercise')
    else items.push(item)
  })
  if (items.length === 0 || bad.count > items.length) throw unknownForm()
  bad.stop('a class plan, one exercise a line: it has no time stamps')
  return { kind: 'plan', title: title === '' ? null : title, items }
}

function unknownForm(): AppError {
  return new AppError(
    'transcript-unknown',
    'The text is no transcript and no class plan. Give WebVTT, SRT, text with a [m:ss] stamp before each block, JSON with words, or a plan with one exercise a line.',
  )
}

function readItem(raw: string, line: number): Item {
  const text = raw.replace(/^(?:\d{1,3}[.)]\s+|[-*•·–—]\s+)/, '').trim()
  const [name, doseText] = splitAtMark(text) ?? splitAtDose(text) ?? [text, null]
  return { line, name: name.replace(/[\s,:;–—-]+$/, '').trim(), doseText }
}

/** What may stand at the start of a dose: a number or number word, or words for doses without a number. */
const STARTS_DOSE =
  /^(?:\d|x\s?\d|×|(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|sixty|half|an?)\s+\S|max\b|amrap\b|emom\b|to failure\b|as (?:many|long)\b|until\b)/i

/** `name: dose`, `name - dose`, `name, dose`, `name (dose)`, or a tab between them. */
function splitAtMark(text: string): [string, string] | null {
  for (const mark of [/\t+/, /:\s+/, /\s+[-–—]+\s+/, /,\s+/, /\s+\(/]) {
    const found = mark.exec(text)
    if (!found) continue
    const rest = text.slice(found.index + found[0].length).replace(found[0].endsWith('(') ? /\)$/ : /$^/, '')
    if (found.index > 0 && STARTS_DOSE.test(rest)) return [text.slice(0, found.index), rest.trim()]
  }
  return null
}

/** A number with a unit, or sets by reps: `3 x 10`, `x 10`, `45 s`, `8 each side`, `2 rounds`; or a number that ends the line. */
const DOSE_IN_LINE =
  /(?:^|\s)(?:(?:x|×)\s?\d|(?:\d+(?:[.,]\d+)?(?:\s?(?:-|–|to)\s?\d+)?)\s?(?:(?:x|×|sets?|rounds?|reps?|times|breaths?|strokes?|lengths?|laps?|s|secs?|seconds?|min|mins|minutes?|m|metres?|meters?|km|kg|each|per|e\/s|calories|cals?)(?![\p{L}])|["']|$)|(?:max|amrap)\b)/iu

function splitAtDose(text: string): [string, string] | null {
  const found = DOSE_IN_LINE.exec(text)
  if (!found || found.index === 0) return null
  return [text.slice(0, found.index), text.slice(found.index).trim()]
}
