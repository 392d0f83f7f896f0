// The publish page: the button counts what is chosen, and what an exercise is for is saved as soon as it is chosen.

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

document.addEventListener('change', ({ target }) => {
  if (!(target instanceof HTMLSelectElement)) return
  if (target.matches('[data-place]')) count()
  // the browser's own way: the page comes back with the new groups
  if (target.matches('[data-use]')) target.form?.requestSubmit()
})
document.addEventListener('htmx:afterSettle', start)
start()
