// Drafting in a thread of its own: the same sheet, the same errors, an end at once when it is cancelled.
import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { setImmediate as nextTurn } from 'node:timers/promises'
import { pathToFileURL } from 'node:url'
import { beforeAll, describe, expect, it } from 'vitest'
import { draftAside } from '../../../server/actions/draft-aside.ts'
import { draftWords } from '../../../server/actions/draft-words.ts'
import type { ClassWords } from '../../../server/actions/draft-words.ts'
import { runCommand } from '../../helpers/run-command.ts'
import { projectRoot } from '../../helpers/source-files.ts'

const THREAD = pathToFileURL(path.join(projectRoot, '.build', 'server', 'actions', 'draft-thread.js'))
/** A megabyte without a sentence's end: half a minute of drafting. */
const DENSE = '[0:00] ' + 'goblet squat three sets of ten plank thirty seconds each side '.repeat(16_000)

const words = (text: string): ClassWords => ({
  text,
  head: {
    title: 'Chair class',
    audience: ['older-adults'],
    durationMs: 0,
    source: null,
    music: null,
    people: null,
  },
})

// the command builds what is not built yet
beforeAll(async () => expect((await runCommand(['--version'])).code).toBe(0))

describe('in a thread', () => {
  it('comes the very sheet that comes without one', async () => {
    const text = await readFile(path.join(projectRoot, 'media-samples', 'steady-and-strong.vtt'), 'utf8')
    const drafted = await draftAside(words(text), undefined, THREAD)
    expect(drafted.fresh.segments.length).toBeGreaterThan(5)
    expect(drafted).toEqual(draftWords(words(text)))
  })

  it.each([
    ['[0:30] later\n[0:10] earlier\n', 'transcript-order'],
    ['WEBVTT\n\n00:00:05.000 --> 00:00:02.000\nback\n', 'transcript-line'],
  ])('words that cannot be read are refused as without one (%j)', async (text, code) => {
    const error = await draftAside(words(text), undefined, THREAD).then(
      () => null,
      (reason: Error) => reason,
    )
    expect(error).not.toBeNull()
    expect(() => draftWords(words(text))).toThrow(error ?? '')
    expect(error).toMatchObject({ name: 'AppError', code, exitCode: 2 })
  })

  it('a dense text holds nobody up, and ends when it is cancelled', async () => {
    const stop = new AbortController()
    const drafting = draftAside(words(DENSE), stop.signal, THREAD)
    // the program goes on meanwhile, and so comes to cancel it
    for (let turn = 0; turn < 100; turn += 1) await nextTurn()
    stop.abort()
    await expect(drafting).rejects.toMatchObject({ code: 'engine-cancelled' })
  })

  it('what is cancelled before it begins does not begin', async () => {
    await expect(draftAside(words('nothing'), AbortSignal.abort(), THREAD)).rejects.toMatchObject({
      code: 'engine-cancelled',
    })
  })
})
