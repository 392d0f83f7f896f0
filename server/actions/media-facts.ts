/** What is known of a recording's file once it was looked into: kept with the file, filled piece by piece. */
import { z } from 'zod'
import type { AcceptedRecording } from '../../core/media/accept-recording.ts'
import type { AudioStream } from '../../core/media/read-probe.ts'
import { whyPreview } from '../../core/media/plan-analysis.ts'
import { Ms } from '../../shared/time.ts'
import type { MediaFile } from '../store/keep-media.ts'

const Part = z.object({ startMs: Ms, endMs: Ms })

const SoundFacts = z.object({ codec: z.string(), channels: z.number(), sampleRate: z.number() })

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
  sound: SoundFacts.nullable(),
  /** Every sound track of the file, in its order; absent = not looked at. */
  tracks: z.array(SoundFacts).optional(),
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
    sound: audio && soundOf(audio),
    tracks: (recording.probe.soundTracks ?? []).map(soundOf),
    frames,
    needsPreview: whyPreview(recording),
    preview: 'none',
    wave: null,
    thumbs: null,
    loudness: null,
  }
}

const soundOf = ({ codec, channels, sampleRate }: AudioStream) => ({ codec, channels, sampleRate })

/** Where sound recorded apart lies under a film, as it was measured; kept with the sound's file. */
export const SoundPlace = z.object({
  /** The film that it was compared with. */
  filmId: z.string(),
  /** null = it is not heard in that film. */
  found: z
    .object({
      /** 0 to 1, and how many places of the film agree. */
      likeness: z.number(),
      places: z.number().int(),
      /** Not heard: a person said where it begins. */
      byHand: z.literal(true).optional(),
    })
    .nullable(),
})
export type SoundPlace = z.infer<typeof SoundPlace>

/** null = not compared with a film yet. */
export function readPlace({ facts }: Pick<MediaFile, 'facts'>): SoundPlace | null {
  return z.object({ place: SoundPlace }).safeParse(facts).data?.place ?? null
}
