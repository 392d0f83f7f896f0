// The sample recordings are what SAMPLES.json says: sums, lengths, sizes, and everything the demo class holds on purpose.
import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import type { Ffmpeg } from '../../core/media/engine/find-ffmpeg.ts'

const folder = fileURLToPath(new URL('../../media-samples/', import.meta.url))
const readText = (file: string): string => readFileSync(folder + file, 'utf8')

const Stretch = z.object({ startMs: z.int(), endMs: z.int() })
const Exercise = Stretch.extend({
  name: z.string(),
  namedAtMs: z.int(),
  dose: z.string().nullable(),
  alsoAt: z.array(Stretch),
  cutOuts: z.array(Stretch),
})
const Planted = Stretch.extend({ feature: z.string(), exercise: z.string().nullable(), text: z.string() })
const Samples = z.object({
  files: z.array(
    z.object({
      file: z.string(),
      made: z.string(),
      recipe: z.string(),
      licence: z.string(),
      durationMs: z.int().nullable(),
      bytes: z.int(),
      sha256: z.string(),
    }),
  ),
  class: z.object({
    durationMs: z.int(),
    audience: z.array(z.string()),
    exercises: z.array(Exercise),
    ready: z.array(z.string()),
    heldBack: z.array(z.object({ exercise: z.string(), hazard: z.string().nullable(), why: z.string() })),
    planted: z.array(Planted),
  }),
})

const samples = Samples.parse(JSON.parse(readText('SAMPLES.json')))
const demo = samples.class
const sentences = readCues(readText('steady-and-strong.vtt'))

let programs: Ffmpeg

beforeAll(async () => {
  programs = await findFfmpeg()
})

