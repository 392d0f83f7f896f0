/** Finds the kit that a class or a stretch of it uses, from the words said. */
import { CLASS_KIT } from './words/en/kit-words.ts'

/** Kit by how often it is named, most first; what is named once in passing in a long text is left out. */
export function findKit(text: string, least = 2): string[] {
  const counts = CLASS_KIT.map(({ kit, words, weight }) => ({
    kit,
    count: (text.match(words)?.length ?? 0) * weight,
  }))
  return counts
    .filter(({ count }) => count >= least)
    .sort((a, b) => b.count - a.count)
    .map(({ kit }) => kit)
}
