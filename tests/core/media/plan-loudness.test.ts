// One gain for a class: from the measured loudness to -16 LUFS, held under the ceiling. Units: EBU R128, ITU-R BS.1770.
import { describe, expect, it } from 'vitest'
import { planLoudness, adjustLoudness } from '../../../core/media/plan-loudness.ts'
import { readLoudness } from '../../../core/media/read-loudness.ts'

const SUMMARY = [
  'Stream mapping:',
  '[Parsed_ebur128_0 @ 0x55c8300f2100] Summary:',
  '',
  '  Integrated loudness:',
  '    I:         -25.4 LUFS',
  '    Threshold: -35.4 LUFS',
  '  Loudness range:',
  '    LRA:         0.1 LU',
  '  True peak:',
  '    Peak:      -11.3 dBFS',
]

describe('readLoudness', () => {
  it('reads the summary', () => {
    expect(readLoudness(SUMMARY)).toEqual({ integratedLufs: -25.4, truePeakDbtp: -11.3 })
  })

  it('reads silence as no loudness: nothing passes the gate at -70', () => {
    const silent = SUMMARY.map((line) => line.replace('-25.4', '-70.0').replace('-11.3', '-inf'))
    expect(readLoudness(silent)).toEqual({ integratedLufs: null, truePeakDbtp: null })
  })

  it.each([[[]], [['I: -20 LUFS']], [['[Parsed_ebur128_0 @ 0x1] Summary:']]])('gives null for %j', (lines) => {
    expect(readLoudness(lines)).toBeNull()
  })
})

describe('planLoudness', () => {
  it.each([
    { name: 'quiet with loud claps', measured: [-25.4, -10.8], gainDb: 9.4, limited: true },
    { name: 'quiet', measured: [-25.4, -11.3], gainDb: 9.4, limited: false },
    { name: 'just at the ceiling', measured: [-20, -5.5], gainDb: 4, limited: false },
    { name: 'loud', measured: [-10, 0.2], gainDb: -6, limited: false },
    { name: 'right already', measured: [-16, -3], gainDb: 0, limited: false },
    { name: 'hardly there', measured: [-55, -40], gainDb: 20, limited: false },
    { name: 'silent', measured: [null, null], gainDb: 0, limited: false },
  ] as const)('a class that is $name', ({ measured: [integratedLufs, truePeakDbtp], gainDb, limited }) => {
    const { loudness, filters } = planLoudness({ integratedLufs, truePeakDbtp })
    expect(loudness).toEqual({ integratedLufs, truePeakDbtp, targetLufs: -16, gainDb, limited })
    expect(filters.map((filter) => filter.split('=')[0])).toEqual([
      ...(gainDb === 0 ? [] : ['volume']),
      ...(limited ? ['alimiter'] : []),
    ])
  })

  it('a class that was not measured is left as it is', () => {
    expect(planLoudness(null).filters).toEqual([])
  })

  it('the limiter adds no delay and no gain of its own', () => {
    const { filters } = planLoudness({ integratedLufs: -30, truePeakDbtp: -3 })
    expect(filters).toEqual(['volume=14.00dB', 'alimiter=limit=0.7079:level=false:attack=5:release=50:latency=1'])
  })
})

describe('adjustLoudness', () => {
  const ofClass = planLoudness({ integratedLufs: -20, truePeakDbtp: -8 })

  it.each([{}, { gainDb: null }, { gainDb: 0 }])('leaves the class as it is: %j', (segment) => {
    expect(adjustLoudness(ofClass, segment)).toBe(ofClass)
  })

  it('adds to the gain of the class, and holds the ceiling', () => {
    expect(adjustLoudness(ofClass, { gainDb: -3 })).toMatchObject({ loudness: { gainDb: 1, limited: false } })
    const louder = adjustLoudness(ofClass, { gainDb: 6 })
    expect(louder.loudness).toMatchObject({ gainDb: 10, limited: true })
    expect(louder.filters).toHaveLength(2)
  })
})
