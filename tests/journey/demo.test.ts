// The demo as a stranger runs it: from one recording to lessons that play in a browser with their captions, and a studio
// that is open with the same class in it.
import { spawn } from 'node:child_process'
import { createReadStream, existsSync } from 'node:fs'
import { mkdtemp, readFile, readdir, rm, stat, writeFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { ALL_FORMATS, EncodedPacketSink, FilePathSource, Input } from 'mediabunny'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readVtt } from '../../core/captions/read-vtt.ts'
import { Lesson, Library } from '../../shared/lesson.ts'
import { Manifest } from '../../shared/manifest.ts'
import { openClient } from '../helpers/http-door.ts'
import { ffmpeg } from '../helpers/media-samples.ts'
import { probeText, readSound, soundLag } from '../helpers/media-reading.ts'
import { projectRoot } from '../helpers/source-files.ts'
import { vttErrors } from '../helpers/vtt-errors.ts'
import { openBrowser } from '../helpers/open-browser.ts'

let out: string
let first: Demo
let library: Library

const readJson = async (...parts: string[]): Promise<unknown> =>
  JSON.parse(await readFile(path.join(out, ...parts), 'utf8'))
const RECORDING = path.join(projectRoot, 'media-samples', 'steady-and-strong.mp4')

/** Each lesson with its folder. */
const allLessons = (): Promise<{ folder: string; lesson: Lesson; clip: string }[]> =>
  Promise.all(
    library.lessons.map(async ({ folder }) => {
      const lesson = Lesson.parse(await readJson(folder, 'lesson.json'))
      return { folder: path.join(out, folder), lesson, clip: path.join(out, folder, lesson.clip.file) }
    }),
  )

interface Demo {
  stdout: string
  stderr: string
  /** Of the studio, once it is open. */
  url: string
  /** Ends it as Ctrl-C does. @returns its exit code */
  end: () => Promise<number | null>
}

/** Runs the demo until its studio is open. */
function runDemo(): Promise<Demo> {
  const command = path.join(projectRoot, 'server', 'cli', 'repslate.mjs')
  const env = { ...process.env, REPSLATE_DATA: path.join(out, 'studio'), REPSLATE_PORT: '0' }
  const child = spawn(process.execPath, [command, 'demo', '--out', out], { env, stdio: ['ignore', 'pipe', 'pipe'] })
  const ended = new Promise<number | null>((resolve) => child.once('close', resolve))
  const end = (): Promise<number | null> => {
    child.kill('SIGINT')
    return ended
  }
  let stdout = ''
  let stderr = ''
  child.stderr.setEncoding('utf8').on('data', (text: string) => (stderr += text))
  return new Promise((resolve, reject) => {
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      stdout += text
      const [, url] = /^Open (http\S+) in a browser\.$[^]*\n\n$/m.exec(stdout) ?? []
      if (url !== undefined) resolve({ stdout, stderr, url, end })
    })
    void ended.then((code) => reject(new Error(`the demo ended with ${code}: ${stderr}`)))
  })
}

beforeAll(async () => {
  out = await mkdtemp(path.join(tmpdir(), 'repslate-demo-'))
  first = await runDemo()
  library = Library.parse(await readJson('library.json'))
})
afterAll(async () => {
  await first?.end()
  await rm(out, { recursive: true, force: true })
})

