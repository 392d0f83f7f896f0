// What is asked about a class: rows for people only where there are others, and the answers of a kind of class filled in.

interface KindAnswers {
  audience: string[]
  equipment: string[]
  music: string | null
  shown: string | null
  people: Record<'name' | 'scope' | 'until' | 'age' | 'consent', string>[]
}

/** Rows for people only where there are others. */
export function showPeople(): void {
  for (const box of all('input[name="shown"]')) box.addEventListener('change', hideOrShow)
  hideOrShow()
}

export function fillFromKind(): void {
  const select = document.querySelector<HTMLSelectElement>('#kind')
  select?.addEventListener('change', () => {
    const answers = select.selectedOptions[0]?.dataset['answers']
    if (answers !== undefined) fill(JSON.parse(answers) as KindAnswers)
  })
}

function fill({ audience, equipment, music, shown, people }: KindAnswers): void {
  for (const box of all('input[name="audience"]')) box.checked = audience.includes(box.value)
  for (const box of all('input[name="music"]')) box.checked = box.value === music
  for (const box of all('input[name="shown"]')) box.checked = box.value === shown
  const [kit] = all('#equipment')
  if (kit) kit.value = equipment.join(', ')
  // names that were typed for this class stay where the kind has nobody
  for (const [index, person] of people.entries()) {
    for (const [name, value] of Object.entries(person)) {
      const field = document.querySelector<HTMLInputElement | HTMLSelectElement>(`#${name}-${index + 1}`)
      if (field) field.value = value
    }
  }
  hideOrShow()
}

function hideOrShow(): void {
  const rows = document.querySelector<HTMLElement>('#people')
  if (rows) rows.hidden = !all('input[name="shown"]').some((box) => box.checked && box.value === 'others')
}

function all(selector: string): HTMLInputElement[] {
  return [...document.querySelectorAll<HTMLInputElement>(selector)]
}
