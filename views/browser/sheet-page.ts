// What the class page and the checks page share: edits are sent in order, the answer is put in place, other tabs' edits are followed.
import { bringBack, keepForLater, swapParts } from './swap-parts.ts'
import type { Parts } from './swap-parts.ts'

interface Answer {
  sheetId: string
  version: number
  parts: Parts
  /** What others changed since the version that was asked from; '' = nothing. */
  changed?: string
}

export interface SheetPage {
  root: HTMLElement
  /** Writes edits that no form makes. @returns whether they were written */
  sendEdits: (ops: readonly object[]) => Promise<boolean>
  /** Presses Undo or Redo. */
  press: (id: 'undo' | 'redo') => void
  /** Opens another exercise. */
  open: (segmentId: string) => Promise<void>
  onChange: (listener: () => void) => void
}

const RETRY_MS = [400, 1200, 3000]
const NOT_REACHED = 'The studio cannot be reached. What you typed is still here; try again in a moment.'

export function openSheetPage(root: HTMLElement): SheetPage {
  const { address = '', token = '', page = 'class', sheet = '' } = root.dataset
  const listeners: (() => void)[] = []
  const inOrder = queueOf()
  const released = followPointer()

  const take = async (answer: Answer, sent: HTMLFormElement | null = null): Promise<void> => {
    // a part must not be swapped between the press and the release of a button in it
    await released()
    root.dataset['version'] = String(answer.version)
    swapParts(root, answer.parts, sent)
    for (const listener of listeners) listener()
  }
  const looking = (): Record<string, string> => ({ page, segment: root.dataset['segment'] ?? '' })
  const version = (): string => root.dataset['version'] ?? '0'

  const send = async (to: string, body: URLSearchParams | string, form: HTMLFormElement | null): Promise<boolean> => {
    form?.querySelector('.form-fault')?.remove()
    const again = findAgain(form)
    const type = typeof body === 'string' ? 'application/json' : 'application/x-www-form-urlencoded'
    const headers = { 'X-Repslate-Token': token, Accept: 'application/json', 'Content-Type': type }
    const response = await askAgain(to, { method: 'POST', headers, body: body.toString() })
    if (!response) {
      tell(NOT_REACHED, 'stop')
      return false
    }
    const answer = (await response.json().catch(() => ({}))) as Partial<Answer> & { detail?: string; kept?: string }
    if (answer.parts) await take(answer as Answer, response.ok ? form : null)
    if (response.ok) return true
    showFault(again(), [answer.detail ?? 'This was not written. Try again.', answer.kept ?? ''].join(' ').trim())
    return false
  }

  const submit = (form: HTMLFormElement, submitter: HTMLElement | null): void => {
    const body = readForm(form, submitter)
    if (!body.has('opId')) body.set('opId', newId())
    const wanted = form.dataset['edge'] === undefined ? null : findClock(form)
    void inOrder(async () => {
      if (body.has('baseVersion')) body.set('baseVersion', version())
      const isWritten = await send(form.action, body, form)
      if (isWritten && wanted !== null) root.dispatchEvent(new CustomEvent('edge', { detail: wanted }))
    })
  }

  const refresh = (isOpening = false): Promise<void> =>
    inOrder(async () => {
      const query = new URLSearchParams({ ...looking(), have: isOpening ? '-1' : version() })
      const response = await askAgain(`${address}/parts?${query.toString()}`, {
        headers: { Accept: 'application/json' },
      })
      if (response?.status !== 200) return
      const answer = (await response.json()) as Answer
      if (sheet === '') return void location.reload()
      await take(answer)
      if (!isOpening && answer.changed) tell(answer.changed, 'note')
    })

  sendFormsByScript(root, submit)
  followOthers(root, sheet, () => void refresh())
  bringBack(root, `typed-${address}`)
  window.addEventListener('pagehide', () => keepForLater(root, `typed-${address}`))

  return {
    root,
    sendEdits: (ops) =>
      inOrder(() => {
        const edits = ops.map((op) => ({ opId: newId(), op }))
        const query = new URLSearchParams(looking())
        const body = JSON.stringify({ baseVersion: Number(version()), edits })
        return send(`${address}/edits?${query.toString()}`, body, null)
      }),
    press: (id) => root.querySelector<HTMLButtonElement>(`#${id}:not(:disabled)`)?.click(),
    open: async (segmentId) => {
      root.dataset['segment'] = segmentId
      await refresh(true)
    },
    onChange: (listener) => void listeners.push(listener),
  }
}

