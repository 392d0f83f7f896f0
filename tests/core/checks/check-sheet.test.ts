// Each rule of the check, broken first; the last row of each table is right and finds nothing.
import { describe, expect, it } from 'vitest'
import { CHECK_RULES, checkSheet } from '../../../core/checks/check-sheet.ts'
import type { CheckOptions } from '../../../core/checks/rule.ts'
import { cueSaid } from '../cautions/sheet-of-class.ts'
import { classOf, foundIn, goodSegment, GOOD_CUES, shortOf, withoutCue } from './good-class.ts'

interface Case {
  what: string
  segment?: Record<string, unknown>
  sheet?: Record<string, unknown>
  options?: CheckOptions
  finds: readonly string[]
}

const exactly = (number: number) => ({ min: number, max: number })
const dose = (fields: Record<string, unknown>) => ({ prescription: { sets: exactly(2), ...fields } })
const counted = (upTo: number) => ({ counted: [{ atMs: 9000, text: 'one, two, three', upTo }] })
const plus = (...cues: object[]) => ({ cues: [...Object.values(GOOD_CUES), ...cues] })
const saying = (...texts: string[]) => plus(...texts.map((text, index) => cueSaid('execution', text, 20 + index * 4)))
const bothSides = dose({ reps: exactly(10), perSide: true })

