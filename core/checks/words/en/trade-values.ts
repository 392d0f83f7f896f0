/** Values that classes go by: common practice, no source. */

export interface TradeAngle {
  /** The exercise, by its names. */
  name: RegExp
  /** Words that mean it where no name does. */
  words: RegExp
  /** The most that is usual, in degrees; fewer for beginners. */
  most: number
  beginners: number
  /** What is usual, as a sentence. */
  usual: string
}

export const TRADE_ANGLES: readonly TradeAngle[] = [
  {
    name: /\b(?:side|lateral) (?:bend|flexion|reach)/i,
    words:
      /\b(?:bend|lean|tip|reach|fold)(?:ing|s)?\b[^.]{0,40}\b(?:to (?:the|one|your \w+|each) side|sideways|side ?ways)\b/i,
    most: 45,
    beginners: 45,
    usual: 'A side bend usually goes to about 45 degrees at most.',
  },
  {
    name: /\bdecline/i,
    words: /\bdeclin(?:e|ed)\b/i,
    most: 45,
    beginners: 10,
    usual: 'A decline bench is usually set to 30 to 40 degrees, never past 45, and to 10 for beginners.',
  },
]

const JOINT = '(?:elbow|knee|hip|arm|wrist|ankle|foot|feet|toe|chin|head|shoulder)s?'
/** An angle of another joint is not that of the bend or the bench: "elbows at ninety degrees", "ninety degrees at the knee". */
export const OTHER_ANGLE = new RegExp(
  `\\b${JOINT}\\b(?!(?: \\w+)* and )[^,.;]{0,40}\\bdegrees?\\b|\\bdegrees? (?:at|in|of|bend (?:at|in)) (?:the |your |each )?${JOINT}\\b`,
  'i',
)

/** A hold at the top of a repetition, in seconds. Longer ones are isometric work, told as such. */
export const PEAK_HOLD = { usual: '1 to 3 seconds', most: 3, isometricFrom: 15 } as const
