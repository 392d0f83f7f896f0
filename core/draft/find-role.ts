/** Says what part a sentence plays in a class: teaching, counting, ending a set, going on, cheering or chat. */
import { plainRole } from './words/en/roles.ts'

/** teach = carries a cue; work = counting, a dose, "go", praise while working; end = the set or exercise is over; move = going to the next thing; chat = all else. */
export type Role = 'teach' | 'work' | 'end' | 'move' | 'chat'

/** The role of a sentence in plain words. */
export function findRole(words: string, hasCue: boolean): Role {
  const plain = plainRole(words)
  if (plain !== null) return plain
  return hasCue ? 'teach' : 'chat'
}
