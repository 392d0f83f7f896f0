/** Finds every place where an exercise may be named: names of the catalogue, and words that stand where a name would. */
import { findEntry } from '../catalogue/find-entry.ts'
import { foldName, foldWords } from '../catalogue/fold-words.ts'
import { BRINGS, CLOSES } from './announcing-tests.ts'
import { findNamings } from './find-namings.ts'
import { markLists } from './mark-lists.ts'
import type { Candidate, CandidateSource, Naming } from './naming.ts'
import type { Sentence, Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'
import { NAME_ENDINGS, NEVER_IN_NAME } from './words/en/announcing.ts'
import {
  ARTICLE,
  ARTICLE_WORD,
  BEARS_NAME,
  CALLED,
  CLOSES_NAME,
  ENDS_NAME,
  HELPS_NAME,
  IMPERATIVE,
  IN_TURN,
  KIT_ALONE,
  NAME_IN_CLAUSE,
  NEVER_LAST,
  NEVER_WITHIN,
  OPENS_OTHER,
  PART_OF_ONE_SIDE,
  POINTED_AT,
  SPEAKS,
  WITHIN_NAME,
} from './words/en/name-shapes.ts'
import { groupOf } from './words/en/word-groups.ts'

/** All candidates of a class in order. @param kit kit of the class, most likely first. */
export function findCandidates(speech: Speech, kit: readonly string[]): Candidate[] {
  const found = new Found(speech, kit)
  const times = countSaid(speech)
  for (const sentence of speech.sentences) {
    addClauses(found, speech, sentence)
    addBrought(found, speech, sentence, times)
  }
  addParts(found, speech)
  return withLists(speech, found.inOrder())
}

/** The candidates found so far; a longer name takes the place of nothing but lies beside the shorter one. */
class Found {
  private readonly all: Candidate[]
  private readonly speech: Speech
  private readonly kit: readonly string[]
  /** Indexes into `all` by the sentence they begin in: candidates do not cross sentences. */
  private readonly bySentence = new Map<number, Candidate[]>()

  constructor(speech: Speech, kit: readonly string[]) {
    this.speech = speech
    this.kit = kit
    this.all = []
    for (const naming of findNamings(speech, kit)) {
      const source = naming.entry ? 'known' : naming.strength > 0 ? 'rule' : 'own'
      this.put({ ...naming, source, key: naming.entry?.id ?? foldName(naming.name) })
    }
  }

  private put(candidate: Candidate): void {
    this.all.push(candidate)
    const list = this.bySentence.get(candidate.sentence)
    if (list) list.push(candidate)
    else this.bySentence.set(candidate.sentence, [candidate])
  }

  touching(sentence: number, offset: number, end: number): Candidate[] {
    return [sentence - 1, sentence, sentence + 1]
      .flatMap((index) => this.bySentence.get(index) ?? [])
      .filter((other) => other.offset < end && offset < other.end)
  }

  add(sentence: Sentence, offset: number, name: string, source: CandidateSource, late: boolean): void {
    if (!isPossibleName(name)) return
    const end = offset + name.length
    const touching = this.touching(sentence.index, offset, end)
    const isBetter = (other: Candidate): boolean =>
      other.end - other.offset >= name.length || !other.entry || (other.strength >= 2 && !other.listed)
    if (touching.some(isBetter) || (touching.length > 0 && !/^[\p{L}'’-]+ /u.test(name))) return
    const entry = findEntry(name, { kit: this.kit })
    const bare =
      offset === sentence.offset || /(?:^|[.!?…\n])\s*$/.test(this.speech.text.slice(Math.max(0, offset - 3), offset))
    const key = entry?.id ?? foldName(name)
    this.put({
      ...blank(sentence.index, offset, name),
      ...{ entry, late, bare, key, source: touching.length > 0 ? 'longer' : source },
    })
  }

  addPart(sentence: Sentence, offset: number, name: string, key: string): void {
    if (this.touching(sentence.index, offset, offset + name.length).length === 0)
      this.put({ ...blank(sentence.index, offset, name), source: 'part', key })
  }

  inOrder(): Candidate[] {
    return this.all.toSorted((a, b) => a.offset - b.offset || b.end - a.end)
  }
}

function blank(sentence: number, offset: number, name: string): Naming {
  return {
    ...{ entry: null, kind: 'own', name, offset, end: offset + name.length, sentence, strength: 0 },
    ...{ late: false, bare: false, listed: false, back: false, described: false },
  }
}

/** What stands alone in its clause. */
function addClauses(found: Found, speech: Speech, sentence: Sentence): void {
  for (const { from, lead, name } of clausesOf(speech, sentence)) {
    const source = from > sentence.offset ? 'clause' : lead.trim() === '' ? 'alone' : 'led'
    found.add(sentence, from + lead.length, name, source, CLOSES.test(plainWords(lead)))
  }
}

function clausesOf(speech: Speech, sentence: Sentence): { from: number; lead: string; name: string }[] {
  let from = sentence.offset
  return speech.text
    .slice(sentence.offset, sentence.end)
    .split(/(?<=[,;:–—\v!?.…])/)
    .flatMap((clause) => {
      const [, lead = '', name = ''] = NAME_IN_CLAUSE.exec(clause) ?? []
      const at = from
      from += clause.length
      return name.trim() === '' ? [] : [{ from: at, lead, name: name.trim() }]
    })
}

/** What stands behind words that bring a name or bear one. */
function addBrought(found: Found, speech: Speech, sentence: Sentence, times: ReadonlyMap<string, number>): void {
  const said = speech.text.slice(sentence.offset, sentence.end)
  const words = [...said.matchAll(/[\p{L}\d'’-]+/gu)]
  words.forEach((word, index) => {
    const before = said.slice(0, word.index)
    if (index === 0 || ARTICLE_WORD.test(word[0]) || /[.!?…\n]\s*$/.test(before)) return
    const [whole, clause] = [lastWords(before), lastWords(/[^,;:\v]*$/.exec(before)?.[0] ?? '')]
    const brings = [whole, clause].some((said) => BRINGS.test(said) || CALLED.test(said) || IN_TURN.test(said))
    const closes = CLOSES.test(whole) || CLOSES.test(clause)
    if (!brings && !closes && !POINTED_AT.test(clause) && !ARTICLE.test(clause)) return
    const { name, ends } = nameFrom(said, words, index)
    if (name === '') return
    const at = sentence.offset + word.index
    if (brings || closes) found.add(sentence, at, name, brings ? 'brought' : 'closed', !brings)
    else {
      const folded = foldWords(name).map(({ text }) => text)
      const isOften = (times.get(folded.join(' ')) ?? 0) >= 2
      const isLike = (ends || isOften) && (NAME_ENDINGS.has(folded.at(-1) ?? '') || isOften)
      if (isLike && !folded.every((one) => BODY_WORDS.has(groupOf(one) ?? '')))
        found.add(sentence, at, name, isOften ? 'often' : 'ending', BEARS_NAME.test(clause))
    }
  })
}

/** The plain words right before a name: what brings it is no longer. Behind the start of a long text stands a dash. */
function lastWords(before: string): string {
  if (before.length <= LONGEST_LEAD) return withIs(before)
  const from = before.indexOf(' ', before.length - LONGEST_LEAD)
  return `- ${withIs(before.slice(from))}`
}

/** Characters. */
const LONGEST_LEAD = 80

/** Plain words, "number two's" as "number two is". */
export function withIs(text: string): string {
  return plainWords(text.replace(/['’]s\s*$/i, ' is '))
}

const BODY_WORDS: ReadonlySet<string> = new Set(['part', 'place', 'num', 'kit', 'take', 'ill', 'carer'])

/** Up to four words in a row from one on, and whether the clause ends with them. */
function nameFrom(said: string, words: readonly RegExpMatchArray[], from: number): { name: string; ends: boolean } {
  let to = from
  const endOf = (index: number): number => (words[index]?.index ?? 0) + (words[index]?.[0].length ?? 0)
  const goesOn = (index: number): boolean => /^\s+$/.test(said.slice(endOf(index - 1), words[index]?.index))
  while (to < words.length && to - from < 4 && !ENDS_NAME.has(words[to]?.[0].toLowerCase() ?? '')) {
    if (to > from && !goesOn(to)) break
    to += 1
  }
  const start = words[from]?.index ?? 0
  return { name: to === from ? '' : said.slice(start, endOf(to - 1)), ends: to >= words.length || !goesOn(to) }
}

/** A part of a name that the class uses elsewhere, alone in its clause: "Tucks." of knee tucks. */
function addParts(found: Found, speech: Speech): void {
  const parts = new Map<string, string>()
  for (const { entry, strength, source, name, key } of found.inOrder()) {
    if (!entry && strength < 2 && !['brought', 'closed', 'alone'].includes(source)) continue
    const words = foldName(name).split(' ')
    words.slice(1).forEach((_, cut) => {
      for (const part of [words.slice(cut + 1).join(' '), words.slice(0, cut + 1).join(' ')])
        if (part.length > 3 && !NEVER_IN_NAME.has(part) && !parts.has(part)) parts.set(part, key)
    })
  }
  for (const sentence of speech.sentences) {
    for (const { from, lead, name } of clausesOf(speech, sentence)) {
      const key = name.split(/\s+/).length <= 3 ? parts.get(foldName(name)) : undefined
      if (key !== undefined) found.addPart(sentence, from + lead.length, name, key)
    }
  }
}

/** Marks what is told in a row. */
function withLists(speech: Speech, all: readonly Candidate[]): Candidate[] {
  const inRows = all.filter(({ entry, source }) => entry !== null || IN_ROWS.has(source))
  const listed = new Set(markLists(speech, inRows).flatMap((naming) => (naming.listed ? [naming.offset] : [])))
  return all.map((one) => (listed.has(one.offset) ? { ...one, listed: true } : one))
}

const IN_ROWS: ReadonlySet<CandidateSource> = new Set(['brought', 'often', 'ending', 'clause', 'rule', 'longer'])

/** How often each one, two or three words in a row are said, folded. */
function countSaid(speech: Speech): Map<string, number> {
  const times = new Map<string, number>()
  for (const { offset, end } of speech.sentences) {
    const words = foldWords(speech.text.slice(offset, end))
    words.forEach((_, from) => {
      for (const count of [1, 2, 3]) {
        const row = words.slice(from, from + count)
        if (row.length < count || row.slice(1).some(({ afterMark }) => afterMark)) break
        const key = row.map(({ text }) => text).join(' ')
        times.set(key, (times.get(key) ?? 0) + 1)
      }
    })
  }
  return times
}

function isPossibleName(name: string): boolean {
  const words = name.toLowerCase().replace(/[’']/g, '').split(/\s+/)
  const [first = ''] = words
  const last = words.at(-1) ?? ''
  if (
    words.length > 4 ||
    /\d/.test(name) ||
    !/\p{L}{2}/u.test(name) ||
    IMPERATIVE.test(words.join(' ')) ||
    SPEAKS.test(words.join(' ')) ||
    PART_OF_ONE_SIDE.test(words.join(' '))
  )
    return false
  if (OPENS_OTHER.test(first) || WITHIN_NAME.has(first) || NEVER_LAST.has(last)) return false
  if (words.some((word) => NEVER_WITHIN.has(word)) || KIT_ALONE.test(words.join(' '))) return false
  const mayClose = words.length > 1 && (CLOSES_NAME.has(last) || HELPS_NAME.has(last))
  if (NEVER_IN_NAME.has(last) && !mayClose) return false
  return !words.slice(0, -1).some((word) => NEVER_IN_NAME.has(word) && !HELPS_NAME.has(word) && !WITHIN_NAME.has(word))
}
