/** Says which annotated exercise each teaching that was found is. */
import type { Teaching } from '../../core/draft/find-exercises.ts'
import type { Speech } from '../../core/draft/read-speech.ts'
import type { AnnotatedExercise } from './annotated-classes.ts'

/** The annotated exercise of each teaching, by the time they share. */
export function matchTeachings(
  speech: Speech,
  teachings: readonly Teaching[],
  exercises: readonly AnnotatedExercise[],
): Map<number, AnnotatedExercise> {
  const pairs = exercises.flatMap((exercise) =>
    teachings.flatMap(({ spans: [main] }, index) => {
      if (!main) return []
      const [from, to] = [speech.timeOf(main.offset) / 1000, speech.timeOf(main.end) / 1000]
      const both = Math.min(to, exercise.end) - Math.max(from, exercise.start)
      const share = both / (Math.max(to, exercise.end) - Math.min(from, exercise.start))
      return share >= LEAST_SHARE ? [{ exercise, index, share }] : []
    }),
  )
  const found = new Map<number, AnnotatedExercise>()
  for (const { exercise, index } of pairs.toSorted((a, b) => b.share - a.share))
    if (!found.has(index) && ![...found.values()].includes(exercise)) found.set(index, exercise)
  return found
}

const LEAST_SHARE = 0.3
