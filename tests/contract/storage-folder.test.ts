// The storage's contract over a folder: whole files or none, keys that cannot lead out, originals left alone.
import { mkdtemp, readFile, rm, stat, symlink, utimes, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { openFolderStorage } from '../../server/storage/open-folder-storage.ts'
import { storageFacts } from './facts/storage.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

describe('the storage in a folder', () => {
  storageFacts(async () => openFolderStorage(path.join(await tempFolder(), 'media'), Date.now()))

  it('takes away part files of programs that were killed long ago, and no fresh ones', async () => {
    const folder = path.join(await tempFolder(), 'media')
    await openFolderStorage(folder, Date.now())
    const old = path.join(folder, '.parts', 'old')
    const fresh = path.join(folder, '.parts', 'fresh')
    await writeFile(old, 'x')
    await writeFile(fresh, 'x')
    await utimes(old, new Date(0), new Date(0))
    const storage = await openFolderStorage(folder, Date.now())
    await expect(stat(old)).rejects.toThrow(/ENOENT/)
    expect(await readFile(fresh, 'utf8')).toBe('x')
    expect(await storage.list('')).toEqual([])
  })

  it('copies where a link is asked for across disks', async () => {
    const other = await mkdtemp(path.join(process.platform === 'linux' ? '/dev/shm' : tmpdir(), 'repslate-'))
    try {
      const from = path.join(other, 'class.mp4')
      await writeFile(from, 'picture')
      const storage = await openFolderStorage(path.join(await tempFolder(), 'media'), Date.now())
      await storage.putFile('recordings/a/b', from, 'link')
      expect(await readFile(storage.path('recordings/a/b'), 'utf8')).toBe('picture')
      await storage.putFile('recordings/a/c', from, 'move')
      await expect(stat(from)).rejects.toThrow(/ENOENT/)
    } finally {
      await rm(other, { recursive: true, force: true })
    }
  })

  it('says a folder that cannot be made', async () => {
    const folder = await tempFolder()
    await symlink('/dev/null/none', path.join(folder, 'media'))
    await expect(openFolderStorage(path.join(folder, 'media'), Date.now())).rejects.toMatchObject({
      code: 'out-not-writable',
    })
  })
})
