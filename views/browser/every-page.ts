// The script of every page: says so when the studio cannot be reached. What was typed stays where it is.

const NOT_REACHED = 'The studio cannot be reached. What you typed is still here; try again in a moment.'

document.addEventListener('htmx:sendError', () => showMessage(NOT_REACHED))
document.addEventListener('htmx:timeout', () => showMessage(NOT_REACHED))

function showMessage(text: string): void {
  const place = document.querySelector('#messages')
  if (!place) return
  const line = document.createElement('p')
  line.className = 'toast'
  line.dataset['kind'] = 'stop'
  line.textContent = text
  place.replaceChildren(line)
}
