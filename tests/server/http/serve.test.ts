// Starting and stopping: settings, busy ports, sessions that outlive a restart, a stop that loses nothing.
import { createServer } from 'node:http'
import { mkdir, stat, writeFile } from 'node:fs/promises'
import type { AddressInfo, Server } from 'node:net'
import { createServer as createPlainServer } from 'node:net'
import path from 'node:path'
import { inspect } from 'node:util'
import { describe, expect, it, onTestFinished } from 'vitest'
import { startServer } from '../../../server/serve.ts'
import type { Running } from '../../../server/serve.ts'
import { readSettings } from '../../../server/settings.ts'
import type { Settings } from '../../../server/settings.ts'
import { followUrl } from '../../helpers/follow-url.ts'
import { openClient, projectAssets, testSettings } from '../../helpers/http-door.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

async function start(settings: Settings): Promise<Running> {
  const running = await startServer(settings, { assets: await projectAssets() })
  onTestFinished(() => running.close())
  return running
}

/** Takes a port that is free just now. */
async function occupy(server: Server, port = 0): Promise<number> {
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject).listen(port, '127.0.0.1', resolve)
  })
  onTestFinished(() => void server.close())
  return (server.address() as AddressInfo).port
}

describe('settings', () => {
  const root = path.resolve('/project')

  it('need none', () => {
    expect(readSettings({}, root)).toEqual({
      host: '127.0.0.1',
      port: 4180,
      dataFolder: path.join(root, 'data', 'studio'),
      allowedHosts: [],
      maxUploadBytes: 64 * 1024 ** 3,
      databaseUrl: null,
      inboxFolder: null,
      reader: null,
      freshTemplates: false,
    })
  })

  it('have a second reader only when one is wanted in the studio, and never show its key', () => {
    const env = {
      REPSLATE_READER_URL: 'https://reader.example/v1',
      REPSLATE_READER_MODEL: 'any',
      REPSLATE_READER_KEY: 'very-secret',
    }
    expect(readSettings(env, root).reader).toBeNull()
    const settings = readSettings({ ...env, REPSLATE_READER_IN_STUDIO: '1' }, root)
    expect(settings.reader?.key).toBe('very-secret')
    expect(JSON.stringify(settings)).not.toContain('very-secret')
    expect(inspect(settings, { depth: null })).not.toContain('very-secret')
  })

  it('come from the environment, and from the command line before it', () => {
    const env = {
      REPSLATE_HOST: '0.0.0.0',
      REPSLATE_PORT: '5000',
      REPSLATE_DATA: 'elsewhere',
      REPSLATE_ALLOWED_HOSTS: 'Studio.example.org, gym.example:8443',
      REPSLATE_MAX_UPLOAD_BYTES: '1000',
      DATABASE_URL: 'postgres://localhost/repslate',
      REPSLATE_INBOX: path.resolve('/inbox'),
    }
    const read = readSettings(env, root, { port: '6000' })
    expect(read).toMatchObject({
      host: '0.0.0.0',
      port: 6000,
      dataFolder: path.join(root, 'elsewhere'),
      allowedHosts: ['studio.example.org', 'gym.example:8443'],
      maxUploadBytes: 1000,
      databaseUrl: 'postgres://localhost/repslate',
      inboxFolder: path.resolve('/inbox'),
    })
  })

  it.each([
    [{ REPSLATE_PORT: 'many' }, 'REPSLATE_PORT'],
    [{ REPSLATE_PORT: '70000' }, 'REPSLATE_PORT'],
    [{ REPSLATE_PORT: '-1' }, 'REPSLATE_PORT'],
    [{ REPSLATE_MAX_UPLOAD_BYTES: '0' }, 'REPSLATE_MAX_UPLOAD_BYTES'],
    [{ REPSLATE_ALLOWED_HOSTS: 'http://studio.example.org' }, 'REPSLATE_ALLOWED_HOSTS'],
    [{ REPSLATE_ALLOWED_HOSTS: '*' }, 'REPSLATE_ALLOWED_HOSTS'],
    [{ DATABASE_URL: 'mysql://localhost' }, 'DATABASE_URL'],
    [{ REPSLATE_READER_IN_STUDIO: '1' }, 'REPSLATE_READER_URL'],
    [
      { REPSLATE_READER_IN_STUDIO: '1', REPSLATE_READER_URL: 'file:///x', REPSLATE_READER_MODEL: 'm' },
      'REPSLATE_READER_URL',
    ],
  ])('%j are refused by name', (env, name) => {
    expect(() => readSettings(env, root)).toThrow(
      expect.objectContaining({ code: 'setting-wrong', details: [expect.stringContaining(`${name}: `)] }) as Error,
    )
  })

  it('that are empty count as not set', () => {
    expect(readSettings({ REPSLATE_PORT: '', DATABASE_URL: '' }, root)).toMatchObject({ port: 4180, databaseUrl: null })
  })
})