/** A line of words at the foot of the page; screen readers say it. */
export function tell(text: string, kind: 'note' | 'stop'): void {
  const line = document.createElement('p')
  line.className = 'toast'
  line.dataset['kind'] = kind
  line.textContent = text
  document.querySelector('#messages')?.replaceChildren(line)
  if (kind === 'note') window.setTimeout(() => line.remove(), 6000)
}

function showFault(form: HTMLFormElement | null, text: string): void {
  if (!form) return tell(text, 'stop')
  const line = document.createElement('p')
  line.className = 'field-fault form-fault'
  line.setAttribute('role', 'alert')
  line.textContent = text
  form.append(line)
}

/** A form may be swapped while it is sent: the newer one has a field or button of the same id. */
function findAgain(form: HTMLFormElement | null): () => HTMLFormElement | null {
  const id = form?.querySelector('[id]')?.id ?? ''
  return () => {
    if (form?.isConnected) return form
    return id === '' ? null : (document.getElementById(id)?.closest('form') ?? null)
  }
}

/** Forms go by script; those marked `data-auto` go by themselves when a field of theirs was changed. */
function sendFormsByScript(root: HTMLElement, submit: (form: HTMLFormElement, by: HTMLElement | null) => void): void {
  const sentAs = new WeakMap<HTMLFormElement, string>()
  root.addEventListener('submit', (event) => {
    const form = event.target
    if (!(form instanceof HTMLFormElement) || !form.hasAttribute('data-edit')) return
    event.preventDefault()
    const text = readForm(form, event.submitter).toString()
    const isAuto = form.hasAttribute('data-auto')
    // the Enter key changes a field and then sends its form: one edit is enough
    if (isAuto && !(event.submitter as HTMLButtonElement | null)?.value && sentAs.get(form) === text) return
    sentAs.set(form, text)
    submit(form, event.submitter)
  })
  root.addEventListener('change', (event) => {
    const form = (event.target as Partial<HTMLInputElement> | null)?.form
    if (form?.hasAttribute('data-auto') && form.reportValidity()) form.requestSubmit()
  })
}

function readForm(form: HTMLFormElement, submitter: HTMLElement | null): URLSearchParams {
  const fields = [...new FormData(form, submitter)]
  return new URLSearchParams(fields.map(([name, value]) => [name, typeof value === 'string' ? value : '']))
}

function findClock(form: HTMLFormElement): string | null {
  const field = form.querySelector<HTMLInputElement>('.clock-input')
  // what was taken from the film is shown already
  return field && field.dataset['fromFilm'] === undefined ? field.id : null
}

function followOthers(root: HTMLElement, sheetId: string, refresh: () => void): void {
  const id = root.dataset['address']?.split('/').at(-1) ?? ''
  const topics = `${sheetId === '' ? 'sheets' : `sheets/${sheetId}`},recordings/${id}`
  // what changed while the page was on its way is told first
  const stream = new EventSource(`/events?topics=${topics}&since=${root.dataset['seen'] ?? ''}`)
  stream.addEventListener('sheets', refresh)
  stream.addEventListener('again', refresh)
  stream.addEventListener('recordings', () => root.dispatchEvent(new CustomEvent('recording')))
  window.addEventListener('pagehide', () => stream.close())
  window.addEventListener('pageshow', (event) => {
    if (event.persisted) location.reload()
  })
}

/** The same question, whose edits carry the same names, may be asked more than once. null = no answer. */
async function askAgain(to: string, what: RequestInit): Promise<Response | null> {
  for (const waitMs of [...RETRY_MS, null]) {
    try {
      return await fetch(to, what)
    } catch {
      if (waitMs === null) return null
      await new Promise((resolve) => window.setTimeout(resolve, waitMs))
    }
  }
  return null
}

function queueOf(): <Result>(work: () => Promise<Result>) => Promise<Result> {
  let last: Promise<unknown> = Promise.resolve()
  return (work) => {
    const next = last.then(work)
    last = next.catch(() => undefined)
    return next
  }
}

/** @returns a promise that no button is held down */
function followPointer(): () => Promise<void> {
  let isDown = false
  const waiting: (() => void)[] = []
  const release = (): void => {
    isDown = false
    // the click comes right after the release
    window.setTimeout(() => {
      for (const go of waiting.splice(0)) go()
    })
  }
  window.addEventListener('pointerdown', () => (isDown = true), true)
  for (const name of ['pointerup', 'pointercancel', 'blur']) window.addEventListener(name, release, true)
  return () => (isDown ? new Promise((resolve) => waiting.push(resolve)) : Promise.resolve())
}

/** Unlike any other; also where a page came over plain HTTP from another machine, without `randomUUID`. */
function newId(): string {
  return [...crypto.getRandomValues(new Uint8Array(12))].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}
