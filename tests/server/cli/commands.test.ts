// The commands on files: what they print, which exit code they give, and that bad input leaves nothing behind.
import { readFile, readdir, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { main } from '../../../server/cli/main.ts'
import { CheckReport } from '../../../shared/check-report.ts'
import { Cue, LogSheet, Prescription } from '../../../shared/log-sheet.ts'
import { fakeIo } from '../../helpers/fake-io.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

const CLASS = `[0:00] Welcome. First up, goblet squat. Hold the bell at your chest, feet just wider than your hips.
[0:20] Sit down between your heels and stand up tall. Three sets of ten. Breathe out as you stand. Too much? Sit to a chair.
[0:50] That's it. Next, glute bridge. Lie on your back with your knees bent. Push through the heels and lift the hips. Two sets of twelve.
`

const PLAN = `# Monday
Goblet squat: 3 x 10, rest 60 s
Plank 45 s
`

async function withFile(name: string, content: string | Buffer) {
  const folder = await tempFolder()
  const file = path.join(folder, name)
  await writeFile(file, content)
  return { folder, file }
}

async function run(args: string[], input = '') {
  const io = fakeIo(input)
  const code = await main(args, io)
  return { code, ...io.printed }
}

describe('draft', () => {
  it('prints a log sheet', async () => {
    const { file } = await withFile('class.txt', CLASS)
    const { code, out } = await run(['draft', file, '--for', 'beginners', '--duration', '1:30', '--json'])
    const sheet = LogSheet.parse(JSON.parse(out))
    expect(code).toBe(0)
    expect(sheet.durationMs).toBe(90_000)
    expect(sheet.audience).toEqual(['beginners'])
    expect(sheet.segments.map((segment) => segment.exercise.name)).toEqual(['Goblet squat', 'Glute bridge'])
    expect(sheet.segments.every((segment) => segment.origin === 'draft' && segment.state === 'proposed')).toBe(true)
  })

  it('drafts a class plan without times', async () => {
    const { file } = await withFile('plan.txt', PLAN)
    const { code, out } = await run(['draft', file, '--json'])
    const sheet = LogSheet.parse(JSON.parse(out))
    expect(code).toBe(0)
    expect(sheet.segments.map((segment) => segment.spans)).toEqual([[], []])
    expect(sheet.segments[0]?.prescription?.sets).toEqual({ min: 3, max: 3 })
  })
})

describe('draft, bad input', () => {
  it.each([
    ['class.txt', '', 'file-empty'],
    ['class.txt', Buffer.from([0xff, 0xd8, 0xfd, 0x80]), 'file-not-text'],
    ['class.txt', `[0:00] a\n`.repeat(1_200_000), 'file-too-big'],
    ['class.txt', '[0:30] later\n[0:10] earlier\n', 'transcript-order'],
    ['class.vtt', 'WEBVTT\n\n00:00:05.000 --> 00:00:02.000\nback\n', 'transcript-line'],
    ['class.srt', '1\n00:00:05,000 --> nonsense\ntext\n', 'transcript-line'],
    ['words.json', '{"words":[{"start":"x","end":1,"text":"a"}]}', 'transcript-line'],
  ])('%s that cannot be read', async (name, content, code) => {
    const { file } = await withFile(name, content)
    const ran = await run(['draft', file])
    expect(ran.said).toContain(`[${code}]`)
    expect(ran.code).toBe(2)
    expect(ran.out).toBe('')
  })

  it.each([
    [['--for', 'everyone'], 'no audience'],
    [['--duration', 'long'], 'no length'],
  ])('%s', async (words, message) => {
    const { file } = await withFile('class.txt', CLASS)
    const ran = await run(['draft', file, ...words])
    expect(ran.code).toBe(2)
    expect(ran.said).toContain(message)
  })

  it('names a missing file', async () => {
    const ran = await run(['draft', 'no-such-file.txt'])
    expect(ran.code).toBe(2)
    expect(ran.said).toContain('no-such-file.txt')
  })
})

describe('check', () => {
  it('gives exit 1 when stops stand, 0 when none does, and a report either way', async () => {
    const { file, folder } = await withFile('class.txt', CLASS)
    const drafted = await run(['draft', file, '--json'])
    const sheetFile = path.join(folder, 'sheet.json')
    const sheet = LogSheet.parse(JSON.parse(drafted.out))
    await writeFile(sheetFile, drafted.out)
    const whole = await run(['check', sheetFile, '--json'])
    const report = CheckReport.parse(JSON.parse(whole.out))
    const stops = report.findings.filter((finding) => finding.severity === 'stop')
    expect(whole.code).toBe(stops.length > 0 ? 1 : 0)

    const noDose = { ...sheet, segments: sheet.segments.map((segment) => ({ ...segment, prescription: null })) }
    await writeFile(sheetFile, JSON.stringify(noDose))
    expect((await run(['check', sheetFile])).code).toBe(1)

    await writeFile(sheetFile, JSON.stringify({ ...sheet, segments: [] }))
    expect((await run(['check', sheetFile])).code).toBe(0)
  })

  it.each([
    ['not json', 'sheet-not-json'],
    ['{"a":1}', 'sheet-not-a-sheet'],
    ['{"format":"repslate-log-sheet","version":2}', 'sheet-newer'],
    ['{"format":"repslate-log-sheet","version":1,"durationMs":1.5}', 'sheet-field'],
  ])('refuses %s', async (content, code) => {
    const { file } = await withFile('sheet.json', content)
    const ran = await run(['check', file, '--json'])
    expect(ran.code).toBe(2)
    expect(ran.said).toContain(`[${code}]`)
    expect(ran.out).toBe('')
  })
})

describe('captions and chapters', () => {
  it('write WebVTT files', async () => {
    const { file, folder } = await withFile('class.txt', CLASS)
    const captions = path.join(folder, 'new', 'class.vtt')
    expect((await run(['captions', file, '--out', captions])).code).toBe(0)
    expect(await readFile(captions, 'utf8')).toMatch(/^WEBVTT\n/)
    const sheetFile = path.join(folder, 'sheet.json')
    await writeFile(sheetFile, (await run(['draft', file])).out)
    const chapters = path.join(folder, 'chapters.vtt')
    expect((await run(['chapters', sheetFile, '--out', chapters])).code).toBe(0)
    expect(await readFile(chapters, 'utf8')).toContain('oblet squat')
  })

  it('leave nothing behind when the transcript is bad', async () => {
    const { file, folder } = await withFile('class.txt', '[0:30] later\n[0:10] earlier\n')
    const ran = await run(['captions', file, '--out', path.join(folder, 'class.vtt')])
    expect(ran.code).toBe(2)
    expect(await readdir(folder)).toEqual(['class.txt'])
  })

  it('need times', async () => {
    const { file, folder } = await withFile('plan.txt', PLAN)
    const ran = await run(['captions', file, '--out', path.join(folder, 'class.vtt')])
    expect(ran.said).toContain('[transcript-not-timed]')
    expect(ran.code).toBe(2)
  })
})

describe('read', () => {
  it('answers a dose or null for each line, empty lines too', async () => {
    const ran = await run(['read', 'dose'], 'three sets of ten\n\nopen the knee to ninety degrees\nten each side')
    const lines = ran.out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as unknown)
    expect(ran.code).toBe(0)
    expect(lines).toHaveLength(4)
    expect(Prescription.parse(lines[0])).toMatchObject({ sets: { min: 3, max: 3 }, reps: { min: 10, max: 10 } })
    expect(lines[1]).toBeNull()
    expect(lines[2]).toBeNull()
    expect(Prescription.parse(lines[3])).toMatchObject({ reps: { min: 10, max: 10 }, perSide: true })
  })

  it('answers a list of cues for each line', async () => {
    const ran = await run(['read', 'cues'], 'Breathe out as you push.\r\nThe car park shuts at nine.\r\n')
    const lines = ran.out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as { kind: string; text: string }[])
    expect(lines).toHaveLength(2)
    expect(lines[0]?.map((cue) => Cue.shape.kind.parse(cue.kind))).toContain('breathing')
    expect(lines[1]).toEqual([])
  })
})