describe('a server', () => {
  it('moves on from a busy port', async () => {
    const first = await occupy(createPlainServer())
    const { url } = await start(testSettings(await tempFolder(), { port: first }))
    const port = Number(new URL(url).port)
    expect(port).toBeGreaterThan(first)
    expect(port).toBeLessThanOrEqual(first + 50)
    expect((await openClient(url).ask('/health')).status).toBe(200)
  })

  it('listens on loopback only', async () => {
    const { url } = await start(testSettings(await tempFolder()))
    expect(new URL(url).hostname).toBe('127.0.0.1')
  })

  it('says why it cannot listen, and leaves nothing open', async () => {
    // RFC 5737 (2010): an address of documentation, no machine has it
    const settings = testSettings(await tempFolder(), { host: '192.0.2.1' })
    await expect(start(settings)).rejects.toMatchObject({
      code: 'port-busy',
      message: expect.stringContaining('192.0.2.1') as string,
    })
  })

  it('says that its data folder cannot be made', async () => {
    const file = path.join(await tempFolder(), 'a-file')
    await writeFile(file, '')
    await expect(start(testSettings(path.join(file, 'data')))).rejects.toMatchObject({ code: 'out-not-writable' })
  })

  it('keeps its secret to its owner, and open pages working after a restart', async () => {
    const folder = path.join(await tempFolder(), 'new', 'studio')
    const first = await start(testSettings(folder))
    const headers = await openClient(first.url).signed()
    await first.close()
    if (process.platform !== 'win32') expect((await stat(path.join(folder, 'secret'))).mode & 0o077).toBe(0)
    const second = await start(testSettings(folder))
    const again = await openClient(second.url).ask('/session', { headers: { cookie: headers['cookie'] ?? '' } })
    expect(JSON.parse(again.text)).toEqual({ token: headers['x-repslate-token'] })
  })

  it('replaces a secret that was cut short', async () => {
    const folder = await tempFolder()
    await mkdir(folder, { recursive: true })
    await writeFile(path.join(folder, 'secret'), 'short')
    const { url } = await start(testSettings(folder))
    expect((await openClient(url).signed())['x-repslate-token']).toMatch(/^[\w-]{43}$/)
    expect((await stat(path.join(folder, 'secret'))).size).toBe(32)
  })
})

describe('a stop', () => {
  it('ends event streams, and work that was added is done before the store closes', async () => {
    const running = await start(testSettings(await tempFolder()))
    const done: string[] = []
    running.studio.beforeClose(async () => {
      await running.studio.store.audit.list()
      done.push('first added')
    })
    running.studio.beforeClose(() => {
      done.push('last added')
      return Promise.resolve()
    })
    const stream = await followUrl(`${running.url}/events?topics=jobs`)
    await stream.next()
    await running.close()
    expect(await stream.next()).toEqual({ end: 'yes' })
    expect(done).toEqual(['last added', 'first added'])
    await expect(openClient(running.url).ask('/health')).rejects.toThrow()
  })

  it('can be asked for twice', async () => {
    const running = await start(testSettings(await tempFolder()))
    await Promise.all([running.close(), running.close()])
    await running.close()
  })

  it('frees the port', async () => {
    const running = await start(testSettings(await tempFolder()))
    const port = Number(new URL(running.url).port)
    await running.close()
    expect(await occupy(createServer(), port)).toBe(port)
  })
})
