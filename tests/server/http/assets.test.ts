// Scripts, styles and fonts: bundled, named by content, kept for ever; nothing in them that the policy forbids.
import { mkdir, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { buildAssets } from '../../../server/assets/build-assets.ts'
import type { Assets } from '../../../server/assets/build-assets.ts'
import { openTestDoor, projectAssets } from '../../helpers/http-door.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

/** Views with these files, by path. */
async function build(files: Record<string, string>): Promise<Assets> {
  const folder = await tempFolder()
  for (const [name, text] of Object.entries(files)) {
    await mkdir(path.dirname(path.join(folder, name)), { recursive: true })
    await writeFile(path.join(folder, name), text)
  }
  return buildAssets(folder)
}

const textOf = (assets: Assets, address: string): string =>
  new TextDecoder().decode(assets.files.get(address.replace('/assets/', ''))?.bytes)

describe('bundles', () => {
  it('are made of every script, of one style sheet, and of what they import', async () => {
    const assets = await build({
      'browser/class.ts':
        "import { beat } from './parts/beat.ts'\nconst n: number = beat(2)\ndocument.title = String(n)",
      'browser/parts/beat.ts': 'export const beat = (n: number): number => n * 21',
      'browser/types.d.ts': 'declare const x: number',
      'styles/main.css': "@import './part.css';\n.bench { background: url('./tape.svg') }",
      'styles/part.css': '.slate { color: red }',
      'styles/tape.svg': '<svg xmlns="http://www.w3.org/2000/svg"/>',
      'static/icon.svg': '<svg xmlns="http://www.w3.org/2000/svg" id="icon"/>',
    })
    expect(textOf(assets, assets.js('class'))).toMatch(/\*21/)
    expect(textOf(assets, assets.css('main'))).toMatch(/\.slate\{color:red\}.*url\("?\/assets\/tape\.[^)]+\.svg"?\)/)
    expect(assets.file('icon.svg')).toMatch(/^\/assets\/icon\.[0-9a-f]{10}\.svg$/)
    expect([...assets.files.keys()].filter((name) => name.startsWith('tape.'))).toHaveLength(1)
    expect(() => assets.js('types')).toThrow(/no js asset/)
    expect(() => assets.css('part')).toThrow(/no css asset/)
  })

  it('have another name when their content is another, and only then', async () => {
    const first = await build({ 'browser/a.ts': 'document.title = "1"' })
    const same = await build({ 'browser/a.ts': 'document.title = "1"' })
    const other = await build({ 'browser/a.ts': 'document.title = "2"' })
    expect(same.js('a')).toBe(first.js('a'))
    expect(other.js('a')).not.toBe(first.js('a'))
  })

  it('that cannot be made are told with their place', async () => {
    await expect(build({ 'browser/a.ts': 'const = 1' })).rejects.toMatchObject({
      code: 'assets-broken',
      details: expect.arrayContaining([expect.stringContaining('a.ts:1:6')]) as string[],
    })
  })

  it('hold htmx and its events extension even where there is nothing else', async () => {
    const assets = await build({})
    expect(textOf(assets, assets.js('htmx'))).toContain('htmx')
    expect(textOf(assets, assets.js('htmx-sse'))).toContain('EventSource')
  })

  it('take fonts from their packages', async () => {
    const assets = await build({
      'styles/main.css':
        "@import '@fontsource-variable/source-sans-3/wght.css';\n@import '@fontsource/barlow-condensed/latin-600.css';",
    })
    const fonts = [...assets.files].filter(([name]) => name.endsWith('.woff2'))
    expect(fonts.map(([name]) => name.split('.')[0])).toEqual(
      expect.arrayContaining(['source-sans-3-latin-wght-normal', 'barlow-condensed-latin-600-normal']),
    )
    // W3C WOFF File Format 2.0, section 4: the first four bytes; RFC 8081 (2017) for the type
    for (const [, font] of fonts) {
      expect(new TextDecoder().decode(font.bytes.subarray(0, 4))).toBe('wOF2')
      expect(font.type).toBe('font/woff2')
    }
    for (const [name] of fonts) expect(textOf(assets, assets.css('main'))).toContain(`/assets/${name}`)
  })
})

describe('the address of an asset', () => {
  it('answers with type and lasting cache', async () => {
    const { ask } = await openTestDoor()
    const assets = await projectAssets()
    const script = await ask(assets.js('every-page'))
    expect(script.status).toBe(200)
    expect(script.headers).toMatchObject({
      // RFC 9239 (2022), section 6
      'content-type': 'text/javascript; charset=utf-8',
      // RFC 8246 (2017), section 2
      'cache-control': 'public, max-age=31536000, immutable',
    })
    const missing = await ask('/assets/every-page.0000000000.js')
    expect(missing.status).toBe(404)
    expect(missing.headers['cache-control']).toBe('no-store')
  })
})

describe('the project’s own assets', () => {
  it('load nothing from elsewhere', async () => {
    const { files } = await projectAssets()
    const styles = [...files].filter(([name]) => name.endsWith('.css'))
    const foreign = styles.flatMap(
      ([, asset]) => new TextDecoder().decode(asset.bytes).match(/url\(["']?(https?:|\/\/)[^)]*/g) ?? [],
    )
    expect(foreign).toEqual([])
  })
})
