/**
 * What each feature of start-features.ts adds to the log of the odds that a name starts an exercise: in all speech, and in
 * speech with and without punctuation. Fitted by tests/fit/fit-starts.ts, not by hand.
 */
type Rows = readonly (readonly [weight: number, features: string])[]

export const START_WEIGHTS: Readonly<Record<'always' | 'marked' | 'plain', Rows>> = {
  always: [
    [1.0, 'own plural'],
    [0.8, 'since 2|strength 2'],
    [0.7, 'own last ending'],
    [0.6, 'before okay|before one the|strength 3'],
    [
      0.5,
      'again opens comma free|before add the|before and a|before now|brings by place|closes ends untaught|first cue focus|first of the best|here setup|known|next setup|since 1|source known|source part',
    ],
    [
      0.4,
      'before as the|before for the|brings ends taught|clause untaught busy|closes ends|gap before 3|here easier|here equipment|in breathing|in focus|known inside on|lately easier|muscle in turn|own first move|own words 2',
    ],
    [
      0.3,
      'again inside comma busy|alone taught busy|alone taught free|amount before|before call the|before hips|before into|before its the|before now the|before rest|before that|before the|before you|before your hips|behind and|behind instead|brought softly ends|clause closes ends|clause on untaught|described|gap behind 3|here breathing|in turn|last cue tempo|lately end|lately execution|led taught busy|muscle|others 3|own ing|own last kit|own worth 4|pointed at|role behind teach|role behind work|rule untaught free|said before|soon execution|source longer|worth 4',
    ],
    [
      0.2,
      'again inside ends free|again inside on free|again softly comma busy|again softly ends free|amount behind|before forward|before it is|before of the|before six|before thing is|before this is|behind again|behind at|behind on|behind up|brings ends|brings taught free|called|clause ends taught|clause softly ends|clause taught busy|closes|closes untaught busy|first cue harder|first cue range|first cue tempo|here fault|inside taught busy|inside untaught free|kind own|known brings ends|known clause on|known opens ends|known taught free|known untaught busy|last cue focus|last cue range|lately work|led inside comma|led inside ends|listed closes untaught|longer taught free|next breathing|often untaught free|opens untaught free|part clause ends|part taught busy|part untaught busy|place 2|role move|rule taught free|said again|turn again|turn to finish|words before 3|worth 3|worth 5',
    ],
    [
      0.1,
      'again brings comma busy|again clause ends busy|again opens ends free|again opens on free|alone opens comma|alone opens on|amount lately|amount soon|article|bare|before be|before first|before is|before it|before of|before on to|before onto|before then|before this|before up the|before well do|before with a|before with some|behind as|behind first|behind for|behind from|behind next|behind over|behind to|below the best|best|brings on untaught|clause brings ends|clause comma|clause comma taught|closed closes ends|closed taught busy|closes untaught free|cues behind 1|cues behind 4|cues behind 5|gap before 2|here range|in equipment|in harder|inside comma taught|known closes ends|known inside ends|known untaught free|last cue caution|last cue fault|lately caution|length 0|length 3|listed clause untaught|listed inside taught|listed softly taught|longer opens ends|next fault|next range|often taught busy|opens on|opens on untaught|opens taught free|own last take|own worth 2|passing before|role before none|role behind end|rule brings comma|rule inside ends|rule untaught busy|single brings taught|single clause taught|single closes untaught|single opens taught|single opens untaught|softly comma taught|softly ends|softly ends untaught|softly taught free|soon fault|soon setup|source rule|turn behind|turn first|turn next',
    ],
    [
      -0.1,
      'again brings comma free|again brings ends busy|again clause ends free|again closes ends busy|again inside on busy|again opens comma busy|back|before ^|before a little|before again|before by the|before do a|before down|before four|before got|before height|before in|before its a|before like a|before lovely|before my|before no|before one|before other one|before right|before seconds four|before seconds three|before thats a|before the wall|before there is|before toes|before two|before up|before wall|before weve got|before with|behind $|behind if|behind is|behind that|behind today|brings untaught busy|brought brings ends|brought inside ends|brought untaught busy|clause clause ends|clause clause on|clause closes comma|clause comma untaught|clause inside ends|closed closes on|closes ends taught|cues far 2|cues far 3|ending inside comma|ending taught busy|ending taught free|ends|first cue easier|first cue equipment|first cue execution|in fault|inside|inside comma|inside ends|inside ends untaught|inside taught free|known clause comma|known clause ends|known softly comma|known softly ends|last cue breathing|lately chat|led closes ends|led softly ends|led untaught busy|length 1|listed brings taught|listed brings untaught|listed clause taught|longer taught busy|muscle alone|muscle in stretches|next equipment|often inside comma|often inside on|often untaught busy|opens|opens clause|opens comma untaught|others 1|others 2|own first num|own last ill|own words 4|own worth 0|own worth 3|role before end|role before move|role chat|role teach|single clause untaught|single closes taught|single softly untaught|softly comma untaught|soon range|source clause|words before 1|words behind 0',
    ],
    [
      -0.2,
      'again opens on busy|before a|before and|before are|before back for|before do some|before do the|before eight|before in the|before is the|before just|before next one|before out|before ten|before then the|before three|before through the|before wont do|behind ,|behind here|behind off|behind time|behind yet|brings|brings taught busy|brought brings on|brought inside on|brought softly on|brought taught free|brought untaught free|clause clause comma|clause ends untaught|closes comma|closes comma untaught|cues behind 3|cues far 4|cues lately|ending inside ends|first cue caution|first cue fault|in caution|in execution|in setup|inside comma untaught|kind everyday|known brings on|known softly on|last cue easier|last cue setup|lately fault|lately teach|later of the best|led softly comma|led taught free|length 2|listed softly untaught|only one|opens ends|opens untaught busy|others 0|own last part|own worth -1|own worth 5|place 1|role before chat|role before teach|softly untaught busy|softly untaught free|soon breathing|soon easier|strength 1|turn then|turn time|worth 1',
    ],
    [
      -0.3,
      'again softly ends busy|alone opens ends|always|before finish with|before next|before on the|before some|before that is|before to the|behind are|brings ends untaught|brings on|clause on taught|clause untaught free|cues far 0|gap before 1|last cue harder|lately breathing|not today|own first kit|own first part|own words 3|passing behind|rule brings ends|since 3|single inside untaught|softly on|softly on untaught|source alone|source ending|source often|words before 2|words behind 1|words behind 2|words behind 3|worth 0',
    ],
    [
      -0.4,
      'again inside ends busy|alone untaught busy|alone untaught free|before to do|brings on taught|gap behind 2|in range|in tempo|often taught free|own last other|own worth 1|praise|role behind none|worth -1',
    ],
    [
      -0.5,
      'before and the|before so|cues behind 0|empty words|far below the best|first cue none|gap behind 0|in easier|inside untaught busy|own first place|own last num|own last place|rule taught busy|source brought',
    ],
    [-0.6, 'before do|gap behind 1|last cue equipment|lately move|own words 1|passing sentence|stronger elsewhere'],
    [-0.7, 'chat|only passing|own body|place 3|strength 0'],
    [-0.8, 'since 0'],
    [-0.9, 'kind thing|role work'],
    [-1.1, 'place 0'],
    [-1.4, 'gap before 0'],
  ],
  marked: [
    [0.8, 'next setup|own plural'],
    [0.6, 'strength 3'],
    [0.5, 'again opens comma free|behind $|brings by place|ends|next execution'],
    [
      0.4,
      'before okay|closes ends untaught|here easier|inside untaught free|known untaught busy|length 1|own last ending|role before work|since 1|strength 2|worth 3',
    ],
    [
      0.3,
      'again inside on free|alone opens comma|article|brings taught free|called|clause taught free|closes ends|cues behind 5|described|gap before 3|gap behind 3|here breathing|here equipment|in focus|in turn|muscle in turn|own first move|role behind chat|role behind teach|role chat|said before|softly ends|softly untaught busy|source known',
    ],
    [
      0.2,
      'again softly comma busy|alone taught busy|amount lately|amount soon|bare|before now|behind at|behind on|behind with|below the best|best|clause softly ends|closes untaught free|first cue execution|first cue harder|first cue range|here range|in tempo|known|known inside on|known opens ends|lately caution|lately end|led taught busy|listed clause taught|listed closes untaught|listed inside untaught|listed opens untaught|muscle|next fault|often untaught free|opens on taught|opens taught busy|own last kit|part untaught busy|rule taught free|single brings taught|single softly untaught|softly ends untaught|source part|source rule|turn behind|worth 4',
    ],
    [
      0.1,
      'again brings comma busy|again inside comma busy|again softly ends busy|again softly ends free|alone opens on|alone taught free|amount before|back|before for the|before into|before is the|before six|before the|before your|behind again|behind first|behind for|behind next|brings ends taught|brings untaught busy|brought inside ends|clause brings ends|clause clause ends|clause closes ends|clause comma|clause ends taught|clause untaught busy|closes|closes untaught busy|cues behind 1|cues behind 3|cues far 0|first cue easier|first cue focus|first of the best|here execution|here fault|in breathing|in harder|in no cue|inside ends untaught|inside on|inside taught busy|kind own|known brings ends|known inside comma|known softly comma|known softly ends|last cue caution|last cue easier|last cue fault|last cue focus|last cue range|late|lately easier|lately execution|led inside ends|led untaught busy|listed clause untaught|next breathing|opens comma|opens comma untaught|opens on|others 3|own last move|own words 2|own worth 0|own worth 5|place 2|pointed at|role move|said again|since 2|single inside taught|single opens taught|softly comma untaught|softly ends taught|softly taught free|soon easier|soon equipment|source clause|turn again|turn first|turn next|words before 1|words before 3|worth 5',
    ],
    [
      -0.1,
      'again brings ends free|again clause ends busy|again opens comma busy|before a|before and the|before eight|before for|before in the|before its a|before my|before out|before right|before ten|before that is|before thats the|before there is|before three|before to the|before two|before with the|behind if|behind to|brings ends untaught|brings on|brings on taught|brought brings comma|brought brings ends|brought softly on|brought taught busy|brought untaught busy|clause clause on|clause ends|clause ends untaught|clause on|clause on taught|clause taught busy|closes comma|closes comma untaught|closes ends taught|closes on|closes taught free|cues behind 2|cues far 3|cues lately|ending inside comma|ending taught free|in setup|inside|inside comma taught|inside ends taught|known brings on|known clause ends|known closes comma|known inside ends|known opens comma|known softly on|known untaught free|last cue execution|lately setup|lately teach|lately work|length 2|length 3|listed brings untaught|listed opens taught|listed softly taught|muscle alone|muscle in stretches|not today|often inside comma|often taught busy|often untaught busy|only one|opens comma taught|opens ends|opens ends taught|opens on untaught|others 0|others 1|others 2|own first num|own last num|own last part|own words 1|own words 3|own worth 4|part taught busy|place 3|role before none|role before teach|role behind work|rule brings ends|rule taught busy|since 3|single brings untaught|single closes taught|single inside untaught|single opens untaught|softly comma taught|softly on taught|softly untaught free|source ending|strength 1',
    ],
    [
      -0.2,
      'again opens on busy|alone untaught busy|alone untaught free|before do|before do the|before one|before so|before some|before then|before then the|behind ,|behind are|brings untaught free|brought taught free|clause clause comma|cues far 1|cues far 4|gap behind 0|gap behind 2|in easier|inside comma|kind thing|known taught busy|last cue breathing|last cue equipment|lately breathing|lately fault|led softly comma|led taught free|length 0|listed brings taught|next easier|often taught free|only passing|opens clause|opens taught free|own first kit|own first part|own first place|own last place|own words 4|own worth 2|praise|role before move|role behind end|role behind move|role behind none|role teach|since 0|single clause taught|single clause untaught|softly on|softly taught busy|soon breathing|soon fault|soon range|source alone|source often|turn then|words behind 1|words behind 2|words behind 3|worth -1|worth 2',
    ],
    [
      -0.3,
      'again inside ends free|always|brings taught busy|chat|cues behind 0|cues behind 4|empty words|first cue fault|first cue none|first cue setup|gap behind 1|in caution|in execution|in range|inside taught free|inside untaught busy|kind everyday|lately chat|listed inside taught|passing sentence|role work|stronger elsewhere|words before 2',
    ],
    [
      -0.4,
      'alone opens ends|brings|gap before 0|gap before 1|lately move|own last other|role before chat|source brought|worth 0',
    ],
    [-0.5, 'far below the best|own body|place 0'],
    [-0.8, 'strength 0'],
  ],
  plain: [
    [0.7, 'since 2'],
    [0.6, 'before one the'],
    [0.5, 'again inside ends free|here setup|own worth 4'],
    [
      0.4,
      'before hips|before your hips|brought softly ends|cues behind 4|first cue focus|first of the best|known|lately easier|lately work|listed inside taught|own last ending|own words 2|soon execution|soon fault|source known',
    ],
    [
      0.3,
      'before for the|before now|before rest|before the|brings ends taught|clause on untaught|clause taught busy|clause untaught busy|gap before 3|in breathing|last cue tempo|lately execution|listed softly taught|own ing|own plural|own worth 2|place 2|role behind end|role behind work|single clause taught|softly comma taught|source longer|source part|strength 2|strength 3',
    ],
    [
      0.2,
      'again softly ends free|alone taught free|amount before|amount behind|before into|before it is|before okay|before then|behind again|behind and|behind as|behind to|brings by place|brings ends|brings untaught free|brought taught busy|cues far 1|first cue setup|first cue tempo|gap behind 3|in focus|inside comma taught|inside taught busy|kind own|known clause on|known inside ends|known inside on|known taught free|known untaught free|last cue range|led inside comma|length 3|next easier|often taught busy|opens on untaught|opens taught free|opens untaught free|pointed at|role before none|role behind move|said again|single opens untaught|softly taught busy|turn again|turn to finish|words before 3|worth 2|worth 5',
    ],
    [
      0.1,
      'again brings ends free|again opens ends busy|again opens ends free|again opens on busy|again opens on free|alone opens ends|alone taught busy|before first|before is|before it|before of the|before on to|before six|before that|before thats the|before thing is|before up the|before with a|before with some|before with the|behind at|behind from|brings|brings comma untaught|brings on untaught|brings taught busy|brought brings comma|clause closes ends|clause comma taught|clause ends taught|clause on|closed taught busy|closes|closes comma taught|closes ends|closes ends untaught|closes on taught|closes taught free|closes untaught busy|cues behind 2|first cue fault|gap before 1|gap before 2|here fault|in caution|in equipment|in execution|in harder|inside comma|inside ends taught|inside taught free|known brings ends|known clause ends|known closes ends|known opens comma|known opens ends|known taught busy|last cue breathing|last cue execution|last cue focus|lately chat|lately end|lately setup|led inside ends|led taught busy|listed brings taught|listed opens taught|longer untaught free|muscle alone|next breathing|next range|opens clause|opens comma taught|opens ends taught|others 3|own first move|own last kit|own words 4|passing before|role before chat|role before move|role behind teach|role move|since 1|single clause untaught|single closes untaught|softly comma|softly on taught|softly taught free|soon breathing|soon range|worth 0',
    ],
    [
      -0.1,
      'again inside on busy|again inside on free|alone opens comma|article|before ^|before a|before again|before do a|before down|before eight|before forward|before four|before in the|before no|before some|before thats a|before there is|before three|before to the|before two|before up|before with|before your|behind $|behind are|behind that|behind with|below the best|best|brings ends untaught|brings taught free|brought brings on|brought inside ends|brought softly on|brought untaught busy|called|clause clause comma|clause closes comma|clause comma untaught|clause ends untaught|clause inside ends|closes comma untaught|closes untaught free|cues far 2|cues far 4|ending taught busy|ends|first cue caution|first cue equipment|here execution|in fault|in range|in setup|inside ends|inside untaught free|known brings on|known clause comma|known untaught busy|late|lately breathing|lately caution|led softly ends|led taught free|length 1|next fault|next setup|often inside on|only one|opens|opens comma|opens on taught|opens softly|others 0|others 1|own first kit|own last move|own last other|own last part|own worth 3|role before end|role before teach|single brings taught|single inside taught|softly ends|softly ends untaught|softly on|softly untaught free|source alone|source brought|source often|source rule|strength 1|words behind 0|words behind 1|words behind 3',
    ],
    [
      -0.2,
      'alone untaught busy|alone untaught free|always|back|before are|before on the|before that is|before to do|brings on|brings untaught busy|brought inside on|brought untaught free|clause clause ends|clause on taught|clause untaught free|cues behind 5|empty words|ending inside ends|first cue easier|gap behind 2|here range|inside comma untaught|inside ends untaught|known inside comma|known softly ends|last cue setup|lately move|lately teach|later of the best|led untaught busy|length 0|length 2|listed inside untaught|listed opens untaught|listed softly untaught|not today|often taught free|opens comma untaught|opens taught busy|opens untaught busy|own first part|own words 3|own worth -1|own worth 0|passing behind|passing sentence|place 1|praise|role behind chat|role behind none|rule brings ends|since 3|single inside untaught|single opens taught|softly comma untaught|softly on untaught|soon easier|source clause|source ending|worth -1',
    ],
    [
      -0.3,
      'before and|before do|before is the|before next|before so|brings on taught|chat|clause taught free|cues behind 0|cues lately|first cue execution|first cue none|gap behind 0|gap behind 1|in easier|inside untaught busy|last cue easier|last cue harder|led closes ends|listed clause taught|own body|own first place|own last place|own worth 5|rule taught busy|single softly untaught|stronger elsewhere|worth 1',
    ],
    [
      -0.4,
      'again inside ends busy|again softly ends busy|before and the|cues far 0|last cue equipment|next execution|own last num|own worth 1|role before work|softly untaught busy|strength 0',
    ],
    [-0.5, 'only passing|place 0|place 3'],
    [-0.6, 'in tempo|own words 1|role work|since 0'],
    [-0.7, 'kind thing'],
    [-1.1, 'gap before 0'],
  ],
}
