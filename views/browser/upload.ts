// "Add a class": files go up piece by piece and go on after anything; the words are saved without leaving the page.
import { Upload } from 'tus-js-client'
import { fillFromKind, showPeople } from './answers.ts'
import { buildRow, find } from './upload-row.ts'
import type { Role, Row } from './upload-row.ts'

/** After the last one it waits for the connection, or for the person. */
const RETRY_MS = [0, 1000, 3000, 5000, 10_000, 20_000, 30_000]
/** Time over which the pace is judged. */
const PACE_MS = 15_000

const page = document.querySelector<HTMLElement>('#add')
if (page) openPage(page)

function openPage(add: HTMLElement): void {
  const token = add.dataset['token'] ?? ''
  const form = find<HTMLFormElement>('#words-form')
  const list = find<HTMLElement>('#uploads')
  const input = find<HTMLInputElement>('#files')
  const drop = find<HTMLElement>('#drop')
  const sendRow = find<HTMLElement>('#send-row')
  const waiting: Row[] = []
  let hasSent = false
  /** The place of the film is told anew while the studio looks into it. */
  const hasFilm = (): boolean =>
    hasSent || document.querySelector<HTMLElement>('#film-state > *')?.dataset['hasFilm'] === 'yes'
  const sent: Row[] = []
  const isBusy = (): boolean => sent.some((row) => row.isUnderWay())
  let making: Promise<string> | null = null

  /** The class on this page; it is made when its first file comes. */
  const recordingId = (file: File): Promise<string> => {
    const known = add.dataset['recording'] ?? ''
    if (known !== '') return Promise.resolve(known)
    const title = find<HTMLInputElement>('#title')
    if (title.value.trim() === '') title.value = titleOf(file.name)
    making ??= makeRecording(token, title.value)
      .then((id) => {
        add.dataset['recording'] = id
        form.action = `/recordings/${id}/words`
        history.replaceState(null, '', `/add/${id}`)
        return id
      })
      .finally(() => (making = null))
    return making
  }
  let places = 0
  const start = (row: Row): void => {
    sent.push(row)
    // the parts of a film may arrive in any order; this says which is which
    const known = Number(document.querySelector<HTMLElement>('#film-state > *')?.dataset['parts'] ?? 0)
    const place = row.role() === 'part' ? Math.max(known, places) : 0
    if (row.role() === 'part') places = place + 1
    // from now on the next step is to say what is asked
    document.querySelector('label[for="files"]')?.classList.remove('tape')
    form.querySelector('button[type="submit"]')?.classList.add('tape')
    const idFor = (role: Role): Promise<string> =>
      role === 'own' ? makeRecording(token, titleOf(row.file.name)) : recordingId(row.file)
    void run(row, token, place, idFor).then((isWhole) => {
      if (isWhole && row.role() === 'part') hasSent = true
    })
  }
  const take = (files: readonly File[]): void => {
    const films = files.filter((file) => !file.type.startsWith('audio/'))
    for (const file of inOrder(files)) {
      const isFirst = !hasFilm() && ![...waiting, ...sent].some((row) => row.role() === 'part' && !row.isStuck())
      const row = buildRow(file, roleFor(file, isFirst || isSeries(films)))
      list.append(row.element)
      list.hidden = false
      waiting.push(row)
    }
    // one film needs no further word
    const [only] = waiting
    if (waiting.length === 1 && only?.role() === 'part') sendAll()
    else sendRow.hidden = waiting.length === 0
  }
  const sendAll = (): void => {
    sendRow.hidden = true
    for (const row of waiting.splice(0)) start(row)
  }

  input.addEventListener('change', () => {
    take([...(input.files ?? [])])
    input.value = ''
  })
  find('#send').addEventListener('click', sendAll)
  for (const name of ['dragover', 'drop'] as const) {
    drop.addEventListener(name, (event) => {
      event.preventDefault()
      if (event.type === 'drop') take([...(event.dataTransfer?.files ?? [])])
    })
  }
  window.addEventListener('beforeunload', (event) => {
    if (isBusy()) event.preventDefault()
  })
  saveWithoutLeaving(form, isBusy)
  fillFromKind()
  showPeople()
  readTranscriptFile()
}

