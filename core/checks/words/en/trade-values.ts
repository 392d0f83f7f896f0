/** Angles and holds that classes go by: common practice, no source. */

/** The most that is usual, in degrees; fewer for beginners. */
export const TRADE_ANGLES = [
  { name: 'side bend', most: 45, beginners: 45 },
  { name: 'decline', most: 45, beginners: 10 },
] as const

/** A hold at the top of a lifting repetition, in seconds. */
export const PEAK_HOLD = { min: 1, max: 3 } as const
