/** Names in addresses and file names: plain letters, digits and hyphens. */

/** Turns a name into a slug of at most 48 characters; never empty. */
export function slugOf(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 48)
    .replace(/-+$/, '')
  return plain === '' ? 'exercise' : plain
}

/** Gives each name a slug of its own: a second "Plank" becomes plank-2. */
export function slugsOf(names: readonly string[]): string[] {
  const used = new Set<string>()
  return names.map((name) => {
    const base = slugOf(name)
    let slug = base
    for (let n = 2; used.has(slug); n += 1) slug = `${base}-${n}`
    used.add(slug)
    return slug
  })
}
