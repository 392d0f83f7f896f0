/**
 * What each feature of link-features.ts adds to the log of the odds that an exercise is done in turns with the one behind it.
 * Fitted by tests/fit/fit-links.ts, not by hand.
 */
export const LINK_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.2, 'opens station'],
  [1.0, 'first comes back soon'],
  [0.9, 'behind rounds|ruled|ruled circuit'],
  [
    0.8,
    'behind circuit|first comes back at once|returns 0 2|returns 2 2|second in turn at once|starts straight|together before rounds',
  ],
  [0.7, 'both in turn|closes pair|closes rounds|first comes back later|first tells no dose'],
  [0.6, 'closes rest|first short|second tells no dose|starts no rest'],
  [
    0.5,
    'between |ends no rest|first some|intro circuit|intro no rest|intro straight|opens again|ruled superset|starts rest|together before circuit',
  ],
  [
    0.4,
    'before together rounds|behind rest|behind together next|ends straight|first in a circuit|inner no rest|opens section|opens swap|returns 1 1|together before',
  ],
  [
    0.3,
    'before together pair|behind swap|closes circuit|ends pair|gap no rest|gap none|gap straight|inner swap|inside straight|intro pair|opens no rest|returns 2 1|second in turn later|together before of 3',
  ],
  [
    0.2,
    'behind together pair|between some|closes swap|ends rest|in two groups|inner rounds|inner straight|inside no rest|inside swap|intro rounds|intro swap|opens next|opens rounds|returns 0 1|returns 1 0|starts next|together before of 4',
  ],
  [
    0.1,
    'before together circuit|before together next|before together rest|before together section|behind pair|between and|ends station|intro station|opens rest|returns 2 0|second tells a rest|starts circuit|together before again|together before rest',
  ],
  [
    -0.1,
    'behind together circuit|between many|ends circuit|first named in second|inner rest|opens circuit|opens pair|returns 1 2|same sets|second some|together before next|together before pair',
  ],
  [
    -0.2,
    'behind again|behind next|between then|closes section|ends section|first in a superset|first named as second starts|gap station|inner again|inner next|inner section|inner station|inside station|opens straight|ruled apart|together in the first|together in the first next',
  ],
  [
    -0.3,
    'behind section|behind together rest|between next|closes station|ends swap|gap short|inner circuit|inner pair|inside pair|inside rest|intro next|intro rest|second in a superset|second in turn soon|second tells sets|starts again',
  ],
  [
    -0.4,
    'always|closes again|closes next|closes straight|first tells sets|gap next|inside section|other sets|second named in first|second tells its sets',
  ],
  [
    -0.5,
    'first tells a rest|gap again|gap circuit|gap swap|inside again|inside next|inside rounds|second in a circuit|second long|starts pair|starts rounds',
  ],
  [-0.6, 'behind no rest|behind station|behind straight|ends next|first tells its sets|second short'],
  [-0.7, 'ends again|gap pair|gap rounds|gap section|gap some|inside circuit'],
  [-0.8, 'first long|gap long|gap rest|ruled none'],
  [-0.9, 'returns 0 0'],
]
