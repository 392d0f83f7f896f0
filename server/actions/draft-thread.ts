/** The thread that drafts: takes the words of one class, posts the drafted sheet or why there is none, and ends. */
import { parentPort, workerData } from 'node:worker_threads'
import { AppError } from '../../shared/errors.ts'
import type { ErrorCode } from '../../shared/errors.ts'
import { draftWords } from './draft-words.ts'
import type { ClassWords, DraftedWords } from './draft-words.ts'

/** An error of ours as plain data: its class does not survive the way between threads. */
export type ThreadAnswer =
  { drafted: DraftedWords } | { refused: { code: ErrorCode; message: string; details: readonly string[] } }

// any other error ends the thread, and is told there as it is
parentPort?.postMessage(answer(workerData as ClassWords))

function answer(words: ClassWords): ThreadAnswer {
  try {
    return { drafted: draftWords(words) }
  } catch (error) {
    if (!(error instanceof AppError)) throw error
    return { refused: { code: error.code, message: error.message, details: error.details } }
  }
}
