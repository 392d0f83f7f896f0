// What the independent package webvtt-parser says against a file of ours.
import { createRequire } from 'node:module'

interface Parser {
  parse(
    text: string,
    mode: 'metadata' | 'chapters' | 'subtitles/captions/descriptions',
  ): { errors: { message: string; line: number }[] }
}
const { WebVTTParser } = createRequire(import.meta.url)('webvtt-parser') as { WebVTTParser: new () => Parser }

/** Its errors as `line: message`; [] = none. */
export function vttErrors(text: string, kind: 'captions' | 'chapters'): string[] {
  const mode = kind === 'chapters' ? 'chapters' : 'subtitles/captions/descriptions'
  return new WebVTTParser().parse(text, mode).errors.map(({ line, message }) => `${line}: ${message}`)
}
