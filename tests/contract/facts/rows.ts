// Class kinds, recordings, files, transcripts, settings, audit rows.
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import type { Store } from '../../../server/store/open-store.ts'
import { ANN, handmade } from '../../helpers/store-engines.ts'
import type { StoreMaker } from '../../helpers/store-engines.ts'

const CHAIR = {
  title: 'Chair class',
  audience: ['older-adults' as const],
  equipment: ['chair'],
  music: 'own' as const,
  people: null,
}
const PLAIN_TEXT = { origin: 'pasted' as const, form: 'stamped-text', language: 'en', fileName: null }

/** Calls that name something which is not there. */
const MISSING: [string, (store: Store) => Promise<unknown>][] = [
  ['a kind to read', (store) => store.kinds.read('none')],
  ['a kind to change', (store) => store.kinds.change('none', 1, { title: 'x' }, ANN)],
  ['a kind to remove', (store) => store.kinds.remove('none', ANN)],
  ['a recording to read', (store) => store.recordings.read('none')],
  ['a recording to change', (store) => store.recordings.change('none', null, { title: 'x' }, ANN)],
  ['the kind of a recording', (store) => store.recordings.add({ title: 'x', kindId: 'none' }, ANN)],
  ['the recording of a file', (store) => store.media.add('none', { role: 'part', fileName: 'a.mp4' }, ANN)],
  ['a file to change', (store) => store.media.change('none', { label: 'x' }, ANN)],
  ['the recording of a transcript', (store) => store.transcripts.add('none', { ...PLAIN_TEXT, text: 'x' }, ANN)],
  ['a sheet to read', (store) => store.sheets.read('none')],
  ['a job to read', (store) => store.jobs.read('none')],
  ['a job to cancel', (store) => store.jobs.cancel('none', ANN)],
  ['a lesson to read', (store) => store.lessons.read('none')],
  ['a lesson to withdraw', (store) => store.lessons.withdraw('none', 'x', ANN)],
]

/** Texts that databases are known to trip over. */
const TEXTS: [string, string][] = [
  ['quotes', `O'Brien said "lift"; -- \\ %_`],
  ['many scripts', 'Übung 練習 تمرين תרגיל 🧘🏽‍♀️ e\u0301'],
  ['line ends', 'a\r\nb\tc\u2028d'],
  ['a megabyte', 'heel raise, '.repeat(90_000)],
  ['nothing', ''],
]

