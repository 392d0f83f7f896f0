/** How coaches bring an exercise by its name, and how they only drop one in passing. Plain words, as plainWords gives them. */

/** Small words in front of a name at the start of a sentence. */
export const OPENING_WORDS: ReadonlySet<string> = new Set(
  'and then so now right okay ok alright next first firstly second third lastly finally last up well lovely good great the a an our your some these those big slow proper go just with last back here also on one two plus more quick team everyone everybody folks guys ladies'.split(
    ' ',
  ),
)

/** Words that end right in front of a name and bring it for certain. */
export const BRINGS_NAME = [
  '(?:next|first|second|third|last|final)(?: \\w+)?s (?:the|a|an|our|your)$',
  '^(?:and |okay |right |so |then |now )*(?:last of all|first of all|best of all|after that|and after that|up next|coming up|over to|on to)(?: is| its)?(?: the| a| an| our| your| some)?$',
  '^(?:and |okay |right |so |then |now |well )*(?:[a-f]\\d|[a-f] (?:one|two|three))(?: is| are| will be)?(?: the| a| an| our| your| some)?$',
  '(?:start|starting|begin|beginning|finish|finishing|end|ending|open|opening|close|closing|carry on|continue|follow|pair|superset|combine|go on|kick off|kicking off|get|getting|warm|warming|cool|cooling|bring|bringing|wind|round|crack on|ease|settle|wake|loosen|top|come|calm|move|jump|dive)(?: \\w+){0,4} with(?: the| a| an| our| your| some| a few| that)?$',
  '(?:next|first|second|third|fourth|last|final|main|opening|only)(?: \\w+){0,2} (?:is|are|will be|today is|tonight is|of all is)(?: called)?(?: the| a| an| our| your| some)?$',
  '^(?:and |okay |right |so |then )*(?:last but not least|to finish|to start|to begin|to end|first of all|for starters|finally|lastly|how about|say hello to|here come|here comes|up comes|warm up first with|warm up with|well warm up with|a few|some)(?: the| a| an| our| your| some)?$',
  '(?:next up|next one|next exercise|next move|up next|first up|first exercise|last exercise|last one|last station|final exercise|the next one|exercise number|station number)(?: is| are| will be| well do| we have| weve got| we do)?(?: the| a| an| our| your| some)?$',
  '(?:station|exercise|drill|move|number|part|block) (?:\\d+|one|two|three|four|five|six|seven|eight|nine|ten|a|b|c)(?: is| are)?(?: the| a| an| our| your| some)?$',
  '(?:moving on to|move on to|moved on to|move to|on to|over to|go on to|going on to|going into|straight into|straight to|go into|go to|(?:going to|gonna|well|lets|let us|id like you to|want you to) (?:do|try|have|have a go at|go for|work on|practise|practice|add|bring in|learn|look at|tackle|doing|trying)|lets do|lets try|lets go for|lets have|let us do|let us try|start with|started with|starting with|begin with|beginning with|finish with|finishing with|end with|ending with|warm up with|on with|time for|ready for|set up for|get ready for|doing|do some|do a|do the)(?: the| a| an| our| your| some| those| a few| more)?$',
  '(?:called|calls it|i call|we call|call it|call this|call these|call them|known as|name is|known to some as)(?: the| a| an)?$',
  '^(?:(?:and|then|so|now|next|after that|okay|right|first|second|third|fourth|fifth|finally|lastly) )*(?:we have|weve got|we do|we go|comes|here is|heres|youve got|you have|(?<=then )theres|(?<=next )theres|(?<=now )theres|(?<=then )its|(?<=next )its|(?<=now )its|(?<=first )its)(?: the| a| an| our| your| some)?$',
  '^(?:and |okay |right |so |now |then )*(?:number )?(?:one|two|three|four|five|six|seven|eight|nine|ten|\\d+|first|second|third|fourth|fifth|sixth)(?: is| are| its)?(?: the| a| an| our| your| some)?$',
  '(?:were|we are|and|now) (?:now )?(?:onto|on to|into)(?: the| a| an| our| your| some)?$',
  '(?:from here|from there|for this one|for this)(?: the| a| an| its| well do| we do| well| lets)?$',
  '(?:this one|this|this next one|first thing|next thing|last thing|main thing|third one|second one|fourth one|fifth one)(?: is| are|s) (?:called |known as |named )?(?:the |a |an |our |your )?$',
  '^(?:(?:and|then|so|now|right|okay|lets|go|well) )*(?:back (?:down |up |in )?(?:to|for|into)|come (?:down |back |up )?(?:for|into|to)|down (?:for|into)|up (?:for|into)|into)(?: the| a| an| that| our| your| some)?$',
  '(?:round two|round three|second round|third round|last round|next round|round one|again)(?: is| its)?(?: the)?$',
]

