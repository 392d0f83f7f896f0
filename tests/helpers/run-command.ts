// Runs the real repslate command in a process of its own.
import { spawn } from 'node:child_process'
import path from 'node:path'
import { projectRoot } from './source-files.ts'

export interface Ran {
  code: number | null
  stdout: string
  stderr: string
}

export function runCommand(
  args: readonly string[],
  options: { input?: string; cwd?: string; env?: NodeJS.ProcessEnv } = {},
): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [path.join(projectRoot, 'server', 'cli', 'repslate.mjs'), ...args], {
      cwd: options.cwd ?? projectRoot,
      env: { ...process.env, ...options.env },
      stdio: ['pipe', 'pipe', 'pipe'],
    })
    let stdout = ''
    let stderr = ''
    child.stdout.setEncoding('utf8').on('data', (text: string) => (stdout += text))
    child.stderr.setEncoding('utf8').on('data', (text: string) => (stderr += text))
    child.on('error', reject)
    child.on('close', (code) => resolve({ code, stdout, stderr }))
    child.stdin.end(options.input ?? '')
  })
}
