/** Marks the words of unpunctuated speech that open a new thought by the lists of openers alone; what follows "if" is kept with it. */
import {
  CLAUSE_OPENERS,
  NAME_OPENERS,
  NEVER_BEFORE_OPENER,
  POINTERS,
  STRONG_BOUND,
  STRONG_OPENERS,
} from './words/en/openers.ts'

/** For each word, whether a new thought opens with it. @param words with the places where names set a break */
export function openThoughts(words: readonly { text: string; placed: boolean; bound: boolean }[]): boolean[] {
  let since = 0
  let isCondition = false
  return words.map((word, index) => {
    const before = words[index - 1]?.text ?? ''
    const mayOpen = !word.bound || POINTERS.has(word.text)
    let opens = word.placed
    if (word.placed) isCondition = false
    else if (mayOpen && opensThought(word.text, before, since)) {
      if (isCondition && !STRONG_OPENERS.has(word.text)) isCondition = false
      else {
        opens = true
        isCondition = word.text === 'if'
      }
    }
    since = opens ? 1 : since + 1
    return opens
  })
}

function opensThought(word: string, before: string, since: number): boolean {
  if (POINTERS.has(word)) return since >= 2 && !NEVER_BEFORE_OPENER.has(before) && !NAME_OPENERS.has(before)
  if (STRONG_OPENERS.has(word)) return since >= 1 && !STRONG_BOUND.has(before)
  return since >= 3 && CLAUSE_OPENERS.has(word) && !NEVER_BEFORE_OPENER.has(before)
}
