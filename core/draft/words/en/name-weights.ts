/**
 * What each feature of name-features.ts adds to the log of the odds that a candidate names a teaching. Fitted by
 * tests/fit/fit-names.ts, not by hand.
 */
export const NAME_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.3, 'inside odds 5'],
  [1.2, 'inside odds 4|own longer'],
  [1.1, 'told'],
  [1.0, 'kit here'],
  [0.9, 'move shown 5|own rule'],
  [0.8, 'move shown 4'],
  [0.7, 'behind 4|place 0|times 2'],
  [0.6, 'own led|place 1|place shown 4|step next'],
  [0.5, 'behind 1|behind 2|inside|known known|stop .'],
  [0.4, 'bare|behind 0|inside odds 3|known|late|opens|place shown 3|starts later 1|stop ,|times 1'],
  [0.3, 'kit none|often 2|said later'],
  [0.2, 'listed here|move shown 2|often 3|own brought|own ending|words 2'],
  [0.1, 'move shown 3|own closed|place 2|stop -|times 3'],
  [-0.1, 'announced|behind 3|behind 5|known alone|known brought|known clause|often 4|place 3|words 3'],
  [-0.2, 'place shown 1|step soon|words 1'],
  [-0.3, 'announced and said 2|announced and said 3|announced odds 1|own clause|step far'],
  [-0.4, 'inside odds 2|known ending|known often|often 1|own|step first'],
  [
    -0.5,
    'announced odds 0|announced odds 2|announced odds 3|announced only|kit nowhere|known led|move shown 1|own part|step back',
  ],
  [
    -0.6,
    'announced and said 1|kit of the class|own alone|own beside what fits|own often|place shown 0|starts later 0|step -',
  ],
  [-0.7, 'behind 6|near the end'],
  [-0.9, 'place 4|said before'],
  [-1.2, 'inside odds 1'],
  [-1.3, 'used'],
  [-1.5, 'move shown 0'],
  [-1.8, 'inside odds 0'],
]

/** The same for nobody naming it. */
export const NOBODY_NAMES = -0.1
