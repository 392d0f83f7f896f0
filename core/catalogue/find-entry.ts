/** Finds exercises by name: one name to its entry, and all names in a text. */
import { CATALOGUE, entryById } from './catalogue.ts'
import type { CatalogueEntry } from './entry.ts'
import { foldName, foldWords } from './fold-words.ts'
import type { FoldedWord } from './fold-words.ts'
import { isNameHere } from './guard-everyday.ts'
import { EVERYDAY_NAMES, RECOGNISER_SLIPS, THING_NAMES } from './words/en/everyday-names.ts'
import { KIT_WORDS, LOOSE_WORDS, TAIL_WORDS } from './words/en/name-parts.ts'
import { SHARED_NAMES } from './words/en/shared-names.ts'

/** How plain a name is: `own` means nothing else, `everyday` is also a common word, `thing` is mostly something else. */
export type NameKind = 'own' | 'everyday' | 'thing'

/** A name found in a text; offset and length count characters of that text. */
export interface FoundName {
  entry: CatalogueEntry
  offset: number
  length: number
  kind: NameKind
  /** A word of the name was heard wrongly and put right. */
  slip: boolean
}

/** What is known around a name: the kit of the class, most likely first. */
export interface NameContext {
  kit?: readonly string[]
}

/**
 * The entry a name stands for, or null. Case, plurals, hyphens, articles, kit words in front and "with the band" behind
 * make no difference; the kit decides between exercises that share a short name.
 */
export function findEntry(name: string, context: NameContext = {}): CatalogueEntry | null {
  const words = foldWords(name).map((word) => word.text)
  for (const { parts, kit } of readings(words)) {
    const entry = lookUp(parts.join(' '), [...kit, ...(context.kit ?? [])])
    if (entry) return entry
  }
  return null
}

/**
 * Every exercise name in a text, longest first at each place, in order, not overlapping.
 * Names that are everyday words count only where the words around them make them a name.
 */
export function findNames(text: string, context: NameContext = {}): FoundName[] {
  return matchNames(text, foldWords(text), context).filter((found) => isNameHere(text, found))
}

/** As findNames, without the guard against everyday words: for callers who know that a name must stand here. */
export function matchNames(text: string, words: readonly FoldedWord[], context: NameContext = {}): FoundName[] {
  const found: FoundName[] = []
  for (let at = 0; at < words.length;) {
    const hit = longestName(words, at)
    const first = words[at]
    const last = hit && words[at + hit.count - 1]
    const entry = hit && lookUp(hit.name, context.kit ?? [])
    if (!hit || !first || !last || !entry) {
      at += 1
      continue
    }
    found.push({ entry, offset: first.offset, length: last.end - first.offset, kind: kindOf(hit.name), slip: hit.slip })
    at += hit.count
  }
  return found
}

interface Node {
  next: Map<string, Node>
  id: string | null
}

const ROOT = buildTree()
const NAME_KINDS: ReadonlyMap<string, NameKind> = new Map<string, NameKind>([
  ...EVERYDAY_NAMES.map((name): [string, NameKind] => [foldName(name), 'everyday']),
  ...THING_NAMES.map((name): [string, NameKind] => [foldName(name), 'thing']),
])
const SHARED: ReadonlyMap<string, Readonly<Record<string, string>>> = new Map(
  Object.entries(SHARED_NAMES).map(([name, byKit]) => [foldName(name), byKit]),
)

function buildTree(): Node {
  const root: Node = { next: new Map(), id: null }
  for (const entry of CATALOGUE) {
    for (const name of [entry.name, ...entry.alsoCalled]) {
      let node = root
      for (const { text } of foldWords(name)) {
        const next = node.next.get(text) ?? { next: new Map<string, Node>(), id: null }
        node.next.set(text, next)
        node = next
      }
      node.id ??= entry.id
    }
  }
  return root
}

function lookUp(name: string, kit: readonly string[]): CatalogueEntry | null {
  const shared = SHARED.get(name)
  for (const piece of kit) {
    const id = shared?.[piece]
    if (id !== undefined) return entryById(id)
  }
  let node: Node | undefined = ROOT
  for (const word of name.split(' ')) node = node?.next.get(word)
  return node?.id == null ? null : entryById(node.id)
}

/** The longest name that starts at a word. A slip may stand for at most one word of a name of two or more. */
function longestName(words: readonly FoldedWord[], at: number): { name: string; count: number; slip: boolean } | null {
  let best: { name: string; count: number; slip: boolean } | null = null
  const walk = (node: Node, count: number, parts: string[], slip: boolean): void => {
    if (node.id !== null && count > (best?.count ?? 0)) best = { name: parts.join(' '), count, slip }
    const word = words[at + count]
    if (!word || (count > 0 && word.afterMark)) return
    const next = node.next.get(word.text)
    if (next) walk(next, count + 1, [...parts, word.text], slip)
    const meant = slip ? undefined : RECOGNISER_SLIPS.get(word.text)
    const slipped = meant === undefined ? undefined : node.next.get(meant)
    if (meant !== undefined && slipped) walk(slipped, count + 1, [...parts, meant], true)
  }
  walk(ROOT, 0, [], false)
  return best
}

function kindOf(name: string): NameKind {
  return NAME_KINDS.get(name) ?? 'own'
}

/** A name as said, then with less and less around it: articles, kit in front, "with the band" behind, loose words. */
function readings(words: readonly string[]): { parts: string[]; kit: string[] }[] {
  const all = [...words]
  const result: { parts: string[]; kit: string[] }[] = [{ parts: all, kit: [] }]
  const bare = all.filter(
    (word, index) => !(index === 0 && ['the', 'a', 'an', 'some', 'our', 'your', 'these'].includes(word)),
  )
  result.push({ parts: bare, kit: [] })
  const tail = bare.findIndex((word, index) => index > 0 && TAIL_WORDS.has(word))
  const head = tail > 0 ? bare.slice(0, tail) : bare
  const kit = bare.flatMap((word) => KIT_WORDS.get(word) ?? [])
  if (tail > 0) result.push({ parts: head, kit })
  let rest = head
  while (rest.length > 1 && (KIT_WORDS.has(rest[0] ?? '') || LOOSE_WORDS.has(rest[0] ?? ''))) {
    rest = rest.slice(1)
    result.push({ parts: rest, kit })
  }
  while (rest.length > 1 && LOOSE_WORDS.has(rest.at(-1) ?? '')) {
    rest = rest.slice(0, -1)
    result.push({ parts: rest, kit })
  }
  return result
}
