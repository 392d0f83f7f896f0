/** The studio: everything an action needs, opened once and handed in. */
import { existsSync } from 'node:fs'
import { mkdir } from 'node:fs/promises'
import path from 'node:path'
import { findFfmpeg } from '../core/media/engine/find-ffmpeg.ts'
import type { Ffmpeg } from '../core/media/engine/find-ffmpeg.ts'
import { LOCAL_OWNER } from '../shared/actors.ts'
import type { Actor } from '../shared/actors.ts'
import { AppError } from '../shared/errors.ts'
import type { Settings } from './settings.ts'
import { openFolderStorage } from './storage/open-folder-storage.ts'
import type { Storage } from './storage/storage.ts'
import type { Events } from './store/follow-events.ts'
import { makeIds } from './store/make-ids.ts'
import { openStore } from './store/open-store.ts'
import type { Store } from './store/open-store.ts'
import { STORE_FILE } from './store/open-sqlite.ts'

export interface Studio {
  store: Store
  /** Recordings, clips and what is made of them. */
  storage: Storage
  /** The store's events, also those of other processes. */
  events: Events
  /** Who acts: the one local owner, until there are accounts. */
  actor: Actor
  /** A new id, unlike any other. */
  ids: () => string
  /** UTC ms. */
  clock: () => number
  dataFolder: string
  /** null = none was found; pages work, media work does not. */
  ffmpeg: Ffmpeg | null
  settings: Settings
  /** Hears faults that no request waits for. */
  onFault: (error: unknown) => void
  /** Adds work for the stop, such as ending running jobs; the last added is done first, before the store closes. */
  beforeClose: (work: () => Promise<void>) => void
  close: () => Promise<void>
}

export interface Outside {
  clock?: () => number
  ids?: () => string
  onFault?: (error: unknown) => void
}

/** @throws AppError out-not-writable, store-open, store-newer, store-busy, ffmpeg-missing when a setting names a broken one */
export async function openStudio(settings: Settings, outside: Outside = {}): Promise<Studio> {
  const { clock = Date.now, onFault = () => undefined } = outside
  const ids = outside.ids ?? makeIds(clock)
  await makeDataFolder(settings.dataFolder)
  const place =
    settings.databaseUrl === null ? { dataFolder: settings.dataFolder } : { databaseUrl: settings.databaseUrl }
  const ffmpeg = await findFfmpegOrNull()
  const storage = await openFolderStorage(path.join(settings.dataFolder, 'media'), clock())
  const store = await openStore(place, { ids, clock, onFault })
  const endings: (() => Promise<void>)[] = []
  return {
    store,
    storage,
    events: store.events,
    actor: LOCAL_OWNER,
    ids,
    clock,
    dataFolder: settings.dataFolder,
    ffmpeg,
    settings,
    onFault,
    beforeClose: (work) => void endings.unshift(work),
    close: async () => {
      for (const end of endings.splice(0)) await end().catch(onFault)
      await store.close()
    },
  }
}

/** Nothing is made. With PostgreSQL whoever set its address answers for what lies there. */
export function isStudioThere({ databaseUrl, dataFolder }: Pick<Settings, 'databaseUrl' | 'dataFolder'>): boolean {
  return databaseUrl !== null || existsSync(path.join(dataFolder, STORE_FILE))
}

async function makeDataFolder(folder: string): Promise<void> {
  try {
    await mkdir(folder, { recursive: true, mode: 0o700 })
  } catch (cause) {
    throw new AppError(
      'out-not-writable',
      `The data folder ${folder} cannot be made: ${(cause as Error).message}. Name another with REPSLATE_DATA.`,
      { cause },
    )
  }
}

/** A setting that names a broken ffmpeg is a fault to tell; that none is installed is not. */
async function findFfmpegOrNull(): Promise<Ffmpeg | null> {
  try {
    return await findFfmpeg()
  } catch (error) {
    const named = ['REPSLATE_FFMPEG', 'REPSLATE_FFPROBE'].some((name) => process.env[name])
    if (!named && error instanceof AppError && error.code === 'ffmpeg-missing') return null
    throw error
  }
}
