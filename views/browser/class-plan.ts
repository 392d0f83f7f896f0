// Placing a plan: while the class plays, one press begins the next exercise and ends the one before.
import type { Film } from './class-film.ts'
import { tell } from './sheet-page.ts'
import type { SheetPage } from './sheet-page.ts'

/** An exercise that is shorter was pressed twice by mistake. */
const LEAST_MS = 500

export interface Plan {
  press: () => void
}

export function openPlan(page: SheetPage, film: Film): Plan {
  let presses = 0
  const place = (): HTMLElement | null => page.root.querySelector('#plan')
  const show = (): void => {
    const count = page.root.querySelector('#plan-count')
    if (count) count.textContent = String(presses)
  }
  const send = (isLast: boolean): void => {
    const { ids = '', openId = '', startMs = '' } = place()?.dataset ?? {}
    const next = isLast ? undefined : ids.split(' ').find((id) => id !== '')
    if (next === undefined && openId === '') return
    const atMs = film.nowMs()
    if (openId !== '' && atMs < Number(startMs) + LEAST_MS) {
      return tell(
        'This is before the exercise that was begun last. Play on, or go to where the next one begins.',
        'stop',
      )
    }
    presses += 1
    show()
    const wholeMs = Math.round(film.video.duration * 1000)
    const end = { op: 'move-edge', segmentId: openId, span: 0, edge: 'end', toMs: atMs }
    const begin = { op: 'add-span', segmentId: next, startMs: atMs, endMs: lastMs(place(), wholeMs), inClip: true }
    const ops = [...(openId === '' ? [] : [end]), ...(next === undefined ? [] : [begin])]
    void page.sendEdits(ops)
  }
  page.root.addEventListener('click', ({ target }) => {
    if (!(target instanceof Element)) return
    if (target.closest('#plan-press')) send(false)
    if (target.closest('#plan-end')) send(true)
  })
  page.onChange(show)
  return { press: () => send(false) }
}

/** What is begun and not ended reaches to the end of the class. */
function lastMs(place: HTMLElement | null, filmMs: number): number {
  const sheetMs = Number(place?.dataset['durationMs'] ?? 0)
  return sheetMs > 0 ? sheetMs : filmMs
}
