/** Required cautions that follow from the kit. */
import { NOT_UNDER_THE_BAR } from './hazards-body.ts'
import type { Hazard } from './hazards.ts'

type Row = Omit<Hazard, 'slug'>

export const KIT_HAZARDS = {
  'anchor-check': {
    name: 'Check the anchor',
    when: [
      {
        because: 'the body hangs its weight on straps or rings',
        kit: ['rings'],
        unless: [
          { movements: ['row-machine'] },
          { positions: ['supine', 'side-lying'], unless: [{ names: ['ring'] }] },
        ],
      },
      {
        because: 'the body hangs its weight on straps or rings',
        signs: ['rings-class'],
        positions: ['hanging'],
      },
      {
        because: 'the instructor warns of it',
        warned: ['anchor-check'],
        kit: ['band', 'rings'],
        known: false,
        unless: [{ positions: ['supine', 'side-lying'] }],
      },
      {
        because: 'the band is pulled from an anchor',
        kit: ['band'],
        also: { kit: ['anchor'] },
        unless: [{ signs: ['band-at-foot', 'no-anchor'], also: { unless: [{ signs: ['anchored'] }] } }],
      },
      { because: 'the band is pulled from an anchor', kit: ['band'], signs: ['anchored'] },
      {
        because: 'the band is pulled from an anchor',
        kit: ['band'],
        names: [
          'face pull',
          'pulldown',
          'pull down',
          'pushdown',
          'press out',
          'pallof',
          'wood chop',
          'woodchop',
          'anchored',
          'standing row',
        ],
      },
    ],
    offer:
      'Before you start, check that the anchor holds: give it a firm tug, and see that a door is shut and opens away from you.',
    concerns: 'everyone',
    source: 'common practice, no source',
    grade: 'P',
    level: 'must',
  },
  'band-recoil': {
    name: 'Band snapping back',
    when: [
      {
        because: 'the band runs under or round the foot',
        kit: ['band'],
        signs: ['band-at-foot'],
        unless: [{ names: ['side step', 'walk', 'crab', 'clam', 'bridge', 'hydrant', 'press up', 'push up'] }],
      },
      {
        because: 'the band runs round the foot in the stretch',
        signs: ['band-class'],
        names: ['hamstring stretch'],
        positions: ['supine'],
      },
      { because: 'the band is pulled towards the face', kit: ['band'], signs: ['towards-face'] },
      { because: 'the band is pulled towards the face', kit: ['band'], names: ['face pull'] },
      {
        because: 'the band usually runs under or round the foot here',
        kit: ['band'],
        names: [
          'squat',
          'deadlift',
          'dead lift',
          'good morning',
          'band curl',
          'biceps curl',
          'bicep curl',
          'arm curl',
          'seated band row',
          'seated row',
          'leg press',
          'lateral raise',
          'shoulder press',
          'overhead press',
          'upright row',
          'hamstring stretch',
          'ankle inversion',
          'ankle eversion',
        ],
        unless: [{ signs: ['anchored'] }, { names: ['split squat', 'loop', 'mini band', 'pull apart'] }],
      },
    ],
    offer:
      'Look the band over for nicks, set it firmly under the middle of your foot, keep your face out of its line and let it back slowly.',
    concerns: 'everyone',
    source: 'common practice, no source',
    grade: 'P',
    level: 'must',
  },
  'clear-space': {
    name: 'Clear space',
    when: [
      {
        because: 'a weight is swung',
        movements: ['swing-kit'],
        unless: [
          { names: ['arm swing', 'leg swing', 'arms and swing', 'body swing', 'halo'] },
          { movements: ['row-machine'] },
          { positions: ['hanging'] },
          { kit: ['band'] },
        ],
      },
      { because: 'a weight is swung', names: ['mace', 'club swing', 'battle rope slam', 'indian club'] },
    ],
    offer: 'Look around first: nobody and nothing in front of you or behind you within a few steps.',
    concerns: 'everyone near',
    source: 'common practice, no source',
    grade: 'P',
    level: 'must',
  },
  'spotter-or-safeties': {
    name: 'Spotter or safety bars',
    when: [
      {
        because: 'the bar can pin whoever fails in the squat',
        movements: ['squat'],
        kit: ['barbell'],
        unless: NOT_UNDER_THE_BAR,
      },
    ],
    offer:
      'Set the safety bars to the right height, or have someone who knows how stand by. Practise with an empty bar how to get out.',
    concerns: 'everyone',
    source: 'handbooks of ACSM and NSCA (from memory)',
    grade: 'X',
    level: 'must',
  },
  'safe-dismount': {
    name: 'Coming down safely',
    when: [
      { because: 'the body hangs or is held off the floor', positions: ['hanging'] },
      { because: 'the body hangs or is held off the floor', signs: ['hangs'], kit: ['rings', 'bar', 'barbell'] },
      {
        because: 'the body is held off the floor',
        signs: ['feet-float', 'props-on-rings', 'turns-over'],
        kit: ['rings'],
        known: false,
      },
      {
        because: 'the instructor warns of it on rings or a bar',
        warned: ['safe-dismount'],
        kit: ['rings', 'bar'],
        unless: [
          { movements: ['step', 'squat', 'lunge'] },
          // the feet stay on the floor
          { names: ['row', 'press up', 'push up', 'fallout', 'roll out', 'stretch'] },
        ],
      },
      {
        because: 'the body is held off the floor',
        names: ['bar dip', 'ring dip', 'parallel bar', 'l sit', 'muscle up', 'ring support', 'handstand', 'lever'],
      },
    ],
    offer: 'Come down in control: feet to the floor or a box first, then let go. Do not drop.',
    concerns: 'everyone',
    source: 'common practice, no source',
    grade: 'P',
    level: 'must',
  },
} as const satisfies Record<string, Row>
