/** Sets what belongs to the whole class: its source, its sections and the sound that is published. Fields without rules of their own are set in edit-sheet.ts. */
import type { EditOf } from '../../shared/edit.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import { formatClockMs } from '../../shared/time.ts'
import { byStart, refuse, setByHand } from './change-sheet.ts'
import { checkApart, checkStretch } from './check-edit.ts'

/** Sections in order of time; they may leave gaps but not overlap. @throws AppError edit-invalid */
export function setSections(sheet: LogSheet, { sections }: EditOf<'set-sections'>): LogSheet {
  sections.forEach((section) => {
    if (section.title.trim() === '') throw refuse('A section needs a title. Type one.')
    checkStretch(`The section "${section.title}"`, section, sheet.durationMs)
  })
  checkApart('The sections', sections)
  return setByHand(sheet, { sections: byStart(sections) })
}

/** Names the recording. No span may reach past its end. @throws AppError edit-invalid */
export function setSource(sheet: LogSheet, edit: EditOf<'set-source'>): LogSheet {
  const durationMs = edit.durationMs ?? edit.source?.durationMs ?? sheet.durationMs
  const past = lastMoment(sheet)
  if (durationMs < Math.min(past, sheet.durationMs)) {
    throw refuse(
      `The recording would end at ${formatClockMs(durationMs)}, and marks reach ${formatClockMs(past)}. Give the recording these marks were made on.`,
    )
  }
  return setByHand(sheet, { source: edit.source, durationMs })
}

/** Chooses the published sound. Sound recorded apart must be known to the sheet, or is made known here. @throws AppError edit-invalid */
export function setSound(sheet: LogSheet, { sound, media }: EditOf<'set-sound'>): LogSheet {
  if (media && (media.role !== 'sound' || media.id !== sound?.mediaId)) {
    throw refuse('What is told of the sound belongs to another file. Choose the sound again.')
  }
  const known = media ? [...sheet.media.filter(({ id }) => id !== media.id), media] : sheet.media
  if (sound?.mediaId != null && !known.some(({ id, role }) => id === sound.mediaId && role === 'sound')) {
    throw refuse('The sheet does not know this sound. Choose one that belongs to the class.')
  }
  const { publishedSound: _former, ...rest } = sheet
  const fields = { ...(sound && { publishedSound: sound }), ...(media && { media: known }) }
  return setByHand(rest, Object.keys(fields).length > 0 ? fields : {})
}

/** The last moment that any mark reaches. */
function lastMoment(sheet: LogSheet): number {
  const stretches = sheet.segments.flatMap((segment) => [...segment.spans, ...segment.cutOuts, ...segment.cues])
  const cautions = [...sheet.classCautions, ...sheet.segments.flatMap((segment) => segment.cautions)]
  const ends = [...stretches, ...sheet.sections].map((one) => one.endMs)
  return Math.max(0, ...ends, ...cautions.map((one) => one.atMs ?? 0))
}
