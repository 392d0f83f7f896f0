/** What a second reader may answer: cues and cautions for exercises of a sheet, each with words of the transcript. */
import { z } from 'zod'
import { CueKind } from './log-sheet.ts'

/** Longer words are no quote of one thing said. */
const Words = z.string().trim().min(3).max(400)

export const SecondAnswer = z.object({
  cues: z
    .array(z.object({ segmentId: z.string(), kind: CueKind, text: Words }))
    .max(2000)
    .default([]),
  cautions: z
    .array(z.object({ segmentId: z.string(), hazard: z.string().max(40), text: Words }))
    .max(500)
    .default([]),
})
export type SecondAnswer = z.infer<typeof SecondAnswer>
