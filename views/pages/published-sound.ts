/** Which sound is published, on the page of a class's film: what there is to choose from, and what is known of each. */
import type { PublishedSound } from '../../shared/log-sheet.ts'
import { formatCount } from './format.ts'

export interface SoundInput {
  /** Of the film; empty = not known. */
  tracks: readonly { codec: string; channels: number }[]
  /** Sound recorded apart. */
  files: readonly {
    id: string
    fileName: string
    /** null = still to be compared with the film; 'none' = not heard in it. */
    place:
      { startMs: number; driftPpm: number; likeness: number; places: number; byHand?: true | undefined } | 'none' | null
  }[]
  chosen: PublishedSound | null
}

export interface SoundPart {
  choices: { value: string; label: string; help: string; chosen: boolean; off: boolean }[]
  /** Sound that is not heard in the film: a person says where it begins. */
  unheard: { id: string; name: string; seconds: string }[]
  gains: { value: string; label: string; chosen: boolean }[]
}

/** Our own choice, after trials: less alike, or heard in few places, and a person should listen. */
const SURE = { likeness: 0.5, places: 2 }
/** Millionths; a millionth is 3.6 ms an hour, and nobody hears ten. */
const NO_DRIFT = 3
const MOST_DB = 12

/** null = there is nothing to choose: no log sheet yet. */
export function buildSoundPart(input: SoundInput | null): SoundPart | null {
  if (input === null) return null
  const { tracks, files, chosen } = input
  const mediaId = chosen?.mediaId ?? null
  const track = chosen?.track ?? null
  const others = tracks.length > 1 ? tracks : []
  const isOwn = mediaId === null && (track === null || others.length === 0)
  const missing = mediaId !== null && files.every(({ id }) => id !== mediaId)
  return {
    choices: [
      { value: 'film', label: 'The film’s own sound', help: 'As the camera heard it.', chosen: isOwn, off: false },
      ...others.map(({ codec, channels }, index) => ({
        value: `track-${index + 1}`,
        label: `Track ${index + 1} of the film`,
        help: `${channels === 1 ? 'One channel' : formatCount(channels, 'channel')}, ${codec}.`,
        chosen: mediaId === null && track === index + 1,
        off: false,
      })),
      ...files.map(({ id, fileName, place }) => ({
        value: id,
        label: fileName,
        help: placeWords(place),
        chosen: mediaId === id,
        off: mediaId !== id && (place === null || place === 'none'),
      })),
      ...(missing
        ? [
            {
              value: mediaId,
              label: 'A file that is not here any more',
              help: 'Choose another.',
              chosen: true,
              off: true,
            },
          ]
        : []),
    ],
    unheard: files.flatMap(({ id, fileName, place }) =>
      place === 'none'
        ? [{ id, name: fileName, seconds: '' }]
        : place?.byHand
          ? [{ id, name: fileName, seconds: String(place.startMs / 1000) }]
          : [],
    ),
    gains: Array.from({ length: 2 * MOST_DB + 1 }, (_, index) => MOST_DB - index).map((gainDb) => ({
      value: String(gainDb),
      label: gainDb === 0 ? 'As lessons usually are' : `${gainDb > 0 ? '+' : '−'}${Math.abs(gainDb)} dB`,
      chosen: Math.round(chosen?.gainDb ?? 0) === gainDb,
    })),
  }
}

function placeWords(place: SoundInput['files'][number]['place']): string {
  if (place === null) return 'Is compared with the film; it can be chosen once its place is found.'
  if (place === 'none') return 'Is not heard in the film. Say below where it begins, if it is of this class.'
  const { startMs, driftPpm, likeness, places, byHand } = place
  const seconds = `${(Math.abs(startMs) / 1000).toFixed(2)} s`
  const begins =
    startMs === 0 ? 'Begins with the film' : `Begins ${seconds} ${startMs < 0 ? 'before' : 'after'} the film`
  if (byHand) return `${begins}, as you said. Watch a lesson first.`
  const clock = Math.abs(driftPpm) < NO_DRIFT ? 'keeps its time' : `its clock runs ${driftWords(driftPpm)}`
  const isSure = likeness >= SURE.likeness && places >= SURE.places
  const heard = `${formatCount(places, 'place')} of the film ${places === 1 ? 'agrees' : 'agree'}, alike by ${Math.round(likeness * 100)} %`
  return `${begins}; ${clock}. ${isSure ? 'Sure' : 'Not quite sure, so listen to a lesson first'}: ${heard}.`
}

function driftWords(driftPpm: number): string {
  const ms = Math.abs(driftPpm) * 3.6
  const amount = ms < 1000 ? `${Math.round(ms)} ms` : `${(ms / 1000).toFixed(1)} s`
  return `${amount} an hour ${driftPpm > 0 ? 'fast' : 'slow'}, which is made good`
}
