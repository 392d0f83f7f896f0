/**
 * Rebuilds everything in this folder: the demo class with its transcripts, the small measuring film, and SAMPLES.json.
 *
 *   node media-samples/make-samples.mjs              all of it (about ten minutes on two cores)
 *   node media-samples/make-samples.mjs transcript   only the two transcripts; also: class, small, record
 *
 * Needs the Debian packages ffmpeg, festival, festvox-us-slt-hts and fonts-cabin, and this project's development packages:
 *   apt-get install --no-install-recommends ffmpeg festival festvox-us-slt-hts fonts-cabin
 * The same versions give the same bytes; another encoder may not, which SAMPLES.json then shows.
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { planClass } from './recipe/plan-class.mjs'
import { buildRecord } from './recipe/record-samples.mjs'
import { renderClass } from './recipe/render-class.mjs'
import { renderSmall } from './recipe/render-small.mjs'
import { parts } from './recipe/script.mjs'
import { layTrack, sampleRate, speak } from './recipe/voice.mjs'
import { writeBlocks, writeVtt } from './recipe/write-transcript.mjs'

const here = fileURLToPath(new URL('.', import.meta.url))
const folder = join(tmpdir(), 'repslate-samples')
const wanted = process.argv.slice(2)
const wants = (step) => wanted.length === 0 || wanted.includes(step)
const tell = (text) => process.stdout.write(`${text}\n`)

mkdirSync(folder, { recursive: true })
tell('saying every sentence')
const texts = parts.flatMap((part) =>
  part.lines.flatMap((line) => (Array.isArray(line) ? [line[0]] : (line.count ?? []))),
)
const voices = speak(texts, join(folder, 'voice'))
const voiceOf = (text) => voices.get(text) ?? new Float32Array(0)
const plan = planClass(parts, (text) => Math.ceil((voiceOf(text).length * 1000) / sampleRate))

if (wants('transcript')) {
  writeFileSync(join(here, 'steady-and-strong.vtt'), writeVtt(plan.sentences))
  writeFileSync(join(here, 'steady-and-strong.txt'), writeBlocks(plan.sentences))
  tell(`transcripts: ${plan.sentences.length} sentences, ${plan.durationMs / 1000} s`)
}
if (wants('small')) {
  tell('the small measuring film')
  await renderSmall({ folder, file: join(here, 'small-class.mp4') })
}
if (wants('class')) {
  tell('the demo class')
  const track = layTrack(
    plan.sounds.map(({ startMs, text }) => ({ startMs, samples: voiceOf(text) })),
    plan.durationMs,
  )
  await renderClass({ plan, track, rate: sampleRate, folder, file: join(here, 'steady-and-strong.mp4'), tell })
}
if (wants('record')) {
  writeFileSync(join(here, 'SAMPLES.json'), `${JSON.stringify(buildRecord(here, plan), null, 2)}\n`)
  tell('SAMPLES.json')
}
