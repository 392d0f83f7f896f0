/** `repslate doctor`: what this machine has of what Repslate needs. */
import { rm, mkdtemp, statfs } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import type { Command } from 'commander'
import { checkCapabilities } from '../../../core/media/engine/check-capabilities.ts'
import { findFfmpeg } from '../../../core/media/engine/find-ffmpeg.ts'
import { AppError } from '../../../shared/errors.ts'
import { findBrowser, howToInstallFfmpeg } from '../../setup/ensure-tools.ts'
import type { Io } from '../io.ts'
import type { Finish } from '../main.ts'

interface Row {
  name: string
  found: string | null
  /** Without it, the main job cannot be done. */
  needed: boolean
}

export function addDoctor(program: Command, io: Io, finish: Finish): void {
  program
    .command('doctor')
    .description(
      'say what this machine has: Node, ffmpeg with each codec, filter and muxer needed, a browser for the tests',
    )
    .option('--json', 'print the findings as JSON')
    .action(async (options: { json?: boolean }) => {
      const rows = await examine()
      const ok = rows.every((row) => row.found !== null || !row.needed)
      if (options.json) io.out(`${JSON.stringify({ ok, rows }, null, 2)}\n`)
      else
        io.out(
          `${rows.map(describeRow).join('\n')}\n\n${ok ? 'All that is needed is here.' : `Something needed is missing. ${howToInstallFfmpeg()}`}\n`,
        )
      finish(ok ? 0 : 3)
    })
}

async function examine(): Promise<Row[]> {
  const rows: Row[] = [{ name: 'Node 20.19 or newer', found: process.versions.node, needed: true }]
  try {
    const ffmpeg = await findFfmpeg()
    rows.push({
      name: 'ffmpeg 5.1 or newer',
      found: `${ffmpeg.version}  ${ffmpeg.ffmpeg} (${ffmpeg.from})`,
      needed: true,
    })
    rows.push({ name: 'ffprobe', found: ffmpeg.ffprobe, needed: true })
    for (const { kind, name, present, why } of await checkCapabilities(ffmpeg)) {
      rows.push({ name: `${kind} ${name}`, found: present ? why : null, needed: true })
    }
  } catch (error) {
    if (!(error instanceof AppError)) throw error
    rows.push({ name: 'ffmpeg 5.1 or newer', found: null, needed: true })
  }
  rows.push({ name: 'Chrome or Chromium (tests only)', found: findBrowser(), needed: false })
  rows.push({ name: 'free space for temporary files', found: await freeSpace(), needed: false })
  return rows
}

async function freeSpace(): Promise<string> {
  const folder = await mkdtemp(path.join(tmpdir(), 'repslate-'))
  const { bavail, bsize } = await statfs(folder)
  await rm(folder, { recursive: true })
  return `${((bavail * bsize) / 1e9).toFixed(1)} GB`
}

function describeRow({ name, found, needed }: Row): string {
  const mark = found !== null ? '✓' : needed ? '■' : '·'
  return `${mark} ${name.padEnd(34)} ${found ?? (needed ? 'missing' : 'not found')}`
}