/** Brings a name where teaching follows right behind: in front of a name at the end of its clause. */
export const BRINGS_BY_PLACE = [
  '(?:for|with|is|are|was|be|do|doing|have|having|try|add|adding|into|onto|to|get|hit|want|of|by|these|those|this|next|number|now|then|some|few|more|exercise|station|move|drill)(?: the| a| an| our| your| some| few| little| those| these| that| more| quick| lovely| nice| proper| good old)*$',
  '^(?:the|a|an|our|your|some|that|those|these)$',
  'and (?:the|a|an|our|your|some)$',
]

/** Behind a name: it comes once more. */
export const SAID_AGAIN = [
  '^(?:again|once more|one more time|one last time|one final time|this time|second time|last time round|round two|for the last time|on (?:this|the other|your other|that) (?:side|one|leg)|the other (?:side|way))',
]

/** The name comes after the set-up: "that's your goblet squat". */
export const CLOSES_WITH_NAME = [
  '^(?:and |so |now |right |okay |well |yes |then )*(?:thats|that is|this is|thats it thats|theres|heres|here is|there is|we have|these are|those are|these would be|those would be|this would be|that would be|so those are|there are)(?: a| an| the| your| our| my| what we call a| called a| called the| called| basically| just)*$',
]

/** Only a mention: in front of a name. */
export const PASSING_BEFORE = [
  '(?:not|no|never|dont|wont|isnt|arent|without|instead of|rather than|than|like|as in|for|with|when we do|when we get to|want (?:it|this|that|them) (?:again )?(?:in|for)|in|during|after|before|from|of|think|thinking|imagine|remember|remembering|if|about|did|had|was|were|love|hate|hates|missed|skip|done|stay with|from the|helps|help|yet|any|half)(?: the| a| an| your| our| that| any| those| all| last)?$',
]

/** Never more than a mention, even where teaching follows: in front of a name. */
export const ONLY_PASSING = [
  '(?:make|makes|making|turn|turns|turning|turned) (?:it|this|that|them)(?: into)?(?: a| an)?$',
  '(?:not|no|never|dont|wont|isnt|arent|without|instead of|than|like|as in|in|during|after|before|from|think|thinking|imagine|remember|about|did|had|was|were|every|each|any|call that|call it|its|thats|half|yet|add|into|to)(?: the| a| an| your| our| that| any| those| all| last| moving| standing| big| little)*$',
]

/** Only a mention: right behind a name. */
export const PASSING_AFTER = [
  '^(?:were|was|had|felt|isnt|arent|wasnt|for later|later|is coming|are coming|is off|are off|next week|another day|last week|yet|today or|dont|not for|that we did|we did|i do|position|shape)',
]

/** The sentence tells of something else than what is done now. */
export const PASSING_SENTENCE = [
  '(?:were not|we are not|not doing|wont do|were not doing|we wont|off the menu|we were going to|i was going to|last week|next week|next time|yesterday|i used to|i hate|my (?:best|record|favourite)|on the poster|some of you would|somebody asked|someone asked|youll (?:need|want|meet|see|use)|save (?:it|something|some)|saving yourself|helps with|felt easy|see you|ran out of|out of time|no time for|time to do|leave that for|leave the|looks like|bit like|same as in)',
  '^(?:if|when|unless|after|before|because|remember|do you|did|have you|who|anyone) ',
]

