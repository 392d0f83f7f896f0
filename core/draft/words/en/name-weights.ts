/**
 * What each feature of name-features.ts adds to the log of the odds that a candidate names a teaching. Fitted by
 * tests/fit/fit-names.ts, not by hand.
 */
export const NAME_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.3, 'inside odds 4'],
  [1.2, 'inside odds 5|told'],
  [1.1, 'step next'],
  [1.0, 'own longer|times 2'],
  [0.8, 'inside odds 3'],
  [0.7, 'place 0'],
  [0.6, 'known known|place 1|stop .'],
  [0.5, 'bare|inside|known|often 2'],
  [0.4, 'opens|own closed|own rule|stop ,|times 1'],
  [0.3, 'own ending|starts later 1'],
  [0.2, 'late|listed here|own led|said later|times 3|words 2'],
  [0.1, 'announced|stop -|words 3'],
  [-0.1, 'known brought|known longer|own brought|place 2'],
  [-0.2, 'known ending|known led|often 4'],
  [-0.3, 'announced and said 3|announced odds 1|known clause|place 3|words 1'],
  [-0.4, 'inside odds 2|step back|step soon'],
  [-0.5, 'own clause'],
  [
    -0.6,
    'announced and said 1|announced odds 0|announced odds 2|announced odds 3|announced only|near the end|often 1|own|step far',
  ],
  [-0.7, 'announced and said 2|known often|own part|starts later 0'],
  [-0.8, 'own often|said before|step -'],
  [-0.9, 'known alone|own alone'],
  [-1.0, 'place 4'],
  [-1.3, 'inside odds 1'],
  [-1.5, 'used'],
  [-1.8, 'inside odds 0'],
]

/** The same for nobody naming it. */
export const NOBODY_NAMES = -0.0
