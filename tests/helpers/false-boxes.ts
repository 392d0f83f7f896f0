// MP4 files that lie: a box or a table of a real one announces more than there is.

/** The same film, with another number of entries announced by the first table of that type. */
export function withTable(film: Buffer, type: 'stts' | 'stsc' | 'stco' | 'stsz', count: number): Buffer {
  const bytes = Buffer.from(film)
  // behind the type: version and flags, then the count; stsz has a size for all before it
  bytes.writeUInt32BE(count, bytes.indexOf(type) + (type === 'stsz' ? 12 : 8))
  return bytes
}

/** The same film, with another length announced by the first box of that type. */
export function withLength(film: Buffer, type: string, length: number): Buffer {
  const bytes = Buffer.from(film)
  bytes.writeUInt32BE(length, bytes.indexOf(type) - 4)
  return bytes
}
