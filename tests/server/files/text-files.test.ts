// Text files as people save them: UTF-8, or UTF-16 with its mark; anything else is refused.
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readTextFile } from '../../../server/files/text-files.ts'

describe('readTextFile', () => {
  let folder = ''
  beforeAll(async () => {
    folder = await mkdtemp(path.join(tmpdir(), 'repslate-text-'))
  })
  afterAll(() => rm(folder, { recursive: true, force: true }))

  const saved = async (bytes: Uint8Array) => {
    const file = path.join(folder, 'class.txt')
    await writeFile(file, bytes)
    return readTextFile(file, 'transcript')
  }
  const swapped = (bytes: Buffer) => Buffer.from(bytes).swap16()

  it.each([
    ['UTF-8', Buffer.from('it’s ten', 'utf8')],
    ['UTF-16, low byte first', Buffer.from('\uFEFFit’s ten', 'utf16le')],
    ['UTF-16, high byte first', swapped(Buffer.from('\uFEFFit’s ten', 'utf16le'))],
  ])('reads %s', async (_name, bytes) => {
    expect(await saved(bytes)).toBe('it’s ten')
  })

  it.each([
    ['Windows code page 1252', Buffer.from([0x69, 0x74, 0x92, 0x73]), 'file-not-text'],
    ['half a character of UTF-16', Buffer.from([0xff, 0xfe, 0x41]), 'file-not-text'],
    ['nothing', Buffer.alloc(0), 'file-empty'],
  ])('refuses %s', async (_name, bytes, code) => {
    await expect(saved(bytes)).rejects.toMatchObject({ code })
  })
})
