/** Sends a file that does not change under its tag, in whole or in ranges (RFC 9110, 2022, sections 13 and 14). */
import { closeSync, fstatSync, open } from 'node:fs'
import type { Stats } from 'node:fs'
import path from 'node:path'
import { promisify } from 'node:util'
import type { Request, Response } from 'express'
import { AppError } from '../../shared/errors.ts'
import { streamBytes } from './stream-bytes.ts'
import { tidyRange } from './tidy-range.ts'

export interface MediaFile {
  /** Absolute path, made by us and never from what a person typed. */
  path: string
  /** sha256 of the content, or other text that changes with every change of the content. Letters, digits and dashes. */
  etagSha: string
  /** The media type; see type-of-file.ts. */
  type: string
  /** true when the address never stands for another content. false: browsers ask each time whether it is still the same. */
  lasting?: boolean
  /** A file name makes the browser save the file instead of showing it. */
  saveAs?: string
}

const YEAR_SECONDS = 31_536_000

/**
 * Resolves when all is sent or the browser has gone away.
 * @throws AppError row-missing when the file is not there, range-outside, request-outdated
 */
export async function sendMedia(req: Request, res: Response, file: MediaFile): Promise<void> {
  const opened = await openOrNull(file.path)
  try {
    // this asks no disk: the system knows it of a file that is open
    const stats = opened === null ? null : fstatSync(opened)
    if (opened === null || !stats?.isFile()) {
      throw new AppError('row-missing', 'The file is not in the storage any more. Make it again, or restore a backup.')
    }
    setHead(req, res, file, stats)
    const plain = readPlain(req, stats.size)
    if (plain) await sendPlain(res, opened, plain, stats.size)
    else await send(res, file.path)
  } finally {
    if (opened !== null) closeSync(opened)
  }
}

function setHead(req: Request, res: Response, file: MediaFile, stats: Stats): void {
  const representation = { bytes: stats.size, etag: `"${file.etagSha}"`, lastModified: stats.mtime.toUTCString() }
  const fields = tidyRange(req.method, req.headers, representation)
  if (fields === 'changed') {
    throw new AppError('request-outdated', 'The file has changed since it was asked for. Load it again.')
  }
  Object.assign(req.headers, fields)
  for (const name of ['range', 'if-range', 'if-match'] as const) {
    if (req.headers[name] === undefined) delete req.headers[name]
  }
  if (file.saveAs !== undefined) res.attachment(file.saveAs)
  res.setHeader('Content-Type', file.type)
  res.setHeader('ETag', representation.etag)
  res.setHeader('Last-Modified', representation.lastModified)
  res.setHeader(
    'Cache-Control',
    file.lasting === true ? `private, max-age=${YEAR_SECONDS}, immutable` : 'private, no-cache',
  )
}

/** What decides about an answer beside its range; such a request is left to express. */
const CONDITIONS = ['if-match', 'if-unmodified-since', 'if-none-match', 'if-modified-since']

/** The bytes that are asked for where nothing else is to be decided, as players do; null = express decides. */
function readPlain(req: Request, size: number): { start: number; end: number; isPart: boolean } | null {
  if (req.method !== 'GET' || CONDITIONS.some((name) => name in req.headers)) return null
  if (size === 0) return null
  const ranges = req.range(size, { combine: true })
  if (ranges === undefined) return { start: 0, end: size - 1, isPart: false }
  const [range] = ranges === -1 || ranges === -2 || ranges.type !== 'bytes' || ranges.length !== 1 ? [] : ranges
  return range ? { start: range.start, end: range.end, isPart: true } : null
}

async function sendPlain(
  res: Response,
  file: number,
  { start, end, isPart }: { start: number; end: number; isPart: boolean },
  size: number,
): Promise<void> {
  res.setHeader('Accept-Ranges', 'bytes')
  res.setHeader('Content-Length', end - start + 1)
  if (isPart) res.status(206).setHeader('Content-Range', `bytes ${start}-${end}/${size}`)
  await streamBytes(res, file, start, end)
}

function send(res: Response, file: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const options = { root: path.dirname(file), dotfiles: 'allow', cacheControl: false } as const
    res.sendFile(path.basename(file), options, (error?: Error & { code?: string; syscall?: string }) => {
      const left = error?.code === 'ECONNABORTED' || error?.code === 'EPIPE' || error?.syscall === 'write'
      if (error && !left) reject(error)
      else resolve()
    })
  })
}

const openFile = promisify(open)

async function openOrNull(file: string): Promise<number | null> {
  try {
    return await openFile(file, 'r')
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code
    if (code === 'ENOENT' || code === 'ENOTDIR') return null
    throw error
  }
}
