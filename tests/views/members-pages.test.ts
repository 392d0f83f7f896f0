// The page objects of the members' pages, and the templates of errors: choices are made before a template prints.
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { openViews } from '../../server/render.ts'
import { NOTICE, Lesson } from '../../shared/lesson.ts'
import { CUE_KINDS } from '../../shared/log-sheet.ts'
import { CUE_LOOKS } from '../../views/pages/cue-looks.ts'
import { formatCount, formatList, formatRange, formatSeconds } from '../../views/pages/format.ts'
import { buildLayout } from '../../views/pages/layout.ts'
import { buildLessonPage } from '../../views/pages/lesson.ts'
import type { LessonInput } from '../../views/pages/lesson.ts'
import { buildLibraryPage } from '../../views/pages/library.ts'
import type { LibraryInput } from '../../views/pages/library.ts'
import { projectRoot } from '../helpers/source-files.ts'

const lesson = Lesson.parse({
  format: 'repslate-lesson',
  version: 1,
  slug: 'squat',
  name: 'Squats',
  alsoCalled: [],
  audience: ['general'],
  equipment: ['band', 'chair'],
  cautions: [
    { hazard: 'knee-pain', text: 'go slow', concerns: 'sore knees', said: true },
    { hazard: 'fall-risk', text: 'Hold on!', concerns: 'anyone unsteady', said: true },
  ],
  takeCare: [{ hazard: 'k1', text: 'ask first', concerns: 'new to it', said: false }],
  movement: ['feet apart,', ' sit back ', 'and then, stand up', 'andes walk'],
  easier: [],
  harder: [],
  notice: NOTICE,
  from: { title: 'Monday', segmentId: 's', recordingSha256: '', spans: [{ startMs: 61_000, endMs: 90_500 }] },
  clip: { file: 'clip.mp4', sha256: '', durationMs: 29_500, frames: 1 },
  captions: '',
  chapters: '',
  description: '',
})
const input: LessonInput = {
  lesson,
  slug: 'squat-2',
  version: 3,
  recordingId: 'r/1',
  otherNames: ['squat', 'Air squat', 'air-squats', 'knee bend'],
  position: 'standing',
  level: null,
  audience: [],
  chapters: [],
  loop: null,
  easier: [{ text: 'hold a chair', slug: null }],
  harder: [{ text: 'goblet squat', slug: 'goblet' }],
  mustHazards: ['fall-risk'],
  origin: null,
  canOpenClass: false,
}

describe('a lesson page', () => {
  const page = buildLessonPage(input)

  it('puts what must be said first, in whole sentences', () => {
    expect(page.cautions.map(({ text }) => text)).toEqual(['Hold on!', 'Go slow.'])
    expect(page.movement).toEqual(['Feet apart.', 'Sit back.', 'Stand up.', 'Andes walk.'])
  })

  it('names no name twice', () => {
    expect(page.alsoCalled).toBe('Air squat and knee bend')
  })

  it('takes files from the lesson’s address and version, and shows no picture where there is none', () => {
    expect(page.film).toMatchObject({ clip: '/lessons/squat-2/clip.mp4?v=3', poster: '' })
  })

  it('repeats all of it where no clean repetitions are marked', () => {
    expect(page.loop).toEqual({ label: 'Play again and again', startMs: 0, endMs: 29_500 })
  })

  it('links only to what there is and may be opened', () => {
    expect([page.easier[0]?.href, page.harder[0]?.href, page.from.href]).toEqual(['', '/lessons/goblet', ''])
    expect(buildLessonPage({ ...input, canOpenClass: true }).from.href).toBe('/recordings/r%2F1#t=61')
    expect(page.from.times).toBe('1:01 to 1:30')
  })

  it('is not offered as its own harder exercise, though two exercises may be called the same', () => {
    const own = [{ text: lesson.name.toUpperCase(), slug: null }, ...input.harder]
    expect(buildLessonPage({ ...input, harder: own }).harder).toEqual(page.harder)
  })

  it('leaves out a list of one chapter', () => {
    const chapter = { startMs: 0, endMs: 29_500, title: 'All of it', level: 1 } as const
    expect(buildLessonPage({ ...input, chapters: [chapter] }).chapters).toEqual([])
    expect(buildLessonPage({ ...input, chapters: [chapter, { ...chapter, startMs: 12_500 }] }).chapters[1]).toEqual({
      title: 'All of it',
      startMs: 12_500,
      clock: '0:12',
      href: '/lessons/squat-2/clip.mp4?v=3#t=12.5',
    })
  })
})

