// Take care if: the rules that must fire on 30 exercises, as an expert wrote them down beside the rules' sources.
import { describe, expect, it } from 'vitest'
import { exerciseTraits } from '../../../core/cautions/describe-exercise.ts'
import { findTakeCare, TAKE_CARE, takeCareOf } from '../../../core/cautions/take-care.ts'
import { cueSaid, segmentNamed, sheetWith } from './sheet-of-class.ts'

interface Case {
  name: string
  /** Ids without the K. */
  fires: readonly string[]
  fields?: Record<string, unknown>
}

/**
 * Exercise, and the rules that must fire (minimum). The sources of each rule stand in the table itself, among them:
 * K01, K03 MacDougall et al. 1985; K04 Jasien et al. 2015; K11 Sinaki & Mikkelsen 1984, Giangregorio et al. 2014;
 * K16 Schoenfeld et al. 2011; K20 Escamilla 2001; K24 Goom et al. 2019; K25 Mottola et al. 2018;
 * K40 Eannucci et al. 2019; K02, K44, K48 as named there; the others common practice, no source.
 */
const CASES: readonly Case[] = [
  { name: 'standing biceps curl with dumbbells', fires: ['01'], fields: { equipment: ['dumbbells'] } },
  { name: 'double-leg press, heavy, three reps', fires: ['01', '20', '42'], fields: { equipment: ['machine'] } },
  {
    name: 'forearm plank, sixty seconds',
    fires: ['03'],
    fields: { prescription: { holdSeconds: { min: 60, max: 60 } } },
  },
  { name: 'high plank on the hands', fires: ['03', '36'] },
  { name: 'downward dog', fires: ['04', '05', '36'] },
  { name: 'decline sit-up', fires: ['04', '05', '11', '15', '30'] },
  { name: 'headstand', fires: ['04', '05', '08'] },
  {
    name: 'curl-up, hands behind head',
    fires: ['11', '15', '25'],
    fields: { cues: [cueSaid('setup', 'Hands behind your head, elbows wide.')] },
  },
  { name: 'roll-up on the mat', fires: ['11', '25'] },
  { name: 'Russian twist with a plate', fires: ['11', '12'], fields: { equipment: ['plate'] } },
  { name: 'upright row', fires: ['01', '16'], fields: { equipment: ['dumbbells'] } },
  { name: 'behind-the-neck press', fires: ['17', '18', '38'], fields: { equipment: ['barbell'] } },
  { name: 'bench dip', fires: ['19', '51'] },
  { name: 'bench press', fires: ['25', '54'], fields: { equipment: ['barbell'] } },
  { name: 'deep goblet squat', fires: ['01', '20', '40'], fields: { equipment: ['kettlebell'] } },
  { name: 'squat jump', fires: ['22', '23', '24'] },
  { name: 'burpee', fires: ['22', '23', '24', '36'] },
  { name: 'glute bridge', fires: ['25'] },
  { name: 'superman lift', fires: ['26'] },
  { name: 'single-leg stand, eyes closed', fires: ['32'] },
  { name: 'full neck circles', fires: ['33', '35'] },
  { name: 'band pull-apart', fires: ['01', '37'] },
  { name: 'skull crusher', fires: ['25', '38'] },
  { name: 'kettlebell swing', fires: ['01', '39'] },
  { name: 'pigeon stretch', fires: ['40', '52'] },
  { name: 'step-up on a stair', fires: ['32', '51'] },
  { name: 'AMRAP ten minutes', fires: ['02', '44', '48'], fields: { prescription: { scheme: 'amrap' } } },
  { name: 'hot room flow', fires: ['28'] },
  { name: 'seated march on a chair', fires: ['51'] },
  { name: 'half-kneeling press', fires: ['01', '17', '21'], fields: { equipment: ['dumbbell'] } },
  { name: 'side-lying clam', fires: [] },
]

function firing(name: string, fields: Record<string, unknown> = {}): string[] {
  const segment = segmentNamed(name, fields)
  return takeCareOf(exerciseTraits(segment, sheetWith([segment]))).map((rule) => rule.id.slice(1))
}

describe('take care if', () => {
  it.each(CASES)('$name', ({ name, fires, fields }) => {
    expect(firing(name, fields)).toEqual(expect.arrayContaining([...fires]))
  })

  it('fires nothing on a side-lying clam', () => {
    expect(firing('side-lying clam')).toEqual([])
  })

  it('controls false alarms: at most one further rule for each that must fire', () => {
    const must = CASES.reduce((sum, { fires }) => sum + fires.length, 0)
    const all = CASES.reduce((sum, { name, fields }) => sum + firing(name, fields).length, 0)
    expect(all - must).toBeLessThanOrEqual(must)
  })

  it('holds 54 rules, each with wording, concern, source and grade', () => {
    expect(TAKE_CARE.map((rule) => rule.id)).toEqual(
      Array.from({ length: 54 }, (_, index) => `K${String(index + 1).padStart(2, '0')}`),
    )
    for (const rule of TAKE_CARE) {
      expect(rule.text.length, rule.id).toBeGreaterThan(10)
      expect(rule.concerns, rule.id).not.toBe('')
      expect(rule.source, rule.id).not.toBe('')
      expect(rule.grade, rule.id).toMatch(/^[SGXP]/)
      expect(rule.when.length > 0 || rule.where === 'library', rule.id).toBe(true)
    }
  })

  it('says of conflicting evidence that it is conflicting and never that rounding is dangerous', () => {
    const rule = findTakeCare('k13')
    expect(rule?.source).toMatch(/evidence conflicts/)
    expect(rule?.grade).toMatch(/conflicting/)
    for (const { text } of TAKE_CARE) expect(text).not.toMatch(/danger/i)
  })

  it('marks the breathing rule as met by any breathing cue', () => {
    const fields = { equipment: ['dumbbells'], cues: [cueSaid('breathing', 'Breathe out as you lift.')] }
    expect(firing('biceps curl', fields)).not.toContain('01')
  })
})
