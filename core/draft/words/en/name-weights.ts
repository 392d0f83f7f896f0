/**
 * What each feature of name-features.ts adds to the log of the odds that a candidate names a teaching. Fitted by
 * tests/fit/fit-names.ts, not by hand.
 */
export const NAME_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.3, 'inside odds 5|own longer'],
  [1.2, 'inside odds 4|told'],
  [1.1, 'step next'],
  [0.8, 'times 2'],
  [0.7, 'known known|place 0'],
  [0.6, 'known|own rule|place 1'],
  [0.5, 'bare|inside|inside odds 3|late|stop .|times 1'],
  [0.4, 'opens|starts later 1|stop ,'],
  [0.3, 'often 2|own led|said later'],
  [0.2, 'own ending|stop -|times 3|words 2'],
  [0.1, 'listed here|place 2|words 3'],
  [-0.1, 'announced|known longer|own closed|step first'],
  [-0.2, 'announced odds 1|known brought|place 3'],
  [-0.3, 'announced and said 3|inside odds 2|words 1'],
  [-0.4, 'announced and said 2|announced odds 3|known clause|step back|step far'],
  [-0.5, 'often 1|step soon'],
  [-0.6, 'announced odds 2|announced only|known ending|known led|near the end|own clause'],
  [-0.7, 'announced and said 1|announced odds 0|known often|own|own part|starts later 0'],
  [-0.8, 'known alone|own often|step -'],
  [-0.9, 'place 4|said before'],
  [-1.2, 'inside odds 1|own alone'],
  [-1.4, 'used'],
  [-1.7, 'inside odds 0'],
]

/** The same for nobody naming it. */
export const NOBODY_NAMES = 0.0
