/** The second reader's settings: off unless a person sets an address, and its key is never shown again. */
import { z } from 'zod'
import { AppError } from './errors.ts'

/** RFC 3986 (2005), section 3, the plain part of it: scheme, a host of ASCII or in brackets, port, path. */
const PLAIN = /^https?:\/\/([a-z0-9.-]+|\[[0-9a-f:.]+\])(:\d{1,5})?(\/[\w.~%:@!$&'()*+,;=/-]*)?$/i

/** 127.0.0.0/8 and ::1 (RFC 6890, 2013), and the name that stands for them (RFC 6761 (2013), section 6.3). */
const ON_THIS_MACHINE = /^http:\/\/(127(\.\d{1,3}){3}|\[::1\]|localhost)(:\d{1,5})?(\/|$)/i

const isPrivate = (url: string): boolean => /^https:/i.test(url) || ON_THIS_MACHINE.test(url)

/** Words of a class and a key travel to it: nobody on the way may read them, unless there is no way. */
export const ReaderAddress = z
  .url({ protocol: /^https?$/, error: 'is no address that starts with https:// or http://', abort: true })
  .max(2000)
  .regex(PLAIN, { error: 'must be a plain address, without name, password, question mark or #', abort: true })
  .refine(isPrivate, 'must start with https://; http:// is for this machine only, such as http://127.0.0.1:8080/v1')

/** What a header can carry (RFC 9110 (2022), section 5.5, without blanks): a fault of sending would print any other key. */
export const ReaderKey = z
  .string()
  .max(4000)
  .regex(/^[\x21-\x7e]+$/, 'may hold letters, digits and signs of ASCII only, without blanks')

export const SecondReaderSettings = z.object({
  /** Up to and without `/chat/completions`. */
  url: ReaderAddress,
  model: z.string().min(1).max(200),
  /** Sent as a bearer token; null = none. */
  key: ReaderKey.nullable().default(null),
  timeoutMs: z.coerce.number().int().min(100).max(600_000).default(120_000),
})
export type SecondReaderSettings = z.infer<typeof SecondReaderSettings>

/** As the settings page keeps it, in a file that only the studio's own user may read. */
export const SavedReader = SecondReaderSettings.extend({ isOn: z.boolean() })
export type SavedReader = z.infer<typeof SavedReader>

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
