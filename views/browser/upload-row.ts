// One file on its way: its line in the list, with a bar, words and buttons. And the small tools that pages with scripts share.

export type Role = 'part' | 'camera' | 'sound' | 'own'

const ROLES: Record<Role, string> = {
  part: 'The film, or a part of it',
  camera: 'A second camera',
  sound: 'Sound recorded apart',
  own: 'A class of its own',
}
export interface Row {
  file: File
  element: HTMLElement
  role: () => Role
  /** Refused or taken away: nothing more comes of it by itself. */
  isStuck: () => boolean
  isUnderWay: () => boolean
  /** Fixes the role and shows the buttons of an upload under way. */
  begin: (buttons: { toggle: () => void; drop: () => void }) => void
  progress: (share: number, words: string) => void
  state: (words: string, isPaused: boolean) => void
  fail: (words: string, again: () => void) => void
  done: () => void
}

export function buildRow(file: File, role: Role): Row {
  const element = document.createElement('li')
  element.className = 'shelf-row'
  const name = make('strong', file.name)
  const select = document.createElement('select')
  select.setAttribute('aria-label', `What ${file.name} is`)
  for (const [value, label] of Object.entries(ROLES)) select.append(new Option(label, value, false, value === role))
  const field = make('div', '', 'field')
  field.append(select)
  const head = make('div', '', 'stack tight')
  head.append(name, field)
  const buttons = make('div', '', 'shelf-needs buttons')
  const bar = document.createElement('progress')
  bar.max = 1000
  bar.value = 0
  bar.setAttribute('aria-label', `Sending ${file.name}`)
  const words = make('p', '', 'progress-words')
  const wide = make('div', '', 'shelf-wide progress')
  wide.append(bar, words)
  wide.hidden = true
  element.append(head, buttons, wide)
  const pause = button('Pause')
  let stage: 'waits' | 'under way' | 'stuck' | 'done' = 'waits'
  return {
    file,
    element,
    role: () => select.value as Role,
    isStuck: () => stage === 'stuck',
    isUnderWay: () => stage === 'under way',
    begin: ({ toggle, drop }) => {
      stage = 'under way'
      field.replaceWith(make('p', ROLES[select.value as Role], 'quiet'))
      const away = button('Take away')
      pause.onclick = toggle
      away.onclick = () => {
        stage = 'stuck'
        drop()
        element.remove()
      }
      buttons.replaceChildren(pause, away)
      wide.hidden = false
    },
    progress: (share, text) => {
      bar.value = Math.round(share * 1000)
      words.textContent = text
    },
    state: (text, isPaused) => {
      words.textContent = text
      pause.textContent = isPaused ? 'Go on' : 'Pause'
    },
    fail: (text, again) => {
      stage = 'stuck'
      words.className = 'field-fault'
      words.textContent = text
      const retry = button('Try again')
      retry.onclick = () => {
        stage = 'under way'
        words.className = 'progress-words'
        buttons.replaceChildren(pause)
        again()
      }
      buttons.replaceChildren(retry)
      say(`${file.name}: ${text}`)
    },
    done: () => {
      stage = 'done'
      bar.value = 1000
      words.textContent = 'All of it is here. It is being looked into.'
      buttons.replaceChildren()
      say(`${file.name} has arrived.`)
    },
  }
}

export function say(text: string): void {
  find('#upload-said').textContent = text
}

export function find<Kind extends HTMLElement = HTMLElement>(selector: string): Kind {
  const found = document.querySelector<Kind>(selector)
  if (!found) throw new Error(`The page lacks ${selector}.`)
  return found
}

function make(tag: string, text: string, className = ''): HTMLElement {
  const element = document.createElement(tag)
  element.textContent = text
  element.className = className
  return element
}

function button(text: string): HTMLButtonElement {
  const element = document.createElement('button')
  element.type = 'button'
  element.className = 'button'
  element.textContent = text
  return element
}
