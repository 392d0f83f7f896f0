// The lesson page: captions below the picture, chapters, repeating a stretch, printing. Without it the film still plays.

const film = document.querySelector<HTMLVideoElement>('#film')
const line = document.querySelector<HTMLElement>('#caption-line')
const loop = document.querySelector<HTMLButtonElement>('#loop')

if (film && line) showCaptions(film, line)
if (film) {
  followChapters(film)
  keepPlace(film)
}
if (film && loop) repeatStretch(film, loop)
document.querySelector('#print')?.addEventListener('click', () => window.print())
document.querySelector('#film-buttons')?.removeAttribute('hidden')

/** The captions once more below the picture, large. They go on there when they are switched off in the picture. */
function showCaptions(video: HTMLVideoElement, place: HTMLElement): void {
  const track = [...video.textTracks].find(({ kind }) => kind === 'captions')
  if (!track) return
  place.hidden = false
  const keepReading = (): void => {
    if (track.mode === 'disabled') track.mode = 'hidden'
  }
  keepReading()
  video.textTracks.addEventListener('change', keepReading)
  track.addEventListener('cuechange', () => {
    const texts = [...(track.activeCues ?? [])].map((cue) => (cue as VTTCue).getCueAsHTML().textContent ?? '')
    place.textContent = texts.join('\n')
  })
}

/** A chapter's link goes to its place in the film on this page; the one that plays is marked. */
function followChapters(video: HTMLVideoElement): void {
  const links = [...document.querySelectorAll<HTMLAnchorElement>('.chapters a')]
  for (const link of links) {
    link.addEventListener('click', (event) => {
      event.preventDefault()
      goTo(video, startOf(link))
      history.replaceState(null, '', `#t=${startOf(link)}`)
      void video.play().catch(() => undefined)
    })
  }
  video.addEventListener('timeupdate', () => {
    const now = links.findLast((link) => startOf(link) <= video.currentTime + 0.05)
    for (const link of links) {
      if (link === now) link.setAttribute('aria-current', 'true')
      else link.removeAttribute('aria-current')
    }
  })
}

function startOf(link: HTMLAnchorElement): number {
  return Number(link.dataset['startMs']) / 1000
}

/** An address with `#t=12.5` opens the film there (W3C Media Fragments URI 1.0, 2012, section 4.2.1). */
function keepPlace(video: HTMLVideoElement): void {
  const go = (): void => {
    const seconds = Number(/^#t=(\d+(?:\.\d+)?)$/.exec(location.hash)?.[1])
    if (Number.isFinite(seconds)) goTo(video, seconds)
  }
  window.addEventListener('hashchange', go)
  go()
}

function goTo(video: HTMLVideoElement, seconds: number): void {
  if (video.readyState >= HTMLMediaElement.HAVE_METADATA) video.currentTime = seconds
  else video.addEventListener('loadedmetadata', () => (video.currentTime = seconds), { once: true })
}

/** Plays from the start of the stretch to its end and back, until the button is pressed again or a member seeks out of it. */
function repeatStretch(video: HTMLVideoElement, button: HTMLButtonElement): void {
  const startS = Number(button.dataset['startMs']) / 1000
  const endS = Number(button.dataset['endMs']) / 1000
  let isOn = false
  const set = (on: boolean): void => {
    isOn = on
    button.setAttribute('aria-pressed', String(on))
    if (on) requestAnimationFrame(watch)
  }
  const watch = (): void => {
    if (!isOn) return
    if (!video.paused && video.currentTime >= endS - 0.02) video.currentTime = startS
    requestAnimationFrame(watch)
  }
  button.addEventListener('click', () => {
    set(!isOn)
    if (!isOn) return
    if (video.currentTime < startS || video.currentTime >= endS) video.currentTime = startS
    void video.play().catch(() => undefined)
  })
  video.addEventListener('ended', () => {
    if (!isOn) return
    video.currentTime = startS
    void video.play().catch(() => undefined)
  })
  video.addEventListener('seeking', () => {
    const isOutside = video.currentTime < startS - 0.5 || video.currentTime > endS + 0.5
    if (isOn && isOutside) set(false)
  })
}
