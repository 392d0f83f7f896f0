/** Reads and writes the log sheet as JSON text. */
import { AppError } from './errors.ts'
import { LOG_SHEET_FORMAT, LOG_SHEET_VERSION, LogSheet } from './log-sheet.ts'

/**
 * Reads a log sheet from JSON text. Fields it does not know are kept.
 * @throws AppError sheet-not-json, sheet-not-a-sheet, sheet-newer, sheet-field (details name each field).
 */
export function readLogSheet(text: string): LogSheet {
  return parseLogSheet(parseJson(text))
}

/** The same from a parsed value. */
export function parseLogSheet(value: unknown): LogSheet {
  if (typeof value !== 'object' || value === null || !('format' in value) || value.format !== LOG_SHEET_FORMAT) {
    throw new AppError(
      'sheet-not-a-sheet',
      `This is not a log sheet: it needs "format": "${LOG_SHEET_FORMAT}". Give the file that "repslate draft" printed.`,
    )
  }
  const version = 'version' in value ? value.version : undefined
  if (typeof version === 'number' && version > LOG_SHEET_VERSION) {
    throw new AppError(
      'sheet-newer',
      `This log sheet is of version ${version}; this program reads up to version ${LOG_SHEET_VERSION}. Update Repslate, then try again. Nothing was changed.`,
    )
  }
  const result = LogSheet.safeParse(value)
  if (!result.success) {
    const details = result.error.issues.map(
      (issue) => `${issue.path.map(String).join('.') || '(top)'}: ${issue.message}`,
    )
    throw new AppError(
      'sheet-field',
      `The log sheet has ${details.length === 1 ? 'a wrong field' : `${details.length} wrong fields`}. Correct what is named below.`,
      { details },
    )
  }
  checkIds(result.data)
  return result.data
}

/** Writes a log sheet: two-space JSON and a line end. */
export function writeLogSheet(sheet: LogSheet): string {
  return `${JSON.stringify(sheet, null, 2)}\n`
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (cause) {
    throw new AppError(
      'sheet-not-json',
      `The log sheet is not JSON: ${(cause as Error).message}. Give the file that "repslate draft" printed.`,
      { cause },
    )
  }
}

/** Edits find segments and cues by id, so each segment's and, within a segment, each cue's must be its own. */
function checkIds(sheet: LogSheet): void {
  const details = [
    ...twice(sheet.segments).map((at) => `segments.${at}.id: another segment has the id "${sheet.segments[at]?.id}"`),
    ...sheet.segments.flatMap(({ cues }, index) =>
      twice(cues).map((at) => `segments.${index}.cues.${at}.id: another cue has the id "${cues[at]?.id}"`),
    ),
  ]
  if (details.length === 0) return
  throw new AppError(
    'sheet-field',
    'Some ids of the log sheet are used twice. Give each segment and each cue named below one of its own.',
    { details },
  )
}

/** Where in the list an id stands that was there before. */
function twice(list: readonly { id: string }[]): number[] {
  const seen = new Set<string>()
  return list.flatMap(({ id }, at) => {
    if (seen.has(id)) return [at]
    seen.add(id)
    return []
  })
}