describe('every sample file', () => {
  it.each(samples.files)('$file has the sum and size that are written down', ({ file, bytes, sha256 }) => {
    const content = readFileSync(folder + file)
    expect(content.length).toBe(bytes)
    expect(createHash('sha256').update(content).digest('hex')).toBe(sha256)
  })

  it.each(samples.files.filter(({ durationMs }) => durationMs !== null))(
    '$file lasts as long as is written down',
    ({ file, durationMs }) => {
      const seconds = Number(probe(file, ['-show_entries', 'format=duration', '-of', 'csv=p=0']))
      expect(Math.abs(seconds * 1000 - (durationMs ?? 0))).toBeLessThan(1)
    },
  )

  it('says how it was made and under which licence', () => {
    for (const { made, recipe, licence } of samples.files) {
      expect(made).toMatch(/^node media-samples\/make-samples\.mjs \w+$/)
      expect(recipe).toMatch(/^media-samples\/recipe\//)
      expect(licence).toMatch(/MIT/)
    }
  })
})

describe('the demo class', () => {
  it('is under 8 MB, 1280 x 720 at 25 frames a second, with one channel at 48 kHz', () => {
    const file = samples.files.find((sample) => sample.file === 'steady-and-strong.mp4')
    expect(file?.bytes).toBeLessThan(8_000_000)
    const facts = 'stream=codec_name,width,height,r_frame_rate,sample_rate,channels'
    const lines = probe('steady-and-strong.mp4', ['-show_entries', facts, '-of', 'csv=p=0']).split('\n')
    expect(lines).toEqual(['h264,1280,720,25/1', 'aac,48000,1,0/0'])
  })

  it('has a key frame at least every five seconds', () => {
    const skip = ['-skip_frame', 'nokey', '-select_streams', 'v', '-show_entries', 'frame=best_effort_timestamp_time']
    const shown = probe('steady-and-strong.mp4', [...skip, '-of', 'csv=p=0'])
    const times = [...readNumbers(shown), demo.durationMs / 1000]
    expect(times.length).toBeGreaterThan(80)
    const gaps = times.slice(1).map((time, index) => time - (times[index] ?? 0))
    expect(Math.max(...gaps)).toBeLessThanOrEqual(5)
  })

  it('has a transcript whose sentences are in order, do not overlap and lie inside the recording', () => {
    expect(sentences.length).toBeGreaterThan(100)
    let last = 0
    for (const { startMs, endMs } of sentences) {
      expect(startMs).toBeGreaterThanOrEqual(last)
      expect(endMs).toBeGreaterThan(startMs)
      last = endMs
    }
    expect(last).toBeLessThanOrEqual(demo.durationMs)
  })

  it('has a plain transcript with the same words, in blocks of 15 to 35 seconds that begin with a sentence', () => {
    const blocks = [...readText('steady-and-strong.txt').matchAll(/^\[(\d+):(\d\d)\] (.+)$/gm)].map(
      ([, minutes, seconds, text]) => ({ atSecond: Number(minutes) * 60 + Number(seconds), text: text ?? '' }),
    )
    expect(blocks.map(({ text }) => text).join(' ')).toBe(sentences.map(({ text }) => text).join(' '))
    const starts = new Set(sentences.map(({ startMs }) => Math.floor(startMs / 1000)))
    blocks.forEach(({ atSecond }, index) => {
      expect(starts).toContain(atSecond)
      const length = (blocks[index + 1]?.atSecond ?? demo.durationMs / 1000) - atSecond
      expect(length).toBeGreaterThanOrEqual(14)
      expect(length).toBeLessThanOrEqual(35)
    })
  })

  it('speaks when the transcript says so: after every longer pause the sound begins with the sentence', () => {
    const onsets = speechOnsets('steady-and-strong.mp4')
    const afterPause = sentences.filter(({ startMs }, index) => startMs - (sentences[index - 1]?.endMs ?? 0) >= 800)
    expect(afterPause.length).toBeGreaterThan(30)
    const misses = afterPause.filter(({ startMs }) => !onsets.some((onset) => Math.abs(onset - startMs) <= 120))
    expect(misses.map(({ text }) => text)).toEqual([])
  })

  it('teaches eleven exercises, each named at its time', () => {
    expect(demo.exercises).toHaveLength(11)
    for (const { name, namedAtMs } of demo.exercises) {
      const said = sentences.find(({ startMs }) => startMs === namedAtMs)
      expect(said?.text.toLowerCase()).toContain(name.toLowerCase())
    }
  })

  it('announces every exercise in order before the first is taught', () => {
    const announced = planted('routine-announced').map(({ text }) => text.toLowerCase())
    const line = announced.join(' ')
    const places = demo.exercises.map(({ name }) => line.indexOf(name.toLowerCase()))
    expect(Math.min(...places)).toBeGreaterThanOrEqual(0)
    expect(places).toEqual([...places].sort((one, two) => one - two))
  })

  it('has exercises that do not overlap, with their returns and cut-outs in place', () => {
    const spans = demo.exercises.flatMap(({ startMs, endMs, alsoAt }) => [{ startMs, endMs }, ...alsoAt])
    spans.sort((one, two) => one.startMs - two.startMs)
    spans.slice(1).forEach((span, index) => expect(span.startMs).toBeGreaterThanOrEqual(spans[index]?.endMs ?? 0))
    for (const { startMs, endMs, cutOuts } of demo.exercises) {
      for (const cut of cutOuts) expect(cut.startMs >= startMs && cut.endMs <= endMs).toBe(true)
    }
  })

  it('has at least eight exercises ready, each with a dose, and three held back, each for another reason', () => {
    expect(demo.ready.length).toBeGreaterThanOrEqual(8)
    for (const name of demo.ready) expect(exercise(name).dose, name).not.toBeNull()
    expect(demo.heldBack.map(({ exercise }) => exercise)).toEqual(['Sit to stand', 'Seated twist', 'Calf stretch'])
  })

  it.each([
    ['caution-only-at-the-start', null, /dizzy/],
    ['dose-changed-later', 'Knee extension', /I said ten earlier, make that eight/],
    ['returned-to', 'Heel raise', /second round/],
    ['slip', 'Seated row', /sorry, let me start that again/],
    ['right-side', 'Side leg lift', /right leg/],
    ['left-side', 'Side leg lift', /lift the left/],
    ['right-side', 'Knee extension', /Right leg/],
    ['left-side', 'Knee extension', /left leg/],
    ['no-dose', 'Calf stretch', /eases off/],
    ['easier', 'Seated march', /easier/],
    ['harder', 'Seated march', /harder/],
    ['counting', 'Biceps curl', /One, two, three/],
    ['joke', 'Biceps curl', /peaches/],
  ])('holds %s (%s), said at the time that is written down', (feature, name, words) => {
    const mark = planted(feature).find((one) => one.exercise === name && words.test(one.text))
    expect(mark).toBeDefined()
    expect(sentences).toContainEqual({ startMs: mark?.startMs, endMs: mark?.endMs, text: mark?.text })
  })

  it('says the dizziness caution once, and nothing of thin bones at all', () => {
    expect(sentences.filter(({ text }) => /dizz|faint|light-headed/i.test(text))).toHaveLength(1)
    expect(sentences.filter(({ text }) => /bone|osteop/i.test(text))).toEqual([])
  })

  it('says no number in the calf stretch', () => {
    const { startMs, endMs } = exercise('Calf stretch')
    const said = sentences.filter((sentence) => sentence.startMs >= startMs && sentence.endMs <= endMs)
    const numbers = /\b(one|two|three|four|five|six|seven|eight|nine|ten|\d+|twenty|thirty|minute|seconds?|times)\b/i
    expect(said.filter(({ text }) => numbers.test(text))).toEqual([])
  })

  it('uses no words that mean nothing without the rest of the class in an exercise that is ready', () => {
    const orphans = /like this|same as|as I showed|as before|like last time/i
    expect(sentences.filter(({ text }) => orphans.test(text))).toEqual([])
  })
})

describe('the small measuring film', () => {
  it('is under 1 MB and carries a stale title and chapter', () => {
    const file = samples.files.find((sample) => sample.file === 'small-class.mp4')
    expect(file?.bytes).toBeLessThan(1_000_000)
    expect(probe('small-class.mp4', ['-show_entries', 'format_tags=title', '-of', 'csv=p=0'])).toMatch(/do not publish/)
    expect(probe('small-class.mp4', ['-show_entries', 'chapter_tags=title', '-of', 'csv=p=0'])).toMatch(/Old chapter/)
  })

  it('shows the number of every one of its 720 frames in its bar code', () => {
    const luma = decode('small-class.mp4', ['-f', 'rawvideo', '-pix_fmt', 'gray'])
    const size = 640 * 360
    expect(luma.length).toBe(720 * size)
    const wrong = Array.from({ length: 720 }, (_, frame) => frame).filter(
      (frame) => readBarCode(luma.subarray(frame * size, (frame + 1) * size)) !== frame,
    )
    expect(wrong).toEqual([])
  })

  it('has key frames 250 frames apart and B-frames between', () => {
    const shown = probe('small-class.mp4', [
      '-select_streams',
      'v',
      '-show_entries',
      'frame=pict_type',
      '-of',
      'csv=p=0',
    ])
    const types = shown.match(/[IPB]/g) ?? []
    expect(types.flatMap((type, index) => (type === 'I' ? [index] : []))).toEqual([0, 250, 500])
    expect(types).toContain('B')
  })
})

function exercise(name: string): z.infer<typeof Exercise> {
  const found = demo.exercises.find((one) => one.name === name)
  if (!found) throw new Error(`SAMPLES.json has no exercise "${name}".`)
  return found
}

function planted(feature: string): z.infer<typeof Planted>[] {
  return demo.planted.filter((one) => one.feature === feature)
}

/** Reads our own one-line cues; the product's reader has tests of its own. */
function readCues(text: string): { startMs: number; endMs: number; text: string }[] {
  const pattern = /^(\d\d):(\d\d):(\d\d\.\d{3}) --> (\d\d):(\d\d):(\d\d\.\d{3})\n(.+)$/gm
  const toMs = (hours = '0', minutes = '0', seconds = '0'): number =>
    Math.round((Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)) * 1000)
  return [...text.matchAll(pattern)].map((part) => ({
    startMs: toMs(part[1], part[2], part[3]),
    endMs: toMs(part[4], part[5], part[6]),
    text: part[7] ?? '',
  }))
}

