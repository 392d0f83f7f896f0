/** Hashes files and texts: SHA-256 in hex. */
import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { AppError } from '../../../shared/errors.ts'

/** @throws AppError engine-cancelled, file-missing. */
export async function hashFile(
  path: string,
  options: { signal?: AbortSignal | undefined; onBytes?: (bytes: number) => void } = {},
): Promise<string> {
  const hash = createHash('sha256')
  let bytes = 0
  try {
    const stream = createReadStream(path, {
      highWaterMark: 1 << 20,
      ...(options.signal ? { signal: options.signal } : {}),
    })
    for await (const chunk of stream as AsyncIterable<Buffer>) {
      hash.update(chunk)
      bytes += chunk.length
      options.onBytes?.(bytes)
    }
  } catch (cause) {
    if (options.signal?.aborted)
      throw new AppError('engine-cancelled', 'Reading the recording was cancelled.', { cause })
    throw new AppError('file-missing', `"${path}" cannot be read to its end. Check the disk.`, { cause })
  }
  return hash.digest('hex')
}

export function hashText(text: string): string {
  return createHash('sha256').update(text, 'utf8').digest('hex')
}

export function hashBytes(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex')
}
