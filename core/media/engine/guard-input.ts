/** What stands before every file that ffmpeg or ffprobe opens, so that a file cannot make it open others. */
import { resolve } from 'node:path'
import { MAX_PIXELS, MAX_STREAMS } from '../accept-recording.ts'

/**
 * Options before each input. The list of formats is what matters: a playlist, a joining list or a subtitle file
 * under any name is refused by it, and only these can name other files. The list of protocols keeps it on this disk.
 */
export const RECORDING_GUARDS: readonly string[] = [
  ...['-protocol_whitelist', 'file'],
  ...['-format_whitelist', 'mov,matroska,mpegts,avi'],
  ...['-max_streams', String(MAX_STREAMS)],
  ...['-max_pixels', String(MAX_PIXELS)],
]

/** Before a joining list that we wrote ourselves: it may name recordings, each of them held to the same lists. */
export const JOIN_GUARDS: readonly string[] = [
  ...RECORDING_GUARDS.map((word, at) => (RECORDING_GUARDS[at - 1] === '-format_whitelist' ? `concat,${word}` : word)),
  ...['-f', 'concat', '-safe', '0'],
]

/** Sound recorded apart comes in further formats; none of them can name another file. */
const SOUND_FORMATS = 'mov,matroska,mpegts,avi,wav,w64,mp3,flac,aac,ogg,aiff'

/** Before a file that is only listened to: given after RECORDING_GUARDS, the later list holds. */
export const SOUND_GUARDS: readonly string[] = ['-format_whitelist', SOUND_FORMATS]

/** Before a chapter file that we wrote ourselves. */
export const CHAPTER_GUARDS: readonly string[] = [
  ...['-protocol_whitelist', 'file'],
  ...['-format_whitelist', 'ffmetadata'],
  ...['-f', 'ffmetadata'],
]

/** A path as an ffmpeg name: whole and marked as a file, so that no character of it is read as anything else. */
export function fileName(path: string): string {
  return `file:${resolve(path)}`
}
