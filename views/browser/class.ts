// The class page: film and words together, "Now" buttons, a dose read while it is typed, one exercise after another, single keys.
import { formatClockMs, parseClock } from '../../shared/clock.ts'
import { followWords, openFilm } from './class-film.ts'
import type { Film } from './class-film.ts'
import { openPlan } from './class-plan.ts'
import { openTyping } from './class-typing.ts'
import { openWave } from './class-wave.ts'
import { openSheetPage, tell } from './sheet-page.ts'
import type { SheetPage } from './sheet-page.ts'
import { onKeys } from './single-keys.ts'

const READ_AFTER_MS = 160

const root = document.querySelector<HTMLElement>('#sheet-page')
if (root) openClassPage(root)

function openClassPage(place: HTMLElement): void {
  const page = openSheetPage(place)
  const video = place.querySelector<HTMLVideoElement>('#film')
  const film = video && openFilm(video)
  const dialog = document.querySelector<HTMLDialogElement>('#keys')
  const showKeys = (): void => dialog?.showModal()
  place.addEventListener('click', ({ target }) => {
    if (target instanceof Element && target.closest('[data-open="keys"]')) showKeys()
  })
  readDoses(page)
  openExercises(page, film)
  const plan = film && openPlan(page, film)
  const wave = place.querySelector<HTMLCanvasElement>('#wave')
  if (wave) openWave(wave, film)
  if (film) {
    const words = place.querySelector<HTMLElement>('#words')
    if (words) followWords(film, words, place.querySelector<HTMLInputElement>('#follow'))
    showNow(place, film)
    setToNow(place, film)
    followMoments(place, film)
    openTyping(place, film)
  } else place.addEventListener('recording', () => location.reload())
  const edge = (name: 'start' | 'end') => () =>
    place.querySelector<HTMLButtonElement>(`.span[data-span="0"] [data-edge="${name}"] [data-now]`)?.click()
  onKeys({
    p: () => film?.toggle(),
    f: () =>
      film &&
      tell(
        `The film plays ${film.faster() === 1 ? 'at its own pace' : `${film.video.playbackRate} times as fast`}.`,
        'note',
      ),
    e: () => place.querySelector<HTMLButtonElement>('#play-span')?.click(),
    i: edge('start'),
    o: edge('end'),
    ',': () => film?.step(-1),
    '.': () => film?.step(1),
    n: () => goBy(place, 1),
    b: () => goBy(place, -1),
    a: () => place.querySelector<HTMLButtonElement>('#accept-all')?.click(),
    d: () => place.querySelector<HTMLInputElement>('[data-dose]')?.select(),
    m: () => plan?.press(),
    u: () => page.press('undo'),
    r: () => page.press('redo'),
    '?': showKeys,
  })
}

/** The strip, the words and the doubts follow what is typed. */
function readDoses({ root: place }: SheetPage): void {
  let waiting = 0
  let last: AbortController | null = null
  const read = async (input: HTMLInputElement): Promise<void> => {
    last?.abort()
    last = new AbortController()
    const query = new URLSearchParams({ segment: place.dataset['segment'] ?? '', text: input.value })
    const address = `${place.dataset['address'] ?? ''}/read-dose?${query.toString()}`
    const answer = await fetch(address, { signal: last.signal }).catch(() => null)
    const shown = place.querySelector('#dose-read')
    if (answer?.ok && shown && input.isConnected) shown.innerHTML = await answer.text()
  }
  place.addEventListener('input', ({ target }) => {
    if (!(target instanceof HTMLInputElement) || !target.hasAttribute('data-dose')) return
    window.clearTimeout(waiting)
    waiting = window.setTimeout(() => void read(target), READ_AFTER_MS)
  })
  place.querySelector<HTMLInputElement>('[data-dose]')?.dispatchEvent(new Event('input', { bubbles: true }))
}

