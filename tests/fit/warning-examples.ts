/** The sentences of the annotated classes with the hazards that they warn of, for fitting. */
import { existsSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { HAZARD_SLUGS } from '../../core/cautions/hazard-slugs.ts'
import type { HazardSlug } from '../../core/cautions/hazard-slugs.ts'
import { readSpeech } from '../../core/draft/read-speech.ts'
import type { Speech } from '../../core/draft/read-speech.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { annotatedClasses, classFolderOf } from './annotated-classes.ts'
import type { AnnotatedClass } from './annotated-classes.ts'

export interface WarnedSentence {
  title: string
  text: string
  hazards: ReadonlySet<HazardSlug>
  /** Index of the exercise it is said in; -1 = in none. */
  exercise: number
}

/** Words that satisfy a required caution; seconds where they are said. */
interface Evidence {
  reason: string
  evidence: string
  at?: number
}

/** The sentences of all classes whose annotation names the words that warn. */
export function warnedSentences(
  classes: readonly AnnotatedClass[] = annotatedClasses(['dev', 'fit', 'more']),
): WarnedSentence[] {
  return classes.flatMap((one) => {
    const told = evidenceOf(one.title)
    if (told.length === 0) return []
    const transcript = parseTranscript(one.text, { durationMs: one.duration * 1000 })
    if (transcript.kind !== 'timed') throw new Error(`${one.title} has no times.`)
    const speech = readSpeech(transcript.lines)
    const places = told.flatMap((words) => placeOf(speech, words))
    return speech.sentences.map(({ offset, end }): WarnedSentence => {
      const least = Math.min(LEAST_SHARED, (end - offset) * SHARE)
      const own = places.filter((place) => Math.min(place.end, end) - Math.max(place.offset, offset) > least)
      const seconds = speech.timeOf(offset) / 1000
      const exercise = one.exercises.findIndex((taught) =>
        [[taught.start, taught.end] as const, ...taught.alsoAt].some(
          ([from, to]) => seconds > from - 0.3 && seconds < to,
        ),
      )
      return {
        title: one.title,
        text: speech.text.slice(offset, end),
        hazards: new Set(own.map((place) => place.hazard)),
        exercise,
      }
    })
  })
}

/** A sentence is told where so many of its characters are, or so much of it. */
const LEAST_SHARED = 12
const SHARE = 0.6
/** Seconds; the same words said elsewhere are another telling. */
const NEAR = 25

function placeOf(speech: Speech, { reason, evidence, at }: Evidence) {
  const hazard = HAZARD_SLUGS.find((slug) => slug === reason)
  if (hazard === undefined || evidence === '') return []
  const found: { offset: number; far: number }[] = []
  for (let offset = speech.text.indexOf(evidence); offset >= 0; offset = speech.text.indexOf(evidence, offset + 1))
    found.push({ offset, far: at === undefined ? 0 : Math.abs(speech.timeOf(offset) / 1000 - at) })
  const [best] = found.sort((one, other) => one.far - other.far)
  return best && best.far < NEAR ? [{ hazard, offset: best.offset, end: best.offset + evidence.length }] : []
}

/** Some annotations list the words, others have them by exercise and hazard; the oldest have none. */
function evidenceOf(title: string): Evidence[] {
  const file = path.join(classFolderOf(title), 'extra.json')
  if (!existsSync(file)) return []
  const { cautionEvidence = [] } = JSON.parse(readFileSync(file, 'utf8')) as {
    cautionEvidence?: Evidence[] | Record<string, Record<string, Omit<Evidence, 'reason'>>>
  }
  const listed = Array.isArray(cautionEvidence)
    ? cautionEvidence
    : Object.values(cautionEvidence).flatMap((by) =>
        Object.entries(by).map(([reason, words]) => ({ ...words, reason })),
      )
  return listed.filter(({ evidence }) => typeof evidence === 'string')
}