const CASES: Readonly<Record<string, readonly Case[]>> = {
  'dose-missing': [
    { what: 'no dose', segment: { prescription: null }, finds: ['stop dose-missing'] },
    {
      what: 'a declined dose',
      segment: dose({ reps: exactly(10), state: 'declined' }),
      finds: ['stop dose-missing'],
    },
    { what: 'sets and no work', segment: dose({}), finds: ['stop dose-missing'] },
    { what: 'a range of nothing', segment: dose({ reps: { min: null, max: null } }), finds: ['stop dose-missing'] },
    { what: 'rest alone', segment: dose({ restSeconds: exactly(60) }), finds: ['stop dose-missing'] },
    { what: 'open, but with no words', segment: dose({ open: ' ' }), finds: ['stop dose-missing'] },
    { what: 'open on purpose', segment: dose({ open: 'as long as it feels good' }), finds: [] },
    { what: 'as many as possible', segment: dose({ reps: 'max' }), finds: [] },
    { what: 'a distance', segment: dose({ distanceM: exactly(20) }), finds: [] },
    { what: 'reps that change', segment: dose({ repScheme: [10, 8, 6] }), finds: [] },
    {
      what: 'work only by level',
      segment: dose({ byLevel: [{ level: 'new', dose: { reps: exactly(5) } }] }),
      finds: [],
    },
    { what: 'reps', finds: [] },
  ],
  // The angles and the margin are common practice, no source.
  'counted-differs': [
    { what: 'counted past the dose', segment: counted(15), finds: ['note counted-differs'] },
    { what: 'counted short of it, more than half', segment: counted(8), finds: ['note counted-differs'] },
    { what: 'a few counted of a long set', segment: counted(4), finds: [] },
    { what: 'counted as said', segment: counted(12), finds: [] },
  ],
  'limit-passed': [
    {
      what: 'deeper than the limit said before',
      segment: plus(
        cueSaid('range', 'No lower than forty-five degrees.', 20),
        cueSaid('range', 'Come down to ninety degrees.', 30),
      ),
      finds: ['warn limit-passed'],
    },
    {
      what: 'within the limit',
      segment: plus(
        cueSaid('range', 'No lower than ninety degrees.', 20),
        cueSaid('range', 'Forty five degrees will do.', 30),
      ),
      finds: [],
    },
  ],
  // Common practice, no source; more of it in trade-values.test.ts.
  'peak-hold-long': [
    {
      what: 'eight seconds at the top',
      segment: saying('Hold the top for eight seconds.'),
      finds: ['note peak-hold-long'],
    },
    { what: 'two seconds at the top', segment: saying('Hold the top for two seconds.'), finds: [] },
  ],
  'dose-incomplete': [
    {
      what: 'read with doubt',
      segment: dose({ reps: exactly(10), unsure: true, why: ['"by" may mean sets or reps.'] }),
      finds: ['warn dose-incomplete'],
    },
    {
      what: 'a hold without a count',
      segment: dose({ holdSeconds: exactly(5), holdPer: 'rep' }),
      finds: ['warn dose-incomplete'],
    },
    {
      what: 'one side at a time and no word of sides',
      segment: { exercise: { name: 'seated knee extension' } },
      finds: ['warn dose-incomplete'],
    },
    {
      what: 'no number of sets',
      segment: { prescription: { reps: exactly(10) } },
      finds: ['note dose-incomplete'],
    },
    {
      what: 'alternating, in total',
      segment: {
        exercise: { name: 'seated knee extension' },
        ...dose({ reps: exactly(20), said: [{ atMs: 3000, text: 'twenty alternating' }] }),
      },
      finds: [],
    },
    { what: 'complete', finds: [] },
  ],
  'dose-unlikely': [
    {
      what: 'fifty sets',
      segment: { prescription: { sets: exactly(50), reps: exactly(10) } },
      finds: ['warn dose-unlikely'],
    },
    { what: 'a hold of an hour', segment: dose({ holdSeconds: exactly(3600) }), finds: ['warn dose-unlikely'] },
    {
      what: 'too much in what follows',
      segment: dose({ reps: exactly(10), then: [{ reps: exactly(500) }] }),
      finds: ['warn dose-unlikely'],
    },
    { what: 'usual numbers', finds: [] },
  ],
  'caution-missing': [
    { what: 'no word of support', segment: { cues: withoutCue('support') }, finds: ['stop caution-missing fall-risk'] },
    {
      what: 'the cue was declined',
      segment: { cues: [...withoutCue('support'), { ...GOOD_CUES.support, state: 'declined' }] },
      finds: ['stop caution-missing fall-risk'],
    },
    {
      what: 'only an easier option',
      segment: { cues: [...withoutCue('support'), cueSaid('easier', 'Do it sitting down.', 20)] },
      finds: ['stop caution-missing fall-risk'],
    },
    {
      what: 'said for another hazard',
      segment: { cues: withoutCue('support'), cautions: [{ hazard: 'pain-stop', text: 'If it hurts, stop.' }] },
      finds: ['stop caution-missing fall-risk'],
    },
    {
      what: 'written with no words',
      segment: { cues: withoutCue('support'), cautions: [{ hazard: 'fall-risk', text: ' ' }] },
      finds: ['stop caution-missing fall-risk'],
    },
    {
      what: 'a held breath asked for, and only breathing out spoken of',
      segment: plus(
        cueSaid('breathing', 'Big breath in, hold it, and lift.', 20),
        cueSaid('breathing', 'Breathe out as you lower.', 25),
      ),
      finds: ['stop caution-missing breath-hold'],
    },
    {
      what: 'a held breath asked for, with its caution',
      segment: plus(
        cueSaid('breathing', 'Big breath in, hold it, and lift.', 20),
        cueSaid('caution', "If your blood pressure is high, don't hold your breath.", 25),
      ),
      finds: [],
    },
    { what: 'the exercise is left out', segment: { cues: [], use: 'leave-out', prescription: null }, finds: [] },
    { what: 'the exercise is kept for later', segment: { cues: [], use: 'keep', prescription: null }, finds: [] },
    { what: 'the segment was declined', segment: { cues: [], state: 'declined', prescription: null }, finds: [] },
    {
      what: 'written on the lesson',
      segment: { cues: withoutCue('support'), cautions: [{ hazard: 'fall-risk', text: 'Keep hold of a chair.' }] },
      finds: [],
    },
    { what: 'said in the clip', finds: [] },
  ],
  'caution-outside-clip': [
    {
      what: 'said for the whole class only',
      segment: { cues: withoutCue('support') },
      sheet: {
        classCautions: [
          { hazard: 'fall-risk', scope: 'class', source: 'spoken', text: 'Keep hold of the chair.', atMs: 300_000 },
        ],
      },
      finds: ['stop caution-outside-clip fall-risk'],
    },
    {
      what: 'cut out',
      segment: { cutOuts: [{ startMs: 5000, endMs: 9000 }] },
      finds: ['stop caution-outside-clip fall-risk'],
    },
    {
      what: 'its last words are cut out',
      segment: { cutOuts: [{ startMs: 7000, endMs: 9000 }] },
      finds: ['stop caution-outside-clip fall-risk'],
    },
    {
      what: 'said in a span that is not in the clip',
      segment: {
        spans: [
          { startMs: 0, endMs: 60_000 },
          { startMs: 90_000, endMs: 120_000 },
        ],
        cues: [...withoutCue('support'), cueSaid('caution', 'Keep hold of the chair.', 100)],
      },
      finds: ['stop caution-outside-clip fall-risk'],
    },
    {
      what: 'said nobody knows when',
      segment: {
        cues: withoutCue('support'),
        cautions: [{ hazard: 'fall-risk', source: 'spoken', text: 'Hold on.', atMs: null }],
      },
      finds: ['stop caution-outside-clip fall-risk'],
    },
    {
      what: 'attached to the lesson',
      segment: {
        cues: withoutCue('support'),
        cautions: [{ hazard: 'fall-risk', scope: 'class', source: 'written', text: 'Keep hold.', atMs: 300_000 }],
      },
      sheet: {
        classCautions: [{ hazard: 'fall-risk', scope: 'class', source: 'spoken', text: 'Keep hold.', atMs: 300_000 }],
      },
      finds: [],
    },
  ],
  'setup-missing': [
    { what: 'no set-up cue', segment: { cues: withoutCue('setup') }, finds: ['warn setup-missing'] },
    {
      what: 'told before the clip begins',
      segment: { spans: [{ startMs: 4000, endMs: 60_000 }] },
      finds: ['warn setup-missing'],
    },
    { what: 'told in the clip', finds: [] },
  ],
  'easier-missing': [
    { what: 'no easier option', segment: { cues: withoutCue('easier') }, finds: ['warn easier-missing'] },
    {
      what: 'told after the clip ends',
      segment: { spans: [{ startMs: 0, endMs: 13_000 }] },
      finds: ['warn easier-missing'],
    },
    {
      what: 'an easier exercise is linked',
      segment: { cues: withoutCue('easier'), easier: [{ text: 'seated heel raise' }] },
      finds: [],
    },
  ],
  'spans-broken': [
    {
      what: 'not placed',
      segment: { spans: [], cues: Object.values(GOOD_CUES) },
      finds: ['stop spans-broken', 'stop caution-outside-clip fall-risk', 'warn setup-missing', 'warn easier-missing'],
    },
    {
      what: 'a second span without length',
      segment: {
        spans: [
          { startMs: 0, endMs: 60_000 },
          { startMs: 70_000, endMs: 70_000 },
        ],
      },
      finds: ['stop spans-broken'],
    },
    { what: 'past the end', segment: { spans: [{ startMs: 0, endMs: 700_000 }] }, finds: ['stop spans-broken'] },
    {
      what: 'past the end of a shorter recording',
      options: { durationMs: 30_000 },
      finds: ['stop spans-broken'],
    },
    {
      what: 'cut-outs that overlap',
      segment: {
        cutOuts: [
          { startMs: 30_000, endMs: 40_000 },
          { startMs: 35_000, endMs: 45_000 },
        ],
      },
      finds: ['stop spans-broken'],
    },
    {
      what: 'broken, but only kept for later',
      segment: { use: 'keep', spans: [{ startMs: 0, endMs: 700_000 }] },
      finds: ['warn spans-broken'],
    },
    { what: 'in the recording', finds: [] },
  ],
  'one-side-shown': [
    {
      what: 'a dose for each side, the left shown',
      segment: { ...dose({ reps: exactly(10), perSide: true }), sideShown: 'left' },
      finds: ['warn one-side-shown'],
    },
    {
      what: 'a dose for each side, the right spoken of',
      segment: {
        ...dose({ reps: exactly(10), perSide: true }),
        ...plus(cueSaid('execution', 'Lift your right heel.', 20)),
      },
      finds: ['note one-side-shown'],
    },
    {
      what: 'the same side called for both turns',
      segment: {
        ...bothSides,
        ...plus(cueSaid('execution', 'Right side first.', 20), cueSaid('execution', 'Right leg again.', 45)),
      },
      finds: ['warn one-side-shown'],
    },
    {
      what: 'the other side is called outside the clip',
      segment: {
        ...bothSides,
        ...plus(cueSaid('execution', 'Right leg first.', 20), cueSaid('execution', 'Now the left.', 90)),
      },
      finds: ['note one-side-shown'],
    },
    {
      what: 'called twice in one breath',
      segment: {
        ...bothSides,
        ...plus(cueSaid('execution', 'Right side first.', 20), cueSaid('execution', 'Okay, right side.', 24)),
      },
      finds: ['note one-side-shown'],
    },
    {
      what: 'a known exercise of both sides at once, and a limb named in passing',
      segment: {
        exercise: { name: 'glute bridge' },
        ...dose({ reps: exactly(10), perSide: true, state: 'proposed' }),
        ...plus(cueSaid('execution', 'Your right knee stays still.', 20), cueSaid('breathing', 'Breathe out.', 24)),
      },
      finds: [],
    },
    {
      what: 'the other side is called',
      segment: {
        ...dose({ reps: exactly(10), perSide: true }),
        ...plus(cueSaid('execution', 'Lift your right heel.', 20), cueSaid('execution', 'And swap.', 30)),
      },
      finds: [],
    },
    {
      what: '"right" is no side here',
      segment: {
        ...dose({ reps: exactly(10), perSide: true }),
        ...plus(cueSaid('execution', 'Right, lift the heel.', 20)),
      },
      finds: [],
    },
    {
      what: 'both shown',
      segment: { ...dose({ reps: exactly(10), perSide: true }), sideShown: 'both' },
      finds: [],
    },
    { what: 'not per side', segment: { sideShown: 'left' }, finds: [] },
  ],
  'side-differs': [
    {
      what: 'the left shown, the right said',
      segment: { sideShown: 'left', ...saying('Lift your right heel.') },
      finds: ['warn side-differs'],
    },
    {
      what: 'the right shown, the left called',
      segment: { sideShown: 'right', ...saying('Now the left side.', 'Left heel up.') },
      finds: ['warn side-differs'],
    },
    {
      what: 'the right shown, the order announced is left first',
      segment: { sideShown: 'right', ...saying('Left leg first.') },
      finds: ['warn side-differs'],
    },
    {
      what: 'the left shown, the dose told for the right',
      segment: {
        ...dose({ reps: exactly(10), said: [{ atMs: 20_000, text: 'ten on the right' }] }),
        sideShown: 'left',
        cues: Object.values(GOOD_CUES),
      },
      finds: ['warn side-differs'],
    },
    {
      what: 'named left, said right',
      segment: { exercise: { name: 'heel raise, left' }, ...saying('Lift your right heel.') },
      finds: ['warn side-differs'],
    },
    {
      what: 'named left, marked right',
      segment: { exercise: { name: 'heel raise, left' }, sideShown: 'right' },
      finds: ['warn side-differs'],
    },
    {
      what: 'the same side called after the change',
      segment: saying('Right side first.', 'And change legs.', 'Right leg again.'),
      finds: ['warn side-differs'],
    },
    {
      what: 'two orders in one breath',
      segment: saying('Right side first.', 'Start on the left.'),
      finds: ['warn side-differs'],
    },
    {
      what: 'taught as in a mirror, and marked as not mirrored',
      segment: { mirrored: false, ...saying("I'll mirror you.") },
      finds: ['warn side-differs'],
    },
    {
      what: 'taught as in a mirror, and nothing marked',
      segment: saying('My left, your right.'),
      finds: ['note side-differs'],
    },
    ...[
      ['mirrored, so the sides differ on purpose', { sideShown: 'left', mirrored: true }, ['Lift your right heel.']],
      ['the same side shown and said', { sideShown: 'right' }, ['Lift your right heel.']],
      ['both said', { sideShown: 'left' }, ['Lift your right heel.', 'Now the left.']],
      ['the other side is brought in', { sideShown: 'left' }, ['Lift your right heel.', 'Other side.']],
      ['the other side only carries', { sideShown: 'left' }, ['Stand on your right leg.']],
      ['the other side only holds on', { sideShown: 'left' }, ['Right hand on the chair.']],
      ['the other side is where to look', { sideShown: 'left' }, ['Look to the right.']],
      ['the other side is done', { sideShown: 'left' }, ["That's the right side done."]],
      ['"right" is an answer', { sideShown: 'left' }, ["Right, that's right, all the way up."]],
      ['the order announced is kept', {}, ['Right side first.', 'And change legs.', 'Left leg now.']],
      ['a second set begins again', {}, ['Right side first.', 'Now the left.', 'Change legs.', 'Right side again.']],
      [
        'both are said to be shown',
        { sideShown: 'both', setByPerson: ['sideShown'] },
        ['Right side.', 'Swap.', 'Right leg again.'],
      ],
      ['a mirror on the wall', {}, ['Watch your knee in the mirror.']],
      ['mirrored, as marked', { mirrored: true }, ["I'll mirror you."]],
    ].map(([what, fields, texts]) => ({
      what: what as string,
      segment: { ...(fields as object), ...saying(...(texts as string[])) },
      finds: [],
    })),
    {
      what: 'said outside the clip',
      segment: { sideShown: 'left', ...plus(cueSaid('execution', 'Lift your right heel.', 90)) },
      finds: [],
    },
  ],
  'means-nothing-alone': [
    ...[
      'Turn your hand like this.',
      'Same as before with the arms.',
      'And the other one.',
      'You know this one.',
      'Just as I showed you.',
      'Put the weight over there.',
      'Exactly like last week.',
    ].map((text) => ({
      what: text,
      segment: plus(cueSaid('execution', text, 20)),
      finds: ['warn means-nothing-alone'],
    })),
    ...[
      'If it feels like this is too much, sit down.',
      'Like a cat on a fence.',
      'This one is for the calves.',
      'Stand there as tall as a tree.',
      'The same leg again, ten more.',
    ].map((text) => ({ what: text, segment: plus(cueSaid('execution', text, 20)), finds: [] })),
    { what: 'said outside the clip', segment: plus(cueSaid('execution', 'Turn it like this.', 80)), finds: [] },
  ],
  // below: it takes two exercises
  'segments-overlap': [],
  'captions-missing': [
    { what: 'none in the class', options: { captions: false }, finds: ['stop captions-missing'] },
    { what: 'none in this lesson', options: { captions: { heel: false } }, finds: ['stop captions-missing'] },
    { what: 'not known of this lesson', options: { captions: { other: false } }, finds: [] },
    { what: 'not known', options: { captions: null }, finds: [] },
    { what: 'there', options: { captions: { heel: true } }, finds: [] },
  ],
  'music-unknown': [
    { what: 'unknown', sheet: { music: 'unknown' }, finds: ['stop music-unknown'] },
    { what: 'nobody has said', sheet: { music: null }, finds: ['note music-unknown'] },
    { what: 'licensed', sheet: { music: 'licensed' }, finds: [] },
  ],
  'person-without-consent': [
    ...['withdrawn', 'none', 'unknown'].map((consent) => ({
      what: consent,
      sheet: { people: [{ name: 'Pat', consent }] },
      finds: ['stop person-without-consent'],
    })),
    {
      what: 'under 18 and not given',
      sheet: { people: [{ name: 'Kim', under18: true }] },
      finds: ['stop person-without-consent'],
    },
    {
      what: 'run out',
      sheet: { people: [{ name: 'Pat', consent: 'given', untilUtc: 1000 }] },
      options: { nowUtc: 2000 },
      finds: ['stop person-without-consent'],
    },
    { what: 'nobody has said', sheet: { people: null }, finds: ['note person-without-consent'] },
    {
      what: 'run out, but the day is not known',
      sheet: { people: [{ name: 'Pat', consent: 'given', untilUtc: 1000 }] },
      finds: [],
    },
    { what: 'given', sheet: { people: [{ name: 'Pat', consent: 'given', under18: true }] }, finds: [] },
  ],
  'waiver-refused': [
    {
      what: 'spans waived',
      sheet: { waivers: [waiver('spans-broken')] },
      finds: ['note waiver-refused'],
    },
    {
      what: 'all cautions waived at once',
      segment: { cues: withoutCue('support') },
      sheet: { waivers: [waiver('caution-missing')] },
      finds: ['stop caution-missing fall-risk', 'note waiver-refused'],
    },
    {
      what: 'one caution waived',
      segment: { cues: withoutCue('support') },
      sheet: { waivers: [waiver('caution-missing', 'fall-risk')] },
      finds: [],
    },
  ],
}

