// A file that pretends to be a recording opens no other file and no network address, under any name.
import { copyFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { announcesTooMuch } from '../../core/media/engine/find-false-size.ts'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import type { Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { openRecording } from '../../core/media/engine/open-recording.ts'
import { runFfmpeg } from '../../core/media/engine/run-ffmpeg.ts'
import type { ErrorCode } from '../../shared/errors.ts'
import { withLength, withTable } from '../helpers/false-boxes.ts'
import { ffmpeg, samplePath } from '../helpers/media-samples.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

let found: Ffmpeg
let canary: Server
let hits: string[] = []

beforeAll(async () => {
  found = await findFfmpeg()
  canary = createServer((request, response) => {
    hits.push(request.url ?? '')
    response.end()
  })
  await new Promise<void>((resolve) => canary.listen(0, '127.0.0.1', resolve))
})

afterAll(() => new Promise((resolve) => canary.close(resolve)))

const address = (): string => `http://127.0.0.1:${(canary.address() as AddressInfo).port}`

interface Trick {
  name: string
  content: (victim: string) => string | Buffer
  code: ErrorCode
}

const REFUSED: ErrorCode = 'recording-format'

/** Content of a file named lesson.mp4; `victim` is a real recording beside it, by absolute path. */
const TRICKS: Trick[] = [
  {
    name: 'a joining list that names its neighbour',
    content: () => 'ffconcat version 1.0\nfile victim.mp4\n',
    code: REFUSED,
  },
  {
    name: 'a joining list with an absolute path',
    content: (victim) => `ffconcat version 1.0\nfile ${victim}\n`,
    code: REFUSED,
  },
  { name: 'a playlist that names a file of this machine', content: (victim) => playlist(victim), code: REFUSED },
  { name: 'a playlist that names its neighbour', content: () => playlist('victim.mp4'), code: REFUSED },
  { name: 'a playlist that names a server', content: () => playlist(`${address()}/playlist.ts`), code: REFUSED },
  {
    name: 'a playlist that joins a server and a file',
    content: (victim) => playlist(`concat:${address()}/head.ts|file://${victim}`),
    code: REFUSED,
  },
  { name: 'a DASH description that names a server', content: () => dash(`${address()}/dash/`), code: REFUSED },
  {
    name: 'a session description',
    content: () =>
      'v=0\no=- 0 0 IN IP4 127.0.0.1\ns=x\nc=IN IP4 127.0.0.1\nt=0 0\nm=video 5004 RTP/AVP 96\na=rtpmap:96 H264/90000\n',
    code: REFUSED,
  },
  { name: 'subtitles (SRT)', content: () => '1\n00:00:00,000 --> 00:00:02,000\nHello\n', code: REFUSED },
  {
    name: 'subtitles (ASS)',
    content: () =>
      '[Script Info]\nScriptType: v4.00+\n\n[Events]\nFormat: Start, End, Text\nDialogue: 0:00:00.00,0:00:02.00,Hello\n',
    code: REFUSED,
  },
  { name: 'song text (LRC)', content: () => '[ti:Song]\n[00:01.00]First line\n[00:02.00]Second\n', code: REFUSED },
  { name: 'a chapter file', content: () => ';FFMETADATA1\ntitle=x\n', code: REFUSED },
  {
    name: 'a picture (PNG)',
    content: () => ffmpeg(['-f', 'lavfi', '-i', 'color=s=16x16', '-frames:v', '1', '-f', 'apng', '-']),
    code: REFUSED,
  },
  { name: 'text in base64', content: () => Buffer.from('exercise '.repeat(40)).toString('base64'), code: REFUSED },
  { name: 'plain text', content: () => 'This is no recording.\n'.repeat(50), code: REFUSED },
  { name: 'a web page', content: () => '<!doctype html><title>Sign in</title>', code: REFUSED },
  {
    name: 'raw sound (WAV)',
    content: () => ffmpeg(['-f', 'lavfi', '-i', 'sine=d=1', '-f', 'wav', '-']),
    code: REFUSED,
  },
]

describe.each(TRICKS)('a file that holds $name', ({ content, code }) => {
  it('is refused by the probe and by the engine, reads nothing else and leaves nothing', async () => {
    hits = []
    const folder = await tempFolder()
    const victim = join(folder, 'victim.mp4')
    copyFileSync(samplePath('cfr-30'), victim)
    const path = join(folder, 'lesson.mp4')
    writeFileSync(path, content(victim))
    await expect(openRecording(found, path)).rejects.toMatchObject({ name: 'AppError', code })
    const out = join(folder, 'out.part')
    await expect(copyThrough(path, out)).rejects.toMatchObject({
      name: 'AppError',
      code: expect.stringMatching(/^recording-(format|broken)$/) as string,
    })
    expect(existsSync(out)).toBe(false)
    expect(hits).toEqual([])
  })
})

/** Names that ffmpeg would read as something else than a file. */
const NAMES = [
  () => `${address()}/recording.mp4`,
  () => 'concat:one.mp4|two.mp4',
  () => 'shot%d.png',
  () => '-y.mp4',
  () => 'pipe:0',
  () => 'data:video/mp4;base64,AAAA',
  () => 'subfile,,start,0,end,100,,:victim.mp4',
  () => 'nul\0byte.mp4',
]

describe('a name that means something to ffmpeg', () => {
  it.each(NAMES)('is only ever the name of a file (%#)', async (name) => {
    hits = []
    await expect(openRecording(found, name())).rejects.toMatchObject({ name: 'AppError', code: 'file-missing' })
    expect(hits).toEqual([])
  })
})

/** Awkward names of real recordings. */
const REAL_NAMES = [
  '-y.mp4',
  'take %d of %03d.mp4',
  `it's "the" one; rm -rf $HOME & 'x'.mp4`,
  'line\nbreak.mp4',
  ' spaces  at both ends .mp4',
  'concat:one.mp4|two.mp4',
  'Übung – 体操 – تمرين.mov',
  'file:x.mp4',
  'http:',
  'no-ending',
  '[v]=,;\\:.mkv',
]

describe('a recording with an awkward name', () => {
  it.each(REAL_NAMES)('is read like any other: %s', async (name) => {
    const folder = await tempFolder()
    const path = join(folder, name)
    copyFileSync(samplePath('cfr-30'), path)
    expect((await openRecording(found, path)).index.frames).toHaveLength(480)
    const out = join(folder, 'out.part')
    await copyThrough(path, out)
    expect(existsSync(out)).toBe(true)
  })
})

describe('a file with too much in it', () => {
  it('of more than 64 streams is refused', async () => {
    const path = join(await tempFolder(), 'many.mp4')
    const maps = Array.from({ length: 70 }, () => ['-map', '0:a']).flat()
    ffmpeg(['-i', samplePath('cfr-30'), '-map', '0:v', ...maps, '-t', '0.2', '-c', 'copy', '-f', 'mp4', path])
    await expect(openRecording(found, path)).rejects.toMatchObject({ code: 'recording-format' })
  })

  it('of more pixels than 8K is refused', async () => {
    const path = join(await tempFolder(), 'wide.mp4')
    const picture = ['-f', 'lavfi', '-i', 'color=s=8192x4608:r=1:d=1', '-f', 'lavfi', '-i', 'sine=d=1']
    ffmpeg([...picture, '-c:v', 'libx264', '-preset', 'ultrafast', '-pix_fmt', 'yuv420p', '-f', 'mp4', path])
    await expect(openRecording(found, path)).rejects.toMatchObject({ code: 'recording-format' })
  })
})

describe('a picture that no camera films is refused', () => {
  it.each(['2x16000', '16000x2', '2x2', '16x360', '1000x100'])('%s', async (size) => {
    const path = join(await tempFolder(), 'odd.mkv')
    ffmpeg(['-f', 'lavfi', '-i', `color=s=${size}:r=1:d=1`, '-c:v', 'mjpeg', '-f', 'matroska', path])
    await expect(openRecording(found, path, { silent: true })).rejects.toMatchObject({
      code: 'recording-format',
      message: expect.stringContaining(`${size.replace('x', ' x ')}, which no camera films`) as string,
    })
  })

  it.each(['128x96', '320x90', '90x320'])('but not %s', async (size) => {
    const path = join(await tempFolder(), 'small.mkv')
    ffmpeg(['-f', 'lavfi', '-i', `color=s=${size}:r=1:d=1`, '-c:v', 'mjpeg', '-f', 'matroska', path])
    await expect(openRecording(found, path, { silent: true })).resolves.toMatchObject({ audio: null })
  })
})

describe('an MP4 that announces more than it holds', () => {
  const film = (): Buffer => readFileSync(samplePath('cfr-30'))
  it.each([
    ['a table of times', () => withTable(film(), 'stts', 0x3fff_ffff)],
    ['a table of places', () => withTable(film(), 'stco', 0x3fff_ffff)],
    ['a table of sizes', () => withTable(film(), 'stsz', 0x3fff_ffff)],
    ['a box in a box', () => withLength(film(), 'stco', 0xffff_fff0)],
    ['the head itself', () => withLength(film(), 'moov', 0xffff_fff0)],
    [
      'a head of 40 GB',
      () =>
        Buffer.concat([
          film().subarray(0, 32),
          Buffer.from('00000001', 'hex'),
          Buffer.from('moov'),
          Buffer.alloc(8, 9),
        ]),
    ],
  ])('%s', async (_what, content) => {
    const path = join(await tempFolder(), 'false.mp4')
    writeFileSync(path, content())
    expect(await announcesTooMuch(path)).toBe(true)
  })

  it.each(['cfr-30', 'faststart', 'no-sound', 'no-picture'] as const)('%s does not', async (name) => {
    expect(await announcesTooMuch(samplePath(name))).toBe(false)
  })

  it.each(['stts', 'stco'] as const)('is called damaged, not a want of memory (%s)', async (type) => {
    const path = join(await tempFolder(), 'false.mp4')
    writeFileSync(path, withTable(film(), type, 0x3fff_ffff))
    await expect(openRecording(found, path)).rejects.toMatchObject({ code: 'recording-broken', exitCode: 2 })
  })
})

function copyThrough(path: string, out: string): Promise<string[]> {
  return runFfmpeg(found, {
    doing: 'Copying',
    inputs: [{ path, options: [] }],
    outputs: [{ path: out, options: ['-map', '0', '-c', 'copy', '-f', 'matroska'] }],
    limits: { timeoutMs: 20_000, cpuSeconds: 20, maxBytes: 100_000_000 },
    expectMs: 1000,
  })
}

function playlist(entry: string): string {
  return `#EXTM3U\n#EXT-X-VERSION:3\n#EXT-X-TARGETDURATION:10\n#EXTINF:10,\n${entry}\n#EXT-X-ENDLIST\n`
}

function dash(base: string): string {
  return [
    '<?xml version="1.0"?>',
    '<MPD xmlns="urn:mpeg:dash:schema:mpd:2011" type="static" mediaPresentationDuration="PT10S" profiles="urn:mpeg:dash:profile:isoff-on-demand:2011">',
    `<BaseURL>${base}</BaseURL><Period><AdaptationSet mimeType="video/mp4"><Representation id="1" bandwidth="1"><BaseURL>a.mp4</BaseURL>`,
    '<SegmentBase indexRange="0-1"/></Representation></AdaptationSet></Period></MPD>',
  ].join('\n')
}