/** Sends one file to its end. @returns false when it was taken away */
async function run(row: Row, token: string, place: number, idFor: (role: Role) => Promise<string>): Promise<boolean> {
  const role = row.role()
  let upload: Upload | null = null
  let isPaused = false
  let finish: (isWhole: boolean) => void = () => undefined
  const ended = new Promise<boolean>((resolve) => (finish = resolve))
  const begin = async (): Promise<void> => {
    try {
      upload ??= await buildUpload()
      row.state('Begins', false)
      upload.start()
    } catch (error) {
      row.fail(error instanceof Error ? error.message : 'The studio cannot be reached.', () => void begin())
    }
  }
  const pace = paceOf()
  const buildUpload = async (): Promise<Upload> => {
    const made = new Upload(row.file, {
      endpoint: '/uploads',
      headers: { 'X-Repslate-Token': token },
      retryDelays: RETRY_MS,
      removeFingerprintOnSuccess: true,
      onShouldRetry: (error) => {
        const status = error.originalResponse?.getStatus() ?? 0
        // a word from the studio that is about the file will be the same again
        return status === 0 || status === 409 || status === 423 || status >= 500
      },
      onProgress: (sent, whole) => row.progress(sent / whole, pace(sent, whole)),
      onSuccess: () => {
        row.done()
        finish(true)
      },
      onError: (error) => {
        const said = 'originalResponse' in error ? error.originalResponse?.getBody() : undefined
        row.fail(said?.trim() || 'The connection was lost. What arrived is kept.', () => void begin())
      },
    })
    const [former] = await made.findPreviousUploads()
    const known = former?.metadata['recordingId']
    const mine = document.querySelector<HTMLElement>('#add')?.dataset['recording'] ?? ''
    // a file that was begun for another class begins anew for this one
    const goesOn = former !== undefined && known !== undefined && (mine === '' || mine === known) && role !== 'own'
    if (goesOn && mine === '') {
      location.replace(`/add/${known}`)
      throw new Error('This file was begun before. Choose it once more on the page that opens.')
    }
    const recordingId = goesOn ? known : await idFor(role)
    const what = role === 'own' ? { role: 'part' } : { role, ...(role === 'part' && { place: String(place) }) }
    made.options.metadata = { recordingId, filename: row.file.name, filetype: row.file.type, ...what }
    if (goesOn) made.resumeFromPreviousUpload(former)
    return made
  }
  row.begin({
    toggle: () => {
      isPaused = !isPaused
      if (isPaused) void upload?.abort().then(() => row.state('Paused. What arrived is kept.', true))
      else void begin()
    },
    drop: () => {
      void upload?.abort(true).catch(() => undefined)
      finish(false)
    },
  })
  window.addEventListener('online', () => {
    if (!isPaused && upload) void upload.abort().then(begin)
  })
  await begin()
  return ended
}

/** "412 of 2100 MB · about 3 minutes left". */
function paceOf(): (sent: number, whole: number) => string {
  const marks: { atMs: number; sent: number }[] = []
  return (sent, whole) => {
    const nowMs = performance.now()
    marks.push({ atMs: nowMs, sent })
    while (marks.length > 2 && nowMs - (marks[0]?.atMs ?? nowMs) > PACE_MS) marks.shift()
    const [first] = marks
    const amount = `${Math.floor(sent / 1e6)} of ${Math.ceil(whole / 1e6)} MB`
    if (!first || nowMs - first.atMs < 2000 || sent === first.sent) return amount
    const leftS = ((whole - sent) / (sent - first.sent)) * ((nowMs - first.atMs) / 1000)
    return `${amount} · ${leftS < 60 ? 'less than a minute' : `about ${Math.round(leftS / 60)} min`} left`
  }
}

async function makeRecording(token: string, title: string): Promise<string> {
  const answer = await post('/recordings', token, new URLSearchParams({ title }))
  const { id } = (await answer.json()) as { id: string }
  return id
}

async function post(address: string, token: string, body: URLSearchParams): Promise<Response> {
  const headers = { 'X-Repslate-Token': token, Accept: 'application/json' }
  const answer = await fetch(address, { method: 'POST', headers, body })
  if (answer.ok) return answer
  const problem = (await answer.json().catch(() => null)) as { detail?: string; details?: string[] } | null
  throw new Error([problem?.detail ?? 'The studio did not take it. Try again.', ...(problem?.details ?? [])].join(' '))
}

/** An upload under way would end if the page were left. */
function saveWithoutLeaving(form: HTMLFormElement, isBusy: () => boolean): void {
  const saved = find('#saved')
  form.addEventListener('submit', (event) => {
    const add = document.querySelector<HTMLElement>('#add')
    if ((add?.dataset['recording'] ?? '') === '') return
    event.preventDefault()
    saved.textContent = 'Saving'
    const fields = new URLSearchParams(
      [...new FormData(form)].map(([name, value]) => [name, typeof value === 'string' ? value : '']),
    )
    post(form.action, add?.dataset['token'] ?? '', fields).then(
      () => {
        if (isBusy()) saved.textContent = 'Saved. Files are still on their way: keep this page open.'
        else location.assign('/')
      },
      (error: unknown) => (saved.textContent = `■ ${error instanceof Error ? error.message : 'Not saved.'}`),
    )
  })
}

function readTranscriptFile(): void {
  const input = find<HTMLInputElement>('#transcript-file')
  input.addEventListener('change', () => {
    const [file] = input.files ?? []
    if (!file) return
    void file.text().then((text) => {
      find<HTMLTextAreaElement>('#transcript').value = text
      find<HTMLInputElement>('#transcript-name').value = file.name
    })
    input.value = ''
  })
}

/** As cameras number them. */
function inOrder(files: readonly File[]): File[] {
  const byName = new Intl.Collator('en', { numeric: true })
  return [...files].sort((a, b) => byName.compare(a.name, b.name))
}

/** Names that differ in their numbers only are most likely one take in several files; a person can say otherwise. */
function isSeries(files: readonly File[]): boolean {
  return files.length > 1 && new Set(files.map(({ name }) => name.replace(/\d+/g, '#'))).size === 1
}

function roleFor(file: File, isFirst: boolean): Role {
  if (file.type.startsWith('audio/')) return 'sound'
  return isFirst ? 'part' : 'own'
}

/** What a person would have typed; the server has the same for films that come another way. */
function titleOf(fileName: string): string {
  const words = fileName
    .replace(/\.\w{1,5}$/, '')
    .replaceAll('_', ' ')
    .replace(/([a-z])-(?=[a-z])/gi, '$1 ')
    .trim()
  return (words || 'Untitled class').slice(0, 200)
}
