/** Chapters: named stretches of a class or of a lesson. */
import type { Stretch } from './time.ts'

/** One chapter. Two chapters of a list never overlap in part: they lie apart, or one lies inside the other. */
export interface Chapter extends Stretch {
  title: string
  /** 1 = outer, 2 = inside a chapter of level 1. */
  level: 1 | 2
}
