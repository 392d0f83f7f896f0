/** Required cautions that follow from how hard and where the work is. */
import type { Hazard } from './hazards.ts'

type Row = Omit<Hazard, 'slug'>

/** Work that stays where it is. */
const GROUNDED = { positions: ['seated', 'supine', 'prone', 'side-lying', 'hanging'] } as const

export const EFFORT_HAZARDS = {
  'impact-landing': {
    name: 'Landing',
    when: [
      {
        because: 'the feet land again and again',
        movements: ['jump'],
        positions: ['standing', 'single-leg'],
        unless: [
          {
            signs: ['running-class'],
            names: ['skip', 'skipping', 'butt kick', 'bum kick', 'flick', 'ankling', 'a drill', 'b drill'],
          },
          { positions: ['hanging'] },
          { kit: ['rings', 'bar'], known: false },
        ],
      },
    ],
    offer: 'Land softly with bent knees. If your knees, shins or pelvic floor do not like it, step instead of jumping.',
    concerns: 'everyone, above all with joints that complain or pelvic floor trouble',
    source: 'guidance of a strength and conditioning association, second-hand',
    grade: 'X',
    level: 'must',
  },
  'overexertion-stop': {
    name: 'Stop at warning signs',
    when: [
      {
        because: 'the work is as hard as it goes',
        signs: ['all-out'],
        movements: ['jump', 'run', 'row-machine', 'ballistic', 'carry'],
        unless: [{ names: ['stride', 'drill', 'skip', 'wall'] }],
      },
      {
        because: 'hard intervals leave little rest',
        schemes: ['circuit', 'interval', 'amrap'],
        movements: ['jump', 'run', 'row-machine'],
        unless: [{ signs: ['warm-up'] }, { names: ['easy', 'paddle', 'walk', 'stride', 'skip', 'drill'] }],
      },
      {
        because: 'as many as possible is as hard as it goes',
        schemes: ['amrap'],
        movements: ['jump', 'run', 'row-machine', 'swing-kit', 'ballistic', 'carry'],
      },
      {
        because: 'the work is as hard as it goes',
        names: [
          'sprint',
          'burpee',
          'rowing interval',
          'metre repeat',
          'five hundred',
          '500',
          'hill rep',
          'hill repeat',
          'battle rope',
          'sled push',
          'plate push',
          'shuttle run',
          'running interval',
        ],
        unless: [{ names: ['sprint start', 'sprint drill', 'wall sprint'] }],
      },
      {
        because: 'the class works to its limit',
        toMax: true,
        movements: ['jump', 'run', 'row-machine', 'swing-kit', 'ballistic'],
      },
      {
        because: 'hard repeats are as hard as it goes',
        signs: ['outdoors', 'running-class'],
        names: ['hill', 'repeat', '200', '300', '400', '600', '800'],
        unless: [{ names: ['walk', 'march', 'easy', 'jog'] }],
      },
      {
        because: 'the instructor warns of it in hard running',
        signs: ['outdoors', 'running-class'],
        warned: ['overexertion-stop'],
        known: false,
        also: { signs: ['runs-hard', 'all-out'] },
        unless: [GROUNDED],
      },
    ],
    offer:
      'Stop and rest if you feel faint, sick, have chest pain or cannot get a word out. If it does not pass quickly, get help.',
    concerns: 'everyone',
    source: 'handbooks of ACSM and AHA (from memory)',
    grade: 'G',
    level: 'must',
  },
  'warm-first': {
    name: 'Warm up first',
    when: [
      {
        because: 'fast running needs warm legs',
        movements: ['run'],
        names: [
          'sprint',
          'stride',
          'strider',
          'pick up',
          'hill rep',
          'hill repeat',
          'flying',
          'acceleration',
          'running interval',
          'fast run',
          'tempo run',
          'build up',
          '200',
          '400',
          'two hundred',
          'four hundred',
          'fartlek',
          'shuttle run',
        ],
        unless: [{ names: ['wall'] }, { kit: ['barbell', 'dumbbell', 'kettlebell', 'rowing machine'] }],
      },
      {
        because: 'fast running needs warm legs',
        movements: ['run'],
        signs: ['fast', 'all-out'],
        also: { positions: ['standing'] },
        unless: [
          { movements: ['jump'] },
          { names: ['fast feet', 'skip', 'climber', 'easy', 'high knee', 'drill', 'ankling', 'carioca', 'shuffle'] },
          { kit: ['rowing machine'] },
        ],
      },
      {
        because: 'fast running needs warm legs',
        signs: ['outdoors', 'running-class'],
        names: ['hill', 'repeat', '100', '200', '300', '400', '600', '800'],
        unless: [{ names: ['walk', 'march', 'easy', 'jog'] }],
      },
      {
        because: 'fast running needs warm legs',
        signs: ['outdoors', 'running-class'],
        known: false,
        movements: ['run'],
        also: { signs: ['runs-hard', 'all-out'] },
        unless: [GROUNDED, { movements: ['jump'] }],
      },
      {
        because: 'the instructor warns of cold muscles in running',
        signs: ['outdoors', 'running-class'],
        warned: ['warm-first'],
        known: false,
        unless: [GROUNDED],
      },
    ],
    offer: 'Do this only when you are well warmed up, and build up the speed over the first few.',
    concerns: 'everyone',
    source: 'Garber et al., Med Sci Sports Exerc 43(7):1334-1359, 2011 (gradual build-up); the rest common practice',
    grade: 'G',
    level: 'must',
  },
  'surface-check': {
    name: 'Ground underfoot',
    when: [
      {
        because: 'the class moves over open ground',
        movements: ['run', 'jump', 'carry'],
        signs: ['outdoors', 'running-class'],
        unless: [
          { signs: ['indoors'] },
          { kit: ['treadmill', 'wall', 'rowing machine'] },
          { positions: ['seated', 'supine'] },
        ],
      },
      {
        because: 'the class moves over open ground',
        names: [
          'walking lunge',
          'lunge walk',
          'march',
          'shuffle',
          'carioca',
          'grapevine',
          'walk',
          'walking',
          'skip',
          'drill',
        ],
        signs: ['outdoors', 'running-class'],
        unless: [
          { signs: ['indoors'] },
          { kit: ['treadmill', 'wall', 'rowing machine'] },
          { positions: ['seated', 'supine'] },
        ],
      },
      {
        because: 'the class moves over open ground',
        signs: ['outdoors', 'running-class'],
        names: ['crawl', 'bear walk', 'jog', 'run', 'bound', 'hill', 'repeat', 'stride'],
        unless: [{ signs: ['indoors'] }, { kit: ['treadmill', 'rowing machine'] }],
      },
      {
        because: 'the class moves over open ground',
        signs: ['outdoors', 'running-class'],
        known: false,
        also: { signs: ['travels', 'runs'] },
        unless: [{ signs: ['indoors'] }, { kit: ['treadmill', 'wall', 'rowing machine', 'rings'] }, GROUNDED],
      },
      {
        because: 'a drill over open ground',
        signs: ['running-class'],
        names: ['lunge'],
        unless: [{ names: ['reverse', 'back', 'static', 'split', 'side'] }, { signs: ['indoors'] }],
      },
      {
        because: 'the instructor warns of it where the class moves along',
        warned: ['surface-check'],
        names: ['walk', 'walking', 'march', 'jog', 'run', 'crawl', 'lunge', 'skip'],
        unless: [GROUNDED],
      },
      {
        because: 'the instructor warns of it outdoors',
        signs: ['outdoors', 'running-class'],
        warned: ['surface-check'],
        unless: [{ signs: ['indoors'] }, GROUNDED, { names: ['swing', 'stretch', 'raise'] }],
      },
    ],
    offer: 'Look over the ground first: dry, level, no holes, roots or kerbs on your way.',
    concerns: 'everyone',
    source: 'common practice, no source',
    grade: 'P',
    level: 'must',
  },
} as const satisfies Record<string, Row>
