/** Reads a WebVTT region block. Source: WebVTT, W3C, section "WebVTT region settings parsing". */

/** Percent from 0 to 100; lines as a whole number. */
export interface VttRegion {
  id: string
  width: number
  lines: number
  regionAnchorX: number
  regionAnchorY: number
  viewportAnchorX: number
  viewportAnchorY: number
  scroll: '' | 'up'
}

/** Reads the settings text. A setting with a wrong value keeps its default. */
export function readRegion(settings: string): VttRegion {
  const region: VttRegion = {
    id: '',
    width: 100,
    lines: 3,
    regionAnchorX: 0,
    regionAnchorY: 100,
    viewportAnchorX: 0,
    viewportAnchorY: 100,
    scroll: '',
  }
  for (const setting of settings.split(/[ \t\n\f\r]+/)) {
    const colon = setting.indexOf(':')
    if (colon < 1 || colon === setting.length - 1) continue
    applySetting(region, setting.slice(0, colon), setting.slice(colon + 1))
  }
  return region
}

/** A percentage as the standard reads it, or null. */
export function readPercent(text: string): number | null {
  if (!/^\d+(?:\.\d+)?%$/.test(text)) return null
  const value = Number(text.slice(0, -1))
  return value >= 0 && value <= 100 ? value : null
}

function applySetting(region: VttRegion, name: string, value: string): void {
  if (name === 'id') region.id = value
  if (name === 'width') region.width = readPercent(value) ?? region.width
  if (name === 'lines' && /^\d+$/.test(value)) region.lines = Number(value)
  if (name === 'scroll' && value === 'up') region.scroll = 'up'
  if (name === 'regionanchor' || name === 'viewportanchor') {
    const [x, y] = value.split(/,(.*)/s).map(readPercent)
    if (x === undefined || x === null || y === undefined || y === null) return
    if (name === 'regionanchor') Object.assign(region, { regionAnchorX: x, regionAnchorY: y })
    else Object.assign(region, { viewportAnchorX: x, viewportAnchorY: y })
  }
}
