/** Builds readable captions from a timed transcript. */
import type { CaptionCue } from '../../shared/captions.ts'
import type { Transcript } from '../../shared/transcript.ts'
import { fitTimes } from './fit-times.ts'
import type { CaptionProfileName } from './profiles.ts'
import { CAPTION_PROFILES } from './profiles.ts'
import { splitLines } from './split-lines.ts'
import { splitWords } from './split-words.ts'
import { timeWords } from './time-words.ts'

/**
 * Captions in order, without overlap, every word of the transcript once. Words are shown as said, fillers too.
 * Ends of captions may lie up to a few seconds past the recording's end when its last words are cut short.
 * @param profile line length and number of lines; `web` = two lines of 42 characters.
 */
export function buildCaptions(transcript: Transcript, profile: CaptionProfileName = 'web'): CaptionCue[] {
  const shape = CAPTION_PROFILES[profile]
  const cues = timeWords(transcript).flatMap((run) =>
    splitWords(run, shape).map((words): CaptionCue => ({
      startMs: words[0]?.startMs ?? 0,
      endMs: words.reduce((latest, word) => Math.max(latest, word.endMs), 0),
      lines: splitLines(
        words.map((word) => word.text),
        shape,
      ),
      speaker: run.speaker,
    })),
  )
  return fitTimes(cues)
}
