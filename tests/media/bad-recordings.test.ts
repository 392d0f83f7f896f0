// A recording or sheet that cannot be cut is refused with its own error, and nothing is left behind.
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { cutRecording } from '../../server/actions/cut-recording.ts'
import type { CutRequest } from '../../server/actions/cut-recording.ts'
import type { ErrorCode } from '../../shared/errors.ts'
import type { LogSheet } from '../../shared/log-sheet.ts'
import { buildSegment, buildSheet, span } from '../helpers/build-sheet.ts'
import { probeText } from '../helpers/media-reading.ts'
import { samplePath } from '../helpers/media-samples.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

const SHEET = buildSheet({ durationMs: 16_000, segments: [buildSegment('a', 1, 3)] })

const part = (path: string, share: number): Buffer => {
  const bytes = readFileSync(path)
  return bytes.subarray(0, Math.floor(bytes.length * share))
}

/** Content of the recording; null = there is no file. */
const RECORDINGS: { name: string; content: () => Buffer | string | null; code: ErrorCode }[] = [
  { name: 'that is not there', content: () => null, code: 'file-missing' },
  { name: 'that is empty', content: () => '', code: 'recording-empty' },
  { name: 'of one byte', content: () => 'x', code: 'recording-format' },
  { name: 'that is text', content: () => 'Today we squat.\n'.repeat(100), code: 'recording-format' },
  { name: 'cut short before its index', content: () => part(samplePath('cfr-30'), 0.6), code: 'recording-broken' },
  { name: 'cut short after its index', content: () => part(samplePath('faststart'), 0.6), code: 'recording-broken' },
  {
    name: 'cut short within its first bytes',
    content: () => part(samplePath('cfr-30'), 0.0001),
    code: 'recording-broken',
  },
  { name: 'in Matroska, cut short', content: () => part(samplePath('mkv'), 0.5), code: 'recording-broken' },
  { name: 'without sound', content: () => readFileSync(samplePath('no-sound')), code: 'recording-no-sound' },
  { name: 'without picture', content: () => readFileSync(samplePath('no-picture')), code: 'recording-no-picture' },
]

describe.each(RECORDINGS)('a recording $name', ({ content, code }) => {
  it(`is refused as ${code}, before any folder is made`, async () => {
    const folder = await tempFolder()
    const recordingPath = join(folder, 'class.mp4')
    const bytes = content()
    if (bytes !== null) writeFileSync(recordingPath, bytes)
    await expectRefused({ recordingPath, sheet: SHEET, outDir: join(folder, 'new', 'out'), jobs: 1 }, code)
    expect(existsSync(join(folder, 'new'))).toBe(false)
  })
})

it('a folder in place of a recording is refused', async () => {
  const folder = await tempFolder()
  await expectRefused({ recordingPath: folder, sheet: SHEET, outDir: join(folder, 'out'), jobs: 1 }, 'recording-format')
})

/** Sheets that the recording of 16 s cannot serve, and a word of the detail that says why. */
const SHEETS: { name: string; sheet: LogSheet; says: RegExp }[] = [
  { name: 'a span without length', sheet: sheetOf({ spans: [span(2, 2)] }), says: /no length/ },
  { name: 'a span that ends before it starts', sheet: sheetOf({ spans: [span(3, 2)] }), says: /ends before it starts/ },
  { name: 'a span past the end', sheet: sheetOf({ spans: [span(10, 16.6)] }), says: /runs past the end/ },
  { name: 'a span after the end', sheet: sheetOf({ spans: [span(20, 30)] }), says: /starts after the end/ },
  {
    name: 'overlapping cut-outs',
    sheet: sheetOf({ spans: [span(1, 5)], cutOuts: [cut(2000, 3000), cut(2500, 3500)] }),
    says: /overlap/,
  },
  { name: 'a cut-out outside', sheet: sheetOf({ spans: [span(1, 5)], cutOuts: [cut(6000, 7000)] }), says: /outside/ },
  { name: 'nothing left', sheet: sheetOf({ spans: [span(1, 5)], cutOuts: [cut(0, 6000)] }), says: /leave nothing/ },
]

