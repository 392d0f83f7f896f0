/**
 * Signs: what a class says of an exercise that its name does not tell, in the phrase language of `../match-phrase.ts`.
 * Source: the trade's everyday English, written for this product.
 */
import type { CueKind } from '../../../../shared/log-sheet.ts'
import type { ShownSign } from './shown-words.ts'

export interface SignWords {
  sign: string
  /** Kinds of cue that can say it; absent = any but the easier, harder and equipment options. */
  kinds?: readonly CueKind[]
  /** Where it is read: in the cues (usual), in the name and the words of the dose, or in both. */
  from?: 'cues' | 'dose' | 'both'
  says: readonly string[]
}

export const SIGN_WORDS = [
  {
    sign: 'hands-behind-head',
    says: [
      'hands|hand|fingers|fingertips .. behind|back_of ... head|neck|ears',
      'hands|fingers|fingertips .. by|to|at|on|beside ... ears|temples',
      'hands|fingers .. laced|interlaced|clasped .. behind',
      'cradle|support|hold .. head .. in|with .. hands',
    ],
  },
  {
    sign: 'hands-not-behind-head',
    says: [
      'arms|hands .. crossed|across .. chest',
      'cross .. arms',
      'hands|palms|arms .. on|to|towards|up .. thighs|knees',
      'hands|hand .. under|beneath ... back|bum',
      'arms|hands .. by|at|beside .. sides|hips',
    ],
  },
  {
    sign: 'breath-hold-cued',
    kinds: ['breathing', 'execution', 'setup', 'tempo', 'focus'],
    says: [
      'hold|holding|trap .. your_breath|the_breath|that_breath|the_air|your_air|breath_in|breath_out',
      'hold_it_in_for|hold_that_in|keep_it_in|hold_it_in_there',
      'hold .. empty',
      'breathe_in|inhale|big_breath|deep_breath|breath_in|sniff_in .. hold_it|and_hold|then_hold',
      'breath|breathe_in|inhale|air|gulp ... brace|bracing',
      'brace .. and .. hold .. it',
    ],
  },
  {
    sign: 'anchored',
    says: [
      'anchor|anchored|door_anchor|anchor_point',
      'band|tube|it|loop .. round|around|through|over|to|on ... post|pole|door|handle|rail|banister|hook|tree|frame|table_leg|bed_leg|radiator|rack|something_solid|something_sturdy|upright',
      'shut ... door',
      'fix|hook|tie|loop|trap|clip|wedge|sling|attach .. it|band|knot|end|them .. in|round|around|to|over|through .. door|post|pole|handle|rail|tree|rack|frame|fence|hinge',
      'band .. in .. door',
    ],
  },
  {
    sign: 'band-at-foot',
    says: [
      'stand_on|standing_on|step_on|step_onto|stood_on .. band|tube|middle_of|it',
      'stand|standing|step|stood ... on|onto .. band|tube|middle_of',
      'band|bands|tube|it|loop .. under|round|around|beneath ... foot|feet|arch|arches|sole|soles|shoe|shoes|instep|toes',
      'foot|feet .. on|in|through .. band|loop|middle_of',
      'band .. trapped|pinned .. foot|feet',
    ],
  },
  {
    sign: 'towards-face',
    says: ['pull|pulling|bring|draw ... towards|to|at|past ... face|nose|forehead|eyes|ears|chin|cheeks'],
  },
  {
    sign: 'all-out',
    kinds: ['execution', 'tempo'],
    from: 'both',
    says: [
      'all_out|flat_out|full_gas|full_tilt|full_pelt|max_effort|maximum_effort|maximal|everything_you|everything_left|everything_that|nothing_left|give_it_everything|empty_the_tank|as_hard_as|as_fast_as|hundred_percent|100_percent|ten_out_of_ten|sprint|sprints|sprinting',
    ],
  },
  {
    sign: 'fast',
    from: 'dose',
    says: [
      'fast|faster|fastest|quick|quicker|speed|sprint|sprints|sprinting|race_pace|flat_out|all_out|hard|top_speed|full_speed|percent',
    ],
  },
  {
    sign: 'heavy',
    from: 'both',
    kinds: ['setup', 'execution', 'equipment'],
    says: ['heavy|heaviest|one_rep_max|rep_max|working_weight|top_set|near_max|near_maximal', 'as .. heavy|much .. as'],
  },
  {
    sign: 'to-failure',
    kinds: ['execution', 'tempo'],
    from: 'both',
    says: [
      'to_failure|until_failure|amrap|burnout|burn_out|as_many_as|last_rep_you|till_you_drop',
      'until .. cannot|cant .. another|one_more|any_more',
    ],
  },
  {
    sign: 'hangs',
    kinds: ['execution', 'setup', 'range', 'tempo'],
    says: [
      'hang .. from|off|on .. bar|rings|them|beam|it',
      'just_hang|let_yourself_hang|hang_tall|hang_long|hang_there|dead_hang|active_hang|you_hang|you_are_hanging|youre_hanging',
      'feet|toes .. off|leave .. floor|box|ground|step & hang|hanging',
    ],
  },
  {
    sign: 'bar-off-floor',
    kinds: ['execution', 'setup', 'range', 'fault'],
    says: [
      'bar .. over .. laces|shoelaces|shoe_laces|mid_foot|midfoot|middle_of',
      'pull|take .. slack .. out',
      'push .. floor .. away & stand|bar|up',
    ],
  },
  { sign: 'barefoot', from: 'both', says: ['barefoot|bare_feet|shoes_off'] },
  { sign: 'warm-up', from: 'dose', says: ['warm_up|warming_up|cool_down|cooling_down|nothing_on_it'] },
  { sign: 'eyes-closed', from: 'both', says: ['close .. eyes', 'eyes .. closed|shut'] },
  { sign: 'slow-lowering', from: 'both', says: ['negatives|eccentric|eccentrics', 'lower .. slowly ... seconds'] },
  {
    sign: 'resisted',
    says: ['against .. resistance|band|hands|hand|wall', 'push .. into|against .. hands|hand|wall|ball|chair'],
  },
  { sign: 'feet-over-head', says: ['upside_down|head_down|decline|head .. hang|hangs'] },
  { sign: 'seated', kinds: ['setup'], says: ['sit|sitting|seated .. on|in|at|tall|forward'] },
  {
    sign: 'on-back',
    kinds: ['setup'],
    says: ['on|onto .. your_back|the_back|backs', 'lie|lying .. back|flat|face_up'],
  },
  {
    sign: 'on-front',
    kinds: ['setup'],
    says: ['on|onto .. your_front|your_belly|your_tummy|your_stomach', 'face_down'],
  },
  { sign: 'on-side', kinds: ['setup'], says: ['on|onto .. your|one|left|right|the .. side', 'lie|lying .. side'] },
  {
    sign: 'on-all-fours',
    kinds: ['setup'],
    says: ['all_fours|hands_and_knees', 'hands .. under .. shoulders & knees'],
  },
  {
    sign: 'one-knee-down',
    kinds: ['setup'],
    says: ['half_kneeling|half_kneel', 'one|back|front .. knee .. down|floor'],
  },
  {
    sign: 'on-one-leg',
    kinds: ['setup', 'execution'],
    says: ['on .. one|standing .. leg|foot', 'stand|standing|balance|balancing .. on .. one|left|right'],
  },
  {
    sign: 'jumps',
    kinds: ['setup', 'execution'],
    says: ['jump|jumps|jumping|hop|hops|hopping|leap|leaps|leaping|bound|bounds|bounding'],
  },
  {
    sign: 'no-load',
    kinds: ['setup'],
    from: 'both',
    says: ['no .. weight|weights|load|bell|kit', 'body_weight|bodyweight .. only', 'empty .. hands'],
  },
  {
    sign: 'hot-room',
    from: 'both',
    says: ['hot_room|heated_room|hot_yoga|hot_class|hot_flow|sauna|thirty_eight_degrees', 'in .. this|the .. heat'],
  },
] as const satisfies readonly SignWords[]

