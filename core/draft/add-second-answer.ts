/** Adds what a second reader proposed to a draft: only words that stand in the transcript inside the exercise, as proposals. */
import type { Caution, Cue, LogSheet, Mark, Segment } from '../../shared/log-sheet.ts'
import type { SecondAnswer } from '../../shared/second-answer.ts'
import { overlapMs, type Ms } from '../../shared/time.ts'
import type { TranscriptLine } from '../../shared/transcript.ts'
import { findHazard } from '../cautions/hazards.ts'
import { quoteAt, timeAt } from '../transcript/place-quote.ts'

export interface SecondReading {
  sheet: LogSheet
  /** Proposals taken in. */
  added: number
  /** Proposals left out: words not said there, an unknown exercise or hazard. Those said already are not counted. */
  refused: number
}

/** Nothing on the sheet changes; new marks join it, each `proposed`, of rule `second-reader`, with exact words and time. */
export function addSecondAnswer(
  sheet: LogSheet,
  lines: readonly TranscriptLine[],
  answer: SecondAnswer,
): SecondReading {
  let added = 0
  let refused = 0
  const segments = sheet.segments.map((segment): Segment => {
    const cues: Cue[] = []
    for (const { segmentId, kind, text } of answer.cues) {
      if (segmentId !== segment.id) continue
      const said = findSaid(lines, segment, text)
      if (!said) refused++
      else if (![...segment.cues, ...cues].some((cue) => cue.kind === kind && isSame(cue, said))) {
        cues.push({ ...MARK, id: `${segment.id}-second-${String(cues.length + 1)}`, kind, ...said })
      }
    }
    const cautions: Caution[] = []
    for (const { segmentId, hazard, text } of answer.cautions) {
      if (segmentId !== segment.id) continue
      const said = findHazard(hazard) && findSaid(lines, segment, text)
      if (!said) refused++
      else if (![...segment.cautions, ...cautions].some((one) => one.hazard === hazard)) {
        cautions.push({ ...MARK, hazard, scope: 'exercise', source: 'spoken', text: said.text, atMs: said.startMs })
      }
    }
    added += cues.length + cautions.length
    if (cues.length + cautions.length === 0) return segment
    return {
      ...segment,
      cues: [...segment.cues, ...cues].toSorted((a, b) => a.startMs - b.startMs),
      cautions: [...segment.cautions, ...cautions],
    }
  })
  const known = new Set(sheet.segments.map(({ id }) => id))
  refused += [...answer.cues, ...answer.cautions].filter(({ segmentId }) => !known.has(segmentId)).length
  return { sheet: { ...sheet, segments }, added, refused }
}

/** A second reader says nothing of how sure it is; half is below what is accepted in bulk. */
const MARK: Mark = { origin: 'draft', state: 'proposed', confidence: 0.5, ruleId: 'second-reader' }

interface Said {
  text: string
  startMs: Ms
  endMs: Ms
}

/** The words inside one line and one span, letter by letter. */
function findSaid(lines: readonly TranscriptLine[], segment: Segment, text: string): Said | null {
  for (const line of lines) {
    for (let at = line.text.indexOf(text); at >= 0; at = line.text.indexOf(text, at + 1)) {
      const { atMs } = quoteAt(line, at, text.length)
      if (segment.spans.some(({ startMs, endMs }) => atMs >= startMs && atMs < endMs)) {
        return { text, startMs: atMs, endMs: Math.max(atMs, timeAt(line, at + text.length)) }
      }
    }
  }
  return null
}

function isSame(cue: Cue, said: Said): boolean {
  return overlapMs(cue, said) > 0 || cue.text === said.text
}
