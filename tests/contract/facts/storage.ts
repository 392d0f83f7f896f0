// What every storage must do, whatever it stands on.
import { readFile, readdir, stat, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Storage } from '../../../server/storage/storage.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

async function fileOf(text: string): Promise<string> {
  const file = path.join(await tempFolder(), 'some class.mp4')
  await writeFile(file, text)
  return file
}

async function textOf(storage: Storage, key: string, range?: { start: number; end: number }): Promise<string> {
  const parts: Buffer[] = []
  for await (const part of await storage.openRange(key, range)) parts.push(part as Buffer)
  return Buffer.concat(parts).toString('utf8')
}

export function storageFacts(open: () => Promise<Storage>): void {
  describe('refuses', () => {
    it.each([
      ['nothing', ''],
      ['a way up', '../secret'],
      ['a way up inside', 'a/../../secret'],
      ['a whole path', '/etc/passwd'],
      ['a hidden name', '.parts/x'],
      ['two endings', 'a/b.tar.gz'],
      ['a blank', 'a/b c'],
      ['a backslash', 'a\\b'],
      ['a zero byte', 'a\0b'],
      ['a per cent sign', 'a/%2e'],
      ['a double slash', 'a//b'],
    ])('a key with %s', async (_what, key) => {
      const storage = await open()
      expect(() => storage.path(key)).toThrow(expect.objectContaining({ code: 'store-damaged' }) as Error)
      await expect(storage.putBytes(key, 'x')).rejects.toMatchObject({ code: 'store-damaged' })
    })

    it('a file that is not there', async () => {
      const storage = await open()
      await expect(storage.putFile('a/b', '/nowhere/at/all.mp4', 'copy')).rejects.toMatchObject({
        code: 'file-missing',
      })
      expect(await storage.head('a/b')).toBeNull()
      await expect(storage.openRange('a/b')).rejects.toMatchObject({ code: 'row-missing' })
    })

    it('a folder in place of a file', async () => {
      const storage = await open()
      await expect(storage.putFile('a/b', await tempFolder(), 'copy')).rejects.toMatchObject({ code: 'file-missing' })
    })
  })

  it.each([
    ['copy', true],
    ['link', true],
    ['move', false],
  ] as const)('%s keeps the bytes; the original stays: %s', async (mode, stays) => {
    const storage = await open()
    const from = await fileOf('whole class')
    expect(await storage.putFile('recordings/r1/m1', from, mode)).toMatchObject({ bytes: 11 })
    expect(await textOf(storage, 'recordings/r1/m1')).toBe('whole class')
    expect((await stat(from).catch(() => null)) !== null).toBe(stays)
  })

  it('gives ranges, both ends counted', async () => {
    const storage = await open()
    await storage.putBytes('a/b.bin', '0123456789')
    expect(await textOf(storage, 'a/b.bin', { start: 2, end: 4 })).toBe('234')
    expect(await textOf(storage, 'a/b.bin', { start: 8, end: 99 })).toBe('89')
  })

  it('replaces whole files, and a reader under way keeps the old one', async () => {
    const storage = await open()
    await storage.putBytes('a/b', 'old')
    const reader = await storage.openRange('a/b')
    await new Promise((resolve) => reader.once('open', resolve))
    await storage.putBytes('a/b', 'fresh')
    let text = ''
    for await (const part of reader) text += String(part)
    expect(text).toBe('old')
    expect(await textOf(storage, 'a/b')).toBe('fresh')
  })

  it('lists keys by folder, sorted, and deletes twice', async () => {
    const storage = await open()
    for (const key of ['b/2', 'a/1.jpg', 'a/sub/3']) await storage.putBytes(key, key)
    expect(await storage.list('')).toEqual(['a/1.jpg', 'a/sub/3', 'b/2'])
    expect(await storage.list('a')).toEqual(['a/1.jpg', 'a/sub/3'])
    expect(await storage.list('none')).toEqual([])
    await storage.delete('a/1.jpg')
    await storage.delete('a/1.jpg')
    expect(await storage.list('a')).toEqual(['a/sub/3'])
  })

  it('leaves no part files, and tells the room left', async () => {
    const storage = await open()
    await Promise.all([1, 2, 3].map((one) => storage.putBytes('a/same', 'x'.repeat(one * 1000))))
    expect([1000, 2000, 3000]).toContain((await readFile(storage.path('a/same'))).length)
    expect(await readdir(path.join(path.dirname(path.dirname(storage.path('a/same'))), '.parts'))).toEqual([])
    expect(await storage.freeBytes()).toBeGreaterThan(0)
  })
}
