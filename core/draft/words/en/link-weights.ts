/**
 * What each feature of link-features.ts adds to the log of the odds that an exercise is done in turns with the one behind it.
 * Fitted by tests/fit/fit-links.ts, not by hand.
 */
export const LINK_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.1, 'gap no rest'],
  [1.0, 'intro no rest|second in turn at once|starts straight'],
  [0.9, 'closes rounds|first comes back at once|starts no rest'],
  [0.8, 'behind rounds|both in turn|ruled|ruled circuit'],
  [0.7, 'first comes back later'],
  [
    0.6,
    'closes pair|first named in second|gap straight|intro rounds|opens section|opens station|ruled superset|starts circuit|starts rest|together before rounds',
  ],
  [
    0.5,
    'before together next|behind rest|behind together next|between |first in a circuit|first some|first tells no dose|inner no rest|intro swap|opens no rest|opens pair|returns 2 2|together before circuit',
  ],
  [
    0.4,
    'behind together pair|between some|closes rest|ends rest|first comes back soon|intro circuit|intro station|returns 1 1|returns 2 1|starts again|starts station',
  ],
  [
    0.3,
    'behind circuit|closes circuit|closes section|first short|inner rounds|intro pair|opens again|returns 0 1|returns 0 2|second tells no dose',
  ],
  [
    0.2,
    'behind station|closes swap|ends pair|ends station|gap none|inner straight|inside station|inside swap|opens circuit|opens rest|second named in first|together before|together before of 4',
  ],
  [
    0.1,
    'before together rest|before together station|behind again|behind next|behind pair|behind swap|behind together rounds|ends straight|first named as second starts|gap swap|inner circuit|inside straight|opens straight|second in turn soon|second tells a rest|together before of 2|together before rest|together before straight',
  ],
  [
    -0.1,
    'behind together circuit|between and the|closes no rest|ends no rest|ends swap|first comes back far|in two groups|inner rest|inside no rest|intro next|intro rest|opens next|ruled apart|starts next|together before again|together before next|together before of 3|together before pair',
  ],
  [
    -0.2,
    'between and|between then|first in a superset|first tells a rest|gap next|gap short|inner next|inner station|second some|starts section',
  ],
  [
    -0.3,
    'between next|closes straight|ends circuit|gap station|inner pair|inside pair|inside section|opens rounds|second in a circuit|second tells its sets',
  ],
  [
    -0.4,
    'always|closes station|ends rounds|gap rest|inner again|inside next|inside rest|second in turn far|second in turn later|second long|second short|second tells sets',
  ],
  [-0.5, 'closes again|ends again|first tells sets|gap circuit|inside again|intro again'],
  [
    -0.6,
    'behind no rest|behind section|ends next|gap again|gap pair|gap some|inside circuit|inside rounds|other sets|starts rounds',
  ],
  [-0.7, 'first tells its sets|ruled none|starts pair'],
  [-0.8, 'behind straight|first long|gap long|gap rounds|gap section|returns 0 0'],
]
