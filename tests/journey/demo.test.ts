// The demo as a stranger runs it: from one recording to lessons that play in a browser with their captions.
import { execFile } from 'node:child_process'
import { readFile, readdir, stat } from 'node:fs/promises'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { promisify } from 'node:util'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readVtt } from '../../core/captions/read-vtt.ts'
import { Lesson, Library } from '../../shared/lesson.ts'
import { Manifest } from '../../shared/manifest.ts'
import { vttErrors } from '../helpers/vtt-errors.ts'
import { runCommand, type Ran } from '../helpers/run-command.ts'

const run = promisify(execFile)
let out: string
let first: Ran
let library: Library

const readJson = async (...parts: string[]): Promise<unknown> =>
  JSON.parse(await readFile(path.join(out, ...parts), 'utf8'))
const ffprobe = async (file: string, ...args: string[]) =>
  (await run('ffprobe', ['-v', 'error', ...args, file])).stdout.trim()

beforeAll(async () => {
  out = await mkdtemp(path.join(tmpdir(), 'repslate-demo-'))
  first = await runCommand(['demo', '--no-serve', '--out', out])
  library = Library.parse(await readJson('library.json'))
})
afterAll(() => rm(out, { recursive: true, force: true }))

describe('the demo', () => {
  it('ends well and publishes at least seven lessons', () => {
    expect(first.stderr).not.toContain('fault')
    expect(first.code).toBe(0)
    expect(library.lessons.length).toBeGreaterThanOrEqual(7)
  })

  it('holds back an exercise without a dose, one without a caution, one whose caution was said only at the start', () => {
    const reasons = library.heldBack.map(({ name, reasons }) => `${name}: ${reasons.join(' ')}`).join('\n')
    expect(library.heldBack.length).toBeGreaterThanOrEqual(3)
    expect(reasons).toMatch(/dose/i)
    expect(reasons).toMatch(/caution|warning/i)
    expect(reasons).toMatch(/outside/i)
  })

  it('waives nothing', async () => {
    expect(await readJson('log-sheet.json')).toMatchObject({ waivers: [] })
  })

  it('gives every lesson a clip of the planned frames, captions, chapters, a poster and a description', async () => {
    const manifest = Manifest.parse(await readJson('cut', 'manifest.json'))
    for (const { folder, slug } of library.lessons) {
      const lesson = Lesson.parse(await readJson(folder, 'lesson.json'))
      const clip = path.join(out, folder, lesson.clip.file)
      const planned = manifest.clips.find(({ segmentId }) => segmentId === lesson.from.segmentId)
      const frames = await ffprobe(
        clip,
        '-count_packets',
        '-select_streams',
        'v:0',
        '-show_entries',
        'stream=nb_read_packets',
        '-of',
        'csv=p=0',
      )
      expect(Number(frames.replace(/\D.*$/s, '')), slug).toBe(planned?.frames)
      for (const name of [lesson.captions, lesson.chapters]) {
        const text = await readFile(path.join(out, folder, name), 'utf8')
        const kind = name === lesson.chapters ? 'chapters' : 'captions'
        expect(vttErrors(text, kind), `${slug} ${name}`).toEqual([])
        expect(readVtt(text).cues.length, `${slug} ${name}`).toBeGreaterThan(0)
      }
      const chapters = await ffprobe(clip, '-show_entries', 'chapter=start', '-of', 'csv=p=0')
      expect(chapters.split('\n').length, slug).toBe(
        readVtt(await readFile(path.join(out, folder, lesson.chapters), 'utf8')).cues.length,
      )
      expect(lesson.dose?.text, slug).toBeTruthy()
      expect(lesson.notice).toContain('no medical advice')
      expect((await stat(path.join(out, folder, 'poster.jpg'))).size).toBeGreaterThan(1000)
      expect(await readFile(path.join(out, folder, lesson.description), 'utf8')).toContain(lesson.dose?.text)
    }
  })

  it('leaves no part file', async () => {
    const names = await readdir(out, { recursive: true })
    expect(names.filter((name) => /\.part$|\.part\/|\.old$/.test(name))).toEqual([])
  })

  it('can be run again, and cuts nothing twice', async () => {
    const before = Manifest.parse(await readJson('cut', 'manifest.json'))
    const second = await runCommand(['demo', '--no-serve', '--out', out])
    const after = Manifest.parse(await readJson('cut', 'manifest.json'))
    expect(second.code).toBe(0)
    expect(second.stdout).toBe(first.stdout)
    expect(after.clips.map(({ reused }) => reused)).toEqual(before.clips.map(() => true))
    expect(after.clips.map(({ sha256 }) => sha256)).toEqual(before.clips.map(({ sha256 }) => sha256))
  })
})
