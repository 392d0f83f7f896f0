/** What the package webvtt-parser hands out, under our own names: text trees and time lines. */

/** A node of a caption's text. A tag's `value` is its annotation: a speaker's name or a language. */
export type VttNode =
  | { type: 'text'; value: string }
  | { type: 'timestamp'; value: number }
  | { type: 'object'; name: string; classes: string[]; value?: string; children: VttNode[] }

/** A time line as read; times in seconds. */
export interface ParsedTimings {
  startTime: number
  endTime: number
  direction: 'horizontal' | 'rl' | 'lr'
  snapToLines: boolean
  linePosition: number | 'auto'
  lineAlign: 'start' | 'center' | 'end'
  textPosition: number | 'auto'
  positionAlign: 'auto' | 'line-left' | 'center' | 'line-right'
  size: number
  alignment: 'start' | 'center' | 'end' | 'left' | 'right'
}
