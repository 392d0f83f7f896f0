/** Kit as people say it (whole words), and the word the catalogue uses for it. Longer sayings come first. */
export const KIT_SAYINGS = [
  ['medicine ball', 'medicine ball'],
  ['med ball', 'medicine ball'],
  ['slam ball', 'medicine ball'],
  ['rowing machine', 'rowing machine'],
  ['rower', 'rowing machine'],
  ['ergo', 'rowing machine'],
  ['suspension trainer', 'rings'],
  ['suspension strap', 'rings'],
  ['gymnastic ring', 'rings'],
  ['ring', 'rings'],
  ['pull up bar', 'bar'],
  ['chin up bar', 'bar'],
  ['kettlebell', 'kettlebell'],
  ['kettle bell', 'kettlebell'],
  ['dumbbell', 'dumbbell'],
  ['dumb bell', 'dumbbell'],
  ['hand weight', 'dumbbell'],
  ['barbell', 'barbell'],
  ['trap bar', 'barbell'],
  ['weight plate', 'plate'],
  ['plate', 'plate'],
  ['sandbag', 'sandbag'],
  ['club bell', 'club'],
  ['mace', 'club'],
  ['weight', 'dumbbell'],
  ['weighted', 'dumbbell'],
  ['resistance band', 'band'],
  ['loop band', 'band'],
  ['mini band', 'band'],
  ['banded', 'band'],
  ['band', 'band'],
  ['tubing', 'band'],
  ['cable', 'cable'],
  ['machine', 'machine'],
  ['sled', 'sled'],
  ['treadmill', 'treadmill'],
  ['bike', 'bike'],
  ['battle rope', 'battle rope'],
  ['skipping rope', 'rope'],
  ['chair', 'chair'],
  ['stair', 'step'],
  ['step', 'step'],
  ['bench', 'bench'],
  ['box', 'box'],
  ['wall', 'wall'],
  ['mat', 'mat'],
  ['anchor', 'anchor'],
] as const satisfies readonly (readonly [string, string])[]

/** What instructors call a weight in passing; read from set-up and movement words only when no weight is named elsewhere. */
export const PASSING_WEIGHTS = [
  ['kettlebell', 'kettlebell|kettlebells|kettle_bell|the_bell|your_bell|a_bell|bells'],
  [
    'dumbbell',
    'dumbbell|dumbbells|dumb_bell|dumb_bells|weights|your_weight|the_weight|a_weight|hand_weight|hand_weights',
  ],
  ['barbell', 'barbell|the_bar_on_your|the_bar_over|bar_over_mid|bar_across|under_the_bar|unrack|rack_it|the_rack'],
  ['band', 'the_band|your_band|a_band|the_bands|the_tube'],
] as const satisfies readonly (readonly [string, string])[]

/** Any of these said anywhere: the class lifts or pulls something. */
export const WEIGHT_SAYING =
  'dumbbell|dumbbells|dumb_bell|dumb_bells|weights|hand_weight|kettlebell|kettlebells|barbell|the_bar|band|bands|bell|bells|tins|cans|sandbag|plates|medicine_ball'

/** Weights proper; a class that names one of them uses that one, whatever the catalogue expects. */
export const WEIGHTS: readonly string[] = [
  'kettlebell',
  'dumbbell',
  'barbell',
  'plate',
  'sandbag',
  'medicine ball',
  'club',
]

/** Everything that loads a movement. */
export const LOADS: readonly string[] = [...WEIGHTS, 'band', 'cable', 'machine', 'sled']
