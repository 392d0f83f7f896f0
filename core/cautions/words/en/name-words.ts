/**
 * What the words of a name tell of an exercise, for names that the catalogue does not hold and for names that say
 * more than its entry ("single-leg", "seated", "behind the neck"). `always` = also where the catalogue has an entry.
 */
import type { Movement, Position } from '../../../catalogue/entry.ts'

export interface NameWords {
  words: readonly string[]
  positions?: readonly Position[]
  movements?: readonly Movement[]
  still?: boolean
  loaded?: boolean
  always?: boolean
}

export const NAME_WORDS = [
  // where
  { words: ['single leg', 'one leg', 'one legged', 'single leg stand'], positions: ['single-leg'], always: true },
  { words: ['half kneeling', 'half kneel'], positions: ['half-kneeling'], always: true },
  { words: ['tall kneeling', 'kneeling'], positions: ['kneeling'], always: true },
  { words: ['seated', 'sitting'], positions: ['seated'], always: true },
  { words: ['standing'], positions: ['standing'], always: true },
  { words: ['supine', 'floor press', 'on your back', 'lying on back'], positions: ['supine'] },
  { words: ['prone', 'face down'], positions: ['prone'], always: true },
  { words: ['side lying'], positions: ['side-lying'], always: true },
  { words: ['all fours', 'quadruped'], positions: ['all-fours'], always: true },
  {
    words: [
      'dead hang',
      'active hang',
      'passive hang',
      'bar hang',
      'ring hang',
      'long hang',
      'hanging knee',
      'hanging leg',
      'hanging shrug',
      'hang',
    ],
    positions: ['hanging'],
  },
  { words: ['side leg', 'flamingo', 'stork', 'heron'], positions: ['single-leg'] },
  { words: ['trunk turn', 'trunk rotation', 'body turn'], movements: ['spine-rotation'] },
  {
    words: [
      'inverted',
      'upside down',
      'headstand',
      'handstand',
      'pike press',
      'decline',
      'downward dog',
      'down dog',
      'rag doll',
    ],
    positions: ['head-below-heart'],
    always: true,
  },
  // what moves
  {
    words: ['half kneeling press', 'kneeling press', 'z press'],
    movements: ['overhead', 'push'],
    loaded: true,
    always: true,
  },
  { words: ['bench dip', 'chair dip'], positions: ['hands-supported'], movements: ['push'] },
  { words: ['squat'], positions: ['standing'], movements: ['squat'] },
  { words: ['leg press'], positions: ['seated'], movements: ['squat', 'deep-knee', 'deep-hip'], loaded: true },
  {
    words: ['deep goblet squat', 'deep squat', 'full squat', 'below parallel'],
    movements: ['deep-knee', 'deep-hip'],
    always: true,
  },
  { words: ['lunge', 'split squat'], positions: ['standing'], movements: ['lunge'] },
  { words: ['step up', 'step down', 'step over'], positions: ['standing'], movements: ['step'] },
  {
    words: ['sit to stand', 'chair stand', 'chair rise'],
    positions: ['seated', 'standing'],
    movements: ['sit-to-stand', 'squat'],
  },
  { words: ['heel raise', 'calf raise', 'heel lift'], movements: ['heel-raise'] },
  { words: ['deadlift', 'dead lift', 'good morning', 'rdl', 'hinge'], positions: ['standing'], movements: ['hinge'] },
  { words: ['swing'], movements: ['swing-kit', 'ballistic', 'hinge'] },
  { words: ['clean', 'snatch'], positions: ['standing'], movements: ['ballistic', 'hinge'], loaded: true },
  {
    words: [
      'snatch',
      'jerk',
      'thruster',
      'get up',
      'overhead',
      'shoulder press',
      'military press',
      'push press',
      'strict press',
      'halo',
      'windmill',
      'skull crusher',
      'behind the neck press',
      'behind neck press',
    ],
    movements: ['overhead'],
  },
  {
    words: ['upright row', 'high pull'],
    positions: ['standing'],
    movements: ['pull', 'raise-above-shoulder'],
    loaded: true,
  },
  { words: ['lateral raise', 'front raise', 'side raise'], movements: ['raise-above-shoulder'], loaded: true },
  { words: ['curl'], movements: ['pull'] },
  { words: ['row'], movements: ['pull'] },
  {
    words: ['bent over row', 'pendlay row', 'barbell row', 'gorilla row'],
    positions: ['standing'],
    movements: ['pull', 'hinge'],
    loaded: true,
    always: true,
  },
  { words: ['press up', 'push up'], positions: ['hands-supported'], movements: ['push'] },
  { words: ['plank'], positions: ['hands-supported'], movements: ['isometric'], still: true },
  { words: ['forearm plank', 'elbow plank'], positions: ['forearm-supported'], movements: ['isometric'], still: true },
  { words: ['dip'], positions: ['hands-supported'], movements: ['push'] },
  {
    words: ['pull up', 'chin up', 'muscle up', 'toe to bar', 'knee raise hang'],
    positions: ['hanging'],
    movements: ['pull'],
  },
  {
    words: ['crunch', 'curl up', 'sit up', 'tummy curl', 'ab curl', 'abdominal curl'],
    positions: ['supine'],
    movements: ['curl-up', 'spine-flexion'],
  },
  { words: ['roll up'], positions: ['supine'], movements: ['spine-flexion'] },
  { words: ['roll down', 'toe touch'], positions: ['standing'], movements: ['spine-flexion'] },
  {
    words: ['russian twist', 'seated twist'],
    positions: ['seated'],
    movements: ['spine-rotation', 'spine-flexion'],
    always: true,
  },
  { words: ['twist', 'wood chop', 'woodchop', 'windmill'], movements: ['spine-rotation'] },
  { words: ['side bend'], movements: ['side-bend'] },
  {
    words: ['leg lower', 'leg lowering', 'dead bug', 'hollow', 'leg raise'],
    positions: ['supine'],
    movements: ['leg-lowering'],
  },
  {
    words: ['superman', 'back extension', 'cobra', 'locust', 'back raise'],
    positions: ['prone'],
    movements: ['spine-extension'],
  },
  { words: ['bridge', 'hip thrust'], positions: ['supine'] },
  {
    words: ['skull crusher', 'bench press', 'floor press', 'chest press', 'pullover'],
    positions: ['supine'],
    movements: ['load-over-face'],
    loaded: true,
  },
  {
    words: [
      'jump',
      'hop',
      'hopping',
      'leap',
      'leaping',
      'skater',
      'burpee',
      'plyo',
      'bound',
      'bounding',
      'jumping jack',
      'star jump',
      'high knee',
    ],
    positions: ['standing'],
    movements: ['jump'],
  },
  { words: ['burpee'], positions: ['hands-supported'] },
  { words: ['run', 'running', 'sprint', 'stride', 'jog', 'shuttle'], positions: ['standing'], movements: ['run'] },
  { words: ['stretch'], movements: ['stretch'], still: true },
  { words: ['pigeon', 'ninety ninety', '90 90', 'shin box'], movements: ['hip-rotation', 'deep-hip'], always: true },
  { words: ['figure four', 'cross leg', 'leg cross'], movements: ['leg-crossing', 'hip-rotation'] },
  {
    words: ['neck circle', 'neck roll', 'head circle', 'head roll'],
    movements: ['neck-motion', 'circles'],
    always: true,
  },
  { words: ['hip circle'], movements: ['circles'] },
  { words: ['carry', 'farmer walk'], positions: ['standing'], movements: ['carry'], loaded: true },
  { words: ['balance', 'tandem', 'wobble board'], movements: ['balance'] },
  { words: ['wall sit', 'isometric', 'iso hold'], movements: ['isometric'], still: true },
  { words: ['get up from the floor', 'floor to stand', 'turkish get up'], movements: ['floor-to-stand'] },
  { words: ['breathing', 'breath'], movements: ['breathing'] },
] as const satisfies readonly NameWords[]
