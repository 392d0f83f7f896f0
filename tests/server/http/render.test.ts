// Templates: strict about what they print, and escaped.
import { writeFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { escapeHtml, mustBePrintable, openViews } from '../../../server/render.ts'
import type { Views } from '../../../server/render.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

async function viewsOf(templates: Record<string, string>): Promise<Views> {
  const folder = await tempFolder()
  for (const [name, text] of Object.entries(templates)) await writeFile(path.join(folder, `${name}.eta`), text)
  return openViews(folder, false)
}

describe('a template', () => {
  it.each([
    ['a missing field', '<%= it.dose %>', {}],
    ['a missing field, printed raw', '<%~ it.dose %>', {}],
    ['null', '<%= it.dose %>', { dose: null }],
    ['an object', '<%= it.dose %>', { dose: {} }],
    ['a list', '<%= it.dose %>', { dose: ['a'] }],
    ['not a number', '<%= it.dose %>', { dose: Number.NaN }],
    ['a function', '<%= it.dose %>', { dose: () => 'x' }],
    ['a field of a missing field', '<%= it.dose.reps %>', {}],
  ])('does not print %s', async (_name, template, page) => {
    const views = await viewsOf({ page: template })
    expect(() => views.write('page', page)).toThrow(/template prints|undefined/)
  })

  it('escapes what it prints', async () => {
    const views = await viewsOf({ page: '<p title="<%= it.text %>"><%= it.text %></p>' })
    const escaped = '&lt;img src=x onerror=&quot;a&#39;&amp;b&quot;&gt;'
    expect(views.write('page', { text: `<img src=x onerror="a'&b">` })).toBe(`<p title="${escaped}">${escaped}</p>`)
  })

  it('prints zero, false and an empty text as they are', async () => {
    const views = await viewsOf({ page: '<%= it.a %>|<%= it.b %>|<%= it.c %>' })
    expect(views.write('page', { a: 0, b: false, c: '' })).toBe('0|false|')
  })

  it('stands in its layout and includes parts', async () => {
    const views = await viewsOf({
      layout: '<main><%~ it.body %></main>',
      part: '<b><%= it.name %></b>',
      page: "<% layout('layout') %><%~ include('part', { name: it.name }) %>",
    })
    expect(views.write('page', { name: 'A & B' })).toBe('<main><b>A &amp; B</b></main>')
  })

  it('is not found outside its folder', async () => {
    const views = await viewsOf({ page: 'x' })
    expect(() => views.write('../page', {})).toThrow()
    expect(views.has('page')).toBe(true)
    expect(views.has('pages')).toBe(false)
  })
})

describe('escapeHtml', () => {
  it('is the five letters of WHATWG HTML, "Escaping a string", and the apostrophe', () => {
    expect(escapeHtml(`&<>"'`)).toBe('&amp;&lt;&gt;&quot;&#39;')
    expect(mustBePrintable(1.5)).toBe('1.5')
  })
})
