/**
 * What each feature of link-features.ts adds to the log of the odds that an exercise is done in turns with the one behind it.
 * Fitted by tests/fit/fit-links.ts, not by hand.
 */
export const LINK_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.5, 'ends straight|opens station'],
  [1.2, 'first comes back soon|ruled circuit'],
  [1.1, 'ends no rest'],
  [1.0, 'ruled'],
  [0.9, 'first comes back later|second in turn at once'],
  [0.8, 'both in turn|starts straight'],
  [0.7, 'first comes back at once|inner straight|intro no rest|intro swap|opens circuit|returns 2 2'],
  [0.6, 'closes rounds|first in a circuit|inner no rest|inside straight|returns 2 1'],
  [
    0.5,
    'behind rounds|closes circuit|closes pair|first short|inner rounds|inside no rest|intro pair|returns 0 1|returns 1 1|starts no rest|together before rounds',
  ],
  [
    0.4,
    'before together pair|behind together next|behind together pair|between some|first comes back far|first some|first tells no dose|opens pair|opens section|second named in first',
  ],
  [
    0.3,
    'before together rounds|behind pair|behind section|closes rest|closes station|first named in second|returns 0 2|ruled superset|second tells no dose|starts section|starts station|together before pair',
  ],
  [
    0.2,
    'ends rest|ends station|gap station|inner swap|inside swap|intro rounds|returns 2 0|starts again|starts rest|together before circuit|together in the first of 2',
  ],
  [
    0.1,
    'before together circuit|before together rest|before together station|behind swap|behind together rounds|between |between and a|ends pair|gap none|intro circuit|opens again|returns 1 2|second in turn soon|second tells a rest|starts next|together before straight|together in the first',
  ],
  [
    -0.1,
    'before together next|behind together again|behind together circuit|gap no rest|inner again|inner pair|inside station|intro next|intro station|opens no rest|opens swap|returns 1 0|same sets|starts pair|together before section|together before station',
  ],
  [
    -0.2,
    'between next|closes again|closes section|ends swap|first named as second starts|inside pair|inside rest|intro section|second some|second tells sets|starts circuit|together before|together before next|together before of 2|together before rest',
  ],
  [
    -0.3,
    'behind again|between then|closes next|closes straight|ends section|first in a superset|gap swap|inner next|inner station|inside circuit|inside next|intro rest|opens next|opens rounds|ruled apart|second in a circuit|second in turn later|second long',
  ],
  [
    -0.4,
    'always|behind station|ends again|ends next|ends rounds|inside rounds|inside section|intro again|opens straight|second in turn far|second tells its sets',
  ],
  [-0.5, 'behind no rest|gap next|inside again|other sets|second in a superset'],
  [-0.6, 'closes no rest|ends circuit|first tells a rest|gap rounds|gap short'],
  [-0.7, 'first long|gap pair|gap some|starts rounds'],
  [-0.8, 'first tells its sets|first tells sets|gap again|gap long|gap rest|gap section|returns 0 0|ruled none'],
  [-0.9, 'second short'],
  [-1.0, 'gap circuit'],
  [-1.1, 'behind straight'],
]
