/** Finds the coach's own names where nobody knew them for names yet, as in the programme at the start. */
import type { Teaching } from './find-exercises.ts'
import type { Naming } from './naming.ts'
import type { Speech } from './read-speech.ts'

/** The namings with those places where a name of the coach's own is said, as in the programme: nobody knew it for a name there. */
export function withOwnNames(speech: Speech, teachings: readonly Teaching[], known: readonly Naming[]): Naming[] {
  const text = speech.text.toLowerCase()
  // a few letters grow when they are made small; then no place would be right
  if (text.length !== speech.text.length) return [...known]
  const start = Math.min(...teachings.flatMap(({ spans }) => spans.map(({ offset }) => offset)))
  const isTaken = new Uint8Array(Number.isFinite(start) ? start : 0)
  for (const { offset, end } of known) isTaken.fill(1, offset, end)
  const found = teachings.flatMap(({ entry, name, alsoCalled }) =>
    [name, ...alsoCalled].flatMap((one): Naming[] => {
      if (one.length < LEAST_NAME) return []
      const places: Naming[] = []
      for (let at = text.indexOf(one); at >= 0 && at < start; at = text.indexOf(one, at + one.length)) {
        const isWord = !/[a-z\d]/.test(text[at - 1] ?? ' ') && !/[a-z\d]/.test(text[at + one.length] ?? ' ')
        if (!isWord || isTaken[at] === 1 || isTaken[at + one.length - 1] === 1) continue
        isTaken.fill(1, at, at + one.length)
        const place = { offset: at, end: at + one.length, sentence: speech.sentenceAt(at) }
        places.push({
          ...{ entry, kind: 'own', name: one, ...place, strength: 1 },
          ...{ late: false, bare: false, listed: true, back: false, described: false },
        })
      }
      return places
    }),
  )
  return found.length === 0 ? [...known] : [...known, ...found].sort((a, b) => a.offset - b.offset)
}

/** Shorter names are too often part of something else. */
const LEAST_NAME = 4
