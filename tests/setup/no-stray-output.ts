// Fails a test that prints to the console or raises a Node warning: a quiet run is part of passing.
import { afterEach, beforeEach, expect } from 'vitest'

const methods = ['log', 'info', 'warn', 'error', 'debug'] as const
const original = { ...console }
let stray: string[] = []

const onWarning = (warning: Error): void => {
  stray.push(`warning: ${warning.message}`)
}

beforeEach(() => {
  stray = []
  for (const name of methods) {
    console[name] = (...parts: unknown[]) => {
      stray.push(`console.${name}: ${parts.map(String).join(' ')}`)
    }
  }
  process.on('warning', onWarning)
})

afterEach(() => {
  process.off('warning', onWarning)
  Object.assign(console, original)
  expect(stray, 'a test must not print').toEqual([])
})