export function rowFacts(stores: StoreMaker): void {
  describe('rows', () => {
    it.each(MISSING)('says that %s is missing', async (_name, call) => {
      await expect(call(await stores.open())).rejects.toMatchObject({ code: 'row-missing' })
    })

    it('refuses a text with a NUL character instead of cutting it off there', async () => {
      const store = await stores.open()
      await expect(store.recordings.add({ title: 'a\0b' }, ANN)).rejects.toMatchObject({ code: 'store-text' })
      expect(await store.recordings.list()).toEqual([])
      await store.settings.write('inside-json', 'a\0b', ANN)
      expect(await store.settings.read('inside-json', z.string())).toBe('a\0b')
    })

    it.each(TEXTS)('gives a text of %s back as it was', async (_name, text) => {
      const store = await stores.open()
      const { id } = await store.recordings.add({ title: text, equipment: [text] }, ANN)
      await store.transcripts.add(id, { ...PLAIN_TEXT, text }, ANN)
      expect(await store.recordings.read(id)).toMatchObject({ title: text, equipment: [text] })
      expect(await store.transcripts.read(id)).toMatchObject({ text })
    })

    it('refuses to read a setting that is not what the schema says', async () => {
      const store = await stores.open()
      await store.settings.write('port', 'eighty', ANN)
      await expect(store.settings.read('port', z.number())).rejects.toMatchObject({ code: 'store-damaged' })
    })

    it('keeps the newest value of a setting, and null for one never set', async () => {
      const store = await stores.open()
      await store.settings.write('port', 80, ANN)
      await store.settings.write('port', 8080, ANN)
      expect(await store.settings.read('port', z.number())).toBe(8080)
      expect(await store.settings.read('other', z.number())).toBeNull()
    })

    it('refuses a change made on an older row, and writes nothing of it', async () => {
      const store = await stores.open()
      const kind = await store.kinds.add(CHAIR, ANN)
      const changed = await store.kinds.change(kind.id, kind.rowVersion, { music: 'licensed' }, ANN)
      const late = store.kinds.change(kind.id, kind.rowVersion, { title: 'Late' }, ANN)
      await expect(late).rejects.toMatchObject({ code: 'row-changed' })
      expect(await store.kinds.read(kind.id)).toEqual(changed)
      const recording = await store.recordings.add({ title: 'One' }, ANN)
      await store.recordings.change(recording.id, null, { title: 'Two' }, ANN)
      const lateToo = store.recordings.change(recording.id, recording.rowVersion, { title: 'Late' }, ANN)
      await expect(lateToo).rejects.toMatchObject({ code: 'row-changed' })
    })

    it('lends the kind to a recording, except what is given, and asks the audience otherwise', async () => {
      const store = await stores.open()
      const kind = await store.kinds.add(CHAIR, ANN)
      const lent = await store.recordings.add({ title: 'Monday', kindId: kind.id, music: 'unknown' }, ANN)
      expect(lent).toMatchObject({ audience: ['older-adults'], equipment: ['chair'], music: 'unknown', people: null })
      const bare = await store.recordings.add({ title: 'Tuesday' }, ANN)
      expect(bare).toMatchObject({ audience: null, music: null, people: null, state: 'arriving', durationMs: null })
    })

    it('changes only the fields that are given', async () => {
      const options = handmade()
      const store = await stores.open(undefined, options)
      const people = [
        { name: 'Guest', consent: 'given' as const, scope: null, untilUtc: options.nowUtc, under18: false },
      ]
      const before = await store.recordings.add({ title: 'Monday', people, audience: ['rehab'] }, ANN)
      options.nowUtc += 1000
      const after = await store.recordings.change(before.id, 1, { state: 'ready', durationMs: 3_600_000 }, ANN)
      expect(after).toEqual({
        ...before,
        state: 'ready',
        durationMs: 3_600_000,
        rowVersion: 2,
        updatedUtc: options.nowUtc,
      })
    })

    it('lists what is not removed: kinds the oldest first, recordings the newest first', async () => {
      const options = handmade()
      const store = await stores.open(undefined, options)
      const ids = []
      for (const title of ['a', 'b', 'c']) {
        ids.push((await store.recordings.add({ title }, ANN)).id)
        await store.kinds.add({ ...CHAIR, title }, ANN)
        options.nowUtc += title === 'a' ? 0 : 5
      }
      await store.recordings.change(ids[1] ?? '', null, { state: 'removed' }, ANN)
      const kinds = await store.kinds.list()
      await store.kinds.remove(kinds[0]?.id ?? '', ANN)
      expect((await store.recordings.list()).map((one) => one.title)).toEqual(['c', 'a'])
      expect((await store.kinds.list()).map((one) => one.title)).toEqual(['b', 'c'])
    })

    it('keeps the parts of a recording in order, sound and cameras behind them', async () => {
      const store = await stores.open()
      const { id } = await store.recordings.add({ title: 'Monday' }, ANN)
      await store.media.add(id, { role: 'camera', fileName: 'side.mp4', startMs: -1500, driftPpm: -12.25 }, ANN)
      for (const fileName of ['one.mp4', 'two.mp4']) await store.media.add(id, { role: 'part', fileName }, ANN)
      await store.media.add(id, { role: 'sound', fileName: 'mic.wav' }, ANN)
      const files = await store.media.list(id)
      expect(files.map((file) => [file.role, file.position, file.fileName])).toEqual([
        ['part', 0, 'one.mp4'],
        ['part', 1, 'two.mp4'],
        ['sound', 0, 'mic.wav'],
        ['camera', 0, 'side.mp4'],
      ])
      expect(files[3]).toMatchObject({ startMs: -1500, driftPpm: -12.25, bytes: null, sha256: null, facts: null })
      const taken = store.media.add(id, { role: 'part', fileName: 'x.mp4', position: 1 }, ANN)
      await expect(taken).rejects.toMatchObject({ code: 'row-exists' })
    })

    it('arranges the files of a recording anew, all of them or none', async () => {
      const store = await stores.open()
      const { id } = await store.recordings.add({ title: 'In parts' }, ANN)
      const add = (fileName: string) => store.media.add(id, { role: 'part', fileName }, ANN)
      const [one, two, three] = [await add('one'), await add('two'), await add('three')]
      const arrange = (...files: (readonly [string, 'part' | 'aside'])[]) =>
        store.media.arrange(
          id,
          files.map(([fileId, role]) => ({ id: fileId, role })),
          ANN,
        )
      await expect(arrange([one.id, 'part'], [two.id, 'part'])).rejects.toMatchObject({ code: 'row-changed' })
      await arrange([three.id, 'part'], [one.id, 'part'], [two.id, 'aside'])
      expect((await store.media.list(id)).map(({ fileName, role, position }) => [fileName, role, position])).toEqual([
        ['three', 'part', 0],
        ['one', 'part', 1],
        ['two', 'aside', 0],
      ])
    })

    it('forgets a film that was joined of parts, and nothing that people brought', async () => {
      const store = await stores.open()
      const { id } = await store.recordings.add({ title: 'In parts' }, ANN)
      const part = await store.media.add(id, { role: 'part', fileName: 'one' }, ANN)
      const joined = await store.media.add(id, { role: 'joined', fileName: 'joined.mp4' }, ANN)
      await expect(store.media.remove(part.id, ANN)).rejects.toMatchObject({ code: 'not-allowed' })
      await store.media.remove(joined.id, ANN)
      expect((await store.media.list(id)).map(({ role }) => role)).toEqual(['part'])
      await expect(store.media.remove(joined.id, ANN)).rejects.toMatchObject({ code: 'row-missing' })
    })

    it('holds sizes beyond 4 GiB exactly, and finds a file by its sum', async () => {
      const store = await stores.open()
      const { id } = await store.recordings.add({ title: 'Monday' }, ANN)
      const file = await store.media.add(id, { role: 'part', fileName: 'one.mp4' }, ANN)
      const sha256 = 'ab'.repeat(32)
      const facts = { streams: [{ codec: 'h264' }] }
      const changed = await store.media.change(file.id, { bytes: 9_007_199_254_740_991, sha256, facts }, ANN)
      expect(changed).toMatchObject({ bytes: 9_007_199_254_740_991, facts })
      expect(await store.media.findBySum(sha256)).toEqual([changed])
      expect(await store.media.findBySum('cd'.repeat(32))).toEqual([])
    })

    it('keeps every version of a transcript; the same text again is none', async () => {
      const store = await stores.open()
      const { id } = await store.recordings.add({ title: 'Monday' }, ANN)
      expect(await store.transcripts.read(id)).toBeNull()
      const texts = ['first', 'second', 'second', 'first']
      for (const text of texts) await store.transcripts.add(id, { ...PLAIN_TEXT, text }, ANN)
      expect((await store.transcripts.list(id)).map((one) => one.version)).toEqual([3, 2, 1])
      expect(await store.transcripts.read(id)).toMatchObject({ version: 3, text: 'first' })
      expect(await store.transcripts.read(id, 2)).toMatchObject({ version: 2, text: 'second' })
      // sha256 of "second", by sha256sum of GNU coreutils
      expect((await store.transcripts.read(id, 2))?.sha256).toBe(
        '16367aacb67a4a017c8da8ab95682ccb390863780f7114dda0a0e0c55644c7c4',
      )
    })

    it('notes who did what, when, to which thing', async () => {
      const options = handmade()
      const store = await stores.open(undefined, options)
      const { id } = await store.recordings.add({ title: 'Monday' }, ANN)
      options.nowUtc += 1
      const bea = { id: 'bea', name: 'Bea', role: 'owner' as const }
      await store.recordings.change(id, 1, { title: 'Tuesday' }, bea)
      await store.audit.add(bea, 'studio.backup', { type: 'studio', id: 'studio' })
      const rows = await store.audit.list({ object: { type: 'recording', id } })
      expect(rows.map(({ actorName, action, atUtc, details }) => ({ actorName, action, atUtc, details }))).toEqual([
        { actorName: 'Bea', action: 'recording.change', atUtc: options.nowUtc, details: { fields: ['title'] } },
        { actorName: 'Owner', action: 'recording.add', atUtc: options.nowUtc - 1, details: { title: 'Monday' } },
      ])
      expect(await store.audit.list({ limit: 1 })).toMatchObject([{ action: 'studio.backup' }])
    })
  })
}