function waiver(ruleId: string, hazard: string | null = null, segmentId = 'heel'): object {
  return { segmentId, ruleId, hazard, reason: 'agreed with the physiotherapist', by: 'Ada', atUtc: 0 }
}

describe.each(Object.entries(CASES).filter(([, cases]) => cases.length > 0))('%s', (_rule, cases) => {
  it.each(cases)('$what', ({ segment, sheet, options, finds }) => {
    expect(foundIn(segment ?? {}, sheet, options)).toEqual(finds)
  })
})

describe('segments-overlap', () => {
  const other = (startMs: number, endMs: number, fields: Record<string, unknown> = {}) =>
    goodSegment({ id: 'other', exercise: { name: 'toe raise' }, spans: [{ startMs, endMs, inClip: true }], ...fields })
  const overlaps = (second: Record<string, unknown>) =>
    checkSheet(classOf([goodSegment(), second])).findings.filter((one) => one.ruleId === 'segments-overlap')

  it('warns of a shared stretch and names both exercises', () => {
    expect(overlaps(other(59_000, 90_000))).toMatchObject([
      {
        severity: 'warn',
        segmentId: 'other',
        startMs: 59_000,
        endMs: 60_000,
        message: 'Toe raise: 0:59 to 1:00 is also part of heel raise. Move an edge.',
      },
    ])
  })

  it('says nothing of spans that touch, of what is left out and of what is declined', () => {
    expect(overlaps(other(60_000, 90_000))).toEqual([])
    expect(overlaps(other(0, 90_000, { use: 'leave-out' }))).toEqual([])
    expect(overlaps(other(0, 90_000, { state: 'declined' }))).toEqual([])
  })
})

