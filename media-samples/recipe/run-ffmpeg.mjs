/**
 * Starts ffmpeg for the recipes. Offers `encode(args, writeInput)`, which resolves when ffmpeg has ended well, and
 * `probe(file)`, ffprobe's facts. `writeInput(send)` hands over bytes with `await send(bytes)`.
 */
import { execFileSync, spawn } from 'node:child_process'
import { once } from 'node:events'

export async function encode(args, writeInput = null) {
  const child = spawn('ffmpeg', ['-hide_banner', '-loglevel', 'error', '-y', ...args], {
    stdio: [writeInput ? 'pipe' : 'ignore', 'inherit', 'inherit'],
  })
  const ended = once(child, 'close')
  if (writeInput) {
    await writeInput(async (bytes) => {
      if (!child.stdin.write(bytes)) await once(child.stdin, 'drain')
    })
    child.stdin.end()
  }
  const [code] = await ended
  if (code !== 0) throw new Error(`ffmpeg stopped with code ${code}; its own words stand above.`)
}

export function probe(file) {
  const args = ['-v', 'error', '-show_format', '-show_streams', '-show_chapters', '-of', 'json', file]
  return JSON.parse(execFileSync('ffprobe', args, { encoding: 'utf8' }))
}
