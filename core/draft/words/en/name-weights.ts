/**
 * What each feature of name-features.ts adds to the log of the odds that a candidate names a teaching. Fitted by
 * tests/fit/fit-names.ts, not by hand.
 */
export const NAME_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.2, 'inside odds 5'],
  [1.1, 'inside odds 4|told'],
  [1.0, 'kit here'],
  [0.9, 'behind 3|move shown 5|own longer|own rule'],
  [0.8, 'place 0'],
  [0.7, 'move shown 4|step next|times 2'],
  [0.5, 'behind 0|inside|inside odds 3|own led|place 1|place shown 4|stop .|times 1'],
  [0.4, 'bare|known|known known|late|often 3|opens'],
  [0.3, 'listed here|own brought|place shown 3|said later|stop ,'],
  [0.2, 'kit none|move shown 2|often 2|words 2'],
  [0.1, 'behind 1|known closed|known longer|known often|move shown 3|own closed|own ending|place 2|starts later 1'],
  [-0.1, 'announced|behind 4|known brought|place shown 2'],
  [-0.2, 'behind 2|behind 5|kit nowhere|kit of the class|known alone|known clause|words 1'],
  [-0.3, 'announced odds 3|own clause|own part|place shown 0|step back|step soon|times 3'],
  [
    -0.4,
    'announced and said 2|announced and said 3|announced odds 1|announced odds 2|inside odds 2|often 1|own|place 3|step far|step first',
  ],
  [-0.5, 'known ending|own alone'],
  [-0.6, 'announced and said 1|announced odds 0|announced only|near the end|own beside what fits|starts later 0'],
  [-0.7, 'behind 6|move shown 1|own often|step -'],
  [-0.8, 'known led'],
  [-1.1, 'place 4|said before'],
  [-1.3, 'inside odds 1'],
  [-1.4, 'move shown 0'],
  [-1.5, 'used'],
  [-1.7, 'inside odds 0'],
]

/** The same for nobody naming it. */
export const NOBODY_NAMES = -0.1