describe('waivers', () => {
  it.each(['dose-missing', 'setup-missing', 'easier-missing'])('take out a finding of %s', (ruleId) => {
    const segment = { prescription: null, cues: [GOOD_CUES.support] }
    const before = foundIn(segment)
    const after = foundIn(segment, { waivers: [waiver(ruleId)] })
    expect(before.filter((one) => one.endsWith(ruleId))).toHaveLength(1)
    expect(after).toEqual(before.filter((one) => !one.endsWith(ruleId)))
  })

  it('hold for one exercise only', () => {
    expect(foundIn({ prescription: null }, { waivers: [waiver('dose-missing', null, 'another')] })).toEqual([
      'stop dose-missing',
    ])
  })

  it('turn the row of the caution to waived, under either rule or the need itself', () => {
    for (const one of [
      waiver('caution-missing', 'fall-risk'),
      waiver('caution-outside-clip', 'fall-risk'),
      waiver('needs-fall-risk'),
    ]) {
      const sheet = classOf([goodSegment({ cues: withoutCue('support') })], { waivers: [one] })
      expect(checkSheet(sheet).cautions.find((row) => row.hazard === 'fall-risk')).toMatchObject({
        state: 'waived',
        inClip: false,
      })
    }
  })

  it('of another hazard leave the caution missing', () => {
    expect(foundIn({ cues: withoutCue('support') }, { waivers: [waiver('caution-missing', 'breath-hold')] })).toEqual([
      'stop caution-missing fall-risk',
    ])
  })

  it('cannot give away a consent', () => {
    const sheet = {
      people: [{ name: 'Pat', consent: 'withdrawn' }],
      waivers: [waiver('person-without-consent')],
    }
    expect(foundIn({}, sheet)).toEqual(['stop person-without-consent', 'note waiver-refused'])
  })
})

