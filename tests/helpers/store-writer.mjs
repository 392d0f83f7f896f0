// A process of its own that works on a store until it is done or killed. Each line it prints is an acknowledgement.
// Argument: JSON { place, work: 'edits' | 'jobs', name, sheetId, batches }. Needs the built server (see build-server.ts).
import { writeSync } from 'node:fs'
import { openStore } from '../../.build/server/store/open-store.js'
import { LOCAL_OWNER } from '../../.build/shared/actors.js'
import { makeIds } from '../../.build/server/store/make-ids.js'

const { place, work, name, sheetId, batches } = JSON.parse(process.argv[2])
const store = await openStore(place, { ids: makeIds(Date.now), clock: Date.now })
const say = (line) => writeSync(1, `${line}\n`)

say('ready')
if (work === 'edits') await writeEdits()
else await doJobs()
await store.close()

/** Batches of one to three cues, and the title now and then, each on the version this process saw last. */
async function writeEdits() {
  let seen = (await store.sheets.read(sheetId)).version
  for (let number = 0; number < batches; number += 1) {
    const opIds = Array.from({ length: (number % 3) + 1 }, (_, part) => `${name}-${number}-${part}`)
    const edits = opIds.map((opId) => ({
      opId,
      op: number % 5 === 4 ? { op: 'set-title', title: opId } : addCue(opId),
    }))
    for (let done = false; !done;) {
      try {
        const answer = await store.sheets.appendEdits({ sheetId, baseVersion: seen, edits, actor: LOCAL_OWNER })
        seen = answer.version
        say(`ok ${opIds.join(' ')}`)
        done = true
      } catch (error) {
        if (error.code !== 'sheet-conflict') throw error
        say(`conflict ${error.opId}`)
        seen = (await store.sheets.read(sheetId)).version
      }
    }
  }
}

function addCue(id) {
  const mark = { origin: 'person', state: 'accepted', confidence: null, ruleId: null }
  return { op: 'add-cue', segmentId: 'a', cue: { ...mark, id, kind: 'focus', startMs: 1000, endMs: 2000, text: id } }
}

async function doJobs() {
  for (;;) {
    const taken = await store.jobs.claimJob(['cut'], name)
    if (!taken) return
    await store.jobs.beat(taken.claim)
    await store.jobs.finish(taken.claim, name)
    say(`ok ${taken.job.id}`)
  }
}
