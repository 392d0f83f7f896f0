/** Prepares a transcript's text for its reader: one kind of line end, no control characters. */

/** Larger files are refused; ten hours of speech are about 0.6 MB of text. */
export const MAX_TRANSCRIPT_CHARACTERS = 20 * 1024 * 1024

/** Without byte order mark and control characters; every line ends in \n. Line numbers stay. */
export function cleanText(text: string): string {
  return (
    text
      .replace(/^\uFEFF/, '')
      .replace(/\r\n?/g, '\n')
      // Line ends of other systems inside a line, form feed and the like: a space.
      .replace(/[\v\f\u0085\u2028\u2029]/g, ' ')
      // All other control characters, NUL among them: nothing.
      .replace(/[\u0000-\u0008\u000E-\u001F\u007F-\u0084\u0086-\u009F]/g, '')
      .replace(/\p{Surrogate}/gu, '\uFFFD')
  )
}

/** True when the file was no UTF-8 text: many NUL or replacement characters near its start. */
export function isNotText(text: string): boolean {
  const start = text.slice(0, 4096)
  const strange = start.match(/[\0\uFFFD]/g)?.length ?? 0
  return strange > 8 && strange > start.length / 50
}
