/**
 * Renders the demo class: every frame drawn once into a lossless file, then encoded in two passes with the voice.
 *
 * Offers `renderClass({ plan, track, rate, folder, file })`; `folder` is for files that may be thrown away.
 */
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { makeFramePainter } from './draw-frame.mjs'
import { frameRate, height, width } from './page.mjs'
import { encode } from './run-ffmpeg.mjs'
import { classTitle } from './script.mjs'
import { mouthByFrame } from './sound.mjs'

const videoKbit = 70
const soundKbit = 48

/** Takes the boxiness out of the voice, adds a little presence and the first reflections of a small hall. */
const voiceFilters = [
  'highpass=f=75',
  'equalizer=f=260:t=q:w=1:g=-2',
  'equalizer=f=4200:t=q:w=1:g=2.5',
  'aecho=1:0.9:19|31|47:0.06|0.045|0.03',
  'aresample=48000',
].join(',')

export async function renderClass({ plan, track, rate, folder, file, tell }) {
  const frames = (plan.durationMs / 1000) * frameRate
  const sound = join(folder, 'voice.f32')
  writeFileSync(sound, Buffer.from(track.buffer, track.byteOffset, track.byteLength))
  const drawn = join(folder, 'drawn.mkv')
  const paint = makeFramePainter(plan, mouthByFrame(track, rate, frames))
  await encode(drawnArgs(drawn), async (send) => {
    for (let frame = 0; frame < frames; frame++) {
      await send(Buffer.from(paint(frame).data()))
      if (frame % 500 === 0) tell(`frame ${frame} of ${frames}`)
    }
  })
  const log = join(folder, 'two-pass')
  tell('first pass')
  await encode(['-i', drawn, ...videoArgs(1, log), '-an', '-f', 'null', '-'])
  tell('second pass')
  const inputs = ['-i', drawn, '-f', 'f32le', '-ar', String(rate), '-ac', '1', '-i', sound]
  const audio = ['-af', voiceFilters, '-c:a', 'aac', '-b:a', `${soundKbit}k`, '-ac', '1']
  const tags = [
    '-map_metadata',
    '-1',
    '-metadata',
    `title=${classTitle}`,
    '-fflags',
    '+bitexact',
    '-flags:a',
    '+bitexact',
  ]
  await encode([
    ...inputs,
    '-map',
    '0:v',
    '-map',
    '1:a',
    ...videoArgs(2, log),
    ...audio,
    ...tags,
    '-movflags',
    '+faststart',
    file,
  ])
}

function drawnArgs(drawn) {
  const raw = [
    '-f',
    'rawvideo',
    '-pix_fmt',
    'rgba',
    '-s',
    `${width}x${height}`,
    '-r',
    String(frameRate),
    '-i',
    'pipe:0',
  ]
  const colours = ['-vf', 'scale=out_color_matrix=bt709:out_range=tv:flags=accurate_rnd+full_chroma_int,format=yuv420p']
  return [...raw, ...colours, '-c:v', 'libx264', '-qp', '0', '-preset', 'ultrafast', ...colourTags, drawn]
}

const colourTags = ['-colorspace', 'bt709', '-color_primaries', 'bt709', '-color_trc', 'bt709', '-color_range', 'tv']

/** A key frame at least every five seconds; the animation tuning keeps flat areas flat and lines sharp. */
function videoArgs(pass, log) {
  const shape = [
    '-c:v',
    'libx264',
    '-preset',
    'slower',
    '-tune',
    'animation',
    '-profile:v',
    'high',
    '-pix_fmt',
    'yuv420p',
  ]
  const keys = ['-g', String(frameRate * 5), '-keyint_min', String(frameRate), '-threads', '2', '-flags:v', '+bitexact']
  return [...shape, ...keys, ...colourTags, '-b:v', `${videoKbit}k`, '-pass', String(pass), '-passlogfile', log]
}
