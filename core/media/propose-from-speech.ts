/** Proposes segments where there is no transcript: stretches of speech, parted where the room is quiet for long. */
import { Segment } from '../../shared/log-sheet.ts'
import type { Ms, Stretch } from '../../shared/time.ts'

/** A teacher who is quiet for so long lets people work, or goes on to the next; our own choice, no source. */
const BREAK_MS = 8000
/** Less speech than this teaches nothing. */
const LEAST_SPEECH_MS = 4000

/** Named by their order, for a person to rename; all are proposals. */
export function proposeFromSpeech(islands: readonly Stretch[], durationMs: Ms): Segment[] {
  return groupIslands(islands)
    .filter(({ speechMs }) => speechMs >= LEAST_SPEECH_MS)
    .map(({ startMs, endMs }, index) =>
      Segment.parse({
        id: `speech-${index + 1}`,
        origin: 'draft',
        state: 'proposed',
        confidence: 0.2,
        ruleId: 'speech-islands',
        exercise: { name: `Exercise ${index + 1}` },
        spans: [{ startMs, endMs: Math.min(endMs, durationMs) }],
      }),
    )
}

/** A group runs to the start of the next one, because people still move while nobody speaks. */
function groupIslands(islands: readonly Stretch[]): (Stretch & { speechMs: Ms })[] {
  const groups: (Stretch & { speechMs: Ms })[] = []
  for (const island of islands) {
    const speechMs = island.endMs - island.startMs
    const last = groups.at(-1)
    if (last && island.startMs - last.endMs < BREAK_MS) {
      last.endMs = island.endMs
      last.speechMs += speechMs
    } else groups.push({ ...island, speechMs })
  }
  return groups.map((group, index) => ({ ...group, endMs: groups[index + 1]?.startMs ?? group.endMs }))
}
