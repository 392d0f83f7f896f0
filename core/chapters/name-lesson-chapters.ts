/** Names the chapters of one lesson so that no two are alike and each says what it is about. */
import type { Cue } from '../../shared/log-sheet.ts'
import { CHAPTER_TITLES } from './chapter-titles.ts'

/** No more than this is quoted, so that a row of chapters can be read at a glance. */
const MOST_WORDS = 6
const MOST_CHARACTERS = 40

/**
 * The first of a kind keeps its plain name ("Movement"). A later one bears what its first cue is about ("Pace"), else
 * its own words ("Movement: heels stay heavy …"), else a number.
 * @param chapters in order of time; `cue` is the one that starts the chapter
 */
export function nameLessonChapters(chapters: readonly { title: string; cue: Pick<Cue, 'kind' | 'text'> | null }[]) {
  const taken = new Set<string>()
  const plain = new Set(chapters.map(({ title }) => title))
  return chapters.map(({ title, cue }) => {
    const isFree = (name: string): boolean => !taken.has(name) && (name === title || !plain.has(name))
    let name = sayings(title, cue).find(isFree) ?? title
    for (let number = 2; !isFree(name); number += 1) name = `${title} (${number})`
    taken.add(name)
    return name
  })
}

/** Best first. */
function sayings(title: string, cue: Pick<Cue, 'kind' | 'text'> | null): string[] {
  if (!cue) return [title]
  const words = firstWords(cue.text)
  return [title, CHAPTER_TITLES.finer[cue.kind], ...(words === '' ? [] : [`${title}: ${words}`])]
}

/** The beginning of what is said, as it is said, up to the end of a clause where one is near; "…" where more follows. */
function firstWords(text: string): string {
  const all = text.split(/\s+/).filter((word) => word !== '')
  const words = all.slice(0, MOST_WORDS)
  while (words.length > 0 && words.join(' ').length > MOST_CHARACTERS) words.pop()
  const clauseEnd = words.findLastIndex((word) => /[,.;:!?]$/.test(word))
  if (words.length < all.length && clauseEnd > 1) words.length = clauseEnd + 1
  // the mark that ends a clause would stand oddly before "…" and at the end of a name
  const start = words.join(' ').replace(/[\s,.;:!?–-]+$/, '')
  return start !== '' && words.length < all.length ? `${start} …` : start
}
