/** What is known of a recording's file once it was looked into: kept with the file, filled piece by piece. */
import { z } from 'zod'
import type { AcceptedRecording } from '../../core/media/accept-recording.ts'
import { whyPreview } from '../../core/media/plan-analysis.ts'
import { Ms } from '../../shared/time.ts'
import type { MediaFile } from '../store/keep-media.ts'

const Part = z.object({ startMs: Ms, endMs: Ms })

export const MediaFacts = z.object({
  /** Of the analysis that made this; another version is made again. */
  version: z.number().int(),
  picture: z.object({
    codec: z.string(),
    /** px as shown, after turning. */
    width: z.number(),
    height: z.number(),
    /** Frames a second on average, for people. */
    rate: z.number().nullable(),
  }),
  sound: z.object({ codec: z.string(), channels: z.number(), sampleRate: z.number() }).nullable(),
  frames: z.number().int(),
  /** Why a browser may not show the file itself; null = it will. */
  needsPreview: z.string().nullable(),
  /** 'growing' can be played from its start already. */
  preview: z.enum(['none', 'growing', 'whole']),
  /** Peaks and speech are in the storage. */
  wave: z.object({ zooms: z.array(z.number()), islands: z.number().int(), pauses: z.number().int() }).nullable(),
  thumbs: z
    .object({
      everyMs: Ms,
      columns: z.number().int(),
      rows: z.number().int(),
      width: z.number().int(),
      height: z.number().int(),
      count: z.number().int(),
      sheets: z.number().int(),
    })
    .nullable(),
  /** Where the picture is black or stands still; absent = not looked at. */
  dull: z.object({ black: z.array(Part), still: z.array(Part) }).optional(),
  loudness: z.object({ integratedLufs: z.number().nullable(), truePeakDbtp: z.number().nullable() }).nullable(),
})
export type MediaFacts = z.infer<typeof MediaFacts>

/** null = the file was not looked into yet, or by an older program. */
export function readFacts({ facts }: Pick<MediaFile, 'facts'>): MediaFacts | null {
  return MediaFacts.safeParse(facts).data ?? null
}

export function firstFacts(version: number, recording: AcceptedRecording, frames: number): MediaFacts {
  const { video, audio } = recording
  const turned = video.rotation === 90 || video.rotation === 270
  return {
    version,
    picture: {
      codec: video.codec,
      width: turned ? video.height : video.width,
      height: turned ? video.width : video.height,
      rate: video.averageRate,
    },
    sound: audio && { codec: audio.codec, channels: audio.channels, sampleRate: audio.sampleRate },
    frames,
    needsPreview: whyPreview(recording),
    preview: 'none',
    wave: null,
    thumbs: null,
    loudness: null,
  }
}
