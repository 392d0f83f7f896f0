// The first bytes tell a recording, whole or cut short, from everything else.
import { expect, it } from 'vitest'
import { looksLikeRecording } from '../../../core/media/read-file-head.ts'

const text = (value: string) => new TextEncoder().encode(value)

it.each([
  ['MP4', text('\0\0\0\x20ftypisom')],
  ['old QuickTime', text('\0\0\0\x08wide\0\0\0\0')],
  ['a MOV that begins with its data', text('\0\0\0\0mdat\0\0\0\0')],
  ['Matroska', Uint8Array.of(0x1a, 0x45, 0xdf, 0xa3, 1, 0, 0, 0)],
  ['a transport stream', Uint8Array.of(0x47, 0x40, 0, 0x10)],
  ['M2TS', Uint8Array.of(0, 0, 0, 0, 0x47, 0x40, 0, 0x10)],
])('%s may be a recording', (_, head) => {
  expect(looksLikeRecording(head)).toBe(true)
})

it.each([
  ['nothing', text('')],
  ['text', text('Today we squat')],
  ['a playlist', text('#EXTM3U\n#EXT')],
  ['a joining list', text('ffconcat version')],
  ['RIFF', text('RIFF\0\0\0\0WAVE')],
])('%s is none', (_, head) => {
  expect(looksLikeRecording(head)).toBe(false)
})
