// ffmpeg's lists of its parts are read by their columns, of version 5 and of version 7.
import { describe, expect, it } from 'vitest'
import { NEEDED_PARTS, readPartNames } from '../../../core/media/read-capabilities.ts'

const LIST = `Encoders:
 V..... = Video
 .F.... = Frame-level multithreading
 ------
 V....D libx264              libx264 H.264 / AVC / MPEG-4 AVC / MPEG-4 part 10 (codec h264)
 A....D aac                  AAC (Advanced Audio Coding)
Filters:
  T.. = Timeline support
  | = Source or sink filter
 ... ebur128           A->N       EBU R128 scanner.
 ..C concat            N->N       Concatenate audio and video streams.
File formats:
 D. = Demuxing supported
 D  mov,mp4,m4a,3gp,3g2,mj2 QuickTime / MOV
  E mp4             MP4 (MPEG-4 Part 14)
 DE matroska,webm   Matroska / WebM
 D d lavfi          Libavfilter virtual input device
`

describe('readPartNames', () => {
  it('finds every name and no word of the legend', () => {
    expect([...readPartNames(LIST)].sort()).toEqual(
      [
        'libx264',
        'aac',
        'ebur128',
        'concat',
        'mov',
        'mp4',
        'm4a',
        '3gp',
        '3g2',
        'mj2',
        'matroska',
        'webm',
        'lavfi',
      ].sort(),
    )
  })

  it('finds nothing in nothing', () => {
    expect(readPartNames('').size).toBe(0)
  })
})

it('no part is listed twice', () => {
  const names = NEEDED_PARTS.map(({ kind, name }) => `${kind} ${name}`)
  expect(new Set(names).size).toBe(names.length)
})
