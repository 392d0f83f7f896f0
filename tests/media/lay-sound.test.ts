// Sound recorded apart is laid under a film: found by ear, its clock made right, the picture copied.
import { writeFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { findPlace, laySound, openSound } from '../../core/media/engine/lay-sound.ts'
import { openRecording } from '../../core/media/engine/open-recording.ts'
import { makeClass, SECONDS, writeSound } from '../helpers/class-with-sound.ts'
import { readFrames, readSound, soundLag } from '../helpers/media-reading.ts'
import { speak } from '../helpers/spoken-sound.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

describe('sound recorded apart', () => {
  it('of another class is refused, and so is a file without sound', async () => {
    const { folder, film } = await makeClass(await tempFolder(), 0, 0)
    const found = await findFfmpeg()
    const other = path.join(folder, 'other.wav')
    await writeSound(other, SECONDS, { startMs: 0, driftPpm: 0, voice: 0.8, noise: 0.002, seed: 4 }, speak(SECONDS, 77))
    const opened = await openRecording(found, film)
    const place = findPlace(found, opened, await openSound(found, other))
    await expect(place).rejects.toMatchObject({ code: 'sound-not-matching' })
    const text = path.join(folder, 'notes.wav')
    await writeFile(text, '#EXTM3U\nfile:///etc/passwd\n')
    await expect(openSound(found, text)).rejects.toMatchObject({ code: 'recording-format' })
  })

  it('is found, and lies in place to the end with every frame of the film copied', async () => {
    const { folder, film, apart } = await makeClass(await tempFolder(), -7300, 0)
    const found = await findFfmpeg()
    const [opened, sound] = [await openRecording(found, film), await openSound(found, apart)]
    const place = await findPlace(found, opened, sound)
    expect(Math.abs(place.startMs + 7300)).toBeLessThan(10)
    // laid exactly, so that the place of each sample can be measured
    const exact = { startMs: -7300, driftPpm: 0 }
    const out = path.join(folder, 'out.mp4')
    await laySound(found, opened, sound, exact, out)
    expect(readFrames(out).map(({ number }) => number)).toEqual(readFrames(film).map(({ number }) => number))
    const [heard, source] = [readSound(out), readSound(apart)]
    for (const at of [2, 30, 58]) {
      const { samples, correlation } = soundLag(heard, at, source, at + 7.3)
      expect(correlation).toBeGreaterThan(0.99)
      expect(Math.abs(samples)).toBeLessThanOrEqual(2)
    }
  })

  it('runs at the clock of the film: a fast clock is slowed to the sample', async () => {
    // far faster than a recorder runs, so that a minute shows it
    const { folder, film, apart } = await makeClass(await tempFolder(), 2500, 0)
    const found = await findFfmpeg()
    const [opened, sound] = [await openRecording(found, film), await openSound(found, apart)]
    const out = path.join(folder, 'out.mp4')
    const drift = { startMs: 2500, driftPpm: 400 }
    await laySound(found, opened, sound, drift, out)
    const [heard, source] = [readSound(out), readSound(apart)]
    for (const at of [5, 30, 55]) {
      const { samples, correlation } = soundLag(heard, at, source, (at - 2.5) * 1.0004)
      expect(correlation).toBeGreaterThan(0.9)
      expect(Math.abs(samples)).toBeLessThanOrEqual(4)
    }
    expect(heard.slice(0, 2.4 * 48_000).every((value) => Math.abs(value) < 1e-4)).toBe(true)
  })
})
