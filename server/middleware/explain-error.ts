/** What an error becomes for the one who asked: a status, a code of the table, a sentence. Never a stack. */
import { STATUS_CODES } from 'node:http'
import { ZodError } from 'zod'
import { AppError } from '../../shared/errors.ts'
import type { ErrorCode } from '../../shared/errors.ts'

export interface Explained {
  /** RFC 9110 (2022), section 15; 429 from RFC 6585 (2012). */
  status: number
  code: ErrorCode
  /** The words of the status, such as "Not Found". */
  title: string
  message: string
  details: readonly string[]
}

/** Codes with a status of their own. The others: 422 where the input is bad, 500 where this machine or program is. */
const STATUS: Partial<Record<ErrorCode, number>> = {
  'not-allowed': 403,
  'row-missing': 404,
  // 404, not 410: it may be brought back
  'lesson-withdrawn': 404,
  'row-exists': 409,
  'row-changed': 409,
  'sheet-conflict': 409,
  'edit-reused': 409,
  'job-lost': 409,
  'store-busy': 503,
  'disk-full': 507,
  'page-missing': 404,
  'request-wrong': 400,
  'request-host': 421,
  'request-origin': 403,
  'request-token': 403,
  'request-type': 415,
  'request-too-big': 413,
  'request-slow': 408,
  'request-outdated': 412,
  'range-outside': 416,
  'streams-too-many': 429,
}

/** Errors of express and its readers carry a status; what they say is meant for programmers. */
const OF_STATUS: Record<number, [ErrorCode, string]> = {
  400: ['request-wrong', 'The request cannot be read.'],
  404: ['page-missing', 'There is nothing at this address.'],
  408: ['request-slow', 'The request took too long to arrive. Try again.'],
  412: ['request-outdated', 'What was asked for has changed meanwhile. Load it again.'],
  413: [
    'request-too-big',
    'That is more than this address takes at once. Send less, or a file where a file is asked for.',
  ],
  415: ['request-type', 'What was sent is of a kind that this address does not read.'],
  416: ['range-outside', 'The file ends before the part that was asked for.'],
}

export function statusOf(code: ErrorCode, exitCode: 2 | 3): number {
  return STATUS[code] ?? (exitCode === 2 ? 422 : 500)
}

export function explainError(error: unknown): Explained {
  if (error instanceof AppError) {
    const { code, message, details, exitCode } = error
    return explained(statusOf(code, exitCode), code, message, details)
  }
  if (error instanceof ZodError) {
    const lines = error.issues.map((issue) => `${issue.path.join('.') || 'all of it'}: ${issue.message}`)
    return explained(400, 'request-wrong', 'Something in the request has a wrong form.', lines)
  }
  const said = OF_STATUS[statusFrom(error)]
  if (said) return explained(statusFrom(error), said[0], said[1], [])
  return explained(500, 'internal', 'A fault of this program; nothing you did. What was saved is kept.', [])
}

function explained(status: number, code: ErrorCode, message: string, details: readonly string[]): Explained {
  return { status, code, title: STATUS_CODES[status] ?? 'Error', message, details }
}

function statusFrom(error: unknown): number {
  const status = error instanceof Error && 'status' in error ? error.status : null
  return typeof status === 'number' ? status : 500
}
