/** What speaks for and against a candidate being the name of one teaching: where in it the name stands, and what the class has announced and named before. */
import type { ShapeTable } from '../catalogue/hear-shape.ts'
import { findKit } from './find-kit.ts'
import { pushTo } from './push-to.ts'
import type { Speech } from './read-speech.ts'
import { fitFeatures, shapeFit, showShape } from './shape-fit.ts'
import type { WeighedCandidate } from './weigh-starts.ts'
import { OPENS_NAMED, TELLS_NAME } from './words/en/opening-words.ts'

/** A teaching whose name is sought, by its sentences. */
export interface UnnamedTeaching {
  first: number
  /** The sentence behind its last one. */
  end: number
}

/** A candidate with its features; `inside` = said in the teaching, else announced before. */
export interface NameChoice {
  choice: WeighedCandidate
  inside: boolean
  features: string[]
}

/** What the class has named so far. */
export interface NamedSoFar {
  used: ReadonlySet<string>
  /** Key of the teaching before. */
  previous: string | null
}

/** Looks up the candidates of a class, for one teaching after the other. */
export class NameChooser {
  private readonly speech: Speech
  private readonly weighed: readonly WeighedCandidate[]
  private readonly bySentence = new Map<number, WeighedCandidate[]>()
  private readonly byKey = new Map<string, WeighedCandidate[]>()
  /** Keys in the order they are announced. */
  private readonly order = new Map<string, number>()
  private readonly announced: WeighedCandidate[]
  private readonly kit: ReadonlySet<string>
  private readonly shapes: ShapeTable | undefined

  /** @param shapes other than those of the table, for fitting */
  constructor(speech: Speech, weighed: readonly WeighedCandidate[], shapes?: ShapeTable) {
    this.speech = speech
    this.kit = new Set(findKit(speech.text))
    this.shapes = shapes
    this.weighed = weighed
    for (const one of this.weighed) {
      pushTo(this.bySentence, one.candidate.sentence, one)
      pushTo(this.byKey, one.candidate.key, one)
      const { listed, key } = one.candidate
      if (listed && !this.order.has(key)) this.order.set(key, this.order.size)
    }
    const seen = new Set<string>()
    this.announced = this.weighed.filter(({ candidate: { listed, key } }) => {
      const isNew = listed && !seen.has(key)
      if (isNew) seen.add(key)
      return isNew
    })
  }

  choices(teaching: UnnamedTeaching, soFar: NamedSoFar): NameChoice[] {
    const inside: WeighedCandidate[] = []
    for (let index = teaching.first; index < teaching.end; index++) inside.push(...(this.bySentence.get(index) ?? []))
    const keys = new Map<string, number>()
    for (const { candidate } of inside) keys.set(candidate.key, (keys.get(candidate.key) ?? 0) + 1)
    const before = this.announced
      .filter(({ candidate }) => candidate.sentence < teaching.first && !keys.has(candidate.key))
      .slice(0, MOST_ANNOUNCED)
    const ofShape = this.fitting(teaching, [...inside, ...before])
    return [
      ...inside.map((choice) => ({
        ...{ choice, inside: true },
        features: [
          ...this.ofInside(choice, teaching, keys.get(choice.candidate.key) ?? 1),
          ...this.ofClass(choice, teaching, soFar),
          ...ofShape(choice),
        ],
      })),
      ...before.map((choice) => ({
        ...{ choice, inside: false },
        features: [
          ...this.ofAnnounced(choice, teaching, soFar),
          ...this.ofClass(choice, teaching, soFar),
          ...ofShape(choice),
        ],
      })),
    ]
  }

