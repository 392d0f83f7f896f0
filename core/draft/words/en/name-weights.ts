/**
 * What each feature of name-features.ts adds to the log of the odds that a candidate names a teaching. Fitted by
 * tests/fit/fit-names.ts, not by hand.
 */
export const NAME_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.2, 'inside odds 4|inside odds 5'],
  [1.1, 'kit here|own longer|told'],
  [1.0, 'move shown 5'],
  [0.9, 'behind 3'],
  [0.8, 'own rule|place 0|step next'],
  [0.7, 'times 2'],
  [0.6, 'place shown 4'],
  [0.5, 'bare|behind 0|inside|own led|place 1|stop .|times 1'],
  [0.4, 'inside odds 3|known|known known|late|move shown 4|opens'],
  [0.3, 'listed here|move shown 2|move shown 3|often 3|said later|stop ,'],
  [0.2, 'kit none|often 2|own brought|place shown 3|words 2'],
  [0.1, 'behind 4|known closed|known often|own ending|place 2'],
  [-0.1, 'known brought|place shown 1|starts later 1'],
  [-0.2, 'behind 2|kit nowhere|kit of the class|known alone|known clause|known longer|place shown 0|words 1'],
  [-0.3, 'announced and said 3|announced odds 1|behind 5|own clause|own part|step soon|times 3'],
  [-0.4, 'announced and said 2|announced odds 3|inside odds 2|often 1|own|place 3|step back|step far|step first'],
  [-0.5, 'announced odds 2|announced only|known ending|own alone'],
  [-0.6, 'announced and said 1|announced odds 0|known led|near the end|own beside what fits|starts later 0'],
  [-0.7, 'behind 6|own often|step -'],
  [-0.9, 'move shown 1'],
  [-1.0, 'said before'],
  [-1.1, 'place 4'],
  [-1.3, 'inside odds 1'],
  [-1.4, 'move shown 0'],
  [-1.5, 'used'],
  [-1.7, 'inside odds 0'],
]

/** The same for nobody naming it. */
export const NOBODY_NAMES = -0.1
