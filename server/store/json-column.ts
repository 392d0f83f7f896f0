/** JSON columns: text in the database, a schema on the way out. */
import type { z } from 'zod'
import { AppError } from '../../shared/errors.ts'

/**
 * Reads a JSON column. @param where names the row for the message.
 * @throws AppError store-damaged
 */
export function readJson<Schema extends z.ZodType>(schema: Schema, text: string, where: string): z.output<Schema> {
  let value: unknown
  try {
    value = JSON.parse(text)
  } catch (cause) {
    throw damaged(where, [], cause)
  }
  const result = schema.safeParse(value)
  if (result.success) return result.data
  throw damaged(
    where,
    result.error.issues.map((issue) => `${issue.path.map(String).join('.') || '(top)'}: ${issue.message}`),
  )
}

/** The same for a column that may be empty. */
export function readJsonOrNull<Schema extends z.ZodType>(
  schema: Schema,
  text: string | null,
  where: string,
): z.output<Schema> | null {
  return text === null ? null : readJson(schema, text, where)
}

/** Writes a JSON column. */
export function writeJson(value: unknown): string {
  return JSON.stringify(value ?? null)
}

export function writeJsonOrNull(value: unknown): string | null {
  return value === null || value === undefined ? null : JSON.stringify(value)
}

function damaged(where: string, details: readonly string[], cause?: unknown): AppError {
  return new AppError('store-damaged', `${where} cannot be read. Restore the store from a backup.`, { details, cause })
}

/** A stop because something asked for is not there. */
export function missing(what: string): AppError {
  return new AppError('row-missing', `${what} is not in the store. Load the list again; it may have been removed.`)
}

/** A stop because the row was changed since the caller read it. */
export function changed(what: string): AppError {
  return new AppError(
    'row-changed',
    `${what} was changed by someone else meanwhile. Load it again and repeat the change.`,
  )
}
