/**
 * Sends bytes of a file through buffers that are used again and again. A stream of Node takes a new buffer for each piece;
 * with many readers that costs more than the reading (measured: `npm run bench -- ranges`).
 */
import { close, open, read } from 'node:fs'
import type { ServerResponse } from 'node:http'
import { promisify } from 'node:util'

const PIECE_BYTES = 128 * 1024
/** Kept for the next reader; each reader under way holds one. */
const MOST_KEPT = 64

const kept: Buffer[] = []
const openFile = promisify(open)

/**
 * From `start` up to and with `end`, then ends the answer; its head must say the length. Resolves when all is sent or the
 * reader has gone.
 * @throws Error of the disk; and when the file ends early, so that no half answer looks like a whole one
 */
export async function streamBytes(res: ServerResponse, file: string, start: number, end: number): Promise<void> {
  const handle = await openFile(file, 'r')
  const buffer = kept.pop() ?? Buffer.allocUnsafeSlow(PIECE_BYTES)
  try {
    await new Promise<void>((resolve, reject) => {
      let at = start
      let isReading = false
      let isGone = false
      const next = (): void => {
        if (isGone) return resolve()
        if (at > end) {
          res.off('close', leave)
          res.end(resolve)
          return
        }
        isReading = true
        read(handle, buffer, 0, Math.min(PIECE_BYTES, end - at + 1), at, (error, bytes) => {
          isReading = false
          if (error) return reject(error)
          if (bytes === 0) return reject(new Error(`${file} has become shorter while it was sent.`))
          if (isGone) return resolve()
          at += bytes
          // the buffer is free again once the system has taken its bytes
          res.write(buffer.subarray(0, bytes), (failure) => (failure ? resolve() : next()))
        })
      }
      // while the disk writes into the buffer it may not be given to another reader
      const leave = (): void => {
        isGone = true
        if (!isReading) resolve()
      }
      res.once('close', leave)
      next()
    })
  } finally {
    close(handle)
    // bytes still on their way to a reader that left would be overwritten: that buffer is let go
    if (!res.destroyed && kept.length < MOST_KEPT) kept.push(buffer)
  }
}
