/** The shelf, "Add a class", and what is said of a recording. */
import type { Request, Response, Router } from 'express'
import { z } from 'zod'
import type { LogSheet } from '../../shared/log-sheet.ts'
import { buildAddClassPage } from '../../views/pages/add-class.ts'
import { buildShelfPage } from '../../views/pages/shelf.ts'
import { addRecording, removeRecording } from '../actions/add-recording.ts'
import { draftFromSpeech } from '../actions/draft-recording.ts'
import { arrangeFiles, GivenRole } from '../actions/arrange-files.ts'
import { findReader } from '../actions/change-reader.ts'
import { chooseSound, SoundInput } from '../actions/choose-sound.ts'
import { chooseClassMedia, partsOf } from '../actions/find-class-file.ts'
import { readFacts, readPlace } from '../actions/media-facts.ts'
import { typePlace } from '../actions/place-sound.ts'
import { saveWords } from '../actions/save-words.ts'
import { showRecording, showShelf } from '../actions/show-shelf.ts'
import type { ShelfEntry } from '../actions/show-shelf.ts'
import { readForm } from '../middleware/read-body.ts'
import { render } from '../render.ts'
import type { MediaFile } from '../store/keep-media.ts'
import type { Studio } from '../studio.ts'
import { readWords } from './read-words.ts'

const Params = z.object({ id: z.string() })
const SoundForm = SoundInput.omit({ recordingId: true })
const PlaceForm = z.object({ mediaId: z.string(), seconds: z.string() })
const NewForm = z.object({ title: z.string() })

export function addRecordings(app: Router, studio: Studio): void {
  app.get('/', async (_req, res) => {
    const entries = await showShelf(studio)
    render(res, 'shelf', buildShelfPage({ entries: entries.map(plainEntry), hasFfmpeg: studio.ffmpeg !== null }))
  })
  app.get('/add', async (_req, res) => sendAddPage(studio, res, null))
  app.get('/add/:id', async (req, res) => sendAddPage(studio, res, await showRecording(studio, req.params.id)))
  app.post('/recordings', readForm(), async (req, res) => {
    const { id } = await addRecording(studio, NewForm.parse(req.body))
    // a page that only begins an upload has no further words yet
    if (!wantsPage(req)) return void res.status(201).json({ id })
    await saveWords(studio, { recordingId: id, ...readWords(req.body) })
    res.redirect(303, `/add/${id}`)
  })
  app.post('/recordings/:id/words', readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    await saveWords(studio, { recordingId: id, ...readWords(req.body) })
    if (wantsPage(req)) res.redirect(303, '/')
    else res.json({ id })
  })
  app.post('/recordings/:id/files', readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    await arrangeFiles(studio, { recordingId: id, files: readOrder(req.body) })
    res.redirect(303, `/add/${id}#film`)
  })
  app.post('/recordings/:id/sound', readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    await chooseSound(studio, { recordingId: id, ...SoundForm.parse(req.body) })
    res.redirect(303, `/add/${id}#film`)
  })
  app.post('/recordings/:id/sound-place', readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    await typePlace(studio, { recordingId: id, ...PlaceForm.parse(req.body) })
    res.redirect(303, `/add/${id}#film`)
  })
  app.post('/recordings/:id/speech-draft', readForm(), async (req, res) => {
    const { id } = Params.parse(req.params)
    await draftFromSpeech(studio, id)
    res.redirect(303, `/recordings/${id}`)
  })
  app.post('/recordings/:id/remove', readForm(), async (req, res) => {
    await removeRecording(studio, Params.parse(req.params).id)
    res.redirect(303, '/')
  })
}

const many = z.union([z.string(), z.array(z.string())]).transform((value) => [value].flat())
const FilesForm = z.object({ file: many, role: many, up: z.string().optional(), down: z.string().optional() })

/** The files as the form lists them; its buttons move one of them past its neighbour of the same role. */
function readOrder(body: unknown): { id: string; role: GivenRole }[] {
  const { file, role, up, down } = FilesForm.parse(body)
  const files = file.map((id, index) => ({ id, role: GivenRole.parse(role[index]) }))
  const at = files.findIndex(({ id }) => id === (up ?? down))
  const moved = files[at]
  if (!moved) return files
  const isLike = (other: { role: GivenRole }): boolean => other.role === moved.role
  const to =
    up === undefined
      ? files.findIndex((other, index) => index > at && isLike(other))
      : files.slice(0, at).findLastIndex(isLike)
  const other = files[to]
  if (other) [files[at], files[to]] = [other, moved]
  return files
}

async function sendAddPage(studio: Studio, res: Response, entry: ShelfEntry | null): Promise<void> {
  const kinds = await studio.store.kinds.list()
  const reader = await findReader(studio)
  const page = buildAddClassPage({
    entry: entry && plainEntry(entry),
    kinds,
    maxBytes: studio.settings.maxUploadBytes,
    hasFfmpeg: studio.ffmpeg !== null,
    secondReader: reader === null ? '' : new URL(reader.url).host,
  })
  render(res, 'add-class', page)
}

/** What pages may know of a recording. */
export function plainEntry({ recording, media, hasWords, work, jobs, failed }: ShelfEntry) {
  const film = chooseClassMedia(recording.id, media)
  return {
    ...recording,
    files: media.flatMap(({ id, role, fileName, bytes }) => (role === 'joined' ? [] : [{ id, role, fileName, bytes }])),
    sound: work && soundInput(media, film, work.sheet),
    hasFilm: partsOf(media).length > 0 && recording.state !== 'refused',
    hasWave: film ? (readFacts(film)?.wave ?? null) !== null : false,
    hasWords,
    work,
    jobs,
    failed,
  }
}

function soundInput(media: readonly MediaFile[], film: MediaFile | null, { publishedSound }: LogSheet) {
  const sounds = media.filter(({ role, storageKey }) => role === 'sound' && storageKey !== null)
  return {
    tracks: (film && readFacts(film)?.tracks) ?? [],
    files: sounds.map((file) => {
      const { id, fileName, startMs, driftPpm } = file
      const place = readPlace(file)
      const isOfFilm = film !== null && place?.filmId === film.id
      const found = place?.found && { startMs, driftPpm, ...place.found }
      return { id, fileName, place: isOfFilm ? (found ?? ('none' as const)) : null }
    }),
    chosen: publishedSound ?? null,
  }
}

function wantsPage(req: Request): boolean {
  return /\btext\/html\b/.test(req.headers.accept ?? '')
}
