/**
 * How much the classes of the words at a gap, names and line ends speak for a comma or a full stop there, against no mark:
 * the natural log of odds, in halves. Pairs are class>class. Fitted together with break-words.ts.
 */

/** For each mark the weights with all that has them. */
export interface MarkWeights {
  comma: readonly (readonly [weight: number, of: string])[]
  stop: readonly (readonly [weight: number, of: string])[]
}

export const BREAK_CLASSES = {
  /** The classes of the words in front and behind. */
  classes: {
    comma: [
      [2, 'part>part preposition>verb pronoun>article verb>verb'],
      [1.5, 'ing>part part>article part>number preposition>never verb>never'],
      [
        1,
        `
          article>and article>contraction ing>and ing>manner ing>verb kit>article kit>number kit>part kit>verb
          manner>never manner>number number>because number>contraction number>ing number>never number>number
          number>opener number>preposition opener>article opener>auxiliary opener>contraction opener>opener
          opener>verb other>contraction other>number pronoun>part unit>and unit>contraction unit>number verb>and
        `,
      ],
      [
        0.5,
        `
          and>part contraction>manner ing>auxiliary kit>contraction manner>contraction manner>kit manner>part
          number>and number>article number>pronoun opener>and opener>other other>and other>article other>never
          other>opener other>verb part>pronoun part>verb preposition>part preposition>unit pronoun>because
          pronoun>number pronoun>pronoun unit>other unit>pronoun
        `,
      ],
      [
        -0.5,
        `
          and>article and>manner and>never and>number and>opener and>preposition and>pronoun article>auxiliary
          article>because article>opener article>verb auxiliary>auxiliary auxiliary>kit auxiliary>manner
          auxiliary>number auxiliary>part auxiliary>pronoun auxiliary>verb because>auxiliary because>manner
          contraction>auxiliary contraction>ing contraction>number contraction>preposition contraction>verb
          kit>manner kit>preposition kit>pronoun ly>other ly>preposition manner>auxiliary manner>ing manner>manner
          manner>other manner>preposition manner>unit never>article never>auxiliary never>verb number>kit
          number>manner number>verb opener>because opener>ing opener>number opener>part opener>pronoun opener>unit
          other>kit other>manner other>part other>unit part>ing part>kit part>manner part>never part>other part>unit
          preposition>and preposition>auxiliary preposition>because preposition>opener preposition>other
          preposition>pronoun pronoun>ing pronoun>manner pronoun>never pronoun>opener unit>article unit>manner
          unit>part unit>verb verb>article verb>auxiliary verb>ing verb>number verb>unit
        `,
      ],
      [
        -1,
        `
          and>and and>contraction and>other article>ing article>kit article>manner article>unit auxiliary>ing
          auxiliary>never auxiliary>preposition because>article because>pronoun contraction>article
          contraction>never contraction>opener ing>article ing>contraction ing>number ing>other kit>other kit>unit
          manner>article manner>because manner>pronoun never>other number>part part>and part>auxiliary part>because
          preposition>article preposition>ing preposition>ly preposition>manner preposition>preposition
          pronoun>auxiliary pronoun>other pronoun>verb verb>because verb>other
        `,
      ],
      [
        -1.5,
        `
          and>verb article>other article>part auxiliary>article auxiliary>other contraction>other kit>because
          manner>opener other>auxiliary other>ing other>preposition part>contraction part>preposition
          unit>preposition verb>manner verb>opener
        `,
      ],
      [-2, 'because>contraction ing>preposition number>unit verb>preposition'],
    ],
    stop: [
      [2, 'part>number'],
      [1.5, 'ing>number manner>number number>contraction preposition>opener preposition>verb unit>part verb>kit'],
      [
        1,
        `
          article>and ing>because ing>verb kit>article kit>part kit>verb manner>contraction manner>pronoun
          number>and number>manner number>pronoun opener>verb other>contraction other>verb part>contraction
          preposition>kit pronoun>number pronoun>part unit>never verb>never verb>number verb>verb
        `,
      ],
      [
        0.5,
        `
          article>pronoun auxiliary>never kit>contraction kit>number kit>opener ly>other ly>preposition
          manner>article manner>auxiliary manner>never manner>opener number>ing number>verb opener>because
          opener>contraction opener>ing opener>number opener>part opener>pronoun other>never other>number
          other>opener other>part other>unit part>article part>part part>pronoun part>verb preposition>contraction
          pronoun>and unit>because unit>kit unit>pronoun unit>verb verb>and verb>part verb>unit
        `,
      ],
      [
        -0.5,
        `
          and>and and>article and>because and>never and>opener and>other and>part and>preposition article>article
          article>auxiliary article>ing article>preposition article>verb auxiliary>auxiliary auxiliary>ing
          auxiliary>kit auxiliary>manner because>article because>because because>other because>verb
          contraction>auxiliary contraction>never contraction>number contraction>pronoun ing>article ing>other
          ing>part kit>preposition kit>unit ly>verb manner>and manner>because manner>kit manner>part manner>verb
          never>auxiliary never>other number>auxiliary number>never number>number number>preposition opener>article
          opener>kit opener>never opener>preposition opener>unit other>and other>other other>pronoun part>because
          part>ing preposition>auxiliary preposition>other preposition>pronoun pronoun>because pronoun>unit
          pronoun>verb unit>contraction unit>number unit>opener unit>unit verb>auxiliary verb>because verb>ing
          verb>ly verb>manner
        `,
      ],
      [
        -1,
        `
          and>contraction and>number and>pronoun article>number article>opener article>unit auxiliary>number
          auxiliary>other auxiliary>preposition auxiliary>verb contraction>ing contraction>other contraction>verb
          ing>contraction ing>manner ing>preposition kit>because manner>manner number>article opener>auxiliary
          other>ly other>preposition part>and part>manner part>never part>other preposition>and preposition>article
          preposition>ing preposition>ly preposition>manner preposition>preposition pronoun>ing pronoun>never
          pronoun>other pronoun>preposition unit>and unit>article verb>article verb>other verb>pronoun
        `,
      ],
      [
        -1.5,
        `
          article>kit article>other article>part because>contraction because>pronoun contraction>manner
          contraction>opener manner>preposition never>verb other>ing part>preposition preposition>because
          pronoun>auxiliary unit>preposition verb>preposition
        `,
      ],
      [-2, 'and>verb'],
      [-2.5, 'kit>and number>unit'],
    ],
  },
  /** Names, line ends, and words since the last mark. */
  other: {
    comma: [
      [1.5, 'name-starts'],
      [0.5, 'may-open-here name-ends placed'],
      [-0.5, 'since-8'],
      [-1, 'goes-on line since-2 since-3 since-4 since-5 since-6 since-7 since-9'],
      [-2, 'since-1'],
      [-2.5, 'name-goes-on'],
    ],
    stop: [
      [3, 'line'],
      [1.5, 'placed'],
      [1, 'may-open name-starts'],
      [0.5, 'name-ends opens'],
      [-0.5, 'may-open-here since-5 since-7 since-9'],
      [-1, 'goes-on since-2 since-4 since-6'],
      [-1.5, 'since-3'],
      [-2, 'since-1'],
      [-2.5, 'name-goes-on'],
    ],
  },
} as const satisfies Record<string, MarkWeights>
