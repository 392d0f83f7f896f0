/** The media type of a file by the end of its name: what the studio serves, and nothing guessed. */
import path from 'node:path'

/**
 * IANA media types registry (2024): text/javascript RFC 9239, text/css RFC 2318, font/woff2 RFC 8081, image/svg+xml W3C,
 * text/vtt W3C WebVTT, video/mp4 RFC 4337, video/matroska and audio/matroska RFC 9559. From memory: video/quicktime, video/mp2t.
 */
const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.m4a': 'audio/mp4',
  '.mkv': 'video/matroska',
  '.mov': 'video/quicktime',
  '.mp4': 'video/mp4',
  '.png': 'image/png',
  '.srt': 'application/x-subrip; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.vtt': 'text/vtt; charset=utf-8',
  '.wav': 'audio/wav',
  '.webm': 'video/webm',
  '.webmanifest': 'application/manifest+json',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.zip': 'application/zip',
} as const satisfies Record<string, string>

export function typeOfFile(fileName: string): string {
  const known: Record<string, string> = TYPES
  return known[path.extname(fileName).toLowerCase()] ?? 'application/octet-stream'
}
