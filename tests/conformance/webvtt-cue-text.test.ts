// Parses the published cue texts and compares the trees.
// Source: Web Platform Tests, webvtt/parsing/cue-text-parsing (tree form of the html5lib tests).
import { existsSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { unescapeMarkup } from '../../core/captions/read-cue-text.ts'
import { readVtt } from '../../core/captions/read-vtt.ts'
import type { VttNode } from '../../core/captions/vtt-types.ts'

const folder = path.resolve(import.meta.dirname, '../../../shared/captions/webvtt-conformance/cue-text-parsing')
const present = existsSync(folder)
interface Case {
  text: string
  expectedTree: string
}
const groups = ['entities', 'tags', 'text', 'timestamps', 'tree-building']
const cases = present
  ? groups.flatMap((group) => {
      const list = JSON.parse(readFileSync(path.join(folder, `${group}.json`), 'utf8')) as Case[]
      return list.map((one, index) => ({ ...one, name: `${group} ${index}` }))
    })
  : []

describe.skipIf(!present)('cue text trees (outside data: skipped when ../shared is absent)', () => {
  it('holds the 77 cases', () => {
    expect(cases).toHaveLength(77)
  })

  it.each(cases)('$name', ({ text, expectedTree }) => {
    const payload = text.replace(/\n$/, '')
    const { cues } = readVtt(`WEBVTT\n\n00:00:00.000 --> 00:00:01.000\n${payload}\n`)
    expect(printTree(cues[0]?.nodes ?? [])).toBe(expectedTree.replace(/\n$/, ''))
  })
})

/** The form the cases use: two spaces a level, attributes as their own lines. */
function printTree(nodes: readonly VttNode[]): string {
  const lines: string[] = []
  const print = (list: readonly VttNode[], depth: number): void => {
    const pad = `| ${'  '.repeat(depth)}`
    for (const node of list) {
      if (node.type === 'text') lines.push(`${pad}"${node.value}"`)
      else if (node.type === 'timestamp') lines.push(`${pad}<?timestamp ${clock(node.value)}>`)
      else {
        lines.push(`${pad}<${TAGS[node.name] ?? node.name}>`)
        const attributes = [
          ...(node.classes.length > 0 ? [`class="${node.classes.join(' ')}"`] : []),
          ...(node.name === 'v' ? [`title="${unescapeMarkup(node.value ?? '')}"`] : []),
          ...(node.name === 'lang' ? [`lang="${unescapeMarkup(node.value ?? '')}"`] : []),
        ]
        for (const attribute of attributes) lines.push(`${pad}  ${attribute}`)
        print(node.children, depth + 1)
      }
    }
  }
  print(nodes, 0)
  return lines.join('\n')
}

const TAGS: Readonly<Record<string, string>> = { c: 'span', v: 'span', lang: 'span' }

function clock(seconds: number): string {
  const ms = Math.round(seconds * 1000)
  const two = (n: number) => String(n).padStart(2, '0')
  const hours = two(Math.floor(ms / 3_600_000))
  return `${hours}:${two(Math.floor(ms / 60_000) % 60)}:${two(Math.floor(ms / 1000) % 60)}.${String(ms % 1000).padStart(3, '0')}`
}
