/**
 * How much the classes of the two words in front of a gap or behind it speak for a comma or a full stop there.
 * Fitted together with break-words.ts, in the same measure.
 */
import type { MarkWeights } from './break-classes.ts'

export const BREAK_PAIRS = {
  /** The classes of the two words behind. */
  opening: {
    comma: [
      [2.5, 'article>auxiliary'],
      [2, 'because>because contraction>manner'],
      [1.5, 'contraction>never never>article opener>unit'],
      [
        1,
        `
          and>because and>ing contraction>opener manner>opener never>verb number>opener part>manner part>preposition
          part>unit pronoun>auxiliary pronoun>never
        `,
      ],
      [
        0.5,
        `
          and>contraction and>opener and>pronoun and>unit auxiliary>opener auxiliary>pronoun because>verb ing>number
          kit>preposition ly>other ly>verb never>other number>and number>article number>number number>preposition
          number>unit number>verb opener>auxiliary opener>contraction opener>part part>ing part>never pronoun>manner
          pronoun>other pronoun>verb unit>pronoun verb>and verb>article verb>kit verb>number verb>other verb>unit
        `,
      ],
      [
        -0.5,
        `
          and>manner and>number and>other article>and article>article article>because article>other article>verb
          auxiliary>ing auxiliary>manner auxiliary>never auxiliary>part because>auxiliary because>ing
          contraction>auxiliary contraction>pronoun ing>article ing>auxiliary ing>because ing>contraction ing>part
          ing>preposition ing>pronoun ing>verb kit>and kit>contraction kit>number kit>unit kit>verb manner>and
          manner>article manner>ing manner>never manner>preposition manner>unit never>auxiliary never>ing
          number>because number>never number>pronoun opener>and opener>because opener>opener opener>preposition
          other>auxiliary other>manner other>number other>other other>part other>preposition other>pronoun
          part>because part>contraction part>number part>pronoun preposition>auxiliary preposition>ing
          preposition>kit preposition>ly preposition>part preposition>unit pronoun>and pronoun>because pronoun>ing
          pronoun>number pronoun>opener pronoun>part pronoun>unit unit>article unit>contraction unit>manner
          unit>other unit>part unit>unit unit>verb verb>because verb>contraction verb>ly verb>opener verb>verb
        `,
      ],
      [
        -1,
        `
          and>auxiliary and>kit article>kit article>part auxiliary>auxiliary auxiliary>preposition auxiliary>verb
          because>article because>contraction because>manner ing>and ing>manner ing>other kit>other ly>preposition
          manner>contraction manner>manner manner>other manner>verb opener>never opener>pronoun other>end other>kit
          other>ly other>never other>opener part>auxiliary part>opener part>verb preposition>and
          preposition>contraction preposition>never preposition>number preposition>pronoun pronoun>article
          pronoun>contraction pronoun>end pronoun>preposition unit>auxiliary unit>never unit>number unit>opener
          unit>preposition
        `,
      ],
      [
        -1.5,
        `
          article>preposition auxiliary>other manner>because other>and other>because other>contraction part>and
          preposition>article preposition>other
        `,
      ],
      [-2, 'other>verb preposition>verb'],
    ],
    stop: [
      [1.5, 'and>because and>opener article>auxiliary contraction>article kit>preposition never>verb verb>article'],
      [
        1,
        `
          and>preposition auxiliary>never because>ing contraction>pronoun never>article number>and
          number>contraction number>number number>preposition number>unit opener>number opener>opener opener>other
          opener>verb other>unit part>never pronoun>auxiliary pronoun>never pronoun>unit unit>never verb>number
        `,
      ],
      [
        0.5,
        `
          and>ing article>article article>manner auxiliary>manner auxiliary>pronoun because>number
          contraction>auxiliary contraction>number ing>contraction ing>pronoun kit>number kit>pronoun manner>article
          manner>part never>other number>kit number>manner number>pronoun number>verb opener>contraction
          opener>never opener>unit other>ing other>ly part>auxiliary part>contraction part>manner part>preposition
          part>unit preposition>because preposition>manner pronoun>contraction pronoun>other unit>number verb>ly
          verb>manner verb>pronoun
        `,
      ],
      [
        -0.5,
        `
          and>auxiliary and>manner and>unit and>verb article>and article>contraction article>ing article>number
          article>other article>unit auxiliary>ing auxiliary>opener because>because because>contraction
          contraction>ing contraction>never contraction>other ing>because ing>manner ing>part ing>verb
          kit>contraction kit>other ly>other ly>preposition ly>verb manner>and manner>because manner>contraction
          manner>ing manner>kit manner>never manner>other manner>pronoun number>other number>part opener>and
          opener>manner opener>preposition opener>pronoun other>number other>other part>and part>ing part>part
          part>pronoun preposition>and preposition>auxiliary preposition>ly preposition>number preposition>part
          preposition>unit pronoun>and pronoun>because pronoun>end pronoun>ing pronoun>number pronoun>part
          pronoun>pronoun pronoun>verb unit>contraction unit>kit unit>opener unit>unit verb>and verb>opener
          verb>part verb>unit
        `,
      ],
      [
        -1,
        `
          and>never and>other and>part and>pronoun article>part article>preposition auxiliary>auxiliary
          auxiliary>number auxiliary>verb because>pronoun because>verb ing>and ing>article ing>auxiliary ing>number
          ing>other ing>preposition kit>and manner>auxiliary manner>unit never>preposition number>auxiliary
          number>never opener>because other>contraction other>verb part>because preposition>kit preposition>never
          preposition>opener preposition>pronoun preposition>verb pronoun>article unit>because unit>other
          unit>pronoun unit>verb verb>auxiliary verb>contraction verb>kit verb>verb
        `,
      ],
      [
        -1.5,
        `
          article>kit article>opener auxiliary>preposition manner>verb never>auxiliary other>and other>manner
          other>never other>preposition part>number preposition>other pronoun>preposition
        `,
      ],
      [-2, 'auxiliary>other other>because part>opener preposition>article unit>and'],
    ],
  },
  /** The classes of the two words in front. */
  closing: {
    comma: [
      [2, 'contraction>pronoun verb>unit'],
      [1.5, 'contraction>opener'],
      [
        1,
        `
          article>unit ing>pronoun kit>manner manner>number manner>part number>kit number>number number>unit
          opener>article opener>kit opener>unit other>never other>opener part>manner preposition>pronoun unit>manner
          verb>auxiliary verb>manner
        `,
      ],
      [
        0.5,
        `
          and>because and>kit and>part and>preposition article>because article>ing article>verb auxiliary>manner
          auxiliary>pronoun ing>number kit>other kit>preposition ly>other manner>kit manner>manner never>auxiliary
          number>article number>part opener>opener opener>other other>ly other>number other>pronoun part>number
          part>opener preposition>ing preposition>kit preposition>manner preposition>number pronoun>ing
          pronoun>opener pronoun>pronoun pronoun>verb unit>number verb>ing verb>verb
        `,
      ],
      [
        -0.5,
        `
          and>and and>ing and>manner and>never and>other and>unit article>article article>number article>opener
          article>other auxiliary>auxiliary auxiliary>ing auxiliary>never auxiliary>opener auxiliary>part
          because>auxiliary because>ing because>manner because>verb contraction>article contraction>auxiliary
          contraction>ing contraction>manner contraction>never contraction>number kit>and kit>because kit>kit
          kit>number kit>pronoun kit>unit kit>verb ly>preposition manner>and manner>article manner>auxiliary
          manner>contraction manner>opener manner>other manner>preposition manner>pronoun never>preposition
          number>because number>contraction number>never number>pronoun number>verb opener>because
          opener>contraction opener>ing opener>number other>because other>kit other>verb part>article part>because
          part>kit part>never part>preposition preposition>auxiliary preposition>ly preposition>never
          preposition>part pronoun>and pronoun>article pronoun>auxiliary pronoun>because pronoun>contraction
          pronoun>never pronoun>part unit>and unit>article unit>because unit>contraction unit>kit unit>opener
          unit>other unit>part unit>pronoun unit>unit unit>verb verb>and verb>because verb>contraction verb>kit
          verb>never verb>number verb>other
        `,
      ],
      [
        -1,
        `
          and>article and>contraction and>pronoun article>auxiliary article>preposition auxiliary>kit
          because>article because>number because>other contraction>other contraction>preposition contraction>unit
          contraction>verb ing>preposition ing>verb manner>because manner>unit never>verb number>and
          number>auxiliary other>article other>contraction other>ing other>manner other>part part>and part>auxiliary
          part>part part>pronoun part>unit preposition>and preposition>article preposition>because
          preposition>contraction preposition>preposition preposition>verb pronoun>other verb>opener verb>part
        `,
      ],
      [
        -1.5,
        `
          article>manner auxiliary>article auxiliary>preposition because>contraction kit>part manner>verb never>ing
          other>and other>auxiliary verb>article verb>pronoun
        `,
      ],
      [-2, 'and>verb because>pronoun number>manner pronoun>manner'],
    ],
    stop: [
      [2, 'opener>manner'],
      [1.5, 'kit>opener other>opener pronoun>number'],
      [
        1,
        `
          and>preposition contraction>pronoun manner>number manner>part never>ing number>opener opener>ing
          opener>kit other>pronoun other>unit part>manner unit>opener verb>ly verb>opener
        `,
      ],
      [
        0.5,
        `
          and>number and>opener and>unit article>unit article>verb auxiliary>auxiliary auxiliary>part
          auxiliary>pronoun contraction>other ing>number ing>other kit>manner kit>other manner>article manner>ing
          manner>manner manner>unit never>other number>manner number>number number>unit part>auxiliary
          preposition>ly preposition>opener preposition>pronoun pronoun>verb unit>part verb>manner
        `,
      ],
      [
        -0.5,
        `
          and>and and>because and>ing and>kit and>never and>verb article>article article>auxiliary article>because
          article>number article>other auxiliary>other because>article because>auxiliary because>ing because>manner
          contraction>ing contraction>never contraction>opener contraction>unit ing>contraction kit>article
          kit>because kit>unit ly>other ly>preposition ly>verb manner>and manner>auxiliary manner>because
          manner>contraction manner>pronoun never>article never>preposition never>verb number>article
          number>contraction number>kit number>other number>pronoun number>verb opener>and opener>article
          opener>because opener>contraction opener>number opener>opener opener>pronoun other>auxiliary other>kit
          other>never part>article part>because part>contraction part>ing part>never part>part part>preposition
          part>pronoun preposition>unit preposition>verb pronoun>and pronoun>auxiliary pronoun>because
          pronoun>contraction pronoun>never pronoun>pronoun unit>and unit>contraction unit>kit unit>number
          unit>pronoun verb>and verb>because verb>contraction verb>kit verb>other verb>preposition verb>pronoun
          verb>unit
        `,
      ],
      [
        -1,
        `
          and>article and>contraction and>pronoun article>ing article>preposition auxiliary>article auxiliary>manner
          auxiliary>opener because>contraction because>other contraction>auxiliary contraction>preposition
          contraction>verb kit>and kit>part kit>preposition manner>opener manner>verb never>auxiliary number>and
          number>auxiliary number>part number>preposition opener>part other>article other>contraction other>ing
          other>verb part>and part>number preposition>and preposition>article preposition>because
          preposition>contraction preposition>preposition pronoun>manner pronoun>other unit>preposition unit>verb
          verb>ing verb>verb
        `,
      ],
      [
        -1.5,
        `
          article>manner article>opener auxiliary>number because>number contraction>article end>opener other>and
          other>because verb>article
        `,
      ],
      [-2, 'because>pronoun'],
    ],
  },
} as const satisfies Record<string, MarkWeights>
