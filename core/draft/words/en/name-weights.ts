/**
 * What each feature of name-features.ts adds to the log of the odds that a candidate names a teaching. Fitted by
 * tests/fit/fit-names.ts, not by hand.
 */
export const NAME_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.2, 'step next'],
  [1.1, 'inside odds 5|told'],
  [1.0, 'inside odds 4|kit here|own longer|own rule'],
  [0.9, 'place 0'],
  [0.8, 'known clause|move shown 4|move shown 5'],
  [0.7, 'place 1|times 2'],
  [0.6, 'own closed'],
  [0.5, 'bare|behind 0|inside|opens|own led|place shown 4|stop .'],
  [0.4, 'behind 2|inside odds 3|known|known known|move shown 2|times 1'],
  [0.3, 'known closed|listed here|move shown 3|often 3|often 4|own ending|said later'],
  [0.2, 'kit none|known often|late|often 2|place shown 1|place shown 3|stop ,|words 2'],
  [0.1, 'announced odds 3|known longer|place 2|starts later 1'],
  [-0.1, 'announced odds 2|behind 4'],
  [-0.2, 'behind 1|behind 3|kit of the class|known brought|known led|own part|place shown 0|words 3'],
  [-0.3, 'inside odds 2|near the end|own clause|words 1'],
  [-0.4, 'own|own alone|step first'],
  [
    -0.5,
    'announced and said 1|announced and said 2|announced odds 1|announced only|behind 5|known alone|known ending|often 1|step -|step back|step far|step soon',
  ],
  [-0.6, 'announced and said 3|announced odds 0|own beside what fits|starts later 0'],
  [-0.8, 'behind 6|move shown 1|own often|said before'],
  [-1.0, 'inside odds 1|place 3'],
  [-1.4, 'move shown 0|place 4|used'],
  [-1.7, 'inside odds 0'],
]

/** The same for nobody naming it. */
export const NOBODY_NAMES = -0.1
