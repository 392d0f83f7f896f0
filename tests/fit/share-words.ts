/** Compares names as the scorer of the corpus does. */
import { foldName } from '../../core/catalogue/fold-words.ts'

/** At least half of the words of both. */
export function shareWords(a: string, b: string): boolean {
  const [one, two] = [foldName(a).split(' '), foldName(b).split(' ')]
  const common = one.filter((word) => two.includes(word)).length
  return (2 * common) / (one.length + two.length) >= 0.5
}
