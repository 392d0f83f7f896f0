// ffmpeg's last lines become an error of ours that says what happened and what to do.
import { describe, expect, it } from 'vitest'
import { explainFailure } from '../../../core/media/explain-failure.ts'
import type { FailedRun } from '../../../core/media/explain-failure.ts'

const run = (fields: Partial<FailedRun>): FailedRun => ({
  doing: 'Cutting "Squat"',
  exitCode: 1,
  signal: null,
  lines: [],
  ...fields,
})

/** Lines as ffmpeg 5.1 prints them. */
const CASES: { lines: string[]; fields?: Partial<FailedRun>; code: string }[] = [
  { lines: ['av_interleaved_write_frame(): No space left on device', 'Conversion failed!'], code: 'disk-full' },
  { lines: ['[mp4 @ 0x55c8] x', 'av_interleaved_write_frame(): File too large'], code: 'engine-too-big' },
  {
    lines: ['[mov,mp4 @ 0x55c8] moov atom not found', 'x.mp4: Invalid data found when processing input'],
    code: 'recording-broken',
  },
  { lines: ["[hls @ 0x55c8] Format not on whitelist 'mov'", 'x: Invalid data found'], code: 'recording-format' },
  { lines: ["Unknown encoder 'libx264'"], code: 'ffmpeg-lacks' },
  { lines: ['/out/x.part: Permission denied'], code: 'out-not-writable' },
  { lines: ['x.mp4: Invalid data found when processing input'], code: 'recording-format' },
  { lines: ['Error while filtering: Cannot allocate memory'], code: 'engine-failed' },
  { lines: [], fields: { signal: 'SIGXCPU' }, code: 'engine-timeout' },
  { lines: [], fields: { signal: 'SIGXFSZ' }, code: 'engine-too-big' },
  { lines: [], fields: { signal: 'SIGKILL' }, code: 'engine-failed' },
  { lines: [], fields: { exitCode: 255 }, code: 'engine-timeout' },
  { lines: [], code: 'engine-failed' },
]

describe('explainFailure', () => {
  it('does not tell where the files of the studio lie', () => {
    const lines = [
      '[mov,mp4 @ 0x55c8] error reading header',
      'file:/home/Ann B/data/uploads/x1: Cannot allocate memory',
    ]
    expect(explainFailure(run({ lines })).details).toEqual(['error reading header', 'x1: Cannot allocate memory'])
  })

  it.each(CASES)('$lines $fields is $code', ({ lines, fields, code }) => {
    const error = explainFailure(run({ lines, ...fields }))
    expect(error.code).toBe(code)
    expect(error.message).toMatch(/^Cutting "Squat" failed: [^]*\.$/)
  })

  it('quotes a message that it does not know, without its memory address', () => {
    const error = explainFailure(run({ lines: ['first', '[libx264 @ 0x55c8300f2100] broken parameters'] }))
    expect(error.message).toBe('Cutting "Squat" failed: ffmpeg says "broken parameters".')
    expect(error.details).toEqual(['first', 'broken parameters'])
  })

  it('keeps only the last lines', () => {
    const lines = Array.from({ length: 100 }, (_, line) => `line ${line}`)
    expect(explainFailure(run({ lines })).details).toEqual(lines.slice(-8))
  })
})
