/**
 * What each feature of link-features.ts adds to the log of the odds that an exercise is done in turns with the one behind it.
 * Fitted by tests/fit/fit-links.ts, not by hand.
 */
export const LINK_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.2, 'starts straight'],
  [1.1, 'first comes back soon'],
  [1.0, 'opens station|ruled circuit'],
  [0.9, 'behind rounds|second in turn at once'],
  [0.8, 'both in turn|first comes back at once|returns 2 2|ruled'],
  [0.7, 'closes pair|gap straight|intro pair|returns 0 2|starts rest'],
  [0.6, 'behind rest|closes rounds|first named in second|gap no rest|in two groups|starts no rest'],
  [
    0.5,
    'first comes back later|first some|first tells no dose|gap none|opens again|opens rest|returns 1 1|second tells no dose|together before rounds',
  ],
  [0.4, 'behind together next|ends no rest|first comes back far|inner straight|intro no rest'],
  [
    0.3,
    'behind circuit|behind together pair|between |closes rest|ends rest|inner no rest|inner rounds|intro straight|intro swap|second tells a rest|starts section|together before',
  ],
  [
    0.2,
    'before together next|before together rounds|behind no rest|between and|closes circuit|closes station|ends straight|first short|inner swap|opens circuit|opens no rest|opens section|returns 2 0|ruled superset|starts circuit|together before of 2|together before of 4',
  ],
  [
    0.1,
    'before together circuit|before together rest|behind together again|behind together rounds|ends pair|ends section|ends station|first in a circuit|inner section|inside no rest|inside straight|intro rounds|intro station|opens next|opens pair|opens straight|returns 0 1|returns 2 1|second in turn soon|starts next|starts station|together before again|together before circuit|together before rest|together in the second|together in the second of 2',
  ],
  [
    -0.1,
    'behind pair|behind swap|between many|between pair|between then|closes no rest|ends circuit|first in a superset|inner pair|inner rest|intro section|returns 1 0|ruled apart|same sets|second in turn far|second in turn later|second named in first|starts swap|together before next|together before station',
  ],
  [
    -0.2,
    'behind again|behind station|behind together rest|between some|closes swap|ends rounds|gap station|inner again|inner circuit|inside swap|intro again|intro rest|second some|second tells sets|starts again',
  ],
  [
    -0.3,
    'behind next|behind section|closes again|first tells sets|gap next|gap short|gap swap|inner next|inner station|inside pair|inside rest|inside section|intro next|second in a circuit|starts pair',
  ],
  [-0.4, 'closes next|closes straight|ends swap|inside next|inside rounds|other sets|second in a superset'],
  [-0.5, 'always|between next|first tells a rest|inside again|inside circuit|second long'],
  [-0.6, 'ends again|ends next|gap circuit|gap pair|second short|second tells its sets|starts rounds'],
  [-0.7, 'behind straight|first tells its sets|gap again|gap rest|gap rounds'],
  [-0.8, 'first long|gap long|gap section|gap some|ruled none'],
  [-0.9, 'returns 0 0'],
]
