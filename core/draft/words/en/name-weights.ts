/**
 * What each feature of name-features.ts adds to the log of the odds that a candidate names a teaching. Fitted by
 * tests/fit/fit-names.ts, not by hand.
 */
export const NAME_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.2, 'step next'],
  [1.1, 'inside odds 4|inside odds 5|told'],
  [1.0, 'kit here|own longer'],
  [0.9, 'own rule|place 0'],
  [0.8, 'known clause|move shown 5|own closed'],
  [0.7, 'move shown 4|place 1|times 2'],
  [0.5, 'bare|behind 0|behind 1|inside|inside odds 3|move shown 3|own led|place shown 4|stop .'],
  [0.4, 'known|known known|move shown 2|often 4|opens|place shown 3|times 1'],
  [0.3, 'often 3|own ending|said later'],
  [0.2, 'behind 2|kit none|known closed|listed here|often 2|stop ,|words 2'],
  [0.1, 'announced odds 3|kit nowhere|known longer|late|place 2|place shown 1|stop -'],
  [-0.1, 'announced|inside odds 2|own brought|starts later 1|times 3'],
  [-0.2, 'behind 3|known brought|known led|words 3'],
  [-0.3, 'announced odds 1|kit of the class|known ending|near the end|own clause|own part|place shown 0|words 1'],
  [-0.4, 'announced and said 2|behind 4|known alone|often 1|own|own alone|step first|step soon'],
  [-0.5, 'announced and said 1|announced only|move shown 1|step back|step far'],
  [-0.6, 'announced and said 3|announced odds 0|own beside what fits|starts later 0|step -'],
  [-0.7, 'announced odds 2|said before'],
  [-0.8, 'behind 6|own often'],
  [-0.9, 'behind 5'],
  [-1.0, 'place 3'],
  [-1.1, 'inside odds 1'],
  [-1.4, 'move shown 0|place 4'],
  [-1.5, 'used'],
  [-1.6, 'inside odds 0'],
]

/** The same for nobody naming it. */
export const NOBODY_NAMES = -0.1
