/** Angles that classes go by: common practice, no source. */

/** The most that is usual, in degrees; fewer for beginners. */
export const TRADE_ANGLES = [
  { name: 'side bend', most: 45, beginners: 45 },
  { name: 'decline', most: 45, beginners: 10 },
] as const
