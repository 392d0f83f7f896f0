/**
 * Chooses the two moments of a clip that show an exercise best. The start is the position to which the movement comes back
 * most, and in which it begins; the end is the one farthest from it that is held for a moment and comes again.
 */
import type { Ms } from '../../shared/time.ts'

/** Small grey pictures of a clip, one after the other at even steps. */
export interface SmallPictures {
  width: number
  height: number
  /** ms between two pictures. */
  stepMs: Ms
  /** On the clip's clock, of the first picture. */
  startMs: Ms
  /** Each of width times height bytes, row by row. */
  pictures: readonly Uint8Array[]
  /** From just before the movement, at the same steps: what the set-up leaves off in is the start. Absent = not known. */
  before?: readonly Uint8Array[]
}

export interface KeyPictures {
  startMs: Ms
  endMs: Ms
  /** The middle of what moves, as shares of width and height. */
  centre: { x: number; y: number }
}

/** A position that is not met again at least so much later belongs to no repetition, as a walk to the shelf. Our own bound. */
const AGAIN_MS = 1500
/** Mean difference of grey values, of 255, under which a hold is taken to be a hold. */
const LEAST_CHANGE = 0.8
/** A picture shows a position when it is so many times nearer to it than to the other. Our own bound. */
const MUCH_NEARER = 2
/** Grey values that count as moved, above the noise of a camera. */
const MOVED = 24

/** null = hardly anything moves, as in a held position. */
export function chooseKeyPictures({
  width,
  height,
  stepMs,
  startMs,
  pictures,
  before = [],
}: SmallPictures): KeyPictures | null {
  const apart = pictures.map((one) => pictures.map((other) => difference(one, other)))
  const far = (a: number, b: number): number => apart[a]?.[b] ?? 0
  const places = [...pictures.keys()]
  const moving = places.map((at) => (far(at, Math.max(0, at - 1)) + far(at, Math.min(at + 1, places.length - 1))) / 2)
  const usual = places.map((at) => places.reduce((sum, other) => sum + far(at, other), 0) / places.length)
  const again = places.map((at) => {
    const later = places.filter((other) => Math.abs(other - at) * stepMs >= AGAIN_MS)
    return later.reduce((least, other) => Math.min(least, far(at, other)), later.length === 0 ? 0 : Infinity)
  })
  const most = best(places, (at) => -(far(at, 0) + (usual[at] ?? 0) + (moving[at] ?? 0) + (again[at] ?? 0)))
  const farthest = best(places, (at) => far(at, most) - (moving[at] ?? 0) - (again[at] ?? 0))
  // talk in the middle of a repetition makes its end the position that is met most
  const isNear = (one: Uint8Array, at: number, other: number): boolean =>
    difference(one, pictures[at] ?? one) * MUCH_NEARER < difference(one, pictures[other] ?? one)
  const share = (at: number, other: number): number => before.filter((one) => isNear(one, at, other)).length
  const isTurned = share(farthest, most) > Math.max(before.length / 2, share(most, farthest))
  const [start, end] = isTurned ? [farthest, most] : [most, farthest]
  const [first, second] = [pictures[start], pictures[end]]
  if (!first || !second || far(start, end) < LEAST_CHANGE) return null
  return {
    startMs: startMs + start * stepMs,
    endMs: startMs + end * stepMs,
    centre: findCentre(first, second, width, height),
  }
}

/** The first place with the highest score. */
function best(places: readonly number[], scoreOf: (place: number) => number): number {
  let found = { place: 0, score: -Infinity }
  for (const place of places) {
    const score = scoreOf(place)
    if (score > found.score) found = { place, score }
  }
  return found.place
}

/** Mean of the differences of grey values, 0 to 255. */
function difference(a: Uint8Array, b: Uint8Array): number {
  let sum = 0
  for (let place = 0; place < a.length; place += 1) sum += Math.abs((a[place] ?? 0) - (b[place] ?? 0))
  return sum / Math.max(1, a.length)
}

/** The middle between the outermost columns and rows of which a tenth of all change lies beyond, on either side. */
function findCentre(a: Uint8Array, b: Uint8Array, width: number, height: number): KeyPictures['centre'] {
  const columns = new Array<number>(width).fill(0)
  const rows = new Array<number>(height).fill(0)
  for (let place = 0; place < a.length; place += 1) {
    const change = Math.abs((a[place] ?? 0) - (b[place] ?? 0))
    if (change < MOVED) continue
    const [x, y] = [place % width, Math.floor(place / width)]
    columns[x] = (columns[x] ?? 0) + change
    rows[y] = (rows[y] ?? 0) + change
  }
  return { x: middleOf(columns), y: middleOf(rows) }
}

function middleOf(sums: readonly number[]): number {
  const all = sums.reduce((sum, one) => sum + one, 0)
  if (all === 0) return 0.5
  const reach = (share: number): number => {
    let sum = 0
    return sums.findIndex((one) => (sum += one) >= all * share)
  }
  return (reach(0.1) + reach(0.9) + 1) / 2 / sums.length
}

/** The largest square of a picture around a middle, in whole even pixels. */
export function squareAround(
  { x, y }: KeyPictures['centre'],
  width: number,
  height: number,
): { side: number; left: number; top: number } {
  const even = (value: number): number => Math.floor(value / 2) * 2
  const side = even(Math.min(width, height))
  const place = (middle: number, length: number): number =>
    even(Math.min(length - side, Math.max(0, middle * length - side / 2)))
  return { side, left: place(x, width), top: place(y, height) }
}
