/**
 * What each feature of link-features.ts adds to the log of the odds that an exercise is done in turns with the one behind it.
 * Fitted by tests/fit/fit-links.ts, not by hand.
 */
export const LINK_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.0, 'gap no rest|intro no rest|starts straight'],
  [0.9, 'behind rounds|second in turn at once|starts no rest'],
  [0.8, 'closes rounds|first comes back at once|ruled|ruled circuit'],
  [0.7, 'both in turn|first comes back later|opens section'],
  [
    0.6,
    'first named in second|gap straight|intro rounds|intro swap|opens station|returns 2 2|ruled superset|starts circuit|starts rest',
  ],
  [
    0.5,
    'behind rest|closes pair|first comes back soon|first in a circuit|first some|first tells no dose|inner no rest|opens no rest|opens pair|together before circuit|together before rounds',
  ],
  [
    0.4,
    'before together next|behind together next|behind together pair|between |closes circuit|closes rest|closes section|ends rest|intro circuit|intro station|starts again|starts station',
  ],
  [0.3, 'between some|first short|intro pair|returns 0 2|returns 1 1'],
  [
    0.2,
    'behind circuit|behind pair|closes swap|ends pair|ends station|gap none|inner circuit|inner rounds|inner straight|inside station|opens again|opens circuit|opens rest|returns 0 1|returns 2 1|second in turn soon|second named in first|second tells no dose|together before|together before of 4',
  ],
  [
    0.1,
    'before together circuit|before together station|behind again|behind station|behind together rounds|first named as second starts|gap swap|inside swap|opens straight|returns 2 0|second tells a rest|together before of 2|together before rest|together before straight',
  ],
  [
    -0.1,
    'before together pair|behind together circuit|behind together rest|between and|between and the|closes no rest|ends no rest|first comes back far|first tells a rest|inner rest|inner section|inside no rest|intro next|intro rest|opens next|returns 1 0|ruled apart|second in a superset|starts next|together before next|together before of 3|together before pair',
  ],
  [
    -0.2,
    'between then|first in a superset|gap next|gap short|in two groups|inner next|inner station|second some|second tells its sets|starts section',
  ],
  [
    -0.3,
    'between next|closes station|closes straight|ends circuit|gap station|inside pair|inside section|opens rounds|second in a circuit|second short',
  ],
  [
    -0.4,
    'always|first tells sets|gap rest|inner again|inner pair|inside next|inside rest|second in turn far|second in turn later|second long',
  ],
  [
    -0.5,
    'closes again|ends again|ends next|ends rounds|gap again|gap circuit|inside again|intro again|other sets|second tells sets',
  ],
  [-0.6, 'behind no rest|gap pair|gap some|inside circuit|inside rounds|starts rounds'],
  [-0.7, 'behind section|first tells its sets|ruled none|starts pair'],
  [-0.8, 'behind straight|first long|gap long|gap rounds|gap section|returns 0 0'],
]
