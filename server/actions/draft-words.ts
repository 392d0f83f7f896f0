/** From the text of a class to its drafted sheet: values in, values out, so that a thread of its own can do it. */
import { draftSheet } from '../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { LogSheet } from '../../shared/log-sheet.ts'
import type { ClassPlan, Transcript } from '../../shared/transcript.ts'

/** Plain data, since it is copied into the thread. */
export interface ClassWords {
  text: string
  /** What was said of the class when it came in; a length of 0 ms = not known yet. */
  head: Pick<LogSheet, 'title' | 'audience' | 'durationMs' | 'source' | 'music' | 'people'>
}

export interface DraftedWords {
  transcript: Transcript | ClassPlan
  fresh: LogSheet
}

/** @throws AppError transcript-* */
export function draftWords({ text, head }: ClassWords): DraftedWords {
  const durationMs = head.durationMs || null
  const transcript = parseTranscript(text, { durationMs })
  const drafted = draftSheet({
    transcript,
    audience: head.audience,
    title: head.title,
    durationMs,
    source: head.source,
  })
  return { transcript, fresh: LogSheet.parse({ ...drafted, music: head.music, people: head.people }) }
}
