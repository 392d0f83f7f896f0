/** Finds what edge cuts of a recording copy from: the file itself, or its picture put into an MP4 once. */
import { stat } from 'node:fs/promises'
import { buildEdgeSource } from '../../core/media/build-edge-source.ts'
import type { Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import type { OpenedRecording } from '../../core/media/engine/open-recording.ts'
import { indexFrames, probeFile } from '../../core/media/engine/probe-file.ts'
import { readMovieTracks } from '../../core/media/engine/read-movie.ts'
import { remuxPicture } from '../../core/media/engine/remux-picture.ts'
import { whyNoEdge } from '../../core/media/plan-edge-cut.ts'
import type { EdgeSource } from '../../core/media/plan-edge-cut.ts'
import type { WorkFolder } from './cut-work-folder.ts'

/** @returns a sentence when there is none. @throws AppError engine-cancelled, disk-full */
export async function openEdgeSource(
  found: Ffmpeg,
  folder: WorkFolder,
  recording: OpenedRecording,
  signal: AbortSignal | undefined,
): Promise<{ source: EdgeSource; path: string } | string> {
  const why = whyNoEdge(recording, recording.index)
  if (why !== null) return why
  const { path, index } = recording
  if (recording.probe.formatNames.includes('mov')) {
    const source = buildEdgeSource(await readMovieTracks(path, false), index.packets, index)
    return typeof source === 'string' ? source : { source, path }
  }
  const remuxed = folder.partPath('remuxed')
  await remuxPicture(found, { recording, outPath: remuxed, bytes: (await stat(path)).size, signal })
  const { video } = await probeFile(found, remuxed, signal)
  if (!video) return 'its picture cannot be put into MP4'
  const { packets } = await indexFrames(found, remuxed, { ...video, clockStartSeconds: 0 }, signal)
  const source = buildEdgeSource(await readMovieTracks(remuxed, false), packets, index)
  return typeof source === 'string' ? source : { source, path: remuxed }
}
