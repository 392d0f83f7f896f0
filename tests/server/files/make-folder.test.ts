// Making folders: every missing one, told outermost first; a refusal is an error, not an endless try.
import { writeFile } from 'node:fs/promises'
import path from 'node:path'
import { expect, it } from 'vitest'
import { makeFolder } from '../../../server/files/make-folder.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

it.runIf(process.platform === 'linux')('gives up where the file system refuses new names', async () => {
  await expect(makeFolder('/proc/nope/deeper')).rejects.toThrow()
})

it('refuses a place below a file', async () => {
  const folder = await tempFolder()
  await writeFile(path.join(folder, 'file'), '')
  await expect(makeFolder(path.join(folder, 'file', 'below'))).rejects.toMatchObject({ code: 'ENOTDIR' })
})

it('makes all that is missing and nothing twice', async () => {
  const folder = await tempFolder()
  const [a, b] = [path.join(folder, 'a'), path.join(folder, 'a', 'b')]
  expect(await makeFolder(b)).toEqual([a, b])
  expect(await makeFolder(b)).toEqual([])
})
