/** The form of tables of weights that are fitted by kinds of speech. */

/** Counts in all speech, in speech with marks, in speech without. */
export type Side = 'always' | 'marked' | 'plain'

export type Rows = readonly (readonly [weight: number, features: string])[]

/** For whole classes, and for those of a few minutes. */
export type KindWeights = Readonly<Record<'whole' | 'short', Readonly<Record<Side, Rows>>>>
