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
    [1.3, 'before now the'],
    [1.2, 'before into|behind or|longer taught free'],
    [1.1, 'before as the|before thing'],
    [1.0, 'called'],
    [0.9, 'again clause ends free|before now|before onto your|before this is|here easier'],
    [0.8, 'again opens comma free|before about the|before that|own last ending|since 1'],
    [0.7, 'before round two|before thats your|before with a|led closes ends|muscle in turn|strength 2'],
    [
      0.6,
      'again inside on free|before and your|before got the|before hands|before okay|before those|behind from|listed softly taught|next equipment|often softly on|rule untaught free|source longer',
    ],
    [
      0.5,
      'amount before|back|before alright|before go|before it a|before to that|before you|behind to|brings comma untaught|brings ends taught|clause brings comma|cues behind 3|here setup|known brings on|known inside on|last cue harder|last cue tempo|led untaught busy|next setup|opens on taught|part softly ends|role before none|rule inside ends',
    ],
    [
      0.4,
      'again brings ends free|again inside on busy|again softly on free|alone taught free|before back to|before call the|before go into|before is a|before its the|before set of|before this|before up|behind a|clause softly comma|clause taught busy|in harder|inside comma untaught|inside untaught busy|known closes comma|late|led inside comma|listed clause taught|muscle alone|own plural|own worth -1|role before move|soon fault',
    ],
    [
      0.3,
      'again brings on free|again clause comma busy|again opens on free|again softly comma free|again softly ends busy|again softly ends free|amount behind|before about|before add the|before did the|before in a|before its a|before one|before so|before some|before thing is|before youre a|behind comes|behind go|behind instead|behind next|brings by place|closed taught busy|ending taught busy|first cue equipment|here execution|inside ends taught|known brings ends|known inside comma|known opens ends|last cue breathing|led untaught free|listed closes untaught|next easier|often clause on|often taught free|opens taught busy|others 2|own worth 1|part opens on|role move|since 2|single brings untaught|source known|turn behind|turn comes next',
    ],
    [
      0.2,
      'again clause on free|again opens ends free|again softly comma busy|alone opens on|alone untaught busy|amount lately|before and|before and a|before called the|before for the|before hand|before hips|before is the|before is your|before last round|before no|before okay the|before on|before on to|before one the|before one two|before over|before start with|before tall|before then a|before these|before up the|before well do|before your hips|behind are|behind before|behind when|brings ends|chat|closed closes on|closes ends untaught|cues lately|first cue caution|first cue easier|first cue harder|first of the best|gap before 3|in no cue|known|known clause comma|known taught busy|last cue fault|last cue range|lately setup|led inside ends|led softly ends|length 2|listed|listed inside taught|longer opens comma|opens ends untaught|opens untaught free|own first part|own last take|own words 2|softly ends taught|soon range|turn next|turn to finish|worth 4',
    ],
    [
      0.1,
      'again clause comma free|again clause ends busy|alone opens comma|amount soon|before begin with|before comes the|before do some|before first|before for|before have|before it|before it is|before last|before ones the|before or|before round one|before six|before so the|before these are|before weve got|before with|before with some|behind as|behind is|best|brings taught free|brought brings comma|clause brings ends|clause comma untaught|clause ends taught|clause inside comma|clause inside ends|clause on taught|clause untaught free|closes ends|cues far 2|first cue breathing|gap behind 3|in turn|inside ends|known opens comma|known softly on|known untaught free|last cue setup|lately caution|lately chat|lately end|lately teach|lately work|led softly comma|listed brings taught|listed softly untaught|opens comma|opens comma taught|opens on|own body|own first other|own last move|own words 3|place 2|role before chat|role behind work|rule brings on|said before|since 3|single closes taught|soon breathing|soon equipment|source rule|strength 3|words before 0',
    ],
    [
      -0.1,
      'again brings ends busy|again clause on busy|again opens on busy|alone opens ends|always|before 8|before a good|before a little|before again|before and then|before as your|before back the|before be|before circuit|before couple of|before do your|before down|before eight|before floor|before for your|before got|before if the|before its your|before knees|before last week|before little|before lot|before my|before not doing|before not the|before of the|before on your|before over your|before rack|before seconds three|before so your|before the floor|before the hips|before them|before then the|before theres the|before through the|before together one|before two|before under the|before week|before with the|before with your|before your little|behind again|behind away|behind if|behind in|behind into|behind now|behind off|behind who|behind yet|brings on|brings on taught|brings untaught busy|brought brings ends|brought inside ends|brought untaught free|clause clause comma|clause clause ends|clause on untaught|clause softly ends|closed closes ends|closed untaught busy|closed untaught free|closes|closes comma|closes comma taught|closes ends taught|closes taught busy|cues behind 5|described|gap before 1|here breathing|here equipment|in breathing|in equipment|in execution|in focus|in setup|kind everyday|known closes ends|last cue caution|last cue easier|last cue focus|lately breathing|lately execution|length 0|listed opens untaught|longer clause comma|longer opens ends|next range|often taught busy|often untaught busy|only one|opens clause|opens ends|opens softly|others 0|own first ill|own first num|own ing|own last part|own worth 4|part clause comma|part untaught free|role behind end|role end|rule inside comma|said again|single inside taught|single inside untaught|softly on|softly on taught|source often|turn again|turn now|words behind 1|worth 0|worth 5',
    ],
    [
      -0.2,
      'again brings comma free|again opens comma busy|alone taught busy|alone untaught free|before a|before are|before at the|before back|before do|before doing a|before doing the|before from the|before from your|before good|before have a|before i do|before in|before is|before like a|before not a|before over a|before station|before thats a|before three|before to|before wont do|behind ,|behind at|behind first|behind for|behind here|behind please|behind today|below the best|clause clause on|clause comma|clause untaught busy|closes taught free|cues behind 1|cues far 3|ending untaught free|first cue execution|first cue tempo|gap behind 2|inside|inside ends untaught|inside on|lately easier|later of the best|led closes comma|length 1|length 3|listed clause untaught|listed opens taught|often inside ends|often untaught free|others 1|own first take|own last ill|own last other|part softly comma|part taught free|passing sentence|place 3|role before teach|role behind chat|role behind none|single clause untaught|softly comma|softly comma taught|softly ends untaught|softly untaught busy|soon setup|stronger elsewhere|turn first|words before 3|words behind 0',
    ],
    [
      -0.3,
      'again inside ends free|again softly on busy|before at your|before do the|before five|before just|before on the|before quick|before round|before ten|before there is|before theres a|before to a|before use the|before your|behind either|behind on|behind that|behind the|behind with|brought softly on|brought taught busy|brought taught free|clause closes comma|clause closes ends|clause comma taught|clause ends|clause taught free|closes on|closes on untaught|cues behind 2|first cue range|gap behind 1|in easier|inside on untaught|known softly ends|led taught busy|longer taught busy|longer untaught free|muscle|next breathing|often inside comma|only passing|opens ends taught|opens on untaught|opens taught free|opens untaught busy|own first move|own words 1|part opens comma|role behind move|rule taught busy|rule untaught busy|single closes untaught|single softly taught|single softly untaught|soon easier|strength 0|words before 1',
    ],
    [
      -0.4,
      'again inside comma busy|again inside comma free|before bit of|before by the|before in the|before into your|before lovely|before on a|before then|before to do|before to the|before up and|behind and|behind time|ending inside ends|first cue focus|gap behind 0|here fault|in fault|inside comma taught|inside untaught free|known closes on|known softly comma|lately move|listed brings untaught|listed closes taught|next fault|own worth 2|part clause ends|part taught busy|place 1|role before work|role teach|single clause taught|source alone|source led|turn time',
    ],
    [
      -0.5,
      'before called|before finish with|before first two|before front|before right|brings comma taught|brings ends untaught|clause ends untaught|cues behind 0|ending taught free|first cue none|in caution|led taught free|not today|often inside on|own last num|own worth 0|praise|role before end|rule brings ends|source ending|words behind 2',
    ],
    [
      -0.6,
      'again closes on busy|before an|before doing|before each|before thats the|brought brings on|brought untaught busy|cues far 0|empty words|known brings comma|muscle in stretches|role work',
    ],
    [-0.7, 'before do a|before next|before that a|in range|known opens on|own worth 5|source part'],
    [
      -0.8,
      'again closes ends free|again inside ends busy|before and the|led softly on|own last kit|passing behind|worth -1',
    ],
    [-0.9, 'in tempo|kind thing|part opens ends'],
    [-1.0, 'own last place|source brought'],
    [-1.1, 'again opens ends busy|own words 4'],
    [-1.2, 'before that is|place 0|since 0'],
    [-1.3, 'own first place'],
    [-1.8, 'gap before 0'],
  ],
}
