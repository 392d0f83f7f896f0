// The files of a lesson: only of lessons that are shown, only those named, in ranges, and lasting only under their version.
import { beforeAll, afterAll, describe, expect, it } from 'vitest'
import { LOCAL_OWNER } from '../../../shared/actors.ts'
import { startTestDoor } from '../../helpers/http-door.ts'
import { publishInvented } from '../../helpers/published-class.ts'

let door: Awaited<ReturnType<typeof startTestDoor>>
let slug = ''

beforeAll(async () => {
  door = await startTestDoor()
  const { slugs } = await publishInvented(door.door, { files: { 'clip.mp4': Buffer.from('0123456789') } })
  slug = slugs['Chair squats'] ?? ''
})
afterAll(() => door.close())

it.each(['__proto__', 'constructor', 'toString'])('a filter called %s is one that no lesson fits', async (name) => {
  expect((await door.ask(`/library?kit=${name}&position=${name}`)).status).toBe(200)
})

describe('refused', () => {
  it.each([
    ['a lesson that is not there', '/lessons/none'],
    ['a file of a lesson that is not there', '/lessons/none/clip.mp4'],
    ['a file that no lesson has', `/lessons/chair-squats/lesson.json`],
    ['a way out of the folder', `/lessons/chair-squats/..%2f..%2fsecret`],
    ['a way out by the slug', `/lessons/..%2f..%2fsecret/clip.mp4`],
  ])('%s', async (_what, address) => {
    expect((await door.ask(address)).status).toBe(404)
  })

  it('filters that are lists', async () => {
    expect((await door.ask('/library?kit=a&kit=b')).status).toBe(400)
  })
})

describe('given', () => {
  it.each([
    ['clip.mp4', 'video/mp4'],
    ['captions.en.vtt', 'text/vtt; charset=utf-8'],
    ['chapters.vtt', 'text/vtt; charset=utf-8'],
    ['poster.jpg', 'image/jpeg'],
  ])('%s as %s', async (file, type) => {
    const { status, headers } = await door.ask(`/lessons/${slug}/${file}`)
    expect([status, headers['content-type']]).toEqual([200, type])
  })

  it('in parts', async () => {
    const { status, text, headers } = await door.ask(`/lessons/${slug}/clip.mp4`, { headers: { range: 'bytes=2-4' } })
    expect([status, text, headers['content-range']]).toEqual([206, '234', 'bytes 2-4/10'])
  })

  it('for ever only under the address of its version', async () => {
    const cache = async (query: string) =>
      (await door.ask(`/lessons/${slug}/clip.mp4${query}`)).headers['cache-control']
    expect(await cache('?v=1')).toMatch(/immutable/)
    expect(await cache('')).not.toMatch(/immutable/)
    expect(await cache('?v=2')).not.toMatch(/immutable/)
  })
})

it('a lesson that never was published cannot be seen', async () => {
  const draft = await door.door.store.lessons.add('Secret plan', LOCAL_OWNER)
  expect((await door.ask(`/lessons/${draft.slug}`)).status).toBe(404)
  expect((await door.ask('/library')).text).not.toContain('Secret plan')
})
