/** Sentences that stand alone with the kinds of cue that people gave them: our own, those of the corpus, and doses, which are no cues. */
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { projectRoot } from '../../server/setup/project-root.ts'
import type { CueKind } from '../../shared/log-sheet.ts'
import { ALIGNMENT, CUE_LABELS } from '../helpers/cue-labels.ts'

export interface LabelledSentence {
  text: string
  /** None = no cue. */
  kinds: readonly CueKind[]
  weight: number
}

/** A dose is no cue, but its words are those of cues, too. */
const DOSE_WEIGHT = 0.25

export function labelledSentences(): LabelledSentence[] {
  const own = ['fitted-on.txt', 'tuned-on.txt'].flatMap((file) =>
    readFixture(`cue-sentences/${file}`)
      .split('\n')
      .flatMap((line) => {
        const [labels, text] = line.split(' | ')
        if (labels === undefined || text === undefined) return []
        return [{ text, kinds: labels === '-' ? [] : (labels.split(',') as CueKind[]), weight: 1 }]
      }),
  )
  const labelled = JSON.parse(readFixture('cue-sentences.json')) as { text: string; labels: string[] }[]
  const doses = ['phrasings.json', 'phrasings-tuned-on.json'].flatMap(
    (file) => JSON.parse(readFixture(file)) as { text: string; is: boolean }[],
  )
  return [
    ...own,
    ...labelled.map(({ text, labels }) => ({ text, kinds: kindsOf(labels), weight: 1 })),
    ...doses.flatMap(({ text, is }) => (is ? [{ text, kinds: [], weight: DOSE_WEIGHT }] : [])),
  ]
}

/** Alignment with another label beside it says nothing of its own. */
function kindsOf(labels: readonly string[]): CueKind[] {
  const kinds = labels.flatMap((label) => (label === 'ALIGN' ? [] : (CUE_LABELS[label] ?? [])))
  return [...new Set(kinds.length === 0 && labels.includes('ALIGN') ? ALIGNMENT : kinds)]
}

function readFixture(file: string): string {
  return readFileSync(path.join(projectRoot(), 'tests/fixtures', file), 'utf8')
}
