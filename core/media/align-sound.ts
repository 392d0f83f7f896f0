/**
 * Finds where sound that was recorded apart lies on the class's clock, and how much faster or slower its own clock ran: by
 * how loud both are every 10 ms, so that two microphones in two places can be compared.
 */
import type { Ms } from '../../shared/time.ts'
import { FRAME_MS } from './measure-sound.ts'
import { correlate, powerOfTwo, transform } from './transform-fourier.ts'
import type { Spectrum } from './transform-fourier.ts'

export interface Alignment {
  /** Where the sound's first moment lies on the class's clock, exact ms; negative = it began before the film. */
  startMs: number
  /** How much faster the sound's clock runs than the film's, in millionths. */
  driftPpm: number
  /** How alike both are, 0 to 1: the middle one of all places compared. */
  likeness: number
  /** Places that were compared and agree. */
  places: number
}

/** The moment of the sound's own clock, ms, that belongs to a moment of the class. */
export function soundMoment({ startMs, driftPpm }: Pick<Alignment, 'startMs' | 'driftPpm'>, classMs: number): number {
  return (classMs - startMs) * (1 + driftPpm / 1_000_000)
}

/** Loudness is compared with the mean of this much around it, so that neither microphone's level nor a hum counts. */
const AROUND_MS = 1000
/** Louder and softer than that by more counts no more. */
const MOST_DB = 15
/** A piece of the film that is looked for in the whole sound. */
const PIECE_MS = 240_000
const PIECES = 5
/** A place: its length, how far apart, and how far it is looked for around where it should be. */
const PLACE_MS = 20_000
const PLACES = 60
const REACH_MS = 1500
/** Below this a place says nothing: someone rests, or music is heard on one side only. Our own choice, after trials. */
const LEAST_LIKENESS = 0.35
/** Places may lie off the line by so much: another way of the sound through the room is 10 m = 30 ms. */
const LINE_MS = 25
/** Clocks of recorders are within 200 ppm (common practice, no source); more is a mistake. */
const MOST_DRIFT = 500e-6
/** Over a shorter time a drift cannot be told from chance. */
const DRIFT_SPREAD_MS = 180_000
const LEAST_PLACES = 2

/**
 * @param film dB of each 10 ms of the film's own sound, as measure-sound gives them
 * @param sound the same of the sound recorded apart
 * @returns null when they do not belong together
 */
export function alignSound(film: Float32Array, sound: Float32Array): Alignment | null {
  const [a, b] = [shapeLevels(film), shapeLevels(sound)]
  const roughMs = findRoughly(a, b)
  if (roughMs === null) return null
  const first = comparePlaces(a, b, () => roughMs)
  const line = fitLine(first)
  if (!line) return null
  // once more along the line: a place that was at the edge of its reach is found now
  const found = comparePlaces(a, b, (atMs) => line.startMs + line.slope * atMs)
  const fitted = fitLine(found)
  if (!fitted || fitted.kept.length < LEAST_PLACES) return null
  // off = moment of the film - moment of the sound = start + slope x moment of the film
  const driftPpm = fitted.slope === 0 ? 0 : -fitted.slope * 1_000_000
  const startMs = fitted.startMs / (1 - fitted.slope)
  const likeness = middle(fitted.kept.map((place) => place.likeness))
  return { startMs, driftPpm, likeness, places: fitted.kept.length }
}

/** Each level less the mean around it, within limits; silence has no shape. */
function shapeLevels(levels: Float32Array): Float32Array {
  const half = Math.round(AROUND_MS / FRAME_MS / 2)
  const sums = new Float64Array(levels.length + 1)
  levels.forEach((level, index) => (sums[index + 1] = (sums[index] ?? 0) + level))
  return levels.map((level, index) => {
    const [from, to] = [Math.max(0, index - half), Math.min(levels.length, index + half + 1)]
    const mean = ((sums[to] ?? 0) - (sums[from] ?? 0)) / (to - from)
    return Math.max(-MOST_DB, Math.min(MOST_DB, level - mean))
  })
}

/** Moment of the film less moment of the sound, within about 0.1 s: the piece of the film that is found most clearly. */
function findRoughly(film: Float32Array, sound: Float32Array): number | null {
  const length = Math.min(PIECE_MS / FRAME_MS, film.length)
  const size = powerOfTwo(sound.length + length)
  const whole = transform(sound, size)
  let best: { offMs: number; clearness: number } | null = null
  for (let piece = 0; piece < PIECES; piece += 1) {
    const from = Math.round(((film.length - length) * piece) / (PIECES - 1))
    const found = findPiece(film.subarray(from, from + length), whole, sound.length)
    const offMs = (from - found.at) * FRAME_MS
    if (!best || found.clearness > best.clearness) best = { offMs, clearness: found.clearness }
    if (film.length === length) break
  }
  return best && best.clearness > 0 ? best.offMs : null
}

