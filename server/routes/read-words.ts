/** Reads the form of the page "Add a class" into what the actions take. */
import { z } from 'zod'
import { AppError } from '../../shared/errors.ts'
import { Audience, Music, PersonShown } from '../../shared/log-sheet.ts'
import type { RecordingWords } from '../actions/add-recording.ts'

/** A field that may come once, more often, or not at all. */
const many = z
  .union([z.string(), z.array(z.string())])
  .optional()
  .transform((value) => (value === undefined ? [] : [value].flat()))
const text = z.string().optional().default('')

const WordsForm = z.object({
  title: z.string().trim().min(1).max(200),
  kindId: text,
  audience: many.pipe(z.array(Audience)),
  equipment: text,
  music: z.union([Music, z.literal('')]).default(''),
  shown: z.enum(['', 'nobody', 'others']).default(''),
  personName: many,
  personScope: many,
  personConsent: many,
  personUntil: many,
  personAge: many,
  keepAs: text,
  transcript: text,
  transcriptName: text,
})

/** @throws ZodError, AppError request-wrong */
export function readWords(body: unknown): {
  words: RecordingWords
  keepAs: string
  transcript: string
  transcriptName: string
} {
  const form = WordsForm.parse(body)
  const { keepAs, transcript, transcriptName } = form
  return {
    words: {
      title: form.title,
      kindId: form.kindId === '' ? null : form.kindId,
      audience: form.audience.length === 0 ? null : form.audience,
      equipment: form.equipment
        .split(/[,\n]/)
        .map((word) => word.trim())
        .filter((word) => word !== ''),
      music: form.music === '' ? null : form.music,
      people: form.shown === '' ? null : form.shown === 'nobody' ? [] : readPeople(form),
    },
    ...{ keepAs, transcript, transcriptName },
  }
}

function readPeople(form: z.output<typeof WordsForm>): RecordingWords['people'] {
  const people = form.personName.flatMap((name, index) => {
    if (name.trim() === '') return []
    const until = form.personUntil[index] ?? ''
    return [
      PersonShown.parse({
        name: name.trim(),
        consent: form.personConsent[index] ?? 'unknown',
        scope: form.personScope[index]?.trim() || null,
        // the whole of the day that is named
        untilUtc: until === '' ? null : Date.parse(`${until}T23:59:59.999Z`),
        under18: form.personAge[index] === 'under-18',
      }),
    ]
  })
  if (people.length > 0) return people
  throw new AppError(
    'request-wrong',
    'You said that others are in the picture. Name each of them, or say that it is the instructor only.',
  )
}
