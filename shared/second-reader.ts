/** The second reader's settings: off unless a person sets an address, and its key is never shown again. */
import { z } from 'zod'
import { AppError } from './errors.ts'

export const SecondReaderSettings = z.object({
  /** Up to and without `/chat/completions`. */
  url: z.url({ protocol: /^https?$/ }),
  model: z.string().min(1),
  /** Sent as a bearer token; null = none. Never written anywhere. */
  key: z.string().min(1).nullable().default(null),
  timeoutMs: z.coerce.number().int().min(100).max(600_000).default(120_000),
})
export type SecondReaderSettings = z.infer<typeof SecondReaderSettings>

/** The same, its key out of sight: printing, spreading or writing the settings down does not show it. */
export function hideKey({ key, ...rest }: SecondReaderSettings): SecondReaderSettings {
  return Object.defineProperty({ ...rest, key: null }, 'key', { value: key, enumerable: false })
}

/** The second reader of the environment; null when no address is set. @throws AppError setting-wrong */
export function readSecondReader(env: Readonly<Record<string, string | undefined>>): SecondReaderSettings | null {
  if (!env['REPSLATE_READER_URL']) return null
  const read = SecondReaderSettings.safeParse({
    url: env['REPSLATE_READER_URL'],
    model: env['REPSLATE_READER_MODEL'],
    key: env['REPSLATE_READER_KEY'] || undefined,
    timeoutMs: env['REPSLATE_READER_TIMEOUT_MS'] || undefined,
  })
  if (read.success) return hideKey(read.data)
  const details = read.error.issues.map(
    ({ path, message }) => `REPSLATE_READER_${path.join('_').toUpperCase()}: ${message}`,
  )
  throw new AppError('setting-wrong', 'The second reader cannot be used. Correct its settings or take them away.', {
    details,
  })
}
