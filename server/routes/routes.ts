/** Every door of the studio, one line each. The order counts only where two would fit one address. */
import type { Router } from 'express'
import type { Door } from '../door.ts'
import { addAssets } from './assets.ts'
import { addChecks } from './checks.ts'
import { addClass } from './class.ts'
import { addEdits } from './edits.ts'
import { addEvents } from './events.ts'
import { addExports } from './exports.ts'
import { addHealth } from './health.ts'
import { addJobs } from './jobs.ts'
import { addKinds } from './kinds.ts'
import { addLesson } from './lesson.ts'
import { addLessonFiles } from './lesson-files.ts'
import { addLibrary } from './library.ts'
import { addMedia } from './media.ts'
import { addPublish } from './publish.ts'
import { addRecordingPieces } from './recording-pieces.ts'
import { addRecordings } from './recordings.ts'
import { addSession } from './session.ts'
import { addSettings } from './settings.ts'
import { addUploads } from './uploads.ts'

/** A route that needs no more than the studio may ask for a Studio. */
export type AddRoutes = (app: Router, door: Door) => void

export const ROUTES: readonly AddRoutes[] = [
  addAssets,
  addHealth,
  addSession,
  addEvents,
  addUploads,
  addRecordings,
  addRecordingPieces,
  addClass,
  addEdits,
  addChecks,
  addJobs,
  addKinds,
  addSettings,
  addPublish,
  addExports,
  addMedia,
  addLibrary,
  addLesson,
  addLessonFiles,
]
