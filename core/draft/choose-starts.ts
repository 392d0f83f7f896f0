/** Chooses the namings that start the teaching of something, and says which exercise each one is about. */
import { entryById } from '../catalogue/catalogue.ts'
import type { CatalogueEntry } from '../catalogue/entry.ts'
import { foldName } from '../catalogue/fold-words.ts'
import type { Naming } from './naming.ts'
import type { Speech } from './read-speech.ts'
import { ALSO_CALLED, START_SHAPES } from './words/en/announcing.ts'

/** A naming that starts a stretch of teaching. */
export interface Start {
  naming: Naming
  /** Who is taught: the same key comes back for a return. */
  key: string
}

/** Namings that start something, without set-up shapes, second names and namings of what is going on already. */
export function chooseStarts(speech: Speech, namings: readonly Naming[]): Start[] {
  const usable = usableNamings(namings)
  const starts: Start[] = []
  const keys = new Keys(namings)
  usable.forEach((naming, index) => {
    const last = starts.at(-1)
    const key = keys.of(naming)
    if (last && last.key === key) return
    if (naming.back && !keys.knows(key)) return
    const since = last ? speech.wordsBefore(naming.offset) - speech.wordsBefore(last.naming.end) : Infinity
    const isShape = START_SHAPES.has(key)
    if (last && isShape && since <= SHAPE_WORDS && !isShapeOf(last)) return
    if (last && isSecondName(speech, last.naming, naming)) return
    // "Now we add the slip. So jab, cross, then ...": what is known already is only part of the new one.
    if (
      last &&
      since <= PART_WORDS &&
      naming.strength === 2 &&
      keys.knows(key) &&
      !starts.slice(0, -1).some(({ key }) => key === last.key)
    )
      return
    if (last && since <= SHAPE_WORDS && isShapeOf(last) && !isShape && naming.strength === 3) starts.pop()
    // "An easy jog back and a calf stretch": only the last of two names in one breath is taught.
    if (last && since <= BREATH_WORDS && last.naming.sentence === naming.sentence && naming.strength >= 2) starts.pop()
    const next = usable[index + 1]
    if (naming.late && next && next.sentence === naming.sentence) return
    starts.push({ naming, key })
    keys.add(key, naming.name)
  })
  return starts
}

/** Namings outside lists that may start something; a description next to a real name adds nothing. */
function usableNamings(namings: readonly Naming[]): Naming[] {
  const named = new Map<number, Naming[]>()
  for (const naming of namings) {
    if (naming.strength >= 2 && !naming.described)
      named.set(naming.sentence, [...(named.get(naming.sentence) ?? []), naming])
  }
  const isNamedNear = (naming: Naming, reach: number): boolean => {
    for (let index = naming.sentence - reach; index <= naming.sentence + reach; index++) {
      if (named.get(index)?.some((other) => other !== naming) === true) return true
    }
    return false
  }
  return namings.filter(
    (naming) => !naming.listed && naming.strength >= 2 && !(naming.described && isNamedNear(naming, DESCRIBED_REACH)),
  )
}

/** A real name within so many sentences says what is described. */
const DESCRIBED_REACH = 4

/**
 * The keys of what is taught. A short name ("squats") is the exercise of that name that the class does or announces
 * ("goblet squats").
 */
class Keys {
  private readonly used = new Set<string>()
  private readonly byEnding = new Map<string, string>()
  /** Listed, and not what the longer name means: "leg swings" and "swings". */
  private readonly apart = new Set<string>()

  constructor(namings: readonly Naming[]) {
    const listed = namings.filter((naming) => naming.listed)
    for (const naming of listed) this.learn(keyOf(naming), naming.name)
    for (const { entry, name } of listed) {
      const longer = entryById(this.byEnding.get(foldName(name)) ?? '')
      if (entry && longer && !isAkin(entry, longer)) this.apart.add(entry.id)
    }
  }

  of(naming: Naming): string {
    const own = keyOf(naming)
    if (this.used.has(own) || this.apart.has(own)) return own
    return this.byEnding.get(foldName(naming.name)) ?? own
  }

  /** True when the exercise of a key was started before. */
  knows(key: string): boolean {
    return this.used.has(key)
  }

  add(key: string, name: string): void {
    this.used.add(key)
    this.learn(key, name)
  }

  private learn(key: string, name: string): void {
    const words = foldName(name).split(' ')
    for (let from = 1; from < words.length; from++) this.byEnding.set(words.slice(from).join(' '), key)
  }
}

/** Squats and goblet squats are; swings of a leg and of a weight are not. */
function isAkin(a: CatalogueEntry, b: CatalogueEntry): boolean {
  return a.movements.some(
    (movement) => movement !== 'ballistic' && movement !== 'balance' && b.movements.includes(movement),
  )
}

function keyOf(naming: Naming): string {
  return naming.entry?.id ?? foldName(naming.name)
}

/** A plank named within so many words of another exercise is the shape it starts from. */
const SHAPE_WORDS = 16

/** What opens a sentence within so many words of a new exercise may be a part of it. */
const PART_WORDS = 4
/** Two names so near to each other in one sentence are told in one breath. */
const BREATH_WORDS = 4

function isShapeOf(start: Start): boolean {
  return START_SHAPES.has(start.key)
}

/** "Skaters. Side hops." and "Five hundreds, ..." right behind "The 500s": a second name of the same exercise. */
function isSecondName(speech: Speech, last: Naming, naming: Naming): boolean {
  const between = speech.text.slice(last.end, naming.offset)
  const words = between.match(/[\p{L}\d]+/gu)?.length ?? 0
  if (words > 2)
    return (
      words <= CALLED_WORDS &&
      (isCalledSo(speech, naming) || IS_ALL.test(speech.text.slice(naming.end, naming.end + 40)))
    )
  const sentence = speech.sentences[naming.sentence]
  const said = sentence ? speech.text.slice(sentence.offset, sentence.end) : ''
  const isSo = isCalled(said) || CALLED_BEHIND.test(speech.text.slice(naming.end, naming.end + 40))
  return words === 0 ? last.sentence === naming.sentence || isSo : isSo
}

/** "Everybody else calls it a half-kneeling press", somewhat behind the name that the class knows. */
function isCalledSo(speech: Speech, naming: Naming): boolean {
  const before = speech.text.slice(Math.max(0, naming.offset - CALLED_CHARACTERS), naming.offset)
  return OTHERS_CALL.test(before)
}

const CALLED_WORDS = 60
const CALLED_CHARACTERS = 45
const OTHERS_CALL =
  /(?:^|[\s,.;\v\n])or (?:an? |the )$|\b(?:every(?:body|one) else|others|(?:proper |most |some |normal |other )?(?:people|folks?|coaches|gyms)|the (?:book|textbook|poster)) (?:calls?|says?)(?: (?:it|this|them|these))?(?: the| a| an)? $/i

/** "It's a plank drag, is all it is". */
const IS_ALL = /^[,\s]+(?:is all it is|that's all it is|that's all|really|basically|in disguise|when it's at home)\b/i

/** "... some people call it" right behind a name. */
const CALLED_BEHIND =
  /^[,.\s]*(?:as )?(?:(?:my|the|our|his|her|your) (?:\w+ ){1,2}(?:says?|calls?|reckons)\b|(?:some|others?|lots of|most|a lot of|many)(?: of (?:you|us))?(?: people| clubs| folks?| coaches| gyms| books| instructors| teachers| places)? (?:say|call|know)\b)/i

function isCalled(said: string): boolean {
  return ALSO_CALLED.some((pattern) => new RegExp(pattern.source, 'iu').test(said))
}
