// Which exercises need which caution: for each hazard some that do and some near misses that do not.
import { describe, expect, it } from 'vitest'
import { HAZARDS } from '../../../core/cautions/hazards.ts'
import { HAZARD_SLUGS } from '../../../core/cautions/hazard-slugs.ts'
import type { HazardSlug } from '../../../core/cautions/hazard-slugs.ts'
import { requireCautions } from '../../../core/cautions/require-cautions.ts'
import { cueSaid, segmentNamed, sheetWith } from './sheet-of-class.ts'

/** Exercise, what the class says of it, who it is for. */
interface Taught {
  name: string
  for?: string
  title?: string
  fields?: Record<string, unknown>
}

const cues = (...all: object[]) => ({ cues: all })
const dose = (prescription: Record<string, unknown>) => ({ prescription })
const weights = (...equipment: string[]) => ({ equipment })

/** A working rule for teachers, not a clinical standard; common practice where the table names no source. */
const TAUGHT: Readonly<Record<HazardSlug, { needs: readonly Taught[]; free: readonly Taught[] }>> = {
  'neck-pull': {
    needs: [
      { name: 'crunch' },
      { name: 'curl up', fields: cues(cueSaid('setup', 'Fingertips behind your ears, knees bent.')) },
      { name: 'tummy curl', fields: { position: 'supine', ...cues(cueSaid('setup', 'Hands behind your head.')) } },
    ],
    free: [
      { name: 'crunch', fields: cues(cueSaid('setup', 'Arms crossed over your chest.')) },
      { name: 'curl up', fields: cues(cueSaid('setup', 'Hands on your thighs.')) },
      { name: 'prisoner squat', fields: cues(cueSaid('setup', 'Hands behind your head.')) },
      { name: 'standing crunch' },
    ],
  },
  'inverted-head-down': {
    needs: [
      { name: 'downward dog' },
      { name: 'standing forward fold' },
      { name: 'skin the cat' },
      { name: 'thread the needle' },
      { name: 'seated forward fold', for: 'older-adults' },
      { name: 'some unheard-of shape', fields: { position: 'inverted' } },
    ],
    free: [{ name: 'seated forward fold' }, { name: "child's pose" }, { name: 'hip hinge' }],
  },
  'loaded-spinal-flexion': {
    needs: [
      { name: 'deadlift' },
      { name: 'kettlebell swing' },
      { name: 'hip hinge', fields: weights('kettlebell') },
      { name: 'bent over row', fields: weights('dumbbells') },
      { name: 'back squat' },
      { name: 'russian twist', fields: weights('plate') },
      { name: 'legs only rowing' },
    ],
    free: [
      { name: 'hip hinge' },
      { name: 'goblet squat', fields: weights('kettlebell') },
      { name: 'seated band row' },
      { name: 'russian twist' },
      { name: 'arms only rowing' },
      { name: 'easy row' },
      { name: 'hip thrust', fields: weights('barbell') },
    ],
  },
  'breath-hold': {
    needs: [
      { name: 'sit to stand', for: 'older-adults' },
      { name: 'ball squeeze', for: 'older-adults' },
      { name: 'box breathing' },
      { name: 'plank', fields: cues(cueSaid('breathing', 'Hold your breath and count to five.')) },
      { name: 'deadlift', fields: weights('barbell') },
    ],
    free: [
      { name: 'sit to stand' },
      { name: 'belly breathing' },
      { name: 'plank', fields: cues(cueSaid('breathing', "Don't hold your breath.")) },
      { name: 'kettlebell deadlift', fields: weights('kettlebell') },
      { name: 'seated march', for: 'older-adults' },
    ],
  },
  'fall-risk': {
    needs: [
      { name: 'heel raise', for: 'older-adults' },
      { name: 'single leg stand', for: 'rehab' },
      { name: 'half-kneeling hip flexor stretch', for: 'pregnancy' },
      { name: 'step up', for: 'rehab' },
      { name: 'hip circles', for: 'pregnancy', fields: { position: 'standing' } },
      { name: 'standing march', for: 'older-adults' },
    ],
    free: [
      { name: 'heel raise' },
      { name: 'seated heel raise', for: 'older-adults' },
      { name: 'seated march', for: 'older-adults' },
      { name: 'single leg bridge', for: 'rehab' },
      { name: 'arm circles', for: 'older-adults' },
    ],
  },
  'dizziness-rise': {
    needs: [{ name: 'sit to stand', for: 'older-adults' }, { name: 'standing forward fold' }, { name: 'roll down' }],
    free: [{ name: 'sit to stand' }, { name: 'downward dog' }, { name: 'seated twist', for: 'older-adults' }],
  },
  'bone-health': {
    needs: [
      { name: 'seated twist', for: 'older-adults' },
      { name: 'roll down', for: 'older-adults' },
      { name: 'curl up', for: 'older-adults' },
    ],
    free: [
      { name: 'seated twist' },
      { name: 'pelvic tilt', for: 'older-adults' },
      { name: 'neck turn', for: 'older-adults' },
    ],
  },
  'supine-pregnancy': {
    needs: [
      { name: 'glute bridge', for: 'pregnancy' },
      { name: 'made-up lift', for: 'pregnancy', fields: cues(cueSaid('setup', 'Lie on your back, knees bent.')) },
    ],
    free: [{ name: 'glute bridge' }, { name: 'clam', for: 'pregnancy' }],
  },
  coning: {
    needs: [
      { name: 'bird dog', for: 'pregnancy' },
      { name: 'dead bug', for: 'pregnancy' },
      { name: 'plank', for: 'pregnancy' },
    ],
    free: [{ name: 'bird dog' }, { name: 'cat cow', for: 'pregnancy' }],
  },
  overstretch: {
    needs: [
      { name: 'half-kneeling hip flexor stretch', for: 'pregnancy' },
      { name: 'deep squat', for: 'pregnancy' },
      { name: 'butterfly stretch', for: 'pregnancy' },
    ],
    free: [
      { name: 'butterfly stretch' },
      { name: "child's pose", for: 'pregnancy' },
      { name: 'cat cow', for: 'pregnancy' },
    ],
  },
  'pelvic-girdle-pain': {
    needs: [
      { name: 'deep squat', for: 'pregnancy' },
      { name: 'clam', for: 'pregnancy' },
      { name: 'sumo squat', for: 'pregnancy' },
    ],
    free: [{ name: 'clam' }, { name: 'squat', for: 'pregnancy' }, { name: 'bird dog', for: 'pregnancy' }],
  },
  'pain-stop': {
    needs: [
      { name: 'quad set', for: 'rehab' },
      { name: 'some unheard-of lift', for: 'rehab' },
      { name: 'heel slide', title: 'Knee rehab, week three' },
    ],
    free: [{ name: 'quad set' }],
  },
  'knee-tracking': {
    needs: [
      { name: 'goblet squat', fields: weights('kettlebell') },
      { name: 'reverse lunge' },
      { name: 'step down' },
      { name: 'mini squat', for: 'rehab' },
      { name: 'jump squat' },
      { name: 'lateral skater hop' },
    ],
    free: [
      { name: 'squat' },
      { name: 'low lunge' },
      { name: 'high knees' },
      { name: 'burpee' },
      { name: 'side step' },
      { name: 'deep squat', for: 'rehab' },
    ],
  },
  'knee-torsion': {
    needs: [{ name: 'pigeon' }, { name: 'ninety ninety' }],
    free: [{ name: 'clam' }, { name: 'seated figure four' }, { name: 'glute stretch' }],
  },
  'impact-landing': {
    needs: [
      { name: 'burpee' },
      { name: 'jumping jack' },
      { name: 'bounding' },
      { name: 'frog leaps', fields: cues(cueSaid('execution', 'Leap forward and land.')) },
    ],
    free: [
      { name: 'reverse lunge', fields: cues(cueSaid('harder', 'Add a hop if you like.')) },
      { name: 'mountain climber' },
      { name: 'a skip', title: 'Running drills' },
      { name: 'heel flicks', title: 'Running drills' },
    ],
  },
  'surface-check': {
    needs: [
      { name: 'bounding', title: 'Running drills' },
      { name: 'stride', title: 'Running drills in the park' },
      { name: 'grapevine', title: 'Running drills' },
    ],
    free: [
      { name: 'high knees' },
      { name: 'easy run', title: 'Running on the treadmill' },
      { name: 'leg swing', title: 'Running drills' },
    ],
  },
  'anchor-check': {
    needs: [
      { name: 'ring row' },
      { name: 'face pull', fields: weights('band') },
      {
        name: 'some pull',
        fields: { equipment: ['band'], ...cues(cueSaid('setup', 'Loop the band round the post.')) },
      },
    ],
    free: [
      { name: 'band pull apart' },
      { name: 'cable row' },
      { name: 'band row', fields: cues(cueSaid('setup', 'Stand on the band with both feet.')) },
    ],
  },
  'band-recoil': {
    needs: [
      { name: 'seated band row' },
      { name: 'band squat' },
      {
        name: 'some press',
        fields: { equipment: ['band'], ...cues(cueSaid('setup', 'Stand on the band with both feet.')) },
      },
      { name: 'face pull', fields: weights('band') },
    ],
    free: [{ name: 'band pull apart' }, { name: 'biceps curl', fields: weights('dumbbells') }],
  },
  'clear-space': {
    needs: [{ name: 'kettlebell swing' }],
    free: [
      { name: 'arm swings' },
      { name: 'leg swing' },
      { name: 'kettlebell halo' },
      { name: 'arms and body rowing' },
    ],
  },
  'overhead-shoulder': {
    needs: [
      { name: 'kettlebell halo', fields: weights('kettlebell') },
      { name: 'seated shoulder press', fields: weights('dumbbells') },
      { name: 'pull up' },
      { name: 'scap shrugs' },
    ],
    free: [
      { name: 'downward dog' },
      { name: 'wall slide' },
      { name: 'ring row' },
      { name: 'kettlebell clean' },
      { name: 'roll outs', fields: weights('barbell') },
    ],
  },
  'spotter-or-safeties': {
    needs: [{ name: 'back squat' }],
    free: [
      { name: 'goblet squat' },
      { name: 'deadlift' },
      { name: 'bench press' },
      { name: 'split squat', fields: weights('barbell') },
      { name: 'wall sit', fields: weights('barbell') },
    ],
  },
  'safe-dismount': {
    needs: [{ name: 'dead hang' }, { name: 'ring support' }, { name: 'l sit' }],
    free: [{ name: 'ring row' }, { name: 'bench dip' }],
  },
  'overexertion-stop': {
    needs: [
      { name: 'burpee' },
      { name: 'high knees', fields: dose({ scheme: 'interval', workSeconds: { min: 20, max: 20 } }) },
      { name: 'rowing sprint' },
      { name: 'kettlebell swing', fields: dose({ scheme: 'amrap', workSeconds: { min: 600, max: 600 } }) },
    ],
    free: [
      { name: 'high knees' },
      { name: 'press up', fields: dose({ scheme: 'circuit', workSeconds: { min: 20, max: 20 } }) },
      { name: 'paddle down', fields: dose({ scheme: 'interval' }) },
      { name: 'biceps curl', fields: dose({ scheme: 'amrap', workSeconds: { min: 60, max: 60 } }) },
    ],
  },
  'warm-first': {
    needs: [{ name: 'sprint' }, { name: 'stride' }, { name: 'hill repeats' }],
    free: [{ name: 'easy run' }, { name: 'rowing sprint' }, { name: 'fast feet' }],
  },
  'lumbar-extension': {
    needs: [{ name: 'cobra' }, { name: 'dead bug' }, { name: 'leg lowering' }, { name: 'hollow hold' }],
    free: [{ name: 'glute bridge' }, { name: 'heel slide' }, { name: 'bird dog' }],
  },
}

