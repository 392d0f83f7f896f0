// Typing what is said: the film plays one stretch of speech, stops, waits for its words, and goes on with the next.
import { formatClock } from '../../shared/clock.ts'
import type { Stretch } from '../../shared/time.ts'
import type { Film } from './class-film.ts'
import { tell } from './sheet-page.ts'

interface Line extends Stretch {
  text: string
}

/** Weak consonants at both ends lie outside what was found. */
const ROOM_MS = 180

export function openTyping(root: HTMLElement, film: Film): void {
  const place = root.querySelector<HTMLElement>('#typing')
  const begin = place?.querySelector<HTMLButtonElement>('#typing-begin')
  if (!place || !begin) return
  const address = place.dataset['address'] ?? ''
  begin.addEventListener('click', () => {
    void readIslands(address).then((islands) => {
      if (islands.length > 0) openDesk(place, film, islands)
      else tell('No speech was found in the sound of this class.', 'stop')
    })
  })
}

function openDesk(place: HTMLElement, film: Film, islands: readonly Stretch[]): void {
  const key = `spoken-${place.dataset['address'] ?? ''}`
  const saved = readLines(place.dataset['lines'] ?? '')
  const typed = new Map([...saved, ...readLines(localStorage.getItem(key) ?? '')].map((line) => [line.startMs, line]))
  const find = <Kind extends HTMLElement>(id: string): Kind => {
    const found = place.querySelector<Kind>(`#typing-${id}`)
    if (!found) throw new Error(`The page lacks typing-${id}.`)
    return found
  }
  const words = find<HTMLTextAreaElement>('words')
  let at = Math.max(
    0,
    islands.findIndex(({ startMs }) => !typed.has(startMs)),
  )

  const play = (): void => {
    const { startMs, endMs } = islands[at] ?? { startMs: 0, endMs: 0 }
    film.playStretch({ startMs: Math.max(0, startMs - ROOM_MS), endMs: endMs + ROOM_MS })
  }
  const show = (): void => {
    const island = islands[at]
    if (!island) return
    words.value = typed.get(island.startMs)?.text ?? ''
    find('place').textContent = formatClock(island.startMs)
    find('count').textContent = `${at + 1} of ${islands.length}; ${typed.size} typed`
    find<HTMLButtonElement>('back').disabled = at === 0
    find<HTMLButtonElement>('save').disabled = typed.size === 0
    words.focus()
    play()
  }
  const keep = (): void => {
    const island = islands[at]
    const text = words.value.trim()
    if (!island) return
    if (text === '') typed.delete(island.startMs)
    else typed.set(island.startMs, { ...island, text })
    const lines = JSON.stringify([...typed.values()].sort((a, b) => a.startMs - b.startMs))
    find<HTMLInputElement>('lines').value = lines
    // what is typed outlives a closed page; saved, it is on the server
    localStorage.setItem(key, lines)
  }
  const go = (by: number): void => {
    keep()
    const isLast = at + by >= islands.length
    at = Math.min(islands.length - 1, Math.max(0, at + by))
    if (isLast) tell('That was the last stretch. Save the words.', 'note')
    show()
  }

  find('offer').hidden = true
  find('desk').hidden = false
  find('again').addEventListener('click', play)
  find('back').addEventListener('click', () => go(-1))
  find('next').addEventListener('click', () => go(1))
  words.addEventListener('input', keep)
  words.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter' || event.isComposing) return
    event.preventDefault()
    if (event.shiftKey) play()
    else go(1)
  })
  find('desk').addEventListener('submit', () => {
    keep()
    localStorage.removeItem(key)
  })
  show()
}

async function readIslands(address: string): Promise<Stretch[]> {
  const answer = await fetch(`${address}/speech`).catch(() => null)
  if (!answer?.ok) return []
  return ((await answer.json()) as { islands: Stretch[] }).islands
}

function readLines(text: string): Line[] {
  try {
    return JSON.parse(text) as Line[]
  } catch {
    return []
  }
}
