// What can be chosen as the sound of the lessons, and what is said of each.
import { describe, expect, it } from 'vitest'
import { buildSoundPart } from '../../views/pages/published-sound.ts'
import type { SoundInput } from '../../views/pages/published-sound.ts'

const place = { startMs: -2310, driftPpm: 40, likeness: 0.8, places: 12 }
const FILE = { id: 'f1', fileName: 'collar.wav', place }
const INPUT: SoundInput = { tracks: [], files: [FILE], chosen: null }
const choices = (more: Partial<SoundInput>) => buildSoundPart({ ...INPUT, ...more })?.choices ?? []

it('nothing is offered before anything is marked', () => {
  expect(buildSoundPart(null)).toBeNull()
})

describe('a sound recorded apart', () => {
  it.each([
    ['is not measured yet', null, 'Is compared with the film; it can be chosen once its place is found.'],
    [
      'is of another class',
      'none' as const,
      'Is not heard in the film. Say below where it begins, if it is of this class.',
    ],
  ])('cannot be chosen when it %s', (_what, of, help) => {
    expect(choices({ files: [{ ...FILE, place: of }] })[1]).toMatchObject({ off: true, help })
  })

  it('that was chosen stays so while it is measured again', () => {
    const chosen = { mediaId: 'f1', track: null }
    expect(choices({ files: [{ ...FILE, place: null }], chosen })[1]).toMatchObject({ off: false, chosen: true })
  })

  it.each([
    [
      { ...place },
      'Begins 2.31 s before the film; its clock runs 144 ms an hour fast, which is made good. Sure: 12 places of the film agree, alike by 80 %.',
    ],
    [
      { ...place, startMs: 500, driftPpm: 0, likeness: 0.4 },
      'Begins 0.50 s after the film; keeps its time. Not quite sure, so listen to a lesson first: 12 places of the film agree, alike by 40 %.',
    ],
    [
      { ...place, startMs: 0, driftPpm: -300, places: 1 },
      'Begins with the film; its clock runs 1.1 s an hour slow, which is made good. Not quite sure, so listen to a lesson first: 1 place of the film agrees, alike by 80 %.',
    ],
  ])('says where it lies and how sure that is: %j', (found, help) => {
    expect(choices({ files: [{ ...FILE, place: found }] })[1]?.help).toBe(help)
  })
})

it('tracks are offered where there are several, and a file that went away is told', () => {
  const one = { codec: 'aac', channels: 1 }
  expect(choices({ tracks: [one], files: [] }).map(({ value }) => value)).toEqual(['film'])
  const two = choices({ tracks: [one, { ...one, channels: 2 }], files: [], chosen: { mediaId: null, track: 2 } })
  expect(two.map(({ value, chosen }) => [value, chosen])).toEqual([
    ['film', false],
    ['track-1', false],
    ['track-2', true],
  ])
  const gone = choices({ files: [], chosen: { mediaId: 'f9', track: null } })
  expect(gone.map(({ value, chosen, off }) => [value, chosen, off])).toEqual([
    ['film', false, false],
    ['f9', true, true],
  ])
})

it('the loudness that was chosen is the one that is shown', () => {
  const gains = buildSoundPart({ ...INPUT, chosen: { mediaId: null, track: null, gainDb: -3 } })?.gains
  expect(gains?.find(({ chosen }) => chosen)).toMatchObject({ value: '-3', label: '−3 dB' })
})
