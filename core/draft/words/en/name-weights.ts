/**
 * What each feature of name-features.ts adds to the log of the odds that a candidate names a teaching. Fitted by
 * tests/fit/fit-names.ts, not by hand.
 */
export const NAME_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.2, 'own rule'],
  [1.1, 'inside odds 4|inside odds 5|step next'],
  [1.0, 'told'],
  [0.9, 'kit here|place 0'],
  [0.8, 'move shown 5|own longer|place 1'],
  [0.7, 'times 2'],
  [0.6, 'bare|known clause|move shown 4|opens'],
  [0.5, 'behind 0|inside|inside odds 3|known alone|own led|stop .|times 1'],
  [0.4, 'behind 1|known|known known|known longer|own closed|place shown 3|place shown 4'],
  [0.3, 'kit none|listed here|move shown 3|place shown 2'],
  [0.2, 'late|often 3|said later|words 2'],
  [0.1, 'kit of the class|often 2|often 4|own ending|place shown 1|starts later 1'],
  [-0.1, 'announced odds 3|known brought|known often|place 2|stop -'],
  [-0.2, 'announced|inside odds 2|move shown 2|step soon|words 1'],
  [-0.3, 'behind 3|behind 4|known ending|often 1|own brought|step far|times 3'],
  [-0.4, 'known led|own|own alone|own clause|own part|words 3'],
  [
    -0.5,
    'announced and said 1|announced and said 2|announced and said 3|announced odds 0|announced odds 1|announced only|behind 5|near the end|own beside what fits|step back|step first',
  ],
  [-0.6, 'place shown 0|starts later 0|step -'],
  [-0.7, 'own often'],
  [-0.8, 'announced odds 2|behind 6|said before'],
  [-1.0, 'move shown 1'],
  [-1.2, 'inside odds 1|place 3'],
  [-1.3, 'move shown 0'],
  [-1.4, 'used'],
  [-1.5, 'place 4'],
  [-1.6, 'inside odds 0'],
]

/** The same for nobody naming it. */
export const NOBODY_NAMES = 0.1
