/** What the catalogue says of an exercise: the attributes that the checks and the draft reason with. */

/** Where most of the work is done. */
export const POSITIONS = [
  'standing',
  'single-leg',
  'seated',
  'supine',
  'prone',
  'side-lying',
  'all-fours',
  'kneeling',
  'half-kneeling',
  'hands-supported',
  'forearm-supported',
  'hanging',
  'head-below-heart',
] as const
export type Position = (typeof POSITIONS)[number]

/** What moves, or what the movement brings with it. */
export const MOVEMENTS = [
  'squat',
  'lunge',
  'hinge',
  'step',
  'sit-to-stand',
  'heel-raise',
  'push',
  'pull',
  'overhead',
  'raise-above-shoulder',
  'carry',
  'spine-flexion',
  'spine-extension',
  'spine-rotation',
  'side-bend',
  'leg-lowering',
  'deep-knee',
  'deep-hip',
  'hip-rotation',
  'wide-legs',
  'leg-crossing',
  'jump',
  'run',
  'ballistic',
  'swing-kit',
  'isometric',
  'stretch',
  'neck-motion',
  'fast-turn',
  'floor-to-stand',
  'circles',
  'breathing',
  'balance',
  'curl-up',
  'load-over-face',
  'row-machine',
] as const
export type Movement = (typeof MOVEMENTS)[number]

export type Region =
  'legs' | 'hips' | 'back' | 'chest' | 'shoulders' | 'arms' | 'trunk' | 'calves' | 'neck' | 'whole-body' | 'breath'

/** One exercise of our own catalogue. Names are what people say, singular, lower case. */
export interface CatalogueEntry {
  /** Slug, never changed once published. */
  id: string
  name: string
  alsoCalled: readonly string[]
  /** First = where most of the work is done. */
  positions: readonly Position[]
  kit: readonly string[]
  movements: readonly Movement[]
  regions: readonly Region[]
  /** One-sided: taught and dosed side by side. */
  sided: boolean
  /** Held still rather than repeated. */
  still: boolean
  /** Usually done with outside load. */
  loaded: boolean
  /** Ids of easier and harder neighbours. */
  easier: readonly string[]
  harder: readonly string[]
}

/** An entry as its data file holds it: what is empty or false may be left out. */
export interface EntrySource {
  id: string
  name: string
  alsoCalled?: readonly string[]
  positions: readonly Position[]
  kit?: readonly string[]
  movements?: readonly Movement[]
  regions: readonly Region[]
  sided?: boolean
  still?: boolean
  loaded?: boolean
  easier?: readonly string[]
  harder?: readonly string[]
}
