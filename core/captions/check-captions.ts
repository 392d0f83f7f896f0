/** Checks captions against published numbers: length of lines, speed, time shown, gaps. */
import type { CaptionCue, CaptionFinding } from '../../shared/captions.ts'
import type { Severity } from '../../shared/check-report.ts'
import type { CaptionProfile, CaptionProfileName } from './profiles.ts'
import { CAPTION_PROFILES, CAPTION_TIMES, shortestMs } from './profiles.ts'

/**
 * Findings in order of the captions, which must be sorted by start. Speed is never a stop: people talk fast while they
 * count, and captions say what was said (BBC Subtitle Guidelines v1.2.5, 4).
 */
export function checkCaptions(cues: readonly CaptionCue[], profile: CaptionProfileName = 'web'): CaptionFinding[] {
  const shape = CAPTION_PROFILES[profile]
  return cues.flatMap((cue, cueIndex) =>
    RULES.flatMap(({ ruleId, severity, find }) => {
      const found = find(cue, cues[cueIndex + 1], shape)
      return found === null ? [] : [{ ruleId, severity, cueIndex, ...found }]
    }),
  )
}

interface Found {
  message: string
  source: string
}

interface Rule {
  ruleId: string
  severity: Severity
  /** What is wrong and who says so, or null. */
  find: (cue: CaptionCue, next: CaptionCue | undefined, shape: CaptionProfile) => Found | null
}

const VTT = 'WebVTT, W3C, section "WebVTT file structure"'

const RULES: readonly Rule[] = [
  {
    ruleId: 'caption-times',
    severity: 'stop',
    find: (cue) => (cue.endMs > cue.startMs ? null : { message: 'Ends before it starts.', source: VTT }),
  },
  {
    ruleId: 'caption-empty',
    severity: 'warn',
    find: (cue) => (textOf(cue) === '' ? { message: 'Has no text.', source: VTT } : null),
  },
  {
    ruleId: 'caption-line-length',
    severity: 'warn',
    find(cue, _next, shape) {
      const longest = Math.max(0, ...cue.lines.map((line) => line.length))
      if (longest <= shape.lineLength) return null
      return {
        message: `A line of ${longest} characters; at most ${shape.lineLength}.`,
        source: shape.sources.lineLength,
      }
    },
  },
  {
    ruleId: 'caption-lines',
    severity: 'warn',
    find(cue, _next, shape) {
      if (cue.lines.length <= shape.lines) return null
      return { message: `${cue.lines.length} lines; at most ${shape.lines}.`, source: shape.sources.lines }
    },
  },
  {
    ruleId: 'caption-words-per-minute',
    severity: 'note',
    find(cue, _next, shape) {
      const speed = Math.round((wordsOf(cue) * 60_000) / durationOf(cue))
      if (speed <= shape.wordsPerMinute) return null
      return {
        message: `${speed} words a minute; above ${shape.wordsPerMinute}.`,
        source: shape.sources.wordsPerMinute,
      }
    },
  },
  {
    ruleId: 'caption-characters-per-second',
    severity: 'warn',
    find(cue) {
      const speed = Math.round((textOf(cue).length * 1000) / durationOf(cue))
      const { value, source } = CAPTION_TIMES.maxPerSecond
      return speed <= value
        ? null
        : { message: `${speed} characters a second; many readers cannot follow above ${value}.`, source }
    },
  },
  {
    ruleId: 'caption-too-short',
    severity: 'note',
    find(cue) {
      const { minMs, minPerWordMs } = CAPTION_TIMES
      const least = shortestMs(wordsOf(cue))
      if (durationOf(cue) >= least) return null
      const source = least > minMs.value ? minPerWordMs.source : minMs.source
      return { message: `Shown for ${seconds(durationOf(cue))}; needs ${seconds(least)}.`, source }
    },
  },
  {
    ruleId: 'caption-too-long',
    severity: 'warn',
    find(cue) {
      const { value, source } = CAPTION_TIMES.maxMs
      if (durationOf(cue) <= value) return null
      return { message: `Shown for ${seconds(durationOf(cue))}; at most ${seconds(value)}.`, source }
    },
  },
  {
    ruleId: 'caption-gap',
    severity: 'note',
    find(cue, next) {
      const gap = (next?.startMs ?? Infinity) - cue.endMs
      const { value, source } = CAPTION_TIMES.minGapMs
      if (gap <= 0 || gap >= value) return null
      return { message: `${seconds(gap)} to the next caption; none, or ${seconds(value)} and more.`, source }
    },
  },
  {
    ruleId: 'caption-overlap',
    severity: 'note',
    find(cue, next) {
      if (!next || next.startMs >= cue.endMs) return null
      return { message: 'Still shown when the next one starts.', source: 'common practice, no source' }
    },
  },
]

function textOf(cue: CaptionCue): string {
  return cue.lines.join(' ')
}

function wordsOf(cue: CaptionCue): number {
  return textOf(cue).match(/\S+/g)?.length ?? 0
}

/** At least 1 ms, so that speeds are numbers. */
function durationOf(cue: CaptionCue): number {
  return Math.max(1, cue.endMs - cue.startMs)
}

function seconds(ms: number): string {
  return `${(ms / 1000).toFixed(2).replace(/\.?0+$/, '')} s`
}
