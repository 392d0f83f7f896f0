/** Reads classes as those that are new: with breaks and cues that were fitted without them. */
import { readSpeech } from '../../core/draft/read-speech.ts'
import type { Speech } from '../../core/draft/read-speech.ts'
import { isUnpunctuated } from '../../core/draft/split-speech.ts'
import type { MarkScores } from '../../core/draft/weigh-breaks.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { plain } from '../core/draft/spoken-class.ts'
import { readApartNets, readApartTables } from './apart-tables.ts'

/** A class as it was read, as written or plain. */
export interface ReadClass {
  speech: Speech
  plain: boolean
}

/** A class as written, and plain where it has marks. @param withTurns false where the net that hears turns is itself fitted */
export function readApart({ title, text }: { title: string; text: string }, withTurns = true): ReadClass[] {
  const texts = isUnpunctuated(text) ? [text] : [text, plain(text)]
  return texts.map((said, at) => {
    const transcript = parseTranscript(said)
    if (transcript.kind !== 'timed') throw new Error(`${title} has no times.`)
    const speech = readSpeech(transcript.lines, {
      breaks: breaksOf(title),
      breakNet: breakNetOf(title),
      cues: cuesOf(title),
      net: netOf(title),
      turnNet: withTurns ? turnNetOf(title) : undefined,
      tellings: tellingsOf(title),
    })
    return { speech, plain: at > 0 }
  })
}

const breaksOf = readApartTables<MarkScores>('breaks', 'first')
const tellingsOf = readApartTables<number>('tellings', 'in use')
const cuesOf = readApartTables<readonly number[]>('cues', 'in use')
const netOf = readApartNets('net')
const turnNetOf = readApartNets('turn-net')
const breakNetOf = readApartNets('break-net')
