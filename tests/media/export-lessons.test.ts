// Lessons exported from one studio and taken into another: the same bytes, address, dose and cautions; twice changes
// nothing; a hostile archive is refused and leaves nothing. The archive is read by an independent program, too.
import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import yazl from 'yazl'
import { hashBytes } from '../../core/media/engine/hash-file.ts'
import { exportRecording } from '../../server/actions/export-recording.ts'
import type { Exported } from '../../server/actions/export-recording.ts'
import { importExport } from '../../server/actions/import-export.ts'
import { publishLessons } from '../../server/actions/publish-lessons.ts'
import { openStudio } from '../../server/studio.ts'
import type { Studio } from '../../server/studio.ts'
import { ExportList } from '../../shared/backup.ts'
import { testSettings } from '../helpers/http-door.ts'
import { seedSmallClass } from '../helpers/seeded-studio.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

let folder = ''
let home: Studio
let recordingId = ''
let made: Exported
let manifest: ExportList

/** Files of the archive as Python's zipfile module reads them. */
function readByPython(file: string): Map<string, string> {
  const script =
    'import zipfile,hashlib,json,sys;z=zipfile.ZipFile(sys.argv[1]);assert z.testzip() is None;' +
    'print(json.dumps({n:hashlib.sha256(z.read(n)).hexdigest() for n in z.namelist()}))'
  return new Map(
    Object.entries<string>(
      JSON.parse(execFileSync('python3', ['-c', script, file]).toString()) as Record<string, string>,
    ),
  )
}

async function openEmpty(): Promise<Studio> {
  return openStudio(testSettings(path.join(await tempFolder(), 'other')))
}

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'repslate-test-'))
  home = await openStudio(testSettings(path.join(folder, 'studio')))
  recordingId = (await seedSmallClass(home)).recordingId
  const { failed } = await publishLessons(home, { recordingId })
  expect(failed).toEqual([])
  made = await exportRecording(home, { recordingId, file: path.join(folder, 'lessons.zip') })
  manifest = ExportList.parse(
    JSON.parse(
      execFileSync('python3', [
        '-c',
        'import zipfile,sys;print(zipfile.ZipFile(sys.argv[1]).read("manifest.json").decode())',
        made.file,
      ]).toString(),
    ),
  )
})
afterAll(async () => {
  await home?.close()
  await rm(folder, { recursive: true, force: true })
})

describe('an export', () => {
  it('holds every file that its manifest names, with its sum, and nothing else', () => {
    const files = readByPython(made.file)
    files.delete('manifest.json')
    expect([...files].sort()).toEqual(manifest.files.map(({ name, sha256 }) => [name, sha256]).sort())
    expect(manifest.lessons).toHaveLength(4)
  })

  it('does not write over a file', async () => {
    await expect(exportRecording(home, { recordingId, file: made.file })).rejects.toMatchObject({
      code: 'out-not-writable',
    })
  })

  it('of a class without lessons is refused', async () => {
    const other = await openEmpty()
    const file = path.join(folder, 'none.zip')
    const { recordingId: unpublished } = await seedSmallClass(other)
    await expect(exportRecording(other, { recordingId: unpublished, file })).rejects.toMatchObject({
      code: 'row-missing',
    })
    expect(existsSync(file)).toBe(false)
    await other.close()
  })
})

describe('taken in elsewhere', () => {
  it('shows the same lessons, and a second time changes nothing', async () => {
    const other = await openEmpty()
    try {
      const first = await importExport(other, { file: made.file })
      expect([first.lessons.length, first.held, first.known]).toEqual([4, [], []])
      const here = await home.store.lessons.list(['published'])
      const there = await other.store.lessons.list(['published'])
      expect(there.map(({ slug }) => slug).sort()).toEqual(here.map(({ slug }) => slug).sort())
      for (const { id, slug, current } of there) {
        const source = here.find((one) => one.slug === slug)
        expect(current?.lesson.dose).toEqual(source?.current?.lesson.dose)
        expect(current?.lesson.cautions).toEqual(source?.current?.lesson.cautions)
        const clip = readFileSync(other.storage.path(`lessons/${id}/${current?.version ?? 0}/clip.mp4`))
        expect(hashBytes(clip)).toBe(source?.current?.lesson.clip.sha256)
      }
      const again = await importExport(other, { file: made.file })
      expect([again.recordingId, again.lessons, again.known.length]).toEqual([null, [], 4])
      expect(await other.store.lessons.list(['published'])).toEqual(there)
    } finally {
      await other.close()
    }
  })
})

