/** Kinds of class: what each always has, said once, and the page on which it is said. */
import type { Audience } from '../../shared/log-sheet.ts'
import { buildAnswers, describeMusic, describePerson } from './class-answers.ts'
import type { AnswersInput, ClassAnswers } from './class-answers.ts'
import { formatCount } from './format.ts'
import { buildLayout } from './layout.ts'
import type { Layout } from './layout.ts'
import { AUDIENCE_NAMES } from './names.ts'

export interface KindEntry extends AnswersInput {
  id: string
  title: string
  audience: readonly Audience[]
  rowVersion: number
  /** Recordings of this kind. */
  classes: number
}

export interface KindsPage {
  layout: Layout
  isEmpty: boolean
  rows: { href: string; title: string; facts: string[]; classes: string }[]
}

export interface KindPage extends ClassAnswers {
  layout: Layout
  heading: string
  action: string
  /** '' = a new kind, which cannot be taken away. */
  removeAction: string
  title: string
  rowVersion: number
}

export function buildKindsPage(kinds: readonly KindEntry[]): KindsPage {
  return {
    layout: buildLayout({ title: 'Kinds of class', kind: 'shelf', here: 'shelf' }),
    isEmpty: kinds.length === 0,
    rows: kinds.map((kind) => ({
      href: `/kinds/${kind.id}`,
      title: kind.title,
      facts: factsOf(kind),
      classes: formatCount(kind.classes, 'class', 'classes'),
    })),
  }
}

/** @param kind null = a new one */
export function buildKindPage(kind: KindEntry | null): KindPage {
  const heading = kind?.title ?? 'A new kind of class'
  return {
    layout: buildLayout({ title: heading, kind: 'shelf', here: 'shelf', scripts: ['kind'] }),
    heading,
    action: kind ? `/kinds/${kind.id}` : '/kinds',
    removeAction: kind ? `/kinds/${kind.id}/remove` : '',
    title: kind?.title ?? '',
    rowVersion: kind?.rowVersion ?? 0,
    ...buildAnswers(kind ?? { audience: null, equipment: [], music: null, people: null }),
  }
}

function factsOf({ audience, equipment, music, people }: KindEntry): string[] {
  return [
    audience.length === 0
      ? 'Audience is asked each time'
      : `For ${audience.map((one) => AUDIENCE_NAMES[one]).join(', ')}`,
    equipment.length === 0 ? 'No kit' : equipment.join(', '),
    `Music: ${describeMusic(music)}`,
    people === null
      ? 'People are asked each time'
      : people.length === 0
        ? 'The instructor only'
        : people.map(describePerson).join(', '),
  ]
}
