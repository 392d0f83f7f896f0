/** Writes an MP4 from samples that lie in other files: its head first, so that a player can start at once. */
import { open } from 'node:fs/promises'
import type { FileHandle } from 'node:fs/promises'
import { planChunks, writeMovieHead } from '../mp4/write-movie.ts'
import type { MovieTrack } from '../mp4/write-movie.ts'
import { readPacketBytes } from './read-packet-bytes.ts'

/** One sample where it lies. */
export interface SampleSource {
  file: FileHandle
  pos: number
  size: number
}

export interface TrackSource {
  track: MovieTrack
  /** In decode order, as many as the track has durations. */
  samples: readonly SampleSource[]
  /** Looks at each sample on its way and says what is written of it; all of it when absent. */
  take?: (bytes: Uint8Array, sample: number) => Uint8Array
}

/** Above this the places of samples take eight bytes. */
const LARGE_BYTES = 0xf000_0000

/** @throws what `take` throws, AppError recording-broken, and what writing throws; the file is then left unfinished. */
export async function writeMovieFile(path: string, sources: readonly TrackSource[]): Promise<void> {
  const tracks = sources.map(({ track }) => track)
  const sizes = sources.map(({ samples }) => samples.map(({ size }) => size))
  const chunks = planChunks(tracks)
  const large = sizes.flat().reduce((sum, size) => sum + size, 0) > LARGE_BYTES
  const out = await open(path, 'w')
  try {
    // the head has its length before the sizes are known for good; it is written last, in the room left for it
    let at = writeMovieHead(tracks, chunks, sizes, large).length
    for (const { track, from, to } of chunks) {
      const source = sources[track]
      const written = sizes[track]
      if (!source || !written) continue
      const parts: Uint8Array[] = []
      let sample = from
      for (const run of sameFile(source.samples.slice(from, to))) {
        for await (const { bytes } of readPacketBytes(run.file, run.samples)) {
          const taken = source.take ? source.take(bytes, sample) : bytes
          written[sample] = taken.length
          sample += 1
          parts.push(taken)
        }
      }
      at += await writeAll(out, parts, at)
    }
    await writeAll(out, [writeMovieHead(tracks, chunks, sizes, large)], 0)
  } finally {
    await out.close()
  }
}

/** Samples in a row that lie in one file. */
function sameFile(samples: readonly SampleSource[]): { file: FileHandle; samples: SampleSource[] }[] {
  const runs: { file: FileHandle; samples: SampleSource[] }[] = []
  for (const sample of samples) {
    const last = runs.at(-1)
    if (last?.file === sample.file) last.samples.push(sample)
    else runs.push({ file: sample.file, samples: [sample] })
  }
  return runs
}

/** @returns bytes written */
async function writeAll(file: FileHandle, parts: readonly Uint8Array[], at: number): Promise<number> {
  const bytes = parts.length === 1 ? parts[0] : Buffer.concat(parts)
  let done = 0
  while (bytes && done < bytes.length) {
    done += (await file.write(bytes, done, bytes.length - done, at + done)).bytesWritten
  }
  return done
}