/** An archive of the parts of a good one, changed. */
async function changed(
  change: (parts: Map<string, Buffer>) => void,
  add?: (zip: yazl.ZipFile) => void,
): Promise<string> {
  const unpacked = await tempFolder()
  execFileSync('python3', ['-m', 'zipfile', '-e', made.file, unpacked])
  const names = ['manifest.json', ...manifest.files.map(({ name }) => name)]
  const parts = new Map(names.map((name) => [name, readFileSync(path.join(unpacked, name))]))
  change(parts)
  const zip = new yazl.ZipFile()
  for (const [name, bytes] of parts) zip.addBuffer(bytes, name)
  add?.(zip)
  zip.end()
  const chunks: Buffer[] = []
  for await (const chunk of zip.outputStream) chunks.push(chunk as Buffer)
  const file = path.join(unpacked, 'changed.zip')
  writeFileSync(file, Buffer.concat(chunks))
  return file
}

const clipOf = (parts: Map<string, Buffer>): string => [...parts.keys()].find((name) => name.endsWith('clip.mp4')) ?? ''

describe('refused, and nothing is kept', () => {
  it.each<[string, () => Promise<string>]>([
    ['no archive', () => Promise.resolve(path.resolve('package.json'))],
    [
      'an archive cut short',
      async () => {
        const file = path.join(await tempFolder(), 'short.zip')
        writeFileSync(file, readFileSync(made.file).subarray(0, made.bytes >> 1))
        return file
      },
    ],
    [
      'a clip with one byte changed',
      () =>
        changed((parts) => {
          const name = clipOf(parts)
          const bytes = Buffer.from(parts.get(name) ?? '')
          bytes[bytes.length >> 1] = (bytes[bytes.length >> 1] ?? 0) ^ 1
          parts.set(name, bytes)
        }),
    ],
    ['a clip that is missing', () => changed((parts) => parts.delete(clipOf(parts)))],
    ['no manifest', () => changed((parts) => parts.delete('manifest.json'))],
    ['a manifest of nonsense', () => changed((parts) => parts.set('manifest.json', Buffer.from('{"lessons":7}')))],
    [
      'a file that no export has',
      () =>
        changed(
          () => undefined,
          (zip) => zip.addBuffer(Buffer.from('x'), 'extra.sh'),
        ),
    ],
    [
      'a link',
      () =>
        changed(
          () => undefined,
          (zip) => zip.addBuffer(Buffer.from('/etc/passwd'), 'lessons/x/clip.mp4', { mode: 0o120777 }),
        ),
    ],
    [
      'a folder',
      () =>
        changed(
          () => undefined,
          (zip) => zip.addEmptyDirectory('lessons/y'),
        ),
    ],
    [
      'a name that climbs out',
      async () => {
        const file = await changed(
          () => undefined,
          (zip) => zip.addBuffer(Buffer.from('x'), 'aa/bb/evil.txt'),
        )
        const bytes = readFileSync(file)
        writeFileSync(
          file,
          Buffer.from(bytes.toString('latin1').replaceAll('aa/bb/evil.txt', '../../evil.txt'), 'latin1'),
        )
        return file
      },
    ],
    ['more than it says', () => changed((parts) => parts.set('log-sheet.json', Buffer.alloc(50_000_000, 32)))],
  ])('%s', async (_what, makeFile) => {
    const other = await openEmpty()
    try {
      await expect(importExport(other, { file: await makeFile() })).rejects.toMatchObject({ code: 'archive-wrong' })
      expect(await other.store.lessons.list()).toEqual([])
      expect(await other.store.recordings.list()).toEqual([])
      const work = path.join(other.dataFolder, 'work')
      expect(existsSync(work) ? readdirSync(work) : []).toEqual([])
    } finally {
      await other.close()
    }
  })
})
