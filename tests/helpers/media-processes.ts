/** Finds running processes by a word of their command line (Linux). */
import { readFileSync, readdirSync } from 'node:fs'

/** Ids of processes other than this one whose command line holds the word. */
export function processesWith(word: string): number[] {
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name) && Number(name) !== process.pid)
    .filter((name) => commandLine(name).includes(word))
    .map(Number)
}

/** Waits until no process has the word, at most some seconds. @returns those still there. */
export async function processesLeft(word: string, seconds: number): Promise<number[]> {
  for (let tries = seconds * 20; tries > 0 && processesWith(word).length > 0; tries -= 1) {
    await new Promise((resolve) => setTimeout(resolve, 50))
  }
  return processesWith(word)
}

function commandLine(pid: string): string {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ')
  } catch {
    return ''
  }
}
