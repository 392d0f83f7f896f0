// The traits of an exercise: what the segment's own fields and words add to or take from the catalogue.
import { describe, expect, it } from 'vitest'
import { describeCaution, sourceOfCaution } from '../../../core/cautions/describe-caution.ts'
import { audienceOf, exerciseTraits } from '../../../core/cautions/describe-exercise.ts'
import { classSignsOf } from '../../../core/cautions/read-signs.ts'
import { cueSaid, segmentNamed, sheetWith } from './sheet-of-class.ts'

const traitsOf = (name: string, fields: Record<string, unknown> = {}, sheet: Record<string, unknown> = {}) => {
  const segment = segmentNamed(name, fields)
  return exerciseTraits(segment, sheetWith([segment], sheet))
}

describe('exerciseTraits', () => {
  it('knows nothing of a name without meaning and does not fail', () => {
    const traits = traitsOf('zzz')
    expect(traits.entry).toBeNull()
    expect([...traits.positions, ...traits.movements, ...traits.kit]).toEqual([])
  })

  it('survives a catalogue id that is not there', () => {
    expect(traitsOf('heel raise', { exercise: { name: 'heel raise', catalogueId: 'gone' } }).entry?.id).toBe(
      'heel-raise',
    )
  })

  it("lets the segment's position take the place of the catalogue's", () => {
    expect([...traitsOf('biceps curl', { position: 'seated' }).positions]).toEqual(['seated'])
    expect(traitsOf('downward dog', { position: 'all fours' }).positions).toContain('head-below-heart')
  })

  it.each([
    ['All fours to start, hands under shoulders.', 'all-fours'],
    ['Lie on your back, knees bent.', 'supine'],
    ['Roll onto your front.', 'prone'],
    ['One knee down, the other foot in front.', 'half-kneeling'],
  ])('reads the position of an unknown exercise from its set-up: %s', (text, position) => {
    expect([...traitsOf('wobbly flop', { cues: [cueSaid('setup', text)] }).positions]).toEqual([position])
  })

  it('takes the weight that the class uses in place of the one the catalogue expects', () => {
    expect(traitsOf('deadlift', { equipment: ['kettlebells'] }).kit).not.toContain('barbell')
    expect(traitsOf('squat', { cues: [cueSaid('easier', 'Use a dumbbell if you must.')] }).loaded).toBe(false)
  })

  it('does not take the step of a side step for a step to stand on', () => {
    expect(traitsOf('side step').kit).not.toContain('step')
  })

  it('organises a segment without a dose as most doses of the class are', () => {
    const round = (id: string) => ({
      id,
      exercise: { name: id },
      prescription: { scheme: 'circuit', reps: { min: 8, max: 8 } },
    })
    const bare = segmentNamed('high knees')
    const sheet = sheetWith([bare], { segments: [bare, round('a'), round('b')] })
    expect(exerciseTraits(bare, sheet).scheme).toBe('circuit')
    expect(traitsOf('high knees').scheme).toBe('straight')
  })

  it('takes the timed work of something held still for a hold', () => {
    const dose = { prescription: { workSeconds: { min: 30, max: 45 } } }
    expect(traitsOf('plank', dose).holdSeconds).toBe(45)
    expect(traitsOf('squat', dose).holdSeconds).toBeNull()
  })
})

describe('audienceOf', () => {
  it.each([
    ['Prenatal mobility', 'pregnancy'],
    ['Chair strength for the over 60s', 'older-adults'],
    ['Knee rehab, week two', 'rehab'],
    ['Monday class', 'general'],
  ])('reads "%s" where the sheet names nobody', (title, audience) => {
    expect([...audienceOf(sheetWith([], { title }))]).toEqual([audience])
  })

  it('lets the sheet decide', () => {
    expect([...audienceOf(sheetWith([], { title: 'Prenatal mobility', audience: ['general'] }))]).toEqual(['general'])
  })
})

describe('classSignsOf', () => {
  it('tells a running class by most of its exercises', () => {
    const names = ['a skip', 'bounding', 'stride', 'leg swing']
    const segments = names.map((name, index) => segmentNamed(name, { id: `seg-${index}` }))
    expect(classSignsOf(sheetWith(segments))).toContain('running-class')
    expect(classSignsOf(sheetWith(segments.slice(2)))).not.toContain('running-class')
  })
})

describe('describeCaution', () => {
  it('gives the wording of either table, and plain words for a hazard of the instructor', () => {
    expect(describeCaution('knee-tracking')).toMatch(/^Let your knee point/)
    expect(describeCaution('k15')).toMatch(/^Do not pull on your head/)
    expect(describeCaution('hot-tea')).toBe('Take care: hot tea.')
    expect(sourceOfCaution('k04')).toMatch(/Jasien/)
    expect(sourceOfCaution('hot-tea')).toBeNull()
  })
})