/** Where in the sound the piece lies, and by how much that place stands out (in deviations of all places). */
function findPiece(piece: Float32Array, sound: Spectrum, soundLength: number): { at: number; clearness: number } {
  const size = sound.real.length
  const likeness = correlate(transform(piece, size), sound)
  let [at, most, squares] = [0, -Infinity, 0]
  likeness.forEach((value, index) => {
    squares += value * value
    if (value > most) [at, most] = [index, value]
  })
  const deviation = Math.sqrt(squares / size)
  return { at: at < soundLength ? at : at - size, clearness: deviation > 0 ? most / deviation : 0 }
}

interface Place {
  /** Its middle on the film's clock. */
  atMs: Ms
  /** Moment of the film less moment of the sound, exact ms. */
  offMs: number
  likeness: number
}

function comparePlaces(film: Float32Array, sound: Float32Array, expect: (atMs: Ms) => number): Place[] {
  const length = Math.min(PLACE_MS / FRAME_MS, film.length)
  const count = Math.min(PLACES, Math.max(1, Math.floor((film.length / length) * 2)))
  return Array.from({ length: count }, (_, index) => {
    const from = Math.round(((film.length - length) * index) / Math.max(1, count - 1))
    const atMs = (from + length / 2) * FRAME_MS
    return comparePlace(film.subarray(from, from + length), sound, from, { atMs, offMs: expect(atMs) })
  }).filter((place) => place !== null && place.likeness >= LEAST_LIKENESS) as Place[]
}

function comparePlace(
  piece: Float32Array,
  sound: Float32Array,
  from: number,
  expected: Pick<Place, 'atMs' | 'offMs'>,
): Place | null {
  const middleAt = Math.round(from - expected.offMs / FRAME_MS)
  const reach = REACH_MS / FRAME_MS
  const values = Array.from({ length: 2 * reach + 1 }, (_, lag) => likenessAt(piece, sound, middleAt + lag - reach))
  const top = values.reduce((best, value, lag) => (value > (values[best] ?? -1) ? lag : best), 0)
  const [before, most, after] = [values[top - 1], values[top] ?? -1, values[top + 1]]
  if (before === undefined || after === undefined || most <= 0) return null
  // the top of the parabola through three values lies between the measures
  const bend = before - 2 * most + after
  const between = bend < 0 ? (0.5 * (before - after)) / bend : 0
  const at = middleAt + top - reach + between
  return { atMs: expected.atMs, offMs: (from - at) * FRAME_MS, likeness: most }
}

/** Pearson's correlation of the piece with the sound from a place on; -1 where the sound does not reach. */
function likenessAt(piece: Float32Array, sound: Float32Array, at: number): number {
  if (at < 0 || at + piece.length > sound.length) return -1
  let [x, y, xx, yy, xy] = [0, 0, 0, 0, 0]
  for (let index = 0; index < piece.length; index += 1) {
    const [a, b] = [piece[index] ?? 0, sound[at + index] ?? 0]
    x += a
    y += b
    xx += a * a
    yy += b * b
    xy += a * b
  }
  const n = piece.length
  const spread = (n * xx - x * x) * (n * yy - y * y)
  return spread > 0 ? (n * xy - x * y) / Math.sqrt(spread) : 0
}

interface Line {
  startMs: number
  slope: number
  kept: Place[]
}

/** A straight line that wrong places cannot bend: the middle slope of all pairs (H. Theil, 1950; P. K. Sen, 1968), then least squares of what lies near it. */
function fitLine(places: readonly Place[]): Line | null {
  if (places.length === 0) return null
  const spreadMs = Math.max(...places.map(({ atMs }) => atMs)) - Math.min(...places.map(({ atMs }) => atMs))
  const slopes = places.flatMap((a, index) =>
    places
      .slice(index + 1)
      .filter((b) => b.atMs - a.atMs >= DRIFT_SPREAD_MS)
      .map((b) => (b.offMs - a.offMs) / (b.atMs - a.atMs))
      .filter((slope) => Math.abs(slope) <= MOST_DRIFT),
  )
  const slope = spreadMs >= DRIFT_SPREAD_MS && slopes.length > 0 ? middle(slopes) : 0
  const startMs = middle(places.map(({ atMs, offMs }) => offMs - slope * atMs))
  const kept = places.filter(({ atMs, offMs }) => Math.abs(offMs - startMs - slope * atMs) <= LINE_MS)
  if (kept.length * 2 < places.length) return null
  return { ...(slope === 0 ? { slope, startMs: middle(kept.map(({ offMs }) => offMs)) } : leastSquares(kept)), kept }
}

function leastSquares(places: readonly Place[]): { slope: number; startMs: number } {
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length
  const [x, y] = [mean(places.map(({ atMs }) => atMs)), mean(places.map(({ offMs }) => offMs))]
  const spread = places.reduce((sum, { atMs }) => sum + (atMs - x) ** 2, 0)
  const shared = places.reduce((sum, { atMs, offMs }) => sum + (atMs - x) * (offMs - y), 0)
  const slope = spread > 0 ? shared / spread : 0
  return { slope, startMs: y - slope * x }
}

function middle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)] ?? 0
}
