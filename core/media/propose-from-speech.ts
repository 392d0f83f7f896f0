/** Proposes segments where there is no transcript: stretches of speech, parted where the room is quiet for long. */
import { Segment } from '../../shared/log-sheet.ts'
import type { Ms, Stretch } from '../../shared/time.ts'

/** The longest silences part exercises: about one a minute, and none shorter than this. Our own choice, no source. */
const EXERCISE_MS = 60_000
const LEAST_BREAK_MS = 1200
/** Less speech than this teaches nothing. */
const LEAST_SPEECH_MS = 4000

/** Named by their order, for a person to rename; all are proposals. */
export function proposeFromSpeech(islands: readonly Stretch[], durationMs: Ms): Segment[] {
  return groupIslands(islands, chooseBreak(islands, durationMs))
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

/** The silence from which on a new exercise begins. */
function chooseBreak(islands: readonly Stretch[], durationMs: Ms): Ms {
  const silences = islands.slice(1).map(({ startMs }, index) => startMs - (islands[index]?.endMs ?? startMs))
  const longest = silences.sort((a, b) => b - a).slice(0, Math.max(1, Math.floor(durationMs / EXERCISE_MS)))
  return Math.max(LEAST_BREAK_MS, longest.at(-1) ?? 0)
}

/** A group runs to the start of the next one, because people still move while nobody speaks. */
function groupIslands(islands: readonly Stretch[], breakMs: Ms): (Stretch & { speechMs: Ms })[] {
  const groups: (Stretch & { speechMs: Ms })[] = []
  for (const island of islands) {
    const speechMs = island.endMs - island.startMs
    const last = groups.at(-1)
    if (last && island.startMs - last.endMs < breakMs) {
      last.endMs = island.endMs
      last.speechMs += speechMs
    } else groups.push({ ...island, speechMs })
  }
  return groups.map((group, index) => ({ ...group, endMs: groups[index + 1]?.startMs ?? group.endMs }))
}
