/**
 * Renders the small measuring film for tests of cutting: the frame's number stands in every picture as a bar code, and the
 * sound is different at every moment.
 *
 * Offers `renderSmall({ folder, file })`, `small` (its numbers) and `readFrameNumber(luma, width)`.
 *
 * The picture: 640 x 360, 30 frames a second, 24 seconds. The lowest band (y 296 to 344) holds 16 cells of 36 pixels from
 * x 32 on, white = 1, the highest bit first: 15 bits of the frame's number, counted from 0, and one bit that makes the
 * count of ones even. The sound: 48000 samples a second, two channels; noise that never repeats, and on each full second
 * a rising tone of 60 ms whose start (in Hz) is 400 + 90 x second on the left, 2600 - 70 x second on the right.
 */
import { createCanvas, GlobalFonts } from '@napi-rs/canvas'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { makeRandom } from './random.mjs'
import { encode } from './run-ffmpeg.mjs'

export const small = {
  width: 640,
  height: 360,
  frameRate: 30,
  seconds: 24,
  soundRate: 48000,
  bits: 16,
  cell: 36,
  left: 32,
  top: 296,
  high: 48,
}

export async function renderSmall({ folder, file }) {
  const sound = join(folder, 'small.f32')
  const samples = makeSound()
  writeFileSync(sound, Buffer.from(samples.buffer))
  const stale = join(folder, 'small.ffmetadata')
  writeFileSync(stale, staleTags)
  const picture = ['-f', 'rawvideo', '-pix_fmt', 'rgba', '-s', '640x360', '-r', '30', '-i', 'pipe:0']
  const inputs = [...picture, '-f', 'f32le', '-ar', '48000', '-ac', '2', '-i', sound, '-f', 'ffmetadata', '-i', stale]
  const video = [
    '-c:v',
    'libx264',
    '-preset',
    'slow',
    '-crf',
    '26',
    '-pix_fmt',
    'yuv420p',
    '-g',
    '250',
    '-keyint_min',
    '250',
  ]
  const shape = [
    '-sc_threshold',
    '0',
    '-bf',
    '3',
    '-threads',
    '2',
    '-flags:v',
    '+bitexact',
    '-vf',
    'scale=out_color_matrix=bt709:out_range=tv',
  ]
  const audio = ['-c:a', 'aac', '-b:a', '112k', '-flags:a', '+bitexact', '-fflags', '+bitexact']
  const maps = ['-map', '0:v', '-map', '1:a', '-map_metadata', '2', '-map_chapters', '2', '-movflags', '+faststart']
  await encode([...inputs, ...maps, ...video, ...shape, ...audio, file], paintAll)
}

/** Left in on purpose: a title and a chapter that no clip may carry on. */
const staleTags =
  ';FFMETADATA1\ntitle=Raw take, do not publish\n[CHAPTER]\nTIMEBASE=1/1000\nSTART=0\nEND=9000\ntitle=Old chapter\n'

async function paintAll(send) {
  GlobalFonts.loadFontsFromDir('/usr/share/fonts/opentype/cabin')
  const canvas = createCanvas(small.width, small.height)
  const context = canvas.getContext('2d')
  for (let frame = 0; frame < small.frameRate * small.seconds; frame++) {
    paint(context, frame)
    await send(Buffer.from(canvas.data()))
  }
}

function paint(context, frame) {
  context.fillStyle = '#efe6d5'
  context.fillRect(0, 0, small.width, small.height)
  const angle = (frame / small.frameRate) * Math.PI
  context.strokeStyle = '#2f6470'
  context.lineCap = 'round'
  context.lineWidth = 22
  context.beginPath()
  context.moveTo(420, 230)
  context.lineTo(420 + 150 * Math.sin(0.9 * Math.sin(angle)), 230 - 150 * Math.cos(0.9 * Math.sin(angle)))
  context.stroke()
  context.fillStyle = '#d5472a'
  context.fillRect(0, 268, small.width, 6)
  context.fillStyle = '#25272c'
  context.font = '700 84px Cabin'
  context.textAlign = 'right'
  context.fillText(String(frame), 232, 170)
  context.font = '500 22px Cabin'
  context.textAlign = 'left'
  context.fillText('frame', 32, 72)
  paintCode(context, frame)
}

function paintCode(context, frame) {
  context.fillRect(small.left - 8, small.top - 8, small.bits * small.cell + 16, small.high + 16)
  codeOf(frame).forEach((bit, index) => {
    context.fillStyle = bit ? '#ffffff' : '#000000'
    context.fillRect(small.left + index * small.cell, small.top, small.cell, small.high)
  })
}

function codeOf(frame) {
  const bits = Array.from({ length: small.bits - 1 }, (_, index) => (frame >> (small.bits - 2 - index)) & 1)
  return [...bits, bits.reduce((sum, bit) => sum + bit, 0) % 2]
}

/** The number in a picture's luma plane (one byte a pixel, `width` bytes a row); null when the check bit is wrong. */
export function readFrameNumber(luma, width = small.width) {
  const scale = width / small.width
  const bits = Array.from({ length: small.bits }, (_, index) => {
    const x = Math.round((small.left + (index + 0.5) * small.cell) * scale)
    const y = Math.round((small.top + small.high / 2) * scale)
    return (luma[y * width + x] ?? 0) > 127 ? 1 : 0
  })
  if (bits.reduce((sum, bit) => sum + bit, 0) % 2 !== 0) return null
  return bits.slice(0, -1).reduce((number, bit) => number * 2 + bit, 0)
}

function makeSound() {
  const length = small.soundRate * small.seconds
  const samples = new Float32Array(length * 2)
  const [left, right] = [makeRandom(7), makeRandom(11)]
  let [a, b] = [0, 0]
  for (let index = 0; index < length; index++) {
    a = a * 0.7 + (left() - 0.5) * 0.3
    b = b * 0.7 + (right() - 0.5) * 0.3
    samples[index * 2] = a * 0.14
    samples[index * 2 + 1] = b * 0.14
  }
  for (let second = 0; second < small.seconds; second++) {
    addTone(samples, second, 0, 400 + 90 * second)
    addTone(samples, second, 1, 2600 - 70 * second)
  }
  return samples
}

/** 60 ms from `startHz` to twice as high, with soft ends. */
function addTone(samples, second, channel, startHz) {
  const length = small.soundRate * 0.06
  for (let index = 0; index < length; index++) {
    const k = index / length
    const phase = 2 * Math.PI * startHz * (index / small.soundRate) * (1 + k / 2)
    samples[(second * small.soundRate + index) * 2 + channel] += 0.4 * Math.sin(Math.PI * k) ** 0.5 * Math.sin(phase)
  }
}
