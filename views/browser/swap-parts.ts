// Puts newer parts of a page in place of older ones. What is typed, open, focused and marked stays; what changed beneath is told.

export type Parts = Readonly<Record<string, string>>

/** A field that says something else than the server last said. */
interface Typed {
  id: string
  value: string
  /** What the server said when it was typed over. */
  base: string
}

type Field = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement

const shown = new Map<string, string>()
/** What was typed on exercises that are not open now, by field. */
const kept = new Map<string, Typed>()

/** @param sent the form whose fields are written now and need not be kept */
export function swapParts(root: HTMLElement, parts: Parts, sent: HTMLFormElement | null = null): void {
  for (const place of root.querySelectorAll<HTMLElement>('[data-part]')) {
    const name = place.dataset['part'] ?? ''
    const html = parts[name]
    // the version in every form is set when it is sent
    const bare = html?.replaceAll(/ name="baseVersion" value="\d+"/g, '')
    if (html === undefined || bare === undefined || shown.get(name) === bare) continue
    shown.set(name, bare)
    swapPart(place, html, sent)
  }
}

/** Before a page is left: a browser without memory of fields gets them back by `bringBack`. */
export function keepForLater(root: HTMLElement, key: string): void {
  const typed = new Map([...kept, ...typedIn(root, null).map((one) => [one.id, one] as const)])
  try {
    if (typed.size === 0) sessionStorage.removeItem(key)
    else sessionStorage.setItem(key, JSON.stringify([...typed.values()]))
  } catch {
    // a browser that keeps nothing keeps nothing
  }
}

export function bringBack(root: HTMLElement, key: string): void {
  try {
    for (const one of JSON.parse(sessionStorage.getItem(key) ?? '[]') as Typed[]) kept.set(one.id, one)
  } catch {
    return
  }
  putTyped(root)
}

function swapPart(place: HTMLElement, html: string, sent: HTMLFormElement | null): void {
  for (const one of typedIn(place, sent)) kept.set(one.id, one)
  const open = new Map([...place.querySelectorAll<HTMLDetailsElement>('details[id]')].map((one) => [one.id, one.open]))
  const refocus = rememberFocus(place)
  place.innerHTML = html
  for (const details of place.querySelectorAll<HTMLDetailsElement>('details[id]')) {
    details.open = open.get(details.id) ?? details.open
  }
  putTyped(place)
  refocus()
}

function typedIn(place: HTMLElement, sent: HTMLFormElement | null): Typed[] {
  return fieldsIn(place)
    .filter((field) => field.form !== sent && valueOf(field) !== baseOf(field))
    .map((field) => ({ id: field.id, value: valueOf(field), base: baseOf(field) }))
}

function putTyped(place: HTMLElement): void {
  for (const field of fieldsIn(place)) {
    const typed = kept.get(field.id)
    if (!typed) continue
    kept.delete(field.id)
    const now = baseOf(field)
    if (now === typed.value) continue
    setValue(field, typed.value)
    if (now !== typed.base) tellChanged(field, now)
  }
}

function tellChanged(field: Field, now: string): void {
  const line = document.createElement('p')
  line.className = 'field-help changed-below'
  line.textContent = `Changed elsewhere meanwhile${now.length < 80 && isText(field) ? `: ${now || 'nothing'}` : ''}. Yours is still here.`
  field.closest('.field, form')?.append(line)
}

function fieldsIn(place: HTMLElement): Field[] {
  const all = place.querySelectorAll<Field>('input[id]:not([type="hidden"]), textarea[id], select[id]')
  return [...all].filter((field) => field.form?.hasAttribute('data-edit') === true)
}

function isText(field: Field): boolean {
  return field instanceof HTMLTextAreaElement || (field instanceof HTMLInputElement && !isTicked(field))
}

function isTicked(field: Field): field is HTMLInputElement {
  return field instanceof HTMLInputElement && (field.type === 'checkbox' || field.type === 'radio')
}

function valueOf(field: Field): string {
  return isTicked(field) ? String(field.checked) : field.value
}

function baseOf(field: Field): string {
  if (isTicked(field)) return String(field.defaultChecked)
  if (!(field instanceof HTMLSelectElement)) return field.defaultValue
  const chosen = [...field.options].find((option) => option.defaultSelected) ?? field.options[0]
  return chosen?.value ?? ''
}

function setValue(field: Field, value: string): void {
  if (isTicked(field)) field.checked = value === 'true'
  else field.value = value
}

/** @returns brings the focus back: to the same thing, to its neighbour, or to the heading above. */
function rememberFocus(place: HTMLElement): () => void {
  const { activeElement } = document
  if (!(activeElement instanceof HTMLElement) || !place.contains(activeElement)) return () => undefined
  const { id } = activeElement
  const marked =
    activeElement instanceof HTMLInputElement || activeElement instanceof HTMLTextAreaElement
      ? { start: activeElement.selectionStart, end: activeElement.selectionEnd }
      : null
  const heading = activeElement.closest('[aria-labelledby]')?.getAttribute('aria-labelledby') ?? ''
  return () => {
    const again = find(place, id) ?? neighbourOf(place, id) ?? find(place, heading)
    if (!again) return
    if (again.tabIndex < 0) again.tabIndex = -1
    again.focus({ preventScroll: true })
    if (marked?.start != null && (again instanceof HTMLInputElement || again instanceof HTMLTextAreaElement)) {
      again.setSelectionRange(marked.start, marked.end)
    }
  }
}

function find(place: HTMLElement, id: string): HTMLElement | null {
  const found = id === '' ? null : place.querySelector<HTMLElement>(`#${CSS.escape(id)}`)
  return found && !(found instanceof HTMLButtonElement && found.disabled) ? found : null
}

/** "Accept" gone, "Decline" is still there. */
function neighbourOf(place: HTMLElement, id: string): HTMLElement | null {
  const stem = id.replace(/-[^-]+$/, '')
  if (stem === id || stem === '') return null
  return place.querySelector<HTMLElement>(`button[id^="${CSS.escape(stem)}-"]:not(:disabled)`)
}
