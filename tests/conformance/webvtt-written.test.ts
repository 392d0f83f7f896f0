// No file we write has an error for an independent reader: the package webvtt-parser, used whole, and ffprobe.
import { execFile } from 'node:child_process'
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import os from 'node:os'
import path from 'node:path'
import { promisify } from 'node:util'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildCaptions } from '../../core/captions/build-captions.ts'
import { writeVtt } from '../../core/captions/write-vtt.ts'
import { flattenChapters } from '../../core/chapters/flatten-chapters.ts'
import { writeChaptersVtt } from '../../core/chapters/write-chapters-vtt.ts'
import { writeFfmetadata } from '../../core/chapters/write-ffmetadata.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import type { Transcript } from '../../shared/transcript.ts'
import { captionLists, chapterLists } from '../helpers/caption-cases.ts'

interface Parsed {
  cues: { startTime: number; endTime: number }[]
  errors: { message: string; line: number }[]
}
interface WebVttParser {
  parse(text: string, mode?: 'chapters' | 'metadata'): Parsed
}
const require = createRequire(import.meta.url)
const { WebVTTParser } = require('webvtt-parser') as { WebVTTParser: new (entities: unknown) => WebVttParser }
const parser = new WebVTTParser(require('webvtt-parser/html-entities.json'))

const ms = ({ startTime, endTime }: Parsed['cues'][number]) => [
  Math.round(startTime * 1000),
  Math.round(endTime * 1000),
]

describe('webvtt-parser', () => {
  it('any captions', () => {
    fc.assert(
      fc.property(captionLists, (cues) => {
        const { cues: read, errors } = parser.parse(writeVtt(cues))
        expect(errors).toEqual([])
        expect(read.map(ms)).toEqual(cues.map((cue) => [cue.startMs, cue.endMs]))
      }),
      { numRuns: 1000 },
    )
  })

  it('any chapters, read as chapters', () => {
    fc.assert(
      fc.property(chapterLists, (chapters) => {
        const { cues, errors } = parser.parse(writeChaptersVtt(chapters), 'chapters')
        expect(errors).toEqual([])
        expect(cues.map(ms)).toEqual(chapters.map((one) => [one.startMs, one.endMs]))
      }),
      { numRuns: 500 },
    )
  })
})

const run = promisify(execFile)
const ffprobe = process.env['REPSLATE_FFPROBE'] ?? 'ffprobe'

describe('ffprobe', () => {
  let folder = ''
  beforeAll(async () => {
    folder = await mkdtemp(path.join(os.tmpdir(), 'vtt-written-'))
  })
  afterAll(() => rm(folder, { recursive: true, force: true }))

  /** It exits with 0 on broken files too, so what counts is what it read. */
  const probe = async (name: string, text: string, ...show: string[]): Promise<Record<string, unknown[]>> => {
    const file = path.join(folder, name)
    await writeFile(file, text)
    const { stdout } = await run(ffprobe, ['-v', 'error', '-of', 'json', ...show, file], { maxBuffer: 1 << 26 })
    return JSON.parse(stdout) as Record<string, unknown[]>
  }

  it('reads every caption of a class', async () => {
    const text = await readFile(
      path.resolve(import.meta.dirname, '../fixtures/corpus/dev/05-hiit-circuit/transcript.txt'),
      'utf8',
    )
    const cues = buildCaptions(parseTranscript(text) as Transcript)
    const { packets } = await probe('class.vtt', writeVtt(cues), '-show_packets')
    expect(packets?.length).toBe(cues.length)
    const times = packets as { pts: number; duration: number }[]
    expect(times.map(({ pts, duration }) => [pts, pts + duration])).toEqual(cues.map((cue) => [cue.startMs, cue.endMs]))
  })

  it('reads every caption of nasty files', async () => {
    for (const cues of fc.sample(captionLists, { numRuns: 25, seed: 7 })) {
      if (cues.length === 0) continue
      const { packets } = await probe('nasty.vtt', writeVtt(cues), '-show_packets')
      expect(packets?.length).toBe(cues.length)
    }
  })

  it('reads chapters of ffmetadata as they were', async () => {
    for (const chapters of fc.sample(chapterLists, { numRuns: 25, seed: 7 })) {
      const read = await probe('chapters.txt', writeFfmetadata(chapters), '-f', 'ffmetadata', '-show_chapters')
      const rows = (read['chapters'] ?? []) as { start: number; end: number; tags?: { title?: string } }[]
      expect(rows.map((row) => [row.start, row.end, row.tags?.title])).toEqual(
        flattenChapters(chapters).map((one) => [one.startMs, one.endMs, one.title.replace(/\s+/g, ' ')]),
      )
    }
  })
})