describe('coverage', () => {
  const rowOf = (segment: Record<string, unknown>, sheet: Record<string, unknown> = {}) =>
    checkSheet(classOf([goodSegment(segment)], sheet)).cautions.find((row) => row.hazard === 'fall-risk')

  it.each([
    ['said in the clip', {}, 'spoken', true],
    ['missing', { cues: withoutCue('support') }, 'missing', false],
    [
      'written only',
      { cues: withoutCue('support'), cautions: [{ hazard: 'fall-risk', text: 'Hold on.' }] },
      'written',
      true,
    ],
    ['said outside', { cutOuts: [{ startMs: 5000, endMs: 9000 }] }, 'spoken', false],
    [
      'said outside and written',
      { cutOuts: [{ startMs: 5000, endMs: 9000 }], cautions: [{ hazard: 'fall-risk', text: 'Hold on.' }] },
      'spoken',
      true,
    ],
  ])('%s', (_what, segment, state, inClip) => {
    expect(rowOf(segment)).toMatchObject({ state, inClip, level: 'must', ruleId: 'needs-fall-risk' })
  })

  it('reads two clauses of one sentence together', () => {
    const cues = [
      ...withoutCue('support'),
      { id: 'a', kind: 'execution', startMs: 20_000, endMs: 21_000, text: 'pop one hand' },
      { id: 'b', kind: 'execution', startMs: 21_000, endMs: 22_000, text: 'on the back of the chair' },
    ]
    expect(rowOf({ cues })).toMatchObject({ state: 'spoken', inClip: true })
  })

  it('shows take-care rows always and never as missing', () => {
    const { cautions, findings } = checkSheet(classOf([goodSegment()]))
    const info = cautions.filter((row) => row.level === 'info')
    expect(info.map((row) => row.hazard)).toContain('k32')
    expect(new Set(info.map((row) => `${row.state} ${row.inClip}`))).toEqual(new Set(['written true']))
    expect(findings).toEqual([])
  })
})

