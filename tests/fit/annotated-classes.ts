/** The annotated classes that weights are fitted on (form: tests/fixtures/corpus/README.md), without their decoys and sections. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { projectRoot } from '../../server/setup/project-root.ts'
import type { CueKind } from '../../shared/log-sheet.ts'

type Amount = number | [number, number] | null

/** The dose as annotated: null = nothing said of it. */
export interface AnnotatedDose {
  sets: Amount
  reps: Amount | 'max'
  seconds: Amount
  distanceM: Amount
  holdSeconds: Amount
  restSeconds: Amount
  perSide: boolean
  scheme: 'straight' | 'circuit' | 'superset' | 'interval' | 'emom' | 'amrap' | 'ladder' | 'continuous'
  /** Names of the exercises done with it. */
  groupWith: string[]
}

/** Times in seconds, as in the files. */
export interface AnnotatedExercise {
  name: string
  aliases: string[]
  start: number
  end: number
  alsoAt: [number, number][]
  equipment: string[]
  position: string
  prescription: (AnnotatedDose & { evidence: string }) | null
  cues: { type: CueKind; at: number; evidence: string }[]
  requiredCautions: { reason: string; spoken: boolean }[]
}

export interface AnnotatedClass {
  title: string
  /** Of the corpus, or written for fitting. */
  group: 'corpus' | 'own'
  text: string
  /** Seconds. */
  duration: number
  exercises: AnnotatedExercise[]
}

/** Where the files of an annotated class lie. */
export function classFolderOf(title: string): string {
  const folders = (['dev', 'fit', 'more'] as const).map((folder) =>
    path.join(projectRoot(), 'tests/fixtures/corpus', folder, title),
  )
  return folders.find((folder) => existsSync(folder)) ?? ''
}

/** Of the corpus, written for fitting, and written later. */
export type ClassFolder = 'dev' | 'fit' | 'more'

/** Those of the corpus, and those written for fitting. @param folders "more" came later: all but breaks and starts are fitted on it, too */
export function annotatedClasses(folders: readonly ClassFolder[] = ['dev', 'fit']): AnnotatedClass[] {
  return folders.flatMap((folder) => {
    const root = path.join(projectRoot(), 'tests/fixtures/corpus', folder)
    const names = readdirSync(root, { withFileTypes: true }).filter((entry) => entry.isDirectory())
    return names.map(({ name }) => {
      const { duration, exercises } = JSON.parse(readFileSync(path.join(root, name, 'gold.json'), 'utf8')) as Pick<
        AnnotatedClass,
        'duration' | 'exercises'
      >
      const text = readFileSync(path.join(root, name, 'transcript.txt'), 'utf8').trimEnd()
      return {
        title: name,
        group: folder === 'dev' ? ('corpus' as const) : ('own' as const),
        text,
        duration,
        exercises,
      }
    })
  })
}
