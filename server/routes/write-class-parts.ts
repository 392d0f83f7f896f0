/** Writes the parts of the class page and of the checks page that change with every edit, each as HTML under its name. */
import type { Response } from 'express'
import { buildChecksParts } from '../../views/pages/checks.ts'
import { buildClassParts } from '../../views/pages/class.ts'
import type { ClassInput } from '../../views/pages/class.ts'
import { checkRecording } from '../actions/check-recording.ts'
import type { CheckedSheet } from '../actions/check-recording.ts'
import { showFilm } from '../actions/show-class.ts'
import type { ShownClass } from '../actions/show-class.ts'
import { writePage } from '../render.ts'
import type { Studio } from '../studio.ts'
import type { WorkInput } from '../../views/pages/class-input.ts'
import { nameChanges } from '../../views/pages/edit-names.ts'
import { CLASS_WORDS } from './class-words.ts'

/** Which page is looked at, and which exercise is open on it. */
export interface Looking {
  page: 'class' | 'checks'
  /** '' = the page's own choice. */
  segment: string
}

export interface WrittenParts {
  sheetId: string
  version: number
  /** By the name that their place on the page carries as `data-part`. */
  parts: Record<string, string>
  /** What was changed since the version that a page has, in words; '' = nothing, or it has none. */
  changed: string
}

export interface Asked extends Looking {
  /** The version that the page shows; absent = none. */
  have?: number
}

const CLASS_PARTS = ['head', 'list', 'segment', 'plan', 'about'] as const

/** null = nothing is drafted yet. @throws AppError row-missing, not-allowed */
export async function writeParts(
  studio: Studio,
  res: Response,
  recordingId: string,
  { have = -1, ...looking }: Asked,
): Promise<WrittenParts | null> {
  const work = await checkRecording(studio, recordingId)
  if (!work) return null
  const { sheetId, version, sheet } = work
  const others = have < 0 ? [] : await studio.store.sheets.readEdits(sheetId, have)
  const changed = nameChanges(
    others.map(({ op }) => op),
    sheet,
  )
  if (looking.page === 'checks') {
    const parts = buildChecksParts({ recordingId, words: CLASS_WORDS }, workInput(work))
    return { sheetId, version, changed, parts: { checks: writePage(res, 'parts/checks', parts) } }
  }
  const shown = await showFilm(studio, recordingId)
  const parts = buildClassParts(partsInput(shown, looking), workInput(work))
  const written = CLASS_PARTS.map((name) => [name, writePage(res, `parts/class-${name}`, parts)])
  return { sheetId, version, changed, parts: Object.fromEntries(written) as Record<string, string> }
}

export function classInput({ transcript, isTyped, ...shown }: ShownClass, looking: Looking): Omit<ClassInput, 'work'> {
  return { ...partsInput(shown, looking), lines: transcript?.lines ?? [], isTyped }
}

function partsInput(
  { recording, film }: Pick<ShownClass, 'recording' | 'film'>,
  { segment }: Looking,
): Omit<ClassInput, 'work' | 'lines' | 'isTyped'> {
  const { id, title, durationMs } = recording
  return {
    ...{ recordingId: id, title, durationMs, film, words: CLASS_WORDS },
    openId: segment === '' ? null : segment,
  }
}

export function workInput({ summary, ...work }: CheckedSheet): WorkInput {
  return { ...work, covered: summary.text }
}
