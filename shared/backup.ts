/** A backup's list of files (backup.json), and an export's (manifest.json): what is in it, with sums. */
import { z } from 'zod'
import { Audience, Music } from './log-sheet.ts'
import { loose } from './loose.ts'
import { Ms } from './time.ts'

const Sum = z.string().regex(/^[0-9a-f]{64}$/)
const Bytes = z.number().int().nonnegative()

export const BackupList = loose({
  format: z.literal('repslate-backup'),
  version: z.literal(1),
  atUtc: z.number().int(),
  /** The file beside this one. */
  store: loose({ bytes: Bytes, sha256: Sum }),
  /** Media by the storage's keys; the bytes lie under their sum. */
  files: z.array(loose({ key: z.string(), bytes: Bytes, sha256: Sum, changedUtc: z.number().int() })),
})
export type BackupList = z.infer<typeof BackupList>

export const ExportList = loose({
  format: z.literal('repslate-export'),
  version: z.literal(1),
  exportedUtc: z.number().int(),
  recording: loose({
    title: z.string().min(1).max(200),
    language: z.string().max(35),
    durationMs: Ms.nullable(),
    /** null = nobody said for whom the class is. */
    audience: z.array(Audience).nullable(),
    equipment: z.array(z.string()),
    music: Music.nullable(),
  }),
  /** By the names of their folders; each holds a lesson.json. */
  lessons: z.array(loose({ slug: z.string().regex(/^[a-z0-9-]{1,64}$/), segmentId: z.string().min(1) })),
  /** Every file of the archive but this one. */
  files: z.array(loose({ name: z.string(), bytes: Bytes, sha256: Sum })),
})
export type ExportList = z.infer<typeof ExportList>
