/** What is measured once of a recording for cutting it, and kept in the work folder: its loudness, and the pauses of the speech. */
import { readFile } from 'node:fs/promises'
import { z } from 'zod'
import type { Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { measureLoudness } from '../../core/media/engine/measure-loudness.ts'
import type { OpenedRecording } from '../../core/media/engine/open-recording.ts'
import { measureSound } from '../../core/media/engine/run-analysis.ts'
import { findSpeech } from '../../core/media/find-speech.ts'
import type { MeasuredLoudness } from '../../core/media/read-loudness.ts'
import type { Stretch } from '../../shared/time.ts'
import type { CutReporter } from './cut-progress.ts'
import type { WorkFolder } from './cut-work-folder.ts'

export interface FactDesk {
  found: Ffmpeg
  folder: WorkFolder
  recording: OpenedRecording
  sha256: string
  signal: AbortSignal | undefined
}

const Measured = z.object({ integratedLufs: z.number().nullable(), truePeakDbtp: z.number().nullable() })

/** Measured once for a recording; the numbers are kept in the work folder. */
export async function loudnessOf(
  { found, folder, recording, sha256, signal }: FactDesk,
  report: CutReporter,
): Promise<MeasuredLoudness | null> {
  const { audio, path, durationMs } = recording
  if (!audio) return null
  const factPath = folder.factPath(sha256, `loudness-${audio.index}`)
  const known = await readFile(factPath, 'utf8').then(parseMeasured, () => null)
  if (known) return known
  const onProgress = ({ percent }: { percent: number }): void => report.step('loudness', percent)
  const measured = await measureLoudness(found, { path, audio, durationMs, onProgress, signal })
  await folder.keepFact(factPath, JSON.stringify(measured))
  return measured
}

const Pauses = z.array(z.object({ startMs: z.number(), endMs: z.number() }))

/** Found once for a recording. Where no speech is found, its pauses say nothing. */
export async function pausesOf({ found, folder, recording, sha256, signal }: FactDesk): Promise<Stretch[]> {
  if (!recording.audio) return []
  const factPath = folder.factPath(sha256, `pauses-${recording.audio.index}`)
  const known = await readFile(factPath, 'utf8').then(
    (text) => Pauses.safeParse(JSON.parse(text)).data,
    () => undefined,
  )
  if (known) return known
  const measured = await measureSound(found, { ...recording, audio: recording.audio }, { signal })
  const { islands, pauses } = findSpeech(measured.levels, recording.durationMs)
  const told = islands.length > 0 ? pauses : []
  await folder.keepFact(factPath, JSON.stringify(told))
  return told
}

function parseMeasured(text: string): MeasuredLoudness | null {
  try {
    return Measured.parse(JSON.parse(text))
  } catch {
    return null
  }
}
