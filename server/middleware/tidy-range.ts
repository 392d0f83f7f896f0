/**
 * Decides which of a request's range and condition fields express may act on. Express 5.3 answers them nearly as RFC 9110
 * (2022) asks; what it does not, is taken out or settled here.
 */

export interface RangeFields {
  range?: string | undefined
  'if-range'?: string | undefined
  'if-match'?: string | undefined
}

export interface Representation {
  bytes: number
  /** Strong, in its quotes. */
  etag: string
  /** As in Last-Modified. */
  lastModified: string
}

/** The fields as express may see them, or 'changed' where If-Match can no longer hold (412). */
export function tidyRange(
  method: string,
  fields: RangeFields,
  { bytes, etag, lastModified }: Representation,
): RangeFields | 'changed' {
  const match = keepStrong(fields['if-match'])
  if (match === '') return 'changed'
  const asked = method === 'GET' && keepsRange(fields['if-range'], etag, lastModified)
  // section 14.2: only GET has ranges; a malformed one is ignored
  return { range: asked ? tidySpecifier(fields.range, bytes) : undefined, 'if-range': undefined, 'if-match': match }
}

/**
 * Section 13.1.5: the range holds only while the file is the very same. A weak tag never says so, and a date only when it is
 * the file's own to the second.
 */
function keepsRange(ifRange: string | undefined, etag: string, lastModified: string): boolean {
  return ifRange === undefined || ifRange.trim() === etag || ifRange.trim() === lastModified
}

/** Section 13.1.1: If-Match compares strongly, so weak tags in it match nothing. Empty when nothing is left. */
function keepStrong(ifMatch: string | undefined): string | undefined {
  if (ifMatch === undefined || ifMatch.trim() === '*') return ifMatch
  return [...ifMatch.matchAll(/(W\/)?("[^"]*")/g)]
    .filter(([, weak]) => weak === undefined)
    .map(([, , tag]) => tag)
    .join(', ')
}

/** Section 14.1.1: `bytes=` in any case, then first-last, first- or -length, parted by commas. */
const SPECIFIER = /^bytes=\s*(\d+-\d*|-\d+)(\s*,\s*(\d+-\d*|-\d+))*\s*$/i
/** Section 14.2 and 17.15: many small ranges are an attack or a mistake. */
const MOST_RANGES = 8

function tidySpecifier(range: string | undefined, bytes: number): string | undefined {
  if (range === undefined || !SPECIFIER.test(range) || range.split(',').length > MOST_RANGES) return undefined
  // section 14.1.2: of a file shorter than the last bytes asked for, all is meant; express would refuse it
  const whole = (suffix: string, length: string): string => (Number(length) > bytes && bytes > 0 ? '0-' : suffix)
  return range
    .replace(/^bytes=\s*/i, '')
    .split(',')
    .map((one) => one.trim().replace(/^-(\d+)$/, whole))
    .join(',')
    .replace(/^/, 'bytes=')
}
