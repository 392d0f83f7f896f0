// The publish page: the button counts what is chosen, what an exercise is for is saved as soon as it is chosen, and nothing
// that a person opened or typed is lost when the page follows the work.

/** What was chosen or typed and not sent yet, by the id of its field. */
const touched = new Map<string, string>()

function start(): void {
  for (const button of document.querySelectorAll<HTMLElement>('[data-save]')) button.hidden = true
  count()
}

function count(): void {
  const button = document.querySelector<HTMLButtonElement>('#publish-button')
  if (!button) return
  const places = [...document.querySelectorAll<HTMLSelectElement>('select[data-place]')]
  const chosen = places.filter(({ value }) => value !== 'skip').length
  button.textContent =
    chosen === 0 ? 'Nothing new to publish' : `Publish ${chosen} ${chosen === 1 ? 'lesson' : 'lessons'}`
  button.disabled = chosen === 0
  button.classList.toggle('tape', chosen > 0)
}

document.addEventListener('input', ({ target }) => {
  const isField = target instanceof HTMLSelectElement || target instanceof HTMLInputElement
  if (isField && target.id !== '') touched.set(target.id, target.value)
})

document.addEventListener('change', ({ target }) => {
  if (!(target instanceof HTMLSelectElement)) return
  if (target.matches('[data-place]')) count()
  // the browser's own way: the page comes back with the new groups
  if (target.matches('[data-use]')) target.form?.requestSubmit()
})

let open: string[] = []
let focused = ''
document.addEventListener('htmx:beforeSwap', () => {
  open = [...document.querySelectorAll<HTMLDetailsElement>('details[open][id]')].map(({ id }) => id)
  focused = document.activeElement?.id ?? ''
})
document.addEventListener('htmx:afterSwap', () => {
  for (const id of open) {
    const fold = document.getElementById(id)
    if (fold instanceof HTMLDetailsElement) fold.open = true
  }
  for (const [id, value] of touched) {
    const field = document.getElementById(id)
    if (field instanceof HTMLSelectElement || field instanceof HTMLInputElement) field.value = value
  }
  if (focused !== '') document.getElementById(focused)?.focus({ preventScroll: true })
  start()
})

start()
