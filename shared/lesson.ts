/** A lesson: one clip with its captions, chapters, dose and cautions, ready for a member. Written as lesson.json. */
import { z } from 'zod'
import { loose, said } from './loose.ts'
import { Audience, Prescription } from './log-sheet.ts'
import { Ms } from './time.ts'

/** A caution as the member reads it before play. */
export const LessonCaution = loose({
  hazard: z.string(),
  text: z.string(),
  concerns: z.string(),
  /** said in the clip, or written on the lesson only. */
  said: z.boolean(),
})
export type LessonCaution = z.infer<typeof LessonCaution>

export const Lesson = loose({
  format: z.literal('repslate-lesson'),
  version: z.literal(1),
  /** Name in addresses; lasting. */
  slug: z.string(),
  name: z.string(),
  alsoCalled: z.array(z.string()),
  audience: z.array(Audience),
  equipment: z.array(z.string()),
  position: said(z.string()),
  dose: said(loose({ text: z.string(), spoken: z.string(), prescription: Prescription })),
  /** Taught as in a mirror: the left and right that are said are the member's own. Absent = nobody has said. */
  mirrored: z.boolean().optional(),
  /** Must be read before play. */
  cautions: z.array(LessonCaution),
  /** Concerns some members only. */
  takeCare: z.array(LessonCaution),
  /** Set-up and execution in the instructor's words. */
  movement: z.array(z.string()),
  easier: z.array(z.string()),
  harder: z.array(z.string()),
  notice: z.string(),
  /** Where in the class it comes from. */
  from: loose({
    title: z.string(),
    segmentId: z.string(),
    recordingSha256: z.string(),
    spans: z.array(loose({ startMs: Ms, endMs: Ms })),
  }),
  clip: loose({
    file: z.string(),
    sha256: z.string(),
    durationMs: Ms,
    frames: z.number().int(),
    poster: said(z.string()),
  }),
  /** Where a repetition starts and where it ends, as square stills; absent where hardly anything moves. */
  pictures: loose({ start: z.string(), end: z.string() }).optional(),
  captions: z.string(),
  chapters: z.string(),
  description: z.string(),
})
export type Lesson = z.infer<typeof Lesson>

/** What publishing made and what it held back. Written as library.json. */
export const Library = loose({
  format: z.literal('repslate-library'),
  version: z.literal(1),
  title: z.string(),
  lessons: z.array(loose({ slug: z.string(), name: z.string(), folder: z.string(), dose: z.string(), durationMs: Ms })),
  heldBack: z.array(loose({ segmentId: z.string(), name: z.string(), reasons: z.array(z.string()) })),
})
export type Library = z.infer<typeof Library>

/** Stands on every lesson. */
export const NOTICE =
  'This is no medical advice. Ask a doctor, physiotherapist or other licensed professional what is right for you, and keep to local rules. Stop if you feel pain, dizziness, chest discomfort or unusual breathlessness, and get help.'
