/** Tells a programme ("squats, rows and a plank") from the start of an exercise: names in a row are marked as listed. */
import type { Naming } from './naming.ts'
import type { Speech } from './read-speech.ts'
import { plainWords } from './split-speech.ts'

/** Marks runs of three or more exercises named within a few words of each other, and pairs before anything was taught. */
export function markLists(speech: Speech, namings: readonly Naming[]): Naming[] {
  const firstTaught =
    namings.find((naming) => naming.strength === 3 && isTaughtFrom(speech, naming))?.offset ?? Infinity
  const runs: Naming[][] = []
  for (const naming of namings) {
    const run = runs.at(-1)
    const last = run?.at(-1)
    const gap = last ? speech.wordsBefore(naming.offset) - speech.wordsBefore(last.end) : Infinity
    const goesOn =
      last &&
      gap <= LIST_GAP_WORDS &&
      (speech.unpunctuated || !isHeading(speech, last)) &&
      !isTaughtBetween(speech, last, naming)
    if (run && goesOn && !isHeading(speech, naming)) run.push(naming)
    else runs.push([naming])
  }
  return runs.flatMap((run) => {
    const different = new Set(run.map((naming) => naming.entry?.id ?? naming.name.toLowerCase())).size
    const early = (run.at(-1)?.offset ?? 0) < firstTaught
    const isList = different >= 3 || (different === 2 && early && run.every((naming) => naming.strength < 3))
    return isList ? trimList(speech, run) : run
  })
}

/** A name that is a whole sentence and is taught right behind starts anew, however near the last name is. */
function isHeading(speech: Speech, naming: Naming): boolean {
  const sentence = speech.sentences[naming.sentence]
  const rest = sentence ? speech.text.slice(naming.end, sentence.end) : ''
  return naming.strength === 3 && plainWords(rest) === '' && isTaughtFrom(speech, naming)
}

/** A sentence that teaches or ends a set stands between two names: the class is working, not told of what comes. */
function isTaughtBetween(speech: Speech, last: Naming, naming: Naming): boolean {
  return speech.sentences
    .slice(last.sentence + 1, naming.sentence)
    .some(
      ({ role, cues }) =>
        role === 'end' || (!speech.unpunctuated && cues.some(({ kind }) => kind === 'execution' || kind === 'setup')),
    )
}

const LIST_GAP_WORDS = 9

/** The last name of a list may already be the first exercise: alone in its sentence, announced, and taught right behind. */
function trimList(speech: Speech, run: readonly Naming[]): Naming[] {
  const last = run.at(-1)
  const isAlone = run.filter(({ sentence }) => sentence === last?.sentence).length === 1
  return run.map((naming) => {
    const isFirstTaught = naming === last && isAlone && naming.strength === 3 && isTaughtFrom(speech, naming)
    return { ...naming, listed: !isFirstTaught }
  })
}

/** True when set-up or movement cues follow within the next three sentences. */
function isTaughtFrom(speech: Speech, naming: Naming): boolean {
  const next = speech.sentences.slice(naming.sentence, naming.sentence + 4)
  const cues = next.flatMap((sentence) => sentence.cues).filter((cue) => cue.offset >= naming.end)
  return cues.length >= 2 && cues.some((cue) => cue.kind === 'setup' || cue.kind === 'execution')
}
