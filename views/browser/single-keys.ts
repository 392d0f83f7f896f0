// Single keys for people who work by keyboard. They never work while something is typed, and can be switched off (WCAG 2.2, 2.1.4).

const STORED = 'single-keys'

/** @param keys what each does; capital letters are told apart */
export function onKeys(keys: Readonly<Record<string, () => void>>): void {
  const choice = document.querySelector<HTMLInputElement>('#keys-on')
  let areOn = localStorage.getItem(STORED) !== 'off'
  if (choice) {
    choice.checked = areOn
    choice.addEventListener('change', () => {
      areOn = choice.checked
      localStorage.setItem(STORED, areOn ? 'on' : 'off')
    })
  }
  document.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.repeat || !areOn || isTyping(event.target)) return
    const act = keys[event.key]
    if (!act) return
    event.preventDefault()
    act()
  })
}

const TYPED =
  'input:not([type="checkbox"], [type="radio"], [type="button"]), textarea, select, [contenteditable], dialog *'

function isTyping(target: EventTarget | null): boolean {
  return target instanceof Element && target.matches(TYPED)
}
