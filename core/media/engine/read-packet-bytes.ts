/** Reads the bytes of packets from an open recording, neighbours in one go. */
import type { FileHandle } from 'node:fs/promises'
import { AppError } from '../../../shared/errors.ts'
import { readAt } from './read-movie.ts'

/** The most that is read at once; sound between the pictures is read along. */
const MOST_BYTES = 4_000_000

/** Where a packet lies; null is taken as the start of the file. */
interface Place {
  pos: number | null
  size: number
}

/**
 * @param packets in the order wanted.
 * @throws AppError recording-broken when the file ends before.
 */
export async function* readPacketBytes<Packet extends Place>(
  file: FileHandle,
  packets: readonly Packet[],
): AsyncGenerator<{ packet: Packet; bytes: Uint8Array }> {
  let from = 0
  while (from < packets.length) {
    let to = from
    let start = Infinity
    let end = 0
    for (; to < packets.length; to += 1) {
      const { pos, size } = packets[to] ?? { pos: 0, size: 0 }
      const [low, high] = [Math.min(start, pos ?? 0), Math.max(end, (pos ?? 0) + size)]
      if (to > from && high - low > MOST_BYTES) break
      start = low
      end = high
    }
    const bytes = await readAt(file, start, end - start)
    if (bytes.length < end - start) {
      throw new AppError('recording-broken', 'The recording ends before its last frames. Copy the whole file again.')
    }
    for (const packet of packets.slice(from, to)) {
      const at = (packet.pos ?? 0) - start
      yield { packet, bytes: bytes.subarray(at, at + packet.size) }
    }
    from = to
  }
}
