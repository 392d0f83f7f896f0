// The files of a recording over HTTP: only what is there, and whole even when the studio stops meanwhile.
import { createHash, randomBytes } from 'node:crypto'
import { mkdir, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { startServer } from '../../../server/serve.ts'
import type { Running } from '../../../server/serve.ts'
import { LOCAL_OWNER } from '../../../shared/actors.ts'
import { openClient, projectAssets, testSettings } from '../../helpers/http-door.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

const sumOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

async function start(): Promise<Running> {
  const running = await startServer(testSettings(await tempFolder()), { assets: await projectAssets() })
  onTestFinished(() => running.close())
  return running
}

/** A recording with one file of this content. */
async function addFile(
  { studio }: Running,
  content: Uint8Array,
  more: { storageKey?: string | null; fileName?: string } = {},
) {
  const recording = await studio.store.recordings.add({ title: 'Class' }, LOCAL_OWNER)
  const storageKey = more.storageKey === undefined ? 'recordings/one.mp4' : more.storageKey
  if (storageKey !== null) {
    const file = path.join(studio.dataFolder, 'media', storageKey)
    await mkdir(path.dirname(file), { recursive: true })
    await writeFile(file, content)
  }
  const media = await studio.store.media.add(
    recording.id,
    {
      ...{ role: 'part', fileName: more.fileName ?? '../../Class of June.MP4', storageKey },
      ...{ sha256: sumOf(content), bytes: content.length },
    },
    LOCAL_OWNER,
  )
  return { recording, media, address: `/recordings/${recording.id}/media/${media.id}` }
}

describe('a file of a recording', () => {
  it('comes in ranges, with its sum as tag', async () => {
    const running = await start()
    const content = randomBytes(5000)
    const { address } = await addFile(running, content)
    const answer = await openClient(running.url).ask(address, { headers: { range: 'bytes=1000-1999' } })
    expect(answer.status).toBe(206)
    expect(answer.body.equals(content.subarray(1000, 2000))).toBe(true)
    expect(answer.headers).toMatchObject({ etag: `"sha256-${sumOf(content)}"`, 'content-type': 'video/mp4' })
  })

  it.each(['a.html', 'a.js', 'a.svg', 'a.mp4.HTML', 'a'])('called %s is no page and no script', async (fileName) => {
    const running = await start()
    const { address } = await addFile(running, randomBytes(10), { fileName })
    const { headers } = await openClient(running.url).ask(address)
    expect(headers).toMatchObject({ 'content-type': 'application/octet-stream', 'x-content-type-options': 'nosniff' })
  })

  it('is not there while it arrives, for another recording, or under a made-up id', async () => {
    const running = await start()
    const { ask } = openClient(running.url)
    const arriving = await addFile(running, randomBytes(10), { storageKey: null })
    const other = await addFile(running, randomBytes(10))
    expect((await ask(arriving.address)).status).toBe(404)
    expect((await ask(`/recordings/${arriving.recording.id}/media/${other.media.id}`)).status).toBe(404)
    expect((await ask(`/recordings/${other.recording.id}/media/no-such-file`)).status).toBe(404)
    expect((await ask(`/recordings/${other.recording.id}/media/..%2f..%2fsecret`)).status).toBe(404)
  })

  it('that is being sent when the studio stops arrives whole', async () => {
    const running = await start()
    const content = randomBytes(24_000_000)
    const { address } = await addFile(running, content)
    const response = await fetch(`${running.url}${address}`)
    const closed = running.close()
    const received = new Uint8Array(await response.arrayBuffer())
    await closed
    expect(sumOf(received)).toBe(sumOf(content))
  })
})
