/** What routes need beside the studio: scripts and templates, sessions, open event streams. Only a serving program opens it. */
import path from 'node:path'
import { buildAssets } from './assets/build-assets.ts'
import type { Assets } from './assets/build-assets.ts'
import { followChanges } from './middleware/follow-changes.ts'
import type { Changes } from './middleware/follow-changes.ts'
import { keepSessions, readSecret } from './middleware/keep-session.ts'
import type { Sessions } from './middleware/keep-session.ts'
import { keepStreams } from './middleware/stream-events.ts'
import type { Streams } from './middleware/stream-events.ts'
import { openViews } from './render.ts'
import type { Views } from './render.ts'
import { projectRoot } from './setup/project-root.ts'
import type { Studio } from './studio.ts'

export interface Door extends Studio {
  assets: Assets
  views: Views
  sessions: Sessions
  /** Open event streams of browsers. */
  streams: Streams
  /** The store's events for many listeners, with memory. */
  changes: Changes
}

export interface DoorOptions {
  /** Made before, as by tests that open many doors. */
  assets?: Assets
}

/** Closes with the studio. @throws AppError assets-broken */
export async function openDoor(studio: Studio, options: DoorOptions = {}): Promise<Door> {
  const viewsFolder = path.join(projectRoot(), 'views')
  const assets = options.assets ?? (await buildAssets(viewsFolder))
  const sessions = keepSessions(await readSecret(studio.dataFolder))
  const streams = keepStreams(sessions.clientOf)
  const changes = await followChanges(studio.events)
  studio.beforeClose(() => {
    streams.close()
    changes.close()
    return Promise.resolve()
  })
  const views = openViews(path.join(viewsFolder, 'templates'), studio.settings.freshTemplates)
  return { ...studio, assets, views, sessions, streams, changes }
}
