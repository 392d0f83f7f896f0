/** Turns a page object into HTML with a template. Templates are strict: a field that is missing is a fault, never the word "undefined". */
import { existsSync } from 'node:fs'
import path from 'node:path'
import { Eta } from 'eta'
import type { Response } from 'express'
import type { Frame } from '../views/pages/frame.ts'

/** Templates by name, without `.eta`, from the folder of templates. */
export interface Views {
  /** @throws when the template is missing or prints what is not there */
  write: (template: string, page: object) => string
  has: (template: string) => boolean
}

/**
 * htmx without what the content security policy forbids, and with answers of errors shown. A 204 changes nothing;
 * the server says by header where an error is shown (answer-errors.ts).
 */
export const HTMX_CONFIG = JSON.stringify({
  includeIndicatorStyles: false,
  allowEval: false,
  allowScriptTags: false,
  selfRequestsOnly: true,
  // not "style": the policy refuses it, and no page of ours has one
  attributesToSettle: ['class', 'width', 'height'],
  historyCacheSize: 0,
  refreshOnHistoryMiss: true,
  responseHandling: [
    { code: '204', swap: false },
    { code: '[23]..', swap: true },
    { code: '[45]..', swap: true, error: true },
  ],
})

/** @param fresh read the templates again at every page */
export function openViews(folder: string, fresh: boolean): Views {
  const eta = new Eta({
    views: folder,
    cache: !fresh,
    autoEscape: true,
    autoFilter: true,
    filterFunction: mustBePrintable,
    escapeFunction: escapeHtml,
  })
  return {
    write: (template, page) => eta.render(template, page),
    has: (template) => existsSync(path.join(folder, `${template}.eta`)),
  }
}

/** Sends a page. The page's own fields win over the frame's. */
export function render(res: Response, template: string, page: object): void {
  const html = writePage(res, template, page)
  res.type('html').send(html)
}

/** The same as text, for a part that goes out another way, such as in an event. */
export function writePage(res: Response, template: string, page: object): string {
  const { views, frame } = pageTools(res)
  return views.write(template, { ...frame(res), ...page })
}

/** What the app lays out for every request. */
export interface PageTools {
  views: Views
  frame: (res: Response) => Frame
}

export function pageTools(res: Response): PageTools {
  const tools = (res.app.locals as { pageTools?: PageTools }).pageTools
  if (!tools) throw new Error('The app was built without page tools.')
  return tools
}

/** Text, finite numbers and true or false can be printed; all else in a page object is a fault of the page. */
export function mustBePrintable(value: unknown): string {
  if (typeof value === 'string') return value
  if (typeof value === 'boolean' || (typeof value === 'number' && Number.isFinite(value))) return String(value)
  const what = typeof value === 'number' || value === null ? String(value) : typeof value
  throw new TypeError(`A template prints ${what}. The page object lacks a field, or it has another name.`)
}

const ESCAPES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }

export function escapeHtml(value: unknown): string {
  return mustBePrintable(value).replace(/[&<>"']/g, (letter) => ESCAPES[letter] ?? letter)
}
