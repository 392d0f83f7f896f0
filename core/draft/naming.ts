/** A naming: one place where a class says the name of an exercise. */
import type { CatalogueEntry } from '../catalogue/entry.ts'
import type { NameKind } from '../catalogue/find-entry.ts'

/** One naming of an exercise. Offsets count in the running text. */
export interface Naming {
  entry: CatalogueEntry | null
  /** How plain the name is: an everyday word needs more around it. */
  kind: NameKind
  /** As spoken. */
  name: string
  offset: number
  end: number
  sentence: number
  /** 3 = alone or announced, 2 = opens a sentence or closes its set-up, 1 = announced to come, 0 = in passing. */
  strength: 0 | 1 | 2 | 3
  /** The name comes after the set-up ("that's your goblet squat"). */
  late: boolean
  /** Nothing stands in front of the name in its sentence, so that its set-up may have come before. */
  bare: boolean
  /** One of several names in a row: a programme, not a start. */
  listed: boolean
  /** Only the last word of a name, behind "back to that": it counts where such an exercise was taught. */
  back: boolean
  /** Told by what it does, not named. */
  described: boolean
  /** Index of the sentence that opens its teaching, where that is known. */
  begins?: number
}

/**
 * Where a candidate comes from: a name of the catalogue, `rule` and `own` = brought by a fixed phrase; alone, led, clause =
 * stands so in its clause; brought, closed = behind or before its set-up; often, ending = said often, ends like a name;
 * longer = holds a known name; part = of a name used elsewhere.
 */
export type CandidateSource =
  'known' | 'rule' | 'own' | 'alone' | 'led' | 'clause' | 'brought' | 'closed' | 'often' | 'ending' | 'longer' | 'part'

/** A place where an exercise may be named. */
export interface Candidate extends Naming {
  source: CandidateSource
  /** Of whom: the entry's id, else the folded name. */
  key: string
}
