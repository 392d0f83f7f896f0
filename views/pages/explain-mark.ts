/** Says why a mark is there: what in the class led to it, or that a person set it. */
import type { Mark } from '../../shared/log-sheet.ts'
import { CUE_LOOKS } from './cue-looks.ts'

const RULES: Readonly<Record<string, string>> = {
  'name-announced': 'Its name is said where its teaching begins.',
  'name-after-setup': 'Its name is said after its set-up, so it begins at the set-up.',
  'told-not-named': 'It is taught here without its name; what is told fits it.',
  'unlisted-name-announced': 'A name that is not in our catalogue is said where teaching begins.',
  'class-plan': 'It stands in the plan of the class.',
  'speech-islands': 'Someone speaks here, with silence on both sides.',
  'dose-weighed': 'The likeliest of what is said for it, read from the words beside it.',
  'dose-said': 'Read from the words beside it.',
  'caution-spoken': 'Read from these words.',
}

/** In one or two sentences. */
export function explainMark({ origin, ruleId, confidence }: Mark): string {
  if (origin === 'person') return 'A person set it.'
  const sure = confidence === null ? '' : ` The draft is ${Math.round(confidence * 100)} % sure.`
  return `${reasonOf(ruleId)}${sure}`
}

function reasonOf(ruleId: string | null): string {
  if (ruleId === null) return 'The draft proposed it.'
  const kind = ruleId.startsWith('cue-') ? ruleId.slice('cue-'.length) : ''
  const look = Object.entries(CUE_LOOKS).find(([name]) => name === kind)?.[1]
  if (look) return `These words sound like ${look.name.toLowerCase()}.`
  return RULES[ruleId] ?? `The draft proposed it by its rule "${ruleId}".`
}
