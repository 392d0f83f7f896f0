// A zip that is sent as it is made: its length is right beforehand, and a reader that goes away leaves nothing open.
import { existsSync, readdirSync, readlinkSync } from 'node:fs'
import { writeFile } from 'node:fs/promises'
import path from 'node:path'
import { Writable } from 'node:stream'
import { expect, it } from 'vitest'
import { sendZip } from '../../../server/files/write-zip.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

/** Files of this process below the folder; empty where the system does not tell (only Linux does). */
function openFiles(folder: string): string[] {
  if (!existsSync('/proc/self/fd')) return []
  return readdirSync('/proc/self/fd').flatMap((fd) => {
    try {
      const file = readlinkSync(`/proc/self/fd/${fd}`)
      return file.startsWith(folder) ? [file] : []
    } catch {
      return []
    }
  })
}

async function twoFiles(): Promise<{ folder: string; parts: { name: string; path: string }[] }> {
  const folder = await tempFolder()
  const parts = ['a', 'b'].map((name) => ({ name, path: path.join(folder, name) }))
  for (const part of parts) await writeFile(part.path, Buffer.alloc(3_000_000, part.name))
  return { folder, parts }
}

it('a reader that goes away, and a file that is gone, end it with an error and nothing open', async () => {
  const { folder, parts } = await twoFiles()
  let taken = 0
  const leaving = new Writable({
    write(piece: Buffer, _encoding, done) {
      taken += piece.length
      if (taken < 500_000) done()
      else leaving.destroy()
    },
  })
  await expect(sendZip(leaving, parts, 0)).rejects.toThrow()
  await expect.poll(() => openFiles(folder)).toEqual([])
  const gone = [...parts, { name: 'c', path: path.join(folder, 'c') }]
  await expect(sendZip(new Writable(), gone, 0)).rejects.toThrow(/ENOENT/)
  expect(openFiles(folder)).toEqual([])
})

it('says its length before the first byte', async () => {
  const { parts } = await twoFiles()
  const pieces: Buffer[] = []
  let told = 0
  let whenTold = -1
  const out = new Writable({ write: (piece: Buffer, _encoding, done) => (pieces.push(piece), done()) })
  await sendZip(out, [{ name: 'c', bytes: Buffer.from('words') }, ...parts], 0, (bytes) => {
    told = bytes
    whenTold = pieces.length
  })
  expect(whenTold).toBe(0)
  expect(Buffer.concat(pieces).length).toBe(told)
})