  /** How well each choice fits what the teaching shows; a name that no catalogue knows has only that the others do not. */
  private fitting(
    { first, end }: UnnamedTeaching,
    choices: readonly WeighedCandidate[],
  ): (choice: WeighedCandidate) => string[] {
    const shown = showShape(this.speech, first, end, this.shapes)
    const entries = new Set(choices.flatMap(({ candidate }) => candidate.entry ?? []))
    const best = Math.max(...[...entries].map((entry) => shapeFit(entry, shown.odds)))
    const known = new Map([...entries].map((entry) => [entry.id, fitFeatures(entry, shown, best, this.kit)]))
    const heard = choices.flatMap(({ candidate: { entry }, odds }) =>
      entry && odds > SEEN ? [known.get(entry.id)] : [],
    )
    const beside = heard.some((features) => features?.includes(FITS_WELL)) ? 'own beside what fits' : 'own alone'
    return ({ candidate: { entry } }) => (entry === null ? [beside] : (known.get(entry.id) ?? []))
  }

  private ofInside({ candidate, odds }: WeighedCandidate, { first, end }: UnnamedTeaching, times: number): string[] {
    const { text } = this.speech
    const before = text.slice(Math.max(0, candidate.offset - 30), candidate.offset).toLowerCase()
    const behind = text.slice(candidate.end, candidate.end + 3)
    const place = candidate.sentence - first
    const all = this.byKey.get(candidate.key) ?? []
    const flag = (name: string, isSo: boolean): string[] => (isSo ? [name] : [])
    return [
      'inside',
      `inside odds ${odds > 3 ? 5 : odds > 1.2 ? 4 : odds > 0 ? 3 : odds > -1.5 ? 2 : odds > -4 ? 1 : 0}`,
      `place ${place <= 0 ? 0 : place <= 2 ? 1 : place <= 5 ? 2 : place <= 10 ? 3 : 4}`,
      `times ${Math.min(3, times)}`,
      `stop ${/^\s*[.!?\n]/.test(behind) ? '.' : behind.startsWith(',') ? ',' : '-'}`,
      ...flag('near the end', end - candidate.sentence <= 2),
      ...flag('late', candidate.late),
      ...flag('bare', candidate.bare),
      ...flag('listed here', candidate.listed),
      ...flag('told', TELLS_NAME.test(before)),
      ...flag('opens', OPENS_NAMED.test(before)),
      ...flag(
        'said later',
        all.some((other) => other.candidate.sentence >= end),
      ),
      ...flag(
        'said before',
        all.some((other) => !other.candidate.listed && other.candidate.sentence < first),
      ),
    ]
  }

  private ofAnnounced(
    { candidate, odds }: WeighedCandidate,
    { end }: UnnamedTeaching,
    { previous }: NamedSoFar,
  ): string[] {
    const at = this.order.get(candidate.key) ?? 0
    const last = previous === null ? undefined : this.order.get(previous)
    const step =
      last === undefined
        ? at === 0
          ? 'first'
          : '-'
        : at === last + 1
          ? 'next'
          : at < last
            ? 'back'
            : at <= last + 3
              ? 'soon'
              : 'far'
    const all = this.byKey.get(candidate.key) ?? []
    const isLater = all.some((other) => !other.candidate.listed && other.odds > 0 && other.candidate.sentence >= end)
    return [
      'announced only',
      `announced odds ${odds > 0 ? 3 : odds > -1.5 ? 2 : odds > -4 ? 1 : 0}`,
      `step ${step}`,
      `starts later ${Number(isLater)}`,
      `announced and said ${Math.min(3, all.length)}`,
    ]
  }

  private ofClass({ candidate }: WeighedCandidate, { first }: UnnamedTeaching, { used }: NamedSoFar): string[] {
    const { key, entry, source, name } = candidate
    const all = this.byKey.get(key) ?? []
    return [
      entry ? 'known' : 'own',
      `${entry ? 'known' : 'own'} ${source}`,
      `often ${Math.min(4, all.length)}`,
      `words ${Math.min(3, name.split(/\s+/).length)}`,
      ...(used.has(key) ? ['used'] : []),
      ...(all.some((other) => other.candidate.listed && other.candidate.sentence < first) ? ['announced'] : []),
    ]
  }
}

/** Said so that it may well be a name. */
const SEEN = -1.5
/** A movement that is surely shown. */
const FITS_WELL = 'move shown 5'

/** A programme that announces more is not looked at whole. */
const MOST_ANNOUNCED = 40
