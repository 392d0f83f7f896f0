/** Writes SRT: number, times with a comma, plain text. SRT has no standard and no way to escape markup. */
import type { CaptionCue } from '../../shared/captions.ts'
import { formatVttTime, plainLines, sortCues } from './write-vtt.ts'

/** Text of an SRT file, sorted and numbered from 1. Speakers are left out. A caption without text is left out. */
export function writeSrt(cues: readonly CaptionCue[]): string {
  const time = (ms: number) => formatVttTime(ms).replace('.', ',')
  return sortCues(cues)
    .map((cue) => ({ ...cue, lines: cue.lines.flatMap(plainLines) }))
    .filter((cue) => cue.lines.length > 0 && cue.endMs > cue.startMs)
    .map((cue, index) => {
      const text = cue.lines.map((line) => line.replaceAll('-->', '->')).join('\n')
      return `${index + 1}\n${time(cue.startMs)} --> ${time(cue.endMs)}\n${text}\n`
    })
    .join('\n')
}
