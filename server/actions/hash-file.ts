/** The sha256 of a file, in hexadecimal. */
import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { pipeline } from 'node:stream/promises'

export async function hashFile(file: string): Promise<string> {
  const hash = createHash('sha256')
  await pipeline(createReadStream(file, { highWaterMark: 1 << 20 }), hash)
  return hash.digest('hex')
}