/** Signs of the whole class, from its title, sections and every cue. */
export const CLASS_SIGN_WORDS = [
  {
    sign: 'outdoors',
    says: [
      'outdoors|out_doors|outdoor|grass|pavement|running_track|the_track|athletics_track|playing_field|the_park|trail|towpath|kerb|footpath|tarmac|patio|paving|slabs|the_lawn|decking',
      'curb|sidewalk|the_fence|the_railings|bandstand|the_path|puddle|puddles|wet_leaves|wet_grass|tree_roots|the_trees|potholes|pothole|gravel|cobbles|shingle|lamp_post|lamp_posts|lamppost',
      'parking_lot|car_park|the_field|soccer_field|football_pitch|touchline|the_pitch|allotment|seafront|promenade|the_prom|slipway|harbour_wall|the_quay|the_pond|walking_poles',
    ],
  },
  {
    sign: 'indoors',
    says: ['treadmill|treadmills|hall|hut|studio|living_room|indoors|indoor|shallow_end|pool_side|poolside|the_pool'],
  },
] as const

/** Classes of one kind, told by their title, by what most of their exercises are, or by words that come again and again. */
export const CLASS_KINDS = [
  {
    sign: 'running-class',
    says: ['running|run_club|runners|run_drills'],
    movement: 'run',
    words: ['run|runs|running|runner|runners|jog|jogging|jogs|sprint|sprints|sprinting|strides'],
  },
  {
    sign: 'rowing-class',
    says: ['rower|rowing|rowing_machine|ergo|erg|erging'],
    movement: 'row-machine',
    words: ['rowing_machine|the_erg|the_rower|footplate|flywheel|stroke_rate'],
  },
] as const

/** Kit that at least a quarter of the exercises of a class use, and at least three: the class is built on it. */
export const KIT_CLASSES = [
  { sign: 'barbell-class', kit: 'barbell' },
  { sign: 'rings-class', kit: 'rings' },
  { sign: 'band-class', kit: 'band' },
  { sign: 'kettlebell-class', kit: 'kettlebell' },
  { sign: 'dumbbell-class', kit: 'dumbbell' },
] as const

/** A class of some length in which no weight, band or machine is ever named. */
export const NOTHING_LIFTED = 'nothing-lifted'

/** A class of some length in which nothing is named that a band could be fixed to. */
export const NO_ANCHOR = 'no-anchor'
export const ANCHOR_SAYING =
  'anchor|anchors|anchored|door|post|pole|rail|railing|banister|hook|tree|fence|frame|rack|pillar|column|radiator|bar'

/** A cue of the kind breathing is there, whatever it says. */
export const BREATHING_CUED = 'breathing-cued'

type SignOf<List extends readonly { sign: string }[]> = List[number]['sign']

export type Sign =
  | ShownSign
  | SignOf<typeof SIGN_WORDS>
  | SignOf<typeof CLASS_SIGN_WORDS>
  | SignOf<typeof CLASS_KINDS>
  | SignOf<typeof KIT_CLASSES>
  | typeof NOTHING_LIFTED
  | typeof NO_ANCHOR
  | typeof BREATHING_CUED
