/** The last stop of every request: what nobody answered, and every error. HTML for people, a part for htmx, JSON for programs. */
import type { ErrorRequestHandler, Request, RequestHandler, Response } from 'express'
import { AppError } from '../../shared/errors.ts'
import { escapeHtml, pageTools, writePage } from '../render.ts'
import { explainError } from './explain-error.ts'
import type { Explained } from './explain-error.ts'

/** Where a page shows an error that came instead of a part of it. */
export const MESSAGES_ELEMENT = '#messages'

/** What the templates `error` (a page) and `parts/error` get. */
export interface ErrorView extends Explained {
  requestId: string
  /** True = a member asked, who goes on in the library. */
  forMembers: boolean
}

export function answerMissing(): RequestHandler {
  return (_req, _res, next) => next(new AppError('page-missing', 'There is nothing at this address.'))
}

/** @param onFault hears errors that are a fault of this machine or program */
export function answerErrors(onFault: (error: unknown) => void): ErrorRequestHandler {
  return (error, req, res, _next) => {
    const view = {
      ...explainError(error),
      requestId: String(res.getHeader('X-Request-Id') ?? ''),
      forMembers: isForMembers(req.path),
    }
    if (view.status >= 500) onFault(error)
    if (res.headersSent) {
      // half an answer must not look like a whole one
      res.destroy()
      return
    }
    for (const name of [
      'Content-Type',
      'Content-Length',
      'Content-Disposition',
      'ETag',
      'Last-Modified',
      'Accept-Ranges',
    ]) {
      res.removeHeader(name)
    }
    // RFC 9110, section 14.4: a 416 says how long the file is
    if (view.status !== 416) res.removeHeader('Content-Range')
    res.setHeader('Cache-Control', 'no-store')
    if (view.status === 429 || view.status === 503) res.setHeader('Retry-After', '5')
    res.status(view.status)
    answer(req, res, view, onFault)
  }
}

function answer(req: Request, res: Response, view: ErrorView, onFault: (error: unknown) => void): void {
  res.vary('Accept')
  if (req.headers['hx-request'] === 'true') {
    res.setHeader('HX-Retarget', MESSAGES_ELEMENT)
    res.setHeader('HX-Reswap', 'innerHTML')
    res.type('html').send(writeOr('parts/error', plainPart, res, view, onFault))
    return
  }
  if (/\btext\/html\b/.test(req.headers.accept ?? '')) {
    res.type('html').send(writeOr('error', plainPage, res, view, onFault))
    return
  }
  // as bytes: express would add a charset, which this media type does not have
  res.setHeader('Content-Type', 'application/problem+json')
  res.send(Buffer.from(JSON.stringify(writeProblem(view))))
}

/** RFC 9457 (2023): "about:blank" means that the title is the status's; code, details and requestId are our extensions. */
export function writeProblem({ status, code, title, message, details, requestId }: ErrorView): Record<string, unknown> {
  return { type: 'about:blank', title, status, detail: message, code, details, requestId }
}

/** An error is also told when the template that should tell it is broken or absent. */
function writeOr(
  template: string,
  plain: (view: ErrorView) => string,
  res: Response,
  view: ErrorView,
  onFault: (error: unknown) => void,
): string {
  try {
    return pageTools(res).views.has(template) ? writePage(res, template, view) : plain(view)
  } catch (fault) {
    onFault(fault)
    return plain(view)
  }
}

const isForMembers = (path: string): boolean => /^\/(library|lessons)(\/|$)/.test(path)

function plainPart(view: ErrorView): string {
  const details = view.details.map((line) => `<li>${escapeHtml(line)}</li>`).join('')
  return `<p>${escapeHtml(view.message)}</p>${details === '' ? '' : `<ul>${details}</ul>`}`
}

function plainPage(view: ErrorView): string {
  return `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${escapeHtml(view.title)}</title></head>
<body><main><h1>${escapeHtml(view.title)}</h1>${plainPart(view)}<p><a href="/">Back to the shelf</a></p><p><small>${view.status} ${view.code} ${escapeHtml(view.requestId)}</small></p></main></body>
</html>
`
}
