// A film with the sound of its camera, and the same speech recorded apart: cleaner, at another time, by another clock.
import { writeFile } from 'node:fs/promises'
import path from 'node:path'
import { ffmpeg, picture } from './media-samples.ts'
import { record, speak } from './spoken-sound.ts'
import type { Microphone } from './spoken-sound.ts'

export const SECONDS = 60

export async function writeSound(file: string, seconds: number, microphone: Microphone, speech = speak(SECONDS)) {
  const pieces: Buffer[] = []
  record(speech, seconds, microphone, (samples) => void pieces.push(Buffer.from(samples.slice().buffer)))
  const raw = `${file}.raw`
  await writeFile(raw, Buffer.concat(pieces))
  ffmpeg(['-f', 's16le', '-ar', '16000', '-ac', '1', '-i', raw, '-ar', '48000', file])
}

/** The camera hears echo and noise, the collar the same voice clean: the very samples at other moments. */
export async function makeClass(folder: string, startMs: number, driftPpm: number) {
  const [own, apart, film] = ['own.wav', 'apart.flac', 'film.mp4'].map((name) => path.join(folder, name)) as [
    string,
    string,
    string,
  ]
  await writeSound(own, SECONDS, { startMs: 0, driftPpm: 0, voice: 0.2, noise: 0.01, seed: 3 })
  await writeSound(apart, SECONDS + 20, { startMs, driftPpm, voice: 0.8, noise: 0.002, seed: 4 })
  const video = ['-c:v', 'libx264', '-preset', 'ultrafast', '-bf', '2', '-g', '100', '-pix_fmt', 'yuv420p']
  ffmpeg([...picture('320x180', '25', SECONDS), '-i', own, ...video, '-c:a', 'aac', '-f', 'mp4', film])
  return { folder, film, apart }
}
