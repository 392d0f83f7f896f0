/** Divides the class into sections between its longer breaks, named after what they hold. */
import type { LogSheet } from '../../shared/log-sheet.ts'
import type { Ms, Stretch } from '../../shared/time.ts'

/** Exercises further apart than this stand in different sections. */
const BREAK_MS = 15_000
/** Shorter sections are joined with the next. */
const LEAST_MS = 30_000

/** Sections that cover the class without gaps. @param taught name and main stretch of each exercise, in order */
export function nameSections(taught: readonly ({ name: string } & Stretch)[], durationMs: Ms): LogSheet['sections'] {
  const first = taught[0]
  const last = taught.at(-1)
  if (!first || !last || durationMs <= 0) return []
  const groups: { names: string[]; startMs: Ms; endMs: Ms }[] = []
  for (const exercise of taught) {
    const group = groups.at(-1)
    const isNear = group && (exercise.startMs - group.endMs < BREAK_MS || group.endMs - group.startMs < LEAST_MS)
    if (group && isNear) {
      group.names.push(exercise.name)
      group.endMs = Math.max(group.endMs, exercise.endMs)
    } else groups.push({ names: [exercise.name], startMs: exercise.startMs, endMs: exercise.endMs })
  }
  const sections = groups.map(({ names, startMs }, index) => ({
    title: titleOf(names),
    startMs,
    endMs: groups[index + 1]?.startMs ?? Math.max(groups[index]?.endMs ?? startMs, Math.min(last.endMs, durationMs)),
  }))
  const end = sections.at(-1)?.endMs ?? 0
  return [
    ...(first.startMs > 0 ? [{ title: 'Welcome', startMs: 0, endMs: first.startMs }] : []),
    ...sections,
    ...(durationMs > end ? [{ title: 'Finish', startMs: end, endMs: durationMs }] : []),
  ]
}

function titleOf(names: readonly string[]): string {
  const [first = '', ...rest] = names
  const last = rest.at(-1)
  return last === undefined ? first : `${first} to ${last.toLowerCase()}`
}
