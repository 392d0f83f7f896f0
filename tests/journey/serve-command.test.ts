// The command `repslate serve` as a person runs it: opens, moves on from a busy port, ends cleanly when told to.
import { spawn } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { followUrl } from '../helpers/follow-url.ts'
import { openClient } from '../helpers/http-door.ts'
import { runCommand } from '../helpers/run-command.ts'
import { projectRoot } from '../helpers/source-files.ts'
import { tempFolder } from '../helpers/temp-folder.ts'

interface Serving {
  url: string
  child: ChildProcess
  ended: Promise<number | null>
  said: () => string
}

async function serve(...args: string[]): Promise<Serving> {
  const command = path.join(projectRoot, 'server', 'cli', 'repslate.mjs')
  const child = spawn(process.execPath, [command, 'serve', ...args], { stdio: ['ignore', 'pipe', 'pipe'] })
  onTestFinished(() => void child.kill('SIGKILL'))
  let said = ''
  child.stderr.setEncoding('utf8').on('data', (text: string) => (said += text))
  const ended = new Promise<number | null>((resolve) => child.once('close', resolve))
  const url = await new Promise<string>((resolve, reject) => {
    let printed = ''
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      printed += text
      if (printed.endsWith('\n')) resolve(printed.trim())
    })
    void ended.then((code) => reject(new Error(`serve ended with ${code}: ${said}`)))
  })
  return { url, child, ended, said: () => said }
}

/** Ids of the processes that this one started, from Linux's /proc; empty elsewhere. */
function childrenOf(pid: number): number[] {
  if (process.platform !== 'linux') return []
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .filter((name) => {
      try {
        // proc(5): the fourth field of stat is the parent; the second, in brackets, may hold spaces
        return (
          readFileSync(`/proc/${name}/stat`, 'utf8')
            .replace(/^.*\) /s, '')
            .split(' ')[1] === String(pid)
        )
      } catch {
        return false
      }
    })
    .map(Number)
}

describe('a relative --data', () => {
  const ask = ['publish', '--class', 'none', '--data', 'gym']

  it('of the plain command is taken from its folder', async () => {
    const folder = await tempFolder()
    expect((await runCommand(ask, { cwd: folder })).stderr).toContain(`no studio in ${path.join(folder, 'gym')}.`)
  })

  it('through npm, which goes to the project first, from where npm was called', async () => {
    const folder = await tempFolder()
    // as a script of the project: npm goes to its folder and tells by INIT_CWD where it was called
    const command = `cd '${projectRoot}' && node server/cli/repslate.mjs ${ask.join(' ')}`
    const npm = ['--prefix', projectRoot, 'exec', '--call', command]
    const said = await new Promise<string>((resolve, reject) => {
      const child = spawn('npm', npm, { cwd: folder, stdio: ['ignore', 'ignore', 'pipe'] })
      let text = ''
      child.stderr.setEncoding('utf8').on('data', (part: string) => (text += part))
      child.once('error', reject).once('close', () => resolve(text))
    })
    expect(said).toContain(`no studio in ${path.join(folder, 'gym')}.`)
  })
})

describe('repslate serve', () => {
  it.each(['SIGTERM', 'SIGINT'] as const)('ends cleanly on %s, with a page still listening', async (signal) => {
    const { url, child, ended, said } = await serve('--port', '0', '--data', await tempFolder())
    expect((await openClient(url).ask('/health')).status).toBe(200)
    expect(said()).toContain(`The studio is open at ${url}.`)
    expect(childrenOf(child.pid ?? 0)).toEqual([])
    const stream = await followUrl(`${url}/events?topics=jobs`)
    await stream.next()
    child.kill(signal)
    expect(await ended).toBe(0)
    expect(await stream.next()).toEqual({ end: 'yes' })
  })

  it('moves on when another studio has the port', async () => {
    const first = await serve('--port', '0', '--data', await tempFolder())
    const port = new URL(first.url).port
    const second = await serve('--port', port, '--data', await tempFolder())
    expect(Number(new URL(second.url).port)).toBeGreaterThan(Number(port))
  })

  it('refuses a setting that it cannot use, by name', async () => {
    const { code, stderr } = await runCommand(['serve', '--port', 'many'])
    expect(code).toBe(2)
    expect(stderr).toMatch(/\[setting-wrong\]\n {2}REPSLATE_PORT: /)
  })
})
