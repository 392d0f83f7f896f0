// Saved stores: fills a store with one of everything, writes a SQLite store down as SQL, and reads everything back.
import path from 'node:path'
import Database from 'libsql'
import { z } from 'zod'
import { Lesson } from '../../shared/lesson.ts'
import type { Store } from '../../server/store/open-store.ts'
import { STORE_FILE } from '../../server/store/open-sqlite.ts'
import { buildCaution, buildCue, buildSegment, buildSheet } from './build-sheet.ts'
import { ANN } from './store-engines.ts'

/** Invented data, one row of every kind at least. */
export async function fillStore(store: Store): Promise<void> {
  const people = [{ name: 'Guest', consent: 'given' as const, scope: null, untilUtc: null, under18: false }]
  const kind = await store.kinds.add(
    { title: "Ann's chair class", audience: ['older-adults'], equipment: ['chair'], music: 'own', people },
    ANN,
  )
  const recording = await store.recordings.add({ title: 'Monday', kindId: kind.id, state: 'ready' }, ANN)
  await store.recordings.add({ title: 'Übung 練習', language: 'de' }, ANN)
  const file = { role: 'part' as const, fileName: 'one.mp4', bytes: 5_000_000_000, sha256: 'ab'.repeat(32) }
  await store.media.add(recording.id, { ...file, durationMs: 600_000, storageKey: 'k', facts: { streams: 2 } }, ANN)
  await store.media.add(recording.id, { role: 'camera', fileName: 'side.mp4', startMs: -1500, driftPpm: -12.25 }, ANN)
  const text = { origin: 'pasted' as const, form: 'stamped-text', language: 'en', fileName: null }
  await store.transcripts.add(recording.id, { ...text, text: '0:05 Lift the heels.\n0:10 And lower.' }, ANN)
  const segment = buildSegment('a', 0, 60, { cues: [buildCue('a-1', 5)], cautions: [buildCaution('fall-risk')] })
  const sheet = buildSheet({ title: 'Monday', segments: [segment], 'x-own': 'kept' })
  const { id: sheetId } = await store.sheets.add({ recordingId: recording.id, sheet, actor: ANN })
  for (let number = 1; number <= 26; number += 1) {
    const op = { op: 'set-title' as const, title: `Monday ${number}` }
    const edits = [{ opId: `op-${number}`, op }]
    await store.sheets.appendEdits({ sheetId, baseVersion: number - 1, edits, actor: ANN })
  }
  await store.sheets.undoEdit({ sheetId, opId: 'op-26', undoId: 'undo-26', actor: ANN })
  await store.jobs.enqueue({ kind: 'draft', input: { sheetId }, key: 'draft-1', recordingId: recording.id }, ANN)
  const taken = await store.jobs.claimJob(['draft'], 'w1')
  if (taken) await store.jobs.beat(taken.claim, { part: 0.5, step: 'reading', leftMs: 1000 })
  await store.jobs.enqueue({ kind: 'cut', input: null }, ANN)
  const lesson = await store.lessons.add('Heel raise', ANN)
  const version = { recordingId: recording.id, segmentId: 'a', sheetVersion: 27, clipSha256: 'cd'.repeat(32) }
  await store.lessons.publish(lesson.id, { ...version, lesson: buildLesson('Heel raise') }, ANN)
  await store.lessons.withdraw(lesson.id, 'as an example', ANN)
  await store.settings.write('studio-name', 'Studio', ANN)
}

/** A lesson of the given name; the store gives it its address. */
export function buildLesson(name: string): Lesson {
  return Lesson.parse({
    format: 'repslate-lesson',
    version: 1,
    slug: 'given-by-the-store',
    name,
    alsoCalled: [],
    audience: ['general'],
    equipment: [],
    cautions: [],
    takeCare: [],
    movement: [],
    easier: [],
    harder: [],
    notice: 'notice',
    from: { title: 'Monday', segmentId: 'a', recordingSha256: 'ab'.repeat(32), spans: [] },
    clip: { file: 'clip.mp4', sha256: 'cd'.repeat(32), durationMs: 1000, frames: 30 },
    captions: 'captions.vtt',
    chapters: 'chapters.vtt',
    description: '',
  })
}

/** Everything a store holds, through its own doors. */
export async function readEverything(store: Store): Promise<unknown> {
  const recordings = await store.recordings.list()
  const each = await Promise.all(
    recordings.map(async ({ id }) => {
      const sheet = await store.sheets.readOf(id)
      return {
        media: await store.media.list(id),
        transcript: await store.transcripts.read(id),
        sheet,
        edits: sheet ? await store.sheets.readEdits(sheet.id, 0) : [],
        versions: await store.lessons.listOf(id),
      }
    }),
  )
  return {
    kinds: await store.kinds.list(),
    recordings,
    each,
    jobs: await store.jobs.list(),
    lessons: await store.lessons.list(),
    audit: await store.audit.list(),
    setting: await store.settings.read('studio-name', z.string()),
  }
}

/** Writes a SQLite store down: its tables as they were made, then one `insert` a row. */
export function dumpSqlite(dataFolder: string): string {
  const database = new Database(path.join(dataFolder, STORE_FILE))
  try {
    const made = database
      .prepare('select name, type, sql from sqlite_master where sql is not null order by type desc, name')
      .all() as { name: string; type: string; sql: string }[]
    const tables = made.filter((one) => one.type === 'table').map((one) => one.name)
    const inserts = tables.flatMap((table) =>
      (database.prepare(`select * from "${table}" order by 1, 2`).all() as Record<string, unknown>[]).map(
        (row) => `insert into "${table}" values (${Object.values(row).map(writeValue).join(', ')});`,
      ),
    )
    return [...made.map((one) => `${one.sql};`), ...inserts, ''].join('\n')
  } finally {
    database.close()
  }
}

/** Makes a SQLite store of what dumpSqlite wrote. */
export function loadSqlite(dataFolder: string, text: string): void {
  const database = new Database(path.join(dataFolder, STORE_FILE))
  // rows stand in the order of their tables' names
  database.exec('pragma foreign_keys=off')
  database.exec(`begin;\n${text}\ncommit;`)
  database.close()
}

function writeValue(value: unknown): string {
  if (typeof value === 'string') return `'${value.replaceAll("'", "''")}'`
  return JSON.stringify(value)
}