describe('the demo', () => {
  it('goes well and publishes at least seven lessons', () => {
    expect(first.stderr).not.toContain('fault')
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
    for (const { folder, lesson, clip } of await allLessons()) {
      const { slug } = lesson
      const planned = manifest.clips.find(({ segmentId }) => segmentId === lesson.from.segmentId)
      const packets = probeText(clip, [
        '-count_packets',
        '-select_streams',
        'v:0',
        '-show_entries',
        'stream=nb_read_packets',
      ])
      expect(Number.parseInt(packets, 10), slug).toBe(planned?.frames)
      const chapters = await readFile(path.join(folder, lesson.chapters), 'utf8')
      const captions = await readFile(path.join(folder, lesson.captions), 'utf8')
      expect(vttErrors(chapters, 'chapters'), slug).toEqual([])
      expect(vttErrors(captions, 'captions'), slug).toEqual([])
      expect(readVtt(captions).cues.length, slug).toBeGreaterThan(0)
      const embedded = probeText(clip, ['-show_entries', 'chapter=start']).trim().split('\n')
      expect(embedded.length, slug).toBe(readVtt(chapters).cues.length)
      expect(lesson.dose?.text, slug).toBeTruthy()
      expect(lesson.notice).toContain('no medical advice')
      expect((await stat(path.join(folder, 'poster.jpg'))).size).toBeGreaterThan(1000)
      expect(await readFile(path.join(folder, lesson.description), 'utf8')).toContain(lesson.dose?.text)
    }
  })

  it('starts every clip on the very frame of its mark', async () => {
    for (const { lesson, clip } of await allLessons()) {
      const startMs = lesson.from.spans[0]?.startMs ?? NaN
      const likeness = (atMs: number) => psnr(firstFrame(clip, 0), firstFrame(RECORDING, atMs))
      const [before, here, after] = [likeness(startMs - 40), likeness(startMs), likeness(startMs + 40)]
      expect(here, lesson.slug).toBeGreaterThan(35)
      expect(here, lesson.slug).toBeGreaterThanOrEqual(Math.max(before, after) - 0.01)
    }
  })

  it('keeps the sound within 1 ms of the recording, at three places of every clip', async () => {
    const recording = readSound(RECORDING)
    for (const { lesson, clip } of await allLessons()) {
      const sound = readSound(clip)
      const fromMs = lesson.from.spans[0]?.startMs ?? NaN
      const lengthMs = (lesson.from.spans[0]?.endMs ?? NaN) - fromMs
      for (const third of [0, 1, 2]) {
        const atMs = loudestMoment(sound, (lengthMs * third) / 3, (lengthMs * (third + 1)) / 3)
        const lag = soundLag(sound, atMs / 1000, recording, (fromMs + atMs) / 1000)
        expect(Math.abs(lag.samples), `${lesson.slug} at ${atMs} ms`).toBeLessThanOrEqual(48)
        expect(lag.correlation, `${lesson.slug} at ${atMs} ms`).toBeGreaterThan(0.9)
      }
    }
  })

  it('gives clips that an independent MP4 reader reads', async () => {
    for (const { lesson, clip } of await allLessons()) {
      const input = new Input({ formats: ALL_FORMATS, source: new FilePathSource(clip) })
      const [video, audio] = [await input.getPrimaryVideoTrack(), await input.getPrimaryAudioTrack()]
      expect([video?.codec, audio?.codec], lesson.slug).toEqual(['avc', 'aac'])
      const first = video && (await new EncodedPacketSink(video).getFirstPacket())
      expect(first?.timestamp, lesson.slug).toBe(0)
      expect(Math.abs((await input.computeDuration()) * 1000 - lesson.clip.durationMs), lesson.slug).toBeLessThan(50)
      input.dispose()
    }
  })

  it('plays every lesson in Chromium, with its captions and chapters as written', async () => {
    const server = createServer((request, response) => {
      const file = path.join(out, path.normalize(decodeURIComponent(request.url ?? '/')))
      const types: Record<string, string> = { '.mp4': 'video/mp4', '.vtt': 'text/vtt', '.html': 'text/html' }
      response.writeHead(existsSync(file) ? 200 : 404, { 'content-type': types[path.extname(file)] ?? 'text/plain' })
      if (existsSync(file)) createReadStream(file).pipe(response)
      else response.end()
    })
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
    const browser = await openBrowser()
    try {
      for (const { folder, lesson } of await allLessons()) {
        const page = await browser.newPage()
        const base = `http://127.0.0.1:${(server.address() as AddressInfo).port}/lessons/${path.basename(folder)}`
        await writeFile(path.join(folder, 'play.html'), PLAYER)
        await page.goto(`${base}/play.html`)
        const shown = await page.evaluate(playLesson)
        await rm(path.join(folder, 'play.html'))
        expect(shown.error, lesson.slug).toBeNull()
        expect(shown.playedTo, lesson.slug).toBeGreaterThan(0.3)
        expect(Math.abs(shown.duration * 1000 - lesson.clip.durationMs), lesson.slug).toBeLessThan(60)
        const cues = readVtt(await readFile(path.join(folder, lesson.captions), 'utf8')).cues
        expect(shown.captions, lesson.slug).toEqual(
          cues.map(({ startMs, endMs, lines }) => ({ startMs, endMs, text: lines.join('\n') })),
        )
        const chapters = readVtt(await readFile(path.join(folder, lesson.chapters), 'utf8')).cues
        expect(shown.chapters, lesson.slug).toEqual(
          chapters.map(({ startMs, endMs, lines }) => ({ startMs, endMs, text: lines.join('\n') })),
        )
        await page.close()
      }
    } finally {
      await browser.close()
      server.close()
    }
  })

  it('leaves no part file', async () => {
    const names = await readdir(out, { recursive: true })
    expect(names.filter((name) => /\.part$|\.part\/|\.old$/.test(name))).toEqual([])
  })

  it('opens the studio with the class on its shelf and the same lessons in its library', async () => {
    const { ask } = openClient(first.url)
    expect((await ask('/')).text).toContain('Steady and Strong: chair class')
    const shown = (await ask('/library')).text
    for (const { lesson, clip } of await allLessons()) {
      expect(shown).toContain(`href="/lessons/${lesson.slug}"`)
      const { status, body } = await ask(`/lessons/${lesson.slug}/clip.mp4`)
      expect([status, body.equals(await readFile(clip))], lesson.slug).toEqual([200, true])
    }
    const publish = /\S+\/recordings\/\w+\/publish/.exec(first.stdout)?.[0] ?? ''
    expect((await ask(publish)).text).toContain(`Held back (${String(library.heldBack.length)})`)
  })

  it('can be run again while it is open: nothing is cut or published twice; both end well', async () => {
    const before = Manifest.parse(await readJson('cut', 'manifest.json'))
    const second = await runDemo()
    const after = Manifest.parse(await readJson('cut', 'manifest.json'))
    const withoutPort = ({ stdout }: Demo): string => stdout.replace(/127\.0\.0\.1:\d+/g, '')
    expect(withoutPort(second)).toBe(withoutPort(first))
    expect(after.clips.map(({ reused }) => reused)).toEqual(before.clips.map(() => true))
    expect(after.clips.map(({ sha256 }) => sha256)).toEqual(before.clips.map(({ sha256 }) => sha256))
    const { text } = await openClient(second.url).ask('/library')
    expect(text.match(/class="card-name"/g)).toHaveLength(library.lessons.length)
    expect([await second.end(), await first.end()]).toEqual([0, 0])
  })
})

