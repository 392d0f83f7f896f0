// Placing a plan: while the class plays, one press begins the next exercise and ends the one before.
import type { Ms } from '../../shared/time.ts'
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
  let isBusy = false
  const show = (): void => {
    const count = page.root.querySelector('#plan-count')
    if (count) count.textContent = String(presses)
  }
  const press = async (isLast: boolean): Promise<void> => {
    // until the page shows what the last press did, a further one would be about the same exercise
    if (isBusy) return
    isBusy = true
    try {
      // while it plays the press counts, not a frame that comes after it
      const atMs = film.video.paused ? await film.restMs() : film.nowMs()
      const ops = planPress(page.root.querySelector<HTMLElement>('#plan'), atMs, film, isLast)
      if (ops.length === 0) return
      presses += 1
      show()
      await page.sendEdits(ops)
    } finally {
      isBusy = false
    }
  }
  page.root.addEventListener('click', ({ target }) => {
    if (!(target instanceof Element)) return
    if (target.closest('#plan-press')) void press(false)
    if (target.closest('#plan-end')) void press(true)
  })
  page.onChange(show)
  return { press: () => void press(false) }
}

function planPress(place: HTMLElement | null, atMs: Ms, film: Film, isLast: boolean): object[] {
  const { ids = '', openId = '', startMs = '', durationMs = '' } = place?.dataset ?? {}
  const next = isLast ? undefined : ids.split(' ').find((id) => id !== '')
  if (openId !== '' && atMs < Number(startMs) + LEAST_MS) {
    tell('This is before the exercise that was begun last. Play on, or go to where the next one begins.', 'stop')
    return []
  }
  // what is begun and not ended reaches to the end of the class
  const endMs = Number(durationMs) > 0 ? Number(durationMs) : Math.round(film.video.duration * 1000)
  return [
    ...(openId === '' ? [] : [{ op: 'move-edge', segmentId: openId, span: 0, edge: 'end', toMs: atMs }]),
    ...(next === undefined ? [] : [{ op: 'add-span', segmentId: next, startMs: atMs, endMs, inClip: true }]),
  ]
}
