// Light or dark as chosen on this device; without a choice, as the system says. Runs before the first paint.

const KEY = 'repslate-theme'
const CHOICES = ['light', 'dark']

applyTheme(readChoice())
document.addEventListener('DOMContentLoaded', () => {
  const place = document.querySelector<HTMLElement>('#theme-choice')
  const select = document.querySelector<HTMLSelectElement>('#theme')
  if (!place || !select) return
  place.hidden = false
  select.value = readChoice()
  select.addEventListener('change', () => {
    applyTheme(select.value)
    keepChoice(select.value)
  })
})

function applyTheme(choice: string): void {
  if (CHOICES.includes(choice)) document.documentElement.dataset['theme'] = choice
  else delete document.documentElement.dataset['theme']
}

function readChoice(): string {
  try {
    const choice = localStorage.getItem(KEY) ?? ''
    return CHOICES.includes(choice) ? choice : ''
  } catch {
    return '' // storage may be switched off
  }
}

function keepChoice(choice: string): void {
  try {
    if (choice === '') localStorage.removeItem(KEY)
    else localStorage.setItem(KEY, choice)
  } catch {
    // the choice holds for this page only
  }
}
