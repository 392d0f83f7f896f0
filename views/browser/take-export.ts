// "Add a class": takes in the lessons of a zip that another studio made, and says what became of each.
import { find } from './upload-row.ts'

interface Taken {
  recordingId: string | null
  title: string
  lessons: { name: string; slug: string }[]
  known: string[]
  held: { name: string; reasons: string[] }[]
}

const input = find<HTMLInputElement>('#export-file')
const said = find('#export-said')
const row = find('#export-row')
const bar = find<HTMLProgressElement>('#export-row progress')
const result = find('#export-result')

input.addEventListener('change', () => {
  const [file] = input.files ?? []
  input.value = ''
  if (file) send(file)
})

function send(file: File): void {
  const most = Number(find('#take-export').dataset['most'])
  if (file.size === 0 || file.size > most) {
    tell(file.size === 0 ? 'The file is empty. Download it again.' : 'The file is larger than this studio takes.', true)
    return
  }
  result.replaceChildren()
  input.disabled = true
  row.hidden = false
  bar.value = 0
  tell(`Sending ${file.name}`)
  const request = new XMLHttpRequest()
  request.open('POST', '/exports')
  request.setRequestHeader('Content-Type', 'application/zip')
  request.setRequestHeader('Accept', 'application/json')
  request.setRequestHeader('X-Repslate-Token', find('#add').dataset['token'] ?? '')
  request.upload.addEventListener('progress', ({ loaded, total }) => (bar.value = (loaded / total) * 1000))
  request.upload.addEventListener('load', () => {
    bar.removeAttribute('value')
    tell('All of it is here. Each lesson is being checked.')
  })
  request.addEventListener('loadend', () => {
    input.disabled = false
    row.hidden = true
    if (request.status === 200) show(JSON.parse(request.responseText) as Taken)
    else tell(faultOf(request.responseText), true)
  })
  request.send(file)
}

function tell(words: string, isFault = false): void {
  said.className = isFault ? 'field-fault' : ''
  said.textContent = words
}

function faultOf(text: string): string {
  try {
    const { detail, details = [] } = JSON.parse(text) as { detail?: string; details?: string[] }
    return [detail ?? 'It was not taken in. Try again.', ...details].join(' ')
  } catch {
    return 'The connection was lost, so nothing was taken in. Try again.'
  }
}

function show({ recordingId, title, lessons, known, held }: Taken): void {
  const count = lessons.length === 1 ? 'One lesson' : `${lessons.length} lessons`
  tell(lessons.length === 0 ? `No lesson of “${title}” is new here.` : `${count} of “${title}” are in the library.`)
  const list = document.createElement('ul')
  list.className = 'findings'
  for (const { name, slug } of lessons) list.append(line('done', link(`/lessons/${slug}`, name)))
  for (const name of known) list.append(line('note', `${name} was here already.`))
  for (const { name, reasons } of held) list.append(line('stop', `${name} is held back: ${reasons.join(' ')}`))
  result.replaceChildren(list)
  if (recordingId !== null) result.append(link(`/recordings/${recordingId}/publish`, 'To this class'))
}

function line(kind: string, what: string | Node): HTMLLIElement {
  const item = document.createElement('li')
  item.className = 'finding'
  const mark = document.createElement('span')
  mark.className = 'mark'
  mark.dataset['kind'] = kind
  mark.setAttribute('aria-hidden', 'true')
  const words = document.createElement('span')
  words.append(what)
  item.append(mark, words)
  return item
}

function link(address: string, words: string): HTMLAnchorElement {
  const made = document.createElement('a')
  made.href = address
  made.textContent = words
  return made
}
