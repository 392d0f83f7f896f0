// Every shape of dose that a prescription can take, for pictures and pages. Invented.
import { buildPrescription } from '../../shared/log-sheet.ts'
import type { Prescription } from '../../shared/log-sheet.ts'

const just = (value: number) => ({ min: value, max: value })
const dose = buildPrescription

export interface DoseShape {
  name: string
  dose: Prescription | null
  /** Blocks drawn, solid and optional, in all rows. */
  solid: number
  maybe: number
  /** What is written in blocks, in order of reading; one block is enough to name. */
  words: string[]
  /** The form of the marks along the foot, by how many there are in the first block: ticks, bars and dots can be counted. */
  marks?: number
}

const simple: DoseShape[] = [
  {
    name: 'sets and reps with rest',
    dose: dose({ sets: just(3), reps: just(12), restSeconds: just(60) }),
    solid: 3,
    maybe: 0,
    words: ['12', '60 s'],
    marks: 12,
  },
  {
    name: 'a range of reps',
    dose: dose({ sets: just(3), reps: { min: 12, max: 15 } }),
    solid: 3,
    maybe: 0,
    words: ['12–15'],
    marks: 15,
  },
  {
    name: 'sets that may be left out',
    dose: dose({ sets: { min: 3, max: 4 }, reps: just(8), restSeconds: just(90) }),
    solid: 3,
    maybe: 1,
    words: ['8', '90 s'],
    marks: 8,
  },
  {
    name: 'at least two sets',
    dose: dose({ sets: { min: 2, max: null }, reps: just(8) }),
    solid: 2,
    maybe: 1,
    words: ['8', '+'],
    marks: 8,
  },
  {
    name: 'up to three sets of up to eight',
    dose: dose({ sets: { min: null, max: 3 }, reps: { min: null, max: 8 } }),
    solid: 1,
    maybe: 2,
    words: ['up to 8'],
    marks: 8,
  },
  { name: 'reps only', dose: dose({ reps: just(10) }), solid: 1, maybe: 0, words: ['10'], marks: 10 },
  { name: 'sets only', dose: dose({ sets: just(3) }), solid: 3, maybe: 0, words: ['set'] },
  {
    name: 'more sets than can be written in',
    dose: dose({ sets: just(30), reps: just(10) }),
    solid: 24,
    maybe: 0,
    words: ['30×10'],
  },
  {
    name: 'about and unsure',
    dose: dose({ reps: just(20), approx: true, unsure: true }),
    solid: 1,
    maybe: 0,
    words: ['~20?'],
    marks: 20,
  },
  { name: 'as many as possible', dose: dose({ sets: just(2), reps: 'max' }), solid: 2, maybe: 0, words: ['max'] },
]

const timed: DoseShape[] = [
  {
    name: 'a hold',
    dose: dose({ sets: just(2), holdSeconds: just(30), restSeconds: just(15) }),
    solid: 2,
    maybe: 0,
    words: ['30 s', '15 s'],
    marks: 1,
  },
  {
    name: 'a hold in each rep',
    dose: dose({ reps: just(10), holdSeconds: just(3), holdPer: 'rep' }),
    solid: 1,
    maybe: 0,
    words: ['10'],
    marks: 10,
  },
  { name: 'moving for minutes', dose: dose({ workSeconds: just(120) }), solid: 1, maybe: 0, words: ['2 min'] },
  {
    name: 'breaths',
    dose: dose({ reps: just(5), repUnit: 'breath' }),
    solid: 1,
    maybe: 0,
    words: ['5 breaths'],
    marks: 5,
  },
  {
    name: 'strokes',
    dose: dose({ reps: just(20), repUnit: 'stroke' }),
    solid: 1,
    maybe: 0,
    words: ['20 strokes'],
    marks: 20,
  },
  {
    name: 'a distance',
    dose: dose({ sets: just(4), distanceM: just(200), restSeconds: just(90) }),
    solid: 4,
    maybe: 0,
    words: ['200 m'],
  },
  { name: 'as long as suits', dose: dose({ open: 'as long as it feels good' }), solid: 1, maybe: 0, words: ['open'] },
  {
    name: 'a tempo',
    dose: dose({ sets: just(2), reps: just(8), tempo: '3-1-x-X' }),
    solid: 2,
    maybe: 0,
    words: ['8', '3', '1', '·', 'X'],
    marks: 8,
  },
]

const schemes: DoseShape[] = [
  {
    name: 'each side',
    dose: dose({ sets: just(2), reps: just(10), perSide: true }),
    solid: 4,
    maybe: 0,
    words: ['L', 'R', '10'],
  },
  {
    name: 'rest between sides',
    dose: dose({ sets: just(2), reps: just(8), perSide: true, restSeconds: just(20), restBetween: 'sides' }),
    solid: 4,
    maybe: 0,
    words: ['L', 'R', '8'],
  },
  {
    name: 'superset',
    dose: dose({ scheme: 'superset', sets: just(3), reps: just(10), groupWith: ['seg-2'] }),
    solid: 3,
    maybe: 0,
    words: ['10'],
    marks: 10,
  },
  {
    name: 'circuit',
    dose: dose({
      scheme: 'circuit',
      sets: just(3),
      reps: just(12),
      groupWith: ['a', 'b'],
      restSeconds: just(60),
      restBetween: 'rounds',
    }),
    solid: 3,
    maybe: 0,
    words: ['12'],
    marks: 12,
  },
  {
    name: 'on the minute',
    dose: dose({ scheme: 'emom', sets: just(4), reps: just(5), intervalSeconds: just(60) }),
    solid: 4,
    maybe: 0,
    words: ['5'],
    marks: 5,
  },
  {
    name: 'as many rounds as possible',
    dose: dose({ scheme: 'amrap', workSeconds: just(480) }),
    solid: 1,
    maybe: 0,
    words: ['8 min'],
  },
  {
    name: 'ladder',
    dose: dose({ scheme: 'ladder', repScheme: [10, 8, 6] }),
    solid: 3,
    maybe: 0,
    words: ['10', '8', '6'],
    marks: 10,
  },
  {
    name: 'intervals',
    dose: dose({ scheme: 'interval', sets: just(5), workSeconds: just(40), restSeconds: just(20) }),
    solid: 5,
    maybe: 0,
    words: ['40 s'],
  },
  {
    name: 'then pulses',
    dose: dose({ sets: just(2), reps: just(10), then: [dose({ reps: just(6) })] }),
    solid: 2,
    maybe: 0,
    words: ['10', '6'],
    marks: 16,
  },
  {
    name: 'by level',
    dose: dose({
      byLevel: [
        { level: 'beginner', dose: dose({ reps: just(8) }) },
        { level: 'strong', dose: dose({ sets: just(3), reps: just(15) }) },
      ],
    }),
    solid: 2,
    maybe: 0,
    words: ['beginner', 'strong', '8', '3×15'],
    marks: 8,
  },
]

const nothing: DoseShape[] = [
  { name: 'nothing said', dose: dose({}), solid: 0, maybe: 0, words: ['no amount said'] },
  { name: 'no dose', dose: null, solid: 0, maybe: 0, words: ['no dose yet'] },
]

export const DOSE_SHAPES: readonly DoseShape[] = [...nothing, ...simple, ...timed, ...schemes]
