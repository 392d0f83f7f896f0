/**
 * The teacher's voice: one sound file a sentence from the speech program festival, and the whole track made of them.
 *
 * Offers `speak` (texts to trimmed samples), `layTrack` (samples on a timeline over room tone) and `sampleRate`.
 * Voice: cmu_us_slt_arctic_hts (Debian package festvox-us-slt-hts), free to use, change and pass on.
 */
import { execFileSync } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { makeRandom } from './random.mjs'

/** Samples a second of the voice as it is made; the track is brought to 48000 when it is encoded. */
export const sampleRate = 32000

/** The voice's pace; 1 is its own. */
const pace = 1.0

/** Below this (of full scale 1) the start and end of a sentence count as silence. */
const silence = 0.012

/** Says every text; returns a Map from text to Float32Array, silence trimmed from both ends. */
export function speak(texts, folder) {
  mkdirSync(folder, { recursive: true })
  const unique = [...new Set(texts)]
  const file = (index) => join(folder, `${index}.wav`)
  const lines = unique.map((text, index) => `(say "${file(index)}" "${forVoice(text)}")`)
  const program = join(folder, 'say.scm')
  const text = [
    '(voice_cmu_us_slt_arctic_hts)',
    `(set! hts_engine_params (append cmu_us_slt_arctic_hts::hts_engine_params (list (list "-r" ${pace}))))`,
    "(define (say file text) (utt.save.wave (utt.synth (eval (list 'Utterance 'Text text))) file 'riff))",
    ...lines,
  ].join('\n')
  const done =
    existsSync(program) && readFileSync(program, 'utf8') === text && unique.every((_, index) => existsSync(file(index)))
  if (!done) {
    writeFileSync(program, text)
    execFileSync('festival', ['-b', program], { input: '', stdio: ['pipe', 'ignore', 'ignore'] })
  }
  return new Map(unique.map((said, index) => [said, trim(readWave(file(index)))]))
}

/** Lays sounds on a quiet room: `pieces` are { startMs, samples }; the result lasts `durationMs`. */
export function layTrack(pieces, durationMs) {
  const track = roomTone(Math.round((durationMs * sampleRate) / 1000))
  for (const piece of pieces) {
    const first = Math.round((piece.startMs * sampleRate) / 1000)
    const gain = 0.11 / rms(piece.samples)
    for (let index = 0; index < piece.samples.length && first + index < track.length; index++) {
      track[first + index] += piece.samples[index] * gain
    }
  }
  return track
}

/** Small respellings that help the voice; the transcript keeps the right spelling. */
function forVoice(text) {
  return text.replace(/over-sixties/g, 'over sixties').replace(/push-ups?/g, (word) => word.replace('-', ' '))
}

/** Reads a 16-bit mono RIFF file as samples between -1 and 1. */
function readWave(path) {
  const bytes = readFileSync(path)
  const data = bytes.indexOf('data', 12, 'latin1')
  const length = bytes.readUInt32LE(data + 4)
  const samples = new Float32Array(length / 2)
  for (let index = 0; index < samples.length; index++) samples[index] = bytes.readInt16LE(data + 8 + index * 2) / 32768
  return samples
}

/** Cuts silence from both ends, keeping 20 ms, with a 10 ms fade so that nothing clicks. */
function trim(samples) {
  const peak = samples.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
  const loud = (value) => Math.abs(value) > silence * peak * 2
  const keep = sampleRate * 0.02
  const first = Math.max(0, samples.findIndex(loud) - keep)
  let last = samples.length - 1
  while (last > 0 && !loud(samples[last])) last--
  const cut = samples.slice(first, Math.min(samples.length, last + keep))
  const fade = sampleRate * 0.01
  for (let index = 0; index < fade; index++) {
    cut[index] *= index / fade
    cut[cut.length - 1 - index] *= index / fade
  }
  return cut
}

function rms(samples) {
  let sum = 0
  for (const value of samples) sum += value * value
  return Math.sqrt(sum / samples.length)
}

/** Soft, low room noise about 58 dB below full scale, the same on every run. */
function roomTone(length) {
  const random = makeRandom(20)
  const track = new Float32Array(length)
  let low = 0
  for (let index = 0; index < length; index++) {
    low = low * 0.985 + (random() - 0.5) * 0.015
    track[index] = low * 0.022 + (random() - 0.5) * 0.0012
  }
  return track
}
