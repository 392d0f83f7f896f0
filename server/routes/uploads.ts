/** `/uploads` and `/uploads/:id`: recordings arrive here in as many pieces as it takes (tus 1.0.0, 2016-03-25). */
import { FileStore } from '@tus/file-store'
import { Server } from '@tus/server'
import type { RequestHandler, Router } from 'express'
import { AppError } from '../../shared/errors.ts'
import {
  mayUpload,
  takeUpload,
  takeWaiting,
  UPLOAD_AGE_MS,
  uploadsFolder,
  UploadWords,
  wasTaken,
} from '../actions/take-uploads.ts'
import { statusOf } from '../middleware/explain-error.ts'
import { mendTus } from '../middleware/mend-tus.ts'
import type { Studio } from '../studio.ts'

const PATH = '/uploads'

export function addUploads(app: Router, studio: Studio): void {
  const server = openUploads(studio)
  const handle: RequestHandler = async (req, res) => {
    const id = lastPart(req.path)
    if (req.method === 'HEAD') await takeWaiting(studio, id)
    const taken = req.method === 'HEAD' ? await wasTaken(studio, id) : null
    if (!taken) return server.handle(req, res)
    // the browser lost the answer to its last piece: all is here
    res.setHeader('Upload-Offset', String(taken.bytes))
    res.setHeader('Upload-Length', String(taken.bytes))
    res.setHeader('Cache-Control', 'no-store')
    res.status(200).end()
  }
  // what is being uploaded cannot be read here
  app.get([PATH, `${PATH}/:id`], (req, _res, next) => next(req.method === 'HEAD' ? undefined : 'router'))
  app.all([PATH, `${PATH}/:id`], mendTus(), handle)
}

function openUploads(studio: Studio): Server {
  const datastore = new FileStore({
    directory: uploadsFolder(studio.dataFolder),
    expirationPeriodInMilliseconds: UPLOAD_AGE_MS,
  })
  // its length must be known before the first byte, so that a file that does not fit is refused in time
  datastore.extensions = datastore.extensions.filter((name) => name !== 'creation-defer-length')
  return new Server({
    path: PATH,
    datastore,
    relativeLocation: true,
    maxSize: studio.settings.maxUploadBytes,
    // no other site may read or send anything here
    allowedOrigins: () => false,
    namingFunction: () => studio.ids(),
    onUploadCreate: async (_req, upload) => {
      if (upload.size === undefined) throw new AppError('request-wrong', 'Say how long the file is before sending it.')
      await mayUpload(studio, readWords(upload.metadata), upload.size)
      return {}
    },
    onUploadFinish: async (_req, upload) => {
      await takeUpload(studio, upload.id, readWords(upload.metadata))
      return {}
    },
    onResponseError: (_req, error) => explain(studio, error),
  })
}

/** @throws AppError request-wrong */
function readWords(metadata: Record<string, string | null> | undefined): UploadWords {
  const read = UploadWords.safeParse(metadata ?? {})
  if (read.success) return read.data
  if (read.error.issues.some(({ path }) => path[0] === 'filename')) {
    throw new AppError(
      'request-wrong',
      'The name of the file is empty, longer than 255 characters, or broken. Rename the file and add it again.',
    )
  }
  throw new AppError(
    'request-wrong',
    'The upload does not say which class it belongs to. Load the page and add it again.',
  )
}

/** The body is one sentence that the page can show as it is. */
function explain(studio: Studio, error: Error | { status_code: number; body: string }) {
  if (error instanceof AppError) {
    const status = statusOf(error.code, error.exitCode)
    if (status >= 500 && error.code !== 'disk-full') studio.onFault(error)
    return { status_code: status, body: `${[error.message, ...error.details].join('\n')}\n` }
  }
  if (!('status_code' in error)) {
    studio.onFault(error)
    return { status_code: 500, body: 'A fault of this program. What arrived is kept; go on with the upload.\n' }
  }
  if (error.status_code !== 413) return undefined
  const gigabytes = (studio.settings.maxUploadBytes / 1e9).toFixed(1)
  return { status_code: 413, body: `The file is larger than ${gigabytes} GB, the most this studio takes.\n` }
}

function lastPart(path: string): string {
  return path.slice(path.lastIndexOf('/') + 1)
}
