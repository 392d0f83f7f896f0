/** Writes SVG as text: elements with attributes, numbers to a tenth, words escaped. */

export type Attributes = Readonly<Record<string, string | number | null>>

/** One element. An attribute that is null is left out. */
export function element(name: string, attributes: Attributes, ...inner: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== null)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? round(value) : escapeXml(String(value))}"`)
    .join('')
  const content = inner.join('')
  return content === '' ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`
}

export function escapeXml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
}

/** To a tenth, without a needless zero. */
export function round(value: number): string {
  const tenths = Math.round(value * 10) / 10
  return String(tenths === 0 ? 0 : tenths)
}

/** A place along a strip in percent, to a thousandth, as SVG wants it. */
export function percent(part: number, whole: number): string {
  return `${Math.round((Math.max(0, part) / Math.max(1, whole)) * 100_000) / 1000}%`
}
