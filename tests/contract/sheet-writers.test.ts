// Two pages over HTTP and two programs on the store append to one sheet at once: every acknowledged edit is there, once.
import { expect, it } from 'vitest'
import { buildSegment, buildSheet } from '../helpers/build-sheet.ts'
import { openTestDoor } from '../helpers/http-door.ts'
import type { TestDoor } from '../helpers/http-door.ts'
import { storeWorkers } from '../helpers/store-processes.ts'

/** How long they write: a minute at full size. */
const MS = process.env.REPSLATE_SOAK ? 60_000 : 4000
/** More than a process can write in that time. */
const BATCHES = 1_000_000

const startWorker = storeWorkers()

it('nothing acknowledged is missing, and nothing is there twice', { timeout: MS + 60_000 }, async () => {
  const door = await openTestDoor()
  const { store, actor, dataFolder } = door.door
  const { id: recordingId } = await store.recordings.add({ title: 'Monday' }, actor)
  const sheet = buildSheet({ segments: [buildSegment('a', 0, 60)] })
  const { id: sheetId } = await store.sheets.add({ recordingId, sheet, actor })

  const programs = ['p', 'q'].map((name) =>
    startWorker({ place: { dataFolder }, work: 'edits', name, sheetId, batches: BATCHES }),
  )
  await Promise.all(programs.map(({ ready }) => ready))
  const untilMs = performance.now() + MS
  const pages = await Promise.all(['x', 'y'].map((name) => writeAsPage(door, recordingId, name, untilMs)))
  for (const program of programs) program.kill()
  const ended = await Promise.all(programs.map((program) => program.ended))
  expect(ended.map(({ stderr }) => stderr)).toEqual(['', ''])

  const acknowledged = [...pages.flatMap(({ written }) => written), ...ended.flatMap((one) => one.acknowledged.flat())]
  const opIds = (await store.sheets.readEdits(sheetId, 0)).map(({ opId }) => opId)
  const there = new Set(opIds)
  expect(acknowledged.filter((opId) => !there.has(opId))).toEqual([])
  expect(opIds).toHaveLength(there.size)
  // all four had their turn
  const counts = ['p-', 'q-', 'x-', 'y-'].map((start) => acknowledged.filter((opId) => opId.startsWith(start)).length)
  expect(Math.min(...counts)).toBeGreaterThan(0)
  expect(pages.map(({ refused }) => refused)).toEqual([[], []])
})

/** Adds cues and changes the use, each on the version that its last answer showed, as a page does; overtaken, it says it again. */
async function writeAsPage(
  { ask, signed }: TestDoor,
  recordingId: string,
  name: string,
  untilMs: number,
): Promise<{ written: string[]; refused: string[] }> {
  const headers = { ...(await signed()), 'content-type': 'application/json', accept: 'application/json' }
  const written: string[] = []
  const refused: string[] = []
  let baseVersion = 0
  for (let number = 0; performance.now() < untilMs; number += 1) {
    const opId = `${name}-${number}`
    const mark = { origin: 'person', state: 'accepted', confidence: null, ruleId: null }
    const cue = { id: opId, kind: 'focus', startMs: 1000, endMs: 2000, text: opId, ...mark }
    const op =
      number % 4 === 3
        ? { op: 'set-use', segmentId: 'a', use: number % 8 === 3 ? 'keep' : 'lesson' }
        : { op: 'add-cue', segmentId: 'a', cue }
    const body = JSON.stringify({ baseVersion, edits: [{ opId, op }] })
    const { status, text } = await ask(`/recordings/${recordingId}/edits?page=checks`, {
      method: 'POST',
      headers,
      body,
    })
    if (status === 200) written.push(opId)
    else if (status !== 409) refused.push(`${status} ${text.slice(0, 200)}`)
    if (status === 200 || status === 409) baseVersion = (JSON.parse(text) as { version: number }).version
  }
  return { written, refused }
}
