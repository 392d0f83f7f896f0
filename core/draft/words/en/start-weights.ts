/**
 * What each feature of start-features.ts adds to the log of the odds that a name starts an exercise: in all speech, and in
 * speech with and without punctuation. Fitted by tests/fit/fit-starts.ts, not by hand.
 */
type Rows = readonly (readonly [weight: number, features: string])[]

export const START_WEIGHTS: Readonly<Record<'always' | 'marked' | 'plain', Rows>> = {
  always: [
    [1.1, 'before and your|before now the|here easier|own last ending'],
    [1.0, 'before about the|before this is'],
    [0.9, 'before it a'],
    [0.8, 'before it|behind a|called'],
    [
      0.7,
      'before did the|before its the|before okay|before one the|before round two|before that|before those|before youre a|behind from|brought softly comma|source longer',
    ],
    [
      0.6,
      'before add the|before call the|before for the|before rest|described|next setup|part taught busy|turn behind',
    ],
    [
      0.5,
      'before got the|before into|before its a|before set of|before your hips|behind at|behind instead|clause brings ends|here setup|in breathing|known clause on|known inside on|muscle in turn|own plural|part untaught busy|role move|rule untaught free|since 2|single closes untaught',
    ],
    [
      0.4,
      'again inside on free|again opens comma free|again opens ends free|again softly comma free|again softly ends free|before back to|before call it|before go|before hips|before now|before of|before onto your|before start with|before thats your|before thing|before thing is|before with a|clause softly ends|closes ends|cues behind 5|here breathing|known closes ends|known untaught busy|last cue focus|led inside comma|listed softly taught|rule brings comma|said again|strength 1|strength 2|strength 3',
    ],
    [
      0.3,
      'again inside comma busy|again softly on free|alone taught free|back|before hand|before six|before thats the|before the|before these are|before to that|before two|before up|before you|behind again|behind down|behind is|behind the|behind up|behind while|below the best|brings by place|brings ends taught|brings on untaught|clause inside comma|clause on untaught|closes ends untaught|closes untaught busy|cues behind 4|first cue fault|first cue focus|first of the best|in turn|known brings ends|lately end|lately execution|longer opens ends|longer taught free|muscle alone|opens on untaught|own ing|own words 2|part clause comma|role before none|since 1|softly comma untaught|turn again|worth 5',
    ],
    [
      0.2,
      'again clause ends free|again clause on free|again inside ends free|again opens comma busy|amount before|before about|before alright|before and|before and a|before as the|before be|before forward|before in a|before is your|before off|before one|before this|before today|before well do|before with|before with the|before you go|behind and|behind each|brings ends|brings taught free|brings untaught free|brought brings comma|closed closes ends|closed untaught busy|closes ends taught|gap before 3|here fault|in no cue|inside comma untaught|known|lately work|led softly ends|next equipment|often inside ends|opens on|opens untaught free|rule inside on|rule taught free|said before|since 3|softly comma|source known|source part|turn to finish|words before 3',
    ],
    [
      0.1,
      'again brings ends busy|again brings on busy|again closes comma free|again closes on busy|again inside comma free|again opens ends busy|alone untaught free|amount soon|article|before back for|before called a|before first one|before for a|before is|before is the|before it is|before on to|before onto|before pair|before then|before then some|before these|before time|before up the|behind are|behind because|behind before|behind but|behind next|behind over|behind when|brought inside ends|brought taught busy|clause comma taught|clause taught busy|clause taught free|closed taught busy|closes|closes comma taught|closes taught busy|cues behind 2|first cue breathing|first cue equipment|first cue execution|first cue tempo|gap before 2|gap behind 3|here execution|inside untaught free|known clause comma|known clause ends|known closes comma|known inside comma|known inside ends|known opens comma|known opens ends|known taught busy|known taught free|known untaught free|last cue breathing|last cue setup|lately caution|lately chat|lately easier|listed clause untaught|listed closes taught|listed inside taught|listed softly untaught|longer clause comma|longer untaught busy|longer untaught free|muscle|next execution|next fault|next range|often untaught free|opens ends taught|opens softly|own first kit|own first move|own last take|own worth -1|own worth 4|part clause ends|part softly ends|place 2|pointed at|role before move|role behind end|role chat|rule brings on|single brings taught|single brings untaught|single opens taught|single opens untaught|softly ends|softly ends taught|softly taught free|turn next|worth 3',
    ],
    [
      -0.1,
      'again closes comma busy|again inside on busy|again opens on busy|alone taught busy|always|before 3|before 4|before 8|before a|before a good|before a little|before and no|before and some|before at the|before back|before back the|before chest|before circuit|before couple of|before do some|before down|before first|before for|before from your|before going to|before got|before have a|before height|before i do|before into a|before it the|before its your|before just the|before little|before not doing|before not the|before off the|before on a|before ones the|before or|before or your|before other one|before over your|before seconds four|before skip the|before some|before station|before support|before tall|before to your|before toes|before together one|before use a|before wall|before well|before weve got|before your chest|before your toes|behind ,|behind either|behind here|behind time|behind to|behind yet|behind you|brings|brings comma untaught|brought inside comma|brought untaught busy|clause closes comma|clause ends|clause ends taught|closed closes on|closes comma untaught|cues far 2|ending inside comma|ending untaught free|first cue setup|in execution|in focus|inside|inside ends|inside taught free|known brings comma|known softly ends|known softly on|last cue caution|last cue easier|led brings ends|led inside ends|led untaught busy|length 0|length 2|length 3|listed|listed brings taught|listed clause taught|listed inside untaught|listed opens taught|longer clause ends|often clause on|often softly on|often untaught busy|only one|only passing|opens clause|opens comma|opens ends untaught|opens on taught|opens untaught busy|others 0|others 1|own first other|own words 3|own worth 2|part softly comma|passing before|role before chat|role before teach|rule inside ends|rule untaught busy|single clause taught|softly ends untaught|softly untaught busy|soon execution|soon range|turn time|words before 1|words behind 2|worth 0|worth 2',
    ],
    [
      -0.2,
      'again clause on busy|again closes ends busy|again inside ends busy|again opens on free|alone opens ends|alone opens on|before again|before arms|before as your|before bit of|before called|before doing the|before four|before from the|before front|before have the|before last one|before metres|before no|before over a|before push the|before seconds three|before theres the|before through the|before to a|before use the|before with your|before wont do|behind go|behind if|behind in|behind now|behind please|brings taught busy|brought taught free|chat|clause comma|clause softly comma|closed untaught free|closes taught free|cues behind 1|cues far 1|far below the best|first cue easier|here range|in easier|in setup|inside comma taught|inside ends untaught|inside on|known brings on|known softly comma|late|listed brings untaught|listed opens untaught|muscle in stretches|often inside comma|opens comma taught|own body|own first ill|own first num|own first part|own last ill|own last other|own worth 0|place 3|praise|role behind chat|rule softly ends|single clause untaught|single closes taught|single inside taught|single inside untaught|single softly untaught|soon fault|source clause|stronger elsewhere|turn now|words before 0|words behind 1',
    ],
    [
      -0.3,
      'again clause comma busy|again clause ends busy|again closes ends free|again softly comma busy|before and the|before at your|before doing|before doing a|before eight|before five|before in|before like a|before next|before not a|before ten|before thats a|before there is|before theres a|before your|behind away|brings ends untaught|brings untaught busy|brought brings ends|brought brings on|brought softly on|clause comma untaught|clause on taught|clause untaught free|ending inside ends|ending taught free|first cue range|gap before 1|gap behind 0|gap behind 2|in equipment|in harder|inside on untaught|inside untaught busy|lately move|led taught free|listed closes untaught|longer opens comma|next easier|often taught busy|own worth 3|part untaught free|role behind move|role teach|softly on|softly on untaught|soon easier|source alone|source often|words before 2',
    ],
    [
      -0.4,
      'again brings comma free|again softly ends busy|before by the|before do your|before finish with|before lovely|before my|before seconds|before three|behind it|behind just|behind with|brings on|brought inside on|brought untaught free|clause clause on|closes on|closes on taught|cues far 0|gap behind 1|in fault|known closes on|last cue equipment|later of the best|led closes ends|often inside on|own words 1|source brought|strength 0|words behind 3|worth -1',
    ],
    [
      -0.5,
      'alone untaught busy|before do a|before into your|before just|before then the|before to do|behind today|clause clause comma|clause inside ends|cues behind 0|first cue none|in tempo|last cue harder|lately breathing|often taught free|own words 4|part opens comma|passing sentence|rule taught busy|source ending',
    ],
    [-0.6, 'before an|before do the|before good|in caution|own last kit|own worth 1|part taught free|rule brings ends'],
    [
      -0.7,
      'before do|before in the|before right|before that a|behind that|empty words|own last num|role work|turn then',
    ],
    [
      -0.8,
      'again closes on free|before that is|brings on taught|in range|kind thing|not today|own last place|passing behind',
    ],
    [-0.9, 'role behind none'],
    [-1.0, 'before to the|own first place'],
    [-1.1, 'since 0'],
    [-1.2, 'gap before 0|place 0'],
  ],
  marked: [
    [0.8, 'next setup'],
    [0.7, 'again opens comma free|called|here easier|here fault|own last ending|own plural'],
    [0.6, 'again opens ends free|before now the|before okay|brings by place|closes ends untaught|role move'],
    [
      0.5,
      'again inside comma free|before its the|behind at|closes ends|described|here breathing|next breathing|strength 3',
    ],
    [
      0.4,
      'again inside on free|again softly ends free|before go|before it|behind from|behind on|below the best|clause inside comma|lately execution|led untaught busy|often untaught free|own first move|part clause comma',
    ],
    [
      0.3,
      'again clause ends free|article|back|before for the|before into|before is the|before on the|before six|before the|clause brings ends|closes untaught free|first cue focus|first cue tempo|here range|in turn|known brings ends|known clause ends|known softly ends|known untaught busy|last cue setup|lately caution|led closes ends|led taught busy|listed softly taught|muscle|opens taught busy|opens untaught busy|place 3|rule taught free|said again|source known|source rule|strength 2|turn behind|worth 3',
    ],
    [
      0.2,
      'again clause comma free|again opens ends busy|amount soon|before and|before and your|before in a|before it is|before last|before now|before of|before off|before you go|behind again|brings ends taught|brings on untaught|brings taught free|brought inside ends|brought softly comma|clause ends untaught|clause softly ends|first cue range|first of the best|gap before 3|in breathing|in no cue|known|known clause on|known closes ends|known opens ends|known untaught free|last cue fault|last cue focus|led inside comma|length 1|listed clause taught|listed clause untaught|listed closes untaught|longer untaught busy|muscle in turn|next execution|next fault|often inside ends|opens comma untaught|opens on|opens softly|own words 2|part taught busy|part untaught busy|said before|since 1|single closes untaught|single opens untaught|softly ends|softly ends taught|softly taught free|softly untaught busy|source part|strength 1|turn again|worth 5',
    ],
    [
      0.1,
      'alone taught free|amount before|bare|before about|before front|before is|before next|before some|before that|before thats your|before this is|before to|before two|before with|before with a|behind $|behind because|behind first|behind for|behind while|brings untaught busy|brought taught busy|clause clause ends|clause on taught|clause softly comma|clause taught busy|clause taught free|clause untaught free|closes|closes untaught busy|cues behind 4|cues behind 5|ends|first cue execution|in fault|in harder|inside comma untaught|known clause comma|known inside comma|known inside on|known taught busy|known taught free|last cue breathing|lately end|length 0|listed inside untaught|opens ends|opens ends taught|opens on untaught|others 1|own last move|own worth -1|own worth 4|own worth 5|part softly ends|place 2|pointed at|role before work|role behind teach|role behind work|role chat|rule brings comma|rule untaught free|since 2|since 3|single brings taught|single opens taught|single softly untaught|softly ends untaught|source led|turn first',
    ],
    [
      -0.1,
      'again clause comma busy|again inside comma busy|again inside on busy|again opens comma busy|again opens on busy|again softly comma free|again softly ends busy|alone untaught free|always|amount lately|before an|before are|before do a|before doing|before doing the|before down|before first|before for|before got|before hips|before in|before like a|before no|before not a|before of the|before tall|before there is|before theres a|before three|before through the|before to do|before up|before with the|before with your|before you|behind ,|behind as|behind in|behind now|behind time|behind to|behind with|brings|brings comma|brought inside comma|brought taught free|brought untaught busy|clause comma|clause comma untaught|clause on untaught|clause untaught busy|closed closes on|closes taught busy|cues behind 1|cues far 1|cues far 2|cues lately|ending inside comma|ending inside ends|ending taught free|ending untaught free|far below the best|first cue setup|gap before 2|here execution|inside comma taught|inside ends|inside ends taught|inside ends untaught|inside on taught|known opens on|lately easier|lately fault|lately teach|led inside ends|led softly comma|listed opens taught|listed opens untaught|longer taught free|next equipment|often clause on|often taught busy|only one|opens comma taught|opens ends untaught|opens taught free|opens untaught free|others 0|others 2|own first num|own first part|own ing|own last ill|own last part|own last take|own words 3|part opens comma|part opens ends|part taught free|passing before|role before end|role before none|role behind chat|rule inside ends|single brings untaught|softly on|softly on taught|softly untaught free|soon fault|source clause|source closed|turn now|turn time|words behind 0',
    ],
    [
      -0.2,
      'alone opens ends|alone untaught busy|before by the|before do|before five|before just|before ten|before your|behind and|behind are|behind if|behind today|brings comma taught|brings untaught free|brought brings on|brought untaught free|clause clause on|clause ends taught|closes on untaught|closes taught free|first cue equipment|gap behind 1|gap behind 2|in equipment|in tempo|inside|inside on untaught|inside taught free|inside untaught busy|known brings comma|known brings on|known softly on|last cue easier|last cue equipment|last cue execution|lately move|led softly ends|length 2|listed inside taught|muscle alone|not today|often inside on|only passing|opens clause|others 3|own body|own first kit|own first other|own last other|own words 1|own worth 0|own worth 2|own worth 3|passing behind|single clause untaught|single inside untaught|soon equipment|soon setup|source ending|source longer|stronger elsewhere|words before 1|words before 2|words behind 1|words behind 2|worth -1|worth 1',
    ],
    [
      -0.3,
      'again brings ends free|amount behind|before and the|before do the|before good|before lovely|before one|before that is|before thats a|before then|before then the|behind that|brings on|brought brings ends|clause closes ends|clause inside ends|closes on taught|gap behind 0|in easier|in execution|inside on|kind thing|known closes on|known softly comma|last cue caution|last cue harder|led untaught free|listed brings taught|longer taught busy|muscle in stretches|next easier|often inside comma|own last num|part clause ends|praise|role before chat|role behind move|rule brings ends|since 0|single clause taught|soon easier|source alone|source brought|source often|turn then|words behind 3|worth 0',
    ],
    [
      -0.4,
      'again brings comma free|again clause ends busy|again closes on free|again inside ends free|again softly comma busy|before to your|brings ends untaught|brings taught busy|chat|clause clause comma|cues behind 0|first cue none|gap before 1|length 3|often untaught busy|passing sentence|role teach|single closes taught|soon breathing|strength 0',
    ],
    [
      -0.5,
      'again opens on free|before in the|before to the|brings on taught|closes on|cues far 0|empty words|in caution|led taught free|often taught free|own first place|own last kit|own last place|role behind end|role work',
    ],
    [-0.6, 'lately breathing|later of the best|own worth 1'],
    [-0.7, 'before right|gap before 0|own words 4|role behind none'],
    [-0.8, 'in range'],
    [-1.0, 'place 0'],
  ],
  plain: [
    [1.6, 'before about the'],
    [1.3, 'before now the|behind or'],
    [1.2, 'before now|in harder'],
    [1.1, 'before 12 and|before and your'],
    [1.0, 'again inside on busy|before this is'],
    [0.9, 'before as the|often softly on'],
    [0.8, 'before into|before round two|before that|before your hips|behind to'],
    [
      0.7,
      'again brings ends busy|before is the|before okay|led inside comma|longer taught free|muscle in turn|rule inside ends',
    ],
    [
      0.6,
      'again softly ends free|before did the|before down a|before hips|before onto your|before to your|behind the|called|here setup|last cue tempo|listed softly untaught|muscle|own first move|own last ending|role move|since 1|strength 2',
    ],
    [
      0.5,
      'before alright|before call a|before is a|before its a|before one|before one the|before to that|behind is|closed closes on|ending taught busy|in easier|led closes ends|often taught free|own ing|rule untaught free|soon fault',
    ],
    [
      0.4,
      'again clause ends free|again opens comma busy|amount before|before begin with|before call the|before comes the|before for|before go into|before hand|before in a|before it a|before over|before so|before so the|before start with|before thats your|before you|before youre a|clause taught busy|here execution|in turn|known brings ends|known untaught busy|length 3|next breathing|opens on taught|own worth 1|part softly ends|part untaught busy|since 2|single brings untaught|soon range|source closed',
    ],
    [
      0.3,
      'again brings on free|again clause comma busy|alone taught free|alone untaught busy|back|before go|before got the|before no|before ones the|before set of|before six|before thing|before this|before those|before well do|before with a|behind from|behind instead|behind over|behind up|brings by place|brings ends taught|clause clause comma|closed taught free|closed untaught free|first cue equipment|first cue fault|gap before 3|here easier|inside taught busy|known brings on|known inside on|led softly ends|listed clause taught|listed softly taught|next equipment|next setup|often clause on|opens on|own words 2|own worth 3|single closes taught|source known|source longer|words before 0',
    ],
    [
      0.2,
      'again brings ends free|again closes comma busy|again inside comma free|again inside on free|again opens comma free|again opens ends free|again softly comma free|again softly ends busy|again softly on free|before add the|before and a|before back to|before for the|before is your|before okay the|before on to|before onto|before then a|before two|before with|behind down|behind go|brings comma untaught|brings ends|brings untaught busy|brought brings comma|brought brings ends|brought untaught free|clause comma taught|clause inside comma|clause on untaught|closes ends untaught|closes taught free|cues behind 3|cues far 1|first cue caution|gap behind 3|inside ends taught|known|known clause ends|known clause on|known closes comma|known opens ends|known untaught free|last cue breathing|last cue easier|last cue range|late|length 2|listed inside untaught|longer opens comma|longer softly comma|opens taught busy|others 3|role behind work|rule brings comma|said again|said before|single brings taught|softly on|softly on taught|soon equipment|source rule|words behind 3|worth 2|worth 4',
    ],
    [
      0.1,
      'alone opens ends|amount lately|before be|before call it|before first|before for a|before into the|before last round|before or|before pair|before right|before round|before tall|before the|before these are|before up the|before with some|behind again|behind as|behind because|behind while|best|brings on|brings on untaught|brings taught busy|brought inside on|clause brings ends|clause comma|clause ends taught|clause softly comma|closes|closes comma taught|closes on taught|closes untaught free|cues behind 5|cues far 2|cues lately|first cue easier|first cue harder|gap before 2|in no cue|inside comma|inside comma untaught|kind own|known clause comma|known inside comma|known inside ends|known softly comma|known softly ends|known taught busy|last cue fault|last cue harder|last cue setup|lately caution|lately execution|lately setup|lately teach|led untaught busy|listed|listed inside taught|next easier|often taught busy|opens untaught free|own first kit|own last move|own plural|part untaught free|place 2|place 3|role before chat|role before end|role behind end|rule brings on|rule taught free|single inside taught|single opens taught|softly ends taught|softly on untaught|softly taught busy|soon easier|soon execution|source often|strength 3|turn again|turn behind|turn then|turn to finish|words before 3|worth 5',
    ],
    [
      -0.1,
      'always|article|bare|before and some|before come|before couple of|before do your|before down|before five|before floor|before had a|before have a|before have the|before hold the|before i do|before if the|before in the|before into a|before it|before let the|before let your|before moves are|before not doing|before not your|before of|before on|before on the|before on your|before one two|before out|before over your|before push the|before seconds three|before side|before the floor|before the hips|before to a|before together one|before used to|before wall|before weve got|before with the|before your|before your little|behind $|behind away|behind each|behind if|behind like|behind metres|behind now|behind yet|brought softly comma|clause comma untaught|clause softly ends|clause taught free|closed taught busy|closed untaught busy|closes comma|closes comma untaught|closes on|closes on untaught|closes untaught busy|cues behind 1|cues far 3|ending untaught busy|ends|here equipment|in equipment|in focus|inside|inside ends untaught|inside taught free|known closes ends|known opens on|known softly on|last cue caution|last cue equipment|last cue focus|lately easier|later of the best|led closes comma|listed clause untaught|listed opens untaught|longer taught busy|longer untaught free|next execution|often inside comma|only one|opens comma untaught|opens ends|opens ends taught|opens on untaught|opens softly|others 0|others 1|own first ill|own first other|own last part|own words 4|part opens comma|part taught busy|place 1|role before none|role before teach|role behind chat|role behind teach|rule taught busy|since 3|single clause untaught|single softly taught|soon breathing|strength 0|turn first|turn now|words before 2|worth 3',
    ],
    [
      -0.2,
      'again brings comma busy|again clause on busy|again opens on busy|amount soon|before again|before are|before at your|before by the|before eight|before first two|before from your|before good|before got|before in|before it is|before its some|before like a|before little|before my|before not the|before on a|before or your|before station|before then|before then the|before through the|before under the|before use a|before wet|before wont do|behind ,|behind a|behind here|behind into|behind it|behind please|brings|brings ends untaught|brings taught free|brings untaught free|brought brings on|brought inside ends|brought softly on|clause clause on|clause closes comma|clause ends|clause inside ends|closes ends taught|closes taught busy|cues behind 2|cues far 0|ending taught free|first cue focus|in breathing|inside on|inside on untaught|inside untaught busy|kind everyday|lately move|led closes on|length 1|longer untaught busy|often untaught free|opens untaught busy|others 2|own last ill|own last other|own worth 0|part clause comma|part clause ends|pointed at|role end|role teach|rule inside comma|single clause taught|single inside untaught|softly comma|softly comma taught|softly ends|softly untaught busy|softly untaught free|source alone|source clause|words behind 2|worth 0',
    ],
    [
      -0.3,
      'again softly on busy|alone taught busy|amount behind|before a|before and the|before as your|before at the|before doing a|before from the|before lovely|before not a|before off the|before the back|before use the|before with your|behind next|behind that|behind with|below the best|brings comma|brought taught free|clause clause ends|clause ends untaught|clause on taught|cues far 4|empty words|ending inside ends|first cue execution|gap behind 1|gap behind 2|here range|in execution|lately end|led untaught free|length 0|listed brings taught|listed closes taught|muscle in stretches|next range|often inside ends|own first num|own first part|own first take|own last num|own worth 4|part opens ends|part taught free|praise|role before work|source ending|stronger elsewhere|turn next|worth 1',
    ],
    [
      -0.4,
      'again closes on busy|again inside comma busy|alone opens comma|before doing the|before eight a|before is|before just|before there is|before to do|chat|clause closes ends|clause untaught free|cues behind 0|first cue none|first cue range|gap behind 0|known closes on|known opens comma|last cue execution|lately breathing|longer opens ends|often untaught busy|only passing|own last kit|passing sentence|role behind none|rule untaught busy|softly ends untaught|soon setup|words before 1',
    ],
    [
      -0.5,
      'again opens on free|before back|before bit of|before called|before do the|before doing|before into your|before over a|before ten|before theres a|before to|behind and|behind for|behind in|brings comma taught|brought softly ends|clause untaught busy|ending untaught free|here fault|in fault|in setup|led inside ends|listed brings untaught|part softly comma|rule brings ends|strength 1|worth -1',
    ],
    [
      -0.6,
      'alone untaught free|before an|before each|before finish with|before next|behind on|behind today|brought taught busy|in caution|kind thing|known brings comma|muscle alone|next fault|own worth 2|own worth 5|role work|rule softly ends|source led',
    ],
    [
      -0.7,
      'again inside ends busy|before do|before that a|before thats the|often inside on|own last place|own words 1',
    ],
    [-0.8, 'before front|led softly on|single softly untaught'],
    [-0.9, 'again opens ends busy|not today|passing behind|source brought'],
    [-1.0, 'before do a|own first place'],
    [-1.1, 'again closes ends free|before that is|since 0'],
    [-1.3, 'in tempo|place 0'],
    [-2.0, 'gap before 0'],
  ],
}
