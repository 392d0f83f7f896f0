/**
 * Sends bytes of an open file through buffers that are used again and again. A stream of Node takes a new buffer for each
 * piece; with many readers that costs more than the reading. What counts is how often another thread is asked (measured:
 * `npm run bench -- ranges`), so pieces are large, and a buffer is held only from reading to sending.
 */
import { read } from 'node:fs'
import type { ServerResponse } from 'node:http'

const PIECE_BYTES = 512 * 1024
/** Kept for the next piece of any reader. */
const MOST_KEPT = 64

const kept: Buffer[] = []

/**
 * From `start` up to and with `end`, then ends the answer; its head must say the length. Resolves when all is sent or the
 * reader has gone, and never while the disk still reads: the file may be closed then.
 * @param file descriptor of an open file
 * @throws Error of the disk; and when the file ends early, so that no half answer looks like a whole one
 */
export function streamBytes(res: ServerResponse, file: number, start: number, end: number): Promise<void> {
  return new Promise((resolve, reject) => {
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
      const buffer = kept.pop() ?? Buffer.allocUnsafeSlow(PIECE_BYTES)
      read(file, buffer, 0, Math.min(PIECE_BYTES, end - at + 1), at, (error, bytes) => {
        isReading = false
        if (error) return reject(error)
        if (bytes === 0) return reject(new Error('The file has become shorter while it was sent.'))
        if (isGone) return resolve()
        at += bytes
        res.write(buffer.subarray(0, bytes), (failure) => {
          // bytes still on their way to a reader that left would be overwritten: that buffer is let go
          if (failure) return resolve()
          // the buffer is free again once the system has taken its bytes
          if (kept.length < MOST_KEPT) kept.push(buffer)
          next()
        })
      })
    }
    const leave = (): void => {
      isGone = true
      if (!isReading) resolve()
    }
    res.once('close', leave)
    next()
  })
}
