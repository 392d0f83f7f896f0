/**
 * Lets processes that write to one SQLite store take turns. SQLite gives its lock to whoever asks at the right moment, so that
 * a program that writes in a loop would keep a waiting studio out for seconds. Who waits lays a ticket into a folder beside
 * the store; whoever comes later lets older tickets go first. Nothing is laid down while nobody else waits.
 */
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import { randomBytes } from 'node:crypto'
import { setTimeout as wait } from 'node:timers/promises'

const FOLDER = '.turns'
/** Between two looks. */
const PAUSE_MS = 1
/** A ticket whose owner sleeps holds nobody up for longer. */
const PATIENCE_MS = 250

export interface Turns {
  /**
   * Waits for its turn and takes the lock.
   * @param tryTake true when the lock was taken
   * @returns false when it took longer than the limit
   */
  take: (tryTake: () => boolean, limitMs: number) => Promise<boolean>
}

/** @param now ms of the machine's clock, which all processes share */
export function openTurns(dataFolder: string, now: () => number): Turns {
  const folder = path.join(dataFolder, FOLDER)
  mkdirSync(folder, { recursive: true, mode: 0o700 })
  const own = `${process.pid}-${randomBytes(4).toString('hex')}`
  let count = 0
  return {
    take: async (tryTake, limitMs) => {
      if (readTickets(folder).length === 0 && tryTake()) return true
      count += 1
      const startMs = now()
      const ticket = `${String(startMs).padStart(15, '0')}-${own}-${count}`
      writeFileSync(path.join(folder, ticket), '')
      try {
        while (now() - startMs < limitMs) {
          if (!mustLetGo(folder, ticket, now() - startMs) && tryTake()) return true
          await wait(PAUSE_MS)
        }
        return false
      } finally {
        rmSync(path.join(folder, ticket), { force: true })
      }
    },
  }
}

function readTickets(folder: string): string[] {
  try {
    return readdirSync(folder)
  } catch {
    // the folder was taken away: nobody waits, and the lock itself still holds
    return []
  }
}

/** True while an older ticket of a living process waits, for a while. */
function mustLetGo(folder: string, ticket: string, waitedMs: number): boolean {
  const older = readTickets(folder).filter((other) => other < ticket)
  for (const other of older) if (!isAlive(other)) rmSync(path.join(folder, other), { force: true })
  return waitedMs < PATIENCE_MS && older.some(isAlive)
}

/** A signal of 0 is not sent; it only asks whether there is such a process. */
function isAlive(ticket: string): boolean {
  try {
    process.kill(Number(ticket.split('-')[1]), 0)
    return true
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM'
  }
}
