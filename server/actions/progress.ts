/** How longer work tells where it stands. */

export interface Progress {
  /** What is being done, in words for the person. */
  label: string
  /** Share of the whole work done, 0 to 1. */
  fraction: number
  /** Believable time left in ms, or null when it is too early to say. */
  leftMs: number | null
  /** True when the thing named by label is finished (a plain line is worth printing). */
  done: boolean
}

export type OnProgress = (progress: Progress) => void