function probe(file: string, args: string[]): string {
  return execFileSync(programs.ffprobe, ['-v', 'error', ...args, folder + file], { encoding: 'utf8' }).trim()
}

function decode(file: string, args: string[]): Buffer {
  const all = ['-nostdin', '-v', 'error', '-i', folder + file, ...args, 'pipe:1']
  return execFileSync(programs.ffmpeg, all, { maxBuffer: 400_000_000 })
}

/** Numbers at the start of lines; ffprobe puts empty lines between where a frame carries side data. */
function readNumbers(lines: string): number[] {
  return [...lines.matchAll(/^\d[\d.]*/gm)].map(([number]) => Number(number))
}

/** Ends of silences in ms: 10 ms windows at 32 kHz, speech where the level passes 1 % of full scale after 300 ms below it. */
function speechOnsets(file: string): number[] {
  const bytes = decode(file, ['-vn', '-ac', '1', '-ar', '32000', '-f', 's16le'])
  const onsets: number[] = []
  let quiet = 30
  for (let window = 0; (window + 1) * 640 <= bytes.length; window++) {
    let peak = 0
    for (let at = window * 640; at < (window + 1) * 640; at += 2) peak = Math.max(peak, Math.abs(bytes.readInt16LE(at)))
    if (peak < 328) quiet++
    else {
      if (quiet >= 30) onsets.push(window * 10)
      quiet = 0
    }
  }
  return onsets
}

/** 16 cells of 36 pixels from x 32, read at their middles: 15 bits of the number, then even parity. */
function readBarCode(luma: Buffer): number | null {
  const bits = Array.from({ length: 16 }, (_, cell) => ((luma[320 * 640 + 32 + cell * 36 + 18] ?? 0) > 127 ? 1 : 0))
  const ones = bits.reduce<number>((sum, bit) => sum + bit, 0)
  return ones % 2 === 0 ? bits.slice(0, 15).reduce<number>((number, bit) => number * 2 + bit, 0) : null
}
