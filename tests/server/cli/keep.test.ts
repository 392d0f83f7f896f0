// Backup, restore and withdraw as commands: words that are wrong, folders that are not free, and the way there and back.
import { existsSync, readdirSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { main } from '../../../server/cli/main.ts'
import { openStudio } from '../../../server/studio.ts'
import { LOCAL_OWNER } from '../../../shared/actors.ts'
import { fakeIo } from '../../helpers/fake-io.ts'
import { testSettings } from '../../helpers/http-door.ts'
import { publishInvented } from '../../helpers/published-class.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

let nowUtc = Date.UTC(2026, 0, 15)

async function run(...words: string[]) {
  const io = fakeIo('', { nowUtc: () => (nowUtc += 1) })
  const code = await main(words, io)
  return { code, out: io.printed.out, said: io.printed.said }
}

/** A studio with invented lessons, closed again. */
async function fill(dataFolder: string): Promise<string> {
  const studio = await openStudio(testSettings(dataFolder))
  const { slugs } = await publishInvented(studio)
  await studio.close()
  return slugs['Chair squats'] ?? ''
}

describe('refused', () => {
  it.each([
    ['a restore without a place', ['restore', 'somewhere'], /--to/],
    ['a backup without a folder', ['backup'], /folder/],
    ['a withdrawal without an address', ['withdraw'], /address/],
  ])('%s', async (_what, words, said) => {
    const ran = await run(...words)
    expect([ran.code, ran.out]).toEqual([2, ''])
    expect(ran.said).toMatch(said)
  })

  it('a lesson that is not there', async () => {
    const folder = await tempFolder()
    await fill(folder)
    const ran = await run('withdraw', 'none', '--data', folder)
    expect([ran.code, ran.said]).toEqual([2, expect.stringMatching(/no lesson at the address "none".*\[row-missing\]/)])
  })

  it('a restore over something, which stays', async () => {
    const folder = await tempFolder()
    await fill(path.join(folder, 'studio'))
    await run('backup', path.join(folder, 'backups'), '--data', path.join(folder, 'studio'))
    writeFileSync(path.join(folder, 'precious'), '')
    const ran = await run('restore', path.join(folder, 'backups'), '--to', folder)
    expect([ran.code, ran.said]).toEqual([2, expect.stringContaining('nothing is written over')])
    expect(existsSync(path.join(folder, 'precious'))).toBe(true)
  })
})

it('a backup comes back elsewhere, and the second copies nothing', async () => {
  const folder = await tempFolder()
  const [studio, backups, elsewhere] = ['studio', 'backups', 'elsewhere'].map((name) => path.join(folder, name))
  await fill(studio ?? '')
  const first = await run('backup', backups ?? '', '--data', studio ?? '')
  expect([first.code, first.said]).toEqual([0, expect.stringMatching(/^\d+ files, .*; new: [1-9]/m)])
  const second = await run('backup', backups ?? '', '--data', studio ?? '')
  expect(second.said).toMatch(/new: 0 files, 0 kB/)
  expect(readdirSync(backups ?? '').filter((name) => name.endsWith('Z'))).toHaveLength(2)
  const restored = await run('restore', backups ?? '', '--to', elsewhere ?? '')
  expect([restored.code, restored.out]).toEqual([0, `${elsewhere ?? ''}\n`])
  expect(restored.said).toMatch(/1 classes, 5 lessons/)
})

it('a lesson is withdrawn, and brought back', async () => {
  const data = await tempFolder()
  const slug = await fill(data)
  expect(await run('withdraw', slug, '--why', 'filmed again', '--data', data)).toMatchObject({
    ...{ code: 0, out: `${slug} withdrawn\n` },
  })
  const studio = await openStudio(testSettings(data))
  expect(await studio.store.lessons.readAt(slug)).toMatchObject({ state: 'withdrawn' })
  expect((await studio.store.audit.list({ limit: 1 }))[0]).toMatchObject({ actorId: LOCAL_OWNER.id })
  await studio.close()
  expect(await run('withdraw', slug, '--bring-back', '--data', data)).toMatchObject({ out: `${slug} published\n` })
})
