// Which cautions an exercise requires whose name no catalogue holds: told by its kit, its people and how it is described.
// A working rule for teachers, not a clinical standard; common practice where the table names no source.
// First run of the list below: 36 of its 68 cautions; the words were widened by it.
import { describe, expect, it } from 'vitest'
import type { HazardSlug } from '../../../core/cautions/hazard-slugs.ts'
import { requireCautions } from '../../../core/cautions/require-cautions.ts'
import { tagCues } from '../../../core/draft/tag-cues.ts'
import type { Segment } from '../../../shared/log-sheet.ts'
import { cueSaid, segmentNamed, sheetWith } from './sheet-of-class.ts'

interface Described {
  for?: string
  kit?: readonly string[]
  says: string
  /** The tagger leaves out what tells it, so all that is said is one cue. */
  whole?: true
  needs: readonly HazardSlug[]
}

const DESCRIBED: readonly Described[] = [
  {
    for: 'older-adults',
    kit: ['chair'],
    says: 'Bottom to the front of the seat. Lean forward, push through your heels and stand tall. Then lower yourself back down slowly.',
    needs: ['fall-risk', 'breath-hold', 'dizziness-rise'],
  },
  {
    for: 'older-adults',
    kit: ['chair'],
    says: 'Cross your arms, feet back. Rise up out of the chair, then sit down with control.',
    whole: true,
    needs: ['fall-risk', 'breath-hold', 'dizziness-rise'],
  },
  {
    for: 'older-adults',
    kit: ['chair'],
    says: 'Stand behind the chair. Lift both heels up high, then lower them.',
    needs: ['fall-risk'],
  },
  {
    for: 'older-adults',
    kit: ['chair'],
    says: 'Hold the back of the chair. Pick up your right foot and balance there.',
    needs: ['fall-risk'],
  },
  {
    for: 'older-adults',
    kit: ['chair'],
    says: 'Place one foot directly in front of the other like a tightrope. Stay there.',
    needs: ['fall-risk'],
  },
  {
    for: 'older-adults',
    kit: ['chair'],
    says: 'Sit tall. Rotate your body to the right and look behind you.',
    needs: ['bone-health'],
  },
  {
    for: 'older-adults',
    kit: ['chair'],
    says: 'Sit tall. Fold forwards and let your hands slide down to your ankles.',
    needs: ['inverted-head-down', 'bone-health'],
  },
  {
    for: 'older-adults',
    kit: ['chair'],
    says: 'Hands together in front of your chest. Push your palms hard into each other.',
    needs: ['breath-hold'],
  },
  {
    for: 'older-adults',
    kit: ['chair'],
    says: 'Take a big step to the side and bring the other foot to meet it.',
    needs: ['fall-risk'],
  },
  {
    for: 'rehab',
    says: 'Lie on your back. Bring your heel in towards your bottom and slide it away.',
    needs: ['pain-stop', 'knee-tracking'],
  },
  {
    for: 'rehab',
    says: 'Stand with your feet apart. Bend your knees a little and straighten up.',
    needs: ['pain-stop', 'knee-tracking'],
  },
  {
    for: 'rehab',
    kit: ['step'],
    says: 'Put the operated foot on the step. Straighten that knee and bring the other foot up.',
    needs: ['pain-stop', 'knee-tracking', 'fall-risk'],
  },
  {
    for: 'rehab',
    says: 'Stand on the operated leg only, other foot just off the ground.',
    needs: ['pain-stop', 'fall-risk'],
  },
  {
    for: 'rehab',
    says: 'Sit on the mat, leg straight. Tighten your thigh and push the knee down.',
    needs: ['pain-stop'],
  },
  {
    kit: ['rings'],
    says: 'Grab the rings, straight arms, and let your feet come off the floor. Just hang.',
    needs: ['anchor-check', 'safe-dismount'],
  },
  {
    kit: ['rings'],
    says: 'Jump up to the top, arms locked, rings by your hips. Hold yourself up.',
    needs: ['anchor-check', 'safe-dismount'],
  },
  { kit: ['rings'], says: 'Lean back with straight arms and pull your chest to the rings.', needs: ['anchor-check'] },
  {
    kit: ['rings'],
    says: 'Tuck your knees and roll backwards until you are upside down between the straps.',
    needs: ['anchor-check', 'inverted-head-down', 'safe-dismount', 'overhead-shoulder'],
  },
  {
    kit: ['barbell'],
    says: 'Bar across your upper back. Sit down between your hips and drive up.',
    needs: ['spotter-or-safeties', 'knee-tracking', 'loaded-spinal-flexion', 'breath-hold'],
  },
  {
    kit: ['barbell'],
    says: 'Step under, unrack it and walk it back. Break at the hips and knees and go down, then stand up.',
    needs: ['spotter-or-safeties', 'knee-tracking', 'loaded-spinal-flexion', 'breath-hold'],
  },
  {
    kit: ['barbell'],
    says: 'Bar on the floor over your laces. Grip it, chest up, and stand up with it.',
    needs: ['loaded-spinal-flexion', 'breath-hold'],
  },
  {
    kit: ['barbell'],
    says: 'Bar on the front of your shoulders. Press it straight up until your elbows lock.',
    needs: ['overhead-shoulder'],
  },
  {
    kit: ['barbell'],
    says: 'Hinge over until your chest is nearly level. Pull the bar to your belly.',
    needs: ['loaded-spinal-flexion'],
  },
  {
    kit: ['barbell'],
    says: 'Reach up to the pull-up bar and hang from it.',
    needs: ['overhead-shoulder', 'safe-dismount'],
  },
  {
    kit: ['band'],
    says: 'Stand on the band with both feet. Squat down and stand up.',
    needs: ['band-recoil', 'knee-tracking'],
  },
  {
    kit: ['band'],
    says: 'Loop it round the door handle and step back. Pull your elbows past your ribs.',
    needs: ['anchor-check'],
  },
  {
    kit: ['band'],
    says: 'Trap it under your foot and press your hand up to the ceiling.',
    needs: ['band-recoil', 'overhead-shoulder'],
  },
  {
    kit: ['band'],
    says: 'Fix it in the door at head height. Pull your hands towards your ears.',
    needs: ['anchor-check', 'band-recoil'],
  },
  {
    kit: ['band'],
    says: 'Lie on your back with the band round your foot and straighten the leg.',
    needs: ['band-recoil'],
  },
  { says: 'Lie on your tummy. Lift your chest and your legs off the floor.', needs: ['lumbar-extension'] },
  {
    says: 'Lie on your back, legs in the air. Lower one heel to the floor and bring it back.',
    needs: ['lumbar-extension'],
  },
  { says: 'Lie on your back, hands behind your head. Curl your shoulders up off the mat.', needs: ['neck-pull'] },
  {
    says: 'On your back, knees over hips. Take the opposite arm and leg away from each other.',
    needs: ['lumbar-extension'],
  },
  { says: 'Jump your feet wide and back in, arms overhead.', needs: ['impact-landing'] },
  { says: 'Leap from one leg to the other, side to side.', needs: ['impact-landing'] },
  { kit: ['kettlebell'], says: 'Push your hips back, grab the bell and stand up.', needs: ['loaded-spinal-flexion'] },
  {
    kit: ['dumbbell'],
    says: 'Press the weights over your head and lower to your shoulders.',
    needs: ['overhead-shoulder'],
  },
  {
    kit: ['dumbbell'],
    says: 'Step one foot back and drop the knee to the floor, then push up.',
    needs: ['knee-tracking'],
  },
  {
    kit: ['kettlebell'],
    says: 'Hold the bell at your chest and sit down between your knees.',
    needs: ['knee-tracking'],
  },
  {
    says: 'Come down onto one shin with the other leg behind you and fold over the front knee.',
    needs: ['knee-torsion'],
  },
]

