// Backups of a SQLite store: refused where something is in the way, complete and sound otherwise, also while it is written to.
import { createHash } from 'node:crypto'
import { copyFileSync, existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { openStore } from '../../../server/store/open-store.ts'
import type { Store } from '../../../server/store/open-store.ts'
import { STORE_FILE } from '../../../server/store/open-sqlite.ts'
import { ANN, handmade } from '../../helpers/store-engines.ts'
import { fillStore, readEverything } from '../../helpers/store-saved.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

async function open(dataFolder: string): Promise<Store> {
  const store = await openStore({ dataFolder }, handmade())
  onTestFinished(() => store.close())
  return store
}

describe('a backup', () => {
  it('is refused where a file is, and that file stays', async () => {
    const folder = await tempFolder()
    const file = path.join(folder, 'there.sqlite')
    writeFileSync(file, 'precious')
    await expect((await open(folder)).backupTo(file)).rejects.toMatchObject({ code: 'store-backup' })
    expect(readFileSync(file, 'utf8')).toBe('precious')
  })

  it('that cannot be written says so and leaves nothing', async () => {
    const folder = await tempFolder()
    writeFileSync(path.join(folder, 'file'), '')
    const call = (await open(folder)).backupTo(path.join(folder, 'file', 'backup.sqlite'))
    await expect(call).rejects.toMatchObject({ code: 'store-backup' })
    expect(readdirSync(folder).filter((name) => name.includes('backup'))).toEqual([])
  })

  it('opens elsewhere and holds everything; its sum is that of the file', async () => {
    const folder = await tempFolder()
    const store = await open(folder)
    await fillStore(store)
    const file = path.join(folder, 'backups', 'monday.sqlite')
    const backup = await store.backupTo(file)
    const bytes = readFileSync(file)
    expect(backup).toEqual({ file, bytes: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') })
    expect(existsSync(`${file}.part`)).toBe(false)
    const elsewhere = path.join(folder, 'elsewhere')
    mkdirSync(elsewhere)
    copyFileSync(file, path.join(elsewhere, STORE_FILE))
    expect(await readEverything(await open(elsewhere))).toEqual(await readEverything(store))
  })

  it('is one moment of a store that is written to meanwhile', async () => {
    const folder = await tempFolder()
    const store = await open(folder)
    const other = await open(folder)
    const adds = Array.from({ length: 40 }, (_, index) =>
      other.transaction(async (rooms) => {
        await rooms.recordings.add({ title: `${index} a` }, ANN)
        await rooms.recordings.add({ title: `${index} b` }, ANN)
      }),
    )
    const elsewhere = path.join(folder, 'elsewhere')
    await Promise.all([...adds, store.backupTo(path.join(elsewhere, STORE_FILE))])
    const titles = (await (await open(elsewhere)).recordings.list()).map((one) => one.title.split(' ')[0])
    const alone = titles.filter((title) => titles.filter((other) => other === title).length !== 2)
    expect(alone).toEqual([])
    expect((await store.recordings.list()).length).toBe(80)
  })
})
