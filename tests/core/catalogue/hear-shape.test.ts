/** Facts about what is heard of position and movement in the words of a teaching. */
import { describe, expect, it } from 'vitest'
import { hearShape, oddsOfWords, shapeTable, shapeWords } from '../../../core/catalogue/hear-shape.ts'

describe('shapeWords', () => {
  it('leaves out names, which may be those of another exercise, and numbers', () => {
    const words = shapeWords(['Keep your chest up, it is not a deadlift, and breathe for 10'])
    expect(words).toEqual(expect.arrayContaining(['chest', 'breathe']))
    for (const left of ['dead', 'lift', 'deadlift', '10']) expect(words).not.toContain(left)
  })

  it('pairs words that follow each other, not across a comma or a name', () => {
    expect(shapeWords(['lower slowly, heels down'])).toEqual([
      ...['lower', 'slowly', 'lower slowly'],
      ...['heel', 'down', 'heel down'],
    ])
    expect(shapeWords(['into goblet squats now'])).not.toContain('into now')
  })

  it('says each word once', () => {
    expect(shapeWords(['up and up', 'up'])).toEqual(['up', 'and', 'up and', 'and up'])
  })
})

describe('hearShape', () => {
  const table = shapeTable([
    ['hanging', -2, [[1, 'beam|let go']]],
    ['squat', -1, [[-0.5, 'beam']]],
  ])

  it('starts from what all teachings share and adds what each word says', () => {
    expect(oddsOfWords([], table)).toEqual(
      new Map([
        ['hanging', -2],
        ['squat', -1],
      ]),
    )
    expect(hearShape(['on the beam'], table).get('hanging')).toBe(8)
    expect(hearShape(['on the beam'], table).get('squat')).toBe(-6)
  })

  it('lets one word of many say less than one alone', () => {
    const long = oddsOfWords(['beam', 'let go'], table).get('squat') ?? 0
    const short = oddsOfWords(['beam'], table).get('squat') ?? 0
    expect(long).toBeGreaterThan(short)
  })

  it.each([
    {
      says: 'Lie on your back, knees bent, feet flat, and lift your hips to the ceiling.',
      shape: 'supine',
      not: 'hanging',
    },
    {
      says: 'Sit back and down, chest up, knees over your toes, then drive up through your heels.',
      shape: 'squat',
      not: 'pull',
    },
    {
      says: 'Hinge at the hips, soft knees, flat back, and let the weight slide down your thighs.',
      shape: 'hinge',
      not: 'supine',
    },
    { says: 'Pull your elbows back past your ribs and squeeze your shoulder blades.', shape: 'pull', not: 'squat' },
  ] as const)('hears $shape rather than $not', ({ says, shape, not }) => {
    const odds = hearShape([says])
    expect(odds.get(shape) ?? -9).toBeGreaterThan(odds.get(not) ?? -9)
  })
})
