/** The fields of a form of the class page, one by one: words, lists of words, clock times, references. */
import { z } from 'zod'
import { AppError } from '../../shared/errors.ts'
import type { LogSheet, Ref, Segment } from '../../shared/log-sheet.ts'
import { parseClock } from '../../shared/time.ts'
import type { Ms } from '../../shared/time.ts'

const Body = z.record(z.string(), z.union([z.string(), z.array(z.string())]))

export interface EditFields {
  /** Trimmed; '' = empty or absent. */
  text: (name: string) => string
  /** Every value of the name, in order. */
  all: (name: string) => string[]
  has: (name: string) => boolean
  /** Words parted by commas or lines. */
  words: (name: string) => string[]
  /** Not empty lines. */
  lines: (name: string) => string[]
  /** @throws AppError edit-invalid when it is no clock time */
  clock: (name: string) => Ms
  /** A place in a list. @throws ZodError */
  index: (name: string) => number
}

/** @throws ZodError */
export function readFields(body: unknown): EditFields {
  const fields = Body.parse(body ?? {})
  const all = (name: string): string[] => [fields[name] ?? []].flat()
  const text = (name: string): string => (all(name)[0] ?? '').trim()
  const split = (name: string, at: RegExp): string[] =>
    text(name)
      .split(at)
      .map((word) => word.trim())
      .filter((word) => word !== '')
  return {
    text,
    all,
    has: (name) => fields[name] !== undefined,
    words: (name) => split(name, /[,\n]/),
    lines: (name) => split(name, /\n/),
    clock: (name) => readClock(text(name)),
    index: (name) => z.coerce.number().int().nonnegative().parse(text(name)),
  }
}

/** @throws AppError edit-invalid */
export function readClock(text: string): Ms {
  const ms = parseClock(text)
  if (ms !== null) return ms
  throw new AppError('edit-invalid', `"${text}" is no time. Write minutes and seconds, such as 1:05 or 1:05.250.`)
}

/** "0:00 Warm-up" a line; each section ends where the next starts. @throws AppError edit-invalid */
export function readSections(lines: readonly string[], durationMs: Ms): LogSheet['sections'] {
  const starts = lines.map((line) => {
    const [, time = '', title = ''] = /^(\S+)\s+(.+)$/.exec(line) ?? []
    if (title === '') {
      throw new AppError(
        'edit-invalid',
        `"${line}" is no section. Write its start and its name, such as 4:30 Standing.`,
      )
    }
    return { title, startMs: readClock(time) }
  })
  return starts.map((one, index) => ({ ...one, endMs: starts[index + 1]?.startMs ?? durationMs }))
}

/** The name of an exercise of this class points at it; all else stays words. Former references to lessons stay. */
export function readRefs(
  lines: readonly string[],
  segment: Segment,
  field: 'easier' | 'harder',
  sheet: LogSheet,
): Ref[] {
  const fold = (name: string): string => name.toLowerCase().trim()
  const others = sheet.segments.filter(({ id, state }) => id !== segment.id && state !== 'declined')
  return lines.map((line) => {
    const former = segment[field].find((ref) => ref.text !== undefined && fold(ref.text) === fold(line))
    const other = others.find(({ exercise }) => fold(exercise.name) === fold(line))
    return former ?? (other ? { segmentId: other.id } : { text: line })
  })
}
