// How clips sound: no click where a wave is cut, and one clip softer than the class where a person wants it so.
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { cutRecording } from '../../server/actions/cut-recording.ts'
import { buildSegment, buildSheet, span } from '../helpers/build-sheet.ts'
import { readLoudnessOf, readSound } from '../helpers/media-reading.ts'
import { ffmpeg, picture, samplePath } from '../helpers/media-samples.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

const HERTZ = 110

describe('a clip of several spans', () => {
  it('does not click: no step of its sound is greater than the tone itself makes', async () => {
    const outDir = await tempFolder()
    const film = join(outDir, 'tone.mp4')
    const tone = `sine=f=${HERTZ}:r=48000:d=8,volume=12dB`
    const x264 = ['-c:v', 'libx264', '-preset', 'ultrafast', '-pix_fmt', 'yuv420p', '-c:a', 'aac', '-b:a', '192k']
    ffmpeg([...picture('320x180', '25', 8), '-f', 'lavfi', '-i', tone, ...x264, '-f', 'mp4', film])
    // cut where the wave is high: 0.04 s are 4.4 waves of the tone
    const spans = [span(1.04, 2.08), span(3.16, 4.2), span(6.04, 7)]
    const sheet = buildSheet({ durationMs: 8000, segments: [buildSegment('a', 0, 0, { spans })] })
    const { clips } = await cutRecording({ recordingPath: film, sheet, outDir, jobs: 1 })
    const sound = readSound(join(outDir, clips[0]?.file ?? ''))
    const peak = sound.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
    const steps = sound.slice(1).map((value, at) => Math.abs(value - (sound[at] ?? 0)))
    // the steepest step of a sine, and as much again for slopes of 5 ms and the sound coder
    const steepest = (peak * 2 * Math.PI * HERTZ) / 48_000
    expect(peak).toBeGreaterThan(0.1)
    expect(steps.reduce((most, step) => Math.max(most, step), 0)).toBeLessThan(2 * steepest)
    expect(Math.abs(sound[0] ?? NaN)).toBeLessThan(0.02 * peak)
  })
})

describe('one clip that a person wants softer', () => {
  it('is so much softer than the class, and says so; the others keep its gain', async () => {
    const segments = [buildSegment('a', 1, 5), buildSegment('b', 1, 5, { gainDb: -6, exercise: { name: 'softer' } })]
    const outDir = await tempFolder()
    const sheet = buildSheet({ durationMs: 16_000, segments })
    const { clips } = await cutRecording({ recordingPath: samplePath('cfr-30'), sheet, outDir, jobs: 2 })
    const [usual, softer] = clips.map(({ file }) => readLoudnessOf(join(outDir, file)).lufs)
    expect(Math.abs((usual ?? NaN) - (softer ?? NaN) - 6)).toBeLessThan(0.3)
    const [gain, own] = clips.map(({ loudness }) => loudness?.gainDb ?? NaN)
    expect((own ?? NaN) - (gain ?? NaN)).toBeCloseTo(-6, 6)
  })
})