describe.each(SHEETS)('a sheet with $name', ({ sheet, says }) => {
  it('is refused before any folder is made, though another segment is right', async () => {
    const folder = await tempFolder()
    const outDir = join(folder, 'out')
    const error = await expectRefused({ recordingPath: samplePath('cfr-30'), sheet, outDir, jobs: 1 }, 'sheet-spans')
    expect(error.details.join('\n')).toMatch(says)
    expect(existsSync(outDir)).toBe(false)
  })
})

describe('what is near the edge of right', () => {
  it('a span up to half a second past the end is cut at the end', async () => {
    const sheet = sheetOf({ spans: [span(15, 16.5)] })
    const manifest = await cutRecording({
      recordingPath: samplePath('cfr-30'),
      sheet,
      outDir: await tempFolder(),
      jobs: 1,
    })
    expect(manifest.clips.at(-1)).toMatchObject({ frames: 30, spans: [{ startMs: 15_000, endMs: 16_000 }] })
  })

  it('a recording without sound is cut when asked, into clips without sound', async () => {
    const outDir = await tempFolder()
    const request = { recordingPath: samplePath('no-sound'), sheet: SHEET, outDir, jobs: 1, silent: true }
    const [clip] = (await cutRecording(request)).clips
    expect(clip).toMatchObject({ frames: 60, loudness: null })
    expect(probeText(join(outDir, clip?.file ?? ''), ['-show_entries', 'stream=codec_type']).trim()).toBe('video')
  })

  it('a sheet of another, longer recording is refused, one of a copy is not', async () => {
    const source = (durationMs: number) => ({ ...SHEET, source: { sha256: '0'.repeat(64), durationMs } })
    const request = { recordingPath: samplePath('cfr-30'), jobs: 1 }
    const outDir = join(await tempFolder(), 'out')
    await expectRefused({ ...request, sheet: source(1_200_000), outDir }, 'sheet-recording')
    expect(existsSync(outDir)).toBe(false)
    const notes: string[] = []
    const onProgress: CutRequest['onProgress'] = ({ kind, label }) => {
      if (kind === 'note') notes.push(label)
    }
    expect((await cutRecording({ ...request, sheet: source(16_000), outDir, onProgress })).clips).toHaveLength(1)
    expect(notes).toHaveLength(1)
    const any = { ...request, sheet: source(1_200_000), outDir, anyRecording: true }
    expect((await cutRecording(any)).clips[0]?.reused).toBe(true)
  })

  it('a sheet without lessons gives a manifest without clips', async () => {
    const sheet = buildSheet({
      segments: [
        buildSegment('kept', 1, 2, { use: 'keep' }),
        buildSegment('declined', 1, 2, { state: 'declined' }),
        buildSegment('unplaced', 1, 2, { spans: [] }),
      ],
    })
    const manifest = await cutRecording({
      recordingPath: samplePath('cfr-30'),
      sheet,
      outDir: await tempFolder(),
      jobs: 1,
    })
    expect(manifest).toMatchObject({ clips: [], failed: [] })
  })
})

it('an out folder that is a file is refused', async () => {
  const folder = await tempFolder()
  const outDir = join(folder, 'taken')
  writeFileSync(outDir, 'mine')
  await expectRefused({ recordingPath: samplePath('cfr-30'), sheet: SHEET, outDir, jobs: 1 }, 'out-not-writable')
  expect(readFileSync(outDir, 'utf8')).toBe('mine')
})

function sheetOf(fields: Record<string, unknown>): LogSheet {
  return buildSheet({ durationMs: 16_000, segments: [buildSegment('right', 1, 2), buildSegment('odd', 0, 1, fields)] })
}

function cut(startMs: number, endMs: number) {
  return { startMs, endMs, why: '' }
}

async function expectRefused(request: CutRequest, code: ErrorCode): Promise<{ message: string; details: string[] }> {
  const error = await cutRecording(request).then(
    () => null,
    (reason: unknown) => reason,
  )
  expect(error).toMatchObject({ name: 'AppError', code })
  const { message, details } = error as { message: string; details: string[] }
  // a sentence that ends, and no memory address of ffmpeg's
  expect([message, ...details].join('\n')).not.toMatch(/0x[0-9a-f]{6}/)
  expect(message).toMatch(/[.?]$/)
  return { message, details }
}
