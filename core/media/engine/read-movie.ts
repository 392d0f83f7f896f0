/** Reads the head of an MP4 file: its moov box, wherever it lies. */
import { open } from 'node:fs/promises'
import type { FileHandle } from 'node:fs/promises'
import { readBoxHeader } from '../mp4/read-boxes.ts'
import { readTracks } from '../mp4/read-tracks.ts'
import type { Mp4Track } from '../mp4/read-tracks.ts'

/** A day of pictures at 60 a second needs about 100 MB. */
const MOST_BYTES = 200_000_000

/** @param withSamples also where each sample lies. @returns null when the file is no MP4 or its head is damaged. */
export async function readMovieTracks(path: string, withSamples: boolean): Promise<Mp4Track[] | null> {
  const file = await open(path)
  try {
    const moov = await readMoov(file)
    return moov && readTracks(moov, withSamples)
  } finally {
    await file.close()
  }
}

async function readMoov(file: FileHandle): Promise<Uint8Array | null> {
  const { size } = await file.stat()
  let at = 0
  while (at < size) {
    const header = await readAt(file, at, 16)
    const box = readBoxHeader(header, 0, size - at)
    if (!box) return null
    if (box.type === 'moov') return box.end > MOST_BYTES ? null : readAt(file, at, box.end)
    at += box.end
  }
  return null
}

/** Fewer bytes than asked for only at the end of the file. */
export async function readAt(file: FileHandle, at: number, length: number): Promise<Uint8Array> {
  const bytes = new Uint8Array(length)
  let done = 0
  while (done < length) {
    const { bytesRead } = await file.read(bytes, done, length - done, at + done)
    if (bytesRead === 0) break
    done += bytesRead
  }
  return bytes.subarray(0, done)
}
