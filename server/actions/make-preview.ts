/** Makes a preview of a film that browsers cannot show; it is played from its start while it grows. */
import { mkdir, rename } from 'node:fs/promises'
import path from 'node:path'
import { openRecording } from '../../core/media/engine/open-recording.ts'
import { makePreview } from '../../core/media/engine/run-analysis.ts'
import { mustBeAllowed, PROGRAM } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import { previewKey } from '../storage/media-keys.ts'
import type { AnalyseInput, AnalyseNeeds } from './analyse-recording.ts'
import { readFacts } from './media-facts.ts'
import type { MediaFacts } from './media-facts.ts'
import { reportSteps } from './report-steps.ts'

/** @throws AppError engine-*, ffmpeg-missing, disk-full, row-missing */
export async function makeRecordingPreview(studio: AnalyseNeeds, input: AnalyseInput): Promise<void> {
  const { recordingId, mediaId, signal } = input
  mustBeAllowed(PROGRAM, 'job.run', { type: 'media', id: mediaId })
  if (!studio.ffmpeg) throw new AppError('ffmpeg-missing', 'No usable ffmpeg was found. Run "doctor", then try again.')
  const { storageKey } = await studio.store.media.read(mediaId)
  if (storageKey === null) throw new AppError('row-missing', 'The file has not arrived yet.')
  const whole = studio.storage.path(previewKey(recordingId, mediaId, true))
  if (await studio.storage.head(previewKey(recordingId, mediaId, true))) return say(studio, mediaId, 'whole')
  const step = reportSteps({ 'Making a preview that browsers can show': 1 }, input.onProgress, studio.clock)
  const growing = studio.storage.path(previewKey(recordingId, mediaId, false))
  await mkdir(path.dirname(growing), { recursive: true, mode: 0o700 })
  const opened = await openRecording(studio.ffmpeg, studio.storage.path(storageKey), { silent: true, signal })
  let isSaid = false
  const onShare = (share: number): void => {
    step('Making a preview that browsers can show', share)
    if (isSaid || share === 0) return
    isSaid = true
    void say(studio, mediaId, 'growing').catch(() => (isSaid = false))
  }
  try {
    await makePreview(studio.ffmpeg, opened, growing, { signal, onShare })
  } catch (error) {
    await say(studio, mediaId, 'none')
    throw error
  }
  await rename(growing, whole)
  await say(studio, mediaId, 'whole')
}

/** Read anew each time: the analysis writes its own pieces meanwhile. */
async function say(studio: AnalyseNeeds, mediaId: string, preview: MediaFacts['preview']): Promise<void> {
  await studio.store.transaction(async ({ media }) => {
    const facts = readFacts(await media.read(mediaId))
    if (facts && facts.preview !== preview) await media.change(mediaId, { facts: { ...facts, preview } }, PROGRAM)
  })
}
