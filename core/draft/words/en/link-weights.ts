/**
 * What each feature of link-features.ts adds to the log of the odds that an exercise is done in turns with the one behind it.
 * Fitted by tests/fit/fit-links.ts, not by hand.
 */
export const LINK_WEIGHTS: readonly (readonly [weight: number, features: string])[] = [
  [1.3, 'opens station'],
  [1.1, 'starts straight'],
  [1.0, 'behind rounds|first comes back soon|ruled circuit'],
  [0.9, 'first comes back at once|ruled'],
  [0.8, 'gap no rest|intro no rest|returns 2 2|second in turn at once|starts no rest|together before rounds'],
  [0.7, 'behind circuit|both in turn|closes pair|closes rounds|first comes back later|inner straight|returns 0 2'],
  [0.6, 'ends straight|inner swap|returns 1 1'],
  [
    0.5,
    'behind rest|behind together next|between |closes rest|first tells no dose|intro pair|intro straight|opens again|opens rest|returns 0 1',
  ],
  [0.4, 'gap straight|in two groups|returns 1 0|ruled superset|second tells no dose|starts rest'],
  [
    0.3,
    'closes circuit|first short|first some|inner no rest|inside straight|intro circuit|intro station|intro swap|starts next|together before circuit',
  ],
  [
    0.2,
    'before together next|before together rounds|behind together pair|between and|ends no rest|ends pair|ends rest|ends rounds|ends station|first comes back far|gap none|inner rounds|opens next|opens pair|opens section|returns 2 1|starts circuit|together before|together before again|together before of 4',
  ],
  [
    0.1,
    'before together circuit|before together pair|before together rest|before together section|behind swap|inner section|second in turn later|second tells a rest|starts station|together before of 3|together before rest|together before section',
  ],
  [
    -0.1,
    'behind again|behind together circuit|behind together rest|between many|between then|closes no rest|ends swap|first named as second starts|inner rest|inside no rest|opens no rest|opens straight|opens swap|returns 2 0|starts again|starts swap|together before next',
  ],
  [
    -0.2,
    'behind next|behind no rest|behind section|closes section|closes station|ends circuit|first named in second|gap short|inner next|inner pair|inside rest|inside section|inside station|intro again|intro rest|opens rounds|same sets|second in turn soon|second some|starts section|together before pair',
  ],
  [
    -0.3,
    'between next|closes straight|gap station|inner again|inner circuit|inner station|inside pair|intro next|ruled apart|second in a circuit|second tells sets',
  ],
  [
    -0.4,
    'always|closes next|gap next|inside circuit|other sets|second named in first|second short|second tells its sets',
  ],
  [
    -0.5,
    'behind station|closes again|first tells its sets|first tells sets|gap again|inside again|inside next|inside rounds|returns 1 2|second in a superset|second long|starts pair',
  ],
  [-0.6, 'behind straight|ends next|first tells a rest|gap circuit|gap pair|gap rest|gap swap|starts rounds'],
  [-0.7, 'second in turn far'],
  [-0.8, 'ends again|first long|gap long|gap rounds|gap section|gap some|ruled none'],
  [-1.0, 'returns 0 0'],
]
