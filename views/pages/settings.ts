/** The settings of a studio: its second reader, without the key. */
import { formatCount } from './format.ts'
import { buildLayout } from './layout.ts'
import type { Layout } from './layout.ts'

export interface ReaderEntry {
  /** environment = set there, and changed only there. */
  from: 'environment' | 'page'
  isOn: boolean
  url: string
  model: string
  hasKey: boolean
}

export type ReaderResult =
  | { kind: 'saved' }
  | { kind: 'answered'; tookMs: number; added: number; refused: number }
  | { kind: 'no-use' | 'wrong'; message: string; details: readonly string[] }

export interface SettingsPage {
  layout: Layout
  /** True = the fields can be changed here. */
  isOpen: boolean
  isOn: boolean
  url: string
  model: string
  hasKey: boolean
  keyHelp: string
  state: string
  /** null = nothing was done just now. */
  result: { kind: 'done' | 'stop'; text: string; lines: readonly string[] } | null
}

export function buildSettingsPage(reader: ReaderEntry, result: ReaderResult | null): SettingsPage {
  const { from, isOn, url, model, hasKey } = reader
  return {
    layout: buildLayout({ title: 'Settings', kind: 'shelf', here: 'settings' }),
    ...{ isOpen: from === 'page', isOn, url, model, hasKey },
    keyHelp: hasKey
      ? 'A key is kept, and is never shown again. Leave this empty to keep it; type another to replace it. For an address on another machine it has to be typed anew.'
      : 'Only if the address asks for one. It is never shown again.',
    state: isOn ? 'On' : 'Off',
    result: result && describeResult(result, isOn),
  }
}

function describeResult(result: ReaderResult, isOn: boolean): SettingsPage['result'] {
  switch (result.kind) {
    case 'saved':
      return {
        kind: 'done',
        text: isOn ? 'Saved. Words added from now on are sent to it.' : 'Saved. Nothing is sent to it.',
        lines: [],
      }
    case 'answered': {
      const { added, refused, tookMs } = result
      const seconds = (tookMs / 1000).toFixed(1)
      const text = `It answers, in ${seconds} s and in the form that was asked for.`
      const proposed = `About two sentences of an invented class it proposed ${formatCount(added, 'mark', 'marks')} that can be used`
      const left = refused === 0 ? '.' : `; ${String(refused)} were left out, since their words were not said.`
      const off = isOn ? [] : ['It is off: no class is sent to it.']
      return { kind: 'done', text, lines: [`${proposed}${left}`, ...off] }
    }
    case 'no-use':
    case 'wrong':
      return { kind: 'stop', text: result.message, lines: result.details }
  }
}
