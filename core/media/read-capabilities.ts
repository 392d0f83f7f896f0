/** Reads the lists that ffmpeg prints of its own parts, and compares them with what we need. */

export type PartKind = 'encoder' | 'decoder' | 'filter' | 'muxer' | 'demuxer'

export interface NeededPart {
  kind: PartKind
  name: string
  /** What we use it for. */
  why: string
}

/** Every part of ffmpeg that our commands name or need for an accepted recording. */
export const NEEDED_PARTS = [
  { kind: 'encoder', name: 'libx264', why: 'picture of clips' },
  { kind: 'encoder', name: 'aac', why: 'sound of clips' },
  { kind: 'encoder', name: 'mjpeg', why: 'stills' },
  { kind: 'encoder', name: 'pcm_s16le', why: 'measuring sound' },
  { kind: 'decoder', name: 'h264', why: 'recordings' },
  { kind: 'decoder', name: 'hevc', why: 'recordings of newer phones' },
  { kind: 'decoder', name: 'vp9', why: 'WebM recordings' },
  { kind: 'decoder', name: 'aac', why: 'sound of recordings' },
  { kind: 'decoder', name: 'opus', why: 'sound of WebM recordings' },
  { kind: 'filter', name: 'trim', why: 'cutting the picture' },
  { kind: 'filter', name: 'atrim', why: 'cutting the sound' },
  { kind: 'filter', name: 'setpts', why: 'times of frames' },
  { kind: 'filter', name: 'asetpts', why: 'times of sound' },
  { kind: 'filter', name: 'split', why: 'several spans in one clip' },
  { kind: 'filter', name: 'asplit', why: 'several spans in one clip' },
  { kind: 'filter', name: 'concat', why: 'joining spans' },
  { kind: 'filter', name: 'crop', why: 'odd picture sizes' },
  { kind: 'filter', name: 'scale', why: 'picture formats' },
  { kind: 'filter', name: 'transpose', why: 'turned phones' },
  { kind: 'filter', name: 'format', why: 'picture formats' },
  { kind: 'filter', name: 'setparams', why: 'colours of clips' },
  { kind: 'filter', name: 'zscale', why: 'recordings of high dynamic range' },
  { kind: 'filter', name: 'tonemap', why: 'recordings of high dynamic range' },
  { kind: 'filter', name: 'bwdif', why: 'interlaced recordings' },
  { kind: 'filter', name: 'aresample', why: 'late or broken sound' },
  { kind: 'filter', name: 'aformat', why: 'sound formats' },
  { kind: 'filter', name: 'apad', why: 'sound that ends early' },
  { kind: 'filter', name: 'volume', why: 'even loudness' },
  { kind: 'filter', name: 'alimiter', why: 'even loudness' },
  { kind: 'filter', name: 'ebur128', why: 'measuring loudness' },
  { kind: 'muxer', name: 'mp4', why: 'clips' },
  { kind: 'muxer', name: 'mjpeg', why: 'stills' },
  { kind: 'muxer', name: 'null', why: 'measuring' },
  { kind: 'demuxer', name: 'mov', why: 'MP4 and MOV recordings' },
  { kind: 'demuxer', name: 'matroska', why: 'MKV and WebM recordings' },
  { kind: 'demuxer', name: 'mpegts', why: 'TS recordings' },
  { kind: 'demuxer', name: 'avi', why: 'AVI recordings' },
  { kind: 'demuxer', name: 'ffmetadata', why: 'chapters in lessons' },
] as const satisfies readonly NeededPart[]

/** The option that prints the list of each kind. */
export const LIST_OPTIONS = {
  encoder: '-encoders',
  decoder: '-decoders',
  filter: '-filters',
  muxer: '-muxers',
  demuxer: '-demuxers',
} as const satisfies Record<PartKind, string>

/**
 * Reads one list. Each row is flags, name(s), description: ` V....D libx264   libx264 H.264 ...`,
 * ` TSC volume   A->A   Change input volume.`, `  D  mov,mp4,m4a   QuickTime / MOV`.
 * @returns every name; rows of the legend (`V..... = Video`) are left out.
 */
export function readPartNames(listText: string): Set<string> {
  const names = listText.split('\n').flatMap((line) => {
    const match = /^\s+[A-Z.|]+(?:\s+d)?\s+([\w,]+)(?:\s|$)/.exec(line)
    return match?.[1] ? match[1].split(',') : []
  })
  return new Set(names)
}
