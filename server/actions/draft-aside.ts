/** Drafts in a thread of its own, so that pages are answered while a dense text is read. */
import { existsSync } from 'node:fs'
import { Worker } from 'node:worker_threads'
import { AppError } from '../../shared/errors.ts'
import type { ThreadAnswer } from './draft-thread.ts'
import { draftWords } from './draft-words.ts'
import type { ClassWords, DraftedWords } from './draft-words.ts'

/** Only built code has it. */
const THREAD = new URL('./draft-thread.js', import.meta.url)

/**
 * The same as draftWords. Where the program runs from its sources, as in tests, there is no script for a thread and it is
 * done here.
 * @param signal ends the thread at once
 * @throws AppError transcript-*, engine-cancelled
 */
export async function draftAside(words: ClassWords, signal?: AbortSignal, thread = THREAD): Promise<DraftedWords> {
  if (signal?.aborted) throw cancelled()
  if (!existsSync(thread)) return draftWords(words)
  const worker = new Worker(thread, { workerData: words })
  const stop = (): void => void worker.terminate()
  signal?.addEventListener('abort', stop, { once: true })
  try {
    const answer = await new Promise<ThreadAnswer>((resolve, reject) => {
      worker.once('message', resolve)
      worker.once('error', reject)
      worker.once('exit', () =>
        reject(signal?.aborted ? cancelled() : new Error('The thread that drafts ended early.')),
      )
    })
    if ('drafted' in answer) return answer.drafted
    const { code, message, details } = answer.refused
    throw new AppError(code, message, { details })
  } finally {
    signal?.removeEventListener('abort', stop)
    await worker.terminate()
  }
}

const cancelled = (): AppError => new AppError('engine-cancelled', 'Drafting was stopped. The sheet is as it was.')
