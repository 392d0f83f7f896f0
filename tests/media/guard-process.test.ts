// What is started for media work gives way to all else on the machine (Linux).
import { getPriority } from 'node:os'
import { expect, it } from 'vitest'
import { guardWorks } from '../../core/media/engine/guard-process.ts'
import { runProcess } from '../../core/media/engine/run-process.ts'

it.runIf(process.platform === 'linux')('media work runs ten steps behind the studio itself', async () => {
  expect(guardWorks()).toBe(true)
  // POSIX nice(1) without operands prints the niceness it runs with (GNU and BusyBox do; POSIX leaves it open)
  const { stdout } = await runProcess('nice', [], { timeoutMs: 5000, maxOutputBytes: 100 })
  expect(Number(stdout)).toBe(Math.min(19, getPriority() + 10))
})
