// Where ffmpeg and ffprobe are looked for, in which order, and what is said when they are not there.
import { chmodSync, mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { findFfmpeg, isNewEnough } from '../../../core/media/engine/find-ffmpeg.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

/** A folder with an ffmpeg and ffprobe that say these versions; null = the program is not there. */
async function tools(ffmpeg: string | null, ffprobe: string | null = ffmpeg): Promise<string> {
  const folder = join(await tempFolder(), "it's a folder")
  mkdirSync(folder)
  for (const [program, version] of [
    ['ffmpeg', ffmpeg],
    ['ffprobe', ffprobe],
  ] as const) {
    if (version !== null) script(join(folder, program), `echo "${program} version ${version} Copyright (c) someone"`)
  }
  return folder
}

function script(path: string, body: string): void {
  writeFileSync(path, `#!/bin/sh\n${body}\n`)
  chmodSync(path, 0o755)
}

describe('findFfmpeg', () => {
  it('takes the program of the setting, and the ffprobe beside it', async () => {
    const [set, path] = [await tools('6.0'), await tools('5.1.9-0+deb12u1')]
    expect(await findFfmpeg({ REPSLATE_FFMPEG: join(set, 'ffmpeg'), PATH: path })).toEqual({
      ffmpeg: join(set, 'ffmpeg'),
      ffprobe: join(set, 'ffprobe'),
      version: '6.0',
      from: 'setting',
    })
  })

  it.each(['FFMPEG_PATH', 'FFMPEG_BIN'])('takes %s too', async (setting) => {
    const [set, path] = [await tools('6.0', null), await tools('5.1')]
    const found = await findFfmpeg({ [setting]: join(set, 'ffmpeg'), PATH: path })
    expect(found).toMatchObject({ ffmpeg: join(set, 'ffmpeg'), ffprobe: join(path, 'ffprobe'), from: 'setting' })
  })

  it.each(['REPSLATE_FFPROBE', 'FFPROBE_PATH'])('takes ffprobe from %s', async (setting) => {
    const [set, path] = [await tools(null, '7.1'), await tools('5.1')]
    const found = await findFfmpeg({ [setting]: join(set, 'ffprobe'), PATH: path })
    expect(found).toMatchObject({ ffprobe: join(set, 'ffprobe') })
    expect(found.ffmpeg).not.toContain(set)
  })

  it('takes the first on the PATH that is new enough', async () => {
    const [old, good] = [await tools('4.4.2'), await tools('5.1')]
    const found = await findFfmpeg({ FFMPEG_PATH: join(old, 'ffmpeg'), PATH: `${old}:/nowhere:${good}` })
    expect(found.version).not.toBe('4.4.2')
    expect(found.ffprobe).not.toContain(old)
  })

  it('takes the optional package before the PATH, if its file is really there', async () => {
    const [packaged, path] = [join(await tools('6.1.1', null), 'ffmpeg'), await tools('5.1')]
    const find = (load: () => Promise<unknown>) => findFfmpeg({ PATH: path }, load)
    expect(await find(() => Promise.resolve({ default: packaged }))).toEqual({
      ffmpeg: packaged,
      ffprobe: join(path, 'ffprobe'),
      version: '6.1.1',
      from: 'ffmpeg-static',
    })
    const fromPath = { ffmpeg: join(path, 'ffmpeg'), from: 'path' }
    expect(await find(() => Promise.resolve({ default: '/nowhere/ffmpeg' }))).toMatchObject(fromPath)
    expect(await find(() => Promise.resolve({ default: null }))).toMatchObject(fromPath)
    expect(await find(() => Promise.reject(new Error('not installed')))).toMatchObject(fromPath)
  })

  it('says that a setting of ours names nothing, rather than taking another', async () => {
    const path = await tools('5.1')
    await expect(findFfmpeg({ REPSLATE_FFMPEG: '/nowhere/ffmpeg', PATH: path })).rejects.toMatchObject({
      code: 'ffmpeg-missing',
      message: expect.stringContaining('REPSLATE_FFMPEG names "/nowhere/ffmpeg"') as string,
    })
  })

  it.each([
    { name: 'a folder', make: (path: string) => mkdirSync(path) },
    { name: 'a file that may not be run', make: (path: string) => writeFileSync(path, 'x') },
    { name: 'a program that is none', make: (path: string) => script(path, 'echo hello') },
    { name: 'a program that fails', make: (path: string) => script(path, 'exit 3') },
  ])('does not take $name', async ({ make }) => {
    const path = join(await tempFolder(), 'ffmpeg')
    make(path)
    await expect(findFfmpeg({ REPSLATE_FFMPEG: path, PATH: '' })).rejects.toMatchObject({ code: 'ffmpeg-missing' })
  })

  it('says what is too old', async () => {
    const old = await tools('4.4.2-0ubuntu')
    await expect(findFfmpeg({ REPSLATE_FFMPEG: join(old, 'ffmpeg'), PATH: '' })).rejects.toMatchObject({
      code: 'ffmpeg-too-old',
      details: [expect.stringContaining('version 4.4.2-0ubuntu') as string],
    })
  })

  it('says that ffprobe is missing', async () => {
    const folder = await tools('5.1', null)
    await expect(findFfmpeg({ REPSLATE_FFMPEG: join(folder, 'ffmpeg'), PATH: '' })).rejects.toMatchObject({
      code: 'ffmpeg-missing',
      message: expect.stringContaining('No ffprobe was found') as string,
    })
  })
})

describe('isNewEnough', () => {
  it.each(['5.1', '5.1.9-0+deb12u1', 'n5.1.2', '6.0-static', '7.1', '10.0', 'N-109542-g1bf1c8'])('%s', (version) => {
    expect(isNewEnough(version)).toBe(true)
  })
  it.each(['5.0.1', '4.4', 'n4.3', '', 'git', 'N-66595-gc2b38619c0'])('not %j', (version) => {
    expect(isNewEnough(version)).toBe(false)
  })
})
