/**
 * Finds where someone speaks, by a level that follows the room: a fixed one finds nothing as soon as music plays. Good for
 * the starts of sentences and for pauses; weak consonants are missed, so never cut a clip by it.
 */
import type { Ms, Stretch } from '../../shared/time.ts'
import { FRAME_MS } from './measure-sound.ts'

export interface FoundSpeech {
  /** Islands of speech (or of other loud sound), in order. */
  islands: Stretch[]
  /** What lies between islands, where it is long enough to breathe or to cut. */
  pauses: Stretch[]
}

/** The room is judged by so much time around each moment, in steps of one second. */
const ROOM_MS = 20_000
const STEP_MS = 1000
/** Share of the measures below which lies the room's own noise or music, and above which lies speech. */
const QUIET_SHARE = 0.15
const LOUD_SHARE = 0.95
/** Speech begins when the level rises by this share of the way from quiet to loud, and ends below the lower one. */
const BEGIN_SHARE = 0.5
const END_SHARE = 0.35
/** At least this far above the room, so that steady noise is no speech. */
const LEAST_RISE_DB = 5
/** Shorter gaps belong to a word, shorter islands are clicks. */
const GAP_MS = 250
const ISLAND_MS = 50
/** A pause worth naming. */
const PAUSE_MS = 300

/** @param levels dB of each 10 ms */
export function findSpeech(levels: Float32Array, durationMs: Ms = levels.length * FRAME_MS): FoundSpeech {
  const rooms = measureRooms(levels)
  const islands = joinNear(readIslands(smooth(levels), rooms)).filter((one) => one.endMs - one.startMs >= ISLAND_MS)
  return { islands, pauses: between(islands, durationMs).filter((one) => one.endMs - one.startMs >= PAUSE_MS) }
}

interface Room {
  begin: number
  end: number
}

function measureRooms(levels: Float32Array): Room[] {
  const step = STEP_MS / FRAME_MS
  const half = ROOM_MS / FRAME_MS / 2
  const count = Math.ceil(levels.length / step)
  return Array.from({ length: count }, (_, index) => {
    const middle = index * step
    const around = levels.slice(Math.max(0, middle - half), middle + half).sort()
    const quiet = around[Math.floor(around.length * QUIET_SHARE)] ?? 0
    const loud = around[Math.min(around.length - 1, Math.floor(around.length * LOUD_SHARE))] ?? 0
    const rise = (share: number): number => quiet + Math.max(LEAST_RISE_DB, (loud - quiet) * share)
    return { begin: rise(BEGIN_SHARE), end: rise(END_SHARE) }
  })
}

/** The middle of three: one odd measure is no change. */
function smooth(levels: Float32Array): Float32Array {
  return levels.map((level, index) => {
    const before = levels[index - 1] ?? level
    const after = levels[index + 1] ?? level
    return Math.max(Math.min(before, level), Math.min(Math.max(before, level), after))
  })
}

function readIslands(levels: Float32Array, rooms: readonly Room[]): Stretch[] {
  const islands: Stretch[] = []
  let startMs: Ms | null = null
  levels.forEach((level, index) => {
    const room = rooms[Math.floor((index * FRAME_MS) / STEP_MS)]
    if (!room) return
    if (startMs === null && level >= room.begin) startMs = index * FRAME_MS
    if (startMs === null || level >= room.end) return
    islands.push({ startMs, endMs: index * FRAME_MS })
    startMs = null
  })
  if (startMs !== null) islands.push({ startMs, endMs: levels.length * FRAME_MS })
  return islands
}

function joinNear(islands: readonly Stretch[]): Stretch[] {
  const joined: Stretch[] = []
  for (const island of islands) {
    const last = joined.at(-1)
    if (last && island.startMs - last.endMs < GAP_MS) last.endMs = island.endMs
    else joined.push({ ...island })
  }
  return joined
}

function between(islands: readonly Stretch[], durationMs: Ms): Stretch[] {
  const starts = [0, ...islands.map(({ endMs }) => endMs)]
  const ends = [...islands.map(({ startMs }) => startMs), durationMs]
  return starts.map((startMs, index) => ({ startMs, endMs: ends[index] ?? startMs }))
}
