/** Required cautions that follow from how the body is placed and moved. */
import type { Hazard } from './hazards.ts'
import { LOADS, WEIGHTS } from './words/en/kit-words.ts'

type Row = Omit<Hazard, 'slug'>

/** A bend of the knees that is held as a stretch asks nothing of its track. */
const STRETCHED = { movements: ['stretch'] } as const

/** An unknown exercise on one foot; other words that stand near are of the next one. */
const ON_ONE_FOOT = { known: false, signs: ['one-foot-off'] } as const

/** Squats that are not done under a bar, even where the class has one. */
export const NOT_UNDER_THE_BAR = [
  { movements: ['lunge'] },
  { still: true },
  { names: ['split squat', 'wall sit', 'wall squat', 'squat sit', 'deep squat', 'goblet squat'] },
] as const

export const BODY_HAZARDS = {
  'neck-pull': {
    name: 'Pulling on the neck',
    when: [
      {
        because: 'the instructor warns of it with the hands behind the head',
        signs: ['hands-behind-head'],
        warned: ['neck-pull'],
        unless: [{ positions: ['prone', 'seated'] }, { movements: ['stretch', 'neck-motion'] }],
      },
      {
        because: 'the trunk curls up from the floor with the hands behind the head',
        movements: ['curl-up', 'spine-flexion'],
        positions: ['supine'],
        signs: ['hands-behind-head'],
      },
      {
        because: 'crunches and sit-ups are usually done with the hands behind the head',
        names: ['crunch', 'sit up', 'bicycle', 'criss cross'],
        movements: ['curl-up'],
        unless: [
          { signs: ['hands-not-behind-head'], also: { unless: [{ signs: ['hands-behind-head'] }] } },
          { names: ['reverse crunch', 'standing crunch'] },
        ],
      },
    ],
    offer:
      'Let your hands hold the weight of your head without pulling on it. If your neck tires, rest your head down.',
    concerns: 'everyone, and necks that complain',
    source: 'common practice, no source',
    grade: 'P',
    level: 'must',
  },
  'inverted-head-down': {
    name: 'Head below the heart',
    when: [
      { because: 'the head goes below the heart', positions: ['head-below-heart'] },
      { because: 'the head comes down to the floor', names: ['thread the needle'] },
      { because: 'the body turns over on the rings', signs: ['turns-over'], kit: ['rings', 'bar'], known: false },
      {
        because: 'older adults fold forwards',
        audience: ['older-adults'],
        signs: ['folds-forward'],
        known: false,
        also: { signs: ['seated'] },
      },
      {
        because: 'older adults fold forwards in a seat',
        audience: ['older-adults'],
        positions: ['seated'],
        movements: ['spine-flexion'],
        also: { names: ['fold', 'forward bend', 'toe reach', 'spine stretch'] },
      },
    ],
    offer:
      'If you have raised eye pressure, high blood pressure or feel dizzy with your head down, keep your head level with your hips, for example with your hands on a chair. Come up slowly.',
    concerns: 'glaucoma or raised eye pressure, high blood pressure, dizziness',
    source:
      'Jasien et al., PLoS ONE 10(12):e0144505, 2015 (eye pressure in head-down positions); Cramer, Krucoff, Dobos, PLoS ONE 8(10):e75515, 2013; blood pressure: common practice, no source',
    grade: 'S',
    level: 'must',
  },
  'loaded-spinal-flexion': {
    name: 'Back shape under load',
    when: [
      {
        because: 'the body bends at the hips against a load',
        positions: ['standing', 'single-leg'],
        movements: ['hinge'],
        loaded: true,
        unless: [
          { movements: ['row-machine'] },
          STRETCHED,
          { kit: ['wall'] },
          { names: ['stick', 'dowel', 'broom', 'pole'] },
        ],
      },
      {
        because: 'a weight is rowed from a bent-over stance',
        movements: ['pull'],
        kit: WEIGHTS,
        also: { names: ['row'] },
        unless: [
          { names: ['upright row', 'chest supported', 'seal row', 'seated', 'prone', 'renegade', 'plank'] },
          { positions: ['seated', 'prone', 'hands-supported'] },
        ],
      },
      {
        because: 'the bar loads the back in the squat',
        movements: ['squat'],
        kit: ['barbell'],
        unless: NOT_UNDER_THE_BAR,
      },
      {
        because: 'the bar is lifted off the floor',
        signs: ['bar-off-floor'],
        kit: ['barbell'],
        unless: [{ movements: ['overhead'] }],
      },
      {
        because: 'the instructor warns of it under load',
        warned: ['loaded-spinal-flexion'],
        known: false,
        loaded: true,
        movements: ['squat', 'hinge', 'pull'],
        unless: [{ positions: ['supine', 'prone', 'side-lying'] }],
      },
      {
        because: 'the trunk turns in a seat with a weight',
        movements: ['spine-rotation'],
        positions: ['seated'],
        kit: WEIGHTS,
      },
      {
        because: 'body swing or leg drive loads the back on the rowing machine',
        movements: ['row-machine'],
        unless: [
          { names: ['arms only', 'arms alone', 'easy', 'light row', 'warm up', 'cool down', 'paddle', 'wind down'] },
          { signs: ['warm-up'] },
        ],
      },
    ],
    offer:
      'Keep your back in the shape it has when you stand tall. If it rounds, or it does not feel right, use less weight, come less low, or stop there.',
    concerns: 'everyone, and backs that complain',
    source:
      'The evidence on rounding as such conflicts: Axler & McGill, Med Sci Sports Exerc 29(6):804-811, 1997 against Saraceni et al., J Orthop Sports Phys Ther 50(3):121-130, 2020 and Swain et al., J Biomech 102:109312, 2020; worded as comfort. The form cue is common practice',
    grade: 'S, conflicting',
    level: 'must',
  },
  'breath-hold': {
    name: 'Holding the breath',
    when: [
      {
        because: 'older adults rise against their own weight',
        audience: ['older-adults', 'pregnancy'],
        movements: ['sit-to-stand', 'floor-to-stand'],
        unless: [ON_ONE_FOOT],
      },
      {
        because: 'a squeeze or a hold against resistance invites a held breath',
        audience: ['older-adults', 'pregnancy'],
        names: ['squeeze', 'push hold', 'press hold', 'isometric'],
        unless: [{ names: ['shoulder blade'] }, { movements: ['stretch', 'breathing'] }],
      },
      {
        because: 'a hold against resistance invites a held breath',
        audience: ['older-adults', 'pregnancy'],
        movements: ['isometric'],
        unless: [{ movements: ['balance', 'stretch', 'breathing', 'neck-motion'] }, { names: ['bird dog'] }],
      },
      { because: 'the class is asked to hold the breath', signs: ['breath-hold-cued'] },
      {
        because: 'box breathing holds the breath in and out',
        names: ['box breathing', 'square breathing', 'box breath', 'four seven eight', 'breath hold'],
      },
      {
        because: 'heavy bars invite a held breath',
        movements: ['squat', 'hinge'],
        kit: ['barbell'],
        unless: [
          { names: ['row', 'good morning', 'clean', 'snatch', 'hip thrust', 'bridge', 'stick'] },
          ...NOT_UNDER_THE_BAR,
        ],
      },
      {
        because: 'heavy bars invite a held breath',
        signs: ['bar-off-floor'],
        kit: ['barbell'],
        unless: [{ names: ['row'] }, { movements: ['overhead'] }],
      },
      {
        because: 'a squeeze invites a held breath',
        audience: ['older-adults', 'pregnancy'],
        signs: ['squeezes-kit'],
        known: false,
        unless: [{ movements: ['stretch', 'breathing'] }],
      },
    ],
    offer:
      'Keep breathing; breathe out as you make the effort. If you have high blood pressure or a heart condition, do not hold your breath here.',
    concerns: 'everyone, above all with high blood pressure or a heart condition',
    source:
      'MacDougall et al., J Appl Physiol 58(3):785-790, 1985; AHA scientific statement, Williams et al., Circulation 116(5):572-584, 2007 (the advice to breathe out on effort: from memory)',
    grade: 'S+G',
    level: 'must',
  },
  'knee-tracking': {
    name: 'Line of the knee',
    when: [
      {
        because: 'the knees bend under load',
        movements: ['squat'],
        positions: ['standing', 'single-leg', 'seated'],
        loaded: true,
        unless: [STRETCHED, { movements: ['step'], names: ['side step', 'walk', 'crab'] }],
      },
      {
        because: 'one knee bends under the body',
        movements: ['lunge'],
        unless: [
          STRETCHED,
          { names: ['warrior', 'side angle', 'low lunge'] },
          { movements: ['jump'] },
          { positions: ['seated', 'supine', 'prone'], known: false },
        ],
      },
      { because: 'one leg carries the squat', names: ['pistol', 'shrimp squat', 'single leg squat'] },
      {
        because: 'the knee carries the body on the step',
        movements: ['step'],
        also: { names: ['step up', 'step down', 'step over', 'step through'] },
      },
      {
        because: 'the knee carries the body on the step',
        movements: ['step'],
        kit: ['step', 'bench'],
        unless: [{ movements: ['heel-raise'] }],
      },
      {
        because: 'the knee bends in a rehabilitation class',
        audience: ['rehab'],
        movements: ['squat', 'lunge', 'step', 'sit-to-stand', 'deep-knee'],
        unless: [STRETCHED],
      },
      {
        because: 'the knee bends in a rehabilitation class',
        audience: ['rehab'],
        names: ['heel slide', 'heal slide', 'hamstring curl', 'knee bend', 'wall slide', 'leg press'],
      },
      {
        because: 'the knee bends in a rehabilitation class',
        audience: ['rehab'],
        signs: ['knee-bends', 'sits-deep'],
        known: false,
        unless: [STRETCHED, { names: ['straight leg', 'pump', 'balance', 'raise'] }],
      },
      {
        because: 'the instructor warns of it under load',
        warned: ['knee-tracking'],
        known: false,
        loaded: true,
        unless: [{ positions: ['supine', 'prone', 'side-lying', 'all-fours'] }],
      },
      {
        because: 'the instructor warns of it on landing',
        warned: ['knee-tracking'],
        known: false,
        movements: ['jump'],
      },
      {
        because: 'the instructor warns of it in a rehabilitation class',
        warned: ['knee-tracking'],
        audience: ['rehab'],
        known: false,
      },
      {
        because: 'the knees land a big or travelling jump',
        movements: ['jump'],
        names: [
          'jump squat',
          'squat jump',
          'box jump',
          'broad jump',
          'long jump',
          'depth jump',
          'drop jump',
          'tuck jump',
          'jump lunge',
          'jumping lunge',
          'split jump',
          'skater',
          'lateral hop',
          'single leg hop',
          'bound',
          'bounding',
        ],
      },
    ],
    offer: 'Let your knee point the way your toes point. If it drops inwards, slow down or bend less.',
    concerns: 'everyone, and knees that complain',
    source: 'common practice, no source',
    grade: 'P',
    level: 'must',
  },
  'knee-torsion': {
    name: 'Twist in the knee',
    when: [
      {
        because: 'the hip turns out over a bent knee with weight on it',
        signs: ['shin-across'],
        known: false,
        unless: [{ positions: ['supine', 'seated', 'standing'] }],
      },
      {
        because: 'the hip turns out over a bent knee with weight on it',
        names: ['pigeon', 'ninety ninety', '90 90', 'shin box', 'fire log', 'lotus'],
        unless: [{ positions: ['supine'] }, { names: ['reclined', 'lying', 'figure four'] }],
      },
      {
        because: 'the hip turns out over a bent knee with weight on it',
        movements: ['hip-rotation'],
        also: { movements: ['stretch'], positions: ['prone', 'kneeling', 'all-fours'] },
      },
    ],
    offer: 'You should feel this in the hip. If you feel it in your knee, come out and do it lying on your back.',
    concerns: 'knees that complain, and anyone new to it',
    source: 'common practice; Cramer, Krucoff, Dobos, PLoS ONE 8(10):e75515, 2013 names forced knee rotation',
    grade: 'P',
    level: 'must',
  },
  'lumbar-extension': {
    name: 'Arch of the low back',
    when: [
      { because: 'the back lifts from lying on the front', positions: ['prone'], movements: ['spine-extension'] },
      {
        because: 'the back lifts from lying on the front',
        positions: ['prone'],
        signs: ['chest-lifts'],
        known: false,
        unless: [STRETCHED, { positions: ['hands-supported', 'forearm-supported'] }],
      },
      {
        because: 'the weight of the legs pulls on the low back',
        positions: ['supine'],
        signs: ['legs-lower'],
        known: false,
        unless: [STRETCHED, { audience: ['rehab'] }, { kit: ['band', 'rowing machine'] }],
      },
      {
        because: 'the instructor warns of it lying down',
        warned: ['lumbar-extension'],
        positions: ['supine', 'prone', 'side-lying'],
        known: false,
        unless: [STRETCHED, { audience: ['rehab'] }],
      },
      {
        because: 'the weight of the legs pulls on the low back',
        positions: ['supine'],
        movements: ['leg-lowering'],
        unless: [{ names: ['heel slide', 'heal slide', 'quad', 'straight leg raise', 'toe tap step'] }],
      },
      { because: 'the weight of the legs pulls on the low back', names: ['dead bug', 'hollow'], positions: ['supine'] },
    ],
    offer: 'Work only as far as your low back stays comfortable and still. If it pinches or arches, make it smaller.',
    concerns: 'backs that complain',
    source: 'common practice, no source',
    grade: 'P',
    level: 'must',
  },
  'overhead-shoulder': {
    name: 'Shoulder overhead',
    when: [
      {
        because: 'a load goes overhead or round the head',
        movements: ['overhead'],
        loaded: true,
        kit: LOADS,
        unless: [
          { kit: ['wall'] },
          { kit: ['band'], signs: ['anchored'] },
          { positions: ['supine'], known: false },
          { names: ['roll out', 'rollout', 'fallout'] },
        ],
      },
      {
        because: 'the instructor warns of it with the arms overhead',
        movements: ['overhead'],
        warned: ['overhead-shoulder'],
        unless: [{ kit: ['wall'] }, { positions: ['supine', 'prone', 'all-fours'] }],
      },
      {
        because: 'a load goes overhead or round the head',
        movements: ['overhead'],
        loaded: true,
        names: ['press', 'halo'],
      },
      {
        because: 'the shoulders carry the turning body',
        signs: ['turns-over'],
        kit: ['rings', 'bar'],
        known: false,
      },
      {
        because: 'the shoulders carry the hanging body',
        signs: ['hangs'],
        kit: ['rings', 'bar', 'barbell'],
      },
      {
        because: 'the instructor warns of it under load',
        warned: ['overhead-shoulder'],
        known: false,
        loaded: true,
        signs: ['presses-overhead', 'hangs'],
      },
      {
        because: 'the shoulders carry the hanging body',
        positions: ['hanging'],
        unless: [{ names: ['ring dip', 'ring support', 'support hold'] }],
      },
    ],
    offer:
      'If your shoulder pinches, make it smaller, use less weight, or press forwards at chest height instead. Anyone told not to go overhead leaves this out.',
    concerns: 'shoulders that pinch or have been injured',
    source: 'Escalante, Strength Cond J 39(3):74-86, 2017 (review); hanging: common practice, no source',
    grade: 'X',
    level: 'must',
  },
} as const satisfies Record<string, Row>
