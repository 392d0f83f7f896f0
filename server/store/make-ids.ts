/** Ids that sort by the time they were made: time, a count within the millisecond, chance. */
import { randomBytes } from 'node:crypto'

/** Crockford's base 32 alphabet in lower case (from memory): no i, l, o, u, so that it can be read aloud. */
const LETTERS = '0123456789abcdefghjkmnpqrstvwxyz'
const TIME_LETTERS = 9
const COUNT_LETTERS = 3
const CHANCE_LETTERS = 12
/** Chance is fetched for so many ids at once: a single fetch costs more than all the rest of an id. */
const CHANCES = 256
const COUNTS = LETTERS.length ** COUNT_LETTERS

/** Makes a maker of ids of 24 letters and digits; ids of one maker sort in the order they were made. */
export function makeIds(clock: () => number): () => string {
  let lastMs = 0
  let count = 0
  let chances = Buffer.alloc(0)
  const takeChance = (): Buffer => {
    if (chances.length === 0) chances = randomBytes(CHANCE_LETTERS * CHANCES)
    const taken = chances.subarray(0, CHANCE_LETTERS)
    chances = chances.subarray(CHANCE_LETTERS)
    return taken
  }
  return () => {
    const nowMs = Math.max(clock(), lastMs)
    count = nowMs === lastMs ? count + 1 : 0
    lastMs = nowMs
    if (count === COUNTS) {
      lastMs += 1
      count = 0
    }
    const chance = Array.from(takeChance(), (byte) => LETTERS[byte % LETTERS.length]).join('')
    return `${write(lastMs, TIME_LETTERS)}${write(count, COUNT_LETTERS)}${chance}`
  }
}

function write(value: number, letters: number): string {
  let text = ''
  for (let rest = value, at = 0; at < letters; at += 1, rest = Math.floor(rest / LETTERS.length)) {
    text = `${LETTERS[rest % LETTERS.length]}${text}`
  }
  return text
}
