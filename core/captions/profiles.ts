/** Caption profiles: how long lines are and how fast text may go. Each number stands beside its source. */

export interface CaptionProfile {
  /** Characters in a line. */
  lineLength: number
  /** Lines in a caption. */
  lines: number
  /** Words a minute above which a check says so. */
  wordsPerMinute: number
  sources: { lineLength: string; lines: string; wordsPerMinute: string }
}

const BBC = 'BBC Subtitle Guidelines v1.2.5 (March 2026)'
const UTK = 'University of Tennessee Libraries, Timed Text Style Guide'

export const CAPTION_PROFILES = {
  /** Landscape video on a page. */
  web: {
    lineLength: 42,
    lines: 2,
    wordsPerMinute: 180,
    sources: { lineLength: `${UTK}, 5.2`, lines: `${BBC}, 3.3`, wordsPerMinute: `${BBC}, 4` },
  },
  /** Upright video, 9:16. */
  vertical: {
    lineLength: 25,
    lines: 3,
    wordsPerMinute: 180,
    sources: { lineLength: `${BBC}, 3.1`, lines: `${BBC}, 3.3`, wordsPerMinute: `${BBC}, 4` },
  },
  broadcast: {
    lineLength: 37,
    lines: 2,
    wordsPerMinute: 180,
    sources: { lineLength: `${BBC}, 3.1`, lines: `${BBC}, 3.3`, wordsPerMinute: `${BBC}, 4` },
  },
  /** Easy reading. */
  easy: {
    lineLength: 32,
    lines: 2,
    wordsPerMinute: 130,
    sources: {
      lineLength: 'DCMP, Captioning Guidelines (dcmp.org/learn/5)',
      lines: `${BBC}, 3.3`,
      wordsPerMinute: 'DCMP Captioning Key, Presentation Rate (dcmp.org/learn/captioningkey/601)',
    },
  },
} as const satisfies Record<string, CaptionProfile>

export type CaptionProfileName = keyof typeof CAPTION_PROFILES

/** Times in ms, the same for every profile. */
export const CAPTION_TIMES = {
  /** Shortest caption: 5/6 s. */
  minMs: { value: 833, source: `${UTK}, 2.0` },
  /** Shortest time a word. */
  minPerWordMs: { value: 300, source: `${BBC}, 4.1` },
  maxMs: { value: 7000, source: `${UTK}, 2.0` },
  /** A gap is none at all, or at least this long. */
  minGapMs: { value: 1000, source: `${BBC}, 4.5` },
  /** Characters a second above which many readers cannot keep up. */
  maxPerSecond: { value: 20, source: 'Szarkowska & Gerber-Moron, PLOS ONE 13(6):e0199331, 2018' },
} as const satisfies Record<string, { value: number; source: string }>

/** Shortest time in ms for a caption of this many words. */
export function shortestMs(words: number): number {
  return Math.max(CAPTION_TIMES.minMs.value, words * CAPTION_TIMES.minPerWordMs.value)
}
