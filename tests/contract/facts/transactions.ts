// Several writes as one: all or nothing, nothing seen before, parts that fail and are caught.
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import type { Store } from '../../../server/store/open-store.ts'
import { buildSheet } from '../../helpers/build-sheet.ts'
import { ANN, handmade } from '../../helpers/store-engines.ts'
import type { StoreMaker } from '../../helpers/store-engines.ts'

export function transactionFacts(stores: StoreMaker): void {
  describe('transactions', () => {
    it('leave nothing when they fail, neither rows nor jobs nor audit rows', async () => {
      const store = await stores.open()
      const failing = store.transaction(async (rooms) => {
        const { id } = await rooms.recordings.add({ title: 'x' }, ANN)
        await rooms.jobs.enqueue({ kind: 'draft', input: null, recordingId: id }, ANN)
        expect(await rooms.recordings.list()).toHaveLength(1)
        throw new Error('no')
      })
      await expect(failing).rejects.toThrow('no')
      expect(await store.recordings.list()).toEqual([])
      expect(await store.jobs.list()).toEqual([])
      expect(await store.audit.list()).toEqual([])
    })

    it('write all of it when they succeed', async () => {
      const store = await stores.open()
      const made = await store.transaction(async (rooms) => {
        const recording = await rooms.recordings.add({ title: 'x' }, ANN)
        const sheet = await rooms.sheets.add({ recordingId: recording.id, sheet: buildSheet(), actor: ANN })
        const op = { op: 'set-title' as const, title: 'y' }
        await rooms.sheets.appendEdits({ sheetId: sheet.id, baseVersion: 0, edits: [{ opId: '1', op }], actor: ANN })
        return { recording, sheet }
      })
      expect(await store.sheets.readOf(made.recording.id)).toMatchObject({ version: 1, sheet: { title: 'y' } })
    })

    it('go on after a part that failed and was caught; of that part nothing stays', async () => {
      const options = handmade()
      let idsLeft = Infinity
      const ids = (): string => {
        idsLeft -= 1
        if (idsLeft < 0) throw new Error('no more ids')
        return options.ids()
      }
      const store = await stores.open(undefined, { ...options, ids })
      const kept = await store.transaction(async (rooms) => {
        // the row is written, its audit row is not
        idsLeft = 1
        await expect(rooms.recordings.add({ title: 'half' }, ANN)).rejects.toThrow('no more ids')
        idsLeft = Infinity
        const recording = await rooms.recordings.add({ title: 'x' }, ANN)
        // the database refuses it
        const nothing = { title: null as never }
        await expect(rooms.recordings.change(recording.id, null, nothing, ANN)).rejects.toThrow(/null/i)
        await rooms.media.add(recording.id, { role: 'part', fileName: 'a.mp4' }, ANN)
        return recording
      })
      expect(await store.recordings.list()).toEqual([kept])
      expect(await store.media.list(kept.id)).toHaveLength(1)
      expect((await store.audit.list()).map((row) => row.action).sort()).toEqual(['media.add', 'recording.add'])
    })

    it('refuse the store itself inside, instead of waiting for ever', async () => {
      const store = await stores.open()
      const calls: ((outer: Store) => Promise<unknown>)[] = [
        (outer) => outer.recordings.list(),
        (outer) => outer.recordings.add({ title: 'x' }, ANN),
        (outer) => outer.transaction(() => Promise.resolve()),
      ]
      for (const call of calls) {
        await expect(store.transaction(() => call(store))).rejects.toMatchObject({ code: 'internal' })
      }
      expect(await store.recordings.list()).toEqual([])
    })

    it('are not seen by others before they are done', async () => {
      const place = await stores.newPlace()
      const [writer, reader] = [await stores.open(place), await stores.open(place)]
      await writer.transaction(async (rooms) => {
        await rooms.recordings.add({ title: 'x' }, ANN)
        // the other store is a door of its own
        expect(await reader.recordings.list()).toEqual([])
      })
      expect(await reader.recordings.list()).toHaveLength(1)
    })

    it('of many at once that read and then write count every one', async () => {
      const place = await stores.newPlace()
      const opened = await Promise.all([1, 2, 3].map(() => stores.open(place)))
      const { id } = await (opened[0] as Store).recordings.add({ title: '0' }, ANN)
      const count = async (store: Store): Promise<void> => {
        for (;;) {
          const now = await store.recordings.read(id)
          const next = { title: String(Number(now.title) + 1) }
          try {
            await store.recordings.change(id, now.rowVersion, next, ANN)
            return
          } catch (error) {
            expect(error).toMatchObject({ code: 'row-changed' })
          }
        }
      }
      await Promise.all(Array.from({ length: 12 }, (_, index) => count(opened[index % 3] as Store)))
      expect((await (opened[0] as Store).recordings.read(id)).title).toBe('12')
    })

    it('give settings written inside back inside', async () => {
      const store = await stores.open()
      const read = await store.transaction(async (rooms) => {
        await rooms.settings.write('port', 8080, ANN)
        return rooms.settings.read('port', z.number())
      })
      expect(read).toBe(8080)
    })
  })
}
