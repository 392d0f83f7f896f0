/** Folds words so that "Press-ups", "press up" and "pressup" come out alike, each folded word knowing its place in the text. */
import { remember } from '../remember.ts'
import { COMPOUNDS, FILLERS, IRREGULAR_PLURALS } from './words/en/spellings.ts'

/** One folded word and the characters of the text it came from. A compound gives several words with the same place. */
export interface FoldedWord {
  text: string
  offset: number
  end: number
  plural: boolean
  /** A mark such as a comma stands before it: no name goes across. */
  afterMark: boolean
}

/** The folded words of a text; hesitations ("um") and doubled words are left out. */
export const foldWords = remember(2000, (text): readonly FoldedWord[] => {
  const words: FoldedWord[] = []
  let read = 0
  let isMarked = false
  let said = ''
  for (const match of text.toLowerCase().matchAll(/[\p{L}\p{N}]+(?:['’][\p{L}]+)*/gu)) {
    const raw = bareWord(match[0])
    const offset = match.index
    const end = offset + match[0].length
    isMarked ||= MARK.test(text.slice(read, offset))
    read = end
    if (FILLERS.has(raw)) continue
    const afterMark = isMarked
    if (raw === said && !afterMark && !NUMBERS.test(raw)) continue
    said = raw
    isMarked = false
    const { parts, plural } = partsOf(raw)
    parts.forEach((part, index) => words.push({ text: part, offset, end, plural, afterMark: afterMark && index === 0 }))
  }
  return words
})

/** Without apostrophes and accents. */
function bareWord(word: string): string {
  if (/^[a-z0-9]+$/.test(word)) return word
  return word.replace(/['’]/g, '').normalize('NFD').replace(/\p{M}/gu, '')
}

const MARK = /[.,;:!?…()\n\v]/

/** The words that one word stands for. */
const partsOf = remember(5000, (word) => {
  const one = singular(word)
  return { parts: COMPOUNDS.get(word) ?? COMPOUNDS.get(one) ?? [one], plural: one !== word }
})

/** The folded words of a name as one string: two spellings of one name give the same. */
export function foldName(name: string): string {
  return foldWords(name)
    .map((word) => word.text)
    .join(' ')
}

function singular(word: string): string {
  const irregular = IRREGULAR_PLURALS.get(word)
  if (irregular !== undefined) return irregular
  if (word.length <= 3 || /(?:ss|us|is|\d)$/.test(word)) return word
  if (word.endsWith('ies') && word.length > 4) return `${word.slice(0, -3)}y`
  if (/(?:ss|sh|tch|nch|ach|x|zz)es$/.test(word)) return word.slice(0, -2)
  return word.endsWith('s') ? word.slice(0, -1) : word
}

/** "Thirty thirty" and "ninety-ninety" are names, not doubled words. */
const NUMBERS = /^(?:\d+|ten|fifteen|\w+ty|one|two|three|four|five|six|seven|eight|nine)$/
