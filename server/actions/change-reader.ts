/**
 * The second reader of a studio: set on the settings page, kept in a file beside the store, tried on two sentences of our
 * own. Its key goes to the address it was typed for, and is shown, logged and backed up nowhere.
 */
import { chmod, readFile, rm } from 'node:fs/promises'
import path from 'node:path'
import { z } from 'zod'
import { draftSheet } from '../../core/draft/draft-sheet.ts'
import { parseTranscript } from '../../core/transcript/parse-transcript.ts'
import { mustBeAllowed } from '../../shared/actors.ts'
import { AppError } from '../../shared/errors.ts'
import { hideKey, ReaderAddress, ReaderKey, SavedReader } from '../../shared/second-reader.ts'
import type { SecondReaderSettings } from '../../shared/second-reader.ts'
import { writeTextFile } from '../files/text-files.ts'
import type { Studio } from '../studio.ts'
import { askSecondReader } from './ask-second-reader.ts'

/** Its file in the data folder; not in the store, so that no backup or dump of it holds the key. */
export const READER_FILE = 'second-reader.json'
/** A page waits for a trial: no longer than this, in ms. */
const TRIAL_MS = 30_000

type Needs = Pick<Studio, 'store' | 'actor' | 'settings' | 'dataFolder'>
type Place = Pick<Studio, 'settings' | 'dataFolder'>

/** What the settings page may know: everything but the key. */
export interface ShownReader {
  /** environment = set there, and changed only there. */
  from: 'environment' | 'page'
  isOn: boolean
  url: string
  model: string
  hasKey: boolean
}

export const ReaderInput = z.object({
  isOn: z.boolean(),
  /** '' while it is off = forget it all. */
  url: z.string().trim(),
  model: z.string().trim(),
  /** '' = the one that was typed before, as long as the address is the same machine's. */
  key: z.string().trim(),
  forgetKey: z.boolean(),
})
export type ReaderInput = z.infer<typeof ReaderInput>

/** Whom the studio asks about drafted classes: that of the environment, else that of the page while it is on. @throws AppError setting-wrong */
export async function findReader({ settings, dataFolder }: Place): Promise<SecondReaderSettings | null> {
  if (settings.reader) return settings.reader
  const saved = await readSaved(dataFolder)
  return saved?.isOn ? hideKey(saved) : null
}

/** That of the page, also while it is off: for a person who asks for it by name. @throws AppError setting-wrong */
export async function savedReader({ dataFolder }: Pick<Studio, 'dataFolder'>): Promise<SecondReaderSettings | null> {
  const saved = await readSaved(dataFolder)
  return saved && hideKey(saved)
}

/** @throws AppError setting-wrong, not-allowed */
export async function showReader({ actor, settings, dataFolder }: Needs): Promise<ShownReader> {
  mustBeAllowed(actor, 'studio.read', { type: 'setting', id: 'second-reader' })
  const { reader } = settings
  const now = reader ? { ...reader, key: reader.key, isOn: true } : await readSaved(dataFolder)
  return {
    from: reader ? 'environment' : 'page',
    isOn: now?.isOn ?? false,
    url: now?.url ?? '',
    model: now?.model ?? '',
    hasKey: (now?.key ?? null) !== null,
  }
}

/** @throws AppError setting-wrong with a line for each fault, not-allowed, out-not-writable, disk-full */
export async function changeReader(
  { store, actor, settings, dataFolder }: Needs,
  input: z.input<typeof ReaderInput>,
): Promise<void> {
  const { isOn, url, model, key, forgetKey } = ReaderInput.parse(input)
  mustBeAllowed(actor, 'setting.change', { type: 'setting', id: 'second-reader' })
  if (settings.reader) throw wrong(['It is set in the environment of the studio, and is changed there.'])
  const file = path.join(dataFolder, READER_FILE)
  if (url === '' && model === '' && !isOn) {
    await rm(file, { force: true })
    return store.audit.add(actor, 'setting.change', { type: 'setting', id: 'second-reader' }, { isOn })
  }
  mustBeRight(url, model, key)
  const before = await readSaved(dataFolder)
  // a key is never carried to another machine than the one it was typed for
  const kept = before && originOf(before.url) === originOf(url) && !forgetKey ? before.key : null
  const saved = SavedReader.parse({ isOn, url, model, key: key === '' ? kept : key })
  await writeTextFile(file, `${JSON.stringify(saved, null, 2)}\n`, 0o600)
  await chmod(file, 0o600)
  const details = { isOn, url, model, hasKey: saved.key !== null }
  await store.audit.add(actor, 'setting.change', { type: 'setting', id: 'second-reader' }, details)
}

const TRIAL = `[0:00] First exercise is the goblet squat. Hold the bell at your chest. Sit down between your heels and stand up.
[0:20] The mirror is your friend here. Three sets of eight.`

/**
 * Asks it about two sentences that nobody said in any class.
 * @returns ms it took, and what it proposed
 * @throws AppError second-reader, setting-wrong, not-allowed
 */
export async function tryReader(
  studio: Needs & Pick<Studio, 'clock'>,
  signal?: AbortSignal,
): Promise<{ tookMs: number; added: number; refused: number }> {
  mustBeAllowed(studio.actor, 'setting.change', { type: 'setting', id: 'second-reader' })
  const reader = studio.settings.reader ?? (await savedReader(studio))
  if (!reader) throw wrong(['Give its address and model first.'])
  const transcript = parseTranscript(TRIAL, { durationMs: 60_000 })
  const lines = transcript.kind === 'timed' ? transcript.lines : []
  const asked = hideKey({ ...reader, key: reader.key, timeoutMs: Math.min(TRIAL_MS, reader.timeoutMs) })
  const startUtc = studio.clock()
  const { added, refused } = await askSecondReader(asked, lines, draftSheet({ transcript }), signal)
  return { tookMs: studio.clock() - startUtc, added, refused }
}

async function readSaved(dataFolder: string): Promise<SavedReader | null> {
  const file = path.join(dataFolder, READER_FILE)
  const text = await readFile(file, 'utf8').catch((cause: NodeJS.ErrnoException) => {
    if (cause.code === 'ENOENT') return null
    throw new AppError('setting-wrong', `The settings of the second reader in ${file} cannot be read.`, { cause })
  })
  if (text === null) return null
  const read = SavedReader.safeParse(parseJson(text))
  if (read.success) return read.data
  // without the cause, which might quote the file
  throw new AppError('setting-wrong', `The settings of the second reader in ${file} are damaged. Delete that file.`)
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text) as unknown
  } catch {
    return null
  }
}

function mustBeRight(url: string, model: string, key: string): void {
  const address = ReaderAddress.safeParse(url)
  const details = [
    ...(url === ''
      ? ['Address: give it, or turn the second reader off and leave address and model empty to forget it.']
      : (address.error?.issues ?? []).map(({ message }) => `Address: ${message}.`)),
    ...(model === '' ? ['Model: give its name, as that address calls it.'] : []),
    ...(key === '' || ReaderKey.safeParse(key).success ? [] : ['Key: letters, digits and signs only, without blanks.']),
  ]
  if (details.length > 0) throw wrong(details)
}

const originOf = (url: string): string => new URL(url).origin

function wrong(details: string[]): AppError {
  return new AppError('setting-wrong', 'The second reader was left as it was.', { details })
}
