// Lessons: a lasting address, versions from any recording, replaced and withdrawn without losing either.
import { describe, expect, it } from 'vitest'
import type { Store } from '../../../server/store/open-store.ts'
import type { NewVersion } from '../../../server/store/keep-lessons.ts'
import { ANN } from '../../helpers/store-engines.ts'
import type { StoreMaker } from '../../helpers/store-engines.ts'
import { buildLesson } from '../../helpers/store-saved.ts'

async function buildVersion(store: Store, name: string): Promise<NewVersion> {
  const recording = await store.recordings.add({ title: 'Monday' }, ANN)
  const rest = { segmentId: 'a', sheetVersion: 3, clipSha256: 'cd'.repeat(32) }
  return { recordingId: recording.id, ...rest, lesson: buildLesson(name) }
}

export function lessonFacts(stores: StoreMaker): void {
  describe('lessons', () => {
    it('are not published from a recording that is not there', async () => {
      const store = await stores.open()
      const { id } = await store.lessons.add('Heel raise', ANN)
      const version = { ...(await buildVersion(store, 'Heel raise')), recordingId: 'none' }
      await expect(store.lessons.publish(id, version, ANN)).rejects.toMatchObject({ code: 'row-missing' })
      expect(await store.lessons.read(id)).toMatchObject({ state: 'draft', currentVersion: null })
    })

    it('get an address each, also when several of one name are added at once', async () => {
      const store = await stores.open()
      const added = await Promise.all([1, 2, 3].map(() => store.lessons.add('Heel Raise!', ANN)))
      expect(added.map((lesson) => lesson.slug).sort()).toEqual(['heel-raise', 'heel-raise-2', 'heel-raise-3'])
      expect(added[0]).toMatchObject({ state: 'draft', currentVersion: null, name: 'Heel Raise!' })
      expect(await store.lessons.readAt('nowhere')).toBeNull()
    })

    it('keep the address when a segment of another recording takes the place', async () => {
      const store = await stores.open()
      const { id, slug } = await store.lessons.add('Heel raise', ANN)
      const first = await store.lessons.publish(id, await buildVersion(store, 'Heel raise'), ANN)
      expect(first).toMatchObject({
        state: 'published',
        currentVersion: 1,
        current: { lesson: { slug: 'heel-raise' } },
      })
      const next = await buildVersion(store, 'Heel raise, slower')
      await store.lessons.publish(id, next, ANN)
      expect(await store.lessons.readAt(slug)).toMatchObject({
        id,
        name: 'Heel raise, slower',
        currentVersion: 2,
        current: { recordingId: next.recordingId, sheetVersion: 3, publishedBy: ANN.id },
      })
      expect((await store.lessons.listVersions(id)).map((version) => version.version)).toEqual([2, 1])
      expect(await store.lessons.listOf(next.recordingId)).toMatchObject([{ lessonId: id, version: 2, segmentId: 'a' }])
    })

    it('are withdrawn with reason and person, and the address stays', async () => {
      const store = await stores.open()
      const { id } = await store.lessons.add('Heel raise', ANN)
      await store.lessons.publish(id, await buildVersion(store, 'Heel raise'), ANN)
      const withdrawn = await store.lessons.withdraw(id, 'consent taken back', ANN)
      expect(withdrawn).toMatchObject({ state: 'withdrawn', slug: 'heel-raise', current: { withdrawnBy: ANN.id } })
      expect(await store.lessons.withdraw(id, 'again', ANN)).toEqual(withdrawn)
      expect(await store.lessons.list(['published'])).toEqual([])
      const rows = await store.audit.list({ object: { type: 'lesson', id } })
      expect(rows[0]).toMatchObject({ action: 'lesson.withdraw', details: { why: 'consent taken back', version: 1 } })
      expect((await store.lessons.add('Heel raise', ANN)).slug).toBe('heel-raise-2')
    })

    it('can show an earlier version again', async () => {
      const store = await stores.open()
      const { id } = await store.lessons.add('Heel raise', ANN)
      for (const name of ['One', 'Two']) await store.lessons.publish(id, await buildVersion(store, name), ANN)
      await store.lessons.withdraw(id, 'wrong clip', ANN)
      const back = await store.lessons.chooseVersion(id, 1, ANN)
      expect(back).toMatchObject({
        state: 'published',
        name: 'One',
        currentVersion: 1,
        current: { withdrawnUtc: null },
      })
      await expect(store.lessons.chooseVersion(id, 3, ANN)).rejects.toMatchObject({ code: 'row-missing' })
      const third = await store.lessons.publish(id, await buildVersion(store, 'Three'), ANN)
      expect(third.currentVersion).toBe(3)
    })

    it('are numbered without a gap when several are published at once', async () => {
      const store = await stores.open()
      const { id } = await store.lessons.add('Heel raise', ANN)
      const versions = await Promise.all([1, 2, 3, 4].map((number) => buildVersion(store, `Number ${number}`)))
      await Promise.all(versions.map((version) => store.lessons.publish(id, version, ANN)))
      expect((await store.lessons.listVersions(id)).map((version) => version.version)).toEqual([4, 3, 2, 1])
    })

    it('are listed by name in the same order on every database', async () => {
      const store = await stores.open()
      for (const name of ['plank', 'Ärmel', 'Plank', 'bridge', '2 taps']) await store.lessons.add(name, ANN)
      const names = (await store.lessons.list()).map((lesson) => lesson.name)
      expect(names).toEqual(['2 taps', 'Plank', 'bridge', 'plank', 'Ärmel'])
    })
  })
}
