/** What a cut made: one entry a clip, written as manifest.json beside the clips. */
import { z } from 'zod'
import { loose, said } from './loose.ts'
import { Ms } from './time.ts'

export const CutMethod = z.enum(['edge', 'copy', 'full'])
export type CutMethod = z.infer<typeof CutMethod>

/** Loudness of the whole class and the one gain that all its clips share (EBU R128; LUFS, dBTP, dB). */
export const Loudness = loose({
  integratedLufs: z.number().nullable(),
  truePeakDbtp: z.number().nullable(),
  targetLufs: z.number(),
  gainDb: z.number(),
  limited: z.boolean(),
})
export type Loudness = z.infer<typeof Loudness>

export const ClipEntry = loose({
  segmentId: z.string(),
  name: z.string(),
  /** Path relative to the manifest. */
  file: z.string(),
  poster: said(z.string()),
  sha256: z.string(),
  bytes: z.number().int(),
  /** Frames in the clip. */
  frames: z.number().int().positive(),
  durationMs: Ms,
  /** What of the recording is in the clip, in order, as cut: startMs is the first frame kept, endMs the first frame after. */
  spans: z.array(loose({ startMs: Ms, endMs: Ms })),
  method: CutMethod,
  why: z.string(),
  loudness: said(Loudness),
  /** True when an earlier run had made this very clip and it was kept. */
  reused: z.boolean(),
})
export type ClipEntry = z.infer<typeof ClipEntry>

export const FailedClip = loose({ segmentId: z.string(), name: z.string(), code: z.string(), message: z.string() })
export type FailedClip = z.infer<typeof FailedClip>

export const Manifest = loose({
  format: z.literal('repslate-manifest'),
  version: z.literal(1),
  recording: loose({ sha256: z.string(), durationMs: Ms }),
  clips: z.array(ClipEntry),
  failed: z.array(FailedClip).default([]),
})
export type Manifest = z.infer<typeof Manifest>
