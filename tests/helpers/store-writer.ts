// A process of its own that works on a store until it is done or killed. Each line it prints is an acknowledgement.
// Argument: a Task as JSON. Bundled and started by store-processes.ts.
import { writeSync } from 'node:fs'
import { LOCAL_OWNER } from '../../shared/actors.ts'
import type { Edit } from '../../shared/edit.ts'
import { AppError } from '../../shared/errors.ts'
import { Cue } from '../../shared/log-sheet.ts'
import { makeIds } from '../../server/store/make-ids.ts'
import { openStore } from '../../server/store/open-store.ts'
import type { Place, Store } from '../../server/store/open-store.ts'
import { SheetConflict } from '../../server/store/rebase-edits.ts'

export interface Task {
  place: Place
  work: 'edits' | 'jobs'
  name: string
  sheetId?: string
  batches?: number
}

const say = (line: string): void => {
  writeSync(1, `${line}\n`)
}

const task = JSON.parse(process.argv[2] ?? '') as Task
const store = await openStore(task.place, { ids: makeIds(Date.now), clock: Date.now })
say('ready')
if (task.work === 'edits') await writeEdits(store, task)
else await doJobs(store, task)
await store.close()

/** Batches of one to three cues, and the title now and then, each on the version this process saw last. */
async function writeEdits({ sheets }: Store, { name, sheetId = '', batches = 0 }: Task): Promise<void> {
  let seen = (await sheets.read(sheetId)).version
  for (let number = 0; number < batches; number += 1) {
    const opIds = Array.from({ length: (number % 3) + 1 }, (_, part) => `${name}-${number}-${part}`)
    const edits = opIds.map((opId) => ({ opId, op: buildEdit(opId, number) }))
    for (let done = false; !done;) {
      try {
        seen = (await sheets.appendEdits({ sheetId, baseVersion: seen, edits, actor: LOCAL_OWNER })).version
        say(`ok ${opIds.join(' ')}`)
        done = true
      } catch (error) {
        if (!(error instanceof SheetConflict)) throw error
        say(`conflict ${error.opId ?? ''}`)
        seen = error.sheetVersion
      }
    }
  }
}

function buildEdit(id: string, number: number): Edit {
  if (number % 5 === 4) return { op: 'set-title', title: id }
  return { op: 'add-cue', segmentId: 'a', cue: Cue.parse({ id, kind: 'focus', startMs: 1000, endMs: 2000, text: id }) }
}

async function doJobs({ jobs }: Store, { name }: Task): Promise<void> {
  for (let taken = await jobs.claimJob(['cut'], name); taken; taken = await jobs.claimJob(['cut'], name)) {
    await jobs.beat(taken.claim)
    try {
      await jobs.finish(taken.claim, name)
      say(`ok ${taken.job.id}`)
    } catch (error) {
      if (!(error instanceof AppError) || error.code !== 'job-lost') throw error
    }
  }
}
