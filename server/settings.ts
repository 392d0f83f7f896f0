/** The studio's settings: from the environment, checked once when the program starts. */
import path from 'node:path'
import { z } from 'zod'
import { AppError } from '../shared/errors.ts'
import { readSecondReader } from '../shared/second-reader.ts'
import type { SecondReaderSettings } from '../shared/second-reader.ts'

/** RFC 9110 (2022), section 7.2, and RFC 3986 (2005), section 3.2: a name or address, in brackets when IPv6, and a port. */
const HOST_NAME = /^(\[[0-9a-f:.]+\]|[0-9a-z]([0-9a-z.-]*[0-9a-z])?)(:\d{1,5})?$/

export const Settings = z.object({
  /** The address to listen on. Loopback unless a person says otherwise, because a studio has no accounts yet. */
  host: z.string().min(1).default('127.0.0.1'),
  /** The first port to try; a busy one moves on to the next. 0 = any free one. */
  port: z.coerce.number().int().min(0).max(65_535).default(4180),
  /** Absolute path of the folder that holds the store, the media and the uploads. */
  dataFolder: z.string().min(1),
  /** Further names by which a browser may call this studio, such as `studio.example.org`; without a port, any port. */
  allowedHosts: z
    .string()
    .default('')
    .transform((text) => text.split(/[\s,]+/).filter((name) => name !== ''))
    .pipe(z.array(z.string().toLowerCase().regex(HOST_NAME, 'is not the name of a host'))),
  /** The largest recording that may be uploaded, in bytes. */
  maxUploadBytes: z.coerce
    .number()
    .int()
    .positive()
    .default(64 * 1024 ** 3),
  /** PostgreSQL instead of SQLite. */
  databaseUrl: z
    .string()
    .regex(/^postgres(ql)?:\/\//, 'must start with postgres://')
    .nullable()
    .default(null),
  /** A folder whose recordings are taken in by themselves. Absolute path, null = none. */
  inboxFolder: z.string().min(1).nullable().default(null),
  /** Asked about the words of every class once they are drafted; null = as the settings page says. */
  reader: z.custom<SecondReaderSettings>().nullable().default(null),
  /** For people who work on the templates: they are read again at every page. */
  freshTemplates: z.boolean().default(false),
})
export type Settings = z.infer<typeof Settings>

/** Which variable gives which setting. */
export const SETTING_NAMES = {
  host: 'REPSLATE_HOST',
  port: 'REPSLATE_PORT',
  dataFolder: 'REPSLATE_DATA',
  allowedHosts: 'REPSLATE_ALLOWED_HOSTS',
  maxUploadBytes: 'REPSLATE_MAX_UPLOAD_BYTES',
  databaseUrl: 'DATABASE_URL',
  inboxFolder: 'REPSLATE_INBOX',
  reader: 'REPSLATE_READER_IN_STUDIO',
  freshTemplates: 'REPSLATE_FRESH_TEMPLATES',
} as const satisfies Record<keyof Settings, string>

type Environment = Readonly<Record<string, string | undefined>>

/**
 * An empty variable counts as not set; folders are taken from the project's folder.
 * @param given what the command line says; it comes before the environment
 * @throws AppError setting-wrong, one line for each wrong setting
 */
export function readSettings(
  env: Environment,
  projectFolder: string,
  given: { host?: string; port?: string; dataFolder?: string } = {},
): Settings {
  const said = (name: keyof Settings): string | undefined =>
    (name in given ? given[name as keyof typeof given] : undefined) || env[SETTING_NAMES[name]] || undefined
  const inbox = said('inboxFolder')
  const read = Settings.safeParse({
    host: said('host'),
    port: said('port'),
    dataFolder: path.resolve(projectFolder, said('dataFolder') ?? path.join('data', 'studio')),
    allowedHosts: said('allowedHosts'),
    maxUploadBytes: said('maxUploadBytes'),
    databaseUrl: said('databaseUrl'),
    inboxFolder: inbox === undefined ? undefined : path.resolve(projectFolder, inbox),
    reader: said('reader') === '1' ? readReader(env) : null,
    freshTemplates: said('freshTemplates') === '1',
  })
  if (read.success) return read.data
  const lines = read.error.issues.map((issue) => `${SETTING_NAMES[issue.path[0] as keyof Settings]}: ${issue.message}`)
  throw new AppError('setting-wrong', 'A setting cannot be used. Correct it or take it away.', { details: lines })
}

/** The reader of the command "draft" is the studio's only when a person says so: the words of all classes go to it then. */
function readReader(env: Environment): SecondReaderSettings {
  const reader = readSecondReader(env)
  if (reader) return reader
  throw new AppError('setting-wrong', 'A second reader is wanted in the studio and has no address.', {
    details: ['REPSLATE_READER_URL: give its address, or take REPSLATE_READER_IN_STUDIO away'],
  })
}
