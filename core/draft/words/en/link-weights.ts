/**
 * What each feature of link-features.ts adds to the log of the odds that an exercise is done in turns with the one behind it.
 * Fitted by tests/fit/fit-links.ts, not by hand.
 */
export const LINK_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.1, 'closes rounds|first comes back at once|intro no rest'],
  [1.0, 'behind rounds'],
  [0.9, 'gap no rest|second in turn at once|starts straight'],
  [0.8, 'returns 1 1|ruled|starts rest'],
  [0.7, 'both in turn|first comes back later|ruled superset|starts no rest'],
  [0.6, 'behind station|behind together next|between |gap straight|inside straight|intro swap|ruled circuit'],
  [0.5, 'behind rest|closes circuit|first some|intro station|opens section|returns 2 2|together before rounds'],
  [
    0.4,
    'closes pair|closes swap|ends rest|first in a circuit|intro circuit|intro rounds|opens again|opens circuit|returns 0 2|together before|together before circuit',
  ],
  [
    0.3,
    'behind together pair|between some|closes rest|closes section|ends straight|ends swap|first short|first tells no dose|inner rounds|inner straight|intro pair|opens pair|opens station|starts again',
  ],
  [
    0.2,
    'before together next|behind pair|ends station|first comes back soon|first in a superset|gap none|gap swap|inner circuit|inner no rest|opens no rest|opens rest|opens swap|returns 1 0|second in turn soon|second short|second tells no dose|starts station|together before again|together before of 3',
  ],
  [
    0.1,
    'behind swap|behind together rest|between and|inner swap|inside station|intro rest|intro straight|opens next|returns 2 1|second in turn later|second named in first|second tells a rest|starts circuit|together before next|together before of 2|together before of 4|together before rest|together before straight',
  ],
  [
    -0.1,
    'before together rounds|behind circuit|between many|closes next|closes no rest|ends no rest|first named as second starts|first named in second|gap next|gap short|in two groups|inner next|inner rest|inner station|inside no rest|intro next|returns 0 1|returns 2 0|ruled apart|same sets|second tells its sets|together before pair',
  ],
  [
    -0.2,
    'behind next|behind together circuit|closes straight|ends circuit|first tells a rest|first tells sets|inner again|inner section|inside swap|second in a superset|starts pair|starts section',
  ],
  [
    -0.3,
    'between then|closes station|ends rounds|inner pair|inside next|inside pair|inside rest|inside section|intro section|second tells sets',
  ],
  [-0.4, 'always|between next|closes again|inside again|other sets|starts rounds'],
  [
    -0.5,
    'behind no rest|ends section|first comes back far|first tells its sets|gap circuit|gap pair|inside circuit|inside rounds|returns 1 2|second in a circuit',
  ],
  [-0.6, 'behind section|ends again|gap again|gap some|intro again|second long'],
  [-0.7, 'behind straight|ends next|gap rest|ruled none'],
  [-0.8, 'first long|gap long|returns 0 0'],
  [-0.9, 'gap rounds|gap section'],
]