describe('the report', () => {
  it('is empty for an empty class', () => {
    expect(checkSheet(classOf([]))).toEqual({ findings: [], cautions: [] })
  })

  it('puts the class first, then the segments as on the sheet, stops before warnings', () => {
    const bare = { prescription: null, cues: [] }
    const sheet = classOf(
      [
        goodSegment({ id: 'b', ...bare, spans: [{ startMs: 0, endMs: 60_000 }] }),
        goodSegment({ id: 'a', ...bare, spans: [{ startMs: 60_000, endMs: 90_000 }] }),
      ],
      { music: 'unknown' },
    )
    const order = checkSheet(sheet).findings.map((one) => `${one.segmentId ?? 'class'}: ${shortOf(one)}`)
    const own = ['stop dose-missing', 'stop caution-missing fall-risk', 'warn setup-missing', 'warn easier-missing']
    expect(order).toEqual([
      'class: stop music-unknown',
      ...own.map((one) => `b: ${one}`),
      ...own.map((one) => `a: ${one}`),
    ])
  })

  it('does not change the sheet and comes out the same twice', () => {
    const sheet = classOf([goodSegment({ cues: [] })])
    const before = JSON.stringify(sheet)
    expect(checkSheet(sheet)).toEqual(checkSheet(sheet))
    expect(JSON.stringify(sheet)).toBe(before)
  })

  it('has a table of cases for every rule, and each rule says why and who says so', () => {
    expect(CHECK_RULES.map((rule) => rule.id).toSorted()).toEqual(Object.keys(CASES).toSorted())
    for (const { why, source } of CHECK_RULES) {
      expect(why).toMatch(/\.$/)
      expect(source).not.toBe('')
    }
  })

  it('says what happened and what to do', () => {
    const segment = goodSegment({ cutOuts: [{ startMs: 5000, endMs: 9000 }] })
    const [finding] = checkSheet(classOf([segment])).findings
    expect(finding?.message).toBe(
      'Heel raise: "Keep hold of the chair all the way through." is said at 0:06, outside this clip. Attach it to the lesson.',
    )
    expect(finding?.why).toMatch(/^Needed because the class .* Concerns older adults/)
    expect(finding?.source).toMatch(/WHO/)
  })
})
