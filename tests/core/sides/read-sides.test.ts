// Which sides words name: the trade's everyday English, our own sentences. Near misses first.
import { describe, expect, it } from 'vitest'
import { sidesIn } from '../../../core/sides/read-sides.ts'
import { sideOfName } from '../../../core/sides/sides-of-segment.ts'

const sidesOf = (text: string) => sidesIn(text).map(({ side, as }) => `${as} ${side}`)

const NO_SIDES: readonly string[] = [
  "Right, feet hip width. That's right.",
  'All right, five left.',
  'Sit right back in the chair.',
  'Ten seconds left, hands down.',
  'Find the right height for you.',
  'Palms right side up.',
  'Bring it right up to the chest.',
  'What is left in the tank?',
  'I left my bottle in the car.',
  'Sit up straight at a right angle.',
  "That's the right idea.",
  'Watch your knee in the mirror.',
  'Is there anything left over?',
  'Use the right weight for the day.',
  'Stop at the right height, and hold with the right grip.',
  'You are standing in the right place.',
]

const SIDES: readonly [said: string, sides: readonly string[]][] = [
  ['Lift your right knee.', ['limb right']],
  ['Right arm reaches up.', ['limb right']],
  ['Drop your left hip.', ['limb left']],
  ['Right side first.', ['first right']],
  ['Left leg goes first, please.', ['first left']],
  ['Start on the left.', ['first left']],
  ["We'll begin with your right foot forward.", ['first right']],
  ['Now the left.', ['turn left']],
  ['Right leg first for ten, then left for ten.', ['first right', 'turn left']],
  ['And then the right side again.', ['turn right']],
  ['Ten on your right, ten on your left.', ['turn right', 'turn left']],
  ['Left leg again.', ['turn left']],
  ['Okay, right side.', ['turn right']],
  ['Now the other side.', ['turn other']],
  ['And change legs.', ['turn other']],
  ['Swap.', ['turn other']],
  ['Roll over when you are ready.', ['aside other']],
  ["That's the right side done.", ['aside right']],
  ['Lie on your left side.', ['aside left']],
  ['Stand on your left leg.', ['aside left']],
  ['Left hand on the chair.', ['aside left']],
  ['Right knee down, left foot forward.', ['aside right', 'limb left']],
  ['Look to the left.', ['aside left']],
  ['Put the block by your right side.', ['aside right']],
  ['Turn your head left and right.', ['turn both']],
  ['Right, left, right, left.', ['turn both', 'turn both']],
  ['Same on both sides.', ['aside both']],
  ['Do both legs.', ['aside both']],
  ['Two and two.', ['aside both']],
  ['Two and three.', []],
  ['down your left leg then your right\vten each side', ['limb left', 'turn right']],
  ['And one, and two.', []],
  ['Both hands on the chair, both feet flat.', []],
  ["I'll mirror you.", ['mirrored both']],
  ["I'm mirroring you today.", ['mirrored both']],
  ['Just mirror me.', ['mirrored both']],
  ['My left, your right.', ['mirrored both']],
  ['My left is your right.', ['mirrored both']],
  ['You go right as I go left.', ['mirrored both']],
  ['When I say left, you move right.', ['mirrored both']],
  ['right side first then the left', ['first right', 'turn left']],
]

describe('words that name no side', () => {
  it.each(NO_SIDES)('%s', (text) => {
    expect(sidesOf(text)).toEqual([])
  })
})

describe('words that name a side', () => {
  it.each(SIDES)('%s', (text, sides) => {
    expect(sidesOf(text)).toEqual(sides)
  })

  it('gives exact places, in order, never two of the same words', () => {
    const text = 'Right side first. Lift your right knee, other side, left hand on the wall, and swap.'
    const found = sidesIn(text)
    expect(found.map(({ offset, length }) => text.slice(offset, offset + length))).toEqual([
      'Right side first',
      'right knee',
      'other side',
      'left hand on the wall',
      'swap',
    ])
  })
})

describe('the side in a name', () => {
  it.each([
    ['side plank, left', 'left'],
    ['Right leg lunge', 'right'],
    ['lunge (left)', 'left'],
    ['figure four right side', 'right'],
    ['left right step', null],
    ['left hook', null],
    ['leftover shuffle', null],
    ['side plank', null],
    ['bright stretch', null],
  ] as const)('%s', (name, side) => {
    expect(sideOfName(name)).toBe(side)
  })
})