/** Somewhere in the sentence: not today, or only asked for. */
export const NOT_TODAY = [
  '(?:shant|shall not|wont be|not today|not tonight|another (?:day|time|week|session|class)|some other (?:day|time)|next (?:week|time|month|term|session)|(?:asked|emailed|messaged|wrote|begged) (?:me )?(?:about|for)|can wait|leave (?:it |that |those |them |this |the \\w+(?: \\w+)? )?for (?:now|later|another|next|monday|tuesday|wednesday|thursday|friday|saturday|sunday)|when you(?:ve| have| lot| all)? (?:stop|can|learn|earn)|(?:coming|waiting|happening|back) (?:up )?(?:on |next |for )?(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)|(?:on|until|till|come|same time|see you|for) (?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)|ran out of time|nobodys ready|not (?:going|gonna) (?:to )?(?:do|show|teach|be))',
]

/** Another name for the exercise just named: the name comes before or after these. */
export const ALSO_CALLED = [
  /(?:^|[.,;]\s*|\s)([\p{L}\d' -]{3,32}?),? (?:as )?(?:some|other|lots of|most|a lot of|many)? ?(?:people|clubs|folks?|coaches|gyms|books|instructors|teachers|places) (?:say|call (?:it|this|them|these)|know (?:it|this|them) as)(?=[.,;]|$)/giu,
  /(?:some|other|lots of|most|many|a lot)(?: of you)? ?(?:people|clubs|folks?|coaches|gyms)? ?(?:say|call (?:it|this|them|these)|(?:may|might)? ?know (?:it|this|them) as) (?:the |a |an )?([\p{L}\d' -]{3,32}?)(?=[.,;!?]|$)/giu,
  /(?:every(?:body|one) else|others?|the (?:book|textbook|poster|internet|physios?)|proper people|(?:most |some |normal |other )?(?:people|folks?|coaches|gyms)) calls? (?:it|this|them|these) (?:the |a |an )?([\p{L}\d' -]{3,32}?)(?: too| as well)?(?=[.,;!?\v\n]|$)/giu,
  /(?:proper people|the (?:book|textbook|poster)) says? (?:the |a |an )?([\p{L}\d' -]{3,32}?)(?=[.,;!?\v\n]|$)/giu,
  /(?:also known as|also called|otherwise known as|sometimes called|or, as (?:some|we) (?:say|call it)|we call it|we call this|its other name is) (?:the |a |an )?([\p{L}\d' -]{3,32}?)(?=[.,;!?]|$)/giu,
]

/** Shapes that other exercises start from: named right behind another exercise they are its set-up. */
export const START_SHAPES: ReadonlySet<string> = new Set([
  'plank',
  'high-plank',
  'squat',
  'lunge',
  'glute-bridge',
  'bear-hold',
  'mountain-pose',
  'split-squat',
  'side-plank',
  'downward-dog',
  'hip-hinge',
  'dead-hang',
  'mini-squat',
  'easy-seat',
  'hip-flexor-stretch',
])

/** Nouns at the end of most exercise names, folded: a short sentence that ends so may be a name nobody listed. */
export const NAME_ENDINGS: ReadonlySet<string> = new Set(
  'slip hook uppercut parry duck weave press row curl raise squat lunge stretch hold walk tap lift twist circle kick extension reach pose plank drill sprint jump hop slide roll pull push march swing carry crunch bridge fold bend rotation breathing shuffle stance stand sit throw slam chop fly flye dip thruster snatch clean jerk crawl climber squeeze clam opener rock tilt balance flow pass thrust shrug hinge march kickback pulldown step touch punch support matrix drag glide wiggle slider press'.split(
    ' ',
  ),
)

/** Words that cannot stand inside the name of an exercise nobody listed. */
export const NEVER_IN_NAME: ReadonlySet<string> = new Set(
  'i you we they he she it its im youre were theyre is are was be been do does did dont have has had will would can could should if because when where who what why how not no yes that this these those there here my your our their me us them him her okay ok right so now then and or but the to of in at for with from go get got come take give let lets make keep want need going gonna just really very bit lot thing things one ones plan class round rounds minute minutes second seconds break drink water music kit floor rest side sides again more time please everyone everybody thank thanks good nice lovely well day week all next first last up down out off back warm cool finish start ready done set sets rep reps each try feel breathe slow slowly hello hi bye half way wall floor chair chairs mat band bands weights seat back front belly tummy fours standing sitting knees feet hands pair circuit middle centre center beginning top bottom neutral room finisher workout session couple few'.split(
    ' ',
  ),
)

/** What an unlisted name may follow. Group 1 is the name. Applied to one sentence as written. */
export const UNKNOWN_NAME = [
  /\b(?:first|second|third|next|last|this)(?: one)?,? (?:is one )?(?:i|we) call(?: it| this)?(?: the| a| an)? ([\p{L}\d'’ -]{3,40}?)(?=[.,;:!?\n\v]|$| and | because )/iu,
  /^(?:and |okay,? |right,? |so,? |now,? )*(?:first|second|third|fourth|fifth|sixth|lastly|finally|last exercise|last one|number \w+)[,:]? (?:we have |we've got |it's |is |comes )?(?:the|a|an|our) ([\p{L}\d'’ -]{3,40}?)(?=[.,;:!?\n\v]|$)/iu,
  /^(?:then|next|and then|now|after that),? (?:we have|we've got|comes|it's|we do|we're doing)(?: the| a| an| our| some)? ([\p{L}\d'’ -]{3,40}?)(?=[.,;:!?\n\v]|$)/iu,
  /\b(?:next up|next exercise|next one|next move|up next|first up|first exercise|last exercise|final exercise)(?: is| are|, is|:|,)?(?: we have| we've got| we do)?(?: the| a| an| our| some)? ([\p{L}\d'’ -]{3,40}?)(?=[.,;:!?\n\v]|$| and | for | where | which )/iu,
  /\b(?:station|exercise|drill|move|number) (?:\d+|one|two|three|four|five|six|seven|eight|nine|ten)(?: is| are)?[,.:]?(?: the| a| an| our| some)? ([\p{L}\d'’ -]{3,40}?)(?=[.,;:!?\n\v]|$| and | for | where | which )/iu,
  /\b(?:this|it|this one|this next one|these)(?:'s|’s| is| are|'re)? (?:is )?(?:called|known as)(?: the| a| an)? ([\p{L}\d'’ -]{3,40}?)(?=[.,;:!?\n\v]|$| and | for | because | where | which )/iu,
  /\b(?:we|i) call (?:this|it|these|this one)(?: the| a| an)? ([\p{L}\d'’ -]{3,40}?)(?=[.,;:!?\n\v]|$| and | because )/iu,
  /\b(?:moving on to|move on to|move to)(?: the| a| an| our| some) ([\p{L}\d'’ -]{3,40}?)(?=[.,;:!?\n\v]|$| and | for )/iu,
]

/** As above, but so loose that the name must end like one ("the slip" does, "the nicest part" does not). */
export const UNKNOWN_BY_ENDING = [
  /\b(?:start|begin|kick off|finish|end|open|close|get \w+|warm up|cool down|carry on|continue|go on|follow)(?: [\p{L}'’]+){0,4} with(?: the| a| an| our| your| some| a few)? ([\p{L}\d'’ -]{3,40}?)(?=[.,;:!?\n\v]|$)/iu,
  /\b(?:we|let's|let us|we'll|you'll|now)(?: now| then| just| also)? (?:add|add in|do|try|have|bring in|go for|practise|practice|get)(?: the| a| an| our| your| some| a few) ([\p{L}\d'’ -]{3,40}?)(?=[.,;:!?\n\v]|$| now| next| again)/iu,
  /^(?:and |okay,? |right,? |so,? |now,? |then,? |well,? )*(?:this is|these are|this would be|those are|that's|that is|here's|here comes)(?: the| a| an| our| your| my)? ([\p{L}\d'’ -]{3,40}?)(?=[.,;:!?\n\v]|$)/iu,
  /^(?:and |okay,? |right,? |so,? |then,? )*(?:now|next|then|last|lastly|finally|first|second|third)(?: one| up| thing)?,? (?:is |it's |for |we have |comes )?(?:the|a|an|our|some) ([\p{L}\d'’ -]{3,40}?)(?=[.,;:!?\n\v]|$)/iu,
  /^(?:the|a|our|your|some) ([\p{L}\d'’ -]{3,40}?) (?:now|next|then|to finish|to start|to end)(?=[.,;:!?\n\v]|$)/iu,
]