const CASES = Object.entries(TAUGHT).flatMap(([hazard, { needs, free }]) => [
  ...needs.map((taught) => ({ hazard, taught, needed: true })),
  ...free.map((taught) => ({ hazard, taught, needed: false })),
])

function hazardsOf({ name, for: audience, title, fields }: Taught): string[] {
  const segment = segmentNamed(name, fields)
  const sheet = sheetWith([segment], { audience: audience === undefined ? [] : [audience], title: title ?? '' })
  return requireCautions(segment, sheet).map((caution) => caution.hazard)
}

describe('required cautions', () => {
  it.each(CASES)(
    '$taught.name for $taught.for, $taught.title: $hazard needed is $needed',
    ({ hazard, taught, needed }) => {
      expect(hazardsOf(taught).includes(hazard)).toBe(needed)
    },
  )

  it('needs nothing of a seated march in a general class', () => {
    expect(hazardsOf({ name: 'seated march' })).toEqual([])
  })

  it('uses the weight that the class names and not the one that the catalogue expects', () => {
    expect(hazardsOf({ name: 'deadlift', fields: weights('barbell') })).toContain('breath-hold')
    expect(hazardsOf({ name: 'deadlift', fields: weights('kettlebell') })).not.toContain('breath-hold')
    expect(
      hazardsOf({ name: 'squat', fields: cues(cueSaid('setup', 'Hold the bell at your chest by the horns.')) }),
    ).toContain('knee-tracking')
  })

  it('reads no sign from a declined cue', () => {
    const said = { ...cueSaid('breathing', 'Hold your breath.'), state: 'declined' }
    expect(hazardsOf({ name: 'plank', fields: cues(said) })).not.toContain('breath-hold')
  })

  it('says why in words', () => {
    const segment = segmentNamed('back squat')
    const [first] = requireCautions(segment, sheetWith([segment]))
    expect(first).toEqual({
      hazard: 'loaded-spinal-flexion',
      ruleId: 'needs-loaded-spinal-flexion',
      level: 'must',
      concerns: 'everyone, and backs that complain',
      why: 'the bar loads the back in the squat',
    })
  })
})

describe('the hazard table', () => {
  it('has one row for each slug, with wording, concern, source and grade', () => {
    expect(HAZARDS.map((hazard) => hazard.slug)).toEqual([...HAZARD_SLUGS])
    for (const { slug, offer, concerns, source, grade, when } of HAZARDS) {
      expect(offer, slug).toMatch(/^[A-Z].*\.$/)
      expect(concerns, slug).not.toBe('')
      expect(source, slug).not.toBe('')
      expect(grade, slug).toMatch(/^[SGXP]/)
      expect(when.length, slug).toBeGreaterThan(0)
    }
  })

  it('gives no medical advice and frightens nobody', () => {
    for (const { offer } of HAZARDS) expect(offer).not.toMatch(/danger|diagnos|treat|cure|must not|never /i)
  })

  it('says of conflicting evidence that it is conflicting', () => {
    expect(HAZARDS.find((one) => one.slug === 'loaded-spinal-flexion')?.source).toMatch(/conflict/i)
  })
})