const taughtAs = (says: string, kit: readonly string[] = []): Segment =>
  segmentNamed('the wombat', {
    equipment: kit,
    cues: tagCues(says).map(({ kind, text, offset }) => cueSaid(kind, text, offset, `${kind}-${offset}`)),
  })

const requiredOf = (segment: Segment, audience: readonly string[] = []): string[] =>
  requireCautions(segment, sheetWith([segment], { audience })).map(({ hazard }) => hazard)

describe('requireCautions, for a name that nobody knows', () => {
  it('asks for nothing where nothing tells', () => {
    expect(requiredOf(taughtAs('Lovely. And again. Well done.'))).toEqual([])
  })

  it.each(DESCRIBED)('$says', ({ for: whom, kit, says, whole, needs }) => {
    const cues = [cueSaid('execution', says, 0, 'whole')]
    const taught = whole ? segmentNamed('the wombat', { equipment: kit ?? [], cues }) : taughtAs(says, kit)
    expect(requiredOf(taught, whom ? [whom] : [])).toEqual(expect.arrayContaining([...needs]))
  })

  it.each([
    ['Sit tall and breathe into your ribs.', 'older-adults', []],
    ['Stand still and roll your shoulders.', 'older-adults', []],
    ['Lie on your back and rest.', 'general', []],
    ['Kneel, sit back on your heels and walk your hands out.', 'general', []],
    ['Let your arms hang by your sides.', 'general', ['barbell']],
    ['Hold the plank, shoulders over wrists.', 'general', []],
  ])('asks for nothing of "%s"', (says, whom, kit) => {
    expect(requiredOf(taughtAs(says, kit), [whom])).toEqual([])
  })

  it.each<[HazardSlug, string, Record<string, unknown>]>([
    ['safe-dismount', '', { equipment: ['rings'] }],
    ['fall-risk', 'older-adults', {}],
    ['knee-tracking', 'rehab', {}],
    ['bone-health', 'older-adults', {}],
    ['anchor-check', '', { equipment: ['band'] }],
  ])('asks for %s where the instructor warns of it', (hazard, whom, fields) => {
    const warning = { hazard, scope: 'exercise', source: 'spoken', text: 'mind that', atMs: 5000 }
    const warned = segmentNamed('the wombat', { ...fields, cautions: [warning] })
    const declined = segmentNamed('the wombat', { ...fields, cautions: [{ ...warning, state: 'declined' }] })
    expect(requiredOf(warned, whom ? [whom] : [])).toContain(hazard)
    expect(requiredOf(declined, whom ? [whom] : [])).not.toContain(hazard)
  })

  it('does not take a warning of another kit or other people for a need', () => {
    const warning = { hazard: 'safe-dismount', scope: 'exercise', source: 'spoken', text: 'do not drop', atMs: 5000 }
    expect(requiredOf(segmentNamed('the wombat', { cautions: [warning] }))).toEqual([])
    const held = { ...warning, hazard: 'fall-risk', text: 'hold the chair' }
    expect(requiredOf(segmentNamed('the wombat', { cautions: [held] }))).toEqual([])
  })
})

describe('requireCautions, by what a class is built on', () => {
  const others = (kit: string) =>
    Array.from({ length: 4 }, (_, index) => segmentNamed(`thing ${index}`, { id: `other-${index}`, equipment: [kit] }))
  const inClassOf = (kit: string, name: string, fields: Record<string, unknown> = {}): string[] => {
    const segment = segmentNamed(name, fields)
    return requireCautions(segment, sheetWith([segment, ...others(kit)])).map(({ hazard }) => hazard)
  }

  it('takes the kit of the class where the catalogue expects a weight that the class does not use', () => {
    expect(inClassOf('rings', 'shrug')).toContain('anchor-check')
    expect(inClassOf('barbell', 'shrug')).not.toContain('anchor-check')
    expect(inClassOf('band', 'front squat', { equipment: ['band'] })).not.toContain('spotter-or-safeties')
  })

  it('asks for the barbell set-up of a lift that is described, whatever its name', () => {
    const fields = { equipment: ['barbell'], cues: [cueSaid('setup', 'Bar over your laces, shins an inch away.')] }
    expect(inClassOf('barbell', 'the pick up', fields)).toEqual(
      expect.arrayContaining(['loaded-spinal-flexion', 'breath-hold']),
    )
  })
})