const PLAYER = `<!doctype html><title>Lesson</title><video muted src="clip.mp4">
<track kind="captions" src="captions.en.vtt" srclang="en" default><track kind="chapters" src="chapters.vtt" srclang="en"></video>`

/** Runs in the page: loads both tracks, plays for half a second, and tells what is there. */
async function playLesson() {
  const video = document.querySelector('video') as HTMLVideoElement
  const read = (track: HTMLTrackElement) =>
    new Promise<{ startMs: number; endMs: number; text: string }[]>((resolve, reject) => {
      const done = () =>
        resolve(
          [...(track.track.cues ?? [])].map((cue) => ({
            startMs: Math.round(cue.startTime * 1000),
            endMs: Math.round(cue.endTime * 1000),
            text: (cue as VTTCue).getCueAsHTML().textContent ?? '',
          })),
        )
      track.track.mode = 'hidden'
      if (track.readyState === 2) done()
      track.addEventListener('load', done)
      track.addEventListener('error', () => reject(new Error('a track does not load')))
    })
  const [captions, chapters] = await Promise.all([...document.querySelectorAll('track')].map(read))
  await video.play()
  await new Promise<void>((resolve) => {
    video.addEventListener('timeupdate', () => {
      if (video.currentTime > 0.3) resolve()
    })
  })
  video.pause()
  return {
    captions,
    chapters,
    duration: video.duration,
    playedTo: video.currentTime,
    error: video.error?.message ?? null,
  }
}

/** The picture at a moment, small and grey, as bytes. The frame whose time is nearest after the moment less half a frame. */
function firstFrame(file: string, atMs: number): Buffer {
  const seek = atMs > 0 ? ['-ss', ((atMs - 20) / 1000).toFixed(3)] : []
  return ffmpeg([...seek, '-i', file, '-map', '0:v:0', '-frames:v', '1', '-pix_fmt', 'gray', '-f', 'rawvideo', '-'])
}

/** Peak signal-to-noise ratio of two grey pictures, dB. */
function psnr(a: Buffer, b: Buffer): number {
  let sum = 0
  for (let i = 0; i < a.length; i += 1) sum += ((a[i] ?? 0) - (b[i] ?? 0)) ** 2
  return 10 * Math.log10(255 ** 2 / (sum / a.length || 1e-9))
}

/** Where the sound is loudest between two moments, ms, for a window of 50 ms. */
function loudestMoment(sound: Float32Array, fromMs: number, toMs: number): number {
  let best = { atMs: fromMs, energy: -1 }
  for (let atMs = fromMs + 20; atMs < toMs - 100; atMs += 25) {
    const from = Math.round(atMs * 48)
    let energy = 0
    for (let i = from; i < from + 2400; i += 8) energy += (sound[i] ?? 0) ** 2
    if (energy > best.energy) best = { atMs, energy }
  }
  return best.atMs
}
