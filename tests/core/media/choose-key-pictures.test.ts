// Key pictures of invented films: a bright bar that goes from one place to another and back, as an arm does.
import { describe, expect, it } from 'vitest'
import { chooseKeyPictures, squareAround } from '../../../core/media/choose-key-pictures.ts'

const WIDTH = 16
const HEIGHT = 9

/** One grey picture with a bar two columns wide. */
function bar(column: number): Uint8Array {
  return Uint8Array.from({ length: WIDTH * HEIGHT }, (_, place) => {
    const x = place % WIDTH
    return x === column || x === column + 1 ? 250 : 10
  })
}

const film = (...columns: number[]) => ({
  ...{ width: WIDTH, height: HEIGHT, stepMs: 500, startMs: 4000 },
  pictures: columns.map(bar),
})

describe('none', () => {
  it('of no picture, of one, and of a position that is held', () => {
    expect(chooseKeyPictures(film())).toBeNull()
    expect(chooseKeyPictures(film(3))).toBeNull()
    expect(chooseKeyPictures(film(3, 3, 3, 3, 3, 3))).toBeNull()
  })
})

describe('start and end', () => {
  it('are where the movement begins and where it is farthest and held', () => {
    const found = chooseKeyPictures(film(2, 2, 5, 9, 9, 5, 2, 2, 5, 9, 9, 5, 2, 2))
    expect(found).toMatchObject({ startMs: 4000 })
    // held at the fourth and fifth picture of seven, and again
    expect([5500, 6000, 8500, 9000]).toContain(found?.endMs)
  })

  it('leave out what is met once only, however far it is', () => {
    const found = chooseKeyPictures(film(6, 6, 6, 7, 7, 6, 6, 6, 7, 7, 6, 6, 6, 7, 7, 6, 14, 14))
    expect([5500, 6000, 8000, 8500, 10_500, 11_000]).toContain(found?.endMs)
  })

  it('turn round where the end is talked in and met most, and the set-up shows where it begins', () => {
    const talked = film(9, 9, 9, 9, 5, 2, 2, 5, 9, 9, 9, 9, 5, 2, 2, 5, 9, 9, 9)
    const before = [bar(2), bar(2), bar(3)]
    expect(chooseKeyPictures(talked)).toMatchObject({ startMs: 4000 })
    const [known, turned] = [chooseKeyPictures(talked), chooseKeyPictures({ ...talked, before })]
    expect(turned).toEqual({ ...known, startMs: known?.endMs, endMs: known?.startMs })
    // what came before tells nothing where it is neither, as a walk to the shelf
    expect(chooseKeyPictures({ ...talked, before: [bar(14), bar(13), bar(12)] })).toEqual(known)
  })

  it('come the same again', () => {
    const one = film(2, 3, 4, 5, 4, 3, 2, 3, 4, 5)
    expect(chooseKeyPictures(one)).toEqual(chooseKeyPictures(one))
  })

  it('lie around the middle of what moves', () => {
    const centre = chooseKeyPictures(film(10, 10, 13, 13, 10, 10, 13, 13))?.centre
    expect(centre?.x).toBeCloseTo(12.5 / 16, 1)
    expect(centre?.y).toBeCloseTo(0.5, 1)
  })
})

it.each([
  ['the middle', { x: 0.5, y: 0.5 }, 1280, 720, { side: 720, left: 280, top: 0 }],
  ['the very right', { x: 1, y: 0.2 }, 1280, 720, { side: 720, left: 560, top: 0 }],
  ['the left', { x: 0.1, y: 0.2 }, 1280, 720, { side: 720, left: 0, top: 0 }],
  ['a film that stands upright', { x: 0.5, y: 0.9 }, 720, 1280, { side: 720, left: 0, top: 560 }],
  ['odd sizes', { x: 0.5, y: 0.5 }, 641, 361, { side: 360, left: 140, top: 0 }],
])('a square around %s lies in the picture', (_what, centre, width, height, square) => {
  expect(squareAround(centre, width, height)).toEqual(square)
})
