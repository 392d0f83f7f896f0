// Commands on a studio: one that is not there is not made by asking for it, a class is told by its id, a relative folder is
// taken from where the person stands.
import { readdirSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { personFolder } from '../../../server/cli/io.ts'
import { main } from '../../../server/cli/main.ts'
import { openStudio } from '../../../server/studio.ts'
import { LOCAL_OWNER } from '../../../shared/actors.ts'
import { fakeIo } from '../../helpers/fake-io.ts'
import { testSettings } from '../../helpers/http-door.ts'
import { projectRoot } from '../../helpers/source-files.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

async function run(words: string[], folder?: string) {
  const io = fakeIo('', folder === undefined ? {} : { folder })
  const code = await main(words, io)
  return { code, out: io.printed.out, said: io.printed.said }
}

/** A studio with classes of these titles, closed again. @returns their ids */
async function studioWith(dataFolder: string, titles: readonly string[]): Promise<string[]> {
  const studio = await openStudio(testSettings(dataFolder))
  const ids: string[] = []
  for (const title of titles) ids.push((await studio.store.recordings.add({ title }, LOCAL_OWNER)).id)
  await studio.close()
  return ids
}

describe('a studio that is not there is not made', () => {
  it.each([
    ['check --class x', 'store-missing'],
    ['draft --class x', 'store-missing'],
    ['publish --class x', 'store-missing'],
    ['export x lessons.zip', 'store-missing'],
    ['withdraw heel-raises', 'store-missing'],
    ['backup kept', 'store-missing'],
    ['import none.zip', 'file-missing'],
    ['import none.mp4', 'file-missing'],
    ['import empty.mp4', 'recording-empty'],
    ['import words.txt', 'recording-format'],
    ['import broken.zip', 'archive-wrong'],
    ['import film.mp4 --part none.mp4', 'file-missing'],
    ['import film.mp4 --sound words.txt', 'recording-format'],
    ['import film.mp4 --title', 'argument missing'],
    ['import film.mp4 --title=', 'usage'],
  ])('%s: %s', async (command, said) => {
    const folder = await tempFolder()
    writeFileSync(path.join(folder, 'empty.mp4'), '')
    writeFileSync(path.join(folder, 'words.txt'), 'WEBVTT\n\n00:01.000 --> 00:02.000\nHello\n')
    writeFileSync(path.join(folder, 'broken.zip'), 'PK\u0003\u0004 and nothing more')
    const before = readdirSync(folder)
    const film = path.join(projectRoot, 'media-samples', 'small-class.mp4')
    const words = command.split(' ').map((word) => {
      if (word === 'film.mp4') return film
      return /\.(zip|mp4|txt)$|^kept$/.test(word) ? path.join(folder, word) : word
    })
    const ran = await run([...words.slice(0, 1), '--data', 'studio', ...words.slice(1)], folder)
    expect([ran.code, ran.out]).toEqual([2, ''])
    expect(ran.said).toContain(said)
    expect(readdirSync(folder)).toEqual(before)
  })

  it('and the message says where it was looked for and what makes one', async () => {
    const folder = await tempFolder()
    const { said } = await run(['check', '--class', 'x', '--data', 'gym'], folder)
    expect(said).toContain(`no studio in ${path.join(folder, 'gym')}. Name its folder by --data; "serve" and "import"`)
  })
})

describe('a class that is not there', () => {
  const commands: [string, string[]][] = [
    ['check', ['check', '--class', 'none']],
    ['draft', ['draft', '--class', 'none']],
    ['publish', ['publish', '--class', 'none']],
    ['export', ['export', 'none', 'lessons.zip']],
  ]
  it.each(commands)('%s tells those that are, by id and title', async (_command, words) => {
    const folder = await tempFolder()
    const [older, newer] = await studioWith(folder, ['Morning class', 'Chair class'])
    const ran = await run([...words, '--data', folder])
    expect([ran.code, ran.out]).toEqual([2, ''])
    expect(ran.said).toContain(`There is no class "none" in the studio of ${folder}. Name one of these by its id`)
    expect(ran.said).toContain(`  ${newer}  Chair class\n  ${older}  Morning class\n`)
  })

  it('of a studio without classes: how one comes in', async () => {
    const folder = await tempFolder()
    await studioWith(folder, [])
    expect((await run(['publish', '--class', 'none', '--data', folder])).said).toContain(
      'It holds no class yet: "import"',
    )
  })

  it('of a studio with very many: the newest, and how many more', async () => {
    const folder = await tempFolder()
    await studioWith(
      folder,
      Array.from({ length: 15 }, (_, number) => `Class ${number}`),
    )
    const { said } = await run(['publish', '--class', 'none', '--data', folder])
    expect(said).toMatch(/Class 14\n[^]*Class 3\n {2}… and 3 older/)
    expect(said).not.toContain('Class 2\n')
  })
})

describe('a relative --data', () => {
  it('is taken from the folder where the person stands', async () => {
    const folder = await tempFolder()
    await studioWith(path.join(folder, 'gym'), ['Chair class'])
    expect((await run(['publish', '--class', 'none', '--data', 'gym'], folder)).said).toContain('Chair class')
    expect((await run(['publish', '--class', 'none', '--data', '../gym'], path.join(folder, 'gym'))).said).toContain(
      'Chair class',
    )
  })

  const cases: [string, string, string | undefined, string][] = [
    ['npm went to the project', '/project', '/home/coach', '/home/coach'],
    ['npm, called in the project itself', '/project', '/project', '/project'],
    ['the plain command', '/home/coach', undefined, '/home/coach'],
    ['the plain command in the project', '/project', undefined, '/project'],
    ['the plain command below some other npm script', '/home/coach', '/elsewhere', '/home/coach'],
    ['an empty variable', '/project', '', '/project'],
  ]
  it.each(cases)('%s', (_what, workFolder, initFolder, folder) => {
    expect(personFolder(workFolder, initFolder, '/project')).toBe(path.resolve(folder))
  })
})
