/**
 * A small language for phrases that people say, so that word lists stay readable to those who know the trade.
 *
 *   pull*        a word that starts so                     head|neck    one of these
 *   light_headed words that follow each other              {no}         one of a named group
 *   ..           up to three words between                 ...          up to eight words between
 *   A & B        both in one sentence, in any order, at most fourteen words apart
 *
 * Apostrophes, capitals and commas do not matter: "don't" and "dont" are one word.
 */

/** Named groups of alternatives, as `no: "don't|never|not"`. */
export type PhraseGroups = Readonly<Record<string, string>>

/** True when the sentence (from `plainSentences`) says the phrase. */
export type Phrase = (sentence: string) => boolean

/**
 * Builds the test of one phrase. A group that is not known is a fault of the word list and throws.
 * @param unlessAfter words in front of a find that undo it, as "don't".
 */
export function readPhrase(pattern: string, groups: PhraseGroups = {}, unlessAfter: RegExp | null = null): Phrase {
  const parts = pattern.split(' & ').map((part) => sequence(part, groups))
  const [first, second] = parts
  if (parts.length > 2 || first === undefined) throw new RangeError(`A phrase has one or two parts: ${pattern}`)
  const source = second === undefined ? first : `(?:${first}${apart(14)}${second}|${second}${apart(14)}${first})`
  const end = '(?= |$)'
  if (unlessAfter === null) {
    const test = new RegExp(`${source}${end}`)
    return (sentence) => test.test(sentence)
  }
  const every = new RegExp(`${source}${end}`, 'g')
  return (sentence) => [...sentence.matchAll(every)].some(({ index }) => !unlessAfter.test(sentence.slice(0, index)))
}

/** The sentences of a text in plain words: lower case, single spaces, a space in front, fillers and doubled words left out. */
export function plainSentences(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[.!;:]+(?=\s|$)|\n/)
    .map((sentence) => plainWords(sentence))
    .filter((sentence) => sentence !== '')
}

const FILLERS = / (?:um+|uh+|er|erm|you know|sort of|kind of|i mean)(?= )/g

function plainWords(sentence: string): string {
  const words = sentence.replace(/['’‘`]/g, '').match(/[a-z0-9]+/g)
  if (!words) return ''
  const clean = ` ${words.join(' ')} `.replace(FILLERS, '').trim()
  return clean === '' ? '' : ` ${clean.replace(/\b(\w+)(?: \1\b)+/g, '$1')}`
}

function sequence(part: string, groups: PhraseGroups): string {
  const tokens = part.trim().split(/\s+/)
  return tokens
    .map((token) => {
      if (token === '..') return apart(3)
      if (token === '...') return apart(8)
      return ` (?:${alternatives(token, groups).join('|')})`
    })
    .join('')
}

function alternatives(token: string, groups: PhraseGroups): string[] {
  return token.split('|').flatMap((word) => {
    const group = /^\{(\w+)\}$/.exec(word)?.[1]
    if (group === undefined) return [word.replace(/['’]/g, '').replace(/_/g, ' ').replace(/\*/g, '[^ ]*')]
    const content = groups[group]
    if (content === undefined) throw new RangeError(`No such group of words: ${group}`)
    return alternatives(content, groups)
  })
}

const apart = (words: number): string => `(?: [^ ]+){0,${words}}?`