/** Links to exercises open them in place; the address says which. */
function openExercises(page: SheetPage, film: Film | null): void {
  const { root: place } = page
  const open = async (segmentId: string): Promise<void> => {
    await page.open(segmentId)
    const name = place.querySelector('#exercise-name')?.textContent ?? ''
    const told = document.querySelector('#told')
    if (told) told.textContent = `${name} is open.`
    showSide(place)
    place.querySelector('.row-link[aria-current]')?.scrollIntoView({ block: 'nearest' })
  }
  history.replaceState({ segment: place.dataset['segment'] ?? '' }, '')
  place.addEventListener('click', (event) => {
    const link = plainClickOn(event, 'a[data-segment]')
    if (!link) return
    event.preventDefault()
    const segment = link.dataset['segment'] ?? ''
    const startMs = Number(link.dataset['startMs'])
    history.pushState({ segment }, '', link.getAttribute('href') ?? '')
    if (startMs >= 0 && link.dataset['startMs'] !== undefined) film?.show(startMs)
    void open(segment)
  })
  window.addEventListener('popstate', ({ state }) => {
    const { segment } = (state ?? {}) as { segment?: string }
    if (segment !== undefined && segment !== place.dataset['segment']) void open(segment)
  })
  place.addEventListener('click', ({ target }) => {
    if (!(target instanceof Element) || !target.closest('#play-span')) return
    const row = place.querySelector<HTMLElement>('.row-link[aria-current]')
    const startMs = Number(row?.dataset['startMs'] ?? -1)
    const endMs = Number(row?.dataset['endMs'] ?? -1)
    if (startMs >= 0) film?.playStretch({ startMs, endMs })
    else tell('This exercise has no place in the film yet.', 'note')
  })
}

/** Beside the list it starts at its top; below the list, as on a phone, the page goes there. */
function showSide(place: HTMLElement): void {
  const side = place.querySelector<HTMLElement>('.bench-side')
  const list = place.querySelector<HTMLElement>('.bench-list')
  side?.scrollTo({ top: 0 })
  if (side && list && side.offsetTop > list.offsetTop + 10) side.scrollIntoView({ block: 'start' })
}

function goBy(place: HTMLElement, by: number): void {
  const links = [...place.querySelectorAll<HTMLElement>('#rows .row-link')]
  const now = links.findIndex((link) => link.hasAttribute('aria-current'))
  links[now + by]?.click()
}

/** A time anywhere on the page shows its moment. */
function followMoments(place: HTMLElement, film: Film): void {
  place.addEventListener('click', (event) => {
    const link = plainClickOn(event, 'a[data-start-ms]:not([data-segment])')
    if (!link) return
    event.preventDefault()
    film.show(Number(link.dataset['startMs']))
  })
}

function showNow(place: HTMLElement, film: Film): void {
  const now = place.querySelector('#now')
  film.onTime((ms) => {
    if (now) now.textContent = formatClockMs(ms)
  })
}

/** "Now" writes the moment into its field and sends it; after an edge has moved, its frame is shown. */
function setToNow(place: HTMLElement, film: Film): void {
  place.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('[data-now]') : null
    const id = button?.dataset['now']
    if (id === undefined) return
    void film.restMs().then((ms) => {
      const field = document.getElementById(id)
      if (!(field instanceof HTMLInputElement)) return
      field.value = formatClockMs(ms)
      field.dataset['fromFilm'] = 'yes'
      if (field.form?.hasAttribute('data-auto')) field.form.requestSubmit()
    })
  })
  place.addEventListener('edge', (event) => {
    const field = document.getElementById((event as CustomEvent<string>).detail)
    const ms = field instanceof HTMLInputElement ? parseClock(field.value) : null
    if (ms !== null && film.video.paused) film.show(ms)
  })
}

/** Held keys and other buttons keep their usual meaning, such as a new tab. */
function plainClickOn(event: MouseEvent, selector: string): HTMLElement | null {
  if (event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return null
  return event.target instanceof Element ? event.target.closest<HTMLElement>(selector) : null
}
