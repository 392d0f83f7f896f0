// Reads the published WebVTT conformance files and compares every field with what the standard and a browser say.
// Source: Web Platform Tests, webvtt/parsing/file-parsing, and the cues that Firefox 153 read from the same files.
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import type { VttCue } from '../../core/captions/read-vtt.ts'
import { readVtt } from '../../core/captions/read-vtt.ts'

const folder = path.resolve(import.meta.dirname, '../../../shared/captions/webvtt-conformance')
const present = existsSync(folder)

interface BrowserCue {
  id: string
  startTime: number
  endTime: number
  text: string
  line: number | 'auto'
  region: { lines: number } | null
  [name: string]: unknown
}

/** The standard against the browser: digits only, any size (section "WebVTT region settings parsing"). */
const REGION_LINES: readonly number[] = [0, 1, 100, 101, 65536, 4294967296, 18446744073709552000, 1e34, 2, 3, 3, 3, 3]

const REGION_DEFAULTS = {
  width: 100,
  regionAnchorX: 0,
  regionAnchorY: 100,
  viewportAnchorX: 0,
  viewportAnchorY: 100,
  scroll: '',
}

describe.skipIf(!present)('WebVTT conformance files (outside data: skipped when ../shared is absent)', () => {
  const browser = present
    ? (JSON.parse(readFileSync(path.join(folder, 'firefox-153-cues.json'), 'utf8')) as Record<
        string,
        { cues: BrowserCue[] }
      >)
    : {}
  const read = (name: string) => readVtt(readFileSync(path.join(folder, name), 'utf8'))

  it('holds the 39 files', () => {
    expect(readdirSync(path.join(folder, 'file-parsing'))).toHaveLength(39)
    expect(Object.keys(browser)).toHaveLength(39)
  })

  const same = Object.keys(browser).filter((name) => name !== 'regions-lines.vtt' && name !== 'settings-line.vtt')
  it.each(same)('%s: as the browser reads it', (name) => {
    expect(read(`file-parsing/${name}`).cues.map(asBrowserCue)).toEqual(browser[name]!.cues)
  })

  it('regions-lines.vtt: as the standard says, where the browser cuts large numbers to 0 and drops a region', () => {
    const expected = browser['regions-lines.vtt']!.cues.map((cue, index) => ({
      ...cue,
      region: { ...REGION_DEFAULTS, id: String(index + 1), lines: REGION_LINES[index] },
    }))
    expect(read('file-parsing/regions-lines.vtt').cues.map(asBrowserCue)).toEqual(expected)
  })

  it('settings-line.vtt: all 46 cues, where the browser stops after 33', () => {
    const cues = read('file-parsing/settings-line.vtt').cues.map(asBrowserCue)
    // The next one, "5.", is no number by the standard (digits must stand on both sides of the full stop); the browser takes it.
    const [...firefox] = browser['settings-line.vtt']!.cues
    expect(cues.slice(0, 32)).toEqual(firefox.slice(0, 32))
    expect(cues.slice(32).map((cue) => [cue.text, cue.line, cue.snapToLines, cue.lineAlign])).toEqual([
      ['invalid32', 'auto', true, 'start'],
      ['invalid33', 'auto', true, 'start'],
      ['invalid34', 'auto', true, 'start'],
      ['invalid35', 'auto', true, 'start'],
      ['invalid36', 'auto', true, 'start'],
      ['invalid37', 'auto', true, 'start'],
      ['text38', 0, false, 'start'],
      ['text39', 0, false, 'start'],
      ['text40', 100, false, 'start'],
      ['text41', 100, false, 'start'],
      ['text42', 100, false, 'center'],
      ['text43', 100, false, 'end'],
      ['text44', 5e-324, false, 'start'],
      ['text45', 0, false, 'start'],
    ])
  })

  it.each(present ? readdirSync(path.join(folder, 'signature-invalid-ours')) : [])('%s: rejected', (name) => {
    const file = read(`signature-invalid-ours/${name}`)
    expect(file.cues).toEqual([])
    expect(file.problems.map((problem) => problem.kind)).toEqual(['signature'])
  })
})

function asBrowserCue(cue: VttCue): BrowserCue {
  return {
    id: cue.id,
    startTime: cue.startMs / 1000,
    endTime: cue.endMs / 1000,
    text: cue.raw,
    ...cue.settings,
    // -0 and 0 are one place.
    line: cue.settings.line === 0 ? 0 : cue.settings.line,
    region: cue.settings.region && { ...cue.settings.region },
  }
}
