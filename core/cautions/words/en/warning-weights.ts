/**
 * What words and pairs of words of a sentence add to the log of the odds that it warns of a hazard (weigh-warnings.ts). Fitted
 * by tests/fit/fit-warnings.ts, not by hand.
 */
import type { WarningRows } from '../../weigh-warnings.ts'

export const WARNING_WEIGHTS: WarningRows = [
  [
    'overhead-shoulder',
    [
      [1.2, 'you come'],
      [1.1, 'complaining'],
      [1, 'a shoulder|down no'],
      [0.9, 'hanging|hurt|if a|overhead|shoulder|shoulder that|the shoulder'],
      [0.8, 'any|been|been out|ever|ring row|shoulder bite|shoulder catch|shoulder or|shoulder pinch|shoulder stop'],
      [
        0.7,
        'and press|any sharp|bite|catch|come down|game|if overhead|just squat|off its|on you|or|pinch|pinch up|pull in|reverse|right then|that shoulder|up there',
      ],
      [
        0.6,
        'a pinch|back dont|behind you|box|come|down its|get down|go on|have been|hurt stop|hurt you|if|if your|leave it|like that|of the|part|pinch on|press|shoulder ever|squat|stay at|test|that get|the box|the ring|then youre|toe on|tonight|your shoulder',
      ],
      [
        0.5,
        'at your|bring it|catch or|chest with|cleared|click and|come back|come off|complain|do your|doing this|dont press|dont push|feet or|go as|go up|good for|had it|hasnt|if that|if the|it click|keep|keep your|leave|loose|more weight|no good|on top|operated|operated on|or theyve|or youve|over your|press on|ring|row|sharp|shoulder are|shoulder have|shoulder leave|stop|stop at|surgeon|tea|there or|theyve|upside|upside down|weight|weight in|you before|you for|you quit|your surgeon|your toe|youre on|youve had',
      ],
      [
        0.4,
        'a bad|and if|and just|as high|as your|bad shoulder|both hand|click|do|do a|dont go|face and|for your|forehead|got a|had|hand and|head you|high as|if it|in front|isnt|it catch|it down|it out|it push|its not|its up|keep it|me later|no|not doing|only go|out in|pinch at|press it|pressing|pull|punch|quit|see me|shaking|shoulder and|shoulder sore|still pinch|than the|that arm|the forehead|there|there press|there you|top of|up over|when its|with both|your head|your nose|youve',
      ],
      [
        0.3,
        'a bar|a car|alone|and keep|and lean|and rest|arm straight|at chest|back there|back to|bad|ball over|bar at|behind|bring|cant get|car|carrying|carrying a|chest height|chin and|circle|circle smaller|come see|cross with|dangle|doesnt go|doing|dont just|down and|down by|down same|even the|floor with|from|front|front of|front squat|get|get your|go back|go do|go over|go overhead|goe over|got to|happy|height|height and|higher than|if youve|instead|isnt your|it alone|it forward|it from|it in|it stay|it still|it to|it with|later|leave them|like the|make the|nippy|no snatch|no weight|nose|not even|not for|on stop|one light|one out|only to|or do|or its|or leave|out this|pull down|punch it|push it|push one|push through|shoulder put|small one|snatch|stick|straight no|straight out|that doesnt|the circle|the small|the swing|them at|there use|this isnt|through it|toe stay|tonight if|up instead|use a|weight at|wherever|whole time|with me|wont go|you|you or|you toe|you tonight|your chin|your face|your feet|youre done|youre hanging|youre not|youve a|youve got',
      ],
      [
        0.2,
        'a doctor|and carry|and drive|and no|and pull|anybody|anything|at|at chin|at the|before|catch the|chin|chin height|cross|dip and|do the|doctor|em|even|eye height|eyebrow|feet and|feet under|for you|from the|get a|go|go all|ground and|had them|has|head|height or|history|if there|in the|in there|it at|it pinch|its a|its been|light one|low ring|never|no higher|not a|not to|on the|only|or somebody|or the|or your|out before|out or|pull from|put more|quit and|raise|same number|seat|shoulder away|shoulder dont|shoulder got|skip it|slide|smaller or|somebody told|sore|stop and|tear|the ball|the dip|the feet|the joint|the low|the pull|the whole|then|there is|to a|toe|top|under you|watch|with|with no|with you|wont|you cant|you do|you not|your eyebrow|your row',
      ],
      [
        0.1,
        'a|a count|a weight|all if|all the|and draw|and only|anything at|anything that|army|at eye|ball|bell on|below|below your|block and|both|cant|carry|carry on|catch in|chest|chest and|chest for|coat|coat on|count and|dip|doesnt|dont like|down instead|draw your|drive|em out|ever had|every single|eye level|face|feet on|finger tingle|for|for anything|forward|getting|getting your|give it|got|ground|grumble|grumbling|half of|half the|half your|have|high|higher|if anything|incline|is a|it half|it press|its sore|joint|just do|know its|like it|lying|lying down|most|most of|nothing|now for|number|of yourself|off the|only give|or a|or sit|or skip|or stop|or you|out dont|out on|out you|overhead dont|said|shoulder grumble|shoulder out|single|sit it|skip|slam|small|start|stay|stay on|swing|that been|that goe|the army|the bell|the block|the ground|the incline|the stick|the tin|this|through|through your|time a|to leave|to your|told|told you|tonight where|use|weight goe|weight through|when|when youre|where youre|whole|with dumb|with the|you go|your arm|your chest|your coat|your side|your weight',
      ],
      [
        -0.1,
        '0 0|a bit|a breath|a chair|a cushion|a dumb|a hand|a head|a little|a lot|a minute|a muscle|a new|a rest|a sharp|a slant|a sore|a squat|a time|a tray|above|achilles|across|after|against|against the|ahead|air|all in|along|and a|and back|and bring|and dont|and down|and go|and have|and i|and its|and let|and make|and not|and off|and see|and sit|and stay|and stop|and take|and tell|and there|and up|and your|another|apart|arch|are|are sore|are thin|arent|arm and|arm by|arm on|arm out|around|as a|as far|as if|as it|as the|ask|at home|at it|at me|at you|away from|back in|back of|backward|bad eye|bag|barking|beat|because|behind the|behind your|bell if|belt|bent|better|between the|between your|big toe|bigger|bit of|bite you|blade like|blow|blow out|blue|board|body|bone are|book|both feet|bounce|bouncing|box if|breathe in|bridge|bug|bus|button|by|call|called|cat|ceiling|check|cheek|chest goe|chest hurt|chest if|chest instead|clean|clock|close|closer|cold|come away|come in|come on|coming|could|counting|couple|crack|crack in|cramp|cross your|curl|cushion|day|dead|dead lift|deep|did|dizzy|do it|do this|doe|doesnt hurt|dog|done|dont|dont lean|dont look|dont swing|down|down for|down if|down on|down onto|down the|down there|down you|drag|drink|drop the|drop your|each other|ear|ease|easier|elbow into|elbow lower|elbow on|elbow under|eleven|else|end|evening|every|everybody|everything|exhale|eye|eye on|eye or|facing|faint|fall|far as|fast|fed|feel it|feel the|feeling|feet are|few|find|finger|finish|finished|floor if|fold|folk|foot on|for a|for it|forty|fourteen|frame|frame if|full|further|get it|get there|go down|go right|go so|goe tight|gone|got it|got the|green|groin|grow|had a|had enough|half|half a|hand lower|handle|hard|harder|he|head if|hear|heart|heel tap|hes|high blood|hold the|holding|hop|horn|hot|hug|hurt go|hurt leave|hurt not|hurt or|i mean|id|im not|in a|in as|in it|in you|inch|instead of|into the|it a|it all|it bite|it come|it do|it doesnt|it get|it goe|it if|it isnt|it like|it off|it on|it or|it smaller|it stood|it there|itll|its only|its sharp|its the|its too|its your|jaw|jump|just hold|just press|keep breathing|keep the|kick|kneecap|know|knuckle|ladder|land|lap|last one|lean back|lean on|leave a|leave that|leave the|length|less|let go|let the|let your|level and|level with|lie|lighter|like there|like youve|line|lock|longer|looking|looking at|loop|lot on|low back|lower down|lunge|lying on|make|march|mean|medal|middle|mind|mind the|mine|moan|moaning|morning|move|moving|much|muscle|nearly|neck go|need|new|nineteen|ninety|no bouncing|not just|not your|of a|of them|of those|off you|off your|on that|on this|once|one foot|only as|onto your|open|osteoporosis|out and|out there|out when|out youre|outside|over|over faint|over the|own|pain at|park|past|pause|pencil|people|phone|pick|pillow|pinch your|place|plate|please|plenty|pocket|point|poke|pole|press your|properly|proud|puff|pull apart|pull it|pull your|push up|put a|put the|put your|quick|quit that|rack|rail|reach|ready|red|rest|right round|ring at|rock|room|rope|rule|run|rush|sat|see you|set you|shake it|sharp pain|shin|shoe|shorten|shorten it|shorter|should|shoulder come|shoulder complain|shoulder drop|shoulder height|shoulder if|shoulder moan|shoulder nip|shoulder not|shoulder press|shoulder start|shoulder thumb|shoulder width|shout|shrug|shut|side and|side of|since|sink|sit down|sit on|slant|slant instead|slip|slower|slower than|slowly|smooth|so deep|sock|some of|somebody|something|sore not|sort|sort of|speed|spine|split|split squat|spot|squeeze the|squeeze your|stand up|standing|star|start to|station|stay there|stiff|stood|stop short|stop when|straight|straight up|strap|stride|string|swinging|switch|table|take a|take the|talk|than|than you|thank|thank you|that it|that one|that set|that too|that was|that what|that where|that you|thatll|thatll do|the ankle|the arm|the back|the band|the bar|the calf|the ceiling|the chair|the clock|the door|the end|the floor|the foot|the frame|the front|the hand|the heel|the kneecap|the last|the leg|the mat|the middle|the neck|the rail|the same|the seat|the thigh|the toe|the way|the wrist|then the|there and|there dont|there for|there no|theyve told|thin|thing|think|thirteen|this is|this one|those|through the|throw|thumb up|thursday|tight or|till your|tilt|time|tip|tired|to get|to you|toe down|told your|too much|touch|toward|towel|tray|trip|trouble|tuck|tucked|tummy|turn your|twice|twist|under the|underneath|until|up a|up and|up at|up come|up or|up to|upright|us|use the|very|waist|wait|walk it|walking|wall and|want it|want to|warm|water|wave|way down|way up|we go|wee|week|weight if|weight on|went|whatever|where|where you|while|whistle|white|who|wider than|width|will|without|work|wrist hurt|year|yellow|you and|you feel|you its|you just|you like|you need|you pull|you put|you sit|your|your ankle|your belly|your bone|your breath|your bum|your calf|your eye|your forearm|your grip|your hamstring|your heel|your leg|your low|your neck|your own|your palm|your rib|your shin|your spine|your thigh|your tummy|youre a|youre upside|yourself|yourself up|youve been|youve high|youve not',
      ],
      [
        -0.2,
        'an angle|and that|and the|and then|angle|ankle|at a|at all|at an|be|before you|bell|belly height|bend|big|bit|blood|blood pressure|bone|breathe out|breathing|bum|but|calf|change|come over|come up|dont let|door|easy|enough|far|fifteen|fine|fist|floor|for the|forearm|go smaller|goe|going|going over|good|grab|grip|hamstring|hand on|hang|have a|heavy|here|home|how|ill|its|ive|left|let it|level|like youre|live|look at|lot|low|make it|mat|next|nice|nine|nobody|of it|of your|off it|on it|one shoulder|onto|out of|pain|pair|palm|pinch stop|pressure|pressure or|push them|put|put it|quiet|say|seven|shake|short|shoulder cranky|shoulder down|shoulder hurt|soft|some|steady|stretch|swap|take|tap|tell|tell me|than your|that a|that the|that your|the bench|the bottom|the elbow|the hip|the knee|the other|them out|there a|these|thigh|third|thirty|thumb|tight|today|together|top and|twelve|twenty|under your|up you|was|were|what|when you|wide|wider|with a|you at|you can|you dont|you want|youll|your elbow|your hand|your wrist',
      ],
      [
        -0.3,
        'about|and it|and you|arm|away|back down|band|bench|between|blade|bottom|chair|cranky|down in|down to|drop|each|elbow|flat|grind|if one|im|in|into|it back|like|like a|little|lovely|my|neck|now|of|of you|okay|on a|out as|pinch in|plank|rib|roll|set|shoulder blade|squeeze|tall|the top|they|till|to the|too|turn|up on|want|way|we|well|you get|you stop|your back|your knee',
      ],
      [
        -0.4,
        'again|all|an|as you|belly|breath|can|catch up|clunk|eight|feel|first|five|four|hold|is|last|lift|long|look|minute|off|other|pinch come|side|sit|six|slow|stand|the wall|them|to|under|up|walk|with your|wrist',
      ],
      [
        -0.5,
        'all you|as|back|foot|if its|if youre|it hurt|lower|on your|push out|round|second|step|stop there|ten|the|three|wall|you push',
      ],
      [-0.6, 'and|breathe|hand|heel|hip|i|leg|let|so|two'],
      [-0.7, '0|if you|one'],
      [-0.8, 'knee'],
      [-6.4, '*'],
    ],
  ],
  [
    'loaded-spinal-flexion',
    [
      [1.1, 'spine long'],
      [1, 'spine'],
      [0.9, 'back round|dont round|rounding|your spine'],
      [0.8, 'it round|round'],
      [
        0.7,
        'back|back let|back no|go you|hump|if your|lighter|round at|round stop|round you|same rule|that set|to hump|up on|your back',
      ],
      [
        0.6,
        'back go|back start|eat|it down|keep your|let go|like a|minute the|off it|put|put it|put the|round over|second it|set|sit up|start|start to|tea|the minute|tuck under|weight|you let|you out|your tea',
      ],
      [
        0.5,
        'a plank|a table|and if|and take|back flat|back goe|bag|bottom that|chase|chase the|come up|could|curling|disc|dont chase|down and|down that|far stop|flat|flat back|get a|go lighter|goe down|goe round|going round|if|leave it|load|long|out of|round like|rounding put|rule|stop|that as|that how|the second|the weight|thing|to round|weight down|you could|you feel|you put',
      ],
      [
        0.4,
        'a prawn|a round|a smaller|and come|and itll|and round|and the|back do|back stay|back straight|bale|bend|care|curve|deep as|do that|dont care|down there|enough that|far you|floor and|floor if|from|go round|goe|how|how far|i dont|it there|itll bite|its from|low enough|middle of|on you|one thing|or get|playing|prawn|put them|roll the|round when|round youve|set is|stop and|stop stand|stop that|stop there|straight the|table|that under|the bar|the one|there and|there stop|thousand|time and|tuck|under|under and|whole way|with a|you curl|you roll|your tail',
      ],
      [
        0.3,
        'a banana|a plain|a plate|a rainbow|and ill|and lift|as deep|back a|back bend|back if|back like|bag up|banana|bar down|bell|bell up|bend like|bite|bite you|cane|cant|cant sit|care what|cat|come off|crown|deep|end|every lift|far|february|feel yourself|find you|finished|floor|get upset|grit|higher|higher up|hike it|how you|if it|if you|in february|in so|into a|is and|it bend|it flat|it start|it where|its that|joint|just drop|lift from|lighten|lighter one|long from|low|mean it|moment|need a|no shame|nobody need|of them|on to|people|people in|plain|plank|plank and|quit|rainbow|really|rib and|round that|round to|round with|same|scared|set put|set that|shame|shrimp|slump|sofa|stand up|start over|stay tall|stick it|stop put|surgeon|table top|tail|tall through|taller|that doe|that not|thatll|the back|the bag|the bell|the bottom|the floor|the moment|the set|the sofa|the spine|the whole|them on|there that|thing in|to know|tonight|top if|turn into|up first|upset|weight goe|weight on|with that|you|you cant|you stop|you that|your disc|youre tired',
      ],
      [
        0.2,
        'a bell|a box|a ruler|a weight|all morning|and dont|and on|and park|and set|and sit|and start|and that|and then|anything with|as a|as low|at the|bar|bar goe|bell in|bottom|box|box is|care if|chair and|cut|cut it|depth|dont just|dont want|drop it|ease off|enough|every|every one|far down|feel your|feet in|finished for|first|first one|flat and|floor the|for anything|for every|for that|from the|from there|from your|front|front and|front if|get|get it|go so|hand if|hand you|higher than|hike|hold of|how people|hurt|hurt you|i mean|is|is how|is too|it all|it drop|it from|it is|it off|it or|it put|it the|itll|kind of|knee more|leave|load is|low as|lower back|meet|middle|monday|of that|off that|on every|on monday|once|one of|one under|only go|park|park it|pressure|quit right|rep|round back|round on|round one|ruler|same way|set it|set over|shuffle your|sit the|smaller|so far|so if|stay flat|stay long|stick|stop an|table and|take a|than that|that|that for|that the|that turn|that you|the front|the hip|the middle|the step|them if|themselve|then i|there your|through the|tonight where|under at|up at|up front|up go|up like|up or|up you|way|when youre|where it|where the|whole|wrong|you come|you dont|you go|you set|your|your lower|youre on',
      ],
      [
        0.1,
        '0 more|a bad|a couple|a crate|a step|an inch|and drop|and for|and its|and we|any station|any time|anything|back and|back or|bad day|bag down|bar on|before we|before you|begin|bell on|bent over|come|count and|couple of|curl|curled|dad|day|doe|dont fight|dont finish|dont go|down|down dont|down i|down it|down you|drop|drop a|ease|empty|end of|end up|every exercise|every single|exercise|feel|fight|fight it|find|finish the|frightened|go and|go as|goe for|goe i|gone too|hamstring|himself|ill|in it|in this|inch|is a|is for|it back|it empty|it i|it on|it up|it with|it youre|its a|its the|kind|lift in|lift tonight|like|loaded|long and|long as|long like|long spine|low back|mean|measuring|mine|minute your|morning|my dad|need|nobody|nobody measuring|number|of book|of your|off the|off there|on a|on top|one that|over|over that|over with|plate|plate on|put a|quit that|rack it|round your|set for|set the|shuffle|single thing|sit tall|so you|some off|stand it|start again|start on|step and|such|take|take it|tall and|that get|that lot|that low|that that|the band|the box|the chair|the first|the number|the same|them up|then and|then stop|there|there a|there if|thing before|thing up|this if|time youre|tired|to|today|too far|top|top of|turn|up dont|up nobody|up start|up the|want to|way i|weight in|what|what the|when|when it|where|where there|while|with|you end|you quit|you sit|you tell|your hand|your low|youre out|yourself|youve gone',
      ],
      [
        -0.1,
        '0 0|a chair|a coffee|a little|a long|a minute|a sore|a time|a tray|a week|about it|achilles|aching|across|after|ahead|all the|along|an|and a|and done|and find|and go|and i|and lean|and let|and no|and off|and pull|and stand|and swap|and tell|and there|and up|and walk|and you|and your|another|apart|arch your|arche|arching|armpit|around|as if|as it|as long|as the|asleep|at a|at it|at your|away from|baby|back an|back arche|back come|back down|back foot|back from|back get|back in|back into|back knee|back lift|back long|back nip|back on|back peel|back pinch|back pocket|back pop|back take|back up|backward|balance|ball|barking|beat|because|because that|been|behind you|behind your|being|bell if|belt|bend the|better|between your|blade|block|blow|blue|board|body|bone|bounce|bouncing|box if|breathe out|breathing|bridge|bring it|bug|but|butt|button|by the|by your|call|came|can keep|card|carry|carry on|ceiling|chair|check|cheek|chest goe|click|clock|close|coffee|coffee table|come and|come down|come on|come over|coming|count|cramp|cross|curl over|cushion|dead lift|did|dip|dizzy|do it|do the|doesnt|dog|doing|dont|dont bend|dont bounce|dont drop|dont lean|dont like|dont swing|dont tip|down if|down like|down on|down the|drag|drawer|drink|drive|drop down|drop the|drop to|dumb|dumb bell|early|easier|eleven|em|even|every time|everybody|everything|exhale|eye on|face the|faint|fall|fancy|far and|far or|far that|fast|feel like|feel the|feet down|feet flat|find me|fine|fine if|fist|flat like|flat on|floor or|fold|foot on|for the|forearm|fourteen|free|front of|full|further|gently|get down|get there|get your|give|go back|go of|go on|go up|goe put|goe tight|going down|going to|got a|grab|green|grip goe|grow|grumble|half a|halfway|hand under|hand up|handle|hard|harder|have a|have to|have your|he|hear|heavier|heavy on|height|help|hinge|hip back|hold it|hold the|hold your|holding|home|hook|hop|horn|how back|how many|hug|hundred|i can|i want|id|if a|if anything|if something|if that|if there|in as|in front|inside|into it|into the|into your|is the|isnt|it and|it come|it dont|it get|it hurt|it if|it lift|it like|it out|it pinch|it pop|it short|it smaller|it to|it without|its not|its too|jog|jump|keep breathing|keep it|keep the|kick|kitchen|knee and|knee if|knee that|knee to|kneecap|ladder|land|lap|last one|late|leaning|leave the|length|less|lie|lift off|lift your|light|like it|like the|like there|line|long neck|longer|look at|looking|loop|loose|lot|lower it|lunge|lying|make it|many|march|mat if|medal|metre|mind|moaning|more than|move|moving|much|muscle|nearer|nearly|need to|never|new|next|night|ninety|nip|no|no higher|nose|not a|of a|of those|of you|off your|on that|on the|on this|on with|one and|one foot|one rule|onto your|open|or it|or the|or your|other leg|out on|outside|over the|over to|over your|own|pain|palm|pass|past|pay|peel|peel up|phone|pick|pillow|please|plenty|point|pole|pop up|post|press up|properly|properly hurt|puff|push the|push up|quiet|rail|raise|rather|ready|red|rib|rib down|rock|room|rope|round and|round two|run|rush|sag|sagging|said|same as|same thing|sat|seat|second lot|second set|sharp|shoe|should|shoulder blade|shout|shrug|shut|sink|sit back|sit on|sitting|skip|slower|slower than|slowly|small|smooth|some|sort|sort of|speed|split|squeeze your|stair|stand tall|standing|star|stay down|stay heavy|stay on|stay till|steady|step back|step up|stiff|stop sign|stop when|straight|strap|strong|stuck|sunday|swimmy|switch|tail under|tailbone|take the|take your|talk|tap|tell|tell you|telling|telling you|than|than you|than your|thank|thank you|that all|that enough|that it|that pay|that too|that us|that was|the arm|the bench|the ceiling|the door|the elbow|the foot|the heel|the kneecap|the last|the leg|the long|the plate|the rail|the ring|the room|the seat|the shoulder|the side|the thigh|the towel|the wall|them|them down|then the|there you|theyre|think|thirteen|this is|this one|throw|thumb|thursday|till you|till your|time|tin|to a|to ache|to curl|to go|to it|to lift|to you|together|told|tomorrow|too low|too much|touch|toward|towel|tray|trip|tucked|tummy|turn round|turn your|tweak|twice|twinge|twist|under you|up|up and|up in|up tall|up with|us|use|very|waist|wait|walk it|walking|want it|want more|warm|was|watch|water|way down|we|we go|weight if|went|were|whatever|where your|whistle|who|wide|wider|width|will|with it|without the|wont|work|would|wrap|yank|yellow|you about|you and|you do|you drop|you have|you look|you need|you should|you stand|you went|youll|your achilles|your ankle|your arm|your belly|your bottom|your breath|your chin|your ear|your elbow|your eye|your face|your feet|your finger|your grip|your minute|your neck|your own|your shin|your side|your tailbone|your thigh|your waist|your weight|youre a|youre not|youre too|youve got',
      ],
      [
        -0.2,
        'a|a bit|ache|and back|and down|and stop|ankle|as far|back of|belly|bench|between|big|bring|calf|cat you|change|chin|come back|dead|dont arch|door|down to|ear|easy|eye|face|far as|fifteen|finger|for a|for today|forty|grip|had|hand on|hang|heavy|here|high|hold|if youve|im|in a|it because|its your|ive|knee down|lean back|left|let|let it|let the|let your|level|long dont|low that|lower|more|my|nice|nine|nothing|of|off you|on|on it|only as|onto|over it|pair|pinch|pocket|pop|put your|quick|reach|rest it|right there|ring|say|see|seven|shake|shin|short|sign|sit down|slide|soft|something|sore|step|stop at|stretch|swap|swing|talking|that one|that where|the other|the top|these|they|thigh|third|thirty|those|tight|tip|too|tuck your|twelve|under the|under your|up off|up to|week|well|with the|without|you finished|you know|you like|your bum|your head|your heel|your leg|your rib|your toe|your wrist',
      ],
      [
        -0.3,
        'all|and|and rest|arch|as|at|back to|band|be|behind|bit|both|bum|by|catch|do|dont let|each|for|forward|got|half|head|i|if the|in the|it in|it not|just|lean|like youre|little|look|lovely|make|neck|okay|one|only|out as|over you|row|second|shorter because|so|somebody|squat|squeeze|still|taking it|that your|the knee|the mat|the way|then|till|to the|twenty|wall|want|with your|wrist|you can|you want|your chest|your hip|your knee|your shoulder|youve',
      ],
      [
        -0.4,
        'about|again|and shorten|are|away|breath|can|done|eight|five|four|have|if its|its|mat|me|not your|of the|other|press|pull|push|shorten it|shorter|six|stop right|taking|that a|this|you get|your hamstring',
      ],
      [
        -0.5,
        'arm|chest|elbow|foot|hand|hip|if youre|in|last|limit|now|on your|out|rest|shorten|side|slow|ten|three|toe|walk|where you|your limit',
      ],
      [-0.6, 'breathe|feet|good|heel|it that|not|right|shoulder|the'],
      [-0.7, '0|leg|two'],
      [-0.8, 'knee'],
      [-6.4, '*'],
    ],
  ],
  [
    'knee-tracking',
    [
      [1.3, 'dont knock'],
      [1.2, 'aim'],
      [1, 'knee out|kneecap'],
      [0.9, 'buckle|kneecap point|your toe'],
      [
        0.8,
        'caving|direction|feet no|follow the|get to|inward|kissing|knee|knee over|knee push|knee travel|knock|over that|push out|stay over|surgeon|the lace|the same|the toe|them kiss|they dont|to know|toe|toe no|travel|your front',
      ],
      [
        0.7,
        'apart|as your|ceiling the|flop in|follow|front knee|go wandering|go where|joint|knee dont|knee follow|knee stay|line with|middle toe|no wobbling|out dont|over|over the|point over|shove|stay side|the middle|thigh stay|to come|wander|wandering|where the|wobbling|wobbling in|your shoelace',
      ],
      [
        0.6,
        'a knee|at your|both of|by side|cave|dont want|front|how you|in|in dont|in toward|it doesnt|its no|knee apart|knee go|knee in|knee want|kneecap look|know|lace|lace it|middle|not over|out out|out over|out there|over your|point|point at|priya|roll in|same as|second toe|side by|side dont|stay apart|swing forward|the bent|the edge|the joint|the knee|the second|they|toe its|want|want to|when you|where|you land|your feet',
      ],
      [
        0.5,
        'a lower|and the|bad one|ceiling|come in|dive|dive in|doesnt|drift in|edge|em|fall in|go not|goe out|going in|got 0|i dont|if they|im taking|in line|is a|it flop|it wander|itll|knee goe|knee point|knee wide|land|line|no good|of them|one so|out i|out on|pinky|plate off|point where|same|shoelace|stay|taking|that knee|the band|the ceiling|the ligament|them|them cave|them from|to dive|toe go|toe if|toe it|tonight|track over|wander in|want them|you get|your pinky',
      ],
      [
        0.4,
        'and ive|and toe|bad|bent|both|ceiling dont|dont let|drifting|fall|flopping|follow your|getting|go dont|goe|goe the|how the|i see|if i|in that|in youll|it cave|ive got|keep them|kiss|knee drift|knee line|knee that|knee with|kneecap and|kneecap over|lace dont|let em|like it|line up|little toe|not rolling|point dont|push your|roof|second|see|side that|so i|swing|take off|the roof|they cave|toe both|toe point|toward|track|up with|way your|whole way|wide|you and|you take|your big',
      ],
      [
        0.3,
        'a hinge|ache|and every|and if|and over|bill|dont|dont fall|down knee|flop|foot if|foot no|for every|goe over|grinding|head for|hinge|i know|if it|in and|in its|inside|it dive|it drop|it fall|it the|itll want|ive|knee a|knee bend|knee keep|knee track|let|let it|let that|let them|ligament|looking at|my|not in|off you|one thing|operated|pay|pinched|plate|push|push the|rolling|runner|send|shorten|shorten it|sit straight|sneak|soft and|sore|sore one|squat and|stair|straight down|straight over|that how|that pay|that your|the kneecap|the operated|the side|the sore|the stair|them fall|they dive|they roll|thing for|to roll|toe the|tomorrow|toward the|toward your|well|whenever|with|with a|with the|with your|wobble|you a|your lace|your ligament|your middle',
      ],
      [
        0.2,
        'a ball|along your|and whenever|any station|arm at|as the|at any|at the|ball in|band|big toe|block|cave in|come down|doing the|down if|down that|for your|four time|frame|go the|goe straight|headlight|if|if one|ill only|im|in as|in at|in is|in itll|in make|in or|in slow|in you|in youre|it doe|it swing|joint so|keep that|knee on|knee soft|land if|let the|look where|looking|love|lower|make them|me a|mending|middle of|moan at|no|not|not to|on anything|on it|once and|one youre|other one|out along|out to|point and|point if|roll|same road|same way|seen that|shoe|shove the|show|show me|slow down|so drop|start again|starting|swing in|that|that what|that where|the|the frame|the front|the little|the once|the one|the shoe|the very|them fold|them smaller|then ill|they fall|to see|toe a|toe because|toe dont|toe look|toe on|together that|travel out|upstair|use a|want a|way|way as|when|whenever you|where a|with weight|you bend|you on|youll|youll feel|your|your joint|your little|youre finished',
      ],
      [
        0.1,
        'all goe|along|and i|and then|any|anything|as|at|be sore|because|bend in|bend your|box is|by|come|come over|doe|doing|down dont|drop the|end up|every|falling|feel it|feet dont|finished|for it|for you|friday|from|get|get cross|get that|get the|go if|go lower|go over|goe through|going|going down|got|had mine|have you|high for|how|i had|if its|im saying|in here|inside of|is too|it|it all|it on|it roll|it that|it tomorrow|it want|itll be|its falling|ive seen|keep|knee come|knee get|knee you|knocking|ligament doing|little|lunge|mine|moan|on that|on the|one of|one set|only get|or itll|other knee|out|out so|pay for|physio|ride|road|saying|scar|seen|smaller|station|taking it|tell you|thatll|the bench|the exact|the foot|the inside|the physio|the scar|the turning|the whole|them on|them out|thigh|thing|to win|today|toe and|too high|tore|turning|up there|use|very|want you|way down|wear|wear it|weight on|what|what that|where it|where your|win|you come|you for|you need|you only|you to|you tonight|youll get|youll hear|your knee|your new|your other',
      ],
      [
        -0.1,
        '0 0|0 second|a little|a minute|a squat|a straight|about it|above|above the|across|across the|after|against|against the|ahead|air|allowed|allowed to|alway|and come|and dont|and down|and it|and its|and keep|and lower|and no|and off|and out|and rest|and stand|and swap|and up|and your|and youre|another|anybody|anywhere|arch|arent|arm out|armpit|around|as a|as far|as high|as if|as they|as well|asked|at a|at it|at ninety|away from|back in|back knee|back of|back to|backward|bag|band round|band the|bang|bar over|bear|been|before you|behind the|behind you|belly button|below|below the|belt|bend|between your|big|bit|blade|blow|blow out|blue|board|body|bone|book|both hand|both knee|both side|bounce|bouncing|break|breath out|breathe in|breathing|bridge|bring the|bug|burn|burpee|butt|button|call|call it|can see|cant|car|carry|cat|catch|cheat|check|check its|cheek|chin in|clean|clench|click|climber|closer|come back|come home|come up|coming|corner|could|counting|creep|creep in|cross|cushion|day|dead lift|degree|dip|do it|do the|dog|dont bend|dont bounce|dont cave|dont clench|dont drift|dont go|dont grip|dont know|dont lean|dont lock|dont look|dont push|dont sag|dont shove|dont shrug|dont swing|dont throw|dont tip|dont yank|down and|down on|down the|drag your|dragged|draw|drift|drift out|drift up|drink|drive|duck|dumb|dumb bell|ease|ease in|easier|elbow toward|eleven|end|enough|even|evening|every time|everybody|everything|exhale|eye on|face the|facing the|far as|fast|feel the|feet flat|feet wide|fence|fence dont|find|fine|fingertip|finish|five second|flare|float|floor with|folk|foot on|foot turn|for|for a|forearm|forty second|forward not|fourteen|fourth|from your|front dont|front heel|front leg|further|gently|get it|get there|get your|give|glass|go|go out|go with|goe in|going to|gone|got a|grab|green|grip with|ground|grow|grumble|had|halfway|hamstring|hand in|hand on|hanging|hard|harder|has|hasnt|have a|have to|have your|having|he|head|hear|heel stay|height|here|hes|high as|high knee|higher|hold it|hold the|hop|horn|hover|how it|how many|hug the|hundred|hurry|hurt|i|i can|i said|i want|id|im not|in between|in one|in to|inch|inner|inner thigh|inside the|instead|into your|is the|isnt|it at|it back|it come|it down|it get|it go|it goe|it if|it is|it isnt|it meaner|it off|it out|it up|it was|it with|its not|its the|its too|its your|jaw|jump|just above|keep breathing|keep it|keep the|kick|kiss the|knee and|knee are|knee as|knee at|knee down|knee knock|knee not|knee straight|knee to|knee together|knee up|knock your|knot|knuckle|ladder|land soft|lap|last one|lead|leave it|leave the|length|let go|level no|level with|lie|lift your|light|like youre|listen|lock your|locked|longer|look|loose|lower it|make|many|march|mean|meaner|meet|mind the|morning|move|moving|muscle|nearly|night|nineteen|ninety degree|nip|no bouncing|no higher|no looking|nose over|not a|not on|nothing|now the|of it|of the|of those|of you|off the|off your|on a|one foot|one knee|one side|only as|onto the|onto your|opposite|other side|out against|out and|out at|out front|out keep|out of|out the|out when|out wide|outside|over onto|over to|own|paint|palm|park|park it|past the|past your|pause|peel|people|phone|pick|pillow|pinch|ping|place|plenty|pocket|point forward|point your|pointed|pointing|pointing at|poking|pole|pop|puff|pull apart|pull your|pulled|punch|push it|push off|push up|put the|quit|rack|rail|raise|reach|ready|red|relax|rib at|rise|rock|roll over|rolling out|room|rope|round both|round the|rule|run|rush|said|same again|same knee|same speed|seat|second go|second lot|second one|second set|second time|see the|see you|see your|seventy|sharp|she|shirt|short|should|shove your|shrug|shuffle|shut|side of|side plank|sideway|sigh|sink|sitting|sixty|skip|slam|slip|slow as|slower|slowly|small|smooth|snap|snatch|so|so that|so the|soft knee|something|sort|sort of|speed|spine|split|squat|squeeze the|squeeze your|stacked|standing knee|stay at|stay facing|stay low|stay on|stay straight|stay tall|stay there|stay where|steady|stick|stiff|straight ahead|straight dont|straight line|straighten|straighten the|strap|stride|switch|tail|take the|take your|talk|teeth|ten second|than your|thank|thank you|that a|that all|that foot|that one|that us|that you|the 0|the air|the ankle|the arm|the ball|the bar|the bell|the box|the breath|the chair|the chest|the clock|the door|the elbow|the end|the fence|the first|the glass|the ground|the hand|the handle|the inner|the last|the leg|the mat|the nose|the other|the pair|the plate|the push|the rail|the rest|the rib|the ring|the seat|the shoulder|the step|the third|the waist|the way|the wrist|them down|them in|then squeeze|then the|there a|there no|they come|theyll|theyre not|thigh to|think|thirteen|thirty second|this is|this one|those|through the|throw|thumb|thursday|till it|till the|time theyre|tin|tip over|to get|to go|to grow|to hear|to make|to one|toe at|toe face|toe then|toe to|toe up|together dont|told|too|touching|toward you|towel|trip|tuck your|tucked|tug|tummy|twenty second|twice|twist|up and|up on|up over|up to|up you|upright|us|use the|waist|wait|walking|wall dont|wall in|want more|want the|warm|watch|water|wee|week|weight over|when it|where you|where youre|which|while|whistle|whole foot|whole time|wide as|wider|width|window|with it|with that|with you|without|wont|work|yank|year|yellow|you can|you feel|you like|you pull|you push|you want|youll want|your ankle|your belly|your belt|your bottom|your breath|your chin|your ear|your elbow|your eye|your finger|your leg|your lot|your neck|your nose|your own|your shin|your side|your thigh|your tummy|your wrist|youre not|yourself|youve got',
      ],
      [
        -0.2,
        'a bit|a fist|a leg|all the|and let|and not|are going|as deep|as it|as you|at each|be|bend the|both feet|breathe out|bring|but|by the|by your|calf|chair|change|clock|close|count|curl|dead|deep as|did|door|drag|ear|easy|eight a|facing|far|feel|feet under|fifteen|finger|fist apart|fold|forty|from the|gonna|grip|handle|hang|heavy|heel will|high|holler|home|hug|if that|if youve|in a|is|it and|it in|it tip|its a|keep your|knee bent|knee if|know about|lace if|leave|left|level|like a|lock|loop the|make it|mat|me|mind|neck|next|nice|nine|ninety|nobody|not at|not the|number|of that|only|onto|out in|out into|over toe|pair|past|plank|quick|quiet|sag|say|set|seven|shake|shoe lace|sit|sneaking|sneaking in|soft|some|somebody|splay|standing|stay a|still|straight|stretch|tap|that it|the back|the big|the bottom|the heel|the thigh|there|these|they want|third|tight|toe are|touch|tuck|turn out|under your|want it|was|way if|weight|weight in|when they|who|will|you|you dont|you go|you know|youll know|your face|your hand|your head|your rib|your shoulder',
      ],
      [
        -0.3,
        'again|ankle|before|belly|between|chin|deep|dont roll|drop in|eye|fist|flat|foot|for the|four|front of|good|half|have|hip stay|if the|in on|knee drop|knock together|lean|lot|lovely|low|marjorie|nose|not your|of your|off|okay|open|or|please|pushed|put|ring|roll out|row|slide|slow|squeeze|stay down|swap|tall|than|the hip|the loop|the top|the wall|them drift|them knock|theyre|thirty|through|till|to knock|to the|to your|twelve|twenty|under the|we|wrist|your back|your bum|your heel|your hip',
      ],
      [
        -0.4,
        'away|bar|behind|bell|bottom|bum|can|done|dont fold|face|fall out|flop out|happen|hold|if youre|in front|in the|its|lift|line dont|loop|minute|more|on each|on your|poke|press|rib|shin|six|stand|step|stop|that an|the feet|them flop|this|time|tip|top|waiting|waiting to|walk|wall|way the|your chest|youre|youve',
      ],
      [
        -0.5,
        '0|about|all|an|breath|do|drop|feet|first|five|forward|if you|just|last|let your|like|long|now|out as|pull|push them|rest|right|round|ten|then|three|to|turn',
      ],
      [-0.6, 'are|arm|breathe|chest|eight|floor|into the|of|on|other|shoulder|the floor|together|two|under'],
      [-0.7, 'a|and|down|each other|elbow|hand|if your|into|toe they'],
      [-0.8, 'back|each|heel|leg|up'],
      [-0.9, 'hip|them drop'],
      [-6.2, '*'],
    ],
  ],
  [
    'fall-risk',
    [
      [1.2, 'fingertip'],
      [1.1, 'hold'],
      [1, 'chair arm|finger|finger on|fingertip on|heroe|hold of|keep hold|up hand|wall the|we dont'],
      [0.9, 'dont do|feet together|hold the|keep|rail and|the bar'],
      [
        0.8,
        'a hand|and keep|and take|banister|bar|bar and|chair back|chair in|grab it|hand|hand on|hold on|of it|proud|rope and|stand up|the banister|the chair|the worktop|while|worktop',
      ],
      [
        0.7,
        'along|and dont|chair|dont let|hand by|it if|just above|let go|next to|on keep|one hand|rail|so use|table|that your|the rail|the table|there so|use it|what its|while youre',
      ],
      [
        0.6,
        'a small|above|above your|all the|arm if|bar there|bottom one|but|but you|dont be|down its|feet youve|fingertip only|grab|hold there|hovering|it feel|it hand|it stay|its not|knee a|left leg|leg a|letting|letting go|loop band|medal|medal for|no medal|on|on that|on the|only if|op|over the|run|steady|take|take it|that rail|that what|the windowsill|there|there to|till youre|what|windowsill|you dont|you to|your ankle|youre on',
      ],
      [
        0.5,
        'along the|and all|and everything|ankle doing|balance is|be|block|bolted|both hand|bottom step|care|cutting|doing their|dont care|even if|every step|hand hovering|hand its|hand stay|have your|how good|i dont|in front|it|it and|it only|its bolted|its there|keep a|keep both|keep them|lean a|marvellous|of the|on and|on it|one leg|side that|sneeze|so you|stair|steady you|the block|the rope|the walking|the wall|there no|to be|to you|together|use|whole|whole time|you go|you hand|your balance|youre',
      ],
      [
        0.4,
        'a touch|and if|and it|and lean|and one|and they|arm of|as you|balance|beside|bottom|but the|care how|catch|cheating|counter|drill|everything on|face it|feet and|forearm on|getting|getting up|go so|good you|got one|it so|it there|job|keep you|move|next|not 0|on for|on with|only|or the|railing|rise up|run a|scraping|seat or|small|so|so there|something to|stay on|stay where|step there|take a|test|the back|the counter|the left|the near|the railing|their|there for|they stay|time i|to catch|toe heel|up onto|wall|wall with|way along|way down|we|with both|you and|your chair|youre steady',
      ],
      [
        0.3,
        '0 finger|a rail|a row|all in|and back|and grab|and on|ankle|anyone|are all|back its|back of|bar not|bar now|beside you|both|case|catch your|chair are|coming home|do|dont|even|every|everything|foot on|goe first|going and|hand and|hand flat|hand walk|how|if it|insurance|it all|it both|it is|it its|it your|its for|know in|left|leg goe|loop|mind|now hold|of|on as|only and|onto your|operated|operated leg|put a|rail the|rail to|ride|right over|right there|rise|rope|rubbish|side on|stand|stand next|stay|stay with|the stair|them on|there and|there i|there in|tippy|touch|trailing|trouser|two finger|up that|walk along|want anybody|want your|way up|where it|with one|wobble|you keep|you wobble|your finger|your hand|your left|your middle|your rail|your right|your trouser|youre feeling|youve got',
      ],
      [
        0.2,
        'above it|alway|and leave|and those|and your|any time|anybody|at the|back lower|bar on|by the|car park|care if|chair and|chair now|come off|come round|doing|dont come|dont leave|dont wobble|easy|every exercise|exercise|exercise i|feeling|finish one|flat on|for|gangway|halfway to|hand dont|hand there|im not|in a|it step|it with|its|ive seen|just over|keep one|knee to|leave that|ledge|leg behind|mine|near|near hand|now both|off it|on one|onto|or your|please|rail all|rail that|round behind|seat of|seen|shoe on|shuffle your|so your|something|stage|stand on|stay at|stay there|step one|step sideway|that keep|that knee|that so|the|the car|the gangway|the seat|the stage|the way|the whole|the window|them there|there that|there the|till|time|time your|time youre|to finish|up to|walking|wall bar|while you|window|with that|wobbling|you|you are|you do|you need|you off|you stay|you used|your feet|your knee|youre wobbling|yourself',
      ],
      [
        0.1,
        'a chair|a hold|and any|and anything|any|are the|arm|arm till|back or|band|bar its|because the|behind your|bottom to|bump|car|chair both|chair or|clap|come up|coming|dance|dont want|edge|every single|face|feet one|finish|foot back|for every|for your|forearm|front dont|front half|go over|goe it|going over|halfway|high|home|honest|hover|if you|if youre|it i|it that|it till|its what|keep your|kit|know it|leave it|leg stand|low step|middle|middle and|move your|need|need a|nobody|not a|not an|of yourself|one|one hold|one there|or on|over|over it|park|rail its|rule for|seat|seat and|shoe|shuffle|sill|single one|so one|squat|stand behind|step|stood up|sure|take hold|that hand|the arm|the bump|the edge|the low|the side|the sill|these are|time were|to hold|to your|up and|up today|up when|used|used to|were up|whenever youre|whole class|whole foot|with two|worktop or|you come|you till|you up|your bottom|youre standing|youre wobbly',
      ],
      [
        -0.1,
        '0 0|0 and|0 minute|0 second|a bar|a board|a fist|a little|a long|a minute|a post|a slope|a step|a time|a wobble|able|able to|above the|across|across the|ahead|ahead of|air|all over|already|and|and 0|and bring|and change|and come|and down|and go|and hold|and ill|and im|and ive|and no|and nobody|and off|and over|and pull|and put|and rest|and stay|and stop|and swap|and up|and walk|and we|and were|and youre|another|anyway|arch|are only|arm long|arm over|arm straight|arm up|around|as a|as far|as high|as if|as it|as low|as the|ask|asked|at a|at all|at it|at your|away from|baby|back and|back both|back foot|back for|back heel|back knee|back one|back pocket|back till|bad|bar at|bar in|be able|be the|bear|beat|because|bed|before you|behind the|being|belt|bench if|bent back|better|between the|between your|big breath|bit more|bit of|bite|blade|blow|blow out|blue|body|bone|book|boot|bored|both leg|both side|bottom of|bottom stair|bounce|brake|brave|breastbone|breath at|breathe in|breathe out|breathing while|bridge|bring the|bug|buggy|burpee|bus|butt|by|call it|called|can hear|can keep|card|carry|cat|ceiling|chair to|check|cheek|chest proud|clean|clever|click|clip|clip on|close|club|cold|come|come back|come forward|come in|come on|coming up|company|could|counting|couple|cross|cushion|day|dead lift|deep|desk|dip|do it|do one|doesnt|dog|dont arch|dont bounce|dont drop|dont haul|dont have|dont like|dont need|dont rock|dont rush|dont shrug|dont stand|dont tip|dont yank|down and|down on|down round|down the|down to|drag|draw|drink|drive|duck|dumb|dumb bell|each hand|ear|early|ease|easier|eighty|elbow bent|eleven|else|em|empty|empty bar|enough|evening|every minute|every one|every time|everybody|everyone|exhale|exhale on|face your|facing|facing the|fall|fancy|far as|fast|feel the|feeling clever|feet|feet apart|feet back|feet hip|feet stay|fence|few|find|finger over|fist|flamingo|flat hand|float|fold|folk|foot in|foot well|for balance|for everything|for two|for you|forget|forward on|forward so|fourteen|fourth|frame|front if|full|gate|gently|get it|give|go and|go of|go on|go sideway|go to|go up|goe on|going to|gone|got|got the|grass|gravel|green|grip|grumble|had a|hamstring|hand are|hand at|hand behind|hand it|hand off|hand resting|hand side|hand together|hand up|handle|hang on|hard|has|haul|haul on|have a|have to|he|head that|heavier|heavy on|heel down|heel hanging|heel off|help|here the|hes|high as|higher|hill|hip width|hold a|hold your|holding|hollow|hook|hop|horn|how many|how you|hundred|hurt|i can|i had|i know|i said|i want|id|ill be|im|in here|in it|in on|in one|inch|inside leg|instead of|into it|into the|is|is allowed|is fine|is it|is the|isnt|it along|it at|it back|it dont|it down|it elbow|it goe|it hold|it isnt|it keep|it out|it over|it right|it to|it was|itll|its on|its your|ive|ive got|jog|jumper|just the|keep going|keep on|kettle|kick|kilo|kind|knee and|knee back|knee bent|knee down|knee on|knee soft|knee together|kneecap|know what|ladder|land|land on|lap|late|lean back|lean over|lean till|leaning on|left hand|leg|leg and|leg back|leg if|leg swing|leg that|length|let them|lie|light hand|light on|lighter|like its|like somebody|like the|lock|long wall|long way|longer|look at|looking|loop down|loose|lot of|love|low as|low back|lower|lower it|lying|lying there|machine|many|march|mat finger|mean|metre|middle of|minute on|morning|muscle|nearest|nearly|neck youre|need it|never|new|next week|night|nineteen|ninety|no weight|nose|not leaning|not the|not your|now one|now the|now turn|of one|of these|off the|off you|old|on each|on every|on hip|on if|on stand|on this|on top|on you|one and|one arm|one end|one on|one side|one youre|only a|only as|only for|only the|only there|onto the|open|opposite|or|or hand|or take|orange|other arm|otherwise|out in|out to|outside|over one|pace|pad|painted|palm|park it|partner|past the|pause|percent|piano|pick|pinch|place|plate|plenty|pocket|point|pointing|pole|pole in|pop|post|post if|pound|press up|puff|pull it|pulling|pulling the|punch|push the|push up|put both|put it|put one|put the|put your|race|rack if|rail feet|rail for|rail not|raise|ready|red|resting|resting on|right|right hand|right here|right side|rock|room|round both|round your|row|running|rush|sag|said|same hand|sat|saying|scoot|scoot to|sea|seat if|see you|seventy|shake|shape|sharp|she|sheet|shirt|short|should be|shoulder blade|shove|shrug|shut|sideway|sideway on|sink|sip|sitting|sixty|skin|skip|skip the|sliding|slope|slow on|slower|slowly|small step|smooth|so dont|so its|so keep|so that|so the|so we|so youre|sofa|some of|somebody asked|someone|sore arm|sort|sort of|soup|speed|spine|split|split squat|spread|square|squeeze the|squeeze your|stack|stack of|stair go|stand at|stand in|stand side|standing on|station|stay down|stay put|steady and|step back|step up|step your|sticky|sticky bit|stiff|still on|stood on|straighten|strap|stride|stuck|swelling|switch|take the|talk|talking|tap|tape|tea|tell you|than your|thank you|that|that a|that all|that how|that one|that where|that you|the air|the ankle|the bell|the belly|the belt|the big|the board|the brake|the brave|the card|the ceiling|the chest|the clock|the desk|the easy|the elbow|the far|the fence|the first|the good|the grass|the handle|the head|the heel|the kneecap|the long|the loop|the mat|the minute|the neck|the next|the number|the outside|the place|the post|the rest|the rib|the ring|the row|the same|the sea|the second|the shin|the sofa|the spot|the stack|the sticky|the strap|the swelling|the tape|the third|the time|the toe|the towel|the tree|the weight|the wood|then the|there you|thigh or|think of|third one|thirteen|this is|this one|through the|throw|throw you|thumb up|thursday|tidy|till it|till the|till your|tin in|tip forward|tired|to a|to do|to get|to go|to it|to make|to one|to stand|to the|today|toe on|together if|told|too easy|top and|top rail|touch the|touching|toward you|towel|tree|tree if|trip|trust|tuck|tucked|tuesday|tug|tummy|turn and|turn round|turn side|twice|twist|under your|until|up behind|up like|up the|up you|upright|us|use the|very|waist|wait|waiting|walk back|walk it|walk next|walk your|wall if|wall is|wall so|want the|want to|warm|watch|water|way back|we go|wee|weight on|were|weve|whatever|when youre|where the|where you|whistle|white|whoever|wider|wider than|will|wipe|with a|with it|with the|without|wobble and|wont|wood|write|yank|yeah|year|yellow|yes|yet|you back|you cant|you could|you fancy|you feel|you get|you hold|you lean|you like|you on|you otherwise|you should|you stand|you want|youll be|youll feel|your belly|your breath|your bum|your chin|your ear|your elbow|your eye|your heel|your neck|your own|your partner|your rib|your shirt|your side|your time|your toe|your wrist|youre after|youre all|youre bored|youre lying|youre past|youre proud|youre pulling|youre stood|youre strong|youve|youve been',
      ],
      [
        -0.2,
        'after|all of|allowed|an|and a|and catch|and face|and i|and just|and knee|and let|and stand|and then|and there|apart|back on|bag|bar if|been|behind|behind you|belly|bent|both feet|box|bring|bum|by your|calf|call|can|cant|change|chin|clock|count|curl|dead|did|do the|doe|dont hold|dont lean|drop|edge heel|edge of|eye on|far|feet flat|feet on|feet under|fifteen|fine|flat|foot behind|for a|for it|forty|from the|good|ground|hanging|harder|have|hear|height|i|if that|if the|if youve|in your|instead|it feet|it for|it in|it up|its only|its the|its too|jump|keep breathing|know|last one|lean|lean on|leaning|leave the|let|let your|level|like a|like youre|line|low|lunge|make it|mat|mind the|moving|much|neck|need to|nice|nine|none|not on|nothing|now round|number|of a|of that|of them|of those|on all|once|one foot|one of|or one|other hand|out of|over your|own|pair|past|position|quick|quiet|rail both|reach|seven|shin|should|sit on|slide|some|sore|spot|stand by|start|steady one|stick|stop you|stretch|strong|swing|take your|tell|thank|that it|that to|the ball|the box|the door|the end|the feet|the ground|the hip|the inside|the last|the middle|the right|the shoulder|the step|them|these|theyre|thing|think|thumb|tight|time its|tin|to stay|toe to|too much|toward|up there|want|want it|week|what stop|who|wide|width|wobbly that|work|you going|your arm|your chest|your foot|your head|your leg|your shoulder|your thigh|youre a',
      ],
      [
        -0.3,
        'a bit|and both|and do|and its|and that|as|back to|backward|ball of|before|bend|between|big|board|breathing|chair against|chair hand|door|end|feel it|had|half|hand if|hang|have the|heavy|ill|inside|into|it or|its a|let the|little|lot|lovely|make|not|okay|on a|out as|out on|plank|put|rack|rail if|rail stand|rib|ring|roll|say|see|set|side|soft|squeeze|stand tall|swap|than|the band|the foot|the front|the knee|the rack|the thigh|there a|third|thirty|through|to that|top of|twelve|twenty|under the|up on|wall one|was|when|with your|wrist|you both|your hip|youre not',
      ],
      [
        -0.4,
        'a|about|again|against|against the|away|back with|chair the|done|each|eye|first|foot|from|head|if your|it on|let it|lift|light|look|me|more|my|on to|pull|push|side of|slow|somebody|still|that the|the bench|the leg|the other|toe|two|up|walk|wall and|way|weight|well|youll|your back',
      ],
      [
        -0.5,
        'a rope|at|awning|ball|bell|bench|bit|breath|chair if|chest|eight|five|forward|four|heel|hold it|if|in the|it the|minute|no|now|of your|press|rest|same|six|straight|tall|the awning|this|under|whole way|your',
      ],
      [
        -0.6,
        '0|breathe|elbow|floor|get|if its|in|last|long|other|round the|second|sit|stop|ten|the floor|the top|then|thigh|three|turn',
      ],
      [-0.7, 'knee|off|shoulder|top'],
      [-0.8, 'down|hip|like|out|round'],
      [-6.4, '*'],
    ],
  ],
  [
    'overexertion-stop',
    [
      [1.1, 'and march'],
      [1, 'march|up and'],
      [0.8, 'dizzy|go dizzy'],
      [0.7, 'just stay|of it|or your|standing and|stay up'],
      [0.6, 'chest|chest or|get a|going up|if you|in your|or|pain|pain in|standing|stay|tight you|your chest'],
      [
        0.5,
        'and anybody|any|any pain|cant get|dizzy or|end|faint|feel sick|get chest|mat that|or you|or youre|seeing|sick|sit down|star|tight|whatever were|you get|you go|you walk|youre seeing',
      ],
      [
        0.4,
        'a pain|a word|and down|and you|anybody|cant|chest pain|chest you|come over|dont get|ease down|end of|get|get off|goe|me|over faint|sit on|stop|tell me|the chest|the end|the mat|today you|walk|walk to|whatever|word|you cant|you feel|you see|you shout|you stop|you tell',
      ],
      [
        0.3,
        'a hand|across the|and wobbly|at me|at once|cant talk|care|chest goe|chest hurt|dont care|dont finish|down and|down on|ease|go of|goe tight|going|hand up|handle|handle and|hurt or|i dont|if|let go|mat|me i|once and|or dizzy|or there|pain or|put a|quit and|see|see star|seeing star|sick or|sit|spot|stop dont|stop walk|talk you|tell|that the|the handle|tightness|today|wave|wave at|were|winning|wobbly|wont|you come|you let|you quit|you wave|your bag|your breath',
      ],
      [
        0.2,
        'a bang|across|all of|and if|and sit|and stop|and that|and there|any more|any of|any point|anybody with|anything in|anything sharp|at any|bag|bang on|breath wont|breath you|come back|everything we|finish|finish it|for all|grey|head or|heroe|hurt|i come|i wont|it i|it you|less|less of|like that|no heroe|on any|once|orange|out you|over dizzy|pedalling|quit|sentence|sharp or|shout|slice|star you|step and|still and|stop at|stop stand|swimmy|swimmy you|talk|that on|that you|the step|then and|to me|to my|truck|unlocked|walk and|walk you|were doing|were on|who|wont come|you done|you dont|you take|youve a',
      ],
      [
        0.1,
        'a crate|about it|and find|and go|and i|and lean|and put|and then|and walk|anything|back and|back on|back step|bang|be polite|breath|came|come|crate|doing|done you|dont be|down you|down youre|end down|every station|feel|finish the|for everything|for my|friday|gate|get tight|get your|go and|grass|hold the|id|id rather|if youve|it off|it youre|lean on|me that|middle of|my|of you|on the|onto the|or anything|or the|over|point|polite|rail|rather|rather you|rep|set for|shout me|stand still|step back|stop and|stop there|stop you|take a|the day|the gate|the grass|the head|the rail|the set|the world|there and|think|tight in|tight stop|walk it|wall and|we do|were in|world|you|you came|you finished|you start|you step|youre done',
      ],
      [
        -0.1,
        '0 0|a bit|a minute|about|after|all do|an|and come|and done|and its|and let|and off|and rest|and stand|and swap|and up|ankle|anything that|apart|around|at your|backward|ball|bar|because|been|before you|behind you|belly|bend|bent|blow|blue|bored|bottom|box|breathe in|breathe out|breathing|bridge|bring|bug|bum|but|by|by your|calf|call|carry|chest get|chest up|clock|close|come find|come up|coming|count|cramp|crate and|curl|dead|dead lift|deep|did you|dip|dizzy you|do in|do your|doesnt|dog|dont let|door|down|down there|drink|drive|drop|dumb|dumb bell|ear|easy|eleven|enough|every|every single|everybody got|exhale|face|faint you|far|fast|feel it|feel like|fence|find|find me|fine|finger|fist|for a|for today|forearm|forty|fourteen|from the|front of|funny|get any|giddy|go|go giddy|gone|grab|green|grip|groin|had|halfway|hamstring|hand on|hang|have a|he|head|head goe|hear|height|here i|high|higher|hold|hold your|holler|home|horn|how|i can|i mean|if it|if that|if there|in|in a|in front|in here|into|it down|it goe|it if|it in|it out|ive|jump|just not|keep breathing|kick|lap of|last one|leave|left|let|let it|let the|let your|level|lie|like the|line|look at|loop|lunge|make|mean|mean it|mind|more|morning|move|nearly|neck|need|never|night|nine ten|ninety|nose|not a|not up|nothing|numb|number|of the|of them|of those|of your|off the|off you|on and|on it|open|or a|out of|out on|over the|over your|owt|pair|palm|park|past|people|plank|plate|please|press up|proud|put|quick|quiet|quit right|raise|reach|red|right there|rock|run|said|seat|see you|shake|sharp|shin|short|should|single|single thing|sit up|slide|slip|slower|slowly|small|smooth|some|split|stand|stand up|star or|stay down|stay on|steady|step|step up|stick|stretch|swing|switch|tap|thank|thank you|that a|that did|that just|that one|that sort|that your|the arm|the back|the bottom|the foot|the front|the groin|the knee|the other|the shoulder|the slip|the top|the way|the whole|there a|there you|these|they|theyre|thigh|thing we|thirteen|those|through the|throw|thumb|to your|together|touch|tuck|tucked|twice|twist|under the|under your|up on|us|use|wait|walking|wall|want it|was|water|week|what|whatever youre|when you|where|while|whistle|whole|wide|width|with the|with your|work|yellow|you all|you know|you like|you need|you put|you sit|youll|your arm|your elbow|your feet|your four|your head|your heel|your hip|your knee|your leg|your rib|your shoulder|your side|your toe|youre|youre finished|yourself|youve|youve got',
      ],
      [
        -0.2,
        'all|and shout|and the|away|band|before|behind|bell|big|bit|both|chair|change|chin|did|each|everybody|eye|fifteen|flat|floor|forward|from|half|have|heavy|here|i|if its|if the|if youre|ill come|im|know|lap|light|like a|like youre|little|look|lot|low|lower|next|nice|nine|nobody|only|or its|out as|pull|rib|ring somebody|roll|row|same|seven|sharp you|soft|squeeze|stop that|swap|tall|than|the floor|there|thing|third|thirty|through|tight or|till|to the|tonight|too|top|turn|twelve|twenty|under|up for|up you|way|weight|well|when|with|wrist|you can|you ring|you want|your back',
      ],
      [
        -0.3,
        'again|and ill|any chest|are|as you|at the|bench and|can|do|dont|first|foot|for|front|got|hand|ill|is|its a|keep|lift|long|lovely|minute|name|okay|on|other|own|press|push|put your|rest|ring|round|say|say your|sit and|slow|squat|straight|the bench|them|then|this|time|toe|up|want|wrong|your own',
      ],
      [
        -0.4,
        'and|arm|bench|eight|elbow|five|heel|hip|if your|last|now|off|out|shoulder|side|six|so|somebody|something|ten|your|your hand',
      ],
      [-0.5, 'a|as|back|breathe|feet|four|it|its|knee|leg|like|no|right|second|three|to|two'],
      [-0.6, '0|good|not|one|that'],
      [-0.7, 'the'],
      [-6.2, '*'],
    ],
  ],
  [
    'impact-landing',
    [
      [1, 'falling|land|shin'],
      [0.9, 'land soft|want the|your shin'],
      [0.8, 'dont want|feet is|going straight|hip heavy|i dont|light|or|or your|soft|tomorrow'],
      [0.7, 'a cat|do heel|dont like|going|landing|slap|step it|that going|up your|you land|your achilles'],
      [
        0.6,
        'achilles|and if|arent|bladder|bounce|cat|having|having it|hop|if your|its your|knee or|march|quiet|shin are|shin or|sink into|straight up|taking|your bladder|your knee',
      ],
      [
        0.5,
        'barking|hear it|heavy|heel raise|if|into|into it|land like|lot of|march it|pounding|sink|soak|soak it|straight|the bouncing|want',
      ],
      [
        0.4,
        'and do|and skip|bend and|bouncing|burglar|can hear|do a|foot and|get the|hear|heel as|if i|instead|is|it a|it do|it soft|joint|jumping|knee get|like the|no bounce|or its|quit|raise|shin and|skip|soft on|squat and|straight into|that pay|that so|the lot|the shin|then heel|then the|thud|toe then|under your|up or|when you|you stop|your joint',
      ],
      [
        0.3,
        'a little|a slap|a stiff|achilles are|and stand|and then|are grumbling|as good|back dont|because|bill|bladder dont|can feel|do|dont hop|floor not|foot|foot to|from the|front of|giant|giant stride|grumbling|heel|heel sink|hop out|i can|if theyre|into your|is your|it out|it over|it side|it up|it your|just as|keen|keep one|knee dont|knee that|light on|like|lot|moaning|not having|of it|one side|out to|pay|quiet as|send|send the|side to|so|so stop|start|step|stiff|stride and|the bill|the front|the hop|then|to heel|to one|to side|your',
      ],
      [
        0.2,
        'a fast|a jump|a march|a shed|about it|and keep|and leave|and quiet|anything with|are|are bad|are going|as a|at that|at you|ball of|bark|bent knee|by friday|down to|drop down|either|feel it|feet and|foot on|friday|go right|goe straight|going to|if it|in it|it by|it dont|it if|it instead|it quiet|it so|jump|knee when|know about|land quiet|leave the|leg at|like a|loud|make it|march on|morning do|no hop|of your|one foot|otherwise|pelvic|pelvic floor|right to|side and|side no|skip it|slapping|so drop|so if|soft like|speed|stiff leg|stop|stop and|stride|taking it|the ball|the foot|the morning|then your|theyre|this so|to a|to know|to me|today you|toe|toe and|toe to|walk no|when|you hear|you step|your back|your foot|your hip|your pelvic',
      ],
      [
        0.1,
        'a lot|a sore|a whole|again its|and your|anything|as you|bad|ball|bent|bent and|bounding|cat on|cost|dont love|fall|flute|foot soft|for you|from|happy|hear a|hear you|height no|how i|i|i lost|im serious|is how|it|it im|it same|it step|knee|land if|last fall|leave|lost|lost a|love it|make|morning|no bounding|no jump|no shame|of them|on a|on the|or a|out and|paying|roof|same height|serious|shame|shed|soft and|sore|spot|spring|tendon|thatll|the other|the skip|the spot|the toe|these|these no|these out|through the|thump|today|under|up i|with a|you big',
      ],
      [
        -0.1,
        '0 0|a bit|a minute|about|about your|above|achilles is|across|after|again|ahead|along|and a|and down|and i|and its|and off|and rest|and stop|and swap|and that|and walk|and you|ankle|any|anybody|apart|arch|are sore|armpit|around|as far|as high|as if|as it|as the|as your|at your|away from|back of|back to|bag|balance|been|belt|bend|bend the|bend your|better|between your|big|blow|blue|board|body|bone|book|box|breathe into|breathe out|breathing|bridge|bring|bug|but|by|by the|by your|call|call it|can see|cant|carry|catch|clock|close|closer|come up|coming|count|cramp|cross|curl|cushion|day|dead|dead lift|deep|did|dip|doe|doesnt|dog|doing|dont bounce|dont do|dont lean|dont shrug|dont sink|dont swing|door|down and|down if|drag|drink|drive|dumb|dumb bell|ear|eleven|em|end|enough|even|every|everybody|exhale|eye on|fast|feel|feel the|feet|feet flat|feet under|find|finger|finish|fold|for it|for the|forearm|forty|fourteen|from your|further|get|get your|give|gone|grab|green|grip|grumble|had|half as|halfway|hamstring|hand on|handle|hang|hard|harder|have a|he|heel heavy|high as|higher|hip are|hip width|hold it|hold the|home|hot|hug|i hear|i know|i said|i want|if that|if the|ill|im|im not|in a|in front|in your|inch|instead of|into the|is fine|is sore|is the|isnt|it down|it goe|it hurt|it in|it is|it land|it on|it with|its not|its the|its too|jaw|jog|keep breathing|keep it|keep your|kick|knee and|knee down|knee if|knee soft|knee straight|knee to|lap|last one|leave it|left|length|let it|let the|let your|level|lie|lift your|lighter|line|lock|look at|loop|loose|low back|lower it|lunge|mat|me|mean|middle|mind|move|much|near|nearly|need|never|new|ninety|no|no bouncing|no higher|nose|not a|not your|nothing|number|of|of a|of those|of you|on it|once|only as|onto|onto your|open|other leg|other side|out of|out on|over the|over your|own|palm|park|past|peel|people|pick|pillow|pinch|plate|please|plenty|pocket|point|puff|push the|quiet feet|rail|reach|red|rock|room|run|rush|said|seat|second lot|shake|shoe|short|shorter|should|shrug|shuffle|side|sitting|slower|small step|smaller|smooth|so the|some|something|sooner|sort|sort of|split|split squat|squeeze your|stair|stand tall|stand up|standing|station|steady|step if|step up|stick|stop there|straight ahead|strap|stretch|swing|switch|tail|take a|take your|talking|tap|tell|than your|thank|that a|that it|that one|that the|the arm|the back|the bar|the bench|the bottom|the chair|the floor|the hip|the last|the leg|the mat|the middle|the same|the shoulder|the side|the step|the thigh|the top|the wall|the way|the whole|there a|thing|think|thirteen|this is|through|through your|thumb|tight|tip|to get|to the|too much|touch|toward|towel|tuck|tuck your|tucked|twice|twist|under the|up and|up on|up to|upright|use|wait|walk it|walking|want it|want to|watch|water|week|were|what|while|whistle|who|whole|whole foot|wide|wider|width|with it|with the|with your|wont|work|would|wrist are|wrist straight|you cant|you come|you dont|you get|you go|you know|you like|youd|your arm|your armpit|your belly|your breath|your bum|your calf|your chest|your chin|your ear|your elbow|your face|your finger|your fist|your forearm|your grip|your hamstring|your leg|your low|your neck|your rib|your side|your thigh|yourself|youve got',
      ],
      [
        -0.2,
        'an|and bend|band|bar|be|before|behind|belly|bench|between|bit|both|bottom|bum|calf|chair|change|chin|do it|dont let|each|easy|eye|face|far|fifteen|fine|fist|flat|forward|got|have|head|here|high|hurt|if its|if youve|its|ive|just|keep the|knee are|lean|like it|like youre|look|low|neck|next|nice|nine|nobody|off the|other|out as|pair|plank|put|quick|right|ring|rise|roll|row|same|say no|see|set|seven|slide|small|somebody|squeeze|still|swap|tall|than|the knee|they|thigh|third|thirty|this|those|till|to|to your|together|too|top|turn|twelve|twenty|walk|wall|was|way|we|weight|well|where|you can|you want|youll|your hand|your head|your heel|your toe|your wrist',
      ],
      [
        -0.3,
        'all|at|at the|away|bell|breath|done|everything|half|hip|hold|if you|if youre|keep|last|lovely|lower|minute|more|my|okay|only|over|pull|rib|say|take|that your|them|time|with|wrist|you|your shoulder|youve',
      ],
      [
        -0.4,
        'a|and|chest|come|eight|first|five|for|four|good|lift|long|now|on|on your|press|push|rest|round|sit|six|slow|ten|that',
      ],
      [-0.5, 'back|breathe|elbow|leg|let|not|one|out|second|shoulder|stay|there|three|two|up'],
      [-0.6, '0|arm|hand|in|off|the|youre'],
      [-0.7, 'down|go'],
      [-6.3, '*'],
    ],
  ],
  [
    'inverted-head-down',
    [
      [0.7, 'blood|blood pressure|or|pressure|upside|upside down'],
      [0.6, 'eye|glaucoma|head|high|high blood|if youve|pressure or|trouble|your blood|your head|youve'],
      [
        0.5,
        'bad eye|dizzy|dont go|elbow on|eye or|knee and|or a|or you|or youve|so if|your knee|youre upside|youve high',
      ],
      [
        0.4,
        'and your|bad|dont hang|down so|eye trouble|glaucoma or|got blood|hang|heart|lower than|or eye|pressure up|trouble or|with|with your|you dont|your heart|youve blood',
      ],
      [
        0.3,
        'a chair|a hero|a thing|any|arm on|be a|cold|curry|do|do it|dont be|down you|drop|drop to|get dizzy|glaucoma dont|head lower|head up|hero|hey|if|keep your|make your|or glaucoma|pressure trouble|rest there|spotter|stop at|than your|there dont|thing|thing with|up or|you do|you feel|your elbow|your eye|your thigh|youre the',
      ],
      [
        0.2,
        'a bad|a head|and keep|and look|any of|anybody|anybody with|bat|being|chair|desk and|dizzy you|dont drop|drop your|had a|hand up|head level|head you|it with|just roll|level|lower|of that|on a|on your|or anything|or your|photo|put your|roll to|sat|skip the|something with|than|that keep|the bat|the bench|the desk|the eye|the tuck|thigh|thigh and|to hand|to your|tonight|up on|you get|you have|you put|you skip|you stop|youll do|your arm|youve a|youve got',
      ],
      [
        0.1,
        'a thick|and hug|and lean|and rest|and stay|any time|anything|be|bench|chair instead|chair or|chair seat|desk|eaten|feel|for anything|for more|get|go over|got|had|hand on|hang your|head hang|hip keep|hug|hug your|if your|it and|it for|it sat|just|keep|lean on|level with|look at|lunch|make|out youre|over you|put|rest your|seat|seat and|sit this|skip|something|stay level|stay sat|swap it|than the|that up|the head|them on|thick|this out|time your|tonight if|tonight where|tuck|up above|up and|up dont|up level|up out|where the|who|with them|wrong|you keep|you stay|youll|your hand|youve just',
      ],
      [
        -0.1,
        '0 0|a bit|a minute|after|ahead|all the|and just|and off|and stop|and swap|and that|and the|ankle|apart|bag|ball|band|bar|been|before|behind|belly|bend|bent|between|big|bit|blow|blue|bottom|bounce|breathe out|breathing|bridge|bring|bum|but|by the|by your|calf|cant|carry|clock|close|coming|count|curl|cushion|dead|dead lift|did|dip|doesnt|dog|doing|dont|dont hold|door|down|drink|drive|ear|easy|eleven|end|enough|every|everybody|everything|eye on|face|far|feeling|fifteen|fine|finger|finish|fist|flat|floor|for it|for the|forearm|forty|fourteen|from the|give|goe|gone|got a|green|grip|halfway|hamstring|have a|he|heavy|height|here|higher|hold it|holding|home|horn|how|if it|if that|if the|if you|ill|in your|inch|into|it dont|its a|its the|ive|jump|just breathe|keep breathing|kick|knee if|know|last one|leave|leave the|let it|let the|let your|lie|light|like youre|line|loop|lot|low|lunge|make it|make you|mat|mind|more|morning|move|much|nearly|neck|need|next|nine ten|ninety|nobody|nose|not a|nothing|number|of them|of those|of your|off the|on it|once|open|out and|out as|out on|over your|pair|people|plank|plate|please|plenty|press up|push the|quick|quiet|raise|reach|red|ring|rock|row|run|say|see|seven eight|shake|shin|short|shrug|shut|slide|slower|slower than|slowly|small|smooth|some|somebody|sore|split|standing|start|station|steady|stick|still|stop|strap|stretch|swap|swimmy|swing|switch|take|tap|thank|that a|that the|that your|the back|the bar|the bottom|the elbow|the floor|the front|the hold|the knee|the mat|the other|the shoulder|the top|the wall|the way|the whole|there a|these|they|theyre|think|thirty|those|through the|thumb|tight|till|together|too|towel|tucked|twist|under the|under your|us|use|walking|was|water|way up|week|weight|were|what|while|whistle|whole|wide|width|work|wrist|yellow|you can|you go|you know|you want|your chest|your chin|your ear|your feet|your heel|your hip|your rib|your shoulder|your side|your toe|your wrist|youre|youre not|youre on|yourself|youve been|youve had',
      ],
      [
        -0.2,
        'about|arm|as you|at|away|bell|both|breath|by|can|change|chin|come|dont let|each|foot|for|forward|from|front|going|half|if its|im|in the|knee|left|like a|little|me|my|nice|nine|of the|on the|only|over|pull|rib|same|set|seven|sit|soft|squeeze|stand|stay|tall|there|third|this|through|time|to the|top|turn|twelve|twenty|under|wall|want|way|we|well|when|your back',
      ],
      [
        -0.3,
        'again|all|are|chest|done|first|hand|hold|is|lift|long|lovely|minute|okay|on|other|press|push|right|round|six|slow|squat|straight|them|then|toe|up|walk|you',
      ],
      [-0.4, 'as|eight|feet|five|four|heel|hip|i|if youre|last|let|not|now|of|shoulder|side|step|ten|three|to'],
      [-0.5, 'a|back|breathe|go|in|its|leg|like|off|out|second|two|your'],
      [-0.6, '0|and|good|it|no|one|that|the'],
      [-6.2, '*'],
    ],
  ],
  [
    'dizziness-rise',
    [
      [0.8, 'and if|and wait|come up|room|the room'],
      [0.7, 'back down|before|swim|swimming|swimming sit|wait|when|you stand|your blood|your knee|youre up'],
      [
        0.6,
        'before you|blood|head swim|if the|sit|sit and|sit straight|slow and|stand|stop|straight back|swim when|the next|up slow|when you|when youre',
      ],
      [
        0.5,
        'and miss|because|because your|come|down again|goe|hand on|if|it sit|knee and|miss the|settle|slowly|still|still on|till|woozy|you come|you go',
      ],
      [
        0.4,
        'a second|and let|and tell|and when|bend your|catch|count|down and|goe round|halfway and|head|hold on|if you|it slowly|its gone|knee till|march|march on|miss|on to|on with|or the|roll up|room goe|room spin|see star|sit there|spin|stand still|star|stop at|stop halfway|take it|tell me|then sit|there a|till its|time you|up dont|up out|up take|wait for|with it|you see|your head',
      ],
      [
        0.3,
        'a count|a look|again and|and stop|at your|bus|catch the|cause|count of|every time|gone|got to|had a|halfway|in two|it goe|look round|moving|next|now stay|of three|on your|out of|round and|second at|slowly slowly|something|stand and|stay there|stood|stood up|straight|tell|the bus|there and|thigh first|till youve|to catch|top and|up|up sit|you sit|you stay|your thigh|youve had',
      ],
      [
        0.2,
        'a time|and count|and every|and hold|and roll|and you|anything else|because its|before anything|before the|bend|bit|bit and|bit more|blood pressure|bone|bone at|catch up|coming up|count to|dizzy you|down you|else|for the|get up|getting|getting up|giddy|hand to|hear me|holding on|if it|knee up|me|more and|next one|not just|of that|one bone|pressure|right back|rise up|roll|second before|see|settle before|sit right|slow|something and|stand there|stay|stay put|still a|still and|that chair|that every|that make|thigh|this morning|time and|time not|to hip|to three|up a|up in|up slowly|up that|up till|wait and|with|with your|you hear|your hand',
      ],
      [
        0.1,
        'any|any time|anything|at a|chair|coming|dizzy|every|for it|got|had|hear|holding|if your|its the|just the|last and|let it|let the|make|me and|morning|on and|or sit|rise|round|sit down|stop and|stop there|straight down|swimmy|take|the chair|the first|the floor|the top|then bend|there|till your|tilt|up hand|up stand|up there|wait a|you rise|you stop|you wait',
      ],
      [
        -0.1,
        '0 0|a minute|above|after|ahead|all the|along|an|and again|and back|and change|and come|and its|and off|and rest|and swap|and then|and there|and up|and walk|ankle|another|apart|as if|as it|at|at the|back to|bag|ball|beat|been|behind you|belly|belt|bench|bend the|bent|between your|big|blow|blue|box|breathe out|breathing|bridge|bring|bug|bum|but|by the|by your|calf|call|cant|carry|clock|close|come back|come down|come on|come round|curl|cushion|dead|dead lift|did|dip|do it|doe|doesnt|dog|doing|dont let|door|down on|drink|drive|drop|dumb|dumb bell|ear|eleven|end|enough|even|everybody|everything|exhale|eye on|face|far|fast|find|fine|finger|finish|first|first then|fist|for a|forearm|forty|fourteen|from the|give|grab|green|grip|grow|hamstring|hand|hang|hard|have a|he|height|here|hes|high|higher|hold it|hold your|home|horn|how|hug|hurt|if its|if that|if there|ill|in your|inch|instead|into the|isnt|it down|it out|it up|its a|its not|its too|ive|jump|keep breathing|keep your|kick|knee down|knee if|knee then|know|land|lap|last one|leave|let|let your|level|lie|light|like youre|line|look at|loop|lunge|make it|mat|middle|mind|more|move|much|nearly|neck|need|never|nine ten|ninety|nose|not a|nothing|now the|number|of it|of the|of them|of those|of you|of your|off the|off you|on|on a|on it|once|one foot|onto|open|or you|or your|out on|out when|over your|own|pain|palm|past|people|phone|pick|pinch|plank|plate|please|plenty|pocket|press up|pressure up|push the|push up|put it|quiet|rack|rail|raise|reach|ready|red|rock|run|say|seat|see you|seven eight|shake|sharp|shin|short|shut|sit on|sit to|sitting|slide|slow down|slower|slower than|small|smooth|soft knee|some|sore|sort|sort of|split|squeeze your|stair|stand tall|standing|start|station|stay down|steady|step up|stick|stop when|straight up|strap|stretch|swing|switch|take your|taller|tap|thank|that a|that the|that your|the arm|the back|the bar|the bench|the bottom|the clock|the elbow|the front|the heel|the hip|the last|the leg|the mat|the other|the rail|the shoulder|the thigh|the wall|the way|the whole|then knee|then the|then wait|these|they|theyre|thing|think|thirteen|this|those|three|through the|thumb|tight|till the|to stand|to your|together|too much|touch|toward|towel|tuck|tucked|tummy|twice|twist|under the|under your|up and|up if|up on|up to|up when|up with|up you|us|use|walking|want it|warm|was|water|week|weight|were|what|where|while|whistle|who|whole|wide|width|with the|wont|work|wrist straight|you can|you cant|you do|you dont|you know|you like|you need|youll|your arm|your breath|your bum|your chest|your ear|your elbow|your feet|your heel|your leg|your rib|your shoulder|your side|your toe|your wrist|youre done|youre not|youre ready|yourself|youve|youve got',
      ],
      [
        -0.2,
        'about|and|and down|and sit|and the|away|back|band|bar|be|behind|bell|between|both|bottom|by|change|chin|each|easy|eye|feel|fifteen|flat|forward|from|going|half|have|heavy|if youre|if youve|im|in the|into|its|just|knee|lean|left|like a|little|lot|low|lower|my|nice|nine|nobody|only|out as|pair|quick|rib|right|ring|row|second and|set|seven|sit up|soft|somebody|squeeze|swap|swimmy you|than|the knee|then|third|thirty|through|too|turn|twelve|twenty|wall|way|we|well|wrist|you want|your back|your hip|youre',
      ],
      [
        -0.3,
        'all|and stand|are|as you|breath|can|come over|do|done|foot|for|front|get|hip|lift|long|lovely|of|okay|on the|other|pull|push|same|second|squat|tall|to|to the|toe|under|want',
      ],
      [
        -0.4,
        'chest|down|eight|elbow|five|four|heel|is|keep|last|minute|not|press|rest|shoulder|side|six|so|stand up|step|ten|them|walk',
      ],
      [-0.5, 'a|arm|breathe|feet|go|i|in|it|leg|like|the|two|your'],
      [-0.6, '0|as|dont|good|no|off|one|out|over|that'],
      [-6.2, '*'],
    ],
  ],
  [
    'lumbar-extension',
    [
      [0.8, 'back pinch|low back|peel|pinch|the low'],
      [0.7, 'back come|back lift|if it|lift off|low|nip|or|the mat'],
      [
        0.6,
        'a pinch|ach|and if|any|arche|back|back peel|bend|bend your|come lower|down and|elbow further|feet down|how|if|if your|lie|mat|nip in|off the|or lie|peel up|pinch in|pop|your back|your low',
      ],
      [
        0.5,
        'ache|arch|at you|back pop|bend the|come out|dont go|elbow or|further|higher|in the|it arche|it peel|leg on|lift|or dont|or it|peel off|people|pop up|shorten|spine|stay down|that how|tomorrow|too low|up off|up that|you leave|your elbow|your leg|your spine',
      ],
      [
        0.4,
        'arche up|arching|as the|back arche|back get|back stay|because|board|come|dont do|far|finished|floor|further out|get a|go one|go so|high|how back|how people|i mean|it bend|it lift|it nip|it smaller|it tomorrow|itll|knee in|knee that|knee this|known|leave|leave your|lie flat|lower or|make|make it|mat and|mat if|of it|off|one at|or just|or stop|out of|out or|shorten it|slide the|so far|start|stay stuck|stop|stuck|stuck to|taking|taking the|that your|the floor|the foot|the heel|the knee|time or|tomorrow so|up or',
      ],
      [
        0.3,
        'a rest|a time|and have|and itll|and slide|at a|away that|back dont|back is|back your|bark|bring them|brought|daylight|daylight under|dont come|down if|down on|feel a|flat|for it|for you|glued down|go into|in your|is what|it|it cant|it for|it pinch|it pop|it shorter|it start|itll tell|just do|leg are|lie there|lift or|mat that|mean|off and|on you|or leave|people do|press your|put your|shorten the|shorter because|slide|smaller or|so dont|spine taking|start to|stay|straight away|that too|them up|this one|too|touching|touching the|tug|up as|waist keep|you get|you here|you put|youll feel|your knee|your waist',
      ],
      [
        0.2,
        'a stretch|and lift|and listen|and not|and pull|any of|anything on|arche off|argument|as high|back arch|back glued|back into|back start|because that|being|bit that|both feet|bottom of|bring|cant|come off|come up|do it|do the|dont push|dont reach|down flat|every exercise|exercise|floor no|floor that|further away|get hurt|glued|go as|gone too|have a|hear me|higher up|if anything|if there|in dont|it ach|it isnt|it make|it or|it out|it still|it that|its sharp|just stop|just tap|knee and|knee straight|leg down|leg stay|leg too|line of|listen|load|lower it|make your|mat or|mean every|mean it|now that|of these|of your|off dont|off there|on so|only and|only go|or youll|pull the|push through|reach as|right now|right then|saying|saying its|shorter|shrink|slide your|smaller|so|so low|so stop|still pinch|tap the|telling|telling you|that doe|that it|that when|the arm|the bit|the leg|the towel|themselve|there that|these i|through it|too far|tweak|up higher|up youll|waist|walk your|what|when it|you in|you quit|youre finished',
      ],
      [
        0.1,
        'air if|and lie|and shorten|and start|and whenever|and you|anything|are out|as far|away|back and|back from|back go|back grab|back of|back with|back you|ceiling|do|doe|doing|doing the|doing your|elbow|every|every single|far or|feet on|floor and|floor or|floor the|further off|get cross|grab at|grip the|half that|hand if|hear|here|high so|hurt|in|instead|into|isnt|it at|it grumble|it hurt|it is|it the|it you|its a|later|leave it|leg|leg higher|leg in|less|lie down|line|looking|low and|low that|lower|moan|moan at|nicely|night|not a|off or|on that|on this|or stay|or you|pull your|reach|reach so|rest and|send|send it|sharp|single|single thing|stay on|stay where|stop and|stop that|strain|stuck down|tell you|that or|that the|the board|the bottom|the ceiling|the night|the work|there looking|these|thing on|this|too high|towel|under your|whenever|whenever youre|work and|you go|you make|you rest|you tomorrow|youll|your feet|youre too|youve gone',
      ],
      [
        -0.1,
        '0 0|a foot|a knee|a little|a minute|a plate|above|aching|after|against|all stop|along|along the|and back|and down|and go|and off|and take|and the|and then|and up|ankle|apart|arch your|arent|arm by|around|as|as a|as if|as it|as low|at|at all|away from|back bend|back doesnt|back foot|back off|back on|back or|back pocket|back sag|back up|bag|ball|bar on|been|before you|behind the|behind you|belly button|bend it|bending|between your|big|blade|blow|blue|bone|book|bottom|bounce|box|break|breathe in|breathe out|breathing|bridge|bring it|bring your|bug|burn|but|button|by the|by your|calf|call|call it|carry|cat|catch|click|clock|close|closer|come down|come in|come on|coming|complain|could|count|cramp|curl|cushion|day|dead lift|deep|did|disc|do heel|do them|dog|doing it|dont bend|dont bounce|dont lean|dont lift|dont rock|dont swing|door|down the|drag|drink|drive|drop down|drop the|drop to|dumb|dumb bell|ear|ease|easier|elbow back|eleven|end|enough|every lift|everybody|everything|exhale|face|fall|fast|feel the|feel your|feet back|feet flat|fifteen|find|fine if|finger|finish|flat and|float|floor away|floor if|fold|foot|foot off|for|for a|for the|forearm|forty|fourteen|from the|from your|front knee|front of|get|get it|get upset|give|glued to|go your|green|grip|groin|had|halfway|hand on|hang|hard|harder|he|heel stay|heel tap|height|high as|higher if|hold it|home|how disc|how many|hug|hurt make|i can|ill|in a|in as|in front|in it|inch off|into it|it a|it and|it back|it catch|it click|it get|it goe|it harder|it if|it off|it on|it there|it up|it with|its not|its the|its your|ive|jog|jump|just hold|keep|keep breathing|keep it|keep the|kick|knee|knee are|knee bent|knee down|knee more|knee or|knee stay|knee stop|kneecap|land|lap|last one|lean back|leave the|left|leg long|leg that|let it|let the|level|lie on|lift tonight|lifting|light|lighter|like youre|lock|longer|look at|loop|low as|lower back|lower if|lunge|make the|many|march|middle|mind|mine|morning|move|nag|nearly|need|never|new|nice|nine|ninety|nose|not the|not your|nothing|number|of them|of those|off it|off that|off you|off your|on a|on it|once|one foot|one leg|only|open|or a|or get|other leg|out on|outside|over the|over your|own|pain|pair|palm|park|past|past your|peeling|pick|pillow|plank|plate|please|plenty|point|press the|press up|puff|pull|pull in|pulling|punch|push off|push the|push up|put|put it|put the|quick|quiet|quit|rack|rail|raise|red|rest|rib stay|right|rock|room|round that|round you|round youve|rule|run|said|seat|see|seven|shake it|shin|shoe|should|shoulder and|shoulder blade|shoulder come|shuffle|sink|sit down|sit up|slip|slower|slower than|slowly|small|smaller if|smooth|so high|so keep|so that|so you|soft knee|some|something|sort|sort of|split|stand up|standing|station|stay low|steady|step up|stick|stiff|still|stop at|stop sign|straighten|strap|stride|strong|swing it|switch|table|tail|take a|take it|talking|taller|tell|tell me|thank|that one|that where|the bar|the bench|the chair|the door|the feet|the groin|the hip|the kneecap|the middle|the other|the seat|the second|the slide|the toe|the wall|the way|the whole|then and|then the|there a|there and|theyre|think|this is|this time|those|through the|thumb|till it|till your|tilt|time|time if|tin|tingle|tip|to get|to make|today|tonight|tonight where|touch|toward|toward your|tuck|tucked|tummy|twice|twist|up|up on|up the|up there|up to|up you|upset|us|use|use the|wait|walk it|walk the|walking|want it|water|week|weight in|went|were|when you|where the|while|whistle|who|whole|wide|wider|width|will|with the|with your|without|woggle|wont|yank|you|you cant|you dont|you feel|you just|you know|you like|you need|you stand|you tell|your ankle|your belly|your bottom|your chin|your ear|your finger|your grip|your hamstring|your head|your neck|your rib|your side|your sign|your tail|your thigh|your toe|yourself|youve got',
      ],
      [
        -0.2,
        'a bit|an inch|and do|and rest|are|at your|back dip|back knee|back nip|back that|back to|band|bar|be|before|behind|belly|bench|bent|between|chair|change|chest|chin|come back|dead|dip|doesnt|dont arch|down|each|easy|eye|far as|feel|feel it|feet|fine|fist|forward|from|going|got|half|hamstring|head|heavy|hold the|if youve|im|inch|into the|is|it come|it down|it pull|just|just lift|knee if|know|lean|leg out|let your|like a|little|look|lot|me|my|neck|next|nobody|on the|on your|onto|onto your|pocket|press|ring|roll|row|sag|sagging|say|set|shake|short|sign|so come|soft|somebody|sore|squeeze your|straight|swap|swing|tall|than|that a|that you|the back|the front|the shoulder|the top|they|thigh|third|thirty|tight|tired|to round|to your|together|top|turn|twelve|twenty|under the|wall|was|we|weight|well|where|you can|you sagging|you stop|you want|your bum|your chest|your heel|your wrist|youve',
      ],
      [
        -0.3,
        'again|and leave|and your|arm and|as your|at the|bell|breath|bum|by|can|done|dont let|go|goe|heel|i|if its|if that|if the|if you|its too|leg if|lift your|lovely|minute|more|much|now|of|okay|only as|other|out as|push|rib|same|six|squat|squeeze|stand|stop there|take|them|then|there|till|too much|under|walk|want|way|wrist|your arm|your hip|your shoulder',
      ],
      [
        -0.4,
        'all|as you|dont|eight|first|five|four|front|grumble|hold|if youre|it in|last|long|of the|on|out|side|sit|slow|ten|toe|youre',
      ],
      [-0.5, 'arm|breathe|hand|let|no|not|one|over|second|step|three|two|with'],
      [-0.6, '0|a|good|hip|its|like|round|shoulder|the|to'],
      [-0.8, 'and'],
      [-6.3, '*'],
    ],
  ],
  [
    'pain-stop',
    [
      [1, 'foot down|hurt|if it|jumping|pain'],
      [0.9, 'a stretch|back a|ease|for today|isnt|noise|quit|stop|the groin'],
      [
        0.8,
        'a pull|and call|bite|burn|down straight|ease off|giving|grinding|groin|hurt on|it burn|one of|shift|stab|stop and|stop if|straight away|the joint|the knee|today|you stop',
      ],
      [
        0.7,
        'a stop|and no|away|call me|catch and|fine|go and|grit|grit your|if|it bite|it hurt|it turn|its sharp|joint|limping|over a|past|right there|slide|start|stop that|stretch|take the|that leg|tight|tight to|towel away|turn from|your teeth',
      ],
      [
        0.6,
        'a pinch|a three|a tug|and just|back come|behind the|call|climb|clunk|down that|effort|five out|if the|is|isnt a|it catch|it climb|knee hurt|kneecap|me over|more|of ten|of them|okay and|or|pain in|sharp|slide it|so stop|still|stretch that|teeth|that you|the kneecap|the muscle|the towel|there and|weight shift|you done|your back|youre done|youre on',
      ],
      [
        0.5,
        'a four|all im|and if|and stand|anything over|behind|catch|come off|done|feet and|flat and|four is|gentle|grab|hurt more|if there|im after|in the|it build|it out|it still|it tingle|leave|leave it|more than|muscle|one and|or leave|or the|out of|past a|pinch at|pull if|pull in|rung|sharp you|smaller or|station|stop short|stretch is|talking to|ten you|than|that one|the elbow|the finger|the pain|the roll|the start|the weight|there you|tingle|to a|up dont|up to|up tonight',
      ],
      [
        0.4,
        'a 0|a zing|and bend|and come|and do|any|any sharp|at the|build|burn in|clever|come|come out|elbow on|elbow stop|elbow that|finished|finished with|forward and|give|go smaller|gonna|grab at|hand out|hurt go|if its|in your|into the|it did|it forward|it grab|its sore|its still|itself|keep you|less|nip in|of the|off your|on the|only|or its|over|pain under|pull|push on|quit right|quit that|shoulder hurt|sit down|slide up|stand on|still and|swap|swing it|take|talking|than it|that|that set|the back|the flat|them on|there is|through it|to stay|to you|tonight you|towel|tug|under the|up its|walk about|you up|you went',
      ],
      [
        0.3,
        '0 you|a pain|a sit|a wall|and back|and i|and leave|and set|and slide|and stop|and walk|and you|any pain|away and|behind if|calf|calf grab|care|care what|carry on|catch in|come back|come on|deep in|do them|do this|dont care|dont finish|dont push|down and|even the|exercise|far|finger|for the|four out|four that|give way|give you|grind|halfway down|have a|hurt not|hurt or|hurt stop|hurt you|husband|i mean|inner|inside of|is allowed|is fine|it lock|it nip|it standing|leave this|me|more each|more in|not tired|off|off i|okay|on or|on past|one out|or if|or step|over that|pain up|point|pull up|put more|put the|set it|sharp or|sharp pain|sharp sharp|short of|step or|still there|stop dont|swap to|take it|that or|that your|the end|the inner|the rung|the slide|this morning|three out|through|too far|turn|use|we do|went|with|you|you a|you finished|you get|you leave|you swap|youre finished|zing',
      ],
      [
        0.2,
        'a hot|a leg|a rest|ach|ache|after|allowed|and dont|and get|and have|and its|anything|at me|back or|band off|be a|bite at|carry|count it|deep|did|done with|dont count|dont just|down a|down your|each time|end|even|every exercise|far or|finish it|five or|foot|for me|get|get off|go half|go lighter|go numb|go up|half as|heroe|i dont|if that|in place|inside|is okay|it|it and|it off|it should|just|knee stop|kneecap and|ladder|leg no|let off|lock|lying|lying down|make the|mean|morning|nip|no heroe|not just|not your|nothing|of|of pulling|off and|off if|off it|only go|or get|or it|or you|place of|put|quit and|set|sharper|shorter|should be|side of|stand still|stay on|step off|stop put|stop right|swing|that a|that go|that it|the calf|the front|the hip|the inside|the ladder|the step|the thigh|the walking|there dont|thinner|three and|three you|time you|tired|to four|tonight|up come|walked|walked in|wave|wave at|way down|way up|way you|yesterday|you just|you lie|you only|you pull|you stand|you tell',
      ],
      [
        0.1,
        'a|a big|a bit|alone|and sit|and the|and use|and wave|any of|as far|bend the|book|came|came in|come find|come up|cramp|elbow|exercise and|finish|five|five you|flat|for every|four|from|get a|get past|get you|goe over|half and|halfway|hip or|hot|im|in with|instead of|into|it alone|it down|it further|it start|lighter|morning if|numb|off to|on any|on if|one stop|out|out that|pinch|place|pulling|radiator|right|roll|send|send it|sharp and|short|should|shuffle|single thing|sit|smaller|so come|sore|stair|stand|stand by|standing|stop there|ten|than a|than that|that for|that make|the band|the feet|the foot|the leg|the one|the radiator|the stair|the way|them|thing we|this one|to|up the|use a|walking|wall|way|weight|while youre|with that|wont|work|you came|your feet|your leg|youre|youre pushing',
      ],
      [
        -0.1,
        '0 0|0 and|0 of|a calf|a chair|a couple|a drink|a dull|a foot|a good|a hand|a headache|a line|a little|a long|a lot|a minute|a physio|a plank|a plate|a proper|a saucer|a step|a time|a touch|a towel|about|about it|above the|achilles is|across|across the|against|age|ahead|air|all of|along|already|alway|an|an inch|and|and a|and bring|and change|and done|and drop|and give|and go|and ill|and let|and make|and miss|and one|and out|and pull|and push|and put|and rest|and ring|and see|and shake|and shout|and step|and swap|and swollen|and take|and ten|and there|and three|and up|and youre|another|any chest|any more|any point|anybody|anyone|anything that|anywhere|apart|arch|arent|arm if|arm its|around|as a|as if|as it|as the|as you|asked|at a|at all|at chin|at home|at you|at your|away if|baby|back and|back down|back foot|back if|back in|back knee|back off|back on|back out|back there|backward|bad|bag|ball|ball of|band|bargain|be|bear|beat|bed|been|before it|before you|being|bell if|below|belt|bend your|better|big|bigger|biscuit|bit|bit more|bit of|blade|bleeding|block|blow|blow out|blue|board|body|bored|bottom of|bounce|box|breath out|breathe in|breathe through|breathing|bridge|bring it|bring the|bug|bus|but if|by the|calf hot|calf stretch|call it|called|cant get|card|cat|catch it|catch or|ceiling|chatting|cheek|chin height|circle|clean|clock|close|closer|come in|come lower|coming|complain|could|counting|couple|cramp in|cramp stop|cranky|crate|cross|cushion under|day|dead lift|dip|dive|dive in|do|do a|do the|doctor|doesnt hurt|dog|done you|dont bounce|dont do|dont go|dont lean|dont straighten|down for|down if|down there|down to|drag|dragging|draw|draw circle|drink|drive|drop the|dull|dull ache|dumb|dumb bell|each|each leg|ear|early|easier|edge|eight of|eighty|elbow and|elbow if|eleven|else|em|end of|evening|every station|every time|everything|exhale|eye on|fall|fancy|far as|farther|fast|feel the|feel your|feeling|feet down|feet flat|few|fight|find me|fine or|finished for|fist|float|floor if|fold|folded|folk|foot goe|foot if|foot off|foot on|for it|for more|for tonight|for you|forearm|forward|four five|fourteen|fourth|free|from your|front|front knee|front of|full|further|gate|gentler|gently|get any|get cramp|get it|get there|get your|giddy|give it|go dizzy|go down|go giddy|go on|go so|go swimmy|gone too|got a|grab a|grab you|grand|grass|green|grey|grip|ground|grumble come|grumpy|had a|half|half a|half of|half way|handle|hanging|happen|hard|harder|he|headache|hear|heavier|height and|help|hes|hill|hip pinch|hit|hold it|hold the|holler|hop|hot and|hover|how you|hug|hum|hundred|hurt and|hurt leave|i can|i had|i wont|id rather|if one|if something|if they|if theyre|ill come|im not|in and|in it|in on|in that|in you|inch|instead|into a|into it|into your|is it|is plenty|is that|is the|it all|it at|it back|it come|it cramp|it dive|it doe|it doesnt|it dont|it feel|it get|it goe|it if|it is|it on|it or|it slide|it smaller|it stay|it stood|it the|it there|it to|it up|it was|it with|it wont|it youre|its meant|its only|its tight|its your|jog|jump|just above|just not|just the|keep breathing|keep it|keep the|keep your|kick|kind|knee a|knee back|knee bent|knee complain|knee go|knee is|knee on|knee pull|knee soft|knee stay|knee that|knee to|kneecap slide|land|lap|last one|leak|lean on|leg and|leg come|leg if|length|let go|let your|level|lift off|line if|longer|look at|looking|lost|lower if|lower or|make|many|march|me and|mean it|meant|meant to|meat|metre|middle of|mind|mine|miss|moment|more weight|move|moving|nearer|nearly|neck go|need to|nerve|never|new|night|nine ten|nineteen|ninety|nip at|no farther|no more|nose|not all|not behind|not the|of it|of these|of those|of your|off do|off that|off the|oh|on and|on one|on that|on this|one leg|one more|one that|only a|only as|onto|open|opposite|or anything|or stop|or there|or youre|other leg|out a|out and|out for|out if|out in|out to|outside|over dizzy|over to|over you|over your|overhead|own|owt|pad|pain at|palm|park|part|past the|pause|pelvis|people|phone|physio|pick|pillow|pinch on|pinch up|plate|please|pocket|pole|pop|post|pound|press up|pressure|proper|properly|properly hurt|puff|pull apart|pull it|pull your|push it|push off|push through|push up|put it|quiet|rack|rack it|rail|raise|rather|rather you|red|ring the|rock|roll over|rolled|rolling|rope|round the|rounding|rule|run|rush|sag|said|sat|saucer|scare|seat|see a|seeing|seeing star|seventy|shake it|shaking|shallow|she|shoe|shorten|shorten it|shoulder come|shoulder pinch|shoulder sore|shoulder stop|shout me|shove|show|showing|showing off|shrug|shut|side to|sideway|sigh|sign|sink|sip|sit back|sit it|sit to|sit up|sitting|sixty|skin|skip|slide the|slip|slower than|slowly|smaller if|smooth|so if|so it|so that|so you|soft knee|some if|some of|something to|speed|spine|split squat|spot|squat at|squeeze|squeeze the|stage|star|star you|start again|start to|start with|stay down|steady|step away|step back|step if|step over|step up|stick away|stiff|still a|stood|straight|straight if|straighten it|straighten the|strap|stretch it|stretchy|stride|string|strong|stuck|sway|swimmy|swimmy you|switch|swollen|table|tail|take your|talk|taller|tap the|tape|tea|tell me|tell you|ten minute|ten more|ten of|ten second|than the|than you|thank|thank you|that all|that and|that back|that how|that is|that just|that knee|that plenty|that too|that us|that was|that what|that where|that wont|the air|the ball|the bar|the bed|the bell|the board|the box|the ceiling|the chair|the chest|the clock|the day|the doctor|the door|the edge|the first|the ground|the hamstring|the hand|the last|the loop|the low|the meat|the minute|the neck|the next|the pelvis|the rail|the rest|the ring|the room|the same|the seat|the second|the set|the shin|the shoulder|the side|the standing|the stick|the strap|the toe|the wall|the whole|the wrong|them down|them its|then the|there a|there no|there press|they take|thigh not|thigh that|thing|think of|thirteen|thirty second|three four|three two|thumb|thursday|tightness|till it|tin|tingling|tip|to be|to breathe|to get|to go|to make|to side|to stand|today you|toe if|told|touch|toward|towel under|trip|tuck|tucked|tummy|twice|twinge|twist|two one|under it|under you|under your|up a|up at|up by|up for|up if|up off|up or|up out|up that|up you|us|use the|used|very|wait|walk it|wall if|want it|want more|want to|warm|warning|watch|water|way and|way straight|we|we call|we get|we go|wee|weight if|weight in|well done|were after|whatever were|whatever you|when it|when we|when youre|where it|where you|whip|whistle|white|wide|wider|width|will|wire|with a|with it|without|wobble|wont come|worry|wrong|wrong way|year|yellow|yes|you and|you could|you do|you go|you have|you leak|you like|you lost|you need|you off|you put|you ring|you should|you shout|you that|you walk|youd|your arm|your breath|your bum|your ear|your finger|your foot|your hand|your head|your heel|your knee|your low|your neck|your rib|your shin|your side|your thigh|your toe|your wrist|youre a|youre feeling|youre new|youre not|youre seeing|youre showing|yourself|youve a|youve gone|youve got|zing down',
      ],
      [
        -0.2,
        'a knee|a sharp|above|and down|and find|and off|and tell|and then|ankle|away from|back|back of|back start|back to|because|behind you|belly|bend|bent|between|bone|breastbone|breathe out|bring|bum|by|change|click and|come down|curl|cushion|dead|dizzy or|doesnt|doing|dont let|door|down the|enough|everybody|eye|face|faint|faint you|feel it|fifteen|find|for a|forty|from the|get chest|gone|grumble|had|hand on|hang|heavy|height|here|high|higher|how|hurt in|id|if anything|in a|in front|it a|it in|it pull|it that|itll|its too|keep|knee down|knee or|leave the|left|let it|let the|light|like youre|line|loop|lot|low back|lunge|middle|much|neck|need|next|nice|nine|nobody|number|of a|of straight|of that|off you|on|on it|once|one foot|or a|or your|out on|over faint|over the|pain or|pair|plank|plenty|push the|put a|quick|reach|rest|room|round that|say|seven|sharp stop|shin|shout|sit on|slower|small|sort|sort of|split|stay|step|stick|stop at|stop you|straighten|take a|tap|tell|the arm|the bench|the breastbone|the heel|the mat|the middle|the other|these|theyre|think|third|thirty|this|this is|those|three|through the|tight stop|to come|to round|to your|together|too|too much|top of|up on|up there|wall and|who|whole|with your|you can|you cant|you know|you quit|you sit|youll|your elbow|your hip|your shoulder',
      ],
      [
        -0.3,
        'all|all the|at|bar|bench|both|but|cant|chest or|chest pain|chin|come and|dizzy|doe|dont|drop|easy|fine if|go|going|good|hamstring|head|home|if a|if youve|ill|in|is a|it click|it isnt|its|its the|ive|knee if|know|lean|like a|little|look|lovely|make it|mat|no|not|not a|of you|on your|one|pinch in|rib|row|same|see|shake|so|soft|some|somebody|something|tall|that fine|that not|the|the achilles|the bottom|they|till|time|twelve|twenty|up|up and|walk|was|week|well|were|when|wrist|you feel|you want',
      ],
      [
        -0.4,
        'achilles|again|and that|are|before|bell|bottom|can|chair|click|come over|feet|first|goe|got|i|if you|if youre|its a|long|low|lower|my|other|out as|ring|side|squat|that the|the top|where|your chest',
      ],
      [
        -0.5,
        'as|breath|eight|floor|hand|hip|hold|if your|it pinch|last|let|lift|now|press|six|slow|the floor|to the|toe|top|want',
      ],
      [-0.6, '0|arm|breathe|feel|heel|minute|round|second|then|you come|your|youve'],
      [-0.7, 'like|shoulder|two'],
      [-0.8, 'chest'],
      [-6.4, '*'],
    ],
  ],
  [
    'anchor-check',
    [
      [0.9, 'buckle|check|height|mat under|strap|yank'],
      [0.8, 'head height|it a|knot|the buckle'],
      [0.7, 'and yank|before|before you|give|give it|hard|moved|nick|partner|the door|the knot|tug'],
      [
        0.6,
        'a good|and look|at|at eye|both|both strap|buckle and|check its|check the|eye height|first|for nick|gate|lean|mat|moved the|on it|pull on|ring|see|so give|the strap|trust it|you trust',
      ],
      [
        0.5,
        'and i|and if|band|band a|every|eye|hard and|head|hook|it on|lean on|look|look up|ring at|see the|shut|sliding|slip|squat rack|the band|them|trust|your strap',
      ],
      [
        0.4,
        'all just|and all|anything you|before every|before they|clip|closed|crank|crept|dragged|every exercise|every round|exercise|get on|give the|go at|goe in|good tug|havent|locked|make sure|mean every|not going|now so|off the|on|on both|on every|on them|pull|rack|see that|strap up|sure|the squat|them again|they get|theyve|theyve been|under|up at|when|you lean|your partner|your weight|youre pulling',
      ],
      [
        0.3,
        'a couple|a station|a strap|along it|anything|anything that|at a|back on|before each|bit at|both of|check your|couple|couple of|different|doesnt move|dont use|door|down hard|each of|gate and|get in|goe it|going to|hard to|height and|if that|it gently|it hard|it the|it then|it twice|its not|kick it|look along|mine|new|nick or|on you|one that|one you|or its|other way|pull it|pulling|same as|sit your|sorry|step is|strap and|test|that doesnt|that goe|the gate|the step|then pull|then sit|there so|tied|tug before|up and|up there|use|weight|weight on|when youve|while your|you|you do|you kick|you pull|your eye|youve all',
      ],
      [
        0.2,
        'a dip|a leg|a nick|a proper|a ring|a time|a toe|a tug|all|along|and before|and give|and read|and see|and whenever|and you|any weight|arent|at the|because|because a|been|bin|blue|both ring|by the|come off|creeping|door if|door shut|down on|drag|each|every time|exercise and|find|first and|first then|first time|gently|get|grab|i want|if a|if there|in it|in your|it and|it for|it over|its gone|kick|knot on|leg in|letter|lift a|lock the|look at|look for|look it|loud|make|neck that|nick first|now before|of every|out loud|over for|pair of|proper|read you|same length|set them|side and|strap a|strap with|that buckle|that come|that get|that slip|the end|the other|the pair|the post|the start|the two|them at|these two|they|theyre the|time|time the|tug the|twice|two every|up in|want you|watch|weight and|weight goe|whenever you|white|you go|you grab|you lift|you stop|you to|you touch|you your|your knot|youre up|yourself|youve',
      ],
      [
        0.1,
        'a bit|a bounce|a look|a pound|a scar|ago|all your|any|at hip|at your|band for|band round|because if|because that|before a|before anything|behind the|care|care if|coming at|creep|did it|dip|doesnt|dont care|down the|end|every one|every single|exercise i|from a|get it|get under|go its|go to|going|gone|good|grip|hip height|i dont|if it|in a|in you|it|it because|it goe|it one|it two|its|its coming|its your|ive a|ladder|lean back|length|let go|look down|minute ago|move|my own|of these|of you|of your|on there|own and|post|pound|pound of|proper tug|pull down|put a|reach|read|ring to|round the|same|scar|single one|skeleton|so|so put|squat|station|that thing|that your|the first|the ladder|the same|then|there a|theyre|through|time because|time before|tonight|touch|two minute|under it|when you|when youre|whenever|while|with all|yank on|you did|you get|you just|you land|you put|you take|your band|your face|your neck|your tailbone',
      ],
      [
        -0.1,
        '0 0|a|a hang|a minute|after|again|ahead|all the|already|an|and down|and it|and its|and off|and rest|and stop|and swap|and then|ankle|another|apart|armpit|around|as a|as it|at chest|at shoulder|away from|back to|bag|ball|band on|bar at|beat|because they|behind|behind you|belt|bend|bent|big|blow|board|bone|boot|both feet|both hand|box|breathe out|breathing|bridge|bring|bug|bum|but you|button|by your|calf|call|call it|called|cant|carry|cat|ceiling|chest height|clean|clock|close|come up|could|count|curl|cushion|day|dead lift|do|do it|do on|doe|doesnt matter|dog|doing|dont lean|dont let|dont look|drill|drink|drive|dumb|dumb bell|each leg|ear|eleven|enough|even|evening|everybody|everything|exhale|far|feel it|find a|fine|finger|finish|first because|fist|fold|foot on|for a|for every|for it|for the|forearm|forty|fourteen|from the|front of|get a|go on|goe on|got a|green|ground|grow|half a|halfway|hamstring|hand on|handle|hang with|harder|he|hear|heavy|hes|high|higher|hold it|home|horn|hundred|i can|i mean|id|if the|if youve|im not|in front|inch|isnt|it before|it down|it every|it in|it out|it up|itll|its the|its too|ive|jump|keep breathing|keep it|keep your|kneeling|lap|last one|leave|left|let it|let the|let your|level|lift|light|like youre|line|little|load|longer|looking|looking at|loop|loose|lunge|make it|many|march|matter|mean|middle|mind|mind the|morning|much|nearly|need|never|night|ninety|nose|not at|not the|nothing|now one|now the|now your|number|of a|of it|of those|off you|on each|on that|on the|once|one foot|one of|or|other|other leg|out of|out on|out when|over the|palm|park|past|people|phone|pick|pin|ping|plank|plate|please|plenty|point|post a|press up|puff|pull apart|put it|quick|quiet|rail|raise|red|rock|room|rope|row the|rule|run|said|seat|see you|set|shake|shoe|short|should|shoulder height|sit|slide|slower|slower than|slowly|small|smooth|so have|so its|so you|some|something|sore|speed|split|split squat|spot|squeeze your|stair|standing|start|steady|step up|stick|stop|swing|switch|take|take your|tap|tell|than you|thank|thank you|that a|that all|that it|that one|that the|the back|the bar|the bench|the bottom|the ceiling|the chair|the clock|the front|the ground|the heel|the hip|the knee|the last|the mat|the middle|the rack|the rail|the ring|the shoulder|the wall|the weight|the whole|then the|thing|think|thirteen|this is|those|through the|thumb|thursday|tight|time if|tip|to get|to your|today|toe|together|tow|toward|toward you|towel|trip|tuck|tucked|turn your|twist|under the|under you|under your|up on|up to|up you|us|very|waist|wait|walking|want|want a|want it|want to|warm|water|way up|week|were|what|whistle|who|whole|wide|width|window|with a|with the|with your|work|yellow|you cant|you come|you dont|you know|you like|you look|you stand|you start|you turn|youll|your arm|your belly|your bum|your chest|your feet|your hand|your head|your heel|your hip|your knee|your own|your rib|your shoulder|your side|your toe|youre not|youve got',
      ],
      [
        -0.2,
        'and lean|and that|and the|away|back and|be|bell|belly|bench|between|bottom|chair|change|chin|dead|drop|easy|eye on|feel|fifteen|flat|forward|from|had|hang|have|here|how|if your|if youre|ill|in the|into|is|its a|knob|know|like a|lock it|lot|low|lower|my|next|nice|nine|nobody|not|not a|now|on a|only|out as|over|rib|roll|say|seven|shut it|soft|somebody|squeeze|step|still|stretch|swap|tail|tall|than|that door|the top|the way|there|thigh|third|thirty|till|to|too|twelve|twenty|wall|was|we|well|where|wrist|you can|you want|your back|your tail|youre on',
      ],
      [
        -0.3,
        'a door|and a|are|as you|bar|breath|can|done|floor|front|got|half|hold|if its|if you|im|in|let|lovely|me|minute|more|okay|open|press|push|slow|stand|straight|that|the floor|to the|top|turn|two|walk|youre',
      ],
      [
        -0.4,
        'as|chest|come|eight|elbow|five|foot|four|heel|hip|if|it i|keep|last|long|mean it|of|of the|off|on your|rest|right|row|six|stay|the|this|up|with',
      ],
      [-0.5, 'and|arm|breathe|feet|hand|i|leg|second|shoulder|side|ten|three|your'],
      [-0.6, '0|back|down|go|knee|like|no|one|out'],
      [-0.7, 'dont'],
      [-6.3, '*'],
    ],
  ],
  [
    'breath-hold',
    [
      [1, 'holding|no holding'],
      [0.9, 'dont hold|hold|holding it|me so|say the|their|their breath'],
      [
        0.8,
        'blood|blood pressure|breath|exhale on|hold it|hold their|holding your|it in|pressure|the drive|with me|your breath',
      ],
      [
        0.7,
        'and dont|and just|blow|dare|dont|dont sort|dont you|drive|exhale|hold your|instead|it hiss|keep breathing|make you|the number|up dont|you dare',
      ],
      [
        0.6,
        'be holding|blow out|breath for|count|count out|every one|get up|hiss|hold on|if the|know youre|living|on to|out all|sort|sort of|to it|waiting|you dont',
      ],
      [
        0.5,
        'all|all the|and do|and if|anybody|back there|breath and|breath before|breathe out|breathing|cant be|do not|dorothy|ever|every|for the|go purple|hold and|i know|just breathe|make|new|nobody|not hold|number|out at|rep|say|see|so i|tablet|the hold|top dont|way through|way up|while|while you|woozy|you going',
      ],
      [
        0.4,
        'all three|at all|baby|bill|breath every|breath here|breathing i|brian|colour|colour of|for all|goe on|high blood|hold the|it no|just|loud|me while|never|one dont|one for|open and|or the|out loud|red|same one|side of|skip|skip the|so you|straight on|that how|the baby|the bill|the colour|the stop|the top|the whole|through|whole|you|you a|you cant|you get|you have|you hold|you squeeze|youre waiting',
      ],
      [
        0.3,
        'a head|all just|and thatll|and we|as you|at the|be|big|blow as|breathe|breathe all|can see|cant|cause|cause if|come up|dont go|dont wait|every rep|feeling|get a|giddy|give|give you|go giddy|goe|half so|here|here not|high|hold that|how people|if youve|in at|it all|it go|it open|it out|it while|just in|leave|leave the|let it|lip|listening|me|me your|name|never hold|no|nobody to|not on|of them|off that|on anything|one whenever|or on|or youre|out|out and|out i|out the|out while|pinch|pressure or|rack it|rise|roof|run|see star|short of|so nobody|spike|star|swimmy|talk youre|that breath|the back|the roof|the same|the waiting|the way|then you|to see|to tell|top|top and|up nobody|wait at|way|whenever|while youre|whole way|you come|you do|you rise|youll see|your lip|your name|youre short|youve got',
      ],
      [
        0.2,
        '0 breath|a man|a slow|air in|all goe|and catch|and for|and in|and out|and then|anything|anything at|between|between ive|big breath|bit|breath count|breath to|dont save|downward|face and|fly|for|for anything|go swimmy|god|goe under|going the|head go|hear you|heat|hiss it|hiss out|i can|i dont|i mean|in and|in every|in here|in you|it and|it goe|it it|ive seen|leave it|let a|man|mean|never the|new one|of that|one of|or|or itll|out as|out like|please|puncture|rack|rush|save|see you|seen|seen a|slow puncture|stand and|talk to|tell me|that wall|thatll|the face|the first|the hard|the lot|them dont|through your|to hold|turn the|wait|walter|want anybody|want to|whole set|with us|work|you breathe|you keep|your blood|youre|youre on|youre still',
      ],
      [
        0.1,
        'a bit|a new|able|able to|all five|and i|and take|at|be able|before|breath in|but if|cant talk|counting you|do|do it|dont be|dont carry|dont want|every time|from the|get|get it|go at|goe through|going|got|got blood|hard|have|head|hear|hear it|how|in this|it|it for|itll|keep|know|leg i|let|let me|let that|lot|lot of|me in|middle of|of my|okay|on the|on this|one through|people|purple|short|should|should be|so|squeeze|take a|talk|the last|the middle|the toe|through all|to me|today|tomatoe|under the|up and|up let|way no|whole lot|with|you in|you push|you should|youll|your foot|youre counting|youre holding|youve high',
      ],
      [
        -0.1,
        '0 0|0 and|a breath|a minute|a moment|about the|after|ahead|air dont|all of|along|and a|and breathe|and down|and it|and its|and keep|and no|and nobody|and off|and rest|and stop|and swap|and up|and whenever|and your|ankle|another|any|anything else|apart|arch|around|as|as high|as it|as the|as they|asked|at it|at me|at your|away from|back of|back to|backward|bad|bad eye|bag|ball|bat|because im|because it|been|behind you|belt|bench|bent|between your|blade|blow it|blue|board|body|bottom out|bounce|bouncing|box|breath at|breath because|breath dont|breath on|breath so|breath up|breath you|breathe as|breathe in|breathing while|bridge|bring|but|by the|by your|calf|call|call it|can hear|care|catch|catch up|ceiling|cheek|clean|clock|close|cold|come in|coming|could|count it|day|dead lift|denise|did|dip|dizzy|dizzy you|do anything|do the|doesnt|dog|doing|dont arch|dont bounce|dont care|dont do|dont drop|dont have|dont lean|dont need|dont poke|dont roll|dont rush|dont shrug|dont swing|dont tip|dont yank|door|down and|down out|down there|drag|drink|dumb|dumb bell|ear|ease|eleven|else|em|end|enough|even|evening|everybody doe|everything|eye or|eye trouble|face|fall|far|fast|feel it|find|fine|finger|finish|fist|float|fold|foot on|for three|for two|forearm|fourteen|from|front of|gap|get dizzy|get your|glaucoma|go up|going to|going up|gone purple|gossip|got a|grab|graham|green|grip|had a|halfway|hamstring|hand on|hard bit|harder|have a|he|head up|heavy|height|hes|high as|higher|hold of|home|hop|horn|how it|how many|hundred|hurt|i said|i want|id|ill|ill say|im not|im watching|in|in a|in between|in for|in front|in it|in on|in through|in your|inch|into it|into the|into your|isnt|it at|it back|it come|it down|it send|it there|it up|it with|its a|its not|its the|jaw|jog|jump|keep going|keep hold|keep it|keep talking|keep the|keep your|kick|knee soft|kneecap|lad|land|lap|last one|lean back|length|let go|let them|level|lie|light|line|little breath|little sip|lock|long breath|longer|look at|looking|loop|loose|loud i|lower it|lunge|make it|many|march|mat|me youre|mind|mine|moment|moment and|morning|move|much|nearly|need to|night|ninety|no bouncing|no rush|not a|nothing|of|of air|of these|of those|off the|off you|on|on a|on every|onto|or a|or eye|or you|or your|out dont|out every|out for|out going|out in|out on|out there|out through|out to|out when|over the|own|palm|pant|park|partner|pass|past halfway|pause|phone|photo|plank|plate|plenty|point|poke|post|pressure up|puff out|punch|push the|quick|quiet|rail|raise|ready|rock|roll out|room|rope|rule|sag|said|sat|saturday|seat|send|send your|set|shake it|sharp|sharp breath|shin|shoe|short breath|shrug|shut|sigh|sink|sip of|slide|slow breath|slower|slower than|slowly|small|smooth|so the|so youre|soft and|some of|something with|sore|soup|speed|spinning|split|squeeze the|squeeze your|stand up|standing|start|station|step up|stick|stiff|still|stop|stop a|stop at|straighten|strap|stretch|swing|switch|take|talking|talking to|tall at|tap|tea|teeth|tell you|thank|thank you|that a|that all|that chair|that it|that one|that the|that your|the air|the arm|the band|the bar|the bat|the bench|the big|the breath|the ceiling|the chair|the clock|the door|the elbow|the end|the eye|the foot|the front|the heel|the hip|the knee|the mat|the nose|the other|the rack|the rail|the shoulder|the side|the soup|the thigh|the wall|then let|then the|there a|there for|theyre|thing|thirteen|this is|this one|through it|throw|thumb|thursday|tight|time dont|tip|to be|to go|to hear|to the|to you|to your|together|told|tonight|top for|top let|top of|touch|toward|trip|trouble|trust|tuck|tucked|turn|twice|twist|under|under your|up at|up before|up off|up on|up there|up to|upside|upside down|use|used|used to|very|walk no|walking|want it|warm|watch|watching|water|wee|wee sip|week|were|whatever|when you|when youre|whenever you|whistle|whole foot|whole time|whoosh|wide|wider|with it|without|wont|yank|year|yellow|you all|you and|you catch|you could|you count|you leave|you lift|you like|you never|you open|you press|you reach|you sit|you skip|you stand|you stop|you turn|you walk|your arm|your belly|your bum|your chest|your chin|your ear|your elbow|your face|your feet|your hand|your heel|your leg|your neck|your nose|your own|your rib|your side|your thigh|your toe|your wrist|youre feeling|youre not',
      ],
      [
        -0.2,
        'an|and|and hold|and let|and that|and the|and you|band|bar|because|before you|behind|bell|belly|bend|breath out|bum|can|change|chin|come|curl|dead|doe|drop|easy|everybody|fifteen|first|five|flat|foot|for a|forty|gone|had|hang|hum|if it|if your|im|in as|in the|into|it on|lean|left|let the|like youre|lovely|low|me or|my|neck|need|next|nice|nine|nose|not|of it|of you|on it|once|out of|pair|past|pull|push|put|reach|ring|roll|row|seven|shake|side|sing|soft|some|somebody|something|steady|swap|than|the bottom|these|thigh|third|thirty|this|those|to|toe|too|turning|twelve|was|way down|weight|what|where|who|with the|with your|wrist|you want|your|your back|your hip|your knee|your shoulder|youre all|youre breathing|yourself',
      ],
      [
        -0.3,
        'about|again|are|away|both|bottom|breathing dont|by|chair|done|each|eye|feel|floor|forward|front|if|last|let your|little|look|lower|more|on your|one|only|other|rib|sip it|slow|squat|stand|talking so|tall|the floor|them|then|they|three|till|to press|twenty|well|when|you can|you go|you know|you think|your head',
      ],
      [
        -0.4,
        'breathe dont|chest|eight|elbow|go|heel|if you|is|lift|long|loud if|minute|now|on me|over|rest|right|round|sit|six|stay|there|think|time|up|walk',
      ],
      [-0.5, 'arm|back|dont let|feet|four|hand|hip|its|leg|like|off|shoulder|sip|step|ten|that|the'],
      [-0.6, '0|good|knee|press|second|two'],
      [-0.7, 'a|down'],
      [-6.4, '*'],
    ],
  ],
  [
    'spotter-or-safeties',
    [
      [1.1, 'check|pin'],
      [1, 'check your'],
      [0.9, 'before|load|safety|you load'],
      [0.8, 'before you|bottom|mate|stood behind|then youve|youve a'],
      [0.7, 'bar|behind you|below|hole|one hole|stood|under|where|your bottom'],
      [0.6, 'behind|just|just below|just under|rack|the rack|under where'],
      [0.5, 'armpit height|before there|partner|set|set just|the bar|where the|your partner|youve'],
      [
        0.4,
        'and if|arm on|armpit|below the|below where|bottom out|depth|end|every time|get stuck|hooked|in under|it set|stuck|under the|when youre|your squat',
      ],
      [
        0.3,
        'and crawl|and nobody|bar at|bar in|before anybody|below your|bottom of|crawl|crawl out|dont lift|end up|every|get|get to|going to|height|if theyre|in you|not in|on one|out every|position|rack at|sit it|stuck you|the bottom|the safety|the two|them|theyre not|till ive|time and|to at|up all|weight on|youre going',
      ],
      [
        0.2,
        'a buddy|a pound|all of|and before|and whoever|and you|and your|and youve|anybody|are there|arm go|at each|bar is|both side|bottom and|buddy|each end|em|empty|empty bar|end so|go in|got a|in the|inch|it down|ive seen|lift until|loading|nobody|of you|of your|on there|on those|one inch|partner stand|pin in|pound|pound on|seated|seen|set them|set your|side and|sitting|so nobody|spotter|stand behind|stand close|strap|them one|theyre|those|those and|those two|time before|too|two are|until|weight|when|where you|where your|whoever|with an|you|you and|you dont|you get|youre sitting',
      ],
      [
        0.1,
        'a bar|an|and i|any|any weight|anything|arm|at|at about|at your|bar and|because|because if|can sit|catch|catch it|close|down and|down on|get under|going|height and|i want|if you|it its|its not|ive|lift|not me|on it|set the|so if|squat so|stand|start|the pin|them that|then|there a|till|to a|touche|two to|under it|under your|want the|where youll|you sit|youve got',
      ],
      [
        -0.1,
        '0 0|a bit|a little|a minute|a time|about|after|all|all the|and down|and off|and rest|and stop|and swap|and that|and then|ankle|another|apart|are|ask|at a|bag|ball|be|been|belly|bench|bend|bent|between|big|blade|blow|blue|bouncing|box|breathe out|breathing|bridge|bring|buckle|bum|but|by the|by your|calf|call|can|cant|carry|clock|coming|count|curl|cushion|dead lift|did|dip|doe|doesnt|dog|doing|dont let|door|drag|drink|drive|drop|dumb|dumb bell|each|ear|easy|elbow under|eleven|enough|evening|everybody|everything|exhale|eye|face|far|feel it|feet under|fine|finger|finish|fist|for the|forty|fourteen|from the|goe|gone|got|green|grip|had|halfway|hamstring|hand on|hang|hard|have a|he|hear|heavy|here|high|higher|home|horn|how|if it|if its|if the|if your|if youve|ill|in front|in your|into|its a|its the|jump|keep breathing|kick|land|last one|lean|leave|left|let it|let the|let your|level|lie|light|like youre|line|look at|looking|loop|lot|low|lunge|make|many|march|mat|me|middle|mind|morning|move|much|nearly|neck|need|never|new|nine ten|ninety|no|nose|not a|nothing|number|of them|of those|off the|off you|on|on a|once|open|out of|out on|outside|over the|own|pair|palm|park|past|people|plank|plate|please|plenty|point|puff|push the|quick|quiet|raise|reach|ready|red|rock|roll|run|said|say|seat|second set|see|shake|shin|shoe|short|should|shut|sit|slide|slower|slower than|small|smooth|so you|some|something|split|split squat|squeeze your|stand up|standing|station|steady|stick|still|stretch|swing|switch|tap|tell|thank|thank you|that one|that the|that your|the arm|the back|the bench|the front|the hip|the knee|the other|the shoulder|the top|the wall|the way|then the|these|thigh|thing|think|thirteen|through the|thumb|tight|to your|together|touch|towel|tuck|tucked|tug|twice|twist|under you|us|use|wait|walking|want|was|water|week|were|what|when you|while|whistle|who|whole|wide|width|with the|with your|work|you are|you come|you know|you like|you want|your arm|your back|your bum|your chest|your chin|your ear|your feet|your hand|your head|your heel|your hip|your knee|your rib|your shoulder|your side|your toe|youre not|yourself',
      ],
      [
        -0.2,
        'at the|away|band|bell|bit|chair|change|chin|dead|feel|fifteen|first|flat|floor|forward|from|front|half|have|head|hold|if youre|im|in|is|know|like a|little|look|lower|more|my|next|nice|nine|not|of the|on your|only|or|out as|pull|put|rib|ring|row|seven|so|soft|somebody|squeeze|swap|take|tall|than|the floor|they|third|thirty|through|to the|top|turn|twelve|twenty|two|wall|way|we|well|with|wrist|you go',
      ],
      [
        -0.3,
        'again|as you|breath|chest|come|do|done|foot|keep|let|long|lovely|minute|okay|on the|one|other|out|over|press|push|rest|round|same|side|slow|stop|straight|this|to|toe|walk|your',
      ],
      [-0.4, 'a|eight|elbow|five|for|four|heel|i|if|last|now|of|right|shoulder|six|stay|step|ten'],
      [-0.5, 'as|back|breathe|feet|hand|hip|its|knee|leg|like|off|second|three'],
      [-0.6, '0|and|dont|down|go|good|it|that|the|up'],
      [-6.1, '*'],
    ],
  ],
  [
    'band-recoil',
    [
      [0.8, 'check|itll'],
      [0.7, 'in your|nick|slip'],
      [0.6, 'check it|eye|face|goe it|if it|if that|its coming|snap|straight up|your eye|your face|your foot'],
      [
        0.5,
        'and itll|because|come straight|coming|for nick|goe in|if|it slip|itll have|out its|ping off|straight|teeth|your teeth',
      ],
      [
        0.4,
        'a nick|and if|and not|at your|band|because if|check its|eat|eye out|first if|for|hand it|have|in the|it because|it come|it for|it goe|it here|its got|its on|its under|off your|ping|rubber|rubber and|shoe|shoe and|slip off|that slip|the arch|the rubber|your band',
      ],
      [
        0.3,
        'and keep|and look|arch|band for|band its|before you|check the|check your|coming at|down the|ex|foot|go its|got a|have your|in it|it over|it ping|it slide|its|keep your|knot|lean on|look|look down|middle|middle of|my ex|not up|now before|on and|over for|right in|slide off|snap you|split|standing on|that its|that thing|the face|the knot|the middle|the mouth|the toe|this band|up and|up in|whip|you lean|you right|youre standing',
      ],
      [
        0.2,
        'along it|and any|and its|any|any time|ask|back if|because they|before|cause|cause if|first then|foot it|foot or|for your|goe|hard to|have it|here|it hard|it if|it in|its in|lean|let go|line|line of|mouth|nick first|of it|of the|of your|off it|on it|on this|out of|pull it|pulled|pulled back|round your|shoe on|standing|straight for|test|that goe|the band|the line|the shoe|then pull|thing|today|today its|toe|toe pulled|up at|up on|your shoe|your toe',
      ],
      [
        0.1,
        'across|across the|and ive|black|come|face and|first and|foot and|hard|it under|ive seen|look along|off|seen|seen the|slide|straight at|the black|toe because|toe it|under your|you in|you pull',
      ],
      [
        -0.1,
        '0 0|a bit|a look|a minute|after|ahead|along the|an|and down|and it|and off|and rest|and stop|and swap|and that|and the|and then|ankle|apart|around|as it|at|bag|ball|band round|bar|been|behind|belly|bench|bend|bent|between|big|bin|bit|blow|blue|boot|both feet|bottom leg|box|breathe out|breathing|bridge|bring|bug|bum|but|by the|by your|calf|call|carry|chair|chin off|clock|close|count|curl|dead|dead lift|did|dip|do it|doe|doesnt|dog|doing|dont let|door|down on|drink|drive|drop|ear|ease|eleven|end|enough|every|everybody|everything|eye on|face pull|far|feel it|fine|finger|finish|first because|fist|foot not|for a|for the|forty|fourteen|from the|gone|got to|green|grip|had|halfway|hamstring|hand on|hang|have a|he|heavy|height|high|higher|hold it|home|how|if its|if the|if youve|ill|in front|inch|into|isnt|it out|its a|its not|its the|its too|its your|jump|keep breathing|kick|know|land|lap|last one|leave|left|leg out|let|let it|let the|let your|level|light|like a|like youre|long band|look at|look it|loop|low|lunge|make|make it|march|mat|mind|mind not|morning|move|much|nearly|neck|never|next|nine ten|ninety|nobody|nose|not a|not your|nothing|now|number|of them|of those|on a|on because|once|one foot|open|or|or itll|out long|out on|over|over the|over your|own|pair|palm|past|people|plank|plate|please|plenty|press up|put|quick|quiet|rail|raise|reach|red|right|ring|rock|round both|round the|run|said|say|see|shake|shin|short|shuffle|shut|slower|small|smooth|some|something|sore|split squat|squeeze your|start|station|steady|still|straight ahead|strap|stretch|swing|switch|tap|thank|that a|that it|that the|that your|the back|the bar|the bin|the bottom|the chin|the foot|the hip|the knee|the other|the shoulder|the top|the wall|the way|the whole|there a|these|theyre|thigh|think|this|those|through the|thumb|tight|till|time|to be|to your|toe and|toe its|together|too much|towel|tuck|tucked|twice|twist|under|under the|us|use|wait|walking|was|water|week|weight in|were|what|when|where|while|whistle|who|whole|wide|width|with the|with your|work|wrist straight|you can|you go|you know|you want|youll|your arm|your back|your boot|your bottom|your chest|your ear|your elbow|your feet|your hand|your head|your heel|your hip|your knee|your rib|your shoulder|your side|your wrist|youve got',
      ],
      [
        -0.2,
        'about|and get|are|as you|away|be|bell|both|bottom|by|can|change|come up|do|each|easy|feel|fifteen|flat under|floor|forward|from|get you|going|half|head|hold|if your|im|it|its flat|little|lot|lower|me|more|nice|nine|on the|only|out as|rib|roll|round|row|same|set|seven|soft|squeeze|stand|stop|swap|take|tall|than|the floor|the front|third|thirty|through|to the|too|top|turn|twelve|twenty|wall|want|way|we|weight|well|wrist|your chin',
      ],
      [
        -0.3,
        'again|all|at the|breath|chest|done|flat|hand|if you|if youre|is|just|lift|lovely|minute|okay|other|out|out itll|press|push|rest|sit|slow|squat|that|them|then|up|walk|with|your|youve',
      ],
      [
        -0.4,
        'arm|back|chin|eight|elbow|five|four|front|get|heel|hip|last|long|not|of|on|shoulder|side|six|so|stay|step|ten|there|three|youre',
      ],
      [-0.5, 'and|as|breathe|feet|i|knee|leg|like|no|second|to|two|you'],
      [-0.6, '0|a|dont|down|go|good|one'],
      [-0.7, 'the'],
      [-6.2, '*'],
    ],
  ],
  [
    'surface-check',
    [
      [1.1, 'a drop'],
      [1, 'gravel|walk the'],
      [0.9, 'mind the|so|there|they'],
      [
        0.8,
        'by the|check|check your|drop|eleven|glass|leave|look|loose|mind|shorten|the gravel|theyre|under the|wet|where',
      ],
      [
        0.7,
        'and watch|before you|bit|by|go round|grass|lane|like soap|look for|plank|soap|the left|walk|watch|where youre|your feet',
      ],
      [
        0.6,
        'all|been raining|before|cobble|first|gravel and|left|look where|mud|on those|past the|putting your|raining|root|short step|slippy|step there|the grass|the lock|there root|under|where the|youre putting',
      ],
      [
        0.5,
        'an ankle|and look|anything|blown|drain|drill|drip|end|every|every drill|foot first|green|ground|its been|lock|moving|putting|round that|side the|skin|test|that bit|the bend|the ground|there gravel|wet leave|wheel|you move|your lane',
      ],
      [
        0.4,
        'and before|and shorten|anything that|are going|at the|been|before every|bend|bit by|both hand|but you|dog|far end|feet are|feet on|flat bit|ground and|hole|how you|it with|its green|its slippy|kick|lane and|left side|middle and|move|on that|on the|past|right side|run|sand|set off|short|side so|slimy|stay in|stay right|stepping|that how|that travel|the bin|the drain|the flat|there wet|those|travel|up on|walked|watch your|weed|where your|you have|you set|your foot|your stride',
      ],
      [
        0.3,
        'a bag|a dog|a look|along|along your|an|and dont|and every|and for|and i|and itll|and ive|and wet|ankle|any time|as well|bare|because|because there|before anything|bin|board|colour|colour of|dont trust|down by|down your|drill and|dry|edge|every run|first and|first its|going and|grit|i dont|is a|it for|it is|its|line|look at|look down|me and|mole|near|near the|on these|own|path|pond|put the|quicker|quicker than|rope|rope they|slow up|so go|stay on|stone|stride|take the|that dog|the bare|the colour|the edge|the far|the hand|the path|the pond|the right|the tree|there is|theyll|theyve|time were|tonight|tree|under that|walk your|whenever|whenever youre|you put|you so|your own|youre moving',
      ],
      [
        0.2,
        'a kerb|across|across the|again because|and a|and keep|and kick|and mind|any|at|bit of|blind|but|cant see|dead|dont have|dont put|down that|drill in|every third|far|feet|for|for every|for it|go dont|had|have|have a|have the|how|itll|kick it|kick out|kick the|lane first|leave that|lie|lift your|look along|look over|middle|number nine|off you|off your|on|on every|out the|over there|park|piece of|please|put|round|round the|run through|see the|shoulder and|so if|so kick|sticking|sticking out|that side|that turn|the gate|the middle|the wheel|there by|third step|this|this time|today|truck so|trust|trust it|up and|watch that|whatever|with a|with your|you look|you there',
      ],
      [
        0.1,
        'a foot|all week|and its|and stay|and that|and then|and you|at your|bag|because its|before each|both|cant|clear|do anything|dont do|each of|first because|fish|flat|foot|foot on|for the|front|front of|gate|going|head|i want|if its|in front|in this|its like|its the|ive|kerb|land on|of you|or go|out at|over your|piece|put a|right|roll|set|side|side and|so before|so every|stay|take|the bench|the blue|the front|them you|these|time we|to land|to walk|truck|want you|were|year|you cant|you to|youre',
      ],
      [
        -0.1,
        '0 0|0 and|a bit|a half|a heron|a little|a minute|about your|after|ahead|all of|all right|all the|alway|an inch|and again|and back|and change|and done|and down|and go|and off|and rest|and some|and stop|and swap|and there|and they|and up|and walk|and your|another|anybody|apart|are|around|as a|as far|as they|at a|at all|at it|away from|back on|back to|ball|ball of|been there|behind you|belly|bent|better|between your|bike|blade|blow|both feet|box|breathe out|breathing|bridge|bring|buckle|bug|bum|calf|call|called|card|care|carry|cat|ceiling|cheek|close|come on|come up|coming|cone|corner|could|count|counting|crab|curl|cushion|day|dead bug|dead lift|deep|did|different|dip|do it|doe|doesnt|doing|dont care|dont let|dont look|down and|down on|drag|drink|drive|dumb|dumb bell|ear|elbow under|eleven twelve|em|enough|even|evening|everybody|everything|everything on|exhale|eye on|facing|fast|feel it|feet flat|feet under|find|fine|finger|finish|fist|folk|for a|for nick|forearm|fourteen|from the|give|go on|gone|got a|grab|grip|grow|had a|half a|half past|halfway|hamstring|handle|hang|hard|has|have your|he|hear|height|heron|hes|high|higher|hip width|hold it|home|horn|hot|hour|how many|hundred|hurdle|i can|i had|id|if it|if that|if the|if you|if youve|im not|in a|in your|inch|instead|into the|is the|isnt|it and|it goe|it in|it on|its all|its not|its only|its too|its your|jaw|jog|jump|keep breathing|keep it|keep the|keep your|ladder|lap|last one|leave it|leave the|length|let it|let the|let your|level|lift|light|like there|lock that|long neck|looking|looking at|loop|lot|lunge|make|make it|many|march|mean|metre|mine|morning if|much|nearly|need|never|new|nick|night|nine|nine ten|nineteen|ninety|nose|not a|not at|not your|nothing|of a|of it|of those|old|on a|once|one foot|onto|open|or|other side|our|out there|over the|paid|paid by|palm|partner|people|phone|piano|pillow|pin|plate|plenty|pocket|point|post|puff|push the|put it|quiet|rack|raise|reach|red|rock|room|rule|said|same as|seat|see you|shake|she|shin|shoe|should|shoulder blade|shuffle|shut|side of|side plank|since|sixty|slide|slip|slow|slower|slower than|small|smooth|so that|so the|so there|so you|something|sore|speed|split|spot|squeeze the|squeeze your|stage|stair|standing|start|station|stay there|steady|step up|stick|still there|strap|stretch|swing|switch|table|tail|take your|tap|tape|tell|thank|thank you|that a|that all|that been|that it|that one|that what|that you|the arm|the back|the ball|the band|the bar|the board|the bottom|the box|the ceiling|the chair|the clock|the dog|the door|the elbow|the end|the foot|the heel|the hip|the hour|the knee|the last|the leg|the long|the mat|the minute|the piano|the rail|the ring|the rope|the same|the seat|the shoulder|the side|the slip|the thigh|the third|the wall|the whole|the window|then the|there and|there for|there no|there since|there so|they are|they dont|thing|think|thirteen|this is|this one|through|through the|thumb|thursday|tight|tin|tip|to the|to your|told|top|touch|toward|towel|trip|tuck|tucked|tug|tummy|twice|twist|under you|up at|up there|up to|use|use the|very|waist|wait|walk it|walking|want|warm|water|way down|wee|week and|weve|what|when you|when youre|where they|where you|while|whistle|white|whole foot|wide|wider|width|window|work|yank|yellow|you|you all|you are|you can|you come|you dont|you get|you know|you like|you trust|you want|youll|your ankle|your arm|your bum|your chest|your chin|your ear|your elbow|your eye|your head|your heel|your leg|your rib|your shoe|your side|your toe|youre going|youre on|yourself|youve got',
      ],
      [
        -0.2,
        'again|and|as you|away|be|behind|between|big|bottom|by your|change|chin|clock|do|door|easy|face|fifteen|forty|forward|goe|hand|hand on|heavy|here|if your|ill|into|its a|keep|know|lean|like|like a|like youre|little|low|lower|mat|morning|neck|next|nice|nobody|of your|out as|out on|over|pair|quick|rail|rib|ring|say|seven|so its|soft|some|somebody|squeeze|still|swap|that your|the first|the other|the step|the way|thigh|thirty|together|too|under your|us|was|we|weight|when|who|whole|with the|wrist|you go|your|your back|your hand|your hip|your knee',
      ],
      [
        -0.3,
        'about|and the|as|band|bar|bell|breath|can|chair|chest|each|eye|feel|from|got|hold|if youre|im|is|lovely|more|my|of|of the|off|okay|only|press|pull|push|row|so have|squat|stand|stay off|stop|straight|tall|that the|the|the floor|till|twelve|twenty|wall|youve',
      ],
      [
        -0.4,
        'come|done|eight|floor|get|go|half|heel|just|let|long|minute|now|off the|on your|other|rest|same|shoulder|sit|them|then|there a|toe|way',
      ],
      [-0.5, 'a|arm|breathe|dont|down|elbow|five|four|hip|i|in|it|last|leg|second|six|ten|three'],
      [-0.6, 'back|good|if|knee|no|out|to|two|up'],
      [-0.7, '0|not|one'],
      [-6.2, '*'],
    ],
  ],
  [
    'safe-dismount',
    [
      [1, 'and nobody|back there'],
      [0.9, 'dont drop|down then|feet down|let go'],
      [
        0.8,
        'before|before your|bench|box|come out|concrete|drop|feet|find the|finish|go back|step back|the bench|the box|then hand|you let',
      ],
      [
        0.7,
        'an ankle|ankle go|back on|before you|box dont|down onto|feet first|feet to|find|ive seen|let|letting|letting go|nobody|of it|on that|out of|seen|step|step down|to finish|when youre|your hand',
      ],
      [
        0.6,
        'and stand|and step|ankle|crate|drop off|feet find|first|first and|go|go on|ground|hand|it every|onto|onto the|open|the crate|the ground|the ring|then|to the|up out|when|you finish',
      ],
      [
        0.5,
        'an|and only|back down|back slow|bottom of|come|cycle|dont fall|fall out|first on|first then|give|hand come|ive|just let|never|off|off backward|only then|open your|out feet|put|roll back|same way|the end|the hand|then let|time you|together dont|touch the|until|until the|up dont|you before|you dont|you open|your feet',
      ],
      [
        0.4,
        'after|and its|back|backward|bench then|bend the|both feet|both of|box to|box with|come off|done put|dont|dont peel|down|down first|down to|end|every time|feet land|feet on|feet under|floor first|get your|grass|hand out|heel will|in that|jumping|know about|no jumping|nobody drop|on till|open the|order|out in|peel off|put your|ring|stand up|that order|the feet|the grass|them before|then take|toe to|toe together|way you|your arm|youre done',
      ],
      [
        0.3,
        'a foot|about it|alway|and feet|and you|back onto|bench and|bend|both|come down|dont just|down by|down off|drop your|fall|feet back|flat on|floor and|go of|going put|grip going|hand off|heel down|land|never let|of anything|of them|off that|out the|peel|put a|spinning|step off|stopped|the bottom|then open|then the|then you|till youve|touch|under you|up off|way|went in|when it|when you|will|you|you come|you hold|youve stopped',
      ],
      [
        0.2,
        'and then|anything|at the|bench with|bending|bending your|block|block and|coming off|crate and|dont be|down before|down nobody|drop that|dropping|every|feet and|floor|floor tile|foot then|go and|go dont|go its|go with|harder than|hold on|it and|knee and|knee feet|know|leave|off the|on to|partner|put both|reach it|rolling|step up|still in|take your|that doe|that floor|the block|the floor|the knee|the wrist|there|there and|through|tile|to|to come|to get|to reach|unhook|up there|went|with one|with your|wrapped|you put|you remember|you went|your grip|your heel',
      ],
      [
        0.1,
        'and drop|and hope|and when|any time|back for|back the|bend your|bottom|box and|came|chin|coming|doe|done|done you|dont hang|dont jump|dont you|drop the|feel for|feet are|feet flat|finding|floor then|foot back|foot down|for your|get off|get up|getting|go in|going|grip|had enough|hang on|happen|harder|hold you|hope|how ankle|it goe|it start|it to|its the|jump off|keep hold|mid|never the|of the|off ive|off put|off with|on the|one foot|only|out|remember|ring come|same|seen the|since|since 0|slowly|stand|still|support|teeth|than you|that an|then come|there the|throw|throw you|time|time your|toe|together|use the|version|waiting|waiting to|way round|when youve|with the|wood|you came|you drop|your knee|your teeth|youre|youve|youve had',
      ],
      [
        -0.1,
        '0 0|0 second|a bit|a hand|a minute|across|against|ahead|all the|along|an inch|and a|and come|and done|and go|and just|and no|and rest|and stop|and swap|and there|and up|and walk|another|apart|arch|arm out|around|as far|ask|at your|away from|back and|back before|back chest|back foot|back of|back till|back under|back up|bag|ball|ball of|because|bent|between your|big step|blow|blow out|blue|board|bone|both hand|bounce|bouncing|breath out|breathe in|breathing|bridge|bring|bug|but|but dont|by the|by your|calf|call|cant|carry|cat|ceiling|check|cheek|chest to|clear|clock|close|come home|come on|come to|come up|control|counting|cross|curl|dead lift|did|dip|dive|do it|doesnt|dog|doing|dont arch|dont bounce|dont come|dont dive|dont go|dont lean|dont roll|dont shrug|door|down and|down dont|down on|down quiet|down slow|down the|down there|down with|down you|drag|drink|drive|drop it|dumb|dumb bell|each hand|ear|ease|edge|either|eleven|em|end of|even|everybody|everything|exhale|eye on|facing|far|far as|fast|feel|feeling|feet come|feet hip|feet in|feet off|feet together|feet wide|fine|finger|fist|flat|flip|flop|fold|foot on|for five|for the|forearm|forehead|forty|fourteen|from the|front of|further|get it|go again|go down|go then|goe|going down|gone|green|grow|halfway|hamstring|hand down|hand go|hand if|hand in|handle|hanging|hard|have a|he|hear|heel|heel back|height|high|higher|hip go|hip width|hold it|hop|how|hurt|i can|i dont|if it|if that|if the|if youve|in as|in front|in the|in to|in your|inch|instead|into the|it back|it dont|it for|it go|it let|it off|it out|it up|itll|its a|its not|jump|just|keep breathing|keep the|keep your|kick|knee bent|knee down|knee then|knee to|ladder|lap|last one|leaning|leave the|length|let the|let them|level|lie|light|line|little step|lock|look at|looking|loop|loose|lunge|make|make it|many|march|metre|middle|mind|mind the|morning|much|near|nearly|neck|need|need to|ninety|no|nobody doing|nose|not a|nothing|now the|number|of a|of those|off and|off it|off we|off your|on a|on then|on you|once|one hand|onto your|other foot|other leg|out and|out there|out to|out when|outside|over the|over to|over your|own|palm|park|past|people|plate|please|plenty|pocket|point|post|puff|push off|push the|push through|push up|put it|put the|put them|quiet feet|rack|raise|reach the|ready|red|rib down|rock|roll onto|roll out|rope|rule|run|rush|sag|sag when|seat|second go|see|shin|shoe|short|should|shoulder down|shove|show|show off|shrug|sideway|sink|sit back|sit down|slow|slow down|slower|slower than|small|small step|smooth|so you|some|something|sore|sort|sort of|speed|split|squeeze the|squeeze your|stair|stand on|stand tall|standing|station|stay down|steady|step out|step the|stick|stop when|strap|stretch|stride|swing|switch|tap|tell|than the|thank|thank you|that a|that it|that one|that you|that your|the ankle|the arm|the ball|the band|the bar|the ceiling|the chair|the clock|the door|the edge|the elbow|the first|the foot|the hip|the last|the leg|the mat|the middle|the same|the seat|the shoulder|the side|the step|the thigh|the toe|the whole|their|them down|then back|then go|then roll|then step|then youre|there a|there no|these|theyre|thing|think|thirteen|those|through the|thumb|tight|till|till ive|till your|tip|to a|to put|to you|today|toe down|toward|trip|tuck|tucked|twice|twist|under|under the|under your|underneath|up again|up and|up on|up onto|up tall|up to|up you|us|wait|walk your|walking|want to|was|watch|water|way back|way down|way up|we go|week|were|what|when your|where you|while|while youre|whistle|who|wider|wider than|window|with both|work|yank|yellow|you and|you bend|you do|you know|you land|you like|you pull|you stand|you turn|you want|youll|your belly|your bottom|your breath|your bum|your chest|your chin|your ear|your elbow|your head|your leg|your nose|your rib|your shoulder|your side|youre feeling|youre not|youre ready|yourself|youve got',
      ],
      [
        -0.2,
        'and back|and let|and off|and that|and the|are|back knee|bar|behind you|belly|between|big|bit|breathe out|bum|change|come back|count|dead|easy|eye|face|fifteen|foot|got|half|hand and|head|heavy|here|home|if its|ill|im|into|it down|lean back|left|like a|like youre|lot|low|mat|move|my|next|nice|nine|of|of you|of your|off you|other|out on|pair|plank|quick|quiet|rail|say|seven|shake|slide|soft|somebody|swap|than|that the|the front|the heel|the rail|the top|the wall|they|thigh|third|thirty|to go|too|twelve|twenty|weight|well|where|whole|wide|width|you can|you get|your hip|your toe',
      ],
      [
        -0.3,
        'and|and down|arm|at|away|back to|band|behind|bell|can|chair|do|each|forward|from|have|if youre|keep|lean|little|look|lovely|lower|me|more|okay|or|out as|rib|row|set|squat|squeeze|tall|that|the back|them|this|to your|top|turn|wall|want|we|your back',
      ],
      [
        -0.4,
        'all|as you|breath|chest|dont let|eight|four|front|hand on|if you|is|its|last|let it|let your|lift|long|minute|now|on your|press|pull|rest|round|six|stop|straight|the|walk',
      ],
      [-0.5, 'again|elbow|five|for|i|in|knee|not|over|push|right|side|sit|so|stay|ten|three|you go'],
      [-0.6, '0|as|breathe|good|hip|leg|like|second|shoulder|two|up|your'],
      [-0.7, 'a|if|it|one'],
      [-6.3, '*'],
    ],
  ],
  [
    'neck-pull',
    [
      [0.9, 'haul|neck|your neck'],
      [0.8, 'dont haul|haul on|head|light|on your'],
      [0.7, 'hand are|yanking|your hand|your head'],
      [0.6, 'hand|hand no|head up|head your|in your|the hand|yank on'],
      [0.5, 'are|light if|no yanking|on thursday|yank|youll'],
      [
        0.4,
        'a neck|are just|do not|end up|head that|if you|it on|just a|mine|neck like|neck the|only there|there to|thursday|with a|wont thank|you end|youll feel',
      ],
      [
        0.3,
        'a handle|and cross|are only|are there|chest let|cross your|dragged|end|feel it|finger|getting|go and|hand dont|hand that|handle|hold your|how you|it so|it your|let go|lie|neck youre|only|skull|so if|thank you|that how|that your|there for|to hold|tomorrow|up not|up with|wont|youll be|your skull',
      ],
      [
        0.2,
        'a pillow|about it|carry it|cross|feel|hand just|hand only|how|its your|just|just rest|later|not|not a|on it|pillow|tell you|thank|to your|will|you about|your arm|your chest|your chin',
      ],
      [
        0.1,
        'a shelf|be|carry|chin|company|do|let|let your|on|paying|pulling|pulling the|shelf|tell|to keep|with your|youre pulling',
      ],
      [
        -0.1,
        '0 0|a bit|after|ahead|an|and down|and let|and off|and rest|and that|and the|ankle|apart|at your|bag|ball|bar|been|before|behind your|bench|bend|bent|between|between your|big|bit|blade|blue|book|both hand|bottom|bounce|breathe out|breathing|bridge|bring|bum|but|by the|by your|calf|chair|chest|clock|close|coming|count|curl|dead|dead lift|did|dip|do it|doesnt|doing|dont lean|door|down on|drink|drive|drop|ear|easy|eleven|enough|every|everybody|eye on|face|far|fifteen|fine|finish|fist|for the|forearm|forty|fourteen|from the|get a|goe|gone|green|grip|had|halfway|hamstring|hand behind|hang|harder|have a|he|heavy|height|here|high|higher|hold it|home|if it|if that|if the|if youve|ill|im not|in front|into|it in|its a|its not|its the|ive|jump|keep breathing|keep your|kick|know|land|lap|last one|lean|leave|left|let it|let the|level|like youre|line|long neck|look at|loose|lot|low|lunge|make|make it|mat|morning|move|nearly|neck long|need|next|nine ten|ninety|nobody|nose|not the|nothing|number|of them|of those|of you|of your|off the|on a|once|only a|open|out as|out on|over your|own|pair|past|people|plank|please|pocket|put|quick|quiet|rail|raise|reach|red|ring|rock|roll|rope|say|see|set|seven eight|shake|shin|shoe|short|should|shrug|slide|slower|small|smooth|some|somebody|something|sore|split|squeeze your|standing|start|station|steady|still|stretch|swing|switch|take|tap|that a|that it|that the|the back|the front|the knee|the mat|the other|the shoulder|the top|the wall|the way|there a|these|they|theyre|thigh|thing|think|thirty|those|through the|thumb|tight|together|too|tuck|tucked|twist|under the|under your|up on|up to|us|walking|wall|was|water|week|weight|were|what|where|while|whistle|who|whole|wide|wider|width|with the|work|you can|you get|you go|you know|you like|you want|your belly|your ear|your elbow|your feet|your heel|your knee|your leg|your rib|your shoulder|your side|your thigh|your toe|your wrist|youre not|yourself|youve got',
      ],
      [
        -0.2,
        'arm|as you|at the|away|band|behind|bell|belly|both|by|can|change|dont|dont let|each|eye|flat|floor|foot|for|forward|from|front|going|got|half|have|if its|if youre|im|in the|keep|like a|little|look|lower|me|mind the|more|my|nice|nine|no|of the|or|pull|rest|rib|row|same|seven|so|soft|squeeze|stand|stop|swap|tall|than|the floor|third|this|through|till|to the|top|turn|twelve|twenty|want|way|we|well|when|with|wrist|you|your back|your hip|youve',
      ],
      [
        -0.3,
        'again|all|breath|come|done|first|hand on|if|in|is|lift|like|lovely|mind|minute|okay|other|press|push|right|round|sit|six|slow|squat|step|straight|them|then|time|toe|under|walk|youre',
      ],
      [
        -0.4,
        'as|at|dont yank|eight|elbow|feet|five|four|get|heel|hip|i|it|its|last|long|now|over|second|shoulder|side|stay|ten|three|to|your',
      ],
      [-0.5, 'a|back|breathe|knee|leg|of|off|on the|out|that|two|up'],
      [-0.6, '0|down|go|good|one|the'],
      [-0.7, 'and'],
      [-6.1, '*'],
    ],
  ],
]