describe('a library page', () => {
  const none = { kit: null, position: null, region: null, level: null, audience: null, length: null }
  const library: LibraryInput = {
    query: { text: '', ...none },
    choices: { kit: ['chair', 'none'], position: [], region: [], level: [], audience: [], length: ['short'] },
    total: 4,
    lessons: [{ slug: 'squat-2', version: 3, lesson, position: 'single-leg' }],
  }

  it('offers no filter that has nothing to choose', () => {
    expect(buildLibraryPage(library).filters.map(({ name }) => name)).toEqual(['kit', 'length'])
  })

  it('takes one filter away and keeps the rest of the search', () => {
    const page = buildLibraryPage({ ...library, query: { ...none, text: 'sit & stand', kit: 'none', length: 'short' } })
    expect(page.count).toBe('1 of 4 lessons')
    expect(page.chosen).toEqual([
      { label: 'Kit: nothing needed', href: '/library?q=sit%20%26%20stand&length=short' },
      { label: 'Length: under 1 minute', href: '/library?q=sit%20%26%20stand&kit=none' },
    ])
  })

  it('keeps a filter to be seen that no lesson has any more', () => {
    const page = buildLibraryPage({ ...library, query: { ...none, text: '', level: 'advanced' } })
    expect(page.filters.find(({ name }) => name === 'level')?.options.map(({ chosen }) => chosen)).toEqual([
      false,
      true,
    ])
  })

  it('says where and with what on a card', () => {
    expect(buildLibraryPage(library).cards[0]).toMatchObject({
      href: '/lessons/squat-2',
      facts: ['On one leg', 'Band and chair'],
    })
  })
})

describe('numbers in words', () => {
  it.each([
    [null, ''],
    [{ min: null, max: null }, ''],
    [{ min: 8, max: 8 }, '8'],
    [{ min: 8, max: 12 }, '8–12'],
    [{ min: 8, max: null }, '8+'],
    [{ min: null, max: 8 }, 'up to 8'],
  ])('%j is "%s"', (range, text) => {
    expect(formatRange(range)).toBe(text)
  })

  it.each([
    [60, '60 s'],
    [90, '90 s'],
    [120, '2 min'],
    [125, '125 s'],
  ])('%d seconds are %s', (seconds, text) => {
    const { number, unit } = formatSeconds({ min: seconds, max: seconds })
    expect(`${number} ${unit}`).toBe(text)
  })

  it('counts and lists', () => {
    expect([formatCount(1, 'lesson'), formatCount(0, 'lesson'), formatList([]), formatList(['a', 'b', 'c'])]).toEqual([
      '1 lesson',
      '0 lessons',
      '',
      'a, b and c',
    ])
  })
})

it('kinds of cue have a letter each', () => {
  expect(new Set(CUE_KINDS.map((kind) => CUE_LOOKS[kind].letter)).size).toBe(CUE_KINDS.length)
})

describe('templates', () => {
  const views = openViews(path.join(projectRoot, 'views', 'templates'), false)
  const frame = {
    token: 't"',
    htmxConfig: '{}',
    seen: 0,
    assets: { js: (n: string) => n, css: (n: string) => n, file: (n: string) => n },
  }
  const error = {
    status: 404,
    code: 'page-missing',
    title: 'Not Found',
    message: '<b>gone</b>',
    details: ['a & b'],
    requestId: 'r1',
  }

  it('of an error say what happened and how to ask for help, and nothing runs in it', () => {
    const html = views.write('error', { ...frame, ...error })
    expect(html).toContain('&lt;b&gt;gone&lt;/b&gt;')
    expect(html).toContain('a &amp; b')
    expect(html).toContain('page-missing')
    expect(views.write('parts/error', { ...frame, ...error })).not.toContain('<b>')
  })

  it('hold nothing inline that the content security policy refuses', () => {
    const html = views.write('lesson', { ...frame, ...buildLessonPage(input) })
    expect(html).not.toMatch(/\sstyle=|\son\w+=|<style|<script(?![^>]*\ssrc=)|javascript:/)
    expect(html).toContain(`hx-headers='{"X-Repslate-Token": "t&quot;"}'`)
  })

  it('fail where a page object lacks a field', () => {
    const { notice: _left, ...page } = buildLessonPage(input)
    expect(() => views.write('lesson', { ...frame, ...page })).toThrow(/lacks a field/)
  })
})

it('a page without a title has the program’s name', () => {
  expect(buildLayout({ title: '', kind: 'shelf' }).title).toBe('Repslate')
})

it('shows where a repetition starts and ends, under the version they belong to; no pictures where there are none', () => {
  const pictures = { start: 'start.jpg', end: 'end.jpg' }
  expect(buildLessonPage(input).pictures).toEqual([])
  expect(buildLessonPage({ ...input, lesson: { ...lesson, pictures } }).pictures).toEqual([
    { src: '/lessons/squat-2/start.jpg?v=3', alt: 'Where Squats starts', label: 'Start' },
    { src: '/lessons/squat-2/end.jpg?v=3', alt: 'Where Squats ends', label: 'End' },
  ])
})

it('says whose left is meant where the class is taught as in a mirror, and nothing elsewhere', () => {
  expect(buildLessonPage(input).sides).toBe('')
  expect(buildLessonPage({ ...input, lesson: { ...lesson, mirrored: true } }).sides).toMatch(/^Taught as in a mirror/)
})
