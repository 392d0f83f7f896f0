// Turns at the store: older tickets go first, those of dead processes count for nothing, and nobody is waited for without end.
import { readdirSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { expect, it } from 'vitest'
import { openTurns } from '../../../server/store/take-turns.ts'
import { tempFolder } from '../../helpers/temp-folder.ts'

/** A clock that goes on by so much with each look. */
const clockOf = (stepMs: number) => {
  let nowMs = 1_000_000
  return () => (nowMs += stepMs)
}
const LIMIT_MS = 5000

async function lay(pid: number): Promise<{ folder: string; tickets: () => string[] }> {
  const folder = await tempFolder()
  openTurns(folder, Date.now)
  const turns = path.join(folder, '.turns')
  if (pid > 0) writeFileSync(path.join(turns, `000000000000001-${pid}-x-1`), '')
  return { folder, tickets: () => readdirSync(turns) }
}

it('gives up at its limit, and leaves no ticket', async () => {
  const { folder, tickets } = await lay(0)
  expect(await openTurns(folder, clockOf(900)).take(() => false, LIMIT_MS)).toBe(false)
  expect(tickets()).toEqual([])
})

it('lets an older ticket of a living process go first, though the lock is free, and waits no longer than a while', async () => {
  const { folder } = await lay(process.pid)
  const asked: number[] = []
  const now = clockOf(50)
  let nowMs = 0
  const clock = (): number => (nowMs = now())
  const startMs = 1_000_050
  const taken = await openTurns(folder, clock).take(() => asked.push(nowMs - startMs) > 0, LIMIT_MS)
  expect(taken).toBe(true)
  expect(asked).toHaveLength(1)
  expect(asked[0]).toBeGreaterThanOrEqual(250)
  expect(asked[0]).toBeLessThan(500)
})

it('takes away the ticket of a process that is gone, and does not wait for it', async () => {
  // above what Linux gives to processes (kernel documentation, sysctl kernel.pid_max: at most 4194304)
  const { folder, tickets } = await lay(4_194_305)
  const looks: string[] = []
  expect(await openTurns(folder, clockOf(50)).take(() => looks.push('') > 0, LIMIT_MS)).toBe(true)
  expect(looks).toHaveLength(1)
  expect(tickets()).toEqual([])
})

it('lays no ticket down while nobody waits', async () => {
  const { folder, tickets } = await lay(0)
  let seen: string[] = ['?']
  await openTurns(folder, clockOf(1)).take(() => (seen = tickets()) !== null, LIMIT_MS)
  expect(seen).toEqual([])
})
