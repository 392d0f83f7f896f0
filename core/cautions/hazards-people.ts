/** Required cautions that follow from who is taught. */
import type { Hazard } from './hazards.ts'

type Row = Omit<Hazard, 'slug'>

/** A rest in a wide shape is no work for the pelvis. */
const REST_SHAPES = { names: ["child's pose", 'puppy pose', 'relaxation', 'lean on ball', 'legs up the wall'] } as const

/** An unknown exercise on one foot; other words that stand near are of the next one. */
const ON_ONE_FOOT = { known: false, signs: ['one-foot-off'] } as const

export const PEOPLE_HAZARDS = {
  'fall-risk': {
    name: 'Risk of falling',
    when: [
      {
        because: 'the class stands on one leg or half-kneels',
        audience: ['older-adults', 'pregnancy', 'rehab'],
        positions: ['single-leg', 'half-kneeling'],
      },
      {
        because: 'the class rises, steps or balances',
        audience: ['older-adults', 'pregnancy', 'rehab'],
        movements: ['sit-to-stand', 'step', 'floor-to-stand'],
      },
      {
        because: 'the class stands on a small base or circles',
        audience: ['older-adults', 'pregnancy', 'rehab'],
        positions: ['standing'],
        movements: ['heel-raise', 'circles', 'balance', 'fast-turn'],
        unless: [{ names: ['arm circle', 'shoulder circle', 'wrist circle', 'pendulum'] }],
      },
      {
        because: 'standing march is a moment on one leg',
        audience: ['older-adults', 'pregnancy', 'rehab'],
        names: ['march'],
        unless: [{ positions: ['seated', 'supine'] }, { names: ['bridge'] }],
      },
      {
        because: 'one leg is lifted in standing',
        audience: ['older-adults', 'pregnancy', 'rehab'],
        positions: ['standing'],
        names: [
          ...['leg curl', 'hamstring curl', 'leg lift', 'leg raise', 'leg swing', 'leg kick', 'side kick', 'kick back'],
          ...[
            'hip extension',
            'hip abduction',
            'leg extension',
            'clock step',
            'tightrope',
            'walk backward',
            'backward walk',
          ],
        ],
        unless: [{ positions: ['seated', 'supine', 'prone', 'side-lying', 'all-fours'] }],
      },
      {
        because: 'the instructor has the class keep hold of something',
        audience: ['older-adults', 'pregnancy', 'rehab'],
        warned: ['fall-risk'],
        known: false,
        unless: [
          { movements: ['stretch', 'breathing'] },
          { positions: ['supine', 'prone', 'side-lying', 'all-fours'] },
          {
            positions: ['seated'],
            unless: [{ signs: ['one-foot-off', 'on-one-leg', 'up-on-toes', 'rises-from-seat', 'steps-up'] }],
          },
        ],
      },
    ],
    offer: 'Keep hold of a firm chair, a rail or the wall, or have it within reach.',
    concerns: 'older adults, pregnancy, anyone unsteady or dizzy',
    source:
      'WHO guidelines on physical activity, 2020 (balance work is advised for 65+, so support it rather than leave it out; second-hand); the support itself: common practice',
    grade: 'G+P',
    level: 'must',
  },
  'dizziness-rise': {
    name: 'Dizzy on rising',
    when: [
      {
        because: 'older adults rise again and again',
        audience: ['older-adults'],
        movements: ['sit-to-stand', 'floor-to-stand'],
        unless: [ON_ONE_FOOT],
      },
      {
        because: 'older adults rise again and again',
        audience: ['older-adults'],
        names: ['toe touch', 'roll down', 'bend and reach', 'get up'],
        unless: [{ positions: ['seated', 'supine', 'hands-supported'] }],
      },
      {
        because: 'the instructor warns of it',
        audience: ['older-adults'],
        warned: ['dizziness-rise'],
        known: false,
      },
      {
        because: 'the body rises to standing from a hanging fold',
        positions: ['head-below-heart'],
        also: { positions: ['standing'], movements: ['spine-flexion', 'hinge'] },
        unless: [{ names: ['sun salutation', 'downward dog'] }],
      },
    ],
    offer: 'Come up slowly and wait a moment before you move on. If you feel dizzy, sit down until it passes.',
    concerns: 'low blood pressure, blood-pressure tablets, pregnancy, anyone prone to dizziness',
    source: 'common practice, no source',
    grade: 'P',
    level: 'must',
  },
  'bone-health': {
    name: 'Thin bones',
    when: [
      {
        because: 'older adults bend or turn the spine to its end',
        audience: ['older-adults'],
        movements: ['spine-flexion', 'spine-rotation', 'curl-up'],
        unless: [{ names: ['pelvic tilt', 'pelvic clock', 'cat cow', 'cat camel', 'punch', 'uppercut'] }, ON_ONE_FOOT],
      },
      { because: 'the instructor warns of it', audience: ['older-adults'], warned: ['bone-health'], known: false },
    ],
    offer:
      'If you have thin bones or have broken a bone in your back, keep the movement small, slow and without weight, or ask a licensed professional which version suits you.',
    concerns: 'osteoporosis or a past spine fracture',
    source:
      'Sinaki & Mikkelsen, Arch Phys Med Rehabil 65(10):593-596, 1984 (59 women, not randomised); Giangregorio et al., Osteoporos Int 25(3):821-835, 2014; Brooke-Wavell et al., Br J Sports Med 56:837, 2022; the consensus papers prefer a changed version to a ban',
    grade: 'S+G',
    level: 'must',
  },
  'supine-pregnancy': {
    name: 'Lying flat in pregnancy',
    when: [{ because: 'the class lies on its back in pregnancy', audience: ['pregnancy'], positions: ['supine'] }],
    offer:
      'After the first months of pregnancy, prop yourself up on a wedge or pillows, or turn to your side. If you feel faint or sick lying down, turn to your side and stop.',
    concerns: 'pregnancy',
    source:
      'Mottola et al., Canadian guideline, Br J Sports Med 52:1339-1346, 2018 (by symptoms); ACOG Committee Opinion 804, 2020 (avoid long periods, from memory): the two differ in strictness',
    grade: 'G',
    level: 'must',
  },
  coning: {
    name: 'Doming of the belly',
    when: [
      {
        because: 'reaching limbs or direct work loads the belly in pregnancy',
        audience: ['pregnancy'],
        movements: ['curl-up', 'leg-lowering'],
      },
      {
        because: 'reaching limbs or direct work loads the belly in pregnancy',
        audience: ['pregnancy'],
        names: [
          'bird dog',
          'arm and leg reach',
          'dead bug',
          'leg reach',
          'plank',
          'hollow',
          'press out',
          'bear',
          'climber',
        ],
        unless: [{ names: ['lying leg slide'] }],
      },
    ],
    offer: 'Look at or feel your belly. If its middle rises in a ridge or dome, go back to the easier version.',
    concerns: 'pregnancy and after birth',
    source:
      'expert practice, evidence thin; Goom, Donnelly, Brockwell, Returning to running postnatal, 2019 lists diastasis as a factor to consider',
    grade: 'X',
    level: 'must',
  },
  overstretch: {
    name: 'Stretching too far',
    when: [
      {
        because: 'hips or legs are stretched to their end in pregnancy',
        audience: ['pregnancy'],
        movements: ['stretch', 'deep-hip', 'deep-knee'],
        regions: ['hips', 'legs', 'calves'],
        unless: [REST_SHAPES, { names: ['rock back', 'hip circle'] }],
      },
      {
        because: 'a stretch is held in pregnancy',
        audience: ['pregnancy'],
        movements: ['stretch'],
        holdAtLeast: 15,
        unless: [REST_SHAPES],
      },
      {
        because: 'a deep squat is held in pregnancy',
        audience: ['pregnancy'],
        names: ['deep squat', 'supported squat', 'squat hold'],
      },
    ],
    offer: 'Stay well inside your range, about half of what you could do, and do not bounce.',
    concerns: 'pregnancy',
    source: 'common practice, no source',
    grade: 'P',
    level: 'must',
  },
  'pelvic-girdle-pain': {
    name: 'Pain of the pelvis',
    when: [
      {
        because: 'the legs part widely in pregnancy',
        audience: ['pregnancy'],
        movements: ['wide-legs'],
        unless: [REST_SHAPES, { movements: ['breathing'] }],
      },
      {
        because: 'the legs part against resistance in pregnancy',
        audience: ['pregnancy'],
        names: ['clam', 'abduction', 'side leg', 'leg raise', 'leg lift', 'band walk', 'monster walk', 'fire hydrant'],
        unless: [{ positions: ['supine', 'prone'] }, { names: ['heel raise', 'straight leg raise'] }],
      },
    ],
    offer: 'If you have pain at the front or back of your pelvis, or it clicks, leave this one out today.',
    concerns: 'pelvic girdle pain in pregnancy',
    source: 'common practice, no source',
    grade: 'P',
    level: 'must',
  },
  'pain-stop': {
    name: 'Stop at pain',
    when: [{ because: 'every exercise of a rehabilitation class needs it', audience: ['rehab'] }],
    offer:
      'A little discomfort that settles soon is usual. If it hurts, do less; if pain is sharp, or worse the next morning, stop and ask the professional who looks after you.',
    concerns: 'members with joint pain',
    source: 'patient guide of a university knee-cap programme; goes back to Thomee, Phys Ther 1997 (from memory)',
    grade: 'X',
    level: 'must',
  },
} as const satisfies Record<string, Row>
