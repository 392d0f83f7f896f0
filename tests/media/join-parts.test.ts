// Parts of a class joined into one film, held against the numbers burned into their frames and their noise.
import { createHash } from 'node:crypto'
import { readFile, readdir } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { findFfmpeg } from '../../core/media/engine/find-ffmpeg.ts'
import { joinParts } from '../../core/media/engine/join-parts.ts'
import { readFrames, readSound, soundLag } from '../helpers/media-reading.ts'
import { ffmpeg, samplePath, splitSample } from '../helpers/media-samples.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

const sumOf = async (file: string): Promise<string> =>
  createHash('sha256')
    .update(await readFile(file))
    .digest('hex')

describe('parts that cannot be joined', () => {
  it('leave nothing behind, and are themselves left alone', async () => {
    const [first] = splitSample(await tempFolder())
    const out = path.join(await tempFolder(), "it's one film")
    const half = path.join(await tempFolder(), 'half.mp4')
    ffmpeg(['-i', samplePath('no-picture'), '-c', 'copy', half])
    const before = await sumOf(first)
    await expect(joinParts(await findFfmpeg(), [first, half], out)).rejects.toMatchObject({
      code: 'recording-no-picture',
    })
    expect(await readdir(path.dirname(out))).toEqual([])
    expect(await sumOf(first)).toBe(before)
  })
})

describe('parts of one camera', () => {
  it('are joined without coding pictures anew, every frame and the sound in their places', async () => {
    const [first, second] = splitSample(await tempFolder())
    // a name that a careless list would read as its own end
    const out = path.join(await tempFolder(), "it's one film")
    const shares: number[] = []
    const joined = await joinParts(await findFfmpeg(), [first, second], out, {
      onShare: (share) => void shares.push(share),
    })
    expect(joined).toMatchObject({ method: 'copy', why: null, ending: 'mp4' })
    const frames = readFrames(out)
    expect(frames.map(({ number }) => number)).toEqual(Array.from({ length: 480 }, (_, frame) => frame))
    expect(joined.startsMs).toEqual([
      Math.round((frames[0]?.seconds ?? -1) * 1000),
      Math.round((frames[250]?.seconds ?? 0) * 1000),
    ])
    // a frame of 30 a second lasts 33 ms; the second part begins within one of where it was filmed
    expect(Math.abs((joined.startsMs[1] ?? 0) - 8333)).toBeLessThanOrEqual(33)
    const [whole, heard] = [readSound(samplePath('cfr-30')), readSound(out)]
    const shift = Math.round(((joined.startsMs[1] ?? 0) / 1000 - 250 / 30) * 48_000)
    for (const [at, moved] of [
      [3, 0],
      [12, shift],
    ] as const) {
      const { samples, correlation } = soundLag(heard, at + moved / 48_000, whole, at)
      expect(correlation).toBeGreaterThan(0.9)
      // 2 ms; what only warms a decoder of AAC up lasts 21 ms, and would show
      expect(Math.abs(samples)).toBeLessThan(96)
    }
  })

  it.each(['copied', 'coded anew'])('keep all their sound tracks, %s, each in its place', async (how) => {
    const folder = await tempFolder()
    const parts = splitSample(folder).map((part, at) => {
      const two = path.join(folder, `two-${at}.mp4`)
      // the second track is the first backwards, and is the one that players choose
      const sound = ['-filter_complex', '[0:a]areverse[b]', '-map', '0:v', '-map', '0:a', '-map', '[b]', '-c:a', 'aac']
      const shown = ['-disposition:a:0', '0', '-disposition:a:1', 'default']
      const picture = how === 'copied' || at === 0 ? ['-c:v', 'copy'] : ['-c:v', 'libx264', '-vf', 'scale=160:-2']
      ffmpeg(['-i', part, ...sound, ...shown, ...picture, two])
      return two
    })
    const out = path.join(folder, 'film')
    const { method, film, startsMs } = await joinParts(await findFfmpeg(), parts, out)
    expect(method).toBe(how === 'copied' ? 'copy' : 'encode')
    expect(film.probe.soundTracks).toHaveLength(2)
    expect(film.audio?.index).toBe(film.probe.soundTracks?.[1]?.index)
    for (const track of [0, 1]) {
      const [heard, source] = [readSound(out, 0, track), readSound(parts[1] ?? '', 0, track)]
      const { samples, correlation } = soundLag(heard, (startsMs[1] ?? 0) / 1000 + 3, source, 3)
      expect(correlation, `track ${track}`).toBeGreaterThan(0.9)
      // a frame of 30 a second: the part's own first frame need not lie on its zero
      expect(Math.abs(samples) / 48, `track ${track}`).toBeLessThanOrEqual(34)
    }
  })

  it('keep one track where they have not as many', async () => {
    const folder = await tempFolder()
    const [first, second] = splitSample(folder)
    const two = path.join(folder, 'two.mp4')
    ffmpeg(['-i', second, '-map', '0:v', '-map', '0:a', '-map', '0:a', '-c', 'copy', two])
    const { film } = await joinParts(await findFfmpeg(), [first, two], path.join(folder, 'film'))
    expect(film.probe.soundTracks).toHaveLength(1)
  })

  it('give the very same film when they are joined again', async () => {
    const parts = splitSample(await tempFolder())
    const folder = await tempFolder()
    const found = await findFfmpeg()
    await joinParts(found, parts, path.join(folder, 'a'))
    await joinParts(found, parts, path.join(folder, 'b'))
    expect(await sumOf(path.join(folder, 'a'))).toBe(await sumOf(path.join(folder, 'b')))
  })

  it('keep the way the camera was held', async () => {
    const out = path.join(await tempFolder(), 'film')
    const turned = samplePath('rotated')
    const { film } = await joinParts(await findFfmpeg(), [turned, turned], out)
    expect(film.index.frames).toHaveLength(960)
    const shown =
      film.video.rotation === 0 ? [film.video.width, film.video.height] : [film.video.height, film.video.width]
    expect(shown).toEqual([180, 320])
  })
})

describe('parts that differ', () => {
  it('are coded anew to the size of the first, with silence where one has no sound', async () => {
    const [first, second] = splitSample(await tempFolder())
    const other = path.join(await tempFolder(), 'other.mp4')
    ffmpeg(['-i', second, '-an', '-vf', 'scale=640:360:flags=neighbor', '-c:v', 'libx264', '-crf', '20', other])
    const out = path.join(await tempFolder(), 'film')
    const joined = await joinParts(await findFfmpeg(), [first, other], out)
    expect(joined).toMatchObject({ method: 'encode', why: 'the parts differ in picture size' })
    expect(readFrames(out).map(({ number }) => number)).toEqual(Array.from({ length: 480 }, (_, frame) => frame))
    expect(joined.film.video).toMatchObject({ width: 320, height: 180, codec: 'h264' })
    const heard = readSound(out)
    const loudest = (from: number, to: number): number =>
      heard.subarray(from * 48_000, to * 48_000).reduce((most, sample) => Math.max(most, Math.abs(sample)), 0)
    expect(loudest(1, 7)).toBeGreaterThan(0.05)
    expect(loudest(10, 15)).toBeLessThan(0.001)
  })
})
