/** Tells whether an MP4 announces more than it holds: a box longer than what holds it, or a table longer than its box. */
import { open } from 'node:fs/promises'
import type { FileHandle } from 'node:fs/promises'
import { readBoxHeader, readU32 } from '../mp4/read-boxes.ts'
import { readAt } from './read-movie.ts'

/** Boxes that hold boxes. ISO/IEC 14496-12, table 1 (from memory). */
const HOLDERS: readonly string[] = ['moov', 'trak', 'mdia', 'minf', 'stbl', 'mvex', 'moof', 'traf']
/** Bytes of one entry, for tables that begin with their count. ISO/IEC 14496-12, sections 8.6.1, 8.6.2 and 8.7.4 to 8.7.5 (from memory). */
const TABLES: Partial<Record<string, number>> = { stts: 8, ctts: 8, stss: 4, stsc: 12, stco: 4, co64: 8 }
/** A film has some hundreds, with many fragments some ten thousand; more are not looked at. */
const MOST_BOXES = 100_000

/** Only heads of boxes are read, so nothing that is announced is ever held in memory. */
export async function announcesTooMuch(path: string): Promise<boolean> {
  const file = await open(path)
  try {
    const { size } = await file.stat()
    const waiting = [{ from: 0, to: size }]
    let seen = 0
    for (let next = waiting.pop(); next && seen < MOST_BOXES; next = waiting.pop()) {
      for (let at = next.from; at + 8 <= next.to && seen < MOST_BOXES; seen += 1) {
        const box = readBoxHeader(await readAt(file, at, 16), 0, next.to - at)
        if (!box || (await tableBytes(file, at + box.body, box.type)) > box.end - box.body) return true
        if (HOLDERS.includes(box.type)) waiting.push({ from: at + box.body, to: at + box.end })
        at += box.end
      }
    }
    return false
  } finally {
    await file.close()
  }
}

/** What the table says that it needs behind the head of its box; 0 for any other box. */
async function tableBytes(file: FileHandle, body: number, type: string): Promise<number> {
  const entryBytes = TABLES[type]
  if (entryBytes === undefined && type !== 'stsz') return 0
  const head = await readAt(file, body, 12)
  if (entryBytes !== undefined) return 8 + readU32(head, 4) * entryBytes
  // stsz: one size for all samples, or a list of them
  return 12 + (readU32(head, 4) === 0 ? readU32(head, 8) * 4 : 0)
}
