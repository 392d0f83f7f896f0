// The wave of the class: drawn piece by piece while the film is looked through, with the moment that is shown; a press goes there.
import { formatClock } from '../../shared/clock.ts'
import type { Film } from './class-film.ts'

/** One byte each so many ms; as the server coarsens it. */
const STEP_MS = 250
/** Between two looks while it grows. */
const LOOK_MS = 2000
/** The last look after so many that brought nothing. */
const PATIENCE = 150
const NAME = 'How loud the class is, from start to end'

export function openWave(canvas: HTMLCanvasElement, film: Film | null): void {
  const { src = '', durationMs: length = '0' } = canvas.dataset
  const durationMs = Number(length)
  let peaks = new Uint8Array(0)
  let nowMs = 0
  const draw = (): void => drawWave(canvas, peaks, { durationMs, nowMs })
  const look = async (tries: number): Promise<void> => {
    const got = document.hidden ? null : await load(src)
    const isNew = got !== null && got.length > peaks.length
    if (isNew) {
      peaks = got
      draw()
    }
    const knownMs = peaks.length * STEP_MS
    const isWhole = knownMs >= durationMs - STEP_MS * 4
    canvas.setAttribute('aria-label', isWhole ? NAME : `${NAME}; known up to ${formatClock(knownMs)}`)
    canvas.dataset['known'] = isWhole ? 'whole' : String(peaks.length)
    if (!isWhole && tries > 0) window.setTimeout(() => void look(isNew ? PATIENCE : tries - 1), LOOK_MS)
  }
  film?.onTime((ms) => {
    nowMs = ms
    draw()
  })
  if (film) {
    canvas.addEventListener('click', (event) =>
      film.show(Math.round((event.offsetX / canvas.clientWidth) * durationMs)),
    )
  }
  new ResizeObserver(draw).observe(canvas)
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', draw)
  void look(PATIENCE)
}

async function load(src: string): Promise<Uint8Array<ArrayBuffer> | null> {
  try {
    const answer = await fetch(src)
    return answer.status === 200 ? new Uint8Array(await answer.arrayBuffer()) : null
  } catch {
    // the next look may find the studio again
    return null
  }
}

/** One column of the screen is as high as the loudest moment in it; what is not known yet is a thin line. */
function drawWave(
  canvas: HTMLCanvasElement,
  peaks: Uint8Array,
  { durationMs, nowMs }: { durationMs: number; nowMs: number },
): void {
  const scale = window.devicePixelRatio || 1
  const [width, height] = [Math.round(canvas.clientWidth * scale), Math.round(canvas.clientHeight * scale)]
  const context = canvas.getContext('2d')
  if (!context || width === 0) return
  if (canvas.width !== width || canvas.height !== height) [canvas.width, canvas.height] = [width, height]
  context.clearRect(0, 0, width, height)
  const style = getComputedStyle(canvas)
  context.fillStyle = style.color
  const steps = durationMs / STEP_MS
  for (let x = 0; x < width; x += 1) {
    const [from, to] = [Math.floor((x / width) * steps), Math.floor(((x + 1) / width) * steps)]
    let peak = 0
    for (let at = from; at <= Math.max(from, to - 1); at += 1) peak = Math.max(peak, peaks[at] ?? 0)
    const tall = Math.max(scale, (peak / 255) * height)
    context.fillRect(x, (height - tall) / 2, 1, tall)
  }
  const x = Math.round((nowMs / Math.max(1, durationMs)) * width)
  context.fillStyle = style.getPropertyValue('--tape') || style.color
  context.fillRect(Math.max(0, x - scale), 0, 2 * scale, height)
}
