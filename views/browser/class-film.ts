// The film of the class page: which frame is shown, going to a frame, playing a stretch, the words that follow, the place in the address.
import type { Ms, Stretch } from '../../shared/time.ts'

export interface Film {
  video: HTMLVideoElement
  /** The start of the frame that is shown. */
  nowMs: () => Ms
  /** The same once the film has come to rest on a frame. */
  restMs: () => Promise<Ms>
  /** Shows the frame that begins at this moment. */
  show: (ms: Ms) => void
  toggle: () => void
  /** The next pace, and after the fastest its own again. @returns how many times as fast it plays */
  faster: () => number
  /** Back or on by whole frames. */
  step: (frames: number) => void
  /** Plays to its end and stops there. */
  playStretch: (stretch: Stretch) => void
  onTime: (listener: (ms: Ms) => void) => void
}

/** Speech is still understood at twice its pace (common practice, no source). */
const PACES = [1, 1.5, 2]

/** A browser that shows no frame in this time shows none. */
const REST_MS = 1000

export function openFilm(video: HTMLVideoElement): Film {
  const frameMs = Number(video.dataset['frameMs'] ?? 1000 / 30)
  const listeners: ((ms: Ms) => void)[] = []
  let shownMs: Ms | null = null
  let stopMs: Ms | null = null
  let askedMs: Ms | null = null
  // while it plays, currentTime may be two frames away from the picture; the frame's own time is exact. A frame further away
  // was told late, after the film had gone elsewhere
  const frameShown = (): Ms | null => {
    if (shownMs === null || video.seeking) return null
    return Math.abs(shownMs - video.currentTime * 1000) <= 3 * frameMs ? shownMs : null
  }
  const nowMs = (): Ms => frameShown() ?? Math.round(video.currentTime * 1000)
  const tellTime = (): void => {
    const ms = nowMs()
    if (stopMs !== null && ms >= stopMs && !video.paused) {
      stopMs = null
      video.pause()
    }
    for (const listener of listeners) listener(ms)
  }
  const watch = (): void => {
    video.requestVideoFrameCallback((_at, { mediaTime }) => {
      shownMs = Math.round(mediaTime * 1000)
      tellTime()
      watch()
    })
  }
  if ('requestVideoFrameCallback' in video) watch()
  video.addEventListener('timeupdate', tellTime)
  video.addEventListener('loadedmetadata', tellTime)

  const show = (ms: Ms): void => {
    stopMs = null
    // a moment on the edge of a frame may show the frame before: the middle of the frame never does
    whenReady(video, () => {
      video.currentTime = (ms + frameMs / 2) / 1000
      askedMs = ms
    })
  }
  video.addEventListener('seeking', () => (shownMs = null))
  video.addEventListener('seeked', () => {
    if (video.paused) writePlace(askedMs ?? nowMs())
    askedMs = null
  })
  video.addEventListener('pause', () => writePlace(nowMs()))
  goToPlace(show)
  const restMs = async (): Promise<Ms> => {
    for (let waitedMs = 0; waitedMs < REST_MS && frameShown() === null; waitedMs += 20) {
      await new Promise((resolve) => window.setTimeout(resolve, 20))
    }
    return nowMs()
  }
  return {
    video,
    nowMs,
    restMs,
    show,
    toggle: () => {
      if (video.paused) void video.play().catch(() => undefined)
      else video.pause()
    },
    faster: () => {
      video.playbackRate = PACES.find((pace) => pace > video.playbackRate) ?? 1
      return video.playbackRate
    },
    step: (frames) => {
      video.pause()
      show(Math.max(0, Math.round(nowMs() + frames * frameMs)))
    },
    playStretch: ({ startMs, endMs }) => {
      show(startMs)
      stopMs = endMs
      void video.play().catch(() => undefined)
    },
    onTime: (listener) => void listeners.push(listener),
  }
}

/** The transcript marks the line that is said and keeps it in view. */
export function followWords(film: Film, list: HTMLElement, choice: HTMLInputElement | null): void {
  const lines = [...list.querySelectorAll<HTMLElement>('[data-start-ms]')].map((element) => ({
    element,
    startMs: Number(element.dataset['startMs']),
  }))
  let current: HTMLElement | null = null
  film.onTime((ms) => {
    const now = lines.findLast(({ startMs }) => startMs <= ms)?.element ?? null
    if (now === current) return
    current?.removeAttribute('aria-current')
    current = now
    now?.setAttribute('aria-current', 'true')
    if (!now || choice?.checked === false) return
    const middle = now.offsetTop - (list.clientHeight - now.offsetHeight) / 2
    list.scrollTo({ top: Math.max(0, middle) })
  })
}

/** The address names the moment (W3C Media Fragments URI 1.0, 2012, section 4.2.1). */
function goToPlace(show: (ms: Ms) => void): void {
  const go = (): void => {
    const seconds = Number(/^#t=(\d+(?:\.\d+)?)$/.exec(location.hash)?.[1])
    if (Number.isFinite(seconds)) show(Math.round(seconds * 1000))
  }
  window.addEventListener('hashchange', go)
  go()
}

function writePlace(ms: Ms): void {
  if (ms > 0) history.replaceState(history.state, '', `#t=${ms / 1000}`)
}

function whenReady(video: HTMLVideoElement, act: () => void): void {
  if (video.readyState >= HTMLMediaElement.HAVE_METADATA) act()
  else video.addEventListener('loadedmetadata', act, { once: true })
}
